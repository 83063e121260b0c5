//! The tables of the floor as built.

use crate::asbuilt::{Check, Concrete, Deviations, FacetFall, Mend, Mending, Puddle};
use crate::grade::operations::columns::{counts, numbers, some_numbers, table};
use crate::judged::Judged;
use crate::operation::{Choice, Column, Kind, TableType, Value};
use crate::quantity::{Range, Typed};
use crate::survey::operations::HEIGHT;
use crate::{number, port};

pub(super) static CHECKS: TableType = TableType {
    name: "checks",
    meaning: "something that was asked of the floor",
    columns: &[
        port!(about: Kind::Text, "what it is about"),
        port!(verdict: Kind::Choice(Judged::WORDS), "whether it is kept"),
        port!(said: Kind::Text, "the finding in words"),
        port!(basis: Kind::Text, "name of where the limit comes from"),
    ],
    least_rows: 0,
};

pub(super) static DEVIATIONS: TableType = TableType {
    name: "deviations",
    meaning: "a shot on the work",
    columns: &[
        port!(name: Kind::Text, "its name"),
        number!(x: length in foot | meter, Range::ANY, "distance from the left"),
        number!(y: length in foot | meter, Range::ANY, "distance from the front"),
        number!(elevation: elevation in foot | meter, HEIGHT, "height as shot"),
        number!(planned: elevation in foot | meter, Range::ANY, "height as planned"),
        number!(deviation: length in inch | millimeter, Range::ANY, "shot less planned; positive is high"),
        port!(missed: Kind::Choice(bool::WORDS), "off by more than the tolerance or not"),
    ],
    least_rows: 0,
};

pub(super) static FALLS: TableType = TableType {
    name: "falls",
    meaning: "a plane of the plan",
    columns: &[
        port!(facet: Kind::Text, "its name; none under one plane"; optional),
        port!(shots: Kind::Count(0, i64::MAX), "how many shots lie on it"),
        number!(planned: slope in inch_per_foot | percent, Range::NOT_NEGATIVE, "fall as planned"),
        number!(got: slope in inch_per_foot | percent, Range::ANY, "fall built that way; negative where it rises, none of too few shots"; optional),
        number!(steepest: slope in inch_per_foot | percent, Range::NOT_NEGATIVE, "steepest fall built, any way"; optional),
        number!(unevenness: length in inch | millimeter, Range::NOT_NEGATIVE, "root of the mean squared distance of the shots from their plane"; optional),
    ],
    least_rows: 0,
};

pub(super) static SEEN: TableType = TableType {
    name: "seen",
    meaning: "a puddle that was seen",
    columns: &[
        number!(x: length in foot | meter, Range::ANY, "distance from the left"),
        number!(y: length in foot | meter, Range::ANY, "distance from the front"),
        number!(depth: length in inch | millimeter, Range::NOT_NEGATIVE, "depth as measured"; optional),
        number!(by_shots: length in inch | millimeter, Range::NOT_NEGATIVE, "water that the shots show there; 0 where they show none"),
    ],
    least_rows: 0,
};

pub(super) static MENDS: TableType = TableType {
    name: "mends",
    meaning: "a place to mend",
    columns: &[
        port!(work: Kind::Choice(Mending::WORDS), "ground down or filled up"),
        number!(x: length in foot | meter, Range::ANY, "distance from the left"),
        number!(y: length in foot | meter, Range::ANY, "distance from the front"),
        port!(shot: Kind::Text, "the shot it is at; none for a puddle"; optional),
        number!(depth: length in inch | millimeter, Range::NOT_NEGATIVE, "down or up to the plan, or to where water runs off"),
        number!(area: area in square_foot | square_meter, Range::NOT_NEGATIVE, "size of a puddle"; optional),
        port!(said: Kind::Text, "in words"),
    ],
    least_rows: 0,
};

pub(super) fn checks(rows: &[Check]) -> Value {
    let texts = |text: fn(&Check) -> String| Column::Texts(rows.iter().map(|row| Some(text(row))).collect());
    table(
        rows.len(),
        [
            texts(|row| row.about.clone()),
            Column::Choices(rows.iter().map(|row| Some(row.judged as usize)).collect()),
            texts(|row| row.said.clone()),
            texts(|row| row.basis.name().to_owned()),
        ],
    )
}

pub(super) fn deviations(found: &Deviations) -> Value {
    let rows = &found.shots;
    let missed = |row: &crate::asbuilt::ShotDeviation| usize::from(found.is_missed(row));
    table(
        rows.len(),
        [
            Column::Texts(rows.iter().map(|row| Some(row.name.clone())).collect()),
            numbers(rows, |row| row.x.base()),
            numbers(rows, |row| row.y.base()),
            numbers(rows, |row| row.elevation.base()),
            numbers(rows, |row| row.planned.base()),
            numbers(rows, |row| row.deviation.base()),
            Column::Choices(rows.iter().map(|row| Some(missed(row))).collect()),
        ],
    )
}

pub(super) fn falls(rows: &[FacetFall]) -> Value {
    table(
        rows.len(),
        [
            Column::Texts(rows.iter().map(|row| row.name.clone()).collect()),
            counts(rows, |row| row.shots),
            numbers(rows, |row| row.planned.base()),
            some_numbers(rows, |row| row.got),
            some_numbers(rows, |row| row.steepest),
            some_numbers(rows, |row| row.unevenness),
        ],
    )
}

pub(super) fn puddles(rows: &[Puddle]) -> Value {
    table(
        rows.len(),
        [
            numbers(rows, |row| row.seen.at.x.base()),
            numbers(rows, |row| row.seen.at.y.base()),
            some_numbers(rows, |row| row.seen.depth),
            numbers(rows, |row| row.by_shots.base()),
        ],
    )
}

pub(super) fn mends(rows: &[Mend]) -> Value {
    table(
        rows.len(),
        [
            Column::Choices(rows.iter().map(|row| Some(row.work as usize)).collect()),
            numbers(rows, |row| row.at.x.base()),
            numbers(rows, |row| row.at.y.base()),
            Column::Texts(rows.iter().map(|row| row.shot.clone()).collect()),
            numbers(rows, |row| row.depth.base()),
            some_numbers(rows, |row| row.area),
            Column::Texts(rows.iter().map(|row| Some(row.said())).collect()),
        ],
    )
}

/// Used, unaccounted for, used over planned.
pub(super) fn concrete(found: Option<&Concrete>) -> [Value; 3] {
    let number = |number: Option<f64>| number.map_or(Value::Absent, Value::Number);
    [
        number(found.map(|concrete| concrete.used.base())),
        number(found.map(|concrete| concrete.unaccounted().base())),
        number(found.and_then(|concrete| concrete.used_over_planned).map(Typed::base)),
    ]
}
