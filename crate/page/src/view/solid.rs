//! Draws faces: matt, lit from where the eye is, cut open where a section is asked for.

use three_d::{
    Blend, Context, Cull, DepthTest, ElementBuffer, Program, RenderStates, VertexBuffer, Viewport, WriteMask, vec3,
    vec4,
};

use super::device::Lens;
use super::theme::linear;

/// The program.
pub struct Solid {
    program: Program,
}

/// Faces on the graphics card.
pub struct Faces {
    points: VertexBuffer<[f32; 3]>,
    normals: VertexBuffer<[f32; 3]>,
    radials: VertexBuffer<[f32; 3]>,
    indices: ElementBuffer<u32>,
}

/// How faces look; colours sRGB.
pub struct Finish {
    /// The material.
    pub tone: [f32; 3],
    /// 1 for a solid body; less for a veil that hides nothing.
    pub opacity: f32,
    /// Where a section cuts it, and the hatching there.
    pub cut: [[f32; 3]; 2],
    /// The bore in a section; none where there is none.
    pub wet: Option<[f32; 3]>,
    /// Light from below.
    pub shade: [f32; 3],
    /// Strength of the highlight.
    pub gloss: f32,
}

impl Faces {
    /// Brings faces to the graphics card; none where there is nothing to draw.
    pub fn new(
        context: &Context,
        points: &[[f32; 3]],
        normals: &[[f32; 3]],
        radials: &[[f32; 3]],
        indices: &[u32],
    ) -> Option<Self> {
        (!indices.is_empty()).then(|| Self {
            points: VertexBuffer::new_with_data(context, points),
            normals: VertexBuffer::new_with_data(context, normals),
            radials: VertexBuffer::new_with_data(context, radials),
            indices: ElementBuffer::new_with_data(context, indices),
        })
    }
}

impl Solid {
    /// Compiles the program.
    pub fn new(context: &Context) -> Result<Self, String> {
        let sources = (include_str!("shader/solid.vert"), include_str!("shader/solid.frag"));
        let program = Program::from_source(context, sources.0, sources.1).map_err(|fault| fault.to_string())?;
        Ok(Self { program })
    }

    /// Draws faces.
    pub fn draw(&self, faces: &Faces, finish: &Finish, lens: &Lens, section: bool, viewport: Viewport) {
        let program = &self.program;
        let colour = |of: [f32; 3]| vec3(linear(of)[0], linear(of)[1], linear(of)[2]);
        let tone = colour(finish.tone);
        program.use_uniform_if_required("turn", lens.turn);
        program.use_uniform_if_required("focus", lens.focus);
        program.use_uniform_if_required("lens", lens.lens);
        program.use_uniform_if_required("sky", lens.turn.z);
        program.use_uniform_if_required("tone", vec4(tone.x, tone.y, tone.z, finish.opacity));
        program.use_uniform_if_required("shade", colour(finish.shade));
        program.use_uniform_if_required("cut", colour(finish.cut[0]));
        program.use_uniform_if_required("hatch", colour(finish.cut[1]));
        program.use_uniform_if_required("wet", finish.wet.map_or(tone, colour));
        program.use_uniform_if_required("anchor", vec3(lens.anchor[0], lens.anchor[1], lens.fine));
        program.use_uniform_if_required("section", f32::from(u8::from(section)));
        program.use_uniform_if_required("gloss", finish.gloss);
        for (name, buffer) in [("position", &faces.points), ("normal", &faces.normals), ("radial", &faces.radials)] {
            if program.requires_attribute(name) {
                program.use_vertex_attribute(name, buffer);
            }
        }
        program.draw_elements(states(finish.opacity < 1.0, section), viewport, &faces.indices);
    }
}

/// Back faces are seen in a section only; a veil lets through what is behind it.
fn states(veil: bool, section: bool) -> RenderStates {
    RenderStates {
        write_mask: if veil { WriteMask::COLOR } else { WriteMask::COLOR_AND_DEPTH },
        depth_test: DepthTest::Less,
        blend: if veil { Blend::TRANSPARENCY } else { Blend::Disabled },
        cull: if section && !veil { Cull::None } else { Cull::Back },
    }
}
