//! Laws of the verdict: what holds for all findings.

use super::support::{Random, judged, sound};
use crate::condition::Verdict;
use crate::condition::findings::{Finding, Findings};
use crate::condition::judge::{Gap, at_worst, gap, standings};
use crate::condition::rule::{Rule, Standing, Way};
use crate::condition::rules::rules;

/// Whether nothing moved toward allowed, and no work went away.
fn no_better(better: &Verdict, worse: &Verdict, what: &str) {
    for (one, other) in better.ways.iter().zip(&worse.ways) {
        assert!(
            other.standing >= one.standing,
            "{what}: {:?} {:?} -> {:?}",
            one.way,
            one.standing,
            other.standing
        );
        let (before, after) = (better.work(one.way), worse.work(one.way));
        assert!(
            before.iter().all(|work| after.contains(work)),
            "{what}: {:?}: {before:?} -> {after:?}",
            one.way
        );
    }
    let stops = |verdict: &Verdict| verdict.stops.iter().map(|rule| rule.id).collect::<Vec<_>>();
    let after = stops(worse);
    assert!(stops(better).iter().all(|stop| after.contains(stop)), "{what}");
}

#[test]
fn worse_in_one_finding_never_opens_a_way() {
    let mut random = Random(0x5EED_0001);
    for round in 0..150 {
        let findings = random.findings();
        let finding = Finding::ALL[random.below(Finding::ALL.len())];
        let mut before = findings;
        before.set(finding, Some(0));
        let mut before = judged(before);
        for word in 1..=finding.worst() {
            let mut worse = findings;
            worse.set(finding, Some(word));
            let worse = judged(worse);
            no_better(&before, &worse, &format!("round {round}, {} {word}", finding.name()));
            before = worse;
        }
    }
}

/// Where each way stands with what could turn it, the work aside.
fn stand(rules: &[&'static Rule], findings: &Findings) -> [Standing; 5] {
    let (mut now, worst) = (standings(rules, findings), standings(rules, &at_worst(rules, findings)));
    for (now, worst) in now.iter_mut().zip(worst) {
        if *now < Standing::Asks && worst > Standing::Asks {
            *now = Standing::Asks;
        }
    }
    now
}

#[test]
fn worse_in_one_finding_never_opens_a_way_over_all_pairs() {
    let rules: Vec<&'static Rule> = rules().collect();
    let words = |finding: Finding| std::iter::once(None).chain((0..finding.words().len()).map(Some));
    for base in [sound(), Findings::default()] {
        for (index, &one) in Finding::ALL.iter().enumerate() {
            for &other in &Finding::ALL[index + 1..] {
                for word in words(other) {
                    let mut before = base;
                    before.set(other, word);
                    before.set(one, Some(0));
                    let mut before = (before, stand(&rules, &before));
                    for worse in 1..=one.worst() {
                        let mut next = before.0;
                        next.set(one, Some(worse));
                        let after = stand(&rules, &next);
                        let opened = before.1.iter().zip(&after).any(|(before, after)| after < before);
                        assert!(!opened, "{} {worse} with {} {word:?}", one.name(), other.name());
                        before = (next, after);
                    }
                }
            }
        }
    }
}

#[test]
fn every_finding_that_weighs_is_named() {
    let mut random = Random(0x5EED_0002);
    for _ in 0..100 {
        let findings = random.findings();
        let whole = judged(findings);
        for &finding in
            Finding::ALL.iter().filter(|&&finding| findings.get(finding).is_some_and(|word| word > 0))
        {
            let mut best = findings;
            best.set(finding, Some(0));
            let moved = Way::ALL.into_iter().filter(|&way| judged(best).standing(way) < whole.standing(way));
            for way in moved.filter(|&way| whole.standing(way) != Some(Standing::Asks)) {
                let names = |reason: &crate::condition::Reason| {
                    reason.rule.when.iter().any(|when| when.finding() == finding)
                };
                // What is broken out in part stands where the ways over it stand.
                let named = whole
                    .reasons
                    .iter()
                    .any(|reason| (reason.way == way || way == Way::BreakOutPart) && names(reason));
                assert!(named, "{} moves {way:?} and is not named", finding.name());
            }
        }
    }
}

#[test]
fn what_is_asked_is_what_can_turn_the_verdict() {
    let rules: Vec<&'static Rule> = rules().collect();
    let mut random = Random(0x5EED_0003);
    for _ in 0..20 {
        let findings = random.findings();
        let verdict = judged(findings);
        let before = standings(&rules, &findings);
        let gaps: Vec<Finding> = Finding::ALL
            .iter()
            .copied()
            .filter(|&finding| gap(&rules, &findings, finding) != Gap::Closed)
            .collect();
        let asked = |set: &[Finding], way: Way, to: Standing| {
            verdict.asks.iter().any(|ask| {
                ask.findings.iter().all(|finding| set.contains(finding))
                    && ask.turns.iter().any(|&(turned, by)| turned == way && by >= to)
            })
        };
        let mut turned = Vec::new();
        for (index, &one) in gaps.iter().enumerate() {
            for &other in &gaps[index..] {
                for word in 0..=one.worst() {
                    for beside in 0..=other.worst() {
                        let mut tried = findings;
                        tried.set(one, Some(word));
                        tried.set(other, Some(beside));
                        let after = standings(&rules, &tried);
                        for (way, (before, to)) in Way::ALL.into_iter().zip(before.into_iter().zip(after)) {
                            if to > before && way != Way::BreakOutPart {
                                assert!(
                                    asked(&[one, other], way, to),
                                    "{} and {}: {way:?}",
                                    one.name(),
                                    other.name()
                                );
                                turned.push((one, other, way));
                            }
                        }
                    }
                }
            }
        }
        for ask in verdict.asks.iter().filter(|ask| ask.findings.len() == 1) {
            let finding = ask.findings[0];
            let part_only = ask.turns.iter().all(|(way, _)| *way == Way::BreakOutPart);
            let turns = turned.iter().any(|(one, other, _)| *one == finding && *other == finding);
            assert!(turns || part_only, "{} turns nothing", finding.name());
        }
    }
}

#[test]
fn a_way_waits_only_for_what_is_asked() {
    let mut random = Random(0x5EED_0004);
    for _ in 0..100 {
        let verdict = judged(random.findings());
        for judged in verdict.ways.iter().filter(|judged| judged.standing == Standing::Asks) {
            let asked = verdict.asks.iter().filter(|ask| !ask.taken).any(|ask| {
                ask.turns.iter().any(|&(way, to)| {
                    to > Standing::Asks && (way == judged.way || judged.way == Way::BreakOutPart)
                })
            });
            assert!(asked, "{:?} waits for nothing: {:?}", judged.way, verdict.asks);
        }
    }
}

#[test]
fn a_number_known_from_memory_refuses_nothing() {
    use crate::basis::{Kind, Seen};
    use crate::condition::rule::Effect;
    for rule in rules() {
        let memory = matches!(rule.basis.kind(), Kind::Published { seen: Seen::Memory, .. });
        let number = rule.says.chars().any(|sign| sign.is_ascii_digit());
        let refuses = rule.then.iter().any(|then| then.effect > Effect::AfterWork);
        assert!(!(memory && number && refuses), "{}", rule.id);
    }
}

#[test]
fn rules_have_names_of_their_own_and_say_something_to_some_way() {
    let mut ids: Vec<&str> = rules().map(|rule| rule.id).collect();
    ids.sort_unstable();
    assert!(ids.windows(2).all(|pair| pair[0] != pair[1]));
    for rule in rules() {
        assert!(!rule.says.is_empty() && !rule.then.is_empty(), "{}", rule.id);
        let known = rule.when.iter().all(|when| match when {
            crate::condition::rule::When::AtLeast(finding, word) => *word > 0 && *word <= finding.worst(),
            crate::condition::rule::When::Unknown(finding) => finding.unknown().is_some(),
        });
        assert!(known, "{}", rule.id);
    }
}
