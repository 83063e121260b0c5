//! Values of other libraries: arrays, columns of data frames, numbers that know their unit. None of them is needed but numpy.

use crate::arguments::shown;
use crate::exceptions::Outcome;
use numpy::{PyArrayDescrMethods, PyArrayDyn, PyArrayMethods, PyUntypedArray, PyUntypedArrayMethods};
use overslab::failure::{Code, Failure};
use overslab::quantity::QuantityType;
use pyo3::exceptions::PyException;
use pyo3::intern;
use pyo3::prelude::*;
use pyo3::types::{PyList, PyString, PyTuple};

/// Whether an object holds several values.
pub(crate) fn holds_many(object: &Bound<'_, PyAny>) -> PyResult<bool> {
    if object.is_instance_of::<PyString>() {
        return Ok(false);
    }
    if is_list(object) || object.cast::<PyUntypedArray>().is_ok() {
        return Ok(true);
    }
    if let Some(inner) = object.getattr_opt(intern!(object.py(), "magnitude"))? {
        return holds_many(&inner);
    }
    // The single numbers of numpy say that they are arrays, but they have no length.
    Ok(object.getattr_opt(intern!(object.py(), "__array__"))?.is_some() && object.len().is_ok())
}

/// Whether an object is a plain list or tuple.
pub(crate) fn is_list(object: &Bound<'_, PyAny>) -> bool {
    object.is_instance_of::<PyList>() || object.is_instance_of::<PyTuple>()
}

/// The array behind an object that is one or turns into one; `None` for lists and for arrays with masked elements, which are
/// read one by one.
pub(crate) fn array<'py>(object: &Bound<'py, PyAny>) -> Outcome<Option<Bound<'py, PyUntypedArray>>> {
    if let Ok(array) = object.cast_exact::<PyUntypedArray>() {
        return Ok(Some(array.clone()));
    }
    if is_list(object)
        || object.getattr_opt(intern!(object.py(), "mask"))?.is_some_and(|mask| !mask.is_callable())
    {
        return Ok(None);
    }
    knows_no_unit(object)?;
    as_array(object, None).map(Some)
}

/// Refuses an object whose own unit would be lost without a word.
pub(crate) fn knows_no_unit(object: &Bound<'_, PyAny>) -> Outcome<()> {
    for name in [intern!(object.py(), "unit"), intern!(object.py(), "units")] {
        if object.getattr_opt(name)?.is_some_and(|unit| !unit.is_callable()) {
            return Err(Failure::new(Code::KindMismatch, "")
                .written(shown(object))
                .allowed("a text, a number, or an object with the method m_as")
                .remedy("write the unit as text, or give the number with units=")
                .into());
        }
    }
    Ok(())
}

/// As an array of Python objects, so that every element stays what the caller wrote.
pub(crate) fn objects<'py>(object: &Bound<'py, PyAny>) -> Outcome<Bound<'py, PyUntypedArray>> {
    as_array(object, Some("O"))
}

fn as_array<'py>(object: &Bound<'py, PyAny>, kind: Option<&str>) -> Outcome<Bound<'py, PyUntypedArray>> {
    let py = object.py();
    let array = numpy::get_array_module(py)?.call_method1(intern!(py, "asarray"), (object, kind));
    let array = array.or_else(|error| not_an_array(object, error))?;
    Ok(array.cast_into::<PyUntypedArray>().map_err(PyErr::from)?)
}

/// What numpy cannot read is refused in our own words; an interruption passes.
fn not_an_array<'py>(object: &Bound<'py, PyAny>, error: PyErr) -> Outcome<Bound<'py, PyAny>> {
    if !error.is_instance_of::<PyException>(object.py()) {
        return Err(error.into());
    }
    Err(Failure::new(Code::KindMismatch, "")
        .written(shown(object))
        .allowed("an array of numbers, or a list with as many values in each row")
        .remedy("give the kind of value named")
        .into())
}

/// The numbers of an array whose elements are floats or whole numbers, as contiguous doubles; copied only where it is not such
/// an array already.
pub(crate) fn doubles<'py>(
    array: &Bound<'py, PyUntypedArray>,
) -> Outcome<Option<Bound<'py, PyArrayDyn<f64>>>> {
    if !matches!(array.dtype().kind(), b'f' | b'i' | b'u') {
        return Ok(None);
    }
    if array.is_c_contiguous()
        && let Ok(same) = array.cast::<PyArrayDyn<f64>>()
    {
        return Ok(Some(same.clone()));
    }
    let py = array.py();
    let shape: Vec<usize> = array.shape().to_vec();
    let copy =
        numpy::get_array_module(py)?.call_method1(intern!(py, "ascontiguousarray"), (array, "float64"))?;
    let copy = copy.cast_into::<PyArrayDyn<f64>>().map_err(PyErr::from)?;
    // numpy makes an array of one dimension out of one of none.
    Ok(Some(copy.reshape(shape)?))
}

/// Whether the elements of an array come out as what they are; dates come out as whole numbers.
pub(crate) fn has_plain_elements(array: &Bound<'_, PyUntypedArray>) -> bool {
    !matches!(array.dtype().kind(), b'M' | b'm' | b'V')
}

/// The magnitude in base units of an object that knows its own unit, whether one number or an array of them.
pub(crate) fn magnitude<'py>(
    quantity: &QuantityType,
    object: &Bound<'py, PyAny>,
) -> Outcome<Option<Bound<'py, PyAny>>> {
    let py = object.py();
    // What numpy and Python make themselves knows no unit; asking them costs more than the rest.
    if is_list(object) || object.cast_exact::<PyUntypedArray>().is_ok() {
        return Ok(None);
    }
    let Some(convert) = object.getattr_opt(intern!(py, "m_as"))? else { return Ok(None) };
    match convert.call1((unit_expression(quantity.base_unit().symbol),)) {
        Ok(magnitude) => Ok(Some(magnitude)),
        Err(error) if error.is_instance_of::<PyException>(py) => Err(Failure::new(Code::UnitWrong, "")
            .written(shown(object))
            .allowed(format!("a {}: {}", quantity.name, quantity.symbols()))
            .remedy("give a quantity of this kind")
            .into()),
        Err(error) => Err(error.into()),
    }
}

/// A unit symbol as general unit libraries write it: `kg/m**3`; a plain ratio is the empty product. They know no money: an amount is
/// a plain number, a price `1/m**3`.
fn unit_expression(symbol: &str) -> String {
    if matches!(symbol, "1" | "of 1" | "ft/ft" | "w/cm" | "money") {
        return "dimensionless".to_owned();
    }
    let mut expression = String::new();
    if symbol.starts_with('/') {
        expression.push('1');
    }
    let mut letter = false;
    for c in symbol.chars() {
        if letter && c.is_ascii_digit() {
            expression.push_str("**");
        }
        letter = c.is_ascii_alphabetic();
        expression.push(c);
    }
    expression
}
