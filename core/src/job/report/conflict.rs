//! Demands that cannot all be kept.

use super::Measure;
use schemars::JsonSchema;
use serde::Serialize;

/// What contradicts, and what mends it. The finish of the report is then the nearest one, not what was asked.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct ConflictReport {
    /// The smallest sets of demands that cannot be kept together.
    pub sets: Vec<ConflictSetReport>,
    /// Whether these are all.
    pub complete: bool,
    /// Changes of one demand that mend everything, each alone.
    pub alone: Vec<ChangeReport>,
    /// The changes of least weight that mend everything together: with these the finish was made.
    pub nearest: Vec<ChangeReport>,
}

/// Demands that cannot be kept together, while every part of them could be.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct ConflictSetReport {
    /// The demands by name.
    pub demands: Vec<String>,
    /// The change of each that mends this set alone, as far as there is one.
    pub changes: Vec<ChangeReport>,
    /// All of it in a sentence.
    pub text: String,
}

/// A demand that gives way.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct ChangeReport {
    /// The demand.
    pub demand: String,
    /// By how much it must give way.
    pub by: Measure,
    /// What that means, in words.
    pub text: String,
}
