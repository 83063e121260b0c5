//! Outlines from corners, walls and diagonals: known figures, laws, and what is refused.

mod diagonals;
mod named;
mod refused;
mod walls;

use super::Corner;
use crate::quantity::{Length, Typed, length::foot, length::inch, read};

/// Reads a length as the crew writes it.
pub(super) fn tape(text: &str) -> Length {
    read(text).unwrap()
}

pub(super) fn ft(number: f64) -> Length {
    Length::new::<foot>(number)
}

pub(super) fn inches(number: f64) -> Length {
    Length::new::<inch>(number)
}

/// Corners in feet.
pub(super) fn corners_ft(places: &[[f64; 2]]) -> Vec<Corner> {
    places.iter().map(|&[x, y]| Corner::new(ft(x), ft(y))).collect()
}

/// Each corner at its place in feet, but for the rounding of feet to metres.
#[track_caller]
pub(super) fn assert_corners(corners: &[Corner], places: &[[f64; 2]]) {
    assert_eq!(corners.len(), places.len());
    for (corner, place) in corners.iter().zip(corners_ft(places)) {
        assert!(corner.distance(place).base() < 1e-12, "{corners:?} are not at {places:?}");
    }
}

/// A name for each run.
pub(super) fn names(names: &[&str]) -> Vec<Option<String>> {
    names.iter().map(|name| Some((*name).to_owned())).collect()
}

/// Both within `allowed` metres of one another.
#[track_caller]
pub(super) fn assert_near(left: Length, right: Length, allowed: f64) {
    let apart = (left - right).base().abs();
    assert!(apart <= allowed, "{left:?} is {apart} m from {right:?}");
}
