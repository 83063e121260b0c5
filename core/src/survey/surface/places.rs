//! From shots to distinct places.

use super::frame::Frame;
use super::note::{Note, SharedPlace};
use super::rules::within;
use super::shot::Shots;
use super::standing::Standing;
use super::steps::Station;
use super::tiling::{INSIDE, Node, STEP};
use super::{Rules, Shot, SurfaceError};
use crate::geometry::predicates::by_place;
use crate::geometry::triangulation::Triangulation;
use crate::geometry::{FARTHEST, Point, Region};
use std::cmp::Ordering;

/// Distinct places in ascending order, triangulated.
pub(super) struct Places {
    pub(super) nodes: Vec<Node>,
    pub(super) triangulation: Triangulation,
    pub(super) notes: Vec<Note>,
    /// Where a step was marked.
    pub(super) stations: Vec<Station>,
}

/// Refuses a shot whose numbers are unreal.
pub(super) fn check(index: usize, shot: &Shot) -> Result<(), SurfaceError> {
    let &Shot { x, y, z, .. } = shot;
    if [x, y, z].iter().all(|value| value.abs() <= FARTHEST) {
        Ok(())
    } else {
        Err(SurfaceError::NotFinite { shot: index, x, y, z, limit: FARTHEST })
    }
}

impl Places {
    /// Sorts and triangulates shots; those at one place become one.
    pub(super) fn of(
        shots: &Shots,
        frame: &Frame,
        region: &Region,
        rules: &Rules,
    ) -> Result<Self, SurfaceError> {
        let mut standing = Standing::new(frame, region, rules);
        // Each polygon of four or more corners will add its mean, and the ground beyond its corners.
        let mut nodes = Vec::with_capacity(3 * shots.len() + 128);
        for index in 0..shots.len() {
            let Some(shot) = shots.get(index) else { continue };
            check(index, &shot)?;
            let place = frame.local(Point::new(shot.x, shot.y));
            let flags = standing.of(index, &shot, place)? | if shot.step { STEP } else { 0 };
            nodes.push(Node { x: place.x, y: place.y, z: shot.z, shot: index as u32, flags });
        }
        nodes.sort_unstable_by(by_place_height_and_shot);
        let mut notes = standing.into_notes();
        notes.sort_by_key(|note| if let Note::OutsideUsed { shot, .. } = note { *shot } else { 0 });
        let repeated = nodes.windows(2).any(|pair| pair[0].at() == pair[1].at());
        if !repeated {
            let triangulation = triangulate(&nodes);
            if !has_edge_within(&triangulation, rules.same_place) {
                let marked = nodes.iter().filter(|node| node.has(STEP));
                let stations = marked.map(|&node| Station::fading(node, true)).collect();
                return Ok(Self { nodes, triangulation, notes, stations });
            }
        }
        share_places(shots, nodes, notes, frame, rules)
    }
}

fn triangulate(nodes: &[Node]) -> Triangulation {
    Triangulation::of(nodes.iter().map(Node::at).collect())
}

fn by_place_height_and_shot(a: &Node, b: &Node) -> Ordering {
    by_place(&a.at(), &b.at()).then_with(|| a.z.total_cmp(&b.z)).then(a.shot.cmp(&b.shot))
}

/// Whether two places are as near to one another as a length. The nearest neighbours are always joined by an edge.
fn has_edge_within(triangulation: &Triangulation, length: f64) -> bool {
    edges_within(triangulation, length).next().is_some()
}

fn edges_within(triangulation: &Triangulation, length: f64) -> impl Iterator<Item = [u32; 2]> + '_ {
    let limit = (length + 1e-9) * (length + 1e-9);
    let points = triangulation.points();
    triangulation
        .links()
        .edges()
        .filter(move |&[from, to]| points[from as usize].squared_distance(points[to as usize]) <= limit)
}

/// Joins shots at one place.
fn share_places(
    shots: &Shots,
    sorted: Vec<Node>,
    mut notes: Vec<Note>,
    frame: &Frame,
    rules: &Rules,
) -> Result<Places, SurfaceError> {
    let mut distinct: Vec<Node> = sorted.clone();
    distinct.dedup_by(|next, kept| next.at() == kept.at());
    let triangulation = triangulate(&distinct);
    // All shots that are linked by steps of no more than the limit: such steps are always edges.
    let mut groups = Groups::new(distinct.len());
    for [a, b] in edges_within(&triangulation, rules.same_place) {
        groups.join(a, b);
    }
    let mut number = 0;
    let mut members: Vec<(u32, Node)> = Vec::with_capacity(sorted.len());
    for node in sorted {
        while distinct[number as usize].at() != node.at() {
            number += 1;
        }
        members.push((groups.first(number), node));
    }
    members.sort_by(|a, b| a.0.cmp(&b.0).then_with(|| by_place_height_and_shot(&a.1, &b.1)));
    let (mut nodes, mut stations) = (Vec::with_capacity(3 * distinct.len()), Vec::new());
    for group in members.chunk_by(|a, b| a.0 == b.0) {
        let (node, station) = one_place(shots, group, &mut notes, frame, rules)?;
        nodes.push(node);
        stations.extend(station);
    }
    nodes.sort_unstable_by(by_place_height_and_shot);
    stations.sort_unstable_by(|a, b| by_place(&a.at(), &b.at()));
    let triangulation = triangulate(&nodes);
    Ok(Places { nodes, triangulation, notes, stations })
}

/// The one place of a group of shots, which may be on a step.
fn one_place(
    shots: &Shots,
    group: &[(u32, Node)],
    notes: &mut Vec<Note>,
    frame: &Frame,
    rules: &Rules,
) -> Result<(Node, Option<Station>), SurfaceError> {
    let &[(_, first), ref others @ ..] = group else {
        return Err(SurfaceError::TooFewPlaces { shots: shots.taken(), places: 0 });
    };
    if others.is_empty() {
        return Ok((first, first.has(STEP).then(|| Station::fading(first, true))));
    }
    let is_step = group.iter().all(|(_, node)| node.has(STEP));
    let mut mean = Node { x: 0.0, y: 0.0, z: 0.0, ..first };
    for (_, node) in group {
        mean.x += node.x - first.x;
        mean.y += node.y - first.y;
        mean.z += node.z - first.z;
        mean.shot = mean.shot.min(node.shot);
        mean.flags |= node.flags;
    }
    let count = group.len() as f64;
    mean.x = first.x + mean.x / count;
    mean.y = first.y + mean.y / count;
    mean.z = first.z + mean.z / count;
    // Of shots inside and outside the mean may be outside.
    let inside = frame.clearance(mean.at()) >= -frame.hair;
    mean.flags = if inside { mean.flags | INSIDE } else { mean.flags & !INSIDE };
    mean.flags = if is_step { mean.flags } else { mean.flags & !STEP };
    check_spread(group, mean.at(), rules)?;
    if is_step && let Some(station) = on_step(shots, group, mean, notes, frame, rules)? {
        return Ok((station.low, Some(station)));
    }
    let difference = check_heights(group, rules)?;
    let mut numbers: Vec<usize> = group.iter().map(|(_, node)| node.shot as usize).collect();
    numbers.sort_unstable();
    let at = frame.given(mean.at());
    notes.push(Note::Shared(SharedPlace { shots: numbers, at, height: mean.z, difference }));
    Ok((mean, is_step.then(|| Station::fading(mean, false))))
}

/// The station of marked shots with two heights; nothing where the heights are one.
fn on_step(
    shots: &Shots,
    group: &[(u32, Node)],
    mean: Node,
    notes: &mut Vec<Note>,
    frame: &Frame,
    rules: &Rules,
) -> Result<Option<Station>, SurfaceError> {
    let group: Vec<Node> = group.iter().map(|(_, node)| *node).collect();
    let heights = || group.iter().map(|node| node.z);
    let (low, high) = (heights().fold(f64::INFINITY, f64::min), heights().fold(f64::NEG_INFINITY, f64::max));
    if within(high - low, rules.reading_error) {
        return Ok(None);
    }
    let station = Station::of(shots, &group, mean, rules)?;
    for side in [station.low, station.high] {
        let of_side = || group.iter().filter(|node| within((node.z - side.z).abs(), rules.reading_error));
        let mut shots: Vec<usize> = of_side().map(|node| node.shot as usize).collect();
        if shots.len() > 1 {
            shots.sort_unstable();
            let least = of_side().map(|node| node.z).fold(f64::INFINITY, f64::min);
            let greatest = of_side().map(|node| node.z).fold(f64::NEG_INFINITY, f64::max);
            let (at, height, difference) = (frame.given(mean.at()), side.z, greatest - least);
            notes.push(Note::Shared(SharedPlace { shots, at, height, difference }));
        }
    }
    Ok(Some(station))
}

/// Refuses a group so long drawn out that it is no one place.
fn check_spread(group: &[(u32, Node)], mean: Point, rules: &Rules) -> Result<(), SurfaceError> {
    let farthest_from = |place: Point| {
        group
            .iter()
            .map(|(_, node)| (place.distance(node.at()), *node))
            .reduce(|best, next| if next.0 > best.0 { next } else { best })
    };
    let Some((reach, first)) = farthest_from(mean) else { return Ok(()) };
    if within(reach, rules.same_place) {
        return Ok(());
    }
    let (spread, last) = farthest_from(first.at()).unwrap_or((reach, first));
    Err(SurfaceError::Crowded {
        shots: group.len(),
        first: first.shot as usize,
        last: last.shot as usize,
        spread,
        allowed: rules.same_place,
    })
}

/// Refuses heights that differ by more than a reading may; gives the difference.
fn check_heights(group: &[(u32, Node)], rules: &Rules) -> Result<f64, SurfaceError> {
    let Some((_, first)) = group.first() else { return Ok(0.0) };
    let low =
        group.iter().map(|(_, node)| node).fold(first, |low, node| if node.z < low.z { node } else { low });
    let high = group
        .iter()
        .map(|(_, node)| node)
        .fold(first, |high, node| if node.z > high.z { node } else { high });
    if within(high.z - low.z, rules.reading_error) {
        return Ok(high.z - low.z);
    }
    let (low_shot, high_shot) = (low.shot as usize, high.shot as usize);
    let (low_height, high_height) = (low.z, high.z);
    Err(SurfaceError::TwoHeights {
        low_shot,
        low: low_height,
        high_shot,
        high: high_height,
        distance: low.at().distance(high.at()),
        allowed: rules.reading_error,
    })
}

/// Groups of numbers that were joined, each known by its least member.
struct Groups(Vec<u32>);

impl Groups {
    fn new(count: usize) -> Self {
        Self((0..count as u32).collect())
    }

    fn first(&mut self, mut member: u32) -> u32 {
        while self.0[member as usize] != member {
            let above = self.0[self.0[member as usize] as usize];
            self.0[member as usize] = above;
            member = above;
        }
        member
    }

    fn join(&mut self, a: u32, b: u32) {
        let (a, b) = (self.first(a), self.first(b));
        self.0[a.max(b) as usize] = a.min(b);
    }
}
