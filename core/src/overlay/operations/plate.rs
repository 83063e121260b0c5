//! The rows of the plate on springs: its stiffness, the contact of a load, the influence at a distance.

use crate::basis::BasisId;
use crate::failure::Code;
use crate::operation::Operation;
use crate::overlay::strength::concrete::MODULUS;
use crate::overlay::strength::contact::{
    LOAD, PRESSURE, RADIUS, SPACING, dual_radius, equivalent_radius, radius,
};
use crate::overlay::strength::influence::{DISTANCE, influence};
use crate::overlay::strength::slab::{POISSON, SUBGRADE, stiffness};
use crate::overlay::strength::westergaard::STIFFNESS;
use crate::overlay::thickness::SLAB;
use crate::quantity::Typed;
use crate::quantity::{Force, Length, Pressure, Range, Ratio, SubgradeReaction};
use crate::{number, scalar};

/// The radius of relative stiffness.
pub static STIFFNESS_RADIUS: Operation = Operation {
    name: "stiffness_radius",
    module: "overlay",
    since: "0.1.0",
    meaning: "The radius of relative stiffness of a slab on its subgrade: how far a load is felt.",
    equation: "stiffness = (modulus thickness^3 / (12 (1 - poisson^2) subgrade))^(1/4)",
    assumes: "one layer, resting everywhere on springs",
    ports: &[
        number!(thickness: length in inch | millimeter, SLAB, "thickness of the slab"; zero rare),
        number!(modulus: pressure in psi | megapascal, MODULUS, "modulus of elasticity of the concrete"; zero rare),
        number!(poisson: ratio in one | one, POISSON, "Poisson's ratio of the concrete, often 0.15"),
        number!(subgrade: subgrade_reaction in pci | megapascal_per_meter, SUBGRADE, "subgrade reaction k"; zero rare),
    ],
    results: &[
        number!(stiffness: length in inch | millimeter, Range::POSITIVE, "radius of relative stiffness"),
    ],
    basis: &[BasisId::RelativeStiffness],
    example: r#"{"thickness": "10 in", "modulus": "4,000,000 psi", "poisson": "0.15 ratio", "subgrade": "100 pci"}"#,
    refusals: &[
        (r#"{"poisson": "0.6 ratio"}"#, Code::OutOfRange),
        (r#"{"subgrade": "1 pci"}"#, Code::OutOfRange),
        (r#"{"subgrade": "100 psi"}"#, Code::UnitWrong),
    ],
    call: scalar!(
        stiffness,
        (thickness: Length, modulus: Pressure, poisson: Ratio, subgrade: SubgradeReaction) => |found| [found.base()]
    ),
};

/// The radius of a contact.
pub static CONTACT_RADIUS: Operation = Operation {
    name: "contact_radius",
    module: "overlay",
    since: "0.1.0",
    meaning: "The radius of the circle that carries a load at its contact pressure.",
    equation: "radius = sqrt(load / (pi pressure))",
    assumes: "a tyre presses with its own pressure",
    ports: &[
        number!(load: force in pound_force | kilonewton, LOAD, "load of one wheel or post"; zero rare),
        number!(pressure: pressure in psi | kilopascal, PRESSURE, "contact pressure"; zero rare),
    ],
    results: &[number!(radius: length in inch | millimeter, Range::POSITIVE, "radius of the contact")],
    basis: &[BasisId::ContactCircle],
    example: r#"{"load": "4000 lb", "pressure": "80 psi"}"#,
    refusals: &[(r#"{"load": "0 lb"}"#, Code::OutOfRange), (r#"{"load": "4000 kg"}"#, Code::UnitWrong)],
    call: scalar!(radius, (load: Force, pressure: Pressure) => |found| [found.base()]),
};

/// The radius that stands for dual tyres.
pub static CONTACT_RADIUS_DUAL: Operation = Operation {
    name: "contact_radius_dual",
    module: "overlay",
    since: "0.1.0",
    meaning: "The radius of the one circle that stands for dual tyres.",
    equation: "radius = sqrt(0.8521 load / (pi pressure) + (spacing / pi) sqrt(load / (0.5227 pressure)))",
    assumes: "load of one of the two tyres",
    ports: &[
        number!(load: force in pound_force | kilonewton, LOAD, "load of one of the two tyres"; zero rare),
        number!(pressure: pressure in psi | kilopascal, PRESSURE, "contact pressure"; zero rare),
        number!(spacing: length in inch | millimeter, SPACING, "middle to middle of the two tyres"; zero rare),
    ],
    results: &[number!(radius: length in inch | millimeter, Range::POSITIVE, "radius of the circle")],
    basis: &[BasisId::DualTyres],
    example: r#"{"load": "5000 lb", "pressure": "88.42 psi", "spacing": "14 in"}"#,
    refusals: &[(r#"{"spacing": "1 in"}"#, Code::OutOfRange)],
    call: scalar!(dual_radius, (load: Force, pressure: Pressure, spacing: Length) => |found| [found.base()]),
};

/// The equivalent radius.
pub static EQUIVALENT_RADIUS: Operation = Operation {
    name: "equivalent_radius",
    module: "overlay",
    since: "0.1.0",
    meaning: "Westergaard's equivalent radius, which mends the stress right under a small contact.",
    equation: "equivalent = sqrt(1.6 radius^2 + thickness^2) - 0.675 thickness where radius < 1.724 thickness, else radius",
    assumes: "interior load, and the edge form of 1926",
    ports: &[
        number!(radius: length in inch | millimeter, RADIUS, "radius of the contact"; zero rare),
        number!(thickness: length in inch | millimeter, SLAB, "thickness of the slab"; zero rare),
    ],
    results: &[number!(equivalent: length in inch | millimeter, Range::POSITIVE, "equivalent radius")],
    basis: &[BasisId::EquivalentRadius],
    example: r#"{"radius": "6 in", "thickness": "10 in"}"#,
    refusals: &[(r#"{"radius": "-6 in"}"#, Code::OutOfRange)],
    call: scalar!(equivalent_radius, (radius: Length, thickness: Length) => |found| [found.base()]),
};

/// Influence at a distance.
pub static LOAD_INFLUENCE: Operation = Operation {
    name: "load_influence",
    module: "overlay",
    since: "0.1.0",
    meaning: "What a load on a circle does to a large slab on springs at a distance, for each unit of it: the exact solution.",
    equation: "F = mean of K0(x exp(i pi/4)) over the circle; deflection = -Im F / 2 pi, over load / (subgrade stiffness^2); radial = (Re F - (1 - poisson) Im(F'/x)) / 2 pi, tangential = (poisson Re F + (1 - poisson) Im(F'/x)) / 2 pi, over load; x = distance / stiffness",
    assumes: "a thin plate without end; stress = 6 moment / thickness^2",
    ports: &[
        number!(distance: length in inch | millimeter, DISTANCE, "from the middle of the load"),
        number!(radius: length in inch | millimeter, RADIUS, "radius of the contact, at most 2 radii of relative stiffness"; zero rare),
        number!(stiffness: length in inch | millimeter, STIFFNESS, "relative stiffness, its radius"; zero rare),
        number!(poisson: ratio in one | one, POISSON, "Poisson's ratio of the concrete, often 0.15"),
    ],
    results: &[
        number!(deflection: ratio in one | one, Range::ANY, "deflection over load / (subgrade stiffness^2)"),
        number!(radial: ratio in one | one, Range::ANY, "moment towards the load, for each unit of width and load"),
        number!(tangential: ratio in one | one, Range::ANY, "across that direction, for each unit of width and load"),
    ],
    basis: &[BasisId::PlateOnSprings],
    example: r#"{"distance": "40 in", "radius": "6 in", "stiffness": "42.97 in", "poisson": "0.15 ratio"}"#,
    refusals: &[
        (r#"{"radius": "90 in"}"#, Code::ContactTooWide),
        (r#"{"distance": "-1 in"}"#, Code::OutOfRange),
    ],
    call: scalar!(
        influence,
        (distance: Length, radius: Length, stiffness: Length, poisson: Ratio) =>
            |found| [found.deflection, found.radial, found.tangential]
    ),
};
