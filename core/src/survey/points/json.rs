//! Points as JSON: columns of numbers in one unit that is named, as a million points as texts would be too long; or columns
//! of texts, each with its own unit, for points written by hand.
//!
//! ```json
//! {"unit": "m", "x": [0, 3.5], "y": [0, 2], "elevation": [30.1, 30.2], "name": ["A", null]}
//! ```

use super::Points;
use super::record::{COORDINATE, MOST};
use crate::failure::{Code, Failure, Result};
use crate::operation::Choice;
use crate::operation::choice::place_of;
use crate::operation::decode::unknown_key;
use crate::quantity::{QuantityType, kinds, read_kind};
use crate::survey::read::FileUnit;
use serde_json::{Map, Value as Json, json};

const KEYS: [&str; 5] = ["unit", "x", "y", "elevation", "name"];

/// The canonical form: metres.
pub(super) fn write(points: &Points) -> Json {
    let mut json = json!({ "unit": "m", "x": points.x, "y": points.y, "elevation": points.z });
    if !points.names.is_empty() {
        json["name"] = json!(points.names);
    }
    json
}

/// The points of that JSON.
///
/// # Errors
/// A key that is not known or missing, a column of another length, a number without a unit, not finite or out of range.
pub(super) fn read(json: Json) -> Result<Points> {
    let Json::Object(map) = json else { return Err(wrong("", &json, "an object of columns")) };
    if let Some(key) = map.keys().find(|key| !KEYS.contains(&key.as_str())) {
        return Err(unknown_key(key, KEYS.into_iter()));
    }
    let unit = unit(&map)?;
    let x = axis(&map, "x", &kinds::length, unit)?;
    let y = axis(&map, "y", &kinds::length, unit)?;
    let z = axis(&map, "elevation", &kinds::elevation, unit)?;
    let names = names(&map)?;
    for (key, length) in [("y", y.len()), ("elevation", z.len()), ("name", names.len())] {
        if length != x.len() && !(key == "name" && length == 0) {
            return Err(Failure::new(Code::LengthMismatch, key)
                .written(format!("{length} values"))
                .allowed(format!("{} values, as x", x.len()))
                .remedy("give every column the same rows"));
        }
    }
    if x.is_empty() || x.len() as i64 > MOST {
        return Err(Failure::new(if x.is_empty() { Code::EmptyList } else { Code::OutOfRange }, "x")
            .written(format!("{} points", x.len()))
            .allowed(format!("from 1 to {MOST} points"))
            .remedy("give the points"));
    }
    Ok(Points { x, y, z, names })
}

fn unit(map: &Map<String, Json>) -> Result<Option<FileUnit>> {
    match map.get("unit") {
        None | Some(Json::Null) => Ok(None),
        Some(Json::String(word)) => place_of(word, FileUnit::WORDS, "unit").map(FileUnit::at),
        Some(other) => Err(wrong("unit", other, &FileUnit::WORDS.join(", "))),
    }
}

fn axis(
    map: &Map<String, Json>,
    key: &str,
    quantity: &'static QuantityType,
    unit: Option<FileUnit>,
) -> Result<Vec<f64>> {
    let cells = list(map, key)?.ok_or_else(|| {
        Failure::new(Code::KeyMissing, key)
            .written("nothing")
            .allowed("a column of numbers or of texts with their unit")
            .remedy(format!("give {key}"))
    })?;
    let mut axis = Vec::with_capacity(cells.len());
    for (row, cell) in cells.iter().enumerate() {
        let metres = coordinate(cell, quantity, unit)
            .map_err(|failure| failure.under(&format!("[{row}]")).under(key))?;
        axis.push(metres);
    }
    Ok(axis)
}

fn coordinate(cell: &Json, quantity: &'static QuantityType, unit: Option<FileUnit>) -> Result<f64> {
    let metres = match cell {
        Json::String(text) => read_kind(text, quantity, None)?.base,
        Json::Number(number) => match (unit, number.as_f64()) {
            (Some(unit), Some(number)) => unit.metres(number),
            // It is refused, as a number without its unit.
            _ => read_kind(&number.to_string(), quantity, None)?.base,
        },
        Json::Null => {
            return Err(Failure::new(Code::EmptyCell, "")
                .written("nothing")
                .allowed("a coordinate")
                .remedy("fill the cell, or leave the point out"));
        }
        other => return Err(wrong("", other, "a number, or a text with its unit")),
    };
    if COORDINATE.allows(metres) {
        Ok(metres)
    } else {
        Err(Failure::refused("", metres, COORDINATE, quantity))
    }
}

fn names(map: &Map<String, Json>) -> Result<Vec<Option<String>>> {
    let Some(cells) = list(map, "name")? else { return Ok(Vec::new()) };
    let name = |(row, cell): (usize, &Json)| match cell {
        Json::Null => Ok(None),
        Json::String(name) => Ok(Some(name.clone())),
        other => Err(wrong(&format!("name[{row}]"), other, "a text")),
    };
    let names: Vec<Option<String>> = cells.iter().enumerate().map(name).collect::<Result<_>>()?;
    Ok(names)
}

fn list<'a>(map: &'a Map<String, Json>, key: &str) -> Result<Option<&'a Vec<Json>>> {
    match map.get(key) {
        None | Some(Json::Null) => Ok(None),
        Some(Json::Array(cells)) => Ok(Some(cells)),
        Some(other) => Err(wrong(key, other, "a list")),
    }
}

/// The failure for a value of another kind.
pub(super) fn wrong(path: &str, given: &Json, allowed: &str) -> Box<Failure> {
    let text = given.to_string();
    let text = match text.char_indices().nth(40) {
        Some((end, _)) => format!("{}...", &text[..end]),
        None => text,
    };
    Failure::new(Code::KindMismatch, path)
        .written(text)
        .allowed(allowed)
        .remedy("give the kind of value named")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::operation::json_text;

    fn code(text: &str) -> (Code, String) {
        let failure = read(json_text::read(text).unwrap()).unwrap_err();
        assert!(!failure.remedy.is_empty(), "{failure}");
        (failure.code, failure.path.clone())
    }

    #[test]
    fn points_come_back_from_their_json_to_the_bit() {
        let points = Points {
            x: vec![0.1 + 0.2, -1.0e9, 1.0e-300],
            y: vec![1.0 / 3.0, 5.0e-324, 0.0],
            z: vec![30.0, -0.0, 2.0_f64.sqrt()],
            names: vec![Some("A 1".to_owned()), None, Some(String::new())],
        };
        let text = write(&points).to_string();
        let again = read(json_text::read(&text).unwrap()).unwrap();
        assert_eq!(again, points);
        assert!(again.z[1].is_sign_negative());
    }

    #[test]
    fn numbers_are_in_the_unit_named_and_texts_in_their_own() {
        let json = r#"{"unit": "ft", "x": [1, "1 m"], "y": [2, "6 in"], "elevation": ["99' 6\"", 3.5]}"#;
        let points = read(json_text::read(json).unwrap()).unwrap();
        assert_eq!((points.x[0], points.x[1]), (0.3048, 1.0));
        assert_eq!((points.y[1], points.z[0], points.z[1]), (6.0 * 0.0254, 99.5 * 0.3048, 3.5 * 0.3048));
        assert!(points.names.is_empty());
    }

    #[test]
    fn what_is_wrong_is_named_by_column_and_row() {
        let whole = |x: &str| format!(r#"{{"unit": "m", "x": {x}, "y": [1, 2], "elevation": [1, 2]}}"#);
        let at = |row| format!("x[{row}]");
        for (x, expected, path) in [
            ("[1, null]", Code::EmptyCell, at(1)),
            ("[1e10, 1]", Code::OutOfRange, at(0)),
            ("[1, \"2\"]", Code::UnitMissing, at(1)),
            ("[1, \"2 psi\"]", Code::UnitWrong, at(1)),
            ("[1, true]", Code::KindMismatch, at(1)),
            ("3", Code::KindMismatch, "x".to_owned()),
            ("null", Code::KeyMissing, "x".to_owned()),
        ] {
            assert_eq!(code(&whole(x)), (expected, path), "{x}");
        }
        assert_eq!(code(&whole("[1]")).0, Code::LengthMismatch);
        assert_eq!(code(&whole("[1, 2]").replace("\"m\"", "null")).0, Code::UnitMissing);
        assert_eq!(code(&whole("[1, 2]").replace("\"m\"", "\"furlong\"")).0, Code::WordUnknown);
        assert_eq!(code(&whole("[1, 2]").replace("\"y\"", "\"z\"")).0, Code::KeyUnknown);
        assert_eq!(code(r#"{"unit": "m", "x": [], "y": [], "elevation": []}"#).0, Code::EmptyList);
        assert_eq!(code("[1]").0, Code::KindMismatch);
    }
}
