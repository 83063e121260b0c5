//! The floor under leaves that swing in, against places tried all over their sectors.

use crate::clearance::swing::{Leaves, highest};
use crate::geometry::{Plane, Point, Region};
use crate::grade::finish::Finish;
use crate::quantity::{Length, Typed};

fn square() -> Region {
    let corner = |x: f64, y: f64| Point::new(x, y);
    Region::new(vec![corner(0.0, 0.0), corner(10.0, 0.0), corner(10.0, 10.0), corner(0.0, 10.0)], Vec::new())
        .unwrap()
}

/// The highest of many places of the sectors.
fn tried(finish: &Finish, jambs: [Point; 2], leaves: Leaves) -> f64 {
    let [from, to] = jambs;
    let radius = from.distance(to) / if leaves == Leaves::Pair { 2.0 } else { 1.0 };
    let mut highest = f64::NEG_INFINITY;
    for (hinge, sign) in [(from, 1.0), (to, -1.0)] {
        for ring in 0..=60 {
            for step in 0..=180 {
                let (r, a) = (radius * f64::from(ring) / 60.0, f64::from(step).to_radians() / 2.0);
                let (x, y) = (hinge.x + sign * r * a.cos(), hinge.y + r * a.sin());
                let here = finish.height_at(Length::from_base(x), Length::from_base(y));
                highest = highest.max(here.map_or(f64::NEG_INFINITY, Typed::base));
            }
        }
    }
    highest
}

#[test]
fn on_a_plane_the_highest_place_is_uphill_on_the_arc() {
    let jambs = [Point::new(3.0, 0.0), Point::new(7.0, 0.0)];
    for [b, c] in [[0.0, 0.01], [0.01, 0.01], [-0.02, 0.01], [0.0, -0.01], [0.03, 0.0]] {
        let finish = Finish::of(Plane::new(5.0, b, c)).unwrap();
        for leaves in [Leaves::Pair, Leaves::One] {
            let found = highest(&square(), &finish, jambs, leaves).unwrap();
            let wanted = tried(&finish, jambs, leaves);
            assert!((found - wanted).abs() < 2e-5 && found >= wanted - 1e-12, "{found} {wanted}");
        }
    }
}

/// A floor that rises to a ridge 1 m inside and falls behind it.
#[test]
fn a_ridge_under_the_leaf_is_found() {
    use crate::grade::finish::Facet;
    let region = |from: f64, to: f64| {
        let corner = |x: f64, y: f64| Point::new(x, y);
        Region::new(
            vec![corner(0.0, from), corner(10.0, from), corner(10.0, to), corner(0.0, to)],
            Vec::new(),
        )
        .unwrap()
    };
    let facets = vec![
        Facet::new(region(0.0, 1.0), Plane::new(5.0, 0.0, 0.02)),
        Facet::new(region(1.0, 10.0), Plane::new(5.04, 0.0, -0.02)),
    ];
    let finish = Finish::faceted(facets).unwrap();
    let jambs = [Point::new(3.0, 0.0), Point::new(7.0, 0.0)];
    let found = highest(&square(), &finish, jambs, Leaves::Pair).unwrap();
    assert!((found - 5.02).abs() < 1e-9, "{found}");
}
