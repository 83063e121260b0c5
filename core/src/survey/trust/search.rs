//! The shots that do not go with their neighbours.
//!
//! The one farthest off, in deviations of its own prediction, is set aside first: a wrong shot makes its neighbours look wrong
//! too, but by the inequality of Cauchy and Schwarz no other by more deviations than itself (the idea of Baarda's data
//! snooping, 1968, from memory). Then its neighbours are predicted again without it, until none is left. At the end those set
//! aside are judged once more by what is left, and those that go with it come back.

use super::Floor;
use super::neighbours::Neighbours;
use super::plane::Trend;
use super::predictor::{Residual, Weights, trials};
use super::scale::{Scale, likeliest, waves};

/// So many times likelier must an inch booked wrong be than chance. Chosen by the books of the tests: fewer find more and
/// ask for more shots again in vain.
const ODDS: f64 = 5.0;

/// Nothing nearer to its prediction than so many deviations is looked at again.
const LEAST_DEVIATIONS: f64 = 2.0;

/// And everything farther from it than so many is, however rough the floor: one slip of a metre alone makes it look rough.
const MOST_DEVIATIONS: f64 = 4.0;

/// No more than this share of the shots is set aside: beyond it the book has no neighbours to trust.
const MOST_SHARE: f64 = 1.0 / 3.0;

/// How often the way the floor waves is found anew from what is left.
const ROUNDS: usize = 3;

/// What the search found.
pub(super) struct Found {
    /// The places set aside.
    pub(super) aside: Vec<usize>,
    /// What every place is off by, those set aside judged by the others.
    pub(super) residuals: Vec<Residual>,
    /// The roughness of the floor.
    pub(super) scale: Scale,
    /// The number of the way it waves.
    pub(super) waves: usize,
    /// Whether more was off than may be set aside.
    pub(super) gave_up: bool,
}

impl Found {
    /// The standard deviation of what a place is off by.
    pub(super) fn deviation(&self, place: usize) -> f64 {
        self.scale.own * self.residuals[place].variance.sqrt()
    }
}

/// How far off a place must be to be looked at again: where a slip by so much is likelier than chance by the odds.
pub(super) fn limit(deviation: f64, slip: f64) -> f64 {
    let likelier = 0.5 * slip + deviation * deviation * ODDS.ln() / slip;
    let most = slip.max(MOST_DEVIATIONS * deviation);
    likelier.min(most).max(LEAST_DEVIATIONS * deviation)
}

/// Searches a floor for places that are off by about `slip` or more; `words` is the deviation that the words of the site stand for.
pub(super) fn search(
    floor: &Floor,
    heights: &[f64],
    neighbours: &Neighbours,
    words: f64,
    slip: f64,
) -> Found {
    let mut taken = vec![true; heights.len()];
    let mut number = choose(floor, heights, neighbours, &taken, words).0;
    let mut tried = Vec::new();
    loop {
        let mut work = Work::new(floor, heights, neighbours, number, words, slip);
        work.set_aside();
        work.take_back();
        tried.push(number);
        taken.clone_from(&work.taken);
        let clean = !taken.contains(&false);
        let better = if clean { number } else { choose(floor, heights, neighbours, &taken, words).0 };
        if better == number || tried.len() == ROUNDS || tried.contains(&better) {
            return work.finish(number);
        }
        number = better;
    }
}

/// The way the floor waves that makes the heights likeliest.
pub(super) fn choose(
    floor: &Floor,
    heights: &[f64],
    neighbours: &Neighbours,
    taken: &[bool],
    words: f64,
) -> (usize, Scale) {
    let trend = Trend::new(floor, heights, taken);
    likeliest(&trials(floor, neighbours, &trend, taken), taken, words)
}

struct Work<'a> {
    floor: &'a Floor,
    heights: &'a [f64],
    neighbours: &'a Neighbours,
    words: f64,
    slip: f64,
    taken: Vec<bool>,
    weights: Weights,
    residuals: Vec<Residual>,
    scale: Scale,
    /// Whether more was off than may be set aside.
    gave_up: bool,
}

impl<'a> Work<'a> {
    fn new(
        floor: &'a Floor,
        heights: &'a [f64],
        neighbours: &'a Neighbours,
        number: usize,
        words: f64,
        slip: f64,
    ) -> Self {
        let taken = vec![true; heights.len()];
        let weights = Weights::new(floor, neighbours, &taken, waves(number));
        let scale = Scale { own: words, cost: 0.0 };
        let residuals = Vec::new();
        let mut work = Self {
            floor,
            heights,
            neighbours,
            words,
            slip,
            taken,
            weights,
            residuals,
            scale,
            gave_up: false,
        };
        work.judge();
        work
    }

    /// Judges every place by what is taken.
    fn judge(&mut self) {
        let trend = Trend::new(self.floor, self.heights, &self.taken);
        let (weights, neighbours) = (&self.weights, self.neighbours);
        let each = self.taken.iter().enumerate();
        self.residuals =
            each.map(|(place, &taken)| weights.residual(neighbours, &trend, place, taken)).collect();
        self.scale = Scale::of(&self.residuals, &self.taken, self.words);
    }

    /// How many deviations a place is off, and whether that is more than the limit.
    fn off(&self, place: usize) -> (f64, bool) {
        let Residual { off, variance } = self.residuals[place];
        let deviation = self.scale.own * variance.sqrt();
        (off.abs() / deviation, off.abs() > limit(deviation, self.slip))
    }

    /// Sets aside the farthest off, and at the same time others nearly as far off that are no neighbours of it.
    fn set_aside(&mut self) {
        let most = (MOST_SHARE * self.taken.len() as f64) as usize;
        let mut aside = 0;
        loop {
            let candidates = (0..self.taken.len()).filter(|&place| self.taken[place]);
            let mut off: Vec<(f64, usize)> = candidates
                .filter_map(|place| {
                    let (deviations, beyond) = self.off(place);
                    beyond.then_some((deviations, place))
                })
                .collect();
            off.sort_unstable_by(|a, b| b.0.total_cmp(&a.0).then(self.by_place(a.1, b.1)));
            let Some(&(farthest, _)) = off.first() else { return };
            let chosen = self.apart(off.into_iter().filter(|(deviations, _)| *deviations >= 0.5 * farthest));
            if aside + chosen.len() > most {
                self.gave_up = true;
                return;
            }
            aside += chosen.len();
            self.turn(&chosen);
        }
    }

    /// Takes back what goes with the others after all, the nearest to its prediction first.
    fn take_back(&mut self) {
        loop {
            let candidates = (0..self.taken.len()).filter(|&place| !self.taken[place]);
            let mut back: Vec<(f64, usize)> = candidates
                .filter_map(|place| {
                    let (deviations, beyond) = self.off(place);
                    (!beyond).then_some((deviations, place))
                })
                .collect();
            if back.is_empty() {
                return;
            }
            back.sort_unstable_by(|a, b| a.0.total_cmp(&b.0).then(self.by_place(a.1, b.1)));
            let chosen = self.apart(back.into_iter());
            self.turn(&chosen);
        }
    }

    fn by_place(&self, a: usize, b: usize) -> std::cmp::Ordering {
        let (a, b) = (self.floor.places[a], self.floor.places[b]);
        a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y))
    }

    /// Of places in order, those that are no neighbours of an earlier one.
    fn apart(&self, places: impl Iterator<Item = (f64, usize)>) -> Vec<usize> {
        let (mut blocked, mut is_chosen) = (vec![false; self.taken.len()], vec![false; self.taken.len()]);
        let mut chosen = Vec::new();
        for (_, place) in places {
            let near = self.neighbours.of_place(place);
            if blocked[place] || near.iter().any(|&n| is_chosen[n as usize]) {
                continue;
            }
            near.iter().for_each(|&n| blocked[n as usize] = true);
            is_chosen[place] = true;
            chosen.push(place);
        }
        chosen
    }

    /// Sets places aside that are taken, takes those that are aside, and judges all again.
    fn turn(&mut self, places: &[usize]) {
        places.iter().for_each(|&place| self.taken[place] = !self.taken[place]);
        let mut turned = vec![false; self.taken.len()];
        places.iter().for_each(|&place| turned[place] = true);
        for place in 0..self.taken.len() {
            if self.neighbours.of_place(place).iter().any(|&n| turned[n as usize]) {
                self.weights.renew(self.floor, self.neighbours, &self.taken, place);
            }
        }
        self.judge();
    }

    fn finish(self, waves: usize) -> Found {
        let aside = (0..self.taken.len()).filter(|&place| !self.taken[place]).collect();
        Found { aside, residuals: self.residuals, scale: self.scale, waves, gave_up: self.gave_up }
    }
}
