//! The unit that a LandXML file states: `Metric` or `Imperial` with its `linearUnit`.

use crate::failure::{Code, Failure, Result};
use crate::survey::read::unit::FileUnit;

/// Reads one `Metric` or `Imperial` element.
pub(super) fn read(system: &str, linear: Option<&str>, elevation: Option<&str>) -> Result<FileUnit> {
    let metric = system == "Metric";
    let Some(linear) = linear else {
        return Err(Failure::new(Code::UnitMissing, "Units")
            .written(format!("{system} without linearUnit"))
            .allowed(FileUnit::words())
            .remedy("give the unit, and say that it overrules the file"));
    };
    let unit = FileUnit::read(linear, "Units.linearUnit").map_err(advice)?;
    if unit.is_metric() != metric {
        return Err(advice(contradiction("Units.linearUnit", format!("{system} with linearUnit {linear}"))));
    }
    // The schema knows only `feet` there, for either foot.
    let same = elevation.is_none_or(|elevation| match FileUnit::from_spelling(elevation) {
        Some(FileUnit::Foot) => matches!(unit, FileUnit::Foot | FileUnit::SurveyFoot),
        other => other == Some(unit),
    });
    if same {
        return Ok(unit);
    }
    let written = format!("linearUnit {linear}, elevationUnit {}", elevation.unwrap_or_default());
    Err(advice(contradiction("Units.elevationUnit", written)))
}

fn contradiction(path: &str, written: String) -> Box<Failure> {
    Failure::new(Code::Contradiction, path).written(written)
}

fn advice(failure: Box<Failure>) -> Box<Failure> {
    failure.remedy("correct the file, or give the unit and say that it overrules the file")
}
