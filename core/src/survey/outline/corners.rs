//! The outline itself: corners, runs with names, holes.

use super::refusal::region_refusal;
use crate::failure::{Code, Failure, Result, check};
use crate::geometry::{Point, Region, RingId, RunId};
use crate::quantity::{Length, Range, Typed};

/// A corner in plan.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Corner {
    /// Along the first plan axis.
    pub x: Length,
    /// Along the second, a quarter turn to the left of the first.
    pub y: Length,
}

/// A hole in the work: a column, a pit, a floor drain's frame.
#[derive(Clone, Debug, PartialEq)]
pub struct Hole {
    /// Its name.
    pub name: String,
    /// Its corners in order, either way round.
    pub corners: Vec<Corner>,
}

/// A straight piece of the plan edge, from one corner to the next as they were given.
#[derive(Clone, Debug, PartialEq)]
pub struct Run {
    name: String,
    id: RunId,
    from: Corner,
    to: Corner,
}

/// The plan edge of the work: simple, of some area, its holes inside and apart.
#[derive(Clone, Debug, PartialEq)]
pub struct Outline {
    corners: Vec<Corner>,
    holes: Vec<Hole>,
    runs: Vec<Run>,
    region: Region,
}

impl Corner {
    /// The corner at x and y.
    #[must_use]
    pub const fn new(x: Length, y: Length) -> Self {
        Self { x, y }
    }

    /// The place of it.
    #[must_use]
    pub fn place(self) -> Point {
        Point::new(self.x.base(), self.y.base())
    }

    /// How far it is to another corner.
    #[must_use]
    pub fn distance(self, other: Self) -> Length {
        Length::from_base(self.place().distance(other.place()))
    }
}

impl Run {
    pub(super) const fn new(name: String, id: RunId, from: Corner, to: Corner) -> Self {
        Self { name, id, from, to }
    }

    /// Its name: as given, or `side 1`, `side 2` and so on; of a hole `column side 1` and so on.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }

    /// Its place in the region.
    #[must_use]
    pub const fn id(&self) -> RunId {
        self.id
    }

    /// The corner it starts from, as given.
    #[must_use]
    pub const fn from(&self) -> Corner {
        self.from
    }

    /// The corner it ends at, as given.
    #[must_use]
    pub const fn to(&self) -> Corner {
        self.to
    }

    /// Its length.
    #[must_use]
    pub fn length(&self) -> Length {
        self.from.distance(self.to)
    }

    /// The place so far along it from the corner it starts at.
    ///
    /// # Errors
    /// `OUT_OF_RANGE`, `NOT_FINITE`: before its start or past its end. Path: `along`.
    pub fn at(&self, along: Length) -> Result<Corner> {
        let length = self.length();
        check("along", along, Range::closed(0.0, length.base())).map_err(|failure| {
            failure.remedy(format!("measure along `{}` from its first corner", self.name))
        })?;
        let share = along.base() / length.base();
        let between = |from: Length, to: Length| from + (to - from) * share;
        Ok(Corner::new(between(self.from.x, self.to.x), between(self.from.y, self.to.y)))
    }
}

impl Outline {
    /// The outline with these corners in order, either way round. The run from each corner to the next carries the name at
    /// the corner's place in `names`; an empty list leaves all of them `side 1`, `side 2` and so on. Neighbouring runs may
    /// share a name and are then one edge.
    ///
    /// # Errors
    /// - `LENGTH_MISMATCH`: another number of names than of corners.
    /// - `KEY_MISSING`, `KEY_REPEATED`: a blank name; a name of two runs that are no neighbours.
    /// - `OUTLINE_TOO_FEW`, `OUTLINE_CROSSES`, `NOT_FINITE`: corners that bound no region.
    pub fn from_corners(corners: &[Corner], names: &[Option<String>]) -> Result<Self> {
        Self::build(corners.to_vec(), names, Vec::new())
    }

    /// The same outline with these holes instead of its own.
    ///
    /// # Errors
    /// - `HOLE_OUTSIDE`: a hole that leaves the outline or meets another hole.
    /// - `KEY_MISSING`, `KEY_REPEATED`, `OUTLINE_TOO_FEW`, `OUTLINE_CROSSES`, `NOT_FINITE`: as for the outline.
    pub fn with_holes(self, holes: Vec<Hole>) -> Result<Self> {
        let outer = self.runs.iter().filter(|run| run.id.ring == RingId::Outer);
        let names: Vec<Option<String>> = outer.map(|run| Some(run.name.clone())).collect();
        Self::build(self.corners, &names, holes)
    }

    /// The outline around a region, its runs without names, its holes `hole 1` and so on.
    ///
    /// # Errors
    /// None for a region of coordinates that an outline takes.
    pub fn around(region: &Region) -> Result<Self> {
        let corners = |places: &[Point]| {
            let corner = |at: &Point| Corner::new(Length::from_base(at.x), Length::from_base(at.y));
            places.iter().map(corner).collect::<Vec<_>>()
        };
        let holes = region.holes().iter().enumerate();
        let holes = holes.map(|(index, hole)| Hole {
            name: format!("hole {}", index + 1),
            corners: corners(hole.corners()),
        });
        Self::build(corners(region.outer().corners()), &[], holes.collect())
    }

    fn build(corners: Vec<Corner>, names: &[Option<String>], holes: Vec<Hole>) -> Result<Self> {
        if !names.is_empty() && names.len() != corners.len() {
            return Err(Failure::new(Code::LengthMismatch, "names")
                .written(format!("{} names for {} corners", names.len(), corners.len()))
                .allowed("one name for each corner's run, or none at all")
                .remedy("name each run, the last being the one back to the first corner"));
        }
        let runs = super::edges::named_runs(&corners, names, &holes)?;
        let places = |corners: &[Corner]| corners.iter().map(|corner| corner.place()).collect::<Vec<_>>();
        let region = Region::new(places(&corners), holes.iter().map(|hole| places(&hole.corners)).collect());
        let region = region.map_err(|error| region_refusal(&error, &runs, &holes))?;
        Ok(Self { corners, holes, runs, region })
    }

    /// Its corners, as given.
    #[must_use]
    pub fn corners(&self) -> &[Corner] {
        &self.corners
    }

    /// Its holes, as given.
    #[must_use]
    pub fn holes(&self) -> &[Hole] {
        &self.holes
    }

    /// Its runs in order, those of the holes after them.
    #[must_use]
    pub fn runs(&self) -> &[Run] {
        &self.runs
    }

    /// The region it bounds.
    #[must_use]
    pub const fn region(&self) -> &Region {
        &self.region
    }
}
