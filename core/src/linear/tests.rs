//! The method against every corner of small programs, and against its own duality.

use super::dense::Dense;
use super::*;
use crate::geometry::random::Random;

fn program(seed: u64, width: usize, count: usize) -> (Vec<f64>, Rows) {
    let mut random = Random::new(seed);
    let mut draw = |low: f64, high: f64| random.between(low, high);
    let mut rows = Rows::new(width);
    // Rows about a place, so that most programs have answers; the cost a sum of rows, so that it is bounded.
    let middle: Vec<f64> = (0..width).map(|_| draw(-3.0, 3.0)).collect();
    let mut cost = vec![0.0; width];
    for number in 0..count {
        let row: Vec<f64> = (0..width).map(|_| draw(-1.0, 1.0)).collect();
        rows.push(&row, dense::dot(&row, &middle) - draw(0.0, 1.0));
        if number <= width {
            let weight = draw(0.1, 1.0);
            cost.iter_mut().zip(&row).for_each(|(cost, entry)| *cost += weight * entry);
        }
    }
    (cost, rows)
}

/// The least cost over all corners where as many rows as unknowns meet.
fn over_corners(cost: &[f64], rows: &Rows) -> f64 {
    let (width, count) = (rows.width(), rows.len());
    let mut chosen: Vec<usize> = (0..width).collect();
    let mut least = f64::INFINITY;
    loop {
        let mut square = Dense::unit(width);
        for (place, &row) in chosen.iter().enumerate() {
            square.row_mut(place).copy_from_slice(rows.row(row));
        }
        if let Some(inverse) = square.inverse() {
            let bounds: Vec<f64> = chosen.iter().map(|&row| rows.bound(row)).collect();
            let x = inverse.times(&bounds);
            if (0..count).all(|row| rows.slack(row, &x) >= -1e-8) {
                least = least.min(dense::dot(cost, &x));
            }
        }
        let Some(place) = (0..width).rev().find(|&place| chosen[place] < count - width + place) else {
            return least;
        };
        chosen[place] += 1;
        for later in place + 1..width {
            chosen[later] = chosen[later - 1] + 1;
        }
    }
}

fn solved(cost: &[f64], rows: &Rows) -> Outcome {
    let blocks = rows.all();
    DualSimplex.solve(&Program { cost, rows, blocks: &blocks }, None)
}

#[test]
fn finds_the_best_corner_and_weights_that_prove_it() {
    for seed in 0..300 {
        let width = 2 + seed as usize % 4;
        let (cost, rows) = program(seed, width, width + 3 + seed as usize % 5);
        let Outcome::Optimum(found) = solved(&cost, &rows) else { panic!("seed {seed}: no answer") };
        assert!(!found.unbounded(), "seed {seed}");
        let value = found.value(&cost);
        let least = over_corners(&cost, &rows);
        assert!((value - least).abs() <= 1e-9 * least.abs().max(1.0), "seed {seed}: {value} {least}");
        assert!((0..rows.len()).all(|row| rows.slack(row, &found.x) >= -1e-9), "seed {seed}");
        let dual: f64 = found.weights().map(|(row, weight)| weight * rows.bound(row)).sum();
        assert!((value - dual).abs() <= 1e-9 * value.abs().max(1.0), "seed {seed}: {value} {dual}");
    }
}

#[test]
fn rows_without_answer_come_with_weights_that_contradict() {
    let mut conflicts = 0;
    for seed in 0..200 {
        let (cost, mut rows) = program(seed, 3, 9);
        // A row and its own opposite, a little apart.
        let opposite: Vec<f64> = rows.row(4).iter().map(|entry| -entry).collect();
        rows.push(&opposite, 1e-4 - rows.bound(4));
        match solved(&cost, &rows) {
            Outcome::Conflict(conflict) => {
                conflicts += 1;
                let mut sum = [0.0; 3];
                let mut by = 0.0;
                for &(row, weight) in &conflict.weights {
                    assert!(weight > 0.0);
                    sum.iter_mut().zip(rows.row(row)).for_each(|(sum, entry)| *sum += weight * entry);
                    by += weight * rows.bound(row);
                }
                assert!(sum.iter().all(|entry| entry.abs() < 1e-9), "seed {seed}: {sum:?}");
                assert!(by > 1e-7, "seed {seed}: {by}");
            }
            other => panic!("seed {seed}: {other:?}"),
        }
    }
    assert_eq!(conflicts, 200);
}

#[test]
fn many_rows_through_one_corner_are_no_trouble() {
    // A level floor: every shot binds.
    let mut rows = Rows::new(3);
    for x in -5..=5 {
        for y in -5..=5 {
            rows.push(&[1.0, f64::from(x) / 5.0, f64::from(y) / 5.0], 0.0);
        }
    }
    let cost = [1.0, 0.0, 0.0];
    let Outcome::Optimum(found) = solved(&cost, &rows) else { panic!("no answer") };
    assert!(found.value(&cost).abs() < 1e-12);
}

#[test]
fn an_unknown_that_nothing_holds_is_said() {
    let mut rows = Rows::new(2);
    rows.push(&[1.0, 0.0], 1.0);
    let Outcome::Optimum(found) = solved(&[1.0, 1.0], &rows) else { panic!("no answer") };
    assert!(found.unbounded());
}

#[test]
fn the_slope_along_a_ray_is_that_of_solving_again() {
    for seed in 0..200 {
        let width = 2 + seed as usize % 3;
        let (cost, mut rows) = program(seed, width, width + 6);
        let Outcome::Optimum(found) = solved(&cost, &rows) else { panic!("seed {seed}") };
        let value = found.value(&cost);
        let blocks = rows.all();
        for sign in [1.0, -1.0] {
            let rises = [1.0, 0.5];
            let pieces = vec![
                Piece { rows: 0..1, rise: Rise::Same(0.0) },
                Piece { rows: 1..3, rise: Rise::Each(sign, &rises) },
                Piece { rows: 3..rows.len(), rise: Rise::Same(0.0) },
            ];
            let ray = Ray { pieces, near: None, farthest: f64::INFINITY };
            let walk = ray.walk(&Program { cost: &cost, rows: &rows, blocks: &blocks }, &found);
            let mut again = |by: f64| {
                let kept = [rows.bound(1), rows.bound(2)];
                rows.set_bound(1, kept[0] + sign * by);
                rows.set_bound(2, kept[1] + sign * 0.5 * by);
                let outcome = solved(&cost, &rows);
                rows.set_bound(1, kept[0]);
                rows.set_bound(2, kept[1]);
                match outcome {
                    Outcome::Optimum(found) => found.value(&cost),
                    _ => f64::INFINITY,
                }
            };
            if walk.slope.is_infinite() {
                assert!(again(1e-3).is_infinite(), "seed {seed}");
                continue;
            }
            let end = walk.until.min(5.0);
            for share in [0.3, 1.0] {
                let expected = value + walk.slope * share * end;
                assert!((again(share * end) - expected).abs() < 1e-8, "seed {seed}: {walk:?}");
            }
            if walk.until < 5.0 {
                let beyond = again(end + 1e-3);
                assert!(
                    beyond > value + walk.slope * (end + 1e-3) + 1e-9,
                    "seed {seed}: {walk:?} holds farther"
                );
            }
        }
    }
}

#[test]
fn a_basis_of_before_answers_the_next_program() {
    for seed in 0..100 {
        let (cost, mut rows) = program(seed, 4, 12);
        let Outcome::Optimum(before) = solved(&cost, &rows) else { panic!("seed {seed}") };
        for row in 0..rows.len() {
            rows.set_bound(row, rows.bound(row) - 0.1 * (row % 3) as f64);
        }
        let blocks = rows.all();
        let next = Program { cost: &cost, rows: &rows, blocks: &blocks };
        let (Outcome::Optimum(warm), Outcome::Optimum(cold)) =
            (DualSimplex.solve(&next, Some(&before.basis)), DualSimplex.solve(&next, None))
        else {
            panic!("seed {seed}")
        };
        assert!((warm.value(&cost) - cold.value(&cost)).abs() < 1e-9, "seed {seed}");
    }
}

#[test]
fn what_equations_leave_free() {
    // x + y = 0 twice over, in three unknowns: two are free.
    let space = NullSpace::of(3, vec![vec![1.0, 1.0, 0.0], vec![2.0, 2.0, 0.0]]);
    assert_eq!(space.width(), 2);
    for column in 0..2 {
        assert!((space.map[0][column] + space.map[1][column]).abs() < 1e-15);
    }
    assert_eq!(NullSpace::of(2, vec![vec![1.0, 0.0], vec![0.0, 3.0]]).width(), 0);
    assert_eq!(NullSpace::of(2, Vec::new()).width(), 2);
}

/// With the near rows alone the walk must come out as with all of them.
#[test]
fn near_rows_are_enough() {
    for count in [4_097, 5_000, 8_191, 8_192, 20_000] {
        near_rows_are_enough_of(count);
    }
}

fn near_rows_are_enough_of(count: usize) {
    let mut random = Random::new(7);
    let mut rows = Rows::new(3);
    for _ in 0..count {
        let [x, y] = [random.between(-1.0, 1.0), random.between(-1.0, 1.0)];
        rows.push(&[1.0, x, y], random.between(-0.05, 0.05) - 0.02 * (x * x + y * y));
    }
    rows.push(&[0.0, 1.0, 0.0], 0.01);
    let cost = [1.0, 0.05, -0.02];
    let blocks = rows.all();
    let program = Program { cost: &cost, rows: &rows, blocks: &blocks };
    let Outcome::Optimum(found) = DualSimplex.solve(&program, None) else { panic!("no answer") };
    let near = Near::of(&program, &found.x);
    assert!(near.is_some());
    for (moving, sign) in [(0, 1.0), (0, -1.0), (1, 1.0), (1, -1.0)] {
        let rise = |block: usize| Rise::Same(if block == moving { sign } else { 0.0 });
        let pieces =
            vec![Piece { rows: 0..count, rise: rise(0) }, Piece { rows: count..count + 1, rise: rise(1) }];
        let walk = |near: Option<&Near>| {
            Ray { pieces: pieces.clone(), near, farthest: f64::INFINITY }.walk(&program, &found)
        };
        let (with, without) = (walk(near.as_ref()), walk(None));
        assert_eq!(with.slope.to_bits(), without.slope.to_bits());
        assert!(
            (with.until - without.until).abs() < 1e-9 || with.until == without.until,
            "{with:?} {without:?}"
        );
    }
}
