//! The pack, unpacked by the crate zip: what is in it, its names and checksums, and its sheet, parsed as XML by roxmltree.

use std::collections::{BTreeMap, BTreeSet};
use std::io::{Cursor, Read};

use serde_json::{Value, json};
use tubewright_core::engine;
use tubewright_core::export::{PackFile, checksums};

const EXAMPLE: &str = include_str!("../document/example-canonical.json");

fn pack(text: &str) -> Vec<u8> {
    engine::export_file(text, r#"{ "kind": "pack", "deviation": 0.2 }"#).expect("a pack")
}

fn unpacked(bytes: &[u8]) -> Vec<(String, Vec<u8>)> {
    let mut archive = zip::ZipArchive::new(Cursor::new(bytes)).expect("zip opens it");
    (0..archive.len())
        .map(|index| {
            let mut file = archive.by_index(index).expect("an entry");
            let time = file.last_modified().expect("a time");
            assert_eq!((time.year(), time.month(), time.day()), (1980, 1, 1), "no clock in a pack");
            let mut content = Vec::new();
            file.read_to_end(&mut content).expect("its checksum holds");
            (file.name().expect("a name").into_owned(), content)
        })
        .collect()
}

fn text_of<'f>(files: &'f [(String, Vec<u8>)], name: &str) -> &'f str {
    let found = files.iter().find(|(path, _)| path == name);
    std::str::from_utf8(&found.unwrap_or_else(|| panic!("{name} is in the pack")).1).expect("UTF-8")
}

fn sheet_of(files: &[(String, Vec<u8>)]) -> roxmltree::Document<'_> {
    let options = roxmltree::ParsingOptions { allow_dtd: true, ..Default::default() };
    roxmltree::Document::parse_with_options(text_of(files, "sheet.html"), options).expect("well-formed XML")
}

/// All words of the sheet.
fn words(document: &roxmltree::Document<'_>) -> String {
    document.descendants().filter_map(|node| node.text()).collect::<Vec<_>>().join(" ")
}

fn demos() -> Vec<String> {
    let presets: Value = serde_json::from_str(&engine::presets()).unwrap();
    presets["demos"].as_array().unwrap().iter().map(|demo| demo["design"].to_string()).collect()
}

fn design() -> Value {
    serde_json::from_str(EXAMPLE).unwrap()
}

#[test]
fn a_pack_holds_every_file_of_every_run() {
    for text in demos() {
        let report: Value = serde_json::from_str(&engine::report(&text).unwrap()).unwrap();
        let files = unpacked(&pack(&text));
        let names: BTreeSet<&str> = files.iter().map(|(name, _)| name.as_str()).collect();
        let mut expected: BTreeSet<String> =
            ["sheet.html", "checksums.txt", "plots/loss.svg", "plots/margins.svg", "plots/heat.svg"]
                .map(str::to_owned)
                .into();
        expected.insert(format!("{}.json", report["name"].as_str().unwrap().replace(": ", "- ")));
        for run in report["runs"].as_array().unwrap().iter().filter_map(|run| run["name"].as_str()) {
            for end in [".stl", ".3mf", " bends.csv", " points.csv", ".svg"] {
                expected.insert(format!("{run}/{run}{end}"));
            }
        }
        let plates: Value = serde_json::from_str(&engine::plates(&text).unwrap()).unwrap();
        for number in 1..=plates["plates"].as_array().unwrap().len() {
            expected.insert(format!("plates/plate-{number}.3mf"));
        }
        let (coupons, rest): (BTreeSet<&str>, BTreeSet<&str>) =
            names.iter().partition(|name| name.starts_with("coupons/"));
        assert_eq!(rest, expected.iter().map(String::as_str).collect());
        assert!(!coupons.is_empty() && coupons.iter().all(|name| name.ends_with(" coupon.3mf")), "{coupons:?}");
        assert_eq!(pack(&text), pack(&text), "same design, same bytes");
    }
}

/// By the hash of the crate sha2 from here, which FIPS 180-4's own example holds to the standard: SHA-256 of "abc".
#[test]
fn checksums_are_those_of_the_files() {
    let told = checksums(&[PackFile { path: "a b.txt".into(), bytes: b"abc".to_vec() }]);
    assert_eq!(told, "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad  a b.txt\n");
    let files = unpacked(&pack(EXAMPLE));
    let list = text_of(&files, "checksums.txt");
    let rest: Vec<PackFile> = files
        .iter()
        .filter(|(name, _)| name != "checksums.txt")
        .map(|(path, bytes)| PackFile { path: path.clone(), bytes: bytes.clone() })
        .collect();
    assert_eq!(list, checksums(&rest));
    let told: Vec<&str> = list.lines().map(|line| &line[66..]).collect();
    assert_eq!(told, rest.iter().map(|file| file.path.as_str()).collect::<Vec<_>>(), "each file once");
}

#[test]
fn a_pack_opens_again_as_its_design() {
    for text in demos() {
        assert_eq!(engine::design_in(&pack(&text)), engine::normalise(&text));
    }
}

/// Names that are markup, climb out of the folder, are devices, or are what the pack calls its own.
#[test]
fn hostile_names_stay_names() {
    let names = [
        "<script>alert(1)</script>",
        "../../etc/passwd",
        "CON",
        "sheet.html",
        "Plots",
        "coupons",
        "plates",
        "checksums.txt",
        "\"><img src=x onerror=y>",
        "Puffin.json",
        "шланг & مضخة",
    ];
    let mut stated = design();
    let run = stated["runs"][0].clone();
    stated["name"] = json!("Puffin");
    stated["fittings"][0]["name"] = json!("<b>'&quot;</b>");
    for port in stated["ports"].as_array_mut().unwrap() {
        port["fitting"] = json!("<b>'&quot;</b>");
    }
    stated["runs"] = names
        .iter()
        .map(|name| {
            let mut run = run.clone();
            run["name"] = json!(name);
            run
        })
        .collect();
    stated["process"]["material"] = json!({ "name": "]]><!-- resin", "density_g_per_cm3": 1.1,
        "cautions": "<a href=\"https://example.org\">mind</a>" });
    let files = unpacked(&pack(&stated.to_string()));
    let mut taken = BTreeSet::new();
    for (path, _) in &files {
        assert!(taken.insert(path.to_lowercase()), "{path} twice");
        let parts: Vec<&str> = path.split('/').collect();
        assert!(parts.len() <= 2, "{path}");
        for part in &parts {
            assert!(!part.is_empty() && !part.starts_with(['.', ' ', '-']) && !part.ends_with(['.', ' ']), "{path}");
            assert!(!part.contains(['\\', ':', '*', '?', '"', '<', '>', '|']), "{path}");
            assert_ne!(part.split('.').next().unwrap().to_lowercase(), "con", "{path}");
        }
        if let [folder, _] = parts[..] {
            assert!(!taken.contains(&folder.to_lowercase()), "{folder} is a file and a folder");
        }
    }
    let sheet = sheet_of(&files);
    let told = words(&sheet);
    for name in names {
        assert!(told.contains(name), "{name}");
    }
    let tags: BTreeSet<&str> = sheet.descendants().map(|node| node.tag_name().name()).collect();
    assert!(["script", "img", "a", "b", "link", "iframe"].iter().all(|tag| !tags.contains(tag)), "{tags:?}");
}

#[test]
fn the_sheet_fetches_nothing() {
    for text in demos() {
        let files = unpacked(&pack(&text));
        let sheet = sheet_of(&files);
        for node in sheet.descendants().filter(|node| node.is_element()) {
            for attribute in node.attributes() {
                let name = attribute.name();
                assert!(!["src", "href", "srcset", "action", "style"].contains(&name), "{name}");
                assert!(!name.starts_with("on"), "{name}");
            }
            if node.has_tag_name("style") {
                let style = node.text().unwrap_or_default();
                assert!(!style.contains("url(") && !style.contains("@import"), "{style}");
            }
        }
        assert_eq!(sheet.root_element().attribute("lang"), Some("en"));
        assert!(sheet.descendants().any(|node| node.attribute("charset") == Some("utf-8")));
        assert_eq!(sheet.descendants().filter(|node| node.has_tag_name("h1")).count(), 1);
    }
}

#[test]
fn a_run_that_cannot_be_made_is_left_out_and_said() {
    let mut stated = design();
    let mut bad = stated["runs"][0].clone();
    bad["name"] = json!("too tight");
    bad["bend_radius"] = json!(1);
    bad["route"].as_array_mut().unwrap().iter_mut().for_each(|station| {
        station.as_object_mut().unwrap().remove("bend_radius");
    });
    stated["runs"].as_array_mut().unwrap().push(bad);
    let text = stated.to_string();
    let refused = engine::export_file(&text, r#"{ "kind": "stl", "run": "too tight" }"#).expect_err("no tube");
    let files = unpacked(&pack(&text));
    assert!(files.iter().any(|(name, _)| name == "pump to block/pump to block.stl"));
    assert!(!files.iter().any(|(name, _)| name.contains("too tight")));
    let sheet = sheet_of(&files);
    let told = words(&sheet);
    assert!(told.contains("Do not print this yet") && told.contains("too tight is not in this pack."), "{told}");
    assert!(told.contains(&refused.message), "{told}");
    // Alone it leaves nothing to pack.
    stated["runs"].as_array_mut().unwrap().remove(0);
    let refused = engine::export_file(&stated.to_string(), r#"{ "kind": "pack" }"#).expect_err("nothing to pack");
    assert!(refused.message.contains("No run of the design can be made yet"), "{}", refused.message);
}

#[test]
fn a_design_without_stops_has_no_warning_not_to_print() {
    let mut found = BTreeMap::new();
    for text in demos() {
        let report: Value = serde_json::from_str(&engine::report(&text).unwrap()).unwrap();
        let stops = report["findings"].as_array().unwrap().iter().any(|finding| finding["severity"] == "stop");
        let files = unpacked(&pack(&text));
        assert_eq!(words(&sheet_of(&files)).contains("Do not print this yet"), stops, "{}", report["name"]);
        *found.entry(stops).or_insert(0) += 1;
    }
    assert!(found.contains_key(&false), "a demo without stops");
}

/// Rows of the order told by their attributes, each against the report and the file's own coordinates.
#[test]
fn the_order_tells_what_the_files_are() {
    for text in demos() {
        let report: Value = serde_json::from_str(&engine::report(&text).unwrap()).unwrap();
        let files = unpacked(&pack(&text));
        let sheet = sheet_of(&files);
        let rows: Vec<_> = sheet.descendants().filter(|node| node.has_attribute("data-box")).collect();
        assert_eq!(rows.len(), report["runs"].as_array().unwrap().len());
        for (row, run) in rows.iter().zip(report["runs"].as_array().unwrap()) {
            let number = |key: &str| row.attribute(key).unwrap().parse::<f64>().unwrap();
            assert_eq!(number("data-cm3"), run["material_mm3"].as_f64().unwrap() / 1e3);
            let stl = &files.iter().find(|(path, _)| *path == format!("{}.stl", row.attribute("data-file").unwrap()));
            let bytes = &stl.expect("its file").1;
            assert_eq!(number("data-triangles") as usize, (bytes.len() - 84) / 50);
            let cells: Vec<&str> = row.children().filter_map(|cell| cell.text()).collect();
            assert_eq!(cells[1], run["name"]);
            let plate = cells[2].parse::<usize>().ok();
            assert!(plate.map_or(cells[2] == "none", |plate| plate >= 1), "{cells:?}");
            assert_eq!(cells[8], "1");
        }
    }
}

/// A seal of its own arithmetic: ring 2.0, gland 15.2 in a tube of 12, and 12 to 30 % of squeeze kept whatever ring (0.08,
/// ISO 3601-1 class B) and gland (0.05) are: (15.2 + 0.05) - 2 * 1.92 * 0.88 and (15.2 - 0.05) - 2 * 2.08 * 0.7.
#[test]
fn the_sheet_tells_which_diameters_the_seal_takes() {
    let files = unpacked(&pack(EXAMPLE));
    assert!(EXAMPLE.contains("15.2"), "the example's gland");
    let told = words(&sheet_of(&files));
    let [least, most] = [15.25 - 2.0 * 1.92 * 0.88, 15.15 - 2.0 * 2.08 * 0.7];
    assert!(told.contains(&format!("{least:.2} to {most:.2}")), "{told}");
}

#[test]
fn money_and_hours_are_told_only_where_they_are_known() {
    let mut stated = design();
    let told = |stated: &Value| words(&sheet_of(&unpacked(&pack(&stated.to_string()))));
    stated["process"] = json!({ "material": "tough resin", "printer": "medium resin" });
    let known = told(&stated);
    let volume =
        serde_json::from_str::<Value>(&engine::report(&stated.to_string()).unwrap()).unwrap()["totals"]["material_mm3"]
            .as_f64()
            .unwrap();
    // 55 a litre, as the preset states it.
    assert!(known.contains(&format!("{:.2}", 55.0 * volume / 1e6)), "{known}");
    stated["process"] = json!({ "material": { "name": "own", "density_g_per_cm3": 1.1 }, "printer": "filament" });
    let unknown = told(&stated);
    assert!(unknown.matches("not known").count() > known.matches("not known").count() + 2, "{unknown}");
}

/// The last column of the quantities: each piece's price, and for all of them the least order where that is more.
#[test]
fn a_print_service_s_prices_are_told_where_they_are_stated() {
    let mut stated = design();
    assert!(!words(&sheet_of(&unpacked(&pack(&stated.to_string())))).contains("Print service"));
    for least in [0.0, 1e4] {
        stated["process"] = json!({ "service": { "price_per_cm3": 0.5, "setup": 4, "minimum": least } });
        let files = unpacked(&pack(&stated.to_string()));
        let sheet = sheet_of(&files);
        let row = sheet.descendants().find(|node| node.has_attribute("data-sum")).expect("the sum");
        let price: f64 = row.children().filter_map(|cell| cell.text()).next_back().unwrap().parse().unwrap();
        let report: Value = serde_json::from_str(&engine::report(&stated.to_string()).unwrap()).unwrap();
        let pieces = report["runs"].as_array().unwrap().iter().flat_map(|run| run["pieces"].as_array().unwrap());
        let sum: f64 = pieces.map(|piece| piece["material_mm3"].as_f64().unwrap() / 1e3 * 0.5 + 4.0).sum();
        assert!((price - sum.max(least)).abs() <= 0.005 + 1e-9, "{price}, not {sum}");
    }
}

#[test]
fn what_is_too_large_for_the_printer_stays_in_the_datum_and_says_so() {
    let mut stated: Value = serde_json::from_str(&demos()[1]).unwrap();
    let printers: Value = serde_json::from_str(&engine::presets()).unwrap();
    let mut small = printers["printers"][0].clone();
    small["build_volume"] = json!([30, 30, 30]);
    stated["process"]["printer"] = small;
    let text = stated.to_string();
    let files = unpacked(&pack(&text));
    let told = words(&sheet_of(&files));
    assert!(told.contains("its file is in the builder's own axes"), "{told}");
    let run = stated["runs"][0]["name"].as_str().unwrap();
    let datum =
        engine::export_file(&text, &json!({ "kind": "stl", "run": run, "deviation": 0.2 }).to_string()).unwrap();
    let packed = files.iter().find(|(path, _)| *path == format!("{run}/{run}.stl")).unwrap();
    assert!(packed.1 == datum, "the datum's own file");
}

/// Corrected by a coupon, a tube far from the datum still stands on its plate.
#[test]
fn a_corrected_file_stands_where_the_stated_one_does() {
    let mut stated = design();
    stated["process"] = json!({ "material": "PETG", "printer": "filament" });
    for port in stated["ports"].as_array_mut().unwrap() {
        for x in port["at"].as_array_mut().unwrap() {
            *x = json!(x.as_f64().unwrap() + 500.0);
        }
    }
    stated["runs"][0]["route"] = json!([]);
    stated["process"]["fit"] = json!({ "material": "PETG", "printer": "filament",
        "outer": [], "bore": [], "length": [{ "nominal": 60, "measured": 59.7 }] });
    let files = unpacked(&pack(&stated.to_string()));
    let row = sheet_of(&files).descendants().find_map(|node| node.attribute("data-low").map(str::to_owned)).unwrap();
    let name = files.iter().find(|(path, _)| path.ends_with(".stl")).unwrap().0.clone();
    assert!(name.ends_with(" compensated.stl"), "{name}");
    // To within the deviation of the mesh that tells where the tube stands.
    assert!(row.parse::<f64>().unwrap().abs() < 0.01, "{row}");
    let plain = r#"{ "kind": "pack", "deviation": 0.2, "compensated": false }"#;
    let files = unpacked(&engine::export_file(&stated.to_string(), plain).unwrap());
    assert!(!files.iter().any(|(path, _)| path.contains("compensated")));
}

#[test]
fn a_pack_is_of_the_whole_design() {
    let refused = |request: &str| engine::export_file(EXAMPLE, request).expect_err("refused").path;
    assert_eq!(refused(r#"{ "kind": "pack", "run": "pump to block" }"#), "/run");
    assert_eq!(refused(r#"{ "kind": "pack", "stance": true }"#), "/stance");
    assert_eq!(
        engine::file_name(EXAMPLE, r#"{ "kind": "pack", "deviation": "fit" }"#).unwrap(),
        "Puffin, pump to block pack.zip"
    );
}

#[test]
fn who_watches_is_told_ascending_shares_and_the_bytes_are_the_same() {
    let text = &demos()[1];
    for kind in ["pack", "all", "3mf"] {
        let request = format!(r#"{{"kind":"{kind}","deviation":0.2}}"#);
        let mut shares = Vec::new();
        let watched = engine::export_file_watched(text, &request, &mut |share| shares.push(share)).unwrap();
        assert_eq!(watched, engine::export_file(text, &request).unwrap(), "{kind}");
        assert_eq!(shares.len(), 4, "{kind}: {shares:?}");
        assert!(shares.is_sorted() && shares[0] > 0.0 && shares[3] < 1.0, "{kind}: {shares:?}");
    }
}
