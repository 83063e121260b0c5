//! Rows with records, tables, texts or optional ports: values in, an answer out.

use crate::exceptions::{Fault, Outcome, guard};
use crate::units::Units;
use crate::values::{read, show};
use crate::{arguments, columns, kept, notes, records};
use overslab::failure::{Code, Failure, Place};
use overslab::operation::{Answer, Kind, Operation, Value, call};
use overslab::quantity::System;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyTuple};

/// What the generated code says of one record row.
pub(crate) struct RecordRow {
    /// The row of the table.
    pub(crate) operation: &'static Operation,
    /// The name of its result class.
    pub(crate) class: &'static str,
    /// Makes its result.
    pub(crate) answer: fn(Python<'_>, AnswerResult) -> PyResult<Py<PyAny>>,
}

/// What an operation gives: its results, notes, where each comes from, and what was taken because it was not given.
#[pyclass(frozen, subclass, module = "overslab.results")]
pub(crate) struct AnswerResult {
    pub(crate) row: &'static RecordRow,
    pub(crate) answer: Answer,
}

/// Calls a record row.
pub(crate) fn call(
    py: Python<'_>,
    row: &'static RecordRow,
    given: &[Option<&Bound<'_, PyAny>>],
    units: Units,
) -> PyResult<Py<PyAny>> {
    guard(py, || {
        let operation = row.operation;
        let ports = operation.ports.iter().zip(given);
        let values = ports.map(|(port, object)| match object {
            Some(object) => read(port, object, units).map_err(|fault| fault.under(port.name)),
            None => Ok(Value::Absent),
        });
        let values = values.collect::<Outcome<Vec<_>>>()?;
        let answer = py.detach(|| call::invoke(operation, values));
        let answer = answer.map_err(|failure| said_again(failure, operation, given, units))?;
        Ok((row.answer)(py, AnswerResult { row, answer })?)
    })
}

/// The result of a row that makes one record: the record, with what came with it.
pub(crate) fn record(py: Python<'_>, result: AnswerResult) -> PyResult<Py<PyAny>> {
    let AnswerResult { row, mut answer } = result;
    match (row.operation.makes(), answer.results.pop()) {
        (Some(record), Some(Value::Record(value))) => records::made(py, record, value, row, answer),
        _ => guard(py, || Err(Failure::new(Code::Internal, row.operation.name).into())),
    }
}

/// A refusal said in the number and the unit that the caller wrote.
#[cold]
fn said_again(
    failure: Box<Failure>,
    operation: &Operation,
    given: &[Option<&Bound<'_, PyAny>>],
    units: Units,
) -> Fault {
    let (name, column) = failure.path.split_once('.').unwrap_or((&failure.path, ""));
    let found =
        operation.port(name).and_then(|place| Some((&operation.ports[place].kind, (*given.get(place)?)?)));
    match (found, failure.place) {
        (Some((Kind::Number(kind), object)), _) => {
            arguments::in_callers_terms(failure, kind, object, units.0).into()
        }
        (Some((Kind::Table(table), object)), Place::Index(row)) => {
            let place = table.columns.iter().position(|port| port.name == column);
            let cell = place.and_then(|place| {
                let Kind::Number(kind) = &table.columns[place].kind else { return None };
                Some((kind, columns::cell(table, object, (place, row))?))
            });
            match cell {
                Some((kind, cell)) => arguments::in_callers_terms(failure, kind, &cell, units.0).into(),
                None => failure.into(),
            }
        }
        _ => failure.into(),
    }
}

impl AnswerResult {
    /// One result, its numbers in that system of units.
    pub(crate) fn field<'py>(
        &self,
        py: Python<'py>,
        place: usize,
        system: System,
    ) -> PyResult<Bound<'py, PyAny>> {
        let value = self.answer.results.get(place).unwrap_or(&Value::Absent);
        show(py, &self.row.operation.results[place], value, system)
    }
}

#[pymethods]
impl AnswerResult {
    /// What the reader must know of the result.
    #[getter]
    fn notes<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        notes::notes(py, &self.answer.notes)
    }

    /// Where each result comes from.
    #[getter]
    fn basis<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        notes::basis(py, self.row.operation, &self.answer)
    }

    /// What was not given and therefore taken.
    #[getter]
    fn taken<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        notes::taken(py, self.row.operation, &self.answer)
    }

    /// The results by name and unit, in both systems or in one; records in their canonical form.
    #[pyo3(signature = (units = Units(None)), text_signature = "($self, units=None)")]
    fn to_dict<'py>(&self, py: Python<'py>, units: Units) -> PyResult<Bound<'py, PyDict>> {
        kept::to_dict(py, self.row.operation.results, &self.answer.results, units)
    }

    fn __repr__(&self) -> String {
        crate::shown::repr_of(self.row.class, self.row.operation.results, &self.answer.results)
    }

    fn __eq__(slf: &Bound<'_, Self>, other: &Bound<'_, PyAny>) -> bool {
        let Ok(other) = other.cast::<Self>() else { return false };
        let (one, other) = (slf.get(), other.get());
        std::ptr::eq(one.row, other.row)
            && kept::same_values(one.row.operation.results, &one.answer.results, &other.answer.results)
            && one.answer.notes == other.answer.notes
            && one.answer.basis == other.answer.basis
            && one.answer.taken == other.answer.taken
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, Bound<'py, PyTuple>)> {
        let restore = py.import("overslab._overslab")?.getattr("_restore_answer")?;
        let results = self.answer.results.iter().zip(self.row.operation.results);
        let results =
            results.map(|(value, port)| kept::keep(py, port, value)).collect::<PyResult<Vec<_>>>()?;
        let about = kept::About::of(&self.answer);
        Ok((restore, (self.row.operation.name, results, about).into_pyobject(py)?))
    }
}

/// Makes a result again from what pickling kept.
#[pyfunction]
pub(crate) fn _restore_answer(
    py: Python<'_>,
    operation: &str,
    results: Vec<Bound<'_, PyAny>>,
    about: kept::About,
) -> PyResult<Py<PyAny>> {
    guard(py, || {
        let row = find(operation)?;
        let ports = row.operation.results;
        if results.len() != ports.len() {
            return Err(crate::scalars::other_version(operation).into());
        }
        let values = ports.iter().zip(&results).map(|(port, kept)| kept::value(port, kept));
        let mut answer = about.into_answer();
        answer.results = values.collect::<Outcome<_>>()?;
        Ok((row.answer)(py, AnswerResult { row, answer })?)
    })
}

/// The generated row of that operation.
pub(crate) fn find(operation: &str) -> Outcome<&'static RecordRow> {
    let found = crate::record_rows().find(|row| row.operation.name == operation);
    Ok(found.ok_or_else(|| {
        Failure::new(Code::OperationUnknown, operation).remedy("read it with the version that wrote it")
    })?)
}
