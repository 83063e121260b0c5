//! One thing that may be done about a zone.

use crate::choice;
use crate::quantity::{Area, Length, Money, Volume};

choice! {
    /// What is done about a thin zone.
    pub enum Cure {
        /// The whole finish rises.
        Raise = "raise",
        /// The zone is bonded.
        Bond = "bond",
        /// The old slab in the zone is ground down.
        Grind = "grind",
        /// The old slab under the zone is broken out.
        BreakOut = "break out",
    }
}

choice! {
    /// Whether a choice cures its zone, as one word.
    pub enum Verdict {
        /// It does.
        Enough = "enough",
        /// It does not.
        NotEnough = "not enough",
        /// What would decide it was not given.
        NotJudged = "not judged",
    }
}

/// Whether a choice cures its zone.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Enough {
    /// It does.
    Yes,
    /// It does not: so much is still lacking.
    ShortBy(Length),
    /// What would decide it was not given.
    NotJudged,
}

/// One thing that may be done, with what it takes.
#[derive(Clone, Debug, PartialEq)]
pub struct Choice {
    /// What is done.
    pub cure: Cure,
    /// Raise: how far the finish rises. Bond: the thinnest overlay in the zone. Grind: the deepest cut. Break out: the thickness of
    /// the new concrete, where it was given.
    pub depth: Option<Length>,
    /// The area worked on: of raising the whole work, of grinding the zone, of bonding and breaking out its box within the work.
    pub area: Area,
    /// Concrete over what the finish takes as it is; none where it cannot be told.
    pub concrete: Option<Volume>,
    /// The full-depth joint it asks for, inside the work.
    pub joint: Option<Length>,
    /// What it costs; none where a price or the concrete is missing.
    pub money: Option<Money>,
    /// Whether it cures the zone.
    pub enough: Enough,
    /// One sentence for the foreman.
    pub said: String,
}

/// Heights this near to one another are one, in metres: far under what a rod tells.
const SAME: f64 = 1e-9;

impl Enough {
    /// Whether there is as much as is needed.
    pub(super) fn of(there: Length, needed: Length) -> Self {
        let lacking = needed - there;
        if lacking.value > SAME { Self::ShortBy(lacking) } else { Self::Yes }
    }

    /// The word for it.
    #[must_use]
    pub const fn verdict(self) -> Verdict {
        match self {
            Self::Yes => Verdict::Enough,
            Self::ShortBy(_) => Verdict::NotEnough,
            Self::NotJudged => Verdict::NotJudged,
        }
    }

    /// What is still lacking, where it is not enough.
    #[must_use]
    pub const fn short_by(self) -> Option<Length> {
        if let Self::ShortBy(lacking) = self { Some(lacking) } else { None }
    }
}

impl Choice {
    /// What it costs, where it cures the zone and has a price.
    #[must_use]
    pub fn price_if_enough(&self) -> Option<Money> {
        self.money.filter(|_| self.enough == Enough::Yes)
    }
}
