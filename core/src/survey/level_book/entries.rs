//! What is written in the book.

use super::Tolerances;
use crate::quantity::units::FOOT;
use crate::quantity::{Elevation, Length};
use std::marker::PhantomData;

/// The elevation to take for a nail that has none: 100 ft, so that nothing on site lies below zero. Common practice, no
/// source. The nail must be on something that stays.
pub const NAIL_ELEVATION: Elevation =
    Elevation { dimension: PhantomData, units: PhantomData, value: 100.0 * FOOT };

/// A point whose elevation is known before the first reading.
#[derive(Clone, Debug, PartialEq)]
pub struct Benchmark {
    /// Its name in the book.
    pub name: String,
    /// Its elevation above the job datum.
    pub elevation: Elevation,
}

/// A whole book. Names are compared without regard to capitals and outer blanks.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LevelBook {
    /// The known points: where lines start, and where they may close.
    pub benchmarks: Vec<Benchmark>,
    /// The set-ups in the order of the work.
    pub setups: Vec<SetUp>,
    /// How far readings may disagree.
    pub tolerances: Tolerances,
}

/// One place of the instrument.
#[derive(Clone, Debug, PartialEq)]
pub struct SetUp {
    /// The rod on a benchmark or on an earlier turning point.
    pub backsight: Backsight,
    /// Everything read between: slab shots and other points.
    pub sights: Vec<Sight>,
    /// The last sight: a turning point for the next set-up, or a benchmark to close on.
    pub foresight: Option<Sight>,
    /// The backsight point read again before the instrument is moved.
    pub close: Option<Length>,
}

/// The rod on a point of known elevation.
#[derive(Clone, Debug, PartialEq)]
pub struct Backsight {
    /// The name of the point.
    pub point: String,
    /// The reading; none where the book is blank.
    pub rod: Option<Length>,
}

/// The rod on a point whose elevation is wanted.
#[derive(Clone, Debug, PartialEq)]
pub struct Sight {
    /// The name of the point.
    pub point: String,
    /// The reading; none where the book is blank.
    pub rod: Option<Length>,
    /// Whether the point is a shot of the old slab. A turning point is none unless marked so.
    pub slab_shot: bool,
}

impl Benchmark {
    /// A known point.
    #[must_use]
    pub fn new(name: impl Into<String>, elevation: Elevation) -> Self {
        Self { name: name.into(), elevation }
    }
}

impl LevelBook {
    /// The book of one set-up on one benchmark: the usual book of a small floor.
    #[must_use]
    pub fn single(benchmark: Benchmark, rod: Length, sights: Vec<Sight>, close: Option<Length>) -> Self {
        let setup = SetUp { sights, close, ..SetUp::on(benchmark.name.clone(), rod) };
        Self { benchmarks: vec![benchmark], setups: vec![setup], tolerances: Tolerances::default() }
    }
}

impl SetUp {
    /// A set-up with its backsight, nothing else read yet.
    #[must_use]
    pub fn on(point: impl Into<String>, rod: Length) -> Self {
        let backsight = Backsight { point: point.into(), rod: Some(rod) };
        Self { backsight, sights: Vec::new(), foresight: None, close: None }
    }

    /// The same with a foresight on a turning point or a benchmark.
    #[must_use]
    pub fn to(mut self, point: impl Into<String>, rod: Length) -> Self {
        self.foresight = Some(Sight::point(point, rod));
        self
    }
}

impl Sight {
    /// A shot of the old slab.
    #[must_use]
    pub fn shot(point: impl Into<String>, rod: Length) -> Self {
        Self { point: point.into(), rod: Some(rod), slab_shot: true }
    }

    /// Any other point: a sill, a walk, a turning point.
    #[must_use]
    pub fn point(point: impl Into<String>, rod: Length) -> Self {
        Self { point: point.into(), rod: Some(rod), slab_shot: false }
    }
}
