"""Times general-purpose libraries on the tubes of the bench designs: build, tessellate, binary STL in memory.

    python bench.py [--deviation MM] [--repeats N | --once] [--library NAME]... DESIGN.json ...

Prints JSON: `{library: {design: {median_s, triangles, error_mm}}}`. The error is measured, not what was asked for.
Start-up, imports and reading the design are not counted. A library that is not installed is left out.
"""

import argparse
import json
import statistics
import sys
import tempfile
import time
from pathlib import Path

import numpy as np

import deviation as measure
import solids
import stl
from centreline import run_centreline
from control_mesher import frames, radii, stations, steps, tube_mesh
from skin import Skin


def main():
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("designs", nargs="+", type=Path)
    options.add_argument("--deviation", type=float, default=0.01)
    options.add_argument("--repeats", type=int, default=7)
    options.add_argument("--once", action="store_true", help="time the first call alone, for what takes seconds")
    options.add_argument("--library", action="append", choices=list(MAKERS), help="only this one; may be repeated")
    options = options.parse_args()
    table = {}
    for library in options.library or MAKERS:
        for path in options.designs:
            row = time_one(MAKERS[library], path, options)
            if row:
                table.setdefault(library, {})[path.stem] = row
    json.dump(table, sys.stdout, indent=1)


def time_one(maker, path, options):
    """The median time, triangles and measured error of one library on a design's first run."""
    design = json.loads(path.read_text())
    run = design["runs"][0]
    skin = Skin(run_centreline(design, run), run)
    try:
        make = maker(skin, options.deviation)
    except ImportError:
        return None
    times = []
    if not options.once:
        make()
    for _ in range(1 if options.once else options.repeats):
        begin = time.perf_counter()
        data = make()
        times.append(time.perf_counter() - begin)
    return {"median_s": statistics.median(times), "triangles": (len(data) - 84) // 50, "error_mm": error(data, skin)}


def error(data, skin):
    rng = np.random.default_rng(3)
    corners, faces = solids.welded(stl.read(data)[0])
    return max(measure.mesh_to_skin(corners, faces, skin, rng)[0],
               measure.skin_to_mesh(corners, faces, skin, 20_000, rng)[0])


def opencascade_asked(skin, deviation):
    """The exact pipe with its cut ends, meshed at the deviation asked for."""
    from OCP.BRepMesh import BRepMesh_IncrementalMesh
    from OCP.StlAPI import StlAPI_Writer

    import opencascade

    # Its writer knows only files; one in memory where the system has such a place.
    folder = "/dev/shm" if Path("/dev/shm").is_dir() else None
    target = Path(tempfile.mkdtemp(dir=folder)) / "tube.stl"

    def make():
        solid = opencascade.tube(skin.line, skin.section)
        BRepMesh_IncrementalMesh(solid, deviation, False, 0.5, False)
        writer = StlAPI_Writer()
        writer.ASCIIMode = False
        writer.Write(solid, str(target))
        data = target.read_bytes()
        target.unlink()
        return data

    return make


def opencascade_held(skin, deviation):
    """As above, at the largest of a few finer requests whose mesh really keeps the deviation."""
    for part in (1.0, 0.7, 0.5, 0.35, 0.25):
        make = opencascade_asked(skin, deviation * part)
        if error(make(), skin) <= deviation:
            break
    return make


def manifold_warp(skin, deviation):
    """A straight ring extruded with one division a station, warped on to the tube."""
    import manifold3d

    def make():
        around, rows = rings(skin, deviation)
        outer, inner = rows["outer"], rows["inner"]
        circle = manifold3d.CrossSection.circle(1.0, around) - manifold3d.CrossSection.circle(0.5, around)
        count = len(outer)
        solid = manifold3d.Manifold.extrude(circle, count - 1.0, count - 2)

        def warp(p):
            i = np.rint(p[:, 2]).astype(int)
            r = np.hypot(p[:, 0], p[:, 1])
            size = np.where(r > 0.75, outer[i], inner[i]) / r
            return rows["centre"][i] + (p[:, :1] * rows["a"][i] + p[:, 1:2] * rows["b"][i]) * size[:, None]

        mesh = solid.warp_batch(warp).to_mesh()
        return stl.write(mesh.vert_properties[:, :3], mesh.tri_verts)

    return make


def rings(skin, deviation):
    """Stations, radii and frames of an inscribed tube, half the deviation for the rings and half between them."""
    section = skin.section
    around = steps(2 * np.pi, section.outer, deviation / 2)
    s = stations(skin.line, section, deviation / 2)
    centre, tangent = skin.line.at(s)
    a, b = frames(s, tangent)
    outer, inner = radii(section, s)
    return around, {"centre": centre, "a": a, "b": b, "outer": outer, "inner": inner}


def trimesh_sweep(skin, deviation):
    """The ring-shaped polygon swept along the stations; it knows no chamfers."""
    import shapely
    import trimesh

    def make():
        section = skin.section
        around = steps(2 * np.pi, section.outer, deviation / 2)
        phi = 2 * np.pi * np.arange(around) / around
        wheel = np.stack([np.cos(phi), np.sin(phi)], axis=1)
        ring = shapely.Polygon(section.outer * wheel, [section.inner * wheel])
        path, _ = skin.line.at(stations(skin.line, section, deviation / 2))
        mesh = trimesh.creation.sweep_polygon(ring, path, engine="manifold")
        return stl.write(mesh.vertices, mesh.faces)

    return make


def vtk_tube_filter(skin, deviation):
    """Two tube filters, outside and bore, joined by the end faces; left out where VTK is not installed."""
    from vtkmodules.util.numpy_support import numpy_to_vtk, vtk_to_numpy
    from vtkmodules.vtkCommonCore import vtkPoints
    from vtkmodules.vtkCommonDataModel import vtkCellArray, vtkPolyData
    from vtkmodules.vtkFiltersCore import vtkTriangleFilter, vtkTubeFilter

    def shell(points, radii, around):
        data, cells = vtkPolyData(), vtkCellArray()
        holder = vtkPoints()
        holder.SetData(numpy_to_vtk(points))
        cells.InsertNextCell(len(points), range(len(points)))
        data.SetPoints(holder)
        data.SetLines(cells)
        scalars = numpy_to_vtk(radii)
        scalars.SetName("radius")
        data.GetPointData().SetScalars(scalars)
        tube, flat = vtkTubeFilter(), vtkTriangleFilter()
        tube.SetInputData(data)
        tube.SetVaryRadiusToVaryRadiusByAbsoluteScalar()
        tube.SetNumberOfSides(around)
        tube.CappingOff()
        flat.SetInputConnection(tube.GetOutputPort())
        flat.Update()
        out = flat.GetOutput()
        faces = vtk_to_numpy(out.GetPolys().GetConnectivityArray()).reshape(-1, 3)
        return vtk_to_numpy(out.GetPoints().GetData()), faces

    def make():
        around, rows = rings(skin, deviation)
        v, f = shell(rows["centre"], rows["outer"], around)
        v2, f2 = shell(rows["centre"], rows["inner"], around)
        i = np.arange(around)
        i2 = (i + 1) % around
        last, base = len(v) - around, len(v)
        lids = [np.stack([i, base + i2, i2], 1), np.stack([i, base + i, base + i2], 1)]
        lids += [np.stack([last + i, last + i2, base + last + i2], 1),
                 np.stack([last + i, base + last + i2, base + last + i], 1)]
        return stl.write(np.concatenate([v, v2]), np.concatenate([f, f2[:, ::-1] + base, *lids]))

    return make


def numpy_loop(skin, deviation):
    """The control mesher of these tests: inscribed rings, one array expression a step."""
    return lambda: stl.write(*tube_mesh(skin.line, skin.section, deviation))


MAKERS = {
    "OpenCASCADE, as asked": opencascade_asked,
    "OpenCASCADE, as held": opencascade_held,
    "manifold3d warp": manifold_warp,
    "trimesh sweep": trimesh_sweep,
    "VTK tube filter": vtk_tube_filter,
    "numpy loop": numpy_loop,
}

if __name__ == "__main__":
    main()
