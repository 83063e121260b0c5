//! The runs of a region in local coordinates, to be found by place.

use super::frame::Frame;
use crate::geometry::boxes::{Boxes, Extent};
use crate::geometry::{Point, Region};

/// The runs of a region.
pub(super) struct Runs {
    runs: Vec<[Point; 2]>,
    boxes: Boxes,
}

impl Runs {
    /// All runs of a region.
    pub(super) fn of(region: &Region, frame: &Frame) -> Self {
        Self::new(region.runs().map(|run| [frame.local(run.from), frame.local(run.to)]).collect())
    }

    /// The given runs.
    pub(super) fn new(runs: Vec<[Point; 2]>) -> Self {
        let boxes = Boxes::new(runs.iter().map(|&run| Extent::around(run)).collect());
        Self { runs, boxes }
    }

    /// Calls `visit` with every run that may reach into a box, and its number.
    pub(super) fn near(&self, extent: &Extent, mut visit: impl FnMut(usize, [Point; 2])) {
        self.boxes.overlapping(extent, |run| visit(run, self.runs[run]));
    }

    /// Calls `visit` with every run within a distance of a place, and its number.
    pub(super) fn within(&self, place: Point, distance: f64, mut visit: impl FnMut(usize, [Point; 2])) {
        self.near(&Extent::at(place).widened(distance + 2e-9), |run, ends| {
            if super::rules::within(from_segment(place, ends), distance) {
                visit(run, ends);
            }
        });
    }
}

/// How far a place is from the line between two others.
pub(super) fn from_segment(place: Point, [from, to]: [Point; 2]) -> f64 {
    let (dx, dy) = (to.x - from.x, to.y - from.y);
    let share = ((place.x - from.x) * dx + (place.y - from.y) * dy) / (dx * dx + dy * dy);
    let share = share.clamp(0.0, 1.0);
    place.distance(Point::new(from.x + share * dx, from.y + share * dy))
}
