//! One surveyed point of the old slab.

use super::rows::Table;
use crate::geometry::Point;

/// One surveyed point, in metres in the job's axes and datum.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shot {
    /// First plan coordinate.
    pub x: f64,
    /// Second plan coordinate.
    pub y: f64,
    /// Height.
    pub z: f64,
    /// Marked as lying outside the outline on purpose (approach, walk).
    pub outside_allowed: bool,
    /// Marked as one side of a step: another height at the same place is meant.
    pub step: bool,
}

impl Shot {
    /// An unmarked shot.
    #[must_use]
    pub const fn new(x: f64, y: f64, z: f64) -> Self {
        Self { x, y, z, outside_allowed: false, step: false }
    }
}

/// Shots as the caller holds them.
#[derive(Clone, Copy, Debug)]
pub(super) enum Shots<'a> {
    /// One after the other.
    Listed(&'a [Shot]),
    /// In a table, where some may be missing.
    Tabled(Table<'a>),
}

impl Shots<'_> {
    /// How many numbers there are for shots.
    pub(super) fn len(&self) -> usize {
        match self {
            Self::Listed(shots) => shots.len(),
            Self::Tabled(table) => table.heights.len(),
        }
    }

    /// The shot of a number, if it was taken.
    #[inline]
    pub(super) fn get(&self, number: usize) -> Option<Shot> {
        match self {
            Self::Listed(shots) => shots.get(number).copied(),
            Self::Tabled(table) => table.shot(number),
        }
    }

    /// The way from one shot to another at the same place, where their order in a table tells.
    pub(super) fn across(&self, from: usize, to: usize) -> Option<Point> {
        match self {
            Self::Listed(_) => None,
            Self::Tabled(table) => table.way(from, to),
        }
    }

    /// How many shots were taken.
    pub(super) fn taken(&self) -> usize {
        (0..self.len()).filter(|&number| self.get(number).is_some()).count()
    }
}
