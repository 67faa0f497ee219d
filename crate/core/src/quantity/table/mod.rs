//! The rows of the table. A default without a stated source is common practice, no source.

use super::Quantity;

/// A table's rows, each under its own name and all of them in order.
macro_rules! rows {
    ($($(#[$doc:meta])* $name:ident = $row:expr;)*) => {
        $($(#[$doc])* pub static $name: Quantity = $row;)*
        /// Every row of this part.
        pub(super) static ROWS: &[&Quantity] = &[$(&$name),*];
    };
}

mod around;
mod fit;
mod joint;
mod making;
mod parts;
mod route;
mod runs;
mod service;
mod working;

pub use around::*;
pub use fit::*;
pub use joint::*;
pub use making::*;
pub use parts::*;
pub use route::*;
pub use runs::*;
pub use service::*;
pub use working::*;

/// Shortest and longest name, characters.
const NAME: (usize, usize) = (1, 200);

/// Most ports, fittings, keep-outs of a design.
pub const MOST_PORTS: usize = 1_000;
/// Most parts of the loop.
pub const MOST_PARTS: usize = 100;
/// Most points of a pump's curve.
pub const MOST_PUMP_POINTS: usize = 100;
/// Most readings of a kind of size.
pub const MOST_READINGS: usize = 100;
/// Most runs of a design.
pub const MOST_RUNS: usize = 200;
/// Most cuts of a run.
pub const MOST_CUTS: usize = 20;
/// Most stations of a run.
pub const MOST_STATIONS: usize = 2_000;
/// Most tube of a design, mm: 100 m.
pub const MOST_TUBE: f64 = 100_000.0;
/// Furthest coordinate from the datum, mm.
pub const FURTHEST: f64 = 1e6;
/// Shortest length that `facing` may be typed with; below it no direction is left in it.
pub const LEAST_FACING: f64 = 1e-9;

/// Finest deviation of a mesh from the exact skin, mm.
pub const LEAST_DEVIATION: f64 = 0.001;
/// Coarsest deviation of a mesh from the exact skin, mm.
pub const MOST_DEVIATION: f64 = 1.0;
/// Deviation where none is asked for, mm.
pub const USUAL_DEVIATION: f64 = 0.01;

/// Every row, about in the order of the document.
pub fn quantities() -> impl Iterator<Item = &'static Quantity> {
    [
        parts::ROWS,
        runs::ROWS,
        route::ROWS,
        around::ROWS,
        making::ROWS,
        joint::ROWS,
        service::ROWS,
        fit::ROWS,
        working::ROWS,
    ]
    .into_iter()
    .flatten()
    .copied()
}
