//! Records as rows of path | value | unit.

use super::*;
use crate::failure::{Code, Place};
use crate::operation::sheet::{Cell, Cells, Range, flatten, unflatten};

fn cells_of(json: Json) -> Cells {
    Range::from_json(&json).unwrap().rows
}

fn made(rows: Json) -> Json {
    unflatten(&cells_of(rows)).unwrap()
}

fn wrong(rows: Json) -> (Code, Place) {
    let failure = unflatten(&cells_of(rows)).unwrap_err();
    (failure.code, failure.place)
}

#[test]
fn rows_become_json() {
    let rows = json!([
        ["path", "value", "unit"],
        ["finish.least", 3, "in"],
        ["level.rows[1].y", 8, "ft"],
        ["level.rows[0].y", "0'-6\"", null],
        [null, "", null],
        ["level.mean", "3 1/2", "in"],
        ["count", 2, null],
        ["factor", 0.1, null],
    ]);
    let json = json!({
        "finish": {"least": "3 in"},
        "level": {"rows": [{"y": "0'-6\""}, {"y": "8 ft"}], "mean": "3 1/2 in"},
        "count": 2,
        "factor": 0.1,
    });
    assert_eq!(made(rows), json);
    assert_eq!(made(json!([["a", 1.0 / 3.0, "in"]])), json!({"a": "0.3333333333333333 in"}));
    assert_eq!(made(json!([[null, null]])), json!({}));
}

#[test]
fn wide_rows_hold_lists() {
    let rows = json!([["x", 0.5, 7, null, "ft"], ["y", 1, null, null, "ft"], ["names", "a", "b", "c", null]]);
    assert_eq!(made(rows), json!({"x": ["0.5 ft", "7 ft"], "y": "1 ft", "names": ["a", "b", "c"]}));
    assert_eq!(wrong(json!([["x", 1, null, 3, "ft"]])), (Code::EmptyCell, Place::Cell(1, 2)));
}

#[test]
fn any_json_comes_back() {
    let odd = json!({
        "a.b": {"": [1, 2.5, -0.001], "path": "path"},
        "texts": ["true", "false", "null", "[]", "{}", "", " spaced ", "\"quoted\"", "3 in", "12", "a\nb", "-", "\u{bd}"],
        "truths": [true, false, null],
        "empty": {"list": [], "object": {}},
        "deep": [[["x"]], [[1, 2], [3]]],
        "path": 5,
    });
    let rows = flatten(&odd);
    assert!(rows.iter().all(|row| row.len() == 2));
    assert_eq!(made(json!(rows)), odd);
}

#[test]
fn a_value_between_quotes_is_a_text() {
    assert_eq!(
        made(json!([["a", "\"true\""], ["b", "true"], ["c", "\"half"]])),
        json!({"a": "true", "b": true, "c": "\"half"})
    );
    assert_eq!(
        unflatten(&vec![vec![Cell::Text("a".into()), Cell::Truth(true)]]).unwrap(),
        json!({"a": true})
    );
}

#[test]
fn slips_are_refused_at_their_cell() {
    let row = |path: &str| json!([path, 1, "ft"]);
    assert_eq!(wrong(json!([row("a[1]")])).0, Code::EmptyCell);
    assert_eq!(wrong(json!([row("a"), row("a")])), (Code::KeyRepeated, Place::Cell(2, 1)));
    assert_eq!(wrong(json!([row("a"), row("a.b")])), (Code::KeyRepeated, Place::Cell(2, 1)));
    assert_eq!(wrong(json!([row("a.b"), row("a")])), (Code::KeyRepeated, Place::Cell(2, 1)));
    assert_eq!(wrong(json!([row("a[0]"), row("a.b")])), (Code::KeyRepeated, Place::Cell(2, 1)));
    assert_eq!(wrong(json!([row("a[9999999999]")])), (Code::OutOfRange, Place::Cell(1, 1)));
    assert_eq!(wrong(json!([row("a[x]")])), (Code::Syntax, Place::Cell(1, 1)));
    assert_eq!(wrong(json!([[null, 1, null]])), (Code::Syntax, Place::Cell(1, 1)));
    assert_eq!(wrong(json!([[5, 1, null]])), (Code::Syntax, Place::Cell(1, 1)));
    assert_eq!(wrong(json!([["a", null, "ft"]])), (Code::EmptyCell, Place::Cell(1, 2)));
    assert_eq!(wrong(json!([["a", "3 in", "ft"]])), (Code::Contradiction, Place::Cell(1, 2)));
    assert_eq!(wrong(json!([["a", "oak", "ft"]])), (Code::Contradiction, Place::Cell(1, 2)));
    assert_eq!(wrong(json!([["a", 3, 4]])), (Code::KindMismatch, Place::Cell(1, 2)));
}

fn record_refusal(rows: Json) -> (String, String, Option<(usize, usize)>) {
    refusal(ask("specimen_every_kind", json!([2, 2, "red", "a", [[1]], rows])))
}

#[test]
fn a_refusal_of_the_record_names_the_row() {
    let rows = |size: Json, unit: Json| {
        json!([["path", "value", "unit"], ["label", "elm", null], ["size", size, unit]])
    };
    assert_eq!(
        record_refusal(rows(json!(2), json!(null))),
        refused("UNIT_MISSING", "specimen.size", Some((3, 2)))
    );
    assert_eq!(
        record_refusal(rows(json!(2), json!("psi"))),
        refused("UNIT_WRONG", "specimen.size", Some((3, 2)))
    );
    assert_eq!(
        record_refusal(rows(json!(-2), json!("in"))),
        refused("OUT_OF_RANGE", "specimen.size", Some((3, 2)))
    );
    let slip = json!([["size", 2, "in"], ["labl", "elm", null]]);
    assert_eq!(record_refusal(slip), refused("KEY_UNKNOWN", "specimen.labl", Some((2, 2))));
    assert_eq!(record_refusal(json!("size = 2 in")), refused("KIND_MISMATCH", "specimen", None));
    assert_eq!(record_refusal(json!([["size", "2 in"]])), refused("KEY_MISSING", "specimen.label", None));
}

#[test]
fn what_one_operation_makes_another_takes() {
    let made = cells(ask("specimen_from_table", json!([[[1], [2.5]], "oak"])));
    assert_eq!(made, json!([["size", "0.762 m"], ["label", "oak"]]));
    let every = json!([2, 2, "red", "a", [[1]], made]);
    assert_eq!(get("specimen_every_kind", "specimen", every), made);
    // The fields of a record that an operation makes can be had by name.
    let field = |name: &str| get("specimen_from_table", name, json!([[[1], [2.5]], "oak"]));
    assert_eq!(field("size"), json!([[30.0]]));
    assert_eq!(field("letters"), json!([[3]]));
    assert_eq!(field("weights"), json!([["share_percent"], [25.0], [75.0]]));
    assert_eq!(field("specimen"), made);
}
