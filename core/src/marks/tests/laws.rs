//! What holds for the marks of any floor.

use super::support::*;
use crate::geometry::Point;
use crate::geometry::random::Random;
use crate::grade::finish::Finish;
use crate::marks::{Asked, Mark, Marks, PadsAsked, Sight};
use crate::quantity::{Elevation, Length, Typed};
use crate::survey::Survey;

/// A crooked slab, a floor over it, and what is asked: a plane over an L with a column, or four planes to a drain.
fn random_floor(random: &mut Random) -> (Survey, Finish, Asked) {
    let [width, depth] = [12.0 + 20.0 * share(random), 14.0 + 25.0 * share(random)];
    let faceted = share(random) < 0.5;
    let corners = if faceted {
        vec![(0.0, 0.0), (width, 0.0), (width, depth), (0.0, depth)]
    } else {
        let (notch, bite) = (0.4 + 0.3 * share(random), 0.4 + 0.3 * share(random));
        vec![
            (0.0, 0.0),
            (width, 0.0),
            (width, depth * notch),
            (width * bite, depth * notch),
            (width * bite, depth),
            (0.0, depth),
        ]
    };
    let column = (2.0 + 2.0 * share(random), 2.0 + 2.0 * share(random));
    let hole =
        [column, (column.0 + 1.0, column.1), (column.0 + 1.2, column.1 + 1.0), (column.0, column.1 + 0.8)];
    let mut shots: Vec<(f64, f64, f64)> = Vec::new();
    for row in 0..5 {
        for along in 0..4 {
            let [x, y] = [width * f64::from(along) / 3.0, depth * f64::from(row) / 4.0];
            shots.push((x, y, 99.0 + 0.2 * share(random)));
        }
    }
    let survey = slab(&corners, &[&hole], &shots);
    let finish = if faceted {
        let drain = [width * (0.3 + 0.4 * share(random)), depth * (0.3 + 0.4 * share(random))];
        funnel([width, depth], drain, 99.6 + 0.1 * share(random), 99.4)
    } else {
        let slopes = [0.02 * (share(random) - 0.5), 0.02 * (share(random) - 0.5)];
        Finish::of(crate::geometry::Plane::new(30.4 + 0.01 * share(random), slopes[0], slopes[1])).unwrap()
    };
    let screed = length(["6 ft", "8 ft", "10 ft"][(3.0 * share(random)) as usize % 3]);
    let asked = Asked {
        spacing: Length::from_base(0.6 + 1.5 * share(random)),
        pads: PadsAsked { screed, spacing: None, inset: Length::from_base(0.1 + 0.4 * share(random)) },
        ..asked()
    };
    (survey, finish, asked)
}

fn share(random: &mut Random) -> f64 {
    random.between(0.0, 1.0)
}

fn floors(count: usize, mut law: impl FnMut(&Survey, &Finish, &Asked, &Marks)) {
    let mut random = Random::new(20);
    for _ in 0..count {
        let (survey, finish, asked) = random_floor(&mut random);
        let marks = Marks::set_out(&survey, &finish, &asked).unwrap_or_else(|failure| panic!("{failure}"));
        law(&survey, &finish, &asked, &marks);
    }
}

#[test]
fn every_mark_stands_on_the_floor_and_is_told_right() {
    floors(40, |survey, finish, asked, marks| {
        let old = crate::survey::surface::Locator::new(survey.surface().whole());
        let step = asked.step.base();
        for (_, _, mark) in marks.all() {
            assert_eq!(Some(mark.height), finish.height_at(mark.x, mark.y));
            let under = old.at(mark.place()).unwrap().height;
            assert!((mark.height.base() - under - mark.over_old_slab.base()).abs() < 1e-9);
            let (rod, below) =
                (marks.levels.rod(mark.height).unwrap(), marks.levels.below_line(mark.height).unwrap());
            assert!((rod.exact.base() + mark.height.base() - asked.sights[0].height.base()).abs() < 1e-12);
            assert!((asked.line.unwrap().base() - below.exact.base() - mark.height.base()).abs() < 1e-12);
            for told in [rod, below] {
                let steps = told.marked.base() / step;
                assert!((steps - steps.round()).abs() < 1e-9);
                assert!(told.departure().base().abs() <= step / 2.0 + 1e-12);
            }
        }
        assert!(marks.greatest_departure().base() <= step / 2.0 + 1e-12);
    });
}

#[test]
fn stations_cover_every_run_and_no_corner_comes_twice() {
    floors(40, |survey, _, asked, marks| {
        let runs: usize = survey.outline().runs().len();
        let corners = marks.edges.iter().flat_map(|edge| &edge.marks);
        let corners = corners.filter(|mark| mark.kind == crate::marks::MarkKind::Corner).count();
        assert_eq!(corners, runs);
        for edge in &marks.edges {
            let along: Vec<f64> = edge.with_end().map(|mark| mark.along.unwrap().base()).collect();
            assert!(
                along
                    .windows(2)
                    .all(|pair| pair[1] > pair[0] && pair[1] - pair[0] <= asked.spacing.base() + 1e-6)
            );
            assert_eq!((along[0], *along.last().unwrap()), (0.0, edge.length.base()));
        }
        let numbers: Vec<usize> = marks.all().map(|(_, _, mark)| mark.number).collect();
        assert_eq!(numbers, (1..=numbers.len()).collect::<Vec<_>>());
    });
}

#[test]
fn pads_are_inside_and_no_farther_apart_than_the_screed_reaches() {
    floors(60, |survey, _, asked, marks| {
        let region = survey.outline().region();
        let (apart, inset) = (asked.pads.apart().base(), asked.pads.inset.base());
        let on_row = |y: f64| {
            let mut row: Vec<&Mark> =
                marks.pads.iter().filter(|pad| (pad.y.base() - y).abs() < 1e-9).collect();
            row.sort_by(|a, b| a.x.base().total_cmp(&b.x.base()));
            row
        };
        for pad in &marks.pads {
            assert!(region.contains(pad.place()));
            let corner = pad.kind == crate::marks::MarkKind::FacetCorner;
            assert!(corner || region.nearest_run(pad.place()).distance >= inset - 2e-6);
            for pair in on_row(pad.y.base()).windows(2) {
                let between: Vec<Point> = (1..40)
                    .map(|part| {
                        let share = f64::from(part) / 40.0;
                        let x = pair[0].x.base() + share * (pair[1].x.base() - pair[0].x.base());
                        Point::new(x, pad.y.base())
                    })
                    .collect();
                let clear = between.iter().all(|at| region.contains(*at));
                let shadowed = between.iter().all(|at| region.nearest_run(*at).distance < inset + 1e-6);
                let gap = pair[1].x.base() - pair[0].x.base();
                assert!(!clear || gap <= apart + 1e-6 || shadowed, "{gap} > {apart}");
            }
        }
    });
}

#[test]
fn moving_the_sight_moves_every_rod_and_nothing_else() {
    floors(10, |survey, finish, asked, marks| {
        let by = Length::from_base(0.25);
        let higher = Sight { height: asked.sights[0].height + by, ..asked.sights[0].clone() };
        let moved = Marks::set_out(survey, finish, &Asked { sights: vec![higher], ..asked.clone() }).unwrap();
        assert_eq!((&moved.edges, &moved.pads, &moved.lines), (&marks.edges, &marks.pads, &marks.lines));
        for (_, _, mark) in marks.all() {
            let rods = [marks, &moved].map(|marks| marks.levels.rod(mark.height).unwrap().exact.base());
            assert!((rods[1] - rods[0] - 0.25).abs() < 1e-12);
            assert_eq!(marks.levels.below_line(mark.height), moved.levels.below_line(mark.height));
        }
    });
}

#[test]
fn a_csv_reads_back_to_the_same_numbers() {
    floors(6, |_, _, _, marks| {
        let text = marks.csv();
        let mut reader = csv::Reader::from_reader(text.as_bytes());
        let head: Vec<String> = reader.headers().unwrap().iter().map(str::to_owned).collect();
        let column = |name: &str| head.iter().position(|known| known == name).unwrap();
        let rows: Vec<csv::StringRecord> = reader.records().map(Result::unwrap).collect();
        assert_eq!(rows.len(), marks.all().count());
        for (row, (_, _, mark)) in rows.iter().zip(marks.all()) {
            let read = |name: &str| row[column(name)].parse::<f64>().unwrap();
            assert_eq!(row[column("mark")], mark.number.to_string());
            let rod = marks.levels.rod(mark.height).unwrap();
            let below = marks.levels.below_line(mark.height).unwrap();
            for (name, length) in [
                ("x ft", mark.x),
                ("y ft", mark.y),
                ("elevation ft", Length::from_base(mark.height.base())),
                ("rod ft", rod.exact),
                ("rod marked ft", rod.marked),
                ("below line ft", below.exact),
                ("below line marked ft", below.marked),
            ] {
                assert!((read(name) - feet(length)).abs() <= 0.51e-9, "{name}");
            }
        }
    });
}

#[test]
fn rips_hold_the_thickness_at_the_edge_to_half_a_step() {
    floors(40, |_, _, asked, marks| {
        for edge in &marks.edges {
            assert!(edge.rips.windows(2).all(|pair| (pair[0].to - pair[1].from).base().abs() < 1e-9));
            for mark in edge.with_end() {
                let along = mark.along.unwrap().base();
                // The corner it ends at is told once; at a step in the old slab it may be that of the next edge.
                let on = |rip: &&crate::marks::Rip| {
                    along >= rip.from.base() - 1e-9 && along <= rip.to.base() + 1e-9
                };
                let off = edge.rips.iter().filter(on).map(|rip| {
                    let share = (along - rip.from.base()) / (rip.to - rip.from).base();
                    let on_cut = rip.height_from.base() + share * (rip.height_to - rip.height_from).base();
                    (on_cut - mark.over_old_slab.base()).abs()
                });
                let least = off.fold(f64::INFINITY, f64::min);
                assert!(least <= asked.step.base() / 2.0 + 1e-9, "{least}");
                let over = mark.over_old_slab.base();
                assert!(
                    over >= edge.least.height.base() - 1e-9 && over <= edge.greatest.height.base() + 1e-9
                );
            }
        }
    });
}

#[test]
fn a_datum_moved_moves_elevations_and_nothing_else() {
    let shop = shop();
    let finish = to_front(&shop);
    let marks = Marks::set_out(&shop, &finish, &asked()).unwrap();
    let corners = [(0.0, 0.0), (20.0, 0.0), (20.0, 32.0), (0.0, 32.0)];
    let lower = slab(&corners, &[], &corners.map(|(x, y)| (x, y, 59.0)));
    let down = Length::from_base(-40.0 * 0.3048);
    let sights = vec![Sight { name: "set-up".to_owned(), height: height("64 ft") }];
    let asked = Asked { line: Some(height("63 ft")), sights, ..asked() };
    let moved = Marks::set_out(&lower, &finish.moved_up(down), &asked).unwrap();
    for ((_, _, one), (_, _, other)) in marks.all().zip(moved.all()) {
        let rods =
            [(&marks, one), (&moved, other)].map(|(marks, mark)| marks.levels.rod(mark.height).unwrap());
        assert!((rods[0].exact - rods[1].exact).base().abs() < 1e-9);
        assert!((rods[0].marked - rods[1].marked).base().abs() < 1e-9);
        assert!((one.over_old_slab - other.over_old_slab).base().abs() < 1e-9);
    }
    let _: Elevation = marks.edges[0].end.height;
}
