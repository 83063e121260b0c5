//! What the reader takes, refuses and prints back.

use super::read::read_kind;
use super::write::nearest_fraction;
use super::*;
use crate::failure::Code;

fn base<Q: Typed>(text: &str) -> f64 {
    read::<Q>(text).unwrap_or_else(|failure| panic!("{failure}")).base()
}

fn code<Q: Typed>(text: &str) -> Code {
    read::<Q>(text).err().unwrap_or_else(|| panic!("{text} was read")).code
}

/// Steps of the last place between two doubles.
fn ulps(a: f64, b: f64) -> i64 {
    (a.to_bits() as i64 - b.to_bits() as i64).abs()
}

#[test]
fn feet_inches_and_fractions_are_exact() {
    let rod: f64 = 63.5 * 0.0254;
    for text in [
        r#"5' 3 1/2""#,
        "5'-3 1/2\"",
        "5 ft 3-1/2 in",
        "5 feet 3 1/2 inches",
        r#"63.5""#,
        r#"63 1/2""#,
        "5′ 3½″",
        "5' 3½\"",
        "5ft3 1/2in",
    ] {
        assert_eq!(base::<Length>(text).to_bits(), rod.to_bits(), "{text}");
    }
    assert_eq!(base::<Length>("-1/2 in"), -0.0127);
    assert_eq!(base::<Length>("4.62 ft"), 4.62 * 0.3048);
    assert_eq!(base::<Length>("1.612 m"), 1.612);
    assert_eq!(base::<Length>("8'"), 8.0 * 0.3048);
}

#[test]
fn an_area_is_no_feet_and_two_inches() {
    for text in ["30 ft2", "30ft2", "30 ft²", "30 ft3", "30 ft 2 ft"] {
        assert!(matches!(code::<Length>(text), Code::UnitWrong | Code::NotReadable), "{text}");
    }
    assert_eq!(code::<Length>("30 ft2"), Code::UnitWrong);
    assert_eq!(base::<Area>("30 ft2"), 30.0 * 0.092_903_04);
}

#[test]
fn slopes_pressures_dosages_temperatures() {
    assert!(ulps(base::<Slope>("1/4 in/ft"), 0.25 / 12.0) <= 1);
    assert_eq!(base::<Slope>("2 %"), 0.02);
    assert_eq!(base::<Slope>("1:48"), 1.0 / 48.0);
    assert!(ulps(base::<Pressure>("4,000 psi"), base::<Pressure>("4000 lb/in2")) == 0);
    assert_eq!(base::<Pressure>("30 MPa"), 30.0e6);
    assert!(ulps(base::<Dosage>("0.5 lb/yd3"), 0.5 * 0.453_592_37 / 0.764_554_857_984) <= 1);
    assert!((base::<Temperature>("85 degF") - 302.594_444_444_444_4).abs() < 1e-9);
    assert!((base::<Temperature>("-40 degC") - 233.15).abs() < 1e-9);
    assert_eq!(base::<Share>("3 %"), 0.03);
    assert!(ulps(base::<VolumePrice>("165 /yd3"), 165.0 / 0.764_554_857_984) <= 1);
    assert_eq!(base::<VolumePrice>("165 per yd3"), base::<VolumePrice>("165/yd3"));
    assert!(ulps(base::<AreaPrice>("3.2 per ft2"), 3.2 / 0.092_903_04) <= 1);
    assert_eq!(code::<AreaPrice>("3.2 /yd3"), Code::UnitWrong);
}

#[test]
fn the_quantity_asked_for_decides() {
    assert_eq!(base::<Mass>("1 lb"), 0.453_592_37);
    assert_eq!(base::<Force>("1 lb"), 4.448_221_615_260_5);
    assert_eq!(code::<Length>("4 psi"), Code::UnitWrong);
    assert_eq!(code::<Length>("1:48"), Code::NotReadable);
}

#[test]
fn refusals_say_why() {
    assert_eq!(code::<Length>("5"), Code::UnitMissing);
    assert_eq!(code::<Length>("5 furlongs"), Code::UnitUnknown);
    assert_eq!(code::<Length>(""), Code::EmptyCell);
    assert_eq!(code::<Length>("  "), Code::EmptyCell);
    assert_eq!(code::<Length>("five ft"), Code::NotReadable);
    assert_eq!(code::<Length>("1,612 m"), Code::DecimalComma);
    assert_eq!(code::<Length>("4,62 ft"), Code::DecimalComma);
    assert_eq!(code::<Length>("1e999 m"), Code::NotFinite);
    assert_eq!(code::<Length>("nan m"), Code::NotReadable);
    assert_eq!(code::<Length>("5' 14\""), Code::NotReadable);
    assert_eq!(code::<Length>("1/0 in"), Code::NotReadable);
    assert_eq!(code::<Slope>("1:0"), Code::NotReadable);
    let failure = read::<Length>("4 psi").unwrap_err();
    assert!(
        failure.sentence().contains("\"4 psi\"") && failure.sentence().contains("psi is a unit of pressure"),
        "{failure}"
    );
}

#[test]
fn a_bare_number_takes_the_declared_unit() {
    let reading = read_kind("63.5", &kinds::length, Some(&length::unit::inch)).unwrap();
    assert_eq!(reading.base, 63.5 * 0.0254);
}

#[test]
fn printing_rounds_to_the_chosen_fraction_and_carries() {
    let of = |inches: f64| Length::new::<length::inch>(inches);
    assert_eq!(feet_and_inches(of(63.5), 8), r#"5' 3 1/2""#);
    assert_eq!(feet_and_inches(of(11.99), 8), r#"1' 0""#);
    assert_eq!(feet_and_inches(of(-0.01), 8), r#"0""#);
    assert_eq!(feet_and_inches(of(-6.25), 8), r#"-6 1/4""#);
    assert_eq!(inches(of(3.375), 8), "3 3/8 in");
    assert_eq!(nearest_fraction(of(3.30), 8).get::<length::inch>(), 3.25);
    assert_eq!(number_in(Volume::new::<volume::cubic_yard>(8.664), &volume::unit::cubic_yard, 2), "8.66 yd3");
}

#[test]
fn si_text_comes_back_to_the_bit() {
    for step in 0..5_000_u32 {
        let length = Length::new::<length::inch>(f64::from(step) / 16.0 + 0.037);
        assert_eq!(read::<Length>(&si_text(length)).unwrap().base().to_bits(), length.base().to_bits());
    }
}

#[test]
fn fractions_of_an_inch_come_back_within_one_place() {
    for sixteenths in 0..10_000_u32 {
        let length = Length::from_base(f64::from(sixteenths) / 16.0 * 0.0254);
        let back = read::<Length>(&feet_and_inches(length, 16)).unwrap();
        assert!(ulps(back.base(), length.base()) <= 1, "{sixteenths}/16 in");
    }
}

#[test]
fn twenty_seven_cubic_feet_are_a_cubic_yard() {
    let yards = Volume::new::<volume::cubic_foot>(27.0).get::<volume::cubic_yard>();
    assert!(ulps(yards, 1.0) <= 1, "{yards:e}");
}

#[test]
fn differences_of_places_have_their_own_type() {
    let floor = read::<Elevation>("100 ft").unwrap() - read::<Length>("6 in").unwrap();
    assert!((floor.get::<elevation::foot>() - 99.5).abs() < 1e-12);
    let rise: Length = read::<Elevation>("100 ft").unwrap() - floor;
    assert!((rise.get::<length::inch>() - 6.0).abs() < 1e-9);
}
