//! Whether a mesh is a solid: one closed, oriented 2-manifold that a print service takes as it is.
//!
//! One predicate over half-edges, used by export, tests and fuzzing alike. The three corners of the triangles round a
//! vertex are its fan: a triangle (u, next, prev) sends the half-edge u -> next out of u and brings prev -> u in. The
//! surface is closed and a manifold just where the half-edges out of every vertex are distinct, each one that comes in
//! has its opposite going out, and walking from one to the other goes round the whole fan.

use super::Mesh;

/// One thing that keeps a mesh from being a solid. Vertices and triangles are counted from 0.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Flaw {
    /// There is no triangle.
    Empty,
    /// A list is no multiple of three, or an index points past the vertices.
    Malformed,
    /// A coordinate is not a finite number.
    NotFinite {
        /// The vertex.
        vertex: u32,
    },
    /// Two vertices stand at the same point.
    SamePoint {
        /// The earlier vertex.
        vertex: u32,
        /// The later vertex.
        twin: u32,
    },
    /// No triangle uses the vertex.
    Unused {
        /// The vertex.
        vertex: u32,
    },
    /// A triangle repeats a vertex, or has no area in `f32` arithmetic, so that readers find no normal for it.
    Degenerate {
        /// The triangle.
        triangle: u32,
    },
    /// The same half-edge belongs to two triangles: one is turned over, or three or more meet at the edge.
    RepeatedEdge {
        /// Where it starts.
        from: u32,
        /// Where it ends.
        to: u32,
    },
    /// A half-edge without its opposite: the surface has a rim there.
    OpenEdge {
        /// Where it starts.
        from: u32,
        /// Where it ends.
        to: u32,
    },
    /// Parts of the surface touch in this vertex alone.
    Pinched {
        /// The vertex.
        vertex: u32,
    },
    /// The surface falls into more than one piece.
    Pieces {
        /// How many.
        count: u32,
    },
    /// The triangles enclose no volume, or face inward, mm3.
    InsideOut {
        /// Signed volume, mm3.
        volume: f64,
    },
}

/// Everything that keeps `mesh` from being a solid; empty for a solid. [`Flaw::Empty`], [`Flaw::Malformed`] and
/// [`Flaw::NotFinite`] hide all others; [`Flaw::RepeatedEdge`] and [`Flaw::OpenEdge`] at a vertex hide that it is
/// pinched, and one at a neighbour may show as pinched. Triangles that cross each other are not looked for.
pub fn solidity(mesh: &Mesh) -> Vec<Flaw> {
    let unreadable = unreadable(mesh);
    if !unreadable.is_empty() {
        return unreadable;
    }
    let fans = Fans::of(mesh);
    let mut flaws = same_points(mesh);
    flaws.extend(degenerate_triangles(mesh));
    for vertex in (0..fans.count()).filter(|&vertex| !Fans::is_closed(fans.fan(vertex))) {
        flaws.extend(fans.flaws_at(vertex));
    }
    let pieces = fans.pieces();
    if pieces != 1 {
        flaws.push(Flaw::Pieces { count: pieces });
    }
    let volume = signed_volume(mesh);
    if volume <= 0.0 {
        flaws.push(Flaw::InsideOut { volume });
    }
    flaws
}

/// Whether `mesh` is a solid: [`solidity`] finds nothing.
pub fn is_solid(mesh: &Mesh) -> bool {
    solidity(mesh).is_empty()
}

/// Volume enclosed by a closed mesh, mm3, positive where its triangles face outward: the sum of the signed tetrahedra
/// over the first vertex, in `f64` from the stored `f32` corners. For an open mesh the number means nothing.
pub fn signed_volume(mesh: &Mesh) -> f64 {
    let points = mesh.positions.as_chunks::<3>().0;
    let Some(&apex) = points.first() else { return 0.0 };
    let triangles = mesh.indices.as_chunks::<3>().0.iter();
    let six: f64 = triangles
        .map(|&[a, b, c]| {
            let a = away(points[a as usize], apex);
            let b = away(points[b as usize], apex);
            let c = away(points[c as usize], apex);
            a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0])
        })
        .sum();
    six / 6.0
}

/// What makes a mesh unreadable, so that nothing more can be said of it.
fn unreadable(mesh: &Mesh) -> Vec<Flaw> {
    let vertices = mesh.positions.len() / 3;
    let countable = u32::try_from(mesh.positions.len().max(mesh.indices.len())).is_ok();
    let whole = mesh.positions.len().is_multiple_of(3) && mesh.indices.len().is_multiple_of(3);
    if !countable || !whole || mesh.indices.iter().any(|&index| index as usize >= vertices) {
        return vec![Flaw::Malformed];
    }
    if mesh.indices.is_empty() {
        return vec![Flaw::Empty];
    }
    let points = mesh.positions.as_chunks::<3>().0.iter().zip(0..);
    points
        .filter(|(point, _)| !point.iter().all(|x| x.is_finite()))
        .map(|(_, vertex)| Flaw::NotFinite { vertex })
        .collect()
}

fn same_points(mesh: &Mesh) -> Vec<Flaw> {
    let bits = |x: f32| u128::from((x + 0.0).to_bits());
    // Coordinates and index packed into one number sort fast; adding 0 makes the two zeros one.
    let mut keys: Vec<u128> = (0u128..)
        .zip(mesh.positions.as_chunks::<3>().0)
        .map(|(vertex, &[x, y, z])| (bits(x) << 96) | (bits(y) << 64) | (bits(z) << 32) | vertex)
        .collect();
    keys.sort_unstable();
    let twins = keys.windows(2).filter(|pair| pair[0] >> 32 == pair[1] >> 32);
    twins.map(|pair| Flaw::SamePoint { vertex: pair[0] as u32, twin: pair[1] as u32 }).collect()
}

fn degenerate_triangles(mesh: &Mesh) -> impl Iterator<Item = Flaw> {
    let points = mesh.positions.as_chunks::<3>().0;
    let flat = move |&[a, b, c]: &[u32; 3]| {
        // In f32 on purpose: that is how readers work out a normal.
        let [a, b, c] = [points[a as usize], points[b as usize], points[c as usize]];
        let u = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
        let v = [c[0] - a[0], c[1] - a[1], c[2] - a[2]];
        let (x, y, z) = (u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]);
        (x == 0.0 && y == 0.0 && z == 0.0) || !(x.is_finite() && y.is_finite() && z.is_finite())
    };
    let triangles = mesh.indices.as_chunks::<3>().0.iter().zip(0..);
    triangles.filter(move |(triangle, _)| flat(triangle)).map(|(_, triangle)| Flaw::Degenerate { triangle })
}

/// The fan of every vertex: for each triangle round it the vertex that follows and the one before.
struct Fans {
    starts: Vec<u32>,
    spokes: Vec<Spoke>,
}

#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
struct Spoke {
    next: u32,
    prev: u32,
}

impl Fans {
    fn of(mesh: &Mesh) -> Self {
        let mut starts = vec![0u32; mesh.positions.len() / 3 + 1];
        for &index in &mesh.indices {
            starts[index as usize + 1] += 1;
        }
        for vertex in 1..starts.len() {
            starts[vertex] += starts[vertex - 1];
        }
        let mut free = starts.clone();
        let mut spokes = vec![Spoke { next: 0, prev: 0 }; mesh.indices.len()];
        for &[a, b, c] in mesh.indices.as_chunks::<3>().0 {
            for (vertex, next, prev) in [(a, b, c), (b, c, a), (c, a, b)] {
                let place = &mut free[vertex as usize];
                spokes[*place as usize] = Spoke { next, prev };
                *place += 1;
            }
        }
        for pair in starts.windows(2) {
            spokes[pair[0] as usize..pair[1] as usize].sort_unstable();
        }
        Self { starts, spokes }
    }

    fn count(&self) -> u32 {
        self.starts.len() as u32 - 1
    }

    fn fan(&self, vertex: u32) -> &[Spoke] {
        &self.spokes[self.starts[vertex as usize] as usize..self.starts[vertex as usize + 1] as usize]
    }

    /// Where in a fan the half-edge to `to` leaves.
    fn find(fan: &[Spoke], to: u32) -> Option<usize> {
        fan.binary_search_by_key(&to, |spoke| spoke.next).ok()
    }

    /// Whether one walk round the fan, from each triangle to the one that shares its spoke, takes in every triangle:
    /// then no half-edge is open or repeated here, and the surface does not pinch.
    fn is_closed(fan: &[Spoke]) -> bool {
        let (mut at, mut steps) = (0, 0);
        while steps < fan.len() && (at != 0 || steps == 0) {
            let Some(next) = Self::find(fan, fan[at].prev) else { return false };
            at = next;
            steps += 1;
        }
        at == 0 && steps == fan.len() && steps > 0
    }

    /// What is wrong with a vertex's fan that is not closed.
    fn flaws_at(&self, vertex: u32) -> Vec<Flaw> {
        let fan = self.fan(vertex);
        if fan.is_empty() {
            return vec![Flaw::Unused { vertex }];
        }
        let twins = fan.windows(2).filter(|pair| pair[0].next == pair[1].next);
        let repeated = twins.map(|pair| Flaw::RepeatedEdge { from: vertex, to: pair[0].next });
        let ways_in = fan.iter().filter(|spoke| Self::find(fan, spoke.prev).is_none());
        let open = ways_in.map(|spoke| Flaw::OpenEdge { from: spoke.prev, to: vertex });
        let flaws: Vec<Flaw> = repeated.chain(open).collect();
        if flaws.is_empty() { vec![Flaw::Pinched { vertex }] } else { flaws }
    }

    /// Number of pieces that share no vertex.
    fn pieces(&self) -> u32 {
        let mut seen = vec![false; self.count() as usize];
        let mut waiting = Vec::new();
        let mut pieces = 0;
        for first in 0..self.count() {
            if seen[first as usize] || self.fan(first).is_empty() {
                continue;
            }
            pieces += 1;
            seen[first as usize] = true;
            waiting.push(first);
            while let Some(vertex) = waiting.pop() {
                for spoke in self.fan(vertex) {
                    for neighbour in [spoke.next, spoke.prev] {
                        if !seen[neighbour as usize] {
                            seen[neighbour as usize] = true;
                            waiting.push(neighbour);
                        }
                    }
                }
            }
        }
        pieces
    }
}

/// The way from `apex` to `point`, exact but for one rounding.
fn away(point: [f32; 3], apex: [f32; 3]) -> [f64; 3] {
    [
        f64::from(point[0]) - f64::from(apex[0]),
        f64::from(point[1]) - f64::from(apex[1]),
        f64::from(point[2]) - f64::from(apex[2]),
    ]
}
