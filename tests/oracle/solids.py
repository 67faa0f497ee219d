"""General-purpose libraries as judges of one mesh: is it a closed, outward, uncrossed ring of wall round a bore?

Each judge answers a list of faults in words; an empty list is a pass.
"""

import igl.copyleft.cgal as cgal
import manifold3d
import numpy as np
import trimesh

# A tube is a solid with one hole right through it.
EULER, GENUS = 0, 1


def welded(triangles):
    """Corners and faces of a triangle soup: corners are one where their coordinates are the same to the bit.

    Corners keep the order in which they first appear, so that neighbours in space stay neighbours in the list.
    """
    points = np.ascontiguousarray(triangles.reshape(-1, 3) + np.float32(0))
    _, first, index = np.unique(points.view("V12").ravel(), return_index=True, return_inverse=True)
    rank = np.empty(len(first), np.int64)
    order = np.argsort(first)
    rank[order] = np.arange(len(first))
    return points[first[order]], rank[index].reshape(-1, 3)


def by_trimesh(corners, faces):
    faults = []
    mesh = trimesh.Trimesh(corners, faces, process=False)
    if not mesh.is_watertight:
        faults.append("trimesh: not watertight")
    if not mesh.is_winding_consistent:
        faults.append("trimesh: winding differs between neighbours")
    if not mesh.volume > 0:
        faults.append(f"trimesh: volume {mesh.volume}, so not outward")
    if mesh.euler_number != EULER:
        faults.append(f"trimesh: Euler number {mesh.euler_number}, not {EULER}")
    if mesh.body_count != 1:
        faults.append(f"trimesh: {mesh.body_count} bodies")
    return faults


def by_manifold(corners, faces, volume):
    """Also holds manifold3d's volume against `volume`, mm3, within 0.05 %; answers faults and the relative error."""
    solid = manifold3d.Manifold(manifold3d.Mesh64(np.array(corners, float), np.array(faces, np.uint64)))
    if solid.status() != manifold3d.Error.NoError:
        return [f"manifold3d: {solid.status()}"], np.inf
    faults = []
    if solid.genus() != GENUS:
        faults.append(f"manifold3d: genus {solid.genus()}, not {GENUS}")
    error = solid.volume() / volume - 1
    if not abs(error) <= 5e-4:
        faults.append(f"manifold3d: volume {solid.volume()} mm3 is {error:.2e} off the exact {volume}")
    return faults, error


def by_cgal(corners, faces):
    """Exact: no two faces meet anywhere but in their shared corners and edges."""
    found = cgal.remesh_self_intersections(np.array(corners, float), np.array(faces, np.int64), detect_only=True)
    pairs = found[2]
    if len(pairs) == 0:
        return []
    where = np.asarray(corners, float)[faces[pairs[0][0]]].mean(axis=0)
    return [f"CGAL: {len(pairs)} pairs of faces cross, the first near {where.round(4).tolist()}"]


def by_area(corners, faces):
    """No face without area; answers faults and the least height of any face, mm."""
    a, b, c = np.asarray(corners, float)[faces].transpose(1, 0, 2)
    double = np.linalg.norm(np.cross(b - a, c - a), axis=1)
    longest = np.sqrt(np.max([np.sum((p - q) ** 2, axis=1) for p, q in ((a, b), (b, c), (c, a))], axis=0))
    flat = int(np.sum(double == 0))
    height = float(np.min(double / np.maximum(longest, 1e-30)))
    return ([f"{flat} faces without area"] if flat else []), height
