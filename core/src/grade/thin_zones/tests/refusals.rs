//! What cannot be asked.

use super::*;
use crate::failure::Code;
use crate::grade::thickness_shapes::tests::support::{plane, survey};
use crate::quantity::{AreaPrice, VolumePrice};

#[track_caller]
fn refused(change: impl Fn(&mut AskedOfThinZones), code: Code, path: &str) {
    let shots = [[0.0, 0.0, 10.0], [4.0, 0.0, 9.96], [4.0, 2.0, 9.96], [0.0, 2.0, 10.0]];
    let survey = survey(&[[0.0, 0.0], [4.0, 0.0], [4.0, 2.0], [0.0, 2.0]], &[], &shots);
    let mut asked = asked();
    change(&mut asked);
    let failure = ThinZones::of(&survey, &plane(10.0, 0.0, 0.0), &asked).expect_err("a refusal");
    assert_eq!((failure.code, failure.path.as_str()), (code, path), "{failure}");
    assert!(!failure.written.is_empty() && !failure.allowed.is_empty() && !failure.remedy.is_empty());
}

#[test]
fn thicknesses_out_of_range_are_refused() {
    refused(|asked| asked.minimum = metres(0.0), Code::OutOfRange, "minimum");
    refused(|asked| asked.minimum = metres(-0.05), Code::OutOfRange, "minimum");
    refused(|asked| asked.minimum = metres(f64::NAN), Code::NotFinite, "minimum");
    refused(|asked| asked.minimum = metres(f64::INFINITY), Code::NotFinite, "minimum");
    refused(|asked| asked.minimum = metres(50.0), Code::OutOfRange, "minimum");
    refused(|asked| asked.bonded_minimum = Some(metres(0.03)), Code::OutOfRange, "bonded_minimum");
    refused(|asked| asked.bonded_minimum = Some(metres(0.0)), Code::OutOfRange, "bonded_minimum");
    refused(|asked| asked.bonded_minimum = Some(metres(f64::NAN)), Code::NotFinite, "bonded_minimum");
    refused(|asked| asked.grind_at_most = Some(metres(-0.01)), Code::OutOfRange, "grind_at_most");
    refused(|asked| asked.grind_at_most = Some(metres(f64::NAN)), Code::NotFinite, "grind_at_most");
    refused(|asked| asked.new_thickness = Some(metres(0.0)), Code::OutOfRange, "new_thickness");
    refused(|asked| asked.new_thickness = Some(metres(f64::NAN)), Code::NotFinite, "new_thickness");
}

#[test]
fn prices_out_of_range_are_refused() {
    let (volume, area) = (VolumePrice::from_base, AreaPrice::from_base);
    refused(|asked| asked.prices.concrete = Some(volume(-1.0)), Code::Negative, "concrete_price");
    refused(|asked| asked.prices.concrete = Some(volume(f64::NAN)), Code::NotFinite, "concrete_price");
    refused(|asked| asked.prices.concrete = Some(volume(1e9)), Code::OutOfRange, "concrete_price");
    refused(|asked| asked.prices.bonding = Some(area(-1.0)), Code::Negative, "bonding_price");
    refused(|asked| asked.prices.grinding = Some(area(f64::NAN)), Code::NotFinite, "grinding_price");
    refused(
        |asked| asked.prices.breaking_out = Some(area(f64::INFINITY)),
        Code::NotFinite,
        "breaking_out_price",
    );
}

#[test]
fn a_bonded_minimum_over_the_unbonded_one_says_so() {
    let shots = [[0.0, 0.0, 10.0], [4.0, 0.0, 9.96], [4.0, 2.0, 9.96], [0.0, 2.0, 10.0]];
    let survey = survey(&[[0.0, 0.0], [4.0, 0.0], [4.0, 2.0], [0.0, 2.0]], &[], &shots);
    let mut asked = asked();
    asked.bonded_minimum = Some(metres(0.03));
    let failure = ThinZones::of(&survey, &plane(10.0, 0.0, 0.0), &asked).expect_err("a refusal");
    assert!(failure.remedy.contains("no more than the unbonded one"), "{failure}");
}
