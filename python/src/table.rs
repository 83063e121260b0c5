//! The table of operations as plain Python data: `overslab.OPERATIONS`.

use overslab::operation::{Kind, Need, NumberKind, Operation, Port};
use overslab::operations::all;
use overslab::quantity::{System, Unit};
use pyo3::prelude::*;
use serde_json::{Map, Value as Json, json};

/// Every operation by its name, in the order of the table.
pub(crate) fn operations(py: Python<'_>) -> PyResult<Bound<'_, PyAny>> {
    let rows: Map<String, Json> = all().iter().map(|row| (row.name.to_owned(), operation(row))).collect();
    py.import("json")?.getattr("loads")?.call1((Json::Object(rows).to_string(),))
}

fn operation(row: &Operation) -> Json {
    json!({
        "name": row.name,
        "module": row.module,
        "since": row.since,
        "meaning": row.meaning,
        "equation": row.equation,
        "assumes": row.assumes,
        "scalar": row.is_scalar(),
        "ports": ports(row.ports),
        "results": ports(row.results),
        "basis": row.basis.iter().map(|basis| json!({ "name": basis.name(), "says": basis.line() })).collect::<Vec<_>>(),
        "example": text(row.example),
        "refusals": row.refusals.iter()
            .map(|(change, code)| json!({ "change": text(change), "code": code.number(), "name": code.name() }))
            .collect::<Vec<_>>(),
    })
}

/// A test of the engine reads every such text.
fn text(json: &str) -> Json {
    serde_json::from_str(json).unwrap_or_default()
}

fn ports(list: &[Port]) -> Json {
    list.iter().map(port).collect()
}

fn port(port: &Port) -> Json {
    let mut row =
        json!({ "name": port.name, "meaning": port.meaning, "required": port.need == Need::Required });
    if let Need::Fallback { value, why } = port.need {
        row["taken"] = json!({ "value": value, "why": why });
    }
    match &port.kind {
        Kind::Number(kind) => number(&mut row, port, kind),
        Kind::Count(least, greatest) => {
            row["kind"] = json!("count");
            row["least"] = json!(least);
            row["greatest"] = json!(greatest);
        }
        Kind::Choice(words) => {
            row["kind"] = json!("choice");
            row["words"] = json!(words);
        }
        Kind::Text => row["kind"] = json!("text"),
        Kind::Bytes => row["kind"] = json!("bytes"),
        Kind::Table(table) => {
            row["kind"] = json!("table");
            row["row"] = json!(table.meaning);
            row["least_rows"] = json!(table.least_rows);
            row["columns"] = ports(table.columns);
        }
        Kind::Record(record) => {
            row["kind"] = json!("record");
            row["record"] = json!(record.name);
            row["class_name"] = json!(record.class);
            row["fields"] = ports(record.fields);
        }
    }
    row
}

fn number(row: &mut Json, port: &Port, kind: &NumberKind) {
    row["kind"] = json!("number");
    row["quantity"] = json!(kind.quantity.name);
    row["symbols"] = kind.quantity.units.iter().map(|unit| unit.symbol).collect();
    for system in System::ALL {
        row[system.word()] = in_unit(port, kind, system);
    }
}

fn in_unit(port: &Port, kind: &NumberKind, system: System) -> Json {
    let unit: &Unit = kind.unit(system);
    // An open end is null, as an infinity is no JSON.
    let bound = |base: f64| base.is_finite().then(|| (unit.from_base)(base));
    json!({
        "name": port.unit_name(system),
        "unit": unit.symbol,
        "least": bound(kind.range.least),
        "greatest": bound(kind.range.greatest),
        "open": kind.range.open,
        "range": kind.range.words(unit),
    })
}
