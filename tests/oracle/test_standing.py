"""Cups and pools that are told of standing tubes before a judge that floods the bore of the standing mesh, layer by layer."""

import copy
import json
import statistics
import sys

import numpy as np
import pytest

import controls
import standing
import stl

LEAST, LEAST_EACH, LEAST_CLOSED = 300, 80, 60
# At most so many hold something within the band in which the two methods may differ, or are joined by a hump at the level.
MOST_UNSURE = 0.04


@pytest.fixture(scope="module")
def judged(standing_folder):
    tubes = json.loads((standing_folder / "manifest.json").read_text())["tubes"]
    # Of a bore that runs into itself there is no inside.
    return [(tube, *standing.judge(standing_folder, tube)) for tube in tubes if not tube["meets_itself"]]


def test_the_mesh_holds_what_is_told(judged):
    faults = [f"{tube['stood']} ({tube['kind']}, seed {tube['seed']}): {fault}" for tube, found, _ in judged for fault in found]
    assert not faults, f"{len(faults)} faults:\n" + "\n".join(faults[:40])


def test_enough_tubes_are_judged_with_and_without(judged, capsys):
    unsure = sum(measured["unsure"] > 0 for _, _, measured in judged)
    sure = [measured for _, _, measured in judged if not measured["unsure"]]
    having = {kind: sum(measured[kind] > 0 for measured in sure) for kind in ("cups", "pools")}
    closed = sum(measured["closed"] > 0 for measured in sure)
    ratios = [ratio for measured in sure for ratio in measured["ratios"]]
    # To stderr: what a worker of several prints elsewhere is lost.
    with capsys.disabled():
        print(f"\n{len(sure)} tubes judged, {unsure} unsure; with cups {having['cups']}, with pools {having['pools']}, closed by "
              f"the plate {closed}; told over found volume {min(ratios):.3f} to {max(ratios):.3f}, {statistics.median(ratios):.3f}", file=sys.stderr)
    assert len(sure) >= LEAST and closed >= LEAST_CLOSED
    assert unsure <= MOST_UNSURE * len(judged)
    for kind, count in having.items():
        assert count >= LEAST_EACH and len(sure) - count >= LEAST_EACH, kind
    assert 0.99 < statistics.median(ratios) < 1.02 and 0.92 < min(ratios) and max(ratios) < 1.12


# Legs 60 apart and 80 high with a crossbar: a U that stands on its crossbar is a cup; its ends up.
POINTS = [(0, 0, 80), (0, 0, 0), (60, 0, 0), (60, 0, 80)]
AREA, LENGTH = np.pi / 4 * 9**2, 2 * 60 + 20 + np.pi * 20


@pytest.fixture(scope="module")
def cup(tmp_path_factory):
    """A U of our own mesher, which holds all of its bore, and what must be told of it."""
    folder = tmp_path_factory.mktemp("cup")
    run = {**controls.RUN, "ends": {"chamfer_deg": 15, "chamfer_length": 0, "edge_break": 0.3, "seat_mark": False}}
    corners, faces, skin = controls.good(0.01, POINTS, 20, run)
    (folder / "datum.stl").write_bytes(stl.write(corners, faces))
    (folder / "stood.stl").write_bytes(stl.write(corners + np.float32([0, 0, 11]), faces))
    pocket = {"span": [0, LENGTH], "at": [30, 0, 0], "depth": 84.5, "volume": AREA * LENGTH}
    tube = {"kind": "control", "up": [0, 0, 1], "lift_mm": 5, "bore": 9, "stood": "stood.stl", "datum": "datum.stl",
            "ends": [[[0, 0, 80], [0, 0, -1]], [[60, 0, 80], [0, 0, 1]]], "cups": [pocket], "pools": []}
    return folder, tube


def test_a_right_answer_passes_and_the_volume_is_the_closed_form(cup):
    folder, tube = cup
    faults, measured = standing.judge(folder, tube)
    assert faults == [] and measured["unsure"] == 0
    # Legs that stand open upwards are full to their lips; a voxel is lost at each.
    assert abs(tube["cups"][0]["volume"] / measured["ratios"][0] / (AREA * LENGTH) - 1) < 0.03


def set_of(key, value):
    def change(tube):
        tube["cups"][0][key] = value
    return change


@pytest.mark.parametrize("change, word", [
    (lambda tube: tube["cups"].clear(), "not told"),
    (lambda tube: tube["pools"].append(tube["cups"][0]), "pools: told 84.50 mm deep"),
    (lambda tube: tube.update(cups=[], pools=tube["cups"]), "not told"),
    (set_of("at", [30, 0, 40]), "where nothing is held"),
    (set_of("depth", 80.0), "and is"),
    (set_of("depth", 89.0), "and is"),
    (set_of("volume", 0.9 * AREA * LENGTH), "told to hold"),
    (set_of("volume", 1.1 * AREA * LENGTH), "told to hold"),
    (lambda tube: tube.update(up=[0, 0, -1]), "standing mesh"),
    (lambda tube: tube.update(lift_mm=0), "lowest point"),
])
def test_a_wrong_answer_is_caught(cup, change, word):
    folder, tube = cup[0], copy.deepcopy(cup[1])
    change(tube)
    faults, _ = standing.judge(folder, tube)
    assert any(word in fault for fault in faults), faults
