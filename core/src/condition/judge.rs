//! How the rules bear on the ways.
//!
//! A finding that is missing counts as its best word here; what it could turn is worked out in [`super::asks`] from its worst one.
//! Every condition is *this word or worse*, so a worse finding can only add rules.

use super::findings::{Finding, Findings};
use super::rule::{Effect, Rule, Standing, Way};

/// Where each way stands, in the order of [`Way::ALL`].
pub(super) type Standings = [Standing; 5];

/// The rules that hold, in the order of precedence.
pub(super) fn holding<'a>(
    rules: &'a [&'static Rule],
    findings: &'a Findings,
) -> impl Iterator<Item = &'static Rule> + 'a {
    rules.iter().copied().filter(|rule| rule.holds(findings))
}

/// Where each way stands by the findings at hand.
pub(super) fn standings(rules: &[&'static Rule], findings: &Findings) -> Standings {
    let mut all = [Standing::Allowed; 5];
    // The rest of a slab that is broken out in part lies under an overlay too: what only its bad parts had is gone.
    let (mut unbonded, mut bonded) = (Standing::Allowed, Standing::Allowed);
    for rule in holding(rules, findings) {
        for (way, standing) in Way::ALL.into_iter().zip(all.iter_mut()) {
            let Some(to) = rule.on(way).map(|then| then.effect.standing()) else { continue };
            *standing = (*standing).max(to);
            match way {
                Way::Unbonded if !rule.local => unbonded = unbonded.max(to),
                Way::Bonded if !rule.local => bonded = bonded.max(to),
                _ => {}
            }
        }
    }
    for (way, standing) in Way::ALL.into_iter().zip(all.iter_mut()) {
        if way == Way::BreakOutPart {
            *standing = (*standing).max(unbonded.min(bonded));
        }
    }
    all
}

/// The way that the rest goes where the bad parts are broken out, where one is open.
pub(super) fn rest(rules: &[&'static Rule], findings: &Findings) -> Option<Way> {
    let worst = |way: Way| {
        let on = holding(rules, findings).filter(|rule| !rule.local).filter_map(|rule| rule.on(way));
        on.map(|then| then.effect.standing()).max().unwrap_or(Standing::Allowed)
    };
    let (unbonded, bonded) = (worst(Way::Unbonded), worst(Way::Bonded));
    match unbonded.min(bonded) {
        Standing::Refused | Standing::Stop => None,
        _ if unbonded <= bonded => Some(Way::Unbonded),
        _ => Some(Way::Bonded),
    }
}

/// The rule that governs a way: of those that do most to it the first.
pub(super) fn governing(rules: &[&'static Rule], findings: &Findings, way: Way) -> Option<&'static Rule> {
    let mut first: Option<(&'static Rule, Effect)> = None;
    for rule in holding(rules, findings) {
        let Some(then) = rule.on(way).filter(|then| then.effect > Effect::BelongsTo) else { continue };
        if first.is_none_or(|(_, known)| then.effect > known) {
            first = Some((rule, then.effect));
        }
    }
    first.map(|(rule, _)| rule)
}

/// What is not known of a finding, and could be found out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Gap {
    /// A word is given, or a rule says what not knowing means.
    Closed,
    /// Nothing is known, and a word is taken until it is.
    Taken,
    /// Nothing is known.
    Open,
}

/// What is not known of a finding.
pub(super) fn gap(rules: &[&'static Rule], findings: &Findings, finding: Finding) -> Gap {
    let unknown = findings.get(finding).is_none_or(|word| Some(word) == finding.unknown());
    let ruled = |rule: &&'static Rule| rule.when.contains(&super::rule::When::Unknown(finding));
    let settled = findings.get(finding).is_some() && rules.iter().any(ruled);
    match (unknown && !settled, finding.taken().is_some()) {
        (false, _) => Gap::Closed,
        (true, true) => Gap::Taken,
        (true, false) => Gap::Open,
    }
}

/// The findings with what is open at its worst word.
pub(super) fn at_worst(rules: &[&'static Rule], findings: &Findings) -> Findings {
    let mut worst = *findings;
    for &finding in Finding::ALL {
        if gap(rules, findings, finding) == Gap::Open {
            worst.set(finding, Some(finding.worst()));
        }
    }
    worst
}
