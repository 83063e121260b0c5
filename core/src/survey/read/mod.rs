//! Points and surfaces out of the files that others write: CSV, XYZ, PLY, LAS and LAZ, E57, LandXML.
//!
//! A reader takes bytes and gives points in metres. What a file states of its own unit is used; what it does not state must be
//! given. A file that is cut short is refused, never read as a smaller one: where it states a count, that count must be there.
//! Points that cannot be used are left out and counted by their reason.
//!
//! LAS, E57 and LandXML stand behind the cargo features `las`, `e57` and `landxml`.

mod asked;
mod columns;
mod detect;
#[cfg(feature = "e57")]
mod e57;
mod faces;
mod format;
mod gather;
#[cfg(feature = "landxml")]
mod landxml;
#[cfg(feature = "las")]
mod las;
mod left_out;
mod ply;
mod refusal;
mod table;
#[cfg(test)]
mod tests;
mod text;
mod unit;

pub use asked::Asked;
pub use columns::Columns;
pub use format::Format;
pub use left_out::{LeftOut, Reason};
pub use unit::FileUnit;

use crate::failure::{Code, Failure, Result};
use crate::note::Note;
use crate::survey::points::{Points, Tin};

/// Points as a file gave them.
#[derive(Clone, Debug, PartialEq)]
pub struct Reading {
    /// The points, in metres, in the axes of the file.
    pub points: Points,
    /// What the file is.
    pub format: Format,
    /// The unit of its numbers; none where columns or cells have units of their own that differ.
    pub unit: Option<FileUnit>,
    /// Points that were not used, by reason.
    pub left_out: Vec<LeftOut>,
    /// What the reader must know.
    pub notes: Vec<Note>,
}

/// A triangulated surface as a file gave it.
#[derive(Clone, Debug, PartialEq)]
pub struct SurfaceReading {
    /// Its points, in metres, and the faces between them.
    pub tin: Tin,
    /// What the file is.
    pub format: Format,
    /// The unit of its numbers.
    pub unit: Option<FileUnit>,
    /// Points that were not used, by reason.
    pub left_out: Vec<LeftOut>,
    /// What the reader must know.
    pub notes: Vec<Note>,
}

/// Reads the points of a file.
///
/// # Errors
/// A format that is not known or not built in; a file that is broken or cut short; a unit that is missing, unknown or
/// contradicted; a column that is missing or doubtful; no point left.
pub fn read_points(bytes: &[u8], asked: &Asked) -> Result<Reading> {
    let format = detect::format(bytes, asked)?;
    asked.check(format)?;
    let reading = match format {
        Format::Csv => table::csv(bytes, asked),
        Format::Xyz => table::xyz(bytes, asked),
        Format::Ply => ply::read(bytes, asked),
        #[cfg(feature = "las")]
        Format::Las => las::read(bytes, asked),
        #[cfg(feature = "e57")]
        Format::E57 => e57::read(bytes, asked),
        #[cfg(feature = "landxml")]
        Format::LandXml => landxml::read(bytes, asked),
        #[cfg(not(all(feature = "e57", feature = "landxml", feature = "las")))]
        other => Err(refusal::not_built(other)),
    }?;
    if reading.points.is_empty() {
        return Err(refusal::no_points(format, &reading.left_out));
    }
    Ok(reading)
}

/// Reads one triangulated surface of a file: the one of that name, or the only one.
///
/// # Errors
/// As [`read_points`]; a format without faces; several surfaces and no name, or none of that name.
pub fn read_surface(bytes: &[u8], asked: &Asked, name: Option<&str>) -> Result<SurfaceReading> {
    let format = detect::format(bytes, asked)?;
    asked.check(format)?;
    match format {
        Format::Ply => match name {
            None => ply::read_surface(bytes, asked),
            Some(name) => Err(Failure::new(Code::SurfaceUnclear, "surface")
                .written(format!("\"{name}\""))
                .allowed("no name: ply has none")
                .remedy("leave the name of the surface out")),
        },
        #[cfg(feature = "landxml")]
        Format::LandXml => landxml::read_surface(bytes, asked, name),
        #[cfg(not(feature = "landxml"))]
        Format::LandXml => Err(refusal::not_built(format)),
        other => Err(Failure::new(Code::SurfaceUnclear, "file")
            .written(other.word())
            .allowed("landxml, ply")
            .remedy("read its points instead: the format has no faces")),
    }
}
