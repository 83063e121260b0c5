//! The corners of the convex hull, by exact turns.

use super::super::Points;
use super::{ONE_PLACE, place};
use crate::geometry::Point;
use crate::geometry::predicates::{by_place, cross, turn};

/// In so many directions the farthest points are found first: what lies well within them is no corner.
const DIRECTIONS: usize = 16;

/// The corners of the convex hull counter-clockwise, by their numbers. Of corners within 1/2 in of one another the
/// first from the left is taken.
pub(super) fn corners(points: &Points, numbers: &[u32]) -> Vec<u32> {
    let mut outer = outermost(points, numbers);
    outer.sort_unstable_by(|&a, &b| {
        let height = |number: u32| points.z[number as usize];
        by_place(&place(points, a), &place(points, b))
            .then_with(|| height(a).total_cmp(&height(b)))
            .then(a.cmp(&b))
    });
    outer.dedup_by(|&mut next, &mut kept| place(points, next) == place(points, kept));
    let mut hull = chain(points, outer.iter().copied());
    let upper = chain(points, outer.iter().rev().copied());
    hull.pop();
    hull.extend(upper.iter().take(upper.len().saturating_sub(1)));
    apart(points, &hull)
}

/// The points that are not well within the polygon of the farthest in some directions.
fn outermost(points: &Points, numbers: &[u32]) -> Vec<u32> {
    let directions: [Point; DIRECTIONS] = std::array::from_fn(|index| {
        let angle = std::f64::consts::TAU * index as f64 / DIRECTIONS as f64;
        Point::new(angle.cos(), angle.sin())
    });
    let mut farthest = [(f64::NEG_INFINITY, 0); DIRECTIONS];
    if numbers.is_empty() {
        return Vec::new();
    }
    for &number in numbers {
        let at = place(points, number);
        for (direction, best) in directions.iter().zip(&mut farthest) {
            let along = direction.x * at.x + direction.y * at.y;
            if along > best.0 {
                *best = (along, number);
            }
        }
    }
    let polygon = farthest.map(|(_, number)| place(points, number));
    let side = |index: usize| [polygon[index], polygon[(index + 1) % DIRECTIONS]];
    let sides: Vec<[Point; 2]> = (0..DIRECTIONS).map(side).filter(|[from, to]| from != to).collect();
    // By more than rounding can be.
    let beyond = |[from, to]: [Point; 2], at: Point| cross(from, to, at) > 1e-6 * (1.0 + from.distance(to));
    let well_within = |at: Point| sides.len() > 2 && sides.iter().all(|&side| beyond(side, at));
    numbers.iter().copied().filter(|&number| !well_within(place(points, number))).collect()
}

/// The chain that turns left only, over points in order.
fn chain(points: &Points, ordered: impl Iterator<Item = u32>) -> Vec<u32> {
    let mut chain: Vec<u32> = Vec::new();
    for next in ordered {
        while let [.., before, last] = chain[..]
            && turn(place(points, before), place(points, last), place(points, next)) <= 0.0
        {
            chain.pop();
        }
        chain.push(next);
    }
    chain
}

/// The corners that are not within 1/2 in of one taken before. They stand in order around the hull, yet may be near
/// one another across it as well as along it.
fn apart(points: &Points, corners: &[u32]) -> Vec<u32> {
    let mut taken: Vec<u32> = Vec::with_capacity(corners.len());
    for &corner in corners {
        let at = place(points, corner);
        if taken.iter().all(|&other| place(points, other).distance(at) > ONE_PLACE) {
            taken.push(corner);
        }
    }
    taken
}
