//! Failures become exceptions of their family, and a panic becomes a failure: nothing else crosses the border.

use overslab::failure::{Code, Failure, Family, Place};
use pyo3::prelude::*;
use pyo3::sync::PyOnceLock;
use pyo3::types::{PyDict, PyType};
use std::panic::{AssertUnwindSafe, catch_unwind};

/// What stops a call: a failure of the engine, or an exception raised by an object of the caller.
pub(crate) enum Fault {
    /// The engine refuses.
    Failure(Box<Failure>),
    /// Python code raised.
    Raised(PyErr),
}

/// The result of everything before the border.
pub(crate) type Outcome<T> = Result<T, Fault>;

impl From<Box<Failure>> for Fault {
    fn from(failure: Box<Failure>) -> Self {
        Self::Failure(failure)
    }
}

impl From<PyErr> for Fault {
    fn from(error: PyErr) -> Self {
        Self::Raised(error)
    }
}

impl Fault {
    /// The failure changed; a raised exception stays as it is.
    pub(crate) fn map(self, change: impl FnOnce(Box<Failure>) -> Box<Failure>) -> Self {
        match self {
            Self::Failure(failure) => Self::Failure(change(failure)),
            raised => raised,
        }
    }

    /// The failure behind `parent` in the path.
    pub(crate) fn under(self, parent: &str) -> Self {
        self.map(|failure| failure.under(parent))
    }

    #[cold]
    fn into_error(self, py: Python<'_>) -> PyErr {
        match self {
            Self::Failure(failure) => exception(py, &failure),
            Self::Raised(error) => error,
        }
    }
}

/// Runs what may fail or panic; both come out as exceptions.
#[inline]
pub(crate) fn guard<T>(py: Python<'_>, run: impl FnOnce() -> Outcome<T>) -> PyResult<T> {
    match catch_unwind(AssertUnwindSafe(run)) {
        Ok(Ok(value)) => Ok(value),
        Ok(Err(fault)) => Err(fault.into_error(py)),
        Err(panic) => {
            let failure = internal(panic.as_ref());
            // A payload may itself panic when it is dropped.
            std::mem::forget(panic);
            Err(exception(py, &failure))
        }
    }
}

#[cold]
fn internal(panic: &(dyn std::any::Any + Send)) -> Box<Failure> {
    let said = match (panic.downcast_ref::<&str>(), panic.downcast_ref::<String>()) {
        (Some(text), _) => (*text).to_owned(),
        (None, Some(text)) => text.clone(),
        (None, None) => String::new(),
    };
    Failure::new(Code::Internal, "").written(said).remedy("report this fault with the inputs")
}

/// The exception that says this failure.
#[cold]
pub(crate) fn exception(py: Python<'_>, failure: &Failure) -> PyErr {
    match instance(py, failure) {
        Ok(instance) => PyErr::from_value(instance),
        Err(error) => error,
    }
}

/// The exception as an object, not raised.
pub(crate) fn instance<'py>(py: Python<'py>, failure: &Failure) -> PyResult<Bound<'py, PyAny>> {
    let details = PyDict::new(py);
    details.set_item("code", failure.code.number())?;
    details.set_item("name", failure.code.name())?;
    details.set_item("path", &failure.path)?;
    match failure.place {
        Place::Unknown => {}
        Place::Line(line) => details.set_item("line", line)?,
        Place::Index(index) => details.set_item("index", index)?,
        Place::Cell(row, column) => details.set_item("cell", (row, column))?,
    }
    details.set_item("written", &failure.written)?;
    details.set_item("allowed", &failure.allowed)?;
    details.set_item("remedy", &failure.remedy)?;
    class(py, failure.code.family())?.call((failure.sentence(),), Some(&details))
}

/// The failure that such an exception says.
pub(crate) fn failure(instance: &Bound<'_, PyAny>) -> PyResult<Box<Failure>> {
    let text = |name: &str| instance.getattr(name)?.extract::<String>();
    let code = Code::from_number(instance.getattr("code")?.extract()?).unwrap_or(Code::Internal);
    let failure = Failure::new(code, text("path")?)
        .written(text("written")?)
        .allowed(text("allowed")?)
        .remedy(text("remedy")?);
    Ok(match instance.getattr("index")?.extract()? {
        Some(index) => failure.at(Place::Index(index)),
        None => failure,
    })
}

/// The exception class of a family. The classes are written in Python, so that each may have two parents.
fn class(py: Python<'_>, family: Family) -> PyResult<&Bound<'_, PyType>> {
    static CLASSES: PyOnceLock<Vec<(Family, Py<PyType>)>> = PyOnceLock::new();
    let classes = CLASSES.get_or_try_init(py, || {
        let module = py.import("overslab.failures")?;
        let find = |&family: &Family| {
            let class = module.getattr(format!("{}Error", family.word()))?.cast_into::<PyType>()?;
            Ok((family, class.unbind()))
        };
        Family::ALL.iter().map(find).collect::<PyResult<_>>()
    })?;
    let found = classes.iter().find(|(known, _)| *known == family).or(classes.last());
    match found {
        Some((_, class)) => Ok(class.bind(py)),
        None => Err(pyo3::exceptions::PyRuntimeError::new_err("overslab.failures has no classes")),
    }
}
