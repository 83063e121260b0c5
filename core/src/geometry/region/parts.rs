//! Convex parts that tile a region.
//!
//! The corners are triangulated with all runs as constraint edges; then every inner edge that no convex corner needs is
//! taken out again (Hertel and Mehlhorn 1983: at most four times the least number of parts). No corner is added, so
//! nothing is rounded.

use super::Ring;
use crate::geometry::Point;
use crate::geometry::predicates::{by_place, turn};
use crate::geometry::triangulation::{CONSTRAINT, Constrainer, Links, NONE, Triangulation};

/// Convex polygons, counter-clockwise, that tile a region.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Parts {
    corners: Vec<Point>,
    /// Where each part but the first starts.
    starts: Vec<u32>,
}

/// The mark of an edge with the region on its left.
const INSIDE: u32 = 2;

impl Parts {
    /// A ring that is convex itself, as its own only part; nothing when it is not.
    pub(super) fn of_convex(ring: &Ring) -> Option<Self> {
        let corners = ring.corners();
        if ring.check_area().is_err() || !is_convex(corners, ring.is_counter_clockwise()) {
            return None;
        }
        Some(Self { corners: ring.corners_counter_clockwise(), starts: Vec::new() })
    }

    /// The parts of a valid region.
    pub(super) fn of(outer: &Ring, holes: &[Ring]) -> Self {
        if holes.is_empty()
            && let Some(one) = Self::of_convex(outer)
        {
            return one;
        }
        let mut triangulation = constrained(outer, holes);
        let inside = spread_inside(triangulation.links_mut());
        merge(&mut triangulation, &inside);
        collect(&triangulation)
    }

    /// Whether there is only one.
    pub(crate) fn is_one(&self) -> bool {
        self.starts.is_empty()
    }

    /// The corners of each part.
    pub(crate) fn iter(&self) -> impl Iterator<Item = &[Point]> + '_ {
        let starts = std::iter::once(0).chain(self.starts.iter().map(|&start| start as usize));
        let ends = self.starts.iter().map(|&start| start as usize).chain(std::iter::once(self.corners.len()));
        starts.zip(ends).map(|(start, end)| &self.corners[start..end])
    }
}

/// Whether a ring turns one way only, and once around. Straight corners are allowed, folds are not.
fn is_convex(corners: &[Point], counter_clockwise: bool) -> bool {
    let (mut reversals, mut last_direction) = (0, 0.0);
    let mut first_direction = 0.0;
    let count = corners.len();
    let (mut a, mut b) = (corners[count - 2], corners[count - 1]);
    for &c in corners {
        let turned = turn(a, b, c);
        let wrong = if counter_clockwise { turned < 0.0 } else { turned > 0.0 };
        let folded = turned == 0.0 && (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y) <= 0.0;
        if wrong || folded {
            return false;
        }
        let direction = c.x - b.x;
        if direction != 0.0 {
            if direction * last_direction < 0.0 {
                reversals += 1;
            }
            if first_direction == 0.0 {
                first_direction = direction;
            }
            last_direction = direction;
        }
        (a, b) = (b, c);
    }
    reversals + usize::from(first_direction * last_direction < 0.0) == 2
}

/// The triangulated corners, with the runs as constraint edges that are marked where the region is on their left.
fn constrained(outer: &Ring, holes: &[Ring]) -> Triangulation {
    let mut corners: Vec<Point> =
        std::iter::once(outer).chain(holes).flat_map(|ring| ring.corners().iter().copied()).collect();
    corners.sort_unstable_by(by_place);
    let number = |point: Point| corners.partition_point(|corner| by_place(corner, &point).is_lt()) as u32;
    let runs: Vec<[u32; 2]> = std::iter::once(outer)
        .chain(holes)
        .flat_map(Ring::runs)
        .map(|run| [number(run.from), number(run.to)])
        .collect();
    let mut triangulation = Triangulation::of(corners);
    let mut inner_sides = Vec::with_capacity(runs.len());
    let mut constrainer = Constrainer::new(&mut triangulation);
    for [from, to] in runs {
        // Runs neither cross nor pass through corners: nothing can stand in the way.
        if let Ok(edge) = constrainer.join(from, to) {
            inner_sides.push([from, to, edge]);
        }
    }
    // Flips for later runs may have given a half-edge another number only if it was no constraint.
    for [.., edge] in inner_sides {
        triangulation.links_mut().set_mark(edge, CONSTRAINT | INSIDE);
    }
    triangulation
}

/// Marks all half-edges with the region on their left and gives one for each triangle inside.
fn spread_inside(links: &mut Links) -> Vec<u32> {
    let mut pending: Vec<u32> = links.alive().filter(|&edge| links.mark(edge) & INSIDE != 0).collect();
    let mut done = vec![false; links.len()];
    let mut faces = Vec::new();
    while let Some(edge) = pending.pop() {
        if done[edge as usize] {
            continue;
        }
        faces.push(edge);
        let mut around = edge;
        loop {
            done[around as usize] = true;
            links.set_mark(around, links.mark(around) | INSIDE);
            if links.mark(around) & CONSTRAINT == 0 {
                pending.push(around ^ 1);
            }
            around = links.around_left(around);
            if around == edge {
                break;
            }
        }
    }
    faces
}

/// Takes out every inner edge without which both its ends stay convex.
fn merge(triangulation: &mut Triangulation, faces: &[u32]) {
    let mut edges: Vec<u32> = Vec::new();
    for &face in faces {
        let second = triangulation.links().around_left(face);
        let third = triangulation.links().around_left(second);
        edges.extend([face, second, third]);
    }
    for edge in edges {
        let links = triangulation.links();
        if links.from(edge) == NONE || links.mark(edge) & CONSTRAINT != 0 {
            continue;
        }
        if stays_convex(triangulation, edge) && stays_convex(triangulation, edge ^ 1) {
            triangulation.links_mut().remove(edge);
        }
    }
}

/// Whether the corner at the start of an edge is convex once the edge is gone.
fn stays_convex(triangulation: &Triangulation, edge: u32) -> bool {
    let links = triangulation.links();
    let before = triangulation.place(links.next(edge) ^ 1);
    let after = triangulation.place(links.previous(edge) ^ 1);
    turn(before, triangulation.place(edge), after) >= 0.0
}

/// The faces that are left.
fn collect(triangulation: &Triangulation) -> Parts {
    let links = triangulation.links();
    let mut parts = Parts { corners: Vec::new(), starts: Vec::new() };
    let mut done = vec![false; links.len()];
    for edge in links.alive().filter(|&edge| links.mark(edge) & INSIDE != 0) {
        if done[edge as usize] {
            continue;
        }
        if !parts.corners.is_empty() {
            parts.starts.push(parts.corners.len() as u32);
        }
        let mut around = edge;
        loop {
            done[around as usize] = true;
            parts.corners.push(triangulation.place(around));
            around = links.around_left(around);
            if around == edge {
                break;
            }
        }
    }
    parts
}
