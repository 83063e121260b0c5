//! Records: frozen objects that one operation makes and another takes.

use crate::answers::RecordRow;
use crate::arguments;
use crate::exceptions::{Outcome, guard};
use crate::kept::{self, About};
use crate::notes;
use crate::units::Units;
use crate::values::show;
use overslab::failure::{Code, Failure};
use overslab::operation::{Answer, Kind, RecordType, Value, json_text};
use overslab::operations;
use overslab::quantity::System;
use pyo3::exceptions::{PyTypeError, PyValueError};
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyString, PyTuple, PyType};
use std::any::Any;
use std::sync::{Arc, LazyLock, OnceLock};

/// A record of the engine.
type Shared = Arc<dyn Any + Send + Sync>;

/// What the generated code says of one record class.
pub(crate) struct RecordClass {
    /// The name of the record type.
    pub(crate) name: &'static str,
    /// The class.
    pub(crate) class: for<'py> fn(Python<'py>) -> Bound<'py, PyType>,
    /// Makes an object of it.
    pub(crate) make: fn(Python<'_>, Record) -> PyResult<Py<PyAny>>,
}

/// A record that one operation makes and another takes.
#[pyclass(frozen, subclass, module = "overslab.results")]
pub(crate) struct Record {
    kind: &'static RecordType,
    value: Shared,
    values: OnceLock<Vec<Value>>,
    origin: Option<Origin>,
}

/// The operation that made a record, and what it said besides.
struct Origin {
    row: &'static RecordRow,
    about: Answer,
}

/// A record with what the operation that made it said besides.
pub(crate) fn made(
    py: Python<'_>,
    kind: &'static RecordType,
    value: Shared,
    row: &'static RecordRow,
    about: Answer,
) -> PyResult<Py<PyAny>> {
    of(py, kind, value, Some(Origin { row, about }))
}

/// A record alone.
pub(crate) fn plain(py: Python<'_>, kind: &'static RecordType, value: Shared) -> PyResult<Py<PyAny>> {
    of(py, kind, value, None)
}

fn of(
    py: Python<'_>,
    kind: &'static RecordType,
    value: Shared,
    origin: Option<Origin>,
) -> PyResult<Py<PyAny>> {
    let record = Record { kind, value, values: OnceLock::new(), origin };
    match crate::record_classes().find(|class| class.name == kind.name) {
        Some(class) => (class.make)(py, record),
        None => Ok(Py::new(py, record)?.into_any()),
    }
}

/// The record behind an argument: an object of its class, or its canonical form. The path of a failure is relative.
pub(crate) fn read(kind: &'static RecordType, object: &Bound<'_, PyAny>) -> Outcome<Shared> {
    if let Ok(record) = object.cast::<Record>() {
        let record = record.get();
        if record.kind.name == kind.name {
            return Ok(record.value.clone());
        }
        return Err(mismatch(kind, object).into());
    }
    if !object.is_instance_of::<PyDict>() {
        return Err(mismatch(kind, object).into());
    }
    Ok((kind.from_json)(parsed(&written(object)?)?)?)
}

fn mismatch(kind: &'static RecordType, object: &Bound<'_, PyAny>) -> Box<Failure> {
    arguments::mismatch(&Kind::Record(kind), object)
}

/// The JSON text of plain Python data.
fn written(object: &Bound<'_, PyAny>) -> Outcome<String> {
    let py = object.py();
    let options = PyDict::new(py);
    options.set_item("allow_nan", false)?;
    let dumped = py.import("json")?.getattr("dumps")?.call((object,), Some(&options));
    match dumped {
        Ok(text) => Ok(text.extract()?),
        Err(error) if error.is_instance_of::<PyTypeError>(py) || error.is_instance_of::<PyValueError>(py) => {
            Err(Failure::new(Code::KindMismatch, "")
                .written(error.value(py).to_string())
                .allowed("texts, finite numbers, lists and mappings")
                .remedy("give a quantity as text")
                .into())
        }
        Err(error) => Err(error.into()),
    }
}

fn parsed(text: &str) -> Outcome<serde_json::Value> {
    Ok(json_text::read(text)?)
}

/// The canonical form of a record as plain Python data.
pub(crate) fn canonical<'py>(
    py: Python<'py>,
    kind: &RecordType,
    value: &(dyn Any + Send + Sync),
) -> PyResult<Bound<'py, PyAny>> {
    let json = guard(py, || json(kind, value))?;
    py.import("json")?.getattr("loads")?.call1((json.to_string(),))
}

fn json(kind: &RecordType, value: &(dyn Any + Send + Sync)) -> Outcome<serde_json::Value> {
    Ok((kind.to_json)(value).ok_or_else(|| Failure::new(Code::Internal, kind.name))?)
}

/// The record type of that name.
fn kind_of(name: &str) -> Outcome<&'static RecordType> {
    static KINDS: LazyLock<Vec<&'static RecordType>> =
        LazyLock::new(|| operations::records(&operations::all()));
    let found = KINDS.iter().copied().find(|kind| kind.name == name);
    Ok(found.ok_or_else(|| {
        Failure::new(Code::KindMismatch, name)
            .allowed("a record type")
            .remedy("call it on the class of a record")
    })?)
}

/// The record type of a class.
fn kind_of_class(class: &Bound<'_, PyType>) -> Outcome<&'static RecordType> {
    let found = crate::record_classes().find(|known| (known.class)(class.py()).is(class));
    kind_of(found.map_or("Record", |known| known.name))
}

impl Record {
    /// One field, its numbers in that system of units.
    pub(crate) fn field<'py>(
        &self,
        py: Python<'py>,
        place: usize,
        system: System,
    ) -> PyResult<Bound<'py, PyAny>> {
        let fields = guard(py, || Ok(self.values()))?;
        show(py, &self.kind.fields[place], fields.get(place).unwrap_or(&Value::Absent), system)
    }

    fn values(&self) -> &[Value] {
        self.values.get_or_init(|| (self.kind.get)(self.value.as_ref()).unwrap_or_default())
    }

    fn json(&self, py: Python<'_>) -> PyResult<serde_json::Value> {
        guard(py, || json(self.kind, self.value.as_ref()))
    }
}

#[pymethods]
impl Record {
    /// What the operation that made it says the reader must know.
    #[getter]
    fn notes<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        notes::notes(py, self.origin.as_ref().map_or(&[], |origin| &origin.about.notes))
    }

    /// Where it comes from, where an operation made it.
    #[getter]
    fn basis<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        match &self.origin {
            Some(origin) => notes::basis(py, origin.row.operation, &origin.about),
            None => Ok(PyTuple::empty(py)),
        }
    }

    /// What was not given and therefore taken, where an operation made it.
    #[getter]
    fn taken<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        match &self.origin {
            Some(origin) => notes::taken(py, origin.row.operation, &origin.about),
            None => Ok(PyTuple::empty(py)),
        }
    }

    /// Its fields by name and unit, in both systems or in one; tables as columns.
    #[pyo3(signature = (units = Units(None)), text_signature = "($self, units=None)")]
    fn fields<'py>(&self, py: Python<'py>, units: Units) -> PyResult<Bound<'py, PyDict>> {
        let values = guard(py, || Ok(self.values()))?;
        kept::to_dict(py, self.kind.fields, values, units)
    }

    /// Its canonical form as plain data: quantities as SI text.
    fn to_dict<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        canonical(py, self.kind, self.value.as_ref())
    }

    /// Its canonical form as JSON text.
    fn to_json(&self, py: Python<'_>) -> PyResult<String> {
        Ok(self.json(py)?.to_string())
    }

    /// Makes a record from its canonical form, or from one written by hand: quantities as text with their unit.
    #[classmethod]
    #[pyo3(text_signature = "(data)")]
    fn from_dict(class: &Bound<'_, PyType>, data: &Bound<'_, PyAny>) -> PyResult<Py<PyAny>> {
        guard(class.py(), || {
            let kind = kind_of_class(class)?;
            let value = (kind.from_json)(parsed(&written(data)?)?)?;
            Ok(plain(class.py(), kind, value)?)
        })
    }

    /// Makes a record from JSON text.
    #[classmethod]
    #[pyo3(text_signature = "(text)")]
    fn from_json(class: &Bound<'_, PyType>, text: &Bound<'_, PyString>) -> PyResult<Py<PyAny>> {
        guard(class.py(), || {
            let kind = kind_of_class(class)?;
            let value = (kind.from_json)(parsed(arguments::said(text)?)?)?;
            Ok(plain(class.py(), kind, value)?)
        })
    }

    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        let fields = guard(py, || Ok(self.values()))?;
        Ok(crate::shown::repr_of(self.kind.class, self.kind.fields, fields))
    }

    fn __eq__(slf: &Bound<'_, Self>, other: &Bound<'_, PyAny>) -> PyResult<bool> {
        let Ok(other) = other.cast::<Self>() else { return Ok(false) };
        let (one, other, py) = (slf.get(), other.get(), slf.py());
        Ok(one.kind.name == other.kind.name
            && (Arc::ptr_eq(&one.value, &other.value) || one.json(py)? == other.json(py)?))
    }

    fn __hash__(&self, py: Python<'_>) -> PyResult<u64> {
        use std::hash::{DefaultHasher, Hash, Hasher};
        let mut hasher = DefaultHasher::new();
        self.json(py)?.to_string().hash(&mut hasher);
        Ok(hasher.finish())
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, Bound<'py, PyTuple>)> {
        let restore = py.import("overslab._overslab")?.getattr("_restore_record")?;
        let origin = self.origin.as_ref().map(|origin| (origin.row.operation.name, About::of(&origin.about)));
        let state = (self.kind.name, self.json(py)?.to_string(), origin);
        Ok((restore, state.into_pyobject(py)?))
    }
}

/// Makes a record again from what pickling kept.
#[pyfunction]
pub(crate) fn _restore_record(
    py: Python<'_>,
    record: &str,
    json: &str,
    origin: Option<(String, About)>,
) -> PyResult<Py<PyAny>> {
    guard(py, || {
        let kind = kind_of(record)?;
        let value = (kind.from_json)(parsed(json)?)?;
        let origin = match origin {
            Some((operation, about)) => {
                Some(Origin { row: crate::answers::find(&operation)?, about: about.into_answer() })
            }
            None => None,
        };
        Ok(of(py, kind, value, origin)?)
    })
}
