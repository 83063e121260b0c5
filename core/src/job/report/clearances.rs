//! What the new floor does to the things that it meets.

use super::Measure;
use schemars::JsonSchema;
use serde::Serialize;

/// One thing that the floor meets.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct ClearanceReport {
    /// What it is called.
    pub name: String,
    /// Its kind.
    pub kind: String,
    /// Whether it still works: pass, confirm_locally, ask, fail.
    pub verdict: String,
    /// What decides, in words.
    pub text: String,
    /// By how much that is kept; negative is what is lacking.
    pub room: Option<Measure>,
    /// Where the limit that decides comes from, by name.
    pub basis: String,
    /// Least rise there, new floor less old.
    pub rise_least: Measure,
    /// Greatest rise there.
    pub rise_greatest: Measure,
    /// The greatest floor along it that passes every check; none where no height alone does.
    pub floor_at_most: Option<Measure>,
    /// The rod on it; none without a level.
    pub floor_at_most_rod: Option<Measure>,
    /// Measures that decide and were not given, as questions.
    pub asks: Vec<String>,
    /// What the raise forces, in a sentence; empty where it forces nothing.
    pub forces: String,
    /// The same piece by piece.
    pub works: Vec<WorkReport>,
    /// Every check.
    pub checks: Vec<ClearanceCheckReport>,
}

/// One check of a thing.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct ClearanceCheckReport {
    /// What is checked.
    pub about: String,
    /// What follows: pass, confirm_locally, ask, fail.
    pub verdict: String,
    /// By how much it is kept; negative is what is lacking.
    pub room: Option<Measure>,
    /// Where the limit comes from, by name.
    pub basis: String,
    /// What is had against what is wanted.
    pub text: String,
}

/// One piece of work that the raise forces.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct WorkReport {
    /// What is done.
    pub task: String,
    /// Whose work it is.
    pub trade: String,
    /// By how much.
    pub by: Option<Measure>,
    /// In words.
    pub text: String,
}
