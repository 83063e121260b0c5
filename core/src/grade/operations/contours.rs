//! The rows of the contour lines: of the thickness, of the old slab, of the finish.

use super::columns::{counts, numbers, table};
use super::finish::example;
use super::levels::{HEIGHT_LEVELS, THICKNESS_LEVELS, levels};
use crate::basis::BasisId;
use crate::choice;
use crate::failure::{Code, Result};
use crate::grade::finish::{FINISH, Finish};
use crate::grade::thickness::DEPTH;
use crate::grade::thickness_shapes::{Contour, ELEVATION_LEVEL, Field, INTERVAL, Levels};
use crate::note::{Note, NoteCode};
use crate::operation::{Answer, Call, Choice, Column, Kind, Operation, Port, TableType};
use crate::quantity::{Elevation, Length, Range, Typed};
use crate::survey::Survey;
use crate::survey::old_slab::SURVEY;
use crate::{number, port};

choice! {
    /// Whether a line closes.
    pub enum LineForm {
        /// It starts and ends on the edge of the work.
        Open = "open",
        /// It ends where it starts.
        Closed = "closed",
    }
}

/// The columns of a table of lines but for the level.
macro_rules! lines {
    ($level:expr) => {
        TableType {
            name: "lines",
            meaning: "a line between what is below its level, on its left, and what is not; level by level, the longest first",
            columns: &[
                port!(line: Kind::Count(1, i64::MAX), "its number"),
                $level,
                port!(form: Kind::Choice(LineForm::WORDS), "whether it closes"),
                number!(length: length in foot | meter, Range::NOT_NEGATIVE, "its length"),
            ],
            least_rows: 0,
        }
    };
}

/// Lines of thickness.
static THICKNESS_LINES: TableType =
    lines!(number!(level: length in inch | millimeter, Range::ANY, "its level"));
/// Lines of height.
static HEIGHT_LINES: TableType = lines!(number!(level: elevation in foot | meter, Range::ANY, "its level"));

/// Places of lines.
static POINTS: TableType = TableType {
    name: "points",
    meaning: "a place of a line, in order; a closed line ends on the place it starts from",
    columns: &[
        port!(line: Kind::Count(1, i64::MAX), "the number of the line"),
        number!(x: length in foot | meter, Range::ANY, "from the left"),
        number!(y: length in foot | meter, Range::ANY, "from the front"),
    ],
    least_rows: 0,
};

const THICKNESS_RESULTS: &[Port] = &[
    port!(lines: Kind::Table(&THICKNESS_LINES), "the lines"),
    port!(points: Kind::Table(&POINTS), "their places"),
];
const HEIGHT_RESULTS: &[Port] = &[
    port!(lines: Kind::Table(&HEIGHT_LINES), "the lines"),
    port!(points: Kind::Table(&POINTS), "their places"),
];

/// Contour lines of the thickness.
pub static THICKNESS_CONTOURS: Operation = Operation {
    name: "thickness_contours",
    module: "grade",
    since: "0.1.0",
    meaning: "Lines of equal thickness.",
    equation: "finish - old slab = level, straight over each triangle",
    assumes: "old slab plane over each triangle, finish plane over each facet; where the thickness only touches a level there is no line",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab"),
        port!(finish: Kind::Record(&FINISH), "the new top surface"),
        port!(levels: Kind::Table(&THICKNESS_LEVELS), "the levels, rising"; optional),
        number!(interval: length in inch | millimeter, INTERVAL, "the step between levels, in place of a list"; optional),
        number!(counted_from: length in inch | millimeter, DEPTH, "a level that the steps are counted from";
            or "0 in" because "whole steps of the interval"),
    ],
    results: THICKNESS_RESULTS,
    basis: &[BasisId::Geometry],
    example: example!(r#""finish": {"level": "99.7 ft"}, "interval": "1/4 in""#),
    refusals: &[
        (r#"{"interval": null}"#, Code::KeyMissing),
        (r#"{"levels": {"level": ["5 in"]}}"#, Code::Contradiction),
        (r#"{"interval": null, "levels": {"level": ["5 in", "5 in"]}}"#, Code::LevelsUnsorted),
        (r#"{"interval": "0.00001 in"}"#, Code::TooManyLevels),
        (r#"{"interval": "-1/4 in"}"#, Code::OutOfRange),
    ],
    call: Call::Record(|args| {
        let (survey, finish): (&Survey, &Finish) = (args.required_record(0)?, args.required_record(1)?);
        answer(&Field::thickness(survey, finish)?, &levels::<Length>(args, 2, 3, 4)?, "thickness")
    }),
};

/// Contour lines of the old slab.
pub static SURVEY_CONTOURS: Operation = Operation {
    name: "survey_contours",
    module: "grade",
    since: "0.1.0",
    meaning: "Lines of equal height on the old slab.",
    equation: "old slab = level, straight over each triangle",
    assumes: "old slab plane over each triangle; where it only touches a level there is no line",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab"),
        port!(levels: Kind::Table(&HEIGHT_LEVELS), "the levels, rising"; optional),
        number!(interval: length in inch | millimeter, INTERVAL, "the step between levels, in place of a list"; optional),
        number!(counted_from: elevation in foot | meter, ELEVATION_LEVEL, "a level that the steps are counted from";
            or "0 ft" because "whole steps from the job datum"),
    ],
    results: HEIGHT_RESULTS,
    basis: &[BasisId::Geometry],
    example: example!(r#""interval": "1/4 in""#),
    refusals: &[
        (r#"{"interval": null}"#, Code::KeyMissing),
        (r#"{"interval": null, "levels": {"level": ["99.3 ft", "99.2 ft"]}}"#, Code::LevelsUnsorted),
        (r#"{"interval": null, "levels": {"level": ["99.3"]}}"#, Code::UnitMissing),
        (r#"{"interval": "0 in"}"#, Code::OutOfRange),
    ],
    call: Call::Record(|args| {
        let survey: &Survey = args.required_record(0)?;
        answer(&Field::old_slab(survey), &levels::<Elevation>(args, 1, 2, 3)?, "old slab")
    }),
};

/// Contour lines of the finish.
pub static FINISH_CONTOURS: Operation = Operation {
    name: "finish_contours",
    module: "grade",
    since: "0.1.0",
    meaning: "Lines of equal height on the finish, over the work.",
    equation: "finish = level, straight over each facet",
    assumes: "finish plane over each facet; where it only touches a level there is no line",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab, whose outline bounds the lines"),
        port!(finish: Kind::Record(&FINISH), "the new top surface"),
        port!(levels: Kind::Table(&HEIGHT_LEVELS), "the levels, rising"; optional),
        number!(interval: length in inch | millimeter, INTERVAL, "the step between levels, in place of a list"; optional),
        number!(counted_from: elevation in foot | meter, ELEVATION_LEVEL, "a level that the steps are counted from";
            or "0 ft" because "whole steps from the job datum"),
    ],
    results: HEIGHT_RESULTS,
    basis: &[BasisId::Geometry],
    example: example!(
        r#""finish": {"points": [{"x": "0 ft", "y": "0 ft", "elevation": "99.6 ft"},
            {"x": "20 ft", "y": "0 ft", "elevation": "99.6 ft"}, {"x": "0 ft", "y": "32 ft", "elevation": "99.9 ft"}]}, "interval": "1 in""#
    ),
    refusals: &[
        (r#"{"interval": null}"#, Code::KeyMissing),
        (r#"{"interval": null, "levels": {"level": ["99.3 ft", "99.3 ft"]}}"#, Code::LevelsUnsorted),
        (r#"{"interval": "0 in"}"#, Code::OutOfRange),
    ],
    call: Call::Record(|args| {
        let (survey, finish): (&Survey, &Finish) = (args.required_record(0)?, args.required_record(1)?);
        answer(&Field::finish(survey, finish)?, &levels::<Elevation>(args, 2, 3, 4)?, "finish")
    }),
};

fn answer<Q: Typed>(field: &Field<Q>, levels: &Levels<Q>, what: &str) -> Result<Answer> {
    let found = field.contours(levels)?;
    let lines: Vec<(usize, &Contour<Q>)> = (1..).zip(&found).collect();
    let form = |line: &Contour<Q>| if line.closed { LineForm::Closed } else { LineForm::Open } as usize;
    let forms = Column::Choices(found.iter().map(|line| Some(form(line))).collect());
    let points: Vec<_> =
        lines.iter().flat_map(|(line, of)| of.places.iter().map(move |place| (*line, place))).collect();
    let answer = Answer::of([
        table(
            lines.len(),
            [
                counts(&lines, |line| line.0),
                numbers(&lines, |(_, line)| line.level.base()),
                forms,
                numbers(&lines, |(_, line)| line.length.base()),
            ],
        ),
        table(
            points.len(),
            [
                counts(&points, |point| point.0),
                numbers(&points, |(_, place)| place.x.base()),
                numbers(&points, |(_, place)| place.y.base()),
            ],
        ),
    ]);
    Ok(answer.with_notes(missed(&found, levels, what)))
}

/// Notes how many of the levels asked for have no line.
fn missed<Q: Typed>(lines: &[Contour<Q>], levels: &Levels<Q>, what: &str) -> Option<Note> {
    let Levels::Listed(levels) = levels else { return None };
    let has_none = |level: &&Q| lines.iter().all(|line| line.level.base() != level.base());
    let missed = levels.iter().filter(has_none).count();
    (missed > 0).then(|| {
        let text = format!("the {what} does not pass through {missed} of {} levels", levels.len());
        Note::new(NoteCode::LevelMissed, text)
    })
}
