//! A level old slab, and facets over it.

use crate::failure::{Code, Failure};
use crate::geometry::{Plane, Point, Region};
use crate::grade::finish::{Facet, FacetByCorners, Finish, FinishCorner};
use crate::quantity::{Elevation, Length, Typed};
use crate::survey::Survey;

pub(in crate::grade) fn at(x: f64, y: f64) -> Point {
    Point::new(x, y)
}

pub(in crate::grade) fn metres(x: f64) -> Length {
    Length::from_base(x)
}

pub(in crate::grade) fn height(z: f64) -> Elevation {
    Elevation::from_base(z)
}

pub(in crate::grade) fn region(corners: &[(f64, f64)]) -> Region {
    Region::new(corners.iter().map(|&(x, y)| at(x, y)).collect(), Vec::new()).unwrap()
}

pub(in crate::grade) fn facet(corners: &[(f64, f64)], plane: Plane) -> Facet {
    Facet::new(region(corners), plane)
}

/// Corners `x, y, z`, and facets by their numbers from 1 on.
pub(in crate::grade) fn over(
    corners: &[(f64, f64, f64)],
    facets: &[&[usize]],
) -> Result<Finish, Box<Failure>> {
    let corner = |&(x, y, z): &(f64, f64, f64)| FinishCorner {
        name: None,
        x: metres(x),
        y: metres(y),
        elevation: height(z),
    };
    let facet = |numbers: &&[usize]| FacetByCorners {
        corners: numbers.iter().map(ToString::to_string).collect(),
        ..FacetByCorners::default()
    };
    let corners: Vec<FinishCorner> = corners.iter().map(corner).collect();
    Finish::from_corners(&corners, &facets.iter().map(facet).collect::<Vec<_>>())
}

/// A pyramid hanging from a level rectangle: facets run from each side to a drain.
pub(in crate::grade) fn funnel([width, depth]: [f64; 2], [x, y]: [f64; 2], rim: f64, drain: f64) -> Finish {
    let corners = [(0.0, 0.0, rim), (width, 0.0, rim), (width, depth, rim), (0.0, depth, rim), (x, y, drain)];
    over(&corners, &[&[1, 2, 5], &[2, 3, 5], &[3, 4, 5], &[4, 1, 5]]).unwrap()
}

/// A level old slab at 10 m over a polygon, shot at its bounding corners, with holes.
pub(in crate::grade) fn slab(corners: &[(f64, f64)], holes: &[&[(f64, f64)]]) -> Survey {
    let place = |&(x, y): &(f64, f64)| serde_json::json!({"x": format!("{x} m"), "y": format!("{y} m")});
    let shot = |&(x, y): &(f64, f64)| serde_json::json!({"x": format!("{x} m"), "y": format!("{y} m"), "elevation": "10 m", "outside": true});
    let holes: Vec<_> = (holes.iter().enumerate())
        .map(|(number, hole)| {
            serde_json::json!({
                "name": format!("column {number}"), "corners": hole.iter().map(place).collect::<Vec<_>>()
            })
        })
        .collect();
    let json = serde_json::json!({
        "outline": {"corners": corners.iter().map(place).collect::<Vec<_>>(), "holes": holes},
        "shots": corners.iter().map(shot).collect::<Vec<_>>(),
    });
    <Survey as crate::operation::record::Record>::from_json(json).unwrap()
}

#[track_caller]
pub(in crate::grade) fn refused<T: std::fmt::Debug>(
    result: Result<T, Box<Failure>>,
    code: Code,
    written: &str,
) {
    let failure = result.unwrap_err();
    assert_eq!(failure.code, code, "{failure}");
    assert!(failure.written.contains(written), "{failure}");
    assert!(failure.line().len() <= 200, "{}", failure.line());
}

#[track_caller]
pub(in crate::grade) fn close(value: f64, expected: f64) {
    assert!((value - expected).abs() <= 1e-12 * expected.abs().max(1.0), "{value} is not {expected}");
}
