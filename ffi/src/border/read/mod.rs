//! Reading what a record or an answer holds: numbers, counts, words, texts, tables, by place.

mod notes;
mod single;
mod table;
mod whole;

pub(crate) use notes::{note_text, notes};
pub(crate) use single::{count, number, text, values};
pub(crate) use table::{column, column_text, rows};
pub(crate) use whole::{answer_to_json, from_json, record, to_json};

use super::guard::internal;
use super::handle::Passed;
use overslab::failure::{Code, Failure, Result};
use overslab::operation::{Columns, Kind, Port, RecordType, TableType, Value};
use std::ffi::c_int;

/// What is read: a record's fields, or an answer's results.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Holder {
    /// A record of that type.
    Record(&'static RecordType, Passed),
    /// An answer.
    Answer(Passed),
}

/// One value with its port.
type Held<'a> = (&'static Port, &'a Value);

#[expect(unsafe_code, reason = "reads what the library's own pointer points to")]
impl Holder {
    /// # Safety
    /// The pointer is null or came from the library and was not freed.
    unsafe fn all<'a>(self) -> Result<(&'static [Port], &'a [Value])> {
        // SAFETY: as this function's.
        unsafe {
            match self {
                Self::Record(kind, passed) => Ok((kind.fields, passed.record(kind)?.fields())),
                Self::Answer(passed) => {
                    let (row, answer) = passed.answer()?;
                    Ok((row.results, &answer.results))
                }
            }
        }
    }

    const fn word(self) -> &'static str {
        match self {
            Self::Record(..) => "field",
            Self::Answer(_) => "result",
        }
    }

    /// The value at that place.
    ///
    /// # Safety
    /// The pointer is null or came from the library and was not freed.
    unsafe fn one<'a>(self, place: c_int) -> Result<Held<'a>> {
        // SAFETY: as this function's.
        let (ports, values) = unsafe { self.all() }?;
        let at = within(self.word(), place, ports.len())?;
        ports.get(at).zip(values.get(at)).ok_or_else(internal)
    }

    /// The table at that place.
    ///
    /// # Safety
    /// The pointer is null or came from the library and was not freed.
    unsafe fn table<'a>(self, place: c_int) -> Result<(&'static TableType, &'a Columns)> {
        // SAFETY: as this function's.
        let (port, value) = unsafe { self.one(place) }?;
        match (&port.kind, value) {
            (Kind::Table(table), Value::Table(columns)) => Ok((table, columns)),
            _ => Err(other_kind(port, value, "a table")),
        }
    }
}

/// A place below `count`.
fn within(word: &str, place: c_int, count: usize) -> Result<usize> {
    let found = usize::try_from(place).ok().filter(|place| *place < count);
    found.ok_or_else(|| {
        Failure::new(Code::OutOfRange, word)
            .written(place.to_string())
            .allowed(format!("0 or more, less than {count}"))
            .remedy("use the constants of the header")
    })
}

fn other_kind(port: &Port, value: &Value, wanted: &str) -> Box<Failure> {
    if matches!(value, Value::Absent) {
        return Failure::new(Code::KeyMissing, port.name)
            .allowed(port.meaning)
            .remedy("there is none in this answer");
    }
    Failure::new(Code::KindMismatch, port.name)
        .written(port.kind.word())
        .allowed(wanted)
        .remedy("read it by the function for its kind")
}
