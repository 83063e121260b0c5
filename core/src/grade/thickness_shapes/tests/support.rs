//! Surveys for the tests of shapes, zones and sections.

use crate::geometry::random::Random;
use crate::geometry::{Plane, Point, Sum};
use crate::grade::finish::Finish;
use crate::grade::thickness_shapes::Shape;
use crate::operation::record::Record;
use crate::quantity::{Length, Typed};
use crate::survey::Survey;
use serde_json::{Value as Json, json};

pub(in crate::grade) fn metres(value: f64) -> Length {
    Length::from_base(value)
}

fn corners(ring: &[[f64; 2]]) -> Json {
    ring.iter().map(|[x, y]| json!({ "x": format!("{x} m"), "y": format!("{y} m") })).collect()
}

/// A survey over corners with holes, by shots.
pub(in crate::grade) fn survey(outer: &[[f64; 2]], holes: &[Vec<[f64; 2]>], shots: &[[f64; 3]]) -> Survey {
    let holes: Vec<Json> = holes
        .iter()
        .enumerate()
        .map(|(n, ring)| json!({ "name": format!("pit {n}"), "corners": corners(ring) }))
        .collect();
    let shots: Vec<Json> = shots
        .iter()
        .map(|[x, y, z]| json!({ "x": format!("{x} m"), "y": format!("{y} m"), "elevation": format!("{z} m") }))
        .collect();
    let outline = json!({ "corners": corners(outer), "holes": holes });
    Survey::from_json(json!({ "outline": outline, "shots": shots, "beyond_allowed": true }))
        .expect("a survey")
}

/// A level or sloped finish.
pub(in crate::grade) fn plane(height: f64, rise_x: f64, rise_y: f64) -> Finish {
    Finish::of(Plane::new(height, rise_x, rise_y)).expect("a finish")
}

/// A survey of random shape (convex, notched, with holes) and a finish near it.
pub(in crate::grade) fn random(seed: u64) -> (Survey, Finish) {
    let mut random = Random::new(seed);
    let (w, d) = (random.between(5.0, 11.0), random.between(5.0, 11.0));
    let (u, v) = (w * random.between(0.4, 0.6), d * random.between(0.4, 0.6));
    let (mut outer, mut holes) = (vec![[0.0, 0.0], [w, 0.0], [w, d], [0.0, d]], Vec::new());
    match seed % 3 {
        0 => outer = vec![[0.0, 0.0], [w, 0.1 * d], [0.95 * w, d], [0.3 * w, 1.1 * d], [-0.1 * w, 0.7 * d]],
        1 => outer = vec![[0.0, 0.0], [w, 0.0], [w, v], [u, v], [u, d], [0.0, d]],
        _ => holes.push(vec![[u, v], [u + 0.8, v], [u + 0.8, v + 0.6], [u, v + 0.6]]),
    }
    let grid = seed.is_multiple_of(2);
    let mut shots = Vec::new();
    for n in 0..40 {
        let place = if grid {
            [0.3 + f64::from(n % 5) * (w - 0.6) / 4.0, 0.3 + f64::from(n / 5) * (d - 0.6) / 7.0]
        } else {
            [random.between(0.0, w), random.between(0.0, d)]
        };
        let inside = inside(&outer, place) && !holes.iter().any(|hole| inside(hole, place));
        if inside && shots.iter().all(|[x, y, _]: &[f64; 3]| (x - place[0]).hypot(y - place[1]) > 0.1) {
            let z = 30.0 + 0.01 * place[0] - 0.006 * place[1] + random.between(-0.02, 0.02);
            shots.push([place[0], place[1], z]);
        }
    }
    let finish =
        plane(30.05 + random.between(-0.02, 0.02), random.between(-0.01, 0.01), random.between(-0.01, 0.01));
    (survey(&outer, &holes, &shots), finish)
}

fn inside(ring: &[[f64; 2]], [x, y]: [f64; 2]) -> bool {
    let next = ring.iter().cycle().skip(1);
    let crossed = |([ax, ay], [bx, by]): &(&[f64; 2], &[f64; 2])| {
        (*ay > y) != (*by > y) && x < ax + (y - ay) / (by - ay) * (bx - ax)
    };
    ring.iter().zip(next).filter(crossed).count() % 2 == 1
}

/// The area of a polygon by its corners.
pub(in crate::grade) fn shoelace(shape: &Shape) -> f64 {
    shape.rings().map(|ring| ring_area(&places(ring))).collect::<Sum>().value()
}

/// The places of corners.
pub(in crate::grade) fn places(ring: &[crate::survey::outline::Corner]) -> Vec<Point> {
    ring.iter().map(|corner| corner.place()).collect()
}

/// The signed area of a ring.
pub(in crate::grade) fn ring_area(ring: &[Point]) -> f64 {
    let pairs = ring.iter().zip(ring.iter().cycle().skip(1));
    0.5 * pairs.map(|(a, b)| crate::geometry::predicates::cross(ring[0], *a, *b)).collect::<Sum>().value()
}

#[track_caller]
pub(in crate::grade) fn assert_near(value: f64, expected: f64, allowed: f64) {
    assert!((value - expected).abs() <= allowed, "{value} is not {expected} within {allowed:e}");
}
