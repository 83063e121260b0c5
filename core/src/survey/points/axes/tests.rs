//! Changes of axes that are known, and known points that are wrong.

use super::*;
use crate::geometry::random::Random;

const NAMES: [&str; 6] = ["A", "B", "C", "D", "E", "F"];

/// Points over a floor, brought into other axes by a turn, a shift and a rise.
fn known(count: usize, turn: f64, shift: [f64; 3]) -> Vec<Known> {
    let places = [(1.0, 2.0), (9.0, 2.5), (8.0, 7.0), (0.5, 6.0), (5.0, 4.0), (3.0, 1.0)];
    let one = |(name, (x, y)): (&&str, (f64, f64))| Known {
        name: (*name).to_owned(),
        from: Point::new(x, y),
        from_height: Some(1.5),
        to: Point::new(
            shift[0] + turn.cos() * x - turn.sin() * y,
            shift[1] + turn.sin() * x + turn.cos() * y,
        ),
        to_height: Some(1.5 + shift[2]),
    };
    NAMES.iter().zip(places).take(count).map(one).collect()
}

fn tolerances() -> Tolerances {
    Tolerances { plan: Length::from_base(0.006), height: Length::from_base(0.003) }
}

fn change(known: &[Known]) -> Result<Change> {
    Change::by_known_points(known, tolerances(), Levelling::Rise)
}

fn refused(known: &[Known]) -> Box<Failure> {
    change(known).expect_err("refused")
}

#[test]
fn a_turn_a_shift_and_a_rise_are_found_again() {
    let mut random = Random::new(1);
    for count in 2..=6 {
        for _ in 0..50 {
            let turn = random.between(-3.1, 3.1);
            let shift = [random.between(-50.0, 50.0), random.between(-50.0, 50.0), random.between(-3.0, 3.0)];
            let found = change(&known(count, turn, shift)).expect("a change");
            assert!((found.turn().base() - turn).abs() < 1e-13);
            let [x, y, z] = found.point([2.0, -3.0, 1.0]);
            assert!((x - (shift[0] + turn.cos() * 2.0 + turn.sin() * 3.0)).abs() < 1e-12);
            assert!((y - (shift[1] + turn.sin() * 2.0 - turn.cos() * 3.0)).abs() < 1e-12);
            assert!((z - 1.0 - shift[2]).abs() < 1e-12);
        }
    }
}

/// By hand: the points a quarter turn on, 100 m to the right and 2 m up.
#[test]
fn a_quarter_turn_by_hand() {
    let two = [([0.0, 0.0], [100.0, 0.0]), ([4.0, 0.0], [100.0, 4.0])];
    let two: Vec<Known> = two
        .iter()
        .map(|&([x, y], [u, v])| Known {
            name: "nail".to_owned(),
            from: Point::new(x, y),
            from_height: None,
            to: Point::new(u, v),
            to_height: Some(2.0),
        })
        .collect();
    let found = change(&two).expect("a change");
    assert_eq!(found.point([1.0, 3.0, 7.0]), [97.0, 1.0, 7.0]);
    assert_eq!(found.rise(), None);
    assert!((found.turn().base() - std::f64::consts::FRAC_PI_2).abs() < 1e-15);
}

#[test]
fn points_move_without_any_change_of_their_distances() {
    let change = change(&known(3, 0.7, [500_000.0, 4_000_000.0, 12.0])).expect("a change");
    let mut random = Random::new(3);
    let mut points = Points::default();
    for _ in 0..200 {
        let at = random.point(10.0, 10.0);
        points.push([at.x, at.y, random.between(0.0, 1.0)]);
    }
    points.names = vec![Some("P".to_owned()); 200];
    let moved = change.points(&points).expect("points");
    assert_eq!(moved.names, points.names);
    for (a, b) in (1..200).map(|b| (b - 1, b)) {
        let apart = |p: &Points| (p.x[a] - p.x[b]).hypot(p.y[a] - p.y[b]);
        // Coordinates of 4,000 km are good to 5e-10 m.
        assert!((apart(&moved) - apart(&points)).abs() < 3e-9);
    }
}

#[test]
fn what_is_left_over_is_told_and_least() {
    let mut four = known(4, 0.3, [10.0, 20.0, 1.0]);
    four[1].to.x += 0.004;
    four[3].to_height = Some(four[3].to_height.unwrap_or_default() + 0.002);
    let found = change(&four).expect("a change");
    let left: f64 = found.residuals.iter().map(|r| r.x.base().powi(2) + r.y.base().powi(2)).sum();
    let sums = found.residuals.iter().fold([0.0; 3], |[x, y, z], r| {
        [x + r.x.base(), y + r.y.base(), z + r.height.map_or(0.0, Typed::base)]
    });
    assert!(sums.iter().all(|sum| sum.abs() < 1e-13), "{sums:?}");
    assert!(left > 1e-6);
    // Any other turn leaves more.
    for other in [-1e-4, 1e-4] {
        let (sin, cos) = (found.turn().base() + other).sin_cos();
        let turned = Change { cos, sin, ..found.clone() };
        let more: f64 =
            four.iter().map(|k| turned.residual(k)).map(|r| r.x.base().powi(2) + r.y.base().powi(2)).sum();
        assert!(more > left);
    }
}

#[test]
fn a_tilt_is_taken_out_when_asked_for() {
    let mut four = known(4, 0.3, [10.0, 20.0, 1.0]);
    for one in &mut four {
        one.to_height = Some(2.5 + 0.01 * one.to.x - 0.005 * one.to.y);
    }
    assert_eq!(refused(&four).code, Code::AxesDisagree);
    assert!(refused(&four).remedy.contains("tilt"));
    let found = Change::by_known_points(&four, tolerances(), Levelling::Tilt).expect("a change");
    assert!((found.tilt().x.base() - 0.01).abs() < 1e-13 && (found.tilt().y.base() + 0.005).abs() < 1e-13);
    for one in &four {
        let brought = found.point([one.from.x, one.from.y, 1.5]);
        assert!((brought[2] - one.to_height.unwrap_or_default()).abs() < 1e-12);
    }
    let two = Change::by_known_points(&four[..2], tolerances(), Levelling::Tilt).expect_err("refused");
    assert_eq!(two.code, Code::KnownPoints);
    four.iter_mut().for_each(|one| one.to_height = Some(2.5 + 0.05 * one.to.x));
    let steep = Change::by_known_points(&four, tolerances(), Levelling::Tilt).expect_err("refused");
    assert_eq!(steep.code, Code::KnownPoints);
}

#[test]
fn along_a_wall_the_origin_is_zero_and_y_goes_in() {
    let found = Change::along_wall(Point::new(3.0, 1.0), Point::new(3.0, 5.0)).expect("a change");
    assert_eq!(found.point([3.0, 1.0, 7.0]), [0.0, 0.0, 7.0]);
    assert_eq!(found.point([3.0, 5.0, 7.0]), [4.0, 0.0, 7.0]);
    assert_eq!(found.point([1.0, 1.0, 7.0]), [0.0, 2.0, 7.0]);
    let same = Change::along_wall(Point::new(3.0, 1.0), Point::new(3.0, 1.01)).expect_err("refused");
    assert_eq!(same.code, Code::KnownPoints);
}

#[test]
fn a_mirror_is_said_for_swapped_axes_and_for_one_turned_round() {
    for count in 3..=6 {
        let mut swapped = known(count, 0.4, [3.0, 4.0, 0.0]);
        swapped.iter_mut().for_each(|k| k.from = Point::new(k.from.y, k.from.x));
        assert_eq!(refused(&swapped).code, Code::AxesMirrored);
        let mut round = known(count, 0.4, [3.0, 4.0, 0.0]);
        round.iter_mut().for_each(|k| k.to = Point::new(-k.to.x, k.to.y));
        assert_eq!(refused(&round).code, Code::AxesMirrored);
    }
}

#[test]
fn a_unit_slip_is_named() {
    for (factor, words) in [
        (3.280_839_895, "metres taken for feet"),
        (0.3048, "feet taken for metres"),
        (12.0, "feet taken for inches"),
        (25.4, "inches taken for millimetres"),
    ] {
        for count in [2, 3, 5] {
            // The known places are so many times as far apart as the points have them.
            let mut slipped = known(count, 0.4, [3.0, 4.0, 0.0]);
            slipped.iter_mut().for_each(|k| k.to = Point::new(k.to.x * factor, k.to.y * factor));
            let failure = refused(&slipped);
            assert_eq!(failure.code, Code::AxesDisagree);
            assert!(failure.remedy.contains(words), "{failure}");
        }
    }
}

#[test]
fn a_wrong_point_is_named() {
    let mut two = known(2, 0.4, [3.0, 4.0, 0.0]);
    two[1].to.x += 0.1;
    assert!(refused(&two).written.contains("A to B"), "{}", refused(&two));
    for wrong in 0..5 {
        let mut five = known(5, 0.4, [3.0, 4.0, 0.0]);
        five[wrong].to.y += 0.1;
        let failure = refused(&five);
        assert_eq!(failure.code, Code::AxesDisagree);
        assert!(failure.remedy.contains(&format!("without {}", NAMES[wrong])), "{failure}");
    }
    let mut high = known(2, 0.4, [3.0, 4.0, 0.0]);
    high[1].to_height = Some(9.0);
    assert!(refused(&high).written.contains("height"), "{}", refused(&high));
}

#[test]
fn known_points_that_fix_nothing_are_refused() {
    assert_eq!(refused(&[]).code, Code::KnownPoints);
    assert_eq!(refused(&known(1, 0.1, [0.0; 3])).code, Code::KnownPoints);
    let mut same = known(3, 0.1, [0.0; 3]);
    same.iter_mut().for_each(|k| k.from = Point::new(1.0, 1.0));
    assert_eq!(refused(&same).code, Code::KnownPoints);
    for bad in [f64::NAN, f64::INFINITY] {
        let mut three = known(3, 0.1, [0.0; 3]);
        three[2].to.y = bad;
        assert_eq!(refused(&three).code, Code::NotFinite);
        let mut three = known(3, 0.1, [0.0; 3]);
        three[1].from_height = Some(bad);
        assert_eq!(refused(&three).code, Code::NotFinite);
        let tolerances = Tolerances { plan: Length::from_base(bad), ..tolerances() };
        let failure = Change::by_known_points(&known(3, 0.1, [0.0; 3]), tolerances, Levelling::Rise);
        assert_eq!(failure.expect_err("refused").code, Code::NotFinite);
    }
}
