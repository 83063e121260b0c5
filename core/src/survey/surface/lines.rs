//! Lines between neighbouring shots on one straight outline run, which must be edges of the triangles.

use super::frame::Frame;
use super::note::Note;
use super::spanning::from_segment;
use super::tiling::{INSIDE, NO_SHOT, Node, ON_RUN};
use crate::geometry::boxes::{Boxes, Extent};
use crate::geometry::predicates::{by_place, cross};
use crate::geometry::triangulation::{Constrainer, Obstacle, Triangulation};
use crate::geometry::{Point, Region, Ring};

/// A line between two places, and the two shots it was drawn between.
#[derive(Clone, Copy, Debug)]
pub(super) struct Line {
    pub(super) ends: [u32; 2],
    shots: [u32; 2],
}

/// Runs that turn by no more than this (the sine of the angle) are one straight run.
const STRAIGHT: f64 = 1e-9;

/// The lines between neighbours on each straight run.
pub(super) fn along_runs(nodes: &[Node], region: &Region, frame: &Frame, on_run: f64) -> Vec<Line> {
    if !nodes.iter().any(|node| node.has(ON_RUN)) {
        return Vec::new();
    }
    let runs = straight_runs(region, frame);
    let widened = |run: &[Point; 2]| Extent::around(*run).widened(on_run);
    let boxes = Boxes::new(runs.iter().map(widened).collect());
    let mut on: Vec<(usize, f64, u32)> = Vec::with_capacity(2 * runs.len() + 16);
    for (index, node) in (0_u32..).zip(nodes).filter(|(_, node)| node.has(ON_RUN)) {
        let place = node.at();
        boxes.overlapping(&Extent::at(place), |run| {
            let [from, to] = runs[run];
            if super::rules::within(from_segment(place, from, to), on_run) {
                let along = (place.x - from.x) * (to.x - from.x) + (place.y - from.y) * (to.y - from.y);
                on.push((run, along, index));
            }
        });
    }
    on.sort_unstable_by(|a, b| a.0.cmp(&b.0).then(a.1.total_cmp(&b.1)).then(a.2.cmp(&b.2)));
    let neighbours = on.windows(2).filter(|pair| pair[0].0 == pair[1].0);
    neighbours.map(|pair| between(nodes, pair[0].2, pair[1].2)).collect()
}

/// The line between two places.
pub(super) fn between(nodes: &[Node], a: u32, b: u32) -> Line {
    Line { ends: [a, b], shots: [a, b].map(|end| nodes[end as usize].shot) }
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

/// Makes the lines edges of a triangulation. What passes through a shot is split there. Where two lines cross, a node
/// is added with the mean of both heights, and the triangulation must be made anew: then `true` is given.
pub(super) fn draw(
    triangulation: &mut Triangulation,
    nodes: &mut Vec<Node>,
    lines: &mut Vec<Line>,
    frame: &Frame,
    notes: &mut Vec<Note>,
) -> bool {
    let mut constrainer = Constrainer::new(triangulation);
    let mut next = 0;
    while let Some(&line) = lines.get(next) {
        let [a, b] = line.ends;
        match constrainer.join(a, b) {
            Ok(_) => next += 1,
            Err(Obstacle::Point(middle)) => {
                split(lines, next, middle);
                note_split(notes, &line, nodes[middle as usize].shot);
            }
            Err(Obstacle::Constraint(c, d)) => {
                let crossed =
                    lines[..next].iter().position(|other| other.ends == [c, d] || other.ends == [d, c]);
                match crossed {
                    Some(other) if nodes.len() < NO_SHOT as usize - 1 => {
                        cross_lines(nodes, lines, [other, next], frame, notes);
                        return true;
                    }
                    // Cannot be: every constraint edge came from a line.
                    _ => next += 1,
                }
            }
        }
    }
    false
}

/// Puts a node into a line: the first half stays, the second is added.
fn split(lines: &mut Vec<Line>, index: usize, middle: u32) {
    let Line { ends: [from, to], shots } = lines[index];
    lines[index].ends = [from, middle];
    lines.push(Line { ends: [middle, to], shots });
}

fn note_split(notes: &mut Vec<Note>, line: &Line, shot: u32) {
    if shot != NO_SHOT {
        let line = line.shots.map(|shot| shot as usize);
        notes.push(Note::LineThroughShot { line, shot: shot as usize });
    }
}

/// Adds a node where two lines cross, and splits both there.
fn cross_lines(
    nodes: &mut Vec<Node>,
    lines: &mut Vec<Line>,
    crossing: [usize; 2],
    frame: &Frame,
    notes: &mut Vec<Note>,
) {
    let [first, second] = crossing.map(|line| lines[line].ends.map(|end| nodes[end as usize]));
    let share = |[from, to]: [Node; 2], [a, b]: [Node; 2]| {
        let (left, right) = (cross(a.at(), b.at(), from.at()), cross(a.at(), b.at(), to.at()));
        left / (left - right)
    };
    let (s, t) = (share(first, second), share(second, first));
    let on = |[from, to]: [Node; 2], share: f64| {
        [from.x + share * (to.x - from.x), from.y + share * (to.y - from.y), from.z + share * (to.z - from.z)]
    };
    let ([x, y, z], [.., other]) = (on(first, s), on(second, t));
    let place = Point::new(x, y);
    let flags = if frame.clearance(place) >= -frame.hair { INSIDE } else { 0 };
    let node = Node { x, y, z: 0.5 * (z + other), shot: NO_SHOT, flags };
    let at = nodes.partition_point(|other| by_place(&other.at(), &place).is_lt());
    if nodes.get(at).is_none_or(|other| other.at() != place) {
        nodes.insert(at, node);
        for line in lines.iter_mut() {
            line.ends = line.ends.map(|end| if end as usize >= at { end + 1 } else { end });
        }
    }
    let [first, second] = crossing.map(|line| lines[line].shots.map(|shot| shot as usize));
    notes.push(Note::LinesCross { first, second, at: frame.given(place) });
    for line in crossing {
        if !lines[line].ends.contains(&(at as u32)) {
            split(lines, line, at as u32);
        }
    }
}
