//! Places and areas in messages.

use crate::geometry::Point;
use crate::quantity::area::unit::square_foot;
use crate::quantity::length::unit::meter;
use crate::quantity::{Area, Length, Typed, feet_and_inches, number_in};

/// `x 10' 0", y 5' 0" (3.048 m, 1.524 m)`.
pub(super) fn place(at: Point) -> String {
    let [x, y] = [at.x, at.y].map(Length::from_base);
    let (feet_x, feet_y) = (feet_and_inches(x, 8), feet_and_inches(y, 8));
    format!("x {feet_x}, y {feet_y} ({}, {})", number_in(x, &meter, 3), number_in(y, &meter, 3))
}

/// An area, with digits enough for a small one.
pub(super) fn area(area: f64) -> String {
    number_in(Area::from_base(area), &square_foot, 4)
}
