//! How a material looks: kept as stated, drawn as its name says where nothing is, refused in its place where it is none.

use serde_json::{Value, json};
use tubewright_core::engine;

/// A design of that material and look.
fn design(name: &str, look: Option<Value>) -> String {
    let mut material = json!({"name": name, "density_g_per_cm3": 1.1});
    if let Some(look) = look {
        material["look"] = look;
    }
    json!({"format": "tubewright-design", "version": 1, "process": {"material": material}}).to_string()
}

fn normalised(text: &str) -> Value {
    serde_json::from_str(&engine::normalise(text).unwrap()).unwrap()
}

fn drawn(text: &str) -> Value {
    serde_json::from_str(&engine::scene(text).unwrap()).unwrap()
}

#[test]
fn a_stated_look_is_kept_and_reaches_the_scene() {
    for clarity in ["opaque", "translucent", "clear"] {
        let text = design("glass-like", Some(json!({"clarity": clarity, "colour": "#A0b1C2"})));
        let told = json!({"clarity": clarity, "colour": "#a0b1c2"});
        let kept = normalised(&text);
        assert_eq!(kept["process"]["material"]["look"], told);
        assert_eq!(normalised(&kept.to_string()), kept);
        assert_eq!(drawn(&text)["look"], told);
    }
}

#[test]
fn a_material_of_no_look_goes_on_saying_nothing() {
    for look in [None, Some(Value::Null)] {
        let text = design("plain", look);
        assert_eq!(normalised(&text)["process"]["material"].get("look"), None);
        assert_eq!(drawn(&text).get("look"), None);
    }
}

#[test]
fn the_clear_resin_is_clear_by_its_name_unless_it_is_said_not_to_be() {
    let by_name = r#"{"format": "tubewright-design", "version": 1, "process": {"material": "clear resin"}}"#;
    assert_eq!(drawn(by_name)["look"]["clarity"], "clear");
    // Kept by a page of before there were looks.
    assert_eq!(drawn(&design("clear resin", None))["look"]["clarity"], "clear");
    let plain = design("clear resin", Some(Value::Null));
    assert_eq!(drawn(&plain).get("look"), None);
    let kept = normalised(&plain);
    assert_eq!(kept["process"]["material"].get("look"), Some(&Value::Null));
    assert_eq!(normalised(&kept.to_string()), kept);
}

#[test]
fn what_is_no_look_is_refused_in_its_place() {
    for (look, path) in [
        (json!("clear"), "/process/material/look"),
        (json!({"clarity": "misty"}), "/process/material/look/clarity"),
        (json!({"colour": "teal"}), "/process/material/look/colour"),
        (json!({"colour": "#12345g"}), "/process/material/look/colour"),
        (json!({"colour": 7}), "/process/material/look/colour"),
        (json!({"gloss": 1}), "/process/material/look/gloss"),
    ] {
        let refused = engine::normalise(&design("glass-like", Some(look.clone()))).unwrap_err();
        assert_eq!(refused.path, path, "{look}: {}", refused.message);
        assert!(refused.message.len() > 20, "{look}: {}", refused.message);
    }
}
