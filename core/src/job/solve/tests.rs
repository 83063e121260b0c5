//! Jobs whose finish is solved for.

use crate::failure::Code;
use crate::job::{Job, Report};

const STORE: &str = include_str!("../../../../examples/boat_store.toml");
const PATIO: &str = include_str!("../../../../examples/settled_patio.toml");

fn report(text: &str) -> Report {
    Job::read(text).and_then(|job| job.report()).unwrap_or_else(|failure| panic!("{failure}"))
}

#[track_caller]
fn refused(text: &str, code: Code, path: &str) {
    let failure = Job::read(text).and_then(|job| job.report()).unwrap_err();
    assert_eq!((failure.code, failure.path.as_str()), (code, path), "{failure}");
}

/// The boat store with more under `finish.solve`.
fn solve(more: &str) -> String {
    STORE.replace("round_fall = \"1/16 in/ft\"\n", &format!("round_fall = \"1/16 in/ft\"\n{more}\n"))
}

/// A sixteenth, in inches.
const SIXTEENTH: f64 = 1.0 / 16.0;

#[test]
fn the_boat_store_is_solved_as_worked_apart() {
    let solved = report(STORE).new_floor.unwrap().solved.unwrap();
    for (stage, volume) in [(&solved.planned, 8.66), (&solved.bare, 7.92)] {
        assert!((stage.concrete.us - volume).abs() <= 0.02 * volume, "{}", stage.concrete.us);
    }
    assert!(solved.built.concrete.us >= solved.planned.concrete.us);
    let demand = |name: &str| solved.demands.iter().find(|demand| demand.name == name).unwrap();
    let (least, fall) = (demand("least 3 in"), demand("fall 1/8 in/ft to the front"));
    assert!(least.binds && fall.binds);
    assert_eq!(least.at.as_ref().unwrap().shot.as_deref(), Some("A3"));
    assert!((demand("Big door").slack.us - 0.3125).abs() <= SIXTEENTH);
    assert!((demand("Side door").slack.us - 0.9375).abs() <= SIXTEENTH);
    // 640 ft2 by 1/4 in.
    let price = least.looser.concrete.as_ref().unwrap().us;
    assert!((price + 640.0 / 48.0 / 27.0).abs() < 1e-6, "{price}");
    assert!(solved.proof.gap < 1e-8 && solved.proof.least_slack.us > -1e-6);
}

#[test]
fn the_patio_is_told_why_and_gets_the_nearest_finish() {
    let report = report(PATIO);
    let floor = report.new_floor.as_ref().unwrap();
    let conflict = floor.conflict.as_ref().unwrap();
    let sets: Vec<Vec<&str>> =
        conflict.sets.iter().map(|set| set.demands.iter().map(String::as_str).collect()).collect();
    let fall = "fall 1/4 in/ft to the lawn";
    assert_eq!(
        sets,
        [vec!["least 3 in", "Walk"], vec!["least 3 in", fall, "Slider"], vec![fall, "Slider", "Walk"]]
    );
    assert!(conflict.complete && conflict.alone.is_empty() && !conflict.nearest.is_empty());
    // The nearest is the one that was worked apart: 4.92 yd3, the walk flush, the slider kept.
    assert!((floor.thickness.fill.us - 4.92).abs() <= 0.02 * 4.92);
    let fit = |name: &str| floor.fits.iter().find(|fit| fit.name == name).unwrap();
    assert!(fit("Slider").kept && fit("Walk").kept);
    assert!(!fit("least 3 in").kept && !fit("Weep holes").kept);
    let text = report.to_text();
    for said in ["CANNOT ALL BE KEPT", "NOT AS ASKED", "No single change mends it all.", "PROVED"] {
        assert!(text.contains(said), "{said}: {text}");
    }
    // What would break the slider is not the cheapest.
    let thin = floor.thin_zones.as_ref().unwrap();
    let choice = |cure: &str| thin.zones[0].choices.iter().find(|choice| choice.cure == cure).unwrap();
    assert!(!choice("raise").cheapest && choice("raise").breaks.iter().any(|name| name == "Slider"));
    assert!(choice("bond").cheapest);
}

#[test]
fn no_line_of_a_report_is_too_wide() {
    for job in [STORE, PATIO] {
        for line in report(job).to_text().lines() {
            assert!(line.chars().count() <= 100, "{line}");
        }
    }
}

#[test]
fn limits_hold_each_way() {
    let limit = |way: &str| {
        let text = STORE.replace("[finish.solve]\nlevel = [\"front\"]\nround_fall = \"1/16 in/ft\"\n", "");
        report(&text.replace("at_most_rod = \"4' 4 3/4\\\"\"", way)).new_floor.unwrap().fits.pop().unwrap()
    };
    // The finish stands 7/8 in below the sill, at rod 4' 5 5/8".
    assert!(limit("at_most_rod = \"4' 4 3/4\\\"\"").kept);
    assert!(!limit("at_least_rod = \"4' 4 3/4\\\"\"").kept);
    assert!(limit("at_least_rod = \"4' 6\\\"\"").kept);
    assert!(limit("exactly_rod = \"4' 5 5/8\\\"\"").kept);
    assert!(!limit("exactly_rod = \"4' 5 1/2\\\"\"").kept);
}

#[test]
fn demands_of_every_form_are_kept() {
    let more = "greatest_fall = \"1/4 in/ft\"\nsteepest = \"1/4 in/ft\"\nedges_bind = true\n\
        [[finish.solve.demands]]\nname = \"not too thick\"\nkind = \"greatest_thickness\"\nthickness = \"8 in\"\n\
        [[finish.solve.demands]]\nname = \"back square\"\nkind = \"cross_fall\"\nfall = \"0 %\"\nedge = \"back\"\n\
        [[finish.solve.demands]]\nname = \"shelf\"\nkind = \"at_least\"\nrod = \"4' 6\\\"\"\nat = [{ x = \"0 in\", y = \"32'\" }]\nfirm = true\n\
        [[finish.solve.demands]]\nname = \"ramp\"\nkind = \"at_least\"\nelevation = \"99 ft\"\nedge = \"front\"\nweight = 2.0";
    let solved = report(&solve(more)).new_floor.unwrap().solved.unwrap();
    assert!(solved.demands.iter().all(|demand| demand.slack_built.us > -1e-6), "{:?}", solved.demands);
    assert_eq!(solved.demands.iter().filter(|demand| !demand.habit).count(), 11);
}

#[test]
fn what_has_no_effect_is_refused_where_it_stands() {
    refused(&solve("greatest_fall = \"2\""), Code::UnitMissing, "finish.solve.greatest_fall");
    refused(&solve("grind_at_most = \"-1 in\""), Code::OutOfRange, "finish.solve.grind_at_most");
    let demand = |rest: &str| solve(&format!("demands = [{{ name = \"extra\", {rest} }}]"));
    refused(
        &demand("kind = \"least_fall\", fall = \"1 %\""),
        Code::KeyMissing,
        "finish.solve.demands[0].edge",
    );
    refused(&demand("kind = \"level\", edge = \"bck\""), Code::EdgeUnknown, "finish.solve.demands[0].edge");
    let zone = "kind = \"least_thickness\", thickness = \"4 in\", zone = \"pit\"";
    refused(&demand(zone), Code::KeyUnknown, "finish.solve.demands[0].zone");
    let both = "kind = \"level\", edge = \"back\", firm = true, weight = 2.0";
    refused(&demand(both), Code::Contradiction, "finish.solve.demands[0].weight");
    let with = |more: &str| STORE.replace("[order]", &format!("{more}\n[order]"));
    refused(&with("[prices]\ngrinding = \"90 /ft3\"\n"), Code::Contradiction, "prices.grinding");
    refused(&with("[prices]\ncurrency = \"USD\"\n"), Code::Contradiction, "prices.currency");
    refused(&with("[prices]\nconcrete = \"-1 /yd3\"\n"), Code::Negative, "prices.concrete");
    refused(&with("[thin_zones]\nminimum = \"0 in\"\n"), Code::OutOfRange, "thin_zones.minimum");
    let bare = STORE.replace("[finish.solve]\nlevel = [\"front\"]\nround_fall = \"1/16 in/ft\"\n", "");
    let firm = bare.replace("called = \"sill\"\n", "called = \"sill\"\nfirm = true\n");
    refused(&firm, Code::Contradiction, "limits[1].firm");
    let judged = bare.replace("called = \"sill\"\n", "called = \"sill\"\njudged_only = true\n");
    refused(&judged, Code::Contradiction, "limits[1].judged_only");
}
