//! The row of how a finish drains.

use super::columns::{counts, numbers, some_numbers, table};
use super::finish::example;
use crate::assumption::{RUNOFF, WAVE_HEIGHT, WAVE_LENGTH};
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::grade::drainage::puddle::{self, FALL};
use crate::grade::drainage::runoff::{COEFFICIENT, RAIN};
use crate::grade::drainage::{
    Asked, Course, Drainage, DrainedPart, End, Ending, Fault, Puddles, Start, Surface,
};
use crate::grade::finish::{FINISH, Finish};
use crate::judged::Judged;
use crate::operation::{Answer, Args, Call, Choice, Column, Columns, Kind, Operation, TableType, Value};
use crate::quantity::{Length, Range, Slope, Typed};
use crate::survey::Survey;
use crate::survey::low_spots::{DRAINS, EDGES, GivenEdges};
use crate::survey::old_slab::SURVEY;
use crate::survey::operations::{HEIGHT, PLACE};
use crate::survey::outline::Corner;
use crate::{number, port};

static STARTS: TableType = TableType {
    name: "starts",
    meaning: "a place from which water is followed",
    columns: &[
        number!(x: length in foot | meter, PLACE, "distance from the left"),
        number!(y: length in foot | meter, PLACE, "distance from the front"),
    ],
    least_rows: 0,
};

static FACETS: TableType = TableType {
    name: "facets",
    meaning: "a facet with ground in the work, or the one plane",
    columns: &[
        port!(facet: Kind::Count(1, i64::MAX), "its number"),
        port!(name: Kind::Text, "what it is called; none for one plane"; optional),
        number!(area: area in square_foot | square_meter, Range::NOT_NEGATIVE, "its area within the work"),
        number!(fall: slope in inch_per_foot | percent, Range::NOT_NEGATIVE, "its steepest fall"),
        number!(down_x: ratio in one | one, Range::closed(-1.0, 1.0), "downhill as a unit vector, to the right; none where level"; optional),
        number!(down_y: ratio in one | one, Range::closed(-1.0, 1.0), "the same, to the back"; optional),
        port!(toward: Kind::Text, "the edges it falls towards"),
        port!(ends: Kind::Text, "where most of its water ends"),
        port!(course: Kind::Choice(Course::WORDS), "where its water goes"),
        port!(judged: Kind::Choice(Judged::WORDS), "whether it falls enough, the right way, to an outlet"),
        number!(puddle: length in inch | millimeter, Range::NOT_NEGATIVE, "how deep the stated wave can hold water on it"),
    ],
    least_rows: 0,
};

static CATCHMENTS: TableType = TableType {
    name: "catchments",
    meaning: "what drains to one end, the largest first",
    columns: &[
        port!(catchment: Kind::Count(1, i64::MAX), "its number"),
        port!(end: Kind::Choice(End::WORDS), "what becomes of its water"),
        port!(name: Kind::Text, "the edge, the drain, the wall or the level ground"; optional),
        number!(area: area in square_foot | square_meter, Range::NOT_NEGATIVE, "its area"),
        number!(longest: length in foot | meter, Range::NOT_NEGATIVE, "the longest way of water in it, in plan"),
        number!(farthest_x: length in foot | meter, PLACE, "where that starts, from the left"),
        number!(farthest_y: length in foot | meter, PLACE, "where that starts, from the front"),
        number!(flow: flow in gallon_per_minute | liter_per_second, Range::NOT_NEGATIVE, "the rain that comes there; none where no rain was given"; optional),
    ],
    least_rows: 0,
};

static CATCHMENT_CORNERS: TableType = TableType {
    name: "catchment_corners",
    meaning: "a corner of the polygons of a catchment, in order; the last of a ring leads back to its first",
    columns: &[
        port!(catchment: Kind::Count(1, i64::MAX), "the number of the catchment"),
        port!(part: Kind::Count(1, i64::MAX), "the number of the connected part, over all catchments"),
        port!(ring: Kind::Count(1, i64::MAX), "1 is the outer ring, counter-clockwise; others are holes, clockwise"),
        number!(x: length in foot | meter, Range::ANY, "from the left"),
        number!(y: length in foot | meter, Range::ANY, "from the front"),
    ],
    least_rows: 0,
};

static FAULTS: TableType = TableType {
    name: "faults",
    meaning: "a connected part of a facet that drains badly",
    columns: &[
        port!(part: Kind::Count(1, i64::MAX), "its number"),
        port!(facet: Kind::Count(1, i64::MAX), "the number of its facet"),
        port!(fault: Kind::Choice(Fault::WORDS), "what is wrong"),
        number!(area: area in square_foot | square_meter, Range::NOT_NEGATIVE, "its area"),
    ],
    least_rows: 0,
};

static FAULT_CORNERS: TableType = TableType {
    name: "fault_corners",
    meaning: "a corner of the polygon of such a part, in order; the last of a ring leads back to its first",
    columns: &[
        port!(part: Kind::Count(1, i64::MAX), "the number of the part"),
        port!(ring: Kind::Count(1, i64::MAX), "1 is the outer ring, counter-clockwise; others are holes, clockwise"),
        number!(x: length in foot | meter, Range::ANY, "from the left"),
        number!(y: length in foot | meter, Range::ANY, "from the front"),
    ],
    least_rows: 0,
};

static PATHS: TableType = TableType {
    name: "paths",
    meaning: "a way of water: from given places, then from corners, then from the place farthest from each end",
    columns: &[
        port!(path: Kind::Count(1, i64::MAX), "its number"),
        port!(start: Kind::Choice(Start::WORDS), "what it starts from"),
        number!(length: length in foot | meter, Range::NOT_NEGATIVE, "how long it is in plan"),
        number!(drop: length in inch | millimeter, Range::ANY, "how far it falls"),
        number!(mean_fall: slope in inch_per_foot | percent, Range::ANY, "its drop over its length; none where it has none"; optional),
        port!(end: Kind::Choice(End::WORDS), "what becomes of the water"),
        port!(name: Kind::Text, "the edge, the drain, the wall or the level ground"; optional),
    ],
    least_rows: 0,
};

static PATH_PLACES: TableType = TableType {
    name: "path_places",
    meaning: "a place at which a way of water starts, turns or ends",
    columns: &[
        port!(path: Kind::Count(1, i64::MAX), "the number of the way"),
        number!(x: length in foot | meter, PLACE, "from the left"),
        number!(y: length in foot | meter, PLACE, "from the front"),
        number!(elevation: elevation in foot | meter, HEIGHT, "how high the finish is there"),
    ],
    least_rows: 0,
};

/// How a finish drains.
pub static DRAINAGE: Operation = Operation {
    name: "drainage",
    module: "grade",
    since: "0.1.0",
    meaning: "How a finish drains: each facet against the least fall, what drains where, the ways of water, what drains badly.",
    equation: "water runs straight down each facet, along a valley where both sides lean to it and along the foot of a wall; flow = coefficient x rain x area",
    assumes: "facets are plane; water from a corner or a ridge takes the steepest way, of several as steep that over the first facet; exactly the least fall is enough",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab"),
        port!(finish: Kind::Record(&FINISH), "the new top surface"),
        port!(edges: Kind::Table(&EDGES), "edges that are walled, open or drained"; optional),
        port!(drains: Kind::Table(&DRAINS), "drains in the floor"; optional),
        port!(surface: Kind::Choice(Surface::WORDS), "how the surface is finished and used, which sets the least fall";
            or "trowelled" because "the least of the minimums"),
        number!(least_fall: slope in inch_per_foot | percent, FALL, "the least fall, in place of that of the surface"; optional),
        number!(wave_height: length in inch | millimeter, puddle::WAVE_HEIGHT, "height of a wave that strike-off may leave, crest to trough"; or WAVE_HEIGHT),
        number!(wave_length: length in foot | meter, puddle::WAVE_LENGTH, "length of that wave, crest to crest"; zero rare, or WAVE_LENGTH),
        port!(starts: Kind::Table(&STARTS), "places from which water is followed"; optional),
        number!(rain: rain_intensity in inch_per_hour | millimeter_per_hour, RAIN, "how fast rain comes down"; zero rare, optional),
        number!(coefficient: ratio in percent | percent, COEFFICIENT, "the share of the rain that runs off"; or RUNOFF),
    ],
    results: &[
        port!(judged: Kind::Choice(Judged::WORDS), "whether every facet falls enough, the right way, to an outlet"),
        number!(least: slope in inch_per_foot | percent, FALL, "the least fall that is wanted"),
        number!(least_found: slope in inch_per_foot | percent, Range::NOT_NEGATIVE, "the least fall of any facet"),
        number!(drained: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area whose water leaves"),
        number!(held: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area whose water finds no outlet"),
        port!(puddles: Kind::Choice(Puddles::WORDS), "whether the stated wave can hold water"),
        number!(puddle: length in inch | millimeter, Range::NOT_NEGATIVE, "the deepest that it holds on any facet"),
        port!(facets: Kind::Table(&FACETS), "the facets"),
        port!(catchments: Kind::Table(&CATCHMENTS), "what drains to each end"),
        port!(catchment_corners: Kind::Table(&CATCHMENT_CORNERS), "the corners of the polygons of the catchments"),
        port!(faults: Kind::Table(&FAULTS), "the parts that drain badly"),
        port!(fault_corners: Kind::Table(&FAULT_CORNERS), "the corners of their polygons"),
        port!(paths: Kind::Table(&PATHS), "ways of water"),
        port!(path_places: Kind::Table(&PATH_PLACES), "the places on them"),
    ],
    basis: &[
        BasisId::Geometry,
        BasisId::FallFinishedFloor,
        BasisId::FallBroomed,
        BasisId::FallWashed,
        BasisId::FallOutdoors,
        BasisId::FallGiven,
        BasisId::WaveAsScreeded,
        BasisId::RationalMethod,
    ],
    example: example!(
        r#""finish": {"points": [{"x": "0 ft", "y": "0 ft", "elevation": "99.9 ft"}, {"x": "20 ft", "y": "0 ft", "elevation": "99.8 ft"},
            {"x": "0 ft", "y": "24 ft", "elevation": "100.2 ft"}]},
        "edges": {"edge": ["front"], "state": ["drained"]}, "surface": "broomed", "rain": "3 in/h""#
    ),
    refusals: &[
        (r#"{"edges": {"edge": ["door"], "state": ["walled"]}}"#, Code::EdgeUnknown),
        (r#"{"drains": {"x": ["50 ft"], "y": ["5 ft"]}}"#, Code::DrainOutside),
        (r#"{"starts": {"x": ["50 ft"], "y": ["5 ft"]}}"#, Code::OffWork),
        (r#"{"surface": "polished"}"#, Code::WordUnknown),
        (r#"{"wave_length": "0 ft"}"#, Code::OutOfRange),
        (r#"{"rain": "3 in"}"#, Code::UnitWrong),
        (r#"{"coefficient": "120 %"}"#, Code::OutOfRange),
    ],
    call: Call::Record(drainage),
};

fn drainage(args: &Args<'_>) -> Result<Answer> {
    let (survey, finish): (&Survey, &Finish) = (args.required_record(0)?, args.required_record(1)?);
    let given = GivenEdges::of(args.table(2)?, args.table(3)?);
    let asked = Asked {
        edges: given.edges.clone(),
        surface: args.choice(4)?.unwrap_or(Surface::Trowelled),
        least_fall: args.quantity(5)?,
        wave_height: args.required(6)?,
        wave_length: args.required(7)?,
        starts: args.table(8)?.map_or_else(Vec::new, starts),
        rain: args.quantity(9)?,
        coefficient: args.required(10)?,
    };
    let found = Drainage::of(survey, finish, &asked).map_err(|failure| given.told(failure))?;
    let (catchment_parts, faults) = (found.catchment_parts(), found.faulty_parts());
    let mut answer = Answer::of([
        Value::Choice(found.judged() as usize),
        Value::Number(found.least.base()),
        Value::Number(found.least_found().base()),
        Value::Number(found.drained().base()),
        Value::Number(found.held().base()),
        Value::Choice(found.puddles() as usize),
        Value::Number(found.puddle().base()),
        facets(&found),
        catchments(&found),
        catchment_corners(&catchment_parts),
        fault_list(&found, &faults),
        fault_corners(&faults),
        paths(&found),
        path_places(&found),
    ])
    .with_notes(found.notes());
    answer.basis.push((0, found.basis));
    Ok(answer)
}

fn starts(table: &Columns) -> Vec<Corner> {
    let place = |column: usize, row: usize| Length::from_base(table.number(column, row).unwrap_or(f64::NAN));
    (0..table.rows).map(|row| Corner::new(place(0, row), place(1, row))).collect()
}

fn texts<T>(rows: &[T], text: impl Fn(&T) -> Option<String>) -> Column {
    Column::Texts(rows.iter().map(text).collect())
}

fn choices<T>(rows: &[T], place: impl Fn(&T) -> usize) -> Column {
    Column::Choices(rows.iter().map(|row| Some(place(row))).collect())
}

fn facets(found: &Drainage) -> Value {
    let rows = &found.facets;
    let down = |axis: usize| numbers(rows, |of| of.down.map_or(f64::NAN, |down| down[axis]));
    table(
        rows.len(),
        [
            counts(rows, |of| of.facet + 1),
            texts(rows, |of| of.name.clone()),
            numbers(rows, |of| of.area.base()),
            numbers(rows, |of| of.fall.base()),
            down(0),
            down(1),
            texts(rows, |of| Some(of.toward.clone())),
            texts(rows, |of| Some(found.endings[of.ending].words())),
            choices(rows, |of| of.course as usize),
            choices(rows, |of| of.judged as usize),
            numbers(rows, |of| of.puddle.base()),
        ],
    )
}

fn catchments(found: &Drainage) -> Value {
    let rows: Vec<_> = (1..).zip(&found.catchments).collect();
    let ending = |place: usize| -> &Ending { &found.endings[place] };
    table(
        rows.len(),
        [
            counts(&rows, |row| row.0),
            choices(&rows, |(_, of)| ending(of.ending).end as usize),
            texts(&rows, |(_, of)| ending(of.ending).name.clone()),
            numbers(&rows, |(_, of)| of.area.base()),
            numbers(&rows, |(_, of)| of.longest.base()),
            numbers(&rows, |(_, of)| of.farthest.x.base()),
            numbers(&rows, |(_, of)| of.farthest.y.base()),
            some_numbers(&rows, |(_, of)| of.flow),
        ],
    )
}

/// A corner of a ring of a part: the number of the part, that of the ring, the place.
type RingCorner = (usize, usize, Corner);

fn ring_corners<Of>(parts: &[DrainedPart<Of>]) -> Vec<RingCorner> {
    let mut corners = Vec::new();
    for (part, of) in (1..).zip(parts) {
        for (ring, places) in (1..).zip(of.shape.rings()) {
            corners.extend(places.iter().map(|&at| (part, ring, at)));
        }
    }
    corners
}

fn catchment_corners(parts: &[DrainedPart<usize>]) -> Value {
    let rows = ring_corners(parts);
    table(
        rows.len(),
        [
            counts(&rows, |row| parts[row.0 - 1].of + 1),
            counts(&rows, |row| row.0),
            counts(&rows, |row| row.1),
            numbers(&rows, |row| row.2.x.base()),
            numbers(&rows, |row| row.2.y.base()),
        ],
    )
}

fn fault_list(found: &Drainage, parts: &[DrainedPart<(usize, Fault)>]) -> Value {
    let rows: Vec<_> = (1..).zip(parts).collect();
    table(
        rows.len(),
        [
            counts(&rows, |row| row.0),
            counts(&rows, |(_, part)| found.facets[part.of.0].facet + 1),
            choices(&rows, |(_, part)| part.of.1 as usize),
            numbers(&rows, |(_, part)| part.area.base()),
        ],
    )
}

fn fault_corners(parts: &[DrainedPart<(usize, Fault)>]) -> Value {
    let rows = ring_corners(parts);
    table(
        rows.len(),
        [
            counts(&rows, |row| row.0),
            counts(&rows, |row| row.1),
            numbers(&rows, |row| row.2.x.base()),
            numbers(&rows, |row| row.2.y.base()),
        ],
    )
}

fn paths(found: &Drainage) -> Value {
    let rows: Vec<_> = (1..).zip(&found.paths).collect();
    table(
        rows.len(),
        [
            counts(&rows, |row| row.0),
            choices(&rows, |(_, path)| path.start as usize),
            numbers(&rows, |(_, path)| path.length.base()),
            numbers(&rows, |(_, path)| path.drop.base()),
            some_numbers(&rows, |(_, path)| -> Option<Slope> { path.mean_fall() }),
            choices(&rows, |(_, path)| found.endings[path.ending].end as usize),
            texts(&rows, |(_, path)| found.endings[path.ending].name.clone()),
        ],
    )
}

fn path_places(found: &Drainage) -> Value {
    let numbered = (1..).zip(&found.paths);
    let rows: Vec<_> =
        numbered.flat_map(|(number, path)| path.places.iter().map(move |place| (number, place))).collect();
    table(
        rows.len(),
        [
            counts(&rows, |row| row.0),
            numbers(&rows, |(_, place)| place.at.x.base()),
            numbers(&rows, |(_, place)| place.at.y.base()),
            numbers(&rows, |(_, place)| place.elevation.base()),
        ],
    )
}
