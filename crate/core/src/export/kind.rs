//! The kinds of file, one table: how a request names each, and what it is called on a disk.

/// A kind of file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// Triangles of one run, binary STL.
    Stl,
    /// One run or all made runs, 3MF core specification.
    ThreeMf,
    /// The bend table of one run, CSV.
    BendTable,
    /// The points of one run, CSV.
    Points,
    /// The dimensioned drawing of one run, SVG.
    Drawing,
    /// The design itself, canonical JSON.
    Design,
    /// An archive of everything: all of the above of each made run, and the design.
    All,
}

impl Kind {
    /// Every kind, in the order they are offered.
    pub const ALL: &[Self] =
        &[Self::Stl, Self::ThreeMf, Self::BendTable, Self::Points, Self::Drawing, Self::Design, Self::All];

    /// The word for it in a request.
    pub fn word(self) -> &'static str {
        match self {
            Self::Stl => "stl",
            Self::ThreeMf => "3mf",
            Self::BendTable => "bend-table",
            Self::Points => "points",
            Self::Drawing => "drawing",
            Self::Design => "design",
            Self::All => "all",
        }
    }

    /// What follows the last dot of its file name.
    pub fn extension(self) -> &'static str {
        match self {
            Self::Stl => "stl",
            Self::ThreeMf => "3mf",
            Self::BendTable | Self::Points => "csv",
            Self::Drawing => "svg",
            Self::Design => "json",
            Self::All => "zip",
        }
    }

    /// Its file's name from a stem that is safe; two tables of one run get different ones.
    pub fn file_name(self, stem: &str) -> String {
        let what = match self {
            Self::BendTable => " bends",
            Self::Points => " points",
            _ => "",
        };
        format!("{stem}{what}.{}", self.extension())
    }

    /// Whether a file of it holds exactly one run.
    pub fn is_of_one_run(self) -> bool {
        matches!(self, Self::Stl | Self::BendTable | Self::Points | Self::Drawing)
    }

    /// The kind that a request's word names.
    pub fn of_word(word: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|kind| kind.word() == word)
    }
}
