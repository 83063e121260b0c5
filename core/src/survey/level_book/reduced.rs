//! What the book says once it is reduced.

use super::Benchmark;
use crate::quantity::{Elevation, Length};
use crate::survey::tolerance::Tolerance;

/// A reduced book.
#[derive(Clone, Debug, PartialEq)]
pub struct ReducedBook {
    /// The known points, as given.
    pub benchmarks: Vec<Benchmark>,
    /// Every set-up, in the order of the book.
    pub setups: Vec<ReducedSetUp>,
    /// Every sight and foresight, in the order of the book.
    pub points: Vec<ReducedPoint>,
    /// The lines of levels, each with its checks.
    pub lines: Vec<Line>,
    /// The tolerances that judged the book, and which of them were taken because none was given.
    pub tolerances: Vec<Tolerance>,
    /// Benchmarks that no reading touched: a misspelt name leaves one here and its line open.
    pub unread: Vec<String>,
}

/// One set-up, reduced.
#[derive(Clone, Debug, PartialEq)]
pub struct ReducedSetUp {
    /// The point of the backsight.
    pub backsight_point: String,
    /// The backsight that was used: the reading, or the mean of it and the closing reading.
    pub backsight: Length,
    /// Height of instrument as booked: elevation of the backsight point before any correction, plus the backsight.
    pub height_booked: Elevation,
    /// Height of instrument after the misclosure was shared out; elevations and rod marks hang on it.
    pub height: Elevation,
    /// The closing check, where the backsight point was read again.
    pub recheck: Option<Recheck>,
    /// The line of levels it belongs to: an index into [`ReducedBook::lines`].
    pub line: usize,
    /// Its number within that line, the first being 1.
    pub number_in_line: usize,
}

/// A backsight point read again before the instrument was moved.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Recheck {
    /// The first reading.
    pub first: Length,
    /// The closing reading.
    pub close: Length,
    /// Closing less first reading: positive where the line of sight rose or the point sank.
    pub difference: Length,
}

/// What a point was in the book.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PointKind {
    /// Read between backsight and foresight.
    Intermediate,
    /// A foresight on a point that was not known before.
    TurningPoint,
    /// A foresight on a benchmark: the line closes on it.
    Benchmark,
}

/// One point with its elevation.
#[derive(Clone, Debug, PartialEq)]
pub struct ReducedPoint {
    /// Its name as written.
    pub name: String,
    /// What it was in the book.
    pub kind: PointKind,
    /// Whether it is a shot of the old slab.
    pub slab_shot: bool,
    /// The set-up that read it: an index into [`ReducedBook::setups`]. Points of one set-up share its error.
    pub setup: usize,
    /// The reading.
    pub rod: Length,
    /// The elevation before any correction.
    pub booked: Elevation,
    /// The share of the misclosure taken off, with its sign.
    pub correction: Length,
    /// The elevation: booked plus correction; of a benchmark the known elevation.
    pub elevation: Elevation,
}

/// A line of levels: set-ups joined by turning points.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// Where it starts: a benchmark, or a turning point of an earlier line.
    pub start: String,
    /// The elevation it starts from.
    pub start_elevation: Elevation,
    /// Its set-ups in order: indices into [`ReducedBook::setups`].
    pub setups: Vec<usize>,
    /// Sums over the line, where its last set-up has a foresight.
    pub page: Option<PageCheck>,
    /// How it closes; none where it ends on a point that was not known. Nothing then checks its turning points.
    pub closure: Option<Closure>,
}

/// The page check of a line: the sums must agree with the elevations whatever the readings are worth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PageCheck {
    /// Sum of the backsights used.
    pub backsights: Length,
    /// Sum of the foresights.
    pub foresights: Length,
    /// Last booked elevation less the first.
    pub rise: Length,
}

/// A line that ends on a benchmark.
#[derive(Clone, Debug, PartialEq)]
pub struct Closure {
    /// The benchmark.
    pub on: String,
    /// Its known elevation.
    pub known: Elevation,
    /// The elevation the line found.
    pub found: Elevation,
    /// Found less known.
    pub misclosure: Length,
    /// How far it was allowed to be off.
    pub tolerance: Length,
}

impl ReducedBook {
    /// The shots of the old slab, in the order of the book.
    pub fn slab_shots(&self) -> impl Iterator<Item = &ReducedPoint> {
        self.points.iter().filter(|point| point.slab_shot)
    }

    /// The elevation of a point or a benchmark, by its name without regard to capitals.
    #[must_use]
    pub fn elevation_of(&self, name: &str) -> Option<Elevation> {
        let wanted = super::names::key(name);
        let known =
            self.benchmarks.iter().find(|b| super::names::key(&b.name) == wanted).map(|b| b.elevation);
        known.or_else(|| {
            let read = self.points.iter().find(|p| super::names::key(&p.name) == wanted);
            read.map(|point| point.elevation)
        })
    }

    /// The tolerances that were taken because the book gave none.
    pub fn taken(&self) -> impl Iterator<Item = &Tolerance> {
        self.tolerances.iter().filter(|tolerance| tolerance.taken.is_some())
    }
}
