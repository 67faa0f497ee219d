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


class Section:
    """Radii along the tube: square ends, outer lead-in chamfers, 45 degree breaks of the inner edges."""

    def __init__(self, run, length):
        ends = run.get("ends", {})
        self.length = length
        self.outer, self.inner = run["tube"]["outer_diameter"] / 2, run["tube"]["bore"] / 2
        self.chamfer = ends.get("chamfer_length", 0.0)
        self.slope = np.tan(np.radians(ends.get("chamfer_deg", 0.0)))
        self.edge_break = ends.get("edge_break", 0.0)
        self.tip = self.outer - self.chamfer * self.slope
        self.mouth = self.inner + self.edge_break
        if self.tip <= self.mouth or 2 * max(self.chamfer, self.edge_break) >= length:
            raise ValueError("the ends' finish leaves no wall")

    def edges(self):
        """The wall's outline as segments (s0, r0, s1, r1), s along the tube."""
        c, e, n = self.chamfer, self.edge_break, self.length
        corners = [(0, self.mouth), (0, self.tip), (c, self.outer), (n - c, self.outer), (n, self.tip),
                   (n, self.mouth), (n - e, self.inner), (e, self.inner)]
        segments = zip(corners, corners[1:] + corners[:1])
        return [(*a, *b) for a, b in segments if a != b]

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
        for index, piece in enumerate(self.line.pieces):
            low, high = box(piece)
            near = np.flatnonzero(np.all((points > low - room) & (points < high + room), axis=1))
            if near.size:
                best[near] = np.minimum(best[near], self.from_piece(piece, points[near], index))
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
        pairs = KDTree(points).query_pairs(2.5 * self.section.outer, output_type="ndarray")
        i, j = pairs[np.abs(s[pairs[:, 0]] - s[pairs[:, 1]]) > np.pi * self.section.outer].T
        if not i.size:
            return np.inf
        nearest = np.argsort(np.linalg.norm(points[i] - points[j], axis=1))[:40]
        return min(self.refined_gap(s[i[k]], s[j[k]], step) for k in nearest)

    def refined_gap(self, s, s2, step):
        def gap(x):
            x = np.clip(x, 0, self.line.length)
            (a, b), _ = self.line.at(x)
            return float(np.linalg.norm(a - b)) - 2 * self.section.outer
        return minimize(gap, [s, s2], method="Nelder-Mead",
                        options={"initial_simplex": [[s, s2], [s + step, s2], [s, s2 + step]], "xatol": 1e-9}).fun

    def bounds(self):
        """The exact box round the skin."""
        low, high = np.full(3, np.inf), np.full(3, -np.inf)
        s_section, r_section = np.array([(s0, r0) for s0, r0, *_ in self.section.edges()]).T
        centre, tangent = self.line.at(s_section)
        reach = r_section[:, None] * np.sqrt(np.maximum(1 - tangent**2, 0))
        low, high = np.min(centre - reach, axis=0), np.max(centre + reach, axis=0)
        c, n = self.section.chamfer, self.section.length
        for piece in self.line.pieces:
            if piece.radius is None:
                continue
            for axis in range(3):
                u, v = -piece.normal[axis], piece.direction[axis]
                # Along the arc the centre's coordinate goes as a cosine about this phase: a peak of the skin is there.
                phase = np.arctan2(v, u)
                for peak in (phase, phase + np.pi):
                    s = piece.from_ + piece.radius * (peak % (2 * np.pi))
                    if s <= piece.from_ + piece.length and c <= s <= n - c:
                        point, t = self.line.at(np.array([s]))
                        r = self.section.outer * np.sqrt(max(1 - t[0, axis] ** 2, 0))
                        low[axis] = min(low[axis], point[0, axis] - r)
                        high[axis] = max(high[axis], point[0, axis] + r)
        ends = np.array([p for piece in self.line.pieces for p in (piece.from_, piece.from_ + piece.length)])
        ends = ends[(ends >= c) & (ends <= n - c)]
        if ends.size:
            centre, tangent = self.line.at(ends)
            reach = self.section.outer * np.sqrt(np.maximum(1 - tangent**2, 0))
            low = np.minimum(low, np.min(centre - reach, axis=0))
            high = np.maximum(high, np.max(centre + reach, axis=0))
        return low, high


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
