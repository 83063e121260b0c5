//! A finish that is solved for: the one of least concrete under everything demanded.

use super::LimitPlaceInput;
use crate::grade::solve::Kind;
use crate::quantity::{Elevation, Given, Length, Slope};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The finish of least concrete that keeps everything demanded: `least`, `fall` to `falls_to` or to a shape, the limits, and what
/// stands here. Of a shape only the plan counts.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SolveInput {
    /// The greatest fall toward the edge or the line that the floor falls to.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub greatest_fall: Option<Given<Slope>>,
    /// The greatest fall in any direction.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub steepest: Option<Given<Slope>>,
    /// Edges that are dead level; that stands firm.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub level: Vec<String>,
    /// Whether thickness binds on ground beyond the shots too, which is extended, not measured.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub edges_bind: bool,
    /// Falls are whole steps of this; 1/16 in/ft where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub round_fall: Option<Given<Slope>>,
    /// High spots may be ground so deep, to leave the least thickness over them.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub grind_at_most: Option<Given<Length>>,
    /// What else is demanded.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub demands: Vec<DemandInput>,
}

/// A demand by its kind, with the figure and the place that the kind takes.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct DemandInput {
    /// What it is called in the report.
    pub name: String,
    /// What is demanded.
    pub kind: Kind,
    /// A thickness: of `least_thickness`, `greatest_thickness`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub thickness: Option<Given<Length>>,
    /// A fall: of `least_fall`, `greatest_fall`, `steepest`, `cross_fall`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fall: Option<Given<Slope>>,
    /// A height of `at_most`, `at_least`, `exactly`, as an elevation.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub elevation: Option<Given<Elevation>>,
    /// The same as a rod reading from the first set-up.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rod: Option<Given<Length>>,
    /// How far a `level` line may be out of level; dead level where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tolerance: Option<Given<Length>>,
    /// The edge: along which a height, a level or a cross-fall is meant, or over which the water leaves.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub edge: Option<String>,
    /// Places in place of an edge. For a fall: one is a drain, two are a line that the water leaves along.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub at: Vec<LimitPlaceInput>,
    /// For a fall: the facets meant, by their name or what they fall to; all where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub facet: Option<String>,
    /// For a thickness: the zone meant, by its name under `zones`; everywhere where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub zone: Option<String>,
    /// Whether it stands firm: no conflict blames it or asks to change it.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub firm: bool,
    /// How much it matters where demands contradict one another: what breaking it by 1/4 in, or a fall by 0.1 %, weighs; 1 where
    /// it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub weight: Option<f64>,
}
