//! Both surfaces along one straight leg of a line.

use crate::geometry::{Plane, Point};
use crate::survey::surface::{Ground, Locator};

/// Stretches of a leg that lie this near to one another, in metres, meet: the locator leaves out shorter ones.
pub(super) const HAIR: f64 = 1e-7;

/// A stretch of a leg over which both surfaces are straight.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Stretch {
    /// Distance along the leg.
    pub(crate) from: f64,
    pub(crate) to: f64,
    /// Height of the old slab at both ends.
    pub(crate) old: [f64; 2],
    /// Height of the finish at both ends.
    pub(crate) finish: [f64; 2],
    pub(crate) ground: Ground,
}

/// The triangles of one facet and the plane of the finish over it.
pub(crate) struct Facet<'a> {
    pub(crate) ground: Locator<'a>,
    pub(crate) finish: Plane,
}

/// The stretches of a leg, in order. Along a side of a triangle or a facet the one met first tells.
pub(crate) fn stretches(facets: &[Facet<'_>], from: Point, to: Point) -> Vec<Stretch> {
    let length = from.distance(to);
    let at = |share: f64| Point::new(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y));
    let mut found = Vec::new();
    for facet in facets {
        found.extend(facet.ground.along(from, to).into_iter().map(|stretch| Stretch {
            from: stretch.from * length,
            to: stretch.to * length,
            old: [stretch.height_from, stretch.height_to],
            finish: [stretch.from, stretch.to].map(|share| facet.finish.height_at(at(share))),
            ground: stretch.ground,
        }));
    }
    found.sort_by(|a, b| a.from.total_cmp(&b.from).then(b.to.total_cmp(&a.to)));
    uncover(&mut found);
    found
}

/// Drops and trims stretches that lie over those before them: along the edge of two facets both were found.
fn uncover(stretches: &mut Vec<Stretch>) {
    let mut reached = f64::NEG_INFINITY;
    stretches.retain_mut(|stretch| {
        if stretch.to <= reached + 1e-9 {
            return false;
        }
        if stretch.from < reached {
            let share = (reached - stretch.from) / (stretch.to - stretch.from);
            for heights in [&mut stretch.old, &mut stretch.finish] {
                heights[0] += share * (heights[1] - heights[0]);
            }
            stretch.from = reached;
        }
        reached = stretch.to;
        true
    });
}
