//! The old floor and the level of a job.

use crate::job::heights::{Heights, RodWords};
use crate::job::report::{LevelReport, OldFloor};
use crate::job::say;
use crate::quantity::{Length, Ratio, Typed, inches};
use crate::survey::Survey;
use crate::survey::old_slab::Facts;

/// The level: where the rod stood, and how the book closes.
pub(super) fn level_report(survey: &Survey, heights: Heights) -> Option<LevelReport> {
    let book = survey.book()?;
    let setup = book.setups.first()?;
    let benchmark = book.lines.first()?.start_elevation;
    let again = book.setups.iter().filter_map(|setup| setup.recheck.as_ref());
    let lines = book.lines.iter().filter_map(|line| line.closure.as_ref());
    let worst = again
        .map(|recheck| recheck.difference.base().abs())
        .chain(lines.map(|closure| closure.misclosure.base().abs()))
        .fold(None, |worst: Option<f64>, off| Some(worst.map_or(off, |worst| worst.max(off))));
    let closure = match worst {
        None => "not closed: the benchmark was not read again".to_owned(),
        Some(0.0) => "closes exactly".to_owned(),
        Some(off) => format!("closes within {}", inches(Length::from_base(off), 32)),
    };
    Some(LevelReport {
        benchmark: setup.backsight_point.clone(),
        elevation: say::height(benchmark),
        rod: heights.rod(benchmark, RodWords::coarse)?,
        closure,
    })
}

/// The old floor.
pub(super) fn old_floor(survey: &Survey, facts: &Facts) -> OldFloor {
    let corners = survey.outline().corners();
    let span = |pick: fn(&crate::survey::outline::Corner) -> f64| {
        let (low, high) = corners
            .iter()
            .map(pick)
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), at| (low.min(at), high.max(at)));
        say::distance(Length::from_base(high - low))
    };
    let percent = |share: Ratio| 100.0 * share.base();
    OldFloor {
        size: [span(|corner| corner.x.base()), span(|corner| corner.y.base())],
        area: say::surface(facts.area),
        shots: facts.shots,
        setups: survey.book().map_or(0, |book| book.setups.len()),
        highest: say::place(&facts.highest),
        lowest: say::place(&facts.lowest),
        out_of_level: say::thickness(facts.out_of_level),
        beyond_percent: percent(facts.beyond_share()),
        unsurveyed: say::surface(facts.unsurveyed),
        squareness: survey.squareness().map(str::to_owned),
        ambiguity: say::body(facts.ambiguity[0] + facts.ambiguity[1]),
    }
}
