//! Laws of the single loads. Worked examples stand in tests/published.

use super::*;
use crate::operation::scalar::Word;
use crate::overlay::strength::contact::equivalent;
use crate::quantity::{Force, Ratio, SubgradeReaction};

const PSI: f64 = crate::overlay::strength::PSI;
const PCI: f64 = crate::overlay::strength::PCI;

fn slab(thickness_in: f64) -> Slab {
    Slab::new(
        Length::from_base(thickness_in * INCH),
        Pressure::from_base(4.0e6 * PSI),
        Ratio::from_base(0.15),
        SubgradeReaction::from_base(100.0 * PCI),
    )
    .unwrap()
}

fn stresses(thickness_in: f64, radius_in: f64) -> [f64; 5] {
    let (slab, radius) = (slab(thickness_in), radius_in * INCH);
    [
        interior_on(&slab, 1.0e4, radius).0,
        edge_on(&slab, 1.0e4, radius, EdgeForm::Circle).0,
        edge_on(&slab, 1.0e4, radius, EdgeForm::Semicircle).0,
        corner_on(&slab, 1.0e4, radius, CornerForm::Westergaard).0,
        corner_on(&slab, 1.0e4, radius, CornerForm::Ioannides).0,
    ]
}

#[test]
fn a_thicker_slab_is_less_stressed_and_so_is_a_wider_contact() {
    for thickness in 3..20 {
        let thickness = f64::from(thickness);
        for (thin, thick) in stresses(thickness, 3.0).iter().zip(stresses(thickness + 1.0, 3.0)) {
            assert!(*thin > thick, "{thickness}");
        }
        for (narrow, wide) in stresses(thickness, 3.0).iter().zip(stresses(thickness, 4.0)) {
            assert!(*narrow > wide, "{thickness}");
        }
    }
}

#[test]
fn an_edge_is_worse_than_the_middle_and_the_forms_of_1948_worse_than_that_of_1926() {
    let [interior, circle, semicircle, ..] = stresses(10.0, 6.0);
    let of_1926 = edge_1926(
        Force::from_base(1.0e4),
        Length::from_base(6.0 * INCH),
        slab(10.0).thickness(),
        Pressure::from_base(4.0e6 * PSI),
        SubgradeReaction::from_base(100.0 * PCI),
    )
    .unwrap()
    .base();
    assert!(interior < of_1926 && of_1926 < circle && circle < semicircle);
    assert!((1.25..1.52).contains(&(circle / of_1926)) && (1.25..1.55).contains(&(semicircle / of_1926)));
}

#[test]
fn the_short_form_of_1948_for_a_poisson_ratio_of_015_agrees() {
    let (slab, radius) = (slab(10.0), 6.0 * INCH);
    let (load, h, l) = (1.0e4, 10.0 * INCH, slab.stiffness().base());
    let short = |rest: f64| 0.803 * load / (h * h) * (4.0 * (l / radius).log10() + rest);
    let wide = radius / l;
    let circle = edge_on(&slab, load, radius, EdgeForm::Circle);
    let semicircle = edge_on(&slab, load, radius, EdgeForm::Semicircle);
    assert!((circle.0 / short(0.666 * wide - 0.034) - 1.0).abs() < 1.0e-3);
    assert!((semicircle.0 / short(0.282 * wide + 0.650) - 1.0).abs() < 1.0e-3);
    let settled = load / (slab.subgrade * l * l) * 0.431;
    assert!((circle.1 / (settled * (1.0 - 0.82 * wide)) - 1.0).abs() < 2.0e-3);
    assert!((semicircle.1 / (settled * (1.0 - 0.349 * wide)) - 1.0).abs() < 2.0e-3);
}

#[test]
fn the_equivalent_radius_meets_the_contact_where_it_ends() {
    assert!((equivalent(1.724 * 0.1 - 1e-12, 0.1) / (1.724 * 0.1) - 1.0).abs() < 1.0e-3);
    assert!((equivalent(0.3, 0.1) - 0.3).abs() < 1e-15);
    // Under a point the plate is not a point: b is 0.325 h.
    assert!((equivalent(0.0, 0.1) - 0.0325).abs() < 1e-12);
}

#[test]
fn a_contact_too_wide_is_refused() {
    let of = |radius: f64, formula| {
        corner(
            Force::from_base(1.0e4),
            Length::from_base(radius * INCH),
            slab(10.0).thickness(),
            Pressure::from_base(4.0e6 * PSI),
            Ratio::from_base(0.15),
            SubgradeReaction::from_base(100.0 * PCI),
            Word(formula),
        )
    };
    assert!(of(10.7, CornerForm::Ioannides).is_ok_and(|bent| bent.stress.base() > 0.0));
    assert_eq!(of(10.8, CornerForm::Ioannides).unwrap_err().code, Code::ContactTooWide);
    assert!(of(15.0, CornerForm::Westergaard).is_ok_and(|bent| bent.stress.base() > 0.0));
    assert_eq!(of(15.1, CornerForm::Westergaard).unwrap_err().code, Code::ContactTooWide);
}

#[test]
fn a_block_in_range_is_worked_out_at_once() {
    // Above, all rows are refused by one that is not; a block that always fell back on single rows would pass every other test.
    let column = |number: f64| vec![number; 5];
    let numbers = [1.0e4, 3.0 * INCH, 10.0 * INCH, 4.0e6 * PSI, 0.15, 100.0 * PCI];
    for word in [0.0, 1.0] {
        let mut columns = numbers.map(column).to_vec();
        let at_once = |block: fn(&[&[f64]], &mut [&mut [f64]]) -> bool, columns: &[Vec<f64>]| {
            let inputs: Vec<&[f64]> = columns.iter().map(Vec::as_slice).collect();
            let mut results = [column(0.0), column(0.0), column(0.0)];
            let [a, b, c] = &mut results;
            block(&inputs, &mut [a.as_mut_slice(), b.as_mut_slice(), c.as_mut_slice()])
                && results[0].iter().all(|&s| s > 0.0)
        };
        assert!(at_once(interior_block, &columns));
        columns.push(column(word));
        assert!(at_once(edge_block, &columns) && at_once(corner_block, &columns));
        columns[1][3] = 25.0 * INCH;
        assert!(at_once(edge_block, &columns) && !at_once(corner_block, &columns));
        columns[6][2] = 1.0 - word;
        assert!(!at_once(edge_block, &columns));
    }
}
