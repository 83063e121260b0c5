//! What pickling keeps of an answer: base units, so that nothing changes on the way.

use crate::exceptions::Outcome;
use crate::records;
use crate::scalars::other_version;
use crate::shown::names;
use crate::units::Units;
use overslab::basis::BasisId;
use overslab::note::{Note, NoteCode};
use overslab::operation::{Answer, Column, Columns, Kind, Port, Value};
use overslab::quantity::System;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyList};

/// Notes, bases and what was taken, by numbers and names.
#[derive(FromPyObject, IntoPyObject)]
pub(crate) struct About(Vec<(i32, String)>, Vec<(usize, String)>, Vec<usize>);

impl About {
    /// That of an answer.
    pub(crate) fn of(answer: &Answer) -> Self {
        let notes = answer.notes.iter().map(|note| (note.code.number(), note.text.clone()));
        let basis = answer.basis.iter().map(|(place, basis)| (*place, basis.name().to_owned()));
        Self(notes.collect(), basis.collect(), answer.taken.clone())
    }

    /// An answer with these and no results; what this version does not know is left out.
    pub(crate) fn into_answer(self) -> Answer {
        let Self(notes, basis, taken) = self;
        let note = |(code, text): (i32, String)| Some(Note::new(NoteCode::from_number(code)?, text));
        let known = |(place, name): (usize, String)| {
            Some((place, *BasisId::ALL.iter().find(|basis| basis.name() == name)?))
        };
        Answer {
            results: Vec::new(),
            notes: notes.into_iter().filter_map(note).collect(),
            basis: basis.into_iter().filter_map(known).collect(),
            taken,
        }
    }
}

/// A value as it is kept.
pub(crate) fn keep<'py>(py: Python<'py>, port: &Port, value: &Value) -> PyResult<Bound<'py, PyAny>> {
    match (&port.kind, value) {
        (_, Value::Number(base)) => Ok(base.into_pyobject(py)?.into_any()),
        (_, Value::Count(count)) => Ok(count.into_pyobject(py)?.into_any()),
        (_, Value::Choice(place)) => Ok(place.into_pyobject(py)?.into_any()),
        (_, Value::Text(text)) => Ok(text.into_pyobject(py)?.into_any()),
        (_, Value::Table(columns)) => {
            let kept = columns.columns.iter().map(|column| keep_column(py, column));
            Ok((columns.rows, kept.collect::<PyResult<Vec<_>>>()?).into_pyobject(py)?.into_any())
        }
        (Kind::Record(record), Value::Record(given)) => {
            Ok(records::plain(py, record, given.clone())?.into_bound(py))
        }
        _ => Ok(py.None().into_bound(py)),
    }
}

fn keep_column<'py>(py: Python<'py>, column: &Column) -> PyResult<Bound<'py, PyAny>> {
    Ok(match column {
        Column::Absent => py.None().into_bound(py),
        Column::Numbers(list) => PyList::new(py, list)?.into_any(),
        Column::Counts(list) => PyList::new(py, list)?.into_any(),
        Column::Choices(list) => PyList::new(py, list)?.into_any(),
        Column::Texts(list) => PyList::new(py, list)?.into_any(),
    })
}

/// The value that was kept.
pub(crate) fn value(port: &Port, kept: &Bound<'_, PyAny>) -> Outcome<Value> {
    if kept.is_none() {
        return Ok(Value::Absent);
    }
    Ok(match &port.kind {
        Kind::Number(_) => Value::Number(kept.extract()?),
        Kind::Count(..) => Value::Count(kept.extract()?),
        Kind::Choice(_) => Value::Choice(kept.extract()?),
        Kind::Text => Value::Text(kept.extract()?),
        // Bytes are no result, so that no answer of any version keeps them.
        Kind::Bytes => return Err(other_version(port.name).into()),
        Kind::Record(record) => Value::Record(records::read(record, kept)?),
        Kind::Table(table) => {
            let (rows, columns): (usize, Vec<Bound<'_, PyAny>>) = kept.extract()?;
            if columns.len() != table.columns.len() {
                return Err(other_version(port.name).into());
            }
            let columns = table.columns.iter().zip(&columns).map(|(port, kept)| column(port, kept));
            Value::Table(Columns { rows, columns: columns.collect::<Outcome<_>>()? })
        }
    })
}

fn column(port: &Port, kept: &Bound<'_, PyAny>) -> Outcome<Column> {
    if kept.is_none() {
        return Ok(Column::Absent);
    }
    Ok(match port.kind {
        Kind::Number(_) => Column::Numbers(kept.extract()?),
        Kind::Count(..) => Column::Counts(kept.extract()?),
        Kind::Choice(_) => Column::Choices(kept.extract()?),
        _ => Column::Texts(kept.extract()?),
    })
}

/// Whether two lists of values are the same, an empty cell being the same as an empty cell.
pub(crate) fn same_values(ports: &[Port], one: &[Value], other: &[Value]) -> bool {
    let pairs = ports.iter().zip(one.iter().zip(other));
    one.len() == other.len() && pairs.into_iter().all(|(port, (one, other))| same(port, one, other))
}

fn same(port: &Port, one: &Value, other: &Value) -> bool {
    match (one, other) {
        (Value::Absent, Value::Absent) => true,
        (Value::Number(one), Value::Number(other)) => same_number(one, other),
        (Value::Count(one), Value::Count(other)) => one == other,
        (Value::Choice(one), Value::Choice(other)) => one == other,
        (Value::Text(one), Value::Text(other)) => one == other,
        (Value::Table(one), Value::Table(other)) => {
            let pairs = one.columns.iter().zip(&other.columns);
            one.rows == other.rows
                && one.columns.len() == other.columns.len()
                && pairs.into_iter().all(same_column)
        }
        (Value::Record(one), Value::Record(other)) => match port.kind {
            Kind::Record(record) => (record.to_json)(one.as_ref()) == (record.to_json)(other.as_ref()),
            _ => false,
        },
        _ => false,
    }
}

fn same_column((one, other): (&Column, &Column)) -> bool {
    match (one, other) {
        (Column::Numbers(one), Column::Numbers(other)) => {
            one.len() == other.len() && one.iter().zip(other).all(|(one, other)| same_number(one, other))
        }
        _ => one == other,
    }
}

fn same_number(one: &f64, other: &f64) -> bool {
    one == other || one.is_nan() && other.is_nan()
}

/// Values by name and unit; tables as columns, records in their canonical form.
pub(crate) fn to_dict<'py>(
    py: Python<'py>,
    ports: &[Port],
    values: &[Value],
    units: Units,
) -> PyResult<Bound<'py, PyDict>> {
    let dict = PyDict::new(py);
    for (port, value) in ports.iter().zip(values) {
        for (name, system) in names(port, units.systems()) {
            dict.set_item(name, one(py, port, value, system, units)?)?;
        }
    }
    Ok(dict)
}

fn one<'py>(
    py: Python<'py>,
    port: &Port,
    value: &Value,
    system: System,
    units: Units,
) -> PyResult<Bound<'py, PyAny>> {
    match (&port.kind, value) {
        (Kind::Table(table), Value::Table(columns)) => {
            Ok(crate::values::table(py, table, columns, units.systems())?.into_any())
        }
        (Kind::Record(record), Value::Record(given)) => records::canonical(py, record, given.as_ref()),
        _ => crate::values::show(py, port, value, system),
    }
}
