//! Points and requests that make no sense, and those that are odd but lawful.

use super::*;
use crate::failure::Code;

fn refused(points: &Points, asked: Asked) -> Code {
    thin(points, None, asked).expect_err("refused").code
}

fn of(places: &[[f64; 3]]) -> Points {
    let mut points = Points::default();
    places.iter().for_each(|&place| points.push(place));
    points
}

#[test]
fn points_that_make_no_surface_are_refused() {
    assert_eq!(refused(&Points::default(), within(0.01)), Code::EmptyList);
    assert_eq!(refused(&of(&[[0.0; 3], [1.0, 0.0, 0.0]]), within(0.01)), Code::TooFewShots);
    let heap = of(&vec![[3.0, 4.0, 5.0]; 100_000]);
    assert_eq!(refused(&heap, within(0.01)), Code::TooFewShots);
    assert_eq!(refused(&heap, Asked::Count(10)), Code::TooFewShots);
    let line: Vec<_> =
        (0..1000).map(|step| [0.1 * f64::from(step), 0.003 * f64::from(step % 3), 0.0]).collect();
    assert_eq!(refused(&of(&line), within(0.01)), Code::CollinearShots);
    let slanted: Vec<_> = (0..1000).map(|step| [0.1 * f64::from(step), 0.3 * f64::from(step), 0.0]).collect();
    assert_eq!(refused(&of(&slanted), Asked::Count(10)), Code::CollinearShots);
}

#[test]
fn numbers_that_are_none_are_refused_with_their_place() {
    for bad in [f64::NAN, f64::INFINITY, -1e300] {
        for axis in 0..3 {
            let mut points = floor(1, 50, 0.001);
            [&mut points.x, &mut points.y, &mut points.z][axis][17] = bad;
            let failure = thin(&points, None, within(0.01)).expect_err("refused");
            assert_eq!((failure.code, failure.path.as_str()), (Code::NotFinite, ["x", "y", "z"][axis]));
            assert_eq!(failure.place, crate::failure::Place::Index(17));
        }
    }
    let mut short = floor(1, 50, 0.001);
    short.z.pop();
    assert_eq!(refused(&short, within(0.01)), Code::LengthMismatch);
}

#[test]
fn errors_that_cannot_be_asked_are_refused() {
    let points = floor(1, 50, 0.001);
    assert_eq!(refused(&points, within(-0.001)), Code::OutOfRange);
    assert_eq!(refused(&points, within(f64::NAN)), Code::NotFinite);
    assert_eq!(refused(&points, within(f64::INFINITY)), Code::NotFinite);
}

#[test]
fn fewer_points_than_the_hull_needs_are_refused_with_its_number() {
    let points = floor(1, 500, 0.001);
    let hull = thin(&points, None, within(1.0)).expect("thinned").hull;
    let failure = thin(&points, None, Asked::Count(hull - 1)).expect_err("refused");
    assert_eq!(failure.code, Code::ThinningCount);
    assert!(failure.allowed.contains(&format!("at least {hull}")), "{failure}");
    assert_eq!(thin(&points, None, Asked::Count(hull)).expect("thinned").kept.len(), hull);
}

#[test]
fn an_error_beyond_the_relief_keeps_the_hull_alone() {
    let points = floor(4, 2_000, 0.001);
    let thinned = thin(&points, None, within(1.0)).expect("thinned");
    assert_eq!(thinned.kept.len(), thinned.hull);
    assert!(thinned.error.base() < 0.1);
}

#[test]
fn a_level_floor_needs_its_hull_alone_even_within_nothing() {
    let mut points = floor(4, 2_000, 0.0);
    points.z.iter_mut().for_each(|z| *z = 30.0);
    let thinned = thin(&points, None, within(0.0)).expect("thinned");
    assert_eq!(thinned.kept.len(), thinned.hull);
    assert!(thinned.error.base() <= 1e-9);
}

#[test]
fn within_nothing_every_point_is_kept_that_is_a_place_of_its_own() {
    let points = grid(9, 8);
    let thinned = thin(&points, None, within(0.0)).expect("thinned");
    assert!(thinned.kept.len() > 60);
    assert!(thinned.error.base() <= 1e-9);
    let all = thin(&points, None, Asked::Count(10_000)).expect("thinned");
    assert!(all.error.base() <= 1e-9);
}

#[test]
fn points_at_one_place_that_differ_by_more_than_asked_are_named() {
    let mut points = floor(4, 300, 0.0);
    points.push([4.0, 3.0, 30.0]);
    points.push([4.0, 3.002, 30.2]);
    let failure = thin(&points, None, within(0.005)).expect_err("refused");
    assert_eq!(failure.code, Code::ThinningUnreachable);
    assert!(failure.written.contains("point 301") && failure.written.contains("point 302"), "{failure}");
    // To a number of points it can be thinned; the error tells that one of them is far off.
    assert!(thin(&points, None, Asked::Count(100)).expect("thinned").error.base() > 0.1);
}

#[test]
fn a_hundred_thousand_points_at_one_place_of_a_floor_are_one_of_it() {
    let mut points = floor(4, 300, 0.0);
    (0..100_000).for_each(|_| points.push([4.0, 3.0, 29.96]));
    let thinned = thin(&points, None, within(0.003)).expect("thinned");
    assert!(thinned.kept.len() <= 301);
    assert!(farthest_off(&points, &thinned, &hull_of(&thinned)) <= 0.003 + 2e-9);
}

#[test]
fn points_outside_the_outline_are_told_not_lost() {
    let points = floor(6, 2_000, 0.001);
    let region = workshop();
    let thinned = thin(&points, Some(&region), within(0.004)).expect("thinned");
    let outside: Vec<usize> = (0..points.len())
        .filter(|&number| region.distance_outside(super::super::place(&points, number as u32)) > 0.0127)
        .collect();
    assert_eq!(thinned.outside, outside);
    let away = Region::rectangle(Point::new(50.0, 50.0), Point::new(60.0, 60.0)).expect("a region");
    assert_eq!(thin(&points, Some(&away), within(0.004)).expect_err("refused").code, Code::TooFewShots);
}
