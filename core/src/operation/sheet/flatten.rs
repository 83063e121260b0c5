//! A JSON object as rows of path | value, which [`unflatten`](super::unflatten) reads back.

use super::path::below;
use super::paths::cell_text;
use serde_json::{Value as Json, json};

/// A JSON object as rows of path | value.
#[must_use]
pub fn flatten(json: &Json) -> Vec<Vec<Json>> {
    let mut rows = Vec::new();
    walk(json, String::new(), &mut rows);
    rows
}

fn walk(json: &Json, path: String, rows: &mut Vec<Vec<Json>>) {
    match json {
        Json::Object(map) if !map.is_empty() => {
            for (key, value) in map {
                walk(value, below(&path, key), rows);
            }
        }
        Json::Array(list) if !list.is_empty() => {
            for (index, value) in list.iter().enumerate() {
                walk(value, format!("{path}[{index}]"), rows);
            }
        }
        Json::String(text) => rows.push(vec![json!(path), json!(cell_text(text))]),
        Json::Number(number) => rows.push(vec![json!(path), json!(number)]),
        other => rows.push(vec![json!(path), json!(other.to_string())]),
    }
}
