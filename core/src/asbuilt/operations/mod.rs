//! The rows of the floor as built.

mod as_built;
mod combined;
mod flatness;
mod line;
mod results;
mod straightedge;

pub use as_built::AS_BUILT;
pub use combined::FLATNESS_COMBINED;
pub use flatness::FLATNESS;
pub use line::FLATNESS_LINE;
pub use straightedge::STRAIGHTEDGE;

use super::flatness::{FNumber, Factor};
use crate::operation::{Choice, Kind, Port, Value};
use crate::port;
use crate::quantity::Typed;

/// The constant for flatness.
const FACTOR: Port = port!(factor: Kind::Choice(Factor::WORDS), "the constant for flatness, as the standard's text in inches or in millimetres has it";
    or "4.57 in" because "the text in inches came first");

/// An F-number, absent where there is no finite one.
fn f_number(number: Option<FNumber>) -> Value {
    number.and_then(FNumber::number).map_or(Value::Absent, |number| Value::Number(number.base()))
}
