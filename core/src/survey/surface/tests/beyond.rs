use super::support::*;

/// The corners of the convex hull, counter-clockwise (monotone chain), worked out apart from the triangulation.
fn hull(shots: &[Shot]) -> Vec<Shot> {
    let mut sorted = shots.to_vec();
    sorted.sort_by(|a, b| a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y)));
    let turn = |a: &Shot, b: &Shot, c: &Shot| (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
    let half = |sorted: &mut dyn Iterator<Item = &Shot>| {
        let mut chain: Vec<Shot> = Vec::new();
        for &shot in sorted {
            while chain.len() > 1 && turn(&chain[chain.len() - 2], &chain[chain.len() - 1], &shot) <= 0.0 {
                chain.pop();
            }
            chain.push(shot);
        }
        chain.pop();
        chain
    };
    let mut chain = half(&mut sorted.iter());
    chain.extend(half(&mut sorted.iter().rev()));
    chain
}

/// Slopes of the plane of least squares, by solving the normal equations of centred sums.
fn slopes(shots: &[Shot]) -> (f64, f64) {
    let count = shots.len() as f64;
    let mean = |value: fn(&Shot) -> f64| shots.iter().map(value).sum::<f64>() / count;
    let (mx, my, mz) = (mean(|s| s.x), mean(|s| s.y), mean(|s| s.z));
    let sum = |value: &dyn Fn(&Shot) -> f64| shots.iter().map(value).sum::<f64>();
    let (xx, yy) = (sum(&|s| (s.x - mx).powi(2)), sum(&|s| (s.y - my).powi(2)));
    let xy = sum(&|s| (s.x - mx) * (s.y - my));
    let (xz, yz) = (sum(&|s| (s.x - mx) * (s.z - mz)), sum(&|s| (s.y - my) * (s.z - mz)));
    let determinant = xx * yy - xy * xy;
    ((yy * xz - xy * yz) / determinant, (xx * yz - xy * xz) / determinant)
}

/// Height of the nearest place of the hull plus slope times offset, by looking at every hull edge.
fn expected(hull: &[Shot], (b, c): (f64, f64), place: Point) -> f64 {
    let mut best = (f64::INFINITY, 0.0);
    for (index, from) in hull.iter().enumerate() {
        let to = &hull[(index + 1) % hull.len()];
        let (dx, dy) = (to.x - from.x, to.y - from.y);
        let share =
            (((place.x - from.x) * dx + (place.y - from.y) * dy) / (dx * dx + dy * dy)).clamp(0.0, 1.0);
        let (ox, oy) = (place.x - from.x - share * dx, place.y - from.y - share * dy);
        let distance = ox.hypot(oy);
        if distance < best.0 {
            best = (distance, from.z + share * (to.z - from.z) + b * ox + c * oy);
        }
    }
    best.1
}

#[test]
fn beyond_the_shots_the_height_is_that_of_the_nearest_place_and_the_slope() {
    let mut random = Random::new(21);
    let rules = Rules { on_run: 0.0, beyond_allowed: true, ..Rules::DEFAULT };
    for round in 0..60 {
        let outline = region(&[(0.0, 0.0), (7.0, -1.0), (9.0, 4.0), (4.0, 6.0), (5.0, 3.5), (-1.0, 5.0)]);
        let places: Vec<Shot> = std::iter::repeat_with(|| random.point(8.0, 6.0))
            .filter(|&place| outline.contains(place))
            .take(4 + round % 17)
            .map(|place| Shot::new(place.x, place.y, 0.01 * place.x + 0.05 * (place.y * 1.7).sin()))
            .collect();
        let Ok(surface) = Surface::from_shots(&places, &outline, &rules) else { continue };
        assert_tiled(&surface);
        let (hull, slopes) = (hull(&places), slopes(&places));
        for triangle in surface.whole().triangles().filter(|triangle| triangle.ground == Ground::Beyond) {
            let [a, b, c] = triangle.corners;
            for (p, q, r) in [(0.4, 0.3, 0.3), (1.0, 0.0, 0.0), (0.0, 0.5, 0.5), (0.1, 0.1, 0.8)] {
                let place =
                    Point::new(p * a.at.x + q * b.at.x + r * c.at.x, p * a.at.y + q * b.at.y + r * c.at.y);
                let height = p * a.height + q * b.height + r * c.height;
                assert!(
                    (height - expected(&hull, slopes, place)).abs() < 1e-9,
                    "at {place:?} in round {round}"
                );
            }
        }
    }
}

#[test]
fn a_wedge_and_two_strips_lie_beyond_a_corner() {
    // A level square of shots with the far right corner raised: the fitted slopes are 1/2 * 0.04 / 4 each way.
    let places = shots(&[(0.0, 0.0, 1.0), (4.0, 0.0, 1.0), (4.0, 4.0, 1.04), (0.0, 4.0, 1.0)]);
    let surface = surface(&places, &rectangle(4.5, 4.5));
    let fit = surface.fit();
    assert_close(fit.plane.b(), 0.005, 1e-12);
    assert_close(fit.plane.c(), 0.005, 1e-12);
    assert_close(fit.rms, 0.01, 1e-12);
    let height = |x: f64, y: f64| {
        let corners = surface.whole().triangles().flat_map(|triangle| triangle.corners);
        let found = corners.into_iter().find(|corner| corner.at.distance(Point::new(x, y)) < 1e-12);
        found.expect("a corner of the tiling").height
    };
    assert_close(height(4.5, 4.5), 1.04 + 0.005, 1e-12);
    assert_close(height(4.5, 4.0), 1.04 + 0.0025, 1e-12);
    assert_close(height(4.5, 0.0), 1.0 + 0.0025, 1e-12);
    let [strip, wedge] = [4.0 * 0.5 * (1.02 + 0.00125), 0.25 * (1.04 + 0.0025)];
    let square = 16.0 * 1.01;
    assert_close(volume(&surface), square + 2.0 * strip + wedge, 1e-12);
    let low = surface.whole().relief_beyond().expect("ground beyond");
    assert_close(low.highest.value, 1.045, 1e-12);
}

#[test]
fn a_row_of_shots_that_is_straight_but_for_the_tape_is_one_side() {
    // Along the front wall the shots lie 6 in inside, give or take a quarter of an inch, with a dip in the middle.
    let front = [0.0, 0.2, -0.1, 0.25, 0.05].map(|off| (6.0 + off) * INCH);
    let mut places: Vec<Shot> = front
        .iter()
        .enumerate()
        .map(|(index, &y)| Shot::new(0.1 + index as f64, y, if index == 2 { 0.98 } else { 1.0 }))
        .collect();
    places.extend(shots(&[(0.1, 3.0, 1.0), (2.1, 3.0, 1.0), (4.1, 3.0, 1.0)]));
    let surface = surface(&places, &rectangle(4.2, 3.1));
    assert_tiled(&surface);
    let front: Vec<_> = surface
        .whole()
        .triangles()
        .filter(|triangle| triangle.ground == Ground::Beyond)
        .flat_map(|triangle| triangle.corners)
        .filter(|corner| corner.at.y == 0.0)
        .collect();
    let dip =
        front.iter().find(|corner| (corner.at.x - 2.1).abs() < 0.01).expect("a corner in front of the dip");
    assert!(
        (dip.height - 0.98).abs() < 1e-3,
        "the dip is carried on to the wall, not bridged: {}",
        dip.height
    );
}

#[test]
fn everything_may_lie_beyond() {
    let places: Vec<Shot> = [(10.0, 0.0, 1.0), (11.0, 0.0, 1.0), (10.5, 1.0, 1.1)]
        .map(|(x, y, z)| Shot { outside_allowed: true, ..Shot::new(x, y, z) })
        .to_vec();
    let rules = Rules { beyond_allowed: true, ..Rules::DEFAULT };
    let surface = Surface::from_shots(&places, &rectangle(2.0, 2.0), &rules).expect("a surface");
    assert_tiled(&surface);
    assert!(surface.whole().relief().is_none());
    assert!(matches!(surface.notes(), [Note::Beyond { warning: true, .. }]));
}
