"""Whether a run is rightly made or not made, and whether the way to mend it that a finding offers really does."""

import copy

import numpy as np

from centreline import NoCentreline, end_of, run_centrelines
from section import Seats
from skin import Skin

# What the engine states as its own least: room between a bend's centre and the skin, and wall at the tip, mm. Between
# these and none at all either answer is right.
ROOM, TIP = 0.01, 0.06
# Findings that say a centreline of the asked radii is not there.
OBSTACLES = {"corners_too_close", "lead_too_short", "corner_out_of_reach", "turns_back", "same_point"}
# Radii are offered rounded down to this, mm.
ROUNDED = 0.001


def skin_of(design, run, entry):
    """The exact skin, or NoCentreline; of several as short, the one whose box is the report's."""
    hint = None
    if entry["made"]:
        points = np.array(entry["points_mm"])
        hint = np.ptp(points, axis=0) if len(points) < 3 else points[1:-1].mean(axis=0) - points[0]
        hint = hint if np.linalg.norm(hint) > 0 else None
    lines = run_centrelines(design, run, hint)
    for line in lines:
        keeps_leads(design, run, line)
    skins = [Skin(line, run, seats_of(design, run)) for line in lines]
    if len(skins) == 1 or not entry["made"]:
        return skins[0]
    stated = [entry["bounds_mm"]["min"], entry["bounds_mm"]["max"]]
    return min(skins, key=lambda skin: np.abs(np.array(skin.bounds()) - stated).max())


def seats_of(design, run):
    """What the section must know of the fittings at the run's ends, and of the printer."""
    ends = [end_of(design, run, run[key]) for key in ("from", "to")]
    distances = [[float(np.linalg.norm(point - end.face)) for end in ends for point in [getattr(end, key)]] for key in ("mouth", "free")]
    reach = [float(np.abs(end.face).max()) for end in ends]
    return Seats(*map(tuple, distances), tuple(reach), design["process"]["printer"]["least_wall"])


def keeps_leads(design, run, line):
    """NoCentreline where the first or last straight ends before the lead does."""
    for name, piece in ((run["from"], line.pieces[0]), (run["to"], line.pieces[-1])):
        end = end_of(design, run, name)
        least = np.linalg.norm(end.free - end.face)
        straight = piece.length if piece.radius is None else 0.0
        if straight < least - 1e-7:
            raise NoCentreline(f"only {straight} mm of {least} mm are straight at '{name}'")


def faults_of(case, design, run, entry, report, first):
    """Faults of the run's being made or not; `first` for the case's first run, which its expectation is about."""
    made, faults = entry["made"], []
    if case.get("expect") in ("made", "stopped") and first and made != (case["expect"] == "made"):
        faults.append(f"made is {made}, where it was made up to be {case['expect']}")
    stops = [f for f in report["findings"] if f["severity"] == "stop" and f["run"] == run["name"]]
    if made:
        return faults
    if not stops:
        faults.append("not made, and no finding says why")
    if any(entry[key] is not None for key in ("length_mm", "material_mm3", "bore_mm3", "mass_g", "bounds_mm")):
        faults.append("not made, and yet it has numbers")
    try:
        skin = skin_of(design, run, entry)
    except (NoCentreline, ValueError):
        return faults + mending_faults(design, run, entry, [f for f in stops if f["code"] in OBSTACLES])
    tightest = min((p.radius for p in skin.line.pieces if p.radius is not None), default=np.inf)
    if tightest > skin.section.widest + ROOM and skin.section.tip - skin.section.mouth > TIP:
        faults.append(f"not made, though it could be: {[f['code'] for f in stops]}")
    return faults


def mending_faults(design, run, entry, obstacles):
    """A lone obstacle's fix must leave a centreline, and a radius it names as the largest must be just that."""
    if len(obstacles) != 1 or not obstacles[0]["fix"]:
        return []
    (obstacle,) = obstacles
    label, faults = f"{obstacle['code']} with {obstacle['fix']}", []
    if not exists(patched(design, obstacle["fix"]), run, entry):
        faults.append(f"still no centreline after mending {label}")
    radii = [step for step in obstacle["fix"] if step["path"].endswith("bend_radius")]
    if radii and len(radii) == len(obstacle["fix"]):
        more = [{**step, "value": step["value"] + 2 * ROUNDED} for step in radii]
        if exists(patched(design, more), run, entry):
            faults.append(f"a larger radius would do than {label}")
    return faults


def exists(design, run, entry):
    run = next(other for other in design["runs"] if other["name"] == run["name"])
    try:
        skin_of(design, run, entry)
    except ValueError:
        return True
    except NoCentreline:
        return False
    return True


def patched(design, steps):
    """The design after a JSON Patch of `add`, `replace` and `remove` steps (RFC 6902)."""
    design = copy.deepcopy(design)
    for step in steps:
        *way, last = [part.replace("~1", "/").replace("~0", "~") for part in step["path"].split("/")[1:]]
        target = design
        for part in way:
            target = target[int(part) if isinstance(target, list) else part]
        if isinstance(target, list):
            if step["op"] == "remove":
                target.pop(int(last))
            elif step["op"] == "add":
                target.insert(len(target) if last == "-" else int(last), step["value"])
            else:
                target[int(last)] = step["value"]
        elif step["op"] == "remove":
            del target[last]
        else:
            target[last] = step["value"]
    return design
