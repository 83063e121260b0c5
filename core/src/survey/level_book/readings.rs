//! What a reading may be, and the refusal of one that is missing.

use super::entries::{Backsight, LevelBook, SetUp, Sight};
use crate::failure::{Code, Failure, Result, check};
use crate::quantity::{Length, Range, Typed};

/// What a rod may read: zero to 10 m, more than the longest rod in use. Common practice, no source.
pub const ROD: Range = Range::closed(0.0, 10.0);

/// What the elevation of a benchmark may be, above any datum in use: -1 km to 10 km. Common practice, no source.
pub const ELEVATION: Range = Range::closed(-1_000.0, 10_000.0);

/// Refuses every value that no book can hold, before anything is computed.
pub(super) fn check_values(book: &LevelBook) -> Result<()> {
    if book.benchmarks.is_empty() {
        return Err(empty("benchmarks", "name one point and its elevation: a nail at 100 ft will do"));
    }
    if book.setups.is_empty() {
        return Err(empty("setups", "book at least one set-up with its backsight"));
    }
    for (index, benchmark) in book.benchmarks.iter().enumerate() {
        check(&format!("benchmarks[{index}].elevation"), benchmark.elevation, ELEVATION)?;
    }
    for (index, setup) in book.setups.iter().enumerate() {
        check_setup(index, setup).map_err(|failure| failure.under(&format!("setups[{index}]")))?;
    }
    Ok(())
}

fn check_setup(index: usize, setup: &SetUp) -> Result<()> {
    setup.backsight.reading(index, "backsight")?;
    for (number, sight) in setup.sights.iter().enumerate() {
        sight.reading(index, &format!("sights[{number}]"))?;
    }
    if let Some(foresight) = &setup.foresight {
        foresight.reading(index, "foresight")?;
    }
    match setup.close {
        Some(close) => allowed(index, "close", &setup.backsight.point, close).map(drop),
        None => Ok(()),
    }
}

impl Backsight {
    /// The reading, which must be there; `path` is below the set-up.
    pub(super) fn reading(&self, setup: usize, path: &str) -> Result<Length> {
        present(setup, path, &self.point, self.rod)
    }
}

impl Sight {
    /// The reading, which must be there; `path` is below the set-up.
    pub(super) fn reading(&self, setup: usize, path: &str) -> Result<Length> {
        present(setup, path, &self.point, self.rod)
    }
}

fn present(setup: usize, path: &str, point: &str, rod: Option<Length>) -> Result<Length> {
    match rod {
        Some(rod) => allowed(setup, path, point, rod),
        None => Err(Failure::new(Code::BookIncomplete, path)
            .written(format!("no reading on `{}` in set-up {}", point.trim(), setup + 1))
            .allowed("a reading for every point that is named")
            .remedy("book the reading, or strike the point out")),
    }
}

fn allowed(setup: usize, path: &str, point: &str, rod: Length) -> Result<Length> {
    check(path, rod, ROD).map_err(|mut failure| {
        if rod.base() < 0.0 && failure.code == Code::OutOfRange {
            failure.code = Code::Negative;
        }
        failure.remedy(format!(
            "check the reading on `{}` in set-up {} and its unit: a rod stands on its point and reads from zero up; \
             a rod held upside down is not supported",
            point.trim(),
            setup + 1,
        ))
    })
}

fn empty(path: &str, remedy: &str) -> Box<Failure> {
    Failure::new(Code::EmptyList, path).written("nothing").allowed("at least one").remedy(remedy)
}
