"""The exact skin of a hollow tube round a centreline: how far any point is from it, and points on it.

In the coordinates (arc length of the nearest centreline point, distance from it) the tube's wall is one polygon,
the same all the way round unless there are lobes. On straights that map keeps distances; on arcs it keeps them across
the centreline, which is all that a constant radius needs. Only a slanted edge on an arc needs the arc's own stretch, and
a wave needs the angle about the centreline as well, from a frame that does not twist along it.
"""

import numpy as np
from scipy.optimize import minimize
from scipy.spatial import KDTree

from centreline import reference_across
from section import Section

# A point belongs to a piece when its foot is on it, give or take this much, mm.
SEAM = 1e-6
BLOCK = 4096
# Steps that a wave's nearest point is closed in on with; they more than halve what is left each time.
STEPS = 12


class Skin:
    def __init__(self, line, run, seats=None):
        self.line = line
        self.section = Section(run, line.length, seats)
        self.frames = carried(line) if self.section.lobes else None
        self.found_bounds = None

    def distance(self, points):
        """Distance of each point from the skin, mm; infinite where a point is nowhere near the tube."""
        best = np.full(len(points), np.inf)
        for index, near, s, rho, stretch in self.feet(points):
            piece = self.line.pieces[index]
            angle = self.angles(index, points[near], s) if self.frames else None
            best[near] = np.minimum(best[near], self.from_outline(piece, s + piece.from_, rho, stretch, angle))
        return best

    def walls(self, points):
        """Arc length of each point's nearest foot on the centreline and its height over the bore there, mm."""
        at, least = np.full(len(points), np.nan), np.full(len(points), np.inf)
        for index, near, s, rho, _ in self.feet(points):
            closer = rho < least[near]
            least[near[closer]] = rho[closer]
            at[near[closer]] = s[closer] + self.line.pieces[index].from_
        return at, least - self.section.inner_at(np.clip(at, 0, self.section.length))

    def feet(self, points):
        """For each piece near some of the points: its index, those that have a foot on it, and the feet."""
        room = 2 * self.section.widest
        lows, highs = (np.array(x) for x in zip(*map(box, self.line.pieces)))
        # In blocks of neighbours, each of which has few pieces near.
        for begin in range(0, len(points), BLOCK):
            block = points[begin:begin + BLOCK]
            low, high = block.min(axis=0) - room, block.max(axis=0) + room
            for index in np.flatnonzero((lows < high).all(axis=1) & (highs > low).all(axis=1)):
                near = np.flatnonzero(((block > lows[index] - room) & (block < highs[index] + room)).all(axis=1))
                if not near.size:
                    continue
                piece = self.line.pieces[index]
                first, last = index == 0, index == len(self.line.pieces) - 1
                s, rho, stretch = foot(piece, block[near])
                on = (s >= (-np.inf if first and piece.radius is None else -SEAM))
                on &= (s <= (np.inf if last and piece.radius is None else piece.length + SEAM))
                yield index, begin + near[on], s[on], rho[on], stretch[on]

    def angles(self, index, points, s):
        """Angles of points about the centreline, from the frame that does not twist, at feet on one piece."""
        piece = self.line.pieces[index]
        centre, tangent = piece.at(s)
        first = self.frames[index](s)
        out = points - centre
        return np.arctan2(np.sum(out * np.cross(tangent, first), axis=1), np.sum(out * first, axis=1))

    def from_outline(self, piece, s, rho, stretch, angle):
        a, b = piece.from_, piece.from_ + piece.length
        best = np.full(len(s), np.inf)
        for s0, r0, s1, r1, waves in self.section.outline():
            if max(s0, s1) < a - SEAM or min(s0, s1) > b + SEAM:
                continue
            if waves:
                d = self.from_wave((s0, r0, s1, r1), s, rho, stretch, angle)
            elif piece.radius is None:
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
                # Beyond an edge its rim may still be the nearest.
                rim = np.minimum(np.hypot((s - s0) * stretch, rho - r0), np.hypot((s - s1) * stretch, rho - r1))
                d = np.where(outside, rim, d)
            best = np.minimum(best, d)
        return best

    def from_wave(self, edge, s, rho, stretch, angle):
        """Distances from a lobed stretch: of all of its points near by, by Gauss and Newton's steps. What is found is
        the distance of a point of the skin, so never less than the nearest's."""
        (s0, r0, s1, r1), section = edge, self.section
        slope = (r1 - r0) / (s1 - s0)
        x, y = np.clip(s, s0, s1), np.zeros(len(s))
        best = np.full(len(s), np.inf)
        for _ in range(STEPS):
            down, along, about = section.wave(x, angle + y)
            off, rx, ry = rho - (r0 + slope * (x - s0) - down), slope - along, -about
            dx, dy = (x - s) * stretch, y * rho
            best = np.minimum(best, np.sqrt(off**2 + dx**2 + dy**2))
            # Normal equations of the three differences (across, along, about).
            a, b, c = rx**2 + stretch**2, rx * ry, ry**2 + rho**2
            g, h = -rx * off + stretch * dx, -ry * off + rho * dy
            det = a * c - b * b
            step_x, step_y = (c * g - b * h) / det, (a * h - b * g) / det
            x, y = np.clip(x - step_x, s0, s1), y - np.clip(step_y, -0.5 / section.lobes, 0.5 / section.lobes)
        return best

    def samples(self, count, rng):
        """Points of the skin, spread by area, and its sharp circles."""
        outline = self.section.outline()
        areas = np.array([np.hypot(s1 - s0, r1 - r0) * (r0 + r1) for s0, r0, s1, r1, _ in outline])
        # Small faces get their share too: nothing may hide in a chamfer.
        shares = np.maximum(count * areas / areas.sum(), count / 40).astype(int)
        parts = []
        for (s0, r0, s1, r1, waves), share in zip(outline, shares):
            t = rng.random(share)
            parts.append(np.stack([s0 + t * (s1 - s0), r0 + t * (r1 - r0), np.full(share, waves)], axis=1))
            parts.append(np.repeat([[s0, r0, waves]], max(share // 20, 40), axis=0))
        s, r, waves = np.concatenate(parts).T
        phi = 2 * np.pi * rng.random(len(s))
        if self.frames:
            r = r - np.where(waves > 0, self.section.wave(s, phi)[0], 0)
        return self.points(s, r, phi)

    def points(self, s, r, phi):
        """The points at arc lengths s, distances r and angles phi round the centreline."""
        centre, tangent = self.line.at(s)
        if self.frames:
            a = np.empty_like(tangent)
            starts = np.array([piece.from_ for piece in self.line.pieces])
            which = np.clip(np.searchsorted(starts, s, side="right") - 1, 0, None)
            for index in np.unique(which):
                here = which == index
                a[here] = self.frames[index](s[here] - starts[index])
        else:
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
        widest = self.section.widest
        step = widest / 8
        s = np.linspace(0, self.line.length, int(self.line.length / step) + 2)
        points, _ = self.line.at(s)
        apart = np.pi * widest
        pairs = KDTree(points).query_pairs(2.5 * widest, output_type="ndarray")
        i, j = pairs[np.abs(s[pairs[:, 0]] - s[pairs[:, 1]]) > apart].T
        if not i.size:
            return np.inf

        def gap(x):
            x = np.clip(x, 0, self.line.length)
            (a, b), _ = self.line.at(x)
            return np.linalg.norm(a - b) - self.section.outer_at(x).sum() if abs(x[0] - x[1]) >= apart else np.inf

        distance = np.linalg.norm(points[i] - points[j], axis=1) - self.section.outer_at(s[i]) - self.section.outer_at(s[j])
        nearest = int(np.argmin(distance))
        x = np.array([s[i[nearest]], s[j[nearest]]])
        simplex = [x, x + [step, 0], x - [0, step]]
        return min(gap(x), minimize(gap, x, method="Nelder-Mead", options={"initial_simplex": simplex}).fun)

    def bounds(self):
        """The exact box round the skin; of a lobed one, round its crests all the way round. Reckoned once."""
        if self.found_bounds is None:
            self.found_bounds = self.searched_bounds()
        return self.found_bounds

    def searched_bounds(self):
        marks = np.array(sorted({s for s, _ in self.section.crest}))
        parts, lows, highs = [marks], [marks], [marks]
        for piece in self.line.pieces:
            end = piece.from_ + piece.length
            inside = np.concatenate([[piece.from_], marks[(marks > piece.from_) & (marks < end)], [end]])
            radii = self.section.outer_at(inside)
            if piece.radius is not None and piece.normal is not None and np.ptp(radii) == 0:
                # Along an arc a coordinate goes as a cosine about this phase, and the skin's reach peaks with it.
                phase = np.arctan2(piece.direction, -piece.normal)
                peaks = piece.from_ + piece.radius * (np.concatenate([phase, phase + np.pi]) % (2 * np.pi))
                found = np.append(peaks[peaks <= end], inside)
                s, low, high = found, found, found
            elif piece.radius is not None:
                cuts = np.unique(np.concatenate([np.linspace(a, b, 401) for a, b in zip(inside, inside[1:])]))
                s, low, high = cuts, np.roll(cuts, 1), np.roll(cuts, -1)
                low[0], high[-1] = cuts[0], cuts[-1]
            else:
                s, low, high = inside, inside, inside
            parts, lows, highs = parts + [s], lows + [low], highs + [high]
        s, low, high = map(np.concatenate, (parts, lows, highs))

        def reach(s, axis, sign):
            centre, tangent = self.line.at(s)
            across = np.sqrt(np.maximum(1 - tangent[..., axis]**2, 0))
            return sign * centre[..., axis] + self.section.outer_at(s) * across

        box = np.empty((2, 3))
        for axis in range(3):
            for row, sign in ((0, -1), (1, 1)):
                values = reach(s, axis, sign)
                most = values.max()
                # Pieces and marks share their ends: where such a place is the farthest sample, each of its sides is searched.
                for best in np.flatnonzero((values >= most - 1e-12) & (high - low > 1e-9)):
                    ends = low[best], high[best]
                    for _ in range(4):
                        tried = np.linspace(*ends, 65)
                        reached = reach(tried, axis, sign)
                        top = int(np.argmax(reached))
                        ends = tried[max(top - 1, 0)], tried[min(top + 1, 64)]
                        most = max(most, float(reached[top]))
                box[row, axis] = sign * most
        return box[0], box[1]


def carried(line):
    """Functions of arc length on each piece: the first reference perpendicular, carried along without twist."""
    across, answer = reference_across(line.pieces[0].direction), []
    for piece in line.pieces:
        across = across - (across @ piece.direction) * piece.direction
        across /= np.linalg.norm(across)
        if piece.radius is None:
            carry = lambda s, v=across: np.broadcast_to(v, np.shape(s) + (3,))
        elif piece.normal is not None:
            carry = turning(across, np.cross(piece.direction, piece.normal), piece.radius)
        else:
            carry = piece.frame(across)
        answer.append(carry)
        across = np.array(carry(np.array([piece.length]))[0])
    return answer


def turning(v, axis, radius):
    """The vector turned about a unit axis as an arc of that radius is walked (Rodrigues)."""
    def carry(s):
        a = (np.asarray(s, float) / radius)[..., None]
        return v * np.cos(a) + np.cross(axis, v) * np.sin(a) + axis * (axis @ v) * (1 - np.cos(a))
    return carry


def foot(piece, points):
    """Arc length of each point's foot on the piece (or its extension), distance from it, and the arc's stretch there."""
    if piece.radius is not None and piece.normal is None:
        return piece.foot(points)
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
    sag = 0 if piece.radius is None else (piece.length / 32) ** 2 / (8 * piece.radius)
    return points.min(axis=0) - sag, points.max(axis=0) + sag
