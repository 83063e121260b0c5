//! Demands that cannot all be kept: every smallest set of them, and what would mend it.
//!
//! A set is irreducible when it contradicts itself and every part of it could be kept. All such sets come from asking, again and again,
//! for a choice that takes one demand from each way to make peace found so far (Reiter 1987): if it can be kept, what had to be
//! left out of the greatest set around it is another way to make peace; if not, it is irreducible.

use super::demand::{Demand, Heights, Wants};
use super::problem::{Problem, Solving, Unsolved};
use super::relax::Relaxing;
use super::rows::Block;
use crate::linear::Solver;
use crate::quantity::{Length, Slope, Typed};

/// At most so many sets are told.
pub const MOST_SETS: usize = 10;

/// So many questions are asked before the search ends.
const QUESTIONS: usize = 4_000;

/// All that contradicts.
#[derive(Clone, Debug, PartialEq)]
pub struct Conflicts {
    /// Irreducible sets, the smallest first, then in the caller's order.
    pub sets: Vec<ConflictSet>,
    /// Whether these are all there are.
    pub complete: bool,
    /// What mends everything by changing one demand alone, as far as there is such a demand.
    pub alone: Vec<Relaxed>,
    /// What mends everything with the least weighted sum of changes.
    pub together: Vec<Relaxed>,
}

/// Demands that contradict one another, while every part of them could be kept.
#[derive(Clone, Debug, PartialEq)]
pub struct ConflictSet {
    /// The demands, by their numbers in the caller's list.
    pub demands: Vec<usize>,
    /// The least change of each alone that mends this set; none where none does.
    pub by: Vec<Option<Relaxed>>,
}

/// A demand that gives way.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Relaxed {
    /// Which, by its number in the caller's list.
    pub demand: usize,
    /// By how much it must give way, in metres or as a slope.
    pub by: f64,
    /// For a height to be had exactly: whether it must come down.
    pub down: bool,
}

/// What a demand that gave way is loosened by beyond what it must, in metres or as a slope, so that rounding does not bring the
/// conflict back.
const HAIR: f64 = 1e-8;

impl Relaxed {
    /// The demand after it gave way. Heights that were to be had exactly become a limit on the side they are left to.
    #[must_use]
    pub fn given_way(&self, demand: &Demand) -> Demand {
        let (mut demand, by) = (demand.clone(), self.by + HAIR);
        let less = |figure: f64| (figure - by).max(0.0);
        match &mut demand.wants {
            Wants::LeastThickness { least, .. } => *least = Length::from_base(less(least.base())),
            Wants::GreatestThickness { most, .. } => *most += Length::from_base(by),
            Wants::Level { tolerance, .. } => *tolerance += Length::from_base(by),
            Wants::LeastFall { fall, .. } => *fall = Slope::from_base(less(fall.base())),
            Wants::GreatestFall { fall, .. }
            | Wants::Steepest { fall, .. }
            | Wants::CrossFall { fall, .. } => {
                *fall += Slope::from_base(by);
            }
            Wants::AtMost(heights) => heights.elevation = heights.elevation + Length::from_base(by),
            Wants::AtLeast(heights) => heights.elevation = heights.elevation - Length::from_base(by),
            Wants::Exactly(heights) if self.down => {
                let elevation = heights.elevation - Length::from_base(by);
                demand.wants = Wants::AtLeast(Heights { elevation, ..heights.clone() });
            }
            Wants::Exactly(heights) => {
                let elevation = heights.elevation + Length::from_base(by);
                demand.wants = Wants::AtMost(Heights { elevation, ..heights.clone() });
            }
        }
        demand
    }
}

impl Conflicts {
    /// The demands after those of the least weighted sum of changes gave way: with these there is an answer.
    #[must_use]
    pub fn nearest(&self, demands: &[Demand]) -> Vec<Demand> {
        let one = |(number, demand): (usize, &Demand)| {
            let relaxed = self.together.iter().find(|relaxed| relaxed.demand == number);
            relaxed.map_or_else(|| demand.clone(), |relaxed| relaxed.given_way(demand))
        };
        demands.iter().enumerate().map(one).collect()
    }
}

/// Finds them. The problem has no answer.
pub(super) fn of(problem: &mut Problem<'_, '_>, solver: &dyn Solver) -> Solving<Conflicts> {
    let mut search = Search::new(problem, solver);
    let (sets, complete) = search.all()?;
    let free = search.free.clone();
    let mut relaxing = Relaxing::over(problem, solver);
    let mut told = Vec::with_capacity(sets.len());
    for demands in sets {
        let by = demands.iter().map(|&demand| relaxing.alone(demand, &demands)).collect();
        told.push(ConflictSet { by, demands });
    }
    let alone = free.iter().filter_map(|&demand| relaxing.alone(demand, &free)).collect();
    let together = relaxing.together(&free);
    Ok(Conflicts { sets: told, complete, alone, together })
}

struct Search<'p, 'l, 'a, 's> {
    problem: &'p mut Problem<'l, 'a>,
    solver: &'s dyn Solver,
    /// The demands that may be blamed.
    free: Vec<usize>,
    questions: usize,
}

impl<'p, 'l, 'a, 's> Search<'p, 'l, 'a, 's> {
    fn new(problem: &'p mut Problem<'l, 'a>, solver: &'s dyn Solver) -> Self {
        let firm = |demand: &Demand| demand.firm;
        let numbers = |counts: &dyn Fn(&Demand) -> bool| -> Vec<usize> {
            let demands = problem.demands.iter().enumerate();
            demands.filter(|(_, demand)| counts(demand)).map(|(number, _)| number).collect()
        };
        let mut search = Self { free: numbers(&|demand| !firm(demand)), problem, solver, questions: 0 };
        // Where what stands firm contradicts itself, it is to blame too.
        if !matches!(search.keeps(&[]), Ok(true)) {
            search.free = (0..search.problem.demands.len()).collect();
            search.problem.blames_firm = true;
        }
        search
    }

    /// Whether some demands can be kept together with all that stands firm.
    fn keeps(&mut self, chosen: &[usize]) -> Solving<bool> {
        self.questions += 1;
        let free = self.free.clone();
        let counts = move |block: &Block| {
            block.demand.is_none_or(|demand| chosen.contains(&demand) || !free.contains(&demand))
        };
        match self.problem.keep(self.solver, &counts) {
            Ok(()) => Ok(true),
            Err(Unsolved::Conflict) => Ok(false),
            Err(failed) => Err(failed),
        }
    }

    /// The irreducible sets, and whether these are all.
    fn all(&mut self) -> Solving<(Vec<Vec<usize>>, bool)> {
        // Ways to make peace: each a set of demands without which the rest can be kept.
        let mut peace: Vec<Vec<usize>> = Vec::new();
        let mut sets: Vec<Vec<usize>> = Vec::new();
        while sets.len() < MOST_SETS && self.questions < QUESTIONS {
            let Some(choice) = next_choice(&peace, &sets) else { return Ok((ordered(sets), true)) };
            if !self.keeps(&choice)? {
                sets.push(choice);
                continue;
            }
            let mut kept = choice;
            for demand in self.free.clone() {
                if !kept.contains(&demand) {
                    kept.push(demand);
                    if !self.keeps(&kept)? {
                        kept.pop();
                    }
                }
            }
            peace.push(self.free.iter().copied().filter(|demand| !kept.contains(demand)).collect());
        }
        let complete = next_choice(&peace, &sets).is_none();
        Ok((ordered(sets), complete))
    }
}

/// The smallest choice of one demand at least from each way to make peace that holds no set found before; the first in order among
/// those.
fn next_choice(peace: &[Vec<usize>], sets: &[Vec<usize>]) -> Option<Vec<usize>> {
    let mut choices: Vec<Vec<usize>> = vec![Vec::new()];
    for way in peace {
        let (hit, missed): (Vec<_>, Vec<_>) =
            choices.into_iter().partition(|choice| choice.iter().any(|demand| way.contains(demand)));
        let mut next = hit;
        for choice in missed {
            for &demand in way {
                let mut wider = choice.clone();
                wider.push(demand);
                wider.sort_unstable();
                if !next.iter().any(|other| within(other, &wider)) {
                    next.retain(|other| !within(&wider, other));
                    next.push(wider);
                }
            }
        }
        choices = next;
    }
    choices.retain(|choice| !sets.iter().any(|set| within(set, choice)));
    choices.sort_by(|a, b| a.len().cmp(&b.len()).then_with(|| a.cmp(b)));
    choices.into_iter().next()
}

/// Whether one sorted list holds all of another.
fn within(part: &[usize], whole: &[usize]) -> bool {
    part.iter().all(|demand| whole.contains(demand))
}

fn ordered(mut sets: Vec<Vec<usize>>) -> Vec<Vec<usize>> {
    sets.iter_mut().for_each(|set| set.sort_unstable());
    sets.sort_by(|a, b| a.len().cmp(&b.len()).then_with(|| a.cmp(b)));
    sets
}
