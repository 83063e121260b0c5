//! What the tests of the C library hand over: named arguments of a row, buffers with guards, values worth trying.

use super::c_library::{Arg, Arguments, Gives, library};
use overslab::operation::{Kind, Operation, Port};
use overslab::operations::all;
use overslab::quantity::System;
use std::ffi::{c_int, c_void};

/// Every row of the table, the test-only ones among them, in both systems.
pub(super) fn rows() -> impl Iterator<Item = (&'static Operation, System)> {
    all().into_iter().flat_map(|row| System::ALL.map(|system| (row, system)))
}

/// Every scalar row in both systems.
pub(super) fn scalar_rows() -> impl Iterator<Item = (&'static Operation, System)> {
    rows().filter(|(row, _)| row.is_scalar())
}

/// Whether C takes the port as an int.
pub(super) fn is_int(port: &Port) -> bool {
    matches!(port.kind, Kind::Count(..) | Kind::Choice(_))
}

/// A name of the row's functions: `ovs_` row `_us`.
pub(super) fn name(row: &Operation, system: System) -> String {
    format!("ovs_{}_{}", row.name, system.word())
}

/// A buffer for text, full of rubbish, with rubbish behind it that must stay.
pub(super) struct Buffer {
    bytes: Vec<u8>,
    length: usize,
}

const RUBBISH: u8 = 0xAA;
const GUARD: usize = 16;

impl Buffer {
    pub(super) fn of(length: usize) -> Self {
        Self { bytes: vec![RUBBISH; length + GUARD], length }
    }

    /// A buffer that holds any message.
    pub(super) fn message() -> Self {
        Self::of(201)
    }

    pub(super) fn arguments(&mut self, name: &str) -> Arguments {
        let length = c_int::try_from(self.length).unwrap();
        vec![(name.to_owned(), Arg::list(&mut self.bytes)), (format!("{name}_len"), Arg::Int(length))]
    }

    /// The text written; nothing behind the buffer has changed.
    pub(super) fn text(&self) -> String {
        assert!(self.bytes[self.length..].iter().all(|byte| *byte == RUBBISH), "written behind the buffer");
        let end = self.bytes[..self.length].iter().position(|byte| *byte == 0).expect("a terminated text");
        String::from_utf8(self.bytes[..end].to_vec()).expect("whole characters")
    }

    /// Whether nothing was written.
    pub(super) fn is_untouched(&self) -> bool {
        self.bytes.iter().all(|byte| *byte == RUBBISH)
    }
}

/// What an output holds before a call.
pub(super) const OLD_NUMBER: f64 = -12_345.678;
pub(super) const OLD_INT: c_int = 777;

/// Places for the results of a scalar row, or columns of them.
pub(super) struct Results {
    pub(super) numbers: Vec<Vec<f64>>,
    pub(super) ints: Vec<Vec<c_int>>,
}

impl Results {
    pub(super) fn of(row: &Operation, n: usize) -> Self {
        let count = row.results.len();
        Self { numbers: vec![vec![OLD_NUMBER; n]; count], ints: vec![vec![OLD_INT; n]; count] }
    }

    pub(super) fn arguments(&mut self, row: &Operation, system: System) -> Arguments {
        let places = row.results.iter().zip(self.numbers.iter_mut().zip(&mut self.ints));
        places
            .map(|(port, (numbers, ints))| {
                (port.unit_name(system), if is_int(port) { Arg::list(ints) } else { Arg::list(numbers) })
            })
            .collect()
    }

    /// The result as a double, and whether the other kind of place was left alone.
    pub(super) fn get(&self, row: &Operation, result: usize, at: usize) -> f64 {
        if is_int(&row.results[result]) { f64::from(self.ints[result][at]) } else { self.numbers[result][at] }
    }

    pub(super) fn is_untouched(&self) -> bool {
        self.numbers.iter().flatten().all(|number| number.to_bits() == OLD_NUMBER.to_bits())
            && self.ints.iter().flatten().all(|int| *int == OLD_INT)
    }
}

/// Numbers worth trying for a port, in the caller's unit.
pub(super) fn tries(port: &Port, system: System) -> Vec<f64> {
    match &port.kind {
        Kind::Number(kind) => {
            let unit = kind.unit(system);
            let mut list = vec![
                0.0,
                -0.0,
                1.0,
                -1.0,
                0.1,
                5.0e-324,
                -5.0e-324,
                1.0e-300,
                f64::MAX,
                f64::MIN,
                f64::NAN,
                f64::INFINITY,
                f64::NEG_INFINITY,
            ];
            for bound in [kind.range.least, kind.range.greatest].into_iter().filter(|bound| bound.is_finite())
            {
                let bound = (unit.from_base)(bound);
                list.extend([
                    bound,
                    bound.next_up(),
                    bound.next_down(),
                    bound - 1.0,
                    bound + 1.0,
                    bound * 0.5,
                ]);
            }
            list
        }
        Kind::Count(least, greatest) => {
            let (least, greatest) = (*least as f64, *greatest as f64);
            vec![
                least,
                greatest,
                least - 1.0,
                greatest + 1.0,
                0.0,
                f64::from(c_int::MIN),
                f64::from(c_int::MAX),
            ]
        }
        Kind::Choice(words) => {
            let last = words.len() as f64 - 1.0;
            vec![0.0, last, last + 1.0, -1.0, f64::from(c_int::MIN), f64::from(c_int::MAX)]
        }
        Kind::Text | Kind::Bytes | Kind::Table(_) | Kind::Record(_) => {
            panic!("{} is no scalar port", port.name)
        }
    }
}

/// A number as the argument of a port.
pub(super) fn argument(port: &Port, system: System, number: f64) -> (String, Arg) {
    let arg = if is_int(port) { Arg::Int(number as c_int) } else { Arg::Double(number) };
    (port.unit_name(system), arg)
}

/// A pointer of the library that is freed at the end.
pub(super) struct Owned {
    pub(super) pointer: *mut c_void,
    free: String,
}

impl Owned {
    /// What a call gave, freed by the function of its type.
    pub(super) fn of(given: Gives, kind: &str) -> Self {
        Self { pointer: given.pointer(), free: format!("ovs_{kind}_free") }
    }

    pub(super) fn arg(&self) -> Arg {
        Arg::Pointer(self.pointer)
    }
}

impl Drop for Owned {
    fn drop(&mut self) {
        let kind = self.free.trim_start_matches("ovs_").trim_end_matches("_free").to_owned();
        library().call(&self.free, &vec![(kind, self.arg())]);
    }
}

/// One named argument.
pub(super) fn named(name: &str, arg: Arg) -> (String, Arg) {
    (name.to_owned(), arg)
}

/// A text with its length.
pub(super) fn text(name: &str, text: &str) -> Arguments {
    bytes(name, text.as_bytes())
}

/// Bytes with their length.
pub(super) fn bytes(name: &str, bytes: &[u8]) -> Arguments {
    vec![named(name, Arg::bytes(bytes)), (format!("{name}_len"), Arg::length(bytes))]
}
