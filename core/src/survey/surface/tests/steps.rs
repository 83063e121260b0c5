//! Steps: the surface has two heights along a line, and each side is a slab of its own.

use super::support::*;
use crate::survey::surface::{Locator, StepFlaw};

/// A quarter of an inch: far enough apart to tell the sides.
const APART: f64 = 0.25 * INCH;

fn marked(x: f64, y: f64, z: f64) -> Shot {
    Shot { step: true, ..Shot::new(x, y, z) }
}

/// A pair along the line `x`: the left side and the right side, `off` apart.
fn pair([x, y]: [f64; 2], left: f64, right: f64, off: f64) -> [Shot; 2] {
    [marked(x - 0.5 * off, y, left), marked(x + 0.5 * off, y, right)]
}

/// A step along x = 4 through shots over 8 by 6, `inset` from its edges; the left side is lower.
fn across(off: f64, inset: f64, height: impl Fn(f64, f64) -> f64, step: f64) -> Vec<Shot> {
    let mut shots = Vec::new();
    for y in [inset, 3.0, 6.0 - inset] {
        for x in [inset, 2.0, 6.0, 8.0 - inset] {
            shots.push(Shot::new(x, y, height(x, y) + if x > 4.0 { step } else { 0.0 }));
        }
        shots.extend(pair([4.0, y], height(4.0, y), height(4.0, y) + step, off));
    }
    shots
}

fn flaw(shots: &[Shot], region: &Region) -> StepFlaw {
    match refusal(shots, region) {
        SurfaceError::Step { flaw, .. } => flaw,
        other => panic!("{other}"),
    }
}

#[test]
fn both_sides_of_a_step_are_slabs_of_their_own() {
    for off in [0.0, APART] {
        let surface = surface(&across(off, 0.0, |_, _| 1.0, 0.1), &rectangle(8.0, 6.0));
        assert_close(volume(&surface), 24.0 * 1.0 + 24.0 * 1.1, 1e-13);
        assert_tiled(&surface);
        let locator = Locator::new(surface.whole());
        for (x, expected) in [(3.9999, 1.0), (4.0001, 1.1)] {
            for y in [0.1, 2.0, 3.0, 5.9] {
                assert_close(locator.at(Point::new(x, y)).expect("inside").height, expected, 1e-12);
            }
        }
        let steep =
            |triangle: crate::survey::surface::Triangle| triangle.plane().map_or(0.0, |p| p.steepest());
        assert!(surface.whole().triangles().map(steep).fold(0.0, f64::max) < 1e-12);
        assert!(surface.fit().plane.steepest() < 1e-12);
        let [Note::Step { least, greatest, toward: Some(toward), .. }] = surface.notes() else {
            panic!("{:?}", surface.notes())
        };
        assert_close(*least, 0.1, 1e-12);
        assert_close(*greatest, 0.1, 1e-12);
        assert!(across(off, 0.0, |_, _| 1.0, 0.1)[*toward].x > 4.0);
    }
}

#[test]
fn shifting_one_side_changes_the_volume_by_its_area() {
    let uneven = |x: f64, y: f64| 0.03 * (1.7 * x).sin() + 0.02 * (2.3 * y).cos();
    for inset in [0.0, 0.3] {
        for off in [0.0, APART] {
            let region = rectangle(8.0, 6.0);
            let low = volume(&surface(&across(off, inset, uneven, 0.2), &region));
            for more in [0.05, 0.3, 1.0] {
                let high = volume(&surface(&across(off, inset, uneven, 0.2 + more), &region));
                assert_close((high - low) / more, 24.0, 1e-11);
            }
        }
    }
}

#[test]
fn neither_order_nor_axes_change_a_step() {
    let uneven = |x: f64, y: f64| 0.03 * (1.7 * x).sin() + 0.02 * (2.3 * y).cos();
    for off in [0.0, APART] {
        let shots = across(off, 0.3, uneven, 0.2);
        let region = rectangle(8.0, 6.0);
        let straight = volume(&surface(&shots, &region));
        let backward: Vec<Shot> = shots.iter().rev().copied().collect();
        assert_eq!(volume(&surface(&backward, &region)), straight);
        for angle in [0.4, 1.9, 3.3] {
            let by = Point::new(-70.0, 41.0);
            let turned = surface(&moved_shots(&shots, angle, by), &moved_region(&region, angle, by));
            assert_close(volume(&turned), straight, 1e-11);
        }
        let feet: Vec<Shot> = shots
            .iter()
            .map(|shot| Shot { x: shot.x / FOOT * FOOT, y: shot.y / FOOT * FOOT, ..*shot })
            .collect();
        assert_close(volume(&surface(&feet, &region)), straight, 1e-11);
    }
}

#[test]
fn the_tributary_areas_of_both_sides_make_the_volume() {
    let uneven = |x: f64, y: f64| 0.03 * (1.7 * x).sin() + 0.02 * (2.3 * y).cos();
    for inset in [0.0, 0.3] {
        let shots = across(APART, inset, uneven, 0.2);
        let surface = surface(&shots, &rectangle(8.0, 6.0));
        let areas = surface.tributary_areas(surface.whole());
        let sum: f64 = areas.iter().zip(&shots).map(|(area, shot)| area * shot.z).sum();
        assert_close(sum, volume(&surface), 1e-11);
        let right: f64 = areas.iter().zip(&shots).filter(|(_, s)| s.x > 4.0).map(|(area, _)| area).sum();
        assert_close(right, 24.0, 1e-11);
    }
}

#[test]
fn a_step_may_bend() {
    // A raised pad in the corner beyond (3, 2), told by the places of its pairs.
    let level = |x: f64, y: f64| if x > 3.0 && y > 2.0 { 1.15 } else { 1.0 };
    let mut shots: Vec<Shot> = grid(&[0.0, 1.5, 5.5, 8.0], &[0.0, 1.0, 4.0, 6.0], level);
    for ([x, y], [dx, dy]) in [
        ([8.0, 2.0], [0.0, 1.0]),
        ([3.0, 2.0], [0.7, 0.7]),
        ([3.0, 4.0], [1.0, 0.0]),
        ([3.0, 6.0], [1.0, 0.0]),
    ] {
        let (dx, dy) = (0.5 * APART * dx, 0.5 * APART * dy);
        shots.extend([marked(x - dx, y - dy, 1.0), marked(x + dx, y + dy, 1.15)]);
    }
    let surface = surface(&shots, &rectangle(8.0, 6.0));
    assert_close(volume(&surface), 48.0 + 0.15 * 20.0, 1e-13);
}

#[test]
fn a_step_may_run_around_a_pad() {
    for off in [0.0, APART] {
        let mut shots =
            shots(&[(0.0, 0.0, 1.0), (8.0, 0.0, 1.0), (8.0, 6.0, 1.0), (0.0, 6.0, 1.0), (4.0, 3.0, 1.2)]);
        for [x, y] in [[2.0, 1.5], [6.0, 1.5], [6.0, 4.5], [2.0, 4.5], [4.0, 1.5], [4.0, 4.5]] {
            let inward =
                |value: f64, middle: f64| off * (middle - value).signum() * f64::from(value != middle);
            shots
                .extend([marked(x, y, 1.0), marked(x + inward(x, 4.0) * 0.5, y + inward(y, 3.0) * 0.5, 1.2)]);
        }
        let surface = surface(&shots, &rectangle(8.0, 6.0));
        // The line runs midway between both places.
        let (width, depth) = (4.0 - 0.5 * off, 3.0 - 0.5 * off);
        assert_close(volume(&surface), 48.0 + 0.2 * width * depth, 1e-3 * (off / APART) + 1e-12);
    }
}

#[test]
fn a_step_may_fade_out_inside_the_slab() {
    for twice in [false, true] {
        let mut shots = shots(&[
            (0.0, 0.0, 1.0),
            (8.0, 0.0, 1.0),
            (8.0, 6.0, 1.0),
            (0.0, 6.0, 1.0),
            (0.0, 3.0, 1.0),
            (8.0, 3.0, 1.0),
        ]);
        shots.extend(pair([4.0, 0.0], 1.0, 1.2, APART));
        shots.push(marked(4.0, 3.0, 1.0));
        if twice {
            shots.push(marked(4.0, 3.0, 1.0));
        }
        let surface = surface(&shots, &rectangle(8.0, 6.0));
        // On the right the lifted place is one corner of a cell of 4 by 3, which holds the mean of its corners.
        assert_close(volume(&surface), 48.0 + 12.0 * 0.2 / 4.0, 1e-12);
        let left = Locator::new(surface.whole()).at(Point::new(3.9, 0.5)).expect("inside").height;
        assert_close(left, 1.0, 1e-12);
        assert_tiled(&surface);
    }
}

#[test]
fn a_step_that_meets_the_corner_of_the_shots_parts_the_ground_beyond() {
    let level = |x: f64, y: f64| if y > x { 1.1 } else { 1.0 };
    let mut shots: Vec<Shot> = grid(&[0.5, 2.5, 4.5], &[0.5, 2.5, 4.5], level);
    shots.retain(|shot| shot.x != shot.y);
    for at in [0.5, 2.5, 4.5] {
        let off = 0.4 * APART;
        shots.extend([marked(at + off, at - off, 1.0), marked(at - off, at + off, 1.1)]);
    }
    let surface = surface(&shots, &rectangle(5.0, 5.0));
    assert_close(volume(&surface), 12.5 * 1.0 + 12.5 * 1.1, 1e-12);
    assert_tiled(&surface);
}

#[test]
fn a_step_may_end_at_a_notch() {
    // The step runs along x = 3 from the front wall to the side of the notch at y = 3.
    let corners =
        [(0.0, 0.0), (8.0, 0.0), (8.0, 6.0), (5.0, 6.0), (5.0, 3.0), (2.0, 3.0), (2.0, 6.0), (0.0, 6.0)];
    let level = |x: f64| if x > 3.0 { 1.2 } else { 1.0 };
    let mut shots: Vec<Shot> = corners.iter().map(|&(x, y)| Shot::new(x, y, level(x))).collect();
    shots.extend(pair([3.0, 0.0], 1.0, 1.2, APART));
    shots.extend(pair([3.0, 3.0], 1.0, 1.2, APART));
    let surface = surface(&shots, &region(&corners));
    assert_close(volume(&surface), 1.0 * (9.0 + 6.0) + 1.2 * (15.0 + 9.0), 1e-12);
}

#[test]
fn rows_given_twice_are_the_sides_of_a_step() {
    let (xs, ys) = ([0.5, 4.0, 7.5], [0.5, 2.0, 3.0, 3.0, 5.5]);
    let heights: Vec<Option<f64>> =
        (0..15).map(|i| Some(if i / 3 < 3 { 1.0 } else { 1.25 } + 0.001 * f64::from(i % 3))).collect();
    let region = rectangle(8.0, 6.0);
    let rows = Surface::from_stepped_rows(&xs, &ys, &heights, &region, &Rules::DEFAULT).expect("a surface");
    let flat = Surface::from_rows(
        &xs,
        &[0.5, 2.0, 3.0, 5.5],
        &(0..12).map(|i| Some(1.0 + 0.001 * f64::from(i % 3))).collect::<Vec<_>>(),
        &region,
        &Rules::DEFAULT,
    );
    assert_close(volume(&rows), volume(&flat.expect("a surface")) + 0.25 * 24.0, 1e-12);
    let slip = Surface::from_rows(&xs, &ys, &heights, &region, &Rules::DEFAULT);
    assert!(matches!(slip, Err(SurfaceError::TwoHeights { .. })));
    // Running the other way the same rows say the same.
    let backward: Vec<f64> = ys.iter().rev().copied().collect();
    let turned: Vec<Option<f64>> = heights.chunks(3).rev().flatten().copied().collect();
    let other = Surface::from_stepped_rows(&xs, &backward, &turned, &region, &Rules::DEFAULT);
    assert_close(volume(&other.expect("a surface")), volume(&rows), 1e-12);
    // The pair at the left wall is level: the step is lower there, and fades out.
    let mut fading = heights.clone();
    fading[9] = fading[6];
    let fading = Surface::from_stepped_rows(&xs, &ys, &fading, &region, &Rules::DEFAULT).expect("a surface");
    assert!(volume(&fading) < volume(&rows));
}

#[test]
fn a_grid_place_missing_on_one_side_of_a_step_is_refused() {
    let heights: Vec<Option<f64>> =
        (0..15).map(|i| (i != 7).then_some(if i / 3 < 3 { 1.0 } else { 1.25 })).collect();
    let made = Surface::from_stepped_rows(
        &[0.5, 4.0, 7.5],
        &[0.5, 2.0, 3.0, 3.0, 5.5],
        &heights,
        &rectangle(8.0, 6.0),
        &Rules::DEFAULT,
    );
    let error = made.expect_err("a refusal");
    assert!(matches!(error, SurfaceError::Step { shot: 10, flaw: StepFlaw::Unpaired, .. }), "{error}");
}

#[test]
fn several_shots_on_each_side_are_their_mean() {
    let mut shots = across(APART, 0.0, |_, _| 1.0, 0.1);
    shots.push(marked(4.0 - 0.5 * APART, 3.0, 1.002));
    shots.push(marked(4.0 + 0.5 * APART, 3.0, 1.103));
    let surface = surface(&shots, &rectangle(8.0, 6.0));
    let shared = surface.notes().iter().filter(|note| matches!(note, Note::Shared(_))).count();
    assert_eq!(shared, 2);
    // On each side the place in the middle is a corner of two cells of 2 by 3, and counts for a quarter of each.
    assert_close(volume(&surface), 50.4 + 3.0 * (0.001 + 0.0015), 1e-12);
}

#[test]
fn what_is_no_step_is_refused_by_its_flaw() {
    let region = rectangle(8.0, 6.0);
    let wall = || shots(&[(0.0, 0.0, 1.0), (8.0, 0.0, 1.1), (8.0, 6.0, 1.1), (0.0, 6.0, 1.0)]);
    let with = |more: &[Shot]| {
        let shots: Vec<Shot> = wall().into_iter().chain(more.iter().copied()).collect();
        flaw(&shots, &region)
    };
    let at = |y: f64| pair([4.0, y], 1.0, 1.1, APART);
    assert_eq!(with(&at(3.0)), StepFlaw::Alone);
    assert_eq!(with(&[at(0.0), at(4.0)].concat()), StepFlaw::EndsInside);
    assert_eq!(with(&[at(2.0), at(4.0)].concat()), StepFlaw::EndsInside);
    assert_eq!(with(&[marked(4.0, 3.0, 1.0)]), StepFlaw::Unpaired);
    // Partners two inches apart are no pairs.
    let wide: Vec<Shot> =
        [0.0, 3.0, 6.0].iter().flat_map(|&y| pair([4.0, y], 1.0, 1.1, 2.0 * INCH)).collect();
    assert_eq!(with(&wide), StepFlaw::Unpaired);
    // The partner in the middle was forgotten.
    let forgotten = [at(0.0).as_slice(), &[marked(4.0, 3.0, 1.0)], &at(6.0)].concat();
    assert_eq!(with(&forgotten), StepFlaw::Unpaired);
    let third = [at(0.0).as_slice(), &at(6.0), &[marked(4.0, 6.0, 1.3)]].concat();
    assert_eq!(with(&third), StepFlaw::ThreeHeights);
    let on_line = [at(0.0).as_slice(), &at(6.0), &[Shot::new(4.0, 3.0, 1.0)]].concat();
    assert_eq!(with(&on_line), StepFlaw::ThroughShot);
    let beside = [at(0.0).as_slice(), &at(6.0), &[Shot::new(4.0 + 0.4 * INCH, 3.0, 1.1)]].concat();
    assert_eq!(with(&beside), StepFlaw::ThroughShot);
}

#[test]
fn which_side_is_higher_is_not_guessed() {
    let region = rectangle(8.0, 6.0);
    let with = |left: f64, right: [f64; 2], off: [f64; 2]| {
        let mut shots =
            shots(&[(0.0, 0.0, left), (8.0, 0.0, right[0]), (8.0, 6.0, right[1]), (0.0, 6.0, left)]);
        shots.extend(pair([4.0, 0.0], 1.0, 1.1, off[0]));
        shots.extend(pair([4.0, 6.0], 1.0, 1.1, off[1]));
        Surface::from_shots(&shots, &region, &Rules::DEFAULT)
    };
    let flaw = |made: Result<Surface, SurfaceError>| match made {
        Err(SurfaceError::Step { flaw, .. }) => flaw,
        other => panic!("{other:?}"),
    };
    // Level ground around: a tie.
    assert_eq!(flaw(with(1.05, [1.05, 1.05], [0.0, 0.0])), StepFlaw::Undecided);
    // One end of the line is told by its places, the other way round at the other end.
    assert_eq!(flaw(with(1.05, [1.05, 1.05], [APART, -APART])), StepFlaw::Alone);
    // One pair's places are enough for the whole line.
    let told = with(1.05, [1.05, 1.05], [APART, 0.0]).expect("a surface");
    let locator = Locator::new(told.whole());
    let height = |x: f64| locator.at(Point::new(x, 3.0)).expect("inside").height;
    assert!(height(4.001) > 1.09 && height(3.999) < 1.01);
}

#[test]
fn stations_of_one_line_must_agree() {
    let mut shots = shots(&[(0.0, 0.0, 1.0), (8.0, 0.0, 1.1), (8.0, 6.0, 1.0), (0.0, 6.0, 1.1)]);
    for y in [0.0, 2.9, 3.1, 6.0] {
        shots.extend(pair([4.0, y], 1.0, 1.1, 0.0));
        let (left, right) = if y < 3.0 { (1.0, 1.1) } else { (1.1, 1.0) };
        shots.extend([Shot::new(3.0, y, left), Shot::new(5.0, y, right)]);
    }
    let kind = flaw(&shots, &rectangle(8.0, 6.0));
    assert!(matches!(kind, StepFlaw::Contradictory | StepFlaw::Undecided), "{kind:?}");
}
