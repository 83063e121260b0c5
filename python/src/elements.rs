//! Arguments that hold several values: arrays of any shape, lists, quantities of arrays. Element by element they are
//! flat numbers of a scalar row.

use crate::arguments;
use crate::exceptions::{Fault, Outcome};
use crate::foreign::{array, doubles, has_plain_elements, holds_many, is_list, magnitude, objects};
use numpy::{PyArrayDyn, PyArrayMethods, PyReadonlyArrayDyn, PyUntypedArray, PyUntypedArrayMethods};
use overslab::failure::{Failure, Place};
use overslab::operation::{Kind, Port};
use overslab::quantity::{System, Unit};
use pyo3::prelude::*;
use pyo3::types::PyList;
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

impl Elements<'_> {
    /// Its shape; none of one value.
    pub(crate) fn shape(&self) -> Option<&[usize]> {
        match self {
            Self::One(_) => None,
            Self::Borrowed { shape, .. } | Self::Read { shape, .. } => Some(shape),
        }
    }
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
    from_array(port, object, units).map_err(|fault| fault.under(port.name))
}

/// The path of a failure is relative to the port.
fn from_array<'py>(port: &Port, object: &Bound<'py, PyAny>, units: Option<System>) -> Outcome<Elements<'py>> {
    if let Kind::Number(kind) = &port.kind
        && let Some(inner) = magnitude(kind.quantity, object)?
    {
        let array = array(&inner)?.map_or_else(|| objects(&inner), Ok)?;
        let doubles = doubles(&array)?.ok_or_else(|| arguments::mismatch(&port.kind, object))?;
        return borrowed(doubles, kind.quantity.base_unit());
    }
    let Some(array) = array(object)? else {
        if is_list(object) {
            return of_objects(port, &objects(object)?, units);
        }
        // A masked element comes out as none.
        let list = object.call_method0("ravel")?.call_method0("tolist")?;
        return each(port, list, object.getattr("shape")?.extract()?, units);
    };
    if let (Kind::Number(kind), Some(system)) = (&port.kind, units)
        && let Some(doubles) = doubles(&array)?
    {
        return borrowed(doubles, kind.unit(system));
    }
    if !has_plain_elements(&array) {
        return Err(arguments::mismatch(&port.kind, object).into());
    }
    of_objects(port, &array, units)
}

/// The numbers of a plain list of floats and ints; `None` where another kind of element is met.
fn floats(list: &Bound<'_, PyList>, to_base: fn(f64) -> f64) -> Option<Vec<f64>> {
    let mut numbers = Vec::with_capacity(list.len());
    for item in list.iter() {
        numbers.push(to_base(arguments::float_or_int(&item)?));
    }
    Some(numbers)
}

fn borrowed<'py>(array: Bound<'py, PyArrayDyn<f64>>, unit: &'static Unit) -> Outcome<Elements<'py>> {
    let shape = array.shape().to_vec();
    Ok(Elements::Borrowed { shape, array: array.try_readonly().map_err(PyErr::from)?, unit })
}

fn of_objects<'py>(
    port: &Port,
    array: &Bound<'py, PyUntypedArray>,
    units: Option<System>,
) -> Outcome<Elements<'py>> {
    each(port, array.call_method0("ravel")?.call_method0("tolist")?, array.shape().to_vec(), units)
}

/// The elements one by one.
fn each<'py>(
    port: &Port,
    list: Bound<'py, PyAny>,
    shape: Vec<usize>,
    units: Option<System>,
) -> Outcome<Elements<'py>> {
    let (mut flat, mut unread) = (Vec::with_capacity(list.len()?), Unread::new());
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
    Ok(Elements::Read { shape, flat, unread, list })
}
