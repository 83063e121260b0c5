//! The thickness of the overlay: finish less old slab, exactly.

use super::finish::{Finish, Laid};
use crate::failure::{Result, check};
use crate::geometry::Region;
use crate::note::{Note, NoteCode};
use crate::quantity::{Area, Length, Range, Typed, Volume, inches, number_in};
use crate::survey::Survey;
use crate::survey::surface::Extreme;

/// A depth asked about: within 100 m.
pub const DEPTH: Range = Range::closed(-100.0, 100.0);

/// A thickness and where it is.
#[derive(Clone, Debug, PartialEq)]
pub struct At {
    /// The thickness.
    pub thickness: Length,
    /// Distance from the left.
    pub x: Length,
    /// Distance from the front.
    pub y: Length,
    /// The number of the shot it is at, if it is at one; the survey has its name.
    pub shot: Option<usize>,
    /// The number of the facet it is on, the first being 0; none under one plane.
    pub facet: Option<usize>,
}

/// The thickness over an area.
#[derive(Clone, Debug, PartialEq)]
pub struct Thickness {
    /// The area.
    pub area: Area,
    /// Volume between old slab and finish, high spots taken off.
    pub net: Volume,
    /// Volume of fill: where the finish is above the old slab.
    pub fill: Volume,
    /// Volume of the old slab that stands above the finish.
    pub high: Volume,
    /// Net volume over area.
    pub mean: Length,
    /// The least thickness over the whole area.
    pub least: At,
    /// The least thickness between the shots, where the finish binds.
    pub least_measured: Option<At>,
    /// The greatest thickness over the whole area.
    pub greatest: At,
    /// Area thinner than the depth asked about.
    pub thinner: Option<Area>,
}

impl Thickness {
    /// The thickness under a finish over the whole survey, and the area thinner than a depth.
    ///
    /// # Errors
    /// A depth that is not finite; facets that leave a part of the work uncovered.
    pub fn of(survey: &Survey, finish: &Finish, thinner_than: Option<Length>) -> Result<Self> {
        Self::under(finish, &finish.laid_over(survey.surface())?, thinner_than)
    }

    /// The same within a zone.
    ///
    /// # Errors
    /// The same, and a zone that shares no area with the outline.
    pub fn within(
        survey: &Survey,
        zone: &Region,
        finish: &Finish,
        thinner_than: Option<Length>,
    ) -> Result<Self> {
        Self::under(finish, &finish.laid_within(survey.surface(), zone)?, thinner_than)
    }

    /// The thickness between the old slab and a new floor as surveyed, both within one plan edge; places are told by the facets
    /// of the plan.
    ///
    /// The work grows with the triangles of one times those of the other.
    ///
    /// # Errors
    /// A depth that is not finite; `AS_BUILT_OUTLINE`: another plan edge.
    pub fn between(new: &Survey, old: &Survey, plan: &Finish, thinner_than: Option<Length>) -> Result<Self> {
        Self::under(plan, &Laid::between(new.surface(), old.surface())?, thinner_than)
    }

    /// The same under a finish laid over a piece of the work.
    ///
    /// # Errors
    /// A depth that is not finite.
    pub(in crate::grade) fn under(
        finish: &Finish,
        laid: &Laid<'_>,
        thinner_than: Option<Length>,
    ) -> Result<Self> {
        let depth = thinner_than.map(|depth| check("thinner_than", depth, DEPTH)).transpose()?;
        let field = laid.thickness()?;
        Ok(Self {
            area: Area::from_base(field.area()),
            net: Volume::from_base(field.net()),
            fill: Volume::from_base(field.fill()),
            high: Volume::from_base(field.high_spots()),
            mean: Length::from_base(field.mean()),
            least: at(finish, &field.least()),
            least_measured: field.least_between_shots().map(|least| at(finish, &least)),
            greatest: at(finish, &field.greatest()),
            thinner: depth.map(|depth| Area::from_base(field.area_thinner_than(depth.base()))),
        })
    }

    /// What the reader must know.
    #[must_use]
    pub fn notes(&self) -> Vec<Note> {
        if self.high.base() <= 0.0 {
            return Vec::new();
        }
        let over = inches(-self.least.thickness, 8);
        let volume = number_in(self.high, &crate::quantity::volume::unit::cubic_yard, 2);
        vec![Note::new(
            NoteCode::HighSpots,
            format!("the old slab stands up to {over} above the finish, {volume} in all"),
        )]
    }
}

fn at(finish: &Finish, extreme: &Extreme) -> At {
    let [x, y] = [extreme.at.x, extreme.at.y].map(Length::from_base);
    let thickness = Length::from_base(extreme.value);
    At { thickness, x, y, shot: extreme.shot, facet: finish.facet_at(x, y) }
}
