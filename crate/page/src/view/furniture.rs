//! What the tubes stand among: fittings with their collars, port faces, keep-outs, and the lines that draw them.

use tubewright_core::layout::Vec3;

use super::lathe::Body;
use super::scene::{Collar, KeepOut, Port, Run, Scene};
use super::stroke::{End, Ink, Strokes, Style, square_to};

/// The bodies and lines of everything but the tubes.
#[derive(Debug, Clone, Default)]
pub struct Furniture {
    /// Fittings.
    pub fittings: Body,
    /// Faces that the fittings seat on.
    pub seats: Body,
    /// Keep-outs.
    pub keep_outs: Body,
    /// Lines always drawn.
    pub lines: Strokes,
    /// Lines of the section through the fittings.
    pub opened: Strokes,
}

impl Furniture {
    /// Builds what stands in a scene.
    pub fn of(scene: &Scene) -> Self {
        let mut furniture = Self::default();
        for collar in &scene.collars {
            let turns_on = turning_points(scene).any(|(at, _)| at == collar.to);
            let after_turn = turning_points(scene).any(|(at, _)| at == collar.from);
            let tube = scene.ports.iter().find(|port| port.name == collar.port).and_then(|port| tube_in(scene, port));
            let hole = tube.map_or(0.0, |run| 0.5 * run.outer_diameter).min(0.9 * collar.radius);
            furniture.fitting(collar, turns_on, after_turn, hole);
        }
        for port in &scene.ports {
            let widest = scene.collars.iter().filter(|collar| collar.port == port.name).map(|collar| collar.radius);
            furniture.port(port, widest.fold(0.0, f64::max), tube_in(scene, port));
        }
        scene.keep_outs.iter().for_each(|keep_out| furniture.keep_out(keep_out));
        furniture
    }

    /// A plain turned body as wide as the collar, for that is the space checked, with two grooves below its mouth that
    /// make it read as a ring to be turned by hand. `hole` is the radius of the tube in it, zero for none.
    fn fitting(&mut self, collar: &Collar, turns_on: bool, after_turn: bool, hole: f64) {
        let (from, to, radius) = (Vec3::from(collar.from), Vec3::from(collar.to), collar.radius);
        let Some(axis) = (to - from).try_normalize(1e-6) else { return };
        let height = (to - from).norm();
        let bevel = (0.08 * radius).min(0.2 * height);
        // An elbow's two bodies are open where they meet in a ball: a wall there would show in a section.
        let mut profile = if after_turn { vec![[0.0, radius]] } else { vec![[0.0, 0.0], [0.0, radius]] };
        if turns_on {
            self.fittings.ball(&to, radius);
            profile.push([height, radius]);
        } else {
            profile.extend([[height - bevel, radius], [height, radius - bevel], [height, hole]]);
        }
        self.fittings.turn(&from, &axis, &profile, true);
        let at = |up: f64| from + axis * up;
        let (rim, edge) = (Style::new(Ink::Outline, 1.2).sunk(), Style::new(Ink::Edge, 1.0).sunk());
        if !after_turn {
            self.lines.circle(rim.lifted(1.0), &from, &axis, radius, true);
        }
        if !turns_on {
            self.lines.circle(rim, &to, &axis, radius - bevel, true);
            self.lines.circle(edge, &at(height - bevel), &axis, radius, true);
            for share in [0.32, 0.42] {
                self.lines.circle(edge, &at(height * (1.0 - share)), &axis, radius, true);
            }
        }
        let flank = Style::new(Ink::Outline, 1.2).lifted(1.0);
        let flank = if turns_on || after_turn { flank.sunk() } else { flank };
        let (mut low, high) = (from, at(height - if turns_on { 0.0 } else { bevel }));
        if !after_turn {
            // Near the seat the line keeps close to the body, lest it show through the thin face under it.
            low = at(0.2 * height);
            self.lines.flanks(flank.level(), &from, &low, radius);
        }
        self.lines.flanks(flank, &low, &high, radius);
        let across = Style::new(Ink::Outline, 1.0).level();
        let ends = [(from, radius, 0.0, !after_turn), (to, radius - bevel, hole, !turns_on)];
        for (end, outer, inner, _) in ends.into_iter().filter(|(.., there)| *there) {
            for sign in [-1.0, 1.0] {
                let flank = |sideways: f64| End::flank(&end, &axis, sign * sideways);
                self.opened.line(across, flank(outer), flank(inner.max(1e-6)));
            }
        }
    }

    /// The face round a port; the mouth's edge round the tube in it, or, where there is none, an arrow out of the mouth.
    fn port(&mut self, port: &Port, collar: f64, tube: Option<&Run>) {
        let (seat, mouth) = (Vec3::from(port.seat), Vec3::from(port.mouth));
        let Some(facing) = Vec3::from(port.facing).try_normalize(1e-6) else { return };
        let radius = if collar > 0.0 { 1.3 * collar } else { 8.0 };
        let thick = 0.12 * radius;
        // A hair below the seat, for the fitting's own face lies in it.
        let top = -0.01 * radius;
        let profile = [[-thick, 0.0], [-thick, radius], [top, radius], [top, 0.0]];
        self.seats.turn(&seat, &facing, &profile, false);
        let edge = Style::new(Ink::Outline, 1.2).lifted(1.0);
        for depth in [top, -thick] {
            self.lines.circle(edge, &(seat + facing * depth), &facing, radius, false);
        }
        self.lines.flanks(edge.level(), &(seat - facing * thick), &(seat + facing * top), radius);
        let Some(out) = Vec3::from(port.out).try_normalize(1e-6) else { return };
        match tube {
            Some(run) if collar > 0.0 => {
                let style = Style::new(Ink::Outline, 1.2).sunk();
                self.lines.circle(style, &mouth, &out, 0.5 * run.outer_diameter, true);
            }
            Some(_) => {}
            None => self.arrow(&(mouth + out * (0.15 * radius)), &out, 1.2 * radius),
        }
    }

    fn arrow(&mut self, from: &Vec3, way: &Vec3, length: f64) {
        let style = Style::new(Ink::Axis, 2.0);
        let tip = from + way * length;
        self.lines.line(style, End::at(from), End::at(&tip));
        let (across, up) = square_to(way);
        for side in [across, -across, up, -up] {
            self.lines.line(style, End::at(&tip), End::at(&(tip - way * (0.3 * length) + side * (0.14 * length))));
        }
    }

    fn keep_out(&mut self, keep_out: &KeepOut) {
        let edge = Style::new(Ink::KeepOut, 1.2);
        if let Some(cuboid) = &keep_out.cuboid {
            let corners = cuboid.corners();
            self.keep_outs.cuboid(&corners);
            let end = |place: usize| End::at(&Vec3::from(corners[place]));
            for place in 0..8usize {
                for axis in (0..3).filter(|axis| place >> axis & 1 == 0) {
                    self.lines.line(edge, end(place), end(place | 1 << axis));
                }
            }
        }
        if let Some(drum) = &keep_out.cylinder {
            let (from, to) = (Vec3::from(drum.from), Vec3::from(drum.to));
            let Some(axis) = (to - from).try_normalize(1e-6) else { return };
            let height = (to - from).norm();
            let profile = [[0.0, 0.0], [0.0, drum.radius], [height, drum.radius], [height, 0.0]];
            self.keep_outs.turn(&from, &axis, &profile, false);
            for end in [&from, &to] {
                self.lines.circle(edge, end, &axis, drum.radius, false);
            }
            self.lines.flanks(edge, &from, &to, drum.radius);
        }
    }
}

/// Circles that outline the balls in which elbows turn, for one direction of sight.
pub fn elbows(strokes: &mut Strokes, scene: &Scene, section: bool, sight: &Vec3, scale: f64) {
    for (at, radius) in turning_points(scene) {
        let lift = if section { -2.0 * radius * scale } else { 1.0 + (1.2 * radius * scale).sqrt() };
        let style = Style::new(Ink::Outline, 1.2).lifted(lift as f32);
        strokes.circle(style, &Vec3::from(at), sight, radius, false);
    }
}

/// Where one body of a fitting ends and the next begins, and how wide they are.
fn turning_points(scene: &Scene) -> impl Iterator<Item = ([f64; 3], f64)> + '_ {
    let joined = |pair: &&[Collar]| pair[0].port == pair[1].port && pair[0].to == pair[1].from;
    scene.collars.windows(2).filter(joined).map(|pair| (pair[0].to, pair[0].radius))
}

/// The run that ends in the port's mouth.
fn tube_in<'a>(scene: &'a Scene, port: &Port) -> Option<&'a Run> {
    let (mouth, seat) = (Vec3::from(port.mouth), Vec3::from(port.seat));
    let reach = (mouth - seat).norm() + 1.0;
    scene.runs.iter().find(|run| {
        let ends = run.centreline.first().into_iter().chain(run.centreline.last());
        ends.map(|end| Vec3::from(*end) - mouth)
            .any(|arm| arm.norm() <= reach && arm.cross(&Vec3::from(port.out)).norm() < 0.5)
    })
}
