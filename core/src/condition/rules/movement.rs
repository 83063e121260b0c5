//! Settling, heaving, rocking; cracks and joints that move.

use super::{BONDED, GRIP, KEEP, LOOSE, OVER, PARTLY, UNBONDED, WHOLE};
use crate::basis::BasisId;
use crate::condition::rule::{Effect, Rule, at, then};

/// Under a new slab the cause of the movement has to be gone.
const MEND_GROUND: &str =
    "mend what moves it first: drain, take out the soft or swelling ground, new base in layers, compacted";
const CAUSE_FIRST: &str = "find the cause and mend it; then judge again";

pub(super) static RULES: &[Rule] = &[
    Rule::new(
        "settlement_live",
        &[at!(Settlement >= Live)],
        &[then(KEEP, Effect::Refuses, CAUSE_FIRST), then(WHOLE, Effect::AfterWork, MEND_GROUND)],
        "it is still settling, and what is poured on it goes down with it",
        BasisId::OldSlabPractice,
    ),
    Rule::new(
        "settlement_fresh_signs",
        &[at!(Settlement unknown), at!(SettlementSigns >= Seen)],
        &[then(KEEP, Effect::Refuses, CAUSE_FIRST), then(WHOLE, Effect::AfterWork, MEND_GROUND)],
        "nobody knows whether it still settles, and the signs are fresh: that counts as settling",
        BasisId::SettlementUnknown,
    ),
    Rule::new(
        "settlement_big_step",
        &[at!(Settlement unknown), at!(Step >= More)],
        &[then(KEEP, Effect::Refuses, CAUSE_FIRST), then(WHOLE, Effect::AfterWork, MEND_GROUND)],
        "nobody knows whether it still settles, and a step is over 1/2 in: that counts as settling",
        BasisId::SettlementUnknown,
    ),
    Rule::new(
        "settlement_unknown",
        &[at!(Settlement unknown)],
        &[then(KEEP, Effect::AfterWork, "level it again after 3 to 6 months, or leave settling out of the contract in writing")],
        "nobody knows whether it still settles",
        BasisId::SettlementUnknown,
    ),
    Rule::new(
        "heave_live",
        &[at!(Heave >= Live)],
        &[then(KEEP, Effect::Refuses, CAUSE_FIRST), then(WHOLE, Effect::AfterWork, MEND_GROUND)],
        "it is still heaving",
        BasisId::OldSlabPractice,
    ),
    Rule::new(
        "rocking_widespread",
        &[at!(Rocking >= Widespread)],
        &[
            then(KEEP, Effect::Refuses, "break it out: it has lost its ground in many places"),
            then(WHOLE, Effect::AfterWork, MEND_GROUND),
        ],
        "panels rock or pump in many places",
        BasisId::OverlayChoice,
    ),
    Rule::new(
        "rocking",
        &[at!(Rocking >= OnePlace)],
        &[
            then(GRIP, Effect::Refuses, "fill under the panel that rocks, or break it out"),
            then(UNBONDED, Effect::AfterWork, "fill under the panel that rocks, or break it out"),
        ],
        "a panel rocks",
        BasisId::OverlayChoice,
    )
    .local(),
    Rule::new(
        "settled_offsets",
        &[at!(Settlement >= Dormant), at!(Step >= Pencil)],
        &[
            then(GRIP, Effect::Refuses, "break out the settled panels"),
            then(UNBONDED, Effect::AfterWork, "compacted sand over the offsets, thick enough to cover the high spots, under the new slab"),
        ],
        "it settled and left steps",
        BasisId::OverlayOverSettled,
    )
    .local(),
    Rule::new(
        "settlement_dormant",
        &[at!(Settlement >= Dormant)],
        &[then(KEEP, Effect::AfterWork, "write the old heights down with the date: later settling can then be told from old")],
        "it has settled",
        BasisId::OldSlabPractice,
    ),
    Rule::new(
        "heave_dormant",
        &[at!(Heave >= Dormant)],
        &[then(KEEP, Effect::AfterWork, "find what lifted it, frost, roots or clay, and that it is gone")],
        "it has heaved",
        BasisId::OldSlabPractice,
    ),
    Rule::new(
        "step_over_quarter",
        &[at!(Step >= HalfInch)],
        &[then(GRIP, Effect::AfterWork, "grind the step off or break out the panel; confirm locally that a step over 1/4 in may be bonded to")],
        "a step is over 1/4 in",
        BasisId::OverlayChoice,
    )
    .local(),
    Rule::new(
        "step_locks",
        &[at!(Step >= Pencil)],
        &[then(LOOSE, Effect::AfterWork, "grind or fill the steps to a fair slope: a new slab that locks on them cracks there")],
        "a step locks the new slab to the old one",
        BasisId::BreakerAndBase,
    )
    .local(),
    Rule::new(
        "crack_working",
        &[at!(CrackMovement >= Working)],
        &[
            then(BONDED, Effect::AfterWork, "stitch or fill the cracks that work, or cut a full-depth joint exactly over each"),
            then(PARTLY, Effect::AfterWork, "cut a full-depth joint exactly over each crack that works"),
        ],
        "cracks work, and come through whatever grips the old slab",
        BasisId::ToppingPreparation,
    ),
    Rule::new(
        "joints_working",
        &[at!(Joints >= Working)],
        &[
            then(GRIP, Effect::AfterWork, "full-depth joints exactly over the old ones, as wide as those"),
        ],
        "joints work",
        BasisId::ToppingPreparation,
    ),
    Rule::new(
        "crack_wide",
        &[at!(CrackWidth >= Wide)],
        &[
            then(OVER, Effect::AfterWork, "find out why the crack opened so far; clean it out and fill it flush"),
        ],
        "a crack is wider than a coin",
        BasisId::OldSlabPractice,
    ),
    Rule::new(
        "crack_coin",
        &[at!(CrackWidth >= Coin)],
        &[then(GRIP, Effect::AfterWork, "clean out and fill the cracks, and plan a joint over each")],
        "a coin goes into a crack",
        BasisId::ToppingPreparation,
    ),
];
