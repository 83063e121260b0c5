//! The unit of the coordinate system that a LAS file states, by GeoTIFF keys or as well-known text.

use super::head::Head;
use super::{refused, wkt};
use crate::failure::{Code, Failure, Result};
use crate::survey::read::unit::FileUnit;
use las::crs::GeoTiffData;

/// What is stated.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Stated {
    /// No coordinate system.
    Nothing,
    /// The unit of the plan, and that of the heights where it is stated.
    Units(FileUnit, Option<FileUnit>),
    /// A system known by its number alone.
    Coded(u16),
    /// Geographic coordinates.
    Degrees,
}

/// GeoTIFF keys (OGC 19-008r4, 7.5): model type, projected system, unit of the plan, unit of the heights.
const MODEL: u16 = 1024;
const PROJECTED: u16 = 3072;
const PLAN_UNIT: u16 = 3076;
const HEIGHT_UNIT: u16 = 4099;
/// The model types of geographic and geocentric coordinates, and the key of their system.
const GEOGRAPHIC: u16 = 2;
/// What stands for a system or unit of the user's own.
const OWN: u16 = 32767;

pub(super) fn stated(head: &Head) -> Result<Stated> {
    let text = head.extended_wkt.as_deref().or_else(|| head.header.get_wkt_crs_bytes());
    if let Some(text) = text.filter(|text| text.iter().any(u8::is_ascii_alphabetic)) {
        return of_text(&String::from_utf8_lossy(text));
    }
    let Some(keys) = head.header.get_geotiff_crs().map_err(|error| refused(&error))? else {
        return Ok(Stated::Nothing);
    };
    let key = |id: u16| {
        keys.entries.iter().find(|entry| entry.id == id).and_then(|entry| match entry.data {
            GeoTiffData::U16(value) if value != 0 => Some(value),
            _ => None,
        })
    };
    if key(MODEL) == Some(GEOGRAPHIC) {
        return Ok(Stated::Degrees);
    }
    let height = key(HEIGHT_UNIT).map(unit).transpose()?;
    match (key(PLAN_UNIT), key(PROJECTED)) {
        (Some(plan), _) => Ok(Stated::Units(unit(plan)?, height)),
        (None, Some(code)) if code != OWN => Ok(Stated::Coded(code)),
        _ => Ok(Stated::Nothing),
    }
}

/// EPSG numbers of units: 9001 metre, 9002 foot, 9003 US survey foot.
fn unit(code: u16) -> Result<FileUnit> {
    match code {
        9001 => Ok(FileUnit::Metre),
        9002 => Ok(FileUnit::Foot),
        9003 => Ok(FileUnit::SurveyFoot),
        _ => Err(unknown(format!("unit {code} of the coordinate system"))),
    }
}

fn of_text(text: &str) -> Result<Stated> {
    let units = wkt::units(text);
    let unit = |factor: f64| {
        let known = [
            FileUnit::Metre,
            FileUnit::Foot,
            FileUnit::SurveyFoot,
            FileUnit::Millimetre,
            FileUnit::Centimetre,
        ];
        // The two feet differ by 2e-6; texts give ten digits and more.
        let near = known.into_iter().find(|unit| (factor / unit.metres(1.0) - 1.0).abs() < 1.0e-8);
        near.ok_or_else(|| unknown(format!("a unit of {factor} m in the coordinate system")))
    };
    match (units.plan, units.geographic) {
        (Some(plan), _) => Ok(Stated::Units(unit(plan)?, units.height.map(unit).transpose()?)),
        (None, true) => Ok(Stated::Degrees),
        (None, false) => Ok(Stated::Nothing),
    }
}

fn unknown(written: String) -> Box<Failure> {
    Failure::new(Code::UnitUnknown, "file")
        .written(written)
        .allowed(FileUnit::words())
        .remedy("give the unit, and say that it overrules the file")
}
