//! What is said of a function, from its row: meaning, equation, arguments with unit and range, errors, basis, example.

use overslab::failure::{Code, Result};
use overslab::operation::{Answer, Kind, Need, NumberKind, Operation, Port, call, decode};
use overslab::quantity::System;
use overslab::quantity::range::{Range, refusal_code};
use overslab::quantity::write::shortest;
use serde_json::{Map, Value as Json};

/// The head of a row: meaning, equation, what is taken for granted.
pub(super) fn head(row: &Operation) -> Vec<String> {
    vec![
        row.meaning.to_owned(),
        String::new(),
        format!("Equation: {}.", row.equation),
        format!("Taken for granted: {}.", row.assumes),
        String::new(),
    ]
}

/// The foot of a row: statuses, basis, since.
pub(super) fn foot(row: &Operation) -> Vec<String> {
    let codes: Vec<String> = codes(row).iter().map(|code| format!("OVS_{}", code.name())).collect();
    let mut lines = vec![String::new(), format!("Refuses with {}.", codes.join(", "))];
    lines.extend(row.basis.iter().map(|basis| format!("Basis: {}.", basis.line())));
    lines.push(format!("Since {}.", row.since));
    lines
}

/// An input in one line: name, unit, meaning, what it may be.
pub(super) fn input(name: &str, port: &Port, system: System) -> String {
    format!("- `{name}`{}: {}{}.", unit(port, system), port.meaning, may_be(port, system))
}

/// A result in one line: name, unit, meaning.
pub(super) fn result(name: &str, port: &Port, system: System) -> String {
    format!("- `{name}`{}, out: {}{}.", unit(port, system), port.meaning, words(port))
}

/// A result or a field in one line, by its constant.
pub(super) fn field(constant: &str, port: &Port, system: System) -> String {
    format!("- {constant}{}: {}{}.", unit(port, system), port.meaning, words(port))
}

/// The units of a port in both systems, for a constant that serves both.
pub(super) fn units(port: &Port) -> String {
    match &port.kind {
        Kind::Number(kind) if kind.us == kind.si => format!(" ({})", kind.us.symbol),
        Kind::Number(kind) => format!(" ({} or {})", kind.us.symbol, kind.si.symbol),
        _ => String::new(),
    }
}

/// Stops where a count of the table does not fit C's int.
pub(super) fn fits_int(row: &Operation, port: &Port) {
    if let Kind::Count(least, greatest) = port.kind {
        let fits = i32::try_from(least).is_ok() && i32::try_from(greatest).is_ok();
        assert!(fits, "{}: {} does not fit an int", row.name, port.name);
    }
}

/// The unit of a port in brackets, where it has one.
pub(in crate::generate) fn unit(port: &Port, system: System) -> String {
    match &port.kind {
        Kind::Number(kind) => format!(" ({})", kind.unit(system).symbol),
        _ => String::new(),
    }
}

/// What a port may be, and what is taken where it is not given.
pub(super) fn may_be(port: &Port, system: System) -> String {
    let range = match &port.kind {
        Kind::Number(kind) => format!("; {}", range(kind, system)),
        Kind::Count(least, greatest) => format!("; from {least} to {greatest}"),
        Kind::Bytes => format!("; {}", port.kind.word()),
        Kind::Choice(_) | Kind::Text | Kind::Table(_) | Kind::Record(_) => words(port),
    };
    match port.need {
        Need::Required => range,
        Need::Optional => format!("{range}; may be left out"),
        Need::Fallback { value, why } => format!("{range}; where left out {value}, because {why}"),
    }
}

/// The bounds of a number in words, in the unit of a system.
pub(in crate::generate) fn range(kind: &NumberKind, system: System) -> String {
    // The bounds are exact in base units; in others the last digits would be noise.
    let unit = kind.unit(system);
    let say = |base: f64| format!("{} {}", rounded((unit.from_base)(base)), unit.symbol);
    let Range { least, open, greatest } = kind.range;
    let low = match (least.is_finite(), open) {
        (false, _) => String::new(),
        (true, true) => format!("more than {}", say(least)),
        (true, false) => format!("at least {}", say(least)),
    };
    let high = if greatest.is_finite() { format!("at most {}", say(greatest)) } else { String::new() };
    match (low.is_empty(), high.is_empty()) {
        (false, false) => format!("{low}, {high}"),
        (true, true) => "any finite number".to_owned(),
        _ => low + &high,
    }
}

/// A number with at most twelve digits.
fn rounded(number: f64) -> String {
    shortest(format!("{number:.11e}").parse().unwrap_or(number))
}

/// The words of a choice with their numbers.
fn words(port: &Port) -> String {
    match &port.kind {
        Kind::Choice(words) => {
            let words: Vec<String> =
                words.iter().enumerate().map(|(place, word)| format!("{place} {word}")).collect();
            format!("; {}", words.join(", "))
        }
        _ => String::new(),
    }
}

/// The codes that the ports and the stated refusals of a row lead to, by number.
pub(in crate::generate) fn codes(row: &Operation) -> Vec<Code> {
    let mut codes: Vec<Code> = row.ports.iter().flat_map(port_codes).collect();
    // A scalar function takes numbers only: what the reading of a text would refuse cannot come up.
    let reached = |change: &str| !row.is_scalar() || decode::decode(row, &changed(row, change), None).is_ok();
    codes.extend(row.refusals.iter().filter(|(change, _)| reached(change)).map(|(_, code)| *code));
    codes.sort_unstable_by_key(|code| code.number());
    codes.dedup();
    codes
}

fn port_codes(port: &Port) -> Vec<Code> {
    match &port.kind {
        Kind::Number(NumberKind { range, quantity, .. }) => {
            let mut codes = vec![Code::NotFinite];
            codes.extend(range.least.is_finite().then(|| refusal_code(range.least - 1.0, quantity)));
            codes.extend(range.open.then(|| refusal_code(range.least, quantity)));
            codes.extend(range.greatest.is_finite().then_some(Code::OutOfRange));
            codes
        }
        Kind::Count(..) => vec![Code::OutOfRange],
        Kind::Choice(_) => vec![Code::WordUnknown],
        Kind::Text => Vec::new(),
        Kind::Bytes if port.need == Need::Required => vec![Code::NullPointer],
        Kind::Bytes => vec![Code::NotBase64],
        Kind::Table(table) => table.columns.iter().flat_map(port_codes).collect(),
        Kind::Record(_) => vec![Code::NullPointer],
    }
}

/// The inputs of a row's example.
pub(in crate::generate) fn example(row: &Operation) -> Map<String, Json> {
    object(row, row.example)
}

fn changed(row: &Operation, change: &str) -> Map<String, Json> {
    let mut inputs = example(row);
    inputs.extend(object(row, change));
    inputs
}

fn object(row: &Operation, text: &str) -> Map<String, Json> {
    match serde_json::from_str(text) {
        Ok(Json::Object(map)) => map,
        _ => panic!("{}: {text} is no object", row.name),
    }
}

/// The answer to the example.
pub(in crate::generate) fn answer(row: &'static Operation) -> Result<Answer> {
    call::invoke(row, decode::decode(row, &example(row), None)?)
}
