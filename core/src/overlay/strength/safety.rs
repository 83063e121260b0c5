//! Safety factors, and the stress and the load that they allow.

use super::Slab;
use super::concrete::RUPTURE;
use super::contact::{LOAD, RADIUS};
use super::several::Position;
use super::westergaard::{CornerForm, EdgeForm, corner_on, edge_on, interior_on, narrow};
use crate::failure::{Result, check};
use crate::note::NoteCode;
use crate::operation::scalar::Word;
use crate::quantity::{Force, Length, Pressure, Range, Ratio, SubgradeReaction, Typed};

/// A safety factor: 1 to 10.
pub const FACTOR: Range = Range::closed(1.0, 10.0);

crate::choice! {
    /// Kinds of load that have safety factors of their own.
    pub enum LoadKind {
        /// A wheel that passes.
        Wheel = "moving wheel",
        /// A wheel that passes without limit of number.
        ManyWheels = "wheel, unlimited passes",
        /// A post, a leg, a jack.
        Post = "post or jack",
        /// Goods spread over the floor.
        Uniform = "uniform",
        /// A wall.
        Line = "wall",
    }
}

/// Safety factors of a kind of load.
#[derive(Clone, Copy, Debug)]
pub struct Factors {
    /// The least in use.
    pub least: Ratio,
    /// The one taken where nobody says.
    pub usual: Ratio,
    /// Whether they could be read in their source.
    pub note: Option<NoteCode>,
}

/// The safety factors of a kind of load, all from memory.
///
/// # Errors
/// None.
pub fn factors(kind: Word<LoadKind>) -> Result<Factors> {
    let (least, usual) = match kind.0 {
        LoadKind::Wheel => (1.4, 2.0),
        LoadKind::ManyWheels => (2.0, 2.2),
        LoadKind::Post => (1.7, 2.0),
        LoadKind::Uniform => (1.4, 2.0),
        LoadKind::Line => (1.7, 2.0),
    };
    let note = Some(NoteCode::ConfirmLocally);
    Ok(Factors { least: Ratio::from_base(least), usual: Ratio::from_base(usual), note })
}

/// The stress that a safety factor allows: `MR / SF`.
///
/// # Errors
/// A value outside its range.
pub fn allowable(rupture: Pressure, safety: Ratio) -> Result<Pressure> {
    let rupture = check("rupture", rupture, RUPTURE)?;
    let safety = check("safety", safety, FACTOR)?;
    Ok(Pressure::from_base(rupture.base() / safety.base()))
}

/// The one load that a slab carries at a place, on a contact of a radius: stress grows with the load, so `P = allowable / stress of a unit load`.
/// Edge by the circle of 1948, corner by Westergaard.
///
/// # Errors
/// A value outside its range; a contact too wide for the formula.
#[expect(clippy::too_many_arguments, reason = "one port each")]
pub fn allowable_load(
    position: Word<Position>,
    radius: Length,
    thickness: Length,
    modulus: Pressure,
    poisson: Ratio,
    subgrade: SubgradeReaction,
    rupture: Pressure,
    safety: Ratio,
) -> Result<Force> {
    let slab = Slab::new(thickness, modulus, poisson, subgrade)?;
    let radius = check("radius", radius, RADIUS)?.base();
    let allowed = allowable(rupture, safety)?.base();
    let form = CornerForm::Westergaard;
    let (of_one, _) = match position.0 {
        Position::Interior => {
            narrow(radius, &slab, 1.0)?;
            interior_on(&slab, 1.0, radius)
        }
        Position::Edge => {
            narrow(radius, &slab, 1.0)?;
            edge_on(&slab, 1.0, radius, EdgeForm::Circle)
        }
        Position::Corner => {
            narrow(radius, &slab, form.widest())?;
            corner_on(&slab, 1.0, radius, form)
        }
    };
    check("load", Force::from_base(allowed / of_one), LOAD)
}
