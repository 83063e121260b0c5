//! Which findings that nobody gave could turn the verdict.

use super::findings::{Finding, Findings};
use super::judge::{Gap, gap, standings};
use super::rule::{Rule, Standing, Way, When};

/// Findings to find out: each of them, or where there are several all of them together, can turn a way.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Ask {
    /// Which findings.
    pub findings: Vec<Finding>,
    /// The ways that they could turn, and to what.
    pub turns: Vec<(Way, Standing)>,
    /// Whether a word is taken until it is known, so that no verdict waits for it.
    pub taken: bool,
}

impl Ask {
    /// The worst that they could do.
    fn worst(&self) -> Standing {
        self.turns.iter().map(|(_, to)| *to).max().unwrap_or(Standing::Allowed)
    }
}

/// What could turn the verdict on these ways: the smallest sets first, among them those that could do most.
///
/// A way turns where a rule comes to hold that does not hold yet. So the sets to try are the gaps of each such rule, and by the order of
/// the words the worst word of each shows whether any word can.
pub(super) fn asks(rules: &[&'static Rule], findings: &Findings, ways: &[Way]) -> Vec<Ask> {
    let before = standings(rules, findings);
    let mut sets: Vec<Vec<Finding>> = rules.iter().filter_map(|rule| gaps(rules, findings, rule)).collect();
    sets.sort_by_key(|set| (set.len(), set.clone()));
    sets.dedup();
    let mut list: Vec<Ask> = Vec::new();
    for set in sets {
        let mut tried = *findings;
        set.iter().for_each(|&finding| tried.set(finding, Some(finding.worst())));
        let after = standings(rules, &tried);
        let risen =
            Way::ALL.into_iter().zip(before.iter().zip(after)).filter(|(_, (before, after))| after > before);
        let known = |way: Way, to: Standing| {
            let within = |ask: &&Ask| ask.findings.iter().all(|finding| set.contains(finding));
            list.iter()
                .filter(within)
                .any(|ask| ask.turns.iter().any(|&(turned, by)| turned == way && by >= to))
        };
        let turns: Vec<(Way, Standing)> = risen
            .map(|(way, (_, to))| (way, to))
            .filter(|&(way, to)| ways.contains(&way) && !known(way, to))
            .collect();
        if !turns.is_empty() {
            let taken = set.iter().any(|&finding| gap(rules, findings, finding) == Gap::Taken);
            list.push(Ask { findings: set, turns, taken });
        }
    }
    list.sort_by_key(|ask| (ask.taken, ask.findings.len(), std::cmp::Reverse(ask.worst())));
    list
}

/// The gaps that keep a rule from holding; nothing where it holds, or where a finding that is known keeps it from that.
fn gaps(rules: &[&'static Rule], findings: &Findings, rule: &Rule) -> Option<Vec<Finding>> {
    let unmet: Vec<When> = rule.when.iter().copied().filter(|when| !when.holds(findings)).collect();
    let open = |when: &When| {
        matches!(when, When::AtLeast(..)) && gap(rules, findings, when.finding()) != Gap::Closed
    };
    let mut set: Vec<Finding> = unmet.iter().map(|when| when.finding()).collect();
    set.sort_unstable();
    set.dedup();
    (!set.is_empty() && unmet.iter().all(open)).then_some(set)
}
