//! Any text through the calls that only read it: many more a second.
#![no_main]

#[path = "../every_call.rs"]
#[allow(dead_code)]
mod every_call;

libfuzzer_sys::fuzz_target!(|text: &str| every_call::document_calls(text));
