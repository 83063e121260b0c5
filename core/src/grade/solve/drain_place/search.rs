//! Branch and bound over cells of places.

use super::Ended;
use super::allowed::{Allowed, Cell};
use super::exact::Work;
use crate::failure::Result;
use crate::geometry::Point;
use crate::quantity::Typed;
use std::cmp::Ordering;
use std::collections::BinaryHeap;

/// A place with its concrete.
#[derive(Clone, Copy, Debug)]
pub(super) struct Best {
    pub(super) at: Point,
    concrete: f64,
}

/// What a search came to.
pub(super) struct Found {
    /// The best place; none where no place keeps the demands.
    pub(super) best: Option<Best>,
    /// No place takes less.
    pub(super) bound: f64,
    pub(super) places: usize,
    pub(super) ended: Ended,
    /// The place tried first.
    pub(super) first: Point,
}

/// A cell with its bound, the lowest first; of equal ones the older.
struct Open {
    bound: f64,
    number: usize,
    cell: Cell,
}

impl Ord for Open {
    fn cmp(&self, other: &Self) -> Ordering {
        other.bound.total_cmp(&self.bound).then(other.number.cmp(&self.number))
    }
}

impl PartialOrd for Open {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl PartialEq for Open {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other).is_eq()
    }
}

impl Eq for Open {}

/// The search.
pub(super) struct Search<'s, 'a> {
    work: &'s Work<'a>,
    allowed: &'s Allowed<'a>,
    open: BinaryHeap<Open>,
    best: Option<Best>,
    places: usize,
    /// The lowest bound of the cells that are too small to be split.
    floor: f64,
}

impl<'s, 'a> Search<'s, 'a> {
    pub(super) fn new(work: &'s Work<'a>, allowed: &'s Allowed<'a>) -> Self {
        let open = BinaryHeap::new();
        Self { work, allowed, open, best: None, places: 0, floor: f64::INFINITY }
    }

    pub(super) fn run(mut self) -> Result<Found> {
        let whole = self.allowed.whole();
        let first = whole.as_ref().map(|cell| cell.place).unwrap_or_default();
        if let Some(cell) = whole {
            self.look_at(cell, f64::NEG_INFINITY)?;
        }
        while let Some(open) = self.open.pop() {
            // The cells left have no lower bound.
            if self.is_close(open.bound.min(self.floor)) || self.places >= self.work.asked.most_places {
                self.open.push(open);
                break;
            }
            match self.allowed.halves(&open.cell) {
                Some(halves) => {
                    for half in halves {
                        self.look_at(half, open.bound)?;
                    }
                }
                None => self.floor = self.floor.min(open.bound),
            }
        }
        let lowest = self.open.peek().map_or(f64::INFINITY, |open| open.bound);
        let least = self.best.map_or(f64::INFINITY, |best| best.concrete);
        let bound = lowest.min(self.floor).min(least);
        // Without a place and without a cell left there is none.
        let proved = self.is_close(bound) || bound == f64::INFINITY;
        let ended = if proved { Ended::Close } else { Ended::Cap };
        Ok(Found { best: self.best, bound, places: self.places, ended, first })
    }

    /// Solves at a place of the cell and keeps the cell, unless it has nothing better.
    fn look_at(&mut self, cell: Cell, of_whole: f64) -> Result<()> {
        let layout = self.work.layout(cell.place)?;
        let over = self.work.over(&layout)?;
        self.places += 1;
        if let Some(concrete) = over.solve(cell.place)?
            && self.best.is_none_or(|best| concrete < best.concrete)
        {
            self.best = Some(Best { at: cell.place, concrete });
        }
        // What holds for the whole cell holds for its half.
        let bound = over.bound(&cell, self.best.map_or(f64::INFINITY, |best| best.concrete))?.max(of_whole);
        if bound < f64::INFINITY {
            self.open.push(Open { bound, number: self.places, cell });
        }
        Ok(())
    }

    fn is_close(&self, bound: f64) -> bool {
        self.best
            .is_some_and(|best| best.concrete - bound <= self.work.asked.close.base() * best.concrete.abs())
    }
}
