//! Breaking out as the third way of a job.

use crate::condition::operations::TEAR_OUT;
use crate::failure::Code;
use crate::job::{Job, JobFile, Report, TearOutReport};
use crate::operation::{Value, call::invoke, decode::decode};

const STORE: &str = include_str!("../../../../../examples/boat_store.toml");
const PATIO: &str = include_str!("../../../../../examples/settled_patio.toml");

fn report(text: &str) -> Report {
    Job::read(text).and_then(|job| job.report()).unwrap_or_else(|failure| panic!("{failure}"))
}

fn broken_out(report: &Report) -> &TearOutReport {
    report.new_floor.as_ref().unwrap().tear_out.as_ref().unwrap()
}

/// A job with one text replaced by another.
fn with(job: &str, from: &str, to: &str) -> String {
    assert!(job.contains(from), "{from}");
    job.replace(from, to)
}

/// The boat store with more sections.
fn store(more: &str) -> String {
    with(STORE, "[order]", &format!("{more}\n[order]"))
}

/// The numbers of a row's answer by the names of its results, in base units.
fn row(args: &str) -> impl Fn(&str) -> f64 + use<> {
    let args = serde_json::from_str(args).unwrap();
    let answer = invoke(&TEAR_OUT, decode(&TEAR_OUT, &args, None).unwrap()).unwrap();
    move |name: &str| {
        let place = TEAR_OUT.results.iter().position(|port| port.name == name).unwrap();
        match &answer.results[place] {
            Value::Number(number) => *number,
            Value::Count(count) => *count as f64,
            other => panic!("{name}: {other:?}"),
        }
    }
}

/// What the report tells is what the row answers for the same numbers.
#[test]
fn the_part_of_the_job_is_the_row() {
    let report = report(PATIO);
    let out = broken_out(&report);
    assert!(out.whole && !out.taken && out.verdict.is_none());
    let row = row(&format!(
        r#"{{"area": "{} m2", "rise": "{} mm", "base": "4 in", "new_thickness": "4 in", "breaking_price": "3.25 /ft2",
            "load_price": "190 money", "dump_price": "48 /ton", "base_price": "42 /yd3", "concrete_price": "180 /yd3"}}"#,
        out.area.si, out.rise.si
    ));
    // The SI side of a measure: cubic metres and tonnes are base units but for the tonne.
    for (measure, name, si) in [
        (&out.in_place, "in_place", 1.0),
        (&out.mass, "mass", 1e-3),
        (&out.loose, "loose", 1.0),
        (&out.dig, "dig", 1.0),
        (&out.dig_depth, "dig_depth", 1e3),
        (&out.base, "base_in_place", 1.0),
        (&out.base_bought, "base_bought", 1.0),
        (out.concrete.as_ref().unwrap(), "concrete", 1.0),
    ] {
        let told = row(name) * si;
        assert!((measure.si - told).abs() <= 1e-9 * told.abs().max(1.0), "{name}: {} {told}", measure.si);
    }
    assert_eq!(f64::from(out.loads), row("loads"));
    assert!((out.total.as_ref().unwrap().amount - row("total")).abs() < 1e-6);
    let sum: f64 = out.costs.iter().map(|cost| cost.money.as_ref().unwrap().amount).sum();
    assert!((sum - row("total")).abs() < 1e-6 && out.costs.len() == 5 && out.missing.is_empty());
}

/// The rise is the mean thickness of the floor over the old slab, and the other way's concrete is that floor's.
#[test]
fn both_ways_stand_side_by_side() {
    let report = report(PATIO);
    let (out, floor) = (broken_out(&report), report.new_floor.as_ref().unwrap());
    assert_eq!(out.rise, floor.thickness.mean);
    assert_eq!(out.concrete_over.as_ref(), Some(&floor.thickness.fill));
    assert_eq!(out.area.us, report.old_floor.area.us);
    let words: Vec<String> = report.to_text().split_whitespace().map(str::to_owned).collect();
    let (text, over) = (words.join(" "), &floor.thickness.fill.text);
    let concrete = &out.concrete.as_ref().unwrap().text;
    let both = format!(
        "Over the old slab: {over} of concrete. Broken out: {concrete} of concrete, one load to the dump."
    );
    assert!(text.contains("TEAR OUT Breaking out all of it") && text.contains(&both), "{text}");
    assert!(report.to_text().lines().all(|line| line.chars().count() <= 100), "{text}");
    assert!(report.basis.iter().any(|basis| basis.basis == "rubble_figures"));
    let once = |word: &str| report.cautions.iter().filter(|caution| caution.contains(word)).count();
    assert_eq!((once("make silica dust"), once("call for the marks"), once("lie under slabs")), (1, 1, 1));
    for what in ["mass of the old concrete", "thickness of the old slab broken out", "area broken out"] {
        assert!(report.taken.iter().any(|taken| taken.what == what), "{what}: {text}");
    }
}

#[test]
fn a_verdict_that_breaks_out_tells_it_unasked() {
    let live = with(STORE, "settlement = \"none\"", "settlement = \"live\"");
    let report = report(&live);
    assert_eq!(report.old_slab.as_ref().unwrap().take, "break_out_whole");
    let out = broken_out(&report);
    assert!(out.taken && out.whole && out.costs.is_empty() && out.total.is_none() && out.missing.is_empty());
    assert_eq!(out.new_thickness.as_ref().unwrap().text, "4 in");
    let took =
        report.taken.iter().any(|taken| taken.what == "thickness of a new slab" && taken.value == "4 in");
    assert!(took && report.to_text().contains("TEAR OUT"), "{}", report.to_text());
    assert!(broken_out_of(STORE).is_none(), "a sound slab is not broken out unasked");
}

fn broken_out_of(job: &str) -> Option<TearOutReport> {
    report(job).new_floor.and_then(|floor| floor.tear_out)
}

#[test]
fn where_parts_come_out_the_caller_says_how_much() {
    let part = with(STORE, "rocking = \"none\"", "rocking = \"one_place\"\nroom = \"one_and_a_half_in\"");
    let unsaid = report(&part);
    assert_eq!(unsaid.old_slab.as_ref().unwrap().take, "break_out_part");
    assert_eq!(unsaid.new_floor.as_ref().unwrap().tear_out, None);
    assert!(
        unsaid.not_answered.iter().any(|what| what.contains("tear_out.area")),
        "{:?}",
        unsaid.not_answered
    );
    let said = report(&with(&part, "[order]", "[tear_out]\narea = \"64 ft2\"\n[order]"));
    let out = broken_out(&said);
    assert!(out.taken && !out.whole && out.concrete_over.is_none());
    assert!(said.to_text().contains("Breaking out a part: 64 ft2"), "{}", said.to_text());
    assert!(said.taken.iter().any(|taken| taken.why.contains("not over the part")));
    let failure = Job::read(&with(&part, "[order]", "[tear_out]\nbase = \"4 in\"\n[order]"))
        .and_then(|job| job.report())
        .unwrap_err();
    assert_eq!((failure.code, failure.path.as_str()), (Code::KeyMissing, "tear_out.area"));
}

#[test]
fn the_old_slabs_thickness_is_the_one_that_the_job_says() {
    let thick = |job: &str| broken_out_of(job).unwrap().old_thickness.text;
    assert_eq!(thick(&store("[tear_out]\n")), "4 in", "as measured");
    assert_eq!(thick(&store("[tear_out]\nold_thickness = \"4 1/2 in\"\n")), "4 1/2 in");
    assert_eq!(thick(PATIO), "3 1/2 in", "nominal");
    let bonded = with(PATIO, "bond = \"bonded\"", "bond = \"bonded\"\nold_thickness = \"5 in\"");
    assert_eq!(thick(&bonded), "5 in");
}

#[test]
fn a_price_that_is_missing_is_named_and_leaves_no_total() {
    let report = report(&with(PATIO, "load_price = \"190 money\"\n", ""));
    let out = broken_out(&report);
    assert_eq!((out.total.as_ref(), out.missing.as_slice()), (None, ["hauling".to_owned()].as_slice()));
    let words: Vec<String> = report.to_text().split_whitespace().map(str::to_owned).collect();
    let text = words.join(" ");
    assert!(
        text.contains("Hauling no price") && text.contains("no total: the price of hauling is missing"),
        "{text}"
    );
}

#[test]
fn breaking_out_a_sound_slab_with_something_below_is_told_against() {
    let below = with(STORE, "below = \"nothing\"", "below = \"cistern\"");
    let out = broken_out_of(&with(&below, "[order]", "[tear_out]\n[order]")).unwrap();
    assert!(
        out.verdict.as_deref().is_some_and(|said| said.starts_with("break it all out")),
        "{:?}",
        out.verdict
    );
}

#[test]
fn over_a_slab_that_spans_there_is_no_such_part() {
    let framed = with(STORE, "rests_on = \"gravel\"", "rests_on = \"framing\"");
    let report = report(&with(&framed, "[order]", "[tear_out]\nbase = \"4 in\"\n[order]"));
    assert_eq!(report.new_floor, None);
    assert!(!report.to_text().contains("TEAR OUT"), "{}", report.to_text());
}

#[test]
fn refusals_stand_at_the_keys_of_the_part() {
    let refused = |more: &str| {
        let job = store(&format!("[tear_out]\n{more}\n"));
        let failure = JobFile::read(&job).and_then(|job| job.report()).unwrap_err();
        (failure.code, failure.path.clone(), failure.written.clone())
    };
    let said = |code, key: &str, written: &str| (code, format!("tear_out.{key}"), written.to_owned());
    assert_eq!(refused("area = \"700 ft2\""), said(Code::OutOfRange, "area", "700 ft2"));
    assert_eq!(refused("bulking = \"90 %\""), said(Code::OutOfRange, "bulking", "90 %"));
    assert_eq!(refused("old_thickness = \"70 in\""), said(Code::OutOfRange, "old_thickness", "70 in"));
    assert_eq!(refused("base = \"0 in\""), said(Code::OutOfRange, "base", "0 in"));
    assert_eq!(refused("box_volume = \"0 yd3\""), said(Code::OutOfRange, "box_volume", "0 yd3"));
    assert_eq!(refused("load_price = \"-1 money\""), said(Code::OutOfRange, "load_price", "-1 money"));
    assert_eq!(refused("breaking_price = \"-1 /ft2\""), said(Code::Negative, "breaking_price", "-1 /ft2"));
}
