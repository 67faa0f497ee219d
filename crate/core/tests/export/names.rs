//! File names: the rules of every file system, held against names that people and programs come up with.

use std::collections::HashSet;
use tubewright_core::export::{file_stem, unique_stems};

/// What Windows, macOS, Linux and a zip reader together ask of one path component.
fn is_safe(stem: &str) -> bool {
    let device = ["con", "prn", "aux", "nul", "com1", "com9", "lpt1", "lpt9", "com¹"];
    !stem.is_empty()
        && stem.len() <= 80
        && !stem.chars().any(|c| c.is_control() || "/\\:*?\"<>|".contains(c))
        && !stem.chars().any(|c| ('\u{202a}'..='\u{202e}').contains(&c) || ('\u{2066}'..='\u{2069}').contains(&c))
        && !stem.starts_with(['.', ' ', '-'])
        && !stem.ends_with(['.', ' '])
        && !device.contains(&stem.split('.').next().unwrap_or_default().trim().to_lowercase().as_str())
}

#[test]
fn plain_names_stay_as_they_are() {
    for name in [
        "pump to block",
        "Run 3",
        "größte Länge",
        "насос",
        "泵到水冷头",
        "पंप",
        "مضخة",
        "a_b.c",
        "1/2 in".replace('/', "-").as_str(),
    ] {
        assert_eq!(file_stem(name), name);
    }
}

#[test]
fn what_a_system_forbids_is_replaced() {
    for (name, stem) in [
        ("", "unnamed"),
        ("   ", "unnamed"),
        ("...", "unnamed"),
        ("///", "unnamed"),
        ("\u{202e}\u{200f}", "unnamed"),
        ("a/b\\c:d", "a-b-c-d"),
        ("../../x", "x"),
        ("-rf", "rf"),
        (".hidden", "hidden"),
        ("dot. ", "dot"),
        ("tab\tand\nline", "tab and line"),
        ("null\0byte", "nullbyte"),
        ("gpj\u{202e}exe", "gpjexe"),
        ("CON", "_CON"),
        ("con.tube", "_con.tube"),
        ("NUL .x", "_NUL .x"),
        ("Com7", "_Com7"),
        ("LPT²", "_LPT²"),
        ("com10", "com10"),
        ("console", "console"),
        ("<b>bold</b>", "b-bold-b"),
    ] {
        assert_eq!(file_stem(name), stem, "{name:?}");
        assert!(is_safe(&file_stem(name)), "{name:?}");
    }
}

#[test]
fn long_names_are_cut_between_characters() {
    for sign in ["x", "ü", "泵", "🧪", "x ", "x."] {
        for lead in 0..4 {
            let stem = file_stem(&("y".repeat(lead) + &sign.repeat(100)));
            assert!(is_safe(&stem) && stem.len() > 75, "{stem}");
        }
    }
    assert_eq!(file_stem(&format!("con.{}", "x".repeat(100))).len(), 80);
}

#[test]
fn the_stem_of_a_stem_is_itself_and_any_character_is_safe() {
    for code in 0..=0x10_ffff {
        let Some(c) = char::from_u32(code) else { continue };
        let name: String = ['a', c, 'b'].iter().collect();
        let stem = file_stem(&name);
        assert!(is_safe(&stem) && file_stem(&stem) == stem, "{code:x}");
        let alone = file_stem(&c.to_string());
        assert!(is_safe(&alone) && file_stem(&alone) == alone, "{code:x}");
        if c.is_alphabetic() && !matches!(code, 0x115f..=0x1160 | 0x3164 | 0xffa0) {
            assert_eq!(stem, name, "letters of every script are kept: {code:x}");
        }
    }
}

#[test]
fn stems_differ_even_where_case_does_not_count() {
    let long = "z".repeat(90);
    let names =
        ["a", "A", "a-2", "a", "straße", "STRASSE", "ΣΑΣ", "σας", "", "unnamed", "nul", "NUL", &long, &long, &long];
    let stems = unique_stems(names);
    assert_eq!(stems[..4], ["a", "A-2", "a-2-2", "a-3"]);
    assert_eq!(stems[8..12], ["unnamed", "unnamed-2", "_nul", "_NUL-2"]);
    assert_eq!(stems.iter().map(|stem| stem.to_uppercase()).collect::<HashSet<_>>().len(), names.len(), "{stems:?}");
    assert!(stems.iter().all(|stem| is_safe(stem)), "{stems:?}");
    assert!(stems[13].ends_with("zz-2") && stems[14].ends_with("zz-3"));
}
