//! A design being written down: tubes, fittings, ports and runs as JSON.

use super::Chance;
use crate::layout::Vec3;
use serde_json::{Value, json};

/// A tube, its fitting and its finish.
#[derive(Debug, Clone)]
pub struct Stock {
    pub outer: f64,
    pub bore: f64,
    /// The run's bend radius, mm.
    pub bend: f64,
    pub height: f64,
    pub socket: f64,
    pub lead: f64,
    pub elbow: Option<Value>,
    pub trim: f64,
    pub chamfer_deg: f64,
    pub chamfer_length: f64,
    pub edge_break: f64,
    /// Whether the mouths are marked.
    pub seat_mark: bool,
    /// Whether bends share the room.
    pub fit_bends: bool,
    /// The body between the leads, and the most of its outer diameters, mm.
    pub dress: Option<(Value, f64)>,
}

impl Stock {
    /// A tube of a usual size.
    pub fn usual(chance: &mut Chance) -> Self {
        let outer = chance.pick(&[6.0, 8.0, 10.0, 12.0, 12.7, 14.0, 16.0]);
        let bore = outer - 2.0 * chance.from(1.0, 0.35 * outer);
        let times = chance.from(0.8, 3.0);
        Self::of(chance, outer, bore, times * outer)
    }

    /// A tube of this size with a finish that leaves wall at its tip.
    pub fn of(chance: &mut Chance, outer: f64, bore: f64, bend: f64) -> Self {
        let wall = (outer - bore) / 2.0;
        let slope = libm::tan(15f64.to_radians());
        Self {
            outer,
            bore,
            bend,
            height: chance.from(12.0, 25.0),
            socket: chance.from(6.0, 11.0),
            lead: chance.pick(&[0.0, 2.0, 5.0, 8.0]),
            elbow: None,
            trim: 0.0,
            chamfer_deg: 15.0,
            chamfer_length: (0.5 * wall / slope).min(2.0),
            edge_break: (0.2 * wall).min(0.2),
            seat_mark: false,
            fit_bends: false,
            dress: None,
        }
    }

    /// Tube from its end to where the first bend may start, mm.
    pub fn straight(&self) -> f64 {
        self.socket + self.trim + self.lead
    }

    fn fitting(&self, name: &str) -> Value {
        json!({ "name": name, "tube_diameter": self.outer, "height": self.height, "socket_depth": self.socket,
            "collar_diameter": self.outer + 7.0, "lead": self.lead, "elbow": self.elbow })
    }
}

/// A design being written down.
#[derive(Debug, Clone, Default)]
pub struct Sheet {
    fittings: Vec<Value>,
    ports: Vec<Value>,
    runs: Vec<Value>,
    keep_outs: Vec<Value>,
    clearance: f64,
    /// Length of each run's centreline in closed form, mm, where it is known.
    pub lengths: Vec<Option<f64>>,
    /// Largest outer radius, mm.
    radius: f64,
    /// Finest deviation that coordinates of this size can hold, mm.
    pub finest: f64,
    /// Angle turned in all, radians, and largest bend radius.
    turned: f64,
    bend: f64,
}

impl Sheet {
    /// A design of one run through `corners` between two fittings of `stock`, whose tube ends stand at `ends` and leave
    /// them along their directions.
    pub fn single(stock: &Stock, ends: [(Vec3, Vec3); 2], corners: &[(Vec3, Option<f64>)]) -> Self {
        Self::routed(stock, ends, corners_of(corners))
    }

    /// As [`Sheet::single`], along stations of any kind.
    pub fn routed(stock: &Stock, ends: [(Vec3, Vec3); 2], route: Vec<Value>) -> Self {
        let mut sheet = Self::default();
        sheet.fitting(stock, "F");
        for (name, (end, out)) in ["A", "B"].iter().zip(&ends) {
            sheet.port(name, &seat(stock, end, out), out, "F");
        }
        sheet.run("run", ["A", "B"], stock, route, None);
        sheet
    }

    pub fn fitting(&mut self, stock: &Stock, name: &str) {
        self.fittings.push(stock.fitting(name));
    }

    /// A port; its facing is written at any length above zero.
    pub fn port(&mut self, name: &str, seat: &Vec3, facing: &Vec3, fitting: &str) {
        self.ports.push(json!({ "name": name, "at": [seat.x, seat.y, seat.z],
            "facing": [facing.x, facing.y, facing.z], "fitting": fitting }));
    }

    pub fn run(&mut self, name: &str, ports: [&str; 2], stock: &Stock, route: Vec<Value>, length: Option<f64>) {
        let mut run = json!({ "name": name, "from": ports[0], "to": ports[1],
            "tube": { "outer_diameter": stock.outer, "bore": stock.bore }, "bend_radius": stock.bend, "route": route,
            "ends": { "chamfer_deg": stock.chamfer_deg, "chamfer_length": stock.chamfer_length,
                "edge_break": stock.edge_break, "trim": stock.trim, "seat_mark": stock.seat_mark } });
        if stock.fit_bends {
            run["fit_bends"] = true.into();
        }
        let mut widest = stock.outer;
        if let Some((dress, diameter)) = &stock.dress {
            run["dress"] = dress.clone();
            widest = widest.max(*diameter);
        }
        self.runs.push(run);
        self.lengths.push(length);
        self.radius = self.radius.max(widest / 2.0);
        self.turns(6.0, stock.bend);
    }

    pub fn keep_out(&mut self, shape: Value) {
        let mut keep_out = shape;
        keep_out["name"] = format!("keep-out {}", self.keep_outs.len() + 1).into();
        self.keep_outs.push(keep_out);
    }

    pub fn clearance(&mut self, clearance: f64) {
        self.clearance = clearance;
    }

    /// Says how much the tubes turn, and at what radius at most, so that a mesh of them stays small.
    pub fn turns(&mut self, angle: f64, bend: f64) {
        self.turned += angle;
        self.bend = self.bend.max(bend);
    }

    /// The document.
    pub fn text(&self, name: &str) -> String {
        json!({ "format": "tubewright-design", "version": 1, "name": name, "fittings": self.fittings,
            "ports": self.ports, "runs": self.runs, "keep_outs": self.keep_outs, "clearance": self.clearance })
        .to_string()
    }

    /// A deviation, mm, as fine as a mesh of some ten thousand triangles allows.
    pub fn suitable_deviation(&self, chance: &mut Chance) -> f64 {
        let asked: f64 = chance.pick(&[0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.3]);
        let triangles = |deviation: f64| {
            let around = 3.2 * (self.radius / (2.0 * deviation)).sqrt() + 16.0;
            let along = self.turned * ((self.bend + self.radius) / (8.0 * deviation)).sqrt();
            4.0 * around * (along + 2.0 * self.turned + 8.0)
        };
        let mut deviation = asked.max(self.finest);
        while triangles(deviation) > 40_000.0 && deviation < 0.5 {
            deviation *= 2.0;
        }
        deviation
    }
}

/// Where a straight fitting seats, for the tube's end to stand at `end` and leave along `out`.
pub fn seat(stock: &Stock, end: &Vec3, out: &Vec3) -> Vec3 {
    end - out * (stock.height - stock.socket - stock.trim)
}

/// Corner stations.
pub fn corners_of(corners: &[(Vec3, Option<f64>)]) -> Vec<Value> {
    corners.iter().map(|(at, radius)| corner(json!([at.x, at.y, at.z]), *radius)).collect()
}

/// A corner station.
pub fn corner(at: Value, radius: Option<f64>) -> Value {
    match radius {
        Some(radius) => json!({ "corner": at, "bend_radius": radius }),
        None => json!({ "corner": at }),
    }
}
