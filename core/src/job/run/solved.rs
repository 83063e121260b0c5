//! What a finish that is solved for takes, what each demand costs, and the proof.

use super::finish::edges;
use crate::failure::Result;
use crate::grade::solve::{Demand, Kept, Measured, Price, Proof, Solved, Stage};
use crate::job::heights::{Heights, RodWords};
use crate::job::input::Job;
use crate::job::report::{
    CostReport, DemandReport, EdgeHeights, Measure, PriceReport, ProofReport, SolvedReport, StageReport,
};
use crate::job::say;
use crate::job::solve::Solution;
use crate::quantity::{Length, Money, Slope, Typed, Volume, VolumePrice};
use crate::survey::Survey;

/// A demand is told to be at its limit where it is nearer than can be told: 1/64 in, or a thousandth of a percent.
const NEAR: f64 = 0.0254 / 64.0;
const NEAR_FALL: f64 = 1.0e-5;

/// What amounts are told in.
struct Till<'a> {
    concrete: Option<VolumePrice>,
    currency: Option<&'a str>,
}

impl Job {
    pub(super) fn solved_report(
        &self,
        survey: &Survey,
        solution: &Solution,
        heights: Heights,
    ) -> Result<SolvedReport> {
        let Solved { bare, planned, built, rounding, .. } = &solution.solved;
        let till = Till { concrete: self.concrete_price()?, currency: self.currency() };
        let none = (Length::from_base(0.0), Slope::from_base(0.0));
        let steps = rounding.map_or(none, |rounding| (rounding.heights, rounding.falls));
        let asked = (self.finish.round().0, self.finish.round_fall().0);
        let finer = |made: f64, asked: f64| made < asked * (1.0 - 1e-9);
        Ok(SolvedReport {
            bare: till.stage(bare),
            planned: till.stage(planned),
            built: till.stage(built),
            margin_and_habits: till.cost(bare, planned),
            rounding: till.cost(planned, built),
            step_heights: say::fine_thickness(steps.0),
            step_falls: say::fall(steps.1),
            steps_best: rounding.is_none_or(|rounding| rounding.best),
            steps_finer: finer(steps.0.base(), asked.0.base()) || finer(steps.1.base(), asked.1.base()),
            habits: self.habits(&solution.solved.habits),
            habits_dropped: solution.solved.habits_dropped.clone(),
            planned_edges: planned_edges(survey, planned, heights),
            demands: solution.solved.demands.iter().map(|kept| till.demand(kept, &solution.kept)).collect(),
            proof: till.proof(&solution.solved.proof, self.grinding_price().is_some()),
        })
    }

    /// Habits that say more than the job does itself.
    fn habits(&self, habits: &[String]) -> Vec<String> {
        let level = self.finish.solve.iter().flat_map(|solve| &solve.level);
        let said: Vec<String> = level.map(|edge| format!("level along {edge}").to_lowercase()).collect();
        habits.iter().filter(|habit| !said.contains(&habit.to_lowercase())).cloned().collect()
    }

    /// What is printed behind amounts.
    pub(super) fn currency(&self) -> Option<&str> {
        self.prices.as_ref()?.currency.as_deref()
    }
}

fn planned_edges(survey: &Survey, planned: &Stage, heights: Heights) -> Vec<EdgeHeights> {
    edges(survey, &planned.finish, heights, RodWords::fine)
}

impl Till<'_> {
    fn stage(&self, stage: &Stage) -> StageReport {
        StageReport {
            concrete: say::body(stage.concrete),
            ground: say::water(stage.ground),
            money: stage.money.map(|money| say::money(money, self.currency)),
        }
    }

    fn cost(&self, from: &Stage, to: &Stage) -> CostReport {
        let money = from.money.zip(to.money).map(|(from, to)| to - from);
        CostReport {
            concrete: say::body(to.concrete - from.concrete),
            money: money.map(|money| say::money(money, self.currency)),
        }
    }

    fn demand(&self, kept: &Kept, demands: &[Demand]) -> DemandReport {
        let demand = demands.iter().find(|demand| demand.name == kept.name).filter(|_| !kept.habit);
        let amount = |amount: f64| amount_of(kept, amount);
        DemandReport {
            name: kept.name.clone(),
            habit: kept.habit,
            firm: demand.is_some_and(|demand| demand.firm),
            binds: kept.binds,
            at: kept.at.as_ref().map(say::place),
            slack: amount(kept.slack),
            slack_built: amount(kept.slack_built),
            step: amount(kept.measured.step()),
            tighter: self.price(kept, &kept.prices.tighter),
            looser: self.price(kept, &kept.prices.looser),
            text: self.said(kept, demand),
        }
    }

    fn said(&self, kept: &Kept, demand: Option<&Demand>) -> String {
        let near = match kept.measured {
            Measured::Length => NEAR,
            Measured::Slope => NEAR_FALL,
        };
        let no_room = kept.binds && kept.prices.looser.holds.is_some_and(|holds| holds < near);
        if no_room || !kept.binds && kept.slack < near {
            return "at its limit".to_owned();
        }
        kept.said(demand, self.concrete)
    }

    fn proof(&self, proof: &Proof, priced: bool) -> ProofReport {
        let bound = say::body(proof.bound);
        let least = match (priced, self.concrete) {
            (true, Some(price)) => {
                format!("costs less than {}", say::money(price * proof.bound, self.currency).text)
            }
            _ => format!("takes less than {}", bound.text),
        };
        let text = format!(
            "no finish that keeps these demands {least} ({} places and falls looked at, the worst of them kept)",
            proof.rows
        );
        ProofReport {
            least_slack: say::fine_thickness(proof.least_slack),
            rows: proof.rows,
            bound,
            gap: proof.gap(),
            text,
        }
    }

    fn price(&self, kept: &Kept, price: &Price) -> PriceReport {
        let money = |cost: Volume| Some(self.concrete? * cost);
        PriceReport {
            concrete: price.concrete.map(say::body),
            money: price.cost.and_then(money).map(|money: Money| say::money(money, self.currency)),
            holds: price.holds.map(|holds| amount_of(kept, holds)),
        }
    }
}

/// An amount in what the demand is counted in.
fn amount_of(kept: &Kept, amount: f64) -> Measure {
    let measure = match kept.measured {
        Measured::Length => say::fine_thickness(Length::from_base(amount)),
        Measured::Slope => say::fall(Slope::from_base(amount)),
    };
    Measure { text: kept.amount(amount), ..measure }
}
