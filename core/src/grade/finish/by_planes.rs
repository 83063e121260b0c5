//! Facets over corners in plan, each with the plane through the heights it is given.

use super::even::{self, High};
use super::{Facet, Finish, shape};
use crate::failure::{Code, Failure, Result};
use crate::geometry::Point;
use crate::quantity::{Elevation, Length, Typed};

/// A corner of one facet, in order round it.
#[derive(Clone, Debug, PartialEq)]
pub struct FacetPlace {
    /// The facet.
    pub facet: String,
    /// Distance from the left.
    pub x: Length,
    /// Distance from the front.
    pub y: Length,
    /// Height there, where it is given: three of a facet tell its plane.
    pub elevation: Option<Elevation>,
}

impl Finish {
    /// Facets by the corners of each, at least three of each with a height; they are checked to meet.
    ///
    /// # Errors
    /// - `KEY_MISSING`: a corner of no facet.
    /// - `FACET_SHAPE`, `FACET_WARPED`: corners that bound no facet, too few heights, or heights not in one plane.
    /// - As [`Finish::faceted`].
    pub fn from_planes(corners: &[FacetPlace]) -> Result<Self> {
        let mut names: Vec<&str> = Vec::new();
        for (index, corner) in corners.iter().enumerate() {
            let name = corner.facet.trim();
            if name.is_empty() {
                return Err(Failure::new(Code::KeyMissing, format!("corners[{index}].facet"))
                    .written("a blank name")
                    .allowed("the facet's name or number")
                    .remedy("say which facet the corner is of"));
            }
            if !names.iter().any(|known| known.eq_ignore_ascii_case(name)) {
                names.push(name);
            }
        }
        Self::faceted(names.iter().map(|name| facet(name, corners)).collect::<Result<Vec<_>>>()?)
    }
}

fn facet(name: &str, corners: &[FacetPlace]) -> Result<Facet> {
    let own = corners.iter().enumerate().filter(|(_, corner)| corner.facet.trim().eq_ignore_ascii_case(name));
    let own: Vec<(usize, &FacetPlace)> = own.collect();
    let place = |corner: &FacetPlace| Point::new(corner.x.base(), corner.y.base());
    let plan: Vec<Point> = own.iter().map(|(_, corner)| place(corner)).collect();
    let numbered = |corner: usize| format!("corner {} of `{name}`", corner + 1);
    let region = shape::region(&plan, "corners", &numbered)?;
    shape::refuse_needle(&region, "corners")?;
    let (mut high, mut of) = (Vec::new(), Vec::new());
    for (number, (_, corner)) in own.iter().enumerate() {
        if let Some(elevation) = corner.elevation {
            high.push(High { at: place(corner), height: elevation.base() });
            of.push(number);
        }
    }
    let called = |corner: usize| of.get(corner).map_or_else(String::new, |&number| numbered(number));
    Ok(Facet::new(region, even::plane(&high, "corners", &called)?).named(name))
}
