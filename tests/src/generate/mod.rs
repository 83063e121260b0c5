//! One generator per face. None contains the name of an operation: everything comes from the table.
//!
//! Each generator is called twice: with the public rows, for the files that ship; and with the test-only rows, whose files lie
//! in `tests/specimen` or beside the shipped ones under the feature `specimen`.

pub mod c;
pub mod c_signatures;
pub mod calc;
pub mod header;
pub mod python;
pub mod reference;
pub mod schema;
pub mod sheet_table;
pub mod vba;
pub mod words;

use std::path::{Path, PathBuf};

/// One generated file: its path from the root of the repository, and its text.
#[derive(Clone, Debug)]
pub struct Generated {
    /// From the root of the repository.
    pub path: String,
    /// What it should hold.
    pub text: String,
}

impl Generated {
    /// A file with this text.
    #[must_use]
    pub fn new(path: impl Into<String>, text: impl Into<String>) -> Self {
        Self { path: path.into(), text: text.into() }
    }
}

/// The root of the repository.
#[must_use]
pub fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).parent().map(Path::to_path_buf).unwrap_or_default()
}

/// Every generated file, in the order of generation.
#[must_use]
pub fn files() -> Vec<Generated> {
    let headers = header::files();
    let signatures = c_signatures::files(&headers);
    let modules = vba::files(&headers);
    [
        c::files(),
        headers,
        signatures,
        calc::files(),
        modules,
        sheet_table::files(),
        python::files(),
        reference::files(),
        schema::files(),
    ]
    .concat()
}
