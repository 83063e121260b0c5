//! The rows of the preparation: surface profile and pull-off test.

use super::minimum::word;
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::note::{Note, NoteCode};
use crate::operation::scalar::Word;
use crate::operation::{Answer, Args, Call, Choice, Column, Columns, Kind, Operation, TableType, Value};
use crate::overlay::preparation::{ASKED, Broke, CORE, Covering, PULL, PullOff, Way, pull_off, ways};
use crate::quantity::{Range, Typed};
use crate::{number, port};

/// Ways to a profile.
static WAYS: TableType = TableType {
    name: "ways",
    meaning: "a way to prepare the surface",
    columns: &[
        port!(profile: Kind::Count(1, 10), "profile it makes"),
        port!(way: Kind::Text, "what is done"),
        port!(dust: Kind::Choice(<bool as Choice>::WORDS), "whether it makes silica dust"),
    ],
    least_rows: 0,
};

/// The surface profile.
pub static SURFACE_PROFILE: Operation = Operation {
    name: "surface_profile",
    module: "overlay",
    since: "0.1.0",
    meaning: "How rough the old surface must be for what goes on it, and the ways to it.",
    equation: "by table: sealer 1 to 2, thin film 1 to 3, high-build coating 3 to 5, self-levelling 4 to 6, polymer overlay 5 to 9, concrete overlay 5 to 10, bonded topping 7 to 9",
    assumes: "sound, clean concrete; profiles 1 smooth to 10 rough; before a bonded overlay the surface is wetted the day before, damp and without standing water",
    ports: &[port!(covering: Kind::Choice(Covering::WORDS), "what goes on the old surface")],
    results: &[
        port!(least: Kind::Count(1, 10), "smoothest profile"),
        port!(greatest: Kind::Count(1, 10), "roughest profile"),
        port!(rests_on: Kind::Text, "its basis, by name"),
        port!(ways: Kind::Table(&WAYS), "the ways to these profiles"),
    ],
    basis: &[BasisId::SurfaceProfile, BasisId::SurfaceProfileRecalled],
    example: r#"{"covering": "bonded topping"}"#,
    refusals: &[(r#"{"covering": "carpet"}"#, Code::WordUnknown)],
    call: Call::Record(surface_profile),
};

fn surface_profile(args: &Args<'_>) -> Result<Answer> {
    let covering: Covering = word(args, 0, "covering")?;
    let profile = covering.profile();
    let ways: Vec<&Way> = ways(profile).collect();
    let columns = vec![
        Column::Counts(ways.iter().map(|way| Some(way.profile)).collect()),
        Column::Texts(ways.iter().map(|way| Some(way.way.to_owned())).collect()),
        Column::Choices(ways.iter().map(|way| Some(usize::from(way.dust))).collect()),
    ];
    let dust = ways.iter().any(|way| way.dust);
    let mut notes = Vec::new();
    if dust {
        notes.push(Note::new(NoteCode::Silica, crate::caution::Caution::Silica.text()));
    }
    if profile.basis.from_memory() {
        notes.push(Note::new(NoteCode::ConfirmLocally, profile.basis.line()));
    }
    Ok(Answer::of([
        Value::Count(profile.least),
        Value::Count(profile.greatest),
        Value::Text(profile.basis.name().to_owned()),
        Value::Table(Columns { rows: ways.len(), columns }),
    ])
    .with_notes(notes))
}

/// The pull-off test.
pub static PULL_OFF: Operation = Operation {
    name: "pull_off",
    module: "overlay",
    since: "0.1.0",
    meaning: "The pull-off strength of a core, held against what the project's specification asks.",
    equation: "strength = 4 load / (pi diameter^2)",
    assumes: "the core goes at least 1/2 in into the old concrete; no standard gives an acceptance number: it is the project's",
    ports: &[
        number!(load: force in pound_force | kilonewton, PULL, "load at which it broke"; zero rare),
        number!(diameter: length in inch | millimeter, CORE, "diameter of the core, usually 2 in"; zero rare),
        port!(broke: Kind::Choice(Broke::WORDS), "where it broke"),
        number!(asked: pressure in psi | megapascal, ASKED, "strength that is asked for"; or "200 psi" because "often asked; the project's specification decides"),
    ],
    results: &[
        number!(strength: pressure in psi | megapascal, Range::POSITIVE, "pull-off strength"),
        port!(verdict: Kind::Choice(PullOff::WORDS), "what the test says"),
    ],
    basis: &[BasisId::PullOffStress, BasisId::PullOffAsked],
    example: r#"{"load": "800 lb", "diameter": "2 in", "broke": "old concrete"}"#,
    refusals: &[
        (r#"{"load": "0 lb"}"#, Code::OutOfRange),
        (r#"{"diameter": "1/4 in"}"#, Code::OutOfRange),
        (r#"{"asked": "-1 psi"}"#, Code::OutOfRange),
    ],
    call: Call::Record(pulled),
};

fn pulled(args: &Args<'_>) -> Result<Answer> {
    let broke = Word(word(args, 2, "broke")?);
    let found = pull_off(args.required(0)?, args.required(1)?, broke, args.required(3)?)?;
    let answer = Answer::of([Value::Number(found.strength.base()), Value::Choice(found.verdict as usize)]);
    Ok(answer.with_notes(found.note.map(|code| Note::new(code, code.meaning()))))
}
