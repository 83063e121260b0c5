//! The plan in cells, each with the lowest height that its points agree on.

use super::super::Points;
use super::{Kind, Limits};
use crate::failure::{Code, Failure, Result};
use crate::quantity::{Length, Typed};
use crate::survey::words::both;

/// So many cells can be laid out at most.
const MOST: f64 = 16.0e6;

/// So many points in a cell must agree on a height; in a cell of fewer, all of them.
const AGREE: usize = 3;

/// Cells by rows and columns over the points that are not marked yet.
pub(super) struct Cells {
    pub(super) columns: usize,
    pub(super) rows: usize,
    low: [f64; 2],
    side: f64,
    /// The lowest height agreed on in each cell; infinite where there are no points.
    pub(super) lowest: Vec<f64>,
}

impl Cells {
    /// Lays the cells out.
    pub(super) fn of(points: &Points, kinds: &[Option<Kind>], limits: &Limits) -> Result<Self> {
        let side = limits.cell.base();
        let unmarked = || (0..points.len()).filter(|&number| kinds[number].is_none());
        let (mut low, mut high) = ([f64::INFINITY; 2], [f64::NEG_INFINITY; 2]);
        for number in unmarked() {
            for (axis, value) in [points.x[number], points.y[number]].into_iter().enumerate() {
                low[axis] = low[axis].min(value);
                high[axis] = high[axis].max(value);
            }
        }
        if unmarked().next().is_none() {
            return Ok(Self { columns: 0, rows: 0, low: [0.0; 2], side, lowest: Vec::new() });
        }
        let sizes = [high[0] - low[0], high[1] - low[1]];
        let counts = sizes.map(|size| (size / side).floor() + 1.0);
        if counts[0] * counts[1] > MOST {
            return Err(too_many(sizes, side));
        }
        let (columns, rows) = (counts[0] as usize, counts[1] as usize);
        let mut cells = Self { columns, rows, low, side, lowest: vec![f64::INFINITY; columns * rows] };
        let mut sorted: Vec<(u32, f64)> = unmarked()
            .map(|number| (cells.cell(points.x[number], points.y[number]) as u32, points.z[number]))
            .collect();
        sorted.sort_unstable_by(|a, b| a.0.cmp(&b.0).then(a.1.total_cmp(&b.1)));
        for members in sorted.chunk_by(|a, b| a.0 == b.0) {
            if let &[(cell, _), ..] = members {
                cells.lowest[cell as usize] = agreed(members, limits.above.base());
            }
        }
        Ok(cells)
    }

    /// The cell of a place.
    fn cell(&self, x: f64, y: f64) -> usize {
        let at = |value: f64, low: f64, count: usize| (((value - low) / self.side) as usize).min(count - 1);
        at(y, self.low[1], self.rows) * self.columns + at(x, self.low[0], self.columns)
    }

    /// Marks the points that are higher or deeper than the floors of their cell and of those around it allow.
    pub(super) fn judge(&self, points: &Points, floors: &[f64], limits: &Limits, kinds: &mut [Option<Kind>]) {
        let (least, greatest) = self.around(floors);
        for (number, kind) in kinds.iter_mut().enumerate() {
            if kind.is_some() {
                continue;
            }
            let cell = self.cell(points.x[number], points.y[number]);
            let z = points.z[number];
            if z > greatest[cell] + limits.above.base() {
                *kind = Some(Kind::Above);
            } else if z < least[cell] - limits.below.base() {
                *kind = Some(Kind::Below);
            }
        }
    }

    /// The least and the greatest floor of each cell and the eight around it.
    fn around(&self, floors: &[f64]) -> (Vec<f64>, Vec<f64>) {
        let slide = |values: &[f64], better: fn(f64, f64) -> f64| {
            let rows = super::floor::slid(values, self.columns, 1, 1, better);
            super::floor::slid(&rows, self.columns, self.columns, 1, better)
        };
        (slide(floors, f64::min), slide(floors, f64::max))
    }
}

/// The middle of the lowest heights that enough points agree on: all within `band` of the lowest of them.
fn agreed(rising: &[(u32, f64)], band: f64) -> f64 {
    let enough = AGREE.min(rising.len());
    let first = rising.windows(enough).position(|window| window[enough - 1].1 - window[0].1 <= band);
    // Where no points agree, the lowest is the best there is.
    let rest = &rising[first.unwrap_or(0)..];
    let lowest = rest[0].1;
    let count = rest.partition_point(|(_, z)| *z <= lowest + band);
    rest[(count - 1) / 2].1
}

fn too_many([width, depth]: [f64; 2], side: f64) -> Box<Failure> {
    let say = |metres: f64| both(Length::from_base(metres));
    Failure::new(Code::OutOfRange, "cell")
        .written(format!("cells of {} over {} by {}", say(side), say(width), say(depth)))
        .allowed(format!("at most {MOST:e} cells: wider than {}", say((width * depth / MOST).sqrt())))
        .remedy("cut the scan to the work, check its units, or ask for wider cells")
}
