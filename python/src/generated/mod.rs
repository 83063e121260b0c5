//! Functions and classes of every module: made from the table of operations by `tests/src/generate/python`; do not edit.

pub(crate) mod survey;
pub(crate) mod condition;
pub(crate) mod grade;
pub(crate) mod marks;
pub(crate) mod overlay;
pub(crate) mod clearance;
pub(crate) mod order;
pub(crate) mod asbuilt;
pub(crate) mod job;
#[cfg(feature = "specimen")]
pub(crate) mod specimen;

use pyo3::prelude::*;

/// The scalar rows of every module.
pub(crate) static SCALARS: &[&[&crate::scalars::ScalarRow]] = &[
    survey::SCALARS,
    condition::SCALARS,
    grade::SCALARS,
    marks::SCALARS,
    overlay::SCALARS,
    clearance::SCALARS,
    order::SCALARS,
    asbuilt::SCALARS,
    job::SCALARS,
    #[cfg(feature = "specimen")]
    specimen::SCALARS,
];

/// The rows with records of every module.
pub(crate) static ANSWERS: &[&[&crate::answers::RecordRow]] = &[
    survey::ANSWERS,
    condition::ANSWERS,
    grade::ANSWERS,
    marks::ANSWERS,
    overlay::ANSWERS,
    clearance::ANSWERS,
    order::ANSWERS,
    asbuilt::ANSWERS,
    job::ANSWERS,
    #[cfg(feature = "specimen")]
    specimen::ANSWERS,
];

/// The classes of records of every module.
pub(crate) static RECORDS: &[&[crate::records::RecordClass]] = &[
    survey::RECORDS,
    condition::RECORDS,
    grade::RECORDS,
    marks::RECORDS,
    overlay::RECORDS,
    clearance::RECORDS,
    order::RECORDS,
    asbuilt::RECORDS,
    job::RECORDS,
    #[cfg(feature = "specimen")]
    specimen::RECORDS,
];

/// Puts every function and class into the native module.
pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    survey::register(module)?;
    condition::register(module)?;
    grade::register(module)?;
    marks::register(module)?;
    overlay::register(module)?;
    clearance::register(module)?;
    order::register(module)?;
    asbuilt::register(module)?;
    job::register(module)?;
    #[cfg(feature = "specimen")]
    specimen::register(module)?;
    Ok(())
}
