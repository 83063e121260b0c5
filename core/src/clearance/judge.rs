//! Judging everything that a floor meets, and saying it.

use super::floor::{Floor, Meets};
use super::thing::{Clearance, Kind, Thing};
use super::verdict::{Judgement, Verdict};
use super::words::up;
use super::work::Trade;
use crate::caution::Caution;
use crate::failure::{Code, Failure, Place, Result};
use crate::grade::finish::Finish;
use crate::note::{Note, NoteCode};
use crate::quantity::Typed;
use crate::survey::Survey;

/// One thing, judged.
#[derive(Clone, Debug, PartialEq)]
pub struct JudgedThing {
    /// What it is called.
    pub name: String,
    /// Its kind.
    pub kind: Kind,
    /// The floor where it is.
    pub floor: Meets,
    /// What is said of it.
    pub judgement: Judgement,
}

/// Judges every thing that a floor meets.
///
/// # Errors
/// - `THING_OFF_FLOOR`: a thing too far from the floor.
/// - `LINE_NEEDED`: a door or an edge with one place only.
/// - `GROUND_MISSING`: an edge whose ground is not given at every place of its line.
/// - `FACETS_LEAVE_HOLE`: a finish that does not cover the work.
///
/// The place of a failure is the number of the thing, its path that of a place or a measure.
pub fn clearances(survey: &Survey, finish: &Finish, things: &[Clearance]) -> Result<Vec<JudgedThing>> {
    let laid = finish.laid_over(survey.surface())?;
    let floor = Floor::over(survey, finish, &laid);
    let each = things.iter().enumerate();
    each.map(|(index, thing)| judge(&floor, thing).map_err(|failure| failure.at(Place::Index(index))))
        .collect()
}

fn judge(floor: &Floor<'_>, thing: &Clearance) -> Result<JudgedThing> {
    thing.in_order()?;
    let meets = match thing.kind.leaves() {
        Some(leaves) => floor.meets_under_leaves(&thing.line, leaves)?,
        None => floor.meets(&thing.line)?,
    };
    let judgement = thing.thing.judged(&meets);
    Ok(JudgedThing { name: thing.name.clone(), kind: thing.kind, floor: meets, judgement })
}

impl Clearance {
    /// Refuses a thing whose line and measures do not go together.
    fn in_order(&self) -> Result<()> {
        let apart = self.line.windows(2).any(|pair| pair[0].place().distance(pair[1].place()) > APART);
        if self.line.is_empty() || (self.kind.needs_line() && !apart) {
            return Err(Failure::new(Code::LineNeeded, "x")
                .written(format!("{} for a {}", places(self.line.len()), self.kind.word()))
                .allowed("places along it: a door from jamb to jamb, an edge from end to end")
                .remedy("give the place of its other end"));
        }
        match &self.thing {
            Thing::OpenEdge(edge) if !edge.ground.is_empty() && edge.ground.len() != self.line.len() => {
                Err(Failure::new(Code::GroundMissing, "ground")
                    .written(format!("{} heights for {}", edge.ground.len(), places(self.line.len())))
                    .allowed("one height of the ground for every place of the edge")
                    .remedy("give the ground at every place"))
            }
            _ => Ok(()),
        }
    }
}

/// Places nearer than this, in metres, are one.
const APART: f64 = 1e-6;

fn places(count: usize) -> String {
    if count == 1 { "1 place".to_owned() } else { format!("{count} places") }
}

impl Verdict {
    /// As the site reads it.
    #[must_use]
    pub const fn said(self) -> &'static str {
        match self {
            Self::Pass => "fits",
            Self::ConfirmLocally => "confirm locally",
            Self::Ask => "ASK",
            Self::Fail => "DOES NOT FIT",
        }
    }
}

impl JudgedThing {
    /// Whether it still works.
    #[must_use]
    pub fn verdict(&self) -> Verdict {
        self.judgement.verdict()
    }

    /// In words: every check that is not kept, or where all are, the first, which is what the thing is there for.
    #[must_use]
    pub fn why(&self) -> String {
        let checks = &self.judgement.checks;
        let broken = checks.iter().filter(|check| check.verdict != Verdict::Pass);
        let broken: Vec<&str> = broken.map(|check| check.text.as_str()).collect();
        match checks.first() {
            Some(first) if broken.is_empty() => first.text.clone(),
            _ => broken.join("; "),
        }
    }

    /// The trades that the raise calls for, each once.
    #[must_use]
    pub fn trades(&self) -> Vec<Trade> {
        let mut trades: Vec<Trade> = Vec::new();
        for work in &self.judgement.works {
            if !trades.contains(&work.task.trade()) {
                trades.push(work.task.trade());
            }
        }
        trades
    }

    /// What the raise forces and whose work it is, for the site; nothing where it forces nothing.
    #[must_use]
    pub fn forces(&self) -> String {
        let forces = self.judgement.forces();
        if forces.is_empty() {
            return forces;
        }
        let trades: Vec<String> = self.trades().into_iter().map(Trade::said).collect();
        format!("{forces} ({})", trades.join(", "))
    }

    /// One line for the site.
    #[must_use]
    pub fn text(&self) -> String {
        let text = format!("{}: {}, {}. {}", self.name, self.verdict().said(), self.why(), self.forces());
        text.trim_end().to_owned()
    }
}

impl Trade {
    /// As it is said.
    #[must_use]
    pub fn said(self) -> String {
        self.word().replace('_', " ")
    }
}

/// Everything for the site: one thing to a line, then what can hurt.
#[must_use]
pub fn text(judged: &[JudgedThing]) -> String {
    let mut lines: Vec<String> = judged.iter().map(JudgedThing::text).collect();
    lines.extend(cautions(judged).into_iter().map(|caution| caution.text().to_owned()));
    lines.join("\n")
}

/// What can hurt, each once.
#[must_use]
pub(crate) fn cautions(judged: &[JudgedThing]) -> Vec<Caution> {
    let mut cautions: Vec<Caution> = Vec::new();
    for &caution in judged.iter().flat_map(|judged| &judged.judgement.cautions) {
        if !cautions.contains(&caution) {
            cautions.push(caution);
        }
    }
    cautions
}

/// What the reader must know.
#[must_use]
pub(crate) fn notes(judged: &[JudgedThing]) -> Vec<Note> {
    let named = |verdict: Verdict| {
        let found = judged.iter().filter(|judged| judged.verdict() == verdict);
        found.map(|judged| judged.name.as_str()).collect::<Vec<_>>().join(", ")
    };
    let mut notes = Vec::new();
    let said = [
        (Verdict::Fail, NoteCode::ThingsFail, "with the floor as planned these do not work as they stand"),
        (Verdict::Ask, NoteCode::MeasuresAsked, "measures that decide are missing for"),
        (Verdict::ConfirmLocally, NoteCode::ConfirmLocally, "confirm locally for"),
    ];
    for (verdict, code, words) in said {
        let names = named(verdict);
        if !names.is_empty() {
            notes.push(Note::new(code, format!("{words}: {names}")));
        }
    }
    for judged in judged.iter().filter(|judged| judged.floor.moved().base() > APART) {
        let by = up(judged.floor.moved());
        notes.push(Note::new(
            NoteCode::ThingAtEdge,
            format!("{} lies {by} outside the floor: it is met at the nearest edge", judged.name),
        ));
    }
    notes
}
