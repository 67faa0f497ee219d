//! Closes an end face between the outer skin's ring and the bore's.

use super::Mesh;

/// Which way an end face looks along the tube.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Faces {
    /// Against the direction of travel: the start.
    Back,
    /// Along it: the end.
    Forward,
}

/// Fills the flat ring between two edges, each given by its first index and its number of corners; both begin in the
/// same direction from the centre and go round the same way.
pub(super) fn close(mesh: &mut Mesh, [outer, bore]: [(u32, usize); 2], faces: Faces) {
    let corner = |(first, around): (u32, usize), step: usize| first + (step % around) as u32;
    let (mut out, mut inn) = (0, 0);
    while out < outer.1 || inn < bore.1 {
        // The edge that lags behind in angle goes on; ties go to the outer one.
        let outer_next = inn == bore.1 || (out < outer.1 && (out + 1) * bore.1 <= (inn + 1) * outer.1);
        let triangle = if outer_next {
            [corner(outer, out), corner(outer, out + 1), corner(bore, inn)]
        } else {
            [corner(outer, out), corner(bore, inn + 1), corner(bore, inn)]
        };
        if outer_next {
            out += 1
        } else {
            inn += 1
        }
        let [a, b, c] = triangle;
        mesh.indices.extend(match faces {
            Faces::Forward => [a, b, c],
            Faces::Back => [a, c, b],
        });
    }
}
