//! Stations along the edges: corners, named places, breaks, and whole spacings between.

use super::asked::{PointAsked, SNAP};
use super::breaks::{Segment, at_distance, crossings};
use super::ground::{Floor, Profile};
use super::mark::{Mark, MarkKind};
use super::walk::Edge;
use super::{MOST_MARKS, SAME, place_words, too_many};
use crate::failure::{Code, Failure, Place, Result};
use crate::geometry::{Point, Region};
use crate::quantity::{Elevation, Length, Typed, feet_and_inches};

/// A named place, taken to the edge.
pub(super) struct Snapped<'a> {
    name: &'a str,
    at: Point,
}

/// Takes the named places to the edges.
pub(super) fn snapped<'a>(points: &'a [PointAsked], region: &Region) -> Result<Vec<Snapped<'a>>> {
    let snap = |(index, point): (usize, &'a PointAsked)| {
        let nearest = region.nearest_run(point.at);
        if nearest.distance <= SNAP + SAME {
            return Ok(Snapped { name: point.name.trim(), at: nearest.at });
        }
        let off = feet_and_inches(Length::from_base(nearest.distance), 8);
        Err(Failure::new(Code::PointOffWall, format!("points[{index}]"))
            .at(Place::Index(index))
            .written(format!("{}: {}, {off} off the nearest edge", point.name.trim(), place_words(point.at)))
            .allowed("a place on an edge, or up to 6\" off it (common practice, no source)")
            .remedy("check its x and y"))
    };
    points.iter().enumerate().map(snap).collect()
}

/// A place along a leg that gets a mark.
struct Stop {
    distance: f64,
    kind: MarkKind,
    name: Option<String>,
}

/// The stops of a leg in order, its start with them and its end left out: the next leg starts there. Where several fall together
/// the weightiest kind tells.
fn stops(leg: Segment, spacing: f64, points: &[Snapped<'_>], lines: &[Segment]) -> Result<Vec<Stop>> {
    let length = leg[0].distance(leg[1]);
    let stop = |distance, kind| Stop { distance, kind, name: None };
    let mut found = vec![stop(0.0, MarkKind::Corner)];
    for point in points {
        let distance = leg[0].distance(point.at);
        // The end of the leg belongs to the next one.
        if super::breaks::off_line(point.at, leg) <= SAME && distance < length - SAME {
            found.push(Stop { distance, kind: MarkKind::Point, name: Some(point.name.to_owned()) });
        }
    }
    found.extend(crossings(lines, leg).into_iter().map(|distance| stop(distance, MarkKind::Break)));
    found.extend(wholes(length, spacing)?.map(|distance| stop(distance, MarkKind::Station)));
    found.sort_by(|a, b| a.distance.total_cmp(&b.distance));
    Ok(joined(found))
}

/// Whole spacings along a length, both ends left out.
pub(super) fn wholes(length: f64, spacing: f64) -> Result<impl Iterator<Item = f64>> {
    let count = ((length - SAME) / spacing).floor().max(0.0);
    if count > MOST_MARKS as f64 {
        return Err(too_many("spacing", count));
    }
    Ok((1..=count as usize).map(move |number| number as f64 * spacing))
}

/// Stops at one place become one.
fn joined(stops: Vec<Stop>) -> Vec<Stop> {
    let mut kept: Vec<Stop> = Vec::with_capacity(stops.len());
    for stop in stops {
        match kept.last_mut() {
            Some(last) if stop.distance - last.distance <= SAME => {
                let weightier = (stop.kind as usize) < (last.kind as usize);
                // The place of the weightier one counts: a corner stays in its corner.
                (last.kind, last.distance) =
                    if weightier { (stop.kind, stop.distance) } else { (last.kind, last.distance) };
                last.name = match (last.name.take(), stop.name) {
                    (Some(first), Some(second)) => Some(format!("{first}, {second}")),
                    (first, second) => first.or(second),
                };
            }
            _ => kept.push(stop),
        }
    }
    kept
}

/// The marks of an edge and the old slab along its legs. Numbers are given later.
pub(super) fn along_edge(
    edge: &Edge,
    spacing: Length,
    points: &[Snapped<'_>],
    lines: &[Segment],
    floor: &Floor<'_>,
) -> Result<(Vec<Mark>, Vec<Profile>)> {
    let (mut marks, mut profiles, mut start) = (Vec::new(), Vec::new(), 0.0);
    for &leg in &edge.legs {
        let profile = floor.along(leg[0], leg[1])?;
        for stop in stops(leg, spacing.base(), points, lines)? {
            let at = if stop.distance == 0.0 { leg[0] } else { at_distance(leg, stop.distance) };
            let height = floor.finish_at(at)?;
            marks.push(mark(
                stop.kind,
                stop.name,
                start + stop.distance,
                at,
                height,
                profile.at(stop.distance),
            ));
        }
        start += profile.length;
        profiles.push(profile);
    }
    Ok((marks, profiles))
}

/// A mark without its number yet.
pub(super) fn mark(
    kind: MarkKind,
    name: Option<String>,
    along: f64,
    at: Point,
    height: Elevation,
    (old, ground): (f64, crate::survey::surface::Ground),
) -> Mark {
    Mark {
        number: 0,
        kind,
        name,
        along: Some(Length::from_base(along)),
        x: Length::from_base(at.x),
        y: Length::from_base(at.y),
        height,
        over_old_slab: Length::from_base(height.base() - old),
        ground,
    }
}
