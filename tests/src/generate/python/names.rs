//! Names as Python and Rust take them.

use overslab::operation::{Kind, Need, Operation, Port};
use overslab::operations::{all, records};
use overslab::quantity::System;

/// Words that Python keeps for itself, of all versions.
const PYTHON: &[&str] = &[
    "and", "as", "assert", "async", "await", "break", "class", "continue", "def", "del", "elif", "else",
    "except", "finally", "for", "from", "global", "if", "import", "in", "is", "lambda", "nonlocal", "not",
    "or", "pass", "raise", "return", "try", "while", "with", "yield",
];

/// Words that Rust keeps for itself and Python does not.
const RUST: &[&str] = &[
    "abstract", "become", "box", "const", "do", "dyn", "enum", "extern", "false", "final", "fn", "gen",
    "impl", "let", "loop", "macro", "match", "mod", "move", "mut", "override", "priv", "pub", "ref",
    "static", "struct", "trait", "true", "type", "typeof", "unsafe", "unsized", "use", "virtual", "where",
];

/// A name in Python: one that Python keeps for itself gets a low line.
pub(super) fn python(name: &str) -> String {
    if PYTHON.contains(&name) { format!("{name}_") } else { name.to_owned() }
}

/// The same name in Rust.
pub(super) fn rust(name: &str) -> String {
    let name = python(name);
    if RUST.contains(&name.as_str()) { format!("r#{name}") } else { name }
}

/// The class of an operation's result: `triangular_prism` gives `TriangularPrism`. Where a record has that name it is an
/// `...Answer`.
pub(super) fn class(operation: &Operation) -> String {
    if let Some(record) = operation.makes() {
        return record.class.to_owned();
    }
    let class: String = operation.name.split('_').map(capital).collect();
    if records(&all()).iter().any(|record| record.class == class) { format!("{class}Answer") } else { class }
}

fn capital(word: &str) -> String {
    let mut letters = word.chars();
    letters.next().map_or(String::new(), |first| first.to_uppercase().chain(letters).collect())
}

/// The ports that must be given, in order, with their places.
pub(super) fn required(operation: &Operation) -> impl Iterator<Item = &'static Port> {
    operation.ports.iter().filter(|port| port.need == Need::Required)
}

/// The ports that need not be given.
pub(super) fn optional(operation: &Operation) -> impl Iterator<Item = &'static Port> {
    operation.ports.iter().filter(|port| port.need != Need::Required)
}

/// The attributes of a port, one for each unit, with the system and the symbol of the unit.
pub(super) fn attributes(port: &Port) -> Vec<(String, System, &'static str)> {
    let mut found: Vec<(String, System, &'static str)> = Vec::new();
    for system in System::ALL {
        let symbol = match &port.kind {
            Kind::Number(kind) => kind.unit(system).symbol,
            _ => "",
        };
        let name = python(&port.unit_name(system));
        if found.iter().all(|(known, ..)| *known != name) {
            found.push((name, system, symbol));
        }
    }
    found
}

/// A text as a literal of Python and of Rust.
pub(super) fn quoted(text: &str) -> String {
    let mut literal = String::from('"');
    for c in text.chars() {
        match c {
            '"' | '\\' => literal.extend(['\\', c]),
            '\n' => literal.push_str("\\n"),
            c => literal.push(c),
        }
    }
    literal.push('"');
    literal
}
