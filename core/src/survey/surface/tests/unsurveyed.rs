use super::support::*;

const L_SHAPE: [(f64, f64); 6] = [(0.0, 0.0), (6.0, 0.0), (6.0, 2.0), (3.0, 2.0), (3.0, 5.0), (0.0, 5.0)];

#[test]
fn triangles_across_a_notch_whose_corner_was_not_shot_are_unsurveyed_ground() {
    let places: Vec<Shot> =
        L_SHAPE.iter().filter(|&&corner| corner != (3.0, 2.0)).map(|&(x, y)| Shot::new(x, y, 1.0)).collect();
    let surface = surface(&places, &region(&L_SHAPE));
    assert_tiled(&surface);
    let spanning = surface.whole().area_of(Ground::Spanning);
    let [Note::Spanning { share, area }] = surface.notes() else { panic!("{:?}", surface.notes()) };
    assert_eq!(*area, spanning);
    assert_close(*share, spanning / 21.0, 1e-12);
    // The only triangle that leaves the outline is the one over (3, 5) and (6, 2), whose third corner is (0, 0)
    // or (6, 0); by symmetry of the places it is (0, 0).
    assert!(spanning > 3.0 && spanning < 9.0, "{spanning}");
}

#[test]
fn a_notch_of_less_than_a_foot_is_no_matter() {
    let outline = region(&[
        (0.0, 0.0),
        (4.0, 0.0),
        (4.0, 1.0),
        (3.72, 1.0),
        (3.72, 1.5),
        (4.0, 1.5),
        (4.0, 3.0),
        (0.0, 3.0),
    ]);
    let surface =
        surface(&shots(&[(0.0, 0.0, 1.0), (4.0, 0.0, 1.0), (4.0, 3.0, 1.0), (0.0, 3.0, 1.0)]), &outline);
    assert_tiled(&surface);
    assert_eq!(surface.whole().area_of(Ground::Spanning), 0.0);
}

#[test]
fn a_wide_hole_between_shots_makes_its_triangles_unsurveyed_and_a_column_does_not() {
    let outer = [(0.0, 0.0), (6.0, 0.0), (6.0, 4.0), (0.0, 4.0)];
    let places = shots(&[(0.0, 0.0, 1.0), (6.0, 0.0, 1.0), (6.0, 4.0, 1.0), (0.0, 4.0, 1.0)]);
    // Its middle is 0.15 m (half a foot) from its edge, the other's 0.4 m.
    let column = with_holes(&outer, &[&[(2.0, 1.0), (2.3, 1.0), (2.3, 1.3), (2.0, 1.3)]]);
    assert_eq!(surface(&places, &column).whole().area_of(Ground::Spanning), 0.0);
    let pit = with_holes(&outer, &[&[(2.0, 1.0), (2.8, 1.0), (2.8, 1.8), (2.0, 1.8)]]);
    let surface = surface(&places, &pit);
    assert_tiled(&surface);
    assert_close(surface.whole().area_of(Ground::Spanning), pit.area(), 1e-12);
}

#[test]
fn shots_along_a_notch_keep_the_ground_on_both_sides_apart() {
    // The notch runs in from the right, narrow and deep; the upper bank is half a foot higher.
    let outline = region(&[
        (0.0, 0.0),
        (6.0, 0.0),
        (6.0, 2.0),
        (1.0, 2.0),
        (1.0, 2.2),
        (6.0, 2.2),
        (6.0, 4.0),
        (0.0, 4.0),
    ]);
    let height = |y: f64| if y > 2.1 { 1.15 } else { 1.0 };
    let mut places = Vec::new();
    for x in [1.0, 2.0, 3.5, 5.0, 6.0] {
        for y in [2.0, 2.2] {
            places.push(Shot::new(x, y, height(y)));
        }
    }
    for (x, y) in
        [(0.0, 0.0), (3.0, 0.0), (6.0, 0.0), (0.0, 4.0), (3.0, 4.0), (6.0, 4.0), (0.0, 2.0), (0.0, 2.2)]
    {
        places.push(Shot::new(x, y, height(y)));
    }
    let surface = surface(&places, &outline);
    assert_tiled(&surface);
    for triangle in surface.whole().triangles() {
        if triangle.corners.iter().all(|corner| corner.at.x >= 1.0) {
            let middle = triangle.corners.iter().map(|corner| corner.at.y).sum::<f64>() / 3.0;
            for corner in triangle.corners {
                assert_close(corner.height, height(middle), 1e-12);
            }
        }
    }
}

#[test]
fn a_line_between_shots_on_a_run_is_an_edge_even_where_other_shots_are_nearer() {
    // Two shots far apart on the long run of a notch, with shots beyond the notch between them.
    let outline = region(&[
        (0.0, 0.0),
        (8.0, 0.0),
        (8.0, 4.0),
        (7.0, 4.0),
        (7.0, 2.0),
        (1.0, 2.0),
        (1.0, 4.0),
        (0.0, 4.0),
    ]);
    let marked = |x: f64, y: f64, z: f64| Shot { outside_allowed: true, ..Shot::new(x, y, z) };
    let mut places =
        shots(&[(0.0, 0.0, 1.0), (8.0, 0.0, 1.0), (8.0, 4.0, 1.0), (0.0, 4.0, 1.0), (4.0, 0.0, 1.0)]);
    places.extend(shots(&[(7.0, 2.0, 1.0), (1.0, 2.0, 1.0), (7.0, 4.0, 1.0), (1.0, 4.0, 1.0)]));
    places.push(marked(4.0, 2.3, 0.5));
    let surface = surface(&places, &outline);
    assert_tiled(&surface);
    assert_close(volume(&surface), outline.area(), 1e-12);
}

#[test]
fn a_saw_cut_narrower_than_an_inch_does_no_harm() {
    // Shots within half an inch of both of its runs lie on both.
    let (low, high) = (2.0, 2.015);
    let outline = region(&[
        (0.0, 0.0),
        (6.0, 0.0),
        (6.0, low),
        (1.0, low),
        (1.0, high),
        (6.0, high),
        (6.0, 4.0),
        (0.0, 4.0),
    ]);
    let mut places = shots(&[(0.0, 0.0, 1.0), (6.0, 0.0, 1.0), (6.0, 4.0, 1.0), (0.0, 4.0, 1.0)]);
    for (x, y) in [(2.0, -0.012), (5.0, 0.027), (2.0, 0.027), (5.0, -0.012), (3.5, 0.003)] {
        places.push(Shot::new(x, low + y, 1.0));
    }
    let surface = surface(&places, &outline);
    assert_tiled(&surface);
    assert_close(volume(&surface), outline.area(), 1e-12);
}
