"""Judges every made run of a swept set of designs, two at a time, and keeps what was found and measured."""

import json
import multiprocessing
import zlib
from dataclasses import dataclass, field
from pathlib import Path

import numpy as np

import deviation
import numbers_of_report
import solids
import stl
import three_mf
from centreline import NoCentreline, run_centrelines
from skin import Skin

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
    design = json.loads((folder / case["design"]).read_text())
    report = json.loads((folder / case["report"]).read_text())
    return [judge_run(folder, case, design, report, made) for made in case["runs"]]


def judge_run(folder, case, design, report, made):
    run = next(run for run in design["runs"] if run["name"] == made["name"])
    entry = next(entry for entry in report["runs"] if entry["name"] == made["name"])
    verdict = Verdict(case["design"], case["kind"], made["name"], entry["made"])
    rng = np.random.default_rng(zlib.crc32(case["design"].encode()))
    try:
        skin = nearest_skin(design, run, entry)
    except (NoCentreline, ValueError) as reason:
        if entry["made"]:
            verdict.add("existence", [f"made, though there is no such tube: {reason}"])
        return verdict
    if not entry["made"]:
        verdict.measured["stops"] = [f["code"] for f in report["findings"] if is_stop(f, made["name"])]
        if not verdict.measured["stops"]:
            verdict.add("existence", ["not made, and no finding says why"])
        return verdict
    verdict.add("report", numbers_of_report.faults_of(run, entry, design, skin))
    gap = skin.own_gap()
    if gap < -made["deviation"] and not any(is_stop(f, made["name"], "meets_itself") for f in report["findings"]):
        verdict.add("existence", [f"runs through itself by {-gap} mm, and no finding says so"])
    if not made.get("stl") or not made.get("3mf"):
        verdict.add("existence", ["made, but no file of it was written"])
        return verdict
    triangles, faults = stl.read((folder / made["stl"]).read_bytes())
    verdict.add("stl", faults)
    if not faults:
        corners, faces = solids.welded(triangles)
        judge_mesh(verdict, corners, faces, skin, made["deviation"], rng, gap > made["deviation"])
        judge_three_mf(verdict, (folder / made["3mf"]).read_bytes(), made["name"], triangles)
    return verdict


def nearest_skin(design, run, entry):
    """The exact skin; of several as short, the one whose box is the report's."""
    hint = None
    if entry["made"]:
        points = np.array(entry["points_mm"])
        hint = np.ptp(points, axis=0) if len(points) < 3 else points[1:-1].mean(axis=0) - points[0]
        hint = hint if np.linalg.norm(hint) > 0 else None
    skins = [Skin(line, run) for line in run_centrelines(design, run, hint)]
    if len(skins) == 1 or not entry["made"]:
        return skins[0]
    stated = [entry["bounds_mm"]["min"], entry["bounds_mm"]["max"]]
    return min(skins, key=lambda skin: np.abs(np.array(skin.bounds()) - stated).max())


def is_stop(finding, run, code=None):
    return finding["severity"] == "stop" and finding["run"] == run and code in (None, finding["code"])


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
    off = max(np.abs(corners.min(axis=0) - low).max(), np.abs(corners.max(axis=0) - high).max())
    if not off <= allowed * (1 + 1e-9):
        verdict.add("deviation", [f"the mesh's box is {off} mm off the exact one"])
    verdict.measured |= {"error": max(out, back) / allowed, "volume": float(error), "triangles": len(faces),
                         "height": height, "length": skin.line.length, "allowed": allowed}


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
