//! The rows of what a slab may carry: safety, repetitions, single, uniform and wall loads.

use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::operation::scalar::Word;
use crate::operation::{Answer, Args, Call, Choice, Kind, Operation, Value};
use crate::overlay::strength::concrete::{MODULUS, RUPTURE, STRENGTH};
use crate::overlay::strength::contact::RADIUS;
use crate::overlay::strength::fatigue::{STRESS_RATIO, repetitions};
use crate::overlay::strength::line::{WallPlace, wall};
use crate::overlay::strength::safety::{FACTOR, LoadKind, allowable, allowable_load, factors};
use crate::overlay::strength::several::Position;
use crate::overlay::strength::slab::{POISSON, SUBGRADE};
use crate::overlay::strength::uniform::uniform;
use crate::overlay::thickness::SLAB;
use crate::quantity::{Length, Pressure, Range, Ratio, SubgradeReaction, Typed};
use crate::{number, port, scalar};

/// Safety factors.
pub static SAFETY_FACTORS: Operation = Operation {
    name: "safety_factors",
    module: "overlay",
    since: "0.1.0",
    meaning: "The safety factors in use for a kind of load, from memory: confirm.",
    equation: "moving wheel 1.4, usual 2; wheel with unlimited passes 2 to 2.2; post or jack 1.7, usual 2; uniform 1.4, usual 2; wall 1.7, usual 2",
    assumes: "the modulus of rupture over the factor is the stress allowed",
    ports: &[port!(kind: Kind::Choice(LoadKind::WORDS), "kind of load")],
    results: &[
        number!(least: ratio in one | one, FACTOR, "least in use"),
        number!(usual: ratio in one | one, FACTOR, "taken where nobody says"),
    ],
    basis: &[BasisId::SafetyFactors],
    example: r#"{"kind": "post or jack"}"#,
    refusals: &[(r#"{"kind": "snow"}"#, Code::WordUnknown)],
    call: scalar!(factors, (kind: Word<LoadKind>) => |found| ([found.least.base(), found.usual.base()], found.note)),
};

/// The stress allowed.
pub static ALLOWABLE_STRESS: Operation = Operation {
    name: "allowable_stress",
    module: "overlay",
    since: "0.1.0",
    meaning: "The stress that a safety factor allows.",
    equation: "allowable = rupture / safety",
    assumes: "plain concrete",
    ports: &[
        number!(rupture: pressure in psi | megapascal, RUPTURE, "modulus of rupture"; zero rare),
        number!(safety: ratio in one | one, FACTOR, "safety factor"; zero rare),
    ],
    results: &[number!(allowable: pressure in psi | megapascal, Range::POSITIVE, "stress allowed")],
    basis: &[BasisId::SafetyFactors],
    example: r#"{"rupture": "570 psi", "safety": "1.7 ratio"}"#,
    refusals: &[
        (r#"{"safety": "0.5 ratio"}"#, Code::OutOfRange),
        (r#"{"rupture": "0 psi"}"#, Code::OutOfRange),
    ],
    call: scalar!(allowable, (rupture: Pressure, safety: Ratio) => |found| [found.base()]),
};

/// The load allowed.
pub static ALLOWABLE_LOAD: Operation = Operation {
    name: "allowable_load",
    module: "overlay",
    since: "0.1.0",
    meaning: "The one load that a slab carries at a place, on a contact of a given radius.",
    equation: "load = (rupture / safety) / stress of a unit load; interior 1926, edge circle 1948, corner Westergaard 1926",
    assumes: "the contact keeps its radius; one load by itself; nothing carried across joints",
    ports: &[
        port!(position: Kind::Choice(Position::WORDS), "where on the slab it stands"),
        number!(radius: length in inch | millimeter, RADIUS, "radius of the contact"; zero rare),
        number!(thickness: length in inch | millimeter, SLAB, "thickness of the slab"; zero rare),
        number!(modulus: pressure in psi | megapascal, MODULUS, "modulus of elasticity of the concrete"; zero rare),
        number!(poisson: ratio in one | one, POISSON, "Poisson's ratio of the concrete, often 0.15"),
        number!(subgrade: subgrade_reaction in pci | megapascal_per_meter, SUBGRADE, "subgrade reaction k"; zero rare),
        number!(rupture: pressure in psi | megapascal, RUPTURE, "its strength in bending, the modulus of rupture"; zero rare),
        number!(safety: ratio in one | one, FACTOR, "safety factor"; zero rare),
    ],
    results: &[number!(load: force in pound_force | kilonewton, Range::POSITIVE, "load allowed")],
    basis: &[BasisId::Westergaard1926, BasisId::Westergaard1948, BasisId::SafetyFactors],
    example: r#"{"position": "interior", "radius": "3 in", "thickness": "4 in", "modulus": "3,600,000 psi", "poisson": "0.15 ratio", "subgrade": "100 pci", "rupture": "550 psi", "safety": "2 ratio"}"#,
    refusals: &[
        (r#"{"radius": "40 in"}"#, Code::ContactTooWide),
        (r#"{"position": "corner", "radius": "12 in"}"#, Code::ContactTooWide),
        (r#"{"safety": "-2 ratio"}"#, Code::OutOfRange),
    ],
    call: scalar!(
        allowable_load,
        (position: Word<Position>, radius: Length, thickness: Length, modulus: Pressure, poisson: Ratio, subgrade: SubgradeReaction, rupture: Pressure, safety: Ratio) =>
            |found| [found.base()]
    ),
};

/// Repetitions allowed.
pub static REPETITIONS_ALLOWED: Operation = Operation {
    name: "repetitions_allowed",
    module: "overlay",
    since: "0.1.0",
    meaning: "How often a stress may come, by its ratio to the modulus of rupture.",
    equation: "below 0.45 without limit; to 0.55 repetitions = (4.2577 / (stress_ratio - 0.4325))^3.268; above log10 repetitions = (0.9718 - stress_ratio) / 0.0828",
    assumes: "stress and strength are those of the place that governs",
    ports: &[
        number!(stress_ratio: ratio in one | one, STRESS_RATIO, "stress over modulus of rupture"; zero rare),
    ],
    results: &[
        port!(unlimited: Kind::Choice(<bool as Choice>::WORDS), "whether there is no limit"),
        number!(repetitions: ratio in one | one, Range::NOT_NEGATIVE, "how often; none where there is no limit"; optional),
    ],
    basis: &[BasisId::Fatigue],
    example: r#"{"stress_ratio": "0.55 ratio"}"#,
    refusals: &[
        (r#"{"stress_ratio": "1.2 ratio"}"#, Code::OutOfRange),
        (r#"{"stress_ratio": "0 ratio"}"#, Code::OutOfRange),
    ],
    call: Call::Record(repetitions_allowed),
};

fn repetitions_allowed(args: &Args<'_>) -> Result<Answer> {
    let found = repetitions(args.required(0)?)?;
    let number = found.map_or(Value::Absent, |number| Value::Number(number.base()));
    Ok(Answer::of([Value::Choice(usize::from(found.is_none())), number]))
}

/// The uniform load allowed.
pub static UNIFORM_LOAD: Operation = Operation {
    name: "uniform_load",
    module: "overlay",
    since: "0.1.0",
    meaning: "The uniform load that may stand on both sides of an aisle without joints, whatever the width of the aisle.",
    equation: "load = 0.123 (rupture / safety) sqrt(thickness x subgrade), psf, psi, in, pci",
    assumes: "the aisle takes its worst width; no joint in it",
    ports: &[
        number!(thickness: length in inch | millimeter, SLAB, "thickness of the slab"; zero rare),
        number!(subgrade: subgrade_reaction in pci | megapascal_per_meter, SUBGRADE, "subgrade reaction k"; zero rare),
        number!(rupture: pressure in psi | megapascal, RUPTURE, "modulus of rupture"; zero rare),
        number!(safety: ratio in one | one, FACTOR, "safety factor"; zero rare),
    ],
    results: &[
        number!(load: pressure in psf | kilopascal, Range::POSITIVE, "load allowed on each unit of area"),
    ],
    basis: &[BasisId::UniformLoad],
    example: r#"{"thickness": "6 in", "subgrade": "100 pci", "rupture": "600 psi", "safety": "2 ratio"}"#,
    refusals: &[
        (r#"{"safety": "20 ratio"}"#, Code::OutOfRange),
        (r#"{"subgrade": "0 pci"}"#, Code::OutOfRange),
    ],
    call: scalar!(
        uniform,
        (thickness: Length, subgrade: SubgradeReaction, rupture: Pressure, safety: Ratio) => |found| [found.base()]
    ),
};

/// The wall allowed.
pub static WALL_LOAD: Operation = Operation {
    name: "wall_load",
    module: "overlay",
    since: "0.1.0",
    meaning: "The load of a wall that a slab carries without being thickened, in the middle, at a doweled joint or at a free edge.",
    equation: "middle: load = 4 Fb S lambda; free edge: load = Fb S lambda / 0.3224; Fb = 1.6 sqrt(strength) psi, S = thickness^2 / 6, lambda = (subgrade / (4 Ec thickness^3 / 12))^(1/4), Ec = 57000 sqrt(strength) psi",
    assumes: "a beam without end on springs, the wall long",
    ports: &[
        number!(thickness: length in inch | millimeter, SLAB, "thickness of the slab"; zero rare),
        number!(subgrade: subgrade_reaction in pci | megapascal_per_meter, SUBGRADE, "subgrade reaction k"; zero rare),
        number!(strength: pressure in psi | megapascal, STRENGTH, "compressive strength f'c"; zero rare),
        port!(place: Kind::Choice(WallPlace::WORDS), "where the wall stands"),
    ],
    results: &[
        number!(load: line_load in pound_force_per_foot | kilonewton_per_meter, Range::POSITIVE, "load allowed on each unit of length"),
    ],
    basis: &[BasisId::WallLoad],
    example: r#"{"thickness": "6 in", "subgrade": "100 pci", "strength": "4,000 psi", "place": "free edge"}"#,
    refusals: &[(r#"{"strength": "0 psi"}"#, Code::OutOfRange), (r#"{"place": "roof"}"#, Code::WordUnknown)],
    call: scalar!(
        wall,
        (thickness: Length, subgrade: SubgradeReaction, strength: Pressure, place: Word<WallPlace>) => |found| [found.base()]
    ),
};
