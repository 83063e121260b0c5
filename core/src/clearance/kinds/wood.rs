//! Wood beside the floor: wall sills, siding, the strip kept bare for inspection.

use super::{inch, is_some};
use crate::basis::BasisId;
use crate::clearance::floor::Meets;
use crate::clearance::level::Level;
use crate::clearance::measure::Measure;
use crate::clearance::verdict::{About, Check, Judgement};
use crate::clearance::words::{beside, down, plain, up};
use crate::clearance::work::{Task, Work};
use crate::quantity::{Elevation, Length, Typed};

/// The sill or sole plate of a wall.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct WallSill {
    /// Its underside.
    pub wood: Option<Level>,
    /// The ground outside.
    pub ground: Option<Elevation>,
}

/// Siding beside the floor.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Siding {
    /// Its lower edge.
    pub wood: Option<Level>,
    /// The ground below it, where it is not over the floor.
    pub ground: Option<Elevation>,
    /// Whether weather reaches it.
    pub exposed: Option<bool>,
}

/// The strip of foundation that is kept bare.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct TermiteStrip {
    /// The lower edge of what is above it.
    pub wood: Option<Level>,
    /// How much of it is asked for; 6 in where it is not given.
    pub free: Option<Length>,
}

/// How far a foundation's wood sill stays above the earth, in inches.
const SILL_TO_EARTH: f64 = 8.0;
/// How far unprotected siding stays above a slab in the weather, in inches.
const SIDING_TO_SLAB: f64 = 2.0;
/// And above the ground.
const SIDING_TO_GROUND: f64 = 6.0;
/// The strip kept bare, in inches.
const STRIP: f64 = 6.0;

const NOTHING: f64 = 0.0;

/// Whether the concrete stays below the wood.
fn stays_below(floor: &Meets, wood: Level, what: &str) -> Check {
    let under = floor.under(wood)[0];
    let check = Check::limit(About::Wood, BasisId::Geometry, under, beside(under, what));
    check.up_to(floor.at_most(wood, inch(NOTHING)))
}

/// Whether the wood stays above the ground outside, which the floor does not change.
fn above_earth(floor: &Meets, wood: Level, ground: Elevation, least: f64, basis: BasisId) -> Check {
    let above = floor.at_most(wood, inch(NOTHING)) - ground;
    let text = format!("wood {} above the ground, {} wanted", down(above), plain(inch(least)));
    Check::limit(About::Earth, basis, above - inch(least), text)
}

impl WallSill {
    pub(in crate::clearance) fn judged(&self, floor: &Meets) -> Judgement {
        let Some(wood) = self.wood else {
            return Judgement::of(vec![Check::ask(About::Wood, BasisId::Geometry, Measure::Elevation)]);
        };
        let mut judgement = Judgement::of(vec![stays_below(floor, wood, "the wood")]);
        let ground = self
            .ground
            .map(|ground| above_earth(floor, wood, ground, SILL_TO_EARTH, BasisId::FoundationSill));
        judgement.checks.extend(ground);
        let covered = -floor.under(wood)[0];
        if is_some(covered) {
            judgement.force(Work::by(Task::KeepOffWood, covered));
        }
        judgement
    }
}

impl Siding {
    pub(in crate::clearance) fn judged(&self, floor: &Meets) -> Judgement {
        let Some(wood) = self.wood else {
            return Judgement::of(vec![Check::ask(
                About::Wood,
                BasisId::SidingClearance,
                Measure::Elevation,
            )]);
        };
        let under = floor.under(wood)[0];
        let enough = !is_some(inch(SIDING_TO_SLAB) - under);
        let mut judgement = Judgement::of(vec![match self.exposed {
            Some(false) => stays_below(floor, wood, "the siding"),
            None if is_some(-under) => stays_below(floor, wood, "the siding"),
            None if !enough => {
                Check::ask(About::Wood, BasisId::SidingClearance, Measure::Exposed).with_room(under)
            }
            _ => {
                let text = format!("{}, 2 in wanted in the weather", beside(under, "the siding"));
                let check =
                    Check::limit(About::Wood, BasisId::SidingClearance, under - inch(SIDING_TO_SLAB), text);
                check.up_to(floor.at_most(wood, inch(SIDING_TO_SLAB)))
            }
        }]);
        let ground = self
            .ground
            .map(|ground| above_earth(floor, wood, ground, SIDING_TO_GROUND, BasisId::SidingClearance));
        judgement.checks.extend(ground);
        let wanted = if self.exposed == Some(false) { inch(NOTHING) } else { inch(SIDING_TO_SLAB) };
        if is_some(wanted - under) {
            judgement.force(Work::by(Task::CutSiding, wanted - under));
        }
        judgement
    }
}

impl TermiteStrip {
    pub(in crate::clearance) fn judged(&self, floor: &Meets) -> Judgement {
        let Some(wood) = self.wood else {
            return Judgement::of(vec![Check::ask(About::Strip, BasisId::TermiteStrip, Measure::Elevation)]);
        };
        let mut judgement = Judgement::of(vec![stays_below(floor, wood, "what is above the strip")]);
        let basis = if self.free.is_some() { BasisId::OwnFigure } else { BasisId::TermiteStrip };
        let wanted = self.free.unwrap_or_else(|| {
            judgement.taken.push((Measure::Free, inch(STRIP), basis));
            inch(STRIP)
        });
        let bare = floor.under(wood)[0];
        let text = if bare.base() >= 0.0 {
            format!("{} of the strip stay bare, {} wanted", down(bare), up(wanted))
        } else {
            format!("nothing of the strip stays bare, {} wanted", up(wanted))
        };
        let check = Check::limit(About::Strip, basis, bare - wanted, text);
        judgement.checks.push(check.up_to(floor.at_most(wood, wanted)));
        if is_some(wanted - bare) {
            judgement.force(Work::by(Task::KeepStrip, wanted - bare));
        }
        judgement
    }
}
