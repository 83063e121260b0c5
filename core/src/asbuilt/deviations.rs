//! How far the new floor lies from its plan, shot by shot.

use crate::failure::{Code, Failure, Result, check};
use crate::geometry::{Point, Sum};
use crate::grade::finish::Finish;
use crate::quantity::{Elevation, Length, Range, Typed};
use crate::survey::Survey;

/// How far a floor may miss its marks: up to 1 ft.
pub const TOLERANCE: Range = Range::positive_to(0.3048);

/// A shot so near outside the outline is on it, as for the survey: 1/2 in.
const ON_RUN: f64 = 0.0127;

/// A deviation that exceeds a limit by less is on it: rounding.
const HAIR: f64 = 1e-9;

/// A shot of the new floor beside its plan.
#[derive(Clone, Debug, PartialEq)]
pub struct ShotDeviation {
    /// Its name.
    pub name: String,
    /// Distance from the left.
    pub x: Length,
    /// Distance from the front.
    pub y: Length,
    /// The height that was shot.
    pub elevation: Elevation,
    /// The height planned there.
    pub planned: Elevation,
    /// Shot less planned: positive where the floor is high.
    pub deviation: Length,
}

/// All shots beside the plan.
#[derive(Clone, Debug, PartialEq)]
pub struct Deviations {
    /// The shots on the work, in their order.
    pub shots: Vec<ShotDeviation>,
    /// Shots outside the work, on the approach or a walk, which have no plan.
    pub outside: usize,
    /// Mean of the deviations.
    pub mean: Length,
    /// Their standard deviation about that mean, divided by one less than their number; none for a single shot.
    pub spread: Option<Length>,
    /// How far a shot may be off.
    pub tolerance: Length,
}

impl Deviations {
    /// The shots of a new floor beside a finish.
    ///
    /// # Errors
    /// `OUT_OF_RANGE`: a tolerance outside [`TOLERANCE`]; `TOO_FEW_SHOTS`: no shot on the work; `OFF_WORK`: a shot under no facet.
    pub fn of(new: &Survey, finish: &Finish, tolerance: Length) -> Result<Self> {
        let tolerance = check("tolerance", tolerance, TOLERANCE)?;
        let region = new.outline().region();
        let (mut shots, mut outside) = (Vec::new(), 0);
        for (number, [x, y], elevation) in new.shots().each() {
            let at = Point::new(x.base(), y.base());
            if region.distance_outside(at) > ON_RUN + HAIR {
                outside += 1;
                continue;
            }
            let name = new.shots().name(number);
            let planned = planned(finish, at, new).ok_or_else(|| under_no_facet(&name))?;
            shots.push(ShotDeviation { name, x, y, elevation, planned, deviation: elevation - planned });
        }
        if shots.is_empty() {
            return Err(Failure::new(Code::TooFewShots, "shots")
                .written("no shot on the work")
                .allowed("shots of the new floor within the outline")
                .remedy("shoot the new floor where the old one was shot"));
        }
        let count = shots.len() as f64;
        let mean = shots.iter().map(|shot| shot.deviation.base()).collect::<Sum>().value() / count;
        let squares: Sum = shots.iter().map(|shot| (shot.deviation.base() - mean).powi(2)).collect();
        let spread = (shots.len() > 1).then(|| Length::from_base((squares.value() / (count - 1.0)).sqrt()));
        Ok(Self { shots, outside, mean: Length::from_base(mean), spread, tolerance })
    }

    /// Whether a shot is off by more than the tolerance.
    #[must_use]
    pub fn is_missed(&self, shot: &ShotDeviation) -> bool {
        shot.deviation.base().abs() > self.tolerance.base() + HAIR
    }

    /// The shots that are off by more than the tolerance, the farthest off first.
    #[must_use]
    pub fn missed(&self) -> Vec<&ShotDeviation> {
        let mut missed: Vec<&ShotDeviation> = self.shots.iter().filter(|shot| self.is_missed(shot)).collect();
        let size = |shot: &ShotDeviation| shot.deviation.base().abs();
        missed.sort_by(|a, b| {
            size(b)
                .total_cmp(&size(a))
                .then(a.x.base().total_cmp(&b.x.base()))
                .then(a.y.base().total_cmp(&b.y.base()))
        });
        missed
    }

    /// The shot that is highest over its plan.
    #[must_use]
    pub fn highest(&self) -> Option<&ShotDeviation> {
        self.extreme(|one, best| one > best)
    }

    /// The shot that is lowest under its plan.
    #[must_use]
    pub fn lowest(&self) -> Option<&ShotDeviation> {
        self.extreme(|one, best| one < best)
    }

    /// The extreme shot; of those alike but for rounding the one farthest to the left, then nearest to the front.
    fn extreme(&self, further: fn(f64, f64) -> bool) -> Option<&ShotDeviation> {
        self.shots.iter().reduce(|best, shot| {
            let (one, known) = (shot.deviation.base(), best.deviation.base());
            let first = if (one - known).abs() <= HAIR {
                (shot.x.base(), shot.y.base()) < (best.x.base(), best.y.base())
            } else {
                further(one, known)
            };
            if first { shot } else { best }
        })
    }
}

/// The planned height at a shot; of one a little outside, that at the nearest place of the work.
fn planned(finish: &Finish, at: Point, new: &Survey) -> Option<Elevation> {
    let height = |at: Point| finish.height_at(Length::from_base(at.x), Length::from_base(at.y));
    height(at).or_else(|| height(new.outline().region().nearest_run(at).at))
}

fn under_no_facet(name: &str) -> Box<Failure> {
    Failure::new(Code::OffWork, "shots")
        .written(name)
        .allowed("shots under a facet of the finish")
        .remedy("check the place of the shot, or add a facet there")
}
