//! What was taken, not measured, the weightiest first: by how much concrete it moves.

use super::input::Job;
use super::report::TakenReport;
use crate::quantity::{Typed, Volume, number_in, volume};
use crate::survey::Survey;
use crate::survey::old_slab::Facts;

/// One thing taken, with the concrete that it moves if it is wrong.
struct Weighed {
    taken: TakenReport,
    weight: f64,
}

/// Everything taken in a job.
pub(super) fn taken(job: &Job, survey: &Survey, facts: &Facts, net: Volume) -> Vec<TakenReport> {
    let area = facts.area.base();
    let mut list: Vec<Weighed> = Vec::new();
    let mut add = |what: &str, value: String, why: &str, weight: f64| {
        let taken = TakenReport { what: what.to_owned(), value, why: why.to_owned() };
        list.push(Weighed { taken, weight });
    };
    let beyond = facts.beyond.base();
    if beyond > 0.0 {
        let percent = 100.0 * beyond / area;
        let value = format!("{percent:.0} % of the floor, by the slope of the whole slab");
        // An edge strip may well be half an inch off.
        add("the edges past the shots", value, "nobody holds a rod in the corner", beyond * 0.0127);
    }
    if job.order.allowances.is_none() {
        add(
            "waste",
            "3 %".to_owned(),
            "a surveyed floor: what sticks to tools and strike-off",
            0.03 * net.base(),
        );
    }
    let margin = job.finish.margin();
    if job.finish.least.is_some() && margin.1 {
        add(
            "margin on the least thickness",
            "3/8 in".to_owned(),
            "reading, texture and strike-off",
            area * margin.0.base(),
        );
    }
    if job.finish.least.is_some() && job.finish.round().1 {
        add(
            "rounding of heights",
            "1/8 in".to_owned(),
            "finer cannot be set out",
            area * job.finish.round().0.base() / 2.0,
        );
    }
    for (what, value, why, deviation) in words(survey) {
        // Errors of single readings average out over the shots.
        add(what, value, why, area * deviation / (facts.shots.max(1) as f64).sqrt());
    }
    if job.order.step.is_none() {
        add("the plant's step", "1/4 yd3".to_owned(), "plants usually sell by the quarter yard", 0.1);
    }
    if job.order.truck.is_none() {
        add("one truck", "10 yd3".to_owned(), "a full truck carries about so much", 0.0);
    }
    list.sort_by(|a, b| b.weight.total_cmp(&a.weight));
    list.into_iter().map(|weighed| with_weight(weighed.taken, weighed.weight)).collect()
}

fn with_weight(mut taken: TakenReport, weight: f64) -> TakenReport {
    if weight > 0.01 {
        let moved = number_in(Volume::from_base(weight), &volume::unit::cubic_yard, 2);
        taken.why = format!("{} (about {moved})", taken.why);
    }
    taken
}

/// Instrument and texture: both are words with a deviation behind them, measured by nobody.
fn words(survey: &Survey) -> Vec<(&'static str, String, &'static str, f64)> {
    let settings = survey.settings();
    let eighths = |length: crate::quantity::Length| crate::quantity::inches(length, 16);
    let mut list = Vec::new();
    match settings.instrument {
        Some(word) => {
            let value = format!("{} {}", word.word(), eighths(word.reading_deviation()));
            list.push(("reading", value, "common practice, no source", word.reading_deviation().base()));
        }
        None => list.push(("reading", "1/8 in".to_owned(), "as a laser reads", 0.125 * 0.0254)),
    }
    match settings.texture {
        Some(word) => {
            let value = format!("{} {}", word.word(), eighths(word.deviation()));
            list.push((
                "texture between shots",
                value,
                "common practice, no source",
                word.deviation().base(),
            ));
        }
        None => {
            list.push(("texture between shots", "1/8 in".to_owned(), "as a broomed floor", 0.125 * 0.0254));
        }
    }
    list
}
