//! Demands that cannot all be kept, in words.

use super::Page;
use crate::job::{ChangeReport, NewFloor};

pub(super) fn conflict(page: &mut Page, floor: &NewFloor) {
    let Some(conflict) = &floor.conflict else { return };
    page.section(
        "CONFLICT",
        "WHAT WAS ASKED CANNOT ALL BE KEPT. The floor below is not what was asked: it is the nearest that can be built, with",
    );
    for change in &conflict.nearest {
        page.line(&format!("- {}", said(change)));
    }
    page.line("Why, and what would mend each:");
    for (index, set) in conflict.sets.iter().enumerate() {
        page.line(&format!("{}. {}", index + 1, set.text));
    }
    if !conflict.complete {
        page.line("There are more such sets.");
    }
    match conflict.alone.as_slice() {
        [] => page.line("No single change mends it all."),
        alone => {
            let each: Vec<String> = alone.iter().map(said).collect();
            page.line(&format!("One change alone would mend it all: {}.", each.join("; or ")));
        }
    }
}

fn said(change: &ChangeReport) -> String {
    format!("{}: {}", change.demand, change.text)
}
