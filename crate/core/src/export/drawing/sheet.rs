//! Sizes of paper, what fits where on it, and how a larger sheet is cut into A4 tiles.

use super::room::Patch;
use super::view::Flat;

/// The A4 sheet, mm. Source: ISO 216.
const A4: Flat = [210.0, 297.0];
/// The sheets tried first, smallest first.
const FORMATS: [(&str, Flat); 4] = [("A4", A4), ("A4", [297.0, 210.0]), ("A3", [420.0, 297.0]), ("A3", [297.0, 420.0])];
/// Margin of a tile that home printers leave white, mm (common practice, no source).
pub(super) const MARGIN: f64 = 10.0;
/// How far tiles overlap, mm: room to glue, and for a cross in its middle.
pub(super) const OVERLAP: f64 = 10.0;
/// Most tiles of a drawing at a scale; larger ones are drawn smaller.
const MOST_TILES: usize = 36;
/// Gap round blocks, mm.
const GAP: f64 = 4.0;

/// A box of paper: top left corner and size, mm.
#[derive(Debug, Clone, Copy)]
pub(super) struct Area {
    pub at: Flat,
    pub size: Flat,
}

/// A sheet of paper.
#[derive(Debug, Clone)]
pub(super) struct Sheet {
    /// A name for its size, or none.
    pub name: Option<&'static str>,
    /// Width and height, mm.
    pub size: Flat,
    /// Where may be drawn.
    pub frame: Area,
    /// The A4 tiles it is cut into; none where it is A4 itself.
    pub tiles: Option<Tiles>,
}

/// A sheet cut into A4 tiles, row by row.
#[derive(Debug, Clone, Copy)]
pub(super) struct Tiles {
    /// How many across and down.
    pub count: [usize; 2],
    /// What a tile shows, mm.
    pub window: Flat,
    /// Top left corner of the first tile on the sheet, mm.
    pub first: Flat,
}

impl Area {
    fn right(&self) -> f64 {
        self.at[0] + self.size[0]
    }

    fn bottom(&self) -> f64 {
        self.at[1] + self.size[1]
    }

    fn overlaps(&self, other: &Self) -> bool {
        self.at[0] < other.right() + GAP - 1e-9
            && other.at[0] < self.right() + GAP - 1e-9
            && self.at[1] < other.bottom() + GAP - 1e-9
            && other.at[1] < self.bottom() + GAP - 1e-9
    }

    /// The box without a rim of so many mm.
    pub fn inset(&self, rim: f64) -> Self {
        Self { at: self.at.map(|edge| edge + rim), size: self.size.map(|length| length - 2.0 * rim) }
    }

    /// Whether two boxes share paper.
    pub fn meets(&self, other: &Self) -> bool {
        self.at[0] < other.right() - 1e-9
            && other.at[0] < self.right() - 1e-9
            && self.at[1] < other.bottom() - 1e-9
            && other.at[1] < self.bottom() - 1e-9
    }

    /// Whether another box lies within it.
    pub fn holds(&self, other: &Self) -> bool {
        other.at[0] >= self.at[0] - 1e-9
            && other.at[1] >= self.at[1] - 1e-9
            && other.right() <= self.right() + 1e-9
            && other.bottom() <= self.bottom() + 1e-9
    }

    /// The box as paper to take.
    pub fn patch(&self) -> Patch {
        Patch::upright(self.at, self.size)
    }
}

/// Every sheet that may be used, smallest first.
pub(super) fn sheets() -> impl Iterator<Item = Sheet> {
    let standard = FORMATS.iter().map(|(name, size)| Sheet::standard(name, *size));
    let cut = (3..=MOST_TILES).flat_map(|tiles| {
        let shapes = (1..=tiles).filter(move |across| tiles.is_multiple_of(*across));
        shapes.flat_map(move |across| {
            [[A4[0], A4[1]], [A4[1], A4[0]]].map(|tile| Sheet::of_tiles([across, tiles / across], tile))
        })
    });
    standard.chain(cut)
}

impl Sheet {
    /// A sheet of a standard size. Margins as ISO 5457 has them, wide on the left for filing (from memory).
    fn standard(name: &'static str, size: Flat) -> Self {
        let frame = Area { at: [20.0, 10.0], size: [size[0] - 30.0, size[1] - 20.0] };
        let tiles = (name != "A4").then(|| Tiles::over(size));
        Self { name: Some(name), size, frame, tiles }
    }

    /// The largest one.
    pub fn largest() -> Self {
        Self::of_tiles([6, 6], A4)
    }

    fn of_tiles(count: [usize; 2], tile: Flat) -> Self {
        let window = tile.map(|length| length - 2.0 * MARGIN);
        let size = [0, 1].map(|axis| count[axis] as f64 * (window[axis] - OVERLAP) + OVERLAP);
        let frame = Area { at: [5.0, 5.0], size: size.map(|length| length - 10.0) };
        Self { name: None, size, frame, tiles: Some(Tiles { count, window, first: [0.0, 0.0] }) }
    }
}

impl Tiles {
    /// The fewest A4 tiles that cover a sheet, the sheet in their middle.
    fn over(size: Flat) -> Self {
        let ways = [[A4[0], A4[1]], [A4[1], A4[0]]].map(|tile| {
            let window = tile.map(|length| length - 2.0 * MARGIN);
            let count = [0, 1].map(|axis| ((size[axis] - OVERLAP) / (window[axis] - OVERLAP)).ceil() as usize);
            let whole = [0, 1].map(|axis| count[axis] as f64 * (window[axis] - OVERLAP) + OVERLAP);
            Self { count, window, first: [0, 1].map(|axis| (size[axis] - whole[axis]) / 2.0) }
        });
        let [upright, across] = ways;
        if across.count[0] * across.count[1] < upright.count[0] * upright.count[1] { across } else { upright }
    }

    /// Each tile: its letter and number, and where it lies on the sheet.
    pub fn each(&self) -> impl Iterator<Item = (String, Area)> + '_ {
        let [across, down] = self.count;
        (0..down).flat_map(move |row| (0..across).map(move |column| (row, column))).map(|(row, column)| {
            let step = self.window.map(|length| length - OVERLAP);
            let at = [self.first[0] + column as f64 * step[0], self.first[1] + row as f64 * step[1]];
            (format!("{}{}", letters(row), column + 1), Area { at, size: self.window })
        })
    }

    /// Where crosses may stand, a list of places for each: in the middle of an overlap, somewhere along it near each of
    /// the sheet's edges, and where seams meet. Both tiles of a seam show them.
    pub fn crosses(&self, size: Flat) -> Vec<Vec<Flat>> {
        let seams = [0, 1].map(|axis| {
            let step = self.window[axis] - OVERLAP;
            (1..self.count[axis]).map(|k| self.first[axis] + k as f64 * step + OVERLAP / 2.0).collect::<Vec<f64>>()
        });
        let near = (0..7).map(|step| 2.5 * OVERLAP + 8.0 * f64::from(step));
        let mut crosses: Vec<Vec<Flat>> =
            seams[0].iter().flat_map(|x| seams[1].iter().map(|y| vec![[*x, *y]])).collect();
        for (axis, other) in [(0, 1), (1, 0)] {
            for seam in &seams[axis] {
                let at = |along: f64| if axis == 0 { [*seam, along] } else { [along, *seam] };
                crosses.push(near.clone().map(at).collect());
                crosses.push(near.clone().map(|off| at(size[other] - off)).collect());
            }
        }
        crosses
    }
}

/// A for the first row, B for the second; after Z comes AA.
fn letters(row: usize) -> String {
    let letter = |index: usize| char::from(b'A' + (index % 26) as u8);
    if row < 26 { letter(row).to_string() } else { format!("{}{}", letter(row / 26 - 1), letter(row)) }
}

/// Places blocks in a frame beside what stands there, each as high up and then as far left as it can be; none where one
/// of them finds no place.
pub(super) fn placed(frame: &Area, standing: &[Area], blocks: &[Flat]) -> Option<Vec<Flat>> {
    let mut taken = standing.to_vec();
    let mut corners = Vec::new();
    for size in blocks {
        let lefts: Vec<f64> = std::iter::once(frame.at[0]).chain(taken.iter().map(|area| area.right() + GAP)).collect();
        let tops = std::iter::once(frame.at[1]).chain(taken.iter().map(|area| area.bottom() + GAP));
        let mut best: Option<Flat> = None;
        for y in tops {
            for x in &lefts {
                let area = Area { at: [*x, y], size: *size };
                let nearer = best.is_none_or(|[left, top]| (y, *x) < (top, left));
                if nearer && frame.holds(&area) && !taken.iter().any(|other| other.overlaps(&area)) {
                    best = Some(area.at);
                }
            }
        }
        let at = best?;
        corners.push(at);
        taken.push(Area { at, size: *size });
    }
    Some(corners)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn tiles_cover_their_sheet_and_overlap() {
        for sheet in sheets() {
            let Some(tiles) = &sheet.tiles else { continue };
            let all: Vec<(String, Area)> = tiles.each().collect();
            assert_eq!(all.len(), tiles.count[0] * tiles.count[1]);
            for axis in 0..2 {
                let least = all.iter().map(|(_, area)| area.at[axis]).fold(f64::INFINITY, f64::min);
                let most = all.iter().map(|(_, area)| area.at[axis] + area.size[axis]).fold(0.0, f64::max);
                assert!(least <= 1e-9 && most >= sheet.size[axis] - 1e-9, "{sheet:?}");
            }
            for cross in tiles.crosses(sheet.size).into_iter().flatten() {
                let shows = |area: &Area| (0..2).all(|i| (area.at[i]..=area.at[i] + area.size[i]).contains(&cross[i]));
                assert!(
                    all.iter().filter(|(_, area)| shows(area)).count() >= 2,
                    "a cross shows on both sides of a seam"
                );
            }
        }
    }

    #[test]
    fn blocks_stand_apart_and_within() {
        let frame = Area { at: [10.0, 10.0], size: [100.0, 100.0] };
        let wall = Area { at: [10.0, 10.0], size: [60.0, 60.0] };
        let blocks = [[30.0, 20.0], [90.0, 25.0]];
        let at = placed(&frame, &[wall], &blocks).unwrap();
        let areas: Vec<Area> = at.iter().zip(blocks).map(|(at, size)| Area { at: *at, size }).collect();
        assert!(areas.iter().all(|area| frame.holds(area) && !area.overlaps(&wall)) && !areas[0].overlaps(&areas[1]));
        assert!(placed(&frame, &[wall], &[[90.0, 60.0]]).is_none());
    }
}
