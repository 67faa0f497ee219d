//! The plots read back by an XML reader: every place held to the data by the ticks' own numbers.

use crate::plots_support::{class, lines, loss, margins, number, points, stiffness, words};
use roxmltree::{Document, Node};
use tubewright_core::plot::*;

/// One axis as a reader sees it: every number beside a tick with the tick's place along `along` (0 across, 1 down).
fn ticks(document: &Document, along: usize) -> Vec<[f64; 2]> {
    let [axes] = class(document, "plot-axes")[..] else { panic!("one pair of axes") };
    let anchor = ["middle", "end"][along];
    let marks: Vec<f64> = lines(axes)
        .into_iter()
        .filter(|line| line.len() == 2 && line[0][along] == line[1][along])
        .filter(|line| ((line[0][1 - along] - line[1][1 - along]).abs() - 4.0).abs() < 1e-6)
        .map(|line| line[0][along])
        .collect();
    let labels = axes.children().filter(|node| node.attribute("text-anchor") == Some(anchor));
    let told: Vec<[f64; 2]> = labels
        .map(|label| {
            let value = label.text().expect("a number").replace('−', "-").parse().expect("a number");
            let at = number(label, ["x", "y"][along]) - [0.0, 0.36 * 13.0][along];
            let mark = marks.iter().copied().min_by(|a, b| (a - at).abs().total_cmp(&(b - at).abs())).expect("a mark");
            assert!((mark - at).abs() < 0.1, "number {value} at {at}, its tick at {mark}");
            [value, mark]
        })
        .collect();
    assert!(told.len() >= 2 && told.len() <= 12, "{} ticks", told.len());
    let step = told[1][0] - told[0][0];
    let digit = step / libm::pow(10.0, libm::floor(libm::log10(step) + 1e-9));
    assert!([1.0, 2.0, 5.0].iter().any(|good| (digit - good).abs() < 1e-6), "step {step}");
    told
}

/// From value to place, by the outermost ticks; all others must agree.
fn scale(document: &Document, along: usize) -> impl Fn(f64) -> f64 {
    let ticks = ticks(document, along);
    let ([a, at_a], [b, at_b]) = (ticks[0], ticks[ticks.len() - 1]);
    let place = move |value: f64| at_a + (value - a) / (b - a) * (at_b - at_a);
    for [value, at] in ticks {
        assert!((place(value) - at).abs() < 0.05, "tick {value} at {at}, by the others at {}", place(value));
    }
    place
}

fn near(a: f64, b: f64) {
    assert!((a - b).abs() < 0.05, "{a} is not {b}");
}

#[test]
fn curves_points_and_marks_stand_where_the_ticks_say() {
    for most in [[300.0, 20.0], [0.04, 0.0007], [7.0, 1300.0], [88_000.0, 640_000.0]] {
        for width in [320, 720, 1600] {
            let plot = loss(most);
            let svg = plot.svg(&Frame { prefix: "t", width }).expect("a picture");
            let document = Document::parse(&svg).expect("XML");
            let (x, y) = (scale(&document, 0), scale(&document, 1));
            let held = |drawn: &[[f64; 2]], data: &[[f64; 2]]| {
                assert_eq!(drawn.len(), data.len());
                drawn.iter().zip(data).for_each(|(at, of)| {
                    near(at[0], x(of[0]));
                    near(at[1], y(of[1]));
                });
            };
            for (group, curve) in class(&document, "plot-loop").into_iter().zip(&plot.loops) {
                held(&lines(group)[0], &curve.points);
            }
            let pump = plot.pump.as_ref().expect("a pump");
            held(&lines(class(&document, "plot-pump")[0])[0], &pump.points);
            let edges = lines(class(&document, "plot-band")[0]);
            let band = &plot.loops[0].band;
            held(&edges[0], &band.iter().map(|[flow, low, _]| [*flow, *low]).collect::<Vec<_>>());
            held(&edges[1], &band.iter().map(|[flow, _, high]| [*flow, *high]).collect::<Vec<_>>());

            let point = plot.operating.expect("a point");
            let group = class(&document, "plot-operating")[0];
            let ring = group.children().find(|node| node.has_tag_name("circle")).expect("a ring");
            held(&[[number(ring, "cx"), number(ring, "cy")]], &[[point.flow, point.pressure]]);
            let drawn = lines(group);
            near(drawn[0][0][0], x(0.0));
            near(drawn[0][2][1], y(0.0));
            let [low, high] = point.flow_range.expect("a range");
            held(&drawn[1], &[[low, point.pressure], [high, point.pressure]]);
            let [low, high] = point.pressure_range.expect("a range");
            held(&drawn[4], &[[point.flow, low], [point.flow, high]]);
            near(lines(class(&document, "plot-stated")[0])[0][0][0], x(plot.stated_flow.expect("a flow")));
        }
    }
}

#[test]
fn bars_end_at_their_share_and_what_is_over_says_so() {
    for width in [320, 900] {
        let plot = margins();
        let svg = plot.svg(&Frame { prefix: "t", width }).expect("a picture");
        let document = Document::parse(&svg).expect("XML");
        let x = scale(&document, 0);
        for line in lines(class(&document, "plot-limit")[0]) {
            near(line[0][0], x(100.0));
        }
        let groups = class(&document, "plot-row");
        assert_eq!(groups.len(), plot.rows.len());
        for (group, row) in groups.into_iter().zip(&plot.rows) {
            let rects: Vec<Node> = group.children().filter(|node| node.has_tag_name("rect")).collect();
            let ends = rects.iter().map(|rect| number(*rect, "x") + number(*rect, "width"));
            let hatched = rects.iter().any(|rect| rect.attribute("fill") == Some("url(#t-hatch-5)"));
            near(ends.fold(0.0, f64::max), x((100.0 * row.used).min(200.0)));
            let said = words(group).join(" ");
            assert_eq!(said.contains("OVER"), row.used > 1.0, "{said}");
            assert_eq!(said.contains("may be over"), row.label == "squeeze", "{said}");
            assert_eq!(hatched, row.used > 1.0);
            // Beyond the axis, an arrow.
            assert_eq!(group.children().any(|node| node.has_tag_name("polygon")), row.used > 2.0);
            if let Some([low, high]) = row.range {
                let whisker = lines(group).into_iter().find(|line| line[0][1] == line[1][1]).expect("a whisker");
                near(whisker[0][0], x(100.0 * low));
                near(whisker[1][0], x(100.0 * high));
            }
        }
    }
}

#[test]
fn tracks_marks_and_temperatures_stand_where_the_ticks_say() {
    for width in [320, 900] {
        let plot = stiffness();
        let svg = plot.svg(&Frame { prefix: "t", width }).expect("a picture");
        let document = Document::parse(&svg).expect("XML");
        let x = scale(&document, 0);
        for (group, one) in class(&document, "plot-temperature").into_iter().zip(&plot.temperatures) {
            lines(group).iter().flatten().for_each(|at| near(at[0], x(one.celsius)));
            assert_eq!(words(group), [format!("{} {} °C", one.label, one.celsius)]);
        }
        let groups = class(&document, "plot-material");
        for (group, material) in groups.iter().zip(&plot.materials) {
            let shapes: Vec<f64> = group
                .children()
                .filter(|node| node.has_tag_name("polygon"))
                .map(|node| {
                    let corners = points(node);
                    (corners.iter().map(|at| at[0]).fold(f64::MAX, f64::min)
                        + corners.iter().map(|at| at[0]).fold(0.0, f64::max))
                        / 2.0
                })
                .collect();
            assert_eq!(shapes.len(), material.marks.len());
            shapes.iter().zip(&material.marks).for_each(|(at, mark)| near(*at, x(mark.temperature)));
            if let Some(allowed) = material.allowed {
                let bar = group.children().find(|node| node.has_tag_name("rect")).expect("a track");
                near(number(bar, "x") + number(bar, "width"), x(allowed));
            }
        }
        let said = |place: usize| words(groups[place]).join(" ");
        assert!(said(0).contains("OVER at fault by 3.5 °C"), "{}", said(0));
        assert!(said(1).contains("39 °C in reserve at fault"), "{}", said(1));
        assert!(!said(2).contains("OVER") && said(2).contains("no allowed temperature known"));
    }
}
