"""How far a mesh and the exact skin are apart, by dense sampling both ways."""

import igl
import numpy as np


def mesh_to_skin(corners, faces, skin, rng):
    """Largest distance from the mesh to the exact skin, mm, and where.

    Looked at: every corner, every side's middle and quarters, every face's middle and a point at random on it.
    """
    v = np.asarray(corners, float)
    a, b, c = v[faces].transpose(1, 0, 2)
    sides = np.sort(np.concatenate([faces[:, [0, 1]], faces[:, [1, 2]], faces[:, [2, 0]]]), axis=1)
    sides = v[np.unique(sides, axis=0)]
    r = rng.dirichlet([1, 1, 1], len(faces))
    points = np.concatenate([
        v,
        sides.mean(axis=1),
        0.75 * sides[:, 0] + 0.25 * sides[:, 1],
        (a + b + c) / 3,
        r[:, :1] * a + r[:, 1:2] * b + r[:, 2:] * c,
    ])
    d = skin.distance(points)
    worst = int(np.argmax(d))
    return float(d[worst]), points[worst]


def skin_to_mesh(corners, faces, skin, count, rng):
    """Largest distance from the exact skin to the mesh, mm, and where."""
    points = skin.samples(count, rng)
    squared, _, _ = igl.point_mesh_squared_distance(points, np.asarray(corners, float), np.asarray(faces, np.int64))
    worst = int(np.argmax(squared))
    return float(np.sqrt(squared[worst])), points[worst]
