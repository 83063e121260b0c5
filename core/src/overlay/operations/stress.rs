//! The row of stress under several loads.

use super::load_table::{LOADS, forms, loads};
use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result};
use crate::note::{Note, NoteCode};
use crate::operation::scalar::Word;
use crate::operation::{Answer, Args, Call, Choice, Column, Columns, Kind, Operation, TableType, Value};
use crate::overlay::Bond;
use crate::overlay::strength::Slab;
use crate::overlay::strength::concrete::MODULUS;
use crate::overlay::strength::curling::SIDE;
use crate::overlay::strength::several::{Felt, Load, Position, several};
use crate::overlay::strength::slab::{POISSON, SUBGRADE};
use crate::overlay::strength::two_layers::{TwoLayers, two_layers};
use crate::overlay::strength::westergaard::{CornerForm, EdgeForm};
use crate::overlay::thickness::SLAB;
use crate::quantity::{Length, Pressure, Range, Share, Typed, feet_and_inches};
use crate::{number, port};

/// The share that a joint may carry across: up to a half.
pub(super) const TRANSFER: Range = Range::closed(0.0, 0.5);

/// What each load feels.
static FELT: TableType = TableType {
    name: "felt",
    meaning: "what stands under a load, in the order of the loads",
    columns: &[
        port!(name: Kind::Text, "which load"; optional),
        number!(alone: pressure in psi | megapascal, Range::ANY, "stress from it by itself"),
        number!(together: pressure in psi | megapascal, Range::ANY, "stress with all the others"),
        number!(governing: pressure in psi | megapascal, Range::ANY, "larger of both: loads come and go"),
        number!(deflection: length in inch | millimeter, Range::ANY, "settlement with all the others"),
        number!(overlay_bottom: pressure in psi | megapascal, Range::ANY, "governing stress at the bottom of the overlay, tension positive; none without an old slab"; optional),
        number!(old_bottom: pressure in psi | megapascal, Range::ANY, "old slab, governing stress at its bottom; none without an old slab"; optional),
    ],
    least_rows: 0,
};

/// Stress under several loads.
pub static SLAB_STRESS: Operation = Operation {
    name: "slab_stress",
    module: "overlay",
    since: "0.1.0",
    meaning: "Stress and deflection under each of several loads on a slab on ground, each with what the others add; over an old slab what each layer feels.",
    equation: "together = sum over loads of (Westergaard's stress of the load at this position) x (influence at the distance / influence at none); moments in the middle are added with their directions, at edges and corners the larger one is taken",
    assumes: "a large slab that lies on its subgrade everywhere; a load by pressure stands on a circle; a semicircle has the circle's area; with an old slab both layers are one plate of the overlay's concrete; several loads and two layers: ours, no source",
    ports: &[
        port!(loads: Kind::Table(&LOADS), "the loads"),
        number!(thickness: length in inch | millimeter, SLAB, "thickness of the slab, or of the overlay where an old slab is given"; zero rare),
        number!(modulus: pressure in psi | megapascal, MODULUS, "modulus of elasticity of the concrete";
            or "3,600,000 psi" because "normal-weight concrete of 4,000 psi"),
        number!(poisson: ratio in one | one, POISSON, "Poisson's ratio of the concrete"; or "0.15 ratio" because "usual for concrete"),
        number!(subgrade: subgrade_reaction in pci | megapascal_per_meter, SUBGRADE, "subgrade reaction k under all concrete";
            or "100 pci" because "medium by heel and bar"),
        port!(edge_form: Kind::Choice(EdgeForm::WORDS), "contact at an edge"; or "circle" because "a wheel that touches the edge from inside"),
        port!(corner_form: Kind::Choice(CornerForm::WORDS), "formula in a corner"; or "Westergaard 1926" because "its stress is the nearest to a plate by finite elements"),
        number!(transfer: share in percent | percent, TRANSFER, "share of edge stress that dowels or interlock take off, 25 % by many manuals (confirm)";
            or "0 %" because "a free edge"),
        number!(length: length in foot | meter, SIDE, "length of the slab between joints, to see whether it is large enough"; zero rare, optional),
        number!(width: length in foot | meter, SIDE, "its width, likewise"; zero rare, optional),
        number!(old_slab: length in inch | millimeter, SLAB, "old slab under the overlay, its thickness"; zero rare, optional),
        number!(old_modulus: pressure in psi | megapascal, MODULUS, "old slab, its modulus of elasticity"; zero rare, optional),
        port!(bond: Kind::Choice(Bond::WORDS), "how the overlay holds to it"; optional),
    ],
    results: &[
        number!(stiffness: length in inch | millimeter, Range::POSITIVE, "radius of relative stiffness"),
        number!(equivalent: length in inch | millimeter, Range::POSITIVE, "thickness of the plate that was figured"),
        number!(greatest: pressure in psi | megapascal, Range::ANY, "greatest governing stress of that plate"),
        port!(governs: Kind::Count(1, 1000), "under which load, the first being 1"),
        port!(felt: Kind::Table(&FELT), "what each load feels"),
    ],
    basis: &[
        BasisId::Westergaard1926,
        BasisId::Westergaard1948,
        BasisId::CornerIoannides,
        BasisId::PlateOnSprings,
        BasisId::SeveralLoads,
        BasisId::TwoLayers,
        BasisId::LoadTransfer,
        BasisId::SlabSizes,
        BasisId::SubgradeHeelAndBar,
    ],
    example: r#"{"loads": [
            {"name": "left jack", "load": "3000 lb", "pressure": "148 psi", "x": "4 ft", "y": "6 ft", "position": "interior"},
            {"name": "right jack", "load": "3000 lb", "pressure": "148 psi", "x": "9 ft", "y": "6 ft", "position": "interior"}],
        "thickness": "4 in", "length": "12 ft", "width": "10 ft"}"#,
    refusals: &[
        (r#"{"loads": []}"#, Code::EmptyList),
        (
            r#"{"loads": [{"load": "3000 lb", "x": "1 ft", "y": "1 ft", "position": "edge"}]}"#,
            Code::ContactUnclear,
        ),
        (
            r#"{"loads": [{"load": "3000 lb", "radius": "60 in", "x": "1 ft", "y": "1 ft", "position": "edge"}]}"#,
            Code::ContactTooWide,
        ),
        (r#"{"transfer": "80 %"}"#, Code::OutOfRange),
        (r#"{"bond": "bonded"}"#, Code::KeyMissing),
        (r#"{"subgrade": "1 pci"}"#, Code::OutOfRange),
    ],
    call: Call::Record(slab_stress),
};

fn slab_stress(args: &Args<'_>) -> Result<Answer> {
    let table = args.required_table(0)?;
    let loads = loads(table)?;
    let layers = layers(args)?;
    let thickness = layers.map_or_else(|| args.required(1), |layers| Ok(layers.equivalent))?;
    let slab = Slab::new(thickness, args.required(2)?, args.required(3)?, args.required(4)?)?;
    let forms = forms(args, 5)?;
    let felt = several(&slab, &loads, &forms)?;
    let (governs, greatest) = felt.iter().enumerate().fold((0, f64::NEG_INFINITY), |most, (place, felt)| {
        let stress = felt.governing().base();
        if stress > most.1 { (place, stress) } else { most }
    });
    let answer = Answer::of([
        Value::Number(slab.stiffness().base()),
        Value::Number(slab.thickness().base()),
        Value::Number(greatest),
        Value::Count(governs as i64 + 1),
        told(table, &felt, layers.as_ref()),
    ]);
    let transfer: Share = args.required(7)?;
    Ok(answer.with_notes(notes(args, &slab, &loads, transfer)?))
}

/// The two layers, where an old slab is given.
fn layers(args: &Args<'_>) -> Result<Option<TwoLayers>> {
    let old: Option<Length> = args.quantity(10)?;
    let modulus: Option<Pressure> = args.quantity(11)?;
    let bond: Option<Bond> = args.choice(12)?;
    match (old, modulus, bond) {
        (None, None, None) => Ok(None),
        (Some(old), Some(modulus), Some(bond)) => {
            two_layers(Word(bond), args.required(1)?, args.required(2)?, old, modulus).map(Some).map_err(
                |mut failure| {
                    // The ports of this row, in place of the function's.
                    failure.path = match failure.path.as_str() {
                        "overlay" => "thickness".to_owned(),
                        "overlay_modulus" => "modulus".to_owned(),
                        _ => failure.path,
                    };
                    failure
                },
            )
        }
        (old, modulus, _) => {
            let missing = match (old, modulus) {
                (None, _) => "old_slab",
                (_, None) => "old_modulus",
                _ => "bond",
            };
            Err(Failure::new(Code::KeyMissing, missing)
                .written("nothing")
                .allowed("old_slab, old_modulus and bond together, or none of them")
                .remedy(format!("give {missing} as well")))
        }
    }
}

fn told(table: &Columns, felt: &[Felt], layers: Option<&TwoLayers>) -> Value {
    let numbers = |number: &dyn Fn(&Felt) -> f64| Column::Numbers(felt.iter().map(number).collect());
    let of_layer = |share: Option<f64>| match share {
        Some(share) => numbers(&|felt| felt.governing().base() * share),
        None => Column::Absent,
    };
    let names = match table.columns.first() {
        Some(column @ Column::Texts(_)) => column.clone(),
        _ => Column::Absent,
    };
    let columns = vec![
        names,
        numbers(&|felt| felt.alone.base()),
        numbers(&|felt| felt.together.base()),
        numbers(&|felt| felt.governing().base()),
        numbers(&|felt| felt.deflection.base()),
        of_layer(layers.map(|layers| layers.overlay_bottom.base())),
        of_layer(layers.map(|layers| layers.old_bottom.base())),
    ];
    Value::Table(Columns { rows: felt.len(), columns })
}

fn notes(args: &Args<'_>, slab: &Slab, loads: &[Load], transfer: Share) -> Result<Vec<Note>> {
    let mut notes = Vec::new();
    let sides = [args.quantity::<Length>(8)?, args.quantity::<Length>(9)?];
    let across = sides.into_iter().flatten().map(Typed::base).fold(f64::INFINITY, f64::min);
    let mut seen = Vec::new();
    for load in loads {
        if !seen.contains(&load.position) {
            seen.push(load.position);
            notes.extend(too_small(slab, load.position, across));
        }
    }
    if transfer.base() > 0.0 && seen.contains(&Position::Edge) {
        notes.push(Note::new(NoteCode::ConfirmLocally, BasisId::LoadTransfer.line()));
    }
    Ok(notes)
}

/// Told where the slab is smaller than the equations are stated for.
fn too_small(slab: &Slab, position: Position, across: f64) -> Option<Note> {
    let (for_stress, for_deflection) = position.least_size();
    let said = |radii: f64| feet_and_inches(Length::from_base(radii * slab.stiffness().base()), 1);
    let (what, radii) = if across < for_stress * slab.stiffness().base() {
        ("stress and deflection", for_stress)
    } else if across < for_deflection * slab.stiffness().base() {
        ("deflection", for_deflection)
    } else {
        return None;
    };
    let text = format!(
        "{what}, {}: the formula is stated for slabs at least {radii} radii of relative stiffness across, {}",
        position.word(),
        said(radii)
    );
    Some(Note::new(NoteCode::OutsideFormula, text))
}
