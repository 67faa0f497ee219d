//! Designs made up for the danger zone, as they are and spoiled, through every call: the fuzzer picks kind and seed.
#![no_main]

#[path = "../every_call.rs"]
mod every_call;

use tubewright_core::strategies::{Chance, KINDS, one, spoiled};

libfuzzer_sys::fuzz_target!(|picked: (u8, u64, bool)| {
    let (kind, seed, as_it_is) = picked;
    let kind = KINDS[usize::from(kind) % KINDS.len()].name;
    let design = one(kind, seed).expect("a kind of the list");
    if as_it_is {
        every_call::every_call(&design.text);
    } else {
        every_call::every_call(&spoiled(&design.text, &mut Chance::of(seed)));
    }
});
