//! One step of work: announced in a line, timed when done, counted when it is part of a longer list.

use anyhow::Result;
use std::time::{Duration, Instant};

/// Says what is about to happen, does it, and says how long it took.
pub fn step<T>(name: &str, what: &str, work: impl FnOnce() -> Result<T>) -> Result<T> {
    println!("> {name}: {what}");
    let start = Instant::now();
    let outcome = work();
    let took = seconds(start.elapsed());
    match outcome {
        Ok(value) => {
            println!("  {name}: done in {took}");
            Ok(value)
        }
        Err(fault) => {
            println!("  {name}: FAILED after {took}");
            Err(fault.context(format!("step `{name}` failed")))
        }
    }
}

/// A remark about a running step.
pub fn remark(words: impl AsRef<str>) {
    println!("  {}", words.as_ref());
}

/// A duration in words.
pub fn seconds(time: Duration) -> String {
    format!("{:.1} s", time.as_secs_f64())
}

/// Runs steps to the end, whatever fails, and then says which did.
#[derive(Default)]
pub struct Tally {
    passed: Vec<String>,
    failed: Vec<(String, String)>,
}

impl Tally {
    /// Runs one step and remembers how it ended; true when it passed.
    pub fn step(&mut self, name: &str, what: &str, work: impl FnOnce() -> Result<()>) -> bool {
        match step(name, what, work) {
            Ok(()) => {
                self.passed.push(name.to_string());
                true
            }
            Err(fault) => {
                let words = format!("{fault:#}");
                println!("  {words}");
                self.failed.push((name.to_string(), words));
                false
            }
        }
    }

    /// A step that could not be tried because one that it needs failed.
    pub fn skip(&mut self, name: &str, why: &str) {
        println!("> {name}: not run, {why}");
        self.failed.push((name.to_string(), format!("not run, {why}")));
    }

    /// Lists what failed, closes with the count, and is an error when anything failed.
    pub fn close(self) -> Result<()> {
        println!();
        for (name, words) in &self.failed {
            println!("FAILED {name}: {words}");
        }
        println!("{} passed, {} failed", self.passed.len(), self.failed.len());
        match self.failed.len() {
            0 => Ok(()),
            _ => Err(crate::Told.into()),
        }
    }
}
