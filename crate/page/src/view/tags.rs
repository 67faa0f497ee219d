//! Numbers that tell the tubes apart whatever their colour: each in a ring beside its tube, a leader line between, as
//! technical drawings refer to their parts (ISO 6433).

use tubewright_core::layout::Vec3;

use super::camera::Camera;
use super::scene::{Run, Scene};
use super::sight::picked;
use super::stroke::{End, Ink, Strokes, Style};

/// With more tubes than this no place is looked for where one is in sight: it would take longer than a picture may.
const LOOKED_FOR: usize = 16;
/// Straights of a run that are tried, the longest first.
const TRIED: usize = 4;
/// From the tube's flank to the middle of the ring, CSS pixels.
const BESIDE: f64 = 21.0;
/// Diameter of the ring, CSS pixels.
const RING: f32 = 19.0;
/// Half the width of a figure, and half its height, CSS pixels.
const FIGURE: [f32; 2] = [2.3, 4.0];

/// The ten figures, each as a line through points of a box from -1 to 1.
const FIGURES: [&[[f32; 2]]; 10] = [
    &[
        [-0.5, 1.0],
        [0.5, 1.0],
        [1.0, 0.5],
        [1.0, -0.5],
        [0.5, -1.0],
        [-0.5, -1.0],
        [-1.0, -0.5],
        [-1.0, 0.5],
        [-0.5, 1.0],
    ],
    &[[-0.7, 0.5], [0.2, 1.0], [0.2, -1.0]],
    &[[-1.0, 0.6], [-0.5, 1.0], [0.5, 1.0], [1.0, 0.6], [1.0, 0.2], [-1.0, -1.0], [1.0, -1.0]],
    &[
        [-1.0, 0.7],
        [-0.5, 1.0],
        [0.5, 1.0],
        [0.9, 0.7],
        [0.9, 0.3],
        [0.4, 0.05],
        [1.0, -0.3],
        [1.0, -0.6],
        [0.5, -1.0],
        [-0.5, -1.0],
        [-1.0, -0.7],
    ],
    &[[0.5, -1.0], [0.5, 1.0], [-1.0, -0.4], [1.0, -0.4]],
    &[
        [0.9, 1.0],
        [-0.8, 1.0],
        [-0.9, 0.1],
        [0.4, 0.2],
        [1.0, -0.2],
        [1.0, -0.6],
        [0.5, -1.0],
        [-0.5, -1.0],
        [-1.0, -0.7],
    ],
    &[
        [0.6, 1.0],
        [-0.4, 0.6],
        [-1.0, -0.2],
        [-1.0, -0.6],
        [-0.5, -1.0],
        [0.5, -1.0],
        [1.0, -0.6],
        [1.0, -0.2],
        [0.5, 0.1],
        [-0.5, 0.1],
        [-1.0, -0.3],
    ],
    &[[-1.0, 1.0], [1.0, 1.0], [-0.2, -1.0]],
    &[
        [-0.5, 0.1],
        [-0.9, 0.4],
        [-0.9, 0.7],
        [-0.4, 1.0],
        [0.4, 1.0],
        [0.9, 0.7],
        [0.9, 0.4],
        [0.5, 0.1],
        [-0.5, 0.1],
        [-1.0, -0.3],
        [-1.0, -0.7],
        [-0.5, -1.0],
        [0.5, -1.0],
        [1.0, -0.7],
        [1.0, -0.3],
        [0.5, 0.1],
    ],
    &[
        [-0.6, -1.0],
        [0.4, -0.6],
        [1.0, 0.2],
        [1.0, 0.6],
        [0.5, 1.0],
        [-0.5, 1.0],
        [-1.0, 0.6],
        [-1.0, 0.2],
        [-0.5, -0.1],
        [0.5, -0.1],
        [1.0, 0.3],
    ],
];

/// The numbers of a scene's tubes, counted from 1 in the design's order; none where there is but one tube.
pub fn tags(scene: &Scene, camera: &Camera) -> Strokes {
    let mut strokes = Strokes::default();
    if scene.runs.len() > 1 {
        for (index, run) in scene.runs.iter().enumerate() {
            if let Some((at, along)) = place(scene, run, camera) {
                tag(&mut strokes, camera, &at, &along, run.outer_diameter, index + 1);
            }
        }
    }
    strokes
}

/// The middle of the longest straight that is in sight, or of the longest; and its direction.
fn place(scene: &Scene, run: &Run, camera: &Camera) -> Option<(Vec3, Vec3)> {
    let toward = camera.frame().toward;
    let mut spans: Vec<(f64, Vec3, Vec3)> = run
        .centreline
        .windows(2)
        .map(|pair| {
            let (from, to) = (Vec3::from(pair[0]), Vec3::from(pair[1]));
            let seen = (to - from) - toward * (to - from).dot(&toward);
            (seen.norm(), (from + to) / 2.0, to - from)
        })
        .collect();
    spans.sort_by(|a, b| b.0.total_cmp(&a.0));
    let in_sight = |at: &Vec3| {
        let it = camera.project(at);
        picked(camera, scene, it).is_some_and(|it| it.run.name == run.name)
    };
    let looked_for = scene.runs.len() <= LOOKED_FOR;
    let found = spans.iter().take(TRIED).find(|(_, at, _)| looked_for && in_sight(at)).or(spans.first());
    found.and_then(|(_, at, along)| Some((*at, along.try_normalize(1e-9)?)))
}

/// A ring with a number beside a tube, up and away from its run across the picture, and a leader that ends on the tube
/// in a dot.
fn tag(strokes: &mut Strokes, camera: &Camera, at: &Vec3, along: &Vec3, diameter: f64, number: usize) {
    let frame = camera.frame();
    let (right, up) = (along.dot(&frame.right), along.dot(&frame.up));
    let seen = (right * right + up * up).sqrt();
    // Square to the tube, on its upper side; or on its right where it stands upright.
    let (mut across, mut over) = if seen > 1e-3 { (-up / seen, right / seen) } else { (0.0, 1.0) };
    if over < -0.2 || (over <= 0.2 && across < 0.0) {
        (across, over) = (-across, -over);
    }
    let far = BESIDE + 0.5 * diameter * camera.scale();
    let (x, y) = ((across * far) as f32, (over * far) as f32);
    let dot = Style::new(Ink::Axis, 5.0).on_top();
    strokes.line(dot, End::at(at), End::at(at));
    strokes.line(Style::new(Ink::Axis, 1.0).on_top(), End::at(at), End::at(at).shifted(x, y));
    let middle = |right: f32, up: f32| End::at(at).shifted(x + right, y + up);
    let digits: Vec<usize> = number.to_string().bytes().map(|digit| usize::from(digit - b'0')).collect();
    let wide = 2.0 * FIGURE[0] + 2.4;
    let half = 0.5 * wide * (digits.len() as f32 - 1.0);
    for (ink, width) in [(Ink::Axis, RING), (Ink::Paper, RING - 2.4)] {
        strokes.line(Style::new(ink, width).on_top(), middle(-half, 0.0), middle(half, 0.0));
    }
    for (place, digit) in digits.iter().enumerate() {
        let left = place as f32 * wide - half;
        let end = |[across, over]: [f32; 2]| middle(left + FIGURE[0] * across, FIGURE[1] * over);
        for pair in FIGURES[*digit].windows(2) {
            strokes.line(Style::new(Ink::Axis, 1.5).on_top(), end(pair[0]), end(pair[1]));
        }
    }
}
