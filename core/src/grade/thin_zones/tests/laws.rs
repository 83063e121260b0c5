//! Laws over random surveys.

use super::*;
use crate::grade::thickness::Thickness;
use crate::grade::thickness_shapes::tests::support::{assert_near, random};
use crate::quantity::{AreaPrice, Length, VolumePrice};
use crate::survey::clean_up::{Change, Done, Target};

const SEEDS: std::ops::RangeInclusive<u64> = 1..=40;

fn of(seed: u64) -> (crate::survey::Survey, crate::grade::finish::Finish, ThinZones) {
    let (survey, finish) = random(seed);
    let mut asked = asked();
    asked.minimum = metres(0.05);
    let found = ThinZones::of(&survey, &finish, &asked).expect("zones");
    (survey, finish, found)
}

#[test]
fn the_zones_are_what_is_thinner() {
    let mut met = 0;
    for seed in SEEDS {
        let (survey, finish, found) = of(seed);
        let thinner = Thickness::of(&survey, &finish, Some(metres(0.05))).expect("a thickness").thinner;
        let whole = survey.outline().region().area();
        let listed: f64 = found.zones.iter().map(|zone| zone.area.base()).sum();
        assert_near(listed + found.left_out.base(), thinner.expect("an area").base(), 1e-11 * whole);
        assert_near(listed, found.area.base(), 1e-6);
        for zone in &found.zones {
            met += 1;
            assert!(zone.beyond.base() >= 0.0 && zone.beyond.base() <= zone.area.base() * (1.0 + 1e-9));
            assert!(zone.boxed.base() >= zone.area.base() * (1.0 - 1e-9));
            assert!(zone.lacking.base() <= zone.area.base() * zone.deficit.base() * (1.0 + 1e-9));
        }
        assert!(found.zones.windows(2).all(|pair| pair[0].area.base() >= pair[1].area.base() - 1e-6));
    }
    assert!(met > 40, "{met} zones");
}

#[test]
fn a_rise_cures_what_it_says_and_takes_what_it_says() {
    for seed in SEEDS {
        let (survey, finish, found) = of(seed);
        let fill = |finish: &crate::grade::finish::Finish| {
            Thickness::of(&survey, finish, None).expect("a thickness").fill.base()
        };
        let before = fill(&finish);
        for choice in found.zones.iter().map(|zone| choice(zone, Cure::Raise)).chain(&found.raise_all) {
            let risen = finish.moved_up(choice.depth.expect("a rise"));
            let more = fill(&risen) - before;
            assert_near(choice.concrete.expect("a volume").base(), more, 1e-12 * before.max(1.0));
        }
        let Some(all) = &found.raise_all else { continue };
        let rise = all.depth.expect("a rise");
        let left = ThinZones::of(&survey, &finish.moved_up(rise), &found.asked).expect("zones");
        assert!(left.zones.is_empty(), "seed {seed}: {:?}", left.zones);
        // A millimetre less leaves the thinnest.
        let left =
            ThinZones::of(&survey, &finish.moved_up(rise - metres(0.001)), &found.asked).expect("zones");
        assert!(left.raise_all.is_some());
    }
}

#[test]
fn ground_down_no_zone_is_left_and_the_volumes_are_those_ground() {
    for seed in SEEDS {
        let (survey, finish, found) = of(seed);
        let plane =
            *finish.moved_up(Length::from_base(-found.asked.minimum.base())).plane().expect("a plane");
        let done = Done::Grind(vec![Target { plane, region: None }]);
        let ground = survey.after(Change { done, zone: None }).expect("a ground slab");
        let whole = survey.outline().region().area();
        let changed = ground.changes().last().expect("a change");
        assert_near(changed.volume.base(), found.lacking.base(), 1e-12 * whole);
        assert_near(changed.area.base(), found.area.base(), 1e-8 * whole);
        let deepest = changed.deepest.map_or(0.0, |(depth, _)| depth.base());
        assert_near(
            deepest,
            found.raise_all.as_ref().map_or(0.0, |all| all.depth.expect("a rise").base()),
            1e-12,
        );
        let left = ThinZones::of(&ground, &finish, &found.asked).expect("zones");
        assert!(left.area.base() <= 1e-9 * whole && left.lacking.base() <= 1e-12 * whole, "seed {seed}");
        let fill = |survey| Thickness::of(survey, &finish, None).expect("a thickness").fill.base();
        let more: f64 = found.zones.iter().map(|zone| takes(choice(zone, Cure::Grind))[0]).sum();
        assert_near(more, fill(&ground) - fill(&survey), 1e-11 * whole);
    }
}

#[test]
fn money_is_linear_in_the_prices() {
    for seed in SEEDS.take(12) {
        let (survey, finish, found) = of(seed);
        let mut double = found.asked;
        double.prices = Prices {
            concrete: found.asked.prices.concrete.map(|price| VolumePrice::from_base(2.0 * price.base())),
            bonding: found.asked.prices.bonding.map(|price| AreaPrice::from_base(2.0 * price.base())),
            grinding: found.asked.prices.grinding.map(|price| AreaPrice::from_base(2.0 * price.base())),
            breaking_out: found
                .asked
                .prices
                .breaking_out
                .map(|price| AreaPrice::from_base(2.0 * price.base())),
        };
        let doubled = ThinZones::of(&survey, &finish, &double).expect("zones");
        for (zone, twice) in found.zones.iter().zip(&doubled.zones) {
            for (one, two) in zone.choices.iter().zip(&twice.choices) {
                assert_eq!(2.0 * takes(one)[1], takes(two)[1]);
            }
            assert_eq!(zone.cheapest().map(|choice| choice.cure), twice.cheapest().map(|choice| choice.cure));
        }
    }
}
