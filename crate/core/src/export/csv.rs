//! Tables as comma-separated text. Source: RFC 4180; UTF-8, a decimal point, and as many digits as read back as the
//! same number.

/// A table being written; every record has the same number of fields, as RFC 4180 wants.
pub(super) struct Csv {
    text: String,
    columns: usize,
}

/// One field.
pub(super) enum Cell<'a> {
    /// Words, from us or from outside.
    Text(&'a str),
    /// A number, written in full.
    Number(f64),
    /// A count.
    Whole(usize),
    /// Nothing.
    Empty,
}

impl Csv {
    /// A table of so many columns.
    pub fn new(columns: usize) -> Self {
        Self { text: String::new(), columns }
    }

    /// A line that says something about the table: a number sign, the words, and empty fields.
    pub fn remark(&mut self, words: &str) {
        self.record(&[Cell::Text("#"), Cell::Text(words)]);
    }

    /// One record; fields that are left out are empty.
    pub fn record(&mut self, cells: &[Cell<'_>]) {
        for column in 0..self.columns {
            if column > 0 {
                self.text.push(',');
            }
            match cells.get(column).unwrap_or(&Cell::Empty) {
                Cell::Text(words) => self.words(words),
                // Rust writes the shortest decimals that read back as the same number, never with an exponent.
                Cell::Number(number) => self.text.push_str(&format!("{number}")),
                Cell::Whole(count) => self.text.push_str(&count.to_string()),
                Cell::Empty => {}
            }
        }
        self.text.push_str("\r\n");
    }

    /// The bytes.
    pub fn finish(self) -> Vec<u8> {
        self.text.into_bytes()
    }

    fn words(&mut self, words: &str) {
        let words = harmless(words);
        if words.contains([',', '"', '\r', '\n', ';', '\t']) {
            self.text.push('"');
            self.text.push_str(&words.replace('"', "\"\""));
            self.text.push('"');
        } else {
            self.text.push_str(&words);
        }
    }
}

/// Words that no spreadsheet takes for a formula: where a sign that starts one stands at the front, or behind anything
/// that a program may split fields at, an apostrophe is put before it. Source: the advice on "CSV injection" that the
/// web's security guides share (from memory).
fn harmless(words: &str) -> String {
    let mut safe = String::with_capacity(words.len());
    let mut at_front = true;
    for c in words.chars() {
        if at_front && matches!(c, '=' | '+' | '-' | '@' | '\t' | '\r' | '\n' | '＝' | '＋' | '－' | '＠') {
            safe.push('\'');
        }
        safe.push(c);
        at_front = matches!(c, ',' | ';' | '\t' | '\r' | '\n' | '"' | '\'' | '|') || (at_front && c.is_whitespace());
    }
    safe
}

#[cfg(test)]
mod tests {
    use super::*;

    fn written(cells: &[Cell<'_>]) -> String {
        let mut csv = Csv::new(cells.len());
        csv.record(cells);
        String::from_utf8(csv.finish()).unwrap()
    }

    #[test]
    fn fields_are_quoted_as_rfc_4180_says() {
        let line = written(&[Cell::Text("a,b"), Cell::Text("say \"x\""), Cell::Text("plain"), Cell::Number(-0.125)]);
        assert_eq!(line, "\"a,b\",\"say \"\"x\"\"\",plain,-0.125\r\n");
    }

    #[test]
    fn no_words_start_a_formula_wherever_they_are_split() {
        for name in ["=1+1", "+1", "-1", "@x", "\t=1", "a;=1", "a\",=1", "  =1", "＝1", "a\n=1"] {
            let line = written(&[Cell::Text(name)]);
            for field in line.trim_end().split([',', ';', '"', '\t', '\n', '\r']) {
                let field = field.trim();
                assert!(!field.starts_with(['=', '+', '-', '@', '＝']), "{name:?} gives {line:?}");
            }
        }
        assert_eq!(written(&[Cell::Text("pump - block = 2")]), "pump - block = 2\r\n");
    }

    #[test]
    fn numbers_keep_every_digit() {
        for number in [36.852_813_742_385_706, 1e-7, 1e6 / 3.0, -180.0] {
            assert_eq!(written(&[Cell::Number(number)]).trim().parse::<f64>().unwrap(), number);
        }
    }
}
