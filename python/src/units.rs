//! The keyword arguments that every function shares: `units` and `errors`.

use crate::exceptions;
use overslab::failure::{Code, Failure};
use overslab::operation::choice::place_of;
use overslab::quantity::System;
use pyo3::prelude::*;
use pyo3::types::PyString;

/// The system of units that bare numbers are in, where the caller says one.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) struct Units(pub(crate) Option<System>);

/// What an array form does with an element that is refused.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Errors {
    /// The first one raises.
    #[default]
    Raise,
    /// It becomes NaN and is listed.
    Mark,
}

impl<'py> FromPyObject<'_, 'py> for Units {
    type Error = PyErr;

    #[inline]
    fn extract(object: Borrowed<'_, 'py, PyAny>) -> PyResult<Self> {
        if object.is_none() {
            return Ok(Self(None));
        }
        word(object, "units", &["us", "si"]).map(|place| Self(Some(System::ALL[place])))
    }
}

impl<'py> FromPyObject<'_, 'py> for Errors {
    type Error = PyErr;

    fn extract(object: Borrowed<'_, 'py, PyAny>) -> PyResult<Self> {
        word(object, "errors", &["raise", "mark"])
            .map(|place| if place == 0 { Self::Raise } else { Self::Mark })
    }
}

#[inline]
fn word(object: Borrowed<'_, '_, PyAny>, name: &str, words: &[&str]) -> PyResult<usize> {
    if let Ok(text) = object.cast::<PyString>() {
        let text = text.to_str()?;
        return match words.iter().position(|known| *known == text) {
            Some(place) => Ok(place),
            None => {
                place_of(text, words, name).map_err(|failure| exceptions::exception(object.py(), &failure))
            }
        };
    }
    let failure = Failure::new(Code::KindMismatch, name)
        .written(crate::arguments::shown(&object))
        .allowed(words.join(", "))
        .remedy("give one of the words");
    Err(exceptions::exception(object.py(), &failure))
}

impl Units {
    /// The systems to show: the one named, or both.
    pub(crate) const fn systems(self) -> &'static [System] {
        match self.0 {
            None => &[System::Us, System::Si],
            Some(System::Us) => &[System::Us],
            Some(System::Si) => &[System::Si],
        }
    }
}
