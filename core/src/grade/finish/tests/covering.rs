use super::support::*;
use crate::failure::Code;
use crate::geometry::Plane;
use crate::grade::finish::Finish;
use crate::grade::thickness::Thickness;
use crate::quantity::Typed;

const SIX_BY_FOUR: [(f64, f64); 4] = [(0.0, 0.0), (6.0, 0.0), (6.0, 4.0), (0.0, 4.0)];

/// A pyramid is a third of its prism (Euclid XII 7): under four planes to a drain 0.2 m below the level edge the slab at the drain's
/// height is under the rest of the prism.
#[test]
fn four_planes_to_a_drain_leave_a_pyramid_out() {
    let slab = slab(&SIX_BY_FOUR, &[]);
    let finish = funnel([6.0, 4.0], [2.0, 1.0], 10.2, 10.0);
    let thickness = Thickness::of(&slab, &finish, None).unwrap();
    close(thickness.area.base(), 24.0);
    close(thickness.net.base(), 24.0 * 0.2 * 2.0 / 3.0);
    close(thickness.least.thickness.base(), 0.0);
    close(thickness.least.x.base(), 2.0);
    close(thickness.least.y.base(), 1.0);
    close(thickness.greatest.thickness.base(), 0.2);
}

#[test]
fn a_hole_between_facets_is_refused_with_its_area_and_place() {
    let slab = slab(&SIX_BY_FOUR, &[]);
    let level = Plane::new(10.1, 0.0, 0.0);
    let strip = |from: f64, to: f64| facet(&[(from, -1.0), (to, -1.0), (to, 5.0), (from, 5.0)], level);
    let finish = Finish::faceted(vec![strip(-1.0, 2.0), strip(3.0, 7.0)]).unwrap();
    refused(
        Thickness::of(&slab, &finish, None),
        Code::FacetsLeaveHole,
        "43.0556 ft2 of the work is under no facet, most of it about x 8' 2 3/8\", y 6' 6 3/4\" (2.500 m, 2.000 m)",
    );
    let far = Finish::faceted(vec![strip(100.0, 200.0)]).unwrap();
    refused(Thickness::of(&slab, &far, None), Code::FacetsLeaveHole, "258.3339 ft2");
    // What is missing over a column is not missing: there is no work.
    let columned = super::support::slab(&SIX_BY_FOUR, &[&[(1.5, 1.0), (3.5, 1.0), (3.5, 3.0), (1.5, 3.0)]]);
    let around = vec![
        strip(-1.0, 2.0),
        strip(3.0, 7.0),
        facet(&[(2.0, 5.0), (2.0, 2.9), (3.0, 2.9), (3.0, 5.0)], level),
        facet(&[(2.0, -1.0), (3.0, -1.0), (3.0, 1.1), (2.0, 1.1)], level),
    ];
    let thickness = Thickness::of(&columned, &Finish::faceted(around).unwrap(), None).unwrap();
    close(thickness.net.base(), 20.0 * 0.1);
}

#[test]
fn zones_of_a_faceted_finish_add_up() {
    let slab = slab(&SIX_BY_FOUR, &[]);
    let finish = funnel([6.0, 4.0], [2.0, 1.0], 10.2, 10.0);
    let whole = Thickness::of(&slab, &finish, None).unwrap();
    let zones = [
        region(&[(-1.0, -1.0), (2.5, -1.0), (1.0, 5.0), (-1.0, 5.0)]),
        region(&[(2.5, -1.0), (9.0, -1.0), (9.0, 9.0), (1.0, 9.0), (1.0, 5.0)]),
    ];
    let parts = zones.map(|zone| Thickness::within(&slab, &zone, &finish, None).unwrap());
    close(parts[0].area.base() + parts[1].area.base(), 24.0);
    close(parts[0].net.base() + parts[1].net.base(), whole.net.base());
    let outside = region(&[(20.0, 0.0), (21.0, 0.0), (21.0, 1.0)]);
    assert_eq!(Thickness::within(&slab, &outside, &finish, None).unwrap_err().code, Code::RegionOutside);
}

#[test]
fn a_facet_cut_in_two_changes_nothing() {
    let slab = slab(&SIX_BY_FOUR, &[]);
    let corners = [
        (0.0, 0.0, 10.3),
        (6.0, 0.0, 10.3),
        (6.0, 4.0, 10.3),
        (0.0, 4.0, 10.3),
        (2.0, 1.0, 10.1),
        // Halfway along the edge from corner 3 to the drain.
        (4.0, 2.5, 10.2),
    ];
    let whole = over(&corners, &[&[1, 2, 5], &[2, 3, 5], &[3, 4, 5], &[4, 1, 5]]).unwrap();
    let split = over(&corners, &[&[4, 1, 5], &[1, 2, 5], &[2, 6, 5], &[3, 4, 5], &[6, 2, 3]]).unwrap();
    let [a, b] = [whole, split].map(|finish| Thickness::of(&slab, &finish, None).unwrap());
    close(a.net.base(), b.net.base());
    close(a.area.base(), b.area.base());
    close(a.least.x.base(), b.least.x.base());
    close(a.least.y.base(), b.least.y.base());
}
