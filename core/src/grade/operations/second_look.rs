//! The row of the shots that fix the grade.

use super::finish::example;
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::grade::finish::{FINISH, Finish};
use crate::grade::second_look::{GoverningShot, second_look};
use crate::operation::{Answer, Args, Call, Column, Columns, Kind, Operation, TableType, Value};
use crate::quantity::{Range, Typed};
use crate::survey::Survey;
use crate::survey::old_slab::SURVEY;
use crate::{number, port};

static GOVERNING: TableType = TableType {
    name: "governing",
    meaning: "a shot with the least thickness over it, the thinnest first",
    columns: &[
        port!(shot: Kind::Text, "its name"),
        number!(x: length in foot | meter, Range::ANY, "distance from the left"),
        number!(y: length in foot | meter, Range::ANY, "distance from the front"),
        number!(thickness: length in inch | millimeter, Range::ANY, "the thickness over it"),
        number!(drop_without: length in inch | millimeter, Range::NOT_NEGATIVE, "how far the finish could drop without this shot"),
        number!(saved: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "the concrete that would save"),
        port!(said: Kind::Text, "why to look again"),
    ],
    least_rows: 0,
};

/// The shots that fix the grade.
pub static SECOND_LOOK: Operation = Operation {
    name: "second_look",
    module: "grade",
    since: "0.1.0",
    meaning: "The shots with the least thickness over them: they fix the grade and are looked at again, suspects or not.",
    equation: "thickness = finish - shot; drop without a shot = least thickness over the others - least thickness; saved = drop area",
    assumes: "the least thickness decides the height of the finish; shots within 1/8 in of it decide together",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab"),
        port!(finish: Kind::Record(&FINISH), "the new top surface"),
    ],
    results: &[
        port!(governing: Kind::Table(&GOVERNING), "the shots that fix the grade"),
        number!(drop_without_all: length in inch | millimeter, Range::NOT_NEGATIVE, "how far the finish could drop without all of them"),
    ],
    basis: &[BasisId::Geometry, BasisId::LeaveOneOut],
    example: example!(r#""finish": {"level": "99.7 ft"}"#),
    refusals: &[
        (r#"{"finish": {"levl": "99.7 ft"}}"#, Code::KeyUnknown),
        (r#"{"survey": 3}"#, Code::KindMismatch),
    ],
    call: Call::Record(look),
};

fn look(args: &Args<'_>) -> Result<Answer> {
    let survey: &Survey = args.required_record(0)?;
    let finish: &Finish = args.required_record(1)?;
    let look = second_look(survey, finish);
    let shots = &look.governing;
    let numbers = |of: &dyn Fn(&GoverningShot) -> f64| Column::Numbers(shots.iter().map(of).collect());
    let texts = |of: &dyn Fn(&GoverningShot) -> &str| {
        Column::Texts(shots.iter().map(|shot| Some(of(shot).to_owned())).collect())
    };
    let table = Columns {
        rows: shots.len(),
        columns: vec![
            texts(&|shot| &shot.name),
            numbers(&|shot| shot.at[0].base()),
            numbers(&|shot| shot.at[1].base()),
            numbers(&|shot| shot.thickness.base()),
            numbers(&|shot| shot.drop_without.base()),
            numbers(&|shot| shot.saved.base()),
            texts(&|shot| &shot.said),
        ],
    };
    Ok(Answer::of([Value::Table(table), Value::Number(look.drop_without_all.base())]))
}
