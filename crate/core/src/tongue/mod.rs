//! The language that files for people are written in. The engine's words are English and are their own keys: whoever asks for
//! a file may give a table from them to another language's, and what that has no row for stays English.
//!
//! What is called from each place that says something is never inlined: the page waits for the module to come.
//!
//! A row's key is a word or a template: `{0}`, `{1}` are filled by [`Tongue::say`]; named places such as `{port}` are those
//! of findings and of sentences that come ready made, which [`Tongue::tell`] finds again by their templates.

mod holes;
mod reading;
mod sentence;

use std::collections::BTreeMap;

use holes::{Part, parts};
pub(crate) use reading::read;
pub(crate) use sentence::SHIPPED;
use sentence::Sentence;

/// A language: its rows by their English, and how it writes numbers and quoted names.
#[derive(Debug, Clone)]
pub struct Tongue {
    language: String,
    decimal: char,
    quotes: [String; 2],
    rows: BTreeMap<String, String>,
    /// Rows with named places, those with the most words of their own first.
    sentences: Vec<Sentence>,
}

impl Default for Tongue {
    fn default() -> Self {
        Self::english()
    }
}

impl Tongue {
    /// English, as the engine's words stand.
    #[inline(never)]
    pub fn english() -> Self {
        Self {
            language: "en".to_owned(),
            decimal: '.',
            quotes: ["“", "”"].map(str::to_owned),
            rows: BTreeMap::new(),
            sentences: Vec::new(),
        }
    }

    /// Its tag, such as "de" (BCP 47).
    pub fn language(&self) -> &str {
        &self.language
    }

    /// A word or sentence without places.
    #[inline(never)]
    pub fn word<'w>(&'w self, english: &'w str) -> &'w str {
        self.row(english).unwrap_or(english)
    }

    /// A word that means another thing elsewhere: its key has what it is of before a colon, as "plate:none".
    #[inline(never)]
    pub fn word_of<'w>(&'w self, key: &'w str) -> &'w str {
        self.row(key).unwrap_or_else(|| key.split_once(':').map_or(key, |(_, english)| english))
    }

    /// A template with its places `{0}`, `{1}` filled in one go: a brace in what fills them is no place. Numbers are to be
    /// written by [`Tongue::number`] before.
    #[inline(never)]
    pub fn say(&self, english: &str, fill: &[&str]) -> String {
        let filled = |template: &str| {
            parts(template)
                .map(|part| match part {
                    Part::Words(words) => words,
                    Part::Hole(place) => place.parse().ok().and_then(|at: usize| fill.get(at)).copied().unwrap_or(""),
                })
                .collect()
        };
        filled(self.word(english))
    }

    /// The same, in the template's order: words, and what fills a place.
    pub(crate) fn pieces<'t, P: Clone>(
        &'t self,
        english: &'t str,
        fill: &'t [P],
        words: impl Fn(&'t str) -> P + 't,
    ) -> impl Iterator<Item = P> + 't {
        parts(self.word(english)).filter_map(move |part| match part {
            Part::Words(text) => Some(words(text)),
            Part::Hole(place) => fill.get(place.parse::<usize>().ok()?).cloned(),
        })
    }

    /// What stands before decimals.
    pub(crate) fn decimal(&self) -> char {
        self.decimal
    }

    /// A number, written as the engine does with a point before decimals and commas between thousands.
    pub fn number(&self, english: &str) -> String {
        marked(english, self.decimal)
    }

    /// A number with as many decimals.
    #[inline(never)]
    pub fn fixed(&self, value: f64, decimals: usize) -> String {
        self.number(&format!("{value:.decimals$}"))
    }

    /// A sentence of the engine that comes ready made; one that no row's template is of stays as it is.
    #[inline(never)]
    pub fn tell(&self, english: &str) -> String {
        if self.rows.is_empty() {
            return english.to_owned();
        }
        sentence::told(self, english)
    }

    /// What fills a place of a finding's template: a name, a number with its unit, or words that are a template of their own.
    /// `shipped` is whether a name there may be that of a shipped thing, which has a row.
    #[inline(never)]
    pub(crate) fn part(&self, english: &str, shipped: bool) -> String {
        if self.rows.is_empty() {
            return english.to_owned();
        }
        sentence::part(self, english, shipped)
    }

    fn row(&self, english: &str) -> Option<&str> {
        self.rows.get(english).map(String::as_str)
    }

    /// A name in quotation marks.
    #[inline(never)]
    pub(crate) fn quoted(&self, name: &str) -> String {
        let [open, close] = &self.quotes;
        format!("{open}{name}{close}")
    }
}

/// A number as the engine writes it, with another mark before decimals.
#[inline(never)]
pub(crate) fn marked(english: &str, decimal: char) -> String {
    if decimal == '.' {
        return english.to_owned();
    }
    let other = |mark| match mark {
        '.' => decimal,
        ',' => '.',
        other => other,
    };
    english.chars().map(other).collect()
}

/// Words that stand in one place: constants, and all of them as one list.
macro_rules! worded {
    ($($(#[$doc:meta])* $name:ident: $kind:ty = $value:expr;)*) => {
        $($(#[$doc])* pub(super) const $name: $kind = $value;)*

        /// All of them: what another language has to have rows for.
        pub(crate) fn all() -> Vec<&'static str> {
            let mut all = Vec::new();
            $($crate::tongue::Worded::put($name, &mut all);)*
            all
        }
    };
}
pub(crate) use worded;

/// Words of a kind that [`worded`] takes.
pub(crate) trait Worded {
    fn put(self, all: &mut Vec<&'static str>);
}

impl Worded for &'static str {
    #[inline(never)]
    fn put(self, all: &mut Vec<&'static str>) {
        all.push(self);
    }
}

impl<const COUNT: usize> Worded for [&'static str; COUNT] {
    fn put(self, all: &mut Vec<&'static str>) {
        all.extend(self);
    }
}

/// Headings of columns, with how wide they are.
impl<const COUNT: usize> Worded for [(&'static str, f64); COUNT] {
    fn put(self, all: &mut Vec<&'static str>) {
        all.extend(self.map(|(heading, _)| heading));
    }
}

impl Worded for &'static [&'static str] {
    #[inline(never)]
    fn put(self, all: &mut Vec<&'static str>) {
        all.extend_from_slice(self);
    }
}
