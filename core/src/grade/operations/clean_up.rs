//! The rows that grind and fill the old slab.

use super::finish::example;
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::grade::finish::{FINISH, Finish, LEAST};
use crate::note::Note;
use crate::operation::{Answer, Args, Call, Kind, Operation, Port, Value};
use crate::quantity::{Length, Range, Typed};
use crate::survey::Survey;
use crate::survey::clean_up::{Change, Done, Target};
use crate::survey::input::BuiltOutline;
use crate::survey::low_spots::{DRAINS, EDGES, GivenEdges, SHALLOWEST};
use crate::survey::old_slab::SURVEY;
use crate::survey::operations::OUTLINE;
use crate::survey::outline::Outline;
use crate::{number, port};

const SLAB: Port = port!(survey: Kind::Record(&SURVEY), "the old slab");
const ZONE: Port = port!(zone: Kind::Record(&OUTLINE), "only within this outline"; optional);

/// The results of a change.
const RESULTS: &[Port] = &[
    port!(survey: Kind::Record(&SURVEY), "the old slab after it"),
    number!(area: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area ground or filled"),
    number!(volume: volume in cubic_foot | cubic_meter, Range::NOT_NEGATIVE, "volume taken off or filled"),
    number!(deepest: length in inch | millimeter, Range::NOT_NEGATIVE, "deepest cut or fill; none where nothing is changed"; optional),
    number!(deepest_x: length in foot | meter, Range::ANY, "where it is, from the left"; optional),
    number!(deepest_y: length in foot | meter, Range::ANY, "where it is, from the front"; optional),
];

/// Grinding high spots.
pub static GRIND_HIGH_SPOTS: Operation = Operation {
    name: "grind_high_spots",
    module: "grade",
    since: "0.1.0",
    meaning: "The old slab after all that stands above a plane was ground off, with area, volume and deepest cut.",
    equation: "new slab = least of (old slab, finish - below); volume = integral of (old slab - new slab)",
    assumes: "grinding makes silica dust: wet or with extraction, and a mask; where a zone ends a step is left",
    ports: &[
        SLAB,
        port!(finish: Kind::Record(&FINISH), "the surface it is ground to, or a finish above it"),
        number!(below: length in inch | millimeter, LEAST, "it is ground to so much under that surface";
            or "0 in" because "it is ground to the surface itself"),
        ZONE,
    ],
    results: RESULTS,
    basis: &[BasisId::Geometry],
    example: example!(r#""finish": {"level": "99.55 ft"}, "below": "3 in""#),
    refusals: &[
        (r#"{"below": "-3 in"}"#, Code::OutOfRange),
        (r#"{"finish": {"level": "99.55"}}"#, Code::UnitMissing),
        (
            r#"{"zone": {"corners": [{"x": "50 ft", "y": "0 ft"}, {"x": "60 ft", "y": "0 ft"}, {"x": "60 ft", "y": "9 ft"}]}}"#,
            Code::RegionOutside,
        ),
    ],
    call: Call::Record(|args| changed(args, Done::Grind(targets(args)?))),
};

/// Filling low spots.
pub static FILL_LOW_SPOTS: Operation = Operation {
    name: "fill_low_spots",
    module: "grade",
    since: "0.1.0",
    meaning: "The old slab after all that lies below a plane was filled, with area, volume and greatest depth of fill.",
    equation: "new slab = greatest of (old slab, finish - below); volume = integral of (new slab - old slab)",
    assumes: "the fill is struck off to the plane; where a zone ends a step is left",
    ports: &[
        SLAB,
        port!(finish: Kind::Record(&FINISH), "the surface it is filled to, or a finish above it"),
        number!(below: length in inch | millimeter, LEAST, "it is filled to so much under that surface";
            or "0 in" because "it is filled to the surface itself"),
        ZONE,
    ],
    results: RESULTS,
    basis: &[BasisId::Geometry],
    example: example!(r#""finish": {"level": "99.55 ft"}, "below": "4 in""#),
    refusals: &[
        (r#"{"below": "4 psi"}"#, Code::UnitWrong),
        (r#"{"finish": 3}"#, Code::KindMismatch),
        (
            r#"{"zone": {"corners": [{"x": "50 ft", "y": "0 ft"}, {"x": "60 ft", "y": "0 ft"}, {"x": "60 ft", "y": "9 ft"}]}}"#,
            Code::RegionOutside,
        ),
    ],
    call: Call::Record(|args| changed(args, Done::Fill(targets(args)?))),
};

/// Filling ponds.
pub static FILL_PONDS: Operation = Operation {
    name: "fill_ponds",
    module: "grade",
    since: "0.1.0",
    meaning: "The old slab after its ponds were filled to their spill levels, with area, volume and greatest depth of fill.",
    equation: "new slab = level of the water where water stands",
    assumes: "outer edges are open and holes are walled where nothing is stated; the fill is struck off level",
    ports: &[
        SLAB,
        port!(edges: Kind::Table(&EDGES), "edges that are walled, open or drained"; optional),
        port!(drains: Kind::Table(&DRAINS), "drains in the floor"; optional),
        number!(shallowest: length in inch | millimeter, SHALLOWEST, "ponds shallower than this are left";
            or "1/16 in" because "a rod hardly tells less"),
        ZONE,
    ],
    results: RESULTS,
    basis: &[BasisId::Geometry],
    example: example!(
        r#""edges": [{"edge": "front", "state": "walled"}, {"edge": "right", "state": "walled"},
        {"edge": "left", "state": "walled"}]"#
    ),
    refusals: &[
        (r#"{"edges": [{"edge": "door", "state": "walled"}]}"#, Code::EdgeUnknown),
        (r#"{"drains": [{"x": "-9 ft", "y": "5 ft"}]}"#, Code::DrainOutside),
        (
            r#"{"zone": {"corners": [{"x": "50 ft", "y": "0 ft"}, {"x": "60 ft", "y": "0 ft"}, {"x": "60 ft", "y": "9 ft"}]}}"#,
            Code::RegionOutside,
        ),
    ],
    call: Call::Record(fill_ponds),
};

fn fill_ponds(args: &Args<'_>) -> Result<Answer> {
    let given = GivenEdges::of(args.table(1)?, args.table(2)?);
    let done = Done::FillPonds { edges: given.edges.clone(), shallowest: args.required(3)? };
    changed_within(args, done, 4).map_err(|failure| given.told(failure))
}

/// The planes of the finish, so much lower.
fn targets(args: &Args<'_>) -> Result<Vec<Target>> {
    let (survey, finish): (&Survey, &Finish) = (args.required_record(0)?, args.required_record(1)?);
    let below: Length = args.required(2)?;
    finish.refuse_holes(survey.outline().region())?;
    let lower = finish.moved_up(Length::from_base(-below.base()));
    let everywhere = lower.plane().map(|plane| Ok(Target { plane: *plane, region: None }));
    let facets = lower.facets().iter().map(|facet| {
        let region = Outline::around(facet.region())?;
        Ok(Target { plane: *facet.plane(), region: Some(region) })
    });
    everywhere.into_iter().chain(facets).collect()
}

fn changed(args: &Args<'_>, done: Done) -> Result<Answer> {
    changed_within(args, done, 3)
}

fn changed_within(args: &Args<'_>, done: Done, zone: usize) -> Result<Answer> {
    let survey: &Survey = args.required_record(0)?;
    let zone = args.record::<BuiltOutline>(zone)?.map(|built| built.outline.clone());
    let after = survey.after(Change { done, zone })?;
    let notes: Vec<Note> = after.notes().iter().skip(survey.notes().len()).cloned().collect();
    let number = |number: Option<f64>| number.map_or(Value::Absent, Value::Number);
    let (mut area, mut volume, mut deepest) = (0.0, 0.0, None);
    if let Some(changed) = after.changes().last() {
        (area, volume, deepest) = (changed.area.base(), changed.volume.base(), changed.deepest);
    }
    let answer = Answer::of([
        Value::record(after),
        Value::Number(area),
        Value::Number(volume),
        number(deepest.map(|(depth, _)| depth.base())),
        number(deepest.map(|(_, at)| at.x.base())),
        number(deepest.map(|(_, at)| at.y.base())),
    ]);
    Ok(answer.with_notes(notes))
}
