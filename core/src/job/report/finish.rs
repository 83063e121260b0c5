//! The new floor: its heights, its fall, what it must keep to.

use super::{Measure, PlaceReport};
use schemars::JsonSchema;
use serde::Serialize;

/// The new floor.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct FinishReport {
    /// Least thickness asked for, without the margin, where it decides.
    pub least: Option<Measure>,
    /// The margin on it.
    pub margin: Option<Measure>,
    /// The place that fixes the height, where least thickness decides.
    pub fixed_at: Option<PlaceReport>,
    /// The edge it falls to.
    pub falls_to: Option<String>,
    /// The fall.
    pub fall: FallReport,
    /// The planes it is made of, where there are several.
    pub facets: Vec<FacetReport>,
    /// Heights along the edges of the outline.
    pub edges: Vec<EdgeHeights>,
    /// Heights of other places: the drain, the ends of a valley.
    pub places: Vec<PlaceHeight>,
}

/// The fall against guidance.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct FallReport {
    /// The fall; of several planes the least, level rims left out.
    pub fall: Measure,
    /// The steepest, where planes differ.
    pub steepest: Option<Measure>,
    /// Highest less lowest of the floor.
    pub drop: Measure,
    /// The run over which it is lost, for one plane.
    pub run: Option<Measure>,
    /// The published guidance it is held against.
    pub guidance: Measure,
    /// Whether it meets the guidance.
    pub meets_guidance: bool,
    /// The judgement in words, with both bases named.
    pub text: String,
}

/// One plane of the finish.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct FacetReport {
    /// Its name.
    pub name: String,
    /// What it falls to.
    pub falls_to: Option<String>,
    /// Its fall.
    pub fall: Measure,
}

/// The height of the finish at one place.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct PlaceHeight {
    /// What is there.
    pub name: String,
    /// Where it is.
    pub at: PlaceReport,
    /// The rod there, with the instrument of the first set-up; none without a level.
    pub rod: Option<Measure>,
    /// The elevation.
    pub elevation: Measure,
}

/// Heights of the finish along one edge.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct EdgeHeights {
    /// The edge.
    pub edge: String,
    /// Whether it is level.
    pub level: bool,
    /// Rod at its start, with the instrument of the first set-up; none without a level.
    pub rod_from: Option<Measure>,
    /// Rod at its end.
    pub rod_to: Option<Measure>,
    /// Elevation at its start.
    pub elevation_from: Measure,
    /// Elevation at its end.
    pub elevation_to: Measure,
}

/// What rounding and margin cost.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct RoundingReport {
    /// What heights are rounded to.
    pub step: Measure,
    /// How much rounding raises the floor.
    pub raised: Measure,
    /// Concrete that rounding costs.
    pub rounding: Measure,
    /// Concrete that the margin costs.
    pub margin: Measure,
    /// The net volume without rounding.
    pub unrounded: Measure,
    /// The net volume with neither margin nor rounding.
    pub without_margin: Measure,
    /// Heights along the edges without rounding.
    pub edges: Vec<EdgeHeights>,
}

/// A height the finish must keep to, or a demand that gave way.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct FitReport {
    /// What it is.
    pub name: String,
    /// What the limit is called.
    pub called: String,
    /// Which way it holds: at most, at least, exactly; `demanded` for a demand that gave way.
    pub bound: String,
    /// How far the finish stays below it, negative where it stands above; of its places the one that is worst. None for a demand
    /// that is no height.
    pub below: Option<Measure>,
    /// The same in words.
    pub text: String,
    /// Whether it is kept.
    pub kept: bool,
}
