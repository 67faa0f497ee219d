"""The independent curves, held against closed forms before they judge anything."""

import numpy as np
import pytest

from centreline import End, shared_room
from control_mesher import tube_mesh
from controls import RUN
from curved import Curved, Helix
from route import assembled, end_of_coil, lead, smooth
from section import Seats
from skin import Skin

X, Y, Z = np.eye(3)


def helix(**changes):
    return Helix(np.array([3.0, -2.0, 5.0]), Z, X, {"radius": 30, "pitch": 20, "turns": 2.25, **changes})


@pytest.mark.parametrize("changes", [{}, {"hand": "left"}, {"pitch": 0}, {"end_radius": 55}, {"end_radius": 12, "start_deg": 77}])
def test_lengths_and_curvatures_of_coils(changes):
    """Lengths by their closed forms against adaptive quadrature; a cylinder's curvature is r / (r^2 + c^2)."""
    form = helix(**changes)
    whole = Curved(form, (0.0, form.angle), "coil", 0)
    length = form.exact_length()
    assert whole.length == pytest.approx(length, rel=1e-12)
    if form.widening == 0:
        bend = form.radius / (form.radius**2 + form.climb**2)
        assert 1 / whole.radius == pytest.approx(bend, rel=1e-12)
        assert whole.turned == pytest.approx(bend * length, rel=1e-9)
    s = np.linspace(0, whole.length, 7)
    assert whole.arc_length(whole.parameter(s)) == pytest.approx(s, abs=1e-9)


def test_hand_mirrors_a_coil():
    right, left = helix(), helix(hand="left")
    u = np.linspace(0, right.angle, 50)
    mirrored = (right.derivatives(u)[0] - right.centre) * [1, -1, 1] + right.centre
    assert np.abs(mirrored - left.derivatives(u)[0]).max() < 1e-12


def test_feet_are_where_the_normal_plane_meets_the_curve():
    form = helix(end_radius=40)
    piece = Curved(form, (1.0, 2.2), "coil", 0)
    s = np.linspace(0.5, piece.length - 0.5, 40)
    centre, tangent = piece.at(s)
    side = np.cross(tangent, Z)
    side /= np.linalg.norm(side, axis=1, keepdims=True)
    got, rho, stretch = piece.foot(centre + 5 * side)
    assert got == pytest.approx(s, abs=1e-8) and rho == pytest.approx(np.full(40, 5.0), abs=1e-9)
    # Outside the turn the skin is longer than the centreline, by distance over radius: near 5 / 30.
    assert ((stretch > 1.1) & (stretch < 1.2)).all()


def test_a_smooth_curve_through_points_of_a_straight_is_straight():
    pieces = smooth((0 * X, X), [10 * X, 12 * X], (40 * X, X), 0)
    assert sum(piece.length for piece in pieces) == pytest.approx(40, abs=1e-12)


def test_a_smooth_curve_passes_its_points_with_one_curvature():
    points = [np.array([20.0, 4, 0]), np.array([35.0, 20, 5])]
    pieces = smooth((0 * X, X), points, (np.array([40.0, 60, 10]), Y), 0)
    ends = [piece.at(np.array([piece.length]))[0][0] for piece in pieces]
    for point in points:
        assert min(np.linalg.norm(end - point) for end in ends) < 1e-12
    for before, after in zip(pieces, pieces[1:]):
        assert np.abs(before.bend_at(np.array([before.length])) - after.bend_at(np.array([0.0]))).max() < 1e-10
        assert np.abs(before.at(np.array([before.length]))[1] - after.direction).max() < 1e-10


@pytest.mark.parametrize("asked, legs, kept, exact", [
    ([20, 20], [50, 30, 50], [0, 0], [15, 15]),
    ([5, 40], [50, 30, 50], [0, 0], [5, 25]),
    ([40, 40], [30, 60, 90], [22, 0], [8, 40]),
    ([30, 30, 30], [90, 32, 12, 90], [0, 0], [26, 6, 6]),
])
def test_shares_of_right_angles_are_plain_arithmetic(asked, legs, kept, exact):
    assert shared_room(asked, [1.0] * len(asked), legs, kept) == pytest.approx(exact, abs=1e-9)


def line_of(form):
    start, finish = end_of_coil(form, 0.0, -1), end_of_coil(form, form.angle, 1)
    marks = np.linspace(0, form.angle, int(np.ceil(form.angle / 1.6)) + 1)
    coil = [Curved(form, span, "coil", 0) for span in zip(marks, marks[1:])]
    start, finish = (End(end.face + 30 * end.out, -end.out, end.face, 0.0) for end in (start, finish))
    return assembled(lead(start) + coil + lead(finish, True), start, finish)


def test_the_skin_of_a_coil_is_where_a_mesh_of_it_is():
    """The control mesher's rings lie on the skin; a skin a tenth larger is a tenth away."""
    line = line_of(helix(turns=1.3))
    skin = Skin(line, RUN)
    corners, _ = tube_mesh(line, skin.section, 0.05)
    assert skin.distance(np.asarray(corners, float)).max() < 1e-4
    s = np.linspace(5, line.length - 5, 500)
    phi = np.linspace(0, 40, 500)
    off = skin.points(s, np.full(500, skin.section.outer + 0.1), phi)
    assert skin.distance(off) == pytest.approx(np.full(500, 0.1), abs=1e-6)


@pytest.mark.parametrize("twist", [0, 3])
def test_the_distance_from_lobes(twist):
    """Points of the wave are on it; points a hair along its normal, by differences, are that far away."""
    run = {**RUN, "dress": {"diameter": 14, "blend": 10, "lobes": 6, "depth": 0.9, "twist_deg_per_mm": twist}}
    line = line_of(helix(turns=0.6, radius=60))
    skin = Skin(line, run, Seats((10, 10), (15, 15), (100, 100), 1.0))
    s = np.linspace(30, line.length - 30, 400)
    phi = 2.4 * np.arange(400)

    def on(s, phi):
        return skin.points(s, skin.section.outer_at(s) - skin.section.wave(s, phi)[0], phi)

    assert skin.distance(on(s, phi)).max() < 1e-7
    normal = np.cross(on(s, phi + 1e-5) - on(s, phi - 1e-5), on(s + 1e-4, phi) - on(s - 1e-4, phi))
    normal /= np.linalg.norm(normal, axis=1, keepdims=True)
    assert skin.distance(on(s, phi) + 0.05 * normal) == pytest.approx(np.full(400, 0.05), rel=2e-3)
