//! The rows of overlay thickness.

use crate::basis::BasisId;
use crate::failure::Code;
use crate::operation::scalar::Word;
use crate::operation::{Choice, Kind, Operation};
use crate::overlay::Bond;
use crate::overlay::thickness::{
    CONDITION, Condition, FACTOR, SLAB, condition_factor, effective_bonded, effective_unbonded, equivalent,
    required,
};
use crate::quantity::{Length, Range, Ratio, Typed};
use crate::{number, port, scalar};

/// The condition factor.
pub static CONDITION_FACTOR: Operation = Operation {
    name: "condition_factor",
    module: "overlay",
    since: "0.1.0",
    meaning: "The condition factor of an old slab by what is seen.",
    equation: "sound 1.00; a few cracks that do not grow 0.75; badly cracked 0.35",
    assumes: "what is seen holds for the whole slab",
    ports: &[port!(condition: Kind::Choice(Condition::WORDS), "what the old slab looks like")],
    results: &[number!(factor: ratio in one | one, CONDITION, "condition factor C")],
    basis: &[BasisId::ConditionFactor],
    example: r#"{"condition": "few cracks, still"}"#,
    refusals: &[(r#"{"condition": "rotten"}"#, Code::WordUnknown)],
    call: scalar!(condition_factor, (condition: Word<Condition>) => |found| ([found.factor.base()], found.note)),
};

/// The overlay required.
pub static OVERLAY_REQUIRED: Operation = Operation {
    name: "overlay_required",
    module: "overlay",
    since: "0.1.0",
    meaning: "The overlay thickness that an old slab needs, bonded, partly bonded or unbonded; zero where the old slab is enough.",
    equation: "overlay = (required_new^n - condition (required_new / required_old x old_slab)^n)^(1/n); n = 1 bonded (condition 1: required_new - old_slab), 1.4 partly bonded, 2 unbonded; a negative bracket is no need",
    assumes: "the equations are empirical, from full-scale traffic tests on airfields; the practical least thickness is apart",
    ports: &[
        port!(bond: Kind::Choice(Bond::WORDS), "how the overlay holds to the old slab"),
        number!(required_new: length in inch | millimeter, SLAB, "single slab that the new concrete would need on this ground"; zero rare),
        number!(required_old: length in inch | millimeter, SLAB, "a single slab of the old concrete would need so much"; zero rare),
        number!(old_slab: length in inch | millimeter, SLAB, "thickness of the old slab"; zero rare),
        number!(condition: ratio in one | one, CONDITION, "condition factor C of the old slab; 1 for a bonded overlay"; zero rare),
    ],
    results: &[
        number!(overlay: length in inch | millimeter, Range::NOT_NEGATIVE, "thickness of the overlay"),
    ],
    basis: &[BasisId::OverlayThickness, BasisId::ConditionFactor],
    example: r#"{"bond": "unbonded", "required_new": "9 in", "required_old": "9 in", "old_slab": "6 in", "condition": "1 ratio"}"#,
    refusals: &[
        (r#"{"bond": "bonded", "condition": "0.75 ratio"}"#, Code::BondNeedsSound),
        (r#"{"condition": "1.1 ratio"}"#, Code::OutOfRange),
        (r#"{"old_slab": "-6 in"}"#, Code::OutOfRange),
        (r#"{"required_new": "9 psi"}"#, Code::UnitWrong),
    ],
    call: scalar!(
        required,
        (bond: Word<Bond>, required_new: Length, required_old: Length, old_slab: Length, condition: Ratio) =>
            |found| ([found.overlay.base()], found.note)
    ),
};

/// The single slab that both are worth.
pub static SLAB_EQUIVALENT: Operation = Operation {
    name: "slab_equivalent",
    module: "overlay",
    since: "0.1.0",
    meaning: "The single slab that an overlay and the old slab under it are worth together.",
    equation: "equivalent = (overlay^n + condition x old_slab^n)^(1/n); n = 1 bonded, 1.4 partly bonded, 2 unbonded",
    assumes: "both concretes are alike in strength",
    ports: &[
        port!(bond: Kind::Choice(Bond::WORDS), "how the overlay holds to the old slab"),
        number!(overlay: length in inch | millimeter, SLAB, "thickness of the overlay"; zero rare),
        number!(old_slab: length in inch | millimeter, SLAB, "the old slab's thickness"; zero rare),
        number!(condition: ratio in one | one, CONDITION, "condition factor C of the old slab; 1 for a bonded overlay"; zero rare),
    ],
    results: &[number!(equivalent: length in inch | millimeter, Range::POSITIVE, "the single slab")],
    basis: &[BasisId::EquivalentThickness, BasisId::ConditionFactor],
    example: r#"{"bond": "partly bonded", "overlay": "6 in", "old_slab": "6 in", "condition": "1 ratio"}"#,
    refusals: &[
        (r#"{"bond": "bonded", "condition": "0.75 ratio"}"#, Code::BondNeedsSound),
        (r#"{"overlay": "0 in"}"#, Code::OutOfRange),
    ],
    call: scalar!(
        equivalent,
        (bond: Word<Bond>, overlay: Length, old_slab: Length, condition: Ratio) => |found| [found.base()]
    ),
};

/// Effective thickness, bonded.
pub static OVERLAY_EFFECTIVE_BONDED: Operation = Operation {
    name: "overlay_effective_bonded",
    module: "overlay",
    since: "0.1.0",
    meaning: "What an old slab is worth under a bonded overlay, and the overlay that follows.",
    equation: "effective = joints x durability x fatigue x old_slab; overlay = required - effective, none where negative",
    assumes: "the factors come from a survey of joints, cracks and durability",
    ports: &[
        number!(required: length in inch | millimeter, SLAB, "single slab required for the traffic to come"; zero rare),
        number!(old_slab: length in inch | millimeter, SLAB, "thickness of the old slab"; zero rare),
        number!(joints: ratio in one | one, FACTOR, "factor for joints and cracks left open; 1 where all are mended"; zero rare),
        number!(durability: ratio in one | one, FACTOR, "durability factor: 1 none lost, 0.96 to 0.99 cracking, 0.80 to 0.95 with spalling"; zero rare),
        number!(fatigue: ratio in one | one, FACTOR, "fatigue factor: 0.97 to 1 few transverse cracks, 0.94 to 0.96 many, 0.90 to 0.93 very many"; zero rare),
    ],
    results: &[
        number!(effective: length in inch | millimeter, Range::POSITIVE, "what the old slab is worth"),
        number!(overlay: length in inch | millimeter, Range::NOT_NEGATIVE, "thickness of the overlay"),
    ],
    basis: &[BasisId::EffectiveThickness],
    example: r#"{"required": "10 in", "old_slab": "8 in", "joints": "0.9 ratio", "durability": "1 ratio", "fatigue": "0.97 ratio"}"#,
    refusals: &[
        (r#"{"joints": "1.2 ratio"}"#, Code::OutOfRange),
        (r#"{"required": "0 in"}"#, Code::OutOfRange),
    ],
    call: scalar!(
        effective_bonded,
        (required: Length, old_slab: Length, joints: Ratio, durability: Ratio, fatigue: Ratio) =>
            |found| ([found.effective.base(), found.overlay.base()], found.note)
    ),
};

/// Effective thickness, unbonded.
pub static OVERLAY_EFFECTIVE_UNBONDED: Operation = Operation {
    name: "overlay_effective_unbonded",
    module: "overlay",
    since: "0.1.0",
    meaning: "What an old slab is worth under an unbonded overlay, and the overlay that follows.",
    equation: "effective = joints x old_slab, old_slab entered as 10 in at most; overlay = sqrt(required^2 - effective^2), none where negative",
    assumes: "a breaker or a levelling course lies between",
    ports: &[
        number!(required: length in inch | millimeter, SLAB, "single slab required for the traffic to come"; zero rare),
        number!(old_slab: length in inch | millimeter, SLAB, "thickness of the old slab"; zero rare),
        number!(joints: ratio in one | one, FACTOR, "factor for joints and cracks left open: 1 none, about 0.9 at 200 a mile"; zero rare),
    ],
    results: &[
        number!(effective: length in inch | millimeter, Range::POSITIVE, "what the old slab is worth"),
        number!(overlay: length in inch | millimeter, Range::NOT_NEGATIVE, "thickness of the overlay"),
    ],
    basis: &[BasisId::EffectiveThickness],
    example: r#"{"required": "10 in", "old_slab": "8 in", "joints": "0.95 ratio"}"#,
    refusals: &[
        (r#"{"joints": "0.2 ratio"}"#, Code::OutOfRange),
        (r#"{"old_slab": "8"}"#, Code::UnitMissing),
    ],
    call: scalar!(
        effective_unbonded,
        (required: Length, old_slab: Length, joints: Ratio) =>
            |found| ([found.effective.base(), found.overlay.base()], found.note)
    ),
};
