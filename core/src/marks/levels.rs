//! What heights are told against: the lines of sight, the reference line, and the steps a mark is held to.

use crate::failure::Result;
use crate::quantity::{Elevation, Length, Typed};
use crate::survey::Survey;
use crate::survey::level_book::rod_elevation;

crate::choice! {
    /// Whether a mark can be read from a set-up.
    pub enum Reach {
        /// The rod reads there.
        Within = "within",
        /// The mark stands above the line of sight.
        AboveSight = "above_sight",
        /// The mark lies deeper than the rod is long.
        BeyondRod = "beyond_rod",
    }
}

/// A set-up of the level that marks are read from.
#[derive(Clone, Debug, PartialEq)]
pub struct Sight {
    /// What it is called, or what it stands on.
    pub name: String,
    /// The elevation of its line of sight.
    pub height: Elevation,
}

impl Sight {
    /// From a benchmark and the rod on it: height of instrument = elevation + rod.
    ///
    /// # Errors
    /// An elevation or a rod that cannot be. Paths: `benchmark`, `backsight`.
    pub fn over(name: &str, benchmark: Elevation, rod: Length) -> Result<Self> {
        let height = rod_elevation(benchmark, rod, Length::from_base(0.0))?.height_of_instrument;
        Ok(Self { name: name.trim().to_owned(), height })
    }

    /// The first set-up of a survey that was read with a rod.
    #[must_use]
    pub fn of(survey: &Survey) -> Option<Self> {
        let setup = survey.book()?.setups.first()?;
        Some(Self { name: setup.backsight_point.clone(), height: setup.height })
    }
}

/// A height as it is, and as it is marked in whole steps.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Told {
    /// As it is.
    pub exact: Length,
    /// In whole steps.
    pub marked: Length,
}

/// A hair off half a step is half a step, whichever way the arithmetic went.
const HAIR: f64 = 1e-9;

impl Told {
    /// The nearest whole step; half a step goes to the smaller, which sets the floor higher: the other way would take from the
    /// least thickness.
    fn of(exact: Length, step: Length) -> Self {
        let whole = (exact.base() / step.base() - 0.5 - HAIR).ceil();
        Self { exact, marked: Length::from_base(whole * step.base()) }
    }

    /// How far the mark stands above the floor as planned; below it where negative.
    #[must_use]
    pub fn departure(&self) -> Length {
        self.exact - self.marked
    }
}

/// What heights are told against.
#[derive(Clone, Debug, PartialEq)]
pub struct Levels {
    /// The level line struck round the walls.
    pub line: Option<Elevation>,
    /// The set-ups, the one told first in front.
    pub sights: Vec<Sight>,
    /// What marks are rounded to.
    pub step: Length,
    /// How long the rod is.
    pub rod_length: Length,
}

impl Levels {
    /// How far a height lies below the reference line.
    #[must_use]
    pub fn below_line(&self, height: Elevation) -> Option<Told> {
        self.line.map(|line| Told::of(line - height, self.step))
    }

    /// The rod on a height from a set-up.
    #[must_use]
    pub fn rod_from(&self, sight: &Sight, height: Elevation) -> Told {
        Told::of(sight.height - height, self.step)
    }

    /// The rod on a height from the first set-up.
    #[must_use]
    pub fn rod(&self, height: Elevation) -> Option<Told> {
        self.sights.first().map(|sight| self.rod_from(sight, height))
    }

    /// Whether a rod can be read.
    #[must_use]
    pub fn reach(&self, rod: Told) -> Reach {
        if rod.marked.base() < 0.0 {
            Reach::AboveSight
        } else if rod.marked.base() > self.rod_length.base() + HAIR {
            Reach::BeyondRod
        } else {
            Reach::Within
        }
    }

    /// All the ways a height is told.
    pub(super) fn told(&self, height: Elevation) -> impl Iterator<Item = Told> + '_ {
        let rods = self.sights.iter().map(move |sight| self.rod_from(sight, height));
        self.below_line(height).into_iter().chain(rods)
    }
}
