//! The operations of `job`.
//!
//! Made from the table of operations: change the table and run `cargo run -p overslab-tests`.

use crate::answer::ovs_answer;
use crate::border::{Given, Message, Notes, Passed, Request, TextIn, TextOut, record, row};
use overslab::operation::Operation;
use overslab::operations::OPERATIONS;
use overslab::quantity::System;
use std::ffi::{c_char, c_int};
use super::records::{JOB_TYPE, ovs_job, ovs_survey};

/// The result `ordered` (yd3 or m3): concrete to order.
pub const OVS_REPORT_ORDERED: c_int = 0;

/// The result `figured` (yd3 or m3): net volume of all parts and allowances.
pub const OVS_REPORT_FIGURED: c_int = 1;

/// The result `loads`: truck loads.
pub const OVS_REPORT_LOADS: c_int = 2;

/// The result `net` (yd3 or m3): volume of the floor, net.
pub const OVS_REPORT_NET: c_int = 3;

/// The result `least` (in or mm): least thickness between the shots.
pub const OVS_REPORT_LEAST: c_int = 4;

/// The result `greatest` (in or mm): greatest thickness.
pub const OVS_REPORT_GREATEST: c_int = 5;

/// The result `mean` (in or mm): mean thickness.
pub const OVS_REPORT_MEAN: c_int = 6;

/// The result `text`: the report for the site.
pub const OVS_REPORT_TEXT: c_int = 7;

/// The result `json`: the report as JSON.
pub const OVS_REPORT_JSON: c_int = 8;

/// How many results there are.
pub const OVS_REPORT_RESULTS: c_int = 9;

static JOB_FROM_TEXT: &Operation = row(OPERATIONS, "job_from_text");

/// Reads a job description from TOML or JSON.
///
/// Equation: none.
/// Taken for granted: a text whose first sign is a brace is JSON, any other TOML.
///
/// - `text_value`, `text_value_len`: the job description.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: A whole job description.
///
/// Refuses with OVS_KEY_UNKNOWN, OVS_KEY_MISSING, OVS_SYNTAX.
/// Since 0.1.0.
/// Example, as JSON: {"text":"schema_version = 1\n[job]\nname = \"Tool shed (invented)\"\n[outline]\nsides = [{ name = \"front\", length = \"10 ft\" }, { name = \"right\", length = \"8 ft\" }, { name = \"back\", length = \"10 ft\" }, { name = \"left\", length = \"8 ft\" }]\n[level]\nbenchmarks = [{ name = \"nail\", elevation = \"100 ft\" }]\ncolumns = [\"1 ft\", \"9 ft\"]\n[[level.setups]]\non = \"nail\"\nrod = \"4' 2\\\"\"\nrows = [{ y = \"1 ft\", rods = [\"5' 1\\\"\", \"5' 1 1/4\\\"\"] }, { y = \"7 ft\", rods = [\"5' 0\\\"\", \"5' 0 1/2\\\"\"] }]\n[finish]\nleast = \"3 in\"\nfalls_to = \"front\"\nfall = \"1/8 in/ft\"\n"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_job_from_text_us(
    text_value: *const c_char,
    text_value_len: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_job {
    let given = [
        (0, Given::Text(TextIn::new("text", text_value, text_value_len))),
    ];
    let request = Request::new(JOB_FROM_TEXT, System::Us, &given, options_json, options_len);
    unsafe { record::make(request, JOB_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Reads a job description from TOML or JSON.
///
/// Equation: none.
/// Taken for granted: a text whose first sign is a brace is JSON, any other TOML.
///
/// - `text_value`, `text_value_len`: the job description.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: A whole job description.
///
/// Refuses with OVS_KEY_UNKNOWN, OVS_KEY_MISSING, OVS_SYNTAX.
/// Since 0.1.0.
/// Example, as JSON: {"text":"schema_version = 1\n[job]\nname = \"Tool shed (invented)\"\n[outline]\nsides = [{ name = \"front\", length = \"10 ft\" }, { name = \"right\", length = \"8 ft\" }, { name = \"back\", length = \"10 ft\" }, { name = \"left\", length = \"8 ft\" }]\n[level]\nbenchmarks = [{ name = \"nail\", elevation = \"100 ft\" }]\ncolumns = [\"1 ft\", \"9 ft\"]\n[[level.setups]]\non = \"nail\"\nrod = \"4' 2\\\"\"\nrows = [{ y = \"1 ft\", rods = [\"5' 1\\\"\", \"5' 1 1/4\\\"\"] }, { y = \"7 ft\", rods = [\"5' 0\\\"\", \"5' 0 1/2\\\"\"] }]\n[finish]\nleast = \"3 in\"\nfalls_to = \"front\"\nfall = \"1/8 in/ft\"\n"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_job_from_text_si(
    text_value: *const c_char,
    text_value_len: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_job {
    let given = [
        (0, Given::Text(TextIn::new("text", text_value, text_value_len))),
    ];
    let request = Request::new(JOB_FROM_TEXT, System::Si, &given, options_json, options_len);
    unsafe { record::make(request, JOB_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_job_from_text_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_job_from_text_us_why(
    text_value: *const c_char,
    text_value_len: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Text(TextIn::new("text", text_value, text_value_len))),
    ];
    let request = Request::new(JOB_FROM_TEXT, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_job_from_text_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_job_from_text_si_why(
    text_value: *const c_char,
    text_value_len: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Text(TextIn::new("text", text_value, text_value_len))),
    ];
    let request = Request::new(JOB_FROM_TEXT, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static REPORT: &Operation = row(OPERATIONS, "report");

/// The report of a whole job: its main figures, as text for the site, and as JSON for a program.
///
/// Equation: survey, finish, thickness and order, one after the other.
/// Taken for granted: what the report lists as taken; over an old slab that spans free no figure of a new floor is
/// told.
///
/// - `job`: the job.
/// - `survey`: the old slab, for a job that does not describe one itself; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `survey`: the old slab, for a job that does not describe one itself; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_REPORT_ORDERED (yd3): concrete to order.
///   - OVS_REPORT_FIGURED (yd3): net volume of all parts and allowances.
///   - OVS_REPORT_LOADS: truck loads.
///   - OVS_REPORT_NET (yd3): volume of the floor, net.
///   - OVS_REPORT_LEAST (in): least thickness between the shots.
///   - OVS_REPORT_GREATEST (in): greatest thickness.
///   - OVS_REPORT_MEAN (in): mean thickness.
///   - OVS_REPORT_TEXT: the report for the site.
///   - OVS_REPORT_JSON: the report as JSON.
///
/// Refuses with OVS_EMPTY_LIST, OVS_KIND_MISMATCH, OVS_KEY_MISSING, OVS_NULL_POINTER.
/// Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
/// textbooks, differential levelling (any), height of instrument.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"job":{"schema_version":1,"job":{"name":"Tool shed (invented)"},"outline":{"sides":[{"name":"front","length":"10 ft"},{"name":"right","length":"8 ft"},{"name":"back","length":"10 ft"},{"name":"left","length":"8 ft"}]},"level":{"benchmarks":[{"name":"nail","elevation":"100 ft"}],"columns":["1 ft","9 ft"],"setups":[{"on":"nail","rod":"4' 2\"","rows":[{"y":"1 ft","rods":["5' 1\"","5' 1 1/4\""]},{"y":"7 ft","rods":["5' 0\"","5' 0 1/2\""]}]}]},"finish":{"least":"3 in","falls_to":"front","fall":"1/8 in/ft"}}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_report_us(
    job: *const ovs_job,
    survey: *const ovs_survey,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Record(Passed::new("job", job))),
        (1, Given::Record(Passed::new("survey", survey))),
    ];
    let request = Request::new(REPORT, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The report of a whole job: its main figures, as text for the site, and as JSON for a program.
///
/// Equation: survey, finish, thickness and order, one after the other.
/// Taken for granted: what the report lists as taken; over an old slab that spans free no figure of a new floor is
/// told.
///
/// - `job`: the job.
/// - `survey`: the old slab, for a job that does not describe one itself; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `survey`: the old slab, for a job that does not describe one itself; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_REPORT_ORDERED (m3): concrete to order.
///   - OVS_REPORT_FIGURED (m3): net volume of all parts and allowances.
///   - OVS_REPORT_LOADS: truck loads.
///   - OVS_REPORT_NET (m3): volume of the floor, net.
///   - OVS_REPORT_LEAST (mm): least thickness between the shots.
///   - OVS_REPORT_GREATEST (mm): greatest thickness.
///   - OVS_REPORT_MEAN (mm): mean thickness.
///   - OVS_REPORT_TEXT: the report for the site.
///   - OVS_REPORT_JSON: the report as JSON.
///
/// Refuses with OVS_EMPTY_LIST, OVS_KIND_MISMATCH, OVS_KEY_MISSING, OVS_NULL_POINTER.
/// Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
/// textbooks, differential levelling (any), height of instrument.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"job":{"schema_version":1,"job":{"name":"Tool shed (invented)"},"outline":{"sides":[{"name":"front","length":"10 ft"},{"name":"right","length":"8 ft"},{"name":"back","length":"10 ft"},{"name":"left","length":"8 ft"}]},"level":{"benchmarks":[{"name":"nail","elevation":"100 ft"}],"columns":["1 ft","9 ft"],"setups":[{"on":"nail","rod":"4' 2\"","rows":[{"y":"1 ft","rods":["5' 1\"","5' 1 1/4\""]},{"y":"7 ft","rods":["5' 0\"","5' 0 1/2\""]}]}]},"finish":{"least":"3 in","falls_to":"front","fall":"1/8 in/ft"}}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_report_si(
    job: *const ovs_job,
    survey: *const ovs_survey,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Record(Passed::new("job", job))),
        (1, Given::Record(Passed::new("survey", survey))),
    ];
    let request = Request::new(REPORT, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_report_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_report_us_why(
    job: *const ovs_job,
    survey: *const ovs_survey,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("job", job))),
        (1, Given::Record(Passed::new("survey", survey))),
    ];
    let request = Request::new(REPORT, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_report_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_report_si_why(
    job: *const ovs_job,
    survey: *const ovs_survey,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("job", job))),
        (1, Given::Record(Passed::new("survey", survey))),
    ];
    let request = Request::new(REPORT, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}
