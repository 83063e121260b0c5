//! The array form of a scalar row: element by element the same function, bit for bit.

use crate::arguments;
use crate::broadcast::{common, places};
use crate::elements::{self, Elements, Unread};
use crate::exceptions::{self, Outcome, guard};
use crate::notes;
use crate::scalars::{self, ScalarRow};
use crate::shown::names;
use crate::units::{Errors, Units};
use numpy::{PyArray1, PyArrayDyn, PyArrayMethods, PyReadonlyArray1, PyUntypedArrayMethods};
use overslab::failure::{Failure, Place};
use overslab::note::NoteCode;
use overslab::operation::call::MOST_PORTS;
use overslab::operation::{Kind, Operation, Port, ScalarCall};
use overslab::quantity::{System, Unit};
use pyo3::intern;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyTuple};

/// What the array form of a scalar operation gives: its results as arrays in both systems of units.
#[pyclass(frozen, subclass, module = "overslab.results")]
pub(crate) struct ArrayResult {
    row: &'static ScalarRow,
    shape: Vec<usize>,
    marked: bool,
    done: Done,
}

/// Results by column in base units.
#[derive(Clone, Debug, Default, PartialEq)]
struct Done {
    columns: Vec<Vec<f64>>,
    /// The number of the note of each element, where any has one.
    notes: Option<Vec<i32>>,
    bad: Vec<(usize, Box<Failure>)>,
}

/// Calls a scalar row for every element.
pub(crate) fn call(
    py: Python<'_>,
    row: &'static ScalarRow,
    given: &[&Bound<'_, PyAny>],
    units: Units,
    errors: Errors,
) -> Outcome<Py<PyAny>> {
    let operation = row.operation;
    let ports = operation.ports.iter().zip(given);
    let read = ports.map(|(port, object)| elements::read(port, object, units.0));
    let arguments = read.collect::<Outcome<Vec<_>>>()?;
    let shape = common(
        operation
            .ports
            .iter()
            .zip(&arguments)
            .filter_map(|(port, one)| one.shape().map(|shape| (port.name, shape))),
    )?;
    let sources = arguments.iter().map(|one| one.source(&shape)).collect::<Outcome<Vec<_>>>()?;
    let function = scalars::function(operation)?;
    let mut done = py.detach(|| run(operation, function, &sources, shape.iter().product(), errors));
    for (index, failure) in &mut done.bad {
        if let Some(place) = operation.port(&failure.path) {
            let argument = (&arguments[place], &sources[place]);
            *failure = said_again(failure.clone(), (operation, place), given[place], argument, *index, units);
        }
        *failure = failure.clone().at(Place::Index(*index));
        failure.refused = None;
        if errors == Errors::Raise {
            return Err(failure.clone().into());
        }
    }
    Ok((row.many)(py, ArrayResult { row, shape, marked: errors == Errors::Mark, done })?)
}

/// One argument as the loop reads it: free of Python.
struct Source<'a> {
    numbers: Numbers<'a>,
    places: Option<Vec<usize>>,
    unread: Option<&'a Unread>,
}

enum Numbers<'a> {
    One(f64),
    Raw(&'a [f64], &'static Unit),
    Flat(&'a [f64]),
}

impl Elements<'_> {
    fn shape(&self) -> Option<&[usize]> {
        match self {
            Self::One(_) => None,
            Self::Borrowed { shape, .. } | Self::Read { shape, .. } => Some(shape),
        }
    }

    fn source(&self, common: &[usize]) -> Outcome<Source<'_>> {
        let places = self.shape().and_then(|shape| places(shape, common));
        let (numbers, unread) = match self {
            Self::One(number) => (Numbers::One(*number), None),
            Self::Borrowed { array, unit, .. } => {
                (Numbers::Raw(array.as_slice().map_err(PyErr::from)?, unit), None)
            }
            Self::Read { flat, unread, .. } => (Numbers::Flat(flat), (!unread.is_empty()).then_some(unread)),
        };
        Ok(Source { numbers, places, unread })
    }
}

impl Source<'_> {
    #[inline]
    fn place(&self, index: usize) -> usize {
        self.places.as_ref().map_or(index, |places| places[index])
    }

    #[inline]
    fn at(&self, index: usize) -> f64 {
        match &self.numbers {
            Numbers::One(number) => *number,
            Numbers::Raw(numbers, unit) => (unit.to_base)(numbers[self.place(index)]),
            Numbers::Flat(numbers) => numbers[self.place(index)],
        }
    }

    fn unread(&self, index: usize) -> Option<&Failure> {
        self.unread?.get(&self.place(index)).map(Box::as_ref)
    }
}

fn run(
    operation: &Operation,
    function: ScalarCall,
    sources: &[Source<'_>],
    length: usize,
    errors: Errors,
) -> Done {
    let mut done = Done { columns: vec![vec![f64::NAN; length]; operation.results.len()], ..Done::default() };
    let (mut inputs, mut results) = ([0.0; MOST_PORTS], [0.0; MOST_PORTS]);
    let (inputs, results) = (&mut inputs[..sources.len()], &mut results[..operation.results.len()]);
    let any_unread = sources.iter().any(|source| source.unread.is_some());
    for index in 0..length {
        for (input, source) in inputs.iter_mut().zip(sources) {
            *input = source.at(index);
        }
        let unread = if any_unread { sources.iter().find_map(|source| source.unread(index)) } else { None };
        let answer = match unread {
            Some(failure) => Err(Box::new(failure.clone())),
            None => function(inputs, results),
        };
        match answer {
            Ok(note) => {
                for (column, result) in done.columns.iter_mut().zip(results.iter()) {
                    column[index] = *result;
                }
                if let Some(code) = note {
                    done.notes.get_or_insert_with(|| vec![0; length])[index] = code.number();
                }
            }
            Err(failure) => {
                done.bad.push((index, failure));
                if errors == Errors::Raise {
                    break;
                }
            }
        }
    }
    done
}

/// The refusal of an element, said in the number and the unit that the caller wrote.
#[cold]
fn said_again(
    failure: Box<Failure>,
    (operation, place): (&Operation, usize),
    given: &Bound<'_, PyAny>,
    (argument, source): (&Elements<'_>, &Source<'_>),
    index: usize,
    units: Units,
) -> Box<Failure> {
    let Kind::Number(kind) = &operation.ports[place].kind else { return failure };
    match (argument, &source.numbers) {
        (Elements::One(_), _) => arguments::in_callers_terms(failure, kind, given, units.0),
        (_, Numbers::Raw(numbers, unit)) => failure.in_unit(numbers[source.place(index)], unit),
        (Elements::Read { list, .. }, _) => match list.get_item(source.place(index)) {
            Ok(element) => arguments::in_callers_terms(failure, kind, &element, units.0),
            Err(_) => failure,
        },
        _ => failure,
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
        let port = &self.row.operation.results[place];
        let numbers = self.done.columns[place].iter();
        let unit = |number: &f64| overslab::operation::call::from_base(port, system, *number);
        PyArray1::from_vec(py, numbers.map(unit).collect()).reshape(self.shape.clone())
    }

    /// The whole numbers of a result; where elements were marked they are doubles, so that those can be NaN.
    pub(crate) fn counts<'py>(&self, py: Python<'py>, place: usize) -> PyResult<Bound<'py, PyAny>> {
        if self.marked {
            return Ok(self.numbers(py, place, System::Si)?.into_any());
        }
        let counts = self.done.columns[place].iter().map(|&count| count as i64);
        Ok(PyArray1::from_vec(py, counts.collect()).reshape(self.shape.clone())?.into_any())
    }

    /// The words of a result, as an array of objects; a marked element is `None`.
    pub(crate) fn words<'py>(&self, py: Python<'py>, place: usize) -> PyResult<Bound<'py, PyAny>> {
        let Kind::Choice(words) = self.row.operation.results[place].kind else {
            return Ok(py.None().into_bound(py));
        };
        let word = |&number: &f64| if number.is_nan() { None } else { words.get(number as usize).copied() };
        let list: Vec<Option<&str>> = self.done.columns[place].iter().map(word).collect();
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
        let numbers = self.done.notes.iter().flatten();
        let met: std::collections::BTreeSet<i32> = numbers.copied().filter(|&number| number != 0).collect();
        let codes = met.into_iter().filter_map(NoteCode::from_number);
        let notes = codes.map(|code| notes::note(py, code, code.meaning()));
        PyTuple::new(py, notes.collect::<PyResult<Vec<_>>>()?)
    }

    /// The number of the note of each element, 0 where it has none.
    #[getter]
    fn note_codes<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyArrayDyn<i32>>> {
        let length = self.shape.iter().product();
        let codes = self.done.notes.clone().unwrap_or_else(|| vec![0; length]);
        PyArray1::from_vec(py, codes).reshape(self.shape.clone())
    }

    /// The elements that were refused and are NaN, counted through the shape from 0, the last axis fastest.
    #[getter]
    fn bad<'py>(&self, py: Python<'py>) -> Bound<'py, PyArray1<i64>> {
        PyArray1::from_vec(py, self.done.bad.iter().map(|(index, _)| *index as i64).collect())
    }

    /// Why each of them was refused: one exception for each element of `bad`, not raised.
    #[getter]
    fn reasons<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        let reasons = self.done.bad.iter().map(|(_, failure)| exceptions::instance(py, failure));
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
        let bad = match self.done.bad.len() {
            0 => String::new(),
            bad => format!(", {bad} bad"),
        };
        format!("{}Array(shape={:?}{bad})", self.row.class, self.shape)
    }

    fn __eq__(slf: &Bound<'_, Self>, other: &Bound<'_, PyAny>) -> bool {
        let Ok(other) = other.cast::<Self>() else { return false };
        let (one, other) = (slf.get(), other.get());
        let same = |(a, b): (&f64, &f64)| a == b || a.is_nan() && b.is_nan();
        std::ptr::eq(one.row, other.row)
            && one.shape == other.shape
            && one.done.columns.iter().flatten().zip(other.done.columns.iter().flatten()).all(same)
            && one.done.notes == other.done.notes
            && one.done.bad == other.done.bad
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, Bound<'py, PyTuple>)> {
        let restore = py.import("overslab._overslab")?.getattr("_restore_array")?;
        let columns = self.done.columns.iter().map(|column| PyArray1::from_slice(py, column));
        let columns = PyTuple::new(py, columns.collect::<Vec<_>>())?;
        let reasons = self.reasons(py)?;
        let marks = (self.marked, self.bad(py), reasons);
        let state = (self.row.operation.name, &self.shape, columns, self.done.notes.as_deref(), marks);
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
    kept: Vec<PyReadonlyArray1<'_, f64>>,
    notes: Option<Vec<i32>>,
    marks: Marks<'_>,
) -> PyResult<Py<PyAny>> {
    let (marked, bad, reasons) = marks;
    guard(py, || {
        let row = scalars::find(operation)?;
        let length: usize = shape.iter().product();
        let fits =
            kept.len() == row.operation.results.len() && kept.iter().all(|column| column.len() == length);
        if !fits {
            return Err(scalars::other_version(operation).into());
        }
        let columns = kept.iter().map(|column| Ok(column.as_slice().map_err(PyErr::from)?.to_vec()));
        let columns = columns.collect::<Outcome<_>>()?;
        let bad = bad.into_iter().zip(reasons.iter().map(|reason| exceptions::failure(reason)));
        let bad = bad.map(|(index, failure)| Ok((index, failure?))).collect::<PyResult<_>>()?;
        Ok((row.many)(py, ArrayResult { row, shape, marked, done: Done { columns, notes, bad } })?)
    })
}
