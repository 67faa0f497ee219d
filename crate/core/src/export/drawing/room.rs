//! What of the sheet is taken, so that words are put where there is room.

use super::view::Flat;

/// Width of a cell, mm.
const CELL: f64 = 1.0;

/// How much a cell that is off the sheet counts: more than anything on it.
const OFF: u32 = 400;

/// A stretch of paper: a box about its middle, turned.
#[derive(Debug, Clone, Copy)]
pub(super) struct Patch {
    pub middle: Flat,
    /// Half its length and half its height, mm.
    pub half: Flat,
    /// Unit direction of its length.
    pub way: Flat,
}

/// The sheet in cells, each with how much is drawn there.
#[derive(Debug)]
pub(super) struct Room {
    columns: usize,
    rows: usize,
    cells: Vec<u16>,
}

impl Patch {
    /// An upright box from its top left corner.
    pub fn upright([x, y]: Flat, [width, height]: Flat) -> Self {
        Self { middle: [x + width / 2.0, y + height / 2.0], half: [width / 2.0, height / 2.0], way: [1.0, 0.0] }
    }

    /// A line.
    pub fn line(from: Flat, to: Flat) -> Self {
        let [x, y] = [to[0] - from[0], to[1] - from[1]];
        let long = libm::hypot(x, y);
        let way = if long > 0.0 { [x / long, y / long] } else { [1.0, 0.0] };
        Self { middle: [(from[0] + to[0]) / 2.0, (from[1] + to[1]) / 2.0], half: [long / 2.0, 0.0], way }
    }

    /// Points all over it, at most `apart` from each other along and across.
    fn points(&self, apart: f64) -> impl Iterator<Item = Flat> + '_ {
        let steps = self.half.map(|half| (2.0 * half / apart).ceil() as usize);
        let part = |step: usize, steps: usize, half: f64| {
            if steps == 0 { 0.0 } else { half * (2.0 * step as f64 / steps as f64 - 1.0) }
        };
        (0..=steps[0]).flat_map(move |i| {
            (0..=steps[1]).map(move |j| {
                let (a, b) = (part(i, steps[0], self.half[0]), part(j, steps[1], self.half[1]));
                let [x, y] = self.way;
                [self.middle[0] + a * x - b * y, self.middle[1] + a * y + b * x]
            })
        })
    }
}

impl Room {
    /// An empty sheet.
    pub fn new([width, height]: Flat) -> Self {
        let (columns, rows) = ((width / CELL).ceil() as usize, (height / CELL).ceil() as usize);
        Self { columns, rows, cells: vec![0; columns * rows] }
    }

    /// How much is drawn on a patch, per square millimetre or, for a line, per millimetre, summed.
    pub fn taken(&self, patch: &Patch) -> f64 {
        let sum: u64 =
            patch.points(CELL).map(|point| u64::from(self.cell(point).map_or(OFF, |at| self.cells[at].into()))).sum();
        sum as f64 * 0.5
    }

    /// Takes a patch.
    pub fn take(&mut self, patch: &Patch, weight: u16) {
        let mut last = usize::MAX;
        for point in patch.points(0.7 * CELL) {
            if let Some(at) = self.cell(point)
                && at != last
            {
                self.cells[at] = self.cells[at].saturating_add(weight).min(200);
                last = at;
            }
        }
    }

    /// Takes a line through points.
    pub fn take_line(&mut self, points: &[Flat], weight: u16) {
        points.windows(2).for_each(|pair| self.take(&Patch::line(pair[0], pair[1]), weight));
    }

    fn cell(&self, [x, y]: Flat) -> Option<usize> {
        let (column, row) = ((x / CELL).floor(), (y / CELL).floor());
        let on = column >= 0.0 && row >= 0.0 && column < self.columns as f64 && row < self.rows as f64;
        on.then(|| row as usize * self.columns + column as usize)
    }
}
