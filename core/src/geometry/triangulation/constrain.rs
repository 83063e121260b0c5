//! Constraint edges: lines that must be edges of the triangles, made so by flips (after Sloan 1993).

use super::{Links, NONE, Triangulation};
use crate::geometry::predicates::{in_circle, turn};
use std::collections::VecDeque;

/// The mark of a constraint edge, on both halves.
pub(crate) const CONSTRAINT: u32 = 1;

/// What stands in the way of a constraint edge.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Obstacle {
    /// A point lies exactly on the line.
    Point(u32),
    /// Another constraint edge, between these points, crosses it.
    Constraint(u32, u32),
}

/// A triangulation under constraint: knows one half-edge out of every point.
pub(crate) struct Constrainer<'a> {
    triangulation: &'a mut Triangulation,
    spokes: Vec<u32>,
    crossed: VecDeque<u32>,
    turned: Vec<u32>,
}

impl<'a> Constrainer<'a> {
    /// Prepares a triangulation for constraint edges.
    pub(crate) fn new(triangulation: &'a mut Triangulation) -> Self {
        let mut spokes = vec![NONE; triangulation.points.len()];
        for edge in triangulation.links.alive() {
            spokes[triangulation.links.from(edge) as usize] = edge;
        }
        Self { triangulation, spokes, crossed: VecDeque::new(), turned: Vec::new() }
    }

    fn links(&mut self) -> &mut Links {
        &mut self.triangulation.links
    }

    fn turn(&self, a: u32, b: u32, c: u32) -> f64 {
        let points = &self.triangulation.points;
        turn(points[a as usize], points[b as usize], points[c as usize])
    }

    /// The half-edge from one point to another, if they are joined.
    pub(crate) fn joined(&self, from: u32, to: u32) -> Option<u32> {
        let links = &self.triangulation.links;
        let first = *self.spokes.get(from as usize).filter(|&&edge| edge != NONE)?;
        let mut edge = first;
        loop {
            if links.to(edge) == to {
                return Some(edge);
            }
            edge = links.next(edge);
            if edge == first {
                return None;
            }
        }
    }

    /// Makes the line between two points an edge, and gives its half-edge.
    ///
    /// Nothing is changed when something stands in the way.
    pub(crate) fn join(&mut self, from: u32, to: u32) -> Result<u32, Obstacle> {
        let edge = match self.joined(from, to) {
            Some(edge) => edge,
            None => {
                self.collect_crossed(from, to)?;
                self.flip_crossed(from, to);
                self.mend(from, to);
                self.joined(from, to).unwrap_or(NONE)
            }
        };
        if edge != NONE {
            self.links().set_mark(edge, CONSTRAINT);
            self.links().set_mark(edge ^ 1, CONSTRAINT);
        }
        Ok(edge)
    }

    /// The edge opposite to `from` in the triangle through which the line to `to` leaves.
    fn first_crossed(&self, from: u32, to: u32) -> Result<u32, Obstacle> {
        let links = &self.triangulation.links;
        let points = &self.triangulation.points;
        let first = self.spokes[from as usize];
        let mut edge = first;
        loop {
            let ahead = links.to(edge);
            let side = self.turn(from, ahead, to);
            if side == 0.0 {
                let (o, p, q) = (points[from as usize], points[ahead as usize], points[to as usize]);
                if (p.x - o.x) * (q.x - o.x) + (p.y - o.y) * (q.y - o.y) > 0.0 {
                    return Err(Obstacle::Point(ahead));
                }
            }
            let next = links.next(edge);
            if side > 0.0 && self.turn(from, links.to(next), to) < 0.0 {
                return Ok(links.around_left(edge));
            }
            edge = next;
            if edge == first {
                // Cannot be: the wedges around a point of the hull cover the hull.
                return Err(Obstacle::Point(from));
            }
        }
    }

    fn collect_crossed(&mut self, from: u32, to: u32) -> Result<(), Obstacle> {
        self.crossed.clear();
        let mut edge = self.first_crossed(from, to)?;
        loop {
            let links = &self.triangulation.links;
            if links.mark(edge) & CONSTRAINT != 0 {
                return Err(Obstacle::Constraint(links.from(edge), links.to(edge)));
            }
            self.crossed.push_back(edge);
            let beyond = links.around_left(edge ^ 1);
            let apex = links.to(beyond);
            if apex == to {
                return Ok(());
            }
            let side = self.turn(from, to, apex);
            if side == 0.0 {
                return Err(Obstacle::Point(apex));
            }
            edge = if side > 0.0 { beyond } else { links.around_left(beyond) };
        }
    }

    fn flip_crossed(&mut self, from: u32, to: u32) {
        self.turned.clear();
        while let Some(edge) = self.crossed.pop_front() {
            let (p, q, left, right) = self.corners(edge);
            if self.turn(right, left, p) <= 0.0 || self.turn(right, left, q) >= 0.0 {
                self.crossed.push_back(edge);
                continue;
            }
            self.flip(edge);
            let shares = [left, right].iter().any(|&corner| corner == from || corner == to);
            if !shares && (self.turn(from, to, left) > 0.0) != (self.turn(from, to, right) > 0.0) {
                self.crossed.push_back(edge);
            } else {
                self.turned.push(edge);
            }
        }
    }

    /// Flips the turned edges on until each is as good as its constraint allows.
    fn mend(&mut self, from: u32, to: u32) {
        let mut again = true;
        while again {
            again = false;
            for i in 0..self.turned.len() {
                let edge = self.turned[i];
                let (p, q, left, right) = self.corners(edge);
                if (p, q) == (from, to) || (q, p) == (from, to) {
                    continue;
                }
                let at = |point: u32| self.triangulation.points[point as usize];
                let (inside, bound) = in_circle(at(p), at(q), at(left), at(right));
                if inside > bound {
                    self.flip(edge);
                    again = true;
                }
            }
        }
    }

    /// Both ends of an edge and the corners of the triangles on its left and right.
    fn corners(&self, edge: u32) -> (u32, u32, u32, u32) {
        let links = &self.triangulation.links;
        let left = links.to(links.around_left(edge));
        let right = links.to(links.around_left(edge ^ 1));
        (links.from(edge), links.to(edge), left, right)
    }

    fn flip(&mut self, edge: u32) {
        let (p, q, ..) = self.corners(edge);
        let (spoke_p, spoke_q) = (self.links().next(edge), self.links().next(edge ^ 1));
        self.links().flip(edge);
        self.spokes[p as usize] = spoke_p;
        self.spokes[q as usize] = spoke_q;
    }
}
