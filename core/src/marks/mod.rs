//! What a crew sets out: heights at the walls, wet pads, forms, rails.
//!
//! Marks are measured down from a level reference line or read on the rod, never up from the old slab, which is the thing that is
//! crooked: the height over it is told as the check. Between neighbouring marks the new floor is straight, so a chalk line
//! snapped from mark to mark, or a screed pulled from pad to pad, is the floor.
//!
//! | asked | here |
//! |---|---|
//! | every mark of a floor, in the order of walking | [`Marks::set_out`] |
//! | the list for the site, the list for a program | [`Marks::text`], [`Marks::csv`] |
//! | the benchmark read on the morning of the pour | [`Morning::check`] |

mod asked;
mod breaks;
mod chalk_lines;
mod csv;
mod diagonals;
mod forms;
mod ground;
mod levels;
mod line;
mod mark;
mod morning;
mod notes;
pub mod operations;
mod pads;
mod rails;
mod rips;
mod set_out;
mod stations;
#[cfg(test)]
mod tests;
mod text;
mod walk;
mod words;

pub use asked::{
    Asked, INSET, OFFSET, PAD_SPACING, PLACE, PadsAsked, PointAsked, ROD_LENGTH, RailAsked, SCREED, SNAP,
    SPACING, STEP,
};
pub use chalk_lines::ChalkLine;
pub use diagonals::Diagonal;
pub use levels::{Levels, Reach, Sight, Told};
pub use mark::{Mark, MarkKind, Part};
pub use morning::{AGREES, Checked, Doubted, Morning, SecondBenchmark, TOLERANCE, Verdict};
pub use rips::{Material, Rip, RipAt};
pub use set_out::{EdgeMarks, Marks, RailMarks};
pub use words::RodDivision;

use crate::failure::{Code, Failure};
use crate::geometry::Point;
use crate::quantity::{Length, Typed, feet_and_inches};

/// Places this near to one another, in metres, are one place; a place this near to a line is on it. Facets meet to 1e-6 ft or better.
pub(crate) const SAME: f64 = 1e-6;

/// A place in the words of the site.
fn place_words(at: Point) -> String {
    let say = |metres: f64| feet_and_inches(Length::from_base(metres), 8);
    format!("{} from left, {} in", say(at.x), say(at.y))
}

/// More marks than anybody sets out.
fn too_many(path: &str, count: f64) -> Box<Failure> {
    Failure::new(Code::TooManyStations, path)
        .written(format!("{count:.0} marks"))
        .allowed(format!("at most {MOST_MARKS} marks"))
        .remedy("ask for a greater spacing")
}

/// The most marks of one kind that are set out.
pub const MOST_MARKS: usize = crate::grade::sections::MOST_STATIONS;
