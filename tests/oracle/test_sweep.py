"""Every file of the swept designs before the judges: one test a question, all faults of it told at once.

All that asks for the verdicts stands here: a file goes whole to one worker, so that they are reckoned once."""

import statistics
import sys

import numpy as np
import pytest

LEAST, LEAST_OF_SHAPES = 450, 300
# Words in the names of the kinds that have coils, smooth curves, shared radii, rings or a dress.
SHAPES = ("coil", "turn", "smooth", "share", "bodies", "marked")


def made(verdicts):
    return [verdict for verdict in verdicts if verdict.measured.get("triangles")]


def test_enough_designs_are_judged(verdicts):
    assert len({verdict.case for verdict in made(verdicts)}) >= LEAST
    shapes = {verdict.case for verdict in made(verdicts) if any(word in verdict.kind for word in SHAPES)}
    assert len(shapes) >= LEAST_OF_SHAPES
    assert len({verdict.kind for verdict in made(verdicts)}) >= 24


@pytest.mark.parametrize("question", ["canonical", "existence", "report", "stl", "solid", "crossing", "deviation", "wall", "3mf"])
def test_no_judge_finds_a_fault(verdicts, question):
    """canonical: nothing stated is changed. existence: made where it exists, else a finding says why. report: numbers. solid: trimesh and manifold3d.
    crossing: CGAL, and no face without area. deviation: dense samples both ways. wall: the thinnest under rings and in grooves. 3mf: lib3mf, strict."""
    faults = [f"{verdict.case} ({verdict.run}): {fault}"
              for verdict in sorted(verdicts, key=lambda verdict: verdict.case)
              for fault in verdict.faults.get(question, [])]
    assert not faults, f"{len(faults)} faults:\n" + "\n".join(faults[:40])


def test_the_deviation_is_used_and_the_volume_kept(verdicts, capsys):
    """Meshes that stay far under what is allowed waste triangles; the usual volume is right to 1e-5."""
    error = [verdict.measured["error"] for verdict in made(verdicts)]
    volume = [abs(verdict.measured["volume"]) for verdict in made(verdicts)]
    # To stderr: what a worker of several prints elsewhere is lost.
    with capsys.disabled():
        print(f"\n{len(error)} meshes: error over deviation {statistics.median(error):.2f}, at most {max(error):.4f}; "
              f"volume off {statistics.median(volume):.1e}, at most {max(volume):.1e}; "
              f"{sum(verdict.measured['triangles'] for verdict in made(verdicts))} triangles", file=sys.stderr)
    assert 0.5 < statistics.median(error) <= 1
    assert statistics.median(volume) < 1e-5 and max(volume) < 5e-4


def series(verdicts):
    """Verdicts of each run that was meshed at three or more deviations, coarsest first."""
    groups = {}
    for verdict in verdicts:
        if verdict.measured.get("triangles"):
            groups.setdefault((verdict.case, verdict.run), []).append(verdict.measured)
    groups = [sorted(group, key=lambda m: -m["allowed"]) for group in groups.values()]
    return [group for group in groups if len({m["allowed"] for m in group}) >= 3]


def test_error_and_triangles_follow_the_deviation(verdicts):
    """Chords of a circle: the sagitta goes with the step squared, and steps go round and along, so halving the
    deviation halves the error and doubles the triangles of a bend; those of a straight grow by the root of 2, less
    what whole numbers of few steps round off."""
    groups = series(verdicts)
    assert len(groups) >= 4, "no run was swept at three or more deviations"
    for group in groups:
        allowed = np.array([m["allowed"] for m in group])
        error = np.array([m["error"] for m in group]) * allowed
        triangles = np.array([m["triangles"] for m in group])
        assert (np.diff(error) < 0).all() and (error <= allowed * (1 + 1e-9)).all(), group
        order = np.polyfit(np.log(allowed), np.log(error), 1)[0]
        # The coarsest may stand at the fewest corners that a ring ever has.
        growth = -np.polyfit(np.log(allowed[-3:]), np.log(triangles[-3:]), 1)[0]
        assert 0.9 < order < 1.1, f"the error goes with the deviation to the power {order}: {group}"
        assert 0.3 < growth < 1.15, f"the triangles go with its inverse to the power {growth}: {group}"
