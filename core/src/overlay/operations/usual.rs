//! The row of what usually stands or rolls on a floor.

use super::minimum::word;
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::note::{Note, NoteCode};
use crate::operation::{Answer, Args, Call, Choice, Kind, Operation, Value};
use crate::overlay::strength::contact::{LOAD, PRESSURE, radius};
use crate::overlay::strength::loads::Thing;
use crate::quantity::{Range, Typed};
use crate::{number, port};

/// The usual load of a thing.
pub static USUAL_LOAD: Operation = Operation {
    name: "usual_load",
    module: "overlay",
    since: "0.1.0",
    meaning: "What a thing of everyday puts on the floor, as alike loads: to be shown and changed. An anchored lift has no numbers here, but what to ask.",
    equation: "design_load = load x margin; radius = sqrt(design_load / (pi pressure))",
    assumes: "ours, from memory, but for the jacks: weigh or read the plate where it matters",
    ports: &[port!(thing: Kind::Choice(Thing::WORDS), "what stands or rolls there")],
    results: &[
        number!(load: force in pound_force | kilonewton, LOAD, "each load; none where only the maker can say"; optional),
        number!(margin: ratio in one | one, Range::POSITIVE, "what the load is multiplied by"),
        number!(design_load: force in pound_force | kilonewton, LOAD, "the load with its margin; none without a load"; optional),
        number!(pressure: pressure in psi | kilopascal, PRESSURE, "contact pressure; none without a load"; optional),
        number!(radius: length in inch | millimeter, Range::POSITIVE, "contact radius under the load with its margin; none without a load"; optional),
        port!(count: Kind::Count(1, 100), "how many stand near one another"),
        number!(spacing: length in inch | millimeter, Range::POSITIVE, "middle to middle"),
        port!(said: Kind::Text, "what was taken, or what to ask"),
        port!(rests_on: Kind::Text, "its basis, by name"),
    ],
    basis: &[BasisId::UsualLoads, BasisId::JackLoad, BasisId::AnchoredLift, BasisId::ContactCircle],
    example: r#"{"thing": "pickup"}"#,
    refusals: &[(r#"{"thing": "elephant"}"#, Code::WordUnknown)],
    call: Call::Record(usual_load),
};

fn usual_load(args: &Args<'_>) -> Result<Answer> {
    let thing: Thing = word(args, 0, "thing")?;
    let usual = thing.usual();
    let design = usual.design_load();
    let contact = match (design, usual.pressure) {
        (Some(load), Some(pressure)) => Some(radius(load, pressure)?),
        _ => None,
    };
    let note = match usual.load {
        None => Note::new(NoteCode::AskTheMaker, usual.said),
        Some(_) => Note::new(NoteCode::Assumed, usual.said),
    };
    let number = |number: Option<f64>| number.map_or(Value::Absent, Value::Number);
    let answer = Answer::of([
        number(usual.load.map(Typed::base)),
        Value::Number(usual.margin),
        number(design.map(Typed::base)),
        number(usual.pressure.map(Typed::base)),
        number(contact.map(Typed::base)),
        Value::Count(i64::from(usual.count)),
        Value::Number(usual.spacing.base()),
        Value::Text(usual.said.to_owned()),
        Value::Text(usual.basis.name().to_owned()),
    ]);
    Ok(answer.with_notes([note]))
}
