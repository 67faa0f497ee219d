//! A text as a QR code (ISO/IEC 18004:2015), for a camera to read off the page.

use core::fmt::Write as _;
use qrcodegen::{QrCode, QrCodeEcc};
use serde_json::json;

/// The code of a text as JSON text: `{ "size": modules along a side, "path": the dark modules }`, the path in SVG's own
/// words, one unit a module, the code's corner at 0. It corrects as many errors as its size has room for; `size` is null
/// where the text is longer than the largest code holds (2,953 bytes).
pub fn code_of(text: &str) -> String {
    let levels = [QrCodeEcc::Medium, QrCodeEcc::Low];
    match levels.into_iter().find_map(|level| QrCode::encode_text(text, level).ok()) {
        Some(code) => json!({ "size": code.size(), "path": path(&code) }).to_string(),
        None => json!({ "size": null, "path": null }).to_string(),
    }
}

/// Rows of dark modules that touch, each as one rectangle.
fn path(code: &QrCode) -> String {
    let mut path = String::new();
    for y in 0..code.size() {
        let mut x = 0;
        while x < code.size() {
            let long = (x..code.size()).take_while(|x| code.get_module(*x, y)).count() as i32;
            if long > 0 {
                let _ = write!(path, "M{x} {y}h{long}v1h-{long}z");
            }
            x += long + 1;
        }
    }
    path
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::Value;

    fn told(text: &str) -> Value {
        serde_json::from_str(&code_of(text)).unwrap()
    }

    /// ISO/IEC 18004, table 7: version 1 has 21 modules a side, version 40 has 177 and holds 2,953 bytes at level L; a
    /// finder pattern begins with seven dark modules.
    #[test]
    fn sizes_and_limits_are_the_standards() {
        let small = told("TUBE 12");
        assert_eq!(small["size"], 21);
        assert!(small["path"].as_str().unwrap().starts_with("M0 0h7v1h-7z"), "{small}");
        assert_eq!(told(&"a".repeat(2_953))["size"], 177);
        assert_eq!(told(&"a".repeat(2_954))["size"], Value::Null);
    }
}
