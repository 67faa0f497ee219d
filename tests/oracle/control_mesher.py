"""A plain tube mesher of our own: the mesh that every judge must pass, and the broken ones that each must catch.

It makes no claim to speed or few triangles; it is inscribed and rings the centreline at a fixed step.
"""

import numpy as np


def tube_mesh(line, section, deviation):
    """A closed mesh within `deviation` of the exact skin: corners (n, 3) as 32-bit floats, faces (m, 3)."""
    around = steps(2 * np.pi, section.outer, deviation / 2)
    s = stations(line, section, deviation / 2)
    centre, tangent = line.at(s)
    a, b = frames(s, tangent)
    phi = 2 * np.pi * np.arange(around) / around
    wheel = np.cos(phi)[None, :, None] * a[:, None] + np.sin(phi)[None, :, None] * b[:, None]
    outer, inner = radii(section, s)
    loops = np.concatenate([centre[:, None] + outer[:, None, None] * wheel,
                            (centre[:, None] + inner[:, None, None] * wheel)[::-1]])
    i, j = np.meshgrid(np.arange(len(loops)), np.arange(around), indexing="ij")
    i2, j2 = (i + 1) % len(loops), (j + 1) % around
    p, q, r, t = (x.ravel() for x in (i * around + j, i * around + j2, i2 * around + j2, i2 * around + j))
    faces = np.concatenate([np.stack([p, q, r], 1), np.stack([p, r, t], 1)])
    return loops.reshape(-1, 3).astype(np.float32), faces


def radii(section, s):
    """Outer and bore radius at each station."""
    c, e, n = section.chamfer, section.edge_break, section.length
    outer = np.interp(s, [0, c, n - c, n], [section.tip, section.outer, section.outer, section.tip]) if c > 0 \
        else np.full(len(s), section.outer)
    inner = np.interp(s, [0, e, n - e, n], [section.mouth, section.inner, section.inner, section.mouth]) if e > 0 \
        else np.full(len(s), section.inner)
    return outer, inner


def stations(line, section, sag):
    """Arc lengths of the rings: every seam, every break of the section, and steps along the arcs."""
    c, e, n = section.chamfer, section.edge_break, section.length
    out = [0, c, e, n - c, n - e, n]
    for piece in line.pieces:
        out += [piece.from_, piece.from_ + piece.length]
        if piece.radius is not None:
            count = steps(piece.turned if piece.normal is None else piece.angle, piece.radius + section.outer, sag)
            out += list(piece.from_ + piece.length * np.arange(1, count) / count)
    out = np.sort(np.array(out))
    return out[np.concatenate([[True], np.diff(out) > 1e-9])]


def steps(angle, radius, sag):
    return max(int(np.ceil(angle / (2 * np.arccos(1 - sag / radius)))), 3 if angle > 6 else 1)


def frames(s, tangent):
    """Two directions across the tangent that do not spin: carried from ring to ring by the least rotation."""
    a = np.empty_like(tangent)
    first = np.cross(tangent[0], np.eye(3)[np.argmin(abs(tangent[0]))])
    a[0] = first / np.linalg.norm(first)
    for i in range(1, len(s)):
        axis = np.cross(tangent[i - 1], tangent[i])
        sin, cos = np.linalg.norm(axis), tangent[i - 1] @ tangent[i]
        x = a[i - 1]
        if sin > 1e-12:
            k = axis / sin
            x = x * cos + np.cross(k, x) * sin + k * (k @ x) * (1 - cos)
        x = x - (x @ tangent[i]) * tangent[i]
        a[i] = x / np.linalg.norm(x)
    return a, np.cross(tangent, a)
