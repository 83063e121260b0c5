//! What a finish that was solved for takes, what each demand costs, and the proof, in words.

use super::Page;
use crate::job::{Amount, CostReport, DemandReport, NewFloor, SolvedReport, StageReport};

/// Slacks that differ by less, in inches or in inches per foot, are told once.
const SAME: f64 = 1.0 / 32.0;

pub(super) fn demands(page: &mut Page, floor: &NewFloor) {
    let Some(solved) = &floor.solved else { return };
    let own = || solved.demands.iter().filter(|demand| !demand.habit);
    let gave_way = |demand: &DemandReport| {
        let nearest = floor.conflict.iter().flat_map(|conflict| &conflict.nearest);
        nearest.into_iter().any(|change| change.demand == demand.name)
    };
    let told =
        own().filter(|demand| !free(demand)).map(|demand| format!("- {}", line(demand, gave_way(demand))));
    page.list("DEMANDS", told);
    let at_no_cost: Vec<&str> =
        own().filter(|demand| free(demand)).map(|demand| demand.name.as_str()).collect();
    if !at_no_cost.is_empty() {
        page.line(&format!("Kept at no cost: {}.", at_no_cost.join(", ")));
    }
    if !solved.habits.is_empty() {
        page.line(&format!("Added so that it can be set out: {}.", solved.habits.join(", ")));
    }
    if !solved.habits_dropped.is_empty() {
        page.line(&format!("No room was left for: {}.", solved.habits_dropped.join(", ")));
    }
}

/// Whether a demand stands at its limit and costs nothing.
fn free(demand: &DemandReport) -> bool {
    let saves = demand.looser.concrete.as_ref().is_some_and(|concrete| concrete.si < 0.0);
    let costs = demand.tighter.concrete.as_ref().is_some_and(|concrete| concrete.si > 0.0);
    demand.firm && demand.binds && !saves && !costs
}

fn line(demand: &DemandReport, gave_way: bool) -> String {
    let at = match (&demand.at, demand.binds) {
        (Some(at), true) => format!("holds the floor at {}; ", at.text),
        (None, true) => "holds the floor; ".to_owned(),
        _ => String::new(),
    };
    let firm = match (demand.firm, gave_way) {
        (true, _) => " (firm)",
        (false, true) => " (as it gave way)",
        (false, false) => "",
    };
    let built = if (demand.slack_built.us - demand.slack.us).abs() >= SAME {
        format!("; as built {} to spare", demand.slack_built.text)
    } else {
        String::new()
    };
    format!("{}{firm}: {at}{}{built}", demand.name, demand.text)
}

pub(super) fn concrete(page: &mut Page, floor: &NewFloor) {
    let Some(solved) = &floor.solved else { return };
    let stage = |page: &mut Page, label: &str, name: &str, stage: &StageReport| {
        let money = stage.money.as_ref().map(|money| money.text.as_str()).unwrap_or_default();
        page.row(label, name, &stage.concrete.text, money);
    };
    stage(page, "CONCRETE", "demanded, nothing more", &solved.bare);
    stage(page, "", "as planned", &solved.planned);
    stage(page, "", "as built", &solved.built);
    let margin = floor.finish.margin.as_ref().filter(|margin| margin.us > 0.0);
    let added = [
        margin.map(|margin| format!("the margin of {}", margin.text)),
        (!solved.habits.is_empty()).then(|| "level lines".to_owned()),
    ];
    let added: Vec<String> = added.into_iter().flatten().collect();
    let costs =
        [costs(&added.join(" and "), &solved.margin_and_habits), costs(&steps(solved), &solved.rounding)];
    let costs: Vec<String> = costs.into_iter().flatten().collect();
    if !costs.is_empty() {
        page.line(&format!("More: {}.", costs.join("; ")));
    }
    if solved.built.ground.us > 0.0 {
        page.line(&format!("{} of high spots is ground off.", solved.built.ground.text));
    }
    if solved.steps_finer {
        page.line(&finer(solved));
    } else if !solved.steps_best {
        page.line("Another finish in these steps may take a little less: not all were tried.");
    }
    let with = if floor.conflict.is_some() { "With the demands as they gave way, " } else { "As planned, " };
    page.section("PROVED", &format!("{with}{}.", solved.proof.text));
}

/// What something adds, where it is worth a figure.
fn costs(what: &str, cost: &CostReport) -> Option<String> {
    if cost.concrete.us.abs() < 0.005 || what.is_empty() {
        return None;
    }
    let money = cost.money.as_ref().map(|Amount { text, .. }| format!(" ({text})")).unwrap_or_default();
    Some(format!("{what} {}{money}", cost.concrete.text))
}

fn steps(solved: &SolvedReport) -> String {
    let heights = (solved.step_heights.us > 0.0).then(|| format!("heights to {}", solved.step_heights.text));
    let falls =
        (solved.step_falls.us > 0.0).then(|| format!("falls to {}", per_foot(&solved.step_falls.text)));
    heights.into_iter().chain(falls).collect::<Vec<_>>().join(" and ")
}

/// A fall without its percentage.
fn per_foot(fall: &str) -> &str {
    fall.split(',').next().unwrap_or(fall)
}

fn finer(solved: &SolvedReport) -> String {
    match steps(solved).as_str() {
        "" => "No whole steps keep the demands: heights and falls are as planned, to be set out as near as can be.".to_owned(),
        steps => format!("The steps asked for keep no such floor: {steps}."),
    }
}
