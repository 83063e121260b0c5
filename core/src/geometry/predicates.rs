//! On which side, in which circle: decisions that rounding must not make.

use super::Point;
use robust::Coord;
use std::cmp::Ordering;

/// Relative rounding error of the plain in-circle determinant, as a share of the sum of its terms' magnitudes
/// (Shewchuk 1997, the first-stage bound of the adaptive test).
const IN_CIRCLE_BOUND: f64 = (10.0 + 96.0 * (f64::EPSILON / 2.0)) * (f64::EPSILON / 2.0);

#[inline]
const fn coord(point: Point) -> Coord<f64> {
    Coord { x: point.x, y: point.y }
}

/// Relative rounding error of the plain turn determinant (Ozaki et al. 2016, as in the `robust` crate).
const TURN_BOUND: f64 = 3.330_669_062_177_372e-16;

/// Positive where `a`, `b`, `c` turn counter-clockwise, negative where clockwise, zero exactly on one line.
#[inline(always)]
pub(crate) fn turn(a: Point, b: Point, c: Point) -> f64 {
    let left = (a.x - c.x) * (b.y - c.y);
    let right = (a.y - c.y) * (b.x - c.x);
    let determinant = left - right;
    // Nearly always the plain determinant decides; only then is nothing called.
    if determinant.abs() >= TURN_BOUND * (left + right).abs() { determinant } else { turn_exactly(a, b, c) }
}

#[cold]
fn turn_exactly(a: Point, b: Point, c: Point) -> f64 {
    robust::orient2d(coord(a), coord(b), coord(c))
}

/// Order by x, then y; for finite numbers.
#[inline]
pub(crate) fn by_place(a: &Point, b: &Point) -> Ordering {
    let along = |a: f64, b: f64| a.partial_cmp(&b).unwrap_or(Ordering::Equal);
    along(a.x, b.x).then_with(|| along(a.y, b.y))
}

/// Twice the signed area of a triangle, rounded.
#[inline]
pub(crate) fn cross(a: Point, b: Point, c: Point) -> f64 {
    (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)
}

/// Positive where `d` is inside the circle through the counter-clockwise `a`, `b`, `c`; exact in sign.
pub(crate) fn in_circle_exactly(a: Point, b: Point, c: Point, d: Point) -> f64 {
    robust::incircle(coord(a), coord(b), coord(c), coord(d))
}

/// The in-circle determinant and how far rounding can have moved it.
#[inline(always)]
pub(crate) fn in_circle(a: Point, b: Point, c: Point, d: Point) -> (f64, f64) {
    let (ax, ay) = (a.x - d.x, a.y - d.y);
    let (bx, by) = (b.x - d.x, b.y - d.y);
    let (cx, cy) = (c.x - d.x, c.y - d.y);
    let (a2, b2, c2) = (ax * ax + ay * ay, bx * bx + by * by, cx * cx + cy * cy);
    let (bc, cb) = (bx * cy, cx * by);
    let (ca, ac) = (cx * ay, ax * cy);
    let (ab, ba) = (ax * by, bx * ay);
    let determinant = a2 * (bc - cb) + b2 * (ca - ac) + c2 * (ab - ba);
    let magnitude = a2 * (bc.abs() + cb.abs()) + b2 * (ca.abs() + ac.abs()) + c2 * (ab.abs() + ba.abs());
    (determinant, IN_CIRCLE_BOUND * magnitude)
}
