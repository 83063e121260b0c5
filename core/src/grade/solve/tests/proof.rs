//! The proof fails for a solver that answers a little off.

use super::support::*;
use crate::failure::Code;
use crate::grade::solve::solved::solve;
use crate::linear::{BasisRow, DualSimplex, Outcome, Program, Solver};

/// Answers with one unknown, or one weight, off by so much.
struct Off {
    unknown: Option<usize>,
    weight: Option<usize>,
    by: f64,
}

impl Solver for Off {
    fn solve(&self, program: &Program<'_>, start: Option<&[BasisRow]>) -> Outcome {
        let mut outcome = DualSimplex.solve(program, start);
        if let Outcome::Optimum(found) = &mut outcome {
            if let Some(unknown) = self.unknown {
                found.x[unknown] += self.by;
            }
            if let Some(weight) = self.weight {
                found.multipliers[weight] *= 1.0 + self.by;
            }
        }
        outcome
    }
}

#[test]
fn an_answer_off_by_a_millionth_is_refused() {
    for seed in 0..20 {
        let survey = rough(seed, 20.0, 16.0, 1.0);
        let demands = [least("least", 3.0), fall("fall", 0.125, "front")];
        let with = |solver: &dyn Solver| solve(&survey, &asked(&demands), solver);
        assert!(with(&Off { unknown: None, weight: None, by: 0.0 }).is_ok());
        for unknown in 0..3 {
            for by in [1e-6, -1e-6] {
                let failure = with(&Off { unknown: Some(unknown), weight: None, by }).unwrap_err();
                assert_eq!(failure.code, Code::ProofFailed, "seed {seed}, unknown {unknown}: {failure}");
            }
        }
        let off = with(&Off { unknown: None, weight: Some(0), by: 1e-6 });
        let unweighted = || with(&DualSimplex).unwrap().demands.iter().filter(|kept| kept.binds).count() < 2;
        assert!(off.is_err() || unweighted(), "seed {seed}: weights off by a millionth pass");
    }
}
