//! How the new floor relates to the old slab, and what it carries.

use super::Page;
use super::water::capital;
use crate::job::{NewFloor, OverlayReport};

/// Thickness in practice, what goes between, and the loads.
pub(super) fn overlay(page: &mut Page, floor: &NewFloor) {
    let Some(overlay) = &floor.overlay else { return };
    page.section("OVERLAY", &format!("{}.", capital(&overlay.text)));
    if let Some(verdict) = &overlay.verdict {
        page.line(&format!("The old slab: {verdict}."));
    }
    page.line(&format!("By: {}.", overlay.rule));
    page.line(&stone(overlay));
    page.line(&format!("Between old and new: {}.", overlay.between));
    page.line(&format!("It means: {}.", overlay.means));
    if let Some([least, greatest]) = overlay.profile {
        page.line(&format!("Surface profile {least} to {greatest}: {}.", overlay.ways.join(", or ")));
    }
    page.line(&format!("It adds {} to the ground, on average.", overlay.added_weight.text));
    page.list("CARRIES", overlay.loads.iter().map(|load| format!("- {}.", load.text)));
}

fn stone(overlay: &OverlayReport) -> String {
    let largest = &overlay.largest_stone.text;
    match overlay.stone_too_large {
        Some(true) => {
            format!("Stone: {largest} at most for the thinnest part: the one asked for is TOO LARGE.")
        }
        Some(false) => format!("Stone: {largest} at most for the thinnest part; the one asked for passes."),
        None => format!("Stone: {largest} at most for the thinnest part."),
    }
}
