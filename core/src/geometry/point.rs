//! A place in plan.

/// A place in plan, in metres.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Point {
    /// First plan axis.
    pub x: f64,
    /// Second plan axis, a quarter turn counter-clockwise from the first.
    pub y: f64,
}

impl Point {
    /// The place with these coordinates.
    #[must_use]
    pub const fn new(x: f64, y: f64) -> Self {
        Self { x, y }
    }

    /// Whether both coordinates are finite numbers.
    #[must_use]
    pub const fn is_finite(self) -> bool {
        self.x.is_finite() && self.y.is_finite()
    }

    /// How far it is to another place.
    #[inline]
    #[must_use]
    pub fn distance(self, other: Self) -> f64 {
        // Not `hypot`, which guards against squares too large or too small for a number at many times the cost.
        self.squared_distance(other).sqrt()
    }

    #[inline]
    pub(crate) fn squared_distance(self, other: Self) -> f64 {
        let (dx, dy) = (self.x - other.x, self.y - other.y);
        dx * dx + dy * dy
    }
}
