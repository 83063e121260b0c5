//! What the array form of a scalar row gives.

use crate::arrays::Found;
use crate::exceptions::{self, guard};
use crate::notes;
use crate::scalars::{self, ScalarRow};
use crate::shown::names;
use crate::units::Units;
use numpy::{PyArray1, PyArrayDyn, PyArrayMethods, PyReadonlyArray1, PyUntypedArrayMethods};
use overslab::note::NoteCode;
use overslab::operation::{Kind, Port};
use overslab::quantity::System;
use pyo3::intern;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyTuple};

/// What the array form of a scalar operation gives: its results as arrays in both systems of units.
#[pyclass(frozen, subclass, module = "overslab.results")]
pub(crate) struct ArrayResult {
    pub(crate) row: &'static ScalarRow,
    pub(crate) shape: Vec<usize>,
    pub(crate) marked: bool,
    pub(crate) columns: Columns,
    pub(crate) found: Found,
}

/// Results by column in base units, flat. They stand in one array of numpy's, since it asks the system for large pages: a million
/// results are otherwise slower to get room for than to work out. No caller gets at it.
pub(crate) struct Columns {
    numbers: Py<PyArray1<f64>>,
    length: usize,
}

/// An array that holds anything. Cleared first it would go through memory once more.
fn empty(py: Python<'_>, length: usize) -> PyResult<Bound<'_, PyArray1<f64>>> {
    Ok(numpy::get_array_module(py)?.call_method1(intern!(py, "empty"), (length,))?.cast_into()?)
}

impl Columns {
    /// Columns to be written, all of them: they hold anything.
    pub(crate) fn new(py: Python<'_>, columns: usize, length: usize) -> PyResult<Self> {
        Ok(Self { numbers: empty(py, columns * length)?.unbind(), length })
    }

    /// Has all columns written.
    pub(crate) fn write<T>(&self, py: Python<'_>, fill: impl FnOnce(Vec<&mut [f64]>) -> T) -> PyResult<T> {
        let mut numbers = self.numbers.bind(py).try_readwrite()?;
        // Where there are no elements there is no column, but a loop over none needs none.
        Ok(fill(numbers.as_slice_mut()?.chunks_exact_mut(self.length.max(1)).collect()))
    }

    /// Does something with a column.
    fn read<T>(&self, py: Python<'_>, place: usize, with: impl FnOnce(&[f64]) -> T) -> PyResult<T> {
        let numbers = self.numbers.bind(py).try_readonly()?;
        let from = place * self.length;
        Ok(with(&numbers.as_slice()?[from..from + self.length]))
    }

    /// Whether all numbers are the same, NaN being NaN.
    fn same(&self, py: Python<'_>, other: &Self) -> PyResult<bool> {
        let same = |(a, b): (&f64, &f64)| a == b || a.is_nan() && b.is_nan();
        let (one, other) = (self.numbers.bind(py).try_readonly()?, other.numbers.bind(py).try_readonly()?);
        let (one, other) = (one.as_slice()?, other.as_slice()?);
        Ok(one.len() == other.len() && one.iter().zip(other).all(same))
    }
}

impl ArrayResult {
    /// The numbers of a result in that system of units.
    pub(crate) fn numbers<'py>(
        &self,
        py: Python<'py>,
        place: usize,
        system: System,
    ) -> PyResult<Bound<'py, PyArrayDyn<f64>>> {
        let unit = match &self.row.operation.results[place].kind {
            Kind::Number(kind) => Some(kind.unit(system)),
            _ => None,
        };
        let array = empty(py, self.columns.length)?;
        let mut numbers = array.readwrite();
        let numbers = numbers.as_slice_mut()?;
        self.columns.read(py, place, |column| match unit {
            Some(unit) => (unit.all_from_base)(column, numbers),
            None => numbers.copy_from_slice(column),
        })?;
        array.reshape(self.shape.clone())
    }

    /// The whole numbers of a result; where elements were marked they are doubles, so that those can be NaN.
    pub(crate) fn counts<'py>(&self, py: Python<'py>, place: usize) -> PyResult<Bound<'py, PyAny>> {
        if self.marked {
            return Ok(self.numbers(py, place, System::Si)?.into_any());
        }
        let whole = |column: &[f64]| column.iter().map(|&count| count as i64).collect();
        let counts = self.columns.read(py, place, whole)?;
        Ok(PyArray1::from_vec(py, counts).reshape(self.shape.clone())?.into_any())
    }

    /// The words of a result, as an array of objects; a marked element is `None`.
    pub(crate) fn words<'py>(&self, py: Python<'py>, place: usize) -> PyResult<Bound<'py, PyAny>> {
        let Kind::Choice(words) = self.row.operation.results[place].kind else {
            return Ok(py.None().into_bound(py));
        };
        let word = |&number: &f64| if number.is_nan() { None } else { words.get(number as usize).copied() };
        let list: Vec<Option<&str>> =
            self.columns.read(py, place, |column| column.iter().map(word).collect())?;
        let flat = numpy::get_array_module(py)?.call_method1(intern!(py, "array"), (list, "O"))?;
        flat.call_method1(intern!(py, "reshape"), (PyTuple::new(py, &self.shape)?,))
    }

    fn column<'py>(
        &self,
        py: Python<'py>,
        place: usize,
        port: &Port,
        system: System,
    ) -> PyResult<Bound<'py, PyAny>> {
        match port.kind {
            Kind::Count(..) => self.counts(py, place),
            Kind::Choice(_) => self.words(py, place),
            _ => Ok(self.numbers(py, place, system)?.into_any()),
        }
    }
}

#[pymethods]
impl ArrayResult {
    /// The shape of every result.
    #[getter]
    fn shape<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        PyTuple::new(py, &self.shape)
    }

    /// The kinds of notes met, each once.
    #[getter]
    fn notes<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        let numbers = self.found.notes.iter().flatten();
        let met: std::collections::BTreeSet<i32> = numbers.copied().filter(|&number| number != 0).collect();
        let codes = met.into_iter().filter_map(NoteCode::from_number);
        let notes = codes.map(|code| notes::note(py, code, code.meaning()));
        PyTuple::new(py, notes.collect::<PyResult<Vec<_>>>()?)
    }

    /// The number of the note of each element, 0 where it has none.
    #[getter]
    fn note_codes<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyArrayDyn<i32>>> {
        let length = self.shape.iter().product();
        let codes = self.found.notes.clone().unwrap_or_else(|| vec![0; length]);
        PyArray1::from_vec(py, codes).reshape(self.shape.clone())
    }

    /// The elements that were refused and are NaN, counted through the shape from 0, the last axis fastest.
    #[getter]
    fn bad<'py>(&self, py: Python<'py>) -> Bound<'py, PyArray1<i64>> {
        PyArray1::from_vec(py, self.found.bad.iter().map(|(index, _)| *index as i64).collect())
    }

    /// Why each of them was refused: one exception for each element of `bad`, not raised.
    #[getter]
    fn reasons<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        let reasons = self.found.bad.iter().map(|(_, failure)| exceptions::instance(py, failure));
        PyTuple::new(py, reasons.collect::<PyResult<Vec<_>>>()?)
    }

    /// The results by name and unit, in both systems or in one.
    #[pyo3(signature = (units = Units(None)), text_signature = "($self, units=None)")]
    fn to_dict<'py>(&self, py: Python<'py>, units: Units) -> PyResult<Bound<'py, PyDict>> {
        let dict = PyDict::new(py);
        for (place, port) in self.row.operation.results.iter().enumerate() {
            for (name, system) in names(port, units.systems()) {
                dict.set_item(name, self.column(py, place, port, system)?)?;
            }
        }
        Ok(dict)
    }

    fn __len__(&self) -> usize {
        self.shape.first().copied().unwrap_or(1)
    }

    fn __repr__(&self) -> String {
        let bad = match self.found.bad.len() {
            0 => String::new(),
            bad => format!(", {bad} bad"),
        };
        format!("{}Array(shape={:?}{bad})", self.row.class, self.shape)
    }

    fn __eq__(slf: &Bound<'_, Self>, other: &Bound<'_, PyAny>) -> PyResult<bool> {
        let Ok(other) = other.cast::<Self>() else { return Ok(false) };
        let (one, other) = (slf.get(), other.get());
        Ok(std::ptr::eq(one.row, other.row)
            && one.shape == other.shape
            && one.found == other.found
            && one.columns.same(slf.py(), &other.columns)?)
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, Bound<'py, PyTuple>)> {
        let restore = py.import("overslab._overslab")?.getattr("_restore_array")?;
        let numbers = self.columns.numbers.bind(py).try_readonly()?;
        let columns = PyArray1::from_slice(py, numbers.as_slice()?);
        let reasons = self.reasons(py)?;
        let marks = (self.marked, self.bad(py), reasons);
        let state = (self.row.operation.name, &self.shape, columns, self.found.notes.as_deref(), marks);
        Ok((restore, state.into_pyobject(py)?))
    }
}

/// Whether elements were marked, which, and why.
type Marks<'py> = (bool, Vec<usize>, Vec<Bound<'py, PyAny>>);

/// Makes a result again from what pickling kept.
#[pyfunction]
pub(crate) fn _restore_array(
    py: Python<'_>,
    operation: &str,
    shape: Vec<usize>,
    kept: PyReadonlyArray1<'_, f64>,
    notes: Option<Vec<i32>>,
    marks: Marks<'_>,
) -> PyResult<Py<PyAny>> {
    let (marked, bad, reasons) = marks;
    guard(py, || {
        let row = scalars::find(operation)?;
        let length: usize = shape.iter().product();
        if kept.len() != row.operation.results.len() * length {
            return Err(scalars::other_version(operation).into());
        }
        let numbers = PyArray1::from_slice(py, kept.as_slice().map_err(PyErr::from)?).unbind();
        let columns = Columns { numbers, length };
        let bad = bad.into_iter().zip(reasons.iter().map(|reason| exceptions::failure(reason)));
        let bad = bad.map(|(index, failure)| Ok((index, failure?))).collect::<PyResult<_>>()?;
        Ok((row.many)(py, ArrayResult { row, shape, marked, columns, found: Found { notes, bad } })?)
    })
}
