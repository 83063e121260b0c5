//! Vehicle doors with leaves: swinging in pairs, and sliding.

use super::vehicle_door::Opening;
use super::{Swing, inch, is_some};
use crate::basis::BasisId;
use crate::clearance::floor::Meets;
use crate::clearance::level::Level;
use crate::clearance::measure::Measure;
use crate::clearance::verdict::{About, Check, Judgement};
use crate::clearance::words::up;
use crate::clearance::work::{Task, Work};
use crate::quantity::Length;

/// A pair of hinged leaves.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct SwingingDoor {
    /// Its opening.
    pub opening: Opening,
    /// The gap under the leaves, above the old slab; as wide as the gap wanted where it is not given.
    pub gap_now: Option<Length>,
    /// The gap wanted under the leaves; 3/8 in where it is not given.
    pub gap: Option<Length>,
    /// How much may be cut off the leaves.
    pub may_lose: Option<Length>,
    /// Which way they swing.
    pub swing: Option<Swing>,
}

/// A leaf that slides beside its opening.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct SlidingDoor {
    /// Its opening.
    pub opening: Opening,
    /// The gap under the leaf, above the old slab; as wide as the gap wanted where it is not given.
    pub gap_now: Option<Length>,
    /// The gap wanted under the leaf; 3/8 in where it is not given.
    pub gap: Option<Length>,
    /// Whether the leaf runs outside the wall, in front of the floor's edge.
    pub runs_outside: Option<bool>,
}

/// The gap under a leaf where nobody says, in inches.
const GAP: f64 = 0.375;

/// The gap that is wanted under a leaf.
pub(super) fn gap_wanted(gap: Option<Length>, judgement: &mut Judgement) -> Length {
    gap.unwrap_or_else(|| {
        judgement.taken.push((Measure::Gap, inch(GAP), BasisId::LeafGap));
        inch(GAP)
    })
}

/// The bottom of a leaf that hangs so far above the old slab, and the gap wanted under it.
fn bottom(gap_now: Option<Length>, gap: Option<Length>, judgement: &mut Judgement) -> (Level, Length) {
    let gap = gap_wanted(gap, judgement);
    let now = gap_now.unwrap_or_else(|| {
        judgement.taken.push((Measure::GapNow, gap, BasisId::LeafGap));
        gap
    });
    (Level::AboveSlab(now), gap)
}

impl SwingingDoor {
    pub(in crate::clearance) fn judged(&self, floor: &Meets) -> Judgement {
        let mut judgement = self.opening.judged(floor);
        let (bottom, gap) = bottom(self.gap_now, self.gap, &mut judgement);
        let rises = floor.rises_inward();
        let gap = match self.swing {
            Some(Swing::In) => gap + rises,
            Some(Swing::Out) => gap,
            None if is_some(rises) => {
                judgement.checks.push(Check::ask(About::Leaf, BasisId::Geometry, Measure::Swing));
                gap
            }
            None => gap,
        };
        let cut = gap - floor.under(bottom)[0];
        judgement.checks.push(cut_check(floor, bottom, gap, self.may_lose));
        if is_some(cut) {
            judgement.force(Work::by(Task::CutLeaves, cut));
            judgement.force(Work::plain(Task::MoveBolts));
            if self.may_lose.is_some_and(|may_lose| is_some(cut - may_lose)) {
                judgement.force(Work::by(Task::RaiseHeader, self.lacks(cut)));
                judgement.caution(crate::caution::Caution::CutHeader);
            }
        }
        judgement
    }

    fn lacks(&self, cut: Length) -> Length {
        self.may_lose.map_or(cut, |may_lose| cut - may_lose)
    }
}

/// Whether a leaf can lose what the floor takes.
pub(super) fn cut_check(floor: &Meets, bottom: Level, gap: Length, may_lose: Option<Length>) -> Check {
    let cut = gap - floor.under(bottom)[0];
    let (basis, clears) = (BasisId::OwnFigure, !is_some(cut));
    match may_lose {
        None if clears => {
            let text = "the leaf clears the new floor";
            Check::limit(About::Leaf, BasisId::Geometry, -cut, text).up_to(floor.at_most(bottom, gap))
        }
        None => {
            let mut check = Check::ask(About::Leaf, basis, Measure::MayLose).with_room(-cut);
            check.text = format!("the leaf must lose {}; {}", up(cut), check.text);
            check
        }
        Some(may_lose) => {
            let text = if clears {
                "the leaf clears the new floor".to_owned()
            } else {
                format!("the leaf must lose {}, it can lose {}", up(cut), up(may_lose))
            };
            let check = Check::limit(About::Leaf, basis, may_lose - cut, text);
            check.up_to(floor.at_most(bottom.raised(may_lose), gap))
        }
    }
}

impl SlidingDoor {
    pub(in crate::clearance) fn judged(&self, floor: &Meets) -> Judgement {
        let mut judgement = self.opening.judged(floor);
        match self.runs_outside {
            None => {
                let ask = Check::ask(About::Leaf, BasisId::DoorWorks, Measure::RunsOutside);
                judgement.checks.push(ask);
            }
            Some(true) => {
                let text = "the leaf runs outside the wall and hangs as it does";
                judgement.checks.push(Check::rule(About::Leaf, BasisId::DoorWorks, true, text));
            }
            Some(false) => self.inside(floor, &mut judgement),
        }
        judgement
    }

    fn inside(&self, floor: &Meets, judgement: &mut Judgement) {
        let (bottom, gap) = bottom(self.gap_now, self.gap, judgement);
        let cut = gap - floor.under(bottom)[0];
        if !is_some(cut) {
            let text = "the leaf clears the new floor";
            judgement.checks.push(Check::limit(About::Leaf, BasisId::Geometry, -cut, text));
            return;
        }
        let text = format!("the leaf is {} too low: it is cut, or its track raised", up(cut));
        judgement.checks.push(Check::rule(About::Leaf, BasisId::DoorWorks, true, text));
        judgement.force(Work::by(Task::CutOrRaiseTrack, cut));
        judgement.force(Work::plain(Task::ResetFloorGuide));
    }
}
