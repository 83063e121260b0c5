//! The rows that read the bytes of a file.

use super::{Allowed, HEIGHT};
use crate::failure::{Code, Failure, Result};
use crate::operation::{
    Answer, Args, Call, Choice, Column, Columns, Kind, Operation, Port, TableType, Value,
};
use crate::survey::points::{POINTS, TIN};
use crate::survey::read::{self, Asked, FileUnit, Format, LeftOut, Reason};
use crate::{number, port};

static LEFT_OUT: TableType = TableType {
    name: "left_out",
    meaning: "why points were left out, and how many",
    columns: &[
        port!(reason: Kind::Choice(Reason::WORDS), "why"),
        port!(count: Kind::Count(1, i64::MAX), "how many"),
    ],
    least_rows: 0,
};

const FILE: Port = port!(file: Kind::Bytes, "the bytes of the file");
const FORMAT: Port = port!(format: Kind::Choice(Format::WORDS), "what the file is; found from its first bytes where left out"; optional);
const UNIT: Port = port!(unit: Kind::Choice(FileUnit::WORDS), "the unit of its numbers, for a file that does not say it"; optional);
const OVERRULE: Port = port!(overrule: Kind::Choice(Allowed::WORDS), "whether the unit given holds even where the file says another";
    or "no" because "a file mostly knows its unit");

const FORMAT_FOUND: Port = port!(format: Kind::Choice(Format::WORDS), "what the file is");
const UNIT_FOUND: Port =
    port!(unit: Kind::Choice(FileUnit::WORDS), "the unit of its numbers, where all have one"; optional);
const LEFT_OUT_COUNTED: Port =
    port!(left_out: Kind::Table(&LEFT_OUT), "points of the file that were not used");

/// Points out of a file.
pub static READ_POINTS: Operation = Operation {
    name: "read_points",
    module: "survey",
    since: "0.1.0",
    meaning: "Points out of the bytes of a file: CSV, XYZ, PLY, LAS or LAZ, E57, LandXML.",
    equation: "none: the coordinates of the file, in metres by its unit",
    assumes: "nothing: what the file does not say must be given, and a file that is cut short is refused",
    ports: &[
        FILE,
        FORMAT,
        UNIT,
        OVERRULE,
        port!(columns: Kind::Text, "what stands in each column of a table, in place of its header: point, y [ft], x [ft], elevation [in], skip"; optional),
        number!(height_of_instrument: elevation in foot | meter, HEIGHT, "height of the line of sight, for a column of rods"; optional),
        port!(ground_only: Kind::Choice(Allowed::WORDS), "whether only points that the file classes as ground are used";
            or "no" because "few scans are classed"),
    ],
    results: &[
        port!(points: Kind::Record(&POINTS), "the points"),
        FORMAT_FOUND,
        UNIT_FOUND,
        LEFT_OUT_COUNTED,
    ],
    basis: &[],
    example: r#"{"file": "point,x [ft],y [ft],elevation [ft]\nA,1,1,99.20\nB,11,1,99.15\nC,11,9,99.25\nD,1,9,99.22\n"}"#,
    refusals: &[
        (r#"{"file": "base64:AAECAw=="}"#, Code::FormatUnknown),
        (r#"{"file": "x,y,z\n1,2,3\n"}"#, Code::UnitMissing),
        (r#"{"file": "x [m],y [m]\n1,2\n"}"#, Code::ColumnMissing),
        (r#"{"unit": "m"}"#, Code::Contradiction),
        (r#"{"unit": "furlong"}"#, Code::WordUnknown),
        (r#"{"format": "ply"}"#, Code::FileBroken),
        (r#"{"overrule": "yes"}"#, Code::KeyMissing),
        (r#"{"columns": "x [m], y [m], hight [m]"}"#, Code::WordUnknown),
        (r#"{"ground_only": "yes"}"#, Code::Contradiction),
    ],
    call: Call::Record(points),
};

fn points(args: &Args<'_>) -> Result<Answer> {
    let yes = |place: usize| args.choice(place).map(|word| word == Some(Allowed::Yes));
    let asked = Asked {
        format: args.choice(1)?,
        unit: args.choice(2)?,
        overrule: yes(3)?,
        columns: args.text(4)?.map(read::Columns::read).transpose()?,
        height_of_instrument: args.quantity(5)?,
        ground_only: yes(6)?,
    };
    let reading = read::read_points(args.required_bytes(0)?, &asked)
        .map_err(|failure| in_file(&READ_POINTS, failure))?;
    let results = [
        Value::record(reading.points),
        found(reading.format),
        unit(reading.unit),
        counted(&reading.left_out),
    ];
    Ok(Answer::of(results).with_notes(reading.notes))
}

/// A triangulated surface out of a file.
pub static READ_SURFACE: Operation = Operation {
    name: "read_surface",
    module: "survey",
    since: "0.1.0",
    meaning: "A triangulated surface out of the bytes of a file, with the faces that it has there: LandXML, PLY.",
    equation: "none: the points and faces of the file, in metres by its unit",
    assumes: "nothing: what the file does not say must be given, and a file that is cut short is refused",
    ports: &[
        FILE,
        FORMAT,
        UNIT,
        OVERRULE,
        port!(surface: Kind::Text, "its name, for a file with several"; optional),
    ],
    results: &[port!(tin: Kind::Record(&TIN), "the surface"), FORMAT_FOUND, UNIT_FOUND, LEFT_OUT_COUNTED],
    basis: &[],
    example: r#"{"file": "ply\nformat ascii 1.0\nelement vertex 4\nproperty float x\nproperty float y\nproperty float z\nelement face 2\nproperty list uchar int vertex_indices\nend_header\n1 1 30.2\n5 1 30.1\n5 4 30.2\n1 4 30.2\n3 0 1 2\n3 0 2 3\n", "unit": "m"}"#,
    refusals: &[
        (r#"{"file": "x [m],y [m],z [m]\n1,2,3\n"}"#, Code::SurfaceUnclear),
        (
            r#"{"file": "ply\nformat ascii 1.0\nelement vertex 4\nproperty float x\nproperty float y\nproperty float z\nelement face 2\nproperty list uchar int vertex_indices\nend_header\n1 1 30.2\n"}"#,
            Code::FileShort,
        ),
        (r#"{"unit": null}"#, Code::UnitMissing),
    ],
    call: Call::Record(surface),
};

fn surface(args: &Args<'_>) -> Result<Answer> {
    let asked = Asked {
        format: args.choice(1)?,
        unit: args.choice(2)?,
        overrule: args.choice(3)? == Some(Allowed::Yes),
        ..Asked::default()
    };
    let reading = read::read_surface(args.required_bytes(0)?, &asked, args.text(4)?)
        .map_err(|failure| in_file(&READ_SURFACE, failure))?;
    let results =
        [Value::record(reading.tin), found(reading.format), unit(reading.unit), counted(&reading.left_out)];
    Ok(Answer::of(results).with_notes(reading.notes))
}

/// A failure of a port keeps its path; what stands in the file gets the file's.
fn in_file(row: &Operation, failure: Box<Failure>) -> Box<Failure> {
    if row.port(&failure.path).is_some() { failure } else { failure.under(FILE.name) }
}

fn found(format: Format) -> Value {
    Value::Choice(format as usize)
}

fn unit(unit: Option<FileUnit>) -> Value {
    unit.map_or(Value::Absent, |unit| Value::Choice(unit as usize))
}

fn counted(left_out: &[LeftOut]) -> Value {
    let reasons = left_out.iter().map(|left| Some(left.reason as usize)).collect();
    let counts = left_out.iter().map(|left| i64::try_from(left.count).ok()).collect();
    Value::Table(Columns {
        rows: left_out.len(),
        columns: vec![Column::Choices(reasons), Column::Counts(counts)],
    })
}
