//! Where a demand stands in the job, so that a refusal of the solver names the job's own key.

use super::Listed;
use crate::failure::Failure;

/// The keys of a job that a demand was made from.
#[derive(Clone, Debug, PartialEq)]
pub(in crate::job) struct Origin {
    path: String,
    /// Keys of the solver that stand elsewhere.
    keys: Vec<(&'static str, String)>,
}

impl Origin {
    /// All of it stands here.
    pub(in crate::job) fn at(path: impl Into<String>) -> Self {
        Self { path: path.into(), keys: Vec::new() }
    }

    /// One key of the solver stands there.
    pub(in crate::job) fn with(mut self, key: &'static str, path: impl Into<String>) -> Self {
        self.keys.push((key, path.into()));
        self
    }

    /// The path for a key of the solver.
    pub(super) fn of(&self, key: &str) -> &str {
        self.keys.iter().find(|(known, _)| *known == key).map_or(self.path.as_str(), |(_, path)| path)
    }
}

/// The paths of the solver in the words of the job.
pub(super) fn in_job(mut failure: Box<Failure>, demands: &[Listed]) -> Box<Failure> {
    failure.path = match failure.path.as_str() {
        "margin" | "round" => format!("finish.{}", failure.path),
        "round_fall" | "grind_at_most" => format!("finish.solve.{}", failure.path),
        "concrete_price" => "prices.concrete".to_owned(),
        path => of_demand(path, demands).unwrap_or_else(|| "finish.solve".to_owned()),
    };
    failure
}

/// `demands[3].edge` as the job's key.
fn of_demand(path: &str, demands: &[Listed]) -> Option<String> {
    let (index, rest) = path.strip_prefix("demands[")?.split_once(']')?;
    let origin = &demands.get(index.parse::<usize>().ok()?)?.origin;
    let key = rest.trim_start_matches('.').split(['.', '[']).next().unwrap_or_default();
    Some(origin.of(key).to_owned())
}
