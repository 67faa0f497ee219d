"""Every file of the swept designs before the judges: one test a question, all faults of it told at once."""

import statistics
import sys

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
