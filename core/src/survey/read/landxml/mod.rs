//! LandXML 1.0 to 1.2: points of a survey and triangulated surfaces. Names are taken without their namespace.
//!
//! Coordinates stand as northing, easting, elevation: the northing becomes y, the easting x. Faces marked invisible (`i="1"`) are
//! left out. Breaklines and other source data are not read: the faces of a surface already follow them.

mod document;
mod numbers;
mod surface;
mod units;

use super::asked::Asked;
use super::format::Format;
use super::gather::Gather;
use super::refusal::unit_missing;
use super::text::utf8;
use super::unit::FileUnit;
use super::{Reading, SurfaceReading};
use crate::failure::{Code, Failure, Result, nearest};
use crate::note::{Note, NoteCode};
use crate::survey::points::{Points, Tin};
use document::Document;
use surface::Surface;

/// Reads the points of the survey, or those of the only surface.
pub(super) fn read(bytes: &[u8], asked: &Asked) -> Result<Reading> {
    let (document, unit, mut notes) = whole(bytes, asked)?;
    let surfaces = document.surfaces.len();
    let (points, left_out) = if document.points.is_empty() && document.without_height == 0 && surfaces > 0 {
        let surface = choose(&document.surfaces, None)?;
        surface.note_parts(&mut notes);
        (in_metres(&surface.points, unit), Vec::new())
    } else {
        if surfaces > 0 {
            let text = format!("{surfaces} surfaces were not used: read the file as a surface for them");
            notes.push(Note::new(NoteCode::FileParts, text));
        }
        let mut points = in_metres(&document.points, unit);
        if document.names.iter().any(Option::is_some) {
            points.names = document.names;
        }
        let mut gather = Gather::default();
        for _ in 0..document.without_height {
            gather.left_out.add(super::Reason::NoHeight);
        }
        (points, gather.finish(&mut notes).1)
    };
    Ok(Reading { points, format: Format::LandXml, unit: Some(unit), left_out, notes })
}

/// Reads the surface of that name, or the only one.
pub(super) fn read_surface(bytes: &[u8], asked: &Asked, name: Option<&str>) -> Result<SurfaceReading> {
    let (document, unit, mut notes) = whole(bytes, asked)?;
    let surface = choose(&document.surfaces, name)?;
    surface.note_parts(&mut notes);
    let points = in_metres(&surface.points, unit);
    let every: Vec<u32> = (0..).take(points.len()).collect();
    let faces = surface.faces.triangles(&points, &every, &mut notes)?;
    if faces.is_empty() {
        return Err(unclear(&document.surfaces, "a surface without faces"));
    }
    let tin = Tin { name: surface.name.clone(), points, faces };
    Ok(SurfaceReading { tin, format: Format::LandXml, unit: Some(unit), left_out: Vec::new(), notes })
}

fn whole(bytes: &[u8], asked: &Asked) -> Result<(Document, FileUnit, Vec<Note>)> {
    let document = Document::read(&utf8(bytes)?)?;
    let mut notes = Vec::new();
    let stated = document.unit(asked.overrule)?;
    let unit =
        asked.settle(stated, "unit", &mut notes)?.ok_or_else(|| unit_missing("unit", Format::LandXml))?;
    Ok((document, unit, notes))
}

fn in_metres(places: &[[f64; 3]], unit: FileUnit) -> Points {
    let axis = |axis: usize| places.iter().map(|place| unit.metres(place[axis])).collect();
    Points { x: axis(0), y: axis(1), z: axis(2), names: Vec::new() }
}

/// The surface of that name, or the only one.
fn choose<'a>(surfaces: &'a [Surface], name: Option<&str>) -> Result<&'a Surface> {
    let named = |surface: &&Surface| name.is_none_or(|name| surface.name.as_deref() == Some(name));
    let mut found = surfaces.iter().filter(named);
    match (found.next(), found.next()) {
        (Some(surface), None) => Ok(surface),
        (None, _) if surfaces.is_empty() => Err(unclear(surfaces, "no surface")),
        (None, _) => {
            let wanted = name.unwrap_or_default();
            let near = nearest(wanted, surfaces.iter().filter_map(|surface| surface.name.as_deref()));
            let failure = unclear(surfaces, &format!("no surface \"{wanted}\""));
            Err(match near {
                Some(near) => failure.remedy(format!("did you mean {near}?")),
                None => failure,
            })
        }
        (Some(_), Some(_)) => Err(unclear(surfaces, &format!("{} surfaces", 2 + found.count()))),
    }
}

fn unclear(surfaces: &[Surface], written: &str) -> Box<Failure> {
    let names: Vec<&str> = surfaces.iter().filter_map(|surface| surface.name.as_deref()).take(20).collect();
    Failure::new(Code::SurfaceUnclear, "surface")
        .written(written)
        .allowed(if names.is_empty() { "one surface with faces".to_owned() } else { names.join(", ") })
        .remedy("read the file as a surface, giving its name")
}

impl Surface {
    /// Says what of the surface was not used.
    fn note_parts(&self, notes: &mut Vec<Note>) {
        for (count, what) in [
            (self.invisible, "faces marked invisible were left out"),
            (self.sources, "breaklines and other source data were not read: the faces follow them"),
        ] {
            if count > 0 {
                notes.push(Note::new(NoteCode::FileParts, format!("{count} {what}")));
            }
        }
    }
}
