//! Doors, steps, fittings and edges, in words.

use super::Page;
use crate::job::{ClearanceReport, NewFloor};

pub(super) fn clearances(page: &mut Page, floor: &NewFloor) {
    for (index, thing) in floor.clearances.iter().enumerate() {
        let label = if index == 0 { "IN THE WAY" } else { "" };
        page.section(label, &format!("{:<12}  {}   {}", thing.name, thing.text, verdict(thing)));
        if !thing.forces.is_empty() {
            page.line(&thing.forces);
        }
    }
}

fn verdict(thing: &ClearanceReport) -> &'static str {
    match thing.verdict.as_str() {
        "pass" => "ok",
        "fail" => "DOES NOT FIT",
        "ask" => "ASK",
        _ => "confirm locally",
    }
}
