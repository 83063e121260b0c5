//! Parts cut from one surface add up to the whole.

use super::assert_near;
use super::random::Random;
use super::work::{Measured, Place, works};
use overslab::quantity::System;

/// Strips that tile the plane far beyond the work, lying any way, by lines at these distances.
fn strips(random: &mut Random, lines: usize) -> Vec<Vec<Place>> {
    let (sin, cos) = random.between(0.0, 3.1).sin_cos();
    let mut at: Vec<f64> = (0..lines).map(|_| random.between(-4.0, 9.0)).collect();
    at.extend([-60.0, 60.0]);
    at.sort_by(f64::total_cmp);
    let strip = |pair: &[f64]| {
        let corner = |along: f64, across: f64| [cos * along - sin * across, sin * along + cos * across];
        vec![corner(pair[0], -60.0), corner(pair[1], -60.0), corner(pair[1], 60.0), corner(pair[0], 60.0)]
    };
    at.windows(2).map(strip).collect()
}

#[test]
fn strips_of_the_work_add_up_to_the_whole() {
    const DEPTH: f64 = 0.05;
    for (seed, (what, work)) in works(6).enumerate() {
        let mut random = Random::new(seed as u64 + 500);
        let whole = work.measured(System::Si, DEPTH);
        let count = 1 + random.below(4);
        let strips = strips(&mut random, count);
        // A strip may miss the work altogether, which is a failure of its own: only the others are parts.
        let reaches = |strip: &&Vec<Place>| {
            work.corners.iter().any(|corner| covers(strip, corner)) || crosses(strip, &work.corners)
        };
        let parts: Vec<Measured> =
            strips.iter().filter(reaches).map(|strip| work.within(System::Si, DEPTH, Some(strip))).collect();
        let sum = |part: fn(&Measured) -> f64| parts.iter().map(part).sum::<f64>();
        let volume = whole.fill + whole.high;
        assert_near(sum(|part| part.area), whole.area, whole.area, &format!("{what}: area"));
        assert_near(sum(|part| part.net), whole.net, volume, &format!("{what}: net"));
        assert_near(sum(|part| part.fill), whole.fill, volume, &format!("{what}: fill"));
        assert_near(sum(|part| part.high), whole.high, volume, &format!("{what}: high"));
        assert_near(sum(|part| part.thinner), whole.thinner, whole.area, &format!("{what}: thinner"));
        let least = parts.iter().map(|part| part.least).fold(f64::INFINITY, f64::min);
        let greatest = parts.iter().map(|part| part.greatest).fold(f64::NEG_INFINITY, f64::max);
        assert_near(least, whole.least, 1.0, &format!("{what}: least"));
        assert_near(greatest, whole.greatest, 1.0, &format!("{what}: greatest"));
    }
}

/// How far to the left of the line from one place to another a third is.
fn left_of([ax, ay]: &Place, [bx, by]: &Place, [x, y]: &Place) -> f64 {
    (bx - ax) * (y - ay) - (by - ay) * (x - ax)
}

fn covers(strip: &[Place], place: &Place) -> bool {
    (0..4).all(|side| left_of(&strip[side], &strip[(side + 1) % 4], place) > 1e-6)
}

/// Whether a strip without a corner of the work in it still has some of it: corners lie on both sides of it.
fn crosses(strip: &[Place], corners: &[Place]) -> bool {
    let beyond = |side: usize| {
        corners.iter().any(|corner| left_of(&strip[side], &strip[(side + 1) % 4], corner) < 0.0)
    };
    beyond(1) && beyond(3)
}
