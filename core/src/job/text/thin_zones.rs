//! Zones thinner than an unbonded overlay may be, in words.

use super::Page;
use super::water::capital;
use crate::job::{NewFloor, ThinZoneReport};

pub(super) fn thin_zones(page: &mut Page, floor: &NewFloor) {
    let Some(thin) = &floor.thin_zones else { return };
    let text = capital(&thin.text);
    let breaks = but(&thin.raising_breaks)
        .map(|names| format!(" Raising all would break: {names}."))
        .unwrap_or_default();
    page.section("THIN", &format!("{}.{breaks}", text.trim_end_matches('.')));
    for zone in thin.zones.iter().filter(|zone| !zone.beyond_shots) {
        page.line(&format!(
            "{}: {}, short by up to {} at {}",
            capital(&zone.name),
            zone.area.text,
            zone.deficit.text,
            zone.thinnest_at.text
        ));
        for choice in &zone.choices {
            let mark = if choice.cheapest { "CHEAPEST: " } else { "" };
            let breaks =
                but(&choice.breaks).map(|names| format!("; BUT IT BREAKS {names}")).unwrap_or_default();
            page.line(&format!("- {mark}{}{breaks}", choice.text));
        }
    }
    let beyond: Vec<String> = thin.zones.iter().filter(|zone| zone.beyond_shots).map(shoot).collect();
    if !beyond.is_empty() {
        page.line(&format!("Past the last shots, shoot there first: {}.", beyond.join("; ")));
    }
}

fn but(names: &[String]) -> Option<String> {
    (!names.is_empty()).then(|| names.join(", "))
}

fn shoot(zone: &ThinZoneReport) -> String {
    format!(
        "{}, {}, short by up to {} at {}",
        zone.name, zone.area.text, zone.deficit.text, zone.thinnest_at.text
    )
}
