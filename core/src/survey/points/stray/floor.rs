//! Which cells are floor, and what the floor is under those that are not.

use super::Limits;
use super::cells::Cells;
use crate::quantity::Typed;

/// The floor under each cell.
pub(super) fn under(cells: &Cells, limits: &Limits) -> Vec<f64> {
    let mut floors = cells.lowest.clone();
    let side = limits.cell.base();
    // A thing so wide lies over one cell more than its width at most, and over no more than there are.
    let widest = (limits.widest.base() / side).min(cells.columns.max(cells.rows) as f64);
    let last = widest as usize / 2 + 1;
    let mut half = 1;
    loop {
        let opened = open(&floors, cells.columns, half);
        let rise = limits.above.base() + limits.steepest.base() * side * (half as f64);
        for (floor, opened) in floors.iter_mut().zip(&opened) {
            if *floor > *opened + rise {
                *floor = f64::INFINITY;
            }
        }
        if half >= last {
            break;
        }
        half = (2 * half).min(last);
    }
    regain(&mut floors, cells, 0.5 * limits.above.base() + limits.steepest.base() * side);
    fill(&mut floors, cells.columns);
    floors
}

/// Takes cells back that go on from the floor beside them without a step: the strip between a pit and a wall is as
/// narrow as a thing on the floor, but it is joined to the rest.
fn regain(floors: &mut [f64], cells: &Cells, step: f64) {
    let mut pending: Vec<usize> = (0..floors.len()).filter(|&cell| floors[cell].is_finite()).collect();
    while let Some(cell) = pending.pop() {
        for other in around(cell, cells.columns, cells.rows) {
            let height = cells.lowest[other];
            if !floors[other].is_finite() && (height - floors[cell]).abs() <= step {
                floors[other] = height;
                pending.push(other);
            }
        }
    }
}

/// A cell and those around it.
fn around(cell: usize, columns: usize, rows: usize) -> impl Iterator<Item = usize> {
    let (row, column) = (cell / columns, cell % columns);
    let near = move |at: usize, count: usize| at.saturating_sub(1)..(at + 2).min(count);
    near(row, rows).flat_map(move |row| near(column, columns).map(move |column| row * columns + column))
}

/// What is left of heights after what is narrower than `2 half + 1` cells is cut off: the greatest of the least over a
/// square. Cells without a height count neither way.
fn open(heights: &[f64], columns: usize, half: usize) -> Vec<f64> {
    let least = slid(heights, columns, 1, half, f64::min);
    let mut least = slid(&least, columns, columns, half, f64::min);
    least.iter_mut().for_each(|height| {
        if *height == f64::INFINITY {
            *height = f64::NEG_INFINITY;
        }
    });
    let most = slid(&least, columns, 1, half, f64::max);
    slid(&most, columns, columns, half, f64::max)
}

/// The best of each value and those up to `half` before and after it, along rows (`step` 1) or columns (`step` the number
/// of columns), by the two running passes of van Herk (1992).
pub(super) fn slid(
    values: &[f64],
    columns: usize,
    step: usize,
    half: usize,
    better: fn(f64, f64) -> f64,
) -> Vec<f64> {
    let mut slid = values.to_vec();
    if columns == 0 {
        return slid;
    }
    let rows = values.len() / columns;
    let (lines, length) = if step == 1 { (rows, columns) } else { (columns, rows) };
    let window = 2 * half + 1;
    let (mut forth, mut back) = (vec![0.0; length], vec![0.0; length]);
    for line in 0..lines {
        let at = |index: usize| if step == 1 { line * columns + index } else { index * columns + line };
        for index in 0..length {
            let value = values[at(index)];
            forth[index] = if index % window == 0 { value } else { better(forth[index - 1], value) };
        }
        for index in (0..length).rev() {
            let value = values[at(index)];
            let ends = index + 1 == length || (index + 1) % window == 0;
            back[index] = if ends { value } else { better(value, back[index + 1]) };
        }
        for index in 0..length {
            let (from, to) = (index.saturating_sub(half), (index + half).min(length - 1));
            // The window lies over one run, whose start or end it then shares, or over the end of one and the start of
            // the next.
            slid[at(index)] = if from / window != to / window {
                better(back[from], forth[to])
            } else if from % window == 0 {
                forth[to]
            } else {
                back[from]
            };
        }
    }
    slid
}

/// Gives cells without a floor that of the cells next to them, ring by ring; the mean where several are.
fn fill(floors: &mut [f64], columns: usize) {
    if columns == 0 {
        return;
    }
    let rows = floors.len() / columns;
    let around = |cell: usize| around(cell, columns, rows);
    let next_to_floor = |floors: &[f64], cell: usize| {
        !floors[cell].is_finite() && around(cell).any(|other| floors[other].is_finite())
    };
    let mut ring: Vec<usize> = (0..floors.len()).filter(|&cell| next_to_floor(floors, cell)).collect();
    while !ring.is_empty() {
        let mean = |&cell: &usize| {
            let known = around(cell).map(|other| floors[other]).filter(|floor| floor.is_finite());
            let (sum, count) = known.fold((0.0, 0), |(sum, count), floor| (sum + floor, count + 1));
            sum / f64::from(count)
        };
        let means: Vec<f64> = ring.iter().map(mean).collect();
        for (&cell, mean) in ring.iter().zip(means) {
            floors[cell] = mean;
        }
        let mut next: Vec<usize> =
            ring.iter().flat_map(|&cell| around(cell)).filter(|&cell| !floors[cell].is_finite()).collect();
        next.sort_unstable();
        next.dedup();
        ring = next;
    }
}
