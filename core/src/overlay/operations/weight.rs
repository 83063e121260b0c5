//! The row of the added weight.

use crate::basis::BasisId;
use crate::failure::Code;
use crate::operation::scalar::Word;
use crate::operation::{Choice, Kind, Operation};
use crate::overlay::thickness::SLAB;
use crate::overlay::weight::{CONCRETE, Next, Support, added};
use crate::quantity::{Density, Length, Range, Typed};
use crate::{number, port, scalar};

/// The added weight.
pub static ADDED_WEIGHT: Operation = Operation {
    name: "added_weight",
    module: "overlay",
    since: "0.1.0",
    meaning: "What an overlay weighs on each unit of area, and whether the work may go on: over anything but the ground it stops there.",
    equation: "weight = density x thickness",
    assumes: "standard gravity; on ground the soil takes it, but for soft fill and thin slabs over voids",
    ports: &[
        number!(thickness: length in inch | millimeter, SLAB, "thickness of the overlay"; zero rare),
        number!(density: density in pound_per_cubic_foot | kilogram_per_cubic_meter, CONCRETE, "unit weight, 150 lb/ft3 with steel"; zero rare),
        port!(support: Kind::Choice(Support::WORDS), "what carries the old slab"),
    ],
    results: &[
        number!(weight: pressure in psf | kilopascal, Range::POSITIVE, "added dead load"),
        port!(next: Kind::Choice(Next::WORDS), "what follows"),
    ],
    basis: &[BasisId::AddedWeight, BasisId::SuspendedStop],
    example: r#"{"thickness": "3 in", "density": "150 lb/ft3", "support": "ground"}"#,
    refusals: &[
        (r#"{"thickness": "0 in"}"#, Code::OutOfRange),
        (r#"{"density": "15 lb/ft3"}"#, Code::OutOfRange),
        (r#"{"support": "hope"}"#, Code::WordUnknown),
    ],
    call: scalar!(
        added,
        (thickness: Length, density: Density, support: Word<Support>) =>
            |found| ([found.weight.base(), f64::from(found.next as u8)], found.note)
    ),
};
