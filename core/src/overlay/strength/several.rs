//! Several loads on one slab, each with what the others add.
//!
//! Each load's own stress and deflection are Westergaard's for the place where it stands. What another load adds is what it would do there itself,
//! times its influence at the distance over its influence at none (a load on a circle, with its equivalent radius): two loads at one place give twice, and far
//! apart each is alone. In the middle of a slab the moments are added with their directions. At edges and corners no influence is published that
//! the references hold; there the larger of the two moments of the middle is taken, in whatever direction. Ours, no source: near an edge load its own
//! stress rises faster than in the middle, so that the share at a distance is smaller than the one taken.

use super::Slab;
use super::contact::equivalent;
use super::influence::{Influence, disc};
use super::westergaard::{CornerForm, EdgeForm, corner_on, edge_on, interior_on, too_wide};
use crate::failure::Result;
use crate::quantity::{Force, Length, Pressure, Share, Typed};
use std::f64::consts::SQRT_2;

crate::choice! {
    /// Where on a slab a load stands.
    pub enum Position {
        /// Far from every edge.
        Interior = "interior",
        /// At an edge, far from every corner.
        Edge = "edge",
        /// In a corner.
        Corner = "corner",
    }
}

impl Position {
    /// How large a slab the equations are stated for, in radii of relative stiffness: for stress and for deflection.
    #[must_use]
    pub const fn least_size(self) -> (f64, f64) {
        match self {
            Self::Interior => (3.5, 8.0),
            Self::Edge => (5.0, 8.0),
            Self::Corner => (4.0, 5.0),
        }
    }
}

/// One load on the slab.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Load {
    /// How heavy.
    pub load: Force,
    /// The circle it stands on.
    pub radius: Length,
    /// From the left.
    pub x: Length,
    /// From the front.
    pub y: Length,
    /// Where on the slab.
    pub position: Position,
}

/// Which forms serve at edges and corners, and what a joint carries across.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Forms {
    /// At an edge.
    pub edge: EdgeForm,
    /// In a corner.
    pub corner: CornerForm,
    /// The share of edge stress that dowels or interlock take off; none at a free edge.
    pub transfer: Share,
}

/// What stands under one load.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Felt {
    /// Stress from this load by itself.
    pub alone: Pressure,
    /// Stress with all the others.
    pub together: Pressure,
    /// Deflection with all the others.
    pub deflection: Length,
}

impl Felt {
    /// The stress that governs: loads come and go, so one that relieves another does not count.
    #[must_use]
    pub fn governing(&self) -> Pressure {
        Pressure::from_base(self.alone.base().max(self.together.base()))
    }
}

/// One load made ready: what it would do at each position, and its influence at no distance.
struct Ready {
    equivalent: f64,
    own: Influence,
}

/// Stress and deflection at every load.
///
/// # Errors
/// A contact too wide for the formula of its place, by its row.
pub fn several(slab: &Slab, loads: &[Load], forms: &Forms) -> Result<Vec<Felt>> {
    let stiffness = slab.square.sqrt();
    let ready: Vec<Ready> = loads
        .iter()
        .map(|load| {
            let equivalent = equivalent(load.radius.base(), slab.thickness) / stiffness;
            Ready { equivalent, own: disc(0.0, equivalent, slab.poisson) }
        })
        .collect();
    loads
        .iter()
        .enumerate()
        .map(|(place, target)| {
            let mut felt = Sum::default();
            for (other, (load, ready)) in loads.iter().zip(&ready).enumerate() {
                check_width(slab, load, target.position, forms, other)?;
                let (stress, deflection) = at_position(slab, load, target.position, forms);
                if other == place {
                    felt.alone = stress;
                }
                felt.add(&part(slab, target, load, ready), stress, deflection);
            }
            Ok(felt.told(target.position))
        })
        .collect()
}

/// How much of a load is felt at another: share of its deflection and of its moments, and the direction towards it.
struct Part {
    deflection: f64,
    radial: f64,
    tangential: f64,
    towards: [f64; 2],
}

fn part(slab: &Slab, target: &Load, load: &Load, ready: &Ready) -> Part {
    let [dx, dy] = [load.x.base() - target.x.base(), load.y.base() - target.y.base()];
    let distance = dx.hypot(dy);
    let towards = if distance > 0.0 { [dx / distance, dy / distance] } else { [1.0, 0.0] };
    let there = disc(distance / slab.square.sqrt(), ready.equivalent, slab.poisson);
    Part {
        deflection: there.deflection / ready.own.deflection,
        radial: there.radial / ready.own.radial,
        tangential: there.tangential / ready.own.tangential,
        towards,
    }
}

/// What a load would do at a position.
fn at_position(slab: &Slab, load: &Load, position: Position, forms: &Forms) -> (f64, f64) {
    let (force, radius) = (load.load.base(), load.radius.base());
    match position {
        Position::Interior => interior_on(slab, force, radius),
        Position::Edge => {
            let (stress, deflection) = edge_on(slab, force, radius * forms.edge_reach(), forms.edge);
            (stress * (1.0 - forms.transfer.base()), deflection)
        }
        Position::Corner => corner_on(slab, force, radius, forms.corner),
    }
}

impl Forms {
    /// A semicircle of the same area is sqrt 2 times as wide.
    const fn edge_reach(&self) -> f64 {
        match self.edge {
            EdgeForm::Circle => 1.0,
            EdgeForm::Semicircle => SQRT_2,
        }
    }

    /// The widest contact in radii of relative stiffness.
    const fn widest(&self, position: Position) -> f64 {
        match position {
            Position::Interior => 1.0,
            Position::Edge => 1.0 / self.edge_reach(),
            Position::Corner => self.corner.widest(),
        }
    }
}

fn check_width(slab: &Slab, load: &Load, position: Position, forms: &Forms, row: usize) -> Result<()> {
    let most = forms.widest(position) * slab.square.sqrt();
    if load.radius.base() <= most {
        return Ok(());
    }
    Err(too_wide("loads.radius", load.radius.base(), most).at(crate::failure::Place::Index(row)))
}

/// Stresses summed with their directions, and without.
#[derive(Default)]
struct Sum {
    alone: f64,
    along_x: f64,
    along_y: f64,
    shear: f64,
    larger: f64,
    deflection: f64,
}

impl Sum {
    fn add(&mut self, part: &Part, stress: f64, deflection: f64) {
        let [cos, sin] = part.towards;
        let (radial, tangential) = (stress * part.radial, stress * part.tangential);
        self.along_x += radial * cos * cos + tangential * sin * sin;
        self.along_y += radial * sin * sin + tangential * cos * cos;
        self.shear += (radial - tangential) * sin * cos;
        self.larger += radial.max(tangential);
        self.deflection += deflection * part.deflection;
    }

    fn told(&self, position: Position) -> Felt {
        let together = match position {
            Position::Interior => {
                let half = (self.along_x - self.along_y) / 2.0;
                (self.along_x + self.along_y) / 2.0 + half.hypot(self.shear)
            }
            Position::Edge | Position::Corner => self.larger,
        };
        Felt {
            alone: Pressure::from_base(self.alone),
            together: Pressure::from_base(together),
            deflection: Length::from_base(self.deflection),
        }
    }
}
