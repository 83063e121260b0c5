//! One operation.

use super::grid;
use crate::generate::c::doc;
use crate::generate::calc::names::shown;
use crate::generate::words;
use overslab::operation::{Kind, Need, Operation, Port, encode};
use overslab::quantity::System;
use serde_json::{Map, Value as Json, json};
use std::fmt::Write;

pub(super) fn section(row: &'static Operation) -> String {
    let mut text = format!("\n### {}\n\n{}\n\n", row.name, row.meaning);
    let _ = writeln!(text, "- Equation: {}", row.equation);
    let _ = writeln!(text, "- Taken for granted: {}", row.assumes);
    for basis in row.basis {
        let _ = writeln!(text, "- Basis: {}", basis.line());
    }
    let _ = writeln!(text, "- Names: {}", names(row));
    let codes: Vec<String> = doc::codes(row).iter().map(|code| format!("`{}`", code.name())).collect();
    let _ = writeln!(text, "- Refuses with: {}", codes.join(", "));
    let _ = writeln!(text, "- Since {}\n", row.since);
    let ports: Vec<Vec<String>> = row.ports.iter().map(port).collect();
    text.push_str(&grid(&["Takes", "Unit", "Meaning", "May be", "Left out"], &ports));
    text.push('\n');
    let results: Vec<Vec<String>> = row.results.iter().map(result).collect();
    text.push_str(&grid(&["Gives", "Unit", "Meaning"], &results));
    text.push_str(&example(row));
    text
}

fn names(row: &Operation) -> String {
    let mut names = System::ALL.map(|system| format!("`ovs_{}_{}`", row.name, system.word())).to_vec();
    names.extend(System::ALL.map(|system| format!("`{}`", shown(row.name, system))));
    names.push(format!("`overslab.{}.{}`", row.module, row.name));
    names.join(", ")
}

fn port(port: &Port) -> Vec<String> {
    vec![format!("`{}`", port.name), unit(port), meaning(port), may_be(port), left_out(port)]
}

/// A field or a result: what it is called, its unit, what it means.
pub(super) fn result(port: &Port) -> Vec<String> {
    let words = match &port.kind {
        Kind::Choice(words) => format!("; {}", numbered(words)),
        Kind::Table(table) => format!("; a row is {}", table.meaning),
        _ => String::new(),
    };
    vec![format!("`{}`", port.name), unit(port), port.meaning.to_owned() + &words]
}

fn unit(port: &Port) -> String {
    match &port.kind {
        Kind::Number(kind) if kind.us == kind.si => kind.us.symbol.to_owned(),
        Kind::Number(kind) => format!("{} or {}", kind.us.symbol, kind.si.symbol),
        Kind::Count(..) => "count".to_owned(),
        Kind::Choice(_) => "word".to_owned(),
        Kind::Text => "text".to_owned(),
        Kind::Bytes => "bytes".to_owned(),
        Kind::Table(table) => format!("table: {}", columns(table.columns)),
        Kind::Record(record) => format!("record: [{0}](#record-{0})", record.name),
    }
}

fn columns(ports: &[Port]) -> String {
    let column = |port: &Port| {
        let name = match &port.kind {
            Kind::Number(_) => format!("`{}` ({})", port.name, unit(port)),
            _ => format!("`{}`", port.name),
        };
        if port.need == Need::Required { name } else { format!("[{name}]") }
    };
    ports.iter().map(column).collect::<Vec<_>>().join(", ")
}

fn meaning(port: &Port) -> String {
    match words::zero(port, System::Us) {
        Some(_) => format!("{}; no lone zero", port.meaning),
        None => port.meaning.to_owned(),
    }
}

fn may_be(port: &Port) -> String {
    match &port.kind {
        Kind::Number(kind) => {
            let [us, si] = System::ALL.map(|system| doc::range(kind, system));
            if us == si { us } else { format!("{us} ({si})") }
        }
        Kind::Count(least, greatest) => format!("{least} to {greatest}"),
        Kind::Choice(words) => numbered(words),
        Kind::Text => "any text".to_owned(),
        Kind::Bytes => {
            "any bytes; where text is handed over the text itself, or `base64:` and the bytes in base64"
                .to_owned()
        }
        Kind::Table(table) => {
            let each: Vec<String> = table.columns.iter().filter_map(column_may_be).collect();
            let least = match table.least_rows {
                0 => "any number of rows".to_owned(),
                least => format!("at least {least} rows"),
            };
            [vec![least, format!("a row is {}", table.meaning)], each].concat().join("; ")
        }
        Kind::Record(_) => "any".to_owned(),
    }
}

fn column_may_be(port: &Port) -> Option<String> {
    match port.kind {
        Kind::Text => None,
        _ => Some(format!("`{}` {}", port.name, may_be(port))),
    }
}

/// The words of a choice with the numbers that C takes for them.
fn numbered(words: &[&str]) -> String {
    words.iter().enumerate().map(|(place, word)| format!("{place} {word}")).collect::<Vec<_>>().join(", ")
}

fn left_out(port: &Port) -> String {
    match port.need {
        Need::Required => "refused".to_owned(),
        Need::Optional => "nothing is taken".to_owned(),
        Need::Fallback { value, why } => format!("`{value}`: {why}"),
    }
}

fn example(row: &'static Operation) -> String {
    let given = Json::Object(doc::example(row));
    let mut text = format!("\nExample, in JSON:\n\n```json\n{given}\n```\n");
    if let Ok(answer) = doc::answer(row) {
        let answer = encode::answer(row, &answer, System::Us);
        let results = short(answer.get("results").cloned().unwrap_or_default()).to_string();
        // A whole record says nothing here that its own section does not.
        if results.len() <= 400 {
            let _ = writeln!(text, "\nGives in US units:\n\n```json\n{results}\n```");
        }
    }
    text
}

/// The same with numbers of at most ten digits: the last of a change of units are noise to a reader.
fn short(json: Json) -> Json {
    match json {
        Json::Number(number) => match number.as_f64() {
            Some(float) if !number.is_i64() => json!(format!("{float:.9e}").parse().unwrap_or(float)),
            _ => Json::Number(number),
        },
        Json::Array(list) => list.into_iter().map(short).collect(),
        Json::Object(map) => {
            map.into_iter().map(|(key, value)| (key, short(value))).collect::<Map<_, _>>().into()
        }
        other => other,
    }
}
