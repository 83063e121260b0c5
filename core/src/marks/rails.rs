//! Screed rails: lines of straight legs, their tops so far above the floor.

use super::asked::RailAsked;
use super::breaks::{Segment, at_distance, crossings};
use super::ground::Floor;
use super::mark::{Mark, MarkKind};
use super::stations::{mark, wholes};
use super::{SAME, place_words};
use crate::failure::{Code, Failure, Result};
use crate::quantity::{Length, Typed, feet_and_inches};

/// The marks of a rail.
pub(super) fn along_rail(
    rail: &RailAsked,
    spacing: Length,
    offset: Length,
    lines: &[Segment],
    floor: &Floor<'_>,
) -> Result<Vec<Mark>> {
    let legs: Vec<Segment> = legs(rail)?;
    let (mut marks, mut start) = (Vec::new(), 0.0);
    for &leg in &legs {
        let long = leg[0].distance(leg[1]);
        // Nowhere over the work there is no old slab to follow.
        let profile = floor.along(leg[0], leg[1]).map_err(|_| leaves(rail, long))?;
        let outside = profile.outside();
        if outside > SAME {
            return Err(leaves(rail, outside));
        }
        let mut stops = vec![(0.0, MarkKind::Corner)];
        stops.extend(crossings(lines, leg).into_iter().map(|distance| (distance, MarkKind::Break)));
        stops.extend(wholes(profile.length, spacing.base())?.map(|distance| (distance, MarkKind::Station)));
        stops.sort_by(|a, b| a.0.total_cmp(&b.0).then((a.1 as usize).cmp(&(b.1 as usize))));
        stops.dedup_by(|later, first| later.0 - first.0 <= SAME);
        if start + profile.length >= length(&legs) - SAME {
            stops.push((profile.length, MarkKind::Corner));
        }
        for (distance, kind) in stops {
            let at = at_distance(leg, distance);
            let top = floor.finish_at(at)? + offset;
            marks.push(mark(kind, None, start + distance, at, top, profile.at(distance)));
        }
        start += profile.length;
    }
    Ok(marks)
}

/// The length of all legs.
fn length(legs: &[Segment]) -> f64 {
    legs.iter().map(|leg| leg[0].distance(leg[1])).sum()
}

fn legs(rail: &RailAsked) -> Result<Vec<Segment>> {
    let pairs = rail.places.windows(2).map(|pair| [pair[0], pair[1]]);
    let legs: Vec<Segment> = pairs.filter(|leg| leg[0].distance(leg[1]) > SAME).collect();
    if legs.is_empty() {
        return Err(Failure::new(Code::LineTooShort, "rails")
            .written(format!("{}: {} place apart from the others", rail.name, rail.places.len().min(1)))
            .allowed("two places or more for each rail")
            .remedy("give where the rail starts and where it ends"));
    }
    Ok(legs)
}

fn leaves(rail: &RailAsked, outside: f64) -> Box<Failure> {
    let first = rail.places.first().copied().unwrap_or_default();
    Failure::new(Code::RailOutside, "rails")
        .written(format!(
            "{}, from {}: {} of it lie outside the work",
            rail.name,
            place_words(first),
            feet_and_inches(Length::from_base(outside), 8)
        ))
        .allowed("a rail inside the outline and clear of holes")
        .remedy("move its ends onto the work, or give it as two rails")
}
