//! Numbers that are told: the loop, the bleed, where each comes from, variants, graphs and plots.

mod bleed_profiles;
#[path = "../check_support/mod.rs"]
mod check_support;
mod flow_loop;
mod flow_properties;
mod graphs;
mod origins;
mod plots;
mod plots_support;
mod plots_words;
#[path = "../shapes_support/mod.rs"]
mod shapes_support;
mod variants;
