//! Rows of the table, found by name when the crate is compiled.

use overslab::operation::Operation;

/// The operation of that name. A name that is not in the table does not compile: the index runs off its end.
pub(crate) const fn operation(table: &[&'static Operation], name: &str) -> &'static Operation {
    let mut place = 0;
    while !same(table[place].name, name) {
        place += 1;
    }
    table[place]
}

const fn same(one: &str, other: &str) -> bool {
    let (one, other) = (one.as_bytes(), other.as_bytes());
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
