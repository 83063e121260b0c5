//! The operations of `overlay`: made from the table of operations by `tests/src/generate/python`; do not edit.

#![allow(clippy::too_many_arguments, reason = "one for each port")]

use pyo3::prelude::*;

static CONDITION_FACTOR: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "condition_factor"),
    class: "ConditionFactor",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ConditionFactor))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ConditionFactorArray))?.into_any()),
};

/// The condition factor of an old slab by what is seen.
///
/// Rule: sound 1.00; a few cracks that do not grow 0.75; badly cracked 0.35.
/// Takes for granted: what is seen holds for the whole slab.
///
/// Args:
///     condition: what the old slab looks like; one of "sound", "few cracks, still", "badly cracked"
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     ConditionFactor, with the attributes
///         factor_ratio: condition factor C [1]
///     and notes; for arrays ConditionFactorArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     FormError: the word is not one of the choices (WORD_UNKNOWN)
///
/// Basis:
///     C = 1.00 sound, 0.75 a few cracks that do not grow, 0.35 badly cracked: UFC 3-260-02 and
///         3-260-03 (2001), examples: 0.75 and 0.35 read, classes recalled, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import condition_factor
///     >>> answer = condition_factor(condition="few cracks, still")
///     >>> round(answer.factor_ratio, 4)
///     0.75
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (condition, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(condition, *, units=None, errors='raise')")]
fn condition_factor(
    py: Python<'_>,
    condition: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &CONDITION_FACTOR, &[condition], units, errors)
}

/// What `condition_factor` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct ConditionFactor;

#[pymethods]
impl ConditionFactor {
    /// Condition factor C [1].
    #[getter]
    fn get_factor_ratio(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
}

/// What `condition_factor` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct ConditionFactorArray;

#[pymethods]
impl ConditionFactorArray {
    /// Condition factor C [1].
    #[getter]
    fn get_factor_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
}

static OVERLAY_MINIMUM: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "overlay_minimum"),
    class: "OverlayMinimum",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(OverlayMinimum))?.into_any()),
};

/// How thin an overlay may be in practice by its bond, its use and its stone, the largest stone for it, and what goes between old and new.
///
/// Rule: least = the larger of the rule for bond and use and 3 x stone; largest stone = least / 3.
/// Takes for granted: a sound old slab; no edge runs out to nothing: it ends at a sawn and chipped key
///     at least as deep.
///
/// Args:
///     bond: how the overlay holds to the old slab; one of "bonded", "partly bonded", "unbonded"
///     used: what the floor is used for; one of "people", "cars", "trucks", "wash bay", "jacks",
///         "heavier"
///     stone: largest stone of the mix [in | mm]; at least 0.125 in, at most 3 in (at least 3.175 mm,
///         at most 76.2 mm); may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     OverlayMinimum, with the attributes
///         least_in, least_mm: least thickness anywhere [in | mm]
///         largest_stone_in, largest_stone_mm: largest stone for that thickness [in | mm]
///         greatest_usual_in, greatest_usual_mm: usual at most; none where stress alone decides [in |
///             mm]
///         between: what goes between old and new
///         means: what that means for the floor
///         rests_on: the basis that decides, by name
///         rules: every rule about it, with its source, a table of rules
///     and notes, basis and taken.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///     FormError: the word is not one of the choices (WORD_UNKNOWN)
///
/// Basis:
///     bonded floor topping at least 3/4 in: ACI 302.1R (several), bonded toppings, from memory:
///         confirm
///     unbonded floor topping at least 3 in: ACI 302.1R (1996 and later), unbonded toppings, from
///         memory: confirm
///     unbonded floor topping at least 2 1/2 in: Concrete Construction, citing ACI 302.1R (1980),
///         unbonded toppings, as quoted elsewhere
///     under 3 in a bonding agent goes down first, and about 1 1/2 to 2 in can be poured: common
///         practice, no source
///     at 3 in and more a sound old slab is poured over without bond; broken, settling, heaving slabs
///         come out: common practice, no source
///     4 in under trucks, in wash bays, under jacks; 5 in and more by stress: common practice, no
///         source
///     bonded overlay of a road at least 2 in: Guide to Concrete Overlay Solutions (2007), bonded, 2 to
///         5 in
///     airfields: bonded 2 to 3 in, others 5 to 6 in: FAA and UFC airfield pavements (several), least
///         overlay, from memory: confirm
///     the thinnest part is at least three times the largest stone: ACI 302.1R (several), coarse
///         aggregate in toppings, from memory: confirm
///     no feather edge: a sawn and chipped key at least the least thickness deep: ACI 546R (several),
///         edges of repairs, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import overlay_minimum
///     >>> answer = overlay_minimum(bond="unbonded", used="cars", stone="3/4 in")
///     >>> round(answer.least_in, 4)
///     3.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (bond, used, *, stone=None, units=crate::units::Units(None)), text_signature = "(bond, used, *, stone=None, units=None)")]
fn overlay_minimum(
    py: Python<'_>,
    bond: &Bound<'_, PyAny>,
    used: &Bound<'_, PyAny>,
    stone: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &OVERLAY_MINIMUM, &[Some(bond), Some(used), stone], units)
}

/// What `overlay_minimum` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.overlay")]
pub(crate) struct OverlayMinimum;

#[pymethods]
impl OverlayMinimum {
    /// Least thickness anywhere [in].
    #[getter]
    fn get_least_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Least thickness anywhere [mm].
    #[getter]
    fn get_least_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Largest stone for that thickness [in].
    #[getter]
    fn get_largest_stone_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Largest stone for that thickness [mm].
    #[getter]
    fn get_largest_stone_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Usual at most; none where stress alone decides [in].
    #[getter]
    fn get_greatest_usual_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Usual at most; none where stress alone decides [mm].
    #[getter]
    fn get_greatest_usual_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// What goes between old and new.
    #[getter]
    fn get_between<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// What that means for the floor.
    #[getter]
    fn get_means<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// The basis that decides, by name.
    #[getter]
    fn get_rests_on<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// Every rule about it, with its source, a table of rules.
    #[getter]
    fn get_rules<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
}

static SURFACE_PROFILE: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "surface_profile"),
    class: "SurfaceProfile",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SurfaceProfile))?.into_any()),
};

/// How rough the old surface must be for what goes on it, and the ways to it.
///
/// Rule: by table: sealer 1 to 2, thin film 1 to 3, high-build coating 3 to 5, self-levelling 4 to 6,
///     polymer overlay 5 to 9, concrete overlay 5 to 10, bonded topping 7 to 9.
/// Takes for granted: sound, clean concrete; profiles 1 smooth to 10 rough; before a bonded overlay the
///     surface is wetted the day before, damp and without standing water.
///
/// Args:
///     covering: what goes on the old surface; one of "sealer", "thin film", "high-build coating",
///         "self-levelling", "polymer overlay", "concrete overlay", "bonded topping"
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     SurfaceProfile, with the attributes
///         least: smoothest profile
///         greatest: roughest profile
///         rests_on: its basis, by name
///         ways: the ways to these profiles, a table of ways
///     and notes, basis and taken.
///
/// Raises:
///     FormError: the word is not one of the choices (WORD_UNKNOWN)
///
/// Basis:
///     self-levelling 4 to 6, bonded topping 7 to 9: ICRI 310.2R, as quoted by a design note and a
///         trade page (2013), profiles, as quoted elsewhere
///     surface profile by covering: ICRI 310.2R (2013), profiles by covering, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import surface_profile
///     >>> answer = surface_profile(covering="bonded topping")
///     >>> answer.least
///     7
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (covering, *, units=crate::units::Units(None)), text_signature = "(covering, *, units=None)")]
fn surface_profile(
    py: Python<'_>,
    covering: &Bound<'_, PyAny>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &SURFACE_PROFILE, &[Some(covering)], units)
}

/// What `surface_profile` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.overlay")]
pub(crate) struct SurfaceProfile;

#[pymethods]
impl SurfaceProfile {
    /// Smoothest profile.
    #[getter]
    fn get_least<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Roughest profile.
    #[getter]
    fn get_greatest<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Its basis, by name.
    #[getter]
    fn get_rests_on<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// The ways to these profiles, a table of ways.
    #[getter]
    fn get_ways<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
}

static PULL_OFF: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "pull_off"),
    class: "PullOff",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(PullOff))?.into_any()),
};

/// The pull-off strength of a core, held against what the project's specification asks.
///
/// Rule: strength = 4 load / (pi diameter^2).
/// Takes for granted: the core goes at least 1/2 in into the old concrete; no standard gives an
///     acceptance number: it is the project's.
///
/// Args:
///     load: load at which it broke [lbf | kN]; more than 0 lbf, at most 22480.89431 lbf (more than 0
///         kN, at most 100 kN)
///     diameter: diameter of the core, usually 2 in [in | mm]; at least 1 in, at most 6 in (at least
///         25.4 mm, at most 152.4 mm)
///     broke: where it broke; one of "old concrete", "between", "overlay", "glue"
///     asked: strength that is asked for [psi | MPa]; more than 0 psi, at most 1450.3773773 psi (more
///         than 0 MPa, at most 10 MPa); where it is not given 200 psi is taken: often asked; the
///         project's specification decides
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     PullOff, with the attributes
///         strength_psi, strength_mpa: pull-off strength [psi | MPa]
///         verdict: what the test says: enough, too little, void
///     and notes, basis and taken.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     f = 4 P / (pi d^2): ASTM C1583 (any), load over area, from memory: confirm
///     200 psi is often asked: the project's specification
///
/// Example:
///     >>> from overslab.overlay import pull_off
///     >>> answer = pull_off(load="800 lb", diameter="2 in", broke="old concrete")
///     >>> round(answer.strength_psi, 4)
///     254.6479
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (load, diameter, broke, *, asked=None, units=crate::units::Units(None)), text_signature = "(load, diameter, broke, *, asked=None, units=None)")]
fn pull_off(
    py: Python<'_>,
    load: &Bound<'_, PyAny>,
    diameter: &Bound<'_, PyAny>,
    broke: &Bound<'_, PyAny>,
    asked: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &PULL_OFF, &[Some(load), Some(diameter), Some(broke), asked], units)
}

/// What `pull_off` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.overlay")]
pub(crate) struct PullOff;

#[pymethods]
impl PullOff {
    /// Pull-off strength [psi].
    #[getter]
    fn get_strength_psi<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Pull-off strength [MPa].
    #[getter]
    fn get_strength_mpa<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// What the test says: enough, too little, void.
    #[getter]
    fn get_verdict<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
}

static OVERLAY_REQUIRED: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "overlay_required"),
    class: "OverlayRequired",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(OverlayRequired))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(OverlayRequiredArray))?.into_any()),
};

/// The overlay thickness that an old slab needs, bonded, partly bonded or unbonded; zero where the old slab is enough.
///
/// Rule: overlay = (required_new^n - condition (required_new / required_old x old_slab)^n)^(1/n); n = 1
///     bonded (condition 1: required_new - old_slab), 1.4 partly bonded, 2 unbonded; a negative bracket
///     is no need.
/// Takes for granted: the equations are empirical, from full-scale traffic tests on airfields; the
///     practical least thickness is apart.
///
/// Args:
///     bond: how the overlay holds to the old slab; one of "bonded", "partly bonded", "unbonded"
///     required_new: single slab that the new concrete would need on this ground [in | mm]; more than 0
///         in, at most 78.7401574803 in (more than 0 mm, at most 2000 mm)
///     required_old: a single slab of the old concrete would need so much [in | mm]; more than 0 in, at
///         most 78.7401574803 in (more than 0 mm, at most 2000 mm)
///     old_slab: thickness of the old slab [in | mm]; more than 0 in, at most 78.7401574803 in (more
///         than 0 mm, at most 2000 mm)
///     condition: condition factor C of the old slab; 1 for a bonded overlay [1]; at least 0.1 1, at
///         most 1 1
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     OverlayRequired, with the attributes
///         overlay_in, overlay_mm: thickness of the overlay [in | mm]
///     and notes; for arrays OverlayRequiredArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     OverlayError: a bonded overlay is figured over a sound slab only (BOND_NEEDS_SOUND)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
///         quantity (UNIT_WRONG)
///
/// Basis:
///     ho = (hd^n - C (hd/he hE)^n)^(1/n), n = 1 bonded, 1.4 partly bonded, 2 unbonded: UFC 3-260-02,
///         Pavement Design for Airfields (2001), ch. 17, Eq. 17-1 to 17-3; examples read, forms
///         recalled, from memory: confirm
///     C = 1.00 sound, 0.75 a few cracks that do not grow, 0.35 badly cracked: UFC 3-260-02 and
///         3-260-03 (2001), examples: 0.75 and 0.35 read, classes recalled, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import overlay_required
///     >>> answer = overlay_required(
///     ...     bond="unbonded",
///     ...     required_new="9 in",
///     ...     required_old="9 in",
///     ...     old_slab="6 in",
///     ...     condition="1 ratio",
///     ... )
///     >>> round(answer.overlay_in, 4)
///     6.7082
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (bond, required_new, required_old, old_slab, condition, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(bond, required_new, required_old, old_slab, condition, *, units=None, errors='raise')")]
fn overlay_required(
    py: Python<'_>,
    bond: &Bound<'_, PyAny>,
    required_new: &Bound<'_, PyAny>,
    required_old: &Bound<'_, PyAny>,
    old_slab: &Bound<'_, PyAny>,
    condition: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &OVERLAY_REQUIRED, &[bond, required_new, required_old, old_slab, condition], units, errors)
}

/// What `overlay_required` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct OverlayRequired;

#[pymethods]
impl OverlayRequired {
    /// Thickness of the overlay [in].
    #[getter]
    fn get_overlay_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Thickness of the overlay [mm].
    #[getter]
    fn get_overlay_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `overlay_required` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct OverlayRequiredArray;

#[pymethods]
impl OverlayRequiredArray {
    /// Thickness of the overlay [in].
    #[getter]
    fn get_overlay_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Thickness of the overlay [mm].
    #[getter]
    fn get_overlay_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static SLAB_EQUIVALENT: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "slab_equivalent"),
    class: "SlabEquivalent",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SlabEquivalent))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SlabEquivalentArray))?.into_any()),
};

/// The single slab that an overlay and the old slab under it are worth together.
///
/// Rule: equivalent = (overlay^n + condition x old_slab^n)^(1/n); n = 1 bonded, 1.4 partly bonded, 2
///     unbonded.
/// Takes for granted: both concretes are alike in strength.
///
/// Args:
///     bond: how the overlay holds to the old slab; one of "bonded", "partly bonded", "unbonded"
///     overlay: thickness of the overlay [in | mm]; more than 0 in, at most 78.7401574803 in (more than
///         0 mm, at most 2000 mm)
///     old_slab: the old slab's thickness [in | mm]; more than 0 in, at most 78.7401574803 in (more
///         than 0 mm, at most 2000 mm)
///     condition: condition factor C of the old slab; 1 for a bonded overlay [1]; at least 0.1 1, at
///         most 1 1
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     SlabEquivalent, with the attributes
///         equivalent_in, equivalent_mm: the single slab [in | mm]
///     and notes; for arrays SlabEquivalentArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     OverlayError: a bonded overlay is figured over a sound slab only (BOND_NEEDS_SOUND)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     h = (ho^n + C hb^n)^(1/n): UFC 3-260-03, Airfield Pavement Evaluation (2001), ch. 6, Eq. 6-3
///         (1.4; the others follow Eq. 17-1 and 17-3)
///     C = 1.00 sound, 0.75 a few cracks that do not grow, 0.35 badly cracked: UFC 3-260-02 and
///         3-260-03 (2001), examples: 0.75 and 0.35 read, classes recalled, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import slab_equivalent
///     >>> answer = slab_equivalent(
///     ...     bond="partly bonded",
///     ...     overlay="6 in",
///     ...     old_slab="6 in",
///     ...     condition="1 ratio",
///     ... )
///     >>> round(answer.equivalent_in, 4)
///     9.844
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (bond, overlay, old_slab, condition, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(bond, overlay, old_slab, condition, *, units=None, errors='raise')")]
fn slab_equivalent(
    py: Python<'_>,
    bond: &Bound<'_, PyAny>,
    overlay: &Bound<'_, PyAny>,
    old_slab: &Bound<'_, PyAny>,
    condition: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &SLAB_EQUIVALENT, &[bond, overlay, old_slab, condition], units, errors)
}

/// What `slab_equivalent` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct SlabEquivalent;

#[pymethods]
impl SlabEquivalent {
    /// The single slab [in].
    #[getter]
    fn get_equivalent_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// The single slab [mm].
    #[getter]
    fn get_equivalent_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `slab_equivalent` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct SlabEquivalentArray;

#[pymethods]
impl SlabEquivalentArray {
    /// The single slab [in].
    #[getter]
    fn get_equivalent_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// The single slab [mm].
    #[getter]
    fn get_equivalent_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static OVERLAY_EFFECTIVE_BONDED: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "overlay_effective_bonded"),
    class: "OverlayEffectiveBonded",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(OverlayEffectiveBonded))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(OverlayEffectiveBondedArray))?.into_any()),
};

/// What an old slab is worth under a bonded overlay, and the overlay that follows.
///
/// Rule: effective = joints x durability x fatigue x old_slab; overlay = required - effective, none
///     where negative.
/// Takes for granted: the factors come from a survey of joints, cracks and durability.
///
/// Args:
///     required: single slab required for the traffic to come [in | mm]; more than 0 in, at most
///         78.7401574803 in (more than 0 mm, at most 2000 mm)
///     old_slab: thickness of the old slab [in | mm]; more than 0 in, at most 78.7401574803 in (more
///         than 0 mm, at most 2000 mm)
///     joints: factor for joints and cracks left open; 1 where all are mended [1]; at least 0.3 1, at
///         most 1 1
///     durability: durability factor: 1 none lost, 0.96 to 0.99 cracking, 0.80 to 0.95 with spalling
///         [1]; at least 0.3 1, at most 1 1
///     fatigue: fatigue factor: 0.97 to 1 few transverse cracks, 0.94 to 0.96 many, 0.90 to 0.93 very
///         many [1]; at least 0.3 1, at most 1 1
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     OverlayEffectiveBonded, with the attributes
///         effective_in, effective_mm: what the old slab is worth [in | mm]
///         overlay_in, overlay_mm: thickness of the overlay [in | mm]
///     and notes; for arrays OverlayEffectiveBondedArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     bonded Deff = Fjc Fdur Ffat D, unbonded Deff = Fjcu D with D at most 10 in: AASHTO Guide for
///         Design of Pavement Structures (1993), Part III, 5.8 and 5.9, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import overlay_effective_bonded
///     >>> answer = overlay_effective_bonded(
///     ...     required="10 in",
///     ...     old_slab="8 in",
///     ...     joints="0.9 ratio",
///     ...     durability="1 ratio",
///     ...     fatigue="0.97 ratio",
///     ... )
///     >>> round(answer.effective_in, 4)
///     6.984
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (required, old_slab, joints, durability, fatigue, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(required, old_slab, joints, durability, fatigue, *, units=None, errors='raise')")]
fn overlay_effective_bonded(
    py: Python<'_>,
    required: &Bound<'_, PyAny>,
    old_slab: &Bound<'_, PyAny>,
    joints: &Bound<'_, PyAny>,
    durability: &Bound<'_, PyAny>,
    fatigue: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &OVERLAY_EFFECTIVE_BONDED, &[required, old_slab, joints, durability, fatigue], units, errors)
}

/// What `overlay_effective_bonded` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct OverlayEffectiveBonded;

#[pymethods]
impl OverlayEffectiveBonded {
    /// What the old slab is worth [in].
    #[getter]
    fn get_effective_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// What the old slab is worth [mm].
    #[getter]
    fn get_effective_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
    /// Thickness of the overlay [in].
    #[getter]
    fn get_overlay_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Us)
    }
    /// Thickness of the overlay [mm].
    #[getter]
    fn get_overlay_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Si)
    }
}

/// What `overlay_effective_bonded` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct OverlayEffectiveBondedArray;

#[pymethods]
impl OverlayEffectiveBondedArray {
    /// What the old slab is worth [in].
    #[getter]
    fn get_effective_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// What the old slab is worth [mm].
    #[getter]
    fn get_effective_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Thickness of the overlay [in].
    #[getter]
    fn get_overlay_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Thickness of the overlay [mm].
    #[getter]
    fn get_overlay_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Si)
    }
}

static OVERLAY_EFFECTIVE_UNBONDED: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "overlay_effective_unbonded"),
    class: "OverlayEffectiveUnbonded",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(OverlayEffectiveUnbonded))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(OverlayEffectiveUnbondedArray))?.into_any()),
};

/// What an old slab is worth under an unbonded overlay, and the overlay that follows.
///
/// Rule: effective = joints x old_slab, old_slab entered as 10 in at most; overlay = sqrt(required^2 -
///     effective^2), none where negative.
/// Takes for granted: a breaker or a levelling course lies between.
///
/// Args:
///     required: single slab required for the traffic to come [in | mm]; more than 0 in, at most
///         78.7401574803 in (more than 0 mm, at most 2000 mm)
///     old_slab: thickness of the old slab [in | mm]; more than 0 in, at most 78.7401574803 in (more
///         than 0 mm, at most 2000 mm)
///     joints: factor for joints and cracks left open: 1 none, about 0.9 at 200 a mile [1]; at least
///         0.3 1, at most 1 1
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     OverlayEffectiveUnbonded, with the attributes
///         effective_in, effective_mm: what the old slab is worth [in | mm]
///         overlay_in, overlay_mm: thickness of the overlay [in | mm]
///     and notes; for arrays OverlayEffectiveUnbondedArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); a number stands without its unit
///         (UNIT_MISSING)
///
/// Basis:
///     bonded Deff = Fjc Fdur Ffat D, unbonded Deff = Fjcu D with D at most 10 in: AASHTO Guide for
///         Design of Pavement Structures (1993), Part III, 5.8 and 5.9, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import overlay_effective_unbonded
///     >>> answer = overlay_effective_unbonded(
///     ...     required="10 in",
///     ...     old_slab="8 in",
///     ...     joints="0.95 ratio",
///     ... )
///     >>> round(answer.effective_in, 4)
///     7.6
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (required, old_slab, joints, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(required, old_slab, joints, *, units=None, errors='raise')")]
fn overlay_effective_unbonded(
    py: Python<'_>,
    required: &Bound<'_, PyAny>,
    old_slab: &Bound<'_, PyAny>,
    joints: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &OVERLAY_EFFECTIVE_UNBONDED, &[required, old_slab, joints], units, errors)
}

/// What `overlay_effective_unbonded` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct OverlayEffectiveUnbonded;

#[pymethods]
impl OverlayEffectiveUnbonded {
    /// What the old slab is worth [in].
    #[getter]
    fn get_effective_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// What the old slab is worth [mm].
    #[getter]
    fn get_effective_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
    /// Thickness of the overlay [in].
    #[getter]
    fn get_overlay_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Us)
    }
    /// Thickness of the overlay [mm].
    #[getter]
    fn get_overlay_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Si)
    }
}

/// What `overlay_effective_unbonded` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct OverlayEffectiveUnbondedArray;

#[pymethods]
impl OverlayEffectiveUnbondedArray {
    /// What the old slab is worth [in].
    #[getter]
    fn get_effective_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// What the old slab is worth [mm].
    #[getter]
    fn get_effective_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Thickness of the overlay [in].
    #[getter]
    fn get_overlay_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Thickness of the overlay [mm].
    #[getter]
    fn get_overlay_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Si)
    }
}

static CONCRETE_MODULUS: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "concrete_modulus"),
    class: "ConcreteModulus",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ConcreteModulus))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ConcreteModulusArray))?.into_any()),
};

/// The modulus of elasticity of normal-weight concrete from its compressive strength.
///
/// Rule: modulus = 57000 sqrt(strength), psi.
/// Takes for granted: normal-weight concrete.
///
/// Args:
///     strength: compressive strength f'c [psi | MPa]; at least 1000 psi, at most 15000 psi (at least
///         6.89475729317 MPa, at most 103.421359398 MPa)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     ConcreteModulus, with the attributes
///         modulus_psi, modulus_mpa: modulus of elasticity [psi | MPa]
///     and notes; for arrays ConcreteModulusArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
///         quantity (UNIT_WRONG)
///
/// Basis:
///     Ec = 57000 sqrt(f'c), or 33 w^1.5 sqrt(f'c), psi: ACI 318 (2019), 19.2.2.1, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import concrete_modulus
///     >>> answer = concrete_modulus(strength="4,000 psi")
///     >>> round(answer.modulus_psi, 4)
///     3604996.5326
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (strength, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(strength, *, units=None, errors='raise')")]
fn concrete_modulus(
    py: Python<'_>,
    strength: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &CONCRETE_MODULUS, &[strength], units, errors)
}

/// What `concrete_modulus` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct ConcreteModulus;

#[pymethods]
impl ConcreteModulus {
    /// Modulus of elasticity [psi].
    #[getter]
    fn get_modulus_psi(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Modulus of elasticity [MPa].
    #[getter]
    fn get_modulus_mpa(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `concrete_modulus` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct ConcreteModulusArray;

#[pymethods]
impl ConcreteModulusArray {
    /// Modulus of elasticity [psi].
    #[getter]
    fn get_modulus_psi<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Modulus of elasticity [MPa].
    #[getter]
    fn get_modulus_mpa<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static CONCRETE_MODULUS_BY_DENSITY: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "concrete_modulus_by_density"),
    class: "ConcreteModulusByDensity",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ConcreteModulusByDensity))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ConcreteModulusByDensityArray))?.into_any()),
};

/// The modulus of elasticity of concrete from its compressive strength and unit weight.
///
/// Rule: modulus = 33 density^1.5 sqrt(strength), psi and lb/ft3.
/// Takes for granted: 90 to 160 lb/ft3.
///
/// Args:
///     strength: compressive strength f'c [psi | MPa]; at least 1000 psi, at most 15000 psi (at least
///         6.89475729317 MPa, at most 103.421359398 MPa)
///     density: unit weight [lb/ft3 | kg/m3]; at least 90 lb/ft3, at most 160 lb/ft3 (at least
///         1441.66170366 kg/m3, at most 2562.95413983 kg/m3)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     ConcreteModulusByDensity, with the attributes
///         modulus_psi, modulus_mpa: modulus of elasticity [psi | MPa]
///     and notes; for arrays ConcreteModulusByDensityArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     Ec = 57000 sqrt(f'c), or 33 w^1.5 sqrt(f'c), psi: ACI 318 (2019), 19.2.2.1, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import concrete_modulus_by_density
///     >>> answer = concrete_modulus_by_density(strength="4,000 psi", density="145 lb/ft3")
///     >>> round(answer.modulus_psi, 4)
///     3644147.4312
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (strength, density, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(strength, density, *, units=None, errors='raise')")]
fn concrete_modulus_by_density(
    py: Python<'_>,
    strength: &Bound<'_, PyAny>,
    density: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &CONCRETE_MODULUS_BY_DENSITY, &[strength, density], units, errors)
}

/// What `concrete_modulus_by_density` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct ConcreteModulusByDensity;

#[pymethods]
impl ConcreteModulusByDensity {
    /// Modulus of elasticity [psi].
    #[getter]
    fn get_modulus_psi(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Modulus of elasticity [MPa].
    #[getter]
    fn get_modulus_mpa(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `concrete_modulus_by_density` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct ConcreteModulusByDensityArray;

#[pymethods]
impl ConcreteModulusByDensityArray {
    /// Modulus of elasticity [psi].
    #[getter]
    fn get_modulus_psi<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Modulus of elasticity [MPa].
    #[getter]
    fn get_modulus_mpa<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static CONCRETE_RUPTURE: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "concrete_rupture"),
    class: "ConcreteRupture",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ConcreteRupture))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ConcreteRuptureArray))?.into_any()),
};

/// The modulus of rupture of normal-weight concrete from its compressive strength, by the building code or by the design of floors on ground.
///
/// Rule: rupture = 7.5 sqrt(strength) or 9 sqrt(strength), psi.
/// Takes for granted: normal-weight concrete.
///
/// Args:
///     strength: compressive strength f'c [psi | MPa]; at least 1000 psi, at most 15000 psi (at least
///         6.89475729317 MPa, at most 103.421359398 MPa)
///     formula: which formula; one of "building code, 7.5", "floor design, 9"
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     ConcreteRupture, with the attributes
///         rupture_psi, rupture_mpa: modulus of rupture [psi | MPa]
///     and notes; for arrays ConcreteRuptureArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///     FormError: the word is not one of the choices (WORD_UNKNOWN)
///
/// Basis:
///     fr = 7.5 sqrt(f'c), psi, normal weight: ACI 318 (2019), 19.2.3.1, from memory: confirm
///     MR = 9 sqrt(f'c), psi: ACI 360R and Portland Cement Association, floors on ground (several),
///         modulus of rupture, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import concrete_rupture
///     >>> answer = concrete_rupture(strength="4,000 psi", formula="floor design, 9")
///     >>> round(answer.rupture_psi, 4)
///     569.21
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (strength, formula, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(strength, formula, *, units=None, errors='raise')")]
fn concrete_rupture(
    py: Python<'_>,
    strength: &Bound<'_, PyAny>,
    formula: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &CONCRETE_RUPTURE, &[strength, formula], units, errors)
}

/// What `concrete_rupture` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct ConcreteRupture;

#[pymethods]
impl ConcreteRupture {
    /// Modulus of rupture [psi].
    #[getter]
    fn get_rupture_psi(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Modulus of rupture [MPa].
    #[getter]
    fn get_rupture_mpa(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `concrete_rupture` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct ConcreteRuptureArray;

#[pymethods]
impl ConcreteRuptureArray {
    /// Modulus of rupture [psi].
    #[getter]
    fn get_rupture_psi<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Modulus of rupture [MPa].
    #[getter]
    fn get_rupture_mpa<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static SUBGRADE_FROM_BEARING_RATIO: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "subgrade_from_bearing_ratio"),
    class: "SubgradeFromBearingRatio",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SubgradeFromBearingRatio))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SubgradeFromBearingRatioArray))?.into_any()),
};

/// The modulus of subgrade reaction from the California bearing ratio, by a named source or the lowest of them.
///
/// Rule: FAA k = (1500 CBR / 26)^0.7788 pci; Packard k = 53.438 CBR^0.5719 pci; IRC:58 by table; lowest
///     of the three.
/// Takes for granted: the sources differ a lot at low ratios; the lowest is on the safe side.
///
/// Args:
///     bearing_ratio: California bearing ratio [%]; at least 2 %, at most 100 %
///     source: which correlation; one of "FAA", "Packard", "IRC:58", "lowest"
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     SubgradeFromBearingRatio, with the attributes
///         subgrade_pci, subgrade_mpa_per_m: modulus of subgrade reaction k [pci | MPa/m]
///     and notes; for arrays SubgradeFromBearingRatioArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the quantity cannot be below
///         zero (NEGATIVE)
///
/// Basis:
///     k = (1500 CBR / 26)^0.7788 pci: FAA AC 150/5320-6E (2009), k from bearing ratio, as quoted
///         elsewhere
///     k = 53.438 CBR^0.5719 pci: Packard, after Barker and Alexander (2012), k from bearing ratio, as
///         quoted elsewhere
///     k by table, straight between its rows: IRC:58 (2002), table of k and bearing ratio, as quoted
///         elsewhere
///
/// Example:
///     >>> from overslab.overlay import subgrade_from_bearing_ratio
///     >>> answer = subgrade_from_bearing_ratio(bearing_ratio="5 %", source="lowest")
///     >>> round(answer.subgrade_pci, 4)
///     82.398
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (bearing_ratio, source, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(bearing_ratio, source, *, units=None, errors='raise')")]
fn subgrade_from_bearing_ratio(
    py: Python<'_>,
    bearing_ratio: &Bound<'_, PyAny>,
    source: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &SUBGRADE_FROM_BEARING_RATIO, &[bearing_ratio, source], units, errors)
}

/// What `subgrade_from_bearing_ratio` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct SubgradeFromBearingRatio;

#[pymethods]
impl SubgradeFromBearingRatio {
    /// Modulus of subgrade reaction k [pci].
    #[getter]
    fn get_subgrade_pci(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Modulus of subgrade reaction k [MPa/m].
    #[getter]
    fn get_subgrade_mpa_per_m(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `subgrade_from_bearing_ratio` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct SubgradeFromBearingRatioArray;

#[pymethods]
impl SubgradeFromBearingRatioArray {
    /// Modulus of subgrade reaction k [pci].
    #[getter]
    fn get_subgrade_pci<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Modulus of subgrade reaction k [MPa/m].
    #[getter]
    fn get_subgrade_mpa_per_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static SUBGRADE_FROM_RESILIENT: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "subgrade_from_resilient"),
    class: "SubgradeFromResilient",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SubgradeFromResilient))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SubgradeFromResilientArray))?.into_any()),
};

/// The modulus of subgrade reaction from the resilient modulus of the soil.
///
/// Rule: subgrade = resilient / 19.4, pci and psi.
/// Takes for granted: no subbase, no rock near below.
///
/// Args:
///     resilient: resilient modulus of the soil [psi | MPa]; at least 500 psi, at most 38000 psi (at
///         least 3.44737864658 MPa, at most 262.00077714 MPa)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     SubgradeFromResilient, with the attributes
///         subgrade_pci, subgrade_mpa_per_m: modulus of subgrade reaction k [pci | MPa/m]
///     and notes; for arrays SubgradeFromResilientArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     k = MR / 19.4: AASHTO Guide for Design of Pavement Structures (1993), Part II, from memory:
///         confirm
///
/// Example:
///     >>> from overslab.overlay import subgrade_from_resilient
///     >>> answer = subgrade_from_resilient(resilient="3,000 psi")
///     >>> round(answer.subgrade_pci, 4)
///     154.6392
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (resilient, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(resilient, *, units=None, errors='raise')")]
fn subgrade_from_resilient(
    py: Python<'_>,
    resilient: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &SUBGRADE_FROM_RESILIENT, &[resilient], units, errors)
}

/// What `subgrade_from_resilient` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct SubgradeFromResilient;

#[pymethods]
impl SubgradeFromResilient {
    /// Modulus of subgrade reaction k [pci].
    #[getter]
    fn get_subgrade_pci(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Modulus of subgrade reaction k [MPa/m].
    #[getter]
    fn get_subgrade_mpa_per_m(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `subgrade_from_resilient` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct SubgradeFromResilientArray;

#[pymethods]
impl SubgradeFromResilientArray {
    /// Modulus of subgrade reaction k [pci].
    #[getter]
    fn get_subgrade_pci<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Modulus of subgrade reaction k [MPa/m].
    #[getter]
    fn get_subgrade_mpa_per_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static SUBGRADE_FROM_SOIL: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "subgrade_from_soil"),
    class: "SubgradeFromSoil",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SubgradeFromSoil))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SubgradeFromSoilArray))?.into_any()),
};

/// The modulus of subgrade reaction by what heel and bar say, by the kind of soil, or over an old slab.
///
/// Rule: soft 50, medium 100, firm 200 pci; silt and clay 75 to 120; sand with silt or clay 130 to 170;
///     clean sand and gravel 180 to 220; cement-treated subbase 250 to 400; old slab 200 to 300.
/// Takes for granted: the lower end is taken; the upper end is not exceeded without a reason.
///
/// Args:
///     soil: what the slab rests on; one of "soft", "medium", "firm", "silt and clay", "sand with silt
///         or clay", "clean sand and gravel", "cement-treated subbase", "old slab"
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     SubgradeFromSoil, with the attributes
///         least_pci, least_mpa_per_m: lower end: the one to take [pci | MPa/m]
///         greatest_pci, greatest_mpa_per_m: upper end [pci | MPa/m]
///     and notes; for arrays SubgradeFromSoilArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     FormError: the word is not one of the choices (WORD_UNKNOWN)
///
/// Basis:
///     soft 50, medium 100, firm 200 pci, by heel and bar: common practice, no source
///     subgrade reaction by soil class and on top of a subbase: Portland Cement Association, EB109
///         (1984), soil classes and subbase tables, from memory: confirm
///     over an old slab 200 to 300 pci are not exceeded without a reason: common practice, no source
///
/// Example:
///     >>> from overslab.overlay import subgrade_from_soil
///     >>> answer = subgrade_from_soil(soil="medium")
///     >>> round(answer.least_pci, 4)
///     100.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (soil, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(soil, *, units=None, errors='raise')")]
fn subgrade_from_soil(
    py: Python<'_>,
    soil: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &SUBGRADE_FROM_SOIL, &[soil], units, errors)
}

/// What `subgrade_from_soil` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct SubgradeFromSoil;

#[pymethods]
impl SubgradeFromSoil {
    /// Lower end: the one to take [pci].
    #[getter]
    fn get_least_pci(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Lower end: the one to take [MPa/m].
    #[getter]
    fn get_least_mpa_per_m(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
    /// Upper end [pci].
    #[getter]
    fn get_greatest_pci(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Us)
    }
    /// Upper end [MPa/m].
    #[getter]
    fn get_greatest_mpa_per_m(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Si)
    }
}

/// What `subgrade_from_soil` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct SubgradeFromSoilArray;

#[pymethods]
impl SubgradeFromSoilArray {
    /// Lower end: the one to take [pci].
    #[getter]
    fn get_least_pci<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Lower end: the one to take [MPa/m].
    #[getter]
    fn get_least_mpa_per_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Upper end [pci].
    #[getter]
    fn get_greatest_pci<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Upper end [MPa/m].
    #[getter]
    fn get_greatest_mpa_per_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Si)
    }
}

static SUBGRADE_WITH_SUBBASE: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "subgrade_with_subbase"),
    class: "SubgradeWithSubbase",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SubgradeWithSubbase))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SubgradeWithSubbaseArray))?.into_any()),
};

/// The modulus of subgrade reaction on top of a subbase.
///
/// Rule: by table, straight between rows and columns; refused outside.
/// Takes for granted: a compacted subbase all over.
///
/// Args:
///     subgrade: modulus of subgrade reaction under the subbase [pci | MPa/m]; at least 50 pci, at most
///         300 pci (at least 13.5723568763 MPa/m, at most 81.4341412579 MPa/m)
///     thickness: thickness of the subbase [in | mm]; at least 4 in, at most 12 in (at least 101.6 mm,
///         at most 304.8 mm)
///     kind: what the subbase is; one of "granular", "cement-treated"
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     SubgradeWithSubbase, with the attributes
///         top_pci, top_mpa_per_m: modulus of subgrade reaction on top [pci | MPa/m]
///     and notes; for arrays SubgradeWithSubbaseArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///     OverlayError: a published table has no number there (OUTSIDE_TABLE)
///
/// Basis:
///     subgrade reaction by soil class and on top of a subbase: Portland Cement Association, EB109
///         (1984), soil classes and subbase tables, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import subgrade_with_subbase
///     >>> answer = subgrade_with_subbase(subgrade="100 pci", thickness="6 in", kind="granular")
///     >>> round(answer.top_pci, 4)
///     140.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (subgrade, thickness, kind, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(subgrade, thickness, kind, *, units=None, errors='raise')")]
fn subgrade_with_subbase(
    py: Python<'_>,
    subgrade: &Bound<'_, PyAny>,
    thickness: &Bound<'_, PyAny>,
    kind: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &SUBGRADE_WITH_SUBBASE, &[subgrade, thickness, kind], units, errors)
}

/// What `subgrade_with_subbase` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct SubgradeWithSubbase;

#[pymethods]
impl SubgradeWithSubbase {
    /// Modulus of subgrade reaction on top [pci].
    #[getter]
    fn get_top_pci(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Modulus of subgrade reaction on top [MPa/m].
    #[getter]
    fn get_top_mpa_per_m(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `subgrade_with_subbase` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct SubgradeWithSubbaseArray;

#[pymethods]
impl SubgradeWithSubbaseArray {
    /// Modulus of subgrade reaction on top [pci].
    #[getter]
    fn get_top_pci<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Modulus of subgrade reaction on top [MPa/m].
    #[getter]
    fn get_top_mpa_per_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static STIFFNESS_RADIUS: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "stiffness_radius"),
    class: "StiffnessRadius",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(StiffnessRadius))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(StiffnessRadiusArray))?.into_any()),
};

/// The radius of relative stiffness of a slab on its subgrade: how far a load is felt.
///
/// Rule: stiffness = (modulus thickness^3 / (12 (1 - poisson^2) subgrade))^(1/4).
/// Takes for granted: one layer, resting everywhere on springs.
///
/// Args:
///     thickness: thickness of the slab [in | mm]; more than 0 in, at most 78.7401574803 in (more than
///         0 mm, at most 2000 mm)
///     modulus: modulus of elasticity of the concrete [psi | MPa]; at least 14503.773773 psi, at most
///         14503773.773 psi (at least 100 MPa, at most 100000 MPa)
///     poisson: Poisson's ratio of the concrete, often 0.15 [1]; at least 0 1, at most 0.5 1
///     subgrade: subgrade reaction k [pci | MPa/m]; at least 5 pci, at most 2000 pci (at least
///         1.35723568763 MPa/m, at most 542.894275053 MPa/m)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     StiffnessRadius, with the attributes
///         stiffness_in, stiffness_mm: radius of relative stiffness [in | mm]
///     and notes; for arrays StiffnessRadiusArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
///         quantity (UNIT_WRONG)
///
/// Basis:
///     l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness
///
/// Example:
///     >>> from overslab.overlay import stiffness_radius
///     >>> answer = stiffness_radius(
///     ...     thickness="10 in",
///     ...     modulus="4,000,000 psi",
///     ...     poisson="0.15 ratio",
///     ...     subgrade="100 pci",
///     ... )
///     >>> round(answer.stiffness_in, 4)
///     42.9725
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (thickness, modulus, poisson, subgrade, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(thickness, modulus, poisson, subgrade, *, units=None, errors='raise')")]
fn stiffness_radius(
    py: Python<'_>,
    thickness: &Bound<'_, PyAny>,
    modulus: &Bound<'_, PyAny>,
    poisson: &Bound<'_, PyAny>,
    subgrade: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &STIFFNESS_RADIUS, &[thickness, modulus, poisson, subgrade], units, errors)
}

/// What `stiffness_radius` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct StiffnessRadius;

#[pymethods]
impl StiffnessRadius {
    /// Radius of relative stiffness [in].
    #[getter]
    fn get_stiffness_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Radius of relative stiffness [mm].
    #[getter]
    fn get_stiffness_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `stiffness_radius` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct StiffnessRadiusArray;

#[pymethods]
impl StiffnessRadiusArray {
    /// Radius of relative stiffness [in].
    #[getter]
    fn get_stiffness_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Radius of relative stiffness [mm].
    #[getter]
    fn get_stiffness_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static CONTACT_RADIUS: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "contact_radius"),
    class: "ContactRadius",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ContactRadius))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ContactRadiusArray))?.into_any()),
};

/// The radius of the circle that carries a load at its contact pressure.
///
/// Rule: radius = sqrt(load / (pi pressure)).
/// Takes for granted: a tyre presses with its own pressure.
///
/// Args:
///     load: load of one wheel or post [lbf | kN]; more than 0 lbf, at most 2248089.431 lbf (more than
///         0 kN, at most 10000 kN)
///     pressure: contact pressure [psi | kPa]; at least 0.14503773773 psi, at most 14503.773773 psi (at
///         least 1 kPa, at most 100000 kPa)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     ContactRadius, with the attributes
///         radius_in, radius_mm: radius of the contact [in | mm]
///     and notes; for arrays ContactRadiusArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
///         quantity (UNIT_WRONG)
///
/// Basis:
///     a circle of the load over its pressure: derived
///
/// Example:
///     >>> from overslab.overlay import contact_radius
///     >>> answer = contact_radius(load="4000 lb", pressure="80 psi")
///     >>> round(answer.radius_in, 4)
///     3.9894
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (load, pressure, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(load, pressure, *, units=None, errors='raise')")]
fn contact_radius(
    py: Python<'_>,
    load: &Bound<'_, PyAny>,
    pressure: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &CONTACT_RADIUS, &[load, pressure], units, errors)
}

/// What `contact_radius` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct ContactRadius;

#[pymethods]
impl ContactRadius {
    /// Radius of the contact [in].
    #[getter]
    fn get_radius_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Radius of the contact [mm].
    #[getter]
    fn get_radius_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `contact_radius` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct ContactRadiusArray;

#[pymethods]
impl ContactRadiusArray {
    /// Radius of the contact [in].
    #[getter]
    fn get_radius_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Radius of the contact [mm].
    #[getter]
    fn get_radius_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static CONTACT_RADIUS_DUAL: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "contact_radius_dual"),
    class: "ContactRadiusDual",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ContactRadiusDual))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ContactRadiusDualArray))?.into_any()),
};

/// The radius of the one circle that stands for dual tyres.
///
/// Rule: radius = sqrt(0.8521 load / (pi pressure) + (spacing / pi) sqrt(load / (0.5227 pressure))).
/// Takes for granted: load of one of the two tyres.
///
/// Args:
///     load: load of one of the two tyres [lbf | kN]; more than 0 lbf, at most 2248089.431 lbf (more
///         than 0 kN, at most 10000 kN)
///     pressure: contact pressure [psi | kPa]; at least 0.14503773773 psi, at most 14503.773773 psi (at
///         least 1 kPa, at most 100000 kPa)
///     spacing: middle to middle of the two tyres [in | mm]; at least 1.96850393701 in, at most
///         78.7401574803 in (at least 50 mm, at most 2000 mm)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     ContactRadiusDual, with the attributes
///         radius_in, radius_mm: radius of the circle [in | mm]
///     and notes; for arrays ContactRadiusDualArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     one circle for dual tyres: Huang, Pavement Analysis and Design (2004), ch. 4, from memory:
///         confirm
///
/// Example:
///     >>> from overslab.overlay import contact_radius_dual
///     >>> answer = contact_radius_dual(load="5000 lb", pressure="88.42 psi", spacing="14 in")
///     >>> round(answer.radius_in, 4)
///     7.8542
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (load, pressure, spacing, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(load, pressure, spacing, *, units=None, errors='raise')")]
fn contact_radius_dual(
    py: Python<'_>,
    load: &Bound<'_, PyAny>,
    pressure: &Bound<'_, PyAny>,
    spacing: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &CONTACT_RADIUS_DUAL, &[load, pressure, spacing], units, errors)
}

/// What `contact_radius_dual` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct ContactRadiusDual;

#[pymethods]
impl ContactRadiusDual {
    /// Radius of the circle [in].
    #[getter]
    fn get_radius_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Radius of the circle [mm].
    #[getter]
    fn get_radius_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `contact_radius_dual` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct ContactRadiusDualArray;

#[pymethods]
impl ContactRadiusDualArray {
    /// Radius of the circle [in].
    #[getter]
    fn get_radius_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Radius of the circle [mm].
    #[getter]
    fn get_radius_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static EQUIVALENT_RADIUS: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "equivalent_radius"),
    class: "EquivalentRadius",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(EquivalentRadius))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(EquivalentRadiusArray))?.into_any()),
};

/// Westergaard's equivalent radius, which mends the stress right under a small contact.
///
/// Rule: equivalent = sqrt(1.6 radius^2 + thickness^2) - 0.675 thickness where radius < 1.724
///     thickness, else radius.
/// Takes for granted: interior load, and the edge form of 1926.
///
/// Args:
///     radius: radius of the contact [in | mm]; at least 0.0393700787402 in, at most 196.850393701 in
///         (at least 1 mm, at most 5000 mm)
///     thickness: thickness of the slab [in | mm]; more than 0 in, at most 78.7401574803 in (more than
///         0 mm, at most 2000 mm)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     EquivalentRadius, with the attributes
///         equivalent_in, equivalent_mm: equivalent radius [in | mm]
///     and notes; for arrays EquivalentRadiusArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     b = sqrt(1.6 a^2 + h^2) - 0.675 h where a < 1.724 h, else a: Westergaard, as in NPTEL
///         Transportation Engineering I (lecture 29), equivalent radius
///
/// Example:
///     >>> from overslab.overlay import equivalent_radius
///     >>> answer = equivalent_radius(radius="6 in", thickness="10 in")
///     >>> round(answer.equivalent_in, 4)
///     5.8039
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (radius, thickness, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(radius, thickness, *, units=None, errors='raise')")]
fn equivalent_radius(
    py: Python<'_>,
    radius: &Bound<'_, PyAny>,
    thickness: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &EQUIVALENT_RADIUS, &[radius, thickness], units, errors)
}

/// What `equivalent_radius` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct EquivalentRadius;

#[pymethods]
impl EquivalentRadius {
    /// Equivalent radius [in].
    #[getter]
    fn get_equivalent_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Equivalent radius [mm].
    #[getter]
    fn get_equivalent_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `equivalent_radius` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct EquivalentRadiusArray;

#[pymethods]
impl EquivalentRadiusArray {
    /// Equivalent radius [in].
    #[getter]
    fn get_equivalent_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Equivalent radius [mm].
    #[getter]
    fn get_equivalent_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static INTERIOR_LOAD: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "interior_load"),
    class: "InteriorLoad",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(InteriorLoad))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(InteriorLoadArray))?.into_any()),
};

/// Stress and deflection under a load far from every edge, by Westergaard's equations of 1926.
///
/// Rule: stress = 3 (1 + poisson) load / (2 pi thickness^2) (ln(l/b) + 0.6159); deflection = load / (8
///     subgrade l^2) (1 + (ln(radius / 2l) - 0.673) (radius/l)^2 / 2 pi); l the radius of relative
///     stiffness, b the equivalent radius.
/// Takes for granted: tension at the bottom; the slab is at least 3.5 l across for the stress, 8 l for
///     the deflection, and lies on its subgrade everywhere.
///
/// Args:
///     load: load of one wheel or post [lbf | kN]; more than 0 lbf, at most 2248089.431 lbf (more than
///         0 kN, at most 10000 kN)
///     radius: radius of the contact [in | mm]; at least 0.0393700787402 in, at most 196.850393701 in
///         (at least 1 mm, at most 5000 mm)
///     thickness: thickness of the slab [in | mm]; more than 0 in, at most 78.7401574803 in (more than
///         0 mm, at most 2000 mm)
///     modulus: modulus of elasticity of the concrete [psi | MPa]; at least 14503.773773 psi, at most
///         14503773.773 psi (at least 100 MPa, at most 100000 MPa)
///     poisson: Poisson's ratio of the concrete, often 0.15 [1]; at least 0 1, at most 0.5 1
///     subgrade: subgrade reaction k [pci | MPa/m]; at least 5 pci, at most 2000 pci (at least
///         1.35723568763 MPa/m, at most 542.894275053 MPa/m)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     InteriorLoad, with the attributes
///         stress_psi, stress_mpa: greatest tensile stress [psi | MPa]
///         deflection_in, deflection_mm: settlement under the load [in | mm]
///         stiffness_in, stiffness_mm: radius of relative stiffness [in | mm]
///     and notes; for arrays InteriorLoadArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///     OverlayError: the contact of a load is too wide for the formula (CONTACT_TOO_WIDE)
///
/// Basis:
///     stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner,
///         from memory: confirm
///     b = sqrt(1.6 a^2 + h^2) - 0.675 h where a < 1.724 h, else a: Westergaard, as in NPTEL
///         Transportation Engineering I (lecture 29), equivalent radius
///     l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness
///     stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner:
///         Ioannides, Thompson, Barenberg (1985), least slab sizes, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import interior_load
///     >>> answer = interior_load(
///     ...     load="10,000 lb",
///     ...     radius="6 in",
///     ...     thickness="10 in",
///     ...     modulus="4,000,000 psi",
///     ...     poisson="0.15 ratio",
///     ...     subgrade="100 pci",
///     ... )
///     >>> round(answer.stress_psi, 4)
///     143.7484
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (load, radius, thickness, modulus, poisson, subgrade, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(load, radius, thickness, modulus, poisson, subgrade, *, units=None, errors='raise')")]
fn interior_load(
    py: Python<'_>,
    load: &Bound<'_, PyAny>,
    radius: &Bound<'_, PyAny>,
    thickness: &Bound<'_, PyAny>,
    modulus: &Bound<'_, PyAny>,
    poisson: &Bound<'_, PyAny>,
    subgrade: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &INTERIOR_LOAD, &[load, radius, thickness, modulus, poisson, subgrade], units, errors)
}

/// What `interior_load` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct InteriorLoad;

#[pymethods]
impl InteriorLoad {
    /// Greatest tensile stress [psi].
    #[getter]
    fn get_stress_psi(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Greatest tensile stress [MPa].
    #[getter]
    fn get_stress_mpa(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
    /// Settlement under the load [in].
    #[getter]
    fn get_deflection_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Us)
    }
    /// Settlement under the load [mm].
    #[getter]
    fn get_deflection_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Si)
    }
    /// Radius of relative stiffness [in].
    #[getter]
    fn get_stiffness_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(2, overslab::quantity::System::Us)
    }
    /// Radius of relative stiffness [mm].
    #[getter]
    fn get_stiffness_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(2, overslab::quantity::System::Si)
    }
}

/// What `interior_load` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct InteriorLoadArray;

#[pymethods]
impl InteriorLoadArray {
    /// Greatest tensile stress [psi].
    #[getter]
    fn get_stress_psi<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Greatest tensile stress [MPa].
    #[getter]
    fn get_stress_mpa<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Settlement under the load [in].
    #[getter]
    fn get_deflection_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Settlement under the load [mm].
    #[getter]
    fn get_deflection_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Radius of relative stiffness [in].
    #[getter]
    fn get_stiffness_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Radius of relative stiffness [mm].
    #[getter]
    fn get_stiffness_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 2, overslab::quantity::System::Si)
    }
}

static EDGE_LOAD: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "edge_load"),
    class: "EdgeLoad",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(EdgeLoad))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(EdgeLoadArray))?.into_any()),
};

/// Stress and deflection under a load at a free edge far from corners, by Westergaard's equations of 1948 for a circle or a semicircle.
///
/// Rule: stress = 3 (1 + poisson) load / (pi (3 + poisson) thickness^2) (ln(modulus thickness^3 / (100
///     subgrade radius^4)) + c); circle c = 1.84 - 4 poisson / 3 + (1 - poisson) / 2 + 1.18 (1 + 2
///     poisson) radius / l; semicircle c = 3.84 - 4 poisson / 3 + (1 + 2 poisson) radius / 2l;
///     deflection = sqrt(2 + 1.2 poisson) load / sqrt(modulus thickness^3 subgrade) (1 - d radius / l),
///     d = 0.76 + 0.4 poisson or 0.323 + 0.17 poisson.
/// Takes for granted: tension at the bottom along the edge, nothing carried across a joint; the circle
///     touches the edge from inside; a semicircle has its straight side on the edge and its own radius,
///     sqrt 2 of the circle's at the same load and pressure; the slab is at least 5 l across, 8 l for
///     the deflection.
///
/// Args:
///     load: load of one wheel or post [lbf | kN]; more than 0 lbf, at most 2248089.431 lbf (more than
///         0 kN, at most 10000 kN)
///     radius: radius of the contact [in | mm]; at least 0.0393700787402 in, at most 196.850393701 in
///         (at least 1 mm, at most 5000 mm)
///     thickness: thickness of the slab [in | mm]; more than 0 in, at most 78.7401574803 in (more than
///         0 mm, at most 2000 mm)
///     modulus: modulus of elasticity of the concrete [psi | MPa]; at least 14503.773773 psi, at most
///         14503773.773 psi (at least 100 MPa, at most 100000 MPa)
///     poisson: Poisson's ratio of the concrete, often 0.15 [1]; at least 0 1, at most 0.5 1
///     subgrade: subgrade reaction k [pci | MPa/m]; at least 5 pci, at most 2000 pci (at least
///         1.35723568763 MPa/m, at most 542.894275053 MPa/m)
///     footprint: shape of the contact; the radius is that shape's own; one of "circle", "semicircle"
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     EdgeLoad, with the attributes
///         stress_psi, stress_mpa: greatest tensile stress [psi | MPa]
///         deflection_in, deflection_mm: settlement under the load [in | mm]
///         stiffness_in, stiffness_mm: radius of relative stiffness [in | mm]
///     and notes; for arrays EdgeLoadArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     OverlayError: the contact of a load is too wide for the formula (CONTACT_TOO_WIDE)
///     FormError: the word is not one of the choices (WORD_UNKNOWN)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm
///     l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness
///     stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner:
///         Ioannides, Thompson, Barenberg (1985), least slab sizes, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import edge_load
///     >>> answer = edge_load(
///     ...     load="10,000 lb",
///     ...     radius="6 in",
///     ...     thickness="10 in",
///     ...     modulus="4,000,000 psi",
///     ...     poisson="0.15 ratio",
///     ...     subgrade="100 pci",
///     ...     footprint="circle",
///     ... )
///     >>> round(answer.stress_psi, 4)
///     279.2963
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (load, radius, thickness, modulus, poisson, subgrade, footprint, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(load, radius, thickness, modulus, poisson, subgrade, footprint, *, units=None, errors='raise')")]
fn edge_load(
    py: Python<'_>,
    load: &Bound<'_, PyAny>,
    radius: &Bound<'_, PyAny>,
    thickness: &Bound<'_, PyAny>,
    modulus: &Bound<'_, PyAny>,
    poisson: &Bound<'_, PyAny>,
    subgrade: &Bound<'_, PyAny>,
    footprint: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &EDGE_LOAD, &[load, radius, thickness, modulus, poisson, subgrade, footprint], units, errors)
}

/// What `edge_load` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct EdgeLoad;

#[pymethods]
impl EdgeLoad {
    /// Greatest tensile stress [psi].
    #[getter]
    fn get_stress_psi(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Greatest tensile stress [MPa].
    #[getter]
    fn get_stress_mpa(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
    /// Settlement under the load [in].
    #[getter]
    fn get_deflection_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Us)
    }
    /// Settlement under the load [mm].
    #[getter]
    fn get_deflection_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Si)
    }
    /// Radius of relative stiffness [in].
    #[getter]
    fn get_stiffness_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(2, overslab::quantity::System::Us)
    }
    /// Radius of relative stiffness [mm].
    #[getter]
    fn get_stiffness_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(2, overslab::quantity::System::Si)
    }
}

/// What `edge_load` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct EdgeLoadArray;

#[pymethods]
impl EdgeLoadArray {
    /// Greatest tensile stress [psi].
    #[getter]
    fn get_stress_psi<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Greatest tensile stress [MPa].
    #[getter]
    fn get_stress_mpa<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Settlement under the load [in].
    #[getter]
    fn get_deflection_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Settlement under the load [mm].
    #[getter]
    fn get_deflection_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Radius of relative stiffness [in].
    #[getter]
    fn get_stiffness_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Radius of relative stiffness [mm].
    #[getter]
    fn get_stiffness_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 2, overslab::quantity::System::Si)
    }
}

static EDGE_LOAD_1926: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "edge_load_1926"),
    class: "EdgeLoad1926",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(EdgeLoad1926))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(EdgeLoad1926Array))?.into_any()),
};

/// Stress under a load at a free edge far from corners, by Westergaard's equation of 1926; the forms of 1948 give a quarter to a half more.
///
/// Rule: stress = 0.572 load / thickness^2 (4 log10(l/b) + 0.359), Poisson's ratio 0.15.
/// Takes for granted: Poisson's ratio 0.15; nothing carried across a joint; the slab is at least 5 l
///     across.
///
/// Args:
///     load: load of one wheel or post [lbf | kN]; more than 0 lbf, at most 2248089.431 lbf (more than
///         0 kN, at most 10000 kN)
///     radius: radius of the contact [in | mm]; at least 0.0393700787402 in, at most 196.850393701 in
///         (at least 1 mm, at most 5000 mm)
///     thickness: thickness of the slab [in | mm]; more than 0 in, at most 78.7401574803 in (more than
///         0 mm, at most 2000 mm)
///     modulus: modulus of elasticity of the concrete [psi | MPa]; at least 14503.773773 psi, at most
///         14503773.773 psi (at least 100 MPa, at most 100000 MPa)
///     subgrade: subgrade reaction k [pci | MPa/m]; at least 5 pci, at most 2000 pci (at least
///         1.35723568763 MPa/m, at most 542.894275053 MPa/m)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     EdgeLoad1926, with the attributes
///         stress_psi, stress_mpa: greatest tensile stress [psi | MPa]
///     and notes; for arrays EdgeLoad1926Array, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     OverlayError: the contact of a load is too wide for the formula (CONTACT_TOO_WIDE)
///     QuantityError: the unit belongs to another quantity (UNIT_WRONG)
///
/// Basis:
///     stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner,
///         from memory: confirm
///     b = sqrt(1.6 a^2 + h^2) - 0.675 h where a < 1.724 h, else a: Westergaard, as in NPTEL
///         Transportation Engineering I (lecture 29), equivalent radius
///     stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner:
///         Ioannides, Thompson, Barenberg (1985), least slab sizes, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import edge_load_1926
///     >>> answer = edge_load_1926(
///     ...     load="10,000 lb",
///     ...     radius="6 in",
///     ...     thickness="10 in",
///     ...     modulus="4,000,000 psi",
///     ...     subgrade="100 pci",
///     ... )
///     >>> round(answer.stress_psi, 4)
///     219.4699
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (load, radius, thickness, modulus, subgrade, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(load, radius, thickness, modulus, subgrade, *, units=None, errors='raise')")]
fn edge_load_1926(
    py: Python<'_>,
    load: &Bound<'_, PyAny>,
    radius: &Bound<'_, PyAny>,
    thickness: &Bound<'_, PyAny>,
    modulus: &Bound<'_, PyAny>,
    subgrade: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &EDGE_LOAD_1926, &[load, radius, thickness, modulus, subgrade], units, errors)
}

/// What `edge_load_1926` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct EdgeLoad1926;

#[pymethods]
impl EdgeLoad1926 {
    /// Greatest tensile stress [psi].
    #[getter]
    fn get_stress_psi(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Greatest tensile stress [MPa].
    #[getter]
    fn get_stress_mpa(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `edge_load_1926` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct EdgeLoad1926Array;

#[pymethods]
impl EdgeLoad1926Array {
    /// Greatest tensile stress [psi].
    #[getter]
    fn get_stress_psi<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Greatest tensile stress [MPa].
    #[getter]
    fn get_stress_mpa<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static CORNER_LOAD: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "corner_load"),
    class: "CornerLoad",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(CornerLoad))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(CornerLoadArray))?.into_any()),
};

/// Stress and deflection under a load in a corner, by Westergaard or by Ioannides.
///
/// Rule: Westergaard: stress = 3 load / thickness^2 (1 - (radius sqrt 2 / l)^0.6), deflection = load /
///     (subgrade l^2) (1.1 - 0.88 radius sqrt 2 / l); Ioannides, c = 1.772 radius: stress = 3 load /
///     thickness^2 (1 - (c/l)^0.72), deflection = load / (subgrade l^2) (1.205 - 0.69 c/l).
/// Takes for granted: tension at the top across the bisector; the circle touches both edges; nothing
///     carried across joints; the slab is at least 4 l across, 5 l for the deflection; the contact
///     radius is at most 0.35 l (Westergaard) or 0.25 l (Ioannides): wider, the stress comes out too
///     small.
///
/// Args:
///     load: load of one wheel or post [lbf | kN]; more than 0 lbf, at most 2248089.431 lbf (more than
///         0 kN, at most 10000 kN)
///     radius: radius of the contact [in | mm]; at least 0.0393700787402 in, at most 196.850393701 in
///         (at least 1 mm, at most 5000 mm)
///     thickness: thickness of the slab [in | mm]; more than 0 in, at most 78.7401574803 in (more than
///         0 mm, at most 2000 mm)
///     modulus: modulus of elasticity of the concrete [psi | MPa]; at least 14503.773773 psi, at most
///         14503773.773 psi (at least 100 MPa, at most 100000 MPa)
///     poisson: Poisson's ratio of the concrete, often 0.15 [1]; at least 0 1, at most 0.5 1
///     subgrade: subgrade reaction k [pci | MPa/m]; at least 5 pci, at most 2000 pci (at least
///         1.35723568763 MPa/m, at most 542.894275053 MPa/m)
///     formula: which formula; one of "Westergaard 1926", "Ioannides 1985"
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     CornerLoad, with the attributes
///         stress_psi, stress_mpa: greatest tensile stress [psi | MPa]
///         deflection_in, deflection_mm: settlement under the load [in | mm]
///         stiffness_in, stiffness_mm: radius of relative stiffness [in | mm]
///     and notes; for arrays CornerLoadArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     OverlayError: the contact of a load is too wide for the formula (CONTACT_TOO_WIDE)
///     FormError: the word is not one of the choices (WORD_UNKNOWN)
///
/// Basis:
///     stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner,
///         from memory: confirm
///     s = 3 P / h^2 (1 - (c/l)^0.72), c = 1.772 a: Ioannides, Thompson, Barenberg (1985), corner load,
///         from memory: confirm
///     l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness
///     stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner:
///         Ioannides, Thompson, Barenberg (1985), least slab sizes, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import corner_load
///     >>> answer = corner_load(
///     ...     load="10,000 lb",
///     ...     radius="6 in",
///     ...     thickness="10 in",
///     ...     modulus="4,000,000 psi",
///     ...     poisson="0.15 ratio",
///     ...     subgrade="100 pci",
///     ...     formula="Ioannides 1985",
///     ... )
///     >>> round(answer.stress_psi, 4)
///     190.2545
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (load, radius, thickness, modulus, poisson, subgrade, formula, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(load, radius, thickness, modulus, poisson, subgrade, formula, *, units=None, errors='raise')")]
fn corner_load(
    py: Python<'_>,
    load: &Bound<'_, PyAny>,
    radius: &Bound<'_, PyAny>,
    thickness: &Bound<'_, PyAny>,
    modulus: &Bound<'_, PyAny>,
    poisson: &Bound<'_, PyAny>,
    subgrade: &Bound<'_, PyAny>,
    formula: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &CORNER_LOAD, &[load, radius, thickness, modulus, poisson, subgrade, formula], units, errors)
}

/// What `corner_load` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct CornerLoad;

#[pymethods]
impl CornerLoad {
    /// Greatest tensile stress [psi].
    #[getter]
    fn get_stress_psi(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Greatest tensile stress [MPa].
    #[getter]
    fn get_stress_mpa(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
    /// Settlement under the load [in].
    #[getter]
    fn get_deflection_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Us)
    }
    /// Settlement under the load [mm].
    #[getter]
    fn get_deflection_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Si)
    }
    /// Radius of relative stiffness [in].
    #[getter]
    fn get_stiffness_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(2, overslab::quantity::System::Us)
    }
    /// Radius of relative stiffness [mm].
    #[getter]
    fn get_stiffness_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(2, overslab::quantity::System::Si)
    }
}

/// What `corner_load` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct CornerLoadArray;

#[pymethods]
impl CornerLoadArray {
    /// Greatest tensile stress [psi].
    #[getter]
    fn get_stress_psi<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Greatest tensile stress [MPa].
    #[getter]
    fn get_stress_mpa<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Settlement under the load [in].
    #[getter]
    fn get_deflection_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Settlement under the load [mm].
    #[getter]
    fn get_deflection_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Radius of relative stiffness [in].
    #[getter]
    fn get_stiffness_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Radius of relative stiffness [mm].
    #[getter]
    fn get_stiffness_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 2, overslab::quantity::System::Si)
    }
}

static CORNER_CRACK: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "corner_crack"),
    class: "CornerCrack",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(CornerCrack))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(CornerCrackArray))?.into_any()),
};

/// How far from a corner it breaks off under a load, along the bisector.
///
/// Rule: textbook: distance = 2.58 sqrt(radius x stiffness); Westergaard: 2 sqrt(sqrt 2 x radius x
///     stiffness), which is 2.38 sqrt(radius x stiffness).
/// Takes for granted: one load in the corner.
///
/// Args:
///     radius: radius of the contact [in | mm]; at least 0.0393700787402 in, at most 196.850393701 in
///         (at least 1 mm, at most 5000 mm)
///     stiffness: relative stiffness, its radius [in | mm]; at least 0.393700787402 in, at most
///         1968.50393701 in (at least 10 mm, at most 50000 mm)
///     formula: which formula; one of "textbook, 2.58", "Westergaard, 2.38"
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     CornerCrack, with the attributes
///         distance_in, distance_mm: distance from the corner [in | mm]
///     and notes; for arrays CornerCrackArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner,
///         from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import corner_crack
///     >>> answer = corner_crack(radius="6 in", stiffness="43 in", formula="textbook, 2.58")
///     >>> round(answer.distance_in, 4)
///     41.4409
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (radius, stiffness, formula, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(radius, stiffness, formula, *, units=None, errors='raise')")]
fn corner_crack(
    py: Python<'_>,
    radius: &Bound<'_, PyAny>,
    stiffness: &Bound<'_, PyAny>,
    formula: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &CORNER_CRACK, &[radius, stiffness, formula], units, errors)
}

/// What `corner_crack` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct CornerCrack;

#[pymethods]
impl CornerCrack {
    /// Distance from the corner [in].
    #[getter]
    fn get_distance_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Distance from the corner [mm].
    #[getter]
    fn get_distance_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `corner_crack` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct CornerCrackArray;

#[pymethods]
impl CornerCrackArray {
    /// Distance from the corner [in].
    #[getter]
    fn get_distance_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Distance from the corner [mm].
    #[getter]
    fn get_distance_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static LOAD_INFLUENCE: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "load_influence"),
    class: "LoadInfluence",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(LoadInfluence))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(LoadInfluenceArray))?.into_any()),
};

/// What a load on a circle does to a large slab on springs at a distance, for each unit of it: the exact solution.
///
/// Rule: F = mean of K0(x exp(i pi/4)) over the circle; deflection = -Im F / 2 pi, over load /
///     (subgrade stiffness^2); radial = (Re F - (1 - poisson) Im(F'/x)) / 2 pi, tangential = (poisson
///     Re F + (1 - poisson) Im(F'/x)) / 2 pi, over load; x = distance / stiffness.
/// Takes for granted: a thin plate without end; stress = 6 moment / thickness^2.
///
/// Args:
///     distance: from the middle of the load [in | mm]; at least 0 in, at most 39370.0787402 in (at
///         least 0 mm, at most 1000000 mm)
///     radius: radius of the contact, at most 2 radii of relative stiffness [in | mm]; at least
///         0.0393700787402 in, at most 196.850393701 in (at least 1 mm, at most 5000 mm)
///     stiffness: relative stiffness, its radius [in | mm]; at least 0.393700787402 in, at most
///         1968.50393701 in (at least 10 mm, at most 50000 mm)
///     poisson: Poisson's ratio of the concrete, often 0.15 [1]; at least 0 1, at most 0.5 1
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     LoadInfluence, with the attributes
///         deflection_ratio: deflection over load / (subgrade stiffness^2) [1]
///         radial_ratio: moment towards the load, for each unit of width and load [1]
///         tangential_ratio: across that direction, for each unit of width and load [1]
///     and notes; for arrays LoadInfluenceArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     OverlayError: the contact of a load is too wide for the formula (CONTACT_TOO_WIDE)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     exact deflection and moments of a large plate on springs: Textbooks on plates on elastic
///         foundation (Hertz, Timoshenko) (any), load on a circle, Kelvin functions, from memory:
///         confirm
///
/// Example:
///     >>> from overslab.overlay import load_influence
///     >>> answer = load_influence(
///     ...     distance="40 in",
///     ...     radius="6 in",
///     ...     stiffness="42.97 in",
///     ...     poisson="0.15 ratio",
///     ... )
///     >>> round(answer.deflection_ratio, 5)
///     0.08255
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (distance, radius, stiffness, poisson, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(distance, radius, stiffness, poisson, *, units=None, errors='raise')")]
fn load_influence(
    py: Python<'_>,
    distance: &Bound<'_, PyAny>,
    radius: &Bound<'_, PyAny>,
    stiffness: &Bound<'_, PyAny>,
    poisson: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &LOAD_INFLUENCE, &[distance, radius, stiffness, poisson], units, errors)
}

/// What `load_influence` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct LoadInfluence;

#[pymethods]
impl LoadInfluence {
    /// Deflection over load / (subgrade stiffness^2) [1].
    #[getter]
    fn get_deflection_ratio(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Moment towards the load, for each unit of width and load [1].
    #[getter]
    fn get_radial_ratio(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Us)
    }
    /// Across that direction, for each unit of width and load [1].
    #[getter]
    fn get_tangential_ratio(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(2, overslab::quantity::System::Us)
    }
}

/// What `load_influence` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct LoadInfluenceArray;

#[pymethods]
impl LoadInfluenceArray {
    /// Deflection over load / (subgrade stiffness^2) [1].
    #[getter]
    fn get_deflection_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Moment towards the load, for each unit of width and load [1].
    #[getter]
    fn get_radial_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Across that direction, for each unit of width and load [1].
    #[getter]
    fn get_tangential_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 2, overslab::quantity::System::Us)
    }
}

static USUAL_LOAD: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "usual_load"),
    class: "UsualLoad",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(UsualLoad))?.into_any()),
};

/// What a thing of everyday puts on the floor, as alike loads: to be shown and changed. An anchored lift has no numbers here, but what to ask.
///
/// Rule: design_load = load x margin; radius = sqrt(design_load / (pi pressure)).
/// Takes for granted: ours, from memory, but for the jacks: weigh or read the plate where it matters.
///
/// Args:
///     thing: what stands or rolls there; one of "car", "pickup", "loaded one-ton", "farm tractor",
///         "skid machine", "bench", "kiln", "two jacks", "anchored lift"
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     UsualLoad, with the attributes
///         load_lbf, load_kn: each load; none where only the maker can say [lbf | kN]
///         margin_ratio: what the load is multiplied by [1]
///         design_load_lbf, design_load_kn: the load with its margin; none without a load [lbf | kN]
///         pressure_psi, pressure_kpa: contact pressure; none without a load [psi | kPa]
///         radius_in, radius_mm: contact radius under the load with its margin; none without a load [in
///             | mm]
///         count: how many stand near one another
///         spacing_in, spacing_mm: middle to middle [in | mm]
///         said: what was taken, or what to ask
///         rests_on: its basis, by name
///     and notes, basis and taken.
///
/// Raises:
///     FormError: the word is not one of the choices (WORD_UNKNOWN)
///
/// Basis:
///     ours, from memory: what usual things put on a floor: common practice, no source
///     the point load of garages, taken as a jack: ASCE 7 (2002), 3000 lb on 4 1/2 by 4 1/2 in, as
///         quoted elsewhere
///     the maker's approval of the anchors, and an engineer: the project's specification
///     a circle of the load over its pressure: derived
///
/// Example:
///     >>> from overslab.overlay import usual_load
///     >>> answer = usual_load(thing="pickup")
///     >>> round(answer.load_lbf, 4)
///     2000.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (thing, *, units=crate::units::Units(None)), text_signature = "(thing, *, units=None)")]
fn usual_load(
    py: Python<'_>,
    thing: &Bound<'_, PyAny>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &USUAL_LOAD, &[Some(thing)], units)
}

/// What `usual_load` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.overlay")]
pub(crate) struct UsualLoad;

#[pymethods]
impl UsualLoad {
    /// Each load; none where only the maker can say [lbf].
    #[getter]
    fn get_load_lbf<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Each load; none where only the maker can say [kN].
    #[getter]
    fn get_load_kn<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// What the load is multiplied by [1].
    #[getter]
    fn get_margin_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// The load with its margin; none without a load [lbf].
    #[getter]
    fn get_design_load_lbf<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// The load with its margin; none without a load [kN].
    #[getter]
    fn get_design_load_kn<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Contact pressure; none without a load [psi].
    #[getter]
    fn get_pressure_psi<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Contact pressure; none without a load [kPa].
    #[getter]
    fn get_pressure_kpa<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// Contact radius under the load with its margin; none without a load [in].
    #[getter]
    fn get_radius_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Contact radius under the load with its margin; none without a load [mm].
    #[getter]
    fn get_radius_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Si)
    }
    /// How many stand near one another.
    #[getter]
    fn get_count<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// Middle to middle [in].
    #[getter]
    fn get_spacing_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// Middle to middle [mm].
    #[getter]
    fn get_spacing_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Si)
    }
    /// What was taken, or what to ask.
    #[getter]
    fn get_said<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Us)
    }
    /// Its basis, by name.
    #[getter]
    fn get_rests_on<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Us)
    }
}

static SLAB_STRESS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "slab_stress"),
    class: "SlabStress",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SlabStress))?.into_any()),
};

/// Stress and deflection under each of several loads on a slab on ground, each with what the others add; over an old slab what each layer feels.
///
/// Rule: together = sum over loads of (Westergaard's stress of the load at this position) x (influence
///     at the distance / influence at none); moments in the middle are added with their directions, at
///     edges and corners the larger one is taken.
/// Takes for granted: a large slab that lies on its subgrade everywhere; a load by pressure stands on a
///     circle; a semicircle has the circle's area; with an old slab both layers are one plate of the
///     overlay's concrete; several loads and two layers: ours, no source.
///
/// Args:
///     loads: the loads; a table of at least 1 row, each a load on the slab, its contact by radius or
///         by pressure, with the columns
///         name: what it is; a text; may be left out
///         load: how heavy [lbf | kN]; more than 0 lbf, at most 2248089.431 lbf (more than 0 kN, at
///             most 10000 kN)
///         radius: radius of the circle it stands on [in | mm]; at least 0.0393700787402 in, at most
///             196.850393701 in (at least 1 mm, at most 5000 mm); may be left out
///         pressure: contact pressure, in place of a radius [psi | kPa]; at least 0.14503773773 psi, at
///             most 14503.773773 psi (at least 1 kPa, at most 100000 kPa); may be left out
///         x: from the left [ft | m]; at least -3280.83989501 ft, at most 3280.83989501 ft (at least
///             -1000 m, at most 1000 m)
///         y: from the front [ft | m]; at least -3280.83989501 ft, at most 3280.83989501 ft (at least
///             -1000 m, at most 1000 m)
///         position: where on the slab it stands; one of "interior", "edge", "corner"
///     thickness: thickness of the slab, or of the overlay where an old slab is given [in | mm]; more
///         than 0 in, at most 78.7401574803 in (more than 0 mm, at most 2000 mm)
///     modulus: modulus of elasticity of the concrete [psi | MPa]; at least 14503.773773 psi, at most
///         14503773.773 psi (at least 100 MPa, at most 100000 MPa); where it is not given 3,600,000 psi
///         is taken: normal-weight concrete of 4,000 psi
///     poisson: Poisson's ratio of the concrete [1]; at least 0 1, at most 0.5 1; where it is not given
///         0.15 ratio is taken: usual for concrete
///     subgrade: subgrade reaction k under all concrete [pci | MPa/m]; at least 5 pci, at most 2000 pci
///         (at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m); where it is not given 100 pci
///         is taken: medium by heel and bar
///     edge_form: contact at an edge; one of "circle", "semicircle"; where it is not given circle is
///         taken: a wheel that touches the edge from inside
///     corner_form: formula in a corner; one of "Westergaard 1926", "Ioannides 1985"; where it is not
///         given Westergaard 1926 is taken: its stress is the nearest to a plate by finite elements
///     transfer: share of edge stress that dowels or interlock take off, 25 % by many manuals (confirm)
///         [%]; at least 0 %, at most 50 %; where it is not given 0 % is taken: a free edge
///     length: length of the slab between joints, to see whether it is large enough [ft | m]; at least
///         0.328083989501 ft, at most 656.167979003 ft (at least 0.1 m, at most 200 m); may be left out
///     width: its width, likewise [ft | m]; at least 0.328083989501 ft, at most 656.167979003 ft (at
///         least 0.1 m, at most 200 m); may be left out
///     old_slab: old slab under the overlay, its thickness [in | mm]; more than 0 in, at most
///         78.7401574803 in (more than 0 mm, at most 2000 mm); may be left out
///     old_modulus: old slab, its modulus of elasticity [psi | MPa]; at least 14503.773773 psi, at most
///         14503773.773 psi (at least 100 MPa, at most 100000 MPa); may be left out
///     bond: how the overlay holds to it; one of "bonded", "partly bonded", "unbonded"; may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     SlabStress, with the attributes
///         stiffness_in, stiffness_mm: radius of relative stiffness [in | mm]
///         equivalent_in, equivalent_mm: thickness of the plate that was figured [in | mm]
///         greatest_psi, greatest_mpa: greatest governing stress of that plate [psi | MPa]
///         governs: under which load, the first being 1
///         felt: what each load feels, a table of felt
///     and notes, basis and taken.
///
/// Raises:
///     FormError: the list is empty (EMPTY_LIST); a required value is missing (KEY_MISSING)
///     OverlayError: the contact of a load is not given by exactly one of radius and pressure
///         (CONTACT_UNCLEAR); the contact of a load is too wide for the formula (CONTACT_TOO_WIDE)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner,
///         from memory: confirm
///     edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm
///     s = 3 P / h^2 (1 - (c/l)^0.72), c = 1.772 a: Ioannides, Thompson, Barenberg (1985), corner load,
///         from memory: confirm
///     exact deflection and moments of a large plate on springs: Textbooks on plates on elastic
///         foundation (Hertz, Timoshenko) (any), load on a circle, Kelvin functions, from memory:
///         confirm
///     ours, no source: what another load adds is what it would do there, times its influence at the
///         distance over that at none: derived
///     ours, no source: bonded by the transformed section, unbonded by sharing the moment in proportion
///         to rigidity: derived
///     dowels or interlock take 25 % off the free-edge stress: TM 5-809-12 (1987), joints, from memory:
///         confirm
///     stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner:
///         Ioannides, Thompson, Barenberg (1985), least slab sizes, from memory: confirm
///     soft 50, medium 100, firm 200 pci, by heel and bar: common practice, no source
///
/// Example:
///     >>> from overslab.overlay import slab_stress
///     >>> answer = slab_stress(
///     ...     loads=[
///     ...         {
///     ...             "name": "left jack",
///     ...             "load": "3000 lb",
///     ...             "pressure": "148 psi",
///     ...             "x": "4 ft",
///     ...             "y": "6 ft",
///     ...             "position": "interior",
///     ...         },
///     ...         {
///     ...             "name": "right jack",
///     ...             "load": "3000 lb",
///     ...             "pressure": "148 psi",
///     ...             "x": "9 ft",
///     ...             "y": "6 ft",
///     ...             "position": "interior",
///     ...         },
///     ...     ],
///     ...     thickness="4 in",
///     ...     length="12 ft",
///     ...     width="10 ft",
///     ... )
///     >>> round(answer.stiffness_in, 4)
///     21.0521
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (loads, thickness, *, modulus=None, poisson=None, subgrade=None, edge_form=None, corner_form=None, transfer=None, length=None, width=None, old_slab=None, old_modulus=None, bond=None, units=crate::units::Units(None)), text_signature = "(loads, thickness, *, modulus=None, poisson=None, subgrade=None, edge_form=None, corner_form=None, transfer=None, length=None, width=None, old_slab=None, old_modulus=None, bond=None, units=None)")]
fn slab_stress(
    py: Python<'_>,
    loads: &Bound<'_, PyAny>,
    thickness: &Bound<'_, PyAny>,
    modulus: Option<&Bound<'_, PyAny>>,
    poisson: Option<&Bound<'_, PyAny>>,
    subgrade: Option<&Bound<'_, PyAny>>,
    edge_form: Option<&Bound<'_, PyAny>>,
    corner_form: Option<&Bound<'_, PyAny>>,
    transfer: Option<&Bound<'_, PyAny>>,
    length: Option<&Bound<'_, PyAny>>,
    width: Option<&Bound<'_, PyAny>>,
    old_slab: Option<&Bound<'_, PyAny>>,
    old_modulus: Option<&Bound<'_, PyAny>>,
    bond: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &SLAB_STRESS, &[Some(loads), Some(thickness), modulus, poisson, subgrade, edge_form, corner_form, transfer, length, width, old_slab, old_modulus, bond], units)
}

/// What `slab_stress` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.overlay")]
pub(crate) struct SlabStress;

#[pymethods]
impl SlabStress {
    /// Radius of relative stiffness [in].
    #[getter]
    fn get_stiffness_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Radius of relative stiffness [mm].
    #[getter]
    fn get_stiffness_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Thickness of the plate that was figured [in].
    #[getter]
    fn get_equivalent_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Thickness of the plate that was figured [mm].
    #[getter]
    fn get_equivalent_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Greatest governing stress of that plate [psi].
    #[getter]
    fn get_greatest_psi<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Greatest governing stress of that plate [MPa].
    #[getter]
    fn get_greatest_mpa<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Under which load, the first being 1.
    #[getter]
    fn get_governs<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// What each load feels, a table of felt.
    #[getter]
    fn get_felt<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
}

static SAFETY_FACTORS: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "safety_factors"),
    class: "SafetyFactors",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SafetyFactors))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(SafetyFactorsArray))?.into_any()),
};

/// The safety factors in use for a kind of load, from memory: confirm.
///
/// Rule: moving wheel 1.4, usual 2; wheel with unlimited passes 2 to 2.2; post or jack 1.7, usual 2;
///     uniform 1.4, usual 2; wall 1.7, usual 2.
/// Takes for granted: the modulus of rupture over the factor is the stress allowed.
///
/// Args:
///     kind: kind of load; one of "moving wheel", "wheel, unlimited passes", "post or jack", "uniform",
///         "wall"
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     SafetyFactors, with the attributes
///         least_ratio: least in use [1]
///         usual_ratio: taken where nobody says [1]
///     and notes; for arrays SafetyFactorsArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     FormError: the word is not one of the choices (WORD_UNKNOWN)
///
/// Basis:
///     safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import safety_factors
///     >>> answer = safety_factors(kind="post or jack")
///     >>> round(answer.least_ratio, 4)
///     1.7
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (kind, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(kind, *, units=None, errors='raise')")]
fn safety_factors(
    py: Python<'_>,
    kind: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &SAFETY_FACTORS, &[kind], units, errors)
}

/// What `safety_factors` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct SafetyFactors;

#[pymethods]
impl SafetyFactors {
    /// Least in use [1].
    #[getter]
    fn get_least_ratio(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Taken where nobody says [1].
    #[getter]
    fn get_usual_ratio(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Us)
    }
}

/// What `safety_factors` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct SafetyFactorsArray;

#[pymethods]
impl SafetyFactorsArray {
    /// Least in use [1].
    #[getter]
    fn get_least_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Taken where nobody says [1].
    #[getter]
    fn get_usual_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Us)
    }
}

static ALLOWABLE_STRESS: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "allowable_stress"),
    class: "AllowableStress",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(AllowableStress))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(AllowableStressArray))?.into_any()),
};

/// The stress that a safety factor allows.
///
/// Rule: allowable = rupture / safety.
/// Takes for granted: plain concrete.
///
/// Args:
///     rupture: modulus of rupture [psi | MPa]; at least 50 psi, at most 2000 psi (at least
///         0.344737864658 MPa, at most 13.7895145863 MPa)
///     safety: safety factor [1]; at least 1 1, at most 10 1
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     AllowableStress, with the attributes
///         allowable_psi, allowable_mpa: stress allowed [psi | MPa]
///     and notes; for arrays AllowableStressArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import allowable_stress
///     >>> answer = allowable_stress(rupture="570 psi", safety="1.7 ratio")
///     >>> round(answer.allowable_psi, 4)
///     335.2941
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (rupture, safety, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(rupture, safety, *, units=None, errors='raise')")]
fn allowable_stress(
    py: Python<'_>,
    rupture: &Bound<'_, PyAny>,
    safety: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &ALLOWABLE_STRESS, &[rupture, safety], units, errors)
}

/// What `allowable_stress` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct AllowableStress;

#[pymethods]
impl AllowableStress {
    /// Stress allowed [psi].
    #[getter]
    fn get_allowable_psi(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Stress allowed [MPa].
    #[getter]
    fn get_allowable_mpa(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `allowable_stress` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct AllowableStressArray;

#[pymethods]
impl AllowableStressArray {
    /// Stress allowed [psi].
    #[getter]
    fn get_allowable_psi<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Stress allowed [MPa].
    #[getter]
    fn get_allowable_mpa<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static ALLOWABLE_LOAD: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "allowable_load"),
    class: "AllowableLoad",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(AllowableLoad))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(AllowableLoadArray))?.into_any()),
};

/// The one load that a slab carries at a place, on a contact of a given radius.
///
/// Rule: load = (rupture / safety) / stress of a unit load; interior 1926, edge circle 1948, corner
///     Westergaard 1926.
/// Takes for granted: the contact keeps its radius; one load by itself; nothing carried across joints.
///
/// Args:
///     position: where on the slab it stands; one of "interior", "edge", "corner"
///     radius: radius of the contact [in | mm]; at least 0.0393700787402 in, at most 196.850393701 in
///         (at least 1 mm, at most 5000 mm)
///     thickness: thickness of the slab [in | mm]; more than 0 in, at most 78.7401574803 in (more than
///         0 mm, at most 2000 mm)
///     modulus: modulus of elasticity of the concrete [psi | MPa]; at least 14503.773773 psi, at most
///         14503773.773 psi (at least 100 MPa, at most 100000 MPa)
///     poisson: Poisson's ratio of the concrete, often 0.15 [1]; at least 0 1, at most 0.5 1
///     subgrade: subgrade reaction k [pci | MPa/m]; at least 5 pci, at most 2000 pci (at least
///         1.35723568763 MPa/m, at most 542.894275053 MPa/m)
///     rupture: its strength in bending, the modulus of rupture [psi | MPa]; at least 50 psi, at most
///         2000 psi (at least 0.344737864658 MPa, at most 13.7895145863 MPa)
///     safety: safety factor [1]; at least 1 1, at most 10 1
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     AllowableLoad, with the attributes
///         load_lbf, load_kn: load allowed [lbf | kN]
///     and notes; for arrays AllowableLoadArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     OverlayError: the contact of a load is too wide for the formula (CONTACT_TOO_WIDE)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner,
///         from memory: confirm
///     edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm
///     safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import allowable_load
///     >>> answer = allowable_load(
///     ...     position="interior",
///     ...     radius="3 in",
///     ...     thickness="4 in",
///     ...     modulus="3,600,000 psi",
///     ...     poisson="0.15 ratio",
///     ...     subgrade="100 pci",
///     ...     rupture="550 psi",
///     ...     safety="2 ratio",
///     ... )
///     >>> round(answer.load_lbf, 4)
///     3048.6797
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (position, radius, thickness, modulus, poisson, subgrade, rupture, safety, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(position, radius, thickness, modulus, poisson, subgrade, rupture, safety, *, units=None, errors='raise')")]
fn allowable_load(
    py: Python<'_>,
    position: &Bound<'_, PyAny>,
    radius: &Bound<'_, PyAny>,
    thickness: &Bound<'_, PyAny>,
    modulus: &Bound<'_, PyAny>,
    poisson: &Bound<'_, PyAny>,
    subgrade: &Bound<'_, PyAny>,
    rupture: &Bound<'_, PyAny>,
    safety: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &ALLOWABLE_LOAD, &[position, radius, thickness, modulus, poisson, subgrade, rupture, safety], units, errors)
}

/// What `allowable_load` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct AllowableLoad;

#[pymethods]
impl AllowableLoad {
    /// Load allowed [lbf].
    #[getter]
    fn get_load_lbf(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Load allowed [kN].
    #[getter]
    fn get_load_kn(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `allowable_load` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct AllowableLoadArray;

#[pymethods]
impl AllowableLoadArray {
    /// Load allowed [lbf].
    #[getter]
    fn get_load_lbf<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Load allowed [kN].
    #[getter]
    fn get_load_kn<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static REPETITIONS_ALLOWED: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "repetitions_allowed"),
    class: "RepetitionsAllowed",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(RepetitionsAllowed))?.into_any()),
};

/// How often a stress may come, by its ratio to the modulus of rupture.
///
/// Rule: below 0.45 without limit; to 0.55 repetitions = (4.2577 / (stress_ratio - 0.4325))^3.268;
///     above log10 repetitions = (0.9718 - stress_ratio) / 0.0828.
/// Takes for granted: stress and strength are those of the place that governs.
///
/// Args:
///     stress_ratio: stress over modulus of rupture [1]; more than 0 1, at most 1 1
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     RepetitionsAllowed, with the attributes
///         unlimited: whether there is no limit: no, yes
///         repetitions_ratio: how often; none where there is no limit [1]
///     and notes, basis and taken.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     repetitions by stress ratio, unlimited below 0.45: IRC:58, after the Portland Cement Association
///         (2002), fatigue, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import repetitions_allowed
///     >>> answer = repetitions_allowed(stress_ratio="0.55 ratio")
///     >>> answer.unlimited
///     'no'
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (stress_ratio, *, units=crate::units::Units(None)), text_signature = "(stress_ratio, *, units=None)")]
fn repetitions_allowed(
    py: Python<'_>,
    stress_ratio: &Bound<'_, PyAny>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &REPETITIONS_ALLOWED, &[Some(stress_ratio)], units)
}

/// What `repetitions_allowed` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.overlay")]
pub(crate) struct RepetitionsAllowed;

#[pymethods]
impl RepetitionsAllowed {
    /// Whether there is no limit: no, yes.
    #[getter]
    fn get_unlimited<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// How often; none where there is no limit [1].
    #[getter]
    fn get_repetitions_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
}

static THICKNESS_NEEDED: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "thickness_needed"),
    class: "ThicknessNeeded",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ThicknessNeeded))?.into_any()),
};

/// The smallest thickness of a single slab on ground whose governing stress under all loads is allowed.
///
/// Rule: smallest thickness with governing stress <= rupture / safety, by halving, 0.01 mm at most
///     above the root.
/// Takes for granted: as slab_stress; one safety factor for all loads; nothing is carried by an old
///     slab: for that see overlay_required.
///
/// Args:
///     loads: the loads; a table of at least 1 row, each a load on the slab, its contact by radius or
///         by pressure, with the columns
///         name: what it is; a text; may be left out
///         load: how heavy [lbf | kN]; more than 0 lbf, at most 2248089.431 lbf (more than 0 kN, at
///             most 10000 kN)
///         radius: radius of the circle it stands on [in | mm]; at least 0.0393700787402 in, at most
///             196.850393701 in (at least 1 mm, at most 5000 mm); may be left out
///         pressure: contact pressure, in place of a radius [psi | kPa]; at least 0.14503773773 psi, at
///             most 14503.773773 psi (at least 1 kPa, at most 100000 kPa); may be left out
///         x: from the left [ft | m]; at least -3280.83989501 ft, at most 3280.83989501 ft (at least
///             -1000 m, at most 1000 m)
///         y: from the front [ft | m]; at least -3280.83989501 ft, at most 3280.83989501 ft (at least
///             -1000 m, at most 1000 m)
///         position: where on the slab it stands; one of "interior", "edge", "corner"
///     rupture: modulus of rupture of the concrete [psi | MPa]; at least 50 psi, at most 2000 psi (at
///         least 0.344737864658 MPa, at most 13.7895145863 MPa)
///     safety: safety factor [1]; at least 1 1, at most 10 1; where it is not given 2 ratio is taken:
///         usual for wheels, posts and jacks
///     modulus: modulus of elasticity of the concrete [psi | MPa]; at least 14503.773773 psi, at most
///         14503773.773 psi (at least 100 MPa, at most 100000 MPa); where it is not given 3,600,000 psi
///         is taken: normal-weight concrete of 4,000 psi
///     poisson: Poisson's ratio of the concrete [1]; at least 0 1, at most 0.5 1; where it is not given
///         0.15 ratio is taken: usual for concrete
///     subgrade: subgrade reaction k [pci | MPa/m]; at least 5 pci, at most 2000 pci (at least
///         1.35723568763 MPa/m, at most 542.894275053 MPa/m); where it is not given 100 pci is taken:
///         medium by heel and bar
///     edge_form: contact at an edge; one of "circle", "semicircle"; where it is not given circle is
///         taken: a wheel that touches the edge from inside
///     corner_form: formula in a corner; one of "Westergaard 1926", "Ioannides 1985"; where it is not
///         given Westergaard 1926 is taken: its stress is the nearest to a plate by finite elements
///     transfer: share of edge stress that dowels or interlock take off, 25 % by many manuals (confirm)
///         [%]; at least 0 %, at most 50 %; where it is not given 0 % is taken: a free edge
///     least: the search begins here [in | mm]; at least 1 in, at most 48 in (at least 25.4 mm, at most
///         1219.2 mm); where it is not given 2 in is taken: no slab on ground is thinner
///     greatest: and ends here [in | mm]; more than 0 in, at most 78.7401574803 in (more than 0 mm, at
///         most 2000 mm); where it is not given 24 in is taken: thicker is no floor any more
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     ThicknessNeeded, with the attributes
///         thickness_in, thickness_mm: smallest thickness [in | mm]
///         stress_psi, stress_mpa: governing stress there [psi | MPa]
///         allowable_psi, allowable_mpa: stress allowed [psi | MPa]
///         governs: the load that governs, the first being 1
///     and notes, basis and taken.
///
/// Raises:
///     FormError: the list is empty (EMPTY_LIST)
///     OverlayError: no thickness up to the greatest asked is enough (NO_THICKNESS); the contact of a
///         load is not given by exactly one of radius and pressure (CONTACT_UNCLEAR)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner,
///         from memory: confirm
///     edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm
///     s = 3 P / h^2 (1 - (c/l)^0.72), c = 1.772 a: Ioannides, Thompson, Barenberg (1985), corner load,
///         from memory: confirm
///     ours, no source: what another load adds is what it would do there, times its influence at the
///         distance over that at none: derived
///     safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm
///     dowels or interlock take 25 % off the free-edge stress: TM 5-809-12 (1987), joints, from memory:
///         confirm
///     soft 50, medium 100, firm 200 pci, by heel and bar: common practice, no source
///
/// Example:
///     >>> from overslab.overlay import thickness_needed
///     >>> answer = thickness_needed(
///     ...     loads=[
///     ...         {
///     ...             "name": "left jack",
///     ...             "load": "3000 lb",
///     ...             "pressure": "148 psi",
///     ...             "x": "4 ft",
///     ...             "y": "6 ft",
///     ...             "position": "interior",
///     ...         },
///     ...         {
///     ...             "name": "right jack",
///     ...             "load": "3000 lb",
///     ...             "pressure": "148 psi",
///     ...             "x": "9 ft",
///     ...             "y": "6 ft",
///     ...             "position": "edge",
///     ...         },
///     ...     ],
///     ...     rupture="550 psi",
///     ... )
///     >>> round(answer.thickness_in, 4)
///     6.2717
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (loads, rupture, *, safety=None, modulus=None, poisson=None, subgrade=None, edge_form=None, corner_form=None, transfer=None, least=None, greatest=None, units=crate::units::Units(None)), text_signature = "(loads, rupture, *, safety=None, modulus=None, poisson=None, subgrade=None, edge_form=None, corner_form=None, transfer=None, least=None, greatest=None, units=None)")]
fn thickness_needed(
    py: Python<'_>,
    loads: &Bound<'_, PyAny>,
    rupture: &Bound<'_, PyAny>,
    safety: Option<&Bound<'_, PyAny>>,
    modulus: Option<&Bound<'_, PyAny>>,
    poisson: Option<&Bound<'_, PyAny>>,
    subgrade: Option<&Bound<'_, PyAny>>,
    edge_form: Option<&Bound<'_, PyAny>>,
    corner_form: Option<&Bound<'_, PyAny>>,
    transfer: Option<&Bound<'_, PyAny>>,
    least: Option<&Bound<'_, PyAny>>,
    greatest: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &THICKNESS_NEEDED, &[Some(loads), Some(rupture), safety, modulus, poisson, subgrade, edge_form, corner_form, transfer, least, greatest], units)
}

/// What `thickness_needed` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.overlay")]
pub(crate) struct ThicknessNeeded;

#[pymethods]
impl ThicknessNeeded {
    /// Smallest thickness [in].
    #[getter]
    fn get_thickness_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Smallest thickness [mm].
    #[getter]
    fn get_thickness_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Governing stress there [psi].
    #[getter]
    fn get_stress_psi<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Governing stress there [MPa].
    #[getter]
    fn get_stress_mpa<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Stress allowed [psi].
    #[getter]
    fn get_allowable_psi<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Stress allowed [MPa].
    #[getter]
    fn get_allowable_mpa<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// The load that governs, the first being 1.
    #[getter]
    fn get_governs<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
}

static UNIFORM_LOAD: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "uniform_load"),
    class: "UniformLoad",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(UniformLoad))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(UniformLoadArray))?.into_any()),
};

/// The uniform load that may stand on both sides of an aisle without joints, whatever the width of the aisle.
///
/// Rule: load = 0.123 (rupture / safety) sqrt(thickness x subgrade), psf, psi, in, pci.
/// Takes for granted: the aisle takes its worst width; no joint in it.
///
/// Args:
///     thickness: thickness of the slab [in | mm]; more than 0 in, at most 78.7401574803 in (more than
///         0 mm, at most 2000 mm)
///     subgrade: subgrade reaction k [pci | MPa/m]; at least 5 pci, at most 2000 pci (at least
///         1.35723568763 MPa/m, at most 542.894275053 MPa/m)
///     rupture: modulus of rupture [psi | MPa]; at least 50 psi, at most 2000 psi (at least
///         0.344737864658 MPa, at most 13.7895145863 MPa)
///     safety: safety factor [1]; at least 1 1, at most 10 1
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     UniformLoad, with the attributes
///         load_psf, load_kpa: load allowed on each unit of area [psf | kPa]
///     and notes; for arrays UniformLoadArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     w = 0.123 (MR / SF) sqrt(h k): ACI 360R, after Packard (2006), Table A1.1 read, fit recalled,
///         from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import uniform_load
///     >>> answer = uniform_load(
///     ...     thickness="6 in",
///     ...     subgrade="100 pci",
///     ...     rupture="600 psi",
///     ...     safety="2 ratio",
///     ... )
///     >>> round(answer.load_psf, 4)
///     903.8617
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (thickness, subgrade, rupture, safety, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(thickness, subgrade, rupture, safety, *, units=None, errors='raise')")]
fn uniform_load(
    py: Python<'_>,
    thickness: &Bound<'_, PyAny>,
    subgrade: &Bound<'_, PyAny>,
    rupture: &Bound<'_, PyAny>,
    safety: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &UNIFORM_LOAD, &[thickness, subgrade, rupture, safety], units, errors)
}

/// What `uniform_load` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct UniformLoad;

#[pymethods]
impl UniformLoad {
    /// Load allowed on each unit of area [psf].
    #[getter]
    fn get_load_psf(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Load allowed on each unit of area [kPa].
    #[getter]
    fn get_load_kpa(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `uniform_load` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct UniformLoadArray;

#[pymethods]
impl UniformLoadArray {
    /// Load allowed on each unit of area [psf].
    #[getter]
    fn get_load_psf<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Load allowed on each unit of area [kPa].
    #[getter]
    fn get_load_kpa<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static WALL_LOAD: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "wall_load"),
    class: "WallLoad",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(WallLoad))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(WallLoadArray))?.into_any()),
};

/// The load of a wall that a slab carries without being thickened, in the middle, at a doweled joint or at a free edge.
///
/// Rule: middle: load = 4 Fb S lambda; free edge: load = Fb S lambda / 0.3224; Fb = 1.6 sqrt(strength)
///     psi, S = thickness^2 / 6, lambda = (subgrade / (4 Ec thickness^3 / 12))^(1/4), Ec = 57000
///     sqrt(strength) psi.
/// Takes for granted: a beam without end on springs, the wall long.
///
/// Args:
///     thickness: thickness of the slab [in | mm]; more than 0 in, at most 78.7401574803 in (more than
///         0 mm, at most 2000 mm)
///     subgrade: subgrade reaction k [pci | MPa/m]; at least 5 pci, at most 2000 pci (at least
///         1.35723568763 MPa/m, at most 542.894275053 MPa/m)
///     strength: compressive strength f'c [psi | MPa]; at least 1000 psi, at most 15000 psi (at least
///         6.89475729317 MPa, at most 103.421359398 MPa)
///     place: where the wall stands; one of "middle or doweled joint", "free edge"
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     WallLoad, with the attributes
///         load_lbf_per_ft, load_kn_per_m: load allowed on each unit of length [lbf/ft | kN/m]
///     and notes; for arrays WallLoadArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///     FormError: the word is not one of the choices (WORD_UNKNOWN)
///
/// Basis:
///     Pc = 4 Fb S lambda, at a free edge Fb S lambda / 0.3224: TM 5-809-12 (1987), 3-4 and Table 3-2
///         read, forms recalled, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import wall_load
///     >>> answer = wall_load(
///     ...     thickness="6 in",
///     ...     subgrade="100 pci",
///     ...     strength="4,000 psi",
///     ...     place="free edge",
///     ... )
///     >>> round(answer.load_lbf_per_ft, 4)
///     563.0256
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (thickness, subgrade, strength, place, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(thickness, subgrade, strength, place, *, units=None, errors='raise')")]
fn wall_load(
    py: Python<'_>,
    thickness: &Bound<'_, PyAny>,
    subgrade: &Bound<'_, PyAny>,
    strength: &Bound<'_, PyAny>,
    place: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &WALL_LOAD, &[thickness, subgrade, strength, place], units, errors)
}

/// What `wall_load` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct WallLoad;

#[pymethods]
impl WallLoad {
    /// Load allowed on each unit of length [lbf/ft].
    #[getter]
    fn get_load_lbf_per_ft(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Load allowed on each unit of length [kN/m].
    #[getter]
    fn get_load_kn_per_m(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `wall_load` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct WallLoadArray;

#[pymethods]
impl WallLoadArray {
    /// Load allowed on each unit of length [lbf/ft].
    #[getter]
    fn get_load_lbf_per_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Load allowed on each unit of length [kN/m].
    #[getter]
    fn get_load_kn_per_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static CURLING_COEFFICIENT: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "curling_coefficient"),
    class: "CurlingCoefficient",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(CurlingCoefficient))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(CurlingCoefficientArray))?.into_any()),
};

/// Bradbury's coefficient of curling for a side of a slab.
///
/// Rule: coefficient = 1 - 2 cos m cosh m (tan m + tanh m) / (sin 2m + sinh 2m), m = side / (stiffness
///     sqrt 8).
/// Takes for granted: a strip free at both ends.
///
/// Args:
///     side: side of the slab between joints [ft | m]; at least 0.328083989501 ft, at most
///         656.167979003 ft (at least 0.1 m, at most 200 m)
///     stiffness: radius of relative stiffness [in | mm]; at least 0.393700787402 in, at most
///         1968.50393701 in (at least 10 mm, at most 50000 mm)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     CurlingCoefficient, with the attributes
///         coefficient_ratio: Bradbury's coefficient [1]
///     and notes; for arrays CurlingCoefficientArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     s = E alpha dT / (2 (1 - nu^2)) (Cx + nu Cy); edge C E alpha dT / 2: Bradbury, as in Huang,
///         Pavement Analysis and Design (1938), curling, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import curling_coefficient
///     >>> answer = curling_coefficient(side="25 ft", stiffness="30.57 in")
///     >>> round(answer.coefficient_ratio, 4)
///     1.0789
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (side, stiffness, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(side, stiffness, *, units=None, errors='raise')")]
fn curling_coefficient(
    py: Python<'_>,
    side: &Bound<'_, PyAny>,
    stiffness: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &CURLING_COEFFICIENT, &[side, stiffness], units, errors)
}

/// What `curling_coefficient` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct CurlingCoefficient;

#[pymethods]
impl CurlingCoefficient {
    /// Bradbury's coefficient [1].
    #[getter]
    fn get_coefficient_ratio(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
}

/// What `curling_coefficient` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct CurlingCoefficientArray;

#[pymethods]
impl CurlingCoefficientArray {
    /// Bradbury's coefficient [1].
    #[getter]
    fn get_coefficient_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
}

static CURLING_STRESS: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "curling_stress"),
    class: "CurlingStress",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(CurlingStress))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(CurlingStressArray))?.into_any()),
};

/// Stress from a difference of temperature between top and bottom of a slab.
///
/// Rule: edge = C modulus expansion difference / 2; interior = modulus expansion difference / (2 (1 -
///     poisson^2)) (C along + poisson C across).
/// Takes for granted: temperature straight through the thickness, the slab held down by its weight;
///     tension is at the bottom where the top is warmer, else at the top.
///
/// Args:
///     length: length of the slab between joints [ft | m]; at least 0.328083989501 ft, at most
///         656.167979003 ft (at least 0.1 m, at most 200 m)
///     width: width of the slab between joints [ft | m]; at least 0.328083989501 ft, at most
///         656.167979003 ft (at least 0.1 m, at most 200 m)
///     thickness: thickness of the slab [in | mm]; more than 0 in, at most 78.7401574803 in (more than
///         0 mm, at most 2000 mm)
///     modulus: modulus of elasticity of the concrete [psi | MPa]; at least 14503.773773 psi, at most
///         14503773.773 psi (at least 100 MPa, at most 100000 MPa)
///     poisson: Poisson's ratio of the concrete, often 0.15 [1]; at least 0 1, at most 0.5 1
///     subgrade: subgrade reaction k [pci | MPa/m]; at least 5 pci, at most 2000 pci (at least
///         1.35723568763 MPa/m, at most 542.894275053 MPa/m)
///     expansion: coefficient of thermal expansion [/degF | /degC]; at least 0.000000555555555556
///         /degF, at most 0.0000166666666667 /degF (at least 0.000001 /degC, at most 0.00003 /degC)
///     difference: between top and bottom, whichever is warmer [degF | K]; at least 0 degF, at most 108
///         degF (at least 0 K, at most 60 K)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     CurlingStress, with the attributes
///         interior_length_psi, interior_length_mpa: stress in the middle, along the length [psi | MPa]
///         interior_width_psi, interior_width_mpa: stress in the middle, along the width [psi | MPa]
///         edge_length_psi, edge_length_mpa: stress half way of an edge that runs along the length [psi
///             | MPa]
///         edge_width_psi, edge_width_mpa: stress half way of an edge that runs along the width [psi |
///             MPa]
///         of_length_ratio: coefficient C of the length [1]
///         of_width_ratio: coefficient C of the width [1]
///     and notes; for arrays CurlingStressArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
///         quantity (UNIT_WRONG)
///
/// Basis:
///     s = E alpha dT / (2 (1 - nu^2)) (Cx + nu Cy); edge C E alpha dT / 2: Bradbury, as in Huang,
///         Pavement Analysis and Design (1938), curling, from memory: confirm
///     l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness
///
/// Example:
///     >>> from overslab.overlay import curling_stress
///     >>> answer = curling_stress(
///     ...     length="25 ft",
///     ...     width="12 ft",
///     ...     thickness="8 in",
///     ...     modulus="4,000,000 psi",
///     ...     poisson="0.15 ratio",
///     ...     subgrade="200 pci",
///     ...     expansion="5e-6 /degF",
///     ...     difference="20 degF",
///     ... )
///     >>> round(answer.interior_length_psi, 4)
///     240.3564
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (length, width, thickness, modulus, poisson, subgrade, expansion, difference, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(length, width, thickness, modulus, poisson, subgrade, expansion, difference, *, units=None, errors='raise')")]
fn curling_stress(
    py: Python<'_>,
    length: &Bound<'_, PyAny>,
    width: &Bound<'_, PyAny>,
    thickness: &Bound<'_, PyAny>,
    modulus: &Bound<'_, PyAny>,
    poisson: &Bound<'_, PyAny>,
    subgrade: &Bound<'_, PyAny>,
    expansion: &Bound<'_, PyAny>,
    difference: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &CURLING_STRESS, &[length, width, thickness, modulus, poisson, subgrade, expansion, difference], units, errors)
}

/// What `curling_stress` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct CurlingStress;

#[pymethods]
impl CurlingStress {
    /// Stress in the middle, along the length [psi].
    #[getter]
    fn get_interior_length_psi(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Stress in the middle, along the length [MPa].
    #[getter]
    fn get_interior_length_mpa(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
    /// Stress in the middle, along the width [psi].
    #[getter]
    fn get_interior_width_psi(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Us)
    }
    /// Stress in the middle, along the width [MPa].
    #[getter]
    fn get_interior_width_mpa(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Si)
    }
    /// Stress half way of an edge that runs along the length [psi].
    #[getter]
    fn get_edge_length_psi(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(2, overslab::quantity::System::Us)
    }
    /// Stress half way of an edge that runs along the length [MPa].
    #[getter]
    fn get_edge_length_mpa(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(2, overslab::quantity::System::Si)
    }
    /// Stress half way of an edge that runs along the width [psi].
    #[getter]
    fn get_edge_width_psi(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(3, overslab::quantity::System::Us)
    }
    /// Stress half way of an edge that runs along the width [MPa].
    #[getter]
    fn get_edge_width_mpa(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(3, overslab::quantity::System::Si)
    }
    /// Coefficient C of the length [1].
    #[getter]
    fn get_of_length_ratio(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(4, overslab::quantity::System::Us)
    }
    /// Coefficient C of the width [1].
    #[getter]
    fn get_of_width_ratio(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(5, overslab::quantity::System::Us)
    }
}

/// What `curling_stress` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct CurlingStressArray;

#[pymethods]
impl CurlingStressArray {
    /// Stress in the middle, along the length [psi].
    #[getter]
    fn get_interior_length_psi<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Stress in the middle, along the length [MPa].
    #[getter]
    fn get_interior_length_mpa<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Stress in the middle, along the width [psi].
    #[getter]
    fn get_interior_width_psi<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Stress in the middle, along the width [MPa].
    #[getter]
    fn get_interior_width_mpa<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Stress half way of an edge that runs along the length [psi].
    #[getter]
    fn get_edge_length_psi<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Stress half way of an edge that runs along the length [MPa].
    #[getter]
    fn get_edge_length_mpa<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Stress half way of an edge that runs along the width [psi].
    #[getter]
    fn get_edge_width_psi<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Stress half way of an edge that runs along the width [MPa].
    #[getter]
    fn get_edge_width_mpa<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// Coefficient C of the length [1].
    #[getter]
    fn get_of_length_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Coefficient C of the width [1].
    #[getter]
    fn get_of_width_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 5, overslab::quantity::System::Us)
    }
}

static TWO_LAYERS: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "two_layers"),
    class: "TwoLayers",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(TwoLayers))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(TwoLayersArray))?.into_any()),
};

/// Overlay and old slab as one plate, and what each feels of that plate's bending stress. Ours, no source.
///
/// Rule: bonded: transformed section, equivalent = (12 I)^(1/3), stress = M y / I, in the old slab
///     times its modulus over the overlay's; unbonded: equivalent^3 = overlay^3 + (old_modulus /
///     overlay_modulus) old_slab^3, the moment shared as the rigidities.
/// Takes for granted: both layers take one curvature and have one Poisson's ratio; unbonded without
///     friction; partly bonded counts as unbonded; the plate has tension below.
///
/// Args:
///     bond: how the overlay holds to the old slab; one of "bonded", "partly bonded", "unbonded"
///     overlay: thickness of the overlay [in | mm]; more than 0 in, at most 78.7401574803 in (more than
///         0 mm, at most 2000 mm)
///     overlay_modulus: modulus of elasticity of the overlay [psi | MPa]; at least 14503.773773 psi, at
///         most 14503773.773 psi (at least 100 MPa, at most 100000 MPa)
///     old_slab: the old slab's thickness [in | mm]; more than 0 in, at most 78.7401574803 in (more
///         than 0 mm, at most 2000 mm)
///     old_modulus: the old slab's modulus of elasticity [psi | MPa]; at least 14503.773773 psi, at
///         most 14503773.773 psi (at least 100 MPa, at most 100000 MPa)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     TwoLayers, with the attributes
///         equivalent_in, equivalent_mm: thickness of the plate of the overlay's concrete that is as
///             stiff as both [in | mm]
///         overlay_share_ratio: share of the rigidity that the overlay brings [1]
///         overlay_top_ratio: stress at the top of the overlay, over the plate's bending stress;
///             tension positive [1]
///         overlay_bottom_ratio: at the bottom of the overlay [1]
///         old_top_ratio: old slab, at its top [1]
///         old_bottom_ratio: old slab, at its bottom [1]
///     and notes; for arrays TwoLayersArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     ours, no source: bonded by the transformed section, unbonded by sharing the moment in proportion
///         to rigidity: derived
///
/// Example:
///     >>> from overslab.overlay import two_layers
///     >>> answer = two_layers(
///     ...     bond="bonded",
///     ...     overlay="2 in",
///     ...     overlay_modulus="4,000,000 psi",
///     ...     old_slab="4 in",
///     ...     old_modulus="3,000,000 psi",
///     ... )
///     >>> round(answer.equivalent_in, 4)
///     5.7042
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (bond, overlay, overlay_modulus, old_slab, old_modulus, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(bond, overlay, overlay_modulus, old_slab, old_modulus, *, units=None, errors='raise')")]
fn two_layers(
    py: Python<'_>,
    bond: &Bound<'_, PyAny>,
    overlay: &Bound<'_, PyAny>,
    overlay_modulus: &Bound<'_, PyAny>,
    old_slab: &Bound<'_, PyAny>,
    old_modulus: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &TWO_LAYERS, &[bond, overlay, overlay_modulus, old_slab, old_modulus], units, errors)
}

/// What `two_layers` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct TwoLayers;

#[pymethods]
impl TwoLayers {
    /// Thickness of the plate of the overlay's concrete that is as stiff as both [in].
    #[getter]
    fn get_equivalent_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Thickness of the plate of the overlay's concrete that is as stiff as both [mm].
    #[getter]
    fn get_equivalent_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
    /// Share of the rigidity that the overlay brings [1].
    #[getter]
    fn get_overlay_share_ratio(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Us)
    }
    /// Stress at the top of the overlay, over the plate's bending stress; tension positive [1].
    #[getter]
    fn get_overlay_top_ratio(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(2, overslab::quantity::System::Us)
    }
    /// At the bottom of the overlay [1].
    #[getter]
    fn get_overlay_bottom_ratio(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(3, overslab::quantity::System::Us)
    }
    /// Old slab, at its top [1].
    #[getter]
    fn get_old_top_ratio(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(4, overslab::quantity::System::Us)
    }
    /// Old slab, at its bottom [1].
    #[getter]
    fn get_old_bottom_ratio(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(5, overslab::quantity::System::Us)
    }
}

/// What `two_layers` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct TwoLayersArray;

#[pymethods]
impl TwoLayersArray {
    /// Thickness of the plate of the overlay's concrete that is as stiff as both [in].
    #[getter]
    fn get_equivalent_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Thickness of the plate of the overlay's concrete that is as stiff as both [mm].
    #[getter]
    fn get_equivalent_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Share of the rigidity that the overlay brings [1].
    #[getter]
    fn get_overlay_share_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Stress at the top of the overlay, over the plate's bending stress; tension positive [1].
    #[getter]
    fn get_overlay_top_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// At the bottom of the overlay [1].
    #[getter]
    fn get_overlay_bottom_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Old slab, at its top [1].
    #[getter]
    fn get_old_top_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Old slab, at its bottom [1].
    #[getter]
    fn get_old_bottom_ratio<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 5, overslab::quantity::System::Us)
    }
}

static EDGE_KEY: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "edge_key"),
    class: "EdgeKey",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(EdgeKey))?.into_any()),
};

/// The key that is sawn and chipped into the old slab where the overlay is thinner than its least at an edge: concrete is not run out to nothing.
///
/// Rule: depth = least - at_edge; width = depth / growth; volume = depth x width / 2 x length; with
///     less room its section is a triangle cut off at the room's end.
/// Takes for granted: the overlay thickens evenly away from the edge, which is straight; the saw cut at
///     the edge is vertical.
///
/// Args:
///     least: least thickness of the overlay [in | mm]; more than 0 in, at most 60 in (more than 0 mm,
///         at most 1524 mm)
///     at_edge: thickness of the overlay at the edge, 0 where it is flush with the old slab [in | mm];
///         at least 0 in, at most 60 in (at least 0 mm, at most 1524 mm)
///     growth: how fast it thickens away from the edge [in/ft | %]; more than 0 in/ft, at most 12 in/ft
///         (more than 0 %, at most 100 %)
///     length: length of the edge [ft | m]; more than 0 ft, at most 10498.687664 ft (more than 0 m, at
///         most 3200 m)
///     room: how far back there is room for the key [ft | m]; more than 0 ft, at most 10498.687664 ft
///         (more than 0 m, at most 3200 m); may be left out
///     old_slab: thickness of the old slab [in | mm]; more than 0 in, at most 78.7401574803 in (more
///         than 0 mm, at most 2000 mm); may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     EdgeKey, with the attributes
///         cut: what is done at the edge: no key, saw and chip, break out the strip
///         depth_in, depth_mm: how deep the saw goes at the edge [in | mm]
///         width_ft, width_m: how far back it is chipped [ft | m]
///         depth_at_back_in, depth_at_back_mm: how deep it still is at its back; 0 where it runs out
///             [in | mm]
///         area_ft2, area_m2: chipped area [ft2 | m2]
///         volume_ft3, volume_l: old concrete that comes out, and new concrete that goes in [ft3 | L]
///         left_in, left_mm: what is left of the old slab under the key [in | mm]
///     and notes, basis and taken.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     no feather edge: a sawn and chipped key at least the least thickness deep: ACI 546R (several),
///         edges of repairs, from memory: confirm
///     a key through half of the old slab or more leaves too little of it: the strip is broken out:
///         common practice, no source
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.overlay import edge_key
///     >>> answer = edge_key(
///     ...     least="1 1/2 in",
///     ...     at_edge="1/2 in",
///     ...     growth="1/4 in/ft",
///     ...     length="9 ft",
///     ...     old_slab="4 in",
///     ... )
///     >>> answer.cut
///     'saw and chip'
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (least, at_edge, growth, length, *, room=None, old_slab=None, units=crate::units::Units(None)), text_signature = "(least, at_edge, growth, length, *, room=None, old_slab=None, units=None)")]
fn edge_key(
    py: Python<'_>,
    least: &Bound<'_, PyAny>,
    at_edge: &Bound<'_, PyAny>,
    growth: &Bound<'_, PyAny>,
    length: &Bound<'_, PyAny>,
    room: Option<&Bound<'_, PyAny>>,
    old_slab: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &EDGE_KEY, &[Some(least), Some(at_edge), Some(growth), Some(length), room, old_slab], units)
}

/// What `edge_key` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.overlay")]
pub(crate) struct EdgeKey;

#[pymethods]
impl EdgeKey {
    /// What is done at the edge: no key, saw and chip, break out the strip.
    #[getter]
    fn get_cut<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// How deep the saw goes at the edge [in].
    #[getter]
    fn get_depth_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// How deep the saw goes at the edge [mm].
    #[getter]
    fn get_depth_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// How far back it is chipped [ft].
    #[getter]
    fn get_width_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// How far back it is chipped [m].
    #[getter]
    fn get_width_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// How deep it still is at its back; 0 where it runs out [in].
    #[getter]
    fn get_depth_at_back_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// How deep it still is at its back; 0 where it runs out [mm].
    #[getter]
    fn get_depth_at_back_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// Chipped area [ft2].
    #[getter]
    fn get_area_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Chipped area [m2].
    #[getter]
    fn get_area_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Si)
    }
    /// Old concrete that comes out, and new concrete that goes in [ft3].
    #[getter]
    fn get_volume_ft3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// Old concrete that comes out, and new concrete that goes in [L].
    #[getter]
    fn get_volume_l<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Si)
    }
    /// What is left of the old slab under the key [in].
    #[getter]
    fn get_left_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// What is left of the old slab under the key [mm].
    #[getter]
    fn get_left_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Si)
    }
}

static KEY_CUTS: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "key_cuts"),
    class: "KeyCuts",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(KeyCuts))?.into_any()),
};

/// Where the overlay is thinner than its least along an edge of the work, and the keys that are sawn and chipped there.
///
/// Rule: depth = least - (finish - old slab) at the edge; width to where the least is first reached,
///     square to the edge; area and volume by Simpson's rule between sections.
/// Takes for granted: the edge is one where the floor meets a given height: a door, a walk, the next
///     slab; sections no more than 3 ft apart and where a surface bends along the edge.
///
/// Args:
///     survey: the old slab; a Survey
///     finish: the new top surface; a Finish
///     line: the places of the edge; a table of at least 1 row, each a place on the edge of the work,
///         in order; one alone is a place, with the columns
///         x: from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at least
///             -100000 m, at most 100000 m)
///         y: from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at least
///             -100000 m, at most 100000 m)
///     least: least thickness of the overlay [in | mm]; more than 0 in, at most 60 in (more than 0 mm,
///         at most 1524 mm)
///     old_slab: thickness of the old slab [in | mm]; more than 0 in, at most 78.7401574803 in (more
///         than 0 mm, at most 2000 mm); may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     KeyCuts, with the attributes
///         cuts: the keys; none where the overlay is thick enough, a table of cuts
///         length_ft, length_m: length of saw cuts along the edge [ft | m]
///         area_ft2, area_m2: area that is chipped [ft2 | m2]
///         volume_ft3, volume_l: concrete that comes out and goes in, of all keys [ft3 | L]
///     and notes, basis and taken.
///
/// Raises:
///     OverlayError: a line does not run along an edge of the work (LINE_NOT_ON_EDGE)
///     FormError: the list is empty (EMPTY_LIST)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     no feather edge: a sawn and chipped key at least the least thickness deep: ACI 546R (several),
///         edges of repairs, from memory: confirm
///     a key through half of the old slab or more leaves too little of it: the strip is broken out:
///         common practice, no source
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.overlay import key_cuts
///     >>> answer = key_cuts(
///     ...     survey={
///     ...         "outline": {
///     ...             "corners": [
///     ...                 {"x": "0 ft", "y": "0 ft"},
///     ...                 {"x": "20 ft", "y": "0 ft"},
///     ...                 {"x": "20 ft", "y": "24 ft"},
///     ...                 {"x": "0 ft", "y": "24 ft"},
///     ...             ],
///     ...         },
///     ...         "shots": [
///     ...             {"x": "1 ft", "y": "1 ft", "elevation": "99.4 ft"},
///     ...             {"x": "19 ft", "y": "1 ft", "elevation": "99.42 ft"},
///     ...             {"x": "19 ft", "y": "23 ft", "elevation": "99.2 ft"},
///     ...             {"x": "1 ft", "y": "23 ft", "elevation": "99.18 ft"},
///     ...         ],
///     ...     },
///     ...     finish={"level": "99.5 ft"},
///     ...     line={"x": ["6 ft", "14 ft"], "y": ["0 in", "0 in"]},
///     ...     least="1 1/2 in",
///     ...     old_slab="4 in",
///     ... )
///     >>> round(answer.length_ft, 4)
///     8.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (survey, finish, line, least, *, old_slab=None, units=crate::units::Units(None)), text_signature = "(survey, finish, line, least, *, old_slab=None, units=None)")]
fn key_cuts(
    py: Python<'_>,
    survey: &Bound<'_, PyAny>,
    finish: &Bound<'_, PyAny>,
    line: &Bound<'_, PyAny>,
    least: &Bound<'_, PyAny>,
    old_slab: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &KEY_CUTS, &[Some(survey), Some(finish), Some(line), Some(least), old_slab], units)
}

/// What `key_cuts` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.overlay")]
pub(crate) struct KeyCuts;

#[pymethods]
impl KeyCuts {
    /// The keys; none where the overlay is thick enough, a table of cuts.
    #[getter]
    fn get_cuts<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Length of saw cuts along the edge [ft].
    #[getter]
    fn get_length_ft<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Length of saw cuts along the edge [m].
    #[getter]
    fn get_length_m<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Area that is chipped [ft2].
    #[getter]
    fn get_area_ft2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Area that is chipped [m2].
    #[getter]
    fn get_area_m2<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Concrete that comes out and goes in, of all keys [ft3].
    #[getter]
    fn get_volume_ft3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Concrete that comes out and goes in, of all keys [L].
    #[getter]
    fn get_volume_l<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
}

static MOISTURE_TESTS: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "moisture_tests"),
    class: "MoistureTests",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(MoistureTests))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(MoistureTestsArray))?.into_any()),
};

/// How many humidity probes a floor takes before it is covered, and how deep their holes are.
///
/// Rule: probes = 3 for the first 1000 ft2, 1 for each further 1000 ft2 or part; depth = 0.4 thickness
///     drying from one side, 0.2 from two.
/// Takes for granted: a hole is closed 24 h before it is read (72 h before the edition of 2018, from
///     memory); the floor is at the temperature and in the air of its use.
///
/// Args:
///     area: area of the floor [ft2 | m2]; more than 0 ft2, at most 10763910.4167 ft2 (more than 0 m2,
///         at most 1000000 m2)
///     thickness: thickness of the slab that dries: of an overlay on a sheet, its own [in | mm]; more
///         than 0 in, at most 78.7401574803 in (more than 0 mm, at most 2000 mm)
///     drying: which sides it dries from; one of "one side", "two sides"
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     MoistureTests, with the attributes
///         count: how many probes
///         depth_in, depth_mm: depth of their holes [in | mm]
///     and notes; for arrays MoistureTestsArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///     FormError: the word is not one of the choices (WORD_UNKNOWN)
///
/// Basis:
///     3 probes for the first 1,000 ft2, one for each further 1,000 ft2, at 40 % of the thickness from
///         one side, 20 % from two, read after 24 h: ASTM F2170 (2018 and later), number, depth and
///         waiting of probes
///
/// Example:
///     >>> from overslab.overlay import moisture_tests
///     >>> answer = moisture_tests(area="1,800 ft2", thickness="4 in", drying="one side")
///     >>> answer.count
///     4
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (area, thickness, drying, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(area, thickness, drying, *, units=None, errors='raise')")]
fn moisture_tests(
    py: Python<'_>,
    area: &Bound<'_, PyAny>,
    thickness: &Bound<'_, PyAny>,
    drying: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &MOISTURE_TESTS, &[area, thickness, drying], units, errors)
}

/// What `moisture_tests` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct MoistureTests;

#[pymethods]
impl MoistureTests {
    /// How many probes.
    #[getter]
    fn get_count(slf: &Bound<'_, Self>) -> i64 {
        slf.as_super().get().count(0)
    }
    /// Depth of their holes [in].
    #[getter]
    fn get_depth_in(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Us)
    }
    /// Depth of their holes [mm].
    #[getter]
    fn get_depth_mm(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Si)
    }
}

/// What `moisture_tests` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct MoistureTestsArray;

#[pymethods]
impl MoistureTestsArray {
    /// How many probes.
    #[getter]
    fn get_count<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().counts(slf.py(), 0)
    }
    /// Depth of their holes [in].
    #[getter]
    fn get_depth_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Depth of their holes [mm].
    #[getter]
    fn get_depth_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Si)
    }
}

static MOISTURE_VERDICT: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "moisture_verdict"),
    class: "MoistureVerdict",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(MoistureVerdict))?.into_any()),
};

/// Whether a floor is dry enough for what goes on it, by its humidity probes and the limit of the maker of that.
///
/// Rule: dry enough where the highest reading is within the limit and there are as many probes as the
///     area takes.
/// Takes for granted: vapour does no harm to a cement overlay: coverings, sealers and coatings on it
///     suffer; a sheet under an unbonded overlay stops what comes from below.
///
/// Args:
///     readings: what each probe reads; a table of at least 1 row, each a probe, with the columns
///         humidity: relative humidity that it reads [%]; more than 0 %, at most 100 %
///     limit: the maker's limit [%]; more than 0 %, at most 100 %; may be left out
///     area: area of the floor [ft2 | m2]; more than 0 ft2, at most 10763910.4167 ft2 (more than 0 m2,
///         at most 1000000 m2); may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     MoistureVerdict, with the attributes
///         verdict: what the readings say: dry enough, too damp, test more, ask the maker
///         highest_percent: highest reading, which governs [%]
///         wanted: how many probes the area takes; none without an area
///     and notes, basis and taken.
///
/// Raises:
///     FormError: the list is empty (EMPTY_LIST)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     the limit of the maker of what goes on the floor, often 75 to 85 % relative humidity: the
///         project's specification
///     3 probes for the first 1,000 ft2, one for each further 1,000 ft2, at 40 % of the thickness from
///         one side, 20 % from two, read after 24 h: ASTM F2170 (2018 and later), number, depth and
///         waiting of probes
///     vapour harms coverings, sealers and coatings, not the cement overlay under them; a sheet, lapped
///         and taped, stops what comes from below: common practice, no source
///
/// Example:
///     >>> from overslab.overlay import moisture_verdict
///     >>> answer = moisture_verdict(
///     ...     readings={"humidity": ["74 %", "79 %", "77 %"]},
///     ...     limit="80 %",
///     ...     area="600 ft2",
///     ... )
///     >>> answer.verdict
///     'dry enough'
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (readings, *, limit=None, area=None, units=crate::units::Units(None)), text_signature = "(readings, *, limit=None, area=None, units=None)")]
fn moisture_verdict(
    py: Python<'_>,
    readings: &Bound<'_, PyAny>,
    limit: Option<&Bound<'_, PyAny>>,
    area: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &MOISTURE_VERDICT, &[Some(readings), limit, area], units)
}

/// What `moisture_verdict` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.overlay")]
pub(crate) struct MoistureVerdict;

#[pymethods]
impl MoistureVerdict {
    /// What the readings say: dry enough, too damp, test more, ask the maker.
    #[getter]
    fn get_verdict<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Highest reading, which governs [%].
    #[getter]
    fn get_highest_percent<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// How many probes the area takes; none without an area.
    #[getter]
    fn get_wanted<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
}

static DRYING_TIME: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "drying_time"),
    class: "DryingTime",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(DryingTime))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(DryingTimeArray))?.into_any()),
};

/// How long concrete dries, after its curing ends, until it may be tested for a covering.
///
/// Rule: 28 to 30 days for each inch of thickness.
/// Takes for granted: drying from one side in good air, to about 85 % relative humidity; wetting again
///     starts it anew; the probes decide, not the calendar.
///
/// Args:
///     thickness: thickness that dries [in | mm]; more than 0 in, at most 78.7401574803 in (more than 0
///         mm, at most 2000 mm)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     DryingTime, with the attributes
///         least_d: least time [d]
///         greatest_d: greatest time [d]
///     and notes; for arrays DryingTimeArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     28 to 30 days for each inch from one side in good air, to about 85 %: Construction Specifier, on
///         drying slabs (any), an inch a month
///
/// Example:
///     >>> from overslab.overlay import drying_time
///     >>> answer = drying_time(thickness="3 in")
///     >>> round(answer.least_d, 4)
///     84.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (thickness, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(thickness, *, units=None, errors='raise')")]
fn drying_time(
    py: Python<'_>,
    thickness: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &DRYING_TIME, &[thickness], units, errors)
}

/// What `drying_time` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct DryingTime;

#[pymethods]
impl DryingTime {
    /// Least time [d].
    #[getter]
    fn get_least_d(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Greatest time [d].
    #[getter]
    fn get_greatest_d(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Us)
    }
}

/// What `drying_time` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct DryingTimeArray;

#[pymethods]
impl DryingTimeArray {
    /// Least time [d].
    #[getter]
    fn get_least_d<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Greatest time [d].
    #[getter]
    fn get_greatest_d<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Us)
    }
}

static DRYING_TIME_BY_WATER: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "drying_time_by_water"),
    class: "DryingTimeByWater",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(DryingTimeByWater))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(DryingTimeByWaterArray))?.into_any()),
};

/// How long a slab 4 in thick dries until it gives off 3 lb of vapour in 24 h over 1000 ft2, by its water-cement ratio; from memory, confirm.
///
/// Rule: days 46, 82, 117, 130, 148, 166, 190 at 0.4, 0.5 to 1.0, straight between.
/// Takes for granted: 4 in thick, drying from one side, no water from below.
///
/// Args:
///     water_cement: water-cement ratio [w/cm]; at least 0.4 w/cm, at most 1 w/cm
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     DryingTimeByWater, with the attributes
///         time_d: time it takes [d]
///     and notes; for arrays DryingTimeByWaterArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     4 in: 46 days at a water-cement ratio of 0.4, 82 at 0.5, 190 at 1.0, to 3 lb/1000 ft2/24 h:
///         Brewer, Portland Cement Association (1965), drying of 4 in slabs, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import drying_time_by_water
///     >>> answer = drying_time_by_water(water_cement="0.45 w/cm")
///     >>> round(answer.time_d, 4)
///     64.0
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (water_cement, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(water_cement, *, units=None, errors='raise')")]
fn drying_time_by_water(
    py: Python<'_>,
    water_cement: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &DRYING_TIME_BY_WATER, &[water_cement], units, errors)
}

/// What `drying_time_by_water` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct DryingTimeByWater;

#[pymethods]
impl DryingTimeByWater {
    /// Time it takes [d].
    #[getter]
    fn get_time_d(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
}

/// What `drying_time_by_water` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct DryingTimeByWaterArray;

#[pymethods]
impl DryingTimeByWaterArray {
    /// Time it takes [d].
    #[getter]
    fn get_time_d<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
}

static VAPOUR_EMISSION: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "vapour_emission"),
    class: "VapourEmission",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(VapourEmission))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(VapourEmissionArray))?.into_any()),
};

/// The vapour that a floor gives off, by a dish of calcium chloride that stood sealed on it.
///
/// Rule: emission = gain / (area x time).
/// Takes for granted: the dish stands sealed 60 to 72 h on cleaned concrete and the maker of what goes
///     on the floor sets the limit, often 3 lb/1000 ft2/24 h (both from memory).
///
/// Args:
///     gain: mass that the dish gained [g]; at least 0 g, at most 10000 g
///     area: area of floor under its cover [ft2 | m2]; more than 0 ft2, at most 107.639104167 ft2 (more
///         than 0 m2, at most 10 m2)
///     time: how long it stood [h]; more than 0 h, at most 2400 h
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     VapourEmission, with the attributes
///         emission_lb_per_1000ft2_24h, emission_g_per_m2_24h: vapour in 24 h [lb/1000 ft2/24 h |
///             g/m2/24 h]
///     and notes; for arrays VapourEmissionArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     emission = gain of the dish / (area x time): derived
///     the dish stands 60 to 72 h: ASTM F1869 (any), the dish of calcium chloride, from memory: confirm
///
/// Example:
///     >>> from overslab.overlay import vapour_emission
///     >>> answer = vapour_emission(gain="5.2 g", area="0.5 ft2", time="66 h")
///     >>> round(answer.emission_lb_per_1000ft2_24h, 4)
///     8.3375
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (gain, area, time, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(gain, area, time, *, units=None, errors='raise')")]
fn vapour_emission(
    py: Python<'_>,
    gain: &Bound<'_, PyAny>,
    area: &Bound<'_, PyAny>,
    time: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &VAPOUR_EMISSION, &[gain, area, time], units, errors)
}

/// What `vapour_emission` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct VapourEmission;

#[pymethods]
impl VapourEmission {
    /// Vapour in 24 h [lb/1000 ft2/24 h].
    #[getter]
    fn get_emission_lb_per_1000ft2_24h(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Vapour in 24 h [g/m2/24 h].
    #[getter]
    fn get_emission_g_per_m2_24h(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `vapour_emission` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct VapourEmissionArray;

#[pymethods]
impl VapourEmissionArray {
    /// Vapour in 24 h [lb/1000 ft2/24 h].
    #[getter]
    fn get_emission_lb_per_1000ft2_24h<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Vapour in 24 h [g/m2/24 h].
    #[getter]
    fn get_emission_g_per_m2_24h<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static ADDED_WEIGHT: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "added_weight"),
    class: "AddedWeight",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(AddedWeight))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(AddedWeightArray))?.into_any()),
};

/// What an overlay weighs on each unit of area, and whether the work may go on: over anything but the ground it stops there.
///
/// Rule: weight = density x thickness.
/// Takes for granted: standard gravity; on ground the soil takes it, but for soft fill and thin slabs
///     over voids.
///
/// Args:
///     thickness: thickness of the overlay [in | mm]; more than 0 in, at most 78.7401574803 in (more
///         than 0 mm, at most 2000 mm)
///     density: unit weight, 150 lb/ft3 with steel [lb/ft3 | kg/m3]; at least 49.9423684609 lb/ft3, at
///         most 218.497862017 lb/ft3 (at least 800 kg/m3, at most 3500 kg/m3)
///     support: what carries the old slab; one of "ground", "suspended", "unknown"
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     AddedWeight, with the attributes
///         weight_psf, weight_kpa: added dead load [psf | kPa]
///         next: what follows: go on, find out, stop
///     and notes; for arrays AddedWeightArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///     FormError: the word is not one of the choices (WORD_UNKNOWN)
///
/// Basis:
///     w = unit weight x thickness: derived
///     what more a suspended slab carries is a structural engineer's to say: common practice, no source
///
/// Example:
///     >>> from overslab.overlay import added_weight
///     >>> answer = added_weight(thickness="3 in", density="150 lb/ft3", support="ground")
///     >>> round(answer.weight_psf, 4)
///     37.5
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (thickness, density, support, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(thickness, density, support, *, units=None, errors='raise')")]
fn added_weight(
    py: Python<'_>,
    thickness: &Bound<'_, PyAny>,
    density: &Bound<'_, PyAny>,
    support: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &ADDED_WEIGHT, &[thickness, density, support], units, errors)
}

/// What `added_weight` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.overlay")]
pub(crate) struct AddedWeight;

#[pymethods]
impl AddedWeight {
    /// Added dead load [psf].
    #[getter]
    fn get_weight_psf(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Added dead load [kPa].
    #[getter]
    fn get_weight_kpa(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
    /// What follows: go on, find out, stop.
    #[getter]
    fn get_next(slf: &Bound<'_, Self>) -> &'static str {
        slf.as_super().get().word(1)
    }
}

/// What `added_weight` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.overlay")]
pub(crate) struct AddedWeightArray;

#[pymethods]
impl AddedWeightArray {
    /// Added dead load [psf].
    #[getter]
    fn get_weight_psf<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Added dead load [kPa].
    #[getter]
    fn get_weight_kpa<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// What follows: go on, find out, stop.
    #[getter]
    fn get_next<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().words(slf.py(), 1)
    }
}

/// The scalar rows.
pub(crate) static SCALARS: &[&crate::scalars::ScalarRow] = &[&CONDITION_FACTOR, &OVERLAY_REQUIRED, &SLAB_EQUIVALENT, &OVERLAY_EFFECTIVE_BONDED, &OVERLAY_EFFECTIVE_UNBONDED, &CONCRETE_MODULUS, &CONCRETE_MODULUS_BY_DENSITY, &CONCRETE_RUPTURE, &SUBGRADE_FROM_BEARING_RATIO, &SUBGRADE_FROM_RESILIENT, &SUBGRADE_FROM_SOIL, &SUBGRADE_WITH_SUBBASE, &STIFFNESS_RADIUS, &CONTACT_RADIUS, &CONTACT_RADIUS_DUAL, &EQUIVALENT_RADIUS, &INTERIOR_LOAD, &EDGE_LOAD, &EDGE_LOAD_1926, &CORNER_LOAD, &CORNER_CRACK, &LOAD_INFLUENCE, &SAFETY_FACTORS, &ALLOWABLE_STRESS, &ALLOWABLE_LOAD, &UNIFORM_LOAD, &WALL_LOAD, &CURLING_COEFFICIENT, &CURLING_STRESS, &TWO_LAYERS, &MOISTURE_TESTS, &DRYING_TIME, &DRYING_TIME_BY_WATER, &VAPOUR_EMISSION, &ADDED_WEIGHT];

/// The rows with records.
pub(crate) static ANSWERS: &[&crate::answers::RecordRow] = &[&OVERLAY_MINIMUM, &SURFACE_PROFILE, &PULL_OFF, &USUAL_LOAD, &SLAB_STRESS, &REPETITIONS_ALLOWED, &THICKNESS_NEEDED, &EDGE_KEY, &KEY_CUTS, &MOISTURE_VERDICT];

/// The classes of records.
pub(crate) static RECORDS: &[crate::records::RecordClass] = &[];

/// Puts functions and classes into the native module.
pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(self::condition_factor, module)?)?;
    module.add_class::<ConditionFactor>()?;
    module.add_class::<ConditionFactorArray>()?;
    module.add_function(wrap_pyfunction!(self::overlay_minimum, module)?)?;
    module.add_class::<OverlayMinimum>()?;
    module.add_function(wrap_pyfunction!(self::surface_profile, module)?)?;
    module.add_class::<SurfaceProfile>()?;
    module.add_function(wrap_pyfunction!(self::pull_off, module)?)?;
    module.add_class::<PullOff>()?;
    module.add_function(wrap_pyfunction!(self::overlay_required, module)?)?;
    module.add_class::<OverlayRequired>()?;
    module.add_class::<OverlayRequiredArray>()?;
    module.add_function(wrap_pyfunction!(self::slab_equivalent, module)?)?;
    module.add_class::<SlabEquivalent>()?;
    module.add_class::<SlabEquivalentArray>()?;
    module.add_function(wrap_pyfunction!(self::overlay_effective_bonded, module)?)?;
    module.add_class::<OverlayEffectiveBonded>()?;
    module.add_class::<OverlayEffectiveBondedArray>()?;
    module.add_function(wrap_pyfunction!(self::overlay_effective_unbonded, module)?)?;
    module.add_class::<OverlayEffectiveUnbonded>()?;
    module.add_class::<OverlayEffectiveUnbondedArray>()?;
    module.add_function(wrap_pyfunction!(self::concrete_modulus, module)?)?;
    module.add_class::<ConcreteModulus>()?;
    module.add_class::<ConcreteModulusArray>()?;
    module.add_function(wrap_pyfunction!(self::concrete_modulus_by_density, module)?)?;
    module.add_class::<ConcreteModulusByDensity>()?;
    module.add_class::<ConcreteModulusByDensityArray>()?;
    module.add_function(wrap_pyfunction!(self::concrete_rupture, module)?)?;
    module.add_class::<ConcreteRupture>()?;
    module.add_class::<ConcreteRuptureArray>()?;
    module.add_function(wrap_pyfunction!(self::subgrade_from_bearing_ratio, module)?)?;
    module.add_class::<SubgradeFromBearingRatio>()?;
    module.add_class::<SubgradeFromBearingRatioArray>()?;
    module.add_function(wrap_pyfunction!(self::subgrade_from_resilient, module)?)?;
    module.add_class::<SubgradeFromResilient>()?;
    module.add_class::<SubgradeFromResilientArray>()?;
    module.add_function(wrap_pyfunction!(self::subgrade_from_soil, module)?)?;
    module.add_class::<SubgradeFromSoil>()?;
    module.add_class::<SubgradeFromSoilArray>()?;
    module.add_function(wrap_pyfunction!(self::subgrade_with_subbase, module)?)?;
    module.add_class::<SubgradeWithSubbase>()?;
    module.add_class::<SubgradeWithSubbaseArray>()?;
    module.add_function(wrap_pyfunction!(self::stiffness_radius, module)?)?;
    module.add_class::<StiffnessRadius>()?;
    module.add_class::<StiffnessRadiusArray>()?;
    module.add_function(wrap_pyfunction!(self::contact_radius, module)?)?;
    module.add_class::<ContactRadius>()?;
    module.add_class::<ContactRadiusArray>()?;
    module.add_function(wrap_pyfunction!(self::contact_radius_dual, module)?)?;
    module.add_class::<ContactRadiusDual>()?;
    module.add_class::<ContactRadiusDualArray>()?;
    module.add_function(wrap_pyfunction!(self::equivalent_radius, module)?)?;
    module.add_class::<EquivalentRadius>()?;
    module.add_class::<EquivalentRadiusArray>()?;
    module.add_function(wrap_pyfunction!(self::interior_load, module)?)?;
    module.add_class::<InteriorLoad>()?;
    module.add_class::<InteriorLoadArray>()?;
    module.add_function(wrap_pyfunction!(self::edge_load, module)?)?;
    module.add_class::<EdgeLoad>()?;
    module.add_class::<EdgeLoadArray>()?;
    module.add_function(wrap_pyfunction!(self::edge_load_1926, module)?)?;
    module.add_class::<EdgeLoad1926>()?;
    module.add_class::<EdgeLoad1926Array>()?;
    module.add_function(wrap_pyfunction!(self::corner_load, module)?)?;
    module.add_class::<CornerLoad>()?;
    module.add_class::<CornerLoadArray>()?;
    module.add_function(wrap_pyfunction!(self::corner_crack, module)?)?;
    module.add_class::<CornerCrack>()?;
    module.add_class::<CornerCrackArray>()?;
    module.add_function(wrap_pyfunction!(self::load_influence, module)?)?;
    module.add_class::<LoadInfluence>()?;
    module.add_class::<LoadInfluenceArray>()?;
    module.add_function(wrap_pyfunction!(self::usual_load, module)?)?;
    module.add_class::<UsualLoad>()?;
    module.add_function(wrap_pyfunction!(self::slab_stress, module)?)?;
    module.add_class::<SlabStress>()?;
    module.add_function(wrap_pyfunction!(self::safety_factors, module)?)?;
    module.add_class::<SafetyFactors>()?;
    module.add_class::<SafetyFactorsArray>()?;
    module.add_function(wrap_pyfunction!(self::allowable_stress, module)?)?;
    module.add_class::<AllowableStress>()?;
    module.add_class::<AllowableStressArray>()?;
    module.add_function(wrap_pyfunction!(self::allowable_load, module)?)?;
    module.add_class::<AllowableLoad>()?;
    module.add_class::<AllowableLoadArray>()?;
    module.add_function(wrap_pyfunction!(self::repetitions_allowed, module)?)?;
    module.add_class::<RepetitionsAllowed>()?;
    module.add_function(wrap_pyfunction!(self::thickness_needed, module)?)?;
    module.add_class::<ThicknessNeeded>()?;
    module.add_function(wrap_pyfunction!(self::uniform_load, module)?)?;
    module.add_class::<UniformLoad>()?;
    module.add_class::<UniformLoadArray>()?;
    module.add_function(wrap_pyfunction!(self::wall_load, module)?)?;
    module.add_class::<WallLoad>()?;
    module.add_class::<WallLoadArray>()?;
    module.add_function(wrap_pyfunction!(self::curling_coefficient, module)?)?;
    module.add_class::<CurlingCoefficient>()?;
    module.add_class::<CurlingCoefficientArray>()?;
    module.add_function(wrap_pyfunction!(self::curling_stress, module)?)?;
    module.add_class::<CurlingStress>()?;
    module.add_class::<CurlingStressArray>()?;
    module.add_function(wrap_pyfunction!(self::two_layers, module)?)?;
    module.add_class::<TwoLayers>()?;
    module.add_class::<TwoLayersArray>()?;
    module.add_function(wrap_pyfunction!(self::edge_key, module)?)?;
    module.add_class::<EdgeKey>()?;
    module.add_function(wrap_pyfunction!(self::key_cuts, module)?)?;
    module.add_class::<KeyCuts>()?;
    module.add_function(wrap_pyfunction!(self::moisture_tests, module)?)?;
    module.add_class::<MoistureTests>()?;
    module.add_class::<MoistureTestsArray>()?;
    module.add_function(wrap_pyfunction!(self::moisture_verdict, module)?)?;
    module.add_class::<MoistureVerdict>()?;
    module.add_function(wrap_pyfunction!(self::drying_time, module)?)?;
    module.add_class::<DryingTime>()?;
    module.add_class::<DryingTimeArray>()?;
    module.add_function(wrap_pyfunction!(self::drying_time_by_water, module)?)?;
    module.add_class::<DryingTimeByWater>()?;
    module.add_class::<DryingTimeByWaterArray>()?;
    module.add_function(wrap_pyfunction!(self::vapour_emission, module)?)?;
    module.add_class::<VapourEmission>()?;
    module.add_class::<VapourEmissionArray>()?;
    module.add_function(wrap_pyfunction!(self::added_weight, module)?)?;
    module.add_class::<AddedWeight>()?;
    module.add_class::<AddedWeightArray>()?;
    Ok(())
}
