//! The row of breaking out.

use crate::basis::BasisId;
use crate::condition::tear_out::{
    AREA, BASE, BOX_VOLUME, BOX_WEIGHT, BULKING, DENSITY, PRICE, RISE, THICKNESS, TearOutPrices,
    TearOutRequest, tear_out as figured,
};
use crate::failure::{Code, Result};
use crate::operation::{Answer, Args, Call, Column, Columns, Kind, Operation, TableType, Value};
use crate::quantity::{Length, Money, Range, Typed, Volume};
use crate::{assumption, number, port};

/// Costs.
static COSTS: TableType = TableType {
    name: "costs",
    meaning: "a part of the cost",
    columns: &[
        port!(what: Kind::Text, "what for"),
        number!(money: money in currency_unit | currency_unit, Range::NOT_NEGATIVE, "how much; none where its price is missing"; optional),
    ],
    least_rows: 0,
};

/// Breaking out.
pub static TEAR_OUT: Operation = Operation {
    name: "tear_out",
    module: "condition",
    since: "0.1.0",
    meaning: "Breaking an old slab out: what is hauled away in how many loads, the new base, the new slab, the cost at the caller's prices.",
    equation: "in place = area x old thickness; weight = in place x density; loose = in place x bulking; dug = base + new thickness - old thickness - rise where above none; concrete = area x new thickness",
    assumes: "thicknesses and rise are means over the area; a missing price stays missing and leaves no total",
    ports: &[
        number!(area: area in square_foot | square_meter, AREA, "area broken out"; zero rare),
        number!(old_thickness: length in inch | millimeter, THICKNESS, "thickness of the old slab"; zero rare, or assumption::OLD_SLAB),
        number!(density: density in pound_per_cubic_foot | kilogram_per_cubic_meter, DENSITY, "mass of the old concrete in place"; zero rare, or assumption::OLD_CONCRETE),
        number!(bulking: ratio in percent | percent, BULKING, "volume broken up over volume in place"; zero rare, or assumption::BULKING),
        number!(box_weight: mass in ton_short | tonne, BOX_WEIGHT, "what one box or truck may carry"; zero rare, or assumption::BOX_WEIGHT),
        number!(box_volume: volume in cubic_yard | cubic_meter, BOX_VOLUME, "what goes into one box, where that runs out first"; zero rare, optional),
        number!(base: length in inch | millimeter, BASE, "thickness of the new base, compacted; none where the ground serves"; zero rare, optional),
        number!(base_loose: ratio in percent | percent, BULKING, "volume of base as bought over compacted"; zero rare, or assumption::BASE_LOOSE),
        number!(new_thickness: length in inch | millimeter, THICKNESS, "mean thickness of the new slab; none where nothing is poured"; zero rare, optional),
        number!(rise: length in inch | millimeter, RISE, "how much higher the new floor is than the old one, on the mean";
            or "0 in" because "the new floor is as high as the old one"),
        number!(breaking_price: area_price in per_square_foot | per_square_meter, PRICE, "price of breaking and loading"; optional),
        number!(load_price: money in currency_unit | currency_unit, PRICE, "price of hauling one load"; optional),
        number!(dump_price: mass_price in per_ton | per_tonne, PRICE, "price of dumping"; optional),
        number!(base_price: volume_price in per_cubic_yard | per_cubic_meter, PRICE, "price of base as bought"; optional),
        number!(concrete_price: volume_price in per_cubic_yard | per_cubic_meter, PRICE, "price of concrete, placed"; optional),
    ],
    results: &[
        number!(in_place: volume in cubic_yard | cubic_meter, Range::POSITIVE, "old concrete in place"),
        number!(mass: mass in ton_short | tonne, Range::POSITIVE, "its mass"),
        number!(loose: volume in cubic_yard | cubic_meter, Range::POSITIVE, "its volume broken up"),
        port!(loads: Kind::Count(1, 1_000_000_000), "loads to the dump, by weight or by volume"),
        number!(dig_depth: length in inch | millimeter, Range::NOT_NEGATIVE, "how deep the ground is dug below the old slab"),
        number!(dig: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "ground dug, in place; it is not in the loads"),
        number!(base_in_place: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "new base, compacted"),
        number!(base_bought: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "new base, loose, as it is bought"),
        number!(concrete: volume in cubic_yard | cubic_meter, Range::POSITIVE, "the new slab; none where nothing is poured"; optional),
        port!(costs: Kind::Table(&COSTS), "the cost of each part that there is"),
        number!(total: money in currency_unit | currency_unit, Range::NOT_NEGATIVE, "all of it; none where a price is missing"; optional),
    ],
    basis: &[BasisId::Geometry, BasisId::RubbleFigures, BasisId::SiteWords],
    example: r#"{"area": "400 ft2", "old_thickness": "4 in", "base": "4 in", "new_thickness": "5 in", "rise": "1 in", "breaking_price": "4.5 /ft2", "load_price": "180 money", "dump_price": "70 /ton"}"#,
    refusals: &[
        (r#"{"area": "0 ft2"}"#, Code::OutOfRange),
        (r#"{"old_thickness": "4 ft2"}"#, Code::UnitWrong),
        (r#"{"bulking": "90 %"}"#, Code::OutOfRange),
        (r#"{"dump_price": "-70 /ton"}"#, Code::Negative),
        (r#"{"new_thickness": "61 in"}"#, Code::OutOfRange),
    ],
    call: Call::Record(tear_out),
};

fn tear_out(args: &Args<'_>) -> Result<Answer> {
    let request = TearOutRequest {
        area: args.required(0)?,
        old_thickness: args.required(1)?,
        density: args.required(2)?,
        bulking: args.required(3)?,
        box_weight: args.required(4)?,
        box_volume: args.quantity(5)?,
        base: args.quantity(6)?,
        base_loose: args.required(7)?,
        new_thickness: args.quantity(8)?,
        rise: args.required::<Length>(9)?,
        prices: TearOutPrices {
            breaking: args.quantity(10)?,
            load: args.quantity(11)?,
            dumping: args.quantity(12)?,
            base: args.quantity(13)?,
            concrete: args.quantity(14)?,
        },
    };
    let out = figured(&request)?;
    let money = |money: Option<Money>| money.map_or(Value::Absent, |money| Value::Number(money.base()));
    let costs = Columns {
        rows: out.costs.len(),
        columns: vec![
            Column::Texts(out.costs.iter().map(|cost| Some(cost.what.to_owned())).collect()),
            Column::Numbers(out.costs.iter().map(|cost| cost.money.map_or(f64::NAN, Typed::base)).collect()),
        ],
    };
    let volume = |volume: Volume| Value::Number(volume.base());
    Ok(Answer::of([
        volume(out.in_place),
        Value::Number(out.mass.base()),
        volume(out.loose),
        Value::Count(i64::from(out.loads)),
        Value::Number(out.dig_depth.base()),
        volume(out.dig),
        volume(out.base),
        volume(out.base_loose),
        out.concrete.map_or(Value::Absent, volume),
        Value::Table(costs),
        money(out.total),
    ])
    .with_notes(out.notes()))
}
