//! What the concrete would take in: framing, posts, anchor bolts, wires, and services below.

use super::{inch, is_some};
use crate::basis::BasisId;
use crate::caution::Caution;
use crate::clearance::floor::Meets;
use crate::clearance::level::Level;
use crate::clearance::measure::Measure;
use crate::clearance::verdict::{About, Check, Judgement};
use crate::clearance::words::up;
use crate::clearance::work::{Task, Work};

crate::choice! {
    /// What it is.
    pub enum CastInKind {
        /// Wood framing of a wall.
        Framing = "framing",
        /// A wood post, or the base plate of a column.
        Post = "post",
        /// Hold-down bolts.
        Anchor = "anchor",
        /// Wires of a door operator and its eyes.
        Wire = "wire",
    }
}

/// Something that concrete would be cast against or over.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CastIn {
    /// What it is.
    pub kind: CastInKind,
    /// The lowest of it that must not be in concrete.
    pub level: Option<Level>,
    /// Whether it is kept out of the concrete: boxed out, sleeved, in a conduit, flashed.
    pub kept_free: Option<bool>,
}

/// Pipes, cables, heating loops below the floor.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct BuriedService {
    /// Whether they were located and marked.
    pub located: Option<bool>,
}

impl CastInKind {
    const fn task(self) -> Task {
        match self {
            Self::Framing => Task::FlashWood,
            Self::Post => Task::BoxOutPost,
            Self::Anchor => Task::SleeveBolts,
            Self::Wire => Task::LiftWires,
        }
    }
}

impl CastIn {
    pub(in crate::clearance) fn judged(&self, floor: &Meets) -> Judgement {
        let Some(level) = self.level else {
            return Judgement::of(vec![Check::ask(About::Covered, BasisId::Geometry, Measure::Elevation)]);
        };
        let under = floor.under(level)[0];
        let most = floor.at_most(level, inch(0.0));
        if !is_some(-under) {
            let text = "the concrete stays below it";
            let check = Check::limit(About::Covered, BasisId::Geometry, under, text).up_to(most);
            return Judgement::of(vec![check]);
        }
        let text = format!("the concrete comes {} up on it", up(-under));
        let mut judgement = Judgement::of(vec![match self.kept_free {
            Some(true) => {
                let text = format!("{text}, it is kept free");
                Check::rule(About::Covered, BasisId::Geometry, true, text)
            }
            Some(false) => Check::limit(About::Covered, BasisId::Geometry, under, text).up_to(most),
            None => {
                let mut check = Check::ask(About::Covered, BasisId::Geometry, Measure::KeptFree);
                check.text = format!("{text}; {}", check.text);
                check.with_room(under)
            }
        }]);
        judgement.force(match self.kind {
            CastInKind::Framing => Work::plain(self.kind.task()),
            _ => Work::by(self.kind.task(), -under),
        });
        if self.kind == CastInKind::Wire {
            judgement.caution(Caution::Electrical);
        }
        judgement
    }
}

impl BuriedService {
    pub(in crate::clearance) fn judged(self) -> Judgement {
        let (about, basis) = (About::Services, BasisId::LocateMarks);
        let mut judgement = Judgement::of(vec![match self.located {
            Some(true) => Check::rule(about, basis, true, "located and marked"),
            Some(false) => Check::rule(about, basis, false, "not located yet"),
            None => Check::ask(about, basis, Measure::Located),
        }]);
        if self.located != Some(true) {
            judgement.force(Work::plain(Task::CallForMarks));
        }
        judgement.caution(Caution::BuriedServices);
        judgement
    }
}
