//! The plots' words and dangers: names and numbers in them, what a page's strict policy blocks, what no axis can place.

use crate::plots_support::{class, every_picture, loss, margins, number, stiffness, words};
use proptest::prelude::*;
use roxmltree::{Document, Node};
use std::collections::BTreeSet;
use tubewright_core::plot::*;

const FRAME: Frame<'static> = Frame { prefix: "t", width: 720 };

#[test]
fn nothing_is_in_a_picture_that_a_strict_page_or_another_picture_minds() {
    for width in [320, 720] {
        for svg in every_picture(&Frame { prefix: "a-1", width }) {
            let document = Document::parse(&svg).expect("XML");
            let root = document.root_element();
            let [_, _, wide, high] = root.attribute("viewBox").expect("a view box").split(' ').collect::<Vec<_>>()[..]
            else {
                panic!("four numbers")
            };
            assert_eq!([root.attribute("width"), root.attribute("height")], [Some(wide), Some(high)]);
            assert_eq!((wide, root.attribute("role")), (&*width.to_string(), Some("img")));
            let mut ids = BTreeSet::new();
            for node in document.descendants().filter(Node::is_element) {
                let allowed = [
                    "svg", "title", "desc", "defs", "pattern", "path", "g", "text", "rect", "circle", "polyline",
                    "polygon",
                ];
                assert!(allowed.contains(&node.tag_name().name()), "{node:?}");
                for attribute in node.attributes() {
                    let (name, value) = (attribute.name(), attribute.value());
                    assert!(name != "style" && name != "href" && !name.starts_with("on"), "{name}");
                    if ["fill", "stroke", "color"].contains(&name) {
                        assert!(["none", "currentColor"].contains(&value) || value.starts_with("url(#a-1-"), "{value}");
                    }
                    if name == "id" {
                        assert!(value.starts_with("a-1-") && ids.insert(value), "{value}");
                    }
                }
                if node.has_tag_name("text") {
                    assert!(number(node, "font-size") >= 12.0);
                }
            }
            let asked = document
                .descendants()
                .flat_map(|node| node.attributes())
                .filter_map(|attribute| attribute.value().strip_prefix("url(#").map(|rest| rest.trim_end_matches(')')));
            asked.for_each(|id| assert!(ids.contains(id), "{id}"));
            for name in ["aria-labelledby", "aria-describedby"] {
                assert!(ids.contains(root.attribute(name).expect("a name")), "{name}");
            }
        }
    }
}

#[test]
fn the_text_alternative_has_every_number_and_is_in_the_picture() {
    let told = loss([300.0, 20.0]).text_alternative();
    // 0.9 x^2 of 20 kPa at tenths of 300 L/h, the other curves, the ranges; worked by hand to four digits.
    for number in [
        "33.33", "0.2222", "66.67", "0.8889", "8", "266.7", "14.22", "18", "187.5", "7.5", "150", "225", "5", "10",
        "75",
    ] {
        assert!(
            told.split(|c: char| !c.is_ascii_digit() && c != '.').any(|one| one.trim_end_matches('.') == number),
            "{number}"
        );
    }
    assert!(told.contains("Stated flow: 75 L/h") && told.contains("Operating point: 187.5 L/h at 7.5 kPa"));
    let of_margins = margins().text_alternative();
    for words in [
        "23 % (10 % to 30 %)",
        "82 %, may be over (60 % to 108 %)",
        "OVER 125 %",
        "OVER 3700 %",
        "0.36 of 1.6 MPa",
        "2 of 5",
    ] {
        assert!(of_margins.contains(words), "{words}: {of_margins}");
    }
    let close = MarginRow { used: 0.999, ..MarginRow::default() };
    assert!(MarginsPlot { rows: vec![close], ..margins() }.text_alternative().contains("99.9 %"));
    let of_stiffness = stiffness().text_alternative();
    for words in [
        "21 °C",
        "45 °C",
        "62 °C",
        "58.5 °C",
        "71 °C",
        "64.5 °C",
        "79 °C",
        "101 °C",
        "“fault” OVER by 3.5 °C",
        "“working” 13.5 °C in reserve",
    ] {
        assert!(of_stiffness.contains(words), "{words}: {of_stiffness}");
    }
    for (svg, told) in every_picture(&FRAME).iter().zip([told, of_margins, of_stiffness]) {
        let document = Document::parse(svg).expect("XML");
        let desc = document.descendants().find(|node| node.has_tag_name("desc")).expect("a description");
        assert_eq!(desc.text(), Some(&*told));
    }
}

#[test]
fn hostile_names_are_words_and_nothing_else() {
    let names = [
        "<script>alert(\"1\" & '2')</script>",
        "]]>&amp;<!--",
        "\u{202E}gnp\u{202C}",
        "a\u{0}b\nc\u{FFFF}",
        "שם הצינור",
        "",
        "\u{1F600}",
    ];
    let long = "W&\"<".repeat(2_500);
    for name in names.into_iter().chain([&*long]) {
        let named = || name.to_owned();
        let row = MarginRow { label: named(), used: 0.5, range: None, text: named() };
        let curve = LoopCurve { label: named(), points: vec![[1.0, 2.0]], band: Vec::new() };
        let material = MaterialRow { label: named(), allowed: Some(50.0), marks: Vec::new() };
        let warm = Temperature { label: named(), celsius: 60.0 };
        for width in [320, 900] {
            let frame = Frame { prefix: "t", width };
            let pictures = [
                MarginsPlot { title: named(), rows: vec![row.clone()] }.svg(&frame),
                LossPlot { title: named(), loops: vec![curve.clone()], ..LossPlot::default() }.svg(&frame),
                StiffnessPlot { title: named(), materials: vec![material.clone()], temperatures: vec![warm.clone()] }
                    .svg(&frame),
            ];
            for svg in pictures.map(|svg| svg.expect("a picture")) {
                assert!(svg.len() < 12_000, "{} bytes", svg.len());
                let document = Document::parse(&svg).expect("XML");
                assert!(!document.descendants().any(|node| node.has_tag_name("script")));
                let title = document.descendants().find(|node| node.has_tag_name("title")).and_then(|node| node.text());
                let title = title.unwrap_or("");
                if name == long {
                    assert!(title.ends_with('…') && title.chars().count() == 120);
                    assert!(
                        words(document.root_element())
                            .iter()
                            .any(|line| line.ends_with('…') && line.starts_with("W&\"<W"))
                    );
                } else if name.chars().all(|c| !c.is_control() && !('\u{202A}'..='\u{202E}').contains(&c)) {
                    assert_eq!(title, name);
                }
                assert!(!svg.contains(|c| ('\u{202A}'..='\u{202E}').contains(&c) || c == '\u{FFFF}' || c == '\u{0}'));
            }
        }
    }
}

#[test]
fn what_cannot_be_drawn_is_refused() {
    let of_loss = |change: fn(&mut LossPlot)| {
        let mut plot = loss([300.0, 20.0]);
        change(&mut plot);
        plot.svg(&FRAME)
    };
    let number = |what| Err(PlotError::Number { what });
    assert_eq!(of_loss(|plot| plot.loops[0].points[3][1] = f64::NAN), number("a point of a loop curve"));
    assert_eq!(of_loss(|plot| plot.stated_flow = Some(f64::INFINITY)), number("the stated flow"));
    assert_eq!(of_loss(|plot| plot.stated_flow = Some(-1.0)), Err(PlotError::Negative { what: "the stated flow" }));
    assert_eq!(
        of_loss(|plot| plot.loops[0].band[2] = [1.0, 3.0, 2.0]),
        Err(PlotError::Reversed { what: "a band of a loop curve" })
    );
    assert_eq!(
        of_loss(|plot| plot.loops = vec![LoopCurve::default(); 11]),
        Err(PlotError::TooMany { what: "loop curves", most: 10 })
    );
    let rows = vec![MarginRow::default(); 201];
    assert_eq!(MarginsPlot { rows, ..margins() }.svg(&FRAME), Err(PlotError::TooMany { what: "margins", most: 200 }));
    let mut hot = stiffness();
    hot.materials[0].allowed = Some(1e300);
    assert_eq!(hot.svg(&FRAME), number("an allowed temperature"));
    for prefix in ["", "1", "a b", "a\"", "é", &"a".repeat(65)] {
        assert_eq!(margins().svg(&Frame { prefix, width: 700 }), Err(PlotError::Prefix), "{prefix}");
    }
    // Sixty rows and more are no trouble.
    let rows = vec![margins().rows[0].clone(); 200];
    assert!(MarginsPlot { rows, ..margins() }.svg(&FRAME).is_ok_and(|svg| svg.len() < 300_000));
}

/// Found by the property below: a span of 2e-308 made a scale whose steps were endless.
#[test]
fn a_span_of_next_to_nothing_still_has_a_scale() {
    for [low, high] in [[0.0, f64::MIN_POSITIVE], [0.0, 1e-11], [1e12, 1e12], [-1e-10, 0.0], [55.0, 55.0 + 1e-13]] {
        let temperatures = [low, high].map(|celsius| Temperature { label: "when".into(), celsius }).to_vec();
        let plot = StiffnessPlot { temperatures, ..stiffness() };
        let alone = StiffnessPlot { materials: Vec::new(), ..plot.clone() };
        let curve =
            LoopCurve { label: "l".into(), points: vec![[low.abs(), low], [high.abs(), high]], band: Vec::new() };
        let of_loss = LossPlot { loops: vec![curve], ..LossPlot::default() };
        for svg in [plot.svg(&FRAME), alone.svg(&FRAME), of_loss.svg(&FRAME)] {
            let svg = svg.expect("a picture");
            let document = Document::parse(&svg).expect("XML");
            let told = words(class(&document, "plot-axes")[0]);
            assert!((2..=20).contains(&told.len()), "{low} to {high}: {told:?}");
        }
    }
}

/// Numbers where arithmetic is in danger.
fn dangerous() -> impl Strategy<Value = f64> {
    let edges =
        vec![0.0, -0.0, 1.0, 1.0 + 1e-12, 1e12, -1e12, 1e13, 1e-300, f64::MIN_POSITIVE, f64::NAN, f64::INFINITY, -1e-9];
    prop_oneof![3 => prop::sample::select(edges), 2 => -10.0..1000.0_f64, 1 => any::<f64>()]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    /// Any numbers give a picture of bounded size without a NaN in it, the same twice, or a refusal; those that are
    /// neither below zero nor beyond all measure always a picture.
    #[test]
    fn any_numbers_are_drawn_or_refused(mut values in prop::collection::vec(dangerous(), 0..12), width in 0_u32..5_000, tame in any::<bool>()) {
        if tame {
            values.iter_mut().for_each(|value| *value = if value.is_finite() { value.abs().min(1e12) } else { 1.0 });
            values.sort_by(f64::total_cmp);
            values.truncate(6);
        }
        let frame = Frame { prefix: "t", width };
        let at = |place: usize| values.get(place).copied();
        let pairs: Vec<[f64; 2]> = values.chunks_exact(2).map(|pair| [pair[0], pair[1]]).collect();
        let band = values.chunks_exact(3).map(|three| [three[0], three[1], three[2]]).collect();
        let operating = at(1).map(|flow| OperatingPoint { flow, pressure: at(2).unwrap_or(0.0), flow_range: pairs.first().copied(), pressure_range: None });
        let of_loss = LossPlot {
            loops: vec![LoopCurve { label: "l".into(), points: pairs.clone(), band }],
            pump: Some(PumpCurve { label: "p".into(), points: pairs.iter().rev().copied().collect() }),
            operating, stated_flow: at(0), title: "t".into(),
        };
        let rows = values.iter().map(|used| MarginRow { label: "m".into(), used: *used, range: pairs.first().copied(), text: "x".into() }).collect();
        let of_margins = MarginsPlot { title: "t".into(), rows };
        let of_stiffness = StiffnessPlot {
            title: "t".into(),
            materials: pairs.iter().map(|[allowed, mark]| MaterialRow { label: "m".into(), allowed: Some(*allowed), marks: vec![Mark { kind: MarkKind::Glass, temperature: *mark }] }).collect(),
            temperatures: values.iter().take(7).map(|celsius| Temperature { label: "when".into(), celsius: *celsius }).collect(),
        };
        let told = [of_loss.text_alternative(), of_margins.text_alternative(), of_stiffness.text_alternative()];
        prop_assert!(told.iter().all(|told| told.len() < 10_000));
        let draw = || [of_loss.svg(&frame), of_margins.svg(&frame), of_stiffness.svg(&frame)];
        let drawn = draw();
        prop_assert_eq!(&drawn, &draw());
        prop_assert!(!tame || drawn.iter().all(Result::is_ok), "{:?}", drawn);
        for svg in drawn.into_iter().flatten() {
            prop_assert!(svg.len() < 60_000);
            let document = Document::parse(&svg);
            prop_assert!(document.is_ok());
            prop_assert!(!svg.contains("NaN") && !svg.contains("inf"), "{}", svg);
            prop_assert!(class(&document?, "plot-axes").len() == 1);
        }
    }
}
