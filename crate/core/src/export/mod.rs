//! Files that leave the engine: what a print service takes as it is.
//!
//! A file is made from meshes and words that earlier stages have checked. The same design gives the same bytes: no
//! file holds a time, a machine's name or anything else from outside. A new kind of file is a row of [`Kind`] and a
//! function from meshes to bytes in a file of its own.

mod archive;
mod bend_csv;
mod bundle;
mod csv;
mod drawing;
mod features;
mod file_stem;
mod kind;
mod model_xml;
mod pack;
mod points_csv;
mod stl;
mod subject;
mod three_mf;

pub use bend_csv::{Feed, bend_csv};
pub use bundle::{DesignTold, Paper, RunFiles, called, zip, zip_of_stls};
pub use drawing::drawing;
pub(crate) use drawing::templates as drawing_templates;
pub use file_stem::{file_stem, file_stem_ending, unique_stems};
pub use kind::Kind;
pub use pack::{PackFile, checksums, pack};
pub use points_csv::points_csv;
pub use stl::{STL_HEADER, stl, stl_size};
pub use subject::ToldRun;
pub use three_mf::{DESIGN_PART, Meta, three_mf};

use crate::mesh::Mesh;

/// A run's mesh with the run's name.
#[derive(Debug, Clone, Copy)]
pub struct NamedMesh<'a> {
    /// The run's name, as the builder typed it.
    pub name: &'a str,
    /// Its solid, mm, in the builder's datum.
    pub mesh: &'a Mesh,
}

/// Name of this program, as files tell it.
const APPLICATION: &str = "Tubewright";
