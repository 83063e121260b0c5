//! The row of the practical least thickness.

use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result};
use crate::note::{Note, NoteCode};
use crate::operation::{Answer, Args, Call, Choice, Column, Columns, Kind, Operation, TableType, Value};
use crate::overlay::Bond;
use crate::overlay::minimums::{Minimum, Rule, STONE, Use, minimum};
use crate::quantity::units::INCH;
use crate::quantity::{Range, Typed, inches};
use crate::{number, port};

/// Rules that were looked at.
static RULES: TableType = TableType {
    name: "rules",
    meaning: "a rule about this kind and use",
    columns: &[
        number!(least: length in inch | millimeter, Range::POSITIVE, "least thickness by this rule"),
        port!(decides: Kind::Choice(<bool as Choice>::WORDS), "whether it decides here"),
        port!(said: Kind::Text, "what it is about"),
        port!(basis: Kind::Text, "its basis, by name"),
        port!(source: Kind::Text, "what the basis says and how far it was seen"),
    ],
    least_rows: 0,
};

/// The least thickness in practice.
pub static OVERLAY_MINIMUM: Operation = Operation {
    name: "overlay_minimum",
    module: "overlay",
    since: "0.1.0",
    meaning: "How thin an overlay may be in practice by its bond, its use and its stone, the largest stone for it, and what goes between old and new.",
    equation: "least = the larger of the rule for bond and use and 3 x stone; largest stone = least / 3",
    assumes: "a sound old slab; no edge runs out to nothing: it ends at a sawn and chipped key at least as deep",
    ports: &[
        port!(bond: Kind::Choice(Bond::WORDS), "how the overlay holds to the old slab"),
        port!(used: Kind::Choice(Use::WORDS), "what the floor is used for"),
        number!(stone: length in inch | millimeter, STONE, "largest stone of the mix"; zero rare, optional),
    ],
    results: &[
        number!(least: length in inch | millimeter, Range::POSITIVE, "least thickness anywhere"),
        number!(largest_stone: length in inch | millimeter, Range::POSITIVE, "largest stone for that thickness"),
        number!(greatest_usual: length in inch | millimeter, Range::POSITIVE, "usual at most; none where stress alone decides"; optional),
        port!(between: Kind::Text, "what goes between old and new"),
        port!(means: Kind::Text, "what that means for the floor"),
        port!(rests_on: Kind::Text, "the basis that decides, by name"),
        port!(rules: Kind::Table(&RULES), "every rule about it, with its source"),
    ],
    basis: &[
        BasisId::BondedToppingMinimum,
        BasisId::UnbondedToppingMinimum,
        BasisId::UnbondedToppingEarlier,
        BasisId::PouredWithBond,
        BasisId::PouredWithoutBond,
        BasisId::UnbondedByUse,
        BasisId::BondedRoadMinimum,
        BasisId::AirfieldMinimum,
        BasisId::StoneThird,
        BasisId::FeatherEdge,
    ],
    example: r#"{"bond": "unbonded", "used": "cars", "stone": "3/4 in"}"#,
    refusals: &[
        (r#"{"stone": "6 in"}"#, Code::OutOfRange),
        (r#"{"bond": "glued"}"#, Code::WordUnknown),
        (r#"{"used": "parade"}"#, Code::WordUnknown),
    ],
    call: Call::Record(overlay_minimum),
};

/// A word that the table of operations has required.
pub(super) fn word<C: Choice>(args: &Args<'_>, place: usize, port: &str) -> Result<C> {
    let missing =
        || Failure::new(Code::KeyMissing, port).written("nothing").allowed("a word").remedy("give one");
    args.choice(place)?.ok_or_else(missing)
}

fn overlay_minimum(args: &Args<'_>) -> Result<Answer> {
    let bond: Bond = word(args, 0, "bond")?;
    let found = minimum(bond, word(args, 1, "used")?, args.quantity(2)?)?;
    let basis = found.basis();
    let answer = Answer::of([
        Value::Number(found.least.base()),
        Value::Number(found.largest_stone.base()),
        found.greatest_usual.map_or(Value::Absent, |most| Value::Number(most.base())),
        Value::Text(bond.between().to_owned()),
        Value::Text(bond.means().to_owned()),
        Value::Text(basis.name().to_owned()),
        rules(&found.rules),
    ]);
    Ok(answer.with_notes(notes(bond, &found, basis)))
}

fn rules(rules: &[Rule]) -> Value {
    let texts =
        |text: fn(&Rule) -> String| Column::Texts(rules.iter().map(|rule| Some(text(rule))).collect());
    let columns = vec![
        Column::Numbers(rules.iter().map(|rule| rule.least * INCH).collect()),
        Column::Choices(rules.iter().map(|rule| Some(usize::from(rule.decides))).collect()),
        texts(|rule| rule.said.to_owned()),
        texts(|rule| rule.basis.name().to_owned()),
        texts(|rule| rule.basis.line()),
    ];
    Value::Table(Columns { rows: rules.len(), columns })
}

fn notes(bond: Bond, found: &Minimum, basis: BasisId) -> Vec<Note> {
    let mut notes = Vec::new();
    if bond == Bond::PartlyBonded {
        notes.push(Note::new(NoteCode::NotRecommended, bond.means()));
    }
    if found.by_stone {
        let said = format!("{} are three times the largest stone", inches(found.least, 8));
        notes.push(Note::new(NoteCode::StoneDecides, said));
    }
    if basis.from_memory() {
        notes.push(Note::new(NoteCode::ConfirmLocally, basis.line()));
    }
    notes
}
