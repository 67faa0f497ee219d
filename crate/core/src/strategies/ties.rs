//! Corners tied to ports.

use super::Chance;
use super::sheet::{Sheet, Stock, corner, seat};
use crate::layout::Vec3;
use core::f64::consts::PI;
use serde_json::json;

/// Up from one port, over along x and y, down to another: four corners whose coordinates follow the ports.
pub(super) fn tied(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    // Room for two right angles on each leg, and what the leads need on the first and last.
    let leg = |chance: &mut Chance| 2.0 * stock.bend + chance.from(0.0, 100.0);
    let (along_x, along_y) = (leg(chance), leg(chance) * chance.pick(&[1.0, -1.0]));
    let rise = stock.straight() + stock.bend + chance.from(0.0, 60.0);
    let start = chance.point(100.0);
    let end = start + Vec3::new(along_x, along_y, chance.from(-rise, 0.0));
    let up = Vec3::z();
    let (a, b) = (seat(&stock, &start, &up), seat(&stock, &end, &up));
    let top = start.z + rise;
    let mut sheet = Sheet::default();
    sheet.fitting(&stock, "F");
    sheet.port("A", &a, &up, "F");
    sheet.port("B", &b, &up, "F");
    let follow = |of: &str, plus: f64| json!({ "of": of, "plus": plus });
    let height = [follow("A", top - a.z), follow("B", top - b.z), json!(top)];
    let high = |chance: &mut Chance| height[chance.whole(0, 2)].clone();
    let route = vec![
        corner(json!([follow("A", 0.0), follow("A", 0.0), high(chance)]), None),
        corner(json!([follow("B", 0.0), follow("A", 0.0), high(chance)]), None),
        corner(json!([follow("B", 0.0), { "of": "B" }, high(chance)]), None),
    ];
    // Three right angles: each takes two tangent lengths of R and gives a quarter turn of arc.
    let polyline = rise + along_x + along_y.abs() + (top - end.z);
    let length = polyline - 3.0 * (2.0 - PI / 2.0) * stock.bend;
    sheet.run("run", ["A", "B"], &stock, route, Some(length));
    sheet
}
