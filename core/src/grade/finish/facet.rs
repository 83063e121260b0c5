//! One facet of a finish: a plane over a simple polygon in plan.

use crate::geometry::{Plane, Point, Region};
use crate::quantity::{Elevation, Slope, Typed};

/// A facet: the finish is this plane over this polygon.
#[derive(Clone, Debug, PartialEq)]
pub struct Facet {
    region: Region,
    plane: Plane,
    name: Option<String>,
    falls_to: Option<String>,
}

/// A slope below this is none: a hair in a hundred metres.
const LEVEL: f64 = 1e-9;

impl Facet {
    /// The plane over the polygon.
    #[must_use]
    pub const fn new(region: Region, plane: Plane) -> Self {
        Self { region, plane, name: None, falls_to: None }
    }

    /// The same facet under a name.
    #[must_use]
    pub fn named(mut self, name: impl Into<String>) -> Self {
        self.name = Some(name.into().trim().to_owned()).filter(|name| !name.is_empty());
        self
    }

    /// The same facet, said to fall to an edge, a valley or a drain.
    #[must_use]
    pub fn falling_to(mut self, outlet: impl Into<String>) -> Self {
        self.falls_to = Some(outlet.into().trim().to_owned()).filter(|outlet| !outlet.is_empty());
        self
    }

    /// The polygon in plan. It may reach outside the work; what is inside counts.
    #[must_use]
    pub const fn region(&self) -> &Region {
        &self.region
    }

    /// The plane over it.
    #[must_use]
    pub const fn plane(&self) -> &Plane {
        &self.plane
    }

    /// Its name, where it has one.
    #[must_use]
    pub fn name(&self) -> Option<&str> {
        self.name.as_deref()
    }

    /// What it is said to fall to: an edge, a valley, a drain.
    #[must_use]
    pub fn falls_to(&self) -> Option<&str> {
        self.falls_to.as_deref()
    }

    /// Its steepest fall.
    #[must_use]
    pub fn fall(&self) -> Slope {
        Slope::from_base(self.plane.steepest())
    }

    /// The unit vector in plan along which water runs on it; none on a level facet.
    #[must_use]
    pub fn downhill(&self) -> Option<[f64; 2]> {
        let steepest = self.plane.steepest();
        (steepest > LEVEL).then(|| [-self.plane.b() / steepest, -self.plane.c() / steepest])
    }

    /// The height of its plane at a place.
    #[must_use]
    pub fn height_at(&self, place: Point) -> Elevation {
        Elevation::from_base(self.plane.height_at(place))
    }

    /// The same facet, so much higher.
    pub(super) fn moved_up(&self, by: f64) -> Self {
        Self { plane: raised(&self.plane, by), ..self.clone() }
    }
}

/// A plane so much higher.
pub(super) fn raised(plane: &Plane, by: f64) -> Plane {
    let at = plane.origin();
    Plane::about(at, plane.height_at(at) + by, plane.b(), plane.c())
}
