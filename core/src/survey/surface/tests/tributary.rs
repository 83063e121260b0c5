use super::support::*;

/// A yard with a notch, places shot twice, ground beyond the shots, a scattered and a gridded part.
fn yard() -> (Vec<Shot>, Region) {
    let mut random = Random::new(15);
    let outline = with_holes(
        &[(0.0, 0.0), (8.0, 0.0), (8.0, 3.0), (5.0, 3.0), (5.0, 6.0), (0.0, 6.0)],
        &[&[(2.0, 2.0), (2.4, 2.0), (2.4, 2.4)]],
    );
    let mut places = grid(&steps(0.4, 1.0, 4), &steps(0.4, 1.0, 3), |_, _| 0.0);
    for (x, y) in [
        (0.3, 4.1),
        (2.2, 3.9),
        (4.6, 4.4),
        (1.1, 5.7),
        (4.4, 5.6),
        (5.5, 0.6),
        (7.7, 0.4),
        (6.4, 2.0),
        (7.8, 2.7),
    ] {
        places.push(Shot::new(x, y, 0.0));
    }
    places.push(Shot::new(2.205, 3.9, 0.0));
    for shot in &mut places {
        shot.z = 1.0 + 0.01 * shot.x + random.between(0.0, 0.002);
    }
    (places, outline)
}

#[test]
fn one_unit_at_one_shot_adds_its_tributary_area_to_the_volume() {
    let (places, outline) = yard();
    let surface = surface(&places, &outline);
    let part = Region::rectangle(Point::new(1.0, 1.0), Point::new(6.0, 9.0)).expect("a rectangle");
    let cut = surface.within(&part).expect("a cut");
    let (whole, partly) = (surface.tributary_areas(surface.whole()), surface.tributary_areas(&cut));
    assert_eq!(whole.len(), places.len());
    assert_close(whole.iter().sum(), outline.area(), 1e-12);
    assert_close(partly.iter().sum(), cut.area(), 1e-12);
    let step = 1e-3;
    for shot in 0..places.len() {
        let mut lifted = places.clone();
        lifted[shot].z += step;
        let other = super::support::surface(&lifted, &outline);
        let gained = (volume(&other) - volume(&surface)) / step;
        assert!((gained - whole[shot]).abs() < 1e-9, "shot {shot}: {gained} and {}", whole[shot]);
        let gained = (other.within(&part).expect("a cut").integrals().height - cut.integrals().height) / step;
        assert!(
            (gained - partly[shot]).abs() < 1e-9,
            "shot {shot} in the part: {gained} and {}",
            partly[shot]
        );
    }
}

#[test]
fn in_one_cell_each_corner_counts_for_a_quarter() {
    let places = shots(&[(0.0, 0.0, 1.0), (4.0, 0.0, 1.0), (4.0, 2.0, 1.0), (0.0, 2.0, 1.1)]);
    let surface = surface(&places, &rectangle(4.0, 2.0));
    for area in surface.tributary_areas(surface.whole()) {
        assert_close(area, 2.0, 1e-12);
    }
}
