//! Places along a run: closed intervals of arc length, in order and apart.

/// Far below what a joint could tell, mm: a place told to a thousandth of a millimetre is still in its interval.
const ROUNDING: f64 = 1e-9;

/// Intervals, mm, ascending; empty ones are left out.
#[derive(Debug, Clone, PartialEq, Default)]
pub(super) struct Places(pub Vec<[f64; 2]>);

impl Places {
    /// What lies in both.
    pub fn and(&self, other: &Self) -> Self {
        let mut both = Vec::new();
        let (mut i, mut j) = (0, 0);
        while let (Some(a), Some(b)) = (self.0.get(i), other.0.get(j)) {
            let [from, to] = [a[0].max(b[0]), a[1].min(b[1])];
            if from <= to {
                both.push([from, to]);
            }
            if a[1] < b[1] { i += 1 } else { j += 1 }
        }
        Self(both)
    }

    /// Without an open interval.
    pub fn without(&self, [from, to]: [f64; 2]) -> Self {
        let left = self.0.iter().flat_map(|&[a, b]| [[a, b.min(from)], [a.max(to), b]]);
        Self(left.filter(|[a, b]| a <= b).collect::<Vec<_>>()).tidied()
    }

    /// From a place on.
    pub fn from(&self, least: f64) -> Self {
        Self(self.0.iter().filter(|[_, to]| *to >= least).map(|[from, to]| [from.max(least), *to]).collect())
    }

    /// Whether a place lies in one, or beside it by no more than rounding does.
    pub fn holds(&self, at: f64) -> bool {
        self.0.iter().any(|[from, to]| (from - ROUNDING..=to + ROUNDING).contains(&at))
    }

    /// The place that is nearest to another.
    pub fn nearest(&self, at: f64) -> Option<f64> {
        let near = self.0.iter().map(|[from, to]| at.clamp(*from, *to));
        near.min_by(|a, b| (a - at).abs().total_cmp(&(b - at).abs()))
    }

    /// In order, those that overlap as one.
    pub fn tidied(mut self) -> Self {
        self.0.sort_by(|a, b| a[0].total_cmp(&b[0]));
        let mut merged: Vec<[f64; 2]> = Vec::new();
        for [from, to] in self.0 {
            match merged.last_mut() {
                Some(last) if from <= last[1] => last[1] = last[1].max(to),
                _ => merged.push([from, to]),
            }
        }
        Self(merged)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn intervals_are_cut_and_joined() {
        let a = Places(vec![[0.0, 10.0], [20.0, 30.0]]);
        assert_eq!(a.and(&Places(vec![[5.0, 25.0], [28.0, 40.0]])).0, [[5.0, 10.0], [20.0, 25.0], [28.0, 30.0]]);
        assert_eq!(a.without([4.0, 22.0]).0, [[0.0, 4.0], [22.0, 30.0]]);
        assert_eq!(a.without([12.0, 14.0]).0, a.0);
        assert_eq!(a.from(9.0).0, [[9.0, 10.0], [20.0, 30.0]]);
        assert_eq!((a.nearest(14.0), a.nearest(17.0), a.nearest(3.0)), (Some(10.0), Some(20.0), Some(3.0)));
        assert!(a.holds(10.0) && !a.holds(10.1) && Places::default().nearest(1.0).is_none());
        assert_eq!(Places(vec![[20.0, 30.0], [0.0, 21.0]]).tidied().0, [[0.0, 30.0]]);
    }
}
