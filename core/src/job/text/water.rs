//! Standing water and clean-up, in words.

use super::Page;
use crate::job::{CleanUpReport, PondReport, Report};

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
    let mut lines = Vec::new();
    match water.old_floor.len() {
        0 => lines.push(format!("Old floor: none deeper than {}.", water.shallowest.text)),
        ponds => {
            lines.push(format!("Old floor: {} of {ponds} low spots cured by the new floor.", water.cured));
            lines.extend(water.old_floor.iter().take(TOLD).map(|pond| pond_line(pond, true)));
        }
    }
    match water.new_floor.len() {
        0 => lines.push("New floor: water leaves everywhere, struck off as planned.".to_owned()),
        ponds => {
            lines.push(format!("New floor: WATER STANDS in {ponds} places."));
            lines.extend(water.new_floor.iter().take(TOLD).map(|pond| pond_line(pond, false)));
        }
    }
    lines.extend(super::drainage::lines(report));
    page.list("WATER", lines.into_iter());
}

pub(super) fn pond_line(pond: &PondReport, with_fate: bool) -> String {
    let fate = if with_fate { format!(" ({})", pond.fate) } else { String::new() };
    format!("- {}, {} deep at {}{fate}", pond.area.text, pond.depth.text, pond.deepest.text)
}
