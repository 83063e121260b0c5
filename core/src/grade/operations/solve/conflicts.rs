//! The row of what contradicts.

use super::asked::{Read, ports};
use crate::assumption;
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::grade::finish::{FINISH, LEAST};
use crate::grade::operations::columns::{counts, some_numbers, table};
use crate::grade::operations::finish::example;
use crate::grade::solve::{Demand, Measured, Relaxed, conflicts};
use crate::operation::{Answer, Args, Call, Choice, Column, Kind, Operation, TableType, Value};
use crate::quantity::{Length, Range, Slope};
use crate::survey::old_slab::SURVEY;
use crate::{number, port};

/// A table of demands that give way.
macro_rules! giving {
    ($name:literal, $meaning:literal, [$($before:expr),*]) => {
        TableType {
            name: $name,
            meaning: $meaning,
            columns: &[
                $($before,)*
                port!(demand: Kind::Text, "its name"),
                number!(by: length in inch | millimeter, Range::NOT_NEGATIVE, "by how much it must give way, alone in its set; none where that does not help"; optional),
                number!(by_fall: slope in inch_per_foot | percent, Range::NOT_NEGATIVE, "the same for a fall"; optional),
                port!(said: Kind::Text, "the same in words"; optional),
            ],
            least_rows: 0,
        }
    };
}

static SETS: TableType = giving!(
    "sets",
    "a demand of a set that cannot be kept together, while every part of the set could be; the smallest sets first",
    [port!(set: Kind::Count(1, i64::MAX), "the number of the set")]
);
static ALONE: TableType = giving!("alone", "a demand that mends everything alone", []);
static TOGETHER: TableType =
    giving!("together", "a demand that gives way where all give way by the least weighted sum", []);

/// What contradicts.
pub static FINISH_CONFLICTS: Operation = Operation {
    name: "finish_conflicts",
    module: "grade",
    since: "0.1.0",
    meaning: "Which demands on the finish cannot be kept together: every smallest set, and by how much each of its demands would have to give way.",
    equation: "a set is told when its rows have weights w >= 0 with w A = 0 and w b > 0, and no part of it has; gives way by the least t with A u + share t >= b",
    assumes: "heights and falls unrounded; the margin counts; demands that stand firm are kept and not blamed",
    ports: ports![],
    results: &[
        port!(kept: Kind::Choice(<bool as Choice>::WORDS), "whether all can be kept"),
        port!(complete: Kind::Choice(<bool as Choice>::WORDS), "whether these are all the sets; at most ten are told"),
        port!(sets: Kind::Table(&SETS), "the sets"),
        port!(alone: Kind::Table(&ALONE), "what mends everything alone"),
        port!(together: Kind::Table(&TOGETHER), "what mends everything with the least weighted sum"),
        port!(said: Kind::Text, "all of it in sentences"),
    ],
    basis: &[BasisId::Geometry, BasisId::LinearProgram],
    example: example!(
        r#""margin": "1/4 in", "demands": {"name": ["least 3 in", "fall", "side door"], "kind": ["least_thickness", "least_fall", "at_most"],
            "thickness": ["3 in", null, null], "fall": [null, "1/4 in/ft", null], "elevation": [null, null, "99.7 ft"],
            "edge": [null, "front", null], "x": [null, null, "0 ft"], "y": [null, null, "27 ft"]}"#
    ),
    refusals: &[
        (r#"{"demands": []}"#, Code::EmptyList),
        (
            r#"{"demands": {"name": ["a", "A"], "kind": ["least_thickness", "least_thickness"], "thickness": ["3 in", "2 in"]}}"#,
            Code::KeyRepeated,
        ),
        (r#"{"demands": {"name": ["a"], "kind": ["level"]}}"#, Code::KeyMissing),
    ],
    call: Call::Record(contradicting),
};

fn contradicting(args: &Args<'_>) -> Result<Answer> {
    let read = Read::of(args)?;
    let demands = &read.demands;
    let yes = |yes: bool| Value::Choice(usize::from(yes));
    let Some(found) = conflicts(read.survey, &read.asked())? else {
        let none: [(usize, usize, Option<Relaxed>); 0] = [];
        return Ok(Answer::of([
            yes(true),
            yes(true),
            giving(&none, demands, true),
            giving(&none, demands, false),
            giving(&none, demands, false),
            Value::Text("All demands can be kept.".to_owned()),
        ]));
    };
    let sets: Vec<(usize, usize, Option<Relaxed>)> = (found.sets.iter().enumerate())
        .flat_map(|(number, set)| {
            set.demands.iter().zip(&set.by).map(move |(&demand, &by)| (number + 1, demand, by))
        })
        .collect();
    let listed = |list: &[Relaxed]| -> Vec<(usize, usize, Option<Relaxed>)> {
        list.iter().map(|relaxed| (0, relaxed.demand, Some(*relaxed))).collect()
    };
    Ok(Answer::of([
        yes(false),
        yes(found.complete),
        giving(&sets, demands, true),
        giving(&listed(&found.alone), demands, false),
        giving(&listed(&found.together), demands, false),
        Value::Text(found.said(demands)),
    ]))
}

fn giving(rows: &[(usize, usize, Option<Relaxed>)], demands: &[Demand], of_sets: bool) -> Value {
    let measured = |demand: usize| demands.get(demand).map(|demand| demand.wants.measured());
    let amount = |row: &(usize, usize, Option<Relaxed>), wanted: Measured| {
        row.2.filter(|_| measured(row.1) == Some(wanted)).map(|relaxed| relaxed.by)
    };
    let names = rows.iter().map(|row| demands.get(row.1).map(|demand| demand.name.clone()));
    let said = rows.iter().map(|row| row.2.and_then(|relaxed| relaxed.said(demands)));
    let columns = [
        Column::Texts(names.collect()),
        some_numbers(rows, |row| {
            amount(row, Measured::Length).map(<Length as crate::quantity::Typed>::from_base)
        }),
        some_numbers(rows, |row| {
            amount(row, Measured::Slope).map(<Slope as crate::quantity::Typed>::from_base)
        }),
        Column::Texts(said.collect()),
    ];
    let set = of_sets.then(|| counts(rows, |row| row.0));
    table(rows.len(), set.into_iter().chain(columns))
}
