//! The verdict on the old slab.

use super::Measure;
use schemars::JsonSchema;
use serde::Serialize;

/// Whether the old slab may stay.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct OldSlabReport {
    /// The way to take: unbonded, bonded, break_out_part, break_out_whole, find_out, stop.
    pub take: String,
    /// The verdict in one sentence.
    pub text: String,
    /// Whether it spans free or rests on framing: the report then tells no new floor.
    pub spans: bool,
    /// What the new floor would weigh on each unit of area, on average, where it spans.
    pub added_weight: Option<Measure>,
    /// The stops by name.
    pub stops: Vec<StopReport>,
    /// What speaks for the way to take.
    pub speaks_for: Vec<String>,
    /// Every way judged.
    pub ways: Vec<WayReport>,
    /// What is not known and could turn the verdict, the fewest first.
    pub find_out: Vec<AskReport>,
}

/// A stop by name.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct StopReport {
    /// The rule.
    pub rule: String,
    /// The ways that it closes; none where they are open after work.
    pub closes: Vec<String>,
    /// Why.
    pub text: String,
    /// What lifts it, or what work follows.
    pub lifts: Vec<String>,
}

/// A way.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct WayReport {
    /// Which: unbonded, bonded, partly_bonded, break_out_part, break_out_whole.
    pub way: String,
    /// Where it stands: allowed, allowed_after_work, asks, refused, stop.
    pub standing: String,
    /// Whether it is the way to take.
    pub taken: bool,
    /// What speaks against it, what weighs most first.
    pub minds: Vec<String>,
    /// The rules that weigh on it.
    pub reasons: Vec<ReasonReport>,
    /// The work that it takes.
    pub work: Vec<String>,
    /// The way in one line.
    pub text: String,
}

/// A rule that weighs on a way.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct ReasonReport {
    /// The rule.
    pub rule: String,
    /// Where it alone would put the way.
    pub standing: String,
    /// Why.
    pub text: String,
    /// Where it comes from.
    pub basis: String,
}

/// What to find out.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct AskReport {
    /// The findings, all of them together.
    pub findings: Vec<String>,
    /// Whether they could close a way; else they could only add work.
    pub closes: bool,
    /// Whether a word is taken until it is known.
    pub taken: bool,
    /// What is not known.
    pub what: String,
    /// What is not known, how to find out, and what it could turn.
    pub text: String,
}
