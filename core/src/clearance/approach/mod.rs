//! The approach: a driveway, a walk or a ramp from a door outwards.
//!
//! Water must fall away from the door, and whatever goes over the approach must get over its breaks. The ground outside is
//! measured at a few places and straight between them.

mod asked;
mod breaks;
mod door;
mod judge;
mod profile;
mod refusal;
mod step;
#[cfg(test)]
mod tests;
mod trench;

pub use asked::{
    Asked, DEPTH, DISTANCE, FALL_TAKEN, HEIGHT, OVER_TAKEN, ProfilePoint, STRETCH, Traffic, Vehicle,
};
pub use breaks::{CHANGE, Crest, ROOM, VEHICLE, crest, sag};
pub use door::at_door;
pub use judge::{Matter, Rule, Weight};
pub use step::Step;
pub use trench::Trench;

use crate::basis::BasisId;
use crate::choice;
use crate::failure::Result;
use crate::judged::Judged;
use crate::note::{Note, NoteCode};
use crate::quantity::{Elevation, Length, Slope, Typed, feet_and_inches, inches};
use profile::{Place, Profile};

choice! {
    /// Whether a change of grade is over a hump or through a dip.
    pub enum BreakKind {
        /// The ground falls more beyond it.
        Crest = "crest",
        /// The ground falls less, or rises more, beyond it.
        Sag = "sag",
    }
}

choice! {
    /// What the height of the floor does to the water outside.
    pub enum Away {
        /// The floor is high enough for the fall that is wanted.
        Yes = "falls away",
        /// It is too low for it.
        TooLow = "floor too low",
    }
}

/// A stretch of one grade.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stretch {
    /// Its start, from the door.
    pub from: Length,
    /// Its end.
    pub to: Length,
    /// The height of its start.
    pub start: Elevation,
    /// The height of its end.
    pub end: Elevation,
    /// Its fall away from the door; negative where it rises.
    pub fall: Slope,
}

/// A change of grade between two stretches, or between the floor and the first.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Break {
    /// How far from the door.
    pub at: Length,
    /// Crest or sag.
    pub kind: BreakKind,
    /// The change of grade.
    pub change: Slope,
    /// How far it is to the nearest other break, or to the end of the profile.
    pub spacing: Length,
    /// What a crest takes of the room under the vehicle, where its wheelbase was given.
    pub taken: Option<Length>,
}

/// What became of an approach.
#[derive(Clone, Debug, PartialEq)]
pub struct Approach {
    /// The height of the floor from which water falls away as wanted.
    pub needed: Elevation,
    /// How far from the door the place is that decides it.
    pub governing: Length,
    /// How far the floor is above that; negative below.
    pub spare: Length,
    /// What that does to the water.
    pub away: Away,
    /// The step at the door.
    pub step: Step,
    /// The ground as it will be.
    pub stretches: Vec<Stretch>,
    /// Where its grade changes.
    pub breaks: Vec<Break>,
    /// Every rule at every place.
    pub rules: Vec<Rule>,
    /// How deep old ground has to come out for the new approach, at most; none without a thickness.
    pub dig: Option<Length>,
    /// A drain along the door in place of the fall.
    pub trench: Trench,
    notes: Vec<Note>,
}

/// A change of grade below this is none.
const STRAIGHT: f64 = 1e-9;

impl Approach {
    /// An approach to a door.
    ///
    /// # Errors
    /// - `APPROACH_SHORT`, `APPROACH_START`, `APPROACH_UNSORTED`: fewer than two points; none at the door; not from the door outwards.
    /// - `TIE_IN_BEYOND`: a tie-in at the door or beyond the profile.
    /// - `OUT_OF_RANGE`: a number outside its range.
    pub fn of(asked: &Asked) -> Result<Self> {
        asked.checked()?;
        let old = Profile::of(&asked.profile);
        let (needed, governing) = needed(asked, &old);
        let rebate = asked.rebate.map_or(0.0, Typed::base);
        let door = asked.tie_in.map_or_else(|| old.height(0.0), |_| asked.floor.base() - rebate);
        let new = asked.tie_in.map_or_else(|| old.clone(), |tie_in| old.tied_in(door, tie_in.base()));
        let stretches = stretches(&new);
        let breaks = breaks_of(asked, &stretches, asked.floor.base() - door)?;
        let rules = judge::rules(asked, &stretches, &breaks)?;
        let spare = asked.floor.base() - needed;
        let mut approach = Self {
            needed: Elevation::from_base(needed),
            governing: Length::from_base(governing),
            spare: Length::from_base(spare),
            away: if spare >= -1e-9 { Away::Yes } else { Away::TooLow },
            step: Step::of(asked, asked.floor.base() - door),
            stretches,
            breaks,
            rules,
            dig: dig(asked, &old, &new),
            trench: Trench::of(asked, &old),
            notes: Vec::new(),
        };
        approach.notes = approach.said(asked, old.end());
        Ok(approach)
    }

    /// Whether every limit is kept: the height of the floor, the fall, the grades, the breaks and the step at the door.
    #[must_use]
    pub fn judged(&self) -> Judged {
        let limits = self.rules.iter().filter(|rule| rule.weight == Weight::Limit);
        let height = Judged::by(BasisId::Geometry, self.away == Away::Yes);
        limits.fold(self.step.judged.and(height), |worst, rule| worst.and(rule.judged))
    }

    /// What the reader must know.
    #[must_use]
    pub fn notes(&self) -> &[Note] {
        &self.notes
    }

    /// Every basis that it rests on, each once.
    #[must_use]
    pub fn bases(&self) -> Vec<BasisId> {
        let mut bases = vec![self.step.basis];
        for rule in &self.rules {
            if !bases.contains(&rule.basis) {
                bases.push(rule.basis);
            }
        }
        bases
    }

    fn said(&self, asked: &Asked, end: f64) -> Vec<Note> {
        let mut notes = Vec::new();
        if end < asked.over.base() - 1e-9 {
            let (end, over) = (feet_and_inches(Length::from_base(end), 8), feet_and_inches(asked.over, 8));
            let text = format!("the ground is known out to {end} of the {over} that should fall away");
            notes.push(Note::new(NoteCode::ProfileEndsShort, text));
        }
        if self.away == Away::TooLow {
            let by = inches(Length::from_base(-self.spare.base()), 8);
            notes.push(Note::new(NoteCode::FloorTooLow, format!("the floor lies {by} too low for the fall")));
        }
        let from_memory = |judged: Judged| judged == Judged::ConfirmLocally;
        if self.rules.iter().any(|rule| from_memory(rule.judged)) || from_memory(self.step.judged) {
            let text = "a limit that is not kept could not be read in its source: confirm locally";
            notes.push(Note::new(NoteCode::ConfirmLocally, text));
        }
        notes
    }
}

/// The height of the floor from which water falls away as wanted; the height that the floor has plays no part.
///
/// # Errors
/// As for [`Approach::of`].
pub fn needed_floor(asked: &Asked) -> Result<Elevation> {
    asked.checked()?;
    Ok(Elevation::from_base(needed(asked, &Profile::of(&asked.profile)).0))
}

/// The height of the floor from which water falls away as wanted, and the place that decides it. Ground that a new approach
/// covers does not count.
fn needed(asked: &Asked, old: &Profile) -> (f64, f64) {
    let wanted = asked.wanted().base();
    let rebate = asked.rebate.map_or(0.0, Typed::base);
    let from = asked.tie_in.map_or(0.0, Typed::base);
    let to = asked.over.base().min(old.end()).max(from);
    let mut best = (f64::NEG_INFINITY, from);
    for Place { out, z } in old.between(from, to) {
        let height = z + wanted * out + rebate;
        if height > best.0 {
            best = (height, out);
        }
    }
    best
}

fn stretches(profile: &Profile) -> Vec<Stretch> {
    let one = |pair: &[Place]| Stretch {
        from: Length::from_base(pair[0].out),
        to: Length::from_base(pair[1].out),
        start: Elevation::from_base(pair[0].z),
        end: Elevation::from_base(pair[1].z),
        fall: Slope::from_base((pair[0].z - pair[1].z) / (pair[1].out - pair[0].out)),
    };
    profile.0.windows(2).map(one).collect()
}

/// Where the grade changes; at the door too, unless there is a step.
fn breaks_of(asked: &Asked, stretches: &[Stretch], step: f64) -> Result<Vec<Break>> {
    let mut falls: Vec<(f64, f64, f64)> = Vec::with_capacity(stretches.len());
    if let Some(first) = stretches.first().filter(|_| step.abs() <= 1e-9) {
        falls.push((0.0, asked.floor_fall.base(), first.fall.base()));
    }
    falls.extend(
        stretches.windows(2).map(|pair| (pair[1].from.base(), pair[0].fall.base(), pair[1].fall.base())),
    );
    falls.retain(|(_, before, after)| (after - before).abs() > STRAIGHT);
    let end = stretches.last().map_or(0.0, |last| last.to.base());
    let mut breaks = Vec::with_capacity(falls.len());
    for (index, &(at, before, after)) in falls.iter().enumerate() {
        let next = falls.get(index + 1).map_or(end, |next| next.0);
        let to_last =
            index.checked_sub(1).and_then(|last| falls.get(last)).map_or(f64::INFINITY, |last| at - last.0);
        let kind = if after > before { BreakKind::Crest } else { BreakKind::Sag };
        let change = Slope::from_base((after - before).abs());
        let wheelbase = asked.vehicle.wheelbase.filter(|_| kind == BreakKind::Crest && change.base() <= 1.0);
        let taken = wheelbase.map(|wheelbase| crest(wheelbase, change)).transpose()?.map(|crest| crest.taken);
        let spacing = Length::from_base((next - at).min(to_last));
        breaks.push(Break { at: Length::from_base(at), kind, change, spacing, taken });
    }
    Ok(breaks)
}

/// How deep old ground has to come out under a new approach of a thickness.
fn dig(asked: &Asked, old: &Profile, new: &Profile) -> Option<Length> {
    let (tie_in, thickness) = (asked.tie_in?.base(), asked.thickness?.base());
    let depth = |place: Place| thickness - (new.height(place.out) - place.z);
    Some(Length::from_base(old.between(0.0, tie_in).map(depth).fold(0.0, f64::max)))
}
