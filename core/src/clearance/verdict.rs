//! What is said of a thing: verdicts, single checks, and the judgement made of them.

use super::measure::Measure;
use super::words::lower;
use super::work::Work;
use crate::basis::BasisId;
use crate::caution::Caution;
use crate::judged::Judged;
use crate::quantity::{Elevation, Length, Typed};

crate::choice! {
    /// Whether a thing still works.
    pub enum Verdict {
        /// It does.
        Pass = "pass",
        /// A limit that could not be read in its source, or that has none, is not kept.
        ConfirmLocally = "confirm_locally",
        /// A measure that decides was not given.
        Ask = "ask",
        /// It does not work as it stands.
        Fail = "fail",
    }
}

crate::choice! {
    /// What of a thing a check is about.
    pub enum About {
        /// The clear height that is left.
        Opening = "opening",
        /// The line under the door's seal.
        SealLine = "seal_line",
        /// The ground outside a door below the floor.
        Rebate = "rebate",
        /// The eyes of a door operator.
        Eyes = "eyes",
        /// The bottom of a leaf.
        Leaf = "leaf",
        /// The rating of a fire door.
        Rating = "rating",
        /// The top of a sill.
        Sill = "sill",
        /// The landing at an exit door.
        Landing = "landing",
        /// The highest riser.
        Riser = "riser",
        /// How much risers differ.
        RiserSpread = "riser_spread",
        /// Wood against concrete and weather.
        Wood = "wood",
        /// Wood above the ground.
        Earth = "earth",
        /// The bare strip kept for inspection.
        Strip = "strip",
        /// The height of an ignition source.
        Ignition = "ignition",
        /// The room below a panel.
        Panel = "panel",
        /// A drain's rim against the floor.
        Rim = "rim",
        /// A thing against what must stay free below it.
        Free = "free",
        /// A thing that the concrete would cover.
        Covered = "covered",
        /// Services below the floor.
        Services = "services",
        /// The floor's edge above the ground outside.
        Edge = "edge",
        /// A step on a route.
        Step = "step",
        /// A drop that wants a guard.
        Guard = "guard",
    }
}

/// Differences up to this, in metres, are none.
pub(super) const HAIR: f64 = 1.0e-8;

/// One check of a thing.
#[derive(Clone, Debug, PartialEq)]
pub struct Check {
    /// What it is about.
    pub about: About,
    /// What follows.
    pub verdict: Verdict,
    /// By how much it is kept; negative is what is lacking. None where nothing was measured.
    pub room: Option<Length>,
    /// A finish nowhere above this along the line keeps it; none where no height alone does.
    pub floor_at_most: Option<Elevation>,
    /// Where the limit comes from.
    pub basis: BasisId,
    /// The measure that is missing and decides.
    pub asks: Option<Measure>,
    /// In words: what is had against what is wanted.
    pub text: String,
}

/// What a broken limit amounts to: only what could be read, derived or was given by the caller fails.
#[must_use]
pub const fn broken(basis: BasisId) -> Verdict {
    match Judged::by(basis, false) {
        Judged::Fail => Verdict::Fail,
        _ => Verdict::ConfirmLocally,
    }
}

impl Check {
    /// A limit with the room it leaves.
    #[must_use]
    pub fn limit(about: About, basis: BasisId, room: Length, text: impl Into<String>) -> Self {
        let verdict = if room.base() >= -HAIR { Verdict::Pass } else { broken(basis) };
        Self { about, verdict, room: Some(room), floor_at_most: None, basis, asks: None, text: text.into() }
    }

    /// A limit that cannot be judged before a measure is known.
    #[must_use]
    pub fn ask(about: About, basis: BasisId, measure: Measure) -> Self {
        let text = format!("ask: {}", measure.question());
        let verdict = Verdict::Ask;
        Self { about, verdict, room: None, floor_at_most: None, basis, asks: Some(measure), text }
    }

    /// A rule without a number that is kept, or not.
    #[must_use]
    pub fn rule(about: About, basis: BasisId, kept: bool, text: impl Into<String>) -> Self {
        let verdict = if kept { Verdict::Pass } else { broken(basis) };
        Self { about, verdict, room: None, floor_at_most: None, basis, asks: None, text: text.into() }
    }

    /// With the height of the finish that keeps it.
    #[must_use]
    pub fn up_to(mut self, floor_at_most: Elevation) -> Self {
        self.floor_at_most = Some(floor_at_most);
        self
    }

    /// With the room that was measured, where it is a rule or a question.
    #[must_use]
    pub fn with_room(mut self, room: Length) -> Self {
        self.room = Some(room);
        self
    }
}

/// What is said of one thing.
#[derive(Clone, Debug, PartialEq)]
pub struct Judgement {
    /// Every check that could be made or asks for a measure.
    pub checks: Vec<Check>,
    /// What the raise forces.
    pub works: Vec<Work>,
    /// What can hurt.
    pub cautions: Vec<Caution>,
    /// Values that were taken, because none was given.
    pub taken: Vec<(Measure, Length, BasisId)>,
}

impl Judgement {
    pub(super) fn of(checks: Vec<Check>) -> Self {
        Self { checks, works: Vec::new(), cautions: Vec::new(), taken: Vec::new() }
    }

    /// The check that decides: the worst, of several the one with the least room.
    #[must_use]
    pub fn decides(&self) -> Option<&Check> {
        let room = |check: &Check| check.room.map_or(f64::INFINITY, Typed::base);
        let rank = |check: &Check| (std::cmp::Reverse(check.verdict as u8), room(check));
        self.checks.iter().min_by(|a, b| {
            let (a, b) = (rank(a), rank(b));
            a.0.cmp(&b.0).then(a.1.total_cmp(&b.1))
        })
    }

    /// The worst of its checks.
    #[must_use]
    pub fn verdict(&self) -> Verdict {
        self.decides().map_or(Verdict::Pass, |check| check.verdict)
    }

    /// A finish nowhere above this along the line passes every check; none where no height alone does, or a measure is missing.
    #[must_use]
    pub fn floor_at_most(&self) -> Option<Elevation> {
        let mut most: Option<Elevation> = None;
        for check in &self.checks {
            match (check.floor_at_most, check.verdict) {
                (Some(here), _) => most = Some(most.map_or(here, |most| lower(most, here))),
                (None, Verdict::Pass) => {}
                (None, _) => return None,
            }
        }
        most
    }

    /// The lowest of the heights that bound the floor from above, wherever the floor is; none where nothing does, or a measure that
    /// decides is missing.
    #[must_use]
    pub(crate) fn bounds_floor(&self) -> Option<Elevation> {
        let asks = self.checks.iter().any(|check| check.asks.is_some() && check.about != About::Landing);
        let bounds = self.checks.iter().filter_map(|check| check.floor_at_most);
        if asks { None } else { bounds.reduce(lower) }
    }

    /// What the raise forces, in a sentence or two; nothing where it forces nothing.
    #[must_use]
    pub fn forces(&self) -> String {
        let mut text = self.works.iter().map(Work::text).collect::<Vec<_>>().join("; ");
        if let Some(first) = text.get(..1).map(str::to_uppercase) {
            text.replace_range(..1, &first);
            text.push('.');
        }
        text
    }

    pub(super) fn force(&mut self, work: Work) {
        self.works.push(work);
    }

    pub(super) fn caution(&mut self, caution: Caution) {
        if !self.cautions.contains(&caution) {
            self.cautions.push(caution);
        }
    }
}
