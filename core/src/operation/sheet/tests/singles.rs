//! One cell: numbers, texts with their unit, empty cells and zeros.

use super::*;

#[test]
fn a_number_is_in_the_unit_of_its_port_and_a_text_says_its_own() {
    close(&cells(ask("fall", json!([2, 20]))), &json!([[0.1]]));
    close(&cells(ask("fall", json!(["2 in", "240 in"]))), &json!([[0.1]]));
    let si = json!({"operation": "fall", "system": "si", "arguments": [50, "5 m"]});
    assert_eq!(cells(request(&si)), json!([[1.0]]));
}

#[test]
fn a_cell_equals_the_flat_call_bit_for_bit() {
    let fall = crate::operations::find("fall").unwrap();
    for drop in [0.1, 1.0 / 3.0, 7.3e-5, 0.0] {
        for system in crate::quantity::System::ALL {
            let mut flat = [0.0];
            crate::operation::call::scalar_in(fall, system, &[drop, 3.7], &mut flat).unwrap();
            let asked = json!({"operation": "fall", "system": system.word(), "arguments": [[[drop]], 3.7]});
            let cell = cells(request(&asked))[0][0].as_f64().unwrap();
            assert_eq!(cell.to_bits(), flat[0].to_bits(), "{drop}");
        }
    }
}

#[test]
fn a_lone_zero_is_refused_where_it_may_be_an_empty_cell() {
    // `run` is a port where a zero is rare, `drop` is not.
    close(&cells(ask("fall", json!([0, 20]))), &json!([[0.0]]));
    assert_eq!(refusal(ask("fall", json!([2, 0]))), refused("ZERO_REFUSED", "run", None));
    assert_eq!(refusal(ask("fall", json!([2, -0.0]))), refused("ZERO_REFUSED", "run", None));
    let sentence = why("fall", json!([2, 0]))[0][0].as_str().unwrap().to_owned();
    assert!(sentence.ends_with("; fill the cell"), "zero can not be meant: {sentence}");
    // A range of one cell, or a sheet that tells them apart, says that the zero is one; the function then judges it.
    assert_eq!(refusal(ask("fall", json!([2, [[0]]]))), refused("OUT_OF_RANGE", "run", None));
    let told = json!({"operation": "fall", "system": "us", "empty": "null", "arguments": [2, 0]});
    assert_eq!(refusal(request(&told)), refused("OUT_OF_RANGE", "run", None));
}

#[test]
fn an_empty_cell_is_no_zero() {
    for empty in [json!(null), json!(""), json!("  "), json!([[null]]), json!([[""]])] {
        assert_eq!(refusal(ask("fall", json!([empty, 20]))), refused("EMPTY_CELL", "drop", None));
    }
    assert_eq!(refusal(ask("fall", json!([2]))), refused("KEY_MISSING", "run", None));
    assert_eq!(refusal(ask("fall", json!([1, 2, 3]))), refused("LENGTH_MISMATCH", "fall", None));
}

fn every_kind(changes: &[(usize, Json)]) -> Json {
    let rows = json!([[1, null], [2.5, 3]]);
    let record = json!([["size", 2, "in"], ["label", "elm", null]]);
    let mut arguments = json!([2, 2, "red", "a", rows, record]);
    let list = arguments.as_array_mut().unwrap();
    for (place, change) in changes {
        while list.len() <= *place {
            list.push(Json::Null);
        }
        list[*place] = change.clone();
    }
    arguments
}

#[test]
fn optional_ports_tell_what_a_lone_zero_is() {
    let volume =
        |changes: &[(usize, Json)]| get("specimen_every_kind", "volume", every_kind(changes))[0][0].clone();
    let refusal = |changes: &[(usize, Json)]| refusal(ask("specimen_every_kind", every_kind(changes)));
    let fallback = volume(&[]);
    assert!((fallback.as_f64().unwrap() - 2.1).abs() < 1e-12, "5 % is taken: {fallback}");
    // Left out, or empty where the sheet says so: the fallback. A lone zero could be either: refused.
    assert_eq!(volume(&[(6, json!(null))]), fallback);
    assert_eq!(volume(&[(6, json!([[null]]))]), fallback);
    assert_eq!(refusal(&[(6, json!(0))]), refused("ZERO_REFUSED", "waste", None));
    let sentence =
        why("specimen_every_kind", every_kind(&[(6, json!(0))]))[0][0].as_str().unwrap().to_owned();
    assert!(sentence.contains("\"0 %\"") && sentence.contains("A1:A1"), "{sentence}");
    assert_eq!(volume(&[(6, json!("0 %"))]), json!(2.0));
    assert_eq!(volume(&[(6, json!([[0]]))]), json!(2.0));
    assert_eq!(refusal(&[(7, json!(0))]), refused("ZERO_REFUSED", "again", None));
    assert_eq!(volume(&[(7, json!("0"))]), fallback);
    // Where a zero cannot be meant it is an empty cell.
    for place in [8, 9, 10, 11] {
        assert_eq!(volume(&[(place, json!(0))]), fallback, "{place}");
    }
    assert_eq!(refusal(&[(2, json!(0))]), refused("EMPTY_CELL", "colour", None));
    assert_eq!(refusal(&[(3, json!(0))]), refused("ZERO_REFUSED", "label", None));
    assert_eq!(refusal(&[(5, json!(0))]), refused("EMPTY_CELL", "specimen", None));
}

#[test]
fn other_kinds_of_cell() {
    close(&cells(ask("specimen_scalar", json!([1.5, "4", " Dark Blue "]))), &json!([[0.5, "dark blue", 5]]));
    assert_eq!(
        refusal(ask("specimen_scalar", json!([1, 1.5, "red"]))),
        refused("NOT_A_COUNT", "times", None)
    );
    assert_eq!(
        refusal(ask("specimen_scalar", json!([1, "4 ft", "red"]))),
        refused("NOT_A_COUNT", "times", None)
    );
    assert_eq!(refusal(ask("specimen_scalar", json!([1, 1, 1]))), refused("KIND_MISMATCH", "colour", None));
    assert_eq!(
        refusal(ask("specimen_scalar", json!([1, 1, "rde"]))),
        refused("WORD_UNKNOWN", "colour", None)
    );
    assert_eq!(
        refusal(ask("specimen_scalar", json!([true, 1, "red"]))),
        refused("KIND_MISMATCH", "step", None)
    );
    assert_eq!(
        refusal(ask("specimen_scalar", json!(["1", 1, "red"]))),
        refused("UNIT_MISSING", "step", None)
    );
    assert_eq!(
        refusal(ask("specimen_scalar", json!(["1 psi", 1, "red"]))),
        refused("UNIT_WRONG", "step", None)
    );
    let label = |cell: Json| get("specimen_every_kind", "label", every_kind(&[(3, cell)]))[0][0].clone();
    assert_eq!(label(json!(12.5)), json!("12.5"));
    assert_eq!(label(json!(true)), json!("true"));
    let wide = every_kind(&[(3, json!([["a", "b"]]))]);
    assert_eq!(refusal(ask("specimen_every_kind", wide)), refused("KIND_MISMATCH", "label", None));
}

#[test]
fn a_file_in_a_cell_is_its_text_or_base64() {
    let sums = |cells: Json| get("specimen_bytes", "sum", cells)[0][0].clone();
    assert_eq!(sums(json!(["ab"])), json!(97 + 2 * 98));
    assert_eq!(sums(json!(["base64:YWI="])), json!(97 + 2 * 98));
    assert_eq!(sums(json!([[["a"]], "base64:/w"])), json!(97 + 255));
    for (wrong, code) in
        [(json!(5), "KIND_MISMATCH"), (json!("base64:*"), "NOT_BASE64"), (json!(true), "KIND_MISMATCH")]
    {
        assert_eq!(refusal(ask("specimen_bytes", json!([wrong]))), refused(code, "file", None));
        assert_eq!(refusal(ask("specimen_bytes", json!(["a", wrong]))), refused(code, "attached", None));
    }
    // A lone zero is an empty cell.
    assert_eq!(refusal(ask("specimen_bytes", json!([0]))), refused("EMPTY_CELL", "file", None));
    assert_eq!(sums(json!(["a", 0])), json!(97));
}

#[test]
fn a_refused_number_is_said_in_the_callers_unit() {
    let sentence = why("fall", json!([-2, 20]));
    assert!(sentence[0][0].as_str().unwrap().starts_with("OUT_OF_RANGE: drop = -2 in"), "{sentence}");
}

#[test]
fn a_number_may_come_in_exact_parts() {
    let read = |parts: Json| match crate::operation::sheet::Range::from_json(&json!({"exact": parts})) {
        Ok(range) => match range.rows[0][0] {
            crate::operation::sheet::Cell::Number(number) => Some(number.to_bits()),
            _ => None,
        },
        Err(_) => None,
    };
    assert_eq!(read(json!([1, 107_374_182, 26_843_546, -56])), Some(0.1_f64.to_bits()));
    assert_eq!(read(json!([-1, 0, 3, 0])), Some((-3.0_f64).to_bits()));
    assert_eq!(read(json!([1, 0, 1, -1074])), Some(1));
    assert_eq!(read(json!([1, 134_217_727, 67_108_863, 971])), Some(f64::MAX.to_bits()));
    for wrong in [
        json!([1, 0, 1]),
        json!([2, 0, 1, 0]),
        json!([1, -1, 0, 0]),
        json!([1, 0, 67_108_864, 0]),
        json!([1, 1, 1, 1000]),
        json!("1"),
    ] {
        assert_eq!(read(wrong.clone()), None, "{wrong}");
    }
}
