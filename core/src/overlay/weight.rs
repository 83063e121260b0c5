//! What the new concrete weighs on what lies under it.

use super::thickness::SLAB;
use crate::failure::{Result, check};
use crate::note::NoteCode;
use crate::operation::scalar::Word;
use crate::quantity::{Density, Length, Pressure, Range, Typed};

/// Concrete, with or without steel: 800 to 3500 kg/m3.
pub const CONCRETE: Range = Range::closed(800.0, 3500.0);
/// Standard gravity, m/s2.
const GRAVITY: f64 = 9.806_65;

crate::choice! {
    /// What carries the old slab.
    pub enum Support {
        /// The ground, all over.
        Ground = "ground",
        /// Beams, walls, a deck: anything but the ground.
        Suspended = "suspended",
        /// Nobody knows.
        Unknown = "unknown",
    }
}

crate::choice! {
    /// What follows for the work.
    pub enum Next {
        /// The ground takes the weight: go on.
        GoOn = "go on",
        /// Find out what carries the old slab first.
        FindOut = "find out",
        /// Stop and fetch an engineer.
        Stop = "stop",
    }
}

/// The added weight and what follows.
#[derive(Clone, Copy, Debug)]
pub struct Added {
    /// Weight on each unit of area.
    pub weight: Pressure,
    /// What follows.
    pub next: Next,
    /// Told where the work stops or must be asked about.
    pub note: Option<NoteCode>,
}

/// The weight of concrete of a thickness: `w = unit weight x thickness`. Over anything but the ground it is all that is told: the rest is an
/// engineer's.
///
/// # Errors
/// A value outside its range.
pub fn added(thickness: Length, density: Density, support: Word<Support>) -> Result<Added> {
    let thickness = check("thickness", thickness, SLAB)?.base();
    let density = check("density", density, CONCRETE)?.base();
    let (next, note) = match support.0 {
        Support::Ground => (Next::GoOn, None),
        Support::Suspended => (Next::Stop, Some(NoteCode::StopForEngineer)),
        Support::Unknown => (Next::FindOut, Some(NoteCode::StopForEngineer)),
    };
    Ok(Added { weight: Pressure::from_base(thickness * density * GRAVITY), next, note })
}
