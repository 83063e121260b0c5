use super::support::*;

fn square() -> Vec<Shot> {
    shots(&[(0.0, 0.0, 1.0), (4.0, 0.0, 1.0), (4.0, 4.0, 1.0), (0.0, 4.0, 1.0)])
}

fn with(more: &[(f64, f64, f64)]) -> Vec<Shot> {
    [square(), shots(more)].concat()
}

#[test]
fn readings_at_one_place_become_their_mean_and_are_listed() {
    let surface =
        surface(&with(&[(2.0, 2.0, 1.003), (2.01, 2.0, 1.001), (2.0, 2.0, 1.002)]), &rectangle(4.0, 4.0));
    let [Note::Shared(place)] = surface.notes() else { panic!("{:?}", surface.notes()) };
    assert_eq!(place.shots, [4, 5, 6]);
    assert_close(place.height, 1.002, 1e-14);
    assert_close(place.at.x, 2.0 + 0.01 / 3.0, 1e-14);
    assert_close(place.difference, 0.002, 1e-9);
    assert_tiled(&surface);
    let highest = surface.whole().relief().expect("ground").highest;
    assert_eq!(highest.shot, Some(4));
    assert_close(highest.value, 1.002, 1e-14);
}

#[test]
fn two_heights_at_one_place_are_refused_naming_both() {
    let refused = refusal(&with(&[(2.0, 2.0, 1.00), (2.0, 2.005, 1.02)]), &rectangle(4.0, 4.0));
    let SurfaceError::TwoHeights { low_shot: 4, low, high_shot: 5, high, distance, .. } = refused else {
        panic!("{refused:?}")
    };
    assert_eq!((low, high), (1.00, 1.02));
    assert_close(distance, 0.005, 1e-9);
    // An eighth of an inch, the reading error, is still one height.
    assert_eq!(
        surface(&with(&[(2.0, 2.0, 1.0), (2.0, 2.0, 1.0 + 0.125 * INCH)]), &rectangle(4.0, 4.0))
            .notes()
            .len(),
        1
    );
}

#[test]
fn half_an_inch_apart_is_one_place_and_more_is_two() {
    let apart = |by: f64| {
        surface(&with(&[(2.0, 2.0, 1.0), (2.0 + by, 2.0, 1.001)]), &rectangle(4.0, 4.0)).notes().len()
    };
    assert_eq!(apart(0.5 * INCH), 1);
    assert_eq!(apart(0.51 * INCH), 0);
}

#[test]
fn two_heights_of_which_one_is_marked_as_a_step_are_refused() {
    let mut places = with(&[(2.0, 2.0, 1.0), (2.0, 2.0, 1.15)]);
    places[4].step = true;
    assert!(matches!(refusal(&places, &rectangle(4.0, 4.0)), SurfaceError::TwoHeights { .. }));
}

#[test]
fn a_long_chain_of_near_shots_is_no_place() {
    let chain: Vec<(f64, f64, f64)> = (0..9).map(|i| (1.0 + 0.01 * f64::from(i), 2.0, 1.0)).collect();
    let refused = refusal(&with(&chain), &rectangle(4.0, 4.0));
    let SurfaceError::Crowded { shots: 9, first, last, spread, .. } = refused else { panic!("{refused:?}") };
    assert!([first, last] == [4, 12] || [first, last] == [12, 4]);
    assert_close(spread, 0.08, 1e-9);
}

#[test]
fn a_hundred_thousand_shots_at_one_place_are_one() {
    let mut random = Random::new(4);
    let many: Vec<(f64, f64, f64)> = (0..100_000)
        .map(|_| {
            (2.0 + random.between(0.0, 1e-3), 2.0 + random.between(0.0, 1e-3), random.between(1.0, 1.003))
        })
        .collect();
    let surface = surface(&with(&many), &rectangle(4.0, 4.0));
    let [Note::Shared(place)] = surface.notes() else { panic!("one place") };
    assert_eq!(place.shots.len(), 100_000);
    assert_tiled(&surface);
    let same = vec![(2.0, 2.0, 1.0); 100_000];
    let other = super::support::surface(&with(&same), &rectangle(4.0, 4.0));
    assert_close(volume(&other), 16.0, 1e-12);
}

#[test]
fn joining_places_does_not_depend_on_the_order() {
    let mut random = Random::new(8);
    let mut places = with(&[]);
    for _ in 0..20 {
        let (x, y, z) = (random.between(0.5, 3.5), random.between(0.5, 3.5), random.between(1.0, 1.02));
        for _ in 0..3 {
            places.push(Shot::new(
                x + random.between(0.0, 0.003),
                y + random.between(0.0, 0.003),
                z + random.between(0.0, 0.002),
            ));
        }
    }
    let region = rectangle(4.0, 4.0);
    let first = surface(&places, &region);
    assert_eq!(first.notes().len(), 20);
    for _ in 0..5 {
        random.shuffle(&mut places);
        assert_eq!(volume(&surface(&places, &region)), volume(&first));
    }
}

#[test]
fn the_mean_of_readings_on_both_sides_of_the_outline_is_cut_off_at_it() {
    let mut places = with(&[(4.005, 2.0, 1.0), (3.999, 2.0, 1.001)]);
    places[1] = Shot::new(3.9, 0.1, 1.0);
    let surface = surface(&places, &rectangle(4.0, 4.0));
    assert_tiled(&surface);
    let right = surface.whole().triangles().flat_map(|triangle| triangle.corners).map(|corner| corner.at.x);
    assert_close(right.fold(0.0, f64::max), 4.0, 1e-14);
    assert!(surface.whole().shots().any(|(shot, ..)| shot == 4), "it still lies on the run");
}
