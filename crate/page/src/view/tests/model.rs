//! What the preview keeps, and when it draws anew.

use crate::view::camera::Side;
use crate::view::model::Model;

fn scene(height: f64) -> String {
    format!(
        r#"{{ "ports": [], "collars": [], "keep_outs": [ {{ "name": "k", "box": {{ "min": [0, 0, 0], "max": [9, 9, 9] }} }} ],
        "runs": [ {{ "name": "one", "made": true, "outer_diameter": 12, "bore": 8, "centreline": [[0, 0, 0], [0, 0, {height}]] }},
                  {{ "name": "two", "made": true, "outer_diameter": 12, "bore": 8, "centreline": [[50, 0, 0], [50, 0, 90]] }} ],
        "bounds": {{ "min": [0, 0, 0], "max": [1, 1, 1] }} }}"#
    )
}

fn model() -> Model {
    let mut model = Model::new();
    model.resize(600.0, 400.0, 1.0);
    model.set_scene(&scene(90.0)).unwrap();
    for run in ["one", "two"] {
        model.set_tube(run, vec![0.0, 0.0, 0.0, 1.0, 0.0, 0.0, 0.0, 1.0, 0.0], vec![0, 1, 2]).unwrap();
    }
    model.dirty = false;
    model
}

#[test]
fn what_changes_nothing_draws_nothing() {
    let mut model = model();
    model.select(None);
    model.resize(600.0, 400.0, 1.0);
    model.drop_tube("nobody");
    assert!(!model.dirty);
    model.select(Some("one".into()));
    assert!(model.dirty);
}

#[test]
fn a_refused_scene_or_mesh_leaves_the_earlier_one() {
    let mut model = model();
    let before = (model.scene.clone(), model.camera.clone(), model.tubes["one"].stamp);
    for text in ["", "[]", "{", r#"{ "runs": 7 }"#, r#"{ "runs": [ { "name": "x" } ] }"#, "null"] {
        assert!(model.set_scene(text).is_err(), "{text}");
    }
    let far = scene(1e308);
    assert!(model.set_scene(&far).unwrap_err().contains("cannot be drawn"));
    assert!(model.set_tube("one", vec![0.0], vec![]).is_err());
    assert!(!model.dirty);
    assert_eq!((model.scene.clone(), model.camera.clone(), model.tubes["one"].stamp), before);
}

#[test]
fn only_the_run_that_changed_is_brought_anew() {
    let mut model = model();
    let stamps = (model.tubes["one"].stamp, model.tubes["two"].stamp);
    model.set_scene(&scene(95.0)).unwrap();
    assert_ne!(model.tubes["one"].stamp, stamps.0);
    assert_eq!(model.tubes["two"].stamp, stamps.1);
}

#[test]
fn tubes_go_with_their_run_and_hide_while_it_cannot_be_made() {
    let mut model = model();
    model.set_scene(&scene(90.0).replacen(r#""made": true"#, r#""made": false"#, 1)).unwrap();
    assert_eq!(model.drawn().map(|(name, _)| name.as_str()).collect::<Vec<_>>(), ["two"]);
    assert_eq!(model.traced().map(|run| run.name.as_str()).collect::<Vec<_>>(), ["one"]);
    model.set_scene(&scene(90.0)).unwrap();
    assert_eq!(model.drawn().count(), 2);
    model.set_scene("{}").unwrap();
    assert!(model.tubes.is_empty());
}

#[test]
fn a_small_edit_leaves_the_eye_alone_and_a_large_one_moves_it() {
    let mut model = model();
    let start = model.camera.clone();
    model.set_scene(&scene(92.0)).unwrap();
    assert_eq!(model.camera, start);
    model.set_scene(&scene(400.0)).unwrap();
    assert_ne!(model.camera, start);
}

#[test]
fn a_handle_that_is_dragged_keeps_the_picture_where_it_is() {
    let mut model = model();
    let before = model.camera.clone();
    model.hold(Some([0.0, 0.0, 90.0]), true);
    model.set_scene(&scene(400.0)).unwrap();
    assert_eq!(model.camera, before);
    model.hold(Some([0.0, 0.0, 400.0]), false);
    model.set_scene(&scene(410.0)).unwrap();
    assert_ne!(model.camera, before, "once it is let go the picture follows again");
    model.dirty = false;
    model.hold(Some([0.0, 0.0, 400.0]), false);
    assert!(!model.dirty, "a mark that stays where it is draws nothing");
    model.hold(None, false);
    assert!(model.dirty);
}

#[test]
fn an_eye_moved_by_hand_stays_until_the_next_fit() {
    let mut model = model();
    model.zoom(2.0, 0.1, 0.9);
    let placed = model.camera.clone();
    model.set_scene(&scene(400.0)).unwrap();
    assert_eq!(model.camera, placed);
    model.resize(300.0, 300.0, 2.0);
    assert_eq!((model.camera.scale(), model.camera.focus()), (placed.scale(), placed.focus()));
    model.look(Side::Front);
    assert_ne!(model.camera.scale(), placed.scale());
}

#[test]
fn clearing_keeps_theme_and_size_only() {
    let mut model = model();
    model.section = true;
    model.pan(40.0, 40.0);
    let stamp = model.scene_stamp;
    model.clear();
    assert!(model.dirty && model.tubes.is_empty() && model.scene.runs.is_empty() && model.section);
    assert_eq!(model.camera.size(), (600.0, 400.0));
    assert_ne!(model.scene_stamp, stamp, "what is on the graphics card is of the old scene");
}

#[test]
fn the_picture_is_told_in_words() {
    let mut model = model();
    model.select(Some("two".into()));
    let words = model.description();
    assert_eq!(words, "Preview of 2 tubes (1 one, 2 two), 1 keep-out. Selected: two. Squares of 10 mm.");
    model.set_scene(&scene(90.0).replacen(r#""made": true"#, r#""made": false"#, 1)).unwrap();
    model.section = true;
    assert!(model.description().contains("1 tube (2 two)"));
    assert!(model.description().contains("Not made, shown as a dashed line: one."));
    assert!(model.description().contains("cut open"));
    model.clear();
    assert!(model.description().contains("empty design"));
}
