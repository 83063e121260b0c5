//! Stress and deflection under one load on a large slab on springs, by Westergaard's equations, each form by name.
//!
//! The contact is a circle of radius `a`. At an edge the circle touches it from inside. A semicircle has its straight side on the edge, and `a`
//! is then the radius of the semicircle: at the same load and pressure it is sqrt(2) times the circle's.

mod blocks;
mod corner;
mod edge;
mod interior;
#[cfg(test)]
mod tests;

pub(crate) use blocks::{corner_block, edge_block, interior_block};
pub use corner::{CornerForm, CrackForm, STIFFNESS, corner, crack_distance};
pub use edge::{EdgeForm, edge, edge_1926};
pub use interior::interior;

pub(super) use corner::corner_on;
pub(super) use edge::edge_on;
#[cfg(test)]
pub(super) use interior::OF_STRESS;
pub(super) use interior::{GAMMA, interior_on};

use super::Slab;
use crate::failure::{Code, Failure, Result};
use crate::quantity::units::INCH;
use crate::quantity::{Length, Pressure, Typed};

/// What a load does to a slab.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bent {
    /// The greatest tensile stress.
    pub stress: Pressure,
    /// The settlement under the load.
    pub deflection: Length,
    /// The radius of relative stiffness.
    pub stiffness: Length,
}

impl Bent {
    #[inline]
    fn of(slab: &Slab, (stress, deflection): (f64, f64)) -> Self {
        Self {
            stress: Pressure::from_base(stress),
            deflection: Length::from_base(deflection),
            stiffness: slab.stiffness(),
        }
    }
}

/// Refuses a contact wider than `most` radii of stiffness: there the stress would come out too small, and negative in the end.
#[inline]
pub(super) fn narrow(radius: f64, slab: &Slab, most: f64) -> Result<()> {
    if fits(radius, slab, most) { Ok(()) } else { Err(too_wide("radius", radius, most * slab.square.sqrt())) }
}

/// Whether a contact is at most so many radii of relative stiffness.
#[inline(always)]
fn fits(radius: f64, slab: &Slab, most: f64) -> bool {
    radius * radius <= most * most * slab.square
}

/// The refusal of a contact that is too wide.
#[cold]
pub(super) fn too_wide(path: &str, radius: f64, most: f64) -> Box<Failure> {
    let said = |meters: f64| format!("{:.2} in", meters / INCH);
    Failure::new(Code::ContactTooWide, path)
        .written(said(radius))
        .allowed(format!("at most {} on this slab", said(most)))
        .remedy("a load on so wide a contact is a uniform load: figure it as one")
}
