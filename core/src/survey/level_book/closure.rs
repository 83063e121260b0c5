//! How far readings may disagree, and the refusal where they disagree more.

use super::slip::booking_slip;
use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result};
use crate::quantity::{Elevation, Length};
use crate::survey::fixed::inches;
use crate::survey::tolerance::Tolerance;
use crate::survey::words::{both_elevation, both_fine};

/// How far one set-up may be off when its own point is read again: 1/8 in. Common practice, no source.
pub const RECHECK_TOLERANCE: Length = inches(0.125);

/// How far a line of two or more set-ups may be off: 1/4 in. Common practice, no source.
pub const CLOSURE_TOLERANCE: Length = inches(0.25);

/// The tolerances a book states; what it does not state is taken from practice and reported as taken.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Tolerances {
    /// For one set-up: its backsight point read again, or a line of this one set-up closing on a benchmark.
    pub recheck: Option<Length>,
    /// For a line of two or more set-ups.
    pub closure: Option<Length>,
}

/// What a tolerance judges.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum ToleranceFor {
    /// One set-up.
    Recheck,
    /// A line of two or more set-ups.
    Closure,
}

impl ToleranceFor {
    /// Where it stands in the book.
    const fn port(self) -> &'static str {
        match self {
            Self::Recheck => "tolerances.recheck",
            Self::Closure => "tolerances.closure",
        }
    }

    const fn practice(self) -> Length {
        match self {
            Self::Recheck => RECHECK_TOLERANCE,
            Self::Closure => CLOSURE_TOLERANCE,
        }
    }
}

impl Tolerances {
    /// Refuses tolerances that cannot be, whether or not anything is judged by them.
    pub(super) fn check(&self) -> Result<()> {
        self.of(ToleranceFor::Recheck)?;
        self.of(ToleranceFor::Closure).map(drop)
    }

    /// The tolerance of one kind, given or taken.
    pub(super) fn of(&self, of: ToleranceFor) -> Result<Tolerance> {
        let given = match of {
            ToleranceFor::Recheck => self.recheck,
            ToleranceFor::Closure => self.closure,
        };
        Tolerance::given_or(of.port(), given, of.practice(), BasisId::ClosureTolerance)
    }
}

/// Two elevations of one point that should agree.
pub(super) struct Disagreement<'a> {
    pub(super) path: String,
    pub(super) point: &'a str,
    pub(super) known: Elevation,
    pub(super) found: Elevation,
    pub(super) remedy: &'static str,
}

impl Disagreement<'_> {
    /// Refuses the book where the two differ by more than the tolerance.
    pub(super) fn within(self, tolerance: Tolerance) -> Result<()> {
        let difference = self.found - self.known;
        if !tolerance.exceeded_by(difference) {
            return Ok(());
        }
        let written = format!(
            "`{}` found at {}, known at {}: off by {}",
            self.point,
            both_elevation(self.found),
            both_elevation(self.known),
            both_fine(difference),
        );
        let remedy = match booking_slip(difference) {
            Some(slip) => format!("{}; look first for a reading booked {} off", self.remedy, slip.words()),
            None => self.remedy.to_owned(),
        };
        Err(Failure::new(Code::ClosureExceeded, self.path)
            .written(written)
            .allowed(format!("off by at most {}", tolerance.words()))
            .remedy(remedy))
    }
}
