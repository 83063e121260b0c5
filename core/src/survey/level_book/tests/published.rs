//! Published books.

use super::{assert_near, at_ft, at_m, coursework, ft, m};
use crate::quantity::elevation::{foot as elevation_foot, meter as elevation_meter};
use crate::quantity::length::foot;
use crate::survey::level_book::{LevelBook, Sight, reduce};

#[test]
fn coursework_loop_is_reduced_as_published() {
    let book = reduce(&coursework(Some(0.05))).unwrap();
    let heights = [103.10, 99.72, 101.52, 105.37];
    let elevations = [93.28, 92.76, 98.25, 94.95];
    for (setup, height) in book.setups.iter().zip(heights) {
        assert_near(setup.height_booked.get::<elevation_foot>(), height, 1e-9);
    }
    for (point, elevation) in book.points.iter().zip(elevations) {
        assert_near(point.booked.get::<elevation_foot>(), elevation, 1e-9);
    }
    let page = book.lines[0].page.unwrap();
    assert_near(page.backsights.get::<foot>(), 25.42, 1e-9);
    assert_near(page.foresights.get::<foot>(), 30.47, 1e-9);
    assert_near(page.rise.get::<foot>(), -5.05, 1e-9);
    let closure = book.lines[0].closure.as_ref().unwrap();
    assert_near(closure.misclosure.get::<foot>(), 0.04, 1e-9);
    assert_eq!(closure.on, "BM B");
    assert_eq!(book.taken().count(), 0);
}

#[test]
fn the_misclosure_is_shared_by_set_ups_passed() {
    let book = reduce(&coursework(Some(0.05))).unwrap();
    let shares: Vec<f64> = book.points.iter().map(|point| point.correction.get::<foot>()).collect();
    for (share, expected) in shares.iter().zip([-0.01, -0.02, -0.03, -0.04]) {
        assert_near(*share, expected, 1e-9);
    }
    assert_eq!(book.elevation_of("bm b").unwrap().get::<elevation_foot>(), 94.91);
    // Sights hang half way between the turning points before and behind them, and so do their instruments.
    let corrections = book.setups.iter().map(|s| (s.height - s.height_booked).get::<foot>());
    for (correction, expected) in corrections.zip([-0.005, -0.015, -0.025, -0.035]) {
        assert_near(correction, expected, 1e-9);
    }
}

// Surveying coursework problem, part A: 2156.77 + 2.67 - 6.72 = 2152.72 ft.
#[test]
fn coursework_catch_basin() {
    let book = LevelBook::single(at_ft("BM", 2156.77), ft(2.67), vec![Sight::point("basin", ft(6.72))], None);
    let book = reduce(&book).unwrap();
    assert_near(book.elevation_of("basin").unwrap().get::<elevation_foot>(), 2152.72, 1e-9);
    assert_eq!(book.lines[0].closure, None);
    assert_eq!(book.lines[0].page, None);
}

// Student higher-surveying report, checkerboard levelling: set-ups at points 1, 5 and 20, in metres. The report also lists
// a reading 1.075 with 40.165 at the first set-up; 41.260 - 1.075 = 40.185, a slip of the source.
#[test]
fn checkerboard_report() {
    type Shots = &'static [(f64, f64)];
    let setups: [(f64, f64, Shots); 3] = [
        (40.140, 1.120, &[(1.240, 40.020), (1.140, 40.120), (0.940, 40.320), (1.075, 40.185)]),
        (
            40.090,
            1.685,
            &[(1.390, 40.385), (1.470, 40.305), (1.520, 40.255), (1.570, 40.205), (1.660, 40.115)],
        ),
        (40.115, 1.220, &[(1.15, 40.185), (1.11, 40.225), (1.03, 40.305), (0.97, 40.365)]),
    ];
    for (known, back, shots) in setups {
        let sights = shots.iter().enumerate().map(|(i, (rod, _))| Sight::shot(format!("P{i}"), m(*rod)));
        let book = reduce(&LevelBook::single(at_m("point", known), m(back), sights.collect(), None)).unwrap();
        assert_near(book.setups[0].height.get::<elevation_meter>(), known + back, 1e-12);
        assert_eq!(book.slab_shots().count(), shots.len());
        for (point, (_, elevation)) in book.points.iter().zip(shots) {
            assert_near(point.elevation.get::<elevation_meter>(), *elevation, 1e-9);
        }
    }
}
