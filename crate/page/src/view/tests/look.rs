//! What the tubes' material lets be seen, and in which colour.

use crate::view::look::{Clarity, on_paper};
use crate::view::model::Model;
use crate::view::scene::Scene;
use crate::view::theme::Theme;

fn scene(look: &str) -> String {
    format!(
        r#"{{ "ports": [], "collars": [], "keep_outs": [], {look} "runs": [ {{ "name": "one", "made": true,
        "outer_diameter": 12, "bore": 8, "centreline": [[0, 0, 0], [0, 0, 90]] }} ] }}"#
    )
}

fn model(clarity: Option<&str>) -> Model {
    let mut model = Model::new();
    model.resize(600.0, 400.0, 1.0);
    let look = clarity.map(|word| format!(r##""look": {{ "clarity": "{word}", "colour": "#204060" }},"##));
    model.set_scene(&scene(&look.unwrap_or_default())).unwrap();
    model
}

#[test]
fn the_coolant_shows_where_the_wall_lets_it_and_wherever_it_is_asked_for() {
    use Clarity::{Clear, Opaque, Translucent};
    let cases = [
        // Stated, cut open, chosen: how clear it is drawn, and whether the coolant shows.
        (None, false, None, (Opaque, false)),
        (None, false, Some(true), (Clear, true)),
        (None, true, Some(true), (Opaque, true)),
        (Some("opaque"), false, None, (Opaque, false)),
        (Some("opaque"), false, Some(true), (Clear, true)),
        (Some("translucent"), false, None, (Translucent, true)),
        (Some("translucent"), false, Some(false), (Translucent, false)),
        (Some("clear"), false, None, (Clear, true)),
        (Some("clear"), false, Some(false), (Clear, false)),
        (Some("clear"), true, None, (Opaque, false)),
        (Some("clear"), true, Some(true), (Opaque, true)),
    ];
    for (stated, section, chosen, (clarity, coolant)) in cases {
        let mut model = model(stated);
        (model.section, model.coolant) = (section, chosen);
        assert_eq!((model.clarity(), model.shows_coolant()), (clarity, coolant), "{stated:?} {section} {chosen:?}");
        assert_eq!(model.description().contains("coolant"), coolant, "{}", model.description());
        assert_eq!(model.description().contains("clear"), stated == Some("clear"), "{}", model.description());
    }
}

#[test]
fn a_choice_outlives_the_design_it_was_made_in() {
    let mut model = model(Some("clear"));
    model.coolant = Some(false);
    model.clear();
    assert_eq!(model.coolant, Some(false));
}

#[test]
fn any_colour_stands_out_from_the_paper_and_keeps_its_hue() {
    let bright = |[red, green, blue]: [f32; 3]| 0.2126 * red + 0.7152 * green + 0.0722 * blue;
    for theme in [Theme::light(), Theme::dark()] {
        for step in 0..=8u8 {
            let part = f32::from(step) / 8.0;
            for colour in [[part; 3], [part, 0.0, 0.0], [0.0, part, part], [1.0, part, 0.0]] {
                let drawn = on_paper(colour, theme.paper);
                assert!((0.29..=0.91).contains(&bright(drawn)), "{colour:?} became {drawn:?}");
                let order = |of: [f32; 3]| {
                    let mut axes = [0, 1, 2];
                    axes.sort_by(|a, b| of[*a].total_cmp(&of[*b]));
                    axes
                };
                assert_eq!(order(colour), order(drawn), "{colour:?} became {drawn:?}");
            }
        }
    }
    let clay = Theme::light().tube;
    assert_eq!(on_paper(clay, Theme::light().paper), clay);
}

#[test]
fn a_look_that_is_none_is_refused_with_the_scene() {
    for look in [
        r##""look": { "clarity": "misty", "colour": "#ffffff" },"##,
        r##""look": { "clarity": "clear", "colour": "white" },"##,
        r##""look": { "clarity": "clear", "colour": "#12345" },"##,
        r##""look": { "clarity": "clear", "colour": "#+12345" },"##,
    ] {
        assert!(Scene::read(&scene(look)).is_err(), "{look}");
    }
    assert_eq!(Scene::read(&scene(r#""look": null,"#)).unwrap().look, None);
}
