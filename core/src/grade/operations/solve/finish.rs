//! The row of the finish of least concrete.

use super::asked::{PRICE, Read, ports, steps, with_prices};
use crate::assumption;
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::grade::fall::FALL;
use crate::grade::finish::{FINISH, HEIGHT, LEAST, STEP};
use crate::grade::operations::columns::{numbers, some_numbers, table};
use crate::grade::operations::finish::example;
use crate::grade::solve::{Kept, Measured, Price, Solved, solve};
use crate::note::{Note, NoteCode};
use crate::operation::{Answer, Args, Call, Choice, Column, Kind, Operation, TableType, Value};
use crate::quantity::{Length, Range, Slope, Typed, inches};
use crate::survey::old_slab::SURVEY;
use crate::{number, port};

/// What a demand is counted in: the words in the order of [`Measured`].
const COUNTED_IN: &[&str] = &["length", "fall"];

/// How the demands stand.
static KEPT: TableType = TableType {
    name: "kept",
    meaning: "a demand at the answer, in the order given, then what was added to set the floor out",
    columns: &[
        port!(name: Kind::Text, "its name"),
        port!(counted_in: Kind::Choice(COUNTED_IN), "what it is counted in, and its prices by: 1/4 in, or 0.1 % of fall"),
        port!(added: Kind::Choice(<bool as Choice>::WORDS), "whether it was added to set the floor out"),
        port!(binds: Kind::Choice(<bool as Choice>::WORDS), "whether it stands at its limit in the planned finish"),
        number!(slack: length in inch | millimeter, Range::ANY, "how far the planned finish is from its limit"; optional),
        number!(slack_fall: slope in inch_per_foot | percent, Range::ANY, "the same for a fall"; optional),
        number!(slack_built: length in inch | millimeter, Range::ANY, "how far the built finish is from it"; optional),
        number!(slack_built_fall: slope in inch_per_foot | percent, Range::ANY, "the same for a fall"; optional),
        number!(x: length in foot | meter, Range::ANY, "where it binds, from the left"; optional),
        number!(y: length in foot | meter, Range::ANY, "from the front"; optional),
        port!(shot: Kind::Text, "the shot there"; optional),
        number!(tighter: volume in cubic_yard | cubic_meter, Range::ANY, "concrete that tightening it by one step takes more; none where it cannot be tightened"; optional),
        number!(tighter_cost: volume in cubic_yard | cubic_meter, Range::ANY, "the same with grinding at its price, in volume of concrete"; optional),
        number!(tighter_holds: length in inch | millimeter, Range::ANY, "how far that holds; none for ever"; optional),
        number!(tighter_holds_fall: slope in inch_per_foot | percent, Range::ANY, "the same for a fall"; optional),
        number!(looser: volume in cubic_yard | cubic_meter, Range::ANY, "concrete that loosening it by one step takes more: less than none is saved"; optional),
        number!(looser_cost: volume in cubic_yard | cubic_meter, Range::ANY, "the same with grinding at its price, in volume of concrete"; optional),
        number!(looser_holds: length in inch | millimeter, Range::ANY, "how far that holds; none for ever"; optional),
        number!(looser_holds_fall: slope in inch_per_foot | percent, Range::ANY, "the same for a fall"; optional),
        port!(said: Kind::Text, "the price in words"),
    ],
    least_rows: 0,
};

/// The finish of least concrete.
pub static FINISH_SOLVED: Operation = Operation {
    name: "finish_solved",
    module: "grade",
    since: "0.1.0",
    meaning: "The finish that takes the least concrete under all demands, proved, with the price of each demand, and rounded to what can be set out.",
    equation: "least integral of finish less old slab, finish plane over each facet, facets meeting, all demands kept; with grinding at a price: concrete and ground volume at their prices",
    assumes: "old slab plane over each triangle; the finish nowhere dips below it, but for what may be ground; door lines level, falls square to their edge, a level perimeter about a drain, unless set_out is no",
    ports: ports![
        number!(concrete_price: volume_price in per_cubic_yard | per_cubic_meter, PRICE, "price of concrete"; zero rare, optional),
        number!(grind_at_most: length in inch | millimeter, LEAST, "how deep high spots may be ground"; optional),
        number!(grinding_price: volume_price in per_cubic_yard | per_cubic_meter, PRICE, "price of what is ground off"; zero rare, optional),
        number!(round: length in inch | millimeter, STEP, "heights are whole steps of this from the datum"; or assumption::ROUNDING),
        number!(datum: elevation in foot | meter, HEIGHT, "the height the steps are counted from, usually the benchmark";
            or "0 ft" because "the job datum"),
        number!(round_fall: slope in inch_per_foot | percent, FALL, "falls are whole steps of this"; or assumption::FALL_STEP),
        port!(set_out: Kind::Choice(<bool as Choice>::WORDS), "no for the planned finish as it comes out, with nothing added or rounded"; optional),
    ],
    results: &[
        port!(finish: Kind::Record(&FINISH), "the finish to be built, in whole steps"),
        number!(concrete: volume in cubic_yard | cubic_meter, Range::ANY, "its concrete"),
        number!(ground: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "what is ground off under it"),
        number!(cost: money in currency_unit | currency_unit, Range::ANY, "concrete and grinding at their prices"; optional),
        port!(planned: Kind::Record(&FINISH), "the finish before rounding"),
        number!(planned_concrete: volume in cubic_yard | cubic_meter, Range::ANY, "its concrete"),
        number!(planned_cost: money in currency_unit | currency_unit, Range::ANY, "its cost"; optional),
        port!(bare: Kind::Record(&FINISH), "the finish by the demands alone: no margin, nothing added or rounded"),
        number!(bare_concrete: volume in cubic_yard | cubic_meter, Range::ANY, "its concrete"),
        number!(bare_cost: money in currency_unit | currency_unit, Range::ANY, "its cost"; optional),
        number!(bound: volume in cubic_yard | cubic_meter, Range::ANY, "no finish planned so costs less than this, in volume of concrete"),
        number!(gap: ratio in one | one, Range::ANY, "how far the planned cost may be above the least, as a share"),
        number!(least_slack: length in inch | millimeter, Range::ANY, "how far the demand that is kept most narrowly is from being broken; less than none by rounding only"),
        port!(rows: Kind::Count(0, i64::MAX), "how many rows were looked at for that"),
        number!(round: length in inch | millimeter, Range::NOT_NEGATIVE, "the step of heights that could be kept; none where nothing is rounded"),
        number!(round_fall: slope in inch_per_foot | percent, Range::NOT_NEGATIVE, "the step of falls that could be kept"),
        port!(kept: Kind::Table(&KEPT), "how each demand stands, and what it costs"),
    ],
    basis: &[BasisId::Geometry, BasisId::LinearProgram, BasisId::ThicknessMargin],
    example: example!(
        r#""demands": {"name": ["least 3 in", "fall", "side door"], "kind": ["least_thickness", "least_fall", "at_most"],
            "thickness": ["3 in", null, null], "fall": [null, "1/8 in/ft", null], "elevation": [null, null, "100.2 ft"],
            "edge": [null, "front", null], "x": [null, null, "0 ft"], "y": [null, null, "27 ft"]},
            "concrete_price": "165 /yd3""#
    ),
    refusals: &[
        (r#"{"demands": []}"#, Code::EmptyList),
        (r#"{"demands": {"name": ["a"], "kind": ["least_thickness"]}}"#, Code::KeyMissing),
        (
            r#"{"demands": {"name": ["a"], "kind": ["least_thicknes"], "thickness": ["3 in"]}}"#,
            Code::WordUnknown,
        ),
        (
            r#"{"demands": {"name": ["a"], "kind": ["least_thickness"], "thickness": ["3 in"], "fall": ["2 %"]}}"#,
            Code::Contradiction,
        ),
        (
            r#"{"demands": {"name": ["a", "b"], "kind": ["least_thickness", "least_fall"], "thickness": ["3 in", null],
            "fall": [null, "2 %"], "edge": [null, "frnt"]}}"#,
            Code::EdgeUnknown,
        ),
        (
            r#"{"demands": {"name": ["a", "b"], "kind": ["least_thickness", "at_most"], "thickness": ["3 in", null],
            "elevation": [null, "90 ft"], "x": [null, "10 ft"], "y": [null, "16 ft"]}}"#,
            Code::DemandsConflict,
        ),
        (
            r#"{"demands": {"name": ["a"], "kind": ["least_thickness"], "thickness": ["3 in"], "zone": ["bay"]}}"#,
            Code::ZoneUnknown,
        ),
        (r#"{"margin": "-1 in"}"#, Code::OutOfRange),
        (r#"{"concrete_price": "165 /ft2"}"#, Code::UnitWrong),
        (r#"{"grinding_price": "900 /yd3"}"#, Code::KeyMissing),
    ],
    call: Call::Record(solved),
};

fn solved(args: &Args<'_>) -> Result<Answer> {
    let read = Read::of(args)?;
    let mut asked = with_prices(read.asked(), args, 6)?;
    if args.choice(12)?.unwrap_or(true) {
        asked.steps = Some(steps(args, 9)?);
    }
    let found = solve(read.survey, &asked)?;
    let money = |money: Option<crate::quantity::Money>| {
        money.map_or(Value::Absent, |money| Value::Number(money.base()))
    };
    let (built, planned, bare) = (&found.built, &found.planned, &found.bare);
    let rounding = found.rounding;
    let answer = Answer::of([
        Value::record(built.finish.clone()),
        Value::Number(built.concrete.base()),
        Value::Number(built.ground.base()),
        money(built.money),
        Value::record(planned.finish.clone()),
        Value::Number(planned.concrete.base()),
        money(planned.money),
        Value::record(bare.finish.clone()),
        Value::Number(bare.concrete.base()),
        money(bare.money),
        Value::Number(found.proof.bound.base()),
        Value::Number(found.proof.gap()),
        Value::Number(found.proof.least_slack.base()),
        Value::Count(found.proof.rows as i64),
        Value::Number(rounding.map_or(0.0, |rounding| rounding.heights.base())),
        Value::Number(rounding.map_or(0.0, |rounding| rounding.falls.base())),
        kept(&found, &read, asked.concrete_price),
    ]);
    Ok(answer.with_notes(notes(&found, asked.steps.map(|steps| steps.heights))))
}

fn notes(found: &Solved, asked: Option<Length>) -> Vec<Note> {
    let mut notes = Vec::new();
    for habit in &found.habits_dropped {
        notes.push(Note::new(NoteCode::HabitDropped, format!("{habit}: the demands leave no room for it")));
    }
    if let (Some(rounding), Some(asked)) = (found.rounding, asked) {
        if rounding.heights.base() < asked.base() {
            let text = match rounding.heights.base() > 0.0 {
                true => format!(
                    "no finish in steps of {} keeps the demands: steps of {}",
                    inches(asked, 8),
                    inches(rounding.heights, 64)
                ),
                false => "no finish in whole steps keeps the demands: it is not rounded".to_owned(),
            };
            notes.push(Note::new(NoteCode::StepsFiner, text));
        }
        if !rounding.best {
            notes.push(Note::new(
                NoteCode::StepsNotProved,
                "the search for whole steps ended early: there may be a rounded finish with a little less",
            ));
        }
    }
    notes
}

fn kept(found: &Solved, read: &Read<'_>, price: Option<crate::quantity::VolumePrice>) -> Value {
    let rows = &found.demands;
    let told = |yes: bool| Some(usize::from(yes));
    let length = |kept: &Kept, amount: Option<f64>| {
        amount.filter(|_| kept.measured == Measured::Length).map(Length::from_base)
    };
    let fall = |kept: &Kept, amount: Option<f64>| {
        amount.filter(|_| kept.measured == Measured::Slope).map(Slope::from_base)
    };
    let side = |of: fn(&Kept) -> Price| {
        [
            some_numbers(rows, |kept| of(kept).concrete),
            some_numbers(rows, |kept| of(kept).cost),
            some_numbers(rows, |kept| length(kept, of(kept).holds)),
            some_numbers(rows, |kept| fall(kept, of(kept).holds)),
        ]
    };
    let at = |of: fn(&crate::survey::old_slab::SlabPlace) -> f64| {
        numbers(rows, |kept| kept.at.as_ref().map_or(f64::NAN, of))
    };
    let texts = |of: &dyn Fn(&Kept) -> Option<String>| Column::Texts(rows.iter().map(of).collect());
    let said = |kept: &Kept| {
        let demand = read.demands.iter().find(|demand| demand.name == kept.name);
        Some(kept.said(demand, price))
    };
    let head = [
        texts(&|kept| Some(kept.name.clone())),
        Column::Choices(rows.iter().map(|kept| told(kept.measured == Measured::Slope)).collect()),
        Column::Choices(rows.iter().map(|kept| told(kept.habit)).collect()),
        Column::Choices(rows.iter().map(|kept| told(kept.binds)).collect()),
        some_numbers(rows, |kept| length(kept, Some(kept.slack))),
        some_numbers(rows, |kept| fall(kept, Some(kept.slack))),
        some_numbers(rows, |kept| length(kept, Some(kept.slack_built))),
        some_numbers(rows, |kept| fall(kept, Some(kept.slack_built))),
        at(|at| at.x.base()),
        at(|at| at.y.base()),
        texts(&|kept| kept.at.as_ref().and_then(|at| at.shot.clone())),
    ];
    let prices = side(|kept| kept.prices.tighter).into_iter().chain(side(|kept| kept.prices.looser));
    table(rows.len(), head.into_iter().chain(prices).chain([texts(&said)]))
}
