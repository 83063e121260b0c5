//! Figures worked by hand.

use super::*;
use crate::geometry::{Plane, Point, Region};
use crate::grade::finish::{Facet, Finish};
use crate::grade::thickness_shapes::tests::support::{assert_near, plane, survey};
use crate::note::NoteCode;
use crate::quantity::{AreaPrice, VolumePrice};
use crate::survey::Survey;

const RECTANGLE: [[f64; 2]; 4] = [[0.0, 0.0], [4.0, 0.0], [4.0, 2.0], [0.0, 2.0]];

/// A ramp over 4 m by 2 m: thickness from nothing at the left to 4 cm at the right under a finish at 10 m.
fn ramp() -> Survey {
    let shots = [[0.0, 0.0, 10.0], [4.0, 0.0, 9.96], [4.0, 2.0, 9.96], [0.0, 2.0, 10.0]];
    survey(&RECTANGLE, &[], &shots)
}

#[test]
fn a_ramp_has_one_strip() {
    let found = ThinZones::of(&ramp(), &plane(10.01, 0.0, 0.0), &asked()).expect("zones");
    // 1 cm thick at the left, 2 cm after 1 m: a strip 1 m wide that lacks half a centimetre on average.
    let [zone] = found.zones.as_slice() else { panic!("{found:?}") };
    assert_eq!(zone.name, "zone 1");
    assert_near(zone.area.base(), 2.0, 1e-12);
    assert_near(zone.lacking.base(), 2.0 * 0.005, 1e-14);
    assert_near(zone.deficit.base(), 0.01, 1e-14);
    assert_eq!((zone.thinnest.x.base(), zone.thinnest.y.base()), (0.0, 0.0));
    assert!(zone.shot.is_some());
    assert_eq!(zone.beyond.base(), 0.0);
    // The strip is its own box; one of its sides lies inside the work.
    assert_near(zone.boxed.base(), 2.0, 1e-12);
    assert_near(zone.joint.base(), 2.0, 1e-12);
    assert!(zone.reaches_edge);
    assert_near(zone.bounds.to.x.base(), 1.0, 1e-12);

    // 8 m2 by 1 cm.
    let [concrete, money] = takes(choice(zone, Cure::Raise));
    assert_near(concrete, 0.08, 1e-14);
    assert_near(money, 16.0, 1e-10);
    let bond = choice(zone, Cure::Bond);
    assert_eq!(bond.enough, Enough::Yes);
    assert_eq!(takes(bond)[0], 0.0);
    assert_near(takes(bond)[1], 100.0, 1e-10);
    let [concrete, money] = takes(choice(zone, Cure::Grind));
    assert_near(concrete, 0.01, 1e-14);
    assert_near(money, 80.0 + 2.0, 1e-10);
    // 15 cm on 2 m2 where 1.5 cm were on average.
    let [concrete, money] = takes(choice(zone, Cure::BreakOut));
    assert_near(concrete, 2.0 * 0.135, 1e-13);
    assert_near(money, 180.0 + 54.0, 1e-10);
    assert_eq!(zone.cheapest().map(|choice| choice.cure), Some(Cure::Raise));
    assert_near(found.zone_by_zone().expect("money").base(), 82.0, 1e-10);
    assert_eq!(found.notes().iter().map(|note| note.code).collect::<Vec<_>>(), [NoteCode::Silica]);
}

#[test]
fn what_is_not_enough_says_by_how_much() {
    // Half a centimetre above the finish at the left: 2.5 cm lacking there.
    let found = ThinZones::of(&ramp(), &plane(9.995, 0.0, 0.0), &asked()).expect("zones");
    let zone = &found.zones[0];
    let short = |cure| choice(zone, cure).enough.short_by().expect("short").base();
    assert_near(short(Cure::Bond), 0.015, 1e-14);
    assert_near(short(Cure::Grind), 0.01, 1e-14);
    // The strip is 2.5 m wide; the half metre of old slab above the finish takes no concrete now.
    assert_near(zone.area.base(), 5.0, 1e-12);
    assert_near(zone.lacking.base(), 5.0 * 0.0125, 1e-13);
    let high = 2.0 * 0.5 * 0.5 * 0.005;
    assert_near(takes(choice(zone, Cure::Grind))[0], 5.0 * 0.0125 - high, 1e-13);
    let overlay = 2.0 * 2.0 * 0.5 * 0.02;
    assert_near(takes(choice(zone, Cure::BreakOut))[0], 5.0 * 0.15 - overlay, 1e-12);
    // Risen by 2.5 cm all of it is 2 to 6 cm thick; now 3.5 m of the 4 m have overlay.
    let now = 2.0 * 3.5 * 0.5 * 0.035;
    assert_near(takes(choice(zone, Cure::Raise))[0], 8.0 * 0.04 - now, 1e-13);
    // Neither may be the cheapest.
    assert!(matches!(zone.cheapest().map(|choice| choice.cure), Some(Cure::Raise | Cure::BreakOut)));

    let mut thin = asked();
    thin.new_thickness = Some(metres(0.015));
    let found = ThinZones::of(&ramp(), &plane(10.01, 0.0, 0.0), &thin).expect("zones");
    let choice = choice(&found.zones[0], Cure::BreakOut);
    assert_near(choice.enough.short_by().expect("short").base(), 0.005, 1e-14);
    // Where the overlay is thicker than 1.5 cm, half the strip, it stays so.
    assert_near(choice.concrete.expect("a volume").base(), 2.0 * 0.5 * 0.5 * 0.005, 1e-14);
}

/// A level floor of 6 m by 4 m with a pyramid hump of 1 m by 1 m and 2 cm amid it, and one of 1 cm near a corner.
fn humps() -> Survey {
    let mut shots = vec![[0.0, 0.0, 5.0], [6.0, 0.0, 5.0], [6.0, 4.0, 5.0], [0.0, 4.0, 5.0]];
    for [x, y, height] in [[3.0, 2.0, 0.02], [1.0, 1.0, 0.01]] {
        shots.push([x, y, 5.0 + height]);
        for [dx, dy] in [[-0.5, -0.5], [0.5, -0.5], [0.5, 0.5], [-0.5, 0.5]] {
            shots.push([x + dx, y + dy, 5.0]);
        }
    }
    survey(&[[0.0, 0.0], [6.0, 0.0], [6.0, 4.0], [0.0, 4.0]], &[], &shots)
}

#[test]
fn humps_are_zones_with_joints_all_around() {
    // 2.5 cm over the floor: the humps leave 0.5 and 1.5 cm, their upper 3/4 and 1/2 are thinner than 2 cm.
    let found = ThinZones::of(&humps(), &plane(5.025, 0.0, 0.0), &asked()).expect("zones");
    let [large, small] = found.zones.as_slice() else { panic!("{found:?}") };
    for (zone, side, deficit) in [(large, 0.75, 0.015), (small, 0.5, 0.005)] {
        assert_near(zone.area.base(), side * side, 1e-12);
        assert_near(zone.lacking.base(), side * side * deficit / 3.0, 1e-14);
        assert_near(zone.boxed.base(), side * side, 1e-12);
        assert_near(zone.joint.base(), 4.0 * side, 1e-11);
        assert!(!zone.reaches_edge);
    }
    // Raising for the small one leaves the large one, raising for the large one cures both.
    assert_eq!(found.cured_by(small.deficit).count(), 1);
    assert_eq!(found.cured_by(large.deficit).count(), 2);
    assert_near(takes(choice(small, Cure::Raise))[0], 24.0 * 0.005, 1e-12);
    assert!(choice(small, Cure::Raise).said.contains("cures zone 2 only"));
    assert!(choice(large, Cure::Raise).said.contains("cures all 2 zones"));
    let all = found.raise_all.as_ref().expect("a rise");
    assert_near(all.depth.expect("a rise").base(), 0.015, 1e-14);
    // 0.5 cm over the large one is too thin to bond; 1.5 cm over the small one is not.
    assert_eq!(choice(large, Cure::Bond).enough.verdict(), Verdict::NotEnough);
    assert_eq!(choice(small, Cure::Bond).enough, Enough::Yes);
    assert_eq!(choice(large, Cure::Grind).enough, Enough::Yes);
    // 1/4 m2 at 40 with a little concrete is less than 1/4 m2 at 50, and than 24 m2 by 0.5 cm at 200.
    assert_eq!(small.cheapest().map(|choice| choice.cure), Some(Cure::Grind));
}

#[test]
fn a_valley_is_a_strip_between_two_joints() {
    // A level slab under two facets that fall 1 cm a metre to x = 2 m, 5 cm thick there: thinner than 6 cm from 1 m to 3 m.
    let facet = |from: f64, to: f64, fall: f64| {
        let region = Region::rectangle(Point::new(from, -9.0), Point::new(to, 9.0)).expect("a region");
        Facet::new(region, Plane::about(Point::new(2.0, 0.0), 10.05, fall, 0.0))
    };
    let finish = Finish::faceted(vec![facet(-9.0, 2.0, -0.01), facet(2.0, 9.0, 0.01)]).expect("a finish");
    let survey = survey(&RECTANGLE, &[], &RECTANGLE.map(|[x, y]| [x, y, 10.0]));
    let mut asked = asked();
    asked.minimum = metres(0.06);
    let found = ThinZones::of(&survey, &finish, &asked).expect("zones");
    let [zone] = found.zones.as_slice() else { panic!("{found:?}") };
    assert_near(zone.area.base(), 4.0, 1e-11);
    assert_near(zone.deficit.base(), 0.01, 1e-12);
    assert_near(zone.joint.base(), 4.0, 1e-9);
    assert!(zone.reaches_edge);
    assert_near(takes(choice(zone, Cure::Raise))[0], 0.08, 1e-12);
    assert_near(takes(choice(zone, Cure::Grind))[0], 4.0 * 0.005, 1e-12);
    assert_near(takes(choice(zone, Cure::BreakOut))[0], 4.0 * (0.15 - 0.055), 1e-11);
}

#[test]
fn what_is_not_given_is_not_judged_and_has_no_money() {
    let found =
        ThinZones::of(&ramp(), &plane(10.01, 0.0, 0.0), &AskedOfThinZones::of(metres(0.02))).expect("zones");
    let zone = &found.zones[0];
    let verdicts: Vec<Verdict> = zone.choices.iter().map(|choice| choice.enough.verdict()).collect();
    assert_eq!(verdicts, [Verdict::Enough, Verdict::NotJudged, Verdict::NotJudged, Verdict::NotJudged]);
    assert!(zone.choices.iter().all(|choice| choice.money.is_none()));
    assert_eq!(choice(zone, Cure::BreakOut).concrete, None);
    assert_eq!((zone.cheapest(), found.zone_by_zone()), (None, None));
    let notes = found.notes();
    assert_eq!(notes[0].code, NoteCode::ChoicesIncomplete);
    assert!(notes[0].text.contains("price of bonding") && notes[0].text.contains("new concrete"));
    // Above the finish nothing can be bonded, whatever its minimum.
    let found =
        ThinZones::of(&ramp(), &plane(9.995, 0.0, 0.0), &AskedOfThinZones::of(metres(0.02))).expect("zones");
    assert_eq!(choice(&found.zones[0], Cure::Bond).enough.verdict(), Verdict::NotEnough);
}

#[test]
fn one_price_alone_prices_what_it_can() {
    let mut only = AskedOfThinZones::of(metres(0.02));
    only.prices.bonding = Some(AreaPrice::from_base(50.0));
    let zone = &ThinZones::of(&ramp(), &plane(10.01, 0.0, 0.0), &only).expect("zones").zones[0];
    let priced = |cure| choice(zone, cure).money.is_some();
    assert!(priced(Cure::Bond) && !priced(Cure::Raise) && !priced(Cure::Grind) && !priced(Cure::BreakOut));
    only.prices.concrete = Some(VolumePrice::from_base(0.0));
    let zone = &ThinZones::of(&ramp(), &plane(10.01, 0.0, 0.0), &only).expect("zones").zones[0];
    // Free concrete is a price, none is not.
    assert_eq!(choice(zone, Cure::Raise).money.map(Typed::base), Some(0.0));
}

#[test]
fn nothing_thin_is_no_zone() {
    let found = ThinZones::of(&ramp(), &plane(10.02, 0.0, 0.0), &asked()).expect("zones");
    assert!(found.zones.is_empty() && found.raise_all.is_none() && found.notes().is_empty());
    assert_eq!((found.area.base(), found.lacking.base()), (0.0, 0.0));
    assert!(found.said().contains("nowhere thinner"));
}

#[test]
fn a_box_is_clipped_to_a_notched_work() {
    // An L: 4 m by 4 m less the 2 m by 2 m at the right and back. Thin along a diagonal band from back left to front right.
    let outer = [[0.0, 0.0], [4.0, 0.0], [4.0, 2.0], [2.0, 2.0], [2.0, 4.0], [0.0, 4.0]];
    let shots = [
        [0.0, 0.0, 10.0],
        [4.0, 0.0, 10.04],
        [4.0, 2.0, 10.06],
        [2.0, 2.0, 10.04],
        [2.0, 4.0, 10.06],
        [0.0, 4.0, 10.04],
    ];
    // The old slab is the plane 10 + (x + y) / 100; thinner than 2 cm beyond x + y = 3.
    let found =
        ThinZones::of(&survey(&outer, &[], &shots), &plane(10.05, 0.0, 0.0), &asked()).expect("zones");
    let [zone] = found.zones.as_slice() else { panic!("{found:?}") };
    assert_near(zone.area.base(), 12.0 - 4.5, 1e-11);
    // Its box is the whole work: no joint lies inside, the corner at the front left is bonded with it.
    assert_near(zone.boxed.base(), 12.0, 1e-11);
    assert_near(zone.joint.base(), 0.0, 1e-9);
    assert!(zone.reaches_edge);
}

#[test]
fn ground_beyond_the_shots_is_told() {
    // Shots end half a metre before the left edge, where the ramp goes on.
    let shots = [[0.5, 0.0, 9.995], [4.0, 0.0, 9.96], [4.0, 2.0, 9.96], [0.5, 2.0, 9.995]];
    let found =
        ThinZones::of(&survey(&RECTANGLE, &[], &shots), &plane(10.01, 0.0, 0.0), &asked()).expect("zones");
    let zone = &found.zones[0];
    assert_near(zone.area.base(), 2.0, 1e-10);
    assert_near(zone.beyond.base(), 1.0, 1e-10);
    assert_near(zone.deficit.base(), 0.01, 1e-10);
    assert_near(zone.deficit_measured.expect("a lack").base(), 0.005, 1e-10);
    assert!(choice(zone, Cure::Raise).said.contains("cures it (1/4 in would do between the shots)"));
    assert_eq!(zone.shot, None);
    assert!(
        found.notes().iter().any(|note| note.code == NoteCode::BeyondShots && note.text.contains("zone 1"))
    );
}

#[test]
fn a_zone_wholly_beyond_the_shots_says_so() {
    // Thinner than 2 cm only left of 0.4 m, where nothing was shot.
    let shots = [[0.5, 0.0, 9.995], [4.0, 0.0, 9.96], [4.0, 2.0, 9.96], [0.5, 2.0, 9.995]];
    let found =
        ThinZones::of(&survey(&RECTANGLE, &[], &shots), &plane(10.016, 0.0, 0.0), &asked()).expect("zones");
    let zone = &found.zones[0];
    assert_near(zone.beyond.base(), 0.8, 1e-10);
    assert_near(zone.beyond.base(), zone.area.base(), 1e-12);
    assert_eq!(zone.deficit_measured, None);
    assert!(choice(zone, Cure::Raise).said.contains("all of it beyond the shots"));
}

#[test]
fn overlapping_boxes_are_noted() {
    // The box of a ridge along two sides holds the hump in its bend.
    let found = ThinZones::of(&bend(), &plane(5.025, 0.0, 0.0), &asked()).expect("zones");
    assert_eq!(found.zones.len(), 2, "{:?}", found.said());
    assert!(found.zones[0].bounds.overlaps(&found.zones[1].bounds));
    assert!(
        found
            .notes()
            .iter()
            .any(|note| note.code == NoteCode::BoxesOverlap && note.text.contains("zone 1 and zone 2"))
    );
}

/// A floor of 6 m square, shot every metre, with a ridge along two sides and a hump apart from it in the bend.
fn bend() -> Survey {
    let mut shots = Vec::new();
    for (i, j) in (0..7).flat_map(|i| (0..7).map(move |j| (i, j))) {
        let high = (i == 1 && (1..=5).contains(&j)) || (j == 1 && (1..=5).contains(&i)) || (i, j) == (4, 4);
        shots.push([f64::from(i), f64::from(j), if high { 5.02 } else { 5.0 }]);
    }
    survey(&[[0.0, 0.0], [6.0, 0.0], [6.0, 6.0], [0.0, 6.0]], &[], &shots)
}

#[test]
fn a_foreman_reads_what_to_do() {
    let found = ThinZones::of(&humps(), &plane(5.025, 0.0, 0.0), &asked()).expect("zones");
    let said = |zone: usize, cure| choice(&found.zones[zone], cure).said.as_str();
    // 2.625 m are 8' 7.3", 3.375 m 11' 0.9"; 24 m2 by 1.5 cm are 0.47 yd3; 0.5 cm is 0.20 in, rounded down.
    assert_eq!(
        said(0, Cure::Bond),
        "bond 6.1 ft2 (mill, clean, slurry) within 8' 7\" to 11' 1\" from the left and 5' 3\" to 7' 10\" from the front, \
         with 9' 11\" of straight full-depth joint around it; no more concrete; costs 28.12; \
         not enough: at shot 5 it is 3/16 in thick, 1/4 in under the 3/8 in of a bonded part"
    );
    assert_eq!(
        said(1, Cure::Grind),
        "grind 2.7 ft2 of old slab up to 1/4 in deep, 0.01 ft3 in all; 0.01 ft3 more concrete; costs 10.08; enough"
    );
    assert!(
        found.said().starts_with(
            "2 zones are thinner than 13/16 in: 8.7 ft2 that lack 0.11 ft3. All at once: raise "
        )
    );
    assert!(found.said().ends_with("in the cheapest way without raising: 33.15."));
}
