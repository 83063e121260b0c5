//! Breaking out by hand.

use crate::assumption::{BASE_LOOSE, BOX_WEIGHT, BULKING, OLD_CONCRETE, OLD_SLAB};
use crate::condition::tear_out::{TearOutPrices, TearOutRequest, tear_out};
use crate::note::NoteCode;
use crate::quantity::{Area, Length, Typed, Unit, Volume, area, length, mass, read, volume};

fn of(text: &str) -> TearOutRequest {
    TearOutRequest {
        area: read::<Area>(text).unwrap(),
        old_thickness: OLD_SLAB.value(),
        density: OLD_CONCRETE.value(),
        bulking: BULKING.value(),
        box_weight: BOX_WEIGHT.value(),
        box_volume: None,
        base: None,
        base_loose: BASE_LOOSE.value(),
        new_thickness: None,
        rise: Length::from_base(0.0),
        prices: TearOutPrices::default(),
    }
}

fn inches(number: f64) -> Length {
    Length::from_base((length::unit::inch.to_base)(number))
}

fn near(base: f64, unit: &Unit, wanted: f64) {
    let is = (unit.from_base)(base);
    assert!((is - wanted).abs() <= 1e-9 * wanted.abs().max(1.0), "{is} {}, not {wanted}", unit.symbol);
}

#[test]
fn four_hundred_feet_of_four_inches_fill_a_ten_ton_box() {
    let out = tear_out(&TearOutRequest { old_thickness: inches(4.0), ..of("400 ft2") }).unwrap();
    near(out.in_place.base(), &volume::unit::cubic_yard, 400.0 / 81.0);
    near(out.mass.base(), &mass::unit::ton_short, 10.0);
    near(out.loose.base(), &volume::unit::cubic_yard, 600.0 / 81.0);
    assert_eq!(out.loads, 1);
    let more = tear_out(&TearOutRequest { old_thickness: inches(4.0), ..of("401 ft2") }).unwrap();
    assert_eq!(more.loads, 2);
}

#[test]
fn a_small_box_runs_out_of_room_first() {
    let small = Some(Volume::from_base((volume::unit::cubic_yard.to_base)(2.0)));
    let out =
        tear_out(&TearOutRequest { old_thickness: inches(4.0), box_volume: small, ..of("400 ft2") }).unwrap();
    assert_eq!(out.loads, 4);
}

#[test]
fn base_and_slab_fill_the_hole_or_the_ground_is_dug() {
    let asked = TearOutRequest {
        old_thickness: inches(4.0),
        base: Some(inches(4.0)),
        new_thickness: Some(inches(5.0)),
        rise: inches(1.0),
        ..of("324 ft2")
    };
    // 1 in of the hole and the rise is left under the new slab's 5 in of 4 + 1: nothing, so all the base is dug.
    let out = tear_out(&asked).unwrap();
    near(out.dig_depth.base(), &length::unit::inch, 4.0);
    near(out.dig.base(), &volume::unit::cubic_yard, 4.0);
    near(out.base.base(), &volume::unit::cubic_yard, 4.0);
    near(out.concrete.unwrap().base(), &volume::unit::cubic_yard, 5.0);
    assert!(out.notes().iter().any(|note| note.code == NoteCode::GroundDug));
    // A floor 8 in higher leaves 7 in under the slab: more than the base asked for.
    let out = tear_out(&TearOutRequest { rise: inches(8.0), ..asked }).unwrap();
    near(out.dig_depth.base(), &length::unit::inch, 0.0);
    near(out.base.base(), &volume::unit::cubic_yard, 7.0);
    near(out.base_loose.base(), &volume::unit::cubic_yard, 7.0 * BASE_LOOSE.value().base());
}

#[test]
fn a_missing_price_leaves_no_total() {
    let mut asked = of("100 ft2");
    asked.prices.breaking = Some(read("5 /ft2").unwrap());
    let out = tear_out(&asked).unwrap();
    assert_eq!(out.total, None);
    assert_eq!(out.notes().first().map(|note| note.code), Some(NoteCode::PriceMissing));
    asked.prices.load = Some(read("100 money").unwrap());
    asked.prices.dumping = Some(read("60 /ton").unwrap());
    let out = tear_out(&asked).unwrap();
    // 100 ft2 of 3 1/2 in at 150 lb/ft3: 4375 lb, 2.1875 tons.
    let total = out.total.unwrap().base();
    assert!((total - (500.0 + 100.0 + 2.1875 * 60.0)).abs() < 1e-9, "{total}");
}

#[test]
fn no_price_is_below_nothing() {
    let asked = |prices| tear_out(&TearOutRequest { prices, base: Some(inches(4.0)), ..of("100 ft2") });
    let none = TearOutPrices::default();
    let below = |unit: &str| format!("-1 {unit}");
    let refused = [
        (TearOutPrices { breaking: Some(read(&below("/ft2")).unwrap()), ..none }, "breaking_price"),
        (TearOutPrices { load: Some(read(&below("money")).unwrap()), ..none }, "load_price"),
        (TearOutPrices { dumping: Some(read(&below("/ton")).unwrap()), ..none }, "dump_price"),
        (TearOutPrices { base: Some(read(&below("/yd3")).unwrap()), ..none }, "base_price"),
        (TearOutPrices { concrete: Some(read(&below("/yd3")).unwrap()), ..none }, "concrete_price"),
    ];
    for (prices, path) in refused {
        assert_eq!(asked(prices).unwrap_err().path, path);
    }
}

#[test]
fn nothing_can_be_broken_out_of_no_area() {
    let none =
        TearOutRequest { area: Area::from_base((area::unit::square_foot.to_base)(0.0)), ..of("1 ft2") };
    let failure = tear_out(&none).unwrap_err();
    assert_eq!(failure.path, "area");
}
