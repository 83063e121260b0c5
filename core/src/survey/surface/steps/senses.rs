//! Which side of each step line is the higher one.

use super::chain::Path;
use super::neighbours::Neighbours;
use super::{StepFlaw, Steps};
use crate::geometry::Point;
use crate::survey::surface::tiling::Node;
use crate::survey::surface::{Rules, SurfaceError};

/// An answer counts when the other would put the shots at least twice as far from their neighbours.
const CLEARLY: f64 = 2.0;

/// For each line whether its left is the higher side.
pub(super) fn of(
    steps: &Steps,
    neighbours: &Neighbours,
    nodes: &[Node],
    rules: &Rules,
) -> Result<Vec<bool>, SurfaceError> {
    steps.paths.iter().map(|path| of_path(steps, path, neighbours, nodes, rules)).collect()
}

fn of_path(
    steps: &Steps,
    path: &Path,
    neighbours: &Neighbours,
    nodes: &[Node],
    rules: &Rules,
) -> Result<bool, SurfaceError> {
    let given = path.stations.iter().enumerate().filter_map(|(index, _)| by_places(steps, path, index));
    if let Some(sense) = agreed(steps, given)? {
        return Ok(sense);
    }
    let high = path.stations.iter().copied().filter(|&station| !steps.stations[station].fades());
    let told = high
        .clone()
        .filter_map(|station| Some((station, by_neighbours(steps, station, neighbours, nodes, rules)?)));
    match agreed(steps, told)? {
        Some(sense) => Ok(sense),
        None => Err(flaw(steps, high.clone().next().unwrap_or(path.stations[0]), StepFlaw::Undecided)),
    }
}

/// The one answer of all stations; none where none has one.
fn agreed(steps: &Steps, answers: impl Iterator<Item = (usize, bool)>) -> Result<Option<bool>, SurfaceError> {
    let mut first = None;
    for (station, sense) in answers {
        if *first.get_or_insert(sense) != sense {
            return Err(flaw(steps, station, StepFlaw::Contradictory));
        }
    }
    Ok(first)
}

fn flaw(steps: &Steps, station: usize, flaw: StepFlaw) -> SurfaceError {
    let [shot, other] = [steps.stations[station].low, steps.stations[station].high].map(|n| n.shot as usize);
    SurfaceError::Step { shot, other, flaw }
}

/// What the places of the pair at a station of a path say.
fn by_places(steps: &Steps, path: &Path, index: usize) -> Option<(usize, bool)> {
    let station = path.stations[index];
    let across = steps.stations[station].across?;
    let [before, after] = path.around(index).map(|other| steps.stations[other.unwrap_or(station)].at());
    let way = Point::new(after.x - before.x, after.y - before.y);
    Some((station, way.x * across.y - way.y * across.x > 0.0))
}

/// What the neighbouring shots say of a station; nothing where they are in doubt.
fn by_neighbours(
    steps: &Steps,
    station: usize,
    neighbours: &Neighbours,
    nodes: &[Node],
    rules: &Rules,
) -> Option<bool> {
    let [left, right] = [true, false].map(|side| neighbours.mean(station, side, nodes));
    let (left, right) = (left?, right?);
    let (low, high) = (steps.stations[station].low.z, steps.stations[station].high.z);
    let left_high = (high - left).hypot(low - right);
    let right_high = (low - left).hypot(high - right);
    let clearly = |better: f64, worse: f64| worse >= CLEARLY * better + rules.reading_error;
    if clearly(left_high, right_high) {
        Some(true)
    } else if clearly(right_high, left_high) {
        Some(false)
    } else {
        None
    }
}
