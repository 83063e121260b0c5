//! Scalar rows: one call, a call on whole arrays, and the full text of a refusal.

use super::array::{Input, Output, length};
use super::guard::{explained, internal, null, status};
use super::message::Message;
use super::text_out::TextOut;
use overslab::failure::{Failure, Place, Result};
use overslab::note::NoteCode;
use overslab::operation::block::BLOCK;
use overslab::operation::{Operation, Port, call};
use overslab::quantity::System;
use std::ffi::c_int;

/// One call.
///
/// # Safety
/// `results` and `notes` are null or can be written.
#[inline]
#[expect(unsafe_code, reason = "writes the caller's results")]
pub(crate) unsafe fn one<const I: usize, const R: usize>(
    row: &'static Operation,
    system: System,
    inputs: [f64; I],
    results: [Output; R],
    notes: *mut c_int,
    message: Message,
) -> c_int {
    status(message, || {
        present(row.results, system, &results)?;
        let (numbers, note) = run(row, system, &inputs, &results)?;
        for (to, result) in results.iter().zip(numbers) {
            // SAFETY: not null, and the caller promises one element there.
            unsafe { to.put(0, result) };
        }
        if !notes.is_null() {
            // SAFETY: not null, and the caller promises an int there.
            unsafe { notes.write_unaligned(note.map_or(0, NoteCode::number)) };
        }
        Ok(())
    })
}

#[inline]
fn run<const I: usize, const R: usize>(
    row: &'static Operation,
    system: System,
    inputs: &[f64; I],
    to: &[Output; R],
) -> Result<([f64; R], Option<NoteCode>)> {
    let (numbers, note) = call::scalar_of::<I, R>(row, system, inputs)?;
    if to.iter().zip(numbers).all(|(to, number)| to.takes(number)) {
        Ok((numbers, note))
    } else {
        Err(internal())
    }
}

/// The arrays of one call, `n` elements each.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Arrays<const I: usize, const R: usize> {
    /// One per port.
    pub(crate) inputs: [Input; I],
    /// One per result.
    pub(crate) results: [Output; R],
    /// The note of each element; may be null.
    pub(crate) notes: *mut c_int,
    /// How many elements each array has.
    pub(crate) n: c_int,
    /// Where the place of the first bad element goes; may be null.
    pub(crate) bad_index: *mut c_int,
}

/// One call per element. A bad element becomes NaN, the others are computed, the first bad one is told.
///
/// # Safety
/// Every array is null or has `n` elements; `bad_index` is null or can be written.
#[expect(unsafe_code, reason = "reads and writes the caller's arrays")]
pub(crate) unsafe fn array<const I: usize, const R: usize>(
    row: &'static Operation,
    system: System,
    arrays: Arrays<I, R>,
    message: Message,
) -> c_int {
    status(message, || {
        let n = length("n", arrays.n)?;
        if n > 0 {
            for (port, from) in row.ports.iter().zip(arrays.inputs) {
                from.check(&port.unit_name(system))?;
            }
            present(row.results, system, &arrays.results)?;
        }
        let mut first: Option<(usize, Box<Failure>)> = None;
        for from in (0..n).step_by(BLOCK) {
            // SAFETY: no array is null, and the caller promises `n` elements in each.
            let bad = unsafe { block(row, system, &arrays, from, BLOCK.min(n - from)) }?;
            first = first.or(bad);
        }
        let bad = first.as_ref().map_or(Ok(-1), |(at, _)| c_int::try_from(*at)).map_err(|_| internal())?;
        if !arrays.bad_index.is_null() {
            // SAFETY: not null, and the caller promises an int there.
            unsafe { arrays.bad_index.write_unaligned(bad) };
        }
        first.map_or(Ok(()), |(at, failure)| Err(failure.at(Place::Index(at))))
    })
}

/// A block of elements: read, called, written; gives the first bad one. Inputs are read before the results are written, so an array
/// may be both.
///
/// # Safety
/// No array but `notes` is null, and each has at least `from + rows` elements.
#[expect(unsafe_code, reason = "reads and writes a block of the caller's arrays")]
unsafe fn block<const I: usize, const R: usize>(
    row: &'static Operation,
    system: System,
    arrays: &Arrays<I, R>,
    from: usize,
    rows: usize,
) -> Result<Option<(usize, Box<Failure>)>> {
    let (mut inputs, mut results) = ([[0.0; BLOCK]; I], [[0.0; BLOCK]; R]);
    for (column, array) in inputs.iter_mut().zip(arrays.inputs) {
        for (at, number) in column[..rows].iter_mut().enumerate() {
            // SAFETY: as this function's.
            *number = unsafe { array.get(from + at) };
        }
    }
    let mut told: [Option<Result<NoteCode>>; BLOCK] = [const { None }; BLOCK];
    call::block_of(row, system, &inputs, &mut results, rows, &mut |at, what| told[at] = Some(what))?;
    let mut first = None;
    for (at, told) in told.into_iter().enumerate().take(rows) {
        let numbers = results.each_ref().map(|column| column[at]);
        let outcome = match told {
            Some(Err(failure)) => Err(failure),
            _ if !arrays.results.iter().zip(numbers).all(|(to, number)| to.takes(number)) => Err(internal()),
            told => Ok(told.and_then(Result::ok)),
        };
        // SAFETY: as this function's.
        unsafe { put(arrays, from + at, numbers, outcome.as_ref().ok().copied()) };
        if let Err(failure) = outcome {
            first.get_or_insert((from + at, failure));
        }
    }
    Ok(first)
}

/// Writes the results of an element and its note; a refused one has none.
///
/// # Safety
/// No array but `notes` is null, and each has more elements than `at`.
#[inline]
#[expect(unsafe_code, reason = "writes one element of the caller's arrays")]
unsafe fn put<const I: usize, const R: usize>(
    arrays: &Arrays<I, R>,
    at: usize,
    numbers: [f64; R],
    note: Option<Option<NoteCode>>,
) {
    for (to, number) in arrays.results.iter().zip(numbers) {
        // SAFETY: as this function's.
        unsafe {
            match note {
                Some(_) => to.put(at, number),
                None => to.put_none(at),
            }
        }
    }
    if !arrays.notes.is_null() {
        let note = note.flatten().map_or(0, NoteCode::number);
        // SAFETY: as this function's.
        unsafe { arrays.notes.add(at).write_unaligned(note) };
    }
}

/// The status of a call with these inputs and its reason in full; after success the meaning of its note, if it has one.
///
/// # Safety
/// The buffer is null or has its length.
#[expect(unsafe_code, reason = "writes the caller's text")]
pub(crate) unsafe fn why<const I: usize>(
    row: &'static Operation,
    system: System,
    inputs: [f64; I],
    text: TextOut,
) -> c_int {
    let call = || {
        let mut results = [0.0; call::MOST_PORTS];
        let results = results.get_mut(..row.results.len()).ok_or_else(internal)?;
        let note = call::scalar_in(row, system, &inputs, results)?;
        Ok(note.map_or(String::new(), |note| note.meaning().to_owned()))
    };
    // SAFETY: as this function's.
    unsafe { explained(text, call) }
}

/// No result may be null.
#[inline]
fn present(ports: &[Port], system: System, results: &[Output]) -> Result<()> {
    for (port, to) in ports.iter().zip(results) {
        to.check(port.name).map_err(|_| null(&port.unit_name(system)))?;
    }
    Ok(())
}
