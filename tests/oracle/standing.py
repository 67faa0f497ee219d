"""Which parts of a standing tube's bore hold liquid, from its mesh alone: the bore cut into layers and flooded from its mouths.

It knows no centreline: the end faces are where the mesh is cut open, what is left falls into skin and bore, and the
bore's columns are filled between crossings of vertical rays. In each layer scipy labels the blobs of void; a blob's level
is the least height over which water gets to it from a mouth (priority flood; Barnes, Lehman, Mulla 2014, "Priority-flood").

The exact method goes along the bore's own floor, so that both mean the same level: a depth that is told may differ by what
the cutting into voxels does to a sill and to a lowest place, and a volume by what it does to the wall. Which part is as deep
as the bore is wide, and so is told, is judged beyond that band.
"""

import heapq
from dataclasses import dataclass

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components
from scipy.spatial import cKDTree

import stl
from solids import welded

# Voxels across a bore: so many, and where that is too coarse to say, twice as many.
ACROSS = (8, 16)
# Cutting into voxels: of a depth, in voxels; of a volume, as a share and in bores cubed.
VOXELS, SHARE, BORES = 2, 0.05, 0.15


@dataclass
class Pocket:
    """Voxels that hold liquid together, by number; the level's layer; depth from the floor to it, mm; volume, mm3."""

    held: np.ndarray
    level: int
    depth: float
    volume: float


@dataclass
class Bore:
    """A bore on the plate as voxels: their indices, which of them lie at the first or second mouth, their size, the bore's width,
    mm, and which ends the plate closes."""

    cells: np.ndarray
    mouth: np.ndarray
    size: float
    width: float
    origin: np.ndarray
    closed: list

    def centres(self):
        return self.origin + (self.cells + 0.5) * self.size


def rigid(source, target):
    """The rotation and shift that take corners to corners (Kabsch), and the largest distance left."""
    middle, there = source.mean(axis=0), target.mean(axis=0)
    u, _, v = np.linalg.svd((source - middle).T @ (target - there))
    turn = (u @ np.diag([1, 1, np.sign(np.linalg.det(u @ v))]) @ v).T
    shift = there - turn @ middle
    return turn, shift, np.linalg.norm(source @ turn.T + shift - target, axis=1).max()


def bore_surface(corners, faces, ends, width):
    """Faces of the bore, lidded, and each lid's middle and rim; `ends` are the end faces' middles and outward normals."""
    keep = np.ones(len(faces), bool)
    for at, out in ends:
        off = (corners - at) @ out
        near = np.linalg.norm(corners - at, axis=1) < 4 * width
        keep &= ~((np.abs(off) < 1e-3 * width) & near)[faces].all(axis=1)
    kept = faces[keep]
    _, part = connected_components(
        coo_matrix((np.ones(3 * len(kept)), (kept.ravel(), np.roll(kept, 1, axis=1).ravel())), (len(corners),) * 2), False)
    parts, count = np.unique(part[kept[:, 0]], return_counts=True)
    if len(parts) != 2:
        raise ValueError(f"cut open at its ends it falls into {len(parts)} parts, not into skin and bore")
    # The skin's box is the larger.
    extent = [np.ptp(corners[np.unique(kept[part[kept[:, 0]] == p])], axis=0).sum() for p in parts]
    bore = kept[part[kept[:, 0]] == parts[int(np.argmin(extent))]]
    edges = np.concatenate([bore[:, [0, 1]], bore[:, [1, 2]], bore[:, [2, 0]]])
    known = set(map(tuple, edges))
    rim = np.array([e for e in map(tuple, edges) if e[::-1] not in known])
    lids, rims = [], []
    nearer = np.argmin([np.linalg.norm(corners[rim[:, 0]] - at, axis=1) for at, _ in ends], axis=0)
    for end, (at, _) in enumerate(ends):
        mine = rim[nearer == end]
        lids.append(np.stack([corners[mine[:, 1]], corners[mine[:, 0]], np.broadcast_to(at, (len(mine), 3))], axis=1))
        rims.append(corners[mine[:, 0]])
    return np.concatenate([corners[bore], *lids]), rims


def voxels(triangles, size, origin):
    """Indices of the voxels whose middles lie inside a closed surface: vertical rays enter and leave it in turn."""
    flat = (triangles - origin) / size - 0.5
    low = np.ceil(flat[:, :, :2].min(axis=1)).astype(int)
    span = np.floor(flat[:, :, :2].max(axis=1)).astype(int) - low + 1
    count = np.maximum(span, 0).prod(axis=1)
    which = np.repeat(np.arange(len(flat)), count)
    step = np.arange(len(which)) - np.repeat(np.cumsum(count) - count, count)
    ij = low[which] + np.stack([step // span[which, 1], step % span[which, 1]], axis=1)
    a, b, c = flat[which].transpose(1, 0, 2)

    def side(p, q):
        return (q[:, 0] - p[:, 0]) * (ij[:, 1] - p[:, 1]) - (q[:, 1] - p[:, 1]) * (ij[:, 0] - p[:, 0])

    u, v, w = side(b, c), side(c, a), side(a, b)
    inside = ((u > 0) & (v > 0) & (w > 0)) | ((u < 0) & (v < 0) & (w < 0))
    u, v, w, a, b, c, ij = (x[inside] for x in (u, v, w, a, b, c, ij))
    height = (u * a[:, 2] + v * b[:, 2] + w * c[:, 2]) / (u + v + w)
    order = np.lexsort((height, ij[:, 1], ij[:, 0]))
    ij, height = ij[order], height[order]
    column = np.flatnonzero(np.r_[True, (np.diff(ij, axis=0) != 0).any(axis=1)])
    crossings = np.diff(np.r_[column, len(ij)])
    if (crossings % 2).any():
        raise ValueError("a ray enters the bore and does not leave it")
    bottom, top = np.ceil(height[::2]).astype(int), np.floor(height[1::2]).astype(int)
    tall = np.maximum(top - bottom + 1, 0)
    k = np.arange(tall.sum()) - np.repeat(np.cumsum(tall) - tall, tall) + np.repeat(bottom, tall)
    return np.column_stack([np.repeat(ij[::2], tall, axis=0), k])


def read_bore(tube, stood, datum, across=ACROSS[0]):
    """The bore of a tube of the manifest, and what is wrong with how it stands."""
    faults, width = [], tube["bore"]
    turn, shift, left = rigid(datum.reshape(-1, 3).astype(float), stood.reshape(-1, 3).astype(float))
    up = np.array(tube["up"]) / np.linalg.norm(tube["up"])
    if left > 1e-3 * width or np.linalg.norm(turn @ up - [0, 0, 1]) > 1e-5:
        faults.append(f"the standing mesh is {left} mm off the datum's turned by {turn.tolist()}, up {up.tolist()}")
    corners, faces = welded(stood)
    corners = corners.astype(float)
    lowest = corners[:, 2].min()
    if abs(lowest - tube["lift_mm"]) > 0.02 * width:
        faults.append(f"its lowest point is {lowest} mm over the plate, not {tube['lift_mm']}")
    (first, ahead), (last, onward) = np.array(tube["ends"])
    ends = [(turn @ first + shift, -turn @ ahead), (turn @ last + shift, turn @ onward)]
    triangles, rims = bore_surface(corners, faces, ends, width)
    size = width / across
    # No ray through a corner: an origin that no corner is a whole number of voxels from.
    origin = triangles.min(axis=(0, 1)) - size * np.array([1.2347, 1.3719, 1.4143])
    cells = voxels(triangles, size, origin)
    centres = origin + (cells + 0.5) * size
    mouth, closed = [], []
    for (at, out), rim in zip(ends, rims):
        off = (centres - at) @ out
        near = np.linalg.norm(centres - at, axis=1) < np.linalg.norm(rim - at, axis=1).max() + size
        mouth.append(near & (off > -size * np.abs(out).max()))
        closed.append(bool(tube["lift_mm"] == 0 and np.ptp(rim[:, 2]) < 2e-3 * width and rim[:, 2].min() < lowest + 2e-3 * width))
    return Bore(cells, np.array(mouth), size, width, origin, closed), turn, shift, faults


def flooded(bore, sign):
    """The pockets that hold liquid with `sign` times z upwards, the closed ends closed."""
    cells = bore.cells * [1, 1, sign]
    cells = cells - cells.min(axis=0)
    base = cells.max(axis=0) + 2
    key = (cells[:, 2] * base[1] + cells[:, 1]) * base[0] + cells[:, 0]
    order = np.argsort(key)

    def beside(step):
        at = np.searchsorted(key, key + step, sorter=order)
        found = order[np.minimum(at, len(key) - 1)]
        there = key[found] == key + step
        return np.flatnonzero(there), found[there]

    # Neighbours at the corner count within a layer: a bore is no narrower there than a voxel.
    level = [beside(step) for step in (1, base[0], base[0] + 1, base[0] - 1)]
    rise = beside(base[0] * base[1])
    a, b = (np.concatenate([pair[i] for pair in level]) for i in (0, 1))
    count, blob = connected_components(coo_matrix((np.ones(len(a)), (a, b)), (len(key),) * 2), False)
    height = np.zeros(count, int)
    height[blob] = cells[:, 2]
    pairs = np.unique(np.stack([blob[rise[0]], blob[rise[1]]], axis=1), axis=0)
    near = [[] for _ in range(count)]
    for p, q in pairs.tolist():
        near[p].append(q)
        near[q].append(p)
    closed = bore.closed if sign > 0 else [False, False]
    levels = np.full(count, np.iinfo(int).max)
    queue = []
    for mouth, shut in zip(bore.mouth, closed):
        for start in [] if shut else np.unique(blob[mouth]).tolist():
            levels[start] = height[start]
            heapq.heappush(queue, (height[start], start))
    while queue:
        reached, here = heapq.heappop(queue)
        if reached > levels[here]:
            continue
        for there in near[here]:
            over = max(reached, height[there])
            if over < levels[there]:
                levels[there] = over
                heapq.heappush(queue, (over, there))
    if all(closed):
        levels[:] = height.max() + 1
    elif (levels == np.iinfo(int).max).any():
        raise ValueError("a part of the bore is cut off from its mouths")
    holds = levels > height
    inner = pairs[holds[pairs].all(axis=1)]
    _, group = connected_components(coo_matrix((np.ones(len(inner)), inner.T), (count,) * 2), False)
    pockets = []
    mine = np.where(holds[blob], group[blob], -1)
    for which in np.unique(mine[mine >= 0]):
        held = np.flatnonzero(mine == which)
        under = levels[blob[held]] - cells[held, 2]
        pockets.append(Pocket(held, int(levels[blob[held]].max()), under.max() * bore.size, len(held) * bore.size**3))
    return pockets


def faults_of(bore, pockets, told, place):
    """How what is told of pockets differs from those found, how many are found within the band or are joined otherwise, and
    pairs of told and found; `place` brings a point of the datum to the plate."""
    faults, width, off = [], bore.width, VOXELS * bore.size
    centres = bore.centres()
    owner = np.full(len(centres), -1)
    for number, pocket in enumerate(pockets):
        owner[pocket.held] = number
    tree = cKDTree(centres)
    mine = {}
    for pocket in told:
        around = owner[tree.query_ball_point(place(np.array(pocket["at"])), width / 2 + bore.size)]
        around = around[around >= 0]
        if len(around):
            mine.setdefault(int(np.bincount(around).argmax()), []).append(pocket)
        else:
            faults.append(f"told {pocket['depth']:.2f} mm deep at {pocket['at']}, where nothing is held")

    def fits(told, *found):
        there = sum(p.volume for p in found)
        return abs(sum(p["volume"] for p in told) - there) <= SHARE * there + BORES * width**3

    unsure, pairs, left = 0, [], set(range(len(pockets))) - set(mine)
    for number, those in mine.items():
        found = pockets[number]
        for pocket in those:
            if abs(found.depth - pocket["depth"]) > off:
                faults.append(f"told {pocket['depth']:.2f} mm deep at {pocket['at']}, and is {found.depth:.2f}")
        if len(those) == 1 and fits(those, found):
            pairs.append((those[0], found))
            continue
        # A hump within a voxel of the level parts one of the two and not the other.
        beside = [other for other in left if abs(pockets[other].level - found.level) <= 1 and fits(those, found, pockets[other])]
        if beside or len(those) > 1 and fits(those, found):
            left -= set(beside[:1])
            unsure += 1
            continue
        faults.append(f"told to hold {[round(p['volume'], 1) for p in those]} mm3 at {those[0]['at']}, and holds "
                      f"{found.volume:.1f}")
    for pocket in (pockets[number] for number in left):
        if pocket.depth > width + off:
            faults.append(f"{pocket.depth:.2f} mm deep near {centres[pocket.held].mean(axis=0).round(2).tolist()}, not told")
        unsure += width - off < pocket.depth <= width + off
    return faults, int(unsure), pairs


def judge(folder, tube):
    """The faults of one tube of the manifest, and what was measured of it."""
    (stood, wrong), (datum, also) = (stl.read((folder / tube[key]).read_bytes()) for key in ("stood", "datum"))
    if wrong or also:
        return wrong + also, {}
    for across in ACROSS:
        faults, measured = judged(tube, stood, datum, across)
        if not faults:
            break
    return faults, measured


def judged(tube, stood, datum, across):
    """The same with so many voxels across the bore."""
    bore, turn, shift, faults = read_bore(tube, stood, datum, across)
    measured = {"closed": sum(bore.closed), "unsure": 0, "ratios": []}
    for kind, sign in (("cups", 1), ("pools", -1)):
        wrong, unsure, pairs = faults_of(bore, flooded(bore, sign), tube[kind], lambda point: turn @ point + shift)
        faults += [f"{kind}: {fault}" for fault in wrong]
        measured[kind] = len(tube[kind])
        measured["unsure"] += unsure
        measured["ratios"] += [told["volume"] / found.volume for told, found in pairs]
    return faults, measured
