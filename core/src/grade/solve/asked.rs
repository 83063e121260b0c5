//! What is asked of the solver.

use super::buildable::Steps;
use super::demand::{Demand, Wants};
use super::grinding::Grinding;
use super::rows::Writing;
use crate::failure::{Code, Failure, Result, check};
use crate::grade::finish::{Finish, LEAST, STEP};
use crate::quantity::{Length, Typed, VolumePrice};

/// What is asked: a layout, the demands, and what is to be least.
#[derive(Clone, Debug)]
pub struct Asked<'a> {
    /// The facets in plan: a finish whose heights do not count; one plane where there is none.
    pub layout: Option<&'a Finish>,
    /// The demands.
    pub demands: &'a [Demand],
    /// On every least thickness: reading, texture and strike-off.
    pub margin: Length,
    /// Whether thickness binds on ground beyond the shots too, which is extended, not measured.
    pub edges_bind: bool,
    /// The price of concrete; without it no money is told.
    pub concrete_price: Option<VolumePrice>,
    /// High spots that may be ground.
    pub grinding: Option<MayGrind>,
    /// What is rounded; none for the bare optimum alone.
    pub steps: Option<Steps>,
}

/// Leave to grind high spots down to where the least thickness over the whole work is left over them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MayGrind {
    /// How deep at most.
    pub at_most: Length,
    /// The price of a volume ground off; with the price of concrete the sum of both is least, else the concrete.
    pub price: Option<VolumePrice>,
}

/// A list of more demands than this cannot be searched for all that contradicts.
const MOST_DEMANDS: usize = 60;

impl Asked<'_> {
    /// Refuses what cannot be meant.
    pub(super) fn check(&self) -> Result<()> {
        check("margin", self.margin, LEAST)?;
        if let Some(steps) = &self.steps {
            check("round", steps.heights, STEP)?;
            check("round_fall", steps.falls, crate::grade::fall::FALL)?;
        }
        self.check_names()?;
        for (index, demand) in self.demands.iter().enumerate() {
            if !(demand.weight.is_finite() && demand.weight > 0.0) {
                return Err(Failure::new(Code::OutOfRange, format!("demands[{index}].weight"))
                    .written(format!("{}", demand.weight))
                    .allowed("more than 0")
                    .remedy("1 is usual; let a demand stand firm if it may not give way"));
            }
        }
        if let Some(grinding) = &self.grinding {
            check("grind_at_most", grinding.at_most, LEAST)?;
            if self.whole_least().is_none() {
                return Err(Failure::new(Code::KeyMissing, "demands")
                    .written("grinding, and no least thickness over the whole work")
                    .allowed("a least thickness that grinding restores")
                    .remedy("demand a least thickness over the whole work"));
            }
            if grinding.price.is_some() && self.concrete_price.is_none_or(|price| price.base() <= 0.0) {
                return Err(Failure::new(Code::KeyMissing, "concrete_price")
                    .written("a price of grinding and none of concrete")
                    .allowed("both prices, or neither")
                    .remedy("give the price of concrete"));
            }
        }
        Ok(())
    }

    fn check_names(&self) -> Result<()> {
        if self.demands.len() > MOST_DEMANDS {
            return Err(Failure::new(Code::OutOfRange, "demands")
                .written(format!("{} demands", self.demands.len()))
                .allowed(format!("up to {MOST_DEMANDS}"))
                .remedy("say what matters"));
        }
        for (index, demand) in self.demands.iter().enumerate() {
            let name = demand.name.trim();
            if name.is_empty() {
                return Err(Failure::new(Code::KeyMissing, format!("demands[{index}].name"))
                    .written("no name")
                    .allowed("a name")
                    .remedy("name the demand as the crew calls it"));
            }
            if self.demands[..index].iter().any(|other| other.name.trim().eq_ignore_ascii_case(name)) {
                return Err(Failure::new(Code::KeyRepeated, format!("demands[{index}].name"))
                    .written(format!("\"{}\"", demand.name))
                    .allowed("each name once")
                    .remedy("give it a name of its own"));
            }
        }
        Ok(())
    }

    /// The greatest of the least thicknesses over the whole work, with the margin.
    pub(super) fn whole_least(&self) -> Option<f64> {
        let whole = self.demands.iter().filter_map(|demand| match &demand.wants {
            Wants::LeastThickness { least, zone: None } => Some(least.base() + self.margin.base()),
            _ => None,
        });
        whole.reduce(f64::max)
    }

    /// For an answer, or for looking into what contradicts.
    pub(super) fn writing(&self, always_above: bool) -> Writing {
        Writing {
            always_above,
            margin: self.margin.base(),
            grind: self.grinding.map_or(0.0, |grinding| grinding.at_most.base()),
            beyond: self.edges_bind,
        }
    }

    pub(super) fn grinding(&self) -> Option<Grinding> {
        let price = |grinding: MayGrind| match (grinding.price, self.concrete_price) {
            (Some(ground), Some(concrete)) => ground.base() / concrete.base(),
            _ => 0.0,
        };
        Some(Grinding { least: self.whole_least()?, price: price(self.grinding?) })
    }
}
