//! The Python face: one function and one frozen result class for each operation, one class for each record, their modules
//! and their stubs.

mod classes;
mod code;
mod docs;
mod example;
mod modules;
mod names;
mod stubs;

use super::Generated;
use overslab::operation::{Operation, RecordType};
use overslab::operations::{OPERATIONS, records};

/// The module of the test-only operations, which has no file in the package.
const SPECIMEN: &str = "specimen";

/// The operations and records of one module of the engine.
struct Module {
    name: &'static str,
    operations: Vec<&'static Operation>,
    records: Vec<&'static RecordType>,
}

impl Module {
    /// Where Python finds its names.
    fn path(&self) -> String {
        if self.name == SPECIMEN {
            "overslab._overslab".to_owned()
        } else {
            format!("overslab.{}", self.name)
        }
    }

    /// The path from the crate to its rows.
    fn table(&self) -> &'static str {
        if self.name == SPECIMEN {
            "overslab::specimen::OPERATIONS"
        } else {
            "overslab::operations::OPERATIONS"
        }
    }
}

/// Every file of the Python face.
#[must_use]
pub fn files() -> Vec<Generated> {
    let public = by_module(OPERATIONS);
    let specimen = by_module(overslab::specimen::OPERATIONS);
    let mut files = vec![code::index(&public)];
    for module in public.iter().chain(&specimen) {
        files.push(code::file(module));
        files.push(stubs::file(module));
    }
    files.extend(modules::files(&public));
    files
}

/// The rows by module, in the order of the table. A record lies beside the first operation that makes it, or else takes it.
fn by_module(operations: &[&'static Operation]) -> Vec<Module> {
    let mut modules: Vec<Module> = Vec::new();
    for &operation in operations {
        match modules.iter_mut().find(|module| module.name == operation.module) {
            Some(module) => module.operations.push(operation),
            None => modules.push(Module {
                name: operation.module,
                operations: vec![operation],
                records: Vec::new(),
            }),
        }
    }
    for record in records(operations) {
        let home = home(operations, record);
        for module in modules.iter_mut().filter(|module| module.name == home) {
            module.records.push(record);
        }
    }
    modules
}

fn home(operations: &[&'static Operation], record: &RecordType) -> &'static str {
    let makes = |operation: &Operation| operation.makes().is_some_and(|made| made.name == record.name);
    let mut found = operations.iter().find(|operation| makes(operation));
    for operation in operations {
        if found.is_none() && records(&[*operation]).iter().any(|met| met.name == record.name) {
            found = Some(operation);
        }
    }
    found.map_or("", |operation| operation.module)
}
