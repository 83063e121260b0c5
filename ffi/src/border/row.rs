//! The row of an operation, found while the library is compiled.

use overslab::operation::Operation;

/// The place of the row of that name. Where there is none the place lies outside the table, so that a constant made from it
/// does not compile.
pub(crate) const fn place(rows: &[&Operation], name: &str) -> usize {
    let mut at = 0;
    while at < rows.len() && !same(rows[at].name.as_bytes(), name.as_bytes()) {
        at += 1;
    }
    at
}

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
