//! Arguments that hold several values: arrays of any shape, lists, quantities of arrays. Element by element they are
//! flat numbers of a scalar row.

use crate::arguments::{self, magnitude};
use crate::exceptions::{Fault, Outcome};
use numpy::{PyArrayDyn, PyArrayMethods, PyReadonlyArrayDyn, PyUntypedArray, PyUntypedArrayMethods};
use overslab::failure::{Failure, Place};
use overslab::operation::{Kind, Port};
use overslab::quantity::{System, Unit};
use pyo3::intern;
use pyo3::prelude::*;
use pyo3::types::{PyList, PyString, PyTuple};
use std::collections::BTreeMap;

/// Why elements could not be read, by their place.
pub(crate) type Unread = BTreeMap<usize, Box<Failure>>;

/// One argument of an array call.
pub(crate) enum Elements<'py> {
    /// One value for all elements, flat.
    One(f64),
    /// Contiguous doubles of numpy, not copied, in some unit.
    Borrowed { shape: Vec<usize>, array: PyReadonlyArrayDyn<'py, f64>, unit: &'static Unit },
    /// Flat numbers, and the list they were read from; what could not be read is NaN and told apart.
    Read { shape: Vec<usize>, flat: Vec<f64>, unread: Unread, list: Bound<'py, PyAny> },
}

/// Whether an object holds several values.
pub(crate) fn holds_many(object: &Bound<'_, PyAny>) -> PyResult<bool> {
    if object.is_instance_of::<PyString>() {
        return Ok(false);
    }
    if object.is_instance_of::<PyList>() || object.is_instance_of::<PyTuple>() {
        return Ok(true);
    }
    if let Some(inner) = object.getattr_opt(intern!(object.py(), "magnitude"))? {
        return holds_many(&inner);
    }
    if object.getattr_opt(intern!(object.py(), "__array__"))?.is_none() {
        return Ok(false);
    }
    Ok(object.cast::<PyUntypedArray>().is_ok() || object.len().is_ok())
}

/// Reads an argument for an array call.
pub(crate) fn read<'py>(
    port: &Port,
    object: &Bound<'py, PyAny>,
    units: Option<System>,
) -> Outcome<Elements<'py>> {
    if !holds_many(object)? {
        return arguments::one(port, object, units)
            .map(Elements::One)
            .map_err(|fault| fault.under(port.name));
    }
    if let (Kind::Number(kind), Ok(list)) = (&port.kind, object.cast_exact::<PyList>())
        && let Some(system) = units
        && let Some(flat) = floats(list, kind.unit(system).to_base)
    {
        let (shape, list) = (vec![flat.len()], list.clone().into_any());
        return Ok(Elements::Read { shape, flat, unread: Unread::new(), list });
    }
    if let Kind::Number(kind) = &port.kind {
        if let Some(inner) = magnitude(kind.quantity, object).map_err(|fault| fault.under(port.name))? {
            let array = doubles(&as_array(&inner)?)?;
            return borrowed(array, kind.quantity.base_unit());
        }
        let array = as_array(object)?;
        if "fiu".contains(letter(&array)?)
            && let Some(system) = units
        {
            return borrowed(doubles(&array)?, kind.unit(system));
        }
    }
    each(port, &objects(object)?, units)
}

/// The numbers of a plain list of floats and ints; `None` where another kind of element is met.
fn floats(list: &Bound<'_, PyList>, to_base: fn(f64) -> f64) -> Option<Vec<f64>> {
    let mut numbers = Vec::with_capacity(list.len());
    for item in list.iter() {
        numbers.push(to_base(arguments::float_or_int(&item)?));
    }
    Some(numbers)
}

fn as_array<'py>(object: &Bound<'py, PyAny>) -> Outcome<Bound<'py, PyUntypedArray>> {
    if let Ok(array) = object.cast::<PyUntypedArray>() {
        return Ok(array.clone());
    }
    objects_of(object, false)
}

/// As an array of Python objects, so that every element stays what the caller wrote.
fn objects<'py>(object: &Bound<'py, PyAny>) -> Outcome<Bound<'py, PyUntypedArray>> {
    objects_of(object, true)
}

fn objects_of<'py>(object: &Bound<'py, PyAny>, as_objects: bool) -> Outcome<Bound<'py, PyUntypedArray>> {
    let py = object.py();
    let numpy = numpy::get_array_module(py)?;
    let array = if as_objects {
        numpy.call_method1(intern!(py, "asarray"), (object, "O"))?
    } else {
        numpy.call_method1(intern!(py, "asarray"), (object,))?
    };
    Ok(array.cast_into::<PyUntypedArray>().map_err(PyErr::from)?)
}

/// The letter of the kind of its elements: `f`, `i`, `u`, `b`, `U`, `O`.
fn letter(array: &Bound<'_, PyUntypedArray>) -> Outcome<char> {
    Ok(array.dtype().getattr(intern!(array.py(), "kind"))?.extract::<char>()?)
}

/// As contiguous doubles; copied only where it is not such an array already.
pub(crate) fn doubles<'py>(array: &Bound<'py, PyUntypedArray>) -> Outcome<Bound<'py, PyArrayDyn<f64>>> {
    if array.is_c_contiguous()
        && let Ok(same) = array.cast::<PyArrayDyn<f64>>()
    {
        return Ok(same.clone());
    }
    let py = array.py();
    let shape: Vec<usize> = array.shape().to_vec();
    let copy =
        numpy::get_array_module(py)?.call_method1(intern!(py, "ascontiguousarray"), (array, "float64"))?;
    let copy = copy.cast_into::<PyArrayDyn<f64>>().map_err(PyErr::from)?;
    // numpy makes an array of one dimension out of one of none.
    Ok(copy.reshape(shape)?)
}

fn borrowed<'py>(array: Bound<'py, PyArrayDyn<f64>>, unit: &'static Unit) -> Outcome<Elements<'py>> {
    let shape = array.shape().to_vec();
    Ok(Elements::Borrowed { shape, array: array.try_readonly().map_err(PyErr::from)?, unit })
}

fn each<'py>(
    port: &Port,
    array: &Bound<'py, PyUntypedArray>,
    units: Option<System>,
) -> Outcome<Elements<'py>> {
    let list = array.call_method0("ravel")?.call_method0("tolist")?;
    let (mut flat, mut unread) = (Vec::with_capacity(array.len()), Unread::new());
    for (index, element) in list.try_iter()?.enumerate() {
        match arguments::one(port, &element?, units) {
            Ok(number) => flat.push(number),
            Err(Fault::Failure(failure)) => {
                flat.push(f64::NAN);
                unread.insert(index, failure.under(port.name).at(Place::Index(index)));
            }
            Err(raised) => return Err(raised),
        }
    }
    Ok(Elements::Read { shape: array.shape().to_vec(), flat, unread, list })
}
