//! The operations of `grade`.
//!
//! Made from the table of operations: change the table and run `cargo run -p overslab-tests`.

use crate::border::{Input, Message, Output, TextOut, row, scalar};
use crate::border::scalar::Arrays;
use overslab::operation::Operation;
use overslab::operations::OPERATIONS;
use overslab::quantity::System;
use std::ffi::{c_char, c_int};

static FALL: &Operation = row(OPERATIONS, "fall");

/// The fall of a surface that loses a height over a run.
///
/// Equation: fall = drop / run.
/// Taken for granted: drop and run are measured plumb and level, not along the slope.
///
/// - `drop_in` (in): height lost; at least 0 in, at most 1200 in.
/// - `run_ft` (ft): level distance over which it is lost; more than 0 ft, at most 10000 ft.
/// - `fall_in_per_ft` (in/ft), out: fall of the surface.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_fall_us(2, 20, ...) gives fall_in_per_ft = 0.1.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_fall_us(
    drop_in: f64,
    run_ft: f64,
    fall_in_per_ft: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(fall_in_per_ft)];
    unsafe { scalar::one(FALL, System::Us, [drop_in, run_ft], results, notes, Message::new(msg, msg_len)) }
}

/// The fall of a surface that loses a height over a run.
///
/// Equation: fall = drop / run.
/// Taken for granted: drop and run are measured plumb and level, not along the slope.
///
/// - `drop_mm` (mm): height lost; at least 0 mm, at most 30480 mm.
/// - `run_m` (m): level distance over which it is lost; more than 0 m, at most 3048 m.
/// - `fall_percent` (%), out: fall of the surface.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_fall_si(50.8, 6.096, ...) gives fall_percent = 0.833333.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_fall_si(
    drop_mm: f64,
    run_m: f64,
    fall_percent: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(fall_percent)];
    unsafe { scalar::one(FALL, System::Si, [drop_mm, run_m], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_fall_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_fall_us_array(
    drop_in: *const f64,
    run_ft: *const f64,
    fall_in_per_ft: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(drop_in), Input::Numbers(run_ft)], results: [Output::Numbers(fall_in_per_ft)], notes, n, bad_index };
    unsafe { scalar::array(FALL, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_fall_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_fall_si_array(
    drop_mm: *const f64,
    run_m: *const f64,
    fall_percent: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(drop_mm), Input::Numbers(run_m)], results: [Output::Numbers(fall_percent)], notes, n, bad_index };
    unsafe { scalar::array(FALL, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_fall_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_fall_us_why(
    drop_in: f64,
    run_ft: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(FALL, System::Us, [drop_in, run_ft], text) }
}

/// Why ovs_fall_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_fall_si_why(
    drop_mm: f64,
    run_m: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(FALL, System::Si, [drop_mm, run_m], text) }
}

static DROP: &Operation = row(OPERATIONS, "drop");

/// The height that a surface loses over a run at a fall.
///
/// Equation: drop = fall x run.
/// Taken for granted: the run is measured level, not along the slope.
///
/// - `fall_in_per_ft` (in/ft): fall of the surface; at least 0 in/ft, at most 12 in/ft.
/// - `run_ft` (ft): level distance; more than 0 ft, at most 10000 ft.
/// - `drop_in` (in), out: height lost.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_drop_us(0.125, 32, ...) gives drop_in = 4.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drop_us(
    fall_in_per_ft: f64,
    run_ft: f64,
    drop_in: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(drop_in)];
    unsafe { scalar::one(DROP, System::Us, [fall_in_per_ft, run_ft], results, notes, Message::new(msg, msg_len)) }
}

/// The height that a surface loses over a run at a fall.
///
/// Equation: drop = fall x run.
/// Taken for granted: the run is measured level, not along the slope.
///
/// - `fall_percent` (%): fall of the surface; at least 0 %, at most 100 %.
/// - `run_m` (m): level distance; more than 0 m, at most 3048 m.
/// - `drop_mm` (mm), out: height lost.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_drop_si(1.04167, 9.7536, ...) gives drop_mm = 101.6.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drop_si(
    fall_percent: f64,
    run_m: f64,
    drop_mm: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(drop_mm)];
    unsafe { scalar::one(DROP, System::Si, [fall_percent, run_m], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_drop_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drop_us_array(
    fall_in_per_ft: *const f64,
    run_ft: *const f64,
    drop_in: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(fall_in_per_ft), Input::Numbers(run_ft)], results: [Output::Numbers(drop_in)], notes, n, bad_index };
    unsafe { scalar::array(DROP, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_drop_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drop_si_array(
    fall_percent: *const f64,
    run_m: *const f64,
    drop_mm: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(fall_percent), Input::Numbers(run_m)], results: [Output::Numbers(drop_mm)], notes, n, bad_index };
    unsafe { scalar::array(DROP, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_drop_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drop_us_why(
    fall_in_per_ft: f64,
    run_ft: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(DROP, System::Us, [fall_in_per_ft, run_ft], text) }
}

/// Why ovs_drop_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drop_si_why(
    fall_percent: f64,
    run_m: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(DROP, System::Si, [fall_percent, run_m], text) }
}

static TRIANGULAR_PRISM: &Operation = row(OPERATIONS, "triangular_prism");

/// The volume between old slab and finish over one triangle, split where they meet.
///
/// Equation: net = area (t1 + t2 + t3) / 3; one corner of the other sign: high = (area / 3) t3^3 / ((t3 - t1) (t3 -
/// t2)).
/// Taken for granted: both surfaces are plane over the triangle.
///
/// - `area_ft2` (ft2): plan area of the triangle; more than 0 ft2, at most 10763910.4167 ft2.
/// - `thickness_1_in` (in): thickness at the first corner; at least -3937.00787402 in, at most 3937.00787402 in.
/// - `thickness_2_in` (in): thickness at the second corner; at least -3937.00787402 in, at most 3937.00787402 in.
/// - `thickness_3_in` (in): thickness at the third corner; at least -3937.00787402 in, at most 3937.00787402 in.
/// - `net_ft3` (ft3), out: fill less high spots.
/// - `fill_ft3` (ft3), out: fill above the old slab.
/// - `high_ft3` (ft3), out: old slab above the finish.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_triangular_prism_us(50, 3, 4, 5, ...) gives net_ft3 = 16.6667, fill_ft3 = 16.6667, high_ft3 = 0.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_triangular_prism_us(
    area_ft2: f64,
    thickness_1_in: f64,
    thickness_2_in: f64,
    thickness_3_in: f64,
    net_ft3: *mut f64,
    fill_ft3: *mut f64,
    high_ft3: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(net_ft3), Output::Numbers(fill_ft3), Output::Numbers(high_ft3)];
    unsafe { scalar::one(TRIANGULAR_PRISM, System::Us, [area_ft2, thickness_1_in, thickness_2_in, thickness_3_in], results, notes, Message::new(msg, msg_len)) }
}

/// The volume between old slab and finish over one triangle, split where they meet.
///
/// Equation: net = area (t1 + t2 + t3) / 3; one corner of the other sign: high = (area / 3) t3^3 / ((t3 - t1) (t3 -
/// t2)).
/// Taken for granted: both surfaces are plane over the triangle.
///
/// - `area_m2` (m2): plan area of the triangle; more than 0 m2, at most 1000000 m2.
/// - `thickness_1_mm` (mm): thickness at the first corner; at least -100000 mm, at most 100000 mm.
/// - `thickness_2_mm` (mm): thickness at the second corner; at least -100000 mm, at most 100000 mm.
/// - `thickness_3_mm` (mm): thickness at the third corner; at least -100000 mm, at most 100000 mm.
/// - `net_m3` (m3), out: fill less high spots.
/// - `fill_m3` (m3), out: fill above the old slab.
/// - `high_m3` (m3), out: old slab above the finish.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_triangular_prism_si(4.64515, 76.2, 101.6, 127, ...) gives net_m3 = 0.471947, fill_m3 = 0.471947, high_m3 = 0.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_triangular_prism_si(
    area_m2: f64,
    thickness_1_mm: f64,
    thickness_2_mm: f64,
    thickness_3_mm: f64,
    net_m3: *mut f64,
    fill_m3: *mut f64,
    high_m3: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(net_m3), Output::Numbers(fill_m3), Output::Numbers(high_m3)];
    unsafe { scalar::one(TRIANGULAR_PRISM, System::Si, [area_m2, thickness_1_mm, thickness_2_mm, thickness_3_mm], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_triangular_prism_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_triangular_prism_us_array(
    area_ft2: *const f64,
    thickness_1_in: *const f64,
    thickness_2_in: *const f64,
    thickness_3_in: *const f64,
    net_ft3: *mut f64,
    fill_ft3: *mut f64,
    high_ft3: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(area_ft2), Input::Numbers(thickness_1_in), Input::Numbers(thickness_2_in), Input::Numbers(thickness_3_in)], results: [Output::Numbers(net_ft3), Output::Numbers(fill_ft3), Output::Numbers(high_ft3)], notes, n, bad_index };
    unsafe { scalar::array(TRIANGULAR_PRISM, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_triangular_prism_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_triangular_prism_si_array(
    area_m2: *const f64,
    thickness_1_mm: *const f64,
    thickness_2_mm: *const f64,
    thickness_3_mm: *const f64,
    net_m3: *mut f64,
    fill_m3: *mut f64,
    high_m3: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(area_m2), Input::Numbers(thickness_1_mm), Input::Numbers(thickness_2_mm), Input::Numbers(thickness_3_mm)], results: [Output::Numbers(net_m3), Output::Numbers(fill_m3), Output::Numbers(high_m3)], notes, n, bad_index };
    unsafe { scalar::array(TRIANGULAR_PRISM, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_triangular_prism_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_triangular_prism_us_why(
    area_ft2: f64,
    thickness_1_in: f64,
    thickness_2_in: f64,
    thickness_3_in: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(TRIANGULAR_PRISM, System::Us, [area_ft2, thickness_1_in, thickness_2_in, thickness_3_in], text) }
}

/// Why ovs_triangular_prism_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_triangular_prism_si_why(
    area_m2: f64,
    thickness_1_mm: f64,
    thickness_2_mm: f64,
    thickness_3_mm: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(TRIANGULAR_PRISM, System::Si, [area_m2, thickness_1_mm, thickness_2_mm, thickness_3_mm], text) }
}
