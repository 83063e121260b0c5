//! The rows of falls and of single triangles.

use crate::basis::BasisId;
use crate::failure::Code;
use crate::grade::{fall, prism};
use crate::operation::Operation;
use crate::quantity::{Area, Length, Slope, Typed};
use crate::{number, scalar};

/// The fall of a surface.
pub static FALL: Operation = Operation {
    name: "fall",
    module: "grade",
    since: "0.1.0",
    meaning: "The fall of a surface that loses a height over a run.",
    equation: "fall = drop / run",
    assumes: "drop and run are measured plumb and level, not along the slope",
    ports: &[
        number!(drop: length in inch | millimeter, fall::DROP, "height lost"),
        number!(run: length in foot | meter, fall::RUN, "level distance over which it is lost"; zero rare),
    ],
    results: &[number!(fall: slope in inch_per_foot | percent, fall::FALL, "fall of the surface")],
    basis: &[BasisId::Geometry],
    example: r#"{"drop": "2 in", "run": "20 ft"}"#,
    refusals: &[
        (r#"{"drop": "-2 in"}"#, Code::OutOfRange),
        (r#"{"run": "0 ft"}"#, Code::OutOfRange),
        (r#"{"run": "20 psi"}"#, Code::UnitWrong),
    ],
    call: scalar!(fall::fall, (drop: Length, run: Length) => |fall| [fall.base()]),
};

/// The height lost at a fall.
pub static DROP: Operation = Operation {
    name: "drop",
    module: "grade",
    since: "0.1.0",
    meaning: "The height that a surface loses over a run at a fall.",
    equation: "drop = fall x run",
    assumes: "the run is measured level, not along the slope",
    ports: &[
        number!(fall: slope in inch_per_foot | percent, fall::FALL, "fall of the surface"),
        number!(run: length in foot | meter, fall::RUN, "level distance"; zero rare),
    ],
    results: &[number!(drop: length in inch | millimeter, fall::DROP, "height lost")],
    basis: &[BasisId::Geometry],
    example: r#"{"fall": "1/8 in/ft", "run": "32 ft"}"#,
    refusals: &[(r#"{"fall": "-1 %"}"#, Code::OutOfRange), (r#"{"run": "32"}"#, Code::UnitMissing)],
    call: scalar!(fall::drop, (fall: Slope, run: Length) => |drop| [drop.base()]),
};

/// The volume over one triangle.
pub static TRIANGULAR_PRISM: Operation = Operation {
    name: "triangular_prism",
    module: "grade",
    since: "0.1.0",
    meaning: "The volume between old slab and finish over one triangle, split where they meet.",
    equation: "net = area (t1 + t2 + t3) / 3; one corner of the other sign: high = (area / 3) t3^3 / ((t3 - t1) (t3 - t2))",
    assumes: "both surfaces are plane over the triangle",
    ports: &[
        number!(area: area in square_foot | square_meter, prism::AREA, "plan area of the triangle"; zero rare),
        number!(thickness_1: length in inch | millimeter, prism::THICKNESS, "thickness at the first corner"),
        number!(thickness_2: length in inch | millimeter, prism::THICKNESS, "thickness at the second corner"),
        number!(thickness_3: length in inch | millimeter, prism::THICKNESS, "thickness at the third corner"),
    ],
    results: &[
        number!(net: volume in cubic_foot | cubic_meter, crate::quantity::Range::ANY, "fill less high spots"),
        number!(fill: volume in cubic_foot | cubic_meter, crate::quantity::Range::NOT_NEGATIVE, "fill above the old slab"),
        number!(high: volume in cubic_foot | cubic_meter, crate::quantity::Range::NOT_NEGATIVE, "old slab above the finish"),
    ],
    basis: &[BasisId::Geometry],
    example: r#"{"area": "50 ft2", "thickness_1": "3 in", "thickness_2": "4 in", "thickness_3": "5 in"}"#,
    refusals: &[
        (r#"{"area": "0 ft2"}"#, Code::OutOfRange),
        (r#"{"thickness_2": "1000 ft"}"#, Code::OutOfRange),
    ],
    call: scalar!(
        prism::triangular_prism,
        (area: Area, thickness_1: Length, thickness_2: Length, thickness_3: Length) =>
            |prism| [prism.net.base(), prism.fill.base(), prism.high.base()]
    ),
};
