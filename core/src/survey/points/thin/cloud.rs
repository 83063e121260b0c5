//! Points in an order in which neighbours in plan are near one another, so that each is soon found from the one before.

use super::super::Points;
use super::ONE_PLACE;
use crate::geometry::Point;
use crate::geometry::boxes::{Boxes, Extent};

/// Points along a curve that fills the plan (Morton 1966), in coordinates counted from an origin.
pub(super) struct Cloud {
    pub(super) x: Vec<f64>,
    pub(super) y: Vec<f64>,
    pub(super) z: Vec<f64>,
    /// The number of each in the caller's list.
    pub(super) numbers: Vec<u32>,
    blocks: Boxes,
}

/// So many points along the curve are looked for together.
const BLOCK: usize = 128;

impl Cloud {
    /// Sorts points.
    pub(super) fn of(points: &Points, numbers: Vec<u32>, origin: Point) -> Self {
        let numbers = sorted(points, numbers);
        let local = |values: &[f64], from: f64| {
            numbers.iter().map(|&number| values[number as usize] - from).collect::<Vec<f64>>()
        };
        let (x, y, z) = (local(&points.x, origin.x), local(&points.y, origin.y), local(&points.z, 0.0));
        let extents = x
            .chunks(BLOCK)
            .zip(y.chunks(BLOCK))
            .map(|(x, y)| Extent::around(x.iter().zip(y).map(|(&x, &y)| Point::new(x, y))));
        let blocks = Boxes::new(extents.collect());
        Self { x, y, z, numbers, blocks }
    }

    /// How many there are.
    pub(super) fn len(&self) -> usize {
        self.numbers.len()
    }

    /// Where a point is in plan.
    #[inline]
    pub(super) fn at(&self, index: usize) -> Point {
        Point::new(self.x[index], self.y[index])
    }

    /// Calls `visit` with every point that would be at one place with this one, itself among them.
    pub(super) fn at_place_of(&self, index: usize, mut visit: impl FnMut(usize)) {
        let at = self.at(index);
        self.blocks.overlapping(&Extent::at(at).widened(ONE_PLACE), |block| {
            let end = self.len().min((block + 1) * BLOCK);
            for other in block * BLOCK..end {
                if self.at(other).squared_distance(at) <= ONE_PLACE * ONE_PLACE {
                    visit(other);
                }
            }
        });
    }
}

/// The points along the curve; those in one of its cells by place, height and number.
fn sorted(points: &Points, numbers: Vec<u32>) -> Vec<u32> {
    let x = |number: u32| points.x[number as usize];
    let y = |number: u32| points.y[number as usize];
    let extent = Extent::around(numbers.iter().map(|&n| Point::new(x(n), y(n))));
    let size = (extent.high.x - extent.low.x).max(extent.high.y - extent.low.y);
    let scale = if size > 0.0 { 65_535.0 / size } else { 0.0 };
    let cell = |value: f64, low: f64| spread(((value - low) * scale) as u16);
    let keyed = numbers.iter().map(|&n| {
        let key = cell(x(n), extent.low.x) | (cell(y(n), extent.low.y) << 1);
        (u64::from(key) << 32) | u64::from(n)
    });
    let mut keyed: Vec<u64> = keyed.collect();
    keyed.sort_unstable();
    let number = |key: u64| key as u32;
    for cell in keyed.chunk_by_mut(|a, b| a >> 32 == b >> 32) {
        cell.sort_unstable_by(|&a, &b| {
            let (a, b) = (number(a), number(b));
            let z = |number: u32| points.z[number as usize];
            x(a).total_cmp(&x(b)).then(y(a).total_cmp(&y(b))).then(z(a).total_cmp(&z(b))).then(a.cmp(&b))
        });
    }
    keyed.into_iter().map(number).collect()
}

/// The bits of a number with a gap after each.
fn spread(value: u16) -> u32 {
    let mut bits = u32::from(value);
    for (shift, mask) in [(8, 0x00FF_00FF), (4, 0x0F0F_0F0F), (2, 0x3333_3333), (1, 0x5555_5555)] {
        bits = (bits | (bits << shift)) & mask;
    }
    bits
}
