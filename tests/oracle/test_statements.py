"""The judges of what a report states: each right statement passes, each wrong one is caught."""

import copy

import numpy as np
import pytest

import existence
import numbers_of_report
from centreline import run_centreline
from skin import Skin
from sweep import changed

FITTING = {"name": "F", "tube_diameter": 12, "height": 18, "socket_depth": 10, "collar_diameter": 19, "lead": 5, "elbow": None}
RUN = {"name": "r", "from": "a", "to": "b", "tube": {"outer_diameter": 12, "bore": 9}, "bend_radius": 16,
       "route": [{"corner": [0, 0, 60]}, {"corner": [0, 70, 60]}],
       "ends": {"chamfer_deg": 15, "chamfer_length": 2, "edge_break": 0.2, "trim": 0, "seat_mark": False}}
DESIGN = {"fittings": [FITTING], "runs": [RUN], "process": {"material": {"density_g_per_cm3": 1.12}, "printer": {"least_wall": 1}},
          "ports": [{"name": "a", "at": [0, 0, 0], "facing": [0, 0, 1], "fitting": "F"},
                    {"name": "b", "at": [90, 70, 60], "facing": [-1, 0, 0], "fitting": "F"}]}


def skin():
    return Skin(run_centreline(DESIGN, RUN), RUN)


def entry():
    """What a right report says of the run: legs of 52, 70 and 82 less tangent lengths of 16, two right angles."""
    length = 52 + 70 + 82 - 4 * 16 + 16 * np.pi
    section = skin().section
    row = {"straight_mm": 36.0, "rotation_deg": 0.0, "angle_deg": 90.0, "radius_mm": 16.0}
    return {
        "name": "r", "made": True, "length_mm": length, "material_mm3": section.material_volume(),
        "bore_mm3": section.bore_volume(), "mass_g": section.material_volume() * 1.12e-3,
        "bounds_mm": {"min": [-6, -6, 8], "max": [82, 76, 66]},
        "bend_table": [row, {**row, "straight_mm": 38.0, "rotation_deg": 90.0},
                       {"straight_mm": 66.0, "rotation_deg": 0.0, "angle_deg": 0.0, "radius_mm": 0.0}],
        "points_mm": [[0, 0, 8], [0, 0, 60], [0, 70, 60], [82, 70, 60]],
    }


def faults(stated):
    return numbers_of_report.faults_of(RUN, stated, DESIGN, skin())


def test_right_numbers_pass():
    stated = entry()
    # Worked by hand: the second bend turns from +y to +x, a quarter turn about the feed from the plane of the first.
    stated["bend_table"][1]["rotation_deg"] = turn = skin().line.bend_table()[1][1]
    assert abs(turn) == pytest.approx(90) and faults(stated) == []


@pytest.mark.parametrize("key, change, word", [
    ("length_mm", lambda v: v * (1 + 1e-8), "length_mm"),
    ("material_mm3", lambda v: v * (1 - 1e-8), "material_mm3"),
    ("bore_mm3", lambda v: v + 0.01, "bore_mm3"),
    ("mass_g", lambda v: v * 1.001, "mass_g"),
    ("bounds_mm", lambda v: {**v, "max": [82, 76.00001, 66]}, "bounds_mm/max"),
    ("bend_table", lambda v: v[1:], "rows"),
    ("bend_table", lambda v: [v[0], {**v[1], "rotation_deg": -v[1]["rotation_deg"]}, v[2]], "bend_table row 1"),
    ("bend_table", lambda v: [v[0], {**v[1], "straight_mm": 38.0001}, v[2]], "off the run's end"),
    ("bend_table", lambda v: [v[0], {**v[1], "angle_deg": 90.0001}, v[2]], "bend_table row 1"),
    ("bend_table", lambda v: [{**v[0], "rotation_deg": 5.0}, *v[1:]], "first rotation"),
])
def test_wrong_numbers_are_caught(key, change, word):
    stated = entry()
    stated["bend_table"][1]["rotation_deg"] = skin().line.bend_table()[1][1]
    stated[key] = change(stated[key])
    assert any(word in fault for fault in faults(stated))


def crowded(radius):
    design = copy.deepcopy(DESIGN)
    design["runs"][0]["bend_radius"] = radius
    return design, design["runs"][0]


def unmade(code, fix):
    nothing = dict.fromkeys(("length_mm", "material_mm3", "bore_mm3", "mass_g", "bounds_mm"))
    finding = {"code": code, "severity": "stop", "run": "r", "fix": fix}
    return {"name": "r", "made": False, **nothing}, {"findings": [finding]}


def radius_fix(value):
    return [{"op": "replace", "path": "/runs/0/bend_radius", "value": value}]


@pytest.mark.parametrize("fix, word", [
    # Leg of 52 from the stop, 15 of it kept straight: two right angles leave the first corner 37, the straight 70.
    (radius_fix(34.999), None),
    (radius_fix(36), "still no centreline"),
    (radius_fix(30), "a larger radius would do"),
    (None, None),
])
def test_a_fix_must_mend_and_name_the_largest_radius(fix, word):
    design, run = crowded(40)
    stated, report = unmade("corners_too_close", fix)
    found = existence.faults_of({}, design, run, stated, report, True)
    assert (found == []) if word is None else any(word in fault for fault in found), found


def test_wrongly_made_or_not_made_is_caught():
    stated, report = unmade("bend_radius", None)
    assert any("though it could be" in f for f in existence.faults_of({}, DESIGN, RUN, stated, report, True))
    assert any("no finding says why" in f for f in existence.faults_of({}, *crowded(40), stated, {"findings": []}, True))
    assert any("made up to be" in f for f in existence.faults_of({"expect": "stopped"}, DESIGN, RUN, entry(), report, True))
    assert any("has numbers" in f for f in existence.faults_of({}, *crowded(40), {**stated, "length_mm": 1}, report, True))


def test_a_changed_statement_is_told_from_a_default():
    stated = {"ports": [{"at": [1, 2, 3]}], "process": {"material": "PETG"}}
    whole = {"ports": [{"at": [1, 2, 3], "measured_to": 0.5}], "process": {"material": {"name": "PETG"}}, "notes": ""}
    assert changed(stated, whole) == []
    assert changed(stated, {**whole, "ports": [{"at": [1, 2, 4]}]}) == ["/ports/0/at/2: 3 became 4"]
    assert changed(stated, {**whole, "ports": []}) != []
