//! The edge of the ground between the shots, in straight sides.

use super::tiling::{Node, ON_HULL};
use crate::geometry::Point;
use crate::geometry::predicates::cross;
use crate::geometry::triangulation::{Links, NONE, Triangulation};

/// The mark of half-edges with no ground between shots on their left.
pub(super) const OUTER: u32 = 4;

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

/// A triangle at the hull is a sliver when its height is at most this share of its base.
const SLIVER: f64 = 1.0 / 16.0;

impl Hull {
    /// Walks around a triangulation, marks its outside, and takes slivers off: triangles whose far corner is within
    /// `flat` of the hull edge. Their slope is made of rounding or of the tape's last fraction, and their far corner
    /// belongs on the side. What is removed does not depend on the order, for each edge has its own slivers.
    pub(super) fn around(triangulation: &mut Triangulation, nodes: &mut [Node], flat: f64) -> Self {
        let mut edges = outline(triangulation, nodes);
        rotate_to_corner(&mut edges, triangulation.links(), nodes);
        let mut hull = Self { chain: Vec::with_capacity(edges.len() + 1), sides: Vec::with_capacity(8) };
        let (mut side_start, mut pending) = (0, Vec::new());
        for (index, &edge) in edges.iter().enumerate() {
            peel(triangulation, nodes, edge, flat, &mut pending, &mut hull.chain);
            let next = edges[(index + 1) % edges.len()];
            let ends_side = index + 1 == edges.len() || turns(triangulation.links(), nodes, edge, next);
            if ends_side {
                let end = triangulation.links().to(edge);
                hull.close_side(nodes, side_start, end);
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
        let depth = self.chain[from + 1..].iter().map(|&node| inwards(node)).fold(0.0, f64::max);
        self.sides.push(Side { from: from as u32, to: self.chain.len() as u32, along, depth });
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

/// Puts the places from a hull edge's start up to (not with) its end on the chain, after taking off its slivers.
fn peel(
    triangulation: &mut Triangulation,
    nodes: &mut [Node],
    edge: u32,
    flat: f64,
    pending: &mut Vec<u32>,
    chain: &mut Vec<u32>,
) {
    let (start, end) = (triangulation.place(edge), triangulation.place(edge ^ 1));
    pending.clear();
    pending.push(edge);
    while let Some(edge) = pending.pop() {
        let links = triangulation.links_mut();
        let (second, third) = (links.around_left(edge), links.around_left(links.around_left(edge)));
        let apex = links.to(second);
        let (from, to) = (links.from(edge), links.to(edge));
        let is_triangle = links.around_left(third) == edge && links.mark(edge) & OUTER == 0;
        if is_triangle
            && !nodes[apex as usize].has(ON_HULL)
            && is_sliver(nodes, [from, to, apex], start, end, flat)
        {
            nodes[apex as usize].flags |= ON_HULL;
            for half in [edge, second, third] {
                links.set_mark(half, links.mark(half) | OUTER);
            }
            // The edge nearer to the start is looked at first.
            pending.extend([second ^ 1, third ^ 1]);
        } else {
            chain.push(from);
        }
    }
}

/// Whether a triangle is low over its base `from`-`to` and its apex near the hull edge and between its ends.
fn is_sliver(nodes: &[Node], [from, to, apex]: [u32; 3], start: Point, end: Point, flat: f64) -> bool {
    let [a, b, c] = [from, to, apex].map(|node| nodes[node as usize].at());
    let square = |p: Point, q: Point| (q.x - p.x) * (q.x - p.x) + (q.y - p.y) * (q.y - p.y);
    let within = |p: Point, q: Point, r: Point| {
        let along = (q.x - p.x) * (r.x - p.x) + (q.y - p.y) * (r.y - p.y);
        along > 0.0 && along < square(p, q)
    };
    let low = cross(a, b, c) <= SLIVER * square(a, b);
    let near = cross(start, end, c) <= flat * square(start, end).sqrt();
    low && near && within(a, b, c) && within(start, end, c)
}
