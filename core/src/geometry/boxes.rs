//! Which of many boxes overlap a given one.

use super::Point;

/// An upright box: least and greatest coordinates.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Extent {
    /// Least coordinates.
    pub(crate) low: Point,
    /// Greatest coordinates.
    pub(crate) high: Point,
}

impl Extent {
    /// The box around a place alone.
    #[inline]
    pub(crate) const fn at(place: Point) -> Self {
        Self { low: place, high: place }
    }

    /// The box around this one and a place.
    #[inline]
    pub(crate) fn with(self, place: Point) -> Self {
        Self {
            low: Point::new(self.low.x.min(place.x), self.low.y.min(place.y)),
            high: Point::new(self.high.x.max(place.x), self.high.y.max(place.y)),
        }
    }

    /// The box around places; around nothing it is empty.
    #[inline]
    pub(crate) fn around(places: impl IntoIterator<Item = Point>) -> Self {
        let empty = Self {
            low: Point::new(f64::INFINITY, f64::INFINITY),
            high: Point::new(f64::NEG_INFINITY, f64::NEG_INFINITY),
        };
        places.into_iter().fold(empty, Self::with)
    }

    /// The box wider by a margin on all sides.
    #[inline]
    pub(crate) fn widened(self, margin: f64) -> Self {
        Self {
            low: Point::new(self.low.x - margin, self.low.y - margin),
            high: Point::new(self.high.x + margin, self.high.y + margin),
        }
    }

    /// Whether two boxes have a place in common.
    #[inline]
    pub(crate) fn overlaps(&self, other: &Self) -> bool {
        self.low.x <= other.high.x
            && other.low.x <= self.high.x
            && self.low.y <= other.high.y
            && other.low.y <= self.high.y
    }
}

/// Boxes sorted into the cells of a grid; a few boxes are looked through one by one.
#[derive(Clone, Debug)]
pub(crate) struct Boxes {
    boxes: Vec<Extent>,
    grid: Option<Grid>,
}

#[derive(Clone, Debug)]
struct Grid {
    low: Point,
    /// Cells per unit of length.
    scale: Point,
    columns: usize,
    rows: usize,
    /// Where the boxes of each cell start in `members`, and where the last one's end.
    starts: Vec<u32>,
    members: Vec<u32>,
}

/// Up to so many boxes a grid costs more than it saves.
const FEW: usize = 12;

impl Boxes {
    /// Sorts boxes.
    pub(crate) fn new(boxes: Vec<Extent>) -> Self {
        let grid = (boxes.len() > FEW).then(|| Grid::of(&boxes));
        Self { boxes, grid }
    }

    /// Calls `visit` once with the number of every box that overlaps `extent`.
    #[inline]
    pub(crate) fn overlapping(&self, extent: &Extent, mut visit: impl FnMut(usize)) {
        if let Some(grid) = &self.grid {
            grid.overlapping(&self.boxes, extent, visit);
        } else {
            for (index, other) in self.boxes.iter().enumerate() {
                if other.overlaps(extent) {
                    visit(index);
                }
            }
        }
    }
}

impl Grid {
    fn of(boxes: &[Extent]) -> Self {
        let all = Extent::around(boxes.iter().flat_map(|b| [b.low, b.high]));
        let per_side = (boxes.len() as f64).sqrt().ceil() as usize;
        let cells_per = |size: f64| if size > 0.0 { per_side as f64 / size } else { 0.0 };
        let scale = Point::new(cells_per(all.high.x - all.low.x), cells_per(all.high.y - all.low.y));
        let mut grid = Self {
            low: all.low,
            scale,
            columns: per_side,
            rows: per_side,
            starts: vec![0; per_side * per_side + 1],
            members: Vec::new(),
        };
        grid.fill(boxes);
        grid
    }

    fn fill(&mut self, boxes: &[Extent]) {
        let mut counts = vec![0_u32; self.columns * self.rows + 1];
        for extent in boxes {
            self.cells(extent, |cell| counts[cell + 1] += 1);
        }
        for cell in 0..self.columns * self.rows {
            counts[cell + 1] += counts[cell];
        }
        self.starts.clone_from(&counts);
        self.members = vec![0; counts[self.columns * self.rows] as usize];
        for (index, extent) in (0_u32..).zip(boxes) {
            let members = &mut self.members;
            let counts = &mut counts;
            Self::cells_of(self.low, self.scale, self.columns, self.rows, extent, |cell| {
                members[counts[cell] as usize] = index;
                counts[cell] += 1;
            });
        }
    }

    fn cells(&self, extent: &Extent, visit: impl FnMut(usize)) {
        Self::cells_of(self.low, self.scale, self.columns, self.rows, extent, visit);
    }

    fn cells_of(
        low: Point,
        scale: Point,
        columns: usize,
        rows: usize,
        extent: &Extent,
        mut visit: impl FnMut(usize),
    ) {
        let column = |x: f64| cell_number((x - low.x) * scale.x, columns);
        let row = |y: f64| cell_number((y - low.y) * scale.y, rows);
        for r in row(extent.low.y)..=row(extent.high.y) {
            for c in column(extent.low.x)..=column(extent.high.x) {
                visit(r * columns + c);
            }
        }
    }

    fn overlapping(&self, boxes: &[Extent], extent: &Extent, mut visit: impl FnMut(usize)) {
        self.cells(extent, |cell| {
            let (from, to) = (self.starts[cell] as usize, self.starts[cell + 1] as usize);
            for &member in &self.members[from..to] {
                let other = &boxes[member as usize];
                if !other.overlaps(extent) {
                    continue;
                }
                // A box in several cells is told only in the one that holds the low corner of the overlap.
                let x = other.low.x.max(extent.low.x);
                let y = other.low.y.max(extent.low.y);
                let column = cell_number((x - self.low.x) * self.scale.x, self.columns);
                let row = cell_number((y - self.low.y) * self.scale.y, self.rows);
                if row * self.columns + column == cell {
                    visit(member as usize);
                }
            }
        });
    }
}

/// The cell of a coordinate in cells; places beyond the grid belong to its outermost cells.
#[inline]
fn cell_number(position: f64, cells: usize) -> usize {
    // A negative number or none becomes 0 in the cast.
    (position as usize).min(cells - 1)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::geometry::random::Random;

    #[test]
    fn every_overlapping_box_is_told_once() {
        let mut random = Random::new(12);
        for count in [0, 1, FEW, FEW + 1, 400] {
            let extents: Vec<Extent> = (0..count)
                .map(|_| Extent::at(random.point(10.0, 4.0)).widened([0.0, 0.1, 2.0][random.below(3)]))
                .collect();
            let boxes = Boxes::new(extents.clone());
            for _ in 0..200 {
                let extent = Extent::at(random.point(12.0, 5.0)).widened(random.between(0.0, 1.0));
                let mut told = Vec::new();
                boxes.overlapping(&extent, |index| told.push(index));
                told.sort_unstable();
                let expected: Vec<usize> =
                    (0..count).filter(|&index| extents[index].overlaps(&extent)).collect();
                assert_eq!(told, expected);
            }
        }
    }

    #[test]
    fn places_on_one_line_or_nowhere_are_no_harm() {
        let column: Vec<Extent> = (0..50).map(|i| Extent::at(Point::new(1.0, f64::from(i)))).collect();
        let boxes = Boxes::new(column);
        let mut told = 0;
        boxes.overlapping(&Extent::at(Point::new(1.0, 7.0)).widened(1.5), |_| told += 1);
        assert_eq!(told, 3);
        boxes.overlapping(&Extent::at(Point::new(f64::NAN, f64::NAN)), |_| told += 1);
        assert_eq!(told, 3);
    }
}
