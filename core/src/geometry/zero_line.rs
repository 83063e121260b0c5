//! A triangle with a linear thickness, split where the thickness is zero.
//!
//! With thickness `l` at one corner and `p`, `q` of the other sign at the others, the zero line cuts off at `l` a
//! triangle of the share `l/(l-p) * l/(l-q)` of the area, over which the mean thickness is `l/3`. (Geometry: the line
//! cuts both sides at the shares `l/(l-p)` and `l/(l-q)` of their lengths.)

use super::Sum;
use super::clip::{MADE, Vertex};

/// Volumes above and below zero over a triangle, both from 0 up.
#[inline]
pub(crate) fn volumes(area: f64, [a, b, c]: [f64; 3]) -> (f64, f64) {
    let third = area / 3.0;
    let net = third * (a + b + c);
    if a >= 0.0 && b >= 0.0 && c >= 0.0 {
        return (net, 0.0);
    }
    if a <= 0.0 && b <= 0.0 && c <= 0.0 {
        return (0.0, -net);
    }
    let (lone, p, q) = lone_first(a, b, c);
    let tip = third * lone * share(lone, p, q);
    // The tip has the sign of its corner; what is left of the net has the other.
    if lone > 0.0 { (tip, (tip - net).max(0.0)) } else { ((net - tip).max(0.0), -tip) }
}

/// Area over which the thickness is above zero.
#[inline]
pub(crate) fn area_above(area: f64, [a, b, c]: [f64; 3]) -> f64 {
    if a >= 0.0 && b >= 0.0 && c >= 0.0 {
        return area;
    }
    if a <= 0.0 && b <= 0.0 && c <= 0.0 {
        return 0.0;
    }
    let (lone, p, q) = lone_first(a, b, c);
    let tip = area * share(lone, p, q);
    if lone > 0.0 { tip } else { area - tip }
}

/// The corner whose sign is its own, then the other two in their order around; not all may have one sign.
fn lone_first(a: f64, b: f64, c: f64) -> (f64, f64, f64) {
    match (a > 0.0, b > 0.0, c > 0.0) {
        (true, false, false) | (false, true, true) => (a, b, c),
        (false, true, false) | (true, false, true) => (b, c, a),
        _ => (c, a, b),
    }
}

/// The share of the area that the zero line cuts off at the lone corner.
fn share(lone: f64, p: f64, q: f64) -> f64 {
    (lone / (lone - p)) * (lone / (lone - q))
}

/// What lies above zero, summed over triangles.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct Above {
    pub(crate) volume: Sum,
    pub(crate) area: Sum,
    pub(crate) moment_x: Sum,
    pub(crate) moment_y: Sum,
}

impl Above {
    /// Adds a triangle with corners `[x, y, thickness]`.
    pub(crate) fn add(&mut self, area: f64, corners: [[f64; 3]; 3]) {
        let [a, b, c] = corners.map(|corner| corner[2]);
        if a >= 0.0 && b >= 0.0 && c >= 0.0 {
            return self.whole(area, &corners, 1.0);
        }
        if a <= 0.0 && b <= 0.0 && c <= 0.0 {
            return;
        }
        let (lone, p, q) = lone_first(a, b, c);
        let tip_area = area * share(lone, p, q);
        let tip = tip(corners, lone);
        if lone > 0.0 {
            self.whole(tip_area, &tip, 1.0);
        } else {
            self.whole(area, &corners, 1.0);
            self.whole(tip_area, &tip, -1.0);
        }
    }

    /// Adds a triangle on one side of zero, or takes it off.
    fn whole(&mut self, area: f64, corners: &[[f64; 3]; 3], sign: f64) {
        let sum = |axis: usize| corners[0][axis] + corners[1][axis] + corners[2][axis];
        let third = sign * area / 3.0;
        self.area.add(sign * area);
        self.moment_x.add(third * sum(0));
        self.moment_y.add(third * sum(1));
        self.volume.add(third * sum(2));
    }
}

/// The triangle between the lone corner and the zero line.
fn tip(corners: [[f64; 3]; 3], lone: f64) -> [[f64; 3]; 3] {
    let is_lone = |corner: &[f64; 3]| (corner[2] > 0.0) == (lone > 0.0);
    let from = corners.into_iter().find(is_lone).unwrap_or(corners[0]);
    corners.map(|other| {
        if is_lone(&other) {
            return other;
        }
        let share = lone / (lone - other[2]);
        [from[0] + share * (other[0] - from[0]), from[1] + share * (other[1] - from[1]), 0.0]
    })
}

/// The part of a triangle, `z` being the thickness, over which it is above zero; fewer than three corners where it nowhere is.
pub(crate) fn above(triangle: [Vertex; 3]) -> Vec<Vertex> {
    let mut kept = Vec::with_capacity(4);
    keep_above(&triangle, &mut kept);
    kept
}

/// Writes the part of a convex polygon over which its `z`, plane over it, is above zero into `kept`; corners at zero are kept.
pub(crate) fn keep_above(polygon: &[Vertex], kept: &mut Vec<Vertex>) {
    kept.clear();
    let Some(mut last) = polygon.last() else { return };
    for corner in polygon {
        if (last.z > 0.0 && corner.z < 0.0) || (last.z < 0.0 && corner.z > 0.0) {
            let share = last.z / (last.z - corner.z);
            let (x, y) = (last.x + share * (corner.x - last.x), last.y + share * (corner.y - last.y));
            kept.push(Vertex { x, y, z: 0.0, id: MADE });
        }
        if corner.z >= 0.0 {
            kept.push(*corner);
        }
        last = corner;
    }
    // What only touches zero is no area.
    if kept.iter().all(|corner| corner.z <= 0.0) {
        kept.clear();
    }
}
