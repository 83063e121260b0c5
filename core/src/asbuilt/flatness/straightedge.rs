//! The gap under a straightedge laid on a profile.
//!
//! The straightedge rests on two readings, no farther apart than its length, with nothing above the line between them: on an
//! edge of the upper hull of the readings it spans. On a hump it teeters about one high point, and each way it may tip is such an
//! edge; the end that then stands up is no gap. Where the floor lies lower than the line between the two, that is the gap.

use super::class::Verdict;
use super::profile::READING;
use crate::choice;
use crate::failure::{Code, Failure, Place, Result, check};
use crate::quantity::{Elevation, Length, Range, Ratio, Share, Typed};

/// The length of a straightedge: up to 100 ft.
pub const EDGE_LENGTH: Range = Range::positive_to(30.48);

/// A place along a line: within 10 km.
const ALONG: Range = Range::closed(-1.0e4, 1.0e4);

/// Readings at the very end of the straightedge are under it: a hair.
const HAIR: f64 = 1e-6;

choice! {
    /// Classes by gaps under a 10 ft straightedge, as remembered.
    pub enum EdgeClass {
        /// Nine in ten within 1/2 in, all within 3/4 in.
        Conventional = "conventional",
        /// Nine in ten within 3/8 in, all within 5/8 in.
        ModeratelyFlat = "moderately flat",
        /// Nine in ten within 1/4 in, all within 3/8 in.
        Flat = "flat",
    }
}

impl EdgeClass {
    /// What nine in ten gaps, and what all gaps are within.
    #[must_use]
    pub fn gaps(self) -> [Length; 2] {
        let [most, all] = match self {
            Self::Conventional => [0.5, 0.75],
            Self::ModeratelyFlat => [0.375, 0.625],
            Self::Flat => [0.25, 0.375],
        };
        [most, all].map(|inches| Length::from_base(inches * 0.0254))
    }
}

/// The straightedge laid down with its end at one reading.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Placement {
    /// Where its end is, along the line.
    pub start: Length,
    /// The greatest gap under it.
    pub gap: Length,
    /// Where that is; its own start where there is none.
    pub at: Length,
    /// The two readings it rests on there.
    pub rests: [Length; 2],
}

/// A straightedge laid along a whole profile.
#[derive(Clone, Debug, PartialEq)]
pub struct Straightedge {
    /// Its length.
    pub length: Length,
    /// Once from each reading on and once up to the last, as far as the profile spans it; once over all of a shorter profile.
    pub placements: Vec<Placement>,
    /// Whether the profile is shorter than it.
    pub longer_than_profile: bool,
}

impl Straightedge {
    /// Lays a straightedge of that length along readings: places along the line, rising, and elevations, both in metres.
    ///
    /// The work grows with the readings times those under one straightedge.
    ///
    /// # Errors
    /// `OUT_OF_RANGE`, `NOT_FINITE`; `LENGTH_MISMATCH`; `PROFILE_SHORT`: fewer than three readings; `PROFILE_ORDER`: places that do
    /// not rise.
    pub fn along(places: &[f64], heights: &[f64], length: Length) -> Result<Self> {
        let length = check("length", length, EDGE_LENGTH)?;
        refuse_readings(places, heights)?;
        let [first, last] = [places.first(), places.last()].map(|end| end.copied().unwrap_or(0.0));
        let longer_than_profile = last - first < length.base() - HAIR;
        // From each reading on, and with its other end at the last: so every two readings it may rest on come under it.
        let farthest = (last - length.base()).max(first);
        let starts = places.iter().copied().take_while(|&start| start < farthest - HAIR).chain([farthest]);
        let mut hull = Vec::new();
        let placements = starts
            .map(|start| {
                let from = places.partition_point(|&place| place < start - HAIR);
                let to = places.partition_point(|&place| place <= start + length.base() + HAIR);
                laid(start, &places[from..to], &heights[from..to], &mut hull)
            })
            .collect();
        Ok(Self { length, placements, longer_than_profile })
    }

    /// The placement with the greatest gap, the first of several.
    #[must_use]
    pub fn worst(&self) -> Option<&Placement> {
        self.placements.iter().reduce(|worst, next| if next.gap > worst.gap { next } else { worst })
    }

    /// The share of placements whose gap is within a limit.
    #[must_use]
    pub fn within(&self, limit: Length) -> Share {
        let within =
            self.placements.iter().filter(|placement| placement.gap.base() <= limit.base() + HAIR * 1e-3);
        Share::from_base(within.count() as f64 / self.placements.len().max(1) as f64)
    }

    /// Whether it keeps a class, whose limits are remembered: it never falls short of one for certain.
    #[must_use]
    pub fn verdict(&self, class: EdgeClass) -> Verdict {
        let [most, all] = class.gaps();
        let kept = self.within(most).base() >= 0.9 && self.within(all).base() >= 1.0;
        match kept {
            _ if self.longer_than_profile => Verdict::TooFew,
            true => Verdict::Meets,
            false => Verdict::Confirm,
        }
    }
}

/// The flatness number that goes roughly with a gap under a 10 ft straightedge: that of the next wider gap in the remembered table;
/// none for a gap wider than all.
#[must_use]
pub fn about_ff(gap: Length) -> Option<Ratio> {
    const SIXTEENTHS_AND_NUMBERS: [(f64, f64); 5] =
        [(2.0, 50.0), (3.0, 32.0), (4.0, 25.0), (5.0, 20.0), (8.0, 12.0)];
    let sixteenths = gap.base() / (0.0254 / 16.0);
    SIXTEENTHS_AND_NUMBERS
        .iter()
        .find(|(wide, _)| sixteenths <= wide + HAIR)
        .map(|(_, number)| Ratio::from_base(*number))
}

fn refuse_readings(places: &[f64], heights: &[f64]) -> Result<()> {
    if places.len() != heights.len() {
        return Err(Failure::new(Code::LengthMismatch, "profile")
            .written(format!("{} places, {} elevations", places.len(), heights.len()))
            .allowed("one elevation for each place")
            .remedy("give as many of one as of the other"));
    }
    if places.len() < 3 {
        return Err(Failure::new(Code::ProfileShort, "profile")
            .written(format!("{} readings", places.len()))
            .allowed("at least 3 readings")
            .remedy("read between the ends of the straightedge"));
    }
    for (index, (&place, &height)) in places.iter().zip(heights).enumerate() {
        let at = |failure: Box<Failure>| failure.at(Place::Index(index));
        check("profile.distance", Length::from_base(place), ALONG).map_err(at)?;
        check("profile.elevation", Elevation::from_base(height), READING).map_err(at)?;
    }
    match places.windows(2).position(|pair| pair[1] <= pair[0]) {
        None => Ok(()),
        Some(index) => Err(Failure::new(Code::ProfileOrder, "profile.distance")
            .written(crate::quantity::si_text(Length::from_base(places[index + 1])))
            .allowed("distances that rise from one reading to the next")
            .remedy("give the readings in order along the line")
            .at(Place::Index(index + 1))),
    }
}

/// The greatest gap under a straightedge over these readings, by their upper hull.
fn laid(start: f64, places: &[f64], heights: &[f64], hull: &mut Vec<usize>) -> Placement {
    hull.clear();
    for next in 0..places.len() {
        while let [.., before, last] = hull[..]
            && turns_up(places, heights, [before, last, next])
        {
            hull.pop();
        }
        hull.push(next);
    }
    let mut worst = (0.0, start, [start, start]);
    for edge in hull.windows(2) {
        let (from, to) = (edge[0], edge[1]);
        let slope = (heights[to] - heights[from]) / (places[to] - places[from]);
        for under in from + 1..to {
            let gap = (heights[from] - heights[under]) + slope * (places[under] - places[from]);
            if gap > worst.0 {
                worst = (gap, places[under], [places[from], places[to]]);
            }
        }
    }
    let (gap, at, rests) = worst;
    Placement {
        start: Length::from_base(start),
        gap: Length::from_base(gap),
        at: Length::from_base(at),
        rests: rests.map(Length::from_base),
    }
}

/// Whether the middle one of three readings lies on or under the line between the others.
fn turns_up(places: &[f64], heights: &[f64], [a, b, c]: [usize; 3]) -> bool {
    let (run, rise) = (places[b] - places[a], heights[b] - heights[a]);
    let (whole, whole_rise) = (places[c] - places[a], heights[c] - heights[a]);
    rise * whole <= whole_rise * run
}
