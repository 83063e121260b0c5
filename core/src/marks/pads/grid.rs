//! The grid that pads stand on.

use crate::failure::Result;
use crate::geometry::Point;
use crate::marks::asked::PadsAsked;
use crate::marks::{MOST_MARKS, SAME, too_many};
use crate::quantity::Typed;

/// Rows across and columns up, no farther apart than pads may be.
pub(super) struct Grid {
    pub(super) columns: Vec<f64>,
    pub(super) rows: Vec<f64>,
    pub(super) apart: f64,
}

impl Grid {
    /// Over the bounds of a work, the outer rows and columns as far from its edges as pads stay.
    pub(super) fn over((low, high): (Point, Point), asked: &PadsAsked, taping: f64) -> Result<Self> {
        let (apart, inset) = (asked.apart().base(), asked.inset.base());
        let count = ((high.x - low.x) / apart + 2.0) * ((high.y - low.y) / apart + 2.0);
        if count > MOST_MARKS as f64 {
            return Err(too_many(
                if asked.spacing.is_some() { "pad_spacing" } else { "screed_length" },
                count,
            ));
        }
        let lines = |low: f64, high: f64| positions(low + inset, high - inset, apart, taping);
        Ok(Self { columns: lines(low.x, high.x), rows: lines(low.y, high.y), apart })
    }
}

/// Places from one end to the other, evenly apart but for the last, by whole taping steps where these fit.
fn positions(start: f64, end: f64, apart: f64, taping: f64) -> Vec<f64> {
    let span = end - start;
    if span <= SAME {
        return vec![0.5 * (start + end)];
    }
    let gaps = (span / apart - SAME).ceil().max(1.0);
    let gap = ((span / gaps / taping - SAME).ceil() * taping).min(apart);
    let whole = (0..gaps as usize).map(|number| start + number as f64 * gap);
    let mut places: Vec<f64> = whole.filter(|place| *place < end - SAME).collect();
    places.push(end);
    places
}

/// The pads of one row: columns of the grid where they are free, and more where the next support, a pad or the edge, would be too
/// far. `free` are the stretches of the row, each with the edges of the work around it.
pub(super) fn in_row(free: &[Free], columns: &[f64], apart: f64) -> Vec<f64> {
    let mut pads: Vec<f64> = Vec::new();
    let too_far = |from: f64, to: f64| to - from > apart + SAME;
    // The edge before, the last pad behind it, and the end of the stretch that one stands on.
    let mut last: Option<(f64, f64, f64)> = None;
    for stretch in free {
        let own = columns.iter().copied().filter(|x| *x >= stretch.from - SAME && *x <= stretch.to + SAME);
        let mut own: Vec<f64> = own.collect();
        // The support before: a pad of an earlier stretch between the same edges, else the edge.
        let before =
            last.filter(|(edge, ..)| *edge == stretch.edges[0]).map_or(stretch.edges[0], |(_, x, _)| x);
        if own.is_empty() && too_far(before, stretch.edges[1]) {
            own.push(0.5 * (stretch.from + stretch.to));
        }
        if own.first().is_some_and(|first| too_far(before, *first)) {
            own.insert(0, stretch.from);
        }
        // Past a corner that juts out: a pad on its near side, too.
        if let (Some((edge, x, end)), Some(first)) = (last, own.first())
            && edge == stretch.edges[0]
            && too_far(x, *first)
            && end - x > SAME
        {
            pads.push(end);
        }
        if own.last().is_some_and(|last| too_far(*last, stretch.edges[1]) && stretch.to - last > SAME) {
            own.push(stretch.to);
        }
        if let Some(x) = own.last() {
            last = Some((stretch.edges[0], *x, stretch.to));
        }
        pads.extend(own);
    }
    pads
}

/// A stretch of a row where pads may stand.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Free {
    pub(super) from: f64,
    pub(super) to: f64,
    /// Where the row enters the work before it and leaves it behind it.
    pub(super) edges: [f64; 2],
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_grid_is_taped_in_whole_steps_and_ends_at_the_end() {
        let inch = 0.0254;
        let feet: Vec<f64> = positions(0.3048, 19.0 * 0.3048, 6.0 * 0.3048, inch);
        assert!(feet.iter().zip([1.0, 7.0, 13.0, 19.0]).all(|(x, foot)| (x / 0.3048 - foot).abs() < 1e-9));
        let odd = positions(0.0, 100.0 * inch, 72.0 * inch, inch);
        assert_eq!(odd.len(), 3);
        assert!((odd[1] - 50.0 * inch).abs() < 1e-12);
        assert_eq!(positions(1.0, 0.5, 2.0, inch), [0.75]);
    }

    #[test]
    fn a_row_has_no_wide_gap_beside_a_hole() {
        let free = [
            Free { from: 1.0, to: 8.0, edges: [0.0, 9.0] },
            Free { from: 13.0, to: 19.0, edges: [12.0, 20.0] },
        ];
        // The grid has 3, 9 (in the hole's shadow) and 15.
        assert_eq!(in_row(&free, &[3.0, 9.0, 15.0], 6.0), [3.0, 15.0]);
        assert_eq!(in_row(&free, &[3.0, 9.0, 15.0], 5.5), [3.0, 8.0, 15.0]);
    }
}
