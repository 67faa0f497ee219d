"""The shortest arc-straight-arc link between two poses, found by search, not by formula.

The straight's direction `u` is the unknown. Given `u`, each arc is either the short or the long turn from its end's
direction to `u`; what joins the arcs' ends must then lie along `u`. All of the sphere is searched in four
combinations of turns, each near-solution is refined, and the shortest wins. Poses in one plane also have the four
plane words, which catch the half turns where the search's map from `u` to the arc's plane is undefined.
"""

import itertools

import numpy as np
from scipy.optimize import least_squares

GRID = 6000
CLOSED = 1e-9


def shortest_link(start, direction, finish, arrival, radius):
    """The link from `start` along `direction` to `finish`, arriving along `arrival`, or None.

    Answers `[(normal, angle), length, (normal, angle)]`: each arc's unit direction to its centre and its angle in
    radians, round the straight's length in mm. An arc of no angle has angle 0.
    """
    links = list(plane_links(start, direction, finish, arrival, radius))
    links += space_links(start, direction, finish, arrival, radius)
    links = [link for link in links if closes(link, start, direction, finish, arrival, radius)]
    return min(links, key=lambda link: length(link, radius), default=None)


def length(link, radius):
    (_, first), straight, (_, last) = link
    return radius * (first + last) + straight


def closes(link, start, direction, finish, arrival, radius):
    """Whether walking the link from its start really ends in the finishing pose."""
    (normal, angle), straight, (normal2, angle2) = link
    point, heading = turn(start, direction, normal, angle, radius)
    point = point + straight * heading
    # The second normal must be across the heading to be an arc at all.
    if angle2 > 0 and abs(normal2 @ heading) > 1e-7:
        return False
    point, heading = turn(point, heading, normal2, angle2, radius)
    return np.linalg.norm(point - finish) < 1e-6 and np.linalg.norm(heading - arrival) < 1e-7


def turn(point, direction, normal, angle, radius):
    if angle == 0:
        return point, direction
    s, c = np.sin(angle), np.cos(angle)
    return point + radius * (s * direction + (1 - c) * normal), c * direction + s * normal


def space_links(start, direction, finish, arrival, radius):
    """Every link found by searching the sphere of straight directions."""
    gap = finish - start
    scale = np.linalg.norm(gap) + radius
    u = sphere(GRID)
    found = []
    for sign, sign2 in itertools.product((1, -1), repeat=2):
        v = chord(u, gap, direction, arrival, radius, sign, sign2)
        off = np.linalg.norm(v - np.sum(v * u, axis=1, keepdims=True) * u, axis=1)
        ahead = np.sum(v * u, axis=1) > -0.2 * scale
        order = np.argsort(np.where(ahead, off, np.inf))
        starts = thin_out(u, order, 24)
        for seed in starts:
            best = refine(seed, gap, direction, arrival, radius, sign, sign2, scale)
            if best is not None and not any(np.linalg.norm(best - other) < 1e-9 for other, *_ in found):
                found.append((best, sign, sign2))
    return [assemble(u, gap, direction, arrival, radius, sign, sign2) for u, sign, sign2 in found]


def thin_out(u, order, count):
    """The best directions in `order` that are not all in one place."""
    kept = []
    for index in order[:1500]:
        if all(u[index] @ other < 0.995 for other in kept):
            kept.append(u[index])
            if len(kept) == count:
                break
    return kept


def refine(seed, gap, direction, arrival, radius, sign, sign2, scale):
    """The direction near `seed` whose link closes, straight not below zero, or None."""
    a = np.cross(seed, np.eye(3)[np.argmin(abs(seed))])
    a /= np.linalg.norm(a)
    b = np.cross(seed, a)

    def at(x):
        u = seed + x[0] * a + x[1] * b
        return u / np.linalg.norm(u)

    def miss(x):
        u = at(x)
        v = chord(u[None], gap, direction, arrival, radius, sign, sign2)[0]
        rest = v - (v @ u) * u
        return rest / scale

    fit = least_squares(miss, [0.0, 0.0], xtol=1e-15, ftol=1e-15, gtol=1e-15, max_nfev=60)
    if np.linalg.norm(fit.fun) > CLOSED:
        return None
    u = at(fit.x)
    v = chord(u[None], gap, direction, arrival, radius, sign, sign2)[0]
    return u if v @ u > -1e-7 * scale else None


def chord(u, gap, direction, arrival, radius, sign, sign2):
    """From the end of the first arc to the start of the last one, for each straight direction in `u`."""
    return gap - sign * reach(u, direction, radius) - sign2 * reach(u, arrival, radius)


def reach(u, d, radius):
    """How far the short arc between the directions `d` and `u` goes; the long one goes the opposite way.

    An arc from `d` to `u` and one from `u` to `d` in the same circle have the same chord.
    """
    cos = u @ d
    across = u - cos[:, None] * d
    sin = np.linalg.norm(across, axis=1)
    normal = across / np.maximum(sin, 1e-300)[:, None]
    return radius * (sin[:, None] * d + (1 - cos)[:, None] * normal)


def assemble(u, gap, direction, arrival, radius, sign, sign2):
    v = chord(u[None], gap, direction, arrival, radius, sign, sign2)[0]
    first = arc_between(direction, u, sign)
    # The last arc is walked from `u` to `arrival`.
    last = arc_between(u, arrival, sign2)
    return [first, max(float(v @ u), 0.0), last]


def arc_between(d, u, sign):
    cos = float(np.clip(d @ u, -1, 1))
    across = u - cos * d
    sin = np.linalg.norm(across)
    if sin < 1e-12:
        return (np.zeros(3), 0.0)
    angle = float(np.arctan2(sin, cos))
    normal = across / sin
    return (normal, angle) if sign > 0 else (-normal, 2 * np.pi - angle)


def plane_links(start, direction, finish, arrival, radius):
    """The four plane words, where both poses lie in one plane."""
    gap = finish - start
    across = np.cross(direction, gap) if np.linalg.norm(np.cross(direction, gap)) > 1e-9 * np.linalg.norm(gap) \
        else np.cross(direction, arrival)
    if np.linalg.norm(across) < 1e-12:
        # In line: any plane serves.
        across = np.cross(direction, np.eye(3)[np.argmin(abs(direction))])
    k = across / np.linalg.norm(across)
    if abs(k @ arrival) > 1e-12 or abs(k @ gap) > 1e-9 * (np.linalg.norm(gap) + radius):
        return
    left = np.cross(k, direction)
    x, y = gap @ direction, gap @ left
    heading = np.arctan2(arrival @ left, arrival @ direction)
    for s, s2 in itertools.product((1, -1), repeat=2):
        # Centres of the two turning circles in the plane's own axes.
        c1 = np.array([0.0, s * radius])
        c2 = np.array([x - s2 * radius * np.sin(heading), y + s2 * radius * np.cos(heading)])
        d = c2 - c1
        dist = np.hypot(*d)
        inner = (s2 - s) * radius
        if dist < abs(inner) - 1e-12 or (dist < 1e-12 and s == s2):
            continue
        straight = np.sqrt(max(dist * dist - inner * inner, 0.0))
        # Straight direction t: the centres' difference has straight along t and (s2 - s) R along t's left.
        t = np.arctan2(d[1], d[0]) - np.arctan2(inner, straight)
        first = rest(s * t)
        last = rest(s2 * (heading - t))
        u = np.cos(t) * direction + np.sin(t) * left
        n1 = s * left
        n2 = s2 * np.cross(k, u)
        yield [(n1, first), float(straight), (n2, last)]


def rest(angle):
    """`angle` brought to [0, 2 pi), with what is a whole turn but for rounding taken as none."""
    angle = float(angle % (2 * np.pi))
    return 0.0 if angle > 2 * np.pi - 1e-9 else angle


def sphere(count):
    """Directions spread evenly over the sphere (a Fibonacci lattice)."""
    i = np.arange(count) + 0.5
    z = 1 - 2 * i / count
    phi = np.pi * (1 + 5 ** 0.5) * i
    r = np.sqrt(1 - z * z)
    return np.stack([r * np.cos(phi), r * np.sin(phi), z], axis=1)
