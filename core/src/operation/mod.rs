//! The table of operations: everything a binding needs to know of an operation stands in its row, once.
//!
//! A *scalar* row has only required numbers, counts and choices. Anything optional, a text, a table or a record makes a
//! *record* row. Every face (C, Calc, VBA, Python, the reference pages) is generated from these rows.

pub mod answer;
pub mod args;
pub mod block;
#[cfg(test)]
mod block_tests;
pub mod bytes;
pub mod call;
pub mod choice;
pub mod decode;
pub mod encode;
pub mod json_text;
pub mod port;
pub mod record;
pub mod scalar;
pub mod serde_failure;
pub mod sheet;
#[cfg(test)]
mod table_tests;
pub mod terms;
pub mod value;

pub use answer::Answer;
pub use args::Args;
pub use block::BlockCall;
pub use bytes::Bytes;
pub use choice::Choice;
pub use port::{Kind, Need, NumberKind, Port, TableType};
pub use record::RecordType;
pub use value::{Column, Columns, Value};

use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::note::NoteCode;

/// One public operation.
#[derive(Debug)]
pub struct Operation {
    /// Its name, the same in every face.
    pub name: &'static str,
    /// The module it belongs to, by path: `grade`.
    pub module: &'static str,
    /// The version it came with.
    pub since: &'static str,
    /// What it answers, in one sentence.
    pub meaning: &'static str,
    /// The equation or the rule.
    pub equation: &'static str,
    /// What it takes for granted.
    pub assumes: &'static str,
    /// What it takes.
    pub ports: &'static [Port],
    /// What it gives.
    pub results: &'static [Port],
    /// Where it comes from.
    pub basis: &'static [BasisId],
    /// A runnable example: a JSON object of the ports.
    pub example: &'static str,
    /// Inputs that must be refused, and how: JSON objects that replace ports of the example.
    pub refusals: &'static [(&'static str, Code)],
    /// How it is called.
    pub call: Call,
}

/// The call of a scalar row: numbers in, numbers out, all in base units; counts and choices as whole numbers.
#[derive(Clone, Copy)]
pub struct ScalarCall {
    /// One row. The results are written on success only.
    pub one: fn(&[f64], &mut [f64]) -> Result<Option<NoteCode>>,
    /// A block of rows: the same function, bit for bit.
    pub block: BlockCall,
}

/// How an operation is called.
#[derive(Clone, Copy)]
pub enum Call {
    /// Required numbers, counts and choices only.
    Scalar(ScalarCall),
    /// Everything else.
    Record(fn(&Args<'_>) -> Result<Answer>),
}

impl std::fmt::Debug for Call {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(match self {
            Self::Scalar(_) => "Scalar",
            Self::Record(_) => "Record",
        })
    }
}

impl Operation {
    /// Whether the row is a scalar one.
    #[must_use]
    pub const fn is_scalar(&self) -> bool {
        matches!(self.call, Call::Scalar(_))
    }

    /// The place of the port of that name.
    #[must_use]
    pub fn port(&self, name: &str) -> Option<usize> {
        self.ports.iter().position(|port| port.name == name)
    }

    /// The record type it makes, where its only result is a record.
    #[must_use]
    pub fn makes(&self) -> Option<&'static RecordType> {
        match self.results {
            [Port { kind: Kind::Record(record), .. }] => Some(record),
            _ => None,
        }
    }
}
