//! 3MF: an Open Packaging Conventions archive that holds one model part.

use super::NamedMesh;
use super::archive::Archive;
use super::model_xml::model_xml;

/// What a 3MF file says about itself.
#[derive(Debug, Clone, Copy)]
pub struct Meta<'a> {
    /// Title of the whole; left out where empty.
    pub title: &'a str,
}

/// `runs` as 3MF, one object and one build item each. Source: 3MF Core Specification 1.2.3 (appendix C for the names
/// of content types and relationships), ISO/IEC 29500-2 for the package.
pub fn three_mf(runs: &[NamedMesh<'_>], meta: &Meta<'_>) -> Vec<u8> {
    let mut package = Archive::new();
    package.deflate("[Content_Types].xml", CONTENT_TYPES.as_bytes());
    package.deflate("_rels/.rels", RELATIONSHIPS.as_bytes());
    package.deflate("3D/3dmodel.model", &model_xml(runs, meta));
    package.finish()
}

const CONTENT_TYPES: &str = r#"<?xml version="1.0" encoding="UTF-8"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
<Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/>
</Types>
"#;

const RELATIONSHIPS: &str = r#"<?xml version="1.0" encoding="UTF-8"?>
<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
<Relationship Id="model" Target="/3D/3dmodel.model" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/>
</Relationships>
"#;
