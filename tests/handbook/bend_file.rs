//! Bend tables and points as files: read by a reader written from RFC 4180 alone, rebuilt into points by walking the rows,
//! and held against the points that the design states. Source: as for the table itself.

use crate::bend_table::{A, B, C, walk};
use crate::scene::{close, number, run, through};
use serde_json::{Value, json};
use tubewright_core::engine;

const EXAMPLES: [(&[[f64; 3]], f64); 3] = [(&A, 24.0), (&B, 24.0), (&C, 20.0)];

/// The records of a text: fields apart by commas, lines by CR LF, a field in quotation marks where it holds either, a
/// quotation mark inside written twice. Source: RFC 4180, section 2.
fn records(text: &str) -> Vec<Vec<String>> {
    let mut records = vec![vec![String::new()]];
    let mut quoted = false;
    let mut signs = text.chars().peekable();
    while let Some(sign) = signs.next() {
        let record = records.last_mut().expect("there is a record");
        let field = record.last_mut().expect("there is a field");
        match sign {
            '"' if quoted && signs.peek() == Some(&'"') => field.extend(signs.next()),
            '"' => {
                assert!(quoted || field.is_empty(), "a quotation mark inside a field that has none around it");
                quoted = !quoted;
            }
            ',' if !quoted => record.push(String::new()),
            '\r' if !quoted => {
                assert_eq!(signs.next(), Some('\n'), "lines end in CR LF");
                records.push(vec![String::new()]);
            }
            _ => field.push(sign),
        }
    }
    assert_eq!(records.pop(), Some(vec![String::new()]), "the last line is ended too");
    records
}

/// A file's remarks, and its rows below the headings; every record has as many fields as there are headings.
fn read(design: &Value, request: Value) -> (Vec<String>, Vec<String>, Vec<Vec<String>>) {
    let bytes = engine::export_file(&design.to_string(), &request.to_string()).expect("a file");
    let all = records(std::str::from_utf8(&bytes).expect("UTF-8"));
    let (remarks, rest): (Vec<_>, Vec<_>) = all.into_iter().partition(|record| record[0] == "#");
    let headings = rest[0].clone();
    assert!(remarks.iter().chain(&rest).all(|record| record.len() == headings.len()), "records of one length");
    (remarks.into_iter().map(|record| record[1].clone()).collect(), headings, rest[1..].to_vec())
}

/// Straight, rotation, angle, radius of each row of a bend table's file, and what its remarks say.
fn bends(design: &Value, more: Value) -> (String, Vec<[f64; 4]>) {
    let mut request = json!({ "kind": "bend-table", "run": design["runs"][0]["name"] });
    request.as_object_mut().expect("keys").extend(more.as_object().expect("keys").clone());
    let (remarks, headings, rows) = read(design, request);
    let at = |name: &str| headings.iter().position(|heading| heading == name).expect("a heading");
    let columns = ["straight_mm", "rotation_deg", "angle_deg", "radius_mm"].map(at);
    let rows = rows.iter().map(|row| columns.map(|column| row[column].parse().expect("a number"))).collect();
    (remarks.join("\n"), rows)
}

#[test]
fn points_to_file_to_points_closes() {
    for (points, radius) in EXAMPLES {
        let design = through(points, 12.0, 8.0, radius);
        let (_, rows) = bends(&design, json!({}));
        assert_eq!(rows.len(), points.len() - 1, "a row a bend, and the last straight");
        assert_eq!(rows[0][1], 0.0, "the first rotation is 0");
        for (found, expected) in walk(&rows).iter().zip(points) {
            (0..3).for_each(|axis| close(found[axis], expected[axis], 1e-9));
        }
        let (_, _, listed) = read(&design, json!({ "kind": "points", "run": "r" }));
        let listed: Vec<Vec<f64>> =
            listed.iter().map(|row| row[2..5].iter().map(|field| field.parse().expect("a number")).collect()).collect();
        assert_eq!(listed.len(), points.len());
        for (found, expected) in listed.iter().zip(points) {
            (0..3).for_each(|axis| close(found[axis], expected[axis], 1e-9));
        }
    }
}

#[test]
fn the_file_holds_the_reports_own_numbers() {
    for (points, radius) in EXAMPLES {
        let design = through(points, 12.0, 8.0, radius);
        let told = run(&design);
        let (_, rows) = bends(&design, json!({}));
        for (row, told) in rows.iter().zip(told["bend_table"].as_array().expect("rows")) {
            let told = ["straight_mm", "rotation_deg", "angle_deg", "radius_mm"].map(|key| number(&told[key]));
            assert_eq!(*row, told, "read back to the bit");
        }
    }
}

#[test]
fn fed_from_the_end_it_is_the_same_tube() {
    for (points, radius) in EXAMPLES {
        let design = through(points, 12.0, 8.0, radius);
        let (remarks, rows) = bends(&design, json!({ "from": "end" }));
        assert!(remarks.contains("Fed from port: b"), "{remarks}");
        let backward: Vec<[f64; 3]> = points.iter().rev().copied().collect();
        same_shape(&walk(&rows), &backward);
    }
}

#[test]
fn a_flip_is_said_and_is_the_mirror_image_for_who_reads_it_unflipped() {
    for (points, radius) in EXAMPLES {
        let design = through(points, 12.0, 8.0, radius);
        let (plain, rows) = bends(&design, json!({ "flip": false }));
        let (flipped, turned) = bends(&design, json!({ "flip": true }));
        assert!(plain.contains("positive by the right-hand rule") && !plain.contains("flipped"), "{plain}");
        assert!(flipped.contains("positive against the right-hand rule (flipped)"), "{flipped}");
        for (row, other) in rows.iter().zip(&turned) {
            assert_eq!(other[1], if row[1] == 180.0 { 180.0 } else { -row[1] + 0.0 });
            assert_eq!([row[0], row[2], row[3]], [other[0], other[2], other[3]]);
        }
        let mirrored: Vec<[f64; 3]> = points.iter().map(|[x, y, z]| [*x, *y, -*z]).collect();
        same_shape(&walk(&turned), &mirrored);
    }
}

#[test]
fn the_convention_stands_in_the_file() {
    let (remarks, _) = bends(&through(&A, 12.0, 8.0, 24.0), json!({}));
    for words in [
        "Lengths mm",
        "angles degrees",
        "feed direction",
        "right-hand rule",
        "-180 to 180",
        "first row 0",
        "Fed from port: a",
    ] {
        assert!(remarks.contains(words), "{words:?} is not in {remarks}");
    }
}

#[test]
fn a_name_is_never_a_formula() {
    for name in ["=1+2", "+A1", "-A1", "@sum(A1)", "a\";=1+1;\"", "x,=2", "größe, „7“"] {
        let mut design = through(&A, 12.0, 8.0, 24.0);
        design["name"] = name.into();
        design["runs"][0]["name"] = name.into();
        design["ports"][0]["name"] = name.into();
        design["runs"][0]["from"] = name.into();
        for kind in ["bend-table", "points"] {
            let bytes = engine::export_file(&design.to_string(), &json!({ "kind": kind, "run": name }).to_string());
            let text = String::from_utf8(bytes.expect("a file")).expect("UTF-8");
            // Whichever sign a program splits at, and whether or not it minds the quotation marks.
            for field in text.split([',', ';', '"', '\t', '\r', '\n']).map(str::trim) {
                let number = field.parse::<f64>().is_ok();
                assert!(number || !field.starts_with(['=', '+', '-', '@']), "{field:?} of {name:?} starts a formula");
            }
            assert!(records(&text).iter().any(|record| record[1].contains(&name[1..2])), "the name is told");
        }
    }
}

/// Whether two lists of points differ by a rigid motion: all distances, and the sense of every four points.
fn same_shape(found: &[[f64; 3]], expected: &[[f64; 3]]) {
    assert_eq!(found.len(), expected.len());
    let way = |points: &[[f64; 3]], i: usize, j: usize| [0, 1, 2].map(|axis| points[j][axis] - points[i][axis]);
    let dot = |a: [f64; 3], b: [f64; 3]| a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    for i in 0..found.len() {
        for j in 0..i {
            let length = |points| dot(way(points, i, j), way(points, i, j)).sqrt();
            close(length(found), length(expected), 1e-9);
        }
        if i >= 3 {
            let sense = |points: &[[f64; 3]]| {
                let [a, b, c] = [1, 2, 3].map(|step| way(points, i - 3, i - 3 + step));
                dot(a, [b[1] * c[2] - b[2] * c[1], b[2] * c[0] - b[0] * c[2], b[0] * c[1] - b[1] * c[0]])
            };
            close(sense(found), sense(expected), 1e-4);
        }
    }
}
