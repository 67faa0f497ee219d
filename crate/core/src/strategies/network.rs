//! Several runs among keep-outs, good and bad.

use super::Chance;
use super::sheet::{Sheet, Stock, corner};
use serde_json::json;

/// A handful of ports, runs between some of them, corners anywhere, boxes and cylinders in the way: most of what the
/// checks look for comes up.
pub(super) fn network(chance: &mut Chance) -> Sheet {
    let mut sheet = Sheet::default();
    let stocks: Vec<Stock> = (0..2).map(|_| Stock::usual(chance)).collect();
    for (stock, name) in stocks.iter().zip(["F", "G"]) {
        sheet.fitting(stock, name);
    }
    let ports: Vec<String> = (0..chance.whole(3, 8)).map(|index| format!("port {index}")).collect();
    for port in &ports {
        let (at, facing) = (chance.point(120.0), chance.direction() * chance.scale(0.1, 10.0));
        let fitting = chance.pick(&["F", "G"]);
        sheet.port(port, &at, &facing, fitting);
    }
    for index in 0..chance.whole(1, 5) {
        let from = chance.whole(0, ports.len() - 1);
        let to = (from + chance.whole(1, ports.len() - 1)) % ports.len();
        let mut stock = stocks[chance.whole(0, 1)].clone();
        stock.bend *= chance.pick(&[0.4, 1.0, 1.0, 2.0]);
        let route = (0..chance.pick(&[0, 0, 1, 2, 4]))
            .map(|_| {
                let at = chance.point(150.0);
                corner(json!([at.x, at.y, at.z]), chance.once_in(4).then(|| chance.from(1.0, 40.0)))
            })
            .collect();
        sheet.run(&format!("run {index}"), [&ports[from], &ports[to]], &stock, route, None);
    }
    for _ in 0..chance.whole(0, 3) {
        let (at, size) = (chance.point(150.0), chance.from(10.0, 80.0));
        sheet.keep_out(if chance.once_in(2) {
            json!({ "box": { "min": [at.x, at.y, at.z], "max": [at.x + size, at.y + size, at.z + size] } })
        } else {
            json!({ "cylinder": { "from": [at.x, at.y, at.z], "to": [at.x, at.y + size, at.z], "radius": size / 3.0 } })
        });
    }
    sheet.clearance(chance.pick(&[0.0, 1.0, 5.0]));
    sheet
}
