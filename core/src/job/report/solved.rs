//! A finish that was solved for: what it takes, what each demand costs, and the proof.

use super::{Amount, EdgeHeights, Measure, PlaceReport};
use schemars::JsonSchema;
use serde::Serialize;

/// A finish of least concrete.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct SolvedReport {
    /// By the demands alone: no margin, nothing rounded.
    pub bare: StageReport,
    /// With the margin, and as a crew sets floors out. Prices and proof are of this one.
    pub planned: StageReport,
    /// In whole steps: the finish of this report.
    pub built: StageReport,
    /// What margin and habits of setting out cost.
    pub margin_and_habits: CostReport,
    /// What whole steps cost.
    pub rounding: CostReport,
    /// Heights are whole steps of this; 0 where none are.
    pub step_heights: Measure,
    /// Falls are whole steps of this; 0 where none are.
    pub step_falls: Measure,
    /// Whether no finish in these steps takes less.
    pub steps_best: bool,
    /// Whether the steps asked for had to be made finer, or given up, to keep the demands.
    pub steps_finer: bool,
    /// What was added so that the floor can be set out.
    pub habits: Vec<String>,
    /// Habits that the demands leave no room for.
    pub habits_dropped: Vec<String>,
    /// Heights along the edges of the planned finish, before they were brought to whole steps.
    pub planned_edges: Vec<EdgeHeights>,
    /// Every demand that is kept, in the job's order, then the habits.
    pub demands: Vec<DemandReport>,
    /// The proof.
    pub proof: ProofReport,
}

/// What a finish takes.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct StageReport {
    /// Its concrete, what is ground off filled.
    pub concrete: Measure,
    /// What is ground off the old slab.
    pub ground: Measure,
    /// Concrete and grinding at their prices.
    pub money: Option<Amount>,
}

/// What something adds.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct CostReport {
    /// Concrete.
    pub concrete: Measure,
    /// Money.
    pub money: Option<Amount>,
}

/// A demand at the finish.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct DemandReport {
    /// Its name.
    pub name: String,
    /// Whether it is a habit of setting out, not the job's.
    pub habit: bool,
    /// Whether it stands firm.
    pub firm: bool,
    /// Whether it holds the planned finish: it stands at its limit.
    pub binds: bool,
    /// Where it binds, for a thickness or a height.
    pub at: Option<PlaceReport>,
    /// How far the planned finish is from its limit.
    pub slack: Measure,
    /// How far the built finish is from it.
    pub slack_built: Measure,
    /// What a step of it is: 1/4 in, or 0.1 % of fall.
    pub step: Measure,
    /// What each step tighter costs: thicker, steeper, a greatest height lower, a height to be had exactly higher.
    pub tighter: PriceReport,
    /// What each step looser costs, less than nothing where it saves.
    pub looser: PriceReport,
    /// How it stands, in words.
    pub text: String,
}

/// What one step of a demand does, one way.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct PriceReport {
    /// What the concrete rises by per step; none where the demand cannot go that way.
    pub concrete: Option<Measure>,
    /// What the money rises by per step.
    pub money: Option<Amount>,
    /// How far that holds; none for ever.
    pub holds: Option<Measure>,
}

/// The proof of the planned finish, worked out from the demands and the surfaces.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct ProofReport {
    /// The least room of all that was looked at; less than none by rounding only.
    pub least_slack: Measure,
    /// How many places and falls were looked at.
    pub rows: usize,
    /// No finish that keeps the demands costs less, in volume of concrete.
    pub bound: Measure,
    /// How far the planned finish may be above that, as a share.
    pub gap: f64,
    /// The proof in a sentence.
    pub text: String,
}
