//! The corners of a network at which water leaves.

use super::edges::{EdgeState, Resolved};
use crate::geometry::Point;
use crate::geometry::network::Network;
use crate::survey::outline::Outline;
use std::collections::BTreeMap;

/// The outlets by corner, with the name of the drain or the edge that takes the water.
pub(super) struct Outlets {
    names: BTreeMap<u32, String>,
}

impl Outlets {
    /// Puts the drains into the network, then finds the corners on drains and on edges that are not walled.
    pub(super) fn of(network: &mut Network, outline: &Outline, resolved: &Resolved) -> Self {
        let mut names = BTreeMap::new();
        for (name, places) in &resolved.drains {
            for corner in drain(network, places) {
                names.entry(corner).or_insert_with(|| name.clone());
            }
        }
        let corners = network.corners();
        let mut leaving: Vec<(usize, u32)> = Vec::new();
        for side in network.border() {
            let [from, to] = side.map(|corner| corners[corner as usize].at);
            let middle = Point::new(0.5 * (from.x + to.x), 0.5 * (from.y + to.y));
            let nearest = outline.region().nearest_run(middle).run;
            let run = outline.runs().iter().position(|run| run.id() == nearest);
            if let Some(run) = run.filter(|&run| resolved.states[run] != EdgeState::Walled) {
                leaving.extend(side.map(|corner| (run, corner)));
            }
        }
        // At the corner of two edges the first of the outline takes the water, whatever the order of the triangles.
        leaving.sort_unstable();
        for (run, corner) in leaving {
            names.entry(corner).or_insert_with(|| outline.runs()[run].name().to_owned());
        }
        Self { names }
    }

    /// The corners.
    pub(super) fn corners(&self) -> Vec<u32> {
        self.names.keys().copied().collect()
    }

    /// What takes the water at a corner.
    pub(super) fn name(&self, corner: u32) -> Option<&str> {
        self.names.get(&corner).map(String::as_str)
    }
}

/// Puts a drain into a network; gives the corners on it.
pub(crate) fn drain(network: &mut Network, places: &[Point]) -> Vec<u32> {
    match places {
        [place] => network.insert(*place),
        _ => places.windows(2).flat_map(|pair| network.insert_line(pair[0], pair[1])).collect(),
    }
}
