"""Binary STL, read by its published layout: 80 bytes, a count, 50 bytes a facet, little-endian."""

import numpy as np

FACET = np.dtype([("normal", "<f4", 3), ("corners", "<f4", (3, 3)), ("attribute", "<u2")])


def read(data):
    """The facets' corners (n, 3, 3) as 32-bit floats, and the faults of the file itself."""
    faults = []
    if data[:5].lower() == b"solid":
        faults.append("STL: the header begins with 'solid', which marks the text kind")
    if len(data) < 84:
        return np.zeros((0, 3, 3), np.float32), faults + ["STL: shorter than its header"]
    count = int(np.frombuffer(data, "<u4", 1, 80)[0])
    if len(data) != 84 + 50 * count:
        return np.zeros((0, 3, 3), np.float32), faults + [f"STL: {len(data)} bytes for {count} facets"]
    facets = np.frombuffer(data, FACET, count, 84)
    corners = facets["corners"]
    if not np.isfinite(corners).all():
        faults.append("STL: a coordinate is not a number")
    faults += wrong_normals(facets["normal"].astype(float), corners.astype(float))
    return corners, faults


def wrong_normals(normal, corners):
    """A facet's stated normal may be zero (left to the reader); else it is unit and agrees with its corners."""
    across = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    size = np.linalg.norm(normal, axis=1)
    stated = size > 0
    wrong = stated & (np.abs(size - 1) > 1e-3)
    wrong |= stated & (np.einsum("ij,ij->i", normal, across) < 0)
    return [f"STL: {wrong.sum()} stated normals are wrong"] if wrong.any() else []


def write(corners, faces):
    """Bytes of a binary STL; for the controls and the bench."""
    facets = np.zeros(len(faces), FACET)
    facets["corners"] = np.asarray(corners, np.float32)[faces]
    p = facets["corners"]
    normal = np.cross(p[:, 1] - p[:, 0], p[:, 2] - p[:, 0])
    facets["normal"] = normal / np.maximum(np.linalg.norm(normal, axis=1, keepdims=True), 1e-30)
    return b"\0" * 80 + np.uint32(len(faces)).tobytes() + facets.tobytes()
