//! The floor as built of the potting shed, and what a job may not say of it.

use crate::failure::Code;
use crate::job::Job;

const SHED: &str = include_str!("../../../../examples/potting_shed.toml");

/// The shed before it was poured.
fn before() -> &'static str {
    &SHED[..SHED.find("[as_built]").unwrap()]
}

#[test]
fn the_floor_as_built_is_told_and_changes_nothing_before_it() {
    let report = Job::read(SHED).unwrap().report().unwrap();
    let planned = Job::read(before()).unwrap().report().unwrap();
    let (built, bare) = (report.new_floor.as_ref().unwrap(), planned.new_floor.as_ref().unwrap());
    assert!(bare.as_built.is_none());
    assert_eq!((&built.order, &built.thickness, &built.finish), (&bare.order, &bare.thickness, &bare.finish));
    assert!(!planned.to_text().contains("AS BUILT"));
    let text = report.to_text();
    assert!(text.contains("AS BUILT    16 shots, 2 more than 1/4 in off the plan:"), "{text}");
    assert!(text.contains("WATER STANDS in 1 place:"), "{text}");
    assert!(text.contains("MEND        - fill 5/8 in at B3, 11' 0\" from left, 4' 0\" in"), "{text}");
    assert!(text.contains("not an approval"), "{text}");
    assert!(text.lines().all(|line| line.chars().count() <= 100), "{text}");
    let floor = built.as_built.as_ref().unwrap().floor.as_ref().unwrap();
    let missed: Vec<&str> = floor.missed.iter().filter_map(|mark| mark.at.shot.as_deref()).collect();
    assert_eq!(missed, ["B3", "C2"]);
    // The morning's set-up stood 1 1/2 in higher: B3 read 4' 10 3/8", planned 4' 9 3/4".
    assert!((floor.missed[0].off.us + 0.625).abs() < 1e-9, "{:?}", floor.missed[0]);
    let basis: Vec<&str> = report.basis.iter().map(|basis| basis.basis.as_str()).collect();
    for wanted in ["mark_tolerance", "top_elevation", "flatness_numbers", "flatness_classes"] {
        assert!(basis.contains(&wanted), "{wanted}");
    }
}

#[test]
fn rods_of_a_line_give_the_numbers_of_its_heights() {
    let rods =
        Job::read(SHED).unwrap().report().unwrap().new_floor.unwrap().as_built.unwrap().flatness.unwrap();
    let line = SHED.rfind("rods = [").unwrap();
    let heights = [6.75, 6.8125, 6.875, 7.125, 6.9375, 6.8125, 6.75, 6.6875, 6.75, 6.75, 6.8125, 6.75, 6.75];
    let heights = heights.map(|inches| format!("\"{inches} in\"")).join(", ");
    let by_heights = Job::read(&format!("{}elevations = [{heights}]\n", &SHED[..line])).unwrap();
    let by_heights = by_heights.report().unwrap().new_floor.unwrap().as_built.unwrap().flatness.unwrap();
    let ff = |report: &crate::job::FlatnessReport| report.lines[1].ff.unwrap();
    assert!((ff(&rods) - ff(&by_heights)).abs() < 1e-9);
    assert_eq!((rods.fl, rods.ff_verdict.as_deref()), (None, Some("too few to judge")));
}

#[test]
fn lines_alone_are_told_without_shots() {
    let start = SHED.find("[[as_built.profiles]]").unwrap();
    let text = format!("{}[as_built]\nflatness_class = \"conventional\"\n{}", before(), &SHED[start..]);
    let built = Job::read(&text).unwrap().report().unwrap().new_floor.unwrap().as_built.unwrap();
    assert!(built.floor.is_none() && built.flatness.is_some());
}

#[track_caller]
fn refused(text: &str, code: Code, path: &str) {
    let failure = Job::read(text).and_then(|job| job.report()).unwrap_err();
    assert_eq!((failure.code, failure.path.as_str()), (code, path), "{failure}");
}

#[test]
fn what_contradicts_itself_or_lacks_its_shots_is_refused_at_its_own_key() {
    let with = |from: &str, to: &str| {
        assert!(SHED.contains(from), "{from}");
        SHED.replacen(from, to, 1)
    };
    let alone = |keys: &str| format!("{}[as_built]\n{keys}\n", before());
    refused(&alone(""), Code::KeyMissing, "as_built.level");
    refused(&alone("ordered = \"2 yd3\""), Code::KeyMissing, "as_built.level");
    refused(&alone("flatness_class = \"flat\""), Code::KeyMissing, "as_built.profiles");
    let surface = "surface = \"trowelled\"";
    refused(&with(surface, "surface = \"smooth\""), Code::WordUnknown, "as_built.surface");
    refused(
        &with(surface, &format!("{surface}\nleast_fall = \"1/8 in/ft\"")),
        Code::Contradiction,
        "as_built.least_fall",
    );
    refused(
        &with(surface, &format!("{surface}\ntolerance = \"2 ft\"")),
        Code::OutOfRange,
        "as_built.tolerance",
    );
    refused(
        &with("left_over = \"1/8 yd3\"", "left_over = \"3 yd3\""),
        Code::Contradiction,
        "as_built.left_over",
    );
    refused(&with("ordered = \"2 1/4 yd3\"\n", ""), Code::KeyMissing, "as_built.ordered");
    refused(&with("spacing = \"12 in\"", "spacing = \"18 in\""), Code::ProfileSpacing, "as_built.spacing");
    refused(
        &with(surface, &format!("{surface}\nleast_ff = 20.0")),
        Code::Contradiction,
        "as_built.flatness_class",
    );
    let toward = "toward = { x = \"14 ft\", y = \"4 ft\" }\n";
    refused(&with(toward, ""), Code::KeyMissing, "as_built.profiles[0].toward");
    refused(
        &with(toward, "toward = { x = \"2 ft\", y = \"4 ft\" }\n"),
        Code::LineTooShort,
        "as_built.profiles[0].toward",
    );
    refused(&with("area = \"192 ft2\"", "area = \"0 ft2\""), Code::OutOfRange, "as_built.profiles[0].area");
    let short = "[[as_built.profiles]]\nname = \"short\"\nrods = [\"4 ft\", \"4 ft\"]\n";
    refused(&format!("{SHED}{short}"), Code::ProfileShort, "as_built.profiles[2].rods");
    let neither = "[[as_built.profiles]]\nname = \"none\"\n";
    refused(&format!("{SHED}{neither}"), Code::KeyMissing, "as_built.profiles[2].elevations");
}
