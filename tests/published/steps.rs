//! The steps of a case: operations of the table in order, each with inputs whose keys carry their unit.

use super::key::port_of;
use overslab::operation::{Answer, Kind, Operation, Port, Value, call, decode};
use overslab::operations::find;
use overslab_tests::generate::root;
use serde_json::{Map, Value as Json};

/// A step that was run.
pub(super) struct Ran {
    pub(super) name: String,
    pub(super) operation: &'static Operation,
    pub(super) answer: Answer,
}

/// Runs all steps of a case.
pub(super) fn run(case: &Json) -> Result<Vec<Ran>, String> {
    let mut ran: Vec<Ran> = Vec::new();
    for step in case["steps"].as_array().into_iter().flatten() {
        let name = step["operation"].as_str().ok_or("a step without operation")?;
        let operation = find(name).ok_or_else(|| format!("no operation is called {name}"))?;
        let inputs = step["inputs"].as_object().ok_or_else(|| format!("{name} has no inputs"))?;
        let answer = values(operation, inputs, &ran)
            .and_then(|values| call::invoke(operation, values).map_err(|failure| failure.to_string()))
            .map_err(|problem| format!("{name}: {problem}"))?;
        let name = step["as"].as_str().unwrap_or(name).to_owned();
        ran.push(Ran { name, operation, answer });
    }
    Ok(ran)
}

fn values(
    operation: &'static Operation,
    inputs: &Map<String, Json>,
    ran: &[Ran],
) -> Result<Vec<Value>, String> {
    let mut json = Map::new();
    let mut earlier = Vec::new();
    for (key, given) in inputs {
        if let Some(reference) = given.as_str().and_then(|text| text.strip_prefix('=')) {
            let place = operation.port(key).ok_or_else(|| format!("no port is called {key}"))?;
            earlier.push((place, result(ran, reference)?));
            continue;
        }
        match key.as_str() {
            "text_file" => drop(json.insert("text".to_owned(), Json::String(text(given, inputs)?))),
            "text_edits" => {}
            _ => {
                let (name, given) = plain(key, given, operation.ports)?;
                json.insert(name, given);
            }
        }
    }
    let mut values = decode::decode(operation, &json, None).map_err(|failure| failure.to_string())?;
    for (place, value) in earlier {
        values[place] = value;
    }
    Ok(values)
}

/// The text of a file of the repository, with the edits that the case asks for.
fn text(file: &Json, inputs: &Map<String, Json>) -> Result<String, String> {
    let path = root().join(file.as_str().ok_or("text_file is no text")?);
    let mut text = std::fs::read_to_string(&path).map_err(|error| format!("{}: {error}", path.display()))?;
    for edit in inputs.get("text_edits").and_then(Json::as_array).into_iter().flatten() {
        let (from, to) = (edit[0].as_str().unwrap_or_default(), edit[1].as_str().unwrap_or_default());
        if text.matches(from).count() != 1 {
            return Err(format!("{from:?} does not stand once in the text"));
        }
        text = text.replace(from, to);
    }
    Ok(text)
}

/// A key and its value as the table reads them: the unit goes from the key to the text.
fn plain(key: &str, given: &Json, ports: &[Port]) -> Result<(String, Json), String> {
    let (port, unit) = port_of(key, ports)?;
    let value = match (port.kind, unit) {
        (_, Some(unit)) => with_unit(given, unit.symbol),
        (Kind::Table(table), _) => match given {
            Json::Array(rows) => {
                let rows = rows.iter().map(|row| members(row, table.columns).map(Json::Object));
                Json::Array(rows.collect::<Result<_, _>>()?)
            }
            columns => Json::Object(members(columns, table.columns)?),
        },
        _ => given.clone(),
    };
    Ok((port.name.to_owned(), value))
}

fn members(object: &Json, ports: &[Port]) -> Result<Map<String, Json>, String> {
    let object = object.as_object().ok_or("a row or a table must have names")?;
    object.iter().map(|(key, given)| plain(key, given, ports)).collect()
}

/// A number, or each of a list, as text with its unit.
fn with_unit(given: &Json, symbol: &str) -> Json {
    match given {
        Json::Array(list) => list.iter().map(|one| with_unit(one, symbol)).collect(),
        Json::Number(number) => format!("{number} {symbol}").into(),
        other => other.clone(),
    }
}

/// The result `step.result` of an earlier step.
fn result(ran: &[Ran], reference: &str) -> Result<Value, String> {
    let (step, result) = reference.split_once('.').ok_or_else(|| format!("={reference} names no result"))?;
    let step = ran.iter().find(|ran| ran.name == step).ok_or_else(|| format!("no step is called {step}"))?;
    let place = step.operation.results.iter().position(|port| port.name == result);
    let place = place.ok_or_else(|| format!("={reference}: no such result"))?;
    Ok(step.answer.results[place].clone())
}
