//! HTML being written: well-formed as XML too, and every word from a design escaped.

use crate::plot::escape_into;
use crate::tongue::Tongue;

/// A page's text, and the language of its words.
pub(super) struct Html<'t> {
    text: String,
    pub tongue: &'t Tongue,
}

/// One row of a table: a heading and its cells, and what programs read of it.
pub(super) struct Row {
    /// Words of each column, the first being the row's heading.
    pub cells: Vec<String>,
    /// Attributes, `data-` being put before their names.
    pub data: Vec<(&'static str, String)>,
}

impl Row {
    pub fn of(cells: Vec<String>) -> Self {
        Self { cells, data: Vec::new() }
    }
}

impl<'t> Html<'t> {
    pub fn new(tongue: &'t Tongue) -> Self {
        Self { text: String::new(), tongue }
    }

    /// The text that was written.
    pub fn finish(self) -> String {
        self.text
    }

    /// Markup of our own.
    pub fn raw(&mut self, markup: &str) {
        self.text.push_str(markup);
    }

    /// An element that holds words of the sheet's own.
    pub fn said(&mut self, tag: &'static str, english: &str) {
        let words = self.tongue.word(english);
        self.element(tag, words);
    }

    /// An element that holds words as they are.
    pub fn element(&mut self, tag: &'static str, words: &str) {
        self.raw(&format!("<{tag}>"));
        escape_into(&mut self.text, words);
        self.raw(&format!("</{tag}>\n"));
    }

    /// A paragraph in words of the sheet's own that says where something comes from.
    pub fn remark_said(&mut self, english: &str) {
        let words = self.tongue.word(english);
        self.remark(words);
    }

    /// The same in words as they are.
    pub fn remark(&mut self, words: &str) {
        self.raw("<p class=\"source\">");
        escape_into(&mut self.text, words);
        self.raw("</p>\n");
    }

    /// The page's own heading, set as its writing runs.
    pub fn title(&mut self, words: &str) {
        self.raw("<h1 dir=\"auto\">");
        escape_into(&mut self.text, words);
        self.raw("</h1>\n");
    }

    /// A list, `ol` or `ul`.
    pub fn list(&mut self, tag: &'static str, items: impl IntoIterator<Item = impl AsRef<str>>) {
        self.raw(&format!("<{tag}>\n"));
        for item in items {
            self.element("li", item.as_ref());
        }
        self.raw(&format!("</{tag}>\n"));
    }

    /// A list of words of the sheet's own.
    pub fn list_said<'w>(&mut self, tag: &'static str, english: impl IntoIterator<Item = &'w &'w str>) {
        let tongue = self.tongue;
        self.list(tag, english.into_iter().map(|item| tongue.word(item)));
    }

    /// A table in a frame that scrolls where a screen is too narrow for it; caption and headings are the sheet's own words.
    pub fn table(&mut self, caption: &str, headings: &[&str], rows: &[Row]) {
        let tongue = self.tongue;
        let caption = tongue.word(caption);
        self.raw("<div class=\"wide\" role=\"group\" tabindex=\"0\" aria-label=\"");
        escape_into(&mut self.text, caption);
        self.raw("\"><table>\n");
        self.element("caption", caption);
        self.raw("<thead><tr>");
        for heading in headings {
            self.raw("<th scope=\"col\">");
            escape_into(&mut self.text, tongue.word(heading));
            self.raw("</th>");
        }
        self.raw("</tr></thead>\n<tbody>\n");
        for row in rows {
            self.row(row);
        }
        self.raw("</tbody></table></div>\n");
    }

    fn row(&mut self, row: &Row) {
        self.raw("<tr");
        for (name, value) in &row.data {
            self.raw(&format!(" data-{name}=\""));
            escape_into(&mut self.text, value);
            self.raw("\"");
        }
        self.raw(">");
        for (column, words) in row.cells.iter().enumerate() {
            let (open, close) =
                if column == 0 { ("th scope=\"row\" dir=\"auto\"", "th") } else { ("td dir=\"auto\"", "td") };
            self.raw(&format!("<{open}>"));
            escape_into(&mut self.text, words);
            self.raw(&format!("</{close}>"));
        }
        self.raw("</tr>\n");
    }
}
