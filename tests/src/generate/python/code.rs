//! The Rust of the native module: one file for each module of the engine, and the index of them.

use super::names::{self, python, quoted, rust};
use super::{Generated, Module, SPECIMEN, classes, docs};
use overslab::operation::Operation;
use std::fmt::Write;

const HEAD: &str = "made from the table of operations by `tests/src/generate/python`; do not edit.";

/// The file of one module.
pub(super) fn file(module: &Module) -> Generated {
    let mut text = format!("//! The operations of `{}`: {HEAD}\n\n", module.name);
    text.push_str("#![allow(clippy::too_many_arguments, reason = \"one for each port\")]\n\n");
    text.push_str("use pyo3::prelude::*;\n");
    for operation in &module.operations {
        text.push('\n');
        text.push_str(&row(module, operation));
        text.push('\n');
        text.push_str(&function(module, operation));
        text.push('\n');
        text.push_str(&classes::of_operation(module, operation));
    }
    for record in &module.records {
        text.push('\n');
        text.push_str(&classes::of_record(module, record));
    }
    text.push('\n');
    text.push_str(&lists(module));
    text.push_str(&register(module));
    Generated::new(format!("python/src/generated/{}.rs", module.name), text)
}

/// The name of the static that holds what is said of an operation.
fn upper(operation: &Operation) -> String {
    operation.name.to_uppercase()
}

/// What the hand-written code must know of an operation.
fn row(module: &Module, operation: &Operation) -> String {
    let (name, class) = (upper(operation), names::class(operation));
    let found = format!("crate::rows::operation({}, {})", module.table(), quoted(operation.name));
    if operation.is_scalar() {
        return format!(
            "static {name}: crate::scalars::ScalarRow = crate::scalars::ScalarRow {{\n    operation: {found},\n    \
             class: \"{class}\",\n    one: |py, result| {},\n    many: |py, result| {},\n}};\n",
            classes::made(&class),
            classes::made(&format!("{class}Array")),
        );
    }
    let answer = if operation.makes().is_some() {
        "crate::answers::record".to_owned()
    } else {
        format!("|py, result| {}", classes::made(&class))
    };
    format!(
        "static {name}: crate::answers::RecordRow = crate::answers::RecordRow {{\n    operation: {found},\n    class: \
         \"{class}\",\n    answer: {answer},\n}};\n",
    )
}

/// The function that Python calls.
fn function(module: &Module, operation: &Operation) -> String {
    let mut text = String::new();
    for line in docs::function(module, operation).lines() {
        let _ = writeln!(text, "{}", format!("/// {line}").trim_end());
    }
    let given = signature(operation, "crate::units::Units(None)", "crate::units::Errors::Raise", rust);
    let shown = signature(operation, "None", "'raise'", python);
    let _ =
        writeln!(text, "#[pyfunction]\n#[pyo3(signature = {given}, text_signature = {})]", quoted(&shown));
    let _ = writeln!(text, "fn {}(\n    py: Python<'_>,", rust(operation.name));
    for port in names::required(operation) {
        let _ = writeln!(text, "    {}: &Bound<'_, PyAny>,", rust(port.name));
    }
    for port in names::optional(operation) {
        let _ = writeln!(text, "    {}: Option<&Bound<'_, PyAny>>,", rust(port.name));
    }
    let _ = writeln!(text, "    units: crate::units::Units,");
    if operation.is_scalar() {
        let _ = writeln!(text, "    errors: crate::units::Errors,");
    }
    let _ = writeln!(text, ") -> PyResult<Py<PyAny>> {{\n    {}\n}}", call(operation));
    text
}

fn call(operation: &Operation) -> String {
    let name = upper(operation);
    let required = |port: &overslab::operation::Port| port.need == overslab::operation::Need::Required;
    let ports = operation.ports.iter();
    if operation.is_scalar() {
        let given: Vec<String> = ports.map(|port| rust(port.name)).collect();
        return format!("crate::scalars::call(py, &{name}, &[{}], units, errors)", given.join(", "));
    }
    let given: Vec<String> = ports
        .map(|port| if required(port) { format!("Some({})", rust(port.name)) } else { rust(port.name) })
        .collect();
    format!("crate::answers::call(py, &{name}, &[{}], units)", given.join(", "))
}

/// `(drop, run, *, waste=None, units=None, errors='raise')`.
fn signature(operation: &Operation, units: &str, errors: &str, name: fn(&str) -> String) -> String {
    let mut parts: Vec<String> = names::required(operation).map(|port| name(port.name)).collect();
    parts.push("*".to_owned());
    parts.extend(names::optional(operation).map(|port| format!("{}=None", name(port.name))));
    parts.push(format!("units={units}"));
    if operation.is_scalar() {
        parts.push(format!("errors={errors}"));
    }
    format!("({})", parts.join(", "))
}

/// The rows and records of the module, for those who look them up by name.
fn lists(module: &Module) -> String {
    let scalars = module.operations.iter().filter(|operation| operation.is_scalar());
    let others = module.operations.iter().filter(|operation| !operation.is_scalar());
    let scalars: Vec<String> = scalars.map(|operation| format!("&{}", upper(operation))).collect();
    let others: Vec<String> = others.map(|operation| format!("&{}", upper(operation))).collect();
    let records: Vec<String> = module.records.iter().map(|record| classes::entry(record)).collect();
    let mut text = String::from("/// The scalar rows.\n");
    let _ = writeln!(
        text,
        "pub(crate) static SCALARS: &[&crate::scalars::ScalarRow] = &[{}];\n",
        scalars.join(", ")
    );
    let _ = writeln!(
        text,
        "/// The rows with records.\npub(crate) static ANSWERS: &[&crate::answers::RecordRow] = &[{}];\n",
        others.join(", ")
    );
    let _ = writeln!(
        text,
        "/// The classes of records.\npub(crate) static RECORDS: &[crate::records::RecordClass] = &[{}];\n",
        records.join(", ")
    );
    text
}

fn register(module: &Module) -> String {
    let mut text = String::from("/// Puts functions and classes into the native module.\n");
    text.push_str("pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {\n");
    for operation in &module.operations {
        let _ = writeln!(
            text,
            "    module.add_function(wrap_pyfunction!(self::{}, module)?)?;",
            rust(operation.name)
        );
        for class in classes::names(operation) {
            let _ = writeln!(text, "    module.add_class::<{class}>()?;");
        }
    }
    for record in &module.records {
        let _ = writeln!(text, "    module.add_class::<{}>()?;", record.class);
    }
    text.push_str("    Ok(())\n}\n");
    text
}

/// The index of the generated files.
pub(super) fn index(modules: &[Module]) -> Generated {
    let mut text = format!("//! Functions and classes of every module: {HEAD}\n\n");
    for module in modules {
        let _ = writeln!(text, "pub(crate) mod {};", module.name);
    }
    let _ = writeln!(text, "#[cfg(feature = \"{SPECIMEN}\")]\npub(crate) mod {SPECIMEN};\n");
    text.push_str("use pyo3::prelude::*;\n");
    for (name, list, what) in [
        ("SCALARS", "&[&crate::scalars::ScalarRow]", "scalar rows"),
        ("ANSWERS", "&[&crate::answers::RecordRow]", "rows with records"),
        ("RECORDS", "&[crate::records::RecordClass]", "classes of records"),
    ] {
        let _ = writeln!(text, "\n/// The {what} of every module.\npub(crate) static {name}: &[{list}] = &[");
        for module in modules {
            let _ = writeln!(text, "    {}::{name},", module.name);
        }
        let _ = writeln!(text, "    #[cfg(feature = \"{SPECIMEN}\")]\n    {SPECIMEN}::{name},\n];");
    }
    text.push_str("\n/// Puts every function and class into the native module.\n");
    text.push_str("pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {\n");
    for module in modules {
        let _ = writeln!(text, "    {}::register(module)?;", module.name);
    }
    let _ = writeln!(
        text,
        "    #[cfg(feature = \"{SPECIMEN}\")]\n    {SPECIMEN}::register(module)?;\n    Ok(())\n}}"
    );
    Generated::new("python/src/generated/mod.rs", text)
}
