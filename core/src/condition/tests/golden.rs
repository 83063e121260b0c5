//! The golden set, and that each rule decides something in it.

use super::support::{Record, golden, without};
use crate::condition::resolve::Resolved;
use crate::condition::rule::{Rule, Way};
use crate::condition::rules::rules;
use crate::condition::verdict::Verdict;
use std::fmt::Write;

/// What is wrong with a verdict by its record.
fn wrong(record: &Record, verdict: &Verdict) -> String {
    let mut wrong = String::new();
    let mut same = |what: &str, is: &str, wanted: &str| {
        if is != wanted {
            let _ = writeln!(wrong, "{}: {what} is {is}, not {wanted}", record.id);
        }
    };
    let stands = |way: Way| verdict.standing(way).map_or("not judged", |standing| standing.word());
    same("take", verdict.take.word(), &record.take);
    same("unbonded", stands(Way::Unbonded), &record.unbonded);
    same("bonded", stands(Way::Bonded), &record.bonded);
    same("break_out_part", stands(Way::BreakOutPart), &record.break_out_part);
    same("break_out_whole", stands(Way::BreakOutWhole), &record.break_out_whole);
    same("partly_bonded", stands(Way::PartlyBonded), record.partly_bonded.as_deref().unwrap_or("not judged"));
    let shown = |rule: &&Rule| !rule.when.is_empty() || rule.id == "straight_on";
    let weigh = verdict.reasons.iter().map(|reason| reason.rule).filter(shown).map(|rule| rule.id.to_owned());
    same("rules", &sorted(weigh.collect()), &sorted(record.rules.clone()));
    same(
        "stops",
        &sorted(verdict.stops.iter().map(|rule| rule.id.to_owned()).collect()),
        &sorted(record.stops.clone()),
    );
    let cautions = verdict.cautions.iter().map(|caution| caution.name().to_owned()).collect();
    same("cautions", &sorted(cautions), &sorted(record.cautions.clone()));
    if let Some(asks) = &record.asks {
        let names =
            |ask: &crate::condition::Ask| sorted(ask.findings.iter().map(|f| f.name().to_owned()).collect());
        let is: Vec<String> = verdict.asks.iter().map(names).collect();
        let wanted: Vec<String> = asks.iter().map(|set| sorted(set.clone())).collect();
        same("asks", &is.join(" | "), &wanted.join(" | "));
    }
    if let Some(taken) = &record.taken {
        let is = verdict.taken.iter().map(|taken| taken.finding.name().to_owned()).collect();
        same("taken", &sorted(is), &sorted(taken.clone()));
    }
    if let Some(rest) = &record.rest {
        same("rest", verdict.rest.map_or("none", Way::word), rest);
    }
    for [way, words] in &record.work {
        let way = Way::ALL.into_iter().find(|known| known.word() == way).unwrap();
        let works = verdict.work(way).join(" | ");
        same("work", if works.contains(words.as_str()) { words } else { &works }, words);
    }
    wrong
}

fn sorted(mut names: Vec<String>) -> String {
    names.sort_unstable();
    names.dedup();
    names.join(", ")
}

/// The records as they are judged.
fn resolved() -> Vec<(Record, Resolved)> {
    let golden = golden();
    let resolve = |record: &Record| {
        record.input(&golden.sound).resolve().unwrap_or_else(|failure| panic!("{}: {failure}", record.id))
    };
    let all: Vec<Resolved> = golden.record.iter().map(resolve).collect();
    golden.record.into_iter().zip(all).collect()
}

#[test]
fn every_record_is_judged_as_the_trade_would() {
    let records = resolved();
    assert!(records.len() >= 30);
    let all: String =
        records.iter().map(|(record, resolved)| wrong(record, &Verdict::of(resolved))).collect();
    assert!(all.is_empty(), "\n{all}");
}

#[test]
fn every_record_has_its_own_name_and_says_why() {
    let records = golden().record;
    let names: std::collections::HashSet<&str> = records.iter().map(|record| record.id.as_str()).collect();
    assert_eq!(names.len(), records.len());
    assert!(records.iter().all(|record| record.why.len() > 10));
}

/// What a verdict comes to, its reasons aside.
fn outcome(verdict: &Verdict) -> String {
    let ways = verdict.ways.iter().map(|judged| (judged.way, judged.standing, verdict.work(judged.way)));
    let stops: Vec<&str> = verdict.stops.iter().map(|rule| rule.id).collect();
    format!(
        "{:?} {:?} {:?} {stops:?} {:?} {:?}",
        ways.collect::<Vec<_>>(),
        verdict.take,
        verdict.rest,
        verdict.cautions,
        verdict.asks
    )
}

#[test]
fn without_any_one_rule_the_golden_set_fails() {
    let records = resolved();
    let whole: Vec<String> = records.iter().map(|(_, resolved)| outcome(&Verdict::of(resolved))).collect();
    for rule in rules() {
        let fewer = without(rule.id);
        let changed = records
            .iter()
            .zip(&whole)
            .filter(|((_, resolved), whole)| outcome(&Verdict::by(&fewer, resolved)) != **whole);
        let fails = changed
            .filter(|((record, resolved), _)| !wrong(record, &Verdict::by(&fewer, resolved)).is_empty());
        assert!(fails.count() > 0, "{} decides no golden record", rule.id);
    }
}
