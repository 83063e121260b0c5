//! The call of a record row: what the arguments and the options say, put together and checked.

use super::array::{Input, length};
use super::bytes_in::BytesIn;
use super::guard::{internal, null};
use super::handle::Passed;
use super::json::object;
use super::text_in::TextIn;
use overslab::failure::{Code, Failure, Place, Result};
use overslab::operation::terms::{AsGiven, InJson, Written, in_callers_terms};
use overslab::operation::{Answer, Column, Columns, Kind, Operation, Port, TableType, Value, call, decode};
use overslab::quantity::System;
use serde_json::{Map, Value as Json};
use std::ffi::{c_char, c_int};

/// What one argument gives.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Given<'a> {
    /// A number in the unit of its port.
    Number(f64),
    /// A count, or the place of a word.
    Whole(c_int),
    /// A text.
    Text(TextIn),
    /// The bytes of a file.
    Bytes(BytesIn),
    /// So many rows of these columns, by their places.
    Table(c_int, &'a [(usize, Input)]),
    /// A record; null where it is not given.
    Record(Passed),
}

/// One call of a record row.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Request<'a> {
    pub(super) row: &'static Operation,
    pub(super) system: System,
    given: &'a [(usize, Given<'a>)],
    options: TextIn,
}

impl<'a> Request<'a> {
    /// What the arguments give, by the places of their ports; what else is given, as an object of ports and of columns of
    /// tables; bare numbers are in units of the system.
    pub(crate) const fn new(
        row: &'static Operation,
        system: System,
        given: &'a [(usize, Given<'a>)],
        options_json: *const c_char,
        options_len: c_int,
    ) -> Self {
        Self { row, system, given, options: TextIn::new("options_json", options_json, options_len) }
    }
}

#[expect(unsafe_code, reason = "reads the caller's arguments")]
impl Request<'_> {
    /// Calls the operation.
    ///
    /// # Safety
    /// Every pointer is null or has its length, and records came from the library.
    ///
    /// # Errors
    /// What the arguments, the options or the operation are refused for, in the caller's own terms.
    pub(super) unsafe fn answer(&self) -> Result<Answer> {
        // SAFETY: as this function's.
        let options = object("options_json", unsafe { self.options.read() }?)?;
        // SAFETY: as this function's.
        let answer = unsafe { self.values(&options) }.and_then(|values| call::invoke(self.row, values));
        let as_given = InCall { request: self, options: &options };
        answer.map_err(|failure| in_callers_terms(failure, self.row, self.system, &as_given))
    }

    unsafe fn values(&self, options: &Map<String, Json>) -> Result<Vec<Value>> {
        let mut values = decode::decode(self.row, options, Some(self.system))?;
        for (place, given) in self.given {
            let port = self.row.ports.get(*place).ok_or_else(internal)?;
            let option = options.get(port.name).filter(|json| !json.is_null());
            let slot = values.get_mut(*place).ok_or_else(internal)?;
            // SAFETY: as `answer`'s.
            let value = unsafe { self.value(port, *given, option, slot) }.map_err(|failure| {
                if failure.path.is_empty() { failure.under(port.name) } else { failure }
            })?;
            *slot = value;
        }
        Ok(values)
    }

    unsafe fn value(
        &self,
        port: &Port,
        given: Given<'_>,
        option: Option<&Json>,
        slot: &Value,
    ) -> Result<Value> {
        match (&port.kind, given) {
            (Kind::Record(_), Given::Record(passed)) if passed.is_null() && option.is_some() => {
                Ok(slot.clone())
            }
            (Kind::Table(table), Given::Table(rows, columns)) => {
                if let Some(Json::Array(_)) = option {
                    return Err(other_columns_only());
                }
                let rows = length(&format!("{}_rows", port.name), rows)?;
                // SAFETY: as `answer`'s.
                let given = unsafe { self.table(port.name, table, rows, columns) }?;
                let whole = beside(table, given, slot).map_err(|failure| failure.under(port.name))?;
                if rows > 0 && whole.columns.iter().all(|column| matches!(column, Column::Absent)) {
                    // So many rows of nothing are no table.
                    let first = columns.first().and_then(|(place, _)| table.columns.get(*place));
                    let name = first.map_or(String::new(), |column| column.unit_name(self.system));
                    return Err(null(&format!("{}_{name}", port.name)));
                }
                Ok(Value::Table(whole))
            }
            _ if option.is_some() => Err(twice()),
            (Kind::Number(_), Given::Number(number)) => {
                Ok(Value::Number(call::into_base(port, self.system, number)))
            }
            (Kind::Count(..), Given::Whole(count)) => Ok(Value::Count(i64::from(count))),
            (Kind::Choice(words), Given::Whole(place)) => choice(words, place).map(Value::Choice),
            // SAFETY: as `answer`'s.
            (Kind::Text, Given::Text(text)) => {
                unsafe { text.read() }.map(|text| Value::Text(text.to_owned()))
            }
            // SAFETY: as `answer`'s.
            (Kind::Bytes, Given::Bytes(bytes)) => unsafe { bytes.read() }.map(Value::Bytes),
            (Kind::Record(_), Given::Record(passed)) if passed.is_null() && !required(port) => {
                Ok(Value::Absent)
            }
            (Kind::Record(kind), Given::Record(passed)) => {
                // SAFETY: as `answer`'s.
                unsafe { passed.record(kind) }.map(|record| Value::Record(record.shared()))
            }
            _ => Err(internal()),
        }
    }

    unsafe fn table(
        &self,
        name: &str,
        table: &TableType,
        rows: usize,
        given: &[(usize, Input)],
    ) -> Result<Columns> {
        let mut columns = vec![Column::Absent; table.columns.len()];
        for (place, input) in given {
            let port = table.columns.get(*place).ok_or_else(internal)?;
            if input.is_null() && !required(port) {
                continue;
            }
            if rows > 0 {
                input.check(&format!("{name}_{}", port.unit_name(self.system)))?;
            }
            // SAFETY: not null where there are rows, and the caller promises so many elements.
            let cells = (0..rows).map(|row| unsafe { input.get(row) });
            let column = self.column(port, cells).map_err(|failure| failure.under(port.name).under(name))?;
            *columns.get_mut(*place).ok_or_else(internal)? = column;
        }
        Ok(Columns { rows, columns })
    }

    fn column(&self, port: &Port, cells: impl Iterator<Item = f64>) -> Result<Column> {
        match &port.kind {
            Kind::Number(_) => {
                Ok(Column::Numbers(cells.map(|cell| call::into_base(port, self.system, cell)).collect()))
            }
            // An int is a double without loss, and came as one.
            Kind::Count(..) => Ok(Column::Counts(cells.map(|cell| Some(cell as i64)).collect())),
            Kind::Choice(words) => {
                let place = |(row, cell): (usize, f64)| {
                    choice(words, cell as c_int).map(Some).map_err(|failure| failure.at(Place::Index(row)))
                };
                cells.enumerate().map(place).collect::<Result<_>>().map(Column::Choices)
            }
            Kind::Text | Kind::Bytes | Kind::Table(_) | Kind::Record(_) => Err(internal()),
        }
    }
}

const fn required(port: &Port) -> bool {
    matches!(port.need, overslab::operation::Need::Required)
}

/// The columns of the arguments with those of the options beside them.
fn beside(table: &TableType, mut given: Columns, options: &Value) -> Result<Columns> {
    let Value::Table(options) = options else { return Ok(given) };
    let pairs = given.columns.iter_mut().zip(&options.columns).zip(table.columns);
    for ((column, option), port) in pairs {
        match (&*column, option) {
            (_, Column::Absent) => {}
            (Column::Absent, option) => *column = option.clone(),
            _ => return Err(twice().under(port.name)),
        }
    }
    Ok(given)
}

fn choice(words: &[&str], place: c_int) -> Result<usize> {
    let found = usize::try_from(place).ok().filter(|place| *place < words.len());
    found.ok_or_else(|| {
        Failure::new(Code::WordUnknown, "")
            .written(place.to_string())
            .allowed(format!("a whole number from 0 to {}", words.len().saturating_sub(1)))
            .remedy(format!("the numbers stand for: {}", words.join(", ")))
    })
}

fn twice() -> Box<Failure> {
    Failure::new(Code::KeyRepeated, "")
        .allowed("once: as an argument or in options_json")
        .remedy("remove it from options_json")
}

fn other_columns_only() -> Box<Failure> {
    Failure::new(Code::KindMismatch, "")
        .written("a list of rows in options_json")
        .allowed("an object of the columns that are no arguments")
        .remedy("give those columns by name")
}

/// Looks up how an input was written in a call.
struct InCall<'a> {
    request: &'a Request<'a>,
    options: &'a Map<String, Json>,
}

impl AsGiven for InCall<'_> {
    #[expect(unsafe_code, reason = "reads the caller's arguments once more")]
    fn written(&self, port: usize, cell: Option<(usize, usize)>) -> Option<Written> {
        let given = self.request.given.iter().find(|(place, _)| *place == port).map(|(_, given)| given);
        match (given, cell) {
            (Some(Given::Number(number)), None) => return Some(Written::Number(*number)),
            (Some(Given::Table(rows, columns)), Some((column, at)))
                if at < usize::try_from(*rows).unwrap_or(0) =>
            {
                let array = columns.iter().find(|(place, input)| *place == column && !input.is_null());
                if let Some((_, input)) = array {
                    // SAFETY: the row is one of those read before, from an array that was not null.
                    return Some(Written::Number(unsafe { input.get(at) }));
                }
            }
            _ => {}
        }
        InJson(self.request.row, self.options).written(port, cell)
    }
}
