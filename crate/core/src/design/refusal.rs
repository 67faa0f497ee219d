//! A refused call: what was wrong, where, and what would work.

/// Why a text, a request or a name was refused.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Refusal {
    /// JSON Pointer (RFC 6901) to what was wrong; empty for the whole text.
    pub path: String,
    /// Plain words: what is wrong and what would work.
    pub message: String,
}

impl Refusal {
    /// A refusal at `path`.
    pub fn at(path: impl Into<String>, message: impl Into<String>) -> Self {
        Self { path: path.into(), message: message.into() }
    }
}

impl std::fmt::Display for Refusal {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        if self.path.is_empty() { write!(f, "{}", self.message) } else { write!(f, "{}: {}", self.path, self.message) }
    }
}

impl std::error::Error for Refusal {}
