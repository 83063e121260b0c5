//! The rows of the order.

use super::list::{self, Allowance, Part, Request};
use super::{trucks, volume};
use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result};
use crate::note::NoteCode;
use crate::operation::{Answer, Args, Call, Column, Columns, Kind, Operation, TableType, Value};
use crate::quantity::{Area, Length, Range, Share, Typed, Volume};
use crate::{assumption, number, port, scalar};

/// The volume of a block.
pub static BLOCK: Operation = Operation {
    name: "block",
    module: "order",
    since: "0.1.0",
    meaning: "The volume of a slab, a ramp or a step from its length, width and mean depth.",
    equation: "volume = length x width x depth",
    assumes: "rectangular in plan; the depth is the mean one",
    ports: &[
        number!(length: length in foot | meter, volume::LENGTH, "length"; zero rare),
        number!(width: length in foot | meter, volume::LENGTH, "width"; zero rare),
        number!(depth: length in inch | millimeter, volume::DEPTH, "mean depth"; zero rare),
    ],
    results: &[number!(volume: volume in cubic_yard | cubic_meter, Range::POSITIVE, "volume")],
    basis: &[BasisId::Geometry],
    example: r#"{"length": "60 ft", "width": "30 ft", "depth": "4 in"}"#,
    refusals: &[(r#"{"depth": "0 in"}"#, Code::OutOfRange), (r#"{"width": "30 ft2"}"#, Code::UnitWrong)],
    call: scalar!(
        volume::block,
        (length: Length, width: Length, depth: Length) => |volume| [volume.base()]
    ),
};

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

/// Volumes poured beside the floor.
static EXTRAS: TableType = TableType {
    name: "extras",
    meaning: "a volume poured beside the floor",
    columns: &[
        port!(name: Kind::Text, "what it is for"),
        number!(volume: volume in cubic_yard | cubic_meter, list::PART, "how much"),
    ],
    least_rows: 0,
};

/// Shares allowed on top.
static ALLOWANCES: TableType = TableType {
    name: "allowances",
    meaning: "a share of the net volume allowed on top",
    columns: &[
        port!(name: Kind::Text, "what it is for"),
        number!(share: share in percent | percent, list::ALLOWANCE, "share of the net volume"),
    ],
    least_rows: 0,
};

/// Allowances as volumes.
static ALLOWED: TableType = TableType {
    name: "allowed",
    meaning: "an allowance as a volume",
    columns: &[
        port!(name: Kind::Text, "what it is for"),
        number!(volume: volume in cubic_yard | cubic_meter, list::PART, "how much"),
    ],
    least_rows: 0,
};

/// What to order.
pub static ORDER: Operation = Operation {
    name: "order",
    module: "order",
    since: "0.1.0",
    meaning: "What to order: net volume, named allowances, the plant's step, trucks.",
    equation: "figured = net + sum(net x share); ordered = figured rounded up to the step",
    assumes: "allowances are shares of the net volume and add up",
    ports: &[
        number!(floor: volume in cubic_yard | cubic_meter, list::PART, "volume of the floor"; zero rare),
        port!(extras: Kind::Table(&EXTRAS), "volumes poured beside the floor"; optional),
        port!(allowances: Kind::Table(&ALLOWANCES), "shares allowed on top";
            or "[{\"name\": \"waste\", \"share\": \"3 %\"}]" because "a surveyed floor: what sticks to tools and strike-off"),
        number!(step: volume in cubic_yard | cubic_meter, list::STEP, "the step the plant sells by";
            or assumption::PLANT_STEP),
        number!(capacity: volume in cubic_yard | cubic_meter, trucks::CAPACITY, "what one truck carries";
            or assumption::TRUCK),
    ],
    results: &[
        number!(net: volume in cubic_yard | cubic_meter, Range::POSITIVE, "sum of what is poured"),
        number!(figured: volume in cubic_yard | cubic_meter, Range::POSITIVE, "net volume and allowances"),
        number!(ordered: volume in cubic_yard | cubic_meter, Range::POSITIVE, "figured volume rounded up to the step"),
        number!(spare: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "ordered over figured"),
        port!(loads: Kind::Count(1, 10_000_000), "truck loads"),
        number!(last: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "what the last truck carries"),
        port!(allowed: Kind::Table(&ALLOWED), "each allowance as a volume"),
    ],
    basis: &[BasisId::WasteAllowance, BasisId::PlantStep, BasisId::TruckLoad],
    example: r#"{"floor": "8.78 yd3", "extras": [{"name": "ramp", "volume": "0.59 yd3"}]}"#,
    refusals: &[
        (r#"{"floor": "-1 yd3"}"#, Code::OutOfRange),
        (r#"{"floor": "0 yd3", "extras": []}"#, Code::OutOfRange),
        (r#"{"allowances": [{"name": "waste", "share": "-3 %"}]}"#, Code::Negative),
        (r#"{"step": "0 yd3"}"#, Code::OutOfRange),
        (r#"{"extras": [{"name": "ramp", "volume": "1 ft2"}]}"#, Code::UnitWrong),
    ],
    call: Call::Record(order),
};

fn order(args: &Args<'_>) -> Result<Answer> {
    let mut parts = vec![Part { name: "floor".to_owned(), volume: args.required(0)? }];
    for (name, volume) in named(args.table(1)?, "extras")? {
        parts.push(Part { name, volume: Volume::from_base(volume) });
    }
    let allowances = named(args.table(2)?, "allowances")?;
    let allowances = allowances
        .into_iter()
        .map(|(name, share)| Allowance { name, share: Share::from_base(share) })
        .collect();
    let request = Request { parts, allowances, step: args.required(3)?, capacity: args.required(4)? };
    let order = list::order(&request)?;
    let allowed = Columns {
        rows: order.allowances.len(),
        columns: vec![
            Column::Texts(order.allowances.iter().map(|part| Some(part.name.clone())).collect()),
            Column::Numbers(order.allowances.iter().map(|part| part.volume.base()).collect()),
        ],
    };
    let notes = order.trucks.note.map(|code: NoteCode| crate::note::Note::new(code, code.meaning()));
    Ok(Answer::of([
        Value::Number(order.net.base()),
        Value::Number(order.figured.base()),
        Value::Number(order.ordered.base()),
        Value::Number(order.spare.base()),
        Value::Count(i64::from(order.trucks.loads)),
        Value::Number(order.trucks.last.base()),
        Value::Table(allowed),
    ])
    .with_notes(notes))
}

/// The rows of a table of a name and a number.
fn named(table: Option<&Columns>, path: &str) -> Result<Vec<(String, f64)>> {
    let Some(table) = table else { return Ok(Vec::new()) };
    (0..table.rows)
        .map(|row| match (table.text(0, row), table.number(1, row)) {
            (Some(name), Some(number)) => Ok((name.to_owned(), number)),
            _ => Err(Failure::new(Code::EmptyCell, format!("{path}[{row}]"))
                .allowed("a name and a number")
                .remedy("fill both")),
        })
        .collect()
}
