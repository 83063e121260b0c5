//! The test-only operations.
//!
//! Made from the table of operations; change the table and run `BLESS=1 cargo test -p overslab-tests fresh`.

use crate::border::scalar::{self, Arrays};
use crate::border::{Input, Message, Output, TextOut, row};
use overslab::specimen::OPERATIONS;
use overslab::operation::Operation;
use overslab::quantity::System;
use std::ffi::{c_char, c_int};

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
/// - `count_value`, out: times and one.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_specimen_scalar_us(1.5, 4, 1, ...) gives total_ft = 0.5, colour_out = 1, count_value = 5.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_scalar_us(
    step_in: f64,
    times: c_int,
    colour: c_int,
    total_ft: *mut f64,
    colour_out: *mut c_int,
    count_value: *mut c_int,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(total_ft), Output::Whole(colour_out), Output::Whole(count_value)];
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
/// - `count_value`, out: times and one.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_specimen_scalar_si(38.1, 4, 1, ...) gives total_m = 0.1524, colour_out = 1, count_value = 5.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_specimen_scalar_si(
    step_mm: f64,
    times: c_int,
    colour: c_int,
    total_m: *mut f64,
    colour_out: *mut c_int,
    count_value: *mut c_int,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(total_m), Output::Whole(colour_out), Output::Whole(count_value)];
    unsafe { scalar::one(SPECIMEN_SCALAR, System::Si, [step_mm, f64::from(times), f64::from(colour)], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_specimen_scalar_us for each of `n` elements.
///
/// - `step_in` (in): one step; at least 0 in, at most 3937.00787402 in.
/// - `times`: how often; from 0 to 1000.
/// - `colour`: a colour; 0 red, 1 dark blue.
/// - `total_ft` (ft), out: the sum of the steps.
/// - `colour_out`, out: the same colour; 0 red, 1 dark blue.
/// - `count_value`, out: times and one.
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
    count_value: *mut c_int,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(step_in), Input::Whole(times), Input::Whole(colour)], results: [Output::Numbers(total_ft), Output::Whole(colour_out), Output::Whole(count_value)], notes, n, bad_index };
    unsafe { scalar::array(SPECIMEN_SCALAR, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_specimen_scalar_si for each of `n` elements.
///
/// - `step_mm` (mm): one step; at least 0 mm, at most 100000 mm.
/// - `times`: how often; from 0 to 1000.
/// - `colour`: a colour; 0 red, 1 dark blue.
/// - `total_m` (m), out: the sum of the steps.
/// - `colour_out`, out: the same colour; 0 red, 1 dark blue.
/// - `count_value`, out: times and one.
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
    count_value: *mut c_int,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(step_mm), Input::Whole(times), Input::Whole(colour)], results: [Output::Numbers(total_m), Output::Whole(colour_out), Output::Whole(count_value)], notes, n, bad_index };
    unsafe { scalar::array(SPECIMEN_SCALAR, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_specimen_scalar_us refuses these inputs, in full; where it does not, the meaning of its note or nothing.
///
/// - `step_in` (in): one step; at least 0 in, at most 3937.00787402 in.
/// - `times`: how often; from 0 to 1000.
/// - `colour`: a colour; 0 red, 1 dark blue.
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

/// Why ovs_specimen_scalar_si refuses these inputs, in full; where it does not, the meaning of its note or nothing.
///
/// - `step_mm` (mm): one step; at least 0 mm, at most 100000 mm.
/// - `times`: how often; from 0 to 1000.
/// - `colour`: a colour; 0 red, 1 dark blue.
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

static SPECIMEN_EVERY_KIND: &Operation = row(OPERATIONS, "specimen_every_kind");
