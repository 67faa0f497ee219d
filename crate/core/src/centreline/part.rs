//! A part of a centreline, as a centreline of its own.

use super::{Centreline, Curve, Piece, Shape};

impl Centreline {
    /// What lies between two arc lengths, mm, `from` below `to`; arc lengths on it count from `from`. The very same points.
    pub fn part(&self, [from, to]: [f64; 2]) -> Self {
        let cut = self.pieces.iter().filter_map(|piece| piece.part([from, to]));
        Self { pieces: cut.collect(), length: to - from }
    }
}

impl Piece {
    /// What of it lies between two arc lengths of its centreline.
    fn part(&self, [from, to]: [f64; 2]) -> Option<Self> {
        let [first, last] = [(from - self.from).max(0.0), (to - self.from).min(self.length)];
        if last <= first {
            return None;
        }
        let whole = first == 0.0 && last == self.length;
        let start = self.at(first);
        let shape = match &self.shape {
            _ if whole => self.shape.clone(),
            Shape::Straight => Shape::Straight,
            Shape::Arc { radius, station, .. } => Shape::Arc {
                radius: *radius,
                angle: (last - first) / radius,
                normal: start.curvature * *radius,
                station: *station,
            },
            Shape::Curve(curve) => {
                let span = [first, last].map(|s| curve.parameter(s, self.length));
                Shape::Curve(Curve::of(curve.form, span, curve.station, curve.whole))
            }
        };
        let (start, direction) = if whole { (self.start, self.direction) } else { (start.point, start.tangent) };
        Some(Self { from: (self.from - from).max(0.0), length: last - first, start, direction, shape })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::layout::Vec3;

    #[test]
    fn a_part_runs_through_the_same_points() {
        let (x, y, z) = (Vec3::x(), Vec3::y(), Vec3::z());
        let arc = Shape::Arc { radius: 20.0, angle: 1.5, normal: y, station: None };
        let bend = Piece { from: 30.0, length: 30.0, start: x * 30.0, direction: x, shape: arc };
        let end = bend.at(30.0);
        let cubic = Form::Cubic([end.point, end.tangent * 25.0, z * 9.0, z * 3.0]);
        let curve = Curve::of(cubic, [0.0, 1.0], 0, 0);
        let last = Piece {
            from: 60.0,
            length: curve.length(),
            start: end.point,
            direction: end.tangent,
            shape: Shape::Curve(curve),
        };
        let straight = Piece { from: 0.0, length: 30.0, start: Vec3::zeros(), direction: x, shape: Shape::Straight };
        let line = Centreline { length: last.to(), pieces: vec![straight, bend, last] };
        for [from, to] in
            [[0.0, line.length], [10.0, 20.0], [10.0, 45.0], [35.0, 50.0], [41.0, 71.0], [63.0, line.length]]
        {
            let part = line.part([from, to]);
            assert!((part.pieces.iter().map(|piece| piece.length).sum::<f64>() - (to - from)).abs() < 1e-12);
            for step in 0..=40 {
                let s = from + (to - from) * f64::from(step) / 40.0;
                let (here, there) = (part.at(s - from), line.at(s));
                assert!((here.point - there.point).norm() < 1e-11, "{from} {to} {s}");
                assert!(
                    (here.tangent - there.tangent).norm() < 1e-11 && (here.curvature - there.curvature).norm() < 1e-9
                );
            }
        }
    }

    use super::super::curve::Form;
}
