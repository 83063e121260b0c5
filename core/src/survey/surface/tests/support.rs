//! Small helpers of the surface tests.

pub(super) use crate::geometry::random::Random;
pub(super) use crate::geometry::{Plane, Point, Region};
pub(super) use crate::grade::thickness_field::ThicknessField;
pub(super) use crate::survey::surface::{Ground, Note, Rules, Shot, Surface, SurfaceError};

pub(super) const FOOT: f64 = 0.3048;
pub(super) const INCH: f64 = 0.0254;

pub(super) fn region(corners: &[(f64, f64)]) -> Region {
    with_holes(corners, &[])
}

pub(super) fn with_holes(corners: &[(f64, f64)], holes: &[&[(f64, f64)]]) -> Region {
    let points = |ring: &[(f64, f64)]| ring.iter().map(|&(x, y)| Point::new(x, y)).collect();
    Region::new(points(corners), holes.iter().map(|hole| points(hole)).collect()).expect("a region")
}

pub(super) fn rectangle(width: f64, depth: f64) -> Region {
    Region::rectangle(Point::default(), Point::new(width, depth)).expect("a rectangle")
}

pub(super) fn shots(places: &[(f64, f64, f64)]) -> Vec<Shot> {
    places.iter().map(|&(x, y, z)| Shot::new(x, y, z)).collect()
}

pub(super) fn surface(shots: &[Shot], region: &Region) -> Surface {
    Surface::from_shots(shots, region, &Rules::DEFAULT).expect("a surface")
}

pub(super) fn refusal(shots: &[Shot], region: &Region) -> SurfaceError {
    Surface::from_shots(shots, region, &Rules::DEFAULT).expect_err("a refusal")
}

pub(super) fn level(height: f64) -> Plane {
    Plane::new(height, 0.0, 0.0)
}

pub(super) fn net(surface: &Surface, finish: Plane) -> f64 {
    ThicknessField::new(surface.whole(), finish).expect("a field").net()
}

/// The volume under the surface itself.
pub(super) fn volume(surface: &Surface) -> f64 {
    surface.whole().integrals().height
}

#[track_caller]
pub(super) fn assert_close(value: f64, expected: f64, relative: f64) {
    let allowed = relative * expected.abs().max(value.abs());
    assert!((value - expected).abs() <= allowed, "{value:e} is not {expected:e} within {relative:e}");
}

/// The triangles have the area of the region, each is counter-clockwise and has its own area.
#[track_caller]
pub(super) fn assert_tiled(surface: &Surface) {
    assert_close(surface.whole().area(), surface.region().area(), 1e-12);
    let mut total = 0.0;
    for triangle in surface.whole().triangles() {
        let [a, b, c] = triangle.corners.map(|corner| corner.at);
        let area = 0.5 * crate::geometry::predicates::cross(a, b, c);
        assert!(triangle.area > 0.0);
        // The caller's coordinates are rounded once more where they are far from the origin.
        let rounding = 4.0 * f64::EPSILON * (a.x.abs() + a.y.abs()) * (a.distance(b) + b.distance(c));
        assert!((area - triangle.area).abs() <= 1e-12 + rounding, "{area} {}", triangle.area);
        total += triangle.area;
    }
    assert_close(total, surface.whole().area(), 1e-12);
}

/// Shots in a grid, with heights made by `height`.
pub(super) fn grid(xs: &[f64], ys: &[f64], mut height: impl FnMut(f64, f64) -> f64) -> Vec<Shot> {
    ys.iter()
        .flat_map(|&y| xs.iter().map(move |&x| (x, y)))
        .map(|(x, y)| Shot::new(x, y, height(x, y)))
        .collect()
}

pub(super) fn steps(from: f64, step: f64, count: usize) -> Vec<f64> {
    (0..count).map(|index| from + step * index as f64).collect()
}

/// Turns about the origin, then moves.
pub(super) fn moved(point: Point, angle: f64, by: Point) -> Point {
    let (sine, cosine) = angle.sin_cos();
    Point::new(cosine * point.x - sine * point.y + by.x, sine * point.x + cosine * point.y + by.y)
}

pub(super) fn moved_region(region: &Region, angle: f64, by: Point) -> Region {
    let ring = |corners: &[Point]| corners.iter().map(|&corner| moved(corner, angle, by)).collect();
    let holes = region.holes().iter().map(|hole| ring(hole.corners())).collect();
    Region::new(ring(region.outer().corners()), holes).expect("still a region")
}

pub(super) fn moved_shots(shots: &[Shot], angle: f64, by: Point) -> Vec<Shot> {
    let place = |shot: &Shot| moved(Point::new(shot.x, shot.y), angle, by);
    shots.iter().map(|shot| Shot { x: place(shot).x, y: place(shot).y, ..*shot }).collect()
}

pub(super) fn moved_plane(plane: &Plane, angle: f64, by: Point) -> Plane {
    let slope = moved(Point::new(plane.b(), plane.c()), angle, Point::default());
    Plane::about(by, plane.a(), slope.x, slope.y)
}
