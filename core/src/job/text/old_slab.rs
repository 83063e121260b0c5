//! The verdict on the old slab, in words that can be shown to the owner.

use super::Page;
use super::water::capital;
use crate::job::{OldSlabReport, Report, StopReport};

/// The verdict, stops first.
pub(super) fn old_slab(page: &mut Page, report: &Report) {
    let Some(slab) = &report.old_slab else { return };
    page.list("STOP", slab.stops.iter().map(stop));
    page.section("OLD SLAB", &slab.text);
    if !slab.speaks_for.is_empty() {
        page.line(&format!("For it: {}.", slab.speaks_for.join("; ")));
    }
    for way in slab.ways.iter().filter(|way| way.taken) {
        for mind in &way.minds {
            page.line(&format!("Mind: {mind}."));
        }
        page.list("FIRST", way.work.iter().map(|work| format!("- {}.", capital(work))));
    }
    let others = slab.ways.iter().filter(|way| !way.taken);
    page.list("OTHER WAYS", others.map(|way| format!("- {}.", capital(&way.text))));
    find_out(page, slab);
}

fn stop(stop: &StopReport) -> String {
    format!("{}: {}.", capital(&stop.text), stop.lifts.join("; "))
}

/// What could close a way is told in full, what could only add work by name.
fn find_out(page: &mut Page, slab: &OldSlabReport) {
    let open = |closes: bool| slab.find_out.iter().filter(move |ask| ask.closes == closes && !ask.taken);
    let mut lines: Vec<String> = open(true).map(|ask| format!("- {}.", capital(&ask.text))).collect();
    let more: Vec<&str> = open(false).map(|ask| ask.what.as_str()).collect();
    if !more.is_empty() {
        lines.push(format!("- More work could follow from: {}.", more.join("; ")));
    }
    page.list("FIND OUT", lines.into_iter());
}
