//! What was asked of the floor, and whether it was kept.

use super::deviations::Deviations;
use super::falls::FacetFall;
use super::whole::{AsBuilt, Asked};
use super::words::{at_least, at_most, in_ten_feet};
use crate::basis::BasisId;
use crate::judged::Judged;
use crate::quantity::{Length, Typed, inches};

/// A top of a slab on ground lies within this of its plan: 3/4 in.
const TOP: f64 = 0.75 * 0.0254;
/// The mean thickness may lack so much: 3/8 in.
const MEAN_LACKS: f64 = 0.375 * 0.0254;
/// Any thickness may lack so much: 3/4 in.
const ANY_LACKS: f64 = 0.75 * 0.0254;
/// The most that is commonly used over what was figured.
const USED_AT_MOST: f64 = 1.08;
/// What is off a limit by less is on it: rounding.
const HAIR: f64 = 1e-9;

/// One thing that was asked, and whether it was kept.
#[derive(Clone, Debug, PartialEq)]
pub struct Check {
    /// What it is about, in a word or two.
    pub about: String,
    /// Whether it is kept.
    pub judged: Judged,
    /// Where its limit comes from.
    pub basis: BasisId,
    /// What was found, in a sentence.
    pub said: String,
}

fn checked(about: impl Into<String>, basis: BasisId, kept: bool, said: String) -> Check {
    Check { about: about.into(), judged: Judged::by(basis, kept), basis, said }
}

/// All that was asked.
pub(super) fn checks(found: &AsBuilt, asked: &Asked<'_>) -> Vec<Check> {
    let mut list = vec![marks(&found.deviations, asked.tolerance_given), top(&found.deviations)];
    list.extend(thickness(found, asked));
    list.extend(found.falls.iter().filter_map(|fall| falls(fall, asked)));
    list.push(water(found));
    list.extend(used(found));
    list
}

fn marks(deviations: &Deviations, given: bool) -> Check {
    let basis = if given { BasisId::MarkToleranceGiven } else { BasisId::MarkTolerance };
    let (missed, all) = (deviations.missed().len(), deviations.shots.len());
    let within = inches(deviations.tolerance, 16);
    let said = match missed {
        0 => format!("all {all} shots within {within} of the plan"),
        _ => format!("{missed} of {all} shots more than {within} off the plan"),
    };
    checked("marks", basis, missed == 0, said)
}

fn top(deviations: &Deviations) -> Check {
    let off = deviations.shots.iter().map(|shot| shot.deviation.base().abs()).fold(0.0, f64::max);
    let said =
        format!("farthest off the planned height {}, of 3/4 in allowed", at_most(Length::from_base(off)));
    checked("height of the top", BasisId::TopElevation, off <= TOP + HAIR, said)
}

fn thickness(found: &AsBuilt, asked: &Asked<'_>) -> Vec<Check> {
    let mut list = Vec::new();
    let least = found.least_thickness();
    if let Some(specified) = asked.specified {
        let lacks = |got: Length, allowed: f64| got.base() >= specified.base() - allowed - HAIR;
        let of = inches(specified, 8);
        let mean = found.thickness.mean;
        let said = format!("{} of {of} specified, which may lack 3/8 in", at_least(mean));
        list.push(checked("mean thickness", BasisId::SlabThickness, lacks(mean, MEAN_LACKS), said));
        let said = format!("{} of {of} specified, which may lack 3/4 in", at_least(least));
        list.push(checked("thinnest place", BasisId::SlabThickness, lacks(least, ANY_LACKS), said));
    }
    if let Some(wanted) = asked.least {
        let kept = least.base() >= wanted.base() - HAIR;
        let said = format!("thinnest {}, of {} asked", at_least(least), at_most(wanted));
        list.push(checked("least thickness", BasisId::LeastThicknessGiven, kept, said));
    }
    list
}

fn falls(fall: &FacetFall, asked: &Asked<'_>) -> Option<Check> {
    let got = fall.got?;
    let about = match &fall.name {
        Some(name) => format!("fall of {name}"),
        None => "fall".to_owned(),
    };
    if fall.runs_back() {
        let said =
            format!("planned {}, but the floor rises that way: water runs back", in_ten_feet(fall.planned));
        return Some(checked(about, BasisId::Geometry, false, said));
    }
    let (least, basis) = asked.least_fall?;
    let said = format!(
        "{} of {} planned; at least {} wanted",
        in_ten_feet(got),
        in_ten_feet(fall.planned),
        in_ten_feet(least)
    );
    Some(checked(about, basis, got.base() >= least.base() - HAIR, said))
}

fn water(found: &AsBuilt) -> Check {
    let count = found.ponds.list.len();
    let said = match found.ponds.depth() {
        Some(depth) => {
            let places = if count == 1 { "place" } else { "places" };
            format!("water stands in {count} {places}, up to {} deep", at_most(depth))
        }
        None => format!("no water stands deeper than {}", inches(found.ponds.shallowest, 16)),
    };
    checked("standing water", BasisId::Geometry, count == 0, said)
}

fn used(found: &AsBuilt) -> Option<Check> {
    let factor = found.concrete.as_ref()?.used_over_planned?.base();
    let said = format!("used {factor:.2} times what was figured; commonly 1.00 to {USED_AT_MOST}");
    Some(checked("concrete", BasisId::UsedOverFigured, factor <= USED_AT_MOST + HAIR, said))
}
