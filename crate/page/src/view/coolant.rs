//! The coolant as a solid of its own: what fills a tube's bore, from the tube's own mesh.

use super::guide::Guide;
use super::lathe::Body;
use super::skin::{Skin, Station};
use super::stroke::small;

/// Faces that look at the axis more than this (minus a cosine) are the bore's.
const INWARD: f32 = -0.2;

/// What fills the bore: the bore's own faces turned about, and a flat face over each of its ends. Empty where the
/// centreline is not known.
pub fn coolant(skin: &Skin, guide: &Guide) -> Body {
    let mut body = Body::default();
    let in_bore = |vertex: &u32| skin.profile.get(*vertex as usize).is_some_and(|it| it.outward < INWARD);
    let mut places = vec![None; skin.points.len()];
    for face in skin.indices.as_chunks::<3>().0.iter().filter(|face| face.iter().all(in_bore)) {
        let [a, b, c] = face.map(|vertex| {
            *places[vertex as usize].get_or_insert_with(|| {
                let at = vertex as usize;
                body.points.push(skin.points[at]);
                body.normals.push(skin.normals[at].map(|part| -part));
                // A section leaves it whole, as drawings leave what lies in a cut body.
                body.radials.push([0.0; 3]);
                body.points.len() as u32 - 1
            })
        });
        body.indices.extend([a, c, b]);
    }
    close(&mut body, skin, guide);
    body
}

/// Flat faces over the two ends.
fn close(body: &mut Body, skin: &Skin, guide: &Guide) {
    let half = guide.length() / 2.0;
    for (at_start, station) in [(true, guide.stations().next()), (false, guide.stations().last())] {
        let Some((end, centre, tangent)) = station else { continue };
        let mine = |it: &&Station| it.outward < INWARD && (f64::from(it.along) < half) == at_start;
        let off = |it: &Station| (f64::from(it.along) - end).abs();
        let outermost = skin.profile.iter().filter(mine).min_by(|a, b| off(a).total_cmp(&off(b)));
        if let Some(rim) = outermost {
            let inward = if at_start { tangent } else { -tangent };
            body.turn(&centre, &inward, &[[0.0, 0.0], [0.0, f64::from(rim.radius)]], false);
        }
    }
}

/// Of each vertex of a skin the tube's tangent, as long as the vertex is far from the axis: what a wall that is seen
/// through needs to know of its own thickness. Empty where the centreline is not known.
pub fn girths(skin: &Skin, guide: &Guide) -> Vec<[f32; 3]> {
    let girth = |it: &Station| {
        let (_, tangent) = guide.on(it.segment as usize, f64::from(it.along));
        small(&(tangent * f64::from(it.radius)))
    };
    skin.profile.iter().map(girth).collect()
}
