//! Flatness and levelness of the new floor, from the lines of the job.

use crate::asbuilt::flatness::{
    FNumber, Factor, Floor, FloorLine, Judged, Judging, Limits, LineInput, LinePlace, Profile,
    SectionFlatness, SectionInput, Spacing, Straightedge, Verdict,
};
use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result};
use crate::grade::finish::Finish;
use crate::job::input::{AsBuiltInput, ProfileInput};
use crate::job::report::{FlatSectionReport, FlatnessReport, ProfileReport};
use crate::job::say;
use crate::note::Note;
use crate::quantity::{Area, Length, Ratio, Typed};
use crate::survey::Survey;
use crate::survey::outline::Corner;

/// The length of straightedge that limits are told for: 10 ft.
const STRAIGHTEDGE: f64 = 3.048;

type More = (Vec<Note>, Vec<(String, BasisId)>);

/// Flatness and levelness, where lines were read.
pub(super) fn flatness_report(
    input: &AsBuiltInput,
    survey: &Survey,
    finish: &Finish,
) -> Result<Option<(FlatnessReport, More)>> {
    if input.profiles.is_empty() {
        return refuse_idle(input).map(|()| None);
    }
    let spacing = input.spacing.as_ref().map_or(Ok(Spacing::Inches12), |given| Spacing::of(given.value))?;
    let heights = input.profiles.iter().enumerate().map(heights).collect::<Result<Vec<_>>>()?;
    let lines = input.profiles.iter().zip(&heights).enumerate().map(|(index, (profile, heights))| {
        line(profile, heights, spacing).map_err(|failure| failure.under(&format!("profiles[{index}]")))
    });
    let lines = lines.collect::<Result<Vec<_>>>()?;
    let number = |number: Option<f64>| number.map(Ratio::from_base);
    let limits = Limits::asked(input.flatness_class, number(input.least_ff), number(input.least_fl))?;
    let factor = input.factor.unwrap_or(Factor::Inches);
    let judging = Judging { factor, limits, falls: false, finish: Some(finish) };
    let floor = Floor::of(spacing, &lines, &areas(input)?, &judging).map_err(in_profiles)?;
    let gaps = heights.iter().map(|heights| gap(heights, spacing)).collect::<Result<Vec<_>>>()?;
    let mut bases = vec![
        ("flatness".to_owned(), BasisId::FlatnessNumbers),
        ("flatness numbers".to_owned(), BasisId::FlatnessConstants),
        ("lines and readings".to_owned(), BasisId::FlatnessReadings),
    ];
    if limits.is_some_and(|limits| limits.class.is_some()) {
        bases.push(("class of flatness".to_owned(), BasisId::FlatnessClasses));
    }
    if floor.falls {
        bases.push(("levelness on a fall".to_owned(), BasisId::FlatnessOnSlope));
    }
    let notes = floor.notes(Some(survey.outline().region()));
    Ok(Some((report(&floor, &gaps), (notes, bases))))
}

/// Refuses what is asked of lines that were not read.
fn refuse_idle(input: &AsBuiltInput) -> Result<()> {
    let idle = [
        ("spacing", input.spacing.is_some()),
        ("flatness_class", input.flatness_class.is_some()),
        ("least_ff", input.least_ff.is_some()),
        ("least_fl", input.least_fl.is_some()),
        ("factor", input.factor.is_some()),
    ];
    match idle.into_iter().find(|(_, given)| *given) {
        None => Ok(()),
        Some((key, _)) => Err(Failure::new(Code::KeyMissing, "profiles")
            .written(format!("nothing, but {key} is given"))
            .allowed("lines of readings")
            .remedy(format!("give the lines, or leave {key} out"))),
    }
}

/// The heights of a line in metres; rods grow downward.
fn heights((index, profile): (usize, &ProfileInput)) -> Result<Vec<f64>> {
    match (profile.elevations.is_empty(), profile.rods.is_empty()) {
        (false, true) => Ok(profile.elevations.iter().map(|given| given.value.base()).collect()),
        (true, false) => Ok(profile.rods.iter().map(|given| -given.value.base()).collect()),
        (both_missing, _) => {
            let code = if both_missing { Code::KeyMissing } else { Code::Contradiction };
            Err(Failure::new(code, format!("profiles[{index}].elevations"))
                .written(if both_missing { "nothing" } else { "elevations and rods" })
                .allowed("elevations or rods")
                .remedy("give the readings one way"))
        }
    }
}

fn line<'a>(profile: &ProfileInput, heights: &'a [f64], spacing: Spacing) -> Result<LineInput<'a>> {
    let key = if profile.rods.is_empty() { "elevations" } else { "rods" };
    let readings = Profile::new(spacing, heights).map_err(|mut failure| {
        failure.path = key.to_owned();
        failure
    })?;
    let corner = |at: &crate::survey::input::CornerInput| Corner::new(at.x.value, at.y.value);
    let place = match (&profile.start, &profile.toward) {
        (Some(start), Some(toward)) => {
            let place = LinePlace::new(corner(start), corner(toward));
            Some(place.map_err(|failure| Failure { path: "toward".to_owned(), ..*failure })?)
        }
        (None, None) => None,
        (start, _) => {
            return Err(Failure::new(Code::KeyMissing, if start.is_some() { "toward" } else { "start" })
                .written("nothing")
                .allowed("where the line starts, and a place it runs towards")
                .remedy("give both, or neither"));
        }
    };
    Ok(LineInput { name: profile.name.clone(), section: profile.section.clone(), profile: readings, place })
}

/// The area of each section, told once or alike.
fn areas(input: &AsBuiltInput) -> Result<Vec<SectionInput>> {
    let mut areas: Vec<SectionInput> = Vec::new();
    for (index, profile) in input.profiles.iter().enumerate() {
        let Some(area) = &profile.area else { continue };
        let name = profile.section.clone().unwrap_or_default();
        match areas.iter().find(|known| known.name.eq_ignore_ascii_case(&name)) {
            Some(known) if known.area != area.value => {
                return Err(Failure::new(Code::Contradiction, format!("profiles[{index}].area"))
                    .written(area.written.clone())
                    .allowed("one area for one section")
                    .remedy("give the area of a section once"));
            }
            Some(_) => {}
            None => areas.push(SectionInput { name, area: checked(area.value, index)? }),
        }
    }
    Ok(areas)
}

fn checked(area: Area, index: usize) -> Result<Area> {
    crate::failure::check(&format!("profiles[{index}].area"), area, crate::quantity::Range::POSITIVE)
}

/// The paths of a floor's refusals in the words of the job.
fn in_profiles(mut failure: Box<Failure>) -> Box<Failure> {
    failure.path = "profiles".to_owned();
    failure
}

/// The greatest gap under 10 ft along a line.
fn gap(heights: &[f64], spacing: Spacing) -> Result<Option<Length>> {
    let step = spacing.length().base();
    let places: Vec<f64> = (0..heights.len()).map(|reading| step * reading as f64).collect();
    let laid = Straightedge::along(&places, heights, Length::from_base(STRAIGHTEDGE))?;
    Ok(laid.worst().map(|worst| worst.gap))
}

fn number(of: Option<FNumber>) -> Option<f64> {
    of.and_then(FNumber::number).map(Typed::base)
}

fn word(verdict: Option<Verdict>) -> Option<String> {
    verdict.map(|verdict| verdict.word().to_owned())
}

fn report(floor: &Floor, gaps: &[Option<Length>]) -> FlatnessReport {
    let judged = |judged: Option<Judged>| {
        (word(judged.map(|judged| judged.ff)), word(judged.and_then(|judged| judged.fl)))
    };
    let line = |(line, gap): (&FloorLine, &Option<Length>)| ProfileReport {
        name: line.name.clone(),
        readings: line.flatness.readings,
        ff: number(line.flatness.ff),
        fl: number(line.flatness.fl),
        gap: gap.map(say::at_most),
    };
    let section = |section: &SectionFlatness| {
        let (ff_verdict, fl_verdict) = judged(section.judged);
        FlatSectionReport {
            name: section.name.clone(),
            ff: number(section.ff),
            fl: number(section.fl),
            ff_verdict,
            fl_verdict,
            enough: section.enough,
        }
    };
    let (ff_verdict, fl_verdict) = judged(floor.judged);
    FlatnessReport {
        ff: number(floor.ff),
        fl: number(floor.fl),
        asked_ff: floor.limits.map(|limits| limits.ff),
        asked_fl: floor.limits.map(|limits| limits.fl),
        ff_verdict,
        fl_verdict,
        lines: floor.lines.iter().zip(gaps).map(line).collect(),
        sections: floor.sections.iter().map(section).collect(),
        text: floor.said(),
    }
}
