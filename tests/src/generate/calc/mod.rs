//! The Calc add-in: its interface, its configuration, its component, what the package says of itself.

mod addin;
pub mod frozen;
mod idl;
pub mod names;
mod package;
mod xcu;

use super::{Generated, root};
use overslab::operation::Operation;
use overslab::{operations, specimen};
use std::fs;

/// One add-in. The module and with it the implementation's name stand in every saved sheet: they never change.
#[derive(Clone, Copy, Debug)]
pub struct AddIn {
    /// Where its files lie.
    pub directory: &'static str,
    /// The last part of its module.
    pub module: &'static str,
    /// What a person sees it called.
    pub title: &'static str,
    /// The function that gives the version.
    pub version: &'static str,
    /// Its operations.
    pub rows: &'static [&'static Operation],
}

/// The add-in that ships.
pub static SHIPPED: AddIn = AddIn {
    directory: "ffi/calc",
    module: "calc",
    title: "Overslab",
    version: "OVS_VERSION",
    rows: operations::OPERATIONS,
};

/// The add-in of the test-only operations.
pub static SPECIMEN: AddIn = AddIn {
    directory: "tests/specimen/calc",
    module: "specimen",
    title: "Overslab, test-only operations",
    version: "OVS_SPECIMEN_VERSION",
    rows: specimen::OPERATIONS,
};

impl AddIn {
    /// The name by which saved sheets know it.
    #[must_use]
    pub fn implementation(&self) -> String {
        format!("org.overslab.{}.Functions", self.module)
    }

    /// The list of frozen names as it lies in the tree.
    #[must_use]
    pub fn frozen(&self) -> String {
        fs::read_to_string(root().join(self.directory).join("frozen.txt")).unwrap_or_default()
    }

    /// The operations in the order of the frozen list.
    fn ordered(&self) -> Vec<&'static Operation> {
        frozen::order(&frozen::grown(&self.frozen(), self.rows), self.rows)
    }

    fn file(&self, name: &str, text: impl Into<String>) -> Generated {
        Generated::new(format!("{}/{name}", self.directory), text)
    }
}

/// Every file of both add-ins.
#[must_use]
pub fn files() -> Vec<Generated> {
    [&SHIPPED, &SPECIMEN].into_iter().flat_map(files_of).collect()
}

fn files_of(add_in: &AddIn) -> Vec<Generated> {
    let rows = add_in.ordered();
    vec![
        add_in.file("frozen.txt", frozen::grown(&add_in.frozen(), add_in.rows)),
        add_in.file("XOverslab.idl", idl::text(add_in, &rows)),
        add_in.file("CalcAddIn.xcu", xcu::text(add_in, &rows)),
        add_in.file("overslab_addin.py", addin::text(add_in, &rows)),
        add_in.file("description.xml", package::description(add_in)),
        add_in.file("META-INF/manifest.xml", package::manifest()),
    ]
}
