//! Every quantity comes back from its text.

use super::random::Random;
use overslab::quantity::unit::QuantityType;
use overslab::quantity::{Length, Typed, Unit, feet_and_inches, inches, kinds, read, read_kind, write};

/// Numbers of every size that a site or a standard writes, and some that nobody does.
fn numbers(random: &mut Random) -> Vec<f64> {
    let mut numbers = vec![0.0, 1.0, 0.1, 1.0 / 3.0, 5e-324, 1e-300, 1e300, 123_456_789.123_456_78];
    for _ in 0..200 {
        let size = 10.0_f64.powf(random.between(-12.0, 12.0));
        numbers.push(size * random.between(0.1, 1.0));
    }
    numbers
}

fn base_of(text: &str, quantity: &'static QuantityType) -> f64 {
    read_kind(text, quantity, None).unwrap_or_else(|failure| panic!("{}: {failure}", quantity.name)).base
}

#[test]
fn si_texts_come_back_to_the_bit() {
    let mut random = Random::new(3);
    for quantity in kinds::ALL {
        let unit = quantity.base_unit();
        for number in numbers(&mut random).into_iter().flat_map(|number| [number, -number]) {
            let text = format!("{} {}", write::shortest(number), unit.symbol);
            // A negative zero is written as zero.
            let expected = if number == 0.0 { 0.0 } else { number };
            assert_eq!(base_of(&text, quantity).to_bits(), expected.to_bits(), "{}: {text}", quantity.name);
        }
    }
}

#[test]
fn typed_texts_come_back_to_the_bit() {
    let mut random = Random::new(4);
    for number in numbers(&mut random) {
        let length = Length::from_base(number);
        assert_eq!(read::<Length>(&write::si_text(length)).unwrap().base().to_bits(), number.to_bits());
    }
}

#[test]
fn every_unit_comes_back_as_it_was_converted() {
    let mut random = Random::new(5);
    for quantity in kinds::ALL {
        for unit in quantity.units {
            for number in numbers(&mut random) {
                let text = format!("{} {}", write::shortest(number), unit.symbol);
                let base = base_of(&text, quantity);
                assert_eq!(base.to_bits(), (unit.to_base)(number).to_bits(), "{}: {text}", quantity.name);
                assert_returns(unit, number, base);
            }
        }
    }
}

/// There and back is two roundings, of the number and of what the scale adds to it.
fn assert_returns(unit: &Unit, number: f64, base: f64) {
    if !base.is_normal() {
        return;
    }
    let offset = (unit.to_base)(0.0);
    let back = (unit.from_base)(base);
    let scale = number.abs() + (unit.from_base)(base + offset).abs();
    assert!(
        (back - number).abs() <= 4.0 * f64::EPSILON * scale,
        "{}: {number:?} comes back as {back:?}",
        unit.symbol
    );
}

#[test]
fn every_spelling_reads_as_its_unit() {
    for quantity in kinds::ALL {
        for unit in quantity.units {
            for spelling in unit.spellings {
                let mut texts = vec![format!("7 {spelling}"), format!(" 7  {spelling} ")];
                // The unit of a plain ratio is written 1: close up it would be another number.
                texts.extend((!spelling.starts_with('1')).then(|| format!("7{spelling}")));
                for text in texts {
                    assert_eq!(base_of(&text, quantity), (unit.to_base)(7.0), "{}: {text:?}", quantity.name);
                }
            }
        }
    }
}

#[test]
fn feet_and_inches_come_back_within_the_last_digit() {
    for denominator in [2, 4, 8, 16, 32] {
        for parts in (0..40_000_u32).step_by(7) {
            let length = Length::from_base(0.0254 * f64::from(parts) / f64::from(denominator));
            for text in [feet_and_inches(length, denominator), inches(length, denominator)] {
                let back = read::<Length>(&text).unwrap_or_else(|failure| panic!("{failure}")).base();
                let off = (back - length.base()).abs();
                assert!(off <= f64::EPSILON * length.base(), "{text}: {back:?}, not {:?}", length.base());
            }
        }
    }
}

#[test]
fn a_fraction_reads_as_its_decimals() {
    for denominator in [2_u32, 4, 8, 16, 32, 64] {
        for numerator in 1..denominator {
            let decimal = 5.0 + f64::from(numerator) / f64::from(denominator);
            let expected = read::<Length>(&format!("{decimal} in")).unwrap().base();
            for text in [
                format!("5 {numerator}/{denominator} in"),
                format!("5-{numerator}/{denominator}\""),
                format!("0' 5 {numerator}/{denominator}\""),
            ] {
                assert_eq!(read::<Length>(&text).unwrap().base(), expected, "{text}");
            }
        }
    }
}
