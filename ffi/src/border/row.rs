//! The row of an operation, found while the library is compiled.

use super::guard::internal;
use overslab::operation::{Call, Operation};

/// The row of that name. Where a generated file lags behind the table there is none, and a row that refuses everything stands
/// in: the library must compile for the generator to be run.
pub(crate) const fn row(rows: &[&'static Operation], name: &str) -> &'static Operation {
    let mut at = 0;
    while at < rows.len() {
        if same(rows[at].name.as_bytes(), name.as_bytes()) {
            return rows[at];
        }
        at += 1;
    }
    &MISSING
}

static MISSING: Operation = Operation {
    name: "missing",
    module: "",
    since: "",
    meaning: "",
    equation: "",
    assumes: "",
    ports: &[],
    results: &[],
    basis: &[],
    example: "{}",
    refusals: &[],
    call: Call::Record(|_| Err(internal())),
};

const fn same(one: &[u8], other: &[u8]) -> bool {
    if one.len() != other.len() {
        return false;
    }
    let mut at = 0;
    while at < one.len() {
        if one[at] != other[at] {
            return false;
        }
        at += 1;
    }
    true
}

#[cfg(test)]
mod tests {
    use super::*;
    use overslab::operations::OPERATIONS;

    #[test]
    fn rows_are_found_by_their_whole_name() {
        for known in OPERATIONS {
            assert!(std::ptr::eq(row(OPERATIONS, known.name), *known));
        }
        assert!(std::ptr::eq(row(OPERATIONS, ""), &raw const MISSING));
        assert!(std::ptr::eq(row(OPERATIONS, "no such row"), &raw const MISSING));
    }
}
