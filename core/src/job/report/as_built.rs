//! The floor as built.

use super::{Measure, PlaceReport, PondReport};
use schemars::JsonSchema;
use serde::Serialize;

/// The floor as built, held against its plan: arithmetic on the shots, not an approval.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct AsBuiltReport {
    /// The new floor as shot; none where only lines were read.
    pub floor: Option<BuiltFloorReport>,
    /// Flatness and levelness; none without lines.
    pub flatness: Option<FlatnessReport>,
}

/// The new floor as shot.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct BuiltFloorReport {
    /// How many shots on the work.
    pub shots: usize,
    /// How far a shot may be off.
    pub tolerance: Measure,
    /// Shots farther off, the farthest first.
    pub missed: Vec<MissedMark>,
    /// Mean of shot less planned; positive is high.
    pub mean_off: Measure,
    /// Greatest of shot less planned.
    pub highest: Measure,
    /// Least of shot less planned.
    pub lowest: Measure,
    /// The least thickness got.
    pub least: Measure,
    /// Where that is.
    pub least_at: PlaceReport,
    /// The mean thickness got.
    pub mean: Measure,
    /// The mean thickness planned.
    pub mean_planned: Measure,
    /// The greatest thickness got.
    pub greatest: Measure,
    /// Area thinner than allowed, or else than specified, where either is given.
    pub thinner: Option<Measure>,
    /// Slopes got.
    pub falls: Vec<FallGot>,
    /// Where water stands.
    pub ponds: Vec<PondReport>,
    /// Puddles that were seen, in words.
    pub puddles: Vec<String>,
    /// Concrete, where it is known what came.
    pub concrete: Option<ConcreteUsed>,
    /// What was asked, and whether it is kept.
    pub checks: Vec<CheckReport>,
    /// What to mend, in words.
    pub mends: Vec<String>,
    /// All of it in a few sentences.
    pub text: Vec<String>,
}

/// A shot that missed its mark.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct MissedMark {
    /// Where, and which shot.
    pub at: PlaceReport,
    /// Shot less planned; positive is high.
    pub off: Measure,
    /// In words.
    pub text: String,
}

/// The slope of a plane of the plan.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct FallGot {
    /// The facet; none under one plane.
    pub facet: Option<String>,
    /// As planned.
    pub planned: Measure,
    /// As built; none of too few shots.
    pub got: Option<Measure>,
    /// In words.
    pub text: String,
}

/// Concrete used.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct ConcreteUsed {
    /// What came.
    pub came: Measure,
    /// What of it was left over.
    pub left_over: Measure,
    /// What was used.
    pub used: Measure,
    /// What was figured for the plan.
    pub figured: Measure,
    /// What lies in place by the shots.
    pub in_place: Measure,
    /// Used over figured; none where the plan takes none.
    pub factor: Option<f64>,
    /// In words.
    pub text: String,
}

/// Something that was asked.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct CheckReport {
    /// What it is about.
    pub about: String,
    /// pass, fail, confirm locally.
    pub verdict: String,
    /// What was found, in words.
    pub text: String,
    /// The name of where the limit comes from.
    pub basis: String,
}

/// Flatness and levelness.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct FlatnessReport {
    /// Flatness over all; none of a perfect floor.
    pub ff: Option<f64>,
    /// Levelness over all; none of few readings, and on a floor that falls.
    pub fl: Option<f64>,
    /// Flatness asked.
    pub asked_ff: Option<f64>,
    /// Levelness asked.
    pub asked_fl: Option<f64>,
    /// Flatness against what is asked.
    pub ff_verdict: Option<String>,
    /// Levelness against what is asked.
    pub fl_verdict: Option<String>,
    /// The lines.
    pub lines: Vec<ProfileReport>,
    /// The parts of the floor.
    pub sections: Vec<FlatSectionReport>,
    /// In words.
    pub text: Vec<String>,
}

/// A line.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct ProfileReport {
    /// Its name.
    pub name: String,
    /// How many readings.
    pub readings: usize,
    /// Flatness.
    pub ff: Option<f64>,
    /// Levelness.
    pub fl: Option<f64>,
    /// The greatest gap under a 10 ft straightedge along it.
    pub gap: Option<Measure>,
}

/// A part of the floor.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct FlatSectionReport {
    /// Its name; none where the floor is one part.
    pub name: Option<String>,
    /// Flatness.
    pub ff: Option<f64>,
    /// Levelness.
    pub fl: Option<f64>,
    /// Flatness against 3/5 of what is asked over all.
    pub ff_verdict: Option<String>,
    /// Levelness against 3/5 of what is asked over all.
    pub fl_verdict: Option<String>,
    /// Whether there are as many readings as the standard judges by.
    pub enough: bool,
}
