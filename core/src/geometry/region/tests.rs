use super::*;
use crate::geometry::random::Random;

fn points(corners: &[(f64, f64)]) -> Vec<Point> {
    corners.iter().map(|&(x, y)| Point::new(x, y)).collect()
}

fn region(corners: &[(f64, f64)]) -> Region {
    Region::new(points(corners), Vec::new()).expect("a region")
}

const L_SHAPE: [(f64, f64); 6] = [(0.0, 0.0), (6.0, 0.0), (6.0, 2.0), (3.0, 2.0), (3.0, 5.0), (0.0, 5.0)];

fn run(ring: RingId, index: usize) -> RunId {
    RunId { ring, index }
}

/// Signed area of a polygon, plainly.
fn area(corners: &[Point]) -> f64 {
    let n = corners.len();
    (0..n).map(|i| corners[i].x * corners[(i + 1) % n].y - corners[(i + 1) % n].x * corners[i].y).sum::<f64>()
        / 2.0
}

fn assert_tiled(region: &Region) {
    let mut total = 0.0;
    for part in region.parts().iter() {
        let n = part.len();
        for i in 0..n {
            let turned = crate::geometry::predicates::turn(part[i], part[(i + 1) % n], part[(i + 2) % n]);
            assert!(turned >= 0.0, "part {part:?} is not convex");
        }
        total += area(part);
    }
    assert!((total - region.area()).abs() <= 1e-12 * region.area().max(1.0), "{total} of {}", region.area());
}

#[test]
fn a_rectangle_knows_its_area_perimeter_and_runs_either_way_round() {
    for corners in
        [[(1.0, 1.0), (5.0, 1.0), (5.0, 4.0), (1.0, 4.0)], [(1.0, 1.0), (1.0, 4.0), (5.0, 4.0), (5.0, 1.0)]]
    {
        let region = region(&corners);
        assert_eq!(region.area(), 12.0);
        assert_eq!(region.perimeter(), 14.0);
        assert!(region.is_convex());
        for (index, run) in region.runs().enumerate() {
            assert_eq!(run.id.index, index);
            let middle = run.at(0.5);
            let inwards = Point::new(
                middle.x - 0.1 * (run.to.y - run.from.y),
                middle.y + 0.1 * (run.to.x - run.from.x),
            );
            assert!(region.contains(inwards), "the region is on the left of every run");
        }
    }
    let given = Region::rectangle(Point::new(5.0, 1.0), Point::new(1.0, 4.0)).expect("a rectangle");
    assert!(given.outer().is_counter_clockwise());
    assert_eq!(given.area(), 12.0);
}

#[test]
fn straight_corners_do_not_spoil_convexity() {
    let region = region(&[(0.0, 0.0), (2.0, 0.0), (4.0, 0.0), (4.0, 3.0), (0.0, 3.0)]);
    assert!(region.is_convex());
    assert_eq!(region.area(), 12.0);
}

#[test]
fn an_l_shape_falls_into_two_parts() {
    let region = region(&L_SHAPE);
    assert_eq!(region.area(), 21.0);
    assert_eq!(region.parts().iter().count(), 2);
    assert_tiled(&region);
    assert!(!region.contains(Point::new(4.0, 3.0)));
    assert!(region.contains(Point::new(3.0, 3.0)), "a run belongs to the region");
    assert!(region.contains(Point::new(6.0, 2.0)), "a corner belongs to the region");
}

#[test]
fn a_hole_is_taken_off() {
    let holes = vec![points(&[(1.0, 1.0), (2.0, 1.0), (2.0, 2.0), (1.0, 2.0)])];
    let region =
        Region::new(points(&[(0.0, 0.0), (4.0, 0.0), (4.0, 3.0), (0.0, 3.0)]), holes).expect("a region");
    assert_eq!(region.area(), 11.0);
    assert_eq!(region.perimeter(), 18.0);
    assert_tiled(&region);
    assert!(!region.contains(Point::new(1.5, 1.5)));
    assert!(region.contains(Point::new(1.0, 1.5)));
    let nearest = region.nearest_run(Point::new(1.5, 1.4));
    assert_eq!(nearest.run, run(RingId::Hole(0), 0));
    assert!((nearest.distance - 0.4).abs() < 1e-15);
}

#[test]
fn stars_combs_and_spirals_are_tiled() {
    let mut random = Random::new(3);
    for count in [7, 30, 301] {
        let star = (0..count).map(|i| {
            let angle = f64::from(i) * std::f64::consts::TAU / f64::from(count);
            let reach = random.between(0.2, 3.0);
            Point::new(reach * angle.cos(), reach * angle.sin())
        });
        assert_tiled(&Region::new(star.collect(), Vec::new()).expect("a star"));
    }
    let mut comb: Vec<Point> = points(&[(0.0, -1.0), (40.0, -1.0)]);
    for tooth in (0..20).rev() {
        let x = 2.0 * f64::from(tooth);
        comb.extend(points(&[(x + 1.5, 0.0), (x + 1.5, 3.0), (x + 0.5, 3.0), (x + 0.5, 0.0)]));
    }
    assert_tiled(&Region::new(comb, Vec::new()).expect("a comb"));
}

#[test]
fn a_bow_tie_names_its_runs_and_the_place() {
    let refusal = Region::new(points(&[(0.0, 0.0), (2.0, 2.0), (2.0, 0.0), (0.0, 2.0)]), Vec::new());
    let expected = RegionError::Crossing {
        first: run(RingId::Outer, 0),
        second: run(RingId::Outer, 2),
        at: Point::new(1.0, 1.0),
    };
    assert_eq!(refusal, Err(expected));
}

#[test]
fn folds_spikes_and_touching_corners_are_refused() {
    let spike = points(&[(0.0, 0.0), (4.0, 0.0), (4.0, 3.0), (4.0, -1.0), (0.0, 3.0)]);
    assert!(matches!(Region::new(spike, Vec::new()), Err(RegionError::Crossing { .. })));
    let pinched = points(&[(0.0, 0.0), (2.0, 1.0), (4.0, 0.0), (4.0, 3.0), (2.0, 1.0), (0.0, 3.0)]);
    let refusal = Region::new(pinched, Vec::new());
    assert!(
        matches!(refusal, Err(RegionError::Crossing { at: Point { x: 2.0, y: 1.0 }, .. })),
        "{refusal:?}"
    );
}

#[test]
fn too_few_repeated_flat_and_unreal_corners_are_refused() {
    let outer = RingId::Outer;
    assert_eq!(
        Region::new(points(&[(0.0, 0.0), (1.0, 0.0)]), Vec::new()),
        Err(RegionError::TooFewCorners { ring: outer, corners: 2 })
    );
    assert_eq!(
        Region::new(points(&[(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 0.0)]), Vec::new()),
        Err(RegionError::RepeatedCorner { ring: outer, first: 0, second: 3, at: Point::new(0.0, 0.0) })
    );
    assert_eq!(
        Region::new(points(&[(0.0, 0.0), (1.0, 1.0), (3.0, 3.0)]), Vec::new()),
        Err(RegionError::NoArea { ring: outer })
    );
    for bad in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 1e9] {
        let refusal = Region::new(points(&[(0.0, 0.0), (1.0, bad), (3.0, 3.0)]), Vec::new());
        assert!(matches!(refusal, Err(RegionError::NotFinite { corner: 1, .. })), "{refusal:?}");
    }
    assert!(Region::new(Vec::new(), Vec::new()).is_err());
}

#[test]
fn holes_must_be_inside_and_apart() {
    let square =
        |x: f64, y: f64, side: f64| points(&[(x, y), (x + side, y), (x + side, y + side), (x, y + side)]);
    let outer = || square(0.0, 0.0, 10.0);
    let refusal = Region::new(outer(), vec![square(12.0, 1.0, 2.0)]);
    assert_eq!(refusal, Err(RegionError::HoleOutside { hole: 0, distance: 2.0 }));
    let refusal = Region::new(outer(), vec![square(1.0, 1.0, 8.0), square(2.0, 2.0, 1.0)]);
    assert_eq!(refusal, Err(RegionError::HoleInHole { inner: 1, outer: 0 }));
    let refusal = Region::new(outer(), vec![square(1.0, 1.0, 2.0), square(2.0, 2.0, 2.0)]);
    assert!(matches!(refusal, Err(RegionError::Crossing { .. })));
    let refusal = Region::new(outer(), vec![square(0.0, 1.0, 2.0)]);
    assert!(matches!(refusal, Err(RegionError::Crossing { .. })), "a hole on the outline is a notch");
}

#[test]
fn distant_coordinates_keep_their_area() {
    let (x, y) = (1e6 + 0.5, -2e6 + 0.25);
    let tiny = region(&[(x, y), (x + 0.125, y), (x + 0.125, y + 0.0625), (x, y + 0.0625)]);
    assert_eq!(tiny.area(), 0.0078125);
}

#[test]
fn ten_thousand_corners_are_checked_and_tiled() {
    let mut random = Random::new(11);
    let count = 10_000;
    let star = (0..count).map(|i| {
        let angle = f64::from(i) * std::f64::consts::TAU / f64::from(count);
        let reach = random.between(5.0, 6.0);
        Point::new(reach * angle.cos(), reach * angle.sin())
    });
    assert_tiled(&Region::new(star.collect(), Vec::new()).expect("a region"));
}
