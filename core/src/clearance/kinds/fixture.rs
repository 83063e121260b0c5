//! Fittings that must stay above the floor: caps, weep holes, vents, boxes, taps, gas risers.

use super::{inch, is_some};
use crate::basis::BasisId;
use crate::caution::Caution;
use crate::clearance::floor::Meets;
use crate::clearance::level::Level;
use crate::clearance::measure::Measure;
use crate::clearance::verdict::{About, Check, Judgement};
use crate::clearance::words::{beside, down, plain};
use crate::clearance::work::{Task, Work};
use crate::quantity::{Length, Typed};

crate::choice! {
    /// What it is.
    pub enum FixtureKind {
        /// The cap of a cleanout.
        Cleanout = "cleanout",
        /// Weep holes of a wall.
        WeepHole = "weep_hole",
        /// A vent of a crawl space.
        CrawlVent = "crawl_vent",
        /// The box of a shut-off.
        ShutOff = "shut_off",
        /// A tap on a wall.
        HoseBib = "hose_bib",
        /// A gas pipe that comes up.
        GasRiser = "gas_riser",
    }
}

impl FixtureKind {
    /// How much of it stays free above the floor where nobody says, in inches.
    const fn free(self) -> f64 {
        match self {
            Self::Cleanout | Self::ShutOff => 0.0,
            Self::WeepHole | Self::CrawlVent => 1.0,
            Self::GasRiser => 3.0,
            Self::HoseBib => 6.0,
        }
    }

    const fn task(self) -> Task {
        match self {
            Self::Cleanout => Task::RaiseCap,
            Self::WeepHole => Task::FreeWeepHoles,
            Self::CrawlVent => Task::RaiseVent,
            Self::ShutOff => Task::RaiseBox,
            Self::HoseBib => Task::RaiseBib,
            Self::GasRiser => Task::RaiseGasRiser,
        }
    }

    /// What of it counts, in words.
    const fn its(self) -> &'static str {
        match self {
            Self::Cleanout => "its cap",
            Self::WeepHole => "the holes",
            Self::CrawlVent => "the vent's lower edge",
            Self::ShutOff => "its box",
            Self::HoseBib => "the tap",
            Self::GasRiser => "its lowest fitting",
        }
    }
}

/// A fitting that must stay above the floor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fixture {
    /// What it is.
    pub kind: FixtureKind,
    /// How high it is.
    pub level: Option<Level>,
    /// How much must stay free between it and the floor; its kind's own where it is not given.
    pub free: Option<Length>,
}

impl Fixture {
    pub(in crate::clearance) fn judged(&self, floor: &Meets) -> Judgement {
        let Some(level) = self.level else {
            return Judgement::of(vec![Check::ask(About::Covered, BasisId::Geometry, Measure::Elevation)]);
        };
        let under = floor.under(level)[0];
        let covered = Check::limit(About::Covered, BasisId::Geometry, under, beside(under, self.kind.its()));
        let mut judgement = Judgement::of(vec![covered.up_to(floor.at_most(level, inch(0.0)))]);
        let basis = if self.free.is_some() { BasisId::OwnFigure } else { BasisId::FreeFittings };
        let free = self.free.unwrap_or_else(|| {
            judgement.taken.push((Measure::Free, inch(self.kind.free()), basis));
            inch(self.kind.free())
        });
        if is_some(free) {
            let had = if under.base() < 0.0 { "nothing".to_owned() } else { down(under) };
            let text = format!("{had} free above the floor, {} wanted", plain(free));
            let check = Check::limit(About::Free, basis, under - free, text);
            judgement.checks.push(check.up_to(floor.at_most(level, free)));
        }
        if is_some(free - under) {
            judgement.force(Work::by(self.kind.task(), free - under));
        }
        if self.kind == FixtureKind::GasRiser {
            judgement.caution(Caution::Gas);
        }
        judgement
    }
}
