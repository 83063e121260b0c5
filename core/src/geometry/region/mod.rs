//! Plan regions: an outline with holes, valid by construction.

mod error;
mod holes;
mod parts;
mod place;
mod ring;
mod simple;
#[cfg(test)]
mod tests;

pub use error::RegionError;
pub use place::Nearest;
pub use ring::{Ring, RingId, Run, RunId};

use super::{FARTHEST, Point, Sum};
pub(crate) use parts::Parts;

/// An outline with holes: simple, of positive area, holes inside and apart.
#[derive(Clone, Debug, PartialEq)]
pub struct Region {
    outer: Ring,
    holes: Vec<Ring>,
    parts: Parts,
}

impl Region {
    /// The region inside `outer` and outside every hole. Either sense of rotation will do; runs keep the numbers of
    /// the corners they start from.
    ///
    /// # Errors
    /// When a ring is no simple ring of positive area, or the holes are not inside and apart.
    pub fn new(outer: Vec<Point>, holes: Vec<Vec<Point>>) -> Result<Self, RegionError> {
        let outer = Ring::new(RingId::Outer, outer)?;
        if holes.is_empty()
            && let Some(parts) = Parts::of_convex(&outer)
        {
            return Ok(Self { outer, holes: Vec::new(), parts });
        }
        let holes = holes
            .into_iter()
            .enumerate()
            .map(|(index, corners)| Ring::new(RingId::Hole(index), corners))
            .collect::<Result<Vec<_>, _>>()?;
        simple::check(&outer, &holes)?;
        outer.check_area()?;
        holes.iter().try_for_each(Ring::check_area)?;
        holes::check(&outer, &holes)?;
        let parts = Parts::of(&outer, &holes);
        Ok(Self { outer, holes, parts })
    }

    /// The rectangle between two opposite corners, from the first counter-clockwise.
    ///
    /// # Errors
    /// When a coordinate is not finite or the rectangle has no area.
    pub fn rectangle(first: Point, opposite: Point) -> Result<Self, RegionError> {
        let (width, depth) = (opposite.x - first.x, opposite.y - first.y);
        let (second, last) = (Point::new(opposite.x, first.y), Point::new(first.x, opposite.y));
        let corners = if (width > 0.0) == (depth > 0.0) {
            vec![first, second, opposite, last]
        } else {
            vec![first, last, opposite, second]
        };
        Self::new(corners, Vec::new())
    }

    /// The outer ring, as given.
    #[must_use]
    pub fn outer(&self) -> &Ring {
        &self.outer
    }

    /// The holes, as given.
    #[must_use]
    pub fn holes(&self) -> &[Ring] {
        &self.holes
    }

    fn rings(&self) -> impl Iterator<Item = &Ring> + '_ {
        std::iter::once(&self.outer).chain(&self.holes)
    }

    /// The area, holes taken off.
    #[must_use]
    pub fn area(&self) -> f64 {
        self.outer.area() - self.holes.iter().map(Ring::area).collect::<Sum>().value()
    }

    /// The length of all runs, those of the holes with them.
    #[must_use]
    pub fn perimeter(&self) -> f64 {
        self.runs().map(|run| run.length()).collect::<Sum>().value()
    }

    /// All runs, the region on their left, with the caller's numbering.
    pub fn runs(&self) -> impl Iterator<Item = Run> + '_ {
        self.rings().flat_map(Ring::runs)
    }

    /// Whether the region is convex and without holes.
    #[must_use]
    pub fn is_convex(&self) -> bool {
        self.parts.is_one()
    }

    /// The convex parts that tile the region.
    pub(crate) fn parts(&self) -> &Parts {
        &self.parts
    }

    /// The least and the greatest coordinates.
    #[must_use]
    pub fn bounds(&self) -> (Point, Point) {
        self.outer.bounds()
    }
}

/// Whether a coordinate is a number this library takes.
fn is_near(point: Point) -> bool {
    point.x.abs() <= FARTHEST && point.y.abs() <= FARTHEST
}
