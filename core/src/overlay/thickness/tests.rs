//! Laws of the overlay equations. Examples in print stand in tests/published.

use super::*;
use crate::failure::Code;
use crate::note::NoteCode;
use crate::operation::scalar::Word;
use crate::overlay::Bond;
use crate::quantity::{Length, Ratio, Typed};

const INCH: f64 = 0.0254;

fn need(bond: Bond, [new, old, there]: [f64; 3], condition: f64) -> Required {
    let inches = |inches: f64| Length::from_base(inches * INCH);
    required(Word(bond), inches(new), inches(old), inches(there), Ratio::from_base(condition)).unwrap()
}

#[test]
fn what_is_needed_makes_up_what_is_required() {
    // With both concretes alike the reverse equation gives the single slab back.
    for (bond, condition) in [(Bond::Bonded, 1.0), (Bond::PartlyBonded, 0.75), (Bond::Unbonded, 0.35)] {
        let overlay = need(bond, [9.0, 9.0, 6.0], condition).overlay;
        let both =
            equivalent(Word(bond), overlay, Length::from_base(6.0 * INCH), Ratio::from_base(condition))
                .unwrap();
        assert!((both.base() / (9.0 * INCH) - 1.0).abs() < 1e-14, "{bond:?}");
    }
}

#[test]
fn bond_needs_least_and_a_worse_slab_needs_more() {
    let sound = |bond| need(bond, [9.0, 9.0, 6.0], 1.0).overlay;
    assert!(
        sound(Bond::Bonded) < sound(Bond::PartlyBonded) && sound(Bond::PartlyBonded) < sound(Bond::Unbonded)
    );
    for bond in [Bond::PartlyBonded, Bond::Unbonded] {
        let of = |condition| need(bond, [9.0, 9.0, 6.0], condition).overlay;
        assert!(of(1.0) < of(0.75) && of(0.75) < of(0.35));
    }
}

#[test]
fn an_old_slab_that_is_enough_needs_nothing() {
    for bond in [Bond::Bonded, Bond::PartlyBonded, Bond::Unbonded] {
        let found = need(bond, [6.0, 6.0, 8.0], 1.0);
        assert!(found.overlay.base() == 0.0 && found.note == Some(NoteCode::NoOverlayNeeded), "{bond:?}");
    }
    // hE (hd / he) C^(1/n) is exactly hd.
    assert_eq!(need(Bond::Unbonded, [8.0, 8.0, 16.0], 0.25).overlay.base(), 0.0);
}

#[test]
fn a_bonded_overlay_over_an_unsound_slab_is_refused() {
    let inches = |inches: f64| Length::from_base(inches * INCH);
    let failure = required(Word(Bond::Bonded), inches(9.0), inches(9.0), inches(6.0), Ratio::from_base(0.99));
    assert_eq!(failure.unwrap_err().code, Code::BondNeedsSound);
    let failure = equivalent(Word(Bond::Bonded), inches(3.0), inches(6.0), Ratio::from_base(0.35));
    assert_eq!(failure.unwrap_err().code, Code::BondNeedsSound);
}

#[test]
fn an_unbonded_old_slab_counts_as_ten_inches_at_most() {
    let of = |there: f64| {
        let inches = |inches: f64| Length::from_base(inches * INCH);
        effective_unbonded(inches(12.0), inches(there), Ratio::from_base(1.0)).unwrap()
    };
    assert_eq!(of(10.0).note, None);
    assert_eq!(of(14.0).note, Some(NoteCode::ThicknessCapped));
    assert!((of(14.0).overlay.base() - of(10.0).overlay.base()).abs() < 1e-15);
}
