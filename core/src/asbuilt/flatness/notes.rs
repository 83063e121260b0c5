//! What the reader of a floor's numbers must know.

use super::floor::{Floor, FloorLine};
use super::layout::{BETWEEN_LINES, EDGE_STRIP};
use super::line::metric;
use super::profile::Spacing;
use crate::geometry::Region;
use crate::note::{Note, NoteCode};
use crate::quantity::{Length, Typed, feet_and_inches};

/// Lengths equal within a hair are equal.
const HAIR: f64 = 1e-6;

impl Floor {
    /// What the reader must know; with the plan edge of the work, also which lines run nearer to it than the standard has them.
    #[must_use]
    pub fn notes(&self, work: Option<&Region>) -> Vec<Note> {
        let mut notes = Vec::new();
        if self.spacing == Spacing::Millimetres300 {
            notes.push(metric());
        }
        if self.falls {
            let text = "the floor falls: levelness is not used on it, only flatness";
            notes.push(Note::new(NoteCode::LevelnessOnSlope, text));
        }
        let perfect = |line: &FloorLine| {
            [line.flatness.ff, line.flatness.fl].into_iter().flatten().any(|number| number.number().is_none())
        };
        self.name_lines(
            &mut notes,
            perfect,
            NoteCode::PerfectLine,
            "no finite F-number, for they are straight or level",
        );
        let short = |line: &FloorLine| !line.flatness.is_standard();
        self.name_lines(
            &mut notes,
            short,
            NoteCode::ReadingsTooFew,
            "under the 12 readings (11 ft, 3.3 m) of a line of the standard",
        );
        let bent = |line: &FloorLine| line.left_out > 0;
        self.name_lines(&mut notes, bent, NoteCode::PlanBends, "readings over a bend of the plan left out");
        notes.extend(self.few_readings());
        notes.extend(self.layout(work));
        notes
    }

    fn name_lines(
        &self,
        notes: &mut Vec<Note>,
        which: impl Fn(&FloorLine) -> bool,
        code: NoteCode,
        what: &str,
    ) {
        let names: Vec<&str> =
            self.lines.iter().filter(|line| which(line)).map(|line| line.name.as_str()).collect();
        if !names.is_empty() {
            notes.push(Note::new(code, format!("{what}: {}", listed(&names))));
        }
    }

    fn few_readings(&self) -> impl Iterator<Item = Note> + '_ {
        self.sections.iter().filter_map(|section| {
            let least = section.least_z.filter(|&least| section.z < least)?;
            let name = section.name.as_deref().unwrap_or("the floor");
            let text = format!("{name}: {} rises over 10 ft, its area asks for {least}", section.z);
            Some(Note::new(NoteCode::ReadingsTooFew, text))
        })
    }

    fn layout(&self, work: Option<&Region>) -> Vec<Note> {
        let mut near: Vec<&str> = Vec::new();
        let mut beside: Vec<&str> = Vec::new();
        for (number, line) in self.lines.iter().enumerate() {
            let Some(place) = &line.place else { continue };
            let from_edge = |work: &Region| place.edge_distance(self.spacing, line.flatness.readings, work);
            if work.is_some_and(|work| from_edge(work) < EDGE_STRIP - HAIR) {
                near.push(&line.name);
            }
            let length = line.flatness.length.base();
            let others =
                self.lines.iter().take(number).filter_map(|other| Some((other.place.as_ref()?, other)));
            let mut apart = others
                .filter_map(|(of_other, other)| place.beside(length, of_other, other.flatness.length.base()));
            if apart.any(|apart| apart < BETWEEN_LINES - HAIR) {
                beside.push(&line.name);
            }
        }
        let said = |code, lines: &[&str], what: &str, limit: f64| {
            let limit = feet_and_inches(Length::from_base(limit), 8);
            let text = format!("{what} {limit}, nearer than the standard has it: {}", listed(lines));
            (!lines.is_empty()).then(|| Note::new(code, text))
        };
        let edge = said(NoteCode::ProfileLayout, &near, "readings within", EDGE_STRIP);
        let lines = said(NoteCode::ProfileLayout, &beside, "parallel lines within", BETWEEN_LINES);
        edge.into_iter().chain(lines).collect()
    }
}

/// Names, the first five of many.
fn listed(names: &[&str]) -> String {
    const SHOWN: usize = 5;
    let shown = names.iter().take(SHOWN).copied().collect::<Vec<_>>().join(", ");
    match names.len().saturating_sub(SHOWN) {
        0 => shown,
        more => format!("{shown} and {more} more"),
    }
}
