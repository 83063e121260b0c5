//! Values that cross a border: numbers in base units, words, texts, tables, records.

use super::bytes::Bytes;
use std::any::Any;
use std::sync::Arc;

/// One value of a port.
#[derive(Clone, Debug, Default)]
pub enum Value {
    /// Not given.
    #[default]
    Absent,
    /// A number in base units.
    Number(f64),
    /// A whole number.
    Count(i64),
    /// The place of a word among the choices.
    Choice(usize),
    /// Text.
    Text(String),
    /// The bytes of a file.
    Bytes(Bytes),
    /// Columns.
    Table(Columns),
    /// A record.
    Record(Arc<dyn Any + Send + Sync>),
}

impl Value {
    /// A record value of this record.
    pub fn record(record: impl Any + Send + Sync) -> Self {
        Self::Record(Arc::new(record))
    }

    /// The word for its kind, for messages.
    #[must_use]
    pub const fn kind_word(&self) -> &'static str {
        match self {
            Self::Absent => "nothing",
            Self::Number(_) => "a number",
            Self::Count(_) => "a whole number",
            Self::Choice(_) => "a word",
            Self::Text(_) => "a text",
            Self::Bytes(_) => "bytes",
            Self::Table(_) => "a table",
            Self::Record(_) => "a record",
        }
    }
}

/// A table by columns, in the order of its type.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Columns {
    /// How many rows.
    pub rows: usize,
    /// One per column of the type.
    pub columns: Vec<Column>,
}

/// One column.
#[derive(Clone, Debug, PartialEq)]
pub enum Column {
    /// The whole column was not given.
    Absent,
    /// Numbers in base units; NaN stands for an empty cell of an optional column.
    Numbers(Vec<f64>),
    /// Whole numbers; `None` for an empty cell.
    Counts(Vec<Option<i64>>),
    /// Places of words; `None` for an empty cell.
    Choices(Vec<Option<usize>>),
    /// Texts; `None` for an empty cell.
    Texts(Vec<Option<String>>),
}

impl Column {
    /// How many rows it has; an absent column has none.
    #[must_use]
    pub fn len(&self) -> usize {
        match self {
            Self::Absent => 0,
            Self::Numbers(list) => list.len(),
            Self::Counts(list) => list.len(),
            Self::Choices(list) => list.len(),
            Self::Texts(list) => list.len(),
        }
    }

    /// Whether it has no rows.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.len() == 0
    }
}

impl Columns {
    /// The numbers of a column, in base units; empty where it was not given.
    #[must_use]
    pub fn numbers(&self, column: usize) -> &[f64] {
        match self.columns.get(column) {
            Some(Column::Numbers(list)) => list,
            _ => &[],
        }
    }

    /// A text of a column, where it was given.
    #[must_use]
    pub fn text(&self, column: usize, row: usize) -> Option<&str> {
        match self.columns.get(column) {
            Some(Column::Texts(list)) => list.get(row)?.as_deref(),
            _ => None,
        }
    }

    /// A number of a column, where it was given.
    #[must_use]
    pub fn number(&self, column: usize, row: usize) -> Option<f64> {
        self.numbers(column).get(row).copied().filter(|number| !number.is_nan())
    }

    /// The place of a word of a column, where it was given.
    #[must_use]
    pub fn choice(&self, column: usize, row: usize) -> Option<usize> {
        match self.columns.get(column) {
            Some(Column::Choices(list)) => list.get(row).copied().flatten(),
            _ => None,
        }
    }

    /// A whole number of a column, where it was given.
    #[must_use]
    pub fn count(&self, column: usize, row: usize) -> Option<i64> {
        match self.columns.get(column) {
            Some(Column::Counts(list)) => list.get(row).copied().flatten(),
            _ => None,
        }
    }
}
