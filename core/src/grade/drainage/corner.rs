//! Which way water takes from a corner.
//!
//! The steepest of the ways that lead down: over a triangle where its way downhill lies within it there, or along a side that
//! falls. Of ways as steep that over the first facet is taken. Where none leads down, water spreads along level sides to the nearest
//! corner from which one does.

use super::ending::{End, Ending};
use super::ground::{FLAT, Ground, LEANS, Way};
use super::level;

/// The first step from a corner.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Step {
    /// Along a side to another corner.
    Along(u32),
    /// Down over a triangle.
    Over(u32),
    /// Nowhere: the water ends there.
    Stays(usize),
}

/// Ways whose falls differ by less than this share are as steep.
const AS_STEEP: f64 = 1e-9;

struct Best {
    step: Step,
    fall: f64,
    facet: u32,
}

/// The first step from every corner.
pub(super) fn steps(ground: &mut Ground) -> Vec<Step> {
    let mut best: Vec<Option<Best>> = (0..ground.places.len()).map(|_| None).collect();
    for triangle in 0..ground.triangles.len() {
        for place in 0..3 {
            let corner = ground.triangles[triangle][place];
            for (step, fall) in ways(ground, triangle, place).into_iter().flatten() {
                let facet = ground.facet[triangle];
                let known = &mut best[corner as usize];
                let better = known.as_ref().is_none_or(|known| {
                    fall > known.fall * (1.0 + AS_STEEP)
                        || (fall >= known.fall * (1.0 - AS_STEEP) && facet < known.facet)
                });
                if better {
                    *known = Some(Best { step, fall, facet });
                }
            }
        }
    }
    let mut steps: Vec<Option<Step>> = best.into_iter().map(|best| best.map(|best| best.step)).collect();
    level::spread(ground, &mut steps);
    let numbered = (0_u32..).zip(steps);
    numbered.map(|(corner, step)| step.unwrap_or_else(|| Step::Stays(ends(ground, corner)))).collect()
}

/// The ways down from a corner that a triangle has: over it, along its side that leaves the corner, along the one that arrives;
/// out over either where that is an edge.
fn ways(ground: &Ground, triangle: usize, place: usize) -> [Option<(Step, f64)>; 3] {
    let (leaving, arriving) = (place, (place + 2) % 3);
    let leans = ground.leans[triangle];
    let fall = ground.falls[ground.facet[triangle] as usize].fall;
    let within = leans[leaving] < -LEANS && leans[arriving] < -LEANS;
    let along = |side: usize, to: u32| {
        // Over an open edge the water is gone at once.
        if let Way::Ends(ending) = ground.ways[triangle][side]
            && ground.is_border(triangle, side)
            && ground.endings[ending].end.is_outlet()
        {
            return Some((Step::Stays(ending), fall));
        }
        let fall = ground.fall_along(ground.triangles[triangle][place], to);
        (fall > FLAT).then_some((Step::Along(to), fall))
    };
    let corners = ground.triangles[triangle];
    [
        within.then_some((Step::Over(triangle as u32), fall)),
        along(leaving, corners[(place + 1) % 3]),
        along(arriving, corners[(place + 2) % 3]),
    ]
}

/// Where water ends that has no way down from a corner.
fn ends(ground: &mut Ground, corner: u32) -> usize {
    if let Some(taker) = ground.takers[corner as usize] {
        return taker.ending;
    }
    let about = ground.triangles.iter().zip(&ground.facet).filter(|(corners, _)| corners.contains(&corner));
    let level = about.filter_map(|(_, &facet)| ground.level[facet as usize]).min();
    level.unwrap_or_else(|| {
        let name = ground.walls[corner as usize].map(|run| ground.run_names[run].clone());
        let at = ground.in_axes(ground.places[corner as usize]);
        ground.ending(Ending { end: End::LowSpot, name, at: Some(at) })
    })
}
