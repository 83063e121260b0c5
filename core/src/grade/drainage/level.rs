//! Water on level sides, at the foot of a level wall or along a level valley: it spreads to the nearest place from which it gets away.

use super::corner::Step;
use super::ending::End;
use super::ground::{FLAT, Ground, LEANS, Way};

/// Gives corners that have no way down a step along level sides, where that leads to one that has; then parts the water that
/// comes to level sides between their ends.
pub(super) fn spread(ground: &mut Ground, steps: &mut [Option<Step>]) {
    let sides = level_sides(ground);
    if sides.is_empty() {
        return;
    }
    let away = distances(ground, &sides, steps);
    for triangle in 0..ground.triangles.len() {
        for side in 0..3 {
            if let Some(share) = parted(ground, triangle, side, &away) {
                ground.ways[triangle][side] = Way::Parts(share);
            }
        }
    }
}

/// The level sides on which water can stand: those that it comes to.
fn level_sides(ground: &Ground) -> Vec<([u32; 2], f64)> {
    let mut found = Vec::new();
    for triangle in 0..ground.triangles.len() {
        for side in 0..3 {
            let [from, to] = ground.side(triangle, side);
            let length = ground.places[from as usize].distance(ground.places[to as usize]);
            if ground.leans[triangle][side] > LEANS && ground.fall_along(from, to).abs() <= FLAT {
                found.push(([from, to], length));
            }
        }
    }
    found
}

/// How far it is from each corner along level sides to one from which water gets away; corners without a step get one that way.
fn distances(ground: &Ground, sides: &[([u32; 2], f64)], steps: &mut [Option<Step>]) -> Vec<f64> {
    let gets_away = |corner: usize| steps[corner].is_some() || ground.takers[corner].is_some();
    let mut away: Vec<f64> =
        (0..steps.len()).map(|corner| if gets_away(corner) { 0.0 } else { f64::INFINITY }).collect();
    // As many rounds as a way can have sides.
    for _ in 0..sides.len() {
        let mut changed = false;
        for &([a, b], length) in sides {
            for (from, to) in [(a, b), (b, a)] {
                let over = away[to as usize] + length;
                if over < away[from as usize] {
                    away[from as usize] = over;
                    steps[from as usize] = Some(Step::Along(to));
                    changed = true;
                }
            }
        }
        if !changed {
            break;
        }
    }
    away
}

/// The share of a level side at which the ways to both its ends and on are as long; none where water stands, or does not stop.
fn parted(ground: &Ground, triangle: usize, side: usize, away: &[f64]) -> Option<f64> {
    let Way::Ends(ending) = ground.ways[triangle][side] else { return None };
    let stands = matches!(ground.endings[ending].end, End::Wall | End::Level);
    let [from, to] = ground.side(triangle, side);
    if !stands || ground.fall_along(from, to).abs() > FLAT || ground.beyond_is_level(triangle, side) {
        return None;
    }
    let length = ground.places[from as usize].distance(ground.places[to as usize]);
    match (away[from as usize], away[to as usize]) {
        (a, b) if a.is_finite() && b.is_finite() => Some((0.5 * (length + b - a) / length).clamp(0.0, 1.0)),
        (a, _) if a.is_finite() => Some(1.0),
        (_, b) if b.is_finite() => Some(0.0),
        _ => None,
    }
}
