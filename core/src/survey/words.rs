//! Lengths in messages: feet and inches for the crew, metres beside them.

use crate::quantity::{Elevation, Length, Typed, feet_and_inches, length, number_in};

/// `5' 3 1/2" (1.6129 m)`, to the eighth of an inch and the tenth of a millimetre.
pub(crate) fn both(length: Length) -> String {
    said(length, 8, 4)
}

/// `15/32" (0.01219 m)`: for small differences, where [`both`] would round away what is wrong.
pub(crate) fn both_fine(length: Length) -> String {
    said(length, 32, 5)
}

/// An elevation as a length above the datum.
pub(crate) fn both_elevation(elevation: Elevation) -> String {
    both(Length::from_base(elevation.base()))
}

fn said(length: Length, denominator: u32, decimals: usize) -> String {
    let metres = number_in(length, &length::unit::meter, decimals);
    format!("{} ({metres})", feet_and_inches(length, denominator))
}
