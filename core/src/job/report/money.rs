//! Amounts of money.

use schemars::JsonSchema;
use serde::Serialize;

/// An amount in the currency of the job's prices.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Amount {
    /// The amount.
    pub amount: f64,
    /// The words.
    pub text: String,
}
