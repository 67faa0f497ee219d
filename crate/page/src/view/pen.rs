//! Draws lines of constant width on the screen.

use three_d::{
    Blend, BufferDataType, Context, Cull, DepthTest, ElementBuffer, Program, RenderStates, Vec4, VertexBuffer,
    Viewport, WriteMask, vec4,
};

use super::device::Lens;
use super::stroke::{INKS, Strokes};

/// The program.
pub struct Pen {
    program: Program,
}

/// Lines on the graphics card, each a rectangle of four vertices that hold the same. Drawn as instances of one
/// rectangle they would take a quarter of the room, but a software renderer sets up each instance as a drawing of its
/// own: whole frames took up to twice as long, measured on SwiftShader.
pub struct Lines {
    from: VertexBuffer<[f32; 4]>,
    to: VertexBuffer<[f32; 4]>,
    from_lean: VertexBuffer<[f32; 3]>,
    to_lean: VertexBuffer<[f32; 3]>,
    shift: VertexBuffer<[f32; 4]>,
    style: VertexBuffer<[f32; 4]>,
    along: VertexBuffer<[f32; 2]>,
    triangles: ElementBuffer<u32>,
}

/// How a set of lines is drawn.
#[derive(Clone, Copy)]
pub struct Stroke<'a> {
    /// Colours by ink.
    pub inks: &'a [[f32; 4]; INKS],
    /// Widths are multiplied by it.
    pub bold: f32,
    /// True where a section takes lines away with the half toward the eye.
    pub section: bool,
    /// False for lines that lie behind everything.
    pub deep: bool,
}

impl Lines {
    /// Brings lines to the graphics card; none where there are none.
    pub fn new(context: &Context, strokes: &Strokes) -> Option<Self> {
        let corners = 4 * u32::try_from(strokes.count()).ok()?;
        let triangles: Vec<u32> =
            (0..corners).step_by(4).flat_map(|at| [0, 1, 2, 0, 2, 3].map(|corner| at + corner)).collect();
        (corners > 0).then(|| Self {
            from: fourfold(context, &strokes.from),
            to: fourfold(context, &strokes.to),
            from_lean: fourfold(context, &strokes.from_lean),
            to_lean: fourfold(context, &strokes.to_lean),
            shift: fourfold(context, &strokes.shift),
            style: fourfold(context, &strokes.style),
            along: fourfold(context, &strokes.along),
            triangles: ElementBuffer::new_with_data(context, &triangles),
        })
    }
}

fn fourfold<T: BufferDataType + Copy>(context: &Context, list: &[T]) -> VertexBuffer<T> {
    let corners: Vec<T> = list.iter().flat_map(|value| [*value; 4]).collect();
    VertexBuffer::new_with_data(context, &corners)
}

impl Pen {
    /// Compiles the program.
    pub fn new(context: &Context) -> Result<Self, String> {
        let sources = (include_str!("shader/pen.vert"), include_str!("shader/pen.frag"));
        let program = Program::from_source(context, sources.0, sources.1).map_err(|fault| fault.to_string())?;
        Ok(Self { program })
    }

    /// Draws lines.
    pub fn draw(&self, lines: &Lines, stroke: &Stroke<'_>, lens: &Lens, viewport: Viewport) {
        let program = &self.program;
        let inks: Vec<Vec4> = stroke.inks.iter().map(|[r, g, b, a]| vec4(*r, *g, *b, *a)).collect();
        program.use_uniform_if_required("turn", lens.turn);
        program.use_uniform_if_required("focus", lens.focus);
        program.use_uniform_if_required("lens", lens.lens);
        program.use_uniform_if_required("scale", lens.scale);
        program.use_uniform_if_required("bold", stroke.bold);
        program.use_uniform_if_required("section", f32::from(u8::from(stroke.section)));
        program.use_uniform_if_required("grain", 1.0 / lens.fine);
        if program.requires_uniform("inks") {
            program.use_uniform_array("inks", &inks);
        }
        self.give("from", &lines.from);
        self.give("to", &lines.to);
        self.give("from_lean", &lines.from_lean);
        self.give("to_lean", &lines.to_lean);
        self.give("shift", &lines.shift);
        self.give("style", &lines.style);
        self.give("along", &lines.along);
        let states = RenderStates {
            write_mask: WriteMask::COLOR,
            depth_test: if stroke.deep { DepthTest::LessOrEqual } else { DepthTest::Always },
            blend: Blend::TRANSPARENCY,
            cull: Cull::None,
        };
        program.draw_elements(states, viewport, &lines.triangles);
    }

    /// A driver may leave out what it finds unused, and three-d panics on being given that.
    fn give<T: BufferDataType>(&self, name: &str, buffer: &VertexBuffer<T>) {
        if self.program.requires_attribute(name) {
            self.program.use_vertex_attribute(name, buffer);
        }
    }
}
