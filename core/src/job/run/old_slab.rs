//! The verdict on the old slab, with the room that the new floor leaves.

use super::overlay::weight;
use crate::basis::BasisId;
use crate::condition::rule::Standing;
use crate::condition::{Ask, Finding, FindingsInput, TakenFinding, Verdict, WayVerdict};
use crate::failure::Result;
use crate::job::input::Job;
use crate::job::report::{
    AskReport, Measure, OldSlabReport, ReasonReport, SaidBasis, StopReport, TakenReport, WayReport,
};
use crate::overlay::weight::Support;
use crate::quantity::{Given, Length, Typed, inches};

/// The verdict of a job, and what was taken for it.
pub(super) struct OldSlab {
    pub(super) verdict: Verdict,
    room: Option<Length>,
    /// What the new floor would weigh, over a slab that spans free.
    adds: Option<Measure>,
}

impl Job {
    /// The verdict, where the job says what was found. The least thickness of the new floor is the room that there is, unless one is given.
    pub(super) fn old_slab(&self, least: Length, mean: Length) -> Result<Option<OldSlab>> {
        let Some(input) = &self.old_slab else { return Ok(None) };
        let room = (input.room.is_none() && input.measured_room.is_none()).then_some(least);
        // Old concrete that stands above the new floor leaves no room at all.
        let measured = room.map(|room| Given::computed(Length::from_base(room.base().max(0.0))));
        let with_room =
            FindingsInput { measured_room: input.measured_room.clone().or(measured), ..input.clone() };
        let judge = |input: &FindingsInput| input.verdict().map_err(|failure| failure.under("old_slab"));
        let verdict = judge(&with_room)?;
        if !verdict.spans() {
            return Ok(Some(OldSlab { verdict, room, adds: None }));
        }
        // The room is the thickness of the new floor, of which nothing is told here.
        let adds = Some(weight(mean, Support::Suspended)?);
        Ok(Some(OldSlab { verdict: judge(input)?, room: None, adds }))
    }
}

impl OldSlab {
    /// The report's part.
    pub(super) fn report(&self) -> OldSlabReport {
        let verdict = &self.verdict;
        OldSlabReport {
            take: verdict.take.word().to_owned(),
            text: verdict.headline(),
            spans: verdict.spans(),
            added_weight: self.adds.clone(),
            stops: verdict.stops.iter().map(|rule| self.stop(rule)).collect(),
            speaks_for: verdict.speaks_for().into_iter().map(str::to_owned).collect(),
            ways: verdict.ways.iter().map(|judged| self.way(judged)).collect(),
            find_out: verdict.asks.iter().map(ask).collect(),
        }
    }

    fn stop(&self, rule: &crate::condition::Rule) -> StopReport {
        let stands = |judged: &&WayVerdict| {
            let to = rule.on(judged.way).map(|then| then.effect.standing());
            to.is_some_and(|to| to > Standing::AllowedAfterWork)
        };
        let ways: Vec<&str> =
            self.verdict.ways.iter().filter(stands).map(|judged| judged.way.word()).collect();
        StopReport {
            rule: rule.id.to_owned(),
            closes: ways.into_iter().map(str::to_owned).collect(),
            text: rule.said(),
            lifts: rule.then.iter().filter_map(|then| then.work).map(str::to_owned).collect(),
        }
    }

    fn way(&self, judged: &WayVerdict) -> WayReport {
        let of_way = self.verdict.reasons.iter().filter(|reason| reason.way == judged.way);
        let reason = |reason: &crate::condition::Reason| ReasonReport {
            rule: reason.rule.id.to_owned(),
            standing: reason.then.effect.standing().word().to_owned(),
            text: reason.rule.said(),
            basis: reason.rule.basis.name().to_owned(),
        };
        WayReport {
            way: judged.way.word().to_owned(),
            standing: judged.standing.word().to_owned(),
            taken: self.verdict.taken_way() == Some(judged.way),
            minds: self.verdict.reasons_said(judged.way),
            reasons: of_way.map(reason).collect(),
            work: self.verdict.work(judged.way).into_iter().map(str::to_owned).collect(),
            text: self.verdict.way_said(judged),
        }
    }

    /// Where the rules that weigh come from, each once.
    pub(super) fn bases(&self) -> Vec<SaidBasis> {
        let mut list: Vec<BasisId> = Vec::new();
        for basis in self.verdict.reasons.iter().map(|reason| reason.rule.basis) {
            if !list.contains(&basis) {
                list.push(basis);
            }
        }
        let said = |basis: BasisId| SaidBasis {
            about: "old slab".to_owned(),
            basis: basis.name().to_owned(),
            says: basis.line(),
        };
        list.into_iter().map(said).collect()
    }

    /// What was taken and not given, what has one reason on one line.
    pub(super) fn taken(&self) -> Vec<TakenReport> {
        let mut list: Vec<TakenReport> = Vec::new();
        let room = self.room.map(|room| TakenReport {
            what: "room for an overlay".to_owned(),
            value: inches(room, 8),
            why: "the least thickness of the new floor".to_owned(),
        });
        list.extend(room);
        // A room that is taken speaks of a new floor, of which nothing is told over a slab that spans.
        let spans = self.verdict.spans();
        let told = |taken: &&TakenFinding| !(spans && taken.finding == Finding::Room);
        let taken: Vec<&TakenFinding> = self.verdict.taken.iter().filter(told).collect();
        let mut whys: Vec<&str> = taken.iter().map(|taken| taken.why.as_str()).collect();
        whys.dedup();
        for why in whys {
            let same = taken.iter().filter(|taken| taken.why == why);
            let said: Vec<&str> = same.map(|taken| taken.finding.says(taken.word)).collect();
            if !list.iter().any(|line| line.why == why) {
                list.push(TakenReport {
                    what: "old slab".to_owned(),
                    value: said.join("; "),
                    why: why.to_owned(),
                });
            }
        }
        list
    }
}

fn ask(ask: &Ask) -> AskReport {
    let meanings: Vec<&str> = ask.findings.iter().map(|finding| finding.meaning()).collect();
    AskReport {
        findings: ask.findings.iter().map(|finding| finding.name().to_owned()).collect(),
        closes: ask.turns.iter().any(|(_, to)| *to > Standing::Asks),
        taken: ask.taken,
        what: meanings.join(" and "),
        text: ask.said(),
    }
}
