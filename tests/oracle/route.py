"""Independent centrelines of runs with coils, points passed smoothly, and bends that share their room.

From the contract's words: links and corners are `centreline`'s, coils the document's formula. A smooth curve is the cubic
spline that the engine describes: intervals set to the chords, then eight times to the lengths of the spans, ends clamped
to unit headings; solved here by scipy.
"""

import copy
import itertools

import numpy as np
from scipy.interpolate import CubicSpline

import centreline
from centreline import Centreline, End, NoCentreline, Pen, Piece, place, through_corners, unit
from curved import Cubic, Curved, Helix, adaptive
from link import shortest_links

# The engine's own rules: points nearer than this are one, and times that the intervals are set anew.
SAME_POINT, ROUNDS = 1e-6, 8


def lines(design, run, start, finish, hint):
    """Every centreline of the run that is as short as any; see `centreline.run_centrelines`."""
    ways, begin, group = [[]], start, []
    for index, station in enumerate(run["route"] + [None]):
        if station is not None and "coil" not in station:
            group.append((index, station))
            continue
        helix = None if station is None else helix_of(design, station["coil"])
        end = finish if helix is None else end_of_coil(helix, 0.0, -1)
        ways = [way + more for way in ways for more in between(design, run, begin, group, end, hint)]
        if helix is not None:
            quarters = int(np.ceil(helix.angle / (np.pi / 2) - 1e-9)) or 1
            marks = np.linspace(0, helix.angle, quarters + 1)
            coil = [Curved(helix, span, "coil", index) for span in zip(marks, marks[1:])]
            ways = [way + coil for way in ways]
            begin, group = end_of_coil(helix, helix.angle, 1), []
    return [assembled(way, start, finish) for way in ways]


def helix_of(design, coil):
    axis = unit(coil["axis"])
    return Helix(place(design, coil["centre"]), axis, centreline.reference_across(axis), coil)


def end_of_coil(helix, u, way):
    """A coil's end like a fitting's without a lead: the way out of the coil."""
    point, first, _ = helix.derivatives(u)
    return End(point, way * first / np.linalg.norm(first), point, 0.0)


def between(design, run, begin, group, end, hint):
    """Lists of pieces from one end to another past the stations between them, none of which is a coil."""
    if not group:
        return links(begin, end, run["bend_radius"], hint)
    kind = lambda entry: "corner" in entry[1]
    stretches = [(corners, list(part)) for corners, part in itertools.groupby(group, kind)]
    point = lambda entry: place(design, entry[1]["through"])
    drawn = []
    for place_, (corners, part) in enumerate(stretches):
        if not corners:
            drawn.append(None)
            continue
        apexes = [(place(design, s["corner"]), s.get("bend_radius") or run["bend_radius"]) for _, s in part]
        free = [place_ > 0, place_ + 1 < len(stretches)]
        first = towards(point(stretches[place_ - 1][1][-1]), apexes[0][0]) if free[0] else begin
        last = towards(point(stretches[place_ + 1][1][0]), apexes[-1][0]) if free[1] else end
        pieces = through_corners(first, last, apexes, run["bend_radius"], run.get("fit_bends", False)).pieces
        # A straight from or to a point passed smoothly is not drawn: the curve joins the bend.
        pieces = pieces[1:] if free[0] and pieces[0].radius is None else pieces
        pieces = pieces[:-1] if free[1] and pieces[-1].radius is None else pieces
        drawn.append(pieces)
    way = []
    for place_, (corners, part) in enumerate(stretches):
        if corners:
            way += drawn[place_]
            continue
        way += lead(begin) if place_ == 0 else []
        before = (begin.free, begin.out) if place_ == 0 else pose(drawn[place_ - 1][-1], 1)
        after = (end.free, -end.out) if place_ + 1 == len(stretches) else pose(drawn[place_ + 1][0], 0)
        way += smooth(before, [point(entry) for entry in part], after, part[0][0])
        way += lead(end, True) if place_ + 1 == len(stretches) else []
    return [way]


def towards(free, corner):
    """A point passed smoothly as an end that looks at the corner."""
    return End(free, unit(corner - free), free, 0.0)


def pose(piece, end):
    point, tangent = piece.at(piece.length if end else 0.0)
    return point, tangent


def lead(end, arriving=False):
    """The straight that an end keeps, as a list of pieces."""
    length = float(np.linalg.norm(end.free - end.face))
    if length < 1e-10:
        return []
    return [Piece(end.free, -end.out, length) if arriving else Piece(end.face, end.out, length)]


def links(begin, end, radius, hint):
    if np.linalg.norm(begin.free - end.free) < 1e-9 and np.linalg.norm(begin.out + end.out) < 1e-9:
        return [lead(begin) + lead(end, True)]
    found = shortest_links(begin.free, begin.out, end.free, -end.out, radius, hint)
    if not found:
        raise NoCentreline("no link closes")
    ways = []
    for (normal, angle), straight, (normal2, angle2) in found:
        pen = Pen(begin.free, begin.out)
        pen.arc(normal, angle, radius)
        pen.straight(straight)
        pen.arc(normal2, angle2, radius)
        ways.append(lead(begin) + pen.line.pieces + lead(end, True))
    return ways


def smooth(before, points, after, whole):
    """The curve from one pose through the points to another pose."""
    nodes = list(points)
    while nodes and np.linalg.norm(nodes[0] - before[0]) <= SAME_POINT:
        nodes.pop(0)
    while nodes and np.linalg.norm(nodes[-1] - after[0]) <= SAME_POINT:
        nodes.pop()
    nodes = np.array([before[0], *nodes, after[0]])
    intervals = np.linalg.norm(np.diff(nodes, axis=0), axis=1)
    if (intervals <= SAME_POINT).any():
        raise NoCentreline("two points in one")
    for _ in range(ROUNDS + 1):
        knots = np.concatenate([[0], np.cumsum(intervals)])
        spline = CubicSpline(knots, nodes, bc_type=((1, before[1]), (1, after[1])))
        form = Cubic(spline)
        speed = lambda u: float(np.linalg.norm(form.derivatives(u)[1]))
        intervals = np.array([adaptive(speed, span) for span in zip(knots, knots[1:])])
    pieces = []
    for span in zip(knots, knots[1:]):
        turn = Curved(form, span, "curve", whole).turned
        marks = np.linspace(*span, max(2, int(np.ceil(turn / 0.5))) + 1)
        pieces += [Curved(form, part, "curve", whole) for part in zip(marks, marks[1:])]
    return pieces


def assembled(pieces, start, finish):
    """One line of pieces that follow each other, straights in a row made one, from the one face to the other."""
    line = Centreline()
    for piece in map(copy.copy, pieces):
        before = line.pieces[-1] if line.pieces else None
        if before is not None:
            (at, tangent) = before.at(before.length)
            scale = 1 + line.length
            if np.linalg.norm(at - piece.start) > 1e-8 * scale or np.linalg.norm(tangent - piece.direction) > 1e-8:
                raise NoCentreline("two pieces do not join")
        if piece.radius is None and before is not None and before.radius is None:
            before.length += piece.length
            continue
        piece.from_ = line.length
        line.pieces.append(piece)
    ends = line.at(np.array([0.0, line.length]))
    scale = 1 + line.length
    if np.linalg.norm(ends[0] - [start.face, finish.face], axis=1).max() > 1e-8 * scale:
        raise NoCentreline("it does not end on its stops")
    if np.linalg.norm(ends[1] - [start.out, -finish.out], axis=1).max() > 1e-8:
        raise NoCentreline("it does not end square to its stops")
    return line
