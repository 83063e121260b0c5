//! Triangles on one circle become one polygon.
//!
//! Four shots on a circle (every cell of a grid) can be joined by either diagonal, and only rounding would decide.
//! Such triangles are joined into polygons here, and a polygon is filled by a fan from the mean of its corners.

use super::hull::{GIVEN, OUTER};
use super::mesh::{Face, NO_MEAN};
use super::tiling::{INSIDE, NO_SHOT, Node};
use crate::geometry::Point;
use crate::geometry::predicates::{cross, in_circle};
use crate::geometry::triangulation::{CONSTRAINT, Links, NONE, Triangulation};

/// The mark of an edge inside a polygon.
const SOFT: u32 = 8;
/// The mark of half-edges whose polygon was already collected.
const DONE: u32 = 16;

/// A triangle had another place inside its circle: rounding led the triangulation astray.
#[derive(Debug)]
pub(super) struct NotDelaunay;

/// Marks all edges between two triangles on one circle.
pub(super) fn join(triangulation: &mut Triangulation, share: f64) -> Result<(), NotDelaunay> {
    for edge in (0..triangulation.links().len() as u32).step_by(2) {
        let links = triangulation.links();
        if links.from(edge) == NONE || (links.mark(edge) | links.mark(edge ^ 1)) & (OUTER | CONSTRAINT) != 0 {
            continue;
        }
        let (left, right) = (links.around_left(edge), links.around_left(edge ^ 1));
        let (a, b) = (triangulation.place(edge), triangulation.place(edge ^ 1));
        let (c, d) = (triangulation.place(left ^ 1), triangulation.place(right ^ 1));
        let (inside, bound) = in_circle(a, b, c, d);
        if is_near_circle(a, b, c, inside, share) && is_near_circle(b, a, d, inside, share) {
            let links = triangulation.links_mut();
            links.set_mark(edge, links.mark(edge) | SOFT);
            links.set_mark(edge ^ 1, links.mark(edge ^ 1) | SOFT);
        } else if inside > bound {
            return Err(NotDelaunay);
        }
    }
    Ok(())
}

/// Whether a fourth place, whose in-circle determinant with the three is known, is within a share of the radius of
/// their circle. Both triangles at an edge must find the other's corner so near: a sliver's circle is so large that
/// everything is near it.
#[inline(always)]
fn is_near_circle(a: Point, b: Point, c: Point, inside: f64, share: f64) -> bool {
    // With the doubled area K and sides l, m, n: radius = l m n / 2K, power of the place = determinant / K, and its
    // distance from the circle is nearly power / 2 radius.
    let sides = a.squared_distance(b) * b.squared_distance(c) * c.squared_distance(a);
    2.0 * inside.abs() * cross(a, b, c) <= share * sides
}

/// Collects all polygons, after the faces that were given; the means of polygons are added to the nodes.
pub(super) fn collect(
    triangulation: &mut Triangulation,
    share: f64,
    nodes: &mut Vec<Node>,
    given: &[[u32; 3]],
) -> (Vec<u32>, Vec<Face>) {
    let triangles = 2 * nodes.len();
    let (mut loops, mut faces) = (Vec::with_capacity(3 * triangles), Vec::with_capacity(triangles));
    for corners in given {
        loops.extend_from_slice(corners);
        faces.push(Face { end: loops.len() as u32, mean: NO_MEAN });
    }
    let mut spare = Vec::new();
    for edge in 0..triangulation.links().len() as u32 {
        let links = triangulation.links();
        if links.from(edge) == NONE || links.mark(edge) & (OUTER | GIVEN | SOFT | DONE) != 0 {
            continue;
        }
        let start = loops.len();
        let second = links.around_left(edge);
        let third = links.around_left(second);
        if (links.mark(second) | links.mark(third)) & SOFT == 0 {
            let (a, b, c) = (links.from(edge), links.from(second), links.from(third));
            // A triangle is met from all three sides; it is taken at its first corner.
            if a < b && a < c {
                loops.extend_from_slice(&[a, b, c]);
                faces.push(Face { end: loops.len() as u32, mean: NO_MEAN });
            }
            continue;
        }
        walk(triangulation.links_mut(), edge, &mut loops);
        let polygon = &loops[start..];
        if is_round(nodes, polygon, share) {
            let mean = mean_of(nodes, polygon);
            faces.push(Face { end: loops.len() as u32, mean: nodes.len() as u32 });
            nodes.push(mean);
        } else {
            loops.truncate(start);
            take_apart(triangulation.links_mut(), edge, &mut spare);
            for &[a, b, c] in &spare {
                loops.extend([a, b, c]);
                faces.push(Face { end: loops.len() as u32, mean: NO_MEAN });
            }
        }
    }
    (loops, faces)
}

/// Walks around the polygon on the left of an edge.
fn walk(links: &mut Links, first: u32, loops: &mut Vec<u32>) {
    let mut edge = first;
    loop {
        links.set_mark(edge, links.mark(edge) | DONE);
        loops.push(links.from(edge));
        edge = links.around_left(edge);
        while links.mark(edge) & SOFT != 0 {
            edge = links.around_left(edge ^ 1);
        }
        if edge == first {
            return;
        }
    }
}

/// Whether a polygon is convex and all its corners are near one circle. A long chain of triangles, each nearly on
/// the circle of the next, need not be.
fn is_round(nodes: &[Node], polygon: &[u32], share: f64) -> bool {
    let count = polygon.len();
    let place = |index: usize| nodes[polygon[index % count] as usize].at();
    let convex = (0..count).all(|i| cross(place(i), place(i + 1), place(i + 2)) > 0.0);
    if !convex || count == 4 {
        return convex;
    }
    let (a, b, c) = (place(0), place(count / 3), place(2 * count / 3));
    let (bx, by, cx, cy) = (b.x - a.x, b.y - a.y, c.x - a.x, c.y - a.y);
    let (b2, c2, doubled) = (bx * bx + by * by, cx * cx + cy * cy, 2.0 * (bx * cy - by * cx));
    let centre = Point::new(a.x + (cy * b2 - by * c2) / doubled, a.y + (bx * c2 - cx * b2) / doubled);
    let radius = centre.distance(a);
    (0..count).all(|i| (centre.distance(place(i)) - radius).abs() <= 4.0 * share * radius)
}

/// The mean place and mean height of a polygon's corners.
pub(super) fn mean_of(nodes: &[Node], polygon: &[u32]) -> Node {
    let mut mean = Node { x: 0.0, y: 0.0, z: 0.0, shot: NO_SHOT, flags: INSIDE };
    for &corner in polygon {
        let node = &nodes[corner as usize];
        mean.x += node.x;
        mean.y += node.y;
        mean.z += node.z;
        mean.flags &= node.flags;
    }
    let scale = 1.0 / polygon.len() as f64;
    Node { x: mean.x * scale, y: mean.y * scale, z: mean.z * scale, ..mean }
}

/// Lists the triangles of a polygon that is none, and marks its inner edges as ordinary ones again.
fn take_apart(links: &mut Links, first: u32, triangles: &mut Vec<[u32; 3]>) {
    triangles.clear();
    let mut pending = vec![first];
    while let Some(edge) = pending.pop() {
        // The inner half-edges of triangles that were listed are done and no longer soft.
        if edge != first && links.mark(edge) & SOFT == 0 {
            continue;
        }
        let second = links.around_left(edge);
        let halves = [edge, second, links.around_left(second)];
        triangles.push(halves.map(|half| links.from(half)));
        for half in halves {
            if links.mark(half) & SOFT != 0 && half != edge {
                pending.push(half ^ 1);
            }
            links.set_mark(half, links.mark(half) & !SOFT | DONE);
        }
    }
}
