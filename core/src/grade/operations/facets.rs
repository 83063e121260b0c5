//! The rows that make a finish of given facets.

use super::finish::{RESULT, made};
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::grade::finish::{FacetByCorners, FacetPlace, Finish, FinishCorner, HEIGHT};
use crate::operation::{Answer, Args, Call, Columns, Kind, Operation, TableType};
use crate::quantity::{Elevation, Length, Range, Typed};
use crate::{number, port};

static CORNERS: TableType = TableType {
    name: "corners",
    meaning: "a corner that facets share",
    columns: &[
        port!(name: Kind::Text, "its name, by which facets call it; else they use its number from 1 on"; optional),
        number!(x: length in foot | meter, Range::ANY, "distance from the left"),
        number!(y: length in foot | meter, Range::ANY, "distance from the front"),
        number!(elevation: elevation in foot | meter, HEIGHT, "height of the finish there"),
    ],
    least_rows: 3,
};

static FACETS: TableType = TableType {
    name: "facets",
    meaning: "a facet over some of the corners",
    columns: &[
        port!(corners: Kind::Text, "names or numbers of its corners in order round it, commas between"),
        port!(name: Kind::Text, "its name"; optional),
        port!(falls_to: Kind::Text, "what it falls to: an edge, a valley, a drain"; optional),
    ],
    least_rows: 1,
};

/// Facets over shared corners.
pub static FINISH_FROM_FACETS: Operation = Operation {
    name: "finish_from_facets",
    module: "grade",
    since: "0.1.0",
    meaning: "A finish of several facets over corners with heights, which they share, so that they meet at valleys and ridges.",
    equation: "z = a + b x + c y through the corners of each facet",
    assumes: "the corners of a facet are in one plane within 1e-6 ft; a warped one is split into triangles",
    ports: &[
        port!(corners: Kind::Table(&CORNERS), "the corners"),
        port!(facets: Kind::Table(&FACETS), "the facets"),
    ],
    results: RESULT,
    basis: &[BasisId::Geometry],
    example: r#"{"corners": {"name": ["A", "B", "C", "D", "drain"], "x": ["0 ft", "20 ft", "20 ft", "0 ft", "8 ft"],
        "y": ["0 ft", "0 ft", "16 ft", "16 ft", "6 ft"], "elevation": ["100 ft", "100 ft", "100 ft", "100 ft", "99.9 ft"]},
        "facets": {"name": ["front", "right", "back", "left"], "corners": ["A, B, drain", "B, C, drain", "C, D, drain", "D, A, drain"],
        "falls_to": ["drain", "drain", "drain", "drain"]}}"#,
    refusals: &[
        (
            r#"{"facets": {"corners": ["A, B, C, D"], "name": ["all"]}, "corners": {"name": ["A", "B", "C", "D"],
            "x": ["0 ft", "20 ft", "20 ft", "0 ft"], "y": ["0 ft", "0 ft", "16 ft", "16 ft"],
            "elevation": ["100 ft", "100 ft", "100 ft", "100.1 ft"]}}"#,
            Code::FacetWarped,
        ),
        (r#"{"facets": {"corners": ["A, B, drain", "A, B, C"]}}"#, Code::FacetsOverlap),
        (r#"{"facets": {"corners": ["A, B, E"]}}"#, Code::CornerUnknown),
        (r#"{"facets": {"corners": ["A, B"]}}"#, Code::FacetShape),
        (r#"{"facets": []}"#, Code::EmptyList),
    ],
    call: Call::Record(from_facets),
};

fn from_facets(args: &Args<'_>) -> Result<Answer> {
    let (corners, facets) = (args.required_table(0)?, args.required_table(1)?);
    let text = |table: &Columns, column: usize, row: usize| table.text(column, row).map(str::to_owned);
    let corner = |row: usize| FinishCorner {
        name: text(corners, 0, row).filter(|name| !name.trim().is_empty()),
        x: length(corners, 1, row),
        y: length(corners, 2, row),
        elevation: Elevation::from_base(corners.number(3, row).unwrap_or(f64::NAN)),
    };
    let facet = |row: usize| FacetByCorners {
        corners: facets.text(0, row).unwrap_or_default().split(',').map(str::to_owned).collect(),
        name: text(facets, 1, row),
        falls_to: text(facets, 2, row),
    };
    let corners: Vec<FinishCorner> = (0..corners.rows).map(corner).collect();
    let facets: Vec<FacetByCorners> = (0..facets.rows).map(facet).collect();
    Finish::from_corners(&corners, &facets).map(|finish| made(finish, None))
}

fn length(table: &Columns, column: usize, row: usize) -> Length {
    Length::from_base(table.number(column, row).unwrap_or(f64::NAN))
}

static PLACES: TableType = TableType {
    name: "corners",
    meaning: "a corner of one facet, in order round it",
    columns: &[
        port!(facet: Kind::Text, "the facet it is of"),
        number!(x: length in foot | meter, Range::ANY, "distance from the left"),
        number!(y: length in foot | meter, Range::ANY, "distance from the front"),
        number!(elevation: elevation in foot | meter, HEIGHT, "height of the finish there, at three corners of each facet or more"; optional),
    ],
    least_rows: 3,
};

/// Facets each with a plane of its own.
pub static FINISH_FROM_PLANES: Operation = Operation {
    name: "finish_from_planes",
    module: "grade",
    since: "0.1.0",
    meaning: "A finish of several facets, each with the plane through three heights of its own, checked to meet.",
    equation: "z = a + b x + c y through the heights of each facet",
    assumes: "facets that share an edge have one height along it",
    ports: &[port!(corners: Kind::Table(&PLACES), "the corners of all facets")],
    results: RESULT,
    basis: &[BasisId::Geometry],
    example: r#"{"corners": {"facet": ["left", "left", "left", "left", "right", "right", "right", "right"],
        "x": ["0 ft", "10 ft", "10 ft", "0 ft", "10 ft", "20 ft", "20 ft", "10 ft"],
        "y": ["0 ft", "0 ft", "16 ft", "16 ft", "0 ft", "0 ft", "16 ft", "16 ft"],
        "elevation": ["100 ft", "99.9 ft", "99.9 ft", null, "99.9 ft", "100.1 ft", null, "99.9 ft"]}}"#,
    refusals: &[
        (
            r#"{"corners": {"facet": ["left", "left", "left", "right", "right", "right"],
            "x": ["0 ft", "10 ft", "10 ft", "10 ft", "20 ft", "10 ft"], "y": ["0 ft", "0 ft", "16 ft", "0 ft", "0 ft", "16 ft"],
            "elevation": ["100 ft", "99.9 ft", "99.9 ft", "99.8 ft", "100 ft", "99.9 ft"]}}"#,
            Code::FacetsApart,
        ),
        (
            r#"{"corners": {"facet": ["left", "left", "left"], "x": ["0 ft", "10 ft", "10 ft"], "y": ["0 ft", "0 ft", "16 ft"],
            "elevation": ["100 ft", "99.9 ft", null]}}"#,
            Code::FacetShape,
        ),
        (
            r#"{"corners": {"facet": ["left", "left", " "], "x": ["0 ft", "10 ft", "10 ft"], "y": ["0 ft", "0 ft", "16 ft"],
            "elevation": ["100 ft", "99.9 ft", "99.9 ft"]}}"#,
            Code::KeyMissing,
        ),
    ],
    call: Call::Record(from_planes),
};

fn from_planes(args: &Args<'_>) -> Result<Answer> {
    let table = args.required_table(0)?;
    let corner = |row: usize| FacetPlace {
        facet: table.text(0, row).unwrap_or_default().to_owned(),
        x: length(table, 1, row),
        y: length(table, 2, row),
        elevation: table.number(3, row).map(Elevation::from_base),
    };
    let corners: Vec<FacetPlace> = (0..table.rows).map(corner).collect();
    Finish::from_planes(&corners).map(|finish| made(finish, None))
}
