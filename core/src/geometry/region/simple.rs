//! No two runs may meet except neighbours at their common corner.

use super::{RegionError, Ring, RingId, RunId};
use crate::geometry::Point;
use crate::geometry::predicates::turn;

/// A run as the caller numbered it, with its extent in x.
struct Span {
    id: RunId,
    /// How many runs its ring has.
    runs: usize,
    from: Point,
    to: Point,
    left: f64,
    right: f64,
}

/// Checks all pairs of runs that overlap in x and y.
pub(super) fn check(outer: &Ring, holes: &[Ring]) -> Result<(), RegionError> {
    let mut spans: Vec<Span> =
        std::iter::once(outer).chain(holes).flat_map(|ring| spans_of(ring.id(), ring.corners())).collect();
    spans.sort_by(|a, b| a.left.total_cmp(&b.left));
    let mut active: Vec<usize> = Vec::new();
    // Of all meetings the first in the caller's numbering is told, whatever order the sweep finds them in.
    let mut worst: Option<RegionError> = None;
    for (index, span) in spans.iter().enumerate() {
        active.retain(|&other| spans[other].right >= span.left);
        for &other in &active {
            if let Some(at) = meeting(&spans[other], span) {
                keep_first(&mut worst, spans[other].id, span.id, at);
            }
        }
        active.push(index);
    }
    worst.map_or(Ok(()), Err)
}

fn spans_of(ring: RingId, corners: &[Point]) -> impl Iterator<Item = Span> + '_ {
    corners.iter().enumerate().map(move |(index, &from)| {
        let to = corners[(index + 1) % corners.len()];
        let (left, right) = (from.x.min(to.x), from.x.max(to.x));
        Span { id: RunId { ring, index }, runs: corners.len(), from, to, left, right }
    })
}

fn keep_first(worst: &mut Option<RegionError>, a: RunId, b: RunId, at: Point) {
    let (first, second) = (a.min(b), a.max(b));
    if let Some(RegionError::Crossing { first: kept, second: beside, .. }) = worst
        && (*kept, *beside) <= (first, second)
    {
        return;
    }
    *worst = Some(RegionError::Crossing { first, second, at });
}

/// Where two runs meet that should not, if they do.
fn meeting(a: &Span, b: &Span) -> Option<Point> {
    let (low_a, high_a) = (a.from.y.min(a.to.y), a.from.y.max(a.to.y));
    let (low_b, high_b) = (b.from.y.min(b.to.y), b.from.y.max(b.to.y));
    if low_a > high_b || low_b > high_a {
        return None;
    }
    if a.id.ring == b.id.ring {
        if (a.id.index + 1) % a.runs == b.id.index {
            return folded(a.from, a.to, b.to, a, b);
        }
        if (b.id.index + 1) % b.runs == a.id.index {
            return folded(b.from, b.to, a.to, a, b);
        }
    }
    crossing(a, b)
}

/// Neighbours `before`-`corner`-`after` that fold back, or that also meet at their other ends (in a triangle they
/// are neighbours at both).
fn folded(before: Point, corner: Point, after: Point, a: &Span, b: &Span) -> Option<Point> {
    let ahead = (before.x - corner.x) * (after.x - corner.x) + (before.y - corner.y) * (after.y - corner.y);
    if turn(before, corner, after) == 0.0 && ahead > 0.0 {
        return Some(corner);
    }
    (a.runs > 3 && before == after).then_some(b.from)
}

fn crossing(a: &Span, b: &Span) -> Option<Point> {
    let (from, to) = (turn(b.from, b.to, a.from), turn(b.from, b.to, a.to));
    if (from > 0.0 && to > 0.0) || (from < 0.0 && to < 0.0) {
        return None;
    }
    let (start, end) = (turn(a.from, a.to, b.from), turn(a.from, a.to, b.to));
    if (start > 0.0 && end > 0.0) || (start < 0.0 && end < 0.0) {
        return None;
    }
    if from == 0.0 && to == 0.0 {
        return overlap(a, b);
    }
    let share = from / (from - to);
    Some(Point::new(a.from.x + share * (a.to.x - a.from.x), a.from.y + share * (a.to.y - a.from.y)))
}

/// One end of the common piece of two runs on one line.
fn overlap(a: &Span, b: &Span) -> Option<Point> {
    let on = |p: Point, s: &Span| {
        (s.left..=s.right).contains(&p.x) && (s.from.y.min(s.to.y)..=s.from.y.max(s.to.y)).contains(&p.y)
    };
    [(b.from, a), (b.to, a), (a.from, b), (a.to, b)].into_iter().find(|(p, s)| on(*p, s)).map(|(p, _)| p)
}
