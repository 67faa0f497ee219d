//! The usual port thread. Source: ISO 228-1, G 1/4, basic sizes; the 55 degree Whitworth profile's h = 0.640327 P.

use crate::scene::{close, number};
use tubewright_core::engine;

#[test]
fn the_port_thread_is_that_of_iso_228_1() {
    let presets: serde_json::Value = serde_json::from_str(&engine::presets()).expect("JSON");
    let thread = &presets["threads"][0];
    assert_eq!(thread["label"], "G 1/4");
    let [major, pitch_diameter, minor] =
        ["major_diameter", "pitch_diameter", "minor_diameter"].map(|key| number(&thread[key]));
    assert_eq!([major, pitch_diameter, minor], [13.157, 12.301, 11.445]);
    let pitch = number(&thread["pitch"]);
    close(pitch, 25.4 / 19.0, 5e-4);
    let height = 0.640_327 * 25.4 / 19.0;
    close(major - height, pitch_diameter, 5e-4);
    close(major - 2.0 * height, minor, 1e-3);
}
