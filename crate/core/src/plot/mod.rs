//! Plots as SVG text: pressure loss against flow, margins at a glance, temperature against stiffness limit.
//!
//! Plain data in, one self-contained picture out; nothing of the design is known here. Every picture is drawn in
//! `currentColor` and told apart by dashes, hatches, shapes and words, so that it reads in light, in dark and in black on
//! paper, and carries its numbers as a text alternative. Charts, axes and coordinates are the crate `plotters`'s; what it
//! draws is written by our own backend, which measures words by a rule of ours and never asks a browser.
//!
//! Invariant: presentation attributes only, no `style`, no script, no colour, nothing from outside.

mod backend;
mod chart;
mod fault;
mod figures;
mod frame;
mod ink;
mod key;
mod letters;
mod loss;
mod margins;
mod sheet;
mod stiffness;
mod ticks;
mod words;

pub use fault::PlotError;
pub use frame::Frame;
pub(crate) use letters::escape_into;
pub use loss::{LoopCurve, LossPlot, OperatingPoint, PumpCurve};
pub use margins::{MarginRow, MarginsPlot};
pub use stiffness::{Mark, MarkKind, MaterialRow, StiffnessPlot, Temperature};
pub(crate) use words::all as templates;
