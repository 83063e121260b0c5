//! A finish lifted as a whole until it leaves a least thickness.

use super::at_least::LEAST;
use super::{Finish, Laid, STEP};
use crate::failure::{Result, check};
use crate::geometry::Point;
use crate::quantity::{Elevation, Length, Typed};
use crate::survey::Survey;
use crate::survey::old_slab::SlabPlace;
use crate::survey::surface::Ground;

/// A finish that was lifted, and the place that fixes it.
#[derive(Clone, Debug, PartialEq)]
pub struct Raised {
    /// The finish.
    pub finish: Finish,
    /// By how much it was lifted; less than nothing where it was lowered.
    pub by: Length,
    /// Where the thickness is least.
    pub at: SlabPlace,
    /// The facet there; none for one plane.
    pub facet: Option<usize>,
    /// How much of the lift is rounding.
    pub rounded_by: Length,
}

impl Finish {
    /// The finish lifted or lowered as a whole to where it just leaves `least` over the old slab everywhere between the shots: at
    /// shots, where the old slab's triangles meet an edge of a facet, and where they meet one another. Ground beyond the shots does
    /// not bind. With a step the lift is rounded up to whole steps, so that heights given in steps stay so.
    ///
    /// # Errors
    /// A thickness or a step outside its range; facets that do not cover the work.
    pub fn raised(&self, survey: &Survey, least: Length, step: Option<Length>) -> Result<Raised> {
        let least = check("least", least, LEAST)?.base();
        let step = step.map(|step| check("round", step, STEP)).transpose()?.map_or(0.0, Typed::base);
        let laid = self.laid_over(survey.surface())?;
        let highest = Highest::over(survey, &laid);
        let bare = highest.over + least;
        // A hair above a whole step is rounding, not another step.
        let by = if step > 0.0 { (bare / step - 1.0e-7).ceil() * step } else { bare };
        Ok(Raised {
            finish: self.moved_up(Length::from_base(by)),
            by: Length::from_base(by),
            at: highest.place(survey),
            facet: highest.facet,
            rounded_by: Length::from_base(by - bare),
        })
    }
}

/// Where the old slab stands highest over a finish.
#[derive(Clone, Copy, Debug)]
pub(super) struct Highest {
    /// By how much.
    pub(super) over: f64,
    at: Point,
    height: f64,
    shot: Option<usize>,
    facet: Option<usize>,
}

impl Highest {
    const NOTHING: Self =
        Self { over: f64::NEG_INFINITY, at: Point::new(0.0, 0.0), height: 0.0, shot: None, facet: None };

    /// Over all ground between the shots; for a work that lies wholly beyond them, over the shots alone.
    pub(super) fn over(survey: &Survey, laid: &Laid<'_>) -> Self {
        let mut worst = Self::NOTHING;
        for part in laid.parts() {
            let measured = part.ground.triangles().filter(|triangle| triangle.ground != Ground::Beyond);
            for corner in measured.flat_map(|triangle| triangle.corners) {
                let over = corner.height - part.plane.height_at(corner.at);
                worst.look(Self {
                    over,
                    at: corner.at,
                    height: corner.height,
                    shot: corner.shot,
                    facet: part.facet,
                });
            }
        }
        if worst.over > f64::NEG_INFINITY {
            return worst;
        }
        for (shot, [x, y], elevation) in survey.heights() {
            let at = Point::new(x.base(), y.base());
            for part in laid.parts() {
                let over = elevation.base() - part.plane.height_at(at);
                worst.look(Self { over, at, height: elevation.base(), shot: Some(shot), facet: part.facet });
            }
        }
        worst
    }

    /// At one height a shot is a better reason than a place on an edge, and the first a better one than the next.
    fn look(&mut self, next: Self) {
        if next.over > self.over + 1.0e-9
            || next.over > self.over - 1.0e-9 && self.shot.is_none() && next.shot.is_some()
        {
            *self = next;
        }
    }

    pub(super) fn place(&self, survey: &Survey) -> SlabPlace {
        SlabPlace {
            x: Length::from_base(self.at.x),
            y: Length::from_base(self.at.y),
            elevation: Elevation::from_base(self.height),
            shot: self.shot.map(|shot| survey.shots().name(shot)),
        }
    }
}
