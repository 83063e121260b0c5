//! The row of the whole job.

use super::Job;
use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result};
use crate::number;
use crate::operation::{Answer, Args, Call, Kind, Operation, Value};
use crate::port;
use crate::quantity::{Range, Typed, volume};

/// A report from a job.
pub static REPORT: Operation = Operation {
    name: "report",
    module: "job",
    since: "0.1.0",
    meaning: "The report of a whole job, as text for the site and as JSON for a program.",
    equation: "survey, finish, thickness, order, one after the other",
    assumes: "what the report lists as taken",
    ports: &[port!(job: Kind::Text, "the job description, TOML or JSON")],
    results: &[
        number!(ordered: volume in cubic_yard | cubic_meter, Range::POSITIVE, "concrete to order"),
        number!(net: volume in cubic_yard | cubic_meter, Range::ANY, "volume of the floor, net"),
        number!(least: length in inch | millimeter, Range::ANY, "least thickness between the shots"),
        port!(text: Kind::Text, "the report for the site"),
        port!(json: Kind::Text, "the report as JSON"),
    ],
    basis: &[BasisId::Levelling, BasisId::Geometry],
    example: include_str!("example.json"),
    refusals: &[
        (r#"{"job": "schema_version = 1"}"#, Code::KeyMissing),
        (r#"{"job": "not a job"}"#, Code::Syntax),
        (r#"{"job": ""}"#, Code::KeyMissing),
    ],
    call: Call::Record(report),
};

fn report(args: &Args<'_>) -> Result<Answer> {
    let report = Job::report_text(args.required_text(0)?).map_err(|failure| failure.under("job"))?;
    let json = serde_json::to_string_pretty(&report).map_err(|error| {
        Failure::new(Code::Internal, "report").written(error.to_string()).remedy("report this fault")
    })?;
    let yards = |measure: &super::Measure| Value::Number((volume::unit::cubic_meter.to_base)(measure.si));
    let least =
        crate::quantity::Length::new::<crate::quantity::length::millimeter>(report.thickness.least.si);
    Ok(Answer::of([
        yards(&report.order.ordered),
        yards(&report.thickness.net),
        Value::Number(least.base()),
        Value::Text(report.to_text()),
        Value::Text(json),
    ]))
}
