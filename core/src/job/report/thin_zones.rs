//! Zones thinner than an unbonded overlay may be.

use super::{Amount, Measure, PlaceReport};
use schemars::JsonSchema;
use serde::Serialize;

/// Zones thinner than an unbonded overlay may be, under the finish of the report.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct ThinZonesReport {
    /// The least thickness of an unbonded overlay.
    pub minimum: Measure,
    /// The area of all that is thinner.
    pub area: Measure,
    /// What all of it lacks.
    pub lacking: Measure,
    /// The zones, the largest first.
    pub zones: Vec<ThinZoneReport>,
    /// What raising the whole finish until nothing is thinner would break.
    pub raising_breaks: Vec<String>,
    /// All of it in a few sentences.
    pub text: String,
}

/// A zone.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct ThinZoneReport {
    /// Its name.
    pub name: String,
    /// Its area.
    pub area: Measure,
    /// What it lacks.
    pub lacking: Measure,
    /// What its thinnest place lacks.
    pub deficit: Measure,
    /// Where that is.
    pub thinnest_at: PlaceReport,
    /// Whether all of it lies beyond the shots: its old slab is extended, not measured.
    pub beyond_shots: bool,
    /// What may be done.
    pub choices: Vec<ZoneChoiceReport>,
}

/// One thing that may be done about a zone.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct ZoneChoiceReport {
    /// What: raise, bond, grind, break out.
    pub cure: String,
    /// Whether it is enough.
    pub verdict: String,
    /// More concrete, where it can be told.
    pub concrete: Option<Measure>,
    /// What it costs, where it has a price.
    pub money: Option<Amount>,
    /// Doors, sills and other limits that it would break.
    pub breaks: Vec<String>,
    /// Whether it is the cheapest that is enough and breaks nothing.
    pub cheapest: bool,
    /// A sentence for the foreman.
    pub text: String,
}
