//! The shots on both sides of a step at one place.

use super::StepFlaw;
use crate::geometry::Point;
use crate::survey::surface::rules::within;
use crate::survey::surface::shot::Shots;
use crate::survey::surface::tiling::Node;
use crate::survey::surface::{Rules, SurfaceError};

/// Shots of a pair less far apart in plan are at the same place, in metres: their places do not tell the sides.
const SAME: f64 = 1e-6;

/// A place where a step was shot: both sides of it, or where it fades out.
#[derive(Clone, Copy, Debug)]
pub(in crate::survey::surface) struct Station {
    /// The lower side.
    pub(in crate::survey::surface) low: Node,
    /// The higher side, at the same place; the lower one again where the step fades out.
    pub(in crate::survey::surface) high: Node,
    /// From the lower side to the higher, where the shots tell.
    pub(in crate::survey::surface) across: Option<Point>,
    /// One shot alone: the step fades out there, or its partner is missing.
    pub(in crate::survey::surface) alone: bool,
}

impl Station {
    /// Where a step fades out.
    pub(in crate::survey::surface) fn fading(node: Node, alone: bool) -> Self {
        Self { low: node, high: node, across: None, alone }
    }

    /// The pair at a place from marked shots of two heights, each within the reading error; `mean` is their place.
    pub(in crate::survey::surface) fn of(
        shots: &Shots,
        group: &[Node],
        mean: Node,
        rules: &Rules,
    ) -> Result<Self, SurfaceError> {
        let lowest = group.iter().fold(mean, |low, &node| if node.z < low.z { node } else { low });
        let highest = group.iter().fold(mean, |high, &node| if node.z > high.z { node } else { high });
        let lows = || group.iter().filter(|node| within(node.z - lowest.z, rules.reading_error));
        let highs = || group.iter().filter(|node| within(highest.z - node.z, rules.reading_error));
        if lows().count() + highs().count() != group.len() {
            let [shot, other] = [lowest, highest].map(|node| node.shot as usize);
            return Err(SurfaceError::Step { shot, other, flaw: StepFlaw::ThreeHeights });
        }
        let (low, high) = (mean_of(lows()), mean_of(highs()));
        let apart = Point::new(high.x - low.x, high.y - low.y);
        let across = if apart.x.hypot(apart.y) > SAME {
            Some(apart)
        } else {
            shots.across(low.shot as usize, high.shot as usize)
        };
        let at_mean = |side: Node| Node { x: mean.x, y: mean.y, flags: mean.flags, ..side };
        Ok(Self { low: at_mean(low), high: at_mean(high), across, alone: false })
    }

    /// Where both sides meet.
    pub(in crate::survey::surface) fn at(&self) -> Point {
        self.low.at()
    }

    /// Whether the step has no height here.
    pub(in crate::survey::surface) fn fades(&self) -> bool {
        self.low.shot == self.high.shot
    }

    /// How high the step is.
    pub(in crate::survey::surface) fn height(&self) -> f64 {
        self.high.z - self.low.z
    }
}

/// The mean of shots on one side, known by the first of them.
fn mean_of<'a>(side: impl Iterator<Item = &'a Node> + Clone) -> Node {
    let Some(&first) = side.clone().min_by_key(|node| node.shot) else {
        return Node { x: 0.0, y: 0.0, z: 0.0, shot: 0, flags: 0 };
    };
    let count = side.clone().count() as f64;
    let mean = |value: fn(&Node) -> f64| {
        value(&first) + side.clone().map(|node| value(node) - value(&first)).sum::<f64>() / count
    };
    Node { x: mean(|node| node.x), y: mean(|node| node.y), z: mean(|node| node.z), ..first }
}
