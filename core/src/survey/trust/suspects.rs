//! The suspects of a level book, each with what may have happened and what it would change.

use super::floor::deviation_of_words;
use super::graduation::Graduation;
use super::neighbours::Neighbours;
use super::rows::{RowMistake, row_mistake};
use super::search::{Found, limit, search};
use super::slips::{NAMED_WITHIN, Named, SlipKind, name};
use super::{Floor, said};
use crate::note::{Note, NoteCode};
use crate::quantity::{Elevation, Length, Typed, Volume};
use crate::survey::Survey;
use crate::survey::fixed::inches;
use crate::survey::old_slab::Shots;
use std::collections::HashMap;

/// The least slip that is looked for.
pub const LEAST_SLIP: Length = inches(1.0);

/// The fewest shots that can vouch for one another.
pub const FEWEST: usize = 6;

/// Up to here an old slab may really lie so: an edge settled by an inch and more, a hollow of 3/4 in. Common practice, no source.
const REAL_HOLLOW: Length = inches(2.0);

/// The work that leaving suspects out one by one may take, in shots triangulated anew.
const SHOTS_AGAIN: usize = 200_000;

crate::choice! {
    /// What to think of a suspect.
    pub enum Verdict {
        /// It may be wrong, or the slab may really lie so.
        LookAgain = "look_again",
        /// A usual slip explains it.
        LikelySlip = "likely_slip",
        /// It is far off, and no usual slip explains it.
        Unexplained = "unexplained",
    }
}

/// A shot that does not go with its neighbours.
#[derive(Clone, Debug, PartialEq)]
pub struct Suspect {
    /// Its number in the survey.
    pub shot: usize,
    /// Its name.
    pub name: String,
    /// Distance from the left and from the front.
    pub at: [Length; 2],
    /// Its height as booked.
    pub elevation: Elevation,
    /// Its reading, where the survey stands on rods.
    pub rod: Option<Length>,
    /// What its neighbours say.
    pub predicted: Elevation,
    /// Booked less predicted: above zero where it stands high.
    pub off: Length,
    /// The standard deviation of that on this floor.
    pub deviation: Length,
    /// What to think of it.
    pub verdict: Verdict,
    /// What may have happened.
    pub kind: SlipKind,
    /// What else, where it is nearly as likely.
    pub second: Option<SlipKind>,
    /// The shot it was swapped with.
    pub with: Option<String>,
    /// The height it would have.
    pub proposed: Option<Elevation>,
    /// The reading it would have.
    pub proposed_rod: Option<Length>,
    /// What the net volume of concrete under a given finish changes by with the height proposed.
    pub more_if_corrected: Option<Volume>,
    /// What it changes by where the shot is left out.
    pub more_without: Option<Volume>,
    /// A sentence for the crew.
    pub said: String,
}

/// What was found in a book.
#[derive(Clone, Debug, PartialEq)]
pub struct Suspects {
    /// The suspects, the farthest off first.
    pub list: Vec<Suspect>,
    /// How many shots were judged.
    pub judged: usize,
    /// The standard deviation that each shot of this floor has for itself: reading, texture and small waves.
    pub roughness: Length,
    /// How the rod is graduated.
    pub graduation: Graduation,
    /// What the reader must know.
    pub notes: Vec<Note>,
}

/// The shots that do not go with their neighbours, with the slips they look like. Nothing is changed.
///
/// Every shot is predicted from the others; the difference is held against a roughness found robustly from the whole floor.
/// On the thousand invented books of the tests (12 to 60 shots; laser and optical rods; trowelled, broomed and rough) every slip
/// of 6 in and more is found and its kind is one of the two named, the least slip of the rod in more than nine of ten. Without
/// a slip three of ten books name some shot that is right: one in six on a trowelled or broomed floor, one in two on a rough
/// one (counted over the first 200).
///
/// `graduation` is how the rod is graduated; where none is given the readings themselves tell.
#[must_use]
pub fn suspects(survey: &Survey, graduation: Option<Graduation>) -> Suspects {
    let floor = Floor::of(survey);
    let rods = rods(survey, &floor);
    let graduation = graduation.unwrap_or_else(|| graduation_of(&floor, &rods));
    let words = deviation_of_words(survey);
    let mut result = Suspects {
        list: Vec::new(),
        judged: floor.heights.len(),
        roughness: Length::from_base(words),
        graduation,
        notes: Vec::new(),
    };
    if floor.heights.len() < FEWEST {
        let text = format!("{} shots cannot vouch for one another: {FEWEST} are wanted", floor.heights.len());
        result.notes.push(Note::new(NoteCode::TooFewToJudge, text));
        result.judged = 0;
        return result;
    }
    let neighbours = Neighbours::of(&floor.places);
    let slip = LEAST_SLIP.base();
    let first = search(&floor, &floor.heights, &neighbours, words, slip);
    let strange = first.gave_up || first.aside.len() > 1 || first.waves >= 2 || first.scale.own > 1.5 * words;
    let in_rows =
        if strange { row_mistake(survey, &floor, &neighbours, words, graduation, &first) } else { None };
    let (mistake, found) = match in_rows {
        Some((mistake, found)) => (Some(mistake), found),
        None => (None, first),
    };
    result.roughness = Length::from_base(found.scale.own);
    if found.gave_up {
        let text =
            "more than a third of the shots do not go with their neighbours: check the book against the slab";
        result.notes.push(Note::new(NoteCode::BookInDoubt, text));
    }
    let judge =
        Judge { survey, floor: &floor, rods: &rods, graduation, found: &found, mistake: mistake.as_ref() };
    result.list = judge.suspects();
    weigh(survey, &mut result.list);
    result
}

/// The readings of the places, where the survey stands on rods.
fn rods(survey: &Survey, floor: &Floor) -> Vec<Option<Length>> {
    let Some(book) = survey.book() else { return vec![None; floor.shots.len()] };
    let by_name: HashMap<&str, Length> =
        book.slab_shots().map(|point| (point.name.as_str(), point.rod)).collect();
    floor.shots.iter().map(|&shot| by_name.get(survey.shots().name(shot).as_str()).copied()).collect()
}

/// The rod that the readings tell; elevations tell it by their differences, as from one set-up.
fn graduation_of(floor: &Floor, rods: &[Option<Length>]) -> Graduation {
    let read: Vec<f64> = rods.iter().flatten().map(|rod| rod.base()).collect();
    if read.len() == floor.heights.len() {
        return Graduation::of(read.iter().copied());
    }
    let first = floor.heights.first().copied().unwrap_or(0.0);
    Graduation::of(floor.heights.iter().map(|height| height - first))
}

struct Judge<'a> {
    survey: &'a Survey,
    floor: &'a Floor,
    rods: &'a [Option<Length>],
    graduation: Graduation,
    found: &'a Found,
    mistake: Option<&'a RowMistake>,
}

impl Judge<'_> {
    fn suspects(&self) -> Vec<Suspect> {
        let named: Vec<(usize, Named)> =
            self.found.aside.iter().map(|&place| (place, self.named(place))).collect();
        let swapped = self.swapped(&named);
        let mut list: Vec<(f64, Suspect)> = Vec::new();
        for (place, named) in named {
            let with = swapped.iter().find(|pair| pair.contains(&place));
            let with = with.map(|pair| if pair[0] == place { pair[1] } else { pair[0] });
            list.push((self.found.residuals[place].off.abs(), self.suspect(place, named, with)));
        }
        if let Some(mistake) = self.mistake {
            for place in self.in_rows(mistake) {
                list.push((f64::INFINITY, self.of_row(place, mistake)));
            }
        }
        list.sort_by(|a, b| b.0.total_cmp(&a.0).then(a.1.shot.cmp(&b.1.shot)));
        list.into_iter().map(|(_, suspect)| suspect).collect()
    }

    /// The places whose height a mistake in rows changed, but for those that are suspects of their own.
    fn in_rows(&self, mistake: &RowMistake) -> Vec<usize> {
        let changed = (0..self.floor.heights.len()).filter(|&n| mistake.heights[n] != self.floor.heights[n]);
        changed.filter(|place| !self.found.aside.contains(place)).collect()
    }

    fn height(&self, place: usize) -> f64 {
        self.mistake.map_or(self.floor.heights[place], |mistake| mistake.heights[place])
    }

    fn predicted(&self, place: usize) -> f64 {
        self.height(place) - self.found.residuals[place].off
    }

    /// The slip one place looks like by itself.
    fn named(&self, place: usize) -> Named {
        let (off, deviation) = (self.found.residuals[place].off, self.found.deviation(place));
        let mut named = name(off, deviation, self.graduation);
        let turned = ((-self.height(place) - self.predicted(place)) / deviation).powi(2);
        if self.survey.book().is_none() && turned < NAMED_WITHIN * NAMED_WITHIN {
            // A rod has no sign; an elevation near a datum of zero may have lost it.
            match named.kind {
                SlipKind::Unusual => named = Named { kind: SlipKind::Sign, misfit: turned, second: None },
                _ => named.second = named.second.or(Some(SlipKind::Sign)),
            }
        }
        named
    }

    /// The pairs of suspects that go with their neighbours once their readings are swapped: on a grid in one row or column.
    fn swapped(&self, named: &[(usize, Named)]) -> Vec<[usize; 2]> {
        /// Two slips at once are so much rarer than one swap, as a difference of squared deviations.
        const ONE_FOR_TWO: f64 = 6.0;
        let mut pairs: Vec<(f64, [usize; 2])> = Vec::new();
        for (index, (first, of_first)) in named.iter().enumerate() {
            for (second, of_second) in named.iter().skip(index + 1) {
                let misfit = self.misfit_of(*first, self.height(*second))
                    + self.misfit_of(*second, self.height(*first));
                let goes = [(*first, *second), (*second, *first)].into_iter().all(|(place, from)| {
                    (self.height(from) - self.predicted(place)).abs()
                        <= limit(self.found.deviation(place), LEAST_SLIP.base())
                });
                if goes
                    && self.in_line(*first, *second)
                    && misfit < of_first.misfit + of_second.misfit + ONE_FOR_TWO
                {
                    pairs.push((misfit, [*first, *second]));
                }
            }
        }
        pairs.sort_by(|a, b| a.0.total_cmp(&b.0));
        let mut chosen: Vec<[usize; 2]> = Vec::new();
        for (_, pair) in pairs {
            if !chosen.iter().flatten().any(|place| pair.contains(place)) {
                chosen.push(pair);
            }
        }
        chosen
    }

    fn misfit_of(&self, place: usize, height: f64) -> f64 {
        ((height - self.predicted(place)) / self.found.deviation(place)).powi(2)
    }

    fn in_line(&self, first: usize, second: usize) -> bool {
        let Shots::Grid(grid) = self.survey.shots() else { return true };
        let columns = grid.columns.len().max(1);
        let (a, b) = (self.floor.shots[first], self.floor.shots[second]);
        a / columns == b / columns || a % columns == b % columns
    }

    fn suspect(&self, place: usize, named: Named, with: Option<usize>) -> Suspect {
        let off = self.found.residuals[place].off;
        let kind = if with.is_some() { SlipKind::Swapped } else { named.kind };
        let proposed = match (with, kind, kind.amount()) {
            (Some(other), ..) => Some(self.height(other)),
            (_, SlipKind::Sign, _) => Some(-self.height(place)),
            (.., Some(amount)) => Some(self.height(place) - amount.base().copysign(off)),
            _ => None,
        };
        let verdict = match kind {
            _ if off.abs() < REAL_HOLLOW.base() && with.is_none() => Verdict::LookAgain,
            SlipKind::Unusual => Verdict::Unexplained,
            _ => Verdict::LikelySlip,
        };
        let second = if with.is_some() { None } else { named.second };
        let with = with.map(|other| self.survey.shots().name(self.floor.shots[other]));
        self.made(place, verdict, kind, second, with, proposed)
    }

    fn of_row(&self, place: usize, mistake: &RowMistake) -> Suspect {
        let least = mistake.amount.and_then(SlipKind::amount).map_or(f64::INFINITY, Typed::base);
        let verdict = if least < REAL_HOLLOW.base() { Verdict::LookAgain } else { Verdict::LikelySlip };
        let rows: Vec<String> =
            mistake.rows.iter().map(|&row| crate::survey::names::row_letters(row as u32)).collect();
        let rows = Some(rows.join(" and "));
        self.made(place, verdict, mistake.kind, mistake.amount, rows, Some(mistake.heights[place]))
    }

    fn made(
        &self,
        place: usize,
        verdict: Verdict,
        kind: SlipKind,
        second: Option<SlipKind>,
        with: Option<String>,
        proposed: Option<f64>,
    ) -> Suspect {
        let (shot, booked, rod) = (self.floor.shots[place], self.floor.heights[place], self.rods[place]);
        let at = self.floor.places[place];
        let predicted = self.predicted(place);
        let mut suspect = Suspect {
            shot,
            name: self.survey.shots().name(shot),
            at: [Length::from_base(at.x), Length::from_base(at.y)],
            elevation: Elevation::from_base(booked),
            rod,
            predicted: Elevation::from_base(predicted),
            off: Length::from_base(booked - predicted),
            deviation: Length::from_base(self.found.deviation(place)),
            verdict,
            kind,
            second,
            with,
            proposed: proposed.map(Elevation::from_base),
            proposed_rod: rod
                .zip(proposed)
                .map(|(rod, height)| Length::from_base(rod.base() + booked - height)),
            more_if_corrected: None,
            more_without: None,
            said: String::new(),
        };
        suspect.said = said::sentence(&suspect, self.graduation);
        suspect
    }
}

/// Works out what each suspect does to the volume. Under a finish that stays, concrete is added as the old slab goes down.
fn weigh(survey: &Survey, list: &mut [Suspect]) {
    if list.is_empty() {
        return;
    }
    let whole = survey.surface().whole();
    let areas = survey.surface().tributary_areas(whole);
    let under = |survey: &Survey| survey.surface().whole().integrals().height;
    let (as_booked, again) = (under(survey), SHOTS_AGAIN / survey.shots().count().max(1));
    for (number, suspect) in list.iter_mut().enumerate() {
        suspect.more_if_corrected = suspect.proposed.and_then(|proposed| {
            let area = areas.get(suspect.shot)?;
            Some(Volume::from_base(area * (suspect.elevation.base() - proposed.base())))
        });
        if number < again {
            let without = survey.without(&[suspect.shot], true).ok();
            suspect.more_without = without.map(|without| Volume::from_base(as_booked - under(&without)));
        }
    }
}
