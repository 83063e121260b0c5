//! The operations of `job`: made from the table of operations by `tests/src/generate/python`; do not edit.

#![allow(clippy::too_many_arguments, reason = "one for each port")]

use pyo3::prelude::*;

static JOB_FROM_TEXT: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "job_from_text"),
    class: "Job",
    answer: crate::answers::record,
};

/// Reads a job description from TOML or JSON.
///
/// Rule: none.
/// Takes for granted: a text whose first sign is a brace is JSON, any other TOML.
///
/// Args:
///     text: the job description; a text
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Job: A whole job description. It has notes, basis and taken besides.
///
/// Raises:
///     FormError: a required value is missing (KEY_MISSING); the text is not valid TOML or JSON
///         (SYNTAX); the key is not known (KEY_UNKNOWN)
///
/// Example:
///     >>> from overslab.job import job_from_text
///     >>> answer = job_from_text(
///     ...     text="schema_version = 1\n[job]\nname = \"Tool shed (invented)\"\n[outline]\nsides = [{ name = \"front\", length = \"10 ft\" }, { name = \"right\", length = \"8 ft\" }, { name = \"back\", length = \"10 ft\" }, { name = \"left\", length = \"8 ft\" }]\n[level]\nbenchmarks = [{ name = \"nail\", elevation = \"100 ft\" }]\ncolumns = [\"1 ft\", \"9 ft\"]\n[[level.setups]]\non = \"nail\"\nrod = \"4' 2\\\"\"\nrows = [{ y = \"1 ft\", rods = [\"5' 1\\\"\", \"5' 1 1/4\\\"\"] }, { y = \"7 ft\", rods = [\"5' 0\\\"\", \"5' 0 1/2\\\"\"] }]\n[finish]\nleast = \"3 in\"\nfalls_to = \"front\"\nfall = \"1/8 in/ft\"\n",
///     ... )
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (text, *, units=crate::units::Units(None)), text_signature = "(text, *, units=None)")]
fn job_from_text(
    py: Python<'_>,
    text: &Bound<'_, PyAny>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &JOB_FROM_TEXT, &[Some(text)], units)
}


static REPORT: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "report"),
    class: "Report",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Report))?.into_any()),
};

/// The report of a whole job: its main figures, as text for the site, and as JSON for a program.
///
/// Rule: survey, finish, thickness and order, one after the other.
/// Takes for granted: what the report lists as taken; over an old slab that spans free no figure of a
///     new floor is told.
///
/// Args:
///     job: the job; a Job
///     survey: the old slab, for a job that does not describe one itself; a Survey; may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Report, with the attributes
///         ordered_yd3, ordered_m3: concrete to order [yd3 | m3]
///         figured_yd3, figured_m3: net volume of all parts and allowances [yd3 | m3]
///         loads: truck loads
///         net_yd3, net_m3: volume of the floor, net [yd3 | m3]
///         least_in, least_mm: least thickness between the shots [in | mm]
///         greatest_in, greatest_mm: greatest thickness [in | mm]
///         mean_in, mean_mm: mean thickness [in | mm]
///         text: the report for the site
///         json: the report as JSON
///     and notes, basis and taken.
///
/// Raises:
///     FormError: a required value is missing (KEY_MISSING); the value is of another kind than the port
///         takes (KIND_MISMATCH); the list is empty (EMPTY_LIST)
///
/// Basis:
///     height of instrument = elevation + backsight; elevation = height of instrument - sight:
///         Surveying textbooks, differential levelling (any), height of instrument
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.job import report
///     >>> answer = report(
///     ...     job={
///     ...         "schema_version": 1,
///     ...         "job": {"name": "Tool shed (invented)"},
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "10 ft"},
///     ...                 {"name": "right", "length": "8 ft"},
///     ...                 {"name": "back", "length": "10 ft"},
///     ...                 {"name": "left", "length": "8 ft"},
///     ...             ],
///     ...         },
///     ...         "level": {
///     ...             "benchmarks": [{"name": "nail", "elevation": "100 ft"}],
///     ...             "columns": ["1 ft", "9 ft"],
///     ...             "setups": [
///     ...                 {
///     ...                     "on": "nail",
///     ...                     "rod": "4' 2\"",
///     ...                     "rows": [
///     ...                         {"y": "1 ft", "rods": ["5' 1\"", "5' 1 1/4\""]},
///     ...                         {"y": "7 ft", "rods": ["5' 0\"", "5' 0 1/2\""]},
///     ...                     ],
///     ...                 },
///     ...             ],
///     ...         },
///     ...         "finish": {"least": "3 in", "falls_to": "front", "fall": "1/8 in/ft"},
///     ...     },
///     ... )
///     >>> round(answer.ordered_yd3, 4)
///     1.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (job, *, survey=None, units=crate::units::Units(None)), text_signature = "(job, *, survey=None, units=None)")]
fn report(
    py: Python<'_>,
    job: &Bound<'_, PyAny>,
    survey: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &REPORT, &[Some(job), survey], units)
}

/// What `report` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.job")]
pub(crate) struct Report;

#[pymethods]
impl Report {
    /// Concrete to order [yd3].
    #[getter]
    fn get_ordered_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Concrete to order [m3].
    #[getter]
    fn get_ordered_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Net volume of all parts and allowances [yd3].
    #[getter]
    fn get_figured_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Net volume of all parts and allowances [m3].
    #[getter]
    fn get_figured_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Truck loads.
    #[getter]
    fn get_loads<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Volume of the floor, net [yd3].
    #[getter]
    fn get_net_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Volume of the floor, net [m3].
    #[getter]
    fn get_net_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// Least thickness between the shots [in].
    #[getter]
    fn get_least_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Least thickness between the shots [mm].
    #[getter]
    fn get_least_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Si)
    }
    /// Greatest thickness [in].
    #[getter]
    fn get_greatest_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// Greatest thickness [mm].
    #[getter]
    fn get_greatest_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Si)
    }
    /// Mean thickness [in].
    #[getter]
    fn get_mean_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// Mean thickness [mm].
    #[getter]
    fn get_mean_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Si)
    }
    /// The report for the site.
    #[getter]
    fn get_text<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Us)
    }
    /// The report as JSON.
    #[getter]
    fn get_json<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Us)
    }
}

/// A whole job description.
#[pyclass(frozen, extends = crate::records::Record, module = "overslab.job")]
pub(crate) struct Job;

#[pymethods]
impl Job {
    /// What the job is called.
    #[getter]
    fn get_name<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
}

/// The scalar rows.
pub(crate) static SCALARS: &[&crate::scalars::ScalarRow] = &[];

/// The rows with records.
pub(crate) static ANSWERS: &[&crate::answers::RecordRow] = &[&JOB_FROM_TEXT, &REPORT];

/// The classes of records.
pub(crate) static RECORDS: &[crate::records::RecordClass] = &[crate::records::RecordClass { name: "job", class: |py| py.get_type::<Job>(), make: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Job))?.into_any()) }];

/// Puts functions and classes into the native module.
pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(self::job_from_text, module)?)?;
    module.add_function(wrap_pyfunction!(self::report, module)?)?;
    module.add_class::<Report>()?;
    module.add_class::<Job>()?;
    Ok(())
}
