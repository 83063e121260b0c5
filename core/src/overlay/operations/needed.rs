//! The row of the thickness that loads need.

use super::load_table::{LOADS, forms, loads};
use super::stress::TRANSFER;
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::note::NoteCode;
use crate::operation::{Answer, Args, Call, Choice, Kind, Operation, Value};
use crate::overlay::strength::Slab;
use crate::overlay::strength::concrete::{MODULUS, RUPTURE};
use crate::overlay::strength::needed::{BRACKET, needed};
use crate::overlay::strength::safety::{FACTOR, allowable};
use crate::overlay::strength::slab::{POISSON, SUBGRADE};
use crate::overlay::strength::westergaard::{CornerForm, EdgeForm};
use crate::overlay::thickness::SLAB;
use crate::quantity::{Length, Range, Typed, inches};
use crate::{number, port};

/// The thickness that loads need.
pub static THICKNESS_NEEDED: Operation = Operation {
    name: "thickness_needed",
    module: "overlay",
    since: "0.1.0",
    meaning: "The smallest thickness of a single slab on ground whose governing stress under all loads is allowed.",
    equation: "smallest thickness with governing stress <= rupture / safety, by halving, 0.01 mm at most above the root",
    assumes: "as slab_stress; one safety factor for all loads; nothing is carried by an old slab: for that see overlay_required",
    ports: &[
        port!(loads: Kind::Table(&LOADS), "the loads"),
        number!(rupture: pressure in psi | megapascal, RUPTURE, "modulus of rupture of the concrete"; zero rare),
        number!(safety: ratio in one | one, FACTOR, "safety factor"; or "2 ratio" because "usual for wheels, posts and jacks"),
        number!(modulus: pressure in psi | megapascal, MODULUS, "modulus of elasticity of the concrete";
            or "3,600,000 psi" because "normal-weight concrete of 4,000 psi"),
        number!(poisson: ratio in one | one, POISSON, "Poisson's ratio of the concrete"; or "0.15 ratio" because "usual for concrete"),
        number!(subgrade: subgrade_reaction in pci | megapascal_per_meter, SUBGRADE, "subgrade reaction k";
            or "100 pci" because "medium by heel and bar"),
        port!(edge_form: Kind::Choice(EdgeForm::WORDS), "contact at an edge"; or "circle" because "a wheel that touches the edge from inside"),
        port!(corner_form: Kind::Choice(CornerForm::WORDS), "formula in a corner"; or "Westergaard 1926" because "its stress is the nearest to a plate by finite elements"),
        number!(transfer: share in percent | percent, TRANSFER, "share of edge stress that dowels or interlock take off, 25 % by many manuals (confirm)";
            or "0 %" because "a free edge"),
        number!(least: length in inch | millimeter, BRACKET, "the search begins here"; or "2 in" because "no slab on ground is thinner"),
        number!(greatest: length in inch | millimeter, SLAB, "and ends here"; or "24 in" because "thicker is no floor any more"),
    ],
    results: &[
        number!(thickness: length in inch | millimeter, Range::POSITIVE, "smallest thickness"),
        number!(stress: pressure in psi | megapascal, Range::ANY, "governing stress there"),
        number!(allowable: pressure in psi | megapascal, Range::POSITIVE, "stress allowed"),
        port!(governs: Kind::Count(1, 1000), "the load that governs, the first being 1"),
    ],
    basis: &[
        BasisId::Westergaard1926,
        BasisId::Westergaard1948,
        BasisId::CornerIoannides,
        BasisId::SeveralLoads,
        BasisId::SafetyFactors,
        BasisId::LoadTransfer,
        BasisId::SubgradeHeelAndBar,
    ],
    example: r#"{"loads": [
            {"name": "left jack", "load": "3000 lb", "pressure": "148 psi", "x": "4 ft", "y": "6 ft", "position": "interior"},
            {"name": "right jack", "load": "3000 lb", "pressure": "148 psi", "x": "9 ft", "y": "6 ft", "position": "edge"}],
        "rupture": "550 psi"}"#,
    refusals: &[
        (r#"{"loads": []}"#, Code::EmptyList),
        (r#"{"greatest": "3 in"}"#, Code::NoThickness),
        (r#"{"least": "10 in", "greatest": "6 in"}"#, Code::OutOfRange),
        (r#"{"safety": "0 ratio"}"#, Code::OutOfRange),
        (
            r#"{"loads": [{"load": "3000 lb", "radius": "3 in", "pressure": "50 psi", "x": "1 ft", "y": "1 ft", "position": "edge"}]}"#,
            Code::ContactUnclear,
        ),
    ],
    call: Call::Record(thickness_needed),
};

fn thickness_needed(args: &Args<'_>) -> Result<Answer> {
    let loads = loads(args.required_table(0)?)?;
    let allowed = allowable(args.required(1)?, args.required(2)?)?;
    let greatest: Length = args.required(10)?;
    let slab = Slab::new(greatest, args.required(3)?, args.required(4)?, args.required(5)?).map_err(
        |mut failure| {
            if failure.path == "thickness" {
                failure.path = "greatest".to_owned();
            }
            failure
        },
    )?;
    let found = needed(&slab, &loads, &forms(args, 6)?, allowed, [args.required(9)?, greatest])?;
    let answer = Answer::of([
        Value::Number(found.thickness.base()),
        Value::Number(found.stress.base()),
        Value::Number(allowed.base()),
        Value::Count(found.governing as i64 + 1),
    ]);
    let enough = format!("{} carry it: the practical least thickness governs", inches(found.thickness, 8));
    let mut notes = vec![(NoteCode::ConfirmLocally, BasisId::SafetyFactors.line())];
    if found.at_least {
        notes.push((NoteCode::ThinnestEnough, enough));
    }
    Ok(notes.into_iter().fold(answer, |answer, (code, text)| answer.with_note(code, text)))
}
