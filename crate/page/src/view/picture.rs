//! The model on the graphics card: brought there as it changes, and drawn.

use std::collections::BTreeMap;

use three_d::{ClearState, Context, CoreError, RenderTarget, Viewport};
use tubewright_core::layout::Vec3;
use web_sys::WebGl2RenderingContext;

use super::axes::axes;
use super::coolant::coolant;
use super::device::{Device, Lens};
use super::furniture::{Furniture, elbows};
use super::glass::{Glass, Glazing, Wall};
use super::grid::{Grid, Paper};
use super::guide::Guide;
use super::lathe::Body;
use super::look::Clarity;
use super::model::{Model, Tube};
use super::outline::{end_on, held, marks, outline, shadow, trace};
use super::pen::{Lines, Stroke};
use super::skin::skin;
use super::solid::{Faces, Finish};
use super::stroke::{INKS, Ink, Strokes};
use super::tags::tags;

/// How much wider the selected run's lines are.
const CHOSEN_BOLD: f32 = 2.2;
/// How much of a tube's lines shows through walls in front of them.
const FAINT: f32 = 0.38;

/// Everything on the graphics card. Dropped whole when the context is lost, built anew from the model after.
pub struct Picture {
    device: Device,
    /// Built once a wall is to be seen through.
    glass: Option<Glass>,
    furniture: Option<(u64, Placed)>,
    paper: Option<(u64, Paper, Option<Lines>)>,
    marks: Option<(u64, Option<Lines>)>,
    tubes: BTreeMap<String, OnCard>,
}

/// The furniture on the card.
struct Placed {
    fittings: Option<Faces>,
    seats: Option<Faces>,
    keep_outs: Option<Faces>,
    lines: Option<Lines>,
    opened: Option<Lines>,
    shadows: Option<Lines>,
}

/// A tube on the card.
struct OnCard {
    stamp: u64,
    guide: Option<Guide>,
    faces: Option<Faces>,
    body: Option<Lines>,
    opened: Option<Lines>,
    inside: Option<Inside>,
}

/// What shows of a tube once its wall is seen through, or its coolant is shown.
struct Inside {
    wall: Option<Wall>,
    coolant: Option<Faces>,
    flanks: Option<Lines>,
}

impl Picture {
    /// An empty picture on a context that is not lost.
    pub fn new(context: &WebGl2RenderingContext) -> Result<Self, String> {
        let device = Device::new(context)?;
        Ok(Self { device, glass: None, furniture: None, paper: None, marks: None, tubes: BTreeMap::new() })
    }

    /// Draws the model on a canvas of so many device pixels.
    pub fn draw(&mut self, model: &Model, width: u32, height: u32) {
        self.bring(model);
        let lens = Lens::new(&model.camera, &model.everything(), model.fine);
        let viewport = Viewport::new_at_origo(width, height);
        let [red, green, blue] = model.theme.paper;
        let screen = RenderTarget::screen(&self.device.context, width, height);
        screen.clear(ClearState::color_and_depth(red, green, blue, 1.0, 1.0));
        let _ = screen.write(|| {
            self.paint(model, &lens, viewport);
            Ok::<(), CoreError>(())
        });
    }

    /// Brings to the card what has changed since it was last drawn.
    fn bring(&mut self, model: &Model) {
        let context = &self.device.context;
        if self.furniture.as_ref().is_none_or(|(stamp, _)| *stamp != model.scene_stamp) {
            self.furniture = Some((model.scene_stamp, Placed::new(context, model)));
        }
        let paper = Grid::paper(&model.camera.frame());
        if self.paper.as_ref().is_none_or(|(stamp, which, _)| (*stamp, *which) != (model.scene_stamp, paper)) {
            self.paper = Some((model.scene_stamp, paper, Lines::new(context, &model.grid.lines(paper))));
        }
        if self.marks.as_ref().is_none_or(|(stamp, _)| *stamp != model.marks_stamp) {
            self.marks = Some((model.marks_stamp, Lines::new(context, &marks_of(model))));
        }
        let inside = model.clarity() != Clarity::Opaque || model.shows_coolant();
        if inside && self.glass.is_none() {
            // A card that cannot do this still draws the tubes as solid ones.
            self.glass = Glass::new(context).ok();
        }
        self.tubes.retain(|name, on_card| {
            let as_told = model.tubes.get(name).is_some_and(|tube| tube.stamp == on_card.stamp);
            as_told && (!inside || on_card.inside.is_some() || on_card.guide.is_none())
        });
        for (name, tube) in model.drawn() {
            if !self.tubes.contains_key(name) {
                self.tubes.insert(name.clone(), OnCard::new(context, model, name, tube));
            }
        }
    }

    fn paint(&self, model: &Model, lens: &Lens, viewport: Viewport) {
        let (theme, solid, pen) = (&model.theme, &self.device.solid, &self.device.pen);
        let mut inks = theme.inks;
        let faded = &mut inks[Ink::Minor as usize][3];
        *faded *= model.grid.minor_strength(model.camera.scale()) as f32;
        let weight = model.line_weight() as f32;
        let stroke = Stroke { inks: &inks, bold: weight, section: model.section, deep: true };
        let line = |lines: &Option<Lines>, stroke: &Stroke<'_>| {
            if let Some(lines) = lines {
                pen.draw(lines, stroke, lens, viewport);
            }
        };
        let fill = |faces: &Option<Faces>, finish: &Finish| {
            if let Some(faces) = faces {
                solid.draw(faces, finish, lens, model.section, viewport);
            }
        };
        let behind = Stroke { bold: 1.0, deep: false, ..stroke };
        if let Some((_, placed)) = &self.furniture
            && model.camera.frame().toward.z > 0.0
        {
            line(&placed.shadows, &behind);
        }
        if let Some((_, _, paper)) = &self.paper {
            line(paper, &behind);
        }
        let plain =
            |tone: [f32; 3]| Finish { tone, opacity: 1.0, cut: theme.cut, wet: None, shade: theme.shade, gloss: 0.02 };
        let chosen = |name: &String| model.selected.as_ref() == Some(name);
        let shown = || self.tubes.iter().filter(|(name, _)| model.scene.run(name).is_none_or(|run| run.made));
        let glass = self.glass.as_ref().filter(|_| model.clarity() != Clarity::Opaque);
        // Without a centreline a wall's thickness is not known, and it stays solid.
        let walled = |tube: &OnCard| glass.and(tube.inside.as_ref()).and_then(|inside| inside.wall.as_ref()).is_some();
        for (name, tube) in shown() {
            if !walled(tube) {
                let finish = Finish { wet: Some(theme.coolant), cut: model.cut(), ..plain(model.tone(chosen(name))) };
                fill(&tube.faces, &finish);
            }
            if let Some(inside) = tube.inside.as_ref().filter(|_| model.shows_coolant()) {
                fill(&inside.coolant, &Finish { gloss: 0.16, ..plain(theme.liquid) });
            }
        }
        if let Some((_, placed)) = &self.furniture {
            fill(&placed.seats, &plain(theme.seat));
            fill(&placed.fittings, &Finish { cut: theme.cut_fitting, gloss: 0.08, ..plain(theme.fitting) });
            let [red, green, blue, opacity] = theme.keep_out;
            fill(&placed.keep_outs, &Finish { opacity, ..plain([red, green, blue]) });
            line(&placed.lines, &stroke);
            if model.section {
                line(&placed.opened, &stroke);
            }
        }
        let mut chosen_inks = inks;
        chosen_inks[Ink::Outline as usize] = theme.chosen_outline;
        chosen_inks[Ink::Edge as usize] = theme.chosen_outline;
        let chosen_stroke = Stroke { inks: &chosen_inks, bold: CHOSEN_BOLD * weight, ..stroke };
        if let Some(glass) = glass {
            let faint = [inks, chosen_inks].map(fainter);
            for (name, tube) in shown().filter(|(_, tube)| walled(tube)) {
                line(&tube.body, &Stroke { inks: &faint[usize::from(chosen(name))], ..stroke });
                if let Some(inside) = &tube.inside {
                    line(&inside.flanks, &stroke);
                }
            }
            self.glaze(glass, model, lens, viewport);
        }
        for (name, tube) in shown() {
            let with = if chosen(name) { &chosen_stroke } else { &stroke };
            line(&tube.body, with);
            if model.section {
                line(&tube.opened, &Stroke { bold: weight, ..*with });
            }
        }
        if let Some((_, marks)) = &self.marks {
            line(marks, &stroke);
        }
        line(&Lines::new(&self.device.context, &self.of_this_sight(model)), &stroke);
    }

    /// The walls that are seen through: of all of them the nearest skin, once.
    fn glaze(&self, glass: &Glass, model: &Model, lens: &Lens, viewport: Viewport) {
        let walls: Vec<(&Wall, Glazing)> = self
            .tubes
            .iter()
            .filter_map(|(name, tube)| {
                let (wall, run) = (tube.inside.as_ref()?.wall.as_ref()?, model.scene.run(name)?);
                let glazing = Glazing {
                    tone: model.tone(model.selected.as_ref() == Some(name)),
                    verge: model.theme.verge,
                    clarity: model.clarity(),
                    bore: 0.5 * run.bore as f32,
                    filled: model.shows_coolant(),
                };
                run.made.then_some((wall, glazing))
            })
            .collect();
        for (wall, glazing) in &walls {
            glass.mark(wall, glazing, lens, viewport);
        }
        for (wall, glazing) in &walls {
            glass.draw(wall, glazing, lens, viewport);
        }
    }

    /// Lines that depend on the direction of sight, made anew for each picture.
    fn of_this_sight(&self, model: &Model) -> Strokes {
        let (at, length) = model.axes();
        let mut strokes = axes(&at, length, &model.camera);
        let (sight, scale) = (model.camera.frame().toward, model.camera.scale());
        elbows(&mut strokes, &model.scene, model.section, &sight, scale);
        for (name, tube) in &self.tubes {
            if let (Some(guide), Some(run)) = (&tube.guide, model.scene.run(name)) {
                let through = self.glass.is_some() && model.clarity() != Clarity::Opaque;
                end_on(&mut strokes, guide, run, (model.section, through), &sight, scale);
            }
        }
        strokes.append(tags(&model.scene, &model.camera));
        strokes
    }
}

impl Placed {
    fn new(context: &Context, model: &Model) -> Self {
        let furniture = Furniture::of(&model.scene);
        let mut shadows = Strokes::default();
        for run in model.scene.runs.iter().filter(|run| run.made) {
            shadows.append(shadow(run, model.grid.corners().0.z));
        }
        let faces = |body: &Body| Faces::new(context, &body.points, &body.normals, &body.radials, &body.indices);
        Self {
            fittings: faces(&furniture.fittings),
            seats: faces(&furniture.seats),
            keep_outs: faces(&furniture.keep_outs),
            lines: Lines::new(context, &furniture.lines),
            opened: Lines::new(context, &furniture.opened),
            shadows: Lines::new(context, &shadows),
        }
    }
}

impl OnCard {
    fn new(context: &Context, model: &Model, name: &str, tube: &Tube) -> Self {
        let guide = model.guide(name);
        let skin = skin(&tube.positions, &tube.indices, guide.as_ref());
        let outline = outline(&skin, guide.as_ref());
        let wanted = model.clarity() != Clarity::Opaque || model.shows_coolant();
        let inside = guide.as_ref().filter(|_| wanted).map(|guide| {
            let body = coolant(&skin, guide);
            Inside {
                wall: Wall::new(context, &skin, guide),
                coolant: Faces::new(context, &body.points, &body.normals, &body.radials, &body.indices),
                flanks: Lines::new(context, &outline.filled),
            }
        });
        Self {
            inside,
            stamp: tube.stamp,
            faces: Faces::new(context, &skin.points, &skin.normals, &skin.radials, &skin.indices),
            body: Lines::new(context, &outline.body),
            opened: Lines::new(context, &outline.opened),
            guide,
        }
    }
}

/// The same inks, for lines behind walls that are seen through.
fn fainter(mut inks: [[f32; 4]; INKS]) -> [[f32; 4]; INKS] {
    for ink in &mut inks {
        ink[3] *= FAINT;
    }
    inks
}

/// Marks on the selected run, and lines for the runs that have no tube.
fn marks_of(model: &Model) -> Strokes {
    let mut strokes = Strokes::default();
    for run in model.traced() {
        strokes.append(trace(run));
    }
    let selected = model.selected.as_deref().and_then(|name| Some((model.scene.run(name)?, model.guide(name)?)));
    if let Some((run, guide)) = selected.filter(|(run, _)| run.made) {
        let mouths: Vec<(Vec3, Vec3)> =
            model.scene.ports.iter().map(|port| (Vec3::from(port.mouth), Vec3::from(port.out))).collect();
        strokes.append(marks(run, &guide, &mouths));
    }
    if let Some(at) = &model.held {
        strokes.append(held(at));
    }
    strokes
}
