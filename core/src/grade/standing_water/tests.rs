use super::*;
use crate::geometry::{Plane, Point, Region};
use crate::quantity::{Elevation, Slope};
use crate::survey::low_spots::{EdgeState, EdgeStated};
use crate::survey::old_slab::{Marks, Settings, Shots};
use crate::survey::outline::{Corner, Outline};
use crate::survey::surface::Shot;

fn corner(x: f64, y: f64) -> Corner {
    Corner::new(Length::from_base(x), Length::from_base(y))
}

/// A slab of 8 m by 4 m with two hollows, 0.1 m deep at (2, 2) and 0.05 m deep at (6, 2).
fn slab() -> Survey {
    let corners = [(0.0, 0.0), (8.0, 0.0), (8.0, 4.0), (0.0, 4.0)].map(|(x, y)| corner(x, y));
    let outline = Outline::from_corners(&corners, &[]).expect("an outline");
    let mut shots: Vec<Shot> =
        [0.0, 4.0, 8.0].iter().flat_map(|&x| [0.0, 4.0].map(|y| Shot::new(x, y, 1.0))).collect();
    // A ridge between them, so that they are two.
    shots.extend([Shot::new(2.0, 2.0, 0.9), Shot::new(4.0, 2.0, 1.0), Shot::new(6.0, 2.0, 0.95)]);
    Survey::new(outline, Shots::Scattered(Marks { shots, names: Vec::new() }), Settings::default())
        .expect("a survey")
}

fn walled(names: &[&str]) -> Edges {
    let stated = |&edge: &&str| EdgeStated { edge: edge.to_owned(), state: EdgeState::Walled };
    Edges { stated: names.iter().map(stated).collect(), drains: Vec::new() }
}

#[track_caller]
fn assert_close(value: f64, expected: f64) {
    assert!((value - expected).abs() <= 1e-9 * expected.abs().max(1.0), "{value} is not {expected}");
}

fn none() -> Length {
    Length::from_base(0.0)
}

#[test]
fn a_fall_to_an_open_edge_cures_every_pond() {
    let slab = slab();
    let fall = Finish::to_edge(slab.outline(), "side 2", Elevation::from_base(1.1), Slope::from_base(0.01))
        .expect("a finish");
    let cure = Cure::of(&slab, &fall, &Edges::default(), none()).expect("ponds");
    assert_eq!((cure.old.list.len(), cure.count(Fate::Cured), cure.finish.list.len()), (2, 2, 0));
}

/// The fall runs into a wall: the water stands in a wedge before it that covers the nearer hollow only.
#[test]
fn a_fall_to_a_wall_ponds_before_it() {
    let slab = slab();
    let fall = Finish::to_edge(slab.outline(), "side 2", Elevation::from_base(1.1), Slope::from_base(0.01))
        .expect("a finish");
    let mut edges = walled(&["side 1", "side 2", "side 3", "side 4"]);
    edges.drains = vec![crate::survey::low_spots::Drain { name: None, at: vec![corner(4.5, 1.0)] }];
    let cure = Cure::of(&slab, &fall, &edges, none()).expect("ponds");
    assert_eq!(cure.finish.list.len(), 1);
    assert_close(cure.finish.list[0].volume.base(), 0.5 * 3.5 * 0.035 * 4.0);
    assert_close(cure.finish.list[0].area.base(), 3.5 * 4.0);
    let fates: Vec<Fate> = cure.outcomes.iter().map(|outcome| outcome.fate).collect();
    assert_eq!((fates, cure.new.clone()), (vec![Fate::Cured, Fate::Left], vec![false]));
    assert!(cure.notes().is_empty());
}

#[test]
fn a_pond_where_the_old_slab_was_dry_is_new() {
    let slab = slab();
    let fall = Finish::to_edge(slab.outline(), "side 3", Elevation::from_base(1.1), Slope::from_base(0.01))
        .expect("a finish");
    // Water stands before the wall at the back, up to the corners of the open sides: nowhere. With a wall all round but at
    // the front it stands everywhere.
    assert!(of_finish(&slab, &fall, &walled(&["side 3"]), none()).expect("ponds").list.is_empty());
    let cure = Cure::of(&slab, &fall, &walled(&["side 2", "side 3", "side 4"]), none()).expect("ponds");
    assert_close(cure.finish.list[0].volume.base(), 0.5 * 4.0 * 0.04 * 8.0);
    assert_eq!(cure.count(Fate::Left), 2);
    // On a level old slab the same pond is new.
    let level = Survey::new(
        slab.outline().clone(),
        Shots::Scattered(Marks {
            shots: [(0.0, 0.0), (8.0, 0.0), (8.0, 4.0), (0.0, 4.0)]
                .map(|(x, y)| Shot::new(x, y, 1.0))
                .to_vec(),
            names: Vec::new(),
        }),
        Settings::default(),
    );
    let cure = Cure::of(&level.expect("a survey"), &fall, &walled(&["side 2", "side 3", "side 4"]), none())
        .expect("ponds");
    assert_eq!((cure.new.as_slice(), cure.old.list.len()), ([true].as_slice(), 0));
    assert_eq!(cure.notes().last().map(|note| note.code), Some(NoteCode::NewPonds));
}

/// Four facets that fall to (6, 3) of a rectangle 10 m by 8 m, level round its edge: a pyramid upside down.
#[test]
fn facets_to_a_middle_hold_a_pyramid_of_water() {
    let outline = Region::rectangle(Point::new(0.0, 0.0), Point::new(10.0, 8.0)).expect("a rectangle");
    let corners = outline.outer().corners().to_vec();
    let middle = Point::new(6.0, 3.0);
    let facets: Vec<(Region, Plane)> = (0..4)
        .map(|side| {
            let (from, to) = (corners[side], corners[(side + 1) % 4]);
            let region = Region::new(vec![from, to, middle], Vec::new()).expect("a facet");
            let plane =
                Plane::through([[from.x, from.y, 1.0], [to.x, to.y, 1.0], [middle.x, middle.y, 0.88]]);
            (region, plane.expect("a plane"))
        })
        .collect();
    let given: Vec<(Option<&Region>, Plane)> =
        facets.iter().map(|(region, plane)| (Some(region), *plane)).collect();
    let names = [(0.0, 0.0), (10.0, 0.0), (10.0, 8.0), (0.0, 8.0)].map(|(x, y)| corner(x, y));
    let outline_named = Outline::from_corners(&names, &[]).expect("an outline");
    let ponds = |edges: &Edges| {
        Ponds::of_network(faceted::network(&outline, &given), &outline_named, edges, none()).expect("ponds")
    };
    let open = ponds(&Edges::default());
    assert_eq!(open.list.len(), 1);
    assert_close(open.list[0].volume.base(), 80.0 * 0.12 / 3.0);
    assert_eq!(open.list[0].deepest, corner(6.0, 3.0));
    let drained = Edges {
        drains: vec![crate::survey::low_spots::Drain { name: None, at: vec![corner(6.0, 3.0)] }],
        ..walled(&["side 1", "side 2", "side 3", "side 4"])
    };
    assert!(ponds(&drained).list.is_empty());
}
