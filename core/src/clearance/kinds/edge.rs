//! A new outside edge: it stands up above the ground, or lies under the lawn.

use super::{inch, is_some};
use crate::basis::BasisId;
use crate::caution::Caution;
use crate::clearance::floor::Meets;
use crate::clearance::measure::Measure;
use crate::clearance::verdict::{About, Check, Judgement};
use crate::clearance::words::up;
use crate::clearance::work::{Task, Work};
use crate::geometry::Sum;
use crate::quantity::{Elevation, Length, Typed, Volume};

/// An edge of the floor over open ground.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct OpenEdge {
    /// The ground at every place of its line, straight between them.
    pub ground: Vec<Elevation>,
    /// Whether anybody walks over it.
    pub route: Option<bool>,
}

/// The highest step on a route, in inches.
const STEP: f64 = 0.5;
/// The greatest drop without a guard, in inches.
const DROP: f64 = 30.0;
/// The steepest and the flattest fill against an edge: run over rise.
const RUNS: [f64; 2] = [6.0, 12.0];

impl OpenEdge {
    pub(in crate::clearance) fn judged(&self, floor: &Meets) -> Judgement {
        if self.ground.is_empty() {
            return Judgement::of(vec![Check::ask(About::Edge, BasisId::Geometry, Measure::Ground)]);
        }
        let pieces = floor.above(&self.ground);
        let ends = || pieces.iter().flat_map(|(_, ends)| *ends);
        let lowest = Length::from_base(ends().fold(f64::INFINITY, f64::min));
        let highest = Length::from_base(ends().fold(f64::NEG_INFINITY, f64::max));
        let text = if is_some(-lowest) {
            format!("lies up to {} under the ground outside: water stays", up(-lowest))
        } else {
            format!("stands up to {} above the ground", up(highest))
        };
        let mut judgement = Judgement::of(vec![Check::limit(About::Edge, BasisId::Geometry, lowest, text)]);
        if is_some(-lowest) {
            judgement.force(Work::by(Task::CutLawn, -lowest));
        }
        self.step(highest, &mut judgement);
        guard(highest, &mut judgement);
        if is_some(highest) {
            let fill = RUNS.map(|run| fill(&pieces, run));
            judgement.force(Work { task: Task::Backfill, by: Some(highest), fill: Some(fill) });
        }
        judgement
    }

    fn step(&self, highest: Length, judgement: &mut Judgement) {
        let room = inch(STEP) - highest;
        match self.route {
            None if is_some(-room) => {
                let ask = Check::ask(About::Step, BasisId::AccessibleStep, Measure::Route);
                judgement.checks.push(ask.with_room(room));
            }
            Some(true) => {
                let text = format!("a step of {} on a route, 1/2 in at most", up(highest));
                judgement.checks.push(Check::limit(About::Step, BasisId::AccessibleStep, room, text));
                if is_some(-room) {
                    judgement.force(Work::by(Task::StepOrRamp, highest));
                }
            }
            _ => {}
        }
    }
}

fn guard(highest: Length, judgement: &mut Judgement) {
    let room = inch(DROP) - highest;
    if is_some(-room) {
        let text = format!("a drop of {}, 30 in at most without a guard", up(highest));
        judgement.checks.push(Check::limit(About::Guard, BasisId::GuardAtDrop, room, text));
        judgement.force(Work::by(Task::Guard, highest));
        judgement.caution(Caution::Guard);
    }
}

/// Fill in a wedge against an edge: half its height times its run, along where the edge stands up.
fn fill(pieces: &[(f64, [f64; 2])], run: f64) -> Volume {
    let wedge = |&(length, [from, to]): &(f64, [f64; 2])| {
        let (length, [from, to]) = raised(length, [from, to]);
        length * (from * from + from * to + to * to) / 3.0 * run / 2.0
    };
    Volume::from_base(pieces.iter().map(wedge).collect::<Sum>().value())
}

/// The part of a piece that stands up.
fn raised(length: f64, [from, to]: [f64; 2]) -> (f64, [f64; 2]) {
    match (from > 0.0, to > 0.0) {
        (true, true) => (length, [from, to]),
        (false, false) => (0.0, [0.0, 0.0]),
        (true, false) => (length * from / (from - to), [from, 0.0]),
        (false, true) => (length * to / (to - from), [0.0, to]),
    }
}
