//! Levels: listed, or at an interval.

use crate::failure::{Code, Failure, Place, Result, check};
use crate::quantity::{Length, Range, Typed, length, number_in};

/// The step from one level to the next: up to 100 m.
pub const INTERVAL: Range = Range::positive_to(100.0);

/// A level of height: within 10 km of the datum.
pub const ELEVATION_LEVEL: Range = Range::closed(-1.0e4, 1.0e4);

/// The most levels at once.
pub const MOST_LEVELS: usize = 10_000;

/// Levels nearer to one another than this, in metres, are one given twice.
const APART: f64 = 1e-6;

/// Levels of a field.
#[derive(Clone, Debug, PartialEq)]
pub enum Levels<Q> {
    /// These, rising.
    Listed(Vec<Q>),
    /// At whole steps of an interval from a level.
    Every {
        /// The step.
        interval: Length,
        /// The level the steps are counted from.
        from: Q,
    },
}

impl<Q: Typed> Levels<Q> {
    /// The levels in base units, listed ones as they are, those at an interval so that they enclose a field from its least to
    /// its greatest value.
    ///
    /// # Errors
    /// - `EMPTY_LIST`, `NOT_FINITE`, `OUT_OF_RANGE`, `LEVELS_UNSORTED`: no levels, unreal ones, or not rising. Path: `levels`.
    /// - `OUT_OF_RANGE`, `NOT_FINITE`: the interval or what it is counted from. Path: `interval`, `counted_from`.
    /// - `TOO_MANY_LEVELS`: more than ten thousand. Path: `levels` or `interval`.
    pub(super) fn around(&self, least: f64, greatest: f64, hair: f64) -> Result<Vec<f64>> {
        match self {
            Self::Listed(levels) => rising(levels),
            Self::Every { interval, from } => {
                let step = check("interval", *interval, INTERVAL)?.base();
                let from = check("counted_from", *from, ELEVATION_LEVEL)?.base();
                let first = ((least + hair - from) / step).floor();
                let last = ((greatest + hair - from) / step).floor() + 1.0;
                let count = last - first + 1.0;
                if count > MOST_LEVELS as f64 {
                    return Err(too_many("interval", count, number_in(*interval, &length::unit::inch, 6)));
                }
                Ok((0..count as usize).map(|number| from + (first + number as f64) * step).collect())
            }
        }
    }
}

fn rising<Q: Typed>(levels: &[Q]) -> Result<Vec<f64>> {
    if levels.is_empty() {
        return Err(Failure::new(Code::EmptyList, "levels")
            .written("no levels")
            .allowed("at least one level")
            .remedy("list the levels, or give an interval"));
    }
    if levels.len() > MOST_LEVELS {
        return Err(too_many("levels", levels.len() as f64, "the list".to_owned()));
    }
    let mut found: Vec<f64> = Vec::with_capacity(levels.len());
    for (index, &level) in levels.iter().enumerate() {
        let level = check("levels", level, ELEVATION_LEVEL)
            .map_err(|failure| failure.at(Place::Index(index)))?
            .base();
        if let Some(&last) = found.last()
            && level - last < APART
        {
            let said = |base: f64| number_in(Length::from_base(base), &length::unit::millimeter, 4);
            return Err(Failure::new(Code::LevelsUnsorted, "levels")
                .at(Place::Index(index))
                .written(format!("{} after {}", said(level), said(last)))
                .allowed("each level more than 0.001 mm above the one before")
                .remedy("sort the levels and name each once"));
        }
        found.push(level);
    }
    Ok(found)
}

fn too_many(path: &str, count: f64, written: String) -> Box<Failure> {
    Failure::new(Code::TooManyLevels, path)
        .written(format!("{written}, {count:.0} levels"))
        .allowed(format!("at most {MOST_LEVELS} levels"))
        .remedy("take a greater step")
}
