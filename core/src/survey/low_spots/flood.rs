//! The level to which water stands at every corner, once as much as can has come down.
//!
//! Water at a corner rises until it finds a way out: its level is the least over all ways to an outlet of the highest
//! corner on the way. Over plane triangles the highest place of a way that is cheapest in this sense is always a corner,
//! so the sides of the triangles are ways enough. Corners are taken in the order of their levels, the outlets first
//! (Barnes, Lehman and Mulla 2014, "Priority-flood", which is for grids, over a triangulation instead).

use crate::geometry::Point;
use crate::geometry::network::Network;
use std::cmp::{Ordering, Reverse};
use std::collections::BinaryHeap;

/// Where the water stands.
#[derive(Clone, Debug)]
pub(super) struct Flood {
    /// The level at every corner: its own height where it is dry; infinite where no outlet can be reached.
    pub(super) levels: Vec<f64>,
    /// The corner that water standing at each corner leaves over.
    pub(super) spills: Vec<u32>,
}

/// A corner to be taken: the lowest first, of those as low the one farthest to the left, then nearest to the front.
#[derive(Clone, Copy, Debug)]
struct Next {
    level: f64,
    at: Point,
    corner: u32,
}

impl Ord for Next {
    fn cmp(&self, other: &Self) -> Ordering {
        let by_place = self.at.x.total_cmp(&other.at.x).then(self.at.y.total_cmp(&other.at.y));
        self.level.total_cmp(&other.level).then(by_place).then(self.corner.cmp(&other.corner))
    }
}

impl PartialOrd for Next {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl PartialEq for Next {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other).is_eq()
    }
}

impl Eq for Next {}

impl Flood {
    /// Floods a network from its outlets.
    pub(super) fn of(network: &Network, ways: &Ways, outlets: &[u32]) -> Self {
        let corners = network.corners();
        let mut flood =
            Self { levels: vec![f64::INFINITY; corners.len()], spills: (0..corners.len() as u32).collect() };
        let mut queue = BinaryHeap::new();
        let push = |queue: &mut BinaryHeap<Reverse<Next>>, corner: u32, level: f64| {
            queue.push(Reverse(Next { level, at: corners[corner as usize].at, corner }));
        };
        for &outlet in outlets {
            flood.levels[outlet as usize] = corners[outlet as usize].height;
            push(&mut queue, outlet, corners[outlet as usize].height);
        }
        while let Some(Reverse(Next { level, corner, .. })) = queue.pop() {
            for &next in ways.from(corner) {
                if flood.levels[next as usize] < f64::INFINITY {
                    continue;
                }
                let height = corners[next as usize].height;
                flood.levels[next as usize] = height.max(level);
                if height < level {
                    flood.spills[next as usize] = flood.spills[corner as usize];
                }
                push(&mut queue, next, height.max(level));
            }
        }
        flood
    }
}

/// From each corner the corners that water gets to: along the sides of triangles, and down or up a step.
#[derive(Clone, Debug)]
pub(super) struct Ways {
    /// Where the ways of each corner end.
    ends: Vec<u32>,
    to: Vec<u32>,
}

impl Ways {
    pub(super) fn of(network: &Network) -> Self {
        let corners = network.corners();
        let mut pairs: Vec<[u32; 2]> = Vec::with_capacity(6 * network.triangles().len());
        for &[a, b, c] in network.triangles() {
            pairs.extend([[a, b], [b, a], [b, c], [c, b], [c, a], [a, c]]);
        }
        let mut by_place: Vec<u32> = (0..corners.len() as u32).collect();
        by_place.sort_unstable_by_key(|&corner| corners[corner as usize].place);
        for pair in by_place.windows(2) {
            if let &[a, b] = pair
                && corners[a as usize].place == corners[b as usize].place
            {
                pairs.extend([[a, b], [b, a]]);
            }
        }
        pairs.sort_unstable();
        pairs.dedup();
        let mut ends = vec![0; corners.len()];
        for (index, &[from, _]) in (1_u32..).zip(&pairs) {
            ends[from as usize] = index;
        }
        // A corner without a way ends where the one before it does.
        let mut last = 0;
        for end in &mut ends {
            last = last.max(*end);
            *end = last;
        }
        Self { ends, to: pairs.into_iter().map(|[_, to]| to).collect() }
    }

    /// The corners next to one.
    pub(super) fn from(&self, corner: u32) -> &[u32] {
        let start = if corner == 0 { 0 } else { self.ends[corner as usize - 1] };
        &self.to[start as usize..self.ends[corner as usize] as usize]
    }
}
