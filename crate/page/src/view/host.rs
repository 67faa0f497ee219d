//! The preview as JavaScript sees it.

use tubewright_core::layout::Vec3;
use wasm_bindgen::prelude::*;
use web_sys::{HtmlCanvasElement, WebGl2RenderingContext};

use super::camera::Side;
use super::device;
use super::grip::{grips, spot, straight_after};
use super::model::Model;
use super::picture::Picture;
use super::sight::picked;
use super::theme::Theme;

/// Largest canvas side, device pixels. A browser that cannot draw so much draws less and stretches it.
const LARGEST_SIDE: u32 = 8192;

/// The preview on a canvas. It listens to no events and starts no frames: the page calls it, asks `needsDraw()` after,
/// and calls `draw()` in an animation frame where that says so. Movements are in CSS pixels. The projection is parallel,
/// so that lengths read true at any depth and `scale()` holds everywhere.
#[wasm_bindgen]
pub struct View {
    canvas: HtmlCanvasElement,
    context: WebGl2RenderingContext,
    model: Model,
    picture: Option<Picture>,
}

#[wasm_bindgen]
impl View {
    /// A preview on a canvas that has no other context. Throws an Error where there is no WebGL2.
    #[wasm_bindgen(constructor)]
    pub fn new(canvas: HtmlCanvasElement) -> Result<View, JsError> {
        let context = device::open(&canvas).map_err(|fault| JsError::new(&fault))?;
        let picture = Picture::new(&context).map_err(|fault| JsError::new(&fault))?;
        Ok(Self { canvas, context, model: Model::new(), picture: Some(picture) })
    }

    /// Takes the text that the engine's `scene` gives. Tubes of runs that are no longer in it go. Throws an Error on a
    /// text that is no scene; the earlier one stays.
    #[wasm_bindgen(js_name = setScene)]
    pub fn set_scene(&mut self, scene: &str) -> Result<(), JsError> {
        self.model.set_scene(scene).map_err(|fault| JsError::new(&fault))
    }

    /// Takes a run's mesh as the engine's `tubeMesh` gives it, before or after the scene that names the run. Throws an
    /// Error on a mesh that cannot be drawn; the earlier one stays.
    #[wasm_bindgen(js_name = setTube)]
    pub fn set_tube(&mut self, run: &str, positions: Vec<f32>, indices: Vec<u32>) -> Result<(), JsError> {
        self.model.set_tube(run, positions, indices).map_err(|fault| JsError::new(&fault))
    }

    /// Forgets a run's mesh; the run is then drawn as a line.
    #[wasm_bindgen(js_name = dropTube)]
    pub fn drop_tube(&mut self, run: &str) {
        self.model.drop_tube(run);
    }

    /// Forgets scene, tubes and selection, and looks from the corner again.
    pub fn clear(&mut self) {
        self.model.clear();
    }

    /// Sets the canvas's size in device pixels and how many of those a CSS pixel has. It clears the canvas: call
    /// `draw()` in the same task.
    pub fn resize(&mut self, width: u32, height: u32, dpr: f64) {
        let fine = if dpr.is_finite() { dpr.clamp(0.25, 16.0) } else { 1.0 };
        let (width, height) = (width.min(LARGEST_SIDE), height.min(LARGEST_SIDE));
        if (self.canvas.width(), self.canvas.height()) != (width, height) {
            self.canvas.set_width(width);
            self.canvas.set_height(height);
            self.model.dirty = true;
        }
        self.model.resize(f64::from(width) / fine, f64::from(height) / fine, fine);
    }

    /// Turns the scene as if dragged by so many CSS pixels to the right and down; 450 turn it half round.
    pub fn orbit(&mut self, dx: f64, dy: f64) {
        if dx.is_finite() && dy.is_finite() {
            self.model.orbit(dx, dy);
        }
    }

    /// Moves the picture by so many CSS pixels to the right and down.
    pub fn pan(&mut self, dx: f64, dy: f64) {
        if dx.is_finite() && dy.is_finite() {
            self.model.pan(dx, dy);
        }
    }

    /// Enlarges by a factor (above 1: nearer) about a point of the canvas: shares of its width and height from the top
    /// left, 0.5 and 0.5 being the middle.
    pub fn zoom(&mut self, factor: f64, across: f64, down: f64) {
        if factor.is_finite() && factor > 0.0 && across.is_finite() && down.is_finite() {
            self.model.zoom(factor, across, down);
        }
    }

    /// Moves and scales so that everything is in the picture, without turning.
    pub fn fit(&mut self) {
        self.model.fit();
    }

    /// Looks from a side (front, back, left, right, top, bottom, corner) and fits. Throws an Error on another word.
    pub fn look(&mut self, side: &str) -> Result<(), JsError> {
        let side = Side::named(side).ok_or_else(|| JsError::new(&format!("there is no side called {side}")))?;
        self.model.look(side);
        Ok(())
    }

    /// Cuts tubes and fittings open along their axes, the half toward the eye taken away; or closes them.
    #[wasm_bindgen(js_name = setSection)]
    pub fn set_section(&mut self, open: bool) {
        self.model.dirty |= open != self.model.section;
        self.model.section = open;
    }

    /// Shows the coolant in the tubes, or not; undefined where their material decides, which shows it where it can be
    /// seen through.
    #[wasm_bindgen(js_name = setCoolant)]
    pub fn set_coolant(&mut self, shown: Option<bool>) {
        self.model.dirty |= shown != self.model.coolant;
        self.model.coolant = shown;
    }

    /// Whether the coolant is shown.
    #[wasm_bindgen(js_name = showsCoolant)]
    pub fn shows_coolant(&self) -> bool {
        self.model.shows_coolant()
    }

    /// Takes a theme, light or dark. Throws an Error on another word.
    #[wasm_bindgen(js_name = setTheme)]
    pub fn set_theme(&mut self, name: &str) -> Result<(), JsError> {
        let theme = Theme::named(name).ok_or_else(|| JsError::new(&format!("there is no theme called {name}")))?;
        self.model.dirty |= theme != self.model.theme;
        self.model.theme = theme;
        Ok(())
    }

    /// Marks a run, or none where null.
    #[wasm_bindgen(js_name = setSelected)]
    pub fn set_selected(&mut self, run: Option<String>) {
        self.model.select(run);
    }

    /// True where `draw()` would change the picture; false while the context is lost or the canvas has no area.
    #[wasm_bindgen(js_name = needsDraw)]
    pub fn needs_draw(&self) -> bool {
        self.model.dirty && self.can_draw()
    }

    /// Draws. Does nothing while the context is lost or the canvas has no area.
    pub fn draw(&mut self) {
        if !self.can_draw() {
            return;
        }
        let (width, height) = (self.context.drawing_buffer_width(), self.context.drawing_buffer_height());
        if let (Some(picture), Ok(width), Ok(height)) = (&mut self.picture, u32::try_from(width), u32::try_from(height))
        {
            picture.draw(&self.model, width, height);
            self.model.dirty = false;
        }
    }

    /// Draws as `draw()` does, but on a canvas so many times as wide and high, calls `take` while that stands, and puts
    /// the canvas back as it was. The picture is the same, only finer. Throws an Error where nothing can be drawn.
    #[wasm_bindgen(js_name = drawLarge)]
    pub fn draw_large(&mut self, times: f64, take: &js_sys::Function) -> Result<(), JsError> {
        let nothing = || JsError::new("nothing can be drawn: the graphics are lost, or the preview has no area");
        if !self.can_draw() {
            return Err(nothing());
        }
        let (width, height, fine) = (self.canvas.width(), self.canvas.height(), self.model.fine);
        let most = f64::from(LARGEST_SIDE) / f64::from(width.max(height));
        let times = if times.is_finite() { times.clamp(1.0, most.max(1.0)) } else { 1.0 };
        let large = |side: u32| libm::round(f64::from(side) * times) as u32;
        self.canvas.set_width(large(width));
        self.canvas.set_height(large(height));
        self.model.fine = fine * times;
        self.draw();
        let taken = if self.can_draw() { take.call0(&JsValue::NULL).map_err(|_| nothing()) } else { Err(nothing()) };
        self.canvas.set_width(width);
        self.canvas.set_height(height);
        self.model.fine = fine;
        self.model.dirty = true;
        self.draw();
        taken.map(|_| ())
    }

    /// To be called on `webglcontextlost`, after `preventDefault()`: lets go of all that was on the graphics card.
    pub fn lost(&mut self) {
        self.picture = None;
        self.model.dirty = true;
    }

    /// To be called on `webglcontextrestored`: what was told before is drawn anew by the next `draw()`. Throws an Error
    /// where the context is still lost.
    pub fn restored(&mut self) -> Result<(), JsError> {
        self.picture = None;
        self.model.dirty = true;
        self.picture = Some(Picture::new(&self.context).map_err(|fault| JsError::new(&fault))?);
        Ok(())
    }

    /// What the picture shows, in plain words.
    pub fn description(&self) -> String {
        self.model.description()
    }

    /// The name of what draws: a graphics card, or software in its place.
    pub fn renderer(&self) -> String {
        device::renderer(&self.context)
    }

    /// Spacing of the finest squares that show on the paper, mm. It changes with scene and zoom.
    #[wasm_bindgen(js_name = gridStep)]
    pub fn grid_step(&self) -> f64 {
        self.model.grid_step()
    }

    /// CSS pixels a millimetre, the same everywhere in the picture.
    pub fn scale(&self) -> f64 {
        self.model.camera.scale()
    }

    /// Where a point of the scene is on the canvas: CSS pixels from its top left.
    pub fn locate(&self, x: f64, y: f64, z: f64) -> Vec<f64> {
        let (left, top) = self.model.camera.project(&Vec3::new(x, y, z));
        vec![left, top]
    }

    /// The handles of the selected run, as JSON: `[{ kind, station, at, seen, slide? }]`, `at` in the scene and `seen` on
    /// the canvas.
    pub fn handles(&self) -> String {
        let run = self.model.selected.as_deref().and_then(|name| self.model.scene.run(name));
        let grips = run.map(|run| grips(run, &self.model.camera)).unwrap_or_default();
        serde_json::to_string(&grips).unwrap_or_default()
    }

    /// Marks a place of the scene as that of the handle that is held. While it is dragged no new scene moves the picture.
    pub fn hold(&mut self, x: f64, y: f64, z: f64, dragged: bool) {
        self.model.hold(Some([x, y, z]).filter(|at| at.iter().all(|part| part.is_finite())), dragged);
    }

    /// No handle is held any more.
    #[wasm_bindgen(js_name = letGo)]
    pub fn let_go(&mut self) {
        self.model.hold(None, false);
    }

    /// The tube at a place of the canvas, CSS pixels from its top left, as JSON: `{ run, at, corner }`, `corner` being
    /// where a new one would go. Null where there is none.
    pub fn pick(&self, x: f64, y: f64) -> String {
        let spot = picked(&self.model.camera, &self.model.scene, (x, y)).map(|it| spot(&it));
        serde_json::to_string(&spot).unwrap_or_default()
    }

    /// The middle of the straight after a station of the selected run, or of its longest straight; as `pick` gives it.
    #[wasm_bindgen(js_name = straightAfter)]
    pub fn straight_after(&self, station: Option<u32>) -> String {
        let run = self.model.selected.as_deref().and_then(|name| self.model.scene.run(name));
        let spot = run.and_then(|run| straight_after(run, station.map(|it| it as usize)));
        serde_json::to_string(&spot).unwrap_or_default()
    }

    /// The point of a plane through a point (`origin`), square to a unit direction, that is seen at a place of the
    /// canvas; empty where the plane is seen edge on.
    #[wasm_bindgen(js_name = onPlane)]
    pub fn on_plane(&self, x: f64, y: f64, origin: &[f64], normal: &[f64]) -> Vec<f64> {
        let (Some(origin), Some(normal)) = (vector(origin), vector(normal)) else { return Vec::new() };
        self.model.camera.on_plane((x, y), &origin, &normal).map_or_else(Vec::new, |at| vec![at.x, at.y, at.z])
    }

    /// The point of a line through a point (`origin`) along a unit direction that is seen nearest to a place of the
    /// canvas; empty where the line is seen end on.
    #[wasm_bindgen(js_name = onLine)]
    pub fn on_line(&self, x: f64, y: f64, origin: &[f64], direction: &[f64]) -> Vec<f64> {
        let (Some(origin), Some(direction)) = (vector(origin), vector(direction)) else { return Vec::new() };
        self.model.camera.on_line((x, y), &origin, &direction).map_or_else(Vec::new, |at| vec![at.x, at.y, at.z])
    }

    /// Unit directions of the scene: to the right of the picture, up it, and out of it; nine numbers.
    pub fn axes(&self) -> Vec<f64> {
        let frame = self.model.camera.frame();
        [frame.right, frame.up, frame.toward].iter().flat_map(|it| [it.x, it.y, it.z]).collect()
    }

    fn can_draw(&self) -> bool {
        self.picture.is_some()
            && self.model.camera.has_picture()
            && self.context.drawing_buffer_width() > 0
            && self.context.drawing_buffer_height() > 0
            && !self.context.is_context_lost()
    }
}

/// Three finite numbers as a vector.
fn vector(parts: &[f64]) -> Option<Vec3> {
    let [x, y, z]: [f64; 3] = parts.try_into().ok()?;
    Some(Vec3::new(x, y, z)).filter(|it| it.iter().all(|part| part.is_finite()))
}
