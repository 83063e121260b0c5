//! The Rust of the result and record classes: a getter for each result and unit.

use super::Module;
use super::docs;
use super::names;
use overslab::operation::{Kind, Operation, Port, RecordType};
use overslab::quantity::System;
use std::fmt::Write;

/// The classes that an operation brings with it.
pub(super) fn names(operation: &Operation) -> Vec<String> {
    let class = names::class(operation);
    match (operation.is_scalar(), operation.makes()) {
        (true, _) => vec![class.clone(), format!("{class}Array")],
        (false, None) => vec![class],
        (false, Some(_)) => Vec::new(),
    }
}

/// The expression that makes an object of a class from its base.
pub(super) fn made(class: &str) -> String {
    format!("Ok(Py::new(py, PyClassInitializer::from(result).add_subclass({class}))?.into_any())")
}

/// An entry in the list of record classes.
pub(super) fn entry(record: &RecordType) -> String {
    let (name, made) = (names::quoted(record.name), made(record.class));
    format!(
        "crate::records::RecordClass {{ name: {name}, class: |py| py.get_type::<{}>(), make: |py, result| {made} }}",
        record.class
    )
}

/// The result classes of an operation.
pub(super) fn of_operation(module: &Module, operation: &Operation) -> String {
    let class = names::class(operation);
    let doc = format!("What `{}` gives.", operation.name);
    match (operation.is_scalar(), operation.makes()) {
        (true, _) => {
            let arrays = format!("What `{}` gives for arrays.", operation.name);
            let one = of(module, &class, "crate::scalars::ScalarResult", &doc, operation.results, scalar);
            let name = format!("{class}Array");
            one + "\n"
                + &of(module, &name, "crate::array_result::ArrayResult", &arrays, operation.results, array)
        }
        (false, None) => of(module, &class, "crate::answers::AnswerResult", &doc, operation.results, field),
        (false, Some(_)) => String::new(),
    }
}

/// The class of a record.
pub(super) fn of_record(module: &Module, record: &RecordType) -> String {
    of(module, record.class, "crate::records::Record", record.meaning, record.fields, field)
}

type Getter = fn(&Port, usize, System) -> (&'static str, String);

fn of(module: &Module, class: &str, base: &str, doc: &str, ports: &[Port], getter: Getter) -> String {
    let mut text = format!(
        "/// {doc}\n#[pyclass(frozen, extends = {base}, module = \"{}\")]\npub(crate) struct {class};\n",
        module.path()
    );
    let _ = writeln!(text, "\n#[pymethods]\nimpl {class} {{");
    for (place, port) in ports.iter().enumerate() {
        for (name, system, symbol) in names::attributes(port) {
            let unit = if symbol.is_empty() { String::new() } else { format!(" [{symbol}]") };
            let (gives, call) = getter(port, place, system);
            let life = if gives.starts_with("PyResult") { "'py" } else { "'_" };
            let generic = if life == "'py" { "<'py>" } else { "" };
            let _ = writeln!(text, "    /// {}{unit}.\n    #[getter]", capital(&brief(port)));
            let _ = writeln!(text, "    fn get_{name}{generic}(slf: &Bound<{life}, Self>) -> {gives} {{");
            let _ = writeln!(text, "        slf.as_super().get().{call}\n    }}");
        }
    }
    text.push_str("}\n");
    text
}

fn brief(port: &Port) -> String {
    match port.kind {
        Kind::Number(_) => port.meaning.to_owned(),
        _ => docs::result(port),
    }
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or(String::new(), |first| first.to_uppercase().chain(letters).collect())
}

fn path(system: System) -> &'static str {
    match system {
        System::Us => "overslab::quantity::System::Us",
        System::Si => "overslab::quantity::System::Si",
    }
}

fn scalar(port: &Port, place: usize, system: System) -> (&'static str, String) {
    match port.kind {
        Kind::Count(..) => ("i64", format!("count({place})")),
        Kind::Choice(_) => ("&'static str", format!("word({place})")),
        _ => ("f64", format!("number({place}, {})", path(system))),
    }
}

fn array(port: &Port, place: usize, system: System) -> (&'static str, String) {
    const ANY: &str = "PyResult<Bound<'py, PyAny>>";
    match port.kind {
        Kind::Count(..) => (ANY, format!("counts(slf.py(), {place})")),
        Kind::Choice(_) => (ANY, format!("words(slf.py(), {place})")),
        _ => (
            "PyResult<Bound<'py, numpy::PyArrayDyn<f64>>>",
            format!("numbers(slf.py(), {place}, {})", path(system)),
        ),
    }
}

fn field(_: &Port, place: usize, system: System) -> (&'static str, String) {
    ("PyResult<Bound<'py, PyAny>>", format!("field(slf.py(), {place}, {})", path(system)))
}
