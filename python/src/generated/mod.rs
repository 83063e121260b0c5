//! Functions and classes of every module: made from the table of operations by `tests/src/generate/python`; do not edit.

pub(crate) mod grade;
pub(crate) mod order;
#[cfg(feature = "specimen")]
pub(crate) mod specimen;

use pyo3::prelude::*;

/// The scalar rows of every module.
pub(crate) static SCALARS: &[&[&crate::scalars::ScalarRow]] = &[
    grade::SCALARS,
    order::SCALARS,
    #[cfg(feature = "specimen")]
    specimen::SCALARS,
];

/// The rows with records of every module.
pub(crate) static ANSWERS: &[&[&crate::answers::RecordRow]] = &[
    grade::ANSWERS,
    order::ANSWERS,
    #[cfg(feature = "specimen")]
    specimen::ANSWERS,
];

/// The classes of records of every module.
pub(crate) static RECORDS: &[&[crate::records::RecordClass]] = &[
    grade::RECORDS,
    order::RECORDS,
    #[cfg(feature = "specimen")]
    specimen::RECORDS,
];

/// Puts every function and class into the native module.
pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    grade::register(module)?;
    order::register(module)?;
    #[cfg(feature = "specimen")]
    specimen::register(module)?;
    Ok(())
}
