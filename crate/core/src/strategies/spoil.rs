//! A design spoiled: edited where nobody would, cut off, or filled with numbers from the edge of arithmetic.

use super::Chance;
use serde_json::{Value, json};

/// `text` with one to three things wrong, or odd, about it. What comes out may be a design still, JSON that is none, or
/// no JSON at all.
pub fn spoiled(text: &str, chance: &mut Chance) -> String {
    let Ok(mut document) = serde_json::from_str::<Value>(text) else { return cut(text, chance) };
    for _ in 0..chance.whole(1, 3) {
        let places = pointers(&document, String::new());
        let place = &places[chance.whole(0, places.len() - 1)];
        let other = document.pointer(&places[chance.whole(0, places.len() - 1)]).cloned().unwrap_or_default();
        if let Some(node) = document.pointer_mut(place) {
            spoil(node, other, chance);
        }
    }
    let text = document.to_string();
    if chance.once_in(6) { cut(&text, chance) } else { text }
}

fn spoil(node: &mut Value, other: Value, chance: &mut Chance) {
    match node {
        Value::Number(number) if !chance.once_in(4) => {
            let x = number.as_f64().unwrap_or_default();
            *node = json!(match chance.whole(0, 9) {
                0 => -x,
                1 => x * 10.0,
                2 => x / 1e3,
                3 => x + 1e-9,
                4 => f64::from_bits(x.to_bits() ^ 1),
                5 => chance.pick(&[0.0, -0.0, 1e-300, 5e-324]),
                6 => chance.pick(&[1e6, -1e6, 1e308, 1e15, 4_294_967_296.0]),
                7 => libm::round(x),
                _ => x * chance.from(0.5, 2.0),
            });
        }
        Value::Array(items) if !chance.once_in(4) && !items.is_empty() => {
            let at = chance.whole(0, items.len() - 1);
            match chance.whole(0, 3) {
                0 => drop(items.remove(at)),
                1 => items.insert(at, items[at].clone()),
                2 => items.insert(at, other),
                _ => items.reverse(),
            }
        }
        Value::Object(keys) if !chance.once_in(4) && !keys.is_empty() => {
            let key = keys.keys().nth(chance.whole(0, keys.len() - 1)).cloned().unwrap_or_default();
            match chance.whole(0, 3) {
                0 => drop(keys.remove(&key)),
                1 => drop(keys.insert(key, other)),
                2 => drop(keys.insert(odd_text(chance), other)),
                _ => {
                    let value = keys.remove(&key).unwrap_or_default();
                    keys.insert(format!("{key} "), value);
                }
            }
        }
        _ => {
            *node = match chance.whole(0, 6) {
                0 => Value::Null,
                1 => json!(chance.once_in(2)),
                2 => json!([]),
                3 => json!({}),
                4 => json!(odd_text(chance)),
                5 => json!(chance.from(-1e3, 1e3)),
                _ => other,
            };
        }
    }
}

/// Texts that names should not be, or that mean something elsewhere.
fn odd_text(chance: &mut Chance) -> String {
    let texts = [
        "",
        " ",
        "..",
        "a/b\\c",
        "NUL",
        "\u{0}",
        "\u{202e}gpj",
        "<b>&amp;</b>",
        "~1~0/",
        "null",
        "__proto__",
        "A",
        "B",
        "F",
        "\u{1f9ea}\u{fe0f}",
        "e\u{301}",
        "\"\\\"",
    ];
    let text = chance.pick(&texts);
    if chance.once_in(8) { text.repeat(100) } else { text.to_owned() }
}

/// `text` without its end, without its start, or with a bite taken out.
fn cut(text: &str, chance: &mut Chance) -> String {
    let place = |chance: &mut Chance| {
        let at = chance.whole(0, text.len());
        (at..=text.len()).find(|&at| text.is_char_boundary(at)).unwrap_or(text.len())
    };
    let (a, b) = (place(chance), place(chance));
    match chance.whole(0, 2) {
        0 => text[..a].to_owned(),
        1 => text[a..].to_owned(),
        _ => format!("{}{}", &text[..a.min(b)], &text[a.max(b)..]),
    }
}

/// JSON Pointers (RFC 6901) to every value in `value`.
fn pointers(value: &Value, at: String) -> Vec<String> {
    let mut found = vec![at.clone()];
    match value {
        Value::Array(items) => {
            for (index, item) in items.iter().enumerate() {
                found.extend(pointers(item, format!("{at}/{index}")));
            }
        }
        Value::Object(keys) => {
            for (key, item) in keys {
                found.extend(pointers(item, format!("{at}/{}", key.replace('~', "~0").replace('/', "~1"))));
            }
        }
        _ => {}
    }
    found
}
