//! What a case expects, looked up in the answers of its steps.

use super::key::port_of;
use super::steps::Ran;
use overslab::operation::call::flat_number;
use overslab::operation::{Column, Kind, Port, Value};
use overslab::quantity::Unit;
use serde_json::Value as Json;

/// What stands at a key.
enum Found {
    Numbers(Vec<f64>),
    Text(String),
}

/// Whether what the steps answer is what is wanted at a key.
pub(super) fn check(ran: &[Ran], key: &str, wanted: &Json) -> Result<(), String> {
    match (find(ran, key)?, wanted.get("text").and_then(Json::as_str)) {
        (Found::Text(found), Some(text)) if found == text => Ok(()),
        (Found::Text(found), Some(text)) => Err(format!("{found:?}, expected {text:?}")),
        (Found::Numbers(found), None) => numbers(&found, wanted),
        _ => Err("a text is held against a number".to_owned()),
    }
}

fn numbers(found: &[f64], wanted: &Json) -> Result<(), String> {
    let values = match &wanted["value"] {
        Json::Array(list) => list.iter().map(Json::as_f64).collect(),
        one => Some(vec![one.as_f64().ok_or("the value is no number")?]),
    };
    let values: Vec<f64> = values.ok_or("a value is no number")?;
    let (abs, rel) = (wanted["abs"].as_f64(), wanted["rel"].as_f64());
    if abs.is_some() == rel.is_some() {
        return Err("give one of abs and rel".to_owned());
    }
    let near = |(found, value): (&f64, &f64)| {
        (found - value).abs() <= abs.unwrap_or_else(|| rel.unwrap_or(0.0) * value.abs())
    };
    if found.len() == values.len() && found.iter().zip(&values).all(near) {
        return Ok(());
    }
    let within = abs.map_or_else(|| format!("{} of it", rel.unwrap_or(0.0)), |abs| abs.to_string());
    Err(format!("{found:?}, expected {values:?} within {within}"))
}

fn find(ran: &[Ran], key: &str) -> Result<Found, String> {
    let (step, rest) = key.split_once('.').ok_or("the key names no result")?;
    if step == "total" {
        let parts = ran.iter().map(|step| match in_step(step, rest)? {
            Found::Numbers(list) => Ok(list.iter().sum::<f64>()),
            Found::Text(_) => Err("a text has no sum".to_owned()),
        });
        return parts.sum::<Result<f64, String>>().map(|sum| Found::Numbers(vec![sum]));
    }
    let step = ran.iter().find(|ran| ran.name == step).ok_or_else(|| format!("no step is called {step}"))?;
    in_step(step, rest)
}

/// `result`, `record.field`, `table.column` or `text:/pointer` of one step.
fn in_step(step: &Ran, rest: &str) -> Result<Found, String> {
    let (results, values) = (step.operation.results, &step.answer.results);
    let value_of = |name: &str| {
        let place = results.iter().position(|port| port.name == name);
        place.map(|place| &values[place]).ok_or_else(|| format!("no result is called {name}"))
    };
    if let Some((name, pointer)) = rest.split_once(':') {
        let Value::Text(text) = value_of(name)? else { return Err(format!("{name} is no text")) };
        let json: Json = serde_json::from_str(text).map_err(|error| error.to_string())?;
        return pointed(&json, pointer);
    }
    let Some((name, part)) = rest.split_once('.') else {
        let (port, unit) = port_of(rest, results)?;
        return single(value_of(port.name)?, unit);
    };
    let kind = results.iter().find(|port| port.name == name).map(|port| port.kind);
    match (kind, value_of(name)?) {
        (Some(Kind::Table(table)), Value::Table(columns)) => {
            let (port, unit) = port_of(part, table.columns)?;
            let place = table.columns.iter().position(|column| column.name == port.name).unwrap_or_default();
            column(&columns.columns[place], unit)
        }
        (Some(Kind::Record(record)), Value::Record(given)) => {
            let fields = (record.get)(given.as_ref()).ok_or("the record is of another type")?;
            let (port, unit) = port_of(part, record.fields)?;
            single(&fields[place_of(record.fields, port)], unit)
        }
        _ => Err(format!("{name} is neither a table nor a record")),
    }
}

fn place_of(ports: &[Port], port: &Port) -> usize {
    ports.iter().position(|known| known.name == port.name).unwrap_or_default()
}

fn single(value: &Value, unit: Option<&'static Unit>) -> Result<Found, String> {
    match (value, unit) {
        (Value::Number(base), Some(unit)) => Ok(Found::Numbers(vec![(unit.from_base)(*base)])),
        (Value::Count(_), None) => Ok(Found::Numbers(vec![flat_number(value)])),
        (Value::Text(text), None) => Ok(Found::Text(text.clone())),
        _ => Err(format!("it is {}", value.kind_word())),
    }
}

fn column(column: &Column, unit: Option<&'static Unit>) -> Result<Found, String> {
    match (column, unit) {
        (Column::Numbers(list), Some(unit)) => {
            Ok(Found::Numbers(list.iter().map(|&base| (unit.from_base)(base)).collect()))
        }
        (Column::Counts(list), None) => Ok(Found::Numbers(
            list.iter().map(|count| count.map_or(f64::NAN, |count| count as f64)).collect(),
        )),
        _ => Err("the column has no numbers".to_owned()),
    }
}

/// A text, a number, or a measure of the report whose US unit stands at the end of the pointer.
fn pointed(json: &Json, pointer: &str) -> Result<Found, String> {
    match json.pointer(pointer) {
        Some(Json::String(text)) => return Ok(Found::Text(text.clone())),
        Some(Json::Number(number)) => return Ok(Found::Numbers(number.as_f64().into_iter().collect())),
        _ => {}
    }
    let measure = pointer.rsplit_once('_').and_then(|(path, unit)| {
        let measure = json.pointer(path)?;
        (measure["us_unit"] == unit).then(|| measure["us"].as_f64()).flatten()
    });
    measure
        .map(|number| Found::Numbers(vec![number]))
        .ok_or_else(|| "nothing stands there in that unit".to_owned())
}
