//! Arguments of record rows as values, and values as Python objects.

use crate::exceptions::Outcome;
use crate::units::Units;
use crate::{arguments, columns, files, records};
use numpy::PyArray1;
use overslab::operation::{Column, Columns, Kind, Need, Port, TableType, Value};
use overslab::quantity::System;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyList};

/// The value of a port. The path of a failure is relative to the port.
pub(crate) fn read(port: &Port, object: &Bound<'_, PyAny>, units: Units) -> Outcome<Value> {
    if object.is_none() {
        return Ok(Value::Absent);
    }
    Ok(match &port.kind {
        Kind::Number(kind) => Value::Number(arguments::number(kind, object, units.0)?),
        Kind::Count(..) => Value::Count(arguments::count(object)?),
        Kind::Choice(words) => Value::Choice(arguments::choice(words, object)?),
        Kind::Text => Value::Text(arguments::text(object)?),
        Kind::Bytes => Value::Bytes(files::read(object)?),
        Kind::Table(table) => Value::Table(columns::read(table, object, units.0)?),
        Kind::Record(record) => Value::Record(records::read(record, object)?),
    })
}

/// A value as a Python object, its numbers in that system of units.
pub(crate) fn show<'py>(
    py: Python<'py>,
    port: &Port,
    value: &Value,
    system: System,
) -> PyResult<Bound<'py, PyAny>> {
    match (&port.kind, value) {
        (Kind::Number(kind), Value::Number(base)) => {
            Ok((kind.unit(system).from_base)(*base).into_pyobject(py)?.into_any())
        }
        (_, Value::Count(count)) => Ok(count.into_pyobject(py)?.into_any()),
        (Kind::Choice(words), Value::Choice(place)) => Ok(words.get(*place).into_pyobject(py)?),
        (_, Value::Text(text)) => Ok(text.into_pyobject(py)?.into_any()),
        (Kind::Table(table), Value::Table(columns)) => {
            Ok(self::table(py, table, columns, &System::ALL)?.into_any())
        }
        (Kind::Record(record), Value::Record(given)) => {
            Ok(records::plain(py, record, given.clone())?.into_bound(py))
        }
        _ => Ok(py.None().into_bound(py)),
    }
}

/// A table as columns by name and unit; a column that was not given is left out.
pub(crate) fn table<'py>(
    py: Python<'py>,
    table: &TableType,
    columns: &Columns,
    systems: &[System],
) -> PyResult<Bound<'py, PyDict>> {
    let dict = PyDict::new(py);
    for (port, column) in table.columns.iter().zip(&columns.columns) {
        for (name, system) in crate::shown::names(port, systems) {
            if let Some(cells) = cells(py, port, column, system)? {
                dict.set_item(name, cells)?;
            }
        }
    }
    Ok(dict)
}

fn cells<'py>(
    py: Python<'py>,
    port: &Port,
    column: &Column,
    system: System,
) -> PyResult<Option<Bound<'py, PyAny>>> {
    Ok(Some(match (column, &port.kind) {
        (Column::Absent, _) => return Ok(None),
        (Column::Numbers(list), Kind::Number(kind)) => {
            let unit = kind.unit(system);
            PyArray1::from_vec(py, list.iter().map(|&base| (unit.from_base)(base)).collect()).into_any()
        }
        (Column::Numbers(list), _) => PyArray1::from_slice(py, list).into_any(),
        // Where no cell can be empty the counts are an array of whole numbers.
        (Column::Counts(list), _) if port.need == Need::Required => {
            PyArray1::from_iter(py, list.iter().map(|count| count.unwrap_or_default())).into_any()
        }
        (Column::Counts(list), _) => PyList::new(py, list)?.into_any(),
        (Column::Choices(list), kind) => {
            let words = if let Kind::Choice(words) = kind { *words } else { &[] };
            PyList::new(py, list.iter().map(|place| place.and_then(|place| words.get(place))))?.into_any()
        }
        (Column::Texts(list), _) => PyList::new(py, list)?.into_any(),
    }))
}
