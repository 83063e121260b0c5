//! The finish: the new top surface.
//!
//! | given | here |
//! |---|---|
//! | level at an elevation | [`Finish::level`] |
//! | an edge at an elevation, and the fall towards it | [`Finish::to_edge`] |
//! | three points | [`Finish::through`] |
//! | least thickness at the worst point, and the fall towards an edge | [`Finish::at_least`] |
//! | facets that meet | [`Finish::faceted`], [`Finish::from_corners`], [`Finish::from_planes`] |
//! | two planes to a valley, from a ridge, to a trench | [`Finish::to_valley`], [`Finish::crown`], [`Finish::to_trench`], [`Finish::to_edge_trench`] |
//! | a plane from each run to a drain | [`Finish::to_drain`] |
//! | a strip along an edge | [`Finish::with_strip`] |
//! | any of them, lifted to a least thickness | [`Finish::raised`] |
//!
//! What asks for the thickness lays the finish over the old slab first ([`Finish::laid_over`]): there facets are checked to cover
//! the work, and each gets the old slab under it.

mod at_least;
mod by_corners;
mod by_planes;
pub(super) mod convex;
mod cover;
mod drainage;
mod edge;
mod even;
mod facet;
mod facet_input;
mod facets;
mod input;
mod laid;
pub(super) mod meeting;
mod overlap;
pub mod patterns;
mod raised;
mod record;
mod rounding;
mod say;
mod shape;
#[cfg(test)]
pub(in crate::grade) mod tests;

pub use at_least::{AtLeast, Governing, LEAST, STEP, with_margin};
pub use by_corners::{FacetByCorners, FinishCorner};
pub use by_planes::FacetPlace;
pub use drainage::Beyond;
pub use edge::Facing;
pub use facet::Facet;
pub use facet_input::{CornerWord, FacetCornerInput, FacetInput};
pub use input::{FinishInput, PlaneInput, PointInput};
pub use laid::{Laid, LaidPart};
pub use raised::Raised;
pub use record::FINISH;
pub use rounding::round_up_to;

use facets::Facets;

use crate::failure::{Code, Failure, Result, check};
use crate::geometry::{Plane, PlaneError, Point};
use crate::quantity::{Elevation, Length, Range, Slope, Typed};

/// A height of the finish: within 10 km of the datum.
pub const HEIGHT: Range = Range::closed(-1.0e4, 1.0e4);

/// The new top surface: one plane everywhere, or facets that meet.
#[derive(Clone, Debug, PartialEq)]
pub struct Finish {
    shape: Shape,
}

#[derive(Clone, Debug, PartialEq)]
enum Shape {
    Plane(Plane),
    Facets(Facets),
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
        Ok(Self::plane_of(Plane::new(height, 0.0, 0.0)))
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
        Plane::through([flat(a), flat(b), flat(c)]).map(Self::plane_of).map_err(|error| match error {
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
            return Ok(Self::plane_of(plane));
        }
        Err(Failure::new(Code::NotFinite, "plane")
            .allowed("finite heights and slopes")
            .remedy("check the plane"))
    }

    /// Facets as one finish, in any order, each polygon either way round.
    ///
    /// # Errors
    /// - `EMPTY_LIST`, `KEY_REPEATED`: no facet; two of one name.
    /// - `NOT_FINITE`, `OUT_OF_RANGE`: heights out of reach.
    /// - `FACETS_OVERLAP`: two facets over one another, with the area and the place.
    /// - `FACETS_APART`: two heights along a shared edge, with the greatest gap and its place.
    pub fn faceted(facets: Vec<Facet>) -> Result<Self> {
        Facets::new(facets).map(|facets| Self { shape: Shape::Facets(facets) })
    }

    pub(super) const fn plane_of(plane: Plane) -> Self {
        Self { shape: Shape::Plane(plane) }
    }

    /// Its plane; none for a finish of facets.
    #[must_use]
    pub const fn plane(&self) -> Option<&Plane> {
        match &self.shape {
            Shape::Plane(plane) => Some(plane),
            Shape::Facets(_) => None,
        }
    }

    /// Its facets; none for a finish of one plane, which has no edges.
    #[must_use]
    pub fn facets(&self) -> &[Facet] {
        match &self.shape {
            Shape::Plane(_) => &[],
            Shape::Facets(facets) => facets.list(),
        }
    }

    /// The planes it is made of: its own, or those of its facets in order.
    pub fn planes(&self) -> impl Iterator<Item = &Plane> + '_ {
        self.plane().into_iter().chain(self.facets().iter().map(Facet::plane))
    }

    /// The number of the facet under a place, the first being 0; none outside all facets and for one plane. A place on a shared
    /// edge belongs to the first facet there.
    #[must_use]
    pub fn facet_at(&self, x: Length, y: Length) -> Option<usize> {
        match &self.shape {
            Shape::Plane(_) => None,
            Shape::Facets(facets) => facets.at(Point::new(x.base(), y.base())),
        }
    }

    /// What a facet is called: its name, or its number from 1 on.
    #[must_use]
    pub fn facet_name(&self, facet: usize) -> String {
        let named = self.facets().get(facet).and_then(Facet::name);
        named.map_or_else(|| format!("facet {}", facet + 1), str::to_owned)
    }

    /// Its height at a place; one plane answers everywhere, facets only where one of them lies.
    #[must_use]
    pub fn height_at(&self, x: Length, y: Length) -> Option<Elevation> {
        let at = Point::new(x.base(), y.base());
        let plane = match &self.shape {
            Shape::Plane(plane) => plane,
            Shape::Facets(facets) => facets.list().get(facets.at(at)?)?.plane(),
        };
        Some(Elevation::from_base(plane.height_at(at)))
    }

    /// Its steepest fall: of facets the steepest of all.
    #[must_use]
    pub fn fall(&self) -> Slope {
        Slope::from_base(self.planes().map(Plane::steepest).fold(0.0, f64::max))
    }

    /// Its rise per run along x and along y; none for a finish of facets.
    #[must_use]
    pub fn rise(&self) -> Option<[Slope; 2]> {
        self.plane().map(|plane| [Slope::from_base(plane.b()), Slope::from_base(plane.c())])
    }

    /// The same finish, so much higher everywhere.
    #[must_use]
    pub fn moved_up(&self, by: Length) -> Self {
        let by = by.base();
        let shape = match &self.shape {
            Shape::Plane(plane) => Shape::Plane(facet::raised(plane, by)),
            Shape::Facets(facets) => Shape::Facets(facets.moved_up(by)),
        };
        Self { shape }
    }
}
