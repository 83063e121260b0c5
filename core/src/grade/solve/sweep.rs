//! The least concrete for a range of one demand.

use super::asked::Asked;
use super::demand::Measured;
use super::layout::Layout;
use super::problem::{Problem, Unsolved};
use crate::failure::{Code, Failure, Result, nearest};
use crate::linear::Solver;
use crate::quantity::{Typed, Volume};
use crate::survey::Survey;

/// A curve.
#[derive(Clone, Debug, PartialEq)]
pub struct Sweep {
    /// What the values are counted in.
    pub measured: Measured,
    /// The points, in the order of the values.
    pub points: Vec<SweepPoint>,
}

/// One point of a curve.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SweepPoint {
    /// The value of the demand, in metres or as a slope.
    pub value: f64,
    /// The least concrete, unrounded, with the margin; with grinding the cost in volume of concrete. None where the demands cannot be kept.
    pub concrete: Option<Volume>,
}

/// Most values of one sweep.
const MOST: usize = 10_000;

pub(super) fn sweep(
    survey: &Survey,
    asked: &Asked<'_>,
    demand: &str,
    values: &[f64],
    solver: &dyn Solver,
) -> Result<Sweep> {
    asked.check()?;
    if values.is_empty() || values.len() > MOST {
        return Err(Failure::new(Code::OutOfRange, "values")
            .written(format!("{} values", values.len()))
            .allowed(format!("1 to {MOST}"))
            .remedy("give the values to try"));
    }
    let number = named(asked, demand)?;
    let layout = Layout::of(survey, asked.layout)?;
    let mut problem = Problem::new(&layout, asked.demands, asked.writing(false), asked.grinding())?;
    let wants = &asked.demands[number].wants;
    let now = wants.figure();
    let mut points = Vec::with_capacity(values.len());
    let (mut moved, mut basis) = (0.0, None);
    for (index, &value) in values.iter().enumerate() {
        if !value.is_finite() || value < 0.0 && !wants.is_height() {
            return Err(Failure::new(Code::OutOfRange, format!("values[{index}]"))
                .written(format!("{value}"))
                .allowed("what the demand itself may be")
                .remedy("check the value and its unit"));
        }
        let tighter = wants.sense() * (value - now);
        problem.tighten(number, tighter - moved);
        moved = tighter;
        let concrete = match problem.solve(solver, &|_| true, basis.as_deref()) {
            Ok(found) if found.optimum.unbounded() => return Err(super::solved::nothing_holds()),
            Ok(found) => {
                basis = Some(found.optimum.basis);
                Some(Volume::from_base(found.value))
            }
            Err(Unsolved::Conflict) => None,
            Err(Unsolved::Failed(failure)) => return Err(failure),
        };
        points.push(SweepPoint { value, concrete });
    }
    Ok(Sweep { measured: wants.measured(), points })
}

fn named(asked: &Asked<'_>, name: &str) -> Result<usize> {
    let key = |name: &str| name.trim().to_lowercase();
    let found = asked.demands.iter().position(|demand| key(&demand.name) == key(name));
    found.ok_or_else(|| {
        let names = || asked.demands.iter().map(|demand| demand.name.as_str());
        Failure::new(Code::DemandUnknown, "demand")
            .written(format!("\"{}\"", name.trim()))
            .allowed(names().collect::<Vec<_>>().join(", "))
            .remedy(match nearest(name.trim(), names()) {
                Some(near) => format!("did you mean `{near}`?"),
                None => "name one of the demands".to_owned(),
            })
    })
}
