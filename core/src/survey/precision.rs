//! How well a height is read and how rough the floor is, in the words of the site.
//!
//! A standard deviation that nobody on site has is taken from the name of the instrument and the look of the floor. All
//! figures are common practice, no source.

use super::fixed::{feet, inches, metres};
use crate::basis::BasisId;
use crate::quantity::Length;

crate::choice! {
    /// What the heights were read with.
    pub enum Instrument {
        /// A rotating laser and its receiver.
        Laser = "laser",
        /// An optical level and a rod graduated to 0.01 ft.
        OpticalHundredths = "optical_hundredths",
        /// An optical level and a rod graduated to 1/8 in.
        OpticalEighths = "optical_eighths",
        /// An optical level and a rod graduated to 1/16 in.
        OpticalSixteenths = "optical_sixteenths",
        /// An optical level and a rod in centimetres, read to the millimetre by eye.
        OpticalMillimetres = "optical_millimetres",
        /// A taut string with a line level, or a long straightedge.
        String = "string",
        /// A hose with water.
        Water = "water",
    }
}

crate::choice! {
    /// What the top of the old slab looks like between the shots.
    pub enum Texture {
        /// Trowelled smooth.
        Trowelled = "trowelled",
        /// Broomed.
        Broomed = "broomed",
        /// Scaled: the skin has come off in places.
        Scaled = "scaled",
        /// Rough for any other reason: hand-placed, worn to the stone, milled.
        Rough = "rough",
    }
}

impl Instrument {
    /// What is taken where nobody said.
    pub const TAKEN: Self = Self::Laser;
    /// Why.
    pub const WHY_TAKEN: &str = "most crews have one";

    /// What the word means.
    #[must_use]
    pub const fn meaning(self) -> &'static str {
        match self {
            Self::Laser => "rotating laser and receiver",
            Self::OpticalHundredths => "optical level, rod graduated to 0.01 ft",
            Self::OpticalEighths => "optical level, rod graduated to 1/8 in",
            Self::OpticalSixteenths => "optical level, rod graduated to 1/16 in",
            Self::OpticalMillimetres => "optical level, rod in centimetres read to the millimetre",
            Self::String => "string line or long straightedge",
            Self::Water => "water level",
        }
    }

    /// Standard deviation of one reading.
    ///
    /// An optical level reads to half a graduation: rounding to the nearest line alone gives 0.29 of one, and the plumb of the
    /// rod, its foot on rough concrete and the focus as much again. A metric rod is read between its lines.
    #[must_use]
    pub const fn reading_deviation(self) -> Length {
        match self {
            Self::Laser => inches(1.0 / 8.0),
            Self::OpticalHundredths => feet(0.005),
            // A finer rod does not help: its foot still stands on concrete.
            Self::OpticalEighths | Self::OpticalSixteenths => inches(1.0 / 16.0),
            Self::OpticalMillimetres => metres(0.0015),
            Self::String | Self::Water => inches(1.0 / 4.0),
        }
    }

    /// How the figure was come by.
    #[must_use]
    pub const fn reason(self) -> &'static str {
        match self {
            Self::Laser => "a receiver repeats to about 1/8 in",
            Self::String | Self::Water => "a string sags and a water level is read by eye, to about 1/4 in",
            Self::OpticalHundredths | Self::OpticalEighths => "half a graduation",
            Self::OpticalSixteenths => "a graduation: the rod's foot on concrete is no better",
            Self::OpticalMillimetres => "millimetres by eye, and the rod's foot on concrete",
        }
    }

    /// Where the figure comes from.
    #[must_use]
    pub const fn basis(self) -> BasisId {
        BasisId::ReadingWords
    }
}

impl Texture {
    /// What is taken where nobody said.
    pub const TAKEN: Self = Self::Broomed;
    /// Why.
    pub const WHY_TAKEN: &str = "most old slabs are";

    /// What the word means.
    #[must_use]
    pub const fn meaning(self) -> &'static str {
        match self {
            Self::Trowelled => "trowelled smooth",
            Self::Broomed => "broom finish",
            Self::Scaled => "scaled, the skin off in places",
            Self::Rough => "rough: hand-placed, worn to the stone or milled",
        }
    }

    /// Standard deviation of the surface about the plane through neighbouring shots.
    #[must_use]
    pub const fn deviation(self) -> Length {
        match self {
            Self::Trowelled => inches(1.0 / 16.0),
            Self::Broomed => inches(1.0 / 8.0),
            Self::Scaled | Self::Rough => inches(1.0 / 4.0),
        }
    }

    /// Where the figure comes from.
    #[must_use]
    pub const fn basis(self) -> BasisId {
        BasisId::ReadingWords
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::operation::Choice;
    use crate::quantity::length::{foot, inch, millimeter};

    // Common practice, no source: laser 1/8 in, string or water level 1/4 in; trowelled 1/16, broomed 1/8, scaled or rough 1/4.
    #[test]
    fn figures_of_the_trade() {
        let deviations = [
            (Instrument::Laser, 1.0 / 8.0),
            (Instrument::OpticalEighths, 1.0 / 16.0),
            (Instrument::OpticalSixteenths, 1.0 / 16.0),
            (Instrument::String, 1.0 / 4.0),
            (Instrument::Water, 1.0 / 4.0),
        ];
        for (instrument, inches) in deviations {
            assert_eq!(instrument.reading_deviation().get::<inch>(), inches);
        }
        assert_eq!(Instrument::OpticalHundredths.reading_deviation().get::<foot>(), 0.005);
        assert_eq!(Instrument::OpticalMillimetres.reading_deviation().get::<millimeter>(), 1.5);
        let textures: Vec<f64> =
            Texture::MEMBERS.iter().map(|t| t.deviation().get::<inch>() * 16.0).collect();
        assert_eq!(textures, [1.0, 2.0, 4.0, 4.0]);
    }
}
