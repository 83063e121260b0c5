//! What a new floor over an old slab carries: by itself on what lies under it, or as one plate with the old slab.
//!
//! Unbonded, and cast straight on, the overlay is a slab by itself on the old one, whose reaction is taken in place of the
//! soil's. Bonded, both are one plate of the transformed section on the soil, and each layer is held against its own strength:
//! ours, no source, see [`two_layers`](super::strength::two_layers).

use super::Bond;
use super::strength::Slab;
use super::strength::concrete::{self, RuptureFormula};
use super::strength::safety::FACTOR;
use super::strength::several::{Felt, Forms, Load, several};
use super::strength::slab::SUBGRADE;
use super::strength::two_layers::two_layers;
use super::thickness::SLAB;
use crate::failure::{Code, Failure, Result, check};
use crate::operation::scalar::Word;
use crate::quantity::units::INCH;
use crate::quantity::{Length, Pressure, Ratio, SubgradeReaction, Typed};

/// Poisson's ratio of concrete, as usual.
const POISSON: f64 = 0.15;
/// The thinnest overlay that is looked for, in metres: 1 in.
pub const THINNEST: f64 = INCH;
/// The thickest: 24 in.
const THICKEST: f64 = 24.0 * INCH;
/// A thickness is found within this: 0.01 mm.
const CLOSE: f64 = 1.0e-5;

/// An old slab that carries with the overlay.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OldSlab {
    /// Its thickness.
    pub thickness: Length,
    /// Its compressive strength.
    pub strength: Pressure,
}

/// A new floor and what it lies on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Floor {
    /// How the overlay holds to the old slab.
    pub bond: Bond,
    /// The compressive strength of the new concrete.
    pub strength: Pressure,
    /// The old slab, which counts where the overlay is bonded.
    pub old: Option<OldSlab>,
    /// The reaction of what the plate lies on: of the soil where bonded, of the old slab where not.
    pub subgrade: SubgradeReaction,
    /// The strength in bending over the stress that is allowed.
    pub safety: Ratio,
}

/// The layer whose stress governs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Layer {
    /// The new concrete.
    Overlay,
    /// The old slab.
    Old,
}

/// What loads do to a floor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Carried {
    /// The layer that governs.
    pub layer: Layer,
    /// The greatest tensile stress in it.
    pub stress: Pressure,
    /// What is allowed there.
    pub allowed: Pressure,
    /// The load that governs, the first being 0.
    pub governing: usize,
}

impl Carried {
    /// Whether the stress is allowed.
    #[must_use]
    pub fn is_enough(&self) -> bool {
        self.use_of_strength() <= 1.0
    }

    /// Stress over what is allowed.
    #[must_use]
    pub fn use_of_strength(&self) -> f64 {
        self.stress.base() / self.allowed.base()
    }
}

impl Floor {
    /// The same floor, where each of its values lies in its range.
    ///
    /// # Errors
    /// `OUT_OF_RANGE`, `NOT_FINITE`: `strength`, `safety`, `subgrade`, `old_thickness`, `old_strength`.
    pub fn checked(self) -> Result<Self> {
        check("strength", self.strength, concrete::STRENGTH)?;
        check("safety", self.safety, FACTOR)?;
        check("subgrade", self.subgrade, SUBGRADE)?;
        if let Some(old) = self.old {
            check("old_thickness", old.thickness, SLAB)?;
            check("old_strength", old.strength, concrete::STRENGTH)?;
        }
        Ok(self)
    }

    /// What loads do to the floor where the overlay is this thick.
    ///
    /// # Errors
    /// `KEY_MISSING`: a bonded overlay without an old slab; a value outside its range; a contact too wide for the formula.
    pub fn carries(&self, thickness: Length, loads: &[Load], forms: &Forms) -> Result<Carried> {
        self.checked()?;
        let modulus = concrete::modulus(self.strength)?;
        let allowed = self.allowed(self.strength)?;
        match self.bond {
            Bond::Unbonded | Bond::PartlyBonded => {
                let (governing, stress) = self.worst(thickness, modulus, loads, forms)?;
                Ok(Carried { layer: Layer::Overlay, stress, allowed, governing })
            }
            Bond::Bonded => self.as_one_plate(thickness, modulus, allowed, loads, forms),
        }
    }

    /// The least thickness of the overlay at which the loads are carried, within 0.01 mm on the safe side; none up to 24 in.
    ///
    /// # Errors
    /// As [`Floor::carries`].
    pub fn needs(&self, loads: &[Load], forms: &Forms) -> Result<Option<Length>> {
        let at = |thickness: f64| self.carries(Length::from_base(thickness), loads, forms);
        if !at(THICKEST)?.is_enough() {
            return Ok(None);
        }
        // Where a contact is too wide for so thin a slab the formula says nothing: such a slab is not taken.
        let enough = |thickness: f64| at(thickness).is_ok_and(|carried| carried.is_enough());
        let (mut thin, mut found) = (THINNEST, THICKEST);
        if enough(thin) {
            return Ok(Some(Length::from_base(thin)));
        }
        while found - thin > CLOSE {
            let middle = f64::midpoint(thin, found);
            if enough(middle) { found = middle } else { thin = middle }
        }
        Ok(Some(Length::from_base(found)))
    }

    fn allowed(&self, strength: Pressure) -> Result<Pressure> {
        let rupture = concrete::rupture(strength, Word(RuptureFormula::Floor))?;
        super::strength::safety::allowable(rupture, self.safety)
    }

    /// The greatest stress in a plate, and the load under which it is.
    fn worst(
        &self,
        thickness: Length,
        modulus: Pressure,
        loads: &[Load],
        forms: &Forms,
    ) -> Result<(usize, Pressure)> {
        let slab = Slab::new(thickness, modulus, Ratio::from_base(POISSON), self.subgrade)?;
        let felt = several(&slab, loads, forms)?;
        let stresses = felt.iter().map(Felt::governing).enumerate();
        let none = (0, Pressure::from_base(0.0));
        Ok(stresses.fold(none, |worst, one| if one.1.base() > worst.1.base() { one } else { worst }))
    }

    fn as_one_plate(
        &self,
        thickness: Length,
        modulus: Pressure,
        allowed: Pressure,
        loads: &[Load],
        forms: &Forms,
    ) -> Result<Carried> {
        let old = self.old.ok_or_else(|| {
            Failure::new(Code::KeyMissing, "old_thickness")
                .written("nothing")
                .allowed("the thickness of the old slab, which carries with a bonded overlay")
                .remedy("drill a hole and measure it, or figure the overlay as unbonded")
        })?;
        let old_modulus = concrete::modulus(old.strength)?;
        let layers = two_layers(Word(self.bond), thickness, modulus, old.thickness, old_modulus)?;
        let (governing, plate) = self.worst(layers.equivalent, modulus, loads, forms)?;
        let carried = |layer, share: f64, allowed| {
            let stress = Pressure::from_base(plate.base() * share.abs());
            Carried { layer, stress, allowed, governing }
        };
        // At edges and corners the plate bends up as well as down, so both faces count.
        let of_new = layers.overlay_top.base().abs().max(layers.overlay_bottom.base().abs());
        let in_old = layers.old_top.base().abs().max(layers.old_bottom.base().abs());
        let new = carried(Layer::Overlay, of_new, allowed);
        let below = carried(Layer::Old, in_old, self.allowed(old.strength)?);
        Ok(if below.use_of_strength() > new.use_of_strength() { below } else { new })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::overlay::strength::several::Position;
    use crate::overlay::strength::westergaard::{CornerForm, EdgeForm};
    use crate::overlay::strength::{PCI, PSI};
    use crate::quantity::Force;
    use crate::quantity::units::POUND_FORCE;

    const FORMS: fn() -> Forms = || Forms {
        edge: EdgeForm::Circle,
        corner: CornerForm::Westergaard,
        transfer: crate::quantity::Share::from_base(0.0),
    };

    fn floor(bond: Bond, old: Option<f64>, pci: f64) -> Floor {
        let strength = Pressure::from_base(4000.0 * PSI);
        let old = old.map(|thickness| OldSlab { thickness: Length::from_base(thickness * INCH), strength });
        let subgrade = SubgradeReaction::from_base(pci * PCI);
        Floor { bond, strength, old, subgrade, safety: Ratio::from_base(2.0) }
    }

    fn wheel(pounds: f64, position: Position) -> Load {
        Load {
            load: Force::from_base(pounds * POUND_FORCE),
            radius: Length::from_base(3.5 * INCH),
            x: Length::from_base(0.0),
            y: Length::from_base(0.0),
            position,
        }
    }

    #[test]
    fn what_it_needs_carries_and_a_little_less_does_not() {
        for floor in [floor(Bond::Unbonded, None, 200.0), floor(Bond::Bonded, Some(3.5), 100.0)] {
            for position in [Position::Interior, Position::Edge, Position::Corner] {
                let loads = [wheel(6000.0, position)];
                let needed = floor.needs(&loads, &FORMS()).unwrap().unwrap();
                assert!(floor.carries(needed, &loads, &FORMS()).unwrap().is_enough());
                let thinner = Length::from_base(needed.base() - 2.0 * CLOSE);
                assert!(!floor.carries(thinner, &loads, &FORMS()).unwrap().is_enough(), "{position:?}");
            }
        }
    }

    #[test]
    fn one_plate_of_one_concrete_is_a_slab_as_thick_as_both() {
        let loads = [wheel(4000.0, Position::Edge)];
        let thick = |inches: f64| Length::from_base(inches * INCH);
        let both = floor(Bond::Bonded, Some(3.5), 100.0).carries(thick(2.5), &loads, &FORMS()).unwrap();
        let single = floor(Bond::Unbonded, None, 100.0).carries(thick(6.0), &loads, &FORMS()).unwrap();
        assert!((both.stress.base() / single.stress.base() - 1.0).abs() < 1e-12);
    }

    #[test]
    fn a_bonded_overlay_without_its_old_slab_is_refused() {
        let loads = [wheel(2000.0, Position::Interior)];
        let bonded = floor(Bond::Bonded, None, 100.0);
        let failure = bonded.carries(Length::from_base(0.05), &loads, &FORMS()).unwrap_err();
        assert_eq!((failure.code, failure.path.as_str()), (Code::KeyMissing, "old_thickness"));
    }

    #[test]
    fn what_nothing_of_two_feet_carries_has_no_thickness() {
        let loads = [wheel(2.0e6, Position::Corner)];
        assert_eq!(floor(Bond::Unbonded, None, 50.0).needs(&loads, &FORMS()).unwrap(), None);
    }
}
