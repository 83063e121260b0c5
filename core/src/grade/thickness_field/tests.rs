use super::*;
use crate::geometry::Region;
use crate::geometry::random::Random;
use crate::survey::surface::{Rules, Shot, Surface};

fn surface(corners: &[(f64, f64)], shots: &[(f64, f64, f64)]) -> Surface {
    let region =
        Region::new(corners.iter().map(|&(x, y)| Point::new(x, y)).collect(), Vec::new()).expect("a region");
    let shots: Vec<Shot> = shots.iter().map(|&(x, y, z)| Shot::new(x, y, z)).collect();
    Surface::from_shots(&shots, &region, &Rules::DEFAULT).expect("a surface")
}

fn level(height: f64) -> Plane {
    Plane::new(height, 0.0, 0.0)
}

#[track_caller]
fn assert_close(value: f64, expected: f64) {
    assert!((value - expected).abs() <= 1e-12 * expected.abs().max(1.0), "{value} is not {expected}");
}

/// A triangle of area 50 with depths 2, 1 and -1: with V- = (A/3) d3^3 / ((d3-d1)(d3-d2)) (geometry) the parts are
/// -2.77778 and 36.1111, the net 33.3333.
#[test]
fn a_triangle_is_split_along_its_zero_line() {
    let corners = [(0.0, 0.0), (10.0, 0.0), (0.0, 10.0)];
    let ground = surface(&corners, &[(0.0, 0.0, -2.0), (10.0, 0.0, -1.0), (0.0, 10.0, 1.0)]);
    let field = ThicknessField::new(ground.whole(), level(0.0)).expect("a field");
    assert_close(field.high_spots(), 50.0 / 3.0 / 6.0);
    assert_close(field.fill(), 36.0 + 1.0 / 9.0);
    assert_close(field.net(), 100.0 / 3.0);
    assert!((field.high_spots() - 2.77778).abs() < 1e-5 && (field.fill() - 36.1111).abs() < 1e-4);
    // The zero line cuts off a third and a half of the two sides at the high corner.
    assert_close(field.area_thinner_than(0.0), 50.0 / 6.0);
    assert_close(field.area_thinner_than(3.0), 50.0);
    assert_close(field.area_thinner_than(-3.0), 0.0);
    assert_eq!(field.least().shot, Some(2));
    assert_close(field.least().value, -1.0);
    assert_close(field.greatest().value, 2.0);
}

/// Truncated triangular prism, V = A (d1 + d2 + d3) / 3 (geometry): 50 with depths 3, 4 and 5 holds 200.
#[test]
fn a_truncated_prism_holds_area_times_mean_depth() {
    let corners = [(0.0, 0.0), (10.0, 0.0), (0.0, 10.0)];
    let ground = surface(&corners, &[(0.0, 0.0, 0.0), (10.0, 0.0, -1.0), (0.0, 10.0, -2.0)]);
    let field = ThicknessField::new(ground.whole(), level(3.0)).expect("a field");
    assert_close(field.net(), 200.0);
    assert_close(field.mean(), 4.0);
    assert_eq!(field.high_spots(), 0.0);
    // Below depth 4 lies the half next to the thin corner: sides cut at the half and the whole.
    assert_close(field.area_thinner_than(4.0), 25.0);
    assert_close(field.volume_missing_to(4.0), 25.0 / 3.0);
    assert_close(field.volume_missing_to(6.0), 100.0);
}

#[test]
fn a_wedge_under_a_sloped_finish_is_exact() {
    let corners = [(0.0, 0.0), (6.0, 0.0), (6.0, 4.0), (0.0, 4.0)];
    let flat = surface(&corners, &[(0.0, 0.0, 1.0), (6.0, 0.0, 1.0), (6.0, 4.0, 1.0), (0.0, 4.0, 1.0)]);
    let field = ThicknessField::new(flat.whole(), Plane::new(0.98, 0.01, 0.0)).expect("a field");
    // The finish meets the slab at x = 2.
    assert_close(field.high_spots(), 4.0 * 0.5 * 2.0 * 0.02);
    assert_close(field.fill(), 4.0 * 0.5 * 4.0 * 0.04);
    assert_close(field.area_thinner_than(0.0), 8.0);
    assert_close(field.area_thinner_than(0.02), 16.0);
    let over = field.over(0.0).next().expect("one facet");
    assert_close(over.volume, field.fill());
    assert_close(over.area, 16.0);
    assert_close(over.moment_x / over.area + over.origin.x, 4.0);
    assert_close(over.moment_y / over.area + over.origin.y, 2.0);
}

#[test]
fn the_part_above_a_depth_tells_the_gradient_of_its_volume() {
    let mut random = Random::new(3);
    let corners = [(1.0, 0.0), (7.0, 1.0), (6.0, 5.0), (0.0, 4.0)];
    let shots: Vec<(f64, f64, f64)> = (0..12)
        .map(|i| (1.2 + f64::from(i % 4) * 1.55, 0.95 + f64::from(i / 4) * 1.5, random.between(1.0, 1.1)))
        .collect();
    let ground = surface(&corners, &shots);
    let volume = |a: f64, b: f64, c: f64| {
        let plane = Plane::about(ground.whole().origin(), a, b, c);
        ThicknessField::new(ground.whole(), plane).expect("a field").over(0.0).next().expect("one facet")
    };
    let (a, b, c, step) = (1.04, 0.003, -0.002, 1e-6);
    let here = volume(a, b, c);
    let slope = |up: Over, down: Over| (up.volume - down.volume) / (2.0 * step);
    let close =
        |value: f64, expected: f64| assert!((value - expected).abs() < 1e-6 * expected.abs().max(1.0));
    close(slope(volume(a + step, b, c), volume(a - step, b, c)), here.area);
    close(slope(volume(a, b + step, c), volume(a, b - step, c)), here.moment_x);
    close(slope(volume(a, b, c + step), volume(a, b, c - step)), here.moment_y);
}

#[test]
fn several_facets_add_up() {
    let corners = [(0.0, 0.0), (6.0, 0.0), (6.0, 4.0), (0.0, 4.0)];
    let ground = surface(
        &corners,
        &[(0.0, 0.0, 1.0), (6.0, 0.0, 1.01), (6.0, 4.0, 1.0), (0.0, 4.0, 0.99), (3.1, 2.2, 1.05)],
    );
    let halves = [(0.0, 3.0), (3.0, 6.0)].map(|(from, to)| {
        let part = Region::rectangle(Point::new(from, 0.0), Point::new(to, 4.0)).expect("a half");
        ground.within(&part).expect("a cut")
    });
    // A valley along x = 3.
    let (left, right) = (Plane::new(1.06, -0.01, 0.0), Plane::new(1.0, 0.01, 0.0));
    let facets =
        vec![Facet { ground: &halves[0], finish: left }, Facet { ground: &halves[1], finish: right }];
    let both = ThicknessField::over_facets(facets).expect("a field");
    let single = |cut, plane| ThicknessField::new(cut, plane).expect("a field");
    let (one, other) = (single(&halves[0], left), single(&halves[1], right));
    assert_close(both.area(), 24.0);
    assert_close(both.fill(), one.fill() + other.fill());
    assert_close(both.high_spots(), one.high_spots() + other.high_spots());
    assert_close(both.least().value, one.least().value.min(other.least().value));
    assert_eq!(both.least().shot, Some(4));
    assert_eq!(both.over(0.0).count(), 2);
}

#[test]
fn the_thinnest_place_is_told_apart_for_shots_and_for_ground_beyond_them() {
    // The slab rises to the right, so the ground beyond the last shots is the highest.
    let corners = [(0.0, 0.0), (6.0, 0.0), (6.0, 4.0), (0.0, 4.0)];
    let ground = surface(&corners, &[(0.0, 0.0, 1.0), (5.5, 0.0, 1.055), (5.5, 4.0, 1.055), (0.0, 4.0, 1.0)]);
    let field = ThicknessField::new(ground.whole(), level(1.2)).expect("a field");
    assert_close(field.least().value, 0.14);
    assert_eq!((field.least().at, field.least().shot), (Point::new(6.0, 0.0), None));
    assert_close(field.least_between_shots().expect("ground").value, 0.145);
    assert_eq!(field.least_at_shots().expect("shots").shot, Some(1));
    assert_close(field.least_beyond().expect("ground beyond").value, 0.14);
}

#[test]
fn a_finish_that_is_no_plane_is_refused() {
    let corners = [(0.0, 0.0), (6.0, 0.0), (6.0, 4.0)];
    let ground = surface(&corners, &[(0.0, 0.0, 1.0), (6.0, 0.0, 1.0), (6.0, 4.0, 1.0)]);
    for bad in [f64::NAN, f64::INFINITY] {
        let refused = ThicknessField::new(ground.whole(), Plane::new(1.0, bad, 0.0));
        assert_eq!(refused.err(), Some(ThicknessError::NotFinite { facet: 0 }));
    }
    assert_eq!(ThicknessField::over_facets(Vec::new()).err(), Some(ThicknessError::NoFacet));
}
