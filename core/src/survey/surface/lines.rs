//! Lines between neighbouring shots on one straight outline run, which must be edges of the triangles.

use super::frame::Frame;
use super::note::Note;
use super::runs::Runs;
use super::tiling::{INSIDE, NO_SHOT, Node, ON_RUN};
use super::{StepFlaw, SurfaceError};
use crate::geometry::predicates::{by_place, cross};
use crate::geometry::triangulation::{Constrainer, Obstacle, Triangulation};
use crate::geometry::{Point, Region, Ring};

/// A line between two places, and the two shots it was drawn between.
#[derive(Clone, Copy, Debug)]
pub(super) struct Line {
    pub(super) ends: [u32; 2],
    shots: [u32; 2],
    /// A line along which the slab has a step: it may not be split.
    step: bool,
}

impl Line {
    /// A line along a step.
    pub(super) fn of_step(nodes: &[Node], a: u32, b: u32) -> Self {
        Self { step: true, ..between(nodes, a, b) }
    }

    /// What is wrong when it meets a shot, or another line that has this shot as an end.
    fn meets(&self, shot: u32, flaw: StepFlaw) -> SurfaceError {
        SurfaceError::Step { shot: self.shots[0] as usize, other: shot as usize, flaw }
    }
}

/// A place made where two lines cross, with the mean of their heights there.
#[derive(Clone, Copy, Debug)]
pub(super) struct Made {
    pub(super) node: u32,
    /// The ends of both lines.
    pub(super) ends: [[u32; 2]; 2],
    /// The shares of the way along both lines.
    pub(super) shares: [f64; 2],
}

/// Places with the lines between them that must be edges.
#[derive(Debug, Default)]
pub(super) struct Drawing {
    pub(super) nodes: Vec<Node>,
    pub(super) lines: Vec<Line>,
    /// What was made where lines cross, in the order it was made.
    pub(super) made: Vec<Made>,
    pub(super) notes: Vec<Note>,
}

/// Runs that turn by no more than this (the sine of the angle) are one straight run.
const STRAIGHT: f64 = 1e-9;

/// The lines between neighbours on each straight run.
pub(super) fn along_runs(nodes: &[Node], region: &Region, frame: &Frame, on_run: f64) -> Vec<Line> {
    if !nodes.iter().any(|node| node.has(ON_RUN)) {
        return Vec::new();
    }
    let runs = Runs::new(straight_runs(region, frame));
    let mut on: Vec<OnRun> = Vec::with_capacity(nodes.len().min(64));
    for (index, node) in (0_u32..).zip(nodes).filter(|(_, node)| node.has(ON_RUN)) {
        let place = node.at();
        runs.within(place, on_run, |run, [from, to]| {
            let length = from.distance(to);
            let along = (place.x - from.x) * (to.x - from.x) + (place.y - from.y) * (to.y - from.y);
            let across = cross(from, to, place) / length;
            on.push(OnRun { run, along: along / length, across, node: index });
        });
    }
    in_order(&mut on);
    let neighbours = on.windows(2).filter(|pair| pair[0].run == pair[1].run);
    neighbours.map(|pair| between(nodes, pair[0].node, pair[1].node)).collect()
}

/// A place on a run, and how far along and across it.
#[derive(Clone, Copy, Debug)]
struct OnRun {
    run: usize,
    along: f64,
    across: f64,
    node: u32,
}

/// Places less far apart along a run are abreast, in metres.
const ABREAST: f64 = 1e-6;

/// Sorts places by run and along it; those abreast, whose order along is made by rounding, from the outside inwards.
fn in_order(on: &mut [OnRun]) {
    on.sort_unstable_by(|a, b| a.run.cmp(&b.run).then(a.along.total_cmp(&b.along)).then(a.node.cmp(&b.node)));
    for abreast in on.chunk_by_mut(|a, b| a.run == b.run && b.along - a.along <= ABREAST) {
        abreast.sort_unstable_by(|a, b| a.across.total_cmp(&b.across));
    }
}

/// The line between two places.
pub(super) fn between(nodes: &[Node], a: u32, b: u32) -> Line {
    Line { ends: [a, b], shots: [a, b].map(|end| nodes[end as usize].shot), step: false }
}

/// The runs of a region, neighbours without a turn joined.
fn straight_runs(region: &Region, frame: &Frame) -> Vec<[Point; 2]> {
    let mut straight = Vec::with_capacity(8);
    for ring in std::iter::once(region.outer()).chain(region.holes()) {
        straight_runs_of(ring, frame, &mut straight);
    }
    straight
}

fn straight_runs_of(ring: &Ring, frame: &Frame, straight: &mut Vec<[Point; 2]>) {
    let corners = ring.corners();
    let place = |index: usize| frame.local(corners[index % corners.len()]);
    let turns = |index: usize| {
        let (a, b, c) = (place(index + corners.len() - 1), place(index), place(index + 1));
        cross(a, b, c).abs() > STRAIGHT * a.distance(b) * b.distance(c)
    };
    let Some(first) = (0..corners.len()).find(|&index| turns(index)) else { return };
    let mut start = first;
    for index in first + 1..=first + corners.len() {
        if index == first + corners.len() || turns(index) {
            straight.push([place(start), place(index)]);
            start = index;
        }
    }
}

impl Drawing {
    /// The places of the nodes.
    pub(super) fn points(&self) -> Vec<Point> {
        self.nodes.iter().map(Node::at).collect()
    }

    /// Makes all lines edges of a triangulation. What passes through a shot is split there. Where two lines cross, a
    /// node is added with the mean of both heights, and all is triangulated anew by `anew`; a bound on that keeps
    /// rounding from going on for ever.
    ///
    /// # Errors
    /// When the line of a step passes through a shot or crosses another line.
    pub(super) fn draw(
        &mut self,
        triangulation: &mut Triangulation,
        anew: fn(Vec<Point>) -> Triangulation,
        frame: &Frame,
    ) -> Result<(), SurfaceError> {
        for _ in 0..=self.lines.len().saturating_mul(self.lines.len()) {
            if self.lines.is_empty() || !self.draw_until_crossing(triangulation, frame)? {
                break;
            }
            *triangulation = anew(self.points());
        }
        Ok(())
    }

    /// Tells whether a node was added that the triangulation lacks.
    fn draw_until_crossing(
        &mut self,
        triangulation: &mut Triangulation,
        frame: &Frame,
    ) -> Result<bool, SurfaceError> {
        let mut constrainer = Constrainer::new(triangulation);
        let mut next = 0;
        while let Some(&line) = self.lines.get(next) {
            match constrainer.join(line.ends[0], line.ends[1]) {
                Ok(_) => next += 1,
                Err(Obstacle::Point(middle)) if line.step => {
                    return Err(line.meets(self.nodes[middle as usize].shot, StepFlaw::ThroughShot));
                }
                Err(Obstacle::Point(middle)) => {
                    self.split(next, middle);
                    if let Some(shot) = self.nodes[middle as usize].shot() {
                        let line = line.shots.map(|shot| shot as usize);
                        self.notes.push(Note::LineThroughShot { line, shot });
                    }
                }
                Err(Obstacle::Constraint(c, d)) => {
                    let is_it = |other: &Line| other.ends == [c, d] || other.ends == [d, c];
                    if let Some(other) = self.lines[..next].iter().position(is_it) {
                        if let Some(step) = [line, self.lines[other]].iter().find(|line| line.step) {
                            return Err(step.meets(self.lines[other].shots[0], StepFlaw::Crossed));
                        }
                        self.cross([other, next], frame);
                        return Ok(true);
                    }
                    // Cannot be: every constraint edge came from a line.
                    next += 1;
                }
            }
        }
        Ok(false)
    }

    /// Puts a node into a line: the first half stays, the second is added.
    fn split(&mut self, index: usize, middle: u32) {
        let Line { ends: [from, to], shots, step } = self.lines[index];
        self.lines[index].ends = [from, middle];
        self.lines.push(Line { ends: [middle, to], shots, step });
    }

    /// Adds a node where two lines cross, and splits both there.
    fn cross(&mut self, crossing: [usize; 2], frame: &Frame) {
        let ends = crossing.map(|line| self.lines[line].ends);
        let [first, second] = ends.map(|ends| ends.map(|end| self.nodes[end as usize]));
        let shares = [share_of_crossing(first, second), share_of_crossing(second, first)];
        let ([x, y, z], [.., other]) = (along(first, shares[0]), along(second, shares[1]));
        let place = Point::new(x, y);
        let [first, second] = crossing.map(|line| self.lines[line].shots.map(|shot| shot as usize));
        self.notes.push(Note::LinesCross { first, second, at: frame.given(place) });
        let at = self.nodes.partition_point(|other| by_place(&other.at(), &place).is_lt());
        if self.nodes.get(at).is_none_or(|other| other.at() != place) {
            let flags = if frame.clearance(place) >= -frame.hair { INSIDE } else { 0 };
            self.insert(at, Node { x, y, z: 0.5 * (z + other), shot: NO_SHOT, flags });
            let ends = crossing.map(|line| self.lines[line].ends);
            self.made.push(Made { node: at as u32, ends, shares });
        }
        for line in crossing {
            if !self.lines[line].ends.contains(&(at as u32)) {
                self.split(line, at as u32);
            }
        }
    }

    /// Puts a node in among the others, all of which keep their order.
    fn insert(&mut self, at: usize, node: Node) {
        self.nodes.insert(at, node);
        let shift = |number: &mut u32| *number += u32::from(*number as usize >= at);
        self.lines.iter_mut().flat_map(|line| &mut line.ends).for_each(shift);
        for made in &mut self.made {
            shift(&mut made.node);
            made.ends.iter_mut().flatten().for_each(shift);
        }
    }
}

/// How far along a line another crosses it, as a share of the way.
fn share_of_crossing([from, to]: [Node; 2], [a, b]: [Node; 2]) -> f64 {
    let (left, right) = (cross(a.at(), b.at(), from.at()), cross(a.at(), b.at(), to.at()));
    left / (left - right)
}

fn along([from, to]: [Node; 2], share: f64) -> [f64; 3] {
    [from.x + share * (to.x - from.x), from.y + share * (to.y - from.y), from.z + share * (to.z - from.z)]
}
