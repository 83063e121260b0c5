//! The two-peg test: whether the line of sight of an instrument is level.

use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result, check};
use crate::quantity::{Length, Range, Slope, Typed};
use crate::survey::fixed::{feet, inches};
use crate::survey::level_book::ROD;

/// How far the instrument may stand from a peg: up to 1 km.
pub const SIGHT: Range = Range::closed(0.0, 1_000.0);

/// What a limit of the tilt may be: up to one in ten.
pub const TILT: Range = Range::closed(0.0, 0.1);

/// How far the line of sight may be off over the distance: 1/16 in over 50 ft. Common practice, no source.
const LIMIT: (Length, Length) = (inches(1.0 / 16.0), feet(50.0));

/// The least difference of the two sights of the second set-up that tells anything: 10 ft. Common practice, no source.
const LEAST_DIFFERENCE: Length = feet(10.0);

/// Tilts within this are the same.
const ROUNDING: f64 = 1e-12;

/// The readings of a two-peg test.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PegReadings {
    /// On peg A, the instrument half way between the pegs.
    pub middle_a: Length,
    /// On peg B from there.
    pub middle_b: Length,
    /// On peg A, the instrument near one of the pegs.
    pub end_a: Length,
    /// On peg B from there.
    pub end_b: Length,
    /// From the instrument to peg A in the second set-up.
    pub distance_a: Length,
    /// From the instrument to peg B in the second set-up.
    pub distance_b: Length,
}

/// What a two-peg test says.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PegTest {
    /// How much higher peg B stands than peg A: free of the instrument's error.
    pub rise: Length,
    /// How much the line of sight rises (or, negative, falls) over the distance.
    pub tilt: Slope,
    /// What the second set-up should read on peg A.
    pub right_a: Length,
    /// What it should read on peg B: the reading to set the instrument to.
    pub right_b: Length,
    /// How far the second set-up reads too high on the farther peg.
    pub off: Length,
    /// The tilt allowed.
    pub limit: Slope,
    /// Where the limit comes from, where none was given.
    pub taken: Option<BasisId>,
    /// Whether the tilt is within it.
    pub passes: bool,
    /// The difference between the sights to a benchmark and to a shot over which the tilt is worth 1/8 in; none for a level one.
    pub good_for: Option<Length>,
}

/// The tilt of a line of sight from readings half way between two pegs and near one of them.
///
/// rise = middle A - middle B, in which equal sights cancel the tilt; tilt = ((end A - end B) - rise) / (distance A -
/// distance B); right reading = reading - tilt x distance. The limit is 1/16 in per 50 ft unless one is given.
///
/// # Errors
/// `OUT_OF_RANGE`: a reading or a distance that cannot be; second sights that differ by less than 10 ft.
pub fn two_peg_test(readings: &PegReadings, limit: Option<Slope>) -> Result<PegTest> {
    let rods = [
        ("middle_a", readings.middle_a),
        ("middle_b", readings.middle_b),
        ("end_a", readings.end_a),
        ("end_b", readings.end_b),
    ];
    for (port, rod) in rods {
        check(port, rod, ROD)?;
    }
    let (to_a, to_b) =
        (check("distance_a", readings.distance_a, SIGHT)?, check("distance_b", readings.distance_b, SIGHT)?);
    let difference = to_a - to_b;
    if difference.base().abs() < LEAST_DIFFERENCE.base() - 1e-9 {
        return Err(Failure::new(Code::OutOfRange, "distance_b")
            .written(format!("sights of {} and {}", said(to_a), said(to_b)))
            .allowed(format!("sights that differ by {} at least", said(LEAST_DIFFERENCE)))
            .remedy("set the instrument up near one peg for the second pair of readings"));
    }
    let (taken, limit) = match limit {
        Some(limit) => (None, check("limit", limit, TILT)?.base()),
        None => (Some(BasisId::TwoPegLimit), LIMIT.0.base() / LIMIT.1.base()),
    };
    let rise = readings.middle_a - readings.middle_b;
    let tilt = (readings.end_a - readings.end_b - rise).base() / difference.base();
    let over = |distance: Length| Length::from_base(tilt * distance.base());
    let far = if to_a.base() > to_b.base() { to_a } else { to_b };
    Ok(PegTest {
        rise,
        tilt: Slope::from_base(tilt),
        right_a: readings.end_a - over(to_a),
        right_b: readings.end_b - over(to_b),
        off: over(far),
        limit: Slope::from_base(limit),
        taken,
        passes: tilt.abs() <= limit + ROUNDING,
        good_for: (tilt.abs() > ROUNDING).then(|| Length::from_base(inches(0.125).base() / tilt.abs())),
    })
}

fn said(length: Length) -> String {
    crate::survey::words::both(length)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::length::{foot, inch};

    fn readings(tilt: f64, apart: f64) -> PegReadings {
        // Pegs 0.65 ft apart in height, the instrument 10 ft behind A for the second pair.
        let feet = |number: f64| Length::new::<foot>(number);
        let half = tilt * 0.5 * apart;
        PegReadings {
            middle_a: feet(5.0 + half),
            middle_b: feet(4.35 + half),
            end_a: feet(4.7 + tilt * 10.0),
            end_b: feet(4.05 + tilt * (10.0 + apart)),
            distance_a: feet(10.0),
            distance_b: feet(10.0 + apart),
        }
    }

    #[test]
    fn the_tilt_that_was_put_in_comes_out() {
        for (tilt, passes) in
            [(0.0, true), (1.0e-4, true), (-1.0e-4, true), (2.0e-4, false), (-3.0e-4, false)]
        {
            let test = two_peg_test(&readings(tilt, 100.0), None).unwrap();
            assert!((test.tilt.base() - tilt).abs() < 1e-15);
            assert!((test.rise.get::<foot>() - 0.65).abs() < 1e-12);
            assert!((test.right_a.get::<foot>() - 4.7).abs() < 1e-12);
            assert!((test.right_b.get::<foot>() - 4.05).abs() < 1e-12);
            assert!((test.off.get::<foot>() - tilt * 110.0).abs() < 1e-12);
            assert_eq!(test.passes, passes);
        }
    }

    #[test]
    fn an_eighth_comes_from_so_much_difference_of_sights() {
        let test = two_peg_test(&readings(1.0 / 4800.0, 100.0), None).unwrap();
        // 1/8 in over 50 ft: twice the limit.
        assert!(!test.passes && (test.good_for.unwrap().get::<foot>() - 50.0).abs() < 1e-6);
        assert!((LIMIT.0.get::<inch>() / LIMIT.1.get::<foot>() - 0.00125).abs() < 1e-15);
    }

    #[test]
    fn sights_as_long_as_one_another_tell_nothing() {
        let mut equal = readings(0.0, 100.0);
        equal.distance_a = equal.distance_b;
        assert_eq!(two_peg_test(&equal, None).unwrap_err().code, Code::OutOfRange);
    }
}
