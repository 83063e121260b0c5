//! Figures of zones and along sections.

use super::thickness::slab_place;
use crate::failure::{Code, Failure, Result};
use crate::geometry::{Point, Region};
use crate::grade::finish::Finish;
use crate::grade::sections::{Section, Station};
use crate::grade::thickness::Thickness;
use crate::grade::zones::{ThicknessZones, Zone};
use crate::job::heights::Heights;
use crate::job::input::{Job, SectionInput, ZoneInput};
use crate::job::report::{SectionReport, StationReport, ZoneReport};
use crate::job::say;
use crate::note::Note;
use crate::quantity::{Length, Typed};
use crate::survey::Survey;
use crate::survey::input::CornerInput;
use crate::survey::outline::Corner;

impl Job {
    /// The zones, the rest of the floor as the last of them, and what must be known of them.
    pub(super) fn zone_reports(
        &self,
        survey: &Survey,
        finish: &Finish,
        thinner_than: Option<Length>,
    ) -> Result<(Vec<ZoneReport>, Vec<Note>)> {
        if self.zones.is_empty() {
            return Ok((Vec::new(), Vec::new()));
        }
        let zones = self.zones.iter().enumerate().map(|(index, input)| zone(index, input));
        let found = ThicknessZones::of(survey, finish, &zones.collect::<Result<Vec<_>>>()?, thinner_than)?;
        let mut reports: Vec<ZoneReport> =
            found.zones.iter().map(|zone| zone_report(&zone.name, &zone.thickness, survey)).collect();
        reports.extend(found.rest.as_ref().map(|rest| zone_report("the rest", rest, survey)));
        Ok((reports, found.notes()))
    }

    /// The sections, and what must be known of them.
    pub(super) fn section_reports(
        &self,
        survey: &Survey,
        finish: &Finish,
        heights: Heights,
    ) -> Result<(Vec<SectionReport>, Vec<Note>)> {
        let mut notes = Vec::new();
        let mut reports = Vec::with_capacity(self.sections.len());
        for (index, input) in self.sections.iter().enumerate() {
            let line: Vec<Corner> = input.line.iter().map(corner).collect();
            let section = Section::along(survey, finish, &line)
                .map_err(|failure| failure.under(&format!("sections[{index}]")))?;
            notes.extend(
                section
                    .notes()
                    .into_iter()
                    .map(|note| Note::new(note.code, format!("{}: {}", input.name, note.text))),
            );
            reports.push(section_report(input, &section, heights));
        }
        Ok((reports, notes))
    }
}

fn corner(input: &CornerInput) -> Corner {
    Corner::new(input.x.value, input.y.value)
}

pub(in crate::job) fn zone(index: usize, input: &ZoneInput) -> Result<Zone> {
    let corners = input.corners.iter().map(|corner| Point::new(corner.x.value.base(), corner.y.value.base()));
    let region = Region::new(corners.collect(), Vec::new()).map_err(|error| {
        Failure::new(Code::OutlineTooFew, format!("zones[{index}].corners"))
            .written(error.to_string())
            .allowed("corners in order around an area")
            .remedy("check the corners of the zone")
    })?;
    Ok(Zone { name: input.name.clone(), region })
}

fn zone_report(name: &str, thickness: &Thickness, survey: &Survey) -> ZoneReport {
    let least = thickness.least_measured.as_ref().unwrap_or(&thickness.least);
    ZoneReport {
        name: name.to_owned(),
        area: say::surface(thickness.area),
        fill: say::body(thickness.fill),
        mean: say::thickness(thickness.mean),
        least: say::at_least(least.thickness),
        least_at: say::place(&slab_place(survey, least)),
        greatest: say::at_most(thickness.greatest.thickness),
        greatest_at: say::place(&slab_place(survey, &thickness.greatest)),
        thinner: thickness.thinner.map(say::surface),
    }
}

fn section_report(input: &SectionInput, section: &Section, heights: Heights) -> SectionReport {
    let station = |station: &Station| StationReport {
        distance: say::distance(station.distance),
        old_slab: heights.say(station.old_slab),
        finish: heights.say(station.finish),
        thickness: say::thickness(station.thickness),
    };
    SectionReport {
        name: input.name.clone(),
        length: say::distance(section.length),
        fill: say::surface(section.fill),
        least: say::at_least(section.least.thickness),
        least_at: say::distance(section.least.distance),
        greatest: say::at_most(section.greatest.thickness),
        greatest_at: say::distance(section.greatest.distance),
        stations: section.stations.iter().map(station).collect(),
    }
}
