//! The fields that shapes are made of: thickness, old slab, finish.

use super::sheet::{Layer, Sheet};
use crate::failure::{Code, Failure, Result};
use crate::geometry::{Plane, Point};
use crate::grade::finish::{Finish, Laid};
use crate::quantity::{Elevation, Length, Typed};
use crate::survey::Survey;
use crate::survey::surface::Cut;
use std::marker::PhantomData;

/// A field over the work that is linear over each triangle: a thickness ([`Length`]) or a height ([`Elevation`]).
#[derive(Clone, Debug)]
pub struct Field<Q> {
    pub(super) sheet: Sheet,
    quantity: PhantomData<Q>,
}

impl Field<Length> {
    /// The thickness of the overlay under a finish.
    ///
    /// # Errors
    /// `NOT_FINITE`, `FACETS_LEAVE_HOLE`: a finish that is not finite or does not cover the work.
    pub fn thickness(survey: &Survey, finish: &Finish) -> Result<Self> {
        Self::thickness_of(&finish.laid_over(survey.surface())?)
    }

    /// The thickness under a finish that is laid over the work.
    ///
    /// # Errors
    /// `NOT_FINITE`: a finish that is not finite.
    pub(in crate::grade) fn thickness_of(laid: &Laid<'_>) -> Result<Self> {
        Self::over_laid(laid, |finish, old| finish - old)
    }
}

impl Field<Elevation> {
    /// The height of the old slab.
    #[must_use]
    pub fn old_slab(survey: &Survey) -> Self {
        let ground = survey.surface().whole();
        let values: Vec<f64> = ground.nodes().iter().map(|node| node.z).collect();
        let reach = values.iter().fold(0.0, |reach: f64, value| reach.max(value.abs()));
        Self::of(&[Layer { ground, values, reach }])
    }

    /// The height of the finish over the work.
    ///
    /// # Errors
    /// `NOT_FINITE`, `FACETS_LEAVE_HOLE`: a finish that is not finite or does not cover the work.
    pub fn finish(survey: &Survey, finish: &Finish) -> Result<Self> {
        Self::over(survey, finish, |finish, _| finish)
    }
}

impl<Q: Typed> Field<Q> {
    fn of(layers: &[Layer<'_>]) -> Self {
        Self { sheet: Sheet::over(layers), quantity: PhantomData }
    }

    fn over(survey: &Survey, finish: &Finish, value: impl Fn(f64, f64) -> f64) -> Result<Self> {
        Self::over_laid(&finish.laid_over(survey.surface())?, value)
    }

    fn over_laid(laid: &Laid<'_>, value: impl Fn(f64, f64) -> f64) -> Result<Self> {
        let layers = laid.parts().iter().map(|part| layer(&part.ground, &part.plane, &value));
        Ok(Self::of(&layers.collect::<Result<Vec<_>>>()?))
    }

    /// The least and the greatest value.
    #[must_use]
    pub fn reach(&self) -> [Q; 2] {
        let (least, greatest) = self.sheet.reach();
        [Q::from_base(least), Q::from_base(greatest)]
    }
}

/// One cut under one plane, with what is made of finish and old slab at each of its nodes.
fn layer<'a>(ground: &'a Cut, plane: &Plane, value: impl Fn(f64, f64) -> f64) -> Result<Layer<'a>> {
    if !plane.is_finite() {
        return Err(Failure::new(Code::NotFinite, "finish")
            .written("a plane that is not a number")
            .allowed("finite heights and slopes")
            .remedy("check the finish"));
    }
    let origin = ground.origin();
    let plane = plane.moved_by(Point::new(-origin.x, -origin.y));
    let mut reach = 0.0_f64;
    let values = ground.nodes().iter().map(|node| {
        let finish = plane.height_at(Point::new(node.x, node.y));
        reach = reach.max(node.z.abs()).max(finish.abs());
        value(finish, node.z)
    });
    let values = values.collect();
    Ok(Layer { ground, values, reach })
}
