use super::support::*;

struct Job {
    region: Region,
    shots: Vec<Shot>,
    finish: Plane,
}

/// Invented jobs: grids and scattered shots over a rectangle, an L and a yard with a column and a pit.
fn jobs() -> Vec<Job> {
    let mut random = Random::new(77);
    let outlines = [
        rectangle(20.0 * FOOT, 32.0 * FOOT),
        region(&[(0.0, 0.0), (6.0, 0.0), (6.0, 2.0), (3.0, 2.0), (3.0, 5.0), (0.0, 5.0)]),
        with_holes(
            &[(0.0, 0.0), (8.0, 0.0), (9.0, 3.0), (8.0, 6.0), (0.0, 6.0)],
            &[&[(2.0, 2.0), (2.4, 2.0), (2.4, 2.4), (2.0, 2.4)], &[(4.0, 3.0), (5.5, 3.0), (5.0, 4.5)]],
        ),
    ];
    let mut jobs = Vec::new();
    for region in outlines {
        let (_, high) = region.bounds();
        for gridded in [true, false] {
            let mut shots = Vec::new();
            for i in 0..9 {
                for j in 0..8 {
                    let place = if gridded {
                        Point::new(high.x * f64::from(i) / 8.0, high.y * f64::from(j) / 7.0)
                    } else if i * j == 0 || i == 8 || j == 7 {
                        // Somewhere along the edge, so that no corner is left far away.
                        Point::new(
                            0.97 * high.x * f64::from(i) / 8.0 + 0.02,
                            0.96 * high.y * f64::from(j) / 7.0 + 0.03,
                        )
                    } else {
                        random.point(high.x, high.y)
                    };
                    let crowded =
                        shots.iter().any(|shot: &Shot| place.distance(Point::new(shot.x, shot.y)) < 0.05);
                    if region.contains(place) && !crowded {
                        let z = 30.0 + 0.01 * place.x - 0.004 * place.y + random.between(-0.08, 0.08);
                        shots.push(Shot::new(place.x, place.y, z));
                    }
                }
            }
            let finish = Plane::new(30.02, 0.012, -0.003);
            jobs.push(Job { region: region.clone(), shots, finish });
        }
    }
    jobs
}

/// Fill, high spots, least thickness, thin area: numbers that no turn of the axes may change.
fn results(job: &Job) -> [f64; 6] {
    let surface = surface(&job.shots, &job.region);
    assert_tiled(&surface);
    let field = ThicknessField::new(surface.whole(), job.finish).expect("a field");
    assert!(field.fill() > 0.0 && field.high_spots() > 0.0);
    [
        field.fill(),
        field.high_spots(),
        field.least().value,
        field.greatest().value,
        field.area_thinner_than(0.01),
        surface.ambiguity().more + 1.0,
    ]
}

#[track_caller]
fn assert_same(results: [f64; 6], expected: [f64; 6], relative: f64) {
    for (result, expected) in results.into_iter().zip(expected) {
        assert_close(result, expected, relative);
    }
}

#[test]
fn the_order_of_the_shots_changes_no_bit() {
    let mut random = Random::new(5);
    for mut job in jobs() {
        let expected = results(&job);
        for _ in 0..4 {
            random.shuffle(&mut job.shots);
            assert_eq!(results(&job), expected);
        }
    }
}

#[test]
fn turning_the_axes_changes_nothing() {
    for job in jobs() {
        let expected = results(&job);
        for angle in [0.1, std::f64::consts::FRAC_PI_4, 1.234, std::f64::consts::FRAC_PI_2, 3.0, 5.5] {
            let by = Point::new(-3.0, 2.0);
            let turned = Job {
                region: moved_region(&job.region, angle, by),
                shots: moved_shots(&job.shots, angle, by),
                finish: moved_plane(&job.finish, angle, by),
            };
            assert_same(results(&turned), expected, 1e-12);
        }
    }
}

#[test]
fn moving_the_axes_far_away_changes_nothing() {
    for job in jobs() {
        let expected = results(&job);
        for by in [Point::new(1e6, -2e6), Point::new(-512.0, 1024.0)] {
            let moved = Job {
                region: moved_region(&job.region, 0.0, by),
                shots: moved_shots(&job.shots, 0.0, by),
                finish: moved_plane(&job.finish, 0.0, by),
            };
            // A coordinate of two million metres is rounded to a quarter of a nanometre.
            assert_same(results(&moved), expected, 1e-7);
        }
    }
}

#[test]
fn a_job_of_millimetres_far_from_the_origin_still_works() {
    let (x, y) = (1e6, 2e6);
    let side = 0.064;
    let corner = |i: usize, j: usize| Point::new(x + side * i as f64, y + side * j as f64);
    let region = Region::rectangle(corner(0, 0), corner(1, 1)).expect("a rectangle");
    let places: Vec<Shot> = [(0, 0, 0.001), (1, 0, 0.002), (1, 1, 0.001), (0, 1, 0.004)]
        .iter()
        .map(|&(i, j, z)| Shot::new(corner(i, j).x, corner(i, j).y, z))
        .collect();
    let surface = surface(&places, &region);
    assert_close(volume(&surface), side * side * 0.002, 1e-7);
}

#[test]
fn parts_cut_from_one_surface_add_up_to_the_whole() {
    for job in jobs() {
        let surface = surface(&job.shots, &job.region);
        let (low, high) = job.region.bounds();
        let middle = Point::new(0.37 * (low.x + high.x), 0.61 * (low.y + high.y));
        let whole = ThicknessField::new(surface.whole(), job.finish).expect("a field");
        let (mut area, mut fill, mut spots, mut shots) = (0.0, 0.0, 0.0, 0);
        let (mut less, mut least) = (0.0, f64::INFINITY);
        for opposite in [low, high, Point::new(low.x, high.y), Point::new(high.x, low.y)] {
            let part = Region::rectangle(middle, opposite).expect("a rectangle");
            let cut = surface.within(&part).expect("some of it is there");
            let field = ThicknessField::new(&cut, job.finish).expect("a field");
            area += field.area();
            fill += field.fill();
            spots += field.high_spots();
            shots += cut.shots().count();
            less += surface.ambiguity_within(&part).less;
            least = field.least().value.min(least);
        }
        assert_close(area, job.region.area(), 1e-12);
        assert_close(fill, whole.fill(), 1e-11);
        assert_close(spots, whole.high_spots(), 1e-11);
        assert_close(least, whole.least().value, 1e-12);
        assert!((less - surface.ambiguity().less).abs() < 1e-11);
        assert_eq!(shots, surface.whole().shots().count());
    }
}

#[test]
fn rows_and_the_same_shots_in_any_order_give_the_same() {
    let mut random = Random::new(31);
    for inset in [0.0, 0.15] {
        for (columns, rows) in [(2, 2), (5, 8), (9, 3)] {
            let region = rectangle(6.0, 9.0);
            let xs = steps(inset, (6.0 - 2.0 * inset) / (columns - 1) as f64, columns);
            let ys = steps(inset, (9.0 - 2.0 * inset) / (rows - 1) as f64, rows);
            let heights: Vec<Option<f64>> =
                (0..columns * rows).map(|_| Some(random.between(1.0, 1.05))).collect();
            let tabled = Surface::from_rows(&xs, &ys, &heights, &region, &Rules::DEFAULT).expect("a surface");
            let mut next = heights.iter().flatten();
            let mut places = grid(&xs, &ys, |_, _| *next.next().expect("a height"));
            random.shuffle(&mut places);
            let scattered = surface(&places, &region);
            assert_close(volume(&tabled), volume(&scattered), 1e-12);
            assert_close(tabled.ambiguity().less, scattered.ambiguity().less, 1e-9);
            let finish = Plane::new(1.02, 0.001, -0.001);
            let fields =
                [&tabled, &scattered].map(|s| ThicknessField::new(s.whole(), finish).expect("a field"));
            assert_close(fields[0].fill(), fields[1].fill(), 1e-12);
            assert_close(fields[0].high_spots(), fields[1].high_spots(), 1e-12);
            assert_close(fields[0].least().value, fields[1].least().value, 1e-12);
            assert_eq!(fields[0].least().at, fields[1].least().at);
        }
    }
}

#[test]
fn a_missing_height_in_a_table_is_a_place_that_was_not_shot() {
    let mut random = Random::new(13);
    let region = rectangle(6.0, 8.0);
    let (xs, ys) = (steps(0.0, 2.0, 4), steps(0.0, 2.0, 5));
    let mut heights: Vec<Option<f64>> = (0..20).map(|_| Some(random.between(1.0, 1.05))).collect();
    (heights[5], heights[19]) = (None, None);
    let tabled =
        Surface::from_rows(&xs, &ys, &heights, &region, &Rules { beyond_allowed: true, ..Rules::DEFAULT });
    let tabled = tabled.expect("a surface");
    let places: Vec<Shot> =
        (0..20).filter_map(|i| heights[i].map(|z| Shot::new(xs[i % 4], ys[i / 4], z))).collect();
    let scattered = Surface::from_shots(&places, &region, &Rules { beyond_allowed: true, ..Rules::DEFAULT });
    assert_eq!(volume(&tabled), volume(&scattered.expect("a surface")));
    assert!(tabled.whole().shots().all(|(shot, ..)| heights[shot].is_some()));
    assert!(tabled.whole().shots().any(|(shot, at, _)| shot == 18 && at == Point::new(4.0, 8.0)));
}

#[test]
fn a_chamfer_through_grid_nodes_is_kept_by_tables_too() {
    // The outline cuts off the corner from (0, 2) to (2, 0): both are shots on one run.
    let outline = region(&[(2.0, 0.0), (4.0, 0.0), (4.0, 4.0), (0.0, 4.0), (0.0, 2.0)]);
    let (xs, ys) = (steps(0.0, 2.0, 3), steps(0.0, 2.0, 3));
    let heights: Vec<Option<f64>> =
        (0..9).map(|i| if i == 0 { None } else { Some(f64::from(i) * 0.01) }).collect();
    let tabled = Surface::from_rows(&xs, &ys, &heights, &outline, &Rules::DEFAULT).expect("a surface");
    assert_tiled(&tabled);
    assert_eq!(tabled.whole().area_of(Ground::Beyond), 0.0);
}

#[test]
fn all_other_places_are_outside_the_circles_of_the_triangles() {
    for job in jobs() {
        let surface = surface(&job.shots, &job.region);
        for triangle in surface.whole().triangles() {
            let corners = triangle.corners;
            if !corners.iter().all(|corner| corner.shot.is_some()) || triangle.ground == Ground::Beyond {
                continue;
            }
            let [a, b, c] = corners.map(|corner| corner.at);
            for shot in &job.shots {
                let d = Point::new(shot.x, shot.y);
                let inside = crate::geometry::predicates::in_circle_exactly(a, b, c, d);
                let reach = [a, b, c].map(|p| p.distance(d)).into_iter().fold(0.0, f64::max);
                assert!(inside <= 1e-9 * reach.powi(4), "{d:?} in {a:?} {b:?} {c:?}");
            }
        }
    }
}

#[test]
fn other_triangulations_of_shots_on_a_circle_stay_within_the_ambiguity() {
    let mut random = Random::new(19);
    for count in [4, 5, 6, 7] {
        let places: Vec<Shot> = (0..count)
            .map(|i| {
                let angle = (f64::from(i) + 0.4 * random.between(0.0, 1.0)) * std::f64::consts::TAU
                    / f64::from(count);
                Shot::new(2.0 + angle.cos(), 2.0 + angle.sin(), random.between(1.0, 1.1))
            })
            .collect();
        let outline =
            Region::new(places.iter().map(|s| Point::new(s.x, s.y)).collect(), Vec::new()).expect("a region");
        let surface = surface(&places, &outline);
        let (least, greatest) = all_triangulations(&places);
        let ambiguity = surface.ambiguity();
        assert_close(volume(&surface) - ambiguity.less, least, 1e-12);
        assert_close(volume(&surface) + ambiguity.more, greatest, 1e-12);
    }
}

/// Least and greatest volume over all triangulations of a convex polygon, by trying every triangle on its last side.
fn all_triangulations(corners: &[Shot]) -> (f64, f64) {
    let [first, .., last] = corners else { return (0.0, 0.0) };
    if corners.len() < 3 {
        return (0.0, 0.0);
    }
    let mut range = (f64::INFINITY, f64::NEG_INFINITY);
    for middle in 1..corners.len() - 1 {
        let apex = &corners[middle];
        let doubled = (apex.x - first.x) * (last.y - first.y) - (apex.y - first.y) * (last.x - first.x);
        let here = doubled / 6.0 * (first.z + apex.z + last.z);
        let (left, right) = (all_triangulations(&corners[..=middle]), all_triangulations(&corners[middle..]));
        range = (range.0.min(here + left.0 + right.0), range.1.max(here + left.1 + right.1));
    }
    range
}
