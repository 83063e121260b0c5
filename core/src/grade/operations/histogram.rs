//! The row of the histogram of thickness.

use super::columns::{numbers, some_numbers, table};
use super::finish::example;
use super::levels::{THICKNESS_LEVELS, levels};
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::grade::finish::{FINISH, Finish};
use crate::grade::thickness::DEPTH;
use crate::grade::thickness_shapes::{Field, INTERVAL, SHARE};
use crate::operation::{Answer, Args, Call, Kind, Operation, TableType, Value};
use crate::quantity::{Length, Range, Share, Typed};
use crate::survey::Survey;
use crate::survey::old_slab::SURVEY;
use crate::{number, port};

/// Shares asked about.
static SHARES: TableType = TableType {
    name: "shares",
    meaning: "a share of the area",
    columns: &[number!(share: share in percent | percent, SHARE, "share of the area")],
    least_rows: 1,
};

/// Bins.
static BINS: TableType = TableType {
    name: "bins",
    meaning: "a bin of thickness",
    columns: &[
        number!(lower: length in inch | millimeter, Range::ANY, "its lower edge, itself in the bin; none below all edges"; optional),
        number!(upper: length in inch | millimeter, Range::ANY, "its upper edge, itself in the next bin; none above all edges"; optional),
        number!(area: area in square_foot | square_meter, Range::ANY, "area as thick"),
        number!(share: share in percent | percent, Range::NOT_NEGATIVE, "its share of the whole area"),
        number!(volume: volume in cubic_yard | cubic_meter, Range::ANY, "volume over it between old slab and finish, high spots taken off"),
        number!(thinner: share in percent | percent, Range::NOT_NEGATIVE, "share of the whole area thinner than the upper edge"),
    ],
    least_rows: 0,
};

/// Depths of shares.
static QUANTILES: TableType = TableType {
    name: "quantiles",
    meaning: "a share of the area and the depth below which it lies",
    columns: &[
        number!(share: share in percent | percent, SHARE, "share of the area"),
        number!(thickness: length in inch | millimeter, Range::ANY, "so much of the area is thinner than this"),
    ],
    least_rows: 0,
};

/// The histogram of thickness.
pub static THICKNESS_HISTOGRAM: Operation = Operation {
    name: "thickness_histogram",
    module: "grade",
    since: "0.1.0",
    meaning: "How much of the work is how thick: area and volume by bins of thickness, and the depths below which shares of the area lie.",
    equation: "area of a bin = area thinner than its upper edge - area thinner than its lower edge, each exact",
    assumes: "old slab plane over each triangle, finish plane over each facet",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab"),
        port!(finish: Kind::Record(&FINISH), "the new top surface"),
        port!(levels: Kind::Table(&THICKNESS_LEVELS), "the edges of the bins, rising"; optional),
        number!(interval: length in inch | millimeter, INTERVAL, "the width of a bin, in place of a list of edges"; optional),
        number!(counted_from: length in inch | millimeter, DEPTH, "an edge that the widths are counted from";
            or "0 in" because "whole steps of the width"),
        port!(shares: Kind::Table(&SHARES), "shares of the area whose depths are told";
            or "[{\"share\": \"0 %\"}, {\"share\": \"25 %\"}, {\"share\": \"50 %\"}, {\"share\": \"75 %\"}, {\"share\": \"100 %\"}]"
            because "least, quarters and greatest"),
    ],
    results: &[
        number!(area: area in square_foot | square_meter, Range::NOT_NEGATIVE, "the whole area"),
        number!(volume: volume in cubic_yard | cubic_meter, Range::ANY, "the whole volume, high spots taken off"),
        port!(bins: Kind::Table(&BINS), "the bins"),
        port!(quantiles: Kind::Table(&QUANTILES), "the depths of the shares"),
    ],
    basis: &[BasisId::Geometry],
    example: example!(r#""finish": {"level": "99.7 ft"}, "interval": "1/4 in""#),
    refusals: &[
        (r#"{"interval": null}"#, Code::KeyMissing),
        (r#"{"levels": {"level": ["5 in"]}}"#, Code::Contradiction),
        (r#"{"interval": null, "levels": {"level": ["5 in", "4 in"]}}"#, Code::LevelsUnsorted),
        (r#"{"interval": "0.00001 in"}"#, Code::TooManyLevels),
        (r#"{"shares": {"share": ["101 %"]}}"#, Code::OutOfRange),
        (r#"{"shares": {"share": ["-1 %"]}}"#, Code::Negative),
    ],
    call: Call::Record(histogram),
};

fn histogram(args: &Args<'_>) -> Result<Answer> {
    let (survey, finish): (&Survey, &Finish) = (args.required_record(0)?, args.required_record(1)?);
    let field = Field::thickness(survey, finish)?;
    let found = field.histogram(&levels::<Length>(args, 2, 3, 4)?)?;
    let shares: Vec<Share> =
        args.required_table(5)?.numbers(0).iter().map(|&share| Share::from_base(share)).collect();
    let quantiles = field.quantiles(&shares)?;
    let bins = &found.bins;
    Ok(Answer::of([
        Value::Number(found.area.base()),
        Value::Number(found.volume.base()),
        table(
            bins.len(),
            [
                some_numbers(bins, |bin| bin.from),
                some_numbers(bins, |bin| bin.to),
                numbers(bins, |bin| bin.area.base()),
                numbers(bins, |bin| bin.share.base()),
                numbers(bins, |bin| bin.volume.base()),
                numbers(bins, |bin| bin.thinner.base()),
            ],
        ),
        table(
            quantiles.len(),
            [
                numbers(&quantiles, |quantile| quantile.share.base()),
                numbers(&quantiles, |quantile| quantile.thickness.base()),
            ],
        ),
    ]))
}
