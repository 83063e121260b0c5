//! What comes with a result: notes, where each part comes from, and what was taken because it was not given.
//! Their classes are plain named tuples, written in Python.

use overslab::note::{Note, NoteCode};
use overslab::operation::{Answer, Need, Operation};
use pyo3::prelude::*;
use pyo3::sync::PyOnceLock;
use pyo3::types::{PyTuple, PyType};

static NOTE: PyOnceLock<Py<PyType>> = PyOnceLock::new();
static BASIS: PyOnceLock<Py<PyType>> = PyOnceLock::new();
static TAKEN: PyOnceLock<Py<PyType>> = PyOnceLock::new();

fn one<'py>(
    py: Python<'py>,
    class: &PyOnceLock<Py<PyType>>,
    name: &str,
    parts: impl pyo3::call::PyCallArgs<'py>,
) -> PyResult<Bound<'py, PyAny>> {
    class.import(py, "overslab.results", name)?.call1(parts)
}

/// One note as a named tuple.
pub(crate) fn note<'py>(py: Python<'py>, code: NoteCode, text: &str) -> PyResult<Bound<'py, PyAny>> {
    one(py, &NOTE, "Note", (code.number(), code.name(), text))
}

/// Notes as a tuple.
pub(crate) fn notes<'py>(py: Python<'py>, notes: &[Note]) -> PyResult<Bound<'py, PyTuple>> {
    let notes = notes.iter().map(|one| note(py, one.code, &one.text));
    PyTuple::new(py, notes.collect::<PyResult<Vec<_>>>()?)
}

/// Where each result of the answer comes from.
pub(crate) fn basis<'py>(
    py: Python<'py>,
    operation: &Operation,
    answer: &Answer,
) -> PyResult<Bound<'py, PyTuple>> {
    let lines = answer.basis.iter().map(|(place, basis)| {
        let result = operation.results.get(*place).map_or("", |port| port.name);
        one(py, &BASIS, "Basis", (result, basis.name(), basis.line()))
    });
    PyTuple::new(py, lines.collect::<PyResult<Vec<_>>>()?)
}

/// What was not given and therefore taken.
pub(crate) fn taken<'py>(
    py: Python<'py>,
    operation: &Operation,
    answer: &Answer,
) -> PyResult<Bound<'py, PyTuple>> {
    let ports = answer.taken.iter().filter_map(|&place| operation.ports.get(place));
    let lines = ports.filter_map(|port| match port.need {
        Need::Fallback { value, why } => Some(one(py, &TAKEN, "Taken", (port.name, value, why))),
        _ => None,
    });
    PyTuple::new(py, lines.collect::<PyResult<Vec<_>>>()?)
}
