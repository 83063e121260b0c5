//! What a slab on ground carries: concrete, subgrade, stress under loads, and the thickness that follows.

pub mod concrete;
pub mod contact;
pub mod curling;
pub mod fatigue;
pub mod influence;
pub mod line;
pub mod loads;
pub mod needed;
pub mod safety;
pub mod several;
pub mod slab;
pub mod subgrade;
#[cfg(test)]
mod tests;
pub mod two_layers;
pub mod uniform;
pub mod westergaard;

pub use slab::Slab;

/// Pounds per square inch, in pascals: the equations of the books are stated in it.
pub(crate) const PSI: f64 =
    crate::quantity::units::POUND_FORCE / (crate::quantity::units::INCH * crate::quantity::units::INCH);
/// Pounds per square foot, in pascals.
pub(crate) const PSF: f64 = PSI / 144.0;
/// Pounds per cubic inch, in pascals per metre.
pub(crate) const PCI: f64 = PSI / crate::quantity::units::INCH;
