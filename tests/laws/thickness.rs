//! What the numbers of one thickness have to do with one another, and with those of a finish that is raised.

use super::assert_near;
use super::random::Random;
use super::work::works;
use overslab::quantity::System;

#[test]
fn fill_less_high_spots_is_net_and_net_over_area_is_the_mean() {
    let mut high_spots = 0;
    for (what, work) in works(8) {
        let found = work.measured(System::Si, 0.0);
        let volume = found.fill + found.high;
        assert_near(found.fill - found.high, found.net, volume, &what);
        assert_near(found.net / found.area, found.mean, 1.0, &what);
        assert!(found.fill >= 0.0 && found.high >= 0.0, "{what}: {found:?}");
        assert!(found.least <= found.mean && found.mean <= found.greatest, "{what}: {found:?}");
        assert_eq!(found.high > 0.0, found.least < 0.0, "{what}: {found:?}");
        assert_eq!(found.thinner > 0.0, found.least < 0.0, "{what}: {found:?}");
        high_spots += usize::from(found.high > 0.0);
    }
    assert!(high_spots > 10, "only {high_spots} have high spots");
}

#[test]
fn a_raised_finish_is_thicker_by_as_much_everywhere() {
    for (seed, (what, work)) in works(8).enumerate() {
        let by = Random::new(seed as u64).between(-0.08, 0.15);
        let (low, raised) =
            (work.measured(System::Si, 0.05), work.raised(by).measured(System::Si, 0.05 + by));
        assert_near(raised.least, low.least + by, 1.0, &what);
        assert_near(raised.greatest, low.greatest + by, 1.0, &what);
        assert_near(raised.mean, low.mean + by, 1.0, &what);
        assert_near(raised.net, low.net + by * low.area, low.fill + low.high + by.abs() * low.area, &what);
        assert_near(raised.thinner, low.thinner, low.area, &what);
    }
}

#[test]
fn the_area_thinner_than_a_depth_grows_with_it_from_nothing_to_the_whole() {
    for (what, work) in works(4) {
        let reach = work.measured(System::Si, 0.0);
        let mut before = 0.0;
        for step in 0..=20 {
            let depth = reach.least + (reach.greatest - reach.least) * f64::from(step) / 20.0;
            let thinner = work.measured(System::Si, depth).thinner;
            // Equal but for rounding where no part of the surface lies between two depths.
            assert!(thinner >= before - 1e-12 * reach.area, "{what}: {thinner} after {before}");
            before = thinner;
        }
        assert_near(work.measured(System::Si, reach.least).thinner, 0.0, reach.area, &what);
        assert_near(before, reach.area, reach.area, &what);
        assert_near(
            work.measured(System::Si, reach.greatest + 0.01).thinner,
            reach.area,
            1e-3 * reach.area,
            &what,
        );
    }
}
