//! Draws walls that are seen through.

use three_d::{
    Blend, Context, Cull, DepthTest, ElementBuffer, Program, RenderStates, VertexBuffer, Viewport, WriteMask, vec3,
};

use super::coolant::girths;
use super::device::Lens;
use super::guide::Guide;
use super::look::Clarity;
use super::skin::Skin;
use super::theme::linear;

/// The program.
pub struct Glass {
    program: Program,
}

/// A wall on the graphics card.
pub struct Wall {
    points: VertexBuffer<[f32; 3]>,
    normals: VertexBuffer<[f32; 3]>,
    radials: VertexBuffer<[f32; 3]>,
    girths: VertexBuffer<[f32; 3]>,
    indices: ElementBuffer<u32>,
}

/// How a wall looks; colours sRGB.
pub struct Glazing {
    /// The material.
    pub tone: [f32; 3],
    /// What its edges mirror.
    pub verge: [f32; 3],
    /// How clear it is.
    pub clarity: Clarity,
    /// Radius of the bore, mm.
    pub bore: f32,
    /// Whether what fills the bore hides the wall behind it.
    pub filled: bool,
}

impl Wall {
    /// Brings a tube's skin to the graphics card; none where there is nothing to draw.
    pub fn new(context: &Context, skin: &Skin, guide: &Guide) -> Option<Self> {
        (!skin.indices.is_empty()).then(|| Self {
            points: VertexBuffer::new_with_data(context, &skin.points),
            normals: VertexBuffer::new_with_data(context, &skin.normals),
            radials: VertexBuffer::new_with_data(context, &skin.radials),
            girths: VertexBuffer::new_with_data(context, &girths(skin, guide)),
            indices: ElementBuffer::new_with_data(context, &skin.indices),
        })
    }
}

impl Glass {
    /// Compiles the program.
    pub fn new(context: &Context) -> Result<Self, String> {
        let sources = (include_str!("shader/glass.vert"), include_str!("shader/glass.frag"));
        let program = Program::from_source(context, sources.0, sources.1).map_err(|fault| fault.to_string())?;
        Ok(Self { program })
    }

    /// Marks how near a wall's skin is, and nothing else: of all walls only the nearest is then drawn, in whatever order
    /// they come.
    pub fn mark(&self, wall: &Wall, glazing: &Glazing, lens: &Lens, viewport: Viewport) {
        self.give(wall, glazing, lens);
        let states = RenderStates {
            write_mask: WriteMask::DEPTH,
            depth_test: DepthTest::Less,
            blend: Blend::Disabled,
            cull: Cull::Back,
        };
        self.program.draw_elements(states, viewport, &wall.indices);
    }

    /// Draws a wall where its skin is the nearest of those that were marked.
    pub fn draw(&self, wall: &Wall, glazing: &Glazing, lens: &Lens, viewport: Viewport) {
        self.give(wall, glazing, lens);
        let states = RenderStates {
            write_mask: WriteMask::COLOR,
            depth_test: DepthTest::LessOrEqual,
            blend: Blend::TRANSPARENCY,
            cull: Cull::Back,
        };
        self.program.draw_elements(states, viewport, &wall.indices);
    }

    fn give(&self, wall: &Wall, glazing: &Glazing, lens: &Lens) {
        let program = &self.program;
        let colour = |of: [f32; 3]| vec3(linear(of)[0], linear(of)[1], linear(of)[2]);
        // How much a way as long as the tube's radius takes of what is behind, and what the skin's own grain takes.
        let (density, haze) = match glazing.clarity {
            Clarity::Clear => (0.75, 0.10),
            Clarity::Translucent | Clarity::Opaque => (1.25, 0.34),
        };
        program.use_uniform_if_required("turn", lens.turn);
        program.use_uniform_if_required("focus", lens.focus);
        program.use_uniform_if_required("lens", lens.lens);
        program.use_uniform_if_required("sky", lens.turn.z);
        program.use_uniform_if_required("tone", colour(glazing.tone));
        program.use_uniform_if_required("verge", colour(glazing.verge));
        program.use_uniform_if_required("bore", glazing.bore);
        program.use_uniform_if_required("density", density);
        program.use_uniform_if_required("haze", haze);
        program.use_uniform_if_required("filled", f32::from(u8::from(glazing.filled)));
        let buffers =
            [("position", &wall.points), ("normal", &wall.normals), ("radial", &wall.radials), ("girth", &wall.girths)];
        for (name, buffer) in buffers {
            if program.requires_attribute(name) {
                program.use_vertex_attribute(name, buffer);
            }
        }
    }
}
