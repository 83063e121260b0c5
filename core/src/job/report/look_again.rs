//! What to look at again before concrete is ordered.

use super::{Measure, PlaceReport};
use schemars::JsonSchema;
use serde::Serialize;

/// Shots to read again, and places to shoot. Nothing here was left out of the figures.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct LookAgain {
    /// Shots that do not go with their neighbours, the farthest off first.
    pub suspects: Vec<SuspectReport>,
    /// Shots that fix the height of the new floor; empty where no new floor is told.
    pub governing: Vec<GoverningReport>,
    /// The distance from a shot that is near enough.
    pub near_enough: Measure,
    /// The area farther than that from every shot.
    pub uncovered: Measure,
    /// Where the next shots belong, the most wanted first.
    pub next_shots: Vec<PlaceReport>,
}

/// A shot that may be booked wrong.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct SuspectReport {
    /// The shot.
    pub shot: String,
    /// What to think of it: look_again, likely_slip, unexplained.
    pub verdict: String,
    /// How far it stands above its neighbours, below where negative.
    pub off: Measure,
    /// What the volume of concrete changes by with the height proposed; none where no new floor is told.
    pub more_if_corrected: Option<Measure>,
    /// What it changes by without the shot.
    pub more_without: Option<Measure>,
    /// A sentence for the crew.
    pub text: String,
}

/// A shot that fixes the height.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct GoverningReport {
    /// The shot.
    pub shot: String,
    /// How far the floor could drop without it.
    pub drop_without: Measure,
    /// The concrete that this would save.
    pub saved: Measure,
    /// A sentence for the crew.
    pub text: String,
}
