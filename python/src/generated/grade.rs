//! The operations of `grade`: made from the table of operations by `tests/src/generate/python`; do not edit.

#![allow(clippy::too_many_arguments, reason = "one for each port")]

use pyo3::prelude::*;

static FALL: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "fall"),
    class: "Fall",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Fall))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(FallArray))?.into_any()),
};

/// The fall of a surface that loses a height over a run.
///
/// Rule: fall = drop / run.
/// Takes for granted: drop and run are measured plumb and level, not along the slope.
///
/// Args:
///     drop: height lost [in | mm]; at least 0 in, at most 1200 in (at least 0 mm, at most 30480 mm)
///     run: level distance over which it is lost [ft | m]; more than 0 ft, at most 10000 ft (more than
///         0 m, at most 3048 m)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     Fall, with the attributes
///         fall_in_per_ft, fall_percent: fall of the surface [in/ft | %]
///     and notes; for arrays FallArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
///         quantity (UNIT_WRONG)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import fall
///     >>> answer = fall(drop="2 in", run="20 ft")
///     >>> round(answer.fall_in_per_ft, 4)
///     0.1
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (drop, run, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(drop, run, *, units=None, errors='raise')")]
fn fall(
    py: Python<'_>,
    drop: &Bound<'_, PyAny>,
    run: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &FALL, &[drop, run], units, errors)
}

/// What `fall` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.grade")]
pub(crate) struct Fall;

#[pymethods]
impl Fall {
    /// Fall of the surface [in/ft].
    #[getter]
    fn get_fall_in_per_ft(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Fall of the surface [%].
    #[getter]
    fn get_fall_percent(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `fall` gives for arrays.
#[pyclass(frozen, extends = crate::arrays::ArrayResult, module = "overslab.grade")]
pub(crate) struct FallArray;

#[pymethods]
impl FallArray {
    /// Fall of the surface [in/ft].
    #[getter]
    fn get_fall_in_per_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Fall of the surface [%].
    #[getter]
    fn get_fall_percent<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static DROP: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "drop"),
    class: "Drop",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Drop))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(DropArray))?.into_any()),
};

/// The height that a surface loses over a run at a fall.
///
/// Rule: drop = fall x run.
/// Takes for granted: the run is measured level, not along the slope.
///
/// Args:
///     fall: fall of the surface [in/ft | %]; at least 0 in/ft, at most 12 in/ft (at least 0 %, at most
///         100 %)
///     run: level distance [ft | m]; more than 0 ft, at most 10000 ft (more than 0 m, at most 3048 m)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     Drop, with the attributes
///         drop_in, drop_mm: height lost [in | mm]
///     and notes; for arrays DropArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); a number stands without its unit
///         (UNIT_MISSING)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import drop
///     >>> answer = drop(fall="1/8 in/ft", run="32 ft")
///     >>> round(answer.drop_in, 4)
///     4.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (fall, run, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(fall, run, *, units=None, errors='raise')")]
fn drop(
    py: Python<'_>,
    fall: &Bound<'_, PyAny>,
    run: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &DROP, &[fall, run], units, errors)
}

/// What `drop` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.grade")]
pub(crate) struct Drop;

#[pymethods]
impl Drop {
    /// Height lost [in].
    #[getter]
    fn get_drop_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Height lost [mm].
    #[getter]
    fn get_drop_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `drop` gives for arrays.
#[pyclass(frozen, extends = crate::arrays::ArrayResult, module = "overslab.grade")]
pub(crate) struct DropArray;

#[pymethods]
impl DropArray {
    /// Height lost [in].
    #[getter]
    fn get_drop_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Height lost [mm].
    #[getter]
    fn get_drop_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static TRIANGULAR_PRISM: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "triangular_prism"),
    class: "TriangularPrism",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(TriangularPrism))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(TriangularPrismArray))?.into_any()),
};

/// The volume between old slab and finish over one triangle, split where they meet.
///
/// Rule: net = area (t1 + t2 + t3) / 3; one corner of the other sign: high = (area / 3) t3^3 / ((t3 -
///     t1) (t3 - t2)).
/// Takes for granted: both surfaces are plane over the triangle.
///
/// Args:
///     area: plan area of the triangle [ft2 | m2]; more than 0 ft2, at most 10763910.4167 ft2 (more
///         than 0 m2, at most 1000000 m2)
///     thickness_1: thickness at the first corner [in | mm]; at least -3937.00787402 in, at most
///         3937.00787402 in (at least -100000 mm, at most 100000 mm)
///     thickness_2: thickness at the second corner [in | mm]; at least -3937.00787402 in, at most
///         3937.00787402 in (at least -100000 mm, at most 100000 mm)
///     thickness_3: thickness at the third corner [in | mm]; at least -3937.00787402 in, at most
///         3937.00787402 in (at least -100000 mm, at most 100000 mm)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     TriangularPrism, with the attributes
///         net_ft3, net_m3: fill less high spots [ft3 | m3]
///         fill_ft3, fill_m3: fill above the old slab [ft3 | m3]
///         high_ft3, high_m3: old slab above the finish [ft3 | m3]
///     and notes; for arrays TriangularPrismArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import triangular_prism
///     >>> answer = triangular_prism(
///     ...     area="50 ft2",
///     ...     thickness_1="3 in",
///     ...     thickness_2="4 in",
///     ...     thickness_3="5 in",
///     ... )
///     >>> round(answer.net_ft3, 4)
///     16.6667
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (area, thickness_1, thickness_2, thickness_3, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(area, thickness_1, thickness_2, thickness_3, *, units=None, errors='raise')")]
fn triangular_prism(
    py: Python<'_>,
    area: &Bound<'_, PyAny>,
    thickness_1: &Bound<'_, PyAny>,
    thickness_2: &Bound<'_, PyAny>,
    thickness_3: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &TRIANGULAR_PRISM, &[area, thickness_1, thickness_2, thickness_3], units, errors)
}

/// What `triangular_prism` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.grade")]
pub(crate) struct TriangularPrism;

#[pymethods]
impl TriangularPrism {
    /// Fill less high spots [ft3].
    #[getter]
    fn get_net_ft3(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Fill less high spots [m3].
    #[getter]
    fn get_net_m3(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
    /// Fill above the old slab [ft3].
    #[getter]
    fn get_fill_ft3(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Us)
    }
    /// Fill above the old slab [m3].
    #[getter]
    fn get_fill_m3(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Si)
    }
    /// Old slab above the finish [ft3].
    #[getter]
    fn get_high_ft3(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(2, overslab::quantity::System::Us)
    }
    /// Old slab above the finish [m3].
    #[getter]
    fn get_high_m3(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(2, overslab::quantity::System::Si)
    }
}

/// What `triangular_prism` gives for arrays.
#[pyclass(frozen, extends = crate::arrays::ArrayResult, module = "overslab.grade")]
pub(crate) struct TriangularPrismArray;

#[pymethods]
impl TriangularPrismArray {
    /// Fill less high spots [ft3].
    #[getter]
    fn get_net_ft3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Fill less high spots [m3].
    #[getter]
    fn get_net_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Fill above the old slab [ft3].
    #[getter]
    fn get_fill_ft3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Fill above the old slab [m3].
    #[getter]
    fn get_fill_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Old slab above the finish [ft3].
    #[getter]
    fn get_high_ft3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Old slab above the finish [m3].
    #[getter]
    fn get_high_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 2, overslab::quantity::System::Si)
    }
}

/// The scalar rows.
pub(crate) static SCALARS: &[&crate::scalars::ScalarRow] = &[&FALL, &DROP, &TRIANGULAR_PRISM];

/// The rows with records.
pub(crate) static ANSWERS: &[&crate::answers::RecordRow] = &[];

/// The classes of records.
pub(crate) static RECORDS: &[crate::records::RecordClass] = &[];

/// Puts functions and classes into the native module.
pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(self::fall, module)?)?;
    module.add_class::<Fall>()?;
    module.add_class::<FallArray>()?;
    module.add_function(wrap_pyfunction!(self::drop, module)?)?;
    module.add_class::<Drop>()?;
    module.add_class::<DropArray>()?;
    module.add_function(wrap_pyfunction!(self::triangular_prism, module)?)?;
    module.add_class::<TriangularPrism>()?;
    module.add_class::<TriangularPrismArray>()?;
    Ok(())
}
