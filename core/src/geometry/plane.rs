//! Planes: through three points, and the best one through many.

use super::{Point, Sum};

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
        /// Root-mean-square spread along the line, in metres.
        length: f64,
        /// Root-mean-square spread across it, in metres.
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
    pub fn through(points: [[f64; 3]; 3]) -> Result<Self, PlaneError> {
        Ok(Fit::to(&points)?.plane)
    }

    /// Whether all its numbers are finite.
    #[must_use]
    pub const fn is_finite(&self) -> bool {
        self.origin.is_finite()
            && self.height.is_finite()
            && self.slope_x.is_finite()
            && self.slope_y.is_finite()
    }

    /// Height at the origin of the axes.
    #[must_use]
    pub fn a(&self) -> f64 {
        self.height_at(Point::default())
    }

    /// The place the plane is held about.
    #[must_use]
    pub const fn origin(&self) -> Point {
        self.origin
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

    /// The same plane where the origin of the axes is moved to `by` in other axes.
    pub(crate) fn moved_by(&self, by: Point) -> Self {
        let origin = Point::new(self.origin.x + by.x, self.origin.y + by.y);
        Self { origin, ..*self }
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
    pub fn to(points: &[[f64; 3]]) -> Result<Self, PlaneError> {
        if let Some(index) = points.iter().position(|point| !point.iter().all(|value| value.is_finite())) {
            return Err(PlaneError::NotFinite { index });
        }
        let plane = Scatter::of(points.iter().copied()).plane()?;
        let residual = |&[x, y, z]: &[f64; 3]| z - plane.height_at(Point::new(x, y));
        Ok(Self::of(plane, points.iter().map(residual).enumerate()))
    }

    /// A plane with the residuals of numbered points.
    pub(crate) fn of(plane: Plane, residuals: impl Iterator<Item = (usize, f64)>) -> Self {
        let mut fit = Self {
            plane,
            points: 0,
            rms: 0.0,
            highest: f64::MIN,
            highest_at: 0,
            lowest: f64::MAX,
            lowest_at: 0,
        };
        let mut squares = Sum::new();
        for (index, residual) in residuals {
            fit.points += 1;
            squares.add(residual * residual);
            if residual > fit.highest {
                (fit.highest, fit.highest_at) = (residual, index);
            }
            if residual < fit.lowest {
                (fit.lowest, fit.lowest_at) = (residual, index);
            }
        }
        fit.rms = (squares.value() / fit.points.max(1) as f64).sqrt();
        fit
    }
}

/// How points scatter about their mean.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Scatter {
    count: usize,
    mean: [f64; 3],
    xx: f64,
    xy: f64,
    yy: f64,
    xz: f64,
    yz: f64,
}

/// Points whose spread across their line is less than this share of the spread along it lie on the line: beyond
/// that the slope across would be made of rounding.
const NARROWEST: f64 = 1e-7;

impl Scatter {
    /// Sums over points `[x, y, z]`, in two passes: first the mean, then what is left about it.
    pub(crate) fn of(points: impl Iterator<Item = [f64; 3]> + Clone) -> Self {
        let (mut count, mut sums) = (0, [0.0; 3]);
        for point in points.clone() {
            count += 1;
            for (sum, value) in sums.iter_mut().zip(point) {
                *sum += value;
            }
        }
        let mean = sums.map(|sum| sum / (count.max(1) as f64));
        let mut scatter = Self { count, mean, xx: 0.0, xy: 0.0, yy: 0.0, xz: 0.0, yz: 0.0 };
        for point in points {
            let [x, y, z] = [point[0] - mean[0], point[1] - mean[1], point[2] - mean[2]];
            scatter.xx += x * x;
            scatter.xy += x * y;
            scatter.yy += y * y;
            scatter.xz += x * z;
            scatter.yz += y * z;
        }
        scatter
    }

    /// Root-mean-square spread in plan: along the longest direction and across it.
    fn spread(&self) -> (f64, f64) {
        let half_difference = (0.5 * (self.xx - self.yy)).hypot(self.xy);
        let along = 0.5 * (self.xx + self.yy) + half_difference;
        let across = if along > 0.0 { (self.determinant() / along).max(0.0) } else { 0.0 };
        let count = self.count.max(1) as f64;
        ((along / count).sqrt(), (across / count).sqrt())
    }

    /// Root-mean-square spread across the longest direction.
    pub(crate) fn width(&self) -> f64 {
        self.spread().1
    }

    /// Unit vector in the direction of the greatest spread.
    pub(crate) fn direction(&self) -> Point {
        let angle = 0.5 * (2.0 * self.xy).atan2(self.xx - self.yy);
        Point::new(angle.cos(), angle.sin())
    }

    fn determinant(&self) -> f64 {
        self.xx * self.yy - self.xy * self.xy
    }

    /// How much one unit of height at a place adds to both slopes of the plane.
    pub(crate) fn slopes_per_height(&self, x: f64, y: f64) -> (f64, f64) {
        let (x, y) = (x - self.mean[0], y - self.mean[1]);
        let determinant = self.determinant();
        ((self.yy * x - self.xy * y) / determinant, (self.xx * y - self.xy * x) / determinant)
    }

    /// The plane of least squares.
    pub(crate) fn plane(&self) -> Result<Plane, PlaneError> {
        if self.count < 3 {
            return Err(PlaneError::TooFew { points: self.count });
        }
        let (length, width) = self.spread();
        if width <= NARROWEST * length {
            return Err(PlaneError::Collinear { points: self.count, length, width });
        }
        let determinant = self.determinant();
        let slope_x = (self.yy * self.xz - self.xy * self.yz) / determinant;
        let slope_y = (self.xx * self.yz - self.xy * self.xz) / determinant;
        Ok(Plane::about(Point::new(self.mean[0], self.mean[1]), self.mean[2], slope_x, slope_y))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Three points at 100.00, 100.40 and 99.76 over (0,0), (20,0) and (0,24): slopes by hand 0.02 and -0.01.
    #[test]
    fn a_plane_goes_through_its_three_points() {
        let plane =
            Plane::through([[0.0, 0.0, 100.0], [20.0, 0.0, 100.4], [0.0, 24.0, 99.76]]).expect("a plane");
        assert!((plane.a() - 100.0).abs() < 1e-12);
        assert!((plane.b() - 0.02).abs() < 1e-14 && (plane.c() + 0.01).abs() < 1e-14);
        assert!((plane.height_at(Point::new(10.0, 12.0)) - 100.08).abs() < 1e-12);
        assert!((plane.steepest() - 0.0005_f64.sqrt()).abs() < 1e-14);
    }

    #[test]
    fn the_best_plane_through_a_twisted_square_is_level_with_its_twist_left_over() {
        let twisted = [[0.0, 0.0, 1.0], [2.0, 0.0, -1.0], [2.0, 2.0, 1.0], [0.0, 2.0, -1.0]];
        let far = twisted.map(|[x, y, z]| [x + 1e6, y - 2e6, z]);
        for points in [twisted, far] {
            let fit = Fit::to(&points).expect("a plane");
            assert!(fit.plane.steepest() < 1e-12);
            assert_eq!((fit.rms, fit.highest, fit.lowest), (1.0, 1.0, -1.0));
            assert_eq!((fit.highest_at, fit.lowest_at, fit.points), (0, 1, 4));
        }
    }

    #[test]
    fn points_that_make_no_plane_are_refused() {
        assert_eq!(Fit::to(&[]), Err(PlaneError::TooFew { points: 0 }));
        let refused = Plane::through([[0.0, 0.0, 1.0], [1.0, 1.0, 2.0], [3.0, 3.0, 1.0]]);
        assert!(matches!(refused, Err(PlaneError::Collinear { points: 3, .. })));
        let refused = Plane::through([[1.0, 1.0, 1.0]; 3]);
        assert!(matches!(refused, Err(PlaneError::Collinear { length: 0.0, .. })));
        let refused = Plane::through([[0.0, 0.0, 1.0], [1.0, f64::NAN, 2.0], [3.0, 3.0, 1.0]]);
        assert_eq!(refused, Err(PlaneError::NotFinite { index: 1 }));
    }
}
