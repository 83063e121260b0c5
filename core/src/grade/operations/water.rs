//! The rows of puddles and of rain that runs off.

use crate::basis::BasisId;
use crate::failure::Code;
use crate::grade::drainage::puddle::{FALL, WAVE_HEIGHT, WAVE_LENGTH, puddle, puddle_fall};
use crate::grade::drainage::runoff::{AREA, COEFFICIENT, RAIN, runoff};
use crate::operation::Operation;
use crate::quantity::{Area, Length, RainIntensity, Range, Ratio, Slope, Typed};
use crate::{number, scalar};

/// The least fall that drains a wave.
pub static PUDDLE_FALL: Operation = Operation {
    name: "puddle_fall",
    module: "grade",
    since: "0.1.0",
    meaning: "The least fall at which a wave of the surface holds no water.",
    equation: "fall = pi wave_height / wave_length, the steepest rise of the wave",
    assumes: "the wave is a sine, its height taken from crest to trough, its length from crest to crest, along the fall",
    ports: &[
        number!(wave_height: length in inch | millimeter, WAVE_HEIGHT, "height of the wave, crest to trough"),
        number!(wave_length: length in foot | meter, WAVE_LENGTH, "length of the wave, crest to crest"; zero rare),
    ],
    results: &[
        number!(fall: slope in inch_per_foot | percent, Range::NOT_NEGATIVE, "the least fall that drains it"),
    ],
    basis: &[BasisId::Geometry, BasisId::WaveAsScreeded],
    example: r#"{"wave_height": "3/16 in", "wave_length": "4 ft"}"#,
    refusals: &[
        (r#"{"wave_height": "-1/8 in"}"#, Code::OutOfRange),
        (r#"{"wave_length": "0 ft"}"#, Code::OutOfRange),
    ],
    call: scalar!(puddle_fall, (wave_height: Length, wave_length: Length) => |fall| [fall.base()]),
};

/// How deep a wave holds water.
pub static PUDDLE_DEPTH: Operation = Operation {
    name: "puddle_depth",
    module: "grade",
    since: "0.1.0",
    meaning: "How deep a wave of the surface holds water on a fall, and the greatest wave that drains there.",
    equation: "depth = d (sin t - t cos t), cos t = fall L / (pi d), none where that is 1 or more; greatest d = fall L / pi",
    assumes: "the wave is a sine of height d from crest to trough and length L from crest to crest, along the fall; water stands to the rim",
    ports: &[
        number!(wave_height: length in inch | millimeter, WAVE_HEIGHT, "height of the wave, crest to trough"),
        number!(wave_length: length in foot | meter, WAVE_LENGTH, "length of the wave, crest to crest"; zero rare),
        number!(fall: slope in inch_per_foot | percent, FALL, "fall of the surface"),
    ],
    results: &[
        number!(depth: length in inch | millimeter, Range::NOT_NEGATIVE, "greatest depth of the water"),
        number!(greatest_wave: length in inch | millimeter, Range::NOT_NEGATIVE, "the greatest wave of that length that drains"),
    ],
    basis: &[BasisId::Geometry, BasisId::WaveAsScreeded],
    example: r#"{"wave_height": "1/4 in", "wave_length": "4 ft", "fall": "1/8 in/ft"}"#,
    refusals: &[
        (r#"{"wave_height": "2 ft"}"#, Code::OutOfRange),
        (r#"{"fall": "-1 %"}"#, Code::OutOfRange),
        (r#"{"wave_length": "0 ft"}"#, Code::OutOfRange),
    ],
    call: scalar!(
        puddle,
        (wave_height: Length, wave_length: Length, fall: Slope) =>
            |puddle| [puddle.depth.base(), puddle.greatest_wave.base()]
    ),
};

/// Rain that runs off an area.
pub static RUNOFF: Operation = Operation {
    name: "runoff",
    module: "grade",
    since: "0.1.0",
    meaning: "The rain that runs off an area, in a volume for each time.",
    equation: "flow = coefficient x rain x area (rational method)",
    assumes: "rain falls as fast all over and long enough that all of the area runs",
    ports: &[
        number!(area: area in square_foot | square_meter, AREA, "area that rain falls on"; zero rare),
        number!(rain: rain_intensity in inch_per_hour | millimeter_per_hour, RAIN, "how fast rain comes down"; zero rare),
        number!(coefficient: ratio in percent | percent, COEFFICIENT, "the share that runs off"),
    ],
    results: &[
        number!(flow: flow in gallon_per_minute | liter_per_second, Range::NOT_NEGATIVE, "water that runs off"),
    ],
    basis: &[BasisId::RationalMethod],
    example: r#"{"area": "500 ft2", "rain": "4 in/h", "coefficient": "90 %"}"#,
    refusals: &[
        (r#"{"rain": "100 in/h"}"#, Code::OutOfRange),
        (r#"{"coefficient": "101 %"}"#, Code::OutOfRange),
        (r#"{"rain": "4 in"}"#, Code::UnitWrong),
    ],
    call: scalar!(runoff, (area: Area, rain: RainIntensity, coefficient: Ratio) => |flow| [flow.base()]),
};
