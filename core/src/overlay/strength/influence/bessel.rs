//! Modified Bessel functions of order 0 and 1 along the ray of angle pi / 4, where the Kelvin functions live.

use crate::overlay::strength::westergaard::GAMMA;
use num_complex::Complex64;

/// Up to this size the power series serve.
pub(super) const SERIES: f64 = 2.0;
/// Beyond this K is under 1e-18.
const NOTHING: f64 = 60.0;
/// Step of the trapezoidal rule: with the strip of pi / 4 in which the integrand is bounded its error is near exp(-39).
const STEP: f64 = 0.125;

/// `I0(z)`, by its power series: for small `z`.
pub(super) fn i0(z: Complex64) -> Complex64 {
    one_and(z) + 1.0
}

/// `I0(z) - 1`.
pub(super) fn one_and(z: Complex64) -> Complex64 {
    let quarter = z * z / 4.0;
    sum(quarter, quarter, |k| (k + 1.0) * (k + 1.0))
}

/// `2 I1(z) / z`, by its power series: 1 at 0.
pub(super) fn i1_over(z: Complex64) -> Complex64 {
    sum(Complex64::new(1.0, 0.0), z * z / 4.0, |k| k * (k + 1.0))
}

/// A power series from its first term: each is the last times `quarter` over `below(k)`, k from 1.
fn sum(first: Complex64, quarter: Complex64, below: impl Fn(f64) -> f64) -> Complex64 {
    let (mut term, mut sum, mut k) = (first, first, 1.0);
    while term.norm() > 1.0e-18 * sum.norm() && k < 60.0 {
        term = term * quarter / below(k);
        sum += term;
        k += 1.0;
    }
    sum
}

/// `K0(z)` and `K1(z)` for z on the ray.
pub(super) fn k0_k1(z: Complex64) -> (Complex64, Complex64) {
    let size = z.norm();
    if size > NOTHING {
        (Complex64::default(), Complex64::default())
    } else if size > SERIES {
        by_integral(z)
    } else {
        let log = (z / 2.0).ln() + GAMMA;
        (k0_series(z, log), (1.0 - z * z * by_square(z)) / z)
    }
}

/// `K0 = -(ln(z/2) + gamma) I0 + sum (z^2/4)^k / k!^2 (1 + ... + 1/k)`.
fn k0_series(z: Complex64, log: Complex64) -> Complex64 {
    let quarter = z * z / 4.0;
    let (mut term, mut harmonic, mut more) = (Complex64::new(1.0, 0.0), 0.0, Complex64::default());
    for k in 1..30 {
        let k = f64::from(k);
        term = term * quarter / (k * k);
        harmonic += 1.0 / k;
        more += term * harmonic;
    }
    more - log * i0(z)
}

/// `(1 - z K1(z)) / z^2` by its series, without the loss that the difference would bring for small `z`.
pub(super) fn by_square(z: Complex64) -> Complex64 {
    let quarter = z * z / 4.0;
    let log = (z / 2.0).ln() + GAMMA;
    // Harmonic numbers of k and k + 1, halved and summed: what the digamma functions leave beside gamma.
    let (mut term, mut harmonic, mut more) = (Complex64::new(1.0, 0.0), 0.0, Complex64::default());
    for k in 0..30 {
        let k = f64::from(k);
        if k > 0.0 {
            term = term * quarter / (k * (k + 1.0));
            harmonic += 1.0 / k;
        }
        more += term * (2.0 * harmonic + 1.0 / (k + 1.0));
    }
    more / 4.0 - log * i1_over(z) / 2.0
}

/// `K(z) = integral of exp(-z cosh t) cosh(nu t)`, t from 0, by the trapezoidal rule, which converges exponentially here.
fn by_integral(z: Complex64) -> (Complex64, Complex64) {
    let first = (-z).exp();
    let (mut zero, mut one) = (first / 2.0, first / 2.0);
    for step in 1..200 {
        let cosh = (f64::from(step) * STEP).cosh();
        // What is left is under 1e-17 of what is summed.
        if z.re * (cosh - 1.0) > 42.0 {
            break;
        }
        let value = (-z * cosh).exp();
        zero += value;
        one += value * cosh;
    }
    (zero * STEP, one * STEP)
}
