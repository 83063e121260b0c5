//! The operations of `asbuilt`.
//!
//! Made from the table of operations: change the table and run `cargo run -p overslab-tests`.

use crate::answer::ovs_answer;
use crate::border::{Given, Input, Message, Notes, Numbers, Passed, Request, TextOut, record, row};
use overslab::operation::Operation;
use overslab::operations::OPERATIONS;
use overslab::quantity::System;
use std::ffi::{c_char, c_int};
use super::records::{ovs_finish, ovs_outline};

/// The result `ff` (1): flatness; none for a perfect line.
pub const OVS_FLATNESS_LINE_FF: c_int = 0;

/// The result `fl` (1): levelness; none for fewer than 12 readings and for a level line.
pub const OVS_FLATNESS_LINE_FL: c_int = 1;

/// The result `length` (ft or m): length of the line.
pub const OVS_FLATNESS_LINE_LENGTH: c_int = 2;

/// The result `q_count`: how many bends.
pub const OVS_FLATNESS_LINE_Q_COUNT: c_int = 3;

/// The result `q_mean` (in or mm): their mean.
pub const OVS_FLATNESS_LINE_Q_MEAN: c_int = 4;

/// The result `q_deviation` (in or mm): their standard deviation.
pub const OVS_FLATNESS_LINE_Q_DEVIATION: c_int = 5;

/// The result `z_count`: how many rises over ten spacings.
pub const OVS_FLATNESS_LINE_Z_COUNT: c_int = 6;

/// The result `z_mean` (in or mm): their mean.
pub const OVS_FLATNESS_LINE_Z_MEAN: c_int = 7;

/// The result `z_deviation` (in or mm): their standard deviation; none of fewer than two.
pub const OVS_FLATNESS_LINE_Z_DEVIATION: c_int = 8;

/// The result `q`: the bends.
pub const OVS_FLATNESS_LINE_Q: c_int = 9;

/// The column `q` of `q` (in or mm): the bend.
pub const OVS_FLATNESS_LINE_Q_Q: c_int = 0;

/// The result `z`: the rises over ten spacings.
pub const OVS_FLATNESS_LINE_Z: c_int = 10;

/// The column `z` of `z` (in or mm): the rise.
pub const OVS_FLATNESS_LINE_Z_Z: c_int = 0;

/// How many results there are.
pub const OVS_FLATNESS_LINE_RESULTS: c_int = 11;

/// The word `4.57 in`.
pub const OVS_FLATNESS_LINE_FACTOR_4_57_IN: c_int = 0;

/// The word `115.8 mm`.
pub const OVS_FLATNESS_LINE_FACTOR_115_8_MM: c_int = 1;

/// The result `ff` (1): flatness over all.
pub const OVS_FLATNESS_FF: c_int = 0;

/// The result `fl` (1): levelness over all.
pub const OVS_FLATNESS_FL: c_int = 1;

/// The result `asked_ff` (1): flatness asked over all.
pub const OVS_FLATNESS_ASKED_FF: c_int = 2;

/// The result `asked_fl` (1): levelness asked over all.
pub const OVS_FLATNESS_ASKED_FL: c_int = 3;

/// The result `local_ff` (1): flatness asked of every section.
pub const OVS_FLATNESS_LOCAL_FF: c_int = 4;

/// The result `local_fl` (1): levelness asked of every section.
pub const OVS_FLATNESS_LOCAL_FL: c_int = 5;

/// The result `ff_verdict`: flatness over all against what is asked.
pub const OVS_FLATNESS_FF_VERDICT: c_int = 6;

/// The result `fl_verdict`: levelness over all against what is asked.
pub const OVS_FLATNESS_FL_VERDICT: c_int = 7;

/// The result `lines`: the lines.
pub const OVS_FLATNESS_LINES: c_int = 8;

/// The column `line` of `lines`: its name.
pub const OVS_FLATNESS_LINES_LINE: c_int = 0;

/// The column `section` of `lines`: the part of the floor it lies in.
pub const OVS_FLATNESS_LINES_SECTION: c_int = 1;

/// The column `readings` of `lines`: how many readings.
pub const OVS_FLATNESS_LINES_READINGS: c_int = 2;

/// The column `q_count` of `lines`: how many bends count.
pub const OVS_FLATNESS_LINES_Q_COUNT: c_int = 3;

/// The column `z_count` of `lines`: how many rises over ten spacings.
pub const OVS_FLATNESS_LINES_Z_COUNT: c_int = 4;

/// The column `ff` of `lines` (1): flatness; none for a perfect line.
pub const OVS_FLATNESS_LINES_FF: c_int = 5;

/// The column `fl` of `lines` (1): levelness; none of few readings, and on a floor that falls.
pub const OVS_FLATNESS_LINES_FL: c_int = 6;

/// The column `left_out` of `lines`: bends left out because the plan bends there.
pub const OVS_FLATNESS_LINES_LEFT_OUT: c_int = 7;

/// The result `of_sections`: the parts of the floor.
pub const OVS_FLATNESS_OF_SECTIONS: c_int = 9;

/// The column `section` of `of_sections`: its name; none where the floor is one part.
pub const OVS_FLATNESS_OF_SECTIONS_SECTION: c_int = 0;

/// The column `area` of `of_sections` (ft2 or m2): its area.
pub const OVS_FLATNESS_OF_SECTIONS_AREA: c_int = 1;

/// The column `lines` of `of_sections`: how many lines.
pub const OVS_FLATNESS_OF_SECTIONS_LINES: c_int = 2;

/// The column `z_count` of `of_sections`: how many rises over ten spacings.
pub const OVS_FLATNESS_OF_SECTIONS_Z_COUNT: c_int = 3;

/// The column `z_least` of `of_sections`: the fewest of them the standard judges by.
pub const OVS_FLATNESS_OF_SECTIONS_Z_LEAST: c_int = 4;

/// The column `ff` of `of_sections` (1): flatness.
pub const OVS_FLATNESS_OF_SECTIONS_FF: c_int = 5;

/// The column `fl` of `of_sections` (1): levelness.
pub const OVS_FLATNESS_OF_SECTIONS_FL: c_int = 6;

/// The column `ff_verdict` of `of_sections`: flatness against 3/5 of what is asked over all.
pub const OVS_FLATNESS_OF_SECTIONS_FF_VERDICT: c_int = 7;

/// The column `fl_verdict` of `of_sections`: levelness against 3/5 of what is asked over all.
pub const OVS_FLATNESS_OF_SECTIONS_FL_VERDICT: c_int = 8;

/// How many results there are.
pub const OVS_FLATNESS_RESULTS: c_int = 10;

/// The word `4.57 in`.
pub const OVS_FLATNESS_FACTOR_4_57_IN: c_int = 0;

/// The word `115.8 mm`.
pub const OVS_FLATNESS_FACTOR_115_8_MM: c_int = 1;

/// The word `conventional`.
pub const OVS_FLATNESS_FLATNESS_CLASS_CONVENTIONAL: c_int = 0;

/// The word `moderately flat`.
pub const OVS_FLATNESS_FLATNESS_CLASS_MODERATELY_FLAT: c_int = 1;

/// The word `flat`.
pub const OVS_FLATNESS_FLATNESS_CLASS_FLAT: c_int = 2;

/// The word `very flat`.
pub const OVS_FLATNESS_FLATNESS_CLASS_VERY_FLAT: c_int = 3;

/// The word `super flat`.
pub const OVS_FLATNESS_FLATNESS_CLASS_SUPER_FLAT: c_int = 4;

/// The word `no`.
pub const OVS_FLATNESS_FALLS_NO: c_int = 0;

/// The word `yes`.
pub const OVS_FLATNESS_FALLS_YES: c_int = 1;

/// The word `meets`.
pub const OVS_FLATNESS_FF_VERDICT_MEETS: c_int = 0;

/// The word `short`.
pub const OVS_FLATNESS_FF_VERDICT_SHORT: c_int = 1;

/// The word `too few to judge`.
pub const OVS_FLATNESS_FF_VERDICT_TOO_FEW_TO_JUDGE: c_int = 2;

/// The word `confirm locally`.
pub const OVS_FLATNESS_FF_VERDICT_CONFIRM_LOCALLY: c_int = 3;

/// The word `meets`.
pub const OVS_FLATNESS_FL_VERDICT_MEETS: c_int = 0;

/// The word `short`.
pub const OVS_FLATNESS_FL_VERDICT_SHORT: c_int = 1;

/// The word `too few to judge`.
pub const OVS_FLATNESS_FL_VERDICT_TOO_FEW_TO_JUDGE: c_int = 2;

/// The word `confirm locally`.
pub const OVS_FLATNESS_FL_VERDICT_CONFIRM_LOCALLY: c_int = 3;

/// The word `meets`.
pub const OVS_FLATNESS_OF_SECTIONS_FF_VERDICT_MEETS: c_int = 0;

/// The word `short`.
pub const OVS_FLATNESS_OF_SECTIONS_FF_VERDICT_SHORT: c_int = 1;

/// The word `too few to judge`.
pub const OVS_FLATNESS_OF_SECTIONS_FF_VERDICT_TOO_FEW_TO_JUDGE: c_int = 2;

/// The word `confirm locally`.
pub const OVS_FLATNESS_OF_SECTIONS_FF_VERDICT_CONFIRM_LOCALLY: c_int = 3;

/// The word `meets`.
pub const OVS_FLATNESS_OF_SECTIONS_FL_VERDICT_MEETS: c_int = 0;

/// The word `short`.
pub const OVS_FLATNESS_OF_SECTIONS_FL_VERDICT_SHORT: c_int = 1;

/// The word `too few to judge`.
pub const OVS_FLATNESS_OF_SECTIONS_FL_VERDICT_TOO_FEW_TO_JUDGE: c_int = 2;

/// The word `confirm locally`.
pub const OVS_FLATNESS_OF_SECTIONS_FL_VERDICT_CONFIRM_LOCALLY: c_int = 3;

/// The result `number` (1): the number for all.
pub const OVS_FLATNESS_COMBINED_NUMBER: c_int = 0;

/// How many results there are.
pub const OVS_FLATNESS_COMBINED_RESULTS: c_int = 1;

/// The result `gap` (in or mm): the greatest gap.
pub const OVS_STRAIGHTEDGE_GAP: c_int = 0;

/// The result `gap_at` (ft or m): where it is.
pub const OVS_STRAIGHTEDGE_GAP_AT: c_int = 1;

/// The result `rest_1` (ft or m): first place the straightedge rests there.
pub const OVS_STRAIGHTEDGE_REST_1: c_int = 2;

/// The result `rest_2` (ft or m): second place it rests there.
pub const OVS_STRAIGHTEDGE_REST_2: c_int = 3;

/// The result `count`: how often it was laid down.
pub const OVS_STRAIGHTEDGE_COUNT: c_int = 4;

/// The result `about_ff` (1): flatness number that goes roughly with such a gap, under 10 ft and up to 1/2 in.
pub const OVS_STRAIGHTEDGE_ABOUT_FF: c_int = 5;

/// The result `within_most` (%): share of gaps within what nine in ten must keep.
pub const OVS_STRAIGHTEDGE_WITHIN_MOST: c_int = 6;

/// The result `within_all` (%): share of gaps within what all must keep.
pub const OVS_STRAIGHTEDGE_WITHIN_ALL: c_int = 7;

/// The result `verdict`: whether the class is kept.
pub const OVS_STRAIGHTEDGE_VERDICT: c_int = 8;

/// The result `placements`: the straightedge laid down from each reading on.
pub const OVS_STRAIGHTEDGE_PLACEMENTS: c_int = 9;

/// The column `start` of `placements` (ft or m): where its end is.
pub const OVS_STRAIGHTEDGE_PLACEMENTS_START: c_int = 0;

/// The column `gap` of `placements` (in or mm): greatest gap under it.
pub const OVS_STRAIGHTEDGE_PLACEMENTS_GAP: c_int = 1;

/// The column `at` of `placements` (ft or m): place of that gap.
pub const OVS_STRAIGHTEDGE_PLACEMENTS_AT: c_int = 2;

/// How many results there are.
pub const OVS_STRAIGHTEDGE_RESULTS: c_int = 10;

/// The word `conventional`.
pub const OVS_STRAIGHTEDGE_FLATNESS_CLASS_CONVENTIONAL: c_int = 0;

/// The word `moderately flat`.
pub const OVS_STRAIGHTEDGE_FLATNESS_CLASS_MODERATELY_FLAT: c_int = 1;

/// The word `flat`.
pub const OVS_STRAIGHTEDGE_FLATNESS_CLASS_FLAT: c_int = 2;

/// The word `meets`.
pub const OVS_STRAIGHTEDGE_VERDICT_MEETS: c_int = 0;

/// The word `short`.
pub const OVS_STRAIGHTEDGE_VERDICT_SHORT: c_int = 1;

/// The word `too few to judge`.
pub const OVS_STRAIGHTEDGE_VERDICT_TOO_FEW_TO_JUDGE: c_int = 2;

/// The word `confirm locally`.
pub const OVS_STRAIGHTEDGE_VERDICT_CONFIRM_LOCALLY: c_int = 3;

static FLATNESS_LINE: &Operation = row(OPERATIONS, "flatness_line");

/// Flatness (FF) and levelness (FL) of a floor along one line of readings 12 in or 300 mm apart.
///
/// Equation: q = h - 2 h(-1) + h(-2); z = h - h(-10); FF = 4.57 in / (3 Sq + |mean q|); FL = 12.5 in / (3 Sz +
/// |mean z|); S over n - 1.
/// Taken for granted: the floor is as it was within 72 h of finishing; levelness is not used on a floor that falls.
///
/// - `readings_elevation_in` (in): height of the floor; at least -393700.787402 in, at most 393700.787402 in.
/// - `readings_rows`: the readings: how many rows, each a reading, in order along the line; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `spacing` (in): how far apart the readings stand: 12 in or 300 mm; at least 0.393700787402 in, at most
///     393.700787402 in; where left out 12 in, because the standard in inches reads every foot.
///   - `factor`: the constant for flatness, as the standard's text in inches or in millimetres has it; 0 4.57 in, 1
///     115.8 mm; where left out 4.57 in, because the text in inches came first.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FLATNESS_LINE_FF (1): flatness; none for a perfect line.
///   - OVS_FLATNESS_LINE_FL (1): levelness; none for fewer than 12 readings and for a level line.
///   - OVS_FLATNESS_LINE_LENGTH (ft): length of the line.
///   - OVS_FLATNESS_LINE_Q_COUNT: how many bends.
///   - OVS_FLATNESS_LINE_Q_MEAN (in): their mean.
///   - OVS_FLATNESS_LINE_Q_DEVIATION (in): their standard deviation.
///   - OVS_FLATNESS_LINE_Z_COUNT: how many rises over ten spacings.
///   - OVS_FLATNESS_LINE_Z_MEAN (in): their mean.
///   - OVS_FLATNESS_LINE_Z_DEVIATION (in): their standard deviation; none of fewer than two.
///   - OVS_FLATNESS_LINE_Q: the bends.
///   - OVS_FLATNESS_LINE_Z: the rises over ten spacings.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_PROFILE_SPACING,
/// OVS_PROFILE_SHORT.
/// Basis: q = rise less the rise before, z = rise over 10 ft, by their mean and standard deviation: ASTM E1155,
/// floor flatness and floor levelness numbers (M-96), q and z over readings 12 in apart.
/// Basis: FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n / sum(n /
/// F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their combination, from memory:
/// confirm.
/// Basis: lines of 12 readings and 11 ft or more, 2 ft from edges, 4 ft apart: ASTM E1155, floor flatness and floor
/// levelness numbers (M-96), lines and readings, as in the record of a measured floor, as quoted elsewhere.
/// Since 0.1.0.
/// Example, as JSON: {"readings":{"elevation":["100.02 in","100.10 in","100.13 in","100.11 in","100.05 in","100.09 in","100.08 in","100.12 in","100.13 in","100.11 in","100.10 in","100.13 in","100.05 in","100.06 in"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_line_us(
    readings_elevation_in: *const f64,
    readings_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Table(readings_rows, &[(0, Input::Numbers(readings_elevation_in))])),
    ];
    let request = Request::new(FLATNESS_LINE, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Flatness (FF) and levelness (FL) of a floor along one line of readings 12 in or 300 mm apart.
///
/// Equation: q = h - 2 h(-1) + h(-2); z = h - h(-10); FF = 4.57 in / (3 Sq + |mean q|); FL = 12.5 in / (3 Sz +
/// |mean z|); S over n - 1.
/// Taken for granted: the floor is as it was within 72 h of finishing; levelness is not used on a floor that falls.
///
/// - `readings_elevation_mm` (mm): height of the floor; at least -10000000 mm, at most 10000000 mm.
/// - `readings_rows`: the readings: how many rows, each a reading, in order along the line; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `spacing` (mm): how far apart the readings stand: 12 in or 300 mm; at least 10 mm, at most 10000 mm; where
///     left out 12 in, because the standard in inches reads every foot.
///   - `factor`: the constant for flatness, as the standard's text in inches or in millimetres has it; 0 4.57 in, 1
///     115.8 mm; where left out 4.57 in, because the text in inches came first.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FLATNESS_LINE_FF (1): flatness; none for a perfect line.
///   - OVS_FLATNESS_LINE_FL (1): levelness; none for fewer than 12 readings and for a level line.
///   - OVS_FLATNESS_LINE_LENGTH (m): length of the line.
///   - OVS_FLATNESS_LINE_Q_COUNT: how many bends.
///   - OVS_FLATNESS_LINE_Q_MEAN (mm): their mean.
///   - OVS_FLATNESS_LINE_Q_DEVIATION (mm): their standard deviation.
///   - OVS_FLATNESS_LINE_Z_COUNT: how many rises over ten spacings.
///   - OVS_FLATNESS_LINE_Z_MEAN (mm): their mean.
///   - OVS_FLATNESS_LINE_Z_DEVIATION (mm): their standard deviation; none of fewer than two.
///   - OVS_FLATNESS_LINE_Q: the bends.
///   - OVS_FLATNESS_LINE_Z: the rises over ten spacings.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_PROFILE_SPACING,
/// OVS_PROFILE_SHORT.
/// Basis: q = rise less the rise before, z = rise over 10 ft, by their mean and standard deviation: ASTM E1155,
/// floor flatness and floor levelness numbers (M-96), q and z over readings 12 in apart.
/// Basis: FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n / sum(n /
/// F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their combination, from memory:
/// confirm.
/// Basis: lines of 12 readings and 11 ft or more, 2 ft from edges, 4 ft apart: ASTM E1155, floor flatness and floor
/// levelness numbers (M-96), lines and readings, as in the record of a measured floor, as quoted elsewhere.
/// Since 0.1.0.
/// Example, as JSON: {"readings":{"elevation":["100.02 in","100.10 in","100.13 in","100.11 in","100.05 in","100.09 in","100.08 in","100.12 in","100.13 in","100.11 in","100.10 in","100.13 in","100.05 in","100.06 in"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_line_si(
    readings_elevation_mm: *const f64,
    readings_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Table(readings_rows, &[(0, Input::Numbers(readings_elevation_mm))])),
    ];
    let request = Request::new(FLATNESS_LINE, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_flatness_line_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_line_us_why(
    readings_elevation_in: *const f64,
    readings_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(readings_rows, &[(0, Input::Numbers(readings_elevation_in))])),
    ];
    let request = Request::new(FLATNESS_LINE, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_flatness_line_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_line_si_why(
    readings_elevation_mm: *const f64,
    readings_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(readings_rows, &[(0, Input::Numbers(readings_elevation_mm))])),
    ];
    let request = Request::new(FLATNESS_LINE, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FLATNESS: &Operation = row(OPERATIONS, "flatness");

/// Flatness (FF) and levelness (FL) of a floor from many lines: by line, by section, over all, against what is
/// asked.
///
/// Equation: lines as for one line; F = sqrt(sum w / sum(w / F2)): lines by readings, sections by area; every
/// section reaches 3/5 of the least over all.
/// Taken for granted: readings of all lines equally far apart; on a floor that falls levelness is not used.
///
/// - `readings_elevation_in` (in): height of the floor; at least -393700.787402 in, at most 393700.787402 in.
/// - `readings_rows`: the readings of all lines: how many rows, each a reading; those of one line stand together,
///   in order along it; at least 1.
/// - `finish`: the plan: where it bends, readings of lines with a place are left out; may be null.
/// - `outline`: the plan edge, which lines keep 2 ft from; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `line` of `readings`: name of the line; required.
///   - `section` of `readings`: part of the floor the line lies in; needed once a line; may be left out.
///   - `spacing` (in): how far apart the readings stand: 12 in or 300 mm; at least 0.393700787402 in, at most
///     393.700787402 in; where left out 12 in, because the standard in inches reads every foot.
///   - `factor`: the constant for flatness, as the standard's text in inches or in millimetres has it; 0 4.57 in, 1
///     115.8 mm; where left out 4.57 in, because the text in inches came first.
///   - `sections`: the areas of the sections, or of the floor; may be left out.
///   - `section` of `sections`: its name; required.
///   - `area` of `sections` (ft2): its area; more than 0 ft2; required.
///   - `flatness_class`: the class asked; 0 conventional, 1 moderately flat, 2 flat, 3 very flat, 4 super flat; may
///     be left out.
///   - `least_ff` (1): flatness asked over all, in place of a class; at least 1 1, at most 1000 1; may be left out.
///   - `least_fl` (1): levelness asked over all, in place of a class; at least 1 1, at most 1000 1; may be left
///     out.
///   - `falls`: whether the floor is to fall; 0 no, 1 yes; where left out no, because a finish that is given tells
///     by itself.
///   - `places`: where the lines run; may be left out.
///   - `line` of `places`: the line's name; required.
///   - `x` of `places` (ft): its first reading, from the left; at least -328083.989501 ft, at most 328083.989501
///     ft; required.
///   - `y` of `places` (ft): its first reading, from the front; at least -328083.989501 ft, at most 328083.989501
///     ft; required.
///   - `toward_x` of `places` (ft): a place it runs towards, from the left; at least -328083.989501 ft, at most
///     328083.989501 ft; required.
///   - `toward_y` of `places` (ft): a place it runs towards, from the front; at least -328083.989501 ft, at most
///     328083.989501 ft; required.
///   - `finish`: the plan: where it bends, readings of lines with a place are left out; may be left out.
///   - `outline`: the plan edge, which lines keep 2 ft from; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FLATNESS_FF (1): flatness over all.
///   - OVS_FLATNESS_FL (1): levelness over all.
///   - OVS_FLATNESS_ASKED_FF (1): flatness asked over all.
///   - OVS_FLATNESS_ASKED_FL (1): levelness asked over all.
///   - OVS_FLATNESS_LOCAL_FF (1): flatness asked of every section.
///   - OVS_FLATNESS_LOCAL_FL (1): levelness asked of every section.
///   - OVS_FLATNESS_FF_VERDICT: flatness over all against what is asked; 0 meets, 1 short, 2 too few to judge, 3
///     confirm locally.
///   - OVS_FLATNESS_FL_VERDICT: levelness over all against what is asked; 0 meets, 1 short, 2 too few to judge, 3
///     confirm locally.
///   - OVS_FLATNESS_LINES: the lines.
///   - OVS_FLATNESS_OF_SECTIONS: the parts of the floor.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_KEY_MISSING,
/// OVS_KEY_REPEATED, OVS_CONTRADICTION, OVS_NULL_POINTER, OVS_LINE_TOO_SHORT, OVS_PROFILE_SPACING,
/// OVS_PROFILE_SHORT, OVS_FLATNESS_SECTION, OVS_PROFILE_LINE_UNKNOWN.
/// Basis: q = rise less the rise before, z = rise over 10 ft, by their mean and standard deviation: ASTM E1155,
/// floor flatness and floor levelness numbers (M-96), q and z over readings 12 in apart.
/// Basis: FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n / sum(n /
/// F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their combination, from memory:
/// confirm.
/// Basis: lines of 12 readings and 11 ft or more, 2 ft from edges, 4 ft apart: ASTM E1155, floor flatness and floor
/// levelness numbers (M-96), lines and readings, as in the record of a measured floor, as quoted elsewhere.
/// Basis: at least 2 sqrt(A) rises over 10 ft, from 1600 ft2 on A / 20, A in ft2: ASTM E1155, floor flatness and
/// floor levelness numbers (any), least number of readings, from memory: confirm.
/// Basis: FF and FL by class over all, and 3/5 of them for every section: ACI 117, tolerances for concrete
/// construction (10), table 4.8.5.1; 4.8.5.3.
/// Basis: levelness is not used where a floor falls; flatness is told with the plan taken off: Flatwork guidance on
/// floors that fall (several), levelness, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"readings":{"line":["A","A","A","A","A","A","A","A","A","A","A","A","A","B","B","B","B","B","B","B","B","B","B","B","B","B"],"elevation":["100.02 in","100.10 in","100.13 in","100.11 in","100.05 in","100.09 in","100.08 in","100.12 in","100.13 in","100.11 in","100.10 in","100.13 in","100.05 in","100.06 in","99.98 in","99.99 in","100.04 in","100.08 in","100.06 in","100.11 in","100.15 in","100.12 in","100.16 in","100.13 in","100.09 in","100.12 in"]},"sections":{"section":["floor"],"area":["300 ft2"]},"flatness_class":"conventional","places":{"line":["A","B"],"x":["2 ft","2 ft"],"y":["3 ft","8 ft"],"toward_x":["15 ft","15 ft"],"toward_y":["3 ft","8 ft"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_us(
    readings_elevation_in: *const f64,
    readings_rows: c_int,
    finish: *const ovs_finish,
    outline: *const ovs_outline,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Table(readings_rows, &[(1, Input::Numbers(readings_elevation_in))])),
        (9, Given::Record(Passed::new("finish", finish))),
        (10, Given::Record(Passed::new("outline", outline))),
    ];
    let request = Request::new(FLATNESS, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Flatness (FF) and levelness (FL) of a floor from many lines: by line, by section, over all, against what is
/// asked.
///
/// Equation: lines as for one line; F = sqrt(sum w / sum(w / F2)): lines by readings, sections by area; every
/// section reaches 3/5 of the least over all.
/// Taken for granted: readings of all lines equally far apart; on a floor that falls levelness is not used.
///
/// - `readings_elevation_mm` (mm): height of the floor; at least -10000000 mm, at most 10000000 mm.
/// - `readings_rows`: the readings of all lines: how many rows, each a reading; those of one line stand together,
///   in order along it; at least 1.
/// - `finish`: the plan: where it bends, readings of lines with a place are left out; may be null.
/// - `outline`: the plan edge, which lines keep 2 ft from; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `line` of `readings`: name of the line; required.
///   - `section` of `readings`: part of the floor the line lies in; needed once a line; may be left out.
///   - `spacing` (mm): how far apart the readings stand: 12 in or 300 mm; at least 10 mm, at most 10000 mm; where
///     left out 12 in, because the standard in inches reads every foot.
///   - `factor`: the constant for flatness, as the standard's text in inches or in millimetres has it; 0 4.57 in, 1
///     115.8 mm; where left out 4.57 in, because the text in inches came first.
///   - `sections`: the areas of the sections, or of the floor; may be left out.
///   - `section` of `sections`: its name; required.
///   - `area` of `sections` (m2): its area; more than 0 m2; required.
///   - `flatness_class`: the class asked; 0 conventional, 1 moderately flat, 2 flat, 3 very flat, 4 super flat; may
///     be left out.
///   - `least_ff` (1): flatness asked over all, in place of a class; at least 1 1, at most 1000 1; may be left out.
///   - `least_fl` (1): levelness asked over all, in place of a class; at least 1 1, at most 1000 1; may be left
///     out.
///   - `falls`: whether the floor is to fall; 0 no, 1 yes; where left out no, because a finish that is given tells
///     by itself.
///   - `places`: where the lines run; may be left out.
///   - `line` of `places`: the line's name; required.
///   - `x` of `places` (m): its first reading, from the left; at least -100000 m, at most 100000 m; required.
///   - `y` of `places` (m): its first reading, from the front; at least -100000 m, at most 100000 m; required.
///   - `toward_x` of `places` (m): a place it runs towards, from the left; at least -100000 m, at most 100000 m;
///     required.
///   - `toward_y` of `places` (m): a place it runs towards, from the front; at least -100000 m, at most 100000 m;
///     required.
///   - `finish`: the plan: where it bends, readings of lines with a place are left out; may be left out.
///   - `outline`: the plan edge, which lines keep 2 ft from; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FLATNESS_FF (1): flatness over all.
///   - OVS_FLATNESS_FL (1): levelness over all.
///   - OVS_FLATNESS_ASKED_FF (1): flatness asked over all.
///   - OVS_FLATNESS_ASKED_FL (1): levelness asked over all.
///   - OVS_FLATNESS_LOCAL_FF (1): flatness asked of every section.
///   - OVS_FLATNESS_LOCAL_FL (1): levelness asked of every section.
///   - OVS_FLATNESS_FF_VERDICT: flatness over all against what is asked; 0 meets, 1 short, 2 too few to judge, 3
///     confirm locally.
///   - OVS_FLATNESS_FL_VERDICT: levelness over all against what is asked; 0 meets, 1 short, 2 too few to judge, 3
///     confirm locally.
///   - OVS_FLATNESS_LINES: the lines.
///   - OVS_FLATNESS_OF_SECTIONS: the parts of the floor.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_KEY_MISSING,
/// OVS_KEY_REPEATED, OVS_CONTRADICTION, OVS_NULL_POINTER, OVS_LINE_TOO_SHORT, OVS_PROFILE_SPACING,
/// OVS_PROFILE_SHORT, OVS_FLATNESS_SECTION, OVS_PROFILE_LINE_UNKNOWN.
/// Basis: q = rise less the rise before, z = rise over 10 ft, by their mean and standard deviation: ASTM E1155,
/// floor flatness and floor levelness numbers (M-96), q and z over readings 12 in apart.
/// Basis: FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n / sum(n /
/// F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their combination, from memory:
/// confirm.
/// Basis: lines of 12 readings and 11 ft or more, 2 ft from edges, 4 ft apart: ASTM E1155, floor flatness and floor
/// levelness numbers (M-96), lines and readings, as in the record of a measured floor, as quoted elsewhere.
/// Basis: at least 2 sqrt(A) rises over 10 ft, from 1600 ft2 on A / 20, A in ft2: ASTM E1155, floor flatness and
/// floor levelness numbers (any), least number of readings, from memory: confirm.
/// Basis: FF and FL by class over all, and 3/5 of them for every section: ACI 117, tolerances for concrete
/// construction (10), table 4.8.5.1; 4.8.5.3.
/// Basis: levelness is not used where a floor falls; flatness is told with the plan taken off: Flatwork guidance on
/// floors that fall (several), levelness, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"readings":{"line":["A","A","A","A","A","A","A","A","A","A","A","A","A","B","B","B","B","B","B","B","B","B","B","B","B","B"],"elevation":["100.02 in","100.10 in","100.13 in","100.11 in","100.05 in","100.09 in","100.08 in","100.12 in","100.13 in","100.11 in","100.10 in","100.13 in","100.05 in","100.06 in","99.98 in","99.99 in","100.04 in","100.08 in","100.06 in","100.11 in","100.15 in","100.12 in","100.16 in","100.13 in","100.09 in","100.12 in"]},"sections":{"section":["floor"],"area":["300 ft2"]},"flatness_class":"conventional","places":{"line":["A","B"],"x":["2 ft","2 ft"],"y":["3 ft","8 ft"],"toward_x":["15 ft","15 ft"],"toward_y":["3 ft","8 ft"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_si(
    readings_elevation_mm: *const f64,
    readings_rows: c_int,
    finish: *const ovs_finish,
    outline: *const ovs_outline,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Table(readings_rows, &[(1, Input::Numbers(readings_elevation_mm))])),
        (9, Given::Record(Passed::new("finish", finish))),
        (10, Given::Record(Passed::new("outline", outline))),
    ];
    let request = Request::new(FLATNESS, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_flatness_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_us_why(
    readings_elevation_in: *const f64,
    readings_rows: c_int,
    finish: *const ovs_finish,
    outline: *const ovs_outline,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(readings_rows, &[(1, Input::Numbers(readings_elevation_in))])),
        (9, Given::Record(Passed::new("finish", finish))),
        (10, Given::Record(Passed::new("outline", outline))),
    ];
    let request = Request::new(FLATNESS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_flatness_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_si_why(
    readings_elevation_mm: *const f64,
    readings_rows: c_int,
    finish: *const ovs_finish,
    outline: *const ovs_outline,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(readings_rows, &[(1, Input::Numbers(readings_elevation_mm))])),
        (9, Given::Record(Passed::new("finish", finish))),
        (10, Given::Record(Passed::new("outline", outline))),
    ];
    let request = Request::new(FLATNESS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FLATNESS_COMBINED: &Operation = row(OPERATIONS, "flatness_combined");

/// One F-number for several lines, by their readings, or for several sections, by their areas.
///
/// Equation: F = sqrt(sum w / sum(w / F2)), w = number of readings of a line, area of a section.
/// Taken for granted: all numbers are FF, or all are FL.
///
/// - `parts_number_ratio` (1): its F-number; more than 0 1.
/// - `parts_rows`: the lines or the sections: how many rows, each a line or a section; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `readings` of `parts`: of a line: how many q for FF, how many z for FL; from 1 to 1000000000; may be left
///     out.
///   - `area` of `parts` (ft2): of a section: how large it is; more than 0 ft2; may be left out.
/// - `results`, `results_len`, out: as many as there is room for, by their constants:
///   - OVS_FLATNESS_COMBINED_NUMBER (1): the number for all.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_KEY_MISSING, OVS_CONTRADICTION.
/// Basis: FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n / sum(n /
/// F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their combination, from memory:
/// confirm.
/// Since 0.1.0.
/// Example, as JSON: {"parts":{"number":["31 1","22 1","27 1"],"readings":[13,15,12]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_combined_us(
    parts_number_ratio: *const f64,
    parts_rows: c_int,
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
        (0, Given::Table(parts_rows, &[(0, Input::Numbers(parts_number_ratio))])),
    ];
    let request = Request::new(FLATNESS_COMBINED, System::Us, &given, options_json, options_len);
    unsafe { record::numbers(request, Numbers::new("results", results, results_len), Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// One F-number for several lines, by their readings, or for several sections, by their areas.
///
/// Equation: F = sqrt(sum w / sum(w / F2)), w = number of readings of a line, area of a section.
/// Taken for granted: all numbers are FF, or all are FL.
///
/// - `parts_number_ratio` (1): its F-number; more than 0 1.
/// - `parts_rows`: the lines or the sections: how many rows, each a line or a section; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `readings` of `parts`: of a line: how many q for FF, how many z for FL; from 1 to 1000000000; may be left
///     out.
///   - `area` of `parts` (m2): of a section: how large it is; more than 0 m2; may be left out.
/// - `results`, `results_len`, out: as many as there is room for, by their constants:
///   - OVS_FLATNESS_COMBINED_NUMBER (1): the number for all.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_KEY_MISSING, OVS_CONTRADICTION.
/// Basis: FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n / sum(n /
/// F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their combination, from memory:
/// confirm.
/// Since 0.1.0.
/// Example, as JSON: {"parts":{"number":["31 1","22 1","27 1"],"readings":[13,15,12]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_combined_si(
    parts_number_ratio: *const f64,
    parts_rows: c_int,
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
        (0, Given::Table(parts_rows, &[(0, Input::Numbers(parts_number_ratio))])),
    ];
    let request = Request::new(FLATNESS_COMBINED, System::Si, &given, options_json, options_len);
    unsafe { record::numbers(request, Numbers::new("results", results, results_len), Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_flatness_combined_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_combined_us_why(
    parts_number_ratio: *const f64,
    parts_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(parts_rows, &[(0, Input::Numbers(parts_number_ratio))])),
    ];
    let request = Request::new(FLATNESS_COMBINED, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_flatness_combined_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_combined_si_why(
    parts_number_ratio: *const f64,
    parts_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(parts_rows, &[(0, Input::Numbers(parts_number_ratio))])),
    ];
    let request = Request::new(FLATNESS_COMBINED, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static STRAIGHTEDGE: &Operation = row(OPERATIONS, "straightedge");

/// The gap under a straightedge laid along a line of readings, from each reading on.
///
/// Equation: gap = upper hull of the readings under the straightedge less the floor, where it is greatest.
/// Taken for granted: it rests on two readings; on a hump it may tip either way, and the end that stands up is no
/// gap.
///
/// - `profile_distance_ft` (ft): from the start of the line; at least -32808.3989501 ft, at most 32808.3989501 ft.
/// - `profile_elevation_in` (in): height of the floor; at least -393700.787402 in, at most 393700.787402 in.
/// - `profile_rows`: the readings, three or more: how many rows, each a reading, in order along the line, at any
///   spacing; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `length` (ft): length of the straightedge; more than 0 ft, at most 100 ft; where left out 10 ft, because the
///     limits are told for 10 ft.
///   - `flatness_class`: class to hold the gaps against; under 10 ft only; 0 conventional, 1 moderately flat, 2
///     flat; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_STRAIGHTEDGE_GAP (in): the greatest gap.
///   - OVS_STRAIGHTEDGE_GAP_AT (ft): where it is.
///   - OVS_STRAIGHTEDGE_REST_1 (ft): first place the straightedge rests there.
///   - OVS_STRAIGHTEDGE_REST_2 (ft): second place it rests there.
///   - OVS_STRAIGHTEDGE_COUNT: how often it was laid down.
///   - OVS_STRAIGHTEDGE_ABOUT_FF (1): flatness number that goes roughly with such a gap, under 10 ft and up to 1/2
///     in.
///   - OVS_STRAIGHTEDGE_WITHIN_MOST (%): share of gaps within what nine in ten must keep.
///   - OVS_STRAIGHTEDGE_WITHIN_ALL (%): share of gaps within what all must keep.
///   - OVS_STRAIGHTEDGE_VERDICT: whether the class is kept; 0 meets, 1 short, 2 too few to judge, 3 confirm
///     locally.
///   - OVS_STRAIGHTEDGE_PLACEMENTS: the straightedge laid down from each reading on.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTRADICTION, OVS_PROFILE_SHORT,
/// OVS_PROFILE_ORDER.
/// Basis: plane and solid geometry: derived.
/// Basis: nine gaps in ten and all gaps within limits by class: ACI 117, tolerances for concrete construction (10),
/// straightedge of 10 ft, from memory: confirm.
/// Basis: FF 12, 20, 25, 32, 50 go roughly with gaps of 1/2, 5/16, 1/4, 3/16, 1/8 in under 10 ft: ACI 302.1R, guide
/// to concrete floor and slab construction (any), flatness against gaps, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"profile":{"distance":["1 ft","2 ft","3 ft","4 ft","5 ft","6 ft","7 ft","8 ft","9 ft","10 ft","11 ft","12 ft"],"elevation":["100.02 in","100.10 in","100.13 in","100.11 in","100.05 in","100.09 in","100.08 in","99.92 in","99.98 in","100.11 in","100.10 in","100.13 in"]},"flatness_class":"flat"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_straightedge_us(
    profile_distance_ft: *const f64,
    profile_elevation_in: *const f64,
    profile_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Table(profile_rows, &[(0, Input::Numbers(profile_distance_ft)), (1, Input::Numbers(profile_elevation_in))])),
    ];
    let request = Request::new(STRAIGHTEDGE, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The gap under a straightedge laid along a line of readings, from each reading on.
///
/// Equation: gap = upper hull of the readings under the straightedge less the floor, where it is greatest.
/// Taken for granted: it rests on two readings; on a hump it may tip either way, and the end that stands up is no
/// gap.
///
/// - `profile_distance_m` (m): from the start of the line; at least -10000 m, at most 10000 m.
/// - `profile_elevation_mm` (mm): height of the floor; at least -10000000 mm, at most 10000000 mm.
/// - `profile_rows`: the readings, three or more: how many rows, each a reading, in order along the line, at any
///   spacing; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `length` (m): length of the straightedge; more than 0 m, at most 30.48 m; where left out 10 ft, because the
///     limits are told for 10 ft.
///   - `flatness_class`: class to hold the gaps against; under 10 ft only; 0 conventional, 1 moderately flat, 2
///     flat; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_STRAIGHTEDGE_GAP (mm): the greatest gap.
///   - OVS_STRAIGHTEDGE_GAP_AT (m): where it is.
///   - OVS_STRAIGHTEDGE_REST_1 (m): first place the straightedge rests there.
///   - OVS_STRAIGHTEDGE_REST_2 (m): second place it rests there.
///   - OVS_STRAIGHTEDGE_COUNT: how often it was laid down.
///   - OVS_STRAIGHTEDGE_ABOUT_FF (1): flatness number that goes roughly with such a gap, under 10 ft and up to 1/2
///     in.
///   - OVS_STRAIGHTEDGE_WITHIN_MOST (%): share of gaps within what nine in ten must keep.
///   - OVS_STRAIGHTEDGE_WITHIN_ALL (%): share of gaps within what all must keep.
///   - OVS_STRAIGHTEDGE_VERDICT: whether the class is kept; 0 meets, 1 short, 2 too few to judge, 3 confirm
///     locally.
///   - OVS_STRAIGHTEDGE_PLACEMENTS: the straightedge laid down from each reading on.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTRADICTION, OVS_PROFILE_SHORT,
/// OVS_PROFILE_ORDER.
/// Basis: plane and solid geometry: derived.
/// Basis: nine gaps in ten and all gaps within limits by class: ACI 117, tolerances for concrete construction (10),
/// straightedge of 10 ft, from memory: confirm.
/// Basis: FF 12, 20, 25, 32, 50 go roughly with gaps of 1/2, 5/16, 1/4, 3/16, 1/8 in under 10 ft: ACI 302.1R, guide
/// to concrete floor and slab construction (any), flatness against gaps, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"profile":{"distance":["1 ft","2 ft","3 ft","4 ft","5 ft","6 ft","7 ft","8 ft","9 ft","10 ft","11 ft","12 ft"],"elevation":["100.02 in","100.10 in","100.13 in","100.11 in","100.05 in","100.09 in","100.08 in","99.92 in","99.98 in","100.11 in","100.10 in","100.13 in"]},"flatness_class":"flat"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_straightedge_si(
    profile_distance_m: *const f64,
    profile_elevation_mm: *const f64,
    profile_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Table(profile_rows, &[(0, Input::Numbers(profile_distance_m)), (1, Input::Numbers(profile_elevation_mm))])),
    ];
    let request = Request::new(STRAIGHTEDGE, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_straightedge_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_straightedge_us_why(
    profile_distance_ft: *const f64,
    profile_elevation_in: *const f64,
    profile_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(profile_rows, &[(0, Input::Numbers(profile_distance_ft)), (1, Input::Numbers(profile_elevation_in))])),
    ];
    let request = Request::new(STRAIGHTEDGE, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_straightedge_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_straightedge_si_why(
    profile_distance_m: *const f64,
    profile_elevation_mm: *const f64,
    profile_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(profile_rows, &[(0, Input::Numbers(profile_distance_m)), (1, Input::Numbers(profile_elevation_mm))])),
    ];
    let request = Request::new(STRAIGHTEDGE, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}
