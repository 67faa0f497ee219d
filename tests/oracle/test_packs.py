"""Packs of made-up designs, of every way to print, cut and whole, judged file by file: archives, checksums, texts, solids, plates,
coupons; and pieces put back together where their files in the datum say that they were."""

import json
import sys
from xml.etree import ElementTree

import numpy as np
import pytest

import solids
import stl
import three_mf
from joints import faults_together, gaps, solid
from packs import Rows, faults_of_references, faults_of_sums, opened, texts
from standing import rigid

# Packs, of these with pieces, ways to print, solids at least, and of these some that stand on no plate.
LEAST, LEAST_CUT, WAYS, LEAST_SOLIDS, LEAST_LEFT = 200, 40, {"resin", "filament", "powder"}, 250, 10


@pytest.fixture(scope="module")
def packs(packs_folder):
    found = json.loads((packs_folder / "manifest.json").read_text())["packs"]
    return [(f"{pack['pack']} ({pack['kind']}, seed {pack['seed']})", pack, opened(packs_folder / pack["pack"])) for pack in found]


@pytest.fixture(scope="module")
def stood(packs):
    """Of each pack the rows of its sheet, each with its run and piece of the report and its solid as it stands."""
    found = []
    for what, pack, files in packs:
        rows = Rows()
        rows.feed(files["sheet.html"].decode())
        found.append((what, pack, files, rows.found))
    return found


def told(folder, pack):
    report = json.loads((folder / pack["report"]).read_text())
    return [(run, piece) for run in report["runs"] if run["made"] for piece in run["pieces"]]


def test_every_archive_opens_and_its_checksums_are_its_own(packs):
    assert len(packs) >= LEAST and {pack["way"] for _, pack, _ in packs} == WAYS
    assert sum(bool(pack["cut"]) for _, pack, _ in packs) >= LEAST_CUT
    assert [fault for what, _, files in packs for fault in faults_of_sums(files)] == []


def test_it_holds_its_design(packs, packs_folder):
    for what, pack, files in packs:
        designs = [data for name, data in files.items() if "/" not in name and name.endswith(".json")]
        assert designs == [(packs_folder / pack["design"]).read_bytes()], what


def test_every_text_can_be_read_and_none_points_outside(packs):
    faults, count = [], 0
    for what, _, files in packs:
        for name, text in texts(files):
            count += 1
            # A model is read by lib3mf below, in strict mode.
            if name.endswith((".html", ".svg", ".rels", ".xml")):
                ElementTree.fromstring(text)
            faults += [f"{what}: {fault}" for fault in faults_of_references(name, text)]
    assert faults == [] and count > 10 * len(packs)


def faults_of_solid(corners, faces, volume):
    return solids.by_trimesh(corners, faces) + solids.by_manifold(corners, faces, volume)[0]


def test_every_solid_is_closed_and_holds_what_the_report_says(stood, packs_folder, capsys):
    faults, count, stands, cut = [], 0, 0, 0
    for what, pack, files, rows in stood:
        pieces = told(packs_folder, pack)
        assert len(rows) == len(pieces), what
        for row, (run, piece) in zip(rows, pieces):
            name = f"{what}: {row['data-file']}"
            triangles, wrong = stl.read(files[f"{row['data-file']}.stl"])
            meshes, also = three_mf.read(files[f"{row['data-file']}.3mf"])
            one = next(iter(meshes.values()), (np.zeros((0, 3)), np.zeros((0, 3), int)))
            faults += [f"{name}: {fault}" for fault in wrong + also]
            if len(meshes) != 1 or len(one[1]) != len(triangles) or not np.array_equal(one[0][one[1]], triangles):
                faults.append(f"{name}: its 3MF is not its STL")
            corners, faces = solids.welded(triangles)
            faults += [f"{name}: {fault}" for fault in faults_of_solid(corners, faces, piece["material_mm3"])]
            low, high = corners.min(axis=0).astype(float), corners.max(axis=0).astype(float)
            if not np.allclose(high - low, [float(side) for side in row["data-box"].split()], atol=1e-9):
                faults.append(f"{name}: its box is {high - low}, told {row['data-box']}")
            count, cut = count + 1, cut + (len(run["pieces"]) > 1)
            stands += row["data-stands"] == "true"
    with capsys.disabled():
        print(f"\n{count} solids of packs, {cut} of them pieces; {stands} stand on their plates", file=sys.stderr)
    assert faults == [], f"{len(faults)} faults:\n" + "\n".join(faults[:40])
    assert count >= LEAST_SOLIDS and min(stands, cut) >= LEAST_SOLIDS / 2 and count - stands >= LEAST_LEFT


def test_plates_hold_what_stands_apart_inside_the_room(stood):
    crowded = 0
    for what, pack, files, rows in stood:
        printer = json.loads(next(data for name, data in files.items() if "/" not in name and name.endswith(".json")))["process"]["printer"]
        margin, volume, off = printer["margin"], np.array(printer["build_volume"]), pack["deviation"] + 0.011
        numbers = {int(row["data-plate"]) for row in rows if row["data-plate"]}
        assert {f"plates/plate-{number}.3mf" for number in numbers} == {name for name in files if name.startswith("plates/")}, what
        assert all(bool(row["data-plate"]) == (row["data-stands"] == "true") for row in rows), what
        for number in numbers:
            meshes, faults = three_mf.read(files[f"plates/plate-{number}.3mf"])
            assert faults == [] and len(meshes) == sum(row["data-plate"] == str(number) for row in rows), what
            placed = []
            for corners, faces in meshes.values():
                assert solids.by_trimesh(corners, faces) == [], what
                assert (corners.min(axis=0)[:2] >= margin - off).all() and corners.min(axis=0)[2] >= -off, what
                assert (corners.max(axis=0) <= volume - margin + off).all(), what
                one = solid(corners, faces)
                assert all((one ^ other).is_empty() for other in placed), what
                placed.append(one)
            crowded += len(placed) > 1
    assert crowded > 20


def test_every_coupon_is_a_set_of_tubes(packs):
    count = 0
    for what, _, files in packs:
        for name in (name for name in files if name.startswith("coupons/")):
            meshes, faults = three_mf.read(files[name])
            assert faults == [] and meshes, f"{what}: {name}"
            for corners, faces in meshes.values():
                assert solids.by_trimesh(corners, faces) == [], f"{what}: {name}"
            count += 1
    assert count >= 100


def read(folder, told):
    triangles, faults = stl.read((folder / told["file"]).read_bytes())
    assert faults == [], told
    return triangles


def test_pieces_fit_with_the_stated_gap_and_together_are_the_run(stood, packs_folder):
    faults, joints = [], 0
    for what, pack, files, rows in stood:
        by_run = {}
        for row, (run, _) in zip(rows, told(packs_folder, pack)):
            by_run.setdefault(run["name"], []).append(row["data-file"])
        for cut in pack["cut"]:
            name = f"{what}: {cut['run']}"
            backs = []
            for file, piece in zip(by_run[cut["run"]], cut["pieces"], strict=True):
                standing, datum = stl.read(files[f"{file}.stl"])[0].astype(float), read(packs_folder, piece).astype(float)
                # Where it stood in the run, by its own corners, which keep their order.
                turn, shift, left = rigid(standing.reshape(-1, 3), datum.reshape(-1, 3))
                if left > 1e-3:
                    faults.append(f"{name}: what stands is {left} mm off the piece")
                corners, faces = solids.welded(stl.read(files[f"{file}.stl"])[0])
                backs.append((corners @ turn.T + shift, faces))
            joined = solid(*solids.welded(read(packs_folder, cut["joined"])))
            placed = [solid(*back) for back in backs]
            faults += [f"{name}: neighbours reach into each other" for one, other in zip(placed, placed[1:]) if not (one ^ other).is_empty()]
            materials = [piece["material"] for piece in [*cut["pieces"], cut["joined"]]]
            faults += [f"{name}: {fault}" for fault in faults_together(placed, joined, materials, pack["deviation"])[0]]
            for joint, before, after in zip(cut["joints"], backs[:-1], backs[1:], strict=True):
                # Both skins may be off by the deviation.
                wrong = [gap for gap in gaps(joint, before, after, 4) if abs(gap - joint["clearance"]) > 2 * pack["deviation"] + 1e-3]
                faults += [f"{name}: a gap of {gap} mm, stated {joint['clearance']}" for gap in wrong[:1]]
                joints += 1
    assert faults == [], f"{len(faults)} faults:\n" + "\n".join(faults[:40])
    assert joints >= LEAST_CUT


@pytest.mark.parametrize("name, text", [
    ("sheet.html", '<html><img src="http://host/a.png"/></html>'),
    ("sheet.html", '<html><a href="//host/a">a</a></html>'),
    ("sheet.html", "<html><script>1</script></html>"),
    ("sheet.html", '<html><p onclick="go()">a</p></html>'),
    ("plots/loss.svg", '<svg xmlns="http://www.w3.org/2000/svg"><style>a { fill: url(b.svg) }</style></svg>'),
    ("table.csv", "name,https://host/\n"),
    ("a.3mf/_rels/.rels", '<Relationship TargetMode="External" Target="/3D/a.model"/>'),
    ("a.3mf/_rels/.rels", '<Relationship Target="http://host/a.model"/>'),
])
def test_what_points_outside_is_seen(name, text):
    assert faults_of_references(name, text)


def test_names_of_name_spaces_and_places_inside_are_let_be():
    assert faults_of_references("a.svg", '<svg xmlns="http://www.w3.org/2000/svg"><use href="#a"/></svg>') == []
    assert faults_of_references("a.3mf/_rels/.rels", '<Relationship Type="http://schemas.host/x" Target="/3D/3dmodel.model"/>') == []


def test_a_wrong_checksum_a_missing_and_a_needless_one_are_seen():
    files = {"a": b"1", "b": b"2", "checksums.txt": b"0" * 64 + b"  a\n" + b"0" * 64 + b"  c\n"}
    assert len(faults_of_sums(files)) == 3
