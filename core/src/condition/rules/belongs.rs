//! What belongs to each way in any case.

use super::{BONDED, PART, PARTLY, UNBONDED, WHOLE};
use crate::basis::BasisId;
use crate::condition::rule::{Effect, Rule, then};

pub(super) static RULES: &[Rule] = &[
    Rule::new(
        "straight_on",
        &[],
        &[then(
            PARTLY,
            Effect::AfterWork,
            "tell the owner in writing that old cracks will show; we do not recommend it",
        )],
        "poured straight on it grips in patches: old cracks will show",
        BasisId::PartlyBondedToppings,
    ),
    Rule::new(
        "breaker",
        &[],
        &[then(
            UNBONDED,
            Effect::BelongsTo,
            "fill hollows over 1/2 in to a fair plane; sheet, felt or wax cure over all of it; isolation strip at walls and posts",
        )],
        "an unbonded slab has to slide: bare concrete with nothing between grips in patches",
        BasisId::BreakerAndBase,
    ),
    Rule::new(
        "preparation",
        &[],
        &[then(
            BONDED,
            Effect::BelongsTo,
            "mill or shotblast to about 1/4 in rough, clean, damp without standing water; coat scrubbed in just ahead, dried coat taken off; joints over the old ones, full depth",
        )],
        "the preparation is the bond, the coat only helps",
        BasisId::BondedPreparation,
    ),
    Rule::new(
        "straight_joint",
        &[],
        &[then(
            PART,
            Effect::BelongsTo,
            "saw full depth along straight lines, at best along an old joint; the bond changes there and nowhere else",
        )],
        "a slab that is bonded here and loose there cracks where it changes",
        BasisId::BondPerPanel,
    ),
    Rule::new(
        "broken_out",
        &[],
        &[then(
            WHOLE,
            Effect::BelongsTo,
            "have buried services marked before breaking; new base in layers, compacted",
        )],
        "what is under the old slab is seen only when it is out",
        BasisId::OldSlabPractice,
    ),
];
