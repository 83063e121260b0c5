//! What stands or hangs above the floor: ignition sources, headroom, panels.

use super::{inch, is_some};
use crate::basis::BasisId;
use crate::caution::Caution;
use crate::clearance::floor::Meets;
use crate::clearance::level::Level;
use crate::clearance::measure::Measure;
use crate::clearance::verdict::{About, Check, Judgement};
use crate::clearance::words::{down, plain, tall, up};
use crate::clearance::work::{Task, Work};
use crate::quantity::Length;

/// A heater, a water heater, a motor: whatever may set vapour alight.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct IgnitionSource {
    /// The height of the source itself.
    pub source: Option<Level>,
    /// Whether vehicles are parked in the room.
    pub vehicles: Option<bool>,
    /// Whether it is listed as resistant to flammable vapour.
    pub listed: Option<bool>,
}

/// A beam, a pipe, a ceiling.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Headroom {
    /// Its underside.
    pub underside: Option<Level>,
    /// The clear height that is needed; 7 ft where it is not given.
    pub needed: Option<Length>,
}

/// An electric panel.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Panel {
    /// Its lower edge.
    pub bottom: Option<Level>,
    /// How much must stay free below it.
    pub free: Option<Length>,
}

/// The least height of an ignition source above a floor with vehicles, in inches.
const IGNITION: f64 = 18.0;
/// The headroom of parking that is open to the public, in inches.
const HEADROOM: f64 = 84.0;

impl IgnitionSource {
    pub(in crate::clearance) fn judged(&self, floor: &Meets) -> Judgement {
        let basis = BasisId::IgnitionHeight;
        let Some(source) = self.source else {
            return Judgement::of(vec![Check::ask(About::Ignition, basis, Measure::Elevation)]);
        };
        let above = floor.under(source)[0];
        let mut judgement = Judgement::of(Vec::new());
        judgement.caution(Caution::Ignition);
        if is_some(-above) {
            let text = format!("the concrete would cover it by {}", up(-above));
            let check = Check::limit(About::Covered, BasisId::Geometry, above, text);
            judgement.checks.push(check.up_to(floor.at_most(source, inch(0.0))));
        }
        let exempt = self.listed == Some(true) || self.vehicles == Some(false);
        let lacks = inch(IGNITION) - above;
        judgement.checks.push(match self.vehicles {
            _ if exempt => {
                let why = if self.listed == Some(true) {
                    "listed against vapour"
                } else {
                    "no vehicles in the room"
                };
                Check::rule(About::Ignition, basis, true, why)
            }
            None if is_some(lacks) => Check::ask(About::Ignition, basis, Measure::Vehicles).with_room(-lacks),
            _ => {
                let text = format!("{} above the new floor, 18 in wanted unless listed", down(above));
                Check::limit(About::Ignition, basis, -lacks, text)
                    .up_to(floor.at_most(source, inch(IGNITION)))
            }
        });
        if is_some(lacks) && !exempt {
            judgement.force(Work::by(Task::RaiseAppliance, lacks));
            judgement.caution(Caution::Gas);
        }
        judgement
    }
}

impl Headroom {
    pub(in crate::clearance) fn judged(&self, floor: &Meets) -> Judgement {
        let Some(underside) = self.underside else {
            return Judgement::of(vec![Check::ask(About::Opening, BasisId::OwnFigure, Measure::AboveSlab)]);
        };
        let mut judgement = Judgement::of(Vec::new());
        let basis = if self.needed.is_some() { BasisId::OwnFigure } else { BasisId::ParkingHeadroom };
        let needed = self.needed.unwrap_or_else(|| {
            judgement.taken.push((Measure::Needed, inch(HEADROOM), basis));
            inch(HEADROOM)
        });
        let left = floor.under(underside)[0];
        let text = format!("{} clear left, {} needed", tall(left), tall(needed));
        let check = Check::limit(About::Opening, basis, left - needed, text);
        judgement.checks.push(check.up_to(floor.at_most(underside, needed)));
        if is_some(needed - left) {
            judgement.force(Work::by(Task::RaiseOverhead, needed - left));
        }
        judgement
    }
}

impl Panel {
    pub(in crate::clearance) fn judged(&self, floor: &Meets) -> Judgement {
        let Some(bottom) = self.bottom else {
            return Judgement::of(vec![Check::ask(About::Panel, BasisId::PanelSpace, Measure::Elevation)]);
        };
        let (under, rise) = (floor.under(bottom)[0], floor.rise()[1]);
        let free = self.free.unwrap_or(inch(0.0));
        let basis = if self.free.is_some() { BasisId::OwnFigure } else { BasisId::Geometry };
        let text = if self.free.is_some() {
            format!("{} free below it, {} wanted", tall(under), plain(free))
        } else {
            format!("{} free below it", tall(under))
        };
        let check = Check::limit(About::Panel, basis, under - free, text);
        let mut judgement = Judgement::of(vec![check.up_to(floor.at_most(bottom, free))]);
        if is_some(rise) {
            let text = "its working space changes with the floor";
            let looked_at = Check::rule(About::Panel, BasisId::PanelSpace, self.free.is_some(), text);
            judgement.checks.push(looked_at);
            judgement.force(Work::by(Task::RaisePanel, rise));
            judgement.caution(Caution::Electrical);
        }
        judgement
    }
}
