//! The tables of marks: their types, and the columns that fill them.

use super::columns::{counts, texts, words};
use crate::grade::operations::columns::{numbers, some_numbers, table};
use crate::marks::{
    ChalkLine, Diagonal, EdgeMarks, Levels, Mark, MarkKind, Marks, Material, Reach, Rip, Sight,
};
use crate::operation::{Choice, Column, Kind, Port, TableType, Value};
use crate::quantity::{Range, Typed};
use crate::survey::surface::Ground;
use crate::{number, port};

/// A mark's own columns, with what leads them.
macro_rules! mark_table {
    ($name:literal, $meaning:literal, [$($lead:expr),* $(,)?]) => {
        TableType { name: $name, meaning: $meaning, columns: MARK_COLUMNS!($($lead),*), least_rows: 0 }
    };
}

/// The columns of every list of marks.
macro_rules! MARK_COLUMNS {
    ($($lead:expr),*) => {
        &[
            port!(mark: Kind::Count(1, i64::MAX), "its number in the order of walking"),
            $($lead,)*
            port!(kind: Kind::Choice(MarkKind::WORDS), "what it is there for"),
            number!(x: length in foot | meter, Range::ANY, "from the left"),
            number!(y: length in foot | meter, Range::ANY, "from the front"),
            number!(elevation: elevation in foot | meter, Range::ANY, "the height that is set out, not rounded"),
            number!(rod: length in foot | meter, Range::ANY, "rod from the first set-up, not rounded"; optional),
            number!(rod_marked: length in foot | meter, Range::ANY, "that rod in whole steps"; optional),
            number!(below_line: length in foot | meter, Range::ANY, "distance below the reference line, not rounded"; optional),
            number!(below_line_marked: length in foot | meter, Range::ANY, "that distance in whole steps"; optional),
            number!(over_old_slab: length in inch | millimeter, Range::ANY, "height over the old slab: the check"),
            port!(ground: Kind::Choice(Ground::WORDS), "what is known of the old slab there"),
        ]
    };
}

const EDGE: Port = port!(edge: Kind::Text, "the edge it stands at");
const NAME: Port = port!(name: Kind::Text, "what it is called, where it was asked for by name"; optional);
const ALONG: Port = number!(along: length in foot | meter, Range::NOT_NEGATIVE, "distance along the edge from where the walk meets it");

/// Stations at the edges.
pub(super) static STATIONS: TableType = mark_table!(
    "stations",
    "a mark at an edge, in the order of walking; each corner once",
    [EDGE, NAME, ALONG]
);

/// Pads.
pub(super) static PADS: TableType = mark_table!("pads", "a wet pad, row by row, to and fro", []);

/// Tops of forms.
pub(super) static FORMS: TableType = mark_table!(
    "forms",
    "a mark at the top of a form, both corners with it; the number is that of the station",
    [EDGE, NAME, ALONG]
);

/// Rails.
pub(super) static RAILS: TableType = mark_table!(
    "rails",
    "a mark at the top of a screed rail",
    [
        port!(rail: Kind::Text, "the rail"),
        number!(along: length in foot | meter, Range::NOT_NEGATIVE, "distance along the rail from its first place"),
    ]
);

/// Every mark from every set-up.
pub(super) static RODS: TableType = TableType {
    name: "rods",
    meaning: "a mark from a set-up; all marks from the first, then all from the next",
    columns: &[
        port!(mark: Kind::Count(1, i64::MAX), "the number of the mark"),
        port!(setup: Kind::Text, "the set-up"),
        number!(rod: length in foot | meter, Range::ANY, "line of sight less height, not rounded"),
        number!(rod_marked: length in foot | meter, Range::ANY, "the same in whole steps"),
        port!(reach: Kind::Choice(Reach::WORDS), "whether the rod can be read there"),
    ],
    least_rows: 0,
};

/// Edges.
pub(super) static EDGES: TableType = TableType {
    name: "edges",
    meaning: "an edge in the order of walking",
    columns: &[
        port!(edge: Kind::Text, "its name"),
        port!(material: Kind::Choice(Material::WORDS), "what stands there"),
        number!(length: length in foot | meter, Range::NOT_NEGATIVE, "how long it is"),
        port!(level: Kind::Choice(<bool as Choice>::WORDS), "whether the floor is level along it"),
        number!(least: length in inch | millimeter, Range::ANY, "least height of the floor over the old slab along it"),
        number!(least_along: length in foot | meter, Range::NOT_NEGATIVE, "where the least is"),
        number!(greatest: length in inch | millimeter, Range::ANY, "greatest height of the floor over the old slab along it"),
        number!(greatest_along: length in foot | meter, Range::NOT_NEGATIVE, "where the greatest is"),
    ],
    least_rows: 0,
};

/// Rips.
pub(super) static RIPS: TableType = TableType {
    name: "rips",
    meaning: "a straight cut of a strip or a form: within half a step of what stands there",
    columns: &[
        port!(edge: Kind::Text, "the edge"),
        port!(material: Kind::Choice(Material::WORDS), "what is ripped"),
        number!(start: length in foot | meter, Range::NOT_NEGATIVE, "where it starts, along the edge"),
        number!(end: length in foot | meter, Range::NOT_NEGATIVE, "where it ends"),
        number!(length: length in foot | meter, Range::NOT_NEGATIVE, "how long it is"),
        number!(height_start: length in inch | millimeter, Range::ANY, "its height at the start"),
        number!(height_end: length in inch | millimeter, Range::ANY, "its height at the end"),
    ],
    least_rows: 0,
};

/// Chalk lines.
pub(super) static LINES: TableType = TableType {
    name: "lines",
    meaning: "a line along which planes meet: straight from end to end",
    columns: &[
        number!(x_1: length in foot | meter, Range::ANY, "one end, from the left"),
        number!(y_1: length in foot | meter, Range::ANY, "one end, from the front"),
        number!(elevation_1: elevation in foot | meter, Range::ANY, "height of the floor at that end"),
        port!(mark_1: Kind::Count(1, i64::MAX), "number of the mark there"; optional),
        number!(x_2: length in foot | meter, Range::ANY, "other end, from the left"),
        number!(y_2: length in foot | meter, Range::ANY, "other end, from the front"),
        number!(elevation_2: elevation in foot | meter, Range::ANY, "height of the floor at the other end"),
        port!(mark_2: Kind::Count(1, i64::MAX), "number of the mark at the other end"; optional),
        number!(length: length in foot | meter, Range::NOT_NEGATIVE, "how long the line is"),
    ],
    least_rows: 0,
};

/// Diagonals.
pub(super) static DIAGONALS: TableType = TableType {
    name: "diagonals",
    meaning: "a length between corners that are no neighbours, to see whether the figure is square",
    columns: &[
        port!(mark_1: Kind::Count(1, i64::MAX), "number of the mark at one corner"),
        port!(mark_2: Kind::Count(1, i64::MAX), "number of the mark at the corner across"),
        number!(length: length in foot | meter, Range::POSITIVE, "how far apart they are"),
    ],
    least_rows: 0,
};

/// A mark with what leads it in its table.
pub(super) type Of<'a> = (&'a str, &'a Mark);

fn place(rows: &[Of<'_>]) -> [Column; 3] {
    [words(rows, |row| row.1.kind), numbers(rows, |row| row.1.x.base()), numbers(rows, |row| row.1.y.base())]
}

fn told(rows: &[Of<'_>], levels: &Levels) -> [Column; 7] {
    [
        numbers(rows, |row| row.1.height.base()),
        some_numbers(rows, |row| levels.rod(row.1.height).map(|told| told.exact)),
        some_numbers(rows, |row| levels.rod(row.1.height).map(|told| told.marked)),
        some_numbers(rows, |row| levels.below_line(row.1.height).map(|told| told.exact)),
        some_numbers(rows, |row| levels.below_line(row.1.height).map(|told| told.marked)),
        numbers(rows, |row| row.1.over_old_slab.base()),
        words(rows, |row| row.1.ground),
    ]
}

/// A list of marks, the columns of [`MARK_COLUMNS`] with these behind the number.
fn marks_table(rows: &[Of<'_>], levels: &Levels, lead: Vec<Column>) -> Value {
    let number = counts(rows, |row| Some(row.1.number));
    let columns = std::iter::once(number).chain(lead).chain(place(rows)).chain(told(rows, levels));
    table(rows.len(), columns)
}

fn along(rows: &[Of<'_>]) -> Column {
    some_numbers(rows, |row| row.1.along)
}

/// Marks at edges.
pub(super) fn edge_marks(rows: &[Of<'_>], levels: &Levels) -> Value {
    let lead =
        vec![texts(rows, |row| Some(row.0.to_owned())), texts(rows, |row| row.1.name.clone()), along(rows)];
    marks_table(rows, levels, lead)
}

/// Marks of pads.
pub(super) fn pads(marks: &Marks) -> Value {
    let rows: Vec<Of<'_>> = marks.pads.iter().map(|mark| ("", mark)).collect();
    marks_table(&rows, &marks.levels, Vec::new())
}

/// Marks of rails.
pub(super) fn rails(marks: &Marks) -> Value {
    let rows = marks.rails.iter().flat_map(|rail| rail.marks.iter().map(|mark| (rail.name.as_str(), mark)));
    let rows: Vec<Of<'_>> = rows.collect();
    let lead = vec![texts(&rows, |row| Some(row.0.to_owned())), along(&rows)];
    marks_table(&rows, &marks.levels, lead)
}

/// Every mark from every set-up.
pub(super) fn rods(marks: &Marks) -> Value {
    let levels = &marks.levels;
    let all: Vec<&Mark> = marks.all().map(|(_, _, mark)| mark).collect();
    let rows = levels.sights.iter().flat_map(|sight| all.iter().map(move |mark| (sight, *mark)));
    let rows: Vec<(&Sight, &Mark)> = rows.collect();
    let told = |row: &(&Sight, &Mark)| levels.rod_from(row.0, row.1.height);
    let columns = [
        counts(&rows, |row| Some(row.1.number)),
        texts(&rows, |row| Some(row.0.name.clone())),
        numbers(&rows, |row| told(row).exact.base()),
        numbers(&rows, |row| told(row).marked.base()),
        words(&rows, |row| levels.reach(told(row))),
    ];
    table(rows.len(), columns)
}

/// Edges.
pub(super) fn edges(rows: &[EdgeMarks]) -> Value {
    let columns = [
        texts(rows, |edge| Some(edge.name.clone())),
        words(rows, |edge| edge.material),
        numbers(rows, |edge| edge.length.base()),
        words(rows, |edge| edge.level),
        numbers(rows, |edge| edge.least.height.base()),
        numbers(rows, |edge| edge.least.along.base()),
        numbers(rows, |edge| edge.greatest.height.base()),
        numbers(rows, |edge| edge.greatest.along.base()),
    ];
    table(rows.len(), columns)
}

/// Rips.
pub(super) fn rips(edges: &[EdgeMarks]) -> Value {
    let rows: Vec<(&EdgeMarks, &Rip)> =
        edges.iter().flat_map(|edge| edge.rips.iter().map(move |rip| (edge, rip))).collect();
    let columns = [
        texts(&rows, |row| Some(row.0.name.clone())),
        words(&rows, |row| row.0.material),
        numbers(&rows, |row| row.1.from.base()),
        numbers(&rows, |row| row.1.to.base()),
        numbers(&rows, |row| (row.1.to - row.1.from).base()),
        numbers(&rows, |row| row.1.height_from.base()),
        numbers(&rows, |row| row.1.height_to.base()),
    ];
    table(rows.len(), columns)
}

/// Chalk lines.
pub(super) fn lines(rows: &[ChalkLine]) -> Value {
    let end = |end: usize| {
        [
            numbers(rows, move |line| line.x[end].base()),
            numbers(rows, move |line| line.y[end].base()),
            numbers(rows, move |line| line.height[end].base()),
            counts(rows, move |line| line.marks[end]),
        ]
    };
    let length = numbers(rows, |line| line.length.base());
    table(rows.len(), end(0).into_iter().chain(end(1)).chain([length]))
}

/// Diagonals.
pub(super) fn diagonals(rows: &[Diagonal]) -> Value {
    let columns = [
        counts(rows, |row| Some(row.from)),
        counts(rows, |row| Some(row.to)),
        numbers(rows, |row| row.length.base()),
    ];
    table(rows.len(), columns)
}
