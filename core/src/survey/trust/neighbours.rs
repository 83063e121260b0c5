//! The nearest places of every place, found with a tree of halves.

use crate::geometry::Point;

/// How many nearest places predict one.
pub(super) const NEAREST: usize = 12;

/// The most that are taken where many are equally far.
pub(super) const MOST: usize = 24;

/// Places as far as the last one to this share are as near as it: a grid has four or eight at one distance, and rounding must
/// not choose between them.
const EQUALLY_FAR: f64 = 1e-7;

/// The neighbours of every place, one list after the other.
pub(super) struct Neighbours {
    starts: Vec<u32>,
    list: Vec<u32>,
}

impl Neighbours {
    /// The neighbours of these places, the nearest first.
    pub(super) fn of(places: &[Point]) -> Self {
        let mut order: Vec<u32> = (0..places.len() as u32).collect();
        halve(places, &mut order, true);
        let (mut starts, mut list) = (vec![0], Vec::with_capacity((NEAREST + 2) * places.len()));
        let mut near = Near { places, at: Point::default(), of: 0, found: Vec::new(), reach: 0.0 };
        for (number, place) in (0_u32..).zip(places) {
            (near.at, near.of, near.reach) = (*place, number, f64::INFINITY);
            near.found.clear();
            near.search(&order, true);
            list.extend(near.taken());
            starts.push(list.len() as u32);
        }
        Self { starts, list }
    }

    /// The neighbours of one place.
    pub(super) fn of_place(&self, place: usize) -> &[u32] {
        &self.list[self.starts[place] as usize..self.starts[place + 1] as usize]
    }

    /// Where the neighbours of one place stand in the list of all.
    pub(super) fn range(&self, place: usize) -> std::ops::Range<usize> {
        self.starts[place] as usize..self.starts[place + 1] as usize
    }

    /// How many there are in all.
    pub(super) fn len(&self) -> usize {
        self.list.len()
    }
}

/// Sorts places so that the middle one of each part halves it, by x and by y in turn.
fn halve(places: &[Point], order: &mut [u32], by_x: bool) {
    if order.len() < 2 {
        return;
    }
    let key = |number: &u32| {
        let place = places[*number as usize];
        if by_x { place.x } else { place.y }
    };
    let middle = order.len() / 2;
    order.select_nth_unstable_by(middle, |a, b| key(a).total_cmp(&key(b)));
    let (low, high) = order.split_at_mut(middle);
    halve(places, low, !by_x);
    halve(places, &mut high[1..], !by_x);
}

/// A search for what is near one place.
struct Near<'a> {
    places: &'a [Point],
    at: Point,
    of: u32,
    /// What was found, as squared distance and number.
    found: Vec<(f64, u32)>,
    /// Beyond this squared distance nothing counts.
    reach: f64,
}

impl Near<'_> {
    fn search(&mut self, order: &[u32], by_x: bool) {
        let middle = order.len() / 2;
        let Some(&number) = order.get(middle) else { return };
        let place = self.places[number as usize];
        self.meet(number, place);
        let off = if by_x { self.at.x - place.x } else { self.at.y - place.y };
        let (low, high) = (&order[..middle], &order[middle + 1..]);
        let (first, second) = if off < 0.0 { (low, high) } else { (high, low) };
        self.search(first, !by_x);
        if off * off <= self.reach {
            self.search(second, !by_x);
        }
    }

    fn meet(&mut self, number: u32, place: Point) {
        let distance = self.at.squared_distance(place);
        if number == self.of || distance > self.reach {
            return;
        }
        self.found.push((distance, number));
        if self.found.len() >= 4 * NEAREST || (self.reach.is_infinite() && self.found.len() >= NEAREST) {
            self.narrow();
        }
    }

    /// Sets the reach to the last that is near enough and forgets what lies beyond it.
    fn narrow(&mut self) {
        if self.found.len() < NEAREST {
            return;
        }
        let (_, last, _) = self.found.select_nth_unstable_by(NEAREST - 1, |a, b| a.0.total_cmp(&b.0));
        let reach = last.0 * (1.0 + EQUALLY_FAR).powi(2);
        if reach < self.reach {
            self.reach = reach;
        }
        let reach = self.reach;
        self.found.retain(|(distance, _)| *distance <= reach);
        if self.found.len() > 2 * MOST {
            self.sort();
            self.found.truncate(2 * MOST);
        }
    }

    /// By distance, then by place, so that the order in which the places were given says nothing.
    fn sort(&mut self) {
        let place = |number: u32| self.places[number as usize];
        self.found.sort_unstable_by(|a, b| {
            let (p, q) = (place(a.1), place(b.1));
            a.0.total_cmp(&b.0).then(p.x.total_cmp(&q.x)).then(p.y.total_cmp(&q.y))
        });
    }

    fn taken(&mut self) -> impl Iterator<Item = u32> + '_ {
        self.narrow();
        self.sort();
        self.found.iter().take(MOST).map(|(_, number)| *number)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::survey::varied::Varied;

    #[test]
    fn a_grid_gives_whole_rings() {
        let places: Vec<Point> = (0..7)
            .flat_map(|row| (0..7).map(move |column| Point::new(f64::from(column), f64::from(row))))
            .collect();
        let neighbours = Neighbours::of(&places);
        // The middle: four at 1, four at the root of 2, four at 2.
        assert_eq!(neighbours.of_place(24).len(), 12);
        // A corner: its twelfth is at 3 across, which its mirror image shares.
        let far = |place: usize, of: usize| places[place].squared_distance(places[of]);
        let last = neighbours.of_place(0).iter().map(|&n| far(n as usize, 0)).fold(0.0, f64::max);
        let within = (1..49).filter(|&n| far(n, 0) <= last).count();
        assert_eq!(neighbours.of_place(0).len(), within);
    }

    #[test]
    fn the_tree_finds_what_a_look_at_all_finds() {
        let mut varied = Varied::new(7);
        let places: Vec<Point> = (0..300)
            .map(|_| Point::new(varied.between(0.0, 9.0).powi(2), varied.between(0.0, 30.0)))
            .collect();
        let neighbours = Neighbours::of(&places);
        for (number, place) in places.iter().enumerate() {
            let mut all: Vec<u32> = (0..300).filter(|&other| other as usize != number).collect();
            all.sort_by(|&a, &b| {
                let far = |n: u32| places[n as usize].squared_distance(*place);
                far(a).total_cmp(&far(b))
            });
            assert_eq!(neighbours.of_place(number), &all[..NEAREST]);
        }
    }
}
