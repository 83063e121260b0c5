//! Which way the facets of a finish drain.

use super::Finish;
use super::meeting::along;
use crate::geometry::Run;

/// Water leaves over an edge where the way downhill leans out over it by more than this (a sine).
const LEANS: f64 = 1e-9;

/// What lies beyond an edge over which a facet drains.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Beyond {
    /// Another facet, by its number; where that one drains back over the same edge, the edge is a valley.
    Facet(usize),
    /// No facet: the edge of the finish, or of a drain left open.
    Edge,
}

impl Finish {
    /// What a facet drains over to, each once, facets first; nothing for a level facet and for one plane.
    #[must_use]
    pub fn drains_over(&self, facet: usize) -> Vec<Beyond> {
        let facets = self.facets();
        let Some(own) = facets.get(facet) else { return Vec::new() };
        let Some(downhill) = own.downhill() else { return Vec::new() };
        let mut found = Vec::new();
        for run in own.region().runs().filter(|run| leans_out(run, downhill)) {
            let mut open = run.length();
            for (number, other) in facets.iter().enumerate().filter(|(number, _)| *number != facet) {
                let shared: f64 = (other.region().runs())
                    .filter_map(|of_other| along(&run, &of_other))
                    .map(|shared| shared.ends[0].distance(shared.ends[1]))
                    .sum();
                if shared > 0.0 {
                    found.push(Beyond::Facet(number));
                    open -= shared;
                }
            }
            if open > 1e-6 {
                found.push(Beyond::Edge);
            }
        }
        found.sort_unstable();
        found.dedup();
        found
    }
}

/// Whether water runs out over a run; the facet is on its left.
fn leans_out(run: &Run, downhill: [f64; 2]) -> bool {
    let (dx, dy) = (run.to.x - run.from.x, run.to.y - run.from.y);
    downhill[0] * dy - downhill[1] * dx > LEANS * run.length()
}
