//! Where lines cross: the edges of facets over a leg.

use super::SAME;
use crate::geometry::{Point, Region};
use crate::grade::finish::Finish;

/// A straight line in plan.
pub(super) type Segment = [Point; 2];

/// Every edge of every facet; shared edges come once for each facet. A finish of one plane has none.
pub(super) fn facet_edges(finish: &Finish) -> Vec<Segment> {
    finish.facets().iter().flat_map(|facet| edges(facet.region())).collect()
}

/// The runs of a region.
pub(super) fn edges(region: &Region) -> impl Iterator<Item = Segment> + '_ {
    region.runs().map(|run| [run.from, run.to])
}

/// The distances along a leg, its ends left out, at which any of the lines crosses or touches it, in order and each once.
pub(super) fn crossings(lines: &[Segment], [from, to]: Segment) -> Vec<f64> {
    let length = from.distance(to);
    let mut found = Vec::new();
    if length <= SAME {
        return found;
    }
    let [ux, uy] = [(to.x - from.x) / length, (to.y - from.y) / length];
    let along = |p: Point| (p.x - from.x) * ux + (p.y - from.y) * uy;
    let off = |p: Point| ux * (p.y - from.y) - uy * (p.x - from.x);
    for &[p, q] in lines {
        let (off_p, off_q) = (off(p), off(q));
        if off_p.abs() <= SAME {
            found.push(along(p));
        }
        if off_q.abs() <= SAME {
            found.push(along(q));
        }
        if off_p.abs().min(off_q.abs()) > SAME && (off_p > 0.0) != (off_q > 0.0) {
            found.push(along(p) + off_p / (off_p - off_q) * (along(q) - along(p)));
        }
    }
    found.retain(|distance| *distance > SAME && *distance < length - SAME);
    found.sort_by(f64::total_cmp);
    found.dedup_by(|a, b| *a - *b <= SAME);
    found
}

/// The place so far along a leg.
pub(super) fn at_distance([from, to]: Segment, distance: f64) -> Point {
    let share = distance / from.distance(to);
    Point::new(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y))
}

/// How far a place is from a line.
pub(super) fn off_line(place: Point, [from, to]: Segment) -> f64 {
    let (dx, dy) = (to.x - from.x, to.y - from.y);
    let share = ((place.x - from.x) * dx + (place.y - from.y) * dy) / (dx * dx + dy * dy);
    let share = share.clamp(0.0, 1.0);
    place.distance(Point::new(from.x + share * dx, from.y + share * dy))
}
