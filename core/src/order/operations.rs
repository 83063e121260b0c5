//! The rows of the order.

use super::{trucks, volume};
use crate::basis::BasisId;
use crate::failure::Code;
use crate::operation::{Kind, Operation};
use crate::quantity::{Area, Length, Range, Typed, Volume};
use crate::{number, port, scalar};

/// The volume of a prismoid.
pub static PRISMOID: Operation = Operation {
    name: "prismoid",
    module: "order",
    since: "0.1.0",
    meaning: "The volume of a body between two end sections with a third half way.",
    equation: "volume = length (first + 4 middle + last) / 6",
    assumes: "the sides are plane or warped evenly between the sections",
    ports: &[
        number!(length: length in foot | meter, volume::LENGTH, "length between the end sections"; zero rare),
        number!(first: area in square_foot | square_meter, volume::SECTION, "area of the first section"),
        number!(middle: area in square_foot | square_meter, volume::SECTION, "area of the section half way"),
        number!(last: area in square_foot | square_meter, volume::SECTION, "area of the last section"),
    ],
    results: &[
        number!(volume: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "volume of the body"),
    ],
    basis: &[BasisId::Prismoid],
    example: r#"{"length": "12 ft", "first": "2 ft2", "middle": "1 ft2", "last": "0 ft2"}"#,
    refusals: &[(r#"{"length": "0 ft"}"#, Code::OutOfRange), (r#"{"last": "-1 ft2"}"#, Code::OutOfRange)],
    call: scalar!(
        volume::prismoid,
        (length: Length, first: Area, middle: Area, last: Area) => |volume| [volume.base()]
    ),
};

/// Trucks for an order.
pub static TRUCKS: Operation = Operation {
    name: "trucks",
    module: "order",
    since: "0.1.0",
    meaning: "How many truck loads an order takes, and what the last one carries.",
    equation: "loads = ordered / capacity, rounded up; last = ordered - (loads - 1) capacity",
    assumes: "every truck but the last is full",
    ports: &[
        number!(ordered: volume in cubic_yard | cubic_meter, trucks::ORDERED, "volume ordered"; zero rare),
        number!(capacity: volume in cubic_yard | cubic_meter, trucks::CAPACITY, "what one truck carries"; zero rare),
    ],
    results: &[
        port!(loads: Kind::Count(1, 10_000_000), "truck loads"),
        number!(last: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "what the last truck carries"),
    ],
    basis: &[BasisId::TruckLoad],
    example: r#"{"ordered": "14 yd3", "capacity": "9.8 yd3"}"#,
    refusals: &[(r#"{"capacity": "0 yd3"}"#, Code::OutOfRange), (r#"{"ordered": "9 ft"}"#, Code::UnitWrong)],
    call: scalar!(
        trucks::trucks,
        (ordered: Volume, capacity: Volume) => |trucks| ([f64::from(trucks.loads), trucks.last.base()], trucks.note)
    ),
};
