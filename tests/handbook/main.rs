//! Published and worked values of the trade, each with its source, held against the engine's own calls.

mod area_changes;
mod bend_file;
mod bend_table;
mod bends;
mod coils;
mod corner_gain;
mod friction;
mod heat;
mod leak;
mod loop_numbers;
mod o_rings;
mod pappus;
mod s_offset;
mod scene;
mod stress;
mod thread;
mod water;
mod whole_set;
