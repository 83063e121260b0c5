//! The row of the old slab over a triangulated surface that was handed over.

use super::OUTLINE;
use super::slab::{BEYOND, INSTRUMENT, TEXTURE, answer, settings};
use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result};
use crate::operation::{Answer, Args, Call, Kind, Operation};
use crate::port;
use crate::survey::input::BuiltOutline;
use crate::survey::old_slab::{SURVEY, Shots, Survey};
use crate::survey::points::{TIN, Tin, in_job};

/// The old slab over the faces of a triangulated surface.
pub static SURVEY_FROM_TIN: Operation = Operation {
    name: "survey_from_tin",
    module: "survey",
    since: "0.1.0",
    meaning: "The surface of the old slab over a triangulated surface of a file, its faces kept as they are.",
    equation: "each face is plane; what lies between faces and their hull counts as unsurveyed",
    assumes: "the surface is in the axes and the datum of the job; faces meet at whole sides; they may go on beyond the outline",
    ports: &[
        port!(outline: Kind::Record(&OUTLINE), "the plan edge of the work"),
        port!(tin: Kind::Record(&TIN), "the triangulated surface"),
        INSTRUMENT,
        TEXTURE,
        BEYOND,
    ],
    results: &[port!(survey: Kind::Record(&SURVEY), "the surveyed old slab")],
    basis: &[BasisId::Geometry, BasisId::ReadingWords],
    example: r#"{"outline": {"sides": [{"length": "12 ft"}, {"length": "10 ft"}, {"length": "12 ft"}, {"length": "10 ft"}]},
        "tin": {"points": {"unit": "ft", "x": [0, 13, 13, 0], "y": [0, 0, 10, 10], "elevation": [99.20, 99.15, 99.25, 99.22]},
            "faces": [[1, 2, 3], [1, 3, 4]]}}"#,
    refusals: &[
        (
            r#"{"tin": {"points": {"unit": "ft", "x": [0, 13, 13, 0], "y": [0, 0, 10, 10], "elevation": [9, 9, 9, 9]},
            "faces": [[1, 2, 3], [1, 2, 4]]}}"#,
            Code::FacesOverlap,
        ),
        (
            r#"{"tin": {"points": {"unit": "m", "x": [0, 13, 5e6], "y": [0, 0, 10], "elevation": [9, 9, 9]}, "faces": [[1, 2, 3]]}}"#,
            Code::OutOfRange,
        ),
        (
            r#"{"tin": {"points": {"unit": "m", "x": [0, 13, 13], "y": [0, 0, 10], "elevation": [9, 9, 9]}, "faces": [[1, 2, 4]]}}"#,
            Code::OutOfRange,
        ),
        (
            r#"{"tin": {"points": {"unit": "m", "x": [0, 13, 13], "y": [0, 0, 10], "elevation": [9, 9, 9]}, "faces": [[1, 2, 2]]}}"#,
            Code::Contradiction,
        ),
        (
            r#"{"tin": {"points": {"unit": "m", "x": [0, 1, 2], "y": [0, 1, 2], "elevation": [9, 9, 9]}, "faces": [[1, 2, 3]]}}"#,
            Code::FaceFlat,
        ),
    ],
    call: Call::Record(from_tin),
};

fn from_tin(args: &Args<'_>) -> Result<Answer> {
    let outline: &BuiltOutline = args.required_record(0)?;
    let tin: &Tin = args.required_record(1)?;
    in_job(&tin.points, "tin.points")?;
    let shots = Shots::Faces(tin.clone());
    Survey::new(outline.outline.clone(), shots, settings(args, 2)?).map(answer).map_err(in_tin)
}

/// The list of triangles, or of points, under the name it has in the record.
fn in_tin(mut failure: Box<Failure>) -> Box<Failure> {
    match failure.path.as_str() {
        "triangles" => failure.path = "tin.faces".to_owned(),
        "" => failure.path = "tin.points".to_owned(),
        _ => {}
    }
    failure
}
