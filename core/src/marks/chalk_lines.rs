//! Lines along which planes of the floor meet: snapped or strung straight from end to end.

use super::SAME;
use super::breaks::{Segment, at_distance, crossings, edges, facet_edges, off_line};
use super::ground::Floor;
use crate::failure::Result;
use crate::geometry::{Point, Region};
use crate::grade::finish::Finish;
use crate::quantity::{Elevation, Length, Typed};

/// A line along which two planes meet. Between its ends the floor is straight.
#[derive(Clone, Debug, PartialEq)]
pub struct ChalkLine {
    /// Both ends, from the left.
    pub x: [Length; 2],
    /// Both ends, from the front.
    pub y: [Length; 2],
    /// The height of the floor at both ends.
    pub height: [Elevation; 2],
    /// How long it is.
    pub length: Length,
    /// The numbers of the marks at its ends, where there are marks.
    pub marks: [Option<usize>; 2],
}

/// The lines of a finish inside a region, each once.
pub(super) fn segments(finish: &Finish, region: &Region) -> Vec<Segment> {
    let runs: Vec<Segment> = edges(region).collect();
    let mut inside: Vec<Segment> =
        facet_edges(finish).into_iter().flat_map(|edge| clipped(edge, region, &runs)).collect();
    inside.sort_by(|a, b| b[0].distance(b[1]).total_cmp(&a[0].distance(a[1])));
    let mut kept: Vec<Segment> = Vec::new();
    for segment in inside {
        // Shared edges come twice; a facet may share only a part of a neighbour's edge.
        let known = kept.iter().any(|line| segment.iter().all(|&end| off_line(end, *line) <= SAME));
        if !known {
            kept.push(segment);
        }
    }
    kept.sort_by(|a, b| {
        (a[0].y, a[0].x, a[1].y, a[1].x)
            .partial_cmp(&(b[0].y, b[0].x, b[1].y, b[1].x))
            .unwrap_or(std::cmp::Ordering::Equal)
    });
    kept
}

/// What of an edge lies inside a region, its runs left out; from front to back.
fn clipped(edge: Segment, region: &Region, runs: &[Segment]) -> Vec<Segment> {
    let length = edge[0].distance(edge[1]);
    let mut stops = vec![0.0];
    stops.extend(crossings(runs, edge));
    stops.push(length);
    let inside = |pair: &&[f64]| {
        let middle = at_distance(edge, 0.5 * (pair[0] + pair[1]));
        pair[1] - pair[0] > SAME && region.contains(middle) && region.nearest_run(middle).distance > SAME
    };
    let pieces = stops.windows(2).filter(inside);
    pieces.map(|pair| upward([at_distance(edge, pair[0]), at_distance(edge, pair[1])])).collect()
}

fn upward([a, b]: Segment) -> Segment {
    if (b.y, b.x) < (a.y, a.x) { [b, a] } else { [a, b] }
}

/// The lines with their heights.
pub(super) fn lines(
    segments: &[Segment],
    floor: &Floor<'_>,
    number: impl Fn(Point) -> Option<usize>,
) -> Result<Vec<ChalkLine>> {
    let line = |&[from, to]: &Segment| {
        Ok(ChalkLine {
            x: [from, to].map(|end| Length::from_base(end.x)),
            y: [from, to].map(|end| Length::from_base(end.y)),
            height: [floor.finish_at(from)?, floor.finish_at(to)?],
            length: Length::from_base(from.distance(to)),
            marks: [number(from), number(to)],
        })
    };
    segments.iter().map(line).collect()
}
