//! Several facets as one finish: none over another, and of one height where they meet.

use super::facet::Facet;
use super::{HEIGHT, meeting, overlap};
use crate::failure::{Code, Failure, Result, check};
use crate::geometry::Point;
use crate::quantity::{Elevation, Typed};

/// A place so near to a facet, in metres, lies on it: corners on a long edge are rounded.
const ON_EDGE: f64 = 1e-6;

/// Facets that lie side by side and meet.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Facets(Vec<Facet>);

impl Facets {
    /// Facets that are checked to make one surface.
    ///
    /// # Errors
    /// None; a name given twice; heights out of reach; facets that overlap or do not meet.
    pub(super) fn new(facets: Vec<Facet>) -> Result<Self> {
        if facets.is_empty() {
            return Err(Failure::new(Code::EmptyList, "facets")
                .written("no facets")
                .allowed("at least one facet")
                .remedy("give the facets, or one plane"));
        }
        names_differ(&facets)?;
        for (index, facet) in facets.iter().enumerate() {
            heights_in_reach(index, facet)?;
        }
        overlap::refuse(&facets)?;
        meeting::refuse_gaps(&facets)?;
        Ok(Self(facets))
    }

    pub(super) fn list(&self) -> &[Facet] {
        &self.0
    }

    /// The facet under a place: the first that holds it, or else the nearest where it is on an edge but for rounding.
    pub(super) fn at(&self, place: Point) -> Option<usize> {
        if !place.is_finite() {
            return None;
        }
        if let Some(found) = self.0.iter().position(|facet| facet.region().contains(place)) {
            return Some(found);
        }
        let off = self.0.iter().map(|facet| facet.region().nearest_run(place).distance);
        let nearest = off.enumerate().min_by(|a, b| a.1.total_cmp(&b.1))?;
        (nearest.1 <= ON_EDGE).then_some(nearest.0)
    }

    pub(super) fn moved_up(&self, by: f64) -> Self {
        Self(self.0.iter().map(|facet| facet.moved_up(by)).collect())
    }
}

/// What a facet is called in messages: its name, or its number from 1 on.
pub(super) fn called(facets: &[Facet], index: usize) -> String {
    match facets.get(index).and_then(Facet::name) {
        Some(name) => format!("`{name}`"),
        None => format!("facet {}", index + 1),
    }
}

fn names_differ(facets: &[Facet]) -> Result<()> {
    let key = |facet: &Facet| facet.name().map(str::to_lowercase);
    for (index, facet) in facets.iter().enumerate() {
        let (Some(name), Some(own)) = (facet.name(), key(facet)) else { continue };
        let before = facets.iter().take(index).position(|other| key(other).as_ref() == Some(&own));
        if let Some(first) = before {
            return Err(Failure::new(Code::KeyRepeated, format!("facets[{index}].name"))
                .written(format!("`{name}`, already facet {}", first + 1))
                .allowed("a name for each facet, or none")
                .remedy("give the other facet a name of its own"));
        }
    }
    Ok(())
}

fn heights_in_reach(index: usize, facet: &Facet) -> Result<()> {
    let path = format!("facets[{index}].plane");
    if !facet.plane().is_finite() {
        return Err(Failure::new(Code::NotFinite, path)
            .allowed("finite heights and slopes")
            .remedy("check the plane"));
    }
    let corners = facet.region().outer().corners().iter();
    let heights = corners.map(|&corner| facet.plane().height_at(corner));
    for height in heights {
        check(&path, Elevation::from_base(height), HEIGHT)?;
    }
    Ok(())
}
