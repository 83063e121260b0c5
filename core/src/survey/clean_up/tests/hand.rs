//! Clean-up worked out by hand.

use super::support::*;
use crate::failure::Code;
use crate::note::NoteCode;
use crate::survey::input::SurveyInput;

const SQUARE: &[(f64, f64)] = &[(0.0, 0.0), (4.0, 0.0), (4.0, 4.0), (0.0, 4.0)];

/// A square of 4 m whose middle stands so much above its corners.
fn tent(rise: f64) -> Survey {
    survey(
        SQUARE,
        &[(0.0, 0.0, 1.0), (4.0, 0.0, 1.0), (4.0, 4.0, 1.0), (0.0, 4.0, 1.0), (2.0, 2.0, 1.0 + rise)],
    )
}

/// The tip of a pyramid: 2 m square and 0.05 m high.
#[test]
fn the_tip_of_a_hump_is_ground_off() {
    let ground = after(&tent(0.1), grind(level(1.05)));
    let done = last(&ground);
    assert_close(done.area.base(), 4.0);
    assert_close(done.volume.base(), 0.05 * 4.0 / 3.0);
    let (deepest, at) = done.deepest.expect("a cut");
    assert_close(deepest.base(), 0.05);
    assert_close(at.x.base() + 10.0 * at.y.base(), 22.0);
    assert_close(ground.facts().highest.elevation.base(), 1.05);
    assert_close(ground.surface().whole().area(), 16.0);
    let heights: Vec<f64> = ground.heights().map(|(.., height)| height.base()).collect();
    assert_eq!(heights, [1.0, 1.0, 1.0, 1.0, 1.05]);
    assert_eq!(ground.shots().each().last().map(|(.., z)| z.base()), Some(1.1));
    assert_eq!(ground.notes().last().map(|note| note.code), Some(NoteCode::Silica));
}

#[test]
fn a_plane_out_of_reach_changes_nothing_and_says_so() {
    for change in [grind(level(1.2)), fill(level(0.9))] {
        let slab = tent(0.1);
        let same = after(&slab, change);
        assert_eq!((last(&same).area.base(), last(&same).deepest), (0.0, None));
        assert_eq!(under(&same), under(&slab));
        assert_eq!(same.notes().last().map(|note| note.code), Some(NoteCode::NothingChanged));
    }
}

/// A hollow 0.1 m deep, filled to half its depth, then its pond filled to the rim.
#[test]
fn a_hollow_is_filled_to_a_plane_and_a_pond_to_its_rim() {
    let filled = after(&tent(-0.1), fill(level(0.95)));
    assert_close(last(&filled).volume.base(), 0.05 * 4.0 / 3.0);
    assert_close(ponds(&filled).volume().base(), 1.6 / 3.0 - 0.05 * 4.0 / 3.0);
    let full = after(&filled, fill_ponds());
    assert_close(last(&full).volume.base(), 1.6 / 3.0 - 0.05 * 4.0 / 3.0);
    assert!(ponds(&full).list.is_empty());
    assert_close(full.facts().out_of_level.base(), 0.0);
    assert_eq!(full.changes().len(), 2);
}

/// A pocket of 2 m by 1 m ground 0.02 m into a level slab: it has upright sides and holds water.
#[test]
fn a_zone_ends_in_a_step() {
    let slab = tent(0.0);
    let zone = outline(&[(1.0, 1.0), (3.0, 1.0), (3.0, 2.0), (1.0, 2.0)]);
    let pocket = after(&slab, Change { zone: Some(zone.clone()), ..grind(level(0.98)) });
    let done = last(&pocket);
    assert_close(done.area.base(), 2.0);
    assert_close(done.volume.base(), 0.04);
    assert_close(under(&slab) - under(&pocket), 0.04);
    let water = ponds(&pocket);
    assert_eq!(water.list.len(), 1);
    assert_close(water.list[0].volume.base(), 0.04);
    assert_close(water.list[0].area.base(), 2.0);
    // The shot on the edge of the pocket tells its bottom.
    assert_eq!(pocket.heights().last().map(|(.., height)| height.base()), Some(0.98));
    // Filled again the slab is as it was.
    let back = after(&pocket, fill_ponds());
    assert_close(under(&back), under(&slab));
    assert!(ponds(&back).list.is_empty());
    let half = outline(&[(0.0, 0.0), (2.0, 0.0), (2.0, 4.0), (0.0, 4.0)]);
    assert_close(pocket.surface().within(half.region()).expect("a half").integrals().height, 8.0 - 0.02);
}

/// Two planes that meet in a valley along x = 2: each is ground over its own half.
#[test]
fn planes_hold_over_their_own_regions() {
    let slab = tent(0.0);
    let half = |from: f64, to: f64| outline(&[(from, 0.0), (to, 0.0), (to, 4.0), (from, 4.0)]);
    let targets = vec![
        Target { plane: Plane::new(1.0, -0.01, 0.0), region: Some(half(0.0, 2.0)) },
        Target { plane: Plane::new(0.96, 0.01, 0.0), region: Some(half(2.0, 4.0)) },
    ];
    let ground = after(&slab, grind(targets));
    assert_close(last(&ground).volume.base(), 0.5 * 0.02 * 4.0 * 4.0);
    assert_close(ground.facts().lowest.elevation.base(), 0.98);
}

#[test]
fn a_survey_says_its_changes_and_reads_them_back() {
    let zone = outline(&[(0.5, 0.5), (3.5, 0.5), (3.5, 3.0), (0.5, 3.0)]);
    let first =
        after(&tent(-0.1), Change { zone: Some(zone), ..fill(everywhere(Plane::new(0.9, 0.02, 0.01))) });
    let second = after(&after(&first, grind(level(0.99))), fill_ponds());
    let input = SurveyInput::from(&second);
    let json = serde_json::to_string(&input).expect("JSON");
    let read: SurveyInput = serde_json::from_str(&json).expect("a survey");
    let again = Survey::from_input(&read).expect("the same survey");
    assert_eq!(again.changes(), second.changes());
    assert_eq!(under(&again), under(&second));
    assert_eq!(again.notes(), second.notes());
    assert_eq!(SurveyInput::from(&again), input);
}

#[test]
fn what_cannot_be_done_is_refused() {
    let slab = tent(0.1);
    let refused = |change: Change| slab.after(change).expect_err("a refusal");
    assert_eq!(refused(grind(Vec::new())).code, Code::EmptyList);
    assert_eq!(refused(grind(level(2e4))).code, Code::OutOfRange);
    assert_eq!(refused(grind(level(f64::NAN))).code, Code::NotFinite);
    let zone = outline(&[(10.0, 0.0), (12.0, 0.0), (12.0, 2.0)]);
    let outside = refused(Change { zone: Some(zone), ..grind(level(1.0)) });
    assert_eq!((outside.code, outside.path.as_str()), (Code::RegionOutside, "zone"));
}
