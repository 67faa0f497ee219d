"""Runs in pieces, judged on the files alone: each piece a tube, neighbours never in each other, the gap between spigot and socket as
the joint states it, and all of them together the run put together but for the adhesive."""

import json

import manifold3d
import numpy as np
import pytest

import solids
import stl

# What the gap may differ from the stated clearance by, mm.
WITHIN = 0.02


@pytest.fixture(scope="module")
def runs(split_folder):
    found = json.loads((split_folder / "manifest.json").read_text())["runs"]
    assert len(found) >= 10 and sum(len(run["joints"]) for run in found) >= 15
    return [(split_folder, run) for run in found]


def read(folder, told):
    triangles, faults = stl.read((folder / told["file"]).read_bytes())
    assert faults == [], told
    return solids.welded(triangles)


def solid(corners, faces):
    made = manifold3d.Manifold(manifold3d.Mesh64(np.array(corners, float), np.array(faces, np.uint64)))
    assert made.status() == manifold3d.Error.NoError
    return made


def test_every_piece_is_a_tube_of_its_exact_volume(runs):
    for folder, run in runs:
        for piece in [*run["pieces"], run["joined"]]:
            corners, faces = read(folder, piece)
            faults = solids.by_trimesh(corners, faces) + solids.by_manifold(corners, faces, piece["material"])[0]
            assert faults == [], f"{run['kind']}, {run['seed']}, {piece['file']}: {faults}"


def test_neighbours_do_not_reach_into_each_other(runs):
    for folder, run in runs:
        pieces = [solid(*read(folder, piece)) for piece in run["pieces"]]
        for before, after in zip(pieces, pieces[1:]):
            assert (before ^ after).is_empty(), f"{run['kind']}, {run['seed']}"


def across(corners, faces, origin, directions):
    """Distances from a point along unit directions to every face that they strike, sorted, by one look at all faces."""
    a, b, c = (corners[faces[:, k]].astype(float) - origin for k in range(3))
    found = []
    for direction in directions:
        # Moeller and Trumbore 1997, Journal of Graphics Tools 2(1), 21.
        e, f = b - a, c - a
        p = np.cross(direction, f)
        det = np.einsum("ij,ij->i", e, p)
        det = np.where(np.abs(det) < 1e-15, np.inf, det)
        u = np.einsum("ij,ij->i", -a, p) / det
        q = np.cross(-a, e)
        v = q @ direction / det
        t = np.einsum("ij,ij->i", f, q) / det
        hit = (u >= 0) & (v >= 0) & (u + v <= 1) & (t > 0) & np.isfinite(det)
        found.append(np.sort(t[hit]))
    return found


def beside(joint, corners, faces):
    """The mesh less the faces that no ray across the joint can strike before it has left the tube."""
    middle, reach = np.array(joint["points"][5][0]), joint["length"] + joint["collar"]
    at = corners[faces].astype(float)
    keep = ((at.min(axis=1) <= middle + reach) & (at.max(axis=1) >= middle - reach)).all(axis=1)
    return corners, faces[keep]


def gaps(joint, before, after):
    """The gap between a joint's spigot and socket, looked at round it and along it."""
    before, after = beside(joint, *before), beside(joint, *after)
    for step, (point, tangent) in enumerate(joint["points"]):
        along = joint["length"] * step / 10
        # Where the key has risen, past the mouth's lead-in, before the ring for the adhesive and the tip's lead-in.
        catch = 2 * (joint["catch"] or 0) + 0.3
        if not max(joint["ramp"], joint["lead_in"]) + 0.1 < along < joint["length"] - joint["tip"] - catch - 0.1:
            continue
        point, tangent = np.array(point), np.array(tangent)
        first = np.cross(tangent, [0.31, 0.54, 0.78])
        first /= np.linalg.norm(first)
        second = np.cross(tangent, first)
        angles = np.arange(12) * np.pi / 6 + 0.1
        directions = [np.cos(a) * first + np.sin(a) * second for a in angles]
        spigot = across(*before, point, directions)
        socket = across(*after, point, directions)
        for inside, outside in zip(spigot, socket):
            # From the axis: the bore, then the spigot's outside; then the socket's inside.
            yield outside[0] - inside[1]


def test_the_gap_between_spigot_and_socket_is_the_stated_clearance(runs):
    looks = 0
    for folder, run in runs:
        meshes = [read(folder, piece) for piece in run["pieces"]]
        for joint, before, after in zip(run["joints"], meshes, meshes[1:]):
            for gap in gaps(joint, before, after):
                assert abs(gap - joint["clearance"]) <= WITHIN, f"{run['kind']}, {run['seed']}: {gap}, {joint['clearance']}"
                looks += 1
    assert looks > 500


def test_a_piece_that_is_pushed_aside_is_seen(runs):
    """The control: moved across by a third more than the clearance, its gap is wrong and it is in its neighbour."""
    folder, run = next((folder, run) for folder, run in runs if run["joints"][0]["clearance"] > 2 * WITHIN)
    joint = run["joints"][0]
    before, (corners, faces) = (read(folder, piece) for piece in run["pieces"][:2])
    _, tangent = joint["points"][5]
    aside = np.cross(tangent, [0.31, 0.54, 0.78])
    moved = corners + aside / np.linalg.norm(aside) * joint["clearance"] * 4 / 3
    assert max(abs(gap - joint["clearance"]) for gap in gaps(joint, before, (moved, faces))) > WITHIN
    assert not (solid(*before) ^ solid(moved, faces)).is_empty()


def test_the_pieces_together_are_the_run_but_for_the_adhesive(runs):
    for folder, run in runs:
        told = f"{run['kind']}, {run['seed']}"
        pieces = [solid(*read(folder, piece)) for piece in run["pieces"]]
        joined = solid(*read(folder, run["joined"]))
        union = manifold3d.Manifold.batch_boolean(pieces, manifold3d.OpType.Add)
        shared = joined ^ union
        skin = 2 * run["deviation"] * joined.surface_area()
        # What sticks out of the run is as thin as two meshes' deviations together.
        assert union.volume() - shared.volume() <= skin, told
        # What is missing is the adhesive of each joint, and as thin a skin.
        adhesive = run["joined"]["material"] - sum(piece["material"] for piece in run["pieces"])
        assert adhesive > 0, told
        assert abs(joined.volume() - shared.volume() - adhesive) <= skin, told
        # Outside the collars nothing is missing but that skin: no part of it is deeper than the deviation.
        balls = [manifold3d.Manifold.sphere(joint["length"] + joint["collar"] + 2, 64).translate(joint["points"][5][0]) for joint in run["joints"]]
        away = lambda body: manifold3d.Manifold.batch_boolean([body, *balls], manifold3d.OpType.Subtract).volume()
        assert away(joined) - away(shared) <= skin, told
