//! Requests as a whole, and what belongs to an answer beside its results.

use super::*;

const MAKE: &str = "specimen_from_table";

#[test]
fn what_else_belongs_to_an_answer_is_had_by_reserved_words() {
    let odd = json!([[[1]]]);
    assert_eq!(get(MAKE, "names", odd.clone())[1], json!(["size_in", "its size"]));
    assert_eq!(get(MAKE, "notes", odd.clone()), json!([["ASSUMED", "an odd number of rows"]]));
    assert_eq!(get(MAKE, "Taken", odd.clone()), json!([["label", "plain", "most are"]]));
    assert_eq!(get(MAKE, "basis", odd), json!([[null]]));
    assert_eq!(get(MAKE, "notes", json!([[[1], [2]], "oak"])), json!([[null]]));
    assert_eq!(get("fall", "basis", json!([2, 20])), json!([["all", "plane and solid geometry: derived"]]));
    assert_eq!(why(MAKE, json!([[[1]]])), json!([["an odd number of rows"]]));
}

#[test]
fn no_result_has_a_reserved_name() {
    for operation in crate::operations::all() {
        let fields = operation.makes().map_or(&[][..], |record| record.fields);
        for port in operation.results.iter().chain(fields) {
            assert!(!super::super::RESERVED.contains(&port.name), "{}: {}", operation.name, port.name);
        }
    }
}

#[test]
fn several_results_of_a_record_operation_are_listed() {
    let record = json!([["size", "2 in"], ["label", "elm"]]);
    let list = cells(ask("specimen_every_kind", json!([2, 2, "red", "a", [[1]], record, "10 %"])));
    assert_eq!(
        list,
        json!([
            [2.2, "volume_yd3"],
            [2, "count"],
            ["red", "colour"],
            ["a", "label"],
            ["table of 1 rows", "rows"],
            ["specimen record", "specimen"]
        ])
    );
}

#[test]
fn a_request_that_cannot_be_read_is_refused() {
    let failure = |text: &str| {
        let (code, path, _) = refusal(respond(text));
        (code, path)
    };
    let of = |code: &str, path: &str| (code.to_owned(), path.to_owned());
    assert_eq!(failure("{"), of("SYNTAX", "request"));
    assert_eq!(failure("[]").0, "KIND_MISMATCH");
    assert_eq!(failure("{}"), of("KEY_MISSING", "operation"));
    assert_eq!(failure(r#"{"operation": "fall", "system": "si", "wnat": 1}"#), of("KEY_UNKNOWN", "wnat"));
    assert_eq!(failure(r#"{"operation": "fal", "system": "si"}"#), of("OPERATION_UNKNOWN", "operation.fal"));
    assert_eq!(failure(r#"{"operation": "fall", "system": "metric"}"#), of("WORD_UNKNOWN", "system"));
    assert_eq!(
        failure(r#"{"operation": "fall", "system": "si", "want": "all"}"#),
        of("WORD_UNKNOWN", "want")
    );
    assert_eq!(
        failure(r#"{"operation": "fall", "system": "si", "want": "get"}"#),
        of("KEY_MISSING", "result")
    );
    assert_eq!(
        failure(r#"{"operation": "fall", "system": "si", "empty": "no"}"#),
        of("WORD_UNKNOWN", "empty")
    );
    assert_eq!(
        failure(r#"{"operation": "fall", "system": "si", "arguments": [1, {}]}"#),
        of("KIND_MISMATCH", "arguments[1]")
    );
}

#[test]
fn a_failure_says_all_it_knows() {
    let reply = ask(MAKE, json!([[[1], [-2]]])).to_json();
    let failure = &reply["failure"];
    assert_eq!(failure["code"], json!(17));
    assert_eq!(failure["name"], json!("OUT_OF_RANGE"));
    assert_eq!(failure["path"], json!("rows.at"));
    assert_eq!((&failure["row"], &failure["column"]), (&json!(2), &json!(1)));
    assert!(failure["sentence"].as_str().unwrap().contains("-2 ft"));
}

#[test]
fn rows_are_of_one_length_and_never_none() {
    for operation in crate::operations::all() {
        for want in ["names", "notes", "taken", "basis"] {
            let json = json!({"operation": operation.name, "system": "us", "want": "get", "result": want, "arguments": []});
            if let Reply::Cells(rows) = request(&json) {
                assert!(
                    !rows.is_empty() && rows.iter().all(|row| row.len() == rows[0].len() && !row.is_empty())
                );
            }
        }
    }
}
