//! Every irreducible set, against all subsets.

use super::support::*;
use crate::geometry::random::Random;
use crate::grade::solve::{Demand, Line, Relaxed, Wants, conflicts, solve};

fn crossed(seed: u64) -> Vec<Demand> {
    let mut random = Random::new(seed);
    let mut list =
        vec![least("least", random.between(2.0, 4.0)), fall("fall", random.between(0.1, 0.3), "front")];
    for number in 0..3 {
        let place = [random.between(0.0, 20.0), random.between(0.0, 16.0)];
        let height = 99.5 + random.between(1.0, 6.0) / 12.0;
        let name = format!("limit {number}");
        list.push(match random.below(3) {
            0 => Demand::new(name, Wants::AtLeast(along(&[place], height + 0.3))),
            1 => Demand::new(name, Wants::Exactly(along(&[place], height))),
            _ => at_most(&name, &[place], height),
        });
    }
    let along = Line::Edge("left".into());
    list.push(Demand::new("level side", Wants::Level { along, tolerance: inches(random.between(0.0, 2.0)) }));
    list
}

#[test]
fn the_sets_are_all_that_are_irreducible() {
    let mut with_conflict = 0;
    for seed in 0..150 {
        let survey = rough(seed, 20.0, 16.0, 1.0);
        let list = crossed(seed);
        let keeps = |mask: usize| {
            let chosen: Vec<Demand> =
                (0..list.len()).filter(|bit| mask >> bit & 1 == 1).map(|bit| list[bit].clone()).collect();
            !matches!(conflicts(&survey, &asked(&chosen)), Ok(Some(_)))
        };
        let all = 1_usize << list.len();
        let kept: Vec<bool> = (0..all).map(keeps).collect();
        let irreducible: Vec<usize> = (1..all)
            .filter(|&mask| {
                !kept[mask] && (0..list.len()).all(|bit| mask >> bit & 1 == 0 || kept[mask & !(1 << bit)])
            })
            .collect();
        let found = conflicts(&survey, &asked(&list)).unwrap();
        assert_eq!(found.is_none(), kept[all - 1], "seed {seed}");
        let Some(found) = found else { continue };
        with_conflict += 1;
        let mut masks: Vec<usize> =
            found.sets.iter().map(|set| set.demands.iter().map(|bit| 1 << bit).sum()).collect();
        masks.sort_unstable();
        assert!(found.complete);
        assert_eq!(masks, irreducible, "seed {seed}");
        assert!(found.sets.windows(2).all(|pair| pair[0].demands.len() <= pair[1].demands.len()));
    }
    assert!(with_conflict > 60, "{with_conflict}");
}

#[test]
fn what_mends_a_set_mends_it_and_less_does_not() {
    let mut mended = 0;
    for seed in 0..150 {
        let survey = rough(seed, 20.0, 16.0, 1.0);
        let list = crossed(seed);
        let Some(found) = conflicts(&survey, &asked(&list)).unwrap() else { continue };
        for set in &found.sets {
            for relaxed in set.by.iter().flatten() {
                let with = |by: f64| {
                    let chosen: Vec<Demand> = (set.demands.iter())
                        .map(|&number| match number == relaxed.demand {
                            true => Relaxed { by, ..*relaxed }.given_way(&list[number]),
                            false => list[number].clone(),
                        })
                        .collect();
                    matches!(conflicts(&survey, &asked(&chosen)), Ok(None))
                };
                assert!(with(relaxed.by), "seed {seed}: {relaxed:?}");
                assert!(!with(relaxed.by - 1e-6), "seed {seed}: {relaxed:?}");
                mended += 1;
            }
        }
        let nearest = found.nearest(&list);
        let solved = solve(&survey, &asked(&nearest));
        assert!(solved.is_ok(), "seed {seed}: {:?} {:?}", solved.unwrap_err(), found.together);
        for relaxed in &found.alone {
            let mut alone = list.clone();
            alone[relaxed.demand] = relaxed.given_way(&list[relaxed.demand]);
            assert!(solve(&survey, &asked(&alone)).is_ok(), "seed {seed}");
        }
    }
    assert!(mended > 100, "{mended}");
}

#[test]
fn what_stands_firm_is_not_blamed_unless_it_contradicts_itself() {
    let survey = rough(1, 20.0, 16.0, 0.2);
    let high = Demand::new("high", Wants::AtLeast(along(&[[0.0, 16.0]], 101.0)));
    let low = at_most("low", &[[0.0, 16.0]], 100.5);
    let found = conflicts(&survey, &asked(&[least("least", 3.0), high.clone().firmly(), low.clone()]))
        .unwrap()
        .unwrap();
    assert_eq!(found.sets.len(), 1);
    assert_eq!(found.sets[0].demands, [2]);
    let both = [least("least", 3.0), high.firmly(), low.firmly()];
    let found = conflicts(&survey, &asked(&both)).unwrap().unwrap();
    assert_eq!(found.sets[0].demands, [1, 2]);
}
