//! Steps in the words of the crew: what is wrong with one, and what was made of it.

use super::Shots;
use crate::failure::{Code, Failure, Place};
use crate::note::{Note, NoteCode};
use crate::quantity::{Length, Typed};
use crate::survey::surface::StepFlaw;
use crate::survey::words::both_fine;

/// The failure for a step that is not described well enough.
pub(super) fn refused(shot: usize, other: usize, flaw: StepFlaw, shots: &Shots) -> Box<Failure> {
    let (first, second) = (shots.name(shot), shots.name(other));
    let pair = if shot == other { first.clone() } else { format!("{first} and {second}") };
    let (written, allowed, remedy) = match flaw {
        StepFlaw::ThreeHeights => (
            format!("more than two heights at one place: {pair}"),
            "two heights at a place, one on each side of the step",
            "strike out what is not of this step",
        ),
        StepFlaw::Unpaired => (
            format!("{first} is marked as a step and has no partner within 1/2 in; {second} is nearest"),
            "two shots at one place, one on each side of the step; one alone only where the step fades out inside the slab",
            "shoot the other side too, within 1/2 in of this one in plan",
        ),
        StepFlaw::Alone => (
            format!("{pair} are the only pair of their step"),
            "two or more pairs along a step",
            "shoot a pair at each end of the step",
        ),
        StepFlaw::EndsInside => (
            format!("the step ends at {pair}, inside the slab"),
            "a step that ends at the outline, at the last shots, or where both sides meet",
            "shoot both sides where it meets the wall, or mark one shot where it fades out",
        ),
        StepFlaw::ThroughShot => (
            format!("the step from {first} passes through {second}"),
            "no other shot within 1/2 in of the line of a step",
            "shoot both sides there and mark both as a step, or strike it out",
        ),
        StepFlaw::Crossed => (
            format!("the step from {first} crosses the line at {second}"),
            "steps that neither cross one another nor the outline",
            "shoot both sides of the step where it bends",
        ),
        StepFlaw::Undecided => (
            format!("{pair} are at the same place, and the shots around do not tell which side is higher"),
            "a step whose higher side is known",
            "give the two shots of a pair places a little apart, 1/4 in, each on its own side",
        ),
        StepFlaw::Contradictory => (
            format!("at {pair} the step is higher on the other side than elsewhere along it"),
            "one higher side along a step; where it changes, a place with one height",
            "check which shots are the low side, or shoot the place where both sides meet",
        ),
        StepFlaw::TooMany => (
            "more than 1,000 places marked as steps".to_owned(),
            "up to 1,000",
            "mark only the shots along steps",
        ),
    };
    Failure::new(Code::StepUnresolved, "")
        .at(Place::Index(shot))
        .written(written)
        .allowed(allowed)
        .remedy(remedy)
}

/// What was made of a step.
pub(super) fn note(ends: [usize; 2], heights: [f64; 2], toward: Option<usize>, shots: &Shots) -> Note {
    let [least, greatest] = heights.map(|height| both_fine(Length::from_base(height)));
    let high = if least == greatest { least } else { format!("{least} to {greatest}") };
    let side =
        toward.map_or_else(String::new, |shot| format!(", the higher side toward {}", shots.name(shot)));
    let text = format!("a step from {} to {}, {high} high{side}", shots.name(ends[0]), shots.name(ends[1]));
    Note::new(NoteCode::Step, text)
}
