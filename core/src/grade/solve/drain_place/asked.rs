//! What is asked of the search.

use super::super::asked::Asked;
use super::super::buildable::Steps;
use super::super::demand::Demand;
use crate::failure::{Code, Failure, Result, check};
use crate::grade::fall::FALL;
use crate::grade::finish::{Finish, LEAST};
use crate::grade::sections::PLACE;
use crate::quantity::{Length, Range, Share, Slope, VolumePrice, feet_and_inches};

/// The rectangle of places where the drain may be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DrainBounds {
    /// From the left: from, to. The same twice leaves one line of places.
    pub x: [Length; 2],
    /// From the front: from, to.
    pub y: [Length; 2],
}

/// What is asked: the places, the falls, and what else the finish must keep.
#[derive(Clone, Debug)]
pub struct DrainAsked<'a> {
    /// Where the drain may be.
    pub within: DrainBounds,
    /// The least fall to it from every corner of the perimeter.
    pub fall: Slope,
    /// The greatest fall, in whatever direction.
    pub greatest_fall: Option<Slope>,
    /// What else is demanded: a least thickness, heights, and whatever [`solve`](crate::grade::solve::solve()) takes. The bound knows of
    /// thicknesses and of heights at places; other demands are kept by every finish that is solved, while the bound, without
    /// them, is lower than it could be.
    pub demands: &'a [Demand],
    /// On every least thickness: reading, texture and strike-off.
    pub margin: Length,
    /// Whether thickness binds on ground beyond the shots too, which is extended, not measured.
    pub edges_bind: bool,
    /// The price of concrete; without it no money is told.
    pub concrete_price: Option<VolumePrice>,
    /// The search ends when the concrete is above the bound by no more than this share of it.
    pub close: Share,
    /// It ends too when the finish was solved at so many places.
    pub most_places: usize,
    /// What the finish at the place found is rounded to. The search itself is over unrounded finishes, and so is its bound.
    pub steps: Option<Steps>,
}

/// How close a search may be asked to come.
pub const CLOSE: Range = Range::closed(1.0e-6, 1.0);

/// How many places a search may be allowed to try.
pub const MOST_PLACES: usize = 1_000_000;

impl DrainAsked<'_> {
    /// Refuses what cannot be meant; the demands are looked at by the solver.
    pub(super) fn check(&self) -> Result<()> {
        let [x, y] = [self.within.x, self.within.y];
        let each = [("x_from", x[0]), ("x_to", x[1]), ("y_from", y[0]), ("y_to", y[1])];
        for (path, length) in each {
            check(path, length, PLACE)?;
        }
        in_order(["x_from", "x_to"], x)?;
        in_order(["y_from", "y_to"], y)?;
        check("fall", self.fall, FALL)?;
        if let Some(greatest) = self.greatest_fall {
            check("greatest_fall", greatest, FALL)?;
        }
        check("margin", self.margin, LEAST)?;
        check("close", self.close, CLOSE)?;
        if !(1..=MOST_PLACES).contains(&self.most_places) {
            return Err(Failure::new(Code::OutOfRange, "most_places")
                .written(self.most_places.to_string())
                .allowed(format!("1 to {MOST_PLACES}"))
                .remedy("a few thousand are usual"));
        }
        Ok(())
    }

    /// What is asked of the solver at one place.
    pub(super) fn at_place<'a>(
        &self,
        layout: &'a Finish,
        demands: &'a [Demand],
        steps: Option<Steps>,
    ) -> Asked<'a> {
        Asked {
            layout: Some(layout),
            demands,
            margin: self.margin,
            edges_bind: self.edges_bind,
            concrete_price: self.concrete_price,
            grinding: None,
            steps,
        }
    }
}

fn in_order([from, to]: [&str; 2], places: [Length; 2]) -> Result<()> {
    if places[0] <= places[1] {
        return Ok(());
    }
    let said = places.map(|place| feet_and_inches(place, 8));
    Err(Failure::new(Code::OutOfRange, to)
        .written(&*said[1])
        .allowed(format!("{from} ({}) or more", said[0]))
        .remedy(format!("give the lesser of the two as {from}")))
}
