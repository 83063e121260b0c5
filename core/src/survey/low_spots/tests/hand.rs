//! Ponds worked out by hand.

use super::support::*;

/// A square of 4 m with its middle 0.1 m low: shots on the corners, the middles of the sides are 0 too.
fn bowl() -> Survey {
    survey(
        outline(&[(0.0, 0.0), (4.0, 0.0), (4.0, 4.0), (0.0, 4.0)], &[]),
        &[(0.0, 0.0, 1.0), (4.0, 0.0, 1.0), (4.0, 4.0, 1.0), (0.0, 4.0, 1.0), (2.0, 2.0, 0.9)],
    )
}

/// A pyramid upside down: area 16, volume 16 x 0.1 / 3.
#[test]
fn a_bowl_fills_to_its_rim() {
    let found = ponds(&bowl(), &Edges::default());
    assert_eq!(found.list.len(), 1);
    let pond = &found.list[0];
    assert_close(pond.level.base(), 1.0);
    assert_close(pond.area.base(), 16.0);
    assert_close(pond.volume.base(), 1.6 / 3.0);
    assert_close(pond.depth.base(), 0.1);
    assert_eq!(pond.deepest, corner(2.0, 2.0));
    assert_eq!(pond.outlet.as_deref(), Some("side 1"));
    assert_eq!(found.taken.open, ["side 1", "side 2", "side 3", "side 4"]);
}

/// A drain half way up the side of the bowl, at 0.95: what is left is the quarter-sized pyramid below.
#[test]
fn a_drain_takes_the_water_down_to_its_own_height() {
    let found = ponds(&bowl(), &edges(&[], &[&[(3.0, 2.0)]]));
    let pond = &found.list[0];
    assert_close(pond.level.base(), 0.95);
    assert_close(pond.area.base(), 4.0);
    assert_close(pond.volume.base(), 4.0 * 0.05 / 3.0);
    assert_eq!((pond.spill, pond.outlet.as_deref()), (corner(3.0, 2.0), Some("drain 1")));
    assert!(ponds(&bowl(), &edges(&[], &[&[(2.0, 2.0)]])).list.is_empty());
}

/// A trench across the bowl, 0.5 m off its middle: its lowest place is at 0.925.
#[test]
fn a_drain_along_a_line_takes_the_water_at_its_lowest_place() {
    for line in [[(2.5, 0.5), (2.5, 3.7)], [(2.5, 4.0), (2.5, 1.3)]] {
        let found = ponds(&bowl(), &edges(&[], &[&line]));
        let pond = &found.list[0];
        assert_close(pond.level.base(), 0.925);
        assert_close(pond.volume.base(), 0.025 / 3.0);
        assert_eq!(pond.outlet.as_deref(), Some("drain 1"));
    }
    // Through the middle it leaves none.
    assert!(ponds(&bowl(), &edges(&[], &[&[(1.0, 1.5), (3.0, 2.5)]])).list.is_empty());
}

/// A plane that falls to the right by 1 in 40 over 4 m: open there, nothing stands; walled there, the water leaves over the
/// front and the back corner of the wall, which are as low as its foot.
#[test]
fn a_plane_ponds_only_where_a_wall_holds_it() {
    let plane = |x: f64| 1.0 - 0.025 * x;
    let shots = [(0.0, 0.0), (4.0, 0.0), (4.0, 2.0), (0.0, 2.0)].map(|(x, y)| (x, y, plane(x)));
    let slab = survey(outline(&[(0.0, 0.0), (4.0, 0.0), (4.0, 2.0), (0.0, 2.0)], &[]), &shots);
    assert!(ponds(&slab, &Edges::default()).list.is_empty());
    assert!(ponds(&slab, &edges(&["side 2"], &[])).list.is_empty());
    // Walled all round but for the high side on the left: a wedge 0.1 deep.
    let found = ponds(&slab, &edges(&["side 1", "side 2", "side 3"], &[]));
    assert_eq!(found.list.len(), 1);
    assert_close(found.list[0].volume.base(), 0.5 * 4.0 * 0.1 * 2.0);
    assert_close(found.list[0].area.base(), 8.0);
    assert_eq!(found.list[0].outlet.as_deref(), Some("side 4"));
    // Walled all round with a drain at x = 1 m: the wedge beyond it.
    let found = ponds(&slab, &edges(&["side 1", "side 2", "side 3", "side 4"], &[&[(1.0, 1.0)]]));
    assert_close(found.list[0].volume.base(), 0.5 * 3.0 * 0.075 * 2.0);
}

/// Two hollows with a saddle between them, all in a gutter 1 m wide: shots across it are level.
fn gutter(heights: &[f64]) -> Survey {
    let last = heights.len() as f64 - 1.0;
    let shots: Vec<(f64, f64, f64)> = heights
        .iter()
        .enumerate()
        .flat_map(|(index, &z)| [(index as f64, 0.0, z), (index as f64, 1.0, z)])
        .collect();
    survey(outline(&[(0.0, 0.0), (last, 0.0), (last, 1.0), (0.0, 1.0)], &[]), &shots)
}

#[test]
fn hollows_under_a_common_rim_are_one_pond_and_others_run_into_the_next() {
    let along = edges(&["side 1", "side 3"], &[]);
    // Ends at 0.3 and 0.2, hollows at 0, saddle at 0.1: one pond at 0.2, its ends where the sides reach 0.2.
    let found = ponds(&gutter(&[0.3, 0.0, 0.1, 0.0, 0.2]), &along);
    assert_eq!(found.list.len(), 1);
    assert_close(found.list[0].level.base(), 0.2);
    let section = 0.5 * (2.0 / 3.0) * 0.2 + 0.5 * (0.2 + 0.1) + 0.5 * (0.1 + 0.2) + 0.5 * 0.2;
    assert_close(found.list[0].volume.base(), section);
    // The right end at 0.05: the left hollow stands at the saddle and runs over it, the right one at the end.
    let found = ponds(&gutter(&[0.3, 0.0, 0.1, 0.0, 0.05]), &along);
    assert_eq!(found.list.len(), 2);
    assert_eq!((found.list[0].outlet.as_deref(), found.list[1].outlet.as_deref()), (None, Some("side 2")));
    assert_close(found.list[0].level.base(), 0.1);
    assert_close(found.list[0].volume.base(), 0.5 * 0.1 * (1.0 / 3.0) + 0.5 * 0.1);
    assert_close(found.list[0].spill.x.base(), 2.0);
    assert_close(found.list[1].level.base(), 0.05);
    assert_close(found.list[1].volume.base(), 0.5 * 0.05 * 0.5 + 0.5 * 0.05);
}

#[test]
fn a_level_floor_holds_no_water_and_a_flat_bottom_is_counted_once() {
    let level = gutter(&[0.5, 0.5, 0.5, 0.5]);
    assert!(ponds(&level, &edges(&["side 1", "side 3"], &[])).list.is_empty());
    let found = ponds(&gutter(&[0.1, 0.0, 0.0, 0.0, 0.1]), &edges(&["side 1", "side 3"], &[]));
    assert_eq!(found.list.len(), 1);
    assert_close(found.list[0].volume.base(), 0.1 * 2.0 + 2.0 * 0.5 * 0.1);
    assert_eq!(found.list[0].deepest, corner(1.0, 0.0));
}

#[test]
fn a_column_is_walled_unless_stated_and_its_hole_may_be_the_drain() {
    let column: &[(f64, f64)] = &[(1.8, 1.8), (2.2, 1.8), (2.2, 2.2), (1.8, 2.2)];
    let mut shots = vec![(0.0, 0.0, 1.0), (4.0, 0.0, 1.0), (4.0, 4.0, 1.0), (0.0, 4.0, 1.0)];
    shots.extend(column.iter().map(|&(x, y)| (x, y, 0.9)));
    let slab =
        survey(outline(&[(0.0, 0.0), (4.0, 0.0), (4.0, 4.0), (0.0, 4.0)], &[("column", column)]), &shots);
    let found = ponds(&slab, &Edges::default());
    assert_eq!(found.taken.walled, ["column"]);
    // The frustum from 4 m square to 0.4 m square, less the prism of the column.
    assert_close(found.list[0].volume.base(), 0.1 / 3.0 * (16.0 + 0.16 + 1.6) - 0.16 * 0.1);
    assert_close(found.list[0].depth.base(), 0.1);
    let state =
        |state| Edges { stated: vec![EdgeStated { edge: "column".to_owned(), state }], drains: Vec::new() };
    assert!(ponds(&slab, &state(EdgeState::Open)).list.is_empty());
    assert!(ponds(&slab, &state(EdgeState::Drained)).list.is_empty());
    assert_close(ponds(&slab, &state(EdgeState::Walled)).volume().base(), found.volume().base());
}

#[test]
fn shallow_ponds_are_left_out_and_counted() {
    let along = edges(&["side 1", "side 3"], &[]);
    let slab = gutter(&[0.3, 0.0, 0.1, 0.099, 0.3, 0.0, 0.3]);
    let all = ponds(&slab, &along);
    let some = Ponds::of_survey(&slab, &along, Length::from_base(0.2)).expect("ponds");
    assert_eq!((all.list.len(), some.list.len() + some.left_out), (2, 2));
    let shallow = gutter(&[0.3, 0.299, 0.3, 0.0, 0.3]);
    let some = Ponds::of_survey(&shallow, &along, Length::from_base(0.0254 / 16.0)).expect("ponds");
    assert_eq!((some.list.len(), some.left_out), (1, 1));
    assert_close(some.left_out_volume.base(), 0.001);
    assert_eq!(some.notes().len(), 2);
}
