//! Rows of path | value | unit as a JSON object.

use super::cell::{Cell, Cells};
use super::node::Node;
use super::path::{is_title, parse};
use crate::failure::{Code, Failure, Place, Result};
use crate::quantity::write::shortest;
use serde_json::{Value as Json, json};

/// Builds a JSON object from rows of path | value | unit. A row with more columns holds a list of values: path | values... |
/// unit. A title row `path | value | unit` and empty rows are passed over.
///
/// A text is taken as it stands, but for `true`, `false`, `null`, `[]` and `{}`; between double quotes it is read as a JSON
/// text, so that each of these can be written as a text too.
///
/// # Errors
/// A path that cannot be read, a value without a path, one path given twice, a list with gaps.
pub fn unflatten(cells: &Cells) -> Result<Json> {
    let mut root = Node::Gap;
    for (index, row) in cells.iter().enumerate() {
        let Some((first, rest)) = row.split_first() else { continue };
        let at = Place::Cell(index + 1, 1);
        let path = match first {
            Cell::Empty if rest.iter().all(Cell::is_empty) => continue,
            Cell::Text(path) if index == 0 && is_title(path) => continue,
            Cell::Text(path) => path.trim(),
            _ => return Err(no_path(first).at(at)),
        };
        let steps = parse(path).ok_or_else(|| no_path(first).at(at))?;
        let value = row_value(rest)
            .map_err(|failure| failure.under(path).at(Place::Cell(index + 1, 2)))?
            .ok_or_else(|| no_value(path).at(Place::Cell(index + 1, 2)))?;
        root.put(&steps, value).map_err(|failure| failure.under(path).at(at))?;
    }
    match root {
        Node::Gap => Ok(json!({})),
        root => root.into_json(""),
    }
}

fn no_path(cell: &Cell) -> Box<Failure> {
    Failure::new(Code::Syntax, "")
        .written(cell.written())
        .allowed("a path such as level.rows[0].y in the first column")
        .remedy("write the path of the value")
}

fn no_value(path: &str) -> Box<Failure> {
    Failure::new(Code::EmptyCell, path).allowed("a value").remedy("fill the cell, or empty the whole row")
}

/// The value of a row: one value, or a list where the row has more than value and unit.
fn row_value(rest: &[Cell]) -> Result<Option<Json>> {
    match rest {
        [] => Ok(None),
        [value] => with_unit(value, &Cell::Empty),
        [value, unit] => with_unit(value, unit),
        [values @ .., unit] => {
            let Some(last) = values.iter().rposition(|cell| !cell.is_empty()) else { return Ok(None) };
            if last == 0 {
                return with_unit(&values[0], unit);
            }
            let gap =
                || Failure::new(Code::EmptyCell, "").allowed("a value").remedy("fill the gap in the list");
            let each = values[..=last].iter().map(|cell| with_unit(cell, unit)?.ok_or_else(gap));
            each.collect::<Result<Vec<_>>>().map(|list| Some(Json::Array(list)))
        }
    }
}

/// A number with its unit becomes text, exactly.
fn with_unit(value: &Cell, unit: &Cell) -> Result<Option<Json>> {
    let unit = match unit {
        Cell::Empty => None,
        Cell::Text(unit) => Some(unit.trim()),
        other => {
            return Err(Failure::new(Code::KindMismatch, "")
                .written(other.written())
                .allowed("a unit, or nothing, in the last column")
                .remedy("write the unit"));
        }
    };
    Ok(match (value, unit) {
        (Cell::Empty, _) => None,
        (Cell::Number(number), Some(unit)) => Some(json!(format!("{} {unit}", shortest(*number)))),
        (Cell::Number(number), None) => Some(plain_number(*number)),
        (Cell::Truth(truth), None) => Some(json!(truth)),
        (Cell::Text(text), Some(unit)) if is_bare(text) => Some(json!(format!("{} {unit}", text.trim()))),
        (Cell::Text(text), None) => Some(text_value(text)),
        (value, Some(unit)) => {
            return Err(Failure::new(Code::Contradiction, "")
                .written(format!("{} and the unit {unit}", value.written()))
                .allowed("a unit behind a number")
                .remedy("leave the unit out"));
        }
    })
}

fn plain_number(number: f64) -> Json {
    if number.fract() == 0.0 && number.abs() < 9.0e15 { json!(number as i64) } else { json!(number) }
}

/// Whether a text is a number without a unit, such as `3 1/2`.
fn is_bare(text: &str) -> bool {
    let part =
        |c: char| c.is_ascii_digit() || matches!(c, ' ' | '.' | ',' | '/' | '-' | '+' | '\u{bc}'..='\u{be}');
    text.trim().chars().all(part)
}

/// What a text stands for.
fn text_value(text: &str) -> Json {
    match text.trim() {
        "true" => json!(true),
        "false" => json!(false),
        "null" => Json::Null,
        "[]" => json!([]),
        "{}" => json!({}),
        quoted if quoted.starts_with('"') => {
            serde_json::from_str::<String>(quoted).map_or_else(|_| json!(text), Json::String)
        }
        _ => json!(text),
    }
}

/// A text as a cell that [`text_value`] reads back.
pub(super) fn cell_text(text: &str) -> String {
    let odd = text.trim() != text || text.is_empty() || text.chars().any(char::is_control);
    let read = text_value(text);
    if odd || read.as_str() != Some(text) { Json::from(text).to_string() } else { text.to_owned() }
}
