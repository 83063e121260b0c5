//! A piece of work to measure: an outline, shots and a finish, in metres, handed to the table in one or the other system.

use super::random::Random;
use overslab::operation::{Value, call, decode};
use overslab::operations::find;
use overslab::quantity::System;
use serde_json::{Map, Value as Json, json};

/// A place in plan.
pub(super) type Place = [f64; 2];

/// The work.
#[derive(Clone, Debug)]
pub(super) struct Work {
    pub(super) corners: Vec<Place>,
    pub(super) holes: Vec<Vec<Place>>,
    /// x, y and height of each shot.
    pub(super) shots: Vec<[f64; 3]>,
    /// Three points of the finish.
    pub(super) finish: [[f64; 3]; 3],
}

/// What the thickness operation says of it, in metres.
#[derive(Clone, Debug)]
pub(super) struct Measured {
    pub(super) area: f64,
    pub(super) net: f64,
    pub(super) fill: f64,
    pub(super) high: f64,
    pub(super) mean: f64,
    pub(super) least: f64,
    pub(super) greatest: f64,
    pub(super) thinner: f64,
}

/// Shapes of outlines.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Shape {
    Convex,
    L,
    Holed,
}

/// Where shots lie.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Shots {
    Scattered,
    Grid,
}

/// Every kind of work, so many of each.
pub(super) fn works(each: u64) -> impl Iterator<Item = (String, Work)> {
    let kinds = [Shape::Convex, Shape::L, Shape::Holed]
        .into_iter()
        .flat_map(|shape| [Shots::Scattered, Shots::Grid].map(|shots| (shape, shots)));
    kinds.flat_map(move |(shape, shots)| {
        (1..=each).map(move |seed| {
            let mut random = Random::new(seed * 6 + shape as u64 * 2 + shots as u64);
            (format!("{shape:?}, {shots:?}, {seed}"), Work::random(&mut random, shape, shots))
        })
    })
}

impl Work {
    fn random(random: &mut Random, shape: Shape, shots: Shots) -> Self {
        let (w, d) = (random.between(5.0, 11.0), random.between(5.0, 11.0));
        let (u, v) = (w * random.between(0.4, 0.6), d * random.between(0.4, 0.6));
        let corners = match shape {
            Shape::Convex => {
                vec![[0.0, 0.0], [w, 0.1 * d], [0.95 * w, d], [0.3 * w, 1.1 * d], [-0.1 * w, 0.7 * d]]
            }
            Shape::L => vec![[0.0, 0.0], [w, 0.0], [w, v], [u, v], [u, d], [0.0, d]],
            Shape::Holed => vec![[0.0, 0.0], [w, 0.0], [w, d], [0.0, d]],
        };
        let holes = match shape {
            Shape::Holed => vec![vec![[u, v], [u + 0.8, v], [u + 0.8, v + 0.6], [u, v + 0.6]]],
            _ => Vec::new(),
        };
        let mut places = match shots {
            Shots::Scattered => scattered(random, &corners, 25),
            Shots::Grid => (0..30)
                .map(|n| [0.3 + f64::from(n % 5) * (w - 0.6) / 4.0, 0.3 + f64::from(n / 5) * (d - 0.6) / 5.0])
                .collect(),
        };
        places.retain(|&place| inside(&corners, place) && !holes.iter().any(|hole| inside(hole, place)));
        let shots = places
            .into_iter()
            .map(|[x, y]| [x, y, 30.0 + 0.01 * x - 0.006 * y + random.between(-0.02, 0.02)]);
        let shots: Vec<[f64; 3]> = shots.collect();
        let level = 30.0 + random.between(-0.01, 0.08);
        let finish = [
            [0.0, 0.0, level],
            [8.0, 0.0, level + random.between(-0.1, 0.1)],
            [0.0, 8.0, level + random.between(-0.1, 0.1)],
        ];
        Self { corners, holes, shots, finish }
    }

    /// The same work seen otherwise: every place moved, the heights kept.
    pub(super) fn seen(&self, map: impl Fn(Place) -> Place) -> Self {
        let ring = |ring: &Vec<Place>| ring.iter().map(|&place| map(place)).collect::<Vec<_>>();
        let point = |&[x, y, z]: &[f64; 3]| {
            let [x, y] = map([x, y]);
            [x, y, z]
        };
        Self {
            corners: ring(&self.corners),
            holes: self.holes.iter().map(ring).collect(),
            shots: self.shots.iter().map(point).collect(),
            finish: [point(&self.finish[0]), point(&self.finish[1]), point(&self.finish[2])],
        }
    }

    /// The finish raised.
    pub(super) fn raised(&self, by: f64) -> Self {
        Self { finish: self.finish.map(|[x, y, z]| [x, y, z + by]), ..self.clone() }
    }

    /// The thickness, and the area thinner than a depth.
    pub(super) fn measured(&self, system: System, depth: f64) -> Measured {
        self.within(system, depth, None)
    }

    /// The same within a zone.
    pub(super) fn within(&self, system: System, depth: f64, zone: Option<&[Place]>) -> Measured {
        let survey = self.survey(system);
        let mut records = vec![("survey", survey), ("finish", self.finished(system))];
        if let Some(zone) = zone {
            records.push(("zone", outline(zone, system)));
        }
        let scale = if system == System::Us { 12.0 } else { 1000.0 };
        let answer =
            run("thickness", json!({ "thinner_than": length(depth, system) * scale }), records, system);
        let number = |name: &str| {
            let place = find("thickness").unwrap().results.iter().position(|port| port.name == name);
            call::flat_number(&answer[place.unwrap_or_else(|| panic!("no {name}"))])
        };
        Measured {
            area: number("area"),
            net: number("net"),
            fill: number("fill"),
            high: number("high"),
            mean: number("mean"),
            least: number("least"),
            greatest: number("greatest"),
            thinner: number("thinner"),
        }
    }

    /// The finish.
    pub(super) fn finished(&self, system: System) -> Value {
        let points =
            columns(&["x", "y", "elevation"], self.finish.iter().map(|point| point.to_vec()), system);
        single("finish_from_points", json!({ "points": points }), Vec::new(), system)
    }

    /// The old slab.
    pub(super) fn survey(&self, system: System) -> Value {
        let outline = match self.holes.is_empty() {
            true => outline(&self.corners, system),
            // Holes come by the record's own form, whose quantities are texts.
            false => {
                let record = find("outline_from_corners").unwrap().makes().unwrap();
                let corners =
                    |ring: &Vec<Place>| ring.iter().map(|place| corner_text(place, system)).collect::<Json>();
                let hole = |hole: &Vec<Place>| json!({ "name": "pit", "corners": corners(hole) });
                let holes: Vec<Json> = self.holes.iter().map(hole).collect();
                Value::Record(
                    (record.from_json)(json!({ "corners": corners(&self.corners), "holes": holes })).unwrap(),
                )
            }
        };
        let shots = columns(&["x", "y", "elevation"], self.shots.iter().map(|shot| shot.to_vec()), system);
        let args = json!({ "shots": shots, "beyond_allowed": "yes" });
        single("survey_from_shots", args, vec![("outline", outline)], system)
    }
}

fn corner_text([x, y]: &Place, system: System) -> Json {
    let unit = if system == System::Us { "ft" } else { "m" };
    json!({ "x": format!("{} {unit}", length(*x, system)), "y": format!("{} {unit}", length(*y, system)) })
}

fn outline(corners: &[Place], system: System) -> Value {
    let corners = columns(&["x", "y"], corners.iter().map(|corner| corner.to_vec()), system);
    single("outline_from_corners", json!({ "corners": corners }), Vec::new(), system)
}

/// A length as a bare number of the system: feet or metres.
pub(super) fn length(metres: f64, system: System) -> f64 {
    if system == System::Us { metres / 0.3048 } else { metres }
}

pub(super) fn columns(names: &[&str], rows: impl Iterator<Item = Vec<f64>> + Clone, system: System) -> Json {
    let column = |place: usize| rows.clone().map(|row| length(row[place], system)).collect::<Vec<f64>>();
    names
        .iter()
        .enumerate()
        .map(|(place, name)| ((*name).to_owned(), json!(column(place))))
        .collect::<Map<_, _>>()
        .into()
}

fn single(name: &str, args: Json, records: Vec<(&str, Value)>, system: System) -> Value {
    run(name, args, records, system).remove(0)
}

/// Calls an operation with bare numbers in a system and records of earlier calls.
pub(super) fn run(name: &str, args: Json, records: Vec<(&str, Value)>, system: System) -> Vec<Value> {
    let operation = find(name).unwrap_or_else(|| panic!("no operation is called {name}"));
    let Json::Object(args) = args else { panic!("{args}") };
    let mut values =
        decode::decode(operation, &args, Some(system)).unwrap_or_else(|failure| panic!("{name}: {failure}"));
    for (port, record) in records {
        values[operation.port(port).unwrap()] = record;
    }
    call::invoke(operation, values).unwrap_or_else(|failure| panic!("{name}: {failure}")).results
}

/// Whether a place is inside a ring.
fn inside(ring: &[Place], [x, y]: Place) -> bool {
    let next = ring.iter().cycle().skip(1);
    let crossings = ring
        .iter()
        .zip(next)
        .filter(|([ax, ay], [bx, by])| (*ay > y) != (*by > y) && x < ax + (y - ay) / (by - ay) * (bx - ax));
    crossings.count() % 2 == 1
}

/// Places in the box of a ring, no two near to one another.
fn scattered(random: &mut Random, ring: &[Place], count: usize) -> Vec<Place> {
    let reach = |axis: usize| {
        let along = ring.iter().map(|place| place[axis]);
        (along.clone().fold(f64::INFINITY, f64::min), along.fold(f64::NEG_INFINITY, f64::max))
    };
    let (x, y) = (reach(0), reach(1));
    let mut places: Vec<Place> = Vec::new();
    while places.len() < count {
        let place = [random.between(x.0, x.1), random.between(y.0, y.1)];
        if places.iter().all(|other| (other[0] - place[0]).hypot(other[1] - place[1]) > 0.1) {
            places.push(place);
        }
    }
    places
}
