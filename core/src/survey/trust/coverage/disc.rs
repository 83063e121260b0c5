//! The area that a convex polygon and a disc share.

use crate::geometry::Point;
use crate::geometry::clip::Vertex;

/// The area of a polygon, counter-clockwise, within a distance of a place: the sum over its sides of the triangle from the
/// place, each cut at the circle into triangles and sectors.
pub(super) fn area_within(corners: &[Vertex], place: Point, radius: f64) -> f64 {
    let Some(last) = corners.last() else { return 0.0 };
    let seen = |corner: &Vertex| Point::new(corner.x - place.x, corner.y - place.y);
    let mut from = seen(last);
    let mut total = 0.0;
    for corner in corners {
        let to = seen(corner);
        total += side(from, to, radius);
        from = to;
    }
    total
}

/// The signed area between the middle of the disc and one side.
fn side(from: Point, to: Point, radius: f64) -> f64 {
    let (dx, dy) = (to.x - from.x, to.y - from.y);
    let (square, along) = (dx * dx + dy * dy, from.x * dx + from.y * dy);
    if square == 0.0 {
        return 0.0;
    }
    let reach = along * along - square * (from.x * from.x + from.y * from.y - radius * radius);
    if reach <= 0.0 {
        return sector(from, to, radius);
    }
    // Where the side enters and leaves the disc, as shares of the side.
    let root = reach.sqrt();
    let (enters, leaves) =
        (((-along - root) / square).clamp(0.0, 1.0), ((-along + root) / square).clamp(0.0, 1.0));
    let at = |share: f64| Point::new(from.x + share * dx, from.y + share * dy);
    let (inner, outer) = (at(enters), at(leaves));
    sector(from, inner, radius) + 0.5 * (inner.x * outer.y - inner.y * outer.x) + sector(outer, to, radius)
}

/// The signed area of the sector between two directions.
fn sector(from: Point, to: Point, radius: f64) -> f64 {
    let (cross, dot) = (from.x * to.y - from.y * to.x, from.x * to.x + from.y * to.y);
    0.5 * radius * radius * cross.atan2(dot)
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::f64::consts::PI;

    fn square(half: f64) -> Vec<Vertex> {
        let corner = |x: f64, y: f64| Vertex { x, y, z: 0.0, id: u32::MAX };
        vec![corner(-half, -half), corner(half, -half), corner(half, half), corner(-half, half)]
    }

    #[test]
    fn a_disc_and_a_square() {
        let middle = Point::default();
        // The disc in the square, the square in the disc, and the square in the middle between: geometry.
        assert!((area_within(&square(2.0), middle, 1.0) - PI).abs() < 1e-14);
        assert!((area_within(&square(1.0), middle, 2.0) - 4.0).abs() < 1e-14);
        let radius = 2.0 / 3.0_f64.sqrt();
        // Four triangles of half base r sin 30 and height 1, four sectors of 30 degrees.
        let expected = 4.0 * (radius * 0.5) + 4.0 * 0.5 * radius * radius * (PI / 6.0);
        assert!((area_within(&square(1.0), middle, radius) - expected).abs() < 1e-14);
        // A corner of the square at the middle of the disc: a quarter of it.
        assert!((area_within(&square(1.0), Point::new(1.0, 1.0), 0.5) - PI / 16.0).abs() < 1e-14);
        // Far away: nothing.
        assert!(area_within(&square(1.0), Point::new(9.0, 1.0), 0.5).abs() < 1e-14);
    }
}
