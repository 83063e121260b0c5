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
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.grade")]
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
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.grade")]
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
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.grade")]
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

static FINISH_LEVEL: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "finish_level"),
    class: "Finish",
    answer: crate::answers::record,
};

/// A level finish.
///
/// Rule: z = elevation.
/// Takes for granted: water may stand.
///
/// Args:
///     elevation: its elevation [ft | m]; at least -32808.3989501 ft, at most 32808.3989501 ft (at
///         least -10000 m, at most 10000 m)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Finish: The new top surface: one plane, or facets that meet. It has notes, basis and taken
///         besides.
///
/// Raises:
///     QuantityError: a number stands without its unit (UNIT_MISSING); the value lies outside its range
///         (OUT_OF_RANGE)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import finish_level
///     >>> answer = finish_level(elevation="99.55 ft")
///     >>> round(answer.elevation_ft, 4)
///     99.55
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (elevation, *, units=crate::units::Units(None)), text_signature = "(elevation, *, units=None)")]
fn finish_level(
    py: Python<'_>,
    elevation: &Bound<'_, PyAny>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FINISH_LEVEL, &[Some(elevation)], units)
}


static FINISH_FROM_POINTS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "finish_from_points"),
    class: "Finish",
    answer: crate::answers::record,
};

/// The plane finish through three points.
///
/// Rule: z = a + b x + c y through the three.
/// Takes for granted: one plane.
///
/// Args:
///     points: three points that are not on one line; a table of at least 1 row, each a point of the
///         finish, with the columns
///         x: distance from the left [ft | m]; a finite number
///         y: distance from the front [ft | m]; a finite number
///         elevation: height there [ft | m]; at least -32808.3989501 ft, at most 32808.3989501 ft (at
///             least -10000 m, at most 10000 m)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Finish: The new top surface: one plane, or facets that meet. It has notes, basis and taken
///         besides.
///
/// Raises:
///     GradeError: the finish is not determined by what was given (FINISH_UNDETERMINED)
///     FormError: the list is empty (EMPTY_LIST)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import finish_from_points
///     >>> answer = finish_from_points(
///     ...     points={
///     ...         "x": ["0 ft", "20 ft", "0 ft"],
///     ...         "y": ["0 ft", "0 ft", "24 ft"],
///     ...         "elevation": ["100.0 ft", "99.8 ft", "99.88 ft"],
///     ...     },
///     ... )
///     >>> round(answer.elevation_ft, 4)
///     100.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (points, *, units=crate::units::Units(None)), text_signature = "(points, *, units=None)")]
fn finish_from_points(
    py: Python<'_>,
    points: &Bound<'_, PyAny>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FINISH_FROM_POINTS, &[Some(points)], units)
}


static FINISH_TO_EDGE: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "finish_to_edge"),
    class: "Finish",
    answer: crate::answers::record,
};

/// The plane finish that stands level along an edge and falls square to it.
///
/// Rule: z = elevation + fall x distance from the edge.
/// Takes for granted: the edge is straight; water leaves over it.
///
/// Args:
///     survey: the old slab with the edge; a Survey
///     edge: name of the edge; a text
///     elevation: height of the finish at the edge [ft | m]; at least -32808.3989501 ft, at most
///         32808.3989501 ft (at least -10000 m, at most 10000 m)
///     fall: fall towards the edge [in/ft | %]; at least 0 in/ft, at most 12 in/ft (at least 0 %, at
///         most 100 %)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Finish: The new top surface: one plane, or facets that meet. It has notes, basis and taken
///         besides.
///
/// Raises:
///     GradeError: no edge of the outline has this name (EDGE_UNKNOWN)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
///         quantity (UNIT_WRONG)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import finish_to_edge
///     >>> answer = finish_to_edge(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     edge="front",
///     ...     elevation="99.5 ft",
///     ...     fall="1/8 in/ft",
///     ... )
///     >>> round(answer.elevation_ft, 4)
///     99.5
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, edge, elevation, fall, *, units=crate::units::Units(None)), text_signature = "(survey, edge, elevation, fall, *, units=None)")]
fn finish_to_edge(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    edge: &Bound<'_, PyAny>,
    elevation: &Bound<'_, PyAny>,
    fall: &Bound<'_, PyAny>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FINISH_TO_EDGE, &[Some(survey), Some(edge), Some(elevation), Some(fall)], units)
}


static FINISH_AT_LEAST: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "finish_at_least"),
    class: "Finish",
    answer: crate::answers::record,
};

/// The lowest plane finish that falls square to an edge and leaves a least thickness everywhere between the shots.
///
/// Rule: elevation at the edge = greatest of (old slab + least + margin - fall x distance from the
///     edge).
/// Takes for granted: ground beyond the shots is extended, not measured: it does not bind.
///
/// Args:
///     survey: the old slab; a Survey
///     least: least thickness [in | mm]; at least 0 in, at most 120 in (at least 0 mm, at most 3048 mm)
///     edge: the edge it falls to; none for a level finish; a text; may be left out
///     fall: fall towards the edge [in/ft | %]; at least 0 in/ft, at most 12 in/ft (at least 0 %, at
///         most 100 %); where it is not given 1/8 in/ft is taken: the least for a well-finished floor
///     round: heights are rounded up to whole steps of this [in | mm]; at least 0 in, at most 12 in (at
///         least 0 mm, at most 304.8 mm); may be left out
///     datum: the height the steps are counted from, usually the benchmark [ft | m]; at least
///         -32808.3989501 ft, at most 32808.3989501 ft (at least -10000 m, at most 10000 m); where it
///         is not given 0 ft is taken: the job datum
///     margin: margin on the least thickness [in | mm]; at least 0 in, at most 120 in (at least 0 mm,
///         at most 3048 mm); may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Finish: The new top surface: one plane, or facets that meet. It has notes, basis and taken
///         besides.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
///         quantity (UNIT_WRONG)
///     GradeError: no edge of the outline has this name (EDGE_UNKNOWN); the finish is not determined by
///         what was given (FINISH_UNDETERMINED)
///
/// Basis:
///     plane and solid geometry: derived
///     at least 1/8 in per ft on well-finished floors: Flatwork guidance on drainage minimums
///         (several), finished floors, from memory: confirm
///
/// Example:
///     >>> from overslab.grade import finish_at_least
///     >>> answer = finish_at_least(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     least="3 in",
///     ...     margin="3/8 in",
///     ...     edge="front",
///     ...     fall="1/8 in/ft",
///     ... )
///     >>> round(answer.elevation_ft, 4)
///     99.4908
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, least, *, edge=None, fall=None, round=None, datum=None, margin=None, units=crate::units::Units(None)), text_signature = "(survey, least, *, edge=None, fall=None, round=None, datum=None, margin=None, units=None)")]
fn finish_at_least(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    least: &Bound<'_, PyAny>,
    edge: Option<&Bound<'_, PyAny>>,
    fall: Option<&Bound<'_, PyAny>>,
    round: Option<&Bound<'_, PyAny>>,
    datum: Option<&Bound<'_, PyAny>>,
    margin: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FINISH_AT_LEAST, &[Some(survey), Some(least), edge, fall, round, datum, margin], units)
}


static FINISH_FROM_FACETS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "finish_from_facets"),
    class: "Finish",
    answer: crate::answers::record,
};

/// A finish of several facets over corners with heights, which they share, so that they meet at valleys and ridges.
///
/// Rule: z = a + b x + c y through the corners of each facet.
/// Takes for granted: the corners of a facet are in one plane within 1e-6 ft; a warped one is split
///     into triangles.
///
/// Args:
///     corners: the corners; a table of at least 3 rows, each a corner that facets share, with the
///         columns
///         name: its name, by which facets call it; else they use its number from 1 on; a text; may be
///             left out
///         x: distance from the left [ft | m]; a finite number
///         y: distance from the front [ft | m]; a finite number
///         elevation: height of the finish there [ft | m]; at least -32808.3989501 ft, at most
///             32808.3989501 ft (at least -10000 m, at most 10000 m)
///     facets: the facets; a table of at least 1 row, each a facet over some of the corners, with the
///         columns
///         corners: names or numbers of its corners in order round it, commas between; a text
///         name: its name; a text; may be left out
///         falls_to: what it falls to: an edge, a valley, a drain; a text; may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Finish: The new top surface: one plane, or facets that meet. It has notes, basis and taken
///         besides.
///
/// Raises:
///     GradeError: the corners of a facet are not in one plane (FACET_WARPED); two facets lie over one
///         another (FACETS_OVERLAP); no corner has this name or number (CORNER_UNKNOWN); the corners of
///         a facet bound no area that could be struck off (FACET_SHAPE)
///     FormError: the list is empty (EMPTY_LIST)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import finish_from_facets
///     >>> answer = finish_from_facets(
///     ...     corners={
///     ...         "name": ["A", "B", "C", "D", "drain"],
///     ...         "x": ["0 ft", "20 ft", "20 ft", "0 ft", "8 ft"],
///     ...         "y": ["0 ft", "0 ft", "16 ft", "16 ft", "6 ft"],
///     ...         "elevation": ["100 ft", "100 ft", "100 ft", "100 ft", "99.9 ft"],
///     ...     },
///     ...     facets={
///     ...         "name": ["front", "right", "back", "left"],
///     ...         "corners": ["A, B, drain", "B, C, drain", "C, D, drain", "D, A, drain"],
///     ...         "falls_to": ["drain", "drain", "drain", "drain"],
///     ...     },
///     ... )
///     >>> round(answer.fall_in_per_ft, 4)
///     0.2
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (corners, facets, *, units=crate::units::Units(None)), text_signature = "(corners, facets, *, units=None)")]
fn finish_from_facets(
    py: Python<'_>,
    corners: &Bound<'_, PyAny>,
    facets: &Bound<'_, PyAny>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FINISH_FROM_FACETS, &[Some(corners), Some(facets)], units)
}


static FINISH_FROM_PLANES: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "finish_from_planes"),
    class: "Finish",
    answer: crate::answers::record,
};

/// A finish of several facets, each with the plane through three heights of its own, checked to meet.
///
/// Rule: z = a + b x + c y through the heights of each facet.
/// Takes for granted: facets that share an edge have one height along it.
///
/// Args:
///     corners: the corners of all facets; a table of at least 3 rows, each a corner of one facet, in
///         order round it, with the columns
///         facet: the facet it is of; a text
///         x: distance from the left [ft | m]; a finite number
///         y: distance from the front [ft | m]; a finite number
///         elevation: height of the finish there, at three corners of each facet or more [ft | m]; at
///             least -32808.3989501 ft, at most 32808.3989501 ft (at least -10000 m, at most 10000 m);
///             may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Finish: The new top surface: one plane, or facets that meet. It has notes, basis and taken
///         besides.
///
/// Raises:
///     GradeError: two facets have different heights along the edge they share (FACETS_APART); the
///         corners of a facet bound no area that could be struck off (FACET_SHAPE)
///     FormError: a required value is missing (KEY_MISSING)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import finish_from_planes
///     >>> answer = finish_from_planes(
///     ...     corners={
///     ...         "facet": ["left", "left", "left", "left", "right", "right", "right", "right"],
///     ...         "x": ["0 ft", "10 ft", "10 ft", "0 ft", "10 ft", "20 ft", "20 ft", "10 ft"],
///     ...         "y": ["0 ft", "0 ft", "16 ft", "16 ft", "0 ft", "0 ft", "16 ft", "16 ft"],
///     ...         "elevation": [
///     ...             "100 ft",
///     ...             "99.9 ft",
///     ...             "99.9 ft",
///     ...             None,
///     ...             "99.9 ft",
///     ...             "100.1 ft",
///     ...             None,
///     ...             "99.9 ft",
///     ...         ],
///     ...     },
///     ... )
///     >>> round(answer.fall_in_per_ft, 4)
///     0.24
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (corners, *, units=crate::units::Units(None)), text_signature = "(corners, *, units=None)")]
fn finish_from_planes(
    py: Python<'_>,
    corners: &Bound<'_, PyAny>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FINISH_FROM_PLANES, &[Some(corners)], units)
}


static FINISH_TO_VALLEY: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "finish_to_valley"),
    class: "Finish",
    answer: crate::answers::record,
};

/// Two planes that fall to a valley across the work; the valley may fall along its length.
///
/// Rule: both planes hold the line; square to it they rise or fall by their own falls.
/// Takes for granted: left and right are seen from the first point of the valley looking to the second.
///
/// Args:
///     survey: the old slab with its outline; a Survey
///     valley: two points of the valley; a table of at least 1 row, each a point of the finish, with
///         the columns
///         x: distance from the left [ft | m]; a finite number
///         y: distance from the front [ft | m]; a finite number
///         elevation: height there [ft | m]; at least -32808.3989501 ft, at most 32808.3989501 ft (at
///             least -10000 m, at most 10000 m)
///     fall: fall to the valley, square to it [in/ft | %]; at least 0 in/ft, at most 12 in/ft (at least
///         0 %, at most 100 %)
///     right_fall: fall on the right, where it is another [in/ft | %]; at least 0 in/ft, at most 12
///         in/ft (at least 0 %, at most 100 %); may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Finish: The new top surface: one plane, or facets that meet. It has notes, basis and taken
///         besides.
///
/// Raises:
///     GradeError: a line or a place of the finish lies outside the work (OFF_WORK); the finish is not
///         determined by what was given (FINISH_UNDETERMINED)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import finish_to_valley
///     >>> answer = finish_to_valley(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     valley={
///     ...         "x": ["10 ft", "10 ft"],
///     ...         "y": ["0 ft", "32 ft"],
///     ...         "elevation": ["99.5 ft", "99.7 ft"],
///     ...     },
///     ...     fall="1/8 in/ft",
///     ... )
///     >>> round(answer.fall_in_per_ft, 4)
///     0.1458
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, valley, fall, *, right_fall=None, units=crate::units::Units(None)), text_signature = "(survey, valley, fall, *, right_fall=None, units=None)")]
fn finish_to_valley(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    valley: &Bound<'_, PyAny>,
    fall: &Bound<'_, PyAny>,
    right_fall: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FINISH_TO_VALLEY, &[Some(survey), Some(valley), Some(fall), right_fall], units)
}


static FINISH_CROWN: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "finish_crown"),
    class: "Finish",
    answer: crate::answers::record,
};

/// A crown: two planes that fall away from a ridge across the work; the ridge may fall along its length.
///
/// Rule: both planes hold the line; square to it they rise or fall by their own falls.
/// Takes for granted: left and right are seen from the first point of the ridge looking to the second.
///
/// Args:
///     survey: the old slab with its outline; a Survey
///     ridge: two points of the ridge; a table of at least 1 row, each a point of the finish, with the
///         columns
///         x: distance from the left [ft | m]; a finite number
///         y: distance from the front [ft | m]; a finite number
///         elevation: height there [ft | m]; at least -32808.3989501 ft, at most 32808.3989501 ft (at
///             least -10000 m, at most 10000 m)
///     fall: fall away from the ridge, square to it [in/ft | %]; at least 0 in/ft, at most 12 in/ft (at
///         least 0 %, at most 100 %)
///     right_fall: fall on the right, where it is another [in/ft | %]; at least 0 in/ft, at most 12
///         in/ft (at least 0 %, at most 100 %); may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Finish: The new top surface: one plane, or facets that meet. It has notes, basis and taken
///         besides.
///
/// Raises:
///     GradeError: a line or a place of the finish lies outside the work (OFF_WORK)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
///         quantity (UNIT_WRONG)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import finish_crown
///     >>> answer = finish_crown(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     ridge={
///     ...         "x": ["10 ft", "10 ft"],
///     ...         "y": ["0 ft", "32 ft"],
///     ...         "elevation": ["99.8 ft", "99.8 ft"],
///     ...     },
///     ...     fall="1/8 in/ft",
///     ...     right_fall="1/4 in/ft",
///     ... )
///     >>> round(answer.fall_in_per_ft, 4)
///     0.25
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, ridge, fall, *, right_fall=None, units=crate::units::Units(None)), text_signature = "(survey, ridge, fall, *, right_fall=None, units=None)")]
fn finish_crown(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    ridge: &Bound<'_, PyAny>,
    fall: &Bound<'_, PyAny>,
    right_fall: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FINISH_CROWN, &[Some(survey), Some(ridge), Some(fall), right_fall], units)
}


static FINISH_TO_TRENCH: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "finish_to_trench"),
    class: "Finish",
    answer: crate::answers::record,
};

/// Planes that fall to a trench drain: two to one across the work, or one to a trench along an edge, inside it.
///
/// Rule: the planes hold the rims of the trench, which is level across, and rise from them by their own
///     falls.
/// Takes for granted: left and right are seen from the first point of the trench looking to the second;
///     an edge's trench starts where the edge does.
///
/// Args:
///     survey: the old slab with its outline; a Survey
///     fall: fall to the trench, square to it [in/ft | %]; at least 0 in/ft, at most 12 in/ft (at least
///         0 %, at most 100 %)
///     trench: two points of the middle of the trench, at the height of its rims; a table of at least 1
///         row, each a point of the finish, with the columns; may be left out
///         x: distance from the left [ft | m]; a finite number
///         y: distance from the front [ft | m]; a finite number
///         elevation: height there [ft | m]; at least -32808.3989501 ft, at most 32808.3989501 ft (at
///             least -10000 m, at most 10000 m)
///     edge: in place of the points: the edge the trench lies along; a text; may be left out
///     elevation: along an edge: height of the rims where it starts [ft | m]; at least -32808.3989501
///         ft, at most 32808.3989501 ft (at least -10000 m, at most 10000 m); may be left out
///     elevation_end: along an edge: height of the rims where it ends, where the trench is not level
///         [ft | m]; at least -32808.3989501 ft, at most 32808.3989501 ft (at least -10000 m, at most
///         10000 m); may be left out
///     width: width from rim to rim [in | mm]; at least 0 in, at most 1200 in (at least 0 mm, at most
///         30480 mm); where it is not given 0 in is taken: a slot
///     right_fall: fall on the right, where it is another [in/ft | %]; at least 0 in/ft, at most 12
///         in/ft (at least 0 %, at most 100 %); may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Finish: The new top surface: one plane, or facets that meet. It has notes, basis and taken
///         besides.
///
/// Raises:
///     GradeError: the finish is not determined by what was given (FINISH_UNDETERMINED); the finish is
///         given in two ways (FINISH_TWICE)
///     FormError: two values say the same thing differently (CONTRADICTION)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import finish_to_trench
///     >>> answer = finish_to_trench(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     trench={
///     ...         "x": ["0 ft", "20 ft"],
///     ...         "y": ["16 ft", "16 ft"],
///     ...         "elevation": ["99.6 ft", "99.5 ft"],
///     ...     },
///     ...     width="6 in",
///     ...     fall="1/8 in/ft",
///     ... )
///     >>> round(answer.fall_in_per_ft, 4)
///     0.1387
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, fall, *, trench=None, edge=None, elevation=None, elevation_end=None, width=None, right_fall=None, units=crate::units::Units(None)), text_signature = "(survey, fall, *, trench=None, edge=None, elevation=None, elevation_end=None, width=None, right_fall=None, units=None)")]
fn finish_to_trench(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    fall: &Bound<'_, PyAny>,
    trench: Option<&Bound<'_, PyAny>>,
    edge: Option<&Bound<'_, PyAny>>,
    elevation: Option<&Bound<'_, PyAny>>,
    elevation_end: Option<&Bound<'_, PyAny>>,
    width: Option<&Bound<'_, PyAny>>,
    right_fall: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FINISH_TO_TRENCH, &[Some(survey), trench, edge, elevation, elevation_end, width, Some(fall), right_fall], units)
}


static FINISH_TO_DRAIN: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "finish_to_drain"),
    class: "Finish",
    answer: crate::answers::record,
};

/// Planes that fall from a level perimeter to an area drain, one from each run of the outline.
///
/// Rule: each plane holds its run at the perimeter's height and the drain at its own; drain = perimeter
///     - fall x way of the water.
/// Takes for granted: every corner of the outline can be seen from the drain; holes take nothing away;
///     give the drain's height or a fall.
///
/// Args:
///     survey: the old slab with its outline; a Survey
///     x: middle of the drain, from the left [ft | m]; a finite number
///     y: middle of the drain, from the front [ft | m]; a finite number
///     elevation: height of the finish all along the outer edges [ft | m]; at least -32808.3989501 ft,
///         at most 32808.3989501 ft (at least -10000 m, at most 10000 m)
///     drain_elevation: height of the drain [ft | m]; at least -32808.3989501 ft, at most 32808.3989501
///         ft (at least -10000 m, at most 10000 m); may be left out
///     fall: fall to the drain, in place of its height [in/ft | %]; at least 0 in/ft, at most 12 in/ft
///         (at least 0 %, at most 100 %); may be left out
///     along: the way the fall is meant along: from the farthest corner or from the nearest place; one
///         of "longest", "shortest"; where it is not given longest is taken: the fall is then met
///         everywhere
///     rim_x: size of the drain's level rim along x; none for a point [in | mm]; at least 0 in, at most
///         1200 in (at least 0 mm, at most 30480 mm); may be left out
///     rim_y: its size along y, where it is not square [in | mm]; at least 0 in, at most 1200 in (at
///         least 0 mm, at most 30480 mm); may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Finish: The new top surface: one plane, or facets that meet. It has notes, basis and taken
///         besides.
///
/// Raises:
///     GradeError: a line or a place of the finish lies outside the work (OFF_WORK); a corner of the
///         work cannot be seen from the drain (CORNER_UNSEEN); the finish is not determined by what was
///         given (FINISH_UNDETERMINED); the finish is given in two ways (FINISH_TWICE)
///     FormError: two values say the same thing differently (CONTRADICTION); the word is not one of the
///         choices (WORD_UNKNOWN)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import finish_to_drain
///     >>> answer = finish_to_drain(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     x="10 ft",
///     ...     y="14 ft",
///     ...     elevation="99.7 ft",
///     ...     fall="1/8 in/ft",
///     ...     rim_x="12 in",
///     ... )
///     >>> round(answer.fall_in_per_ft, 4)
///     0.262
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, x, y, elevation, *, drain_elevation=None, fall=None, along=None, rim_x=None, rim_y=None, units=crate::units::Units(None)), text_signature = "(survey, x, y, elevation, *, drain_elevation=None, fall=None, along=None, rim_x=None, rim_y=None, units=None)")]
fn finish_to_drain(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    x: &Bound<'_, PyAny>,
    y: &Bound<'_, PyAny>,
    elevation: &Bound<'_, PyAny>,
    drain_elevation: Option<&Bound<'_, PyAny>>,
    fall: Option<&Bound<'_, PyAny>>,
    along: Option<&Bound<'_, PyAny>>,
    rim_x: Option<&Bound<'_, PyAny>>,
    rim_y: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FINISH_TO_DRAIN, &[Some(survey), Some(x), Some(y), Some(elevation), drain_elevation, fall, along, rim_x, rim_y], units)
}


static FINISH_WITH_STRIP: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "finish_with_strip"),
    class: "Finish",
    answer: crate::answers::record,
};

/// A finish with a strip along an edge that has a fall of its own and meets it: a curb, an apron.
///
/// Rule: the strip holds the finish's height along its inner line; square to the edge it has its own
///     fall.
/// Takes for granted: the strip takes everything within its width of the line of the edge.
///
/// Args:
///     survey: the old slab with the edge; a Survey
///     finish: the finish without the strip; a Finish
///     edge: name of the edge; a text
///     width: width of the strip [ft | m]; at least 0 ft, at most 100 ft (at least 0 m, at most 30.48
///         m)
///     fall: fall of the strip, square to the edge [in/ft | %]; at least 0 in/ft, at most 12 in/ft (at
///         least 0 %, at most 100 %)
///     toward: what the strip falls to: the edge as an apron, the floor as a curb; one of "edge",
///         "floor"
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Finish: The new top surface: one plane, or facets that meet. It has notes, basis and taken
///         besides.
///
/// Raises:
///     GradeError: no edge of the outline has this name (EDGE_UNKNOWN)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///     FormError: the word is not one of the choices (WORD_UNKNOWN)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import finish_with_strip
///     >>> answer = finish_with_strip(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     finish={"level": "99.7 ft"},
///     ...     edge="front",
///     ...     width="2 ft",
///     ...     fall="1/2 in/ft",
///     ...     toward="edge",
///     ... )
///     >>> round(answer.fall_in_per_ft, 4)
///     0.5
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, finish, edge, width, fall, toward, *, units=crate::units::Units(None)), text_signature = "(survey, finish, edge, width, fall, toward, *, units=None)")]
fn finish_with_strip(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    finish: &Bound<'_, PyAny>,
    edge: &Bound<'_, PyAny>,
    width: &Bound<'_, PyAny>,
    fall: &Bound<'_, PyAny>,
    toward: &Bound<'_, PyAny>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FINISH_WITH_STRIP, &[Some(survey), Some(finish), Some(edge), Some(width), Some(fall), Some(toward)], units)
}


static FINISH_RAISED: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "finish_raised"),
    class: "FinishRaised",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(FinishRaised))?.into_any()),
};

/// Any finish lifted or lowered as a whole to where it just leaves a least thickness everywhere between the shots.
///
/// Rule: raised by = greatest of (old slab + least + margin - finish), at shots and wherever triangles
///     and facets cut one another.
/// Takes for granted: ground beyond the shots is extended, not measured: it does not bind.
///
/// Args:
///     survey: the old slab; a Survey
///     finish: the finish as drawn; a Finish
///     least: least thickness [in | mm]; at least 0 in, at most 120 in (at least 0 mm, at most 3048 mm)
///     margin: margin on the least thickness [in | mm]; at least 0 in, at most 120 in (at least 0 mm,
///         at most 3048 mm); may be left out
///     round: the lift is rounded up to whole steps of this, so that heights given in steps stay so [in
///         | mm]; at least 0 in, at most 12 in (at least 0 mm, at most 304.8 mm); may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     FinishRaised, with the attributes
///         finish: the finish
///         raised_by_in, raised_by_mm: how far it was lifted; below zero where it was lowered [in | mm]
///         at_x_ft, at_x_m: the place that fixes it, from the left [ft | m]
///         at_y_ft, at_y_m: the place that fixes it, from the front [ft | m]
///         at_shot: the shot there
///         at_facet: the facet there
///         rounded_by_in, rounded_by_mm: how much of the lift is rounding [in | mm]
///     and notes, basis and taken.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///     FormError: the list is empty (EMPTY_LIST)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import finish_raised
///     >>> answer = finish_raised(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     finish={"level": "99.3 ft"},
///     ...     least="3 in",
///     ...     margin="3/8 in",
///     ...     round="1/8 in",
///     ... )
///     >>> round(answer.raised_by_in, 4)
///     4.125
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, finish, least, *, margin=None, round=None, units=crate::units::Units(None)), text_signature = "(survey, finish, least, *, margin=None, round=None, units=None)")]
fn finish_raised(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    finish: &Bound<'_, PyAny>,
    least: &Bound<'_, PyAny>,
    margin: Option<&Bound<'_, PyAny>>,
    round: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FINISH_RAISED, &[Some(survey), Some(finish), Some(least), margin, round], units)
}

/// What `finish_raised` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.grade")]
pub(crate) struct FinishRaised;

#[pymethods]
impl FinishRaised {
    /// The finish.
    #[getter]
    fn get_finish<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// How far it was lifted; below zero where it was lowered [in].
    #[getter]
    fn get_raised_by_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// How far it was lifted; below zero where it was lowered [mm].
    #[getter]
    fn get_raised_by_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// The place that fixes it, from the left [ft].
    #[getter]
    fn get_at_x_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// The place that fixes it, from the left [m].
    #[getter]
    fn get_at_x_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// The place that fixes it, from the front [ft].
    #[getter]
    fn get_at_y_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// The place that fixes it, from the front [m].
    #[getter]
    fn get_at_y_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// The shot there.
    #[getter]
    fn get_at_shot<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// The facet there.
    #[getter]
    fn get_at_facet<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// How much of the lift is rounding [in].
    #[getter]
    fn get_rounded_by_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// How much of the lift is rounding [mm].
    #[getter]
    fn get_rounded_by_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Si)
    }
}

static FINISH_FACETS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "finish_facets"),
    class: "FinishFacets",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(FinishFacets))?.into_any()),
};

/// The facets of a finish: the fall of each, which way it drains and over to what, its area and its corners.
///
/// Rule: fall = sqrt(rise_x^2 + rise_y^2); water runs against the rise.
/// Takes for granted: one plane has no facets to list.
///
/// Args:
///     finish: the finish; a Finish
///     survey: the work: areas are then of the part inside it; a Survey; may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     FinishFacets, with the attributes
///         facets: the facets, a table of facets
///         corners: their corners, a table of corners
///     and notes, basis and taken.
///
/// Raises:
///     GradeError: the finish is given in two ways (FINISH_TWICE); the corners of a facet bound no area
///         that could be struck off (FACET_SHAPE)
///     FormError: the list is empty (EMPTY_LIST)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import finish_facets
///     >>> answer = finish_facets(
///     ...     finish={
///     ...         "corners": [
///     ...             {"name": "A", "x": "0 ft", "y": "0 ft", "elevation": "100 ft"},
///     ...             {"name": "B", "x": "20 ft", "y": "0 ft", "elevation": "99.9 ft"},
///     ...             {"name": "C", "x": "20 ft", "y": "16 ft", "elevation": "99.9 ft"},
///     ...             {"name": "D", "x": "0 ft", "y": "16 ft", "elevation": "100 ft"},
///     ...         ],
///     ...         "facets": [{"name": "floor", "corners": ["A", "B", "C", "D"]}],
///     ...     },
///     ... )
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (finish, *, survey=None, units=crate::units::Units(None)), text_signature = "(finish, *, survey=None, units=None)")]
fn finish_facets(
    py: Python<'_>,
    finish: &Bound<'_, PyAny>,
    survey: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FINISH_FACETS, &[Some(finish), survey], units)
}

/// What `finish_facets` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.grade")]
pub(crate) struct FinishFacets;

#[pymethods]
impl FinishFacets {
    /// The facets, a table of facets.
    #[getter]
    fn get_facets<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Their corners, a table of corners.
    #[getter]
    fn get_corners<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
}

static FINISH_SOLVED: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "finish_solved"),
    class: "FinishSolved",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(FinishSolved))?.into_any()),
};

/// The finish that takes the least concrete under all demands, proved, with the price of each demand, and rounded to what can be set out.
///
/// Rule: least integral of finish less old slab, finish plane over each facet, facets meeting, all
///     demands kept; with grinding at a price: concrete and ground volume at their prices.
/// Takes for granted: old slab plane over each triangle; the finish nowhere dips below it, but for what
///     may be ground; door lines level, falls square to their edge, a level perimeter about a drain,
///     unless set_out is no.
///
/// Args:
///     survey: the old slab; a Survey
///     demands: what the finish must keep; a table of at least 1 row, each a demand on the finish, with
///         the columns
///         name: what it is called in the answer: side door; a text
///         kind: what is demanded; one of "least_thickness", "greatest_thickness", "least_fall",
///             "greatest_fall", "steepest", "cross_fall", "level", "at_most", "at_least", "exactly"
///         thickness: a least or greatest thickness [in | mm]; at least 0 in, at most 120 in (at least
///             0 mm, at most 3048 mm); may be left out
///         fall: a least or greatest fall; steepest: in any direction; cross_fall: along the line
///             [in/ft | %]; at least 0 in/ft, at most 12 in/ft (at least 0 %, at most 100 %); may be
///             left out
///         elevation: a height that is not passed, reached, or had exactly [ft | m]; at least
///             -32808.3989501 ft, at most 32808.3989501 ft (at least -10000 m, at most 10000 m); may be
///             left out
///         tolerance: how far a level line may be out of level; none for dead level [in | mm]; at least
///             0 in, at most 120 in (at least 0 mm, at most 3048 mm); may be left out
///         edge: an edge of the outline: where a fall goes, or the line; a text; may be left out
///         x: or a place: a drain, a point, the start of a line, from the left [ft | m]; at least
///             -328083.989501 ft, at most 328083.989501 ft (at least -100000 m, at most 100000 m); may
///             be left out
///         y: from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at least
///             -100000 m, at most 100000 m); may be left out
///         x_to: the end of the line, from the left [ft | m]; at least -328083.989501 ft, at most
///             328083.989501 ft (at least -100000 m, at most 100000 m); may be left out
///         y_to: from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
///             least -100000 m, at most 100000 m); may be left out
///         facet: which facets a fall is of: their name, or what they fall to; all if it is left out; a
///             text; may be left out
///         zone: where a thickness is demanded: a name among the zones; everywhere if it is left out; a
///             text; may be left out
///         firm: whether it stands firm: no conflict blames it; one of "no", "yes"; may be left out
///         weight: what breaking it by 1/4 in, or by 0.1 % of fall, weighs against the others; 1 is
///             usual [1]; more than 0 1; may be left out
///     zones: corners of the zones that demands name; a table of at least 1 row, each a corner of a
///         zone, in order; the corners of one zone stand together, with the columns; may be left out
///         zone: name of the zone; a text
///         x: from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at least
///             -100000 m, at most 100000 m)
///         y: from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at least
///             -100000 m, at most 100000 m)
///     layout: the facets in plan: a finish whose heights do not count; one plane if it is left out; a
///         Finish; may be left out
///     margin: margin on every least thickness [in | mm]; at least 0 in, at most 120 in (at least 0 mm,
///         at most 3048 mm); where it is not given 3/8 in is taken: reading, texture and strike-off
///     edges_bind: whether thickness binds beyond the shots too, where the old slab is extended; one of
///         "no", "yes"; may be left out
///     concrete_price: price of concrete [/yd3 | /m3]; at least 0 /yd3, at most 7645548.57984 /yd3 (at
///         least 0 /m3, at most 10000000 /m3); may be left out
///     grind_at_most: how deep high spots may be ground [in | mm]; at least 0 in, at most 120 in (at
///         least 0 mm, at most 3048 mm); may be left out
///     grinding_price: price of what is ground off [/yd3 | /m3]; at least 0 /yd3, at most 7645548.57984
///         /yd3 (at least 0 /m3, at most 10000000 /m3); may be left out
///     round: heights are whole steps of this from the datum [in | mm]; at least 0 in, at most 12 in
///         (at least 0 mm, at most 304.8 mm); where it is not given 1/8 in is taken: finer cannot be
///         set out
///     datum: the height the steps are counted from, usually the benchmark [ft | m]; at least
///         -32808.3989501 ft, at most 32808.3989501 ft (at least -10000 m, at most 10000 m); where it
///         is not given 0 ft is taken: the job datum
///     round_fall: falls are whole steps of this [in/ft | %]; at least 0 in/ft, at most 12 in/ft (at
///         least 0 %, at most 100 %); where it is not given 1/16 in/ft is taken: finer cannot be struck
///         off
///     set_out: no for the planned finish as it comes out, with nothing added or rounded; one of "no",
///         "yes"; may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     FinishSolved, with the attributes
///         finish: the finish to be built, in whole steps
///         concrete_yd3, concrete_m3: its concrete [yd3 | m3]
///         ground_yd3, ground_m3: what is ground off under it [yd3 | m3]
///         cost_money: concrete and grinding at their prices [money]
///         planned: the finish before rounding
///         planned_concrete_yd3, planned_concrete_m3: its concrete [yd3 | m3]
///         planned_cost_money: its cost [money]
///         bare: the finish by the demands alone: no margin, nothing added or rounded
///         bare_concrete_yd3, bare_concrete_m3: its concrete [yd3 | m3]
///         bare_cost_money: its cost [money]
///         bound_yd3, bound_m3: no finish planned so costs less than this, in volume of concrete [yd3 |
///             m3]
///         gap_ratio: how far the planned cost may be above the least, as a share [1]
///         least_slack_in, least_slack_mm: how far the demand that is kept most narrowly is from being
///             broken; less than none by rounding only [in | mm]
///         rows: how many rows were looked at for that
///         round_in, round_mm: the step of heights that could be kept; none where nothing is rounded
///             [in | mm]
///         round_fall_in_per_ft, round_fall_percent: the step of falls that could be kept [in/ft | %]
///         kept: how each demand stands, and what it costs, a table of kept
///     and notes, basis and taken.
///
/// Raises:
///     FormError: the list is empty (EMPTY_LIST); a required value is missing (KEY_MISSING); the word
///         is not one of the choices (WORD_UNKNOWN); two values say the same thing differently
///         (CONTRADICTION)
///     GradeError: no edge of the outline has this name (EDGE_UNKNOWN); the demands on the finish
///         cannot all be kept (DEMANDS_CONFLICT); no zone has this name (ZONE_UNKNOWN)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
///         quantity (UNIT_WRONG)
///
/// Basis:
///     plane and solid geometry: derived
///     no answer costs less than the weighted bounds of the rows; rows without an answer add up to a
///         contradiction: Textbooks on linear programming, duality (Dantzig 1963) (any), weak duality;
///         Farkas' lemma; dual simplex method, from memory: confirm
///     3/8 in over the least thickness, from reading 1/8, texture 3/16 and strike-off 3/16 in: common
///         practice, no source
///
/// Example:
///     >>> from overslab.grade import finish_solved
///     >>> answer = finish_solved(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     demands={
///     ...         "name": ["least 3 in", "fall", "side door"],
///     ...         "kind": ["least_thickness", "least_fall", "at_most"],
///     ...         "thickness": ["3 in", None, None],
///     ...         "fall": [None, "1/8 in/ft", None],
///     ...         "elevation": [None, None, "100.2 ft"],
///     ...         "edge": [None, "front", None],
///     ...         "x": [None, None, "0 ft"],
///     ...         "y": [None, None, "27 ft"],
///     ...     },
///     ...     concrete_price="165 /yd3",
///     ... )
///     >>> round(answer.concrete_yd3, 4)
///     9.5596
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, demands, *, zones=None, layout=None, margin=None, edges_bind=None, concrete_price=None, grind_at_most=None, grinding_price=None, round=None, datum=None, round_fall=None, set_out=None, units=crate::units::Units(None)), text_signature = "(survey, demands, *, zones=None, layout=None, margin=None, edges_bind=None, concrete_price=None, grind_at_most=None, grinding_price=None, round=None, datum=None, round_fall=None, set_out=None, units=None)")]
fn finish_solved(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    demands: &Bound<'_, PyAny>,
    zones: Option<&Bound<'_, PyAny>>,
    layout: Option<&Bound<'_, PyAny>>,
    margin: Option<&Bound<'_, PyAny>>,
    edges_bind: Option<&Bound<'_, PyAny>>,
    concrete_price: Option<&Bound<'_, PyAny>>,
    grind_at_most: Option<&Bound<'_, PyAny>>,
    grinding_price: Option<&Bound<'_, PyAny>>,
    round: Option<&Bound<'_, PyAny>>,
    datum: Option<&Bound<'_, PyAny>>,
    round_fall: Option<&Bound<'_, PyAny>>,
    set_out: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FINISH_SOLVED, &[Some(survey), Some(demands), zones, layout, margin, edges_bind, concrete_price, grind_at_most, grinding_price, round, datum, round_fall, set_out], units)
}

/// What `finish_solved` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.grade")]
pub(crate) struct FinishSolved;

#[pymethods]
impl FinishSolved {
    /// The finish to be built, in whole steps.
    #[getter]
    fn get_finish<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Its concrete [yd3].
    #[getter]
    fn get_concrete_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Its concrete [m3].
    #[getter]
    fn get_concrete_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// What is ground off under it [yd3].
    #[getter]
    fn get_ground_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// What is ground off under it [m3].
    #[getter]
    fn get_ground_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Concrete and grinding at their prices [money].
    #[getter]
    fn get_cost_money<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// The finish before rounding.
    #[getter]
    fn get_planned<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Its concrete [yd3].
    #[getter]
    fn get_planned_concrete_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// Its concrete [m3].
    #[getter]
    fn get_planned_concrete_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Si)
    }
    /// Its cost [money].
    #[getter]
    fn get_planned_cost_money<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// The finish by the demands alone: no margin, nothing added or rounded.
    #[getter]
    fn get_bare<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Us)
    }
    /// Its concrete [yd3].
    #[getter]
    fn get_bare_concrete_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Us)
    }
    /// Its concrete [m3].
    #[getter]
    fn get_bare_concrete_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Si)
    }
    /// Its cost [money].
    #[getter]
    fn get_bare_cost_money<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 9, overslab::quantity::System::Us)
    }
    /// No finish planned so costs less than this, in volume of concrete [yd3].
    #[getter]
    fn get_bound_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 10, overslab::quantity::System::Us)
    }
    /// No finish planned so costs less than this, in volume of concrete [m3].
    #[getter]
    fn get_bound_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 10, overslab::quantity::System::Si)
    }
    /// How far the planned cost may be above the least, as a share [1].
    #[getter]
    fn get_gap_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 11, overslab::quantity::System::Us)
    }
    /// How far the demand that is kept most narrowly is from being broken; less than none by rounding only [in].
    #[getter]
    fn get_least_slack_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 12, overslab::quantity::System::Us)
    }
    /// How far the demand that is kept most narrowly is from being broken; less than none by rounding only [mm].
    #[getter]
    fn get_least_slack_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 12, overslab::quantity::System::Si)
    }
    /// How many rows were looked at for that.
    #[getter]
    fn get_rows<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 13, overslab::quantity::System::Us)
    }
    /// The step of heights that could be kept; none where nothing is rounded [in].
    #[getter]
    fn get_round_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 14, overslab::quantity::System::Us)
    }
    /// The step of heights that could be kept; none where nothing is rounded [mm].
    #[getter]
    fn get_round_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 14, overslab::quantity::System::Si)
    }
    /// The step of falls that could be kept [in/ft].
    #[getter]
    fn get_round_fall_in_per_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 15, overslab::quantity::System::Us)
    }
    /// The step of falls that could be kept [%].
    #[getter]
    fn get_round_fall_percent<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 15, overslab::quantity::System::Si)
    }
    /// How each demand stands, and what it costs, a table of kept.
    #[getter]
    fn get_kept<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 16, overslab::quantity::System::Us)
    }
}

static FINISH_CONFLICTS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "finish_conflicts"),
    class: "FinishConflicts",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(FinishConflicts))?.into_any()),
};

/// Which demands on the finish cannot be kept together: every smallest set, and by how much each of its demands would have to give way.
///
/// Rule: a set is told when its rows have weights w >= 0 with w A = 0 and w b > 0, and no part of it
///     has; gives way by the least t with A u + share t >= b.
/// Takes for granted: heights and falls unrounded; the margin counts; demands that stand firm are kept
///     and not blamed.
///
/// Args:
///     survey: the old slab; a Survey
///     demands: what the finish must keep; a table of at least 1 row, each a demand on the finish, with
///         the columns
///         name: what it is called in the answer: side door; a text
///         kind: what is demanded; one of "least_thickness", "greatest_thickness", "least_fall",
///             "greatest_fall", "steepest", "cross_fall", "level", "at_most", "at_least", "exactly"
///         thickness: a least or greatest thickness [in | mm]; at least 0 in, at most 120 in (at least
///             0 mm, at most 3048 mm); may be left out
///         fall: a least or greatest fall; steepest: in any direction; cross_fall: along the line
///             [in/ft | %]; at least 0 in/ft, at most 12 in/ft (at least 0 %, at most 100 %); may be
///             left out
///         elevation: a height that is not passed, reached, or had exactly [ft | m]; at least
///             -32808.3989501 ft, at most 32808.3989501 ft (at least -10000 m, at most 10000 m); may be
///             left out
///         tolerance: how far a level line may be out of level; none for dead level [in | mm]; at least
///             0 in, at most 120 in (at least 0 mm, at most 3048 mm); may be left out
///         edge: an edge of the outline: where a fall goes, or the line; a text; may be left out
///         x: or a place: a drain, a point, the start of a line, from the left [ft | m]; at least
///             -328083.989501 ft, at most 328083.989501 ft (at least -100000 m, at most 100000 m); may
///             be left out
///         y: from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at least
///             -100000 m, at most 100000 m); may be left out
///         x_to: the end of the line, from the left [ft | m]; at least -328083.989501 ft, at most
///             328083.989501 ft (at least -100000 m, at most 100000 m); may be left out
///         y_to: from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
///             least -100000 m, at most 100000 m); may be left out
///         facet: which facets a fall is of: their name, or what they fall to; all if it is left out; a
///             text; may be left out
///         zone: where a thickness is demanded: a name among the zones; everywhere if it is left out; a
///             text; may be left out
///         firm: whether it stands firm: no conflict blames it; one of "no", "yes"; may be left out
///         weight: what breaking it by 1/4 in, or by 0.1 % of fall, weighs against the others; 1 is
///             usual [1]; more than 0 1; may be left out
///     zones: corners of the zones that demands name; a table of at least 1 row, each a corner of a
///         zone, in order; the corners of one zone stand together, with the columns; may be left out
///         zone: name of the zone; a text
///         x: from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at least
///             -100000 m, at most 100000 m)
///         y: from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at least
///             -100000 m, at most 100000 m)
///     layout: the facets in plan: a finish whose heights do not count; one plane if it is left out; a
///         Finish; may be left out
///     margin: margin on every least thickness [in | mm]; at least 0 in, at most 120 in (at least 0 mm,
///         at most 3048 mm); where it is not given 3/8 in is taken: reading, texture and strike-off
///     edges_bind: whether thickness binds beyond the shots too, where the old slab is extended; one of
///         "no", "yes"; may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     FinishConflicts, with the attributes
///         kept: whether all can be kept: no, yes
///         complete: whether these are all the sets; at most ten are told: no, yes
///         sets: the sets, a table of sets
///         alone: what mends everything alone, a table of alone
///         together: what mends everything with the least weighted sum, a table of together
///         said: all of it in sentences
///     and notes, basis and taken.
///
/// Raises:
///     FormError: the list is empty (EMPTY_LIST); a name is given twice (KEY_REPEATED); a required
///         value is missing (KEY_MISSING)
///
/// Basis:
///     plane and solid geometry: derived
///     no answer costs less than the weighted bounds of the rows; rows without an answer add up to a
///         contradiction: Textbooks on linear programming, duality (Dantzig 1963) (any), weak duality;
///         Farkas' lemma; dual simplex method, from memory: confirm
///
/// Example:
///     >>> from overslab.grade import finish_conflicts
///     >>> answer = finish_conflicts(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     margin="1/4 in",
///     ...     demands={
///     ...         "name": ["least 3 in", "fall", "side door"],
///     ...         "kind": ["least_thickness", "least_fall", "at_most"],
///     ...         "thickness": ["3 in", None, None],
///     ...         "fall": [None, "1/4 in/ft", None],
///     ...         "elevation": [None, None, "99.7 ft"],
///     ...         "edge": [None, "front", None],
///     ...         "x": [None, None, "0 ft"],
///     ...         "y": [None, None, "27 ft"],
///     ...     },
///     ... )
///     >>> answer.kept
///     'yes'
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, demands, *, zones=None, layout=None, margin=None, edges_bind=None, units=crate::units::Units(None)), text_signature = "(survey, demands, *, zones=None, layout=None, margin=None, edges_bind=None, units=None)")]
fn finish_conflicts(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    demands: &Bound<'_, PyAny>,
    zones: Option<&Bound<'_, PyAny>>,
    layout: Option<&Bound<'_, PyAny>>,
    margin: Option<&Bound<'_, PyAny>>,
    edges_bind: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FINISH_CONFLICTS, &[Some(survey), Some(demands), zones, layout, margin, edges_bind], units)
}

/// What `finish_conflicts` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.grade")]
pub(crate) struct FinishConflicts;

#[pymethods]
impl FinishConflicts {
    /// Whether all can be kept: no, yes.
    #[getter]
    fn get_kept<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Whether these are all the sets; at most ten are told: no, yes.
    #[getter]
    fn get_complete<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// The sets, a table of sets.
    #[getter]
    fn get_sets<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// What mends everything alone, a table of alone.
    #[getter]
    fn get_alone<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// What mends everything with the least weighted sum, a table of together.
    #[getter]
    fn get_together<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// All of it in sentences.
    #[getter]
    fn get_said<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
}

static FINISH_SWEEP: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "finish_sweep"),
    class: "FinishSweep",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(FinishSweep))?.into_any()),
};

/// The least concrete for a range of one demand, all others as they are: what each inch, each fall costs.
///
/// Rule: as for the finish of least concrete, unrounded, for each value.
/// Takes for granted: old slab plane over each triangle; the margin counts.
///
/// Args:
///     survey: the old slab; a Survey
///     demands: what the finish must keep; a table of at least 1 row, each a demand on the finish, with
///         the columns
///         name: what it is called in the answer: side door; a text
///         kind: what is demanded; one of "least_thickness", "greatest_thickness", "least_fall",
///             "greatest_fall", "steepest", "cross_fall", "level", "at_most", "at_least", "exactly"
///         thickness: a least or greatest thickness [in | mm]; at least 0 in, at most 120 in (at least
///             0 mm, at most 3048 mm); may be left out
///         fall: a least or greatest fall; steepest: in any direction; cross_fall: along the line
///             [in/ft | %]; at least 0 in/ft, at most 12 in/ft (at least 0 %, at most 100 %); may be
///             left out
///         elevation: a height that is not passed, reached, or had exactly [ft | m]; at least
///             -32808.3989501 ft, at most 32808.3989501 ft (at least -10000 m, at most 10000 m); may be
///             left out
///         tolerance: how far a level line may be out of level; none for dead level [in | mm]; at least
///             0 in, at most 120 in (at least 0 mm, at most 3048 mm); may be left out
///         edge: an edge of the outline: where a fall goes, or the line; a text; may be left out
///         x: or a place: a drain, a point, the start of a line, from the left [ft | m]; at least
///             -328083.989501 ft, at most 328083.989501 ft (at least -100000 m, at most 100000 m); may
///             be left out
///         y: from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at least
///             -100000 m, at most 100000 m); may be left out
///         x_to: the end of the line, from the left [ft | m]; at least -328083.989501 ft, at most
///             328083.989501 ft (at least -100000 m, at most 100000 m); may be left out
///         y_to: from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
///             least -100000 m, at most 100000 m); may be left out
///         facet: which facets a fall is of: their name, or what they fall to; all if it is left out; a
///             text; may be left out
///         zone: where a thickness is demanded: a name among the zones; everywhere if it is left out; a
///             text; may be left out
///         firm: whether it stands firm: no conflict blames it; one of "no", "yes"; may be left out
///         weight: what breaking it by 1/4 in, or by 0.1 % of fall, weighs against the others; 1 is
///             usual [1]; more than 0 1; may be left out
///     demand: the name of the demand; a text
///     values: the values it takes in turn; a table of at least 1 row, each a value of the demand, in
///         the column that goes with it, with the columns
///         length: the value of a thickness or a tolerance [in | mm]; at least 0 in, at most 120 in (at
///             least 0 mm, at most 3048 mm); may be left out
///         fall: the value of a fall [in/ft | %]; at least 0 in/ft, at most 12 in/ft (at least 0 %, at
///             most 100 %); may be left out
///         elevation: the value of a height [ft | m]; at least -32808.3989501 ft, at most 32808.3989501
///             ft (at least -10000 m, at most 10000 m); may be left out
///     zones: corners of the zones that demands name; a table of at least 1 row, each a corner of a
///         zone, in order; the corners of one zone stand together, with the columns; may be left out
///         zone: name of the zone; a text
///         x: from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at least
///             -100000 m, at most 100000 m)
///         y: from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at least
///             -100000 m, at most 100000 m)
///     layout: the facets in plan: a finish whose heights do not count; one plane if it is left out; a
///         Finish; may be left out
///     margin: margin on every least thickness [in | mm]; at least 0 in, at most 120 in (at least 0 mm,
///         at most 3048 mm); where it is not given 3/8 in is taken: reading, texture and strike-off
///     edges_bind: whether thickness binds beyond the shots too, where the old slab is extended; one of
///         "no", "yes"; may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     FinishSweep, with the attributes
///         curve: the concrete for each value, a table of curve
///     and notes, basis and taken.
///
/// Raises:
///     GradeError: no demand has this name (DEMAND_UNKNOWN)
///     FormError: the list is empty (EMPTY_LIST); two values say the same thing differently
///         (CONTRADICTION)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     plane and solid geometry: derived
///     no answer costs less than the weighted bounds of the rows; rows without an answer add up to a
///         contradiction: Textbooks on linear programming, duality (Dantzig 1963) (any), weak duality;
///         Farkas' lemma; dual simplex method, from memory: confirm
///
/// Example:
///     >>> from overslab.grade import finish_sweep
///     >>> answer = finish_sweep(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     demands={
///     ...         "name": ["least", "fall"],
///     ...         "kind": ["least_thickness", "least_fall"],
///     ...         "thickness": ["3 in", None],
///     ...         "fall": [None, "1/8 in/ft"],
///     ...         "edge": [None, "front"],
///     ...     },
///     ...     demand="least",
///     ...     values={"length": ["1 1/2 in", "2 in", "2 1/2 in", "3 in", "3 1/2 in", "4 in"]},
///     ... )
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, demands, demand, values, *, zones=None, layout=None, margin=None, edges_bind=None, units=crate::units::Units(None)), text_signature = "(survey, demands, demand, values, *, zones=None, layout=None, margin=None, edges_bind=None, units=None)")]
fn finish_sweep(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    demands: &Bound<'_, PyAny>,
    demand: &Bound<'_, PyAny>,
    values: &Bound<'_, PyAny>,
    zones: Option<&Bound<'_, PyAny>>,
    layout: Option<&Bound<'_, PyAny>>,
    margin: Option<&Bound<'_, PyAny>>,
    edges_bind: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FINISH_SWEEP, &[Some(survey), Some(demands), zones, layout, margin, edges_bind, Some(demand), Some(values)], units)
}

/// What `finish_sweep` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.grade")]
pub(crate) struct FinishSweep;

#[pymethods]
impl FinishSweep {
    /// The concrete for each value, a table of curve.
    #[getter]
    fn get_curve<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
}

static THICKNESS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "thickness"),
    class: "Thickness",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Thickness))?.into_any()),
};

/// The thickness of the overlay: finish less old slab, with volumes and extremes, exactly.
///
/// Rule: net = integral of (finish - old slab); fill = its positive part; high = its negative part;
///     mean = net / area.
/// Takes for granted: old slab plane over each triangle, finish plane over each facet.
///
/// Args:
///     survey: the old slab; a Survey
///     finish: the new top surface; a Finish
///     thinner_than: the area thinner than this is told [in | mm]; at least -3937.00787402 in, at most
///         3937.00787402 in (at least -100000 mm, at most 100000 mm); may be left out
///     zone: only within this outline; an Outline; may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Thickness, with the attributes
///         area_ft2, area_m2: plan area [ft2 | m2]
///         net_yd3, net_m3: fill less high spots [yd3 | m3]
///         fill_yd3, fill_m3: volume where the finish is above the old slab [yd3 | m3]
///         high_yd3, high_m3: volume of old slab above the finish [yd3 | m3]
///         mean_in, mean_mm: net volume over area [in | mm]
///         least_in, least_mm: least thickness [in | mm]
///         least_x_ft, least_x_m: where it is, from the left [ft | m]
///         least_y_ft, least_y_m: where it is, from the front [ft | m]
///         least_measured_in, least_measured_mm: least thickness between the shots [in | mm]
///         greatest_in, greatest_mm: greatest thickness [in | mm]
///         greatest_x_ft, greatest_x_m: where it is, from the left [ft | m]
///         greatest_y_ft, greatest_y_m: where it is, from the front [ft | m]
///         thinner_ft2, thinner_m2: area thinner than the depth asked about [ft2 | m2]
///         least_facet: the facet where it is thinnest
///         greatest_facet: the facet where it is thickest
///     and notes, basis and taken.
///
/// Raises:
///     FormError: the key is not known (KEY_UNKNOWN); the value is of another kind than the port takes
///         (KIND_MISMATCH)
///     GradeError: the finish is given in two ways (FINISH_TWICE); a part of the work is under no facet
///         (FACETS_LEAVE_HOLE)
///     QuantityError: a number stands without its unit (UNIT_MISSING)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import thickness
///     >>> answer = thickness(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     finish={"level": "99.7 ft"},
///     ...     thinner_than="5 in",
///     ... )
///     >>> round(answer.area_ft2, 4)
///     640.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, finish, *, thinner_than=None, zone=None, units=crate::units::Units(None)), text_signature = "(survey, finish, *, thinner_than=None, zone=None, units=None)")]
fn thickness(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    finish: &Bound<'_, PyAny>,
    thinner_than: Option<&Bound<'_, PyAny>>,
    zone: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &THICKNESS, &[Some(survey), Some(finish), thinner_than, zone], units)
}

/// What `thickness` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.grade")]
pub(crate) struct Thickness;

#[pymethods]
impl Thickness {
    /// Plan area [ft2].
    #[getter]
    fn get_area_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Plan area [m2].
    #[getter]
    fn get_area_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Fill less high spots [yd3].
    #[getter]
    fn get_net_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Fill less high spots [m3].
    #[getter]
    fn get_net_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Volume where the finish is above the old slab [yd3].
    #[getter]
    fn get_fill_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Volume where the finish is above the old slab [m3].
    #[getter]
    fn get_fill_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Volume of old slab above the finish [yd3].
    #[getter]
    fn get_high_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Volume of old slab above the finish [m3].
    #[getter]
    fn get_high_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// Net volume over area [in].
    #[getter]
    fn get_mean_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Net volume over area [mm].
    #[getter]
    fn get_mean_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Si)
    }
    /// Least thickness [in].
    #[getter]
    fn get_least_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// Least thickness [mm].
    #[getter]
    fn get_least_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Si)
    }
    /// Where it is, from the left [ft].
    #[getter]
    fn get_least_x_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// Where it is, from the left [m].
    #[getter]
    fn get_least_x_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Si)
    }
    /// Where it is, from the front [ft].
    #[getter]
    fn get_least_y_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Us)
    }
    /// Where it is, from the front [m].
    #[getter]
    fn get_least_y_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Si)
    }
    /// Least thickness between the shots [in].
    #[getter]
    fn get_least_measured_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Us)
    }
    /// Least thickness between the shots [mm].
    #[getter]
    fn get_least_measured_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Si)
    }
    /// Greatest thickness [in].
    #[getter]
    fn get_greatest_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 9, overslab::quantity::System::Us)
    }
    /// Greatest thickness [mm].
    #[getter]
    fn get_greatest_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 9, overslab::quantity::System::Si)
    }
    /// Where it is, from the left [ft].
    #[getter]
    fn get_greatest_x_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 10, overslab::quantity::System::Us)
    }
    /// Where it is, from the left [m].
    #[getter]
    fn get_greatest_x_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 10, overslab::quantity::System::Si)
    }
    /// Where it is, from the front [ft].
    #[getter]
    fn get_greatest_y_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 11, overslab::quantity::System::Us)
    }
    /// Where it is, from the front [m].
    #[getter]
    fn get_greatest_y_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 11, overslab::quantity::System::Si)
    }
    /// Area thinner than the depth asked about [ft2].
    #[getter]
    fn get_thinner_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 12, overslab::quantity::System::Us)
    }
    /// Area thinner than the depth asked about [m2].
    #[getter]
    fn get_thinner_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 12, overslab::quantity::System::Si)
    }
    /// The facet where it is thinnest.
    #[getter]
    fn get_least_facet<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 13, overslab::quantity::System::Us)
    }
    /// The facet where it is thickest.
    #[getter]
    fn get_greatest_facet<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 14, overslab::quantity::System::Us)
    }
}

static SECOND_LOOK: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "second_look"),
    class: "SecondLook",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SecondLook))?.into_any()),
};

/// The shots with the least thickness over them: they fix the grade and are looked at again, suspects or not.
///
/// Rule: thickness = finish - shot; drop without a shot = least thickness over the others - least
///     thickness; saved = drop area.
/// Takes for granted: the least thickness decides the height of the finish; shots within 1/8 in of it
///     decide together.
///
/// Args:
///     survey: the old slab; a Survey
///     finish: the new top surface; a Finish
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     SecondLook, with the attributes
///         governing: the shots that fix the grade, a table of governing
///         drop_without_all_in, drop_without_all_mm: how far the finish could drop without all of them
///             [in | mm]
///     and notes, basis and taken.
///
/// Raises:
///     FormError: the key is not known (KEY_UNKNOWN); the value is of another kind than the port takes
///         (KIND_MISMATCH)
///
/// Basis:
///     plane and solid geometry: derived
///     each shot predicted from the others, its difference held against a robust scale: Statistics
///         textbooks, leave-one-out prediction (any), kriging, from memory: confirm
///
/// Example:
///     >>> from overslab.grade import second_look
///     >>> answer = second_look(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     finish={"level": "99.7 ft"},
///     ... )
///     >>> round(answer.drop_without_all_in, 4)
///     0.36
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, finish, *, units=crate::units::Units(None)), text_signature = "(survey, finish, *, units=None)")]
fn second_look(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    finish: &Bound<'_, PyAny>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &SECOND_LOOK, &[Some(survey), Some(finish)], units)
}

/// What `second_look` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.grade")]
pub(crate) struct SecondLook;

#[pymethods]
impl SecondLook {
    /// The shots that fix the grade, a table of governing.
    #[getter]
    fn get_governing<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// How far the finish could drop without all of them [in].
    #[getter]
    fn get_drop_without_all_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// How far the finish could drop without all of them [mm].
    #[getter]
    fn get_drop_without_all_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
}

static FINISH_STANDING_WATER: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "finish_standing_water"),
    class: "FinishStandingWater",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(FinishStandingWater))?.into_any()),
};

/// The ponds of a finish, and which ponds of the old slab it cures.
///
/// Rule: level at a place = least over all ways to an outlet of the highest place on the way; depth =
///     level - surface.
/// Takes for granted: edges and drains are the same for the old slab and the finish; a drain takes
///     water at the height of the surface.
///
/// Args:
///     survey: the old slab; a Survey
///     finish: the new top surface; a Finish
///     edges: edges that are walled, open or drained; a table of at least 0 rows, each an edge and what
///         it does to water, with the columns; may be left out
///         edge: name of the edge, or of a hole; a text
///         state: open: water runs off over it; walled: it is held; drained: a drain along it takes it;
///             one of "open", "walled", "drained"
///     drains: drains in the floor; a table of at least 0 rows, each a place of a drain; rows of one
///         name are a drain along the line through them, with the columns; may be left out
///         x: distance from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
///             least -100000 m, at most 100000 m)
///         y: distance from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft
///             (at least -100000 m, at most 100000 m)
///         name: name of the drain; a text; may be left out
///     shallowest: ponds shallower than this are left out [in | mm]; at least 0 in, at most 12 in (at
///         least 0 mm, at most 304.8 mm); where it is not given 1/16 in is taken: a rod hardly tells
///         less
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     FinishStandingWater, with the attributes
///         count: how many ponds the finish has
///         area_ft2, area_m2: area of the finish under water [ft2 | m2]
///         volume_ft3, volume_m3: water on the finish [ft3 | m3]
///         depth_in, depth_mm: greatest depth on the finish; none without a pond [in | mm]
///         left_out: how many ponds of the finish were shallower
///         cured: how many ponds of the old slab are cured
///         left: how many ponds of the old slab are not
///         ponds: the ponds of the finish, a table of ponds
///         old_ponds: the ponds of the old slab, a table of old_ponds
///     and notes, basis and taken.
///
/// Raises:
///     GradeError: no edge of the outline has this name (EDGE_UNKNOWN)
///     SurveyError: a drain lies outside the outline (DRAIN_OUTSIDE); water has no way out: no edge is
///         open and there is no drain (NO_OUTLET)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///     FormError: the value is of another kind than the port takes (KIND_MISMATCH)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import finish_standing_water
///     >>> answer = finish_standing_water(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     finish={
///     ...         "points": [
///     ...             {"x": "0 ft", "y": "0 ft", "elevation": "99.6 ft"},
///     ...             {"x": "20 ft", "y": "0 ft", "elevation": "99.6 ft"},
///     ...             {"x": "0 ft", "y": "32 ft", "elevation": "99.5 ft"},
///     ...         ],
///     ...     },
///     ...     edges=[
///     ...         {"edge": "right", "state": "walled"},
///     ...         {"edge": "back", "state": "walled"},
///     ...         {"edge": "left", "state": "walled"},
///     ...     ],
///     ... )
///     >>> answer.count
///     1
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, finish, *, edges=None, drains=None, shallowest=None, units=crate::units::Units(None)), text_signature = "(survey, finish, *, edges=None, drains=None, shallowest=None, units=None)")]
fn finish_standing_water(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    finish: &Bound<'_, PyAny>,
    edges: Option<&Bound<'_, PyAny>>,
    drains: Option<&Bound<'_, PyAny>>,
    shallowest: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FINISH_STANDING_WATER, &[Some(survey), Some(finish), edges, drains, shallowest], units)
}

/// What `finish_standing_water` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.grade")]
pub(crate) struct FinishStandingWater;

#[pymethods]
impl FinishStandingWater {
    /// How many ponds the finish has.
    #[getter]
    fn get_count<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Area of the finish under water [ft2].
    #[getter]
    fn get_area_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Area of the finish under water [m2].
    #[getter]
    fn get_area_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Water on the finish [ft3].
    #[getter]
    fn get_volume_ft3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Water on the finish [m3].
    #[getter]
    fn get_volume_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Greatest depth on the finish; none without a pond [in].
    #[getter]
    fn get_depth_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Greatest depth on the finish; none without a pond [mm].
    #[getter]
    fn get_depth_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// How many ponds of the finish were shallower.
    #[getter]
    fn get_left_out<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// How many ponds of the old slab are cured.
    #[getter]
    fn get_cured<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// How many ponds of the old slab are not.
    #[getter]
    fn get_left<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// The ponds of the finish, a table of ponds.
    #[getter]
    fn get_ponds<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Us)
    }
    /// The ponds of the old slab, a table of old_ponds.
    #[getter]
    fn get_old_ponds<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Us)
    }
}

static GRIND_HIGH_SPOTS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "grind_high_spots"),
    class: "GrindHighSpots",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(GrindHighSpots))?.into_any()),
};

/// The old slab after all that stands above a plane was ground off, with area, volume and deepest cut.
///
/// Rule: new slab = least of (old slab, finish - below); volume = integral of (old slab - new slab).
/// Takes for granted: grinding makes silica dust: wet or with extraction, and a mask; where a zone ends
///     a step is left.
///
/// Args:
///     survey: the old slab; a Survey
///     finish: the surface it is ground to, or a finish above it; a Finish
///     below: it is ground to so much under that surface [in | mm]; at least 0 in, at most 120 in (at
///         least 0 mm, at most 3048 mm); where it is not given 0 in is taken: it is ground to the
///         surface itself
///     zone: only within this outline; an Outline; may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     GrindHighSpots, with the attributes
///         survey: the old slab after it
///         area_ft2, area_m2: area ground or filled [ft2 | m2]
///         volume_ft3, volume_m3: volume taken off or filled [ft3 | m3]
///         deepest_in, deepest_mm: deepest cut or fill; none where nothing is changed [in | mm]
///         deepest_x_ft, deepest_x_m: where it is, from the left [ft | m]
///         deepest_y_ft, deepest_y_m: where it is, from the front [ft | m]
///     and notes, basis and taken.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); a number stands without its unit
///         (UNIT_MISSING)
///     SurveyError: a zone leaves the surveyed outline (REGION_OUTSIDE)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import grind_high_spots
///     >>> answer = grind_high_spots(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     finish={"level": "99.55 ft"},
///     ...     below="3 in",
///     ... )
///     >>> round(answer.area_ft2, 4)
///     161.2519
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, finish, *, below=None, zone=None, units=crate::units::Units(None)), text_signature = "(survey, finish, *, below=None, zone=None, units=None)")]
fn grind_high_spots(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    finish: &Bound<'_, PyAny>,
    below: Option<&Bound<'_, PyAny>>,
    zone: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &GRIND_HIGH_SPOTS, &[Some(survey), Some(finish), below, zone], units)
}

/// What `grind_high_spots` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.grade")]
pub(crate) struct GrindHighSpots;

#[pymethods]
impl GrindHighSpots {
    /// The old slab after it.
    #[getter]
    fn get_survey<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Area ground or filled [ft2].
    #[getter]
    fn get_area_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Area ground or filled [m2].
    #[getter]
    fn get_area_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Volume taken off or filled [ft3].
    #[getter]
    fn get_volume_ft3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Volume taken off or filled [m3].
    #[getter]
    fn get_volume_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Deepest cut or fill; none where nothing is changed [in].
    #[getter]
    fn get_deepest_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Deepest cut or fill; none where nothing is changed [mm].
    #[getter]
    fn get_deepest_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// Where it is, from the left [ft].
    #[getter]
    fn get_deepest_x_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Where it is, from the left [m].
    #[getter]
    fn get_deepest_x_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Si)
    }
    /// Where it is, from the front [ft].
    #[getter]
    fn get_deepest_y_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// Where it is, from the front [m].
    #[getter]
    fn get_deepest_y_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Si)
    }
}

static FILL_LOW_SPOTS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "fill_low_spots"),
    class: "FillLowSpots",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(FillLowSpots))?.into_any()),
};

/// The old slab after all that lies below a plane was filled, with area, volume and greatest depth of fill.
///
/// Rule: new slab = greatest of (old slab, finish - below); volume = integral of (new slab - old slab).
/// Takes for granted: the fill is struck off to the plane; where a zone ends a step is left.
///
/// Args:
///     survey: the old slab; a Survey
///     finish: the surface it is filled to, or a finish above it; a Finish
///     below: it is filled to so much under that surface [in | mm]; at least 0 in, at most 120 in (at
///         least 0 mm, at most 3048 mm); where it is not given 0 in is taken: it is filled to the
///         surface itself
///     zone: only within this outline; an Outline; may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     FillLowSpots, with the attributes
///         survey: the old slab after it
///         area_ft2, area_m2: area ground or filled [ft2 | m2]
///         volume_ft3, volume_m3: volume taken off or filled [ft3 | m3]
///         deepest_in, deepest_mm: deepest cut or fill; none where nothing is changed [in | mm]
///         deepest_x_ft, deepest_x_m: where it is, from the left [ft | m]
///         deepest_y_ft, deepest_y_m: where it is, from the front [ft | m]
///     and notes, basis and taken.
///
/// Raises:
///     QuantityError: the unit belongs to another quantity (UNIT_WRONG)
///     FormError: the value is of another kind than the port takes (KIND_MISMATCH)
///     SurveyError: a zone leaves the surveyed outline (REGION_OUTSIDE)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import fill_low_spots
///     >>> answer = fill_low_spots(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     finish={"level": "99.55 ft"},
///     ...     below="4 in",
///     ... )
///     >>> round(answer.area_ft2, 4)
///     95.5966
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, finish, *, below=None, zone=None, units=crate::units::Units(None)), text_signature = "(survey, finish, *, below=None, zone=None, units=None)")]
fn fill_low_spots(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    finish: &Bound<'_, PyAny>,
    below: Option<&Bound<'_, PyAny>>,
    zone: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FILL_LOW_SPOTS, &[Some(survey), Some(finish), below, zone], units)
}

/// What `fill_low_spots` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.grade")]
pub(crate) struct FillLowSpots;

#[pymethods]
impl FillLowSpots {
    /// The old slab after it.
    #[getter]
    fn get_survey<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Area ground or filled [ft2].
    #[getter]
    fn get_area_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Area ground or filled [m2].
    #[getter]
    fn get_area_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Volume taken off or filled [ft3].
    #[getter]
    fn get_volume_ft3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Volume taken off or filled [m3].
    #[getter]
    fn get_volume_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Deepest cut or fill; none where nothing is changed [in].
    #[getter]
    fn get_deepest_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Deepest cut or fill; none where nothing is changed [mm].
    #[getter]
    fn get_deepest_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// Where it is, from the left [ft].
    #[getter]
    fn get_deepest_x_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Where it is, from the left [m].
    #[getter]
    fn get_deepest_x_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Si)
    }
    /// Where it is, from the front [ft].
    #[getter]
    fn get_deepest_y_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// Where it is, from the front [m].
    #[getter]
    fn get_deepest_y_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Si)
    }
}

static FILL_PONDS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "fill_ponds"),
    class: "FillPonds",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(FillPonds))?.into_any()),
};

/// The old slab after its ponds were filled to their spill levels, with area, volume and greatest depth of fill.
///
/// Rule: new slab = level of the water where water stands.
/// Takes for granted: outer edges are open and holes are walled where nothing is stated; the fill is
///     struck off level.
///
/// Args:
///     survey: the old slab; a Survey
///     edges: edges that are walled, open or drained; a table of at least 0 rows, each an edge and what
///         it does to water, with the columns; may be left out
///         edge: name of the edge, or of a hole; a text
///         state: open: water runs off over it; walled: it is held; drained: a drain along it takes it;
///             one of "open", "walled", "drained"
///     drains: drains in the floor; a table of at least 0 rows, each a place of a drain; rows of one
///         name are a drain along the line through them, with the columns; may be left out
///         x: distance from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
///             least -100000 m, at most 100000 m)
///         y: distance from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft
///             (at least -100000 m, at most 100000 m)
///         name: name of the drain; a text; may be left out
///     shallowest: ponds shallower than this are left [in | mm]; at least 0 in, at most 12 in (at least
///         0 mm, at most 304.8 mm); where it is not given 1/16 in is taken: a rod hardly tells less
///     zone: only within this outline; an Outline; may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     FillPonds, with the attributes
///         survey: the old slab after it
///         area_ft2, area_m2: area ground or filled [ft2 | m2]
///         volume_ft3, volume_m3: volume taken off or filled [ft3 | m3]
///         deepest_in, deepest_mm: deepest cut or fill; none where nothing is changed [in | mm]
///         deepest_x_ft, deepest_x_m: where it is, from the left [ft | m]
///         deepest_y_ft, deepest_y_m: where it is, from the front [ft | m]
///     and notes, basis and taken.
///
/// Raises:
///     GradeError: no edge of the outline has this name (EDGE_UNKNOWN)
///     SurveyError: a drain lies outside the outline (DRAIN_OUTSIDE); a zone leaves the surveyed
///         outline (REGION_OUTSIDE)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import fill_ponds
///     >>> answer = fill_ponds(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     edges=[
///     ...         {"edge": "front", "state": "walled"},
///     ...         {"edge": "right", "state": "walled"},
///     ...         {"edge": "left", "state": "walled"},
///     ...     ],
///     ... )
///     >>> round(answer.area_ft2, 4)
///     593.4278
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, *, edges=None, drains=None, shallowest=None, zone=None, units=crate::units::Units(None)), text_signature = "(survey, *, edges=None, drains=None, shallowest=None, zone=None, units=None)")]
fn fill_ponds(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    edges: Option<&Bound<'_, PyAny>>,
    drains: Option<&Bound<'_, PyAny>>,
    shallowest: Option<&Bound<'_, PyAny>>,
    zone: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FILL_PONDS, &[Some(survey), edges, drains, shallowest, zone], units)
}

/// What `fill_ponds` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.grade")]
pub(crate) struct FillPonds;

#[pymethods]
impl FillPonds {
    /// The old slab after it.
    #[getter]
    fn get_survey<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Area ground or filled [ft2].
    #[getter]
    fn get_area_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Area ground or filled [m2].
    #[getter]
    fn get_area_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Volume taken off or filled [ft3].
    #[getter]
    fn get_volume_ft3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Volume taken off or filled [m3].
    #[getter]
    fn get_volume_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Deepest cut or fill; none where nothing is changed [in].
    #[getter]
    fn get_deepest_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Deepest cut or fill; none where nothing is changed [mm].
    #[getter]
    fn get_deepest_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// Where it is, from the left [ft].
    #[getter]
    fn get_deepest_x_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Where it is, from the left [m].
    #[getter]
    fn get_deepest_x_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Si)
    }
    /// Where it is, from the front [ft].
    #[getter]
    fn get_deepest_y_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// Where it is, from the front [m].
    #[getter]
    fn get_deepest_y_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Si)
    }
}

static THICKNESS_AREAS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "thickness_areas"),
    class: "ThicknessAreas",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ThicknessAreas))?.into_any()),
};

/// Where the overlay is thinner, or thicker, than a depth: its connected parts as polygons, exactly.
///
/// Rule: thinner = {finish - old slab < depth}, thicker = the rest; volume = integral of |finish - old
///     slab - depth|.
/// Takes for granted: old slab plane over each triangle, finish plane over each facet; what is exactly
///     at the depth counts as thicker.
///
/// Args:
///     survey: the old slab; a Survey
///     finish: the new top surface; a Finish
///     depth: the depth [in | mm]; at least -3937.00787402 in, at most 3937.00787402 in (at least
///         -100000 mm, at most 100000 mm)
///     side: which side of the depth; one of "thinner", "thicker"; where it is not given thinner is
///         taken: thin places are what is looked for
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     ThicknessAreas, with the attributes
///         area_ft2, area_m2: area of all parts [ft2 | m2]
///         volume_yd3, volume_m3: missing to the depth, or over it, in all parts [yd3 | m3]
///         parts: the connected parts, a table of parts
///         corners: the corners of their polygons, a table of corners
///     and notes, basis and taken.
///
/// Raises:
///     QuantityError: a number stands without its unit (UNIT_MISSING); the value lies outside its range
///         (OUT_OF_RANGE)
///     FormError: the word is not one of the choices (WORD_UNKNOWN)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import thickness_areas
///     >>> answer = thickness_areas(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     finish={"level": "99.7 ft"},
///     ...     depth="5 in",
///     ... )
///     >>> round(answer.area_ft2, 4)
///     217.9524
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, finish, depth, *, side=None, units=crate::units::Units(None)), text_signature = "(survey, finish, depth, *, side=None, units=None)")]
fn thickness_areas(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    finish: &Bound<'_, PyAny>,
    depth: &Bound<'_, PyAny>,
    side: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &THICKNESS_AREAS, &[Some(survey), Some(finish), Some(depth), side], units)
}

/// What `thickness_areas` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.grade")]
pub(crate) struct ThicknessAreas;

#[pymethods]
impl ThicknessAreas {
    /// Area of all parts [ft2].
    #[getter]
    fn get_area_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Area of all parts [m2].
    #[getter]
    fn get_area_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Missing to the depth, or over it, in all parts [yd3].
    #[getter]
    fn get_volume_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Missing to the depth, or over it, in all parts [m3].
    #[getter]
    fn get_volume_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// The connected parts, a table of parts.
    #[getter]
    fn get_parts<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// The corners of their polygons, a table of corners.
    #[getter]
    fn get_corners<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
}

static THICKNESS_CONTOURS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "thickness_contours"),
    class: "ThicknessContours",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ThicknessContours))?.into_any()),
};

/// Lines of equal thickness.
///
/// Rule: finish - old slab = level, straight over each triangle.
/// Takes for granted: old slab plane over each triangle, finish plane over each facet; where the
///     thickness only touches a level there is no line.
///
/// Args:
///     survey: the old slab; a Survey
///     finish: the new top surface; a Finish
///     levels: the levels, rising; a table of at least 1 row, each a level of thickness, each more than
///         the one before, with the columns; may be left out
///         level: thickness [in | mm]; at least -3937.00787402 in, at most 3937.00787402 in (at least
///             -100000 mm, at most 100000 mm)
///     interval: the step between levels, in place of a list [in | mm]; more than 0 in, at most
///         3937.00787402 in (more than 0 mm, at most 100000 mm); may be left out
///     counted_from: a level that the steps are counted from [in | mm]; at least -3937.00787402 in, at
///         most 3937.00787402 in (at least -100000 mm, at most 100000 mm); where it is not given 0 in
///         is taken: whole steps of the interval
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     ThicknessContours, with the attributes
///         lines: the lines, a table of lines
///         points: their places, a table of points
///     and notes, basis and taken.
///
/// Raises:
///     FormError: a required value is missing (KEY_MISSING); two values say the same thing differently
///         (CONTRADICTION); levels do not rise from one to the next (LEVELS_UNSORTED); an interval or a
///         list gives too many levels (TOO_MANY_LEVELS)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import thickness_contours
///     >>> answer = thickness_contours(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     finish={"level": "99.7 ft"},
///     ...     interval="1/4 in",
///     ... )
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, finish, *, levels=None, interval=None, counted_from=None, units=crate::units::Units(None)), text_signature = "(survey, finish, *, levels=None, interval=None, counted_from=None, units=None)")]
fn thickness_contours(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    finish: &Bound<'_, PyAny>,
    levels: Option<&Bound<'_, PyAny>>,
    interval: Option<&Bound<'_, PyAny>>,
    counted_from: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &THICKNESS_CONTOURS, &[Some(survey), Some(finish), levels, interval, counted_from], units)
}

/// What `thickness_contours` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.grade")]
pub(crate) struct ThicknessContours;

#[pymethods]
impl ThicknessContours {
    /// The lines, a table of lines.
    #[getter]
    fn get_lines<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Their places, a table of points.
    #[getter]
    fn get_points<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
}

static SURVEY_CONTOURS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "survey_contours"),
    class: "SurveyContours",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SurveyContours))?.into_any()),
};

/// Lines of equal height on the old slab.
///
/// Rule: old slab = level, straight over each triangle.
/// Takes for granted: old slab plane over each triangle; where it only touches a level there is no
///     line.
///
/// Args:
///     survey: the old slab; a Survey
///     levels: the levels, rising; a table of at least 1 row, each a level of height, each more than
///         the one before, with the columns; may be left out
///         level: height above the job datum [ft | m]; at least -32808.3989501 ft, at most
///             32808.3989501 ft (at least -10000 m, at most 10000 m)
///     interval: the step between levels, in place of a list [in | mm]; more than 0 in, at most
///         3937.00787402 in (more than 0 mm, at most 100000 mm); may be left out
///     counted_from: a level that the steps are counted from [ft | m]; at least -32808.3989501 ft, at
///         most 32808.3989501 ft (at least -10000 m, at most 10000 m); where it is not given 0 ft is
///         taken: whole steps from the job datum
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     SurveyContours, with the attributes
///         lines: the lines, a table of lines
///         points: their places, a table of points
///     and notes, basis and taken.
///
/// Raises:
///     FormError: a required value is missing (KEY_MISSING); levels do not rise from one to the next
///         (LEVELS_UNSORTED)
///     QuantityError: a number stands without its unit (UNIT_MISSING); the value lies outside its range
///         (OUT_OF_RANGE)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import survey_contours
///     >>> answer = survey_contours(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     interval="1/4 in",
///     ... )
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, *, levels=None, interval=None, counted_from=None, units=crate::units::Units(None)), text_signature = "(survey, *, levels=None, interval=None, counted_from=None, units=None)")]
fn survey_contours(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    levels: Option<&Bound<'_, PyAny>>,
    interval: Option<&Bound<'_, PyAny>>,
    counted_from: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &SURVEY_CONTOURS, &[Some(survey), levels, interval, counted_from], units)
}

/// What `survey_contours` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.grade")]
pub(crate) struct SurveyContours;

#[pymethods]
impl SurveyContours {
    /// The lines, a table of lines.
    #[getter]
    fn get_lines<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Their places, a table of points.
    #[getter]
    fn get_points<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
}

static FINISH_CONTOURS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "finish_contours"),
    class: "FinishContours",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(FinishContours))?.into_any()),
};

/// Lines of equal height on the finish, over the work.
///
/// Rule: finish = level, straight over each facet.
/// Takes for granted: finish plane over each facet; where it only touches a level there is no line.
///
/// Args:
///     survey: the old slab, whose outline bounds the lines; a Survey
///     finish: the new top surface; a Finish
///     levels: the levels, rising; a table of at least 1 row, each a level of height, each more than
///         the one before, with the columns; may be left out
///         level: height above the job datum [ft | m]; at least -32808.3989501 ft, at most
///             32808.3989501 ft (at least -10000 m, at most 10000 m)
///     interval: the step between levels, in place of a list [in | mm]; more than 0 in, at most
///         3937.00787402 in (more than 0 mm, at most 100000 mm); may be left out
///     counted_from: a level that the steps are counted from [ft | m]; at least -32808.3989501 ft, at
///         most 32808.3989501 ft (at least -10000 m, at most 10000 m); where it is not given 0 ft is
///         taken: whole steps from the job datum
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     FinishContours, with the attributes
///         lines: the lines, a table of lines
///         points: their places, a table of points
///     and notes, basis and taken.
///
/// Raises:
///     FormError: a required value is missing (KEY_MISSING); levels do not rise from one to the next
///         (LEVELS_UNSORTED)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import finish_contours
///     >>> answer = finish_contours(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     finish={
///     ...         "points": [
///     ...             {"x": "0 ft", "y": "0 ft", "elevation": "99.6 ft"},
///     ...             {"x": "20 ft", "y": "0 ft", "elevation": "99.6 ft"},
///     ...             {"x": "0 ft", "y": "32 ft", "elevation": "99.9 ft"},
///     ...         ],
///     ...     },
///     ...     interval="1 in",
///     ... )
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, finish, *, levels=None, interval=None, counted_from=None, units=crate::units::Units(None)), text_signature = "(survey, finish, *, levels=None, interval=None, counted_from=None, units=None)")]
fn finish_contours(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    finish: &Bound<'_, PyAny>,
    levels: Option<&Bound<'_, PyAny>>,
    interval: Option<&Bound<'_, PyAny>>,
    counted_from: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FINISH_CONTOURS, &[Some(survey), Some(finish), levels, interval, counted_from], units)
}

/// What `finish_contours` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.grade")]
pub(crate) struct FinishContours;

#[pymethods]
impl FinishContours {
    /// The lines, a table of lines.
    #[getter]
    fn get_lines<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Their places, a table of points.
    #[getter]
    fn get_points<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
}

static THICKNESS_BANDS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "thickness_bands"),
    class: "ThicknessBands",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ThicknessBands))?.into_any()),
};

/// The work in bands of thickness between successive levels, as polygons with area and volume.
///
/// Rule: band = {lower <= finish - old slab < upper}; areas and volumes of all bands are those of the
///     whole.
/// Takes for granted: old slab plane over each triangle, finish plane over each facet.
///
/// Args:
///     survey: the old slab; a Survey
///     finish: the new top surface; a Finish
///     levels: the levels, rising; a table of at least 1 row, each a level of thickness, each more than
///         the one before, with the columns; may be left out
///         level: thickness [in | mm]; at least -3937.00787402 in, at most 3937.00787402 in (at least
///             -100000 mm, at most 100000 mm)
///     interval: the step between levels, in place of a list [in | mm]; more than 0 in, at most
///         3937.00787402 in (more than 0 mm, at most 100000 mm); may be left out
///     counted_from: a level that the steps are counted from [in | mm]; at least -3937.00787402 in, at
///         most 3937.00787402 in (at least -100000 mm, at most 100000 mm); where it is not given 0 in
///         is taken: whole steps of the interval
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     ThicknessBands, with the attributes
///         bands: the bands, a table of bands
///         parts: their connected parts, a table of parts
///         corners: the corners of their polygons, a table of corners
///     and notes, basis and taken.
///
/// Raises:
///     FormError: a required value is missing (KEY_MISSING); two values say the same thing differently
///         (CONTRADICTION); levels do not rise from one to the next (LEVELS_UNSORTED); the list is
///         empty (EMPTY_LIST); an interval or a list gives too many levels (TOO_MANY_LEVELS)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import thickness_bands
///     >>> answer = thickness_bands(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     finish={"level": "99.7 ft"},
///     ...     interval="1/2 in",
///     ... )
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, finish, *, levels=None, interval=None, counted_from=None, units=crate::units::Units(None)), text_signature = "(survey, finish, *, levels=None, interval=None, counted_from=None, units=None)")]
fn thickness_bands(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    finish: &Bound<'_, PyAny>,
    levels: Option<&Bound<'_, PyAny>>,
    interval: Option<&Bound<'_, PyAny>>,
    counted_from: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &THICKNESS_BANDS, &[Some(survey), Some(finish), levels, interval, counted_from], units)
}

/// What `thickness_bands` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.grade")]
pub(crate) struct ThicknessBands;

#[pymethods]
impl ThicknessBands {
    /// The bands, a table of bands.
    #[getter]
    fn get_bands<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Their connected parts, a table of parts.
    #[getter]
    fn get_parts<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// The corners of their polygons, a table of corners.
    #[getter]
    fn get_corners<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
}

static THICKNESS_HISTOGRAM: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "thickness_histogram"),
    class: "ThicknessHistogram",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ThicknessHistogram))?.into_any()),
};

/// How much of the work is how thick: area and volume by bins of thickness, and the depths below which shares of the area lie.
///
/// Rule: area of a bin = area thinner than its upper edge - area thinner than its lower edge, each
///     exact.
/// Takes for granted: old slab plane over each triangle, finish plane over each facet.
///
/// Args:
///     survey: the old slab; a Survey
///     finish: the new top surface; a Finish
///     levels: the edges of the bins, rising; a table of at least 1 row, each a level of thickness,
///         each more than the one before, with the columns; may be left out
///         level: thickness [in | mm]; at least -3937.00787402 in, at most 3937.00787402 in (at least
///             -100000 mm, at most 100000 mm)
///     interval: the width of a bin, in place of a list of edges [in | mm]; more than 0 in, at most
///         3937.00787402 in (more than 0 mm, at most 100000 mm); may be left out
///     counted_from: an edge that the widths are counted from [in | mm]; at least -3937.00787402 in, at
///         most 3937.00787402 in (at least -100000 mm, at most 100000 mm); where it is not given 0 in
///         is taken: whole steps of the width
///     shares: shares of the area whose depths are told; a table of at least 1 row, each a share of the
///         area, with the columns; where it is not given [{"share": "0 %"}, {"share": "25 %"},
///         {"share": "50 %"}, {"share": "75 %"}, {"share": "100 %"}] is taken: least, quarters and
///         greatest
///         share: share of the area [%]; at least 0 %, at most 100 %
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     ThicknessHistogram, with the attributes
///         area_ft2, area_m2: the whole area [ft2 | m2]
///         volume_yd3, volume_m3: the whole volume, high spots taken off [yd3 | m3]
///         bins: the bins, a table of bins
///         quantiles: the depths of the shares, a table of quantiles
///     and notes, basis and taken.
///
/// Raises:
///     FormError: a required value is missing (KEY_MISSING); two values say the same thing differently
///         (CONTRADICTION); levels do not rise from one to the next (LEVELS_UNSORTED); an interval or a
///         list gives too many levels (TOO_MANY_LEVELS)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the quantity cannot be below
///         zero (NEGATIVE)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import thickness_histogram
///     >>> answer = thickness_histogram(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     finish={"level": "99.7 ft"},
///     ...     interval="1/4 in",
///     ... )
///     >>> round(answer.area_ft2, 4)
///     640.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, finish, *, levels=None, interval=None, counted_from=None, shares=None, units=crate::units::Units(None)), text_signature = "(survey, finish, *, levels=None, interval=None, counted_from=None, shares=None, units=None)")]
fn thickness_histogram(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    finish: &Bound<'_, PyAny>,
    levels: Option<&Bound<'_, PyAny>>,
    interval: Option<&Bound<'_, PyAny>>,
    counted_from: Option<&Bound<'_, PyAny>>,
    shares: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &THICKNESS_HISTOGRAM, &[Some(survey), Some(finish), levels, interval, counted_from, shares], units)
}

/// What `thickness_histogram` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.grade")]
pub(crate) struct ThicknessHistogram;

#[pymethods]
impl ThicknessHistogram {
    /// The whole area [ft2].
    #[getter]
    fn get_area_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// The whole area [m2].
    #[getter]
    fn get_area_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// The whole volume, high spots taken off [yd3].
    #[getter]
    fn get_volume_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// The whole volume, high spots taken off [m3].
    #[getter]
    fn get_volume_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// The bins, a table of bins.
    #[getter]
    fn get_bins<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// The depths of the shares, a table of quantiles.
    #[getter]
    fn get_quantiles<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
}

static THICKNESS_ZONES: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "thickness_zones"),
    class: "ThicknessZones",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ThicknessZones))?.into_any()),
};

/// The thickness over zones of the work, each with its own figures, and over what no zone covers.
///
/// Rule: as for the thickness, over the part of the work in each zone; zones may overlap, each counts
///     all of its own.
/// Takes for granted: old slab plane over each triangle, finish plane over each facet.
///
/// Args:
///     survey: the old slab; a Survey
///     finish: the new top surface; a Finish
///     zones: the corners of the zones; a table of at least 1 row, each a corner of a zone, in order;
///         the corners of one zone stand together, with the columns
///         zone: name of the zone; a text
///         x: from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at least
///             -100000 m, at most 100000 m)
///         y: from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at least
///             -100000 m, at most 100000 m)
///     thinner_than: the area thinner than this is told [in | mm]; at least -3937.00787402 in, at most
///         3937.00787402 in (at least -100000 mm, at most 100000 mm); may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     ThicknessZones, with the attributes
///         figures: the figures of each zone, a table of figures
///         rest: the figures of the work outside all zones, a table of rest
///     and notes, basis and taken.
///
/// Raises:
///     FormError: the list is empty (EMPTY_LIST); a name is given twice (KEY_REPEATED)
///     SurveyError: the outline has too few corners or no area (OUTLINE_TOO_FEW); a zone leaves the
///         surveyed outline (REGION_OUTSIDE)
///     QuantityError: a number stands without its unit (UNIT_MISSING)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import thickness_zones
///     >>> answer = thickness_zones(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     finish={"level": "99.7 ft"},
///     ...     thinner_than="5 in",
///     ...     zones={
///     ...         "zone": ["bench", "bench", "bench", "bench", "lift", "lift", "lift", "lift"],
///     ...         "x": ["0 ft", "20 ft", "20 ft", "0 ft", "5 ft", "15 ft", "15 ft", "5 ft"],
///     ...         "y": ["26 ft", "26 ft", "32 ft", "32 ft", "10 ft", "10 ft", "22 ft", "22 ft"],
///     ...     },
///     ... )
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, finish, zones, *, thinner_than=None, units=crate::units::Units(None)), text_signature = "(survey, finish, zones, *, thinner_than=None, units=None)")]
fn thickness_zones(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    finish: &Bound<'_, PyAny>,
    zones: &Bound<'_, PyAny>,
    thinner_than: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &THICKNESS_ZONES, &[Some(survey), Some(finish), Some(zones), thinner_than], units)
}

/// What `thickness_zones` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.grade")]
pub(crate) struct ThicknessZones;

#[pymethods]
impl ThicknessZones {
    /// The figures of each zone, a table of figures.
    #[getter]
    fn get_figures<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// The figures of the work outside all zones, a table of rest.
    #[getter]
    fn get_rest<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
}

static THIN_ZONES: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "thin_zones"),
    class: "ThinZones",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ThinZones))?.into_any()),
};

/// The zones thinner than the unbonded minimum, and for each what raising, bonding, grinding or breaking out takes and costs.
///
/// Rule: deficit = minimum less thinnest; raise = fill(finish raised by it) less fill(finish); grind =
///     integral of minimum less overlay over the zone; break out = integral of new thickness less
///     overlay, from 0 up, over the box; overlay = thickness, from 0 up; cost = area x price + concrete
///     x price.
/// Takes for granted: bonding and breaking out take the zone's box within the work, for a change of
///     bond comes only along a straight full-depth joint; zones are told beyond the shots too.
///
/// Args:
///     survey: the old slab; a Survey
///     finish: the new top surface; a Finish
///     minimum: least thickness of an unbonded overlay [in | mm]; more than 0 in, at most 120 in (more
///         than 0 mm, at most 3048 mm)
///     bonded_minimum: least thickness of a bonded part, at most the unbonded one [in | mm]; more than
///         0 in, at most 120 in (more than 0 mm, at most 3048 mm); may be left out
///     grind_at_most: how deep the old slab may be ground [in | mm]; at least 0 in, at most 120 in (at
///         least 0 mm, at most 3048 mm); may be left out
///     new_thickness: thickness of the concrete where the old slab is broken out, down from the finish
///         [in | mm]; more than 0 in, at most 120 in (more than 0 mm, at most 3048 mm); may be left out
///     concrete_price: price of concrete [/yd3 | /m3]; at least 0 /yd3, at most 7645548.57984 /yd3 (at
///         least 0 /m3, at most 10000000 /m3); may be left out
///     bonding_price: price of bonding: milling, cleaning and slurry together [/ft2 | /m2]; at least 0
///         /ft2, at most 929030.4 /ft2 (at least 0 /m2, at most 10000000 /m2); may be left out
///     grinding_price: price of grinding [/ft2 | /m2]; at least 0 /ft2, at most 929030.4 /ft2 (at least
///         0 /m2, at most 10000000 /m2); may be left out
///     breaking_out_price: price of breaking out, hauling with it [/ft2 | /m2]; at least 0 /ft2, at
///         most 929030.4 /ft2 (at least 0 /m2, at most 10000000 /m2); may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     ThinZones, with the attributes
///         area_ft2, area_m2: area of all that is thinner [ft2 | m2]
///         lacking_yd3, lacking_m3: volume all of it lacks to the minimum [yd3 | m3]
///         left_out_ft2, left_out_m2: area of zones under a square millimetre, not listed [ft2 | m2]
///         raise_all_in, raise_all_mm: rise of the whole finish that leaves no zone; none where there
///             is none [in | mm]
///         raise_all_concrete_yd3, raise_all_concrete_m3: concrete it takes [yd3 | m3]
///         raise_all_cost_money: what it costs [money]
///         zone_by_zone_cost_money: all zones, each in the cheapest way without raising [money]
///         said: all of it in a few sentences
///         zones: the zones, a table of zones
///         choices: the choices about each, a table of choices
///         corners: the corners of their polygons, a table of corners
///     and notes, basis and taken.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); a number stands without its unit
///         (UNIT_MISSING); the unit belongs to another quantity (UNIT_WRONG); the quantity cannot be
///         below zero (NEGATIVE)
///
/// Basis:
///     plane and solid geometry: derived
///     the least thickness of an unbonded overlay: the project's specification
///     a change between bonded and unbonded comes only along a full-depth joint: common practice, no
///         source
///
/// Example:
///     >>> from overslab.grade import thin_zones
///     >>> answer = thin_zones(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     finish={"level": "99.56 ft"},
///     ...     minimum="3 in",
///     ...     bonded_minimum="1 1/2 in",
///     ...     grind_at_most="1/2 in",
///     ...     new_thickness="6 in",
///     ...     concrete_price="162 /yd3",
///     ...     bonding_price="5.5 /ft2",
///     ...     grinding_price="4 /ft2",
///     ...     breaking_out_price="9 /ft2",
///     ... )
///     >>> round(answer.area_ft2, 4)
///     127.4717
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, finish, minimum, *, bonded_minimum=None, grind_at_most=None, new_thickness=None, concrete_price=None, bonding_price=None, grinding_price=None, breaking_out_price=None, units=crate::units::Units(None)), text_signature = "(survey, finish, minimum, *, bonded_minimum=None, grind_at_most=None, new_thickness=None, concrete_price=None, bonding_price=None, grinding_price=None, breaking_out_price=None, units=None)")]
fn thin_zones(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    finish: &Bound<'_, PyAny>,
    minimum: &Bound<'_, PyAny>,
    bonded_minimum: Option<&Bound<'_, PyAny>>,
    grind_at_most: Option<&Bound<'_, PyAny>>,
    new_thickness: Option<&Bound<'_, PyAny>>,
    concrete_price: Option<&Bound<'_, PyAny>>,
    bonding_price: Option<&Bound<'_, PyAny>>,
    grinding_price: Option<&Bound<'_, PyAny>>,
    breaking_out_price: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &THIN_ZONES, &[Some(survey), Some(finish), Some(minimum), bonded_minimum, grind_at_most, new_thickness, concrete_price, bonding_price, grinding_price, breaking_out_price], units)
}

/// What `thin_zones` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.grade")]
pub(crate) struct ThinZones;

#[pymethods]
impl ThinZones {
    /// Area of all that is thinner [ft2].
    #[getter]
    fn get_area_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Area of all that is thinner [m2].
    #[getter]
    fn get_area_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Volume all of it lacks to the minimum [yd3].
    #[getter]
    fn get_lacking_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Volume all of it lacks to the minimum [m3].
    #[getter]
    fn get_lacking_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Area of zones under a square millimetre, not listed [ft2].
    #[getter]
    fn get_left_out_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Area of zones under a square millimetre, not listed [m2].
    #[getter]
    fn get_left_out_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Rise of the whole finish that leaves no zone; none where there is none [in].
    #[getter]
    fn get_raise_all_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Rise of the whole finish that leaves no zone; none where there is none [mm].
    #[getter]
    fn get_raise_all_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// Concrete it takes [yd3].
    #[getter]
    fn get_raise_all_concrete_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Concrete it takes [m3].
    #[getter]
    fn get_raise_all_concrete_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Si)
    }
    /// What it costs [money].
    #[getter]
    fn get_raise_all_cost_money<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// All zones, each in the cheapest way without raising [money].
    #[getter]
    fn get_zone_by_zone_cost_money<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// All of it in a few sentences.
    #[getter]
    fn get_said<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Us)
    }
    /// The zones, a table of zones.
    #[getter]
    fn get_zones<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Us)
    }
    /// The choices about each, a table of choices.
    #[getter]
    fn get_choices<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 9, overslab::quantity::System::Us)
    }
    /// The corners of their polygons, a table of corners.
    #[getter]
    fn get_corners<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 10, overslab::quantity::System::Us)
    }
}

static SECTION: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "section"),
    class: "Section",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Section))?.into_any()),
};

/// Old slab and finish along a line of straight legs, with stations at every side of a triangle and facet, exactly.
///
/// Rule: net = integral along the line of (finish - old slab); fill = its positive part; high = its
///     negative part.
/// Takes for granted: old slab plane over each triangle, finish plane over each facet.
///
/// Args:
///     survey: the old slab; a Survey
///     finish: the new top surface; a Finish
///     line: the places of the line, two or more; a table of at least 1 row, each a place of the line,
///         in order, with the columns
///         x: from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at least
///             -100000 m, at most 100000 m)
///         y: from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at least
///             -100000 m, at most 100000 m)
///     spacing: also tell the heights at whole steps of this from the start [ft | m]; at least
///         0.00328083989501 ft, at most 3280.83989501 ft (at least 0.001 m, at most 1000 m); may be
///         left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Section, with the attributes
///         length_ft, length_m: length of the line [ft | m]
///         covered_ft, covered_m: length over the work [ft | m]
///         net_ft2, net_m2: area between old slab and finish, high spots taken off [ft2 | m2]
///         fill_ft2, fill_m2: area where the finish is above the old slab [ft2 | m2]
///         high_ft2, high_m2: area of old slab above the finish [ft2 | m2]
///         mean_in, mean_mm: net area over covered length [in | mm]
///         least_in, least_mm: least thickness along the line [in | mm]
///         least_distance_ft, least_distance_m: where it is, along the line [ft | m]
///         least_x_ft, least_x_m: where it is, from the left [ft | m]
///         least_y_ft, least_y_m: where it is, from the front [ft | m]
///         greatest_in, greatest_mm: greatest thickness along the line [in | mm]
///         greatest_distance_ft, greatest_distance_m: where it is, along the line [ft | m]
///         greatest_x_ft, greatest_x_m: where it is, from the left [ft | m]
///         greatest_y_ft, greatest_y_m: where it is, from the front [ft | m]
///         stations: the stations, a table of stations
///         samples: the heights at whole steps of the spacing; none without one, a table of samples
///         gaps: the stretches outside the work, a table of gaps
///     and notes, basis and taken.
///
/// Raises:
///     FormError: the list is empty (EMPTY_LIST); a line has fewer than two places apart from one
///         another (LINE_TOO_SHORT); a spacing gives too many stations (TOO_MANY_STATIONS)
///     SurveyError: a line lies wholly outside the surveyed outline (LINE_OUTSIDE)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.grade import section
///     >>> answer = section(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     finish={"level": "99.7 ft"},
///     ...     line={"x": ["2 ft", "2 ft", "22 ft"], "y": ["1 ft", "30 ft", "30 ft"]},
///     ...     spacing="4 ft",
///     ... )
///     >>> round(answer.length_ft, 4)
///     49.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, finish, line, *, spacing=None, units=crate::units::Units(None)), text_signature = "(survey, finish, line, *, spacing=None, units=None)")]
fn section(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    finish: &Bound<'_, PyAny>,
    line: &Bound<'_, PyAny>,
    spacing: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &SECTION, &[Some(survey), Some(finish), Some(line), spacing], units)
}

/// What `section` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.grade")]
pub(crate) struct Section;

#[pymethods]
impl Section {
    /// Length of the line [ft].
    #[getter]
    fn get_length_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Length of the line [m].
    #[getter]
    fn get_length_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Length over the work [ft].
    #[getter]
    fn get_covered_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Length over the work [m].
    #[getter]
    fn get_covered_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Area between old slab and finish, high spots taken off [ft2].
    #[getter]
    fn get_net_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Area between old slab and finish, high spots taken off [m2].
    #[getter]
    fn get_net_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Area where the finish is above the old slab [ft2].
    #[getter]
    fn get_fill_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Area where the finish is above the old slab [m2].
    #[getter]
    fn get_fill_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// Area of old slab above the finish [ft2].
    #[getter]
    fn get_high_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Area of old slab above the finish [m2].
    #[getter]
    fn get_high_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Si)
    }
    /// Net area over covered length [in].
    #[getter]
    fn get_mean_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// Net area over covered length [mm].
    #[getter]
    fn get_mean_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Si)
    }
    /// Least thickness along the line [in].
    #[getter]
    fn get_least_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// Least thickness along the line [mm].
    #[getter]
    fn get_least_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Si)
    }
    /// Where it is, along the line [ft].
    #[getter]
    fn get_least_distance_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Us)
    }
    /// Where it is, along the line [m].
    #[getter]
    fn get_least_distance_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Si)
    }
    /// Where it is, from the left [ft].
    #[getter]
    fn get_least_x_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Us)
    }
    /// Where it is, from the left [m].
    #[getter]
    fn get_least_x_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Si)
    }
    /// Where it is, from the front [ft].
    #[getter]
    fn get_least_y_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 9, overslab::quantity::System::Us)
    }
    /// Where it is, from the front [m].
    #[getter]
    fn get_least_y_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 9, overslab::quantity::System::Si)
    }
    /// Greatest thickness along the line [in].
    #[getter]
    fn get_greatest_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 10, overslab::quantity::System::Us)
    }
    /// Greatest thickness along the line [mm].
    #[getter]
    fn get_greatest_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 10, overslab::quantity::System::Si)
    }
    /// Where it is, along the line [ft].
    #[getter]
    fn get_greatest_distance_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 11, overslab::quantity::System::Us)
    }
    /// Where it is, along the line [m].
    #[getter]
    fn get_greatest_distance_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 11, overslab::quantity::System::Si)
    }
    /// Where it is, from the left [ft].
    #[getter]
    fn get_greatest_x_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 12, overslab::quantity::System::Us)
    }
    /// Where it is, from the left [m].
    #[getter]
    fn get_greatest_x_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 12, overslab::quantity::System::Si)
    }
    /// Where it is, from the front [ft].
    #[getter]
    fn get_greatest_y_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 13, overslab::quantity::System::Us)
    }
    /// Where it is, from the front [m].
    #[getter]
    fn get_greatest_y_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 13, overslab::quantity::System::Si)
    }
    /// The stations, a table of stations.
    #[getter]
    fn get_stations<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 14, overslab::quantity::System::Us)
    }
    /// The heights at whole steps of the spacing; none without one, a table of samples.
    #[getter]
    fn get_samples<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 15, overslab::quantity::System::Us)
    }
    /// The stretches outside the work, a table of gaps.
    #[getter]
    fn get_gaps<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 16, overslab::quantity::System::Us)
    }
}

static DRAIN_PLACE: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "drain_place"),
    class: "DrainPlace",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(DrainPlace))?.into_any()),
};

/// Where an area drain goes inside a rectangle so that a floor that falls to it from a level perimeter takes the least concrete, with a bound that no place goes under.
///
/// Rule: z = perimeter - drop x (distance from the run's line / distance of the drain from it);
///     concrete = integral of z - old slab, least over perimeter, drop and place; gap = (concrete -
///     bound) / concrete.
/// Takes for granted: every corner of the outline is seen from the drain, at least 1/2 in inside the
///     line of every run; the search and its bound are over unrounded finishes, and rounding comes
///     after; ground beyond the shots does not bind.
///
/// Args:
///     survey: the old slab with its outline; a Survey
///     x_from: the drain is no farther left than this, from the left [ft | m]; at least -328083.989501
///         ft, at most 328083.989501 ft (at least -100000 m, at most 100000 m)
///     x_to: and no farther right; the same as x_from leaves one line of places [ft | m]; at least
///         -328083.989501 ft, at most 328083.989501 ft (at least -100000 m, at most 100000 m)
///     y_from: no farther to the front, from the front [ft | m]; at least -328083.989501 ft, at most
///         328083.989501 ft (at least -100000 m, at most 100000 m)
///     y_to: and no farther back [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
///         least -100000 m, at most 100000 m)
///     least: least thickness [in | mm]; at least 0 in, at most 120 in (at least 0 mm, at most 3048 mm)
///     margin: margin on the least thickness [in | mm]; at least 0 in, at most 120 in (at least 0 mm,
///         at most 3048 mm); where it is not given 3/8 in is taken: reading, texture and strike-off
///     fall: least fall to the drain from every corner of the perimeter [in/ft | %]; at least 0 in/ft,
///         at most 12 in/ft (at least 0 %, at most 100 %); where it is not given 1/8 in/ft is taken:
///         the least for a well-finished floor
///     greatest_fall: greatest fall, in whatever direction [in/ft | %]; at least 0 in/ft, at most 12
///         in/ft (at least 0 %, at most 100 %); may be left out
///     concrete_price: price of concrete [/yd3 | /m3]; at least 0 /yd3, at most 7645548.57984 /yd3 (at
///         least 0 /m3, at most 10000000 /m3); may be left out
///     close: the search ends when the concrete is above the bound by no more than this share of it
///         [%]; at least 0.0001 %, at most 100 %; where it is not given 0.01 % is taken: less than a
///         shovel to a truck
///     most_places: the search ends too when so many places were tried; 5000 if not given; a whole
///         number from 1 to 1000000; may be left out
///     round: the heights of perimeter and drain are rounded to whole steps of this that keep the
///         demands [in | mm]; at least 0 in, at most 12 in (at least 0 mm, at most 304.8 mm); may be
///         left out
///     datum: the height the steps are counted from, usually the benchmark [ft | m]; at least
///         -32808.3989501 ft, at most 32808.3989501 ft (at least -10000 m, at most 10000 m); where it
///         is not given 0 ft is taken: the job datum
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     DrainPlace, with the attributes
///         finish: the finish there, rounded if that was asked
///         x_ft, x_m: middle of the drain, from the left [ft | m]
///         y_ft, y_m: middle of the drain, from the front [ft | m]
///         perimeter_ft, perimeter_m: height of that finish all along the outer edges [ft | m]
///         drain_elevation_ft, drain_elevation_m: its height at the drain [ft | m]
///         concrete_yd3, concrete_m3: concrete of the unrounded finish, margin with it [yd3 | m3]
///         bound_yd3, bound_m3: no place in the rectangle takes less [yd3 | m3]
///         gap_ratio: how far the concrete may be above the best, as a share of it [1]
///         places: places at which the finish was solved
///         ended: why the search ended: as close as asked, or the cap on places: close, cap
///         built_concrete_yd3, built_concrete_m3: concrete of the finish as rounded [yd3 | m3]
///         cost_money: what that costs; none without a price [money]
///     and notes, basis and taken.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
///         quantity (UNIT_WRONG)
///     GradeError: no place where the drain may be sees every corner of the outline (DRAIN_UNPLACED);
///         the demands can be kept with the drain at no place where it may be (DRAIN_NOWHERE)
///
/// Basis:
///     plane and solid geometry: derived
///     at least 1/8 in per ft on well-finished floors: Flatwork guidance on drainage minimums
///         (several), finished floors, from memory: confirm
///
/// Example:
///     >>> from overslab.grade import drain_place
///     >>> answer = drain_place(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     x_from="4 ft",
///     ...     x_to="16 ft",
///     ...     y_from="6 ft",
///     ...     y_to="20 ft",
///     ...     least="3 in",
///     ...     fall="1/8 in/ft",
///     ...     concrete_price="162 /yd3",
///     ...     close="0.1 %",
///     ...     round="1/8 in",
///     ... )
///     >>> round(answer.x_ft, 4)
///     9.9531
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, x_from, x_to, y_from, y_to, least, *, margin=None, fall=None, greatest_fall=None, concrete_price=None, close=None, most_places=None, round=None, datum=None, units=crate::units::Units(None)), text_signature = "(survey, x_from, x_to, y_from, y_to, least, *, margin=None, fall=None, greatest_fall=None, concrete_price=None, close=None, most_places=None, round=None, datum=None, units=None)")]
fn drain_place(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    x_from: &Bound<'_, PyAny>,
    x_to: &Bound<'_, PyAny>,
    y_from: &Bound<'_, PyAny>,
    y_to: &Bound<'_, PyAny>,
    least: &Bound<'_, PyAny>,
    margin: Option<&Bound<'_, PyAny>>,
    fall: Option<&Bound<'_, PyAny>>,
    greatest_fall: Option<&Bound<'_, PyAny>>,
    concrete_price: Option<&Bound<'_, PyAny>>,
    close: Option<&Bound<'_, PyAny>>,
    most_places: Option<&Bound<'_, PyAny>>,
    round: Option<&Bound<'_, PyAny>>,
    datum: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &DRAIN_PLACE, &[Some(survey), Some(x_from), Some(x_to), Some(y_from), Some(y_to), Some(least), margin, fall, greatest_fall, concrete_price, close, most_places, round, datum], units)
}

/// What `drain_place` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.grade")]
pub(crate) struct DrainPlace;

#[pymethods]
impl DrainPlace {
    /// The finish there, rounded if that was asked.
    #[getter]
    fn get_finish<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Middle of the drain, from the left [ft].
    #[getter]
    fn get_x_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Middle of the drain, from the left [m].
    #[getter]
    fn get_x_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Middle of the drain, from the front [ft].
    #[getter]
    fn get_y_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Middle of the drain, from the front [m].
    #[getter]
    fn get_y_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Height of that finish all along the outer edges [ft].
    #[getter]
    fn get_perimeter_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Height of that finish all along the outer edges [m].
    #[getter]
    fn get_perimeter_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// Its height at the drain [ft].
    #[getter]
    fn get_drain_elevation_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Its height at the drain [m].
    #[getter]
    fn get_drain_elevation_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Si)
    }
    /// Concrete of the unrounded finish, margin with it [yd3].
    #[getter]
    fn get_concrete_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// Concrete of the unrounded finish, margin with it [m3].
    #[getter]
    fn get_concrete_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Si)
    }
    /// No place in the rectangle takes less [yd3].
    #[getter]
    fn get_bound_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// No place in the rectangle takes less [m3].
    #[getter]
    fn get_bound_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Si)
    }
    /// How far the concrete may be above the best, as a share of it [1].
    #[getter]
    fn get_gap_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Us)
    }
    /// Places at which the finish was solved.
    #[getter]
    fn get_places<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Us)
    }
    /// Why the search ended: as close as asked, or the cap on places: close, cap.
    #[getter]
    fn get_ended<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 9, overslab::quantity::System::Us)
    }
    /// Concrete of the finish as rounded [yd3].
    #[getter]
    fn get_built_concrete_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 10, overslab::quantity::System::Us)
    }
    /// Concrete of the finish as rounded [m3].
    #[getter]
    fn get_built_concrete_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 10, overslab::quantity::System::Si)
    }
    /// What that costs; none without a price [money].
    #[getter]
    fn get_cost_money<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 11, overslab::quantity::System::Us)
    }
}

static DRAINAGE: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "drainage"),
    class: "Drainage",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Drainage))?.into_any()),
};

/// How a finish drains: each facet against the least fall, what drains where, the ways of water, what drains badly.
///
/// Rule: water runs straight down each facet, along a valley where both sides lean to it and along the
///     foot of a wall; flow = coefficient x rain x area.
/// Takes for granted: facets are plane; water from a corner or a ridge takes the steepest way, of
///     several as steep that over the first facet; exactly the least fall is enough.
///
/// Args:
///     survey: the old slab; a Survey
///     finish: the new top surface; a Finish
///     edges: edges that are walled, open or drained; a table of at least 0 rows, each an edge and what
///         it does to water, with the columns; may be left out
///         edge: name of the edge, or of a hole; a text
///         state: open: water runs off over it; walled: it is held; drained: a drain along it takes it;
///             one of "open", "walled", "drained"
///     drains: drains in the floor; a table of at least 0 rows, each a place of a drain; rows of one
///         name are a drain along the line through them, with the columns; may be left out
///         x: distance from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
///             least -100000 m, at most 100000 m)
///         y: distance from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft
///             (at least -100000 m, at most 100000 m)
///         name: name of the drain; a text; may be left out
///     surface: how the surface is finished and used, which sets the least fall; one of "trowelled",
///         "broomed", "washed", "outdoors"; where it is not given trowelled is taken: the least of the
///         minimums
///     least_fall: the least fall, in place of that of the surface [in/ft | %]; at least 0 in/ft, at
///         most 12 in/ft (at least 0 %, at most 100 %); may be left out
///     wave_height: height of a wave that strike-off may leave, crest to trough [in | mm]; at least 0
///         in, at most 12 in (at least 0 mm, at most 304.8 mm); where it is not given 3/16 in is taken:
///         what hand screeding can leave over 4 ft
///     wave_length: length of that wave, crest to crest [ft | m]; more than 0 ft, at most 100 ft (more
///         than 0 m, at most 30.48 m); where it is not given 4 ft is taken: what hand screeding can
///         leave 3/16 in over
///     starts: places from which water is followed; a table of at least 0 rows, each a place from which
///         water is followed, with the columns; may be left out
///         x: distance from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
///             least -100000 m, at most 100000 m)
///         y: distance from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft
///             (at least -100000 m, at most 100000 m)
///     rain: how fast rain comes down [in/h | mm/h]; at least 0 in/h, at most 39.3700787402 in/h (at
///         least 0 mm/h, at most 1000 mm/h); may be left out
///     coefficient: the share of the rain that runs off [%]; at least 0 %, at most 100 %; where it is
///         not given 95 % is taken: the most that textbooks give for concrete, on the safe side
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Drainage, with the attributes
///         judged: whether every facet falls enough, the right way, to an outlet: pass, fail, confirm
///             locally
///         least_in_per_ft, least_percent: the least fall that is wanted [in/ft | %]
///         least_found_in_per_ft, least_found_percent: the least fall of any facet [in/ft | %]
///         drained_ft2, drained_m2: area whose water leaves [ft2 | m2]
///         held_ft2, held_m2: area whose water finds no outlet [ft2 | m2]
///         puddles: whether the stated wave can hold water: drains, can stay
///         puddle_in, puddle_mm: the deepest that it holds on any facet [in | mm]
///         facets: the facets, a table of facets
///         catchments: what drains to each end, a table of catchments
///         catchment_corners: the corners of the polygons of the catchments, a table of
///             catchment_corners
///         faults: the parts that drain badly, a table of faults
///         fault_corners: the corners of their polygons, a table of fault_corners
///         paths: ways of water, a table of paths
///         path_places: the places on them, a table of path_places
///     and notes, basis and taken.
///
/// Raises:
///     GradeError: no edge of the outline has this name (EDGE_UNKNOWN); a line or a place of the finish
///         lies outside the work (OFF_WORK)
///     SurveyError: a drain lies outside the outline (DRAIN_OUTSIDE)
///     FormError: the word is not one of the choices (WORD_UNKNOWN)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
///         quantity (UNIT_WRONG)
///
/// Basis:
///     plane and solid geometry: derived
///     at least 1/8 in per ft on well-finished floors: Flatwork guidance on drainage minimums
///         (several), finished floors, from memory: confirm
///     at least 1/4 in per ft on broomed floors: Flatwork guidance on drainage minimums (several),
///         broom finish, from memory: confirm
///     at least 1/4 in per ft where a floor is washed down: common practice, no source
///     at least 2 % away from a building: International Residential Code (2015-2021), R401.3,
///         impervious surfaces within 10 ft, as quoted elsewhere
///     the least fall that was given: the project's specification
///     hand screeding can leave waves of 3/16 in over 4 ft: common practice, no source
///     runoff = coefficient x rain intensity x area: Hydrology textbooks, rational method (Kuichling
///         1889) (any), Q = C i A; C of concrete 0.8 to 0.95, from memory: confirm
///
/// Example:
///     >>> from overslab.grade import drainage
///     >>> answer = drainage(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "20 ft"},
///     ...                 {"name": "right", "length": "32 ft"},
///     ...                 {"name": "back", "length": "20 ft"},
///     ...                 {"name": "left", "length": "32 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "10 ft", "19 ft"],
///     ...             "rows": ["1 ft", "16 ft", "31 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.22 ft",
///     ...                 "99.18 ft",
///     ...                 "99.25 ft",
///     ...                 "99.26 ft",
///     ...                 "99.24 ft",
///     ...                 "99.35 ft",
///     ...                 "99.33 ft",
///     ...                 "99.36 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     finish={
///     ...         "points": [
///     ...             {"x": "0 ft", "y": "0 ft", "elevation": "99.9 ft"},
///     ...             {"x": "20 ft", "y": "0 ft", "elevation": "99.8 ft"},
///     ...             {"x": "0 ft", "y": "24 ft", "elevation": "100.2 ft"},
///     ...         ],
///     ...     },
///     ...     edges={"edge": ["front"], "state": ["drained"]},
///     ...     surface="broomed",
///     ...     rain="3 in/h",
///     ... )
///     >>> answer.judged
///     'confirm locally'
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, finish, *, edges=None, drains=None, surface=None, least_fall=None, wave_height=None, wave_length=None, starts=None, rain=None, coefficient=None, units=crate::units::Units(None)), text_signature = "(survey, finish, *, edges=None, drains=None, surface=None, least_fall=None, wave_height=None, wave_length=None, starts=None, rain=None, coefficient=None, units=None)")]
fn drainage(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    finish: &Bound<'_, PyAny>,
    edges: Option<&Bound<'_, PyAny>>,
    drains: Option<&Bound<'_, PyAny>>,
    surface: Option<&Bound<'_, PyAny>>,
    least_fall: Option<&Bound<'_, PyAny>>,
    wave_height: Option<&Bound<'_, PyAny>>,
    wave_length: Option<&Bound<'_, PyAny>>,
    starts: Option<&Bound<'_, PyAny>>,
    rain: Option<&Bound<'_, PyAny>>,
    coefficient: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &DRAINAGE, &[Some(survey), Some(finish), edges, drains, surface, least_fall, wave_height, wave_length, starts, rain, coefficient], units)
}

/// What `drainage` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.grade")]
pub(crate) struct Drainage;

#[pymethods]
impl Drainage {
    /// Whether every facet falls enough, the right way, to an outlet: pass, fail, confirm locally.
    #[getter]
    fn get_judged<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// The least fall that is wanted [in/ft].
    #[getter]
    fn get_least_in_per_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// The least fall that is wanted [%].
    #[getter]
    fn get_least_percent<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// The least fall of any facet [in/ft].
    #[getter]
    fn get_least_found_in_per_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// The least fall of any facet [%].
    #[getter]
    fn get_least_found_percent<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Area whose water leaves [ft2].
    #[getter]
    fn get_drained_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Area whose water leaves [m2].
    #[getter]
    fn get_drained_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// Area whose water finds no outlet [ft2].
    #[getter]
    fn get_held_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Area whose water finds no outlet [m2].
    #[getter]
    fn get_held_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Si)
    }
    /// Whether the stated wave can hold water: drains, can stay.
    #[getter]
    fn get_puddles<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// The deepest that it holds on any facet [in].
    #[getter]
    fn get_puddle_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// The deepest that it holds on any facet [mm].
    #[getter]
    fn get_puddle_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Si)
    }
    /// The facets, a table of facets.
    #[getter]
    fn get_facets<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Us)
    }
    /// What drains to each end, a table of catchments.
    #[getter]
    fn get_catchments<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Us)
    }
    /// The corners of the polygons of the catchments, a table of catchment_corners.
    #[getter]
    fn get_catchment_corners<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 9, overslab::quantity::System::Us)
    }
    /// The parts that drain badly, a table of faults.
    #[getter]
    fn get_faults<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 10, overslab::quantity::System::Us)
    }
    /// The corners of their polygons, a table of fault_corners.
    #[getter]
    fn get_fault_corners<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 11, overslab::quantity::System::Us)
    }
    /// Ways of water, a table of paths.
    #[getter]
    fn get_paths<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 12, overslab::quantity::System::Us)
    }
    /// The places on them, a table of path_places.
    #[getter]
    fn get_path_places<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 13, overslab::quantity::System::Us)
    }
}

static PUDDLE_FALL: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "puddle_fall"),
    class: "PuddleFall",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(PuddleFall))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(PuddleFallArray))?.into_any()),
};

/// The least fall at which a wave of the surface holds no water.
///
/// Rule: fall = pi wave_height / wave_length, the steepest rise of the wave.
/// Takes for granted: the wave is a sine, its height taken from crest to trough, its length from crest
///     to crest, along the fall.
///
/// Args:
///     wave_height: height of the wave, crest to trough [in | mm]; at least 0 in, at most 12 in (at
///         least 0 mm, at most 304.8 mm)
///     wave_length: length of the wave, crest to crest [ft | m]; more than 0 ft, at most 100 ft (more
///         than 0 m, at most 30.48 m)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     PuddleFall, with the attributes
///         fall_in_per_ft, fall_percent: the least fall that drains it [in/ft | %]
///     and notes; for arrays PuddleFallArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     plane and solid geometry: derived
///     hand screeding can leave waves of 3/16 in over 4 ft: common practice, no source
///
/// Example:
///     >>> from overslab.grade import puddle_fall
///     >>> answer = puddle_fall(wave_height="3/16 in", wave_length="4 ft")
///     >>> round(answer.fall_in_per_ft, 4)
///     0.1473
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (wave_height, wave_length, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(wave_height, wave_length, *, units=None, errors='raise')")]
fn puddle_fall(
    py: Python<'_>,
    wave_height: &Bound<'_, PyAny>,
    wave_length: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &PUDDLE_FALL, &[wave_height, wave_length], units, errors)
}

/// What `puddle_fall` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.grade")]
pub(crate) struct PuddleFall;

#[pymethods]
impl PuddleFall {
    /// The least fall that drains it [in/ft].
    #[getter]
    fn get_fall_in_per_ft(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// The least fall that drains it [%].
    #[getter]
    fn get_fall_percent(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `puddle_fall` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.grade")]
pub(crate) struct PuddleFallArray;

#[pymethods]
impl PuddleFallArray {
    /// The least fall that drains it [in/ft].
    #[getter]
    fn get_fall_in_per_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// The least fall that drains it [%].
    #[getter]
    fn get_fall_percent<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static PUDDLE_DEPTH: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "puddle_depth"),
    class: "PuddleDepth",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(PuddleDepth))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(PuddleDepthArray))?.into_any()),
};

/// How deep a wave of the surface holds water on a fall, and the greatest wave that drains there.
///
/// Rule: depth = d (sin t - t cos t), cos t = fall L / (pi d), none where that is 1 or more; greatest d
///     = fall L / pi.
/// Takes for granted: the wave is a sine of height d from crest to trough and length L from crest to
///     crest, along the fall; water stands to the rim.
///
/// Args:
///     wave_height: height of the wave, crest to trough [in | mm]; at least 0 in, at most 12 in (at
///         least 0 mm, at most 304.8 mm)
///     wave_length: length of the wave, crest to crest [ft | m]; more than 0 ft, at most 100 ft (more
///         than 0 m, at most 30.48 m)
///     fall: fall of the surface [in/ft | %]; at least 0 in/ft, at most 12 in/ft (at least 0 %, at most
///         100 %)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     PuddleDepth, with the attributes
///         depth_in, depth_mm: greatest depth of the water [in | mm]
///         greatest_wave_in, greatest_wave_mm: the greatest wave of that length that drains [in | mm]
///     and notes; for arrays PuddleDepthArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     plane and solid geometry: derived
///     hand screeding can leave waves of 3/16 in over 4 ft: common practice, no source
///
/// Example:
///     >>> from overslab.grade import puddle_depth
///     >>> answer = puddle_depth(wave_height="1/4 in", wave_length="4 ft", fall="1/8 in/ft")
///     >>> round(answer.depth_in, 5)
///     0.05263
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (wave_height, wave_length, fall, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(wave_height, wave_length, fall, *, units=None, errors='raise')")]
fn puddle_depth(
    py: Python<'_>,
    wave_height: &Bound<'_, PyAny>,
    wave_length: &Bound<'_, PyAny>,
    fall: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &PUDDLE_DEPTH, &[wave_height, wave_length, fall], units, errors)
}

/// What `puddle_depth` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.grade")]
pub(crate) struct PuddleDepth;

#[pymethods]
impl PuddleDepth {
    /// Greatest depth of the water [in].
    #[getter]
    fn get_depth_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Greatest depth of the water [mm].
    #[getter]
    fn get_depth_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
    /// The greatest wave of that length that drains [in].
    #[getter]
    fn get_greatest_wave_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Us)
    }
    /// The greatest wave of that length that drains [mm].
    #[getter]
    fn get_greatest_wave_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Si)
    }
}

/// What `puddle_depth` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.grade")]
pub(crate) struct PuddleDepthArray;

#[pymethods]
impl PuddleDepthArray {
    /// Greatest depth of the water [in].
    #[getter]
    fn get_depth_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Greatest depth of the water [mm].
    #[getter]
    fn get_depth_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// The greatest wave of that length that drains [in].
    #[getter]
    fn get_greatest_wave_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// The greatest wave of that length that drains [mm].
    #[getter]
    fn get_greatest_wave_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Si)
    }
}

static RUNOFF: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "runoff"),
    class: "Runoff",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Runoff))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(RunoffArray))?.into_any()),
};

/// The rain that runs off an area, in a volume for each time.
///
/// Rule: flow = coefficient x rain x area (rational method).
/// Takes for granted: rain falls as fast all over and long enough that all of the area runs.
///
/// Args:
///     area: area that rain falls on [ft2 | m2]; at least 0 ft2, at most 1076391041.67 ft2 (at least 0
///         m2, at most 100000000 m2)
///     rain: how fast rain comes down [in/h | mm/h]; at least 0 in/h, at most 39.3700787402 in/h (at
///         least 0 mm/h, at most 1000 mm/h)
///     coefficient: the share that runs off [%]; at least 0 %, at most 100 %
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     Runoff, with the attributes
///         flow_gal_per_min, flow_l_per_s: water that runs off [gal/min | L/s]
///     and notes; for arrays RunoffArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
///         quantity (UNIT_WRONG)
///
/// Basis:
///     runoff = coefficient x rain intensity x area: Hydrology textbooks, rational method (Kuichling
///         1889) (any), Q = C i A; C of concrete 0.8 to 0.95, from memory: confirm
///
/// Example:
///     >>> from overslab.grade import runoff
///     >>> answer = runoff(area="500 ft2", rain="4 in/h", coefficient="90 %")
///     >>> round(answer.flow_gal_per_min, 4)
///     18.7013
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (area, rain, coefficient, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(area, rain, coefficient, *, units=None, errors='raise')")]
fn runoff(
    py: Python<'_>,
    area: &Bound<'_, PyAny>,
    rain: &Bound<'_, PyAny>,
    coefficient: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &RUNOFF, &[area, rain, coefficient], units, errors)
}

/// What `runoff` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.grade")]
pub(crate) struct Runoff;

#[pymethods]
impl Runoff {
    /// Water that runs off [gal/min].
    #[getter]
    fn get_flow_gal_per_min(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Water that runs off [L/s].
    #[getter]
    fn get_flow_l_per_s(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `runoff` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.grade")]
pub(crate) struct RunoffArray;

#[pymethods]
impl RunoffArray {
    /// Water that runs off [gal/min].
    #[getter]
    fn get_flow_gal_per_min<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Water that runs off [L/s].
    #[getter]
    fn get_flow_l_per_s<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

/// The new top surface: one plane, or facets that meet.
#[pyclass(frozen, extends = crate::records::Record, module = "overslab.grade")]
pub(crate) struct Finish;

#[pymethods]
impl Finish {
    /// Of one plane: its height at the origin of the axes [ft].
    #[getter]
    fn get_elevation_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Of one plane: its height at the origin of the axes [m].
    #[getter]
    fn get_elevation_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Of one plane: rise along x [in/ft].
    #[getter]
    fn get_rise_x_in_per_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Of one plane: rise along x [%].
    #[getter]
    fn get_rise_x_percent<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Of one plane: rise along y [in/ft].
    #[getter]
    fn get_rise_y_in_per_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Of one plane: rise along y [%].
    #[getter]
    fn get_rise_y_percent<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Steepest fall, of facets the steepest of all [in/ft].
    #[getter]
    fn get_fall_in_per_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Steepest fall, of facets the steepest of all [%].
    #[getter]
    fn get_fall_percent<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// How many facets it has; 0 for one plane.
    #[getter]
    fn get_facet_count<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
}

/// The scalar rows.
pub(crate) static SCALARS: &[&crate::scalars::ScalarRow] = &[&FALL, &DROP, &TRIANGULAR_PRISM, &PUDDLE_FALL, &PUDDLE_DEPTH, &RUNOFF];

/// The rows with records.
pub(crate) static ANSWERS: &[&crate::answers::RecordRow] = &[&FINISH_LEVEL, &FINISH_FROM_POINTS, &FINISH_TO_EDGE, &FINISH_AT_LEAST, &FINISH_FROM_FACETS, &FINISH_FROM_PLANES, &FINISH_TO_VALLEY, &FINISH_CROWN, &FINISH_TO_TRENCH, &FINISH_TO_DRAIN, &FINISH_WITH_STRIP, &FINISH_RAISED, &FINISH_FACETS, &FINISH_SOLVED, &FINISH_CONFLICTS, &FINISH_SWEEP, &THICKNESS, &SECOND_LOOK, &FINISH_STANDING_WATER, &GRIND_HIGH_SPOTS, &FILL_LOW_SPOTS, &FILL_PONDS, &THICKNESS_AREAS, &THICKNESS_CONTOURS, &SURVEY_CONTOURS, &FINISH_CONTOURS, &THICKNESS_BANDS, &THICKNESS_HISTOGRAM, &THICKNESS_ZONES, &THIN_ZONES, &SECTION, &DRAIN_PLACE, &DRAINAGE];

/// The classes of records.
pub(crate) static RECORDS: &[crate::records::RecordClass] = &[crate::records::RecordClass { name: "finish", class: |py| py.get_type::<Finish>(), make: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Finish))?.into_any()) }];

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
    module.add_function(wrap_pyfunction!(self::finish_level, module)?)?;
    module.add_function(wrap_pyfunction!(self::finish_from_points, module)?)?;
    module.add_function(wrap_pyfunction!(self::finish_to_edge, module)?)?;
    module.add_function(wrap_pyfunction!(self::finish_at_least, module)?)?;
    module.add_function(wrap_pyfunction!(self::finish_from_facets, module)?)?;
    module.add_function(wrap_pyfunction!(self::finish_from_planes, module)?)?;
    module.add_function(wrap_pyfunction!(self::finish_to_valley, module)?)?;
    module.add_function(wrap_pyfunction!(self::finish_crown, module)?)?;
    module.add_function(wrap_pyfunction!(self::finish_to_trench, module)?)?;
    module.add_function(wrap_pyfunction!(self::finish_to_drain, module)?)?;
    module.add_function(wrap_pyfunction!(self::finish_with_strip, module)?)?;
    module.add_function(wrap_pyfunction!(self::finish_raised, module)?)?;
    module.add_class::<FinishRaised>()?;
    module.add_function(wrap_pyfunction!(self::finish_facets, module)?)?;
    module.add_class::<FinishFacets>()?;
    module.add_function(wrap_pyfunction!(self::finish_solved, module)?)?;
    module.add_class::<FinishSolved>()?;
    module.add_function(wrap_pyfunction!(self::finish_conflicts, module)?)?;
    module.add_class::<FinishConflicts>()?;
    module.add_function(wrap_pyfunction!(self::finish_sweep, module)?)?;
    module.add_class::<FinishSweep>()?;
    module.add_function(wrap_pyfunction!(self::thickness, module)?)?;
    module.add_class::<Thickness>()?;
    module.add_function(wrap_pyfunction!(self::second_look, module)?)?;
    module.add_class::<SecondLook>()?;
    module.add_function(wrap_pyfunction!(self::finish_standing_water, module)?)?;
    module.add_class::<FinishStandingWater>()?;
    module.add_function(wrap_pyfunction!(self::grind_high_spots, module)?)?;
    module.add_class::<GrindHighSpots>()?;
    module.add_function(wrap_pyfunction!(self::fill_low_spots, module)?)?;
    module.add_class::<FillLowSpots>()?;
    module.add_function(wrap_pyfunction!(self::fill_ponds, module)?)?;
    module.add_class::<FillPonds>()?;
    module.add_function(wrap_pyfunction!(self::thickness_areas, module)?)?;
    module.add_class::<ThicknessAreas>()?;
    module.add_function(wrap_pyfunction!(self::thickness_contours, module)?)?;
    module.add_class::<ThicknessContours>()?;
    module.add_function(wrap_pyfunction!(self::survey_contours, module)?)?;
    module.add_class::<SurveyContours>()?;
    module.add_function(wrap_pyfunction!(self::finish_contours, module)?)?;
    module.add_class::<FinishContours>()?;
    module.add_function(wrap_pyfunction!(self::thickness_bands, module)?)?;
    module.add_class::<ThicknessBands>()?;
    module.add_function(wrap_pyfunction!(self::thickness_histogram, module)?)?;
    module.add_class::<ThicknessHistogram>()?;
    module.add_function(wrap_pyfunction!(self::thickness_zones, module)?)?;
    module.add_class::<ThicknessZones>()?;
    module.add_function(wrap_pyfunction!(self::thin_zones, module)?)?;
    module.add_class::<ThinZones>()?;
    module.add_function(wrap_pyfunction!(self::section, module)?)?;
    module.add_class::<Section>()?;
    module.add_function(wrap_pyfunction!(self::drain_place, module)?)?;
    module.add_class::<DrainPlace>()?;
    module.add_function(wrap_pyfunction!(self::drainage, module)?)?;
    module.add_class::<Drainage>()?;
    module.add_function(wrap_pyfunction!(self::puddle_fall, module)?)?;
    module.add_class::<PuddleFall>()?;
    module.add_class::<PuddleFallArray>()?;
    module.add_function(wrap_pyfunction!(self::puddle_depth, module)?)?;
    module.add_class::<PuddleDepth>()?;
    module.add_class::<PuddleDepthArray>()?;
    module.add_function(wrap_pyfunction!(self::runoff, module)?)?;
    module.add_class::<Runoff>()?;
    module.add_class::<RunoffArray>()?;
    module.add_class::<Finish>()?;
    Ok(())
}
