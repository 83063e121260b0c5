//! What was taken, not measured, the weightiest first: by how much concrete it moves.

use super::input::{Job, MarksInput};
use super::report::TakenReport;
use crate::assumption::{
    AWAY_OVER, Assumption, BENCHMARK_OFF, FALL_STEP, MARGIN, MARK_TOLERANCE, PAD_INSET, PLANT_STEP,
    ROD_LENGTH, ROUNDING, RUNOFF, SCREED, STATION_SPACING, TRUCK, WASTE, WAVE_HEIGHT, WAVE_LENGTH,
};
use crate::quantity::{Length, Typed, Volume, inches, number_in, volume};
use crate::survey::Survey;
use crate::survey::old_slab::{Facts, Instrument, Texture};

/// One thing taken, with the concrete that it moves if it is wrong.
struct Weighed {
    taken: TakenReport,
    weight: f64,
}

/// An edge past the shots may well be half an inch off.
const EDGE_OFF: f64 = 0.5 * 0.0254;

/// Less than this is not worth a figure.
const TOLD: f64 = 0.01;

/// Everything taken in a job; `rounding` is what whole steps cost where the finish is solved for.
pub(super) fn taken(
    job: &Job,
    survey: &Survey,
    facts: &Facts,
    net: Volume,
    rounding: Volume,
) -> Vec<TakenReport> {
    let area = facts.area.base();
    let mut list: Vec<Weighed> = edges(facts, true).into_iter().collect();
    if job.order.allowances.is_none() {
        list.push(assumed("waste", &WASTE, WASTE.value().base() * net.base()));
    }
    if job.finish.has_least() && job.finish.margin().1 {
        list.push(assumed("margin on the least thickness", &MARGIN, area * MARGIN.value().base()));
    }
    if (job.finish.has_least() || job.finish.solve.is_some()) && job.finish.round().1 {
        list.push(assumed("rounding of heights", &ROUNDING, area * ROUNDING.value().base() / 2.0));
    }
    if job.finish.solve.is_some() && job.finish.round_fall().1 {
        list.push(assumed("rounding of falls", &FALL_STEP, rounding.base()));
    }
    list.extend(water(job));
    if job.approaches.iter().any(|of| of.over.is_none()) {
        list.push(assumed("how far out ground falls away", &AWAY_OVER, 0.0));
    }
    if job.approaches.iter().any(|of| of.traffic.is_none()) {
        let why = "most approaches are driven on";
        list.push(weighed("what goes over an approach", "vehicle".to_owned(), why, 0.0));
    }
    list.extend(words(survey, facts));
    if job.order.step.is_none() {
        list.push(assumed("the plant's step", &PLANT_STEP, PLANT_STEP.value().base() / 2.0));
    }
    if job.order.truck.is_none() {
        list.push(assumed("one truck", &TRUCK, 0.0));
    }
    if let Some(built) = &job.as_built {
        if built.tolerance.is_none() && (built.level.is_some() || built.survey.is_some()) {
            list.push(assumed("how far the new floor may miss its marks", &MARK_TOLERANCE, 0.0));
        }
        if built.spacing.is_none() && !built.profiles.is_empty() {
            let why = "the standard in inches reads every foot";
            list.push(weighed("how far apart the readings of lines stand", "12 in".to_owned(), why, 0.0));
        }
        if built.ordered.is_some() && built.left_over.is_none() {
            list.push(weighed("concrete left over", "none".to_owned(), "nothing is said of it", 0.0));
        }
    }
    list.extend(job.marks.iter().flat_map(marks));
    list.sort_by(|a, b| b.weight.total_cmp(&a.weight));
    list.into_iter().map(|weighed| with_weight(weighed.taken, weighed.weight)).collect()
}

/// What was taken of the old slab's heights alone; what it moves of a new floor is not told.
pub(super) fn of_survey(survey: &Survey) -> Vec<TakenReport> {
    let facts = survey.facts();
    let all = edges(&facts, false).into_iter().chain(words(survey, &facts));
    all.map(|weighed| weighed.taken).collect()
}

fn weighed(what: &str, value: String, why: impl Into<String>, weight: f64) -> Weighed {
    Weighed { taken: TakenReport { what: what.to_owned(), value, why: why.into() }, weight }
}

fn assumed<Q: Typed>(what: &str, assumption: &Assumption<Q>, weight: f64) -> Weighed {
    weighed(what, assumption.words.to_owned(), assumption.why, weight)
}

/// What the marks took: none of it moves concrete.
fn marks(input: &MarksInput) -> Vec<Weighed> {
    let pads = input.pads.clone().unwrap_or_default();
    let mut list = Vec::new();
    let mut take = |given: bool, what: &str, assumption: &Assumption<Length>| {
        if !given {
            list.push(assumed(what, assumption, 0.0));
        }
    };
    take(input.spacing.is_some(), "distance between stations", &STATION_SPACING);
    take(pads.screed_length.is_some() || pads.spacing.is_some(), "length of the screed", &SCREED);
    take(pads.inset.is_some(), "pads off the edges by", &PAD_INSET);
    take(input.rod_length.is_some(), "length of the rod", &ROD_LENGTH);
    take(input.rod_today.is_none(), "how far the benchmark may read off", &BENCHMARK_OFF);
    list
}

/// The edges past the shots; `moves`: what they move of the concrete follows.
fn edges(facts: &Facts, moves: bool) -> Option<Weighed> {
    let beyond = facts.beyond.base();
    let percent = 100.0 * beyond / facts.area.base();
    let value = format!("{percent:.0} % of the floor, by the slope of the whole slab");
    let off = format!(": if {} off", inches(Length::from_base(EDGE_OFF), 8));
    let why = format!("nobody holds a rod in the corner{}", if moves { &off } else { "" });
    (percent >= 0.5).then(|| weighed("the edges past the shots", value, why, beyond * EDGE_OFF))
}

/// What was taken of the water: it moves no concrete.
fn water(job: &Job) -> Vec<Weighed> {
    let Some(drainage) = &job.drainage else { return Vec::new() };
    let mut list = Vec::new();
    if drainage.surface.is_none() && drainage.least_fall.is_none() {
        let why = "the least of the minimums";
        list.push(weighed("surface", "trowelled".to_owned(), why, 0.0));
    }
    if drainage.wave_height.is_none() {
        list.push(assumed("wave height", &WAVE_HEIGHT, 0.0));
    }
    if drainage.wave_length.is_none() {
        list.push(assumed("wave length", &WAVE_LENGTH, 0.0));
    }
    if drainage.rain.is_some() && drainage.runs_off.is_none() {
        list.push(assumed("rain that runs off", &RUNOFF, 0.0));
    }
    list
}

fn with_weight(mut taken: TakenReport, weight: f64) -> TakenReport {
    if weight > TOLD {
        let moved = number_in(Volume::from_base(weight), &volume::unit::cubic_yard, 2);
        taken.why = format!("{} (moves {moved})", taken.why);
    }
    taken
}

/// Instrument and texture: both are words with a deviation behind them, measured by nobody.
fn words(survey: &Survey, facts: &Facts) -> [Weighed; 2] {
    let settings = survey.settings();
    let (instrument, texture) =
        (settings.instrument.unwrap_or(Instrument::TAKEN), settings.texture.unwrap_or(Texture::TAKEN));
    // Errors of single readings average out over the shots.
    let spread =
        |deviation: Length| facts.area.base() * deviation.base() / (facts.shots.max(1) as f64).sqrt();
    let word = |what: &str, word: &str, deviation: Length, given: bool, taken_as: &str| {
        let why = if given { "common practice, no source" } else { taken_as };
        weighed(what, format!("{word} {}", inches(deviation, 16)), why, spread(deviation))
    };
    [
        word(
            "reading",
            instrument.meaning(),
            instrument.reading_deviation(),
            settings.instrument.is_some(),
            Instrument::WHY_TAKEN,
        ),
        word(
            "texture between shots",
            texture.meaning(),
            texture.deviation(),
            settings.texture.is_some(),
            Texture::WHY_TAKEN,
        ),
    ]
}
