//! The floor as built, in words.

use super::Page;
use super::water::{capital, pond_line};
use crate::job::{AsBuiltReport, BuiltFloorReport, CheckReport, FlatnessReport, NewFloor};

/// So many lines of readings are told one by one.
const TOLD: usize = 6;

pub(super) fn as_built(page: &mut Page, floor: &NewFloor) {
    let Some(AsBuiltReport { floor, flatness }) = &floor.as_built else { return };
    let mut label = "AS BUILT";
    if let Some(floor) = floor {
        shots(page, floor, label);
        label = "";
    }
    if let Some(flatness) = flatness {
        lines(page, flatness, label);
    }
    if let Some(floor) = floor {
        verdicts(page, floor);
    }
    page.line("Arithmetic on what was measured, not an approval.");
}

fn shots(page: &mut Page, floor: &BuiltFloorReport, label: &str) {
    let within = &floor.tolerance.text;
    let marks = match floor.missed.len() {
        0 => format!("{} shots, all within {within} of the plan.", floor.shots),
        missed => format!("{} shots, {missed} more than {within} off the plan:", floor.shots),
    };
    page.section(label, &marks);
    page.list("", floor.missed.iter().map(|mark| format!("- {}", mark.text)));
    page.line(&format!(
        "Thickness got: least {} at {}; mean {}, planned {}; greatest {}.",
        floor.least.text, floor.least_at.text, floor.mean.text, floor.mean_planned.text, floor.greatest.text
    ));
    page.list("", floor.falls.iter().map(|fall| capital(&format!("{}.", fall.text))));
    match floor.ponds.len() {
        0 => page.line("Water leaves everywhere, by the shots."),
        ponds => {
            page.line(&format!("WATER STANDS in {ponds} {}:", if ponds == 1 { "place" } else { "places" }));
            page.list("", floor.ponds.iter().map(|pond| pond_line(pond, false)));
        }
    }
    page.list("", floor.puddles.iter().map(|puddle| capital(&format!("Puddle {puddle}."))));
    if let Some(concrete) = &floor.concrete {
        page.line(&format!("Concrete: {}.", concrete.text));
    }
}

fn lines(page: &mut Page, flatness: &FlatnessReport, label: &str) {
    for (index, text) in flatness.text.iter().enumerate() {
        page.section(if index == 0 { label } else { "" }, text);
    }
    for line in flatness.lines.iter().take(TOLD) {
        let gap = line.gap.as_ref().map(|gap| format!(", gap under 10 ft {}", gap.text)).unwrap_or_default();
        let number = |of: Option<f64>| of.map_or_else(|| "none".to_owned(), |of| format!("{of:.0}"));
        let level = line.fl.map(|fl| format!(", FL {fl:.0}")).unwrap_or_default();
        page.line(&format!("- {}: FF {}{level}{gap}", line.name, number(line.ff)));
    }
    if let more @ 1.. = flatness.lines.len().saturating_sub(TOLD) {
        page.line(&format!("- and {more} more lines"));
    }
}

fn verdicts(page: &mut Page, floor: &BuiltFloorReport) {
    let of = |verdict: &'static str| {
        let told = floor.checks.iter().filter(move |check| check.verdict == verdict);
        told.map(|check: &CheckReport| format!("- {}: {}", check.about, check.text))
    };
    page.list("HOLDS", of("pass"));
    page.list("DOES NOT", of("fail"));
    page.list("CONFIRM", of("confirm locally"));
    page.list("MEND", floor.mends.iter().map(|mend| format!("- {mend}")));
}
