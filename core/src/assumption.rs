//! Values taken where nobody gave one. Each stands here once, for the table of operations, the job and the report.

use crate::quantity::units::{CUBIC_FOOT, CUBIC_YARD, POUND, POUND_FORCE};
use crate::quantity::{Density, Length, Mass, Pressure, Ratio, Share, Slope, Typed, Volume};
use std::marker::PhantomData;

/// A value that is taken where none is given; it is always listed as taken.
#[derive(Clone, Copy, Debug)]
pub struct Assumption<Q> {
    /// The value, as a crew would write it.
    pub words: &'static str,
    /// Why this value.
    pub why: &'static str,
    base: f64,
    quantity: PhantomData<Q>,
}

impl<Q: Typed> Assumption<Q> {
    const fn new(words: &'static str, base: f64, why: &'static str) -> Self {
        Self { words, why, base, quantity: PhantomData }
    }

    /// The value.
    #[must_use]
    pub fn value(&self) -> Q {
        Q::from_base(self.base)
    }
}

const INCH: f64 = 0.0254;

/// The allowance for waste.
pub const WASTE: Assumption<Share> =
    Assumption::new("3 %", 0.03, "a surveyed floor: what sticks to tools and strike-off");
/// The step a plant sells by.
pub const PLANT_STEP: Assumption<Volume> =
    Assumption::new("1/4 yd3", 0.25 * CUBIC_YARD, "plants usually sell by the quarter yard");
/// What one truck carries.
pub const TRUCK: Assumption<Volume> =
    Assumption::new("10 yd3", 10.0 * CUBIC_YARD, "a full truck carries about so much");
/// The margin on the least thickness.
pub const MARGIN: Assumption<Length> =
    Assumption::new("3/8 in", 0.375 * INCH, "reading, texture and strike-off");
/// What heights are rounded to.
pub const ROUNDING: Assumption<Length> = Assumption::new("1/8 in", 0.125 * INCH, "finer cannot be set out");
/// The fall of a floor.
pub const FALL: Assumption<Slope> =
    Assumption::new("1/8 in/ft", crate::grade::fall::GUIDANCE, "the least for a well-finished floor");
/// What falls are rounded to.
pub const FALL_STEP: Assumption<Slope> =
    Assumption::new("1/16 in/ft", 0.0625 / 12.0, "finer cannot be struck off");
/// How far the new floor may miss its marks.
pub const MARK_TOLERANCE: Assumption<Length> = Assumption::new(
    "1/4 in",
    0.25 * INCH,
    "3/16 in of strike-off, and 1/16 in that a mark may leave its plane",
);
/// The distance between the stations at a wall.
pub const STATION_SPACING: Assumption<Length> =
    Assumption::new("4 ft", 48.0 * INCH, "the old slab is checked each 4 ft, common practice, no source");
/// The length of the screed.
pub const SCREED: Assumption<Length> =
    Assumption::new("8 ft", 96.0 * INCH, "what two can pull by hand, common practice, no source");
/// How far wet pads stay off the edges.
pub const PAD_INSET: Assumption<Length> =
    Assumption::new("1 ft", 12.0 * INCH, "the marks at the edge serve there, common practice, no source");
/// The length of the rod.
pub const ROD_LENGTH: Assumption<Length> =
    Assumption::new("16 ft", 192.0 * INCH, "a telescoping rod, common practice, no source");
/// How far the top of a screed rail stands above the floor.
pub const RAIL_OFFSET: Assumption<Length> =
    Assumption::new("0 in", 0.0, "the screed rides at the height of the floor");
/// How far the benchmark may read off on the morning of the pour.
pub const BENCHMARK_OFF: Assumption<Length> =
    Assumption::new("1/4 in", 0.25 * INCH, "more is no reading error, common practice, no source");
/// How high a wave of the surface is, from crest to trough.
pub const WAVE_HEIGHT: Assumption<Length> =
    Assumption::new("3/16 in", 0.1875 * INCH, "what hand screeding can leave over 4 ft");
/// How long a wave of the surface is, from crest to crest.
pub const WAVE_LENGTH: Assumption<Length> =
    Assumption::new("4 ft", 48.0 * INCH, "what hand screeding can leave 3/16 in over");
/// How much of the rain runs off concrete.
pub const RUNOFF: Assumption<Ratio> =
    Assumption::new("95 %", 0.95, "the most that textbooks give for concrete, on the safe side");
/// How far from a door the ground should fall away.
pub const AWAY_OVER: Assumption<Length> =
    Assumption::new("10 ft", 120.0 * INCH, "the rule for ground by buildings");

/// The thickness of an old slab.
pub const OLD_SLAB: Assumption<Length> =
    Assumption::new("3 1/2 in", 3.5 * INCH, "a nominal 4 in is 3 1/2 in");
/// The mean thickness of a new slab on ground.
pub const NEW_SLAB: Assumption<Length> =
    Assumption::new("4 in", 4.0 * INCH, "for foot traffic and cars; common practice, no source");
/// The mass of old concrete in place: 4,050 lb/yd3.
pub const OLD_CONCRETE: Assumption<Density> =
    Assumption::new("150 lb/ft3", 150.0 * POUND / CUBIC_FOOT, "4,050 lb/yd3 in place");
/// Volume of broken concrete over its volume in place.
pub const BULKING: Assumption<Ratio> =
    Assumption::new("150 %", 1.5, "broken concrete takes 1.4 to 1.6 times its room");
/// Volume of base as bought over compacted.
pub const BASE_LOOSE: Assumption<Ratio> =
    Assumption::new("120 %", 1.2, "base loses a sixth when it is compacted");
/// What one box for broken concrete carries.
pub const BOX_WEIGHT: Assumption<Mass> = Assumption::new("10 ton", 10.0 * 2000.0 * POUND, "a box of 10 tons");
const PSI: f64 = POUND_FORCE / (INCH * INCH);

/// The compressive strength of new concrete.
pub const CONCRETE_STRENGTH: Assumption<Pressure> =
    Assumption::new("4,000 psi", 4000.0 * PSI, "usual for floors; the mix decides");
/// The compressive strength of an old slab.
pub const OLD_STRENGTH: Assumption<Pressure> =
    Assumption::new("3,000 psi", 3000.0 * PSI, "a hammer rings on it, common practice, no source");
/// The strength in bending over the stress that is allowed.
pub const SAFETY: Assumption<Ratio> =
    Assumption::new("2 ratio", 2.0, "usual for wheels, posts and jacks, from memory: confirm");
/// What concrete weighs.
pub const CONCRETE_WEIGHT: Assumption<Density> =
    Assumption::new("150 lb/ft3", 150.0 * POUND / CUBIC_FOOT, "normal-weight concrete with steel");

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::read;

    fn says_its_value<Q: Typed>(assumption: Assumption<Q>) {
        let read = read::<Q>(assumption.words).unwrap().base();
        assert!((read - assumption.base).abs() <= 1e-15 * read, "{}: {}", assumption.words, assumption.base);
        assert!(!assumption.why.is_empty());
    }

    #[test]
    fn the_words_say_the_value() {
        says_its_value(WASTE);
        says_its_value(PLANT_STEP);
        says_its_value(TRUCK);
        says_its_value(MARGIN);
        says_its_value(ROUNDING);
        says_its_value(FALL);
        says_its_value(FALL_STEP);
        says_its_value(MARK_TOLERANCE);
        says_its_value(STATION_SPACING);
        says_its_value(SCREED);
        says_its_value(PAD_INSET);
        says_its_value(ROD_LENGTH);
        says_its_value(RAIL_OFFSET);
        says_its_value(BENCHMARK_OFF);
        says_its_value(OLD_SLAB);
        says_its_value(NEW_SLAB);
        says_its_value(OLD_CONCRETE);
        says_its_value(BULKING);
        says_its_value(BASE_LOOSE);
        says_its_value(BOX_WEIGHT);
        says_its_value(WAVE_HEIGHT);
        says_its_value(WAVE_LENGTH);
        says_its_value(RUNOFF);
        says_its_value(AWAY_OVER);
        says_its_value(CONCRETE_STRENGTH);
        says_its_value(OLD_STRENGTH);
        says_its_value(SAFETY);
        says_its_value(CONCRETE_WEIGHT);
    }
}
