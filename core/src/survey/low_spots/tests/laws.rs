//! Laws that hold for every slab.

use super::support::*;
use crate::failure::Code;

/// An L with a column, and shots at random that stand in no order.
struct Case {
    shots: Vec<(f64, f64, f64)>,
}

const L: &[(f64, f64)] = &[(0.0, 0.0), (9.0, 0.0), (9.0, 4.0), (5.0, 4.0), (5.0, 8.0), (0.0, 8.0)];
const COLUMN: &[(f64, f64)] = &[(2.0, 2.0), (2.5, 2.0), (2.5, 2.6), (2.0, 2.6)];

impl Case {
    fn new(seed: u64) -> Self {
        let mut random = Random::new(seed);
        let region = outline(L, &[("column", COLUMN)]);
        let mut shots: Vec<(f64, f64, f64)> =
            L.iter().map(|&(x, y)| (x, y, random.between(1.0, 1.05))).collect();
        while shots.len() < 40 {
            let at = random.point(9.0, 8.0);
            if region.region().contains(at)
                && shots.iter().all(|shot| at.distance(Point::new(shot.0, shot.1)) > 0.1)
            {
                shots.push((at.x, at.y, random.between(1.0, 1.05)));
            }
        }
        Self { shots }
    }

    fn survey(&self, change: impl Fn(f64, f64, f64) -> (f64, f64, f64)) -> Survey {
        let plan = |ring: &[(f64, f64)]| {
            ring.iter()
                .map(|&(x, y)| {
                    let (x, y, _) = change(x, y, 0.0);
                    (x, y)
                })
                .collect::<Vec<_>>()
        };
        let shots: Vec<_> = self.shots.iter().map(|&(x, y, z)| change(x, y, z)).collect();
        survey(outline(&plan(L), &[("column", &plan(COLUMN))]), &shots)
    }
}

fn same(x: f64, y: f64, z: f64) -> (f64, f64, f64) {
    (x, y, z)
}

#[track_caller]
fn assert_alike(one: &Ponds, other: &Ponds) {
    assert_eq!(one.list.len(), other.list.len());
    for (a, b) in one.list.iter().zip(&other.list) {
        assert_close(a.area.base(), b.area.base());
        assert_close(a.volume.base(), b.volume.base());
        assert_close(a.depth.base(), b.depth.base());
    }
}

#[test]
fn neither_a_turn_nor_a_lift_nor_the_order_of_the_shots_changes_the_water() {
    let mut random = Random::new(8);
    for seed in 0..12 {
        let mut case = Case::new(seed);
        let walls = edges(&["side 1", "side 2"], &[]);
        let first = ponds(&case.survey(same), &walls);
        assert!(!first.list.is_empty());
        for angle in [0.5_f64, 2.2] {
            let (sine, cosine) = angle.sin_cos();
            let turned =
                case.survey(|x, y, z| (cosine * x - sine * y + 50.0, sine * x + cosine * y - 9.0, z + 3.0));
            assert_alike(&ponds(&turned, &walls), &first);
        }
        random.shuffle(&mut case.shots);
        assert_alike(&ponds(&case.survey(same), &walls), &first);
    }
}

#[test]
fn an_added_drain_never_adds_water_and_a_wall_never_takes_any_away() {
    let mut random = Random::new(9);
    for seed in 20..40 {
        let slab = Case::new(seed).survey(same);
        let (mut walled, mut drains): (Vec<&str>, Vec<Vec<(f64, f64)>>) =
            (Vec::new(), vec![vec![(0.3, 0.4)]]);
        let water = |walled: &[&str], drains: &[Vec<(f64, f64)>]| {
            let drains: Vec<&[(f64, f64)]> = drains.iter().map(Vec::as_slice).collect();
            ponds(&slab, &edges(walled, &drains)).volume().base()
        };
        let mut before = water(&walled, &drains);
        for side in ["side 3", "side 6", "side 1", "side 2", "side 5", "side 4"] {
            walled.push(side);
            let now = water(&walled, &drains);
            assert!(now >= before - 1e-12, "{side} took water away: {before} {now}");
            before = now;
        }
        for round in 0..4 {
            let (a, b) = (random.point(4.9, 1.9), random.point(4.9, 1.9));
            drains.push(if round % 2 == 0 { vec![(a.x, a.y)] } else { vec![(a.x, a.y), (b.x, b.y)] });
            let now = water(&walled, &drains);
            assert!(now <= before + 1e-12, "a drain added water: {before} {now}");
            before = now;
        }
    }
}

/// The pieces of every pond tile it.
#[test]
fn the_pieces_of_a_pond_have_its_area() {
    for seed in 40..50 {
        let found = ponds(&Case::new(seed).survey(same), &edges(&["side 1", "side 6"], &[]));
        for water in &found.waters {
            let doubled: f64 = water
                .pieces
                .iter()
                .map(|piece| {
                    let place = |index: usize| {
                        let v = &piece[index % piece.len()];
                        Point::new(v.x, v.y)
                    };
                    (0..piece.len())
                        .map(|i| place(i).x * place(i + 1).y - place(i + 1).x * place(i).y)
                        .sum::<f64>()
                })
                .sum();
            assert_close(0.5 * doubled, water.area);
        }
    }
}

#[test]
fn water_without_a_way_out_is_refused() {
    let slab = Case::new(1).survey(same);
    let all = ["side 1", "side 2", "side 3", "side 4", "side 5", "side 6"];
    let refused =
        |edges: &Edges| Ponds::of_survey(&slab, edges, Length::from_base(0.0)).expect_err("a refusal");
    assert_eq!(refused(&edges(&all, &[])).code, Code::NoOutlet);
    let outside = refused(&edges(&[], &[&[(1.0, 1.0)], &[(2.2, 2.3), (1.0, 1.0)]]));
    assert_eq!((outside.code, outside.path.as_str()), (Code::DrainOutside, "drains[1].at[0]"));
    assert_eq!(refused(&edges(&[], &[&[]])).code, Code::EmptyList);
    let unknown = refused(&edges(&["side 1", "sdie 2"], &[]));
    assert_eq!((unknown.code, unknown.path.as_str()), (Code::EdgeUnknown, "edges[1].edge"));
}
