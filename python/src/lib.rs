//! The Python face of the engine: the native module `overslab._overslab` behind the package `overslab`.
//!
//! A function for each row of the table is generated; what they share is written here by hand. Nothing here reckons: it
//! turns what Python hands over into the values of the ports, calls the engine, and turns its answer into frozen objects.

mod answers;
mod arguments;
mod array_result;
mod arrays;
mod broadcast;
mod columns;
mod elements;
mod exceptions;
mod files;
mod foreign;
#[rustfmt::skip]
mod generated;
mod kept;
mod notes;
#[cfg(feature = "specimen")]
mod panics;
mod records;
mod rows;
mod scalars;
mod shown;
mod sources;
mod table;
mod units;
mod values;

use pyo3::prelude::*;

/// Every generated scalar row.
fn scalar_rows() -> impl Iterator<Item = &'static scalars::ScalarRow> {
    generated::SCALARS.iter().flat_map(|list| list.iter()).copied()
}

/// Every generated row with records.
fn record_rows() -> impl Iterator<Item = &'static answers::RecordRow> {
    generated::ANSWERS.iter().flat_map(|list| list.iter()).copied()
}

/// Every generated record class.
fn record_classes() -> impl Iterator<Item = &'static records::RecordClass> {
    generated::RECORDS.iter().flat_map(|list| list.iter())
}

#[pymodule(gil_used = false)]
fn _overslab(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add("__version__", env!("CARGO_PKG_VERSION"))?;
    module.add_class::<scalars::ScalarResult>()?;
    module.add_class::<array_result::ArrayResult>()?;
    module.add_function(wrap_pyfunction!(scalars::_restore_scalar, module)?)?;
    module.add_function(wrap_pyfunction!(array_result::_restore_array, module)?)?;
    module.add_class::<answers::AnswerResult>()?;
    module.add_class::<records::Record>()?;
    module.add_function(wrap_pyfunction!(answers::_restore_answer, module)?)?;
    module.add_function(wrap_pyfunction!(records::_restore_record, module)?)?;
    #[cfg(feature = "specimen")]
    {
        module.add_function(wrap_pyfunction!(panics::_panics_scalar, module)?)?;
        module.add_function(wrap_pyfunction!(panics::_panics_record, module)?)?;
    }
    module.add("OPERATIONS", table::operations(module.py())?)?;
    generated::register(module)?;
    // Which names are public is said by the modules of the package.
    module.delattr("__all__")
}
