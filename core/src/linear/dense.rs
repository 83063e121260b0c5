//! Small dense systems.

/// The product of two rows.
#[inline]
pub(super) fn dot(a: &[f64], b: &[f64]) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}

/// A square matrix, row by row.
#[derive(Clone, Debug)]
pub(crate) struct Dense {
    size: usize,
    entries: Vec<f64>,
}

/// A pivot this small against the greatest entry makes a matrix singular.
const SINGULAR: f64 = 1e-11;

impl Dense {
    /// The unit matrix.
    pub(crate) fn unit(size: usize) -> Self {
        let mut entries = vec![0.0; size * size];
        entries.iter_mut().step_by(size + 1).for_each(|entry| *entry = 1.0);
        Self { size, entries }
    }

    pub(crate) fn row(&self, row: usize) -> &[f64] {
        &self.entries[row * self.size..(row + 1) * self.size]
    }

    pub(crate) fn row_mut(&mut self, row: usize) -> &mut [f64] {
        &mut self.entries[row * self.size..(row + 1) * self.size]
    }

    /// The inverse, by elimination with row pivots; none for a singular matrix.
    pub(crate) fn inverse(&self) -> Option<Self> {
        let size = self.size;
        let (mut left, mut right) = (self.clone(), Self::unit(size));
        let greatest = self.entries.iter().fold(0.0_f64, |most, entry| most.max(entry.abs()));
        for column in 0..size {
            let pivot = (column..size)
                .max_by(|&a, &b| left.row(a)[column].abs().total_cmp(&left.row(b)[column].abs()))?;
            if left.row(pivot)[column].abs() <= SINGULAR * greatest {
                return None;
            }
            left.swap(column, pivot);
            right.swap(column, pivot);
            let by = 1.0 / left.row(column)[column];
            left.row_mut(column).iter_mut().for_each(|entry| *entry *= by);
            right.row_mut(column).iter_mut().for_each(|entry| *entry *= by);
            for other in (0..size).filter(|&other| other != column) {
                let share = left.row(other)[column];
                if share != 0.0 {
                    left.take(other, column, share);
                    right.take(other, column, share);
                }
            }
        }
        Some(right)
    }

    /// Rows for columns.
    pub(crate) fn transposed(&self) -> Self {
        let size = self.size;
        let entries = (0..size * size).map(|at| self.entries[at % size * size + at / size]).collect();
        Self { size, entries }
    }

    fn swap(&mut self, a: usize, b: usize) {
        if a != b {
            for column in 0..self.size {
                self.entries.swap(a * self.size + column, b * self.size + column);
            }
        }
    }

    /// Takes a share of one row from another.
    fn take(&mut self, from: usize, row: usize, share: f64) {
        for column in 0..self.size {
            self.entries[from * self.size + column] -= share * self.entries[row * self.size + column];
        }
    }

    /// The matrix times a column.
    pub(crate) fn times(&self, column: &[f64]) -> Vec<f64> {
        (0..self.size).map(|row| dot(self.row(row), column)).collect()
    }

    /// A row times the matrix.
    pub(crate) fn times_from_left(&self, row: &[f64]) -> Vec<f64> {
        let mut product = vec![0.0; self.size];
        for (number, &share) in row.iter().enumerate() {
            for (sum, entry) in product.iter_mut().zip(self.row(number)) {
                *sum += share * entry;
            }
        }
        product
    }
}

/// The unknowns that equations `e . x = 0` leave free: every `x` is `basis^T y`.
#[derive(Clone, Debug)]
pub(crate) struct NullSpace {
    /// Which unknowns are free.
    pub(crate) free: Vec<usize>,
    /// One row per unknown, one column per free one.
    pub(crate) map: Vec<Vec<f64>>,
}

impl NullSpace {
    /// What the equations leave free, by elimination with the greatest pivot anywhere. An equation that follows from the others
    /// changes nothing.
    pub(crate) fn of(unknowns: usize, mut equations: Vec<Vec<f64>>) -> Self {
        let greatest = equations.iter().flatten().fold(0.0_f64, |most, entry| most.max(entry.abs()));
        let mut pivots: Vec<(usize, usize)> = Vec::new();
        for step in 0..equations.len() {
            let left = (step..equations.len())
                .flat_map(|row| (0..unknowns).map(move |column| (row, column)))
                .filter(|&(_, column)| pivots.iter().all(|&(_, taken)| taken != column));
            let best = left.max_by(|a, b| equations[a.0][a.1].abs().total_cmp(&equations[b.0][b.1].abs()));
            let Some((row, column)) = best else { break };
            if equations[row][column].abs() <= 1e-9 * greatest {
                break;
            }
            equations.swap(step, row);
            let by = 1.0 / equations[step][column];
            equations[step].iter_mut().for_each(|entry| *entry *= by);
            let pivot = equations[step].clone();
            for (number, other) in equations.iter_mut().enumerate() {
                let share = other[column];
                if number != step && share != 0.0 {
                    other.iter_mut().zip(&pivot).for_each(|(entry, of_pivot)| *entry -= share * of_pivot);
                }
            }
            pivots.push((step, column));
        }
        let free: Vec<usize> =
            (0..unknowns).filter(|column| pivots.iter().all(|(_, taken)| taken != column)).collect();
        let mut map = vec![vec![0.0; free.len()]; unknowns];
        for (place, &column) in free.iter().enumerate() {
            map[column][place] = 1.0;
        }
        for &(row, column) in &pivots {
            for (place, &of_free) in free.iter().enumerate() {
                map[column][place] = -equations[row][of_free];
            }
        }
        Self { free, map }
    }

    /// How many are free.
    pub(crate) fn width(&self) -> usize {
        self.free.len()
    }
}
