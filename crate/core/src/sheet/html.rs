//! HTML being written: well-formed as XML too, and every word from a design escaped.

use crate::plot::escape_into;

/// A page's text.
pub(super) struct Html(String);

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

impl Html {
    pub fn new() -> Self {
        Self(String::new())
    }

    /// The text that was written.
    pub fn finish(self) -> String {
        self.0
    }

    /// Markup of our own.
    pub fn raw(&mut self, markup: &str) {
        self.0.push_str(markup);
    }

    /// An element that holds words.
    pub fn element(&mut self, tag: &'static str, words: &str) {
        self.raw(&format!("<{tag}>"));
        escape_into(&mut self.0, words);
        self.raw(&format!("</{tag}>\n"));
    }

    /// A paragraph that says where something comes from.
    pub fn remark(&mut self, words: &str) {
        self.raw("<p class=\"source\">");
        escape_into(&mut self.0, words);
        self.raw("</p>\n");
    }

    /// The page's own heading, set as its writing runs.
    pub fn title(&mut self, words: &str) {
        self.raw("<h1 dir=\"auto\">");
        escape_into(&mut self.0, words);
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

    /// A table in a frame that scrolls where a screen is too narrow for it.
    pub fn table(&mut self, caption: &str, headings: &[&str], rows: &[Row]) {
        self.raw("<div class=\"wide\" role=\"group\" tabindex=\"0\" aria-label=\"");
        escape_into(&mut self.0, caption);
        self.raw("\"><table>\n");
        self.element("caption", caption);
        self.raw("<thead><tr>");
        for heading in headings {
            self.raw("<th scope=\"col\">");
            escape_into(&mut self.0, heading);
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
            escape_into(&mut self.0, value);
            self.raw("\"");
        }
        self.raw(">");
        for (column, words) in row.cells.iter().enumerate() {
            let (open, close) =
                if column == 0 { ("th scope=\"row\" dir=\"auto\"", "th") } else { ("td dir=\"auto\"", "td") };
            self.raw(&format!("<{open}>"));
            escape_into(&mut self.0, words);
            self.raw(&format!("</{close}>"));
        }
        self.raw("</tr>\n");
    }
}
