mod hand;
mod laws;
mod refusals;

use super::*;
use crate::grade::thickness_shapes::tests::support::metres;
use crate::quantity::{AreaPrice, Typed, VolumePrice};

/// Everything given, in metres and per square or cubic metre.
fn asked() -> AskedOfThinZones {
    AskedOfThinZones {
        minimum: metres(0.02),
        bonded_minimum: Some(metres(0.01)),
        grind_at_most: Some(metres(0.015)),
        new_thickness: Some(metres(0.15)),
        prices: Prices {
            concrete: Some(VolumePrice::from_base(200.0)),
            bonding: Some(AreaPrice::from_base(50.0)),
            grinding: Some(AreaPrice::from_base(40.0)),
            breaking_out: Some(AreaPrice::from_base(90.0)),
        },
    }
}

fn choice(zone: &ThinZone, cure: Cure) -> &Choice {
    zone.choice(cure).expect("a choice")
}

/// What a choice takes: concrete and money.
fn takes(choice: &Choice) -> [f64; 2] {
    [choice.concrete.expect("a volume").base(), choice.money.expect("money").base()]
}
