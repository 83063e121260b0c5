//! From the axes a file came in to those of the job: by known points, or along a wall.
//!
//! Plan and height are moved apart: a turn and a shift in plan without any change of scale, as for bodies that keep
//! their shape, and a rise, or a rise and a tilt, in height.

mod fit;
mod heights;
mod refusal;
#[cfg(test)]
mod tests;

use super::Points;
use crate::choice;
use crate::failure::{Code, Failure, Result, check};
use crate::geometry::{FARTHEST, Plane, Point};
use crate::quantity::{Angle, Length, Range, Typed};
pub use heights::{STEEPEST, Tilt};

choice! {
    /// How heights go from one system into the other.
    pub enum Levelling {
        /// All by the same rise: both systems are level.
        Rise = "rise",
        /// By a plane: the system that the points come from is not quite level.
        Tilt = "tilt",
    }
}

/// A point known in both systems, in metres.
#[derive(Clone, Debug, PartialEq)]
pub struct Known {
    /// Its name.
    pub name: String,
    /// Where it is in the axes the points come in.
    pub from: Point,
    /// Its height there.
    pub from_height: Option<f64>,
    /// Where it is in the axes they go to.
    pub to: Point,
    /// Its height there.
    pub to_height: Option<f64>,
}

/// How far the known points may disagree.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tolerances {
    /// In plan: distances between two, places of more.
    pub plan: Length,
    /// In height.
    pub height: Length,
}

/// A tolerance that may be stated.
pub const TOLERANCE: Range = Range::closed(0.0, 1.0);

/// How far a known point is from where the change of axes brings it.
#[derive(Clone, Debug, PartialEq)]
pub struct Residual {
    /// The point's name.
    pub name: String,
    /// Known place less the place it is brought to.
    pub x: Length,
    /// The same along the second axis.
    pub y: Length,
    /// Known height less the height it is brought to; none where a height was not given.
    pub height: Option<Length>,
}

/// A change of axes.
#[derive(Clone, Debug, PartialEq)]
pub struct Change {
    /// A place in the axes the points come in, and the same in those they go to.
    from: Point,
    to: Point,
    cos: f64,
    sin: f64,
    /// What is added to heights, over places in the axes the points go to; none where heights stay.
    rise: Option<Plane>,
    /// What is left over at the known points, in their order.
    pub residuals: Vec<Residual>,
}

impl Change {
    /// The change that brings known points to where they are known to be: through two of them exactly along the line
    /// between, through more by least squares (Helmert's plane transformation without scale).
    ///
    /// # Errors
    /// - `NOT_FINITE`, `NEGATIVE`, `OUT_OF_RANGE`: a coordinate or a tolerance is no number it may be.
    /// - `KNOWN_POINTS`: fewer than two points, or at one place; for a tilt fewer than three with heights, or on one
    ///   line, or a tilt beyond 2 %.
    /// - `AXES_MIRRORED`: three points or more agree only when an axis is turned round or both are swapped.
    /// - `AXES_DISAGREE`: distances or heights differ by more than the tolerance; a likely unit slip is named.
    pub fn by_known_points(known: &[Known], tolerances: Tolerances, levelling: Levelling) -> Result<Self> {
        check("tolerance", tolerances.plan, TOLERANCE)?;
        check("height_tolerance", tolerances.height, TOLERANCE)?;
        refusal::check_known(known)?;
        let fit = fit::Fit::of(known, tolerances.plan.base())?;
        let mut change = Self {
            from: fit.from,
            to: fit.to,
            cos: fit.cos,
            sin: fit.sin,
            rise: heights::rise(known, tolerances.height.base(), levelling)?,
            residuals: Vec::new(),
        };
        change.residuals = known.iter().map(|known| change.residual(known)).collect();
        Ok(change)
    }

    /// The change to axes with `origin` as their zero, x along the wall toward `along`, y to the left of it: into the
    /// work, when the wall is walked with the work on the left. Heights stay.
    ///
    /// # Errors
    /// - `NOT_FINITE`: a coordinate is no number.
    /// - `KNOWN_POINTS`: both are at one place.
    pub fn along_wall(origin: Point, along: Point) -> Result<Self> {
        refusal::check_place("origin", origin)?;
        refusal::check_place("along", along)?;
        let length = origin.distance(along);
        if length < fit::NEAREST {
            return Err(Failure::new(Code::KnownPoints, "along")
                .written(format!("{} m from the origin", crate::quantity::write::shortest(length)))
                .allowed("a place well away from the origin")
                .remedy("give the two ends of the wall"));
        }
        let (cos, sin) = ((along.x - origin.x) / length, (origin.y - along.y) / length);
        Ok(Self { from: origin, to: Point::default(), cos, sin, rise: None, residuals: Vec::new() })
    }

    /// How far the axes are turned, counter-clockwise: the direction that x of the points has in the new axes.
    #[must_use]
    pub fn turn(&self) -> Angle {
        Angle::from_base(self.sin.atan2(self.cos))
    }

    /// What is added to heights where the old origin comes to lie; none where heights stay.
    #[must_use]
    pub fn rise(&self) -> Option<Length> {
        self.rise.map(|plane| Length::from_base(plane.height_at(self.place(Point::default()))))
    }

    /// How much more is added per length along the new axes: nothing unless a tilt was asked for.
    #[must_use]
    pub fn tilt(&self) -> Tilt {
        Tilt::of(self.rise)
    }

    /// A place in the new axes.
    #[must_use]
    pub fn place(&self, at: Point) -> Point {
        let (x, y) = (at.x - self.from.x, at.y - self.from.y);
        Point::new(self.to.x + self.cos * x - self.sin * y, self.to.y + self.sin * x + self.cos * y)
    }

    /// A point in the new axes.
    #[must_use]
    pub fn point(&self, [x, y, z]: [f64; 3]) -> [f64; 3] {
        let at = self.place(Point::new(x, y));
        [at.x, at.y, z + self.rise.map_or(0.0, |plane| plane.height_at(at))]
    }

    /// Points in the new axes, with their names.
    ///
    /// # Errors
    /// `NOT_FINITE` when a coordinate is no number, `OUT_OF_RANGE` when one comes to lie too far out.
    pub fn points(&self, points: &Points) -> Result<Points> {
        super::check_points(points)?;
        let mut moved = Points { names: points.names.clone(), ..Points::default() };
        for index in 0..points.len() {
            let [x, y, z] = self.point([points.x[index], points.y[index], points.z[index]]);
            if !(x.abs() <= FARTHEST && y.abs() <= FARTHEST && z.abs() <= FARTHEST) {
                return Err(refusal::too_far(index, [x, y, z]));
            }
            moved.x.push(x);
            moved.y.push(y);
            moved.z.push(z);
        }
        Ok(moved)
    }

    fn residual(&self, known: &Known) -> Residual {
        let at = self.place(known.from);
        let height = known
            .from_height
            .zip(known.to_height)
            .map(|(from, to)| to - from - self.rise.map_or(0.0, |plane| plane.height_at(at)));
        Residual {
            name: known.name.clone(),
            x: Length::from_base(known.to.x - at.x),
            y: Length::from_base(known.to.y - at.y),
            height: height.map(Length::from_base),
        }
    }
}
