//! A block of rows is, bit for bit and failure for failure, what its rows are one by one.

use super::block::BLOCK;
use super::*;
use crate::operations::all;
use serde_json::{Map, Value as Json};

/// The numbers of a scalar row's example, in base units.
fn example(operation: &'static Operation) -> Vec<f64> {
    let json: Map<String, Json> = serde_json::from_str(operation.example).unwrap();
    decode::decode(operation, &json, None).unwrap().iter().map(call::flat_number).collect()
}

/// A whole block like the example: each number times one of the factors, each word or count one of its own, by turns that never agree.
fn rows(operation: &'static Operation, factors: &[f64], words: bool) -> Vec<Vec<f64>> {
    let example = example(operation);
    let varied = |row: usize, port: usize| match operation.ports[port].kind {
        Kind::Choice(list) if words => (row / (port + 2) % (list.len() + 1)) as f64,
        Kind::Count(..) if words => example[port] + (row % 3) as f64 / 2.0,
        Kind::Number(_) => example[port] * factors[(row * (2 * port + 3) / 4) % factors.len()],
        _ => example[port],
    };
    (0..BLOCK).map(|row| (0..example.len()).map(|port| varied(row, port)).collect()).collect()
}

/// Compares and gives how many rows were allowed.
fn agree(operation: &'static Operation, call: ScalarCall, rows: &[Vec<f64>]) -> usize {
    let columns: Vec<Vec<f64>> =
        (0..operation.ports.len()).map(|port| rows.iter().map(|row| row[port]).collect()).collect();
    let inputs: Vec<&[f64]> = columns.iter().map(Vec::as_slice).collect();
    let mut results = vec![vec![7.0; rows.len()]; operation.results.len()];
    let mut told = vec![Ok(None); rows.len()];
    let mut outputs: Vec<&mut [f64]> = results.iter_mut().map(Vec::as_mut_slice).collect();
    (call.block)(&inputs, &mut outputs, &mut |row, what| told[row] = what.map(Some));
    let mut allowed = 0;
    for (row, numbers) in rows.iter().enumerate() {
        let mut wanted = vec![f64::NAN; operation.results.len()];
        let alone = (call.one)(numbers, &mut wanted);
        allowed += usize::from(alone.is_ok());
        // As they are written: a refused NaN is not equal to itself.
        assert_eq!(format!("{:?}", told[row]), format!("{alone:?}"), "{} {numbers:?}", operation.name);
        for (column, wanted) in results.iter().zip(&wanted) {
            let same = column[row].to_bits() == wanted.to_bits() || column[row].is_nan() && wanted.is_nan();
            assert!(same, "{} {numbers:?}: {} {wanted}", operation.name, column[row]);
        }
    }
    allowed
}

fn scalars() -> impl Iterator<Item = (&'static Operation, ScalarCall)> {
    all().into_iter().filter_map(|operation| match operation.call {
        Call::Scalar(call) => Some((operation, call)),
        Call::Record(_) => None,
    })
}

#[test]
fn good_rows_agree() {
    for (operation, call) in scalars() {
        let allowed = agree(operation, call, &rows(operation, &[1.0, 0.96, 1.03, 0.99, 1.01], false));
        assert!(allowed > BLOCK / 4, "{}: only {allowed} rows", operation.name);
    }
}

#[test]
fn rows_of_every_word_agree() {
    for (operation, call) in scalars() {
        agree(operation, call, &rows(operation, &[1.0, 0.9, 1.1], true));
    }
}

#[test]
fn bad_rows_agree_and_spoil_no_other() {
    let wild = [
        1.0,
        1.0,
        1.0,
        0.5,
        1.0,
        2.0,
        1.0,
        0.0,
        1.0,
        -1.0,
        f64::NAN,
        1.0,
        1.0e9,
        f64::INFINITY,
        1.0e-9,
        1.0,
        1.0,
    ];
    for (operation, call) in scalars() {
        let allowed = agree(operation, call, &rows(operation, &wild, true));
        assert!(allowed < BLOCK, "{}", operation.name);
    }
}

#[test]
fn a_column_too_few_or_too_short_is_refused_in_every_row() {
    for (operation, call) in scalars() {
        let column = [1.0; 3];
        let inputs = vec![&column[..]; operation.ports.len() - 1];
        let mut results = vec![vec![7.0; 3]; operation.results.len()];
        let mut outputs: Vec<&mut [f64]> = results.iter_mut().map(Vec::as_mut_slice).collect();
        let mut refused = 0;
        (call.block)(&inputs, &mut outputs, &mut |_, told| refused += usize::from(told.is_err()));
        assert_eq!(refused, 3, "{}", operation.name);
        assert!(results.iter().flatten().all(|number| number.is_nan()), "{}", operation.name);
    }
}
