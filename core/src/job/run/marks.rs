//! What the crew sets out, from the job's keys.

use crate::basis::BasisId;
use crate::failure::{Code, Failure, Place, Result, together};
use crate::geometry::Point;
use crate::grade::finish::Finish;
use crate::job::heights::Heights;
use crate::job::input::{Job, LineAboveInput, MarkSetUpInput, MarksInput};
use crate::job::report::{
    EdgeMarksReport, MarkReport, MarkSetUpReport, MarkSheet, MarksReport, Measure, MorningReport, RailReport,
    RipReport,
};
use crate::job::say;
use crate::marks::{
    Asked, Checked, EdgeMarks, Mark, Marks, Morning, PadsAsked, PointAsked, RailAsked, Sight, Verdict,
};
use crate::note::{Note, NoteCode};
use crate::operation::Choice;
use crate::quantity::{Elevation, Given, Length, Typed, length};
use crate::survey::Survey;
use crate::survey::input::CornerInput;
use crate::survey::level_book::ReducedBook;
use crate::survey::surface::Ground;

impl Job {
    /// The marks where the job asks for them, and what must be known of them.
    pub(super) fn marks_report(
        &self,
        survey: &Survey,
        finish: &Finish,
        heights: Heights,
    ) -> Result<(Option<MarksReport>, Vec<Note>)> {
        let Some(input) = &self.marks else { return Ok((None, Vec::new())) };
        let morning = input.morning(survey).map_err(|failure| failure.under("marks"))?;
        let (asked, checked) = self.asked_of_marks(input, survey, heights, morning)?;
        let marks = Marks::set_out(survey, finish, &asked).map_err(in_job)?;
        let mut notes = marks.notes();
        notes.extend(stop(checked.as_ref()));
        Ok((Some(report(&marks, checked.as_ref())), notes))
    }

    fn asked_of_marks(
        &self,
        input: &MarksInput,
        survey: &Survey,
        heights: Heights,
        morning: Option<(Sight, Checked)>,
    ) -> Result<(Asked, Option<Checked>)> {
        let under = |failure: Box<Failure>| failure.under("marks");
        let taken = Asked::default();
        let given =
            |given: &Option<Given<Length>>, taken: Length| given.as_ref().map_or(taken, |given| given.value);
        let pads = input.pads.clone().unwrap_or_default();
        let asked = Asked {
            line: input.line(survey, heights).map_err(under)?,
            sights: input.sights(survey, morning.as_ref()).map_err(under)?,
            rod_length: given(&input.rod_length, taken.rod_length),
            spacing: given(&input.spacing, taken.spacing),
            points: input
                .points
                .iter()
                .map(|point| PointAsked { name: point.name.clone(), at: place(&point.x, &point.y) })
                .collect(),
            pads: PadsAsked {
                screed: given(&pads.screed_length, taken.pads.screed),
                spacing: pads.spacing.map(|given| given.value),
                inset: given(&pads.inset, taken.pads.inset),
            },
            forms: input.forms.clone(),
            rails: input
                .rails
                .iter()
                .map(|rail| RailAsked {
                    name: rail.name.clone(),
                    places: rail.line.iter().map(corner).collect(),
                })
                .collect(),
            rail_offset: given(&input.rail_offset, taken.rail_offset),
            step: input
                .round
                .as_ref()
                .map_or_else(|| heights.step(self.finish.round().0), |given| given.value),
            start_edge: input.start.clone(),
        };
        Ok((asked, morning.map(|(_, checked)| checked)))
    }
}

impl MarksInput {
    /// The rules that marks are set out by.
    pub(super) fn bases(&self) -> impl Iterator<Item = (&'static str, BasisId)> {
        let always = [
            ("marks", BasisId::SettingOut),
            ("stations", BasisId::OldSlabCheck),
            ("wet pads", BasisId::PadSpacing),
        ];
        let morning = self.rod_today.is_some().then_some(("benchmark today", BasisId::MorningCheck));
        always.into_iter().chain(morning)
    }

    /// The level line, given one way or not at all.
    fn line(&self, survey: &Survey, heights: Heights) -> Result<Option<Elevation>> {
        let ways = [
            ("line", self.line.is_some()),
            ("line_rod", self.line_rod.is_some()),
            ("line_above", self.line_above.is_some()),
        ];
        match (&self.line_above, self.line.is_some() || self.line_rod.is_some()) {
            (None, false) => Ok(None),
            (None, true) => heights.given(&self.line, &self.line_rod, ["line", "line_rod"]).map(Some),
            (Some(_), true) => Err(Failure::new(Code::Contradiction, "line_above")
                .written(together(&ways))
                .allowed("one of line, line_rod, line_above")
                .remedy("keep one of them")),
            (Some(above), false) => {
                above.line(survey).map(Some).map_err(|failure| failure.under("line_above"))
            }
        }
    }

    /// The set-ups: the survey's first one, or today's, then the others.
    fn sights(&self, survey: &Survey, morning: Option<&(Sight, Checked)>) -> Result<Vec<Sight>> {
        let today =
            morning.filter(|(_, checked)| checked.verdict != Verdict::Stop).map(|(sight, _)| sight.clone());
        let mut sights: Vec<Sight> = today.or_else(|| Sight::of(survey)).into_iter().collect();
        for (index, setup) in self.setups.iter().enumerate() {
            sights.push(setup.sight(survey).map_err(|failure| failure.under(&format!("setups[{index}]")))?);
        }
        Ok(sights)
    }

    /// The line of sight of this morning, and what the benchmark says of it.
    fn morning(&self, survey: &Survey) -> Result<Option<(Sight, Checked)>> {
        let Some(today) = &self.rod_today else { return Ok(None) };
        let first = survey.book().and_then(|book| Some((book.setups.first()?, book.lines.first()?)));
        let Some((setup, line)) = first else {
            return Err(Failure::new(Code::Contradiction, "rod_today")
                .written(&today.written)
                .allowed("a job whose floor was read with a level")
                .remedy("give a set-up with the elevation of its benchmark"));
        };
        let morning = Morning {
            planned: setup.backsight,
            today: today.value,
            same_setup: self.same_setup,
            tolerance: crate::assumption::BENCHMARK_OFF.value(),
            second: None,
            rods: Vec::new(),
        };
        let in_keys = |mut failure: Box<Failure>| {
            failure.path = "rod_today".to_owned();
            failure
        };
        let checked = morning.check().map_err(in_keys)?;
        let name = format!("{}, today", setup.backsight_point);
        let sight = Sight::over(&name, line.start_elevation, today.value).map_err(in_keys)?;
        Ok(Some((sight, checked)))
    }
}

impl LineAboveInput {
    fn line(&self, survey: &Survey) -> Result<Elevation> {
        match (&self.benchmark, &self.old_slab_at) {
            (Some(name), None) => Ok(known(survey.book(), name, "benchmark")? + self.height.value),
            (None, Some(at)) => Marks::line_above_old_slab(survey, corner(at), self.height.value)
                .map_err(|failure| failure.under("old_slab_at")),
            (benchmark, at) => {
                let given = [("benchmark", benchmark.is_some()), ("old_slab_at", at.is_some())];
                let code = if at.is_some() { Code::Contradiction } else { Code::KeyMissing };
                Err(Failure::new(code, "")
                    .written(together(&given))
                    .allowed("a benchmark, or a place of the old slab")
                    .remedy("say what the line stands above"))
            }
        }
    }
}

impl MarkSetUpInput {
    fn sight(&self, survey: &Survey) -> Result<Sight> {
        let elevation = match &self.elevation {
            Some(given) => given.value,
            None => known(survey.book(), &self.on, "on")?,
        };
        Sight::over(&self.on, elevation, self.rod.value).map_err(|mut failure| {
            failure.path = if failure.path == "benchmark" { "elevation" } else { "rod" }.to_owned();
            failure
        })
    }
}

/// The elevation of a point of the level book.
fn known(book: Option<&ReducedBook>, name: &str, path: &str) -> Result<Elevation> {
    book.and_then(|book| book.elevation_of(name)).ok_or_else(|| {
        let names: Vec<&str> =
            book.into_iter().flat_map(|book| &book.benchmarks).map(|known| known.name.as_str()).collect();
        Failure::new(Code::KeyUnknown, path)
            .written(format!("\"{name}\""))
            .allowed(if names.is_empty() {
                "a point with its elevation".to_owned()
            } else {
                names.join(", ")
            })
            .remedy("use a point of the level book, or give the elevation")
    })
}

fn place(x: &Given<Length>, y: &Given<Length>) -> Point {
    Point::new(x.value.base(), y.value.base())
}

fn corner(at: &CornerInput) -> Point {
    place(&at.x, &at.y)
}

/// Paths of the row's ports as the job's keys.
fn in_job(mut failure: Box<Failure>) -> Box<Failure> {
    let index = match failure.place {
        Place::Index(index) => index,
        _ => 0,
    };
    failure.path = match failure.path.as_str() {
        "finish" => "finish".to_owned(),
        "screed_length" => "marks.pads.screed_length".to_owned(),
        "pad_spacing" => "marks.pads.spacing".to_owned(),
        "pad_inset" => "marks.pads.inset".to_owned(),
        "start_edge" => "marks.start".to_owned(),
        "forms.edge" => format!("marks.forms[{index}]"),
        "points.x" => format!("marks.points[{index}].x"),
        "points.y" => format!("marks.points[{index}].y"),
        "rails.x" | "rails.y" => "marks.rails".to_owned(),
        "setups.sight" => "marks.setups".to_owned(),
        path => format!("marks.{path}"),
    };
    failure
}

fn stop(checked: Option<&Checked>) -> Option<Note> {
    let stop = checked.filter(|checked| checked.verdict == Verdict::Stop)?;
    Some(Note::new(NoteCode::BenchmarkOff, stop.said.clone()))
}

fn report(marks: &Marks, checked: Option<&Checked>) -> MarksReport {
    let sheet = marks.sheet().into_iter();
    MarksReport {
        line: marks.levels.line.map(say::height),
        rod_on_line: marks.rod_on_line().map(|rod| told(marks, rod)),
        setups: (marks.levels.sights.iter())
            .map(|sight| MarkSetUpReport { name: sight.name.clone(), sight: say::height(sight.height) })
            .collect(),
        morning: checked.map(|checked| MorningReport {
            difference: say::fine_thickness(checked.difference),
            verdict: checked.verdict.word().to_owned(),
            basis: BasisId::MorningCheck.name().to_owned(),
            text: checked.said.clone(),
        }),
        step: say::fine_thickness(marks.levels.step),
        greatest_departure: say::fine_thickness(marks.greatest_departure()),
        edges: marks.edges.iter().map(|edge| edge_report(marks, edge)).collect(),
        pads: marks.pads.iter().map(|pad| mark_report(marks, pad)).collect(),
        rails: (marks.rails.iter())
            .map(|rail| RailReport {
                name: rail.name.clone(),
                marks: rail.marks.iter().map(|mark| mark_report(marks, mark)).collect(),
            })
            .collect(),
        csv: marks.csv(),
        sheet: sheet.map(|part| MarkSheet { label: part.label.to_owned(), lines: part.lines }).collect(),
    }
}

fn edge_report(marks: &Marks, edge: &EdgeMarks) -> EdgeMarksReport {
    EdgeMarksReport {
        edge: edge.name.clone(),
        material: edge.material.word().to_owned(),
        length: say::distance(edge.length),
        level: edge.level,
        marks: edge.with_end().map(|mark| mark_report(marks, mark)).collect(),
        least: say::thickness(edge.least.height),
        greatest: say::thickness(edge.greatest.height),
        rips: (edge.rips.iter())
            .map(|rip| RipReport {
                from: say::distance(rip.from),
                to: say::distance(rip.to),
                height_from: say::thickness(rip.height_from),
                height_to: say::thickness(rip.height_to),
            })
            .collect(),
    }
}

fn mark_report(marks: &Marks, mark: &Mark) -> MarkReport {
    let levels = &marks.levels;
    MarkReport {
        number: mark.number,
        kind: mark.kind.word().to_owned(),
        name: mark.name.clone(),
        along: mark.along.map(say::distance),
        x: say::distance(mark.x),
        y: say::distance(mark.y),
        rods: (levels.sights.iter())
            .map(|sight| told(marks, levels.rod_from(sight, mark.height).marked))
            .collect(),
        below_line: levels.below_line(mark.height).map(|below| told(marks, below.marked)),
        elevation: say::height(mark.height),
        over_old_slab: say::thickness(mark.over_old_slab),
        ground: Ground::WORDS.get(mark.ground as usize).copied().unwrap_or_default().to_owned(),
    }
}

/// A height as it is held on the rod.
fn told(marks: &Marks, height: Length) -> Measure {
    Measure::new(height, &length::unit::foot, &length::unit::meter, marks.division.say(height))
}
