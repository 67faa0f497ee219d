"""The shortest arc-straight-arc link between two poses, found by search, not by formula.

The straight's direction `u` is the unknown. Given `u`, each arc is either the short or the long turn from its end's
direction to `u`; what joins the arcs' ends must then lie along `u`. All of the sphere is searched in four
combinations of turns, more closely round the poses' own directions, each near-solution is refined, and the shortest
wins. Where `u` is straight against a pose's direction the plane of that half turn is free, and the map from `u` to
the arc undefined: poses in one plane have the four plane words for that, parallel ones two half turns.
"""

import itertools

import numpy as np

GRID = 6000
CLOSED = 1e-9
# Links this near in length, relative, are equally short: mirror images, mostly.
TIED = 1e-9


def shortest_links(start, direction, finish, arrival, radius, hint=None):
    """All equally short links from `start` along `direction` to `finish`, arriving along `arrival`; often just one.

    Each is `[(normal, angle), length, (normal, angle)]`: each arc's unit direction to its centre and its angle in
    radians, round the straight's length in mm. An arc of no angle has angle 0. Poses in one line leave the plane
    free; it then holds `hint`, if given.
    """
    ends = (np.asarray(start, float), direction, np.asarray(finish, float), arrival, radius)
    links = [*plane_links(*ends, hint), *half_turn_links(*ends, hint), *space_links(*ends)]
    links = [link for link in links if closes(link, *ends)]
    if not links:
        return []
    least = min(length(link, radius) for link in links)
    tied = [link for link in links if length(link, radius) <= least * (1 + TIED)]
    return [link for i, link in enumerate(tied) if not any(alike(link, other) for other in tied[:i])]


def shortest_link(*ends):
    """The first of the shortest links."""
    return next(iter(shortest_links(*ends)), None)


def alike(link, other):
    return all(abs(a[1] - b[1]) < 1e-6 and (a[1] < 1e-6 or np.linalg.norm(a[0] - b[0]) < 1e-5)
               for a, b in ((link[0], other[0]), (link[2], other[2])))


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
    u = np.concatenate([sphere(GRID), *(fans(pole) for pole in (direction, -direction, arrival, -arrival))])
    found = []
    for sign, sign2 in itertools.product((1, -1), repeat=2):
        def miss(u, sign=sign, sign2=sign2):
            v = chord(u, gap, direction, arrival, radius, sign, sign2)
            along = np.sum(v * u, axis=1)
            return (v - along[:, None] * u) / scale, along / scale

        off, along = miss(u)
        score = np.where(along > -0.2, np.linalg.norm(off, axis=1), np.inf)
        seeds = thin_out(u, np.argsort(score[:GRID]), 40) + list(u[GRID + np.argsort(score[GRID:])[:24]])
        for best in refine(np.array(seeds), miss, (direction, -direction, arrival, -arrival)):
            if not any(np.linalg.norm(best - other) < 1e-9 for other, *_ in found):
                found.append((best, sign, sign2))
    return [assemble(u, gap, direction, arrival, radius, sign, sign2) for u, sign, sign2 in found]


def fans(pole):
    """Directions all round `pole`, from a tenth of a radian away to a millionth: there the arc's plane turns fast."""
    a = np.cross(pole, np.eye(3)[np.argmin(abs(pole))])
    a /= np.linalg.norm(a)
    b = np.cross(pole, a)
    tilt, phi = (x.ravel()[:, None] for x in np.meshgrid(10.0 ** -np.arange(1, 7), np.arange(24) * np.pi / 12))
    return np.cos(tilt) * pole + np.sin(tilt) * (np.cos(phi) * a + np.sin(phi) * b)


def thin_out(u, order, count):
    """The best directions in `order` that are not all in one place."""
    kept = []
    for index in order[:1500]:
        if all(u[index] @ other < 0.995 for other in kept):
            kept.append(u[index])
            if len(kept) == count:
                break
    return kept


def refine(seeds, miss, poles):
    """Directions whose link closes with a straight not below zero, by damped Newton steps from each of `seeds`.

    The unknowns are polar about the nearest pole, its distance as a logarithm: so all is as smooth near it as far off.
    """
    pole = np.array(poles)[np.argmax(seeds @ np.array(poles).T, axis=1)]
    up = np.sum(seeds * pole, axis=1)
    a = seeds - up[:, None] * pole
    size = np.linalg.norm(a, axis=1)
    tilt = np.arctan2(size, up)
    a /= size[:, None]
    b = np.cross(pole, a)

    def at(x):
        t = (tilt * np.exp(np.clip(x[:, 0], -40, 3)))[:, None]
        phi = x[:, 1:]
        return np.cos(t) * pole + np.sin(t) * (np.cos(phi) * a + np.sin(phi) * b)

    x, damping = np.zeros((len(seeds), 2)), np.full(len(seeds), 1e-3)
    off, _ = miss(at(x))
    for _ in range(50):
        slope = np.stack([miss(at(x + h))[0] - miss(at(x - h))[0] for h in 1e-6 * np.eye(2)], axis=2) / 2e-6
        square = np.einsum("nki,nkj->nij", slope, slope)
        diagonal = damping[:, None, None] * (square * np.eye(2) + 1e-12 * np.eye(2))
        step = np.linalg.solve(square + diagonal + 1e-30 * np.eye(2), np.einsum("nki,nk->ni", slope, off)[..., None])[..., 0]
        step = np.clip(step, -1, 1)
        tried, _ = miss(at(x - step))
        better = np.linalg.norm(tried, axis=1) < np.linalg.norm(off, axis=1)
        x = np.where(better[:, None], x - step, x)
        off = np.where(better[:, None], tried, off)
        damping = np.clip(np.where(better, damping / 10, damping * 10), 1e-15, 1e9)
    u = at(x)
    off, along = miss(u)
    return u[(np.linalg.norm(off, axis=1) < CLOSED) & (along > -1e-7)]


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


def plane_links(start, direction, finish, arrival, radius, hint):
    """The four plane words, where both poses lie in one plane."""
    gap = finish - start
    across = np.cross(direction, gap) if np.linalg.norm(np.cross(direction, gap)) > 1e-9 * np.linalg.norm(gap) \
        else np.cross(direction, arrival)
    if np.linalg.norm(across) < 1e-12:
        across = np.cross(direction, aside_of(direction, hint))
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


def half_turn_links(start, direction, finish, arrival, radius, hint):
    """Parallel poses: back along the line and forth again by two half turns, each in a plane of its own."""
    if np.linalg.norm(arrival - direction) > 1e-9:
        return
    gap = finish - start
    straight = -(gap @ direction)
    aside = gap - (gap @ direction) * direction
    size = np.linalg.norm(aside)
    if straight < 0 or size > 4 * radius:
        return
    if size < 1e-12:
        aside = aside_of(direction, hint)
    along = aside / np.linalg.norm(aside)
    # The centres' offsets add up to half the way aside.
    half = size / (4 * radius)
    for side in (1, -1):
        up = side * np.sqrt(1 - half * half) * np.cross(direction, along)
        yield [(half * along + up, np.pi), float(straight), (half * along - up, np.pi)]


def aside_of(direction, hint):
    """A vector across `direction`, towards `hint` where that says anything."""
    for free in (hint, np.eye(3)[np.argmin(abs(direction))]):
        if free is not None:
            aside = free - (free @ direction) * direction
            if np.linalg.norm(aside) > 1e-6 * np.linalg.norm(free):
                return aside
    raise ValueError("no direction")


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
