//! The benchmark read again after the shots: what it says of them.
//!
//! A set-up of a level book that closes on its own backsight shares half of the difference out to all its sights (see
//! [`level_book`](crate::survey::level_book)). Where the order or the hours of the shots are known each gets its own share.

use crate::failure::{Code, Failure, Place, Result, check};
use crate::quantity::{Length, Time, Typed, feet_and_inches};
use crate::survey::level_book::{RECHECK_TOLERANCE, ROD, Slip, booking_slip};
use crate::survey::tolerance::Tolerance;

crate::choice! {
    /// What follows from a benchmark read again.
    pub enum Follows {
        /// It reads the same.
        Agrees = "agrees",
        /// It is off within the tolerance: the difference is shared out.
        SharedOut = "shared_out",
        /// It is off by more: nothing is shared out, the shots are to be taken again.
        ShootAgain = "shoot_again",
    }
}

/// The benchmark's two readings, and what was read between them.
#[derive(Clone, Debug, PartialEq)]
pub struct BenchmarkAgain {
    /// The first reading.
    pub first: Length,
    /// The reading after the shots.
    pub again: Length,
    /// The shots between, in the order they were read.
    pub rods: Vec<Length>,
    /// When each was read after the first reading; empty where nobody looked.
    pub times: Vec<Time>,
    /// When the benchmark was read again.
    pub time_again: Option<Time>,
    /// How far the two may be off.
    pub tolerance: Option<Length>,
}

/// What follows.
#[derive(Clone, Debug, PartialEq)]
pub struct Rechecked {
    /// Second less first reading: above zero where the line of sight rose or the benchmark sank.
    pub difference: Length,
    /// What follows.
    pub follows: Follows,
    /// The tolerance, given or taken.
    pub tolerance: Tolerance,
    /// What each shot's elevation gains, in the order read; empty where nothing is shared out.
    pub corrections: Vec<Length>,
    /// The readings as if the line of sight had stayed where it was first; empty where nothing is shared out.
    pub rods: Vec<Length>,
    /// The slip that the difference looks like, where it is too great.
    pub slip: Option<Slip>,
    /// A sentence for the crew.
    pub said: String,
}

impl BenchmarkAgain {
    /// What follows for the shots: correction = difference x (time of the shot) / (time of the second reading); without times
    /// shot `k` of `n` gets `k / (n + 1)` of the difference.
    ///
    /// # Errors
    /// `OUT_OF_RANGE`: a reading that cannot be, a shot after the second reading; `LENGTH_MISMATCH`, `KEY_MISSING`: times for
    /// some only.
    pub fn follows(&self) -> Result<Rechecked> {
        check("first", self.first, ROD)?;
        check("again", self.again, ROD)?;
        for (index, rod) in self.rods.iter().enumerate() {
            check("rod", *rod, ROD).map_err(|failure| failure.at(Place::Index(index)))?;
        }
        let shares = self.shares()?;
        let tolerance = Tolerance::given_or(
            "tolerance",
            self.tolerance,
            RECHECK_TOLERANCE,
            crate::basis::BasisId::ClosureTolerance,
        )?;
        let difference = self.again - self.first;
        let follows = match difference.base() {
            0.0 => Follows::Agrees,
            _ if tolerance.exceeded_by(difference) => Follows::ShootAgain,
            _ => Follows::SharedOut,
        };
        let shares = if follows == Follows::ShootAgain { Vec::new() } else { shares };
        let corrections: Vec<Length> = shares.into_iter().map(|share| difference * share).collect();
        let rods = corrections.iter().zip(&self.rods).map(|(correction, rod)| *rod - *correction).collect();
        let slip = if follows == Follows::ShootAgain { booking_slip(difference) } else { None };
        let said = self.said(difference, follows, &tolerance, slip);
        Ok(Rechecked { difference, follows, tolerance, corrections, rods, slip, said })
    }

    /// How much of the difference had come about when each shot was read.
    fn shares(&self) -> Result<Vec<f64>> {
        let count = self.rods.len();
        if self.times.is_empty() {
            return Ok((1..=count).map(|shot| shot as f64 / (count + 1) as f64).collect());
        }
        if self.times.len() != count {
            return Err(Failure::new(Code::LengthMismatch, "time")
                .written(format!("{} times for {count} shots", self.times.len()))
                .allowed("a time for every shot, or none")
                .remedy("give the missing times, or none at all"));
        }
        let Some(last) = self.time_again else {
            return Err(Failure::new(Code::KeyMissing, "time_again")
                .allowed("when the benchmark was read again")
                .remedy("give it, or leave the times of the shots out"));
        };
        let whole = last.base();
        let share = |(index, time): (usize, &Time)| {
            let share = time.base() / whole;
            if whole > 0.0 && (0.0..=1.0).contains(&share) {
                return Ok(share);
            }
            Err(Failure::new(Code::OutOfRange, "time")
                .at(Place::Index(index))
                .written(format!("{} min", time.base() / 60.0))
                .allowed(format!("from 0 to {} min, when the benchmark was read again", whole / 60.0))
                .remedy("count the time from the first reading of the benchmark"))
        };
        self.times.iter().enumerate().map(share).collect()
    }

    fn said(
        &self,
        difference: Length,
        follows: Follows,
        tolerance: &Tolerance,
        slip: Option<Slip>,
    ) -> String {
        let off = feet_and_inches(Length::from_base(difference.base().abs()), 32);
        let allowed = feet_and_inches(tolerance.value, 32);
        let way = if difference.base() > 0.0 { "more" } else { "less" };
        match (follows, slip) {
            (Follows::Agrees, _) => "the benchmark reads the same".to_owned(),
            (Follows::SharedOut, _) => {
                format!("the benchmark reads {off} {way}, within {allowed}: shared out over the shots")
            }
            (Follows::ShootAgain, None) => {
                format!(
                    "the benchmark reads {off} {way}, more than {allowed}: read it once more, then shoot again"
                )
            }
            (Follows::ShootAgain, Some(slip)) => format!(
                "the benchmark reads {off} {way}, more than {allowed}: look first for a reading booked {} off, then shoot again",
                slip.words()
            ),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::length::inch;

    fn again(difference: f64, shots: usize) -> BenchmarkAgain {
        BenchmarkAgain {
            first: Length::new::<inch>(50.5),
            again: Length::new::<inch>(50.5 + difference),
            rods: (0..shots).map(|shot| Length::new::<inch>(60.0 + shot as f64)).collect(),
            times: Vec::new(),
            time_again: None,
            tolerance: None,
        }
    }

    #[test]
    fn a_difference_within_the_tolerance_is_shared_out() {
        let result = again(0.125, 3).follows().unwrap();
        assert_eq!(result.follows, Follows::SharedOut);
        let corrections: Vec<f64> = result.corrections.iter().map(|c| c.get::<inch>() * 32.0).collect();
        assert!(
            corrections.iter().zip([1.0, 2.0, 3.0]).all(|(found, expected)| (found - expected).abs() < 1e-9)
        );
        assert!((result.rods[2].get::<inch>() - (62.0 - 3.0 / 32.0)).abs() < 1e-12);
        let mut timed = again(0.125, 2);
        (timed.times, timed.time_again) =
            (vec![Time::from_base(0.0), Time::from_base(900.0)], Some(Time::from_base(3600.0)));
        let shares = timed.follows().unwrap().corrections;
        assert!((shares[0].base()).abs() < 1e-15 && (shares[1].get::<inch>() - 0.125 / 4.0).abs() < 1e-12);
    }

    #[test]
    fn beyond_it_nothing_is_shared_out() {
        let result = again(-1.0, 3).follows().unwrap();
        assert_eq!((result.follows, result.rods.len()), (Follows::ShootAgain, 0));
        assert_eq!(result.slip, Some(Slip::Inch));
        assert!(result.said.contains("booked an inch off"), "{}", result.said);
        assert_eq!(again(0.0, 1).follows().unwrap().follows, Follows::Agrees);
    }

    #[test]
    fn times_for_some_are_refused() {
        let mut some = again(0.1, 2);
        some.times = vec![Time::from_base(1.0)];
        assert_eq!(some.follows().unwrap_err().code, Code::LengthMismatch);
        some.times.push(Time::from_base(2.0));
        assert_eq!(some.follows().unwrap_err().code, Code::KeyMissing);
        some.time_again = Some(Time::from_base(1.5));
        assert_eq!(some.follows().unwrap_err().code, Code::OutOfRange);
    }
}
