//! The design's text: what is taken, what is refused, what comes back out, and how a design is changed as a whole.

mod canonical;
mod edit_difference;
mod edit_mirror;
mod edit_runs;
mod edit_support;
mod files;
mod looks;
mod patch;
mod presets;
mod properties;
mod refusals;
mod report;
