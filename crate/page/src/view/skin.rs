//! A tube's mesh made ready for shading: normals that are round where the tube is round and crisp at its rims.

use tubewright_core::layout::Vec3;

use super::guide::{Guide, Hint};

/// Without a centreline, and where there are lobes: faces that meet at less than this are one smooth surface (40 degrees, cosine).
const CREASE: f32 = 0.766;
/// Else: faces whose profile differs by less than this are one band of the tube (9 degrees, cosine). It tells a
/// 15 degree lead-in from the cylinder, which no angle between neighbouring facets can on a thin, coarse tube.
const BAND: f32 = 0.988;
/// Largest coordinate that is drawn, mm.
const LARGEST: f32 = 1e7;

/// A mesh with a vertex for each corner of each smooth part.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Skin {
    /// Positions, mm.
    pub points: Vec<[f32; 3]>,
    /// Unit normals, outward.
    pub normals: Vec<[f32; 3]>,
    /// Unit vectors away from the centreline; zero where it is not known, which keeps a section from cutting there.
    pub radials: Vec<[f32; 3]>,
    /// Three vertices a triangle.
    pub indices: Vec<u32>,
    /// Pairs of vertices: the edges where two smooth parts meet.
    pub creases: Vec<[u32; 2]>,
    /// Distance from the centreline and arc length of each vertex, mm; empty where the centreline is not known.
    pub profile: Vec<Station>,
    /// Whether the body has lobes, so that its outside is not the same on all sides.
    pub lobed: bool,
}

/// Where a vertex is on the tube.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Station {
    /// Segment of the centreline's polyline.
    pub segment: u32,
    /// Arc length, mm.
    pub along: f32,
    /// Distance from the centreline, mm.
    pub radius: f32,
    /// Cosine between normal and radial: 1 on the outside, -1 in the bore, 0 on an end face.
    pub outward: f32,
}

/// Says in plain words what keeps a mesh from being drawn, if anything does.
pub fn fault(positions: &[f32], indices: &[u32]) -> Option<String> {
    if !positions.len().is_multiple_of(3) || !indices.len().is_multiple_of(3) {
        return Some("the mesh's lists are not in threes".to_string());
    }
    let count = positions.len() / 3;
    if u32::try_from(count).is_err() {
        return Some("the mesh has more points than can be drawn".to_string());
    }
    if let Some(index) = indices.iter().find(|index| **index as usize >= count) {
        return Some(format!("the mesh names point {index}, but has {count} points"));
    }
    let bad = positions.iter().find(|value| !value.is_finite() || value.abs() > LARGEST);
    bad.map(|value| format!("the mesh holds a coordinate that cannot be drawn: {value}"))
}

/// Makes a sound mesh (see [`fault`]) ready.
pub fn skin(positions: &[f32], indices: &[u32], guide: Option<&Guide>) -> Skin {
    let points: Vec<[f32; 3]> = positions.as_chunks::<3>().0.to_vec();
    let places = guide.map(|guide| places(&points, guide));
    let faces: Vec<Face> = indices
        .as_chunks::<3>()
        .0
        .iter()
        .filter_map(|corners| Face::new(*corners, &points, places.as_deref()))
        .collect();
    let around = Around::new(points.len(), &faces);
    let mut skin = Skin { lobed: guide.is_some_and(Guide::is_lobed), ..Skin::default() };
    let mut corners = vec![0u32; faces.len() * 3];
    let mut kinds: Vec<[f32; 3]> = Vec::new();
    let mut slopes: Vec<[f32; 3]> = Vec::new();
    for (point, position) in points.iter().enumerate() {
        let first = skin.points.len();
        let limit = match (&places, guide) {
            // Lobes come and go in slopes of their own, which are no rims.
            (Some(places), Some(guide)) if !guide.is_lobed_at(places[point].station.along.into()) => BAND,
            _ => CREASE,
        };
        kinds.clear();
        slopes.clear();
        for corner in around.corners(point) {
            let face = &faces[*corner as usize / 3];
            let group = kinds.iter().position(|kind| dot(*kind, face.kind) > limit).unwrap_or_else(|| {
                kinds.push(face.kind);
                slopes.push([0.0; 3]);
                skin.points.push(*position);
                skin.normals.push([0.0; 3]);
                kinds.len() - 1
            });
            let normal = &mut skin.normals[first + group];
            *normal = plus(*normal, face.area);
            slopes[group] = plus(slopes[group], scaled(face.kind, face.size));
            corners[*corner as usize] = (first + group) as u32;
        }
        for (normal, slope) in skin.normals[first..].iter_mut().zip(&slopes) {
            let Some(place) = places.as_ref().map(|places| &places[point]) else {
                *normal = unit(*normal);
                skin.radials.push([0.0; 3]);
                continue;
            };
            // What the axis does not tell of a body with lobes, its own facets do.
            let own = skin.lobed && slope[0] > 0.0;
            *normal = place.normal(*slope).filter(|_| !own).unwrap_or_else(|| unit(*normal));
            skin.radials.push(place.radial);
            skin.profile.push(Station { outward: dot(*normal, place.radial), ..place.station });
        }
    }
    skin.creases = creases(&faces, &corners, &around);
    skin.indices = corners;
    skin
}

/// A triangle with an area.
struct Face {
    corners: [u32; 3],
    /// Normal times twice the area: large faces count for more at a vertex.
    area: [f32; 3],
    /// Twice the area.
    size: f32,
    /// What must agree within a smooth part: the slope of the tube's profile (away from the axis, along it), or, where
    /// the axis is not known, the plain normal.
    kind: [f32; 3],
}

impl Face {
    fn new(corners: [u32; 3], points: &[[f32; 3]], places: Option<&[Known]>) -> Option<Self> {
        let [a, b, c] = corners.map(|corner| points[corner as usize]);
        let area = cross(minus(b, a), minus(c, a));
        let size = dot(area, area).sqrt();
        if !(size > 0.0 && size.is_finite()) {
            return None;
        }
        let normal = scaled(area, 1.0 / size);
        let kind = places.map_or(normal, |places| {
            let sum = |of: fn(&Known) -> [f32; 3]| {
                let [a, b, c] = corners.map(|corner| of(&places[corner as usize]));
                std::array::from_fn(|axis| a[axis] + b[axis] + c[axis])
            };
            let (away, along) = (dot(normal, sum(|it| it.radial)), dot(normal, sum(|it| it.tangent)));
            let size = (away * away + along * along).sqrt();
            if size > 0.0 { [away / size, along / size, 0.0] } else { normal }
        });
        Some(Self { corners, area, size, kind })
    }
}

/// What the guide knows of a point.
struct Known {
    radial: [f32; 3],
    tangent: [f32; 3],
    station: Station,
}

impl Known {
    /// The normal of a band of that slope: round about the axis however the facets lie. Bends have slopes near zero
    /// that are only the facets' and the polyline's; they are none.
    fn normal(&self, [away, along, _]: [f32; 3]) -> Option<[f32; 3]> {
        let along = if along.abs() < 0.09 * away.abs() { 0.0 } else { along };
        let normal = plus(scaled(self.radial, away), scaled(self.tangent, along));
        (dot(normal, normal) > 0.0 && self.radial != [0.0; 3]).then(|| unit(normal))
    }
}

fn places(points: &[[f32; 3]], guide: &Guide) -> Vec<Known> {
    let mut hint = Hint::default();
    let small = |vector: Vec3| [vector.x as f32, vector.y as f32, vector.z as f32];
    points
        .iter()
        .map(|point| {
            let place = guide.nearest_after(&Vec3::from(point.map(f64::from)), &mut hint);
            let station = Station {
                segment: place.segment as u32,
                along: place.along as f32,
                radius: place.distance as f32,
                outward: 0.0,
            };
            Known { radial: small(place.radial), tangent: small(place.tangent), station }
        })
        .collect()
}

/// For each point, the corners of faces that are there.
struct Around {
    starts: Vec<u32>,
    corners: Vec<u32>,
}

impl Around {
    fn new(points: usize, faces: &[Face]) -> Self {
        let all = || faces.iter().flat_map(|face| face.corners);
        let mut starts = vec![0u32; points + 1];
        for point in all() {
            starts[point as usize + 1] += 1;
        }
        for point in 0..points {
            starts[point + 1] += starts[point];
        }
        let mut next = starts.clone();
        let mut corners = vec![0u32; faces.len() * 3];
        for (corner, point) in all().enumerate() {
            corners[next[point as usize] as usize] = corner as u32;
            next[point as usize] += 1;
        }
        Self { starts, corners }
    }

    fn corners(&self, point: usize) -> &[u32] {
        &self.corners[self.starts[point] as usize..self.starts[point + 1] as usize]
    }
}

/// Edges whose two faces share neither vertex any more, each once.
fn creases(faces: &[Face], corners: &[u32], around: &Around) -> Vec<[u32; 2]> {
    let mut found = Vec::new();
    for (place, face) in faces.iter().enumerate() {
        for side in 0..3 {
            let (start, end) = (side, (side + 1) % 3);
            let (from, to) = (face.corners[start], face.corners[end]);
            if from > to {
                continue;
            }
            let (mine_from, mine_to) = (corners[place * 3 + start], corners[place * 3 + end]);
            let across = around.corners(from as usize).iter().find_map(|corner| {
                let other = *corner as usize / 3;
                let far = faces[other].corners.iter().position(|point| *point == to)?;
                (other != place).then_some((corners[*corner as usize], corners[other * 3 + far]))
            });
            if across.is_none_or(|(theirs_from, theirs_to)| theirs_from != mine_from && theirs_to != mine_to) {
                found.push([mine_from, mine_to]);
            }
        }
    }
    found
}

fn unit(a: [f32; 3]) -> [f32; 3] {
    scaled(a, 1.0 / dot(a, a).sqrt().max(f32::MIN_POSITIVE))
}

fn plus(a: [f32; 3], b: [f32; 3]) -> [f32; 3] {
    std::array::from_fn(|axis| a[axis] + b[axis])
}

fn minus(a: [f32; 3], b: [f32; 3]) -> [f32; 3] {
    std::array::from_fn(|axis| a[axis] - b[axis])
}

fn scaled(a: [f32; 3], by: f32) -> [f32; 3] {
    a.map(|value| value * by)
}

fn dot(a: [f32; 3], b: [f32; 3]) -> f32 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

fn cross(a: [f32; 3], b: [f32; 3]) -> [f32; 3] {
    [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
}
