//! Fixed lengths of the trade, as constants.

use crate::quantity::Length;
use crate::quantity::units::{FOOT, INCH};
use std::marker::PhantomData;

/// So many metres.
pub(crate) const fn metres(number: f64) -> Length {
    Length { dimension: PhantomData, units: PhantomData, value: number }
}

/// So many inches.
pub(crate) const fn inches(number: f64) -> Length {
    metres(number * INCH)
}

/// So many feet.
pub(crate) const fn feet(number: f64) -> Length {
    metres(number * FOOT)
}
