//! Inputs written as JSON, as the cells that a sheet would hold for them.

use overslab::operation::sheet::flatten;
use overslab::operation::{Kind, Operation, Port, TableType};
use serde_json::{Map, Value as Json, json};

/// The arguments in the order of the ports; those not given at the end are not there. `None` where a sheet has no place for
/// an input: it has no port of that name.
#[must_use]
pub fn arguments(row: &Operation, inputs: &Map<String, Json>) -> Option<Vec<Json>> {
    if inputs.keys().any(|key| row.port(key).is_none()) {
        return None;
    }
    let given =
        row.ports.iter().map(|port| inputs.get(port.name).map_or(Json::Null, |json| argument(port, json)));
    let mut cells: Vec<Json> = given.collect();
    while cells.last().is_some_and(Json::is_null) {
        cells.pop();
    }
    Some(cells)
}

fn argument(port: &Port, json: &Json) -> Json {
    match (&port.kind, json) {
        (Kind::Table(table), Json::Array(rows)) if rows.iter().all(Json::is_object) => by_rows(table, rows),
        (Kind::Table(table), Json::Object(columns)) => by_columns(table, columns),
        (Kind::Record(_), Json::Object(_)) => json!(flatten(json)),
        _ => json.clone(),
    }
}

fn by_rows(table: &TableType, rows: &[Json]) -> Json {
    let mut names: Vec<&str> = Vec::new();
    for key in rows.iter().filter_map(Json::as_object).flat_map(Map::keys) {
        if !names.contains(&key.as_str()) {
            names.push(key);
        }
    }
    if rows.is_empty() {
        names = table.columns.iter().map(|port| port.name).collect();
    }
    let row =
        |row: &Json| names.iter().map(|name| row.get(name).cloned().unwrap_or_default()).collect::<Json>();
    std::iter::once(json!(names)).chain(rows.iter().map(row)).collect()
}

fn by_columns(table: &TableType, columns: &Map<String, Json>) -> Json {
    let lists: Vec<&Vec<Json>> = columns.values().filter_map(Json::as_array).collect();
    let length = lists.iter().map(|list| list.len()).max().unwrap_or(0);
    let cell = |row: usize, name: &str| {
        columns.get(name).and_then(|list| list.get(row)).cloned().unwrap_or_default()
    };
    let rows: Vec<Json> = (0..length)
        .map(|row| columns.keys().map(|name| (name.clone(), cell(row, name))).collect::<Map<_, _>>().into())
        .collect();
    by_rows(table, &rows)
}
