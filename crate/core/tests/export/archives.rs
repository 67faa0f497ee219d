//! 3MF and zip files, unpacked by the crate zip and parsed by roxmltree, readers that had no part in writing them.

use crate::shapes::quarter_bend;
use std::io::{Cursor, Read};
use tubewright_core::engine;
use tubewright_core::export::{self, DESIGN_PART, DesignTold, Kind, Meta, NamedMesh, Paper, RunFiles};
use tubewright_core::mesh::Mesh;

const CORE: &str = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";

const PUFFIN: DesignTold<'_> = DesignTold { title: "Puffin: all", text: "{}\n", material: "PETG", note: "" };

fn unpack(bytes: &[u8]) -> Vec<(String, Vec<u8>)> {
    let mut archive = zip::ZipArchive::new(Cursor::new(bytes)).expect("zip opens it");
    (0..archive.len())
        .map(|index| {
            let mut file = archive.by_index(index).expect("an entry");
            let time = file.last_modified().expect("a time");
            assert_eq!((time.year(), time.month(), time.day(), time.hour()), (1980, 1, 1, 0), "no clock in a file");
            let mut content = Vec::new();
            file.read_to_end(&mut content).expect("its checksum holds");
            (file.name().expect("a name").into_owned(), content)
        })
        .collect()
}

fn model(bytes: &[u8]) -> String {
    let parts = unpack(bytes);
    let attached = ["3D/_rels/3dmodel.model.rels", DESIGN_PART];
    let expected = ["[Content_Types].xml", "_rels/.rels", "3D/3dmodel.model"].into_iter().chain(attached);
    let names: Vec<&str> = parts.iter().map(|(name, _)| name.as_str()).collect();
    assert_eq!(names, expected.take(names.len()).collect::<Vec<_>>());
    assert!(names.len() == 3 || names.len() == 5, "with the design or without it");
    String::from_utf8(parts[2].1.clone()).expect("UTF-8")
}

fn in_one_piece<'a>(name: &'a str, mesh: &'a Mesh, papers: Vec<Paper>) -> RunFiles<'a> {
    RunFiles { name, solids: vec![("", NamedMesh { name, mesh })], papers }
}

/// The meshes, in order, as a reader of the XML finds them.
fn meshes(document: &roxmltree::Document<'_>) -> Vec<Mesh> {
    let tags = |node: roxmltree::Node<'_, '_>, tag: &'static str, keys: [&'static str; 3]| -> Vec<[String; 3]> {
        let found = node.descendants().filter(|child| child.has_tag_name((CORE, tag)));
        found.map(|child| keys.map(|key| child.attribute(key).expect("it is there").to_owned())).collect()
    };
    let meshes = document.descendants().filter(|node| node.has_tag_name((CORE, "mesh")));
    meshes
        .map(|node| Mesh {
            positions: tags(node, "vertex", ["x", "y", "z"]).concat().iter().map(|x| x.parse().unwrap()).collect(),
            indices: tags(node, "triangle", ["v1", "v2", "v3"]).concat().iter().map(|x| x.parse().unwrap()).collect(),
        })
        .collect()
}

#[test]
fn a_3mf_holds_each_run_to_the_bit() {
    let (a, b) = (quarter_bend(32.0, 8.0, 6.0, 24, 9), quarter_bend(20.0, 5.0, 4.0, 12, 5));
    let runs = [NamedMesh { name: "pump to block", mesh: &a }, NamedMesh { name: "block to radiator", mesh: &b }];
    let bytes = export::three_mf(&runs, &Meta { title: "Puffin", ..Meta::default() });
    let text = model(&bytes);
    let document = roxmltree::Document::parse(&text).expect("well-formed");
    assert_eq!(meshes(&document), [a.clone(), b.clone()]);
    let root = document.root_element();
    assert_eq!((root.tag_name().namespace(), root.attribute("unit")), (Some(CORE), Some("millimeter")));
    let named = |tag: &'static str, key: &'static str| {
        let found = document.descendants().filter(move |node| node.has_tag_name((CORE, tag)));
        found.map(move |node| node.attribute(key).unwrap_or_default().to_owned()).collect::<Vec<_>>()
    };
    assert_eq!(named("object", "name"), ["pump to block", "block to radiator"]);
    assert_eq!(named("object", "id"), named("item", "objectid"));
    assert_eq!(named("metadata", "name"), ["Title", "Application"]);
    let words = document.descendants().filter(|node| node.has_tag_name((CORE, "metadata"))).map(|node| node.text());
    assert_eq!(words.collect::<Vec<_>>(), [Some("Puffin"), Some("Tubewright")]);
    assert_eq!(bytes, export::three_mf(&runs, &Meta { title: "Puffin", ..Meta::default() }), "same design, same bytes");
}

#[test]
fn its_package_parts_lead_to_the_model() {
    let mesh = quarter_bend(32.0, 8.0, 6.0, 8, 3);
    let parts =
        unpack(&export::three_mf(&[NamedMesh { name: "a", mesh: &mesh }], &Meta { title: "", ..Meta::default() }));
    let text = |index: usize| std::str::from_utf8(&parts[index].1).unwrap();
    let types = roxmltree::Document::parse(text(0)).unwrap();
    let kinds: Vec<_> = types.descendants().filter_map(|node| node.attribute("Extension")).collect();
    assert_eq!(kinds, ["rels", "model"]);
    let relations = roxmltree::Document::parse(text(1)).unwrap();
    let relation = relations.descendants().find(|node| node.has_attribute("Target")).unwrap();
    assert_eq!(relation.attribute("Target"), Some(&*format!("/{}", parts[2].0)));
    assert!(!text(2).contains("\"Title\""), "no empty title");
}

#[test]
fn any_name_leaves_the_xml_well_formed() {
    let mesh = quarter_bend(32.0, 8.0, 6.0, 8, 3);
    let all: String =
        (0..0x300).chain([0x200f, 0x202e, 0xfffd, 0xfffe, 0xffff, 0x1f9ea]).filter_map(char::from_u32).collect();
    for name in [r#"<a href="x">&amp;'</a>]]>"#, "</object>", "\u{0}\u{b}\u{1b}[0m", &all] {
        let bytes = export::three_mf(&[NamedMesh { name, mesh: &mesh }], &Meta { title: name, ..Meta::default() });
        let text = model(&bytes);
        let document = roxmltree::Document::parse(&text).expect("well-formed");
        let object = document.descendants().find(|node| node.has_tag_name((CORE, "object"))).unwrap();
        let expected: String = name
            .chars()
            .map(|c| match c {
                '\t' | '\n' | '\r' => ' ',
                '\0'..'\u{20}' | '\u{fffe}' | '\u{ffff}' => '\u{fffd}',
                _ => c,
            })
            .collect();
        assert_eq!(object.attribute("name"), Some(&*expected));
        assert!(document.descendants().any(|node| node.text() == Some(&expected)));
    }
}

#[test]
fn runs_below_zero_are_shifted_together_into_the_positive_octant() {
    let mut low = quarter_bend(32.0, 8.0, 6.0, 8, 3);
    let high = low.clone();
    low.positions.chunks_exact_mut(3).for_each(|point| point[0] -= 100.0);
    let runs = [NamedMesh { name: "low", mesh: &low }, NamedMesh { name: "high", mesh: &high }];
    let text = model(&export::three_mf(&runs, &Meta { title: "", ..Meta::default() }));
    let document = roxmltree::Document::parse(&text).unwrap();
    assert_eq!(meshes(&document), [low.clone(), high.clone()], "the meshes stay in the datum");
    let shifts: Vec<Vec<f32>> = document
        .descendants()
        .filter_map(|node| node.attribute("transform"))
        .map(|words| words.split(' ').map(|word| word.parse().unwrap()).collect())
        .collect();
    assert_eq!(shifts.len(), 2);
    assert_eq!(shifts[0], shifts[1]);
    assert_eq!(shifts[0][..9], [1.0, 0.0, 0.0, 0.0, 1.0, 0.0, 0.0, 0.0, 1.0]);
    for mesh in [&low, &high] {
        for point in mesh.positions.chunks_exact(3) {
            assert!((0..3).all(|axis| point[axis] + shifts[0][9 + axis] >= 0.0));
        }
    }
    let lifted = Mesh { positions: high.positions.iter().map(|x| x + 10.0).collect(), ..high };
    assert!(
        !model(&export::three_mf(&[NamedMesh { name: "a", mesh: &lifted }], &Meta { title: "", ..Meta::default() }))
            .contains("transform")
    );
}

#[test]
fn the_zip_holds_every_run_under_a_name_of_its_own() {
    let mesh = quarter_bend(32.0, 8.0, 6.0, 8, 3);
    let names = ["Pump/Block", "pump:block", "../../etc/passwd", "CON", "шланг", "\u{202e}x"];
    let runs = names.map(|name| in_one_piece(name, &mesh, Vec::new()));
    let bytes = export::zip(&PUFFIN, &runs, &[]);
    let files = unpack(&bytes);
    assert_eq!(
        files.iter().map(|(name, _)| name.as_str()).collect::<Vec<_>>(),
        [
            "Pump-Block.stl",
            "Pump-Block.3mf",
            "pump-block-2.stl",
            "pump-block-2.3mf",
            "etc-passwd.stl",
            "etc-passwd.3mf",
            "_CON.stl",
            "_CON.3mf",
            "шланг.stl",
            "шланг.3mf",
            "x.stl",
            "x.3mf",
            "Puffin- all.json",
        ]
    );
    for (index, name) in names.iter().enumerate() {
        assert_eq!(files[index * 2].1, export::stl(&mesh, name));
        let document = model(&files[index * 2 + 1].1);
        assert_eq!(meshes(&roxmltree::Document::parse(&document).unwrap()), std::slice::from_ref(&mesh));
    }
    assert_eq!(files[12].1, b"{}\n");
    assert_eq!(bytes, export::zip(&PUFFIN, &runs, &[]), "same design, same bytes");
}

/// Another run may be called as a piece is: each file keeps a name of its own.
#[test]
fn pieces_keep_names_of_their_own() {
    let mesh = quarter_bend(32.0, 8.0, 6.0, 8, 3);
    let solid = |name| NamedMesh { name, mesh: &mesh };
    let pieces = vec![("-piece-1-of-2", solid("a, piece 1 of 2")), ("-piece-2-of-2", solid("a, piece 2 of 2"))];
    let long = "é".repeat(100);
    let runs = [
        RunFiles { name: "a", solids: pieces.clone(), papers: Vec::new() },
        in_one_piece("A piece 1 of 2", &mesh, Vec::new()),
        in_one_piece("a-piece-1-of-2", &mesh, Vec::new()),
        RunFiles { name: &long, solids: pieces, papers: Vec::new() },
    ];
    let files = unpack(&export::zip(&PUFFIN, &runs, &[]));
    let names: Vec<&str> = files.iter().map(|(name, _)| name.as_str()).filter(|name| name.ends_with(".stl")).collect();
    let cut = "é".repeat(33);
    assert_eq!(
        names,
        [
            "a-piece-1-of-2-2.stl",
            "a-piece-2-of-2.stl",
            "A piece 1 of 2.stl",
            "a-piece-1-of-2.stl",
            &format!("{cut}-piece-1-of-2.stl"),
            &format!("{cut}-piece-2-of-2.stl"),
        ]
    );
}

/// A run may be called as the design's plot is: its drawing and the plot must not be one name.
#[test]
fn plots_and_drawings_keep_names_of_their_own() {
    let mesh = quarter_bend(32.0, 8.0, 6.0, 8, 3);
    let runs = [in_one_piece("Puffin loss", &mesh, vec![(Kind::Drawing, b"drawing".to_vec())])];
    let plots = [(Kind::LossPlot, b"loss".to_vec()), (Kind::MarginsPlot, b"margins".to_vec())];
    let files = unpack(&export::zip(&DesignTold { title: "Puffin", ..PUFFIN }, &runs, &plots));
    let of = |bytes: &[u8]| files.iter().find(|file| file.1 == bytes).map(|(name, _)| name.as_str());
    assert_eq!(
        [of(b"drawing"), of(b"loss"), of(b"margins")],
        [Some("Puffin loss.svg"), Some("Puffin loss-2.svg"), Some("Puffin margins.svg")]
    );
}

#[test]
fn a_3mf_says_what_it_is_printed_in() {
    let mesh = quarter_bend(32.0, 8.0, 6.0, 8, 3);
    let runs = [NamedMesh { name: "a", mesh: &mesh }, NamedMesh { name: "b", mesh: &mesh }];
    let meta = Meta { material: Some("resin <clear>"), ..Meta::default() };
    let text = model(&export::three_mf(&runs, &meta));
    let document = roxmltree::Document::parse(&text).unwrap();
    let tagged = |tag: &'static str| document.descendants().filter(move |node| node.has_tag_name((CORE, tag)));
    let list = tagged("basematerials").next().expect("a list of materials");
    let bases: Vec<_> = tagged("base").map(|base| base.attribute("name")).collect();
    assert_eq!(bases, [Some("resin <clear>")]);
    assert!(tagged("base").all(|base| base.attribute("displaycolor").is_some_and(|colour| colour.len() == 9)));
    for object in tagged("object") {
        assert_eq!((object.attribute("pid"), object.attribute("pindex")), (list.attribute("id"), Some("0")));
        assert_ne!(object.attribute("id"), list.attribute("id"));
    }
}

/// A design whose words would be markup, from each kind of file that holds one.
#[test]
fn files_that_hold_the_design_open_again_as_it() {
    let example = include_str!("../document/example-canonical.json").replace("Puffin", "Puffin <&\\\"> шланг");
    let text = engine::normalise(&example).expect("a design");
    let request = |kind: &str| serde_json::json!({ "kind": kind, "deviation": 0.3 }).to_string();
    for kind in ["3mf", "all", "design"] {
        let bytes = engine::export_file(&text, &request(kind)).expect("a file");
        assert_eq!(engine::design_in(&bytes).as_ref(), Ok(&text), "{kind}");
    }
    let one = engine::export_file(&text, r#"{ "kind": "3mf", "run": "pump to block", "deviation": 0.3 }"#).unwrap();
    assert_eq!(engine::design_in(&one).as_ref(), Ok(&text));
    let stl = engine::export_file(&text, r#"{ "kind": "stl", "run": "pump to block", "deviation": 0.3 }"#).unwrap();
    assert!(engine::design_in(&stl).unwrap_err().message.contains("STL holds triangles alone"));
}

#[test]
fn files_without_a_design_are_refused_in_words() {
    let mesh = quarter_bend(32.0, 8.0, 6.0, 8, 3);
    let bare = export::three_mf(&[NamedMesh { name: "a", mesh: &mesh }], &Meta::default());
    let whole = export::zip(&DesignTold { text: "{ \"format\": \"other\" }", ..PUFFIN }, &[], &[]);
    for (bytes, words) in [
        (&bare[..], "holds no design"),
        (&whole[..], "holds no design"),
        (&bare[..bare.len() / 2], "damaged"),
        (&b"PK\x05\x06"[..], "damaged"),
        (&[0xff, 0xfe, 0x00][..], "neither text nor an archive"),
        (&[][..], "is empty"),
    ] {
        let refusal = engine::design_in(bytes).expect_err("no design");
        assert!(refusal.message.contains(words), "{words}: {}", refusal.message);
        assert_eq!(refusal.path, "");
    }
}

/// Half a gigabyte of nothing packs into half a megabyte: it is not unpacked.
#[test]
fn an_archive_that_swells_is_not_unpacked() {
    let mut writer = zip::ZipWriter::new(Cursor::new(Vec::new()));
    let options = zip::write::SimpleFileOptions::default();
    writer.start_file(DESIGN_PART, options).unwrap();
    for _ in 0..64 {
        std::io::Write::write_all(&mut writer, &vec![b' '; 1 << 20]).unwrap();
    }
    let bytes = writer.finish().unwrap().into_inner();
    assert!(bytes.len() < 1 << 20);
    assert!(engine::design_in(&bytes).unwrap_err().message.contains("16 MiB"));
}
