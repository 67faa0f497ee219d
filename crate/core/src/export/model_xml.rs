//! The model part of a 3MF package: the XML that holds the meshes.

use super::{APPLICATION, Meta, NamedMesh};
use crate::mesh::Mesh;

/// The model part: unit, title, the material, one object and one build item a run. Coordinates are the shortest decimals that read
/// back as the same `f32`. Source: 3MF Core Specification 1.2.3, chapters 3 and 4.
pub(super) fn model_xml(runs: &[NamedMesh<'_>], meta: &Meta<'_>) -> Vec<u8> {
    let size = runs.iter().map(|run| VERTEX * run.mesh.positions.len() + TRIANGLE * run.mesh.indices.len());
    let mut text = Text(Vec::with_capacity(1000 + size.sum::<usize>()));
    text.put(HEAD);
    if !meta.title.is_empty() {
        text.put("<metadata name=\"Title\">").put_words(meta.title).put("</metadata>\n");
    }
    if !meta.note.is_empty() {
        text.put("<metadata name=\"Description\">").put_words(meta.note).put("</metadata>\n");
    }
    text.put("<metadata name=\"Application\">").put(APPLICATION).put("</metadata>\n<resources>\n");
    if let Some(material) = meta.material {
        text.put("<basematerials id=\"").put_whole(MATERIALS).put("\"><base name=\"").put_words(material);
        text.put("\" displaycolor=\"").put(COLOUR).put("\"/></basematerials>\n");
    }
    for (run, id) in runs.iter().zip(FIRST_OBJECT..) {
        text.put("<object id=\"").put_whole(id).put("\" type=\"model\" name=\"").put_words(run.name);
        if meta.material.is_some() {
            text.put("\" pid=\"").put_whole(MATERIALS).put("\" pindex=\"0");
        }
        text.put("\">");
        text.put_mesh(run.mesh).put("</object>\n");
    }
    text.put("</resources>\n<build>\n");
    let shift = shift_to_positive(runs);
    for (_, id) in runs.iter().zip(FIRST_OBJECT..) {
        text.put("<item objectid=\"").put_whole(id);
        if shift != [0.0; 3] {
            text.put("\" transform=\"1 0 0 0 1 0 0 0 1");
            for x in shift {
                text.put(" ").put_number(x);
            }
        }
        text.put("\"/>\n");
    }
    text.put("</build>\n</model>\n");
    text.0
}

const HEAD: &str = r#"<?xml version="1.0" encoding="UTF-8"?>
<model unit="millimeter" xml:lang="und" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02">
"#;

/// Numbers of the list of materials and of the first object: no two resources of a model share one.
const MATERIALS: u32 = 1;
const FIRST_OBJECT: u32 = 2;
/// How a viewer shows the material, sRGB: it says nothing of the material's own colour.
const COLOUR: &str = "#B9784AFF";

/// Bytes of text a coordinate and an index usually take, to ask for memory once.
const VERTEX: usize = 18;
const TRIANGLE: usize = 16;

/// What must be added for all runs to stand in the positive octant, where the specification wants a build (3.3); zero
/// along an axis that needs nothing. All runs move as one, so they stay placed to each other, and the meshes themselves
/// stay in the builder's datum.
fn shift_to_positive(runs: &[NamedMesh<'_>]) -> [f32; 3] {
    let points = runs.iter().flat_map(|run| run.mesh.positions.as_chunks::<3>().0);
    points.fold([0.0; 3], |shift, point| [0, 1, 2].map(|axis| f32::max(shift[axis], -point[axis])))
}

/// XML text being written.
struct Text(Vec<u8>);

impl Text {
    fn put(&mut self, text: &str) -> &mut Self {
        self.0.extend_from_slice(text.as_bytes());
        self
    }

    /// Words from outside, fit for an attribute or an element: markup escaped, breaks made spaces, and what XML 1.0
    /// cannot hold at all made U+FFFD.
    fn put_words(&mut self, words: &str) -> &mut Self {
        for c in words.chars() {
            match c {
                '&' => self.put("&amp;"),
                '<' => self.put("&lt;"),
                '>' => self.put("&gt;"),
                '"' => self.put("&quot;"),
                '\t' | '\n' | '\r' => self.put(" "),
                '\0'..' ' | '\u{fffe}' | '\u{ffff}' => self.put("\u{fffd}"),
                _ => self.put(c.encode_utf8(&mut [0; 4])),
            };
        }
        self
    }

    fn put_whole(&mut self, number: u32) -> &mut Self {
        self.put(itoa::Buffer::new().format(number))
    }

    fn put_number(&mut self, number: f32) -> &mut Self {
        let mut buffer = zmij::Buffer::new();
        let digits = buffer.format(number);
        self.put(digits.strip_suffix(".0").unwrap_or(digits))
    }

    fn put_mesh(&mut self, mesh: &Mesh) -> &mut Self {
        self.put("<mesh><vertices>");
        for &[x, y, z] in mesh.positions.as_chunks::<3>().0 {
            self.put("<vertex x=\"")
                .put_number(x)
                .put("\" y=\"")
                .put_number(y)
                .put("\" z=\"")
                .put_number(z)
                .put("\"/>");
        }
        self.put("</vertices><triangles>");
        for &[a, b, c] in mesh.indices.as_chunks::<3>().0 {
            self.put("<triangle v1=\"")
                .put_whole(a)
                .put("\" v2=\"")
                .put_whole(b)
                .put("\" v3=\"")
                .put_whole(c)
                .put("\"/>");
        }
        self.put("</triangles></mesh>")
    }
}
