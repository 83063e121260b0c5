//! Delaunay triangles over points, with constraint edges.
//!
//! Divide and conquer after Guibas and Stolfi (1985), halved across x and y in turn after Dwyer (1987). Turns are decided exactly. Whether
//! a point is inside a circle is decided to rounding at first: points on one circle to that precision may be joined
//! either way, and whoever uses the triangles must not care which. Should rounding ever have led to triangles that do
//! not tile the hull (points closer together than rounding allows for), the work is done again with exact circles.

mod constrain;
mod divide;
mod links;
mod seams;
#[cfg(test)]
mod tests;

pub(crate) use constrain::{CONSTRAINT, Constrainer, Obstacle};
pub(crate) use links::{Links, NONE};

use super::Point;
use super::predicates::turn;

/// Triangles over points; their edges are kept as half-edges with the rings around each point.
#[derive(Clone, Debug)]
pub(crate) struct Triangulation {
    points: Vec<Point>,
    links: Links,
    /// A half-edge of the hull with the outside on its left; none for a single point.
    outside: u32,
}

impl Triangulation {
    /// Triangulates distinct points in ascending order of x, then y.
    pub(crate) fn of(points: Vec<Point>) -> Self {
        debug_assert!(points.windows(2).all(|w| (w[0].x, w[0].y) < (w[1].x, w[1].y)));
        if points.len() < 2 {
            return Self { points, links: Links::with_capacity(0), outside: NONE };
        }
        if let Some(quick) = divide::triangulate::<false>(&points)
            && tiles(&points, &quick.0, quick.1)
        {
            return Self { points, links: quick.0, outside: quick.1 };
        }
        Self::exactly(points)
    }

    /// The same, with every circle decided exactly.
    pub(crate) fn exactly(points: Vec<Point>) -> Self {
        let (links, outside) =
            divide::triangulate::<true>(&points).unwrap_or((Links::with_capacity(0), NONE));
        Self { points, links, outside }
    }

    /// The points.
    pub(crate) fn points(&self) -> &[Point] {
        &self.points
    }

    /// The half-edges.
    pub(crate) fn links(&self) -> &Links {
        &self.links
    }

    /// The half-edges, to be marked.
    pub(crate) fn links_mut(&mut self) -> &mut Links {
        &mut self.links
    }

    /// A half-edge of the hull with the outside on its left, or `NONE`.
    pub(crate) fn outside(&self) -> u32 {
        self.outside
    }

    /// Where a half-edge starts.
    pub(crate) fn place(&self, edge: u32) -> Point {
        self.points[self.links.from(edge) as usize]
    }
}

/// Whether all inner faces are counter-clockwise triangles and as many as their number of points demands.
///
/// Then the angles around every inner point sum to one full turn, and nothing overlaps.
fn tiles(points: &[Point], links: &Links, outside: u32) -> bool {
    let mut hull = 0;
    let mut on_hull = outside;
    loop {
        hull += 1;
        on_hull = links.around_left(on_hull);
        if on_hull == outside || hull > 2 * points.len() {
            break;
        }
    }
    let mut triangles = 0;
    for edge in 0..links.len() as u32 {
        let a = links.from(edge);
        let second = links.around_left(edge);
        // Each triangle is met three times; one look is enough, at its first point. A half-edge that was taken out
        // starts from no point, which is after all others.
        let b = links.from(second);
        if a > b {
            continue;
        }
        let third = links.around_left(second);
        let c = links.from(third);
        if a > c || links.around_left(third) != edge || a == NONE {
            continue;
        }
        if turn(points[a as usize], points[b as usize], points[c as usize]) > 0.0 {
            triangles += 1;
        }
    }
    triangles + hull + 2 == 2 * points.len()
}
