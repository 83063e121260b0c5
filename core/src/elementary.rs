//! Logarithm and power without a branch or a call, so that a loop over many rows becomes vector instructions. One row and many use the same
//! ones and agree bit for bit. They are for numbers that were checked: positive, neither tiny nor infinite.

use std::f64::consts::{LN_2, LOG2_E};

/// 1.5 x 2^52: a whole number added to it stands in its last bits, and a double is rounded to whole by adding and taking it off.
const WHOLE: f64 = 6_755_399_441_055_744.0;
/// The leading part of ln 2 with its last 22 bits zero, so that it takes a power of two exactly; and the rest.
const LN_2_HIGH: f64 = f64::from_bits(LN_2.to_bits() & !0x3f_ffff);
/// ln 2 to twice the digits is `LN_2` plus this.
const LN_2_BEYOND: f64 = 2.319_046_813_846_299_6e-17;
const LN_2_LOW: f64 = (LN_2 - LN_2_HIGH) + LN_2_BEYOND;

/// The natural logarithm of a ratio: `ln(p/q) = k ln 2 + 2 atanh((r - q) / (r + q))` with `p = 2^k r`, by the series of atanh to its 21st
/// power. It takes one division, where the ratio itself would be another.
#[inline(always)]
pub(crate) fn ln_ratio(over: f64, under: f64) -> f64 {
    const HALF: u64 = 1 << 51;
    // The bits of a double are nearly its logarithm: their difference, rounded, is the power of two, to less than 0.6.
    let apart = over.to_bits().wrapping_sub(under.to_bits());
    let twos = apart.wrapping_add(HALF) as i64 >> 52;
    let near = f64::from_bits(over.to_bits().wrapping_sub((twos as u64) << 52));
    let twos = f64::from_bits(WHOLE.to_bits().wrapping_add(twos as u64)) - WHOLE;
    let s = (near - under) / (near + under);
    let z = s * s;
    let (z2, z4) = (z * z, z * z * (z * z));
    let low = (1.0 / 3.0 + z * (1.0 / 5.0)) + z2 * (1.0 / 7.0 + z * (1.0 / 9.0));
    let middle = (1.0 / 11.0 + z * (1.0 / 13.0)) + z2 * (1.0 / 15.0 + z * (1.0 / 17.0));
    let high = 1.0 / 19.0 + z * (1.0 / 21.0);
    let series = low + z4 * (middle + z4 * high);
    let twice = s + s;
    twos * LN_2_HIGH + (twice + (twice * z * series + twos * LN_2_LOW))
}

/// `e` to a power between -700 and 700: `2^k` times the series of what is left, to its 13th power.
#[inline(always)]
fn exp(power: f64) -> f64 {
    let shifted = power * LOG2_E + WHOLE;
    let twos = shifted - WHOLE;
    let r = (power - twos * LN_2_HIGH) - twos * LN_2_LOW;
    let mut series = 1.0 / 6_227_020_800.0;
    for factorial in [
        479_001_600.0,
        39_916_800.0,
        3_628_800.0,
        362_880.0,
        40_320.0,
        5_040.0,
        720.0,
        120.0,
        24.0,
        6.0,
        2.0,
        1.0,
        1.0,
    ] {
        series = 1.0 / factorial + r * series;
    }
    f64::from_bits(series.to_bits().wrapping_add(shifted.to_bits() << 52))
}

/// A number to a power.
#[inline(always)]
pub(crate) fn power(number: f64, power: f64) -> f64 {
    exp(power * ln_ratio(number, 1.0))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Numbers that fall on no pattern, from 2^-40 to 2^40.
    fn numbers() -> impl Iterator<Item = f64> {
        (0..200_000u64).map(|at| {
            ((at.wrapping_mul(0x9e37_79b9_7f4a_7c15) >> 11) as f64 / (1u64 << 53) as f64 * 80.0 - 40.0).exp2()
        })
    }

    #[test]
    fn the_logarithm_of_a_ratio_is_that_of_the_standard_library() {
        for (over, under) in numbers().zip(numbers().skip(7)) {
            let (ours, wanted) = (ln_ratio(over, under), over.ln() - under.ln());
            // The difference of two logarithms is good to the larger of them only.
            let allowed = 4.0 * f64::EPSILON * over.ln().abs().max(under.ln().abs());
            assert!((ours - wanted).abs() <= allowed, "{over} {under}: {ours} {wanted}");
        }
        let near = (1..100_000).map(|at| 0.5 + f64::from(at) * 1.5e-5);
        for number in numbers().chain(near).filter(|&number| number != 1.0) {
            let (ours, wanted) = (ln_ratio(number, 1.0), number.ln());
            assert!((ours / wanted - 1.0).abs() < 4.0 * f64::EPSILON, "{number}: {ours} {wanted}");
            assert_eq!(ln_ratio(number, number), 0.0);
            assert_eq!(ln_ratio(1.0, number), -ours);
        }
        assert_eq!(ln_ratio(2.0, 1.0), LN_2);
    }

    #[test]
    fn the_power_is_that_of_the_standard_library() {
        for number in numbers() {
            for by in [0.6, 0.72, 0.25, -0.5, 3.0] {
                let (ours, wanted) = (power(number, by), number.powf(by));
                // What the logarithm lacks counts as often as it is long.
                let allowed = (4.0 + (by * number.ln()).abs()) * f64::EPSILON;
                assert!((ours / wanted - 1.0).abs() < allowed, "{number}^{by}: {ours} {wanted}");
            }
        }
    }

    #[test]
    fn the_parts_of_ln_2_add_up() {
        assert_eq!(LN_2_HIGH + LN_2_LOW, LN_2);
        assert_eq!((LN_2_HIGH * 1023.0 - LN_2_HIGH * 1022.0), LN_2_HIGH);
    }
}
