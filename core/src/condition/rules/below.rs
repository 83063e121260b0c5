//! What is under the old slab and in it: before all else.

use super::{ALL, BREAK, GRIP, KEEP, UNBONDED};
use crate::basis::BasisId;
use crate::caution::Caution;
use crate::condition::rule::{Effect, Rule, at, then};

pub(super) static RULES: &[Rule] = &[
    Rule::new(
        "suspended",
        &[at!(Suspended >= Yes)],
        &[then(ALL, Effect::Stops, "structural engineer: the weight added, how far it bends, what holds it")],
        "it spans free: no thickness is told, only what the new concrete weighs",
        BasisId::SuspendedSlab,
    )
    .caution(Caution::SuspendedFloors)
    .named_stop(),
    Rule::new(
        "on_framing",
        &[at!(RestsOn >= Framing)],
        &[then(ALL, Effect::Stops, "structural engineer: what the framing carries")],
        "it rests on framing, which the new concrete would load",
        BasisId::SuspendedSlab,
    )
    .caution(Caution::SuspendedFloors)
    .named_stop(),
    Rule::new(
        "space_below",
        &[at!(Below >= Septic)],
        &[then(ALL, Effect::Stops, "open it, fill it or have an engineer bridge it; keep people and trucks off")],
        "there is a space under it",
        BasisId::SpaceBelow,
    )
    .caution(Caution::SpacesBelow)
    .named_stop(),
    Rule::new(
        "below_unknown",
        &[at!(Below unknown)],
        &[then(ALL, Effect::Stops, "drill through in 3 to 5 places and look, before any verdict")],
        "nobody knows what is under it",
        BasisId::SpaceBelow,
    )
    .caution(Caution::SpacesBelow)
    .named_stop(),
    Rule::new(
        "drum_not_drilled",
        &[at!(Drum >= Yes), at!(Below >= Nothing)],
        &[then(ALL, Effect::Stops, "drill through where it drums and look, before any verdict")],
        "it sounds like a drum over a wide area and nobody has drilled",
        BasisId::SpaceBelow,
    )
    .caution(Caution::SpacesBelow)
    .named_stop(),
    Rule::new(
        "tendons_cut",
        &[at!(Tendons >= Present)],
        &[
            then(BREAK, Effect::Stops, "structural engineer: stressed cables let go when the slab is cut or broken"),
            then(
                &[super::Way::Unbonded, super::Way::Bonded, super::Way::PartlyBonded],
                Effect::AfterWork,
                "have the stressed cables scanned and marked; nothing is cut, drilled or anchored into the old slab",
            ),
        ],
        "there are stressed cables in it",
        BasisId::CutIntoOldSlab,
    )
    .caution(Caution::PipesAndTendons)
    .named_stop(),
    Rule::new(
        "heating_pipes",
        &[at!(HeatingPipes >= Present)],
        &[
            then(
                BREAK,
                Effect::AfterWork,
                "heating shut off and drained, and given up by the owner in writing, before it is broken",
            ),
            then(
                &[super::Way::Unbonded, super::Way::Bonded, super::Way::PartlyBonded],
                Effect::AfterWork,
                "find and mark the heating pipes; nothing is cut, drilled or anchored into the old slab",
            ),
        ],
        "there are heating pipes in it",
        BasisId::CutIntoOldSlab,
    )
    .caution(Caution::PipesAndTendons)
    .named_stop(),
    Rule::new(
        "on_fill",
        &[at!(RestsOn >= Fill)],
        &[then(KEEP, Effect::AfterWork, "probe what it rests on at edges and holes: a bar that goes in by hand means soft")],
        "what lies under it may be soft",
        BasisId::OldSlabPractice,
    ),
    Rule::new(
        "on_old_slab",
        &[at!(RestsOn >= OldSlab)],
        &[then(KEEP, Effect::AfterWork, "drill through all layers: how many, what lies between, what the lowest rests on")],
        "what it rests on has to be judged too",
        BasisId::OldSlabPractice,
    ),
    Rule::new(
        "crust",
        &[at!(OldThickness >= Shell)],
        &[
            then(KEEP, Effect::Refuses, "count what lies under the crust as the old slab, or break it out"),
        ],
        "it is a crust, not a slab",
        BasisId::OldSlabPractice,
    ),
    Rule::new(
        "thin_under_trucks",
        &[at!(OldThickness >= Thin), at!(Load >= Truck)],
        &[
            then(UNBONDED, Effect::AfterWork, "figure both slabs together under the wheels"),
            then(GRIP, Effect::AfterWork, "figure the bonded slab under the wheels"),
        ],
        "it is thin for trucks",
        BasisId::LoadedToppings,
    ),
];
