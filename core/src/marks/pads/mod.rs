//! Wet pads: small heaps of concrete struck to the height of the floor, which the screed rides on.

mod free;
mod grid;

use super::SAME;
use super::asked::PadsAsked;
use super::breaks::Segment;
use super::mark::MarkKind;
use super::words::RodDivision;
use crate::failure::Result;
use crate::geometry::{Point, Region};
use crate::grade::finish::Finish;
use crate::quantity::Typed;
use free::free;
use grid::{Grid, in_row};

/// A pad: where, and what for.
pub(super) type Pad = (Point, MarkKind);

/// The pads in the order of walking: row by row from the front, to and fro.
pub(super) fn pads(
    region: &Region,
    asked: &PadsAsked,
    division: RodDivision,
    finish: &Finish,
    lines: &[Segment],
) -> Result<Vec<Pad>> {
    let grid = Grid::over(region.bounds(), asked, division.taping_step())?;
    let inset = asked.inset.base();
    let mut pads: Vec<Pad> = corners(finish, region).map(|at| (at, MarkKind::FacetCorner)).collect();
    let on_lines = lines.iter().flat_map(|line| crossing(*line, &grid));
    // Nearer to an edge the mark there serves.
    let clear =
        |at: &Point| region.contains(*at) && region.nearest_run(*at).distance >= inset.max(SAME) - SAME;
    pads.extend(on_lines.filter(clear).map(|at| (at, MarkKind::FacetLine)));
    for &y in &grid.rows {
        let places = in_row(&free(region, y, inset), &grid.columns, grid.apart);
        pads.extend(places.into_iter().map(|x| (Point::new(x, y), MarkKind::Grid)));
    }
    Ok(in_order(pads, &grid.rows))
}

/// Corners of facets inside the work.
fn corners<'a>(finish: &'a Finish, region: &'a Region) -> impl Iterator<Item = Point> + 'a {
    let all = finish.facets().iter().flat_map(|facet| facet.region().outer().corners());
    all.copied().filter(|at| region.contains(*at) && region.nearest_run(*at).distance > SAME)
}

/// Where a line crosses rows and columns of the grid.
fn crossing([from, to]: Segment, grid: &Grid) -> Vec<Point> {
    let between = |value: f64, a: f64, b: f64| value > a.min(b) && value < a.max(b);
    let at = |share: f64| Point::new(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y));
    let rows = grid.rows.iter().filter(|y| between(**y, from.y, to.y));
    let columns = grid.columns.iter().filter(|x| between(**x, from.x, to.x));
    rows.map(|y| at((y - from.y) / (to.y - from.y)))
        .chain(columns.map(|x| at((x - from.x) / (to.x - from.x))))
        .collect()
}

/// Row by row, to and fro; pads at one place become one, of the weightier kind.
fn in_order(pads: Vec<Pad>, rows: &[f64]) -> Vec<Pad> {
    let mut by_row: Vec<Vec<Pad>> = rows.iter().map(|_| Vec::new()).collect();
    for pad in pads {
        let above = rows.partition_point(|y| *y < pad.0.y);
        let below = above.saturating_sub(1);
        let off = |row: usize| rows.get(row).map_or(f64::INFINITY, |y| (y - pad.0.y).abs());
        let row = if off(above) < off(below) { above } else { below };
        if let Some(list) = by_row.get_mut(row)
            && !list.iter().any(|known| known.0.distance(pad.0) <= SAME)
        {
            list.push(pad);
        }
    }
    for (row, list) in by_row.iter_mut().enumerate() {
        list.sort_by(|a, b| a.0.x.total_cmp(&b.0.x).then(a.0.y.total_cmp(&b.0.y)));
        if row % 2 == 1 {
            list.reverse();
        }
    }
    by_row.into_iter().flatten().collect()
}
