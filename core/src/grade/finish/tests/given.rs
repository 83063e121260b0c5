use super::support::*;
use crate::geometry::Plane;
use crate::grade::finish::Finish;
use crate::operation::record::Record;
use crate::quantity::Typed;

#[test]
fn corners_with_heights_make_facets_that_meet() {
    let finish = funnel([6.0, 4.0], [3.0, 1.0], 10.2, 10.1);
    assert_eq!((finish.facets().len(), finish.plane()), (4, None));
    close(finish.height_at(metres(3.0), metres(1.0)).unwrap().base(), 10.1);
    close(finish.height_at(metres(3.0), metres(2.5)).unwrap().base(), 10.15);
    assert_eq!(finish.height_at(metres(6.5), metres(1.0)), None);
    close(finish.fall().base(), 0.1);
    close(finish.moved_up(metres(0.5)).height_at(metres(3.0), metres(1.0)).unwrap().base(), 10.6);
    assert_eq!(finish.facet_at(metres(3.0), metres(3.0)), Some(2));
    assert_eq!(finish.facet_name(2), "facet 3");
    let downhill = finish.facets()[0].downhill().unwrap();
    assert!(downhill[0].abs() < 1e-12 && downhill[1] > 0.999);
}

#[test]
fn the_canonical_form_gives_the_same_numbers() {
    let finish = funnel([6.1, 4.3], [3.0, 1.0 / 3.0], 10.2, 10.1);
    let json = Record::to_json(&finish);
    let again = Finish::from_json(json.clone()).unwrap();
    assert_eq!(again, finish);
    assert_eq!(Record::to_json(&again), json);
}

#[test]
fn a_file_calls_corners_by_name_or_number_and_facets_may_have_a_plane_of_their_own() {
    let json = serde_json::json!({
        "corners": [
            {"name": "A", "x": "0 m", "y": "0 m", "elevation": "10 m"}, {"x": "2 m", "y": "0 m", "elevation": "9.9 m"},
            {"x": "2 m", "y": "3 m", "elevation": "9.9 m"}, {"name": "D", "x": "0 m", "y": "3 m", "elevation": "10 m"}],
        "facets": [
            {"name": "left", "falls_to": "valley", "corners": ["a", 2, "3", "D"]},
            {"outline": [{"x": "2 m", "y": "3 m"}, {"x": "2 m", "y": "0 m"}, {"x": "4 m", "y": "0 m"}, {"x": "4 m", "y": "3 m"}],
             "points": [{"x": "2 m", "y": "0 m", "elevation": "9.9 m"}, {"x": "2 m", "y": "3 m", "elevation": "9.9 m"},
                {"x": "6 m", "y": "0 m", "elevation": "10.1 m"}]}]
    });
    let finish = Finish::from_json(json).unwrap();
    assert_eq!(finish.facets()[0].falls_to(), Some("valley"));
    close(finish.height_at(metres(3.0), metres(1.0)).unwrap().base(), 9.95);
    assert_eq!(Finish::from_json(Record::to_json(&finish)).unwrap(), finish);
}

#[test]
fn a_long_edge_may_meet_two_short_ones() {
    let corners = [
        (0.0, 0.0, 10.0),
        (4.0, 0.0, 10.0),
        (4.0, 2.0, 10.2),
        (1.0, 2.0, 10.2),
        (0.0, 2.0, 10.2),
        (1.0, 5.0, 10.2),
    ];
    let corners = [&corners[..], &[(0.0, 5.0, 10.2), (4.0, 5.0, 10.2)]].concat();
    let finish = over(&corners, &[&[1, 2, 3, 5], &[5, 4, 6, 7], &[3, 8, 6, 4]]).unwrap();
    assert_eq!(finish.facets().len(), 3);
}

#[test]
fn one_plane_answers_everywhere() {
    let finish = Finish::of(Plane::new(10.0, 0.01, 0.0)).unwrap();
    assert!(finish.facets().is_empty() && finish.facet_at(metres(0.0), metres(0.0)).is_none());
    close(finish.height_at(metres(1e3), metres(0.0)).unwrap().base(), 20.0);
    close(finish.moved_up(metres(-1.0)).height_at(metres(0.0), metres(0.0)).unwrap().base(), 9.0);
}
