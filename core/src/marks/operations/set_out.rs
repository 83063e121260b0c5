//! The row of the marks.

use super::asked::{FORMS as FORMS_ASKED, POINTS, RAILS as RAILS_ASKED, SETUPS, asked};
use super::tables::{self, DIAGONALS, EDGES, FORMS, LINES, Of, PADS, RAILS, RIPS, RODS, STATIONS};
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::grade::finish::{FINISH, Finish, HEIGHT};
use crate::marks::{INSET, Marks, Material, OFFSET, PAD_SPACING, ROD_LENGTH, SCREED, SPACING, STEP};
use crate::operation::{Answer, Args, Call, Kind, Operation, Value};
use crate::quantity::{Range, Typed};
use crate::survey::Survey;
use crate::survey::old_slab::SURVEY;
use crate::{assumption, number, port};

/// Every mark of a floor.
pub static MARKS: Operation = Operation {
    name: "marks",
    module: "marks",
    since: "0.1.0",
    meaning: "Every mark of a floor in the order of walking: stations at the edges, wet pads, forms, rails, with rod, distance below the line, and height over the old slab as the check.",
    equation: "rod = sight - finish; below = line - finish; over = finish - old slab; marked = the nearest whole step, half a step going to the higher floor",
    assumes: "the walk goes once round the outer ring with the work on the left, then round each hole; between neighbouring marks the floor is straight; old slab plane over each triangle",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab"),
        port!(finish: Kind::Record(&FINISH), "the new top surface"),
        number!(line: elevation in foot | meter, HEIGHT, "elevation of the level line struck round the walls; without it no distances below it"; optional),
        number!(sight: elevation in foot | meter, HEIGHT, "elevation of the line of sight now; without it and without setups that of the survey's first set-up"; optional),
        port!(setups: Kind::Table(&SETUPS), "set-ups that marks are read from, instead of sight; every mark is told from each"; optional),
        number!(rod_length: length in foot | meter, ROD_LENGTH, "how long the rod is"; zero rare, or assumption::ROD_LENGTH),
        number!(round: length in inch | millimeter, STEP, "rods and distances below the line are marked in whole steps of this"; zero rare, or assumption::ROUNDING),
        number!(spacing: length in foot | meter, SPACING, "greatest distance between stations at an edge or a rail"; zero rare, or assumption::STATION_SPACING),
        port!(points: Kind::Table(&POINTS), "places on edges that must have a mark; up to 6 in off they are taken to the edge"; optional),
        number!(screed_length: length in foot | meter, SCREED, "length of the screed that rides on the pads"; zero rare, or assumption::SCREED),
        number!(pad_spacing: length in foot | meter, PAD_SPACING, "greatest distance between pads; without it the screed less 2 ft"; zero rare, optional),
        number!(pad_inset: length in foot | meter, INSET, "how far pads stay off the edges"; or assumption::PAD_INSET),
        port!(forms: Kind::Table(&FORMS_ASKED), "edges with a form; the others are walls with an isolation strip"; optional),
        port!(rails: Kind::Table(&RAILS_ASKED), "screed rails"; optional),
        number!(rail_offset: length in inch | millimeter, OFFSET, "how far the tops of the rails stand above the floor"; or assumption::RAIL_OFFSET),
        port!(start_edge: Kind::Text, "the edge that the walk starts with; the first where left out"; optional),
    ],
    results: &[
        port!(marks: Kind::Count(0, i64::MAX), "how many marks there are"),
        number!(sight: elevation in foot | meter, Range::ANY, "elevation of the first line of sight"; optional),
        number!(rod_on_line: length in foot | meter, Range::ANY, "the rod on the reference line from there"; optional),
        number!(greatest_departure: length in inch | millimeter, Range::NOT_NEGATIVE, "how far marks leave the floor by rounding, at most"),
        port!(stations: Kind::Table(&STATIONS), "the marks at the edges"),
        port!(pads: Kind::Table(&PADS), "the wet pads"),
        port!(forms: Kind::Table(&FORMS), "the tops of the forms"),
        port!(rails: Kind::Table(&RAILS), "the tops of the rails"),
        port!(rods: Kind::Table(&RODS), "every mark from every set-up"),
        port!(edges: Kind::Table(&EDGES), "the edges"),
        port!(rips: Kind::Table(&RIPS), "what strips and forms are ripped to"),
        port!(lines: Kind::Table(&LINES), "the lines along which planes meet"),
        port!(diagonals: Kind::Table(&DIAGONALS), "lengths from corner to corner"),
        port!(csv: Kind::Text, "all marks as a CSV file"),
        port!(text: Kind::Text, "the list for the site"),
    ],
    basis: &[
        BasisId::SettingOut,
        BasisId::OldSlabCheck,
        BasisId::PadSpacing,
        BasisId::Levelling,
        BasisId::Geometry,
    ],
    example: r#"{"survey": {"outline": {"sides": [{"name": "front", "length": "20 ft"}, {"name": "right", "length": "32 ft"},
            {"name": "back", "length": "20 ft"}, {"name": "left", "length": "32 ft"}]},
            "grid": {"columns": ["1 ft", "10 ft", "19 ft"], "rows": ["1 ft", "16 ft", "31 ft"],
                "elevations": ["99.20 ft", "99.22 ft", "99.18 ft", "99.25 ft", "99.26 ft", "99.24 ft", "99.35 ft", "99.33 ft",
                "99.36 ft"]}},
        "finish": {"points": [{"x": "1 ft", "y": "1 ft", "elevation": "99.53 ft"}, {"x": "19 ft", "y": "1 ft", "elevation": "99.53 ft"},
            {"x": "1 ft", "y": "31 ft", "elevation": "99.84 ft"}]},
        "line": "103 ft", "setups": {"name": ["nail, left jamb", "nail, back"], "benchmark": ["100 ft", "100.5 ft"], "rod": ["4' 2 1/2\"", "3' 8\""]},
        "points": {"name": ["left jamb", "right jamb"], "x": ["4 ft", "16 ft"], "y": ["1 in", "1 in"]}, "forms": {"edge": ["front"]},
        "rails": {"name": ["middle", "middle"], "x": ["10 ft", "10 ft"], "y": ["1 ft", "31 ft"]}, "rail_offset": "1/2 in"}"#,
    refusals: &[
        (r#"{"points": {"name": ["post"], "x": ["4 ft"], "y": ["3 ft"]}}"#, Code::PointOffWall),
        (
            r#"{"rails": {"name": ["a", "a"], "x": ["10 ft", "10 ft"], "y": ["1 ft", "40 ft"]}}"#,
            Code::RailOutside,
        ),
        (
            r#"{"rails": {"name": ["a", "b"], "x": ["10 ft", "10 ft"], "y": ["1 ft", "31 ft"]}}"#,
            Code::LineTooShort,
        ),
        (r#"{"screed_length": "8 ft", "pad_spacing": "7 ft"}"#, Code::PadsTooFar),
        (r#"{"start_edge": "frnt"}"#, Code::EdgeUnknown),
        (r#"{"forms": {"edge": ["lawn"]}}"#, Code::EdgeUnknown),
        (r#"{"sight": "104 ft"}"#, Code::Contradiction),
        (r#"{"setups": {"benchmark": ["100 ft"]}}"#, Code::KeyMissing),
        (
            r#"{"setups": {"sight": ["104 ft"], "benchmark": ["100 ft"], "rod": ["4 ft"]}}"#,
            Code::Contradiction,
        ),
        (r#"{"spacing": "1 in"}"#, Code::OutOfRange),
        (r#"{"round": "9 in"}"#, Code::OutOfRange),
        (
            r#"{"finish": {"corners": [{"name": "a", "x": "0 ft", "y": "0 ft", "elevation": "99.5 ft"},
            {"name": "b", "x": "20 ft", "y": "0 ft", "elevation": "99.5 ft"}, {"name": "c", "x": "20 ft", "y": "9 ft", "elevation": "99.5 ft"}],
            "facets": [{"corners": ["a", "b", "c"]}]}}"#,
            Code::FacetsLeaveHole,
        ),
    ],
    call: Call::Record(marks),
};

fn marks(args: &Args<'_>) -> Result<Answer> {
    let (survey, finish): (&Survey, &Finish) = (args.required_record(0)?, args.required_record(1)?);
    let marks = Marks::set_out(survey, finish, &asked(args)?)?;
    let number = |base: Option<f64>| base.map_or(Value::Absent, Value::Number);
    let stations =
        marks.edges.iter().flat_map(|edge| edge.marks.iter().map(|mark| (edge.name.as_str(), mark)));
    let stations: Vec<Of<'_>> = stations.collect();
    let forms = marks.edges.iter().filter(|edge| edge.material == Material::Form);
    let forms: Vec<Of<'_>> =
        forms.flat_map(|edge| edge.with_end().map(|mark| (edge.name.as_str(), mark))).collect();
    let levels = &marks.levels;
    let answer = Answer::of([
        Value::Count(marks.all().count() as i64),
        number(levels.sights.first().map(|sight| sight.height.base())),
        number(marks.rod_on_line().map(Typed::base)),
        Value::Number(marks.greatest_departure().base()),
        tables::edge_marks(&stations, levels),
        tables::pads(&marks),
        tables::edge_marks(&forms, levels),
        tables::rails(&marks),
        tables::rods(&marks),
        tables::edges(&marks.edges),
        tables::rips(&marks.edges),
        tables::lines(&marks.lines),
        tables::diagonals(&marks.diagonals),
        Value::Text(marks.csv()),
        Value::Text(marks.text()),
    ]);
    Ok(answer.with_notes(marks.notes()))
}
