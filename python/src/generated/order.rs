//! The operations of `order`: made from the table of operations by `tests/src/generate/python`; do not edit.

#![allow(clippy::too_many_arguments, reason = "one for each port")]

use pyo3::prelude::*;

static BLOCK: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "block"),
    class: "Block",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Block))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(BlockArray))?.into_any()),
};

/// The volume of a slab, a ramp or a step from its length, width and mean depth.
///
/// Rule: volume = length x width x depth.
/// Takes for granted: rectangular in plan; the depth is the mean one.
///
/// Args:
///     length: length [ft | m]; more than 0 ft, at most 32808.3989501 ft (more than 0 m, at most 10000
///         m)
///     width: width [ft | m]; more than 0 ft, at most 32808.3989501 ft (more than 0 m, at most 10000 m)
///     depth: mean depth [in | mm]; more than 0 in, at most 3937.00787402 in (more than 0 mm, at most
///         100000 mm)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     Block, with the attributes
///         volume_yd3, volume_m3: volume [yd3 | m3]
///     and notes; for arrays BlockArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
///         quantity (UNIT_WRONG)
///
/// Basis:
///     plane and solid geometry: derived
///
/// Example:
///     >>> from overslab.order import block
///     >>> answer = block(length="60 ft", width="30 ft", depth="4 in")
///     >>> round(answer.volume_yd3, 4)
///     22.2222
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (length, width, depth, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(length, width, depth, *, units=None, errors='raise')")]
fn block(
    py: Python<'_>,
    length: &Bound<'_, PyAny>,
    width: &Bound<'_, PyAny>,
    depth: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &BLOCK, &[length, width, depth], units, errors)
}

/// What `block` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.order")]
pub(crate) struct Block;

#[pymethods]
impl Block {
    /// Volume [yd3].
    #[getter]
    fn get_volume_yd3(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Volume [m3].
    #[getter]
    fn get_volume_m3(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `block` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.order")]
pub(crate) struct BlockArray;

#[pymethods]
impl BlockArray {
    /// Volume [yd3].
    #[getter]
    fn get_volume_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Volume [m3].
    #[getter]
    fn get_volume_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static PRISMOID: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "prismoid"),
    class: "Prismoid",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Prismoid))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(PrismoidArray))?.into_any()),
};

/// The volume of a body between two end sections with a third half way.
///
/// Rule: volume = length (first + 4 middle + last) / 6.
/// Takes for granted: the sides are plane or warped evenly between the sections.
///
/// Args:
///     length: length between the end sections [ft | m]; more than 0 ft, at most 32808.3989501 ft (more
///         than 0 m, at most 10000 m)
///     first: area of the first section [ft2 | m2]; at least 0 ft2, at most 10763910.4167 ft2 (at least
///         0 m2, at most 1000000 m2)
///     middle: area of the section half way [ft2 | m2]; at least 0 ft2, at most 10763910.4167 ft2 (at
///         least 0 m2, at most 1000000 m2)
///     last: area of the last section [ft2 | m2]; at least 0 ft2, at most 10763910.4167 ft2 (at least 0
///         m2, at most 1000000 m2)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     Prismoid, with the attributes
///         volume_yd3, volume_m3: volume of the body [yd3 | m3]
///     and notes; for arrays PrismoidArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE)
///
/// Basis:
///     V = L (A1 + 4 Am + A2) / 6: Surveying textbooks, earthwork volumes (any), prismoidal formula
///
/// Example:
///     >>> from overslab.order import prismoid
///     >>> answer = prismoid(length="12 ft", first="2 ft2", middle="1 ft2", last="0 ft2")
///     >>> round(answer.volume_yd3, 4)
///     0.4444
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (length, first, middle, last, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(length, first, middle, last, *, units=None, errors='raise')")]
fn prismoid(
    py: Python<'_>,
    length: &Bound<'_, PyAny>,
    first: &Bound<'_, PyAny>,
    middle: &Bound<'_, PyAny>,
    last: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &PRISMOID, &[length, first, middle, last], units, errors)
}

/// What `prismoid` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.order")]
pub(crate) struct Prismoid;

#[pymethods]
impl Prismoid {
    /// Volume of the body [yd3].
    #[getter]
    fn get_volume_yd3(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Us)
    }
    /// Volume of the body [m3].
    #[getter]
    fn get_volume_m3(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(0, overslab::quantity::System::Si)
    }
}

/// What `prismoid` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.order")]
pub(crate) struct PrismoidArray;

#[pymethods]
impl PrismoidArray {
    /// Volume of the body [yd3].
    #[getter]
    fn get_volume_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Volume of the body [m3].
    #[getter]
    fn get_volume_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 0, overslab::quantity::System::Si)
    }
}

static TRUCKS: crate::scalars::ScalarRow = crate::scalars::ScalarRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "trucks"),
    class: "Trucks",
    one: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Trucks))?.into_any()),
    many: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(TrucksArray))?.into_any()),
};

/// How many truck loads an order takes, and what the last one carries.
///
/// Rule: loads = ordered / capacity, rounded up; last = ordered - (loads - 1) capacity.
/// Takes for granted: every truck but the last is full.
///
/// Args:
///     ordered: volume ordered [yd3 | m3]; more than 0 yd3, at most 130795.061931 yd3 (more than 0 m3,
///         at most 100000 m3)
///     capacity: what one truck carries [yd3 | m3]; at least 0.130795061931 yd3, at most 26.1590123863
///         yd3 (at least 0.1 m3, at most 20 m3)
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///     errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.
///
/// Returns:
///     Trucks, with the attributes
///         loads: truck loads
///         last_yd3, last_m3: what the last truck carries [yd3 | m3]
///     and notes; for arrays TrucksArray, with arrays of that shape, and note_codes, bad, reasons.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
///         quantity (UNIT_WRONG)
///
/// Basis:
///     a full truck carries about 10 yd3: NRMCA fleet survey (2017), table 4: typical full load 9.8
///         yd3, range 8.2 to 11.8, as quoted elsewhere
///
/// Example:
///     >>> from overslab.order import trucks
///     >>> answer = trucks(ordered="14 yd3", capacity="9.8 yd3")
///     >>> answer.loads
///     2
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (ordered, capacity, *, units=crate::units::Units(None), errors=crate::units::Errors::Raise), text_signature = "(ordered, capacity, *, units=None, errors='raise')")]
fn trucks(
    py: Python<'_>,
    ordered: &Bound<'_, PyAny>,
    capacity: &Bound<'_, PyAny>,
    units: crate::units::Units,
    errors: crate::units::Errors,
) -> PyResult<Py<PyAny>> {
    crate::scalars::call(py, &TRUCKS, &[ordered, capacity], units, errors)
}

/// What `trucks` gives.
#[pyclass(frozen, extends = crate::scalars::ScalarResult, module = "overslab.order")]
pub(crate) struct Trucks;

#[pymethods]
impl Trucks {
    /// Truck loads.
    #[getter]
    fn get_loads(slf: &Bound<'_, Self>) -> i64 {
        slf.as_super().get().count(0)
    }
    /// What the last truck carries [yd3].
    #[getter]
    fn get_last_yd3(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Us)
    }
    /// What the last truck carries [m3].
    #[getter]
    fn get_last_m3(slf: &Bound<'_, Self>) -> f64 {
        slf.as_super().get().number(1, overslab::quantity::System::Si)
    }
}

/// What `trucks` gives for arrays.
#[pyclass(frozen, extends = crate::array_result::ArrayResult, module = "overslab.order")]
pub(crate) struct TrucksArray;

#[pymethods]
impl TrucksArray {
    /// Truck loads.
    #[getter]
    fn get_loads<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().counts(slf.py(), 0)
    }
    /// What the last truck carries [yd3].
    #[getter]
    fn get_last_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// What the last truck carries [m3].
    #[getter]
    fn get_last_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, numpy::PyArrayDyn<f64>>> {
        slf.as_super().get().numbers(slf.py(), 1, overslab::quantity::System::Si)
    }
}

static ORDER: crate::answers::RecordRow = crate::answers::RecordRow {
    operation: crate::rows::operation(overslab::operations::OPERATIONS, "order"),
    class: "Order",
    answer: |py, result| Ok(Py::new(py, PyClassInitializer::from(result).add_subclass(Order))?.into_any()),
};

/// What to order: net volume, named allowances, the plant's step, trucks.
///
/// Rule: figured = net + sum(net x share); ordered = figured rounded up to the step.
/// Takes for granted: allowances are shares of the net volume and add up.
///
/// Args:
///     floor: volume of the floor [yd3 | m3]; at least 0 yd3, at most 130795.061931 yd3 (at least 0 m3,
///         at most 100000 m3)
///     extras: volumes poured beside the floor; a table of at least 0 rows, each a volume poured beside
///         the floor, with the columns; may be left out
///         name: what it is for; a text
///         volume: how much [yd3 | m3]; at least 0 yd3, at most 130795.061931 yd3 (at least 0 m3, at
///             most 100000 m3)
///     allowances: shares allowed on top; a table of at least 0 rows, each a share of the net volume
///         allowed on top, with the columns; where it is not given [{"name": "waste", "share": "3 %"}]
///         is taken: a surveyed floor: what sticks to tools and strike-off
///         name: what it is for; a text
///         share: share of the net volume [%]; at least 0 %, at most 50 %
///     step: the step the plant sells by [yd3 | m3]; at least 0.00130795061931 yd3, at most
///         6.53975309657 yd3 (at least 0.001 m3, at most 5 m3); where it is not given 1/4 yd3 is taken:
///         plants usually sell by the quarter yard
///     capacity: what one truck carries [yd3 | m3]; at least 0.130795061931 yd3, at most 26.1590123863
///         yd3 (at least 0.1 m3, at most 20 m3); where it is not given 10 yd3 is taken: a full truck
///         carries about so much
///     units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
///
/// Returns:
///     Order, with the attributes
///         net_yd3, net_m3: sum of what is poured [yd3 | m3]
///         figured_yd3, figured_m3: net volume and allowances [yd3 | m3]
///         ordered_yd3, ordered_m3: figured volume rounded up to the step [yd3 | m3]
///         spare_yd3, spare_m3: ordered over figured [yd3 | m3]
///         loads: truck loads
///         last_yd3, last_m3: what the last truck carries [yd3 | m3]
///         allowed: each allowance as a volume, a table of allowed
///     and notes, basis and taken.
///
/// Raises:
///     QuantityError: the value lies outside its range (OUT_OF_RANGE); the quantity cannot be below
///         zero (NEGATIVE); the unit belongs to another quantity (UNIT_WRONG)
///
/// Basis:
///     5 to 10 % for waste and uneven thickness on ground; less where the surface is surveyed:
///         Extension lesson on estimating concrete (after Cooper, Agricultural Mechanics), waste and
///         uneven thickness
///     plants sell in steps of 1/4 yd3: common practice, no source
///     a full truck carries about 10 yd3: NRMCA fleet survey (2017), table 4: typical full load 9.8
///         yd3, range 8.2 to 11.8, as quoted elsewhere
///
/// Example:
///     >>> from overslab.order import order
///     >>> answer = order(floor="8.78 yd3", extras=[{"name": "ramp", "volume": "0.59 yd3"}])
///     >>> round(answer.net_yd3, 4)
///     9.37
///
/// Since 0.1.0.
#[pyfunction]
#[pyo3(signature = (floor, *, extras=None, allowances=None, step=None, capacity=None, units=crate::units::Units(None)), text_signature = "(floor, *, extras=None, allowances=None, step=None, capacity=None, units=None)")]
fn order(
    py: Python<'_>,
    floor: &Bound<'_, PyAny>,
    extras: Option<&Bound<'_, PyAny>>,
    allowances: Option<&Bound<'_, PyAny>>,
    step: Option<&Bound<'_, PyAny>>,
    capacity: Option<&Bound<'_, PyAny>>,
    units: crate::units::Units,
) -> PyResult<Py<PyAny>> {
    crate::answers::call(py, &ORDER, &[Some(floor), extras, allowances, step, capacity], units)
}

/// What `order` gives.
#[pyclass(frozen, extends = crate::answers::AnswerResult, module = "overslab.order")]
pub(crate) struct Order;

#[pymethods]
impl Order {
    /// Sum of what is poured [yd3].
    #[getter]
    fn get_net_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Us)
    }
    /// Sum of what is poured [m3].
    #[getter]
    fn get_net_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 0, overslab::quantity::System::Si)
    }
    /// Net volume and allowances [yd3].
    #[getter]
    fn get_figured_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Us)
    }
    /// Net volume and allowances [m3].
    #[getter]
    fn get_figured_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 1, overslab::quantity::System::Si)
    }
    /// Figured volume rounded up to the step [yd3].
    #[getter]
    fn get_ordered_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Us)
    }
    /// Figured volume rounded up to the step [m3].
    #[getter]
    fn get_ordered_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 2, overslab::quantity::System::Si)
    }
    /// Ordered over figured [yd3].
    #[getter]
    fn get_spare_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Us)
    }
    /// Ordered over figured [m3].
    #[getter]
    fn get_spare_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 3, overslab::quantity::System::Si)
    }
    /// Truck loads.
    #[getter]
    fn get_loads<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 4, overslab::quantity::System::Us)
    }
    /// What the last truck carries [yd3].
    #[getter]
    fn get_last_yd3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Us)
    }
    /// What the last truck carries [m3].
    #[getter]
    fn get_last_m3<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 5, overslab::quantity::System::Si)
    }
    /// Each allowance as a volume, a table of allowed.
    #[getter]
    fn get_allowed<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.as_super().get().field(slf.py(), 6, overslab::quantity::System::Us)
    }
}

/// The scalar rows.
pub(crate) static SCALARS: &[&crate::scalars::ScalarRow] = &[&BLOCK, &PRISMOID, &TRUCKS];

/// The rows with records.
pub(crate) static ANSWERS: &[&crate::answers::RecordRow] = &[&ORDER];

/// The classes of records.
pub(crate) static RECORDS: &[crate::records::RecordClass] = &[];

/// Puts functions and classes into the native module.
pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(self::block, module)?)?;
    module.add_class::<Block>()?;
    module.add_class::<BlockArray>()?;
    module.add_function(wrap_pyfunction!(self::prismoid, module)?)?;
    module.add_class::<Prismoid>()?;
    module.add_class::<PrismoidArray>()?;
    module.add_function(wrap_pyfunction!(self::trucks, module)?)?;
    module.add_class::<Trucks>()?;
    module.add_class::<TrucksArray>()?;
    module.add_function(wrap_pyfunction!(self::order, module)?)?;
    module.add_class::<Order>()?;
    Ok(())
}
