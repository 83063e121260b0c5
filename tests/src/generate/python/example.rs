//! The example of a row as a session that the tests run.

use super::{Module, names};
use overslab::failure::Result;
use overslab::operation::{Answer, Kind, Operation, Port, Value, call, decode};
use overslab::quantity::System;
use serde_json::Value as Json;

/// The lines of the session: the call, and what one of its results is.
pub(super) fn lines(module: &Module, operation: &Operation) -> Vec<String> {
    let mut lines = vec![format!(">>> from {} import {}", module.path(), names::python(operation.name))];
    lines.extend(call_lines(operation));
    lines.extend(shown(operation));
    lines
}

/// `answer = function(port=value, ...)`, broken where one line is too short.
fn call_lines(operation: &Operation) -> Vec<String> {
    let Ok(Json::Object(example)) = serde_json::from_str(operation.example) else { return Vec::new() };
    let arguments = example.iter().map(|(name, value)| (format!("{}=", names::python(name)), value));
    let front = format!("answer = {}(", names::python(operation.name));
    let lines = broken(&front, arguments.collect(), ")", 0);
    let prompts = std::iter::once(">>> ").chain(std::iter::repeat("... "));
    prompts.zip(lines).map(|(prompt, line)| format!("{prompt}{line}")).collect()
}

/// The width of a line of code.
const WIDTH: usize = 88;

/// Parts between a front and an end: on one line if they fit there, else a part a line.
fn broken(front: &str, parts: Vec<(String, &Json)>, end: &str, deep: usize) -> Vec<String> {
    let indent = " ".repeat(deep);
    let one: Vec<String> = parts.iter().map(|(name, value)| format!("{name}{}", literal(value))).collect();
    let one = format!("{indent}{front}{}{end}", one.join(", "));
    if one.len() <= WIDTH || parts.is_empty() {
        return vec![one];
    }
    let mut lines = vec![format!("{indent}{front}")];
    for (name, value) in parts {
        let deeper = deep + 4;
        lines.extend(match value {
            Json::Array(items) => {
                let items = items.iter().map(|item| (String::new(), item)).collect();
                broken(&format!("{name}["), items, "],", deeper)
            }
            Json::Object(map) => {
                let pairs = map.iter().map(|(key, value)| (format!("{}: ", names::quoted(key)), value));
                broken(&format!("{name}{{"), pairs.collect(), "},", deeper)
            }
            plain => vec![format!("{}{name}{},", " ".repeat(deeper), literal(plain))],
        });
    }
    lines.push(format!("{indent}{end}"));
    lines
}

/// A value of JSON as Python writes it.
fn literal(json: &Json) -> String {
    let joined = |parts: Vec<String>| parts.join(", ");
    match json {
        Json::Null => "None".to_owned(),
        Json::Bool(true) => "True".to_owned(),
        Json::Bool(false) => "False".to_owned(),
        Json::Number(number) => number.to_string(),
        Json::String(text) => names::quoted(text),
        Json::Array(items) => format!("[{}]", joined(items.iter().map(literal).collect())),
        Json::Object(map) => {
            let pair = |(key, value): (&String, &Json)| format!("{}: {}", names::quoted(key), literal(value));
            format!("{{{}}}", joined(map.iter().map(pair).collect()))
        }
    }
}

/// The first plain result, asked for and answered.
fn shown(operation: &Operation) -> Vec<String> {
    let Ok(answer) = answer(operation) else { return Vec::new() };
    let (ports, values) = match (operation.makes(), answer.results.first()) {
        (Some(record), Some(Value::Record(made))) => {
            (record.fields, (record.get)(made.as_ref()).unwrap_or_default())
        }
        _ => (operation.results, answer.results),
    };
    ports.iter().zip(&values).find_map(|(port, value)| plain(port, value)).unwrap_or_default()
}

fn answer(operation: &Operation) -> Result<Answer> {
    let Ok(Json::Object(example)) = serde_json::from_str(operation.example) else {
        return Ok(Answer::default());
    };
    // The table holds the operation for ever; here it is only borrowed.
    let Some(operation) = overslab::operations::find(operation.name) else { return Ok(Answer::default()) };
    call::invoke(operation, decode::decode(operation, &example, None)?)
}

fn plain(port: &Port, value: &Value) -> Option<Vec<String>> {
    let (name, ..) = names::attributes(port).into_iter().next()?;
    match (&port.kind, value) {
        (Kind::Number(kind), Value::Number(base)) => {
            let (digits, rounded) = rounded((kind.unit(System::Us).from_base)(*base))?;
            Some(vec![format!(">>> round(answer.{name}, {digits})"), rounded])
        }
        (_, Value::Count(count)) => Some(vec![format!(">>> answer.{name}"), count.to_string()]),
        (Kind::Choice(words), Value::Choice(place)) => {
            Some(vec![format!(">>> answer.{name}"), format!("'{}'", words.get(*place)?)])
        }
        _ => None,
    }
}

/// The number to four decimals, or as many as show four digits, the way Python shows it.
fn rounded(number: f64) -> Option<(usize, String)> {
    let size = if number == 0.0 { 0.0 } else { number.abs().log10().floor() };
    let digits = if size < 0.0 { (3.0 - size) as usize } else { 4 };
    let rounded: f64 = format!("{number:.digits$}").parse().ok()?;
    (size > -5.0 && size < 15.0).then(|| (digits, format!("{rounded:?}")))
}
