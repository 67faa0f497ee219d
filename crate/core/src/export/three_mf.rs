//! 3MF: an Open Packaging Conventions archive that holds one model part.

use super::NamedMesh;
use super::archive::Archive;
use super::model_xml::model_xml;

/// What a 3MF file says about itself.
#[derive(Debug, Clone, Copy, Default)]
pub struct Meta<'a> {
    /// Title of the whole; left out where empty.
    pub title: &'a str,
    /// What every object is to be printed in; none to leave it open.
    pub material: Option<&'a str>,
    /// The design's canonical text, so that the file alone opens again as a design; none to leave it out.
    pub design: Option<&'a str>,
    /// What else there is to know about the whole; left out where empty.
    pub note: &'a str,
}

/// Where the design is in a package.
pub const DESIGN_PART: &str = "Metadata/design.json";

/// `runs` as 3MF, one object and one build item each, with the design as an attachment of the model. Source: 3MF Core
/// Specification 1.2.3 (appendix C for the names of content types and relationships), ISO/IEC 29500-2 for the package.
pub fn three_mf(runs: &[NamedMesh<'_>], meta: &Meta<'_>) -> Vec<u8> {
    let mut package = Archive::new();
    package.deflate("[Content_Types].xml", content_types(meta.design.is_some()).as_bytes());
    package.deflate("_rels/.rels", relationship("model", "3D/3dmodel.model", MODEL).as_bytes());
    package.deflate("3D/3dmodel.model", &model_xml(runs, meta));
    if let Some(design) = meta.design {
        let attached = relationship("design", DESIGN_PART, DESIGN);
        package.deflate("3D/_rels/3dmodel.model.rels", attached.as_bytes());
        package.deflate(DESIGN_PART, design.as_bytes());
    }
    package.finish()
}

/// Kinds of relationship: that of 3MF's model, and our own, which other readers pass over.
const MODEL: &str = "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel";
const DESIGN: &str = "urn:tubewright:design";

fn content_types(design: bool) -> String {
    let json = if design { "<Default Extension=\"json\" ContentType=\"application/json\"/>\n" } else { "" };
    format!(
        r#"<?xml version="1.0" encoding="UTF-8"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
<Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/>
{json}</Types>
"#
    )
}

/// A list of one relationship.
fn relationship(id: &str, target: &str, kind: &str) -> String {
    format!(
        r#"<?xml version="1.0" encoding="UTF-8"?>
<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
<Relationship Id="{id}" Target="/{target}" Type="{kind}"/>
</Relationships>
"#
    )
}
