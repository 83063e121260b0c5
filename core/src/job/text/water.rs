//! Standing water and clean-up, in words.

use super::Page;
use crate::job::{CleanUpReport, PondReport, Report, StandingWater};

/// So many ponds are told one by one.
const TOLD: usize = 3;

pub(super) fn clean_up(page: &mut Page, report: &Report) {
    page.list("CLEAN UP", report.clean_up.iter().map(done));
}

fn done(work: &CleanUpReport) -> String {
    match (&work.deepest, &work.deepest_at) {
        (Some(deepest), Some(at)) => format!(
            "{}: {}, {}; deepest {} at {}.",
            capital(&work.work),
            work.area.text,
            work.volume.text,
            deepest.text,
            at.text
        ),
        _ => format!("{}: nothing to do.", capital(&work.work)),
    }
}

pub(super) fn capital(word: &str) -> String {
    let mut signs = word.chars();
    signs.next().map_or_else(String::new, |first| first.to_uppercase().chain(signs).collect())
}

pub(super) fn standing(page: &mut Page, report: &Report) {
    let water = &report.standing_water;
    let mut lines = on_old_floor(water);
    lines.extend(water.new_floor.iter().flat_map(|ponds| on_new_floor(ponds)));
    lines.extend(report.new_floor.iter().flat_map(super::drainage::lines));
    page.list("WATER", lines.into_iter());
}

fn on_old_floor(water: &StandingWater) -> Vec<String> {
    let first = match (water.old_floor.len(), water.cured) {
        (0, _) => format!("Old floor: none deeper than {}.", water.shallowest.text),
        (ponds, Some(cured)) => format!("Old floor: {cured} of {ponds} low spots cured by the new floor."),
        (1, None) => "Old floor: water stands in one low spot.".to_owned(),
        (ponds, None) => format!("Old floor: water stands in {ponds} low spots."),
    };
    let told = water.old_floor.iter().take(TOLD).map(|pond| pond_line(pond, true));
    std::iter::once(first).chain(told).collect()
}

fn on_new_floor(ponds: &[PondReport]) -> Vec<String> {
    let first = match ponds.len() {
        0 => "New floor: water leaves everywhere, struck off as planned.".to_owned(),
        count => format!("New floor: WATER STANDS in {count} places."),
    };
    let told = ponds.iter().take(TOLD).map(|pond| pond_line(pond, false));
    std::iter::once(first).chain(told).collect()
}

pub(super) fn pond_line(pond: &PondReport, with_fate: bool) -> String {
    let fate = pond.fate.as_ref().filter(|_| with_fate);
    let fate = fate.map(|fate| format!(" ({fate})")).unwrap_or_default();
    format!("- {}, {} deep at {}{fate}", pond.area.text, pond.depth.text, pond.deepest.text)
}
