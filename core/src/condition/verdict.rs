//! The verdict on the old slab: where each way stands, which to take, why, what to do first and what to find out.

use super::asks::{Ask, asks};
use super::findings::{Finding, Findings, FindingsInput};
use super::judge::{Gap, Standings, at_worst, gap, governing, holding, rest, standings};
use super::resolve::{Resolved, TakenFinding};
use super::rule::{Effect, Rule, Standing, Then, Way};
use super::rules::rules;
use crate::caution::Caution;
use crate::choice;
use crate::failure::Result;

choice! {
    /// The way to take.
    pub enum Take {
        /// Pour over, unbonded.
        Unbonded = "unbonded",
        /// Bond to it.
        Bonded = "bonded",
        /// Break out the bad parts.
        BreakOutPart = "break_out_part",
        /// Break it all out.
        BreakOutWhole = "break_out_whole",
        /// Find out first what is asked for.
        FindOut = "find_out",
        /// Nothing, before an engineer or whoever is named has looked.
        Stop = "stop",
    }
}

/// Where one way stands.
#[derive(Clone, Copy, Debug)]
pub struct WayVerdict {
    /// Which way.
    pub way: Way,
    /// Where it stands.
    pub standing: Standing,
    /// The rule that governs it; none where nothing speaks against it.
    pub governed_by: Option<&'static Rule>,
}

/// A rule that weighs, on one way.
#[derive(Clone, Copy, Debug)]
pub struct Reason {
    /// The rule.
    pub rule: &'static Rule,
    /// The way.
    pub way: Way,
    /// What it does to it.
    pub then: &'static Then,
}

/// The verdict.
#[derive(Clone, Debug)]
pub struct Verdict {
    /// The ways judged.
    pub ways: Vec<WayVerdict>,
    /// The way to take.
    pub take: Take,
    /// Where the bad parts are broken out: the way that the rest goes.
    pub rest: Option<Way>,
    /// Every rule that weighs, way by way.
    pub reasons: Vec<Reason>,
    /// What could turn the verdict.
    pub asks: Vec<Ask>,
    /// The stops by name.
    pub stops: Vec<&'static Rule>,
    /// What can hurt.
    pub cautions: Vec<Caution>,
    /// What was not given and taken.
    pub taken: Vec<TakenFinding>,
    /// The findings judged.
    pub findings: Findings,
}

impl FindingsInput {
    /// The verdict on these findings.
    ///
    /// # Errors
    /// As [`FindingsInput::resolve`].
    pub fn verdict(&self) -> Result<Verdict> {
        Ok(Verdict::of(&self.resolve()?))
    }
}

impl Verdict {
    /// The verdict on findings.
    #[must_use]
    pub fn of(resolved: &Resolved) -> Self {
        Self::by(&rules().collect::<Vec<_>>(), resolved)
    }

    /// The verdict by some of the rules: what each of them decides is seen by leaving it out.
    pub(super) fn by(rules: &[&'static Rule], resolved: &Resolved) -> Self {
        let findings = resolved.findings;
        let judged: Vec<Way> =
            Way::ALL.into_iter().filter(|way| resolved.partly || *way != Way::PartlyBonded).collect();
        let standings = with_asks(standings(rules, &findings), standings(rules, &at_worst(rules, &findings)));
        let ways: Vec<WayVerdict> = Way::ALL
            .into_iter()
            .zip(standings)
            .filter(|(way, _)| judged.contains(way))
            .map(|(way, standing)| {
                let governed_by = governing(rules, &findings, way);
                WayVerdict { way, standing, governed_by }
            })
            .collect();
        let reasons: Vec<Reason> = judged
            .iter()
            .flat_map(|&way| {
                let reason = move |rule: &'static Rule| rule.on(way).map(|then| Reason { rule, way, then });
                holding(rules, &findings).filter_map(reason)
            })
            .collect();
        let weighs = |rule: &&'static Rule| judged.iter().any(|&way| rule.on(way).is_some());
        let mut cautions: Vec<Caution> = Vec::new();
        for caution in holding(rules, &findings).filter(weighs).filter_map(|rule| rule.caution) {
            if !cautions.contains(&caution) {
                cautions.push(caution);
            }
        }
        let mut taken = resolved.taken.clone();
        taken.extend(defaults(rules, &findings));
        Self {
            take: take(&ways),
            rest: rest(rules, &findings),
            reasons,
            asks: asks(rules, &findings, &judged),
            stops: holding(rules, &findings).filter(|rule| rule.named_stop).filter(weighs).collect(),
            cautions,
            taken,
            findings,
            ways,
        }
    }

    /// Where a way stands, where it was judged.
    #[must_use]
    pub fn standing(&self, way: Way) -> Option<Standing> {
        self.ways.iter().find(|judged| judged.way == way).map(|judged| judged.standing)
    }

    /// The work that a way takes, in the order of precedence.
    #[must_use]
    pub fn work(&self, way: Way) -> Vec<&'static str> {
        let mut list: Vec<&'static str> = Vec::new();
        let of_way =
            self.reasons.iter().filter(|reason| reason.way == way && reason.then.effect <= Effect::AfterWork);
        for work in of_way.filter_map(|reason| reason.then.work) {
            if !list.contains(&work) {
                list.push(work);
            }
        }
        list
    }
}

/// A way that is open, and that something not known could refuse, waits for it.
fn with_asks(now: Standings, worst: Standings) -> Standings {
    let mut all = now;
    for (standing, worst) in all.iter_mut().zip(worst) {
        if *standing < Standing::Asks && worst > Standing::Asks {
            *standing = Standing::Asks;
        }
    }
    all
}

fn defaults<'a>(
    rules: &'a [&'static Rule],
    findings: &'a Findings,
) -> impl Iterator<Item = TakenFinding> + 'a {
    let open = move |finding: &&Finding| gap(rules, findings, **finding) == Gap::Taken;
    Finding::ALL.iter().filter(open).filter_map(|&finding| {
        let (word, why) = finding.taken()?;
        Some(TakenFinding { finding, word, why: why.to_owned() })
    })
}

/// The way to take: over the slab unbonded where that is open, else bonded; where only something unknown stands against both it is found
/// out first; else the bad parts come out, else all of it. Pouring straight on is never taken.
fn take(ways: &[WayVerdict]) -> Take {
    let standing = |way: Way| ways.iter().find(|judged| judged.way == way).map(|judged| judged.standing);
    let open = |way: Way| standing(way).is_some_and(|standing| standing <= Standing::AllowedAfterWork);
    let asks = |way: Way| standing(way) == Some(Standing::Asks);
    let over = [(Way::Unbonded, Take::Unbonded), (Way::Bonded, Take::Bonded)];
    let out = [(Way::BreakOutPart, Take::BreakOutPart), (Way::BreakOutWhole, Take::BreakOutWhole)];
    if let Some((_, take)) = over.into_iter().find(|(way, _)| open(*way)) {
        return take;
    }
    if over.into_iter().any(|(way, _)| asks(way)) {
        return Take::FindOut;
    }
    let first = out.into_iter().find(|(way, _)| open(*way) || asks(*way));
    first.map_or(Take::Stop, |(way, take)| if asks(way) { Take::FindOut } else { take })
}
