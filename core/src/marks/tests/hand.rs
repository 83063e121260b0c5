//! Marks that anybody can check with a tape.

use super::support::*;
use crate::geometry::Point;
use crate::marks::{Asked, MarkKind, Marks, Material, PointAsked, RailAsked, Reach, Sight};
use crate::note::NoteCode;
use crate::quantity::Typed;

fn foot(x: f64, y: f64) -> Point {
    Point::new(x * 0.3048, y * 0.3048)
}

#[test]
fn the_walk_goes_round_with_the_work_on_the_left() {
    let shop = shop();
    let marks = Marks::set_out(&shop, &to_front(&shop), &asked()).unwrap();
    let names: Vec<&str> = marks.edges.iter().map(|edge| edge.name.as_str()).collect();
    assert_eq!(names, ["front", "right", "back", "left"]);
    let counts: Vec<usize> = marks.edges.iter().map(|edge| edge.marks.len()).collect();
    // Corners and each 4 ft: 0, 4, 8, 12, 16 of 20 ft; 0 to 28 of 32 ft.
    assert_eq!(counts, [5, 8, 5, 8]);
    assert_eq!(marks.edges[1].end.number, marks.edges[2].marks[0].number);
    assert_eq!(marks.edges[3].end.number, 1);
    assert_eq!(feet(marks.edges[3].end.along.unwrap()), 32.0);
    let started = Asked { start_edge: Some("Back".to_owned()), ..asked() };
    let started = Marks::set_out(&shop, &to_front(&shop), &started).unwrap();
    assert_eq!(started.edges[0].name, "back");
    assert_eq!((feet(started.edges[0].marks[0].x), feet(started.edges[0].marks[0].y)), (20.0, 32.0));
}

#[test]
fn an_outline_given_clockwise_is_walked_the_same_way_round() {
    let corners = [(0.0, 0.0), (0.0, 32.0), (20.0, 32.0), (20.0, 0.0)];
    let slab = slab(&corners, &[], &corners.map(|(x, y)| (x, y, 99.0)));
    let marks = Marks::set_out(&slab, &to_front(&shop()), &asked()).unwrap();
    // Its first run goes up the left wall; with the work on the left it is walked down.
    let names: Vec<&str> = marks.edges.iter().map(|edge| edge.name.as_str()).collect();
    assert_eq!(names, ["front", "left", "back", "right"]);
    let first = &marks.edges[0].marks[0];
    assert_eq!((feet(first.x), feet(first.y)), (0.0, 32.0));
}

#[test]
fn heights_rods_and_checks_of_a_plane() {
    let shop = shop();
    let marks = Marks::set_out(&shop, &to_front(&shop), &asked()).unwrap();
    // 99.3 ft + 16 ft at 1/8 in per ft: 2 in higher.
    let side = at(&marks, 20.0, 16.0);
    let (rod, below) =
        (marks.levels.rod(side.height).unwrap(), marks.levels.below_line(side.height).unwrap());
    assert!((inches(rod.exact) - (4.7 * 12.0 - 2.0)).abs() < 1e-9);
    assert!((inches(below.exact) - (3.7 * 12.0 - 2.0)).abs() < 1e-9);
    assert!((inches(side.over_old_slab) - (0.3 * 12.0 + 2.0)).abs() < 1e-9);
    // 54.4 in: 54 3/8 in is nearer than 54 1/2.
    assert!((inches(rod.marked) - 54.375).abs() < 1e-9);
    assert_eq!(feet(marks.rod_on_line().unwrap()).round(), 1.0);
    assert!(marks.edges[0].level && marks.edges[2].level && !marks.edges[1].level);
    let front = &marks.edges[0];
    assert!(
        (inches(front.least.height) - 3.6).abs() < 1e-9 && (inches(front.greatest.height) - 3.6).abs() < 1e-9
    );
}

#[test]
fn half_a_step_goes_to_the_higher_floor_whichever_way_it_is_told() {
    let shop = shop();
    let finish = crate::grade::finish::Finish::level(height("1191 1/16 in")).unwrap();
    let marks = Marks::set_out(&shop, &finish, &asked()).unwrap();
    let mark = at(&marks, 0.0, 0.0);
    let rod = marks.levels.rod(mark.height).unwrap();
    let below = marks.levels.below_line(mark.height).unwrap();
    assert!((inches(rod.marked) - 56.875).abs() < 1e-9, "{}", inches(rod.marked));
    // Sight and line differ by whole steps: both tell one height.
    assert!((inches(rod.departure() - below.departure())).abs() < 1e-9);
    assert!((inches(marks.greatest_departure()) - 0.0625).abs() < 1e-9);
}

#[test]
fn named_places_breaks_and_corners_fall_together() {
    let shop = shop();
    let finish = funnel([20.0, 32.0], [8.0, 12.0], 99.5, 99.3);
    let point = |name: &str, x, y| PointAsked { name: name.to_owned(), at: foot(x, y) };
    let points = vec![point("left jamb", 4.0, 0.25), point("right jamb", 16.0, 0.0), point("post", 0.0, 0.0)];
    let marks = Marks::set_out(&shop, &finish, &Asked { points, ..asked() }).unwrap();
    let jamb = at(&marks, 4.0, 0.0);
    assert_eq!((jamb.kind, jamb.name.as_deref()), (MarkKind::Point, Some("left jamb")));
    let corner = at(&marks, 0.0, 0.0);
    assert_eq!((corner.kind, corner.name.as_deref()), (MarkKind::Corner, Some("post")));
    assert_eq!(marks.edges[0].marks.len(), 5);
    assert!(marks.edges.iter().all(|edge| edge.level));
    // The hips run from the corners to the drain.
    assert_eq!(marks.lines.len(), 4);
    let drain = at(&marks, 8.0, 12.0);
    assert_eq!(drain.kind, MarkKind::FacetCorner);
    assert!(
        marks
            .lines
            .iter()
            .all(|line| line.marks.contains(&Some(drain.number)) && line.marks.iter().all(Option::is_some))
    );
    assert!(marks.pads.iter().any(|pad| pad.kind == MarkKind::FacetLine));
}

#[test]
fn a_valley_breaks_the_walls_it_ends_at() {
    let shop = shop();
    let outline = shop.outline();
    let finish = valley(outline);
    let marks = Marks::set_out(&shop, &finish, &asked()).unwrap();
    let breaks: Vec<(f64, f64)> = marks
        .edges
        .iter()
        .flat_map(|edge| &edge.marks)
        .filter(|mark| mark.kind == MarkKind::Break)
        .map(|mark| (feet(mark.x), feet(mark.y)))
        .collect();
    assert_eq!(breaks.len(), 2, "{breaks:?}");
    assert!(breaks.iter().all(|(x, _)| (x - 10.0).abs() < 1e-9));
    let [line] = marks.lines.as_slice() else { panic!("{:?}", marks.lines) };
    assert!((feet(line.length) - 32.0).abs() < 1e-9 && line.marks.iter().all(Option::is_some));
    // The strips of front and back bend there, too.
    assert_eq!(marks.edges[0].rips.len(), 2);
    assert_eq!(marks.edges[1].rips.len(), 1);
}

/// Two planes to a valley at x = 10 ft that falls to the front.
fn valley(_: &crate::survey::outline::Outline) -> crate::grade::finish::Finish {
    use crate::grade::finish::{FacetByCorners, Finish, FinishCorner};
    let corner = |(name, x, y, z): (&str, f64, f64, f64)| FinishCorner {
        name: Some(name.to_owned()),
        x: length(&format!("{x} ft")),
        y: length(&format!("{y} ft")),
        elevation: height(&format!("{z} ft")),
    };
    let corners = [
        ("a", 0.0, 0.0, 99.4),
        ("m", 10.0, 0.0, 99.3),
        ("b", 20.0, 0.0, 99.4),
        ("c", 20.0, 32.0, 99.6),
        ("n", 10.0, 32.0, 99.5),
        ("d", 0.0, 32.0, 99.6),
    ]
    .map(corner);
    let facet = |names: [&str; 4]| FacetByCorners {
        corners: names.map(str::to_owned).to_vec(),
        ..FacetByCorners::default()
    };
    Finish::from_corners(&corners, &[facet(["a", "m", "n", "d"]), facet(["m", "b", "c", "n"])]).unwrap()
}

#[test]
fn pads_of_the_shop_stand_six_feet_apart() {
    let shop = shop();
    let marks = Marks::set_out(&shop, &to_front(&shop), &asked()).unwrap();
    let places: Vec<(f64, f64)> =
        marks.pads.iter().map(|pad| (feet(pad.x).round(), feet(pad.y).round())).collect();
    assert_eq!(places.len(), 4 * 6);
    assert_eq!(&places[..5], [(1.0, 1.0), (7.0, 1.0), (13.0, 1.0), (19.0, 1.0), (19.0, 7.0)]);
    assert_eq!(places[23], (1.0, 31.0));
    assert_eq!(marks.pads[0].number, marks.edges.iter().map(|edge| edge.marks.len()).sum::<usize>() + 1);
}

#[test]
fn forms_and_rails_are_told_by_their_tops() {
    let shop = shop();
    let rail = RailAsked { name: "middle".to_owned(), places: vec![foot(10.0, 0.0), foot(10.0, 32.0)] };
    let asked = Asked {
        forms: vec!["front".to_owned()],
        rails: vec![rail],
        rail_offset: length("1/2 in"),
        ..asked()
    };
    let marks = Marks::set_out(&shop, &to_front(&shop), &asked).unwrap();
    let materials: Vec<Material> = marks.edges.iter().map(|edge| edge.material).collect();
    assert_eq!(materials, [Material::Form, Material::Strip, Material::Strip, Material::Strip]);
    let rail = &marks.rails[0];
    assert_eq!(rail.marks.len(), 9);
    assert!((inches(rail.marks[4].over_old_slab) - (3.6 + 2.0 + 0.5)).abs() < 1e-9);
    assert_eq!(feet(rail.marks[8].along.unwrap()), 32.0);
    let text = marks.text();
    assert!(
        text.contains("front (form: mark its top), 20' 0\"") && text.contains("middle: the top of the rail"),
        "{text}"
    );
}

#[test]
fn strips_follow_the_old_slab() {
    let corners = [(0.0, 0.0), (20.0, 0.0), (20.0, 32.0), (0.0, 32.0)];
    // The left wall's slab dips 1 in half way.
    let shots = [
        (0.0, 0.0, 99.0),
        (20.0, 0.0, 99.0),
        (20.0, 32.0, 99.0),
        (0.0, 32.0, 99.0),
        (0.0, 16.0, 99.0 - 1.0 / 12.0),
    ];
    let slab = slab(&corners, &[], &shots);
    let marks =
        Marks::set_out(&slab, &crate::grade::finish::Finish::level(height("99.25 ft")).unwrap(), &asked())
            .unwrap();
    let left = &marks.edges[3];
    assert_eq!(left.rips.len(), 2);
    assert!(
        (inches(left.rips[0].height_from) - 3.0).abs() < 1e-9
            && (inches(left.rips[0].height_to) - 4.0).abs() < 1e-9
    );
    assert!(
        (feet(left.greatest.along) - 16.0).abs() < 1e-9 && (inches(left.greatest.height) - 4.0).abs() < 1e-9
    );
    assert!(marks.text().contains("LEVEL"));
}

#[test]
fn two_diagonals_of_four_corners_and_a_fan_of_more() {
    let shop = shop();
    let marks = Marks::set_out(&shop, &to_front(&shop), &asked()).unwrap();
    let lengths: Vec<f64> = marks.diagonals.iter().map(|diagonal| feet(diagonal.length)).collect();
    assert!(lengths.len() == 2 && lengths.iter().all(|length| (length - 20.0_f64.hypot(32.0)).abs() < 1e-9));
    let corners = [(0.0, 0.0), (20.0, 0.0), (20.0, 10.0), (10.0, 10.0), (10.0, 32.0), (0.0, 32.0)];
    let slab = slab(&corners, &[], &corners.map(|(x, y)| (x, y, 99.0)));
    let level = crate::grade::finish::Finish::level(height("99.25 ft")).unwrap();
    let marks = Marks::set_out(&slab, &level, &asked()).unwrap();
    assert_eq!(marks.diagonals.len(), 3);
    // No pad in the notch, none nearer than 1 ft to a wall.
    assert!(marks.pads.iter().all(|pad| !(feet(pad.x) > 9.0 + 1e-9 && feet(pad.y) > 9.0 + 1e-9)));
}

#[test]
fn a_second_set_up_and_marks_out_of_its_reach() {
    let shop = shop();
    let low = Sight { name: "low".to_owned(), height: height("99.35 ft") };
    let asked =
        Asked { sights: vec![asked().sights[0].clone(), low], rod_length: length("4.6 ft"), ..asked() };
    let marks = Marks::set_out(&shop, &to_front(&shop), &asked).unwrap();
    let told = |index: usize, x, y| {
        let sight = &marks.levels.sights[index];
        marks.levels.reach(marks.levels.rod_from(sight, at(&marks, x, y).height))
    };
    assert_eq!(told(0, 0.0, 0.0), Reach::BeyondRod);
    assert_eq!(told(0, 0.0, 32.0), Reach::Within);
    assert_eq!(told(1, 0.0, 0.0), Reach::Within);
    assert_eq!(told(1, 0.0, 32.0), Reach::AboveSight);
    let notes = marks.notes();
    let unread = notes.iter().filter(|note| note.code == NoteCode::MarksOutOfReach).count();
    assert_eq!(unread, 2, "{notes:?}");
}

#[test]
fn without_line_and_level_elevations_are_told() {
    let shop = shop();
    let asked = Asked { line: None, sights: Vec::new(), ..asked() };
    let marks = Marks::set_out(&shop, &to_front(&shop), &asked).unwrap();
    assert!(marks.notes().iter().any(|note| note.code == NoteCode::MarksWithoutLevel));
    assert_eq!(marks.greatest_departure().base(), 0.0);
    assert!(marks.text().contains("elevation 99.300 ft"), "{}", marks.text());
}

#[test]
fn a_floor_under_the_old_slab_is_noted() {
    let shop = shop();
    let level = crate::grade::finish::Finish::level(height("98.99 ft")).unwrap();
    let marks = Marks::set_out(&shop, &level, &asked()).unwrap();
    let notes = marks.notes();
    let under = notes.iter().find(|note| note.code == NoteCode::MarksUnderOldSlab).unwrap();
    assert!(under.text.contains("1/8 in") && under.text.contains("and "), "{}", under.text);
}
