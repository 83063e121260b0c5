use super::support::*;
use crate::survey::points::Points;

fn points(places: &[[f64; 3]]) -> Points {
    let mut points = Points::default();
    places.iter().for_each(|&place| points.push(place));
    points
}

fn made(places: &[[f64; 3]], faces: &[[u32; 3]], region: &Region) -> Result<Surface, SurfaceError> {
    Surface::from_faces(&points(places), faces, region, &Rules::DEFAULT)
}

/// A crooked mesh of whole numbers over `-2..12` by `-2..9`, every cell cut by a diagonal chosen at random.
fn crooked(random: &mut Random) -> (Vec<[f64; 3]>, Vec<[u32; 3]>) {
    let (columns, rows) = (8_u32, 6_u32);
    let mut places = Vec::new();
    for row in 0..rows {
        for column in 0..columns {
            let off = |random: &mut Random| f64::from(random.below(11) as u32) / 16.0;
            let (x, y) = (2.0 * f64::from(column) - 2.5, 2.0 * f64::from(row) - 2.5);
            places.push([x + off(random), y + off(random), f64::from(random.below(64) as u32) / 64.0]);
        }
    }
    let mut faces = Vec::new();
    for row in 0..rows - 1 {
        for column in 0..columns - 1 {
            let a = row * columns + column;
            let (b, c, d) = (a + 1, a + 1 + columns, a + columns);
            let cut = if random.below(2) == 0 { [[a, b, c], [a, c, d]] } else { [[a, b, d], [d, b, c]] };
            // Either way round.
            faces.extend(cut.map(|[p, q, r]| if random.below(2) == 0 { [p, q, r] } else { [p, r, q] }));
        }
    }
    (places, faces)
}

/// Area and volume of faces over a rectangle, each clipped and summed by itself.
fn direct(places: &[[f64; 3]], faces: &[[u32; 3]], low: Point, high: Point) -> (f64, f64) {
    let (mut area, mut volume) = (0.0, 0.0);
    for face in faces {
        let mut polygon: Vec<[f64; 3]> = face.iter().map(|&corner| places[corner as usize]).collect();
        for (axis, limit, sense) in [(0, low.x, 1.0), (0, high.x, -1.0), (1, low.y, 1.0), (1, high.y, -1.0)] {
            let depth = |place: &[f64; 3]| sense * (place[axis] - limit);
            let mut kept = Vec::new();
            for (index, from) in polygon.iter().enumerate() {
                let to = &polygon[(index + 1) % polygon.len()];
                if depth(from) >= 0.0 {
                    kept.push(*from);
                }
                if (depth(from) > 0.0) != (depth(to) > 0.0) && depth(from) != 0.0 && depth(to) != 0.0 {
                    let share = depth(from) / (depth(from) - depth(to));
                    kept.push([0, 1, 2].map(|i| from[i] + share * (to[i] - from[i])));
                }
            }
            polygon = kept;
        }
        for pair in polygon.windows(2).skip(1) {
            let [a, b, c] = [polygon[0], pair[0], pair[1]];
            let piece = 0.5 * ((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])).abs();
            area += piece;
            volume += piece * (a[2] + b[2] + c[2]) / 3.0;
        }
    }
    (area, volume)
}

#[test]
fn faces_are_kept_as_they_are_and_agree_with_their_own_integrals() {
    let mut random = Random::new(71);
    for _ in 0..40 {
        let (places, faces) = crooked(&mut random);
        let surface = made(&places, &faces, &rectangle(8.0, 6.0)).expect("a surface");
        let (area, expected) = direct(&places, &faces, Point::default(), Point::new(8.0, 6.0));
        assert_close(area, 48.0, 1e-12);
        assert_close(volume(&surface), expected, 1e-12);
        assert_close(surface.whole().area_of(Ground::Surveyed), 48.0, 1e-12);
        assert!(surface.notes().is_empty());
        assert_tiled(&surface);
    }
}

#[test]
fn an_outline_with_a_notch_and_a_pit_is_cut_out_of_the_faces() {
    let mut random = Random::new(72);
    let (places, faces) = crooked(&mut random);
    let corners = [(0.0, 0.0), (8.0, 0.0), (8.0, 3.0), (5.0, 3.0), (5.0, 6.0), (0.0, 6.0)];
    let pit = [(1.0, 1.0), (4.0, 1.0), (4.0, 2.0), (1.0, 2.0)];
    let surface = made(&places, &faces, &with_holes(&corners, &[&pit])).expect("a surface");
    let over =
        |x: [f64; 2], y: [f64; 2]| direct(&places, &faces, Point::new(x[0], y[0]), Point::new(x[1], y[1])).1;
    let expected = over([0.0, 5.0], [0.0, 6.0]) + over([5.0, 8.0], [0.0, 3.0]) - over([1.0, 4.0], [1.0, 2.0]);
    assert_close(volume(&surface), expected, 1e-12);
    // Faces that leave the outline by more than a foot are surveyed all the same.
    assert_close(surface.whole().area_of(Ground::Surveyed), surface.whole().area(), 1e-12);
}

#[test]
fn neither_order_nor_axes_change_given_faces() {
    let mut random = Random::new(73);
    for angle in [0.3, 1.1, 2.9] {
        let (places, faces) = crooked(&mut random);
        let region = rectangle(8.0, 6.0);
        let straight = made(&places, &faces, &region).expect("a surface");
        let last = places.len() as u32 - 1;
        let (backward, other): (Vec<_>, Vec<[u32; 3]>) = (
            places.iter().rev().copied().collect(),
            faces.iter().rev().map(|&[a, b, c]| [last - c, last - b, last - a]).collect(),
        );
        assert_eq!(volume(&made(&backward, &other, &region).expect("a surface")), volume(&straight));
        let by = Point::new(120.0, -55.0);
        let turned: Vec<[f64; 3]> = places
            .iter()
            .map(|&[x, y, z]| {
                let place = moved(Point::new(x, y), angle, by);
                [place.x, place.y, z]
            })
            .collect();
        let turned = made(&turned, &faces, &moved_region(&region, angle, by)).expect("a surface");
        assert_close(volume(&turned), volume(&straight), 1e-11);
    }
}

#[test]
fn a_hole_in_the_faces_is_not_surveyed_and_noted_with_its_share() {
    let mut random = Random::new(74);
    let (places, mut faces) = crooked(&mut random);
    // The cell from (1.5, 1.5) on, some way inside the outline.
    let cell = (2 * 7 + 2) * 2;
    faces.drain(cell..cell + 2);
    let surface = made(&places, &faces, &rectangle(8.0, 6.0)).expect("a surface");
    let (surveyed, _) = direct(&places, &faces, Point::default(), Point::new(8.0, 6.0));
    assert_close(surface.whole().area_of(Ground::Surveyed), surveyed, 1e-12);
    assert_close(surface.whole().area_of(Ground::Spanning), 48.0 - surveyed, 1e-12);
    let [Note::BetweenFaces { share, area }] = surface.notes() else { panic!("{:?}", surface.notes()) };
    assert_close(*area, 48.0 - surveyed, 1e-12);
    assert_close(*share, 1.0 - surveyed / 48.0, 1e-12);
    assert_tiled(&surface);
}

#[test]
fn the_tributary_areas_of_the_points_make_the_volume() {
    let mut random = Random::new(75);
    let (places, mut faces) = crooked(&mut random);
    faces.remove(30);
    let surface = made(&places, &faces, &rectangle(8.0, 6.0)).expect("a surface");
    let areas = surface.tributary_areas(surface.whole());
    let sum: f64 = areas.iter().zip(&places).map(|(area, place)| area * place[2]).sum();
    assert_close(sum, volume(&surface), 1e-12);
}

#[test]
fn a_low_face_along_the_hull_is_kept() {
    // Three millimetres high over four metres: of shots such a triangle would be taken off.
    let places = [[0.0, 0.0, 0.0], [2.0, 0.003, 1.0], [4.0, 0.0, 0.0], [4.0, 3.0, 0.0], [0.0, 3.0, 0.0]];
    let faces = [[0, 2, 1], [0, 1, 4], [1, 2, 3], [1, 3, 4]];
    let surface = made(&places, &faces, &rectangle(4.0, 3.0)).expect("a surface");
    let (_, expected) = direct(&places, &faces, Point::default(), Point::new(4.0, 3.0));
    assert_close(volume(&surface), expected, 1e-12);
    assert_eq!(surface.whole().len(), 4);
}

#[test]
fn points_of_no_face_are_left_out_and_counted() {
    let places = [
        [9.0, 9.0, 5.0],
        [0.0, 0.0, 1.0],
        [4.0, 0.0, 1.0],
        [4.0, 3.0, 1.0],
        [0.0, 3.0, 1.0],
        [1.0, 1.0, 7.0],
    ];
    let surface = made(&places, &[[1, 2, 3], [1, 3, 4]], &rectangle(4.0, 3.0)).expect("a surface");
    assert_close(volume(&surface), 12.0, 1e-15);
    assert_eq!(surface.notes(), [Note::PointsUnused { points: 2, first: 0 }]);
}

#[test]
fn points_at_one_place_become_their_mean_or_are_refused() {
    let with = |z: f64| {
        let places = [
            [0.0, 0.0, 1.0],
            [4.0, 0.0, 1.0],
            [4.0, 3.0, 1.0],
            [0.0, 0.0, z],
            [4.0, 3.0, 1.0],
            [0.0, 3.0, 1.0],
        ];
        made(&places, &[[0, 1, 2], [3, 4, 5]], &rectangle(4.0, 3.0))
    };
    let surface = with(1.003).expect("within an eighth of an inch");
    // The shared corner is 1.5 mm higher over both triangles.
    assert_close(volume(&surface), 12.0 + 2.0 * 6.0 * 0.0015 / 3.0, 1e-12);
    let shared = |note: &&Note| matches!(note, Note::Shared(place) if place.shots.len() == 2);
    assert_eq!(surface.notes().iter().filter(shared).count(), 2);
    let error = with(1.1).expect_err("two heights");
    assert!(matches!(error, SurfaceError::TwoHeights { low_shot: 0, high_shot: 3, .. }), "{error}");
}

#[test]
fn faces_that_do_not_fit_together_are_refused_by_name() {
    let square = [[0.0, 0.0, 0.0], [4.0, 0.0, 0.0], [4.0, 3.0, 0.0], [0.0, 3.0, 0.0]];
    let refused = |more: &[[f64; 3]], faces: &[[u32; 3]]| {
        let places: Vec<[f64; 3]> = square.iter().chain(more).copied().collect();
        made(&places, faces, &rectangle(4.0, 3.0)).expect_err("a refusal")
    };
    use SurfaceError::*;
    assert_eq!(refused(&[], &[]), NoFaces);
    assert_eq!(refused(&[], &[[0, 1, 2], [0, 2, 4]]), FacePoint { face: 1, point: 4, points: 4 });
    assert_eq!(refused(&[], &[[0, 1, 2], [0, 2, 2]]), FaceRepeats { face: 1, point: 2 });
    let on_line = [2.0, 1.5, 0.0];
    assert_eq!(refused(&[on_line], &[[0, 1, 2], [0, 4, 2]]), FaceFlat { face: 1 });
    // Both diagonals of the square; the same face twice, once the other way round.
    assert_eq!(refused(&[], &[[0, 1, 2], [1, 2, 3]]), FacesOverlap { first: 0, second: 1 });
    assert_eq!(refused(&[], &[[0, 1, 2], [0, 2, 3], [2, 1, 0]]), FacesOverlap { first: 0, second: 2 });
    // Crossing without a corner of one in the other.
    let across = [[-1.0, 1.0, 0.0], [9.0, 0.9, 0.0], [9.0, 1.1, 0.0]];
    assert_eq!(refused(&across, &[[0, 1, 2], [4, 5, 6]]), FacesOverlap { first: 0, second: 1 });
    // A face wholly inside another, and a corner on the side of one.
    let small = [[3.0, 0.5, 0.0], [3.5, 0.5, 0.0], [3.5, 1.0, 0.0]];
    assert!(matches!(refused(&small, &[[0, 1, 2], [4, 5, 6]]), PointInFace { point: 4..=6, face: 0 }));
    let middle = [2.0, 0.0, 0.0];
    let below = [2.0, -1.0, 0.0];
    let error = refused(&[middle, below], &[[0, 1, 2], [4, 5, 1]]);
    assert_eq!(error, PointInFace { point: 4, face: 0 });
    // Three faces at one side.
    let beside = [[6.0, 1.0, 0.0], [5.0, -3.0, 0.0]];
    let error = refused(&beside, &[[0, 1, 2], [1, 2, 4], [2, 1, 5]]);
    assert_eq!(error, EdgeOfThree { points: [1, 2], faces: [0, 1, 2] });
    assert!(matches!(refused(&[[f64::NAN, 0.0, 0.0]], &[[0, 1, 4]]), NotFinite { shot: 4, .. }));
    let far = rectangle(40.0, 3.0);
    let error = made(&square, &[[0, 1, 2], [0, 2, 3]], &far).expect_err("far beyond the faces");
    assert!(matches!(error, TooFarBeyond { .. }));
}

#[test]
fn the_triangles_of_shots_given_as_faces_make_the_same_surface() {
    let mut random = Random::new(76);
    let places: Vec<[f64; 3]> = (0..200)
        .map(|_| {
            let place = random.point(8.0, 6.0);
            [place.x, place.y, random.between(0.0, 0.1)]
        })
        .chain([[0.0, 0.0, 0.0], [8.0, 0.0, 0.1], [8.0, 6.0, 0.0], [0.0, 6.0, 0.1]])
        .collect();
    let region = rectangle(8.0, 6.0);
    let shots: Vec<Shot> = places.iter().map(|&[x, y, z]| Shot::new(x, y, z)).collect();
    let surface = surface(&shots, &region);
    let faces: Vec<[u32; 3]> = surface
        .whole()
        .triangles()
        .filter_map(|triangle| {
            let [a, b, c] = triangle.corners.map(|corner| corner.shot);
            Some([a? as u32, b? as u32, c? as u32])
        })
        .collect();
    assert_close(volume(&made(&places, &faces, &region).expect("a surface")), volume(&surface), 1e-12);
}
