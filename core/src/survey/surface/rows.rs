//! The quick way: a full table of rows and columns needs no triangulation, for its cells are the polygons.

use super::build::fit;
use super::frame::Frame;
use super::hull::Hull;
use super::lines::along_runs;
use super::mesh::{Face, Mesh};
use super::places::check;
use super::polygons::mean_of;
use super::standing::Standing;
use super::tiling::{INSIDE, Node, SLAB};
use super::{Built, Rules, Shot, SurfaceError};
use crate::geometry::{Point, Region};
use std::cmp::Ordering;

/// A table of heights.
#[derive(Clone, Copy, Debug)]
pub(super) struct Table<'a> {
    pub(super) xs: &'a [f64],
    pub(super) ys: &'a [f64],
    pub(super) heights: &'a [Option<f64>],
    /// Whether rows (or columns) given twice are the two sides of a step.
    pub(super) stepped: bool,
}

/// Neighbouring columns (or rows) less than this share of the widest apart are left to the general way: only then can
/// cells side by side be on one circle.
const NARROWEST: f64 = 1e-3;

impl Table<'_> {
    /// Refuses a table with more or fewer heights than places.
    pub(super) fn check_size(&self) -> Result<(), SurfaceError> {
        let (rows, columns, heights) = (self.ys.len(), self.xs.len(), self.heights.len());
        if rows.checked_mul(columns) == Some(heights) {
            Ok(())
        } else {
            Err(SurfaceError::TableSize { rows, columns, heights })
        }
    }

    /// The shot at one place of the table, if it was taken.
    pub(super) fn shot(&self, number: usize) -> Option<Shot> {
        let z = (*self.heights.get(number)?)?;
        let (column, row) = (number % self.xs.len(), number / self.xs.len());
        let step = self.stepped && (is_double(self.xs, column) || is_double(self.ys, row));
        Some(Shot { step, ..Shot::new(self.xs[column], self.ys[row], z) })
    }

    /// The way from one shot to another, by their rows and columns.
    pub(super) fn way(&self, from: usize, to: usize) -> Option<Point> {
        let columns = self.xs.len();
        let along = |values: &[f64], from: usize, to: usize| {
            let rising = values.last() >= values.first();
            match from.cmp(&to) {
                Ordering::Equal => 0.0,
                order => {
                    if (order == Ordering::Less) == rising {
                        1.0
                    } else {
                        -1.0
                    }
                }
            }
        };
        let x = along(self.xs, from % columns, to % columns);
        let y = along(self.ys, from / columns, to / columns);
        (x != 0.0 || y != 0.0).then_some(Point::new(x, y))
    }

    /// The mesh, where the table is full and its cells are all that the general way would find; nothing otherwise.
    pub(super) fn mesh(
        &self,
        frame: &Frame,
        region: &Region,
        rules: &Rules,
    ) -> Result<Option<Built>, SurfaceError> {
        let (columns, rows) = (self.xs.len(), self.ys.len());
        if !self.is_plain(rules) {
            return Ok(None);
        }
        let (flip_x, flip_y) = (self.xs[0] > self.xs[1], self.ys[0] > self.ys[1]);
        let mut standing = Standing::new(frame, region, rules);
        let deep = self.is_deep_inside(frame, rules);
        let cells = (columns - 1) * (rows - 1);
        // Means of cells, and later the corners beyond the shots.
        let mut nodes = Vec::with_capacity(columns * rows + cells + 12 * (columns + rows) + 64);
        for row in 0..rows {
            let row = if flip_y { rows - 1 - row } else { row };
            for column in 0..columns {
                let column = if flip_x { columns - 1 - column } else { column };
                let index = row * columns + column;
                let Some(z) = self.heights[index] else { return Ok(None) };
                let shot = Shot::new(self.xs[column], self.ys[row], z);
                check(index, &shot)?;
                let place = frame.local(Point::new(shot.x, shot.y));
                let flags = if deep { INSIDE | SLAB } else { standing.of(index, &shot, place)? };
                nodes.push(Node { x: place.x, y: place.y, z, shot: index as u32, flags });
            }
        }
        if !lines_follow_cells(&nodes, columns, region, frame, rules) {
            return Ok(None);
        }
        let fitted = fit(&nodes, rules.on_run)?;
        let hull = border(&nodes, columns, rows);
        let (loops, faces) = cells_of(&mut nodes, columns, rows);
        let mesh = Mesh {
            places: columns * rows,
            loops,
            faces,
            hull,
            fitted,
            made: Vec::new(),
            given: None,
            offsets: Vec::new(),
        };
        Ok(Some((mesh, nodes, standing.into_notes())))
    }

    /// Whether rows and columns are in order, well apart, and of like width.
    fn is_plain(&self, rules: &Rules) -> bool {
        let (Some(x), Some(y)) = (steps(self.xs), steps(self.ys)) else { return false };
        let (least, greatest) = (x.0.min(y.0), x.1.max(y.1));
        least > rules.same_place + 1e-9
            && least > NARROWEST * greatest
            && greatest.is_finite()
            && rules.cocircular <= super::Rules::DEFAULT.cocircular
    }

    /// Whether the whole table lies inside a convex region and away from its runs.
    fn is_deep_inside(&self, frame: &Frame, rules: &Rules) -> bool {
        let (x, y) = ([self.xs[0], self.xs[self.xs.len() - 1]], [self.ys[0], self.ys[self.ys.len() - 1]]);
        frame.only().is_some()
            && [(0, 0), (0, 1), (1, 0), (1, 1)]
                .iter()
                .all(|&(i, j)| frame.clearance(frame.local(Point::new(x[i], y[j]))) > rules.on_run)
    }
}

/// Whether the value of a row (or column) is given twice.
fn is_double(values: &[f64], index: usize) -> bool {
    let same = |other: Option<usize>| other.and_then(|other| values.get(other)) == values.get(index);
    index.checked_sub(1).is_some_and(|before| same(Some(before))) || same(Some(index + 1))
}

/// The least and greatest distance between neighbours, if there are two and all go one way.
fn steps(values: &[f64]) -> Option<(f64, f64)> {
    let rising = *values.get(1)? > values[0];
    let mut range = (f64::INFINITY, 0.0_f64);
    for pair in values.windows(2) {
        let step = if rising { pair[1] - pair[0] } else { pair[0] - pair[1] };
        if step.is_nan() || step <= 0.0 {
            return None;
        }
        range = (range.0.min(step), range.1.max(step));
    }
    Some(range)
}

/// Whether every line between shots on a run is a side of a cell.
fn lines_follow_cells(nodes: &[Node], columns: usize, region: &Region, frame: &Frame, rules: &Rules) -> bool {
    along_runs(nodes, region, frame, rules.on_run).iter().all(|line| {
        let [a, b] = line.ends.map(|end| end as usize);
        let (low, high) = (a.min(b), a.max(b));
        high - low == columns || (high - low == 1 && low / columns == high / columns)
    })
}

/// The four sides of the table.
fn border(nodes: &[Node], columns: usize, rows: usize) -> Hull {
    let mut hull = Hull { chain: Vec::with_capacity(2 * (columns + rows)), sides: Vec::with_capacity(4) };
    let last = columns * rows - 1;
    let corners = [0, columns - 1, last, last + 1 - columns, 0];
    let steps: [isize; 4] = [1, columns as isize, -1, -(columns as isize)];
    for (ends, step) in corners.windows(2).zip(steps) {
        let from = hull.chain.len();
        let mut node = ends[0];
        while node != ends[1] {
            hull.chain.push(node as u32);
            node = node.wrapping_add_signed(step);
        }
        hull.close_side(nodes, from, ends[1] as u32);
    }
    hull.chain.push(0);
    hull
}

/// The cells, each with its mean.
fn cells_of(nodes: &mut Vec<Node>, columns: usize, rows: usize) -> (Vec<u32>, Vec<Face>) {
    let cells = (columns - 1) * (rows - 1);
    let (mut loops, mut faces) = (Vec::with_capacity(4 * cells), Vec::with_capacity(cells));
    for row in 0..rows - 1 {
        for column in 0..columns - 1 {
            let low = (row * columns + column) as u32;
            let high = low + columns as u32;
            let corners = [low, low + 1, high + 1, high];
            loops.extend(corners);
            faces.push(Face { end: loops.len() as u32, mean: nodes.len() as u32 });
            nodes.push(mean_of(nodes, &corners));
        }
    }
    (loops, faces)
}
