//! Convex polygons laid over one another: what they have in common, and what one leaves of the other.

use crate::geometry::clip::{Line, Vertex, keep_left, split};
use crate::geometry::predicates::cross;
use crate::geometry::{Point, Sum};

/// A convex polygon, its corners counter-clockwise.
pub(in crate::grade) type Convex = Vec<Point>;

/// What two convex polygons have in common; fewer than three corners where they have no area in common.
pub(in crate::grade) fn common(a: &[Point], b: &[Point]) -> Convex {
    let Some(&origin) = a.first() else { return Vec::new() };
    let (mut kept, hair) = (vertices(a, origin), hair(a, b));
    let mut next = Vec::new();
    for side in sides(b, origin) {
        keep_left(&kept, &side, hair, &mut next);
        std::mem::swap(&mut kept, &mut next);
        if kept.len() < 3 {
            return Vec::new();
        }
    }
    places(&kept, a, origin)
}

/// What a convex polygon leaves of another, as convex polygons.
pub(in crate::grade) fn left_over(a: &[Point], b: &[Point]) -> Vec<Convex> {
    let Some(&origin) = a.first() else { return Vec::new() };
    let (mut inside, hair) = (vertices(a, origin), hair(a, b));
    let mut rest = Vec::new();
    for side in sides(b, origin) {
        let (mut on_left, mut on_right) = (Vec::new(), Vec::new());
        split(&inside, &side, hair, &mut on_left, &mut on_right);
        if on_right.len() > 2 {
            rest.push(places(&on_right, a, origin));
        }
        inside = on_left;
        if inside.len() < 3 {
            // Nothing in common: the whole polygon is left, in one piece.
            return vec![a.to_vec()];
        }
    }
    rest
}

/// The parts of a convex polygon on the left of a line and on its right; fewer than three corners where there is none.
pub(super) fn halves(a: &[Point], from: Point, to: Point) -> [Convex; 2] {
    let Some(&origin) = a.first() else { return [Vec::new(), Vec::new()] };
    let line = Line::through(less(from, origin), less(to, origin));
    let (mut on_left, mut on_right) = (Vec::new(), Vec::new());
    split(&vertices(a, origin), &line, hair(a, a), &mut on_left, &mut on_right);
    [on_left, on_right].map(|half| if half.len() < 3 { Vec::new() } else { places(&half, a, origin) })
}

/// The area of a convex polygon.
pub(in crate::grade) fn area(corners: &[Point]) -> f64 {
    0.5 * fan(corners).map(|[a, b, c]| cross(a, b, c)).collect::<Sum>().value()
}

/// Its centroid.
pub(in crate::grade) fn centroid(corners: &[Point]) -> Point {
    let origin = corners.first().copied().unwrap_or_default();
    let (mut all, mut x, mut y) = (0.0, 0.0, 0.0);
    for [a, b, c] in fan(corners) {
        let share = cross(a, b, c);
        all += share;
        x += share * ((b.x - a.x) + (c.x - a.x)) / 3.0;
        y += share * ((b.y - a.y) + (c.y - a.y)) / 3.0;
    }
    if all > 0.0 { Point::new(origin.x + x / all, origin.y + y / all) } else { origin }
}

/// The convex hull of places, counter-clockwise, without corners that lie straight between others
/// (monotone chain: Andrew 1979).
pub(in crate::grade) fn hull(places: &[Point]) -> Convex {
    use crate::geometry::predicates::{by_place, turn};
    let mut sorted = places.to_vec();
    sorted.sort_by(by_place);
    let chain = |sorted: &mut dyn Iterator<Item = Point>| {
        let mut kept: Convex = Vec::new();
        for place in sorted {
            while let [.., before, last] = kept[..]
                && turn(before, last, place) <= 0.0
            {
                kept.pop();
            }
            kept.push(place);
        }
        kept.pop();
        kept
    };
    let mut hull = chain(&mut sorted.iter().copied());
    hull.extend(chain(&mut sorted.iter().rev().copied()));
    hull
}

fn fan(corners: &[Point]) -> impl Iterator<Item = [Point; 3]> + '_ {
    let first = corners.first().copied().unwrap_or_default();
    corners.windows(2).skip(1).map(move |pair| [first, pair[0], pair[1]])
}

/// Within so much of a line rounding decides.
fn hair(a: &[Point], b: &[Point]) -> f64 {
    let size = |corners: &[Point]| {
        let first = corners.first().copied().unwrap_or_default();
        corners.iter().map(|corner| corner.distance(first)).fold(0.0, f64::max)
    };
    32.0 * f64::EPSILON * size(a).max(size(b))
}

fn sides(corners: &[Point], origin: Point) -> impl Iterator<Item = Line> + '_ {
    let next = corners.iter().cycle().skip(1);
    corners.iter().zip(next).map(move |(from, to)| Line::through(less(*from, origin), less(*to, origin)))
}

fn less(place: Point, origin: Point) -> Point {
    Point::new(place.x - origin.x, place.y - origin.y)
}

/// Corners about an origin, each with its number.
fn vertices(corners: &[Point], origin: Point) -> Vec<Vertex> {
    let local =
        |(id, place): (u32, &Point)| Vertex { x: place.x - origin.x, y: place.y - origin.y, z: 0.0, id };
    (0..).zip(corners).map(local).collect()
}

/// The places of corners: of those that no cut made, the very places they had before.
fn places(corners: &[Vertex], before: &[Point], origin: Point) -> Convex {
    let made = |corner: &Vertex| Point::new(corner.x + origin.x, corner.y + origin.y);
    corners
        .iter()
        .map(|corner| before.get(corner.id as usize).copied().unwrap_or_else(|| made(corner)))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn square(x: f64, y: f64, side: f64) -> Convex {
        [(x, y), (x + side, y), (x + side, y + side), (x, y + side)].map(|(x, y)| Point::new(x, y)).to_vec()
    }

    #[test]
    fn what_is_common_and_what_is_left_add_up() {
        for (x, y, both) in
            [(1.0, 1.0, 1.0), (0.0, 0.0, 4.0), (2.0, 0.0, 0.0), (5.0, 5.0, 0.0), (-1.0, 0.5, 1.5)]
        {
            let (a, b) = (square(0.0, 0.0, 2.0), square(x, y, 2.0));
            let shared = area(&common(&a, &b));
            let left: f64 = left_over(&a, &b).iter().map(|part| area(part)).sum();
            assert!((shared - both).abs() < 1e-14 && (left - (4.0 - both)).abs() < 1e-14, "{x} {y}");
        }
        let middle = centroid(&common(&square(0.0, 0.0, 2.0), &square(1.0, 1.0, 2.0)));
        assert!(middle.distance(Point::new(1.5, 1.5)) < 1e-15);
    }

    #[test]
    fn a_hull_keeps_the_outermost_corners_only() {
        let mut places = square(0.0, 0.0, 2.0);
        places.extend([Point::new(1.0, 0.0), Point::new(1.0, 1.0), Point::new(0.0, 1.0)]);
        assert_eq!(hull(&places), square(0.0, 0.0, 2.0));
        let [left, right] = halves(&hull(&places), Point::new(1.0, 0.0), Point::new(1.0, 2.0));
        assert_eq!((area(&left), area(&right)), (2.0, 2.0));
    }
}
