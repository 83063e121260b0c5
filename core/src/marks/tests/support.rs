//! Old slabs, finishes and what is asked of them.

use crate::failure::{Code, Failure};
use crate::grade::finish::{FacetByCorners, Finish, FinishCorner};
use crate::marks::{Asked, Mark, Marks};
use crate::operation::record::Record;
use crate::quantity::{Elevation, Length, Slope, Typed, read};
use crate::survey::Survey;
use serde_json::json;

pub(super) fn length(text: &str) -> Length {
    read(text).unwrap()
}

pub(super) fn height(text: &str) -> Elevation {
    read(text).unwrap()
}

pub(super) fn feet(length: Length) -> f64 {
    length.base() / 0.3048
}

pub(super) fn inches(length: Length) -> f64 {
    length.base() / 0.0254
}

/// An old slab over corners in feet, with holes; heights in feet at the corners and at places inside.
pub(super) fn slab(corners: &[(f64, f64)], holes: &[&[(f64, f64)]], shots: &[(f64, f64, f64)]) -> Survey {
    let edges: &[&str] = if corners.len() == 4 { &["front", "right", "back", "left"] } else { &[] };
    let place = |&(x, y): &(f64, f64)| json!({"x": format!("{x} ft"), "y": format!("{y} ft")});
    let shot = |&(x, y, z): &(f64, f64, f64)| json!({"x": format!("{x} ft"), "y": format!("{y} ft"), "elevation": format!("{z} ft"), "outside": true});
    let holes = holes.iter().enumerate().map(|(number, hole)| {
        json!({"name": format!("column {}", number + 1), "corners": hole.iter().map(place).collect::<Vec<_>>()})
    });
    let json = json!({
        "outline": {
            "corners": corners.iter().map(place).collect::<Vec<_>>(), "edges": edges, "holes": holes.collect::<Vec<_>>(),
        },
        "shots": shots.iter().map(shot).collect::<Vec<_>>(),
    });
    Survey::from_json(json).unwrap()
}

/// A shop of 20 by 32 ft, its old slab level at 99 ft.
pub(super) fn shop() -> Survey {
    let corners = [(0.0, 0.0), (20.0, 0.0), (20.0, 32.0), (0.0, 32.0)];
    slab(&corners, &[], &corners.map(|(x, y)| (x, y, 99.0)))
}

/// A floor over the shop that stands at 99.3 ft at the front and rises 1/8 in per ft.
pub(super) fn to_front(survey: &Survey) -> Finish {
    let fall: Slope = read("1/8 in/ft").unwrap();
    Finish::to_edge(survey.outline(), "front", height("99.3 ft"), fall).unwrap()
}

/// Four planes from a level perimeter to a drain.
pub(super) fn funnel([width, depth]: [f64; 2], [x, y]: [f64; 2], rim: f64, drain: f64) -> Finish {
    let corner = |(name, x, y, z): (&str, f64, f64, f64)| FinishCorner {
        name: Some(name.to_owned()),
        x: Length::from_base(x * 0.3048),
        y: Length::from_base(y * 0.3048),
        elevation: Elevation::from_base(z * 0.3048),
    };
    let corners = [
        ("a", 0.0, 0.0, rim),
        ("b", width, 0.0, rim),
        ("c", width, depth, rim),
        ("d", 0.0, depth, rim),
        ("drain", x, y, drain),
    ]
    .map(corner);
    let facet = |names: [&str; 3]| FacetByCorners {
        corners: names.map(str::to_owned).to_vec(),
        ..FacetByCorners::default()
    };
    let facets =
        [["a", "b", "drain"], ["b", "c", "drain"], ["c", "d", "drain"], ["d", "a", "drain"]].map(facet);
    Finish::from_corners(&corners, &facets).unwrap()
}

/// A line 4 ft over the old slab and a line of sight 5 ft over it.
pub(super) fn asked() -> Asked {
    let sight = crate::marks::Sight { name: "set-up".to_owned(), height: height("104 ft") };
    Asked { line: Some(height("103 ft")), sights: vec![sight], ..Asked::default() }
}

pub(super) fn at(marks: &Marks, x: f64, y: f64) -> &Mark {
    let near = |mark: &&Mark| (feet(mark.x) - x).abs() < 1e-6 && (feet(mark.y) - y).abs() < 1e-6;
    let found = marks.all().map(|(_, _, mark)| mark).find(near);
    found.unwrap_or_else(|| panic!("no mark at {x}, {y}"))
}

#[track_caller]
pub(super) fn refused<T: std::fmt::Debug>(result: Result<T, Box<Failure>>, code: Code, path: &str) {
    let failure = result.unwrap_err();
    assert_eq!((failure.code, failure.path.as_str()), (code, path), "{failure}");
    assert!(!failure.remedy.is_empty() && failure.line().len() <= 200, "{failure}");
}
