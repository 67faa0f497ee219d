"""The same tube as an exact solid of OpenCASCADE: a pipe along the spine, its ends turned down and broken by cones."""

import numpy as np
from OCP.BRepAlgoAPI import BRepAlgoAPI_Cut
from OCP.BRepBuilderAPI import (BRepBuilderAPI_MakeEdge, BRepBuilderAPI_MakeFace, BRepBuilderAPI_MakePolygon,
                                BRepBuilderAPI_MakeVertex, BRepBuilderAPI_MakeWire)
from OCP.BRepExtrema import BRepExtrema_DistShapeShape
from OCP.BRepGProp import BRepGProp
from OCP.BRepOffsetAPI import BRepOffsetAPI_MakePipe
from OCP.BRepPrimAPI import BRepPrimAPI_MakeRevol
from OCP.BRepLib import BRepLib
from OCP.Geom import Geom_CylindricalSurface
from OCP.Geom2d import Geom2d_Line
from OCP.gp import gp_Ax1, gp_Ax2, gp_Ax3, gp_Circ, gp_Dir, gp_Dir2d, gp_Pnt, gp_Pnt2d
from OCP.GProp import GProp_GProps
from OCP.TopAbs import TopAbs_FACE
from OCP.TopExp import TopExp_Explorer

from curved import Curved

# Cutting tools reach this far beyond the skin, so that no face of theirs lies in one of the tube's, mm.
BEYOND = 1.0


def spine(line):
    """The centreline as a wire of straight, circular and helical edges."""
    wire = BRepBuilderAPI_MakeWire()
    for piece in whole(line.pieces):
        end, _ = piece.at(piece.length)
        if piece.radius is None:
            edge = BRepBuilderAPI_MakeEdge(point(piece.start), point(end))
        elif piece.normal is None:
            edge = helix(piece)
        else:
            centre = piece.start + piece.radius * piece.normal
            axis = np.cross(piece.direction, piece.normal)
            circle = gp_Circ(gp_Ax2(point(centre), way(axis), way(-piece.normal)), piece.radius)
            edge = BRepBuilderAPI_MakeEdge(circle, 0.0, piece.angle)
        wire.Add(edge.Edge())
    return wire.Wire()


def whole(pieces):
    """The pieces, with those of one coil as one."""
    joined = []
    for piece in pieces:
        before = joined[-1] if joined else None
        if piece.radius is not None and piece.normal is None and getattr(before, "form", None) is piece.form:
            joined[-1] = Curved(piece.form, (before.span[0], piece.span[1]), piece.kind, piece.whole)
        else:
            joined.append(piece)
    return joined


def helix(piece):
    """A stretch of a cylindrical coil: a straight line on its cylinder's developed surface."""
    form, (begin, end) = piece.form, piece.span
    if form.widening != 0:
        raise ValueError("a cone's coil is no line on a cylinder")
    cylinder = Geom_CylindricalSurface(gp_Ax3(point(form.centre), way(form.axis), way(form.e)), form.radius)
    size = np.hypot(1.0, form.climb)
    origin = gp_Pnt2d(form.start + form.sign * begin, form.climb * begin)
    along = Geom2d_Line(origin, gp_Dir2d(float(form.sign), float(form.climb)))
    edge = BRepBuilderAPI_MakeEdge(along, cylinder, 0.0, float((end - begin) * size))
    BRepLib.BuildCurves3d_s(edge.Edge())
    return edge


def pipe(line, outer, inner):
    """The plain hollow tube round the line."""
    start = line.pieces[0]
    plane = gp_Ax2(point(start.start), way(start.direction))
    face = BRepBuilderAPI_MakeFace(ring(plane, outer))
    hole = ring(plane, inner)
    hole.Reverse()
    face.Add(hole)
    return BRepOffsetAPI_MakePipe(spine(line), face.Face()).Shape()


def tube(line, section):
    """The hollow tube with its chamfers and edge breaks, which must lie on the first and last straights."""
    solid = pipe(line, section.outer, section.inner)
    (first, last), (out, out2) = line.at(np.array([0.0, line.length]))
    for origin, along in ((first, out), (last, -out2)):
        if section.chamfer > 0:
            # The wedge outside the cone, carried on beyond the face and the skin.
            top = section.outer + BEYOND * section.slope
            cone = [(-BEYOND, section.tip - BEYOND * section.slope), (section.chamfer + BEYOND, top), (-BEYOND, top)]
            solid = BRepAlgoAPI_Cut(solid, turned(origin, along, cone)).Shape()
        if section.edge_break > 0:
            cone = [(-BEYOND, 0.0), (-BEYOND, section.mouth + BEYOND), (section.mouth, 0.0)]
            solid = BRepAlgoAPI_Cut(solid, turned(origin, along, cone)).Shape()
    return solid


def ring(plane, radius):
    return BRepBuilderAPI_MakeWire(BRepBuilderAPI_MakeEdge(gp_Circ(plane, radius)).Edge()).Wire()


def turned(origin, along, outline):
    """The solid of an outline of (distance along, radius) turned about the axis from `origin`."""
    side = np.cross(along, np.eye(3)[np.argmin(abs(along))])
    side /= np.linalg.norm(side)
    polygon = BRepBuilderAPI_MakePolygon()
    for s, r in outline:
        polygon.Add(point(origin + s * along + r * side))
    polygon.Close()
    face = BRepBuilderAPI_MakeFace(polygon.Wire()).Face()
    return BRepPrimAPI_MakeRevol(face, gp_Ax1(point(origin), way(along))).Shape()


def wire_length(wire):
    properties = GProp_GProps()
    BRepGProp.LinearProperties_s(wire, properties)
    return properties.Mass()


def volume(solid):
    properties = GProp_GProps()
    BRepGProp.VolumeProperties_s(solid, properties)
    return properties.Mass()


def distances(solid, points):
    """Distance of each point from the solid's skin, mm."""
    faces = []
    explorer = TopExp_Explorer(solid, TopAbs_FACE)
    while explorer.More():
        faces.append(explorer.Current())
        explorer.Next()
    answer = np.full(len(points), np.inf)
    for index, p in enumerate(points):
        vertex = BRepBuilderAPI_MakeVertex(point(p)).Vertex()
        for face in faces:
            measure = BRepExtrema_DistShapeShape(vertex, face)
            if measure.IsDone() and measure.NbSolution():
                answer[index] = min(answer[index], measure.Value())
    return answer


def point(p):
    return gp_Pnt(*map(float, p))


def way(d):
    return gp_Dir(*map(float, d))
