//! Prices that have an effect.

use super::input::{Job, TearOutInput};
use crate::failure::{Code, Failure, Result};
use crate::quantity::Given;

impl Job {
    /// Refuses prices that nothing is told by.
    pub(super) fn no_idle_prices(&self) -> Result<()> {
        let Some(prices) = &self.prices else { return Ok(()) };
        fn written<Q>(given: &Option<Given<Q>>) -> Option<&str> {
            given.as_ref().map(|given| given.written.as_str())
        }
        let solve = self.finish.solve.as_ref();
        let grinds = solve.is_some_and(|solve| solve.grind_at_most.is_some());
        let thin = self.thin_zones.is_some();
        let concrete = solve.is_some() || thin || self.tear_out.is_some();
        let breaks = self.tear_out.as_ref().is_some_and(TearOutInput::has_price);
        let thin_only = "with thin_zones only: it prices what may be done about them";
        let any = prices.concrete.is_some()
            || prices.grinding.is_some()
            || prices.grinding_area.is_some()
            || prices.bonding.is_some()
            || prices.breaking_out.is_some()
            || breaks;
        let all = [
            ("concrete", written(&prices.concrete), concrete, "with finish.solve, thin_zones or tear_out"),
            ("grinding", written(&prices.grinding), grinds, "with finish.solve.grind_at_most only"),
            ("grinding_area", written(&prices.grinding_area), thin, thin_only),
            ("bonding", written(&prices.bonding), thin, thin_only),
            ("breaking_out", written(&prices.breaking_out), thin, thin_only),
            ("currency", prices.currency.as_deref(), any, "with a price"),
        ];
        let idle = all.into_iter().find(|(_, written, counts, _)| written.is_some() && !counts);
        idle.map_or(Ok(()), |(key, written, _, allowed)| {
            Err(Failure::new(Code::Contradiction, format!("prices.{key}"))
                .written(written.unwrap_or_default())
                .allowed(allowed)
                .remedy("remove it, or ask for what it prices"))
        })
    }
}
