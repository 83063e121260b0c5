//! The ground cut along the ways of water into pieces, each of which drains to one end.
//!
//! What leaves a triangle over one side runs on in parallel lines over the next; where a corner parts it, the lines through that
//! corner are followed back. Each triangle is thus cut exactly, along its own way downhill.

use super::ground::{HAIR, LEANS, Way, across};
use super::walk::{Water, share};
use crate::failure::Result;
use crate::geometry::Point;
use crate::geometry::clip::{Line, MADE, Vertex, split};
use crate::geometry::predicates::cross;

/// Cuts nearer to a corner than this are through it, in metres.
const CUT: f64 = 1e-11;

/// A part of a triangle whose water ends at one place.
#[derive(Clone, Debug)]
pub(super) struct Piece {
    pub(super) triangle: u32,
    pub(super) ending: usize,
    /// Its corners, counter-clockwise, in the axes of the ground.
    pub(super) corners: Vec<Point>,
    pub(super) area: f64,
    /// The longest way of water from it.
    pub(super) longest: f64,
    /// Where that starts.
    pub(super) farthest: Point,
}

/// What leaves a triangle over a side between two lines and ends at one place.
#[derive(Clone, Copy, Debug)]
struct Strip {
    side: usize,
    /// How far across the way downhill its two lines are.
    across: [f64; 2],
    /// How far its water still has to go from the side, on both.
    lengths: [f64; 2],
    ending: usize,
}

/// A strip on its way: leaving a triangle over a side, between two shares of the side.
#[derive(Clone, Copy)]
struct Moving {
    triangle: u32,
    side: usize,
    shares: [f64; 2],
    across: [f64; 2],
    lengths: [f64; 2],
    steps: usize,
}

impl Moving {
    /// Both parts of it, at a share between its lines.
    fn parted(self, share: f64) -> [Self; 2] {
        let mix = |pair: [f64; 2]| pair[0] + share * (pair[1] - pair[0]);
        let (shares, across, lengths) = (mix(self.shares), mix(self.across), mix(self.lengths));
        let part = |at: usize| {
            let end =
                |pair: [f64; 2], between: f64| if at == 0 { [pair[0], between] } else { [between, pair[1]] };
            Self {
                shares: end(self.shares, shares),
                across: end(self.across, across),
                lengths: end(self.lengths, lengths),
                ..self
            }
        };
        [part(0), part(1)]
    }

    /// The strip of the triangle that it left over a side, come to its end.
    fn ended(self, side: usize, ending: usize, mut lengths: [f64; 2]) -> Strip {
        let mut across = self.across;
        if across[0] > across[1] {
            across.swap(0, 1);
            lengths.swap(0, 1);
        }
        Strip { side, across, lengths, ending }
    }
}

impl Water {
    /// All pieces.
    pub(super) fn pieces(&self) -> Result<Vec<Piece>> {
        let mut pieces = Vec::with_capacity(2 * self.ground.triangles.len());
        let (mut strips, mut moving) = (Vec::new(), Vec::new());
        for triangle in 0..self.ground.triangles.len() {
            match self.ground.down(triangle) {
                None => pieces.push(self.level_piece(triangle)),
                Some(down) => {
                    self.strips(triangle, down, &mut strips, &mut moving)?;
                    self.cut(triangle, down, &strips, &mut pieces);
                }
            }
        }
        Ok(pieces)
    }

    fn corners(&self, triangle: usize) -> [Point; 3] {
        self.ground.triangles[triangle].map(|corner| self.ground.places[corner as usize])
    }

    fn level_piece(&self, triangle: usize) -> Piece {
        let corners = self.corners(triangle);
        let ending = self.ground.level[self.ground.facet[triangle] as usize].unwrap_or(0);
        Piece {
            triangle: triangle as u32,
            ending,
            area: 0.5 * cross(corners[0], corners[1], corners[2]),
            longest: 0.0,
            farthest: corners[0],
            corners: corners.to_vec(),
        }
    }

    /// The strips in which water leaves a triangle, from one side of it to the other.
    fn strips(
        &self,
        triangle: usize,
        down: [f64; 2],
        strips: &mut Vec<Strip>,
        moving: &mut Vec<Moving>,
    ) -> Result<()> {
        strips.clear();
        for side in 0..3 {
            let [from, to] =
                self.ground.side(triangle, side).map(|corner| self.ground.places[corner as usize]);
            if self.ground.leans[triangle][side] > LEANS {
                moving.push(Moving {
                    triangle: triangle as u32,
                    side,
                    shares: [0.0, 1.0],
                    across: [across(down, from), across(down, to)],
                    lengths: [0.0; 2],
                    steps: 0,
                });
            }
            while let Some(next) = moving.pop() {
                self.advance(side, next, strips, moving)?;
            }
        }
        if strips.is_empty() {
            // A sliver over no side of which the water leans out.
            let lowest = self.lowest(triangle);
            let route = self.routes[lowest as usize];
            strips.push(Strip {
                side: 0,
                across: [0.0; 2],
                lengths: [route.length; 2],
                ending: route.ending,
            });
        }
        strips.sort_unstable_by(|a, b| {
            a.across[0].total_cmp(&b.across[0]).then(a.across[1].total_cmp(&b.across[1]))
        });
        Ok(())
    }

    fn advance(
        &self,
        side: usize,
        on: Moving,
        strips: &mut Vec<Strip>,
        moving: &mut Vec<Moving>,
    ) -> Result<()> {
        let ground = &self.ground;
        match ground.ways[on.triangle as usize][on.side] {
            Way::Ends(ending) => strips.push(on.ended(side, ending, on.lengths)),
            Way::Along(corner) => strips.push(self.along(side, on, corner)),
            Way::Parts(at) => {
                let [from, to] = ground.side(on.triangle as usize, on.side);
                let (low, high) = (on.shares[0].min(on.shares[1]), on.shares[0].max(on.shares[1]));
                if at <= low || at >= high {
                    strips.push(self.along(side, on, if at <= low { to } else { from }));
                } else {
                    let share = (at - on.shares[0]) / (on.shares[1] - on.shares[0]);
                    let [first, second] = on.parted(share);
                    let ends = if on.shares[0] < on.shares[1] { [from, to] } else { [to, from] };
                    strips.push(self.along(side, first, ends[0]));
                    strips.push(self.along(side, second, ends[1]));
                }
            }
            Way::Into { triangle, side } => self.enter(on, triangle as usize, side, moving)?,
            Way::Not => {
                let route = self.routes[self.lowest(on.triangle as usize) as usize];
                strips.push(on.ended(side, route.ending, on.lengths.map(|length| length + route.length)));
            }
        }
        Ok(())
    }

    /// A strip whose water runs along the side to a corner.
    fn along(&self, side: usize, on: Moving, corner: u32) -> Strip {
        let (route, end) = (self.routes[corner as usize], self.ground.places[corner as usize]);
        let places = self.on_side(on.triangle as usize, on.side, on.shares);
        let lengths = [0, 1].map(|at| on.lengths[at] + places[at].distance(end) + route.length);
        on.ended(side, route.ending, lengths)
    }

    fn on_side(&self, triangle: usize, side: usize, shares: [f64; 2]) -> [Point; 2] {
        let [from, to] = self.ground.side(triangle, side).map(|corner| self.ground.places[corner as usize]);
        shares.map(|share| Point::new(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y)))
    }

    /// Takes a strip over the triangle that it enters over a side; its farther corner may part it.
    fn enter(&self, on: Moving, triangle: usize, side: usize, moving: &mut Vec<Moving>) -> Result<()> {
        let ground = &self.ground;
        let shares = on.shares.map(|share| 1.0 - share);
        let places = self.on_side(triangle, side, shares);
        if on.steps > 64 + 8 * ground.triangles.len() {
            return Err(self.lost(places[0]));
        }
        let Some(down) = ground.down(triangle) else { return Err(self.lost(places[0])) };
        let apex = ground.places[ground.triangles[triangle][(side + 2) % 3] as usize];
        let at = places.map(|place| across(down, place));
        let parted = (across(down, apex) - at[0]) / (at[1] - at[0]);
        let width = places[0].distance(places[1]);
        let inside = parted * width > HAIR && (1.0 - parted) * width > HAIR;
        let both = [(side + 1) % 3, (side + 2) % 3].iter().all(|&out| ground.leans[triangle][out] > LEANS);
        let mut go = |from: f64, to: f64| {
            let mix = |pair: [f64; 2], share: f64| pair[0] + share * (pair[1] - pair[0]);
            let ends = [from, to];
            let at_ends = ends.map(|end| mix(at, end));
            let out = self.way_out(triangle, 0.5 * (at_ends[0] + at_ends[1]));
            let [start, end] = ground.side(triangle, out).map(|corner| ground.places[corner as usize]);
            let shares = at_ends.map(|at| share(down, at, start, end));
            let leaves = self.on_side(triangle, out, shares);
            let enters = ends.map(|end| {
                Point::new(
                    places[0].x + end * (places[1].x - places[0].x),
                    places[0].y + end * (places[1].y - places[0].y),
                )
            });
            let lengths = [0, 1].map(|end| mix(on.lengths, ends[end]) + enters[end].distance(leaves[end]));
            let across = ends.map(|end| mix(on.across, end));
            moving.push(Moving {
                triangle: triangle as u32,
                side: out,
                shares,
                across,
                lengths,
                steps: on.steps + 1,
            });
        };
        if both && inside {
            go(0.0, parted);
            go(parted, 1.0);
        } else {
            go(0.0, 1.0);
        }
        Ok(())
    }

    /// Cuts a triangle between its strips.
    fn cut(&self, triangle: usize, down: [f64; 2], strips: &[Strip], pieces: &mut Vec<Piece>) {
        let inward = Point::new(-down[1], down[0]);
        let vertex = |at: Point| Vertex { x: at.x, y: at.y, z: 0.0, id: MADE };
        let mut rest: Vec<Vertex> = self.corners(triangle).map(vertex).to_vec();
        let (mut over, mut under) = (Vec::new(), Vec::new());
        for (number, strip) in strips.iter().enumerate() {
            if number + 1 < strips.len() {
                let upper = strip.across[1];
                let line = Line::square_to(Point::new(inward.x * upper, inward.y * upper), inward);
                split(&rest, &line, CUT, &mut over, &mut under);
                std::mem::swap(&mut rest, &mut over);
            } else {
                std::mem::swap(&mut rest, &mut under);
            }
            if under.len() > 2 {
                pieces.push(self.piece(triangle, down, strip, &under));
            }
        }
    }

    fn piece(&self, triangle: usize, down: [f64; 2], strip: &Strip, corners: &[Vertex]) -> Piece {
        let corners: Vec<Point> = corners.iter().map(|corner| Point::new(corner.x, corner.y)).collect();
        let [start, end] =
            self.ground.side(triangle, strip.side).map(|corner| self.ground.places[corner as usize]);
        let (mut longest, mut farthest) = (f64::NEG_INFINITY, corners[0]);
        for &corner in &corners {
            let at = across(down, corner);
            let out = share(down, at, start, end);
            let leaves = Point::new(start.x + out * (end.x - start.x), start.y + out * (end.y - start.y));
            let width = strip.across[1] - strip.across[0];
            let within = if width > 0.0 { ((at - strip.across[0]) / width).clamp(0.0, 1.0) } else { 0.0 };
            let length =
                corner.distance(leaves) + strip.lengths[0] + within * (strip.lengths[1] - strip.lengths[0]);
            if length > longest {
                (longest, farthest) = (length, corner);
            }
        }
        let area = crate::grade::finish::convex::area(&corners);
        Piece { triangle: triangle as u32, ending: strip.ending, corners, area, longest, farthest }
    }
}
