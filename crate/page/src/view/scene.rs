//! What there is to draw besides the tubes' skins, read from the engine's scene.

use serde::Deserialize;
use tubewright_core::layout::Vec3;

use super::camera::Ball;
use super::look::Look;

/// Largest coordinate or size that is drawn, mm: the design's own bound with room to spare.
const LARGEST: f64 = 1e7;

/// Everything that stands in the scene, mm.
#[derive(Debug, Clone, Default, PartialEq, Deserialize)]
#[serde(default)]
pub struct Scene {
    /// Threaded holes.
    pub ports: Vec<Port>,
    /// Solids of the fittings.
    pub collars: Vec<Collar>,
    /// Space to stay clear of.
    pub keep_outs: Vec<KeepOut>,
    /// Tubes.
    pub runs: Vec<Run>,
    /// How their material looks; none where nothing is said of it.
    pub look: Option<Look>,
}

/// A port with its fitting's mouth.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub struct Port {
    /// Its name.
    pub name: String,
    /// Centre of the hole on the seat face.
    pub seat: [f64; 3],
    /// Unit direction out of the part.
    pub facing: [f64; 3],
    /// Centre of the plane where the tube leaves.
    pub mouth: [f64; 3],
    /// Unit direction in which the tube leaves.
    pub out: [f64; 3],
}

/// A cylinder of a fitting's body.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub struct Collar {
    /// Name of the port it sits on.
    pub port: String,
    /// Centre of one end.
    pub from: [f64; 3],
    /// Centre of the other end.
    pub to: [f64; 3],
    /// Radius.
    pub radius: f64,
}

/// A keep-out: one of the two shapes.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub struct KeepOut {
    /// Its name.
    pub name: String,
    /// A box along the axes.
    #[serde(default, rename = "box")]
    pub cuboid: Option<Cuboid>,
    /// A cylinder.
    #[serde(default)]
    pub cylinder: Option<Cylinder>,
}

/// A box along the axes.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub struct Cuboid {
    /// Its lowest corner.
    pub min: [f64; 3],
    /// Its highest corner.
    pub max: [f64; 3],
}

/// A cylinder.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub struct Cylinder {
    /// Centre of one end.
    pub from: [f64; 3],
    /// Centre of the other end.
    pub to: [f64; 3],
    /// Radius.
    pub radius: f64,
}

/// A run, made or not.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub struct Run {
    /// Its name.
    pub name: String,
    /// False where no tube of this run can be made; its centreline is then only the route's skeleton.
    pub made: bool,
    /// Outer diameter.
    pub outer_diameter: f64,
    /// Bore.
    pub bore: f64,
    /// Arc lengths between which the skin has lobes.
    #[serde(default)]
    pub lobed: Option<[f64; 2]>,
    /// Points of the centreline, end to end.
    pub centreline: Vec<[f64; 3]>,
    /// Apexes of the route.
    #[serde(default)]
    pub corners: Vec<[f64; 3]>,
    /// Which station of the route each of those is.
    #[serde(default)]
    pub stations: Vec<usize>,
    /// What of it is no straight, in order.
    #[serde(default)]
    pub turns: Vec<Turn>,
}

/// A stretch of a centreline that is no straight.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub struct Turn {
    /// The first and the last station that it belongs to; none for a bend that joins what others ask for.
    pub stations: Option<[usize; 2]>,
    /// Points of the centreline, counted from zero, between which it is.
    pub points: [usize; 2],
    /// How it lies; none for a coil or a smooth curve.
    #[serde(default)]
    pub bend: Option<Bend>,
}

/// A circular bend: how it lies about the apex of its corner.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub struct Bend {
    /// Radius of its centreline, mm.
    pub radius: f64,
    /// Angle turned through, degrees.
    pub angle_deg: f64,
    /// The middle of its arc.
    pub middle: [f64; 3],
    /// Unit direction from there to its centre.
    pub inward: [f64; 3],
}

impl Scene {
    /// Reads a scene. The error says in plain words what is wrong with it.
    pub fn read(text: &str) -> Result<Self, String> {
        // A list would pass for an object with its members in order.
        if !text.trim_start().starts_with('{') {
            return Err("the scene cannot be read: it is no JSON object".to_string());
        }
        let scene: Self = serde_json::from_str(text).map_err(|fault| format!("the scene cannot be read: {fault}"))?;
        let bad = scene.numbers().find(|number| !number.is_finite() || number.abs() > LARGEST);
        match bad {
            Some(number) => Err(format!("the scene holds a number that cannot be drawn: {number}")),
            None => Ok(scene),
        }
    }

    /// Spheres that together hold everything drawn; empty for an empty scene.
    pub fn balls(&self) -> Vec<Ball> {
        let ball = |at: &[f64; 3], radius: f64| Ball { centre: Vec3::from(*at), radius };
        let mut balls = Vec::new();
        for port in &self.ports {
            balls.extend([ball(&port.seat, 0.0), ball(&port.mouth, 0.0)]);
        }
        for collar in &self.collars {
            balls.extend([ball(&collar.from, collar.radius), ball(&collar.to, collar.radius)]);
        }
        for keep_out in &self.keep_outs {
            if let Some(cuboid) = &keep_out.cuboid {
                balls.extend(cuboid.corners().iter().map(|corner| ball(corner, 0.0)));
            }
            if let Some(Cylinder { from, to, radius }) = &keep_out.cylinder {
                balls.extend([ball(from, *radius), ball(to, *radius)]);
            }
        }
        for run in &self.runs {
            balls.extend(run.centreline.iter().map(|point| ball(point, run.outer_diameter / 2.0)));
        }
        balls
    }

    /// The run of that name.
    pub fn run(&self, name: &str) -> Option<&Run> {
        self.runs.iter().find(|run| run.name == name)
    }

    fn numbers(&self) -> impl Iterator<Item = f64> + '_ {
        let ports = self.ports.iter().flat_map(|port| [port.seat, port.facing, port.mouth, port.out]);
        let collars = self.collars.iter().flat_map(|collar| [collar.from, collar.to, [collar.radius; 3]]);
        let boxes = self.keep_outs.iter().filter_map(|it| it.cuboid.as_ref()).flat_map(|it| [it.min, it.max]);
        let drums = self.keep_outs.iter().filter_map(|it| it.cylinder.as_ref());
        let drums = drums.flat_map(|it| [it.from, it.to, [it.radius; 3]]);
        let runs = self.runs.iter().flat_map(|run| {
            let sizes = std::iter::once([run.outer_diameter, run.bore, 0.0]);
            let bends = run.turns.iter().filter_map(|turn| turn.bend.as_ref());
            let bends = bends.flat_map(|it| [it.middle, it.inward, [it.radius, it.angle_deg, 0.0]]);
            run.centreline.iter().chain(&run.corners).copied().chain(sizes).chain(bends)
        });
        ports.chain(collars).chain(boxes).chain(drums).chain(runs).flatten()
    }
}

impl Cuboid {
    /// Its eight corners; bit 0 of the place says whether x is the larger, bit 1 y, bit 2 z.
    pub fn corners(&self) -> [[f64; 3]; 8] {
        std::array::from_fn(|place| {
            std::array::from_fn(|axis| if place >> axis & 1 == 1 { self.max[axis] } else { self.min[axis] })
        })
    }
}
