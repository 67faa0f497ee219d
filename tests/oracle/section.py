"""Radii along a tube: square ends, lead-in chamfers, broken inner edges, scribed rings, and a dressed body.

Chamfers and the dressed body are the document's words. How deep a ring is scribed, and when one is left out, are the
engine's own rules, told where they stand.
"""

from dataclasses import dataclass

import numpy as np

# The shortest chamfer or edge break that the engine makes, mm: its own rule, not the contract's.
LEAST_END = 0.002
# Its own rules for rings: depth, least depth that shows, share of the wall kept, width of the seating mark over its
# depth, the most it takes of the socket, and the least gap to a break of the skin, mm.
DEPTH, LEAST_DEPTH, KEPT, SEAT_WIDTH, MOST_OF_SOCKET, GAP = 0.2, 0.05, 0.5, 3.0, 0.25, 0.01
# And for bodies: the shortest, mm, and the most of it that a blend takes.
LEAST_BODY, MOST_BLEND = 1.0, 0.45


@dataclass
class Seats:
    """What the section must know of the ends' fittings: depth inside, straight kept (mm), coordinates' size."""

    inside: tuple
    straight: tuple
    reach: tuple
    least_wall: float


class Section:
    """`outer` and `inner` are the plain tube's radii; without `seats` it has neither rings nor a dress."""

    def __init__(self, run, length, seats=None):
        ends = run.get("ends", {})
        self.length = length
        self.outer, self.inner = run["tube"]["outer_diameter"] / 2, run["tube"]["bore"] / 2
        self.chamfer = finished(ends.get("chamfer_length", 0.0), length)
        self.slope = np.tan(np.radians(ends.get("chamfer_deg", 0.0)))
        self.edge_break = finished(ends.get("edge_break", 0.0), length)
        self.tip = self.outer - self.chamfer * self.slope
        self.mouth = self.inner + self.edge_break
        if self.tip <= self.mouth:
            raise ValueError("the ends' finish leaves no wall")
        c, e, n = self.chamfer, self.edge_break, length
        self.crest = dedupe([(0.0, self.tip), (c, self.outer), (n - c, self.outer), (n, self.tip)])
        self.bore = dedupe([(0.0, self.mouth), (e, self.inner), (n - e, self.inner), (n, self.mouth)])
        # Half the grooves' depth along the tube; number, twist (radians per mm) and where the twist is 0.
        self.half, self.lobes, self.twist, self.body = [(0.0, 0.0), (n, 0.0)], 0, 0.0, 0.0
        self.rings, self.dressed = 0, False
        if seats:
            for end in (0, 1):
                self.scribe(ends, seats, end)
            if run.get("dress"):
                self.put_on(run["dress"], seats)
        self.widest = max(radius for _, radius in self.crest)
        self.deepest = 2 * max(half for _, half in self.half)

    def scribe(self, ends, seats, end):
        """The rings of one end: where the trim is cut off, and below the mouth."""
        trim, inside, taken = ends.get("trim", 0.0), seats.inside[end], 0.0
        gap = max(GAP, 64 * float(np.spacing(np.float32(seats.reach[end]))))
        place = lambda distance: self.length - distance if end else distance

        def depth_at(distance):
            wall = at(self.crest, place(distance)) - at(self.bore, place(distance))
            depth = min(DEPTH, wall - max(wall * KEPT, seats.least_wall))
            return depth if depth >= LEAST_DEPTH else None

        def scribed(start, bottom, stop, depth):
            if start < gap or stop > self.length / 2 - gap or stop - start < 4 * gap:
                return
            edges = sorted(next((s for s, _ in self.crest if abs(s - place(x)) < gap), place(x)) for x in (start, stop))
            middle = (place(bottom), at(self.crest, place(bottom)) - depth)
            self.crest = put(self.crest, [(edges[0], at(self.crest, edges[0])), middle, (edges[1], at(self.crest, edges[1]))])
            self.rings += 1

        depth = depth_at(trim) if trim > 0 else None
        if depth:
            scribed(trim - depth, trim, trim + depth, depth)
            taken = trim + depth
        depth = depth_at(inside - SEAT_WIDTH * DEPTH) if ends.get("seat_mark", True) else None
        if depth:
            width = SEAT_WIDTH * depth
            if inside - width >= taken + gap and width <= MOST_OF_SOCKET * (inside - trim):
                scribed(inside - width, inside - width / 2, inside, depth)

    def put_on(self, dress, seats):
        """The body between the leads: diameters, blends, lobes."""
        begin, end = max(seats.straight[0], self.chamfer), self.length - max(seats.straight[1], self.chamfer)
        if end - begin < LEAST_BODY:
            return
        blend = min(dress.get("blend", 8.0), MOST_BLEND * (end - begin))
        first = dress.get("diameter") or 2 * self.outer
        last = dress.get("end_diameter") or first
        marks = [begin, begin + blend, end - blend, end]
        if (first, last) != (2 * self.outer, 2 * self.outer):
            self.dressed = True
            radii = [at(self.crest, begin), first / 2, last / 2, at(self.crest, end)]
            self.crest = put(self.crest, list(zip(marks, radii)))
        if dress.get("lobes", 0) >= 2 and dress.get("depth", 0.0) > 0:
            half = dress["depth"] / 2
            self.half = put(self.half, list(zip(marks, [0.0, half, half, 0.0])))
            self.lobes, self.body = dress["lobes"], begin
            self.twist = np.radians(dress.get("twist_deg_per_mm", 0.0))

    def outline(self):
        """The wall's outline as segments (s0, r0, s1, r1, waves), s along the tube; r is that of the lobes' crests."""
        marks = sorted({s for s, _ in self.crest} | {s for s, h in self.half if self.lobes})
        outside = [(s, at(self.crest, s)) for s in marks]
        waves = [max(at(self.half, a), at(self.half, b)) > 0 for a, b in zip(marks, marks[1:])]
        segments = [(*a, *b, wave) for a, b, wave in zip(outside, outside[1:], waves)]
        inside = self.bore[::-1]
        segments += [(*a, *b, False) for a, b in zip([outside[-1]] + inside, inside + [outside[0]])]
        return [segment for segment in segments if segment[:2] != segment[2:4]]

    def edges(self):
        return [segment[:4] for segment in self.outline()]

    def outer_at(self, s):
        """The outer radius; of a lobed body its crests'."""
        return at(self.crest, s)

    def inner_at(self, s):
        return at(self.bore, s)

    def wave(self, s, angle):
        """How far the skin lies below the crests at arc length s and angle, and its slopes along both."""
        half = at(self.half, s)
        edges, values = np.array(self.half).T
        rise = np.diff(values) / np.diff(edges)
        slope = rise[np.clip(np.searchsorted(edges, s, side="right") - 1, 0, len(rise) - 1)]
        phase = self.lobes * (angle - self.twist * (s - self.body))
        deep, sway = 1 - np.cos(phase), half * np.sin(phase) * self.lobes
        return half * deep, slope * deep - sway * self.twist, sway

    def least_wall(self):
        """The thinnest wall between the ends' finishes, mm."""
        finish = max(self.chamfer, self.edge_break)
        marks = [s for breaks in (self.crest, self.half) for s, _ in breaks if finish < s < self.length - finish]
        s = np.array(marks + [finish, self.length - finish])
        return float(np.min(at(self.crest, s) - 2 * at(self.half, s) - at(self.bore, s)))

    def material_volume(self):
        """By Pappus: the sections' centroids run on the centreline, mm3. A wave of half depth e about a mean radius m
        encloses pi (m^2 + e^2 / 2)."""
        marks = np.array(sorted({s for breaks in (self.crest, self.half) for s, _ in breaks}))
        e = at(self.half, marks)
        m = at(self.crest, marks) - e
        squares = frustum(m[:-1], m[1:]) + frustum(e[:-1], e[1:]) / 2
        return float(np.pi * np.sum(squares * np.diff(marks)) - self.bore_volume())

    def break_volume(self):
        return np.pi * self.edge_break * (frustum(self.inner, self.mouth) - self.inner**2)

    def bore_volume(self):
        """What the bore holds from face to face, its broken edges too, mm3."""
        return np.pi * self.inner**2 * self.length + 2 * self.break_volume()


def at(breaks, s):
    """The value at arc lengths s of what runs straight between breaks."""
    return np.interp(s, *np.array(breaks).T)


def put(breaks, points):
    """`points` in place of what runs between the first and the last of them."""
    return [p for p in breaks if p[0] < points[0][0]] + points + [p for p in breaks if p[0] > points[-1][0]]


def dedupe(breaks):
    return [point for index, point in enumerate(breaks) if index == 0 or point[0] > breaks[index - 1][0]]


def finished(end, length):
    """Ends that would meet are cut short in the middle; those too short for a mesh are left off."""
    return 0.0 if end < LEAST_END else min(end, length / 2)


def frustum(a, b):
    """Mean squared radius along a cone from radius a to radius b."""
    return (a * a + a * b + b * b) / 3
