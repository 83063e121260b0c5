//! The ground beyond the shots: the height of the nearest place on the hull, and on from there by the fitted slope.
//!
//! Beyond a straight side the nearest places follow the side, so the strip square to each of its pieces is plane;
//! beyond a corner of the hull the nearest place is the corner, and the wedge between both neighbouring strips is
//! plane too. Strips and wedges together tile everything outside the hull.

use super::cut::Ground;
use super::frame::{Frame, vertex};
use super::hull::{Hull, Side};
use super::mesh::Mesh;
use super::tiling::{Source, Tiling};
use crate::geometry::Point;
use crate::geometry::clip::{Line, MADE, Vertex, keep_left, split};

/// The farthest that the region reaches beyond the hull.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Farthest {
    pub(super) distance: f64,
    pub(super) at: Point,
}

/// Adds everything of the region that is outside the hull.
pub(super) fn extend(mesh: &Mesh, frame: &Frame, tiling: &mut Tiling) -> Farthest {
    let mut beyond = Beyond {
        hull: &mesh.hull,
        slope: Point::new(mesh.plane.b(), mesh.plane.c()),
        hair: frame.hair,
        tiling,
        farthest: Farthest::default(),
        part: Vec::with_capacity(8),
        outside: Vec::with_capacity(8),
        strip: Vec::with_capacity(8),
        rest: Vec::with_capacity(8),
    };
    for part in 0..frame.parts() {
        beyond.part.clear();
        beyond.part.extend(frame.part(part).iter().map(|side| {
            let corner = side.start();
            Vertex { x: corner.x, y: corner.y, z: 0.0, id: MADE }
        }));
        beyond.part();
    }
    beyond.farthest
}

struct Beyond<'a> {
    hull: &'a Hull,
    slope: Point,
    hair: f64,
    tiling: &'a mut Tiling,
    farthest: Farthest,
    /// The convex part of the region at hand, and what cuts make of it.
    part: Vec<Vertex>,
    outside: Vec<Vertex>,
    strip: Vec<Vertex>,
    rest: Vec<Vertex>,
}

impl Beyond<'_> {
    fn place(&self, chain: u32) -> Point {
        self.tiling.nodes[self.hull.chain[chain as usize] as usize].at()
    }

    fn part(&mut self) {
        let hull = self.hull;
        let mut before = hull.sides.last();
        for side in &hull.sides {
            if let Some(before) = before {
                self.wedge(before, side);
            }
            self.side(side);
            before = Some(side);
        }
    }

    /// The wedge beyond the corner where one side ends and the next starts.
    fn wedge(&mut self, before: &Side, after: &Side) {
        let corner = self.place(after.from);
        let past = Line::square_to(corner, before.along);
        if !self.part.iter().any(|v| past.left(v.x, v.y) > self.hair) {
            return;
        }
        keep_left(&self.part, &past, self.hair, &mut self.outside);
        let short = Line::square_to(corner, Point::new(-after.along.x, -after.along.y));
        keep_left(&self.outside, &short, self.hair, &mut self.strip);
        if self.strip.len() < 3 {
            return;
        }
        let node = self.hull.chain[after.from as usize];
        for index in 0..self.strip.len() {
            let Vertex { x, y, .. } = self.strip[index];
            self.strip[index] = self.extended(x, y, corner, vertex(&self.tiling.nodes, node));
        }
        self.tiling.polygon(&self.strip, Ground::Beyond, Source::Wedge { at: after.from });
    }

    /// The strips beyond one side.
    fn side(&mut self, side: &Side) {
        let (start, outward) = (self.place(side.from), side.outward());
        let shifted = Point::new(start.x - side.depth * outward.x, start.y - side.depth * outward.y);
        let line = Line::square_to(shifted, outward);
        if !self.part.iter().any(|v| line.left(v.x, v.y) > self.hair) {
            return;
        }
        keep_left(&self.part, &line, self.hair, &mut self.strip);
        keep_left(&self.strip, &Line::square_to(start, side.along), self.hair, &mut self.outside);
        let along = |v: &Vertex| (v.x - start.x) * side.along.x + (v.y - start.y) * side.along.y;
        let least = self.outside.iter().map(along).fold(f64::INFINITY, f64::min);
        for at in side.from..side.to {
            if self.outside.len() < 3 {
                return;
            }
            let end = self.place(at + 1);
            if (end.x - start.x) * side.along.x + (end.y - start.y) * side.along.y < least {
                continue;
            }
            let cut = Line::square_to(end, side.along);
            split(&self.outside, &cut, self.hair, &mut self.rest, &mut self.strip);
            std::mem::swap(&mut self.outside, &mut self.rest);
            self.strip(side, at);
        }
    }

    /// The strip beyond one piece of a side.
    fn strip(&mut self, side: &Side, at: u32) {
        let (from, to) = (self.place(at), self.place(at + 1));
        if side.depth > 0.0 && self.strip.len() > 2 {
            keep_left(&self.strip, &Line::through(to, from), self.hair, &mut self.rest);
            std::mem::swap(&mut self.strip, &mut self.rest);
        }
        if self.strip.len() < 3 {
            return;
        }
        let nodes = &self.tiling.nodes;
        let [start, end] = [at, at + 1].map(|index| vertex(nodes, self.hull.chain[index as usize]));
        let length = (to.x - from.x) * side.along.x + (to.y - from.y) * side.along.y;
        for index in 0..self.strip.len() {
            let Vertex { x, y, .. } = self.strip[index];
            let along = (x - from.x) * side.along.x + (y - from.y) * side.along.y;
            let share = (along / length).clamp(0.0, 1.0);
            let foot = Point::new(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y));
            let id = if along <= self.hair {
                start.id
            } else if along >= length - self.hair {
                end.id
            } else {
                MADE
            };
            let height = start.z + share * (end.z - start.z);
            self.strip[index] = self.extended(x, y, foot, Vertex { x, y, z: height, id });
        }
        self.tiling.polygon(&self.strip, Ground::Beyond, Source::Strip { at });
    }

    /// A corner at a place, with the height at the nearest place of the hull carried on by the slope. A corner right
    /// at a shot is that shot.
    fn extended(&mut self, x: f64, y: f64, nearest: Point, hull: Vertex) -> Vertex {
        let (dx, dy) = (x - nearest.x, y - nearest.y);
        let squared = dx * dx + dy * dy;
        if squared > self.farthest.distance * self.farthest.distance {
            self.farthest = Farthest { distance: squared.sqrt(), at: Point::new(x, y) };
        }
        let id = if squared <= self.hair * self.hair { hull.id } else { MADE };
        Vertex { x, y, z: hull.z + self.slope.x * dx + self.slope.y * dy, id }
    }
}
