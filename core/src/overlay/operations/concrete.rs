//! The rows of the concrete's stiffness and strength.

use crate::basis::BasisId;
use crate::failure::Code;
use crate::operation::scalar::Word;
use crate::operation::{Choice, Kind, Operation};
use crate::overlay::strength::concrete::{
    DENSITY, MODULUS, RUPTURE, RuptureFormula, STRENGTH, modulus, modulus_by_density, rupture,
};
use crate::quantity::{Density, Pressure, Typed};
use crate::{number, port, scalar};

/// The modulus of elasticity.
pub static CONCRETE_MODULUS: Operation = Operation {
    name: "concrete_modulus",
    module: "overlay",
    since: "0.1.0",
    meaning: "The modulus of elasticity of normal-weight concrete from its compressive strength.",
    equation: "modulus = 57000 sqrt(strength), psi",
    assumes: "normal-weight concrete",
    ports: &[
        number!(strength: pressure in psi | megapascal, STRENGTH, "compressive strength f'c"; zero rare),
    ],
    results: &[number!(modulus: pressure in psi | megapascal, MODULUS, "modulus of elasticity")],
    basis: &[BasisId::ConcreteModulus],
    example: r#"{"strength": "4,000 psi"}"#,
    refusals: &[
        (r#"{"strength": "400 psi"}"#, Code::OutOfRange),
        (r#"{"strength": "4 in"}"#, Code::UnitWrong),
    ],
    call: scalar!(modulus, (strength: Pressure) => |found| [found.base()]),
};

/// The modulus of elasticity by unit weight.
pub static CONCRETE_MODULUS_BY_DENSITY: Operation = Operation {
    name: "concrete_modulus_by_density",
    module: "overlay",
    since: "0.1.0",
    meaning: "The modulus of elasticity of concrete from its compressive strength and unit weight.",
    equation: "modulus = 33 density^1.5 sqrt(strength), psi and lb/ft3",
    assumes: "90 to 160 lb/ft3",
    ports: &[
        number!(strength: pressure in psi | megapascal, STRENGTH, "compressive strength f'c"; zero rare),
        number!(density: density in pound_per_cubic_foot | kilogram_per_cubic_meter, DENSITY, "unit weight"; zero rare),
    ],
    results: &[number!(modulus: pressure in psi | megapascal, MODULUS, "modulus of elasticity")],
    basis: &[BasisId::ConcreteModulus],
    example: r#"{"strength": "4,000 psi", "density": "145 lb/ft3"}"#,
    refusals: &[(r#"{"density": "60 lb/ft3"}"#, Code::OutOfRange)],
    call: scalar!(modulus_by_density, (strength: Pressure, density: Density) => |found| [found.base()]),
};

/// The modulus of rupture.
pub static CONCRETE_RUPTURE: Operation = Operation {
    name: "concrete_rupture",
    module: "overlay",
    since: "0.1.0",
    meaning: "The modulus of rupture of normal-weight concrete from its compressive strength, by the building code or by the design of floors on ground.",
    equation: "rupture = 7.5 sqrt(strength) or 9 sqrt(strength), psi",
    assumes: "normal-weight concrete",
    ports: &[
        number!(strength: pressure in psi | megapascal, STRENGTH, "compressive strength f'c"; zero rare),
        port!(formula: Kind::Choice(RuptureFormula::WORDS), "which formula"),
    ],
    results: &[number!(rupture: pressure in psi | megapascal, RUPTURE, "modulus of rupture")],
    basis: &[BasisId::RuptureCode, BasisId::RuptureFloor],
    example: r#"{"strength": "4,000 psi", "formula": "floor design, 9"}"#,
    refusals: &[(r#"{"strength": "-1 psi"}"#, Code::OutOfRange), (r#"{"formula": "8"}"#, Code::WordUnknown)],
    call: scalar!(rupture, (strength: Pressure, formula: Word<RuptureFormula>) => |found| [found.base()]),
};
