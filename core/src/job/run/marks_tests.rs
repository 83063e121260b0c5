//! The marks of a job, from its keys to the printed list.

use crate::failure::Code;
use crate::job::{Job, Report};

/// A shed with a level floor asked for, and these marks.
fn shed(marks: &str) -> Result<Report, Box<crate::failure::Failure>> {
    Job::read(&format!(
        r#"
schema_version = 1
[job]
name = "Tool shed (invented)"
[outline]
sides = [{{ name = "front", length = "10 ft" }}, {{ name = "right", length = "8 ft" }},
         {{ name = "back", length = "10 ft" }}, {{ name = "left", length = "8 ft" }}]
[level]
benchmarks = [{{ name = "nail", elevation = "100 ft" }}]
columns = ["1 ft", "9 ft"]
[[level.setups]]
on = "nail"
rod = "4' 2\""
rows = [{{ y = "1 ft", rods = ["5' 1\"", "5' 1 1/4\""] }}, {{ y = "7 ft", rods = ["5' 0\"", "5' 0 1/2\""] }}]
[finish]
least = "3 in"
falls_to = "front"
fall = "1/8 in/ft"
{marks}
"#
    ))?
    .report()
}

#[test]
fn without_the_key_there_are_no_marks() {
    let report = shed("").unwrap();
    assert_eq!(report.new_floor.as_ref().unwrap().marks, None);
    assert!(!report.to_text().contains("ROD CHECK"));
}

#[test]
fn marks_agree_with_the_heights_of_the_edges() {
    let report = shed("[marks]\nline_above = { benchmark = \"nail\", height = \"3 ft\" }").unwrap();
    let marks = report.new_floor.as_ref().unwrap().marks.as_ref().unwrap();
    let front = &marks.edges[0];
    assert!(front.level);
    let of_edge = report.new_floor.as_ref().unwrap().finish.edges[0].rod_from.as_ref().unwrap();
    assert_eq!(front.marks[0].rods[0].text, of_edge.text);
    // The line stands 3 ft over the nail, the sight 4' 2": the rod reads 14 in on the line, and so much more than below it.
    assert_eq!(marks.rod_on_line.as_ref().unwrap().text, "1' 2\"");
    let below = front.marks[0].below_line.as_ref().unwrap();
    assert!((front.marks[0].rods[0].us - below.us - 14.0 / 12.0).abs() < 1e-9);
    let text = report.to_text();
    assert!(text.contains("ROD CHECK   Rod on nail: 4' 2\". Today it reads"), "{text}");
    assert!(text.lines().all(|line| line.chars().count() <= 100), "{text}");
    assert!(report.taken.iter().any(|taken| taken.what == "length of the screed"));
}

#[test]
fn the_morning_moves_every_rod_and_no_distance_below_the_line() {
    let planned = shed("[marks]\nline = \"103 ft\"").unwrap().new_floor.unwrap().marks.unwrap();
    let today = shed("[marks]\nline = \"103 ft\"\nrod_today = \"4' 5 1/2\\\"\"")
        .unwrap()
        .new_floor
        .unwrap()
        .marks
        .unwrap();
    for (one, other) in planned.pads.iter().zip(&today.pads) {
        assert!((other.rods[0].us - one.rods[0].us - 3.5 / 12.0).abs() < 1e-9);
        assert_eq!(one.below_line, other.below_line);
    }
    assert_eq!(today.morning.unwrap().verdict, "shift");
    let stop = shed("[marks]\nrod_today = \"4' 5 1/2\\\"\"\nsame_setup = true").unwrap();
    assert!(stop.to_text().contains("DO NOT POUR"));
    assert!(stop.notes.iter().any(|note| note.name == "BENCHMARK_OFF"));
}

#[test]
fn keys_that_cannot_be_are_refused_at_their_own_path() {
    let refused = |marks: &str, code: Code, path: &str| {
        let failure = shed(marks).unwrap_err();
        assert_eq!((failure.code, failure.path.as_str()), (code, path), "{failure}");
    };
    refused(
        "[marks]\nline = \"103 ft\"\nline_above = { height = \"3 ft\", benchmark = \"nail\" }",
        Code::Contradiction,
        "marks.line_above",
    );
    refused("[marks]\nline_above = { height = \"3 ft\" }", Code::KeyMissing, "marks.line_above");
    refused(
        "[marks]\nline_above = { height = \"3 ft\", benchmark = \"nial\" }",
        Code::KeyUnknown,
        "marks.line_above.benchmark",
    );
    refused(
        "[marks]\nline_above = { height = \"4 ft\", old_slab_at = { x = \"4 ft\", y = \"-3 ft\" } }",
        Code::PointOffWall,
        "marks.line_above.old_slab_at",
    );
    refused("[marks]\nforms = [\"front\", \"lawn\"]", Code::EdgeUnknown, "marks.forms[1]");
    refused("[marks]\nstart = \"lawn\"", Code::EdgeUnknown, "marks.start");
    refused("[marks]\npads = { screed_length = \"1 ft\" }", Code::OutOfRange, "marks.pads.screed_length");
    refused("[marks]\npads = { spacing = \"7 ft\" }", Code::PadsTooFar, "marks.pads.spacing");
    refused(
        "[marks]\npoints = [{ name = \"post\", x = \"4 ft\", y = \"4 ft\" }]",
        Code::PointOffWall,
        "marks.points[0]",
    );
    refused(
        "[marks]\nsetups = [{ on = \"hydrant\", rod = \"4 ft\" }]",
        Code::KeyUnknown,
        "marks.setups[0].on",
    );
    refused("[marks]\nrod_today = \"40 ft\"", Code::OutOfRange, "marks.rod_today");
}
