"""Tubes of our own to try judges on: a run with known corners, good meshes of it, and meshes broken in one way each."""

import numpy as np

from centreline import End, through_corners, unit
from control_mesher import tube_mesh
from skin import Section, Skin

RUN = {"tube": {"outer_diameter": 12, "bore": 9},
       "ends": {"chamfer_deg": 15, "chamfer_length": 2, "edge_break": 0.3, "seat_mark": False}}
POINTS = [(0, 0, 0), (60, 0, 0), (60, 50, 0), (60, 50, 55)]


def polyline(points, radius):
    """A centreline from the first point to the last, round the corners between them."""
    points = [np.array(p, float) for p in points]
    ends = [End(a, unit(b - a), a, 0.0) for a, b in ((points[0], points[1]), (points[-1], points[-2]))]
    return through_corners(*ends, [(p, radius) for p in points[1:-1]], radius)


def good(deviation, points=POINTS, radius=20, run=RUN):
    """Corners, faces and exact skin of a right mesh."""
    skin = Skin(polyline(points, radius), run)
    return *tube_mesh(skin.line, skin.section, deviation), skin


class LooseSection(Section):
    """A section like another, but with radii of our choice: to mesh a tube that is not the one stated."""

    def __init__(self, section, **changes):
        self.__dict__ |= section.__dict__ | changes


def missing_face(v, f, skin):
    return v, f[1:]


def turned_face(v, f, skin):
    return v, np.concatenate([f[:1, ::-1], f[1:]])


def inside_out(v, f, skin):
    return v, f[:, ::-1]


def twice(v, f, skin):
    """A second body, far away."""
    return np.concatenate([v, v + np.float32(500)]), np.concatenate([f, f + len(v)])


def speck(v, f, skin):
    """A stray tetrahedron beside the tube."""
    corners = np.array([[0, 0, 0], [1, 0, 0], [0, 1, 0], [0, 0, 1]], np.float32) + np.float32(30)
    faces = np.array([[0, 2, 1], [0, 1, 3], [0, 3, 2], [1, 2, 3]])
    return np.concatenate([v, corners]), np.concatenate([f, faces + len(v)])


def plugged(v, f, skin):
    """The outside alone, closed by two lids: a rod without its bore."""
    outer = ring_size(f)
    rings = len(v) // outer
    keep = [i for i in range(len(f)) if (f[i] < rings // 2 * outer).all()]
    last = (rings // 2 - 1) * outer
    lids = [[0, i + 1, i] for i in range(1, outer - 1)]
    lids += [[last, last + i, last + i + 1] for i in range(1, outer - 1)]
    return v, np.concatenate([f[keep], np.array(lids)])


def ring_size(f):
    """Corners in one ring of a control mesh: its first face climbs from ring 0 to the same place on ring 1."""
    return int(f[0][2] - f[0][1])


def dented(v, f, skin):
    """One corner of the outside pushed in by a twentieth of a millimetre."""
    v = v.copy()
    index = int(np.argmax(v[:, 0]))
    v[index] -= np.float32([0.05, 0, 0])
    return v, f


def grown(v, f, skin):
    return (v * np.float32(1.0005)).astype(np.float32), f


def coarse(v, f, skin):
    return tube_mesh(skin.line, skin.section, 0.1)


def no_chamfer(v, f, skin):
    section = LooseSection(skin.section, chamfer=0.0, tip=skin.section.outer)
    return tube_mesh(skin.line, section, 0.02)


def no_edge_break(v, f, skin):
    section = LooseSection(skin.section, edge_break=0.0, mouth=skin.section.inner)
    return tube_mesh(skin.line, section, 0.02)


def one_end_short(v, f, skin):
    line = polyline([*POINTS[:-1], (60, 50, 54.9)], 20)
    return tube_mesh(line, Section(RUN, line.length), 0.02)


def one_bend_wide(v, f, skin):
    line = polyline(POINTS, 20.2)
    return tube_mesh(line, Section(RUN, line.length), 0.02)


def too_tight(v, f, skin):
    """Bends of less than half the outer diameter: closed, consistent, and through itself."""
    line = polyline(POINTS, 4)
    return tube_mesh(line, Section(RUN, line.length), 0.02)


def sliver(v, f, skin):
    """A face without area: a corner amid a straight's edge, joined by a flat face to the edge that it lies on."""
    along = np.flatnonzero((v[f[:, 1]][:, 1:] == v[f[:, 2]][:, 1:]).all(axis=1))[0]
    a, b, c = f[along]
    other = next(i for i in range(len(f)) if i != along and {b, c} <= set(f[i]))
    apex = next(i for i in f[other] if i not in (b, c))
    middle = len(v)
    point = np.array([np.float32((v[b, 0] + v[c, 0]) / 2), v[b, 1], v[b, 2]], np.float32)
    faces = [[a, b, c], [c, b, middle], [apex, c, middle], [apex, middle, b]]
    rest = [face for i, face in enumerate(f) if i not in (along, other)]
    return np.concatenate([v, point[None]]), np.concatenate([np.array(faces), rest])
