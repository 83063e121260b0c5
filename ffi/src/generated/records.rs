//! The record types.
//!
//! Made from the table of operations: change the table and run `cargo run -p overslab-tests`.

use crate::answer::ovs_answer;
use crate::border::{Message, Numbers, Passed, TextIn, TextOut, free, read, record_type};
use crate::border::read::Holder;
use overslab::operation::RecordType;
use overslab::operations::OPERATIONS;
use overslab::quantity::System;
use std::ffi::{c_char, c_int};

/// The field `area` (ft2 or m2): area of the work.
pub const OVS_OUTLINE_AREA: c_int = 0;

/// The field `perimeter` (ft or m): length of all its edges.
pub const OVS_OUTLINE_PERIMETER: c_int = 1;

/// The field `squareness`: how well the measurements agree.
pub const OVS_OUTLINE_SQUARENESS: c_int = 2;

/// The field `corners`: the corners, with the edge behind each.
pub const OVS_OUTLINE_CORNERS: c_int = 3;

/// The column `x` of `corners` (ft or m): distance from the left.
pub const OVS_OUTLINE_CORNERS_X: c_int = 0;

/// The column `y` of `corners` (ft or m): distance from the front.
pub const OVS_OUTLINE_CORNERS_Y: c_int = 1;

/// The column `edge` of `corners`: name of the edge to the next corner.
pub const OVS_OUTLINE_CORNERS_EDGE: c_int = 2;

/// How many fields there are.
pub const OVS_OUTLINE_FIELDS: c_int = 4;

/// The plan edge of the work, with holes and named edges.
#[expect(non_camel_case_types, reason = "its name in C")]
pub struct ovs_outline {
    _private: [u8; 0],
}

/// The field `area` (ft2 or m2): area of the work.
pub const OVS_SURVEY_AREA: c_int = 0;

/// The field `shot_count`: how many places were shot.
pub const OVS_SURVEY_SHOT_COUNT: c_int = 1;

/// The field `highest` (ft or m): height of the highest point.
pub const OVS_SURVEY_HIGHEST: c_int = 2;

/// The field `highest_x` (ft or m): its distance from the left.
pub const OVS_SURVEY_HIGHEST_X: c_int = 3;

/// The field `highest_y` (ft or m): its distance from the front.
pub const OVS_SURVEY_HIGHEST_Y: c_int = 4;

/// The field `highest_shot`: the shot it is at.
pub const OVS_SURVEY_HIGHEST_SHOT: c_int = 5;

/// The field `lowest` (ft or m): height of the lowest point.
pub const OVS_SURVEY_LOWEST: c_int = 6;

/// The field `lowest_x` (ft or m): its distance from the left.
pub const OVS_SURVEY_LOWEST_X: c_int = 7;

/// The field `lowest_y` (ft or m): its distance from the front.
pub const OVS_SURVEY_LOWEST_Y: c_int = 8;

/// The field `lowest_shot`: the shot it is at.
pub const OVS_SURVEY_LOWEST_SHOT: c_int = 9;

/// The field `out_of_level` (in or mm): highest less lowest.
pub const OVS_SURVEY_OUT_OF_LEVEL: c_int = 10;

/// The field `mean` (ft or m): mean height over the area.
pub const OVS_SURVEY_MEAN: c_int = 11;

/// The field `rise_x` (in/ft or %): rise of the fitted plane along x.
pub const OVS_SURVEY_RISE_X: c_int = 12;

/// The field `rise_y` (in/ft or %): rise of the fitted plane along y.
pub const OVS_SURVEY_RISE_Y: c_int = 13;

/// The field `unevenness` (in or mm): root mean square of the shots about that plane.
pub const OVS_SURVEY_UNEVENNESS: c_int = 14;

/// The field `beyond` (ft2 or m2): area beyond the shots.
pub const OVS_SURVEY_BEYOND: c_int = 15;

/// The field `unsurveyed` (ft2 or m2): area in triangles that leave the outline.
pub const OVS_SURVEY_UNSURVEYED: c_int = 16;

/// The field `ambiguity_less` (yd3 or m3): volume less by other triangulations.
pub const OVS_SURVEY_AMBIGUITY_LESS: c_int = 17;

/// The field `ambiguity_more` (yd3 or m3): volume more by other triangulations.
pub const OVS_SURVEY_AMBIGUITY_MORE: c_int = 18;

/// The field `shots`: the shots, their heights after all changes.
pub const OVS_SURVEY_SHOTS: c_int = 19;

/// The column `name` of `shots`: its name.
pub const OVS_SURVEY_SHOTS_NAME: c_int = 0;

/// The column `x` of `shots` (ft or m): distance from the left.
pub const OVS_SURVEY_SHOTS_X: c_int = 1;

/// The column `y` of `shots` (ft or m): distance from the front.
pub const OVS_SURVEY_SHOTS_Y: c_int = 2;

/// The column `elevation` of `shots` (ft or m): height above the job datum.
pub const OVS_SURVEY_SHOTS_ELEVATION: c_int = 3;

/// The field `changes`: what was done to the slab since it was shot.
pub const OVS_SURVEY_CHANGES: c_int = 20;

/// The column `work` of `changes`: what is done.
pub const OVS_SURVEY_CHANGES_WORK: c_int = 0;

/// The column `area` of `changes` (ft2 or m2): area ground or filled.
pub const OVS_SURVEY_CHANGES_AREA: c_int = 1;

/// The column `volume` of `changes` (ft3 or m3): volume taken off or filled.
pub const OVS_SURVEY_CHANGES_VOLUME: c_int = 2;

/// The column `deepest` of `changes` (in or mm): deepest cut or fill; none where nothing is changed.
pub const OVS_SURVEY_CHANGES_DEEPEST: c_int = 3;

/// The column `deepest_x` of `changes` (ft or m): where it is, from the left.
pub const OVS_SURVEY_CHANGES_DEEPEST_X: c_int = 4;

/// The column `deepest_y` of `changes` (ft or m): where it is, from the front.
pub const OVS_SURVEY_CHANGES_DEEPEST_Y: c_int = 5;

/// How many fields there are.
pub const OVS_SURVEY_FIELDS: c_int = 21;

/// The word `grind`.
pub const OVS_SURVEY_CHANGES_WORK_GRIND: c_int = 0;

/// The word `fill`.
pub const OVS_SURVEY_CHANGES_WORK_FILL: c_int = 1;

/// The word `fill ponds`.
pub const OVS_SURVEY_CHANGES_WORK_FILL_PONDS: c_int = 2;

/// The surveyed old slab: outline, shots and the surface through them.
#[expect(non_camel_case_types, reason = "its name in C")]
pub struct ovs_survey {
    _private: [u8; 0],
}

/// The field `point_count`: how many points there are.
pub const OVS_POINTS_POINT_COUNT: c_int = 0;

/// The field `least_x` (ft or m): least along the first plan axis.
pub const OVS_POINTS_LEAST_X: c_int = 1;

/// The field `greatest_x` (ft or m): greatest along the first plan axis.
pub const OVS_POINTS_GREATEST_X: c_int = 2;

/// The field `least_y` (ft or m): least along the second plan axis.
pub const OVS_POINTS_LEAST_Y: c_int = 3;

/// The field `greatest_y` (ft or m): greatest along the second plan axis.
pub const OVS_POINTS_GREATEST_Y: c_int = 4;

/// The field `lowest` (ft or m): height of the lowest.
pub const OVS_POINTS_LOWEST: c_int = 5;

/// The field `highest` (ft or m): height of the highest.
pub const OVS_POINTS_HIGHEST: c_int = 6;

/// The field `points`: the points.
pub const OVS_POINTS_POINTS: c_int = 7;

/// The column `name` of `points`: its name.
pub const OVS_POINTS_POINTS_NAME: c_int = 0;

/// The column `x` of `points` (ft or m): along the first plan axis.
pub const OVS_POINTS_POINTS_X: c_int = 1;

/// The column `y` of `points` (ft or m): along the second, a quarter turn to the left of it.
pub const OVS_POINTS_POINTS_Y: c_int = 2;

/// The column `elevation` of `points` (ft or m): height.
pub const OVS_POINTS_POINTS_ELEVATION: c_int = 3;

/// How many fields there are.
pub const OVS_POINTS_FIELDS: c_int = 8;

/// Points with heights, in the axes of where they came from: of a file, a scan or a total station.
#[expect(non_camel_case_types, reason = "its name in C")]
pub struct ovs_points {
    _private: [u8; 0],
}

/// The field `name`: its name.
pub const OVS_TIN_NAME: c_int = 0;

/// The field `point_count`: how many points there are.
pub const OVS_TIN_POINT_COUNT: c_int = 1;

/// The field `face_count`: how many faces there are.
pub const OVS_TIN_FACE_COUNT: c_int = 2;

/// The field `lowest` (ft or m): height of the lowest point.
pub const OVS_TIN_LOWEST: c_int = 3;

/// The field `highest` (ft or m): height of the highest point.
pub const OVS_TIN_HIGHEST: c_int = 4;

/// The field `points`: the points.
pub const OVS_TIN_POINTS: c_int = 5;

/// The column `name` of `points`: its name.
pub const OVS_TIN_POINTS_NAME: c_int = 0;

/// The column `x` of `points` (ft or m): along the first plan axis.
pub const OVS_TIN_POINTS_X: c_int = 1;

/// The column `y` of `points` (ft or m): along the second, a quarter turn to the left of it.
pub const OVS_TIN_POINTS_Y: c_int = 2;

/// The column `elevation` of `points` (ft or m): height.
pub const OVS_TIN_POINTS_ELEVATION: c_int = 3;

/// The field `faces`: the faces.
pub const OVS_TIN_FACES: c_int = 6;

/// The column `first` of `faces`: the number of one point.
pub const OVS_TIN_FACES_FIRST: c_int = 0;

/// The column `second` of `faces`: the number of another.
pub const OVS_TIN_FACES_SECOND: c_int = 1;

/// The column `third` of `faces`: the number of the third.
pub const OVS_TIN_FACES_THIRD: c_int = 2;

/// How many fields there are.
pub const OVS_TIN_FIELDS: c_int = 7;

/// A triangulated surface as it was handed over: points, and the faces between them.
#[expect(non_camel_case_types, reason = "its name in C")]
pub struct ovs_tin {
    _private: [u8; 0],
}

/// The field `words`: the findings given as words.
pub const OVS_FINDINGS_WORDS: c_int = 0;

/// The column `finding` of `words`: which finding.
pub const OVS_FINDINGS_WORDS_FINDING: c_int = 0;

/// The column `word` of `words`: its word.
pub const OVS_FINDINGS_WORDS_WORD: c_int = 1;

/// How many fields there are.
pub const OVS_FINDINGS_FIELDS: c_int = 1;

/// The word `crack_width`.
pub const OVS_FINDINGS_WORDS_FINDING_CRACK_WIDTH: c_int = 0;

/// The word `crack_movement`.
pub const OVS_FINDINGS_WORDS_FINDING_CRACK_MOVEMENT: c_int = 1;

/// The word `crack_pattern`.
pub const OVS_FINDINGS_WORDS_FINDING_CRACK_PATTERN: c_int = 2;

/// The word `bar_cracks`.
pub const OVS_FINDINGS_WORDS_FINDING_BAR_CRACKS: c_int = 3;

/// The word `step`.
pub const OVS_FINDINGS_WORDS_FINDING_STEP: c_int = 4;

/// The word `settlement`.
pub const OVS_FINDINGS_WORDS_FINDING_SETTLEMENT: c_int = 5;

/// The word `settlement_signs`.
pub const OVS_FINDINGS_WORDS_FINDING_SETTLEMENT_SIGNS: c_int = 6;

/// The word `heave`.
pub const OVS_FINDINGS_WORDS_FINDING_HEAVE: c_int = 7;

/// The word `rocking`.
pub const OVS_FINDINGS_WORDS_FINDING_ROCKING: c_int = 8;

/// The word `joints`.
pub const OVS_FINDINGS_WORDS_FINDING_JOINTS: c_int = 9;

/// The word `hollow`.
pub const OVS_FINDINGS_WORDS_FINDING_HOLLOW: c_int = 10;

/// The word `drum`.
pub const OVS_FINDINGS_WORDS_FINDING_DRUM: c_int = 11;

/// The word `strength`.
pub const OVS_FINDINGS_WORDS_FINDING_STRENGTH: c_int = 12;

/// The word `scaling`.
pub const OVS_FINDINGS_WORDS_FINDING_SCALING: c_int = 13;

/// The word `spalling`.
pub const OVS_FINDINGS_WORDS_FINDING_SPALLING: c_int = 14;

/// The word `popouts`.
pub const OVS_FINDINGS_WORDS_FINDING_POPOUTS: c_int = 15;

/// The word `durability_cracking`.
pub const OVS_FINDINGS_WORDS_FINDING_DURABILITY_CRACKING: c_int = 16;

/// The word `gel`.
pub const OVS_FINDINGS_WORDS_FINDING_GEL: c_int = 17;

/// The word `contamination`.
pub const OVS_FINDINGS_WORDS_FINDING_CONTAMINATION: c_int = 18;

/// The word `sealer`.
pub const OVS_FINDINGS_WORDS_FINDING_SEALER: c_int = 19;

/// The word `paint`.
pub const OVS_FINDINGS_WORDS_FINDING_PAINT: c_int = 20;

/// The word `covering`.
pub const OVS_FINDINGS_WORDS_FINDING_COVERING: c_int = 21;

/// The word `moisture`.
pub const OVS_FINDINGS_WORDS_FINDING_MOISTURE: c_int = 22;

/// The word `rests_on`.
pub const OVS_FINDINGS_WORDS_FINDING_RESTS_ON: c_int = 23;

/// The word `suspended`.
pub const OVS_FINDINGS_WORDS_FINDING_SUSPENDED: c_int = 24;

/// The word `below`.
pub const OVS_FINDINGS_WORDS_FINDING_BELOW: c_int = 25;

/// The word `heating_pipes`.
pub const OVS_FINDINGS_WORDS_FINDING_HEATING_PIPES: c_int = 26;

/// The word `tendons`.
pub const OVS_FINDINGS_WORDS_FINDING_TENDONS: c_int = 27;

/// The word `place`.
pub const OVS_FINDINGS_WORDS_FINDING_PLACE: c_int = 28;

/// The word `drainage`.
pub const OVS_FINDINGS_WORDS_FINDING_DRAINAGE: c_int = 29;

/// The word `old_thickness`.
pub const OVS_FINDINGS_WORDS_FINDING_OLD_THICKNESS: c_int = 30;

/// The word `wet_use`.
pub const OVS_FINDINGS_WORDS_FINDING_WET_USE: c_int = 31;

/// The word `load`.
pub const OVS_FINDINGS_WORDS_FINDING_LOAD: c_int = 32;

/// The word `agent`.
pub const OVS_FINDINGS_WORDS_FINDING_AGENT: c_int = 33;

/// The word `room`.
pub const OVS_FINDINGS_WORDS_FINDING_ROOM: c_int = 34;

/// What was found on the old slab and what is wanted of it; all of it may be left out.
#[expect(non_camel_case_types, reason = "its name in C")]
pub struct ovs_findings {
    _private: [u8; 0],
}

/// The field `elevation` (ft or m): of one plane: its height at the origin of the axes.
pub const OVS_FINISH_ELEVATION: c_int = 0;

/// The field `rise_x` (in/ft or %): of one plane: rise along x.
pub const OVS_FINISH_RISE_X: c_int = 1;

/// The field `rise_y` (in/ft or %): of one plane: rise along y.
pub const OVS_FINISH_RISE_Y: c_int = 2;

/// The field `fall` (in/ft or %): steepest fall, of facets the steepest of all.
pub const OVS_FINISH_FALL: c_int = 3;

/// The field `facet_count`: how many facets it has; 0 for one plane.
pub const OVS_FINISH_FACET_COUNT: c_int = 4;

/// How many fields there are.
pub const OVS_FINISH_FIELDS: c_int = 5;

/// The new top surface: one plane, or facets that meet.
#[expect(non_camel_case_types, reason = "its name in C")]
pub struct ovs_finish {
    _private: [u8; 0],
}

/// The field `name`: what the job is called.
pub const OVS_JOB_NAME: c_int = 0;

/// How many fields there are.
pub const OVS_JOB_FIELDS: c_int = 1;

/// A whole job description.
#[expect(non_camel_case_types, reason = "its name in C")]
pub struct ovs_job {
    _private: [u8; 0],
}

pub(crate) static OUTLINE_TYPE: &RecordType = record_type(OPERATIONS, "outline");

/// Every field that is a number, a count or a word, by its place; NaN for the others.
///
/// - `values`, `values_len`, out: as many as there is room for.
/// - OVS_OUTLINE_AREA (ft2): area of the work.
/// - OVS_OUTLINE_PERIMETER (ft): length of all its edges.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_outline_values_us(
    outline: *const ovs_outline,
    values: *mut f64,
    values_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let values = Numbers::new("values", values, values_len);
    unsafe { read::values(Holder::Record(OUTLINE_TYPE, Passed::new("outline", outline)), System::Us, values, Message::new(msg, msg_len)) }
}

/// Every field that is a number, a count or a word, by its place; NaN for the others.
///
/// - `values`, `values_len`, out: as many as there is room for.
/// - OVS_OUTLINE_AREA (m2): area of the work.
/// - OVS_OUTLINE_PERIMETER (m): length of all its edges.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_outline_values_si(
    outline: *const ovs_outline,
    values: *mut f64,
    values_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let values = Numbers::new("values", values, values_len);
    unsafe { read::values(Holder::Record(OUTLINE_TYPE, Passed::new("outline", outline)), System::Si, values, Message::new(msg, msg_len)) }
}

/// A field that is a text, or a word.
///
/// - OVS_OUTLINE_SQUARENESS: how well the measurements agree.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_outline_field_text(
    outline: *const ovs_outline,
    field: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let out = TextOut::new("text", text, text_len, needed);
    unsafe { read::text(Holder::Record(OUTLINE_TYPE, Passed::new("outline", outline)), field, out, Message::new(msg, msg_len)) }
}

/// How many rows a field that is a table has.
///
/// - OVS_OUTLINE_CORNERS: the corners, with the edge behind each.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_outline_field_rows(
    outline: *const ovs_outline,
    field: c_int,
    rows: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    unsafe { read::rows(Holder::Record(OUTLINE_TYPE, Passed::new("outline", outline)), field, rows, Message::new(msg, msg_len)) }
}

/// A column of numbers, counts or words of a field that is a table; NaN for an empty cell.
///
/// - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
/// - OVS_OUTLINE_CORNERS_X (ft): distance from the left.
/// - OVS_OUTLINE_CORNERS_Y (ft): distance from the front.
/// - OVS_OUTLINE_CORNERS_EDGE: name of the edge to the next corner.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_outline_field_column_us(
    outline: *const ovs_outline,
    field: c_int,
    column: c_int,
    cells: *mut f64,
    cells_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let cells = Numbers::new("cells", cells, cells_len);
    unsafe { read::column(Holder::Record(OUTLINE_TYPE, Passed::new("outline", outline)), field, column, System::Us, cells, Message::new(msg, msg_len)) }
}

/// A column of numbers, counts or words of a field that is a table; NaN for an empty cell.
///
/// - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
/// - OVS_OUTLINE_CORNERS_X (m): distance from the left.
/// - OVS_OUTLINE_CORNERS_Y (m): distance from the front.
/// - OVS_OUTLINE_CORNERS_EDGE: name of the edge to the next corner.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_outline_field_column_si(
    outline: *const ovs_outline,
    field: c_int,
    column: c_int,
    cells: *mut f64,
    cells_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let cells = Numbers::new("cells", cells, cells_len);
    unsafe { read::column(Holder::Record(OUTLINE_TYPE, Passed::new("outline", outline)), field, column, System::Si, cells, Message::new(msg, msg_len)) }
}

/// A text, or a word, of a field that is a table; OVS_EMPTY_CELL where that row has none.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_outline_field_column_text(
    outline: *const ovs_outline,
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
    unsafe { read::column_text(Holder::Record(OUTLINE_TYPE, Passed::new("outline", outline)), [field, column, row], out, Message::new(msg, msg_len)) }
}

/// Writes the record as JSON, from which it comes back the same to the bit.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_outline_to_json(
    outline: *const ovs_outline,
    json: *mut c_char,
    json_len: c_int,
    needed: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let out = TextOut::new("json", json, json_len, needed);
    unsafe { read::to_json(OUTLINE_TYPE, Passed::new("outline", outline), out, Message::new(msg, msg_len)) }
}

/// Makes the record from its JSON; every quantity in it is a text with its unit.
///
/// - `status`, out: the status of the call; may be null.
///
/// Returns the record, or null.
/// Example: {"sides": [ {"name": "front", "length": "20 ft"}, {"name": "right", "length": "32 ft"}, {"name": "back", "length": "20 ft"}, {"name": "left", "length": "32 ft"}], "diagonal": "37' 8 7/8\""}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_outline_from_json(
    json: *const c_char,
    json_len: c_int,
    status: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_outline {
    let text = TextIn::new("json", json, json_len);
    unsafe { read::from_json(OUTLINE_TYPE, text, status, Message::new(msg, msg_len)) }
}

/// A result of an answer that is such a record, as a pointer of its own.
///
/// - `status`, out: the status of the call; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_record_outline(
    answer: *const ovs_answer,
    result: c_int,
    status: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_outline {
    let answer = Passed::new("answer", answer);
    unsafe { read::record(OUTLINE_TYPE, answer, result, status, Message::new(msg, msg_len)) }
}

/// Frees the record; null is nothing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_outline_free(
    outline: *mut ovs_outline,
) {
    unsafe { free(outline) }
}

pub(crate) static SURVEY_TYPE: &RecordType = record_type(OPERATIONS, "survey");

/// Every field that is a number, a count or a word, by its place; NaN for the others.
///
/// - `values`, `values_len`, out: as many as there is room for.
/// - OVS_SURVEY_AREA (ft2): area of the work.
/// - OVS_SURVEY_SHOT_COUNT: how many places were shot.
/// - OVS_SURVEY_HIGHEST (ft): height of the highest point.
/// - OVS_SURVEY_HIGHEST_X (ft): its distance from the left.
/// - OVS_SURVEY_HIGHEST_Y (ft): its distance from the front.
/// - OVS_SURVEY_LOWEST (ft): height of the lowest point.
/// - OVS_SURVEY_LOWEST_X (ft): its distance from the left.
/// - OVS_SURVEY_LOWEST_Y (ft): its distance from the front.
/// - OVS_SURVEY_OUT_OF_LEVEL (in): highest less lowest.
/// - OVS_SURVEY_MEAN (ft): mean height over the area.
/// - OVS_SURVEY_RISE_X (in/ft): rise of the fitted plane along x.
/// - OVS_SURVEY_RISE_Y (in/ft): rise of the fitted plane along y.
/// - OVS_SURVEY_UNEVENNESS (in): root mean square of the shots about that plane.
/// - OVS_SURVEY_BEYOND (ft2): area beyond the shots.
/// - OVS_SURVEY_UNSURVEYED (ft2): area in triangles that leave the outline.
/// - OVS_SURVEY_AMBIGUITY_LESS (yd3): volume less by other triangulations.
/// - OVS_SURVEY_AMBIGUITY_MORE (yd3): volume more by other triangulations.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_values_us(
    survey: *const ovs_survey,
    values: *mut f64,
    values_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let values = Numbers::new("values", values, values_len);
    unsafe { read::values(Holder::Record(SURVEY_TYPE, Passed::new("survey", survey)), System::Us, values, Message::new(msg, msg_len)) }
}

/// Every field that is a number, a count or a word, by its place; NaN for the others.
///
/// - `values`, `values_len`, out: as many as there is room for.
/// - OVS_SURVEY_AREA (m2): area of the work.
/// - OVS_SURVEY_SHOT_COUNT: how many places were shot.
/// - OVS_SURVEY_HIGHEST (m): height of the highest point.
/// - OVS_SURVEY_HIGHEST_X (m): its distance from the left.
/// - OVS_SURVEY_HIGHEST_Y (m): its distance from the front.
/// - OVS_SURVEY_LOWEST (m): height of the lowest point.
/// - OVS_SURVEY_LOWEST_X (m): its distance from the left.
/// - OVS_SURVEY_LOWEST_Y (m): its distance from the front.
/// - OVS_SURVEY_OUT_OF_LEVEL (mm): highest less lowest.
/// - OVS_SURVEY_MEAN (m): mean height over the area.
/// - OVS_SURVEY_RISE_X (%): rise of the fitted plane along x.
/// - OVS_SURVEY_RISE_Y (%): rise of the fitted plane along y.
/// - OVS_SURVEY_UNEVENNESS (mm): root mean square of the shots about that plane.
/// - OVS_SURVEY_BEYOND (m2): area beyond the shots.
/// - OVS_SURVEY_UNSURVEYED (m2): area in triangles that leave the outline.
/// - OVS_SURVEY_AMBIGUITY_LESS (m3): volume less by other triangulations.
/// - OVS_SURVEY_AMBIGUITY_MORE (m3): volume more by other triangulations.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_values_si(
    survey: *const ovs_survey,
    values: *mut f64,
    values_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let values = Numbers::new("values", values, values_len);
    unsafe { read::values(Holder::Record(SURVEY_TYPE, Passed::new("survey", survey)), System::Si, values, Message::new(msg, msg_len)) }
}

/// A field that is a text, or a word.
///
/// - OVS_SURVEY_HIGHEST_SHOT: the shot it is at.
/// - OVS_SURVEY_LOWEST_SHOT: the shot it is at.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_field_text(
    survey: *const ovs_survey,
    field: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let out = TextOut::new("text", text, text_len, needed);
    unsafe { read::text(Holder::Record(SURVEY_TYPE, Passed::new("survey", survey)), field, out, Message::new(msg, msg_len)) }
}

/// How many rows a field that is a table has.
///
/// - OVS_SURVEY_SHOTS: the shots, their heights after all changes.
/// - OVS_SURVEY_CHANGES: what was done to the slab since it was shot.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_field_rows(
    survey: *const ovs_survey,
    field: c_int,
    rows: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    unsafe { read::rows(Holder::Record(SURVEY_TYPE, Passed::new("survey", survey)), field, rows, Message::new(msg, msg_len)) }
}

/// A column of numbers, counts or words of a field that is a table; NaN for an empty cell.
///
/// - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
/// - OVS_SURVEY_SHOTS_NAME: its name.
/// - OVS_SURVEY_SHOTS_X (ft): distance from the left.
/// - OVS_SURVEY_SHOTS_Y (ft): distance from the front.
/// - OVS_SURVEY_SHOTS_ELEVATION (ft): height above the job datum.
/// - OVS_SURVEY_CHANGES_WORK: what is done; 0 grind, 1 fill, 2 fill ponds.
/// - OVS_SURVEY_CHANGES_AREA (ft2): area ground or filled.
/// - OVS_SURVEY_CHANGES_VOLUME (ft3): volume taken off or filled.
/// - OVS_SURVEY_CHANGES_DEEPEST (in): deepest cut or fill; none where nothing is changed.
/// - OVS_SURVEY_CHANGES_DEEPEST_X (ft): where it is, from the left.
/// - OVS_SURVEY_CHANGES_DEEPEST_Y (ft): where it is, from the front.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_field_column_us(
    survey: *const ovs_survey,
    field: c_int,
    column: c_int,
    cells: *mut f64,
    cells_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let cells = Numbers::new("cells", cells, cells_len);
    unsafe { read::column(Holder::Record(SURVEY_TYPE, Passed::new("survey", survey)), field, column, System::Us, cells, Message::new(msg, msg_len)) }
}

/// A column of numbers, counts or words of a field that is a table; NaN for an empty cell.
///
/// - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
/// - OVS_SURVEY_SHOTS_NAME: its name.
/// - OVS_SURVEY_SHOTS_X (m): distance from the left.
/// - OVS_SURVEY_SHOTS_Y (m): distance from the front.
/// - OVS_SURVEY_SHOTS_ELEVATION (m): height above the job datum.
/// - OVS_SURVEY_CHANGES_WORK: what is done; 0 grind, 1 fill, 2 fill ponds.
/// - OVS_SURVEY_CHANGES_AREA (m2): area ground or filled.
/// - OVS_SURVEY_CHANGES_VOLUME (m3): volume taken off or filled.
/// - OVS_SURVEY_CHANGES_DEEPEST (mm): deepest cut or fill; none where nothing is changed.
/// - OVS_SURVEY_CHANGES_DEEPEST_X (m): where it is, from the left.
/// - OVS_SURVEY_CHANGES_DEEPEST_Y (m): where it is, from the front.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_field_column_si(
    survey: *const ovs_survey,
    field: c_int,
    column: c_int,
    cells: *mut f64,
    cells_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let cells = Numbers::new("cells", cells, cells_len);
    unsafe { read::column(Holder::Record(SURVEY_TYPE, Passed::new("survey", survey)), field, column, System::Si, cells, Message::new(msg, msg_len)) }
}

/// A text, or a word, of a field that is a table; OVS_EMPTY_CELL where that row has none.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_field_column_text(
    survey: *const ovs_survey,
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
    unsafe { read::column_text(Holder::Record(SURVEY_TYPE, Passed::new("survey", survey)), [field, column, row], out, Message::new(msg, msg_len)) }
}

/// Writes the record as JSON, from which it comes back the same to the bit.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_to_json(
    survey: *const ovs_survey,
    json: *mut c_char,
    json_len: c_int,
    needed: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let out = TextOut::new("json", json, json_len, needed);
    unsafe { read::to_json(SURVEY_TYPE, Passed::new("survey", survey), out, Message::new(msg, msg_len)) }
}

/// Makes the record from its JSON; every quantity in it is a text with its unit.
///
/// - `status`, out: the status of the call; may be null.
///
/// Returns the record, or null.
/// Example: { "outline": {"sides": [ {"name": "front", "length": "20 ft"}, {"name": "right", "length": "32 ft"}, {"name": "back", "length": "20 ft"}, {"name": "left", "length": "32 ft"}]}, "grid": {"columns": ["1 ft", "19 ft"], "rows": ["1 ft", "31 ft"], "elevations": ["99.2 ft", "99.1 ft", "99.4 ft", "99.3 ft"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_from_json(
    json: *const c_char,
    json_len: c_int,
    status: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_survey {
    let text = TextIn::new("json", json, json_len);
    unsafe { read::from_json(SURVEY_TYPE, text, status, Message::new(msg, msg_len)) }
}

/// A result of an answer that is such a record, as a pointer of its own.
///
/// - `status`, out: the status of the call; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_record_survey(
    answer: *const ovs_answer,
    result: c_int,
    status: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_survey {
    let answer = Passed::new("answer", answer);
    unsafe { read::record(SURVEY_TYPE, answer, result, status, Message::new(msg, msg_len)) }
}

/// Frees the record; null is nothing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_free(
    survey: *mut ovs_survey,
) {
    unsafe { free(survey) }
}

pub(crate) static POINTS_TYPE: &RecordType = record_type(OPERATIONS, "points");

/// Every field that is a number, a count or a word, by its place; NaN for the others.
///
/// - `values`, `values_len`, out: as many as there is room for.
/// - OVS_POINTS_POINT_COUNT: how many points there are.
/// - OVS_POINTS_LEAST_X (ft): least along the first plan axis.
/// - OVS_POINTS_GREATEST_X (ft): greatest along the first plan axis.
/// - OVS_POINTS_LEAST_Y (ft): least along the second plan axis.
/// - OVS_POINTS_GREATEST_Y (ft): greatest along the second plan axis.
/// - OVS_POINTS_LOWEST (ft): height of the lowest.
/// - OVS_POINTS_HIGHEST (ft): height of the highest.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_points_values_us(
    points: *const ovs_points,
    values: *mut f64,
    values_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let values = Numbers::new("values", values, values_len);
    unsafe { read::values(Holder::Record(POINTS_TYPE, Passed::new("points", points)), System::Us, values, Message::new(msg, msg_len)) }
}

/// Every field that is a number, a count or a word, by its place; NaN for the others.
///
/// - `values`, `values_len`, out: as many as there is room for.
/// - OVS_POINTS_POINT_COUNT: how many points there are.
/// - OVS_POINTS_LEAST_X (m): least along the first plan axis.
/// - OVS_POINTS_GREATEST_X (m): greatest along the first plan axis.
/// - OVS_POINTS_LEAST_Y (m): least along the second plan axis.
/// - OVS_POINTS_GREATEST_Y (m): greatest along the second plan axis.
/// - OVS_POINTS_LOWEST (m): height of the lowest.
/// - OVS_POINTS_HIGHEST (m): height of the highest.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_points_values_si(
    points: *const ovs_points,
    values: *mut f64,
    values_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let values = Numbers::new("values", values, values_len);
    unsafe { read::values(Holder::Record(POINTS_TYPE, Passed::new("points", points)), System::Si, values, Message::new(msg, msg_len)) }
}

/// How many rows a field that is a table has.
///
/// - OVS_POINTS_POINTS: the points.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_points_field_rows(
    points: *const ovs_points,
    field: c_int,
    rows: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    unsafe { read::rows(Holder::Record(POINTS_TYPE, Passed::new("points", points)), field, rows, Message::new(msg, msg_len)) }
}

/// A column of numbers, counts or words of a field that is a table; NaN for an empty cell.
///
/// - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
/// - OVS_POINTS_POINTS_NAME: its name.
/// - OVS_POINTS_POINTS_X (ft): along the first plan axis.
/// - OVS_POINTS_POINTS_Y (ft): along the second, a quarter turn to the left of it.
/// - OVS_POINTS_POINTS_ELEVATION (ft): height.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_points_field_column_us(
    points: *const ovs_points,
    field: c_int,
    column: c_int,
    cells: *mut f64,
    cells_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let cells = Numbers::new("cells", cells, cells_len);
    unsafe { read::column(Holder::Record(POINTS_TYPE, Passed::new("points", points)), field, column, System::Us, cells, Message::new(msg, msg_len)) }
}

/// A column of numbers, counts or words of a field that is a table; NaN for an empty cell.
///
/// - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
/// - OVS_POINTS_POINTS_NAME: its name.
/// - OVS_POINTS_POINTS_X (m): along the first plan axis.
/// - OVS_POINTS_POINTS_Y (m): along the second, a quarter turn to the left of it.
/// - OVS_POINTS_POINTS_ELEVATION (m): height.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_points_field_column_si(
    points: *const ovs_points,
    field: c_int,
    column: c_int,
    cells: *mut f64,
    cells_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let cells = Numbers::new("cells", cells, cells_len);
    unsafe { read::column(Holder::Record(POINTS_TYPE, Passed::new("points", points)), field, column, System::Si, cells, Message::new(msg, msg_len)) }
}

/// A text, or a word, of a field that is a table; OVS_EMPTY_CELL where that row has none.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_points_field_column_text(
    points: *const ovs_points,
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
    unsafe { read::column_text(Holder::Record(POINTS_TYPE, Passed::new("points", points)), [field, column, row], out, Message::new(msg, msg_len)) }
}

/// Writes the record as JSON, from which it comes back the same to the bit.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_points_to_json(
    points: *const ovs_points,
    json: *mut c_char,
    json_len: c_int,
    needed: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let out = TextOut::new("json", json, json_len, needed);
    unsafe { read::to_json(POINTS_TYPE, Passed::new("points", points), out, Message::new(msg, msg_len)) }
}

/// Makes the record from its JSON; every quantity in it is a text with its unit.
///
/// - `status`, out: the status of the call; may be null.
///
/// Returns the record, or null.
/// Example: {"unit": "ft", "x": [1, 11, 11, 1, 5], "y": [1, 1, 9, 9, 4], "elevation": [99.20, 99.15, 99.25, 99.22, 99.16], "name": ["A", "B", "C", "D", null]}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_points_from_json(
    json: *const c_char,
    json_len: c_int,
    status: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_points {
    let text = TextIn::new("json", json, json_len);
    unsafe { read::from_json(POINTS_TYPE, text, status, Message::new(msg, msg_len)) }
}

/// A result of an answer that is such a record, as a pointer of its own.
///
/// - `status`, out: the status of the call; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_record_points(
    answer: *const ovs_answer,
    result: c_int,
    status: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_points {
    let answer = Passed::new("answer", answer);
    unsafe { read::record(POINTS_TYPE, answer, result, status, Message::new(msg, msg_len)) }
}

/// Frees the record; null is nothing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_points_free(
    points: *mut ovs_points,
) {
    unsafe { free(points) }
}

pub(crate) static TIN_TYPE: &RecordType = record_type(OPERATIONS, "tin");

/// Every field that is a number, a count or a word, by its place; NaN for the others.
///
/// - `values`, `values_len`, out: as many as there is room for.
/// - OVS_TIN_POINT_COUNT: how many points there are.
/// - OVS_TIN_FACE_COUNT: how many faces there are.
/// - OVS_TIN_LOWEST (ft): height of the lowest point.
/// - OVS_TIN_HIGHEST (ft): height of the highest point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_tin_values_us(
    tin: *const ovs_tin,
    values: *mut f64,
    values_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let values = Numbers::new("values", values, values_len);
    unsafe { read::values(Holder::Record(TIN_TYPE, Passed::new("tin", tin)), System::Us, values, Message::new(msg, msg_len)) }
}

/// Every field that is a number, a count or a word, by its place; NaN for the others.
///
/// - `values`, `values_len`, out: as many as there is room for.
/// - OVS_TIN_POINT_COUNT: how many points there are.
/// - OVS_TIN_FACE_COUNT: how many faces there are.
/// - OVS_TIN_LOWEST (m): height of the lowest point.
/// - OVS_TIN_HIGHEST (m): height of the highest point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_tin_values_si(
    tin: *const ovs_tin,
    values: *mut f64,
    values_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let values = Numbers::new("values", values, values_len);
    unsafe { read::values(Holder::Record(TIN_TYPE, Passed::new("tin", tin)), System::Si, values, Message::new(msg, msg_len)) }
}

/// A field that is a text, or a word.
///
/// - OVS_TIN_NAME: its name.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_tin_field_text(
    tin: *const ovs_tin,
    field: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let out = TextOut::new("text", text, text_len, needed);
    unsafe { read::text(Holder::Record(TIN_TYPE, Passed::new("tin", tin)), field, out, Message::new(msg, msg_len)) }
}

/// How many rows a field that is a table has.
///
/// - OVS_TIN_POINTS: the points.
/// - OVS_TIN_FACES: the faces.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_tin_field_rows(
    tin: *const ovs_tin,
    field: c_int,
    rows: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    unsafe { read::rows(Holder::Record(TIN_TYPE, Passed::new("tin", tin)), field, rows, Message::new(msg, msg_len)) }
}

/// A column of numbers, counts or words of a field that is a table; NaN for an empty cell.
///
/// - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
/// - OVS_TIN_POINTS_NAME: its name.
/// - OVS_TIN_POINTS_X (ft): along the first plan axis.
/// - OVS_TIN_POINTS_Y (ft): along the second, a quarter turn to the left of it.
/// - OVS_TIN_POINTS_ELEVATION (ft): height.
/// - OVS_TIN_FACES_FIRST: the number of one point.
/// - OVS_TIN_FACES_SECOND: the number of another.
/// - OVS_TIN_FACES_THIRD: the number of the third.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_tin_field_column_us(
    tin: *const ovs_tin,
    field: c_int,
    column: c_int,
    cells: *mut f64,
    cells_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let cells = Numbers::new("cells", cells, cells_len);
    unsafe { read::column(Holder::Record(TIN_TYPE, Passed::new("tin", tin)), field, column, System::Us, cells, Message::new(msg, msg_len)) }
}

/// A column of numbers, counts or words of a field that is a table; NaN for an empty cell.
///
/// - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
/// - OVS_TIN_POINTS_NAME: its name.
/// - OVS_TIN_POINTS_X (m): along the first plan axis.
/// - OVS_TIN_POINTS_Y (m): along the second, a quarter turn to the left of it.
/// - OVS_TIN_POINTS_ELEVATION (m): height.
/// - OVS_TIN_FACES_FIRST: the number of one point.
/// - OVS_TIN_FACES_SECOND: the number of another.
/// - OVS_TIN_FACES_THIRD: the number of the third.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_tin_field_column_si(
    tin: *const ovs_tin,
    field: c_int,
    column: c_int,
    cells: *mut f64,
    cells_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let cells = Numbers::new("cells", cells, cells_len);
    unsafe { read::column(Holder::Record(TIN_TYPE, Passed::new("tin", tin)), field, column, System::Si, cells, Message::new(msg, msg_len)) }
}

/// A text, or a word, of a field that is a table; OVS_EMPTY_CELL where that row has none.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_tin_field_column_text(
    tin: *const ovs_tin,
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
    unsafe { read::column_text(Holder::Record(TIN_TYPE, Passed::new("tin", tin)), [field, column, row], out, Message::new(msg, msg_len)) }
}

/// Writes the record as JSON, from which it comes back the same to the bit.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_tin_to_json(
    tin: *const ovs_tin,
    json: *mut c_char,
    json_len: c_int,
    needed: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let out = TextOut::new("json", json, json_len, needed);
    unsafe { read::to_json(TIN_TYPE, Passed::new("tin", tin), out, Message::new(msg, msg_len)) }
}

/// Makes the record from its JSON; every quantity in it is a text with its unit.
///
/// - `status`, out: the status of the call; may be null.
///
/// Returns the record, or null.
/// Example: {"name": "old floor", "points": {"unit": "ft", "x": [1, 11, 11, 1], "y": [1, 1, 9, 9], "elevation": [99.20, 99.15, 99.25, 99.22]}, "faces": [[1, 2, 3], [1, 3, 4]]}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_tin_from_json(
    json: *const c_char,
    json_len: c_int,
    status: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_tin {
    let text = TextIn::new("json", json, json_len);
    unsafe { read::from_json(TIN_TYPE, text, status, Message::new(msg, msg_len)) }
}

/// A result of an answer that is such a record, as a pointer of its own.
///
/// - `status`, out: the status of the call; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_record_tin(
    answer: *const ovs_answer,
    result: c_int,
    status: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_tin {
    let answer = Passed::new("answer", answer);
    unsafe { read::record(TIN_TYPE, answer, result, status, Message::new(msg, msg_len)) }
}

/// Frees the record; null is nothing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_tin_free(
    tin: *mut ovs_tin,
) {
    unsafe { free(tin) }
}

pub(crate) static FINDINGS_TYPE: &RecordType = record_type(OPERATIONS, "findings");

/// Every field that is a number, a count or a word, by its place; NaN for the others.
///
/// - `values`, `values_len`, out: as many as there is room for.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_findings_values_us(
    findings: *const ovs_findings,
    values: *mut f64,
    values_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let values = Numbers::new("values", values, values_len);
    unsafe { read::values(Holder::Record(FINDINGS_TYPE, Passed::new("findings", findings)), System::Us, values, Message::new(msg, msg_len)) }
}

/// Every field that is a number, a count or a word, by its place; NaN for the others.
///
/// - `values`, `values_len`, out: as many as there is room for.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_findings_values_si(
    findings: *const ovs_findings,
    values: *mut f64,
    values_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let values = Numbers::new("values", values, values_len);
    unsafe { read::values(Holder::Record(FINDINGS_TYPE, Passed::new("findings", findings)), System::Si, values, Message::new(msg, msg_len)) }
}

/// How many rows a field that is a table has.
///
/// - OVS_FINDINGS_WORDS: the findings given as words.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_findings_field_rows(
    findings: *const ovs_findings,
    field: c_int,
    rows: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    unsafe { read::rows(Holder::Record(FINDINGS_TYPE, Passed::new("findings", findings)), field, rows, Message::new(msg, msg_len)) }
}

/// A column of numbers, counts or words of a field that is a table; NaN for an empty cell.
///
/// - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
/// - OVS_FINDINGS_WORDS_FINDING: which finding; 0 crack_width, 1 crack_movement, 2 crack_pattern, 3 bar_cracks, 4
///   step, 5 settlement, 6 settlement_signs, 7 heave, 8 rocking, 9 joints, 10 hollow, 11 drum, 12 strength, 13
///   scaling, 14 spalling, 15 popouts, 16 durability_cracking, 17 gel, 18 contamination, 19 sealer, 20 paint, 21
///   covering, 22 moisture, 23 rests_on, 24 suspended, 25 below, 26 heating_pipes, 27 tendons, 28 place, 29
///   drainage, 30 old_thickness, 31 wet_use, 32 load, 33 agent, 34 room.
/// - OVS_FINDINGS_WORDS_WORD: its word.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_findings_field_column_us(
    findings: *const ovs_findings,
    field: c_int,
    column: c_int,
    cells: *mut f64,
    cells_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let cells = Numbers::new("cells", cells, cells_len);
    unsafe { read::column(Holder::Record(FINDINGS_TYPE, Passed::new("findings", findings)), field, column, System::Us, cells, Message::new(msg, msg_len)) }
}

/// A column of numbers, counts or words of a field that is a table; NaN for an empty cell.
///
/// - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
/// - OVS_FINDINGS_WORDS_FINDING: which finding; 0 crack_width, 1 crack_movement, 2 crack_pattern, 3 bar_cracks, 4
///   step, 5 settlement, 6 settlement_signs, 7 heave, 8 rocking, 9 joints, 10 hollow, 11 drum, 12 strength, 13
///   scaling, 14 spalling, 15 popouts, 16 durability_cracking, 17 gel, 18 contamination, 19 sealer, 20 paint, 21
///   covering, 22 moisture, 23 rests_on, 24 suspended, 25 below, 26 heating_pipes, 27 tendons, 28 place, 29
///   drainage, 30 old_thickness, 31 wet_use, 32 load, 33 agent, 34 room.
/// - OVS_FINDINGS_WORDS_WORD: its word.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_findings_field_column_si(
    findings: *const ovs_findings,
    field: c_int,
    column: c_int,
    cells: *mut f64,
    cells_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let cells = Numbers::new("cells", cells, cells_len);
    unsafe { read::column(Holder::Record(FINDINGS_TYPE, Passed::new("findings", findings)), field, column, System::Si, cells, Message::new(msg, msg_len)) }
}

/// A text, or a word, of a field that is a table; OVS_EMPTY_CELL where that row has none.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_findings_field_column_text(
    findings: *const ovs_findings,
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
    unsafe { read::column_text(Holder::Record(FINDINGS_TYPE, Passed::new("findings", findings)), [field, column, row], out, Message::new(msg, msg_len)) }
}

/// Writes the record as JSON, from which it comes back the same to the bit.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_findings_to_json(
    findings: *const ovs_findings,
    json: *mut c_char,
    json_len: c_int,
    needed: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let out = TextOut::new("json", json, json_len, needed);
    unsafe { read::to_json(FINDINGS_TYPE, Passed::new("findings", findings), out, Message::new(msg, msg_len)) }
}

/// Makes the record from its JSON; every quantity in it is a text with its unit.
///
/// - `status`, out: the status of the call; may be null.
///
/// Returns the record, or null.
/// Example: { "measured_crack": "0.02 in", "measured_thickness": "4 in", "crack_movement": "still", "crack_pattern": "few", "step": "none", "settlement": "none", "heave": "none", "rocking": "none", "joints": "still", "hollow": "none", "strength": "rings", "contamination": "film", "moisture": "dry", "rests_on": "gravel", "below": "nothing", "place": "indoors", "load": "car" }
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_findings_from_json(
    json: *const c_char,
    json_len: c_int,
    status: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_findings {
    let text = TextIn::new("json", json, json_len);
    unsafe { read::from_json(FINDINGS_TYPE, text, status, Message::new(msg, msg_len)) }
}

/// A result of an answer that is such a record, as a pointer of its own.
///
/// - `status`, out: the status of the call; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_record_findings(
    answer: *const ovs_answer,
    result: c_int,
    status: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_findings {
    let answer = Passed::new("answer", answer);
    unsafe { read::record(FINDINGS_TYPE, answer, result, status, Message::new(msg, msg_len)) }
}

/// Frees the record; null is nothing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_findings_free(
    findings: *mut ovs_findings,
) {
    unsafe { free(findings) }
}

pub(crate) static FINISH_TYPE: &RecordType = record_type(OPERATIONS, "finish");

/// Every field that is a number, a count or a word, by its place; NaN for the others.
///
/// - `values`, `values_len`, out: as many as there is room for.
/// - OVS_FINISH_ELEVATION (ft): of one plane: its height at the origin of the axes.
/// - OVS_FINISH_RISE_X (in/ft): of one plane: rise along x.
/// - OVS_FINISH_RISE_Y (in/ft): of one plane: rise along y.
/// - OVS_FINISH_FALL (in/ft): steepest fall, of facets the steepest of all.
/// - OVS_FINISH_FACET_COUNT: how many facets it has; 0 for one plane.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_values_us(
    finish: *const ovs_finish,
    values: *mut f64,
    values_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let values = Numbers::new("values", values, values_len);
    unsafe { read::values(Holder::Record(FINISH_TYPE, Passed::new("finish", finish)), System::Us, values, Message::new(msg, msg_len)) }
}

/// Every field that is a number, a count or a word, by its place; NaN for the others.
///
/// - `values`, `values_len`, out: as many as there is room for.
/// - OVS_FINISH_ELEVATION (m): of one plane: its height at the origin of the axes.
/// - OVS_FINISH_RISE_X (%): of one plane: rise along x.
/// - OVS_FINISH_RISE_Y (%): of one plane: rise along y.
/// - OVS_FINISH_FALL (%): steepest fall, of facets the steepest of all.
/// - OVS_FINISH_FACET_COUNT: how many facets it has; 0 for one plane.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_values_si(
    finish: *const ovs_finish,
    values: *mut f64,
    values_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let values = Numbers::new("values", values, values_len);
    unsafe { read::values(Holder::Record(FINISH_TYPE, Passed::new("finish", finish)), System::Si, values, Message::new(msg, msg_len)) }
}

/// Writes the record as JSON, from which it comes back the same to the bit.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_to_json(
    finish: *const ovs_finish,
    json: *mut c_char,
    json_len: c_int,
    needed: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let out = TextOut::new("json", json, json_len, needed);
    unsafe { read::to_json(FINISH_TYPE, Passed::new("finish", finish), out, Message::new(msg, msg_len)) }
}

/// Makes the record from its JSON; every quantity in it is a text with its unit.
///
/// - `status`, out: the status of the call; may be null.
///
/// Returns the record, or null.
/// Example: {"level": "99.5 ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_from_json(
    json: *const c_char,
    json_len: c_int,
    status: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let text = TextIn::new("json", json, json_len);
    unsafe { read::from_json(FINISH_TYPE, text, status, Message::new(msg, msg_len)) }
}

/// A result of an answer that is such a record, as a pointer of its own.
///
/// - `status`, out: the status of the call; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_record_finish(
    answer: *const ovs_answer,
    result: c_int,
    status: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let answer = Passed::new("answer", answer);
    unsafe { read::record(FINISH_TYPE, answer, result, status, Message::new(msg, msg_len)) }
}

/// Frees the record; null is nothing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_free(
    finish: *mut ovs_finish,
) {
    unsafe { free(finish) }
}

pub(crate) static JOB_TYPE: &RecordType = record_type(OPERATIONS, "job");

/// Every field that is a number, a count or a word, by its place; NaN for the others.
///
/// - `values`, `values_len`, out: as many as there is room for.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_job_values_us(
    job: *const ovs_job,
    values: *mut f64,
    values_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let values = Numbers::new("values", values, values_len);
    unsafe { read::values(Holder::Record(JOB_TYPE, Passed::new("job", job)), System::Us, values, Message::new(msg, msg_len)) }
}

/// Every field that is a number, a count or a word, by its place; NaN for the others.
///
/// - `values`, `values_len`, out: as many as there is room for.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_job_values_si(
    job: *const ovs_job,
    values: *mut f64,
    values_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let values = Numbers::new("values", values, values_len);
    unsafe { read::values(Holder::Record(JOB_TYPE, Passed::new("job", job)), System::Si, values, Message::new(msg, msg_len)) }
}

/// A field that is a text, or a word.
///
/// - OVS_JOB_NAME: what the job is called.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_job_field_text(
    job: *const ovs_job,
    field: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let out = TextOut::new("text", text, text_len, needed);
    unsafe { read::text(Holder::Record(JOB_TYPE, Passed::new("job", job)), field, out, Message::new(msg, msg_len)) }
}

/// Writes the record as JSON, from which it comes back the same to the bit.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_job_to_json(
    job: *const ovs_job,
    json: *mut c_char,
    json_len: c_int,
    needed: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let out = TextOut::new("json", json, json_len, needed);
    unsafe { read::to_json(JOB_TYPE, Passed::new("job", job), out, Message::new(msg, msg_len)) }
}

/// Makes the record from its JSON; every quantity in it is a text with its unit.
///
/// - `status`, out: the status of the call; may be null.
///
/// Returns the record, or null.
/// Example: { "schema_version": 1, "job": { "name": "Tool shed (invented)" }, "outline": { "sides": [ { "name": "front", "length": "10 ft" }, { "name": "right", "length": "8 ft" }, { "name": "back", "length": "10 ft" }, { "name": "left", "length": "8 ft" } ] }, "level": { "benchmarks": [ { "name": "nail", "elevation": "100 ft" } ], "columns": [ "1 ft", "9 ft" ], "setups": [ { "on": "nail", "rod": "4' 2\"", "rows": [ { "y": "1 ft", "rods": [ "5' 1\"", "5' 1 1/4\"" ] }, { "y": "7 ft", "rods": [ "5' 0\"", "5' 0 1/2\"" ] } ] } ] }, "finish": { "least": "3 in", "falls_to": "front", "fall": "1/8 in/ft" } }
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_job_from_json(
    json: *const c_char,
    json_len: c_int,
    status: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_job {
    let text = TextIn::new("json", json, json_len);
    unsafe { read::from_json(JOB_TYPE, text, status, Message::new(msg, msg_len)) }
}

/// A result of an answer that is such a record, as a pointer of its own.
///
/// - `status`, out: the status of the call; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_record_job(
    answer: *const ovs_answer,
    result: c_int,
    status: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_job {
    let answer = Passed::new("answer", answer);
    unsafe { read::record(JOB_TYPE, answer, result, status, Message::new(msg, msg_len)) }
}

/// Frees the record; null is nothing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_job_free(
    job: *mut ovs_job,
) {
    unsafe { free(job) }
}
