//! Exact integrals of finish minus old slab.

use crate::geometry::{Plane, Point};
use crate::survey::surface::{Cut, Extreme};

/// Why there is no thickness field.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum ThicknessError {
    /// A facet's plane is not finite.
    #[error("the plane of facet {facet} is not a number")]
    NotFinite {
        /// Which facet.
        facet: usize,
    },
    /// No facet given.
    #[error("a thickness field needs at least one facet")]
    NoFacet,
}

/// The part of the region that is thicker than some depth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Over {
    /// Integral of thickness less depth where that is positive.
    pub volume: f64,
    /// Area where it is positive.
    pub area: f64,
    /// First moments of that area about `origin`.
    pub moment_x: f64,
    /// First moments of that area about `origin`.
    pub moment_y: f64,
    /// What the moments are about.
    pub origin: Point,
}

/// Finish minus old slab over one region or several facets.
#[derive(Clone, Debug)]
pub struct ThicknessField<'a> {
    facets: Vec<(&'a Cut, Plane)>,
}

impl<'a> ThicknessField<'a> {
    /// The thickness under one plane.
    ///
    /// # Errors
    /// When the plane is not finite.
    pub fn new(cut: &'a Cut, finish: Plane) -> Result<Self, ThicknessError> {
        Self::over_facets(vec![(cut, finish)])
    }

    /// The thickness under several facets, each over its own cut.
    ///
    /// # Errors
    /// When there is no facet or a plane is not finite.
    pub fn over_facets(facets: Vec<(&'a Cut, Plane)>) -> Result<Self, ThicknessError> {
        Ok(Self { facets })
    }

    /// How many facets.
    #[must_use]
    pub fn facets(&self) -> usize {
        self.facets.len()
    }

    /// The area.
    #[must_use]
    pub fn area(&self) -> f64 {
        unimplemented!()
    }

    /// Volume between old slab and finish, high spots taken off.
    #[must_use]
    pub fn net(&self) -> f64 {
        unimplemented!()
    }

    /// Volume where the finish is above the old slab.
    #[must_use]
    pub fn fill(&self) -> f64 {
        unimplemented!()
    }

    /// Volume of the old slab above the finish (from 0 up).
    #[must_use]
    pub fn high_spots(&self) -> f64 {
        unimplemented!()
    }

    /// Net volume over area.
    #[must_use]
    pub fn mean(&self) -> f64 {
        unimplemented!()
    }

    /// The least thickness and where.
    #[must_use]
    pub fn least(&self) -> Extreme {
        unimplemented!()
    }

    /// The greatest thickness and where.
    #[must_use]
    pub fn greatest(&self) -> Extreme {
        unimplemented!()
    }

    /// The least thickness over the ground between the shots; none where there is none.
    #[must_use]
    pub fn least_between_shots(&self) -> Option<Extreme> {
        unimplemented!()
    }

    /// The least thickness on extended ground; none where there is none.
    #[must_use]
    pub fn least_beyond(&self) -> Option<Extreme> {
        unimplemented!()
    }

    /// The least thickness at a shot in the region; none where there is none.
    #[must_use]
    pub fn least_at_shots(&self) -> Option<Extreme> {
        unimplemented!()
    }

    /// Area thinner than a depth.
    #[must_use]
    pub fn area_thinner_than(&self, _depth: f64) -> f64 {
        unimplemented!()
    }

    /// Volume missing to a depth: integral of depth less thickness where that is positive.
    #[must_use]
    pub fn volume_missing_to(&self, _depth: f64) -> f64 {
        unimplemented!()
    }

    /// The part thicker than a depth, with first moments (the gradient of its volume by the plane).
    #[must_use]
    pub fn over(&self, _depth: f64) -> Over {
        unimplemented!()
    }
}
