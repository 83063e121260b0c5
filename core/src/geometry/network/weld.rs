//! Corners that stand at one place.

use super::{Corner, SAME};
use crate::geometry::Point;
use std::collections::HashMap;

/// Heights within this at one place are one, in metres: less than any step, more than cuts of one surface differ by.
pub(crate) const SAME_HEIGHT: f64 = 1e-5;

/// The distinct corners among corners `[x, y, height]`, and which of them each is.
pub(super) fn weld(corners: &[[f64; 3]]) -> (Vec<Corner>, Vec<u32>) {
    let mut places = Places::with_capacity(corners.len());
    let mut welded: Vec<Corner> = Vec::with_capacity(corners.len());
    // The first corner at every place, and for every corner the next at its place.
    let (mut first, mut next): (Vec<u32>, Vec<u32>) = (Vec::new(), Vec::new());
    let mut became = Vec::with_capacity(corners.len());
    for &[x, y, height] in corners {
        let place = places.find_or_add(Point::new(x, y));
        if place as usize == first.len() {
            first.push(NONE);
        }
        let mut number = first[place as usize];
        while number != NONE && (welded[number as usize].height - height).abs() > SAME_HEIGHT {
            number = next[number as usize];
        }
        if number == NONE {
            number = welded.len() as u32;
            welded.push(Corner { at: places.list[place as usize], height, place });
            next.push(std::mem::replace(&mut first[place as usize], number));
        }
        became.push(number);
    }
    (welded, became)
}

const NONE: u32 = u32::MAX;

/// Distinct places, found by cells a few times as large as what counts as one place.
struct Places {
    list: Vec<Point>,
    cells: HashMap<(i64, i64), Vec<u32>>,
}

impl Places {
    fn with_capacity(count: usize) -> Self {
        Self { list: Vec::with_capacity(count), cells: HashMap::with_capacity(count) }
    }

    fn find_or_add(&mut self, place: Point) -> u32 {
        let cell = |value: f64| (value / (4.0 * SAME)).floor() as i64;
        let (low, high) = ([place.x - SAME, place.y - SAME], [place.x + SAME, place.y + SAME]);
        let near = (cell(low[0])..=cell(high[0]))
            .flat_map(|i| (cell(low[1])..=cell(high[1])).map(move |j| (i, j)))
            .filter_map(|at| self.cells.get(&at))
            .flatten()
            .find(|&&known| self.list[known as usize].distance(place) <= SAME);
        if let Some(&known) = near {
            return known;
        }
        let number = self.list.len() as u32;
        self.list.push(place);
        self.cells.entry((cell(place.x), cell(place.y))).or_default().push(number);
        number
    }
}
