//! The rim of a drain: flush with the floor, or a little low.

use super::{inch, is_some};
use crate::basis::BasisId;
use crate::clearance::floor::Meets;
use crate::clearance::level::Level;
use crate::clearance::measure::Measure;
use crate::clearance::verdict::{About, Check, Judgement};
use crate::clearance::words::up;
use crate::clearance::work::{Task, Work};

/// A drain in the floor.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct DrainRim {
    /// Its rim.
    pub rim: Option<Level>,
}

/// How far below the floor a rim is set at the most, in inches.
const LOW: f64 = 0.25;
/// How far below it an extended rim is set, in inches.
const SET: f64 = 0.125;
/// How far the floor can still be dished down to it, in inches.
const DISHED: f64 = 0.5;

impl DrainRim {
    pub(in crate::clearance) fn judged(&self, floor: &Meets) -> Judgement {
        let Some(rim) = self.rim else {
            return Judgement::of(vec![Check::ask(About::Rim, BasisId::DrainRim, Measure::Elevation)]);
        };
        let [lowest, highest] = floor.under(rim);
        let low = -lowest;
        if is_some(highest) {
            let text = format!("the rim stands {} above the floor: no water gets in", up(highest));
            let mut judgement =
                Judgement::of(vec![Check::limit(About::Rim, BasisId::Geometry, -highest, text)]);
            judgement.force(Work::by(Task::LowerRim, highest));
            return judgement;
        }
        let basis = if is_some(low - inch(DISHED)) { BasisId::Geometry } else { BasisId::DrainRim };
        let text = if is_some(low) {
            format!("the rim is {} below the floor, 1/4 in at most", up(low))
        } else {
            "the rim is flush with the floor".to_owned()
        };
        let mut judgement = Judgement::of(vec![Check::limit(About::Rim, basis, inch(LOW) - low, text)]);
        if is_some(low - inch(LOW)) {
            judgement.force(Work::by(Task::ExtendRim, low - inch(SET)));
        }
        judgement
    }
}
