//! Rows `a . x >= b`, packed.

use super::dense::dot;
use std::ops::Range;

/// Rows of one width, one behind the other.
#[derive(Clone, Debug)]
pub(crate) struct Rows {
    width: usize,
    coefficients: Vec<f64>,
    bounds: Vec<f64>,
    /// The greatest coefficient.
    largest: f64,
}

impl Rows {
    /// No rows, for so many unknowns.
    pub(crate) fn new(width: usize) -> Self {
        Self { width, coefficients: Vec::new(), bounds: Vec::new(), largest: 0.0 }
    }

    /// Room for so many more rows.
    pub(crate) fn reserve(&mut self, more: usize) {
        self.coefficients.reserve(more * self.width);
        self.bounds.reserve(more);
    }

    /// One more row; what is missing of its coefficients is 0.
    pub(crate) fn push(&mut self, row: &[f64], bound: f64) {
        let given = row.len().min(self.width);
        self.coefficients.extend_from_slice(&row[..given]);
        self.bounds.push(bound);
        self.largest = row.iter().fold(self.largest, |most, entry| most.max(entry.abs()));
        if given < self.width {
            self.coefficients.resize(self.bounds.len() * self.width, 0.0);
        }
    }

    /// How many unknowns.
    pub(crate) const fn width(&self) -> usize {
        self.width
    }

    /// The greatest coefficient.
    pub(crate) const fn largest(&self) -> f64 {
        self.largest
    }

    /// How many rows.
    pub(crate) fn len(&self) -> usize {
        self.bounds.len()
    }

    /// The coefficients of a row.
    pub(crate) fn row(&self, row: usize) -> &[f64] {
        &self.coefficients[row * self.width..(row + 1) * self.width]
    }

    /// The bound of a row.
    pub(crate) fn bound(&self, row: usize) -> f64 {
        self.bounds[row]
    }

    /// Moves the bound of a row.
    pub(crate) fn set_bound(&mut self, row: usize, bound: f64) {
        self.bounds[row] = bound;
    }

    /// All rows as one block.
    pub(crate) fn all(&self) -> [Range<usize>; 1] {
        std::array::from_fn(|_| 0..self.len())
    }

    /// How far a row is from being broken; less than 0 where it is.
    pub(crate) fn slack(&self, row: usize, x: &[f64]) -> f64 {
        dot(self.row(row), x) - self.bounds[row]
    }

    /// The slacks of a block.
    pub(crate) fn slacks<'a>(
        &'a self,
        block: Range<usize>,
        x: &'a [f64],
    ) -> impl Iterator<Item = (usize, f64)> + 'a {
        let rows =
            self.coefficients[block.start * self.width..block.end * self.width].chunks_exact(self.width);
        let bounds = &self.bounds[block.clone()];
        block.zip(rows.zip(bounds).map(|(row, bound)| dot(row, x) - bound))
    }

    /// Visits the rows of a block with their slack at a place, and with what it changes by per unit of a direction.
    pub(crate) fn visit(
        &self,
        block: Range<usize>,
        x: &[f64],
        direction: &[f64],
        mut visit: impl FnMut(usize, f64, f64),
    ) {
        let bounds = self.bounds[block.clone()].iter();
        // One plane has three unknowns, and may have a million rows.
        if let (&[a, b, c], &[u, v, w]) = (x, direction) {
            let rows = self.coefficients[block.start * 3..block.end * 3].chunks_exact(3);
            for ((number, row), bound) in block.zip(rows).zip(bounds) {
                let slack = row[0] * a + row[1] * b + row[2] * c - bound;
                visit(number, slack, row[0] * u + row[1] * v + row[2] * w);
            }
            return;
        }
        let width = self.width;
        let rows = self.coefficients[block.start * width..block.end * width].chunks_exact(width);
        for ((number, row), bound) in block.zip(rows).zip(bounds) {
            visit(number, dot(row, x) - bound, dot(row, direction));
        }
    }

    /// The row that is broken most among every so many of a block, with its slack.
    pub(crate) fn worst_of_some(&self, block: Range<usize>, every: usize, x: &[f64]) -> Option<(usize, f64)> {
        let some = block.step_by(every).map(|row| (row, self.slack(row, x)));
        some.min_by(|a, b| a.1.total_cmp(&b.1))
    }

    /// The row of a block that is broken most, with its slack.
    pub(crate) fn worst(&self, block: Range<usize>, x: &[f64]) -> Option<(usize, f64)> {
        if let [a, b, c] = *x {
            return self.worst_of_three(block, [a, b, c]);
        }
        self.slacks(block, x).fold(None, |worst, next| match worst {
            Some((_, least)) if least <= next.1 => worst,
            _ => Some(next),
        })
    }

    /// The same for three unknowns, which one plane has: this is where a million shots spend their time.
    fn worst_of_three(&self, block: Range<usize>, [a, b, c]: [f64; 3]) -> Option<(usize, f64)> {
        let rows = self.coefficients[block.start * 3..block.end * 3].chunks_exact(3);
        let mut worst = (usize::MAX, f64::INFINITY);
        for (number, (row, bound)) in rows.zip(&self.bounds[block.clone()]).enumerate() {
            let slack = row[0] * a + row[1] * b + row[2] * c - bound;
            if slack < worst.1 {
                worst = (block.start + number, slack);
            }
        }
        (worst.0 != usize::MAX).then_some(worst)
    }
}
