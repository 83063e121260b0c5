//! The slips that happen when a rod is read or booked: a whole foot, an inch, a tenth.

use crate::quantity::{Length, Typed};
use crate::survey::fixed::{feet, inches, metres};

/// A typical slip of the pen or of the eye. Common practice, no source.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Slip {
    /// One inch.
    Inch,
    /// A tenth of a foot on a decimal rod.
    TenthOfAFoot,
    /// Ten centimetres on a metric rod.
    TenCentimetres,
    /// Six inches, or half a foot on a decimal rod.
    HalfAFoot,
    /// Ten inches, misread for a foot.
    TenInches,
    /// One foot.
    Foot,
    /// One metre.
    Metre,
}

/// How near to a slip a difference must be to look like it: 1/8 in. Common practice, no source.
const NEAR: Length = inches(0.125);

impl Slip {
    /// Every slip, the smallest first.
    pub const ALL: [Self; 7] = [
        Self::Inch,
        Self::TenthOfAFoot,
        Self::TenCentimetres,
        Self::HalfAFoot,
        Self::TenInches,
        Self::Foot,
        Self::Metre,
    ];

    /// How much it is.
    #[must_use]
    pub const fn amount(self) -> Length {
        match self {
            Self::Inch => inches(1.0),
            Self::TenthOfAFoot => feet(0.1),
            Self::TenCentimetres => metres(0.1),
            Self::HalfAFoot => feet(0.5),
            Self::TenInches => inches(10.0),
            Self::Foot => feet(1.0),
            Self::Metre => metres(1.0),
        }
    }

    /// The slip in words, as in "a reading booked a foot off".
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Inch => "an inch",
            Self::TenthOfAFoot => "a tenth of a foot",
            Self::TenCentimetres => "ten centimetres",
            Self::HalfAFoot => "half a foot",
            Self::TenInches => "ten inches",
            Self::Foot => "a foot",
            Self::Metre => "a metre",
        }
    }

    fn distance(self, difference: Length) -> f64 {
        (difference.base().abs() - self.amount().base()).abs()
    }
}

/// The slip that a difference of heights looks like, either sign: within 1/8 in of one, the nearest if two are near.
#[must_use]
pub fn booking_slip(difference: Length) -> Option<Slip> {
    let near = Slip::ALL.into_iter().filter(|slip| slip.distance(difference) <= NEAR.base());
    near.min_by(|a, b| a.distance(difference).total_cmp(&b.distance(difference)))
}
