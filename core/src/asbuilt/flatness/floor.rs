//! The lines of a floor, by section and over all.

use super::class::{Judged, Limits, Verdict};
use super::combine::{Part, combined};
use super::factor::Factor;
use super::layout::{LinePlace, least_z_readings};
use super::line::LineFlatness;
use super::number::FNumber;
use super::plan;
use super::profile::{Profile, Spacing};
use crate::failure::{Code, Failure, Result};
use crate::grade::finish::Finish;
use crate::quantity::{Area, Typed};
use std::collections::HashMap;

/// One line as it was read.
#[derive(Clone, Debug)]
pub struct LineInput<'a> {
    /// Its name.
    pub name: String,
    /// The section it lies in, where the floor has several.
    pub section: Option<String>,
    /// Its readings.
    pub profile: Profile<'a>,
    /// Where it runs, where that is known.
    pub place: Option<LinePlace>,
}

/// A section by name with its area, where that is known.
#[derive(Clone, Debug, PartialEq)]
pub struct SectionInput {
    /// Its name.
    pub name: String,
    /// Its area.
    pub area: Area,
}

/// A line in numbers.
#[derive(Clone, Debug, PartialEq)]
pub struct FloorLine {
    /// Its name.
    pub name: String,
    /// The number of its section.
    pub section: usize,
    /// Its numbers; levelness is none on a floor that falls.
    pub flatness: LineFlatness,
    /// Where it runs.
    pub place: Option<LinePlace>,
    /// Bends left out because the plan bends there.
    pub left_out: usize,
}

/// A section in numbers.
#[derive(Clone, Debug, PartialEq)]
pub struct SectionFlatness {
    /// Its name; none where the floor is one section.
    pub name: Option<String>,
    /// Its area, where given.
    pub area: Option<Area>,
    /// How many lines.
    pub lines: usize,
    /// How many bends.
    pub q: usize,
    /// How many rises.
    pub z: usize,
    /// The fewest rises the standard judges by, where the area is known.
    pub least_z: Option<usize>,
    /// Whether lines and readings are as many as the standard judges by.
    pub enough: bool,
    /// Flatness of all lines.
    pub ff: Option<FNumber>,
    /// Levelness of all lines.
    pub fl: Option<FNumber>,
    /// Against the least of every section, where something is asked.
    pub judged: Option<Judged>,
}

/// A floor in numbers.
#[derive(Clone, Debug, PartialEq)]
pub struct Floor {
    /// How far apart the readings stand.
    pub spacing: Spacing,
    /// The lines.
    pub lines: Vec<FloorLine>,
    /// The sections, in the order met.
    pub sections: Vec<SectionFlatness>,
    /// Whether the floor falls, so that levelness is not used.
    pub falls: bool,
    /// Flatness over all.
    pub ff: Option<FNumber>,
    /// Levelness over all.
    pub fl: Option<FNumber>,
    /// What is asked.
    pub limits: Option<Limits>,
    /// Over all against what is asked.
    pub judged: Option<Judged>,
}

/// How a floor is to be judged.
#[derive(Clone, Copy, Debug)]
pub struct Judging<'a> {
    /// The constant for flatness.
    pub factor: Factor,
    /// The least numbers.
    pub limits: Option<Limits>,
    /// Whether the floor falls.
    pub falls: bool,
    /// The plan, for lines whose place is known.
    pub finish: Option<&'a Finish>,
}

/// A fall under this is none: a hair in a hundred metres.
const LEVEL: f64 = 1e-9;

impl Floor {
    /// The numbers of all lines, by section and over all: lines weigh by their readings, sections by their areas where those are
    /// given.
    ///
    /// # Errors
    /// `EMPTY_LIST`: no line; `FLATNESS_SECTION`: some lines have a section and others none, some sections an area and others
    /// none, or an area belongs to no line; `OFF_WORK`: a line off the plan.
    pub fn of(
        spacing: Spacing,
        lines: &[LineInput<'_>],
        areas: &[SectionInput],
        judging: &Judging<'_>,
    ) -> Result<Self> {
        let named = Sections::of(lines)?;
        let areas = named.areas(areas)?;
        let falls = judging.falls || judging.finish.is_some_and(|finish| finish.fall().base() > LEVEL);
        let lines = lines
            .iter()
            .map(|line| measured(line, named.number(line.section.as_deref()), falls, judging))
            .collect::<Result<Vec<_>>>()?;
        let sections: Vec<SectionFlatness> = named
            .names
            .iter()
            .zip(areas)
            .enumerate()
            .map(|(number, (name, area))| {
                let of_section: Vec<&FloorLine> =
                    lines.iter().filter(|line| line.section == number).collect();
                section_of(name.clone(), area, &of_section, spacing, falls, judging.limits)
            })
            .collect();
        let over_all = |number: fn(&SectionFlatness) -> Option<FNumber>,
                        readings: fn(&SectionFlatness) -> usize| {
            let part = |section: &SectionFlatness| {
                let weight = section.area.map_or(readings(section) as f64, Typed::base);
                Some(Part { number: number(section)?, weight })
            };
            combined(sections.iter().filter_map(part))
        };
        let ff = over_all(|section| section.ff, |section| section.q);
        let fl = over_all(|section| section.fl, |section| section.z);
        let enough = sections.iter().all(|section| section.enough);
        let judged = judging.limits.map(|limits| Judged {
            ff: Verdict::of_flatness(ff, limits.ff, spacing, enough),
            fl: (!falls).then(|| Verdict::of_levelness(fl, limits.fl, enough)),
        });
        Ok(Self { spacing, lines, sections, falls, ff, fl, limits: judging.limits, judged })
    }
}

/// One line. On a floor that falls only its flatness is told, without the bends of the plan where its place is known.
fn measured(line: &LineInput<'_>, section: usize, falls: bool, judging: &Judging<'_>) -> Result<FloorLine> {
    let (mut flatness, left_out) = match (line.place, judging.finish) {
        (Some(place), Some(finish)) => {
            let (bends, left_out) =
                plan::bends(&line.profile, &place, finish).map_err(|failure| said_of(failure, &line.name))?;
            (LineFlatness::of_bends(&line.profile, bends, judging.factor), left_out)
        }
        _ => (LineFlatness::of(&line.profile, judging.factor), 0),
    };
    if falls {
        flatness.fl = None;
    }
    Ok(FloorLine { name: line.name.clone(), section, flatness, place: line.place, left_out })
}

fn said_of(mut failure: Box<Failure>, line: &str) -> Box<Failure> {
    failure.written = format!("line {line}, {}", failure.written);
    failure
}

fn section_of(
    name: Option<String>,
    area: Option<Area>,
    lines: &[&FloorLine],
    spacing: Spacing,
    falls: bool,
    limits: Option<Limits>,
) -> SectionFlatness {
    let flat =
        |line: &&FloorLine| Some(Part { number: line.flatness.ff?, weight: line.flatness.q.count as f64 });
    let level =
        |line: &&FloorLine| Some(Part { number: line.flatness.fl?, weight: line.flatness.z.count as f64 });
    let ff = combined(lines.iter().filter_map(flat));
    let fl = combined(lines.iter().filter_map(level));
    let z = lines.iter().map(|line| line.flatness.z.count).sum();
    let least_z = area.map(least_z_readings);
    let enough =
        lines.iter().all(|line| line.flatness.is_standard()) && least_z.is_none_or(|least| z >= least);
    let judged = limits.map(|limits| Judged {
        ff: Verdict::of_flatness(ff, limits.local_ff(), spacing, enough),
        fl: (!falls).then(|| Verdict::of_levelness(fl, limits.local_fl(), enough)),
    });
    let q = lines.iter().map(|line| line.flatness.q.count).sum();
    SectionFlatness { name, area, lines: lines.len(), q, z, least_z, enough, ff, fl, judged }
}

/// The sections by name, in the order met; one without a name where no line has one.
struct Sections {
    names: Vec<Option<String>>,
    numbers: HashMap<String, usize>,
}

impl Sections {
    fn of(lines: &[LineInput<'_>]) -> Result<Self> {
        let mut sections = Self { names: Vec::new(), numbers: HashMap::new() };
        let named = lines.iter().filter(|line| line.section.is_some()).count();
        if let Some(line) = lines.iter().find(|line| line.section.is_none() && named > 0) {
            return Err(unfit("readings.section", format!("line {} without a section", line.name)));
        }
        if lines.is_empty() {
            return Err(Failure::new(Code::EmptyList, "readings")
                .allowed("at least one line")
                .remedy("give the readings of a line"));
        }
        if named == 0 {
            sections.names.push(None);
        }
        for name in lines.iter().filter_map(|line| line.section.as_deref()) {
            let next = sections.names.len();
            if *sections.numbers.entry(key(name)).or_insert(next) == next {
                sections.names.push(Some(name.trim().to_owned()));
            }
        }
        Ok(sections)
    }

    fn number(&self, name: Option<&str>) -> usize {
        name.and_then(|name| self.numbers.get(&key(name)).copied()).unwrap_or(0)
    }

    /// The area of each; all or none.
    fn areas(&self, given: &[SectionInput]) -> Result<Vec<Option<Area>>> {
        let mut areas = vec![None; self.names.len()];
        for section in given {
            let number = match (self.numbers.get(&key(&section.name)), given) {
                (Some(&number), _) => number,
                // The one area of a floor that is one section.
                (None, [_]) if self.numbers.is_empty() => 0,
                _ => return Err(unfit("sections", format!("an area of {}, where no line is", section.name))),
            };
            if areas[number].replace(section.area).is_some() {
                return Err(Failure::new(Code::KeyRepeated, "sections")
                    .written(section.name.clone())
                    .allowed("each section once")
                    .remedy("keep one of them"));
            }
        }
        let lacking = areas.iter().zip(&self.names).find(|(area, _)| area.is_none() && !given.is_empty());
        match lacking {
            Some((_, name)) => {
                Err(unfit("sections", format!("no area of {}", name.as_deref().unwrap_or("the floor"))))
            }
            None => Ok(areas),
        }
    }
}

fn key(name: &str) -> String {
    name.trim().to_lowercase()
}

fn unfit(path: &str, written: String) -> Box<Failure> {
    Failure::new(Code::FlatnessSection, path)
        .written(written)
        .allowed("a section for every line or for none, an area for every section or for none")
        .remedy("name the section of each line, and give the area of each section once")
}
