//! Any text through every call.
#![no_main]

#[path = "../every_call.rs"]
mod every_call;

libfuzzer_sys::fuzz_target!(|text: &str| every_call::every_call(text));
