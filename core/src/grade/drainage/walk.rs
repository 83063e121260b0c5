//! Water followed over the finish: straight over each facet, along valleys and the feet of walls.
//!
//! Every step goes down, and the finish has finitely many sides, so no way comes back to where it was.

use super::corner::{Step, steps};
use super::ending::Ending;
use super::ground::{Ground, HAIR, LEANS, Way, across};
use crate::failure::{Code, Failure, Result};
use crate::geometry::Point;

/// Where water is on its way.
#[derive(Clone, Copy, Debug)]
pub(super) enum At {
    /// At a corner that it came to.
    Came(u32),
    /// At a corner from which it starts.
    Starts(u32),
    /// On a triangle, at a place.
    On(u32, Point),
    /// On a side, on its way to a corner.
    Along(u32),
}

/// One step of a way: the place it leads to, and what is then.
#[derive(Clone, Copy, Debug)]
struct Next {
    to: Option<Point>,
    then: Then,
}

#[derive(Clone, Copy, Debug)]
enum Then {
    Goes(At),
    Ends(usize),
}

/// Where the water of a corner ends, and how far that is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Route {
    pub(super) ending: usize,
    pub(super) length: f64,
}

/// The ground with the way of every corner.
pub(super) struct Water {
    pub(super) ground: Ground,
    steps: Vec<Step>,
    /// For water that comes to each corner.
    pub(super) routes: Vec<Route>,
}

impl Water {
    pub(super) fn of(mut ground: Ground) -> Result<Self> {
        let steps = steps(&mut ground);
        let routes = vec![Route { ending: usize::MAX, length: 0.0 }; ground.places.len()];
        let mut water = Self { ground, steps, routes };
        water.settle()?;
        Ok(water)
    }

    pub(super) fn endings(&self) -> &[Ending] {
        &self.ground.endings
    }

    /// Follows every corner, the lowest first, to a corner that is settled.
    fn settle(&mut self) -> Result<()> {
        let mut order: Vec<u32> = (0..self.routes.len() as u32).collect();
        let height = |corner: u32| self.ground.heights[corner as usize];
        order.sort_unstable_by(|&a, &b| height(a).total_cmp(&height(b)).then(a.cmp(&b)));
        for corner in order {
            self.routes[corner as usize] = self.route(At::Came(corner))?;
        }
        Ok(())
    }

    fn route(&self, start: At) -> Result<Route> {
        let (mut at, mut here, mut length) = (start, self.place(start), 0.0);
        for _ in 0..self.most_steps() {
            let Next { to, then } = self.next(at);
            if let Some(to) = to {
                length += here.distance(to);
                here = to;
            }
            at = match then {
                Then::Ends(ending) => return Ok(Route { ending, length }),
                Then::Goes(at) => at,
            };
            if let At::Came(corner) = at {
                let known = self.routes[corner as usize];
                if known.ending != usize::MAX {
                    return Ok(Route { length: length + known.length, ..known });
                }
            }
        }
        Err(self.lost(here))
    }

    /// Follows water, telling each place it passes with its height; gives where it ends.
    pub(super) fn walk(&self, start: At, mut pass: impl FnMut(Point, f64)) -> Result<usize> {
        let mut at = start;
        let mut here = self.place(start);
        pass(here, self.height(start));
        for _ in 0..self.most_steps() {
            let Next { to, then } = self.next(at);
            if let Some(to) = to.filter(|to| to.distance(here) > HAIR) {
                here = to;
                let height = match (at, then) {
                    (_, Then::Goes(came @ At::Came(_))) => self.height(came),
                    (At::On(triangle, _), _) => self.ground.height(triangle as usize, to),
                    _ => self.height(at),
                };
                pass(here, height);
            }
            match then {
                Then::Ends(ending) => return Ok(ending),
                Then::Goes(next) => at = next,
            }
        }
        Err(self.lost(here))
    }

    fn place(&self, at: At) -> Point {
        match at {
            At::Came(corner) | At::Starts(corner) | At::Along(corner) => self.ground.places[corner as usize],
            At::On(_, place) => place,
        }
    }

    fn height(&self, at: At) -> f64 {
        match at {
            At::Came(corner) | At::Starts(corner) | At::Along(corner) => self.ground.heights[corner as usize],
            At::On(triangle, place) => self.ground.height(triangle as usize, place),
        }
    }

    fn next(&self, at: At) -> Next {
        match at {
            At::Along(corner) => {
                Next { to: Some(self.ground.places[corner as usize]), then: Then::Goes(At::Came(corner)) }
            }
            At::Came(corner) => self.at_corner(corner, true),
            At::Starts(corner) => self.at_corner(corner, false),
            At::On(triangle, place) => self.over(triangle as usize, place),
        }
    }

    fn at_corner(&self, corner: u32, came: bool) -> Next {
        let stays = |ending| Next { to: None, then: Then::Ends(ending) };
        if let Some(taker) = self.ground.takers[corner as usize]
            && (came || taker.always)
        {
            return stays(taker.ending);
        }
        let place = self.ground.places[corner as usize];
        match self.steps[corner as usize] {
            Step::Along(to) => Next { to: None, then: Then::Goes(At::Along(to)) },
            Step::Over(triangle) => Next { to: None, then: Then::Goes(At::On(triangle, place)) },
            Step::Stays(ending) => stays(ending),
        }
    }

    fn over(&self, triangle: usize, place: Point) -> Next {
        let ground = &self.ground;
        let Some(down) = ground.down(triangle) else {
            let ending = ground.level[ground.facet[triangle] as usize].unwrap_or(0);
            return Next { to: None, then: Then::Ends(ending) };
        };
        let side = self.way_out(triangle, across(down, place));
        let [from, to] = ground.side(triangle, side);
        let (start, end) = (ground.places[from as usize], ground.places[to as usize]);
        let share = share(down, across(down, place), start, end);
        let length = start.distance(end);
        let came = |corner: u32| Next {
            to: Some(ground.places[corner as usize]),
            then: Then::Goes(At::Came(corner)),
        };
        if share * length <= HAIR {
            return came(from);
        }
        if (1.0 - share) * length <= HAIR {
            return came(to);
        }
        let out = Point::new(start.x + share * (end.x - start.x), start.y + share * (end.y - start.y));
        let then = match ground.ways[triangle][side] {
            Way::Ends(ending) => Then::Ends(ending),
            Way::Along(corner) => Then::Goes(At::Along(corner)),
            Way::Parts(at) => Then::Goes(At::Along(if share < at { from } else { to })),
            Way::Into { triangle, .. } => Then::Goes(At::On(triangle, out)),
            // A sliver over no side of which the water leans out: it runs to the lowest corner.
            Way::Not => Then::Goes(At::Along(self.lowest(triangle))),
        };
        Next { to: Some(out), then }
    }

    /// The side over which water runs out of a triangle that is so far across the way downhill.
    pub(super) fn way_out(&self, triangle: usize, at: f64) -> usize {
        let (ground, leans) = (&self.ground, self.ground.leans[triangle]);
        let mut out = (0..3).filter(|&side| leans[side] > LEANS);
        match (out.next(), out.next()) {
            (Some(only), None) => only,
            (Some(a), Some(b)) => {
                // Along the sides where water leaves, counter-clockwise, the distance across grows.
                let (first, second) = if (a + 1) % 3 == b { (a, b) } else { (b, a) };
                let shared = ground.places[ground.triangles[triangle][second] as usize];
                let down = ground.down(triangle).unwrap_or([0.0; 2]);
                if at < across(down, shared) { first } else { second }
            }
            (None, _) => (0..3).max_by(|&a, &b| leans[a].total_cmp(&leans[b])).unwrap_or(0),
        }
    }

    /// The lowest corner of a triangle.
    pub(super) fn lowest(&self, triangle: usize) -> u32 {
        let height = |corner: u32| self.ground.heights[corner as usize];
        let [a, b, c] = self.ground.triangles[triangle];
        let lower = if height(b) < height(a) { b } else { a };
        if height(c) < height(lower) { c } else { lower }
    }

    /// More steps than a way can have that goes down at each.
    fn most_steps(&self) -> usize {
        64 + 64 * self.ground.triangles.len()
    }

    pub(super) fn lost(&self, at: Point) -> Box<Failure> {
        let at = self.ground.global(at);
        Failure::new(Code::FlowLost, "finish")
            .written(format!("water at {:.3} m, {:.3} m", at.x, at.y))
            .allowed("facets over which water can be followed")
            .remedy("check the facets there for slivers")
    }
}

/// How far along a side, from 0 to 1, what is so far across the way downhill leaves over it.
#[inline]
pub(super) fn share(down: [f64; 2], at: f64, start: Point, end: Point) -> f64 {
    let (from, to) = (across(down, start), across(down, end));
    if to == from { 0.5 } else { ((at - from) / (to - from)).clamp(0.0, 1.0) }
}
