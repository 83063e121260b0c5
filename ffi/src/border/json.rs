//! JSON at the border: a text that must be one object, and an operation by its name.

use overslab::failure::{Code, Failure, Result, nearest};
use overslab::operation::{Operation, json_text};
use overslab::operations::{all, find};
use serde_json::{Map, Value as Json};

/// The object in a text; the empty text is the empty object.
///
/// # Errors
/// `SYNTAX`, `KIND_MISMATCH`.
pub(crate) fn object(path: &str, text: &str) -> Result<Map<String, Json>> {
    match whole(path, text)? {
        Json::Null => Ok(Map::new()),
        Json::Object(map) => Ok(map),
        _ => Err(Failure::new(Code::KindMismatch, path)
            .written("JSON of another kind")
            .allowed("an object: {\"name\": value}")
            .remedy("put the values into an object")),
    }
}

/// The JSON in a text; the empty text is null.
///
/// # Errors
/// `SYNTAX` or `KEY_REPEATED`, with the line.
pub(crate) fn whole(path: &str, text: &str) -> Result<Json> {
    if text.trim().is_empty() {
        return Ok(Json::Null);
    }
    json_text::read(text).map_err(|failure| failure.under(path))
}

/// The operation of that name.
///
/// # Errors
/// `OPERATION_UNKNOWN`, with the nearest name.
pub(crate) fn row_of(name: &str) -> Result<&'static Operation> {
    find(name).ok_or_else(|| {
        let rows = all();
        let remedy = match nearest(name, rows.iter().map(|row| row.name)) {
            Some(near) => format!("did you mean {near}?"),
            None => "use a name of the table, without ovs_ and _us or _si".to_owned(),
        };
        Failure::new(Code::OperationUnknown, "operation").written(format!("\"{name}\"")).remedy(remedy)
    })
}
