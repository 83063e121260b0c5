//! The rows of moisture: probes, what they say, drying times, the dish.

use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::note::{Note, NoteCode};
use crate::operation::scalar::Word;
use crate::operation::{Answer, Args, Call, Choice, Kind, Operation, TableType, Value};
use crate::overlay::moisture::{
    AREA, DISH, Drying, Dryness, GAIN, HUMIDITY, STANDS, WATER_CEMENT, drying_time, drying_time_by_water,
    judged, probes, vapour_emission,
};
use crate::overlay::thickness::SLAB;
use crate::quantity::{Area, Humidity, Length, Mass, Range, Time, Typed, VapourEmission, WaterCementRatio};
use crate::{number, port, scalar};

/// Three, up to what the largest area takes.
const PROBES: Kind = Kind::Count(3, 100_000);

/// How many probes, and how deep.
pub static MOISTURE_TESTS: Operation = Operation {
    name: "moisture_tests",
    module: "overlay",
    since: "0.1.0",
    meaning: "How many humidity probes a floor takes before it is covered, and how deep their holes are.",
    equation: "probes = 3 for the first 1000 ft2, 1 for each further 1000 ft2 or part; depth = 0.4 thickness drying from one side, 0.2 from two",
    assumes: "a hole is closed 24 h before it is read (72 h before the edition of 2018, from memory); the floor is at the temperature and in the air of its use",
    ports: &[
        number!(area: area in square_foot | square_meter, AREA, "area of the floor"; zero rare),
        number!(thickness: length in inch | millimeter, SLAB, "thickness of the slab that dries: of an overlay on a sheet, its own"; zero rare),
        port!(drying: Kind::Choice(Drying::WORDS), "which sides it dries from"),
    ],
    results: &[
        port!(count: PROBES, "how many probes"),
        number!(depth: length in inch | millimeter, Range::POSITIVE, "depth of their holes"),
    ],
    basis: &[BasisId::HumidityProbes],
    example: r#"{"area": "1,800 ft2", "thickness": "4 in", "drying": "one side"}"#,
    refusals: &[
        (r#"{"area": "0 ft2"}"#, Code::OutOfRange),
        (r#"{"thickness": "-4 in"}"#, Code::OutOfRange),
        (r#"{"drying": "three sides"}"#, Code::WordUnknown),
    ],
    call: scalar!(
        probes,
        (area: Area, thickness: Length, drying: Word<Drying>) => |found| [found.count as f64, found.depth.base()]
    ),
};

/// Readings of probes.
static READINGS: TableType = TableType {
    name: "readings",
    meaning: "a probe",
    columns: &[number!(humidity: humidity in percent | percent, HUMIDITY, "relative humidity that it reads")],
    least_rows: 1,
};

/// What the probes say.
pub static MOISTURE_VERDICT: Operation = Operation {
    name: "moisture_verdict",
    module: "overlay",
    since: "0.1.0",
    meaning: "Whether a floor is dry enough for what goes on it, by its humidity probes and the limit of the maker of that.",
    equation: "dry enough where the highest reading is within the limit and there are as many probes as the area takes",
    assumes: "vapour does no harm to a cement overlay: coverings, sealers and coatings on it suffer; a sheet under an unbonded overlay stops what comes from below",
    ports: &[
        port!(readings: Kind::Table(&READINGS), "what each probe reads"),
        number!(limit: humidity in percent | percent, HUMIDITY, "the maker's limit"; zero rare, optional),
        number!(area: area in square_foot | square_meter, AREA, "area of the floor"; zero rare, optional),
    ],
    results: &[
        port!(verdict: Kind::Choice(Dryness::WORDS), "what the readings say"),
        number!(highest: humidity in percent | percent, HUMIDITY, "highest reading, which governs"),
        port!(wanted: PROBES, "how many probes the area takes; none without an area"; optional),
    ],
    basis: &[BasisId::HumidityLimit, BasisId::HumidityProbes, BasisId::VapourAndCoverings],
    example: r#"{"readings": {"humidity": ["74 %", "79 %", "77 %"]}, "limit": "80 %", "area": "600 ft2"}"#,
    refusals: &[
        (r#"{"readings": []}"#, Code::EmptyList),
        (r#"{"readings": {"humidity": ["74 %", "120 %"]}}"#, Code::OutOfRange),
        (r#"{"limit": "0 %"}"#, Code::OutOfRange),
    ],
    call: Call::Record(moisture_verdict),
};

fn moisture_verdict(args: &Args<'_>) -> Result<Answer> {
    let table = args.required_table(0)?;
    let reading = |row: usize| Humidity::from_base(table.number(0, row).unwrap_or(f64::NAN));
    let readings: Vec<Humidity> = (0..table.rows).map(reading).collect();
    let found = judged(&readings, args.quantity(1)?, args.quantity(2)?)?;
    let mut notes = Vec::new();
    if found.verdict == Dryness::AskTheMaker {
        notes.push(Note::new(NoteCode::MakersLimit, NoteCode::MakersLimit.meaning()));
    }
    if let Some(wanted) = found.wanted.filter(|wanted| *wanted > readings.len() as i64) {
        let text = format!("{} of the {wanted} probes that the area takes", readings.len());
        notes.push(Note::new(NoteCode::TooFewProbes, text));
    }
    Ok(Answer::of([
        Value::Choice(found.verdict as usize),
        Value::Number(found.highest.base()),
        found.wanted.map_or(Value::Absent, Value::Count),
    ])
    .with_notes(notes))
}

/// How long concrete dries.
pub static DRYING_TIME: Operation = Operation {
    name: "drying_time",
    module: "overlay",
    since: "0.1.0",
    meaning: "How long concrete dries, after its curing ends, until it may be tested for a covering.",
    equation: "28 to 30 days for each inch of thickness",
    assumes: "drying from one side in good air, to about 85 % relative humidity; wetting again starts it anew; the probes decide, not the calendar",
    ports: &[number!(thickness: length in inch | millimeter, SLAB, "thickness that dries"; zero rare)],
    results: &[
        number!(least: time in day | day, Range::POSITIVE, "least time"),
        number!(greatest: time in day | day, Range::POSITIVE, "greatest time"),
    ],
    basis: &[BasisId::DryingByInch],
    example: r#"{"thickness": "3 in"}"#,
    refusals: &[(r#"{"thickness": "0 in"}"#, Code::OutOfRange)],
    call: scalar!(drying_time, (thickness: Length) => |found| found.map(Typed::base)),
};

/// How long concrete dries by its water.
pub static DRYING_TIME_BY_WATER: Operation = Operation {
    name: "drying_time_by_water",
    module: "overlay",
    since: "0.1.0",
    meaning: "How long a slab 4 in thick dries until it gives off 3 lb of vapour in 24 h over 1000 ft2, by its water-cement ratio; from memory, confirm.",
    equation: "days 46, 82, 117, 130, 148, 166, 190 at 0.4, 0.5 to 1.0, straight between",
    assumes: "4 in thick, drying from one side, no water from below",
    ports: &[
        number!(water_cement: water_cement_ratio in ratio | ratio, WATER_CEMENT, "water-cement ratio"; zero rare),
    ],
    results: &[number!(time: time in day | day, Range::POSITIVE, "time it takes")],
    basis: &[BasisId::DryingByWater],
    example: r#"{"water_cement": "0.45 w/cm"}"#,
    refusals: &[
        (r#"{"water_cement": "0.35 w/cm"}"#, Code::OutOfRange),
        (r#"{"water_cement": "1.1 w/cm"}"#, Code::OutOfRange),
    ],
    call: scalar!(
        drying_time_by_water,
        (water_cement: WaterCementRatio) => |found| ([found.base()], Some(NoteCode::ConfirmLocally))
    ),
};

/// The dish of calcium chloride.
pub static VAPOUR_EMISSION: Operation = Operation {
    name: "vapour_emission",
    module: "overlay",
    since: "0.1.0",
    meaning: "The vapour that a floor gives off, by a dish of calcium chloride that stood sealed on it.",
    equation: "emission = gain / (area x time)",
    assumes: "the dish stands sealed 60 to 72 h on cleaned concrete and the maker of what goes on the floor sets the limit, often 3 lb/1000 ft2/24 h (both from memory)",
    ports: &[
        number!(gain: mass in gram | gram, GAIN, "mass that the dish gained"),
        number!(area: area in square_foot | square_meter, DISH, "area of floor under its cover"; zero rare),
        number!(time: time in hour | hour, STANDS, "how long it stood"; zero rare),
    ],
    results: &[
        number!(emission: vapour_emission in pound_per_thousand_square_feet_day | gram_per_square_meter_day, Range::NOT_NEGATIVE, "vapour in 24 h"),
    ],
    basis: &[BasisId::VapourByDish, BasisId::VapourDishTest],
    example: r#"{"gain": "5.2 g", "area": "0.5 ft2", "time": "66 h"}"#,
    refusals: &[
        (r#"{"gain": "-1 g"}"#, Code::OutOfRange),
        (r#"{"area": "0 ft2"}"#, Code::OutOfRange),
        (r#"{"time": "0 h"}"#, Code::OutOfRange),
    ],
    call: scalar!(vapour_emission, (gain: Mass, area: Area, time: Time) => |found| [VapourEmission::base(found)]),
};
