//! A job over a survey that was handed over, and by elevations.

use crate::failure::Code;
use crate::job::Job;
use crate::survey::Survey;

mod key_cuts;
mod outside;
mod spans;
mod tear_out;

const RODS: &str = include_str!("../../../../examples/boat_store.toml");

/// The boat store without its outline and level.
fn bare() -> String {
    let finish = RODS.find("[finish]").unwrap();
    let head = RODS.find("[outline]").unwrap();
    let rest = &RODS[finish..];
    let limits = rest.find("[[limits]]").unwrap();
    let order = rest.find("[order]").unwrap();
    // Limits are rods, which need a level.
    format!("{}{}{}", &RODS[..head], &rest[..limits], &rest[order..])
}

fn survey() -> Survey {
    Job::read(RODS).unwrap().surveyed().unwrap()
}

#[test]
fn a_survey_handed_over_gives_the_same_floor() {
    let whole = Job::read(RODS).unwrap().report().unwrap();
    let over = Job::read(&bare()).unwrap().report_on(&survey()).unwrap();
    assert_eq!(whole.new_floor.as_ref().unwrap().thickness, over.new_floor.as_ref().unwrap().thickness);
    assert_eq!(whole.new_floor.as_ref().unwrap().order, over.new_floor.as_ref().unwrap().order);
}

#[test]
fn one_survey_and_no_other() {
    let twice = Job::read(RODS).unwrap().report_on(&survey()).unwrap_err();
    assert_eq!((twice.code, twice.path.as_str()), (Code::Contradiction, "outline"));
    let none = Job::read(&bare()).unwrap().report().unwrap_err();
    assert_eq!((none.code, none.path.as_str()), (Code::KeyMissing, "outline"));
}

#[test]
fn elevations_need_no_level_and_print_elevations() {
    let head = "schema_version = 1\n[job]\nname = \"shed (invented)\"\n";
    let outline = "[outline]\ncorners = [{ x = \"0 ft\", y = \"0 ft\" }, { x = \"10 ft\", y = \"0 ft\" }, { x = \"10 ft\", y = \"8 ft\" }, { x = \"0 ft\", y = \"8 ft\" }]\n";
    let grid = "[survey.grid]\ncolumns = [\"1 ft\", \"9 ft\"]\nrows = [\"1 ft\", \"7 ft\"]\nelevations = [\"99.5 ft\", \"99.5 ft\", \"99.6 ft\", \"99.6 ft\"]\n";
    let job = |finish: &str| Job::read(&format!("{head}{outline}{grid}[finish]\n{finish}")).unwrap();
    let text = job("level = \"100 ft\"").report().unwrap().to_text();
    assert!(text.contains("4 shots, elevations as given."), "{text}");
    assert!(text.contains("elevation 100.00 ft"), "{text}");
    let failure = job("level_rod = \"4 ft\"").report().unwrap_err();
    assert_eq!((failure.code, failure.path.as_str()), (Code::Contradiction, "finish.level_rod"));
}

#[test]
fn rods_are_written_as_the_crews_rod_is_divided() {
    let with = |instrument: &str| {
        let text = RODS.replace("\"laser\"", instrument);
        Job::read(&text).unwrap().report().unwrap().to_text()
    };
    assert!(with("\"laser\"").contains("front        LEVEL   rod 4' 9\"\n"));
    assert!(with("\"optical_hundredths\"").contains("front        LEVEL   rod 4.75 ft\n"));
    assert!(with("\"optical_millimetres\"").contains("front        LEVEL   rod 1.448 m\n"));
}

#[test]
fn a_hump_that_is_ground_off_fixes_no_height() {
    let bay = include_str!("../../../../examples/wash_bay.toml");
    let governing = |text: &str| {
        let report = Job::read(text).unwrap().report().unwrap();
        report.look_again.governing.into_iter().map(|shot| shot.shot).collect::<Vec<_>>()
    };
    let (from, to) = (bay.find("[[clean_up]]").unwrap(), bay.find("[[zones]]").unwrap());
    let left = format!("{}{}", &bay[..from], &bay[to..]);
    assert_eq!(governing(&left), ["D4"]);
    let ground = governing(bay);
    assert!(!ground.is_empty() && ground != ["D4"], "{ground:?}");
}

const PATIO: &str = include_str!("../../../../examples/settled_patio.toml");

/// A job without what was found on its old slab.
fn not_judged(job: &str) -> String {
    let from = job.find("[old_slab]").unwrap();
    let to = from + job[from..].find("\n\n").unwrap();
    format!("{}{}", &job[..from], &job[to..])
}

#[test]
fn a_sound_old_slab_stays_and_the_report_says_why() {
    let report = Job::read(RODS).unwrap().report().unwrap();
    let text = report.to_text();
    let slab = report.old_slab.unwrap();
    assert_eq!(slab.take, "unbonded");
    assert!(text.contains("OLD SLAB    The old slab may stay: pour over it unbonded.\n"), "{text}");
    assert!(text.contains("sheet, felt or wax cure"), "{text}");
    assert!(!report.not_answered.iter().any(|what| what.contains("may stay")), "{text}");
    assert!(report.taken.iter().any(|taken| taken.what == "room for an overlay"), "{text}");
    assert!(report.basis.iter().any(|basis| basis.about == "old slab" && basis.basis == "breaker_and_base"));
    let silent = Job::read(&not_judged(RODS)).unwrap().report().unwrap();
    assert_eq!(silent.old_slab, None);
    assert!(silent.not_answered.contains(&"whether the old slab may stay".to_owned()));
    assert_eq!(silent.new_floor.as_ref().unwrap().thickness, report.new_floor.as_ref().unwrap().thickness);
}

#[test]
fn the_patio_in_frost_is_bonded_to_or_broken_out() {
    let report = Job::read(PATIO).unwrap().report().unwrap();
    let text = report.to_text();
    let slab = report.old_slab.unwrap();
    assert_eq!(slab.take, "bonded");
    let standing = |way: &str| slab.ways.iter().find(|found| found.way == way).unwrap().standing.clone();
    assert_eq!(standing("unbonded"), "refused");
    assert_eq!(standing("break_out_whole"), "allowed");
    assert!(slab.stops.iter().any(|stop| stop.rule == "frost_under_sheet" && stop.closes == ["unbonded"]));
    assert!(text.contains("Saw round the hollow spots, break out to sound concrete, patch."), "{text}");
}

#[test]
fn findings_are_refused_at_their_own_key() {
    let job =
        RODS.replace("crack_width = \"hairline\"", "crack_width = \"none\"\nmeasured_crack = \"1/8 in\"");
    let failure = Job::read(&job).unwrap().report().unwrap_err();
    assert_eq!((failure.code, failure.path.as_str()), (Code::Contradiction, "old_slab.measured_crack"));
}

/// The boat store with something else said of its overlay.
fn overlaid(from: &str, to: &str) -> String {
    assert!(RODS.contains(from), "{from}");
    RODS.replace(from, to)
}

#[test]
fn the_overlay_is_thick_enough_and_carries_the_pickup() {
    let report = Job::read(RODS).unwrap().report().unwrap();
    let text = report.to_text();
    let floor = report.new_floor.as_ref().unwrap();
    let overlay = floor.overlay.as_ref().unwrap();
    assert!(overlay.thick_enough && overlay.stone_too_large == Some(false), "{text}");
    assert_eq!((overlay.least.text.as_str(), overlay.basis.as_str()), ("3 in", "unbonded_topping_minimum"));
    assert_eq!(overlay.loads.len(), 2);
    let needed: Vec<f64> = overlay.loads.iter().map(|load| load.needed.as_ref().unwrap().us).collect();
    assert!(needed[0] < needed[1], "an edge needs more: {needed:?}");
    for load in &overlay.loads {
        let thinnest = floor.thickness.least.us;
        assert_eq!(load.enough, Some(thinnest >= load.needed.as_ref().unwrap().us));
        let (stress, allowed) = (load.stress.as_ref().unwrap().us, load.allowed.as_ref().unwrap().us);
        assert_eq!(load.enough, Some(stress <= allowed), "{}", load.text);
    }
    assert!(report.taken.iter().any(|taken| taken.what == "pickup"), "{text}");
    assert!(report.basis.iter().any(|basis| basis.basis == "westergaard_1948"), "{text}");
}

#[test]
fn a_stone_too_large_and_an_overlay_too_thin_are_told() {
    let job = overlaid("stone = \"3/4 in\"", "stone = \"1 1/2 in\"");
    let report = Job::read(&job).unwrap().report().unwrap();
    let overlay = report.new_floor.as_ref().unwrap().overlay.as_ref().unwrap();
    assert!(!overlay.thick_enough && overlay.stone_too_large == Some(true));
    let words: Vec<String> = report.to_text().split_whitespace().map(str::to_owned).collect();
    let text = words.join(" ");
    assert!(text.contains("TOO LARGE") && text.contains("TOO THIN, confirm locally"), "{text}");
}

#[test]
fn a_lift_has_no_figure_and_a_half_given_load_is_refused() {
    let lift = overlaid("thing = \"pickup\"", "thing = \"anchored lift\"");
    let report = Job::read(&lift).unwrap().report().unwrap();
    let load = &report.new_floor.as_ref().unwrap().overlay.as_ref().unwrap().loads[0];
    assert!(
        load.needed.is_none() && load.enough.is_none() && load.text.contains("ask the maker"),
        "{}",
        load.text
    );
    let half = overlaid("thing = \"pickup\"", "load = \"2000 lb\"");
    let failure = Job::read(&half).unwrap().report().unwrap_err();
    assert_eq!((failure.code, failure.path.as_str()), (Code::KeyMissing, "overlay.loads[0].pressure"));
}

#[test]
fn what_the_old_slab_does_not_allow_is_told_beside_the_overlay() {
    let job = PATIO.replace("bond = \"bonded\"", "bond = \"unbonded\"");
    let report = Job::read(&job).unwrap().report().unwrap();
    let said = report.new_floor.as_ref().unwrap().overlay.as_ref().unwrap().verdict.clone().unwrap();
    assert!(said.starts_with("pour over, unbonded: no: water between"), "{said}");
    assert!(report.to_text().contains("The old slab: "), "{}", report.to_text());
}

#[test]
fn a_bonded_floor_counts_on_the_old_slab() {
    let job = overlaid("bond = \"unbonded\"", "bond = \"bonded\"");
    let overlay = Job::read(&job).unwrap().report().unwrap().new_floor.unwrap().overlay.unwrap();
    let unbonded = Job::read(RODS).unwrap().report().unwrap().new_floor.unwrap().overlay.unwrap();
    for (together, alone) in overlay.loads.iter().zip(&unbonded.loads) {
        assert!(together.needed.as_ref().unwrap().us < alone.needed.as_ref().unwrap().us);
    }
    assert_eq!(overlay.profile, Some([7, 9]));
}

#[test]
fn what_would_not_count_beside_the_overlay_is_refused() {
    let with = |more: &str| overlaid("stone = \"3/4 in\"", &format!("stone = \"3/4 in\"\n{more}"));
    let refused = |job: &str| {
        let failure = Job::read(job).unwrap().report().unwrap_err();
        (failure.code, failure.path.clone(), failure.written.clone())
    };
    let said = |code, path: &str, written: &str| (code, path.to_owned(), written.to_owned());
    let idle = with("old_thickness = \"4 in\"");
    assert_eq!(refused(&idle), said(Code::Contradiction, "overlay.old_thickness", "4 in"));
    let lift = overlaid("thing = \"pickup\"", "thing = \"anchored lift\"\nload = \"5000 lb\"");
    assert_eq!(refused(&lift), said(Code::Contradiction, "overlay.loads[0].load", "5000 lb"));
    let apart = overlaid("thing = \"pickup\"", "thing = \"pickup\"\nspacing = \"-5 ft\"");
    assert_eq!(refused(&apart), said(Code::OutOfRange, "overlay.loads[0].spacing", "-5 ft"));
    let weak = with("old_strength = \"50 psi\"").replace("bond = \"unbonded\"", "bond = \"bonded\"");
    assert_eq!(refused(&weak), said(Code::OutOfRange, "overlay.old_strength", "50 psi"));
}
