//! The sides of faces: each belongs to one face, or to two that lie on both sides of it.

use crate::survey::surface::SurfaceError;
use crate::survey::surface::tiling::Node;

/// The side of a face.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Side {
    /// Its ends, the lesser number first.
    pub(super) ends: [u32; 2],
    /// Whether the face goes along it from the greater number to the lesser.
    backward: bool,
    face: u32,
}

/// The sides of all faces, in order.
pub(super) struct Sides(Vec<Side>);

impl Sides {
    /// Lists the sides of faces that go counter-clockwise; refuses those that do not fit together.
    pub(super) fn of(faces: &[[u32; 3]], nodes: &[Node]) -> Result<Self, SurfaceError> {
        let mut sides = Vec::with_capacity(3 * faces.len());
        for (face, &[a, b, c]) in (0_u32..).zip(faces) {
            sides.extend([[a, b], [b, c], [c, a]].map(|[from, to]| Side {
                ends: [from.min(to), from.max(to)],
                backward: from > to,
                face,
            }));
        }
        sides.sort_unstable();
        for of_edge in sides.chunk_by(|a, b| a.ends == b.ends) {
            match *of_edge {
                [_] => {}
                [a, b] if a.backward != b.backward => {}
                [a, b] => return Err(overlap(a.face, b.face)),
                [a, b, c, ..] => {
                    let mut faces = [a, b, c].map(|side| side.face as usize);
                    faces.sort_unstable();
                    let points = a.ends.map(|end| nodes[end as usize].shot as usize);
                    return Err(SurfaceError::EdgeOfThree { points, faces });
                }
                [] => {}
            }
        }
        Ok(Self(sides))
    }

    /// Every side once, with a face it belongs to.
    pub(super) fn each(&self) -> impl Iterator<Item = ([u32; 2], u32)> + '_ {
        self.0.chunk_by(|a, b| a.ends == b.ends).filter_map(|of_edge| {
            let side = of_edge.first()?;
            Some((side.ends, side.face))
        })
    }

    /// A face that has a side between two places.
    pub(super) fn face_at(&self, a: u32, b: u32) -> Option<u32> {
        let ends = [a.min(b), a.max(b)];
        let at = self.0.partition_point(|side| side.ends < ends);
        self.0.get(at).filter(|side| side.ends == ends).map(|side| side.face)
    }
}

/// Two faces that have ground in common.
pub(super) fn overlap(a: u32, b: u32) -> SurfaceError {
    SurfaceError::FacesOverlap { first: a.min(b) as usize, second: a.max(b) as usize }
}
