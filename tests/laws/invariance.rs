//! Neither the order of the shots, nor where the axes lie, nor the units change what is measured.

use super::assert_near;
use super::random::Random;
use super::work::{Measured, Place, Work, works};
use overslab::quantity::System;

const DEPTH: f64 = 0.05;

fn assert_same(found: &Measured, expected: &Measured, what: &str) {
    let volume = expected.fill + expected.high;
    assert_near(found.area, expected.area, expected.area, &format!("{what}: area"));
    assert_near(found.net, expected.net, volume, &format!("{what}: net"));
    assert_near(found.fill, expected.fill, volume, &format!("{what}: fill"));
    assert_near(found.high, expected.high, volume, &format!("{what}: high"));
    assert_near(found.thinner, expected.thinner, expected.area, &format!("{what}: thinner"));
    // Thicknesses are some centimetres, differences of heights of 30 m: a billionth of a metre.
    assert_near(found.mean, expected.mean, 1.0, &format!("{what}: mean"));
    assert_near(found.least, expected.least, 1.0, &format!("{what}: least"));
    assert_near(found.greatest, expected.greatest, 1.0, &format!("{what}: greatest"));
}

fn check(change: impl Fn(&Work, &mut Random) -> Work, system: System) {
    for (seed, (what, work)) in works(6).enumerate() {
        let mut random = Random::new(seed as u64 + 100);
        let expected = work.measured(System::Si, DEPTH);
        assert!(expected.fill > 0.0, "{what}: nothing to measure");
        assert_same(&change(&work, &mut random).measured(system, DEPTH), &expected, &what);
    }
}

#[test]
fn any_order_of_the_shots_measures_the_same() {
    let shuffled = |work: &Work, random: &mut Random| {
        let mut work = work.clone();
        random.shuffle(&mut work.shots);
        work
    };
    check(shuffled, System::Si);
}

#[test]
fn any_first_corner_and_either_way_round_measures_the_same() {
    let turned = |work: &Work, random: &mut Random| {
        let mut work = work.clone();
        let by = random.below(work.corners.len());
        work.corners.rotate_left(by);
        work.corners.reverse();
        work.holes.iter_mut().for_each(|hole| hole.reverse());
        work
    };
    check(turned, System::Si);
}

fn rotated(angle: f64) -> impl Fn(Place) -> Place {
    let (sin, cos) = angle.sin_cos();
    move |[x, y]| [cos * x - sin * y, sin * x + cos * y]
}

#[test]
fn any_turn_of_the_axes_measures_the_same() {
    check(|work, random| work.seen(rotated(random.between(0.0, 6.3))), System::Si);
}

#[test]
fn any_place_of_the_origin_measures_the_same() {
    let moved = |work: &Work, random: &mut Random| {
        let (dx, dy) = (random.between(-900.0, 900.0), random.between(-900.0, 900.0));
        work.seen(|[x, y]| [x + dx, y + dy])
    };
    // A kilometre off the origin a place keeps 1e-13 m, a volume far more than its billionth.
    check(moved, System::Si);
}

#[test]
fn a_mirror_measures_the_same() {
    check(|work, _| work.seen(|[x, y]| [-x, y]), System::Si);
}

#[test]
fn another_datum_measures_the_same() {
    let lifted = |work: &Work, random: &mut Random| {
        let by = random.between(-30.0, 70.0);
        let mut work = work.raised(by);
        work.shots.iter_mut().for_each(|shot| shot[2] += by);
        work
    };
    check(lifted, System::Si);
}

#[test]
fn feet_measure_the_same_as_metres() {
    check(|work, _| work.clone(), System::Us);
}

#[test]
fn all_at_once_measures_the_same() {
    let changed = |work: &Work, random: &mut Random| {
        let (dx, dy) = (random.between(-90.0, 90.0), random.between(-90.0, 90.0));
        let turn = rotated(random.between(0.0, 6.3));
        let mut work = work.seen(|place| {
            let [x, y] = turn(place);
            [x + dx, dy - y]
        });
        random.shuffle(&mut work.shots);
        work
    };
    check(changed, System::Us);
}
