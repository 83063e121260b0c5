//! The row of the bands of thickness.

use super::columns::{RingCorner, counts, numbers, ring_corners, some_numbers, table};
use super::finish::example;
use super::levels::{THICKNESS_LEVELS, levels};
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::grade::finish::{FINISH, Finish};
use crate::grade::thickness::DEPTH;
use crate::grade::thickness_shapes::{Band, BandPart, Field, INTERVAL};
use crate::operation::{Answer, Args, Call, Kind, Operation, TableType, Value};
use crate::quantity::{Length, Range, Typed};
use crate::survey::Survey;
use crate::survey::old_slab::SURVEY;
use crate::{number, port};

/// Bands.
static BANDS: TableType = TableType {
    name: "bands",
    meaning: "what lies between two successive levels",
    columns: &[
        port!(band: Kind::Count(1, i64::MAX), "its number"),
        number!(lower: length in inch | millimeter, Range::ANY, "its lower level, itself in the band; none below all levels"; optional),
        number!(upper: length in inch | millimeter, Range::ANY, "its upper level, itself in the next band; none above all levels"; optional),
        number!(area: area in square_foot | square_meter, Range::ANY, "its area"),
        number!(share: share in percent | percent, Range::NOT_NEGATIVE, "its share of the whole area"),
        number!(volume: volume in cubic_yard | cubic_meter, Range::ANY, "volume over it between old slab and finish, high spots taken off"),
    ],
    least_rows: 0,
};

/// Connected parts of bands.
static PARTS: TableType = TableType {
    name: "parts",
    meaning: "a connected part of a band, the largest of each first",
    columns: &[
        port!(band: Kind::Count(1, i64::MAX), "the number of the band"),
        port!(part: Kind::Count(1, i64::MAX), "its number in the band"),
        number!(area: area in square_foot | square_meter, Range::ANY, "its area"),
        number!(volume: volume in cubic_yard | cubic_meter, Range::ANY, "volume over it"),
    ],
    least_rows: 0,
};

/// Corners of the rings of parts of bands.
static CORNERS: TableType = TableType {
    name: "corners",
    meaning: "a corner of a ring, in order; the last leads back to the first",
    columns: &[
        port!(band: Kind::Count(1, i64::MAX), "the number of the band"),
        port!(part: Kind::Count(1, i64::MAX), "the number of the part in the band"),
        port!(ring: Kind::Count(1, i64::MAX), "1 is the outer ring, counter-clockwise; others are holes, clockwise"),
        number!(x: length in foot | meter, Range::ANY, "from the left"),
        number!(y: length in foot | meter, Range::ANY, "from the front"),
    ],
    least_rows: 0,
};

/// Bands of thickness.
pub static THICKNESS_BANDS: Operation = Operation {
    name: "thickness_bands",
    module: "grade",
    since: "0.1.0",
    meaning: "The work in bands of thickness between successive levels, as polygons with area and volume.",
    equation: "band = {lower <= finish - old slab < upper}; areas and volumes of all bands are those of the whole",
    assumes: "old slab plane over each triangle, finish plane over each facet",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab"),
        port!(finish: Kind::Record(&FINISH), "the new top surface"),
        port!(levels: Kind::Table(&THICKNESS_LEVELS), "the levels, rising"; optional),
        number!(interval: length in inch | millimeter, INTERVAL, "the step between levels, in place of a list"; optional),
        number!(counted_from: length in inch | millimeter, DEPTH, "a level that the steps are counted from";
            or "0 in" because "whole steps of the interval"),
    ],
    results: &[
        port!(bands: Kind::Table(&BANDS), "the bands"),
        port!(parts: Kind::Table(&PARTS), "their connected parts"),
        port!(corners: Kind::Table(&CORNERS), "the corners of their polygons"),
    ],
    basis: &[BasisId::Geometry],
    example: example!(r#""finish": {"level": "99.7 ft"}, "interval": "1/2 in""#),
    refusals: &[
        (r#"{"interval": null}"#, Code::KeyMissing),
        (r#"{"levels": {"level": ["5 in"]}}"#, Code::Contradiction),
        (r#"{"interval": null, "levels": {"level": ["5 in", "4 in"]}}"#, Code::LevelsUnsorted),
        (r#"{"interval": null, "levels": []}"#, Code::EmptyList),
        (r#"{"interval": "0.00001 in"}"#, Code::TooManyLevels),
        (r#"{"interval": "0 in"}"#, Code::OutOfRange),
    ],
    call: Call::Record(bands),
};

fn bands(args: &Args<'_>) -> Result<Answer> {
    let (survey, finish): (&Survey, &Finish) = (args.required_record(0)?, args.required_record(1)?);
    let levels = levels::<Length>(args, 2, 3, 4)?;
    let found = Field::thickness(survey, finish)?.bands(&levels)?;
    let bands: Vec<(usize, &Band<Length>)> = (1..).zip(&found).collect();
    let parts: Vec<(usize, usize, &BandPart)> = bands
        .iter()
        .flat_map(|&(band, of)| (1..).zip(&of.parts).map(move |(part, of)| (band, part, of)))
        .collect();
    let corners: Vec<RingCorner> = bands
        .iter()
        .flat_map(|(band, of)| ring_corners(*band, of.parts.iter().map(|part| &part.shape)))
        .collect();
    let bands: Value = table(
        bands.len(),
        [
            counts(&bands, |band| band.0),
            some_numbers(&bands, |(_, band)| band.from),
            some_numbers(&bands, |(_, band)| band.to),
            numbers(&bands, |(_, band)| band.area.base()),
            numbers(&bands, |(_, band)| band.share.base()),
            numbers(&bands, |(_, band)| band.volume.base()),
        ],
    );
    let parts = table(
        parts.len(),
        [
            counts(&parts, |part| part.0),
            counts(&parts, |part| part.1),
            numbers(&parts, |part| part.2.area.base()),
            numbers(&parts, |part| part.2.volume.base()),
        ],
    );
    let corners = table(
        corners.len(),
        [
            counts(&corners, |corner| corner.band),
            counts(&corners, |corner| corner.part),
            counts(&corners, |corner| corner.ring),
            numbers(&corners, |corner| corner.at.x.base()),
            numbers(&corners, |corner| corner.at.y.base()),
        ],
    );
    Ok(Answer::of([bands, parts, corners]))
}
