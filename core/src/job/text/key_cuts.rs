//! Keys where the floor meets doors, walks and open edges.

use super::Page;
use super::water::capital;
use crate::job::NewFloor;

/// What is sawn and chipped by hand, and the concrete that it takes. Nothing where the floor is thick enough at all edges.
pub(super) fn key_cuts(page: &mut Page, floor: &NewFloor) {
    let Some(keys) = floor.key_cuts.as_ref().filter(|keys| !keys.cuts.is_empty()) else { return };
    page.section("KEY CUTS", &format!("{}.", capital(&keys.text)));
    for cut in &keys.cuts {
        page.line(&format!("- {}.", capital(&cut.text)));
    }
    if keys.cuts.iter().any(|cut| cut.runs_out) {
        page.line(&format!(
            "Keys take about {} more concrete, not in the order. Wet saw, mask; mark pipes and wires first.",
            keys.concrete.text
        ));
    }
}
