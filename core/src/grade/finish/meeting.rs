//! Whether facets have one height along the edges they share.

use super::facet::Facet;
use super::facets::called;
use super::say;
use crate::failure::{Code, Failure, Result};
use crate::geometry::{Point, Run};
use crate::quantity::{Length, Typed};
use crate::survey::words::both_fine;

/// Two edges so near to one another, in metres, are one: corners on a long edge are rounded.
const ONE_EDGE: f64 = 1e-6;

/// Heights along a shared edge may differ by so much, in metres: what two facets leave that are each in one plane
/// within 1e-6 ft.
const ONE_HEIGHT: f64 = 2e-6 * 0.3048;

/// A stretch that two facets share, with their heights at its ends.
#[derive(Clone, Copy, Debug)]
pub(in crate::grade) struct Shared {
    /// Where it starts and ends.
    pub(in crate::grade) ends: [Point; 2],
}

/// Refuses facets that stand apart along a shared edge, telling the greatest gap.
pub(super) fn refuse_gaps(facets: &[Facet]) -> Result<()> {
    let mut worst: Option<(f64, Point, [usize; 2])> = None;
    for (second, facet) in facets.iter().enumerate() {
        for (first, other) in facets.iter().enumerate().take(second) {
            for at in shared_edges(facet, other).flat_map(|shared| shared.ends) {
                // Both are plane, so the gap is greatest at an end.
                let gap = (facet.plane().height_at(at) - other.plane().height_at(at)).abs();
                if gap > ONE_HEIGHT && worst.is_none_or(|(most, ..)| gap > most) {
                    worst = Some((gap, at, [first, second]));
                }
            }
        }
    }
    let Some((gap, at, [first, second])) = worst else { return Ok(()) };
    let (one, other) = (called(facets, first), called(facets, second));
    let (gap, place) = (both_fine(Length::from_base(gap)), say::place(at));
    Err(Failure::new(Code::FacetsApart, format!("facets[{second}]"))
        .written(format!("{one} and {other} stand {gap} apart at {place}"))
        .allowed("one height along the edge they share")
        .remedy("give shared corners their heights once, or change one of the planes"))
}

/// The stretches of edge that two facets share, each from one side: a long edge may meet several short ones.
pub(in crate::grade) fn shared_edges<'a>(
    facet: &'a Facet,
    other: &'a Facet,
) -> impl Iterator<Item = Shared> + 'a {
    let near = {
        let ((low, high), (other_low, other_high)) = (facet.region().bounds(), other.region().bounds());
        low.x <= other_high.x + ONE_EDGE
            && other_low.x <= high.x + ONE_EDGE
            && low.y <= other_high.y + ONE_EDGE
            && other_low.y <= high.y + ONE_EDGE
    };
    let runs = facet.region().runs().filter(move |_| near);
    runs.flat_map(move |run| other.region().runs().filter_map(move |of_other| along(&run, &of_other)))
}

/// The stretch of a run along which another runs the other way.
pub(super) fn along(run: &Run, other: &Run) -> Option<Shared> {
    let length = run.length();
    let (ux, uy) = ((run.to.x - run.from.x) / length, (run.to.y - run.from.y) / length);
    let on = |place: Point| {
        let (dx, dy) = (place.x - run.from.x, place.y - run.from.y);
        (dx * ux + dy * uy, dy * ux - dx * uy)
    };
    // The region is on the left of each run: facets side by side have them opposite.
    let ((end, end_off), (start, start_off)) = (on(other.from), on(other.to));
    let (from, to) = (start.max(0.0), end.min(length));
    if to - from <= ONE_EDGE {
        return None;
    }
    let off = |at: f64| start_off + (end_off - start_off) * (at - start) / (end - start);
    if off(from).abs() > ONE_EDGE || off(to).abs() > ONE_EDGE {
        return None;
    }
    let place = |at: f64| Point::new(run.from.x + at * ux, run.from.y + at * uy);
    Some(Shared { ends: [place(from), place(to)] })
}
