//! The order.

use super::Measure;
use schemars::JsonSchema;
use serde::Serialize;

/// What to order.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct OrderReport {
    /// The parts and allowances.
    pub lines: Vec<OrderLine>,
    /// Sum of the parts.
    pub net: Measure,
    /// Parts and allowances.
    pub figured: Measure,
    /// What to order.
    pub ordered: Measure,
    /// Ordered over figured.
    pub spare: Measure,
    /// Truck loads.
    pub trucks: u32,
    /// What one truck carries.
    pub capacity: Measure,
    /// What the last one carries.
    pub last: Measure,
}

/// A line of the order.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct OrderLine {
    /// What it is.
    pub name: String,
    /// How much.
    pub volume: Measure,
    /// Whether it was taken, not given.
    pub taken: bool,
}
