//! The triangles of a cut, as they are put together.

use super::cut::Ground;
use crate::geometry::clip::{MADE, Vertex};
use crate::geometry::predicates::cross;
use crate::geometry::{Point, Sum};

/// A place with a height, in local coordinates.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Node {
    pub(crate) x: f64,
    pub(crate) y: f64,
    pub(crate) z: f64,
    /// The first shot at this place, or `NO_SHOT`.
    pub(super) shot: u32,
    /// What is known of it: see the constants below.
    pub(super) flags: u32,
}

/// No shot: a mean or a corner made by a cut.
pub(super) const NO_SHOT: u32 = u32::MAX;
/// Inside the region, or on its edge.
pub(super) const INSIDE: u32 = 1;
/// On the slab: counts for the fitted plane.
pub(super) const SLAB: u32 = 2;
/// On an outline run, or near enough to count so.
pub(super) const ON_RUN: u32 = 4;
/// On the edge of the ground between the shots.
pub(super) const ON_HULL: u32 = 8;
/// A corner of a triangle between the shots.
pub(crate) const BETWEEN: u32 = 16;
/// A corner of a triangle beyond the shots.
pub(crate) const BEYOND: u32 = 32;

/// A shot of the region: inside it, or near enough to a run to lie on it.
pub(crate) const IN_REGION: u32 = 64;
/// Marked as one side of a step.
pub(super) const STEP: u32 = 128;

impl Node {
    /// The first shot at this place.
    #[inline]
    pub(crate) fn shot(&self) -> Option<usize> {
        (self.shot != NO_SHOT).then_some(self.shot as usize)
    }

    #[inline]
    pub(super) fn at(&self) -> Point {
        Point::new(self.x, self.y)
    }

    /// Whether it is a corner of a triangle between the shots.
    #[inline]
    pub(crate) fn is_measured(&self) -> bool {
        self.has(BETWEEN)
    }

    /// Whether a flag is set.
    #[inline]
    pub(crate) fn has(&self, flag: u32) -> bool {
        self.flags & flag != 0
    }
}

/// A triangle, by the numbers of its nodes.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Piece {
    pub(crate) area: f64,
    pub(crate) corners: [u32; 3],
    pub(super) ground: Ground,
    /// What the height is made from.
    pub(super) source: Source,
}

/// What the height over a triangle is made from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Source {
    /// The fan triangle of a polygon that starts at this place in the loops.
    Loop { face: u32, at: u32 },
    /// The strip beyond the piece of hull that starts at this place of the chain.
    Strip { at: u32 },
    /// The wedge beyond the hull corner at this place of the chain.
    Wedge { at: u32 },
    /// A plane it was changed to: no shot counts.
    Changed,
}

/// Nodes and triangles, growing.
#[derive(Clone, Debug)]
pub(super) struct Tiling {
    pub(super) nodes: Vec<Node>,
    pub(super) pieces: Vec<Piece>,
}

impl Tiling {
    /// Starts from nodes, with room for so many triangles.
    pub(super) fn new(nodes: Vec<Node>, pieces: usize) -> Self {
        Self { nodes, pieces: Vec::with_capacity(pieces) }
    }

    /// Adds a triangle unless it has no area.
    #[inline]
    pub(super) fn triangle(&mut self, a: u32, b: u32, c: u32, ground: Ground, source: Source) {
        let used = if ground == Ground::Beyond { BEYOND } else { BETWEEN };
        let mut place = |number: u32| {
            let node = &mut self.nodes[number as usize];
            node.flags |= used;
            node.at()
        };
        let area = 0.5 * cross(place(a), place(b), place(c));
        if area > 0.0 {
            self.pieces.push(Piece { area, corners: [a, b, c], ground, source });
        }
    }

    /// Adds a convex polygon over which the height is plane.
    pub(super) fn polygon(&mut self, polygon: &[Vertex], ground: Ground, source: Source) {
        let &[ref first, ref second, ref rest @ ..] = polygon else { return };
        if rest.is_empty() {
            return;
        }
        let first = self.number(first);
        let mut last = self.number(second);
        for corner in rest {
            let next = self.number(corner);
            self.triangle(first, last, next, ground, source);
            last = next;
        }
    }

    /// The node of a polygon's corner; a new one where a cut made it.
    #[inline]
    fn number(&mut self, corner: &Vertex) -> u32 {
        if corner.id == MADE { self.add(corner.x, corner.y, corner.z) } else { corner.id }
    }

    /// A new node made by a cut.
    #[inline]
    pub(super) fn add(&mut self, x: f64, y: f64, z: f64) -> u32 {
        self.nodes.push(Node { x, y, z, shot: NO_SHOT, flags: INSIDE });
        self.nodes.len() as u32 - 1
    }

    /// The area of all triangles from one on.
    pub(super) fn area_from(&self, piece: usize) -> f64 {
        self.pieces[piece..].iter().map(|piece| piece.area).sum()
    }

    /// Says of all triangles from one on what ground they are on.
    pub(super) fn change_ground(&mut self, from: usize, ground: Ground) {
        for piece in &mut self.pieces[from..] {
            piece.ground = ground;
        }
    }

    /// The area on each kind of ground.
    pub(super) fn areas(&self) -> [f64; 3] {
        let mut areas = [Sum::new(); 3];
        // Few terms are summed plainly, and only their sums with care: as exact, and much quicker.
        for few in self.pieces.chunks(16) {
            let mut parts = [0.0; 3];
            for piece in few {
                parts[piece.ground as usize] += piece.area;
            }
            for (area, part) in areas.iter_mut().zip(parts) {
                area.add(part);
            }
        }
        areas.map(|area| area.value())
    }
}
