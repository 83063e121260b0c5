//! Columns that marks need beside those of other tables.

use crate::operation::{Choice, Column};

/// A column of whole numbers that some rows lack.
pub(super) fn counts<T>(rows: &[T], count: impl Fn(&T) -> Option<usize>) -> Column {
    Column::Counts(rows.iter().map(|row| count(row).map(|count| count as i64)).collect())
}

/// A column of texts that some rows lack.
pub(super) fn texts<T>(rows: &[T], text: impl Fn(&T) -> Option<String>) -> Column {
    Column::Texts(rows.iter().map(text).collect())
}

/// A column of words.
pub(super) fn words<T, C: Choice + PartialEq>(rows: &[T], word: impl Fn(&T) -> C) -> Column {
    let place = |row: &T| {
        let member = word(row);
        C::MEMBERS.iter().position(|known| *known == member)
    };
    Column::Choices(rows.iter().map(place).collect())
}
