//! Small helpers of the tests of standing water.

pub(super) use crate::geometry::Point;
pub(super) use crate::geometry::random::Random;
pub(super) use crate::quantity::{Length, Typed};
pub(super) use crate::survey::low_spots::{Drain, EdgeState, EdgeStated, Edges, Ponds};
pub(super) use crate::survey::old_slab::{Marks, Settings, Shots, Survey};
pub(super) use crate::survey::outline::{Corner, Hole, Outline};
pub(super) use crate::survey::surface::Shot;

pub(super) fn corner(x: f64, y: f64) -> Corner {
    Corner::new(Length::from_base(x), Length::from_base(y))
}

pub(super) fn outline(corners: &[(f64, f64)], holes: &[(&str, &[(f64, f64)])]) -> Outline {
    let places = |ring: &[(f64, f64)]| ring.iter().map(|&(x, y)| corner(x, y)).collect::<Vec<_>>();
    let holes = holes.iter().map(|&(name, ring)| Hole { name: name.to_owned(), corners: places(ring) });
    let outline = Outline::from_corners(&places(corners), &[]).expect("an outline");
    outline.with_holes(holes.collect()).expect("an outline with holes")
}

pub(super) fn survey(outline: Outline, shots: &[(f64, f64, f64)]) -> Survey {
    let shots = shots.iter().map(|&(x, y, z)| Shot::new(x, y, z)).collect();
    let settings = Settings { beyond_allowed: true, ..Settings::default() };
    Survey::new(outline, Shots::Scattered(Marks { shots, names: Vec::new() }), settings).expect("a survey")
}

pub(super) fn edges(walled: &[&str], drains: &[&[(f64, f64)]]) -> Edges {
    let stated = |&edge: &&str| EdgeStated { edge: edge.to_owned(), state: EdgeState::Walled };
    let drain =
        |at: &&[(f64, f64)]| Drain { name: None, at: at.iter().map(|&(x, y)| corner(x, y)).collect() };
    Edges { stated: walled.iter().map(stated).collect(), drains: drains.iter().map(drain).collect() }
}

/// All ponds, however shallow.
pub(super) fn ponds(survey: &Survey, edges: &Edges) -> Ponds {
    Ponds::of_survey(survey, edges, Length::from_base(0.0)).expect("ponds")
}

#[track_caller]
pub(super) fn assert_close(value: f64, expected: f64) {
    assert!((value - expected).abs() <= 1e-9 * expected.abs().max(1.0), "{value} is not {expected}");
}
