//! A level book: what shifts every height, and what shifts none.

use super::random::Random;
use super::work::run;
use overslab::operation::{Column, Value};
use overslab::quantity::System;
use serde_json::{Value as Json, json};

/// A book of set-ups with sights, linked by turning points.
struct Book {
    benchmark: f64,
    /// Backsight, sights and foresight of each set-up.
    setups: Vec<(f64, Vec<f64>, f64)>,
}

impl Book {
    fn random(random: &mut Random) -> Self {
        let benchmark = random.between(20.0, 60.0);
        let setups = (0..1 + random.below(4)).map(|_| {
            let sights = (0..1 + random.below(6)).map(|_| random.between(0.8, 2.4)).collect();
            (random.between(0.8, 2.4), sights, random.between(0.8, 2.4))
        });
        Self { benchmark, setups: setups.collect() }
    }

    /// Elevations of all points, adjusted to a known end where there is one.
    fn reduced(&self, known_end: Option<f64>) -> Vec<f64> {
        let mut page: Vec<Json> = Vec::new();
        let last = self.setups.len() - 1;
        for (n, (backsight, sights, foresight)) in self.setups.iter().enumerate() {
            let mut turning = json!({ "point": format!("turn {n}"), "backsight": backsight });
            if n > 0 {
                turning["foresight"] = json!(self.setups[n - 1].2);
            }
            page.push(turning);
            page.extend(
                sights
                    .iter()
                    .enumerate()
                    .map(|(m, rod)| json!({ "point": format!("shot {n} {m}"), "sight": rod })),
            );
            if n == last {
                page.push(json!({ "point": "end", "foresight": foresight }));
            }
        }
        let mut benchmarks = vec![json!({ "name": "turn 0", "elevation": self.benchmark })];
        benchmarks.extend(known_end.map(|elevation| json!({ "name": "end", "elevation": elevation })));
        let args = json!({ "page": page, "benchmarks": benchmarks, "closure_tolerance": 100.0, "recheck_tolerance": 100.0 });
        let results = run("level_book", args, Vec::new(), System::Si);
        let Some(Value::Table(points)) = results.last() else { panic!("{results:?}") };
        let Some(Column::Numbers(elevations)) = points.columns.last() else { panic!("{points:?}") };
        elevations.clone()
    }
}

/// Sums of a dozen readings of a metre or two about heights of 100 m: their rounding is below this, in metres.
const ROUNDING: f64 = 1e-12;

fn books() -> impl Iterator<Item = (Book, Random)> {
    (1..300).map(|seed| {
        let mut random = Random::new(seed);
        (Book::random(&mut random), random)
    })
}

#[test]
fn a_benchmark_higher_by_so_much_lifts_every_point_by_as_much() {
    for (book, mut random) in books() {
        let by = random.between(-15.0, 40.0);
        let low = book.reduced(None);
        let lifted = Book { benchmark: book.benchmark + by, setups: book.setups.clone() }.reduced(None);
        assert_eq!(low.len(), lifted.len());
        for (low, lifted) in low.iter().zip(&lifted) {
            assert!((lifted - low - by).abs() <= ROUNDING, "{low} and {lifted}: {by}");
        }
        // With the end of the line known and lifted too, its closure is the same and so is what is shared out.
        let end = low.last().unwrap() + 0.012;
        let closed = book.reduced(Some(end));
        let lifted =
            Book { benchmark: book.benchmark + by, setups: book.setups.clone() }.reduced(Some(end + by));
        for (low, lifted) in closed.iter().zip(&lifted) {
            assert!((lifted - low - by).abs() <= ROUNDING, "closed: {low} and {lifted}: {by}");
        }
        assert!((closed.last().unwrap() - end).abs() <= ROUNDING, "the line ends on its benchmark");
    }
}

#[test]
fn a_higher_instrument_changes_no_height() {
    for (mut book, mut random) in books() {
        let low = book.reduced(None);
        for (backsight, sights, foresight) in &mut book.setups {
            let by = random.between(-0.5, 0.9);
            *backsight += by;
            sights.iter_mut().for_each(|rod| *rod += by);
            *foresight += by;
        }
        for (low, high) in low.iter().zip(book.reduced(None)) {
            assert!((high - low).abs() <= ROUNDING, "{low} and {high}");
        }
    }
}
