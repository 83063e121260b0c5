//! A stair that starts or ends at the floor: the raise shortens its lowest riser, or heightens its highest.

use super::{inch, is_some};
use crate::basis::BasisId;
use crate::clearance::floor::Meets;
use crate::clearance::level::Level;
use crate::clearance::measure::Measure;
use crate::clearance::verdict::{About, Check, Judgement};
use crate::clearance::words::{plain, up};
use crate::clearance::work::{Task, Work};
use crate::quantity::{Elevation, Length, Typed};

crate::choice! {
    /// Which end of a stair the floor is.
    pub enum End {
        /// The stair goes up from this floor.
        Foot = "foot",
        /// The stair goes down from this floor.
        Head = "head",
    }
}

/// The risers of a flight as they are now.
#[derive(Clone, Debug, PartialEq)]
pub struct Flight {
    risers: Vec<Length>,
}

/// A flight of steps at the floor.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Stair {
    /// Its risers.
    pub flight: Option<Flight>,
    /// Which end of it the floor is; the foot where it is not given.
    pub end: Option<End>,
}

/// The highest riser, in inches.
const RISER: f64 = 7.75;
/// How much the greatest and the least riser may differ, in inches.
const SPREAD: f64 = 0.375;
/// The most risers of a flight that is judged.
pub const MOST_RISERS: usize = 100;

impl Flight {
    /// Risers from the bottom up; none where there are none or more than a flight has.
    #[must_use]
    pub fn of(risers: Vec<Length>) -> Option<Self> {
        (1..=MOST_RISERS).contains(&risers.len()).then_some(Self { risers })
    }

    /// So many even risers over a height.
    #[must_use]
    pub fn even(count: usize, height: Length) -> Option<Self> {
        let riser = Length::from_base(height.base() / count.max(1) as f64);
        Self::of(vec![riser; count.min(MOST_RISERS + 1)])
    }

    /// Its risers, from the bottom up.
    #[must_use]
    pub fn risers(&self) -> &[Length] {
        &self.risers
    }

    /// The risers that the raise leaves.
    fn after(&self, end: End, rise: Length) -> Vec<Length> {
        let mut risers = self.risers.clone();
        match end {
            End::Foot => risers.first_mut().map(|riser| *riser -= rise),
            End::Head => risers.last_mut().map(|riser| *riser += rise),
        };
        risers
    }

    /// The riser at the floor, and the least and the greatest of the others.
    fn parted(&self, end: End) -> (f64, Option<[f64; 2]>) {
        let base = |risers: &[Length]| risers.iter().map(|riser| riser.base()).collect::<Vec<_>>();
        let (own, others) = match (end, self.risers.as_slice()) {
            (End::Foot, [own, others @ ..]) | (End::Head, [others @ .., own]) => (own.base(), base(others)),
            (_, []) => (0.0, Vec::new()),
        };
        (own, (!others.is_empty()).then(|| extremes(&others)))
    }
}

fn extremes(list: &[f64]) -> [f64; 2] {
    list.iter()
        .fold([f64::INFINITY, f64::NEG_INFINITY], |[least, most], &one| [least.min(one), most.max(one)])
}

impl Stair {
    pub(in crate::clearance) fn judged(&self, floor: &Meets) -> Judgement {
        let mut judgement = Judgement::of(Vec::new());
        let Some(flight) = &self.flight else {
            judgement.checks.push(Check::ask(About::Riser, BasisId::RiserHeight, Measure::Risers));
            return judgement;
        };
        let end = self.end.unwrap_or(End::Foot);
        let rise = floor.rise()[1];
        let risers: Vec<f64> = flight.after(end, rise).iter().map(|riser| riser.base()).collect();
        let [least, greatest] = extremes(&risers).map(Length::from_base);
        let most = Self::floor_at_most(floor, flight, end);
        judgement.checks.push(highest(greatest, most));
        judgement.checks.push(spread(greatest, least, most));
        let even: f64 = risers.iter().sum::<f64>() / risers.len() as f64;
        let off = risers.iter().map(|riser| (riser - even).abs()).fold(0.0, f64::max);
        if is_some(greatest - least - inch(SPREAD)) {
            judgement.force(Work::by(Task::RebuildLowStep, Length::from_base(off)));
        }
        let over = Length::from_base(even) - inch(RISER);
        if is_some(over) {
            judgement.force(Work::by(Task::AddStep, over));
        }
        judgement
    }

    /// The highest floor that keeps both limits; none where the other risers already break one.
    fn floor_at_most(floor: &Meets, flight: &Flight, end: End) -> Option<Elevation> {
        let (own, others) = flight.parted(end);
        let [least, most] = others.unwrap_or([own, own]);
        let (riser, spread) = (inch(RISER).base(), inch(SPREAD).base());
        if others.is_some() && (most > riser || most - least > spread) {
            return None;
        }
        let rise = match end {
            End::Foot if others.is_none() => own,
            End::Foot => own - most + spread,
            End::Head if others.is_none() => riser - own,
            End::Head => (least + spread).min(riser) - own,
        };
        Some(floor.at_most(Level::AboveSlab(Length::from_base(rise)), inch(0.0)))
    }
}

fn highest(greatest: Length, most: Option<Elevation>) -> Check {
    let text = format!("highest riser {}, 7 3/4 in at most", up(greatest));
    bounded(Check::limit(About::Riser, BasisId::RiserHeight, inch(RISER) - greatest, text), most)
}

fn spread(greatest: Length, least: Length, most: Option<Elevation>) -> Check {
    let text = format!("risers from {} to {}, 3/8 in apart at most", plain(least), plain(greatest));
    bounded(
        Check::limit(About::RiserSpread, BasisId::RiserHeight, inch(SPREAD) - (greatest - least), text),
        most,
    )
}

fn bounded(check: Check, most: Option<Elevation>) -> Check {
    match most {
        Some(most) => check.up_to(most),
        None => check,
    }
}
