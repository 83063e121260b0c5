//! The operations of `order`.
//!
//! Made from the table of operations: change the table and run `cargo run -p overslab-tests`.

use crate::answer::ovs_answer;
use crate::border::{Given, Input, Message, Notes, Output, Request, TextOut, record, row, scalar};
use crate::border::scalar::Arrays;
use overslab::operation::Operation;
use overslab::operations::OPERATIONS;
use overslab::quantity::System;
use std::ffi::{c_char, c_int};

/// The result `net` (yd3 or m3): sum of what is poured.
pub const OVS_ORDER_NET: c_int = 0;

/// The result `figured` (yd3 or m3): net volume and allowances.
pub const OVS_ORDER_FIGURED: c_int = 1;

/// The result `ordered` (yd3 or m3): figured volume rounded up to the step.
pub const OVS_ORDER_ORDERED: c_int = 2;

/// The result `spare` (yd3 or m3): ordered over figured.
pub const OVS_ORDER_SPARE: c_int = 3;

/// The result `loads`: truck loads.
pub const OVS_ORDER_LOADS: c_int = 4;

/// The result `last` (yd3 or m3): what the last truck carries.
pub const OVS_ORDER_LAST: c_int = 5;

/// The result `allowed`: each allowance as a volume.
pub const OVS_ORDER_ALLOWED: c_int = 6;

/// The column `name` of `allowed`: what it is for.
pub const OVS_ORDER_ALLOWED_NAME: c_int = 0;

/// The column `volume` of `allowed` (yd3 or m3): how much.
pub const OVS_ORDER_ALLOWED_VOLUME: c_int = 1;

/// How many results there are.
pub const OVS_ORDER_RESULTS: c_int = 7;

static BLOCK: &Operation = row(OPERATIONS, "block");

/// The volume of a slab, a ramp or a step from its length, width and mean depth.
///
/// Equation: volume = length x width x depth.
/// Taken for granted: rectangular in plan; the depth is the mean one.
///
/// - `length_ft` (ft): length; more than 0 ft, at most 32808.3989501 ft.
/// - `width_ft` (ft): width; more than 0 ft, at most 32808.3989501 ft.
/// - `depth_in` (in): mean depth; more than 0 in, at most 3937.00787402 in.
/// - `volume_yd3` (yd3), out: volume.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_block_us(60, 30, 4, ...) gives volume_yd3 = 22.2222.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_block_us(
    length_ft: f64,
    width_ft: f64,
    depth_in: f64,
    volume_yd3: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(volume_yd3)];
    unsafe { scalar::one(BLOCK, System::Us, [length_ft, width_ft, depth_in], results, notes, Message::new(msg, msg_len)) }
}

/// The volume of a slab, a ramp or a step from its length, width and mean depth.
///
/// Equation: volume = length x width x depth.
/// Taken for granted: rectangular in plan; the depth is the mean one.
///
/// - `length_m` (m): length; more than 0 m, at most 10000 m.
/// - `width_m` (m): width; more than 0 m, at most 10000 m.
/// - `depth_mm` (mm): mean depth; more than 0 mm, at most 100000 mm.
/// - `volume_m3` (m3), out: volume.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_block_si(18.288, 9.144, 101.6, ...) gives volume_m3 = 16.9901.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_block_si(
    length_m: f64,
    width_m: f64,
    depth_mm: f64,
    volume_m3: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(volume_m3)];
    unsafe { scalar::one(BLOCK, System::Si, [length_m, width_m, depth_mm], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_block_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_block_us_array(
    length_ft: *const f64,
    width_ft: *const f64,
    depth_in: *const f64,
    volume_yd3: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(length_ft), Input::Numbers(width_ft), Input::Numbers(depth_in)], results: [Output::Numbers(volume_yd3)], notes, n, bad_index };
    unsafe { scalar::array(BLOCK, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_block_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_block_si_array(
    length_m: *const f64,
    width_m: *const f64,
    depth_mm: *const f64,
    volume_m3: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(length_m), Input::Numbers(width_m), Input::Numbers(depth_mm)], results: [Output::Numbers(volume_m3)], notes, n, bad_index };
    unsafe { scalar::array(BLOCK, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_block_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_block_us_why(
    length_ft: f64,
    width_ft: f64,
    depth_in: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(BLOCK, System::Us, [length_ft, width_ft, depth_in], text) }
}

/// Why ovs_block_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_block_si_why(
    length_m: f64,
    width_m: f64,
    depth_mm: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(BLOCK, System::Si, [length_m, width_m, depth_mm], text) }
}

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

/// ovs_prismoid_us for each of `n` elements; an array may be input and result at once.
///
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

/// ovs_prismoid_si for each of `n` elements; an array may be input and result at once.
///
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

/// Why ovs_prismoid_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
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

/// Why ovs_prismoid_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
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
/// Basis: a full truck carries about 10 yd3: NRMCA fleet survey (2017), table 4: typical full load 9.8 yd3, range
/// 8.2 to 11.8, as quoted elsewhere.
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
/// Basis: a full truck carries about 10 yd3: NRMCA fleet survey (2017), table 4: typical full load 9.8 yd3, range
/// 8.2 to 11.8, as quoted elsewhere.
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

/// ovs_trucks_us for each of `n` elements; an array may be input and result at once.
///
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

/// ovs_trucks_si for each of `n` elements; an array may be input and result at once.
///
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

/// Why ovs_trucks_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
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

/// Why ovs_trucks_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
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

/// What to order: net volume, named allowances, the plant's step, trucks.
///
/// Equation: figured = net + sum(net x share); ordered = figured rounded up to the step.
/// Taken for granted: allowances are shares of the net volume and add up.
///
/// - `floor_yd3` (yd3): volume of the floor; at least 0 yd3, at most 130795.061931 yd3.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `extras`: volumes poured beside the floor; may be left out.
///   - `name` of `extras`: what it is for; required.
///   - `volume` of `extras` (yd3): how much; at least 0 yd3, at most 130795.061931 yd3; required.
///   - `allowances`: shares allowed on top; where left out [{"name": "waste", "share": "3 %"}], because a surveyed
///     floor: what sticks to tools and strike-off.
///   - `name` of `allowances`: what it is for; required.
///   - `share` of `allowances` (%): share of the net volume; at least 0 %, at most 50 %; required.
///   - `step` (yd3): the step the plant sells by; at least 0.00130795061931 yd3, at most 6.53975309657 yd3; where
///     left out 1/4 yd3, because plants usually sell by the quarter yard.
///   - `capacity` (yd3): what one truck carries; at least 0.130795061931 yd3, at most 26.1590123863 yd3; where left
///     out 10 yd3, because a full truck carries about so much.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_ORDER_NET (yd3): sum of what is poured.
///   - OVS_ORDER_FIGURED (yd3): net volume and allowances.
///   - OVS_ORDER_ORDERED (yd3): figured volume rounded up to the step.
///   - OVS_ORDER_SPARE (yd3): ordered over figured.
///   - OVS_ORDER_LOADS: truck loads.
///   - OVS_ORDER_LAST (yd3): what the last truck carries.
///   - OVS_ORDER_ALLOWED: each allowance as a volume.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE.
/// Basis: 5 to 10 % for waste and uneven thickness on ground; less where the surface is surveyed: Extension lesson
/// on estimating concrete (after Cooper, Agricultural Mechanics), waste and uneven thickness.
/// Basis: plants sell in steps of 1/4 yd3: common practice, no source.
/// Basis: a full truck carries about 10 yd3: NRMCA fleet survey (2017), table 4: typical full load 9.8 yd3, range
/// 8.2 to 11.8, as quoted elsewhere.
/// Since 0.1.0.
/// Example, as JSON: {"floor":"8.78 yd3","extras":[{"name":"ramp","volume":"0.59 yd3"}]}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_order_us(
    floor_yd3: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Number(floor_yd3)),
    ];
    let request = Request::new(ORDER, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// What to order: net volume, named allowances, the plant's step, trucks.
///
/// Equation: figured = net + sum(net x share); ordered = figured rounded up to the step.
/// Taken for granted: allowances are shares of the net volume and add up.
///
/// - `floor_m3` (m3): volume of the floor; at least 0 m3, at most 100000 m3.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `extras`: volumes poured beside the floor; may be left out.
///   - `name` of `extras`: what it is for; required.
///   - `volume` of `extras` (m3): how much; at least 0 m3, at most 100000 m3; required.
///   - `allowances`: shares allowed on top; where left out [{"name": "waste", "share": "3 %"}], because a surveyed
///     floor: what sticks to tools and strike-off.
///   - `name` of `allowances`: what it is for; required.
///   - `share` of `allowances` (%): share of the net volume; at least 0 %, at most 50 %; required.
///   - `step` (m3): the step the plant sells by; at least 0.001 m3, at most 5 m3; where left out 1/4 yd3, because
///     plants usually sell by the quarter yard.
///   - `capacity` (m3): what one truck carries; at least 0.1 m3, at most 20 m3; where left out 10 yd3, because a
///     full truck carries about so much.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_ORDER_NET (m3): sum of what is poured.
///   - OVS_ORDER_FIGURED (m3): net volume and allowances.
///   - OVS_ORDER_ORDERED (m3): figured volume rounded up to the step.
///   - OVS_ORDER_SPARE (m3): ordered over figured.
///   - OVS_ORDER_LOADS: truck loads.
///   - OVS_ORDER_LAST (m3): what the last truck carries.
///   - OVS_ORDER_ALLOWED: each allowance as a volume.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE.
/// Basis: 5 to 10 % for waste and uneven thickness on ground; less where the surface is surveyed: Extension lesson
/// on estimating concrete (after Cooper, Agricultural Mechanics), waste and uneven thickness.
/// Basis: plants sell in steps of 1/4 yd3: common practice, no source.
/// Basis: a full truck carries about 10 yd3: NRMCA fleet survey (2017), table 4: typical full load 9.8 yd3, range
/// 8.2 to 11.8, as quoted elsewhere.
/// Since 0.1.0.
/// Example, as JSON: {"floor":"8.78 yd3","extras":[{"name":"ramp","volume":"0.59 yd3"}]}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_order_si(
    floor_m3: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Number(floor_m3)),
    ];
    let request = Request::new(ORDER, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_order_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_order_us_why(
    floor_yd3: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Number(floor_yd3)),
    ];
    let request = Request::new(ORDER, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_order_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_order_si_why(
    floor_m3: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Number(floor_m3)),
    ];
    let request = Request::new(ORDER, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}
