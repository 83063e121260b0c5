//! The plane of least squares through the heights that are taken, and what it would be without one of them.

use super::Floor;
use crate::geometry::Point;

/// The plane, as the heights over it.
pub(super) struct Trend {
    /// Height over the plane, for every place.
    over: Vec<f64>,
    /// Every place seen from the middle of those taken.
    from_middle: Vec<Point>,
    /// The inverse of the moments about the middle: xx, xy, yy.
    inverse: [f64; 3],
    /// How many are taken.
    count: f64,
}

/// A share of a plane that one place alone holds: its leverage is never told nearer to one than this.
const LEAST_FREEDOM: f64 = 1e-6;

impl Trend {
    /// The plane through what is taken; level where the places do not span one.
    pub(super) fn new(floor: &Floor, heights: &[f64], taken: &[bool]) -> Self {
        let chosen = || (0..heights.len()).filter(|&place| taken[place]);
        let count = chosen().count().max(1) as f64;
        let mean = |of: &dyn Fn(usize) -> f64| chosen().map(of).sum::<f64>() / count;
        let middle = Point::new(mean(&|n| floor.places[n].x), mean(&|n| floor.places[n].y));
        let level = mean(&|n| heights[n]);
        let from_middle: Vec<Point> =
            floor.places.iter().map(|place| Point::new(place.x - middle.x, place.y - middle.y)).collect();
        let sum = |of: &dyn Fn(Point, f64) -> f64| {
            chosen().map(|n| of(from_middle[n], heights[n] - level)).sum::<f64>()
        };
        let (xx, xy, yy) = (sum(&|p, _| p.x * p.x), sum(&|p, _| p.x * p.y), sum(&|p, _| p.y * p.y));
        let (xz, yz) = (sum(&|p, z| p.x * z), sum(&|p, z| p.y * z));
        let determinant = xx * yy - xy * xy;
        let spans = determinant > 1e-12 * (xx + yy) * (xx + yy);
        let inverse = if spans { [yy / determinant, -xy / determinant, xx / determinant] } else { [0.0; 3] };
        let slope = [inverse[0] * xz + inverse[1] * yz, inverse[1] * xz + inverse[2] * yz];
        let over = heights
            .iter()
            .zip(&from_middle)
            .map(|(z, p)| z - level - slope[0] * p.x - slope[1] * p.y)
            .collect();
        Self { over, from_middle, inverse, count }
    }

    fn product(&self, a: Point, b: Point) -> f64 {
        let [xx, xy, yy] = self.inverse;
        a.x * (xx * b.x + xy * b.y) + a.y * (xy * b.x + yy * b.y)
    }

    fn freedom(&self, place: usize) -> f64 {
        let at = self.from_middle[place];
        (1.0 - 1.0 / self.count - self.product(at, at)).max(LEAST_FREEDOM)
    }

    /// The height of a place over the plane that the others make, and how strongly it pulled the plane.
    pub(super) fn without(&self, place: usize, taken: bool) -> (f64, f64) {
        let over = self.over[place];
        if !taken {
            return (over, 0.0);
        }
        let alone = over / self.freedom(place);
        (alone, alone)
    }

    /// The height of another place over the plane made without the one that pulled so strongly.
    pub(super) fn seen_from(&self, other: usize, place: usize, pull: f64) -> f64 {
        let leverage = 1.0 / self.count + self.product(self.from_middle[other], self.from_middle[place]);
        self.over[other] + leverage * pull
    }

    /// The variance that the slope of the plane gives over an arm, in shares of a reading's own.
    pub(super) fn variance_of_slope(&self, place: usize, arm: Point, taken: bool) -> f64 {
        let freedom = if taken { self.freedom(place) } else { 1.0 };
        self.product(arm, arm) / freedom
    }
}
