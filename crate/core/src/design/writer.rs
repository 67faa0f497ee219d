//! Writes JSON the way a person would: two spaces, a line for each key, coordinates on one line, 12 and not 12.0.

/// A JSON text in the making.
#[derive(Default)]
pub(super) struct Writer {
    out: String,
    depth: usize,
    /// Whether the object or list being written has something in it already.
    begun: bool,
    /// Whether items stand on one line.
    inline: bool,
}

impl Writer {
    pub fn new() -> Self {
        Self::default()
    }

    /// The text, with a line feed at its end.
    pub fn finish(mut self) -> String {
        self.out.push('\n');
        self.out
    }

    /// An object, a key a line.
    pub fn object(&mut self, fill: impl FnOnce(&mut Self)) {
        self.nested('{', '}', self.inline, fill);
    }

    /// An object on one line.
    pub fn inline_object(&mut self, fill: impl FnOnce(&mut Self)) {
        self.nested('{', '}', true, fill);
    }

    /// A list of objects under a key, an item a line.
    pub fn list<T>(&mut self, key: &str, items: &[T], write: fn(&mut Self, &T)) {
        self.key(key).nested('[', ']', false, |w| {
            for item in items {
                w.next();
                write(w, item);
            }
        });
    }

    /// A list on one line.
    pub fn row<T>(&mut self, items: &[T], write: impl Fn(&mut Self, &T)) {
        self.nested('[', ']', true, |w| {
            for item in items {
                w.next();
                write(w, item);
            }
        });
    }

    /// Three numbers on one line under a key.
    pub fn point(&mut self, key: &str, point: &[f64; 3]) {
        self.key(key).row(point, |w, value| w.bare_number(*value));
    }

    /// A key; its value must follow.
    pub fn key(&mut self, key: &str) -> &mut Self {
        self.next();
        self.bare_text(key);
        self.out.push_str(": ");
        self
    }

    /// A text under a key.
    pub fn text(&mut self, key: &str, value: &str) {
        self.key(key).bare_text(value);
    }

    /// A number under a key.
    pub fn number(&mut self, key: &str, value: f64) {
        self.key(key).bare_number(value);
    }

    /// A number under a key, or null where it is not known.
    pub fn known(&mut self, key: &str, value: Option<f64>) {
        match value {
            Some(value) => self.number(key, value),
            None => self.null(key),
        }
    }

    /// True or false under a key.
    pub fn flag(&mut self, key: &str, value: bool) {
        self.key(key).out.push_str(if value { "true" } else { "false" });
    }

    /// Null under a key.
    pub fn null(&mut self, key: &str) {
        self.key(key).out.push_str("null");
    }

    /// A number as short as it reads back the same.
    pub fn bare_number(&mut self, value: f64) {
        // 2^53: up to there every whole number is exact and reads best in plain digits.
        if value.fract() == 0.0 && value.abs() <= 9_007_199_254_740_992.0 {
            self.out.push_str(&(value as i64).to_string());
        } else {
            self.out.push_str(&serde_json::Value::from(value).to_string());
        }
    }

    fn bare_text(&mut self, value: &str) {
        self.out.push_str(&serde_json::Value::from(value).to_string());
    }

    fn nested(&mut self, open: char, close: char, inline: bool, fill: impl FnOnce(&mut Self)) {
        self.out.push(open);
        let outer = (std::mem::replace(&mut self.inline, inline), std::mem::replace(&mut self.begun, false));
        self.depth += 1;
        fill(self);
        self.depth -= 1;
        if self.begun {
            match (inline, open) {
                (true, '{') => self.out.push(' '),
                (true, _) => {}
                (false, _) => self.line(),
            }
        }
        self.out.push(close);
        (self.inline, self.begun) = outer;
    }

    fn next(&mut self) {
        if self.begun {
            self.out.push(',');
        }
        match (self.inline, self.begun, self.out.ends_with('[')) {
            (false, ..) => self.line(),
            (true, false, true) => {}
            (true, ..) => self.out.push(' '),
        }
        self.begun = true;
    }

    fn line(&mut self) {
        self.out.push('\n');
        for _ in 0..self.depth {
            self.out.push_str("  ");
        }
    }
}
