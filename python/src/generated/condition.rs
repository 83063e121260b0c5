//! The operations of `condition`: made from the table of operations by `tests/src/generate/python`; do not edit.

#![allow(clippy::too_many_arguments, reason = "one for each port")]

use pyo3::prelude::*;

static CONDITION: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "condition"),
    class: "Condition",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Condition))?.into_any()),
};

/// Whether the old slab may stay: every way judged with its reasons, the way to take, the work, and what to find out.
///
/// Rule: each rule: where its findings are at their word or worse, the way is at least where the rule
///     puts it; bad parts broken out leave the better of unbonded and bonded for the rest.
/// Takes for granted: what is not given is not bad, and asked for where it could turn the verdict; no
///     verdict is an approval.
///
/// Args:
///     findings: what was found, in site words or measures; a Findings
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Condition, with the attributes
///         take: the way to take: unbonded, bonded, break_out_part, break_out_whole, find_out, stop
///         unbonded: pouring over it, unbonded: allowed, allowed_after_work, asks, refused, stop
///         bonded: bonding to it: allowed, allowed_after_work, asks, refused, stop
///         partly_bonded: pouring straight on; only where that is asked for: allowed,
///             allowed_after_work, asks, refused, stop
///         break_out_part: breaking out the bad parts: allowed, allowed_after_work, asks, refused, stop
///         break_out_whole: breaking it all out: allowed, allowed_after_work, asks, refused, stop
///         reasons: the rules that weigh, way by way, a table of reasons
///         work: the work that each way takes, a table of work
///         asks: what could turn the verdict and is not known, a table of asks
///         stops: the stops by name, a table of stops
///         taken_findings: what was not given and was taken, a table of taken_findings
///         text: the verdict in plain words, one idea to a line, what can hurt with it
///     and notes, basis and taken.
///
/// Raises:
///     FormError: the word is not one of the choices (WORD_UNKNOWN); the key is not known
///         (KEY_UNKNOWN); two values say the same thing differently (CONTRADICTION)
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); a number stands without its unit
///         (UNIT_MISSING)
///     ConditionError: two findings on the old slab cannot both be so (FINDINGS_DISAGREE)
///
/// Basis:
///     a sound slab is poured over at 3 in and more, bonded to below that; broken, settling and heaving
///         slabs come out: common practice, no source
///     hairline, card, coin: cracks of 0.01, 0.03, 0.06 in; coin, pencil: steps of 1/16, 1/4 in; hollow
///         spots, a lot: 5, 25 %; a nominal 4 in is 3 1/2 in: common practice, no source
///     tight, still cracks over a slab that sounds whole: bond or pour over; stepped, rocking, pumping
///         or broken: do not bond: ACI 302.1R and ACI 325.13R (several), choice of overlay by the old
///         slab's condition, from memory: confirm
///     over random cracks and settled offsets: not bonded; unbonded over a compacted sand layer that
///         covers the high spots: Concrete Construction, answer on topping a cracked and settled slab
///         (citing ACI 302.1R-80), choice of topping
///     before bonding, moving cracks are stabilised, filled or stitched, and contamination is taken off
///         down to clean concrete: Concrete Construction, preparing for a topping (any), moving cracks;
///         contamination
///     a floor topping that bonds in part counts as a failure: old cracks will show: Concrete
///         Construction, on floor toppings (any), partly bonded toppings
///     unbonded: sheet, felt, waterproof paper or wax cure over a base patched to a fair plane; bonded:
///         about 1/4 in rough: American Society of Concrete Contractors, answer on toppings (any), bond
///         breakers; roughness
///     milled or shotblasted, then blasted clean; grout just ahead of the concrete, dried grout taken
///         off: UFC 3-260-02 (any), chapter 17, fully bonded overlays
///     a hammer or a chain tells hollow places: ASTM D4580 (any), sounding of delaminations, from
///         memory: confirm
///     an agent that wets again is for dry places indoors only: ASTM C1059 (any), type I, which wets
///         again, and type II, from memory: confirm
///     a bonded topping is at least 3/4 in thick: ACI 302.1R (any), bonded toppings, from memory:
///         confirm
///     settlement that nobody knows counts as live where its signs are fresh or a step is over 1/2 in;
///         else a second reading or an exclusion in writing: common practice, no source
///     what lies under a slab is known, by drilling if need be, before it is loaded: common practice,
///         no source
///     a slab that spans takes more weight only by an engineer's figures: common practice, no source
///     water between two slabs freezes and lifts the upper one: outdoors bonded, or 4 in and more on a
///         drained layer with an open lower edge and sealed joints: common practice, no source
///     pipes, wires and tendons are found and marked before an old slab is cut, drilled or broken:
///         common practice, no source
///     posts of lifts and hoists are not anchored in a topping; the maker and an engineer say what
///         carries them: common practice, no source
///     coverings and paint of unknown age are tested for asbestos and lead first: common practice, no
///         source
///     3 in unbonded carries feet and cars; trucks, wash bays and jacks want 4 in and more, by stress:
///         common practice, no source
///     a panel is bonded or not as a whole; a change lies on a full-depth joint, at best over an old
///         one: common practice, no source
///     what the prepared surface must hold in a pull-off test: the project's specification
///
/// Example:
///     >>> from overslab.condition import condition
///     >>> answer = condition(
///     ...     findings={
///     ...         "measured_crack": "0.02 in",
///     ...         "measured_thickness": "4 in",
///     ...         "crack_movement": "still",
///     ...         "crack_pattern": "few",
///     ...         "step": "none",
///     ...         "settlement": "none",
///     ...         "heave": "none",
///     ...         "rocking": "none",
///     ...         "joints": "still",
///     ...         "hollow": "none",
///     ...         "strength": "rings",
///     ...         "contamination": "film",
///     ...         "moisture": "dry",
///     ...         "rests_on": "gravel",
///     ...         "below": "nothing",
///     ...         "place": "indoors",
///     ...         "load": "car",
///     ...     },
///     ... )
///     >>> answer.take
///     'unbonded'
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (findings, *, units=crate::units::Units(None)), text_signature = "(findings, *, units=None)")]
fn condition(
    py: Python<'_>,
    findings: &Bound<'_, PyAny>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &CONDITION, &[Some(findings)], units)
}

/// What `condition` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.condition")]
pub(crate) struct Condition;

#[pymethods]
impl Condition {
    /// The way to take: unbonded, bonded, break_out_part, break_out_whole, find_out, stop.
    #[getter]
    fn get_take<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Pouring over it, unbonded: allowed, allowed_after_work, asks, refused, stop.
    #[getter]
    fn get_unbonded<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Bonding to it: allowed, allowed_after_work, asks, refused, stop.
    #[getter]
    fn get_bonded<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Pouring straight on; only where that is asked for: allowed, allowed_after_work, asks, refused, stop.
    #[getter]
    fn get_partly_bonded<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Breaking out the bad parts: allowed, allowed_after_work, asks, refused, stop.
    #[getter]
    fn get_break_out_part<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Breaking it all out: allowed, allowed_after_work, asks, refused, stop.
    #[getter]
    fn get_break_out_whole<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// The rules that weigh, way by way, a table of reasons.
    #[getter]
    fn get_reasons<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// The work that each way takes, a table of work.
    #[getter]
    fn get_work<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Us)
    }
    /// What could turn the verdict and is not known, a table of asks.
    #[getter]
    fn get_asks<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Us)
    }
    /// The stops by name, a table of stops.
    #[getter]
    fn get_stops<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 9, overslab::quantity::System::Us)
    }
    /// What was not given and was taken, a table of taken_findings.
    #[getter]
    fn get_taken_findings<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 10, overslab::quantity::System::Us)
    }
    /// The verdict in plain words, one idea to a line, what can hurt with it.
    #[getter]
    fn get_text<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 11, overslab::quantity::System::Us)
    }
}

static CONDITION_QUICK: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "condition_quick"),
    class: "ConditionQuick",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(ConditionQuick))?.into_any()),
};

/// The verdict on the old slab by five questions that a foreman answers standing on it.
///
/// Rule: each rule: where its findings are at their word or worse, the way is at least where the rule
///     puts it; bad parts broken out leave the better of unbonded and bonded for the rest.
/// Takes for granted: each answer stands for findings, the worse ones where it may mean several; each
///     is listed as taken.
///
/// Args:
///     moves: does it move or rock, or has it sunk?; one of "no", "sank_once", "rocks", "moves"
///     cracks: what cracks are there?; one of "none", "hairline_still", "wide_or_stepped", "many"
///     hammer: what does the hammer say?; one of "rings", "spots", "a_lot"
///     surface: what is the surface like?; one of "clean", "oil_or_paint", "scaled", "covered"
///     under: what is under it, and does it freeze there?; one of "ground_indoors", "ground_outdoors",
///         "ground_frost", "air", "unknown"
///     findings: what else was found; it goes before the answers; a Findings; may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     ConditionQuick, with the attributes
///         take: the way to take: unbonded, bonded, break_out_part, break_out_whole, find_out, stop
///         unbonded: pouring over it, unbonded: allowed, allowed_after_work, asks, refused, stop
///         bonded: bonding to it: allowed, allowed_after_work, asks, refused, stop
///         partly_bonded: pouring straight on; only where that is asked for: allowed,
///             allowed_after_work, asks, refused, stop
///         break_out_part: breaking out the bad parts: allowed, allowed_after_work, asks, refused, stop
///         break_out_whole: breaking it all out: allowed, allowed_after_work, asks, refused, stop
///         reasons: the rules that weigh, way by way, a table of reasons
///         work: the work that each way takes, a table of work
///         asks: what could turn the verdict and is not known, a table of asks
///         stops: the stops by name, a table of stops
///         taken_findings: what was not given and was taken, a table of taken_findings
///         text: the verdict in plain words, one idea to a line, what can hurt with it
///     and notes, basis and taken.
///
/// Raises:
///     FormError: the word is not one of the choices (WORD_UNKNOWN); two values say the same thing
///         differently (CONTRADICTION)
///     ConditionError: two findings on the old slab cannot both be so (FINDINGS_DISAGREE)
///
/// Basis:
///     a sound slab is poured over at 3 in and more, bonded to below that; broken, settling and heaving
///         slabs come out: common practice, no source
///     hairline, card, coin: cracks of 0.01, 0.03, 0.06 in; coin, pencil: steps of 1/16, 1/4 in; hollow
///         spots, a lot: 5, 25 %; a nominal 4 in is 3 1/2 in: common practice, no source
///     tight, still cracks over a slab that sounds whole: bond or pour over; stepped, rocking, pumping
///         or broken: do not bond: ACI 302.1R and ACI 325.13R (several), choice of overlay by the old
///         slab's condition, from memory: confirm
///     over random cracks and settled offsets: not bonded; unbonded over a compacted sand layer that
///         covers the high spots: Concrete Construction, answer on topping a cracked and settled slab
///         (citing ACI 302.1R-80), choice of topping
///     before bonding, moving cracks are stabilised, filled or stitched, and contamination is taken off
///         down to clean concrete: Concrete Construction, preparing for a topping (any), moving cracks;
///         contamination
///     a floor topping that bonds in part counts as a failure: old cracks will show: Concrete
///         Construction, on floor toppings (any), partly bonded toppings
///     unbonded: sheet, felt, waterproof paper or wax cure over a base patched to a fair plane; bonded:
///         about 1/4 in rough: American Society of Concrete Contractors, answer on toppings (any), bond
///         breakers; roughness
///     milled or shotblasted, then blasted clean; grout just ahead of the concrete, dried grout taken
///         off: UFC 3-260-02 (any), chapter 17, fully bonded overlays
///     a hammer or a chain tells hollow places: ASTM D4580 (any), sounding of delaminations, from
///         memory: confirm
///     an agent that wets again is for dry places indoors only: ASTM C1059 (any), type I, which wets
///         again, and type II, from memory: confirm
///     a bonded topping is at least 3/4 in thick: ACI 302.1R (any), bonded toppings, from memory:
///         confirm
///     settlement that nobody knows counts as live where its signs are fresh or a step is over 1/2 in;
///         else a second reading or an exclusion in writing: common practice, no source
///     what lies under a slab is known, by drilling if need be, before it is loaded: common practice,
///         no source
///     a slab that spans takes more weight only by an engineer's figures: common practice, no source
///     water between two slabs freezes and lifts the upper one: outdoors bonded, or 4 in and more on a
///         drained layer with an open lower edge and sealed joints: common practice, no source
///     pipes, wires and tendons are found and marked before an old slab is cut, drilled or broken:
///         common practice, no source
///     posts of lifts and hoists are not anchored in a topping; the maker and an engineer say what
///         carries them: common practice, no source
///     coverings and paint of unknown age are tested for asbestos and lead first: common practice, no
///         source
///     3 in unbonded carries feet and cars; trucks, wash bays and jacks want 4 in and more, by stress:
///         common practice, no source
///     a panel is bonded or not as a whole; a change lies on a full-depth joint, at best over an old
///         one: common practice, no source
///     what the prepared surface must hold in a pull-off test: the project's specification
///
/// Example:
///     >>> from overslab.condition import condition_quick
///     >>> answer = condition_quick(
///     ...     moves="no",
///     ...     cracks="hairline_still",
///     ...     hammer="rings",
///     ...     surface="clean",
///     ...     under="ground_indoors",
///     ... )
///     >>> answer.take
///     'find_out'
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (moves, cracks, hammer, surface, under, *, findings=None, units=crate::units::Units(None)), text_signature = "(moves, cracks, hammer, surface, under, *, findings=None, units=None)")]
fn condition_quick(
    py: Python<'_>,
    moves: &Bound<'_, PyAny>,
    cracks: &Bound<'_, PyAny>,
    hammer: &Bound<'_, PyAny>,
    surface: &Bound<'_, PyAny>,
    under: &Bound<'_, PyAny>,
    findings: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &CONDITION_QUICK, &[Some(moves), Some(cracks), Some(hammer), Some(surface), Some(under), findings], units)
}

/// What `condition_quick` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.condition")]
pub(crate) struct ConditionQuick;

#[pymethods]
impl ConditionQuick {
    /// The way to take: unbonded, bonded, break_out_part, break_out_whole, find_out, stop.
    #[getter]
    fn get_take<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Pouring over it, unbonded: allowed, allowed_after_work, asks, refused, stop.
    #[getter]
    fn get_unbonded<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Bonding to it: allowed, allowed_after_work, asks, refused, stop.
    #[getter]
    fn get_bonded<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Pouring straight on; only where that is asked for: allowed, allowed_after_work, asks, refused, stop.
    #[getter]
    fn get_partly_bonded<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Breaking out the bad parts: allowed, allowed_after_work, asks, refused, stop.
    #[getter]
    fn get_break_out_part<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// Breaking it all out: allowed, allowed_after_work, asks, refused, stop.
    #[getter]
    fn get_break_out_whole<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// The rules that weigh, way by way, a table of reasons.
    #[getter]
    fn get_reasons<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// The work that each way takes, a table of work.
    #[getter]
    fn get_work<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Us)
    }
    /// What could turn the verdict and is not known, a table of asks.
    #[getter]
    fn get_asks<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Us)
    }
    /// The stops by name, a table of stops.
    #[getter]
    fn get_stops<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 9, overslab::quantity::System::Us)
    }
    /// What was not given and was taken, a table of taken_findings.
    #[getter]
    fn get_taken_findings<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 10, overslab::quantity::System::Us)
    }
    /// The verdict in plain words, one idea to a line, what can hurt with it.
    #[getter]
    fn get_text<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 11, overslab::quantity::System::Us)
    }
}

static TEAR_OUT: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "tear_out"),
    class: "TearOut",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(TearOut))?.into_any()),
};

/// Breaking an old slab out: what is hauled away in how many loads, the new base, the new slab, the cost at the caller's prices.
///
/// Rule: in place = area x old thickness; weight = in place x density; loose = in place x bulking; dug
///     = base + new thickness - old thickness - rise where above none; concrete = area x new thickness.
/// Takes for granted: thicknesses and rise are means over the area; a missing price stays missing and
///     leaves no total.
///
/// Args:
///     area: area broken out [ft2 | m2]; more than 0 ft2, at most 10763910.4167 ft2 (more than 0 m2, at
///         most 1000000 m2)
///     old_thickness: thickness of the old slab [in | mm]; at least 0.25 in, at most 60 in (at least
///         6.35 mm, at most 1524 mm); where it is not given 3 1/2 in is taken: a nominal 4 in is 3 1/2
///         in
///     density: mass of the old concrete in place [lb/ft3 | kg/m3]; at least 62.4279605761 lb/ft3, at
///         most 249.711842305 lb/ft3 (at least 1000 kg/m3, at most 4000 kg/m3); where it is not given
///         150 lb/ft3 is taken: 4,050 lb/yd3 in place
///     bulking: volume broken up over volume in place [%]; at least 100 %, at most 300 %; where it is
///         not given 150 % is taken: broken concrete takes 1.4 to 1.6 times its room
///     box_weight: what one box or truck may carry [ton | t]; at least 0.110231131092 ton, at most
///         55.1155655462 ton (at least 0.1 t, at most 50 t); where it is not given 10 ton is taken: a
///         box of 10 tons
///     box_volume: what goes into one box, where that runs out first [yd3 | m3]; at least
///         0.130795061931 yd3, at most 130.795061931 yd3 (at least 0.1 m3, at most 100 m3); may be left
///         out
///     base: thickness of the new base, compacted; none where the ground serves [in | mm]; more than 0
///         in, at most 120 in (more than 0 mm, at most 3048 mm); may be left out
///     base_loose: volume of base as bought over compacted [%]; at least 100 %, at most 300 %; where it
///         is not given 120 % is taken: base loses a sixth when it is compacted
///     new_thickness: mean thickness of the new slab; none where nothing is poured [in | mm]; at least
///         0.25 in, at most 60 in (at least 6.35 mm, at most 1524 mm); may be left out
///     rise: how much higher the new floor is than the old one, on the mean [in | mm]; at least -60 in,
///         at most 60 in (at least -1524 mm, at most 1524 mm); where it is not given 0 in is taken: the
///         new floor is as high as the old one
///     breaking_price: price of breaking and loading [/ft2 | /m2]; at least 0 /ft2, at most 92903040
///         /ft2 (at least 0 /m2, at most 1000000000 /m2); may be left out
///     load_price: price of hauling one load [money]; at least 0 money, at most 1000000000 money; may
///         be left out
///     dump_price: price of dumping [/ton | /t]; at least 0 /ton, at most 907184740000 /ton (at least 0
///         /t, at most 1000000000000 /t); may be left out
///     base_price: price of base as bought [/yd3 | /m3]; at least 0 /yd3, at most 764554857.984 /yd3
///         (at least 0 /m3, at most 1000000000 /m3); may be left out
///     concrete_price: price of concrete, placed [/yd3 | /m3]; at least 0 /yd3, at most 764554857.984
///         /yd3 (at least 0 /m3, at most 1000000000 /m3); may be left out
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     TearOut, with the attributes
///         in_place_yd3, in_place_m3: old concrete in place [yd3 | m3]
///         mass_ton, mass_t: its mass [ton | t]
///         loose_yd3, loose_m3: its volume broken up [yd3 | m3]
///         loads: loads to the dump, by weight or by volume
///         dig_depth_in, dig_depth_mm: how deep the ground is dug below the old slab [in | mm]
///         dig_yd3, dig_m3: ground dug, in place; it is not in the loads [yd3 | m3]
///         base_in_place_yd3, base_in_place_m3: new base, compacted [yd3 | m3]
///         base_bought_yd3, base_bought_m3: new base, loose, as it is bought [yd3 | m3]
///         concrete_yd3, concrete_m3: the new slab; none where nothing is poured [yd3 | m3]
///         costs: the cost of each part that there is, a table of costs
///         total_money: all of it; none where a price is missing [money]
///     and notes, basis and taken.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
///         quantity (UNIT_WRONG); the quantity cannot be below zero (NEGATIVE)
///
/// Basis:
///     plane and solid geometry: derived
///     broken concrete weighs 4,050 lb/yd3 in place and bulks by 1.4 to 1.6: common practice, no source
///     hairline, card, coin: cracks of 0.01, 0.03, 0.06 in; coin, pencil: steps of 1/16, 1/4 in; hollow
///         spots, a lot: 5, 25 %; a nominal 4 in is 3 1/2 in: common practice, no source
///
/// Example:
///     >>> from overslab.condition import tear_out
///     >>> answer = tear_out(
///     ...     area="400 ft2",
///     ...     old_thickness="4 in",
///     ...     base="4 in",
///     ...     new_thickness="5 in",
///     ...     rise="1 in",
///     ...     breaking_price="4.5 /ft2",
///     ...     load_price="180 money",
///     ...     dump_price="70 /ton",
///     ... )
///     >>> round(answer.in_place_yd3, 4)
///     4.9383
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (area, *, old_thickness=None, density=None, bulking=None, box_weight=None, box_volume=None, base=None, base_loose=None, new_thickness=None, rise=None, breaking_price=None, load_price=None, dump_price=None, base_price=None, concrete_price=None, units=crate::units::Units(None)), text_signature = "(area, *, old_thickness=None, density=None, bulking=None, box_weight=None, box_volume=None, base=None, base_loose=None, new_thickness=None, rise=None, breaking_price=None, load_price=None, dump_price=None, base_price=None, concrete_price=None, units=None)")]
fn tear_out(
    py: Python<'_>,
    area: &Bound<'_, PyAny>,
    old_thickness: Option<&Bound<'_, PyAny>>,
    density: Option<&Bound<'_, PyAny>>,
    bulking: Option<&Bound<'_, PyAny>>,
    box_weight: Option<&Bound<'_, PyAny>>,
    box_volume: Option<&Bound<'_, PyAny>>,
    base: Option<&Bound<'_, PyAny>>,
    base_loose: Option<&Bound<'_, PyAny>>,
    new_thickness: Option<&Bound<'_, PyAny>>,
    rise: Option<&Bound<'_, PyAny>>,
    breaking_price: Option<&Bound<'_, PyAny>>,
    load_price: Option<&Bound<'_, PyAny>>,
    dump_price: Option<&Bound<'_, PyAny>>,
    base_price: Option<&Bound<'_, PyAny>>,
    concrete_price: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &TEAR_OUT, &[Some(area), old_thickness, density, bulking, box_weight, box_volume, base, base_loose, new_thickness, rise, breaking_price, load_price, dump_price, base_price, concrete_price], units)
}

/// What `tear_out` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.condition")]
pub(crate) struct TearOut;

#[pymethods]
impl TearOut {
    /// Old concrete in place [yd3].
    #[getter]
    fn get_in_place_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Old concrete in place [m3].
    #[getter]
    fn get_in_place_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Its mass [ton].
    #[getter]
    fn get_mass_ton<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Its mass [t].
    #[getter]
    fn get_mass_t<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Its volume broken up [yd3].
    #[getter]
    fn get_loose_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Its volume broken up [m3].
    #[getter]
    fn get_loose_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Loads to the dump, by weight or by volume.
    #[getter]
    fn get_loads<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// How deep the ground is dug below the old slab [in].
    #[getter]
    fn get_dig_depth_in<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// How deep the ground is dug below the old slab [mm].
    #[getter]
    fn get_dig_depth_mm<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Si)
    }
    /// Ground dug, in place; it is not in the loads [yd3].
    #[getter]
    fn get_dig_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// Ground dug, in place; it is not in the loads [m3].
    #[getter]
    fn get_dig_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Si)
    }
    /// New base, compacted [yd3].
    #[getter]
    fn get_base_in_place_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
    /// New base, compacted [m3].
    #[getter]
    fn get_base_in_place_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Si)
    }
    /// New base, loose, as it is bought [yd3].
    #[getter]
    fn get_base_bought_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Us)
    }
    /// New base, loose, as it is bought [m3].
    #[getter]
    fn get_base_bought_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 7, overslab::quantity::System::Si)
    }
    /// The new slab; none where nothing is poured [yd3].
    #[getter]
    fn get_concrete_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Us)
    }
    /// The new slab; none where nothing is poured [m3].
    #[getter]
    fn get_concrete_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 8, overslab::quantity::System::Si)
    }
    /// The cost of each part that there is, a table of costs.
    #[getter]
    fn get_costs<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 9, overslab::quantity::System::Us)
    }
    /// All of it; none where a price is missing [money].
    #[getter]
    fn get_total_money<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 10, overslab::quantity::System::Us)
    }
}

/// What was found on the old slab and what is wanted of it; all of it may be left out.
#[pyclass(frozen, extends = crate::records::Record, module = "overslab.condition")]
pub(crate) struct Findings;

#[pymethods]
impl Findings {
    /// The findings given as words, a table of words.
    #[getter]
    fn get_words<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
}

/// The scalar rows.
pub(crate) static SCALARS: &[&crate::scalars::ScalarRow] = &[];

/// The rows with records.
pub(crate) static ANSWERS: &[&crate::answers::RecordRow] = &[&CONDITION, &CONDITION_QUICK, &TEAR_OUT];

/// The classes of records.
pub(crate) static RECORDS: &[crate::records::RecordClass] = &[crate::records::RecordClass { name: "findings", class: |py| py.get_type::<Findings>(), make: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Findings))?.into_any()) }];

/// Puts functions and classes into the native module.
pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(self::condition, module)?)?;
    module.add_class::<Condition>()?;
    module.add_function(wrap_pyfunction!(self::condition_quick, module)?)?;
    module.add_class::<ConditionQuick>()?;
    module.add_function(wrap_pyfunction!(self::tear_out, module)?)?;
    module.add_class::<TearOut>()?;
    module.add_class::<Findings>()?;
    Ok(())
}
