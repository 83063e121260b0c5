//! What a wave of the surface does to water: the low spots that strike-off leaves.
//!
//! A wave of height d from crest to trough over a length L from crest to crest is taken as `z = (d / 2) sin(2 pi x / L)`. On a
//! surface that falls by s it holds no water while its steepest rise, pi d / L, does not exceed s.

use crate::failure::{Result, check};
use crate::quantity::{Length, Range, Slope, Typed};
use std::f64::consts::PI;

/// The height of a wave, crest to trough: up to 1 ft.
pub const WAVE_HEIGHT: Range = Range::closed(0.0, 0.3048);
/// The length of a wave, crest to crest: more than none, up to 100 ft.
pub const WAVE_LENGTH: Range = Range::positive_to(30.48);
/// A fall: none, or up to 1:1.
pub use crate::grade::fall::FALL;

/// What a wave holds on a fall.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Puddle {
    /// The greatest depth of the water; none where it drains.
    pub depth: Length,
    /// The greatest height that a wave of this length may have and still drain.
    pub greatest_wave: Length,
}

/// The least fall that drains a wave: fall = pi d / L.
///
/// # Errors
/// A height or a length outside its range.
pub fn puddle_fall(wave_height: Length, wave_length: Length) -> Result<Slope> {
    let height = check("wave_height", wave_height, WAVE_HEIGHT)?.base();
    let length = check("wave_length", wave_length, WAVE_LENGTH)?.base();
    Ok(Slope::from_base(PI * height / length))
}

/// How deep a wave holds water on a fall: between the low and the high place of `(d / 2) sin(2 pi x / L) - s x`, depth =
/// d (sin t - t cos t) with cos t = s L / (pi d), and none where that is 1 or more.
///
/// # Errors
/// A height, a length or a fall outside its range.
pub fn puddle(wave_height: Length, wave_length: Length, fall: Slope) -> Result<Puddle> {
    puddle_fall(wave_height, wave_length)?;
    let fall = check("fall", fall, FALL)?.base();
    let greatest_wave = Length::from_base(fall * wave_length.base() / PI);
    let depth = depth_on(wave_height.base(), wave_length.base(), fall);
    Ok(Puddle { depth: Length::from_base(depth), greatest_wave })
}

/// The same in plain metres.
pub(super) fn depth_on(height: f64, length: f64, fall: f64) -> f64 {
    let least = PI * height / length;
    if least <= fall {
        return 0.0;
    }
    let angle = (fall / least).acos();
    height * (angle.sin() - angle * angle.cos()).max(0.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::read;

    fn length(text: &str) -> Length {
        read(text).expect("a length")
    }

    /// Common practice, no source: waves of 3/16 in over 4 ft pond at 1/8 in per ft.
    #[test]
    fn a_wave_of_three_sixteenths_over_four_feet_ponds_at_an_eighth() {
        let least = puddle_fall(length("3/16 in"), length("4 ft")).expect("a fall").base();
        assert!((least * 12.0 - 12.0 * PI * 0.1875 / 48.0).abs() < 1e-15);
        assert!(least > 0.125 / 12.0 && least < 0.25 / 12.0);
    }

    /// The depth against the surface itself, walked in ten thousand steps along a wave.
    #[test]
    fn the_depth_is_that_of_the_surface_walked_along() {
        let (height, length) = (0.005, 1.2);
        for fall in [0.0, 0.002, 0.006, 0.01, 0.0130, 0.0131, 0.02] {
            let wave = puddle(Length::from_base(height), Length::from_base(length), Slope::from_base(fall));
            let found = wave.expect("a puddle").depth.base();
            let surface = |x: f64| 0.5 * height * (2.0 * PI * x / length).sin() - fall * x;
            // Water stands up to the highest place downstream.
            let (mut rim, mut deepest) = (f64::NEG_INFINITY, 0.0_f64);
            for step in (0..=20_000).rev() {
                let z = surface(2.0 * length * f64::from(step) / 20_000.0);
                rim = rim.max(z);
                deepest = deepest.max(rim - z);
            }
            assert!((found - deepest).abs() < 1e-8, "at {fall}: {found} and walked {deepest}");
        }
    }

    #[test]
    fn a_level_wave_holds_its_whole_height_and_no_wave_nothing() {
        let at = |height: f64, fall: f64| {
            puddle(Length::from_base(height), Length::from_base(1.0), Slope::from_base(fall))
                .expect("a puddle")
        };
        assert!((at(0.004, 0.0).depth.base() - 0.004).abs() < 1e-15);
        assert_eq!(at(0.0, 0.0).depth.base(), 0.0);
        assert_eq!(at(0.004, 0.02).greatest_wave.base(), 0.02 / PI);
    }
}
