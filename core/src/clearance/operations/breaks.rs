//! The rows of breaks of grade.

use crate::basis::BasisId;
use crate::clearance::approach::{CHANGE, ROOM, VEHICLE, crest, sag};
use crate::failure::Code;
use crate::operation::Operation;
use crate::quantity::{Length, Range, Slope, Typed};
use crate::{number, scalar};

/// What a crest takes of the ground clearance.
pub static CREST_CLEARANCE: Operation = Operation {
    name: "crest_clearance",
    module: "clearance",
    since: "0.1.0",
    meaning: "What a crest takes of the room under a vehicle, midway between its axles.",
    equation: "lost = wheelbase change / 4; exact = (wheelbase / 2) tan(atan(change) / 2)",
    assumes: "wheels as points, a wheelbase apart, the crest midway; one side of it level for the exact form",
    ports: &[
        number!(wheelbase: length in inch | millimeter, VEHICLE, "from axle to axle"; zero rare),
        number!(change: slope in percent | percent, CHANGE, "change of grade"),
    ],
    results: &[
        number!(lost: length in inch | millimeter, Range::NOT_NEGATIVE, "room taken, slopes for angles"),
        number!(exact: length in inch | millimeter, Range::NOT_NEGATIVE, "room taken, exactly"),
    ],
    basis: &[BasisId::Geometry],
    example: r#"{"wheelbase": "110 in", "change": "10 %"}"#,
    refusals: &[
        (r#"{"wheelbase": "0 in"}"#, Code::OutOfRange),
        (r#"{"change": "-5 %"}"#, Code::OutOfRange),
        (r#"{"change": "5 in"}"#, Code::UnitWrong),
    ],
    call: scalar!(crest, (wheelbase: Length, change: Slope) => |crest| [crest.taken.base(), crest.exact.base()]),
};

/// The greatest sag that a bumper clears.
pub static SAG_BREAK: Operation = Operation {
    name: "sag_break",
    module: "clearance",
    since: "0.1.0",
    meaning: "The greatest change of grade of a sag that a bumper clears.",
    equation: "change = bumper / overhang",
    assumes: "the vehicle stands level with its front axle at the sag; wheels as points",
    ports: &[
        number!(overhang: length in inch | millimeter, VEHICLE, "from the front axle to the bumper"; zero rare),
        number!(bumper: length in inch | millimeter, ROOM, "room under the bumper"; zero rare),
    ],
    results: &[
        number!(change: slope in percent | percent, Range::NOT_NEGATIVE, "the greatest change of grade"),
    ],
    basis: &[BasisId::Geometry],
    example: r#"{"overhang": "36 in", "bumper": "9 in"}"#,
    refusals: &[(r#"{"overhang": "0 in"}"#, Code::OutOfRange), (r#"{"bumper": "50 in"}"#, Code::OutOfRange)],
    call: scalar!(sag, (overhang: Length, bumper: Length) => |change| [change.base()]),
};
