//! The triangulated surface of the old slab.

mod cut;
mod error;
mod note;
mod rules;
mod shot;

pub use cut::{Corner, Cut, Extreme, Ground, Integrals, Relief, Triangle};
pub use error::SurfaceError;
pub use note::{Note, SharedPlace};
pub use rules::Rules;
pub use shot::Shot;

use crate::geometry::{Fit, Point, Region};

/// The surface of the old slab over a region.
#[derive(Clone, Debug)]
pub struct Surface {
    whole: Cut,
    fit: Fit,
    notes: Vec<Note>,
}

impl Surface {
    /// The surface through shots in any order.
    ///
    /// # Errors
    /// See [`SurfaceError`].
    pub fn from_shots(_shots: &[Shot], _region: &Region, _rules: &Rules) -> Result<Self, SurfaceError> {
        unimplemented!()
    }

    /// The surface through a table of heights: row `r` and column `c` at `(xs[c], ys[r])`, `heights[r * xs.len() + c]`,
    /// which is also the shot's number. A missing height is a place that was not shot.
    ///
    /// # Errors
    /// See [`SurfaceError`].
    pub fn from_rows(
        _xs: &[f64],
        _ys: &[f64],
        _heights: &[Option<f64>],
        _region: &Region,
        _rules: &Rules,
    ) -> Result<Self, SurfaceError> {
        unimplemented!()
    }

    /// The surface over its whole region.
    #[must_use]
    pub fn whole(&self) -> &Cut {
        &self.whole
    }

    /// The surface over a part of its region; parts that tile the region add up to the whole.
    ///
    /// # Errors
    /// When the part and the region have no area in common.
    pub fn within(&self, _part: &Region) -> Result<Cut, SurfaceError> {
        unimplemented!()
    }

    /// The plane of least squares through the shots of the slab.
    #[must_use]
    pub fn fit(&self) -> &Fit {
        &self.fit
    }

    /// What the reader must know of this surface.
    #[must_use]
    pub fn notes(&self) -> &[Note] {
        &self.notes
    }

    /// How far each shot is above (or below) the fitted plane.
    pub fn residuals(&self) -> impl Iterator<Item = f64> + '_ {
        std::iter::empty()
    }

    /// The height of the old slab at a place, on extended ground too.
    #[must_use]
    pub fn height_at(&self, _place: Point) -> f64 {
        unimplemented!()
    }
}
