//! Planes: through three points, and the best one through many.

use super::Point;

/// The plane `z = a + b x + c y`, kept about a local origin so that far-away coordinates cost no digits.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plane {
    origin: Point,
    height: f64,
    slope_x: f64,
    slope_y: f64,
}

/// Why no plane goes through the points.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum PlaneError {
    /// A coordinate is not a finite number.
    #[error("point {index} has a coordinate that is not a number")]
    NotFinite {
        /// Which point.
        index: usize,
    },
    /// Fewer than three points.
    #[error("a plane needs 3 points, {points} given")]
    TooFew {
        /// How many there are.
        points: usize,
    },
    /// The points lie on one line in plan (or nearly), so the slope across it is unknown.
    #[error("the {points} points spread {length} m along one line and only {width} m across it")]
    Collinear {
        /// How many there are.
        points: usize,
        /// Root-mean-square spread along the line.
        length: f64,
        /// Root-mean-square spread across it.
        width: f64,
    },
}

impl Plane {
    /// The plane `z = a + b x + c y`.
    #[must_use]
    pub const fn new(a: f64, b: f64, c: f64) -> Self {
        Self { origin: Point::new(0.0, 0.0), height: a, slope_x: b, slope_y: c }
    }

    /// The plane of height `height` at `origin`, rising by `slope_x` and `slope_y` along the axes.
    #[must_use]
    pub const fn about(origin: Point, height: f64, slope_x: f64, slope_y: f64) -> Self {
        Self { origin, height, slope_x, slope_y }
    }

    /// The plane through three points `[x, y, z]`.
    ///
    /// # Errors
    /// When a coordinate is not finite or the three lie on one line in plan.
    pub fn through(_points: [[f64; 3]; 3]) -> Result<Self, PlaneError> {
        unimplemented!()
    }

    /// Height at the origin of the axes.
    #[must_use]
    pub fn a(&self) -> f64 {
        self.height_at(Point::default())
    }

    /// Rise per unit of x.
    #[must_use]
    pub const fn b(&self) -> f64 {
        self.slope_x
    }

    /// Rise per unit of y.
    #[must_use]
    pub const fn c(&self) -> f64 {
        self.slope_y
    }

    /// The height at a place.
    #[inline]
    #[must_use]
    pub fn height_at(&self, place: Point) -> f64 {
        self.height + self.slope_x * (place.x - self.origin.x) + self.slope_y * (place.y - self.origin.y)
    }

    /// The steepest rise per unit of length, in whatever direction it goes.
    #[must_use]
    pub fn steepest(&self) -> f64 {
        self.slope_x.hypot(self.slope_y)
    }
}

/// The plane of least squares and how far the points are from it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fit {
    /// The plane.
    pub plane: Plane,
    /// How many points it was fitted to.
    pub points: usize,
    /// Root of the mean squared residual.
    pub rms: f64,
    /// Greatest residual (point above the plane).
    pub highest: f64,
    /// Which point that is.
    pub highest_at: usize,
    /// Least residual (negative: point below the plane).
    pub lowest: f64,
    /// Which point that is.
    pub lowest_at: usize,
}

impl Fit {
    /// The plane of least squares through points `[x, y, z]`.
    ///
    /// # Errors
    /// When a coordinate is not finite, there are fewer than three points, or they lie on one line.
    pub fn to(_points: &[[f64; 3]]) -> Result<Self, PlaneError> {
        unimplemented!()
    }
}
