//! Overlay and old slab bending together.
//!
//! Ours, no source: the references hold no published formula for the stresses of two layers on springs. Both layers take the same curvature, because
//! the one lies on the other; they have one Poisson's ratio, so it drops out. Bonded, plane sections stay plane through both: one plate of the
//! transformed section. Unbonded, each bends about its own middle and the rigidities add up, so that moment is shared in proportion to them; friction between
//! them is left out, which is on the safe side.

use super::concrete::MODULUS;
use crate::failure::{Result, check};
use crate::operation::scalar::Word;
use crate::overlay::Bond;
use crate::overlay::thickness::SLAB;
use crate::quantity::{Length, Pressure, Ratio, Typed};

/// Two layers as one plate of the overlay's concrete. The four stresses are shares of the bending stress of that plate; tension where the plate has tension
/// below is positive.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TwoLayers {
    /// Thickness of the plate of the overlay's concrete that is as stiff as both.
    pub equivalent: Length,
    /// The overlay's share of the moment that bends the layers about their own middles; bonded, of the rigidity about the common one.
    pub overlay_share: Ratio,
    /// At the top of the overlay.
    pub overlay_top: Ratio,
    /// At the bottom of the overlay.
    pub overlay_bottom: Ratio,
    /// At the top of the old slab.
    pub old_top: Ratio,
    /// At the bottom of the old slab.
    pub old_bottom: Ratio,
}

/// Both layers as one plate. Cast straight on without bond counts as unbonded: nothing says that it holds.
///
/// # Errors
/// A value outside its range.
pub fn two_layers(
    bond: Word<Bond>,
    overlay: Length,
    overlay_modulus: Pressure,
    old_slab: Length,
    old_modulus: Pressure,
) -> Result<TwoLayers> {
    let new = check("overlay", overlay, SLAB)?.base();
    let new_modulus = check("overlay_modulus", overlay_modulus, MODULUS)?.base();
    let old = check("old_slab", old_slab, SLAB)?.base();
    let old_modulus = check("old_modulus", old_modulus, MODULUS)?.base();
    let ratio = old_modulus / new_modulus;
    Ok(match bond.0 {
        Bond::Bonded => bonded(new, old, ratio),
        Bond::PartlyBonded | Bond::Unbonded => unbonded(new, old, ratio),
    })
}

fn bonded(new: f64, old: f64, ratio: f64) -> TwoLayers {
    let area = new + ratio * old;
    let axis = (new * new / 2.0 + ratio * old * (new + old / 2.0)) / area;
    let of_new = new * new * new / 12.0 + new * (axis - new / 2.0) * (axis - new / 2.0);
    let down = new + old / 2.0 - axis;
    let of_old = ratio * (old * old * old / 12.0 + old * down * down);
    let second = of_new + of_old;
    let equivalent = (12.0 * second).cbrt();
    // Stress at a depth below the axis, over the plate's own `6 M / h^2`.
    let share =
        |depth: f64, ratio: f64| Ratio::from_base(ratio * depth * equivalent * equivalent / (6.0 * second));
    TwoLayers {
        equivalent: Length::from_base(equivalent),
        overlay_share: Ratio::from_base(of_new / second),
        overlay_top: share(-axis, 1.0),
        overlay_bottom: share(new - axis, 1.0),
        old_top: share(new - axis, ratio),
        old_bottom: share(new + old - axis, ratio),
    }
}

fn unbonded(new: f64, old: f64, ratio: f64) -> TwoLayers {
    let (of_new, of_old) = (new * new * new, ratio * old * old * old);
    let equivalent = (of_new + of_old).cbrt();
    let (above, below) = (new / equivalent, ratio * old / equivalent);
    let share = Ratio::from_base;
    TwoLayers {
        equivalent: Length::from_base(equivalent),
        overlay_share: share(of_new / (of_new + of_old)),
        overlay_top: share(-above),
        overlay_bottom: share(above),
        old_top: share(-below),
        old_bottom: share(below),
    }
}
