"""Pieces of curves that are neither straight nor circular: a stretch of a helix or of a cubic spline, by formula.

Lengths come from scipy's adaptive quadrature and the places of arc lengths from a table of Gauss-Legendre cells of our
own; the feet of points are Newton's, from the nearest of many samples.
"""

import warnings

import numpy as np
from scipy.integrate import quad, solve_ivp
from scipy.optimize import minimize_scalar
from scipy.spatial import KDTree

CELLS, SAMPLES = 32, 257
NODES, WEIGHTS = np.polynomial.legendre.leggauss(12)


class Helix:
    """A coil by its formula in the document: the parameter is the angle turned since its start, radians."""

    def __init__(self, centre, axis, reference, coil):
        self.centre, self.axis = centre, axis
        self.e, self.f = reference, np.cross(axis, reference)
        self.angle = 2 * np.pi * coil["turns"]
        end = coil.get("end_radius")
        self.radius = coil["radius"]
        self.widening = ((self.radius if end is None else end) - self.radius) / self.angle
        self.climb = coil["pitch"] / (2 * np.pi)
        self.start = np.radians(coil.get("start_deg", 0))
        self.sign = -1 if coil.get("hand", "right") == "left" else 1

    def derivatives(self, u):
        """Point and first two derivatives at the parameters `u`."""
        u = np.asarray(u, float)[..., None]
        a = self.start + self.sign * u
        out = np.cos(a) * self.e + np.sin(a) * self.f
        around = self.sign * (np.cos(a) * self.f - np.sin(a) * self.e)
        r = self.radius + self.widening * u
        return (self.centre + out * r + self.axis * self.climb * u,
                out * self.widening + around * r + self.axis * self.climb,
                2 * self.widening * around - out * r)

    def exact_length(self):
        """The closed form of the whole coil's length, mm."""
        k, r = np.hypot(self.widening, self.climb), self.radius
        if self.widening == 0:
            return self.angle * np.hypot(r, self.climb)
        upto = lambda r: (r * np.hypot(k, r) + k * k * np.arcsinh(r / k)) / 2
        return (upto(r + self.widening * self.angle) - upto(r)) / self.widening


class Cubic:
    """A parametric spline of scipy's as a formula."""

    def __init__(self, spline):
        self.spline = [spline, spline.derivative(1), spline.derivative(2)]

    def derivatives(self, u):
        return tuple(part(np.asarray(u, float)) for part in self.spline)


class Curved:
    """A stretch of a formula's curve, with the interface of a centreline's piece."""

    angle, normal = None, None

    def __init__(self, form, span, kind, whole):
        self.form, self.span, self.kind, self.whole, self.from_ = form, span, kind, whole, 0.0
        self.length = adaptive(self.speed, span)
        self.turned = adaptive(lambda u: self.curvature(u) * self.speed(u), span, 1e-9, 1e-11)
        self.radius = 1 / self.sharpest()
        edges = np.linspace(*span, CELLS + 1)
        cells = self.between(edges[:-1], edges[1:])
        self.edges, self.lengths = edges, np.concatenate([[0], np.cumsum(cells)])
        self.start, first, _ = self.form.derivatives(span[0])
        self.direction = first / np.linalg.norm(first)
        self.samples = np.linspace(*span, SAMPLES)
        self.tree = None

    def speed(self, u):
        return np.linalg.norm(self.form.derivatives(u)[1], axis=-1)

    def curvature(self, u):
        _, first, second = self.form.derivatives(u)
        return np.linalg.norm(np.cross(first, second), axis=-1) / np.linalg.norm(first, axis=-1) ** 3

    def sharpest(self):
        """The largest curvature on it, 1/mm."""
        u = np.linspace(*self.span, 129)
        bend = self.curvature(u)
        best = int(np.argmax(bend))
        around = (u[max(best - 1, 0)], u[min(best + 1, 128)])
        found = minimize_scalar(lambda x: -self.curvature(x), bounds=around, method="bounded", options={"xatol": 1e-12})
        return max(float(bend[best]), -float(found.fun), 1e-30)

    def between(self, a, b):
        """Arc lengths between parameters that are near each other."""
        a, b = np.asarray(a, float), np.asarray(b, float)
        middle, half = (a + b) / 2, (b - a) / 2
        return half * (self.speed(middle[..., None] + half[..., None] * NODES) * WEIGHTS).sum(axis=-1)

    def arc_length(self, u):
        """Arc length from its start to parameters, also a little beyond its ends."""
        cell = np.clip(np.searchsorted(self.edges, u, side="right") - 1, 0, CELLS - 1)
        return self.lengths[cell] + self.between(self.edges[cell], u)

    def parameter(self, s):
        u = np.interp(s, self.lengths, self.edges)
        for _ in range(4):
            u = u - (self.arc_length(u) - s) / self.speed(u)
        return np.clip(u, *sorted(self.span))

    def at(self, s):
        """Points and unit tangents at arc lengths `s` from its start."""
        point, first, _ = self.form.derivatives(self.parameter(np.asarray(s, float)))
        return point, first / np.linalg.norm(first, axis=-1, keepdims=True)

    def bend_at(self, s):
        """The curvature vectors at arc lengths `s` from its start."""
        _, first, second = self.form.derivatives(self.parameter(np.asarray(s, float)))
        square = np.sum(first * first, axis=-1, keepdims=True)
        return (second - first * np.sum(first * second, axis=-1, keepdims=True) / square) / square

    def foot(self, points):
        """As `skin.foot`: arc length of each point's foot, distance from it, and the stretch of the skin there."""
        if self.tree is None:
            self.tree = KDTree(self.form.derivatives(self.samples)[0])
        u = self.samples[self.tree.query(points)[1]]
        reach = 2 * abs(self.span[1] - self.span[0]) / (SAMPLES - 1)
        low, high = min(self.span) - reach, max(self.span) + reach
        for _ in range(8):
            point, first, second = self.form.derivatives(u)
            gap = point - points
            slope = np.sum(first * first, axis=1) + np.sum(gap * second, axis=1)
            slope = np.where(slope > 0, slope, np.sum(first * first, axis=1))
            u = np.clip(u - np.sum(gap * first, axis=1) / slope, low, high)
        point, first, second = self.form.derivatives(u)
        square = np.sum(first * first, axis=1)
        stretch = 1 - np.sum((points - point) * second, axis=1) / square
        return self.arc_length(u), np.linalg.norm(points - point, axis=1), np.maximum(stretch, 1e-6)

    def frame(self, across):
        """A function of arc length: `across`, a unit vector across its start, carried along without twist."""
        def rate(s, v):
            bend, (_, tangent) = self.bend_at(s), self.at(s)
            return -(v @ bend) * tangent
        found = solve_ivp(rate, (0, self.length), across, method="DOP853", rtol=1e-11, atol=1e-13, dense_output=True)
        return lambda s: found.sol(np.clip(s, 0, self.length)).T if np.size(s) else np.empty((0, 3))


def adaptive(f, span, relative=1e-13, absolute=0.0):
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        return quad(f, *span, epsabs=absolute, epsrel=relative, limit=200)[0]
