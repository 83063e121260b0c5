//! The coverage against figures that can be drawn, and against looks at many places.

use super::cells::Cells;
use crate::geometry::{Point, Region};
use crate::survey::varied::Varied;
use std::f64::consts::PI;

fn rectangle(width: f64, depth: f64) -> Region {
    Region::rectangle(Point::new(0.0, 0.0), Point::new(width, depth)).unwrap()
}

/// Four shots in the corners of a square: the middle is the farthest place, and the discs leave a star.
#[test]
fn a_square_with_a_shot_in_every_corner() {
    let corners =
        vec![Point::new(0.0, 0.0), Point::new(2.0, 0.0), Point::new(2.0, 2.0), Point::new(0.0, 2.0)];
    let mut cells = Cells::new(&rectangle(2.0, 2.0), corners, 1.0);
    let (far, at) = cells.farthest().unwrap();
    assert!((far - 2.0_f64.sqrt()).abs() < 1e-12 && at.distance(Point::new(1.0, 1.0)) < 1e-12);
    assert!((cells.uncovered() - (4.0 - PI)).abs() < 1e-12);
    cells.add(at);
    // The middles of the sides are now the farthest; the one in front comes first. Two discs meet in a lens.
    let (far, at) = cells.farthest().unwrap();
    assert!((far - 1.0).abs() < 1e-12 && at.distance(Point::new(1.0, 0.0)) < 1e-9, "{far} {at:?}");
    assert!(cells.uncovered().abs() < 1e-12);
}

/// The largest circle of an L with its notch: its middle may be a corner of the outline.
#[test]
fn a_corner_of_the_outline_may_be_farthest() {
    let corners = [(0.0, 0.0), (10.0, 0.0), (10.0, 4.0), (4.0, 4.0), (4.0, 10.0), (0.0, 10.0)];
    let outer = corners.map(|(x, y)| Point::new(x, y)).to_vec();
    let region = Region::new(outer, Vec::new()).unwrap();
    let shots = vec![Point::new(1.0, 1.0), Point::new(3.0, 1.0), Point::new(1.0, 3.0)];
    let cells = Cells::new(&region, shots, 1.0);
    let (far, at) = cells.farthest().unwrap();
    assert_eq!((at.x, at.y), (10.0, 4.0));
    assert!((far - 58.0_f64.sqrt()).abs() < 1e-12);
}

#[test]
fn against_looks_at_many_places() {
    let mut varied = Varied::new(11);
    for _ in 0..20 {
        let region = rectangle(8.0, 6.0);
        let count = varied.count(3, 30);
        let mut shots: Vec<Point> =
            (0..count).map(|_| Point::new(varied.between(-0.2, 8.2), varied.between(-0.2, 6.2))).collect();
        let mut cells = Cells::new(&region, shots.clone(), 1.0);
        for _ in 0..4 {
            let (far, at) = cells.farthest().unwrap();
            let nearest =
                |place: Point| shots.iter().map(|shot| shot.distance(place)).fold(f64::INFINITY, f64::min);
            assert!((nearest(at) - far).abs() < 1e-9);
            let (mut beyond, steps) = (0, 200);
            for column in 0..steps {
                for row in 0..steps {
                    let place = Point::new(
                        8.0 * (f64::from(column) + 0.5) / f64::from(steps),
                        6.0 * (f64::from(row) + 0.5) / f64::from(steps),
                    );
                    assert!(nearest(place) <= far + 1e-9);
                    beyond += i32::from(nearest(place) > 1.0);
                }
            }
            let sampled = f64::from(beyond) * 48.0 / f64::from(steps * steps);
            // A place counts or not: half a step along all borders, taken as random.
            assert!((cells.uncovered() - sampled).abs() < 0.1, "{} {sampled}", cells.uncovered());
            cells.add(at);
            shots.push(at);
        }
    }
}

/// The same to the last place, whatever the order of the shots.
#[test]
fn the_order_of_the_shots_changes_nothing() {
    let mut shots: Vec<Point> = (0..5)
        .flat_map(|row| (0..4).map(move |column| Point::new(f64::from(column) * 3.0, f64::from(row) * 2.0)))
        .collect();
    let next = |shots: &[Point]| {
        let mut cells = Cells::new(&rectangle(9.0, 8.0), shots.to_vec(), 1.0);
        let mut places = Vec::new();
        for _ in 0..8 {
            let (_, at) = cells.farthest().unwrap();
            cells.add(at);
            places.push((at.x.to_bits(), at.y.to_bits()));
        }
        places
    };
    let first = next(&shots);
    shots.reverse();
    shots.swap(3, 11);
    assert_eq!(next(&shots), first);
}
