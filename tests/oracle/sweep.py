"""Judges every made run of a swept set of designs, two at a time, and keeps what was found and measured."""

import json
import multiprocessing
import zlib
from dataclasses import dataclass, field
from pathlib import Path

import numpy as np

import deviation
import existence
import numbers_of_report
import solids
import stl
import three_mf
from centreline import NoCentreline

SKIN_SAMPLES = 12_000


@dataclass
class Verdict:
    """What the judges say of one run: faults by question, and what was measured."""

    case: str
    kind: str
    run: str
    made: bool = True
    faults: dict = field(default_factory=dict)
    measured: dict = field(default_factory=dict)

    def add(self, question, faults):
        if faults:
            self.faults.setdefault(question, []).extend(faults)


def judge_all(folder, workers=2):
    """A verdict for every run of the sweep in `folder`."""
    folder = Path(folder)
    cases = json.loads((folder / "manifest.json").read_text())["cases"]
    jobs = [(str(folder), case) for case in cases]
    with multiprocessing.get_context("fork").Pool(workers) as pool:
        return [verdict for part in pool.imap_unordered(judge_case, jobs, chunksize=1) for verdict in part]


def judge_case(job):
    folder, case = Path(job[0]), job[1]
    stated, design, report = (json.loads((folder / case[key]).read_text()) for key in ("design", "canonical", "report"))
    verdicts = [judge_run(folder, case, design, report, made) for made in case["runs"]]
    verdicts[0].add("canonical", changed(stated, design))
    return verdicts


def changed(stated, canonical, place=""):
    """What the canonical text changes of what was stated; what it adds are defaults."""
    if isinstance(stated, dict) and isinstance(canonical, dict):
        pairs = [(key, stated[key], canonical.get(key)) for key in stated]
    elif isinstance(stated, list) and isinstance(canonical, list) and len(stated) == len(canonical):
        pairs = [(index, *pair) for index, pair in enumerate(zip(stated, canonical))]
    else:
        # A preset's name stands for the whole object of that name.
        same = stated == canonical or isinstance(canonical, dict) and stated == canonical.get("name")
        return [] if same else [f"{place}: {stated} became {canonical}"]
    return [fault for key, a, b in pairs for fault in changed(a, b, f"{place}/{key}")]


def judge_run(folder, case, design, report, made):
    run = next(run for run in design["runs"] if run["name"] == made["name"])
    entry = next(entry for entry in report["runs"] if entry["name"] == made["name"])
    verdict = Verdict(case["design"], case["kind"], made["name"], entry["made"])
    verdict.add("existence", existence.faults_of(case, design, run, entry, report, made is case["runs"][0]))
    if not entry["made"]:
        return verdict
    try:
        skin = existence.skin_of(design, run, entry)
    except (NoCentreline, ValueError) as reason:
        verdict.add("existence", [f"made, though there is no such tube: {reason}"])
        return verdict
    known = made.get("known_length_mm")
    if known and abs(known - skin.line.length) > 1e-9 * known:
        verdict.add("existence", [f"the independent centreline has {skin.line.length} mm, closed form {known}"])
    verdict.add("report", numbers_of_report.faults_of(run, entry, design, skin))
    gap = skin.own_gap()
    # What lies in a fitting is told as meeting that fitting.
    told = {f["code"] for f in report["findings"] if f["severity"] == "stop" and f["run"] == made["name"]}
    if gap < -made["deviation"] and not told & {"meets_itself", "meets_fitting"}:
        verdict.add("existence", [f"runs through itself by {-gap} mm, and no finding says so"])
    judge_files(verdict, folder, case, made, skin, gap > made["deviation"])
    return verdict


def judge_files(verdict, folder, case, made, skin, clear):
    if not made.get("stl") or not made.get("3mf"):
        verdict.add("existence", ["made, but no file of it was written"])
        return
    triangles, faults = stl.read((folder / made["stl"]).read_bytes())
    verdict.add("stl", faults)
    if not faults:
        corners, faces = solids.welded(triangles)
        rng = np.random.default_rng(zlib.crc32(made["stl"].encode()))
        judge_mesh(verdict, corners, faces, skin, made["deviation"], rng, clear)
        data = (folder / made["3mf"]).read_bytes()
        judge_three_mf(verdict, data, made["name"], triangles)
        canonical = (folder / case["canonical"]).read_text()
        materials, texts = three_mf.told(data)
        if set(materials.values()) != {json.loads(canonical)["process"]["material"]["name"]}:
            verdict.add("3mf", [f"to be printed in {materials}"])
        if texts != [canonical]:
            verdict.add("3mf", [f"{len(texts)} attachments, not the design alone"])


def judge_mesh(verdict, corners, faces, skin, allowed, rng, clear=True):
    """All judges of one mesh against the exact skin; a tube not `clear` of itself is let cross itself."""
    verdict.add("solid", solids.by_trimesh(corners, faces))
    faults, error = solids.by_manifold(corners, faces, skin.section.material_volume())
    verdict.add("solid", faults)
    if clear:
        verdict.add("crossing", solids.by_cgal(corners, faces))
    faults, height = solids.by_area(corners, faces)
    verdict.add("crossing", faults)
    out, at = deviation.mesh_to_skin(corners, faces, skin, rng)
    if not out <= allowed * (1 + 1e-9):
        verdict.add("deviation", [f"the mesh leaves the skin by {out} mm at {at.tolist()}, allowed {allowed}"])
    back, at = deviation.skin_to_mesh(corners, faces, skin, SKIN_SAMPLES, rng)
    if not back <= allowed * (1 + 1e-9):
        verdict.add("deviation", [f"the skin leaves the mesh by {back} mm at {at.tolist()}, allowed {allowed}"])
    low, high = skin.bounds()
    beyond = max((low - corners.min(axis=0)).max(), (corners.max(axis=0) - high).max())
    # The exact box of a lobed body is told for its crests; where none stands at the extreme it is as much too large.
    short = max((corners.min(axis=0) - low).max(), (high - corners.max(axis=0)).max()) - skin.section.deepest
    off = max(beyond, short)
    if not off <= allowed * (1 + 1e-9):
        verdict.add("deviation", [f"the mesh's box is {off} mm off the exact one"])
    if skin.section.deepest or skin.section.rings or skin.section.dressed:
        judge_wall(verdict, corners, skin, allowed)
    verdict.measured |= {"error": max(out, back) / allowed, "volume": float(error), "triangles": len(faces),
                         "height": height, "length": skin.line.length, "allowed": allowed}


def judge_wall(verdict, corners, skin, allowed):
    """The thinnest wall of the mesh between the finishes, by the outer corners' heights over the bore."""
    section = skin.section
    at, wall = skin.walls(np.asarray(corners, float))
    finish = max(section.chamfer, section.edge_break)
    if section.length <= 2 * (finish + allowed) + 1e-9:
        return  # A chamfer all along leaves nothing between the finishes.
    inside = (at > finish + allowed) & (at < section.length - finish - allowed)
    outside = inside & (wall > section.least_wall() / 2)
    least, exact = wall[outside].min(), section.least_wall()
    verdict.measured["wall"] = float(least - exact)
    if not -allowed * (1 + 1e-9) <= least - exact <= 2 * allowed:
        verdict.add("wall", [f"the thinnest wall of the mesh is {least} mm, exact {exact}, allowed {allowed}"])


def judge_three_mf(verdict, data, name, triangles):
    meshes, faults = three_mf.read(data)
    verdict.add("3mf", faults)
    if list(meshes) != [name]:
        verdict.add("3mf", [f"objects {list(meshes)}, not one called '{name}'"])
        return
    corners, faces = meshes[name]
    if not same_triangles(corners[faces], triangles):
        verdict.add("3mf", ["its triangles are not those of the STL"])


def same_triangles(one, other):
    return one.shape == other.shape and np.array_equal(*(
        np.sort(np.ascontiguousarray(t + 0.0, np.float32).reshape(len(t), 9).view("V36"), axis=0) for t in (one, other)))
