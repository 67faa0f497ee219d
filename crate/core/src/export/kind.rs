//! The kinds of file, one table: how a request names each, and what it is called on a disk.

/// A kind of file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// Triangles of one run, binary STL.
    Stl,
    /// One run or all made runs, 3MF core specification.
    ThreeMf,
    /// The design itself, canonical JSON.
    Design,
    /// An archive of everything: STL and 3MF of each made run, and the design.
    All,
}

impl Kind {
    /// Every kind, in the order they are offered.
    pub const ALL: &[Self] = &[Self::Stl, Self::ThreeMf, Self::Design, Self::All];

    /// The word for it in a request.
    pub fn word(self) -> &'static str {
        match self {
            Self::Stl => "stl",
            Self::ThreeMf => "3mf",
            Self::Design => "design",
            Self::All => "all",
        }
    }

    /// What follows the last dot of its file name.
    pub fn extension(self) -> &'static str {
        match self {
            Self::Stl => "stl",
            Self::ThreeMf => "3mf",
            Self::Design => "json",
            Self::All => "zip",
        }
    }

    /// The kind that a request's word names.
    pub fn of_word(word: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|kind| kind.word() == word)
    }
}
