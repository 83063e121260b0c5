//! The thickness that loads need.

use super::Slab;
use super::several::{Forms, Load, several};
use crate::failure::{Code, Failure, Result};
use crate::overlay::thickness::SLAB;
use crate::quantity::{Length, Pressure, Range, Typed, inches};

/// The least thickness that the search may answer: 1 to 48 in.
pub const BRACKET: Range = Range::closed(0.0254, 1.2192);
/// The answer is above the root by no more than this: 0.01 mm.
const CLOSE: f64 = 1.0e-5;

/// A thickness found.
#[derive(Clone, Copy, Debug)]
pub struct Needed {
    /// The smallest thickness whose governing stress is allowed, within 0.01 mm on the safe side.
    pub thickness: Length,
    /// The governing stress there.
    pub stress: Pressure,
    /// The load that governs, the first being 0.
    pub governing: usize,
    /// Whether the thinnest slab of the search is enough already.
    pub at_least: bool,
}

/// The smallest thickness between two at which no load's governing stress is over what is allowed. Stress falls as the slab thickens, so the
/// place is found by halving. `slab` gives all but the thickness.
///
/// # Errors
/// A thickness outside its range; no thickness up to the greatest is enough; a contact too wide there.
pub fn needed(
    slab: &Slab,
    loads: &[Load],
    forms: &Forms,
    allowed: Pressure,
    [least, greatest]: [Length; 2],
) -> Result<Needed> {
    let least = crate::failure::check("least", least, BRACKET)?.base();
    let greatest = crate::failure::check("greatest", greatest, SLAB)?.base();
    if least > greatest {
        return Err(Failure::new(Code::OutOfRange, "greatest")
            .written(inches(Length::from_base(greatest), 8))
            .allowed(format!("at least {}", inches(Length::from_base(least), 8)))
            .remedy("give the greatest thickness above the least"));
    }
    let at = |thickness: f64| worst(&slab.as_thick(thickness), loads, forms);
    let allowed = allowed.base();
    let (governing, stress) = at(greatest)?;
    if stress > allowed {
        return Err(not_enough(greatest, stress, allowed, governing));
    }
    // Where a contact is too wide for so thin a slab the formula says nothing: such a slab is not taken.
    let enough = |thickness: f64| at(thickness).is_ok_and(|(_, stress)| stress <= allowed);
    let mut found = greatest;
    let at_least = enough(least);
    if at_least {
        found = least;
    } else {
        let mut thin = least;
        while found - thin > CLOSE {
            let middle = (thin + found) / 2.0;
            if enough(middle) {
                found = middle;
            } else {
                thin = middle;
            }
        }
    }
    let (governing, stress) = at(found)?;
    let thickness = Length::from_base(found);
    Ok(Needed { thickness, stress: Pressure::from_base(stress), governing, at_least })
}

/// The load with the greatest governing stress.
fn worst(slab: &Slab, loads: &[Load], forms: &Forms) -> Result<(usize, f64)> {
    let felt = several(slab, loads, forms)?;
    let stresses = felt.iter().map(|felt| felt.governing().base()).enumerate();
    Ok(stresses.fold((0, f64::NEG_INFINITY), |worst, one| if one.1 > worst.1 { one } else { worst }))
}

fn not_enough(greatest: f64, stress: f64, allowed: f64, governing: usize) -> Box<Failure> {
    let psi = |pascals: f64| format!("{:.0} psi", pascals / super::PSI);
    let thick = inches(Length::from_base(greatest), 8);
    Failure::new(Code::NoThickness, "greatest")
        .written(format!("{thick}: {} under load {}", psi(stress), governing + 1))
        .allowed(format!("at most {}", psi(allowed)))
        .remedy("allow a thicker slab, spread the load on a plate, or take stronger concrete")
}
