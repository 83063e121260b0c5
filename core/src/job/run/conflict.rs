//! Demands that cannot all be kept: what contradicts, what mends it, and what the nearest finish breaks.

use crate::grade::solve::{Demand, Measured, Relaxed};
use crate::job::input::Job;
use crate::job::report::{ChangeReport, ConflictReport, ConflictSetReport, FitReport};
use crate::job::say;
use crate::job::solve::Solution;
use crate::quantity::{Length, Slope, Typed};

impl Solution {
    pub(super) fn conflict_report(&self) -> Option<ConflictReport> {
        let conflicts = self.conflicts.as_ref()?;
        let demands = self.asked_for();
        let changes = |list: &[Relaxed]| -> Vec<ChangeReport> {
            list.iter().filter_map(|relaxed| change(relaxed, &demands)).collect()
        };
        let set = |set: &crate::grade::solve::ConflictSet| ConflictSetReport {
            demands: set
                .demands
                .iter()
                .filter_map(|&number| Some(demands.get(number)?.name.clone()))
                .collect(),
            changes: changes(&set.by.iter().flatten().copied().collect::<Vec<_>>()),
            text: set.said(&demands),
        };
        Some(ConflictReport {
            sets: conflicts.sets.iter().map(set).collect(),
            complete: conflicts.complete,
            alone: changes(&conflicts.alone),
            nearest: changes(&conflicts.together),
        })
    }

    /// The demands that gave way, those left out that are judged as limits.
    pub(super) fn broken(&self, job: &Job) -> Vec<FitReport> {
        let Some(conflict) = self.conflict_report() else { return Vec::new() };
        let is_limit = |name: &str| job.limits.iter().any(|limit| limit.name == name);
        let gave_way = conflict.nearest.into_iter().filter(|change| !is_limit(&change.demand));
        let fit = |change: ChangeReport| FitReport {
            name: change.demand,
            called: "demand".to_owned(),
            bound: "demanded".to_owned(),
            below: None,
            text: change.text,
            kept: false,
        };
        gave_way.map(fit).collect()
    }

    fn asked_for(&self) -> Vec<Demand> {
        self.asked.iter().map(|listed| listed.demand.clone()).collect()
    }
}

fn change(relaxed: &Relaxed, demands: &[Demand]) -> Option<ChangeReport> {
    let demand = demands.get(relaxed.demand)?;
    let said = relaxed.said(demands)?;
    let text = said.strip_prefix(&format!("{}: ", demand.name)).unwrap_or(&said).to_owned();
    let by = match demand.wants.measured() {
        Measured::Length => say::fine_thickness(Length::from_base(relaxed.by)),
        Measured::Slope => say::fall(Slope::from_base(relaxed.by)),
    };
    Some(ChangeReport { demand: demand.name.clone(), by, text })
}
