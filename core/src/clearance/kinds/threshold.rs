//! A door that leads onto the floor: the floor stays at or below its sill, and near enough below it at an exit.

use super::{Swing, inch, is_some};
use crate::basis::BasisId;
use crate::clearance::floor::Meets;
use crate::clearance::level::Level;
use crate::clearance::measure::Measure;
use crate::clearance::verdict::{About, Check, Judgement};
use crate::clearance::words::{beside, down, plain, up};
use crate::clearance::work::{Task, Work};
use crate::quantity::{Length, Typed};

/// The sill of a door.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Threshold {
    /// The top of the sill.
    pub sill: Option<Level>,
    /// The covering that comes on the new floor; none where it is not given.
    pub covering: Option<Length>,
    /// How far below the sill the floor must stay; at the sill where it is not given.
    pub free: Option<Length>,
    /// Whether it is a required exit.
    pub exit: Option<bool>,
    /// Which way the door swings.
    pub swing: Option<Swing>,
}

/// How far below an exit's threshold the landing may be, in inches.
const LANDING: f64 = 1.5;
/// And where the door does not swing over it.
const LANDING_CLEAR_OF_DOOR: f64 = 7.75;

impl Threshold {
    pub(in crate::clearance) fn judged(&self, floor: &Meets) -> Judgement {
        let mut judgement = Judgement::of(Vec::new());
        let Some(sill) = self.sill else {
            judgement.checks.push(Check::ask(About::Sill, BasisId::Geometry, Measure::Elevation));
            return judgement;
        };
        let covering = self.covering.unwrap_or(Length::from_base(0.0));
        let [least, greatest] = floor.under(sill).map(|under| under - covering);
        let free = self.free.unwrap_or(Length::from_base(0.0));
        let basis = if self.free.is_some() { BasisId::OwnFigure } else { BasisId::Geometry };
        let mut text = beside(least, "its sill");
        if is_some(free) {
            text = format!("{text}, {} wanted", plain(free));
        }
        let check = Check::limit(About::Sill, basis, least - free, text);
        judgement.checks.push(check.up_to(floor.at_most(sill, free + covering)));
        if is_some(free - least) {
            judgement.force(Work::by(Task::HoldDown, free - least));
        }
        self.landing(greatest, &mut judgement);
        judgement
    }

    fn landing(&self, drop: Length, judgement: &mut Judgement) {
        let near = inch(LANDING) - drop;
        let far = inch(LANDING_CLEAR_OF_DOOR) - drop;
        let check = match (self.exit, self.swing) {
            (Some(false), _) => return,
            (None, _) if !is_some(-near) => return,
            (None, _) => Check::ask(About::Landing, BasisId::ExitLanding, Measure::Exit).with_room(near),
            (Some(true), None) if is_some(-near) && !is_some(-far) => {
                Check::ask(About::Landing, BasisId::ExitLanding, Measure::Swing).with_room(near)
            }
            (Some(true), swing) => {
                let clear = swing == Some(Swing::Out) || is_some(-far);
                let (room, most) = if clear { (far, LANDING_CLEAR_OF_DOOR) } else { (near, LANDING) };
                let text = if drop.base() >= 0.0 {
                    format!("the landing is {} below the threshold, {} at most", up(drop), plain(inch(most)))
                } else {
                    format!("the landing is {} above the threshold", down(-drop))
                };
                if is_some(-room) {
                    judgement.force(Work::by(Task::StepAtDoor, -room));
                }
                Check::limit(About::Landing, BasisId::ExitLanding, room, text)
            }
        };
        judgement.checks.push(check);
    }
}
