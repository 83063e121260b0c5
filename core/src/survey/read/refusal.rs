//! Failures that several readers share.

use super::format::Format;
use super::left_out::{LeftOut, said};
use crate::failure::{Code, Failure, Place};

#[cfg(not(all(feature = "e57", feature = "landxml", feature = "las")))]
/// The format's reader is behind a cargo feature that is off.
#[cold]
pub(super) fn not_built(format: Format) -> Box<Failure> {
    Failure::new(Code::FormatNotBuilt, "format")
        .written(format.word())
        .allowed("csv, xyz, ply, and those whose features are on")
        .remedy(format!("build overslab with the feature {}", format.word()))
}

/// Nothing is left to work with.
#[cold]
pub(super) fn no_points(format: Format, left_out: &[LeftOut]) -> Box<Failure> {
    let written = if left_out.is_empty() { String::new() } else { format!("left out: {}", said(left_out)) };
    Failure::new(Code::NoPoints, "file")
        .written(written)
        .allowed("at least one point")
        .remedy(format!("check that the file is what it should be; it was read as {}", format.word()))
}

/// The file breaks the rules of its format.
#[cold]
pub(super) fn broken(what: impl Into<String>) -> Box<Failure> {
    Failure::new(Code::FileBroken, "file")
        .written(what)
        .allowed("a file by the rules of its format")
        .remedy("write the file again from where it came")
}

/// The file ends too early.
#[cold]
pub(super) fn short(found: impl Into<String>, stated: impl Into<String>) -> Box<Failure> {
    Failure::new(Code::FileShort, "file")
        .written(found)
        .allowed(stated)
        .remedy("copy the file again: its end is missing")
}

/// The file does not state a unit and none was given.
#[cold]
pub(super) fn unit_missing(path: &str, format: Format) -> Box<Failure> {
    Failure::new(Code::UnitMissing, path)
        .allowed(super::FileUnit::words())
        .remedy(format!("give the unit: {} states none here", format.word()))
}

/// Sets the line of a failure, the first being 1.
pub(super) fn at_line(failure: Box<Failure>, line: u64) -> Box<Failure> {
    match usize::try_from(line) {
        Ok(line) => failure.at(Place::Line(line)),
        Err(_) => failure,
    }
}
