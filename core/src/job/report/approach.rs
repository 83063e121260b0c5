//! The ground outside a door.

use super::Measure;
use schemars::JsonSchema;
use serde::Serialize;

/// An approach to a door.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct ApproachReport {
    /// What it is.
    pub name: String,
    /// What goes over it: vehicle, wheelchair, foot.
    pub traffic: String,
    /// The floor at the door, where it is lowest: the rod where there is a level, else the elevation.
    pub floor: Measure,
    /// The floor height from which water falls away as wanted.
    pub needed: Measure,
    /// How far the floor is above that; negative below.
    pub spare: Measure,
    /// Whether the floor is high enough.
    pub high_enough: bool,
    /// The fall away from the door that is wanted.
    pub fall: Measure,
    /// Over which distance.
    pub over: Measure,
    /// The step at the door, from the outside up to the floor.
    pub step: Measure,
    /// The most that it may be.
    pub step_limit: Measure,
    /// Where that comes from.
    pub step_basis: String,
    /// Whether it is: pass, fail, confirm locally.
    pub step_judged: String,
    /// The ground as it will be.
    pub stretches: Vec<StretchReport>,
    /// Where its grade changes.
    pub breaks: Vec<BreakReport>,
    /// Every rule at every place.
    pub rules: Vec<RuleReport>,
    /// How deep old ground has to come out under a new approach.
    pub dig: Option<Measure>,
    /// The height that the floor may have with a drain along the door.
    pub trench_floor: Measure,
    /// How far out the ground falls to the door.
    pub trench_reach: Measure,
    /// The ground that drains to the door, where its width was given.
    pub trench_area: Option<Measure>,
    /// The rain that comes from it, where rain was given.
    pub trench_flow: Option<Measure>,
    /// Whether every limit is kept: pass, fail, confirm locally.
    pub judged: String,
}

/// A stretch of one grade.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct StretchReport {
    /// Its start, from the door.
    pub from: Measure,
    /// Its end.
    pub to: Measure,
    /// How far it falls; negative where it rises.
    pub drop: Measure,
    /// Its fall away from the door.
    pub fall: Measure,
}

/// A change of grade.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct BreakReport {
    /// How far from the door.
    pub at: Measure,
    /// Crest or sag.
    pub kind: String,
    /// The change of grade.
    pub change: Measure,
    /// To the nearest other break, or the end of the profile.
    pub spacing: Measure,
    /// What a crest takes of the room under the vehicle.
    pub taken: Option<Measure>,
}

/// One rule held against one place.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct RuleReport {
    /// What is judged.
    pub matter: String,
    /// How far from the door.
    pub at: Measure,
    /// What is there.
    pub found: Measure,
    /// What may be; of a fall what must be.
    pub limit: Measure,
    /// Limit or advice.
    pub weight: String,
    /// Where the limit comes from.
    pub basis: String,
    /// Pass, fail, confirm locally.
    pub judged: String,
}
