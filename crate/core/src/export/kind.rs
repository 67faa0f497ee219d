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
    /// Pressure loss against flow, with the pump's curve, SVG.
    LossPlot,
    /// How much of each limit is used, SVG.
    MarginsPlot,
    /// Temperatures against what materials stand, SVG.
    StiffnessPlot,
    /// The fit coupon of one run's tube: 3MF, or an archive of STLs.
    Coupon,
    /// The pieces of one plate in their places on it, 3MF.
    Plate,
    /// The design itself, canonical JSON.
    Design,
    /// An archive of everything: all of the above of each made run, and the design.
    All,
    /// An archive for a print service and the builder: files as they stand on the plate, coupons, papers, a sheet.
    Pack,
}

impl Kind {
    /// Every kind, in the order they are offered.
    pub const ALL: &[Self] = &[
        Self::Stl,
        Self::ThreeMf,
        Self::BendTable,
        Self::Points,
        Self::Drawing,
        Self::LossPlot,
        Self::MarginsPlot,
        Self::StiffnessPlot,
        Self::Coupon,
        Self::Plate,
        Self::Design,
        Self::All,
        Self::Pack,
    ];

    /// The plots, each of the whole design.
    pub const PLOTS: [Self; 3] = [Self::LossPlot, Self::MarginsPlot, Self::StiffnessPlot];

    /// The word for it in a request.
    pub fn word(self) -> &'static str {
        match self {
            Self::Stl => "stl",
            Self::ThreeMf => "3mf",
            Self::BendTable => "bend-table",
            Self::Points => "points",
            Self::Drawing => "drawing",
            Self::LossPlot => "loss-plot",
            Self::MarginsPlot => "margins-plot",
            Self::StiffnessPlot => "stiffness-plot",
            Self::Coupon => "coupon",
            Self::Plate => "plate",
            Self::Design => "design",
            Self::All => "all",
            Self::Pack => "pack",
        }
    }

    /// What follows the last dot of its file name; of a coupon where nothing else is asked for.
    pub fn extension(self) -> &'static str {
        match self {
            Self::Stl => "stl",
            Self::ThreeMf | Self::Coupon | Self::Plate => "3mf",
            Self::BendTable | Self::Points => "csv",
            Self::Drawing | Self::LossPlot | Self::MarginsPlot | Self::StiffnessPlot => "svg",
            Self::Design => "json",
            Self::All | Self::Pack => "zip",
        }
    }

    /// What a file of it is called, without its ending, where the thing that it is of has this name.
    pub fn called(self, name: &str) -> String {
        let what = match self {
            Self::BendTable => " bends",
            Self::Points => " points",
            Self::LossPlot => " loss",
            Self::MarginsPlot => " margins",
            Self::StiffnessPlot => " heat",
            Self::Coupon => " coupon",
            Self::Pack => " pack",
            _ => "",
        };
        format!("{name}{what}")
    }

    /// Its file's name from a stem that is safe; two tables of one run get different ones.
    pub fn file_name(self, stem: &str) -> String {
        self.file_name_ending(stem, self.extension())
    }

    /// As [`Kind::file_name`], with another ending.
    pub fn file_name_ending(self, stem: &str, extension: &str) -> String {
        format!("{}.{extension}", self.called(stem))
    }

    /// Whether a file of it holds exactly one run.
    pub fn is_of_one_run(self) -> bool {
        matches!(self, Self::Stl | Self::BendTable | Self::Points | Self::Drawing | Self::Coupon)
    }

    /// Whether it is a plot.
    pub fn is_plot(self) -> bool {
        Self::PLOTS.contains(&self)
    }

    /// The kind that a request's word names.
    pub fn of_word(word: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|kind| kind.word() == word)
    }
}
