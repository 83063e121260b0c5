//! One cell as the value of a port.

use super::cell::{Cell, Range};
use super::{Empties, Reading};
use crate::failure::{Code, Failure, Result};
use crate::operation::bytes::Bytes;
use crate::operation::call::empty;
use crate::operation::choice::place_of;
use crate::operation::port::{Kind, Need, Port};
use crate::operation::scalar;
use crate::operation::value::Value;
use crate::quantity::unit::Unit;
use crate::quantity::write::shortest;
use crate::quantity::{System, read_kind};

/// The cell of a port that takes one. A lone zero may be an empty cell.
pub(super) fn bare(port: &Port, range: &Range, cell: &Cell, reading: Reading) -> Result<Value> {
    if range.bare_zero(reading.empties)
        && let Some(decided) = doubtful_zero(port, reading)
    {
        return decided;
    }
    read(port, cell, unit(port, reading.system))
}

/// What a zero means that may be an empty cell; `None` where it is taken as a zero.
fn doubtful_zero(port: &Port, reading: Reading) -> Option<Result<Value>> {
    let optional = port.need != Need::Required;
    match &port.kind {
        Kind::Number(kind) if kind.zero_rare || optional => {
            let unit = kind.unit(reading.system);
            let possible = kind.range.allows((unit.to_base)(0.0));
            let how = possible.then(|| format!("write \"0 {}\"", unit.symbol));
            Some(Err(zero_refused(port, how.as_deref())))
        }
        Kind::Count(least, _) if optional => {
            Some(Err(zero_refused(port, (*least <= 0).then_some("write \"0\" as a text"))))
        }
        Kind::Text if !optional => Some(Err(zero_refused(port, Some("write \"0\" as a text")))),
        // A zero is no word and no file, and a text of a zero is rare: the cell is empty.
        Kind::Choice(_) | Kind::Bytes if !optional => Some(Err(empty(port))),
        Kind::Choice(_) | Kind::Text | Kind::Bytes => Some(Ok(Value::Absent)),
        _ => None,
    }
}

/// `how` a zero can be meant, if it can.
fn zero_refused(port: &Port, how: Option<&str>) -> Box<Failure> {
    let otherwise = match port.need {
        Need::Required => "fill the cell",
        _ => "leave the argument out, or pass a range such as A1:A1, which tells an empty cell from a zero",
    };
    let remedy = match how {
        Some(how) => format!("{otherwise}; if zero is meant {how}"),
        None => otherwise.to_owned(),
    };
    Failure::new(Code::ZeroRefused, "").written("0").allowed(port.meaning).remedy(remedy)
}

/// The unit of a bare number in a port.
pub(super) fn unit(port: &Port, system: System) -> Option<&'static Unit> {
    match &port.kind {
        Kind::Number(kind) => Some(kind.unit(system)),
        _ => None,
    }
}

/// One cell, its bare number being in `unit`.
pub(super) fn read(port: &Port, cell: &Cell, unit: Option<&'static Unit>) -> Result<Value> {
    match (&port.kind, cell) {
        (_, Cell::Empty) => match port.need {
            Need::Required => Err(empty(port)),
            _ => Ok(Value::Absent),
        },
        (Kind::Number(kind), Cell::Number(number)) => match unit {
            Some(unit) => Ok(Value::Number((unit.to_base)(*number))),
            None => {
                read_kind(&shortest(*number), kind.quantity, None).map(|reading| Value::Number(reading.base))
            }
        },
        (Kind::Number(kind), Cell::Text(text)) => {
            read_kind(text, kind.quantity, None).map(|reading| Value::Number(reading.base))
        }
        (Kind::Count(..), Cell::Number(number)) => scalar::whole(*number).map(Value::Count),
        (Kind::Count(..), Cell::Text(text)) => count(text),
        (Kind::Choice(words), Cell::Text(word)) => place_of(word, words, "").map(Value::Choice),
        (Kind::Text, Cell::Text(text)) => Ok(Value::Text(text.clone())),
        (Kind::Bytes, Cell::Text(text)) => Bytes::from_text(text).map(Value::Bytes),
        (Kind::Text, Cell::Number(number)) => Ok(Value::Text(shortest(*number))),
        (Kind::Text, Cell::Truth(truth)) => Ok(Value::Text(truth.to_string())),
        (kind, cell) => Err(Failure::new(Code::KindMismatch, "")
            .written(cell.written())
            .allowed(kind.word())
            .remedy("give the kind of value named")),
    }
}

/// A count has no unit, so a text of its digits is as good as the number.
fn count(text: &str) -> Result<Value> {
    text.trim().parse().map(Value::Count).map_err(|_| {
        Failure::new(Code::NotACount, "")
            .written(format!("\"{}\"", text.trim()))
            .allowed("a whole number")
            .remedy("give a whole number")
    })
}

impl Empties {
    /// How it is written in a request: `null` or `zero`.
    #[must_use]
    pub fn from_word(word: &str) -> Option<Self> {
        match word {
            "null" => Some(Self::Told),
            "zero" => Some(Self::AsZero),
            _ => None,
        }
    }
}
