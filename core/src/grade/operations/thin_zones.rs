//! The row of the zones under the unbonded minimum.

use super::columns::{RingCorner, counts, numbers, ring_corners, some_numbers, table};
use super::finish::example;
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::grade::finish::{FINISH, Finish};
use crate::grade::thin_zones::{
    AREA_PRICE, AskedOfThinZones, Choice as ZoneChoice, Cure, GROUND, MINIMUM, Prices, ThinZone, ThinZones,
    VOLUME_PRICE, Verdict,
};
use crate::operation::{Answer, Args, Call, Choice, Column, Kind, Operation, TableType, Value};
use crate::quantity::{Range, Typed};
use crate::survey::Survey;
use crate::survey::old_slab::SURVEY;
use crate::{number, port};

/// Whether the edge of the work bounds a part of a zone's box: the words in the order of a `bool`.
const NO_YES: &[&str] = &["no", "yes"];

/// Zones.
static ZONES: TableType = TableType {
    name: "zones",
    meaning: "a zone under the minimum, the largest first",
    columns: &[
        port!(zone: Kind::Count(1, i64::MAX), "its number"),
        number!(area: area in square_foot | square_meter, Range::NOT_NEGATIVE, "its area"),
        number!(lacking: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "volume it lacks to the minimum"),
        number!(thinnest: length in inch | millimeter, Range::ANY, "its least thickness"),
        number!(thinnest_x: length in foot | meter, Range::ANY, "where that is, from the left"),
        number!(thinnest_y: length in foot | meter, Range::ANY, "where that is, from the front"),
        port!(thinnest_shot: Kind::Text, "the shot there"; optional),
        number!(deficit: length in inch | millimeter, Range::NOT_NEGATIVE, "what its thinnest place lacks to the minimum"),
        number!(deficit_measured: length in inch | millimeter, Range::ANY, "the same between the shots; none where all of it lies beyond them"; optional),
        number!(beyond: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area of it beyond the shots, where the old slab is extended"),
        number!(x_from: length in foot | meter, Range::ANY, "its box: from here"),
        number!(x_to: length in foot | meter, Range::ANY, "to here from the left"),
        number!(y_from: length in foot | meter, Range::ANY, "from here"),
        number!(y_to: length in foot | meter, Range::ANY, "to here from the front"),
        number!(boxed: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area of the work within the box"),
        number!(joint: length in foot | meter, Range::NOT_NEGATIVE, "length of the sides of the box inside the work"),
        port!(reaches_edge: Kind::Choice(NO_YES), "whether the edge of the work bounds a part of the box"),
        port!(cheapest: Kind::Choice(Cure::WORDS), "the cheapest choice that is enough, among those with a price"; optional),
    ],
    least_rows: 0,
};

/// Choices.
static CHOICES: TableType = TableType {
    name: "choices",
    meaning: "a choice about a zone; raising, bonding, grinding and breaking out of every zone in turn",
    columns: &[
        port!(zone: Kind::Count(1, i64::MAX), "the number of the zone"),
        port!(choice: Kind::Choice(Cure::WORDS), "what is done"),
        number!(depth: length in inch | millimeter, Range::ANY, "rise, thinnest bonded, deepest cut, or thickness of the new concrete"; optional),
        number!(area: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area worked on"),
        number!(concrete: volume in cubic_yard | cubic_meter, Range::ANY, "concrete over what the finish takes as it is"; optional),
        number!(joint: length in foot | meter, Range::NOT_NEGATIVE, "full-depth joint inside the work"; optional),
        number!(cost: money in currency_unit | currency_unit, Range::ANY, "what it costs"; optional),
        port!(verdict: Kind::Choice(Verdict::WORDS), "whether it cures the zone"),
        number!(short_by: length in inch | millimeter, Range::NOT_NEGATIVE, "what is still lacking, where it is not enough"; optional),
        port!(said: Kind::Text, "a sentence for the foreman"),
    ],
    least_rows: 0,
};

/// Corners of the rings of zones.
static CORNERS: TableType = TableType {
    name: "corners",
    meaning: "a corner of a ring, in order; the last leads back to the first",
    columns: &[
        port!(zone: Kind::Count(1, i64::MAX), "the number of the zone"),
        port!(ring: Kind::Count(1, i64::MAX), "1 is the outer ring, counter-clockwise; others are holes, clockwise"),
        number!(x: length in foot | meter, Range::ANY, "from the left"),
        number!(y: length in foot | meter, Range::ANY, "from the front"),
    ],
    least_rows: 0,
};

/// The zones under the unbonded minimum.
pub static THIN_ZONES: Operation = Operation {
    name: "thin_zones",
    module: "grade",
    since: "0.1.0",
    meaning: "The zones thinner than the unbonded minimum, and for each what raising, bonding, grinding or breaking out takes and costs.",
    equation: "deficit = minimum less thinnest; raise = fill(finish raised by it) less fill(finish); grind = integral of minimum less overlay over the zone; break out = integral of new thickness less overlay, from 0 up, over the box; overlay = thickness, from 0 up; cost = area x price + concrete x price",
    assumes: "bonding and breaking out take the zone's box within the work, for a change of bond comes only along a straight full-depth joint; zones are told beyond the shots too",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab"),
        port!(finish: Kind::Record(&FINISH), "the new top surface"),
        number!(minimum: length in inch | millimeter, MINIMUM, "least thickness of an unbonded overlay"),
        number!(bonded_minimum: length in inch | millimeter, MINIMUM, "least thickness of a bonded part, at most the unbonded one"; optional),
        number!(grind_at_most: length in inch | millimeter, GROUND, "how deep the old slab may be ground"; optional),
        number!(new_thickness: length in inch | millimeter, MINIMUM, "thickness of the concrete where the old slab is broken out, down from the finish"; optional),
        number!(concrete_price: volume_price in per_cubic_yard | per_cubic_meter, VOLUME_PRICE, "price of concrete"; zero rare, optional),
        number!(bonding_price: area_price in per_square_foot | per_square_meter, AREA_PRICE, "price of bonding: milling, cleaning and slurry together"; zero rare, optional),
        number!(grinding_price: area_price in per_square_foot | per_square_meter, AREA_PRICE, "price of grinding"; zero rare, optional),
        number!(breaking_out_price: area_price in per_square_foot | per_square_meter, AREA_PRICE, "price of breaking out, hauling with it"; zero rare, optional),
    ],
    results: &[
        number!(area: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area of all that is thinner"),
        number!(lacking: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "volume all of it lacks to the minimum"),
        number!(left_out: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area of zones under a square millimetre, not listed"),
        number!(raise_all: length in inch | millimeter, Range::NOT_NEGATIVE, "rise of the whole finish that leaves no zone; none where there is none"; optional),
        number!(raise_all_concrete: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "concrete it takes"; optional),
        number!(raise_all_cost: money in currency_unit | currency_unit, Range::NOT_NEGATIVE, "what it costs"; optional),
        number!(zone_by_zone_cost: money in currency_unit | currency_unit, Range::NOT_NEGATIVE, "all zones, each in the cheapest way without raising"; optional),
        port!(said: Kind::Text, "all of it in a few sentences"),
        port!(zones: Kind::Table(&ZONES), "the zones"),
        port!(choices: Kind::Table(&CHOICES), "the choices about each"),
        port!(corners: Kind::Table(&CORNERS), "the corners of their polygons"),
    ],
    basis: &[BasisId::Geometry, BasisId::UnbondedMinimum, BasisId::BondChangeAtJoint],
    example: example!(
        r#""finish": {"level": "99.56 ft"}, "minimum": "3 in", "bonded_minimum": "1 1/2 in", "grind_at_most": "1/2 in", "new_thickness": "6 in",
            "concrete_price": "162 /yd3", "bonding_price": "5.5 /ft2", "grinding_price": "4 /ft2", "breaking_out_price": "9 /ft2""#
    ),
    refusals: &[
        (r#"{"minimum": "-3 in"}"#, Code::OutOfRange),
        (r#"{"minimum": "3"}"#, Code::UnitMissing),
        (r#"{"minimum": "40 ft"}"#, Code::OutOfRange),
        (r#"{"bonded_minimum": "3 1/2 in"}"#, Code::OutOfRange),
        (r#"{"concrete_price": "162 /ft2"}"#, Code::UnitWrong),
        (r#"{"bonding_price": "-5 /ft2"}"#, Code::Negative),
    ],
    call: Call::Record(thin_zones),
};

fn thin_zones(args: &Args<'_>) -> Result<Answer> {
    let (survey, finish): (&Survey, &Finish) = (args.required_record(0)?, args.required_record(1)?);
    let asked = AskedOfThinZones {
        minimum: args.required(2)?,
        bonded_minimum: args.quantity(3)?,
        grind_at_most: args.quantity(4)?,
        new_thickness: args.quantity(5)?,
        prices: Prices {
            concrete: args.quantity(6)?,
            bonding: args.quantity(7)?,
            grinding: args.quantity(8)?,
            breaking_out: args.quantity(9)?,
        },
    };
    let found = ThinZones::of(survey, finish, &asked)?;
    let raise = found.raise_all.as_ref();
    let answer = Answer::of([
        Value::Number(found.area.base()),
        Value::Number(found.lacking.base()),
        Value::Number(found.left_out.base()),
        number(raise.and_then(|raise| raise.depth)),
        number(raise.and_then(|raise| raise.concrete)),
        number(raise.and_then(|raise| raise.money)),
        number(found.zone_by_zone()),
        Value::Text(found.said()),
        zones(&found),
        choices(&found),
        corners(&found),
    ]);
    Ok(answer.with_notes(found.notes()))
}

fn number<Q: Typed>(number: Option<Q>) -> Value {
    number.map_or(Value::Absent, |number| Value::Number(number.base()))
}

fn words<T>(rows: &[T], word: impl Fn(&T) -> Option<usize>) -> Column {
    Column::Choices(rows.iter().map(word).collect())
}

fn zones(found: &ThinZones) -> Value {
    let rows: Vec<(usize, &ThinZone)> = (1..).zip(&found.zones).collect();
    table(
        rows.len(),
        [
            counts(&rows, |row| row.0),
            numbers(&rows, |(_, zone)| zone.area.base()),
            numbers(&rows, |(_, zone)| zone.lacking.base()),
            numbers(&rows, |(_, zone)| zone.thinnest.thickness.base()),
            numbers(&rows, |(_, zone)| zone.thinnest.x.base()),
            numbers(&rows, |(_, zone)| zone.thinnest.y.base()),
            Column::Texts(found.zones.iter().map(|zone| zone.shot.clone()).collect()),
            numbers(&rows, |(_, zone)| zone.deficit.base()),
            some_numbers(&rows, |(_, zone)| zone.deficit_measured),
            numbers(&rows, |(_, zone)| zone.beyond.base()),
            numbers(&rows, |(_, zone)| zone.bounds.from.x.base()),
            numbers(&rows, |(_, zone)| zone.bounds.to.x.base()),
            numbers(&rows, |(_, zone)| zone.bounds.from.y.base()),
            numbers(&rows, |(_, zone)| zone.bounds.to.y.base()),
            numbers(&rows, |(_, zone)| zone.boxed.base()),
            numbers(&rows, |(_, zone)| zone.joint.base()),
            words(&rows, |(_, zone)| Some(usize::from(zone.reaches_edge))),
            words(&rows, |(_, zone)| zone.cheapest().map(|choice| choice.cure as usize)),
        ],
    )
}

fn choices(found: &ThinZones) -> Value {
    let of_zone = |(number, zone)| zone_choices(zone).map(move |choice| (number, choice));
    let rows: Vec<(usize, &ZoneChoice)> = (1..).zip(&found.zones).flat_map(of_zone).collect();
    table(
        rows.len(),
        [
            counts(&rows, |row| row.0),
            words(&rows, |(_, choice)| Some(choice.cure as usize)),
            some_numbers(&rows, |(_, choice)| choice.depth),
            numbers(&rows, |(_, choice)| choice.area.base()),
            some_numbers(&rows, |(_, choice)| choice.concrete),
            some_numbers(&rows, |(_, choice)| choice.joint),
            some_numbers(&rows, |(_, choice)| choice.money),
            words(&rows, |(_, choice)| Some(choice.enough.verdict() as usize)),
            some_numbers(&rows, |(_, choice)| choice.enough.short_by()),
            Column::Texts(rows.iter().map(|(_, choice)| Some(choice.said.clone())).collect()),
        ],
    )
}

fn zone_choices(zone: &ThinZone) -> impl Iterator<Item = &ZoneChoice> {
    zone.choices.iter()
}

fn corners(found: &ThinZones) -> Value {
    let corners = ring_corners(1, found.zones.iter().map(|zone| &zone.shape));
    table(
        corners.len(),
        [
            counts(&corners, |corner: &RingCorner| corner.part),
            counts(&corners, |corner| corner.ring),
            numbers(&corners, |corner| corner.at.x.base()),
            numbers(&corners, |corner| corner.at.y.base()),
        ],
    )
}
