//! The inputs of a record operation, read by place with the type the function wants.

use super::Operation;
use super::choice::Choice;
use super::value::{Columns, Value};
use crate::failure::{Code, Failure, Result};
use crate::quantity::Typed;
use std::any::Any;

/// Checked inputs, one per port.
pub struct Args<'a> {
    operation: &'static Operation,
    values: &'a [Value],
    /// The places that were not given: fallbacks stand there.
    taken: &'a [usize],
}

impl<'a> Args<'a> {
    /// Inputs of that operation. The values must have passed [`call::prepare`](super::call).
    pub(super) const fn new(operation: &'static Operation, values: &'a [Value], taken: &'a [usize]) -> Self {
        Self { operation, values, taken }
    }

    /// Whether the value at this place was not given: its fallback stands there.
    #[must_use]
    pub fn is_taken(&self, place: usize) -> bool {
        self.taken.contains(&place)
    }

    fn value(&self, place: usize) -> &'a Value {
        self.values.get(place).unwrap_or(&Value::Absent)
    }

    fn missing(&self, place: usize) -> Box<Failure> {
        let (name, meaning) =
            self.operation.ports.get(place).map_or(("", ""), |port| (port.name, port.meaning));
        Failure::new(Code::KeyMissing, name).written("nothing").allowed(meaning).remedy("give this value")
    }

    fn mismatch(&self, place: usize, wanted: &str) -> Box<Failure> {
        let name = self.operation.ports.get(place).map_or("", |port| port.name);
        let given = self.value(place).kind_word();
        Failure::new(Code::KindMismatch, name)
            .written(given)
            .allowed(wanted)
            .remedy("give the kind of value named")
    }

    /// A quantity, where it was given.
    ///
    /// # Errors
    /// `KIND_MISMATCH`.
    pub fn quantity<Q: Typed>(&self, place: usize) -> Result<Option<Q>> {
        match self.value(place) {
            Value::Absent => Ok(None),
            Value::Number(base) => Ok(Some(Q::from_base(*base))),
            _ => Err(self.mismatch(place, Q::TYPE.name)),
        }
    }

    /// A quantity that must be there.
    ///
    /// # Errors
    /// `KIND_MISMATCH`, `KEY_MISSING`.
    pub fn required<Q: Typed>(&self, place: usize) -> Result<Q> {
        self.quantity(place)?.ok_or_else(|| self.missing(place))
    }

    /// A whole number, where it was given.
    ///
    /// # Errors
    /// `KIND_MISMATCH`.
    pub fn count(&self, place: usize) -> Result<Option<i64>> {
        match self.value(place) {
            Value::Absent => Ok(None),
            Value::Count(count) => Ok(Some(*count)),
            _ => Err(self.mismatch(place, "a whole number")),
        }
    }

    /// A site word, where it was given.
    ///
    /// # Errors
    /// `KIND_MISMATCH`.
    pub fn choice<C: Choice>(&self, place: usize) -> Result<Option<C>> {
        match self.value(place) {
            Value::Absent => Ok(None),
            Value::Choice(choice) => C::at(*choice).map(Some).ok_or_else(|| self.mismatch(place, "a word")),
            _ => Err(self.mismatch(place, "a word")),
        }
    }

    /// A text, where it was given.
    ///
    /// # Errors
    /// `KIND_MISMATCH`.
    pub fn text(&self, place: usize) -> Result<Option<&'a str>> {
        match self.value(place) {
            Value::Absent => Ok(None),
            Value::Text(text) => Ok(Some(text)),
            _ => Err(self.mismatch(place, "a text")),
        }
    }

    /// The bytes of a file, where they were given.
    ///
    /// # Errors
    /// `KIND_MISMATCH`.
    pub fn bytes(&self, place: usize) -> Result<Option<&'a [u8]>> {
        match self.value(place) {
            Value::Absent => Ok(None),
            Value::Bytes(bytes) => Ok(Some(bytes.as_slice())),
            _ => Err(self.mismatch(place, "the bytes of a file")),
        }
    }

    /// The bytes of a file, which must be there.
    ///
    /// # Errors
    /// `KIND_MISMATCH`, `KEY_MISSING`.
    pub fn required_bytes(&self, place: usize) -> Result<&'a [u8]> {
        self.bytes(place)?.ok_or_else(|| self.missing(place))
    }

    /// A table, where it was given.
    ///
    /// # Errors
    /// `KIND_MISMATCH`.
    pub fn table(&self, place: usize) -> Result<Option<&'a Columns>> {
        match self.value(place) {
            Value::Absent => Ok(None),
            Value::Table(columns) => Ok(Some(columns)),
            _ => Err(self.mismatch(place, "a table")),
        }
    }

    /// A table that must be there.
    ///
    /// # Errors
    /// `KIND_MISMATCH`, `KEY_MISSING`.
    pub fn required_table(&self, place: usize) -> Result<&'a Columns> {
        self.table(place)?.ok_or_else(|| self.missing(place))
    }

    /// A record, where it was given.
    ///
    /// # Errors
    /// `KIND_MISMATCH`.
    pub fn record<R: Any + Send + Sync>(&self, place: usize) -> Result<Option<&'a R>> {
        match self.value(place) {
            Value::Absent => Ok(None),
            Value::Record(record) => {
                record.downcast_ref().map(Some).ok_or_else(|| self.mismatch(place, "another kind of record"))
            }
            _ => Err(self.mismatch(place, "a record")),
        }
    }

    /// A record that must be there.
    ///
    /// # Errors
    /// `KIND_MISMATCH`, `KEY_MISSING`.
    pub fn required_record<R: Any + Send + Sync>(&self, place: usize) -> Result<&'a R> {
        self.record(place)?.ok_or_else(|| self.missing(place))
    }

    /// A required text.
    ///
    /// # Errors
    /// `KIND_MISMATCH`, `KEY_MISSING`.
    pub fn required_text(&self, place: usize) -> Result<&'a str> {
        self.text(place)?.ok_or_else(|| self.missing(place))
    }
}
