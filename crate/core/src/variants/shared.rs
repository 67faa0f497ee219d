//! Answers that variants have in common, each reckoned for the first of them that needs it.

use std::collections::BTreeMap;

use crate::check::HangsOn;

/// Which of the values asked for a variant has: the places of its outer diameter, bore and material in their lists.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Place {
    pub outer_diameter: usize,
    pub bore: usize,
    pub material: usize,
}

/// One question's answers of one table, by what they hang on.
#[derive(Debug)]
pub(super) struct Shared<T> {
    on: HangsOn,
    known: BTreeMap<[usize; 3], T>,
}

impl<T: Clone> Shared<T> {
    /// Nothing is known yet.
    pub fn on(on: HangsOn) -> Self {
        Self { on, known: BTreeMap::new() }
    }

    /// The answer for a variant: what is known of one that is the same in all that it hangs on, or else `reckon`ed.
    pub fn of(&mut self, place: Place, reckon: impl FnOnce() -> T) -> T {
        if self.on == HangsOn::ALL {
            // No two variants are the same, so nothing would be met again.
            return reckon();
        }
        let part = |hangs: bool, place: usize| if hangs { place } else { 0 };
        let key = [
            part(self.on.outer_diameters, place.outer_diameter),
            part(self.on.bores, place.bore),
            part(self.on.material, place.material),
        ];
        self.known.entry(key).or_insert_with(reckon).clone()
    }
}
