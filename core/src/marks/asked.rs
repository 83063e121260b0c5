//! What is asked of the marks.

use super::Sight;
use crate::assumption;
use crate::failure::{Code, Failure, Place, Result, check};
use crate::geometry::Point;
use crate::grade::finish::HEIGHT;
use crate::quantity::units::{FOOT, INCH};
use crate::quantity::{Elevation, Length, Range, Typed, feet_and_inches};

/// The distance between stations: 3 in to 100 ft.
pub const SPACING: Range = Range::closed(3.0 * INCH, 100.0 * FOOT);
/// The length of a screed: 2 1/2 to 50 ft.
pub const SCREED: Range = Range::closed(2.5 * FOOT, 50.0 * FOOT);
/// The distance between pads: 6 in to 48 ft.
pub const PAD_SPACING: Range = Range::closed(0.5 * FOOT, 48.0 * FOOT);
/// How far pads stay off the edges: up to 10 ft.
pub const INSET: Range = Range::closed(0.0, 10.0 * FOOT);
/// How far a rail stands above the floor: 1 ft either way.
pub const OFFSET: Range = Range::closed(-FOOT, FOOT);
/// The length of a rod: 1 to 32 ft.
pub const ROD_LENGTH: Range = Range::closed(FOOT, 32.0 * FOOT);
/// What marks are rounded to: 1/250 in to 4 in.
pub const STEP: Range = Range::closed(1.0e-4, 4.0 * INCH);
/// A plan coordinate.
pub const PLACE: Range = crate::grade::sections::PLACE;

/// A named place is taken to the wall from this far: 6 in. Common practice, no source.
pub const SNAP: f64 = 6.0 * INCH;

/// What a screed must reach over a pad at both ends together: 2 ft. Common practice, no source.
const OVER_PADS: f64 = 2.0 * FOOT;

/// A place that must have a mark: a jamb, a post.
#[derive(Clone, Debug, PartialEq)]
pub struct PointAsked {
    /// What it is called.
    pub name: String,
    /// Its place, on an edge or up to 6 in off it.
    pub at: Point,
}

/// A screed rail: a line of straight legs.
#[derive(Clone, Debug, PartialEq)]
pub struct RailAsked {
    /// What it is called.
    pub name: String,
    /// Its places in order.
    pub places: Vec<Point>,
}

/// The wet pads.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PadsAsked {
    /// The length of the screed that rides on them.
    pub screed: Length,
    /// How far apart they are at most; none: the screed less 2 ft.
    pub spacing: Option<Length>,
    /// How far they stay off the edges.
    pub inset: Length,
}

impl PadsAsked {
    /// The greatest distance between pads: as given, or the screed less 2 ft.
    #[must_use]
    pub fn apart(&self) -> Length {
        self.spacing.unwrap_or_else(|| self.widest())
    }

    fn widest(&self) -> Length {
        Length::from_base(self.screed.base() - OVER_PADS)
    }
}

/// What is asked of the marks.
#[derive(Clone, Debug, PartialEq)]
pub struct Asked {
    /// The level line struck round the walls.
    pub line: Option<Elevation>,
    /// The set-ups; none: the first one of the survey, where it was read with a rod.
    pub sights: Vec<Sight>,
    /// How long the rod is.
    pub rod_length: Length,
    /// The greatest distance between stations.
    pub spacing: Length,
    /// Places that must have a mark.
    pub points: Vec<PointAsked>,
    /// The wet pads.
    pub pads: PadsAsked,
    /// Edges with a form; the others are walls with an isolation strip.
    pub forms: Vec<String>,
    /// Screed rails.
    pub rails: Vec<RailAsked>,
    /// How far the top of a rail stands above the floor.
    pub rail_offset: Length,
    /// What marks are rounded to.
    pub step: Length,
    /// The edge whose start the walk begins at; none: the first.
    pub start_edge: Option<String>,
}

impl Default for Asked {
    fn default() -> Self {
        Self {
            line: None,
            sights: Vec::new(),
            rod_length: assumption::ROD_LENGTH.value(),
            spacing: assumption::STATION_SPACING.value(),
            points: Vec::new(),
            pads: PadsAsked {
                screed: assumption::SCREED.value(),
                spacing: None,
                inset: assumption::PAD_INSET.value(),
            },
            forms: Vec::new(),
            rails: Vec::new(),
            rail_offset: assumption::RAIL_OFFSET.value(),
            step: assumption::ROUNDING.value(),
            start_edge: None,
        }
    }
}

impl Asked {
    /// Refuses what cannot be, by the names of the row's ports.
    pub(super) fn check(&self) -> Result<()> {
        self.line.map(|line| check("line", line, HEIGHT)).transpose()?;
        check("rod_length", self.rod_length, ROD_LENGTH)?;
        check("spacing", self.spacing, SPACING)?;
        check("screed_length", self.pads.screed, SCREED)?;
        check("pad_inset", self.pads.inset, INSET)?;
        check("rail_offset", self.rail_offset, OFFSET)?;
        check("round", self.step, STEP)?;
        self.check_pads()?;
        for (index, sight) in self.sights.iter().enumerate() {
            check("setups.sight", sight.height, HEIGHT).map_err(|failure| failure.at(Place::Index(index)))?;
        }
        let points = self.points.iter().map(|point| point.at).enumerate();
        points.into_iter().try_for_each(|(index, at)| check_place("points", index, at))?;
        let places = self.rails.iter().flat_map(|rail| &rail.places).enumerate();
        places.into_iter().try_for_each(|(index, at)| check_place("rails", index, *at))
    }

    fn check_pads(&self) -> Result<()> {
        let Some(spacing) = self.pads.spacing else { return Ok(()) };
        check("pad_spacing", spacing, PAD_SPACING)?;
        if spacing.base() <= self.pads.widest().base() + super::SAME {
            return Ok(());
        }
        let say = |length| feet_and_inches(length, 8);
        Err(Failure::new(Code::PadsTooFar, "pad_spacing")
            .written(say(spacing))
            .allowed(format!(
                "at most {}: the screed of {} less 2' 0\" (common practice, no source)",
                say(self.pads.widest()),
                say(self.pads.screed)
            ))
            .remedy("bring the pads nearer, or take a longer screed"))
    }
}

fn check_place(table: &str, index: usize, at: Point) -> Result<()> {
    for (axis, coordinate) in [("x", at.x), ("y", at.y)] {
        check(&format!("{table}.{axis}"), Length::from_base(coordinate), PLACE)
            .map_err(|failure| failure.at(Place::Index(index)))?;
    }
    Ok(())
}
