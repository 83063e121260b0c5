//! Zones thinner than an unbonded overlay may be.

use crate::quantity::{Given, Length};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Zones thinner than an unbonded overlay may be, and what may be done about each.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ThinZonesInput {
    /// The least thickness of an unbonded overlay.
    pub minimum: Given<Length>,
    /// The least thickness of a bonded part.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bonded_minimum: Option<Given<Length>>,
    /// How deep the old slab may be ground.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub grind_at_most: Option<Given<Length>>,
    /// How thick the concrete is where the old slab is broken out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub new_thickness: Option<Given<Length>>,
}
