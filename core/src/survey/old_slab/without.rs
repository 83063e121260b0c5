//! The old slab without some of its shots: only where the caller names them.

use super::{Settings, Shots, Survey};
use crate::failure::{Code, Failure, Place, Result, nearest};
use crate::note::{Note, NoteCode};
use crate::survey::outline::Outline;
use std::collections::HashMap;

impl Shots {
    /// The number of a shot by its name, without regard to capitals.
    ///
    /// # Errors
    /// `SHOT_UNKNOWN`, with the nearest name.
    pub fn number(&self, name: &str) -> Result<usize> {
        let wanted = name.trim();
        let shots = || self.each().map(|(shot, ..)| shot);
        if let Some(shot) = shots().find(|&shot| self.name(shot).trim().eq_ignore_ascii_case(wanted)) {
            return Ok(shot);
        }
        let names: Vec<String> = shots().map(|shot| self.name(shot)).collect();
        let remedy = match nearest(wanted, names.iter().map(String::as_str)) {
            Some(near) => format!("did you mean {near}?"),
            None => "see the names in the table of shots".to_owned(),
        };
        Err(Failure::new(Code::ShotUnknown, "")
            .written(format!("`{wanted}`"))
            .allowed("the name of a shot of this survey")
            .remedy(remedy))
    }

    /// The numbers of shots by their names.
    fn numbers<Name: AsRef<str>>(&self, names: &[Name]) -> Result<Vec<usize>> {
        if names.is_empty() {
            return Ok(Vec::new());
        }
        let key = |name: &str| name.trim().to_ascii_lowercase();
        // The first of a name counts, as it does where one is looked up alone.
        let mut known = HashMap::new();
        self.each().for_each(|(shot, ..)| {
            known.entry(key(&self.name(shot))).or_insert(shot);
        });
        let number = |(index, name): (usize, &Name)| match known.get(&key(name.as_ref())) {
            Some(&shot) => Ok(shot),
            None => self.number(name.as_ref()).map_err(|failure| failure.at(Place::Index(index))),
        };
        names.iter().enumerate().map(number).collect()
    }

    /// Which shots were left out.
    fn note(&self, left_out: &[usize]) -> Note {
        let names: Vec<String> = left_out.iter().map(|&shot| self.name(shot)).collect();
        Note::new(NoteCode::LeftOut, format!("left out on the caller's word: {}", names.join(", ")))
    }

    /// These shots without some, the others keeping their names.
    pub(crate) fn without(&self, left_out: &[usize]) -> Self {
        let mut is_out = vec![false; left_out.iter().max().map_or(0, |last| last + 1)];
        left_out.iter().for_each(|&shot| is_out[shot] = true);
        let stays = |shot: usize| !is_out.get(shot).is_some_and(|out| *out);
        match self {
            Self::Grid(grid) => {
                let mut grid = grid.clone();
                for (shot, height) in grid.heights.iter_mut().enumerate() {
                    if !stays(shot) {
                        *height = None;
                    }
                }
                Self::Grid(grid)
            }
            Self::Scattered(marks) => {
                let kept = || (0..marks.shots.len()).filter(|&shot| stays(shot));
                Self::Scattered(super::Marks {
                    shots: kept().filter_map(|shot| marks.shots.get(shot).copied()).collect(),
                    names: kept().map(|shot| Some(self.name(shot))).collect(),
                })
            }
            // The faces that have such a point as a corner go with it: what they covered is not surveyed.
            Self::Faces(tin) => {
                let mut tin = tin.clone();
                tin.faces.retain(|face| face.iter().all(|&point| stays(point as usize)));
                Self::Faces(tin)
            }
        }
    }
}

impl Survey {
    /// The same slab without some shots, by their number. What it says of the shots is said anew.
    pub(crate) fn without(&self, left_out: &[usize], beyond_allowed: bool) -> Result<Self> {
        let mut settings = *self.settings();
        settings.beyond_allowed |= beyond_allowed;
        let mut survey = Self::new(self.outline.clone(), self.shots.without(left_out), settings)?;
        let of_shots = [
            NoteCode::BeyondShots,
            NoteCode::MuchBeyondShots,
            NoteCode::Unsurveyed,
            NoteCode::PlacesMerged,
            NoteCode::ShotNearOutline,
            NoteCode::EdgeSplit,
            NoteCode::PointsUnused,
            NoteCode::Step,
        ];
        let kept = self.notes.iter().filter(|note| !of_shots.contains(&note.code)).cloned();
        survey.notes.splice(0..0, kept);
        survey.book.clone_from(&self.book);
        survey.squareness.clone_from(&self.squareness);
        self.changes().iter().try_fold(survey, |survey, changed| survey.after(changed.change.clone()))
    }

    /// The same slab without the shots named. A note says which they were.
    ///
    /// # Errors
    /// `SHOT_UNKNOWN`, and whatever the shots that are left are refused for.
    pub fn without_named<Name: AsRef<str>>(&self, names: &[Name]) -> Result<Self> {
        let numbers = self.shots.numbers(names)?;
        if numbers.is_empty() {
            return Ok(self.clone());
        }
        let mut survey = self.without(&numbers, false)?;
        survey.notes.push(self.shots.note(&numbers));
        Ok(survey)
    }
}

/// Shots, and which of them the caller wants left out.
pub(super) struct LeftOut {
    shots: Shots,
    numbers: Vec<usize>,
}

impl LeftOut {
    /// These shots without those named in `leave_out`.
    pub(super) fn of(shots: Shots, names: &[String]) -> Result<Self> {
        Self { shots, numbers: Vec::new() }.and(names)
    }

    /// Without these as well.
    pub(super) fn and(mut self, names: &[String]) -> Result<Self> {
        let numbers = self.shots.numbers(names).map_err(|failure| failure.under("leave_out"))?;
        self.numbers.extend(numbers);
        Ok(self)
    }

    /// The slab through those that are left. A failure tells the number that the shot has among all.
    pub(super) fn survey(self, outline: Outline, settings: Settings) -> Result<Survey> {
        if self.numbers.is_empty() {
            return Survey::new(outline, self.shots, settings);
        }
        let note = self.shots.note(&self.numbers);
        let left = self.shots.without(&self.numbers);
        let survey = Survey::new(outline, left, settings).map_err(|mut failure| {
            if let (Shots::Scattered(marks), "", Place::Index(index)) =
                (&self.shots, failure.path.as_str(), failure.place)
            {
                let mut kept = (0..marks.shots.len()).filter(|shot| !self.numbers.contains(shot));
                failure.place = kept.nth(index).map_or(Place::Unknown, Place::Index);
            }
            failure
        });
        let mut survey = survey?;
        survey.notes.push(note);
        Ok(survey)
    }
}
