//! The order of walking: once round the outer ring with the work on the left, then round each hole.

use super::breaks::Segment;
use crate::failure::{Code, Failure, Result};
use crate::geometry::RingId;
use crate::survey::outline::{Outline, Run};

/// An edge as it is walked: legs of one name.
#[derive(Clone, Debug)]
pub(super) struct Edge {
    pub(super) name: String,
    pub(super) ring: RingId,
    /// The legs in order; the next edge of its ring goes on where the last one ends.
    pub(super) legs: Vec<Segment>,
}

impl Edge {
    /// Whether this name means it: its own, or that of the hole it belongs to.
    pub(super) fn is_called(&self, name: &str, outline: &Outline) -> bool {
        let hole = match self.ring {
            RingId::Outer => None,
            RingId::Hole(index) => outline.holes().get(index).map(|hole| hole.name.as_str()),
        };
        same_name(&self.name, name) || hole.is_some_and(|hole| same_name(hole, name))
    }
}

/// The edges in the order of walking, from the start of the named edge or of the first.
pub(super) fn walk(outline: &Outline, start: Option<&str>) -> Result<Vec<Edge>> {
    let region = outline.region();
    let holes = (0..region.holes().len()).map(RingId::Hole);
    let mut edges = Vec::new();
    for ring in std::iter::once(RingId::Outer).chain(holes) {
        let mut of_ring = ring_edges(outline, ring);
        if let (RingId::Outer, Some(name)) = (ring, start) {
            let first = of_ring.iter().position(|edge| same_name(&edge.name, name));
            of_ring.rotate_left(first.ok_or_else(|| unknown_start(outline, name))?);
        }
        edges.extend(of_ring);
    }
    Ok(edges)
}

/// The edges of one ring as walked, the first run's first.
fn ring_edges(outline: &Outline, ring: RingId) -> Vec<Edge> {
    let region = outline.region();
    let mut runs: Vec<_> = region.runs().filter(|run| run.id.ring == ring).collect();
    let backward = runs.windows(2).any(|pair| pair[0].to != pair[1].from);
    if backward {
        // Given the other way round: the first run stays the first.
        runs.reverse();
        runs.rotate_right(1);
    }
    let name = |id| outline.run(id).map(Run::name).unwrap_or_default();
    let starts = |index: usize| {
        let before = if index == 0 { runs.len() - 1 } else { index - 1 };
        !same_name(name(runs[before].id), name(runs[index].id))
    };
    // The list may start amid an edge: then the walk starts where that edge does.
    let first = (0..runs.len()).rev().map(|back| (back + 1) % runs.len()).find(|&index| starts(index));
    let shift = first.unwrap_or(0);
    let mut edges: Vec<Edge> = Vec::new();
    for step in 0..runs.len() {
        let index = (shift + step) % runs.len();
        let run = runs[index];
        match edges.last_mut() {
            Some(edge) if !starts(index) => edge.legs.push([run.from, run.to]),
            _ => edges.push(Edge { name: name(run.id).to_owned(), ring, legs: vec![[run.from, run.to]] }),
        }
    }
    edges
}

fn same_name(a: &str, b: &str) -> bool {
    a.trim().to_lowercase() == b.trim().to_lowercase()
}

fn unknown_start(outline: &Outline, name: &str) -> Box<Failure> {
    match outline.edge(name) {
        Err(failure) => failure.under("start_edge"),
        Ok(_) => Failure::new(Code::EdgeUnknown, "start_edge")
            .written(format!("\"{name}\", an edge of a hole"))
            .allowed("an edge of the outer ring")
            .remedy("name the edge that the walk starts with"),
    }
}
