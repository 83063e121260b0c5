//! The test-only operations.
//!
//! Made from the table of operations: change the table and run `cargo run -p overslab-tests`.

use crate::answer::ovs_answer;
use crate::border::{BytesIn, Given, Input, Message, Notes, Numbers, Output, Passed, Request, TextIn, TextOut, free, read, record, record_type, row, scalar};
use crate::border::read::Holder;
use crate::border::scalar::Arrays;
use overslab::operation::{Operation, RecordType};
use overslab::quantity::System;
use overslab::specimen::OPERATIONS;
use std::ffi::{c_char, c_int, c_uchar};

/// The field `size` (in or mm): its size.
pub const OVS_SPECIMEN_SIZE: c_int = 0;

/// The field `label`: its label.
pub const OVS_SPECIMEN_LABEL: c_int = 1;

/// The field `letters`: letters of the label.
pub const OVS_SPECIMEN_LETTERS: c_int = 2;

/// The field `weights`: two shares.
pub const OVS_SPECIMEN_WEIGHTS: c_int = 3;

/// The column `share` of `weights` (%): share.
pub const OVS_SPECIMEN_WEIGHTS_SHARE: c_int = 0;

/// How many fields there are.
pub const OVS_SPECIMEN_FIELDS: c_int = 4;

/// A test-only record.
#[expect(non_camel_case_types, reason = "its name in C")]
pub struct ovs_specimen {
    _private: [u8; 0],
}

/// The word `red`.
pub const OVS_SPECIMEN_SCALAR_COLOUR_RED: c_int = 0;

/// The word `dark blue`.
pub const OVS_SPECIMEN_SCALAR_COLOUR_DARK_BLUE: c_int = 1;

/// The word `red`.
pub const OVS_SPECIMEN_FROM_TABLE_ROWS_COLOUR_RED: c_int = 0;

/// The word `dark blue`.
pub const OVS_SPECIMEN_FROM_TABLE_ROWS_COLOUR_DARK_BLUE: c_int = 1;

/// The result `volume` (yd3 or m3): the volume with its share.
pub const OVS_SPECIMEN_EVERY_KIND_VOLUME: c_int = 0;

/// The result `count`: the sum of the counts.
pub const OVS_SPECIMEN_EVERY_KIND_COUNT: c_int = 1;

/// The result `colour`: the second colour.
pub const OVS_SPECIMEN_EVERY_KIND_COLOUR: c_int = 2;

/// The result `label`: the texts joined.
pub const OVS_SPECIMEN_EVERY_KIND_LABEL: c_int = 3;

/// The result `rows`: the same table.
pub const OVS_SPECIMEN_EVERY_KIND_ROWS: c_int = 4;

/// The column `at` of `rows` (ft or m): place.
pub const OVS_SPECIMEN_EVERY_KIND_ROWS_AT: c_int = 0;

/// The column `hits` of `rows`: hits.
pub const OVS_SPECIMEN_EVERY_KIND_ROWS_HITS: c_int = 1;

/// The column `colour` of `rows`: colour.
pub const OVS_SPECIMEN_EVERY_KIND_ROWS_COLOUR: c_int = 2;

/// The column `remark` of `rows`: remark.
pub const OVS_SPECIMEN_EVERY_KIND_ROWS_REMARK: c_int = 3;

/// The column `depth` of `rows` (in or mm): depth.
pub const OVS_SPECIMEN_EVERY_KIND_ROWS_DEPTH: c_int = 4;

/// The result `specimen`: the last record given.
pub const OVS_SPECIMEN_EVERY_KIND_SPECIMEN: c_int = 5;

/// How many results there are.
pub const OVS_SPECIMEN_EVERY_KIND_RESULTS: c_int = 6;

/// The word `red`.
pub const OVS_SPECIMEN_EVERY_KIND_COLOUR_RED: c_int = 0;

/// The word `dark blue`.
pub const OVS_SPECIMEN_EVERY_KIND_COLOUR_DARK_BLUE: c_int = 1;

/// The word `red`.
pub const OVS_SPECIMEN_EVERY_KIND_ROWS_COLOUR_RED: c_int = 0;

/// The word `dark blue`.
pub const OVS_SPECIMEN_EVERY_KIND_ROWS_COLOUR_DARK_BLUE: c_int = 1;

/// The word `red`.
pub const OVS_SPECIMEN_EVERY_KIND_SHADE_RED: c_int = 0;

/// The word `dark blue`.
pub const OVS_SPECIMEN_EVERY_KIND_SHADE_DARK_BLUE: c_int = 1;

/// The result `half` (in or mm): half of its size.
pub const OVS_SPECIMEN_NUMBERS_HALF: c_int = 0;

/// The result `letters`: letters of its label.
pub const OVS_SPECIMEN_NUMBERS_LETTERS: c_int = 1;

/// The result `colour`: dark blue with a gap, red without.
pub const OVS_SPECIMEN_NUMBERS_COLOUR: c_int = 2;

/// The result `gap` (ft or m): the gap, where it was given.
pub const OVS_SPECIMEN_NUMBERS_GAP: c_int = 3;

/// How many results there are.
pub const OVS_SPECIMEN_NUMBERS_RESULTS: c_int = 4;

/// The word `red`.
pub const OVS_SPECIMEN_NUMBERS_COLOUR_RED: c_int = 0;

/// The word `dark blue`.
pub const OVS_SPECIMEN_NUMBERS_COLOUR_DARK_BLUE: c_int = 1;

/// The result `sum` (in or mm): their sum.
pub const OVS_SPECIMEN_SUM_SUM: c_int = 0;

/// The result `given`: how many were given.
pub const OVS_SPECIMEN_SUM_GIVEN: c_int = 1;

/// How many results there are.
pub const OVS_SPECIMEN_SUM_RESULTS: c_int = 2;

/// The result `sum`: the sum of the bytes of both, each times its place in its file.
pub const OVS_SPECIMEN_BYTES_SUM: c_int = 0;

/// The result `size`: how many bytes the first has.
pub const OVS_SPECIMEN_BYTES_SIZE: c_int = 1;

/// The result `attached_size`: how many bytes the other has.
pub const OVS_SPECIMEN_BYTES_ATTACHED_SIZE: c_int = 2;

/// How many results there are.
pub const OVS_SPECIMEN_BYTES_RESULTS: c_int = 3;

pub(crate) static SPECIMEN_TYPE: &RecordType = record_type(OPERATIONS, "specimen");

/// Every field that is a number, a count or a word, by its place; NaN for the others.
///
/// - `values`, `values_len`, out: as many as there is room for.
/// - OVS_SPECIMEN_SIZE (in): its size.
/// - OVS_SPECIMEN_LETTERS: letters of the label.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_values_us(
    specimen: *const ovs_specimen,
    values: *mut f64,
    values_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let values = Numbers::new("values", values, values_len);
    unsafe { read::values(Holder::Record(SPECIMEN_TYPE, Passed::new("specimen", specimen)), System::Us, values, Message::new(msg, msg_len)) }
}

/// Every field that is a number, a count or a word, by its place; NaN for the others.
///
/// - `values`, `values_len`, out: as many as there is room for.
/// - OVS_SPECIMEN_SIZE (mm): its size.
/// - OVS_SPECIMEN_LETTERS: letters of the label.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_values_si(
    specimen: *const ovs_specimen,
    values: *mut f64,
    values_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let values = Numbers::new("values", values, values_len);
    unsafe { read::values(Holder::Record(SPECIMEN_TYPE, Passed::new("specimen", specimen)), System::Si, values, Message::new(msg, msg_len)) }
}

/// A field that is a text, or a word.
///
/// - OVS_SPECIMEN_LABEL: its label.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_field_text(
    specimen: *const ovs_specimen,
    field: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let out = TextOut::new("text", text, text_len, needed);
    unsafe { read::text(Holder::Record(SPECIMEN_TYPE, Passed::new("specimen", specimen)), field, out, Message::new(msg, msg_len)) }
}

/// How many rows a field that is a table has.
///
/// - OVS_SPECIMEN_WEIGHTS: two shares.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_field_rows(
    specimen: *const ovs_specimen,
    field: c_int,
    rows: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    unsafe { read::rows(Holder::Record(SPECIMEN_TYPE, Passed::new("specimen", specimen)), field, rows, Message::new(msg, msg_len)) }
}

/// A column of numbers, counts or words of a field that is a table; NaN for an empty cell.
///
/// - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
/// - OVS_SPECIMEN_WEIGHTS_SHARE (%): share.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_field_column_us(
    specimen: *const ovs_specimen,
    field: c_int,
    column: c_int,
    cells: *mut f64,
    cells_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let cells = Numbers::new("cells", cells, cells_len);
    unsafe { read::column(Holder::Record(SPECIMEN_TYPE, Passed::new("specimen", specimen)), field, column, System::Us, cells, Message::new(msg, msg_len)) }
}

/// A column of numbers, counts or words of a field that is a table; NaN for an empty cell.
///
/// - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
/// - OVS_SPECIMEN_WEIGHTS_SHARE (%): share.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_field_column_si(
    specimen: *const ovs_specimen,
    field: c_int,
    column: c_int,
    cells: *mut f64,
    cells_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let cells = Numbers::new("cells", cells, cells_len);
    unsafe { read::column(Holder::Record(SPECIMEN_TYPE, Passed::new("specimen", specimen)), field, column, System::Si, cells, Message::new(msg, msg_len)) }
}

/// A text, or a word, of a field that is a table; OVS_EMPTY_CELL where that row has none.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_field_column_text(
    specimen: *const ovs_specimen,
    field: c_int,
    column: c_int,
    row: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let out = TextOut::new("text", text, text_len, needed);
    unsafe { read::column_text(Holder::Record(SPECIMEN_TYPE, Passed::new("specimen", specimen)), [field, column, row], out, Message::new(msg, msg_len)) }
}

/// Writes the record as JSON, from which it comes back the same to the bit.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_to_json(
    specimen: *const ovs_specimen,
    json: *mut c_char,
    json_len: c_int,
    needed: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let out = TextOut::new("json", json, json_len, needed);
    unsafe { read::to_json(SPECIMEN_TYPE, Passed::new("specimen", specimen), out, Message::new(msg, msg_len)) }
}

/// Makes the record from its JSON; every quantity in it is a text with its unit.
///
/// - `status`, out: the status of the call; may be null.
///
/// Returns the record, or null.
/// Example: {"size": "3 1/2 in", "label": "oak"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_from_json(
    json: *const c_char,
    json_len: c_int,
    status: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_specimen {
    let text = TextIn::new("json", json, json_len);
    unsafe { read::from_json(SPECIMEN_TYPE, text, status, Message::new(msg, msg_len)) }
}

/// A result of an answer that is such a record, as a pointer of its own.
///
/// - `status`, out: the status of the call; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_record_specimen(
    answer: *const ovs_answer,
    result: c_int,
    status: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_specimen {
    let answer = Passed::new("answer", answer);
    unsafe { read::record(SPECIMEN_TYPE, answer, result, status, Message::new(msg, msg_len)) }
}

/// Frees the record; null is nothing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_free(
    specimen: *mut ovs_specimen,
) {
    unsafe { free(specimen) }
}

static SPECIMEN_SCALAR: &Operation = row(OPERATIONS, "specimen_scalar");

/// Test only: a scalar row with a number, a count and a choice.
///
/// Equation: total = step x times.
/// Taken for granted: nothing.
///
/// - `step_in` (in): one step; at least 0 in, at most 3937.00787402 in.
/// - `times`: how often; from 0 to 1000.
/// - `colour`: a colour; 0 red, 1 dark blue.
/// - `total_ft` (ft), out: the sum of the steps.
/// - `colour_out`, out: the same colour; 0 red, 1 dark blue.
/// - `count`, out: times and one.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_specimen_scalar_us(1.5, 4, 1, ...) gives total_ft = 0.5, colour_out = 1, count = 5.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_scalar_us(
    step_in: f64,
    times: c_int,
    colour: c_int,
    total_ft: *mut f64,
    colour_out: *mut c_int,
    count: *mut c_int,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(total_ft), Output::Whole(colour_out), Output::Whole(count)];
    unsafe { scalar::one(SPECIMEN_SCALAR, System::Us, [step_in, f64::from(times), f64::from(colour)], results, notes, Message::new(msg, msg_len)) }
}

/// Test only: a scalar row with a number, a count and a choice.
///
/// Equation: total = step x times.
/// Taken for granted: nothing.
///
/// - `step_mm` (mm): one step; at least 0 mm, at most 100000 mm.
/// - `times`: how often; from 0 to 1000.
/// - `colour`: a colour; 0 red, 1 dark blue.
/// - `total_m` (m), out: the sum of the steps.
/// - `colour_out`, out: the same colour; 0 red, 1 dark blue.
/// - `count`, out: times and one.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_specimen_scalar_si(38.1, 4, 1, ...) gives total_m = 0.1524, colour_out = 1, count = 5.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_scalar_si(
    step_mm: f64,
    times: c_int,
    colour: c_int,
    total_m: *mut f64,
    colour_out: *mut c_int,
    count: *mut c_int,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(total_m), Output::Whole(colour_out), Output::Whole(count)];
    unsafe { scalar::one(SPECIMEN_SCALAR, System::Si, [step_mm, f64::from(times), f64::from(colour)], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_specimen_scalar_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_scalar_us_array(
    step_in: *const f64,
    times: *const c_int,
    colour: *const c_int,
    total_ft: *mut f64,
    colour_out: *mut c_int,
    count: *mut c_int,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(step_in), Input::Whole(times), Input::Whole(colour)], results: [Output::Numbers(total_ft), Output::Whole(colour_out), Output::Whole(count)], notes, n, bad_index };
    unsafe { scalar::array(SPECIMEN_SCALAR, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_specimen_scalar_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_scalar_si_array(
    step_mm: *const f64,
    times: *const c_int,
    colour: *const c_int,
    total_m: *mut f64,
    colour_out: *mut c_int,
    count: *mut c_int,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(step_mm), Input::Whole(times), Input::Whole(colour)], results: [Output::Numbers(total_m), Output::Whole(colour_out), Output::Whole(count)], notes, n, bad_index };
    unsafe { scalar::array(SPECIMEN_SCALAR, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_specimen_scalar_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_scalar_us_why(
    step_in: f64,
    times: c_int,
    colour: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(SPECIMEN_SCALAR, System::Us, [step_in, f64::from(times), f64::from(colour)], text) }
}

/// Why ovs_specimen_scalar_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_scalar_si_why(
    step_mm: f64,
    times: c_int,
    colour: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(SPECIMEN_SCALAR, System::Si, [step_mm, f64::from(times), f64::from(colour)], text) }
}

static SPECIMEN_FROM_TABLE: &Operation = row(OPERATIONS, "specimen_from_table");

/// Test only: a record made from a table, with optional ports.
///
/// Equation: size = greatest place.
/// Taken for granted: nothing.
///
/// - `rows_at_ft` (ft): place; at least 0 ft, at most 328.083989501 ft.
/// - `rows_rows`: the rows: how many rows, each a place with what was seen; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `hits` of `rows`: hits; from 0 to 100; may be left out.
///   - `colour` of `rows`: colour; 0 red, 1 dark blue; may be left out.
///   - `remark` of `rows`: remark; may be left out.
///   - `depth` of `rows` (in): depth; at least 0 in, at most 3937.00787402 in; may be left out.
///   - `label`: a label; where left out plain, because most are.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: A test-only record.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_CELL, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST,
/// OVS_KEY_UNKNOWN.
/// Since 0.1.0.
/// Example, as JSON: {"rows":[{"at":"1 ft"},{"at":"2 ft","hits":3,"colour":"red","remark":"old"}]}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_from_table_us(
    rows_at_ft: *const f64,
    rows_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_specimen {
    let given = [
        (0, Given::Table(rows_rows, &[(0, Input::Numbers(rows_at_ft))])),
    ];
    let request = Request::new(SPECIMEN_FROM_TABLE, System::Us, &given, options_json, options_len);
    unsafe { record::make(request, SPECIMEN_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Test only: a record made from a table, with optional ports.
///
/// Equation: size = greatest place.
/// Taken for granted: nothing.
///
/// - `rows_at_m` (m): place; at least 0 m, at most 100 m.
/// - `rows_rows`: the rows: how many rows, each a place with what was seen; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `hits` of `rows`: hits; from 0 to 100; may be left out.
///   - `colour` of `rows`: colour; 0 red, 1 dark blue; may be left out.
///   - `remark` of `rows`: remark; may be left out.
///   - `depth` of `rows` (mm): depth; at least 0 mm, at most 100000 mm; may be left out.
///   - `label`: a label; where left out plain, because most are.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: A test-only record.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_CELL, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST,
/// OVS_KEY_UNKNOWN.
/// Since 0.1.0.
/// Example, as JSON: {"rows":[{"at":"1 ft"},{"at":"2 ft","hits":3,"colour":"red","remark":"old"}]}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_from_table_si(
    rows_at_m: *const f64,
    rows_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_specimen {
    let given = [
        (0, Given::Table(rows_rows, &[(0, Input::Numbers(rows_at_m))])),
    ];
    let request = Request::new(SPECIMEN_FROM_TABLE, System::Si, &given, options_json, options_len);
    unsafe { record::make(request, SPECIMEN_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_specimen_from_table_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_from_table_us_why(
    rows_at_ft: *const f64,
    rows_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(rows_rows, &[(0, Input::Numbers(rows_at_ft))])),
    ];
    let request = Request::new(SPECIMEN_FROM_TABLE, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_specimen_from_table_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_from_table_si_why(
    rows_at_m: *const f64,
    rows_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(rows_rows, &[(0, Input::Numbers(rows_at_m))])),
    ];
    let request = Request::new(SPECIMEN_FROM_TABLE, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static SPECIMEN_EVERY_KIND: &Operation = row(OPERATIONS, "specimen_every_kind");

/// Test only: every kind of port, required and optional, in and out.
///
/// Equation: none.
/// Taken for granted: nothing.
///
/// - `volume_yd3` (yd3): a volume; more than 0 yd3.
/// - `times`: a count; from 0 to 1000.
/// - `colour`: a colour; 0 red, 1 dark blue.
/// - `label`, `label_len`: a text.
/// - `rows_at_ft` (ft): place; at least 0 ft, at most 328.083989501 ft.
/// - `rows_rows`: a table: how many rows, each a place with what was seen; at least 1.
/// - `specimen`: a record.
/// - `other`: an optional record; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `hits` of `rows`: hits; from 0 to 100; may be left out.
///   - `colour` of `rows`: colour; 0 red, 1 dark blue; may be left out.
///   - `remark` of `rows`: remark; may be left out.
///   - `depth` of `rows` (in): depth; at least 0 in, at most 3937.00787402 in; may be left out.
///   - `waste` (%): an optional share; at least 0 %; where left out 5 %, because usual.
///   - `again`: an optional count; from 0 to 1000; may be left out.
///   - `shade`: an optional colour; 0 red, 1 dark blue; where left out red, because plain.
///   - `remark`: an optional text; may be left out.
///   - `more`: an optional table; may be left out.
///   - `share` of `more` (%): share; at least 0 %; required.
///   - `other`: an optional record; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_SPECIMEN_EVERY_KIND_VOLUME (yd3): the volume with its share.
///   - OVS_SPECIMEN_EVERY_KIND_COUNT: the sum of the counts.
///   - OVS_SPECIMEN_EVERY_KIND_COLOUR: the second colour; 0 red, 1 dark blue.
///   - OVS_SPECIMEN_EVERY_KIND_LABEL: the texts joined.
///   - OVS_SPECIMEN_EVERY_KIND_ROWS: the same table.
///   - OVS_SPECIMEN_EVERY_KIND_SPECIMEN: the last record given.
///
/// Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN,
/// OVS_KIND_MISMATCH, OVS_KEY_UNKNOWN, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"volume":"2 yd3","times":2,"colour":"red","label":"a","rows":{"at":["1 ft","2 1/2 ft"],"hits":[null,3],"depth":["1/8 in",null]},"specimen":{"size":"2 in","label":"elm"}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_every_kind_us(
    volume_yd3: f64,
    times: c_int,
    colour: c_int,
    label: *const c_char,
    label_len: c_int,
    rows_at_ft: *const f64,
    rows_rows: c_int,
    specimen: *const ovs_specimen,
    other: *const ovs_specimen,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Number(volume_yd3)),
        (1, Given::Whole(times)),
        (2, Given::Whole(colour)),
        (3, Given::Text(TextIn::new("label", label, label_len))),
        (4, Given::Table(rows_rows, &[(0, Input::Numbers(rows_at_ft))])),
        (5, Given::Record(Passed::new("specimen", specimen))),
        (11, Given::Record(Passed::new("other", other))),
    ];
    let request = Request::new(SPECIMEN_EVERY_KIND, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Test only: every kind of port, required and optional, in and out.
///
/// Equation: none.
/// Taken for granted: nothing.
///
/// - `volume_m3` (m3): a volume; more than 0 m3.
/// - `times`: a count; from 0 to 1000.
/// - `colour`: a colour; 0 red, 1 dark blue.
/// - `label`, `label_len`: a text.
/// - `rows_at_m` (m): place; at least 0 m, at most 100 m.
/// - `rows_rows`: a table: how many rows, each a place with what was seen; at least 1.
/// - `specimen`: a record.
/// - `other`: an optional record; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `hits` of `rows`: hits; from 0 to 100; may be left out.
///   - `colour` of `rows`: colour; 0 red, 1 dark blue; may be left out.
///   - `remark` of `rows`: remark; may be left out.
///   - `depth` of `rows` (mm): depth; at least 0 mm, at most 100000 mm; may be left out.
///   - `waste` (%): an optional share; at least 0 %; where left out 5 %, because usual.
///   - `again`: an optional count; from 0 to 1000; may be left out.
///   - `shade`: an optional colour; 0 red, 1 dark blue; where left out red, because plain.
///   - `remark`: an optional text; may be left out.
///   - `more`: an optional table; may be left out.
///   - `share` of `more` (%): share; at least 0 %; required.
///   - `other`: an optional record; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_SPECIMEN_EVERY_KIND_VOLUME (m3): the volume with its share.
///   - OVS_SPECIMEN_EVERY_KIND_COUNT: the sum of the counts.
///   - OVS_SPECIMEN_EVERY_KIND_COLOUR: the second colour; 0 red, 1 dark blue.
///   - OVS_SPECIMEN_EVERY_KIND_LABEL: the texts joined.
///   - OVS_SPECIMEN_EVERY_KIND_ROWS: the same table.
///   - OVS_SPECIMEN_EVERY_KIND_SPECIMEN: the last record given.
///
/// Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN,
/// OVS_KIND_MISMATCH, OVS_KEY_UNKNOWN, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"volume":"2 yd3","times":2,"colour":"red","label":"a","rows":{"at":["1 ft","2 1/2 ft"],"hits":[null,3],"depth":["1/8 in",null]},"specimen":{"size":"2 in","label":"elm"}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_every_kind_si(
    volume_m3: f64,
    times: c_int,
    colour: c_int,
    label: *const c_char,
    label_len: c_int,
    rows_at_m: *const f64,
    rows_rows: c_int,
    specimen: *const ovs_specimen,
    other: *const ovs_specimen,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Number(volume_m3)),
        (1, Given::Whole(times)),
        (2, Given::Whole(colour)),
        (3, Given::Text(TextIn::new("label", label, label_len))),
        (4, Given::Table(rows_rows, &[(0, Input::Numbers(rows_at_m))])),
        (5, Given::Record(Passed::new("specimen", specimen))),
        (11, Given::Record(Passed::new("other", other))),
    ];
    let request = Request::new(SPECIMEN_EVERY_KIND, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_specimen_every_kind_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_every_kind_us_why(
    volume_yd3: f64,
    times: c_int,
    colour: c_int,
    label: *const c_char,
    label_len: c_int,
    rows_at_ft: *const f64,
    rows_rows: c_int,
    specimen: *const ovs_specimen,
    other: *const ovs_specimen,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Number(volume_yd3)),
        (1, Given::Whole(times)),
        (2, Given::Whole(colour)),
        (3, Given::Text(TextIn::new("label", label, label_len))),
        (4, Given::Table(rows_rows, &[(0, Input::Numbers(rows_at_ft))])),
        (5, Given::Record(Passed::new("specimen", specimen))),
        (11, Given::Record(Passed::new("other", other))),
    ];
    let request = Request::new(SPECIMEN_EVERY_KIND, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_specimen_every_kind_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_every_kind_si_why(
    volume_m3: f64,
    times: c_int,
    colour: c_int,
    label: *const c_char,
    label_len: c_int,
    rows_at_m: *const f64,
    rows_rows: c_int,
    specimen: *const ovs_specimen,
    other: *const ovs_specimen,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Number(volume_m3)),
        (1, Given::Whole(times)),
        (2, Given::Whole(colour)),
        (3, Given::Text(TextIn::new("label", label, label_len))),
        (4, Given::Table(rows_rows, &[(0, Input::Numbers(rows_at_m))])),
        (5, Given::Record(Passed::new("specimen", specimen))),
        (11, Given::Record(Passed::new("other", other))),
    ];
    let request = Request::new(SPECIMEN_EVERY_KIND, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static SPECIMEN_NUMBERS: &Operation = row(OPERATIONS, "specimen_numbers");

/// Test only: numbers, counts and words out of a record and an option.
///
/// Equation: half = size / 2.
/// Taken for granted: nothing.
///
/// - `specimen`: a record.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `gap` (in): an optional length; at least 0 in, at most 3937.00787402 in; may be left out.
/// - `results`, `results_len`, out: as many as there is room for, by their constants:
///   - OVS_SPECIMEN_NUMBERS_HALF (in): half of its size.
///   - OVS_SPECIMEN_NUMBERS_LETTERS: letters of its label.
///   - OVS_SPECIMEN_NUMBERS_COLOUR: dark blue with a gap, red without; 0 red, 1 dark blue.
///   - OVS_SPECIMEN_NUMBERS_GAP (ft): the gap, where it was given.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_CELL, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"specimen":{"size":"3 in","label":"ash"},"gap":"1/2 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_numbers_us(
    specimen: *const ovs_specimen,
    options_json: *const c_char,
    options_len: c_int,
    results: *mut f64,
    results_len: c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("specimen", specimen))),
    ];
    let request = Request::new(SPECIMEN_NUMBERS, System::Us, &given, options_json, options_len);
    unsafe { record::numbers(request, Numbers::new("results", results, results_len), Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Test only: numbers, counts and words out of a record and an option.
///
/// Equation: half = size / 2.
/// Taken for granted: nothing.
///
/// - `specimen`: a record.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `gap` (mm): an optional length; at least 0 mm, at most 100000 mm; may be left out.
/// - `results`, `results_len`, out: as many as there is room for, by their constants:
///   - OVS_SPECIMEN_NUMBERS_HALF (mm): half of its size.
///   - OVS_SPECIMEN_NUMBERS_LETTERS: letters of its label.
///   - OVS_SPECIMEN_NUMBERS_COLOUR: dark blue with a gap, red without; 0 red, 1 dark blue.
///   - OVS_SPECIMEN_NUMBERS_GAP (m): the gap, where it was given.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_CELL, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"specimen":{"size":"3 in","label":"ash"},"gap":"1/2 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_numbers_si(
    specimen: *const ovs_specimen,
    options_json: *const c_char,
    options_len: c_int,
    results: *mut f64,
    results_len: c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("specimen", specimen))),
    ];
    let request = Request::new(SPECIMEN_NUMBERS, System::Si, &given, options_json, options_len);
    unsafe { record::numbers(request, Numbers::new("results", results, results_len), Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_specimen_numbers_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_numbers_us_why(
    specimen: *const ovs_specimen,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("specimen", specimen))),
    ];
    let request = Request::new(SPECIMEN_NUMBERS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_specimen_numbers_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_numbers_si_why(
    specimen: *const ovs_specimen,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("specimen", specimen))),
    ];
    let request = Request::new(SPECIMEN_NUMBERS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static SPECIMEN_SUM: &Operation = row(OPERATIONS, "specimen_sum");

/// Test only: the sum of readings, in a table of which no column is required.
///
/// Equation: sum = sum(reading).
/// Taken for granted: nothing.
///
/// - `readings_reading_in` (in): reading; at least 0 in, at most 3937.00787402 in; may be left out; NaN for an
///   empty cell, may be null.
/// - `readings_rows`: the readings: how many rows, each a reading, or a place that was passed over.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `remark` of `readings`: remark; may be left out.
/// - `results`, `results_len`, out: as many as there is room for, by their constants:
///   - OVS_SPECIMEN_SUM_SUM (in): their sum.
///   - OVS_SPECIMEN_SUM_GIVEN: how many were given.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"readings":{"reading":["1 in",null,"2 in"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_sum_us(
    readings_reading_in: *const f64,
    readings_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    results: *mut f64,
    results_len: c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let given = [
        (0, Given::Table(readings_rows, &[(1, Input::Numbers(readings_reading_in))])),
    ];
    let request = Request::new(SPECIMEN_SUM, System::Us, &given, options_json, options_len);
    unsafe { record::numbers(request, Numbers::new("results", results, results_len), Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Test only: the sum of readings, in a table of which no column is required.
///
/// Equation: sum = sum(reading).
/// Taken for granted: nothing.
///
/// - `readings_reading_mm` (mm): reading; at least 0 mm, at most 100000 mm; may be left out; NaN for an empty cell,
///   may be null.
/// - `readings_rows`: the readings: how many rows, each a reading, or a place that was passed over.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `remark` of `readings`: remark; may be left out.
/// - `results`, `results_len`, out: as many as there is room for, by their constants:
///   - OVS_SPECIMEN_SUM_SUM (mm): their sum.
///   - OVS_SPECIMEN_SUM_GIVEN: how many were given.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"readings":{"reading":["1 in",null,"2 in"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_sum_si(
    readings_reading_mm: *const f64,
    readings_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    results: *mut f64,
    results_len: c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let given = [
        (0, Given::Table(readings_rows, &[(1, Input::Numbers(readings_reading_mm))])),
    ];
    let request = Request::new(SPECIMEN_SUM, System::Si, &given, options_json, options_len);
    unsafe { record::numbers(request, Numbers::new("results", results, results_len), Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_specimen_sum_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_sum_us_why(
    readings_reading_in: *const f64,
    readings_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(readings_rows, &[(1, Input::Numbers(readings_reading_in))])),
    ];
    let request = Request::new(SPECIMEN_SUM, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_specimen_sum_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_sum_si_why(
    readings_reading_mm: *const f64,
    readings_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(readings_rows, &[(1, Input::Numbers(readings_reading_mm))])),
    ];
    let request = Request::new(SPECIMEN_SUM, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static SPECIMEN_BYTES: &Operation = row(OPERATIONS, "specimen_bytes");

/// Test only: the bytes of a required and of an optional file.
///
/// Equation: sum = sum(byte x its place).
/// Taken for granted: nothing.
///
/// - `file`, `file_len`: the bytes of a file, as they are.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `attached`: the bytes of another file; the text of a file, or base64: and its bytes in base64; may be left
///     out.
/// - `results`, `results_len`, out: as many as there is room for, by their constants:
///   - OVS_SPECIMEN_BYTES_SUM: the sum of the bytes of both, each times its place in its file.
///   - OVS_SPECIMEN_BYTES_SIZE: how many bytes the first has.
///   - OVS_SPECIMEN_BYTES_ATTACHED_SIZE: how many bytes the other has.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Refuses with OVS_KIND_MISMATCH, OVS_NULL_POINTER, OVS_NOT_BASE64.
/// Since 0.1.0.
/// Example, as JSON: {"file":"x,y\n1,2\n"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_bytes_us(
    file: *const c_uchar,
    file_len: c_int,
    options_json: *const c_char,
    options_len: c_int,
    results: *mut f64,
    results_len: c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let given = [
        (0, Given::Bytes(BytesIn::new("file", file, file_len))),
    ];
    let request = Request::new(SPECIMEN_BYTES, System::Us, &given, options_json, options_len);
    unsafe { record::numbers(request, Numbers::new("results", results, results_len), Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Test only: the bytes of a required and of an optional file.
///
/// Equation: sum = sum(byte x its place).
/// Taken for granted: nothing.
///
/// - `file`, `file_len`: the bytes of a file, as they are.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `attached`: the bytes of another file; the text of a file, or base64: and its bytes in base64; may be left
///     out.
/// - `results`, `results_len`, out: as many as there is room for, by their constants:
///   - OVS_SPECIMEN_BYTES_SUM: the sum of the bytes of both, each times its place in its file.
///   - OVS_SPECIMEN_BYTES_SIZE: how many bytes the first has.
///   - OVS_SPECIMEN_BYTES_ATTACHED_SIZE: how many bytes the other has.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Refuses with OVS_KIND_MISMATCH, OVS_NULL_POINTER, OVS_NOT_BASE64.
/// Since 0.1.0.
/// Example, as JSON: {"file":"x,y\n1,2\n"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_bytes_si(
    file: *const c_uchar,
    file_len: c_int,
    options_json: *const c_char,
    options_len: c_int,
    results: *mut f64,
    results_len: c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let given = [
        (0, Given::Bytes(BytesIn::new("file", file, file_len))),
    ];
    let request = Request::new(SPECIMEN_BYTES, System::Si, &given, options_json, options_len);
    unsafe { record::numbers(request, Numbers::new("results", results, results_len), Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_specimen_bytes_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_bytes_us_why(
    file: *const c_uchar,
    file_len: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Bytes(BytesIn::new("file", file, file_len))),
    ];
    let request = Request::new(SPECIMEN_BYTES, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_specimen_bytes_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_bytes_si_why(
    file: *const c_uchar,
    file_len: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Bytes(BytesIn::new("file", file, file_len))),
    ];
    let request = Request::new(SPECIMEN_BYTES, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}
