//! A JSON object as rows of path | value | unit, and back.

use super::{Cell, Cells};
use crate::failure::{Code, Failure, Place, Result};
use crate::quantity::write::shortest;
use serde_json::{Map, Value as Json, json};

/// One step of a path: a key, or a place in a list.
#[derive(Clone, Debug, PartialEq)]
enum Step {
    Key(String),
    Index(usize),
}

/// Builds a JSON object from rows of path | value | unit. A row with more columns holds a list of values: path | values... |
/// unit. A header row `path | value | unit`, rows without a path and without values are passed over.
///
/// # Errors
/// A path that cannot be read, a value without a path, one path given twice, a list with gaps.
pub fn unflatten(cells: &Cells) -> Result<Json> {
    let mut root = Json::Object(Map::new());
    for (index, row) in cells.iter().enumerate() {
        let place = Place::Cell(index + 1, 1);
        let Some((first, rest)) = row.split_first() else { continue };
        let path = match first {
            Cell::Empty if rest.iter().all(|cell| *cell == Cell::Empty) => continue,
            Cell::Text(path) if index == 0 && path.trim().eq_ignore_ascii_case("path") => continue,
            Cell::Text(path) => path.trim(),
            _ => {
                let allowed = "a path such as level.rows[0].y";
                return Err(Failure::new(Code::EmptyCell, "")
                    .allowed(allowed)
                    .remedy("write the path")
                    .at(place));
            }
        };
        let Some(value) = row_value(rest) else {
            return Err(Failure::new(Code::EmptyCell, path)
                .allowed("a value")
                .remedy("fill the cell")
                .at(place));
        };
        let steps = steps(path).ok_or_else(|| {
            Failure::new(Code::Syntax, path)
                .allowed("keys with points and [numbers]")
                .remedy("write the path anew")
                .at(place)
        })?;
        put(&mut root, &steps, value).map_err(|failure| failure.under(path).at(place))?;
    }
    whole(&root, "")?;
    Ok(root)
}

/// The value of a row: one value, or a list where the row has more than value and unit.
fn row_value(rest: &[Cell]) -> Option<Json> {
    match rest {
        [] => None,
        [value] => with_unit(value, &Cell::Empty),
        [value, unit] => with_unit(value, unit),
        [values @ .., unit] => {
            let last = values.iter().rposition(|cell| *cell != Cell::Empty)?;
            let (first, others) = (&values[0], &values[1..=last]);
            if others.is_empty() {
                return with_unit(first, unit);
            }
            let list = values[..=last].iter().map(|cell| with_unit(cell, unit).unwrap_or(Json::Null));
            Some(list.collect())
        }
    }
}

/// A number with its unit becomes text, exactly; a text stays.
fn with_unit(value: &Cell, unit: &Cell) -> Option<Json> {
    match (value, unit) {
        (Cell::Empty, _) => None,
        (Cell::Number(number), Cell::Text(unit)) => {
            Some(json!(format!("{} {}", shortest(*number), unit.trim())))
        }
        (Cell::Number(number), _) if number.fract() == 0.0 && number.abs() < 9.0e15 => {
            Some(json!(*number as i64))
        }
        (Cell::Number(number), _) => Some(json!(number)),
        (Cell::Text(text), _) if text.trim() == "true" => Some(json!(true)),
        (Cell::Text(text), _) if text.trim() == "false" => Some(json!(false)),
        (Cell::Text(text), _) => Some(json!(text)),
    }
}

fn steps(path: &str) -> Option<Vec<Step>> {
    let mut steps = Vec::new();
    for part in path.split('.') {
        let (key, mut rest) = part.find('[').map_or((part, ""), |at| part.split_at(at));
        if !key.is_empty() {
            steps.push(Step::Key(key.to_owned()));
        } else if !steps.is_empty() || rest.is_empty() {
            return None;
        }
        while !rest.is_empty() {
            let (index, more) = rest.strip_prefix('[')?.split_once(']')?;
            steps.push(Step::Index(index.parse().ok()?));
            rest = more;
        }
    }
    Some(steps)
}

/// The longest list a path may open, so that a slip in an index cannot fill the memory.
const LONGEST: usize = 100_000;

fn put(root: &mut Json, steps: &[Step], value: Json) -> Result<()> {
    let mut here = root;
    for step in steps {
        here = match step {
            Step::Key(key) => {
                if here.is_null() {
                    *here = Json::Object(Map::new());
                }
                here.as_object_mut().ok_or_else(twice)?.entry(key.clone()).or_insert(Json::Null)
            }
            Step::Index(index) => {
                if here.is_null() {
                    *here = Json::Array(Vec::new());
                }
                let list = here.as_array_mut().ok_or_else(twice)?;
                if *index >= LONGEST {
                    return Err(Failure::new(Code::OutOfRange, "")
                        .allowed("an index below 100000")
                        .remedy("check the index"));
                }
                if *index >= list.len() {
                    list.resize(index + 1, Json::Null);
                }
                &mut list[*index]
            }
        };
    }
    if here.is_null() {
        *here = value;
        return Ok(());
    }
    Err(twice())
}

fn twice() -> Box<Failure> {
    Failure::new(Code::KeyRepeated, "").allowed("each path once").remedy("remove one of the rows")
}

/// No list may have gaps.
fn whole(json: &Json, path: &str) -> Result<()> {
    match json {
        Json::Object(map) => map.iter().try_for_each(|(key, value)| {
            whole(value, &if path.is_empty() { key.clone() } else { format!("{path}.{key}") })
        }),
        Json::Array(list) => list.iter().enumerate().try_for_each(|(index, value)| {
            let path = format!("{path}[{index}]");
            if value.is_null() {
                return Err(Failure::new(Code::EmptyCell, path)
                    .allowed("a value")
                    .remedy("fill the gap in the list"));
            }
            whole(value, &path)
        }),
        _ => Ok(()),
    }
}

/// A JSON object as rows of path | value.
#[must_use]
pub fn flatten(json: &Json) -> Json {
    let mut rows = Vec::new();
    walk(json, String::new(), &mut rows);
    Json::Array(rows)
}

fn walk(json: &Json, path: String, rows: &mut Vec<Json>) {
    match json {
        Json::Object(map) => {
            for (key, value) in map {
                let below = if path.is_empty() { key.clone() } else { format!("{path}.{key}") };
                walk(value, below, rows);
            }
        }
        Json::Array(list) => {
            for (index, value) in list.iter().enumerate() {
                walk(value, format!("{path}[{index}]"), rows);
            }
        }
        Json::Null => {}
        Json::Bool(truth) => rows.push(json!([path, truth.to_string()])),
        value => rows.push(json!([path, value])),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn text(text: &str) -> Cell {
        Cell::Text(text.to_owned())
    }

    #[test]
    fn rows_become_json_and_come_back() {
        let cells = vec![
            vec![text("path"), text("value"), text("unit")],
            vec![text("finish.least"), Cell::Number(3.0), text("in")],
            vec![text("level.rows[0].y"), text("0'-6\""), Cell::Empty],
            vec![text("level.rows[1].y"), Cell::Number(8.0), text("ft")],
            vec![Cell::Empty, Cell::Empty, Cell::Empty],
        ];
        let json = unflatten(&cells).unwrap();
        assert_eq!(
            json,
            json!({"finish": {"least": "3 in"}, "level": {"rows": [{"y": "0'-6\""}, {"y": "8 ft"}]}})
        );
        let rows = flatten(&json);
        assert_eq!(rows[0], json!(["finish.least", "3 in"]));
        assert_eq!(unflatten(&super::super::cells(&rows).unwrap()).unwrap(), json);
    }

    #[test]
    fn wide_rows_hold_lists() {
        let cells = vec![vec![text("x"), Cell::Number(0.5), Cell::Number(7.0), Cell::Empty, text("ft")]];
        assert_eq!(unflatten(&cells).unwrap(), json!({"x": ["0.5 ft", "7 ft"]}));
    }

    #[test]
    fn gaps_repeats_and_stray_values_are_refused() {
        let row = |path: &str| vec![text(path), Cell::Number(1.0), text("ft")];
        assert_eq!(unflatten(&vec![row("a[1]")]).unwrap_err().code, Code::EmptyCell);
        assert_eq!(unflatten(&vec![row("a"), row("a")]).unwrap_err().code, Code::KeyRepeated);
        assert_eq!(unflatten(&vec![row("a"), row("a.b")]).unwrap_err().code, Code::KeyRepeated);
        assert_eq!(unflatten(&vec![row("a[9999999999]")]).unwrap_err().code, Code::OutOfRange);
        assert_eq!(unflatten(&vec![row("a[x]")]).unwrap_err().code, Code::Syntax);
        let stray = vec![vec![Cell::Empty, Cell::Number(1.0), Cell::Empty]];
        assert_eq!(unflatten(&stray).unwrap_err().code, Code::EmptyCell);
    }
}
