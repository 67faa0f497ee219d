"""The report's numbers of one run against the independent centreline and the closed forms."""

import numpy as np

from centreline import Pen

# A bend of less than this is a straight to any machine; its row may be left out, and its plane is noise. Degrees.
NO_BEND = 1e-7


def faults_of(run, entry, design, skin):
    """What is wrong in `entry`, the report's part for `run`, if anything."""
    line, section = skin.line, skin.section
    faults = []
    faults += differs("length_mm", entry["length_mm"], line.length)
    faults += differs("material_mm3", entry["material_mm3"], section.material_volume())
    faults += differs("bore_mm3", entry["bore_mm3"], section.bore_volume())
    density = design["process"]["material"]["density_g_per_cm3"]
    faults += differs("mass_g", entry["mass_g"], section.material_volume() * density / 1000)
    low, high = skin.bounds()
    for key, exact in (("min", low), ("max", high)):
        off = np.abs(np.array(entry["bounds_mm"][key]) - exact).max()
        if not off <= 1e-6 + 1e-9 * line.length:
            faults.append(f"bounds_mm/{key}: {entry['bounds_mm'][key]}, exact {exact.tolist()}")
    if any(piece.radius is not None and piece.normal is None for piece in line.pieces):
        return faults + curved_table_faults(entry["bend_table"], line)
    return faults + bend_table_faults(entry["bend_table"], line)


def differs(name, got, exact, relative=1e-9):
    if abs(got - exact) <= relative * abs(exact):
        return []
    return [f"{name}: {got}, exact {exact} ({got / exact - 1:.2e} off)"]


def bend_table_faults(table, line):
    rows = [(r["straight_mm"], r["rotation_deg"], r["angle_deg"], r["radius_mm"]) for r in table]
    faults = []
    if not rows or rows[0][1] != 0:
        faults.append("bend_table: the first rotation is not 0")
    if any(not -180 <= row[1] <= 180 for row in rows):
        faults.append("bend_table: a rotation outside -180..180")
    if any(not row[0] >= 0 for row in rows):
        faults.append("bend_table: a straight below 0")
    mine, theirs = plain(line.bend_table()), plain(rows)
    if len(mine) != len(theirs):
        return faults + [f"bend_table: {len(theirs)} rows, exact {len(mine)}"]
    for index, (got, exact) in enumerate(zip(theirs, mine)):
        turn = (got[1] - exact[1] + 180) % 360 - 180
        # A plane is known as well as its own and the bend before it turn.
        bends = [mine[i][2] for i in (index - 1, index) if 0 <= i < len(mine) and mine[i][2] > 0]
        known = 1e-7 / max(np.sin(np.radians(min(bends, default=90)) / 2), 1e-12)
        off = [abs(got[0] - exact[0]) > 1e-7 * (1 + line.length), exact[2] > 0 and abs(turn) > known,
               abs(got[2] - exact[2]) > 1e-7, abs(got[3] - exact[3]) > 1e-9]
        if any(off):
            faults.append(f"bend_table row {index}: {got}, exact {tuple(map(float, exact))}")
    return faults + walk_faults(rows, line)


def curved_table_faults(table, line):
    """A table with coils or smooth curves: rows of their own kind, length, angle and least radius.

    A curve hardly bent at an end has no plane there, so rotations are looked at only between bends and coils.
    """
    keys = ("straight_mm", "rotation_deg", "angle_deg", "radius_mm", "kind", "length_mm")
    mine, theirs = without_straights(line.bends()), without_straights([tuple(row[key] for key in keys) for row in table])
    if [row[4] for row in mine] != [row[4] for row in theirs]:
        return [f"bend_table: rows {[row[4] for row in theirs]}, exact {[row[4] for row in mine]}"]
    faults = []
    for index, (got, exact) in enumerate(zip(theirs, mine)):
        planes = {row[4] for row in mine[max(index - 1, 0):index + 1]}
        turn = 0.0 if planes & {"curve", "end"} or index == 0 else (got[1] - exact[1] + 180) % 360 - 180
        bends = [row[2] for row in mine[max(index - 1, 0):index + 1]]
        known = 1e-6 / max(np.sin(np.radians(min(*bends, 90)) / 2), 1e-12)
        sharp = 1e-9 if exact[4] in ("bend", "end") else 1e-6
        # Nearly straight ones have no radius to speak of.
        radius = exact[3] < 1e5 and not abs(got[3] - exact[3]) <= sharp * (1 + exact[3])
        angle = 1e-7 if exact[4] == "bend" else 1e-6 if exact[4] == "coil" else 1e-3
        off = [abs(got[0] - exact[0]) > 1e-7 * (1 + line.length), abs(turn) > known, abs(got[2] - exact[2]) > angle,
               radius, abs(got[5] - exact[5]) > 1e-9 * (1 + exact[5])]
        if any(off):
            faults.append(f"bend_table row {index}: {got}, exact {exact} ({off})")
    return faults


def without_straights(rows):
    """Rows without bends and curves that turn by nothing, whose lengths and straights are passed on."""
    kept, straight = [], 0.0
    for row in rows:
        straight += row[0]
        if row[4] in ("bend", "curve") and row[2] <= NO_BEND:
            straight += row[5]
            continue
        kept.append((straight, *row[1:]))
        straight = 0.0
    return kept


def plain(rows):
    """Rows without those that bend by nothing, their straights passed on, and with bends of one circle as one."""
    kept, straight, skipped = [], 0.0, False
    for row in rows[:-1]:
        straight += row[0]
        if row[2] <= NO_BEND:
            straight += np.radians(row[2]) * row[3]
            skipped = True
        elif kept and straight < 1e-7 and abs(row[1]) < 1e-6 and row[3] == kept[-1][3] and not skipped:
            # Two bends of one circle are one bend.
            kept[-1] = (*kept[-1][:2], kept[-1][2] + row[2], row[3])
            straight = 0.0
        else:
            # After a skipped bend the rotation counts from another plane than the row's own.
            rotation = np.nan if skipped else row[1]
            kept.append((straight, rotation if kept else 0.0, *row[2:]))
            straight, skipped = 0.0, False
    return kept + [(straight + rows[-1][0], 0.0, 0.0, 0.0)] if rows else []


def walk_faults(rows, line):
    """Walks the table's own rows from the run's start and first bend plane: it must end where the run ends."""
    first = next((piece for piece in line.pieces if piece.radius is not None), None)
    pen = Pen(line.pieces[0].start, line.pieces[0].direction)
    normal = first.normal if first is not None else None
    for straight, rotation, angle, radius in rows:
        pen.straight(straight)
        if angle <= 0 or normal is None:
            continue
        a = np.radians(rotation)
        normal = np.cos(a) * normal + np.sin(a) * np.cross(pen.direction, normal)
        before = pen.direction
        pen.arc(normal, np.radians(angle), radius)
        # The plane goes on: what pointed to the centre turns with the bend.
        normal = -np.sin(np.radians(angle)) * before + np.cos(np.radians(angle)) * normal
    (end,), (tangent,) = line.at(np.array([line.length]))
    off = np.linalg.norm(pen.point - end)
    if off > 1e-8 * (1 + line.length) or np.linalg.norm(pen.direction - tangent) > 1e-8:
        return [f"bend_table: walked from the start it ends {off:.3g} mm off the run's end"]
    return []
