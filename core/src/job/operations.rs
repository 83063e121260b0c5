//! The rows of the whole job.

use super::file::{JOB, JobFile};
use super::{Measure, NewFloor};
use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result};
use crate::operation::{Answer, Args, Call, Kind, Operation, Value};
use crate::quantity::{Length, Range, Typed, Volume, length, volume};
use crate::survey::Survey;
use crate::survey::old_slab::SURVEY;
use crate::{number, port};

/// A job from a text.
pub static JOB_FROM_TEXT: Operation = Operation {
    name: "job_from_text",
    module: "job",
    since: "0.1.0",
    meaning: "Reads a job description from TOML or JSON.",
    equation: "none",
    assumes: "a text whose first sign is a brace is JSON, any other TOML",
    ports: &[port!(text: Kind::Text, "the job description")],
    results: &[port!(job: Kind::Record(&JOB), "the job")],
    basis: &[],
    example: include_str!("example_text.json"),
    refusals: &[
        (r#"{"text": "schema_version = 1"}"#, Code::KeyMissing),
        (r#"{"text": "not a job"}"#, Code::Syntax),
        (r#"{"text": ""}"#, Code::KeyMissing),
        (r#"{"text": "schema_version = 1\n[jobb]\nname = \"shed\""}"#, Code::KeyUnknown),
    ],
    call: Call::Record(|args| {
        // A path of the file stands as it is: that is where the reader looks.
        let job = JobFile::read(args.required_text(0)?);
        let job =
            job.map_err(|failure| if failure.path.is_empty() { failure.under("text") } else { failure })?;
        Ok(Answer::of([Value::record(job)]))
    }),
};

/// A report from a job.
pub static REPORT: Operation = Operation {
    name: "report",
    module: "job",
    since: "0.1.0",
    meaning: "The report of a whole job: its main figures, as text for the site, and as JSON for a program.",
    equation: "survey, finish, thickness and order, one after the other",
    assumes: "what the report lists as taken; over an old slab that spans free no figure of a new floor is told",
    ports: &[
        port!(job: Kind::Record(&JOB), "the job"),
        port!(survey: Kind::Record(&SURVEY), "the old slab, for a job that does not describe one itself"; optional),
    ],
    results: &[
        number!(ordered: volume in cubic_yard | cubic_meter, Range::POSITIVE, "concrete to order"; optional),
        number!(figured: volume in cubic_yard | cubic_meter, Range::POSITIVE, "net volume of all parts and allowances"; optional),
        port!(loads: Kind::Count(1, 10_000_000), "truck loads"; optional),
        number!(net: volume in cubic_yard | cubic_meter, Range::ANY, "volume of the floor, net"; optional),
        number!(least: length in inch | millimeter, Range::ANY, "least thickness between the shots"; optional),
        number!(greatest: length in inch | millimeter, Range::ANY, "greatest thickness"; optional),
        number!(mean: length in inch | millimeter, Range::ANY, "mean thickness"; optional),
        port!(text: Kind::Text, "the report for the site"),
        port!(json: Kind::Text, "the report as JSON"),
    ],
    basis: &[BasisId::Levelling, BasisId::Geometry],
    example: concat!(r#"{"job": "#, include_str!("example.json"), "}"),
    refusals: &[
        (r#"{"job": {"schema_version": 1}}"#, Code::KeyMissing),
        (r#"{"job": 3}"#, Code::KindMismatch),
        (r#"{"survey": {"outline": {"sides": []}}}"#, Code::EmptyList),
    ],
    call: Call::Record(report),
};

fn report(args: &Args<'_>) -> Result<Answer> {
    let job: &JobFile = args.required_record(0)?;
    let report = match args.record::<Survey>(1)? {
        Some(survey) => job.report_on(survey)?,
        None => job.report()?,
    };
    let json = serde_json::to_string_pretty(&report).map_err(|error| {
        Failure::new(Code::Internal, "report").written(error.to_string()).remedy("report this fault")
    })?;
    let [ordered, figured, loads, net, least, greatest, mean] =
        report.new_floor.as_ref().map_or_else(Default::default, figures);
    let (text, json) = (Value::Text(report.to_text()), Value::Text(json));
    Ok(Answer::of([ordered, figured, loads, net, least, greatest, mean, text, json]))
}

/// The main figures of a new floor.
fn figures(floor: &NewFloor) -> [Value; 7] {
    let body = |measure: &Measure| Value::Number(Volume::new::<volume::cubic_meter>(measure.si).base());
    let depth = |measure: &Measure| Value::Number(Length::new::<length::millimeter>(measure.si).base());
    let (order, thickness) = (&floor.order, &floor.thickness);
    [
        body(&order.ordered),
        body(&order.figured),
        Value::Count(i64::from(order.trucks)),
        body(&thickness.net),
        depth(&thickness.least),
        depth(&thickness.greatest),
        depth(&thickness.mean),
    ]
}
