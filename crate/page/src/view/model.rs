//! Everything the preview was told, and whether the picture still shows it. Plain data: the picture is made from it
//! anew whenever the graphics card forgets.

use std::collections::BTreeMap;

use tubewright_core::layout::Vec3;

use super::camera::{Ball, Camera, Side};
use super::grid::Grid;
use super::guide::Guide;
use super::look::{Clarity, Look, mixed, on_paper};
use super::scene::{Run, Scene};
use super::skin;
use super::theme::Theme;
use super::words;

/// A tube's mesh as it was handed over.
#[derive(Debug, Clone)]
pub struct Tube {
    /// x, y, z of each vertex, mm.
    pub positions: Vec<f32>,
    /// Three vertices a triangle.
    pub indices: Vec<u32>,
    /// Changes whenever the mesh, or the centreline that it is drawn by, does.
    pub stamp: u64,
}

/// What is to be seen.
#[derive(Debug, Clone)]
pub struct Model {
    /// The eye.
    pub camera: Camera,
    /// What stands in the scene.
    pub scene: Scene,
    /// The squared paper.
    pub grid: Grid,
    /// Meshes by run.
    pub tubes: BTreeMap<String, Tube>,
    /// Colours.
    pub theme: Theme,
    /// True where the tubes are cut open.
    pub section: bool,
    /// Whether the coolant is shown; none where the material decides.
    pub coolant: Option<bool>,
    /// The selected run.
    pub selected: Option<String>,
    /// Where the handle is that is held, mm.
    pub held: Option<[f64; 3]>,
    /// True while it is dragged: the picture then stays where it is, for the pointer would lose the handle.
    pub dragged: bool,
    /// Device pixels a CSS pixel.
    pub fine: f64,
    /// Changes with the scene.
    pub scene_stamp: u64,
    /// Changes with the scene, the selected run, and which runs have tubes.
    pub marks_stamp: u64,
    /// True where the picture no longer shows this.
    pub dirty: bool,
    balls: Vec<Ball>,
    stamps: u64,
    /// True from a move by hand until the next fit: then the picture stays where it was put.
    placed_by_hand: bool,
    fitted_once: bool,
}

impl Default for Model {
    fn default() -> Self {
        Self::new()
    }
}

impl Model {
    /// An empty scene, light, seen from the corner.
    pub fn new() -> Self {
        Self {
            camera: Camera::new(),
            scene: Scene::default(),
            grid: Grid::of(&[]),
            tubes: BTreeMap::new(),
            theme: Theme::light(),
            section: false,
            coolant: None,
            selected: None,
            held: None,
            dragged: false,
            fine: 1.0,
            scene_stamp: 0,
            marks_stamp: 0,
            dirty: true,
            balls: Vec::new(),
            stamps: 0,
            placed_by_hand: false,
            fitted_once: false,
        }
    }

    /// Takes a new scene; tubes of runs that are not in it go. The error says what is wrong with the text, and the
    /// earlier scene stays. Until the eye is moved by hand the picture follows, but only where the new scene would not
    /// be in it, so that a small edit moves the tube and not the paper.
    pub fn set_scene(&mut self, text: &str) -> Result<(), String> {
        let scene = Scene::read(text)?;
        let stamp = self.next_stamp();
        self.tubes.retain(|name, tube| {
            let (old, new) = (self.scene.run(name), scene.run(name));
            if old != new {
                tube.stamp = stamp;
            }
            new.is_some()
        });
        self.scene = scene;
        self.scene_stamp = stamp;
        self.marks_stamp = stamp;
        self.balls = self.scene.balls();
        self.grid = Grid::of(&self.balls);
        let settled = self.dragged || self.placed_by_hand || (self.fitted_once && self.camera.fits(&self.framed()));
        if !settled {
            self.fit();
        }
        self.dirty = true;
        Ok(())
    }

    /// Takes a run's mesh, or says what is wrong with it and keeps the earlier one.
    pub fn set_tube(&mut self, run: &str, positions: Vec<f32>, indices: Vec<u32>) -> Result<(), String> {
        if let Some(fault) = skin::fault(&positions, &indices) {
            return Err(fault);
        }
        let stamp = self.next_stamp();
        self.tubes.insert(run.to_string(), Tube { positions, indices, stamp });
        self.marks_stamp = stamp;
        self.dirty = true;
        Ok(())
    }

    /// Forgets a run's mesh.
    pub fn drop_tube(&mut self, run: &str) {
        if self.tubes.remove(run).is_some() {
            self.marks_stamp = self.next_stamp();
            self.dirty = true;
        }
    }

    /// Forgets scene, tubes and selection; the eye goes back to the corner.
    pub fn clear(&mut self) {
        let (width, height) = self.camera.size();
        let (theme, fine, stamps) = (self.theme.clone(), self.fine, self.stamps);
        *self = Self { theme, fine, stamps, section: self.section, coolant: self.coolant, ..Self::new() };
        self.scene_stamp = self.next_stamp();
        self.marks_stamp = self.scene_stamp;
        self.resize(width, height, fine);
    }

    /// Takes the picture's size, CSS pixels, and how many device pixels each of those is.
    pub fn resize(&mut self, width: f64, height: f64, fine: f64) {
        if (width, height) != self.camera.size() || fine != self.fine {
            self.camera.resize(width, height);
            self.fine = fine;
            self.dirty = true;
            if !self.placed_by_hand {
                self.fit();
            }
        }
    }

    /// Turns the scene.
    pub fn orbit(&mut self, dx: f64, dy: f64) {
        self.camera.orbit(dx, dy);
        self.dirty = true;
    }

    /// Moves the picture.
    pub fn pan(&mut self, dx: f64, dy: f64) {
        self.camera.pan(dx, dy);
        self.placed_by_hand = true;
        self.dirty = true;
    }

    /// Enlarges about a point of the picture.
    pub fn zoom(&mut self, factor: f64, across: f64, down: f64) {
        self.camera.zoom(factor, across, down);
        self.placed_by_hand = true;
        self.dirty = true;
    }

    /// Shows everything.
    pub fn fit(&mut self) {
        let framed = self.framed();
        self.camera.fit(&framed);
        self.placed_by_hand = false;
        self.fitted_once = self.camera.has_picture() && !self.balls.is_empty();
        self.dirty = true;
    }

    /// Shows everything from a side.
    pub fn look(&mut self, side: Side) {
        self.camera.look(side);
        self.fit();
    }

    /// Selects a run, or none.
    pub fn select(&mut self, run: Option<String>) {
        if run != self.selected {
            self.selected = run;
            self.marks_stamp = self.next_stamp();
            self.dirty = true;
        }
    }

    /// Marks a handle as held, and as dragged or not; or none.
    pub fn hold(&mut self, at: Option<[f64; 3]>, dragged: bool) {
        self.dragged = dragged;
        if at != self.held {
            self.held = at;
            self.marks_stamp = self.next_stamp();
            self.dirty = true;
        }
    }

    /// Whether the coolant is seen: where it was chosen, else where the material lets it be seen.
    pub fn shows_coolant(&self) -> bool {
        let seen = self.scene.look.is_some_and(|look| look.is_see_through()) && !self.section;
        self.coolant.unwrap_or(seen)
    }

    /// How clear the tubes' walls are drawn. A section needs walls that can be cut; the coolant needs some that can be
    /// seen through, whatever they are made of.
    pub fn clarity(&self) -> Clarity {
        let stated = self.scene.look.map_or(Clarity::Opaque, |look| look.clarity);
        match stated {
            _ if self.section => Clarity::Opaque,
            Clarity::Opaque if self.shows_coolant() => Clarity::Clear,
            stated => stated,
        }
    }

    /// The colour of a tube's material on the theme's paper: as stated, else clay.
    pub fn tone(&self, chosen: bool) -> [f32; 3] {
        let Some(Look { colour, .. }) = self.scene.look else {
            return if chosen { self.theme.chosen } else { self.theme.tube };
        };
        let tone = on_paper(colour, self.theme.paper);
        if chosen { mixed(tone, self.theme.chosen, 0.45) } else { tone }
    }

    /// Cut tube, and its hatching: of a stated colour both are shades of it.
    pub fn cut(&self) -> [[f32; 3]; 2] {
        let Some(look) = self.scene.look else { return self.theme.cut };
        [mixed(look.colour, [1.0; 3], 0.72), mixed(on_paper(look.colour, [0.0; 3]), [0.0; 3], 0.5)]
    }

    /// Runs whose tube is drawn: made, as far as the scene knows, and with a mesh.
    pub fn drawn(&self) -> impl Iterator<Item = (&String, &Tube)> {
        self.tubes.iter().filter(|(name, _)| self.scene.run(name).is_none_or(|run| run.made))
    }

    /// Runs of the scene that are drawn as a line.
    pub fn traced(&self) -> impl Iterator<Item = &Run> {
        self.scene.runs.iter().filter(|run| !run.made || !self.tubes.contains_key(&run.name))
    }

    /// The centreline of a run, where the scene holds it.
    pub fn guide(&self, name: &str) -> Option<Guide> {
        self.scene.run(name).and_then(Guide::of)
    }

    /// Where the axes start, and their length, mm.
    pub fn axes(&self) -> (Vec3, f64) {
        (self.grid.nearest_to_datum(), self.grid.major())
    }

    /// Spheres that hold everything drawn, paper and axes too.
    pub fn everything(&self) -> Vec<Ball> {
        let (low, high) = self.grid.corners();
        let (axes, length) = self.axes();
        let extra = [(low, 0.0), (high, 0.0), (axes, 1.2 * length)].map(|(centre, radius)| Ball { centre, radius });
        let across = Ball { centre: (low + high) / 2.0, radius: (high - low).norm() / 2.0 };
        self.balls.iter().copied().chain(extra).chain([across]).collect()
    }

    /// Spacing of the finest squares that show, mm.
    pub fn grid_step(&self) -> f64 {
        self.grid.shown_step(self.camera.scale())
    }

    /// The picture in plain words.
    pub fn description(&self) -> String {
        let drawn: Vec<&str> = self.drawn().map(|(name, _)| name.as_str()).collect();
        let drawn = self.numbered(&drawn);
        words::description(&self.scene, &drawn, self.selected.as_deref(), self.section, self.grid_step())
            + words::shown(self.scene.look.map(|look| look.clarity), self.shows_coolant())
    }

    /// Runs in the design's order, with the numbers that stand beside them where there are several.
    fn numbered(&self, names: &[&str]) -> Vec<String> {
        let runs = &self.scene.runs;
        let number = |(index, run): (usize, &Run)| match runs.len() {
            1 => run.name.clone(),
            _ => format!("{} {}", index + 1, run.name),
        };
        let here = runs.iter().enumerate().filter(|(_, run)| names.contains(&run.name.as_str())).map(number);
        let elsewhere = names.iter().filter(|name| self.scene.run(name).is_none()).map(|name| (*name).to_string());
        here.chain(elsewhere).collect()
    }

    /// What a fit shows: everything that stands in the scene, with the axes where they stand by it; or, where nothing
    /// does, the paper.
    fn framed(&self) -> Vec<Ball> {
        let point = |centre: Vec3| Ball { centre, radius: 0.0 };
        if self.balls.is_empty() {
            let (low, high) = self.grid.corners();
            return vec![point(low), point(high)];
        }
        let (at, length) = self.axes();
        let tips = [Vec3::zeros(), Vec3::x(), Vec3::y(), Vec3::z()].map(|axis| point(at + axis * length));
        self.balls.iter().copied().chain(tips.into_iter().filter(|_| at == Vec3::zeros())).collect()
    }

    /// How wide lines are drawn, as a share: less where the whole picture is small, so that ink does not fill it.
    pub fn line_weight(&self) -> f64 {
        let thinnest = self.scene.runs.iter().map(|run| run.outer_diameter).fold(f64::INFINITY, f64::min);
        if thinnest.is_finite() { (thinnest * self.camera.scale() / 16.0).clamp(0.6, 1.0) } else { 1.0 }
    }

    fn next_stamp(&mut self) -> u64 {
        self.stamps += 1;
        self.stamps
    }
}
