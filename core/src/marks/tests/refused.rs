//! What cannot be set out.

use super::support::*;
use crate::failure::Code;
use crate::geometry::Point;
use crate::marks::{Asked, Marks, PadsAsked, PointAsked, RailAsked, Sight};
use crate::quantity::{Elevation, Length, Typed};

#[track_caller]
fn refuses(change: impl FnOnce(&mut Asked), code: Code, path: &str) {
    let shop = shop();
    let mut asked = asked();
    change(&mut asked);
    refused(Marks::set_out(&shop, &to_front(&shop), &asked), code, path);
}

fn foot(x: f64, y: f64) -> Point {
    Point::new(x * 0.3048, y * 0.3048)
}

fn rail(places: &[(f64, f64)]) -> Vec<RailAsked> {
    vec![RailAsked { name: "r".to_owned(), places: places.iter().map(|&(x, y)| foot(x, y)).collect() }]
}

#[test]
fn values_that_cannot_be() {
    refuses(|asked| asked.line = Some(Elevation::from_base(f64::NAN)), Code::NotFinite, "line");
    refuses(|asked| asked.spacing = Length::from_base(0.0), Code::OutOfRange, "spacing");
    refuses(|asked| asked.step = Length::from_base(0.0), Code::OutOfRange, "round");
    refuses(|asked| asked.rod_length = length("90 ft"), Code::OutOfRange, "rod_length");
    refuses(|asked| asked.rail_offset = length("3 ft"), Code::OutOfRange, "rail_offset");
    refuses(|asked| asked.pads.inset = length("-1 in"), Code::OutOfRange, "pad_inset");
    refuses(|asked| asked.pads.screed = length("2 ft"), Code::OutOfRange, "screed_length");
    let nowhere = || Sight { name: "s".to_owned(), height: Elevation::from_base(f64::INFINITY) };
    refuses(|asked| asked.sights = vec![nowhere()], Code::NotFinite, "setups.sight");
    refuses(|asked| asked.rails = rail(&[(1.0, 1.0), (f64::NAN, 3.0)]), Code::NotFinite, "rails.x");
}

#[test]
fn pads_wider_than_the_screed_reaches() {
    let wide = |asked: &mut Asked| asked.pads = PadsAsked { spacing: Some(length("6.5 ft")), ..asked.pads };
    refuses(wide, Code::PadsTooFar, "pad_spacing");
    let shop = shop();
    let longer =
        PadsAsked { spacing: Some(length("6.5 ft")), screed: length("10 ft"), inset: length("1 ft") };
    assert!(Marks::set_out(&shop, &to_front(&shop), &Asked { pads: longer, ..asked() }).is_ok());
}

#[test]
fn places_off_the_walls_and_off_the_work() {
    let point = |x, y| vec![PointAsked { name: "p".to_owned(), at: foot(x, y) }];
    refuses(|asked| asked.points = point(4.0, 0.6), Code::PointOffWall, "points[0]");
    refuses(|asked| asked.points = point(-0.6, 9.0), Code::PointOffWall, "points[0]");
    refuses(|asked| asked.points = point(f64::NAN, 9.0), Code::NotFinite, "points.x");
    refuses(|asked| asked.rails = rail(&[(1.0, 1.0)]), Code::LineTooShort, "rails");
    refuses(|asked| asked.rails = rail(&[(1.0, 1.0), (1.0, 1.0)]), Code::LineTooShort, "rails");
    refuses(|asked| asked.rails = rail(&[(1.0, 1.0), (21.0, 1.0)]), Code::RailOutside, "rails");
    refuses(|asked| asked.rails = rail(&[(31.0, 1.0), (41.0, 1.0)]), Code::RailOutside, "rails");
}

#[test]
fn edges_that_are_not_there() {
    refuses(|asked| asked.forms = vec!["lawn".to_owned()], Code::EdgeUnknown, "forms.edge");
    refuses(|asked| asked.start_edge = Some("lawn".to_owned()), Code::EdgeUnknown, "start_edge");
}

#[test]
fn more_marks_than_anybody_sets_out() {
    let long = [(0.0, 0.0), (9000.0, 0.0), (9000.0, 8000.0), (0.0, 8000.0)];
    let slab = slab(&long, &[], &long.map(|(x, y)| (x, y, 99.0)));
    let level = crate::grade::finish::Finish::level(height("99.3 ft")).unwrap();
    refused(Marks::set_out(&slab, &level, &asked()), Code::TooManyStations, "screed_length");
    let fine = Asked { spacing: length("3 in"), ..asked() };
    refused(Marks::set_out(&slab, &level, &fine), Code::TooManyStations, "spacing");
}
