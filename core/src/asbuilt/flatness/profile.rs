//! The readings along one line.

use crate::failure::{Code, Failure, Place, Result, check};
use crate::quantity::{Elevation, Length, Range, Typed, si_text};

/// An elevation of a profile: within 10 km of the datum.
pub const READING: Range = Range::closed(-1.0e4, 1.0e4);

/// The fewest readings of which a spread of `q` can be told: two `q`.
pub const LEAST_READINGS: usize = 4;

/// How far apart the readings stand. `q` grows with the square of the spacing, so no other will do under the same constants.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Spacing {
    /// 12 in.
    Inches12,
    /// 300 mm.
    Millimetres300,
}

/// A spacing so near is meant: a hair.
const NEAR: f64 = 1e-6;

impl Spacing {
    /// The spacing of this length.
    ///
    /// # Errors
    /// `PROFILE_SPACING`: neither 12 in nor 300 mm.
    pub fn of(length: Length) -> Result<Self> {
        let near = |spacing: &Self| (spacing.length().base() - length.base()).abs() <= NEAR;
        [Self::Inches12, Self::Millimetres300].into_iter().find(near).ok_or_else(|| {
            Failure::new(Code::ProfileSpacing, "spacing")
                .written(si_text(length))
                .allowed("12 in or 300 mm: the bend q grows with the square of the spacing")
                .remedy("read every 12 in or every 300 mm; a straightedge takes any spacing")
        })
    }

    /// The length.
    #[must_use]
    pub fn length(self) -> Length {
        Length::from_base(match self {
            Self::Inches12 => 0.3048,
            Self::Millimetres300 => 0.3,
        })
    }

    /// By what share `q` is less than over 12 in, where the floor bends evenly: 0 or 3.1 %.
    #[must_use]
    pub fn q_low_by(self) -> f64 {
        let ratio = self.length().base() / Self::Inches12.length().base();
        1.0 - ratio * ratio
    }
}

/// Readings along a line, in order, all finite, at least [`LEAST_READINGS`] of them.
#[derive(Clone, Debug, PartialEq)]
pub struct Profile<'a> {
    /// How far apart they stand.
    pub spacing: Spacing,
    heights: &'a [f64],
}

impl<'a> Profile<'a> {
    /// The profile of these elevations, in metres.
    ///
    /// # Errors
    /// `PROFILE_SHORT`, or an elevation that is not finite or out of reach, by its index.
    pub fn new(spacing: Spacing, heights: &'a [f64]) -> Result<Self> {
        if heights.len() < LEAST_READINGS {
            return Err(Failure::new(Code::ProfileShort, "elevation")
                .written(format!("{} readings", heights.len()))
                .allowed(format!("at least {LEAST_READINGS} readings"))
                .remedy("read on along the line; the standard wants 12 readings or more"));
        }
        for (index, height) in heights.iter().enumerate() {
            check("elevation", Elevation::from_base(*height), READING)
                .map_err(|failure| failure.at(Place::Index(index)))?;
        }
        Ok(Self { spacing, heights })
    }

    /// The elevations, in metres.
    #[must_use]
    pub const fn heights(&self) -> &'a [f64] {
        self.heights
    }

    /// Its length.
    #[must_use]
    pub fn length(&self) -> Length {
        Length::from_base(self.spacing.length().base() * (self.heights.len() - 1) as f64)
    }

    /// The bends: rise less the rise before, in metres. The differences of neighbours are exact, so that a datum far off takes
    /// nothing from them.
    pub fn q(&self) -> impl Iterator<Item = f64> + Clone + 'a {
        self.heights.windows(3).map(|three| (three[2] - three[1]) - (three[1] - three[0]))
    }

    /// The rises over [`LAG`](super::LAG) spacings, in metres.
    pub fn z(&self) -> impl Iterator<Item = f64> + Clone + 'a {
        self.heights.windows(super::LAG + 1).map(|lag| lag[super::LAG] - lag[0])
    }
}
