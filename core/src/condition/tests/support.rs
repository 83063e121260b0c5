//! What the tests of the verdict share.

use crate::condition::findings::{Finding, Findings, FindingsInput};
use crate::condition::resolve::Resolved;
use crate::condition::rule::Rule;
use crate::condition::rules::rules;
use crate::condition::verdict::Verdict;
use serde::Deserialize;
use serde_json::{Map, Value as Json};

/// The golden set.
#[derive(Deserialize)]
pub(super) struct Golden {
    pub(super) sound: Map<String, Json>,
    pub(super) record: Vec<Record>,
}

/// A golden record.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Record {
    pub(super) id: String,
    pub(super) why: String,
    #[serde(default)]
    pub(super) bare: bool,
    #[serde(default)]
    pub(super) judge_partly_bonded: bool,
    pub(super) findings: Map<String, Json>,
    #[serde(default)]
    pub(super) without: Vec<String>,
    pub(super) quick: Option<Json>,
    pub(super) take: String,
    pub(super) unbonded: String,
    pub(super) bonded: String,
    pub(super) partly_bonded: Option<String>,
    pub(super) break_out_part: String,
    pub(super) break_out_whole: String,
    pub(super) rules: Vec<String>,
    #[serde(default)]
    pub(super) stops: Vec<String>,
    #[serde(default)]
    pub(super) cautions: Vec<String>,
    pub(super) asks: Option<Vec<Vec<String>>>,
    pub(super) taken: Option<Vec<String>>,
    pub(super) rest: Option<String>,
    #[serde(default)]
    pub(super) work: Vec<[String; 2]>,
}

pub(super) fn golden() -> Golden {
    toml::from_str(include_str!("../../../../tests/golden/condition.toml")).unwrap()
}

impl Record {
    /// Its findings over those of a sound slab.
    pub(super) fn input(&self, sound: &Map<String, Json>) -> FindingsInput {
        let mut all = if self.bare { Map::new() } else { sound.clone() };
        all.extend(self.findings.clone());
        self.without.iter().for_each(|name| drop(all.remove(name)));
        all.extend(self.quick.clone().map(|quick| ("quick".to_owned(), quick)));
        all.insert("judge_partly_bonded".to_owned(), self.judge_partly_bonded.into());
        crate::operation::record::parse(Json::Object(all))
            .unwrap_or_else(|failure| panic!("{}: {failure}", self.id))
    }
}

/// Every rule but one.
pub(super) fn without(id: &str) -> Vec<&'static Rule> {
    rules().filter(|rule| rule.id != id).collect()
}

/// Findings to judge, pouring straight on with them.
pub(super) fn judged(findings: Findings) -> Verdict {
    Verdict::of(&Resolved { findings, taken: Vec::new(), partly: true })
}

/// The findings of a sound slab.
pub(super) fn sound() -> Findings {
    let mut findings = Findings::default();
    Finding::ALL.iter().for_each(|&finding| findings.set(finding, Some(0)));
    findings
}

/// Repeatable pseudo-random numbers (xorshift, Marsaglia 2003).
pub(super) struct Random(pub(super) u64);

impl Random {
    pub(super) fn below(&mut self, limit: usize) -> usize {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 >> 33) as usize % limit
    }

    /// Findings at random: most at their best, some missing, some worse, some unknown.
    pub(super) fn findings(&mut self) -> Findings {
        let mut findings = Findings::default();
        let bad = 2 + self.below(8);
        for &finding in Finding::ALL {
            let word = match self.below(12) {
                0..2 => None,
                rest if rest < 2 + bad.min(5) => Some(self.below(finding.words().len())),
                _ => Some(0),
            };
            findings.set(finding, word);
        }
        findings
    }
}
