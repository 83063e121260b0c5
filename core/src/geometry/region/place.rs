//! Where a place is with regard to a region.

use super::{Region, Ring, Run, RunId};
use crate::geometry::Point;
use crate::geometry::predicates::turn;

/// The run nearest to a place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Nearest {
    /// Which run (of several equally near the first by number).
    pub run: RunId,
    /// How far away.
    pub distance: f64,
    /// Its nearest place.
    pub at: Point,
}

impl Region {
    /// Whether the place is inside or exactly on a run.
    #[must_use]
    pub fn contains(&self, place: Point) -> bool {
        match locate(self.outer.corners(), place) {
            Side::Outside => false,
            Side::On => true,
            Side::Inside => self.holes.iter().all(|hole| locate(hole.corners(), place) != Side::Inside),
        }
    }

    /// The run nearest to a place, from inside or outside.
    #[must_use]
    pub fn nearest_run(&self, place: Point) -> Nearest {
        let mut runs = self.runs();
        let first = runs.next().map(|run| nearest_on(&run, place));
        // A region has at least three runs.
        let first = first.unwrap_or(Nearest { run: self.first_run(), distance: f64::INFINITY, at: place });
        runs.map(|run| nearest_on(&run, place))
            .fold(first, |best, next| if next.distance < best.distance { next } else { best })
    }

    /// How far a place is from the region: zero inside and on the runs.
    #[must_use]
    pub fn distance_outside(&self, place: Point) -> f64 {
        if self.contains(place) { 0.0 } else { self.nearest_run(place).distance }
    }

    fn first_run(&self) -> RunId {
        RunId { ring: self.outer.id(), index: 0 }
    }
}

fn nearest_on(run: &Run, place: Point) -> Nearest {
    let at = run.at(run.share_nearest(place));
    Nearest { run: run.id, distance: place.distance(at), at }
}

/// How far a place is from the nearest run of a ring.
pub(super) fn distance_to(ring: &Ring, place: Point) -> f64 {
    ring.runs().map(|run| nearest_on(&run, place).distance).fold(f64::INFINITY, f64::min)
}

/// Whether a simple ring has the place inside (or on a run).
pub(super) fn encloses(corners: &[Point], place: Point) -> bool {
    locate(corners, place) != Side::Outside
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Side {
    Inside,
    On,
    Outside,
}

/// Counts the runs that a ray in the direction of x crosses, exactly.
fn locate(corners: &[Point], place: Point) -> Side {
    let mut inside = false;
    let Some(mut from) = corners.last() else { return Side::Outside };
    for to in corners {
        if (from.y > place.y) != (to.y > place.y) {
            let side = turn(*from, *to, place);
            if side == 0.0 {
                return Side::On;
            }
            if (side > 0.0) == (to.y > from.y) {
                inside = !inside;
            }
        } else if from.y == place.y && to.y == place.y {
            if (from.x.min(to.x)..=from.x.max(to.x)).contains(&place.x) {
                return Side::On;
            }
        } else if *to == place {
            return Side::On;
        }
        from = to;
    }
    if inside { Side::Inside } else { Side::Outside }
}
