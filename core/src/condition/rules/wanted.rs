//! What is to stand on it, and how much room there is.

use super::{BONDED, BREAK, LOOSE, MAKE_ROOM, OVER};
use crate::basis::BasisId;
use crate::caution::Caution;
use crate::condition::measured::no_room_for;
use crate::condition::rule::{Effect, Rule, at, then};
use crate::least_thickness;

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
        &[no_room_for(least_thickness::LOOSE)],
        &[then(LOOSE, Effect::Refuses, "find room for 3 in, or bond to it")],
        "there is no room for 3 in",
        BasisId::OldSlabPractice,
    ),
    Rule::new(
        "trucks_need_four_inches",
        &[at!(Load >= Truck), no_room_for(least_thickness::LOOSE_LOADED)],
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
        "trucks_need_two_inches_bonded",
        &[at!(Load >= Truck), no_room_for(least_thickness::BONDED_UNDER_TRUCKS)],
        &[then(BONDED, Effect::AfterWork, MAKE_ROOM)],
        "trucks and jacks want 2 in bonded, and there is no room for them",
        BasisId::BondedRoadMinimum,
    ),
    Rule::new(
        "cars_need_one_and_a_half_bonded",
        &[at!(Load >= Car), no_room_for(least_thickness::BONDED_UNDER_CARS)],
        &[then(BONDED, Effect::AfterWork, MAKE_ROOM)],
        "cars want 1 1/2 in bonded, and there is no room for them",
        BasisId::PouredWithBond,
    ),
    Rule::new(
        "thin_bonded",
        &[no_room_for(least_thickness::BONDED_UNDER_CARS)],
        &[then(BONDED, Effect::AfterWork, "small stone: at most a third of the thinnest part, or mortar")],
        "there is no room for 1 1/2 in",
        BasisId::OldSlabPractice,
    ),
    Rule::new(
        "feather_edge",
        &[no_room_for(least_thickness::BONDED)],
        &[then(BONDED, Effect::AfterWork, MAKE_ROOM)],
        "there is no room for 3/4 in: concrete does not run out to nothing",
        BasisId::BondedLeast,
    ),
];
