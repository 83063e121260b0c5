//! The edge of the ground between the shots, in straight sides.

use super::slivers::{follow, peel};
use super::tiling::{Node, ON_HULL};
use crate::geometry::Point;
use crate::geometry::predicates::cross;
use crate::geometry::triangulation::{Links, NONE, Triangulation};

/// The mark of half-edges with no ground between shots on their left.
pub(super) const OUTER: u32 = 4;
/// The mark of half-edges with a face on their left that the caller gave.
pub(super) const GIVEN: u32 = 32;

/// The hull: a closed chain of places, counter-clockwise, in straight sides.
#[derive(Clone, Debug, Default)]
pub(super) struct Hull {
    /// The places along it; the last is the first again.
    pub(super) chain: Vec<u32>,
    /// Its sides in order.
    pub(super) sides: Vec<Side>,
}

/// A straight side of the hull. Places on it may lie a little inwards of the line between its ends.
#[derive(Clone, Copy, Debug)]
pub(super) struct Side {
    /// Where it starts in the chain.
    pub(super) from: u32,
    /// Where it ends in the chain.
    pub(super) to: u32,
    /// Unit vector from start to end; the outside is on its right.
    pub(super) along: Point,
    /// How far inwards its places lie at most.
    pub(super) depth: f64,
    /// Whether any of its places is off the line between its ends, be it by rounding.
    pub(super) bent: bool,
}

impl Side {
    /// Unit vector away from the shots.
    #[inline]
    pub(super) fn outward(&self) -> Point {
        Point::new(self.along.y, -self.along.x)
    }
}

/// Hull edges that turn by no more than this (the sine of the angle) are one side.
const STRAIGHT: f64 = 1e-9;

impl Hull {
    /// Walks around a triangulation, marks its outside, and takes the slivers off: see there for `flat`.
    pub(super) fn around(triangulation: &mut Triangulation, nodes: &mut [Node], flat: f64) -> Self {
        let mut edges = outline(triangulation, nodes);
        rotate_to_corner(&mut edges, triangulation.links(), nodes);
        peel(triangulation, nodes, &edges, flat);
        let links = triangulation.links();
        let mut hull =
            Self { chain: Vec::with_capacity(edges.len() + 1), sides: Vec::with_capacity(edges.len()) };
        let mut side_start = 0;
        for (index, &edge) in edges.iter().enumerate() {
            follow(links, edge, &mut hull.chain);
            if index + 1 == edges.len() || turns(links, nodes, edge, edges[index + 1]) {
                hull.close_side(nodes, side_start, links.to(edge));
                side_start = hull.chain.len();
            }
        }
        if let Some(&first) = hull.chain.first() {
            hull.chain.push(first);
        }
        hull
    }

    /// Ends a side at a place that is yet to be put on the chain.
    pub(super) fn close_side(&mut self, nodes: &[Node], from: usize, end: u32) {
        let (start, end) = (nodes[self.chain[from] as usize].at(), nodes[end as usize].at());
        let (dx, dy) = (end.x - start.x, end.y - start.y);
        let scale = 1.0 / (dx * dx + dy * dy).sqrt();
        let along = Point::new(dx * scale, dy * scale);
        let inwards = |node: u32| {
            let place = nodes[node as usize].at();
            along.x * (place.y - start.y) - along.y * (place.x - start.x)
        };
        let (mut depth, mut bent) = (0.0, false);
        for &node in &self.chain[from + 1..] {
            let inwards = inwards(node);
            depth = inwards.max(depth);
            bent |= inwards != 0.0;
        }
        self.sides.push(Side { from: from as u32, to: self.chain.len() as u32, along, depth, bent });
    }
}

/// The half-edges of the hull with the ground on their left, counter-clockwise; marks what is outside.
fn outline(triangulation: &mut Triangulation, nodes: &mut [Node]) -> Vec<u32> {
    let first = triangulation.outside();
    let mut edges = Vec::with_capacity(32);
    if first == NONE {
        return edges;
    }
    let links = triangulation.links_mut();
    let mut edge = first;
    loop {
        links.set_mark(edge, links.mark(edge) | OUTER);
        nodes[links.from(edge) as usize].flags |= ON_HULL;
        edges.push(edge ^ 1);
        edge = links.around_left(edge);
        if edge == first {
            break;
        }
    }
    edges.reverse();
    edges
}

/// Whether the hull turns between one edge and the next.
fn turns(links: &Links, nodes: &[Node], edge: u32, next: u32) -> bool {
    let place = |node: u32| nodes[node as usize].at();
    let (a, b, c) = (place(links.from(edge)), place(links.to(edge)), place(links.to(next)));
    let square = |p: Point, q: Point| (q.x - p.x) * (q.x - p.x) + (q.y - p.y) * (q.y - p.y);
    let turned = cross(a, b, c);
    turned * turned > STRAIGHT * STRAIGHT * square(a, b) * square(b, c)
}

/// Puts an edge first that starts at a corner of the hull.
fn rotate_to_corner(edges: &mut [u32], links: &Links, nodes: &[Node]) {
    let count = edges.len();
    let corner =
        (0..count).find(|&index| turns(links, nodes, edges[(index + count - 1) % count], edges[index]));
    if let Some(corner) = corner {
        edges.rotate_left(corner);
    }
}
