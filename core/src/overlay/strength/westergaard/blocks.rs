//! The loads over a block of rows at once, where all are in range.

use super::corner::{CornerForm, corner_on};
use super::edge::{EdgeForm, edge_on};
use super::fits;
use super::interior::interior_on;
use crate::operation::block::{Formula, at_once, same_word};
use crate::overlay::strength::Slab;
use crate::overlay::strength::concrete::MODULUS;
use crate::overlay::strength::contact::{LOAD, RADIUS};
use crate::overlay::strength::slab::{POISSON, SUBGRADE};
use crate::overlay::thickness::SLAB;
use crate::quantity::Range;

/// One of Westergaard's loads.
trait Bends {
    /// Stress and deflection.
    fn bend(&self, slab: &Slab, load: f64, radius: f64) -> (f64, f64);

    /// The widest contact, in radii of relative stiffness.
    fn widest(&self) -> f64 {
        1.0
    }
}

struct Interior;

impl Bends for Interior {
    #[inline(always)]
    fn bend(&self, slab: &Slab, load: f64, radius: f64) -> (f64, f64) {
        interior_on(slab, load, radius)
    }
}

impl Bends for EdgeForm {
    #[inline(always)]
    fn bend(&self, slab: &Slab, load: f64, radius: f64) -> (f64, f64) {
        edge_on(slab, load, radius, *self)
    }
}

impl Bends for CornerForm {
    #[inline(always)]
    fn bend(&self, slab: &Slab, load: f64, radius: f64) -> (f64, f64) {
        corner_on(slab, load, radius, *self)
    }

    #[inline(always)]
    fn widest(&self) -> f64 {
        Self::widest(*self)
    }
}

/// A load over load, radius, thickness, modulus, Poisson's ratio, subgrade.
struct Over<L>(L);

impl<L: Bends> Formula<6, 3> for Over<L> {
    const RANGES: [Range; 6] = [LOAD, RADIUS, SLAB, MODULUS, POISSON, SUBGRADE];

    #[inline(always)]
    fn row(&self, [load, radius, thickness, modulus, poisson, subgrade]: [f64; 6]) -> ([f64; 3], bool) {
        let slab = Slab::of(thickness, modulus, poisson, subgrade);
        let (stress, deflection) = self.0.bend(&slab, load, radius);
        ([stress, deflection, slab.square.sqrt()], fits(radius, &slab, self.0.widest()))
    }
}

/// [`interior`](super::interior) over a block.
pub(crate) fn interior_block(inputs: &[&[f64]], results: &mut [&mut [f64]]) -> bool {
    inputs.try_into().is_ok_and(|inputs| at_once(&Over(Interior), inputs, results))
}

/// [`edge`](super::edge) over a block with one form.
pub(crate) fn edge_block(inputs: &[&[f64]], results: &mut [&mut [f64]]) -> bool {
    let [numbers @ .., form] = inputs else { return false };
    let (Ok(numbers), Some(form)) = (numbers.try_into(), same_word::<EdgeForm>(form)) else { return false };
    at_once(&Over(form), numbers, results)
}

/// [`corner`](super::corner) over a block with one formula.
pub(crate) fn corner_block(inputs: &[&[f64]], results: &mut [&mut [f64]]) -> bool {
    let [numbers @ .., form] = inputs else { return false };
    let (Ok(numbers), Some(form)) = (numbers.try_into(), same_word::<CornerForm>(form)) else { return false };
    at_once(&Over(form), numbers, results)
}
