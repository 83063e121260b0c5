//! Cuts as triangles over shared corners.

use super::support::*;
use crate::survey::surface::{Cut, weld};

/// Every side between two triangles is met by both: what is left open is the edge of the region and nothing else.
#[track_caller]
fn assert_joined(cuts: &[&Cut], region: &Region) {
    let welded = weld(cuts.iter().copied());
    let corners = welded.network.corners();
    let border = welded.network.border();
    let length: f64 = border
        .iter()
        .map(|side| {
            let [from, to] = side.map(|corner| corners[corner as usize].at);
            from.distance(to)
        })
        .sum();
    assert_close(length, region.perimeter(), 1e-9);
    for side in &border {
        let [from, to] = side.map(|corner| corners[corner as usize].at);
        let middle = Point::new(0.5 * (from.x + to.x), 0.5 * (from.y + to.y));
        assert!(region.nearest_run(middle).distance < 1e-6, "{middle:?} is no edge");
    }
    let area: f64 = welded
        .network
        .triangles()
        .iter()
        .map(|triangle| {
            let [a, b, c] = triangle.map(|corner| corners[corner as usize].at);
            0.5 * crate::geometry::predicates::cross(a, b, c)
        })
        .sum();
    assert_close(area, region.area(), 1e-7);
    // Every corner has one height, and the field spread over it is the same.
    let heights: Vec<f64> = cuts.iter().flat_map(|cut| cut.nodes().iter().map(|node| node.z)).collect();
    for (corner, height) in corners.iter().zip(welded.field(&heights)) {
        assert!((corner.height - height).abs() < 1e-12);
    }
}

/// An L with two columns, one of them turned.
fn l_shape() -> Region {
    with_holes(
        &[(0.0, 0.0), (9.0, 0.0), (9.0, 4.0), (5.0, 4.0), (5.0, 8.0), (0.0, 8.0)],
        &[
            &[(1.0, 1.0), (1.6, 1.0), (1.6, 1.5), (1.0, 1.5)],
            &[(3.0, 5.0), (3.4, 5.2), (3.2, 5.6), (2.8, 5.4)],
        ],
    )
}

#[test]
fn a_whole_l_with_columns_is_joined_in_every_turn() {
    let mut random = Random::new(71);
    for case in 0..12 {
        let count = [6, 14, 60][case % 3];
        let inside = l_shape();
        let places: Vec<Shot> = std::iter::repeat_with(|| random.point(9.0, 8.0))
            .filter(|&place| inside.contains(place))
            .take(count)
            .enumerate()
            .map(|(index, at)| Shot::new(at.x, at.y, 0.01 * (index % 7) as f64))
            .collect();
        let rules = Rules { beyond_allowed: true, ..Rules::DEFAULT };
        for angle in [0.0, 0.3, 1.1, 2.9] {
            let by = Point::new(120.0, -37.0);
            let (region, shots) = (moved_region(&inside, angle, by), moved_shots(&places, angle, by));
            let surface = Surface::from_shots(&shots, &region, &rules).expect("a surface");
            assert_joined(&[surface.whole()], &region);
        }
    }
}

#[test]
fn a_grid_is_joined_with_its_ground_beyond() {
    let shots = grid(&steps(0.5, 1.0, 9), &steps(0.5, 1.0, 8), |x, y| 0.01 * (x * 3.0 + y * y).sin());
    let inside = l_shape();
    let shots: Vec<Shot> =
        shots.into_iter().filter(|shot| inside.contains(Point::new(shot.x, shot.y))).collect();
    for angle in [0.0, 0.7] {
        let (region, shots) =
            (moved_region(&inside, angle, Point::default()), moved_shots(&shots, angle, Point::default()));
        let surface = surface(&shots, &region);
        assert_joined(&[surface.whole()], &region);
    }
}

/// Facets that share a slanted border: each is cut by itself.
#[test]
fn cuts_of_neighbouring_regions_are_joined_at_their_border() {
    let mut random = Random::new(5);
    let whole = rectangle(10.0, 6.0);
    let places: Vec<Shot> = (0..40)
        .map(|_| {
            let at = random.point(10.0, 6.0);
            Shot::new(at.x, at.y, random.between(0.0, 0.05))
        })
        .collect();
    for angle in [0.0, 0.37, 2.0] {
        let by = Point::new(-40.0, 300.0);
        let region = moved_region(&whole, angle, by);
        let rules = Rules { beyond_allowed: true, ..Rules::DEFAULT };
        let surface =
            Surface::from_shots(&moved_shots(&places, angle, by), &region, &rules).expect("a surface");
        let corners: [&[(f64, f64)]; 3] = [
            &[(0.0, 0.0), (10.0, 0.0), (4.0, 3.0)],
            &[(10.0, 0.0), (10.0, 6.0), (4.0, 3.0)],
            &[(10.0, 6.0), (0.0, 6.0), (0.0, 0.0), (4.0, 3.0)],
        ];
        let facets: Vec<Cut> = corners
            .iter()
            .map(|facet| {
                let facet = moved_region(&super::support::region(facet), angle, by);
                surface.within(&facet).expect("a cut")
            })
            .collect();
        assert_joined(&facets.iter().collect::<Vec<_>>(), &region);
    }
}
