//! The operations of `specimen`: made from the table of operations by `tests/src/generate/python`; do not edit.

#![allow(clippy::too_many_arguments, reason = "one for each port")]

use pyo3::prelude::*;

static SPECIMEN_SCALAR: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::specimen::OPERATIONS, "specimen_scalar"),
    class: "SpecimenScalar",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SpecimenScalar))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SpecimenScalarArray))?.into_any()),
};

/// Test only: a scalar row with a number, a count and a choice.
///
/// Rule: total = step x times.
/// Takes for granted: nothing.
///
/// Args:
///     step: one step [in | mm]; at least 0 in, at most 3937.00787402 in (at least 0 mm, at most 100000
///         mm)
///     times: how often; a whole number from 0 to 1000
///     colour: a colour; one of "red", "dark blue"
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     SpecimenScalar, with the attributes
///         total_ft, total_m: the sum of the steps [ft | m]
///         colour: the same colour: red, dark blue
///         count: times and one
///     and notes; for arrays SpecimenScalarArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///     FormError: a whole number is wanted (NOT_A_COUNT); the word is not one of the choices
///         (WORD_UNKNOWN)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab._overslab import specimen_scalar
///     >>> answer = specimen_scalar(step="1 1/2 in", times=4, colour="dark blue")
///     >>> round(answer.total_ft, 4)
///     0.5
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (step, times, colour, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(step, times, colour, *, units=None, errors='raise')")]
fn specimen_scalar(
    py: Python<'_>,
    step: &Bound<'_, PyAny>,
    times: &Bound<'_, PyAny>,
    colour: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &SPECIMEN_SCALAR, &[step, times, colour], units, errors)
}

/// What `specimen_scalar` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab._overslab")]
pub(crate) struct SpecimenScalar;

#[pymethods]
impl SpecimenScalar {
    /// The sum of the steps [ft].
    #[getter]
    fn get_total_ft(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// The sum of the steps [m].
    #[getter]
    fn get_total_m(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
    /// The same colour: red, dark blue.
    #[getter]
    fn get_colour(slf: &Bound<'_, Self>) -> &'static str {
        slf.as_super().get().word(1)
    }
    /// Times and one.
    #[getter]
    fn get_count(slf: &Bound<'_, Self>) -> i64 {
        slf.as_super().get().count(2)
    }
}

/// What `specimen_scalar` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab._overslab")]
pub(crate) struct SpecimenScalarArray;

#[pymethods]
impl SpecimenScalarArray {
    /// The sum of the steps [ft].
    #[getter]
    fn get_total_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// The sum of the steps [m].
    #[getter]
    fn get_total_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// The same colour: red, dark blue.
    #[getter]
    fn get_colour<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().words(slf.py(), 1)
    }
    /// Times and one.
    #[getter]
    fn get_count<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().counts(slf.py(), 2)
    }
}

static SPECIMEN_FROM_TABLE: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::specimen::OPERATIONS, "specimen_from_table"),
    class: "Specimen",
    answer: crate::answers::record,
};

/// Test only: a record made from a table, with optional ports.
///
/// Rule: size = greatest place.
/// Takes for granted: nothing.
///
/// Args:
///     rows: the rows; a table of at least 1 row, each a place with what was seen, with the columns
///         at: place [ft | m]; at least 0 ft, at most 328.083989501 ft (at least 0 m, at most 100 m)
///         hits: hits; a whole number from 0 to 100; may be left out
///         colour: colour; one of "red", "dark blue"; may be left out
///         remark: remark; a text; may be left out
///         depth: depth [in | mm]; at least 0 in, at most 3937.00787402 in (at least 0 mm, at most
///             100000 mm); may be left out
///     label: a label; a text; where it is not given plain is taken: most are
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Specimen: A test-only record. It has notes, basis and taken besides.
///
/// Raises:
///     FormError: the list is empty (EMPTY_LIST); the key is not known (KEY_UNKNOWN)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); an empty cell or a blank where a
///         value is wanted (EMPTY_CELL)
///
/// Example:
///     >>> from overslab._overslab import specimen_from_table
///     >>> answer = specimen_from_table(
///     ...     rows=[{"at": "1 ft"}, {"at": "2 ft", "hits": 3, "colour": "red", "remark": "old"}],
///     ... )
///     >>> round(answer.size_in, 4)
///     24.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (rows, *, label=None, units=crate::units::Units(None)), text_signature = "(rows, *, label=None, units=None)")]
fn specimen_from_table(
    py: Python<'_>,
    rows: &Bound<'_, PyAny>,
    label: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &SPECIMEN_FROM_TABLE, &[Some(rows), label], units)
}


static SPECIMEN_EVERY_KIND: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::specimen::OPERATIONS, "specimen_every_kind"),
    class: "SpecimenEveryKind",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SpecimenEveryKind))?.into_any()),
};

/// Test only: every kind of port, required and optional, in and out.
///
/// Rule: none.
/// Takes for granted: nothing.
///
/// Args:
///     volume: a volume [yd3 | m3]; more than 0 yd3 (more than 0 m3)
///     times: a count; a whole number from 0 to 1000
///     colour: a colour; one of "red", "dark blue"
///     label: a text; a text
///     rows: a table; a table of at least 1 row, each a place with what was seen, with the columns
///         at: place [ft | m]; at least 0 ft, at most 328.083989501 ft (at least 0 m, at most 100 m)
///         hits: hits; a whole number from 0 to 100; may be left out
///         colour: colour; one of "red", "dark blue"; may be left out
///         remark: remark; a text; may be left out
///         depth: depth [in | mm]; at least 0 in, at most 3937.00787402 in (at least 0 mm, at most
///             100000 mm); may be left out
///     specimen: a record; a Specimen
///     waste: an optional share [%]; at least 0 %; where it is not given 5 % is taken: usual
///     again: an optional count; a whole number from 0 to 1000; may be left out
///     shade: an optional colour; one of "red", "dark blue"; where it is not given red is taken: plain
///     remark: an optional text; a text; may be left out
///     more: an optional table; a table of at least 0 rows, each a share, with the columns; may be left
///         out
///         share: share [%]; at least 0 %
///     other: an optional record; a Specimen; may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     SpecimenEveryKind, with the attributes
///         volume_yd3, volume_m3: the volume with its share [yd3 | m3]
///         count: the sum of the counts
///         colour: the second colour: red, dark blue
///         label: the texts joined
///         rows: the same table, a table of rows
///         specimen: the last record given
///     and notes, basis and taken.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); a number stands without its unit
///         (UNIT_MISSING); the quantity cannot be below zero (NEGATIVE)
///     FormError: the value is of another kind than the port takes (KIND_MISMATCH); the key is not
///         known (KEY_UNKNOWN); the word is not one of the choices (WORD_UNKNOWN)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab._overslab import specimen_every_kind
///     >>> answer = specimen_every_kind(
///     ...     volume="2 yd3",
///     ...     times=2,
///     ...     colour="red",
///     ...     label="a",
///     ...     rows={"at": ["1 ft", "2 1/2 ft"], "hits": [None, 3], "depth": ["1/8 in", None]},
///     ...     specimen={"size": "2 in", "label": "elm"},
///     ... )
///     >>> round(answer.volume_yd3, 4)
///     2.1
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (volume, times, colour, label, rows, specimen, *, waste=None, again=None, shade=None, remark=None, more=None, other=None, units=crate::units::Units(None)), text_signature = "(volume, times, colour, label, rows, specimen, *, waste=None, again=None, shade=None, remark=None, more=None, other=None, units=None)")]
fn specimen_every_kind(
    py: Python<'_>,
    volume: &Bound<'_, PyAny>,
    times: &Bound<'_, PyAny>,
    colour: &Bound<'_, PyAny>,
    label: &Bound<'_, PyAny>,
    rows: &Bound<'_, PyAny>,
    specimen: &Bound<'_, PyAny>,
    waste: Option<&Bound<'_, PyAny>>,
    again: Option<&Bound<'_, PyAny>>,
    shade: Option<&Bound<'_, PyAny>>,
    remark: Option<&Bound<'_, PyAny>>,
    more: Option<&Bound<'_, PyAny>>,
    other: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &SPECIMEN_EVERY_KIND, &[Some(volume), Some(times), Some(colour), Some(label), Some(rows), Some(specimen), waste, again, shade, remark, more, other], units)
}

/// What `specimen_every_kind` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab._overslab")]
pub(crate) struct SpecimenEveryKind;

#[pymethods]
impl SpecimenEveryKind {
    /// The volume with its share [yd3].
    #[getter]
    fn get_volume_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// The volume with its share [m3].
    #[getter]
    fn get_volume_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// The sum of the counts.
    #[getter]
    fn get_count<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// The second colour: red, dark blue.
    #[getter]
    fn get_colour<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// The texts joined.
    #[getter]
    fn get_label<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// The same table, a table of rows.
    #[getter]
    fn get_rows<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// The last record given.
    #[getter]
    fn get_specimen<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
}

static SPECIMEN_NUMBERS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::specimen::OPERATIONS, "specimen_numbers"),
    class: "SpecimenNumbers",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SpecimenNumbers))?.into_any()),
};

/// Test only: numbers, counts and words out of a record and an option.
///
/// Rule: half = size / 2.
/// Takes for granted: nothing.
///
/// Args:
///     specimen: a record; a Specimen
///     gap: an optional length [in | mm]; at least 0 in, at most 3937.00787402 in (at least 0 mm, at
///         most 100000 mm); may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     SpecimenNumbers, with the attributes
///         half_in, half_mm: half of its size [in | mm]
///         letters: letters of its label
///         colour: dark blue with a gap, red without: red, dark blue
///         gap_ft, gap_m: the gap, where it was given [ft | m]
///     and notes, basis and taken.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); an empty cell or a blank where a
///         value is wanted (EMPTY_CELL)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab._overslab import specimen_numbers
///     >>> answer = specimen_numbers(specimen={"size": "3 in", "label": "ash"}, gap="1/2 in")
///     >>> round(answer.half_in, 4)
///     1.5
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (specimen, *, gap=None, units=crate::units::Units(None)), text_signature = "(specimen, *, gap=None, units=None)")]
fn specimen_numbers(
    py: Python<'_>,
    specimen: &Bound<'_, PyAny>,
    gap: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &SPECIMEN_NUMBERS, &[Some(specimen), gap], units)
}

/// What `specimen_numbers` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab._overslab")]
pub(crate) struct SpecimenNumbers;

#[pymethods]
impl SpecimenNumbers {
    /// Half of its size [in].
    #[getter]
    fn get_half_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Half of its size [mm].
    #[getter]
    fn get_half_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Letters of its label.
    #[getter]
    fn get_letters<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Dark blue with a gap, red without: red, dark blue.
    #[getter]
    fn get_colour<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// The gap, where it was given [ft].
    #[getter]
    fn get_gap_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// The gap, where it was given [m].
    #[getter]
    fn get_gap_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
}

static SPECIMEN_SUM: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::specimen::OPERATIONS, "specimen_sum"),
    class: "SpecimenSum",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SpecimenSum))?.into_any()),
};

/// Test only: the sum of readings, in a table of which no column is required.
///
/// Rule: sum = sum(reading).
/// Takes for granted: nothing.
///
/// Args:
///     readings: the readings; a table of at least 0 rows, each a reading, or a place that was passed
///         over, with the columns
///         remark: remark; a text; may be left out
///         reading: reading [in | mm]; at least 0 in, at most 3937.00787402 in (at least 0 mm, at most
///             100000 mm); may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     SpecimenSum, with the attributes
///         sum_in, sum_mm: their sum [in | mm]
///         given: how many were given
///     and notes, basis and taken.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab._overslab import specimen_sum
///     >>> answer = specimen_sum(readings={"reading": ["1 in", None, "2 in"]})
///     >>> round(answer.sum_in, 4)
///     3.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (readings, *, units=crate::units::Units(None)), text_signature = "(readings, *, units=None)")]
fn specimen_sum(
    py: Python<'_>,
    readings: &Bound<'_, PyAny>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &SPECIMEN_SUM, &[Some(readings)], units)
}

/// What `specimen_sum` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab._overslab")]
pub(crate) struct SpecimenSum;

#[pymethods]
impl SpecimenSum {
    /// Their sum [in].
    #[getter]
    fn get_sum_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Their sum [mm].
    #[getter]
    fn get_sum_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// How many were given.
    #[getter]
    fn get_given<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
}

static SPECIMEN_BYTES: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::specimen::OPERATIONS, "specimen_bytes"),
    class: "SpecimenBytes",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SpecimenBytes))?.into_any()),
};

/// Test only: the bytes of a required and of an optional file.
///
/// Rule: sum = sum(byte x its place).
/// Takes for granted: nothing.
///
/// Args:
///     file: the bytes of a file; bytes, or a text: its UTF-8, or base64: and the bytes in base64
///     attached: the bytes of another file; bytes, or a text: its UTF-8, or base64: and the bytes in
///         base64; may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     SpecimenBytes, with the attributes
///         sum: the sum of the bytes of both, each times its place in its file
///         size: how many bytes the first has
///         attached_size: how many bytes the other has
///     and notes, basis and taken.
///
/// Raises:
///     FormError: the value is of another kind than the port takes (KIND_MISMATCH); the text behind
///         base64: is not base64 (NOT_BASE64)
///
/// Example:
///     >>> from overslab._overslab import specimen_bytes
///     >>> answer = specimen_bytes(file="x,y\n1,2\n")
///     >>> answer.sum
///     1550
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (file, *, attached=None, units=crate::units::Units(None)), text_signature = "(file, *, attached=None, units=None)")]
fn specimen_bytes(
    py: Python<'_>,
    file: &Bound<'_, PyAny>,
    attached: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &SPECIMEN_BYTES, &[Some(file), attached], units)
}

/// What `specimen_bytes` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab._overslab")]
pub(crate) struct SpecimenBytes;

#[pymethods]
impl SpecimenBytes {
    /// The sum of the bytes of both, each times its place in its file.
    #[getter]
    fn get_sum<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// How many bytes the first has.
    #[getter]
    fn get_size<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// How many bytes the other has.
    #[getter]
    fn get_attached_size<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
}

/// A test-only record.
#[pyclass(frozen, extends = crate::records::Record, module = "overslab._overslab")]
pub(crate) struct Specimen;

#[pymethods]
impl Specimen {
    /// Its size [in].
    #[getter]
    fn get_size_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Its size [mm].
    #[getter]
    fn get_size_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Its label.
    #[getter]
    fn get_label<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Letters of the label.
    #[getter]
    fn get_letters<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Two shares, a table of weights.
    #[getter]
    fn get_weights<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
}

/// The scalar rows.
pub(crate) static SCALARS: &[&crate::scalars::ScalarRow] = &[&SPECIMEN_SCALAR];

/// The rows with records.
pub(crate) static ANSWERS: &[&crate::answers::RecordRow] = &[&SPECIMEN_FROM_TABLE, &SPECIMEN_EVERY_KIND, &SPECIMEN_NUMBERS, &SPECIMEN_SUM, &SPECIMEN_BYTES];

/// The classes of records.
pub(crate) static RECORDS: &[crate::records::RecordClass] = &[crate::records::RecordClass { name: "specimen", class: |py| py.get_type::<Specimen>(), make: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Specimen))?.into_any()) }];

/// Puts functions and classes into the native module.
pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(self::specimen_scalar, module)?)?;
    module.add_class::<SpecimenScalar>()?;
    module.add_class::<SpecimenScalarArray>()?;
    module.add_function(wrap_pyfunction!(self::specimen_from_table, module)?)?;
    module.add_function(wrap_pyfunction!(self::specimen_every_kind, module)?)?;
    module.add_class::<SpecimenEveryKind>()?;
    module.add_function(wrap_pyfunction!(self::specimen_numbers, module)?)?;
    module.add_class::<SpecimenNumbers>()?;
    module.add_function(wrap_pyfunction!(self::specimen_sum, module)?)?;
    module.add_class::<SpecimenSum>()?;
    module.add_function(wrap_pyfunction!(self::specimen_bytes, module)?)?;
    module.add_class::<SpecimenBytes>()?;
    module.add_class::<Specimen>()?;
    Ok(())
}
