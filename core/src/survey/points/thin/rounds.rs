//! Round by round: make the surface, hold every point against it, take the worst in.

use super::super::Points;
use super::cloud::Cloud;
use super::ground::Ground;
use super::refusal;
use super::{Asked, ROUNDING};
use crate::failure::Result;
use crate::geometry::Region;
use crate::quantity::Typed;
use crate::survey::surface::{Rules, Shot, Surface};

/// A round takes in at most this share of what is kept already: the more at once, the more of them say the same.
const GROWTH: f64 = 0.4;
/// And may take in so many in any case.
const AT_ONCE: usize = 8;
/// While few are kept, so many points for each triangle are enough to see which is about the worst.
const LOOKED_AT: usize = 48;

/// A point left out, and how far the surface is from it.
#[derive(Clone, Copy, Debug)]
struct Off {
    error: f64,
    /// Where it stands in the cloud.
    index: u32,
}

const NOTHING: Off = Off { error: -1.0, index: u32::MAX };

/// What became of it.
pub(super) struct Done {
    pub(super) kept: Vec<usize>,
    pub(super) error: f64,
    pub(super) worst: Option<usize>,
}

/// The points kept so far.
pub(super) struct Rounds<'a> {
    points: &'a Points,
    cloud: &'a Cloud,
    region: &'a Region,
    rules: Rules,
    /// Where those kept stand in the cloud, in the order they were taken in.
    kept: Vec<u32>,
    /// For each point of the cloud whether it is kept or at one place with a point kept.
    taken: Vec<bool>,
    is_kept: Vec<bool>,
}

/// What one look at the points found.
struct Look {
    /// The worst of all left out.
    worst: Off,
    /// The worst in each triangle that may be taken in.
    candidates: Vec<Off>,
}

impl<'a> Rounds<'a> {
    /// Starts from the corners of the hull.
    pub(super) fn new(points: &'a Points, cloud: &'a Cloud, region: &'a Region, hull: &[u32]) -> Self {
        let rules = Rules { beyond_allowed: true, ..Rules::DEFAULT };
        let mut rounds = Self {
            points,
            cloud,
            region,
            rules,
            kept: Vec::new(),
            taken: vec![false; cloud.len()],
            is_kept: vec![false; cloud.len()],
        };
        let mut corners = hull.to_vec();
        corners.sort_unstable();
        for (index, number) in cloud.numbers.iter().enumerate() {
            if corners.binary_search(number).is_ok() {
                rounds.keep(index);
            }
        }
        rounds
    }

    fn keep(&mut self, index: usize) {
        self.kept.push(index as u32);
        self.is_kept[index] = true;
        let taken = &mut self.taken;
        self.cloud.at_place_of(index, |near| taken[near] = true);
    }

    /// Takes points in until what was asked holds.
    pub(super) fn run(mut self, asked: Asked) -> Result<Done> {
        let (allowed, most) = match asked {
            Asked::Within(error) => (error.base() + ROUNDING, usize::MAX),
            Asked::Count(count) => (ROUNDING, count),
        };
        refusal::check_count(self.kept.len(), most)?;
        let mut every = usize::MAX;
        loop {
            let surface = self.surface()?;
            let ground = Ground::of(&surface);
            let room = most - self.kept.len();
            every = every.min(self.cloud.len() / (LOOKED_AT * ground.len()).max(1)).max(1);
            if every > 1 && self.take_in(self.look(&ground, every), allowed, room) > 0 {
                continue;
            }
            every = 1;
            let look = self.look(&ground, every);
            let worst = look.worst;
            if self.take_in(look, allowed, room) > 0 {
                continue;
            }
            if let Asked::Within(error) = asked
                && worst.error > allowed
            {
                return Err(self.unreachable(error.base(), worst));
            }
            return Ok(self.done(worst));
        }
    }

    /// The surface through the points kept, by the rules of every survey.
    fn surface(&self) -> Result<Surface> {
        let shot = |&index: &u32| {
            let number = self.cloud.numbers[index as usize] as usize;
            Shot::new(self.points.x[number], self.points.y[number], self.points.z[number])
        };
        let shots: Vec<Shot> = self.kept.iter().map(shot).collect();
        Surface::from_shots(&shots, self.region, &self.rules).map_err(|error| refusal::of_surface(&error))
    }

    /// Holds one point in `every` against the surface.
    fn look(&self, ground: &Ground, every: usize) -> Look {
        let mut look = Look { worst: NOTHING, candidates: vec![NOTHING; ground.len()] };
        let mut at = 0;
        for index in (0..self.cloud.len()).step_by(every) {
            if self.is_kept[index] {
                continue;
            }
            // A point that no triangle is found under would be as far off as can be: it is taken in.
            let (face, height) = ground.under(self.cloud.at(index), at).unwrap_or((at, f64::INFINITY));
            at = face;
            let off = Off { error: (self.cloud.z[index] - height).abs(), index: index as u32 };
            if off.error > look.worst.error {
                look.worst = off;
            }
            let candidate = &mut look.candidates[face as usize];
            if off.error > candidate.error && !self.taken[index] {
                *candidate = off;
            }
        }
        look
    }

    /// Takes the worst in; tells how many.
    fn take_in(&mut self, look: Look, allowed: f64, room: usize) -> usize {
        let mut candidates = look.candidates;
        candidates.retain(|off| off.error > allowed);
        candidates.sort_unstable_by(|a, b| b.error.total_cmp(&a.error).then(a.index.cmp(&b.index)));
        let limit = room.min(AT_ONCE.max((GROWTH * self.kept.len() as f64) as usize));
        let before = self.kept.len();
        for off in &candidates {
            if self.kept.len() - before == limit {
                break;
            }
            if !self.taken[off.index as usize] {
                self.keep(off.index as usize);
            }
        }
        self.kept.len() - before
    }

    fn number(&self, off: Off) -> Option<usize> {
        self.cloud.numbers.get(off.index as usize).map(|&number| number as usize)
    }

    fn done(&self, worst: Off) -> Done {
        let mut kept: Vec<usize> =
            self.kept.iter().map(|&index| self.cloud.numbers[index as usize] as usize).collect();
        kept.sort_unstable();
        Done { kept, error: worst.error.max(0.0), worst: self.number(worst) }
    }

    /// The failure for a point that is off and cannot be taken in.
    fn unreachable(&self, asked: f64, worst: Off) -> Box<crate::failure::Failure> {
        let mut beside = None;
        if let Some(index) = (worst.index != u32::MAX).then_some(worst.index as usize) {
            self.cloud.at_place_of(index, |near| {
                if self.is_kept[near] {
                    beside = beside.or(Some(self.cloud.numbers[near] as usize));
                }
            });
        }
        refusal::unreachable(self.points, asked, worst.error, self.number(worst), beside)
    }
}
