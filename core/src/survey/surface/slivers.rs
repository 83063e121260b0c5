//! Slivers at the hull: triangles so low over a hull edge that their far corner belongs on the side.
//!
//! A row of shots along a wall is straight but for rounding or the tape's last fraction. The hull then touches only the
//! outermost of them, and between hull and row lie triangles whose slope is made of nothing. They are taken off, and the
//! row itself becomes the side.

use super::hull::{GIVEN, OUTER};
use super::rules::within;
use super::tiling::{Node, ON_HULL};
use crate::geometry::Point;
use crate::geometry::predicates::cross;
use crate::geometry::triangulation::{Links, Triangulation};
use std::cmp::{Ordering, Reverse};
use std::collections::BinaryHeap;

/// A sliver is lower than this share of the way along its base from either end to below its far corner: about an
/// eighth, but no fraction of small numbers, so that no grid has triangles for which rounding would decide.
const LOWEST: f64 = 0.123_606_797_749_978_97;

/// Whatever the rules, a place within so much of a hull edge is on it, in metres: no tape tells a micrometre.
const FLATTEST: f64 = 1e-6;

/// Takes off the triangles at hull edges whose far corner is within `flat` of the edge. Two edges may have the same far
/// corner; the nearest takes it, so that the order in which edges are looked at does not count.
pub(super) fn peel(triangulation: &mut Triangulation, nodes: &mut [Node], edges: &[u32], flat: f64) {
    let flat = flat.max(FLATTEST);
    let mut slivers = BinaryHeap::new();
    for &edge in edges {
        slivers.extend(Sliver::at(triangulation.links(), nodes, edge, edge, flat).map(Reverse));
    }
    while let Some(Reverse(Sliver { distance, edge, hull_edge })) = slivers.pop() {
        let links = triangulation.links_mut();
        let second = links.around_left(edge);
        let third = links.around_left(second);
        let apex = &mut nodes[links.to(second) as usize];
        if apex.has(ON_HULL) {
            continue;
        }
        apex.flags |= ON_HULL;
        for half in [edge, second, third] {
            links.set_mark(half, links.mark(half) | OUTER);
        }
        for inner in [second ^ 1, third ^ 1] {
            // But for rounding the far corner might as well have been on the hull itself.
            let hull_edge = if distance <= FLATTEST { inner } else { hull_edge };
            slivers.extend(Sliver::at(links, nodes, inner, hull_edge, flat).map(Reverse));
        }
    }
}

/// Puts the places from a hull edge's start up to (not with) its end on a chain, along what is left there.
pub(super) fn follow(links: &Links, hull_edge: u32, chain: &mut Vec<u32>) {
    let end = links.to(hull_edge);
    let mut edge = hull_edge;
    loop {
        // Turn away from what was taken off.
        while links.mark(edge) & OUTER != 0 {
            edge = links.next(edge);
            if edge == hull_edge {
                // Nothing at all is left at this place.
                chain.push(links.from(edge));
                return;
            }
        }
        chain.push(links.from(edge));
        if links.to(edge) == end {
            return;
        }
        edge ^= 1;
    }
}

/// A triangle to be taken off, and how far its far corner is from the hull edge it belongs to.
#[derive(Clone, Copy, Debug)]
struct Sliver {
    distance: f64,
    edge: u32,
    hull_edge: u32,
}

impl Sliver {
    /// The triangle on the left of an edge, if it is a sliver of a hull edge.
    #[inline]
    fn at(links: &Links, nodes: &[Node], edge: u32, hull_edge: u32, flat: f64) -> Option<Self> {
        let place = |node: u32| nodes[node as usize].at();
        let second = links.around_left(edge);
        let apex = links.to(second);
        // A face that was given stays, be it ever so low.
        if links.mark(edge) & (OUTER | GIVEN) != 0 || nodes[apex as usize].has(ON_HULL) {
            return None;
        }
        let (a, b, c) = (place(links.from(edge)), place(links.to(edge)), place(apex));
        if !is_low(a, b, c) {
            return None;
        }
        let (start, end) = (place(links.from(hull_edge)), place(links.to(hull_edge)));
        let distance = cross(start, end, c) / start.distance(end);
        (within(distance, flat) && is_low(start, end, c)).then_some(Self { distance, edge, hull_edge })
    }
}

/// Whether a place is low over a base and well between its ends.
#[inline]
fn is_low(a: Point, b: Point, c: Point) -> bool {
    let (dx, dy) = (b.x - a.x, b.y - a.y);
    let from_start = (c.x - a.x) * dx + (c.y - a.y) * dy;
    let from_end = dx * dx + dy * dy - from_start;
    // All three are multiples of the base's length.
    cross(a, b, c) <= LOWEST * from_start.min(from_end)
}

impl PartialEq for Sliver {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other).is_eq()
    }
}

impl Eq for Sliver {}

impl PartialOrd for Sliver {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Sliver {
    fn cmp(&self, other: &Self) -> Ordering {
        self.distance.total_cmp(&other.distance).then(self.edge.cmp(&other.edge))
    }
}
