//! The component: a fixed text in Python and in it the list of operations.

use super::AddIn;
use super::names;
use overslab::operation::Operation;

/// The component but for the list. It is one file, since two add-ins in one office share the names of their modules.
const TEMPLATE: &str = include_str!("addin.py");

pub(super) fn text(add_in: &AddIn, rows: &[&'static Operation]) -> String {
    let operation = |row: &&Operation| format!("    (\"{}\", \"{}\"),\n", names::stem(row.name), row.name);
    let operations: String = rows.iter().map(operation).collect();
    TEMPLATE
        .replace("org.overslab.MODULE", &format!("org.overslab.{}", add_in.module))
        .replace("    (\"STEM\", \"OPERATION\"),\n", &operations)
}
