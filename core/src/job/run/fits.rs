//! Doors, sills and other heights that the finish must keep to.

use crate::failure::{Code, Failure, Result};
use crate::grade::finish::Finish;
use crate::job::heights::Heights;
use crate::job::input::{Job, LimitInput};
use crate::job::limits::Bound;
use crate::job::report::FitReport;
use crate::job::say;
use crate::quantity::{Length, Typed, inches};
use crate::survey::Survey;

impl Job {
    pub(super) fn fits(&self, survey: &Survey, finish: &Finish, heights: Heights) -> Result<Vec<FitReport>> {
        let fits = self.limits.iter().enumerate();
        fits.map(|(index, limit)| {
            fit(limit, survey, finish, heights).map_err(|failure| failure.under(&format!("limits[{index}]")))
        })
        .collect()
    }
}

/// A greatest or a least height is kept within this, in metres.
const KEPT: f64 = 1.0e-8;
/// A height to be had exactly is had within 1/32 in: a sixteenth is the finest that is told.
const HAD: f64 = 0.0254 / 32.0;

fn fit(limit: &LimitInput, survey: &Survey, finish: &Finish, heights: Heights) -> Result<FitReport> {
    let (bound, height) = limit.bound(heights)?;
    limit.placed(survey)?;
    let mut below: Option<f64> = None;
    for (index, place) in limit.at.iter().enumerate() {
        let at = finish.height_at(place.x.value, place.y.value).ok_or_else(|| {
            Failure::new(Code::OutOfRange, format!("at[{index}]"))
                .written(format!("{}, {}", place.x.written, place.y.written))
                .allowed("a place on a facet")
                .remedy("move the place onto the floor, or let the facet reach to it")
        })?;
        let here = (height - at).base();
        below = Some(below.map_or(here, |other| worse(bound, other, here)));
    }
    Ok(judged(limit, bound, below.unwrap_or_default()))
}

/// The worse of two rooms below a height.
fn worse(bound: Bound, a: f64, b: f64) -> f64 {
    match bound {
        Bound::AtMost => a.min(b),
        Bound::AtLeast => a.max(b),
        Bound::Exactly if b.abs() > a.abs() => b,
        Bound::Exactly => a,
    }
}

fn judged(limit: &LimitInput, bound: Bound, below: f64) -> FitReport {
    let called = limit.called.clone().unwrap_or_else(|| "limit".to_owned());
    let (room, had) = (Length::from_base(below.abs()), below.abs() < HAD);
    let kept = match bound {
        Bound::AtMost => below >= -KEPT,
        Bound::AtLeast => below <= KEPT,
        Bound::Exactly => had,
    };
    let side = match (below < 0.0, kept) {
        (false, true) => "below",
        (false, false) => "BELOW",
        (true, true) => "above",
        (true, false) => "ABOVE",
    };
    let text = match bound {
        Bound::Exactly if had => format!("flush with its {called}"),
        _ => format!("{} {side} its {called}", inches(room, 16)),
    };
    FitReport {
        name: limit.name.clone(),
        called,
        bound: bound.word().to_owned(),
        below: Some(say::fine_thickness(Length::from_base(below))),
        text,
        kept,
    }
}
