"""Runs in pieces, judged on the files alone: each piece a tube, neighbours never in each other, the gap between spigot and socket as
the joint states it, and all of them together the run put together but for the adhesive."""

import json

import manifold3d
import numpy as np
import pytest

import solids
import stl
from joints import faults_together, gaps, solid

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
        skin = 2 * run["deviation"] * joined.surface_area()
        materials = [piece["material"] for piece in [*run["pieces"], run["joined"]]]
        faults, shared = faults_together(pieces, joined, materials, run["deviation"])
        assert faults == [], told
        # Outside the collars nothing is missing but that skin: no part of it is deeper than the deviation.
        balls = [manifold3d.Manifold.sphere(joint["length"] + joint["collar"] + 2, 64).translate(joint["points"][5][0]) for joint in run["joints"]]
        away = lambda body: manifold3d.Manifold.batch_boolean([body, *balls], manifold3d.OpType.Subtract).volume()
        assert away(joined) - away(shared) <= skin, told
