//! An approach held against what is published.

use super::asked::{Asked, Traffic};
use super::breaks::{crest, sag};
use super::{Break, BreakKind, Stretch};
use crate::basis::BasisId;
use crate::choice;
use crate::failure::Result;
use crate::judged::Judged;
use crate::quantity::{Length, Slope, Typed};

choice! {
    /// What is judged of an approach.
    pub enum Matter {
        /// The fall away from the door.
        FallAway = "fall away from the door",
        /// How steep a stretch is.
        Grade = "grade",
        /// A change of grade.
        Change = "change of grade",
        /// A crest against the room under the vehicle.
        Crest = "room over a crest",
        /// A sag against the room under the bumper.
        Sag = "room in a sag",
    }
}

choice! {
    /// What a rule is good for.
    pub enum Weight {
        /// A limit: it decides.
        Limit = "limit",
        /// Advice: it is shown and decides nothing.
        Advice = "advice",
    }
}

/// One rule held against one place of an approach.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rule {
    /// What is judged.
    pub matter: Matter,
    /// How far from the door.
    pub at: Length,
    /// What is there.
    pub found: Slope,
    /// What may be, or must be for a fall.
    pub limit: Slope,
    /// Limit or advice.
    pub weight: Weight,
    /// Where the limit comes from.
    pub basis: BasisId,
    /// What comes out.
    pub judged: Judged,
}

/// A limit is met within this.
const MET: f64 = 1e-9;
/// What easy driving wants between breaks: 11 ft.
const EASY_SPACING: f64 = 11.0 * 0.3048;

struct Limit {
    limit: f64,
    weight: Weight,
    basis: BasisId,
}

const fn limit(limit: f64, weight: Weight, basis: BasisId) -> Limit {
    Limit { limit, weight, basis }
}

/// How steep a stretch may be.
fn grades(traffic: Traffic) -> Vec<Limit> {
    match traffic {
        Traffic::Vehicle => vec![limit(0.15, Weight::Limit, BasisId::DrivewayMinnesota)],
        Traffic::Wheelchair => vec![
            limit(0.05, Weight::Advice, BasisId::AccessibleWalk),
            limit(1.0 / 12.0, Weight::Limit, BasisId::AccessibleRamp),
        ],
        Traffic::Foot => Vec::new(),
    }
}

/// By how much the grade may change.
fn changes(traffic: Traffic) -> Vec<Limit> {
    match traffic {
        Traffic::Vehicle => vec![
            limit(0.03, Weight::Advice, BasisId::DrivewayTexas),
            limit(0.05, Weight::Advice, BasisId::DrivewayMarylandUsual),
            limit(0.08, Weight::Limit, BasisId::DrivewayMaryland),
        ],
        Traffic::Wheelchair | Traffic::Foot => Vec::new(),
    }
}

/// Every rule at every place.
pub(super) fn rules(asked: &Asked, stretches: &[Stretch], breaks: &[Break]) -> Result<Vec<Rule>> {
    let mut rules = Vec::new();
    for stretch in stretches {
        if stretch.from.base() < asked.over.base() - MET {
            rules.push(fall_away(asked, stretch));
        }
        let found = stretch.fall.base().abs();
        rules.extend(grades(asked.traffic).iter().map(|of| at_most(Matter::Grade, stretch.from, found, of)));
    }
    for of in breaks {
        let found = of.change.base();
        for limit in changes(asked.traffic) {
            let rule = at_most(Matter::Change, of.at, found, &limit);
            // Easy breaks are easy only where they are far enough apart.
            let near = limit.basis == BasisId::DrivewayTexas && of.spacing.base() < EASY_SPACING - MET;
            rules.push(if near { Rule { judged: Judged::by(limit.basis, false), ..rule } } else { rule });
        }
        rules.extend(room(asked, of)?);
    }
    Ok(rules)
}

fn fall_away(asked: &Asked, stretch: &Stretch) -> Rule {
    let basis = if asked.fall.is_some() { BasisId::FallGiven } else { BasisId::FallOutdoors };
    let kept = stretch.fall.base() >= asked.wanted().base() - MET;
    Rule {
        matter: Matter::FallAway,
        at: stretch.from,
        found: stretch.fall,
        limit: asked.wanted(),
        weight: Weight::Limit,
        basis,
        judged: Judged::by(basis, kept),
    }
}

fn at_most(matter: Matter, at: Length, found: f64, of: &Limit) -> Rule {
    Rule {
        matter,
        at,
        found: Slope::from_base(found),
        limit: Slope::from_base(of.limit),
        weight: of.weight,
        basis: of.basis,
        judged: Judged::by(of.basis, found <= of.limit + MET),
    }
}

/// A break against the room under the vehicle, where that was given.
fn room(asked: &Asked, of: &Break) -> Result<Option<Rule>> {
    let vehicle = &asked.vehicle;
    let geometry =
        |limit: Slope| Limit { limit: limit.base(), weight: Weight::Limit, basis: BasisId::Geometry };
    let found = of.change.base();
    Ok(match (of.kind, vehicle.wheelbase, vehicle.clearance, vehicle.overhang, vehicle.bumper) {
        (BreakKind::Crest, Some(wheelbase), Some(clearance), ..) => {
            // The change of grade that takes all of the room.
            let of_all = crest(wheelbase, Slope::from_base(1.0))?.taken;
            let greatest = Slope::from_base(clearance.base() / of_all.base());
            Some(at_most(Matter::Crest, of.at, found, &geometry(greatest)))
        }
        (BreakKind::Sag, _, _, Some(overhang), Some(bumper)) => {
            Some(at_most(Matter::Sag, of.at, found, &geometry(sag(overhang, bumper)?)))
        }
        _ => None,
    })
}
