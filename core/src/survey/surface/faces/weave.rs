//! Faces become triangles of a triangulation of their corners.

use super::sides::{Sides, overlap};
use crate::geometry::triangulation::{Constrainer, Obstacle, Triangulation};
use crate::survey::surface::SurfaceError;
use crate::survey::surface::hull::GIVEN;
use crate::survey::surface::tiling::Node;

impl Sides {
    /// Makes every side an edge, and marks the triangles that are faces; refuses faces that overlap.
    pub(super) fn weave(
        &self,
        triangulation: &mut Triangulation,
        faces: &[[u32; 3]],
        nodes: &[Node],
    ) -> Result<(), SurfaceError> {
        let inside = |place: u32, face: u32| SurfaceError::PointInFace {
            point: nodes[place as usize].shot as usize,
            face: face as usize,
        };
        let mut constrainer = Constrainer::new(triangulation);
        for ([from, to], face) in self.each() {
            match constrainer.join(from, to) {
                Ok(_) => {}
                Err(Obstacle::Point(place)) => return Err(inside(place, face)),
                Err(Obstacle::Constraint(a, b)) => {
                    // Every constraint edge is a side of a face.
                    let other = self.face_at(a, b).unwrap_or(face);
                    return Err(overlap(face, other));
                }
            }
        }
        let mut first_halves = Vec::with_capacity(faces.len());
        for (face, &[a, b, c]) in (0_u32..).zip(faces) {
            match constrainer.joined(a, b) {
                Some(edge) => first_halves.push((edge, face, c)),
                // Cannot be: the side was just made an edge.
                None => return Err(inside(c, face)),
            }
        }
        let links = triangulation.links_mut();
        for (edge, face, third) in first_halves {
            let next = links.around_left(edge);
            let apex = links.to(next);
            if apex != third {
                return Err(inside(apex, face));
            }
            for half in [edge, next, links.around_left(next)] {
                links.set_mark(half, links.mark(half) | GIVEN);
            }
        }
        Ok(())
    }
}
