//! The finish: the new top surface.
//!
//! | given | here |
//! |---|---|
//! | level at an elevation | [`Finish::level`] |
//! | an edge at an elevation, and the fall towards it | [`Finish::to_edge`] |
//! | three points | [`Finish::through`] |
//! | least thickness at the worst point, and the fall towards an edge | [`Finish::at_least`] |

mod at_least;
mod edge;
mod record;
mod rounding;

pub use at_least::{AtLeast, Governing, LEAST, STEP, with_margin};
pub use edge::Facing;
pub use record::{FINISH, FinishInput, PlaneInput, PointInput};
pub use rounding::round_up_to;

use crate::failure::{Code, Failure, Result, check};
use crate::geometry::{Plane, PlaneError, Point};
use crate::quantity::{Elevation, Length, Range, Slope, Typed};

/// A height of the finish: within 10 km of the datum.
pub const HEIGHT: Range = Range::closed(-1.0e4, 1.0e4);

/// One plane as the new top surface.
#[derive(Clone, Debug, PartialEq)]
pub struct Finish {
    plane: Plane,
}

/// A point of the finish.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FinishPoint {
    /// Distance from the left.
    pub x: Length,
    /// Distance from the front.
    pub y: Length,
    /// Height there.
    pub elevation: Elevation,
}

impl Finish {
    /// A level finish.
    ///
    /// # Errors
    /// An elevation that is not finite or out of reach.
    pub fn level(elevation: Elevation) -> Result<Self> {
        let height = check("elevation", elevation, HEIGHT)?.base();
        Ok(Self { plane: Plane::new(height, 0.0, 0.0) })
    }

    /// The plane through three points.
    ///
    /// # Errors
    /// `FINISH_UNDETERMINED`: not three points, or all on one line.
    pub fn through(points: &[FinishPoint]) -> Result<Self> {
        let &[a, b, c] = points else {
            return Err(Failure::new(Code::FinishUndetermined, "points")
                .written(format!("{} points", points.len()))
                .allowed("three points")
                .remedy("give three points that are not on one line"));
        };
        for (index, point) in points.iter().enumerate() {
            check(&format!("points[{index}].elevation"), point.elevation, HEIGHT)?;
        }
        let flat = |point: FinishPoint| [point.x.base(), point.y.base(), point.elevation.base()];
        Plane::through([flat(a), flat(b), flat(c)]).map(|plane| Self { plane }).map_err(|error| match error {
            PlaneError::NotFinite { index } => Failure::new(Code::NotFinite, format!("points[{index}]"))
                .allowed("finite numbers")
                .remedy("check the point"),
            _ => Failure::new(Code::FinishUndetermined, "points")
                .written("three points on one line")
                .allowed("three points that span a triangle")
                .remedy("move one of them off the line"),
        })
    }

    /// A finish of this plane.
    ///
    /// # Errors
    /// `NOT_FINITE`.
    pub fn of(plane: Plane) -> Result<Self> {
        if plane.height_at(Point::default()).is_finite() && plane.steepest().is_finite() {
            return Ok(Self { plane });
        }
        Err(Failure::new(Code::NotFinite, "plane")
            .allowed("finite heights and slopes")
            .remedy("check the plane"))
    }

    /// Its plane.
    #[must_use]
    pub const fn plane(&self) -> &Plane {
        &self.plane
    }

    /// Its height at a place.
    #[must_use]
    pub fn height_at(&self, x: Length, y: Length) -> Elevation {
        Elevation::from_base(self.plane.height_at(Point::new(x.base(), y.base())))
    }

    /// Its steepest fall.
    #[must_use]
    pub fn fall(&self) -> Slope {
        Slope::from_base(self.plane.steepest())
    }

    /// Its rise per run along x and along y.
    #[must_use]
    pub fn rise(&self) -> [Slope; 2] {
        [Slope::from_base(self.plane.b()), Slope::from_base(self.plane.c())]
    }
}
