//! The bytes of a file that the caller gives: bytes as they are, or a text.

use crate::arguments::{mismatch, said};
use crate::exceptions::Outcome;
use overslab::operation::{Bytes, Kind};
use pyo3::exceptions::PyTypeError;
use pyo3::intern;
use pyo3::prelude::*;
use pyo3::pybacked::PyBackedBytes;
use pyo3::types::{PyByteArray, PyBytes, PyMemoryView, PyString};

/// The bytes behind an argument: those of `bytes` are shared, all others are copied once, since their owner may change them.
pub(crate) fn read(object: &Bound<'_, PyAny>) -> Outcome<Bytes> {
    if let Ok(bytes) = object.cast::<PyBytes>() {
        return Ok(Bytes::shared(PyBackedBytes::from(bytes.clone())));
    }
    if let Ok(bytes) = object.cast::<PyByteArray>() {
        return Ok(Bytes::shared(PyBackedBytes::from(bytes.clone())));
    }
    if let Ok(text) = object.cast::<PyString>() {
        return Ok(Bytes::from_text(said(text)?)?);
    }
    of_buffer(object)
}

/// The bytes of whatever shows its memory byte by byte: a memory view, a mapped file, an array of bytes.
fn of_buffer(object: &Bound<'_, PyAny>) -> Outcome<Bytes> {
    let py = object.py();
    let view = match PyMemoryView::from(object) {
        Ok(view) => view,
        Err(error) if error.is_instance_of::<PyTypeError>(py) => {
            return Err(mismatch(&Kind::Bytes, object).into());
        }
        Err(error) => return Err(error.into()),
    };
    // Numbers in memory are no file.
    if view.getattr(intern!(py, "itemsize"))?.extract::<usize>()? != 1 {
        return Err(mismatch(&Kind::Bytes, object).into());
    }
    let bytes = view.call_method0(intern!(py, "tobytes"))?;
    let bytes = bytes.cast_into::<PyBytes>().map_err(PyErr::from)?;
    Ok(Bytes::shared(PyBackedBytes::from(bytes)))
}
