//! The operations of `order`.
//!
//! Made from the table of operations; change the table and run `BLESS=1 cargo test -p overslab-tests fresh`.

use crate::border::scalar::{self, Arrays};
use crate::border::{Input, Message, Output, TextOut, row};
use overslab::operations::OPERATIONS;
use overslab::operation::Operation;
use overslab::quantity::System;
use std::ffi::{c_char, c_int};

static PRISMOID: &Operation = row(OPERATIONS, "prismoid");

/// The volume of a body between two end sections with a third half way.
///
/// Equation: volume = length (first + 4 middle + last) / 6.
/// Taken for granted: the sides are plane or warped evenly between the sections.
///
/// - `length_ft` (ft): length between the end sections; more than 0 ft, at most 32808.3989501 ft.
/// - `first_ft2` (ft2): area of the first section; at least 0 ft2, at most 10763910.4167 ft2.
/// - `middle_ft2` (ft2): area of the section half way; at least 0 ft2, at most 10763910.4167 ft2.
/// - `last_ft2` (ft2): area of the last section; at least 0 ft2, at most 10763910.4167 ft2.
/// - `volume_yd3` (yd3), out: volume of the body.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: V = L (A1 + 4 Am + A2) / 6: Surveying textbooks, earthwork volumes (any), prismoidal formula.
/// Since 0.1.0.
/// Example: ovs_prismoid_us(12, 2, 1, 0, ...) gives volume_yd3 = 0.444444.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_prismoid_us(
    length_ft: f64,
    first_ft2: f64,
    middle_ft2: f64,
    last_ft2: f64,
    volume_yd3: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(volume_yd3)];
    unsafe { scalar::one(PRISMOID, System::Us, [length_ft, first_ft2, middle_ft2, last_ft2], results, notes, Message::new(msg, msg_len)) }
}

/// The volume of a body between two end sections with a third half way.
///
/// Equation: volume = length (first + 4 middle + last) / 6.
/// Taken for granted: the sides are plane or warped evenly between the sections.
///
/// - `length_m` (m): length between the end sections; more than 0 m, at most 10000 m.
/// - `first_m2` (m2): area of the first section; at least 0 m2, at most 1000000 m2.
/// - `middle_m2` (m2): area of the section half way; at least 0 m2, at most 1000000 m2.
/// - `last_m2` (m2): area of the last section; at least 0 m2, at most 1000000 m2.
/// - `volume_m3` (m3), out: volume of the body.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: V = L (A1 + 4 Am + A2) / 6: Surveying textbooks, earthwork volumes (any), prismoidal formula.
/// Since 0.1.0.
/// Example: ovs_prismoid_si(3.6576, 0.185806, 0.092903, 0, ...) gives volume_m3 = 0.339802.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_prismoid_si(
    length_m: f64,
    first_m2: f64,
    middle_m2: f64,
    last_m2: f64,
    volume_m3: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(volume_m3)];
    unsafe { scalar::one(PRISMOID, System::Si, [length_m, first_m2, middle_m2, last_m2], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_prismoid_us for each of `n` elements.
///
/// - `length_ft` (ft): length between the end sections; more than 0 ft, at most 32808.3989501 ft.
/// - `first_ft2` (ft2): area of the first section; at least 0 ft2, at most 10763910.4167 ft2.
/// - `middle_ft2` (ft2): area of the section half way; at least 0 ft2, at most 10763910.4167 ft2.
/// - `last_ft2` (ft2): area of the last section; at least 0 ft2, at most 10763910.4167 ft2.
/// - `volume_yd3` (yd3), out: volume of the body.
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_prismoid_us_array(
    length_ft: *const f64,
    first_ft2: *const f64,
    middle_ft2: *const f64,
    last_ft2: *const f64,
    volume_yd3: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(length_ft), Input::Numbers(first_ft2), Input::Numbers(middle_ft2), Input::Numbers(last_ft2)], results: [Output::Numbers(volume_yd3)], notes, n, bad_index };
    unsafe { scalar::array(PRISMOID, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_prismoid_si for each of `n` elements.
///
/// - `length_m` (m): length between the end sections; more than 0 m, at most 10000 m.
/// - `first_m2` (m2): area of the first section; at least 0 m2, at most 1000000 m2.
/// - `middle_m2` (m2): area of the section half way; at least 0 m2, at most 1000000 m2.
/// - `last_m2` (m2): area of the last section; at least 0 m2, at most 1000000 m2.
/// - `volume_m3` (m3), out: volume of the body.
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_prismoid_si_array(
    length_m: *const f64,
    first_m2: *const f64,
    middle_m2: *const f64,
    last_m2: *const f64,
    volume_m3: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(length_m), Input::Numbers(first_m2), Input::Numbers(middle_m2), Input::Numbers(last_m2)], results: [Output::Numbers(volume_m3)], notes, n, bad_index };
    unsafe { scalar::array(PRISMOID, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_prismoid_us refuses these inputs, in full; where it does not, the meaning of its note or nothing.
///
/// - `length_ft` (ft): length between the end sections; more than 0 ft, at most 32808.3989501 ft.
/// - `first_ft2` (ft2): area of the first section; at least 0 ft2, at most 10763910.4167 ft2.
/// - `middle_ft2` (ft2): area of the section half way; at least 0 ft2, at most 10763910.4167 ft2.
/// - `last_ft2` (ft2): area of the last section; at least 0 ft2, at most 10763910.4167 ft2.
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_prismoid_us_why(
    length_ft: f64,
    first_ft2: f64,
    middle_ft2: f64,
    last_ft2: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(PRISMOID, System::Us, [length_ft, first_ft2, middle_ft2, last_ft2], text) }
}

/// Why ovs_prismoid_si refuses these inputs, in full; where it does not, the meaning of its note or nothing.
///
/// - `length_m` (m): length between the end sections; more than 0 m, at most 10000 m.
/// - `first_m2` (m2): area of the first section; at least 0 m2, at most 1000000 m2.
/// - `middle_m2` (m2): area of the section half way; at least 0 m2, at most 1000000 m2.
/// - `last_m2` (m2): area of the last section; at least 0 m2, at most 1000000 m2.
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_prismoid_si_why(
    length_m: f64,
    first_m2: f64,
    middle_m2: f64,
    last_m2: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(PRISMOID, System::Si, [length_m, first_m2, middle_m2, last_m2], text) }
}

static TRUCKS: &Operation = row(OPERATIONS, "trucks");

/// How many truck loads an order takes, and what the last one carries.
///
/// Equation: loads = ordered / capacity, rounded up; last = ordered - (loads - 1) capacity.
/// Taken for granted: every truck but the last is full.
///
/// - `ordered_yd3` (yd3): volume ordered; more than 0 yd3, at most 130795.061931 yd3.
/// - `capacity_yd3` (yd3): what one truck carries; at least 0.130795061931 yd3, at most 26.1590123863 yd3.
/// - `loads`, out: truck loads.
/// - `last_yd3` (yd3), out: what the last truck carries.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: a full truck carries about 10 yd3: NRMCA fleet survey (2017), table 4: typical full load 9.8 yd3, range 8.2 to 11.8, as quoted elsewhere.
/// Since 0.1.0.
/// Example: ovs_trucks_us(14, 9.8, ...) gives loads = 2, last_yd3 = 4.2.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_trucks_us(
    ordered_yd3: f64,
    capacity_yd3: f64,
    loads: *mut c_int,
    last_yd3: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Whole(loads), Output::Numbers(last_yd3)];
    unsafe { scalar::one(TRUCKS, System::Us, [ordered_yd3, capacity_yd3], results, notes, Message::new(msg, msg_len)) }
}

/// How many truck loads an order takes, and what the last one carries.
///
/// Equation: loads = ordered / capacity, rounded up; last = ordered - (loads - 1) capacity.
/// Taken for granted: every truck but the last is full.
///
/// - `ordered_m3` (m3): volume ordered; more than 0 m3, at most 100000 m3.
/// - `capacity_m3` (m3): what one truck carries; at least 0.1 m3, at most 20 m3.
/// - `loads`, out: truck loads.
/// - `last_m3` (m3), out: what the last truck carries.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: a full truck carries about 10 yd3: NRMCA fleet survey (2017), table 4: typical full load 9.8 yd3, range 8.2 to 11.8, as quoted elsewhere.
/// Since 0.1.0.
/// Example: ovs_trucks_si(10.7038, 7.49264, ...) gives loads = 2, last_m3 = 3.21113.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_trucks_si(
    ordered_m3: f64,
    capacity_m3: f64,
    loads: *mut c_int,
    last_m3: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Whole(loads), Output::Numbers(last_m3)];
    unsafe { scalar::one(TRUCKS, System::Si, [ordered_m3, capacity_m3], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_trucks_us for each of `n` elements.
///
/// - `ordered_yd3` (yd3): volume ordered; more than 0 yd3, at most 130795.061931 yd3.
/// - `capacity_yd3` (yd3): what one truck carries; at least 0.130795061931 yd3, at most 26.1590123863 yd3.
/// - `loads`, out: truck loads.
/// - `last_yd3` (yd3), out: what the last truck carries.
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_trucks_us_array(
    ordered_yd3: *const f64,
    capacity_yd3: *const f64,
    loads: *mut c_int,
    last_yd3: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(ordered_yd3), Input::Numbers(capacity_yd3)], results: [Output::Whole(loads), Output::Numbers(last_yd3)], notes, n, bad_index };
    unsafe { scalar::array(TRUCKS, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_trucks_si for each of `n` elements.
///
/// - `ordered_m3` (m3): volume ordered; more than 0 m3, at most 100000 m3.
/// - `capacity_m3` (m3): what one truck carries; at least 0.1 m3, at most 20 m3.
/// - `loads`, out: truck loads.
/// - `last_m3` (m3), out: what the last truck carries.
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_trucks_si_array(
    ordered_m3: *const f64,
    capacity_m3: *const f64,
    loads: *mut c_int,
    last_m3: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(ordered_m3), Input::Numbers(capacity_m3)], results: [Output::Whole(loads), Output::Numbers(last_m3)], notes, n, bad_index };
    unsafe { scalar::array(TRUCKS, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_trucks_us refuses these inputs, in full; where it does not, the meaning of its note or nothing.
///
/// - `ordered_yd3` (yd3): volume ordered; more than 0 yd3, at most 130795.061931 yd3.
/// - `capacity_yd3` (yd3): what one truck carries; at least 0.130795061931 yd3, at most 26.1590123863 yd3.
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_trucks_us_why(
    ordered_yd3: f64,
    capacity_yd3: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(TRUCKS, System::Us, [ordered_yd3, capacity_yd3], text) }
}

/// Why ovs_trucks_si refuses these inputs, in full; where it does not, the meaning of its note or nothing.
///
/// - `ordered_m3` (m3): volume ordered; more than 0 m3, at most 100000 m3.
/// - `capacity_m3` (m3): what one truck carries; at least 0.1 m3, at most 20 m3.
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_trucks_si_why(
    ordered_m3: f64,
    capacity_m3: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(TRUCKS, System::Si, [ordered_m3, capacity_m3], text) }
}

static ORDER: &Operation = row(OPERATIONS, "order");
