//! Many rows of a scalar operation at once, a block of columns at a time: what array calls are made of.

use super::choice::Choice;
use super::scalar::{Flat, Scalar, Word};
use crate::failure::{Code, Failure, Result};
use crate::note::NoteCode;
use crate::quantity::Range;

/// The most rows in a block: its columns and what is between them stay in the nearest cache.
pub const BLOCK: usize = 256;

/// Takes the note or the failure of a row, by its place in the block. Failures come with NaN in every result of the row.
pub type Told<'a> = &'a mut dyn FnMut(usize, Result<NoteCode>);

/// The call of a block: a column of numbers in base units for each port, a column for each result, all of one length.
pub type BlockCall = fn(&[&[f64]], &mut [&mut [f64]], Told<'_>);

/// Calls a scalar function for each row of a block.
#[inline(always)]
pub fn each<const I: usize, F: Flat>(
    inputs: &[&[f64]],
    results: &mut [&mut [f64]],
    told: Told<'_>,
    call: impl Fn([f64; I]) -> Result<F>,
) {
    let rows = results.first().map_or(0, |column| column.len());
    let Some(columns) = columns::<I>(inputs, rows) else {
        for row in 0..rows {
            refuse(results, row, arity(), told);
        }
        return;
    };
    for row in 0..rows {
        match call(at(&columns, row)) {
            Ok(flat) => {
                if let Some(note) = flat.put(results, row) {
                    told(row, Ok(note));
                }
            }
            Err(failure) => refuse(results, row, failure, told),
        }
    }
}

#[cold]
fn refuse(results: &mut [&mut [f64]], row: usize, failure: Box<Failure>, told: Told<'_>) {
    for column in results {
        if let Some(result) = column.get_mut(row) {
            *result = f64::NAN;
        }
    }
    told(row, Err(failure));
}

/// The failure for a call with another number of columns than the operation has ports.
#[cold]
pub fn arity() -> Box<Failure> {
    Failure::new(Code::LengthMismatch, "").allowed("one number per port").remedy("pass every port")
}

/// A row of columns. A loop, since mapping an array is not always put in place, and then no vectors come of it.
#[inline(always)]
fn at<const N: usize>(columns: &[&[f64]; N], row: usize) -> [f64; N] {
    let mut numbers = [0.0; N];
    for (number, column) in numbers.iter_mut().zip(columns) {
        *number = column[row];
    }
    numbers
}

/// That many columns of that many rows.
#[inline(always)]
fn columns<'a, const N: usize>(given: &[&'a [f64]], rows: usize) -> Option<[&'a [f64]; N]> {
    let mut columns: [&[f64]; N] = given.try_into().ok()?;
    for column in &mut columns {
        *column = column.get(..rows)?;
    }
    Some(columns)
}

/// The word that stands in every row of a block.
pub(crate) fn same_word<C: Choice>(column: &[f64]) -> Option<C> {
    let (&first, rest) = column.split_first()?;
    let word = Word::<C>::from_number(first).ok()?.0;
    rest.iter().all(|&other| other == first).then_some(word)
}

/// A formula without branches over rows that are in range.
pub(crate) trait Formula<const I: usize, const R: usize> {
    /// The bounds of each input.
    const RANGES: [Range; I];

    /// The results of a row, and whether the row may be so at all.
    fn row(&self, inputs: [f64; I]) -> ([f64; R], bool);
}

/// Works a formula out for a block; false where a row must be looked at by itself, the results then being anything.
#[inline]
pub(crate) fn at_once<const I: usize, const R: usize>(
    formula: &impl Formula<I, R>,
    inputs: [&[f64]; I],
    results: &mut [&mut [f64]],
) -> bool {
    let rows = results.first().map_or(0, |column| column.len());
    let Some(inputs) = columns::<I>(&inputs, rows) else { return false };
    let Ok(results) = <&mut [&mut [f64]; R]>::try_from(results) else { return false };
    if results.iter().any(|column| column.len() != rows) {
        return false;
    }
    pulp::Arch::new().dispatch(Worked { formula, inputs, results })
}

/// A formula with its columns, as the widest vectors of this processor take it.
struct Worked<'a, 'b, F, const I: usize, const R: usize> {
    formula: &'a F,
    inputs: [&'a [f64]; I],
    results: &'a mut [&'b mut [f64]; R],
}

impl<F: Formula<I, R>, const I: usize, const R: usize> pulp::NullaryFnOnce for Worked<'_, '_, F, I, R> {
    type Output = bool;

    #[inline(always)]
    fn call(self) -> bool {
        let rows = self.results[0].len();
        let inputs = self.inputs.map(|column| &column[..rows]);
        let mut results = self.results.each_mut().map(|column| &mut column[..rows]);
        let mut may = true;
        for (column, range) in inputs.iter().zip(F::RANGES) {
            may &= range.allows_all(column);
        }
        for row in 0..rows {
            let (numbers, allowed) = self.formula.row(at(&inputs, row));
            may &= allowed;
            for (column, number) in results.iter_mut().zip(numbers) {
                column[row] = number;
            }
        }
        may
    }
}
