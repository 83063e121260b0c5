//! How well a height is read and how rough the floor is, in the words of the site.
//!
//! A standard deviation that nobody on site has is taken from the name of the instrument and the look of the floor. All
//! figures are common practice, no source, unless [`basis`](Instrument::basis) says otherwise.

use super::fixed::{COMMON_PRACTICE, feet, inches, metres};
use crate::quantity::Length;

/// What the heights were read with.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Instrument {
    /// A rotating laser and its receiver.
    Laser,
    /// An optical level and a rod graduated to 0.01 ft.
    OpticalHundredths,
    /// An optical level and a rod graduated to 1/8 in.
    OpticalEighths,
    /// An optical level and a rod graduated to 1/16 in.
    OpticalSixteenths,
    /// An optical level and a rod in centimetres, read to the millimetre by eye.
    OpticalMillimetres,
    /// A taut string with a line level, or a long straightedge.
    String,
    /// A hose with water.
    Water,
}

/// What the top of the old slab looks like between the shots.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Texture {
    /// Trowelled smooth.
    Trowelled,
    /// Broomed.
    Broomed,
    /// Scaled: the skin has come off in places.
    Scaled,
    /// Rough for any other reason: hand-placed, worn to the stone, milled.
    Rough,
}

impl Instrument {
    /// Every instrument.
    pub const ALL: [Self; 7] = [
        Self::Laser,
        Self::OpticalHundredths,
        Self::OpticalEighths,
        Self::OpticalSixteenths,
        Self::OpticalMillimetres,
        Self::String,
        Self::Water,
    ];

    /// The words for them, in the same order.
    #[must_use]
    pub fn words() -> [&'static str; 7] {
        Self::ALL.map(Self::word)
    }

    /// The word for it.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Laser => "laser",
            Self::OpticalHundredths => "optical_hundredths",
            Self::OpticalEighths => "optical_eighths",
            Self::OpticalSixteenths => "optical_sixteenths",
            Self::OpticalMillimetres => "optical_millimetres",
            Self::String => "string",
            Self::Water => "water",
        }
    }

    /// The instrument of that word.
    #[must_use]
    pub fn from_word(word: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|instrument| instrument.word() == word)
    }

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

    /// Where the figure comes from.
    #[must_use]
    pub const fn basis(self) -> &'static str {
        match self {
            Self::Laser | Self::String | Self::Water => COMMON_PRACTICE,
            Self::OpticalHundredths | Self::OpticalEighths => "half a graduation; common practice, no source",
            Self::OpticalSixteenths => {
                "a graduation, the rod's foot being no better; common practice, no source"
            }
            Self::OpticalMillimetres => {
                "millimetres by eye, the rod's foot with them; common practice, no source"
            }
        }
    }
}

impl Texture {
    /// Every texture.
    pub const ALL: [Self; 4] = [Self::Trowelled, Self::Broomed, Self::Scaled, Self::Rough];

    /// The words for them, in the same order.
    #[must_use]
    pub fn words() -> [&'static str; 4] {
        Self::ALL.map(Self::word)
    }

    /// The word for it.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Trowelled => "trowelled",
            Self::Broomed => "broomed",
            Self::Scaled => "scaled",
            Self::Rough => "rough",
        }
    }

    /// The texture of that word.
    #[must_use]
    pub fn from_word(word: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|texture| texture.word() == word)
    }

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
    pub const fn basis(self) -> &'static str {
        COMMON_PRACTICE
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::length::{foot, inch, millimeter};

    #[test]
    fn words_read_back_and_are_apart() {
        for instrument in Instrument::ALL {
            assert_eq!(Instrument::from_word(instrument.word()), Some(instrument));
            assert!(!instrument.meaning().is_empty() && instrument.basis().ends_with(COMMON_PRACTICE));
        }
        for texture in Texture::ALL {
            assert_eq!(Texture::from_word(texture.word()), Some(texture));
            assert!(!texture.meaning().is_empty() && texture.basis() == COMMON_PRACTICE);
        }
        assert_eq!(Instrument::from_word("theodolite"), None);
        assert_eq!(Texture::words(), ["trowelled", "broomed", "scaled", "rough"]);
    }

    // Common practice, no source: laser 1/8 in, string or water level 1/4 in; trowelled 1/16, broomed 1/8, scaled or rough 1/4.
    #[test]
    fn figures_of_the_trade() {
        let eighths = |length: Length| length.get::<inch>() * 8.0;
        assert_eq!(
            Instrument::ALL.map(|i| eighths(i.reading_deviation()).round()),
            [1.0, 0.0, 1.0, 1.0, 0.0, 2.0, 2.0]
        );
        assert_eq!(eighths(Instrument::OpticalEighths.reading_deviation()), 0.5);
        assert_eq!(Instrument::OpticalHundredths.reading_deviation().get::<foot>(), 0.005);
        assert_eq!(Instrument::OpticalMillimetres.reading_deviation().get::<millimeter>(), 1.5);
        assert_eq!(Texture::ALL.map(|t| eighths(t.deviation())), [0.5, 1.0, 2.0, 2.0]);
    }
}
