//! The finish laid over the old slab: each facet with the old slab under it.

use super::convex::common;
use super::{Finish, cover, say};
use crate::failure::{Code, Failure, Result};
use crate::geometry::{Plane, Point, Region};
use crate::grade::thickness_field::{self, ThicknessField};
use crate::survey::surface::{Cut, Surface, Triangle};
use std::borrow::Cow;

/// A finish over the old slab of a work or of a zone of it.
#[derive(Clone, Debug)]
pub struct Laid<'a> {
    parts: Vec<LaidPart<'a>>,
}

/// One plane of the finish with the old slab under it.
#[derive(Clone, Debug)]
pub struct LaidPart<'a> {
    /// The facet's number, the first being 0; none where the finish is one plane.
    pub facet: Option<usize>,
    /// The finish.
    pub plane: Plane,
    /// The old slab under it.
    pub ground: Cow<'a, Cut>,
}

impl Finish {
    /// The finish over the whole of a work: the old slab cut at the facets' edges.
    ///
    /// # Errors
    /// `FACETS_LEAVE_HOLE`: a part of the work under no facet, with its area and place.
    pub fn laid_over<'a>(&self, surface: &'a Surface) -> Result<Laid<'a>> {
        if let Some(plane) = self.plane() {
            return Ok(Laid::one(*plane, Cow::Borrowed(surface.whole())));
        }
        cover::refuse_holes(self.facets(), surface.region())?;
        let facets = self.facets().iter().enumerate();
        // A facet outside the work has no part in it.
        let cuts = facets.filter_map(|(number, facet)| Some((number, surface.within(facet.region()).ok()?)));
        self.laid(cuts, surface.whole())
    }

    /// Refuses facets that leave a part of a region uncovered; one plane covers everything.
    pub(in crate::grade) fn refuse_holes(&self, region: &Region) -> Result<()> {
        if self.plane().is_some() { Ok(()) } else { cover::refuse_holes(self.facets(), region) }
    }

    /// The finish over a zone of a work.
    ///
    /// # Errors
    /// `REGION_OUTSIDE`: a zone that shares no area with the work; `FACETS_LEAVE_HOLE`.
    pub fn laid_within<'a>(&self, surface: &'a Surface, zone: &Region) -> Result<Laid<'a>> {
        let whole = surface.within(zone).map_err(|_| {
            Failure::new(Code::RegionOutside, "zone")
                .written("no area in common")
                .allowed("a zone that shares area with the outline")
                .remedy("check the zone's corners")
        })?;
        if let Some(plane) = self.plane() {
            return Ok(Laid::one(*plane, Cow::Owned(whole)));
        }
        cover::refuse_holes(self.facets(), surface.region())?;
        let facets = self.facets().iter().enumerate();
        let parts = facets.flat_map(|(number, facet)| {
            both(facet.region(), zone).into_iter().map(move |part| (number, part))
        });
        let cuts = parts.filter_map(|(number, part)| Some((number, surface.within(&part).ok()?)));
        self.laid(cuts, &whole)
    }

    /// Facets with their cuts, which add up to the whole.
    fn laid<'a>(&self, cuts: impl Iterator<Item = (usize, Cut)>, whole: &Cut) -> Result<Laid<'a>> {
        let parts: Vec<LaidPart<'a>> = cuts
            .filter_map(|(number, cut)| {
                let plane = *self.facets().get(number)?.plane();
                Some(LaidPart { facet: Some(number), plane, ground: Cow::Owned(cut) })
            })
            .collect();
        let laid = Laid { parts };
        let missing = whole.area() - laid.area();
        if missing.abs() > cover::ROUNDING * whole.area() {
            return Err(cover::hole(missing.abs(), whole.origin()));
        }
        Ok(laid)
    }
}

impl<'a> Laid<'a> {
    fn one(plane: Plane, ground: Cow<'a, Cut>) -> Self {
        Self { parts: vec![LaidPart { facet: None, plane, ground }] }
    }

    /// A surveyed surface laid over another of the same plan edge: each of its triangles with the surface under it.
    ///
    /// # Errors
    /// `AS_BUILT_OUTLINE`: the two have not the same plan edge.
    pub fn between(upper: &Surface, lower: &'a Surface) -> Result<Self> {
        let under = |triangle: Triangle| {
            let corners = triangle.corners;
            let plane =
                Plane::through(corners.map(|corner| [corner.at.x, corner.at.y, corner.height])).ok()?;
            // What is too thin to be a region has no area to speak of; the sum of areas is held against the whole.
            let under = region(corners.map(|corner| corner.at).to_vec())?;
            Some(LaidPart { facet: None, plane, ground: Cow::Owned(lower.within(&under).ok()?) })
        };
        let laid = Self { parts: upper.whole().triangles().filter_map(under).collect() };
        let areas = [upper.whole().area(), lower.whole().area()];
        if areas.iter().any(|area| (area - laid.area()).abs() > cover::ROUNDING * area) {
            return Err(Failure::new(Code::AsBuiltOutline, "new_floor")
                .written(format!(
                    "{} of {} in common",
                    say::area(laid.area()),
                    say::area(areas[0].max(areas[1]))
                ))
                .allowed("the plan edge of the old slab")
                .remedy("survey the new floor within the outline of the old slab"));
        }
        Ok(laid)
    }

    /// The planes with the old slab under each, in the order of the facets; a facet of which a zone cuts several pieces comes
    /// several times.
    #[must_use]
    pub fn parts(&self) -> &[LaidPart<'a>] {
        &self.parts
    }

    /// The area.
    #[must_use]
    pub fn area(&self) -> f64 {
        self.parts.iter().map(|part| part.ground.area()).collect::<crate::geometry::Sum>().value()
    }

    /// What regions, which may overlap, leave of it; nothing where they cover all of it but for rounding.
    #[must_use]
    pub fn without(&self, regions: &[&Region]) -> Option<Laid<'static>> {
        let left = |part: &LaidPart<'_>| {
            let ground = Cow::Owned(part.ground.without(regions)?);
            Some(LaidPart { facet: part.facet, plane: part.plane, ground })
        };
        let laid = Laid { parts: self.parts.iter().filter_map(left).collect() };
        (laid.area() > cover::ROUNDING * self.area()).then_some(laid)
    }

    /// The thickness: exact integrals over all parts. Its facets are these parts, in this order.
    ///
    /// # Errors
    /// `NOT_FINITE`: a plane that overflows over the work.
    pub fn thickness(&self) -> Result<ThicknessField<'_>> {
        let facets = self.parts.iter();
        let facets =
            facets.map(|part| thickness_field::Facet { ground: part.ground.as_ref(), finish: part.plane });
        ThicknessField::over_facets(facets.collect()).map_err(|error| {
            Failure::new(Code::NotFinite, "finish").written(error.to_string()).remedy("check the finish")
        })
    }
}

/// What a facet and a zone have in common, as convex regions.
fn both(facet: &Region, zone: &Region) -> Vec<Region> {
    let pairs = facet.parts().iter().flat_map(|part| zone.parts().iter().map(move |of_zone| (part, of_zone)));
    let shared = pairs.map(|(part, of_zone)| common(part, of_zone));
    // What is too thin to be a region has no area to speak of; the sum of areas is held against the whole.
    shared.filter(|corners| corners.len() > 2).filter_map(region).collect()
}

fn region(corners: Vec<Point>) -> Option<Region> {
    Region::new(corners, Vec::new()).ok()
}
