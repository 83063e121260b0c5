//! The ground beyond the shots: the height of the nearest place on the hull, and on from there by the fitted slope.
//!
//! Beyond a straight side the nearest places follow the side, so the strip square to each of its pieces is plane;
//! beyond a corner of the hull the nearest place is the corner, and the wedge between both neighbouring strips is
//! plane too. Strips and wedges together tile everything outside the hull.

use super::cut::Ground;
use super::frame::{Frame, vertex};
use super::hull::{Hull, Side};
use super::mesh::Mesh;
use super::tiling::{INSIDE, Source, Tiling};
use crate::geometry::Point;
use crate::geometry::clip::{Line, MADE, Vertex, keep_left, split};

/// The farthest that the region reaches beyond the hull.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Farthest {
    squared: f64,
    pub(super) at: Point,
}

impl Farthest {
    /// How far it is from the ground between the shots.
    pub(super) fn distance(&self) -> f64 {
        self.squared.sqrt()
    }
}

/// Adds everything of the region that is outside the hull.
pub(super) fn extend(mesh: &Mesh, frame: &Frame, tiling: &mut Tiling) -> Farthest {
    let mut beyond = Beyond {
        hull: &mesh.hull,
        slope: Point::new(mesh.fitted.plane.b(), mesh.fitted.plane.c()),
        hair: frame.hair,
        tiling,
        farthest: Farthest::default(),
        only: frame.only().is_some(),
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

pub(super) struct Beyond<'a> {
    pub(super) hull: &'a Hull,
    slope: Point,
    pub(super) hair: f64,
    pub(super) tiling: &'a mut Tiling,
    farthest: Farthest,
    /// Whether the region is its only part.
    only: bool,
    /// The convex part of the region at hand, and what cuts make of it.
    part: Vec<Vertex>,
    outside: Vec<Vertex>,
    pub(super) strip: Vec<Vertex>,
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
        if self.hull.chain[before.to as usize] == self.hull.chain[after.from as usize] {
            return self.about_corner(after.from);
        }
        // A step ends at this corner: each side has its half of the wedge.
        let (out, on) = (before.outward(), after.outward());
        let length = (out.x + on.x).hypot(out.y + on.y).max(f64::MIN_POSITIVE);
        let half = Line::square_to(corner, Point::new(-(out.y + on.y) / length, (out.x + on.x) / length));
        split(&self.strip, &half, self.hair, &mut self.rest, &mut self.outside);
        std::mem::swap(&mut self.strip, &mut self.outside);
        self.about_corner(before.to);
        std::mem::swap(&mut self.strip, &mut self.rest);
        self.about_corner(after.from);
    }

    /// Adds the polygon at hand, all of which is nearest to one corner of the hull.
    fn about_corner(&mut self, at: u32) {
        let nearest = self.hull_vertex(at);
        for index in 0..self.strip.len() {
            let Vertex { x, y, .. } = self.strip[index];
            self.strip[index] = self.extended(x, y, &nearest);
        }
        self.tiling.polygon(&self.strip, Ground::Beyond, Source::Wedge { at });
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
        if self.is_bordered(side) {
            let end = Line::square_to(self.place(side.to), Point::new(-side.along.x, -side.along.y));
            keep_left(&self.outside, &end, self.hair, &mut self.strip);
            if self.border(side) {
                return;
            }
        }
        let along = |v: &Vertex| (v.x - start.x) * side.along.x + (v.y - start.y) * side.along.y;
        let least = self.outside.iter().map(along).fold(f64::INFINITY, f64::min);
        for at in side.from..side.to {
            if self.outside.len() < 3 {
                return;
            }
            let end = self.place(at + 1);
            if end == self.place(at) {
                // A step meets the hull.
                continue;
            }
            let cut = Line::square_to(end, side.along);
            if -cut.left(start.x, start.y) < least {
                continue;
            }
            split(&self.outside, &cut, self.hair, &mut self.rest, &mut self.strip);
            std::mem::swap(&mut self.outside, &mut self.rest);
            self.strip(side, at);
        }
    }

    /// The strip beyond one piece of a side.
    fn strip(&mut self, side: &Side, at: u32) {
        let (start, end) = (self.hull_vertex(at), self.hull_vertex(at + 1));
        if side.bent && self.strip.len() > 2 {
            let line = Line::through(Point::new(end.x, end.y), Point::new(start.x, start.y));
            keep_left(&self.strip, &line, self.hair, &mut self.rest);
            std::mem::swap(&mut self.strip, &mut self.rest);
        }
        if self.strip.len() < 3 {
            return;
        }
        let (dx, dy, dz) = (end.x - start.x, end.y - start.y, end.z - start.z);
        let length = dx * side.along.x + dy * side.along.y;
        let per_length = 1.0 / length;
        for index in 0..self.strip.len() {
            let Vertex { x, y, .. } = self.strip[index];
            let along = (x - start.x) * side.along.x + (y - start.y) * side.along.y;
            let nearest = if along <= self.hair {
                start
            } else if along >= length - self.hair {
                end
            } else {
                let share = along * per_length;
                Vertex { x: start.x + share * dx, y: start.y + share * dy, z: start.z + share * dz, id: MADE }
            };
            self.strip[index] = self.extended(x, y, &nearest);
        }
        self.tiling.polygon(&self.strip, Ground::Beyond, Source::Strip { at });
    }

    /// Whether a side lies straight and wholly inside the region.
    fn is_bordered(&self, side: &Side) -> bool {
        let inside = |at: u32| self.tiling.nodes[self.hull.chain[at as usize] as usize].has(INSIDE);
        self.only && side.depth <= self.hair && inside(side.from) && inside(side.to)
    }

    pub(super) fn hull_vertex(&self, chain: u32) -> Vertex {
        vertex(&self.tiling.nodes, self.hull.chain[chain as usize])
    }

    /// A corner at a place, with the height at the nearest place of the hull carried on by the slope. A corner right
    /// at a shot is that shot.
    #[inline]
    pub(super) fn extended(&mut self, x: f64, y: f64, nearest: &Vertex) -> Vertex {
        let (dx, dy) = (x - nearest.x, y - nearest.y);
        let squared = dx * dx + dy * dy;
        if squared > self.farthest.squared {
            self.farthest = Farthest { squared, at: Point::new(x, y) };
        }
        let id = if squared <= self.hair * self.hair { nearest.id } else { MADE };
        Vertex { x, y, z: nearest.z + self.slope.x * dx + self.slope.y * dy, id }
    }
}
