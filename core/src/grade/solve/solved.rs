//! The answer: bare, planned and built.

use super::asked::Asked;
use super::buildable::{self, Steps};
use super::conflicts::{self, Conflicts};
use super::demand::Demand;
use super::grinding::Volumes;
use super::kept::{self, Kept};
use super::lattice;
use super::layout::Layout;
use super::problem::{Found, Problem, Unsolved};
use super::proof::Proof;
use super::rows::Block;
use super::words;
use crate::failure::{Code, Failure, Result};
use crate::grade::finish::Finish;
use crate::linear::Solver;
use crate::quantity::{Length, Money, Slope, Typed, Volume};
use crate::survey::Survey;

/// A finish with its concrete.
#[derive(Clone, Debug, PartialEq)]
pub struct Stage {
    /// The finish.
    pub finish: Finish,
    /// The concrete: the volume between finish and old slab, what is ground off filled.
    pub concrete: Volume,
    /// What is ground off.
    pub ground: Volume,
    /// Concrete and grinding at their prices, where there is a price of concrete.
    pub money: Option<Money>,
}

/// How the finish was rounded.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rounding {
    /// The step of heights that could be kept: the one asked for, or a half, a quarter, an eighth of it; none at all where no
    /// step keeps the demands.
    pub heights: Length,
    /// The step of falls that could be kept.
    pub falls: Slope,
    /// Whether no finish in these steps takes less concrete.
    pub best: bool,
}

/// The finish of least concrete.
#[derive(Clone, Debug)]
pub struct Solved {
    /// By the caller's demands alone: no margin, no habits, nothing rounded.
    pub bare: Stage,
    /// With the margin, and as floors are set out. The prices and the proof are of this one.
    pub planned: Stage,
    /// In whole steps: the finish to be built. Where nothing is rounded it is the planned one.
    pub built: Stage,
    /// What was added so that it can be set out: `level along front`.
    pub habits: Vec<String>,
    /// Habits that the demands leave no room for.
    pub habits_dropped: Vec<String>,
    /// How it was rounded, where steps were asked for.
    pub rounding: Option<Rounding>,
    /// Each demand in the caller's order, then the habits: its slack, whether it binds and where, its price.
    pub demands: Vec<Kept>,
    /// The proof of the planned finish.
    pub proof: Proof,
}

/// Solves.
pub(super) fn solve(survey: &Survey, asked: &Asked<'_>, solver: &dyn Solver) -> Result<Solved> {
    asked.check()?;
    let layout = Layout::of(survey, asked.layout)?;
    let habits = if asked.steps.is_some() { buildable::habits(&layout, asked.demands) } else { Vec::new() };
    let own = asked.demands.len();
    let mut demands: Vec<Demand> = asked.demands.to_vec();
    demands.extend(habits);
    let mut problem = Problem::new(&layout, &demands, asked.writing(false), asked.grinding())?;
    let without = move |block: &Block| block.demand.is_none_or(|demand| demand < own);
    match problem.solve(solver, &|_| true, None) {
        Ok(planned) => finish(asked, problem, &planned, own, solver, Vec::new()),
        Err(Unsolved::Failed(failure)) => Err(failure),
        // What a crew would add gives way before anything that was demanded does.
        Err(Unsolved::Conflict) if demands.len() > own => {
            let mut bare = Problem::new(&layout, &demands[..own], asked.writing(false), asked.grinding())?;
            let dropped = demands[own..].iter().map(|habit| habit.name.clone()).collect();
            match bare.solve(solver, &without, None) {
                Ok(planned) => finish(asked, bare, &planned, own, solver, dropped),
                Err(unsolved) => Err(refused(survey, asked, unsolved, solver)),
            }
        }
        Err(unsolved) => Err(refused(survey, asked, unsolved, solver)),
    }
}

/// All that contradicts.
pub(super) fn conflicts(
    survey: &Survey,
    asked: &Asked<'_>,
    solver: &dyn Solver,
) -> Result<Option<Conflicts>> {
    asked.check()?;
    let layout = Layout::of(survey, asked.layout)?;
    let mut problem = Problem::new(&layout, asked.demands, asked.writing(true), None)?;
    match problem.keep(solver, &|_| true) {
        Ok(()) => Ok(None),
        Err(Unsolved::Failed(failure)) => Err(failure),
        Err(Unsolved::Conflict) => match conflicts::of(&mut problem, solver) {
            Ok(conflicts) => Ok(Some(conflicts)),
            Err(Unsolved::Failed(failure)) => Err(failure),
            Err(Unsolved::Conflict) => Ok(None),
        },
    }
}

fn refused(survey: &Survey, asked: &Asked<'_>, unsolved: Unsolved, solver: &dyn Solver) -> Box<Failure> {
    match unsolved {
        Unsolved::Failed(failure) => failure,
        Unsolved::Conflict => match conflicts(survey, asked, solver) {
            Ok(Some(conflicts)) => words::refusal(asked.demands, &conflicts),
            Ok(None) => Failure::new(Code::DemandsConflict, "demands"),
            Err(failure) => failure,
        },
    }
}

/// The three stages from the planned answer.
fn finish(
    asked: &Asked<'_>,
    mut problem: Problem<'_, '_>,
    planned: &Found,
    own: usize,
    solver: &dyn Solver,
    habits_dropped: Vec<String>,
) -> Result<Solved> {
    if planned.optimum.unbounded() {
        return Err(nothing_holds());
    }
    let finish = problem.layout.finish(&planned.optimum.x[..problem.layout.width()])?;
    let volumes = problem.volumes(&finish)?;
    let proof = Proof::of(&problem, planned, volumes)?;
    let mut demands = kept::all(&problem, planned, asked, solver);
    let planned_stage = stage(asked, finish, volumes);
    let (built, rounding) = built(asked, &mut problem, planned, solver)?;
    kept::measure_built(&mut demands, &problem, built.as_ref().unwrap_or(planned));
    let built_stage = match &built {
        Some(found) => {
            let finish = problem.layout.finish(&found.optimum.x[..problem.layout.width()])?;
            let volumes = problem.volumes(&finish)?;
            stage(asked, finish, volumes)
        }
        None => planned_stage.clone(),
    };
    let habits = problem.demands[own..].iter().map(|habit| habit.name.clone()).collect();
    let bare = bare(asked, problem, planned, own, solver)?;
    Ok(Solved {
        bare: bare.unwrap_or_else(|| planned_stage.clone()),
        planned: planned_stage,
        built: built_stage,
        habits,
        habits_dropped,
        rounding,
        demands,
        proof,
    })
}

/// Halves of the step asked for that are tried before rounding is given up.
const HALVINGS: i32 = 3;

/// The best finish in whole steps; in finer ones where none of those keeps the demands.
fn built(
    asked: &Asked<'_>,
    problem: &mut Problem<'_, '_>,
    planned: &Found,
    solver: &dyn Solver,
) -> Result<(Option<Found>, Option<Rounding>)> {
    let Some(steps) = asked.steps else { return Ok((None, None)) };
    for halving in 0..=HALVINGS {
        let by = 0.5_f64.powi(halving);
        let finer = Steps {
            heights: Length::from_base(by * steps.heights.base()),
            falls: Slope::from_base(by * steps.falls.base()),
            datum: steps.datum,
        };
        let forms = buildable::forms(problem, &finer)?;
        if forms.is_empty() {
            break;
        }
        match lattice::search(problem, solver, &forms, planned) {
            Ok(Some(stepped)) => {
                let rounding = Rounding { heights: finer.heights, falls: finer.falls, best: stepped.best };
                return Ok((Some(stepped.found), Some(rounding)));
            }
            Ok(None) => {}
            Err(Unsolved::Failed(failure)) => return Err(failure),
            Err(Unsolved::Conflict) => {}
        }
    }
    let none = Rounding { heights: Length::from_base(0.0), falls: Slope::from_base(0.0), best: true };
    Ok((None, Some(none)))
}

/// The answer to the caller's demands alone; none where it is the planned one.
fn bare(
    asked: &Asked<'_>,
    mut problem: Problem<'_, '_>,
    planned: &Found,
    own: usize,
    solver: &dyn Solver,
) -> Result<Option<Stage>> {
    if asked.margin.base() <= 0.0 && problem.demands.len() == own {
        return Ok(None);
    }
    problem.move_margin(-asked.margin.base());
    let without = move |block: &Block| block.demand.is_none_or(|demand| demand < own);
    let start = (problem.demands.len() == own).then_some(planned.optimum.basis.as_slice());
    match problem.solve(solver, &without, start) {
        Ok(found) => {
            let finish = problem.layout.finish(&found.optimum.x[..problem.layout.width()])?;
            let volumes = problem.volumes(&finish)?;
            Ok(Some(stage(asked, finish, volumes)))
        }
        Err(Unsolved::Failed(failure)) => Err(failure),
        // What keeps more demands keeps fewer too.
        Err(Unsolved::Conflict) => Ok(None),
    }
}

fn stage(asked: &Asked<'_>, finish: Finish, volumes: Volumes) -> Stage {
    let grinding = asked.grinding.and_then(|grinding| grinding.price);
    let concrete = asked.concrete_price.map(|price| price.base() * volumes.concrete);
    let money = concrete.map(|money| money + grinding.map_or(0.0, |price| price.base() * volumes.ground));
    Stage {
        finish,
        concrete: Volume::from_base(volumes.concrete),
        ground: Volume::from_base(volumes.ground),
        money: money.map(Money::from_base),
    }
}

pub(super) fn nothing_holds() -> Box<Failure> {
    Failure::new(Code::FinishUndetermined, "demands")
        .written("demands that leave the finish free")
        .allowed("demands that hold it on every side")
        .remedy("give a least thickness, and heights or falls where the shots do not reach")
}
