//! The tables of what is said of the things.

use crate::clearance::{About, Check, JudgedThing, Kind, Measure, Task, Trade, Verdict, Work};
use crate::operation::{Choice, Column, Columns, Kind as PortKind, TableType, Value};
use crate::quantity::{Range, Typed};
use crate::{number, port};

/// One row for each thing.
pub(super) static JUDGEMENTS: TableType = TableType {
    name: "judgements",
    meaning: "what is said of one thing",
    columns: &[
        port!(name: PortKind::Text, "what the thing is called"),
        port!(kind: PortKind::Choice(Kind::WORDS), "what kind it is of"),
        port!(verdict: PortKind::Choice(Verdict::WORDS), "the worst of its checks"),
        port!(decides: PortKind::Choice(About::WORDS), "the check that decides"; optional),
        number!(room: length in inch | millimeter, Range::ANY, "by how much that is kept; negative is what is lacking"; optional),
        number!(finish_least: elevation in foot | meter, Range::ANY, "least height of the finish along it"),
        number!(finish_greatest: elevation in foot | meter, Range::ANY, "greatest height of the finish along it"),
        number!(rise_least: length in inch | millimeter, Range::ANY, "least rise there, finish less old slab"),
        number!(rise_greatest: length in inch | millimeter, Range::ANY, "greatest rise there, finish less old slab"),
        number!(floor_at_most: elevation in foot | meter, Range::ANY, "the greatest finish along it that passes every check; none where no height alone does"; optional),
        port!(asks: PortKind::Text, "measures that decide and were not given, with commas between"; optional),
        port!(forces: PortKind::Text, "what the raise forces, in a sentence"; optional),
        port!(trades: PortKind::Text, "whose work that is, with commas between"; optional),
        port!(basis: PortKind::Text, "where the limit that decides comes from"; optional),
        port!(cautions: PortKind::Text, "what can hurt, in sentences"; optional),
    ],
    least_rows: 0,
};

/// One row for each check.
pub(super) static CHECKS: TableType = TableType {
    name: "checks",
    meaning: "one check of a thing",
    columns: &[
        port!(name: PortKind::Text, "what the thing is called"),
        port!(about: PortKind::Choice(About::WORDS), "what is checked"),
        port!(verdict: PortKind::Choice(Verdict::WORDS), "what follows"),
        number!(room: length in inch | millimeter, Range::ANY, "by how much it is kept; negative is what is lacking"; optional),
        number!(floor_at_most: elevation in foot | meter, Range::ANY, "the greatest finish along it that keeps it"; optional),
        port!(asks: PortKind::Text, "the measure that is missing and decides"; optional),
        port!(basis: PortKind::Text, "where the limit comes from"),
        port!(text: PortKind::Text, "what is had against what is wanted"),
    ],
    least_rows: 0,
};

/// One row for each piece of work.
pub(super) static WORKS: TableType = TableType {
    name: "works",
    meaning: "one piece of work that the raise forces",
    columns: &[
        port!(name: PortKind::Text, "what the thing is called"),
        port!(task: PortKind::Choice(Task::WORDS), "what is done"),
        port!(trade: PortKind::Choice(Trade::WORDS), "whose work it is"),
        number!(by: length in inch | millimeter, Range::ANY, "by how much"; optional),
        number!(fill_1_in_6: volume in cubic_foot | cubic_meter, Range::NOT_NEGATIVE, "fill against an edge at 1 in 6"; optional),
        number!(fill_1_in_12: volume in cubic_foot | cubic_meter, Range::NOT_NEGATIVE, "the same at 1 in 12"; optional),
        port!(text: PortKind::Text, "the work in words"),
    ],
    least_rows: 0,
};

fn numbers<T>(rows: &[T], number: impl Fn(&T) -> f64) -> Column {
    Column::Numbers(rows.iter().map(number).collect())
}

fn some<T, Q: Typed>(rows: &[T], number: impl Fn(&T) -> Option<Q>) -> Column {
    numbers(rows, |row| number(row).map_or(f64::NAN, Typed::base))
}

fn choices<T>(rows: &[T], choice: impl Fn(&T) -> Option<usize>) -> Column {
    Column::Choices(rows.iter().map(choice).collect())
}

fn texts<T>(rows: &[T], text: impl Fn(&T) -> String) -> Column {
    let given = |text: String| if text.is_empty() { None } else { Some(text) };
    Column::Texts(rows.iter().map(|row| given(text(row))).collect())
}

fn table<const N: usize>(rows: usize, columns: [Column; N]) -> Value {
    Value::Table(Columns { rows, columns: columns.into() })
}

fn joined<T>(list: impl IntoIterator<Item = T>, between: &str, said: impl Fn(T) -> &'static str) -> String {
    list.into_iter().map(said).collect::<Vec<_>>().join(between)
}

pub(super) fn judgements(rows: &[JudgedThing]) -> Value {
    let asks = |row: &JudgedThing| {
        let asked = row.judgement.checks.iter().filter_map(|check| check.asks);
        joined(asked, ", ", Measure::name)
    };
    let columns = [
        texts(rows, |row| row.name.clone()),
        choices(rows, |row| Some(row.kind as usize)),
        choices(rows, |row| Some(row.verdict() as usize)),
        choices(rows, |row| row.judgement.decides().map(|check| check.about as usize)),
        some(rows, |row| row.judgement.decides().and_then(|check| check.room)),
        numbers(rows, |row| row.floor.finish()[0].base()),
        numbers(rows, |row| row.floor.finish()[1].base()),
        numbers(rows, |row| row.floor.rise()[0].base()),
        numbers(rows, |row| row.floor.rise()[1].base()),
        some(rows, |row| row.judgement.floor_at_most()),
        texts(rows, asks),
        texts(rows, |row| row.judgement.forces()),
        texts(rows, |row| joined(row.trades(), ", ", Trade::word)),
        texts(rows, |row| {
            row.judgement.decides().map_or_else(String::new, |check| check.basis.name().to_owned())
        }),
        texts(rows, |row| joined(row.judgement.cautions.iter(), " ", |caution| caution.text())),
    ];
    table(rows.len(), columns)
}

pub(super) fn checks(rows: &[JudgedThing]) -> Value {
    let each = rows.iter().flat_map(|row| row.judgement.checks.iter().map(move |check| (row, check)));
    let rows: Vec<(&JudgedThing, &Check)> = each.collect();
    let columns = [
        texts(&rows, |(row, _)| row.name.clone()),
        choices(&rows, |(_, check)| Some(check.about as usize)),
        choices(&rows, |(_, check)| Some(check.verdict as usize)),
        some(&rows, |(_, check)| check.room),
        some(&rows, |(_, check)| check.floor_at_most),
        texts(&rows, |(_, check)| check.asks.map_or("", Measure::name).to_owned()),
        texts(&rows, |(_, check)| check.basis.name().to_owned()),
        texts(&rows, |(_, check)| check.text.clone()),
    ];
    table(rows.len(), columns)
}

pub(super) fn works(rows: &[JudgedThing]) -> Value {
    let each = rows.iter().flat_map(|row| row.judgement.works.iter().map(move |work| (row, work)));
    let rows: Vec<(&JudgedThing, &Work)> = each.collect();
    let columns = [
        texts(&rows, |(row, _)| row.name.clone()),
        choices(&rows, |(_, work)| Some(work.task as usize)),
        choices(&rows, |(_, work)| Some(work.task.trade() as usize)),
        some(&rows, |(_, work)| work.by),
        some(&rows, |(_, work)| work.fill.map(|fill| fill[0])),
        some(&rows, |(_, work)| work.fill.map(|fill| fill[1])),
        texts(&rows, |(_, work)| work.text()),
    ];
    table(rows.len(), columns)
}
