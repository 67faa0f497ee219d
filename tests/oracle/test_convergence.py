"""The same tube at several deviations: the error must follow what is asked, and so must the triangles."""

import numpy as np


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
