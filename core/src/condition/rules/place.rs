//! Frost, water, and what is wanted against them.

use super::{BONDED, LOOSE, MAKE_ROOM, UNBONDED};
use crate::basis::BasisId;
use crate::condition::measured::no_room_for;
use crate::condition::rule::{Effect, Rule, at, then};
use crate::least_thickness;

const OTHER_AGENT: &str = "take cement slurry or an agent rated for wet places";

pub(super) static RULES: &[Rule] = &[
    Rule::new(
        "frost_under_sheet",
        &[at!(Place >= OutdoorsFrost), at!(Drainage >= NotDrained)],
        &[then(LOOSE, Effect::Refuses, "bond to it, or drain it: 4 in and more on a drained layer with an open lower edge and sealed joints")],
        "water between two slabs freezes and lifts the upper one",
        BasisId::FrostBetweenLayers,
    )
    .named_stop(),
    Rule::new(
        "frost_needs_four_inches",
        &[at!(Place >= OutdoorsFrost), no_room_for(least_thickness::LOOSE_IN_FROST)],
        &[then(LOOSE, Effect::Refuses, "find room for 4 in, or bond to it")],
        "in frost an unbonded slab wants 4 in, and there is no room for them",
        BasisId::FrostBetweenLayers,
    ),
    Rule::new(
        "frost_drained",
        &[at!(Place >= OutdoorsFrost)],
        &[then(LOOSE, Effect::AfterWork, "at least 4 in, on a drained layer with an open lower edge, all joints sealed")],
        "it freezes there",
        BasisId::FrostBetweenLayers,
    ),
    Rule::new(
        "rewettable_outdoors",
        &[at!(Agent >= Rewettable), at!(Place >= Outdoors)],
        &[then(BONDED, Effect::Refuses, OTHER_AGENT)],
        "a bonding agent that softens when wet lets go outdoors",
        BasisId::BondingAgents,
    )
    .named_stop(),
    Rule::new(
        "rewettable_wet_use",
        &[at!(Agent >= Rewettable), at!(WetUse >= Wet)],
        &[then(BONDED, Effect::Refuses, OTHER_AGENT)],
        "a bonding agent that softens when wet lets go in a wash bay",
        BasisId::BondingAgents,
    )
    .named_stop(),
    Rule::new(
        "rewettable_damp",
        &[at!(Agent >= Rewettable), at!(Moisture >= Dark)],
        &[then(BONDED, Effect::Refuses, OTHER_AGENT)],
        "a bonding agent that softens when wet lets go on a damp slab",
        BasisId::BondingAgents,
    )
    .named_stop(),
    Rule::new(
        "no_bonding_coat",
        &[at!(Agent >= Clear)],
        &[then(BONDED, Effect::AfterWork, "scrub in cement slurry or a rated agent just ahead of the concrete")],
        "the coat that is planned does not make the bond",
        BasisId::OldSlabPractice,
    ),
    Rule::new(
        "wash_bay_needs_four_inches",
        &[at!(WetUse >= Wet), no_room_for(least_thickness::LOOSE_LOADED)],
        &[then(LOOSE, Effect::Refuses, "find room for 4 in, or bond to it")],
        "a wash bay wants 4 in unbonded, and there is no room for them",
        BasisId::LoadedToppings,
    ),
    Rule::new(
        "wash_bay_needs_one_and_a_half_bonded",
        &[at!(WetUse >= Wet), no_room_for(least_thickness::BONDED_UNDER_CARS)],
        &[then(BONDED, Effect::AfterWork, MAKE_ROOM)],
        "a wash bay wants 1 1/2 in bonded, and there is no room for them",
        BasisId::PouredWithBond,
    ),
    Rule::new(
        "wash_bay_unbonded",
        &[at!(WetUse >= Wet)],
        &[then(UNBONDED, Effect::AfterWork, "seal every joint and edge: wash water that gets under the slab stays there")],
        "water gets between the slabs in a wash bay",
        BasisId::LoadedToppings,
    ),
];
