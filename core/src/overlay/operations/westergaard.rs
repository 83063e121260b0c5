//! The rows of Westergaard's loads.

use crate::basis::BasisId;
use crate::failure::Code;
use crate::operation::scalar::Word;
use crate::operation::{Choice, Kind, Operation, Port};
use crate::overlay::strength::concrete::MODULUS;
use crate::overlay::strength::contact::{LOAD, RADIUS};
use crate::overlay::strength::slab::{POISSON, SUBGRADE};
use crate::overlay::strength::westergaard::{
    CornerForm, CrackForm, EdgeForm, STIFFNESS, corner, corner_block, crack_distance, edge, edge_1926,
    edge_block, interior, interior_block,
};
use crate::overlay::thickness::SLAB;
use crate::quantity::{Force, Length, Pressure, Range, Ratio, SubgradeReaction, Typed};
use crate::{number, port, scalar};

const LOAD_PORT: Port =
    number!(load: force in pound_force | kilonewton, LOAD, "load of one wheel or post"; zero rare);
const RADIUS_PORT: Port =
    number!(radius: length in inch | millimeter, RADIUS, "radius of the contact"; zero rare);
const THICKNESS: Port =
    number!(thickness: length in inch | millimeter, SLAB, "thickness of the slab"; zero rare);
const MODULUS_PORT: Port = number!(modulus: pressure in psi | megapascal, MODULUS, "modulus of elasticity of the concrete"; zero rare);
const POISSON_PORT: Port =
    number!(poisson: ratio in one | one, POISSON, "Poisson's ratio of the concrete, often 0.15");
const SUBGRADE_PORT: Port = number!(subgrade: subgrade_reaction in pci | megapascal_per_meter, SUBGRADE, "subgrade reaction k"; zero rare);

const STRESS: Port = number!(stress: pressure in psi | megapascal, Range::ANY, "greatest tensile stress");
const DEFLECTION: Port =
    number!(deflection: length in inch | millimeter, Range::ANY, "settlement under the load");
const RELATIVE: Port =
    number!(stiffness: length in inch | millimeter, Range::POSITIVE, "radius of relative stiffness");

/// A load in the middle.
pub static INTERIOR_LOAD: Operation = Operation {
    name: "interior_load",
    module: "overlay",
    since: "0.1.0",
    meaning: "Stress and deflection under a load far from every edge, by Westergaard's equations of 1926.",
    equation: "stress = 3 (1 + poisson) load / (2 pi thickness^2) (ln(l/b) + 0.6159); deflection = load / (8 subgrade l^2) (1 + (ln(radius / 2l) - 0.673) (radius/l)^2 / 2 pi); l the radius of relative stiffness, b the equivalent radius",
    assumes: "tension at the bottom; the slab is at least 3.5 l across for the stress, 8 l for the deflection, and lies on its subgrade everywhere",
    ports: &[LOAD_PORT, RADIUS_PORT, THICKNESS, MODULUS_PORT, POISSON_PORT, SUBGRADE_PORT],
    results: &[STRESS, DEFLECTION, RELATIVE],
    basis: &[
        BasisId::Westergaard1926,
        BasisId::EquivalentRadius,
        BasisId::RelativeStiffness,
        BasisId::SlabSizes,
    ],
    example: r#"{"load": "10,000 lb", "radius": "6 in", "thickness": "10 in", "modulus": "4,000,000 psi", "poisson": "0.15 ratio", "subgrade": "100 pci"}"#,
    refusals: &[
        (r#"{"load": "0 lb"}"#, Code::OutOfRange),
        (r#"{"radius": "50 in"}"#, Code::ContactTooWide),
        (r#"{"thickness": "100 in"}"#, Code::OutOfRange),
        (r#"{"modulus": "4 psi"}"#, Code::OutOfRange),
    ],
    call: scalar!(
        interior,
        (load: Force, radius: Length, thickness: Length, modulus: Pressure, poisson: Ratio, subgrade: SubgradeReaction) =>
            |found| [found.stress.base(), found.deflection.base(), found.stiffness.base()];
        blocks interior_block
    ),
};

/// A load at an edge, 1948.
pub static EDGE_LOAD: Operation = Operation {
    name: "edge_load",
    module: "overlay",
    since: "0.1.0",
    meaning: "Stress and deflection under a load at a free edge far from corners, by Westergaard's equations of 1948 for a circle or a semicircle.",
    equation: "stress = 3 (1 + poisson) load / (pi (3 + poisson) thickness^2) (ln(modulus thickness^3 / (100 subgrade radius^4)) + c); circle c = 1.84 - 4 poisson / 3 + (1 - poisson) / 2 + 1.18 (1 + 2 poisson) radius / l; semicircle c = 3.84 - 4 poisson / 3 + (1 + 2 poisson) radius / 2l; deflection = sqrt(2 + 1.2 poisson) load / sqrt(modulus thickness^3 subgrade) (1 - d radius / l), d = 0.76 + 0.4 poisson or 0.323 + 0.17 poisson",
    assumes: "tension at the bottom along the edge, nothing carried across a joint; the circle touches the edge from inside; a semicircle has its straight side on the edge and its own radius, sqrt 2 of the circle's at the same load and pressure; the slab is at least 5 l across, 8 l for the deflection",
    ports: &[
        LOAD_PORT,
        RADIUS_PORT,
        THICKNESS,
        MODULUS_PORT,
        POISSON_PORT,
        SUBGRADE_PORT,
        port!(footprint: Kind::Choice(EdgeForm::WORDS), "shape of the contact; the radius is that shape's own"),
    ],
    results: &[STRESS, DEFLECTION, RELATIVE],
    basis: &[BasisId::Westergaard1948, BasisId::RelativeStiffness, BasisId::SlabSizes],
    example: r#"{"load": "10,000 lb", "radius": "6 in", "thickness": "10 in", "modulus": "4,000,000 psi", "poisson": "0.15 ratio", "subgrade": "100 pci", "footprint": "circle"}"#,
    refusals: &[
        (r#"{"radius": "50 in"}"#, Code::ContactTooWide),
        (r#"{"footprint": "square"}"#, Code::WordUnknown),
        (r#"{"poisson": "-0.1 ratio"}"#, Code::OutOfRange),
    ],
    call: scalar!(
        edge,
        (load: Force, radius: Length, thickness: Length, modulus: Pressure, poisson: Ratio, subgrade: SubgradeReaction, footprint: Word<EdgeForm>) =>
            |found| [found.stress.base(), found.deflection.base(), found.stiffness.base()];
        blocks edge_block
    ),
};

/// A load at an edge, 1926.
pub static EDGE_LOAD_1926: Operation = Operation {
    name: "edge_load_1926",
    module: "overlay",
    since: "0.1.0",
    meaning: "Stress under a load at a free edge far from corners, by Westergaard's equation of 1926; the forms of 1948 give a quarter to a half more.",
    equation: "stress = 0.572 load / thickness^2 (4 log10(l/b) + 0.359), Poisson's ratio 0.15",
    assumes: "Poisson's ratio 0.15; nothing carried across a joint; the slab is at least 5 l across",
    ports: &[LOAD_PORT, RADIUS_PORT, THICKNESS, MODULUS_PORT, SUBGRADE_PORT],
    results: &[STRESS],
    basis: &[BasisId::Westergaard1926, BasisId::EquivalentRadius, BasisId::SlabSizes],
    example: r#"{"load": "10,000 lb", "radius": "6 in", "thickness": "10 in", "modulus": "4,000,000 psi", "subgrade": "100 pci"}"#,
    refusals: &[
        (r#"{"radius": "50 in"}"#, Code::ContactTooWide),
        (r#"{"load": "10,000 psi"}"#, Code::UnitWrong),
    ],
    call: scalar!(
        edge_1926,
        (load: Force, radius: Length, thickness: Length, modulus: Pressure, subgrade: SubgradeReaction) => |found| [found.base()]
    ),
};

/// A load in a corner.
pub static CORNER_LOAD: Operation = Operation {
    name: "corner_load",
    module: "overlay",
    since: "0.1.0",
    meaning: "Stress and deflection under a load in a corner, by Westergaard or by Ioannides.",
    equation: "Westergaard: stress = 3 load / thickness^2 (1 - (radius sqrt 2 / l)^0.6), deflection = load / (subgrade l^2) (1.1 - 0.88 radius sqrt 2 / l); Ioannides, c = 1.772 radius: stress = 3 load / thickness^2 (1 - (c/l)^0.72), deflection = load / (subgrade l^2) (1.205 - 0.69 c/l)",
    assumes: "tension at the top across the bisector; the circle touches both edges; nothing carried across joints; the slab is at least 4 l across, 5 l for the deflection; the contact radius is at most 0.35 l (Westergaard) or 0.25 l (Ioannides): wider, the stress comes out too small",
    ports: &[
        LOAD_PORT,
        RADIUS_PORT,
        THICKNESS,
        MODULUS_PORT,
        POISSON_PORT,
        SUBGRADE_PORT,
        port!(formula: Kind::Choice(CornerForm::WORDS), "which formula"),
    ],
    results: &[STRESS, DEFLECTION, RELATIVE],
    basis: &[
        BasisId::Westergaard1926,
        BasisId::CornerIoannides,
        BasisId::RelativeStiffness,
        BasisId::SlabSizes,
    ],
    example: r#"{"load": "10,000 lb", "radius": "6 in", "thickness": "10 in", "modulus": "4,000,000 psi", "poisson": "0.15 ratio", "subgrade": "100 pci", "formula": "Ioannides 1985"}"#,
    refusals: &[
        (r#"{"radius": "25 in"}"#, Code::ContactTooWide),
        (r#"{"formula": "mine"}"#, Code::WordUnknown),
    ],
    call: scalar!(
        corner,
        (load: Force, radius: Length, thickness: Length, modulus: Pressure, poisson: Ratio, subgrade: SubgradeReaction, formula: Word<CornerForm>) =>
            |found| [found.stress.base(), found.deflection.base(), found.stiffness.base()];
        blocks corner_block
    ),
};

/// Where a corner breaks.
pub static CORNER_CRACK: Operation = Operation {
    name: "corner_crack",
    module: "overlay",
    since: "0.1.0",
    meaning: "How far from a corner it breaks off under a load, along the bisector.",
    equation: "textbook: distance = 2.58 sqrt(radius x stiffness); Westergaard: 2 sqrt(sqrt 2 x radius x stiffness), which is 2.38 sqrt(radius x stiffness)",
    assumes: "one load in the corner",
    ports: &[
        number!(radius: length in inch | millimeter, RADIUS, "radius of the contact"; zero rare),
        number!(stiffness: length in inch | millimeter, STIFFNESS, "relative stiffness, its radius"; zero rare),
        port!(formula: Kind::Choice(CrackForm::WORDS), "which formula"),
    ],
    results: &[number!(distance: length in inch | millimeter, Range::POSITIVE, "distance from the corner")],
    basis: &[BasisId::Westergaard1926],
    example: r#"{"radius": "6 in", "stiffness": "43 in", "formula": "textbook, 2.58"}"#,
    refusals: &[(r#"{"stiffness": "0 in"}"#, Code::OutOfRange)],
    call: scalar!(crack_distance, (radius: Length, stiffness: Length, formula: Word<CrackForm>) => |found| [found.base()]),
};
