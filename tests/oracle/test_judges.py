"""The judges judged: each must pass a right mesh and catch what it is there for."""

import functools

import numpy as np
import pytest

import controls
import stl
import three_mf
from solids import welded
from sweep import Verdict, judge_mesh, judge_three_mf

ALLOWED = 0.02


def verdict_on(corners, faces, skin):
    corners, faces = welded(np.asarray(corners, np.float32)[faces])
    verdict = Verdict("control", "control", "control")
    judge_mesh(verdict, corners, faces, skin, ALLOWED, np.random.default_rng(1))
    return verdict


@pytest.fixture(scope="module")
def good():
    return controls.good(ALLOWED)


@functools.cache
def verdict_on_broken(break_it):
    v, f, skin = controls.good(ALLOWED)
    return verdict_on(*break_it(v, f, skin), skin)


def test_a_right_mesh_passes_every_judge():
    # Inscribed at a fifth of what is allowed, so that its volume is right too.
    verdict = verdict_on(*controls.good(ALLOWED / 5))
    assert verdict.faults == {}
    assert verdict.measured["error"] < 0.25 and abs(verdict.measured["volume"]) < 5e-4


@pytest.mark.parametrize("break_it, question, word", [
    (controls.missing_face, "solid", "trimesh: not watertight"),
    (controls.missing_face, "solid", "manifold3d: "),
    (controls.turned_face, "solid", "trimesh: winding"),
    (controls.turned_face, "solid", "manifold3d: "),
    (controls.inside_out, "solid", "so not outward"),
    (controls.inside_out, "solid", "manifold3d: volume"),
    (controls.twice, "solid", "2 bodies"),
    (controls.speck, "solid", "Euler number"),
    (controls.speck, "solid", "genus"),
    (controls.plugged, "solid", "Euler number"),
    (controls.plugged, "solid", "manifold3d: genus"),
    (controls.dented, "deviation", "the mesh leaves the skin"),
    (controls.grown, "deviation", "the mesh leaves the skin"),
    (controls.grown, "deviation", "the skin leaves the mesh"),
    (controls.coarse, "deviation", "the skin leaves the mesh"),
    (controls.coarse, "solid", "manifold3d: volume"),
    (controls.no_chamfer, "deviation", "the mesh leaves the skin"),
    (controls.no_edge_break, "deviation", "the mesh leaves the skin"),
    (controls.one_end_short, "deviation", "the skin leaves the mesh"),
    (controls.one_end_short, "deviation", "box"),
    (controls.one_bend_wide, "deviation", "the mesh leaves the skin"),
    (controls.too_tight, "crossing", "CGAL"),
    (controls.sliver, "crossing", "without area"),
])
def test_a_broken_mesh_is_caught(break_it, question, word):
    verdict = verdict_on_broken(break_it)
    assert any(word in fault for fault in verdict.faults.get(question, [])), verdict.faults


def faces_through(points):
    """Two faces on the given corners, sharing those that are listed twice."""
    corners = np.unique(np.array(points, float), axis=0)
    index = {tuple(p): i for i, p in enumerate(corners)}
    return corners, np.array([index[tuple(map(float, p))] for p in points]).reshape(2, 3)


@pytest.mark.parametrize("points, crosses", [
    ([(0, 0, 0), (9, 0, 0), (0, 9, 0), (0, 0, 1), (9, 0, 1), (0, 9, 1)], False),
    ([(0, 0, 0), (9, 0, 0), (0, 9, 0), (2, 2, -1), (3, 2, 1), (2, 3, 1)], True),
    ([(0, 0, 0), (9, 0, 0), (0, 9, 0), (2, 2, 0), (3, 2, 1), (2, 3, 1)], True),
    ([(0, 0, 0), (9, 0, 0), (0, 9, 0), (2, 2, 0), (3, 2, 0), (2, 3, 0)], True),
    ([(0, 0, 0), (9, 0, 0), (0, 9, 0), (9, 0, 0), (0, 0, 0), (4, 4, 0)], True),
    ([(0, 0, 0), (9, 0, 0), (0, 9, 0), (9, 0, 0), (0, 0, 0), (4, 4, 1e-7)], False),
    ([(0, 0, 0), (9, 0, 0), (0, 9, 0), (9, 0, 0), (0, 0, 0), (4, -4, 0)], False),
    ([(0, 0, 0), (9, 0, 0), (0, 9, 0), (0, 0, 0), (3, 3, 1), (3, 3, -1)], True),
    ([(0, 0, 0), (9, 0, 0), (0, 9, 0), (0, 0, 0), (3, 2, 0), (2, 3, 0)], True),
    ([(0, 0, 0), (9, 0, 0), (0, 9, 0), (0, 0, 0), (-3, -2, 0), (-2, -3, 0)], False),
])
def test_crossing_is_told_from_touching_neighbours(points, crosses):
    from solids import by_cgal
    assert bool(by_cgal(*faces_through(points))) == crosses


def test_a_right_3mf_passes(good):
    v, f, _ = good
    verdict = Verdict("control", "control", "a tube")
    judge_three_mf(verdict, three_mf.write({"a tube": (v, f)}), "a tube", v[f])
    assert verdict.faults == {}


@pytest.mark.parametrize("change, word", [
    (lambda v, f: three_mf.write({"a tube": (v, f)}, "inch"), "not the millimetre"),
    (lambda v, f: three_mf.write({"another": (v, f)}), "not one called"),
    (lambda v, f: three_mf.write({"a tube": (v, np.concatenate([f[:1, ::-1], f[1:]]))}), "not manifold and oriented"),
    (lambda v, f: three_mf.write({"a tube": (v, f[1:])}), "not manifold and oriented"),
    (lambda v, f: three_mf.write({"a tube": (v + np.float32(0.01), f)}), "not those of the STL"),
    (lambda v, f: three_mf.write({"a tube": (v, f)})[:-200], "refuses the file"),
    (lambda v, f: b"", "refuses the file"),
])
def test_a_broken_3mf_is_caught(good, change, word):
    v, f, _ = good
    verdict = Verdict("control", "control", "a tube")
    judge_three_mf(verdict, change(v, f), "a tube", v[f])
    assert any(word in fault for fault in verdict.faults.get("3mf", [])), verdict.faults


def test_stl_faults_are_caught(good):
    v, f, _ = good
    right = stl.write(v, f)
    triangles, faults = stl.read(right)
    assert faults == [] and np.array_equal(triangles, v[f])
    assert "solid" in stl.read(b"solid" + right[5:])[1][0]
    assert "bytes for" in stl.read(right[:-1])[1][0]
    turned = bytearray(right)
    turned[84:96] = np.array([0.6, 0.8, 0], "<f4").tobytes()
    turned[84 + 50:96 + 50] = (-np.frombuffer(right, "<f4", 3, 84 + 50)).tobytes()
    assert "normals are wrong" in stl.read(bytes(turned))[1][0]
