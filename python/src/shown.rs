//! Results by name, in Python's own words: for `repr`.

use overslab::operation::{Kind, Port, Value};
use overslab::quantity::System;
use std::fmt::Write;

/// One result as it is shown.
enum Shown {
    /// Nothing.
    Absent,
    /// A number in one unit.
    Number(f64),
    /// A whole number.
    Count(i64),
    /// A word or a text.
    Text(String),
    /// Something larger, by its short description.
    Other(String),
}

impl Shown {
    /// A value of that port in that system.
    fn of(port: &Port, value: &Value, system: System) -> Self {
        match (&port.kind, value) {
            (Kind::Number(kind), Value::Number(base)) => Self::Number((kind.unit(system).from_base)(*base)),
            (_, Value::Count(count)) => Self::Count(*count),
            (Kind::Choice(words), Value::Choice(place)) => {
                words.get(*place).map_or(Self::Absent, |word| Self::Text((*word).to_owned()))
            }
            (_, Value::Text(text)) => Self::Text(text.clone()),
            (Kind::Table(_), Value::Table(columns)) => Self::Other(format!("<{} rows>", columns.rows)),
            (Kind::Record(record), Value::Record(_)) => Self::Other(format!("<{}>", record.class)),
            _ => Self::Absent,
        }
    }
}

/// The names of a port under these systems, each once.
pub(crate) fn names(port: &Port, systems: &[System]) -> impl Iterator<Item = (String, System)> {
    let mut named: Vec<(String, System)> = Vec::new();
    for &system in systems {
        let name = port.unit_name(system);
        if named.iter().all(|(known, _)| *known != name) {
            named.push((name, system));
        }
    }
    named.into_iter()
}

fn repr(class: &str, parts: &[(String, Shown)]) -> String {
    let mut text = format!("{class}(");
    for (place, (name, value)) in parts.iter().enumerate() {
        let comma = if place > 0 { ", " } else { "" };
        let _ = match value {
            Shown::Absent => write!(text, "{comma}{name}=None"),
            Shown::Number(number) => write!(text, "{comma}{name}={number:?}"),
            Shown::Count(count) => write!(text, "{comma}{name}={count}"),
            Shown::Text(words) => write!(text, "{comma}{name}={words:?}"),
            Shown::Other(words) => write!(text, "{comma}{name}={words}"),
        };
    }
    text.push(')');
    text
}

/// `Class(name=value, ...)` of values.
pub(crate) fn repr_of(class: &str, ports: &[Port], values: &[Value]) -> String {
    let pairs = ports.iter().zip(values).flat_map(|(port, value)| {
        names(port, &System::ALL).map(move |(name, system)| (name, Shown::of(port, value, system)))
    });
    repr(class, &pairs.collect::<Vec<_>>())
}
