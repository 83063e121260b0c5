//! The polygons on the left and on the right of a step line, around each of its stations.

use super::{Path, StepFlaw, Steps};
use crate::geometry::triangulation::{CONSTRAINT, Constrainer, Links, Triangulation};
use crate::survey::surface::SurfaceError;
use crate::survey::surface::hull::OUTER;
use std::collections::HashMap;

/// A side of a station.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Hand {
    /// The station by its number.
    pub(super) station: usize,
    /// On the left of its line.
    pub(super) left: bool,
}

/// Which side of the line a polygon is on, by the two edges with which it meets a station.
#[derive(Debug, Default)]
pub(super) struct Sectors {
    /// The polygon on the left of the edge that leaves the station's node for another.
    leaving: HashMap<[u32; 2], Hand>,
    /// The polygon on the left of the edge that arrives from another node.
    arriving: HashMap<[u32; 2], Hand>,
}

impl Sectors {
    /// Walks around every station of every line.
    pub(super) fn of(steps: &Steps, triangulation: &mut Triangulation) -> Result<Self, SurfaceError> {
        let mut sectors = Self::default();
        let edges = edges_of(steps, triangulation);
        for path in &steps.paths {
            for (index, &station) in path.stations.iter().enumerate() {
                if steps.stations[station].fades() {
                    continue;
                }
                let node = |station: usize| steps.nodes[station][0];
                let edges =
                    path.around(index).map(|other| edges.get(&[node(station), node(other?)]).copied());
                let mut walk = Walk { links: triangulation.links(), sectors: &mut sectors, station };
                if !walk.both_sides(edges) {
                    let [shot, other] =
                        [steps.stations[station].low, steps.stations[station].high].map(|n| n.shot as usize);
                    return Err(SurfaceError::Step { shot, other, flaw: StepFlaw::EndsInside });
                }
            }
        }
        Ok(sectors)
    }

    /// The side a polygon is on that leaves a node for another.
    pub(super) fn leaving(&self, from: u32, to: u32) -> Option<Hand> {
        self.leaving.get(&[from, to]).copied()
    }

    /// The node of every polygon that leaves a station for another node, and of every one that arrives there.
    pub(super) fn owners(&self, steps: &Steps, senses: &[bool]) -> Owners {
        let mut left_is_high = vec![false; steps.stations.len()];
        for (path, &sense) in steps.paths.iter().zip(senses) {
            path.stations.iter().for_each(|&station| left_is_high[station] = sense);
        }
        let node = |hand: &Hand| {
            let high = hand.left == left_is_high[hand.station];
            steps.nodes[hand.station][usize::from(high)]
        };
        let of = |map: &HashMap<[u32; 2], Hand>| map.iter().map(|(&edge, hand)| (edge, node(hand))).collect();
        Owners { leaving: of(&self.leaving), arriving: of(&self.arriving) }
    }
}

/// The half-edges of all links, both ways.
fn edges_of(steps: &Steps, triangulation: &mut Triangulation) -> HashMap<[u32; 2], u32> {
    let constrainer = Constrainer::new(triangulation);
    let links = steps.paths.iter().flat_map(Path::links).flat_map(|[a, b]| [[a, b], [b, a]]);
    let nodes = links.map(|link| link.map(|station| steps.nodes[station][0]));
    nodes.filter_map(|[from, to]| Some(([from, to], constrainer.joined(from, to)?))).collect()
}

/// The nodes that polygons along step lines have as corners.
#[derive(Debug, Default)]
pub(super) struct Owners {
    leaving: HashMap<[u32; 2], u32>,
    arriving: HashMap<[u32; 2], u32>,
}

impl Owners {
    /// The corner of the polygon on the left of the edge `from`-`to`, at its start.
    pub(super) fn start(&self, from: u32, to: u32) -> u32 {
        self.leaving.get(&[from, to]).copied().unwrap_or(from)
    }

    /// The same at its end.
    pub(super) fn end(&self, from: u32, to: u32) -> u32 {
        self.arriving.get(&[from, to]).copied().unwrap_or(to)
    }
}

struct Walk<'a> {
    links: &'a Links,
    sectors: &'a mut Sectors,
    station: usize,
}

impl Walk<'_> {
    /// Walks from the edges to the stations before and after away on both hands, each time until a line stands in the
    /// way; tells whether one did.
    fn both_sides(&mut self, [before, after]: [Option<u32>; 2]) -> bool {
        let mut parted = before.is_some() || after.is_some();
        if let Some(edge) = after {
            parted &= self.counter_clockwise(edge, true) && self.clockwise(edge, false);
        }
        // Looking back along the line its left is on the right.
        if let Some(edge) = before {
            parted &= self.counter_clockwise(edge, false) && self.clockwise(edge, true);
        }
        parted
    }

    /// The polygon on the left of a half-edge out of the station is on this hand.
    fn take(&mut self, edge: u32, left: bool) {
        let hand = Hand { station: self.station, left };
        let (node, next) = (self.links.from(edge), self.links.to(self.links.next(edge)));
        self.sectors.leaving.insert([node, self.links.to(edge)], hand);
        self.sectors.arriving.insert([next, node], hand);
    }

    fn stops(&self, edge: u32, mark: u32) -> bool {
        self.links.mark(edge) & mark != 0
    }

    fn counter_clockwise(&mut self, start: u32, left: bool) -> bool {
        let mut edge = start;
        loop {
            if self.stops(edge, OUTER) {
                return true;
            }
            self.take(edge, left);
            edge = self.links.next(edge);
            if edge == start {
                return false;
            }
            if self.stops(edge, CONSTRAINT) {
                return true;
            }
        }
    }

    fn clockwise(&mut self, start: u32, left: bool) -> bool {
        let mut edge = start;
        loop {
            edge = self.links.previous(edge);
            if self.stops(edge, OUTER) {
                return true;
            }
            self.take(edge, left);
            if edge == start {
                return false;
            }
            if self.stops(edge, CONSTRAINT) {
                return true;
            }
        }
    }
}
