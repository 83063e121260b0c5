//! The operations of `clearance`: made from the table of operations by `tests/src/generate/python`; do not edit.

#![allow(clippy::too_many_arguments, reason = "one for each port")]

use pyo3::prelude::*;

static APPROACH: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "approach"),
    class: "Approach",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Approach))?.into_any()),
};

/// A driveway, a walk or a ramp from a door outwards: the floor height from which water falls away, grades, breaks, the step at the door, and a drain along the door instead.
///
/// Rule: needed = greatest of (height + fall x distance) over the ground, and the rebate; change of
///     grade = difference of two falls.
/// Takes for granted: the ground is straight between its points; a new approach is straight from the
///     floor's edge to where it ties in; the floor is level at the door; 95 % of the rain runs off.
///
/// Args:
///     profile: the ground outside; a table of at least 1 row, each a measured place of the ground
///         outside, from the door outwards, the first at the door, with the columns
///         distance: distance from the door [ft | m]; at least 0 ft, at most 3280.83989501 ft (at least
///             0 m, at most 1000 m)
///         elevation: height of the ground [ft | m]; at least -32808.3989501 ft, at most 32808.3989501
///             ft (at least -10000 m, at most 10000 m)
///     floor: height of the floor at the door; or a finish with the places of the door [ft | m]; at
///         least -32808.3989501 ft, at most 32808.3989501 ft (at least -10000 m, at most 10000 m); may
///         be left out
///     finish: the new top surface, whose lowest place along the door counts; a Finish; may be left out
///     door: places along the door; a table of at least 0 rows, each a place along the door, on the
///         finish, with the columns; may be left out
///         x: distance from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
///             least -100000 m, at most 100000 m)
///         y: distance from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft
///             (at least -100000 m, at most 100000 m)
///     traffic: what goes over it; one of "vehicle", "wheelchair", "foot"; where it is not given
///         vehicle is taken: most approaches are driven on
///     fall: fall away from the door that is wanted; 2 %, the rule for hard surfaces by buildings,
///         where not given [%]; at least 0 %, at most 100 %; may be left out
///     over: over which distance from the door [ft | m]; more than 0 ft, at most 3280.83989501 ft (more
///         than 0 m, at most 1000 m); where it is not given 10 ft is taken: the rule for ground by
///         buildings
///     tie_in: how far from the door a new approach meets the ground [ft | m]; more than 0 ft, at most
///         3280.83989501 ft (more than 0 m, at most 1000 m); may be left out
///     thickness: how thick the new approach is [in | mm]; at least 0 in, at most 39.3700787402 in (at
///         least 0 mm, at most 1000 mm); may be left out
///     rebate: how far the outside lies below the floor at the door [in | mm]; at least 0 in, at most
///         39.3700787402 in (at least 0 mm, at most 1000 mm); may be left out
///     wheelbase: from axle to axle [in | mm]; more than 0 in, at most 590.551181102 in (more than 0
///         mm, at most 15000 mm); may be left out
///     clearance: room under the vehicle between its axles [in | mm]; at least 0 in, at most
///         39.3700787402 in (at least 0 mm, at most 1000 mm); may be left out
///     overhang: from the front axle to the bumper [in | mm]; more than 0 in, at most 590.551181102 in
///         (more than 0 mm, at most 15000 mm); may be left out
///     bumper: room under the bumper [in | mm]; at least 0 in, at most 39.3700787402 in (at least 0 mm,
///         at most 1000 mm); may be left out
///     door_width: how wide the door is, for a drain along it [ft | m]; more than 0 ft, at most
///         3280.83989501 ft (more than 0 m, at most 1000 m); may be left out
///     rain: how fast rain comes down on hard ground, for that drain [in/h | mm/h]; at least 0 in/h, at
///         most 39.3700787402 in/h (at least 0 mm/h, at most 1000 mm/h); may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Approach, with the attributes
///         judged: whether every limit is kept: pass, fail, confirm locally
///         needed_ft, needed_m: the floor height from which water falls away as wanted [ft | m]
///         governing_ft, governing_m: how far from the door the place is that decides it [ft | m]
///         spare_in, spare_mm: how far the floor is above that; negative below [in | mm]
///         away: what that does to the water: falls away, floor too low
///         step_in, step_mm: the step at the door, from the outside up to the floor [in | mm]
///         step_limit_in, step_limit_mm: the most that it may be [in | mm]
///         step_judged: whether it is: pass, fail, confirm locally
///         dig_in, dig_mm: how deep old ground has to come out under the new approach; none without
///             tie-in and thickness [in | mm]
///         trench_floor_ft, trench_floor_m: the height that the floor may have with a drain along the
///             door [ft | m]
///         trench_reach_ft, trench_reach_m: how far out the ground falls to the door [ft | m]
///         trench_area_ft2, trench_area_m2: the ground that drains to the door; none without its width
///             [ft2 | m2]
///         trench_flow_gal_per_min, trench_flow_l_per_s: the rain that comes from it; none without rain
///             [gal/min | L/s]
///         stretches: the ground as it will be, a table of stretches
///         breaks: where its grade changes, a table of breaks
///         rules: every rule at every place, a table of rules
///     and notes, basis and taken.
///
/// Raises:
///     ClearanceError: the ground outside a door is known at fewer than two places (APPROACH_SHORT);
///         the ground outside is not known at the door itself (APPROACH_START); the places outside a
///         door do not run outwards from it (APPROACH_UNSORTED); a new approach meets the ground where
///         that is not known (TIE_IN_BEYOND); nothing says how high the floor is at the door
///         (DOOR_UNKNOWN)
///     FormError: the word is not one of the choices (WORD_UNKNOWN)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     plane and solid geometry: derived
///     at least 2 % away from a building: International Residential Code (2015-2021), R401.3,
///         impervious surfaces within 10 ft, as quoted elsewhere
///     the least fall that was given: the project's specification
///     a change of grade of at most 3 % with at least 11 ft between breaks suits most vehicles: TxDOT
///         Roadway Design Manual, driveway guidelines (any), section 4, profiles, private residential
///     a change of grade of 5 % is normal: Maryland COMAR 11.04.05.05 (any), driveway grades
///     a change of grade of at most 8 %: Maryland COMAR 11.04.05.05 (any), driveway grades
///     a driveway of at most 15 %: County highway access rule in the records of the City of Ramsey,
///         Minnesota (any), driveway grades, other than commercial
///     a walk of at most 1:20: ADA Standards for Accessible Design (2010), 403.3, walking surfaces,
///         from memory: confirm
///     a ramp of at most 1:12: ADA Standards for Accessible Design (2010), 405.2, ramps, from memory:
///         confirm
///     a step of at most 1/4 in upright, 1/2 in where it is bevelled 1:2: ADA Standards for Accessible
///         Design (2010), 303, changes in level, from memory: confirm
///     the outside lies 1/2 to 1 in below the floor at the line where a door seals; more is a bump for
///         wheels: common practice, no source
///     a step of at most 7-3/4 in: International Residential Code (2015-2021), R311.7.5.1, risers
///     runoff = coefficient x rain intensity x area: Hydrology textbooks, rational method (Kuichling
///         1889) (any), Q = C i A; C of concrete 0.8 to 0.95, from memory: confirm
///
/// Example:
///     >>> from overslab.clearance import approach
///     >>> answer = approach(
///     ...     floor="100.1 ft",
///     ...     profile={
///     ...         "distance": ["0 ft", "5 ft", "20 ft", "30 ft"],
///     ...         "elevation": ["100 ft", "99.95 ft", "99.6 ft", "99.1 ft"],
///     ...     },
///     ...     tie_in="20 ft",
///     ...     thickness="4 in",
///     ...     rebate="1 in",
///     ...     wheelbase="110 in",
///     ...     clearance="6 in",
///     ...     door_width="9 ft",
///     ...     rain="3 in/h",
///     ... )
///     >>> answer.judged
///     'pass'
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (profile, *, floor=None, finish=None, door=None, traffic=None, fall=None, over=None, tie_in=None, thickness=None, rebate=None, wheelbase=None, clearance=None, overhang=None, bumper=None, door_width=None, rain=None, units=crate::units::Units(None)), text_signature = "(profile, *, floor=None, finish=None, door=None, traffic=None, fall=None, over=None, tie_in=None, thickness=None, rebate=None, wheelbase=None, clearance=None, overhang=None, bumper=None, door_width=None, rain=None, units=None)")]
fn approach(
    py: Python<'_>,
    profile: &Bound<'_, PyAny>,
    floor: Option<&Bound<'_, PyAny>>,
    finish: Option<&Bound<'_, PyAny>>,
    door: Option<&Bound<'_, PyAny>>,
    traffic: Option<&Bound<'_, PyAny>>,
    fall: Option<&Bound<'_, PyAny>>,
    over: Option<&Bound<'_, PyAny>>,
    tie_in: Option<&Bound<'_, PyAny>>,
    thickness: Option<&Bound<'_, PyAny>>,
    rebate: Option<&Bound<'_, PyAny>>,
    wheelbase: Option<&Bound<'_, PyAny>>,
    clearance: Option<&Bound<'_, PyAny>>,
    overhang: Option<&Bound<'_, PyAny>>,
    bumper: Option<&Bound<'_, PyAny>>,
    door_width: Option<&Bound<'_, PyAny>>,
    rain: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &APPROACH, &[floor, finish, door, Some(profile), traffic, fall, over, tie_in, thickness, rebate, wheelbase, clearance, overhang, bumper, door_width, rain], units)
}

/// What `approach` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.clearance")]
pub(crate) struct Approach;

#[pymethods]
impl Approach {
    /// Whether every limit is kept: pass, fail, confirm locally.
    #[getter]
    fn get_judged<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// The floor height from which water falls away as wanted [ft].
    #[getter]
    fn get_needed_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// The floor height from which water falls away as wanted [m].
    #[getter]
    fn get_needed_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// How far from the door the place is that decides it [ft].
    #[getter]
    fn get_governing_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// How far from the door the place is that decides it [m].
    #[getter]
    fn get_governing_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// How far the floor is above that; negative below [in].
    #[getter]
    fn get_spare_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// How far the floor is above that; negative below [mm].
    #[getter]
    fn get_spare_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// What that does to the water: falls away, floor too low.
    #[getter]
    fn get_away<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// The step at the door, from the outside up to the floor [in].
    #[getter]
    fn get_step_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// The step at the door, from the outside up to the floor [mm].
    #[getter]
    fn get_step_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Si)
    }
    /// The most that it may be [in].
    #[getter]
    fn get_step_limit_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// The most that it may be [mm].
    #[getter]
    fn get_step_limit_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Si)
    }
    /// Whether it is: pass, fail, confirm locally.
    #[getter]
    fn get_step_judged<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Us)
    }
    /// How deep old ground has to come out under the new approach; none without tie-in and thickness [in].
    #[getter]
    fn get_dig_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Us)
    }
    /// How deep old ground has to come out under the new approach; none without tie-in and thickness [mm].
    #[getter]
    fn get_dig_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Si)
    }
    /// The height that the floor may have with a drain along the door [ft].
    #[getter]
    fn get_trench_floor_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 9, overslab::quantity::System::Us)
    }
    /// The height that the floor may have with a drain along the door [m].
    #[getter]
    fn get_trench_floor_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 9, overslab::quantity::System::Si)
    }
    /// How far out the ground falls to the door [ft].
    #[getter]
    fn get_trench_reach_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 10, overslab::quantity::System::Us)
    }
    /// How far out the ground falls to the door [m].
    #[getter]
    fn get_trench_reach_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 10, overslab::quantity::System::Si)
    }
    /// The ground that drains to the door; none without its width [ft2].
    #[getter]
    fn get_trench_area_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 11, overslab::quantity::System::Us)
    }
    /// The ground that drains to the door; none without its width [m2].
    #[getter]
    fn get_trench_area_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 11, overslab::quantity::System::Si)
    }
    /// The rain that comes from it; none without rain [gal/min].
    #[getter]
    fn get_trench_flow_gal_per_min<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 12, overslab::quantity::System::Us)
    }
    /// The rain that comes from it; none without rain [L/s].
    #[getter]
    fn get_trench_flow_l_per_s<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 12, overslab::quantity::System::Si)
    }
    /// The ground as it will be, a table of stretches.
    #[getter]
    fn get_stretches<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 13, overslab::quantity::System::Us)
    }
    /// Where its grade changes, a table of breaks.
    #[getter]
    fn get_breaks<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 14, overslab::quantity::System::Us)
    }
    /// Every rule at every place, a table of rules.
    #[getter]
    fn get_rules<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 15, overslab::quantity::System::Us)
    }
}

static CREST_CLEARANCE: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "crest_clearance"),
    class: "CrestClearance",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(CrestClearance))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(CrestClearanceArray))?.into_any()),
};

/// What a crest takes of the room under a vehicle, midway between its axles.
///
/// Rule: lost = wheelbase change / 4; exact = (wheelbase / 2) tan(atan(change) / 2).
/// Takes for granted: wheels as points, a wheelbase apart, the crest midway; one side of it level for
///     the exact form.
///
/// Args:
///     wheelbase: from axle to axle [in | mm]; more than 0 in, at most 590.551181102 in (more than 0
///         mm, at most 15000 mm)
///     change: change of grade [%]; at least 0 %, at most 100 %
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     CrestClearance, with the attributes
///         lost_in, lost_mm: room taken, slopes for angles [in | mm]
///         exact_in, exact_mm: room taken, exactly [in | mm]
///     and notes; for arrays CrestClearanceArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
///         quantity (UNIT_WRONG)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.clearance import crest_clearance
///     >>> answer = crest_clearance(wheelbase="110 in", change="10 %")
///     >>> round(answer.lost_in, 4)
///     2.75
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (wheelbase, change, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(wheelbase, change, *, units=None, errors='raise')")]
fn crest_clearance(
    py: Python<'_>,
    wheelbase: &Bound<'_, PyAny>,
    change: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &CREST_CLEARANCE, &[wheelbase, change], units, errors)
}

/// What `crest_clearance` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.clearance")]
pub(crate) struct CrestClearance;

#[pymethods]
impl CrestClearance {
    /// Room taken, slopes for angles [in].
    #[getter]
    fn get_lost_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Room taken, slopes for angles [mm].
    #[getter]
    fn get_lost_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
    /// Room taken, exactly [in].
    #[getter]
    fn get_exact_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Us)
    }
    /// Room taken, exactly [mm].
    #[getter]
    fn get_exact_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Si)
    }
}

/// What `crest_clearance` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.clearance")]
pub(crate) struct CrestClearanceArray;

#[pymethods]
impl CrestClearanceArray {
    /// Room taken, slopes for angles [in].
    #[getter]
    fn get_lost_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Room taken, slopes for angles [mm].
    #[getter]
    fn get_lost_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Room taken, exactly [in].
    #[getter]
    fn get_exact_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Room taken, exactly [mm].
    #[getter]
    fn get_exact_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Si)
    }
}

static SAG_BREAK: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "sag_break"),
    class: "SagBreak",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SagBreak))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SagBreakArray))?.into_any()),
};

/// The greatest change of grade of a sag that a bumper clears.
///
/// Rule: change = bumper / overhang.
/// Takes for granted: the vehicle stands level with its front axle at the sag; wheels as points.
///
/// Args:
///     overhang: from the front axle to the bumper [in | mm]; more than 0 in, at most 590.551181102 in
///         (more than 0 mm, at most 15000 mm)
///     bumper: room under the bumper [in | mm]; at least 0 in, at most 39.3700787402 in (at least 0 mm,
///         at most 1000 mm)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     SagBreak, with the attributes
///         change_percent: the greatest change of grade [%]
///     and notes; for arrays SagBreakArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.clearance import sag_break
///     >>> answer = sag_break(overhang="36 in", bumper="9 in")
///     >>> round(answer.change_percent, 4)
///     25.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (overhang, bumper, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(overhang, bumper, *, units=None, errors='raise')")]
fn sag_break(
    py: Python<'_>,
    overhang: &Bound<'_, PyAny>,
    bumper: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &SAG_BREAK, &[overhang, bumper], units, errors)
}

/// What `sag_break` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.clearance")]
pub(crate) struct SagBreak;

#[pymethods]
impl SagBreak {
    /// The greatest change of grade [%].
    #[getter]
    fn get_change_percent(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
}

/// What `sag_break` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.clearance")]
pub(crate) struct SagBreakArray;

#[pymethods]
impl SagBreakArray {
    /// The greatest change of grade [%].
    #[getter]
    fn get_change_percent<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
}

static CLEARANCES: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "clearances"),
    class: "Clearances",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Clearances))?.into_any()),
};

/// Doors, steps, walls, appliances, fittings and open edges that the new floor meets: whether each still works, by how much, what the raise forces and whose trade that is.
///
/// Rule: rise = finish - old slab; room = what is left - what is wanted; fill against an edge =
///     integral along it of height x height x run / 2.
/// Takes for granted: a thing outside the work is met at the nearest edge; limits that could not be
///     read in their source never fail, they say to confirm locally.
///
/// Args:
///     survey: the old slab; a Survey
///     finish: the new top surface; a Finish
///     things: the things that it meets; a table of at least 1 row, each one thing that the floor
///         meets, with the measures that its kind reads, with the columns
///         name: what it is called; a text
///         kind: what kind of thing it is; one of "sectional_door", "roll_door", "swinging_door",
///             "sliding_door", "passage_door", "threshold", "stair", "wall_sill", "siding", "framing",
///             "termite_strip", "ignition_source", "headroom", "panel", "drain_rim", "cleanout",
///             "weep_hole", "crawl_vent", "shut_off", "hose_bib", "gas_riser", "post", "anchor",
///             "wire", "buried_service", "open_edge"
///         x: its place, from the left; of a line one end [ft | m]; at least -328083.989501 ft, at most
///             328083.989501 ft (at least -100000 m, at most 100000 m)
///         y: its place, from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft
///             (at least -100000 m, at most 100000 m)
///         to_x: the other end of its line, from the left: doors and edges have one [ft | m]; at least
///             -328083.989501 ft, at most 328083.989501 ft (at least -100000 m, at most 100000 m); may
///             be left out
///         to_y: the other end of its line, from the front [ft | m]; at least -328083.989501 ft, at
///             most 328083.989501 ft (at least -100000 m, at most 100000 m); may be left out
///         elevation: how high it is: header of a vehicle door, leaf of a passage door, sill, lower
///             edge, rim, cap, hole; every kind but stair, open_edge, buried_service [ft | m]; at least
///             -32808.3989501 ft, at most 32808.3989501 ft (at least -10000 m, at most 10000 m); may be
///             left out
///         above_slab: the same as found with a tape above the old slab, in place of elevation; not
///             passage_door [in | mm]; at least -3937.00787402 in, at most 3937.00787402 in (at least
///             -100000 mm, at most 100000 mm); may be left out
///         needed: clear height needed: vehicle doors, headroom [in | mm]; at least 0 in, at most
///             3937.00787402 in (at least 0 mm, at most 100000 mm); may be left out
///         seal_takes: how much out of level the bottom seal takes up: vehicle doors [in | mm]; at
///             least 0 in, at most 3937.00787402 in (at least 0 mm, at most 100000 mm); may be left out
///         eyes_now: photo-eyes above the old slab: sectional_door, roll_door [in | mm]; at least 0 in,
///             at most 3937.00787402 in (at least 0 mm, at most 100000 mm); may be left out
///         gap_now: gap under the leaf now, above the old slab: swinging_door, sliding_door,
///             passage_door [in | mm]; at least 0 in, at most 3937.00787402 in (at least 0 mm, at most
///             100000 mm); may be left out
///         gap: gap wanted under the leaf: swinging_door, sliding_door, passage_door [in | mm]; at
///             least 0 in, at most 3937.00787402 in (at least 0 mm, at most 100000 mm); may be left out
///         covering: covering to come on the floor: passage_door, threshold [in | mm]; at least 0 in,
///             at most 3937.00787402 in (at least 0 mm, at most 100000 mm); may be left out
///         may_lose: how much may be cut off the leaf: swinging_door, passage_door [in | mm]; at least
///             0 in, at most 3937.00787402 in (at least 0 mm, at most 100000 mm); may be left out
///         swing: in over this floor or out: swinging_door, threshold; one of "in", "out"; may be left
///             out
///         runs_outside: whether the leaf runs outside the wall: sliding_door; one of "no", "yes"; may
///             be left out
///         fire_rated: whether it is a fire-rated door: passage_door; one of "no", "yes"; may be left
///             out
///         exit: whether it is a required exit: threshold; one of "no", "yes"; may be left out
///         risers: risers from the bottom up, with semicolons between: stair; a text; may be left out
///         riser_count: number of even risers: stair; a whole number from 1 to 100; may be left out
///         flight: height of the even risers together: stair [in | mm]; at least 0 in, at most
///             3937.00787402 in (at least 0 mm, at most 100000 mm); may be left out
///         end: which end of the stair this floor is: stair; one of "foot", "head"; may be left out
///         ground: ground outside: vehicle doors, wall_sill, siding, and open_edge at its first end [ft
///             | m]; at least -32808.3989501 ft, at most 32808.3989501 ft (at least -10000 m, at most
///             10000 m); may be left out
///         ground_to: ground at the other end: as ground [ft | m]; at least -32808.3989501 ft, at most
///             32808.3989501 ft (at least -10000 m, at most 10000 m); may be left out
///         free: how much stays free: threshold, termite_strip, panel, cleanout, weep_hole, crawl_vent,
///             shut_off, hose_bib, gas_riser [in | mm]; at least 0 in, at most 3937.00787402 in (at
///             least 0 mm, at most 100000 mm); may be left out
///         exposed: whether weather reaches the wood: siding; one of "no", "yes"; may be left out
///         vehicles: whether vehicles are parked in the room: ignition_source; one of "no", "yes"; may
///             be left out
///         listed: whether it is listed as resistant to flammable vapour: ignition_source; one of "no",
///             "yes"; may be left out
///         kept_free: whether it is kept out of the concrete, boxed out or sleeved: framing, post,
///             anchor, wire; one of "no", "yes"; may be left out
///         located: whether services are located and marked: buried_service; one of "no", "yes"; may be
///             left out
///         route: whether anybody walks over it: open_edge; one of "no", "yes"; may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Clearances, with the attributes
///         passed: things that still work
///         confirm_locally: things that break a limit which is to be confirmed locally
///         ask: things of which a measure that decides is missing
///         fail: things that do not work as they stand
///         judgements: each thing, a table of judgements
///         checks: each check of each thing, a table of checks
///         works: the work that the raise forces, a table of works
///         text: the same for the site, one thing to a line
///     and notes, basis and taken.
///
/// Raises:
///     FormError: the list is empty (EMPTY_LIST); two values say the same thing differently
///         (CONTRADICTION); the word is not one of the choices (WORD_UNKNOWN)
///     ClearanceError: a thing of this kind has a line, and one place was given (LINE_NEEDED); a thing
///         lies too far from the floor to be met by it (THING_OFF_FLOOR); a measure that a thing of
///         this kind has no use for (MEASURE_NOT_READ); the ground along an edge is not given at every
///         place of its line (GROUND_MISSING)
///
/// Basis:
///     plane and solid geometry: derived
///     a figure that the caller gave for this thing: the project's specification
///     a raise of 2 to 3 in is usually met by raising the doors, each kind in its own way: common
///         practice, no source
///     a door line is level within 1/4 in, what a bottom seal takes up: common practice, no source
///     the outside lies 1/2 to 1 in below the floor at the line where a door seals; more is a bump for
///         wheels: common practice, no source
///     photo-eyes at most 6 in above the floor: United States rule on automatic residential door
///         operators, 16 CFR 1211 (any), photoelectric sensors, from memory: confirm
///     3/8 in under a leaf: common practice, no source
///     a door between house and parking is rated or solid, and is not altered: International
///         Residential Code (2015-2021), R302.5.1, opening protection, from memory: confirm
///     the landing at the required exit at most 1 1/2 in below the threshold, 7 3/4 in where the door
///         does not swing over it: International Residential Code (2015-2021), R311.3, floors and
///         landings at exterior doors, from memory: confirm
///     risers at most 7 3/4 in, the greatest and the least of a flight at most 3/8 in apart:
///         International Residential Code (2015-2021), R311.7.5.1, risers
///     wood sills on foundations at least 8 in above the earth: International Residential Code
///         (2015-2021), R317.1, protection of wood against decay, from memory: confirm
///     unprotected wood siding at least 6 in above the ground and 2 in above slabs in the weather:
///         International Residential Code (2015-2021), R317.1, item 5, as quoted elsewhere
///     4 to 6 in of foundation kept bare for inspection: Model codes and local rules on termites (any),
///         inspection strip, from memory: confirm
///     ignition sources at least 18 in above a floor where vehicles are parked, unless listed as
///         resistant to vapour: International Residential Code (2015-2021), M1307.3 and G2408.2, from
///         memory: confirm
///     7 ft clear over public parking; rooms that nobody lives in have no limit of their own:
///         International Building Code (2015-2021), 406.2.2, clear height, from memory: confirm
///     the working space at an electric panel is kept: National Electrical Code (any), 110.26, working
///         space, from memory: confirm
///     a drain's rim flush, or 1/8 to 1/4 in below the floor, dished 12 in around: common practice, no
///         source
///     free above the floor: caps and boxes flush, weep holes and vents 1 in, gas risers 3 in, taps 6
///         in: common practice, no source
///     services below are located and marked before anything is driven or cut: State laws on locating
///         services below ground (any), call before digging, from memory: confirm
///     a step of at most 1/4 in upright, 1/2 in where it is bevelled 1:2: ADA Standards for Accessible
///         Design (2010), 303, changes in level, from memory: confirm
///     a guard where walking surfaces are more than 30 in above what is below: International
///         Residential Code (2015-2021), R312.1, guards, from memory: confirm
///     ground is filled against a new edge at 1 in 6 to 1 in 12: common practice, no source
///
/// Example:
///     >>> from overslab.clearance import clearances
///     >>> answer = clearances(
///     ...     survey={
///     ...         "outline": {
///     ...             "corners": [
///     ...                 {"x": "0 ft", "y": "0 ft"},
///     ...                 {"x": "20 ft", "y": "0 ft"},
///     ...                 {"x": "20 ft", "y": "24 ft"},
///     ...                 {"x": "0 ft", "y": "24 ft"},
///     ...             ],
///     ...             "edges": ["front", "right", "back", "left"],
///     ...         },
///     ...         "shots": [
///     ...             {"x": "1 ft", "y": "1 ft", "elevation": "99.20 ft"},
///     ...             {"x": "19 ft", "y": "1 ft", "elevation": "99.22 ft"},
///     ...             {"x": "19 ft", "y": "23 ft", "elevation": "99.40 ft"},
///     ...             {"x": "1 ft", "y": "23 ft", "elevation": "99.38 ft"},
///     ...         ],
///     ...     },
///     ...     finish={"level": "99.7 ft"},
///     ...     things=[
///     ...         {
///     ...             "name": "wide door",
///     ...             "kind": "sectional_door",
///     ...             "x": "4 ft",
///     ...             "y": "1/2 in",
///     ...             "to_x": "16 ft",
///     ...             "to_y": "1/2 in",
///     ...             "above_slab": "7' 6\"",
///     ...             "needed": "84 in",
///     ...         },
///     ...         {
///     ...             "name": "cleanout",
///     ...             "kind": "cleanout",
///     ...             "x": "3 ft",
///     ...             "y": "20 ft",
///     ...             "above_slab": "1 in",
///     ...         },
///     ...     ],
///     ... )
///     >>> answer.passed
///     0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, finish, things, *, units=crate::units::Units(None)), text_signature = "(survey, finish, things, *, units=None)")]
fn clearances(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    finish: &Bound<'_, PyAny>,
    things: &Bound<'_, PyAny>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &CLEARANCES, &[Some(survey), Some(finish), Some(things)], units)
}

/// What `clearances` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.clearance")]
pub(crate) struct Clearances;

#[pymethods]
impl Clearances {
    /// Things that still work.
    #[getter]
    fn get_passed<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Things that break a limit which is to be confirmed locally.
    #[getter]
    fn get_confirm_locally<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Things of which a measure that decides is missing.
    #[getter]
    fn get_ask<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Things that do not work as they stand.
    #[getter]
    fn get_fail<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Each thing, a table of judgements.
    #[getter]
    fn get_judgements<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Each check of each thing, a table of checks.
    #[getter]
    fn get_checks<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// The work that the raise forces, a table of works.
    #[getter]
    fn get_works<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// The same for the site, one thing to a line.
    #[getter]
    fn get_text<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Us)
    }
}

/// The scalar rows.
pub(crate) static SCALARS: &[&crate::scalars::ScalarRow] = &[&CREST_CLEARANCE, &SAG_BREAK];

/// The rows with records.
pub(crate) static ANSWERS: &[&crate::answers::RecordRow] = &[&APPROACH, &CLEARANCES];

/// The classes of records.
pub(crate) static RECORDS: &[crate::records::RecordClass] = &[];

/// Puts functions and classes into the native module.
pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(self::approach, module)?)?;
    module.add_class::<Approach>()?;
    module.add_function(wrap_pyfunction!(self::crest_clearance, module)?)?;
    module.add_class::<CrestClearance>()?;
    module.add_class::<CrestClearanceArray>()?;
    module.add_function(wrap_pyfunction!(self::sag_break, module)?)?;
    module.add_class::<SagBreak>()?;
    module.add_class::<SagBreakArray>()?;
    module.add_function(wrap_pyfunction!(self::clearances, module)?)?;
    module.add_class::<Clearances>()?;
    Ok(())
}
