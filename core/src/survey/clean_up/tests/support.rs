//! Small helpers of the tests of clean-up.

pub(super) use crate::geometry::random::Random;
pub(super) use crate::geometry::{Plane, Point};
pub(super) use crate::quantity::{Length, Typed};
pub(super) use crate::survey::Survey;
pub(super) use crate::survey::clean_up::{Change, Changed, Done, Target};
pub(super) use crate::survey::low_spots::{Edges, Ponds};
pub(super) use crate::survey::old_slab::{Marks, Settings, Shots};
pub(super) use crate::survey::outline::{Corner, Outline};
pub(super) use crate::survey::surface::Shot;

pub(super) fn outline(corners: &[(f64, f64)]) -> Outline {
    let corner = |&(x, y): &(f64, f64)| Corner::new(Length::from_base(x), Length::from_base(y));
    Outline::from_corners(&corners.iter().map(corner).collect::<Vec<_>>(), &[]).expect("an outline")
}

pub(super) fn survey(corners: &[(f64, f64)], shots: &[(f64, f64, f64)]) -> Survey {
    let shots = shots.iter().map(|&(x, y, z)| Shot::new(x, y, z)).collect();
    let settings = Settings { beyond_allowed: true, ..Settings::default() };
    let shots = Shots::Scattered(Marks { shots, names: Vec::new() });
    Survey::new(outline(corners), shots, settings).expect("a survey")
}

pub(super) fn everywhere(plane: Plane) -> Vec<Target> {
    vec![Target { plane, region: None }]
}

pub(super) fn level(height: f64) -> Vec<Target> {
    everywhere(Plane::new(height, 0.0, 0.0))
}

pub(super) fn grind(targets: Vec<Target>) -> Change {
    Change { done: Done::Grind(targets), zone: None }
}

pub(super) fn fill(targets: Vec<Target>) -> Change {
    Change { done: Done::Fill(targets), zone: None }
}

pub(super) fn fill_ponds() -> Change {
    Change {
        done: Done::FillPonds { edges: Edges::default(), shallowest: Length::from_base(0.0) },
        zone: None,
    }
}

pub(super) fn after(survey: &Survey, change: Change) -> Survey {
    survey.after(change).expect("a changed survey")
}

pub(super) fn last(survey: &Survey) -> &Changed {
    survey.changes().last().expect("a change")
}

/// The volume under the surface.
pub(super) fn under(survey: &Survey) -> f64 {
    survey.surface().whole().integrals().height
}

pub(super) fn ponds(survey: &Survey) -> Ponds {
    Ponds::of_survey(survey, &Edges::default(), Length::from_base(0.0)).expect("ponds")
}

#[track_caller]
pub(super) fn assert_close(value: f64, expected: f64) {
    assert!((value - expected).abs() <= 1e-9 * expected.abs().max(1.0), "{value} is not {expected}");
}
