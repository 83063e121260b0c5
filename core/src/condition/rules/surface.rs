//! What is on the surface: scaling, oil, coatings, coverings.

use super::{ALL, BONDED, GRIP, UNBONDED};
use crate::basis::BasisId;
use crate::caution::Caution;
use crate::condition::rule::{Effect, Rule, at, then};

pub(super) static RULES: &[Rule] = &[
    Rule::new(
        "covering_untested",
        &[at!(Covering >= Untested)],
        &[then(
            ALL,
            Effect::AfterWork,
            "have a sample tested for asbestos before it is scraped, ground, sawn or broken",
        )],
        "nobody has tested the old covering or its glue",
        BasisId::OldCoverings,
    )
    .caution(Caution::OldCoverings)
    .named_stop(),
    Rule::new(
        "covering",
        &[at!(Covering >= Tested)],
        &[
            then(GRIP, Effect::AfterWork, "take the covering off with all its glue, down to bare concrete"),
            then(UNBONDED, Effect::AfterWork, "take up what is loose and what would rot"),
        ],
        "an old covering or its glue lies on it",
        BasisId::ToppingPreparation,
    ),
    Rule::new(
        "oil_in_depth",
        &[at!(Contamination >= InDepth)],
        &[
            then(
                BONDED,
                Effect::AfterWork,
                "mill or chip out the oily concrete until water soaks in everywhere",
            ),
            then(
                &[super::Way::PartlyBonded],
                Effect::Refuses,
                "pour over unbonded, or take the oily concrete off and bond",
            ),
        ],
        "oil has gone in deep",
        BasisId::ToppingPreparation,
    ),
    Rule::new(
        "oil_film",
        &[at!(Contamination >= Film)],
        &[then(GRIP, Effect::AfterWork, "degrease, then blast; water has to soak in everywhere")],
        "there is oil on it",
        BasisId::ToppingPreparation,
    ),
    Rule::new(
        "sealer",
        &[at!(Sealer >= Present)],
        &[then(BONDED, Effect::AfterWork, "blast or mill the sealer off; water has to soak in everywhere")],
        "a sealer or a curing film keeps the new concrete off",
        BasisId::ToppingPreparation,
    ),
    Rule::new(
        "paint",
        &[at!(Paint >= Present)],
        &[then(
            BONDED,
            Effect::AfterWork,
            "paint off down to bare concrete; have old paint tested for lead first",
        )],
        "there is paint on it",
        BasisId::ToppingPreparation,
    )
    .caution(Caution::OldCoverings),
    Rule::new(
        "scaled",
        &[at!(Scaling >= Light)],
        &[then(
            BONDED,
            Effect::AfterWork,
            "take off the scaled concrete down to sound concrete, and order its depth as concrete",
        )],
        "its skin has scaled off",
        BasisId::OverlayChoice,
    ),
    Rule::new(
        "scaled_to_quarter",
        &[at!(Scaling >= QuarterInch)],
        &[then(
            BONDED,
            Effect::AfterWork,
            "mill the scaled parts: a blast alone does not reach sound concrete",
        )],
        "it is scaled to 1/4 in or deeper",
        BasisId::OldSlabPractice,
    ),
    Rule::new(
        "scaled_deep",
        &[at!(Scaling >= Deep)],
        &[then(
            UNBONDED,
            Effect::AfterWork,
            "fill the scaled hollows to a fair plane: the sheet must not lock in them",
        )],
        "it is scaled so deep that the new slab would lock in it",
        BasisId::BreakerAndBase,
    ),
    Rule::new(
        "spalled_joints",
        &[at!(Spalling >= AtJoints)],
        &[then(BONDED, Effect::AfterWork, "saw the spalled edges back to sound concrete and patch them")],
        "joint edges are spalled",
        BasisId::OldSlabPractice,
    )
    .local(),
    Rule::new(
        "spalled",
        &[at!(Spalling >= Widespread)],
        &[
            then(UNBONDED, Effect::AfterWork, "fill the spalls to a fair plane"),
            then(
                GRIP,
                Effect::AfterWork,
                "find out why it spalls, frost, salt or rust, and take it down to sound concrete",
            ),
        ],
        "it is spalled in many places",
        BasisId::OldSlabPractice,
    ),
    Rule::new(
        "popouts",
        &[at!(Popouts >= Few)],
        &[then(BONDED, Effect::AfterWork, "chip out the pop-outs and the stones under them")],
        "stones pop out of it",
        BasisId::OldSlabPractice,
    ),
    Rule::new(
        "popouts_many",
        &[at!(Popouts >= Many)],
        &[then(GRIP, Effect::AfterWork, "have the stone looked at: many pop-outs go on under a bonded top")],
        "stones pop out in many places",
        BasisId::OldSlabPractice,
    ),
];
