//! Which parts of the outline meet a given height: doors, walks, open edges, each stretch once.

use super::along::ON_EDGE;
use crate::geometry::{Point, RunId};
use crate::survey::outline::{Corner, Outline, Run};

/// Something that the floor meets, with the places along it.
#[derive(Clone, Debug, PartialEq)]
pub struct Met {
    /// What it is called.
    pub name: String,
    /// Its place, or places along it.
    pub line: Vec<Corner>,
}

/// A straight stretch of the outline where the floor meets a given height, or a place of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Transition {
    /// What is met there, the longest first.
    pub names: Vec<String>,
    /// Its one or two places.
    pub line: Vec<Corner>,
}

/// A stretch of one run.
struct Stretch {
    run: RunId,
    from: f64,
    to: f64,
    names: Vec<String>,
}

/// The stretches of the outline along which things are met, in its order. What overlaps is one stretch; what lies more than 1/2 in off the
/// outline is no edge of the floor and left out.
#[must_use]
pub fn transitions(outline: &Outline, met: &[Met]) -> Vec<Transition> {
    let mut stretches: Vec<Stretch> = met.iter().flat_map(|met| stretches_of(outline, met)).collect();
    let length = |stretch: &Stretch| stretch.to - stretch.from;
    stretches.sort_by(|a, b| length(b).total_cmp(&length(a)));
    let mut joined: Vec<Stretch> = Vec::new();
    for next in stretches {
        join(&mut joined, next);
    }
    let mut found = Vec::with_capacity(joined.len());
    for run in outline.runs() {
        let mut here: Vec<&Stretch> = joined.iter().filter(|stretch| stretch.run == run.id()).collect();
        here.sort_by(|a, b| a.from.total_cmp(&b.from));
        found.extend(here.into_iter().map(|stretch| of(run, stretch)));
    }
    found
}

/// Adds a stretch to what it overlaps, or by itself. Overlapping by a hair at a common end is none.
fn join(joined: &mut Vec<Stretch>, mut next: Stretch) {
    while let Some(index) = joined.iter().position(|known| overlap(known, &next)) {
        let mut known = joined.swap_remove(index);
        known.from = known.from.min(next.from);
        known.to = known.to.max(next.to);
        let more = next.names.into_iter().filter(|name| !known.names.contains(name)).collect::<Vec<_>>();
        known.names.extend(more);
        next = known;
    }
    joined.push(next);
}

fn overlap(a: &Stretch, b: &Stretch) -> bool {
    let lone = a.to - a.from <= ON_EDGE || b.to - b.from <= ON_EDGE;
    let hair = if lone { -ON_EDGE } else { ON_EDGE };
    a.run == b.run && a.to.min(b.to) - a.from.max(b.from) >= hair
}

fn of(run: &Run, stretch: &Stretch) -> Transition {
    let at = |along: f64| at(run, along);
    let line = if stretch.to - stretch.from <= ON_EDGE {
        vec![at(stretch.from)]
    } else {
        vec![at(stretch.from), at(stretch.to)]
    };
    Transition { names: stretch.names.clone(), line }
}

/// The stretches of runs along which a thing is met.
fn stretches_of(outline: &Outline, met: &Met) -> Vec<Stretch> {
    let places: Vec<Point> = met.line.iter().map(|corner| corner.place()).collect();
    let on = |from: Point, to: Point| -> Option<Stretch> {
        let run = outline.runs().iter().find(|run| is_on(run, from) && is_on(run, to))?;
        let (one, other) = (share(run, from), share(run, to));
        let names = vec![met.name.clone()];
        Some(Stretch { run: run.id(), from: one.min(other), to: one.max(other), names })
    };
    match *places.as_slice() {
        [place] => on(place, place).into_iter().collect(),
        _ => places.windows(2).filter_map(|pair| on(pair[0], pair[1])).collect(),
    }
}

/// How far along a run its place nearest to a point is.
fn share(run: &Run, at: Point) -> f64 {
    let (from, to) = (run.from().place(), run.to().place());
    let length = from.distance(to);
    let along = ((at.x - from.x) * (to.x - from.x) + (at.y - from.y) * (to.y - from.y)) / length;
    along.clamp(0.0, length)
}

fn is_on(run: &Run, place: Point) -> bool {
    at(run, share(run, place)).place().distance(place) <= ON_EDGE
}

fn at(run: &Run, along: f64) -> Corner {
    let (from, to) = (run.from(), run.to());
    let share = along / from.place().distance(to.place());
    Corner::new(from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share)
}
