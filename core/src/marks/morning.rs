//! The benchmark read on the morning of the pour: how far every rod moves, or why nobody should pour yet.

use crate::failure::{Place, Result, check};
use crate::quantity::units::{FOOT, INCH};
use crate::quantity::{Length, Range, Typed, feet_and_inches};
use crate::survey::level_book::{ROD, Slip, booking_slip};

/// How far the benchmark may read off before nobody pours: up to 1 ft may be given.
pub const TOLERANCE: Range = Range::closed(0.0, FOOT);

/// The same set-up agrees within this: 1/8 in, what a laser and its receiver repeat to. Common practice, no source.
pub const AGREES: f64 = 0.125 * INCH;

/// Rounding of the arithmetic, not of the rod, in metres.
const HAIR: f64 = 1e-9;

crate::choice! {
    /// What follows from the benchmark read again.
    pub enum Verdict {
        /// It reads the same.
        Same = "same",
        /// It agrees within 1/8 in: the rods move by the difference all the same.
        Agrees = "agrees",
        /// Every rod moves by the difference.
        Shift = "shift",
        /// Do not pour before it is cleared up.
        Stop = "stop",
    }
}

crate::choice! {
    /// Which benchmark is in doubt.
    pub enum Doubted {
        /// None.
        None = "none",
        /// The first.
        First = "first",
        /// The second.
        Second = "second",
        /// One of the two, and nothing tells which; or both.
        Either = "either",
    }
}

/// A second benchmark, which checks the first.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SecondBenchmark {
    /// The rod on it when the marks were planned.
    pub planned: Length,
    /// The rod on it today.
    pub today: Length,
}

/// The benchmark as it was read, as it reads today, and the rods of the marks.
#[derive(Clone, Debug, PartialEq)]
pub struct Morning {
    /// The rod on the benchmark when the marks were planned.
    pub planned: Length,
    /// The rod on it today.
    pub today: Length,
    /// Whether the level still stands where it stood.
    pub same_setup: bool,
    /// How far the benchmark may read off.
    pub tolerance: Length,
    /// A second benchmark, read both times.
    pub second: Option<SecondBenchmark>,
    /// The planned rods of marks.
    pub rods: Vec<Length>,
}

/// What follows.
#[derive(Clone, Debug, PartialEq)]
pub struct Checked {
    /// Today's rod less the planned one: what every rod moves by.
    pub difference: Length,
    /// The same of the second benchmark.
    pub second_difference: Option<Length>,
    /// What follows.
    pub verdict: Verdict,
    /// Which benchmark is in doubt.
    pub doubted: Doubted,
    /// The slip that a difference too great looks like.
    pub slip: Option<Slip>,
    /// The rods of the marks today; none where nobody should pour.
    pub rods: Vec<Length>,
    /// A sentence for the crew.
    pub said: String,
}

impl Morning {
    /// What follows for the marks: today's rod = planned rod + difference.
    ///
    /// # Errors
    /// `OUT_OF_RANGE`, `NOT_FINITE`: a reading or a tolerance that cannot be; paths as the ports of the row.
    pub fn check(&self) -> Result<Checked> {
        let (planned, today) = (check("planned", self.planned, ROD)?, check("today", self.today, ROD)?);
        check("tolerance", self.tolerance, TOLERANCE)?;
        for (index, rod) in self.rods.iter().enumerate() {
            check("marks.rod", *rod, ROD).map_err(|failure| failure.at(Place::Index(index)))?;
        }
        let second_difference = |second: SecondBenchmark| -> Result<Length> {
            let planned = check("second_planned", second.planned, ROD)?;
            Ok(check("second_today", second.today, ROD)? - planned)
        };
        let second = self.second.map(second_difference).transpose()?;
        let difference = today - planned;
        let doubted = self.doubted(difference, second);
        let verdict = self.verdict(difference, doubted);
        let moved = self.rods.iter().map(|rod| *rod + difference).collect();
        let rods = if verdict == Verdict::Stop { Vec::new() } else { moved };
        let slip = (verdict == Verdict::Stop).then(|| self.slip(difference, second, doubted)).flatten();
        let said = self.said(difference, second, verdict, doubted, slip);
        Ok(Checked { difference, second_difference: second, verdict, doubted, slip, rods, said })
    }

    fn off(&self, difference: Length) -> bool {
        difference.base().abs() > self.tolerance.base() + HAIR
    }

    /// Two benchmarks that move unlike contradict one another: where the level still stands, the one that moved is in doubt.
    fn doubted(&self, first: Length, second: Option<Length>) -> Doubted {
        let alone = |second: Option<Length>| second.is_none() && self.same_setup && self.off(first);
        match second {
            _ if alone(second) => Doubted::First,
            Some(second) if self.off(second - first) => {
                match (self.same_setup, self.off(first), self.off(second)) {
                    (true, true, false) => Doubted::First,
                    (true, false, true) => Doubted::Second,
                    _ => Doubted::Either,
                }
            }
            _ => Doubted::None,
        }
    }

    fn verdict(&self, difference: Length, doubted: Doubted) -> Verdict {
        let size = difference.base().abs();
        if doubted != Doubted::None || (self.same_setup && self.off(difference)) {
            Verdict::Stop
        } else if size <= HAIR {
            Verdict::Same
        } else if self.same_setup && size <= AGREES + HAIR {
            Verdict::Agrees
        } else {
            Verdict::Shift
        }
    }

    /// What the reading in doubt looks like.
    fn slip(&self, first: Length, second: Option<Length>, doubted: Doubted) -> Option<Slip> {
        match (doubted, second) {
            (Doubted::First, _) if self.same_setup => booking_slip(first),
            (Doubted::Second, Some(second)) if self.same_setup => booking_slip(second),
            (Doubted::Either, Some(second)) => booking_slip(second - first),
            _ => None,
        }
    }

    fn said(
        &self,
        first: Length,
        second: Option<Length>,
        verdict: Verdict,
        doubted: Doubted,
        slip: Option<Slip>,
    ) -> String {
        let move_all = match first.base() > 0.0 {
            true => format!("add {} to every rod", size(first)),
            false => format!("take {} off every rod", size(first)),
        };
        let both = if second.is_some() { ", and the second benchmark agrees" } else { "" };
        match verdict {
            Verdict::Same => format!("the benchmark reads as planned{both}: use the rods as they stand"),
            Verdict::Agrees => format!(
                "the benchmark reads {}, as near as the level repeats{both}: {move_all} all the same",
                way(first)
            ),
            Verdict::Shift if self.same_setup => {
                format!("the benchmark reads {}{both}: {move_all}", way(first))
            }
            Verdict::Shift => format!("new set-up: the benchmark reads {}{both}: {move_all}", way(first)),
            Verdict::Stop => self.stop(first, second, doubted, slip),
        }
    }

    fn stop(&self, first: Length, second: Option<Length>, doubted: Doubted, slip: Option<Slip>) -> String {
        let allowed = feet_and_inches(self.tolerance, 16);
        let looks =
            slip.map(|slip| format!("; it looks like a rod read {} off", slip.words())).unwrap_or_default();
        let why = match (doubted, second) {
            (Doubted::First, None) => format!(
                "the benchmark reads {}, more than {allowed}{looks}: read it again; if it stays so, the level or the benchmark has moved",
                way(first)
            ),
            (Doubted::First, Some(_)) => format!(
                "the first benchmark reads {}, the second does not: the first is in doubt{looks}: read both again",
                way(first)
            ),
            (Doubted::Second, Some(second)) => format!(
                "the second benchmark reads {}, the first does not: the second is in doubt{looks}: read both again",
                way(second)
            ),
            (Doubted::Either, Some(second)) => format!(
                "the benchmarks moved unlike, by {} to one another, more than {allowed}, and nothing tells which is wrong{looks}: read both again",
                size(second - first)
            ),
            _ => format!(
                "both benchmarks read {}, more than {allowed}: the level has moved; set it up anew, read both, and take the rods from there",
                way(first)
            ),
        };
        format!("DO NOT POUR: {why}")
    }
}

fn size(length: Length) -> String {
    feet_and_inches(Length::from_base(length.base().abs()), 16)
}

fn way(difference: Length) -> String {
    format!("{} {}", size(difference), if difference.base() > 0.0 { "more" } else { "less" })
}
