//! The row of two layers bending together.

use crate::basis::BasisId;
use crate::failure::Code;
use crate::operation::scalar::Word;
use crate::operation::{Choice, Kind, Operation};
use crate::overlay::Bond;
use crate::overlay::strength::concrete::MODULUS;
use crate::overlay::strength::two_layers::two_layers;
use crate::overlay::thickness::SLAB;
use crate::quantity::{Length, Pressure, Range, Typed};
use crate::{number, port, scalar};

/// Two layers as one plate.
pub static TWO_LAYERS: Operation = Operation {
    name: "two_layers",
    module: "overlay",
    since: "0.1.0",
    meaning: "Overlay and old slab as one plate, and what each feels of that plate's bending stress. Ours, no source.",
    equation: "bonded: transformed section, equivalent = (12 I)^(1/3), stress = M y / I, in the old slab times its modulus over the overlay's; unbonded: equivalent^3 = overlay^3 + (old_modulus / overlay_modulus) old_slab^3, the moment shared as the rigidities",
    assumes: "both layers take one curvature and have one Poisson's ratio; unbonded without friction; partly bonded counts as unbonded; the plate has tension below",
    ports: &[
        port!(bond: Kind::Choice(Bond::WORDS), "how the overlay holds to the old slab"),
        number!(overlay: length in inch | millimeter, SLAB, "thickness of the overlay"; zero rare),
        number!(overlay_modulus: pressure in psi | megapascal, MODULUS, "modulus of elasticity of the overlay"; zero rare),
        number!(old_slab: length in inch | millimeter, SLAB, "the old slab's thickness"; zero rare),
        number!(old_modulus: pressure in psi | megapascal, MODULUS, "the old slab's modulus of elasticity"; zero rare),
    ],
    results: &[
        number!(equivalent: length in inch | millimeter, Range::POSITIVE, "thickness of the plate of the overlay's concrete that is as stiff as both"),
        number!(overlay_share: ratio in one | one, Range::NOT_NEGATIVE, "share of the rigidity that the overlay brings"),
        number!(overlay_top: ratio in one | one, Range::ANY, "stress at the top of the overlay, over the plate's bending stress; tension positive"),
        number!(overlay_bottom: ratio in one | one, Range::ANY, "at the bottom of the overlay"),
        number!(old_top: ratio in one | one, Range::ANY, "old slab, at its top"),
        number!(old_bottom: ratio in one | one, Range::ANY, "old slab, at its bottom"),
    ],
    basis: &[BasisId::TwoLayers],
    example: r#"{"bond": "bonded", "overlay": "2 in", "overlay_modulus": "4,000,000 psi", "old_slab": "4 in", "old_modulus": "3,000,000 psi"}"#,
    refusals: &[
        (r#"{"overlay": "0 in"}"#, Code::OutOfRange),
        (r#"{"old_modulus": "3 psi"}"#, Code::OutOfRange),
    ],
    call: scalar!(
        two_layers,
        (bond: Word<Bond>, overlay: Length, overlay_modulus: Pressure, old_slab: Length, old_modulus: Pressure) =>
            |found| [
                found.equivalent.base(),
                found.overlay_share.base(),
                found.overlay_top.base(),
                found.overlay_bottom.base(),
                found.old_top.base(),
                found.old_bottom.base(),
            ]
    ),
};
