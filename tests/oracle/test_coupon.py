"""The fit coupon's files, sliced as if they were gauged: each stick a tube of its own, each end its size and its rings."""

import json

import manifold3d
import numpy as np
import pytest

import solids
import stl
import three_mf

# A slice every so many mm along a stick; a ring is 0.8 mm wide.
PITCH = 0.2
STEP, SIZES = 0.05, 7


@pytest.fixture(scope="module")
def coupons(folder):
    found = json.loads((folder / "manifest.json").read_text())["coupons"]
    assert len(found) >= 12
    return [(folder, coupon) for coupon in found]


def is_tube(corners, faces):
    return [*solids.by_trimesh(corners, faces), *solids.by_cgal(corners, faces), *solids.by_area(corners, faces)[0]]


def test_every_stick_is_a_tube_of_its_own(coupons):
    for folder, coupon in coupons:
        sticks, faults = three_mf.read((folder / coupon["3mf"]).read_bytes())
        assert faults == [] and len(sticks) == (SIZES + 1) // 2, coupon
        boxes = []
        for name, (corners, faces) in sticks.items():
            assert is_tube(corners, faces) == [], f"{coupon}: {name}"
            boxes.append((corners[:, 0].min(), corners[:, 0].max()))
        boxes.sort()
        assert all(left[1] + 3 < right[0] for left, right in zip(boxes, boxes[1:])), f"{coupon}: sticks stand apart"


def gauged(corners, faces):
    """Heights, and outer diameter and bore at each, by the areas of slices."""
    solid = manifold3d.Manifold(manifold3d.Mesh64(np.array(corners, float), np.array(faces, np.uint64)))
    assert solid.status() == manifold3d.Error.NoError and solid.genus() == 1
    low, high = corners[:, 2].min(), corners[:, 2].max()
    heights = np.arange(low + PITCH / 2, high, PITCH)
    sizes = []
    for height in heights:
        areas = sorted(abs(area(ring)) for ring in solid.slice(float(height)).to_polygons())
        assert len(areas) == 2
        sizes.append([np.sqrt(4 * areas[1] / np.pi), np.sqrt(4 * areas[0] / np.pi)])
    return heights - low, np.array(sizes), high - low


def area(ring):
    x, y = np.asarray(ring, float).T
    return 0.5 * np.sum(x * np.roll(y, -1) - np.roll(x, -1) * y)


def rings(diameters, plain):
    """How many times the outside leaves its plain size by more than the middle's taper does, inward or outward."""
    off = np.abs(diameters - plain) > 0.12
    return int(np.sum(off[1:] & ~off[:-1]))


def test_every_end_has_its_size_and_its_rings(coupons):
    for folder, coupon in coupons:
        sticks, _ = three_mf.read((folder / coupon["3mf"]).read_bytes())
        ends, found = coupon["ends"], []
        finish = max(ends["chamfer_length"], ends["edge_break"])
        for corners, faces in sticks.values():
            heights, sizes, length = gauged(corners, faces)
            for from_end, half in ((heights, heights < length / 2), (length - heights, heights > length / 2)):
                at = np.argmin(np.abs(from_end - (finish + 0.5)))
                outer, bore = sizes[at]
                beyond = half & (from_end > finish + 1)
                order = np.argsort(from_end[beyond])
                found.append((rings(sizes[beyond][order, 0], outer), outer, bore))
        assert sorted(count for count, _, _ in found) == sorted([*range(1, SIZES + 1), (SIZES + 1) // 2]), coupon
        for count, outer, bore in found:
            off = STEP * (count - (SIZES + 1) // 2)
            assert outer == pytest.approx(coupon["outer_diameter"] + off, abs=0.02), coupon
            assert bore == pytest.approx(coupon["bore"] + off, abs=0.02), coupon


def test_a_corrected_run_is_as_good_a_tube(coupons):
    for folder, coupon in coupons:
        triangles, faults = stl.read((folder / coupon["corrected"]).read_bytes())
        assert faults == [], coupon
        assert is_tube(*solids.welded(triangles)) == [], coupon
