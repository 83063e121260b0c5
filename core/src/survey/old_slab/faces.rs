//! Why given faces make no surface, and what must be known of it, in the words of the crew. Faces and points are counted
//! from 1 here, as on any list.

use super::Shots;
use crate::failure::{Code, Failure, Place};
use crate::note::{Note, NoteCode};
use crate::survey::surface::SurfaceError;

/// The list of faces, in the paths of failures.
const TRIANGLES: &str = "triangles";

/// The failure for faces that do not fit together; none where the error is not about faces.
pub(super) fn refused(error: &SurfaceError, shots: &Shots) -> Option<Box<Failure>> {
    let at = |code: Code, face: usize| Failure::new(code, TRIANGLES).at(Place::Index(face));
    let name = |point: usize| shots.name(point);
    Some(match *error {
        SurfaceError::NoFaces => Failure::new(Code::EmptyList, TRIANGLES)
            .allowed("at least one triangle")
            .remedy("give the triangles, or the points alone as shots"),
        SurfaceError::FacePoint { face, point, points } => at(Code::FacePointUnknown, face)
            .written(format!("triangle {} has point {}", face + 1, point.wrapping_add(1)))
            .allowed(format!("the numbers of the points, 1 to {points}"))
            .remedy("check this triangle; the first point is number 1"),
        SurfaceError::FaceRepeats { face, point } => at(Code::FaceFlat, face)
            .written(format!("triangle {} has {} twice", face + 1, name(point)))
            .allowed("three different points")
            .remedy("leave this triangle out, or mend its points"),
        SurfaceError::FaceFlat { face } => at(Code::FaceFlat, face)
            .written(format!("triangle {} has no area in plan", face + 1))
            .allowed("three points that are not on one line seen from above")
            .remedy("leave this triangle out: an upright face holds no ground"),
        SurfaceError::FacesOverlap { first, second } => at(Code::FacesOverlap, second)
            .written(format!("triangles {} and {}", first + 1, second + 1))
            .allowed("triangles that meet at their sides and nowhere else")
            .remedy("keep one of the two"),
        SurfaceError::PointInFace { point, face } => at(Code::PointInFace, face)
            .written(format!("{} lies in triangle {} or on its side", name(point), face + 1))
            .allowed("points at the corners of triangles")
            .remedy("divide the triangle at this point, or leave out the triangles it belongs to"),
        SurfaceError::EdgeOfThree { points, faces } => at(Code::EdgeOfThree, faces[2])
            .written(format!(
                "{}-{} is a side of triangles {}, {} and {}",
                name(points[0]),
                name(points[1]),
                faces[0] + 1,
                faces[1] + 1,
                faces[2] + 1
            ))
            .allowed("at most two triangles at a side")
            .remedy("keep the two that belong to the slab"),
        _ => return None,
    })
}

/// Points that no face has as a corner.
pub(super) fn unused(points: usize, first: usize, shots: &Shots) -> Note {
    let text = match points {
        1 => format!("{} is a corner of no triangle and was left out", shots.name(first)),
        _ => format!(
            "{points} points, the first of them {}, are corners of no triangle and were left out",
            shots.name(first)
        ),
    };
    Note::new(NoteCode::PointsUnused, text)
}
