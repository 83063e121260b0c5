//! The operations of `clearance`.
//!
//! Made from the table of operations: change the table and run `cargo run -p overslab-tests`.

use crate::answer::ovs_answer;
use crate::border::{Given, Input, Message, Notes, Output, Passed, Request, TextOut, record, row, scalar};
use crate::border::scalar::Arrays;
use overslab::operation::Operation;
use overslab::operations::OPERATIONS;
use overslab::quantity::System;
use std::ffi::{c_char, c_int};
use super::records::ovs_finish;

/// The result `judged`: whether every limit is kept.
pub const OVS_APPROACH_JUDGED: c_int = 0;

/// The result `needed` (ft or m): the floor height from which water falls away as wanted.
pub const OVS_APPROACH_NEEDED: c_int = 1;

/// The result `governing` (ft or m): how far from the door the place is that decides it.
pub const OVS_APPROACH_GOVERNING: c_int = 2;

/// The result `spare` (in or mm): how far the floor is above that; negative below.
pub const OVS_APPROACH_SPARE: c_int = 3;

/// The result `away`: what that does to the water.
pub const OVS_APPROACH_AWAY: c_int = 4;

/// The result `step` (in or mm): the step at the door, from the outside up to the floor.
pub const OVS_APPROACH_STEP: c_int = 5;

/// The result `step_limit` (in or mm): the most that it may be.
pub const OVS_APPROACH_STEP_LIMIT: c_int = 6;

/// The result `step_judged`: whether it is.
pub const OVS_APPROACH_STEP_JUDGED: c_int = 7;

/// The result `dig` (in or mm): how deep old ground has to come out under the new approach; none without tie-in and
/// thickness.
pub const OVS_APPROACH_DIG: c_int = 8;

/// The result `trench_floor` (ft or m): the height that the floor may have with a drain along the door.
pub const OVS_APPROACH_TRENCH_FLOOR: c_int = 9;

/// The result `trench_reach` (ft or m): how far out the ground falls to the door.
pub const OVS_APPROACH_TRENCH_REACH: c_int = 10;

/// The result `trench_area` (ft2 or m2): the ground that drains to the door; none without its width.
pub const OVS_APPROACH_TRENCH_AREA: c_int = 11;

/// The result `trench_flow` (gal/min or L/s): the rain that comes from it; none without rain.
pub const OVS_APPROACH_TRENCH_FLOW: c_int = 12;

/// The result `stretches`: the ground as it will be.
pub const OVS_APPROACH_STRETCHES: c_int = 13;

/// The column `from` of `stretches` (ft or m): its start, from the door.
pub const OVS_APPROACH_STRETCHES_FROM: c_int = 0;

/// The column `to` of `stretches` (ft or m): its end, from the door.
pub const OVS_APPROACH_STRETCHES_TO: c_int = 1;

/// The column `start` of `stretches` (ft or m): height of its start.
pub const OVS_APPROACH_STRETCHES_START: c_int = 2;

/// The column `end` of `stretches` (ft or m): height of its end.
pub const OVS_APPROACH_STRETCHES_END: c_int = 3;

/// The column `fall` of `stretches` (%): its fall away from the door; negative where it rises.
pub const OVS_APPROACH_STRETCHES_FALL: c_int = 4;

/// The result `breaks`: where its grade changes.
pub const OVS_APPROACH_BREAKS: c_int = 14;

/// The column `at` of `breaks` (ft or m): distance from the door.
pub const OVS_APPROACH_BREAKS_AT: c_int = 0;

/// The column `kind` of `breaks`: over a hump or through a dip.
pub const OVS_APPROACH_BREAKS_KIND: c_int = 1;

/// The column `change` of `breaks` (%): the change of grade.
pub const OVS_APPROACH_BREAKS_CHANGE: c_int = 2;

/// The column `spacing` of `breaks` (ft or m): to the nearest other break, or the end of the profile.
pub const OVS_APPROACH_BREAKS_SPACING: c_int = 3;

/// The column `taken` of `breaks` (in or mm): what a crest takes of the room under the vehicle; none without a
/// wheelbase.
pub const OVS_APPROACH_BREAKS_TAKEN: c_int = 4;

/// The result `rules`: every rule at every place.
pub const OVS_APPROACH_RULES: c_int = 15;

/// The column `matter` of `rules`: what is judged.
pub const OVS_APPROACH_RULES_MATTER: c_int = 0;

/// The column `at` of `rules` (ft or m): distance from the door.
pub const OVS_APPROACH_RULES_AT: c_int = 1;

/// The column `found` of `rules` (%): what is there.
pub const OVS_APPROACH_RULES_FOUND: c_int = 2;

/// The column `limit` of `rules` (%): what may be; of a fall what must be.
pub const OVS_APPROACH_RULES_LIMIT: c_int = 3;

/// The column `weight` of `rules`: whether it decides.
pub const OVS_APPROACH_RULES_WEIGHT: c_int = 4;

/// The column `basis` of `rules`: where the limit comes from.
pub const OVS_APPROACH_RULES_BASIS: c_int = 5;

/// The column `judged` of `rules`: what comes out.
pub const OVS_APPROACH_RULES_JUDGED: c_int = 6;

/// How many results there are.
pub const OVS_APPROACH_RESULTS: c_int = 16;

/// The word `vehicle`.
pub const OVS_APPROACH_TRAFFIC_VEHICLE: c_int = 0;

/// The word `wheelchair`.
pub const OVS_APPROACH_TRAFFIC_WHEELCHAIR: c_int = 1;

/// The word `foot`.
pub const OVS_APPROACH_TRAFFIC_FOOT: c_int = 2;

/// The word `pass`.
pub const OVS_APPROACH_JUDGED_PASS: c_int = 0;

/// The word `fail`.
pub const OVS_APPROACH_JUDGED_FAIL: c_int = 1;

/// The word `confirm locally`.
pub const OVS_APPROACH_JUDGED_CONFIRM_LOCALLY: c_int = 2;

/// The word `falls away`.
pub const OVS_APPROACH_AWAY_FALLS_AWAY: c_int = 0;

/// The word `floor too low`.
pub const OVS_APPROACH_AWAY_FLOOR_TOO_LOW: c_int = 1;

/// The word `pass`.
pub const OVS_APPROACH_STEP_JUDGED_PASS: c_int = 0;

/// The word `fail`.
pub const OVS_APPROACH_STEP_JUDGED_FAIL: c_int = 1;

/// The word `confirm locally`.
pub const OVS_APPROACH_STEP_JUDGED_CONFIRM_LOCALLY: c_int = 2;

/// The word `crest`.
pub const OVS_APPROACH_BREAKS_KIND_CREST: c_int = 0;

/// The word `sag`.
pub const OVS_APPROACH_BREAKS_KIND_SAG: c_int = 1;

/// The word `fall away from the door`.
pub const OVS_APPROACH_RULES_MATTER_FALL_AWAY_FROM_THE_DOOR: c_int = 0;

/// The word `grade`.
pub const OVS_APPROACH_RULES_MATTER_GRADE: c_int = 1;

/// The word `change of grade`.
pub const OVS_APPROACH_RULES_MATTER_CHANGE_OF_GRADE: c_int = 2;

/// The word `room over a crest`.
pub const OVS_APPROACH_RULES_MATTER_ROOM_OVER_A_CREST: c_int = 3;

/// The word `room in a sag`.
pub const OVS_APPROACH_RULES_MATTER_ROOM_IN_A_SAG: c_int = 4;

/// The word `limit`.
pub const OVS_APPROACH_RULES_WEIGHT_LIMIT: c_int = 0;

/// The word `advice`.
pub const OVS_APPROACH_RULES_WEIGHT_ADVICE: c_int = 1;

/// The word `pass`.
pub const OVS_APPROACH_RULES_JUDGED_PASS: c_int = 0;

/// The word `fail`.
pub const OVS_APPROACH_RULES_JUDGED_FAIL: c_int = 1;

/// The word `confirm locally`.
pub const OVS_APPROACH_RULES_JUDGED_CONFIRM_LOCALLY: c_int = 2;

static APPROACH: &Operation = row(OPERATIONS, "approach");

/// A driveway, a walk or a ramp from a door outwards: the floor height from which water falls away, grades, breaks,
/// the step at the door, and a drain along the door instead.
///
/// Equation: needed = greatest of (height + fall x distance) over the ground, and the rebate; change of grade =
/// difference of two falls.
/// Taken for granted: the ground is straight between its points; a new approach is straight from the floor's edge
/// to where it ties in; the floor is level at the door; 95 % of the rain runs off.
///
/// - `profile_distance_ft` (ft): distance from the door; at least 0 ft, at most 3280.83989501 ft.
/// - `profile_elevation_ft` (ft): height of the ground; at least -32808.3989501 ft, at most 32808.3989501 ft.
/// - `profile_rows`: the ground outside: how many rows, each a measured place of the ground outside, from the door
///   outwards, the first at the door; at least 1.
/// - `finish`: the new top surface, whose lowest place along the door counts; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `floor` (ft): height of the floor at the door; or a finish with the places of the door; at least
///     -32808.3989501 ft, at most 32808.3989501 ft; may be left out.
///   - `finish`: the new top surface, whose lowest place along the door counts; may be left out.
///   - `door`: places along the door; may be left out.
///   - `x` of `door` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft; required.
///   - `y` of `door` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft; required.
///   - `traffic`: what goes over it; 0 vehicle, 1 wheelchair, 2 foot; where left out vehicle, because most
///     approaches are driven on.
///   - `fall` (%): fall away from the door that is wanted; 2 %, the rule for hard surfaces by buildings, where not
///     given; at least 0 %, at most 100 %; may be left out.
///   - `over` (ft): over which distance from the door; more than 0 ft, at most 3280.83989501 ft; where left out 10
///     ft, because the rule for ground by buildings.
///   - `tie_in` (ft): how far from the door a new approach meets the ground; more than 0 ft, at most 3280.83989501
///     ft; may be left out.
///   - `thickness` (in): how thick the new approach is; at least 0 in, at most 39.3700787402 in; may be left out.
///   - `rebate` (in): how far the outside lies below the floor at the door; at least 0 in, at most 39.3700787402
///     in; may be left out.
///   - `wheelbase` (in): from axle to axle; more than 0 in, at most 590.551181102 in; may be left out.
///   - `clearance` (in): room under the vehicle between its axles; at least 0 in, at most 39.3700787402 in; may be
///     left out.
///   - `overhang` (in): from the front axle to the bumper; more than 0 in, at most 590.551181102 in; may be left
///     out.
///   - `bumper` (in): room under the bumper; at least 0 in, at most 39.3700787402 in; may be left out.
///   - `door_width` (ft): how wide the door is, for a drain along it; more than 0 ft, at most 3280.83989501 ft; may
///     be left out.
///   - `rain` (in/h): how fast rain comes down on hard ground, for that drain; at least 0 in/h, at most
///     39.3700787402 in/h; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_APPROACH_JUDGED: whether every limit is kept; 0 pass, 1 fail, 2 confirm locally.
///   - OVS_APPROACH_NEEDED (ft): the floor height from which water falls away as wanted.
///   - OVS_APPROACH_GOVERNING (ft): how far from the door the place is that decides it.
///   - OVS_APPROACH_SPARE (in): how far the floor is above that; negative below.
///   - OVS_APPROACH_AWAY: what that does to the water; 0 falls away, 1 floor too low.
///   - OVS_APPROACH_STEP (in): the step at the door, from the outside up to the floor.
///   - OVS_APPROACH_STEP_LIMIT (in): the most that it may be.
///   - OVS_APPROACH_STEP_JUDGED: whether it is; 0 pass, 1 fail, 2 confirm locally.
///   - OVS_APPROACH_DIG (in): how deep old ground has to come out under the new approach; none without tie-in and
///     thickness.
///   - OVS_APPROACH_TRENCH_FLOOR (ft): the height that the floor may have with a drain along the door.
///   - OVS_APPROACH_TRENCH_REACH (ft): how far out the ground falls to the door.
///   - OVS_APPROACH_TRENCH_AREA (ft2): the ground that drains to the door; none without its width.
///   - OVS_APPROACH_TRENCH_FLOW (gal/min): the rain that comes from it; none without rain.
///   - OVS_APPROACH_STRETCHES: the ground as it will be.
///   - OVS_APPROACH_BREAKS: where its grade changes.
///   - OVS_APPROACH_RULES: every rule at every place.
///
/// Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_NULL_POINTER,
/// OVS_APPROACH_SHORT, OVS_APPROACH_START, OVS_APPROACH_UNSORTED, OVS_TIE_IN_BEYOND, OVS_DOOR_UNKNOWN.
/// Basis: plane and solid geometry: derived.
/// Basis: at least 2 % away from a building: International Residential Code (2015-2021), R401.3, impervious
/// surfaces within 10 ft, as quoted elsewhere.
/// Basis: the least fall that was given: the project's specification.
/// Basis: a change of grade of at most 3 % with at least 11 ft between breaks suits most vehicles: TxDOT Roadway
/// Design Manual, driveway guidelines (any), section 4, profiles, private residential.
/// Basis: a change of grade of 5 % is normal: Maryland COMAR 11.04.05.05 (any), driveway grades.
/// Basis: a change of grade of at most 8 %: Maryland COMAR 11.04.05.05 (any), driveway grades.
/// Basis: a driveway of at most 15 %: County highway access rule in the records of the City of Ramsey, Minnesota
/// (any), driveway grades, other than commercial.
/// Basis: a walk of at most 1:20: ADA Standards for Accessible Design (2010), 403.3, walking surfaces, from memory:
/// confirm.
/// Basis: a ramp of at most 1:12: ADA Standards for Accessible Design (2010), 405.2, ramps, from memory: confirm.
/// Basis: a step of at most 1/4 in upright, 1/2 in where it is bevelled 1:2: ADA Standards for Accessible Design
/// (2010), 303, changes in level, from memory: confirm.
/// Basis: the outside lies 1/2 to 1 in below the floor at the line where a door seals; more is a bump for wheels:
/// common practice, no source.
/// Basis: a step of at most 7-3/4 in: International Residential Code (2015-2021), R311.7.5.1, risers.
/// Basis: runoff = coefficient x rain intensity x area: Hydrology textbooks, rational method (Kuichling 1889)
/// (any), Q = C i A; C of concrete 0.8 to 0.95, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"floor":"100.1 ft","profile":{"distance":["0 ft","5 ft","20 ft","30 ft"],"elevation":["100 ft","99.95 ft","99.6 ft","99.1 ft"]},"tie_in":"20 ft","thickness":"4 in","rebate":"1 in","wheelbase":"110 in","clearance":"6 in","door_width":"9 ft","rain":"3 in/h"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_approach_us(
    profile_distance_ft: *const f64,
    profile_elevation_ft: *const f64,
    profile_rows: c_int,
    finish: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (3, Given::Table(profile_rows, &[(0, Input::Numbers(profile_distance_ft)), (1, Input::Numbers(profile_elevation_ft))])),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(APPROACH, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// A driveway, a walk or a ramp from a door outwards: the floor height from which water falls away, grades, breaks,
/// the step at the door, and a drain along the door instead.
///
/// Equation: needed = greatest of (height + fall x distance) over the ground, and the rebate; change of grade =
/// difference of two falls.
/// Taken for granted: the ground is straight between its points; a new approach is straight from the floor's edge
/// to where it ties in; the floor is level at the door; 95 % of the rain runs off.
///
/// - `profile_distance_m` (m): distance from the door; at least 0 m, at most 1000 m.
/// - `profile_elevation_m` (m): height of the ground; at least -10000 m, at most 10000 m.
/// - `profile_rows`: the ground outside: how many rows, each a measured place of the ground outside, from the door
///   outwards, the first at the door; at least 1.
/// - `finish`: the new top surface, whose lowest place along the door counts; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `floor` (m): height of the floor at the door; or a finish with the places of the door; at least -10000 m, at
///     most 10000 m; may be left out.
///   - `finish`: the new top surface, whose lowest place along the door counts; may be left out.
///   - `door`: places along the door; may be left out.
///   - `x` of `door` (m): distance from the left; at least -100000 m, at most 100000 m; required.
///   - `y` of `door` (m): distance from the front; at least -100000 m, at most 100000 m; required.
///   - `traffic`: what goes over it; 0 vehicle, 1 wheelchair, 2 foot; where left out vehicle, because most
///     approaches are driven on.
///   - `fall` (%): fall away from the door that is wanted; 2 %, the rule for hard surfaces by buildings, where not
///     given; at least 0 %, at most 100 %; may be left out.
///   - `over` (m): over which distance from the door; more than 0 m, at most 1000 m; where left out 10 ft, because
///     the rule for ground by buildings.
///   - `tie_in` (m): how far from the door a new approach meets the ground; more than 0 m, at most 1000 m; may be
///     left out.
///   - `thickness` (mm): how thick the new approach is; at least 0 mm, at most 1000 mm; may be left out.
///   - `rebate` (mm): how far the outside lies below the floor at the door; at least 0 mm, at most 1000 mm; may be
///     left out.
///   - `wheelbase` (mm): from axle to axle; more than 0 mm, at most 15000 mm; may be left out.
///   - `clearance` (mm): room under the vehicle between its axles; at least 0 mm, at most 1000 mm; may be left out.
///   - `overhang` (mm): from the front axle to the bumper; more than 0 mm, at most 15000 mm; may be left out.
///   - `bumper` (mm): room under the bumper; at least 0 mm, at most 1000 mm; may be left out.
///   - `door_width` (m): how wide the door is, for a drain along it; more than 0 m, at most 1000 m; may be left
///     out.
///   - `rain` (mm/h): how fast rain comes down on hard ground, for that drain; at least 0 mm/h, at most 1000 mm/h;
///     may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_APPROACH_JUDGED: whether every limit is kept; 0 pass, 1 fail, 2 confirm locally.
///   - OVS_APPROACH_NEEDED (m): the floor height from which water falls away as wanted.
///   - OVS_APPROACH_GOVERNING (m): how far from the door the place is that decides it.
///   - OVS_APPROACH_SPARE (mm): how far the floor is above that; negative below.
///   - OVS_APPROACH_AWAY: what that does to the water; 0 falls away, 1 floor too low.
///   - OVS_APPROACH_STEP (mm): the step at the door, from the outside up to the floor.
///   - OVS_APPROACH_STEP_LIMIT (mm): the most that it may be.
///   - OVS_APPROACH_STEP_JUDGED: whether it is; 0 pass, 1 fail, 2 confirm locally.
///   - OVS_APPROACH_DIG (mm): how deep old ground has to come out under the new approach; none without tie-in and
///     thickness.
///   - OVS_APPROACH_TRENCH_FLOOR (m): the height that the floor may have with a drain along the door.
///   - OVS_APPROACH_TRENCH_REACH (m): how far out the ground falls to the door.
///   - OVS_APPROACH_TRENCH_AREA (m2): the ground that drains to the door; none without its width.
///   - OVS_APPROACH_TRENCH_FLOW (L/s): the rain that comes from it; none without rain.
///   - OVS_APPROACH_STRETCHES: the ground as it will be.
///   - OVS_APPROACH_BREAKS: where its grade changes.
///   - OVS_APPROACH_RULES: every rule at every place.
///
/// Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_NULL_POINTER,
/// OVS_APPROACH_SHORT, OVS_APPROACH_START, OVS_APPROACH_UNSORTED, OVS_TIE_IN_BEYOND, OVS_DOOR_UNKNOWN.
/// Basis: plane and solid geometry: derived.
/// Basis: at least 2 % away from a building: International Residential Code (2015-2021), R401.3, impervious
/// surfaces within 10 ft, as quoted elsewhere.
/// Basis: the least fall that was given: the project's specification.
/// Basis: a change of grade of at most 3 % with at least 11 ft between breaks suits most vehicles: TxDOT Roadway
/// Design Manual, driveway guidelines (any), section 4, profiles, private residential.
/// Basis: a change of grade of 5 % is normal: Maryland COMAR 11.04.05.05 (any), driveway grades.
/// Basis: a change of grade of at most 8 %: Maryland COMAR 11.04.05.05 (any), driveway grades.
/// Basis: a driveway of at most 15 %: County highway access rule in the records of the City of Ramsey, Minnesota
/// (any), driveway grades, other than commercial.
/// Basis: a walk of at most 1:20: ADA Standards for Accessible Design (2010), 403.3, walking surfaces, from memory:
/// confirm.
/// Basis: a ramp of at most 1:12: ADA Standards for Accessible Design (2010), 405.2, ramps, from memory: confirm.
/// Basis: a step of at most 1/4 in upright, 1/2 in where it is bevelled 1:2: ADA Standards for Accessible Design
/// (2010), 303, changes in level, from memory: confirm.
/// Basis: the outside lies 1/2 to 1 in below the floor at the line where a door seals; more is a bump for wheels:
/// common practice, no source.
/// Basis: a step of at most 7-3/4 in: International Residential Code (2015-2021), R311.7.5.1, risers.
/// Basis: runoff = coefficient x rain intensity x area: Hydrology textbooks, rational method (Kuichling 1889)
/// (any), Q = C i A; C of concrete 0.8 to 0.95, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"floor":"100.1 ft","profile":{"distance":["0 ft","5 ft","20 ft","30 ft"],"elevation":["100 ft","99.95 ft","99.6 ft","99.1 ft"]},"tie_in":"20 ft","thickness":"4 in","rebate":"1 in","wheelbase":"110 in","clearance":"6 in","door_width":"9 ft","rain":"3 in/h"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_approach_si(
    profile_distance_m: *const f64,
    profile_elevation_m: *const f64,
    profile_rows: c_int,
    finish: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (3, Given::Table(profile_rows, &[(0, Input::Numbers(profile_distance_m)), (1, Input::Numbers(profile_elevation_m))])),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(APPROACH, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_approach_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_approach_us_why(
    profile_distance_ft: *const f64,
    profile_elevation_ft: *const f64,
    profile_rows: c_int,
    finish: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (3, Given::Table(profile_rows, &[(0, Input::Numbers(profile_distance_ft)), (1, Input::Numbers(profile_elevation_ft))])),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(APPROACH, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_approach_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_approach_si_why(
    profile_distance_m: *const f64,
    profile_elevation_m: *const f64,
    profile_rows: c_int,
    finish: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (3, Given::Table(profile_rows, &[(0, Input::Numbers(profile_distance_m)), (1, Input::Numbers(profile_elevation_m))])),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(APPROACH, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static CREST_CLEARANCE: &Operation = row(OPERATIONS, "crest_clearance");

/// What a crest takes of the room under a vehicle, midway between its axles.
///
/// Equation: taken = wheelbase change / 4; exact = (wheelbase / 2) tan(atan(change) / 2).
/// Taken for granted: wheels as points, a wheelbase apart, the crest midway; one side of it level for the exact
/// form.
///
/// - `wheelbase_in` (in): from axle to axle; more than 0 in, at most 590.551181102 in.
/// - `change_percent` (%): change of grade; at least 0 %, at most 100 %.
/// - `taken_in` (in), out: room taken, slopes for angles.
/// - `exact_in` (in), out: room taken, exactly.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_crest_clearance_us(110, 10, ...) gives taken_in = 2.75, exact_in = 2.74316.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_crest_clearance_us(
    wheelbase_in: f64,
    change_percent: f64,
    taken_in: *mut f64,
    exact_in: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(taken_in), Output::Numbers(exact_in)];
    unsafe { scalar::one(CREST_CLEARANCE, System::Us, [wheelbase_in, change_percent], results, notes, Message::new(msg, msg_len)) }
}

/// What a crest takes of the room under a vehicle, midway between its axles.
///
/// Equation: taken = wheelbase change / 4; exact = (wheelbase / 2) tan(atan(change) / 2).
/// Taken for granted: wheels as points, a wheelbase apart, the crest midway; one side of it level for the exact
/// form.
///
/// - `wheelbase_mm` (mm): from axle to axle; more than 0 mm, at most 15000 mm.
/// - `change_percent` (%): change of grade; at least 0 %, at most 100 %.
/// - `taken_mm` (mm), out: room taken, slopes for angles.
/// - `exact_mm` (mm), out: room taken, exactly.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_crest_clearance_si(2794, 10, ...) gives taken_mm = 69.85, exact_mm = 69.6762.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_crest_clearance_si(
    wheelbase_mm: f64,
    change_percent: f64,
    taken_mm: *mut f64,
    exact_mm: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(taken_mm), Output::Numbers(exact_mm)];
    unsafe { scalar::one(CREST_CLEARANCE, System::Si, [wheelbase_mm, change_percent], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_crest_clearance_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_crest_clearance_us_array(
    wheelbase_in: *const f64,
    change_percent: *const f64,
    taken_in: *mut f64,
    exact_in: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(wheelbase_in), Input::Numbers(change_percent)], results: [Output::Numbers(taken_in), Output::Numbers(exact_in)], notes, n, bad_index };
    unsafe { scalar::array(CREST_CLEARANCE, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_crest_clearance_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_crest_clearance_si_array(
    wheelbase_mm: *const f64,
    change_percent: *const f64,
    taken_mm: *mut f64,
    exact_mm: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(wheelbase_mm), Input::Numbers(change_percent)], results: [Output::Numbers(taken_mm), Output::Numbers(exact_mm)], notes, n, bad_index };
    unsafe { scalar::array(CREST_CLEARANCE, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_crest_clearance_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_crest_clearance_us_why(
    wheelbase_in: f64,
    change_percent: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CREST_CLEARANCE, System::Us, [wheelbase_in, change_percent], text) }
}

/// Why ovs_crest_clearance_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_crest_clearance_si_why(
    wheelbase_mm: f64,
    change_percent: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CREST_CLEARANCE, System::Si, [wheelbase_mm, change_percent], text) }
}

static SAG_BREAK: &Operation = row(OPERATIONS, "sag_break");

/// The greatest change of grade of a sag that a bumper clears.
///
/// Equation: change = bumper / overhang.
/// Taken for granted: the vehicle stands level with its front axle at the sag; wheels as points.
///
/// - `overhang_in` (in): from the front axle to the bumper; more than 0 in, at most 590.551181102 in.
/// - `bumper_in` (in): room under the bumper; at least 0 in, at most 39.3700787402 in.
/// - `change_percent` (%), out: the greatest change of grade.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_sag_break_us(36, 9, ...) gives change_percent = 25.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_sag_break_us(
    overhang_in: f64,
    bumper_in: f64,
    change_percent: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(change_percent)];
    unsafe { scalar::one(SAG_BREAK, System::Us, [overhang_in, bumper_in], results, notes, Message::new(msg, msg_len)) }
}

/// The greatest change of grade of a sag that a bumper clears.
///
/// Equation: change = bumper / overhang.
/// Taken for granted: the vehicle stands level with its front axle at the sag; wheels as points.
///
/// - `overhang_mm` (mm): from the front axle to the bumper; more than 0 mm, at most 15000 mm.
/// - `bumper_mm` (mm): room under the bumper; at least 0 mm, at most 1000 mm.
/// - `change_percent` (%), out: the greatest change of grade.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_sag_break_si(914.4, 228.6, ...) gives change_percent = 25.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_sag_break_si(
    overhang_mm: f64,
    bumper_mm: f64,
    change_percent: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(change_percent)];
    unsafe { scalar::one(SAG_BREAK, System::Si, [overhang_mm, bumper_mm], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_sag_break_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_sag_break_us_array(
    overhang_in: *const f64,
    bumper_in: *const f64,
    change_percent: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(overhang_in), Input::Numbers(bumper_in)], results: [Output::Numbers(change_percent)], notes, n, bad_index };
    unsafe { scalar::array(SAG_BREAK, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_sag_break_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_sag_break_si_array(
    overhang_mm: *const f64,
    bumper_mm: *const f64,
    change_percent: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(overhang_mm), Input::Numbers(bumper_mm)], results: [Output::Numbers(change_percent)], notes, n, bad_index };
    unsafe { scalar::array(SAG_BREAK, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_sag_break_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_sag_break_us_why(
    overhang_in: f64,
    bumper_in: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(SAG_BREAK, System::Us, [overhang_in, bumper_in], text) }
}

/// Why ovs_sag_break_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_sag_break_si_why(
    overhang_mm: f64,
    bumper_mm: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(SAG_BREAK, System::Si, [overhang_mm, bumper_mm], text) }
}
