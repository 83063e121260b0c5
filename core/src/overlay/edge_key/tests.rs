use super::{Cut, EdgeKey, EdgeOf, KeySection, edge_key, key_cuts};
use crate::failure::Code;
use crate::grade::finish::Finish;
use crate::grade::sections::Section;
use crate::quantity::units::{FOOT, INCH};
use crate::quantity::{Elevation, Length, Slope, Typed};
use crate::survey::Survey;
use crate::survey::outline::Corner;

fn inches(number: f64) -> Length {
    Length::from_base(number * INCH)
}

fn feet(number: f64) -> Length {
    Length::from_base(number * FOOT)
}

fn close(is: f64, wanted: f64) {
    assert!((is - wanted).abs() <= 1e-9 * wanted.abs().max(1e-3), "{is} for {wanted}");
}

/// An edge 9 ft long, growing by 1/4 in/ft.
fn of(least: f64, at_edge: f64, room: Option<f64>, old: Option<f64>) -> EdgeKey {
    edge_key(&EdgeOf {
        least: inches(least),
        at_edge: inches(at_edge),
        growth: Slope::from_base(0.25 / 12.0),
        length: feet(9.0),
        room: room.map(feet),
        old_slab: old.map(inches),
    })
    .unwrap()
}

#[test]
fn a_wedge_by_hand() {
    // 1 in is lacking, 1/4 in is won on each foot: 4 ft back; 1 in x 4 ft / 2 x 9 ft = 1.5 ft3.
    let key = of(1.5, 0.5, None, Some(4.0));
    assert_eq!(key.cut, Cut::Key);
    close(key.depth.base(), INCH);
    close(key.width.base(), 4.0 * FOOT);
    close(key.depth_at_back.base(), 0.0);
    close(key.area.base(), 36.0 * FOOT * FOOT);
    close(key.volume.base(), 1.5 * FOOT.powi(3));
    close(key.left.unwrap().base(), 3.0 * INCH);
}

#[test]
fn a_flush_edge_is_cut_to_the_least_itself() {
    let key = of(1.5, 0.0, None, None);
    close(key.depth.base(), 1.5 * INCH);
    close(key.width.base(), 6.0 * FOOT);
    assert!(key.left.is_none());
}

#[test]
fn with_less_room_the_back_is_square() {
    // After 2 ft 1/2 in is still lacking: (1 + 1/2) / 2 in x 2 ft x 9 ft.
    let key = of(1.5, 0.5, Some(2.0), None);
    close(key.width.base(), 2.0 * FOOT);
    close(key.depth_at_back.base(), 0.5 * INCH);
    close(key.volume.base(), 0.75 * INCH * 2.0 * FOOT * 9.0 * FOOT);
    assert_eq!(of(1.5, 0.5, Some(4.0), None).volume, of(1.5, 0.5, None, None).volume);
}

#[test]
fn a_thick_edge_needs_no_key() {
    for at_edge in [1.5, 1.75, 9.0] {
        let key = of(1.5, at_edge, None, Some(4.0));
        assert_eq!(key.cut, Cut::None);
        for nothing in [key.depth, key.width, key.depth_at_back] {
            assert!(nothing.base() == 0.0);
        }
        assert!(key.area.base() == 0.0 && key.volume.base() == 0.0);
    }
}

#[test]
fn half_of_the_old_slab_is_too_deep_for_a_key() {
    assert_eq!(of(3.0, 1.0, None, Some(4.0)).cut, Cut::BreakOut);
    assert_eq!(of(3.0, 1.01, None, Some(4.0)).cut, Cut::Key);
    let through = of(5.0, 0.0, None, Some(4.0));
    assert!(through.cut == Cut::BreakOut && through.left.is_none());
}

#[test]
fn more_is_asked_more_is_cut() {
    for at_edge in [0.0, 0.4, 1.0] {
        let mut before = of(0.25, at_edge, None, Some(4.0));
        for eighths in 3..40 {
            let next = of(f64::from(eighths) / 8.0, at_edge, None, Some(4.0));
            assert!(next.depth >= before.depth && next.width >= before.width && next.volume >= before.volume);
            before = next;
        }
    }
}

#[test]
fn what_is_refused() {
    let edge = EdgeOf {
        least: inches(3.0),
        at_edge: inches(1.0),
        growth: Slope::from_base(0.01),
        length: feet(3.0),
        room: None,
        old_slab: None,
    };
    let refused = |edge: EdgeOf| edge_key(&edge).unwrap_err().path;
    assert_eq!(refused(EdgeOf { least: inches(0.0), ..edge }), "least");
    assert_eq!(refused(EdgeOf { at_edge: inches(-0.1), ..edge }), "at_edge");
    assert_eq!(refused(EdgeOf { growth: Slope::from_base(0.0), ..edge }), "growth");
    assert_eq!(refused(EdgeOf { length: feet(f64::NAN), ..edge }), "length");
    assert_eq!(refused(EdgeOf { room: Some(feet(0.0)), ..edge }), "room");
    assert_eq!(refused(EdgeOf { old_slab: Some(inches(0.0)), ..edge }), "old_slab");
}

#[test]
fn a_section_over_bends_and_a_step() {
    // Lacking 1 in, then 2 in deep in a hollow's rim, up to nothing between 2 and 3 ft.
    let profile = [(0.0, 1.0), (1.0, 0.0), (2.0, 1.5), (3.0, 2.5)];
    let section = KeySection::under(inches(2.0), profile.map(|(at, t)| (at * FOOT, t * INCH)));
    close(section.depth.base(), INCH);
    close(section.deepest.base(), 2.0 * INCH);
    close(section.width.base(), 2.5 * FOOT);
    close(section.area.base(), (1.5 + 1.25 + 0.125) * INCH * FOOT);
    let step =
        KeySection::under(inches(2.0), [(0.0, 1.0), (1.0, 1.0), (1.0, 4.0)].map(|(at, t)| (at, t * INCH)));
    close(step.width.base(), 1.0);
    assert!(step.depth_at_back.base() == 0.0);
}

/// A work of 20 by 24 ft whose old slab falls by 1/8 in/ft away from the front, from 1 ft under the datum at 100 ft.
fn work() -> Survey {
    let fall = 0.125 / 12.0;
    let shot = |x: f64, y: f64| {
        let z = 99.0 - fall * y;
        serde_json::json!({"x": format!("{x} ft"), "y": format!("{y} ft"), "elevation": format!("{z:.12} ft")})
    };
    let input = serde_json::json!({
        "outline": {"corners": [{"x": "0 ft", "y": "0 ft"}, {"x": "20 ft", "y": "0 ft"}, {"x": "20 ft", "y": "24 ft"}, {"x": "0 ft", "y": "24 ft"}]},
        "shots": [shot(0.0, 0.0), shot(20.0, 0.0), shot(20.0, 24.0), shot(0.0, 24.0), shot(10.0, 12.0)],
    });
    Survey::from_input(&crate::operation::record::parse(input).unwrap()).unwrap()
}

fn line(places: &[(f64, f64)]) -> Vec<Corner> {
    places.iter().map(|(x, y)| Corner::new(feet(*x), feet(*y))).collect()
}

/// A level finish so many inches over the front of that slab.
fn level(over: f64) -> Finish {
    Finish::level(Elevation::from_base((99.0 + over / 12.0) * FOOT)).unwrap()
}

#[test]
fn along_a_door_both_surfaces_give_the_wedge() {
    let (survey, finish) = (work(), level(0.5));
    let cuts = key_cuts(&survey, &finish, &line(&[(6.0, 0.0), (15.0, 0.0)]), inches(1.5), Some(inches(4.0)))
        .unwrap();
    assert_eq!(cuts.len(), 1);
    let cut = cuts[0];
    // As the row does it: 1/8 in/ft away from the door.
    let key = edge_key(&EdgeOf {
        least: inches(1.5),
        at_edge: inches(0.5),
        growth: Slope::from_base(0.125 / 12.0),
        length: feet(9.0),
        room: None,
        old_slab: None,
    })
    .unwrap();
    let near = |is: f64, wanted: f64| assert!((is - wanted).abs() < 1e-5 * wanted, "{is} for {wanted}");
    near(cut.depth.base(), key.depth.base());
    near(cut.width.base(), key.width.base());
    near(cut.area.base(), key.area.base());
    near(cut.volume.base(), key.volume.base());
    near((cut.to - cut.from).base(), 9.0 * FOOT);
    near(cut.start.x.base(), 6.0 * FOOT);
    assert!(cut.runs_out && cut.cut == Cut::Key);
}

#[test]
fn along_a_side_it_ends_where_the_overlay_is_thick_enough() {
    // 1/2 in at the front corner, 1 1/2 in after 8 ft; square to the side it never gets thicker.
    let (survey, finish) = (work(), level(0.5));
    let cuts = key_cuts(&survey, &finish, &line(&[(20.0, 0.0), (20.0, 24.0)]), inches(1.5), None).unwrap();
    assert_eq!(cuts.len(), 1);
    assert!(cuts[0].from.base().abs() < 1e-6 && (cuts[0].to.base() - 8.0 * FOOT).abs() < 1e-3);
    assert!(!cuts[0].runs_out && (cuts[0].width.base() - 20.0 * FOOT).abs() < 1e-4);
    // Whichever way the line runs.
    let back = key_cuts(&survey, &finish, &line(&[(20.0, 24.0), (20.0, 0.0)]), inches(1.5), None).unwrap();
    assert!(
        (back[0].from.base() - 16.0 * FOOT).abs() < 1e-3
            && (back[0].volume - cuts[0].volume).base().abs() < 1e-9
    );
}

#[test]
fn a_lone_place_and_places_that_are_thick_enough() {
    let survey = work();
    let at = |over: f64, least: f64| {
        key_cuts(&survey, &level(over), &line(&[(10.0, 0.0)]), inches(least), None).unwrap()
    };
    let key = at(0.5, 1.5)[0];
    assert!((key.depth.base() - INCH).abs() < 1e-6 && (key.width.base() - 8.0 * FOOT).abs() < 1e-3);
    assert!(at(1.5, 1.5).is_empty());
    assert!(
        key_cuts(&survey, &level(1.5), &line(&[(0.0, 0.0), (20.0, 0.0)]), inches(1.5), None)
            .unwrap()
            .is_empty()
    );
}

#[test]
fn a_line_inside_the_floor_is_no_edge() {
    let refused = |places: &[(f64, f64)]| {
        key_cuts(&work(), &level(0.5), &line(places), inches(1.5), None).unwrap_err().code
    };
    assert_eq!(refused(&[(6.0, 2.0), (15.0, 2.0)]), Code::LineNotOnEdge);
    assert_eq!(refused(&[(6.0, 0.0), (6.0, 24.0)]), Code::LineNotOnEdge);
    assert_eq!(refused(&[(0.0, 0.0), (20.0, 24.0)]), Code::LineNotOnEdge);
    assert_eq!(refused(&[]), Code::EmptyList);
}

/// A work with shots here and there, repeatable.
fn uneven(seed: u64) -> Survey {
    let mut state = seed;
    let mut random = move || {
        state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (state >> 40) as f64 / (1u64 << 24) as f64
    };
    let corners = [(0.0, 0.0), (20.0, 0.0), (20.0, 24.0), (0.0, 24.0)];
    let mut places: Vec<(f64, f64)> = corners.to_vec();
    for index in 0..40 {
        let (column, row) = (f64::from(index % 8), f64::from(index / 8));
        places.push((column * 2.5 + 0.3 + 1.6 * random(), row * 4.6 + 0.4 + 3.8 * random()));
    }
    let mut shot = |(x, y): (f64, f64)| {
        let z = 99.0 + 0.3 * random();
        serde_json::json!({"x": format!("{x} ft"), "y": format!("{y} ft"), "elevation": format!("{z} ft")})
    };
    let shots: Vec<_> = places.into_iter().map(&mut shot).collect();
    let input = serde_json::json!({
        "outline": {"corners": [{"x": "0 ft", "y": "0 ft"}, {"x": "20 ft", "y": "0 ft"}, {"x": "20 ft", "y": "24 ft"}, {"x": "0 ft", "y": "24 ft"}]},
        "shots": shots,
    });
    Survey::from_input(&crate::operation::record::parse(input).unwrap()).unwrap()
}

#[test]
fn over_any_surface_the_keys_are_as_deep_as_the_section_along_the_edge_is_thin() {
    let sides = [
        [(0.0, 0.0), (20.0, 0.0)],
        [(20.0, 0.0), (20.0, 24.0)],
        [(20.0, 24.0), (0.0, 24.0)],
        [(0.0, 24.0), (0.0, 0.0)],
    ];
    let mut met = [0; 2];
    for seed in 1..=12 {
        let (survey, finish) = (uneven(seed), level(4.0));
        for side in sides {
            let edge = line(&side);
            let thinnest = Section::along(&survey, &finish, &edge).unwrap().least.thickness.base();
            let (mut depth, mut length, mut volume) = (0.0, 0.0, 0.0);
            for eighths in [4, 8, 12, 16, 20, 24, 28] {
                let least = inches(f64::from(eighths) / 8.0);
                let cuts = key_cuts(&survey, &finish, &edge, least, None).unwrap();
                let deepest = cuts.iter().map(|cut| cut.depth.base()).fold(0.0, f64::max);
                let lacks = (least.base() - thinnest).max(0.0);
                assert!((deepest - lacks).abs() < 1e-5, "{seed} {side:?} {eighths}: {deepest} {lacks}");
                met[usize::from(!cuts.is_empty())] += 1;
                // More is asked, more is cut, volumes being estimates between sections; stretches stand in order and apart.
                let sum = |of: fn(&super::KeyCut) -> f64| cuts.iter().map(of).sum::<f64>();
                let now = (deepest, sum(|cut| (cut.to - cut.from).base()), sum(|cut| cut.volume.base()));
                assert!(now.0 >= depth && now.1 >= length - 1e-6 && now.2 >= volume * 0.9);
                assert!(cuts.windows(2).all(|pair| pair[0].to <= pair[1].from));
                assert!(cuts.iter().all(|cut| cut.width.base() > 0.0 && cut.deepest >= cut.depth));
                (depth, length, volume) = now;
            }
        }
    }
    assert!(met.iter().all(|times| *times > 20), "{met:?}");
}
