//! Laws of several loads, of the thickness needed, and of two layers.

use super::needed::needed;
use super::several::{Forms, Load, Position, several};
use super::two_layers::two_layers;
use super::westergaard::{CornerForm, EdgeForm, corner_on, edge_on, interior_on};
use super::{PCI, PSI, Slab};
use crate::failure::Code;
use crate::operation::scalar::Word;
use crate::overlay::Bond;
use crate::quantity::units::INCH;
use crate::quantity::{Force, Length, Pressure, Ratio, Share, SubgradeReaction, Typed};

const FORMS: Forms = Forms { edge: EdgeForm::Circle, corner: CornerForm::Ioannides, transfer: NO_DOWELS };
const NO_DOWELS: Share =
    Share { dimension: std::marker::PhantomData, units: std::marker::PhantomData, value: 0.0 };
const POSITIONS: [Position; 3] = [Position::Interior, Position::Edge, Position::Corner];

fn slab(thickness_in: f64) -> Slab {
    slab_on(thickness_in, 100.0)
}

fn slab_on(thickness_in: f64, pci: f64) -> Slab {
    Slab::new(
        Length::from_base(thickness_in * INCH),
        Pressure::from_base(3.6e6 * PSI),
        Ratio::from_base(0.15),
        SubgradeReaction::from_base(pci * PCI),
    )
    .unwrap()
}

fn load(newtons: f64, at: [f64; 2], position: Position) -> Load {
    Load {
        load: Force::from_base(newtons),
        radius: Length::from_base(3.0 * INCH),
        x: Length::from_base(at[0]),
        y: Length::from_base(at[1]),
        position,
    }
}

#[test]
fn two_loads_at_one_place_give_twice_and_one_alone_is_westergaards() {
    let slab = slab(4.0);
    for position in POSITIONS {
        let one = load(1.0e4, [1.0, 2.0], position);
        let [alone] = several(&slab, &[one], &FORMS).unwrap()[..] else { panic!() };
        let radius = one.radius.base();
        let own = match position {
            Position::Interior => interior_on(&slab, 1.0e4, radius),
            Position::Edge => edge_on(&slab, 1.0e4, radius, EdgeForm::Circle),
            Position::Corner => corner_on(&slab, 1.0e4, radius, CornerForm::Ioannides),
        };
        assert_eq!(alone.alone.base(), own.0);
        assert!((alone.together.base() / own.0 - 1.0).abs() < 1e-14);
        assert!((alone.deflection.base() / own.1 - 1.0).abs() < 1e-14);
        for felt in several(&slab, &[one, one], &FORMS).unwrap() {
            assert!((felt.together.base() / (2.0 * own.0) - 1.0).abs() < 1e-14, "{position:?}");
            assert!((felt.deflection.base() / (2.0 * own.1) - 1.0).abs() < 1e-14, "{position:?}");
        }
    }
}

#[test]
fn five_radii_of_stiffness_apart_each_is_alone_within_a_hundredth() {
    let slab = slab(4.0);
    let far = 5.0 * slab.stiffness().base();
    for position in POSITIONS {
        let loads = [load(1.0e4, [0.0, 0.0], position), load(1.0e4, [0.6 * far, 0.8 * far], position)];
        for felt in several(&slab, &loads, &FORMS).unwrap() {
            assert!((felt.together.base() / felt.alone.base() - 1.0).abs() < 0.01, "{position:?} {felt:?}");
        }
    }
}

#[test]
fn turning_all_loads_changes_nothing_and_their_order_neither() {
    let slab = slab(5.0);
    let places = [[0.0, 0.0], [0.4, 0.1], [-0.3, 0.7]];
    let (sin, cos) = 0.7_f64.sin_cos();
    let turned = places.map(|[x, y]| [cos * x - sin * y, sin * x + cos * y]);
    let of = |places: [[f64; 2]; 3]| {
        let loads = [0, 1, 2].map(|n| load(1.0e4 * f64::from(n + 1), places[n as usize], Position::Interior));
        several(&slab, &loads, &FORMS).unwrap()
    };
    for (one, other) in of(places).iter().zip(of(turned)) {
        assert!((one.together.base() / other.together.base() - 1.0).abs() < 1e-12);
        assert!((one.deflection.base() / other.deflection.base() - 1.0).abs() < 1e-12);
    }
    let loads = [0, 1, 2].map(|n| load(1.0e4 * f64::from(n + 1), places[n as usize], Position::Interior));
    let back = [loads[2], loads[1], loads[0]];
    let (ahead, back) = (several(&slab, &loads, &FORMS).unwrap(), several(&slab, &back, &FORMS).unwrap());
    for (one, other) in ahead.iter().zip(back.iter().rev()) {
        assert!((one.together.base() / other.together.base() - 1.0).abs() < 1e-13);
    }
}

#[test]
fn a_joint_takes_its_share_off_the_edge_only() {
    let slab = slab(5.0);
    let forms = Forms { transfer: Share::from_base(0.25), ..FORMS };
    for (position, share) in [(Position::Edge, 0.75), (Position::Interior, 1.0), (Position::Corner, 1.0)] {
        let one = [load(1.0e4, [0.0, 0.0], position)];
        let (free, held) = (several(&slab, &one, &FORMS).unwrap(), several(&slab, &one, &forms).unwrap());
        assert!((held[0].alone.base() / free[0].alone.base() - share).abs() < 1e-14);
    }
}

#[test]
fn the_thickness_needed_is_the_smallest_that_is_allowed() {
    let loads = [load(2.0e4, [0.0, 0.0], Position::Interior), load(2.0e4, [0.5, 0.0], Position::Edge)];
    let bracket = [Length::from_base(2.0 * INCH), Length::from_base(24.0 * INCH)];
    let mut last = f64::INFINITY;
    for allowed in [1.0e6, 1.5e6, 2.0e6, 3.0e6] {
        let found = needed(&slab(6.0), &loads, &FORMS, Pressure::from_base(allowed), bracket).unwrap();
        assert!(found.stress.base() <= allowed && !found.at_least);
        assert!(found.thickness.base() < last, "stronger concrete needs less");
        last = found.thickness.base();
        let thinner = slab(6.0).as_thick(found.thickness.base() - 2.0e-5);
        let felt = several(&thinner, &loads, &FORMS).unwrap();
        assert!(felt.iter().any(|felt| felt.governing().base() > allowed));
    }
}

#[test]
fn heavier_loads_and_softer_ground_need_more() {
    let bracket = [Length::from_base(2.0 * INCH), Length::from_base(24.0 * INCH)];
    let of = |newtons: f64, pci: f64| {
        let slab = slab_on(6.0, pci);
        let loads =
            [load(newtons, [0.0, 0.0], Position::Corner), load(newtons, [0.3, 0.3], Position::Corner)];
        needed(&slab, &loads, &FORMS, Pressure::from_base(1.9e6), bracket).unwrap().thickness.base()
    };
    assert!(of(2.0e4, 100.0) > of(1.0e4, 100.0));
    assert!(of(2.0e4, 50.0) > of(2.0e4, 200.0));
}

#[test]
fn a_thin_slab_may_be_enough_and_a_thick_one_too_little() {
    let loads = [load(1.0e5, [0.0, 0.0], Position::Corner)];
    let allowed = Pressure::from_base(2.0e6);
    let inches = |least: f64, greatest: f64| [least, greatest].map(|inches| Length::from_base(inches * INCH));
    let failure = needed(&slab(6.0), &loads, &FORMS, allowed, inches(2.0, 6.0)).unwrap_err();
    assert_eq!((failure.code, failure.path.as_str()), (Code::NoThickness, "greatest"));
    let found = needed(&slab(6.0), &loads, &FORMS, allowed, inches(20.0, 24.0)).unwrap();
    assert!(found.at_least && (found.thickness.base() - 20.0 * INCH).abs() < 1e-12);
    let failure = needed(&slab(6.0), &loads, &FORMS, allowed, inches(20.0, 10.0)).unwrap_err();
    assert_eq!(failure.path, "greatest");
}

fn layers(bond: Bond, new: f64, old: f64, ratio: f64) -> super::two_layers::TwoLayers {
    let modulus = Pressure::from_base(2.5e10);
    let old_modulus = Pressure::from_base(2.5e10 * ratio);
    two_layers(Word(bond), Length::from_base(new), modulus, Length::from_base(old), old_modulus).unwrap()
}

#[test]
fn two_bonded_layers_of_one_concrete_are_one_slab() {
    let found = layers(Bond::Bonded, 0.05, 0.10, 1.0);
    assert!((found.equivalent.base() - 0.15).abs() < 1e-15);
    assert!((found.overlay_top.base() + 1.0).abs() < 1e-14 && (found.old_bottom.base() - 1.0).abs() < 1e-14);
    // A third of the way down from the top, half way to the axis and a little: (0.05 - 0.075) / 0.075.
    assert!((found.overlay_bottom.base() + 1.0 / 3.0).abs() < 1e-14);
    assert!((found.old_top.base() - found.overlay_bottom.base()).abs() < 1e-14);
}

#[test]
fn the_stresses_of_both_layers_make_up_the_moment_and_no_force() {
    // Moment and force for each unit of width from the straight stress lines, over the plate's own h^2 / 6.
    for bond in [Bond::Bonded, Bond::Unbonded] {
        let (new, old) = (0.06, 0.11);
        let found = layers(bond, new, old, 0.7);
        let [a, b, c, d] =
            [found.overlay_top, found.overlay_bottom, found.old_top, found.old_bottom].map(Typed::base);
        let force = new * (a + b) / 2.0 + old * (c + d) / 2.0;
        assert!(force.abs() < 1e-15, "{bond:?} {force}");
        let layer = |h: f64, top: f64, bottom: f64, middle: f64| {
            h * h * (bottom - top) / 12.0 + h * (top + bottom) / 2.0 * middle
        };
        let moment = layer(new, a, b, new / 2.0) + layer(old, c, d, new + old / 2.0);
        let wanted = found.equivalent.base().powi(2) / 6.0;
        assert!((moment / wanted - 1.0).abs() < 1e-13, "{bond:?} {moment} {wanted}");
    }
}

#[test]
fn bond_stiffens_and_partly_bonded_counts_as_unbonded() {
    let (bonded, unbonded) = (layers(Bond::Bonded, 0.06, 0.1, 0.8), layers(Bond::Unbonded, 0.06, 0.1, 0.8));
    assert!(bonded.equivalent > unbonded.equivalent);
    assert_eq!(layers(Bond::PartlyBonded, 0.06, 0.1, 0.8), unbonded);
    let alike = layers(Bond::Unbonded, 0.1, 0.1, 1.0);
    assert!((alike.overlay_share.base() - 0.5).abs() < 1e-15);
    assert!((alike.equivalent.base() - 0.1 * 2.0_f64.cbrt()).abs() < 1e-15);
}
