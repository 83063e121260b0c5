//! Tables that the caller gives: an object of columns, a list of rows, an array of rows.

use crate::arguments;
use crate::exceptions::{Fault, Outcome};
use crate::foreign::{array, doubles, has_plain_elements, holds_many, magnitude, objects};
use numpy::{PyArrayDyn, PyArrayMethods, PyUntypedArray, PyUntypedArrayMethods};
use overslab::failure::{Code, Failure, Place};
use overslab::operation::decode::unknown_key;
use overslab::operation::{Column, Columns, Kind, Need, NumberKind, Port, TableType, call};
use overslab::quantity::{System, Unit};
use pyo3::intern;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyFloat, PyList, PyString, PyTuple};

/// A table as columns in base units. The path of a failure is relative to the table.
pub(crate) fn read(
    table: &'static TableType,
    object: &Bound<'_, PyAny>,
    units: Option<System>,
) -> Outcome<Columns> {
    let given = match object.cast::<PyDict>() {
        Ok(columns) => by_name(table, columns)?,
        Err(_) => any_form(table, object)?,
    };
    let mut columns = Columns { rows: 0, columns: Vec::with_capacity(table.columns.len()) };
    for (port, cells) in table.columns.iter().zip(given) {
        let column = match cells {
            Some(cells) => column(port, &cells, units).map_err(|fault| fault.under(port.name))?,
            None => Column::Absent,
        };
        columns.rows = columns.rows.max(column.len());
        columns.columns.push(column);
    }
    Ok(columns)
}

/// The columns of a table in the order of its type, where they were given.
type Given<'py> = Vec<Option<Bound<'py, PyAny>>>;

fn by_name<'py>(table: &TableType, columns: &Bound<'py, PyDict>) -> Outcome<Given<'py>> {
    let mut given: Given<'py> = vec![None; table.columns.len()];
    for (key, cells) in columns.iter() {
        let place = place_of(table, &key)?;
        given[place] = (!cells.is_none()).then_some(cells);
    }
    Ok(given)
}

fn place_of(table: &TableType, key: &Bound<'_, PyAny>) -> Outcome<usize> {
    let name = match key.cast::<PyString>() {
        Ok(name) => arguments::said(name)?.to_owned(),
        Err(_) => arguments::shown(key),
    };
    let place = table.columns.iter().position(|port| port.name == name);
    Ok(place.ok_or_else(|| unknown_key(&name, table.columns.iter().map(|port| port.name)))?)
}

fn any_form<'py>(table: &TableType, object: &Bound<'py, PyAny>) -> Outcome<Given<'py>> {
    let py = object.py();
    if object.is_instance_of::<PyList>() || object.is_instance_of::<PyTuple>() {
        return by_rows(table, object);
    }
    if let Some(keys) = object.getattr_opt(intern!(py, "keys"))? {
        let columns = PyDict::new(py);
        for key in keys.call0()?.try_iter()? {
            let key = key?;
            columns.set_item(&key, object.get_item(&key)?)?;
        }
        return by_name(table, &columns);
    }
    if let Ok(array) = object.cast::<PyUntypedArray>() {
        return by_array(table, array);
    }
    Err(wrong_form(table, object).into())
}

/// A list of mappings, one for each row.
fn by_rows<'py>(table: &TableType, rows: &Bound<'py, PyAny>) -> Outcome<Given<'py>> {
    let py = rows.py();
    let lists: Vec<Bound<'py, PyList>> = table.columns.iter().map(|_| PyList::empty(py)).collect();
    let mut met = vec![false; lists.len()];
    for (index, row) in rows.try_iter()?.enumerate() {
        let row = row?;
        let cells = match row.cast::<PyDict>() {
            Ok(row) => by_name(table, row).map_err(|fault| fault.under(&format!("[{index}]")))?,
            Err(_) => return Err(wrong_row(table, &row, index).into()),
        };
        for ((list, met), cell) in lists.iter().zip(&mut met).zip(cells) {
            *met |= cell.is_some();
            list.append(cell)?;
        }
    }
    let empty = rows.len()? == 0;
    let columns = lists.into_iter().zip(met).zip(table.columns);
    let given = columns.map(|((list, met), port)| {
        // A column that no row has is not given; of an empty table the required ones are, and are empty.
        (met || empty && port.need == Need::Required).then(|| list.into_any())
    });
    Ok(given.collect())
}

/// An array with named fields, or one of two dimensions whose columns stand in order.
fn by_array<'py>(table: &TableType, array: &Bound<'py, PyUntypedArray>) -> Outcome<Given<'py>> {
    let names = array.dtype().getattr(intern!(array.py(), "names"))?;
    if !names.is_none() {
        let columns = PyDict::new(array.py());
        for name in names.try_iter()? {
            let name = name?;
            columns.set_item(&name, array.get_item(&name)?)?;
        }
        return by_name(table, &columns);
    }
    let &[_, width] = array.shape() else { return Err(wrong_form(table, array).into()) };
    if width > table.columns.len() {
        return Err(Failure::new(Code::LengthMismatch, "")
            .written(format!("{width} columns"))
            .allowed(format!("at most {}: {}", table.columns.len(), names_of(table)))
            .remedy("give the columns in this order")
            .into());
    }
    let turned = array.getattr(intern!(array.py(), "T"))?;
    let columns = (0..table.columns.len()).map(|place| match place < width {
        true => turned.get_item(place).map(Some),
        false => Ok(None),
    });
    Ok(columns.collect::<PyResult<_>>()?)
}

fn names_of(table: &TableType) -> String {
    table.columns.iter().map(|port| port.name).collect::<Vec<_>>().join(", ")
}

fn wrong_form(table: &TableType, object: &Bound<'_, PyAny>) -> Box<Failure> {
    Failure::new(Code::KindMismatch, "")
        .written(arguments::shown(object))
        .allowed(format!("a table of {}: columns or rows of {}", table.name, names_of(table)))
        .remedy("give a list of rows or an object of columns")
}

fn wrong_row(table: &TableType, row: &Bound<'_, PyAny>, index: usize) -> Box<Failure> {
    Failure::new(Code::KindMismatch, format!("[{index}]"))
        .written(arguments::shown(row))
        .allowed(format!("an object: {}", table.meaning))
        .remedy("give each row as an object")
}

/// One column. The path of a failure is the row alone.
fn column(port: &Port, cells: &Bound<'_, PyAny>, units: Option<System>) -> Outcome<Column> {
    match &port.kind {
        Kind::Number(kind) => numbers(port, kind, cells, units).map(Column::Numbers),
        Kind::Count(..) => each(port, cells, arguments::count).map(Column::Counts),
        Kind::Choice(words) => each(port, cells, |cell| arguments::choice(words, cell)).map(Column::Choices),
        _ => each(port, cells, arguments::text).map(Column::Texts),
    }
}

fn numbers(
    port: &Port,
    kind: &NumberKind,
    cells: &Bound<'_, PyAny>,
    units: Option<System>,
) -> Outcome<Vec<f64>> {
    if let Ok(list) = cells.cast_exact::<PyList>() {
        return each_number(port, kind, list.iter(), units);
    }
    if let Some(inner) = magnitude(kind.quantity, cells)? {
        let array = array(&inner)?.map_or_else(|| objects(&inner), Ok)?;
        let doubles = doubles(&array)?.ok_or_else(|| arguments::mismatch(&port.kind, cells))?;
        return in_base(&doubles, kind.quantity.base_unit());
    }
    if let Some(system) = units
        && holds_many(cells)?
        && let Some(array) = array(cells)?
        && let Some(doubles) = doubles(&array)?
    {
        return in_base(&doubles, kind.unit(system));
    }
    each_number(port, kind, one_by_one(port, cells)?.iter(), units)
}

fn in_base(array: &Bound<'_, PyArrayDyn<f64>>, unit: &Unit) -> Outcome<Vec<f64>> {
    if array.ndim() != 1 {
        return Err(not_a_column(array).into());
    }
    let array = array.try_readonly().map_err(PyErr::from)?;
    let numbers = array.as_slice().map_err(PyErr::from)?;
    let mut bases = vec![0.0; numbers.len()];
    (unit.all_to_base)(numbers, &mut bases);
    Ok(bases)
}

/// The cells as a list. A single value is no column; a masked cell is none.
fn one_by_one<'py>(port: &Port, cells: &Bound<'py, PyAny>) -> Outcome<Bound<'py, PyList>> {
    if let Ok(list) = cells.cast::<PyList>() {
        return Ok(list.clone());
    }
    if let Ok(tuple) = cells.cast::<PyTuple>() {
        return Ok(tuple.to_list());
    }
    if !holds_many(cells)? {
        return Err(arguments::mismatch(&port.kind, cells).into());
    }
    let list = match array(cells)? {
        Some(array) if array.ndim() != 1 || !has_plain_elements(&array) => {
            return Err(not_a_column(cells).into());
        }
        Some(array) => array.call_method0(intern!(cells.py(), "tolist"))?,
        None => cells.call_method0(intern!(cells.py(), "tolist"))?,
    };
    Ok(list.cast_into::<PyList>().map_err(|_| not_a_column(cells))?)
}

fn not_a_column(object: &Bound<'_, PyAny>) -> Box<Failure> {
    Failure::new(Code::KindMismatch, "")
        .written(arguments::shown(object))
        .allowed("a list or an array of one dimension")
        .remedy("give one value for each row")
}

fn each_number<'py>(
    port: &Port,
    kind: &NumberKind,
    cells: impl Iterator<Item = Bound<'py, PyAny>>,
    units: Option<System>,
) -> Outcome<Vec<f64>> {
    let mut numbers = Vec::with_capacity(cells.size_hint().0);
    for (row, cell) in cells.enumerate() {
        numbers.push(match (arguments::float_or_int(&cell), units) {
            (Some(number), Some(system)) => (kind.unit(system).to_base)(number),
            // Not a number stands for an empty cell; the engine refuses it where a cell must not be empty.
            (Some(number), None) if number.is_nan() => f64::NAN,
            _ => given(port, row, &cell, |cell| arguments::number(kind, cell, units))?.unwrap_or(f64::NAN),
        });
    }
    Ok(numbers)
}

/// A cell, where it is not empty.
fn given<'py, T>(
    port: &Port,
    row: usize,
    cell: &Bound<'py, PyAny>,
    read: impl Fn(&Bound<'py, PyAny>) -> Outcome<T>,
) -> Outcome<Option<T>> {
    let at = |fault: Fault| fault.map(|failure| failure.at(Place::Index(row)));
    if !is_empty(cell) {
        return read(cell).map(Some).map_err(at);
    }
    match port.need {
        Need::Required => {
            let failure = call::empty(port);
            Err(at(failure.into()))
        }
        _ => Ok(None),
    }
}

/// `None` and not-a-number are empty cells.
fn is_empty(cell: &Bound<'_, PyAny>) -> bool {
    cell.is_none() || cell.cast::<PyFloat>().is_ok_and(|float| float.value().is_nan())
}

fn each<'py, T>(
    port: &Port,
    cells: &Bound<'py, PyAny>,
    read: impl Fn(&Bound<'py, PyAny>) -> Outcome<T>,
) -> Outcome<Vec<Option<T>>> {
    let list = one_by_one(port, cells)?;
    list.iter().enumerate().map(|(row, cell)| given(port, row, &cell, &read)).collect()
}

/// The cell of a table as the caller wrote it.
#[cold]
pub(crate) fn cell<'py>(
    table: &TableType,
    object: &Bound<'py, PyAny>,
    (column, row): (usize, usize),
) -> Option<Bound<'py, PyAny>> {
    let given = match object.cast::<PyDict>() {
        Ok(columns) => by_name(table, columns),
        Err(_) => any_form(table, object),
    };
    let cells = given.ok()?.into_iter().nth(column)??;
    // A labelled column is asked by place, not by label.
    let cells = cells.getattr_opt("iloc").ok()?.unwrap_or(cells);
    cells.get_item(row).ok()
}
