//! Gathering points while a file is read: into metres, checked, counted.

use super::left_out::{Counts, LeftOut, Reason};
use super::unit::FileUnit;
use crate::note::Note;
use crate::survey::points::Points;

/// A million kilometres: nothing surveyed has such a coordinate, and sums of squares stay exact enough below it.
pub(super) const FAR: f64 = 1.0e9;

/// Points under way.
#[derive(Debug, Default)]
pub(super) struct Gather {
    pub(super) points: Points,
    pub(super) left_out: Counts,
}

/// What is wrong with coordinates in metres, if anything.
pub(super) fn fault(point: [f64; 3]) -> Option<Reason> {
    if point.iter().all(|c| c.abs() <= FAR) {
        None
    } else if point.iter().all(|c| c.is_finite()) {
        Some(Reason::TooFar)
    } else {
        Some(Reason::NotFinite)
    }
}

impl Gather {
    /// Room for so many points.
    pub(super) fn with_room(count: usize) -> Self {
        let mut gather = Self::default();
        for axis in [&mut gather.points.x, &mut gather.points.y, &mut gather.points.z] {
            axis.reserve(count);
        }
        gather
    }

    /// A point of a cloud, in the file's unit: used, or left out and counted.
    pub(super) fn push(&mut self, point: [f64; 3], unit: FileUnit) -> bool {
        let metres = point.map(|c| unit.metres(c));
        match fault(metres) {
            None => self.points.push(metres),
            Some(reason) => {
                self.left_out.add(reason);
                return false;
            }
        }
        true
    }

    /// The points and what was left out.
    pub(super) fn finish(self, notes: &mut Vec<Note>) -> (Points, Vec<LeftOut>) {
        (self.points, self.left_out.finish(notes))
    }
}
