//! Water and clean-up at a step in the slab.

use super::support::*;
use crate::geometry::Plane;
use crate::survey::clean_up::{Change, Done, Target};

/// A slab of 8 m by 6 m, level at 1.0 m on the left of x = 4 and at 1.1 m on the right.
fn stepped() -> Survey {
    let mut shots = Vec::new();
    for y in [0.0, 3.0, 6.0] {
        shots.extend([Shot::new(0.0, y, 1.0), Shot::new(2.0, y, 1.0)]);
        shots.extend(
            [1.0, 1.1].map(|z| Shot { step: true, ..Shot::new(if z > 1.05 { 4.003 } else { 3.997 }, y, z) }),
        );
        shots.extend([Shot::new(6.0, y, 1.1), Shot::new(8.0, y, 1.1)]);
    }
    let outline = outline(&[(0.0, 0.0), (8.0, 0.0), (8.0, 6.0), (0.0, 6.0)], &[]);
    let shots = Shots::Scattered(Marks { shots, names: Vec::new() });
    Survey::new(outline, shots, Settings::default()).expect("a survey")
}

#[test]
fn water_falls_down_a_step_and_stands_before_it() {
    let slab = stepped();
    assert!(ponds(&slab, &edges(&["side 1", "side 2", "side 3"], &[])).list.is_empty());
    let found = ponds(&slab, &edges(&["side 1", "side 3", "side 4"], &[]));
    assert_eq!(found.list.len(), 1);
    assert_close(found.list[0].level.base(), 1.1);
    assert_close(found.list[0].depth.base(), 0.1);
    // The step lies between its two rows of shots, 6 mm apart.
    assert!((found.list[0].area.base() - 24.0).abs() < 0.006 * 6.0);
    assert!((found.list[0].volume.base() - 2.4).abs() < 0.1 * 0.006 * 6.0);
}

#[test]
fn the_upper_side_of_a_step_is_ground_down_and_the_lower_filled_up() {
    let slab = stepped();
    let to = |height: f64| vec![Target { plane: Plane::new(height, 0.0, 0.0), region: None }];
    let ground = slab.after(Change { done: Done::Grind(to(1.05)), zone: None }).expect("a changed survey");
    let filled = ground.after(Change { done: Done::Fill(to(1.05)), zone: None }).expect("a changed survey");
    for (changed, volume) in filled.changes().iter().zip([1.2, 1.2]) {
        assert!((changed.volume.base() - volume).abs() < 0.05 * 0.006 * 6.0);
    }
    assert_close(filled.surface().whole().integrals().height, 1.05 * 48.0);
    assert_close(filled.facts().out_of_level.base(), 0.0);
}
