//! Every operation through cells answers as it does by its name.

use overslab::failure::Code;
use overslab::operation::sheet::{Reply, respond};
use overslab::operation::{Operation, call::invoke, decode, encode};
use overslab::operations::all;
use overslab::quantity::System;
use overslab_tests::as_cells;
use overslab_tests::generate::{sheet_table, words};
use serde_json::{Map, Value as Json, json};

fn reply(row: &Operation, system: System, want: &str, result: &str, arguments: &[Json]) -> Reply {
    let request = json!({
        "operation": row.name, "system": system.word(), "want": want, "result": result, "arguments": arguments,
    });
    respond(&request.to_string())
}

fn cells(reply: Reply) -> Vec<Vec<Json>> {
    match reply {
        Reply::Cells(rows) => rows,
        Reply::Failure(failure) => panic!("{failure}"),
    }
}

/// The example's results by their names, as any other face gives them.
fn by_name(row: &'static Operation, system: System) -> Map<String, Json> {
    let values = decode::decode(row, &sheet_table::example(row), None).unwrap();
    let answer = encode::answer(row, &invoke(row, values).unwrap(), system);
    answer["results"].as_object().unwrap().clone()
}

/// Numbers to a part in 1e12, since cells carry numbers in the unit of the port, and what is left over where such numbers cancel to
/// as much of a unit; all else alike.
fn close(cell: &Json, wanted: &Json) -> bool {
    match (cell.as_f64(), wanted.as_f64()) {
        (Some(cell), Some(wanted)) => (cell - wanted).abs() <= 1e-12 * wanted.abs().max(1.0),
        _ => cell == wanted,
    }
}

#[test]
fn every_single_result_of_every_example_is_the_same() {
    for row in all() {
        for system in System::ALL {
            let arguments = sheet_table::cells(row, system);
            for (name, wanted) in by_name(row, system) {
                if wanted.is_array() || wanted.is_object() {
                    continue;
                }
                let got = cells(reply(row, system, "get", &name, &arguments));
                assert_eq!((got.len(), got[0].len()), (1, 1), "{}: {name}", row.name);
                assert!(
                    close(&got[0][0], &wanted),
                    "{}: {name} is {} and should be {wanted}",
                    row.name,
                    got[0][0]
                );
            }
        }
    }
}

#[test]
fn tables_come_under_the_names_of_their_columns() {
    for row in all() {
        for system in System::ALL {
            let arguments = sheet_table::cells(row, system);
            for (name, wanted) in by_name(row, system) {
                let Some(rows) = wanted.as_array() else { continue };
                let got = cells(reply(row, system, "get", &name, &arguments));
                assert_eq!(got.len(), rows.len() + 1, "{}: {name}", row.name);
                for (line, wanted) in got[1..].iter().zip(rows) {
                    for (title, cell) in got[0].iter().zip(line) {
                        assert!(close(cell, &wanted[title.as_str().unwrap()]), "{}: {name}", row.name);
                    }
                }
            }
        }
    }
}

#[test]
fn a_record_that_one_operation_gives_another_takes_unchanged() {
    let mut taken = 0;
    for maker in all() {
        let Some(record) = maker.makes() else { continue };
        let arguments = sheet_table::cells(maker, System::Us);
        let rows = cells(reply(maker, System::Us, "value", "", &arguments));
        let json = overslab::operation::sheet::unflatten(
            &overslab::operation::sheet::Range::from_json(&json!(rows)).unwrap().rows,
        );
        let again =
            (record.from_json)(json.unwrap()).unwrap_or_else(|failure| panic!("{}: {failure}", maker.name));
        let canonical = (record.to_json)(again.as_ref()).unwrap();
        assert_eq!(json!(overslab::operation::sheet::flatten(&canonical)), json!(rows), "{}", maker.name);
        taken += 1;
    }
    assert!(taken > 2);
}

#[test]
fn the_value_function_shows_the_first_result_first() {
    for row in all() {
        let arguments = sheet_table::cells(row, System::Us);
        let rows = cells(reply(row, System::Us, "value", "", &arguments));
        let (name, wanted) = by_name(row, System::Us).into_iter().next().unwrap();
        if !wanted.is_array() && !wanted.is_object() {
            assert!(close(&rows[0][0], &wanted), "{}: {name}", row.name);
        }
        if row.results.len() > 1 && !row.is_scalar() {
            let names: Vec<&str> = rows.iter().map(|row| row[1].as_str().unwrap()).collect();
            let wanted: Vec<String> = row.results.iter().map(|port| port.unit_name(System::Us)).collect();
            assert_eq!(names, wanted, "{}", row.name);
        }
    }
}

/// Whether a text within is blank.
fn has_blank(json: &Json) -> bool {
    match json {
        Json::String(text) => text.trim().is_empty(),
        Json::Array(list) => list.iter().any(has_blank),
        Json::Object(map) => map.values().any(has_blank),
        _ => false,
    }
}

#[test]
fn stated_refusals_are_refused_alike_and_the_reason_is_the_sentence() {
    for row in all() {
        for (change, code) in row.refusals {
            let mut inputs = sheet_table::example(row);
            inputs.extend(serde_json::from_str::<Map<String, Json>>(change).unwrap());
            let Some(arguments) = as_cells::arguments(row, &inputs) else { continue };
            match reply(row, System::Us, "value", "", &arguments) {
                Reply::Failure(failure) => {
                    // A rectangle of cells has no columns of different lengths: the shorter one has an empty cell.
                    let shorter = *code == Code::LengthMismatch && failure.code == Code::EmptyCell;
                    // A blank text is an empty cell.
                    let blank = inputs.values().any(has_blank) && failure.code == Code::EmptyCell;
                    // And in a column that may be left out it is a gap.
                    let gap = *code == Code::EmptyCell && failure.code == Code::LengthMismatch;
                    assert!(
                        failure.code == *code || shorter || blank || gap,
                        "{}: {change}: {failure}",
                        row.name
                    );
                    let why = cells(reply(row, System::Us, "why", "", &arguments));
                    assert_eq!(why, vec![vec![json!(failure.sentence())]], "{}", row.name);
                }
                // A number in the place of a text is a text to a sheet.
                Reply::Cells(_) => assert_eq!(*code, Code::KindMismatch, "{}: {change} passes", row.name),
            }
        }
    }
}

#[test]
fn what_is_said_of_a_zero_is_what_becomes_of_it() {
    for row in all() {
        for system in System::ALL {
            for (place, port) in row.ports.iter().enumerate() {
                let mut arguments = sheet_table::cells(row, system);
                arguments.resize(arguments.len().max(place + 1), Json::Null);
                arguments[place] = json!(0.0);
                let refused = match reply(row, system, "value", "", &arguments) {
                    Reply::Failure(failure) => failure.code.name() == "ZERO_REFUSED",
                    Reply::Cells(_) => false,
                };
                let said = words::zero(port, system);
                let text = matches!(port.kind, overslab::operation::Kind::Text);
                assert!(refused == said.is_some() || text, "{}: {}: {said:?}", row.name, port.name);
            }
        }
    }
}
