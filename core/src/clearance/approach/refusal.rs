//! What an approach is refused for.

use crate::failure::{Code, Failure};
use crate::quantity::{Length, feet_and_inches};

fn say(length: Length) -> String {
    feet_and_inches(length, 8)
}

pub(super) fn too_short(points: usize) -> Box<Failure> {
    Failure::new(Code::ApproachShort, "profile")
        .written(format!("{points} {}", if points == 1 { "point" } else { "points" }))
        .allowed("at least two points: at the door and farther out")
        .remedy("shoot the ground at the door and where it meets the yard or the street")
}

pub(super) fn not_from_door(first: Length) -> Box<Failure> {
    Failure::new(Code::ApproachStart, "profile[0].distance")
        .written(say(first))
        .allowed("0, the first point at the door")
        .remedy("shoot the ground right at the door")
}

pub(super) fn unsorted(index: usize, before: Length, at: Length) -> Box<Failure> {
    Failure::new(Code::ApproachUnsorted, format!("profile[{index}].distance"))
        .written(format!("{} behind {}", say(at), say(before)))
        .allowed("distances that grow from the door outwards")
        .remedy("put the points in order; for a step in the ground move one of the two by an inch")
}

pub(super) fn tie_in(tie_in: Length, last: Length) -> Box<Failure> {
    Failure::new(Code::TieInBeyond, "tie_in")
        .written(say(tie_in))
        .allowed(format!("more than 0, at most {}, the last point of the profile", say(last)))
        .remedy("measure the ground out to where the new approach meets it")
}
