//! Which triangles become one polygon.

use super::support::*;

/// How many triangles a surface over the hull of some places has: two fewer than its corners in ordinary triangles,
/// one for each corner where they form a polygon.
fn triangles(places: &[Shot]) -> usize {
    let mut order = places.to_vec();
    let count = places.len() as f64;
    let (x, y) =
        (places.iter().map(|s| s.x).sum::<f64>() / count, places.iter().map(|s| s.y).sum::<f64>() / count);
    order.sort_by(|a, b| (a.y - y).atan2(a.x - x).total_cmp(&(b.y - y).atan2(b.x - x)));
    let outline =
        Region::new(order.iter().map(|s| Point::new(s.x, s.y)).collect(), Vec::new()).expect("a region");
    let surface = surface(places, &outline);
    assert_tiled(&surface);
    surface.whole().len()
}

fn on_circle(count: u32, radius: impl Fn(u32) -> f64) -> Vec<Shot> {
    (0..count)
        .map(|i| {
            let angle = 0.3 + f64::from(i) * std::f64::consts::TAU / f64::from(count);
            Shot::new(5.0 + radius(i) * angle.cos(), 5.0 + radius(i) * angle.sin(), 1.0)
        })
        .collect()
}

#[test]
fn places_on_a_circle_within_a_ten_millionth_of_its_radius_are_one_polygon() {
    assert_eq!(triangles(&on_circle(12, |_| 4.0)), 12);
    assert_eq!(triangles(&on_circle(12, |i| if i == 5 { 4.0 * (1.0 + 0.5e-7) } else { 4.0 })), 12);
    // Just outside the circle a place has its own ear, the other eleven remain one polygon.
    assert_eq!(triangles(&on_circle(12, |i| if i == 5 { 4.0 * (1.0 + 4e-7) } else { 4.0 })), 12);
    assert_eq!(triangles(&on_circle(4, |i| if i == 1 { 4.0 * (1.0 + 4e-7) } else { 4.0 })), 2);
}

#[test]
fn a_long_chain_that_leaves_its_circle_is_no_polygon() {
    // A spiral: each place is nearly on the circle of its neighbours, the last far from that of the first.
    let spiral = on_circle(240, |i| 4.0 * (1.0 + 2e-8 * f64::from(i)));
    let expected = triangles(&spiral);
    let mut random = Random::new(6);
    let mut shuffled = spiral.clone();
    for _ in 0..3 {
        random.shuffle(&mut shuffled);
        assert_eq!(triangles(&shuffled), expected);
    }
    assert_eq!(expected, 238);
}
