//! The rows of the tables, found while the library is compiled.
//!
//! Where a generated file lags behind the table a row that refuses everything stands in for the missing one: the library must
//! compile for the tests to say what lags.

use super::guard::internal;
use overslab::operation::{Call, Kind, Operation, Port, RecordType};

/// The row of that name.
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

/// The record type of that name, which one of the rows takes or makes.
pub(crate) const fn record_type(rows: &[&'static Operation], name: &str) -> &'static RecordType {
    let mut at = 0;
    while at < rows.len() {
        if let Some(found) = record_among(rows[at].results, name) {
            return found;
        }
        if let Some(found) = record_among(rows[at].ports, name) {
            return found;
        }
        at += 1;
    }
    &MISSING_RECORD
}

const fn record_among(ports: &'static [Port], name: &str) -> Option<&'static RecordType> {
    let mut at = 0;
    while at < ports.len() {
        if let Kind::Record(record) = ports[at].kind
            && same(record.name.as_bytes(), name.as_bytes())
        {
            return Some(record);
        }
        at += 1;
    }
    None
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

static MISSING_RECORD: RecordType = RecordType {
    name: "missing",
    class: "Missing",
    meaning: "",
    fields: &[],
    get: |_| None,
    to_json: |_| None,
    from_json: |_| Err(internal()),
    is: |_| false,
    example: "{}",
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
    use overslab::operations::{OPERATIONS, records};

    #[test]
    fn rows_are_found_by_their_whole_name() {
        for known in OPERATIONS {
            assert!(std::ptr::eq(row(OPERATIONS, known.name), *known));
        }
        assert!(std::ptr::eq(row(OPERATIONS, ""), &raw const MISSING));
        assert!(std::ptr::eq(row(OPERATIONS, "no such row"), &raw const MISSING));
    }

    #[test]
    fn record_types_are_found_by_their_whole_name() {
        for known in records(OPERATIONS) {
            assert!(std::ptr::eq(record_type(OPERATIONS, known.name), known));
        }
        assert!(std::ptr::eq(record_type(OPERATIONS, ""), &raw const MISSING_RECORD));
    }
}
