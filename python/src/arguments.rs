//! One argument of the caller as the value of a port: a text, a number beside `units`, a quantity with its own units.

use crate::exceptions::Outcome;
use crate::foreign::{holds_many, knows_no_unit, magnitude};
use overslab::failure::{Code, Failure};
use overslab::operation::choice::place_of;
use overslab::operation::{Kind, NumberKind, Port, call, scalar};
use overslab::quantity::write::shortest;
use overslab::quantity::{System, read_kind};
use pyo3::prelude::*;
use pyo3::types::{PyBool, PyFloat, PyInt, PyString};

/// The longest that a value of the caller is shown in a message.
const SHOWN: usize = 60;

/// The argument as a flat number of a scalar row; `None` where it holds several values.
#[inline(always)]
pub(crate) fn flat(port: &Port, object: &Bound<'_, PyAny>, units: Option<System>) -> Outcome<Option<f64>> {
    if let (Kind::Number(kind), Ok(float), Some(system)) = (&port.kind, object.cast_exact::<PyFloat>(), units)
    {
        return Ok(Some((kind.unit(system).to_base)(float.value())));
    }
    flat_of_any(port, object, units)
}

/// The number of a plain float, or of a plain int that is not too large.
#[inline(always)]
pub(crate) fn float_or_int(object: &Bound<'_, PyAny>) -> Option<f64> {
    if let Ok(float) = object.cast_exact::<PyFloat>() {
        return Some(float.value());
    }
    object.cast_exact::<PyInt>().ok()?.extract::<i64>().ok().map(|int| int as f64)
}

fn flat_of_any(port: &Port, object: &Bound<'_, PyAny>, units: Option<System>) -> Outcome<Option<f64>> {
    let plain = object.cast::<PyString>().is_ok() || object.cast_exact::<PyInt>().is_ok();
    if !plain && holds_many(object)? {
        return Ok(None);
    }
    one(port, object, units).map(Some).map_err(|fault| fault.under(port.name))
}

/// One number, count or choice as a flat number: base units, the whole number, the place of the word.
pub(crate) fn one(port: &Port, object: &Bound<'_, PyAny>, units: Option<System>) -> Outcome<f64> {
    if object.is_none() {
        return Err(unnamed(call::missing(port)).into());
    }
    match &port.kind {
        Kind::Number(kind) => number(kind, object, units),
        Kind::Count(least, greatest) => {
            let count = count(object)?;
            call::check_count("", count, *least, *greatest)?;
            Ok(count as f64)
        }
        Kind::Choice(words) => choice(words, object).map(|place| place as f64),
        kind => Err(mismatch(kind, object).into()),
    }
}

/// The path is set by whoever knows the whole of it.
fn unnamed(mut failure: Box<Failure>) -> Box<Failure> {
    failure.path.clear();
    failure
}

/// A quantity in base units.
#[inline]
pub(crate) fn number(kind: &NumberKind, object: &Bound<'_, PyAny>, units: Option<System>) -> Outcome<f64> {
    if let Some(number) = float_or_int(object) {
        return bare(kind, number, units);
    }
    if let Ok(text) = object.cast::<PyString>() {
        return Ok(read_kind(said(text)?, kind.quantity, None)?.base);
    }
    number_of_any(kind, object, units)
}

fn number_of_any(kind: &NumberKind, object: &Bound<'_, PyAny>, units: Option<System>) -> Outcome<f64> {
    if object.is_instance_of::<PyBool>() {
        return Err(mismatch(&Kind::Number(*kind), object).into());
    }
    if let Ok(int) = object.cast_exact::<PyInt>() {
        let number = int.extract::<f64>().map_err(|_| too_large(object))?;
        return bare(kind, number, units);
    }
    if let Some(magnitude) = magnitude(kind.quantity, object)? {
        return plain(kind, &magnitude);
    }
    knows_no_unit(object)?;
    plain(kind, object).and_then(|number| bare(kind, number, units))
}

/// Whatever says that it is a number: those of numpy, decimals, fractions. A truth value is none.
fn plain(kind: &NumberKind, object: &Bound<'_, PyAny>) -> Outcome<f64> {
    let wrong = || mismatch(&Kind::Number(*kind), object);
    let truth = object
        .getattr("dtype")
        .and_then(|dtype| dtype.getattr("kind"))
        .is_ok_and(|kind| kind.extract::<String>().is_ok_and(|letter| letter == "b"));
    if truth {
        return Err(wrong().into());
    }
    Ok(object.extract::<f64>().map_err(|_| wrong())?)
}

#[inline]
fn bare(kind: &NumberKind, number: f64, units: Option<System>) -> Outcome<f64> {
    match units {
        Some(system) => Ok((kind.unit(system).to_base)(number)),
        None => Err(unit_missing(kind, number).into()),
    }
}

/// The failure for a number that says no unit.
#[cold]
pub(crate) fn unit_missing(kind: &NumberKind, number: f64) -> Box<Failure> {
    let (us, si) = (kind.us.symbol, kind.si.symbol);
    Failure::new(Code::UnitMissing, "")
        .written(shortest(number))
        .allowed(format!("a text such as \"{} {us}\", a number in {us} with units=\"us\", or one in {si} with units=\"si\"", shortest(number)))
        .remedy("say units=, or write the unit")
}

#[cold]
fn too_large(object: &Bound<'_, PyAny>) -> Box<Failure> {
    Failure::new(Code::NotFinite, "")
        .written(shown(object))
        .allowed("a number that a double can hold")
        .remedy("give a smaller number")
}

/// A whole number.
pub(crate) fn count(object: &Bound<'_, PyAny>) -> Outcome<i64> {
    let wrong = || {
        Failure::new(Code::NotACount, "")
            .written(shown(object))
            .allowed("a whole number")
            .remedy("give a whole number")
    };
    if object.is_instance_of::<PyBool>() || object.is_instance_of::<PyString>() {
        return Err(wrong().into());
    }
    match object.extract::<i64>() {
        Ok(count) => Ok(count),
        Err(_) => Ok(scalar::whole(object.extract::<f64>().map_err(|_| wrong())?)?),
    }
}

/// The place of a word among the choices.
pub(crate) fn choice(words: &[&str], object: &Bound<'_, PyAny>) -> Outcome<usize> {
    match object.cast::<PyString>() {
        Ok(word) => Ok(place_of(said(word)?, words, "")?),
        Err(_) => Err(Failure::new(Code::WordUnknown, "")
            .written(shown(object))
            .allowed(words.join(", "))
            .remedy("give a word")
            .into()),
    }
}

/// The characters of a text; one that is no Unicode is refused.
pub(crate) fn said<'a>(text: &'a Bound<'_, PyString>) -> Outcome<&'a str> {
    Ok(text
        .to_str()
        .map_err(|_| Failure::new(Code::NotText, "").written(shown(text)).remedy("give Unicode text"))?)
}

/// A text.
pub(crate) fn text(object: &Bound<'_, PyAny>) -> Outcome<String> {
    match object.cast::<PyString>() {
        Ok(text) => Ok(said(text)?.to_owned()),
        Err(_) => Err(mismatch(&Kind::Text, object).into()),
    }
}

/// The failure for a value of another kind.
#[cold]
pub(crate) fn mismatch(kind: &Kind, object: &Bound<'_, PyAny>) -> Box<Failure> {
    Failure::new(Code::KindMismatch, "")
        .written(shown(object))
        .allowed(kind.word())
        .remedy("give the kind of value named")
}

/// The value as Python shows it, cut short.
#[cold]
pub(crate) fn shown(object: &Bound<'_, PyAny>) -> String {
    let Ok(shown) = object.repr() else { return "a value that cannot be shown".to_owned() };
    let shown = shown.to_string_lossy();
    match shown.char_indices().nth(SHOWN) {
        Some((end, _)) => format!("{}...", &shown[..end]),
        None => shown.into_owned(),
    }
}

/// A refusal said in the number and the unit that the caller wrote.
#[cold]
pub(crate) fn in_callers_terms(
    failure: Box<Failure>,
    kind: &NumberKind,
    object: &Bound<'_, PyAny>,
    units: Option<System>,
) -> Box<Failure> {
    if let Ok(text) = object.cast::<PyString>() {
        let read = text.to_str().ok().and_then(|text| read_kind(text, kind.quantity, None).ok());
        return match read {
            Some(reading) => failure.in_unit(reading.number, reading.unit),
            None => failure,
        };
    }
    if object.hasattr("m_as").unwrap_or(false) {
        return failure.written(shown(object));
    }
    match (object.extract::<f64>(), units) {
        (Ok(number), Some(system)) => failure.in_unit(number, kind.unit(system)),
        _ => failure,
    }
}
