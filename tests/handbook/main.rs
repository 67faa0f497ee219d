//! Published and worked values of the trade, each with its source, held against the engine's own calls.

mod bend_file;
mod bend_table;
mod corner_gain;
mod pappus;
mod s_offset;
mod scene;
mod thread;
