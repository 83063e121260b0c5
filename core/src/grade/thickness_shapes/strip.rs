//! Triangles cut along two levels of what is linear over them.

use crate::geometry::zero_line;
use crate::grade::thickness_field::settled;

/// What lies at `from` or above it and below `to`; either may be infinite.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Strip {
    /// The lower level, itself in the strip.
    pub(super) from: f64,
    /// The upper level, itself above the strip.
    pub(super) to: f64,
    /// A value this near to a level is at it.
    pub(super) hair: f64,
}

/// A corner of what is left of a triangle. Neighbours give the same place the same name, so that rings close exactly.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub(super) enum Corner {
    /// A corner of the triangle.
    Whole(u32),
    /// Where a level crosses the side between two corners.
    Crossing {
        /// The lower of the two.
        low: u32,
        /// The higher.
        high: u32,
        /// Whether it is the upper level.
        upper: bool,
    },
}

/// A straight edge of what is left of a triangle, the inside on its left.
#[derive(Clone, Copy, Debug)]
pub(super) struct Edge {
    pub(super) from: Corner,
    pub(super) to: Corner,
    /// The side of the triangle it lies on; none where it cuts across.
    pub(super) side: Option<usize>,
}

impl Strip {
    /// Below a level.
    pub(super) const fn below(level: f64, hair: f64) -> Self {
        Self { from: f64::NEG_INFINITY, to: level, hair }
    }

    /// At a level or above it.
    pub(super) const fn from(level: f64, hair: f64) -> Self {
        Self { from: level, to: f64::INFINITY, hair }
    }

    /// A value, at a level where it is next to one.
    pub(super) fn settled(&self, value: f64) -> f64 {
        settled(settled(value, self.from, self.hair), self.to, self.hair)
    }

    /// Whether some area of a triangle with these values is in the strip.
    pub(super) fn reaches(&self, values: [f64; 3]) -> bool {
        let [a, b, c] = values.map(|value| self.settled(value));
        let (least, greatest) = (a.min(b).min(c), a.max(b).max(c));
        if least == greatest {
            return self.from <= least && least < self.to;
        }
        least < self.to && greatest > self.from
    }

    /// The area of the part of a triangle in the strip, and the integral of the values over it.
    pub(super) fn integrals(&self, area: f64, values: [f64; 3]) -> (f64, f64) {
        let (up_to, below) =
            (self.integrals_below(self.to, area, values), self.integrals_below(self.from, area, values));
        (up_to.0 - below.0, up_to.1 - below.1)
    }

    fn integrals_below(&self, level: f64, area: f64, values: [f64; 3]) -> (f64, f64) {
        if level == f64::INFINITY {
            return (area, area / 3.0 * values.iter().sum::<f64>());
        }
        if level == f64::NEG_INFINITY {
            return (0.0, 0.0);
        }
        let over = values.map(|value| settled(value, level, self.hair) - level);
        let below = area - zero_line::area_above(area, over);
        (below, level * below - zero_line::volumes(area, over).1)
    }

    /// Writes the edges of the part of a triangle in the strip, counter-clockwise. The triangle reaches into the strip.
    pub(super) fn edges(&self, corners: [u32; 3], values: [f64; 3], edges: &mut Vec<Edge>) {
        edges.clear();
        let values = values.map(|value| self.settled(value));
        let mut last: Option<(Corner, usize)> = None;
        let mut first: Option<Corner> = None;
        let mut visit = |corner: Corner, side: usize| {
            if let Some((from, of)) = last {
                edges.push(Edge { from, to: corner, side: shared(of, side, corner) });
            }
            first.get_or_insert(corner);
            last = Some((corner, side));
        };
        for side in 0..3 {
            let next = (side + 1) % 3;
            let (a, b) = (corners[side], corners[next]);
            let (at_a, at_b) = (values[side], values[next]);
            if self.from <= at_a && at_a <= self.to {
                visit(Corner::Whole(a), side);
            }
            let rising = at_a < at_b;
            let (low, high) = if rising { (a, b) } else { (b, a) };
            for upper in [!rising, rising] {
                let level = if upper { self.to } else { self.from };
                if level > at_a.min(at_b) && level < at_a.max(at_b) {
                    visit(Corner::Crossing { low, high, upper }, side);
                }
            }
        }
        if let (Some((from, of)), Some(to)) = (last, first) {
            // The first corner belongs to the first side that has one, unless it is the end of this one.
            let side = match to {
                Corner::Whole(corner) if corner == corners[(of + 1) % 3] => Some(of),
                _ => None,
            };
            edges.push(Edge { from, to, side });
        }
    }
}

/// The side on which lie a corner met on one side and the next, met on the same or a later one.
fn shared(of: usize, side: usize, corner: Corner) -> Option<usize> {
    let at_its_end = side == of + 1 && matches!(corner, Corner::Whole(_));
    (side == of || at_its_end).then_some(of)
}
