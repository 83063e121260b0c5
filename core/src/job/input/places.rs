//! Parts of the floor that a job wants figures of: zones, and lines that sections are cut along.

use crate::survey::input::CornerInput;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A part of the floor with figures of its own.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ZoneInput {
    /// Its name.
    pub name: String,
    /// Its corners in order.
    pub corners: Vec<CornerInput>,
}

/// A line along which old slab and new floor are told.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SectionInput {
    /// Its name.
    pub name: String,
    /// Its places in order.
    pub line: Vec<CornerInput>,
}
