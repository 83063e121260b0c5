//! Where the level reference line stands, told from what it was struck by.

use super::asked::SNAP;
use super::{Marks, SAME, place_words};
use crate::failure::{Code, Failure, Result};
use crate::geometry::Point;
use crate::quantity::{Elevation, Length, Typed};
use crate::survey::Survey;
use crate::survey::surface::Locator;

impl Marks {
    /// The elevation of a line so far above the old slab at a place; up to 6 in beside the work the nearest place of it counts.
    ///
    /// # Errors
    /// `POINT_OFF_WALL`: farther from the work than that. The path is empty: the caller knows where the place stands.
    pub fn line_above_old_slab(survey: &Survey, at: Point, height: Length) -> Result<Elevation> {
        let region = survey.outline().region();
        let nearest = region.nearest_run(at);
        let inside = region.contains(at);
        let place = if inside { at } else { nearest.at };
        let near = inside || nearest.distance <= SNAP + SAME;
        let spot = Locator::new(survey.surface().whole()).at(place).filter(|_| near);
        spot.map(|spot| Elevation::from_base(spot.height) + height).ok_or_else(|| {
            Failure::new(Code::PointOffWall, "")
                .written(place_words(at))
                .allowed("a place of the work, or up to 6\" off it (common practice, no source)")
                .remedy("check its x and y")
        })
    }
}
