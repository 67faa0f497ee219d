"""An independent centreline: from a design document to exact pieces, straight from the stated geometry.

Written from the contract's words alone, so that the engine's own layout and centreline have something to be held
against. Lengths mm, angles radians; degrees only where the document has them.
"""

from dataclasses import dataclass, field

import numpy as np

from link import shortest_links

ON_AXIS = 1e-9


class NoCentreline(Exception):
    """The stated radii leave no centreline here."""


@dataclass
class Piece:
    """A straight (radius None) or an arc that turns towards `normal`."""

    start: np.ndarray
    direction: np.ndarray
    length: float
    radius: float | None = None
    angle: float = 0.0
    normal: np.ndarray | None = None
    from_: float = 0.0

    def at(self, s):
        """Points and unit tangents at arc lengths `s` from the piece's start."""
        s = np.asarray(s, float)[..., None]
        if self.radius is None:
            return self.start + s * self.direction, np.broadcast_to(self.direction, s.shape[:-1] + (3,))
        a = s / self.radius
        point = self.start + self.radius * (np.sin(a) * self.direction + (1 - np.cos(a)) * self.normal)
        return point, np.cos(a) * self.direction + np.sin(a) * self.normal


@dataclass
class Centreline:
    pieces: list = field(default_factory=list)

    @property
    def length(self):
        return self.pieces[-1].from_ + self.pieces[-1].length if self.pieces else 0.0

    def at(self, s):
        """Points and unit tangents at arc lengths `s` along the whole curve."""
        s = np.asarray(s, float)
        point, tangent = np.empty(s.shape + (3,)), np.empty(s.shape + (3,))
        starts = np.array([piece.from_ for piece in self.pieces])
        which = np.clip(np.searchsorted(starts, s, side="right") - 1, 0, None)
        for index in np.unique(which):
            here, piece = which == index, self.pieces[index]
            point[here], tangent[here] = piece.at(s[here] - piece.from_)
        return point, tangent

    def bend_table(self):
        """Rows of (straight, rotation, angle, radius): mm, degrees, degrees, mm; the last row is straight only."""
        return [row[:4] for row in self.bends()]

    def bends(self):
        """As the bend table, with what each row is and its length; a coil or a smooth curve is one row."""
        rows, straight, plane, whole = [], 0.0, None, None
        for piece in self.pieces:
            if piece.radius is None:
                straight, whole = straight + piece.length, None
                continue
            curved = piece.normal is None
            if curved:
                normal, last = (np.cross(tangent, bend) for tangent, bend in
                                zip(piece.at(np.array([0.0, piece.length]))[1], piece.bend_at(np.array([0.0, piece.length]))))
            else:
                normal = last = np.cross(piece.direction, piece.normal)
            if curved and whole == piece.whole:
                before = rows[-1]
                angle, tightest = before[2] + np.degrees(piece.turned), min(before[3], piece.radius)
                rows[-1] = (*before[:2], angle, tightest, before[4], before[5] + piece.length)
            else:
                rotation = 0.0
                if plane is not None:
                    rotation = np.degrees(np.arctan2(np.cross(plane, normal) @ piece.direction, plane @ normal))
                angle = np.degrees(piece.turned if curved else piece.angle)
                rows.append((straight, rotation, angle, piece.radius, piece.kind if curved else "bend", piece.length))
                straight = 0.0
            plane, whole = last, piece.whole if curved else None
        return rows + [(straight, 0.0, 0.0, 0.0, "end", 0.0)]


class Pen:
    """Draws tangent-continuous pieces one after the other."""

    def __init__(self, point, direction):
        self.point, self.direction = np.array(point, float), unit(direction)
        self.line = Centreline()

    def straight(self, length):
        if length < -1e-7:
            raise NoCentreline(f"a straight of {length} mm")
        if length > 1e-10:
            self.add(Piece(self.point, self.direction, float(length)))

    def arc(self, normal, angle, radius):
        if angle * radius > 1e-10:
            normal = unit(normal - (normal @ self.direction) * self.direction)
            self.add(Piece(self.point, self.direction, float(angle * radius), float(radius), float(angle), normal))

    def add(self, piece):
        piece.from_ = self.line.length
        self.line.pieces.append(piece)
        point, tangent = piece.at(piece.length)
        self.point, self.direction = point, unit(tangent)


@dataclass
class End:
    """A tube's end: the face's centre, the way out of the fitting, and the straight length that must be kept."""

    face: np.ndarray
    out: np.ndarray
    mouth: np.ndarray
    lead: float

    @property
    def free(self):
        """Where the first bend may start."""
        return self.mouth + self.lead * self.out


def run_centreline(design, run):
    """The exact centreline of one run of a whole design document, or NoCentreline; the first where several tie."""
    return run_centrelines(design, run)[0]


def run_centrelines(design, run, hint=None):
    """As above, all of equal length: an empty route may have a mirror image; `hint` settles a plane left free."""
    start, finish = end_of(design, run, run["from"]), end_of(design, run, run["to"])
    if run.get("fit_bends") or any("corner" not in station for station in run["route"]):
        import route

        return route.lines(design, run, start, finish, hint)
    corners = [(place(design, station["corner"]), station.get("bend_radius") or run["bend_radius"])
               for station in run["route"]]
    if corners:
        return [through_corners(start, finish, corners, run["bend_radius"])]
    return linked(start, finish, run["bend_radius"], hint)


def end_of(design, run, name):
    """Where the run ends in the named port's fitting."""
    port = named(design["ports"], name)
    fitting = named(design["fittings"], port["fitting"])
    seat, facing = np.array(port["at"], float), unit(port["facing"])
    elbow = fitting.get("elbow")
    if elbow:
        zero = reference_across(facing)
        turned = np.radians(elbow.get("turn_deg", 0))
        way = np.cos(turned) * zero + np.sin(turned) * np.cross(facing, zero)
        bent = np.radians(elbow["angle_deg"])
        out = np.cos(bent) * facing + np.sin(bent) * way
        mouth = seat + elbow["rise"] * facing + elbow["reach"] * out
    else:
        out, mouth = facing, seat + fitting["height"] * facing
    trim = run.get("ends", {}).get("trim", 0)
    return End(mouth - (fitting["socket_depth"] + trim) * out, out, mouth, fitting["lead"])


def reference_across(axis):
    """World z across a unit direction, or world x where that is within a degree of z: where angles about it are 0."""
    reference = np.array([0, 0, 1.0])
    if np.degrees(np.arctan2(np.hypot(*axis[:2]), abs(axis[2]))) <= 1:
        reference = np.array([1.0, 0, 0])
    return unit(reference - (reference @ axis) * axis)


def place(design, corner):
    """A corner's point; a tied coordinate is that port's same coordinate plus its offset."""
    return np.array([named(design["ports"], value["of"])["at"][axis] + value.get("plus", 0)
                     if isinstance(value, dict) else value for axis, value in enumerate(corner)], float)


def named(things, name):
    return next(thing for thing in things if thing["name"] == name)


def linked(start, finish, radius, hint):
    """The shortest arc-straight-arc links from lead to lead."""
    links = shortest_links(start.free, start.out, finish.free, -finish.out, radius, hint)
    if not links:
        raise NoCentreline("no link closes")
    lines = []
    for (normal, angle), straight, (normal2, angle2) in links:
        pen = Pen(start.face, start.out)
        pen.straight(np.linalg.norm(start.free - start.face))
        pen.arc(normal, angle, radius)
        pen.straight(straight)
        pen.arc(normal2, angle2, radius)
        lines.append(arrive(merged(pen, np.linalg.norm(finish.face - finish.free)), finish))
    # A straight of no length can point anywhere between two arcs of one circle: one curve all the same.
    marks = [line.at(np.linspace(0, line.length, 24))[0] for line in lines]
    new = [not any(np.abs(marks[i] - other).max() < 1e-6 * (1 + lines[i].length) for other in marks[:i])
           for i in range(len(lines))]
    return [line for line, kept in zip(lines, new) if kept]


def through_corners(start, finish, corners, radius, fit=False):
    """Straights between the corners, each corner rounded by a tangent arc of its radius; with `fit` at most of it."""
    pen = Pen(start.face, start.out)
    first, last = corners[0][0], corners[-1][0]
    join = joining_bend(start, first, radius)
    join2 = joining_bend(finish, last, radius)
    # Where the straights between the corners begin and end, and their directions there.
    if join:
        pen.straight(np.linalg.norm(start.free - start.face))
        pen.arc(join[0], join[1], radius)
    apexes = [point for point, _ in corners]
    tail = finish.face
    heading2 = -finish.out
    if join2:
        tail = end_of_bend(finish, join2, radius)
        heading2 = -(np.cos(join2[1]) * finish.out + np.sin(join2[1]) * join2[0])
    headings = [pen.direction] + [unit(b - a) for a, b in zip(apexes, apexes[1:])] + [heading2]
    ends = [pen.point] + apexes + [tail]
    if fit:
        kept = [0.0 if bend else np.linalg.norm(end.free - end.face) for end, bend in ((start, join), (finish, join2))]
        legs = [(b - a) @ way for a, b, way in zip(ends, ends[1:], headings)]
        reaches = [np.tan(between(a, b) / 2) for a, b in zip(headings, headings[1:])]
        corners = list(zip(apexes, shared_room([r for _, r in corners], reaches, legs, kept)))
    tangents = [0.0] + [r * np.tan(between(a, b) / 2) for (_, r), a, b in zip(corners, headings, headings[1:])] + [0.0]
    for index, (_, r) in enumerate(corners):
        leg = (ends[index + 1] - ends[index]) @ headings[index]
        pen.straight(leg - tangents[index] - tangents[index + 1])
        a, b = headings[index], headings[index + 1]
        angle = between(a, b)
        if angle > np.pi - 1e-9:
            raise NoCentreline("a corner turns straight back")
        pen.arc(b - (b @ a) * a if angle > 0 else np.zeros(3), angle, r)
    leg = (tail - apexes[-1]) @ heading2 - tangents[-2]
    if join2:
        pen.straight(leg)
        # The joining bend, walked the other way: at its start the centre lies where its own end sees it.
        n, angle = join2
        normal = -np.sin(angle) * finish.out + np.cos(angle) * n
        pen.arc(normal, angle, radius)
        leg = np.linalg.norm(finish.face - finish.free)
    return arrive(merged(pen, leg), finish)


def shared_room(asked, reaches, legs, kept):
    """The max-min fair radii: a common level is raised, each radius stopping at what was asked or where a leg is full.

    `reaches` are tangent lengths over radii; `kept` is what the first and the last leg keep straight at their ends.
    """
    rooms = np.array(legs, float)
    rooms[0] -= kept[0]
    rooms[-1] -= kept[1]
    asked, reaches = np.array(asked, float), np.array(reaches)
    held = np.full(len(asked), np.nan)

    slack = 1e-12 * np.maximum(rooms, 1)

    def used(level):
        lengths = np.where(np.isnan(held), np.minimum(asked, level), held) * reaches
        return np.append(lengths, 0) + np.insert(lengths, 0, 0)

    while np.isnan(held).any():
        low, high = 0.0, asked[np.isnan(held)].max()
        if not (used(high) <= rooms + slack).all():
            for _ in range(200):
                middle = (low + high) / 2
                low, high = (middle, high) if (used(middle) <= rooms + slack).all() else (low, middle)
            high = low
        full = used(high) >= rooms - 1e-9 * np.maximum(rooms, 1)
        stops = (asked <= high) | ((full[:-1] | full[1:]) & (reaches > 0))
        stops &= np.isnan(held)
        if not stops.any():
            raise NoCentreline("no room to share")
        held[stops] = np.minimum(asked[stops], high)
    return held.tolist()


def joining_bend(end, corner, radius):
    """Normal and angle of the bend, right after the lead, whose tangent goes on to the corner; None on the axis."""
    w = corner - end.free
    x = w @ end.out
    across = w - x * end.out
    y = np.linalg.norm(across)
    if y <= ON_AXIS * max(1.0, np.linalg.norm(w)) and x > -np.linalg.norm(end.free - end.face):
        return None
    n = across / y
    # Seen from the bend's centre the corner is at (x, y - R); the tangent length to it is fixed by Pythagoras.
    distance = np.hypot(x, y - radius)
    if distance < radius:
        raise NoCentreline("the corner lies inside the joining bend")
    to_corner = np.arctan2(y - radius, x)
    half = np.arctan2(radius, np.sqrt(distance**2 - radius**2))
    angle = (to_corner + half) % (2 * np.pi)
    return n, (0.0 if angle > 2 * np.pi - 1e-9 else angle)


def end_of_bend(end, join, radius):
    n, angle = join
    return end.free + radius * (np.sin(angle) * end.out + (1 - np.cos(angle)) * n)


def merged(pen, last):
    """The pen's line with a last straight, and straights that follow one another made one."""
    pen.straight(last)
    whole = Pen(pen.line.pieces[0].start, pen.line.pieces[0].direction)
    for piece in pen.line.pieces:
        before = whole.line.pieces[-1] if whole.line.pieces else None
        if piece.radius is None and before is not None and before.radius is None:
            before.length += piece.length
            whole.point = before.at(before.length)[0]
        elif piece.radius is None:
            whole.straight(piece.length)
        else:
            whole.arc(piece.normal, piece.angle, piece.radius)
    return whole


def arrive(pen, finish):
    """The finished line, after making sure that it really ends on the far stop, square to it."""
    scale = 1 + pen.line.length
    if np.linalg.norm(pen.point - finish.face) > 1e-8 * scale or np.linalg.norm(pen.direction + finish.out) > 1e-8:
        raise NoCentreline(f"ends {np.linalg.norm(pen.point - finish.face)} mm off its stop")
    return pen.line


def between(a, b):
    return float(np.arctan2(np.linalg.norm(np.cross(a, b)), a @ b))


def unit(v):
    v = np.array(v, float)
    largest = np.max(np.abs(v))
    if not largest > 0:
        raise NoCentreline("two points in one leave no direction")
    v = v / largest
    return v / np.linalg.norm(v)
