//! From the resilient modulus of the soil.

use super::super::{PCI, PSI};
use crate::failure::{Result, check};
use crate::quantity::{Pressure, Range, SubgradeReaction, Typed};

/// A resilient modulus: 500 to 38 000 psi, whose subgrade reaction is 26 to 1960 pci.
pub const RESILIENT: Range = Range::closed(500.0 * PSI, 38_000.0 * PSI);

/// `k = MR / 19.4`, k in pci, MR in psi.
///
/// # Errors
/// A modulus outside its range.
pub fn from_resilient(resilient: Pressure) -> Result<SubgradeReaction> {
    let resilient = check("resilient", resilient, RESILIENT)?.base() / PSI;
    Ok(SubgradeReaction::from_base(resilient / 19.4 * PCI))
}
