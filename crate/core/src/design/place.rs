//! Where in a text one is: a chain of keys and positions, written out as a JSON Pointer only when it is needed.

/// A place in the document: the whole of it, or a step below another place.
#[derive(Debug, Clone, Copy)]
pub(super) struct Place<'a> {
    above: Option<&'a Place<'a>>,
    step: Step<'a>,
}

/// One step down.
#[derive(Debug, Clone, Copy)]
pub(super) enum Step<'a> {
    /// Into an object.
    Key(&'a str),
    /// Into a list, from 0.
    Item(usize),
}

impl<'a> Place<'a> {
    /// The whole document.
    pub const ROOT: Place<'static> = Place { above: None, step: Step::Key("") };

    /// The value of `key`.
    pub fn key(&'a self, key: &'a str) -> Place<'a> {
        Place { above: Some(self), step: Step::Key(key) }
    }

    /// The item at `index`.
    pub fn item(&'a self, index: usize) -> Place<'a> {
        Place { above: Some(self), step: Step::Item(index) }
    }

    /// The JSON Pointer (RFC 6901); empty for the whole.
    pub fn pointer(&self) -> String {
        let mut steps = Vec::new();
        let mut place = self;
        while let Some(above) = place.above {
            steps.push(place.step);
            place = above;
        }
        pointer(steps.into_iter().rev())
    }

    /// Whether a key of the table of quantities, with `*` for positions, is this place.
    pub fn is(&self, pattern: &str) -> bool {
        let mut parts = pattern.rsplit('/');
        let mut place = self;
        while let Some(above) = place.above {
            let same = match (place.step, parts.next()) {
                (Step::Key(key), Some(part)) => key == part,
                (Step::Item(_), Some(part)) => part == "*",
                (_, None) => false,
            };
            if !same {
                return false;
            }
            place = above;
        }
        parts.next() == Some("") && parts.next().is_none()
    }
}

/// A JSON Pointer to a key of an object.
pub(crate) fn key_pointer(key: &str) -> String {
    pointer(core::iter::once(Step::Key(key)))
}

/// A JSON Pointer from its steps, escaped as RFC 6901 section 3 says.
pub(super) fn pointer<'a>(steps: impl Iterator<Item = Step<'a>>) -> String {
    let mut text = String::new();
    for step in steps {
        text.push('/');
        match step {
            Step::Key(key) => text.push_str(&key.replace('~', "~0").replace('/', "~1")),
            Step::Item(index) => text.push_str(&index.to_string()),
        }
    }
    text
}
