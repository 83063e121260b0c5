//! The rows of keys at edges: by figures of the edge, and along an edge of the work.

use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::grade::finish::{FINISH, Finish};
use crate::grade::operations::columns::{numbers, table};
use crate::grade::sections::PLACE;
use crate::note::{Note, NoteCode};
use crate::operation::{Answer, Args, Call, Choice, Column, Kind, Operation, TableType, Value};
use crate::overlay::edge_key::{
    AT_EDGE, Cut, EdgeOf, GROWTH, KeyCut, LEAST, REACH, edge_key as key_of, key_cuts as cuts_along,
};
use crate::overlay::thickness::SLAB;
use crate::quantity::{Length, Range, Typed, inches};
use crate::survey::Survey;
use crate::survey::old_slab::SURVEY;
use crate::survey::outline::Corner;
use crate::{number, port};

/// The key along an edge by its figures.
pub static EDGE_KEY: Operation = Operation {
    name: "edge_key",
    module: "overlay",
    since: "0.1.0",
    meaning: "The key that is sawn and chipped into the old slab where the overlay is thinner than its least at an edge: concrete is not run out to nothing.",
    equation: "depth = least - at_edge; width = depth / growth; volume = depth x width / 2 x length; with less room its section is a triangle cut off at the room's end",
    assumes: "the overlay thickens evenly away from the edge, which is straight; the saw cut at the edge is vertical",
    ports: &[
        number!(least: length in inch | millimeter, LEAST, "least thickness of the overlay"; zero rare),
        number!(at_edge: length in inch | millimeter, AT_EDGE, "thickness of the overlay at the edge, 0 where it is flush with the old slab"),
        number!(growth: slope in inch_per_foot | percent, GROWTH, "how fast it thickens away from the edge"; zero rare),
        number!(length: length in foot | meter, REACH, "length of the edge"; zero rare),
        number!(room: length in foot | meter, REACH, "how far back there is room for the key"; zero rare, optional),
        number!(old_slab: length in inch | millimeter, SLAB, "thickness of the old slab"; zero rare, optional),
    ],
    results: &[
        port!(cut: Kind::Choice(Cut::WORDS), "what is done at the edge"),
        number!(depth: length in inch | millimeter, Range::NOT_NEGATIVE, "how deep the saw goes at the edge"),
        number!(width: length in foot | meter, Range::NOT_NEGATIVE, "how far back it is chipped"),
        number!(depth_at_back: length in inch | millimeter, Range::NOT_NEGATIVE, "how deep it still is at its back; 0 where it runs out"),
        number!(area: area in square_foot | square_meter, Range::NOT_NEGATIVE, "chipped area"),
        number!(volume: volume in cubic_foot | liter, Range::NOT_NEGATIVE, "old concrete that comes out, and new concrete that goes in"),
        number!(left: length in inch | millimeter, Range::POSITIVE, "what is left of the old slab under the key"; optional),
    ],
    basis: &[BasisId::FeatherEdge, BasisId::KeyThroughSlab, BasisId::Geometry],
    example: r#"{"least": "1 1/2 in", "at_edge": "1/2 in", "growth": "1/4 in/ft", "length": "9 ft", "old_slab": "4 in"}"#,
    refusals: &[
        (r#"{"least": "0 in"}"#, Code::OutOfRange),
        (r#"{"at_edge": "-1/2 in"}"#, Code::OutOfRange),
        (r#"{"growth": "-1 %"}"#, Code::OutOfRange),
        (r#"{"length": "0 ft"}"#, Code::OutOfRange),
        (r#"{"room": "-3 ft"}"#, Code::OutOfRange),
        (r#"{"old_slab": "-4 in"}"#, Code::OutOfRange),
    ],
    call: Call::Record(edge_key),
};

fn edge_key(args: &Args<'_>) -> Result<Answer> {
    let least = args.required(0)?;
    let key = key_of(&EdgeOf {
        least,
        at_edge: args.required(1)?,
        growth: args.required(2)?,
        length: args.required(3)?,
        room: args.quantity(4)?,
        old_slab: args.quantity(5)?,
    })?;
    let answer = Answer::of([
        Value::Choice(key.cut as usize),
        Value::Number(key.depth.base()),
        Value::Number(key.width.base()),
        Value::Number(key.depth_at_back.base()),
        Value::Number(key.area.base()),
        Value::Number(key.volume.base()),
        key.left.map_or(Value::Absent, |left| Value::Number(left.base())),
    ]);
    let short = (key.depth_at_back.base() > 0.0).then(|| {
        let still = inches(key.depth_at_back, 8);
        Note::new(NoteCode::KeyCutShort, format!("the key is still {still} deep at its back"))
    });
    Ok(answer.with_notes(notes([key.cut], short)))
}

/// What is said of what is done.
fn notes(cuts: impl IntoIterator<Item = Cut>, more: impl IntoIterator<Item = Note>) -> Vec<Note> {
    let cuts: Vec<Cut> = cuts.into_iter().collect();
    let mut notes = Vec::new();
    if cuts.iter().all(|cut| *cut == Cut::None) {
        notes.push(Note::new(NoteCode::NoKeyNeeded, NoteCode::NoKeyNeeded.meaning()));
        return notes;
    }
    if cuts.contains(&Cut::BreakOut) {
        notes.push(Note::new(NoteCode::BreakOutStrip, BasisId::KeyThroughSlab.line()));
    }
    notes.extend(more);
    notes.push(Note::new(NoteCode::ConfirmLocally, BasisId::FeatherEdge.line()));
    notes
}

/// Places of the edge.
static LINE: TableType = TableType {
    name: "line",
    meaning: "a place on the edge of the work, in order; one alone is a place",
    columns: &[
        number!(x: length in foot | meter, PLACE, "from the left"),
        number!(y: length in foot | meter, PLACE, "from the front"),
    ],
    least_rows: 1,
};

/// Keys along it.
static CUTS: TableType = TableType {
    name: "cuts",
    meaning: "a stretch where the overlay is too thin, in order along the line",
    columns: &[
        number!(start: length in foot | meter, Range::NOT_NEGATIVE, "where it starts, along the line"),
        number!(end: length in foot | meter, Range::NOT_NEGATIVE, "where it ends, along the line"),
        number!(depth: length in inch | millimeter, Range::POSITIVE, "how deep the saw goes where it is deepest along the edge"),
        number!(deepest: length in inch | millimeter, Range::POSITIVE, "greatest depth of the key anywhere"),
        number!(width: length in foot | meter, Range::NOT_NEGATIVE, "how far back it is chipped at most"),
        number!(area: area in square_foot | square_meter, Range::NOT_NEGATIVE, "chipped area"),
        number!(volume: volume in cubic_foot | liter, Range::NOT_NEGATIVE, "old concrete that comes out, and new concrete that goes in"),
        port!(runs_out: Kind::Choice(<bool as Choice>::WORDS), "whether the overlay reaches its least before the floor ends"),
        port!(cut: Kind::Choice(Cut::WORDS), "what is done there"),
    ],
    least_rows: 0,
};

/// Keys along an edge of the work.
pub static KEY_CUTS: Operation = Operation {
    name: "key_cuts",
    module: "overlay",
    since: "0.1.0",
    meaning: "Where the overlay is thinner than its least along an edge of the work, and the keys that are sawn and chipped there.",
    equation: "depth = least - (finish - old slab) at the edge; width to where the least is first reached, square to the edge; area and volume by Simpson's rule between sections",
    assumes: "the edge is one where the floor meets a given height: a door, a walk, the next slab; sections no more than 3 ft apart and where a surface bends along the edge",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab"),
        port!(finish: Kind::Record(&FINISH), "the new top surface"),
        port!(line: Kind::Table(&LINE), "the places of the edge"),
        number!(least: length in inch | millimeter, LEAST, "least thickness of the overlay"; zero rare),
        number!(old_slab: length in inch | millimeter, SLAB, "thickness of the old slab"; zero rare, optional),
    ],
    results: &[
        port!(cuts: Kind::Table(&CUTS), "the keys; none where the overlay is thick enough"),
        number!(length: length in foot | meter, Range::NOT_NEGATIVE, "length of saw cuts along the edge"),
        number!(area: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area that is chipped"),
        number!(volume: volume in cubic_foot | liter, Range::NOT_NEGATIVE, "concrete that comes out and goes in, of all keys"),
    ],
    basis: &[BasisId::FeatherEdge, BasisId::KeyThroughSlab, BasisId::Geometry],
    example: concat!(
        r#"{"survey": {"outline": {"corners": [{"x": "0 ft", "y": "0 ft"}, {"x": "20 ft", "y": "0 ft"}, {"x": "20 ft", "y": "24 ft"},
            {"x": "0 ft", "y": "24 ft"}]}, "shots": [{"x": "1 ft", "y": "1 ft", "elevation": "99.4 ft"},
            {"x": "19 ft", "y": "1 ft", "elevation": "99.42 ft"}, {"x": "19 ft", "y": "23 ft", "elevation": "99.2 ft"},
            {"x": "1 ft", "y": "23 ft", "elevation": "99.18 ft"}]}, "#,
        r#""finish": {"level": "99.5 ft"}, "line": {"x": ["6 ft", "14 ft"], "y": ["0 in", "0 in"]}, "least": "1 1/2 in", "old_slab": "4 in"}"#
    ),
    refusals: &[
        (r#"{"line": {"x": ["6 ft", "14 ft"], "y": ["2 ft", "2 ft"]}}"#, Code::LineNotOnEdge),
        (r#"{"line": {"x": ["6 ft", "6 ft"], "y": ["0 ft", "24 ft"]}}"#, Code::LineNotOnEdge),
        (r#"{"line": []}"#, Code::EmptyList),
        (r#"{"least": "0 in"}"#, Code::OutOfRange),
    ],
    call: Call::Record(key_cuts),
};

fn key_cuts(args: &Args<'_>) -> Result<Answer> {
    let (survey, finish): (&Survey, &Finish) = (args.required_record(0)?, args.required_record(1)?);
    let places = args.required_table(2)?;
    let length =
        |column: usize, row: usize| Length::from_base(places.number(column, row).unwrap_or(f64::NAN));
    let line: Vec<Corner> = (0..places.rows).map(|row| Corner::new(length(0, row), length(1, row))).collect();
    let cuts = cuts_along(survey, finish, &line, args.required(3)?, args.quantity(4)?)?;
    let sum = |of: fn(&KeyCut) -> f64| Value::Number(cuts.iter().map(of).sum());
    let columns = vec![
        numbers(&cuts, |cut| cut.from.base()),
        numbers(&cuts, |cut| cut.to.base()),
        numbers(&cuts, |cut| cut.depth.base()),
        numbers(&cuts, |cut| cut.deepest.base()),
        numbers(&cuts, |cut| cut.width.base()),
        numbers(&cuts, |cut| cut.area.base()),
        numbers(&cuts, |cut| cut.volume.base()),
        Column::Choices(cuts.iter().map(|cut| Some(usize::from(cut.runs_out))).collect()),
        Column::Choices(cuts.iter().map(|cut| Some(cut.cut as usize)).collect()),
    ];
    let answer = Answer::of([
        table(cuts.len(), columns),
        sum(|cut| (cut.to - cut.from).base()),
        sum(|cut| cut.area.base()),
        sum(|cut| cut.volume.base()),
    ]);
    let across = cuts.iter().any(|cut| !cut.runs_out).then(|| {
        Note::new(
            NoteCode::KeyCutShort,
            "the overlay is too thin all the way across the floor behind the edge",
        )
    });
    Ok(answer.with_notes(notes(cuts.iter().map(|cut| cut.cut), across)))
}
