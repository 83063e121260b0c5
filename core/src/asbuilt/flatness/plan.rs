//! A floor that falls: its plan must not count as a bend.

use super::layout::LinePlace;
use super::profile::Profile;
use super::spread::Spread;
use crate::failure::{Code, Failure, Result};
use crate::grade::finish::Finish;
use crate::quantity::{Length, Typed, feet_and_inches};

/// A bend of the plan under this is rounding, in metres.
const ROUNDING: f64 = 1e-9;

/// The bends of a profile over one plane of the plan, and how many were left out. A plane has no bend, so taking it off changes no
/// `q`; where the plan itself bends, the three readings tell of the plan and not of the work, and are left out.
pub(super) fn bends(profile: &Profile<'_>, place: &LinePlace, finish: &Finish) -> Result<(Spread, usize)> {
    let planned = (0..profile.heights().len())
        .map(|reading| {
            let at = place.station(profile.spacing, reading);
            let (x, y) = (Length::from_base(at.x), Length::from_base(at.y));
            finish.height_at(x, y).map(Typed::base).ok_or_else(|| off_plan(x, y, reading))
        })
        .collect::<Result<Vec<f64>>>()?;
    let plan_bends = planned.windows(3).map(|three| (three[2] - three[1]) - (three[1] - three[0]));
    let kept: Vec<f64> = profile
        .q()
        .zip(plan_bends)
        .filter(|(_, plan)| plan.abs() <= ROUNDING)
        .map(|(bend, _)| bend)
        .collect();
    let left_out = profile.q().count() - kept.len();
    Ok((Spread::of(kept.into_iter()), left_out))
}

fn off_plan(x: Length, y: Length, reading: usize) -> Box<Failure> {
    Failure::new(Code::OffWork, "places")
        .written(format!(
            "reading {} at x {}, y {}",
            reading + 1,
            feet_and_inches(x, 8),
            feet_and_inches(y, 8)
        ))
        .allowed("a line over the facets of the finish")
        .remedy("check the start and the direction of the line")
}
