//! Quantities and places as a report says them.

use crate::quantity::{Typed, Unit};
use schemars::JsonSchema;
use serde::Serialize;

/// A quantity in both systems of units, and the words the site gets.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Measure {
    /// The number in the US unit.
    pub us: f64,
    /// The US unit.
    pub us_unit: String,
    /// The number in the SI unit.
    pub si: f64,
    /// The SI unit.
    pub si_unit: String,
    /// The words.
    pub text: String,
}

impl Measure {
    /// A quantity in these units with these words.
    pub(in crate::job) fn new<Q: Typed>(value: Q, us: &Unit, si: &Unit, text: impl Into<String>) -> Self {
        Self {
            us: (us.from_base)(value.base()),
            us_unit: us.symbol.to_owned(),
            si: (si.from_base)(value.base()),
            si_unit: si.symbol.to_owned(),
            text: text.into(),
        }
    }
}

/// A place with its words.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct PlaceReport {
    /// Distance from the left.
    pub x: Measure,
    /// Distance from the front.
    pub y: Measure,
    /// The shot it is at.
    pub shot: Option<String>,
    /// Where it is, in words.
    pub text: String,
}
