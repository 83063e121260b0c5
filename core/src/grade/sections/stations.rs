//! The section: stations, gaps, areas, extremes.

use super::PLACE;
use super::along::{Facet, HAIR, Stretch, stretches};
use crate::failure::{Code, Failure, Place, Result, check};
use crate::geometry::{Point, Sum};
use crate::grade::finish::Finish;
use crate::note::{Note, NoteCode};
use crate::quantity::{Area, Elevation, Length, Typed, feet_and_inches, inches};
use crate::survey::Survey;
use crate::survey::outline::Corner;
use crate::survey::surface::{Ground, Locator};

/// Heights at one place that differ by more, in metres, are a step there.
const STEP: f64 = 1e-6;

/// A place on the line where a surface may bend. At a step there are two at one place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Station {
    /// Which unbroken run of the line over the work it is on, counted from 1.
    pub run: usize,
    /// Distance along the line from its start.
    pub distance: Length,
    /// Distance from the left.
    pub x: Length,
    /// Distance from the front.
    pub y: Length,
    /// Height of the old slab.
    pub old_slab: Elevation,
    /// Height of the finish.
    pub finish: Elevation,
    /// Finish less old slab.
    pub thickness: Length,
    /// What is known of the ground after it; at the end of a run, before it.
    pub ground: Ground,
}

/// A stretch of the line outside the work.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gap {
    /// Where it starts, along the line.
    pub from: Length,
    /// Where it ends.
    pub to: Length,
}

/// A thickness on the line and where it is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SectionAt {
    /// The thickness.
    pub thickness: Length,
    /// Distance along the line.
    pub distance: Length,
    /// Distance from the left.
    pub x: Length,
    /// Distance from the front.
    pub y: Length,
}

/// Old slab and finish along a line.
#[derive(Clone, Debug, PartialEq)]
pub struct Section {
    /// The corners of the line.
    pub line: Vec<Corner>,
    /// The length of the whole line.
    pub length: Length,
    /// How much of it runs over the work.
    pub covered: Length,
    /// Area between old slab and finish, high spots taken off.
    pub net: Area,
    /// Area where the finish is above the old slab.
    pub fill: Area,
    /// Area of old slab above the finish.
    pub high: Area,
    /// Net area over covered length.
    pub mean: Length,
    /// The least thickness, of several the first.
    pub least: SectionAt,
    /// The greatest thickness, of several the first.
    pub greatest: SectionAt,
    /// Where the surfaces may bend, in order.
    pub stations: Vec<Station>,
    /// Where the line is outside the work.
    pub gaps: Vec<Gap>,
}

impl Section {
    /// The section along a line of straight legs.
    ///
    /// # Errors
    /// - `LINE_TOO_SHORT`: fewer than two places apart from one another. Path: `line`.
    /// - `LINE_OUTSIDE`: nowhere over the work. Path: `line`.
    /// - `FACETS_LEAVE_HOLE`: a finish that does not cover the work.
    /// - `NOT_FINITE`, `OUT_OF_RANGE`: a coordinate. Path: `line.x`, `line.y`.
    pub fn along(survey: &Survey, finish: &Finish, line: &[Corner]) -> Result<Self> {
        let places = checked(line)?;
        let laid = finish.laid_over(survey.surface())?;
        let facets = laid.parts().iter();
        let facets = facets.map(|part| Facet { ground: Locator::new(&part.ground), finish: part.plane });
        let facets: Vec<Facet<'_>> = facets.collect();
        let mut course = Course::default();
        for pair in places.windows(2) {
            course.leg(&facets, pair[0], pair[1]);
        }
        course.end();
        course.section(line)
    }

    /// What the reader must know.
    #[must_use]
    pub fn notes(&self) -> Vec<Note> {
        let mut notes = Vec::new();
        if !self.gaps.is_empty() {
            let outside = feet_and_inches(self.length - self.covered, 8);
            let text = format!("{outside} of the line lie outside the work and have no heights");
            notes.push(Note::new(NoteCode::LineLeavesWork, text));
        }
        if self.high.base() > 0.0 {
            let over = inches(-self.least.thickness, 8);
            let text = format!("the old slab stands up to {over} above the finish along the line");
            notes.push(Note::new(NoteCode::HighSpots, text));
        }
        notes
    }
}

/// The places of a line, none at the place of the one before.
fn checked(line: &[Corner]) -> Result<Vec<Point>> {
    let mut places: Vec<Point> = Vec::with_capacity(line.len());
    for (index, corner) in line.iter().enumerate() {
        for (path, value) in [("line.x", corner.x), ("line.y", corner.y)] {
            check(path, value, PLACE).map_err(|failure| failure.at(Place::Index(index)))?;
        }
        if places.last().is_none_or(|last| last.distance(corner.place()) > HAIR) {
            places.push(corner.place());
        }
    }
    if places.len() < 2 {
        let written = match line.len() {
            1 => "1 place".to_owned(),
            count => format!("{count} places, none apart from the others"),
        };
        return Err(Failure::new(Code::LineTooShort, "line")
            .written(written)
            .allowed("at least two places apart from one another")
            .remedy("give the start and the end of the line"));
    }
    Ok(places)
}

/// A section being walked along.
#[derive(Default)]
struct Course {
    /// The length of the legs done.
    done: f64,
    /// Up to where the line was told of, over the work or in a gap.
    reached: f64,
    run: usize,
    stations: Vec<Station>,
    gaps: Vec<Gap>,
    covered: Sum,
    fill: Sum,
    high: Sum,
}

impl Course {
    fn leg(&mut self, facets: &[Facet<'_>], from: Point, to: Point) {
        let length = from.distance(to);
        let at = |distance: f64| {
            let share = distance / length;
            Point::new(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y))
        };
        for stretch in stretches(facets, from, to) {
            let start = self.done + stretch.from;
            if self.run == 0 || start - self.reached > HAIR {
                self.gap(start);
                self.run += 1;
            }
            self.stretch(&stretch, at);
            self.reached = self.done + stretch.to;
        }
        self.done += length;
    }

    /// Notes a gap up to a distance, if there is one.
    fn gap(&mut self, to: f64) {
        if to - self.reached > HAIR {
            self.gaps.push(Gap { from: Length::from_base(self.reached), to: Length::from_base(to) });
        }
    }

    fn end(&mut self) {
        self.gap(self.done);
    }

    fn stretch(&mut self, stretch: &Stretch, at: impl Fn(f64) -> Point) {
        let station = |distance: f64, end: usize| {
            let at = at(distance);
            Station {
                run: self.run,
                distance: Length::from_base(self.done + distance),
                x: Length::from_base(at.x),
                y: Length::from_base(at.y),
                old_slab: Elevation::from_base(stretch.old[end]),
                finish: Elevation::from_base(stretch.finish[end]),
                thickness: Length::from_base(stretch.finish[end] - stretch.old[end]),
                ground: stretch.ground,
            }
        };
        let (start, end) = (station(stretch.from, 0), station(stretch.to, 1));
        match self.stations.last_mut().filter(|last| last.run == start.run && is_one(last, &start)) {
            Some(last) => last.ground = stretch.ground,
            None => self.stations.push(start),
        }
        let length = stretch.to - stretch.from;
        let (fill, high) = areas(length, start.thickness.base(), end.thickness.base());
        self.covered.add(length);
        self.fill.add(fill);
        self.high.add(high);
        self.stations.push(end);
    }

    fn section(self, line: &[Corner]) -> Result<Section> {
        let (Some(least), Some(greatest)) = (extreme(&self.stations, 1.0), extreme(&self.stations, -1.0))
        else {
            return Err(Failure::new(Code::LineOutside, "line")
                .written("no place of the line is over the work")
                .allowed("a line that runs over the work")
                .remedy("check the places of the line"));
        };
        let (covered, fill, high) = (self.covered.value(), self.fill.value(), self.high.value());
        Ok(Section {
            line: line.to_vec(),
            length: Length::from_base(self.done),
            covered: Length::from_base(covered),
            net: Area::from_base(fill - high),
            fill: Area::from_base(fill),
            high: Area::from_base(high),
            mean: Length::from_base((fill - high) / covered),
            least,
            greatest,
            stations: self.stations,
            gaps: self.gaps,
        })
    }
}

/// Whether two stations that follow one another stand at one place and no step is between them.
fn is_one(a: &Station, b: &Station) -> bool {
    let apart = |a: Elevation, b: Elevation| (a.base() - b.base()).abs() > STEP;
    !apart(a.old_slab, b.old_slab) && !apart(a.finish, b.finish)
}

/// The area above and the area below nothing, both from 0 up, under a thickness that is straight from end to end.
fn areas(length: f64, from: f64, to: f64) -> (f64, f64) {
    let net = 0.5 * length * (from + to);
    if from >= 0.0 && to >= 0.0 {
        return (net, 0.0);
    }
    if from <= 0.0 && to <= 0.0 {
        return (0.0, -net);
    }
    let (above, below) = (from.max(to), from.min(to));
    let share = above / (above - below);
    (0.5 * length * share * above, -0.5 * length * (1.0 - share) * below)
}

/// The first station with the least thickness, or with `sense` -1 the greatest; those within rounding are one.
fn extreme(stations: &[Station], sense: f64) -> Option<SectionAt> {
    let value = |station: &Station| sense * station.thickness.base();
    let least = stations.iter().map(value).fold(f64::INFINITY, f64::min);
    let first = stations.iter().find(|station| value(station) <= least + 1e-9)?;
    let Station { distance, x, y, .. } = *first;
    Some(SectionAt { thickness: Length::from_base(sense * least), distance, x, y })
}
