//! What holds of every thinning.

use super::*;

/// Heights of 30 m are good to 4e-15 m; a height over a triangle is a mean of three with a few roundings.
const ROUNDED: f64 = 1e-12;

#[test]
fn the_surveyed_surface_stays_within_the_error_asked() {
    for seed in 0..6 {
        let points = floor(seed, 4_000, 0.0005);
        for (error, region) in [(0.002, None), (0.006, None), (0.003, Some(workshop()))] {
            let thinned = thin(&points, region.as_ref(), within(error)).expect("thinned");
            let region = region.unwrap_or_else(|| hull_of(&thinned));
            let off = farthest_off(&points, &thinned, &region);
            assert!(off <= error + 2e-9, "seed {seed}: {off} off, {error} asked");
            assert!(
                (off - thinned.error.base()).abs() <= ROUNDED,
                "seed {seed}: {off} off, {thinned:?} told"
            );
            assert!(thinned.kept.len() < points.len() / 3, "seed {seed}: {} kept", thinned.kept.len());
        }
    }
}

#[test]
fn on_a_grid_the_fans_of_the_cells_keep_the_error_too() {
    let points = grid(24, 17);
    for error in [0.0, 0.0005, 0.002, 0.01] {
        let thinned = thin(&points, None, within(error)).expect("thinned");
        let off = farthest_off(&points, &thinned, &hull_of(&thinned));
        assert!(off <= error + 2e-9 && (off - thinned.error.base()).abs() <= ROUNDED, "{error}: {off}");
    }
}

#[test]
fn a_number_of_points_is_kept_to_and_the_error_told_is_that_of_the_surface() {
    let points = floor(11, 6_000, 0.001);
    let mut last = f64::INFINITY;
    for count in [40, 160, 640] {
        let thinned = thin(&points, None, Asked::Count(count)).expect("thinned");
        assert_eq!(thinned.kept.len(), count);
        let off = farthest_off(&points, &thinned, &hull_of(&thinned));
        assert!((off - thinned.error.base()).abs() <= ROUNDED);
        assert!(off < last, "{count} points are {off} off, fewer were {last}");
        last = off;
        let worst = thinned.worst.expect("a point left out");
        assert!(thinned.kept.binary_search(&worst).is_err());
    }
}

#[test]
fn no_point_left_out_is_beyond_the_hull_of_those_kept() {
    let points = floor(5, 3_000, 0.001);
    let thinned = thin(&points, None, within(0.01)).expect("thinned");
    let hull = hull_of(&thinned);
    for number in 0..points.len() {
        let outside = hull.distance_outside(crate::survey::points::thin::place(&points, number as u32));
        assert!(outside <= 1e-12, "point {number} is {outside} outside");
    }
    assert!(thinned.hull >= 3 && thinned.hull <= thinned.kept.len());
}

#[test]
fn no_two_points_kept_are_one_place_of_a_survey() {
    // 20,000 points over a square metre are 7 mm apart: most are at one place with another.
    let mut random = Random::new(3);
    let mut points = Points::default();
    for _ in 0..20_000 {
        let Point { x, y } = random.point(1.0, 1.0);
        points.push([x, y, 0.01 * (7.0 * x).sin() * (5.0 * y).cos() + random.between(-0.0004, 0.0004)]);
    }
    let thinned = thin(&points, None, within(0.0015)).expect("thinned");
    let kept = &thinned.points;
    for a in 0..kept.len() {
        for b in 0..a {
            let apart = (kept.x[a] - kept.x[b]).hypot(kept.y[a] - kept.y[b]);
            assert!(apart > 0.0127 + 1e-9, "{apart} apart");
        }
    }
    let surface = surveyed(&thinned, &hull_of(&thinned));
    assert!(surface.notes().iter().all(|note| !matches!(note, crate::survey::surface::Note::Shared(_))));
    assert!(farthest_off(&points, &thinned, &hull_of(&thinned)) <= 0.0015 + 2e-9);
}

#[test]
fn the_order_of_the_points_does_not_count() {
    let points = floor(8, 3_000, 0.001);
    let mut order: Vec<usize> = (0..points.len()).collect();
    Random::new(1).shuffle(&mut order);
    let shuffled = crate::survey::points::pick(&points, &order);
    for asked in [within(0.004), Asked::Count(300)] {
        let one = thin(&points, None, asked).expect("thinned");
        let other = thin(&shuffled, None, asked).expect("thinned");
        let mut back: Vec<usize> = other.kept.iter().map(|&at| order[at]).collect();
        back.sort_unstable();
        assert_eq!(one.kept, back);
        assert_eq!(one.error, other.error);
    }
}

#[test]
fn far_from_the_origin_it_is_the_same_thinning() {
    // Whole powers of two, so that moving the points rounds no more than their last digits.
    let points = floor(21, 2_000, 0.001);
    let near = thin(&points, None, within(0.005)).expect("thinned");
    let mut far = points.clone();
    far.x.iter_mut().for_each(|x| *x += 524_288.0);
    far.y.iter_mut().for_each(|y| *y += 4_194_304.0);
    let far = thin(&far, None, within(0.005)).expect("thinned");
    let apart = near.kept.len().abs_diff(far.kept.len());
    assert!(apart <= near.kept.len() / 50, "{} and {} kept", near.kept.len(), far.kept.len());
}

#[test]
fn names_go_with_their_points() {
    let mut points = floor(2, 200, 0.001);
    points.names = (0..200).map(|index| (index % 2 == 0).then(|| format!("P{index}"))).collect();
    let thinned = thin(&points, None, Asked::Count(30)).expect("thinned");
    for (kept, name) in thinned.kept.iter().zip(&thinned.points.names) {
        assert_eq!(name.as_deref(), (kept % 2 == 0).then(|| format!("P{kept}")).as_deref());
    }
}
