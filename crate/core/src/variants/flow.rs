//! What a variant costs the pump: nothing of it hangs on the outer diameters.

use crate::design::Design;
use crate::flow::Course;
use crate::service::{Circuit, Flow};

/// A variant's losses, and where the pump and the loop agree.
#[derive(Debug, Clone)]
pub(super) struct Driven {
    /// Each run's nominal loss at the stated flow, kPa; none where it cannot be told.
    pub losses: Vec<Option<f64>>,
    /// Where the pump and the whole loop agree, L/h.
    pub operating: Option<f64>,
}

impl Driven {
    /// Of a design whose runs' centrelines have those courses, none where there is no centreline.
    pub fn of(design: &Design, courses: &[Option<Course>]) -> Self {
        let loss = |run, course| Some(Flow::of(design, run, course).ok()??.loss.total.nominal * 1e-3);
        let runs = design.runs.iter().zip(courses);
        let losses = runs.map(|(run, course)| loss(run, course.as_ref()?)).collect();
        let met = Circuit::along(design, courses).ok().flatten().and_then(|circuit| circuit.met().ok());
        Self { losses, operating: met.map(|point| point.flow) }
    }
}
