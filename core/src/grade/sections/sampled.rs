//! Heights at even distances along a section, for the crew.

use super::stations::{Section, Station};
use crate::failure::{Code, Failure, Result, check};
use crate::geometry::Point;
use crate::quantity::{Elevation, Length, Range, Typed, feet_and_inches};

/// The distance from one sample to the next: from a millimetre to 1 km.
pub const SPACING: Range = Range::closed(1.0e-3, 1.0e3);

/// The most samples along one line.
pub const MOST_STATIONS: usize = 10_000;

/// A place on the line, at a whole step from its start or at its end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sample {
    /// Distance along the line from its start.
    pub distance: Length,
    /// Distance from the left.
    pub x: Length,
    /// Distance from the front.
    pub y: Length,
    /// Height of the old slab; none outside the work. At a step, the one before it.
    pub old_slab: Option<Elevation>,
    /// Height of the finish.
    pub finish: Option<Elevation>,
    /// Finish less old slab.
    pub thickness: Option<Length>,
}

impl Section {
    /// The section at whole steps of a spacing from the start of the line, and at its end.
    ///
    /// # Errors
    /// - `OUT_OF_RANGE`, `NOT_FINITE`: the spacing. Path: `spacing`.
    /// - `TOO_MANY_STATIONS`: more than ten thousand. Path: `spacing`.
    pub fn sampled(&self, spacing: Length) -> Result<Vec<Sample>> {
        let step = check("spacing", spacing, SPACING)?.base();
        let length = self.length.base();
        // An end that is a whole step but for rounding is that step.
        let steps = (length / step - 1e-9).ceil().max(1.0);
        if steps + 1.0 > MOST_STATIONS as f64 {
            return Err(Failure::new(Code::TooManyStations, "spacing")
                .written(format!("{}, {:.0} stations", feet_and_inches(spacing, 64), steps + 1.0))
                .allowed(format!("at most {MOST_STATIONS} stations"))
                .remedy("take a greater spacing"));
        }
        let distance = |number: usize| (number as f64 * step).min(length);
        Ok((0..=steps as usize).map(|number| self.sample(distance(number))).collect())
    }

    fn sample(&self, distance: f64) -> Sample {
        let at = self.place(distance);
        let heights = self.heights(distance);
        Sample {
            distance: Length::from_base(distance),
            x: Length::from_base(at.x),
            y: Length::from_base(at.y),
            old_slab: heights.map(|[old, _]| Elevation::from_base(old)),
            finish: heights.map(|[_, finish]| Elevation::from_base(finish)),
            thickness: heights.map(|[old, finish]| Length::from_base(finish - old)),
        }
    }

    /// The place at a distance along the line.
    fn place(&self, distance: f64) -> Point {
        let mut left = distance;
        let mut at = self.line.first().map(|corner| corner.place()).unwrap_or_default();
        for corner in self.line.iter().skip(1) {
            let to = corner.place();
            let length = at.distance(to);
            if left <= length && length > 0.0 {
                let share = left / length;
                return Point::new(at.x + share * (to.x - at.x), at.y + share * (to.y - at.y));
            }
            (left, at) = (left - length, to);
        }
        at
    }

    /// Old slab and finish at a distance along the line; none outside the work.
    fn heights(&self, distance: f64) -> Option<[f64; 2]> {
        let after = self.stations.partition_point(|station| station.distance.base() < distance);
        let heights = |station: &Station| [station.old_slab.base(), station.finish.base()];
        let next = self.stations.get(after);
        let near = |station: &&Station| (station.distance.base() - distance).abs() <= super::along::HAIR;
        let last = after.checked_sub(1).and_then(|before| self.stations.get(before));
        match (last, next) {
            (Some(a), Some(b)) if a.run == b.run => {
                let whole = b.distance.base() - a.distance.base();
                let share = if whole > 0.0 { (distance - a.distance.base()) / whole } else { 0.0 };
                let (a, b) = (heights(a), heights(b));
                Some([0, 1].map(|of| a[of] + share * (b[of] - a[of])))
            }
            // At the ends of runs, and in gaps.
            _ => next.filter(near).or(last.filter(near)).map(heights),
        }
    }
}
