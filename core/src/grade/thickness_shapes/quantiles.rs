//! The depth below which a share of the area lies.
//!
//! Between two successive values at corners of triangles the area below a depth is a parabola of the depth, for every
//! triangle cuts a similar figure. Three areas fix it, and its root is the answer.

use super::field::Field;
use super::sheet::Sheet;
use crate::failure::{Code, Failure, Place, Result, check};
use crate::geometry::Sum;
use crate::geometry::zero_line;
use crate::quantity::{Length, Range, Share, Typed};

/// A share of the area: from none to all of it.
pub const SHARE: Range = Range::closed(0.0, 1.0);

/// A depth and the share of the area that is thinner.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Quantile {
    /// The share.
    pub share: Share,
    /// The depth.
    pub thickness: Length,
}

impl Field<Length> {
    /// The depths below which shares of the area lie: of none the least thickness, of all of it the greatest. Where an area
    /// of one thickness holds a share, that thickness.
    ///
    /// # Errors
    /// `EMPTY_LIST`, `NOT_FINITE`, `NEGATIVE`, `OUT_OF_RANGE`: no shares, or one that is none. Path: `shares`.
    pub fn quantiles(&self, shares: &[Share]) -> Result<Vec<Quantile>> {
        if shares.is_empty() {
            return Err(Failure::new(Code::EmptyList, "shares")
                .written("no shares")
                .allowed("at least one share of the area")
                .remedy("give the shares, such as 50 %"));
        }
        let below = Below::of(&self.sheet);
        let mut found = Vec::with_capacity(shares.len());
        for (index, &share) in shares.iter().enumerate() {
            check("shares", share, SHARE).map_err(|failure| failure.at(Place::Index(index)))?;
            let thickness = Length::from_base(below.depth_of(share.base()));
            found.push(Quantile { share, thickness });
        }
        Ok(found)
    }
}

/// The area below a depth.
struct Below<'a> {
    sheet: &'a Sheet,
    /// The values at corners, rising, each once.
    values: Vec<f64>,
    whole: f64,
}

impl<'a> Below<'a> {
    fn of(sheet: &'a Sheet) -> Self {
        let mut values: Vec<f64> = sheet.pieces().flat_map(|(_, values)| values).collect();
        values.sort_unstable_by(f64::total_cmp);
        values.dedup();
        Self { sheet, values, whole: sheet.whole() }
    }

    /// The area strictly below a depth, without what is level at it.
    fn under(&self, depth: f64) -> f64 {
        let area = |(area, values): (f64, [f64; 3])| {
            area - zero_line::area_above(area, values.map(|value| value - depth))
        };
        self.sheet.pieces().map(area).collect::<Sum>().value()
    }

    /// The area below a depth or at it.
    fn up_to(&self, depth: f64) -> f64 {
        let area =
            |(area, values): (f64, [f64; 3])| zero_line::area_above(area, values.map(|value| depth - value));
        self.sheet.pieces().map(area).collect::<Sum>().value()
    }

    fn depth_of(&self, share: f64) -> f64 {
        let wanted = share * self.whole;
        let value = |at: usize| self.values.get(at).copied().unwrap_or(0.0);
        let last = self.values.len().saturating_sub(1);
        // At the very ends the parabola is flat, and its root no better than half the digits of the area.
        if share <= 0.0 || share >= 1.0 {
            return value(if share > 0.0 { last } else { 0 });
        }
        // The first value up to which the area is all that is wanted.
        let (mut low, mut high) = (0, last);
        while low < high {
            let middle = low + (high - low) / 2;
            if self.up_to(value(middle)) >= wanted { high = middle } else { low = middle + 1 }
        }
        if low == 0 || self.under(value(low)) < wanted {
            return value(low);
        }
        let (from, to) = (value(low - 1), value(low));
        let areas = [self.up_to(from), self.under(0.5 * (from + to)), self.under(to)];
        from + root(areas, wanted) * (to - from)
    }
}

/// Where between 0 and 1 a rising parabola with these values at 0, 1/2 and 1 reaches a value.
fn root([start, middle, end]: [f64; 3], wanted: f64) -> f64 {
    let square = 2.0 * (start + end - 2.0 * middle);
    let linear = 4.0 * middle - 3.0 * start - end;
    let lacking = wanted - start;
    let under = (linear * linear + 4.0 * square * lacking).max(0.0);
    let divisor = linear + under.sqrt();
    if divisor > 0.0 { (2.0 * lacking / divisor).clamp(0.0, 1.0) } else { 1.0 }
}
