//! What is to stand on it, and how much room there is.

use super::{BONDED, BREAK, LOOSE, OVER};
use crate::basis::BasisId;
use crate::caution::Caution;
use crate::condition::rule::{Effect, Rule, at, then};

pub(super) static RULES: &[Rule] = &[
    Rule::new(
        "lift_posts",
        &[at!(Load >= LiftPosts)],
        &[
            then(OVER, Effect::Stops, "ask the maker of the lift for the slab and the anchors it needs, and an engineer; no capacity is given here"),
            then(BREAK, Effect::AfterWork, "slab and anchors under each post by the maker's paper and an engineer"),
        ],
        "posts of a lift are anchored in no topping",
        BasisId::AnchoredPosts,
    )
    .caution(Caution::AnchoredLifts)
    .named_stop()
    .local(),
    Rule::new(
        "unbonded_needs_three_inches",
        &[at!(Room >= OneAndAHalf)],
        &[then(LOOSE, Effect::Refuses, "find room for 3 in, or bond to it")],
        "there is no room for 3 in",
        BasisId::OldSlabPractice,
    ),
    Rule::new(
        "trucks_need_four_inches",
        &[at!(Load >= Truck), at!(Room >= ThreeInches)],
        &[then(LOOSE, Effect::Refuses, "find room for 4 in, or bond to it")],
        "trucks and jacks want 4 in unbonded, and there is no room for them",
        BasisId::LoadedToppings,
    ),
    Rule::new(
        "figure_the_load",
        &[at!(Load >= Truck)],
        &[then(OVER, Effect::AfterWork, "figure the stress under wheels and jacks before the thickness is settled")],
        "trucks and jacks break thin slabs",
        BasisId::LoadedToppings,
    ),
    Rule::new(
        "thin_bonded",
        &[at!(Room >= ThreeQuarters)],
        &[then(BONDED, Effect::AfterWork, "small stone: at most a third of the thinnest part, or mortar")],
        "there is no room for 1 1/2 in",
        BasisId::OldSlabPractice,
    ),
    Rule::new(
        "feather_edge",
        &[at!(Room >= Less)],
        &[then(BONDED, Effect::AfterWork, "mill the old slab down, or key the edges, until 3/4 in is left everywhere; confirm locally")],
        "there is no room for 3/4 in: concrete does not run out to nothing",
        BasisId::BondedLeast,
    ),
];
