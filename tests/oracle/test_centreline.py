"""The independent centreline and skin, held against worked examples and closed forms before they judge anything."""

import numpy as np
import pytest

from centreline import run_centreline
from controls import RUN, polyline
from link import length, shortest_link, space_links
from skin import Skin

X, Y, Z = np.eye(3)
ORIGIN = np.zeros(3)


@pytest.mark.parametrize("points, radius, rows, developed", [
    ([(0, 0, 0), (100, 0, 0), (100, 80, 0), (100, 80, 60)], 24,
     [(76, 0, 90), (32, 90, 90), (36, 0, 0)], 219.398224),
    ([(0, 0, 0), (100, 0, 0), (100, 80, 0), (160, 80, 60), (160, 140, 60)], 24,
     [(76, 0, 90), (32, 135, 90), (36.852814, 180, 90), (36, 0, 0)], 293.950149),
    ([(0, 0, 0), (100, 0, 0), (160, 80, 0), (160, 80, 100), (200, 80, 130)], 20,
     [(90, 0, 53.130102), (70, 90, 90), (70, 126.869898, 53.130102), (40, 0, 0)], 338.507735),
])
def test_bend_table_examples(points, radius, rows, developed):
    """Worked by hand from apexes: straight = leg less both tangent lengths, rotation by the right-hand rule."""
    line = polyline(points, radius)
    assert line.length == pytest.approx(developed, abs=5e-7)
    for got, exact in zip(line.bend_table(), rows, strict=True):
        assert got[0] == pytest.approx(exact[0], abs=5e-7) and got[2] == pytest.approx(exact[2], abs=5e-7)
        assert abs((got[1] - exact[1] + 180) % 360 - 180) < 5e-7
    mirrored = polyline(np.array(points) * [1, 1, -1], radius).bend_table()
    for got, exact in zip(mirrored, rows):
        assert abs((got[1] + exact[1] + 180) % 360 - 180) < 5e-7


@pytest.mark.parametrize("height, angle, run, developed", [(30, 67.9757, 44.4972, 56.9472), (20, 54.3147, 38.9872, 45.5025)])
def test_s_offset_without_straight(height, angle, run, developed):
    """h = 2R(1 - cos a), run 2R sin a, length 2Ra at R 24: a link with no straight at all."""
    exact = 48 * np.sin(np.arccos(1 - height / 48))
    (_, first), straight, (_, last) = link = shortest_link(ORIGIN, Z, height * X + exact * Z, Z, 24)
    # With the circles just touching, the straight is the root of a difference that rounding leaves at 1e-7 mm2 or so.
    assert exact == pytest.approx(run, abs=5e-5) and straight < 2e-3
    assert np.degrees([first, last]) == pytest.approx([angle, angle], abs=3e-3)
    assert length(link, 24) == pytest.approx(developed, abs=5e-4)


@pytest.mark.parametrize("gap, arrival, expected", [
    (100 * Z, Z, 100),
    (60 * X, -Z, 24 * np.pi + 12),
    (48 * X, -Z, 24 * np.pi),
    (48 * X + 10 * Z, -Z, 24 * np.pi + 10),
    (24 * Z + 40 * X, X, 24 * np.pi / 2 + 16),
])
def test_links_in_a_plane(gap, arrival, expected):
    link = shortest_link(ORIGIN, Z, gap, arrival, 24)
    assert length(link, 24) == pytest.approx(expected, abs=1e-9)


def test_the_search_agrees_with_the_plane_words():
    """In a plane the least of the four plane words is the least of the whole sphere's, where both exist."""
    rng = np.random.default_rng(5)
    for _ in range(6):
        a, b = rng.uniform(-3, 3, 2)
        gap = rng.uniform(60, 150) * (np.cos(a) * X + np.sin(a) * Z)
        arrival = np.cos(b) * X + np.sin(b) * Z
        best = shortest_link(ORIGIN, Z, gap, arrival, 20)
        found = min(length(link, 20) for link in space_links(ORIGIN, Z, gap, arrival, 20))
        assert found == pytest.approx(length(best, 20), rel=1e-7)


def test_no_link_of_a_finer_search_is_shorter():
    """A brute reading of the same question: of many straight directions, none that nearly closes is shorter."""
    rng = np.random.default_rng(7)
    for _ in range(6):
        d, a, gap = (v / np.linalg.norm(v) for v in rng.normal(size=(3, 3)))
        gap = gap * rng.uniform(30, 160)
        best = length(shortest_link(ORIGIN, d, gap, a, 15), 15)
        import link
        u = link.sphere(400_000)
        for s in (1, -1):
            for s2 in (1, -1):
                v = link.chord(u, gap, d, a, 15, s, s2)
                along = np.sum(v * u, axis=1)
                off = np.linalg.norm(v - along[:, None] * u, axis=1)
                near = np.flatnonzero((off < 0.5) & (along > 0))
                for i in near:
                    (_, one), straight, (_, two) = link.assemble(u[i], gap, d, a, 15, s, s2)
                    assert 15 * (one + two) + straight > best - 1.5


def design(ports, run, elbow=None):
    fitting = {"name": "F", "tube_diameter": 12, "height": 18, "socket_depth": 10, "collar_diameter": 19, "lead": 5,
               "elbow": elbow}
    return {"fittings": [fitting], "ports": [{"fitting": "F", **port} for port in ports],
            "runs": [{"from": "a", "to": "b", "bend_radius": 16, **RUN, **run}]}


def test_stop_trim_and_lead():
    """The end face is on the stop, 18 - 10 above the seat, or `trim` below it; straight to 18 + 5 at least."""
    ports = [{"name": "a", "at": [0, 0, 0], "facing": [0, 0, 2]}, {"name": "b", "at": [70, 0, 40], "facing": [-3, 0, 0]}]
    for trim in (0, 1.5):
        d = design(ports, {"route": [{"corner": [0, 0, {"of": "b"}]}], "ends": {**RUN["ends"], "trim": trim}})
        line = run_centreline(d, d["runs"][0])
        assert line.pieces[0].start == pytest.approx([0, 0, 8 - trim])
        assert line.at(np.array([line.length]))[0][0] == pytest.approx([62 + trim, 0, 40])
        # Corner at (0, 0, 40): legs of 32 and 62, a right angle of radius 16 gains 2R - pi R / 2.
        assert line.length == pytest.approx(32 + 62 + 2 * trim - 32 + 8 * np.pi)


def test_a_corner_off_the_axis_is_reached_by_one_bend_after_the_lead():
    ports = [{"name": "a", "at": [0, 0, 0], "facing": [0, 0, 1]}, {"name": "b", "at": [200, 0, 90], "facing": [-1, 0, 0]}]
    d = design(ports, {"route": [{"corner": [60, 0, 90]}]})
    line = run_centreline(d, d["runs"][0])
    straight, bend, on, corner, tail = line.pieces
    assert straight.length == pytest.approx(15) and bend.radius == 16 == corner.radius
    # The tangent at the joining bend's end passes through the corner.
    point, tangent = bend.at(bend.length)
    assert np.cross(np.array([60, 0, 90]) - point, tangent) == pytest.approx(0, abs=1e-9)
    assert tail.direction == pytest.approx([1, 0, 0])


@pytest.mark.parametrize("facing, turn, out", [
    ([1, 0, 0], 0, [0, 0, 1]), ([1, 0, 0], 90, [0, -1, 0]), ([0, 0, 1], 0, [1, 0, 0]), ([0, 0, 1], 90, [0, 1, 0]),
    ([0, 0, -1], 90, [0, -1, 0]), ([0, 1, 0], -90, [-1, 0, 0]),
])
def test_an_elbow_turns_where_it_says(facing, turn, out):
    from centreline import end_of
    elbow = {"angle_deg": 90, "rise": 14, "reach": 12, "turn_deg": turn}
    d = design([{"name": "a", "at": [1, 2, 3], "facing": facing}], {}, elbow)
    end = end_of(d, d["runs"][0], "a")
    assert end.out == pytest.approx(out, abs=1e-12)
    assert end.mouth == pytest.approx(np.array([1, 2, 3]) + 14 * np.array(facing) + 12 * np.array(out))
    assert end.face == pytest.approx(end.mouth - 10 * np.array(out))


def test_points_of_the_skin_lie_on_it_and_no_others():
    skin = Skin(polyline([(0, 0, 0), (60, 0, 0), (60, 50, 0), (60, 50, 55)], 20), RUN)
    rng = np.random.default_rng(2)
    assert skin.distance(skin.samples(5000, rng)).max() < 1e-9
    s = rng.uniform(5, skin.line.length - 5, 500)
    for r in (4.2, 4.4, 4.9, 5.5, 6.3):
        points = skin.points(s, np.full(500, r), rng.uniform(0, 7, 500))
        assert skin.distance(points) == pytest.approx(min(abs(r - 6), abs(r - 4.5)), abs=1e-9)
    # Beyond the end face, and beside the chamfer's cone: distances of plane geometry.
    points = skin.points(np.zeros(5), np.full(5, 5.0), rng.uniform(0, 7, 5)) - [0.3, 0, 0]
    assert skin.distance(points) == pytest.approx(0.3)
    on_cone = skin.points(np.full(5, 1.0), np.full(5, 6 - np.tan(np.radians(15)) + 0.1), rng.uniform(0, 7, 5))
    assert skin.distance(on_cone) == pytest.approx(0.1 * np.cos(np.radians(15)))


@pytest.mark.parametrize("outer, bore, radius, angle, volume", [
    (16, 12, 32, 90, 4421.5828), (14, 10, 28, 90, 3316.1871), (12, 8, 24, 45, 1184.3525), (12.7, 9.525, 25.4, 179.99999, 4422.4097),
])
def test_pappus(outer, bore, radius, angle, volume):
    a = np.radians(angle)
    tangent = radius * np.tan(a / 2)
    corner = np.array([tangent, 0, 0])
    line = polyline([ORIGIN, corner, corner + tangent * np.array([np.cos(a), np.sin(a), 0])], radius)
    run = {"tube": {"outer_diameter": outer, "bore": bore}}
    assert Skin(line, run).section.material_volume() == pytest.approx(volume, abs=3e-4)


def test_bounds_hold_the_skin_and_touch_it():
    rng = np.random.default_rng(4)
    for _ in range(6):
        points = np.cumsum(rng.normal(size=(5, 3)) * 60, axis=0)
        try:
            skin = Skin(polyline(points, 12), RUN)
        except Exception:
            continue
        low, high = skin.bounds()
        sample = skin.samples(60_000, rng)
        assert (sample.min(axis=0) >= low - 1e-9).all() and (sample.max(axis=0) <= high + 1e-9).all()
        assert (sample.min(axis=0) - low).max() < 0.05 and (high - sample.max(axis=0)).max() < 0.05
