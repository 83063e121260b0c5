use super::support::*;
use crate::failure::Code;
use crate::geometry::Plane;
use crate::grade::finish::{FacetByCorners, Finish, FinishCorner};

const LEVEL: Plane = Plane::new(10.0, 0.0, 0.0);

#[test]
fn a_facet_out_of_one_plane_is_refused_with_the_gap() {
    let quarter = 0.25 * 0.0254;
    let corners = [(0.0, 0.0, 1.0), (2.0, 0.0, 1.0), (2.0, 2.0, 1.0), (0.0, 2.0, 1.0 + quarter)];
    refused(
        over(&corners, &[&[1, 2, 3, 4]]),
        Code::FacetWarped,
        "corner 4 stands 1/4\" (0.00635 m) over the plane of corner 1, corner 2, corner 3",
    );
    // As triangles the same corners are lawful.
    assert!(over(&corners, &[&[1, 2, 3], &[3, 4, 1]]).is_ok());
    // Rounding is no warp.
    let corners = [(0.0, 0.0, 0.1), (0.3, 0.0, 0.2), (0.3, 0.7, 0.9), (0.0, 0.7, 0.8)];
    assert!(over(&corners, &[&[1, 2, 3, 4]]).is_ok());
}

#[test]
fn facets_of_two_heights_along_an_edge_are_refused_with_the_greatest_gap() {
    let left = facet(&[(0.0, 0.0), (2.0, 0.0), (2.0, 3.0), (0.0, 3.0)], LEVEL);
    let rising =
        facet(&[(4.0, 0.0), (2.0, 0.0), (2.0, 3.0), (4.0, 3.0)], Plane::new(10.0, 0.0, 0.0127 / 3.0));
    refused(
        Finish::faceted(vec![left.clone().named("left"), rising]),
        Code::FacetsApart,
        "`left` and facet 2 stand 1/2\" (0.01270 m) apart at x 6' 6 3/4\", y 9' 10 1/8\" (2.000 m, 3.000 m)",
    );
    // A long edge against a short one.
    let short = facet(&[(2.0, 1.0), (3.0, 1.0), (3.0, 2.0), (2.0, 2.0)], Plane::new(10.001, 0.0, 0.0));
    refused(Finish::faceted(vec![short, left]), Code::FacetsApart, "apart");
}

#[test]
fn facets_that_overlap_are_refused_with_the_area() {
    let square = |x: f64| facet(&[(x, 0.0), (x + 2.0, 0.0), (x + 2.0, 2.0), (x, 2.0)], LEVEL);
    refused(
        Finish::faceted(vec![square(0.0), square(1.5)]),
        Code::FacetsOverlap,
        "facet 1 and facet 2 overlap by 10.7639 ft2 about x 5' 8 7/8\", y 3' 3 3/8\" (1.750 m, 1.000 m)",
    );
    refused(Finish::faceted(vec![square(0.0), square(0.0)]), Code::FacetsOverlap, "overlap");
    assert!(Finish::faceted(vec![square(0.0), square(2.0)]).is_ok());
}

#[test]
fn corners_that_bound_no_facet_are_refused() {
    let corners = [(0.0, 0.0, 1.0), (2.0, 0.0, 1.0), (2.0, 2.0, 1.0), (0.0, 2.0, 1.0), (1.0, 0.001, 1.0)];
    refused(
        over(&corners, &[&[1, 3, 2, 4]]),
        Code::FacetShape,
        "corner 1 to corner 3 meets corner 2 to corner 4",
    );
    refused(over(&corners, &[&[1, 2]]), Code::FacetShape, "2 corners");
    refused(over(&corners, &[&[1, 1, 2]]), Code::FacetShape, "corner 1 and corner 1 are both at");
    refused(over(&corners, &[&[1, 2, 5]]), Code::FacetShape, "a needle");
    refused(over(&corners, &[&[1, 2, 9]]), Code::CornerUnknown, "\"9\"");
    refused(over(&corners, &[&[1, 2, 0]]), Code::CornerUnknown, "\"0\"");
    refused(over(&corners, &[]), Code::EmptyList, "no facets");
}

#[test]
fn names_stand_for_one_thing() {
    let corner = |name: &str| FinishCorner {
        name: Some(name.to_owned()),
        x: metres(0.0),
        y: metres(0.0),
        elevation: height(1.0),
    };
    refused(Finish::from_corners(&[corner("A"), corner("a ")], &[]), Code::KeyRepeated, "already corner 1");
    let unknown = FacetByCorners { corners: vec!["AB".to_owned()], ..FacetByCorners::default() };
    let failure = Finish::from_corners(&[corner("ABC")], &[unknown]).unwrap_err();
    assert_eq!((failure.code, failure.remedy.as_str()), (Code::CornerUnknown, "did you mean ABC?"));
    let square = facet(&[(0.0, 0.0), (2.0, 0.0), (2.0, 2.0), (0.0, 2.0)], LEVEL).named("one");
    refused(Finish::faceted(vec![square.clone(), square]), Code::KeyRepeated, "already facet 1");
}

#[test]
fn heights_out_of_reach_are_refused() {
    let steep = facet(&[(0.0, 0.0), (2.0, 0.0), (2.0, 2.0), (0.0, 2.0)], Plane::new(10.0, 1e5, 0.0));
    assert_eq!(Finish::faceted(vec![steep]).unwrap_err().code, Code::OutOfRange);
    let nan = facet(&[(0.0, 0.0), (2.0, 0.0), (2.0, 2.0), (0.0, 2.0)], Plane::new(10.0, f64::NAN, 0.0));
    assert_eq!(Finish::faceted(vec![nan]).unwrap_err().code, Code::NotFinite);
    let corners = [(0.0, 0.0, 1.0), (2.0, 0.0, f64::NAN), (2.0, 2.0, 1.0)];
    assert_eq!(over(&corners, &[&[1, 2, 3]]).unwrap_err().code, Code::NotFinite);
    let corners = [(0.0, 0.0, 1.0), (f64::INFINITY, 0.0, 1.0), (2.0, 2.0, 1.0)];
    assert_eq!(over(&corners, &[&[1, 2, 3]]).unwrap_err().code, Code::NotFinite);
}
