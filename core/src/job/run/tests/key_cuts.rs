//! Keys along the edges of a job.

use crate::job::{Job, KeyCutsReport, Report};

const PATIO: &str = include_str!("../../../../../examples/settled_patio.toml");

/// An invented shed of 10 by 8 ft: the old slab falls away from the door by 0.4 in/ft, the new floor is level.
fn shed(rest: &str) -> Report {
    let text = format!(
        r#"
schema_version = 1
[job]
name = "shed (invented)"
[outline]
corners = [{{ x = "0 ft", y = "0 ft" }}, {{ x = "10 ft", y = "0 ft" }}, {{ x = "10 ft", y = "8 ft" }}, {{ x = "0 ft", y = "8 ft" }}]
edges = ["front", "right", "back", "left"]
[survey.grid]
columns = ["0 ft", "10 ft"]
rows = ["0 ft", "8 ft"]
elevations = ["99.5 ft", "99.5 ft", "99.233333333333 ft", "99.233333333333 ft"]
{rest}
"#
    );
    Job::read(&text).unwrap().report().unwrap()
}

fn keys(report: &Report) -> Option<&KeyCutsReport> {
    report.new_floor.as_ref().unwrap().key_cuts.as_ref()
}

const FLUSH: &str = "[finish]\nlevel = \"99.5 ft\"\n";
const BONDED: &str = "[overlay]\nbond = \"bonded\"\nused = \"cars\"\n";
const DOOR: &str = "[[limits]]\nname = \"Door\"\nat = [{ x = \"3 ft\", y = \"0 ft\" }, { x = \"7 ft\", y = \"0 ft\" }]\nat_most = \"99.5 ft\"\n";

#[test]
fn a_flush_door_gets_a_key_of_the_least_thickness() {
    let report = shed(&format!("{FLUSH}{BONDED}{DOOR}"));
    let found = keys(&report).unwrap();
    assert_eq!(found.looked_at, ["Door"]);
    let cut = &found.cuts[0];
    // 1 1/2 in at 0.4 in/ft are reached 3' 9" back; 1 1/2 in x 3 3/4 ft / 2 x 4 ft.
    assert!((cut.depth.us - 1.5).abs() < 1e-4 && (cut.width.us - 3.75).abs() < 1e-4, "{cut:?}");
    assert!((found.concrete.us - 0.125 * 3.75 / 2.0 * 4.0).abs() < 1e-4);
    assert!(cut.runs_out && cut.cut == "saw and chip");
    let text = report.to_text();
    assert!(text.contains("KEY CUTS"), "{text}");
    assert!(text.contains("Door: saw 1 1/2 in deep along all its 4' 0\", chip"), "{text}");
    assert!(text.contains("chip back 3' 9\"") && text.contains("confirm locally"), "{text}");
    assert!(report.basis.iter().any(|basis| basis.basis == "feather_edge"));
    assert!(report.cautions.iter().any(|caution| caution.contains("stressed cables")));
}

#[test]
fn walls_get_none_and_open_edges_do() {
    let water = "[water]\nedges = [{ edge = \"front\", state = \"open\" }, { edge = \"left\", state = \"walled\" }, { edge = \"right\", state = \"walled\" }, { edge = \"back\", state = \"walled\" }]\n";
    let report = shed(&format!("{FLUSH}{water}{BONDED}{DOOR}"));
    let found = keys(&report).unwrap();
    assert_eq!(found.looked_at, ["front (Door)"]);
    assert!((found.cuts[0].length.as_ref().unwrap().us - 10.0).abs() < 1e-4);
    // Without a word on what is met nothing is a transition.
    assert!(keys(&shed(&format!("{FLUSH}{BONDED}"))).is_none());
}

#[test]
fn half_of_the_old_slab_is_broken_out_and_a_thick_floor_gets_no_key() {
    let thin = shed(&format!("{FLUSH}{BONDED}old_thickness = \"3 in\"\n{DOOR}"));
    assert_eq!(keys(&thin).unwrap().cuts[0].cut, "break out the strip");
    assert!(thin.to_text().contains("break the strip out"), "{}", thin.to_text());
    let thick = shed(&format!("[finish]\nlevel = \"99.625 ft\"\n{BONDED}{DOOR}"));
    assert!(keys(&thick).unwrap().cuts.is_empty());
    assert!(!thick.to_text().contains("KEY CUTS"));
    assert!(!thick.cautions.iter().any(|caution| caution.contains("stressed cables")));
}

#[test]
fn a_lone_place_is_cut_over_its_width_and_thin_zones_give_the_least() {
    let door = "[[clearances]]\nname = \"Back sill\"\nkind = \"threshold\"\nat = [{ x = \"5 ft\", y = \"0 ft\" }]\nelevation = \"99.5 ft\"\nfree = \"0 in\"\nexit = false\n";
    let report = shed(&format!("{FLUSH}[thin_zones]\nminimum = \"1 in\"\n{door}"));
    let found = keys(&report).unwrap();
    assert!(found.cuts[0].length.is_none() && (found.cuts[0].depth.us - 1.0).abs() < 1e-4, "{found:?}");
    assert!(found.cuts[0].text.contains("over its width"), "{}", found.cuts[0].text);
}

#[test]
fn too_thin_all_the_way_across_is_no_matter_of_keys() {
    let side = "[[limits]]\nname = \"Side\"\nat = [{ x = \"0 ft\", y = \"0 ft\" }, { x = \"0 ft\", y = \"3 ft\" }]\nat_most = \"99.5 ft\"\n";
    let report = shed(&format!("{FLUSH}{BONDED}{side}"));
    let cut = &keys(&report).unwrap().cuts[0];
    assert!(!cut.runs_out && cut.text.contains("no key mends that"), "{}", cut.text);
}

#[test]
fn larger_stone_asks_for_keys_at_the_lawn() {
    // 1/2 in of stone wants 1 1/2 in, which the patio has everywhere; 3/4 in wants 2 1/4 in, which it has not at the lawn.
    let small = Job::read(PATIO).unwrap().report().unwrap();
    let small = keys(&small).unwrap();
    assert!(small.cuts.is_empty());
    assert!(small.looked_at.iter().any(|met| met == "lawn (Lawn edge)"), "{:?}", small.looked_at);
    assert_eq!(small.looked_at.iter().filter(|met| met.contains("Slider")).count(), 1);
    let report =
        Job::read(&PATIO.replace("\"1/2 in\"\nstrength", "\"3/4 in\"\nstrength")).unwrap().report().unwrap();
    let found = keys(&report).unwrap();
    let lawn = found.cuts.iter().find(|cut| cut.name.starts_with("lawn")).unwrap();
    // The section at 21 ft: 1 7/8 in at the lawn, 2 1/4 in less than 5 ft in.
    assert!(lawn.runs_out && lawn.depth.us > 0.25 && lawn.depth.us < 0.75, "{lawn:?}");
    assert!(lawn.width.us > 2.0 && lawn.width.us < 6.0, "{lawn:?}");
    // What lacks to 2 1/4 in over the whole patio holds what the keys at its edges take.
    assert!(found.concrete.us > 0.0 && report.to_text().contains("KEY CUTS"));
}
