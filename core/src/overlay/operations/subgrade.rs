//! The rows of subgrade reaction.

use crate::basis::BasisId;
use crate::failure::Code;
use crate::operation::scalar::Word;
use crate::operation::{Choice, Kind, Operation};
use crate::overlay::strength::slab::SUBGRADE;
use crate::overlay::strength::subgrade::{
    BEARING_RATIO, Correlation, RESILIENT, SUBBASE, Soil, Subbase, UNDER, from_bearing_ratio, from_resilient,
    of_soil, with_subbase,
};
use crate::quantity::{Length, Pressure, Share, SubgradeReaction, Typed};
use crate::{number, port, scalar};

/// From the bearing ratio.
pub static SUBGRADE_FROM_BEARING_RATIO: Operation = Operation {
    name: "subgrade_from_bearing_ratio",
    module: "overlay",
    since: "0.1.0",
    meaning: "The modulus of subgrade reaction from the California bearing ratio, by a named source or the lowest of them.",
    equation: "FAA k = (1500 CBR / 26)^0.7788 pci; Packard k = 53.438 CBR^0.5719 pci; IRC:58 by table; lowest of the three",
    assumes: "the sources differ a lot at low ratios; the lowest is on the safe side",
    ports: &[
        number!(bearing_ratio: share in percent | percent, BEARING_RATIO, "California bearing ratio"; zero rare),
        port!(source: Kind::Choice(Correlation::WORDS), "which correlation"),
    ],
    results: &[
        number!(subgrade: subgrade_reaction in pci | megapascal_per_meter, SUBGRADE, "modulus of subgrade reaction k"),
    ],
    basis: &[BasisId::SubgradeFaa, BasisId::SubgradePackard, BasisId::SubgradeIrc],
    example: r#"{"bearing_ratio": "5 %", "source": "lowest"}"#,
    refusals: &[
        (r#"{"bearing_ratio": "1 %"}"#, Code::OutOfRange),
        (r#"{"bearing_ratio": "120 %"}"#, Code::OutOfRange),
        (r#"{"bearing_ratio": "-5 %"}"#, Code::Negative),
    ],
    call: scalar!(from_bearing_ratio, (bearing_ratio: Share, source: Word<Correlation>) => |found| [found.base()]),
};

/// From the resilient modulus.
pub static SUBGRADE_FROM_RESILIENT: Operation = Operation {
    name: "subgrade_from_resilient",
    module: "overlay",
    since: "0.1.0",
    meaning: "The modulus of subgrade reaction from the resilient modulus of the soil.",
    equation: "subgrade = resilient / 19.4, pci and psi",
    assumes: "no subbase, no rock near below",
    ports: &[
        number!(resilient: pressure in psi | megapascal, RESILIENT, "resilient modulus of the soil"; zero rare),
    ],
    results: &[
        number!(subgrade: subgrade_reaction in pci | megapascal_per_meter, SUBGRADE, "modulus of subgrade reaction k"),
    ],
    basis: &[BasisId::SubgradeResilient],
    example: r#"{"resilient": "3,000 psi"}"#,
    refusals: &[(r#"{"resilient": "100,000 psi"}"#, Code::OutOfRange)],
    call: scalar!(from_resilient, (resilient: Pressure) => |found| [found.base()]),
};

/// From words.
pub static SUBGRADE_FROM_SOIL: Operation = Operation {
    name: "subgrade_from_soil",
    module: "overlay",
    since: "0.1.0",
    meaning: "The modulus of subgrade reaction by what heel and bar say, by the kind of soil, or over an old slab.",
    equation: "soft 50, medium 100, firm 200 pci; silt and clay 75 to 120; sand with silt or clay 130 to 170; clean sand and gravel 180 to 220; cement-treated subbase 250 to 400; old slab 200 to 300",
    assumes: "the lower end is taken; the upper end is not exceeded without a reason",
    ports: &[port!(soil: Kind::Choice(Soil::WORDS), "what the slab rests on")],
    results: &[
        number!(least: subgrade_reaction in pci | megapascal_per_meter, SUBGRADE, "lower end: the one to take"),
        number!(greatest: subgrade_reaction in pci | megapascal_per_meter, SUBGRADE, "upper end"),
    ],
    basis: &[BasisId::SubgradeHeelAndBar, BasisId::SubgradePca, BasisId::SubgradeOverOldSlab],
    example: r#"{"soil": "medium"}"#,
    refusals: &[(r#"{"soil": "marsh"}"#, Code::WordUnknown)],
    call: scalar!(of_soil, (soil: Word<Soil>) => |found| ([found.least.base(), found.greatest.base()], found.note)),
};

/// On a subbase.
pub static SUBGRADE_WITH_SUBBASE: Operation = Operation {
    name: "subgrade_with_subbase",
    module: "overlay",
    since: "0.1.0",
    meaning: "The modulus of subgrade reaction on top of a subbase.",
    equation: "by table, straight between rows and columns; refused outside",
    assumes: "a compacted subbase all over",
    ports: &[
        number!(subgrade: subgrade_reaction in pci | megapascal_per_meter, UNDER, "modulus of subgrade reaction under the subbase"; zero rare),
        number!(thickness: length in inch | millimeter, SUBBASE, "thickness of the subbase"; zero rare),
        port!(kind: Kind::Choice(Subbase::WORDS), "what the subbase is"),
    ],
    results: &[
        number!(top: subgrade_reaction in pci | megapascal_per_meter, SUBGRADE, "modulus of subgrade reaction on top"),
    ],
    basis: &[BasisId::SubgradePca],
    example: r#"{"subgrade": "100 pci", "thickness": "6 in", "kind": "granular"}"#,
    refusals: &[
        (r#"{"subgrade": "40 pci"}"#, Code::OutOfRange),
        (r#"{"thickness": "3 in"}"#, Code::OutOfRange),
        (r#"{"subgrade": "250 pci", "kind": "cement-treated"}"#, Code::OutsideTable),
        (r#"{"subgrade": "200 pci", "thickness": "10 in", "kind": "cement-treated"}"#, Code::OutsideTable),
    ],
    call: scalar!(
        with_subbase,
        (subgrade: SubgradeReaction, thickness: Length, kind: Word<Subbase>) => |found| [found.base()]
    ),
};
