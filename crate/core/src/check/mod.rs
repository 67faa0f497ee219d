//! The questions a builder asks of a design: one file a question, each a pure function to findings.

mod finding;
pub mod words;

pub use finding::*;

use crate::centreline::RunLine;
use crate::design::Design;
use crate::layout::Layout;

/// What a check may look at: every stage before it.
#[derive(Debug, Clone, Copy)]
pub struct Subject<'a> {
    /// What the builder stated.
    pub design: &'a Design,
    /// Ports and runs, placed.
    pub layout: &'a Layout,
    /// The runs' centrelines.
    pub lines: &'a [RunLine],
}

/// A check: a question answered.
pub type Check = fn(Subject<'_>) -> Vec<Finding>;

/// All checks, in the order their findings are told.
pub const CHECKS: &[Check] = &[];

/// Every finding about a design; none stops at the first.
pub fn findings(subject: Subject<'_>) -> Vec<Finding> {
    CHECKS.iter().flat_map(|check| check(subject)).collect()
}
