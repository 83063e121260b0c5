//! What is said of ports to the reader of a sheet.

use super::c::doc;
use overslab::operation::{Kind, Need, Operation, Port, RecordType};
use overslab::operations;
use overslab::quantity::System;

/// What a port takes, in one line: meaning, unit, what it may be, what happens without it, what a zero is taken for.
#[must_use]
pub fn argument(port: &Port, system: System) -> String {
    [Some(argument_told(port, system)), zero(port, system)]
        .into_iter()
        .flatten()
        .collect::<Vec<_>>()
        .join("; ")
}

/// The same for a sheet that tells an empty cell from a zero.
#[must_use]
pub fn argument_told(port: &Port, system: System) -> String {
    let mut parts = vec![format!("{}{}", port.meaning, doc::unit(port, system)), takes(port, system)];
    match port.need {
        Need::Required => {}
        Need::Optional => parts.push("may be left out".to_owned()),
        Need::Fallback { value, why } => parts.push(format!("left out: {value}, because {why}")),
    }
    parts.retain(|part| !part.is_empty());
    parts.join("; ")
}

/// What a port may be.
#[must_use]
pub fn takes(port: &Port, system: System) -> String {
    match &port.kind {
        Kind::Number(kind) => doc::range(kind, system),
        Kind::Count(least, greatest) => format!("a whole number from {least} to {greatest}"),
        Kind::Choice(words) => one_of(words),
        Kind::Text => "a text".to_owned(),
        Kind::Bytes => port.kind.word(),
        Kind::Table(table) => {
            let columns = table.columns.iter().map(|column| column_name(column, system));
            format!("a range with the columns {}", columns.collect::<Vec<_>>().join(", "))
        }
        Kind::Record(record) => format!("a range of path, value, unit{}", made_by(record, system)),
    }
}

/// A column of a table with its unit; in brackets where it may be empty.
fn column_name(column: &Port, system: System) -> String {
    let name = column.unit_name(system);
    if column.need == Need::Required { name } else { format!("[{name}]") }
}

fn made_by(record: &RecordType, system: System) -> String {
    let makes = |row: &&Operation| row.makes().is_some_and(|made| made.name == record.name);
    let makers: Vec<String> = operations::all()
        .into_iter()
        .filter(makes)
        .map(|row| super::calc::names::shown(row.name, system))
        .collect();
    if makers.is_empty() { String::new() } else { format!(", as {} gives", makers.join(" or ")) }
}

/// What becomes of a lone zero where a sheet cannot tell it from an empty cell; nothing where it is a zero like any other.
/// It is the engine's reading of sheets that decides; a test asks it.
#[must_use]
pub fn zero(port: &Port, system: System) -> Option<String> {
    let optional = port.need != Need::Required;
    let meant = match &port.kind {
        Kind::Number(kind) if kind.zero_rare || optional => {
            let unit = kind.unit(system);
            kind.range.allows((unit.to_base)(0.0)).then(|| format!("0 {} as a text", unit.symbol))
        }
        Kind::Count(least, _) if optional => (*least <= 0).then(|| "it as a text".to_owned()),
        _ => return None,
    };
    let refused = "a zero is refused, an empty cell arrives as one";
    Some(meant.map_or_else(|| refused.to_owned(), |meant| format!("{refused}; if meant write {meant}")))
}

/// `red, dark blue or green`.
#[must_use]
pub fn one_of(words: &[&str]) -> String {
    match words {
        [] => String::new(),
        [only] => (*only).to_owned(),
        [first @ .., last] => format!("{} or {last}", first.join(", ")),
    }
}

/// A result in one line: its name with unit, and its meaning.
#[must_use]
pub fn result(port: &Port, system: System) -> String {
    format!("{} ({})", port.unit_name(system), port.meaning)
}
