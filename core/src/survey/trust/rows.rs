//! Whole rows booked wrong: off by one amount, from the wrong end, in each other's place.
//!
//! Within a row that is wrong as a whole the shots vouch for one another, and no single one stands out by much. So each such
//! mistake is undone on trial, and believed where the floor becomes far likelier.

use super::Floor;
use super::graduation::Graduation;
use super::neighbours::Neighbours;
use super::search::{Found, choose, search};
use super::slips::SlipKind;
use super::suspects::LEAST_SLIP;
use crate::quantity::Typed;
use crate::survey::Survey;
use crate::survey::old_slab::Shots;

/// The logarithm of the odds from which a mistake in a row is believed: a hundred and sixty thousand to one, for many are tried.
const BELIEVED: f64 = 12.0;

/// Rows of a floor with more shots than this are not tried: nobody shoots so many by hand.
const MOST_SHOTS: usize = 1_000;

/// A mistake in one or two rows, and the heights with it undone.
#[derive(Clone)]
pub(super) struct RowMistake {
    pub(super) kind: SlipKind,
    pub(super) heights: Vec<f64>,
    /// The rows by their number.
    pub(super) rows: Vec<usize>,
    /// By how much the row is off, where it is off by one amount.
    pub(super) amount: Option<SlipKind>,
}

/// The rows of a floor: the places of each, in order, with gaps.
struct Table {
    rows: Vec<Vec<Option<usize>>>,
}

impl Table {
    fn of(survey: &Survey, floor: &Floor) -> Option<Self> {
        let Shots::Grid(grid) = survey.shots() else { return None };
        let columns = grid.columns.len();
        if columns < 2 || floor.heights.len() > MOST_SHOTS {
            return None;
        }
        let mut rows = vec![vec![None; columns]; grid.rows.len()];
        for (place, shot) in floor.shots.iter().enumerate() {
            rows[shot / columns][shot % columns] = Some(place);
        }
        Some(Self { rows })
    }

    /// Every mistake that is tried.
    fn mistakes(&self, heights: &[f64], graduation: Graduation) -> Vec<RowMistake> {
        let mut all = Vec::new();
        for (number, row) in self.rows.iter().enumerate() {
            let places = || row.iter().flatten().copied();
            if places().count() < 2 {
                continue;
            }
            for (&slip, sign) in SlipKind::on(graduation).iter().flat_map(|slip| [(slip, 1.0), (slip, -1.0)])
            {
                let mut mended = heights.to_vec();
                let amount = sign * slip.amount().map_or(0.0, Typed::base);
                places().for_each(|place| mended[place] += amount);
                all.push(RowMistake {
                    kind: SlipKind::RowOff,
                    heights: mended,
                    rows: vec![number],
                    amount: Some(slip),
                });
            }
            let back: Vec<usize> = places().rev().collect();
            all.push(self.moved(heights, SlipKind::RowReversed, vec![number], places().zip(back)));
            for (other, with) in self.rows.iter().enumerate().skip(number + 1) {
                let pairs = row.iter().zip(with).filter_map(|(a, b)| Some(((*a)?, (*b)?)));
                let both = pairs.clone().chain(pairs.map(|(a, b)| (b, a)));
                all.push(self.moved(heights, SlipKind::RowsSwapped, vec![number, other], both));
            }
        }
        all
    }

    /// The heights with each place given that of another.
    fn moved(
        &self,
        heights: &[f64],
        kind: SlipKind,
        rows: Vec<usize>,
        pairs: impl Iterator<Item = (usize, usize)>,
    ) -> RowMistake {
        let mut mended = heights.to_vec();
        pairs.for_each(|(to, from)| mended[to] = heights[from]);
        RowMistake { kind, heights: mended, rows, amount: None }
    }
}

/// The mistake in whole rows that explains the heights best, with what is found once it is undone; where one does.
///
/// It must leave two suspects fewer than `first` has, or make a floor without suspects far likelier.
pub(super) fn row_mistake(
    survey: &Survey,
    floor: &Floor,
    neighbours: &Neighbours,
    words: f64,
    graduation: Graduation,
    first: &Found,
) -> Option<(RowMistake, Found)> {
    let table = Table::of(survey, floor)?;
    let taken = vec![true; floor.heights.len()];
    let cost = |heights: &[f64]| choose(floor, heights, neighbours, &taken, words).1.cost;
    let tried = table.mistakes(&floor.heights, graduation).into_iter();
    let tried = tried.map(|mistake| (cost(&mistake.heights), mistake));
    let (least, best) = tried.reduce(|best, next| if next.0 < best.0 { next } else { best })?;
    if least > cost(&floor.heights) - BELIEVED {
        return None;
    }
    let found = search(floor, &best.heights, neighbours, words, LEAST_SLIP.base());
    let (before, after) = (first.aside.len(), found.aside.len());
    let explains =
        if first.gave_up { !found.gave_up } else { after + 2 <= before || before == 0 && after == 0 };
    explains.then_some((best, found))
}
