use super::*;
use crate::geometry::predicates::{by_place, in_circle_exactly};
use crate::geometry::random::Random;

fn sorted(mut points: Vec<Point>) -> Vec<Point> {
    points.sort_by(by_place);
    points.dedup();
    points
}

fn triangles(of: &Triangulation) -> Vec<[u32; 3]> {
    let links = of.links();
    let mut found = Vec::new();
    for edge in links.alive() {
        let second = links.around_left(edge);
        let third = links.around_left(second);
        let corners = [edge, second, third].map(|e| links.from(e));
        let place = |corner: u32| of.points()[corner as usize];
        if links.around_left(third) == edge
            && corners[0] < corners[1]
            && corners[0] < corners[2]
            && turn(place(corners[0]), place(corners[1]), place(corners[2])) > 0.0
        {
            found.push(corners);
        }
    }
    found
}

/// No point is inside a circle by more than a billionth of its radius squared.
fn assert_delaunay(of: &Triangulation) {
    assert!(tiles(of.points(), of.links(), of.outside()));
    for [a, b, c] in triangles(of) {
        let place = |corner: u32| of.points()[corner as usize];
        let (a, b, c) = (place(a), place(b), place(c));
        for &d in of.points() {
            let inside = in_circle_exactly(a, b, c, d);
            let reach = [a, b, c].map(|p| p.distance(d)).into_iter().fold(0.0, f64::max);
            assert!(inside <= 1e-14 * reach.powi(4), "{d:?} is inside the circle of {a:?} {b:?} {c:?}");
        }
    }
}

#[test]
fn scattered_points_have_empty_circles() {
    let mut random = Random::new(1);
    for count in [2, 3, 4, 5, 7, 20, 150] {
        let points = sorted((0..count).map(|_| random.point(10.0, 6.0)).collect());
        assert_delaunay(&Triangulation::of(points));
    }
}

#[test]
fn grids_straight_turned_and_in_feet_are_tiled() {
    for (cosine, sine) in [(1.0, 0.0), (0.8, 0.6), (0.96, -0.28), (0.5_f64.sqrt(), 0.5_f64.sqrt())] {
        for pitch in [1.0, 0.3048, 1.0 / 3.0] {
            let grid =
                (0..12).flat_map(|i| (0..9).map(move |j| (pitch * f64::from(i), pitch * f64::from(j))));
            let turned = grid.map(|(x, y)| Point::new(cosine * x - sine * y, sine * x + cosine * y));
            assert_delaunay(&Triangulation::of(sorted(turned.collect())));
        }
    }
}

#[test]
fn points_on_one_line_make_a_chain_without_triangles() {
    let chain = Triangulation::of((0..9).map(|i| Point::new(f64::from(i), 2.0 * f64::from(i))).collect());
    assert_eq!(chain.links().alive().count(), 16);
    assert!(triangles(&chain).is_empty());
    let upright = Triangulation::of((0..5).map(|i| Point::new(1.0, f64::from(i))).collect());
    assert!(tiles(upright.points(), upright.links(), upright.outside()));
}

#[test]
fn points_closer_than_rounding_are_still_tiled() {
    let mut random = Random::new(5);
    for _ in 0..200 {
        let centre = random.point(1.0, 1.0);
        let near = (0..30).map(|_| {
            let step = |r: &mut Random| f64::EPSILON * (r.below(7) as f64);
            Point::new(centre.x + step(&mut random), centre.y + step(&mut random))
        });
        let far = [Point::new(-3.0, 0.0), Point::new(4.0, -1.0), Point::new(0.0, 5.0)];
        let of = Triangulation::of(sorted(near.chain(far).collect()));
        assert!(tiles(of.points(), of.links(), of.outside()));
    }
}

#[test]
fn points_on_one_circle_are_tiled() {
    for count in [4, 5, 60, 1000] {
        let circle = (0..count).map(|i| {
            let angle = f64::from(i) * std::f64::consts::TAU / f64::from(count);
            Point::new(3.0 + angle.cos(), angle.sin())
        });
        let of = Triangulation::of(sorted(circle.collect()));
        assert_eq!(triangles(&of).len(), count as usize - 2);
    }
}

#[test]
fn constraint_edges_are_made_or_their_obstacle_is_told() {
    let mut random = Random::new(9);
    for _ in 0..60 {
        let mut of = Triangulation::of(sorted((0..40).map(|_| random.point(5.0, 5.0)).collect()));
        let mut constrainer = Constrainer::new(&mut of);
        let mut joined = Vec::new();
        for _ in 0..12 {
            let (from, to) = (random.below(40) as u32, random.below(40) as u32);
            if from == to {
                continue;
            }
            match constrainer.join(from, to) {
                Ok(_) => joined.push((from, to)),
                Err(Obstacle::Constraint(a, b)) => {
                    assert!(joined.contains(&(a, b)) || joined.contains(&(b, a)));
                }
                Err(Obstacle::Point(_)) => panic!("no three points are on one line here"),
            }
        }
        let edges: Vec<u32> =
            joined.iter().map(|&(from, to)| constrainer.joined(from, to).expect("it stays")).collect();
        assert!(edges.iter().all(|&edge| of.links().mark(edge) & CONSTRAINT != 0));
        assert!(tiles(of.points(), of.links(), of.outside()));
    }
}

#[test]
fn a_constraint_edge_through_a_point_is_told() {
    let points = vec![
        Point::new(0.0, 0.0),
        Point::new(1.0, -1.0),
        Point::new(1.0, 1.0),
        Point::new(2.0, 0.0),
        Point::new(4.0, 0.0),
    ];
    let mut of = Triangulation::of(points);
    let mut constrainer = Constrainer::new(&mut of);
    assert_eq!(constrainer.join(0, 4), Err(Obstacle::Point(3)));
    assert!(constrainer.join(0, 3).is_ok());
    assert_eq!(constrainer.join(1, 2), Err(Obstacle::Constraint(3, 0)));
}
