//! The ways of water that are told: from corners, from given places, from the places farthest from where their water ends.

use super::ground::HAIR;
use super::pieces::Piece;
use super::walk::{At, Water};
use crate::choice;
use crate::failure::{Code, Failure, Result};
use crate::geometry::Point;
use crate::geometry::predicates::cross;
use crate::quantity::{Elevation, Length, Slope, Typed, feet_and_inches};
use crate::survey::outline::Corner;

choice! {
    /// Where a way of water starts.
    pub enum Start {
        /// At a place that was given.
        Given = "given",
        /// At a corner of the work, of a facet, or where an edge of one crosses the other.
        Corner = "corner",
        /// At the place from which the way to an ending is longest.
        Farthest = "farthest",
    }
}

/// A place on a way of water.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PathPlace {
    /// Where it is.
    pub at: Corner,
    /// How high the finish is there.
    pub elevation: Elevation,
}

/// A way of water over the finish.
#[derive(Clone, Debug, PartialEq)]
pub struct FlowPath {
    /// What it starts from.
    pub start: Start,
    /// Where it turns, from its start to its end.
    pub places: Vec<PathPlace>,
    /// How long it is in plan.
    pub length: Length,
    /// How far it falls.
    pub drop: Length,
    /// Where it ends: the place among the endings.
    pub ending: usize,
}

impl FlowPath {
    /// Its drop over its length; none for water that stays where it is.
    #[must_use]
    pub fn mean_fall(&self) -> Option<Slope> {
        let length = self.length.base();
        (length > 0.0).then(|| Slope::from_base(self.drop.base() / length))
    }
}

impl Water {
    /// All of them: those of given places first, then those from corners, then those from the farthest places.
    pub(super) fn paths(&self, starts: &[Corner], farthest: &[Option<&Piece>]) -> Result<Vec<FlowPath>> {
        let mut paths = Vec::new();
        for (index, start) in starts.iter().enumerate() {
            let at = self.start(start.place()).ok_or_else(|| outside(index, *start))?;
            paths.push(self.path(Start::Given, at)?);
        }
        for corner in 0..self.ground.places.len() as u32 {
            let path = self.path(Start::Corner, At::Starts(corner))?;
            if path.places.len() > 1 {
                paths.push(path);
            }
        }
        for piece in farthest.iter().flatten().filter(|piece| piece.longest > HAIR) {
            paths.extend(self.farthest_path(piece)?);
        }
        Ok(paths)
    }

    fn path(&self, start: Start, at: At) -> Result<FlowPath> {
        let mut places: Vec<(Point, f64)> = Vec::new();
        let ending = self.walk(at, |place, height| places.push((place, height)))?;
        Ok(self.told(start, &places, ending))
    }

    fn told(&self, start: Start, places: &[(Point, f64)], ending: usize) -> FlowPath {
        let length = places.windows(2).map(|pair| pair[0].0.distance(pair[1].0)).sum();
        let drop = match (places.first(), places.last()) {
            (Some(first), Some(last)) => first.1 - last.1,
            _ => 0.0,
        };
        let place = |&(at, height): &(Point, f64)| PathPlace {
            at: self.ground.in_axes(at),
            elevation: Elevation::from_base(height),
        };
        FlowPath {
            start,
            places: self.turns(places).iter().map(place).collect(),
            length: Length::from_base(length),
            drop: Length::from_base(drop),
            ending,
        }
    }

    /// The places at which a way turns, in plan or in fall: it passes sides within a facet straight.
    fn turns(&self, places: &[(Point, f64)]) -> Vec<(Point, f64)> {
        let mut kept: Vec<(Point, f64)> = Vec::with_capacity(places.len());
        for &next in places {
            if let [.., before, last] = kept[..]
                && straight(before, last, next)
            {
                kept.pop();
            }
            kept.push(next);
        }
        kept
    }

    /// The way from the farthest place of a piece: it starts a hair inside, for at its corners the ways of neighbours part. None
    /// for a piece narrower than a hair.
    fn farthest_path(&self, piece: &Piece) -> Result<Option<FlowPath>> {
        let middle = crate::grade::finish::convex::centroid(&piece.corners);
        let from = piece.farthest;
        let share = (10.0 * HAIR / from.distance(middle).max(HAIR)).min(0.5);
        let inside = Point::new(from.x + share * (middle.x - from.x), from.y + share * (middle.y - from.y));
        let mut places: Vec<(Point, f64)> = Vec::new();
        let ending =
            self.walk(At::On(piece.triangle, inside), |place, height| places.push((place, height)))?;
        if let Some(first) = places.first_mut() {
            *first = (from, self.ground.height(piece.triangle as usize, from));
        }
        // Sides nearly along the way widen that hair, so the length is the exact one.
        let told = self.told(Start::Farthest, &places, ending);
        let path = FlowPath { length: Length::from_base(piece.longest), ..told };
        Ok((ending == piece.ending).then_some(path))
    }

    /// Where water at a place of the work starts: at a corner, or on the triangle there that falls most.
    fn start(&self, at: Point) -> Option<At> {
        let (ground, at) = (&self.ground, self.ground.local(at));
        let corner = (0_u32..).zip(&ground.places).find(|(_, place)| place.distance(at) <= HAIR);
        if let Some((corner, _)) = corner {
            return Some(At::Starts(corner));
        }
        let mut best: Option<(f64, u32, usize)> = None;
        for triangle in 0..ground.triangles.len() {
            if !self.holds(triangle, at) {
                continue;
            }
            let facet = ground.facet[triangle];
            let fall = ground.falls[facet as usize].fall;
            let better = best.is_none_or(|(known, of, _)| {
                fall > known * (1.0 + 1e-9) || (fall >= known * (1.0 - 1e-9) && facet < of)
            });
            if better {
                best = Some((fall, facet, triangle));
            }
        }
        best.map(|(_, _, triangle)| At::On(triangle as u32, at))
    }

    fn holds(&self, triangle: usize, at: Point) -> bool {
        (0..3).all(|side| {
            let [from, to] =
                self.ground.side(triangle, side).map(|corner| self.ground.places[corner as usize]);
            cross(from, to, at) >= -HAIR * from.distance(to)
        })
    }
}

/// Whether a place lies straight between two others, in plan and in height.
fn straight(before: (Point, f64), at: (Point, f64), after: (Point, f64)) -> bool {
    let length = before.0.distance(after.0);
    let share = before.0.distance(at.0) / length;
    let height = before.1 + share * (after.1 - before.1);
    cross(before.0, at.0, after.0).abs() <= HAIR * length && (height - at.1).abs() <= HAIR && share < 1.0
}

fn outside(index: usize, start: Corner) -> Box<Failure> {
    let say = |length| feet_and_inches(length, 8);
    Failure::new(Code::OffWork, format!("starts[{index}]"))
        .written(format!("{}, {}", say(start.x), say(start.y)))
        .allowed("a place in the work")
        .remedy("check the place, or whether it lies in a hole")
}
