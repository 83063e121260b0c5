//! Operations of single values over ranges.

use super::*;

#[test]
fn each_place_of_the_ranges_is_worked_out() {
    let column = ask("fall", json!([[[1], [2], [3]], [[10], ["240 in"], [30]]]));
    close(&cells(column), &json!([[0.1], [0.1], [0.1]]));
    close(&cells(ask("fall", json!([[[1, 2, 4]], 10]))), &json!([[0.1, 0.2, 0.4]]));
    // A column against a row makes a block.
    close(&cells(ask("fall", json!([[[1], [2]], [[10, 20]]]))), &json!([[0.1, 0.05], [0.2, 0.1]]));
    close(&cells(ask("fall", json!([[[1]], [[10]]]))), &json!([[0.1]]));
}

#[test]
fn a_bad_place_spoils_only_itself() {
    let drops = json!([[1], [null], ["x"], [0], [-1]]);
    let runs = json!([[10], [10], [10], [10], [10]]);
    let values = cells(ask("fall", json!([drops, runs])));
    assert_eq!(values, json!([[0.1], [{"code": 18}], [{"code": 13}], [0.0], [{"code": 17}]]));
    let reasons = why("fall", json!([drops, runs]));
    assert_eq!(reasons[0][0], json!(""));
    assert_eq!(reasons[3][0], json!(""));
    for (row, start) in [
        (1, "EMPTY_CELL: drop (row 2, column 1"),
        (2, "NOT_READABLE: drop (row 3"),
        (4, "OUT_OF_RANGE: drop (row 5, column 1 of the range) = -1 in"),
    ] {
        assert!(reasons[row][0].as_str().unwrap().starts_with(start), "{}", reasons[row][0]);
    }
}

#[test]
fn several_results_lie_across_or_down() {
    close(&cells(ask("trucks", json!([14, 10]))), &json!([[2, 4.0]]));
    close(&cells(ask("trucks", json!([[[14], [9]], 10]))), &json!([[2, 4.0], [1, 9.0]]));
    close(&cells(ask("trucks", json!([[[14, 9]], 10]))), &json!([[2, 1], [4.0, 9.0]]));
    let block = json!([[[14], [9]], [[10, 8]]]);
    assert_eq!(refusal(ask("trucks", block.clone())), refused("KIND_MISMATCH", "trucks", None));
    assert_eq!(get("trucks", "Loads", block.clone()), json!([[2, 2], [1, 2]]));
    close(&get("trucks", "last_yd3", json!([14, 10])), &json!([[4.0]]));
    let unknown =
        json!({"operation": "trucks", "system": "us", "want": "get", "result": "lsat", "arguments": block});
    assert_eq!(refusal(request(&unknown)), refused("KEY_UNKNOWN", "result.lsat", None));
}

#[test]
fn ranges_that_do_not_fit_are_refused() {
    assert_eq!(
        refusal(ask("fall", json!([[[1], [2]], [[1], [2], [3]]]))),
        refused("LENGTH_MISMATCH", "run", None)
    );
    assert_eq!(refusal(ask("fall", json!([[], 3]))), refused("LENGTH_MISMATCH", "drop", None));
}

#[test]
fn the_reason_holds_the_notes() {
    assert_eq!(why("specimen_scalar", json!([1, 4, "red"])), json!([[""]]));
    let noted = why("specimen_scalar", json!([1, 400, "red"]));
    assert_eq!(noted, json!([["the result lies outside the range the formula is stated for"]]));
    let block = why("specimen_scalar", json!([1, [[4], [400]], "red"]));
    assert_eq!(block, json!([[""], [noted[0][0]]]));
}
