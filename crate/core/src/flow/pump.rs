//! A pump by what pressure it keeps up at what flow.

use core::fmt;

/// Standard gravity, m/s2: ISO 80000-3.
const GRAVITY: f64 = 9.806_65;

/// A pump's curve. Flows l/h, pressures Pa.
#[derive(Debug, Clone, PartialEq)]
pub struct Pump {
    flows: Vec<f64>,
    heads: Vec<f64>,
    /// Slope at each point, Pa h/l.
    slopes: Vec<f64>,
}

/// Why points are no pump's curve. Flows l/h, pressures Pa.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum PumpFault {
    /// Fewer than two points, or more than a thousand.
    Points {
        /// How many there are.
        count: usize,
    },
    /// A flow or a pressure that is negative or no number.
    NotANumber {
        /// Place of the point in the list, from 0.
        point: usize,
    },
    /// A flow that is not above that of the point before.
    FlowNotAbove {
        /// Place of the point in the list, from 0.
        point: usize,
    },
    /// A pressure above that of the point before: where a curve rises, one loop may have two flows.
    Rises {
        /// Place of the point in the list, from 0.
        point: usize,
    },
    /// No pressure at all, or no open flow.
    Nothing,
}

impl fmt::Display for PumpFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Points { count } => write!(f, "a pump curve needs from 2 to 1000 points; this one has {count}"),
            Self::NotANumber { point } => {
                write!(
                    f,
                    "point {} of the pump curve has a flow or a pressure that is negative or no number",
                    point + 1
                )
            }
            Self::FlowNotAbove { point } => {
                write!(f, "the flow of point {} of the pump curve is not above that of the point before", point + 1)
            }
            Self::Rises { point } => {
                write!(f, "the pump curve rises to point {}; its pressure must fall as the flow grows", point + 1)
            }
            Self::Nothing => write!(f, "the pump keeps up no pressure or lets nothing through"),
        }
    }
}

impl std::error::Error for PumpFault {}

impl Pump {
    /// A curve through points `[flow, pressure]`, flows growing, pressures never growing. Between them it is the monotone
    /// cubic of Fritsch and Carlson (SIAM J. Numer. Anal. 17 (1980) 238) with the slopes of Fritsch and Butland (SIAM J. Sci.
    /// Stat. Comput. 5 (1984) 300), which neither swings over a point nor rises between two. Below the first flow the
    /// pressure stays the first point's; beyond the last there is no curve.
    ///
    /// # Errors
    /// [`PumpFault`] for anything else.
    pub fn of_points(points: &[[f64; 2]]) -> Result<Self, PumpFault> {
        if !(2..=1000).contains(&points.len()) {
            return Err(PumpFault::Points { count: points.len() });
        }
        for (point, [flow, head]) in points.iter().enumerate() {
            if !(0.0..=1e6).contains(flow) || !(0.0..=1e9).contains(head) {
                return Err(PumpFault::NotANumber { point });
            }
        }
        for (before, pair) in points.windows(2).enumerate() {
            if pair[1][0] - pair[0][0] < 1e-6 {
                return Err(PumpFault::FlowNotAbove { point: before + 1 });
            }
            if pair[1][1] > pair[0][1] {
                return Err(PumpFault::Rises { point: before + 1 });
            }
        }
        if points[0][1] == 0.0 {
            return Err(PumpFault::Nothing);
        }
        let (flows, heads) = points.iter().map(|[flow, head]| (*flow, *head)).unzip();
        let slopes = slopes(points);
        Ok(Self { flows, heads, slopes })
    }

    /// A curve from two numbers of a data sheet: the pressure at no flow, Pa, and the flow against no pressure, l/h. Between
    /// them it is the parabola that is level at no flow: common practice, no source.
    ///
    /// # Errors
    /// [`PumpFault::Nothing`] for a number that is not above zero.
    pub fn of_two_numbers(shut_off: f64, open_flow: f64) -> Result<Self, PumpFault> {
        let sound = |value: f64, most: f64| value.is_finite() && value >= 1e-6 && value <= most;
        if !sound(shut_off, 1e9) || !sound(open_flow, 1e6) {
            return Err(PumpFault::Nothing);
        }
        // A cubic by its ends' values and slopes is a parabola exactly where those are a parabola's.
        Ok(Self {
            flows: vec![0.0, open_flow],
            heads: vec![shut_off, 0.0],
            slopes: vec![0.0, -2.0 * shut_off / open_flow],
        })
    }

    /// A curve through points `[flow, head]`, l/h and metres of a coolant of a density, kg/m3. Two points, one at no flow and
    /// the other at no head, are a data sheet's two numbers.
    ///
    /// # Errors
    /// As [`Pump::of_points`].
    pub fn of_heads(points: &[[f64; 2]], density: f64) -> Result<Self, PumpFault> {
        let pressures: Vec<[f64; 2]> =
            points.iter().map(|[flow, head]| [*flow, head_in_pascals(*head, density)]).collect();
        match pressures[..] {
            [[0.0, shut_off], [open_flow, 0.0]] if shut_off > 0.0 && open_flow > 0.0 => {
                Self::of_two_numbers(shut_off, open_flow)
            }
            _ => Self::of_points(&pressures),
        }
    }

    /// The least and the most flow of the curve, l/h.
    pub fn range(&self) -> [f64; 2] {
        [self.flows[0], self.flows[self.flows.len() - 1]]
    }

    /// The pressure that it keeps up at a flow, Pa; none beyond the curve's last flow.
    pub fn head(&self, flow: f64) -> Option<f64> {
        let [first, last] = self.range();
        if flow.is_nan() || flow > last {
            return None;
        }
        if flow <= first {
            return Some(self.heads[0]);
        }
        let i = self.flows.partition_point(|at| *at < flow).clamp(1, self.flows.len() - 1);
        let width = self.flows[i] - self.flows[i - 1];
        let t = (flow - self.flows[i - 1]) / width;
        let (y0, y1) = (self.heads[i - 1], self.heads[i]);
        let (m0, m1) = (self.slopes[i - 1] * width, self.slopes[i] * width);
        // Hermite's cubic.
        let head = y0 + t * (m0 + t * (3.0 * (y1 - y0) - 2.0 * m0 - m1 + t * (2.0 * (y0 - y1) + m0 + m1)));
        Some(head.clamp(y1, y0))
    }
}

/// Slopes at the points that keep the cubics monotone: within, the weighted harmonic mean of the two sides'; at the ends,
/// the parabola's through three points, kept from rising and from more than thrice the side's.
fn slopes(points: &[[f64; 2]]) -> Vec<f64> {
    let sides: Vec<[f64; 2]> = points
        .windows(2)
        .map(|pair| {
            let width = pair[1][0] - pair[0][0];
            [width, (pair[1][1] - pair[0][1]) / width]
        })
        .collect();
    let end = |near: [f64; 2], far: [f64; 2]| {
        let slope = ((2.0 * near[0] + far[0]) * near[1] - near[0] * far[1]) / (near[0] + far[0]);
        slope.clamp(3.0 * near[1], 0.0)
    };
    let last = sides.len() - 1;
    if last == 0 {
        return vec![sides[0][1]; 2];
    }
    let within = sides.windows(2).map(|pair| {
        let [[w0, s0], [w1, s1]] = [pair[0], pair[1]];
        if s0 == 0.0 || s1 == 0.0 {
            return 0.0;
        }
        let (a, b) = (2.0 * w1 + w0, w1 + 2.0 * w0);
        (a + b) / (a / s0 + b / s1)
    });
    core::iter::once(end(sides[0], sides[1])).chain(within).chain([end(sides[last], sides[last - 1])]).collect()
}

/// Pressure, Pa, of a head of coolant, m, of a density, kg/m3.
pub fn head_in_pascals(head: f64, density: f64) -> f64 {
    head * density * GRAVITY
}

/// Head of coolant, m, of a density, kg/m3, that a pressure, Pa, is.
pub fn head_in_metres(pressure: f64, density: f64) -> f64 {
    pressure / (density * GRAVITY)
}
