//! The thickness by zones that the caller names, and over what no zone covers.

#[cfg(test)]
mod tests;

use super::finish::Finish;
use super::thickness::Thickness;
use crate::failure::{Code, Failure, Place, Result};
use crate::geometry::Region;
use crate::note::{Note, NoteCode};
use crate::quantity::{Area, Length, Typed, area, number_in};
use crate::survey::Survey;

/// A part of the floor that the caller names. Zones may overlap.
#[derive(Clone, Debug)]
pub struct Zone {
    /// Its name.
    pub name: String,
    /// Where it is.
    pub region: Region,
}

/// The thickness by zones.
#[derive(Clone, Debug, PartialEq)]
pub struct ThicknessZones {
    /// Each zone, in the order given.
    pub zones: Vec<ZoneThickness>,
    /// What is in no zone; none where the zones cover the whole work.
    pub rest: Option<Thickness>,
}

/// The thickness over one zone.
#[derive(Clone, Debug, PartialEq)]
pub struct ZoneThickness {
    /// Its name.
    pub name: String,
    /// The figures, over what of it lies in the work.
    pub thickness: Thickness,
    /// What of it lies outside the work: beyond the outline or in a hole.
    pub outside: Area,
}

/// Less than this share of a zone outside the work is rounding.
const ROUNDING: f64 = 1e-9;

impl ThicknessZones {
    /// The thickness over each zone and over the rest of the work. Overlapping zones each count all of theirs.
    ///
    /// # Errors
    /// - `EMPTY_LIST`, `KEY_REPEATED`, `KEY_MISSING`: no zones, two of one name, one without. Path: `zones`.
    /// - `FACETS_LEAVE_HOLE`: a finish that does not cover the work.
    /// - `REGION_OUTSIDE`: a zone that shares no area with the work. Path: `zones`.
    /// - `NOT_FINITE`, `OUT_OF_RANGE`: the depth. Path: `thinner_than`.
    pub fn of(
        survey: &Survey,
        finish: &Finish,
        zones: &[Zone],
        thinner_than: Option<Length>,
    ) -> Result<Self> {
        check_names(zones)?;
        let mut found = Vec::with_capacity(zones.len());
        for (index, zone) in zones.iter().enumerate() {
            let thickness = Thickness::within(survey, &zone.region, finish, thinner_than)
                .map_err(|failure| said_of(failure, zone, index))?;
            let outside = zone.region.area() - thickness.area.base();
            let outside = if outside > ROUNDING * zone.region.area() { outside } else { 0.0 };
            found.push(ZoneThickness {
                name: zone.name.clone(),
                thickness,
                outside: Area::from_base(outside),
            });
        }
        let regions: Vec<&Region> = zones.iter().map(|zone| &zone.region).collect();
        let rest = finish.laid_over(survey.surface())?.without(&regions);
        let rest = rest.map(|rest| Thickness::under(finish, &rest, thinner_than)).transpose()?;
        Ok(Self { zones: found, rest })
    }

    /// What the reader must know.
    #[must_use]
    pub fn notes(&self) -> Vec<Note> {
        let clipped = self.zones.iter().filter(|zone| zone.outside.base() > 0.0).map(|zone| {
            let outside = number_in(zone.outside, &area::unit::square_foot, 2);
            let text = format!("{outside} of the zone {} lie outside the work and do not count", zone.name);
            Note::new(NoteCode::ZoneClipped, text)
        });
        let high = self.zones.iter().flat_map(|zone| {
            let named = |note: Note| Note::new(note.code, format!("{}: {}", zone.name, note.text));
            zone.thickness.notes().into_iter().map(named)
        });
        let rest = self.rest.iter().flat_map(Thickness::notes);
        clipped.chain(high).chain(rest).collect()
    }
}

fn check_names(zones: &[Zone]) -> Result<()> {
    if zones.is_empty() {
        return Err(Failure::new(Code::EmptyList, "zones")
            .written("no zones")
            .allowed("at least one zone")
            .remedy("name a zone and give its corners"));
    }
    for (index, zone) in zones.iter().enumerate() {
        let name = zone.name.trim();
        if name.is_empty() {
            return Err(Failure::new(Code::KeyMissing, "zones")
                .at(Place::Index(index))
                .written("a zone without a name")
                .allowed("a name for every zone")
                .remedy("name the zone"));
        }
        if zones[..index].iter().any(|other| other.name.trim().eq_ignore_ascii_case(name)) {
            return Err(Failure::new(Code::KeyRepeated, "zones")
                .at(Place::Index(index))
                .written(format!("`{name}` twice"))
                .allowed("a name of its own for every zone")
                .remedy("rename one of them; corners of one zone stand together"));
        }
    }
    Ok(())
}

/// A refusal of a zone, under the name of the list and saying which.
fn said_of(failure: Box<Failure>, zone: &Zone, index: usize) -> Box<Failure> {
    if failure.path != "zone" {
        return failure;
    }
    let mut failure = failure.at(Place::Index(index));
    failure.path = "zones".to_owned();
    failure.written = format!("`{}`, {}", zone.name, failure.written);
    failure
}
