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


static THICKNESS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "thickness"),
    class: "Thickness",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Thickness))?.into_any()),
};

/// The thickness of the overlay: finish less old slab, with volumes and extremes, exactly.
///
/// Rule: net = integral of (finish - old slab); fill = its positive part; high = its negative part;
///     mean = net / area.
/// Takes for granted: old slab plane over each triangle, finish one plane.
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
///     and notes, basis and taken.
///
/// Raises:
///     FormError: the key is not known (KEY_UNKNOWN); the value is of another kind than the port takes
///         (KIND_MISMATCH)
///     GradeError: the finish is given in two ways (FINISH_TWICE)
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
pub(crate) static SCALARS: &[&crate::scalars::ScalarRow] = &[&FALL, &DROP, &TRIANGULAR_PRISM];

/// The rows with records.
pub(crate) static ANSWERS: &[&crate::answers::RecordRow] = &[&FINISH_LEVEL, &FINISH_FROM_POINTS, &FINISH_TO_EDGE, &FINISH_AT_LEAST, &THICKNESS, &SECOND_LOOK];

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
    module.add_function(wrap_pyfunction!(self::thickness, module)?)?;
    module.add_class::<Thickness>()?;
    module.add_function(wrap_pyfunction!(self::second_look, module)?)?;
    module.add_class::<SecondLook>()?;
    module.add_class::<Finish>()?;
    Ok(())
}
