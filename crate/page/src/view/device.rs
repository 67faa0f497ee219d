//! The canvas's WebGL2 context and the programs that draw on it.

use std::sync::Arc;

use three_d::{Context, Mat3, Vec3, Vec4, vec3, vec4};
use wasm_bindgen::JsCast;
use web_sys::{HtmlCanvasElement, WebGl2RenderingContext, WebGlContextAttributes, WebglDebugRendererInfo};

use super::camera::{Ball, Camera};
use super::pen::Pen;
use super::solid::Solid;

/// Everything that lives on the graphics card and is shared; gone when the context is lost.
pub struct Device {
    /// The context.
    pub context: Context,
    /// Draws faces.
    pub solid: Solid,
    /// Draws lines.
    pub pen: Pen,
}

/// The canvas's context, or plain words on why there is none.
pub fn open(canvas: &HtmlCanvasElement) -> Result<WebGl2RenderingContext, String> {
    let wanted = WebGlContextAttributes::new();
    wanted.set_alpha(false);
    // Lines soften their own edges and lie on every outline, so samples would cost software renderers two thirds of
    // their time and show nothing.
    wanted.set_antialias(false);
    wanted.set_depth(true);
    wanted.set_stencil(false);
    let found = canvas.get_context_with_context_options("webgl2", &wanted).ok().flatten();
    let context = found.and_then(|object| object.dyn_into::<WebGl2RenderingContext>().ok());
    context.ok_or_else(|| "this browser offers no WebGL2 here".to_string())
}

/// The name by which the graphics card, or the software in its place, calls itself.
pub fn renderer(context: &WebGl2RenderingContext) -> String {
    let ask = |what: u32| context.get_parameter(what).ok().and_then(|value| value.as_string());
    let plain = ask(WebGl2RenderingContext::RENDERER).unwrap_or_default();
    let hidden = plain.is_empty() || plain.starts_with("WebKit");
    if hidden && context.get_extension("WEBGL_debug_renderer_info").ok().flatten().is_some() {
        return ask(WebglDebugRendererInfo::UNMASKED_RENDERER_WEBGL).unwrap_or(plain);
    }
    plain
}

impl Device {
    /// Builds the programs. three-d panics on a lost context, so a lost one is refused first.
    pub fn new(context: &WebGl2RenderingContext) -> Result<Self, String> {
        if context.is_context_lost() {
            return Err("the graphics context is lost".to_string());
        }
        let low = three_d::context::Context::from_webgl2_context(context.clone());
        #[expect(clippy::arc_with_non_send_sync, reason = "three-d asks for an Arc on one thread too")]
        let context = Context::from_gl_context(Arc::new(low)).map_err(|fault| fault.to_string())?;
        let solid = Solid::new(&context)?;
        let pen = Pen::new(&context)?;
        Ok(Self { context, solid, pen })
    }
}

/// The eye as the programs' uniforms.
pub struct Lens {
    /// Rows: right, up, toward the eye.
    pub turn: Mat3,
    /// The point in the middle of the picture.
    pub focus: Vec3,
    /// Millimetres to the picture's -1 to 1: across, up, in depth; and the depth of the middle, mm.
    pub lens: Vec4,
    /// CSS pixels a millimetre.
    pub scale: f32,
    /// Device pixels a CSS pixel.
    pub fine: f32,
    /// The datum in device pixels from the picture's lower left: where hatching starts.
    pub anchor: [f32; 2],
}

impl Lens {
    /// The uniforms for what `camera` sees of `balls`.
    pub fn new(camera: &Camera, balls: &[Ball], fine: f64) -> Self {
        let frame = camera.frame();
        let (right, up, toward) = (frame.right, frame.up, frame.toward);
        let column = |axis: usize| vec3(right[axis] as f32, up[axis] as f32, toward[axis] as f32);
        let (width, height) = camera.size();
        let (far, near) = camera.depths(balls);
        let room = 0.5 * (near - far) * 1.05 + 1.0;
        let across = |size: f64| (2.0 * camera.scale() / size) as f32;
        let focus = camera.focus();
        let (left, top) = camera.project(&tubewright_core::layout::Vec3::zeros());
        Self {
            turn: Mat3::from_cols(column(0), column(1), column(2)),
            focus: vec3(focus.x as f32, focus.y as f32, focus.z as f32),
            lens: vec4(across(width), across(height), (1.0 / room) as f32, (0.5 * (near + far)) as f32),
            scale: camera.scale() as f32,
            fine: fine as f32,
            anchor: [(left * fine % 7e3) as f32, ((height - top) * fine % 7e3) as f32],
        }
    }
}
