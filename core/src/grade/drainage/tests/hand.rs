//! Small finishes whose water was followed by hand.

use crate::geometry::Plane;
use crate::grade::drainage::*;
use crate::grade::finish::tests::support::{close, funnel, height, metres, over, slab};
use crate::quantity::{RainIntensity, Ratio};
use crate::survey::low_spots::{Drain, EdgeState, EdgeStated, Edges};

const OBLONG: [(f64, f64); 4] = [(0.0, 0.0), (4.0, 0.0), (4.0, 2.0), (0.0, 2.0)];

fn asked(walled: &[&str], drains: &[(&str, &[(f64, f64)])]) -> Asked {
    let stated = |edge: &&str| EdgeStated { edge: (*edge).to_owned(), state: EdgeState::Walled };
    let drain = |(name, at): &(&str, &[(f64, f64)])| Drain {
        name: Some((*name).to_owned()),
        at: at.iter().map(|&(x, y)| Corner::new(metres(x), metres(y))).collect(),
    };
    let edges =
        Edges { stated: walled.iter().map(stated).collect(), drains: drains.iter().map(drain).collect() };
    Asked { edges, ..Asked::default() }
}

/// The catchments by the words of their endings.
fn catchments(found: &Drainage) -> Vec<(String, f64)> {
    found.catchments.iter().map(|of| (found.endings[of.ending].words(), of.area.base())).collect()
}

#[track_caller]
fn assert_catchments(found: &Drainage, expected: &[(&str, f64)]) {
    let got = catchments(found);
    assert_eq!(got.len(), expected.len(), "{got:?}");
    for ((words, area), (of, wanted)) in got.iter().zip(expected) {
        assert_eq!(words, of);
        close(*area, *wanted);
    }
}

fn plane(b: f64, c: f64) -> Finish {
    Finish::of(Plane::new(10.1, b, c)).unwrap()
}

#[test]
fn a_plane_square_to_an_edge_drains_over_it() {
    let survey = slab(&OBLONG, &[]);
    let found = Drainage::of(&survey, &plane(0.0, 0.02), &asked(&[], &[])).unwrap();
    assert_catchments(&found, &[("over side 1", 8.0)]);
    close(found.catchments[0].longest.base(), 2.0);
    let facet = &found.facets[0];
    assert_eq!(
        (facet.toward.as_str(), facet.course, facet.judged),
        ("towards side 1", Course::Out, Judged::Pass)
    );
    close(facet.fall.base(), 0.02);
    assert!(found.faulty_parts().is_empty());
}

/// Down along the diagonal of a square metre: what lies below the line back from the corner leaves over the right, the rest over the back.
#[test]
fn a_skewed_plane_is_parted_by_the_line_through_its_low_corner() {
    let survey = slab(&OBLONG, &[]);
    let found = Drainage::of(&survey, &plane(-0.01, -0.01), &asked(&[], &[])).unwrap();
    assert_catchments(&found, &[("over side 3", 6.0), ("over side 2", 2.0)]);
    assert_eq!(found.facets[0].toward, "between side 2 and side 3");
    let parts = found.catchment_parts();
    assert_eq!(parts.len(), 2);
    assert_eq!((parts[1].of, parts[1].shape.outer.len()), (1, 3));
    close(parts[1].area.base(), 2.0);
    // From (0, 0) to (2, 2).
    close(found.catchments[0].longest.base(), 8.0_f64.sqrt());
}

#[test]
fn water_runs_along_the_foot_of_a_wall_to_where_it_can_leave() {
    let survey = slab(&OBLONG, &[]);
    let found = Drainage::of(&survey, &plane(-0.01, -0.01), &asked(&["side 2"], &[])).unwrap();
    assert_catchments(&found, &[("over side 3", 8.0)]);
    // From (2, 0) to the wall is nothing; from (4, 0) 2 along the wall; from (2, 0) down to (4, 2) the same line.
    close(found.catchments[0].longest.base(), 8.0_f64.sqrt());
    let held = Drainage::of(&survey, &plane(-0.01, -0.01), &asked(&["side 2", "side 3"], &[])).unwrap();
    assert_eq!(held.endings[held.catchments[0].ending].end, End::LowSpot);
    close(held.held().base(), 8.0);
    assert_eq!((held.facets[0].course, held.facets[0].judged), (Course::Held, Judged::Fail));
    let parts = held.faulty_parts();
    assert_eq!((parts.len(), parts[0].of), (1, (0, Fault::Held)));
    close(parts[0].area.base(), 8.0);
    assert!(held.notes().iter().any(|note| note.code == NoteCode::WaterHeld));
}

#[test]
fn water_stands_along_a_level_wall_that_it_cannot_get_away_from() {
    let survey = slab(&OBLONG, &[]);
    let held =
        Drainage::of(&survey, &plane(0.0, 0.02), &asked(&["side 1", "side 2", "side 4"], &[])).unwrap();
    assert_catchments(&held, &[("stands along side 1", 8.0)]);
    // With the right side open it spreads to there; with both, each takes the half next to it.
    let right = Drainage::of(&survey, &plane(0.0, 0.02), &asked(&["side 1", "side 4"], &[])).unwrap();
    assert_catchments(&right, &[("over side 2", 8.0)]);
    close(right.catchments[0].longest.base(), 6.0);
    let both = Drainage::of(&survey, &plane(0.0, 0.02), &asked(&["side 1"], &[])).unwrap();
    assert_eq!(both.held().base(), 0.0);
    let areas: Vec<f64> = both.catchments.iter().map(|of| of.area.base()).collect();
    assert_eq!(areas.len(), 2);
    areas.iter().for_each(|area| close(*area, 4.0));
}

/// A rectangle 10 by 8 that hangs to a drain at (6, 3), 0.12 deep. From the far corner (0, 8) the water of the left facet runs
/// square to the left wall, so along the back wall's valley line to the drain.
#[test]
fn a_funnel_drains_wholly_to_its_drain() {
    let survey = slab(&[(0.0, 0.0), (10.0, 0.0), (10.0, 8.0), (0.0, 8.0)], &[]);
    let finish = funnel([10.0, 8.0], [6.0, 3.0], 10.12, 10.0);
    let mut asked = asked(&["side 1", "side 2", "side 3", "side 4"], &[("gully", &[(6.0, 3.0)])]);
    asked.rain = Some(RainIntensity::from_base(1e-5));
    asked.coefficient = Ratio::from_base(0.9);
    let found = Drainage::of(&survey, &finish, &asked).unwrap();
    assert_catchments(&found, &[("to gully", 80.0)]);
    close(found.catchments[0].flow.unwrap().base(), 80.0 * 0.9e-5);
    assert_eq!(found.facets.len(), 4);
    for (facet, fall) in found.facets.iter().zip([0.12 / 3.0, 0.12 / 4.0, 0.12 / 5.0, 0.12 / 6.0]) {
        close(facet.fall.base(), fall);
        assert_eq!(facet.course, Course::Out);
    }
    // The corner (0, 8) lies 6 and 5 from the drain: its facets fall away from the wall each, the valley is their line.
    close(found.catchments[0].longest.base(), 61.0_f64.sqrt());
    assert!(found.paths.iter().all(|path| path.drop.base() > 0.0));
    // Without the drain the same water stands in the middle.
    let open = Drainage::of(&survey, &finish, &Asked::default()).unwrap();
    assert_eq!(open.endings[open.catchments[0].ending].end, End::LowSpot);
    assert_eq!(open.endings[open.catchments[0].ending].at, Some(Corner::new(metres(6.0), metres(3.0))));
}

/// Two planes to a valley at x = 2 that falls to the front.
#[test]
fn water_runs_down_a_valley() {
    let survey = slab(&OBLONG, &[]);
    let corners = [
        (0.0, 0.0, 10.04),
        (2.0, 0.0, 10.0),
        (4.0, 0.0, 10.04),
        (4.0, 2.0, 10.06),
        (2.0, 2.0, 10.02),
        (0.0, 2.0, 10.06),
    ];
    let finish = over(&corners, &[&[1, 2, 5, 6], &[2, 3, 4, 5]]).unwrap();
    let mut asked = asked(&[], &[]);
    asked.starts = vec![Corner::new(metres(0.5), metres(1.5)), Corner::new(metres(2.0), metres(1.0))];
    let found = Drainage::of(&survey, &finish, &asked).unwrap();
    assert_catchments(&found, &[("over side 1", 8.0)]);
    // Each facet falls 0.02 towards the valley and 0.01 along it: 1.5 across take 0.75 along, then 0.75 down the valley.
    let path = &found.paths[0];
    assert_eq!((path.start, path.places.len()), (Start::Given, 3));
    close(path.places[1].at.x.base(), 2.0);
    close(path.places[1].at.y.base(), 0.75);
    close(path.length.base(), 1.5_f64.hypot(0.75) + 0.75);
    close(path.drop.base(), 1.5 * 0.02 + 1.5 * 0.01);
    close(found.paths[1].length.base(), 1.0);
}

/// From a crown water leaves on both sides; a place on the ridge goes over the first facet.
#[test]
fn a_ridge_parts_the_water() {
    let survey = slab(&OBLONG, &[]);
    let corners = [
        (0.0, 0.0, 10.0),
        (2.0, 0.0, 10.04),
        (4.0, 0.0, 10.0),
        (4.0, 2.0, 10.0),
        (2.0, 2.0, 10.04),
        (0.0, 2.0, 10.0),
    ];
    let finish = over(&corners, &[&[1, 2, 5, 6], &[2, 3, 4, 5]]).unwrap();
    let mut asked = asked(&[], &[]);
    asked.starts = vec![Corner::new(metres(2.0), metres(1.0))];
    let found = Drainage::of(&survey, &finish, &asked).unwrap();
    let mut list = catchments(&found);
    list.sort_by(|a, b| a.0.cmp(&b.0));
    assert_eq!(
        list.iter().map(|(words, _)| words.as_str()).collect::<Vec<_>>(),
        ["over side 2", "over side 4"]
    );
    list.iter().for_each(|(_, area)| close(*area, 4.0));
    assert_eq!(found.endings[found.paths[0].ending].words(), "over side 4");
}

/// A trench across the fall takes what comes down to it, the rest leaves over the front.
#[test]
fn a_drain_along_a_line_takes_what_crosses_it() {
    let survey = slab(&OBLONG, &[]);
    let whole = asked(&[], &[("trench", &[(0.0, 0.5), (4.0, 0.5)])]);
    let found = Drainage::of(&survey, &plane(0.0, 0.02), &whole).unwrap();
    assert_catchments(&found, &[("to trench", 6.0), ("over side 1", 2.0)]);
    let half = asked(&[], &[("trench", &[(0.0, 0.5), (2.0, 0.5)])]);
    let found = Drainage::of(&survey, &plane(0.0, 0.02), &half).unwrap();
    assert_catchments(&found, &[("over side 1", 5.0), ("to trench", 3.0)]);
}

#[test]
fn level_ground_keeps_its_water() {
    let survey = slab(&OBLONG, &[]);
    let finish = Finish::level(height(10.1)).unwrap();
    let found = Drainage::of(&survey, &finish, &asked(&[], &[])).unwrap();
    assert_catchments(&found, &[("stands on the floor, which is level", 8.0)]);
    assert_eq!((found.facets[0].course, found.least_found().base()), (Course::Level, 0.0));
    assert_eq!(found.faulty_parts()[0].of, (0, Fault::Level));
}

/// Exactly the least fall meets it, a hair less does not; a remembered number fails nothing.
#[test]
fn the_least_fall_itself_is_enough() {
    let survey = slab(&OBLONG, &[]);
    let judged = |fall: f64, surface: Surface| {
        let asked = Asked { surface, ..asked(&[], &[]) };
        Drainage::of(&survey, &plane(0.0, fall), &asked).unwrap().judged()
    };
    assert_eq!(judged(0.02, Surface::Outdoors), Judged::Pass);
    assert_eq!(judged(0.02 * (1.0 - 1e-8), Surface::Outdoors), Judged::Fail);
    assert_eq!(judged(0.25 / 12.0, Surface::Broomed), Judged::Pass);
    assert_eq!(judged(0.0208, Surface::Broomed), Judged::ConfirmLocally);
    let given = Asked { least_fall: Some(Slope::from_base(0.03)), ..asked(&[], &[]) };
    assert_eq!(Drainage::of(&survey, &plane(0.0, 0.0299), &given).unwrap().judged(), Judged::Fail);
}

/// A facet said to fall to the back that falls to the front.
#[test]
fn a_facet_that_falls_the_wrong_way_is_told() {
    let survey = slab(&OBLONG, &[]);
    let corners: Vec<_> = OBLONG.iter().map(|&(x, y)| crate::geometry::Point::new(x, y)).collect();
    let region = crate::geometry::Region::new(corners, Vec::new()).unwrap();
    let facet = |to: &str| {
        crate::grade::finish::Facet::new(region.clone(), Plane::new(10.1, 0.0, 0.02))
            .named("all")
            .falling_to(to)
    };
    let found = |to: &str| {
        Drainage::of(&survey, &Finish::faceted(vec![facet(to)]).unwrap(), &asked(&[], &[])).unwrap().facets[0]
            .course
    };
    assert_eq!(
        (found("side 3"), found("side 1"), found("the brook")),
        (Course::WrongWay, Course::Out, Course::Out)
    );
}

/// A level rim about the drain drains to it, and no fall is asked of it.
#[test]
fn the_level_rim_of_a_drain_drains() {
    let survey = slab(&[(0.0, 0.0), (6.0, 0.0), (6.0, 6.0), (0.0, 6.0)], &[]);
    let corners = [
        (0.0, 0.0, 10.1),
        (6.0, 0.0, 10.1),
        (6.0, 6.0, 10.1),
        (0.0, 6.0, 10.1),
        (2.5, 2.5, 10.0),
        (3.5, 2.5, 10.0),
        (3.5, 3.5, 10.0),
        (2.5, 3.5, 10.0),
    ];
    let facets: [&[usize]; 5] = [&[1, 2, 6, 5], &[2, 3, 7, 6], &[3, 4, 8, 7], &[4, 1, 5, 8], &[5, 6, 7, 8]];
    let finish = over(&corners, &facets).unwrap();
    let walls = ["side 1", "side 2", "side 3", "side 4"];
    let found = Drainage::of(&survey, &finish, &asked(&walls, &[("gully", &[(3.0, 3.0)])])).unwrap();
    assert_catchments(&found, &[("to gully", 36.0)]);
    assert!(found.facets[4].is_rim());
    close(found.least_found().base(), 0.04);
    assert_eq!((found.judged(), found.faulty_parts().len()), (Judged::Pass, 0));
    let dry = Drainage::of(&survey, &finish, &asked(&walls, &[])).unwrap();
    assert_catchments(&dry, &[("stands on facet 5, which is level", 36.0)]);
}
