//! Stations become lines.
//!
//! The shortest links are taken first. A station inside the slab has two, one at the outline or at the hull has one, and
//! so has one where the step fades out. Two stations whose sides are known are linked only along the step, not across it,
//! and with the higher side on the same hand.

use super::{Station, StepFlaw};
use crate::geometry::Point;
use crate::survey::surface::SurfaceError;
use crate::survey::surface::frame::Frame;

/// A link goes along a step where it is at least 30 degrees off the way across it: at most this cosine. At a corner of a
/// step the way across is 45 degrees off both its sides.
const ALONG: f64 = 0.87;

/// More stations than this are not looked through for links.
const MOST: usize = 1000;

/// A line of stations in order.
#[derive(Clone, Debug)]
pub(in crate::survey::surface) struct Path {
    /// The stations by their numbers.
    pub(super) stations: Vec<usize>,
    /// Whether the last is linked to the first.
    pub(super) closed: bool,
}

impl Path {
    /// The links from each station to the next.
    pub(super) fn links(&self) -> impl Iterator<Item = [usize; 2]> + '_ {
        let count = self.stations.len();
        let links = if self.closed { count } else { count - 1 };
        (0..links).map(move |index| [self.stations[index], self.stations[(index + 1) % count]])
    }

    /// The stations before and after the one at a place of the path.
    pub(super) fn around(&self, index: usize) -> [Option<usize>; 2] {
        let count = self.stations.len();
        let before = if index > 0 || self.closed { Some((index + count - 1) % count) } else { None };
        let after = if index + 1 < count || self.closed { Some((index + 1) % count) } else { None };
        [before, after].map(|at| at.map(|at| self.stations[at]))
    }
}

/// Joins stations to lines; `at_edge` tells which are at the outline or at the hull of the shots.
pub(in crate::survey::surface) fn paths(
    stations: &[Station],
    at_edge: &[bool],
    frame: &Frame,
) -> Result<Vec<Path>, SurfaceError> {
    let flaw = |station: usize, flaw: StepFlaw| told(stations, station, flaw);
    if stations.len() > MOST {
        return Err(flaw(0, StepFlaw::TooMany));
    }
    // One shot alone is where a step fades out inside the slab; at its edge the partner was more likely forgotten.
    if let Some(station) = (0..stations.len()).find(|&station| stations[station].alone && at_edge[station]) {
        return Err(flaw(station, StepFlaw::Unpaired));
    }
    let most = |station: usize| {
        let ends = at_edge[station] || stations[station].alone;
        if ends { 1 } else { 2 }
    };
    let mut links: Vec<Vec<usize>> = vec![Vec::new(); stations.len()];
    for [a, b] in by_length(stations, frame) {
        if links[a].len() < most(a) && links[b].len() < most(b) {
            links[a].push(b);
            links[b].push(a);
        }
    }
    for (station, of_station) in links.iter().enumerate() {
        let ends = at_edge[station] || stations[station].fades();
        if of_station.is_empty() {
            return Err(flaw(station, StepFlaw::Alone));
        }
        if of_station.len() == 1 && !ends {
            return Err(flaw(station, StepFlaw::EndsInside));
        }
    }
    let paths = followed(&links);
    let level = |path: &&Path| path.stations.iter().all(|&station| stations[station].fades());
    match paths.iter().find(level) {
        Some(path) => Err(flaw(path.stations[0], StepFlaw::Unpaired)),
        None => Ok(paths),
    }
}

/// All links that may be, the shortest first.
fn by_length(stations: &[Station], frame: &Frame) -> Vec<[usize; 2]> {
    let mut links = Vec::new();
    for a in 0..stations.len() {
        for b in a + 1..stations.len() {
            let (from, to) = (stations[a].at(), stations[b].at());
            let middle = Point::new(0.5 * (from.x + to.x), 0.5 * (from.y + to.y));
            let inside = frame.clearance(middle) >= -frame.hair;
            if inside && may_be_linked(&stations[a], &stations[b]) {
                links.push((from.distance(to), [a, b]));
            }
        }
    }
    links.sort_by(|a, b| a.0.total_cmp(&b.0));
    links.into_iter().map(|(_, link)| link).collect()
}

/// Whether the way between two stations goes along the step at both.
fn may_be_linked(a: &Station, b: &Station) -> bool {
    let (from, to) = (a.at(), b.at());
    let way = Point::new(to.x - from.x, to.y - from.y);
    let hand = |station: &Station| {
        station.across.map(|across| {
            let off = (way.x * across.x + way.y * across.y).abs();
            let along = off <= ALONG * way.x.hypot(way.y) * across.x.hypot(across.y);
            (along, way.x * across.y - way.y * across.x > 0.0)
        })
    };
    match (hand(a), hand(b)) {
        (Some((a_along, a_left)), Some((b_along, b_left))) => a_along && b_along && a_left == b_left,
        (Some((along, _)), None) | (None, Some((along, _))) => along,
        (None, None) => true,
    }
}

/// Follows links from end to end, then around what is closed.
fn followed(links: &[Vec<usize>]) -> Vec<Path> {
    let mut seen = vec![false; links.len()];
    let ends = (0..links.len()).filter(|&station| links[station].len() == 1);
    let mut paths = Vec::new();
    for start in ends.chain(0..links.len()) {
        if seen[start] {
            continue;
        }
        let mut stations = vec![start];
        seen[start] = true;
        let mut last = start;
        while let Some(&next) = links[last].iter().find(|&&next| !seen[next]) {
            seen[next] = true;
            stations.push(next);
            last = next;
        }
        let closed = stations.len() > 2 && links[last].len() == 2 && links[last].contains(&start);
        paths.push(Path { stations, closed });
    }
    paths
}

/// A flaw of a station: a shot whose partner is missing is the likelier cause of any.
fn told(stations: &[Station], station: usize, flaw: StepFlaw) -> SurfaceError {
    let alone = (0..stations.len()).find(|&station| stations[station].alone);
    let (station, flaw) = match alone {
        Some(alone) if !matches!(flaw, StepFlaw::TooMany | StepFlaw::Unpaired) => (alone, StepFlaw::Unpaired),
        _ => (station, flaw),
    };
    let at = stations[station].at();
    let shot = stations[station].low.shot as usize;
    let others = stations.iter().filter(|other| other.low.shot as usize != shot);
    let nearest = others.map(|other| (at.distance(other.at()), other.low.shot as usize));
    let nearest = nearest.reduce(|best, next| if next.0 < best.0 { next } else { best });
    let other = match flaw {
        StepFlaw::Unpaired => nearest.map_or(shot, |(_, other)| other),
        _ => stations[station].high.shot as usize,
    };
    SurfaceError::Step { shot, other, flaw }
}
