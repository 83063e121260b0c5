//! Scalar rows: numbers, counts and words in, a frozen result out.

use crate::arguments;
use crate::array_result::ArrayResult;
use crate::arrays;
use crate::exceptions::{Outcome, guard};
use crate::shown::repr_of;
use crate::units::{Errors, Units};
use crate::{kept, notes};
use overslab::failure::{Code, Failure};
use overslab::note::NoteCode;
use overslab::operation::call::{MOST_PORTS, from_base, value_of};
use overslab::operation::{Call, Kind, Operation, ScalarCall, Value};
use overslab::quantity::System;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyTuple};

/// What the generated code says of one scalar row.
pub(crate) struct ScalarRow {
    /// The row of the table.
    pub(crate) operation: &'static Operation,
    /// The name of its result class.
    pub(crate) class: &'static str,
    /// Makes its result class.
    pub(crate) one: fn(Python<'_>, ScalarResult) -> PyResult<Py<PyAny>>,
    /// Makes the result class of its array form.
    pub(crate) many: fn(Python<'_>, ArrayResult) -> PyResult<Py<PyAny>>,
}

/// What a scalar operation gives: its results in both systems of units, and notes.
#[pyclass(frozen, subclass, module = "overslab.results")]
pub(crate) struct ScalarResult {
    row: &'static ScalarRow,
    values: [f64; MOST_PORTS],
    note: Option<NoteCode>,
}

/// Calls a scalar row, or its array form where an argument holds several values.
#[inline]
pub(crate) fn call(
    py: Python<'_>,
    row: &'static ScalarRow,
    given: &[&Bound<'_, PyAny>],
    units: Units,
    errors: Errors,
) -> PyResult<Py<PyAny>> {
    guard(py, || {
        let operation = row.operation;
        let mut base = [0.0; MOST_PORTS];
        for ((slot, port), object) in base.iter_mut().zip(operation.ports).zip(given) {
            match arguments::flat(port, object, units.0)? {
                Some(number) => *slot = number,
                None => return arrays::call(py, row, given, units, errors),
            }
        }
        let mut values = [0.0; MOST_PORTS];
        match (function(operation)?.one)(&base[..given.len()], &mut values[..operation.results.len()]) {
            Ok(note) => Ok((row.one)(py, ScalarResult { row, values, note })?),
            Err(failure) => Err(said_again(failure, operation, given, units).into()),
        }
    })
}

/// The call of a scalar row.
#[inline]
pub(crate) fn function(operation: &Operation) -> Outcome<ScalarCall> {
    match operation.call {
        Call::Scalar(call) => Ok(call),
        Call::Record(_) => Err(Failure::new(Code::Internal, operation.name).into()),
    }
}

#[cold]
fn said_again(
    failure: Box<Failure>,
    operation: &Operation,
    given: &[&Bound<'_, PyAny>],
    units: Units,
) -> Box<Failure> {
    let Some(place) = operation.port(&failure.path) else { return failure };
    match (&operation.ports[place].kind, given.get(place)) {
        (Kind::Number(kind), Some(object)) => arguments::in_callers_terms(failure, kind, object, units.0),
        _ => failure,
    }
}

impl ScalarResult {
    /// A number in that system of units.
    #[inline]
    pub(crate) fn number(&self, place: usize, system: System) -> f64 {
        from_base(&self.row.operation.results[place], system, self.values[place])
    }

    /// A whole number.
    #[inline]
    pub(crate) fn count(&self, place: usize) -> i64 {
        self.values[place] as i64
    }

    /// A word.
    #[inline]
    #[allow(dead_code, reason = "no public scalar row gives a word yet, a test-only one does")]
    pub(crate) fn word(&self, place: usize) -> &'static str {
        match self.row.operation.results[place].kind {
            Kind::Choice(words) => words.get(self.values[place] as usize).copied().unwrap_or_default(),
            _ => "",
        }
    }

    fn values(&self) -> &[f64] {
        &self.values[..self.row.operation.results.len()]
    }

    /// The results as values of their ports.
    fn results(&self) -> Vec<Value> {
        let ports = self.row.operation.results.iter();
        ports.zip(self.values()).map(|(port, &number)| value_of(&port.kind, number)).collect()
    }
}

#[pymethods]
impl ScalarResult {
    /// What the reader must know of the result.
    #[getter]
    fn notes<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        let notes = self.note.map(|code| notes::note(py, code, code.meaning())).transpose()?;
        PyTuple::new(py, notes)
    }

    /// The results by name and unit, in both systems or in one.
    #[pyo3(signature = (units = Units(None)), text_signature = "($self, units=None)")]
    fn to_dict<'py>(&self, py: Python<'py>, units: Units) -> PyResult<Bound<'py, PyDict>> {
        kept::to_dict(py, self.row.operation.results, &self.results(), units)
    }

    fn __repr__(&self) -> String {
        repr_of(self.row.class, self.row.operation.results, &self.results())
    }

    fn __eq__(slf: &Bound<'_, Self>, other: &Bound<'_, PyAny>) -> bool {
        let Ok(other) = other.cast::<Self>() else { return false };
        let (one, other) = (slf.get(), other.get());
        std::ptr::eq(one.row, other.row) && one.values() == other.values() && one.note == other.note
    }

    fn __hash__(&self) -> u64 {
        use std::hash::{DefaultHasher, Hash, Hasher};
        let mut hasher = DefaultHasher::new();
        self.row.operation.name.hash(&mut hasher);
        for value in self.values() {
            // Both zeros are equal, so they hash alike.
            (value + 0.0).to_bits().hash(&mut hasher);
        }
        hasher.finish()
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, Bound<'py, PyTuple>)> {
        let restore = py.import("overslab._overslab")?.getattr("_restore_scalar")?;
        let note = self.note.map(NoteCode::number);
        let state = (self.row.operation.name, self.values().to_vec(), note);
        Ok((restore, state.into_pyobject(py)?))
    }
}

/// Makes a result again from what pickling kept.
#[pyfunction]
pub(crate) fn _restore_scalar(
    py: Python<'_>,
    operation: &str,
    kept: Vec<f64>,
    note: Option<i32>,
) -> PyResult<Py<PyAny>> {
    guard(py, || {
        let row = find(operation)?;
        let mut values = [0.0; MOST_PORTS];
        if kept.len() != row.operation.results.len() {
            return Err(other_version(operation).into());
        }
        values[..kept.len()].copy_from_slice(&kept);
        Ok((row.one)(py, ScalarResult { row, values, note: note.and_then(NoteCode::from_number) })?)
    })
}

/// The generated row of that operation.
pub(crate) fn find(operation: &str) -> Outcome<&'static ScalarRow> {
    let found = crate::scalar_rows().find(|row| row.operation.name == operation);
    Ok(found.ok_or_else(|| {
        Failure::new(Code::OperationUnknown, operation).remedy("read it with the version that wrote it")
    })?)
}

/// The failure for a pickle of an operation that has changed since.
pub(crate) fn other_version(operation: &str) -> Box<Failure> {
    Failure::new(Code::VersionUnknown, operation)
        .allowed("a result of this version")
        .remedy("read it with the version that wrote it")
}
