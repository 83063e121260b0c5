//! Tables from ranges.

use super::*;

fn size(rows: Json) -> Json {
    get("specimen_from_table", "size_in", json!([rows]))[0][0].clone()
}

fn table_refusal(rows: Json) -> (String, String, Option<(usize, usize)>) {
    refusal(ask("specimen_from_table", json!([rows])))
}

#[test]
fn columns_lie_in_order_or_under_their_names() {
    close(&size(json!([[1], [2.5]])), &json!(30.0));
    close(&size(json!([[1, 3, "red", "old", "1 in"], ["30 in", null, "", null, 2]])), &json!(30.0));
    close(&size(json!([["remark", "At"], ["old", 1], [null, 2.5]])), &json!(30.0));
    close(&size(json!([["at", null], [1, null]])), &json!(12.0));
    // Empty rows below are no rows.
    close(&size(json!([[1], [2.5], [null], [""]])), &json!(30.0));
}

#[test]
fn a_table_of_one_column_lies_in_a_row_or_fills_a_block() {
    let sides = json!([["length", "name"], ["20 ft", "a"], ["32 ft", "b"], ["20 ft", "c"], ["32 ft", "d"]]);
    let outline = get("outline_from_sides", "outline", json!([sides]));
    let shots = |elevations: Json| {
        let arguments =
            json!([outline, [["0.5 ft", "17 ft", "19.5 ft"]], [["0.5 ft"], ["31.5 ft"]], elevations]);
        get("survey_from_grid", "shots", arguments)
    };
    let block = shots(json!([[99.1, 99.2, 99.3], [99.4, 99.5, 99.6]]));
    let column = shots(json!([[99.1], [99.2], [99.3], [99.4], [99.5], [99.6]]));
    assert_eq!(block, column);
    // A place that was not shot may stand at the end of the block; a row that is empty is no row.
    let gap = shots(json!([[99.1, 99.2, 99.3], [99.4, 99.5, null], [null, null, null]]));
    assert_eq!(gap.as_array().unwrap().len(), block.as_array().unwrap().len() - 1);
}

#[test]
fn a_header_may_name_the_unit() {
    for header in ["at_m", "at (m)", "AT [m]", "at, m", "at meter"] {
        let inches = size(json!([[header, "hits"], [2.54, 1]])).as_f64().unwrap();
        assert!((inches - 100.0).abs() < 1e-12, "{header}: {inches}");
    }
    close(&size(json!([["at (m)"], ["1 ft"]])), &json!(12.0));
    assert_eq!(table_refusal(json!([["at (psi)"], [1]])), refused("UNIT_UNKNOWN", "rows.at", Some((1, 1))));
    assert_eq!(
        table_refusal(json!([["at", "hits (ft)"], [1, 2]])),
        refused("UNIT_UNKNOWN", "rows.hits", Some((1, 2)))
    );
}

#[test]
fn what_a_table_gives_it_takes() {
    let rows = json!([["at", "depth_mm", "colour"], [1, 25.4, "red"], [2, null, ""]]);
    let arguments = |rows: &Json| json!([2, 2, "red", "a", rows, [["size", "2 in"], ["label", "elm"]]]);
    let given = get("specimen_every_kind", "rows", arguments(&rows));
    assert_eq!(given[0], json!(["at_ft", "hits", "colour", "remark", "depth_in"]));
    close(&given[1], &json!([1.0, null, "red", null, 1.0]));
    close(&given[2], &json!([2.0, null, null, null, null]));
    close(&get("specimen_every_kind", "rows", arguments(&given)), &given);
}

#[test]
fn a_slip_is_found_at_its_cell() {
    assert_eq!(table_refusal(json!([[1, 2], ["x", 2]])), refused("NOT_READABLE", "rows.at", Some((2, 1))));
    assert_eq!(table_refusal(json!([["at"], [1], ["2"]])), refused("UNIT_MISSING", "rows.at", Some((3, 1))));
    assert_eq!(table_refusal(json!([[1], [null], [3]])), refused("EMPTY_CELL", "rows.at", Some((2, 1))));
    assert_eq!(table_refusal(json!([[1, 1], [2, 101]])), refused("OUT_OF_RANGE", "rows.hits", Some((2, 2))));
    let header = json!([["remark", "hits", "at (m)"], ["a", 1, 1], ["b", 1, -2]]);
    assert_eq!(table_refusal(header.clone()), refused("OUT_OF_RANGE", "rows.at", Some((3, 3))));
    let sentence = why("specimen_from_table", json!([header]))[0][0].to_string();
    assert!(sentence.contains("row 3, column 3") && sentence.contains("-2 m"), "{sentence}");
    assert_eq!(table_refusal(json!([["hits"], [1]])), refused("KEY_MISSING", "rows.at", None));
}

#[test]
fn no_column_is_dropped_in_silence() {
    assert_eq!(
        table_refusal(json!([["at", "hist"], [1, 2]])),
        refused("KEY_UNKNOWN", "rows.hist", Some((1, 2)))
    );
    assert_eq!(
        table_refusal(json!([["ta", "hits"], [1, 2]])),
        refused("KEY_UNKNOWN", "rows.ta", Some((1, 1)))
    );
    assert_eq!(
        table_refusal(json!([["place", "blows"], [1, 2]])),
        refused("KEY_UNKNOWN", "rows.place", Some((1, 1)))
    );
    assert_eq!(table_refusal(json!([["at", null], [1, 2]])), refused("EMPTY_CELL", "rows", Some((1, 2))));
    assert_eq!(
        table_refusal(json!([["at", "At (m)"], [1, 2]])),
        refused("KEY_REPEATED", "rows.at", Some((1, 2)))
    );
    let wide = json!([[1, 2, null, null, null, null], [1, 2, null, null, null, 7]]);
    assert_eq!(table_refusal(wide), refused("LENGTH_MISMATCH", "rows", Some((2, 6))));
}

#[test]
fn an_empty_range_is_not_given_and_a_header_alone_is_an_empty_table() {
    assert_eq!(table_refusal(json!([[null, null], [null, null]])), refused("EMPTY_LIST", "rows", None));
    assert_eq!(table_refusal(json!([["at", "hits"]])), refused("EMPTY_LIST", "rows", None));
    let order =
        |allowances: Json| get("order", "figured", json!([8, null, allowances]))[0][0].as_f64().unwrap();
    assert!((order(json!([[null, null]])) - 8.24).abs() < 1e-9, "the fallback is taken");
    assert!((order(json!([["name", "share"]])) - 8.0).abs() < 1e-9, "an empty table is one");
    assert!((order(json!([["waste", 10]])) - 8.8).abs() < 1e-9);
}

#[test]
fn one_column_may_lie_in_a_row() {
    let every = |more: Json| {
        json!([2, 2, "red", "a", [[1]], [["size", "2 in"], ["label", "elm"]], "0 %", null, null, null, more])
    };
    let volume = |more: Json| get("specimen_every_kind", "volume", every(more))[0][0].as_f64().unwrap();
    assert!((volume(json!([[10, 20]])) - 2.6).abs() < 1e-12);
    assert!((volume(json!([[10], [20]])) - 2.6).abs() < 1e-12);
    assert!((volume(json!([["share", 10, 20]])) - 2.6).abs() < 1e-12);
    let failure = refusal(ask("specimen_every_kind", every(json!([["share", 10, -20]]))));
    assert_eq!(failure, refused("NEGATIVE", "more.share", Some((1, 3))));
}
