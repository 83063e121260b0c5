//! The rows of curling.

use crate::basis::BasisId;
use crate::failure::Code;
use crate::operation::Operation;
use crate::overlay::strength::concrete::MODULUS;
use crate::overlay::strength::curling::{DIFFERENCE, EXPANSION, SIDE, coefficient, curling};
use crate::overlay::strength::slab::{POISSON, SUBGRADE};
use crate::overlay::strength::westergaard::STIFFNESS;
use crate::overlay::thickness::SLAB;
use crate::quantity::{
    Length, Pressure, Range, Ratio, SubgradeReaction, TemperatureDifference, ThermalExpansion, Typed,
};
use crate::{number, scalar};

/// Bradbury's coefficient.
pub static CURLING_COEFFICIENT: Operation = Operation {
    name: "curling_coefficient",
    module: "overlay",
    since: "0.1.0",
    meaning: "Bradbury's coefficient of curling for a side of a slab.",
    equation: "coefficient = 1 - 2 cos m cosh m (tan m + tanh m) / (sin 2m + sinh 2m), m = side / (stiffness sqrt 8)",
    assumes: "a strip free at both ends",
    ports: &[
        number!(side: length in foot | meter, SIDE, "side of the slab between joints"; zero rare),
        number!(stiffness: length in inch | millimeter, STIFFNESS, "radius of relative stiffness"; zero rare),
    ],
    results: &[number!(coefficient: ratio in one | one, Range::ANY, "Bradbury's coefficient")],
    basis: &[BasisId::Bradbury],
    example: r#"{"side": "25 ft", "stiffness": "30.57 in"}"#,
    refusals: &[(r#"{"side": "0 ft"}"#, Code::OutOfRange)],
    call: scalar!(coefficient, (side: Length, stiffness: Length) => |found| [found.base()]),
};

/// Curling stress.
pub static CURLING_STRESS: Operation = Operation {
    name: "curling_stress",
    module: "overlay",
    since: "0.1.0",
    meaning: "Stress from a difference of temperature between top and bottom of a slab.",
    equation: "edge = C modulus expansion difference / 2; interior = modulus expansion difference / (2 (1 - poisson^2)) (C along + poisson C across)",
    assumes: "temperature straight through the thickness, the slab held down by its weight; tension is at the bottom where the top is warmer, else at the top",
    ports: &[
        number!(length: length in foot | meter, SIDE, "length of the slab between joints"; zero rare),
        number!(width: length in foot | meter, SIDE, "width of the slab between joints"; zero rare),
        number!(thickness: length in inch | millimeter, SLAB, "thickness of the slab"; zero rare),
        number!(modulus: pressure in psi | megapascal, MODULUS, "modulus of elasticity of the concrete"; zero rare),
        number!(poisson: ratio in one | one, POISSON, "Poisson's ratio of the concrete, often 0.15"),
        number!(subgrade: subgrade_reaction in pci | megapascal_per_meter, SUBGRADE, "subgrade reaction k"; zero rare),
        number!(expansion: thermal_expansion in per_fahrenheit | per_celsius, EXPANSION, "coefficient of thermal expansion"; zero rare),
        number!(difference: temperature_difference in fahrenheit_difference | kelvin_difference, DIFFERENCE, "between top and bottom, whichever is warmer"),
    ],
    results: &[
        number!(interior_length: pressure in psi | megapascal, Range::ANY, "stress in the middle, along the length"),
        number!(interior_width: pressure in psi | megapascal, Range::ANY, "stress in the middle, along the width"),
        number!(edge_length: pressure in psi | megapascal, Range::ANY, "stress half way of an edge that runs along the length"),
        number!(edge_width: pressure in psi | megapascal, Range::ANY, "stress half way of an edge that runs along the width"),
        number!(of_length: ratio in one | one, Range::ANY, "coefficient C of the length"),
        number!(of_width: ratio in one | one, Range::ANY, "coefficient C of the width"),
    ],
    basis: &[BasisId::Bradbury, BasisId::RelativeStiffness],
    example: r#"{"length": "25 ft", "width": "12 ft", "thickness": "8 in", "modulus": "4,000,000 psi", "poisson": "0.15 ratio", "subgrade": "200 pci", "expansion": "5e-6 /degF", "difference": "20 degF"}"#,
    refusals: &[
        (r#"{"expansion": "5 /degF"}"#, Code::OutOfRange),
        (r#"{"difference": "-20 degF"}"#, Code::OutOfRange),
        (r#"{"expansion": "5e-6 in"}"#, Code::UnitWrong),
    ],
    call: scalar!(
        curling,
        (length: Length, width: Length, thickness: Length, modulus: Pressure, poisson: Ratio, subgrade: SubgradeReaction, expansion: ThermalExpansion, difference: TemperatureDifference) =>
            |found| [
                found.interior_length.base(),
                found.interior_width.base(),
                found.edge_length.base(),
                found.edge_width.base(),
                found.of_length.base(),
                found.of_width.base(),
            ]
    ),
};
