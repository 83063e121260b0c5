use super::support::*;
use crate::survey::surface::Locator;

fn ridge() -> Surface {
    // A roof with its ridge along x = 3, shot on the outline.
    let places = grid(&[0.0, 3.0, 6.0], &[0.0, 4.0], |x, _| 1.0 - 0.01 * (x - 3.0_f64).abs());
    surface(&places, &rectangle(6.0, 4.0))
}

#[test]
fn the_height_at_a_place_is_that_of_its_triangle() {
    let ridge = ridge();
    let locator = Locator::new(ridge.whole());
    for (x, y) in [(0.0, 0.0), (6.0, 4.0), (3.0, 2.0), (1.7, 3.1), (4.4, 0.0), (6.0, 1.0)] {
        let spot = locator.at(Point::new(x, y)).expect("inside or on the edge");
        assert!((spot.height - (1.0 - 0.01 * (x - 3.0_f64).abs())).abs() < 1e-12);
        assert_eq!(spot.ground, Ground::Surveyed);
    }
    for (x, y) in [(-0.1, 1.0), (3.0, 4.001), (f64::NAN, 1.0), (f64::INFINITY, 0.0)] {
        assert_eq!(locator.at(Point::new(x, y)), None);
    }
}

#[test]
fn a_section_is_straight_between_its_stretches_ends() {
    let ridge = ridge();
    let locator = Locator::new(ridge.whole());
    for (from, to) in [
        ((0.0, 1.0), (6.0, 3.0)),
        ((0.0, 0.0), (6.0, 4.0)),
        ((0.0, 0.0), (6.0, 0.0)),
        ((3.0, 0.0), (3.0, 4.0)),
    ] {
        let (from, to) = (Point::new(from.0, from.1), Point::new(to.0, to.1));
        let stretches = locator.along(from, to);
        assert!(stretches[0].from < 1e-12 && stretches[stretches.len() - 1].to > 1.0 - 1e-12);
        for pair in stretches.windows(2) {
            assert!((pair[0].to - pair[1].from).abs() < 1e-9, "no gaps");
            assert!((pair[0].height_to - pair[1].height_from).abs() < 1e-9, "no jumps");
        }
        for stretch in stretches {
            for (share, height) in [(stretch.from, stretch.height_from), (stretch.to, stretch.height_to)] {
                let x = from.x + share * (to.x - from.x);
                assert!((height - (1.0 - 0.01 * (x - 3.0).abs())).abs() < 1e-9);
            }
        }
    }
    assert!(locator.along(Point::new(1.0, 1.0), Point::new(1.0, 1.0)).is_empty());
    assert!(locator.along(Point::new(-1.0, 5.0), Point::new(7.0, 5.0)).is_empty());
}

#[test]
fn a_section_across_a_pit_has_a_gap() {
    let outline = with_holes(
        &[(0.0, 0.0), (6.0, 0.0), (6.0, 4.0), (0.0, 4.0)],
        &[&[(2.0, 1.0), (3.0, 1.0), (3.0, 3.0), (2.0, 3.0)]],
    );
    let surface = surface(&grid(&steps(0.0, 1.0, 7), &steps(0.0, 1.0, 5), |x, y| 0.01 * x * y), &outline);
    let stretches = Locator::new(surface.whole()).along(Point::new(-1.0, 2.0), Point::new(7.0, 2.0));
    let covered: f64 = stretches.iter().map(|stretch| stretch.to - stretch.from).sum();
    assert_close(covered * 8.0, 5.0, 1e-9);
    assert!(stretches.iter().any(|stretch| (stretch.to * 8.0 - 3.0).abs() < 1e-9));
    assert!(stretches.iter().any(|stretch| (stretch.from * 8.0 - 4.0).abs() < 1e-9));
}

#[test]
fn along_edges_that_end_at_different_places_on_both_sides_nothing_is_told_twice() {
    // The hull line y = 1 has other corners on its far side than the shots: cuts of the strips beyond it.
    let places = shots(&[
        (0.0, 1.0, 1.0),
        (2.0, 1.0, 1.02),
        (5.0, 1.0, 1.0),
        (6.0, 1.0, 1.01),
        (0.0, 4.0, 1.0),
        (6.0, 4.0, 1.0),
    ]);
    let surface = surface(&places, &rectangle(6.0, 4.0));
    let stretches = Locator::new(surface.whole()).along(Point::new(0.0, 1.0), Point::new(6.0, 1.0));
    assert_close(stretches.iter().map(|stretch| stretch.to - stretch.from).sum(), 1.0, 1e-9);
    assert!(stretches.windows(2).all(|pair| (pair[0].to - pair[1].from).abs() < 1e-9));
    let highest = stretches.iter().map(|stretch| stretch.height_to).fold(0.0, f64::max);
    assert_close(highest, 1.02, 1e-9);
}
