//! The rows of the verdict on the old slab.

use super::results::{RESULTS, answer};
use crate::basis::BasisId;
use crate::condition::quick::{Cracks, Hammer, Moves, Surface, Under};
use crate::condition::{FINDINGS, FindingsInput, QuickInput};
use crate::failure::{Code, Result};
use crate::operation::{Answer, Args, Call, Choice, Kind, Operation};
use crate::port;

const RULE: &str = "each rule: where its findings are at their word or worse, the way is at least where the rule puts it; bad parts broken out leave the better of unbonded and bonded for the rest";
const TAKEN: &str =
    "what is not given is not bad, and asked for where it could turn the verdict; no verdict is an approval";

/// Where the rules come from.
const BASIS: &[BasisId] = &[
    BasisId::OldSlabPractice,
    BasisId::SiteWords,
    BasisId::OverlayChoice,
    BasisId::OverlayOverSettled,
    BasisId::ToppingPreparation,
    BasisId::PartlyBondedToppings,
    BasisId::BreakerAndBase,
    BasisId::BondedPreparation,
    BasisId::Sounding,
    BasisId::BondingAgents,
    BasisId::BondedLeast,
    BasisId::SettlementUnknown,
    BasisId::SpaceBelow,
    BasisId::SuspendedSlab,
    BasisId::FrostBetweenLayers,
    BasisId::CutIntoOldSlab,
    BasisId::AnchoredPosts,
    BasisId::OldCoverings,
    BasisId::LoadedToppings,
    BasisId::BondPerPanel,
    BasisId::PullOffTest,
];

/// The verdict on the old slab.
pub static CONDITION: Operation = Operation {
    name: "condition",
    module: "condition",
    since: "0.1.0",
    meaning: "Whether the old slab may stay: every way judged with its reasons, the way to take, the work, and what to find out.",
    equation: RULE,
    assumes: TAKEN,
    ports: &[port!(findings: Kind::Record(&FINDINGS), "what was found, in site words or measures")],
    results: RESULTS,
    basis: BASIS,
    example: concat!(r#"{"findings": "#, include_str!("../example.json"), "}"),
    refusals: &[
        (r#"{"findings": {"crack_width": "huge"}}"#, Code::WordUnknown),
        (r#"{"findings": {"cracks": "card"}}"#, Code::KeyUnknown),
        (r#"{"findings": {"measured_crack": "-1 in"}}"#, Code::OutOfRange),
        (r#"{"findings": {"measured_crack": "0.02"}}"#, Code::UnitMissing),
        (r#"{"findings": {"measured_step": "1/4 in", "step": "coin"}}"#, Code::Contradiction),
        (r#"{"findings": {"hollow": "none", "drum": "yes"}}"#, Code::FindingsDisagree),
    ],
    call: Call::Record(condition),
};

fn condition(args: &Args<'_>) -> Result<Answer> {
    let findings: &FindingsInput = args.required_record(0)?;
    Ok(answer(&findings.verdict().map_err(|failure| failure.under("findings"))?))
}

/// The verdict by five questions.
pub static CONDITION_QUICK: Operation = Operation {
    name: "condition_quick",
    module: "condition",
    since: "0.1.0",
    meaning: "The verdict on the old slab by five questions that a foreman answers standing on it.",
    equation: RULE,
    assumes: "each answer stands for findings, the worse ones where it may mean several; each is listed as taken",
    ports: &[
        port!(moves: Kind::Choice(Moves::WORDS), "does it move or rock, or has it sunk?"),
        port!(cracks: Kind::Choice(Cracks::WORDS), "what cracks are there?"),
        port!(hammer: Kind::Choice(Hammer::WORDS), "what does the hammer say?"),
        port!(surface: Kind::Choice(Surface::WORDS), "what is the surface like?"),
        port!(under: Kind::Choice(Under::WORDS), "what is under it, and does it freeze there?"),
        port!(findings: Kind::Record(&FINDINGS), "what else was found; it goes before the answers"; optional),
    ],
    results: RESULTS,
    basis: BASIS,
    example: r#"{"moves": "no", "cracks": "hairline_still", "hammer": "rings", "surface": "clean", "under": "ground_indoors"}"#,
    refusals: &[
        (r#"{"moves": "a bit"}"#, Code::WordUnknown),
        (r#"{"findings": {"quick": {"moves": "no"}}}"#, Code::Contradiction),
        (r#"{"findings": {"drum": "yes"}}"#, Code::FindingsDisagree),
    ],
    call: Call::Record(condition_quick),
};

fn condition_quick(args: &Args<'_>) -> Result<Answer> {
    let mut findings = args.record::<FindingsInput>(5)?.cloned().unwrap_or_default();
    if findings.quick.is_some() {
        return Err(crate::failure::Failure::new(Code::Contradiction, "findings.quick")
            .written("the five answers, twice")
            .allowed("the five answers once")
            .remedy("leave quick out of the findings"));
    }
    findings.quick = Some(QuickInput {
        moves: args.choice(0)?,
        cracks: args.choice(1)?,
        hammer: args.choice(2)?,
        surface: args.choice(3)?,
        under: args.choice(4)?,
    });
    Ok(answer(&findings.verdict().map_err(|failure| failure.under("findings"))?))
}
