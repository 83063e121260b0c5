//! Fewer points that say the same: thinned by a height error or to a number, the other of the two told.
//!
//! It starts from the corners of the convex hull. In rounds, the surface through the points kept so far is made by the
//! rules of every survey, every point left out is held against it, and the worst of each triangle is taken in. What is
//! told of the thinned points is therefore measured on the very surface that a survey through them has: on its
//! polygons filled from their mean, its lines along the outline, its ground beyond the shots.

mod cloud;
mod ground;
mod hull;
mod refusal;
mod rounds;
#[cfg(test)]
mod tests;

use super::{Points, check_points, pick};
use crate::failure::{Result, check};
use crate::geometry::{Point, Region};
use crate::quantity::{Length, Range, Typed};
use crate::survey::surface::Rules;
use cloud::Cloud;
use rounds::Rounds;

/// Points nearer than this to one another in plan would be one place of a survey, in metres: 1/2 in and the room that
/// its comparison has. Of such points at most one is kept.
const ONE_PLACE: f64 = Rules::DEFAULT.same_place + 1e-8;

/// Errors within a nanometre of what was asked are as asked: rounding of the arithmetic.
const ROUNDING: f64 = 1e-9;

/// A height error that may be asked for.
pub const HEIGHT_ERROR: Range = Range::closed(0.0, 1.0e4);

/// How far points are to be thinned.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Asked {
    /// As far as the surface stays within this height of every point left out.
    Within(Length),
    /// To at most so many points, those at which the surface was farthest off.
    Count(usize),
}

/// Points thinned.
#[derive(Clone, Debug, PartialEq)]
pub struct Thinned {
    /// The numbers of the points kept, rising.
    pub kept: Vec<usize>,
    /// The points kept, in the same order.
    pub points: Points,
    /// The greatest distance in height between the surface through the points kept and a point left out.
    pub error: Length,
    /// The point left out at which that is; none when all were kept.
    pub worst: Option<usize>,
    /// How many of the points kept are corners of the convex hull.
    pub hull: usize,
    /// The numbers of the points that lie more than 1/2 in outside the region: neither kept nor measured.
    pub outside: Vec<usize>,
}

/// Thins points.
///
/// The corners of the convex hull are kept, so that no point left out is beyond the ground between those kept; only of
/// corners within 1/2 in of one another one is kept, for a survey takes them for one place. For the same reason no two
/// points kept are within 1/2 in of one another in plan.
///
/// The error holds for the surface over `region` (a survey with that outline); without one, for the surface over the
/// convex hull of the points. The order of the points does not count.
///
/// # Errors
/// - `NOT_FINITE`, `NEGATIVE`, `OUT_OF_RANGE`: a coordinate or the error asked is no number it may be.
/// - `EMPTY_LIST`, `TOO_FEW_SHOTS`, `COLLINEAR_SHOTS`: the points make no surface.
/// - `THINNING_COUNT`: fewer points are asked than the hull has corners.
/// - `THINNING_UNREACHABLE`: points within 1/2 in of one another differ so much in height that no choice of them
///   keeps the error asked.
pub fn thin(points: &Points, region: Option<&Region>, asked: Asked) -> Result<Thinned> {
    if let Asked::Within(error) = asked {
        check("within", error, HEIGHT_ERROR)?;
    }
    check_points(points)?;
    let (inside, outside) = split(points, region);
    let hull = hull::corners(points, &inside);
    refusal::check_spread(points, &inside, &hull)?;
    let of_hull;
    let region = match region {
        Some(region) => region,
        None => {
            of_hull = region_of(points, &hull)?;
            &of_hull
        }
    };
    let cloud = Cloud::of(points, inside, region.bounds().0);
    let done = Rounds::new(points, &cloud, region, &hull).run(asked)?;
    let points = pick(points, &done.kept);
    let (error, worst) = (Length::from_base(done.error), done.worst);
    Ok(Thinned { kept: done.kept, points, error, worst, hull: hull.len(), outside })
}

/// The numbers of the points in a region, or within 1/2 in of it, and of those farther outside.
fn split(points: &Points, region: Option<&Region>) -> (Vec<u32>, Vec<usize>) {
    let numbers = 0..points.len() as u32;
    let Some(region) = region else { return (numbers.collect(), Vec::new()) };
    let (mut inside, mut outside) = (Vec::with_capacity(points.len()), Vec::new());
    for number in numbers {
        let at = place(points, number);
        if region.contains(at) || region.nearest_run(at).distance <= Rules::DEFAULT.on_run {
            inside.push(number);
        } else {
            outside.push(number as usize);
        }
    }
    (inside, outside)
}

fn place(points: &Points, number: u32) -> Point {
    Point::new(points.x[number as usize], points.y[number as usize])
}

/// The region within the corners of a hull.
fn region_of(points: &Points, hull: &[u32]) -> Result<Region> {
    let corners = hull.iter().map(|&number| place(points, number)).collect();
    Region::new(corners, Vec::new()).map_err(|_| refusal::no_surface(points, hull.len()))
}
