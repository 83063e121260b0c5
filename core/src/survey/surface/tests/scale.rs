use super::support::*;

#[test]
fn a_turned_grid_keeps_its_cells_and_its_straight_sides() {
    let bumps = |x: f64, y: f64| 1.0 + 0.02 * (3.0 * x).sin() * (2.0 * y).cos();
    let straight = grid(&steps(0.25, 0.5, 24), &steps(0.25, 0.5, 16), bumps);
    let region = rectangle(12.0, 8.0);
    let expected = surface(&straight, &region);
    for angle in [0.3, 0.6, 1.1, 2.2] {
        let turned = surface(
            &moved_shots(&straight, angle, Point::default()),
            &moved_region(&region, angle, Point::default()),
        );
        assert_tiled(&turned);
        assert_eq!(turned.whole().len(), expected.whole().len(), "as many triangles, none of them a sliver");
        assert_close(volume(&turned), volume(&expected), 1e-12);
    }
}

#[test]
fn needles_do_no_harm() {
    // Two long rows of shots three quarters of an inch apart.
    let mut places = Vec::new();
    for i in 0..60 {
        let x = 0.2 * f64::from(i);
        places.push(Shot::new(x, 1.0, 1.0 + 0.01 * x));
        places.push(Shot::new(x + 0.1, 1.0 + 0.75 * INCH, 1.0 + 0.01 * (x + 0.1)));
    }
    let surface = surface(&places, &rectangle(11.9, 2.0));
    assert_tiled(&surface);
    let expected = 11.9 * 2.0 * (1.0 + 0.01 * 5.95);
    assert_close(volume(&surface), expected, 1e-9);
}

#[test]
fn shots_on_the_outline_leave_nothing_beyond() {
    let mut random = Random::new(2);
    let corners = [(0.0, 0.0), (5.0, 1.0), (6.0, 5.0), (2.0, 6.0), (-1.0, 3.0)];
    let outline = region(&corners);
    let mut places = Vec::new();
    for run in outline.runs() {
        for share in [0.0, 0.3, 0.6] {
            let at = run.at(share);
            places.push(Shot::new(at.x, at.y, random.between(1.0, 1.03)));
        }
    }
    places.push(Shot::new(2.0, 3.0, 1.0));
    let surface = surface(&places, &outline);
    assert_tiled(&surface);
    assert!(surface.whole().area_of(Ground::Beyond) < 1e-12);
    assert!(surface.notes().is_empty());
}

#[test]
fn thirty_thousand_shots_are_tiled() {
    let mut random = Random::new(6);
    let pitch = 0.1;
    let mut places = Vec::new();
    for i in 0..200 {
        for j in 0..150 {
            let (x, y) = (
                f64::from(i) * pitch + random.between(0.0, 0.08),
                f64::from(j) * pitch + random.between(0.0, 0.08),
            );
            places.push(Shot::new(x, y, 1.0 + random.between(0.0, 0.01)));
        }
    }
    let outline = with_holes(
        &[(0.0, 0.0), (20.0, 0.0), (20.0, 9.0), (12.0, 9.0), (12.0, 15.0), (0.0, 15.0)],
        &[&[(4.0, 4.0), (6.0, 4.0), (5.0, 7.0)]],
    );
    let inside: Vec<Shot> =
        places.into_iter().filter(|shot| outline.contains(Point::new(shot.x, shot.y))).collect();
    assert_tiled(&surface(&inside, &outline));
}

#[test]
fn shots_abreast_on_a_run_are_taken_in_one_order_however_the_axes_are_turned() {
    // At one station a shot 1 cm inside the wall and one on its foot, 2 cm apart.
    let region = rectangle(6.0, 4.0);
    let mut places = grid(&[0.1, 3.0, 5.9], &[0.1, 2.0, 3.9], |x, y| 1.0 + 0.01 * (x * y).sin());
    places.extend([
        Shot::new(4.0, 0.01, 1.03),
        Shot::new(4.0, -0.01, 1.0),
        Shot::new(1.5, 0.0, 1.0),
        Shot::new(5.2, 0.0, 1.02),
    ]);
    let expected = volume(&surface(&places, &region));
    for angle in [0.3, 1.2, 2.1, 3.0, 3.9, 4.8] {
        let turned = surface(
            &moved_shots(&places, angle, Point::default()),
            &moved_region(&region, angle, Point::default()),
        );
        assert_close(volume(&turned), expected, 1e-12);
    }
}

#[test]
fn a_shot_near_two_sides_belongs_to_the_nearer_however_the_axes_are_turned() {
    // A sharp corner of the hull with a shot 9 mm from one side and 8 mm from the other.
    let region = region(&[(0.0, -0.5), (6.0, -0.5), (6.0, 2.0), (0.0, 2.0)]);
    let places =
        shots(&[(0.5, 0.0, 1.0), (5.5, 0.0, 1.0), (5.5, 0.88, 1.0), (3.0, 0.2, 1.02), (0.6, 0.0092, 1.01)]);
    let rules = Rules { beyond_allowed: true, ..Rules::DEFAULT };
    let expected = volume(&Surface::from_shots(&places, &region, &rules).expect("a surface"));
    for angle in [0.4, 1.3, 2.2, 3.1, 4.0, 4.9] {
        let turned = moved_shots(&places, angle, Point::default());
        let turned = Surface::from_shots(&turned, &moved_region(&region, angle, Point::default()), &rules);
        assert_close(volume(&turned.expect("a surface")), expected, 1e-12);
    }
}
