//! What the new floor does to the things that it meets, for the report.

use crate::basis::BasisId;
use crate::clearance::{Check, JudgedThing, Work};
use crate::job::heights::{Heights, RodWords};
use crate::job::report::{ClearanceCheckReport, ClearanceReport, SaidBasis, TakenReport, WorkReport};
use crate::job::say;
use crate::quantity::inches;

/// The report on every thing.
pub(super) fn clearance_reports(judged: &[JudgedThing], heights: Heights) -> Vec<ClearanceReport> {
    judged.iter().map(|judged| of_thing(judged, heights)).collect()
}

fn of_thing(judged: &JudgedThing, heights: Heights) -> ClearanceReport {
    let judgement = &judged.judgement;
    let decides = judgement.decides();
    let [least, greatest] = judged.floor.rise();
    let most = judgement.floor_at_most();
    let asks = judgement.checks.iter().filter_map(|check| check.asks);
    ClearanceReport {
        name: judged.name.clone(),
        kind: judged.kind.word().to_owned(),
        verdict: judged.verdict().word().to_owned(),
        text: judged.why(),
        room: decides.and_then(|check| check.room).map(say::fine_thickness),
        basis: decides.map_or_else(String::new, |check| check.basis.name().to_owned()),
        rise_least: say::thickness(least),
        rise_greatest: say::thickness(greatest),
        floor_at_most: most.map(say::height),
        floor_at_most_rod: most.and_then(|most| heights.rod(most, RodWords::fine)),
        asks: asks.map(|measure| measure.question().to_owned()).collect(),
        forces: judged.forces(),
        works: judgement.works.iter().map(of_work).collect(),
        checks: judgement.checks.iter().map(of_check).collect(),
    }
}

fn of_check(check: &Check) -> ClearanceCheckReport {
    ClearanceCheckReport {
        about: check.about.word().to_owned(),
        verdict: check.verdict.word().to_owned(),
        room: check.room.map(say::fine_thickness),
        basis: check.basis.name().to_owned(),
        text: check.text.clone(),
    }
}

fn of_work(work: &Work) -> WorkReport {
    WorkReport {
        task: work.task.word().to_owned(),
        trade: work.task.trade().word().to_owned(),
        by: work.by.map(say::at_most),
        text: work.text(),
    }
}

/// Values that were taken for things, because none was given.
pub(super) fn taken(judged: &[JudgedThing]) -> Vec<TakenReport> {
    let each =
        judged.iter().flat_map(|judged| judged.judgement.taken.iter().map(move |taken| (judged, taken)));
    each.map(|(judged, (measure, value, basis))| TakenReport {
        what: format!("{} of {}", measure.name().replace('_', " "), judged.name),
        value: inches(*value, 8),
        why: basis.line(),
    })
    .collect()
}

/// Where the limits come from, each once.
pub(super) fn bases(judged: &[JudgedThing]) -> Vec<SaidBasis> {
    let mut seen: Vec<BasisId> = Vec::new();
    let mut bases = Vec::new();
    for check in judged.iter().flat_map(|judged| &judged.judgement.checks) {
        if seen.contains(&check.basis) {
            continue;
        }
        seen.push(check.basis);
        bases.push(SaidBasis {
            about: check.about.word().replace('_', " "),
            basis: check.basis.name().to_owned(),
            says: check.basis.line(),
        });
    }
    bases
}
