//! The operations of `marks`: made from the table of operations by `tests/src/generate/python`; do not edit.

#![allow(clippy::too_many_arguments, reason = "one for each port")]

use pyo3::prelude::*;

static MARKS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "marks"),
    class: "Marks",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Marks))?.into_any()),
};

/// Every mark of a floor in the order of walking: stations at the edges, wet pads, forms, rails, with rod, distance below the line, and height over the old slab as the check.
///
/// Rule: rod = sight - finish; below = line - finish; over = finish - old slab; marked = the nearest
///     whole step, half a step going to the higher floor.
/// Takes for granted: the walk goes once round the outer ring with the work on the left, then round
///     each hole; between neighbouring marks the floor is straight; old slab plane over each triangle.
///
/// Args:
///     survey: the old slab; a Survey
///     finish: the new top surface; a Finish
///     line: elevation of the level line struck round the walls; without it no distances below it [ft |
///         m]; at least -32808.3989501 ft, at most 32808.3989501 ft (at least -10000 m, at most 10000
///         m); may be left out
///     sight: elevation of the line of sight now; without it and without setups that of the survey's
///         first set-up [ft | m]; at least -32808.3989501 ft, at most 32808.3989501 ft (at least -10000
///         m, at most 10000 m); may be left out
///     setups: set-ups that marks are read from, instead of sight; every mark is told from each; a
///         table of at least 1 row, each a set-up that marks are read from: its line of sight, or a
///         benchmark and the rod on it, with the columns; may be left out
///         name: what it is called; a text; may be left out
///         sight: elevation of its line of sight [ft | m]; at least -32808.3989501 ft, at most
///             32808.3989501 ft (at least -10000 m, at most 10000 m); may be left out
///         benchmark: elevation of a benchmark [ft | m]; at least -3280.83989501 ft, at most
///             32808.3989501 ft (at least -1000 m, at most 10000 m); may be left out
///         rod: the rod on that benchmark [ft | m]; at least 0 ft, at most 32.8083989501 ft (at least 0
///             m, at most 10 m); may be left out
///     rod_length: how long the rod is [ft | m]; at least 1 ft, at most 32 ft (at least 0.3048 m, at
///         most 9.7536 m); where it is not given 16 ft is taken: a telescoping rod, common practice, no
///         source
///     round: rods and distances below the line are marked in whole steps of this [in | mm]; at least
///         0.00393700787402 in, at most 4 in (at least 0.1 mm, at most 101.6 mm); where it is not given
///         1/8 in is taken: finer cannot be set out
///     spacing: greatest distance between stations at an edge or a rail [ft | m]; at least 0.25 ft, at
///         most 100 ft (at least 0.0762 m, at most 30.48 m); where it is not given 4 ft is taken: the
///         old slab is checked each 4 ft, common practice, no source
///     points: places on edges that must have a mark; up to 6 in off they are taken to the edge; a
///         table of at least 1 row, each a place that must have a mark: a jamb, a post, with the
///         columns; may be left out
///         name: what it is called; a text
///         x: from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at least
///             -100000 m, at most 100000 m)
///         y: from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at least
///             -100000 m, at most 100000 m)
///     screed_length: length of the screed that rides on the pads [ft | m]; at least 2.5 ft, at most 50
///         ft (at least 0.762 m, at most 15.24 m); where it is not given 8 ft is taken: what two can
///         pull by hand, common practice, no source
///     pad_spacing: greatest distance between pads; without it the screed less 2 ft [ft | m]; at least
///         0.5 ft, at most 48 ft (at least 0.1524 m, at most 14.6304 m); may be left out
///     pad_inset: how far pads stay off the edges [ft | m]; at least 0 ft, at most 10 ft (at least 0 m,
///         at most 3.048 m); where it is not given 1 ft is taken: the marks at the edge serve there,
///         common practice, no source
///     forms: edges with a form; the others are walls with an isolation strip; a table of at least 1
///         row, each an edge with a form, with the columns; may be left out
///         edge: its name; a text
///     rails: screed rails; a table of at least 1 row, each a place of a screed rail, in order; rows of
///         one name, one after the other, are one rail, with the columns; may be left out
///         name: the rail; a text
///         x: from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at least
///             -100000 m, at most 100000 m)
///         y: from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at least
///             -100000 m, at most 100000 m)
///     rail_offset: how far the tops of the rails stand above the floor [in | mm]; at least -12 in, at
///         most 12 in (at least -304.8 mm, at most 304.8 mm); where it is not given 0 in is taken: the
///         screed rides at the height of the floor
///     start_edge: the edge that the walk starts with; the first where left out; a text; may be left
///         out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Marks, with the attributes
///         marks: how many marks there are
///         sight_ft, sight_m: elevation of the first line of sight [ft | m]
///         rod_on_line_ft, rod_on_line_m: the rod on the reference line from there [ft | m]
///         greatest_departure_in, greatest_departure_mm: how far marks leave the floor by rounding, at
///             most [in | mm]
///         stations: the marks at the edges, a table of stations
///         pads: the wet pads, a table of pads
///         forms: the tops of the forms, a table of forms
///         rails: the tops of the rails, a table of rails
///         rods: every mark from every set-up, a table of rods
///         edges: the edges, a table of edges
///         rips: what strips and forms are ripped to, a table of rips
///         lines: the lines along which planes meet, a table of lines
///         diagonals: lengths from corner to corner, a table of diagonals
///         csv: all marks as a CSV file
///         text: the list for the site
///     and notes, basis and taken.
///
/// Raises:
///     MarksError: a place that must have a mark is on no edge (POINT_OFF_WALL); a screed rail leaves
///         the work (RAIL_OUTSIDE); wet pads are farther apart than the screed reaches (PADS_TOO_FAR)
///     FormError: a line has fewer than two places apart from one another (LINE_TOO_SHORT); two values
///         say the same thing differently (CONTRADICTION); a required value is missing (KEY_MISSING)
///     GradeError: no edge of the outline has this name (EDGE_UNKNOWN); a part of the work is under no
///         facet (FACETS_LEAVE_HOLE)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     a chalk line round the walls and wet pads set the grade that the screed follows; heights are
///         marked from a level line, never up from the old slab: common practice, no source
///     the old slab is checked each 4 ft along the walls: common practice, no source
///     wet pads no farther apart than the length of the screed less 2 ft: common practice, no source
///     height of instrument = elevation + backsight; elevation = height of instrument - sight:
///         Surveying textbooks, differential levelling (any), height of instrument
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.marks import marks
///     >>> answer = marks(
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
///     ...             {"x": "1 ft", "y": "1 ft", "elevation": "99.53 ft"},
///     ...             {"x": "19 ft", "y": "1 ft", "elevation": "99.53 ft"},
///     ...             {"x": "1 ft", "y": "31 ft", "elevation": "99.84 ft"},
///     ...         ],
///     ...     },
///     ...     line="103 ft",
///     ...     setups={
///     ...         "name": ["nail, left jamb", "nail, back"],
///     ...         "benchmark": ["100 ft", "100.5 ft"],
///     ...         "rod": ["4' 2 1/2\"", "3' 8\""],
///     ...     },
///     ...     points={
///     ...         "name": ["left jamb", "right jamb"],
///     ...         "x": ["4 ft", "16 ft"],
///     ...         "y": ["1 in", "1 in"],
///     ...     },
///     ...     forms={"edge": ["front"]},
///     ...     rails={
///     ...         "name": ["middle", "middle"],
///     ...         "x": ["10 ft", "10 ft"],
///     ...         "y": ["1 ft", "31 ft"],
///     ...     },
///     ...     rail_offset="1/2 in",
///     ... )
///     >>> answer.marks
///     59
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, finish, *, line=None, sight=None, setups=None, rod_length=None, round=None, spacing=None, points=None, screed_length=None, pad_spacing=None, pad_inset=None, forms=None, rails=None, rail_offset=None, start_edge=None, units=crate::units::Units(None)), text_signature = "(survey, finish, *, line=None, sight=None, setups=None, rod_length=None, round=None, spacing=None, points=None, screed_length=None, pad_spacing=None, pad_inset=None, forms=None, rails=None, rail_offset=None, start_edge=None, units=None)")]
fn marks(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    finish: &Bound<'_, PyAny>,
    line: Option<&Bound<'_, PyAny>>,
    sight: Option<&Bound<'_, PyAny>>,
    setups: Option<&Bound<'_, PyAny>>,
    rod_length: Option<&Bound<'_, PyAny>>,
    round: Option<&Bound<'_, PyAny>>,
    spacing: Option<&Bound<'_, PyAny>>,
    points: Option<&Bound<'_, PyAny>>,
    screed_length: Option<&Bound<'_, PyAny>>,
    pad_spacing: Option<&Bound<'_, PyAny>>,
    pad_inset: Option<&Bound<'_, PyAny>>,
    forms: Option<&Bound<'_, PyAny>>,
    rails: Option<&Bound<'_, PyAny>>,
    rail_offset: Option<&Bound<'_, PyAny>>,
    start_edge: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &MARKS, &[Some(survey), Some(finish), line, sight, setups, rod_length, round, spacing, points, screed_length, pad_spacing, pad_inset, forms, rails, rail_offset, start_edge], units)
}

/// What `marks` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.marks")]
pub(crate) struct Marks;

#[pymethods]
impl Marks {
    /// How many marks there are.
    #[getter]
    fn get_marks<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Elevation of the first line of sight [ft].
    #[getter]
    fn get_sight_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Elevation of the first line of sight [m].
    #[getter]
    fn get_sight_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// The rod on the reference line from there [ft].
    #[getter]
    fn get_rod_on_line_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// The rod on the reference line from there [m].
    #[getter]
    fn get_rod_on_line_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// How far marks leave the floor by rounding, at most [in].
    #[getter]
    fn get_greatest_departure_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// How far marks leave the floor by rounding, at most [mm].
    #[getter]
    fn get_greatest_departure_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// The marks at the edges, a table of stations.
    #[getter]
    fn get_stations<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// The wet pads, a table of pads.
    #[getter]
    fn get_pads<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// The tops of the forms, a table of forms.
    #[getter]
    fn get_forms<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// The tops of the rails, a table of rails.
    #[getter]
    fn get_rails<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Us)
    }
    /// Every mark from every set-up, a table of rods.
    #[getter]
    fn get_rods<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Us)
    }
    /// The edges, a table of edges.
    #[getter]
    fn get_edges<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 9, overslab::quantity::System::Us)
    }
    /// What strips and forms are ripped to, a table of rips.
    #[getter]
    fn get_rips<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 10, overslab::quantity::System::Us)
    }
    /// The lines along which planes meet, a table of lines.
    #[getter]
    fn get_lines<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 11, overslab::quantity::System::Us)
    }
    /// Lengths from corner to corner, a table of diagonals.
    #[getter]
    fn get_diagonals<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 12, overslab::quantity::System::Us)
    }
    /// All marks as a CSV file.
    #[getter]
    fn get_csv<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 13, overslab::quantity::System::Us)
    }
    /// The list for the site.
    #[getter]
    fn get_text<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 14, overslab::quantity::System::Us)
    }
}

static MORNING_CHECK: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "morning_check"),
    class: "MorningCheck",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(MorningCheck))?.into_any()),
};

/// The benchmark read before the pour: how far every rod moves, or why nobody should pour yet.
///
/// Rule: difference = today - planned; rod today = rod planned + difference; two benchmarks must move
///     alike.
/// Takes for granted: within 1/8 in the same set-up agrees (common practice, no source); a new set-up
///     may read anything, but alike on both benchmarks.
///
/// Args:
///     planned: rod on the benchmark when the marks were planned [ft | m]; at least 0 ft, at most
///         32.8083989501 ft (at least 0 m, at most 10 m)
///     today: rod on it today [ft | m]; at least 0 ft, at most 32.8083989501 ft (at least 0 m, at most
///         10 m)
///     same_setup: yes where the level still stands where it stood, no after it was set up anew; one of
///         "no", "yes"
///     marks: the rods of the marks; a table of at least 0 rows, each a mark, with the columns; may be
///         left out
///         rod: its rod as planned [ft | m]; at least 0 ft, at most 32.8083989501 ft (at least 0 m, at
///             most 10 m)
///     second_planned: rod on a second benchmark when the marks were planned [ft | m]; at least 0 ft,
///         at most 32.8083989501 ft (at least 0 m, at most 10 m); may be left out
///     second_today: rod on the second benchmark today [ft | m]; at least 0 ft, at most 32.8083989501
///         ft (at least 0 m, at most 10 m); may be left out
///     tolerance: how far the benchmark may read off, and two benchmarks from one another [in | mm]; at
///         least 0 in, at most 12 in (at least 0 mm, at most 304.8 mm); where it is not given 1/4 in is
///         taken: more is no reading error, common practice, no source
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     MorningCheck, with the attributes
///         difference_in, difference_mm: today less planned: what every rod moves by [in | mm]
///         second_difference_in, second_difference_mm: the same of the second benchmark [in | mm]
///         verdict: what follows: same, agrees, shift, stop
///         doubted: which benchmark is in doubt: none, first, second, either
///         today: the rods of the marks today; none where nobody should pour, a table of today
///         said: a sentence for the crew
///     and notes, basis and taken.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///     FormError: the word is not one of the choices (WORD_UNKNOWN); a required value is missing
///         (KEY_MISSING)
///
/// Basis:
///     the benchmark is read before the pour: every rod moves by the difference, and nobody pours where
///         it is off by more than 1/4 in: common practice, no source
///     height of instrument = elevation + backsight; elevation = height of instrument - sight:
///         Surveying textbooks, differential levelling (any), height of instrument
///     readings are booked an inch, 6, 10, 12 in, a tenth, half a foot, 5 cm, 10 cm or a metre off:
///         common practice, no source
///
/// Example:
///     >>> from overslab.marks import morning_check
///     >>> answer = morning_check(
///     ...     planned="4' 2 1/2\"",
///     ...     today="4' 5 3/8\"",
///     ...     same_setup="no",
///     ...     marks={"rod": ["4' 9\"", "4' 8 1/2\""]},
///     ...     second_planned="3' 8\"",
///     ...     second_today="3' 10 3/4\"",
///     ... )
///     >>> round(answer.difference_in, 4)
///     2.875
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (planned, today, same_setup, *, marks=None, second_planned=None, second_today=None, tolerance=None, units=crate::units::Units(None)), text_signature = "(planned, today, same_setup, *, marks=None, second_planned=None, second_today=None, tolerance=None, units=None)")]
fn morning_check(
    py: Python<'_>,
    planned: &Bound<'_, PyAny>,
    today: &Bound<'_, PyAny>,
    same_setup: &Bound<'_, PyAny>,
    marks: Option<&Bound<'_, PyAny>>,
    second_planned: Option<&Bound<'_, PyAny>>,
    second_today: Option<&Bound<'_, PyAny>>,
    tolerance: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &MORNING_CHECK, &[Some(planned), Some(today), Some(same_setup), marks, second_planned, second_today, tolerance], units)
}

/// What `morning_check` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.marks")]
pub(crate) struct MorningCheck;

#[pymethods]
impl MorningCheck {
    /// Today less planned: what every rod moves by [in].
    #[getter]
    fn get_difference_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Today less planned: what every rod moves by [mm].
    #[getter]
    fn get_difference_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// The same of the second benchmark [in].
    #[getter]
    fn get_second_difference_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// The same of the second benchmark [mm].
    #[getter]
    fn get_second_difference_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// What follows: same, agrees, shift, stop.
    #[getter]
    fn get_verdict<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Which benchmark is in doubt: none, first, second, either.
    #[getter]
    fn get_doubted<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// The rods of the marks today; none where nobody should pour, a table of today.
    #[getter]
    fn get_today<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// A sentence for the crew.
    #[getter]
    fn get_said<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
}

/// The scalar rows.
pub(crate) static SCALARS: &[&crate::scalars::ScalarRow] = &[];

/// The rows with records.
pub(crate) static ANSWERS: &[&crate::answers::RecordRow] = &[&MARKS, &MORNING_CHECK];

/// The classes of records.
pub(crate) static RECORDS: &[crate::records::RecordClass] = &[];

/// Puts functions and classes into the native module.
pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(self::marks, module)?)?;
    module.add_class::<Marks>()?;
    module.add_function(wrap_pyfunction!(self::morning_check, module)?)?;
    module.add_class::<MorningCheck>()?;
    Ok(())
}
