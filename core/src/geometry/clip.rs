//! Convex polygons cut by straight lines.

use super::Point;

/// A straight line; what lies on its left is kept.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Line {
    at: Point,
    /// Unit vector square to the line, towards its left.
    inward: Point,
}

impl Line {
    /// The line from one place to another.
    #[inline]
    pub(crate) fn through(from: Point, to: Point) -> Self {
        let (dx, dy) = (to.x - from.x, to.y - from.y);
        // No `hypot`: lengths of a job are nowhere near where squares overflow.
        let scale = 1.0 / (dx * dx + dy * dy).sqrt();
        Self { at: from, inward: Point::new(-dy * scale, dx * scale) }
    }

    /// The line through a place, square to a unit vector that points to its left.
    #[inline]
    pub(crate) const fn square_to(at: Point, inward: Point) -> Self {
        Self { at, inward }
    }

    /// The place it was laid through.
    #[inline]
    pub(crate) const fn start(&self) -> Point {
        self.at
    }

    /// How far a place is from the line, positive on the left.
    #[inline]
    pub(crate) fn left(&self, x: f64, y: f64) -> f64 {
        (x - self.at.x) * self.inward.x + (y - self.at.y) * self.inward.y
    }
}

/// A corner of a polygon being cut.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Vertex {
    /// First coordinate.
    pub(crate) x: f64,
    /// Second coordinate.
    pub(crate) y: f64,
    /// Height, carried along straight edges.
    pub(crate) z: f64,
    /// The number of the corner it is, or `u32::MAX` where a cut made it.
    pub(crate) id: u32,
}

/// The number of a corner made by a cut.
pub(crate) const MADE: u32 = u32::MAX;

#[inline]
fn between(a: &Vertex, b: &Vertex, left_a: f64, left_b: f64) -> Vertex {
    let share = left_a / (left_a - left_b);
    Vertex {
        x: a.x + share * (b.x - a.x),
        y: a.y + share * (b.y - a.y),
        z: a.z + share * (b.z - a.z),
        id: MADE,
    }
}

/// Writes the part of a convex polygon on the left of a line into `kept`.
///
/// A corner within `hair` of the line counts as on it and is kept as it is.
pub(crate) fn keep_left(polygon: &[Vertex], line: &Line, hair: f64, kept: &mut Vec<Vertex>) {
    kept.clear();
    let Some(mut last) = polygon.last() else { return };
    let mut left_last = line.left(last.x, last.y);
    for corner in polygon {
        let left = line.left(corner.x, corner.y);
        if (left > hair && left_last < -hair) || (left < -hair && left_last > hair) {
            kept.push(between(last, corner, left_last, left));
        }
        if left >= -hair {
            kept.push(*corner);
        }
        (last, left_last) = (corner, left);
    }
}

/// Writes both parts of a convex polygon: on the left of a line and on its right.
pub(crate) fn split(
    polygon: &[Vertex],
    line: &Line,
    hair: f64,
    on_left: &mut Vec<Vertex>,
    on_right: &mut Vec<Vertex>,
) {
    on_left.clear();
    on_right.clear();
    let Some(mut last) = polygon.last() else { return };
    let mut left_last = line.left(last.x, last.y);
    for corner in polygon {
        let left = line.left(corner.x, corner.y);
        if (left > hair && left_last < -hair) || (left < -hair && left_last > hair) {
            let made = between(last, corner, left_last, left);
            on_left.push(made);
            on_right.push(made);
        }
        if left >= -hair {
            on_left.push(*corner);
        }
        if left <= hair {
            on_right.push(*corner);
        }
        (last, left_last) = (corner, left);
    }
}
