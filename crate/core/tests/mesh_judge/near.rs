//! Boxes sorted into cells, to find what is near a point.

use std::collections::HashMap;
use tubewright_core::layout::Vec3;

pub struct Near {
    size: f64,
    cells: HashMap<[i32; 3], Vec<u32>>,
}

impl Near {
    pub fn of(size: f64, boxes: impl Iterator<Item = (u32, Vec3, Vec3)>) -> Self {
        let mut near = Self { size, cells: HashMap::new() };
        for (index, low, high) in boxes {
            for cell in near.between(&low, &high) {
                near.cells.entry(cell).or_default().push(index);
            }
        }
        near
    }

    /// Everything whose cells come within `reach` mm of the point.
    pub fn about(&self, point: &Vec3, reach: f64) -> Vec<u32> {
        let by = Vec3::repeat(reach);
        self.between(&(point - by), &(point + by))
            .into_iter()
            .filter_map(|cell| self.cells.get(&cell))
            .flatten()
            .copied()
            .collect()
    }

    fn between(&self, low: &Vec3, high: &Vec3) -> Vec<[i32; 3]> {
        let cell = |v: f64| libm::floor(v / self.size) as i32;
        let mut cells = Vec::new();
        for x in cell(low.x)..=cell(high.x) {
            for y in cell(low.y)..=cell(high.y) {
                cells.extend((cell(low.z)..=cell(high.z)).map(|z| [x, y, z]));
            }
        }
        cells
    }
}
