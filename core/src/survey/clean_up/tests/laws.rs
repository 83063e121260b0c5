//! Laws that hold for every slab and every plane.

use super::support::*;
use crate::grade::finish::Finish;
use crate::grade::thickness::Thickness;
use crate::quantity::Elevation;

const L: &[(f64, f64)] = &[(0.0, 0.0), (9.0, 0.0), (9.0, 4.0), (5.0, 4.0), (5.0, 8.0), (0.0, 8.0)];

fn slab(random: &mut Random) -> Survey {
    let inside = outline(L);
    let mut shots: Vec<(f64, f64, f64)> = Vec::new();
    while shots.len() < 30 {
        let at = random.point(9.0, 8.0);
        if inside.region().contains(at)
            && shots.iter().all(|shot| at.distance(Point::new(shot.0, shot.1)) > 0.2)
        {
            shots.push((at.x, at.y, random.between(1.0, 1.05)));
        }
    }
    survey(L, &shots)
}

fn plane(random: &mut Random) -> Plane {
    Plane::about(
        Point::new(4.0, 3.0),
        random.between(1.0, 1.05),
        random.between(-0.005, 0.005),
        random.between(-0.005, 0.005),
    )
}

fn zones() -> [Option<Outline>; 3] {
    [
        None,
        Some(outline(&[(1.0, 1.0), (8.0, 2.0), (4.0, 7.0)])),
        Some(outline(&[(-1.0, -1.0), (3.0, -1.0), (3.0, 3.0), (6.0, 3.0), (6.0, 5.0), (-1.0, 5.0)])),
    ]
}

#[test]
fn what_is_ground_off_is_missing_from_the_slab_and_to_be_poured() {
    let mut random = Random::new(61);
    for _ in 0..8 {
        let old = slab(&mut random);
        let finish = Finish::level(Elevation::from_base(1.15)).expect("a finish");
        let net = |survey: &Survey| Thickness::of(survey, &finish, None).expect("a thickness").net.base();
        let mut moved = 0.0;
        for zone in zones() {
            for up in [false, true] {
                let targets = everywhere(plane(&mut random));
                let change = Change { zone: zone.clone(), ..if up { fill(targets) } else { grind(targets) } };
                let new = after(&old, change);
                let sign = if up { -1.0 } else { 1.0 };
                assert_close(net(&new), net(&old) + sign * last(&new).volume.base());
                assert_close(new.surface().whole().area(), old.surface().whole().area());
                moved += last(&new).volume.base();
            }
        }
        assert!(moved > 0.01, "hardly anything was changed");
    }
}

#[test]
fn grinding_twice_is_grinding_once_and_filling_first_leaves_the_plane() {
    let mut random = Random::new(62);
    for _ in 0..6 {
        let (old, to) = (slab(&mut random), plane(&mut random));
        let once = after(&old, grind(everywhere(to)));
        let twice = after(&once, grind(everywhere(to)));
        assert!(last(&twice).volume.base() < 1e-12);
        assert_close(under(&twice), under(&once));
        let both = after(&after(&old, fill(everywhere(to))), grind(everywhere(to)));
        for triangle in both.surface().whole().triangles() {
            for corner in triangle.corners {
                assert!((corner.height - to.height_at(corner.at)).abs() < 1e-9);
            }
        }
        let volumes: Vec<f64> = both.changes().iter().map(|done| done.volume.base()).collect();
        assert_close(under(&both), under(&old) + volumes[0] - volumes[1]);
    }
}

#[test]
fn filled_ponds_take_as_much_as_the_water_and_leave_none() {
    let mut random = Random::new(63);
    for _ in 0..10 {
        let old = slab(&mut random);
        let water = ponds(&old);
        let filled = after(&old, fill_ponds());
        assert_close(last(&filled).volume.base(), water.volume().base());
        assert_close(last(&filled).area.base(), water.area().base());
        assert!(ponds(&filled).volume().base() < 1e-9);
    }
}

/// Ground levels stay joined: what is cut off the triangles leaves no gap, and steps only where zones end.
#[test]
fn a_changed_surface_is_still_joined() {
    let mut random = Random::new(64);
    for zone in zones() {
        let new = after(&slab(&mut random), Change { zone, ..grind(everywhere(plane(&mut random))) });
        let network = crate::survey::surface::weld([new.surface().whole()]).network;
        let length: f64 = network
            .border()
            .iter()
            .map(|side| {
                let [from, to] = side.map(|corner| network.corners()[corner as usize].at);
                from.distance(to)
            })
            .sum();
        assert_close(length, new.outline().region().perimeter());
    }
}

#[test]
fn shots_that_were_changed_tell_their_new_heights_and_the_areas_they_count_for_shrink() {
    let mut random = Random::new(65);
    let (old, to) = (slab(&mut random), plane(&mut random));
    let new = after(&old, grind(everywhere(to)));
    for ((shot, [x, y], was), (same, _, is)) in old.heights().zip(new.heights()) {
        let limit = to.height_at(Point::new(x.base(), y.base()));
        assert_eq!(shot, same);
        assert_close(is.base(), was.base().min(limit));
    }
    let areas = new.surface().tributary_areas(new.surface().whole());
    assert_close(areas.iter().sum(), old.surface().whole().area() - last(&new).area.base());
}
