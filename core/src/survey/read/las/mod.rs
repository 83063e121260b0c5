//! LAS 1.0 to 1.4, and LAZ: points with their class, as the ASPRS specification (LAS 1.4 R15, 2019) lays them out.
//!
//! Withheld points and points classed as noise (7, 18) are left out; where only ground was asked for, so is every class but 2.
//! The unit comes from the coordinate system the file states, if it states one; a file that states none is taken to be in metres,
//! with a note.

mod crs;
mod head;
mod packed;
mod record;
mod wkt;

use super::Reading;
use super::asked::Asked;
use super::format::Format;
use super::gather::Gather;
use super::left_out::Reason;
use super::refusal::broken;
use super::unit::FileUnit;
use crate::failure::{Code, Failure, Result};
use crate::note::{Note, NoteCode};
use crs::Stated;
use head::Head;
use record::Records;

/// The class of the ground (table 9 of the specification).
const GROUND: u8 = 2;
/// The classes of noise: low and high.
const NOISE: [u8; 2] = [7, 18];

/// Reads the points.
pub(super) fn read(bytes: &[u8], asked: &Asked) -> Result<Reading> {
    let head = Head::read(bytes)?;
    let mut notes = Vec::new();
    let units = units(&head, asked, &mut notes)?;
    let mut cloud =
        Cloud { gather: Gather::with_room(head.room(bytes)), units, asked, head: &head, outside: 0 };
    if head.packed {
        packed::records(bytes, &head, |records| cloud.take(records))?;
    } else {
        cloud.take(&Records::new(head.body(bytes)?, &head));
    }
    head.note_rest(bytes, &mut notes);
    cloud.note_outside(&mut notes);
    let (points, left_out) = cloud.gather.finish(&mut notes);
    let [plan, height] = units;
    Ok(Reading { points, format: Format::Las, unit: (plan == height).then_some(plan), left_out, notes })
}

/// Points under way.
struct Cloud<'a> {
    gather: Gather,
    units: [FileUnit; 2],
    asked: &'a Asked,
    head: &'a Head,
    /// Points outside the bounds that the header states.
    outside: u64,
}

impl Cloud<'_> {
    fn take(&mut self, records: &Records<'_>) {
        let [plan, height] = self.units;
        for record in records.iter() {
            let point = self.head.place(record.raw);
            self.outside += u64::from(!self.head.holds(point));
            match self.reason(record.class, record.withheld) {
                Some(reason) => self.gather.left_out.add(reason),
                None if plan == height => drop(self.gather.push(point, plan)),
                None => {
                    let [x, y, z] = point;
                    self.gather.push([plan.metres(x), plan.metres(y), height.metres(z)], FileUnit::Metre);
                }
            }
        }
    }

    fn reason(&self, class: u8, withheld: bool) -> Option<Reason> {
        if withheld {
            Some(Reason::Withheld)
        } else if NOISE.contains(&class) {
            Some(Reason::Noise)
        } else {
            (self.asked.ground_only && class != GROUND).then_some(Reason::NotGround)
        }
    }

    /// Packed bits carry no checksum: points that leave the stated bounds are a sign of damage.
    fn note_outside(&self, notes: &mut Vec<Note>) {
        if self.outside > 0 {
            let text = format!(
                "{} points lie outside the bounds that the header states: the file may be damaged",
                self.outside
            );
            notes.push(Note::new(NoteCode::FileDoubtful, text));
        }
    }
}

/// The units of plan and height.
fn units(head: &Head, asked: &Asked, notes: &mut Vec<Note>) -> Result<[FileUnit; 2]> {
    let stated = crs::stated(head)?;
    if asked.overrule || !matches!(stated, Stated::Degrees) {
        let (plan, height) = match &stated {
            Stated::Units(plan, height) => (Some(*plan), *height),
            _ => (None, None),
        };
        let plan = asked.settle(plan, "unit", notes)?;
        let height = asked.settle(height, "unit", notes)?;
        if let Some(plan) = plan {
            return Ok([plan, height.unwrap_or(plan)]);
        }
    }
    match stated {
        Stated::Degrees => Err(Failure::new(Code::UnitWrong, "file")
            .written("geographic coordinates, in degrees")
            .allowed("coordinates in a length")
            .remedy("project the points to a plane system first")),
        Stated::Coded(code) => Err(Failure::new(Code::UnitMissing, "unit")
            .written(format!("coordinate system EPSG:{code}"))
            .allowed(FileUnit::words())
            .remedy("give the unit of that system: the file names it by its number alone")),
        Stated::Nothing | Stated::Units(..) => {
            let text = "the file states no coordinate system: its numbers were taken as metres";
            notes.push(Note::new(NoteCode::UnitTaken, text));
            Ok([FileUnit::Metre; 2])
        }
    }
}

/// What the library says of a file that breaks the rules.
fn refused(error: &impl std::fmt::Display) -> Box<Failure> {
    broken(error.to_string())
}
