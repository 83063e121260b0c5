//! The finish as triangles that share their corners, each with what becomes of the water that runs out over its sides.

use super::ending::{End, Ending};
use crate::failure::Result;
use crate::geometry::network::{BORDER, Network};
use crate::geometry::{Plane, Point};
use crate::grade::finish::Finish;
use crate::grade::standing_water::{faceted, planes};
use crate::quantity::{Length, Typed};
use crate::survey::Survey;
use crate::survey::low_spots::{EdgeState, Edges, Resolved, Taken, place_drain};
use crate::survey::outline::{Corner, Outline};

/// A fall below this is none: a millimetre in a kilometre.
pub(super) const FLAT: f64 = 1e-6;
/// Water runs out over a side where the way downhill leans out over it by more than this (a sine): corners that are joined may
/// have moved by a ten thousandth of a millimetre.
pub(super) const LEANS: f64 = 1e-6;
/// Places within this of one another are one, in metres.
pub(super) const HAIR: f64 = 1e-7;

/// What becomes of water that runs out of a triangle over one of its sides.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Way {
    /// None runs out there.
    Not,
    /// It runs on over the next triangle.
    Into { triangle: u32, side: usize },
    /// It runs along the side, a valley or the foot of a wall, to its lower corner.
    Along(u32),
    /// It spreads along the side, which is level: up to that share of it to its first corner, beyond it to its second.
    Parts(f64),
    /// It ends there.
    Ends(usize),
}

/// What takes water at a corner.
#[derive(Clone, Copy, Debug)]
pub(super) struct Taker {
    pub(super) ending: usize,
    /// Whether it also takes what starts there: a drain does, an open edge only what cannot run inwards.
    pub(super) always: bool,
}

/// How one facet falls.
#[derive(Clone, Copy, Debug)]
pub(super) struct Falls {
    pub(super) plane: Plane,
    pub(super) fall: f64,
    /// The unit vector downhill; none where it is level.
    pub(super) down: Option<[f64; 2]>,
}

/// The finish for following water over it, in axes from the outline's lower left.
pub(super) struct Ground {
    pub(super) origin: Point,
    pub(super) places: Vec<Point>,
    pub(super) heights: Vec<f64>,
    pub(super) triangles: Vec<[u32; 3]>,
    pub(super) facet: Vec<u32>,
    pub(super) falls: Vec<Falls>,
    pub(super) ways: Vec<[Way; 3]>,
    /// By how much the way downhill leans out over each side, a sine.
    pub(super) leans: Vec<[f64; 3]>,
    /// What takes water at each corner.
    pub(super) takers: Vec<Option<Taker>>,
    /// What holds water at each corner: the name of a wall there.
    pub(super) walls: Vec<Option<usize>>,
    pub(super) endings: Vec<Ending>,
    /// Where water on each level facet ends.
    pub(super) level: Vec<Option<usize>>,
    pub(super) run_names: Vec<String>,
    pub(super) taken: Taken,
    neighbours: Vec<[u32; 3]>,
}

impl Ground {
    pub(super) fn of(survey: &Survey, finish: &Finish, edges: &Edges) -> Result<Self> {
        let outline = survey.outline();
        finish.refuse_holes(outline.region())?;
        let resolved = edges.resolve(outline)?;
        let facets = planes(finish);
        let (mut network, owners) = faceted::with_facets(outline.region(), &facets);
        let drains: Vec<Vec<u32>> =
            resolved.drains.iter().map(|(_, places)| place_drain(&mut network, places)).collect();
        let origin = outline.region().bounds().0;
        let falls: Vec<Falls> = facets.iter().map(|(_, plane)| falls(*plane)).collect();
        let mut ground = Self::laid(network, &owners, origin, falls);
        ground.run_names = outline.runs().iter().map(|run| run.name().to_owned()).collect();
        ground.level =
            (0..facets.len()).map(|facet| ground.level_ending(finish, facet, &resolved, &drains)).collect();
        ground.find_ways(outline, &resolved, &drains, finish);
        ground.taken = resolved.taken;
        Ok(ground)
    }

    fn laid(network: Network, owners: &[u32], origin: Point, falls: Vec<Falls>) -> Self {
        let local = |at: Point| Point::new(at.x - origin.x, at.y - origin.y);
        let corners = network.corners();
        let count = network.triangles().len();
        let facet = network.parents().iter().map(|&parent| owners[parent as usize]).collect();
        Self {
            origin,
            places: corners.iter().map(|corner| local(corner.at)).collect(),
            heights: corners.iter().map(|corner| corner.height).collect(),
            triangles: network.triangles().to_vec(),
            neighbours: network.neighbours().to_vec(),
            facet,
            falls,
            ways: vec![[Way::Not; 3]; count],
            leans: vec![[0.0; 3]; count],
            takers: vec![None; corners.len()],
            walls: vec![None; corners.len()],
            endings: Vec::new(),
            level: Vec::new(),
            run_names: Vec::new(),
            taken: Taken::default(),
        }
    }

    /// The number of an ending, which is noted where it is new.
    pub(super) fn ending(&mut self, ending: Ending) -> usize {
        if let Some(known) = self.endings.iter().position(|known| *known == ending) {
            return known;
        }
        self.endings.push(ending);
        self.endings.len() - 1
    }

    /// Where the water of a level facet ends: at a drain in it, for which it is the rim, or nowhere.
    fn level_ending(
        &mut self,
        finish: &Finish,
        facet: usize,
        resolved: &Resolved,
        drains: &[Vec<u32>],
    ) -> Option<usize> {
        if self.falls[facet].down.is_some() || !self.facet.contains(&(facet as u32)) {
            return None;
        }
        let own = self.triangles.iter().zip(&self.facet).filter(|(_, of)| **of as usize == facet);
        let corners: Vec<u32> = own.flat_map(|(corners, _)| *corners).collect();
        let in_it = drains.iter().position(|on| on.iter().any(|corner| corners.contains(corner)));
        if let Some((name, _)) = in_it.and_then(|drain| resolved.drains.get(drain)) {
            return Some(self.ending(Ending::named(End::Drain, name)));
        }
        let name = finish.plane().is_none().then(|| finish.facet_name(facet));
        Some(self.ending(Ending { end: End::Level, name, at: None }))
    }

    fn find_ways(&mut self, outline: &Outline, resolved: &Resolved, drains: &[Vec<u32>], finish: &Finish) {
        self.find_leans();
        let drained = self.drained_sides(resolved, drains);
        let runs = self.border_runs(outline);
        self.find_takers(resolved, drains, &runs);
        for triangle in 0..self.triangles.len() {
            for side in 0..3 {
                let way = if self.leans[triangle][side] <= LEANS {
                    Way::Not
                } else if let Some(drain) = drained[triangle][side] {
                    Way::Ends(self.ending(Ending::named(End::Drain, &resolved.drains[drain].0)))
                } else if self.neighbours[triangle][side] == BORDER {
                    self.way_at_border(triangle, side, runs[triangle][side], resolved)
                } else {
                    self.way_across(triangle, side, finish)
                };
                self.ways[triangle][side] = way;
            }
        }
    }

    fn find_leans(&mut self) {
        for (triangle, &facet) in self.facet.iter().enumerate() {
            let Some(down) = self.falls[facet as usize].down else { continue };
            for side in 0..3 {
                let [from, to] = self.side(triangle, side).map(|corner| self.places[corner as usize]);
                let (dx, dy) = (to.x - from.x, to.y - from.y);
                self.leans[triangle][side] = (down[0] * dy - down[1] * dx) / from.distance(to);
            }
        }
    }

    /// The corners of a side, the triangle on its left.
    #[inline]
    pub(super) fn side(&self, triangle: usize, side: usize) -> [u32; 2] {
        let corners = self.triangles[triangle];
        [corners[side], corners[(side + 1) % 3]]
    }

    /// The drain along each side.
    fn drained_sides(&self, resolved: &Resolved, drains: &[Vec<u32>]) -> Vec<[Option<usize>; 3]> {
        let mut found = vec![[None; 3]; self.triangles.len()];
        for (drain, (on, (_, places))) in drains.iter().zip(&resolved.drains).enumerate() {
            let lines: Vec<[Point; 2]> =
                places.windows(2).map(|pair| [self.local(pair[0]), self.local(pair[1])]).collect();
            if lines.is_empty() {
                continue;
            }
            for (triangle, found) in found.iter_mut().enumerate() {
                for (side, found) in found.iter_mut().enumerate() {
                    let ends = self.side(triangle, side);
                    if ends.iter().all(|end| on.contains(end)) {
                        let middle = middle(ends.map(|corner| self.places[corner as usize]));
                        if lines.iter().any(|&line| off(line, middle) <= 10.0 * HAIR) {
                            *found = Some(drain);
                        }
                    }
                }
            }
        }
        found
    }

    /// The run of the outline that each border side lies on.
    fn border_runs(&self, outline: &Outline) -> Vec<[Option<usize>; 3]> {
        let mut found = vec![[None; 3]; self.triangles.len()];
        for (triangle, found) in found.iter_mut().enumerate() {
            for (side, found) in found.iter_mut().enumerate() {
                if self.neighbours[triangle][side] == BORDER {
                    let at = middle(self.side(triangle, side).map(|corner| self.places[corner as usize]));
                    let nearest = outline.region().nearest_run(self.global(at)).run;
                    *found = outline.runs().iter().position(|run| run.id() == nearest);
                }
            }
        }
        found
    }

    fn find_takers(&mut self, resolved: &Resolved, drains: &[Vec<u32>], runs: &[[Option<usize>; 3]]) {
        // Drains first, then drained edges, then open ones, each by number.
        let mut takers: Vec<(EdgeState, usize, u32)> = Vec::new();
        for (triangle, runs) in runs.iter().enumerate() {
            for (side, run) in runs.iter().enumerate() {
                let Some(run) = *run else { continue };
                for corner in self.side(triangle, side) {
                    match resolved.states[run] {
                        EdgeState::Walled => {
                            let first = self.walls[corner as usize].map_or(run, |known| known.min(run));
                            self.walls[corner as usize] = Some(first);
                        }
                        state => takers.push((state, run, corner)),
                    }
                }
            }
        }
        takers.sort_unstable_by_key(|&(state, run, corner)| (state != EdgeState::Drained, run, corner));
        for (drain, (name, _)) in resolved.drains.iter().enumerate() {
            let ending = self.ending(Ending::named(End::Drain, name));
            for &corner in drains.get(drain).into_iter().flatten() {
                self.takers[corner as usize].get_or_insert(Taker { ending, always: true });
            }
        }
        for (state, run, corner) in takers {
            let always = state == EdgeState::Drained;
            let ending = self.edge_ending(run, always);
            self.takers[corner as usize].get_or_insert(Taker { ending, always });
        }
    }

    fn edge_ending(&mut self, run: usize, drained: bool) -> usize {
        let end = if drained { End::Drain } else { End::Edge };
        let ending = Ending::named(end, &self.run_names[run]);
        self.ending(ending)
    }

    fn way_at_border(
        &mut self,
        triangle: usize,
        side: usize,
        run: Option<usize>,
        resolved: &Resolved,
    ) -> Way {
        match run.map(|run| (run, resolved.states[run])) {
            Some((run, state)) if state != EdgeState::Walled => {
                Way::Ends(self.edge_ending(run, state == EdgeState::Drained))
            }
            run => self.lower(triangle, side).map_or_else(
                || {
                    let name = run.map(|(run, _)| self.run_names[run].clone());
                    Way::Ends(self.ending(Ending { end: End::Wall, name, at: None }))
                },
                Way::Along,
            ),
        }
    }

    fn way_across(&mut self, triangle: usize, side: usize, finish: &Finish) -> Way {
        let other = self.neighbours[triangle][side];
        let other_facet = self.facet[other as usize] as usize;
        if let Some(level) = self.level[other_facet] {
            return Way::Ends(level);
        }
        let [from, to] = self.side(triangle, side);
        let of_other = (0..3).find(|&side| self.side(other as usize, side) == [to, from]).unwrap_or(0);
        if self.leans[other as usize][of_other] < -LEANS {
            return Way::Into { triangle: other, side: of_other };
        }
        if let Some(lower) = self.lower(triangle, side) {
            return Way::Along(lower);
        }
        let mut facets = [self.facet[triangle] as usize, other_facet];
        facets.sort_unstable();
        let name = format!("{} and {}", finish.facet_name(facets[0]), finish.facet_name(facets[1]));
        Way::Ends(self.ending(Ending::named(End::Level, &name)))
    }

    /// The lower corner of a side; none where it is level.
    fn lower(&self, triangle: usize, side: usize) -> Option<u32> {
        let [from, to] = self.side(triangle, side);
        let fall = self.fall_along(from, to);
        (fall.abs() > FLAT).then_some(if fall > 0.0 { to } else { from })
    }

    /// The fall from one corner straight to another.
    pub(super) fn fall_along(&self, from: u32, to: u32) -> f64 {
        let length = self.places[from as usize].distance(self.places[to as usize]);
        (self.heights[from as usize] - self.heights[to as usize]) / length
    }

    pub(super) fn is_border(&self, triangle: usize, side: usize) -> bool {
        self.neighbours[triangle][side] == BORDER
    }

    /// Whether the facet beyond a side is level.
    pub(super) fn beyond_is_level(&self, triangle: usize, side: usize) -> bool {
        let other = self.neighbours[triangle][side];
        other != BORDER && self.level[self.facet[other as usize] as usize].is_some()
    }

    pub(super) fn down(&self, triangle: usize) -> Option<[f64; 2]> {
        self.falls[self.facet[triangle] as usize].down
    }

    /// How high the finish is at a place of a triangle.
    pub(super) fn height(&self, triangle: usize, at: Point) -> f64 {
        self.falls[self.facet[triangle] as usize].plane.height_at(self.global(at))
    }

    pub(super) fn local(&self, at: Point) -> Point {
        Point::new(at.x - self.origin.x, at.y - self.origin.y)
    }

    pub(super) fn global(&self, at: Point) -> Point {
        Point::new(at.x + self.origin.x, at.y + self.origin.y)
    }

    pub(super) fn in_axes(&self, at: Point) -> Corner {
        let at = self.global(at);
        Corner::new(Length::from_base(at.x), Length::from_base(at.y))
    }
}

/// How far a place is across a direction: the same all along it.
#[inline]
pub(super) fn across(down: [f64; 2], at: Point) -> f64 {
    down[0] * at.y - down[1] * at.x
}

fn falls(plane: Plane) -> Falls {
    let fall = plane.steepest();
    let down = (fall > FLAT).then(|| [-plane.b() / fall, -plane.c() / fall]);
    Falls { plane, fall, down }
}

fn middle([a, b]: [Point; 2]) -> Point {
    Point::new(0.5 * (a.x + b.x), 0.5 * (a.y + b.y))
}

/// How far a place is from a line between two places.
fn off([from, to]: [Point; 2], at: Point) -> f64 {
    let (dx, dy) = (to.x - from.x, to.y - from.y);
    let squared = dx * dx + dy * dy;
    let share = if squared > 0.0 {
        (((at.x - from.x) * dx + (at.y - from.y) * dy) / squared).clamp(0.0, 1.0)
    } else {
        0.0
    };
    at.distance(Point::new(from.x + share * dx, from.y + share * dy))
}
