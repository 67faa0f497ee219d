"""The packs of all demos, unpacked by Python's zipfile and Info-ZIP's unzip and summed by hashlib and GNU sha256sum; their
solids judged as those of the sweep are, and held against what the sheet says of them, read by Python's own parsers."""

import json
import shutil
import subprocess
import zipfile
from xml.etree import ElementTree

import manifold3d
import numpy as np
import pytest

import solids
import stl
import three_mf
from packs import Rows, faults_of_references, faults_of_sums, opened, texts


@pytest.fixture(scope="module")
def packs(folder):
    found = json.loads((folder / "manifest.json").read_text())["packs"]
    assert len(found) >= 7
    return [(folder / pack["pack"], json.loads((folder / pack["report"]).read_text()),
             (folder / pack["design"]).read_text()) for pack in found]


def test_other_programs_unpack_it(packs, tmp_path):
    for path, _, _ in packs:
        files = opened(path)
        if unzip := shutil.which("unzip"):
            told = subprocess.run([unzip, "-t", str(path)], capture_output=True, text=True)
            assert told.returncode == 0, told.stdout + told.stderr
        assert faults_of_sums(files) == [], path
        if sums := shutil.which("sha256sum"):
            place = tmp_path / path.stem
            zipfile.ZipFile(path).extractall(place)
            told = subprocess.run([sums, "--strict", "-c", "checksums.txt"], cwd=place, capture_output=True, text=True)
            assert told.returncode == 0, told.stdout + told.stderr
            assert len(told.stdout.splitlines()) == len(files) - 1, "every file but the list itself"


def test_it_holds_the_design(packs):
    for path, _, design in packs:
        texts = [data for name, data in opened(path).items() if "/" not in name and name.endswith(".json")]
        assert texts == [design.encode()], path


def test_nothing_in_it_points_outside(packs):
    for path, _, _ in packs:
        for name, text in texts(opened(path)):
            assert faults_of_references(name, text) == [], path


def test_every_solid_is_the_tube_that_the_sheet_orders(packs):
    for path, report, _ in packs:
        files = opened(path)
        text = files["sheet.html"].decode()
        ElementTree.fromstring(text)
        rows = Rows()
        rows.feed(text)
        made = [run for run in report["runs"] if run["made"]]
        assert len(rows.found) == len(made) > 0, path
        for row, run in zip(rows.found, made):
            what = f"{path}: {row['data-file']}"
            corners, faces = one_of(files[f"{row['data-file']}.3mf"], run["name"], what)
            triangles, faults = stl.read(files[f"{row['data-file']}.stl"])
            assert faults == [], what
            for points, triples in (solids.welded(triangles), (corners, faces)):
                assert solids.by_trimesh(points, triples) == [], what
                assert solids.by_cgal(points, triples) == [], what
                assert solids.by_manifold(points, triples, run["material_mm3"])[0] == [], what
                low, high = points.min(axis=0).astype(float), points.max(axis=0).astype(float)
                assert high - low == pytest.approx([float(side) for side in row["data-box"].split()], abs=1e-9), what
                assert low[2] == pytest.approx(float(row["data-low"]), abs=1e-9), what
            assert len(faces) == int(row["data-triangles"]), what
            assert float(row["data-cm3"]) == pytest.approx(run["material_mm3"] / 1e3, rel=1e-12), what


def one_of(data, name, what):
    meshes, faults = three_mf.read(data)
    assert faults == [] and list(meshes) == [name], what
    return meshes[name]


def test_every_tube_stands_inside_the_build_volume_or_says_that_it_cannot(packs):
    stood = 0
    for path, report, design in packs:
        printer = json.loads(design)["process"]["printer"]
        margin, volume = printer["margin"], np.array(printer["build_volume"])
        files, rows = opened(path), Rows()
        rows.feed(files["sheet.html"].decode())
        for row, run in zip(rows.found, report["runs"]):
            what = f"{path}: {row['data-file']}"
            corners = stl.read(files[f"{row['data-file']}.stl"])[0].reshape(-1, 3)
            low, high = corners.min(axis=0), corners.max(axis=0)
            if row["data-stands"] == "true":
                # A file's skin may be off by its deviation, 0.02.
                assert (low[:2] >= margin - 0.03).all() and low[2] >= -0.03, what
                assert (high <= volume - margin + 0.03).all(), what
                stood += 1
            else:
                assert f"{run['name']}: it fits a build volume of" in files["sheet.html"].decode(), what
                assert low == pytest.approx(run["bounds_mm"]["min"], abs=0.03), f"{what}: in the datum"
    assert stood > len(packs)


def test_the_pieces_of_a_plate_are_those_the_sheet_puts_there_and_share_nothing(packs):
    crowded = 0
    for path, _, design in packs:
        printer = json.loads(design)["process"]["printer"]
        margin, volume = printer["margin"], np.array(printer["build_volume"])
        files, rows = opened(path), Rows()
        rows.feed(files["sheet.html"].decode())
        plates = {name: data for name, data in files.items() if name.startswith("plates/")}
        told = {int(row["data-plate"]) for row in rows.found if row["data-plate"]}
        assert {f"plates/plate-{number}.3mf" for number in told} == set(plates), path
        for number in told:
            what = f"{path}: plate {number}"
            meshes, faults = three_mf.read(plates[f"plates/plate-{number}.3mf"])
            assert faults == [] and len(meshes) == sum(row["data-plate"] == str(number) for row in rows.found), what
            placed = []
            for corners, faces in meshes.values():
                assert (corners.min(axis=0)[:2] >= margin - 0.03).all() and corners.min(axis=0)[2] >= -0.03, what
                assert (corners.max(axis=0) <= volume - margin + 0.03).all(), what
                solid = manifold3d.Manifold(manifold3d.Mesh64(np.array(corners, float), np.array(faces, np.uint64)))
                assert solid.status() == manifold3d.Error.NoError, what
                assert all((solid ^ other).is_empty() for other in placed), what
                placed.append(solid)
            crowded += len(placed) > 1
    assert crowded > 0


def test_every_coupon_is_a_set_of_tubes(packs):
    for path, _, _ in packs:
        coupons = {name: data for name, data in opened(path).items() if name.startswith("coupons/")}
        assert coupons, path
        for name, data in coupons.items():
            meshes, faults = three_mf.read(data)
            assert faults == [] and meshes, f"{path}: {name}"
            for corners, faces in meshes.values():
                assert solids.by_trimesh(corners, faces) == [], f"{path}: {name}"
