//! Broken, hollow, soft: whether the old slab is whole.

use super::{BONDED, GRIP, KEEP, OVER, UNBONDED, WHOLE};
use crate::basis::BasisId;
use crate::condition::rule::{Effect, Rule, at, then};

pub(super) static RULES: &[Rule] = &[
    Rule::new(
        "gel_seen",
        &[at!(Gel >= Seen)],
        &[
            then(KEEP, Effect::Refuses, "break it out: the concrete goes on swelling"),
            then(WHOLE, Effect::AfterWork, "keep the rubble out of the new base"),
        ],
        "the stone in it reacts and swells",
        BasisId::OverlayChoice,
    ),
    Rule::new(
        "durability_cracking_seen",
        &[at!(DurabilityCracking >= Seen)],
        &[
            then(KEEP, Effect::Refuses, "break it out: frost goes on breaking its stone"),
            then(
                WHOLE,
                Effect::AfterWork,
                "dry base: drain it, so that the new slab does not stand in water",
            ),
        ],
        "frost breaks the stone in it",
        BasisId::OverlayChoice,
    ),
    Rule::new(
        "gel_suspected",
        &[at!(Gel >= Suspected)],
        &[then(KEEP, Effect::AfterWork, "have a core looked at for gel before the pour")],
        "gel is suspected, or seen",
        BasisId::OverlayChoice,
    ),
    Rule::new(
        "durability_cracking_suspected",
        &[at!(DurabilityCracking >= Suspected)],
        &[then(KEEP, Effect::AfterWork, "have a core from a joint looked at for stone broken by frost")],
        "durability cracking is suspected, or seen",
        BasisId::OverlayChoice,
    ),
    Rule::new(
        "broken_up",
        &[at!(CrackPattern >= Many)],
        &[then(GRIP, Effect::Refuses, "pour over unbonded, or break it out")],
        "it is cracked all over, and the cracks come through whatever grips it",
        BasisId::OverlayChoice,
    ),
    Rule::new(
        "cracked_like_a_map",
        &[at!(CrackPattern >= Map)],
        &[then(
            KEEP,
            Effect::AfterWork,
            "find out whether the map cracks are skin deep: chip one open, look for gel",
        )],
        "cracks like a map may be swelling stone",
        BasisId::OldSlabPractice,
    ),
    Rule::new(
        "cracked_along_bars",
        &[at!(BarCracks >= Seen)],
        &[then(
            KEEP,
            Effect::AfterWork,
            "chip open a crack over a bar: rust has to be taken off and the spot patched",
        )],
        "cracks along the bars mean rust",
        BasisId::OldSlabPractice,
    ),
    Rule::new(
        "hollow_a_lot",
        &[at!(Hollow >= ALot)],
        &[
            then(GRIP, Effect::Refuses, "break out what is hollow, or pour over unbonded"),
            then(
                UNBONDED,
                Effect::AfterWork,
                "drill into the hollow parts: loose layers come off, voids are filled",
            ),
        ],
        "a lot of it sounds hollow",
        BasisId::Sounding,
    ),
    Rule::new(
        "hollow_spots",
        &[at!(Hollow >= Spots)],
        &[then(GRIP, Effect::AfterWork, "saw round the hollow spots, break out to sound concrete, patch")],
        "parts of it sound hollow",
        BasisId::Sounding,
    )
    .local(),
    Rule::new(
        "gouged",
        &[at!(Strength >= Gouges)],
        &[
            then(
                GRIP,
                Effect::Refuses,
                "mill down to concrete that a screwdriver does not gouge, or pour over unbonded",
            ),
            then(UNBONDED, Effect::AfterWork, "scrape and sweep off what is loose, fill soft places"),
        ],
        "a screwdriver gouges it: there is nothing to bond to",
        BasisId::OldSlabPractice,
    ),
    Rule::new(
        "dull",
        &[at!(Strength >= Dull)],
        &[then(BONDED, Effect::AfterWork, "pull-off tests on the prepared surface, to the project's figure")],
        "it is not as hard as sound concrete",
        BasisId::PullOffTest,
    ),
    Rule::new(
        "moisture_drops",
        &[at!(Moisture >= Drops)],
        &[then(
            OVER,
            Effect::AfterWork,
            "find where the water comes from and stop it; no water stands on the slab at the pour; what is laid or brushed on the new floor waits for a moisture test",
        )],
        "water comes up through it",
        BasisId::OldSlabPractice,
    ),
];
