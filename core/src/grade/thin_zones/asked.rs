//! What is asked of the thin zones: the minimums, the limits and the prices.

use crate::failure::{Failure, Result, check};
use crate::quantity::{Area, AreaPrice, Length, Money, Range, Typed, Volume, VolumePrice};

/// A least thickness, or a thickness of new concrete: more than nothing, up to 10 ft.
pub const MINIMUM: Range = Range::positive_to(3.048);

/// How deep may be ground: nothing, up to 10 ft.
pub const GROUND: Range = Range::closed(0.0, 3.048);

/// The price of a volume: up to 10 million a cubic metre.
pub const VOLUME_PRICE: Range = Range::closed(0.0, 1.0e7);

/// The price of an area: up to 10 million a square metre.
pub const AREA_PRICE: Range = Range::closed(0.0, 1.0e7);

/// What is asked. What is not given is not taken: its choice then has no money, or is not judged.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AskedOfThinZones {
    /// The least thickness of an unbonded overlay.
    pub minimum: Length,
    /// The least thickness of a bonded part, at most the unbonded one.
    pub bonded_minimum: Option<Length>,
    /// How deep the old slab may be ground.
    pub grind_at_most: Option<Length>,
    /// How thick the concrete is where the old slab is broken out, measured down from the finish.
    pub new_thickness: Option<Length>,
    /// The prices.
    pub prices: Prices,
}

/// The caller's plain prices, in one currency.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Prices {
    /// Concrete, placed.
    pub concrete: Option<VolumePrice>,
    /// Bonding: milling, cleaning and slurry together.
    pub bonding: Option<AreaPrice>,
    /// Grinding.
    pub grinding: Option<AreaPrice>,
    /// Breaking out, hauling with it.
    pub breaking_out: Option<AreaPrice>,
}

impl AskedOfThinZones {
    /// Only the minimum: areas and volumes, no money.
    #[must_use]
    pub fn of(minimum: Length) -> Self {
        let prices = Prices::default();
        Self { minimum, bonded_minimum: None, grind_at_most: None, new_thickness: None, prices }
    }

    pub(super) fn check(&self) -> Result<()> {
        let minimum = check("minimum", self.minimum, MINIMUM)?;
        if let Some(bonded) = self.bonded_minimum {
            check("bonded_minimum", bonded, Range::positive_to(minimum.base())).map_err(over_unbonded)?;
        }
        self.grind_at_most.map(|depth| check("grind_at_most", depth, GROUND)).transpose()?;
        self.new_thickness.map(|depth| check("new_thickness", depth, MINIMUM)).transpose()?;
        self.prices.check()
    }
}

impl Prices {
    fn check(&self) -> Result<()> {
        self.concrete.map(|price| check("concrete_price", price, VOLUME_PRICE)).transpose()?;
        self.bonding.map(|price| check("bonding_price", price, AREA_PRICE)).transpose()?;
        self.grinding.map(|price| check("grinding_price", price, AREA_PRICE)).transpose()?;
        self.breaking_out.map(|price| check("breaking_out_price", price, AREA_PRICE)).transpose()?;
        Ok(())
    }

    /// What concrete costs; nothing without a price, unless there is none of it.
    pub(super) fn of_concrete(&self, volume: Volume) -> Option<Money> {
        if volume.base() == 0.0 { Some(Money::from_base(0.0)) } else { Some(self.concrete? * volume) }
    }
}

/// What work on an area and the concrete it takes cost; nothing where a price is missing.
pub(super) fn together(price: Option<AreaPrice>, area: Area, concrete: Option<Money>) -> Option<Money> {
    Some(price? * area + concrete?)
}

/// A bonded part may not have to be thicker than an unbonded one.
fn over_unbonded(mut failure: Box<Failure>) -> Box<Failure> {
    if failure.refused.is_some_and(|refused| refused.base > refused.range.greatest) {
        "give a bonded minimum that is no more than the unbonded one".clone_into(&mut failure.remedy);
    }
    failure
}
