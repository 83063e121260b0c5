//! A door for people whose leaf swings in over the floor: undercut, or raised with its frame.

use super::is_some;
use super::leaf::{cut_check, gap_wanted};
use crate::basis::BasisId;
use crate::caution::Caution;
use crate::clearance::floor::Meets;
use crate::clearance::level::Level;
use crate::clearance::measure::Measure;
use crate::clearance::verdict::{About, Check, Judgement};
use crate::clearance::work::{Task, Work};
use crate::quantity::{Length, Typed};

/// A door whose leaf swings in over the floor.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct PassageDoor {
    /// The bottom of its leaf.
    pub bottom: Option<Level>,
    /// The covering that comes on the new floor; none where it is not given.
    pub covering: Option<Length>,
    /// The gap wanted under the leaf; 3/8 in where it is not given.
    pub gap: Option<Length>,
    /// How much may be cut off the leaf: what is solid at its bottom.
    pub may_lose: Option<Length>,
    /// Whether it is a fire-rated door.
    pub fire_rated: Option<bool>,
}

impl PassageDoor {
    pub(in crate::clearance) fn judged(&self, floor: &Meets) -> Judgement {
        let mut judgement = Judgement::of(Vec::new());
        let gap = gap_wanted(self.gap, &mut judgement);
        let Some(bottom) = self.bottom else {
            judgement.checks.push(Check::ask(About::Leaf, BasisId::Geometry, Measure::GapNow));
            return judgement;
        };
        let covering = self.covering.unwrap_or(Length::from_base(0.0));
        let below = gap + covering + floor.rises_inward();
        let cut = below - floor.under(bottom)[0];
        judgement.checks.push(cut_check(floor, bottom, below, self.may_lose));
        if !is_some(cut) {
            return judgement;
        }
        let lacks = self.may_lose.map(|may_lose| cut - may_lose).filter(|lacks| is_some(*lacks));
        match lacks {
            Some(lacks) => {
                judgement.force(Work::by(Task::RaiseFrame, lacks));
                judgement.caution(Caution::CutHeader);
            }
            None => self.undercut(cut, &mut judgement),
        }
        judgement
    }

    fn undercut(&self, cut: Length, judgement: &mut Judgement) {
        judgement.force(Work::by(Task::CutLeaf, cut));
        if self.fire_rated == Some(true) {
            let text = "cutting the leaf may void its fire rating";
            judgement.checks.push(Check::rule(About::Rating, BasisId::FireDoor, false, text));
            judgement.force(Work::plain(Task::AskMaker));
        }
        if self.fire_rated != Some(false) {
            judgement.caution(Caution::FireDoor);
        }
    }
}
