//! The arguments of an array call as its loop reads them: free of Python, block by block, in base units.

use crate::broadcast::places;
use crate::elements::{Elements, Unread};
use crate::exceptions::Outcome;
use overslab::failure::Failure;
use overslab::operation::block::BLOCK;
use overslab::quantity::Unit;
use pyo3::prelude::*;

/// One argument.
pub(crate) struct Source<'a> {
    numbers: Numbers<'a>,
    places: Option<Vec<usize>>,
    unread: Option<&'a Unread>,
}

enum Numbers<'a> {
    One(f64),
    Raw(&'a [f64], &'static Unit),
    Flat(&'a [f64]),
}

impl<'a> Source<'a> {
    /// An argument, its elements repeated to the common shape.
    pub(crate) fn of(elements: &'a Elements<'_>, common: &[usize]) -> Outcome<Self> {
        let places = elements.shape().and_then(|shape| places(shape, common));
        let (numbers, unread) = match elements {
            Elements::One(number) => (Numbers::One(*number), None),
            Elements::Borrowed { array, unit, .. } => {
                (Numbers::Raw(array.as_slice().map_err(PyErr::from)?, unit), None)
            }
            Elements::Read { flat, unread, .. } => {
                (Numbers::Flat(flat), (!unread.is_empty()).then_some(unread))
            }
        };
        Ok(Self { numbers, places, unread })
    }

    /// The elements from that place on, as many as there is room for: at most a block.
    pub(crate) fn fill(&self, from: usize, block: &mut [f64]) {
        match (&self.numbers, &self.places) {
            (Numbers::One(number), _) => block.fill(*number),
            (Numbers::Flat(numbers), None) => block.copy_from_slice(&numbers[from..from + block.len()]),
            (Numbers::Flat(numbers), Some(places)) => gather(numbers, &places[from..], block),
            (Numbers::Raw(numbers, unit), None) => (unit.all_to_base)(&numbers[from..], block),
            (Numbers::Raw(numbers, unit), Some(places)) => {
                let mut gathered = [0.0; BLOCK];
                let gathered = &mut gathered[..block.len()];
                gather(numbers, &places[from..], gathered);
                (unit.all_to_base)(gathered, block);
            }
        }
    }

    /// Whether any element could not be read.
    pub(crate) const fn has_unread(&self) -> bool {
        self.unread.is_some()
    }

    /// Why an element could not be read.
    pub(crate) fn unread(&self, index: usize) -> Option<&Failure> {
        self.unread?.get(&self.place(index)).map(Box::as_ref)
    }

    /// An element as it stands in an array of doubles, and the unit of that array.
    pub(crate) fn raw(&self, index: usize) -> Option<(f64, &'static Unit)> {
        match self.numbers {
            Numbers::Raw(numbers, unit) => Some((numbers[self.place(index)], unit)),
            _ => None,
        }
    }

    /// The place of an element in the argument's own array.
    pub(crate) fn place(&self, index: usize) -> usize {
        self.places.as_ref().map_or(index, |places| places[index])
    }
}

fn gather(numbers: &[f64], places: &[usize], into: &mut [f64]) {
    for (number, &place) in into.iter_mut().zip(places) {
        *number = numbers[place];
    }
}
