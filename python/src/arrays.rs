//! The array form of a scalar row: block by block the same function, bit for bit.

use crate::arguments;
use crate::array_result::{ArrayResult, Columns};
use crate::broadcast::common;
use crate::elements::{self, Elements};
use crate::exceptions::Outcome;
use crate::scalars::{self, ScalarRow};
use crate::sources::Source;
use crate::units::{Errors, Units};
use overslab::failure::{Failure, Place};
use overslab::operation::block::BLOCK;
use overslab::operation::call::MOST_PORTS;
use overslab::operation::{BlockCall, Kind, Operation};
use pyo3::prelude::*;

/// What the loop found besides the numbers.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Found {
    /// The number of the note of each element, where any has one.
    pub(crate) notes: Option<Vec<i32>>,
    /// What was refused, in order.
    pub(crate) bad: Vec<(usize, Box<Failure>)>,
}

/// Calls a scalar row for every element.
pub(crate) fn call(
    py: Python<'_>,
    row: &'static ScalarRow,
    given: &[&Bound<'_, PyAny>],
    units: Units,
    errors: Errors,
) -> Outcome<Py<PyAny>> {
    let operation = row.operation;
    let ports = operation.ports.iter().zip(given);
    let read = ports.map(|(port, object)| elements::read(port, object, units.0));
    let arguments = read.collect::<Outcome<Vec<_>>>()?;
    let shape = common(
        operation
            .ports
            .iter()
            .zip(&arguments)
            .filter_map(|(port, one)| one.shape().map(|shape| (port.name, shape))),
    )?;
    let sources = arguments.iter().map(|one| Source::of(one, &shape)).collect::<Outcome<Vec<_>>>()?;
    let block = scalars::function(operation)?.block;
    let columns = Columns::new(py, operation.results.len(), shape.iter().product())?;
    let mut found = columns.write(py, |results| py.detach(|| run(block, &sources, results, errors)))?;
    for (index, failure) in &mut found.bad {
        if let Some(place) = operation.port(&failure.path) {
            let argument = (&arguments[place], &sources[place]);
            *failure = said_again(failure.clone(), (operation, place), given[place], argument, *index, units);
        }
        *failure = failure.clone().at(Place::Index(*index));
        failure.refused = None;
        if errors == Errors::Raise {
            return Err(failure.clone().into());
        }
    }
    let marked = errors == Errors::Mark;
    Ok((row.many)(py, ArrayResult { row, shape, marked, columns, found })?)
}

/// Works every element out, until one is refused where that is to be raised.
fn run(block: BlockCall, sources: &[Source<'_>], mut results: Vec<&mut [f64]>, errors: Errors) -> Found {
    let (length, columns) = (results.first().map_or(0, |column| column.len()), results.len());
    let any_unread = sources.iter().any(Source::has_unread);
    let mut buffers = [[0.0; BLOCK]; MOST_PORTS];
    let mut found = Found::default();
    for from in (0..length).step_by(BLOCK) {
        let rows = BLOCK.min(length - from);
        for (buffer, source) in buffers.iter_mut().zip(sources) {
            source.fill(from, &mut buffer[..rows]);
        }
        let inputs: [&[f64]; MOST_PORTS] = std::array::from_fn(|port| &buffers[port][..rows]);
        let mut outputs: [&mut [f64]; MOST_PORTS] = Default::default();
        for (output, column) in outputs.iter_mut().zip(&mut results) {
            *output = &mut column[from..from + rows];
        }
        let outputs = &mut outputs[..columns];
        let known = found.bad.len();
        block(&inputs[..sources.len()], outputs, &mut |row, told| match told {
            Ok(note) => found.notes.get_or_insert_with(|| vec![0; length])[from + row] = note.number(),
            Err(failure) => found.bad.push((from + row, failure)),
        });
        if any_unread {
            put_unread(sources, from, outputs, &mut found, known);
        }
        if errors == Errors::Raise && !found.bad.is_empty() {
            break;
        }
    }
    found
}

/// Elements of a block that could not be read are refused for that, whatever the function makes of not-a-number.
#[cold]
fn put_unread(
    sources: &[Source<'_>],
    from: usize,
    outputs: &mut [&mut [f64]],
    found: &mut Found,
    known: usize,
) {
    for row in 0..outputs.first().map_or(0, |column| column.len()) {
        let Some(failure) = sources.iter().find_map(|source| source.unread(from + row)) else { continue };
        for column in outputs.iter_mut() {
            column[row] = f64::NAN;
        }
        if let Some(notes) = &mut found.notes {
            notes[from + row] = 0;
        }
        found.bad.retain(|(index, _)| *index != from + row);
        found.bad.push((from + row, Box::new(failure.clone())));
    }
    found.bad[known..].sort_by_key(|(index, _)| *index);
}

/// The refusal of an element, said in the number and the unit that the caller wrote.
#[cold]
fn said_again(
    failure: Box<Failure>,
    (operation, place): (&Operation, usize),
    given: &Bound<'_, PyAny>,
    (argument, source): (&Elements<'_>, &Source<'_>),
    index: usize,
    units: Units,
) -> Box<Failure> {
    let Kind::Number(kind) = &operation.ports[place].kind else { return failure };
    match (argument, source.raw(index)) {
        (Elements::One(_), _) => arguments::in_callers_terms(failure, kind, given, units.0),
        (_, Some((number, unit))) => failure.in_unit(number, unit),
        (Elements::Read { list, .. }, None) => match list.get_item(source.place(index)) {
            Ok(element) => arguments::in_callers_terms(failure, kind, &element, units.0),
            Err(_) => failure,
        },
        _ => failure,
    }
}
