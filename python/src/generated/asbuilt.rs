//! The operations of `asbuilt`: made from the table of operations by `tests/src/generate/python`; do not edit.

#![allow(clippy::too_many_arguments, reason = "one for each port")]

use pyo3::prelude::*;

static FLATNESS_LINE: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "flatness_line"),
    class: "FlatnessLine",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(FlatnessLine))?.into_any()),
};

/// Flatness (FF) and levelness (FL) of a floor along one line of readings 12 in or 300 mm apart.
///
/// Rule: q = h - 2 h(-1) + h(-2); z = h - h(-10); FF = 4.57 in / (3 Sq + |mean q|); FL = 12.5 in / (3
///     Sz + |mean z|); S over n - 1.
/// Takes for granted: the floor is as it was within 72 h of finishing; levelness is not used on a floor
///     that falls.
///
/// Args:
///     readings: the readings; a table of at least 1 row, each a reading, in order along the line, with
///         the columns
///         elevation: height of the floor [in | mm]; at least -393700.787402 in, at most 393700.787402
///             in (at least -10000000 mm, at most 10000000 mm)
///     spacing: how far apart the readings stand: 12 in or 300 mm [in | mm]; at least 0.393700787402
///         in, at most 393.700787402 in (at least 10 mm, at most 10000 mm); where it is not given 12 in
///         is taken: the standard in inches reads every foot
///     factor: the constant for flatness, as the standard's text in inches or in millimetres has it;
///         one of "4.57 in", "115.8 mm"; where it is not given 4.57 in is taken: the text in inches
///         came first
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     FlatnessLine, with the attributes
///         ff_ratio: flatness; none for a perfect line [1]
///         fl_ratio: levelness; none for fewer than 12 readings and for a level line [1]
///         length_ft, length_m: length of the line [ft | m]
///         q_count: how many bends
///         q_mean_in, q_mean_mm: their mean [in | mm]
///         q_deviation_in, q_deviation_mm: their standard deviation [in | mm]
///         z_count: how many rises over ten spacings
///         z_mean_in, z_mean_mm: their mean [in | mm]
///         z_deviation_in, z_deviation_mm: their standard deviation; none of fewer than two [in | mm]
///         q: the bends, a table of q
///         z: the rises over ten spacings, a table of z
///     and notes, basis and taken.
///
/// Raises:
///     AsBuiltError: a profile has too few readings (PROFILE_SHORT); profile readings stand neither 12
///         in nor 300 mm apart (PROFILE_SPACING)
///     FormError: the list is empty (EMPTY_LIST); the word is not one of the choices (WORD_UNKNOWN)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     q = rise less the rise before, z = rise over 10 ft, by their mean and standard deviation: ASTM
///         E1155, floor flatness and floor levelness numbers (M-96), q and z over readings 12 in apart
///     FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n /
///         sum(n / F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their
///         combination, from memory: confirm
///     lines of 12 readings and 11 ft or more, 2 ft from edges, 4 ft apart: ASTM E1155, floor flatness
///         and floor levelness numbers (M-96), lines and readings, as in the record of a measured
///         floor, as quoted elsewhere
///
/// Example:
///     >>> from overslab.asbuilt import flatness_line
///     >>> answer = flatness_line(
///     ...     readings={
///     ...         "elevation": [
///     ...             "100.02 in",
///     ...             "100.10 in",
///     ...             "100.13 in",
///     ...             "100.11 in",
///     ...             "100.05 in",
///     ...             "100.09 in",
///     ...             "100.08 in",
///     ...             "100.12 in",
///     ...             "100.13 in",
///     ...             "100.11 in",
///     ...             "100.10 in",
///     ...             "100.13 in",
///     ...             "100.05 in",
///     ...             "100.06 in",
///     ...         ],
///     ...     },
///     ... )
///     >>> round(answer.ff_ratio, 4)
///     23.1412
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (readings, *, spacing=None, factor=None, units=crate::units::Units(None)), text_signature = "(readings, *, spacing=None, factor=None, units=None)")]
fn flatness_line(
    py: Python<'_>,
    readings: &Bound<'_, PyAny>,
    spacing: Option<&Bound<'_, PyAny>>,
    factor: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FLATNESS_LINE, &[Some(readings), spacing, factor], units)
}

/// What `flatness_line` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.asbuilt")]
pub(crate) struct FlatnessLine;

#[pymethods]
impl FlatnessLine {
    /// Flatness; none for a perfect line [1].
    #[getter]
    fn get_ff_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Levelness; none for fewer than 12 readings and for a level line [1].
    #[getter]
    fn get_fl_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Length of the line [ft].
    #[getter]
    fn get_length_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Length of the line [m].
    #[getter]
    fn get_length_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// How many bends.
    #[getter]
    fn get_q_count<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Their mean [in].
    #[getter]
    fn get_q_mean_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Their mean [mm].
    #[getter]
    fn get_q_mean_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Si)
    }
    /// Their standard deviation [in].
    #[getter]
    fn get_q_deviation_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// Their standard deviation [mm].
    #[getter]
    fn get_q_deviation_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Si)
    }
    /// How many rises over ten spacings.
    #[getter]
    fn get_z_count<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// Their mean [in].
    #[getter]
    fn get_z_mean_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Us)
    }
    /// Their mean [mm].
    #[getter]
    fn get_z_mean_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Si)
    }
    /// Their standard deviation; none of fewer than two [in].
    #[getter]
    fn get_z_deviation_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Us)
    }
    /// Their standard deviation; none of fewer than two [mm].
    #[getter]
    fn get_z_deviation_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Si)
    }
    /// The bends, a table of q.
    #[getter]
    fn get_q<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 9, overslab::quantity::System::Us)
    }
    /// The rises over ten spacings, a table of z.
    #[getter]
    fn get_z<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 10, overslab::quantity::System::Us)
    }
}

static FLATNESS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "flatness"),
    class: "Flatness",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Flatness))?.into_any()),
};

/// Flatness (FF) and levelness (FL) of a floor from many lines: by line, by section, over all, against what is asked.
///
/// Rule: lines as for one line; F = sqrt(sum w / sum(w / F2)): lines by readings, sections by area;
///     every section reaches 3/5 of the least over all.
/// Takes for granted: readings of all lines equally far apart; on a floor that falls levelness is not
///     used.
///
/// Args:
///     readings: the readings of all lines; a table of at least 1 row, each a reading; those of one
///         line stand together, in order along it, with the columns
///         line: name of the line; a text
///         elevation: height of the floor [in | mm]; at least -393700.787402 in, at most 393700.787402
///             in (at least -10000000 mm, at most 10000000 mm)
///         section: part of the floor the line lies in; needed once a line; a text; may be left out
///     spacing: how far apart the readings stand: 12 in or 300 mm [in | mm]; at least 0.393700787402
///         in, at most 393.700787402 in (at least 10 mm, at most 10000 mm); where it is not given 12 in
///         is taken: the standard in inches reads every foot
///     factor: the constant for flatness, as the standard's text in inches or in millimetres has it;
///         one of "4.57 in", "115.8 mm"; where it is not given 4.57 in is taken: the text in inches
///         came first
///     sections: the areas of the sections, or of the floor; a table of at least 1 row, each a part of
///         the floor, with the columns; may be left out
///         section: its name; a text
///         area: its area [ft2 | m2]; more than 0 ft2 (more than 0 m2)
///     flatness_class: the class asked; one of "conventional", "moderately flat", "flat", "very flat",
///         "super flat"; may be left out
///     least_ff: flatness asked over all, in place of a class [1]; at least 1 1, at most 1000 1; may be
///         left out
///     least_fl: levelness asked over all, in place of a class [1]; at least 1 1, at most 1000 1; may
///         be left out
///     falls: whether the floor is to fall; one of "no", "yes"; where it is not given no is taken: a
///         finish that is given tells by itself
///     places: where the lines run; a table of at least 1 row, each where a line runs, with the
///         columns; may be left out
///         line: the line's name; a text
///         x: its first reading, from the left [ft | m]; at least -328083.989501 ft, at most
///             328083.989501 ft (at least -100000 m, at most 100000 m)
///         y: its first reading, from the front [ft | m]; at least -328083.989501 ft, at most
///             328083.989501 ft (at least -100000 m, at most 100000 m)
///         toward_x: a place it runs towards, from the left [ft | m]; at least -328083.989501 ft, at
///             most 328083.989501 ft (at least -100000 m, at most 100000 m)
///         toward_y: a place it runs towards, from the front [ft | m]; at least -328083.989501 ft, at
///             most 328083.989501 ft (at least -100000 m, at most 100000 m)
///     finish: the plan: where it bends, readings of lines with a place are left out; a Finish; may be
///         left out
///     outline: the plan edge, which lines keep 2 ft from; an Outline; may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Flatness, with the attributes
///         ff_ratio: flatness over all [1]
///         fl_ratio: levelness over all [1]
///         asked_ff_ratio: flatness asked over all [1]
///         asked_fl_ratio: levelness asked over all [1]
///         local_ff_ratio: flatness asked of every section [1]
///         local_fl_ratio: levelness asked of every section [1]
///         ff_verdict: flatness over all against what is asked: meets, short, too few to judge, confirm
///             locally
///         fl_verdict: levelness over all against what is asked: meets, short, too few to judge,
///             confirm locally
///         lines: the lines, a table of lines
///         of_sections: the parts of the floor, a table of of_sections
///     and notes, basis and taken.
///
/// Raises:
///     FormError: the list is empty (EMPTY_LIST); a name is given twice (KEY_REPEATED); two values say
///         the same thing differently (CONTRADICTION); a required value is missing (KEY_MISSING); a
///         line has fewer than two places apart from one another (LINE_TOO_SHORT)
///     AsBuiltError: a profile has too few readings (PROFILE_SHORT); lines, sections and their areas do
///         not go together (FLATNESS_SECTION); profile readings stand neither 12 in nor 300 mm apart
///         (PROFILE_SPACING); no profile line has this name (PROFILE_LINE_UNKNOWN)
///
/// Basis:
///     q = rise less the rise before, z = rise over 10 ft, by their mean and standard deviation: ASTM
///         E1155, floor flatness and floor levelness numbers (M-96), q and z over readings 12 in apart
///     FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n /
///         sum(n / F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their
///         combination, from memory: confirm
///     lines of 12 readings and 11 ft or more, 2 ft from edges, 4 ft apart: ASTM E1155, floor flatness
///         and floor levelness numbers (M-96), lines and readings, as in the record of a measured
///         floor, as quoted elsewhere
///     at least 2 sqrt(A) rises over 10 ft, from 1600 ft2 on A / 20, A in ft2: ASTM E1155, floor
///         flatness and floor levelness numbers (any), least number of readings, from memory: confirm
///     FF and FL by class over all, and 3/5 of them for every section: ACI 117, tolerances for concrete
///         construction (10), table 4.8.5.1; 4.8.5.3
///     levelness is not used where a floor falls; flatness is told with the plan taken off: Flatwork
///         guidance on floors that fall (several), levelness, from memory: confirm
///
/// Example:
///     >>> from overslab.asbuilt import flatness
///     >>> answer = flatness(
///     ...     readings={
///     ...         "line": [
///     ...             "A",
///     ...             "A",
///     ...             "A",
///     ...             "A",
///     ...             "A",
///     ...             "A",
///     ...             "A",
///     ...             "A",
///     ...             "A",
///     ...             "A",
///     ...             "A",
///     ...             "A",
///     ...             "A",
///     ...             "B",
///     ...             "B",
///     ...             "B",
///     ...             "B",
///     ...             "B",
///     ...             "B",
///     ...             "B",
///     ...             "B",
///     ...             "B",
///     ...             "B",
///     ...             "B",
///     ...             "B",
///     ...             "B",
///     ...         ],
///     ...         "elevation": [
///     ...             "100.02 in",
///     ...             "100.10 in",
///     ...             "100.13 in",
///     ...             "100.11 in",
///     ...             "100.05 in",
///     ...             "100.09 in",
///     ...             "100.08 in",
///     ...             "100.12 in",
///     ...             "100.13 in",
///     ...             "100.11 in",
///     ...             "100.10 in",
///     ...             "100.13 in",
///     ...             "100.05 in",
///     ...             "100.06 in",
///     ...             "99.98 in",
///     ...             "99.99 in",
///     ...             "100.04 in",
///     ...             "100.08 in",
///     ...             "100.06 in",
///     ...             "100.11 in",
///     ...             "100.15 in",
///     ...             "100.12 in",
///     ...             "100.16 in",
///     ...             "100.13 in",
///     ...             "100.09 in",
///     ...             "100.12 in",
///     ...         ],
///     ...     },
///     ...     sections={"section": ["floor"], "area": ["300 ft2"]},
///     ...     flatness_class="conventional",
///     ...     places={
///     ...         "line": ["A", "B"],
///     ...         "x": ["2 ft", "2 ft"],
///     ...         "y": ["3 ft", "8 ft"],
///     ...         "toward_x": ["15 ft", "15 ft"],
///     ...         "toward_y": ["3 ft", "8 ft"],
///     ...     },
///     ... )
///     >>> round(answer.ff_ratio, 4)
///     23.7904
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (readings, *, spacing=None, factor=None, sections=None, flatness_class=None, least_ff=None, least_fl=None, falls=None, places=None, finish=None, outline=None, units=crate::units::Units(None)), text_signature = "(readings, *, spacing=None, factor=None, sections=None, flatness_class=None, least_ff=None, least_fl=None, falls=None, places=None, finish=None, outline=None, units=None)")]
fn flatness(
    py: Python<'_>,
    readings: &Bound<'_, PyAny>,
    spacing: Option<&Bound<'_, PyAny>>,
    factor: Option<&Bound<'_, PyAny>>,
    sections: Option<&Bound<'_, PyAny>>,
    flatness_class: Option<&Bound<'_, PyAny>>,
    least_ff: Option<&Bound<'_, PyAny>>,
    least_fl: Option<&Bound<'_, PyAny>>,
    falls: Option<&Bound<'_, PyAny>>,
    places: Option<&Bound<'_, PyAny>>,
    finish: Option<&Bound<'_, PyAny>>,
    outline: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FLATNESS, &[Some(readings), spacing, factor, sections, flatness_class, least_ff, least_fl, falls, places, finish, outline], units)
}

/// What `flatness` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.asbuilt")]
pub(crate) struct Flatness;

#[pymethods]
impl Flatness {
    /// Flatness over all [1].
    #[getter]
    fn get_ff_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Levelness over all [1].
    #[getter]
    fn get_fl_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Flatness asked over all [1].
    #[getter]
    fn get_asked_ff_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Levelness asked over all [1].
    #[getter]
    fn get_asked_fl_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Flatness asked of every section [1].
    #[getter]
    fn get_local_ff_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Levelness asked of every section [1].
    #[getter]
    fn get_local_fl_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// Flatness over all against what is asked: meets, short, too few to judge, confirm locally.
    #[getter]
    fn get_ff_verdict<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// Levelness over all against what is asked: meets, short, too few to judge, confirm locally.
    #[getter]
    fn get_fl_verdict<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Us)
    }
    /// The lines, a table of lines.
    #[getter]
    fn get_lines<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Us)
    }
    /// The parts of the floor, a table of of_sections.
    #[getter]
    fn get_of_sections<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 9, overslab::quantity::System::Us)
    }
}

static FLATNESS_COMBINED: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "flatness_combined"),
    class: "FlatnessCombined",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(FlatnessCombined))?.into_any()),
};

/// One F-number for several lines, by their readings, or for several sections, by their areas.
///
/// Rule: F = sqrt(sum w / sum(w / F2)), w = number of readings of a line, area of a section.
/// Takes for granted: all numbers are FF, or all are FL.
///
/// Args:
///     parts: the lines or the sections; a table of at least 1 row, each a line or a section, with the
///         columns
///         number: its F-number [1]; more than 0 1
///         readings: of a line: how many q for FF, how many z for FL; a whole number from 1 to
///             1000000000; may be left out
///         area: of a section: how large it is [ft2 | m2]; more than 0 ft2 (more than 0 m2); may be
///             left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     FlatnessCombined, with the attributes
///         number_ratio: the number for all [1]
///     and notes, basis and taken.
///
/// Raises:
///     FormError: the list is empty (EMPTY_LIST); a required value is missing (KEY_MISSING); two values
///         say the same thing differently (CONTRADICTION)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n /
///         sum(n / F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their
///         combination, from memory: confirm
///
/// Example:
///     >>> from overslab.asbuilt import flatness_combined
///     >>> answer = flatness_combined(
///     ...     parts={"number": ["31 1", "22 1", "27 1"], "readings": [13, 15, 12]},
///     ... )
///     >>> round(answer.number_ratio, 4)
///     25.6115
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (parts, *, units=crate::units::Units(None)), text_signature = "(parts, *, units=None)")]
fn flatness_combined(
    py: Python<'_>,
    parts: &Bound<'_, PyAny>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &FLATNESS_COMBINED, &[Some(parts)], units)
}

/// What `flatness_combined` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.asbuilt")]
pub(crate) struct FlatnessCombined;

#[pymethods]
impl FlatnessCombined {
    /// The number for all [1].
    #[getter]
    fn get_number_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
}

static STRAIGHTEDGE: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "straightedge"),
    class: "Straightedge",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Straightedge))?.into_any()),
};

/// The gap under a straightedge laid along a line of readings, from each reading on.
///
/// Rule: gap = upper hull of the readings under the straightedge less the floor, where it is greatest.
/// Takes for granted: it rests on two readings; on a hump it may tip either way, and the end that
///     stands up is no gap.
///
/// Args:
///     profile: the readings, three or more; a table of at least 1 row, each a reading, in order along
///         the line, at any spacing, with the columns
///         distance: from the start of the line [ft | m]; at least -32808.3989501 ft, at most
///             32808.3989501 ft (at least -10000 m, at most 10000 m)
///         elevation: height of the floor [in | mm]; at least -393700.787402 in, at most 393700.787402
///             in (at least -10000000 mm, at most 10000000 mm)
///     length: length of the straightedge [ft | m]; more than 0 ft, at most 100 ft (more than 0 m, at
///         most 30.48 m); where it is not given 10 ft is taken: the limits are told for 10 ft
///     flatness_class: class to hold the gaps against; under 10 ft only; one of "conventional",
///         "moderately flat", "flat"; may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Straightedge, with the attributes
///         gap_in, gap_mm: the greatest gap [in | mm]
///         gap_at_ft, gap_at_m: where it is [ft | m]
///         rest_1_ft, rest_1_m: first place the straightedge rests there [ft | m]
///         rest_2_ft, rest_2_m: second place it rests there [ft | m]
///         count: how often it was laid down
///         about_ff_ratio: flatness number that goes roughly with such a gap, under 10 ft and up to 1/2
///             in [1]
///         within_most_percent: share of gaps within what nine in ten must keep [%]
///         within_all_percent: share of gaps within what all must keep [%]
///         verdict: whether the class is kept: meets, short, too few to judge, confirm locally
///         placements: the straightedge laid down from each reading on, a table of placements
///     and notes, basis and taken.
///
/// Raises:
///     AsBuiltError: a profile has too few readings (PROFILE_SHORT); the readings of a profile are not
///         in order along its line (PROFILE_ORDER)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///     FormError: two values say the same thing differently (CONTRADICTION); the word is not one of the
///         choices (WORD_UNKNOWN)
///
/// Basis:
///     plane and solid geometry: derived
///     nine gaps in ten and all gaps within limits by class: ACI 117, tolerances for concrete
///         construction (10), straightedge of 10 ft, from memory: confirm
///     FF 12, 20, 25, 32, 50 go roughly with gaps of 1/2, 5/16, 1/4, 3/16, 1/8 in under 10 ft: ACI
///         302.1R, guide to concrete floor and slab construction (any), flatness against gaps, from
///         memory: confirm
///
/// Example:
///     >>> from overslab.asbuilt import straightedge
///     >>> answer = straightedge(
///     ...     profile={
///     ...         "distance": [
///     ...             "1 ft",
///     ...             "2 ft",
///     ...             "3 ft",
///     ...             "4 ft",
///     ...             "5 ft",
///     ...             "6 ft",
///     ...             "7 ft",
///     ...             "8 ft",
///     ...             "9 ft",
///     ...             "10 ft",
///     ...             "11 ft",
///     ...             "12 ft",
///     ...         ],
///     ...         "elevation": [
///     ...             "100.02 in",
///     ...             "100.10 in",
///     ...             "100.13 in",
///     ...             "100.11 in",
///     ...             "100.05 in",
///     ...             "100.09 in",
///     ...             "100.08 in",
///     ...             "99.92 in",
///     ...             "99.98 in",
///     ...             "100.11 in",
///     ...             "100.10 in",
///     ...             "100.13 in",
///     ...         ],
///     ...     },
///     ...     flatness_class="flat",
///     ... )
///     >>> round(answer.gap_in, 4)
///     0.21
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (profile, *, length=None, flatness_class=None, units=crate::units::Units(None)), text_signature = "(profile, *, length=None, flatness_class=None, units=None)")]
fn straightedge(
    py: Python<'_>,
    profile: &Bound<'_, PyAny>,
    length: Option<&Bound<'_, PyAny>>,
    flatness_class: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &STRAIGHTEDGE, &[Some(profile), length, flatness_class], units)
}

/// What `straightedge` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.asbuilt")]
pub(crate) struct Straightedge;

#[pymethods]
impl Straightedge {
    /// The greatest gap [in].
    #[getter]
    fn get_gap_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// The greatest gap [mm].
    #[getter]
    fn get_gap_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Where it is [ft].
    #[getter]
    fn get_gap_at_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Where it is [m].
    #[getter]
    fn get_gap_at_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// First place the straightedge rests there [ft].
    #[getter]
    fn get_rest_1_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// First place the straightedge rests there [m].
    #[getter]
    fn get_rest_1_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Second place it rests there [ft].
    #[getter]
    fn get_rest_2_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Second place it rests there [m].
    #[getter]
    fn get_rest_2_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// How often it was laid down.
    #[getter]
    fn get_count<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Flatness number that goes roughly with such a gap, under 10 ft and up to 1/2 in [1].
    #[getter]
    fn get_about_ff_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// Share of gaps within what nine in ten must keep [%].
    #[getter]
    fn get_within_most_percent<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// Share of gaps within what all must keep [%].
    #[getter]
    fn get_within_all_percent<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Us)
    }
    /// Whether the class is kept: meets, short, too few to judge, confirm locally.
    #[getter]
    fn get_verdict<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Us)
    }
    /// The straightedge laid down from each reading on, a table of placements.
    #[getter]
    fn get_placements<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 9, overslab::quantity::System::Us)
    }
}

static AS_BUILT: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "as_built"),
    class: "AsBuilt",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(AsBuilt))?.into_any()),
};

/// The new floor as shot, held against old slab and plan: marks, thickness, slope, standing water, concrete, what to mend.
///
/// Rule: deviation = shot - planned; thickness = new floor - old slab, exactly over the triangles of
///     both; slope = plane of least squares.
/// Takes for granted: both floors plane over each triangle of their shots; no approval: arithmetic on
///     the shots.
///
/// Args:
///     survey: the old slab; a Survey
///     finish: the plan; a Finish
///     shots: the shots of the new floor; a table of at least 1 row, each a shot of the new floor, with
///         the columns; may be left out
///         x: distance from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
///             least -100000 m, at most 100000 m)
///         y: distance from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft
///             (at least -100000 m, at most 100000 m)
///         elevation: height above the job datum [ft | m]; at least -32808.3989501 ft, at most
///             32808.3989501 ft (at least -10000 m, at most 10000 m)
///         name: its name; a text; may be left out
///     new_floor: the new floor as surveyed, in place of shots; over the same plan edge; a Survey; may
///         be left out
///     tolerance: how far a shot may be off the plan [in | mm]; more than 0 in, at most 12 in (more
///         than 0 mm, at most 304.8 mm); where it is not given 1/4 in is taken: 3/16 in of strike-off,
///         and 1/16 in that a mark may leave its plane
///     specified: the thickness specified [in | mm]; at least 0 in, at most 120 in (at least 0 mm, at
///         most 3048 mm); may be left out
///     least: the least thickness allowed anywhere [in | mm]; at least 0 in, at most 120 in (at least 0
///         mm, at most 3048 mm); may be left out
///     surface: how the floor is finished and used: its least fall; one of "trowelled", "broomed",
///         "washed", "outdoors"; may be left out
///     least_fall: the least fall, in place of that of the surface [in/ft | %]; at least 0 in/ft, at
///         most 12 in/ft (at least 0 %, at most 100 %); may be left out
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
///     ordered: concrete that came [yd3 | m3]; at least 0 yd3, at most 13079.5061931 yd3 (at least 0
///         m3, at most 10000 m3); may be left out
///     left_over: concrete that was left over [yd3 | m3]; at least 0 yd3, at most 13079.5061931 yd3 (at
///         least 0 m3, at most 10000 m3); may be left out
///     puddles: puddles that were seen; a table of at least 0 rows, each a puddle that was seen when
///         the hose was let run, with the columns; may be left out
///         x: distance from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
///             least -100000 m, at most 100000 m)
///         y: distance from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft
///             (at least -100000 m, at most 100000 m)
///         depth: how deep [in | mm]; at least 0 in, at most 12 in (at least 0 mm, at most 304.8 mm);
///             may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     AsBuilt, with the attributes
///         count: how many shots on the work
///         missed: how many of them are off by more than the tolerance
///         mean_deviation_in, mean_deviation_mm: mean of shot less planned; positive is high [in | mm]
///         deviation_in, deviation_mm: standard deviation of shot less planned; none of one shot [in |
///             mm]
///         highest_in, highest_mm: greatest of shot less planned [in | mm]
///         lowest_in, lowest_mm: least of shot less planned [in | mm]
///         mean_over_area_in, mean_over_area_mm: mean over the area of new floor less plan [in | mm]
///         thickness_mean_in, thickness_mean_mm: mean thickness got [in | mm]
///         thickness_least_in, thickness_least_mm: least thickness got [in | mm]
///         least_x_ft, least_x_m: where it is, from the left [ft | m]
///         least_y_ft, least_y_m: where it is, from the front [ft | m]
///         least_measured_in, least_measured_mm: least thickness got between the shots of the old slab
///             [in | mm]
///         thickness_greatest_in, thickness_greatest_mm: greatest thickness got [in | mm]
///         greatest_x_ft, greatest_x_m: where that is, from the left [ft | m]
///         greatest_y_ft, greatest_y_m: where that is, from the front [ft | m]
///         thinner_ft2, thinner_m2: area thinner than the least allowed, or else than specified [ft2 |
///             m2]
///         planned_mean_in, planned_mean_mm: mean thickness planned [in | mm]
///         planned_volume_yd3, planned_volume_m3: concrete figured [yd3 | m3]
///         volume_yd3, volume_m3: concrete in place, between old slab and new floor [yd3 | m3]
///         used_yd3, used_m3: concrete used: what came less what was left over [yd3 | m3]
///         unaccounted_yd3, unaccounted_m3: used less in place [yd3 | m3]
///         used_over_planned_ratio: used over figured [1]
///         said: all of it in a few sentences: what holds, what does not, what to mend
///         checks: what was asked, and whether it was kept, a table of checks
///         deviations: the shots beside the plan, a table of deviations
///         falls: the slopes got, a table of falls
///         ponds: where water stands, a table of ponds
///         seen: the puddles seen beside the water of the shots, a table of seen
///         mends: what to mend, a table of mends
///     and notes, basis and taken.
///
/// Raises:
///     FormError: a required value is missing (KEY_MISSING); two values say the same thing differently
///         (CONTRADICTION); the word is not one of the choices (WORD_UNKNOWN)
///     AsBuiltError: the new floor was not surveyed over the plan edge of the old slab
///         (AS_BUILT_OUTLINE)
///     SurveyError: too few shots for a surface (TOO_FEW_SHOTS)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     plane and solid geometry: derived
///     a struck-off floor keeps its marks within 1/4 in: 3/16 in of strike-off, 1/16 in of the mark:
///         common practice, no source
///     the tolerance of the marks that was given: the project's specification
///     within 3/4 in of the planned height: ACI 117, tolerances for concrete construction (90), top of
///         slabs on ground, as quoted elsewhere
///     mean thickness not more than 3/8 in, no thickness more than 3/4 in under the specified one: ACI
///         117, tolerances for concrete construction (10), 4.5.4, slabs on ground
///     the least thickness that was given: the project's specification
///     at least 1/8 in per ft on well-finished floors: Flatwork guidance on drainage minimums
///         (several), finished floors, from memory: confirm
///     at least 1/4 in per ft on broomed floors: Flatwork guidance on drainage minimums (several),
///         broom finish, from memory: confirm
///     at least 2 % away from a building: International Residential Code (2015-2021), R401.3,
///         impervious surfaces within 10 ft, as quoted elsewhere
///     1.00 to 1.08 times the figured concrete is used: common practice, no source
///
/// Example:
///     >>> from overslab.asbuilt import as_built
///     >>> answer = as_built(
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
///     ...             "columns": ["1 ft", "11 ft"],
///     ...             "rows": ["1 ft", "9 ft"],
///     ...             "elevations": ["99.20 ft", "99.15 ft", "99.22 ft", "99.25 ft"],
///     ...         },
///     ...     },
///     ...     finish={
///     ...         "points": [
///     ...             {"x": "0 ft", "y": "0 ft", "elevation": "99.50 ft"},
///     ...             {"x": "12 ft", "y": "0 ft", "elevation": "99.50 ft"},
///     ...             {"x": "0 ft", "y": "10 ft", "elevation": "99.60 ft"},
///     ...         ],
///     ...     },
///     ...     shots={
///     ...         "x": [
///     ...             "1 ft",
///     ...             "6 ft",
///     ...             "11 ft",
///     ...             "1 ft",
///     ...             "6 ft",
///     ...             "11 ft",
///     ...             "1 ft",
///     ...             "6 ft",
///     ...             "11 ft",
///     ...         ],
///     ...         "y": ["1 ft", "1 ft", "1 ft", "5 ft", "5 ft", "5 ft", "9 ft", "9 ft", "9 ft"],
///     ...         "elevation": [
///     ...             "99.51 ft",
///     ...             "99.52 ft",
///     ...             "99.50 ft",
///     ...             "99.55 ft",
///     ...             "99.48 ft",
///     ...             "99.56 ft",
///     ...             "99.59 ft",
///     ...             "99.60 ft",
///     ...             "99.58 ft",
///     ...         ],
///     ...     },
///     ...     least="3 in",
///     ...     specified="4 in",
///     ...     surface="trowelled",
///     ...     ordered="1 1/2 yd3",
///     ...     left_over="1/8 yd3",
///     ...     puddles={"x": ["6 ft"], "y": ["5 ft"], "depth": ["1/2 in"]},
///     ...     edges=[
///     ...         {"edge": "left", "state": "walled"},
///     ...         {"edge": "back", "state": "walled"},
///     ...         {"edge": "right", "state": "walled"},
///     ...     ],
///     ... )
///     >>> answer.count
///     9
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, finish, *, shots=None, new_floor=None, tolerance=None, specified=None, least=None, surface=None, least_fall=None, edges=None, drains=None, shallowest=None, ordered=None, left_over=None, puddles=None, units=crate::units::Units(None)), text_signature = "(survey, finish, *, shots=None, new_floor=None, tolerance=None, specified=None, least=None, surface=None, least_fall=None, edges=None, drains=None, shallowest=None, ordered=None, left_over=None, puddles=None, units=None)")]
fn as_built(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    finish: &Bound<'_, PyAny>,
    shots: Option<&Bound<'_, PyAny>>,
    new_floor: Option<&Bound<'_, PyAny>>,
    tolerance: Option<&Bound<'_, PyAny>>,
    specified: Option<&Bound<'_, PyAny>>,
    least: Option<&Bound<'_, PyAny>>,
    surface: Option<&Bound<'_, PyAny>>,
    least_fall: Option<&Bound<'_, PyAny>>,
    edges: Option<&Bound<'_, PyAny>>,
    drains: Option<&Bound<'_, PyAny>>,
    shallowest: Option<&Bound<'_, PyAny>>,
    ordered: Option<&Bound<'_, PyAny>>,
    left_over: Option<&Bound<'_, PyAny>>,
    puddles: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &AS_BUILT, &[Some(survey), Some(finish), shots, new_floor, tolerance, specified, least, surface, least_fall, edges, drains, shallowest, ordered, left_over, puddles], units)
}

/// What `as_built` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.asbuilt")]
pub(crate) struct AsBuilt;

#[pymethods]
impl AsBuilt {
    /// How many shots on the work.
    #[getter]
    fn get_count<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// How many of them are off by more than the tolerance.
    #[getter]
    fn get_missed<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Mean of shot less planned; positive is high [in].
    #[getter]
    fn get_mean_deviation_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Mean of shot less planned; positive is high [mm].
    #[getter]
    fn get_mean_deviation_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Standard deviation of shot less planned; none of one shot [in].
    #[getter]
    fn get_deviation_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Standard deviation of shot less planned; none of one shot [mm].
    #[getter]
    fn get_deviation_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// Greatest of shot less planned [in].
    #[getter]
    fn get_highest_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Greatest of shot less planned [mm].
    #[getter]
    fn get_highest_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Si)
    }
    /// Least of shot less planned [in].
    #[getter]
    fn get_lowest_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// Least of shot less planned [mm].
    #[getter]
    fn get_lowest_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Si)
    }
    /// Mean over the area of new floor less plan [in].
    #[getter]
    fn get_mean_over_area_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// Mean over the area of new floor less plan [mm].
    #[getter]
    fn get_mean_over_area_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Si)
    }
    /// Mean thickness got [in].
    #[getter]
    fn get_thickness_mean_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Us)
    }
    /// Mean thickness got [mm].
    #[getter]
    fn get_thickness_mean_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Si)
    }
    /// Least thickness got [in].
    #[getter]
    fn get_thickness_least_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Us)
    }
    /// Least thickness got [mm].
    #[getter]
    fn get_thickness_least_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Si)
    }
    /// Where it is, from the left [ft].
    #[getter]
    fn get_least_x_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 9, overslab::quantity::System::Us)
    }
    /// Where it is, from the left [m].
    #[getter]
    fn get_least_x_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 9, overslab::quantity::System::Si)
    }
    /// Where it is, from the front [ft].
    #[getter]
    fn get_least_y_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 10, overslab::quantity::System::Us)
    }
    /// Where it is, from the front [m].
    #[getter]
    fn get_least_y_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 10, overslab::quantity::System::Si)
    }
    /// Least thickness got between the shots of the old slab [in].
    #[getter]
    fn get_least_measured_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 11, overslab::quantity::System::Us)
    }
    /// Least thickness got between the shots of the old slab [mm].
    #[getter]
    fn get_least_measured_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 11, overslab::quantity::System::Si)
    }
    /// Greatest thickness got [in].
    #[getter]
    fn get_thickness_greatest_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 12, overslab::quantity::System::Us)
    }
    /// Greatest thickness got [mm].
    #[getter]
    fn get_thickness_greatest_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 12, overslab::quantity::System::Si)
    }
    /// Where that is, from the left [ft].
    #[getter]
    fn get_greatest_x_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 13, overslab::quantity::System::Us)
    }
    /// Where that is, from the left [m].
    #[getter]
    fn get_greatest_x_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 13, overslab::quantity::System::Si)
    }
    /// Where that is, from the front [ft].
    #[getter]
    fn get_greatest_y_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 14, overslab::quantity::System::Us)
    }
    /// Where that is, from the front [m].
    #[getter]
    fn get_greatest_y_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 14, overslab::quantity::System::Si)
    }
    /// Area thinner than the least allowed, or else than specified [ft2].
    #[getter]
    fn get_thinner_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 15, overslab::quantity::System::Us)
    }
    /// Area thinner than the least allowed, or else than specified [m2].
    #[getter]
    fn get_thinner_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 15, overslab::quantity::System::Si)
    }
    /// Mean thickness planned [in].
    #[getter]
    fn get_planned_mean_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 16, overslab::quantity::System::Us)
    }
    /// Mean thickness planned [mm].
    #[getter]
    fn get_planned_mean_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 16, overslab::quantity::System::Si)
    }
    /// Concrete figured [yd3].
    #[getter]
    fn get_planned_volume_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 17, overslab::quantity::System::Us)
    }
    /// Concrete figured [m3].
    #[getter]
    fn get_planned_volume_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 17, overslab::quantity::System::Si)
    }
    /// Concrete in place, between old slab and new floor [yd3].
    #[getter]
    fn get_volume_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 18, overslab::quantity::System::Us)
    }
    /// Concrete in place, between old slab and new floor [m3].
    #[getter]
    fn get_volume_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 18, overslab::quantity::System::Si)
    }
    /// Concrete used: what came less what was left over [yd3].
    #[getter]
    fn get_used_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 19, overslab::quantity::System::Us)
    }
    /// Concrete used: what came less what was left over [m3].
    #[getter]
    fn get_used_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 19, overslab::quantity::System::Si)
    }
    /// Used less in place [yd3].
    #[getter]
    fn get_unaccounted_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 20, overslab::quantity::System::Us)
    }
    /// Used less in place [m3].
    #[getter]
    fn get_unaccounted_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 20, overslab::quantity::System::Si)
    }
    /// Used over figured [1].
    #[getter]
    fn get_used_over_planned_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 21, overslab::quantity::System::Us)
    }
    /// All of it in a few sentences: what holds, what does not, what to mend.
    #[getter]
    fn get_said<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 22, overslab::quantity::System::Us)
    }
    /// What was asked, and whether it was kept, a table of checks.
    #[getter]
    fn get_checks<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 23, overslab::quantity::System::Us)
    }
    /// The shots beside the plan, a table of deviations.
    #[getter]
    fn get_deviations<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 24, overslab::quantity::System::Us)
    }
    /// The slopes got, a table of falls.
    #[getter]
    fn get_falls<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 25, overslab::quantity::System::Us)
    }
    /// Where water stands, a table of ponds.
    #[getter]
    fn get_ponds<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 26, overslab::quantity::System::Us)
    }
    /// The puddles seen beside the water of the shots, a table of seen.
    #[getter]
    fn get_seen<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 27, overslab::quantity::System::Us)
    }
    /// What to mend, a table of mends.
    #[getter]
    fn get_mends<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 28, overslab::quantity::System::Us)
    }
}

/// The scalar rows.
pub(crate) static SCALARS: &[&crate::scalars::ScalarRow] = &[];

/// The rows with records.
pub(crate) static ANSWERS: &[&crate::answers::RecordRow] = &[&FLATNESS_LINE, &FLATNESS, &FLATNESS_COMBINED, &STRAIGHTEDGE, &AS_BUILT];

/// The classes of records.
pub(crate) static RECORDS: &[crate::records::RecordClass] = &[];

/// Puts functions and classes into the native module.
pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(self::flatness_line, module)?)?;
    module.add_class::<FlatnessLine>()?;
    module.add_function(wrap_pyfunction!(self::flatness, module)?)?;
    module.add_class::<Flatness>()?;
    module.add_function(wrap_pyfunction!(self::flatness_combined, module)?)?;
    module.add_class::<FlatnessCombined>()?;
    module.add_function(wrap_pyfunction!(self::straightedge, module)?)?;
    module.add_class::<Straightedge>()?;
    module.add_function(wrap_pyfunction!(self::as_built, module)?)?;
    module.add_class::<AsBuilt>()?;
    Ok(())
}
