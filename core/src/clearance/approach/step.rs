//! The step at the door.

use super::asked::{Asked, Traffic};
use crate::basis::BasisId;
use crate::judged::Judged;
use crate::quantity::{Length, Typed};

/// The step at the door against what is published or usual.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Step {
    /// From the outside up to the floor; negative where the floor lies lower.
    pub height: Length,
    /// The most it may be up or down.
    pub limit: Length,
    /// Where that comes from.
    pub basis: BasisId,
    /// What comes out.
    pub judged: Judged,
}

const INCH: f64 = 0.0254;

impl Step {
    /// The step that a floor and the outside at the door make.
    pub(super) fn of(asked: &Asked, height: f64) -> Self {
        let (limit, basis) = match asked.traffic {
            Traffic::Vehicle => (INCH, BasisId::DoorRebate),
            Traffic::Wheelchair => (0.5 * INCH, BasisId::AccessibleStep),
            Traffic::Foot => (7.75 * INCH, BasisId::DoorStep),
        };
        let kept = height.abs() <= limit + 1e-9;
        let length = Length::from_base;
        Self { height: length(height), limit: length(limit), basis, judged: Judged::by(basis, kept) }
    }
}
