//! Why points cannot be thinned as asked.

use super::super::Points;
use super::place;
use crate::failure::{Code, Failure, Place, Result};
use crate::geometry::predicates::cross;
use crate::quantity::{Length, Typed};
use crate::survey::surface::{Rules, SurfaceError};
use crate::survey::words::{both, both_fine};

fn fine(metres: f64) -> String {
    both_fine(Length::from_base(metres))
}

/// A point in words: its name or number, and where it is.
fn told(points: &Points, number: usize) -> String {
    let name = match points.names.get(number) {
        Some(Some(name)) => name.clone(),
        _ => format!("point {}", number + 1),
    };
    let say = |values: &[f64]| both(Length::from_base(values.get(number).copied().unwrap_or_default()));
    format!("{name} at {}, {}, height {}", say(&points.x), say(&points.y), say(&points.z))
}

/// Refuses points that are at too few places or on one line.
pub(super) fn check_spread(points: &Points, numbers: &[u32], hull: &[u32]) -> Result<()> {
    let &[first, ref others @ ..] = hull else { return Err(no_surface(points, 0)) };
    if numbers.len() < 3 || others.is_empty() {
        return Err(no_surface(points, hull.len()));
    }
    // The two corners farthest from one another along the hull's length: the width is square to them.
    let farthest = |from: u32| {
        let distance = |&number: &u32| place(points, from).distance(place(points, number));
        hull.iter().copied().max_by(|a, b| distance(a).total_cmp(&distance(b))).unwrap_or(from)
    };
    let from = farthest(first);
    let to = farthest(from);
    let (start, end) = (place(points, from), place(points, to));
    let length = start.distance(end);
    let off = |&number: &u32| cross(start, end, place(points, number)).abs() / length;
    let width = numbers.iter().map(off).fold(0.0, f64::max);
    if width > Rules::DEFAULT.on_run {
        return Ok(());
    }
    Err(Failure::new(Code::CollinearShots, "points")
        .written(format!(
            "{} points within {} of the line from {} to {}",
            numbers.len(),
            fine(width),
            told(points, from as usize),
            told(points, to as usize)
        ))
        .allowed("points over an area")
        .remedy("give points across the line too"))
}

/// The failure for points at too few places.
pub(super) fn no_surface(points: &Points, places: usize) -> Box<Failure> {
    let code = if points.is_empty() { Code::EmptyList } else { Code::TooFewShots };
    Failure::new(code, "points")
        .written(format!("{} points at {places} places more than 1/2 in apart", points.len()))
        .allowed("at least 3 places that are not on one line")
        .remedy("check the points, their units and the outline they were cut to")
}

/// Refuses a number of points below that of the hull's corners.
pub(super) fn check_count(hull: usize, most: usize) -> Result<()> {
    if hull <= most {
        return Ok(());
    }
    Err(Failure::new(Code::ThinningCount, "count")
        .written(format!("{most} points"))
        .allowed(format!("at least {hull}: so many corners has the hull of the points, and all are kept"))
        .remedy("ask for more points"))
}

/// The failure for points that no surface through some of them stays near to.
pub(super) fn unreachable(
    points: &Points,
    asked: f64,
    error: f64,
    worst: Option<usize>,
    beside: Option<usize>,
) -> Box<Failure> {
    let mut written = format!("within {}, yet ", fine(asked));
    match (worst, beside) {
        (Some(worst), Some(beside)) => written.push_str(&format!(
            "{} and {} are at one place and the surface is {} off",
            told(points, worst),
            told(points, beside),
            fine(error)
        )),
        _ => written.push_str(&format!("the surface stays {} off", fine(error))),
    }
    let path = if worst.is_some() { "points" } else { "within" };
    let failure = Failure::new(Code::ThinningUnreachable, path)
        .written(written)
        .allowed(format!("with these points {} or more", fine(error)))
        .remedy("take out the stray points first, or allow a greater error");
    match worst {
        Some(worst) => failure.at(Place::Index(worst)),
        None => failure,
    }
}

/// The failure for points kept that make no surface after all.
pub(super) fn of_surface(error: &SurfaceError) -> Box<Failure> {
    let code = match error {
        SurfaceError::TooFewPlaces { .. } => Code::TooFewShots,
        SurfaceError::Collinear { .. } => Code::CollinearShots,
        _ => Code::TwoHeights,
    };
    Failure::new(code, "points")
        .written(error.to_string())
        .allowed("points that make a surface")
        .remedy("take out the stray points first, and check the outline")
}
