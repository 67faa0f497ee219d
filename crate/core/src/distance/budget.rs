//! A bound on work that is the same on every machine: a count, not a clock.

/// How many pairs may still be looked at.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Budget {
    left: u64,
}

impl Budget {
    /// So many pairs, about 0.3 microseconds each.
    pub fn of(pairs: u64) -> Self {
        Self { left: pairs }
    }

    /// Takes `pairs` off; false once there are none left, and from then on.
    pub fn spend(&mut self, pairs: u64) -> bool {
        if self.left < pairs {
            self.left = 0;
            return false;
        }
        self.left -= pairs;
        self.left > 0
    }

    /// Whether it ran out.
    pub fn is_spent(&self) -> bool {
        self.left == 0
    }
}
