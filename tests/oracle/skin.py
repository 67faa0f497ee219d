"""The exact skin of a hollow tube round a centreline: how far any point is from it, and points on it.

In the coordinates (arc length of the nearest centreline point, distance from it) the tube's wall is one polygon,
the same all the way round. On straights that map keeps distances; on arcs it keeps them across the centreline, which
is all that a constant radius needs. Only a slanted edge on an arc needs the arc's own stretch.
"""

import numpy as np
from scipy.optimize import minimize
from scipy.spatial import KDTree

# A point belongs to a piece when its foot is on it, give or take this much, mm.
SEAM = 1e-6
BLOCK = 4096
# The shortest chamfer or edge break that the engine makes, mm: its own rule, not the contract's.
LEAST_END = 0.002


class Section:
    """Radii along the tube: square ends, outer lead-in chamfers, 45 degree breaks of the inner edges."""

    def __init__(self, run, length):
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

    def edges(self):
        """The wall's outline as segments (s0, r0, s1, r1), s along the tube."""
        c, e, n = self.chamfer, self.edge_break, self.length
        corners = [(0, self.mouth), (0, self.tip), (c, self.outer), (n - c, self.outer), (n, self.tip),
                   (n, self.mouth), (n - e, self.inner), (e, self.inner)]
        segments = zip(corners, corners[1:] + corners[:1])
        return [(*a, *b) for a, b in segments if a != b]

    def outer_at(self, s):
        c, n = self.chamfer, self.length
        if c == 0:
            return np.full(len(s), self.outer)
        return np.interp(s, [0, c, n - c, n], [self.tip, self.outer, self.outer, self.tip])

    def material_volume(self):
        """Pappus for the plain tube, less two chamfers and two edge breaks, mm3."""
        return np.pi * (self.outer**2 - self.inner**2) * self.length - 2 * (self.chamfer_volume() + self.break_volume())

    def chamfer_volume(self):
        return np.pi * self.chamfer * (self.outer**2 - frustum(self.outer, self.tip))

    def break_volume(self):
        return np.pi * self.edge_break * (frustum(self.inner, self.mouth) - self.inner**2)

    def bore_volume(self):
        """What the bore holds from face to face, its broken edges too, mm3."""
        return np.pi * self.inner**2 * self.length + 2 * self.break_volume()


def finished(end, length):
    """Ends that would meet are cut short in the middle; those too short for a mesh are left off."""
    return 0.0 if end < LEAST_END else min(end, length / 2)


def frustum(a, b):
    """Mean squared radius along a cone from radius a to radius b."""
    return (a * a + a * b + b * b) / 3


class Skin:
    def __init__(self, line, run):
        self.line = line
        self.section = Section(run, line.length)

    def distance(self, points):
        """Distance of each point from the skin, mm; infinite where a point is nowhere near the tube."""
        best = np.full(len(points), np.inf)
        room = 2 * self.section.outer
        lows, highs = (np.array(x) for x in zip(*map(box, self.line.pieces)))
        # In blocks of neighbours, each of which has few pieces near.
        for begin in range(0, len(points), BLOCK):
            block = points[begin:begin + BLOCK]
            low, high = block.min(axis=0) - room, block.max(axis=0) + room
            for index in np.flatnonzero((lows < high).all(axis=1) & (highs > low).all(axis=1)):
                near = np.flatnonzero(((block > lows[index] - room) & (block < highs[index] + room)).all(axis=1))
                if near.size:
                    found = self.from_piece(self.line.pieces[index], block[near], index)
                    best[begin + near] = np.minimum(best[begin + near], found)
        return best

    def from_piece(self, piece, points, index):
        first, last = index == 0, index == len(self.line.pieces) - 1
        s, rho, stretch = foot(piece, points)
        on = (s >= (-np.inf if first and piece.radius is None else -SEAM))
        on &= (s <= (np.inf if last and piece.radius is None else piece.length + SEAM))
        answer = np.full(len(points), np.inf)
        answer[on] = self.from_outline(piece, s[on] + piece.from_, rho[on], stretch[on])
        return answer

    def from_outline(self, piece, s, rho, stretch):
        a, b = piece.from_, piece.from_ + piece.length
        best = np.full(len(s), np.inf)
        for s0, r0, s1, r1 in self.section.edges():
            if max(s0, s1) < a - SEAM or min(s0, s1) > b + SEAM:
                continue
            if piece.radius is None:
                t = ((s - s0) * (s1 - s0) + (rho - r0) * (r1 - r0)) / ((s1 - s0) ** 2 + (r1 - r0) ** 2)
                t = np.clip(t, 0, 1)
                d = np.hypot(s - s0 - t * (s1 - s0), rho - r0 - t * (r1 - r0))
            elif s0 == s1:
                d = np.hypot((s - s0) * stretch, rho - np.clip(rho, min(r0, r1), max(r0, r1)))
            else:
                slope = (r1 - r0) / (s1 - s0)
                t = np.clip((s - s0) / (s1 - s0), 0, 1)
                d = np.abs(rho - r0 - t * (r1 - r0)) / np.hypot(1, slope / stretch)
                outside = (s < min(s0, s1) - SEAM) | (s > max(s0, s1) + SEAM)
                d = np.where(outside, np.inf, d)
            best = np.minimum(best, d)
        return best

    def samples(self, count, rng):
        """Points of the skin, spread by area, and its sharp circles."""
        edges = self.section.edges()
        areas = np.array([np.hypot(s1 - s0, r1 - r0) * (r0 + r1) for s0, r0, s1, r1 in edges])
        # Small faces get their share too: nothing may hide in a chamfer.
        shares = np.maximum(count * areas / areas.sum(), count / 40).astype(int)
        parts = []
        for (s0, r0, s1, r1), share in zip(edges, shares):
            t = rng.random(share)
            parts.append(np.stack([s0 + t * (s1 - s0), r0 + t * (r1 - r0)], axis=1))
            parts.append(np.repeat([[s0, r0]], max(share // 20, 40), axis=0))
        s, r = np.concatenate(parts).T
        phi = 2 * np.pi * rng.random(len(s))
        return self.points(s, r, phi)

    def points(self, s, r, phi):
        """The points at arc lengths s, distances r and angles phi round the centreline."""
        centre, tangent = self.line.at(s)
        helper = np.eye(3)[np.argmin(np.abs(tangent), axis=1)]
        a = np.cross(tangent, helper)
        a /= np.linalg.norm(a, axis=1, keepdims=True)
        b = np.cross(tangent, a)
        return centre + r[:, None] * (np.cos(phi)[:, None] * a + np.sin(phi)[:, None] * b)

    def own_gap(self):
        """Room between parts of the tube that are not neighbours along it, mm; below 0 where it runs through itself.

        No curve that bends no tighter than half the outer diameter brings points closer than that diameter while
        they are less than half a turn of that circle apart along it (Schur), so those beyond are no neighbours.
        """
        step = self.section.outer / 8
        s = np.linspace(0, self.line.length, int(self.line.length / step) + 2)
        points, _ = self.line.at(s)
        apart = np.pi * self.section.outer
        pairs = KDTree(points).query_pairs(2.5 * self.section.outer, output_type="ndarray")
        i, j = pairs[np.abs(s[pairs[:, 0]] - s[pairs[:, 1]]) > apart].T
        if not i.size:
            return np.inf
        distance = np.linalg.norm(points[i] - points[j], axis=1)
        nearest = int(np.argmin(distance))

        def gap(x):
            (a, b), _ = self.line.at(np.clip(x, 0, self.line.length))
            return np.linalg.norm(a - b) - 2 * self.section.outer if abs(x[0] - x[1]) >= apart else np.inf

        x = np.array([s[i[nearest]], s[j[nearest]]])
        simplex = [x, x + [step, 0], x - [0, step]]
        return min(gap(x), minimize(gap, x, method="Nelder-Mead", options={"initial_simplex": simplex}).fun)

    def bounds(self):
        """The exact box round the skin."""
        s = [np.array([p for s0, _, s1, _ in self.section.edges() for p in (s0, s1)])]
        for piece in self.line.pieces:
            end = piece.from_ + piece.length
            s.append(np.array([piece.from_, end]))
            if piece.radius is None:
                continue
            # Along an arc a coordinate goes as a cosine about this phase, and the skin's reach peaks with it.
            phase = np.arctan2(piece.direction, -piece.normal)
            peaks = piece.from_ + piece.radius * (np.concatenate([phase, phase + np.pi]) % (2 * np.pi))
            s.append(peaks[peaks <= end])
            if piece.from_ < self.section.chamfer or end > self.section.length - self.section.chamfer:
                # A slanted edge moves the peak by an amount that no formula here gives: to 1e-8 mm by small steps.
                s.append(np.linspace(piece.from_, end, 20_001))
        s = np.concatenate(s)
        centre, tangent = self.line.at(s)
        reach = self.section.outer_at(s)[:, None] * np.sqrt(np.maximum(1 - tangent**2, 0))
        return (centre - reach).min(axis=0), (centre + reach).max(axis=0)


def foot(piece, points):
    """Arc length of each point's foot on the piece (or its extension), distance from it, and the arc's stretch there."""
    w = points - piece.start
    if piece.radius is None:
        s = w @ piece.direction
        rho = np.linalg.norm(w - s[:, None] * piece.direction, axis=1)
        return s, rho, np.ones(len(points))
    w = w - piece.radius * piece.normal
    x, y = w @ piece.direction, -(w @ piece.normal)
    out = w - x[:, None] * piece.direction + y[:, None] * piece.normal
    flat = np.hypot(x, y)
    angle = np.arctan2(x, y) % (2 * np.pi)
    # A hair before the start is a small negative angle, not a whole turn.
    angle = np.where(angle > (piece.angle + 2 * np.pi) / 2, angle - 2 * np.pi, angle)
    rho = np.hypot(flat - piece.radius, np.linalg.norm(out, axis=1))
    return angle * piece.radius, rho, flat / piece.radius


def box(piece):
    points, _ = piece.at(np.linspace(0, piece.length, 33))
    sag = 0 if piece.radius is None else piece.radius * (1 - np.cos(piece.angle / 64))
    return points.min(axis=0) - sag, points.max(axis=0) + sag
