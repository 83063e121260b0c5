//! The operations of `survey`: made from the table of operations by `tests/src/generate/python`; do not edit.

#![allow(clippy::too_many_arguments, reason = "one for each port")]

use pyo3::prelude::*;

static ROD_ELEVATION: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "rod_elevation"),
    class: "RodElevation",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(RodElevation))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(RodElevationArray))?.into_any()),
};

/// The elevation of a point from one set-up of the level.
///
/// Rule: height of instrument = benchmark + backsight; elevation = height of instrument - rod.
/// Takes for granted: the line of sight is level and the rod plumb.
///
/// Args:
///     benchmark: elevation of the benchmark [ft | m]; at least -3280.83989501 ft, at most
///         32808.3989501 ft (at least -1000 m, at most 10000 m)
///     backsight: rod on the benchmark [ft | m]; at least 0 ft, at most 32.8083989501 ft (at least 0 m,
///         at most 10 m)
///     rod: rod on the point [ft | m]; at least 0 ft, at most 32.8083989501 ft (at least 0 m, at most
///         10 m)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     RodElevation, with the attributes
///         elevation_ft, elevation_m: elevation of the point [ft | m]
///         height_of_instrument_ft, height_of_instrument_m: height of the line of sight [ft | m]
///     and notes; for arrays RodElevationArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); a number stands without its unit
///         (UNIT_MISSING); a comma stands where it could be a decimal comma (DECIMAL_COMMA)
///
/// Basis:
///     height of instrument = elevation + backsight; elevation = height of instrument - sight:
///         Surveying textbooks, differential levelling (any), height of instrument
///
/// Example:
///     >>> from overslab.survey import rod_elevation
///     >>> answer = rod_elevation(benchmark="2156.77 ft", backsight="2.67 ft", rod="6.72 ft")
///     >>> round(answer.elevation_ft, 4)
///     2152.72
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (benchmark, backsight, rod, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(benchmark, backsight, rod, *, units=None, errors='raise')")]
fn rod_elevation(
    py: Python<'_>,
    benchmark: &Bound<'_, PyAny>,
    backsight: &Bound<'_, PyAny>,
    rod: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &ROD_ELEVATION, &[benchmark, backsight, rod], units, errors)
}

/// What `rod_elevation` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.survey")]
pub(crate) struct RodElevation;

#[pymethods]
impl RodElevation {
    /// Elevation of the point [ft].
    #[getter]
    fn get_elevation_ft(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Elevation of the point [m].
    #[getter]
    fn get_elevation_m(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
    /// Height of the line of sight [ft].
    #[getter]
    fn get_height_of_instrument_ft(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Us)
    }
    /// Height of the line of sight [m].
    #[getter]
    fn get_height_of_instrument_m(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Si)
    }
}

/// What `rod_elevation` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.survey")]
pub(crate) struct RodElevationArray;

#[pymethods]
impl RodElevationArray {
    /// Elevation of the point [ft].
    #[getter]
    fn get_elevation_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Elevation of the point [m].
    #[getter]
    fn get_elevation_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Height of the line of sight [ft].
    #[getter]
    fn get_height_of_instrument_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Height of the line of sight [m].
    #[getter]
    fn get_height_of_instrument_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Si)
    }
}

static LEVEL_BOOK: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "level_book"),
    class: "LevelBook",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(LevelBook))?.into_any()),
};

/// Reduces a level book: heights of instrument, elevations, closure.
///
/// Rule: height of instrument = elevation + backsight; elevation = height of instrument - sight; sum of
///     backsights - sum of foresights = last - first; misclosure = found - known, shared out by
///     set-ups.
/// Takes for granted: every reading is equally good.
///
/// Args:
///     page: the readings in the order they were booked; a table of at least 1 row, each a point with
///         its backsight, sight, foresight or repeated backsight, with the columns
///         point: name of the point; a text
///         backsight: rod on a known point, opens a set-up [ft | m]; at least 0 ft, at most
///             32.8083989501 ft (at least 0 m, at most 10 m); may be left out
///         sight: rod on any point [ft | m]; at least 0 ft, at most 32.8083989501 ft (at least 0 m, at
///             most 10 m); may be left out
///         foresight: rod on the turning point or closing benchmark [ft | m]; at least 0 ft, at most
///             32.8083989501 ft (at least 0 m, at most 10 m); may be left out
///         close: rod on the backsight point again [ft | m]; at least 0 ft, at most 32.8083989501 ft
///             (at least 0 m, at most 10 m); may be left out
///     benchmarks: the points of known elevation; a table of at least 1 row, each a point of known
///         elevation, with the columns
///         name: its name; a text
///         elevation: its elevation [ft | m]; at least -3280.83989501 ft, at most 32808.3989501 ft (at
///             least -1000 m, at most 10000 m)
///     closure_tolerance: how far a line of two or more set-ups may be off [in | mm]; at least 0 in (at
///         least 0 mm); may be left out
///     recheck_tolerance: how far one set-up may be off: its backsight point read again, or the
///         benchmark it ends on [in | mm]; at least 0 in (at least 0 mm); may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     LevelBook, with the attributes
///         misclosure_in, misclosure_mm: found less known where the line closes [in | mm]
///         backsights_ft, backsights_m: sum of the backsights of the first line [ft | m]
///         foresights_ft, foresights_m: sum of its foresights [ft | m]
///         rise_ft, rise_m: last less first of that line [ft | m]
///         setups: the set-ups, a table of setups
///         points: the points, a table of points
///     and notes, basis and taken.
///
/// Raises:
///     SurveyError: the level book does not close within its tolerance (CLOSURE_EXCEEDED); the level
///         book lacks a reading it needs (BOOK_INCOMPLETE)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///     FormError: the list is empty (EMPTY_LIST)
///
/// Basis:
///     height of instrument = elevation + backsight; elevation = height of instrument - sight:
///         Surveying textbooks, differential levelling (any), height of instrument
///     one set-up closes within 1/8 in, several within 1/4 in: common practice, no source
///
/// Example:
///     >>> from overslab.survey import level_book
///     >>> answer = level_book(
///     ...     page=[
///     ...         {"point": "BM A", "backsight": "3.10 ft"},
///     ...         {"point": "TP1", "foresight": "9.82 ft", "backsight": "6.44 ft"},
///     ...         {"point": "TP2", "foresight": "6.96 ft", "backsight": "8.76 ft"},
///     ...         {"point": "TP3", "foresight": "3.27 ft", "backsight": "7.12 ft"},
///     ...         {"point": "BM B", "foresight": "10.42 ft"},
///     ...     ],
///     ...     benchmarks=[
///     ...         {"name": "BM A", "elevation": "100.00 ft"},
///     ...         {"name": "BM B", "elevation": "94.91 ft"},
///     ...     ],
///     ...     closure_tolerance="0.05 ft",
///     ... )
///     >>> round(answer.misclosure_in, 4)
///     0.48
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (page, benchmarks, *, closure_tolerance=None, recheck_tolerance=None, units=crate::units::Units(None)), text_signature = "(page, benchmarks, *, closure_tolerance=None, recheck_tolerance=None, units=None)")]
fn level_book(
    py: Python<'_>,
    page: &Bound<'_, PyAny>,
    benchmarks: &Bound<'_, PyAny>,
    closure_tolerance: Option<&Bound<'_, PyAny>>,
    recheck_tolerance: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &LEVEL_BOOK, &[Some(page), Some(benchmarks), closure_tolerance, recheck_tolerance], units)
}

/// What `level_book` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.survey")]
pub(crate) struct LevelBook;

#[pymethods]
impl LevelBook {
    /// Found less known where the line closes [in].
    #[getter]
    fn get_misclosure_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Found less known where the line closes [mm].
    #[getter]
    fn get_misclosure_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Sum of the backsights of the first line [ft].
    #[getter]
    fn get_backsights_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Sum of the backsights of the first line [m].
    #[getter]
    fn get_backsights_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Sum of its foresights [ft].
    #[getter]
    fn get_foresights_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Sum of its foresights [m].
    #[getter]
    fn get_foresights_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Last less first of that line [ft].
    #[getter]
    fn get_rise_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Last less first of that line [m].
    #[getter]
    fn get_rise_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// The set-ups, a table of setups.
    #[getter]
    fn get_setups<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// The points, a table of points.
    #[getter]
    fn get_points<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
}

static OUTLINE_FROM_CORNERS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "outline_from_corners"),
    class: "Outline",
    answer: crate::answers::record,
};

/// The plan edge of the work from its corners in order.
///
/// Rule: area = 1/2 sum (x_i y_i+1 - x_i+1 y_i).
/// Takes for granted: edges are straight between corners; either way round.
///
/// Args:
///     corners: the corners in order; a table of at least 3 rows, each a corner of the plan edge, with
///         the columns
///         x: distance from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
///             least -100000 m, at most 100000 m)
///         y: distance from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft
///             (at least -100000 m, at most 100000 m)
///         edge: name of the edge to the next corner; a text; may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Outline: The plan edge of the work, with holes and named edges. It has notes, basis and taken
///         besides.
///
/// Raises:
///     SurveyError: the outline crosses itself (OUTLINE_CROSSES); the outline has too few corners or no
///         area (OUTLINE_TOO_FEW)
///     FormError: the list is empty (EMPTY_LIST); lists that belong together differ in length
///         (LENGTH_MISMATCH)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.survey import outline_from_corners
///     >>> answer = outline_from_corners(
///     ...     corners={
///     ...         "x": ["0 ft", "20 ft", "20 ft", "0 ft"],
///     ...         "y": ["0 ft", "0 ft", "32 ft", "32 ft"],
///     ...         "edge": ["front", "right", "back", "left"],
///     ...     },
///     ... )
///     >>> round(answer.area_ft2, 4)
///     640.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (corners, *, units=crate::units::Units(None)), text_signature = "(corners, *, units=None)")]
fn outline_from_corners(
    py: Python<'_>,
    corners: &Bound<'_, PyAny>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &OUTLINE_FROM_CORNERS, &[Some(corners)], units)
}


static OUTLINE_FROM_SIDES: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "outline_from_sides"),
    class: "Outline",
    answer: crate::answers::record,
};

/// The plan edge of the work from wall lengths in order, with a diagonal or two of four walls.
///
/// Rule: corners square and the closing gap shared out; or the quadrilateral of four sides and its
///     diagonals.
/// Takes for granted: the first wall runs along x from the first corner, the work on its left.
///
/// Args:
///     sides: the walls in order; a table of at least 4 rows, each a wall, with the columns
///         length: its length [ft | m]; more than 0 ft, at most 32808.3989501 ft (more than 0 m, at
///             most 10000 m)
///         name: its name; a text; may be left out
///         turn: the square turn at its end, left where not given; one of "left", "right"; may be left
///             out
///     diagonal: first corner to third, of four walls [ft | m]; more than 0 ft, at most 32808.3989501
///         ft (more than 0 m, at most 10000 m); may be left out
///     second_diagonal: second corner to fourth, of four walls [ft | m]; more than 0 ft, at most
///         32808.3989501 ft (more than 0 m, at most 10000 m); may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Outline: The plan edge of the work, with holes and named edges. It has notes, basis and taken
///         besides.
///
/// Raises:
///     SurveyError: no figure has these sides and diagonals (DIAGONAL_IMPOSSIBLE); the wall lengths do
///         not close (OUTLINE_OPEN)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.survey import outline_from_sides
///     >>> answer = outline_from_sides(
///     ...     sides=[
///     ...         {"name": "front", "length": "20 ft"},
///     ...         {"name": "right", "length": "32 ft"},
///     ...         {"name": "back", "length": "20 ft"},
///     ...         {"name": "left", "length": "32 ft"},
///     ...     ],
///     ...     diagonal="37' 8 7/8\"",
///     ... )
///     >>> round(answer.area_ft2, 4)
///     640.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (sides, *, diagonal=None, second_diagonal=None, units=crate::units::Units(None)), text_signature = "(sides, *, diagonal=None, second_diagonal=None, units=None)")]
fn outline_from_sides(
    py: Python<'_>,
    sides: &Bound<'_, PyAny>,
    diagonal: Option<&Bound<'_, PyAny>>,
    second_diagonal: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &OUTLINE_FROM_SIDES, &[Some(sides), diagonal, second_diagonal], units)
}


static SURVEY_FROM_SHOTS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "survey_from_shots"),
    class: "Survey",
    answer: crate::answers::record,
};

/// The surface of the old slab through shots in any order.
///
/// Rule: Delaunay triangles, each plane; shots on one circle are filled from their mean.
/// Takes for granted: the slab is plane between neighbouring shots.
///
/// Args:
///     outline: the plan edge of the work; an Outline
///     shots: the shots; a table of at least 1 row, each a shot of the old slab, with the columns
///         x: distance from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
///             least -100000 m, at most 100000 m)
///         y: distance from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft
///             (at least -100000 m, at most 100000 m)
///         elevation: height above the job datum [ft | m]; at least -32808.3989501 ft, at most
///             32808.3989501 ft (at least -10000 m, at most 10000 m)
///         name: its name; a text; may be left out
///         outside: outside the outline on purpose; one of "no", "yes"; may be left out
///         step: one side of a step; one of "no", "yes"; may be left out
///     instrument: what the readings were taken with; one of "laser", "optical_hundredths",
///         "optical_eighths", "optical_sixteenths", "optical_millimetres", "string", "water"; where it
///         is not given laser is taken: most crews have one
///     texture: what the old floor feels like; one of "trowelled", "broomed", "scaled", "rough"; where
///         it is not given broomed is taken: most old slabs are
///     beyond_allowed: whether the work may reach more than 4 ft beyond the shots; one of "no", "yes";
///         where it is not given no is taken: heights that far out are a guess
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Survey: The surveyed old slab: outline, shots and the surface through them. It has notes, basis
///         and taken besides.
///
/// Raises:
///     SurveyError: too few shots for a surface (TOO_FEW_SHOTS); all shots lie on one line
///         (COLLINEAR_SHOTS); two heights stand at one place (TWO_HEIGHTS); a shot lies outside the
///         outline (SHOT_OUTSIDE)
///     FormError: the list is empty (EMPTY_LIST); the word is not one of the choices (WORD_UNKNOWN)
///
/// Basis:
///     plane and solid geometry: derived
///     reading and texture deviations behind the site words: common practice, no source
///
/// Example:
///     >>> from overslab.survey import survey_from_shots
///     >>> answer = survey_from_shots(
///     ...     outline={
///     ...         "sides": [
///     ...             {"length": "12 ft"},
///     ...             {"length": "10 ft"},
///     ...             {"length": "12 ft"},
///     ...             {"length": "10 ft"},
///     ...         ],
///     ...     },
///     ...     shots={
///     ...         "x": ["1 ft", "11 ft", "11 ft", "1 ft", "5 ft"],
///     ...         "y": ["1 ft", "1 ft", "9 ft", "9 ft", "4 ft"],
///     ...         "elevation": ["99.20 ft", "99.15 ft", "99.25 ft", "99.22 ft", "99.16 ft"],
///     ...     },
///     ... )
///     >>> round(answer.area_ft2, 4)
///     120.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (outline, shots, *, instrument=None, texture=None, beyond_allowed=None, units=crate::units::Units(None)), text_signature = "(outline, shots, *, instrument=None, texture=None, beyond_allowed=None, units=None)")]
fn survey_from_shots(
    py: Python<'_>,
    outline: &Bound<'_, PyAny>,
    shots: &Bound<'_, PyAny>,
    instrument: Option<&Bound<'_, PyAny>>,
    texture: Option<&Bound<'_, PyAny>>,
    beyond_allowed: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &SURVEY_FROM_SHOTS, &[Some(outline), Some(shots), instrument, texture, beyond_allowed], units)
}


static SURVEY_FROM_FACES: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "survey_from_faces"),
    class: "Survey",
    answer: crate::answers::record,
};

/// The surface of the old slab over given triangles, which are kept as they are: what a triangulated file brings.
///
/// Rule: each triangle is plane; what lies between triangles and their hull counts as unsurveyed.
/// Takes for granted: triangles meet at whole sides; they may go on beyond the outline; points at no
///     triangle are left out.
///
/// Args:
///     outline: the plan edge of the work; an Outline
///     points: the points; a table of at least 3 rows, each a point of the old slab, with the columns
///         x: distance from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
///             least -100000 m, at most 100000 m)
///         y: distance from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft
///             (at least -100000 m, at most 100000 m)
///         elevation: height above the job datum [ft | m]; at least -32808.3989501 ft, at most
///             32808.3989501 ft (at least -10000 m, at most 10000 m)
///         name: its name; a text; may be left out
///     faces: the triangles; a table of at least 1 row, each a triangle by the numbers of its three
///         points, either way round; the first point is number 1, with the columns
///         first: the number of one point; a whole number from 1 to 2147483647
///         second: the number of another; a whole number from 1 to 2147483647
///         third: the number of the third; a whole number from 1 to 2147483647
///     instrument: what the readings were taken with; one of "laser", "optical_hundredths",
///         "optical_eighths", "optical_sixteenths", "optical_millimetres", "string", "water"; where it
///         is not given laser is taken: most crews have one
///     texture: what the old floor feels like; one of "trowelled", "broomed", "scaled", "rough"; where
///         it is not given broomed is taken: most old slabs are
///     beyond_allowed: whether the work may reach more than 4 ft beyond the shots; one of "no", "yes";
///         where it is not given no is taken: heights that far out are a guess
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Survey: The surveyed old slab: outline, shots and the surface through them. It has notes, basis
///         and taken besides.
///
/// Raises:
///     SurveyError: a triangle has a corner that is none of the points (FACE_POINT_UNKNOWN); a triangle
///         has no area in plan (FACE_FLAT); two triangles overlap (FACES_OVERLAP)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///     FormError: the list is empty (EMPTY_LIST)
///
/// Basis:
///     plane and solid geometry: derived
///     reading and texture deviations behind the site words: common practice, no source
///
/// Example:
///     >>> from overslab.survey import survey_from_faces
///     >>> answer = survey_from_faces(
///     ...     outline={
///     ...         "sides": [
///     ...             {"length": "12 ft"},
///     ...             {"length": "10 ft"},
///     ...             {"length": "12 ft"},
///     ...             {"length": "10 ft"},
///     ...         ],
///     ...     },
///     ...     points={
///     ...         "x": ["0 ft", "13 ft", "13 ft", "0 ft"],
///     ...         "y": ["0 ft", "0 ft", "10 ft", "10 ft"],
///     ...         "elevation": ["99.20 ft", "99.15 ft", "99.25 ft", "99.22 ft"],
///     ...     },
///     ...     faces={"first": [1, 1], "second": [2, 3], "third": [3, 4]},
///     ... )
///     >>> round(answer.area_ft2, 4)
///     120.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (outline, points, faces, *, instrument=None, texture=None, beyond_allowed=None, units=crate::units::Units(None)), text_signature = "(outline, points, faces, *, instrument=None, texture=None, beyond_allowed=None, units=None)")]
fn survey_from_faces(
    py: Python<'_>,
    outline: &Bound<'_, PyAny>,
    points: &Bound<'_, PyAny>,
    faces: &Bound<'_, PyAny>,
    instrument: Option<&Bound<'_, PyAny>>,
    texture: Option<&Bound<'_, PyAny>>,
    beyond_allowed: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &SURVEY_FROM_FACES, &[Some(outline), Some(points), Some(faces), instrument, texture, beyond_allowed], units)
}


static SURVEY_FROM_GRID: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "survey_from_grid"),
    class: "Survey",
    answer: crate::answers::record,
};

/// The surface of the old slab through a grid of elevations, rows and columns spaced from two walls.
///
/// Rule: each cell is four triangles about the mean of its corners.
/// Takes for granted: the slab is plane over each triangle.
///
/// Args:
///     outline: the plan edge of the work; an Outline
///     columns: the grid columns from the left wall; a table of at least 1 row, each a grid column,
///         with the columns
///         x: distance from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
///             least -100000 m, at most 100000 m)
///     rows: the grid rows from the front wall; a table of at least 1 row, each a grid row, with the
///         columns
///         y: distance from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft
///             (at least -100000 m, at most 100000 m)
///     elevations: the heights, row by row; a table of at least 1 row, each the height of a grid place,
///         row by row, with the columns
///         elevation: height; empty where not shot [ft | m]; at least -32808.3989501 ft, at most
///             32808.3989501 ft (at least -10000 m, at most 10000 m); may be left out
///     instrument: what the readings were taken with; one of "laser", "optical_hundredths",
///         "optical_eighths", "optical_sixteenths", "optical_millimetres", "string", "water"; where it
///         is not given laser is taken: most crews have one
///     texture: what the old floor feels like; one of "trowelled", "broomed", "scaled", "rough"; where
///         it is not given broomed is taken: most old slabs are
///     beyond_allowed: whether the work may reach more than 4 ft beyond the shots; one of "no", "yes";
///         where it is not given no is taken: heights that far out are a guess
///     steps: whether a row or column given twice, one after the other, is the two sides of a step; one
///         of "no", "yes"; where it is not given no is taken: a distance written twice is more often a
///         slip
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Survey: The surveyed old slab: outline, shots and the surface through them. It has notes, basis
///         and taken besides.
///
/// Raises:
///     FormError: lists that belong together differ in length (LENGTH_MISMATCH); the list is empty
///         (EMPTY_LIST)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///     SurveyError: the work reaches too far beyond the shots (BEYOND_SHOTS)
///
/// Basis:
///     plane and solid geometry: derived
///     reading and texture deviations behind the site words: common practice, no source
///
/// Example:
///     >>> from overslab.survey import survey_from_grid
///     >>> answer = survey_from_grid(
///     ...     outline={
///     ...         "sides": [
///     ...             {"length": "12 ft"},
///     ...             {"length": "10 ft"},
///     ...             {"length": "12 ft"},
///     ...             {"length": "10 ft"},
///     ...         ],
///     ...     },
///     ...     columns={"x": ["1 ft", "6 ft", "11 ft"]},
///     ...     rows={"y": ["1 ft", "9 ft"]},
///     ...     elevations={
///     ...         "elevation": [
///     ...             "99.20 ft",
///     ...             "99.18 ft",
///     ...             "99.15 ft",
///     ...             "99.22 ft",
///     ...             "99.19 ft",
///     ...             "99.25 ft",
///     ...         ],
///     ...     },
///     ... )
///     >>> round(answer.area_ft2, 4)
///     120.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (outline, columns, rows, elevations, *, instrument=None, texture=None, beyond_allowed=None, steps=None, units=crate::units::Units(None)), text_signature = "(outline, columns, rows, elevations, *, instrument=None, texture=None, beyond_allowed=None, steps=None, units=None)")]
fn survey_from_grid(
    py: Python<'_>,
    outline: &Bound<'_, PyAny>,
    columns: &Bound<'_, PyAny>,
    rows: &Bound<'_, PyAny>,
    elevations: &Bound<'_, PyAny>,
    instrument: Option<&Bound<'_, PyAny>>,
    texture: Option<&Bound<'_, PyAny>>,
    beyond_allowed: Option<&Bound<'_, PyAny>>,
    steps: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &SURVEY_FROM_GRID, &[Some(outline), Some(columns), Some(rows), Some(elevations), instrument, texture, beyond_allowed, steps], units)
}


static SURVEY_FROM_RODS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "survey_from_rods"),
    class: "Survey",
    answer: crate::answers::record,
};

/// The surface of the old slab through a grid of rod readings from one set-up.
///
/// Rule: elevation = benchmark + backsight - rod.
/// Takes for granted: one set-up; the slab is plane over each triangle.
///
/// Args:
///     outline: the plan edge of the work; an Outline
///     columns: the grid columns from the left wall; a table of at least 1 row, each a grid column,
///         with the columns
///         x: distance from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
///             least -100000 m, at most 100000 m)
///     rows: the grid rows from the front wall; a table of at least 1 row, each a grid row, with the
///         columns
///         y: distance from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft
///             (at least -100000 m, at most 100000 m)
///     rods: the readings, row by row; a table of at least 1 row, each the reading on a grid place, row
///         by row, with the columns
///         rod: reading; empty where not shot [ft | m]; at least 0 ft, at most 32.8083989501 ft (at
///             least 0 m, at most 10 m); may be left out
///     benchmark: elevation of the benchmark [ft | m]; at least -3280.83989501 ft, at most
///         32808.3989501 ft (at least -1000 m, at most 10000 m)
///     backsight: rod on the benchmark [ft | m]; at least 0 ft, at most 32.8083989501 ft (at least 0 m,
///         at most 10 m)
///     instrument: what the readings were taken with; one of "laser", "optical_hundredths",
///         "optical_eighths", "optical_sixteenths", "optical_millimetres", "string", "water"; where it
///         is not given laser is taken: most crews have one
///     texture: what the old floor feels like; one of "trowelled", "broomed", "scaled", "rough"; where
///         it is not given broomed is taken: most old slabs are
///     beyond_allowed: whether the work may reach more than 4 ft beyond the shots; one of "no", "yes";
///         where it is not given no is taken: heights that far out are a guess
///     steps: whether a row or column given twice, one after the other, is the two sides of a step; one
///         of "no", "yes"; where it is not given no is taken: a distance written twice is more often a
///         slip
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Survey: The surveyed old slab: outline, shots and the surface through them. It has notes, basis
///         and taken besides.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
///         quantity (UNIT_WRONG)
///     FormError: lists that belong together differ in length (LENGTH_MISMATCH)
///
/// Basis:
///     height of instrument = elevation + backsight; elevation = height of instrument - sight:
///         Surveying textbooks, differential levelling (any), height of instrument
///     plane and solid geometry: derived
///     reading and texture deviations behind the site words: common practice, no source
///
/// Example:
///     >>> from overslab.survey import survey_from_rods
///     >>> answer = survey_from_rods(
///     ...     outline={
///     ...         "sides": [
///     ...             {"length": "12 ft"},
///     ...             {"length": "10 ft"},
///     ...             {"length": "12 ft"},
///     ...             {"length": "10 ft"},
///     ...         ],
///     ...     },
///     ...     columns={"x": ["1 ft", "6 ft", "11 ft"]},
///     ...     rows={"y": ["1 ft", "9 ft"]},
///     ...     rods={
///     ...         "rod": [
///     ...             "5' 0 5/8\"",
///     ...             "5' 0 1/2\"",
///     ...             "5' 0 3/8\"",
///     ...             "4' 11 7/8\"",
///     ...             "5' 0\"",
///     ...             "4' 11 7/8\"",
///     ...         ],
///     ...     },
///     ...     benchmark="100 ft",
///     ...     backsight="4' 2 1/2\"",
///     ... )
///     >>> round(answer.area_ft2, 4)
///     120.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (outline, columns, rows, rods, benchmark, backsight, *, instrument=None, texture=None, beyond_allowed=None, steps=None, units=crate::units::Units(None)), text_signature = "(outline, columns, rows, rods, benchmark, backsight, *, instrument=None, texture=None, beyond_allowed=None, steps=None, units=None)")]
fn survey_from_rods(
    py: Python<'_>,
    outline: &Bound<'_, PyAny>,
    columns: &Bound<'_, PyAny>,
    rows: &Bound<'_, PyAny>,
    rods: &Bound<'_, PyAny>,
    benchmark: &Bound<'_, PyAny>,
    backsight: &Bound<'_, PyAny>,
    instrument: Option<&Bound<'_, PyAny>>,
    texture: Option<&Bound<'_, PyAny>>,
    beyond_allowed: Option<&Bound<'_, PyAny>>,
    steps: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &SURVEY_FROM_RODS, &[Some(outline), Some(columns), Some(rows), Some(rods), Some(benchmark), Some(backsight), instrument, texture, beyond_allowed, steps], units)
}


static SURVEY_TRIANGLES: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "survey_triangles"),
    class: "SurveyTriangles",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SurveyTriangles))?.into_any()),
};

/// The triangles of the old slab, which tile the work exactly: what every volume is the sum of.
///
/// Rule: Delaunay triangles of the shots, those on one circle as a fan from their mean, cut at the
///     outline.
/// Takes for granted: the slab is plane over each triangle.
///
/// Args:
///     survey: the old slab; a Survey
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     SurveyTriangles, with the attributes
///         triangles: the triangles, a table of triangles
///     and notes, basis and taken.
///
/// Raises:
///     FormError: the value is of another kind than the port takes (KIND_MISMATCH); the list is empty
///         (EMPTY_LIST)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.survey import survey_triangles
///     >>> answer = survey_triangles(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"length": "12 ft"},
///     ...                 {"length": "10 ft"},
///     ...                 {"length": "12 ft"},
///     ...                 {"length": "10 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "11 ft"],
///     ...             "rows": ["1 ft", "9 ft"],
///     ...             "elevations": ["99.20 ft", "99.15 ft", "99.22 ft", "99.25 ft"],
///     ...         },
///     ...     },
///     ... )
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, *, units=crate::units::Units(None)), text_signature = "(survey, *, units=None)")]
fn survey_triangles(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &SURVEY_TRIANGLES, &[Some(survey)], units)
}

/// What `survey_triangles` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.survey")]
pub(crate) struct SurveyTriangles;

#[pymethods]
impl SurveyTriangles {
    /// The triangles, a table of triangles.
    #[getter]
    fn get_triangles<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
}

static SURVEY_SUSPECTS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "survey_suspects"),
    class: "SurveySuspects",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SurveySuspects))?.into_any()),
};

/// The shots that do not go with their neighbours, with the slip each looks like; nothing is changed. On a thousand invented books with one planted slip every one of 6 in or more is found and its kind named, an inch in nine of ten; three of ten books without a slip name some shot.
///
/// Rule: off = booked - best linear prediction from the other shots; a suspect where a slip of 1 in is
///     five times likelier than chance.
/// Takes for granted: the slab is a plane with waves that reach 10 ft; readings and texture are normal
///     but for slips.
///
/// Args:
///     survey: the old slab; a Survey
///     rod: how the rod is graduated; without it the readings tell; one of "inches", "tenths",
///         "metric", "unknown"; may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     SurveySuspects, with the attributes
///         suspects: the suspects, the farthest off first, a table of suspects
///         judged: how many shots were judged
///         roughness_in, roughness_mm: standard deviation that each shot has for itself: reading,
///             texture and small waves [in | mm]
///         graduation: how the rod is graduated: inches, tenths, metric, unknown
///     and notes, basis and taken.
///
/// Raises:
///     FormError: the value is of another kind than the port takes (KIND_MISMATCH); the word is not one
///         of the choices (WORD_UNKNOWN); the list is empty (EMPTY_LIST)
///
/// Basis:
///     each shot predicted from the others, its difference held against a robust scale: Statistics
///         textbooks, leave-one-out prediction (any), kriging, from memory: confirm
///     readings are booked an inch, 6, 10, 12 in, a tenth, half a foot, 5 cm, 10 cm or a metre off:
///         common practice, no source
///     reading and texture deviations behind the site words: common practice, no source
///
/// Example:
///     >>> from overslab.survey import survey_suspects
///     >>> answer = survey_suspects(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"length": "24 ft"},
///     ...                 {"length": "24 ft"},
///     ...                 {"length": "24 ft"},
///     ...                 {"length": "24 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "8 ft", "16 ft", "23 ft"],
///     ...             "rows": ["1 ft", "8 ft", "16 ft", "23 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.18 ft",
///     ...                 "99.19 ft",
///     ...                 "99.17 ft",
///     ...                 "99.24 ft",
///     ...                 "99.22 ft",
///     ...                 "99.73 ft",
///     ...                 "99.23 ft",
///     ...                 "99.29 ft",
///     ...                 "99.28 ft",
///     ...                 "99.26 ft",
///     ...                 "99.27 ft",
///     ...                 "99.33 ft",
///     ...                 "99.31 ft",
///     ...                 "99.32 ft",
///     ...                 "99.30 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ... )
///     >>> answer.judged
///     16
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, *, rod=None, units=crate::units::Units(None)), text_signature = "(survey, *, rod=None, units=None)")]
fn survey_suspects(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    rod: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &SURVEY_SUSPECTS, &[Some(survey), rod], units)
}

/// What `survey_suspects` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.survey")]
pub(crate) struct SurveySuspects;

#[pymethods]
impl SurveySuspects {
    /// The suspects, the farthest off first, a table of suspects.
    #[getter]
    fn get_suspects<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// How many shots were judged.
    #[getter]
    fn get_judged<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Standard deviation that each shot has for itself: reading, texture and small waves [in].
    #[getter]
    fn get_roughness_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Standard deviation that each shot has for itself: reading, texture and small waves [mm].
    #[getter]
    fn get_roughness_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// How the rod is graduated: inches, tenths, metric, unknown.
    #[getter]
    fn get_graduation<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
}

static SURVEY_WITHOUT: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "survey_without"),
    class: "Survey",
    answer: crate::answers::record,
};

/// The old slab without the shots named; the others keep their names.
///
/// Rule: the surface through the shots that are left.
/// Takes for granted: the caller knows why.
///
/// Args:
///     survey: the old slab; a Survey
///     leave_out: the shots to leave out; a table of at least 1 row, each a shot to leave out, with the
///         columns
///         name: its name; a text
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Survey: The surveyed old slab: outline, shots and the surface through them. It has notes, basis
///         and taken besides.
///
/// Raises:
///     SurveyError: no shot of the survey has this name (SHOT_UNKNOWN); too few shots for a surface
///         (TOO_FEW_SHOTS); all shots lie on one line (COLLINEAR_SHOTS)
///     FormError: the list is empty (EMPTY_LIST)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.survey import survey_without
///     >>> answer = survey_without(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"length": "12 ft"},
///     ...                 {"length": "10 ft"},
///     ...                 {"length": "12 ft"},
///     ...                 {"length": "10 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "6 ft", "11 ft"],
///     ...             "rows": ["1 ft", "9 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.68 ft",
///     ...                 "99.15 ft",
///     ...                 "99.22 ft",
///     ...                 "99.19 ft",
///     ...                 "99.25 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     leave_out={"name": ["A2"]},
///     ... )
///     >>> round(answer.area_ft2, 4)
///     120.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, leave_out, *, units=crate::units::Units(None)), text_signature = "(survey, leave_out, *, units=None)")]
fn survey_without(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    leave_out: &Bound<'_, PyAny>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &SURVEY_WITHOUT, &[Some(survey), Some(leave_out)], units)
}


static SURVEY_COVERAGE: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "survey_coverage"),
    class: "SurveyCoverage",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SurveyCoverage))?.into_any()),
};

/// How much of the work lies too far from any shot, and where the next shots belong.
///
/// Rule: uncovered = area of the work outside all circles about the shots; next = the middle of the
///     largest circle without a shot.
/// Takes for granted: straight distances, through walls and holes.
///
/// Args:
///     survey: the old slab; a Survey
///     near: how near a shot should be to every place [ft | m]; at least 0.0416666666667 ft, at most
///         328.083989501 ft (at least 0.0127 m, at most 100 m); where it is not given 6 ft is taken: a
///         grid of 8 ft leaves no place farther, common practice, no source
///     most: how many places for more shots to tell; a whole number from 0 to 500; where it is not
///         given 12 is taken: an hour's work
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     SurveyCoverage, with the attributes
///         area_ft2, area_m2: area of the work [ft2 | m2]
///         uncovered_ft2, uncovered_m2: area farther than that from every shot [ft2 | m2]
///         share_percent: its share of the work [%]
///         beyond_ft2, beyond_m2: area beyond the last shots [ft2 | m2]
///         unsurveyed_ft2, unsurveyed_m2: area in triangles that leave the outline [ft2 | m2]
///         farthest_ft, farthest_m: the farthest any place is from a shot [ft | m]
///         farthest_x_ft, farthest_x_m: where it is, from the left [ft | m]
///         farthest_y_ft, farthest_y_m: where it is, from the front [ft | m]
///         next: where the next shots belong, until every place is near enough, a table of next
///     and notes, basis and taken.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
///         quantity (UNIT_WRONG)
///     FormError: the value is of another kind than the port takes (KIND_MISMATCH)
///
/// Basis:
///     plane and solid geometry: derived
///     no place of the floor farther than 6 ft from a shot, as on a grid of 8 ft: common practice, no
///         source
///
/// Example:
///     >>> from overslab.survey import survey_coverage
///     >>> answer = survey_coverage(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"length": "20 ft"},
///     ...                 {"length": "30 ft"},
///     ...                 {"length": "20 ft"},
///     ...                 {"length": "30 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["1 ft", "19 ft"],
///     ...             "rows": ["1 ft", "29 ft"],
///     ...             "elevations": ["99.20 ft", "99.15 ft", "99.22 ft", "99.25 ft"],
///     ...         },
///     ...     },
///     ... )
///     >>> round(answer.area_ft2, 4)
///     600.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, *, near=None, most=None, units=crate::units::Units(None)), text_signature = "(survey, *, near=None, most=None, units=None)")]
fn survey_coverage(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    near: Option<&Bound<'_, PyAny>>,
    most: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &SURVEY_COVERAGE, &[Some(survey), near, most], units)
}

/// What `survey_coverage` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.survey")]
pub(crate) struct SurveyCoverage;

#[pymethods]
impl SurveyCoverage {
    /// Area of the work [ft2].
    #[getter]
    fn get_area_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Area of the work [m2].
    #[getter]
    fn get_area_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Area farther than that from every shot [ft2].
    #[getter]
    fn get_uncovered_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Area farther than that from every shot [m2].
    #[getter]
    fn get_uncovered_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Its share of the work [%].
    #[getter]
    fn get_share_percent<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Area beyond the last shots [ft2].
    #[getter]
    fn get_beyond_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Area beyond the last shots [m2].
    #[getter]
    fn get_beyond_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// Area in triangles that leave the outline [ft2].
    #[getter]
    fn get_unsurveyed_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Area in triangles that leave the outline [m2].
    #[getter]
    fn get_unsurveyed_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Si)
    }
    /// The farthest any place is from a shot [ft].
    #[getter]
    fn get_farthest_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// The farthest any place is from a shot [m].
    #[getter]
    fn get_farthest_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Si)
    }
    /// Where it is, from the left [ft].
    #[getter]
    fn get_farthest_x_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// Where it is, from the left [m].
    #[getter]
    fn get_farthest_x_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Si)
    }
    /// Where it is, from the front [ft].
    #[getter]
    fn get_farthest_y_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Us)
    }
    /// Where it is, from the front [m].
    #[getter]
    fn get_farthest_y_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Si)
    }
    /// Where the next shots belong, until every place is near enough, a table of next.
    #[getter]
    fn get_next<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Us)
    }
}

static TWO_PEG_TEST: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "two_peg_test"),
    class: "TwoPegTest",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(TwoPegTest))?.into_any()),
};

/// Whether the line of sight of a level or laser is level, from readings on two pegs.
///
/// Rule: rise = middle_a - middle_b; tilt = ((end_a - end_b) - rise) / (distance_a - distance_b); right
///     = reading - tilt distance.
/// Takes for granted: the first set-up half way between the pegs; curvature and refraction left out.
///
/// Args:
///     middle_a: rod on peg A from half way between the pegs [ft | m]; at least 0 ft, at most
///         32.8083989501 ft (at least 0 m, at most 10 m)
///     middle_b: rod on peg B from there [ft | m]; at least 0 ft, at most 32.8083989501 ft (at least 0
///         m, at most 10 m)
///     end_a: rod on peg A from near one peg [ft | m]; at least 0 ft, at most 32.8083989501 ft (at
///         least 0 m, at most 10 m)
///     end_b: rod on peg B from there [ft | m]; at least 0 ft, at most 32.8083989501 ft (at least 0 m,
///         at most 10 m)
///     distance_a: from the instrument to peg A in the second set-up [ft | m]; at least 0 ft, at most
///         3280.83989501 ft (at least 0 m, at most 1000 m)
///     distance_b: from the instrument to peg B in the second set-up [ft | m]; at least 0 ft, at most
///         3280.83989501 ft (at least 0 m, at most 1000 m)
///     limit: the tilt allowed [in/ft | mm/m]; at least 0 in/ft, at most 1.2 in/ft (at least 0 mm/m, at
///         most 100 mm/m); where it is not given 0.00125 in/ft is taken: 1/16 in per 50 ft, common
///         practice, no source
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     TwoPegTest, with the attributes
///         rise_ft, rise_m: how much higher peg B stands than peg A [ft | m]
///         tilt_in_per_ft, tilt_mm_per_m: rise of the line of sight over the distance [in/ft | mm/m]
///         right_a_ft, right_a_m: what the second set-up should read on peg A [ft | m]
///         right_b_ft, right_b_m: what it should read on peg B [ft | m]
///         off_in, off_mm: how much too high it reads on the farther peg [in | mm]
///         passes: whether the tilt is within what is allowed: no, yes
///         good_for_ft, good_for_m: difference of sights to benchmark and shot that the tilt turns into
///             1/8 in [ft | m]
///     and notes, basis and taken.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
///         quantity (UNIT_WRONG)
///
/// Basis:
///     from half way between two pegs the difference of the readings is free of the tilt of the line of
///         sight: Surveying textbooks, two-peg test (any), collimation
///     the line of sight may tilt by 1/16 in per 50 ft: common practice, no source
///
/// Example:
///     >>> from overslab.survey import two_peg_test
///     >>> answer = two_peg_test(
///     ...     middle_a="4.52 ft",
///     ...     middle_b="5.17 ft",
///     ...     end_a="4.86 ft",
///     ...     end_b="5.49 ft",
///     ...     distance_a="10 ft",
///     ...     distance_b="110 ft",
///     ... )
///     >>> round(answer.rise_ft, 4)
///     -0.65
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (middle_a, middle_b, end_a, end_b, distance_a, distance_b, *, limit=None, units=crate::units::Units(None)), text_signature = "(middle_a, middle_b, end_a, end_b, distance_a, distance_b, *, limit=None, units=None)")]
fn two_peg_test(
    py: Python<'_>,
    middle_a: &Bound<'_, PyAny>,
    middle_b: &Bound<'_, PyAny>,
    end_a: &Bound<'_, PyAny>,
    end_b: &Bound<'_, PyAny>,
    distance_a: &Bound<'_, PyAny>,
    distance_b: &Bound<'_, PyAny>,
    limit: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &TWO_PEG_TEST, &[Some(middle_a), Some(middle_b), Some(end_a), Some(end_b), Some(distance_a), Some(distance_b), limit], units)
}

/// What `two_peg_test` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.survey")]
pub(crate) struct TwoPegTest;

#[pymethods]
impl TwoPegTest {
    /// How much higher peg B stands than peg A [ft].
    #[getter]
    fn get_rise_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// How much higher peg B stands than peg A [m].
    #[getter]
    fn get_rise_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Rise of the line of sight over the distance [in/ft].
    #[getter]
    fn get_tilt_in_per_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Rise of the line of sight over the distance [mm/m].
    #[getter]
    fn get_tilt_mm_per_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// What the second set-up should read on peg A [ft].
    #[getter]
    fn get_right_a_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// What the second set-up should read on peg A [m].
    #[getter]
    fn get_right_a_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// What it should read on peg B [ft].
    #[getter]
    fn get_right_b_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// What it should read on peg B [m].
    #[getter]
    fn get_right_b_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// How much too high it reads on the farther peg [in].
    #[getter]
    fn get_off_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// How much too high it reads on the farther peg [mm].
    #[getter]
    fn get_off_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Si)
    }
    /// Whether the tilt is within what is allowed: no, yes.
    #[getter]
    fn get_passes<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// Difference of sights to benchmark and shot that the tilt turns into 1/8 in [ft].
    #[getter]
    fn get_good_for_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// Difference of sights to benchmark and shot that the tilt turns into 1/8 in [m].
    #[getter]
    fn get_good_for_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Si)
    }
}

static BENCHMARK_RECHECK: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "benchmark_recheck"),
    class: "BenchmarkRecheck",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(BenchmarkRecheck))?.into_any()),
};

/// The benchmark read again later: how far off, and what that does to the readings between, or to marks set out by the first.
///
/// Rule: difference = again - first; correction = difference x time / time_again, or k / (n + 1) of it
///     for shot k of n.
/// Takes for granted: the line of sight moved evenly; a set-up of a level book that closes shares half
///     out to all its sights instead.
///
/// Args:
///     first: rod on the benchmark before [ft | m]; at least 0 ft, at most 32.8083989501 ft (at least 0
///         m, at most 10 m)
///     again: rod on the benchmark after; add the difference to every rod mark [ft | m]; at least 0 ft,
///         at most 32.8083989501 ft (at least 0 m, at most 10 m)
///     shots: the readings between; a table of at least 0 rows, each a reading between the two on the
///         benchmark, in the order read, with the columns; may be left out
///         rod: the reading [ft | m]; at least 0 ft, at most 32.8083989501 ft (at least 0 m, at most 10
///             m)
///         time: when, from the first reading of the benchmark [min]; at least 0 min; may be left out
///     time_again: when the benchmark was read again [min]; at least 0 min; may be left out
///     tolerance: how far the two may be off [in | mm]; at least 0 in (at least 0 mm); where it is not
///         given 1/8 in is taken: one set-up closes within 1/8 in, common practice, no source
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     BenchmarkRecheck, with the attributes
///         difference_in, difference_mm: again less first [in | mm]
///         follows: what follows: agrees, shared_out, shoot_again
///         shared_out: the readings with their shares; none where it is off by too much, a table of
///             shared_out
///         said: the same in a sentence
///     and notes, basis and taken.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); an empty cell or a blank where a
///         value is wanted (EMPTY_CELL)
///     FormError: a required value is missing (KEY_MISSING)
///
/// Basis:
///     height of instrument = elevation + backsight; elevation = height of instrument - sight:
///         Surveying textbooks, differential levelling (any), height of instrument
///     one set-up closes within 1/8 in, several within 1/4 in: common practice, no source
///
/// Example:
///     >>> from overslab.survey import benchmark_recheck
///     >>> answer = benchmark_recheck(
///     ...     first="4' 2 1/2\"",
///     ...     again="4' 2 5/8\"",
///     ...     shots={"rod": ["5' 0 5/8\"", "5' 0 1/2\"", "4' 11 7/8\""]},
///     ... )
///     >>> round(answer.difference_in, 4)
///     0.125
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (first, again, *, shots=None, time_again=None, tolerance=None, units=crate::units::Units(None)), text_signature = "(first, again, *, shots=None, time_again=None, tolerance=None, units=None)")]
fn benchmark_recheck(
    py: Python<'_>,
    first: &Bound<'_, PyAny>,
    again: &Bound<'_, PyAny>,
    shots: Option<&Bound<'_, PyAny>>,
    time_again: Option<&Bound<'_, PyAny>>,
    tolerance: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &BENCHMARK_RECHECK, &[Some(first), Some(again), shots, time_again, tolerance], units)
}

/// What `benchmark_recheck` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.survey")]
pub(crate) struct BenchmarkRecheck;

#[pymethods]
impl BenchmarkRecheck {
    /// Again less first [in].
    #[getter]
    fn get_difference_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Again less first [mm].
    #[getter]
    fn get_difference_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// What follows: agrees, shared_out, shoot_again.
    #[getter]
    fn get_follows<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// The readings with their shares; none where it is off by too much, a table of shared_out.
    #[getter]
    fn get_shared_out<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// The same in a sentence.
    #[getter]
    fn get_said<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
}

static POINTS_FROM_TABLE: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "points_from_table"),
    class: "Points",
    answer: crate::answers::record,
};

/// Points with heights from a table, in any axes: to be thinned, moved or made into the surface of the old slab.
///
/// Rule: none: the points as they are given.
/// Takes for granted: nothing.
///
/// Args:
///     points: the points; a table of at least 1 row, each a point, with the columns
///         x: along the first plan axis [ft | m]; at least -3280839895.01 ft, at most 3280839895.01 ft
///             (at least -1000000000 m, at most 1000000000 m)
///         y: along the second, a quarter turn to the left of it [ft | m]; at least -3280839895.01 ft,
///             at most 3280839895.01 ft (at least -1000000000 m, at most 1000000000 m)
///         elevation: height [ft | m]; at least -3280839895.01 ft, at most 3280839895.01 ft (at least
///             -1000000000 m, at most 1000000000 m)
///         name: its name; a text; may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Points: Points with heights, in the axes of where they came from: of a file, a scan or a total
///         station. It has notes, basis and taken besides.
///
/// Raises:
///     FormError: the list is empty (EMPTY_LIST); a required value is missing (KEY_MISSING); lists that
///         belong together differ in length (LENGTH_MISMATCH)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Example:
///     >>> from overslab.survey import points_from_table
///     >>> answer = points_from_table(
///     ...     points={
///     ...         "x": ["1 ft", "11 ft", "11 ft", "1 ft", "5 ft"],
///     ...         "y": ["1 ft", "1 ft", "9 ft", "9 ft", "4 ft"],
///     ...         "elevation": ["99.20 ft", "99.15 ft", "99.25 ft", "99.22 ft", "99.16 ft"],
///     ...         "name": ["A", "B", "C", "D", None],
///     ...     },
///     ... )
///     >>> answer.point_count
///     5
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (points, *, units=crate::units::Units(None)), text_signature = "(points, *, units=None)")]
fn points_from_table(
    py: Python<'_>,
    points: &Bound<'_, PyAny>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &POINTS_FROM_TABLE, &[Some(points)], units)
}


static READ_POINTS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "read_points"),
    class: "ReadPoints",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ReadPoints))?.into_any()),
};

/// Points out of the bytes of a file: CSV, XYZ, PLY, LAS or LAZ, E57, LandXML.
///
/// Rule: none: the coordinates of the file, in metres by its unit.
/// Takes for granted: nothing: what the file does not say must be given, and a file that is cut short
///     is refused.
///
/// Args:
///     file: the bytes of the file; bytes, or a text: its UTF-8, or base64: and the bytes in base64
///     format: what the file is; found from its first bytes where left out; one of "csv", "xyz", "ply",
///         "las", "e57", "landxml"; may be left out
///     unit: the unit of its numbers, for a file that does not say it; one of "m", "cm", "mm", "ft",
///         "us_survey_ft", "in", "yd"; may be left out
///     overrule: whether the unit given holds even where the file says another; one of "no", "yes";
///         where it is not given no is taken: a file mostly knows its unit
///     columns: what stands in each column of a table, in place of its header: point, y [ft], x [ft],
///         elevation [in], skip; a text; may be left out
///     height_of_instrument: height of the line of sight, for a column of rods [ft | m]; at least
///         -32808.3989501 ft, at most 32808.3989501 ft (at least -10000 m, at most 10000 m); may be
///         left out
///     ground_only: whether only points that the file classes as ground are used; one of "no", "yes";
///         where it is not given no is taken: few scans are classed
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     ReadPoints, with the attributes
///         points: the points
///         format: what the file is: csv, xyz, ply, las, e57, landxml
///         unit: the unit of its numbers, where all have one: m, cm, mm, ft, us_survey_ft, in, yd
///         left_out: points of the file that were not used, a table of left_out
///     and notes, basis and taken.
///
/// Raises:
///     FormError: the format of the file is not known (FORMAT_UNKNOWN); a column that is needed is not
///         there (COLUMN_MISSING); two values say the same thing differently (CONTRADICTION); the word
///         is not one of the choices (WORD_UNKNOWN); the file breaks the rules of its format
///         (FILE_BROKEN); a required value is missing (KEY_MISSING)
///     QuantityError: a number stands without its unit (UNIT_MISSING)
///
/// Example:
///     >>> from overslab.survey import read_points
///     >>> answer = read_points(
///     ...     file="point,x [ft],y [ft],elevation [ft]\nA,1,1,99.20\nB,11,1,99.15\nC,11,9,99.25\nD,1,9,99.22\n",
///     ... )
///     >>> answer.format
///     'csv'
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (file, *, format=None, unit=None, overrule=None, columns=None, height_of_instrument=None, ground_only=None, units=crate::units::Units(None)), text_signature = "(file, *, format=None, unit=None, overrule=None, columns=None, height_of_instrument=None, ground_only=None, units=None)")]
fn read_points(
    py: Python<'_>,
    file: &Bound<'_, PyAny>,
    format: Option<&Bound<'_, PyAny>>,
    unit: Option<&Bound<'_, PyAny>>,
    overrule: Option<&Bound<'_, PyAny>>,
    columns: Option<&Bound<'_, PyAny>>,
    height_of_instrument: Option<&Bound<'_, PyAny>>,
    ground_only: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &READ_POINTS, &[Some(file), format, unit, overrule, columns, height_of_instrument, ground_only], units)
}

/// What `read_points` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.survey")]
pub(crate) struct ReadPoints;

#[pymethods]
impl ReadPoints {
    /// The points.
    #[getter]
    fn get_points<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// What the file is: csv, xyz, ply, las, e57, landxml.
    #[getter]
    fn get_format<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// The unit of its numbers, where all have one: m, cm, mm, ft, us_survey_ft, in, yd.
    #[getter]
    fn get_unit<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Points of the file that were not used, a table of left_out.
    #[getter]
    fn get_left_out<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
}

static READ_SURFACE: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "read_surface"),
    class: "ReadSurface",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ReadSurface))?.into_any()),
};

/// A triangulated surface out of the bytes of a file, with the faces that it has there: LandXML, PLY.
///
/// Rule: none: the points and faces of the file, in metres by its unit.
/// Takes for granted: nothing: what the file does not say must be given, and a file that is cut short
///     is refused.
///
/// Args:
///     file: the bytes of the file; bytes, or a text: its UTF-8, or base64: and the bytes in base64
///     format: what the file is; found from its first bytes where left out; one of "csv", "xyz", "ply",
///         "las", "e57", "landxml"; may be left out
///     unit: the unit of its numbers, for a file that does not say it; one of "m", "cm", "mm", "ft",
///         "us_survey_ft", "in", "yd"; may be left out
///     overrule: whether the unit given holds even where the file says another; one of "no", "yes";
///         where it is not given no is taken: a file mostly knows its unit
///     surface: its name, for a file with several; a text; may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     ReadSurface, with the attributes
///         tin: the surface
///         format: what the file is: csv, xyz, ply, las, e57, landxml
///         unit: the unit of its numbers, where all have one: m, cm, mm, ft, us_survey_ft, in, yd
///         left_out: points of the file that were not used, a table of left_out
///     and notes, basis and taken.
///
/// Raises:
///     SurveyError: the file does not hold exactly one surface of that name (SURFACE_UNCLEAR)
///     FormError: the file ends before what it states is there (FILE_SHORT)
///     QuantityError: a number stands without its unit (UNIT_MISSING)
///
/// Example:
///     >>> from overslab.survey import read_surface
///     >>> answer = read_surface(
///     ...     file="ply\nformat ascii 1.0\nelement vertex 4\nproperty float x\nproperty float y\nproperty float z\nelement face 2\nproperty list uchar int vertex_indices\nend_header\n1 1 30.2\n5 1 30.1\n5 4 30.2\n1 4 30.2\n3 0 1 2\n3 0 2 3\n",
///     ...     unit="m",
///     ... )
///     >>> answer.format
///     'ply'
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (file, *, format=None, unit=None, overrule=None, surface=None, units=crate::units::Units(None)), text_signature = "(file, *, format=None, unit=None, overrule=None, surface=None, units=None)")]
fn read_surface(
    py: Python<'_>,
    file: &Bound<'_, PyAny>,
    format: Option<&Bound<'_, PyAny>>,
    unit: Option<&Bound<'_, PyAny>>,
    overrule: Option<&Bound<'_, PyAny>>,
    surface: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &READ_SURFACE, &[Some(file), format, unit, overrule, surface], units)
}

/// What `read_surface` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.survey")]
pub(crate) struct ReadSurface;

#[pymethods]
impl ReadSurface {
    /// The surface.
    #[getter]
    fn get_tin<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// What the file is: csv, xyz, ply, las, e57, landxml.
    #[getter]
    fn get_format<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// The unit of its numbers, where all have one: m, cm, mm, ft, us_survey_ft, in, yd.
    #[getter]
    fn get_unit<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Points of the file that were not used, a table of left_out.
    #[getter]
    fn get_left_out<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
}

static POINTS_TO_AXES: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "points_to_axes"),
    class: "PointsToAxes",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(PointsToAxes))?.into_any()),
};

/// Points brought into the axes of the job by two known points or more: turned, shifted and raised, never stretched.
///
/// Rule: x' = tx + x cos a - y sin a, y' = ty + x sin a + y cos a, by least squares over the known
///     points; z' = z + mean rise, or + a plane.
/// Takes for granted: both systems have one unit, and y a quarter turn counter-clockwise from x; a
///     mirror and a unit slip are refused by name.
///
/// Args:
///     points: the points; a Points
///     known: the points known in both systems; a table of at least 1 row, each a point known in both
///         systems of axes, with the columns
///         name: its name; a text; may be left out
///         x: along the first axis, as the points come [ft | m]; at least -3280839895.01 ft, at most
///             3280839895.01 ft (at least -1000000000 m, at most 1000000000 m)
///         y: along the second, as the points come [ft | m]; at least -3280839895.01 ft, at most
///             3280839895.01 ft (at least -1000000000 m, at most 1000000000 m)
///         job_x: along the first axis of the job [ft | m]; at least -3280839895.01 ft, at most
///             3280839895.01 ft (at least -1000000000 m, at most 1000000000 m)
///         job_y: along the second axis of the job [ft | m]; at least -3280839895.01 ft, at most
///             3280839895.01 ft (at least -1000000000 m, at most 1000000000 m)
///         elevation: height, as the points come [ft | m]; at least -3280839895.01 ft, at most
///             3280839895.01 ft (at least -1000000000 m, at most 1000000000 m); may be left out
///         job_elevation: height above the job datum [ft | m]; at least -3280839895.01 ft, at most
///             3280839895.01 ft (at least -1000000000 m, at most 1000000000 m); may be left out
///     tolerance: how far distances of two, places of more may be off [in | mm]; at least 0 in, at most
///         39.3700787402 in (at least 0 mm, at most 1000 mm); where it is not given 1/4 in is taken: a
///         nail is found again so well
///     height_tolerance: how far heights may be off [in | mm]; at least 0 in, at most 39.3700787402 in
///         (at least 0 mm, at most 1000 mm); where it is not given 1/8 in is taken: a rod is read so
///         well
///     levelling: whether heights rise alike or by a plane; one of "rise", "tilt"; where it is not
///         given rise is taken: most scanners level themselves
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     PointsToAxes, with the attributes
///         moved: the points in the axes of the job
///         turn_deg, turn_rad: how far they were turned, counter-clockwise [deg | rad]
///         rise_ft, rise_m: what was added to heights, where the old origin came to lie [ft | m]
///         tilt_x_in_per_ft, tilt_x_percent: how much more along the first axis of the job [in/ft | %]
///         tilt_y_in_per_ft, tilt_y_percent: how much more along the second [in/ft | %]
///         residuals: what is left over at the known points, a table of residuals
///     and notes, basis and taken.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///     SurveyError: the known points do not fix the axes (KNOWN_POINTS); the known points do not lie
///         alike in both systems of axes (AXES_DISAGREE); the known points lie alike only as in a
///         mirror (AXES_MIRRORED)
///     FormError: the word is not one of the choices (WORD_UNKNOWN)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.survey import points_to_axes
///     >>> answer = points_to_axes(
///     ...     points={
///     ...         "unit": "ft",
///     ...         "x": [1, 11, 11, 1],
///     ...         "y": [1, 1, 9, 9],
///     ...         "elevation": [0.2, 0.15, 0.25, 0.22],
///     ...     },
///     ...     known={
///     ...         "name": ["nail 1", "nail 2"],
///     ...         "x": ["0 ft", "20 ft"],
///     ...         "y": ["0 ft", "0 ft"],
///     ...         "job_x": ["40 ft", "40 ft"],
///     ...         "job_y": ["10 ft", "30 ft"],
///     ...         "elevation": ["0.5 ft", "0.6 ft"],
///     ...         "job_elevation": ["99.5 ft", "99.6 ft"],
///     ...     },
///     ... )
///     >>> round(answer.turn_deg, 4)
///     90.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (points, known, *, tolerance=None, height_tolerance=None, levelling=None, units=crate::units::Units(None)), text_signature = "(points, known, *, tolerance=None, height_tolerance=None, levelling=None, units=None)")]
fn points_to_axes(
    py: Python<'_>,
    points: &Bound<'_, PyAny>,
    known: &Bound<'_, PyAny>,
    tolerance: Option<&Bound<'_, PyAny>>,
    height_tolerance: Option<&Bound<'_, PyAny>>,
    levelling: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &POINTS_TO_AXES, &[Some(points), Some(known), tolerance, height_tolerance, levelling], units)
}

/// What `points_to_axes` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.survey")]
pub(crate) struct PointsToAxes;

#[pymethods]
impl PointsToAxes {
    /// The points in the axes of the job.
    #[getter]
    fn get_moved<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// How far they were turned, counter-clockwise [deg].
    #[getter]
    fn get_turn_deg<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// How far they were turned, counter-clockwise [rad].
    #[getter]
    fn get_turn_rad<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// What was added to heights, where the old origin came to lie [ft].
    #[getter]
    fn get_rise_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// What was added to heights, where the old origin came to lie [m].
    #[getter]
    fn get_rise_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// How much more along the first axis of the job [in/ft].
    #[getter]
    fn get_tilt_x_in_per_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// How much more along the first axis of the job [%].
    #[getter]
    fn get_tilt_x_percent<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// How much more along the second [in/ft].
    #[getter]
    fn get_tilt_y_in_per_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// How much more along the second [%].
    #[getter]
    fn get_tilt_y_percent<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Si)
    }
    /// What is left over at the known points, a table of residuals.
    #[getter]
    fn get_residuals<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
}

static POINTS_ALONG_WALL: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "points_along_wall"),
    class: "PointsAlongWall",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(PointsAlongWall))?.into_any()),
};

/// Points in axes along a wall: zero at one end of it, x along it, y to the left of it. Heights stay.
///
/// Rule: x' = (p - origin) . u, y' = u x (p - origin), u the unit vector from the origin toward the
///     other end.
/// Takes for granted: the work lies on the left when the wall is walked from the origin.
///
/// Args:
///     points: the points; a Points
///     origin_x: the end of the wall that becomes zero, along the first axis [ft | m]; at least
///         -3280839895.01 ft, at most 3280839895.01 ft (at least -1000000000 m, at most 1000000000 m)
///     origin_y: the same, along the second axis [ft | m]; at least -3280839895.01 ft, at most
///         3280839895.01 ft (at least -1000000000 m, at most 1000000000 m)
///     along_x: another place along the wall, along the first axis [ft | m]; at least -3280839895.01
///         ft, at most 3280839895.01 ft (at least -1000000000 m, at most 1000000000 m)
///     along_y: the same, along the second axis [ft | m]; at least -3280839895.01 ft, at most
///         3280839895.01 ft (at least -1000000000 m, at most 1000000000 m)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     PointsAlongWall, with the attributes
///         moved: the points in the new axes
///         turn_deg, turn_rad: how far they were turned, counter-clockwise [deg | rad]
///     and notes, basis and taken.
///
/// Raises:
///     SurveyError: the known points do not fix the axes (KNOWN_POINTS)
///     QuantityError: a number stands without its unit (UNIT_MISSING)
///     FormError: the value is of another kind than the port takes (KIND_MISMATCH)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.survey import points_along_wall
///     >>> answer = points_along_wall(
///     ...     points={
///     ...         "unit": "ft",
///     ...         "x": [1, 11, 11, 1],
///     ...         "y": [1, 1, 9, 9],
///     ...         "elevation": [99.2, 99.15, 99.25, 99.22],
///     ...     },
///     ...     origin_x="12 ft",
///     ...     origin_y="0 ft",
///     ...     along_x="12 ft",
///     ...     along_y="10 ft",
///     ... )
///     >>> round(answer.turn_deg, 4)
///     -90.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (points, origin_x, origin_y, along_x, along_y, *, units=crate::units::Units(None)), text_signature = "(points, origin_x, origin_y, along_x, along_y, *, units=None)")]
fn points_along_wall(
    py: Python<'_>,
    points: &Bound<'_, PyAny>,
    origin_x: &Bound<'_, PyAny>,
    origin_y: &Bound<'_, PyAny>,
    along_x: &Bound<'_, PyAny>,
    along_y: &Bound<'_, PyAny>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &POINTS_ALONG_WALL, &[Some(points), Some(origin_x), Some(origin_y), Some(along_x), Some(along_y)], units)
}

/// What `points_along_wall` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.survey")]
pub(crate) struct PointsAlongWall;

#[pymethods]
impl PointsAlongWall {
    /// The points in the new axes.
    #[getter]
    fn get_moved<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// How far they were turned, counter-clockwise [deg].
    #[getter]
    fn get_turn_deg<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// How far they were turned, counter-clockwise [rad].
    #[getter]
    fn get_turn_rad<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
}

static PART_STRAYS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "part_strays"),
    class: "PartStrays",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(PartStrays))?.into_any()),
};

/// The points of a scan that are floor, parted from walls, table legs, sawhorses, people, echoes below and points far away.
///
/// Rule: a point is stray when it is higher than the floor of its cell and those around it by more than
///     above, deeper by more than below, or has fewer than others within reach; floor: lowest agreed
///     heights of cells, things narrower than widest cut off.
/// Takes for granted: the floor is seen beside the things on it; a thing wider than widest, or lower
///     than above, is floor.
///
/// Args:
///     points: the points of the scan; a Points
///     above: higher than this over the floor is stray [in | mm]; more than 0 in, at most 393.700787402
///         in (more than 0 mm, at most 10000 mm); where it is not given 1 in is taken: a step of an
///         inch in an old slab is common
///     below: deeper than this under the floor is stray [in | mm]; more than 0 in, at most
///         393.700787402 in (more than 0 mm, at most 10000 mm); where it is not given 1 in is taken:
///         hollows of an old slab are wider than a cell and stay
///     widest: width of the widest thing that stands on the floor [ft | m]; more than 0 ft, at most
///         328.083989501 ft (more than 0 m, at most 100 m); where it is not given 6 ft is taken: few
///         things left in a cleared shop are wider
///     cell: width of the cells in which the floor is looked for [in | mm]; more than 0 in, at most
///         3937.00787402 in (more than 0 mm, at most 100000 mm); where it is not given 6 in is taken: a
///         scan has many points in each
///     steepest: the steepest that the floor is [in/ft | %]; at least 0 in/ft, at most 6 in/ft (at
///         least 0 %, at most 50 %); where it is not given 1/4 in/ft is taken: floors that drain seldom
///         fall more
///     reach: how near others must be [ft | m]; more than 0 ft, at most 328.083989501 ft (more than 0
///         m, at most 100 m); where it is not given 1 ft is taken: a scan has many points in a foot
///     others: how many others must be so near; a whole number from 0 to 1000; where it is not given 3
///         is taken: echoes come one by one
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     PartStrays, with the attributes
///         floor: the points kept
///         kept_count: how many were kept
///         above_count: how many stand above the floor
///         below_count: how many lie below it
///         alone_count: how many have too few others near them
///         strays: which points were taken out, and why, a table of strays
///     and notes, basis and taken.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); a number stands without its unit
///         (UNIT_MISSING)
///     FormError: the list is empty (EMPTY_LIST); the value is of another kind than the port takes
///         (KIND_MISMATCH)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.survey import part_strays
///     >>> answer = part_strays(
///     ...     points={
///     ...         "unit": "ft",
///     ...         "x": [1, 2, 3, 4, 1, 2, 3, 4, 2.5, 2.4],
///     ...         "y": [1, 1, 1, 1, 2, 2, 2, 2, 1.5, 1.6],
///     ...         "elevation": [99.2, 99.2, 99.19, 99.18, 99.21, 99.2, 99.2, 99.19, 101.7, 99.2],
///     ...     },
///     ...     cell="18 in",
///     ...     reach="2 ft",
///     ... )
///     >>> answer.kept_count
///     9
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (points, *, above=None, below=None, widest=None, cell=None, steepest=None, reach=None, others=None, units=crate::units::Units(None)), text_signature = "(points, *, above=None, below=None, widest=None, cell=None, steepest=None, reach=None, others=None, units=None)")]
fn part_strays(
    py: Python<'_>,
    points: &Bound<'_, PyAny>,
    above: Option<&Bound<'_, PyAny>>,
    below: Option<&Bound<'_, PyAny>>,
    widest: Option<&Bound<'_, PyAny>>,
    cell: Option<&Bound<'_, PyAny>>,
    steepest: Option<&Bound<'_, PyAny>>,
    reach: Option<&Bound<'_, PyAny>>,
    others: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &PART_STRAYS, &[Some(points), above, below, widest, cell, steepest, reach, others], units)
}

/// What `part_strays` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.survey")]
pub(crate) struct PartStrays;

#[pymethods]
impl PartStrays {
    /// The points kept.
    #[getter]
    fn get_floor<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// How many were kept.
    #[getter]
    fn get_kept_count<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// How many stand above the floor.
    #[getter]
    fn get_above_count<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// How many lie below it.
    #[getter]
    fn get_below_count<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// How many have too few others near them.
    #[getter]
    fn get_alone_count<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Which points were taken out, and why, a table of strays.
    #[getter]
    fn get_strays<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
}

static THIN_POINTS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "thin_points"),
    class: "ThinPoints",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ThinPoints))?.into_any()),
};

/// Fewer points that say the same: the surface of a survey through them stays within a height error of every point left out.
///
/// Rule: from the corners of the convex hull, the worst point of each triangle is taken in until the
///     error or the number holds.
/// Takes for granted: strays are taken out; of points within 1/2 in in plan one is enough; the survey
///     has the same outline, or that of the hull.
///
/// Args:
///     points: the points; a Points
///     within: the height error allowed: this or the count [in | mm]; at least 0 in, at most
///         393700.787402 in (at least 0 mm, at most 10000000 mm); may be left out
///     count: how many points to keep: this or the height error; a whole number from 3 to 4294967295;
///         may be left out
///     outline: the plan edge of the work; points more than 1/2 in outside it are left out; an Outline;
///         may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     ThinPoints, with the attributes
///         thinned: the points kept
///         kept_count: how many were kept
///         error_in, error_mm: greatest height between the surface through them and a point left out
///             [in | mm]
///         worst: the number of the point it is at
///         hull_count: how many of those kept are corners of the convex hull
///         outside_count: how many lie outside the outline
///         kept: which points were kept, a table of kept
///     and notes, basis and taken.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///     FormError: two values say the same thing differently (CONTRADICTION); a required value is
///         missing (KEY_MISSING)
///     SurveyError: fewer points are asked than the hull of the points has corners (THINNING_COUNT);
///         too few shots for a surface (TOO_FEW_SHOTS); all shots lie on one line (COLLINEAR_SHOTS);
///         points at one place differ by more than the height error asked (THINNING_UNREACHABLE)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.survey import thin_points
///     >>> answer = thin_points(
///     ...     points={
///     ...         "unit": "ft",
///     ...         "x": [1, 11, 11, 1, 5, 6, 3],
///     ...         "y": [1, 1, 9, 9, 4, 5, 7],
///     ...         "elevation": [99.2, 99.15, 99.25, 99.22, 99.16, 99.18, 99.21],
///     ...     },
///     ...     within="1/4 in",
///     ... )
///     >>> answer.kept_count
///     6
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (points, *, within=None, count=None, outline=None, units=crate::units::Units(None)), text_signature = "(points, *, within=None, count=None, outline=None, units=None)")]
fn thin_points(
    py: Python<'_>,
    points: &Bound<'_, PyAny>,
    within: Option<&Bound<'_, PyAny>>,
    count: Option<&Bound<'_, PyAny>>,
    outline: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &THIN_POINTS, &[Some(points), within, count, outline], units)
}

/// What `thin_points` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.survey")]
pub(crate) struct ThinPoints;

#[pymethods]
impl ThinPoints {
    /// The points kept.
    #[getter]
    fn get_thinned<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// How many were kept.
    #[getter]
    fn get_kept_count<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Greatest height between the surface through them and a point left out [in].
    #[getter]
    fn get_error_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Greatest height between the surface through them and a point left out [mm].
    #[getter]
    fn get_error_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// The number of the point it is at.
    #[getter]
    fn get_worst<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// How many of those kept are corners of the convex hull.
    #[getter]
    fn get_hull_count<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// How many lie outside the outline.
    #[getter]
    fn get_outside_count<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// Which points were kept, a table of kept.
    #[getter]
    fn get_kept<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
}

static SURVEY_FROM_POINTS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "survey_from_points"),
    class: "Survey",
    answer: crate::answers::record,
};

/// The surface of the old slab through points, each a shot: of a file, a scan or a table.
///
/// Rule: Delaunay triangles, each plane; shots on one circle are filled from their mean.
/// Takes for granted: the points are in the axes and the datum of the job; the slab is plane between
///     neighbouring points.
///
/// Args:
///     outline: the plan edge of the work; an Outline
///     points: the points; a Points
///     instrument: what the readings were taken with; one of "laser", "optical_hundredths",
///         "optical_eighths", "optical_sixteenths", "optical_millimetres", "string", "water"; where it
///         is not given laser is taken: most crews have one
///     texture: what the old floor feels like; one of "trowelled", "broomed", "scaled", "rough"; where
///         it is not given broomed is taken: most old slabs are
///     beyond_allowed: whether the work may reach more than 4 ft beyond the shots; one of "no", "yes";
///         where it is not given no is taken: heights that far out are a guess
///     outside: what becomes of points more than 6 in outside the outline; one of "refuse", "use",
///         "leave_out"; where it is not given refuse is taken: a point outside may be a slip
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Survey: The surveyed old slab: outline, shots and the surface through them. It has notes, basis
///         and taken besides.
///
/// Raises:
///     SurveyError: too few shots for a surface (TOO_FEW_SHOTS); a shot lies outside the outline
///         (SHOT_OUTSIDE)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); a number stands without its unit
///         (UNIT_MISSING)
///     FormError: the word is not one of the choices (WORD_UNKNOWN)
///
/// Basis:
///     plane and solid geometry: derived
///     reading and texture deviations behind the site words: common practice, no source
///
/// Example:
///     >>> from overslab.survey import survey_from_points
///     >>> answer = survey_from_points(
///     ...     outline={
///     ...         "sides": [
///     ...             {"length": "12 ft"},
///     ...             {"length": "10 ft"},
///     ...             {"length": "12 ft"},
///     ...             {"length": "10 ft"},
///     ...         ],
///     ...     },
///     ...     points={
///     ...         "unit": "ft",
///     ...         "x": [1, 11, 11, 1, 5],
///     ...         "y": [1, 1, 9, 9, 4],
///     ...         "elevation": [99.2, 99.15, 99.25, 99.22, 99.16],
///     ...     },
///     ... )
///     >>> round(answer.area_ft2, 4)
///     120.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (outline, points, *, instrument=None, texture=None, beyond_allowed=None, outside=None, units=crate::units::Units(None)), text_signature = "(outline, points, *, instrument=None, texture=None, beyond_allowed=None, outside=None, units=None)")]
fn survey_from_points(
    py: Python<'_>,
    outline: &Bound<'_, PyAny>,
    points: &Bound<'_, PyAny>,
    instrument: Option<&Bound<'_, PyAny>>,
    texture: Option<&Bound<'_, PyAny>>,
    beyond_allowed: Option<&Bound<'_, PyAny>>,
    outside: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &SURVEY_FROM_POINTS, &[Some(outline), Some(points), instrument, texture, beyond_allowed, outside], units)
}


static SURVEY_FROM_TIN: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "survey_from_tin"),
    class: "Survey",
    answer: crate::answers::record,
};

/// The surface of the old slab over a triangulated surface of a file, its faces kept as they are.
///
/// Rule: each face is plane; what lies between faces and their hull counts as unsurveyed.
/// Takes for granted: the surface is in the axes and the datum of the job; faces meet at whole sides;
///     they may go on beyond the outline.
///
/// Args:
///     outline: the plan edge of the work; an Outline
///     tin: the triangulated surface; a Tin
///     instrument: what the readings were taken with; one of "laser", "optical_hundredths",
///         "optical_eighths", "optical_sixteenths", "optical_millimetres", "string", "water"; where it
///         is not given laser is taken: most crews have one
///     texture: what the old floor feels like; one of "trowelled", "broomed", "scaled", "rough"; where
///         it is not given broomed is taken: most old slabs are
///     beyond_allowed: whether the work may reach more than 4 ft beyond the shots; one of "no", "yes";
///         where it is not given no is taken: heights that far out are a guess
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Survey: The surveyed old slab: outline, shots and the surface through them. It has notes, basis
///         and taken besides.
///
/// Raises:
///     SurveyError: two triangles overlap (FACES_OVERLAP); a triangle has no area in plan (FACE_FLAT)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///     FormError: two values say the same thing differently (CONTRADICTION)
///
/// Basis:
///     plane and solid geometry: derived
///     reading and texture deviations behind the site words: common practice, no source
///
/// Example:
///     >>> from overslab.survey import survey_from_tin
///     >>> answer = survey_from_tin(
///     ...     outline={
///     ...         "sides": [
///     ...             {"length": "12 ft"},
///     ...             {"length": "10 ft"},
///     ...             {"length": "12 ft"},
///     ...             {"length": "10 ft"},
///     ...         ],
///     ...     },
///     ...     tin={
///     ...         "points": {
///     ...             "unit": "ft",
///     ...             "x": [0, 13, 13, 0],
///     ...             "y": [0, 0, 10, 10],
///     ...             "elevation": [99.2, 99.15, 99.25, 99.22],
///     ...         },
///     ...         "faces": [[1, 2, 3], [1, 3, 4]],
///     ...     },
///     ... )
///     >>> round(answer.area_ft2, 4)
///     120.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (outline, tin, *, instrument=None, texture=None, beyond_allowed=None, units=crate::units::Units(None)), text_signature = "(outline, tin, *, instrument=None, texture=None, beyond_allowed=None, units=None)")]
fn survey_from_tin(
    py: Python<'_>,
    outline: &Bound<'_, PyAny>,
    tin: &Bound<'_, PyAny>,
    instrument: Option<&Bound<'_, PyAny>>,
    texture: Option<&Bound<'_, PyAny>>,
    beyond_allowed: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &SURVEY_FROM_TIN, &[Some(outline), Some(tin), instrument, texture, beyond_allowed], units)
}


static STANDING_WATER: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "standing_water"),
    class: "StandingWater",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(StandingWater))?.into_any()),
};

/// The ponds of the old slab: where water stands once all that can has run off, how deep and how much.
///
/// Rule: level at a place = least over all ways to an outlet of the highest place on the way; depth =
///     level - old slab.
/// Takes for granted: outer edges are open and holes are walled where nothing is stated; nothing soaks
///     in or dries.
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
///     shallowest: ponds shallower than this are left out [in | mm]; at least 0 in, at most 12 in (at
///         least 0 mm, at most 304.8 mm); where it is not given 1/16 in is taken: a rod hardly tells
///         less
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     StandingWater, with the attributes
///         count: how many ponds
///         area_ft2, area_m2: area under water [ft2 | m2]
///         volume_ft3, volume_m3: water in all ponds [ft3 | m3]
///         depth_in, depth_mm: greatest depth; none without a pond [in | mm]
///         left_out: how many ponds were shallower
///         left_out_volume_ft3, left_out_volume_m3: water in those [ft3 | m3]
///         ponds: the ponds, a table of ponds
///     and notes, basis and taken.
///
/// Raises:
///     GradeError: no edge of the outline has this name (EDGE_UNKNOWN)
///     FormError: the word is not one of the choices (WORD_UNKNOWN); two values say the same thing
///         differently (CONTRADICTION); the value is of another kind than the port takes
///         (KIND_MISMATCH)
///     SurveyError: water has no way out: no edge is open and there is no drain (NO_OUTLET); a drain
///         lies outside the outline (DRAIN_OUTSIDE)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.survey import standing_water
///     >>> answer = standing_water(
///     ...     survey={
///     ...         "outline": {
///     ...             "sides": [
///     ...                 {"name": "front", "length": "12 ft"},
///     ...                 {"name": "right", "length": "10 ft"},
///     ...                 {"name": "back", "length": "12 ft"},
///     ...                 {"name": "left", "length": "10 ft"},
///     ...             ],
///     ...         },
///     ...         "grid": {
///     ...             "columns": ["0 ft", "6 ft", "12 ft"],
///     ...             "rows": ["0 ft", "5 ft", "10 ft"],
///     ...             "elevations": [
///     ...                 "99.20 ft",
///     ...                 "99.20 ft",
///     ...                 "99.20 ft",
///     ...                 "99.25 ft",
///     ...                 "99.15 ft",
///     ...                 "99.22 ft",
///     ...                 "99.30 ft",
///     ...                 "99.28 ft",
///     ...                 "99.30 ft",
///     ...             ],
///     ...         },
///     ...     },
///     ...     edges=[{"edge": "back", "state": "walled"}],
///     ... )
///     >>> answer.count
///     1
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, *, edges=None, drains=None, shallowest=None, units=crate::units::Units(None)), text_signature = "(survey, *, edges=None, drains=None, shallowest=None, units=None)")]
fn standing_water(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    edges: Option<&Bound<'_, PyAny>>,
    drains: Option<&Bound<'_, PyAny>>,
    shallowest: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &STANDING_WATER, &[Some(survey), edges, drains, shallowest], units)
}

/// What `standing_water` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.survey")]
pub(crate) struct StandingWater;

#[pymethods]
impl StandingWater {
    /// How many ponds.
    #[getter]
    fn get_count<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Area under water [ft2].
    #[getter]
    fn get_area_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Area under water [m2].
    #[getter]
    fn get_area_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Water in all ponds [ft3].
    #[getter]
    fn get_volume_ft3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Water in all ponds [m3].
    #[getter]
    fn get_volume_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Greatest depth; none without a pond [in].
    #[getter]
    fn get_depth_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Greatest depth; none without a pond [mm].
    #[getter]
    fn get_depth_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// How many ponds were shallower.
    #[getter]
    fn get_left_out<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Water in those [ft3].
    #[getter]
    fn get_left_out_volume_ft3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// Water in those [m3].
    #[getter]
    fn get_left_out_volume_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Si)
    }
    /// The ponds, a table of ponds.
    #[getter]
    fn get_ponds<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
}

/// The plan edge of the work, with holes and named edges.
#[pyclass(frozen, extends = crate::records::Record, module = "overslab.survey")]
pub(crate) struct Outline;

#[pymethods]
impl Outline {
    /// Area of the work [ft2].
    #[getter]
    fn get_area_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Area of the work [m2].
    #[getter]
    fn get_area_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Length of all its edges [ft].
    #[getter]
    fn get_perimeter_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Length of all its edges [m].
    #[getter]
    fn get_perimeter_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// How well the measurements agree.
    #[getter]
    fn get_squareness<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// The corners, with the edge behind each, a table of corners.
    #[getter]
    fn get_corners<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
}

/// The surveyed old slab: outline, shots and the surface through them.
#[pyclass(frozen, extends = crate::records::Record, module = "overslab.survey")]
pub(crate) struct Survey;

#[pymethods]
impl Survey {
    /// Area of the work [ft2].
    #[getter]
    fn get_area_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Area of the work [m2].
    #[getter]
    fn get_area_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// How many places were shot.
    #[getter]
    fn get_shot_count<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Height of the highest point [ft].
    #[getter]
    fn get_highest_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Height of the highest point [m].
    #[getter]
    fn get_highest_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Its distance from the left [ft].
    #[getter]
    fn get_highest_x_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Its distance from the left [m].
    #[getter]
    fn get_highest_x_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// Its distance from the front [ft].
    #[getter]
    fn get_highest_y_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Its distance from the front [m].
    #[getter]
    fn get_highest_y_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Si)
    }
    /// The shot it is at.
    #[getter]
    fn get_highest_shot<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// Height of the lowest point [ft].
    #[getter]
    fn get_lowest_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// Height of the lowest point [m].
    #[getter]
    fn get_lowest_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Si)
    }
    /// Its distance from the left [ft].
    #[getter]
    fn get_lowest_x_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Us)
    }
    /// Its distance from the left [m].
    #[getter]
    fn get_lowest_x_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Si)
    }
    /// Its distance from the front [ft].
    #[getter]
    fn get_lowest_y_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Us)
    }
    /// Its distance from the front [m].
    #[getter]
    fn get_lowest_y_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Si)
    }
    /// The shot it is at.
    #[getter]
    fn get_lowest_shot<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 9, overslab::quantity::System::Us)
    }
    /// Highest less lowest [in].
    #[getter]
    fn get_out_of_level_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 10, overslab::quantity::System::Us)
    }
    /// Highest less lowest [mm].
    #[getter]
    fn get_out_of_level_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 10, overslab::quantity::System::Si)
    }
    /// Mean height over the area [ft].
    #[getter]
    fn get_mean_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 11, overslab::quantity::System::Us)
    }
    /// Mean height over the area [m].
    #[getter]
    fn get_mean_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 11, overslab::quantity::System::Si)
    }
    /// Rise of the fitted plane along x [in/ft].
    #[getter]
    fn get_rise_x_in_per_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 12, overslab::quantity::System::Us)
    }
    /// Rise of the fitted plane along x [%].
    #[getter]
    fn get_rise_x_percent<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 12, overslab::quantity::System::Si)
    }
    /// Rise of the fitted plane along y [in/ft].
    #[getter]
    fn get_rise_y_in_per_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 13, overslab::quantity::System::Us)
    }
    /// Rise of the fitted plane along y [%].
    #[getter]
    fn get_rise_y_percent<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 13, overslab::quantity::System::Si)
    }
    /// Root mean square of the shots about that plane [in].
    #[getter]
    fn get_unevenness_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 14, overslab::quantity::System::Us)
    }
    /// Root mean square of the shots about that plane [mm].
    #[getter]
    fn get_unevenness_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 14, overslab::quantity::System::Si)
    }
    /// Area beyond the shots [ft2].
    #[getter]
    fn get_beyond_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 15, overslab::quantity::System::Us)
    }
    /// Area beyond the shots [m2].
    #[getter]
    fn get_beyond_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 15, overslab::quantity::System::Si)
    }
    /// Area in triangles that leave the outline [ft2].
    #[getter]
    fn get_unsurveyed_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 16, overslab::quantity::System::Us)
    }
    /// Area in triangles that leave the outline [m2].
    #[getter]
    fn get_unsurveyed_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 16, overslab::quantity::System::Si)
    }
    /// Volume less by other triangulations [yd3].
    #[getter]
    fn get_ambiguity_less_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 17, overslab::quantity::System::Us)
    }
    /// Volume less by other triangulations [m3].
    #[getter]
    fn get_ambiguity_less_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 17, overslab::quantity::System::Si)
    }
    /// Volume more by other triangulations [yd3].
    #[getter]
    fn get_ambiguity_more_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 18, overslab::quantity::System::Us)
    }
    /// Volume more by other triangulations [m3].
    #[getter]
    fn get_ambiguity_more_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 18, overslab::quantity::System::Si)
    }
    /// The shots, their heights after all changes, a table of shots.
    #[getter]
    fn get_shots<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 19, overslab::quantity::System::Us)
    }
    /// What was done to the slab since it was shot, a table of changes.
    #[getter]
    fn get_changes<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 20, overslab::quantity::System::Us)
    }
}

/// Points with heights, in the axes of where they came from: of a file, a scan or a total station.
#[pyclass(frozen, extends = crate::records::Record, module = "overslab.survey")]
pub(crate) struct Points;

#[pymethods]
impl Points {
    /// How many points there are.
    #[getter]
    fn get_point_count<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Least along the first plan axis [ft].
    #[getter]
    fn get_least_x_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Least along the first plan axis [m].
    #[getter]
    fn get_least_x_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Greatest along the first plan axis [ft].
    #[getter]
    fn get_greatest_x_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Greatest along the first plan axis [m].
    #[getter]
    fn get_greatest_x_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Least along the second plan axis [ft].
    #[getter]
    fn get_least_y_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Least along the second plan axis [m].
    #[getter]
    fn get_least_y_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// Greatest along the second plan axis [ft].
    #[getter]
    fn get_greatest_y_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Greatest along the second plan axis [m].
    #[getter]
    fn get_greatest_y_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Si)
    }
    /// Height of the lowest [ft].
    #[getter]
    fn get_lowest_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// Height of the lowest [m].
    #[getter]
    fn get_lowest_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Si)
    }
    /// Height of the highest [ft].
    #[getter]
    fn get_highest_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// Height of the highest [m].
    #[getter]
    fn get_highest_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Si)
    }
    /// The points, a table of points.
    #[getter]
    fn get_points<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Us)
    }
}

/// A triangulated surface as it was handed over: points, and the faces between them.
#[pyclass(frozen, extends = crate::records::Record, module = "overslab.survey")]
pub(crate) struct Tin;

#[pymethods]
impl Tin {
    /// Its name.
    #[getter]
    fn get_name<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// How many points there are.
    #[getter]
    fn get_point_count<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// How many faces there are.
    #[getter]
    fn get_face_count<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Height of the lowest point [ft].
    #[getter]
    fn get_lowest_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Height of the lowest point [m].
    #[getter]
    fn get_lowest_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// Height of the highest point [ft].
    #[getter]
    fn get_highest_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Height of the highest point [m].
    #[getter]
    fn get_highest_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Si)
    }
    /// The points, a table of points.
    #[getter]
    fn get_points<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// The faces, a table of faces.
    #[getter]
    fn get_faces<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
}

/// The scalar rows.
pub(crate) static SCALARS: &[&crate::scalars::ScalarRow] = &[&ROD_ELEVATION];

/// The rows with records.
pub(crate) static ANSWERS: &[&crate::answers::RecordRow] = &[&LEVEL_BOOK, &OUTLINE_FROM_CORNERS, &OUTLINE_FROM_SIDES, &SURVEY_FROM_SHOTS, &SURVEY_FROM_FACES, &SURVEY_FROM_GRID, &SURVEY_FROM_RODS, &SURVEY_TRIANGLES, &SURVEY_SUSPECTS, &SURVEY_WITHOUT, &SURVEY_COVERAGE, &TWO_PEG_TEST, &BENCHMARK_RECHECK, &POINTS_FROM_TABLE, &READ_POINTS, &READ_SURFACE, &POINTS_TO_AXES, &POINTS_ALONG_WALL, &PART_STRAYS, &THIN_POINTS, &SURVEY_FROM_POINTS, &SURVEY_FROM_TIN, &STANDING_WATER];

/// The classes of records.
pub(crate) static RECORDS: &[crate::records::RecordClass] = &[crate::records::RecordClass { name: "outline", class: |py| py.get_type::<Outline>(), make: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Outline))?.into_any()) }, crate::records::RecordClass { name: "survey", class: |py| py.get_type::<Survey>(), make: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Survey))?.into_any()) }, crate::records::RecordClass { name: "points", class: |py| py.get_type::<Points>(), make: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Points))?.into_any()) }, crate::records::RecordClass { name: "tin", class: |py| py.get_type::<Tin>(), make: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Tin))?.into_any()) }];

/// Puts functions and classes into the native module.
pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(self::rod_elevation, module)?)?;
    module.add_class::<RodElevation>()?;
    module.add_class::<RodElevationArray>()?;
    module.add_function(wrap_pyfunction!(self::level_book, module)?)?;
    module.add_class::<LevelBook>()?;
    module.add_function(wrap_pyfunction!(self::outline_from_corners, module)?)?;
    module.add_function(wrap_pyfunction!(self::outline_from_sides, module)?)?;
    module.add_function(wrap_pyfunction!(self::survey_from_shots, module)?)?;
    module.add_function(wrap_pyfunction!(self::survey_from_faces, module)?)?;
    module.add_function(wrap_pyfunction!(self::survey_from_grid, module)?)?;
    module.add_function(wrap_pyfunction!(self::survey_from_rods, module)?)?;
    module.add_function(wrap_pyfunction!(self::survey_triangles, module)?)?;
    module.add_class::<SurveyTriangles>()?;
    module.add_function(wrap_pyfunction!(self::survey_suspects, module)?)?;
    module.add_class::<SurveySuspects>()?;
    module.add_function(wrap_pyfunction!(self::survey_without, module)?)?;
    module.add_function(wrap_pyfunction!(self::survey_coverage, module)?)?;
    module.add_class::<SurveyCoverage>()?;
    module.add_function(wrap_pyfunction!(self::two_peg_test, module)?)?;
    module.add_class::<TwoPegTest>()?;
    module.add_function(wrap_pyfunction!(self::benchmark_recheck, module)?)?;
    module.add_class::<BenchmarkRecheck>()?;
    module.add_function(wrap_pyfunction!(self::points_from_table, module)?)?;
    module.add_function(wrap_pyfunction!(self::read_points, module)?)?;
    module.add_class::<ReadPoints>()?;
    module.add_function(wrap_pyfunction!(self::read_surface, module)?)?;
    module.add_class::<ReadSurface>()?;
    module.add_function(wrap_pyfunction!(self::points_to_axes, module)?)?;
    module.add_class::<PointsToAxes>()?;
    module.add_function(wrap_pyfunction!(self::points_along_wall, module)?)?;
    module.add_class::<PointsAlongWall>()?;
    module.add_function(wrap_pyfunction!(self::part_strays, module)?)?;
    module.add_class::<PartStrays>()?;
    module.add_function(wrap_pyfunction!(self::thin_points, module)?)?;
    module.add_class::<ThinPoints>()?;
    module.add_function(wrap_pyfunction!(self::survey_from_points, module)?)?;
    module.add_function(wrap_pyfunction!(self::survey_from_tin, module)?)?;
    module.add_function(wrap_pyfunction!(self::standing_water, module)?)?;
    module.add_class::<StandingWater>()?;
    module.add_class::<Outline>()?;
    module.add_class::<Survey>()?;
    module.add_class::<Points>()?;
    module.add_class::<Tin>()?;
    Ok(())
}
