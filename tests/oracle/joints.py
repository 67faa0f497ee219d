"""The gap of a bonded joint, looked at on the meshes of its two pieces, and what pieces and the run put together share."""

import manifold3d
import numpy as np


def solid(corners, faces):
    made = manifold3d.Manifold(manifold3d.Mesh64(np.array(corners, float), np.array(faces, np.uint64)))
    assert made.status() == manifold3d.Error.NoError
    return made


def across(corners, faces, origin, directions):
    """Distances from a point along unit directions to every face that they strike, sorted, by one look at all faces."""
    a, b, c = (corners[faces[:, k]].astype(float) - origin for k in range(3))
    found = []
    for direction in directions:
        # Moeller and Trumbore 1997, Journal of Graphics Tools 2(1), 21.
        e, f = b - a, c - a
        p = np.cross(direction, f)
        det = np.einsum("ij,ij->i", e, p)
        det = np.where(np.abs(det) < 1e-15, np.inf, det)
        u = np.einsum("ij,ij->i", -a, p) / det
        q = np.cross(-a, e)
        v = q @ direction / det
        t = np.einsum("ij,ij->i", f, q) / det
        hit = (u >= 0) & (v >= 0) & (u + v <= 1) & (t > 0) & np.isfinite(det)
        found.append(np.sort(t[hit]))
    return found


def beside(joint, corners, faces):
    """The mesh less the faces that no ray across the joint can strike before it has left the tube."""
    middle, reach = np.array(joint["points"][5][0]), joint["length"] + joint["collar"]
    at = corners[faces].astype(float)
    keep = ((at.min(axis=1) <= middle + reach) & (at.max(axis=1) >= middle - reach)).all(axis=1)
    return corners, faces[keep]


def gaps(joint, before, after, round_it=12):
    """The gap between a joint's spigot and socket, looked at round it and along it."""
    before, after = beside(joint, *before), beside(joint, *after)
    for step, (point, tangent) in enumerate(joint["points"]):
        along = joint["length"] * step / 10
        # Where the key has risen, past the mouth's lead-in, before the ring for the adhesive and the tip's lead-in.
        catch = 2 * (joint["catch"] or 0) + 0.3
        if not max(joint["ramp"], joint["lead_in"]) + 0.1 < along < joint["length"] - joint["tip"] - catch - 0.1:
            continue
        point, tangent = np.array(point), np.array(tangent)
        first = np.cross(tangent, [0.31, 0.54, 0.78])
        first /= np.linalg.norm(first)
        second = np.cross(tangent, first)
        angles = np.arange(round_it) * 2 * np.pi / round_it + 0.1
        directions = [np.cos(a) * first + np.sin(a) * second for a in angles]
        spigot = across(*before, point, directions)
        socket = across(*after, point, directions)
        for inside, outside in zip(spigot, socket):
            # From the axis: the bore, then the spigot's outside; then the socket's inside.
            yield outside[0] - inside[1]


def faults_together(pieces, joined, materials, deviation):
    """What is wrong with solids of pieces put together, held against the run put together, and the solid that they share;
    `materials` are the exact volumes of the pieces and of the run, mm3."""
    faults = []
    union = manifold3d.Manifold.batch_boolean(pieces, manifold3d.OpType.Add)
    shared = joined ^ union
    # What sticks out of the run is as thin as two meshes' deviations together.
    skin = 2 * deviation * joined.surface_area()
    if (beyond := union.volume() - shared.volume()) > skin:
        faults.append(f"{beyond} mm3 of the pieces stick out of the run, where {skin} may")
    # What is missing is the adhesive of each joint, and as thin a skin.
    adhesive = materials[-1] - sum(materials[:-1])
    if adhesive <= 0:
        faults.append(f"no room for adhesive: {adhesive} mm3")
    if abs((missing := joined.volume() - shared.volume()) - adhesive) > skin:
        faults.append(f"{missing} mm3 of the run are in no piece; the adhesive is {adhesive}")
    return faults, shared
