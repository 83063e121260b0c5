//! The row of the floor as built.

use super::results::{checks, concrete, deviations, falls, mends, puddles};
use crate::asbuilt::{AsBuilt, Asked, Delivered, POURED, SeenPuddle, TOLERANCE, on_new_floor};
use crate::assumption::MARK_TOLERANCE;
use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result, together};
use crate::grade::drainage::Surface;
use crate::grade::fall::FALL;
use crate::grade::finish::{FINISH, Finish, LEAST};
use crate::note::NoteCode;
use crate::operation::{Answer, Args, Call, Choice, Columns, Kind, Operation, TableType, Value};
use crate::quantity::{Length, Range, Slope, Typed, Volume};
use crate::survey::Survey;
use crate::survey::low_spots::{DRAINS, EDGES, GivenEdges, PONDS, SHALLOWEST, ponds_table};
use crate::survey::old_slab::{Marks, SURVEY, Settings, Shots};
use crate::survey::operations::{HEIGHT, PLACE};
use crate::survey::outline::Corner;
use crate::survey::surface::Shot;
use crate::{number, port};

static SHOTS: TableType = TableType {
    name: "shots",
    meaning: "a shot of the new floor",
    columns: &[
        number!(x: length in foot | meter, PLACE, "distance from the left"),
        number!(y: length in foot | meter, PLACE, "distance from the front"),
        number!(elevation: elevation in foot | meter, HEIGHT, "height above the job datum"),
        port!(name: Kind::Text, "its name"; optional),
    ],
    least_rows: 1,
};

static PUDDLES: TableType = TableType {
    name: "puddles",
    meaning: "a puddle that was seen when the hose was let run",
    columns: &[
        number!(x: length in foot | meter, PLACE, "distance from the left"),
        number!(y: length in foot | meter, PLACE, "distance from the front"),
        number!(depth: length in inch | millimeter, SHALLOWEST, "how deep"; optional),
    ],
    least_rows: 0,
};

/// The floor as built.
pub static AS_BUILT: Operation = Operation {
    name: "as_built",
    module: "asbuilt",
    since: "0.1.0",
    meaning: "The new floor as shot, held against old slab and plan: marks, thickness, slope, standing water, concrete, what to mend.",
    equation: "deviation = shot - planned; thickness = new floor - old slab, exactly over the triangles of both; slope = plane of least squares",
    assumes: "both floors plane over each triangle of their shots; no approval: arithmetic on the shots",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab"),
        port!(finish: Kind::Record(&FINISH), "the plan"),
        port!(shots: Kind::Table(&SHOTS), "the shots of the new floor"; optional),
        port!(new_floor: Kind::Record(&SURVEY), "the new floor as surveyed, in place of shots; over the same plan edge"; optional),
        number!(tolerance: length in inch | millimeter, TOLERANCE, "how far a shot may be off the plan"; or MARK_TOLERANCE),
        number!(specified: length in inch | millimeter, LEAST, "the thickness specified"; zero rare, optional),
        number!(least: length in inch | millimeter, LEAST, "the least thickness allowed anywhere"; zero rare, optional),
        port!(surface: Kind::Choice(Surface::WORDS), "how the floor is finished and used: its least fall"; optional),
        number!(least_fall: slope in inch_per_foot | percent, FALL, "the least fall, in place of that of the surface"; zero rare, optional),
        port!(edges: Kind::Table(&EDGES), "edges that are walled, open or drained"; optional),
        port!(drains: Kind::Table(&DRAINS), "drains in the floor"; optional),
        number!(shallowest: length in inch | millimeter, SHALLOWEST, "ponds shallower than this are left out";
            or "1/16 in" because "a rod hardly tells less"),
        number!(ordered: volume in cubic_yard | cubic_meter, POURED, "concrete that came"; zero rare, optional),
        number!(left_over: volume in cubic_yard | cubic_meter, POURED, "concrete that was left over"; optional),
        port!(puddles: Kind::Table(&PUDDLES), "puddles that were seen"; optional),
    ],
    results: &[
        port!(count: Kind::Count(1, i64::MAX), "how many shots on the work"),
        port!(missed: Kind::Count(0, i64::MAX), "how many of them are off by more than the tolerance"),
        number!(mean_deviation: length in inch | millimeter, Range::ANY, "mean of shot less planned; positive is high"),
        number!(deviation: length in inch | millimeter, Range::NOT_NEGATIVE, "standard deviation of shot less planned; none of one shot"; optional),
        number!(highest: length in inch | millimeter, Range::ANY, "greatest of shot less planned"),
        number!(lowest: length in inch | millimeter, Range::ANY, "least of shot less planned"),
        number!(mean_over_area: length in inch | millimeter, Range::ANY, "mean over the area of new floor less plan"),
        number!(thickness_mean: length in inch | millimeter, Range::ANY, "mean thickness got"),
        number!(thickness_least: length in inch | millimeter, Range::ANY, "least thickness got"),
        number!(least_x: length in foot | meter, Range::ANY, "where it is, from the left"),
        number!(least_y: length in foot | meter, Range::ANY, "where it is, from the front"),
        number!(least_measured: length in inch | millimeter, Range::ANY, "least thickness got between the shots of the old slab"; optional),
        number!(thickness_greatest: length in inch | millimeter, Range::ANY, "greatest thickness got"),
        number!(greatest_x: length in foot | meter, Range::ANY, "where that is, from the left"),
        number!(greatest_y: length in foot | meter, Range::ANY, "where that is, from the front"),
        number!(thinner: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area thinner than the least allowed, or else than specified"; optional),
        number!(planned_mean: length in inch | millimeter, Range::ANY, "mean thickness planned"),
        number!(planned_volume: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "concrete figured"),
        number!(volume: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "concrete in place, between old slab and new floor"),
        number!(used: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "concrete used: what came less what was left over"; optional),
        number!(unaccounted: volume in cubic_yard | cubic_meter, Range::ANY, "used less in place"; optional),
        number!(used_over_planned: ratio in one | one, Range::NOT_NEGATIVE, "used over figured"; optional),
        port!(said: Kind::Text, "all of it in a few sentences: what holds, what does not, what to mend"),
        port!(checks: Kind::Table(&super::results::CHECKS), "what was asked, and whether it was kept"),
        port!(deviations: Kind::Table(&super::results::DEVIATIONS), "the shots beside the plan"),
        port!(falls: Kind::Table(&super::results::FALLS), "the slopes got"),
        port!(ponds: Kind::Table(&PONDS), "where water stands"),
        port!(seen: Kind::Table(&super::results::SEEN), "the puddles seen beside the water of the shots"),
        port!(mends: Kind::Table(&super::results::MENDS), "what to mend"),
    ],
    basis: &[
        BasisId::Geometry,
        BasisId::MarkTolerance,
        BasisId::MarkToleranceGiven,
        BasisId::TopElevation,
        BasisId::SlabThickness,
        BasisId::LeastThicknessGiven,
        BasisId::FallFinishedFloor,
        BasisId::FallBroomed,
        BasisId::FallOutdoors,
        BasisId::UsedOverFigured,
    ],
    example: r#"{"survey": {"outline": {"sides": [{"name": "front", "length": "12 ft"}, {"name": "right", "length": "10 ft"},
            {"name": "back", "length": "12 ft"}, {"name": "left", "length": "10 ft"}]},
        "grid": {"columns": ["1 ft", "11 ft"], "rows": ["1 ft", "9 ft"], "elevations": ["99.20 ft", "99.15 ft", "99.22 ft", "99.25 ft"]}},
        "finish": {"points": [{"x": "0 ft", "y": "0 ft", "elevation": "99.50 ft"}, {"x": "12 ft", "y": "0 ft", "elevation": "99.50 ft"},
            {"x": "0 ft", "y": "10 ft", "elevation": "99.60 ft"}]},
        "shots": {"x": ["1 ft", "6 ft", "11 ft", "1 ft", "6 ft", "11 ft", "1 ft", "6 ft", "11 ft"],
            "y": ["1 ft", "1 ft", "1 ft", "5 ft", "5 ft", "5 ft", "9 ft", "9 ft", "9 ft"],
            "elevation": ["99.51 ft", "99.52 ft", "99.50 ft", "99.55 ft", "99.48 ft", "99.56 ft", "99.59 ft", "99.60 ft", "99.58 ft"]},
        "least": "3 in", "specified": "4 in", "surface": "trowelled", "ordered": "1 1/2 yd3", "left_over": "1/8 yd3",
        "puddles": {"x": ["6 ft"], "y": ["5 ft"], "depth": ["1/2 in"]},
        "edges": [{"edge": "left", "state": "walled"}, {"edge": "back", "state": "walled"}, {"edge": "right", "state": "walled"}]}"#,
    refusals: &[
        (r#"{"shots": null}"#, Code::KeyMissing),
        (
            r#"{"new_floor": {"outline": {"sides": [{"length": "12 ft"}, {"length": "10 ft"}, {"length": "12 ft"}, {"length": "10 ft"}]},
            "grid": {"columns": ["1 ft", "11 ft"], "rows": ["1 ft", "9 ft"], "elevations": ["99 ft", "99 ft", "99 ft", "99 ft"]}}}"#,
            Code::Contradiction,
        ),
        (
            r#"{"shots": null, "new_floor": {"outline": {"sides": [{"length": "12 ft"}, {"length": "11 ft"}, {"length": "12 ft"}, {"length": "11 ft"}]},
            "grid": {"columns": ["1 ft", "11 ft"], "rows": ["1 ft", "9 ft"], "elevations": ["99 ft", "99 ft", "99 ft", "99 ft"]}}}"#,
            Code::AsBuiltOutline,
        ),
        (
            r#"{"shots": {"x": ["1 ft", "6 ft"], "y": ["1 ft", "1 ft"], "elevation": ["99 ft", "99 ft"]}}"#,
            Code::TooFewShots,
        ),
        (r#"{"tolerance": "2 ft"}"#, Code::OutOfRange),
        (r#"{"tolerance": "0 in"}"#, Code::OutOfRange),
        (r#"{"surface": "smooth"}"#, Code::WordUnknown),
        (r#"{"left_over": "2 yd3"}"#, Code::Contradiction),
        (r#"{"ordered": null}"#, Code::KeyMissing),
        (r#"{"least_fall": "1/8 in/ft"}"#, Code::Contradiction),
        (r#"{"puddles": {"x": ["6 ft"], "y": ["5 ft"], "depth": ["-1 in"]}}"#, Code::OutOfRange),
    ],
    call: Call::Record(as_built),
};

fn as_built(args: &Args<'_>) -> Result<Answer> {
    let (survey, finish): (&Survey, &Finish) = (args.required_record(0)?, args.required_record(1)?);
    let shot;
    let new = match (args.table(2)?, args.record::<Survey>(3)?) {
        (Some(shots), None) => {
            shot = shot_floor(survey, shots)?;
            &shot
        }
        (None, Some(new)) => new,
        (shots, new) => return Err(one_of(shots.is_some(), new.is_some())),
    };
    let given = GivenEdges::of(args.table(9)?, args.table(10)?);
    let seen = seen(args.table(14)?);
    let delivered = delivered(args.quantity(12)?, args.quantity(13)?)?;
    let asked = Asked {
        tolerance: args.required(4)?,
        tolerance_given: !args.is_taken(4),
        specified: args.quantity(5)?,
        least: args.quantity(6)?,
        least_fall: least_fall(args.choice(7)?, args.quantity(8)?)?,
        shallowest: args.required(11)?,
        delivered,
        puddles: &seen,
        ..Asked::with_edges(&given.edges)
    };
    let found = AsBuilt::of(survey, finish, new, &asked).map_err(|failure| given.told(failure))?;
    let notes = found.notes();
    let answer = answer(&found).with_notes(new.notes().iter().map(on_new_floor)).with_notes(notes);
    Ok(match (delivered, args.quantity::<Volume>(13)?) {
        (Some(_), None) => {
            answer.with_note(NoteCode::Assumed, "nothing was left over of the concrete that came")
        }
        _ => answer,
    })
}

fn answer(found: &AsBuilt) -> Answer {
    let length = |length: Option<Length>| length.map_or(Value::Absent, |length| Value::Number(length.base()));
    let off = &found.deviations;
    let (got, planned) = (&found.thickness, &found.planned);
    let mut results = vec![
        Value::Count(off.shots.len() as i64),
        Value::Count(off.missed().len() as i64),
        length(Some(off.mean)),
        length(off.spread),
        length(off.highest().map(|shot| shot.deviation)),
        length(off.lowest().map(|shot| shot.deviation)),
        length(Some(found.mean_over_area())),
        length(Some(got.mean)),
        length(Some(got.least.thickness)),
        length(Some(got.least.x)),
        length(Some(got.least.y)),
        length(got.least_measured.as_ref().map(|at| at.thickness)),
        length(Some(got.greatest.thickness)),
        length(Some(got.greatest.x)),
        length(Some(got.greatest.y)),
        got.thinner.map_or(Value::Absent, |area| Value::Number(area.base())),
        length(Some(planned.mean)),
        Value::Number(planned.fill.base()),
        Value::Number(got.fill.base()),
    ];
    results.extend(concrete(found.concrete.as_ref()));
    results.extend([
        Value::Text(found.said().join("\n")),
        checks(&found.checks),
        deviations(&found.deviations),
        falls(&found.falls),
        Value::Table(ponds_table(&found.ponds.list, [])),
        puddles(&found.puddles),
        mends(&found.mends),
    ]);
    Answer::of(results)
}

/// The new floor through its shots, over the plan edge of the old slab.
fn shot_floor(survey: &Survey, table: &Columns) -> Result<Survey> {
    let (x, y, z) = (table.numbers(0), table.numbers(1), table.numbers(2));
    let shots =
        x.iter().zip(y).zip(z).map(|((&x, &y), &z)| Shot { x, y, z, outside_allowed: false, step: false });
    let named = (0..table.rows).any(|row| table.text(3, row).is_some());
    let names = (0..table.rows).filter(|_| named).map(|row| table.text(3, row).map(str::to_owned)).collect();
    let marks = Marks { shots: shots.collect(), names };
    let settings = Settings { texture: None, ..*survey.settings() };
    Survey::new(survey.outline().clone(), Shots::Scattered(marks), settings)
        .map_err(|failure| failure.under("shots"))
}

fn one_of(shots: bool, new_floor: bool) -> Box<Failure> {
    let code = if shots { Code::Contradiction } else { Code::KeyMissing };
    Failure::new(code, "shots")
        .written(together(&[("shots", shots), ("new_floor", new_floor)]))
        .allowed("shots or new_floor")
        .remedy("give the new floor one way")
}

fn least_fall(surface: Option<Surface>, given: Option<Slope>) -> Result<Option<(Slope, BasisId)>> {
    match (surface, given) {
        (Some(_), Some(_)) => Err(Failure::new(Code::Contradiction, "least_fall")
            .written("surface and least_fall")
            .allowed("one of them")
            .remedy("keep the word or the number")),
        (Some(surface), None) => Ok(Some(surface.least_fall())),
        (None, given) => Ok(given.map(|given| (given, BasisId::FallGiven))),
    }
}

fn delivered(ordered: Option<Volume>, left_over: Option<Volume>) -> Result<Option<Delivered>> {
    match (ordered, left_over) {
        (Some(ordered), left_over) => {
            Ok(Some(Delivered { ordered, left_over: left_over.unwrap_or_else(|| Volume::from_base(0.0)) }))
        }
        (None, Some(_)) => Err(Failure::new(Code::KeyMissing, "ordered")
            .written("nothing")
            .allowed("what came, where something was left over of it")
            .remedy("give the volume that came")),
        (None, None) => Ok(None),
    }
}

fn seen(table: Option<&Columns>) -> Vec<SeenPuddle> {
    let Some(table) = table else { return Vec::new() };
    let place = |column: usize, row: usize| Length::from_base(table.number(column, row).unwrap_or(f64::NAN));
    (0..table.rows)
        .map(|row| SeenPuddle {
            at: Corner::new(place(0, row), place(1, row)),
            depth: table.number(2, row).map(Length::from_base),
        })
        .collect()
}
