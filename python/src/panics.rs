//! Test only: rows whose function panics, so that the tests can see what becomes of a panic.

use crate::answers::{self, RecordRow};
use crate::scalars::{self, ScalarRow};
use crate::units::{Errors, Units};
use overslab::operation::{Call, Kind, Need, Operation, Port, ScalarCall};
use pyo3::prelude::*;

const PORTS: &[Port] =
    &[Port { name: "times", meaning: "a count", kind: Kind::Count(0, 9), need: Need::Required }];

const fn operation(call: Call) -> Operation {
    Operation {
        name: "panics",
        module: "specimen",
        since: "0.1.0",
        meaning: "Test only: panics.",
        equation: "none",
        assumes: "nothing",
        ports: PORTS,
        results: PORTS,
        basis: &[],
        example: "{}",
        refusals: &[],
        call,
    }
}

#[expect(clippy::panic, reason = "a panic is what is tested")]
static SCALAR: Operation = operation(Call::Scalar(ScalarCall {
    one: |_, _| panic!("on purpose"),
    block: |_, _, _| panic!("on purpose"),
}));

#[expect(clippy::panic, reason = "a panic is what is tested")]
static RECORD: Operation = operation(Call::Record(|_| panic!("on purpose")));

static SCALAR_ROW: ScalarRow = ScalarRow {
    operation: &SCALAR,
    class: "Panics",
    one: |py, result| Ok(Py::new(py, result)?.into_any()),
    many: |py, result| Ok(Py::new(py, result)?.into_any()),
};

static RECORD_ROW: RecordRow = RecordRow {
    operation: &RECORD,
    class: "Panics",
    answer: |py, result| Ok(Py::new(py, result)?.into_any()),
};

/// A scalar row that panics, also as an array.
#[pyfunction]
pub(crate) fn _panics_scalar(py: Python<'_>, times: &Bound<'_, PyAny>) -> PyResult<Py<PyAny>> {
    scalars::call(py, &SCALAR_ROW, &[times], Units(None), Errors::Raise)
}

/// A row with records that panics.
#[pyfunction]
pub(crate) fn _panics_record(py: Python<'_>, times: &Bound<'_, PyAny>) -> PyResult<Py<PyAny>> {
    answers::call(py, &RECORD_ROW, &[Some(times)], Units(None))
}
