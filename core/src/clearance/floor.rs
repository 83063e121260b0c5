//! The old slab and the finish where a thing stands.

use super::level::Level;
use super::swing;
use crate::failure::{Code, Failure, Place, Result, check};
use crate::geometry::{Point, Region};
use crate::grade::finish::{Finish, Laid};
use crate::grade::sections::{Facet, PLACE, stretches};
use crate::quantity::{Elevation, Length, Typed, feet_and_inches};
use crate::survey::Survey;
use crate::survey::outline::Corner;
use crate::survey::surface::{Locator, Rules};

/// Both surfaces of a work, prepared for asking at a great many places.
pub(super) struct Floor<'a> {
    region: &'a Region,
    finish: &'a Finish,
    facets: Vec<Facet<'a>>,
}

/// Both surfaces at one place.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Station {
    distance: f64,
    old: f64,
    finish: f64,
}

/// The floor along the line of a thing, or at its place.
#[derive(Clone, Debug, PartialEq)]
pub struct Meets {
    places: Vec<Point>,
    stations: Vec<Station>,
    /// How far the place farthest outside the work was moved onto its edge.
    moved: f64,
    /// How much higher than on the line the finish gets under a leaf that swings in over it.
    rises_inward: f64,
}

impl<'a> Floor<'a> {
    pub(super) fn over(survey: &'a Survey, finish: &'a Finish, laid: &'a Laid<'_>) -> Self {
        let facets = laid.parts().iter();
        let facets = facets.map(|part| Facet { ground: Locator::new(&part.ground), finish: part.plane });
        Self { region: survey.surface().region(), finish, facets: facets.collect() }
    }

    /// The floor along a line of places; a place outside the work is met at the nearest edge.
    pub(super) fn meets(&self, line: &[Corner]) -> Result<Meets> {
        let mut meets = Meets { places: Vec::new(), stations: Vec::new(), moved: 0.0, rises_inward: 0.0 };
        for (index, corner) in line.iter().enumerate() {
            let (place, moved) = self.on_work(index, *corner)?;
            meets.moved = meets.moved.max(moved);
            meets.places.push(place);
        }
        let mut done = 0.0;
        for pair in meets.places.windows(2) {
            for stretch in stretches(&self.facets, pair[0], pair[1]) {
                let ends = [(stretch.from, 0), (stretch.to, 1)];
                let at = ends.map(|(along, end)| Station {
                    distance: done + along,
                    old: stretch.old[end],
                    finish: stretch.finish[end],
                });
                meets.stations.extend(at);
            }
            done += pair[0].distance(pair[1]);
        }
        // A line along a wall may touch no triangle but with its ends.
        if meets.stations.is_empty() {
            meets.stations = self.ends(&meets.places);
        }
        if meets.stations.is_empty() { Err(nowhere(line)) } else { Ok(meets) }
    }

    /// The same with the floor under leaves that are hung at the ends of the line and swing in.
    pub(super) fn meets_under_leaves(&self, line: &[Corner], leaves: swing::Leaves) -> Result<Meets> {
        let mut meets = self.meets(line)?;
        if let &[from, to] = meets.places.as_slice() {
            let highest = swing::highest(self.region, self.finish, [from, to], leaves);
            let on_line = meets.finish()[1].base();
            meets.rises_inward = highest.map_or(0.0, |highest| (highest - on_line).max(0.0));
        }
        Ok(meets)
    }

    fn on_work(&self, index: usize, corner: Corner) -> Result<(Point, f64)> {
        for (path, value) in [("x", corner.x), ("y", corner.y)] {
            check(path, value, PLACE).map_err(|failure| failure.at(Place::Index(index)))?;
        }
        let place = corner.place();
        if self.region.contains(place) {
            return Ok((place, 0.0));
        }
        let (nearest, farthest) = (self.region.nearest_run(place), Rules::DEFAULT.beyond_farthest);
        if nearest.distance <= farthest {
            return Ok((nearest.at, nearest.distance));
        }
        let say = |metres: f64| feet_and_inches(Length::from_base(metres), 8);
        Err(Failure::new(Code::ThingOffFloor, "x")
            .at(Place::Index(index))
            .written(format!("{} outside the work", say(nearest.distance)))
            .allowed(format!("a place on the floor, or up to {} outside", say(farthest)))
            .remedy("check the place: x from the left, y from the front"))
    }

    /// Both surfaces at one place, or at the ends of every leg.
    fn ends(&self, places: &[Point]) -> Vec<Station> {
        if let &[place] = places {
            return self.station(place, 0.0).into_iter().collect();
        }
        let (mut stations, mut done) = (Vec::new(), 0.0);
        for pair in places.windows(2) {
            let length = pair[0].distance(pair[1]);
            let ends = [self.station(pair[0], done), self.station(pair[1], done + length)];
            if let [Some(from), Some(to)] = ends {
                stations.extend([from, to]);
            }
            done += length;
        }
        stations
    }

    fn station(&self, place: Point, distance: f64) -> Option<Station> {
        let on = |facet: &Facet<'_>| {
            let old = facet.ground.at(place)?.height;
            Some(Station { distance, old, finish: facet.finish.height_at(place) })
        };
        self.facets.iter().find_map(on)
    }
}

fn nowhere(line: &[Corner]) -> Box<Failure> {
    let place = line.first().map_or_else(String::new, |corner| {
        format!("{}, {}", feet_and_inches(corner.x, 8), feet_and_inches(corner.y, 8))
    });
    Failure::new(Code::ThingOffFloor, "x")
        .written(place)
        .allowed("a place on the floor")
        .remedy("check the place: x from the left, y from the front")
}

impl Meets {
    /// The floor at one place, of known heights.
    #[must_use]
    pub fn at(old: Elevation, finish: Elevation) -> Self {
        let station = Station { distance: 0.0, old: old.base(), finish: finish.base() };
        Self { places: Vec::new(), stations: vec![station], moved: 0.0, rises_inward: 0.0 }
    }

    /// The floor along a straight line between two places of known heights, old slab and finish, so far apart.
    #[must_use]
    pub fn between(length: Length, from: [Elevation; 2], to: [Elevation; 2]) -> Self {
        let station = |distance: f64, [old, finish]: [Elevation; 2]| Station {
            distance,
            old: old.base(),
            finish: finish.base(),
        };
        let stations = vec![station(0.0, from), station(length.base(), to)];
        Self { places: Vec::new(), stations, moved: 0.0, rises_inward: 0.0 }
    }

    /// Its places on the work.
    #[must_use]
    pub fn places(&self) -> &[Point] {
        &self.places
    }

    /// How far outside the work the farthest place was, before the nearest edge was taken.
    #[must_use]
    pub fn moved(&self) -> Length {
        Length::from_base(self.moved)
    }

    /// How much higher than on its line the finish gets under leaves that swing in over it.
    #[must_use]
    pub fn rises_inward(&self) -> Length {
        Length::from_base(self.rises_inward)
    }

    fn extremes(&self, value: impl Fn(&Station) -> f64) -> [f64; 2] {
        self.stations
            .iter()
            .map(value)
            .fold([f64::INFINITY, f64::NEG_INFINITY], |[least, greatest], value| {
                [least.min(value), greatest.max(value)]
            })
    }

    /// The least and the greatest height of the finish.
    #[must_use]
    pub fn finish(&self) -> [Elevation; 2] {
        self.extremes(|station| station.finish).map(Elevation::from_base)
    }

    /// The least and the greatest rise: finish less old slab.
    #[must_use]
    pub fn rise(&self) -> [Length; 2] {
        self.extremes(|station| station.finish - station.old).map(Length::from_base)
    }

    /// The least and the greatest room between the finish and a level above it.
    #[must_use]
    pub fn under(&self, level: Level) -> [Length; 2] {
        self.extremes(|station| level.height(station.old) - station.finish).map(Length::from_base)
    }

    /// A height that is nowhere along the line above the level less so much.
    #[must_use]
    pub fn at_most(&self, level: Level, less: Length) -> Elevation {
        let [least, _] = self.extremes(|station| level.height(station.old));
        Elevation::from_base(least - less.base())
    }

    /// A height that is nowhere along the line below the old slab and so much.
    #[must_use]
    pub fn old_and(&self, more: Length) -> Elevation {
        let [_, greatest] = self.extremes(|station| station.old);
        Elevation::from_base(greatest + more.base())
    }

    /// Finish less heights that run straight between places along the line: their lengths, and the difference at both ends of each.
    pub(super) fn above(&self, ground: &[Elevation]) -> Vec<(f64, [f64; 2])> {
        let length = self.stations.last().map_or(0.0, |station| station.distance);
        let cuts = self.corners(ground.len(), length);
        let at = |station: &Station| station.finish - along(&cuts, ground, station.distance);
        let mut differences = Vec::new();
        for pair in self.stations.chunks_exact(2) {
            let (from, to) = (pair[0], pair[1]);
            let mut last = from;
            for &cut in cuts.iter().filter(|&&cut| cut > from.distance && cut < to.distance) {
                let share = (cut - from.distance) / (to.distance - from.distance);
                let middle = Station {
                    distance: cut,
                    old: from.old + share * (to.old - from.old),
                    finish: from.finish + share * (to.finish - from.finish),
                };
                differences.push((middle.distance - last.distance, [at(&last), at(&middle)]));
                last = middle;
            }
            differences.push((to.distance - last.distance, [at(&last), at(&to)]));
        }
        differences
    }

    /// How far along the line its places are.
    fn corners(&self, count: usize, length: f64) -> Vec<f64> {
        if self.places.len() != count {
            // Made of two known ends.
            return vec![0.0, length];
        }
        let mut done = vec![0.0];
        let mut sum = 0.0;
        for pair in self.places.windows(2) {
            sum += pair[0].distance(pair[1]);
            done.push(sum);
        }
        done
    }
}

/// The height at a distance along straight pieces between corners.
fn along(corners: &[f64], heights: &[Elevation], distance: f64) -> f64 {
    let mut found = heights.first().map_or(0.0, |height| height.base());
    for (pair, ends) in heights.windows(2).zip(corners.windows(2)) {
        if distance >= ends[0] && ends[1] > ends[0] {
            let share = ((distance - ends[0]) / (ends[1] - ends[0])).min(1.0);
            found = pair[0].base() + share * (pair[1].base() - pair[0].base());
        }
    }
    found
}
