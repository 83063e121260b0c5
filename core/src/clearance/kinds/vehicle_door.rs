//! Vehicle doors: what all have in common, and those that go up overhead.

use super::{inch, is_some};
use crate::basis::BasisId;
use crate::caution::Caution;
use crate::clearance::floor::Meets;
use crate::clearance::level::Level;
use crate::clearance::measure::Measure;
use crate::clearance::verdict::{About, Check, Judgement};
use crate::clearance::words::{down, plain, tall, up};
use crate::clearance::work::{Task, Work};
use crate::quantity::{Elevation, Length, Typed};

/// What every vehicle door needs.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Opening {
    /// The underside of its header.
    pub header: Option<Level>,
    /// The clear height that is needed.
    pub needed: Option<Length>,
    /// How much out of level its seal takes up; 1/4 in where it is not given.
    pub seal_takes: Option<Length>,
    /// The ground outside, at its highest along the door.
    pub ground: Option<Elevation>,
}

/// A sectional or a roll door.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct OverheadDoor {
    /// Its opening.
    pub opening: Opening,
    /// How far above the old slab its photo-eyes are.
    pub eyes_now: Option<Length>,
}

/// What a seal takes up where nobody says, in inches.
const SEAL_TAKES: f64 = 0.25;
/// How far the ground outside lies below the floor at the least, in inches.
const REBATE: f64 = 0.5;
/// And at the most before wheels need a ramp.
const LIP: f64 = 1.0;
/// The highest that photo-eyes may be above the floor, in inches.
const EYES: f64 = 6.0;

impl Opening {
    pub(super) fn judged(&self, floor: &Meets) -> Judgement {
        let mut judgement = Judgement::of(Vec::new());
        self.clear(floor, &mut judgement);
        self.seal(floor, &mut judgement);
        self.rebate(floor, &mut judgement);
        judgement
    }

    fn clear(&self, floor: &Meets, judgement: &mut Judgement) {
        let basis = BasisId::OwnFigure;
        let Some(header) = self.header else {
            judgement.checks.push(Check::ask(About::Opening, basis, Measure::AboveSlab));
            return;
        };
        let left = floor.under(header)[0];
        let Some(needed) = self.needed else {
            let mut check = Check::ask(About::Opening, basis, Measure::Needed);
            check.text = format!("{} clear left; {}", tall(left), check.text);
            judgement.checks.push(check);
            return;
        };
        let text = format!("{} clear left, {} needed", tall(left), tall(needed));
        let check = Check::limit(About::Opening, basis, left - needed, text);
        judgement.checks.push(check.up_to(floor.at_most(header, needed)));
        if is_some(needed - left) {
            judgement.force(Work::by(Task::RaiseHeader, needed - left));
            judgement.caution(Caution::CutHeader);
        }
    }

    fn seal(&self, floor: &Meets, judgement: &mut Judgement) {
        let [least, greatest] = floor.finish();
        let out = greatest - least;
        let basis = if self.seal_takes.is_some() { BasisId::OwnFigure } else { BasisId::DoorSealLine };
        let takes = self.seal_takes.unwrap_or_else(|| {
            judgement.taken.push((Measure::SealTakes, inch(SEAL_TAKES), basis));
            inch(SEAL_TAKES)
        });
        let text = if is_some(out) {
            format!("door line {} out of level, the seal takes up {}", up(out), plain(takes))
        } else {
            "door line level".to_owned()
        };
        judgement.checks.push(Check::limit(About::SealLine, basis, takes - out, text));
        if is_some(out - takes) {
            judgement.force(Work::by(Task::LevelLine, out));
        }
    }

    fn rebate(&self, floor: &Meets, judgement: &mut Judgement) {
        let Some(ground) = self.ground else { return };
        let [least, greatest] = floor.finish().map(|finish| finish - ground);
        let room = least - inch(REBATE);
        let text = if least.base() >= 0.0 {
            format!("ground outside {} below the floor, 1/2 to 1 in wanted", down(least))
        } else {
            format!("ground outside {} above the floor, 1/2 to 1 in below wanted", up(-least))
        };
        judgement.checks.push(Check::limit(About::Rebate, BasisId::DoorRebate, room, text));
        if is_some(-room) {
            judgement.force(Work::by(Task::DropOutside, -room));
        }
        if is_some(greatest - inch(LIP)) {
            judgement.force(Work::by(Task::RampOutside, greatest - inch(LIP)));
        }
    }
}

impl OverheadDoor {
    /// A door of hinged sections that runs up into tracks.
    pub(in crate::clearance) fn sectional(&self, floor: &Meets) -> Judgement {
        self.judged(floor, &[Task::TrimTracks, Task::RetensionSprings, Task::ResetOpener])
    }

    /// A curtain that rolls up on a drum.
    pub(in crate::clearance) fn roll(&self, floor: &Meets) -> Judgement {
        self.judged(floor, &[Task::TrimGuides, Task::ResetStops])
    }

    fn judged(&self, floor: &Meets, tasks: &[Task]) -> Judgement {
        let mut judgement = self.opening.judged(floor);
        let rise = floor.rise()[1];
        if is_some(rise) {
            for &task in tasks {
                judgement.force(match task {
                    Task::RetensionSprings => Work::plain(task),
                    _ => Work::by(task, rise),
                });
            }
            judgement.caution(Caution::Springs);
        }
        self.eyes(floor, &mut judgement);
        judgement
    }

    fn eyes(&self, floor: &Meets, judgement: &mut Judgement) {
        let Some(eyes) = self.eyes_now else { return };
        let [lowest, highest] = floor.under(Level::AboveSlab(eyes));
        if lowest.base() < 0.0 {
            let text = format!("the concrete would cover the photo-eyes by {}", up(-lowest));
            let check = Check::limit(About::Eyes, BasisId::Geometry, lowest, text);
            judgement.checks.push(check.up_to(floor.at_most(Level::AboveSlab(eyes), Length::from_base(0.0))));
            return;
        }
        let text = format!("photo-eyes {} above the new floor, 6 in at most", up(highest));
        judgement.checks.push(Check::limit(About::Eyes, BasisId::PhotoEyes, inch(EYES) - highest, text));
    }
}
