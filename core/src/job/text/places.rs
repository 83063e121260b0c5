//! Zones and sections, in words.

use super::Page;
use crate::job::{NewFloor, SectionReport};

pub(super) fn zones(page: &mut Page, floor: &NewFloor) {
    for (index, zone) in floor.zones.iter().enumerate() {
        let label = if index == 0 { "ZONES" } else { "" };
        let thinner = match (&zone.thinner, &floor.thickness.thinner_than) {
            (Some(area), Some(depth)) if area.us >= 0.5 => format!(", {} under {}", area.text, depth.text),
            _ => String::new(),
        };
        page.section(
            label,
            &format!(
                "{}: {}, {}, {} to {}, mean {}{thinner}",
                zone.name,
                zone.area.text,
                zone.fill.text,
                zone.least.text,
                zone.greatest.text,
                zone.mean.text
            ),
        );
    }
}

pub(super) fn sections(page: &mut Page, floor: &NewFloor) {
    for section in &floor.sections {
        one_section(page, section);
    }
}

fn one_section(page: &mut Page, section: &SectionReport) {
    page.section(
        "SECTION",
        &format!(
            "{}, {} long: thinnest {} at {}, thickest {} at {}.",
            section.name,
            section.length.text,
            section.least.text,
            section.least_at.text,
            section.greatest.text,
            section.greatest_at.text
        ),
    );
    page.raw(&format!("{:>10}  {:>12}  {:>12}  {:>10}", "along", "old slab", "new floor", "thickness"));
    for station in &section.stations {
        page.raw(&format!(
            "{:>10}  {:>12}  {:>12}  {:>10}",
            station.distance.text, station.old_slab.text, station.finish.text, station.thickness.text
        ));
    }
}
