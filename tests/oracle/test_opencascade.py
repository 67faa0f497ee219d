"""OpenCASCADE as judge: its own exact solid of the same tube against the report and the exported mesh."""

import json

import numpy as np
import pytest

import opencascade
import stl
from centreline import run_centreline
from controls import good
from skin import Skin
from solids import welded

DESIGNS = 16
POINTS = 60


def chosen(folder):
    """Made runs that the kernel can be asked about, of as many kinds as there are."""
    kinds = {}
    for case in json.loads((folder / "manifest.json").read_text())["cases"]:
        for made in case["runs"]:
            if made.get("stl"):
                kinds.setdefault(case["kind"], []).append((case, made))
    rounds = max(map(len, kinds.values()))
    found = []
    for case, made in (members[i] for i in range(rounds) for members in kinds.values() if i < len(members)):
        design, report = (json.loads((folder / case[key]).read_text()) for key in ("canonical", "report"))
        entry = next(entry for entry in report["runs"] if entry["name"] == made["name"])
        if sound(design, entry):
            found.append((design, entry, made))
            if len(found) == DESIGNS:
                break
    return found


def sound(design, entry):
    """Whether the kernel can be asked: few bends, none so short or so tight that its search for the
    nearest point misses the face; ends on straights, where cones are cones, and nothing else near them."""
    run = next(run for run in design["runs"] if run["name"] == entry["name"])
    ends, rows = run["ends"], entry["bend_table"]
    bends = all(np.radians(row["angle_deg"]) * row["radius_mm"] > 1
                and row["radius_mm"] > 0.6 * run["tube"]["outer_diameter"] for row in rows[:-1])
    straight = max(ends["chamfer_length"], ends["edge_break"]) < min(rows[0]["straight_mm"], rows[-1]["straight_mm"])
    depth = ends["chamfer_length"] * np.tan(np.radians(ends["chamfer_deg"]))
    if not (len(rows) <= 8 and bends and straight and depth > 0.01):
        return False
    return Skin(run_centreline(design, run), run).own_gap() > 2 * opencascade.BEYOND


def test_length_volume_and_surface(folder):
    designs = chosen(folder)
    assert len(designs) >= 10
    rng = np.random.default_rng(6)
    faults = []
    for design, entry, made in designs:
        run = next(run for run in design["runs"] if run["name"] == made["name"])
        line = run_centreline(design, run)
        section = Skin(line, run).section
        label = f"{made['stl']}: "
        length = opencascade.wire_length(opencascade.spine(line))
        # The kernel measures a helix on a spline that it lays through it.
        exact = all(row["kind"] in ("bend", "end") for row in entry["bend_table"])
        if abs(length - entry["length_mm"]) > (1e-9 if exact else 1e-7) * length:
            faults.append(f"{label}length {entry['length_mm']}, OpenCASCADE {length}")
        solid = opencascade.tube(line, section)
        volume = opencascade.volume(solid)
        if abs(volume - entry["material_mm3"]) > 1e-6 * volume:
            faults.append(f"{label}volume {entry['material_mm3']}, OpenCASCADE {volume}")
        corners, faces = welded(stl.read((folder / made["stl"]).read_bytes())[0])
        corners = corners.astype(float)
        points = np.concatenate([rng.choice(corners, POINTS), rng.choice(corners[faces].mean(axis=1), POINTS)])
        off = opencascade.distances(solid, points).max()
        if not off <= made["deviation"] * (1 + 1e-6):
            faults.append(f"{label}{off} mm off OpenCASCADE's surface, allowed {made['deviation']}")
    assert not faults, "\n".join(faults)


def test_the_judge_and_the_exact_skin_agree():
    """Two ways to the same distance: plane geometry in the tube's own coordinates, and the kernel's surfaces."""
    *_, skin = good(0.05)
    rng = np.random.default_rng(8)
    points = skin.samples(300, rng) + rng.normal(scale=0.2, size=(1, 3))
    points = rng.choice(points, 80)
    assert opencascade.distances(opencascade.tube(skin.line, skin.section), points) == pytest.approx(
        skin.distance(points), abs=1e-9)


def test_the_judge_sees_a_wrong_tube():
    v, _, skin = good(0.05)
    wide = opencascade.pipe(skin.line, skin.section.outer + 0.2, skin.section.inner)
    assert opencascade.volume(wide) > 1.05 * skin.section.material_volume()
    middle = v[np.abs(v[:, 0] - 20) < 8]
    outside = middle[skin.distance(middle.astype(float)) < 0.06][:20].astype(float)
    outer = outside[np.hypot(outside[:, 1], outside[:, 2]) > 5]
    assert opencascade.distances(wide, outer).min(initial=1) > 0.1
