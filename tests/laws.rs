//! Laws that hold for every input: what may not change an answer does not, and parts add up to the whole. Inputs are random, the
//! same in every run, and go through the table of operations as a caller's do.

mod datum;
mod invariance;
mod job_units;
mod order;
mod parts;
pub(crate) mod random;
mod shapes;
mod texts;
mod thickness;
mod thin_zones;
mod work;

/// What the design promises: the same job gives the same answer to a billionth.
const RELATIVE: f64 = 1e-9;

/// Two numbers agree to a share of a scale.
#[track_caller]
fn assert_near(found: f64, expected: f64, scale: f64, what: &str) {
    let off = (found - expected).abs();
    assert!(off <= RELATIVE * scale, "{what}: {found:?}, not {expected:?}: {off:e} off");
}
