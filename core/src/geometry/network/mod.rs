//! Triangles that share their corners, so that levels and lines can be followed from one to the next.
//!
//! Every side is met by one triangle or by two from its two ways round, never in part: where the cuts that made the
//! triangles left a corner amid another triangle's side, that side is split there. Where the surface has a step, the
//! triangles on both sides of it keep corners of their own, which stand at the same places.

mod conform;
mod insert;
#[cfg(test)]
mod tests;
mod weld;

use super::Point;
use std::collections::{HashMap, HashSet};

pub(crate) use weld::SAME_HEIGHT;

/// No triangle: a side on the border, or at a step.
pub(crate) const BORDER: u32 = u32::MAX;

/// Corners within this of one another in plan, in metres, stand at one place: cuts that meet made them twice, each with
/// its own rounding.
const SAME: f64 = 1e-7;

/// Triangles over shared corners, each with its neighbours.
#[derive(Clone, Debug, Default)]
pub(crate) struct Network {
    corners: Vec<Corner>,
    triangles: Vec<[u32; 3]>,
    /// Which of the given triangles each is a part of.
    parents: Vec<u32>,
    /// Across the side from each corner to the next.
    neighbours: Vec<[u32; 3]>,
}

/// A corner that triangles share.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Corner {
    /// Where it stands.
    pub(crate) at: Point,
    /// How high.
    pub(crate) height: f64,
    /// The number of its place: corners of both sides of a step have the same.
    pub(crate) place: u32,
}

/// A corner that was made amid a side at a step, where the other side has one: between two corners, at a share of the way.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Made {
    pub(crate) corner: u32,
    pub(crate) ends: [u32; 2],
    pub(crate) share: f64,
}

/// A network, and what became of the corners it was made from.
#[derive(Clone, Debug, Default)]
pub(crate) struct Joined {
    pub(crate) network: Network,
    /// Which corner of the network every given one became.
    pub(crate) became: Vec<u32>,
    /// The corners that were made, in the order they were.
    pub(crate) made: Vec<Made>,
}

impl Network {
    /// Joins triangles, counter-clockwise, whose corners `[x, y, height]` may stand there several times: those at one place
    /// and height become one. A triangle that thereby loses its area is left out.
    pub(crate) fn joined(corners: &[[f64; 3]], triangles: &[[u32; 3]]) -> Joined {
        let (corners, became) = weld::weld(corners);
        let mut network = Self { corners, ..Self::default() };
        for (parent, triangle) in (0_u32..).zip(triangles) {
            let [a, b, c] = triangle.map(|corner| became[corner as usize]);
            if a != b && b != c && c != a {
                network.triangles.push([a, b, c]);
                network.parents.push(parent);
            }
        }
        network.meet();
        let made = conform::conform(&mut network);
        Joined { network, became, made }
    }

    /// Finds the neighbours anew.
    fn meet(&mut self) {
        let mut open: HashMap<(u32, u32), (u32, usize)> = HashMap::with_capacity(2 * self.triangles.len());
        self.neighbours = vec![[BORDER; 3]; self.triangles.len()];
        for (number, triangle) in (0_u32..).zip(&self.triangles) {
            for side in 0..3 {
                let (from, to) = (triangle[side], triangle[(side + 1) % 3]);
                match open.remove(&(to, from)) {
                    Some((other, of_other)) => {
                        self.neighbours[number as usize][side] = other;
                        self.neighbours[other as usize][of_other] = number;
                    }
                    None => {
                        open.insert((from, to), (number, side));
                    }
                }
            }
        }
    }

    /// The corners.
    pub(crate) fn corners(&self) -> &[Corner] {
        &self.corners
    }

    /// The triangles by the numbers of their corners, counter-clockwise.
    pub(crate) fn triangles(&self) -> &[[u32; 3]] {
        &self.triangles
    }

    /// Which of the given triangles each is a part of.
    pub(crate) fn parents(&self) -> &[u32] {
        &self.parents
    }

    /// The triangles across the sides of each: side 0 goes from corner 0 to corner 1. `BORDER` where there is none.
    pub(crate) fn neighbours(&self) -> &[[u32; 3]] {
        &self.neighbours
    }

    /// The sides without a neighbour, from corner to corner with the triangle on their left: the border, and both sides of
    /// every step.
    fn open_sides(&self) -> impl Iterator<Item = (u32, usize, [u32; 2])> + '_ {
        let triangles = (0_u32..).zip(self.triangles.iter().zip(&self.neighbours));
        triangles.flat_map(|(number, (triangle, neighbours))| {
            (0..3)
                .filter(|&side| neighbours[side] == BORDER)
                .map(move |side| (number, side, [triangle[side], triangle[(side + 1) % 3]]))
        })
    }

    /// The sides on the border, with nothing beyond them, from corner to corner; the triangles are on their left.
    pub(crate) fn border(&self) -> Vec<[u32; 2]> {
        let places = |[from, to]: [u32; 2]| [from, to].map(|corner| self.corners[corner as usize].place);
        let open: HashSet<[u32; 2]> = self.open_sides().map(|(.., side)| places(side)).collect();
        let sides = self.open_sides().map(|(.., side)| side);
        sides
            .filter(|&side| {
                let [from, to] = places(side);
                !open.contains(&[to, from])
            })
            .collect()
    }
}
