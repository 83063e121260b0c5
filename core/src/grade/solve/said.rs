//! A demand as a table or a file says it: a kind, and the figures and places that go with it.

use super::demand::{Demand, Heights, Line, Outlet, Wants};
use crate::choice;
use crate::failure::{Code, Failure, Result};
use crate::geometry::{Point, Region};
use crate::quantity::{Elevation, Length, Slope, Typed};

choice! {
    /// What is demanded.
    pub enum Kind {
        /// A least thickness.
        LeastThickness = "least_thickness",
        /// A greatest thickness.
        GreatestThickness = "greatest_thickness",
        /// A least fall toward an outlet.
        LeastFall = "least_fall",
        /// A greatest fall toward an outlet.
        GreatestFall = "greatest_fall",
        /// A greatest fall in any direction.
        Steepest = "steepest",
        /// A greatest rise or fall along a line.
        CrossFall = "cross_fall",
        /// A level line.
        Level = "level",
        /// Heights that are not passed.
        AtMost = "at_most",
        /// Heights that are reached.
        AtLeast = "at_least",
        /// Heights that are had.
        Exactly = "exactly",
    }
}

/// A demand with everything it may come with.
#[derive(Clone, Debug)]
pub struct Said {
    /// Its name.
    pub name: String,
    /// What is demanded.
    pub kind: Kind,
    /// A thickness.
    pub thickness: Option<Length>,
    /// A fall.
    pub fall: Option<Slope>,
    /// A height.
    pub elevation: Option<Elevation>,
    /// How far a level line may be out of level.
    pub tolerance: Option<Length>,
    /// An edge of the outline: the outlet of a fall, the line of heights.
    pub edge: Option<String>,
    /// Places: a drain, a line, places of one height.
    pub places: Vec<Point>,
    /// Which facets.
    pub on: Option<String>,
    /// Where a thickness is demanded.
    pub zone: Option<Region>,
    /// Whether it stands firm.
    pub firm: bool,
    /// What breaking it weighs.
    pub weight: Option<f64>,
}

impl Said {
    /// The demand.
    ///
    /// # Errors
    /// - `KEY_MISSING`: a figure or a place that this kind needs.
    /// - `CONTRADICTION`: one that it has no use for; an edge and places together.
    pub fn demand(&self) -> Result<Demand> {
        self.nothing_idle()?;
        let wants = match self.kind {
            Kind::LeastThickness => Wants::LeastThickness {
                least: self.needs("thickness", self.thickness)?,
                zone: self.zone.clone(),
            },
            Kind::GreatestThickness => Wants::GreatestThickness {
                most: self.needs("thickness", self.thickness)?,
                zone: self.zone.clone(),
            },
            Kind::LeastFall => Wants::LeastFall {
                fall: self.needs("fall", self.fall)?,
                toward: self.outlet()?,
                on: self.on.clone(),
            },
            Kind::GreatestFall => Wants::GreatestFall {
                fall: self.needs("fall", self.fall)?,
                toward: self.outlet()?,
                on: self.on.clone(),
            },
            Kind::Steepest => Wants::Steepest { fall: self.needs("fall", self.fall)?, on: self.on.clone() },
            Kind::CrossFall => Wants::CrossFall {
                fall: self.needs("fall", self.fall)?,
                along: self.line()?,
                on: self.on.clone(),
            },
            Kind::Level => Wants::Level {
                along: self.line()?,
                tolerance: self.tolerance.unwrap_or(Length::from_base(0.0)),
            },
            Kind::AtMost => Wants::AtMost(self.heights()?),
            Kind::AtLeast => Wants::AtLeast(self.heights()?),
            Kind::Exactly => Wants::Exactly(self.heights()?),
        };
        Ok(Demand { name: self.name.clone(), wants, firm: self.firm, weight: self.weight.unwrap_or(1.0) })
    }

    /// Figures and places that a kind takes, in the order of [`Said::given`].
    const fn takes(kind: Kind) -> [bool; 8] {
        let thickness = matches!(kind, Kind::LeastThickness | Kind::GreatestThickness);
        let fall = matches!(kind, Kind::LeastFall | Kind::GreatestFall | Kind::Steepest | Kind::CrossFall);
        let height = matches!(kind, Kind::AtMost | Kind::AtLeast | Kind::Exactly);
        let level = matches!(kind, Kind::Level);
        let line = height || level || fall && !matches!(kind, Kind::Steepest);
        [thickness, fall, height, level, line, line, fall, thickness]
    }

    fn given(&self) -> [(&'static str, bool); 8] {
        [
            ("thickness", self.thickness.is_some()),
            ("fall", self.fall.is_some()),
            ("elevation", self.elevation.is_some()),
            ("tolerance", self.tolerance.is_some()),
            ("edge", self.edge.is_some()),
            ("x", !self.places.is_empty()),
            ("facet", self.on.is_some()),
            ("zone", self.zone.is_some()),
        ]
    }

    fn nothing_idle(&self) -> Result<()> {
        let takes = Self::takes(self.kind);
        for ((path, given), takes) in self.given().into_iter().zip(takes) {
            if given && !takes {
                let of_kind = self.given().into_iter().zip(Self::takes(self.kind));
                let taken: Vec<&str> =
                    of_kind.filter(|(_, takes)| *takes).map(|((path, _), _)| path).collect();
                return Err(Failure::new(Code::Contradiction, path)
                    .written(format!("{path} for {}", self.kind.word()))
                    .allowed(taken.join(", "))
                    .remedy("leave it out, or choose another kind"));
            }
        }
        if self.edge.is_some() && !self.places.is_empty() {
            return Err(Failure::new(Code::Contradiction, "x")
                .written("an edge and a place")
                .allowed("an edge, or places")
                .remedy("keep one of the two"));
        }
        Ok(())
    }

    fn needs<T>(&self, path: &str, figure: Option<T>) -> Result<T> {
        figure.ok_or_else(|| {
            Failure::new(Code::KeyMissing, path)
                .written("nothing")
                .allowed(format!("a {path} for {}", self.kind.word()))
                .remedy("give it")
        })
    }

    fn outlet(&self) -> Result<Outlet> {
        match (&self.edge, self.places.as_slice()) {
            (Some(edge), _) => Ok(Outlet::Edge(edge.clone())),
            (None, [place]) => Ok(Outlet::Place(*place)),
            (None, [from, to]) => Ok(Outlet::Line([*from, *to])),
            _ => Err(self.nowhere("an edge, a drain's place, or two places of a line")),
        }
    }

    fn line(&self) -> Result<Line> {
        match (&self.edge, self.places.as_slice()) {
            (Some(edge), _) => Ok(Line::Edge(edge.clone())),
            (None, []) => Err(self.nowhere("an edge, or places")),
            (None, places) => Ok(Line::Places(places.to_vec())),
        }
    }

    fn heights(&self) -> Result<Heights> {
        Ok(Heights { along: self.line()?, elevation: self.needs("elevation", self.elevation)? })
    }

    fn nowhere(&self, allowed: &str) -> Box<Failure> {
        Failure::new(Code::KeyMissing, "edge")
            .written(format!("{} without a place", self.kind.word()))
            .allowed(allowed)
            .remedy("say where")
    }
}
