//! Under a finish of facets.

use super::support::{assert_near, metres, places, plane, random, shoelace, survey};
use crate::geometry::{Plane, Point, Region};
use crate::grade::finish::{Facet, Finish};
use crate::grade::sections::Section;
use crate::grade::thickness::Thickness;
use crate::grade::thickness_shapes::{Field, Levels, Side};
use crate::grade::zones::{ThicknessZones, Zone};
use crate::quantity::Typed;
use crate::survey::outline::Corner;

/// Two planes that fall 1 cm a metre to a valley along x = `valley`, there at a height.
fn valley(valley: f64, height: f64) -> Finish {
    let facet = |from: f64, to: f64, fall: f64| {
        let region = Region::rectangle(Point::new(from, -50.0), Point::new(to, 50.0)).expect("a region");
        Facet::new(region, Plane::about(Point::new(valley, 0.0), height, fall, 0.0))
    };
    Finish::faceted(vec![facet(-50.0, valley, -0.01), facet(valley, 50.0, 0.01)]).expect("a finish")
}

/// On a level slab 4 m by 2 m the overlay is 5 cm thick at the valley and 7 cm at both ends.
#[test]
fn a_valley_is_one_area_a_band_on_each_side_and_two_lines() {
    let shots = [[0.0, 0.0, 10.0], [4.0, 0.0, 10.0], [4.0, 2.0, 10.0], [0.0, 2.0, 10.0]];
    let survey = survey(&[[0.0, 0.0], [4.0, 0.0], [4.0, 2.0], [0.0, 2.0]], &[], &shots);
    let finish = valley(2.0, 10.05);
    let field = Field::thickness(&survey, &finish).expect("a field");
    let thin = field.areas(metres(0.06), Side::Thinner).expect("areas");
    let [part] = thin.parts.as_slice() else { panic!("{thin:?}") };
    assert_near(part.area.base(), 4.0, 1e-11);
    assert_near(part.volume.base(), 4.0 * 0.005, 1e-12);
    assert_near(part.extreme.thickness.base(), 0.05, 1e-12);
    let thick = field.areas(metres(0.06), Side::Thicker).expect("areas");
    assert_eq!(thick.parts.len(), 2);
    let lines = field.contours(&Levels::Listed(vec![metres(0.06)])).expect("contours");
    let xs: Vec<f64> = lines.iter().map(|line| line.places[0].x.base()).collect();
    assert_eq!(xs.len(), 2, "{xs:?}");
    assert_near(xs[0], 1.0, 1e-11);
    assert_near(xs[1], 3.0, 1e-11);
    // Along the valley the thickness only touches 5 cm.
    assert!(field.contours(&Levels::Listed(vec![metres(0.05)])).expect("contours").is_empty());

    let line = [Corner::new(metres(0.0), metres(0.5)), Corner::new(metres(4.0), metres(0.5))];
    let section = Section::along(&survey, &finish, &line).expect("a section");
    assert_near(section.net.base(), 4.0 * 0.06, 1e-12);
    assert_near(section.least.thickness.base(), 0.05, 1e-12);
    assert_near(section.least.distance.base(), 2.0, 1e-11);
    assert!(section.gaps.is_empty());

    let region = Region::rectangle(Point::new(1.0, 0.0), Point::new(4.0, 2.0)).expect("a region");
    let zones = [Zone { name: "right".to_owned(), region }];
    let found = ThicknessZones::of(&survey, &finish, &zones, None).expect("zones");
    assert_near(found.zones[0].thickness.net.base(), 2.0 * (0.055 + 2.0 * 0.06), 1e-12);
    assert_near(found.rest.expect("a rest").net.base(), 2.0 * 0.065, 1e-12);
}

#[test]
fn under_facets_too_shapes_hold_the_exact_figures() {
    for seed in 1..=30 {
        let (survey, one) = random(seed);
        let height = one.plane().expect("one plane").height_at(Point::new(4.0, 4.0));
        let finish = valley(4.03, height);
        let field = Field::thickness(&survey, &finish).expect("a field");
        let [least, greatest] = field.reach().map(Typed::base);
        for step in 0..=6 {
            let depth = metres(least + (greatest - least) * (f64::from(step) - 0.3) / 6.0);
            let exact = Thickness::of(&survey, &finish, Some(depth)).expect("a thickness");
            let all = exact.area.base();
            for side in [Side::Thinner, Side::Thicker] {
                let areas = field.areas(depth, side).expect("areas");
                let thinner = exact.thinner.expect("an area").base();
                let expected = if side == Side::Thinner { thinner } else { all - thinner };
                assert_near(areas.area.base(), expected, 1e-9 * all);
                assert_near(areas.parts.iter().map(|part| shoelace(&part.shape)).sum(), expected, 1e-9 * all);
                for part in &areas.parts {
                    let ring = places(&part.shape.outer);
                    assert!(!ring.iter().enumerate().any(|(n, at)| ring[..n].contains(at)), "survey {seed}");
                }
            }
        }
    }
}

#[test]
fn a_finish_that_leaves_a_hole_is_refused() {
    let (survey, _) = random(1);
    let region = Region::rectangle(Point::new(-50.0, -50.0), Point::new(3.0, 50.0)).expect("a region");
    let half = Finish::faceted(vec![Facet::new(region, Plane::new(30.0, 0.0, 0.0))]).expect("a finish");
    let code = crate::failure::Code::FacetsLeaveHole;
    assert_eq!(Field::thickness(&survey, &half).expect_err("refused").code, code);
    let line = [Corner::new(metres(0.0), metres(3.0)), Corner::new(metres(4.0), metres(3.0))];
    assert_eq!(Section::along(&survey, &half, &line).expect_err("refused").code, code);
    assert!(Field::thickness(&survey, &plane(30.0, 0.0, 0.0)).is_ok());
}
