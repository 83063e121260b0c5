//! What isolation strips and forms are ripped to: the height of the new floor over the old slab, along each edge.
//!
//! The top is the floor, the bottom follows the old slab. A piece is one straight cut from end to end: it goes on over bends of
//! either as long as the cut stays within half a step of what stands there.

use super::breaks::{Segment, at_distance, crossings};
use super::ground::{Floor, Profile};
use super::walk::Edge;
use crate::failure::Result;
use crate::quantity::{Length, Typed};

crate::choice! {
    /// What stands at an edge.
    pub enum Material {
        /// An isolation strip at a wall: the screed rides on it.
        Strip = "isolation_strip",
        /// A form at an open edge.
        Form = "form",
    }
}

/// A straight cut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rip {
    /// Where it starts, along the edge.
    pub from: Length,
    /// Where it ends.
    pub to: Length,
    /// What it is ripped to at its start; negative where the old slab stands above the floor.
    pub height_from: Length,
    /// What it is ripped to at its end.
    pub height_to: Length,
}

/// A height over the old slab along an edge, and where it is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RipAt {
    /// The height.
    pub height: Length,
    /// Where it is, along the edge.
    pub along: Length,
}

/// The rips of an edge.
pub(super) struct Rips {
    pub(super) pieces: Vec<Rip>,
    pub(super) least: RipAt,
    pub(super) greatest: RipAt,
}

/// A stretch of an edge over which finish and old slab are both straight.
#[derive(Clone, Copy)]
struct Straight {
    from: f64,
    to: f64,
    heights: [f64; 2],
}

/// Heights at one place that differ by more, in metres, are a step in the old slab.
const STEP: f64 = 1e-6;

/// The rips of an edge: pieces never go round a corner or over a step.
pub(super) fn rips(
    edge: &Edge,
    profiles: &[Profile],
    lines: &[Segment],
    floor: &Floor<'_>,
    step: Length,
) -> Result<Rips> {
    let nowhere = |height| RipAt { height: Length::from_base(height), along: Length::from_base(0.0) };
    let mut rips =
        Rips { pieces: Vec::new(), least: nowhere(f64::INFINITY), greatest: nowhere(f64::NEG_INFINITY) };
    let mut start = 0.0;
    for (&leg, profile) in edge.legs.iter().zip(profiles) {
        let straights = straights(leg, profile, lines, floor)?;
        rips.mark_extremes(start, &straights);
        rips.pieces.extend(cuts(&straights, 0.5 * step.base()).into_iter().map(|piece| Rip {
            from: Length::from_base(start + piece.from),
            to: Length::from_base(start + piece.to),
            height_from: Length::from_base(piece.heights[0]),
            height_to: Length::from_base(piece.heights[1]),
        }));
        start += profile.length;
    }
    Ok(rips)
}

impl Rips {
    fn mark_extremes(&mut self, start: f64, straights: &[Straight]) {
        let ends = straights
            .iter()
            .flat_map(|straight| [(straight.from, straight.heights[0]), (straight.to, straight.heights[1])]);
        for (along, height) in ends {
            let at = RipAt { height: Length::from_base(height), along: Length::from_base(start + along) };
            if height < self.least.height.base() {
                self.least = at;
            }
            if height > self.greatest.height.base() {
                self.greatest = at;
            }
        }
    }
}

/// The stretches of a leg, cut where the finish bends.
fn straights(leg: Segment, profile: &Profile, lines: &[Segment], floor: &Floor<'_>) -> Result<Vec<Straight>> {
    let finish = |distance: f64| floor.finish_at(at_distance(leg, distance)).map(Typed::base);
    let breaks = crossings(lines, leg);
    let mut found = Vec::new();
    for [from, to, old_from, old_to] in profile.stretches() {
        let old = |distance: f64| old_from + (distance - from) / (to - from) * (old_to - old_from);
        let within = breaks.iter().copied().filter(|distance| *distance > from && *distance < to);
        let mut stops = vec![from];
        stops.extend(within);
        stops.push(to);
        for pair in stops.windows(2) {
            let heights = [finish(pair[0])? - old(pair[0]), finish(pair[1])? - old(pair[1])];
            found.push(Straight { from: pair[0], to: pair[1], heights });
        }
    }
    Ok(found)
}

/// As few straight cuts as reach along, each as long as it can be: every bend it passes lies within the tolerance of it.
fn cuts(straights: &[Straight], tolerance: f64) -> Vec<Straight> {
    let mut cuts: Vec<Straight> = Vec::new();
    // The rises per length that keep all bends passed so far.
    let mut allowed = [f64::NEG_INFINITY, f64::INFINITY];
    for straight in straights {
        let longer = cuts.last().copied().and_then(|cut| {
            let [start, end] = cut.heights;
            let bend = cut.to - cut.from;
            let low = allowed[0].max((end - tolerance - start) / bend);
            let high = allowed[1].min((end + tolerance - start) / bend);
            let rise = (straight.heights[1] - start) / (straight.to - cut.from);
            let joins = (straight.heights[0] - end).abs() <= STEP;
            (joins && rise >= low && rise <= high).then_some((
                Straight { to: straight.to, heights: [start, straight.heights[1]], ..cut },
                [low, high],
            ))
        });
        match (longer, cuts.last_mut()) {
            (Some((cut, slopes)), Some(last)) => (*last, allowed) = (cut, slopes),
            _ => {
                cuts.push(*straight);
                allowed = [f64::NEG_INFINITY, f64::INFINITY];
            }
        }
    }
    cuts
}

#[cfg(test)]
mod tests {
    use super::*;

    fn straight(from: f64, to: f64, heights: [f64; 2]) -> Straight {
        Straight { from, to, heights }
    }

    #[test]
    fn a_cut_passes_small_bends_and_stops_at_great_ones_and_steps() {
        let slight = [straight(0.0, 1.0, [1.0, 1.1]), straight(1.0, 2.0, [1.1, 1.205])];
        let one = cuts(&slight, 0.01);
        assert_eq!((one.len(), one[0].heights, one[0].to), (1, [1.0, 1.205], 2.0));
        assert_eq!(cuts(&slight, 0.002).len(), 2);
        let step = [straight(0.0, 1.0, [1.0, 1.0]), straight(1.0, 2.0, [1.001, 1.001])];
        assert_eq!(cuts(&step, 0.01).len(), 2);
    }

    #[test]
    fn no_bend_lies_farther_off_its_cut_than_the_tolerance() {
        let heights: Vec<f64> = (0..40).map(|at| (f64::from(at) * 0.37).sin() * 0.02).collect();
        let straights: Vec<Straight> = (heights.windows(2).enumerate())
            .map(|(at, pair)| straight(at as f64, at as f64 + 1.0, [pair[0], pair[1]]))
            .collect();
        let tolerance = 0.003;
        let found = cuts(&straights, tolerance);
        assert!(found.len() > 3 && found.len() < straights.len());
        for (at, height) in heights.iter().enumerate() {
            let at = at as f64;
            let cut = found.iter().find(|cut| at >= cut.from && at <= cut.to).unwrap();
            let share = (at - cut.from) / (cut.to - cut.from);
            let on_cut = cut.heights[0] + share * (cut.heights[1] - cut.heights[0]);
            assert!((on_cut - height).abs() <= tolerance + 1e-12);
        }
        assert!(found.windows(2).all(|pair| pair[0].to == pair[1].from));
    }
}
