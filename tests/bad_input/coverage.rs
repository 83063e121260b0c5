//! Every code of the table of codes is met by a bad input, or a reason stands here.

use super::cases::{calls, jobs};
use overslab::failure::{Code, Family};
use std::collections::HashSet;

/// Codes that no input of the file can make.
const ELSEWHERE: [(Code, &str); 5] = [
    (Code::ZeroRefused, "only a sheet cannot tell an empty cell from a zero: see operation::sheet"),
    (Code::ProofFailed, "only a wrong solver makes it: see grade::solve's tests of the proof"),
    (
        Code::DrainNotFound,
        "only a search with a lower cap than the rows have: see grade::solve's tests of drain places",
    ),
    (Code::FlowLost, "only facets narrower than any that are taken lose water: see grade::drainage"),
    (Code::FormatNotBuilt, "every reader is built in where this runs: see survey::read"),
];

#[test]
fn every_code_is_met() {
    let mut met: HashSet<String> = calls().into_iter().map(|bad| bad.wanted.code).collect();
    met.extend(jobs().iter().map(|bad| bad.in_toml().1.code));
    for code in Code::ALL.iter().filter(|code| code.family() != Family::Border) {
        let elsewhere = ELSEWHERE.iter().any(|(known, _)| known == code);
        assert!(met.contains(code.name()) != elsewhere, "{}: met {}", code.name(), met.contains(code.name()));
    }
}

#[test]
fn every_kind_of_bad_input_has_its_own_name() {
    let ids: Vec<String> = calls()
        .into_iter()
        .map(|bad| bad.wanted.id)
        .chain(jobs().iter().map(|bad| bad.in_toml().1.id))
        .collect();
    let unique: HashSet<&String> = ids.iter().collect();
    assert_eq!(unique.len(), ids.len());
}
